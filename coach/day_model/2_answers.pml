/* What one answer does, and one that was not understood. */

/* ------------------------------------------------ one value */

inline take_number_or_name() {     /* `fact` was answered by `val`; `moved` where the talk went on elsewhere */
  if
  :: fact == F_PLAN_IS_MINE || fact == F_GUARDIAN_HERE -> d_step {
     if :: val == 0 -> code = E_CLOSED; stage = AFTER_not_today(stage); moved = 1; go = TO_END :: else fi; skip }
  :: fact == F_PAIN_NOW -> d_step {
     if
     :: val >= 32 -> ask_again_if_strong()
     :: else -> reread = 0;
        if
        :: val <= TO_START
        :: val > TO_START && val <= GENTLE -> level = (level < 1 -> 1 : level)
        :: val > TO_START && val > GENTLE -> level = 2
        fi;
        if :: LAST_PAIN_KNOWN && val >= LAST_PAIN + 8 -> pain_up = 1 :: else fi
     fi; skip }
  :: fact == F_WORST_PAIN || fact == F_PAIN_AFTER -> d_step {
     if :: val >= 32 -> ask_again_if_strong() :: else -> reread = 0 fi; skip }
  :: fact == F_WAKING_PAIN -> d_step {
     if
     :: val >= 32 -> ask_again_if_strong()
     :: val < 32 && (val >= USUAL + 8 || (val > USUAL && UP_LAST_TIME)) -> stop_with(SORE_MORNINGS)
     :: else -> reread = 0;
        if
        :: val > USUAL -> morning_up = 1; ache = (ACHE_AHEAD(at) -> (val <= 8 && WORKED_LATELY) : ache)
        :: else
        fi
     fi; skip }
  :: fact == F_WAKING_ACHE -> d_step {
     if
     :: ache && val <= 1 -> ache = 0; morning_up = 0; no_step = 1
     :: else -> ache = 0
     fi; skip }
  :: fact == F_SLEEP_LAST_NIGHT -> d_step {
     if :: val < SHORT_NIGHT -> slept_short = 1 :: else fi; skip }
  :: fact == F_THROWING_YESTERDAY -> d_step {
     if :: val > 0 -> threw = 1 :: else fi;
     if :: HARD(val) -> recovery = 1 :: else fi; skip }
  :: fact == F_THROWING_TODAY -> d_step {
     playing = HARD(val) }
  :: fact == F_THROWN_ALREADY -> d_step {
     if :: val == 1 -> threw = 1 :: else -> waits = 1 fi; skip }
  :: fact == F_THROWING_TOMORROW -> d_step {
     if :: HARD(val) -> no_step = 1 :: else fi; skip }
  :: fact == F_AT_HAND -> d_step {
     gone = val }
  :: fact == F_MOVES_OR_LATER -> d_step {
     moved = 1;
     if
     :: val == 0 -> go = BEGIN_WORK
     :: else -> code = E_DONE; stage = AFTER_nothing_today(stage); go = TO_END
     fi; skip }
  :: fact == F_PAIN_IN_WARM_UP -> d_step {
     if
     :: val >= 32 -> ask_again_if_strong()
     :: val >= 24 && val < 32 -> end_the_work()
     :: val < 24 && val <= IN_EXERCISE -> reread = 0
     :: val < 24 && val > IN_EXERCISE && val <= GENTLE -> reread = 0;
        level = (level < 1 -> 1 : level); no_step = 1; only_what_is_gentle()
     :: val < 24 && val > IN_EXERCISE && val > GENTLE -> end_the_work()
     fi; skip }
  :: fact == F_WHICH_VERSION -> d_step {
     form = val }
  :: fact == F_STAND_IN_WEIGHT -> d_step {
     if :: val == 0 -> moved = 1; go = NEXT_EXERCISE :: else fi; skip }
  :: fact == F_PAIN_IN_SET -> d_step {
     if
     :: val >= 32 -> ask_again_if_strong()
     :: val >= 24 && val < 32 -> end_the_work()
     :: val < 24 -> reread = 0; effects_on_this_are_spent();
        if
        :: val <= IN_EXERCISE
        :: else ->
           if
           :: set_no < sets && reach > 0 -> change = SHORTER; over = 1; felt_due = 0
           :: set_no < sets && reach == 0 && EASIER_FORM(place - 1, form) != 0 ->
              change = EASIER; over = 1; felt_due = 0
           :: set_no < sets && reach == 0 && EASIER_FORM(place - 1, form) == 0 && LESS_LOAD(place - 1, load) != 0 ->
              change = LIGHTER; over = 1; felt_due = 0
           :: else ->
              if
              :: left_early > 0 -> end_the_work()
              :: else -> change = LEAVE; over = 1; felt_due = 0
              fi
           fi
        fi
     fi; skip }
  :: fact == F_FELT_IN_SET -> d_step {
     effects_on_this_are_spent();
     if
     :: val == 0 -> fault = 0; in_a_row = 0; felt_due = 0
     :: val == SOMETHING_ELSE -> fault = 0; in_a_row = 0; felt_due = 1
     :: val != 0 && val != SOMETHING_ELSE && PINCH_LEAVES(place - 1, val) ->
        change = LEAVE; fault = 0; felt_due = 0
     :: else ->
        in_a_row = (fault == val -> (in_a_row < 3 -> in_a_row + 1 : 3) : 1);
        fault = val; felt_due = 1;
        if
        :: in_a_row == 3 && IF_IT_STAYS(place - 1, val) != 0 -> change = IF_IT_STAYS(place - 1, val); stays_due = 1
        :: else
        fi
     fi; skip }
  :: fact == F_PAIN_BEFORE_CHANGE -> d_step {
     if
     :: val >= 32 -> ask_again_if_strong()
     :: val >= 24 && val < 32 -> end_the_work()
     :: val < 24 && val <= IN_EXERCISE -> reread = 0; moved = 1; miss = 0; changed_set()
     :: val < 24 && val > IN_EXERCISE ->
        if
        :: left_early > 0 -> end_the_work()
        :: else -> moved = 1; over = 1; effects_on_this_are_spent(); go = EXERCISE_DONE
        fi
     fi; skip }
  :: else                          /* effort, minutes, reps: nobody reads them here */
  fi
}

inline end_the_work() { stage = AFTER_end_the_work(stage); moved = 1; go = CLOSE_OF_DAY }

inline only_what_is_gentle() {     /* of the list, what the gentle list and the other lists hold */
  mask = todo; still_allowed(); todo = mask; mask = 0; count_todo()
}

inline still_allowed() {           /* of `mask`, with the scripts' effects on the day for this look only */
  n = level; m = recovery;
  if :: REST_DAY(lowered) -> level = 2 :: else fi;
  if :: GENTLE_DAY(lowered) && level < 1 -> level = 1 :: else fi;
  if :: RECOVERY_DAY(lowered) -> recovery = 1 :: else fi;
  if :: level == 2 -> mask = 0 :: else -> keep_by_lists() fi;
  level = n; recovery = m; n = 0; m = 0
}

inline keep_by_lists() {
  if :: recovery -> mask = mask & RECOVERY_LIST :: else fi;
  if :: level == 1 -> mask = mask & GENTLE_LIST :: else fi;
  if :: SECOND_TODAY -> mask = mask & TWICE_LIST :: else fi;
  if :: waits -> mask = mask & GENTLE_LIST & ~LOADED :: else fi;
  p = 0;
  do
  :: p >= STATIONS -> break
  :: else ->
     dose_at_door(p);
     if
     :: (mask & (1 << p)) && !(room && OPEN_TODAY(p) && !LEFT_OUT(p, lowered) && GEAR_IS_HERE(p, gone)) ->
        mask = mask & ~(1 << p)
     :: else
     fi;
     p++
  od
}

inline count_todo() {
  exercises = 0; p = 0;
  do
  :: p >= STATIONS -> break
  :: else -> if :: todo & (1 << p) -> exercises++ :: else fi; p++
  od
}

inline take_value() {
  if
  :: aside == READ_BACK -> d_step {
     if
     :: val == 0 -> aside = (since -> AFTER_A_BREAK : 0); about = 0; reread = 1; unclear = 0
     :: else -> stop_with(STRONG_PAIN)
     fi; skip }
  :: aside == SIGN_IN_DOUBT -> d_step {     /* a clear no goes back to where it was */
     if
     :: val == 0 -> aside = (since -> AFTER_A_BREAK : 0); about = 0; quoted = 0; unclear = under; under = 0
     :: else -> stop_with(SIGN_TYPED)
     fi; skip }
  :: aside == WHAT_IS_HERE -> d_step {
     aside = 0; gone = val;
     if :: WORKING -> onward = LESS :: else fi; skip }
  :: aside == AFTER_A_BREAK -> d_step { since_answer(); skip }
  :: GO_ASKED -> phase = HOLDS
  :: SCREENING -> d_step { screen_answer(); skip }
  :: aside == 0 && stage == ENDING && miss != 0 -> d_step {
     if
     :: miss == 2 -> miss = 0; yes_left = val; alone = 0; listed = 0; go = NEXT_SECTION
     :: miss == 1 && val != 0 -> miss = 2
     :: miss == 1 && val == 0 -> code = E_BY_CHOICE; stage = AFTER_for_today(stage); go = TO_END
     fi; skip }
  :: fact != 0 && IS_SIGN(fact) -> d_step {
     if
     :: val == 1 -> stop_with(SIGN_ASKED(fact))
     :: else -> miss = miss & ~(1 << part)
     fi; skip }
  :: fact != 0 && !IS_SIGN(fact) ->
     take_number_or_name();
     d_step {
       if
       :: moved || strong == fact
       :: else -> know_value(); miss = miss & ~(1 << part)
       fi
     }
  fi
}

inline since_answer() {
  n = LOWEST(since); since = since & ~(1 << n);
  if
  :: n == SETS_SINCE ->            /* sets done meanwhile count as sets */
     m = (phase == RESTS || phase == REPORT || phase == RECHECK -> set_no : set_no - 1);
     p = (val / 4 < sets - m -> val / 4 : sets - m);
     then_since = 1;
     if
     :: m + p < sets && p > 0 && !(phase == RESTS || phase == REPORT || phase == RECHECK) ->
        set_no = set_no + p; hold_no = 1; phase = (TIMED_HOLDS(place - 1) -> READY : ON)
     :: m + p < sets && (p == 0 || phase == RESTS || phase == REPORT || phase == RECHECK) -> set_no = set_no + p
     :: m + p >= sets -> miss = 0; line = 0; go = BEGIN_EXERCISE
     fi;
     m = 0; p = 0
  :: n == WORSE_SINCE ->
     if
     :: val == 0 -> then_since = 1
     :: else -> since = 0; screen_again(31, 0)
     fi
  :: n == PAIN_SINCE && val >= 32 && reread -> stop_with(STRONG_PAIN)
  :: n == PAIN_SINCE && val >= 32 && !reread ->
     since = 1 << PAIN_SINCE; aside = READ_BACK; about = F_PAIN_NOW; unclear = 0; line = 0
  :: n == PAIN_SINCE && val < 32 -> aside = 0;
     if
     :: val <= TO_START
     :: val > TO_START && val <= GENTLE -> level = (level < 1 -> 1 : level)
     :: val > TO_START && val > GENTLE -> level = 2
     fi;
     if :: LAST_PAIN_KNOWN && val >= LAST_PAIN + 8 -> pain_up = 1 :: else fi;
     facts_end_with_the_screen();
     if
     :: place == 0 || val <= IN_EXERCISE && val < 24 -> onward = LESS | (BACK << 3)
     :: place != 0 && (val > IN_EXERCISE || val >= 24) -> miss = 0; line = 0;
        if
        :: val >= 24 || left_early > 0 -> end_the_work()
        :: else -> effects_on_this_are_spent();
           if :: left_early < 2 -> left_early++ :: else fi;
           next_exercise();
           if :: onward != 0 -> onward = LESS | (onward << 3) :: else fi
        fi
     fi
  fi;
  n = 0
}

inline screen_answer() {
  if
  :: section == LIST_ASKED -> listed = 0; yes_left = val; go = NEXT_SECTION
  :: section == 1 -> alone = alone & ~(1 << number); asked = (back -> asked : asked | (1 << number));
     if :: val == 1 -> section = 2; unclear = 0; signs = SIGNS(number) :: else -> go = NEXT_SECTION fi
  :: (section == 2 || section == 3) && signs > 0 ->
     if
     :: val == 1 -> stop_with(SIGN_OF(number, signs))
     :: else -> signs--; unclear = 0;
        if
        :: signs == 0 && section == 3 ->
           alone = alone & ~(1 << number); asked = (back -> asked : asked | (1 << number)); go = NEXT_SECTION
        :: else
        fi
     fi
  :: section == 2 && signs == 0 ->                      /* so nothing in this group? */
     if
     :: val == 0 -> stop_with(UNSURE)
     :: val == 1 && stage == ENDING -> go = NEXT_SECTION
     :: val == 1 && stage != ENDING -> doubts++;
        if
        :: doubts >= 3 -> code = E_PARTIAL; stage = AFTER_too_unclear(stage); go = TO_END
        :: else -> go = NEXT_SECTION
        fi
     fi
  fi
}

inline after_values() {            /* a strong pain is read back; else the rest of the prompt, or on */
  if
  :: moved || go != 0
  :: !moved && go == 0 && strong -> aside = 1; about = strong; unclear = 0; line = 0
  :: else -> on_from_here()
  fi
}

inline on_from_here() {
  line = 0;
  if :: stage == EXERCISE && place && phase == ON -> phase = REPORT :: else fi;
  if
  :: miss || stage == TODAY || stage == ENDING
  :: else ->
     if
     :: stage == WHO -> go = TO_CHECK_IN
     :: stage == SCREEN -> at = at + LEN_screen(at); unclear = 0; reread = 0; go = ON_IN_SCREEN
     :: stage == EXERCISE && place && (phase == RESTS || phase == READY || phase == RECHECK || phase == HOLDS)
     :: stage == CHECK_IN -> at = at + LEN_check_in(at); unclear = 0; reread = 0; go = ON_IN_CHECK_IN
     :: stage == AT_HAND -> at = at + LEN_at_hand(at); unclear = 0; reread = 0; go = ON_AT_HAND
     :: stage == CLOSE -> at = at + LEN_close(at); unclear = 0; reread = 0; go = ON_IN_CLOSE
     :: stage == WARM_UP -> at = at + LEN_warm_up(at); unclear = 0; reread = 0; go = ON_IN_WARM_UP
     :: place && phase == BEFORE -> at = at + LEN_before(at); unclear = 0; reread = 0; go = ON_BEFORE
     :: place && (phase == ON || phase == REPORT) ->
        at = at + LEN_after(at); unclear = 0; reread = 0; go = ON_AFTER_A_SET
     fi
  fi
}

/* ------------------------------------------------ what was not understood */

inline not_understood() {
  if
  :: TIMED && phase == HOLDS -> hold_over(); ev = 0
  :: TIMED && phase != HOLDS -> ev = 0
  :: !TIMED && line && !aside -> line = 0; ev = 0
  :: else ->
     if :: SAFETY -> doubts = (doubts < 3 -> doubts + 1 : 3) :: else fi;
     if
     :: SAFETY && doubts >= 3 -> ev = 0;
        if
        :: stage == ENDING -> stop_with(UNSURE)
        :: else -> code = E_PARTIAL; stage = AFTER_too_unclear(stage); go = TO_END
        fi
     :: !(SAFETY && doubts >= 3) && !unclear -> unclear = 1; ev = 0
     :: else -> unclear = 0; the_safer_answer()
     fi
  fi
}

inline the_safer_answer() {        /* leaves `ev` VALUE with the worst `val`, or is done itself */
  if
  :: aside == READ_BACK || aside == SIGN_IN_DOUBT -> val = 1; ev = VALUE
  :: aside == WHAT_IS_HERE -> val = ALL_GONE; ev = VALUE
  :: aside == AFTER_A_BREAK -> ev = VALUE;
     val = (LOWEST(since) == SETS_SINCE -> 400 : (LOWEST(since) == WORSE_SINCE -> 1 : 40))
  :: GO_ASKED -> phase = REPORT; go = TO_REPORT; ev = 0
  :: SCREENING && section == LIST_ASKED -> val = listed; ev = VALUE
  :: SCREENING && section != LIST_ASKED -> val = (section == 1 || signs > 0 -> 1 : 0); ev = VALUE
  :: !aside && !GO_ASKED && !SCREENING && IS_OWN(fact) ->
     know_worst(); miss = miss & ~(1 << part); on_from_here(); ev = 0
  :: !aside && !GO_ASKED && !SCREENING && !IS_OWN(fact) && fact == F_OWN_WORDS ->
     miss = 0; on_from_here(); ev = 0
  :: else -> worst_value(); ev = VALUE
  fi
}

/* ------------------------------------------------ a sign in doubt */

inline sign_in_doubt() {           /* asked by one question, over what the prompt comes to meanwhile */
  if
  :: aside == SIGN_IN_DOUBT -> ev = 0; stop_with(SIGN_TYPED)
  :: else ->
     keep_situation(); in_doubt = 1; was_read_back = (aside == READ_BACK); was_stage = stage;
     if
     :: unclear && !TIMED -> unclear = 0; the_safer_answer()
     :: else -> unclear = 1; ev = 0
     fi
  fi
}

inline doubt_is_asked() {          /* the day's last question is not lost under it; there the third stops */
  in_doubt = 0;
  if :: ended == 0 && (was_read_back || aside == READ_BACK) -> reread = 1 :: else fi;
  n = 0;
  if
  :: stopped -> n = 1
  :: !stopped && (ended != 0 || (stage == ENDING && was_stage != ENDING)) -> back_to_situation();
     if :: unclear > 1 -> n = 1; stop_with(SIGN_TYPED) :: else -> unclear++ fi
  :: else
  fi;
  if
  :: n
  :: else -> under = unclear; unclear = 0; quoted = 1; aside = SIGN_IN_DOUBT; about = SIGN_TYPED
  fi;
  n = 0; was_read_back = 0; was_stage = 0
}
