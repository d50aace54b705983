"""The points of words and of pairs of words, in tenths, just to no:out.

Law: data only, made by `tests/hearing/find_points.py` from our own labelled answers, which are
invented; how a line is read is told in `points`. Above 0 speaks for a warning sign.
"""

from __future__ import annotations

from typing import Final

TABLE: Final = """\
just 35 .
k -11 .
keep 6 FALL LOST falling 8 fumbling 16 dropping 20 DROPPING 26 .
keeper -8 .
keeping -13 .
keeps 6 sliding 7 GIVES giving 8 BULGE POP WAKE awake popping 9 FLUTTER 16 slipping 20 SLIP 28 COME 45 .
kept -15 COME -13 . -12 ACHE -6 BE WENT going 7 HEIGHT up 9 waking
kettle -6 . 6 BY with
keys -23 . -17 $ -9 ONTO
kg -12 .
kicked -10 OUT out 8 ONTO
kid -24 . -14 ONTO 11 BLOW
kidding -37 . -18 $
kids -35 . -20 $
kill 9 $ 20 myself
killed -9 .
killing 21 myself
kilos 16 and 23 .
kind 20 .
kinda 36 .
kit -17 $ .
kitchen 14 .
knackered -9 .
knee -16 . -14 SWELL swelled -8 BE from -6 is 7 in 19 to
kneed 7 . ONTO in
knees 10 BE are 15 wrists 16 . 18 HAND HANDS PART 29 and
knocked -19 OUT out 9 . 10 flat 11 ACHE 13 down 15 ODD ONTO
know -18 $ -14 . 19 why
knows -19 . -10 $
knuckle -7 .
knuckles -14 $ . -7 BLOW POP cracked
lab -18 .
labrum -14 $ -9 .
ladder 9 ON ONTO 11 . 14 $
laid -8 .
lake -14 .
landed 6 hard 11 ODD 12 . 33 ON ONTO on
landing -15 .
last -29 year -27 summer -23 $ season -14 month -12 # -11 . -9 winter -6 ONTO 6 few rep serve 7 week 8 PUT set 13 SHAPE step 16 MOTOR throw 17 DIGIT HANDS PART fingers 23 TRAINING
lat 15 .
late -25 . -21 $ -8 ON ONTO on
lately 35 . 36 $
later -27 $ .
lats -18 .
laughed -10 $ .
laughing -37 . -26 $
laundry -10 . -9 $
lay 12 down 13 ONTO 29 .
laying 8 . 12 down
lazy -14 . -8 $
lb 14 .
lbs -12 ONTO 6 and 9 .
lead -25 .
league -13 . -9 $
leaking -14 and 9 yellow 11 . 19 LEAK 21 $
leash 14 .
leave 13 .
lecture -25 . -15 $
leg -19 BY -17 day -10 . 7 BE is 12 $
legs -19 r -12 after -10 were -9 shaky -7 COME WENT -6 SINCE 8 are buckle 11 . 13 BE 20 FEELING feel 26 NOT
length -20 .
less -17 than -7 $ 25 . 28 POWER 34 strong
let -8 . 6 HEIGHT up 9 ACHE COME it 14 sleep 15 BE PUT WENT go
lets -16 . -8 BE
level -7 . -6 # NUM
lid -7 .
lidocaine 13 $ .
lie 8 ON on 10 down 13 ODD 16 ONTO 28 .
life -15 ONTO 11 COME came 17 NOT isnt 19 BE 29 $ 41 .
lift -16 mood -12 day -11 that -8 HEIGHT 6 kettle 7 . 9 bag 10 SOCKETED arm 11 ARM PART 13 gallon it 17 ACHE 50 THING
lifted -10 .
lifting -31 . -9 BE
lifts 9 .
light -39 . -16 $
lightheaded 6 and 24 .
lightly 17 .
lightning 8 . bolt
lights -7 BE -6 COME PUT WENT went 9 OUT out 12 $
like 39 .
lil 36 .
limb 11 . BE
limp 6 SINCE after 8 $ .
line -19 $ -10 ON ONTO on 20 MISSILE drive
linebacker 17 . 20 $
lineup -18 . -15 $
lip -26 .
liquid 10 COME 14 .
lit -18 . -15 HEIGHT up
livable -7 $ .
live 7 .
living 26 $ 29 .
load -7 .
loaded -11 .
lock -8 . ONTO
locked -14 . ONTO 10 HEIGHT up
locker -14 . -9 $ 11 room
locks 8 BY with 23 .
log -20 .
lol -37 . -33 $ -9 jk
long -18 . -9 $ -8 day 9 MISSILE drive
longboard 28 $ .
longer -38 NUMB -9 $ 17 FEELING feel 27 BE
look -8 at 14 .
looked 6 .
looks -7 good 7 shiny 8 CHANGED 9 SHAPE 10 RED out 14 COLOUR LEAK 16 ODD 23 .
loose -21 and -6 GROUND 12 ACHE it 13 $ goosey
loosened -19 .
lose -7 .
losing -10 $ at 9 HOLD MOTOR POWER grip 12 weight
loss 7 POWER
lost -19 THING -15 TRAINING -14 BY by -13 DAILY balance -12 in -10 MISSILE ball feel keys match voice -9 $ 7 feeling 10 # strength 11 NUM its 12 . power sensation 13 POWER 16 ability 22 half 24 MOVE control
lot -13 ONTO 9 .
loud 7 and 13 BULGE COME PUT pop 19 POP 36 .
love -12 . -6 BY with
lovely -11 .
low -6 $
lower -9 $ -7 back 7 and 19 . 24 than
luck -17 . -13 $
lump 6 $ in 9 ONTO
lumpy -9 .
lurched 9 .
luxation 18 .
lying 25 ONTO down 29 .
machine -19 . -15 $
mad -7 .
made -14 skin -12 ELSEWHERE FACE -10 ACHE 6 crack 22 POP
make -18 . -14 ACHE it 25 fist
makes 13 ACHE it
man -18 $ .
manage -6 $ 16 .
manageable -9 . -6 $
many 9 . 15 times
march -16 . -12 $
marks -18 .
mash -9 . HEIGHT up
mask -23 . -11 $
match -19 . -7 i
matches -8 $ .
mate -15 $ -13 . BE HAVE 18 CANT NOT cant
math -10 .
maths -7 . -6 $
matter 14 what 23 how 26 .
max -16 .
maximum -10 $ .
may 9 HAVE have
maybe -22 # -17 $ MANY NUM 8 PART 9 it 13 ACHE 18 FEVER fever numb 19 SWELL 25 ONTO from 27 NUMB less 39 .
me 39 .
mean -24 . -18 $ 6 ACHE
means -14 $ .
meat -14 .
medium -7 $ .
meds 9 NOT 21 .
meeting -14 .
meh -9 $ .
mhm -8 $ .
mi -12 RIBS belly 7 CANT DROPPING NOT cant drop 10 PART 15 . HANDS 17 HAVE have
mid 10 . 14 MOTOR throw 15 TRAINING
middle -15 $ 6 DIGIT HANDS PART finger 10 . 23 CHEST chest
midnight -9 . WAKE
midterm -16 .
might 8 PUT 14 HAVE have 16 BE be 19 .
mightve 6 NUMB 11 .
mild -15 .
milk -13 $
million -14 .
mind -25 . -15 $
mine -20 .
minute -14 $ 14 day 20 .
minutes -9 for -8 .
missed -6 . 13 last
missing 12 . 14 beats
mistake -6 .
mobility -24 . -21 $
model -7 .
mom -31 . -12 $ -9 COME FALL QUITS fell -8 BE HAVE
moment 14 .
monday 17 $ 19 .
money -18 . -13 $
month 7 CANT and cant no 15 NOT 28 .
months 12 .
mood -16 ONTO in -9 .
more -19 ONTO in -10 than -6 . weight 21 $
morning -23 and -16 but -9 # NUM 7 PART 19 . 38 $
mornings 11 $ .
mosquito -37 . -25 bite -21 bites
most -15 it -8 . -7 ACHE -6 $
mostly -33 . -26 ONTO -24 in -8 $ ARM PART
mother -13 .
motion 22 .
motorbike 10 .
motorway -21 $ .
mound -6 . 6 $
mouth -12 ACHE PAIN hurts 18 hangs 22 BE is 26 .
move 10 $
moved -10 . 15 OUT out
moves -18 . -11 better
movie -31 . -16 $
moving -10 $
mph 14 .
much -26 .
mud -11 $ .
mug 15 .
muscle -32 PAIN -20 $ -19 ACHE -12 HEIGHT behind soreness -6 pain 7 at 11 POP tore 13 . 14 BREAK 17 BE
muscles -21 . -16 $
music -23 .
must -36 i -31 .
myself 13 and 14 NOT without 15 ONTO 45 . 49 $
nah -27 . -22 PAIN sore 9 i
nail -23 . -15 $
nails -13 . 7 WENT turned
nap -25 . -19 $
naproxen 19 .
nasty 21 . COME FALL fall
naw -7 $ .
near -15 top 8 . 10 ARM ELBOW MISSILE elbow 15 ACHE PART
nearly -14 died 10 BE 11 FALL QUITS fell 13 passed 15 FAINT PUT WENT fainted went 18 . 20 COME
neck -28 . -22 $ -14 BE -12 is -10 and 9 into 12 ACHE PAIN hurts 16 to
need -10 more -6 NEW heavier new 11 HAND HANDS PART 15 AGAIN KEEP always 21 PILL
needed 7 HAND HANDS PART
needles 17 ONTO in 39 .
needs -14 .
negative -16 . -10 $
neighbour -15 .
neighbours -16 .
neither -6 .
nerve 6 .
nerves -23 . -10 $
nervous -29 . -11 about -9 $ -7 for
net -12 TRAINING -11 $ -7 BE
nets 13 $
nettles 6 .
new -39 . -17 THING -7 MISSILE WORN cleats -6 BREAKS_LIKE OPPONENT TRAINING 6 $ SHAPE 13 corner
next -7 week 22 $
ngl -12 $ -6 .
nice -26 . -16 $ -7 burn
nicely -23 $ .
night -15 was -14 TRAINING -13 before -7 SLIP game shift 8 PART SOCKETED because this 9 ONTO 12 long 14 is 19 from 20 $ 22 PAIN pain 24 SWEATS sweats 25 i it 26 . 41 ACHE
nighter -8 .
nights 8 NOT 9 because 11 ONTO in 15 $ 30 .
nil -8 $ .
nine -19 $ -10 .
ninth -7 .
nip -17 . at
no -19 problem -12 change -8 HANDS -7 PART it -6 ACHE ONTO big 8 longer 14 improvement sleep 17 i 26 joke 29 matter reason
no:# -12 . -10 $
no:ACHE -18 same -15 anymore -11 at -10 in -8 or -7 hurts 6 . up 10 it 25 but
no:AGAIN -10 $ 6 no 14 arm
no:ARM -12 in 6 since up 10 $ 12 .
no:ASLEEP -15 .
no:BE -23 better -20 difference -19 for -16 dead -13 more -12 last legs -11 back out weakness -10 numb over -9 none -6 normal there unstable 6 arm finger ring warm 8 past 9 air down fingers 11 in 13 enough 15 on words 16 . between 17 it 19 comfortable 21 alive 22 $ 24 away when 27 ball
no:BLOW -18 . -9 $
no:BREAK -6 $ 7 fingers
no:BREAKS -22 LIKE -18 LIKE_$
no:BREATH -15 after -12 from -11 at 6 properly 7 deep 9 good in 12 sitting without 13 when 25 $ 26 .
no:BULGE -21 . -6 $
no:BY -19 $ -9 . 9 it 26 that
no:CANT -24 . -23 complain -17 be -14 say -12 $ -8 at -7 push start 6 button control 7 catch explain snap walk 8 feel keep pull stay wash 9 draw go rotate 12 press scratch 13 budge recover turn 14 pick take 15 reach 16 squeeze 17 speak unscrew 22 breathe wake 23 get
no:CATCH -8 $ 7 breath
no:CHANGED -7 feelings 11 $ 12 .
no:CHEST -14 .
no:COLD -14 . -11 $
no:COLOUR -8 $ .
no:COME -22 out -19 $ -10 . over -8 numb -6 on 6 up 7 more 8 back past 9 down 10 to 11 off 24 away
no:DAILY 9 . 10 with 11 open
no:DIGIT 6 and 22 $ 33 .
no:DROPPING -16 anything
no:FACE -12 .
no:FAINT -14 . -10 $
no:FALL -26 . -14 $
no:FEELING -20 difference -19 for -15 better -12 legs -10 hand 6 finger ring 7 on 9 fingers 11 in it 12 . 16 between 24 when 27 ball 28 $
no:FEVER -12 . -8 $
no:FLUTTER -16 . -8 $ -7 feelings
no:GIVES 6 .
no:GROUND -21 $
no:HAND 11 .
no:HANDS 6 and 7 after when 8 since 20 $ 37 .
no:HAVE -15 to -11 band last -6 weakness 6 arm warm 9 air 10 $ 13 enough 15 comfortable words
no:HEART 6 .
no:HEIGHT -19 from 6 $ 9 than 27 .
no:HOLD 10 toothpaste 14 .
no:INFECT -9 .
no:KEEP 14 arm
no:LEAK -14 . -8 $
no:LEG 16 $
no:LIFT 12 .
no:LOOK 14 .
no:LOOSE -15 $ .
no:LOST -12 . -8 strength
no:MANY -11 $ -8 . 6 no
no:MISSILE -14 to 6 $ anymore 10 .
no:MOTOR -7 in -6 on 6 arm 7 out shirt 9 it top 10 myself toothpaste 11 $ 12 hair 13 door 22 .
no:MOVE -16 it 17 $ 28 .
no:MY 22 .
no:NEW 10 $
no:NIGHTS 6 . 13 $
no:NOT -34 to -29 that -23 anymore -22 tingling -20 have numbness trouble weak went with -19 falls swelling -17 complain on pop -16 more time -15 $ complaints -14 came say wake weird -13 cold good shoulder was -12 fall think -11 new pinch problem start weakness -10 in problems short throws -9 dropping fear hot signs special swollen tingle -8 come contact drop hurt issues loss noticed resistance slept towel -7 above dizzy drama dropped hit issue training -6 felt happened looks nothing painful popped shortness thanks today 6 button lying motivation zip 7 catch energy fell force going notice sitting walk 8 biggie fit pull quits snap stay wash 9 higher press rotate worth 10 . dieting gone lets 12 coming scratch turn 13 budge for meaning recover 14 air look noticing sensation take 15 get numb 16 control gas obey squeeze 17 regular sore speak unscrew 18 stops 19 drive goes leaves 20 reach want 21 and same 22 breathe diet position power strength 23 go wanna 25 feeling 32 trying
no:NUM -14 . -11 $ 6 no
no:NUMB -33 $ -20 in -16 anymore -14 feeling -12 fingers -7 . no or
no:ODD -7 feelings 11 $ 12 .
no:ON -10 it -9 $ 14 that 17 ball
no:ONTO -14 bat -6 it 7 head which 8 to 13 . 14 $ 15 that 17 ball 19 arm
no:OUT -20 $ -15 . 6 at
no:PAIN -18 same -16 at -15 $ -14 since -8 or 19 it 25 but
no:PART -12 in 6 and 7 after when 10 up 15 since 17 $ 25 .
no:PILL 11 .
no:POP -25 . -16 $ 7 fingers
no:POSITION 7 position 8 in 17 that 25 $ 50 .
no:POWER -9 at -6 on 15 to 21 ball 24 $ 34 .
no:PUSH 6 $ 10 myself 13 door 21 .
no:PUT -10 out over 8 past 10 door myself 13 $ 16 away
no:REACH 7 out 13 back 43 .
no:SEAT 7 in 8 $ 17 that 37 .
no:SHAPE 7 $
no:SHEETS 11 .
no:SHOULDER -12 $ -10 .
no:SINCE 11 . 17 $
no:SLIP -25 . -15 $
no:SOCKETED 6 up 7 since
no:STOP 10 up 13 hurting 16 $ 31 .
no:SWELL -33 . -21 $ -9 either
no:THING -8 and -6 . 8 with 10 $
no:TIGHT 8 . 10 toothpaste
no:TRAINING -22 . -8 $ -7 today
no:UNSTABLE -6 $ .
no:VEHICLE -8 . 8 with
no:WAKE -15 $ -14 .
no:WEAK -22 . -12 $
no:WEAKNESS -24 $ 6 . 18 no
no:WENT -10 over -8 numb out 8 past 9 down 11 on 12 $ 24 away 36 .
no:WORN -9 $ 6 . finger
no:^ -6 i 9 ACHE PAIN pain 17 NUMB 18 tingling
no:a 35 .
no:above -7 # NUM
no:air 9 ONTO in 21 $ 23 .
no:alive 7 SINCE anymore 18 $ 21 .
no:and -19 NOT -15 no -8 HOLD MOTOR POWER grip 6 its 10 hand 11 ACHE it 12 FACE face i 14 HAND 16 HANDS PART 32 .
no:anymore 17 $ 18 .
no:anything -23 . -8 $ and
no:arm 6 up 7 $ 11 HEIGHT 23 .
no:as -11 .
no:asleep -15 .
no:at -32 . -16 $ -7 NIGHTS night
no:away 19 $ 24 .
no:back 11 $ 24 .
no:bad -17 .
no:ball 6 anymore 17 . 18 SINCE
no:band -23 . -18 $
no:bat -14 . 7 $
no:be 8 . 21 alive
no:bed 11 .
no:behind 7 .
no:better -24 . -17 $
no:between 9 . 16 LEG legs
no:biggie 8 $ .
no:bit -15 .
no:bladder 20 .
no:bottle 10 .
no:breath -11 at 8 $ 10 sitting 12 NOT without 18 .
no:breathe -12 ONTO from 6 properly 7 deep 9 good 10 $ 17 .
no:budge 13 $ .
no:but 14 . 16 NOT no
no:button 6 .
no:came -14 . -11 back
no:cannot 7 HAVE MOTOR get 10 FEELING feel 16 BE
no:cant -17 complain -15 come -14 THING -13 say -9 push -8 COME -7 PUT 6 button 7 DAILY TIGHT squeeze turn 8 wash 9 PUSH WENT press 12 BE scratch 13 recover 14 HOLD reach take 15 CATCH catch 17 unscrew 21 control 22 MOTOR 28 MOVE 30 breathe 31 REACH 36 BREATH 37 HAVE get
no:cap 8 $ 9 .
no:catch 7 BREATH breath 8 .
no:catching -8 . -7 $
no:chest -14 .
no:coffee 7 .
no:cold -14 . -11 $
no:come -12 OUT out -6 . 9 back 11 CHANGED ODD ONTO off
no:comfortable 7 POSITION SEAT position 23 .
no:coming 9 . 12 back
no:complain -24 . -20 $
no:complaints -15 . -11 $
no:contact -8 .
no:control -16 ACHE it 16 .
no:could -13 .
no:couldnt -16 MOVE control -9 CATCH catch -8 HAVE get -6 AGAIN KEEP keep 6 push 8 BE 11 HOLD TIGHT squeeze 12 PUT 14 pick 16 PUSH 22 FEELING feel 32 MOTOR
no:dead -25 . -15 ACHE ARM PART SOCKETED arm
no:deep 7 NOT without 14 BREATH breath 18 .
no:did -14 .
no:didnt -20 WAKE wake -12 COME -10 FALL -9 HAVE fall -8 DROPPING drop get -6 MOTOR 9 ACHE PAIN hurt 10 .
no:diet 16 . 22 $
no:dieting 10 $ .
no:difference -20 .
no:dizzy -10 . -7 $
no:do -6 .
no:does 14 .
no:doesnt -20 WAKE wake -12 BULGE POP pop -9 hurt -8 NUMB tingle -7 ACHE PAIN -6 COME 14 BE LOOK look 15 WENT go
no:dont -19 have -14 HAVE -12 think 20 want 23 wanna
no:door 7 $ 11 LEAK MOTOR PUSH open 17 .
no:down -8 . 13 $
no:drama -7 .
no:draw 9 . full
no:drive 19 .
no:drop -8 . THING anything
no:dropped 9 .
no:dropping -9 . THING
no:either -9 $ .
no:energy 7 .
no:enough -16 $ 13 BREATH air
no:even 21 .
no:explain 7 .
no:fall -12 . -9 $
no:falls -19 .
no:fear -10 .
no:feel -20 difference -15 better -12 LEG legs -10 HAND hand -7 for 6 WORN finger ring 7 ACHE 9 fingers 10 $ it 23 DIGIT 25 when 27 MISSILE ball
no:feeling 7 . ON on 11 in 19 ONTO
no:feelings -7 .
no:feels -7 .
no:felt -6 . 8 ACHE it
no:fever -10 . -6 $
no:find -16 BREAKS_LIKE band -12 zone 7 comfortable 17 SEAT position 19 words 21 POSITION
no:finger 13 $ 18 .
no:fingers -8 today 8 $ 9 .
no:fingertips 9 .
no:fit 8 .
no:for -7 TRAINING 14 ACHE 15 . 19 month
no:force 7 $ 8 ONTO in 14 .
no:full 12 BREATH breath 20 .
no:gas 16 .
no:get -15 to -11 last 6 ACHE ARM HOT LEAK SOCKETED arm warm 9 air 10 PART 11 BREATH 13 enough 15 comfortable words 16 . POSITION
no:go -10 ONTO over -9 OUT out 8 away past 13 up 21 HEIGHT 22 .
no:goes 10 away 12 $ 19 .
no:going 7 . 13 up 15 HEIGHT
no:gone 10 .
no:got -10 .
no:grip -17 ONTO -6 ON on 6 $ 8 .
no:hair 10 $ 12 .
no:hand 11 SINCE
no:happened -6 $ .
no:hasnt -6 PUT 10 BE LOST WENT gone
no:have -25 . -11 NUMB
no:havent -11 HAVE -8 noticed -7 COME DROPPING QUITS dropped 10 POWER
no:head 6 . 7 $
no:heat 10 .
no:here -19 $ -8 . 27 SINCE anymore
no:higher 9 than 10 .
no:his -16 .
no:hit -11 .
no:home -23 .
no:hot -7 .
no:hurt -13 .
no:hurting 9 $ .
no:hurts -9 . -8 $
no:i -10 . HAVE -8 have
no:in 7 DIGIT which 8 HANDS 18 ARM arm 19 ACHE 21 SOCKETED 24 PART
no:infection -9 .
no:is -10 . -8 none -6 there
no:isnt -17 WEAK weak -16 NUMB -13 numb -12 LEAK 7 COME going 14 WENT 17 BE worth
no:issue -7 . -6 $
no:issues -8 . -6 $
no:it 13 . 19 $
no:jk -7 .
no:keep 8 . 14 SOCKETED arm
no:last -12 $ 15 week
no:leaves 19 .
no:left 13 .
no:legs 16 $
no:lets 10 . HEIGHT up
no:lifting 9 .
no:live 13 SINCE anymore 18 more 19 . 21 $
no:living 17 $ .
no:lol -22 . -21 $
no:look 14 .
no:looks -6 .
no:loose -15 $ .
no:loss -8 . POWER strength
no:lying 6 $ .
no:me -10 .
no:meaning 13 . to
no:month 19 .
no:more -9 than -7 . -6 PAIN 8 POWER force
no:motivation 6 .
no:my 34 .
no:myself -11 . 10 OUT out
no:neither -13 ACHE
no:net 10 .
no:never -20 went -14 COME -13 BE -12 came -8 ACHE PAIN PUT hurt -6 WENT 7 QUITS 8 quits 10 lets 16 goes 18 stops 19 leaves 29 STOP
no:new -21 .
no:night 6 . 13 $
no:no -37 NUMB -26 . -19 CANT numbness trouble -18 SWELL swelling -17 tingling -15 PILL complaints -13 PART POP SHOULDER -12 pinch -11 COME TRAINING -10 MOTOR -9 fear numb signs that time -8 $ BULGE CHANGED FLUTTER LOST ODD SHAPE contact loss towel weird -7 FEVER drama feel issue throws training -6 HOLD LOOK NOT WEAKNESS issues looks pop shortness slept thanks weakness 6 BREATH HEART air force motivation power 8 HEIGHT biggie higher 13 sensation zip 14 BE 16 gas 18 strength 19 POWER drive 22 POSITION SEAT position 23 feeling 24 FEELING
no:nobody -7 ACHE PAIN hurt
no:normal -7 $ .
no:not -23 SINCE anymore -18 ONTO -15 PART -12 SOCKETED -10 more short -9 COLD cold in -6 LEAK painful 6 NUMB lying numb 9 BE PAIN 10 dieting 11 . COME 12 coming 17 regular sore trying
no:nothing -30 to -19 CHANGED ODD -18 that -14 COME -13 NUMB -12 numb -11 . -10 NEW new -9 special -8 ACHE -7 $ -6 FLUTTER happened weird 8 PAIN 12 ONTO in 13 for
no:notice 7 .
no:noticed -11 .
no:noticing 14 $ .
no:numb -21 $ -15 PART -12 DIGIT HANDS SINCE fingers
no:numbness -27 . -16 ONTO in
no:obey 16 .
no:of -14 .
no:off 14 $ 20 .
no:on -10 ACHE it -9 $ 7 MISSILE 14 that 17 ball
no:once -16 . -15 $
no:one -16 .
no:open 11 .
no:or -29 . -9 THING anything -7 CATCH
no:out -11 SINCE -7 $ -6 . 6 HANDS PART at
"""
