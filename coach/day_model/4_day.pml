/* What may happen at a prompt, and the day as it is walked. */

/* ------------------------------------------------ one thing that happens */

inline respond() {
  if :: ev == UNCLEAR -> d_step { not_understood() } :: else fi;
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
     :: phase == RESTS && change != 0 && over && !stays_due -> phase = RECHECK; effects_on_this_are_spent()
     :: phase == RESTS && change != 0 && !(over && !stays_due) -> changed_set()
     :: phase == RESTS && change == 0 -> set_no++; effects_on_this_are_spent(); to_the_set()
     fi; skip }
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
  :: aside -> if :: val = 0 :: val = 1 fi
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
          :: ev = STOP
          :: ev = SIGN
          :: ev = UNCLEAR; part = LOWEST(miss)
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
