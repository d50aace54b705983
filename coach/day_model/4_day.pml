/* What may happen at a prompt, and the day as it is walked. */

/* ------------------------------------------------ one thing that happens */

inline respond() {
  if
  :: ev == UNCLEAR -> d_step { not_understood() }
  :: ev == MAYBE -> d_step { sign_in_doubt(); skip }
  :: else
  fi;
  if
  :: ev == 0 || ev == OPEN
  :: ev == STOP -> d_step {
     if
     :: stage == ENDING -> code = E_BY_CHOICE; stage = AFTER_for_today(stage); go = TO_END
     :: else -> spend_the_day(); forget_tests(0); stage = AFTER_stop(stage); miss = 1
     fi; skip }
  :: ev == SIGN -> quoted = 1; stop_with(SIGN_TYPED)
  :: ev == TIMER -> d_step {
     if
     :: phase == HOLDS -> hold_over()
     :: phase == RESTS -> rest_over()
     fi; skip }
  :: ev == GEAR ->
     if :: PIECES > 0 -> aside = WHAT_IS_HERE; unclear = 0 :: else fi
  :: ev == BREAK -> d_step {
     aside = AFTER_A_BREAK; unclear = 0; then_since = 1;
     since = (1 << WORSE_SINCE) | (1 << PAIN_SINCE) | (said -> 1 << SCREEN_SINCE : 0);
     if :: place != 0 && phase != BEFORE && set_no <= sets -> since = since | (1 << SETS_SINCE) :: else fi;
     skip }
  :: ev == VALUE || ev == WHOLE ->
     unclear = 0;
     alone_asked = aside || GO_ASKED || SCREENING || stage == ENDING;
     take_value();
     if
     :: alone_asked || moved || (ev == WHOLE && (miss >> (part + 1)) != 0)
     :: else -> d_step { after_values(); ev = VALUE }
     fi
  fi;
  if
  :: ev == WHOLE && !moved -> part = part + 1 + LOWEST((miss >> (part + 1)))
  :: else -> ev = 0; part = 0; strong = 0
  fi;
  carry_on();
  if
  :: ev == 0 && what != OPEN -> tell_step(); from = 0; what = 0; which = 0; said = 0
  :: ev == 0 && what == OPEN -> what = 0
  :: ev != 0
  fi;
  fact = 0; val = 0; moved = 0; alone_asked = 0
}

inline what_is_asked() {           /* the fact that is asked at `part` of the prompt; 0 for no fact */
  if
  :: aside || TIMED || GO_ASKED || SCREENING -> fact = 0
  :: !(aside || TIMED || GO_ASKED || SCREENING) ->
     if
     :: RECHECK_ASKED -> fact = F_PAIN_BEFORE_CHANGE
     :: stage == WHO -> fact = (part == 0 -> F_PLAN_IS_MINE : F_GUARDIAN_HERE)
     :: stage == TODAY -> fact = F_MOVES_OR_LATER
     :: stage == ENDING || stage == OPENING -> fact = 0
     :: stage == CHECK_IN -> fact = FACT_check_in(at + part)
     :: stage == SCREEN -> fact = FACT_screen(at + part)
     :: stage == AT_HAND -> fact = FACT_at_hand(at + part)
     :: stage == WARM_UP -> fact = FACT_warm_up(at + part)
     :: stage == CLOSE -> fact = FACT_close(at + part)
     :: stage == EXERCISE && phase == BEFORE -> fact = FACT_before(at + part)
     :: stage == EXERCISE && (phase == ON || phase == REPORT) -> fact = FACT_after(at + part)
     fi
  fi
}

inline any_value() {               /* every value of the scale of what is asked */
  if
  :: aside == READ_BACK || aside == SIGN_IN_DOUBT -> if :: val = 0 :: val = 1 fi
  :: aside == WHAT_IS_HERE -> any_gear()
  :: aside == AFTER_A_BREAK ->
     if
     :: LOWEST(since) == SETS_SINCE -> val = 0; do :: val < 400 -> val = val + 4 :: break od
     :: LOWEST(since) == WORSE_SINCE -> if :: val = 0 :: val = 1 fi
     :: LOWEST(since) == PAIN_SINCE -> val = 0; do :: val < 40 -> val = val + 2 :: break od
     fi
  :: GO_ASKED -> val = 0
  :: SCREENING && section == LIST_ASKED ->
     if :: val = 0 :: listed & 1 -> val = 1 :: listed & 2 -> val = 2 :: listed & 4 -> val = 4
        :: listed & 8 -> val = 8 :: listed & 16 -> val = 16 :: val = listed fi
  :: SCREENING && section != LIST_ASKED -> if :: val = 0 :: val = 1 fi
  :: !aside && stage == ENDING && miss == 1 -> if :: val = 0 :: val = 1 fi
  :: !aside && stage == ENDING && miss == 2 ->
     if :: val = 0 :: val = 1 :: val = 2 :: val = 4 :: val = 8 :: val = 16 :: val = 32 :: val = 63 fi
  :: else -> any_value_of_fact()
  fi
}

active proctype day() {
  ev = OPEN; go = TO_DOOR;
  do
  :: atomic {
       ended == 0 ->
       if
       :: ev == 0 -> tell_situation();
          if
          :: WITH_STOP -> ev = STOP
          :: WITH_SIGN -> ev = SIGN
          :: WITH_UNCLEAR -> ev = UNCLEAR; part = LOWEST(miss)
          :: WITH_MAYBE -> ev = MAYBE; part = LOWEST(miss)
          :: WITH_GEAR && aside == 0 && WORKING -> ev = GEAR
          :: WITH_BREAK && aside == 0 && WORKING -> ev = BREAK; if :: said = 0 :: said = 1 fi
          :: TIMED -> ev = TIMER
          :: !TIMED -> ev = VALUE;
             if
             :: line && !aside ->
                part = 0;
                do :: (miss >> (part + 1)) != 0 -> part++ :: (miss >> part) & 1 -> break od
             :: line && !aside -> ev = WHOLE; part = LOWEST(miss)
             :: !(line && !aside) -> part = LOWEST(miss)
             fi
          fi
       :: else
       fi;
       what_is_asked();
       if
       :: ev == VALUE || ev == WHOLE -> any_value()
       :: else
       fi;
       if
       :: what == 0 -> what = ev;
          if :: ev == VALUE -> which = fact; said = val :: else fi
       :: else
       fi;
       respond()
     }
  :: atomic { ended != 0 -> tell_situation(); break }
  od
}
