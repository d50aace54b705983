/* One day of talk, written a second time, for another checker. By hand, not made from the session.
 *
 * Law: nothing here is taken from the session's or the rules' code. Names in capitals stand for the
 * compiled program, plan and diary and for the table of stages; prove_promela*.py write them in
 * below.
 * Numbers are in quarters (a pain of 3 is 12). A stored state in which nothing is pending (`ev` 0)
 * is one situation: it is told once, and then everything that may happen is tried. Within a d_step
 * the first way that fits is taken; what the athlete may do is chosen outside, where every way is.
 */

/* ------------------------------------------------ what a situation is made of, and `t`: which
   conditions of the scripts hold, a bit each */
byte stage, at, miss, line, unclear, under, doubts, aside, about, reread, quoted;
byte level, slept_short, morning_up, ache, threw, pain_up, playing, no_step, waits, recovery;
byte alone, asked, listed, section, number, signs, yes_left;
int gone, lowered, todo;
byte exercises, left_early;
byte place, sets, low, high, reach, form, load;      /* the exercise under way (from 1), its dose */
byte set_no, phase, hold_no, change, fault, in_a_row, felt_due, stays_due, over;
byte since, back;                   /* still to ask after a break; where a screen in mid-day came in */
int onward;                        /* what follows at once, the first in the lowest three bits */
byte stopped, ended;

/* ------------------------------------------------ within one step only */
byte ev, part, strong, fact, moved, alone_asked, go, then_since, now_at, code, keep, settled, p, n, m, room;
byte in_doubt, was_read_back, was_stage;
byte d_sets, d_reach, d_form, d_load;
short val, said;              /* the answer as it is taken, and as it was given */
int mask, sum, from;
byte what, which;

#define VALUE 1
#define WHOLE 2
#define UNCLEAR 3
#define SIGN 4
#define STOP 5
#define TIMER 6
#define GEAR 7
#define BREAK 8
#define OPEN 9
#define MAYBE 10

#define READ_BACK 1                /* asides */
#define SIGN_IN_DOUBT 2
#define AFTER_A_BREAK 3
#define WHAT_IS_HERE 4

#define SETS_SINCE 0                /* what a break asks, by bits of `since` */
#define SCREEN_SINCE 1
#define WORSE_SINCE 2
#define PAIN_SINCE 3

#define LIST 1                     /* what follows at once */
#define LESS 2
#define RETURN 3
#define BACK 4
#define NEXT 5
#define GOES_ON (aside == 0 && !in_doubt && ended == 0 && onward != 0 && (stage != SCREEN || (onward & 7) == RETURN))

#define LIST_ASKED 4
#define SCREEN_OVER 5

#define BEFORE 1
#define ON 2
#define READY 3
#define HOLDS 4
#define REPORT 5
#define RESTS 6
#define RECHECK 7

#define SHORTER 1
#define EASIER 2
#define LIGHTER 3
#define LEAVE 4
#define SOMETHING_ELSE 99

#define TIMED (aside == 0 && stage == EXERCISE && place != 0 && (phase == RESTS || phase == HOLDS))
#define GO_ASKED (aside == 0 && stage == EXERCISE && place != 0 && phase == READY)
#define RECHECK_ASKED (aside == 0 && stage == EXERCISE && place != 0 && phase == RECHECK)
#define SCREENING (aside == 0 && ((stage == SCREEN && section != SCREEN_OVER) || (stage == ENDING && miss == 0)))
#define SAFETY (aside == READ_BACK || aside == SIGN_IN_DOUBT || (aside == AFTER_A_BREAK && LOWEST(since) == WORSE_SINCE) || SCREENING || (aside == 0 && stage == ENDING && miss == 2) || IS_SIGN(fact))
#define WORKING (stage == TODAY || stage == WARM_UP || stage == EXERCISE)
#define LOWEST(b) ((b & 1) -> 0 : ((b & 2) -> 1 : ((b & 4) -> 2 : ((b & 8) -> 3 : ((b & 16) -> 4 : ((b & 32) -> 5 : ((b & 64) -> 6 : 7)))))))
#define HARD(v) (v >= 2)           /* none, light; hard practice, bullpen, game */

/* what is still to be walked once an answer is taken */
#define TO_DOOR 1
#define TO_CHECK_IN 2
#define ON_IN_CHECK_IN 3
#define NEXT_SECTION 4
#define ON_IN_SCREEN 5
#define ON_AT_HAND 6
#define LAY_OUT 7
#define BEGIN_WORK 8
#define ON_IN_WARM_UP 9
#define NEXT_EXERCISE 10
#define BEGIN_EXERCISE 11
#define ON_BEFORE 12
#define TO_REPORT 13
#define ON_AFTER_A_SET 14
#define SET_IS_OVER 15
#define EXERCISE_DONE 16
#define CLOSE_OF_DAY 17
#define ON_IN_CLOSE 18
#define TO_STOP 19
#define TO_END 20
#define WHAT_ELSE_SINCE 21
#define LESS_OF_IT 22
#define BACK_FROM_SCREEN 23
#define BACK_IN_PLACE 24

/* THE TABLES OF THE DAY */

/* ------------------------------------------------ small things done in many places */

inline forget_tests(which) {       /* conditions drop out of sight: 0 all, 1 an exercise's, 2 a set's */
  n = 0;
  do
  :: n >= TESTS -> break
  :: else ->
     if
     :: which == 0 || (which == 1 && ABOUT_A_SET(n)) || (which == 2 && ABOUT_ONE_SET(n)) -> t[n] = 0
     :: else
     fi;
     n++
  od;
  n = 0
}

inline spend_the_day() {           /* what only the work of the day reads goes; tests stay */
  at = 0; miss = 0; line = 0; unclear = 0; under = 0; aside = 0; about = 0; reread = 0;
  level = 0; slept_short = 0; ache = 0; threw = 0; pain_up = 0; playing = 0; no_step = 0;
  waits = 0; recovery = 0; alone = 0; asked = 0; listed = 0; section = 0; number = 0; signs = 0;
  yes_left = 0; gone = 0; lowered = 0; todo = 0; exercises = 0; left_early = 0;
  since = 0; back = 0; onward = 0;
  no_exercise()
}

inline no_exercise() {
  place = 0; sets = 0; low = 0; high = 0; reach = 0; form = 0; load = 0; set_no = 0;
  phase = 0; hold_no = 0; change = 0; fault = 0; in_a_row = 0; felt_due = 0; stays_due = 0; over = 0
}

inline stop_with(which) { code = which; moved = 1; go = TO_STOP }

inline ask_again_if_strong() {     /* a pain of 8 or more: read back once, the second time it stops */
  line = 0; unclear = 0;
  if
  :: reread -> stop_with(STRONG_PAIN)
  :: else -> strong = fact
  fi
}

inline what_the_day_still_needs() { /* facts go after their last reader */
  no_step = ((no_step || level > 0 || HOLDS_ALL_BACK(lowered)) && STEP_IS_DUE -> 1 : 0);
  waits = 0; recovery = 0;
  level = (stage == TODAY || stage == WARM_UP -> level : 0);
  gone = gone & GONE_THAT_COUNTS((place != 0 -> todo | (1 << (place - 1)) : todo))
}

inline dose_at_door(q) {           /* today's dose: the ladder's, less the night, less the scripts */
  d_sets = DOOR_SETS(q, morning_up); d_reach = DOOR_REACH(q, morning_up);
  d_form = DOOR_FORM(q, morning_up); d_load = DOOR_LOAD(q, morning_up);
  if :: slept_short && d_sets > 2 -> d_sets-- :: else fi;
  if :: FEWER_SETS(q, lowered) && d_sets > 1 -> d_sets-- :: else fi;
  room = 1;
  if
  :: SHORTER_TODAY(q, lowered) -> if :: d_reach > 0 -> d_reach-- :: else -> room = 0 fi
  :: else
  fi;
  if
  :: EASIER_TODAY(q, lowered) && EASIER_FORM(q, d_form) != 0 -> d_form = EASIER_FORM(q, d_form)
  :: EASIER_TODAY(q, lowered) && EASIER_FORM(q, d_form) == 0 -> room = 0
  :: else
  fi;
  if
  :: LIGHTER_TODAY(q, lowered) && LESS_LOAD(q, d_load) != 0 -> d_load = LESS_LOAD(q, d_load)
  :: LIGHTER_TODAY(q, lowered) && LESS_LOAD(q, d_load) == 0 -> room = 0
  :: else
  fi
}

inline effects_on_this_are_spent() { lowered = lowered & ~ON_THIS_EXERCISE }

inline to_the_set() {              /* timed holds wait for `go`; reps are asked for at once */
  hold_no = 1;
  if
  :: TIMED_HOLDS(place - 1) -> phase = READY
  :: else -> phase = ON; go = TO_REPORT
  fi
}

inline changed_set() {             /* one thing less, or, without room, the exercise is left */
  effects_on_this_are_spent();
  room = 0;
  if
  :: change == SHORTER && reach > 0 -> reach--; room = 1
  :: change == EASIER && EASIER_FORM(place - 1, form) != 0 -> form = EASIER_FORM(place - 1, form); room = 1
  :: change == LIGHTER && LESS_LOAD(place - 1, load) != 0 -> load = LESS_LOAD(place - 1, load); room = 1
  :: else
  fi;
  if
  :: room -> change = 0; stays_due = 0; set_no++; to_the_set()
  :: else -> go = EXERCISE_DONE
  fi
}

inline hold_over() {
  if
  :: hold_no >= high -> phase = REPORT; go = TO_REPORT
  :: else -> phase = READY; hold_no++
  fi
}

inline rest_over() {               /* pain now before a changed set, else the next set */
  if
  :: change != 0 && over && !stays_due -> phase = RECHECK; effects_on_this_are_spent()
  :: change != 0 && !(over && !stays_due) -> changed_set()
  :: change == 0 -> set_no++; effects_on_this_are_spent(); to_the_set()
  fi
}

inline next_exercise() {           /* what is under way is behind; the next, or the close, at once */
  if
  :: stage != EXERCISE && todo == 0 -> stage = AFTER_nothing_left(stage); go = CLOSE_OF_DAY
  :: else -> at = place; no_exercise(); miss = 0; line = 0; unclear = 0; reread = 0; onward = NEXT
  fi
}

inline facts_end_with_the_screen() {
  asked = 0; threw = 0; playing = 0;
  no_step = no_step || pain_up; pain_up = 0
}

inline screen_again(those, in_the_list) {
  back = stage; stage = AFTER_screen_again(stage); alone = those; listed = in_the_list;
  miss = 0; line = 0; aside = 0; at = 0; go = NEXT_SECTION
}
