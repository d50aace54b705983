/* On to the next prompt, through screen, list, exercises and close. */

inline carry_on() {
  do
  :: go == 0 && !then_since && !GOES_ON && !in_doubt -> break
  :: go == 0 && !then_since && in_doubt -> d_step { doubt_is_asked(); skip }
  :: go == 0 && then_since -> then_since = 0; go = WHAT_ELSE_SINCE
  :: go == 0 && !then_since && GOES_ON -> d_step {
     n = onward & 7; onward = onward >> 3;
     go = (n == LIST -> LAY_OUT : (n == LESS -> LESS_OF_IT : (n == RETURN -> BACK_FROM_SCREEN : (n == BACK -> BACK_IN_PLACE : BEGIN_EXERCISE))));
     n = 0 }
  :: go != 0 -> now_at = go; go = 0;
     if
     :: now_at == TO_DOOR -> d_step { known_from_the_diary(); stage = AFTER_may_open(stage); miss = DOOR_QUESTIONS;
        if :: miss == 0 -> go = TO_CHECK_IN :: else fi; skip }
     :: now_at == TO_CHECK_IN -> d_step { stage = AFTER_known(stage); at = 0; go = ON_IN_CHECK_IN }
     :: now_at == ON_IN_CHECK_IN -> d_step { settle_check_in();
        if
        :: settled -> stage = AFTER_checked_in(stage); miss = 0; line = 0; at = 0;
           sections_alone(); alone = mask; mask = 0; listed = 31 & ~alone; go = NEXT_SECTION
        :: else
        fi; skip }
     :: now_at == NEXT_SECTION -> d_step { next_section(); skip }
     :: now_at == ON_IN_SCREEN -> d_step { settle_screen();
        if
        :: settled && back -> miss = 0; onward = RETURN | (onward << 3)
        :: settled && !back -> facts_end_with_the_screen();
           stage = AFTER_screened(stage); miss = 0; at = 0; go = ON_AT_HAND
        :: else
        fi; skip }
     :: now_at == ON_AT_HAND -> d_step { settle_at_hand();
        if
        :: settled -> stage = AFTER_gear_known(stage); miss = 0; at = 0; onward = LIST
        :: else
        fi; skip }
     :: now_at == LAY_OUT -> d_step { lay_out(); skip }
     :: now_at == BEGIN_WORK -> d_step { what_the_day_still_needs();
        stage = AFTER_begin(stage); miss = 0; at = 0; go = ON_IN_WARM_UP }
     :: now_at == ON_IN_WARM_UP -> d_step { settle_warm_up();
        if :: settled -> miss = 0; line = 0; go = NEXT_EXERCISE :: else fi; skip }
     :: now_at == NEXT_EXERCISE -> d_step { next_exercise(); skip }
     :: now_at == BEGIN_EXERCISE -> d_step { begin_exercise(); skip }
     :: now_at == ON_BEFORE -> d_step { settle_before();
        if :: settled -> miss = 0; line = 0; to_the_set() :: else fi; skip }
     :: now_at == TO_REPORT -> d_step { at = 0; know_set(); go = ON_AFTER_A_SET }
     :: now_at == ON_AFTER_A_SET -> d_step { settle_after();
        if :: settled -> miss = 0; line = 0; go = SET_IS_OVER :: else fi; skip }
     :: now_at == SET_IS_OVER -> d_step { set_is_over(); skip }
     :: now_at == EXERCISE_DONE -> d_step {
        if :: over && left_early < 2 -> left_early++ :: else fi;
        go = NEXT_EXERCISE }
     :: now_at == WHAT_ELSE_SINCE -> d_step {
        if
        :: since == 0 -> aside = 0; onward = BACK
        :: since != 0 && LOWEST(since) == SCREEN_SINCE ->
           since = 0; screen_again(ALONE_AFTER_A_BREAK, (31 & ~ALONE_AFTER_A_BREAK))
        :: else
        fi; skip }
     :: now_at == LESS_OF_IT -> d_step { less_of_it(); skip }
     :: now_at == BACK_FROM_SCREEN -> d_step {
        stage = AFTER_back_to(back); back = 0; at = 0;
        if
        :: stage == TODAY -> onward = LIST
        :: stage != TODAY && onward == 0 -> onward = BACK
        :: stage != TODAY && onward != 0 && onward < 8 -> onward = onward | (BACK << 3)
        :: else -> onward = onward | (BACK << 6)
        fi; skip }
     :: now_at == BACK_IN_PLACE -> d_step { back_in_place(); skip }
     :: now_at == CLOSE_OF_DAY -> d_step { spend_the_day(); go = ON_IN_CLOSE }
     :: now_at == ON_IN_CLOSE -> d_step { settle_close();
        if :: settled -> code = E_DONE; stage = AFTER_closed(stage); go = TO_END :: else fi; skip }
     :: now_at == TO_STOP -> d_step { spend_the_day(); forget_tests(0);
        stage = AFTER_warning_sign(stage); doubts = 0; at = keep; stopped = code; ended = E_STOPPED }
     :: now_at == TO_END -> d_step { spend_the_day(); forget_tests(0); doubts = 0; ended = code }
     fi
  od;
  skip;
  d_step {
    now_at = 0; code = 0; keep = 0; settled = 0; p = 0; m = 0; room = 0; sum = 0; mask = 0;
    d_sets = 0; d_reach = 0; d_form = 0; d_load = 0
  }
}

inline sections_alone() {          /* arm 1, joint 2, body 4, ill 8, night 16, weekly 32 */
  mask = CALLED_BY_DIARY;
  if :: threw || pain_up -> mask = mask | 3 :: else fi;
  if :: slept_short || pain_up -> mask = mask | 16 :: else fi;
  if
  :: mask != 63 && (WAITED_A_WEEK & ~mask) != 0 -> mask = mask | WAITED_A_WEEK
  :: mask != 63 && (WAITED_A_WEEK & ~mask) == 0 -> mask = mask | WAITED_LONGEST(mask)
  :: else
  fi
}

inline next_section() {
  unclear = 0; signs = 0; number = 0;
  if
  :: yes_left -> number = LOWEST(yes_left); yes_left = yes_left & ~(1 << number); section = 2; signs = SIGNS(number)
  :: !yes_left && alone -> number = LOWEST(alone);
     if
     :: number == 5 && FIRST_DAY -> section = 3; signs = SIGNS(number)
     :: else -> section = 1
     fi
  :: !yes_left && !alone && listed -> section = LIST_ASKED
  :: !yes_left && !alone && !listed -> section = SCREEN_OVER;
     if
     :: stage == ENDING -> stop_with(UNSURE)
     :: else -> go = ON_IN_SCREEN
     fi
  fi
}

inline lay_out() {
  if :: REST_DAY(lowered) -> level = 2 :: else fi;
  if :: GENTLE_DAY(lowered) && level < 1 -> level = 1 :: else fi;
  if :: RECOVERY_DAY(lowered) -> recovery = 1 :: else fi;
  if
  :: level == 2 || WEEK_IS_FULL -> todo = 0
  :: else ->
     mask = (recovery || level == 1 || SECOND_TODAY || waits -> ALL_STATIONS : OF_THE_PHASE);
     keep_by_lists();
     todo = 0; exercises = 0; sum = 0; p = 0;
     do
     :: p >= STATIONS -> break
     :: else ->
        if
        :: mask & (1 << p) -> dose_at_door(p); m++;
           sum = sum + 30 + d_sets * DOOR_HIGH(p, morning_up) * SECONDS_EACH(p) + (d_sets - 1) * REST_OF(p);
           if
           :: m <= MOST_EXERCISES && (sum + 59) / 60 <= MOST_MINUTES -> todo = todo | (1 << p); exercises++
           :: else
           fi
        :: else
        fi;
        p++
     od;
     m = 0
  fi;
  if
  :: todo == 0 -> code = E_DONE; stage = AFTER_nothing_today(stage); go = TO_END
  :: todo != 0 && waits -> miss = 1
  :: todo != 0 && !waits -> go = BEGIN_WORK
  fi
}

inline begin_exercise() {
  if
  :: todo == 0 && stage == EXERCISE -> stage = AFTER_all_done(stage); go = CLOSE_OF_DAY
  :: todo == 0 && stage != EXERCISE -> stage = AFTER_nothing_left(stage); go = CLOSE_OF_DAY
  :: else ->
     stage = (stage == EXERCISE -> AFTER_next(stage) : AFTER_warm(stage));
     what_the_day_still_needs();
     lowered = lowered & STILL_MEANT(todo);
     forget_tests(1);
     p = 0;
     do :: todo & (1 << p) -> break :: else -> p++ od;
     todo = todo & ~(1 << p);
     dose_at_door(p);
     place = p + 1; sets = d_sets; reach = d_reach; form = d_form; load = d_load;
     low = DOOR_LOW(p, morning_up); high = DOOR_HIGH(p, morning_up);
     set_no = 1; hold_no = 1; phase = BEFORE; change = 0; fault = 0; in_a_row = 0; felt_due = 1; stays_due = 0; over = 0;
     at = 0; reread = 0;
     know_exercise(); go = ON_BEFORE
  fi
}

inline set_is_over() {
  forget_tests(2);
  if
  :: NO_MORE_TODAY(lowered) -> stage = AFTER_end_the_work(stage); go = CLOSE_OF_DAY
  :: else -> effects_on_the_next_set();
     effects_on_this_are_spent();
     if
     :: change == LEAVE || set_no >= sets -> go = EXERCISE_DONE
     :: else -> phase = RESTS
     fi
  fi
}

inline less_of_it() {              /* the list, and what is under way, less what today no longer allows */
  mask = (place -> todo | (1 << (place - 1)) : todo);
  still_allowed();
  todo = todo & mask;
  if
  :: place != 0 && !(mask & (1 << (place - 1))) -> next_exercise()
  :: place != 0 && (mask & (1 << (place - 1))) -> dose_at_door(place - 1);
     if :: d_sets < sets -> sets = (d_sets < set_no -> set_no : d_sets) :: else fi;
     if
     :: (phase == RESTS || phase == RECHECK) && set_no >= sets ->
        if :: over && left_early < 2 -> left_early++ :: else fi;
        next_exercise()
     :: else
     fi
  :: place == 0 && (todo != 0 || stage == TODAY || onward != 0)
  :: else -> next_exercise()
  fi;
  if :: stage == WARM_UP || stage == EXERCISE -> what_the_day_still_needs() :: else fi
}

inline back_in_place() {           /* an open question stands again; a rest is over, a hold is done */
  if
  :: miss != 0
  :: miss == 0 && stage == WARM_UP -> go = ON_IN_WARM_UP
  :: miss == 0 && stage == EXERCISE && place == 0 -> go = NEXT_EXERCISE
  :: miss == 0 && place != 0 && phase == BEFORE -> go = ON_BEFORE
  :: miss == 0 && place != 0 && phase == REPORT -> go = ON_AFTER_A_SET
  :: miss == 0 && place != 0 && phase == RESTS -> rest_over()
  :: miss == 0 && place != 0 && phase == HOLDS -> hold_over()
  :: miss == 0 && place != 0 && phase == ON -> to_the_set()
  :: else
  fi
}
