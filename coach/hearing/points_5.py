"""The points of words and of pairs of words, in tenths, june to no:once.

Law: data only, made by `tests/hearing/find_points.py` from our own labelled answers, which are
invented; how a line is read is told in `points`. Above 0 speaks for a warning sign.
"""

from __future__ import annotations

from typing import Final

TABLE: Final = """\
june -12 $ .
juniors -15 $ .
just 35 .
k -10 .
keep 6 FALL LOST falling 8 fumbling 17 dropping 20 DROPPING 25 .
keeper -8 .
keeping -12 .
keeps 7 GIVES giving 8 BULGE POP popping 9 FLUTTER WAKE awake 15 slipping 20 SLIP 32 COME 45 .
kept -15 COME -13 ACHE -10 . -6 BE WENT going 7 HEIGHT up 9 waking
kettle -6 . 6 BY with
key 7 .
keys -20 . -13 $ -9 ONTO
kg -12 .
kicked -10 OUT out 8 ONTO
kid -25 . -14 ONTO 12 BLOW
kidding -35 . -17 $
kids -33 . -18 $
kill 11 $ 20 myself
killed -8 .
killing 19 myself
kilos 15 and 21 .
kind 20 .
kinda 38 .
kit -18 $ .
kitchen 13 .
knackered -9 .
knee -18 . -14 SWELL swelled -8 from -6 BE 8 in 19 to
kneed 7 . ONTO in
knees 8 BE are 14 wrists 16 . 17 HAND HANDS PART 28 and
knocked -18 OUT out 7 . 11 ACHE flat 13 down 14 ONTO 15 ODD
know -19 $ -15 . 17 why
knows -17 . -10 $
knuckle -6 .
knuckles -14 $ -12 . -7 BLOW POP cracked
lab -18 .
labrum -15 $ -7 .
ladder 9 ON ONTO 10 . 12 $
laid -10 .
lake -16 .
landed 6 hard 12 ODD 13 . 33 ON ONTO on
landing -15 .
last -31 year -26 summer -23 $ season -15 ones -13 . -12 # -11 reps -10 month -9 winter -6 ONTO 8 PUT set week 13 SHAPE step 17 DIGIT HANDS MOTOR PART fingers throw 25 TRAINING
lat 16 .
late -26 . -20 $ -7 ON ONTO on
lately 34 $ .
later -25 $ .
lats -18 .
laughed -10 $ .
laughing -37 . -28 $
laundry -11 . -10 $
lay 11 down 12 ONTO 33 .
laying 7 . 12 down
lazy -15 . -8 $
lb 14 .
lbs -11 ONTO 6 and 8 .
lead -25 .
league -13 . -9 $
leaking -14 and 8 yellow 9 . 18 $ 20 LEAK
leash 15 .
lecture -28 . -15 $
leg -19 BY -16 day -10 . 8 BE is 11 $
legs -19 r -12 after -10 were -9 shaky -7 COME WENT -6 SINCE TIGHT heavy 8 buckle 10 . are 13 BE 20 FEELING feel 28 NOT
length -20 .
less -20 than -10 $ 25 . 27 POWER 33 strong
let -9 . 6 HEIGHT up 10 ACHE it 11 COME 15 sleep 17 BE PUT WENT go
lets -15 . -7 BE
level -7 # . NUM
lid -8 .
lidocaine 13 $ .
lie 8 ON on 10 down 12 ODD 17 ONTO 29 .
life -14 ONTO 11 COME came 17 NOT isnt 21 BE 31 $ 37 .
lift -16 mood -11 that -10 day -9 HEIGHT 6 kettle 8 . bag 10 ARM PART SOCKETED arm 13 gallon 15 it 19 ACHE 58 THING
lifted -9 .
lifting -32 . -9 BE
lifts 10 .
light -35 . -17 $
lightheaded 7 and 25 .
lightly 18 .
lightning 8 . bolt
lights -8 BE -6 COME PUT WENT went 9 OUT out 13 $
like 38 .
lil 37 .
limb 10 . BE
limp 6 SINCE after 8 $ .
line -21 $ -10 ON ONTO on 6 . 21 MISSILE drive
linebacker 14 . 20 $
lineup -19 . -15 $
lip -27 .
liquid 6 $ 9 COME 14 .
list -6 .
lit -18 . -14 HEIGHT up
livable -7 $ .
live 10 .
living 27 $ 30 .
load -8 .
loaded -11 .
lock -9 . ONTO
locked -14 ONTO -13 . 10 HEIGHT up
locker -13 . -8 $ 12 room
locks 9 BY with 24 .
log -18 .
lol -37 . -34 $ -9 jk
long -21 . -9 $ -8 day 10 MISSILE drive
longboard 28 $ .
longer -37 NUMB -10 $ 17 FEELING feel 24 BE
look -7 at 12 .
looks -8 good 7 shiny 8 CHANGED 9 RED SHAPE 10 out 12 LEAK 14 COLOUR 16 ODD 24 .
loose -22 and 10 $ 12 ACHE it 14 goosey 17 NOT
loosened -19 .
lose -7 .
losing -12 $ -10 at 8 HOLD MOTOR POWER grip 10 weight
loss 7 POWER
lost -17 THING -15 TRAINING -14 BY by -12 DAILY balance in -10 $ feel keys match -9 MISSILE ball voice 8 feeling 10 # strength 11 its 12 . NUM power sensation 13 POWER 16 ability 24 MOVE control half
lot -13 ONTO 6 $ 7 .
loud 8 and 14 BULGE COME PUT pop 19 POP 34 .
love -14 . -6 BY with
lovely -11 . -6 $
low -6 $
lower -9 $ -6 back 7 and 19 . 23 than
luck -19 . -13 $
lump 7 $ . 8 ONTO
lumpy -10 .
lurched 9 .
luxation 16 .
lying 25 ONTO down 30 .
machine -19 . -16 $
mad -7 .
made -14 ELSEWHERE -13 skin -11 FACE -9 ACHE 6 crack loud 24 POP
make -15 . -13 ACHE it 26 fist
makes 11 ACHE it
man -18 $ .
manage -7 $ 16 .
manageable -9 . -6 $
many 7 . 14 times
march -16 . -12 $
marks -17 .
mash -8 . HEIGHT up
mask -24 . -12 $
match -18 . -6 $ i
matches -8 $ .
mate -15 $ -14 BE HAVE -11 . 16 CANT NOT cant
math -10 .
maths -8 . -6 $
matter 14 what 24 how 27 .
max -17 .
maximum -10 $ .
may 9 HAVE have
maybe -21 # -18 $ -17 MANY NUM 8 PART it 11 ACHE 17 FEVER fever numb 18 SWELL 23 less 25 NUMB 26 ONTO from 39 .
me 40 .
mean -25 . -18 $ 7 ACHE
means -14 $ .
meat -18 .
medium -7 $ .
meds 9 NOT 22 .
meeting -15 .
meh -9 $ .
mhm -8 $ .
mi -12 RIBS belly 6 CANT HAND NOT cant hand 8 DROPPING drop 9 PART 14 . HANDS 17 HAVE have
mid 11 . 15 MOTOR throw 16 TRAINING
middle -16 $ 6 DIGIT HANDS PART finger 8 . 25 CHEST chest
midnight -9 . -8 WAKE
midterm -17 .
might 6 COME 7 PUT 13 HAVE have 14 BE be 19 .
mightve 6 NUMB 11 .
mild -13 .
milk -12 $
million -14 .
mind -26 . -15 $
mine -18 .
minute -13 $ 15 . day
minutes -9 . -8 for
missed -6 TRAINING 13 last
missing 10 . 15 beats
mistake -6 .
mobility -24 . -22 $
model -7 .
mom -30 . -13 $ -10 COME FALL QUITS fell -9 HAVE -8 BE
moment -9 $ 10 .
monday 17 $ 18 .
money -23 . -17 $
month 7 CANT and cant no 15 NOT 27 .
months 13 .
mood -16 ONTO in -6 .
more -20 ONTO in -8 than -7 . -6 weight 16 $
morning -21 and -15 but -9 # NUM 8 PART 20 . 35 $
mornings 10 $ .
mosquito -38 . -26 bite -21 bites
most -13 it -10 . -9 ACHE
mostly -30 . -24 ONTO -22 in -9 $ -8 ARM PART
mother -12 .
motion 23 .
motorbike 11 .
motorway -19 $ .
mound -6 .
mouth -11 ACHE PAIN hurts 16 hangs 23 BE is 27 .
move 10 $
moved -11 . 16 OUT out
moves -18 . -11 better
movie -32 . -16 $
moving -10 $
mph 14 .
much -24 .
mud -11 $ .
mug 15 .
muscle -31 PAIN -20 $ ACHE -12 HEIGHT behind soreness -6 pain 8 at 9 . 11 POP tore 15 BREAK 17 BE
muscles -21 . -16 $
music -21 .
must -37 i -27 .
my 6 .
myself 12 and 14 NOT without 16 ONTO 45 . 49 $
nah -24 . -22 PAIN sore 10 i
nail -24 . -15 $
nails -11 . 6 WENT turned
nap -24 . -19 $
naproxen 17 .
nasty 18 . 20 COME FALL fall
naw -7 $ .
near -13 top 10 ARM ELBOW MISSILE elbow 16 ACHE PART
nearly -14 died 10 BE FALL QUITS fell 12 passed 14 FAINT PUT WENT fainted went 19 COME 20 .
neck -30 . -24 $ -12 BE -11 and -10 is 9 into 12 ACHE PAIN hurts 17 to
need -10 more -7 heavier -6 NEW new to 11 HAND HANDS PART 15 AGAIN KEEP always 19 PILL
needed 7 HAND HANDS PART
needles 16 in 17 ONTO 43 .
needs -13 .
negative -15 . -10 $
neighbour -16 .
neighbours -15 .
nerve 6 .
nerves -24 . -10 $
nervous -28 . -11 about -10 $ -7 for
net -12 TRAINING -10 $ -7 BE -6 .
nets 13 $
nettles 6 .
new -42 . -17 THING -7 MISSILE cleats -6 BREAKS_LIKE OPPONENT TRAINING WORN 6 SHAPE 13 corner
next -7 week 19 $
ngl -11 $ -6 .
nice -25 . -15 $ -6 and burn
nicely -22 $ .
night -15 TRAINING -14 was -13 before -8 SLIP shift -6 game 6 NOT 7 PART SOCKETED 8 because 9 this 10 ONTO 12 is long 19 $ from 23 PAIN SWEATS pain sweats 24 i 25 it 26 . 42 ACHE
nighter -9 .
nights 7 NOT 8 because 12 ONTO in 14 $ 30 .
nil -8 $ .
nine -19 $ -7 .
ninth -6 .
nip -16 . at
no -20 problem -12 change -8 HANDS worries -7 PART it -6 big 9 longer 15 improvement 16 sleep 18 i 24 joke 29 reason 30 matter
no:# -10 . -8 $
no:ACHE -18 same -14 anymore -11 at -9 in -7 or -6 hurts since 6 good no up 10 it 27 but
no:AGAIN -10 $ 6 no 14 arm
no:ARM -11 in 6 since up 10 $ 11 .
no:ASLEEP -16 .
no:BE -21 better difference -17 for -16 dead -13 last -12 legs over weakness -11 back -10 out -9 more none numb -7 there -6 normal unstable 6 arm finger ring to warm 8 air past 9 down fingers 12 in 14 enough words 15 between 16 . on 17 it 19 comfortable 22 $ 23 alive away 24 when 26 ball
no:BLOW -19 . -9 $
no:BREAK -7 $ 7 fingers
no:BREAKS -21 LIKE -19 LIKE_$
no:BREATH -14 after -12 from -11 at 7 deep 8 good in 12 sitting when 14 without 24 $ 27 .
no:BULGE -21 . -6 $
no:BY -22 $ -10 . 11 it 25 that
no:CANT -27 . -23 complain -16 be -15 say -12 $ -8 at start -7 push 6 button control keep 7 catch explain snap walk 8 pull stay wash 9 draw rotate 10 feel go 12 press scratch 13 recover turn 14 budge pick 15 reach take 16 squeeze 17 speak unscrew 21 get 22 breathe wake
no:CATCH -8 $ 7 breath
no:CHANGED -8 feelings 11 $ 13 .
no:CHEST -14 .
no:COLD -14 . -11 $
no:COLOUR -7 $ .
no:COME -21 $ out -12 over -11 . -8 numb 6 more up 8 back past 9 down 11 off to 23 away
no:DAILY 10 . 11 open with
no:DIGIT 6 and 21 $ 32 .
no:DROPPING -16 anything
no:ELBOW 6 $
no:FACE -12 .
no:FAINT -13 . -9 $
no:FALL -24 . -14 $
no:FEELING -21 difference -17 for -15 better -12 legs -11 hand 6 finger ring 7 on 9 fingers 12 in it 14 . 15 between 24 when 25 ball 30 $
no:FEVER -11 . -8 $
no:FLUTTER -17 . -8 $ feelings
no:GIVES 6 .
no:GROUND -21 $
no:HAND 12 .
no:HANDS 6 and when 7 after 8 since 18 $ 36 .
no:HAVE -16 to -11 last -10 band 6 arm warm 8 air 10 $ 14 enough words 15 comfortable
no:HEART 8 .
no:HEIGHT -20 from 7 $ 9 than 29 .
no:HOLD 10 toothpaste 16 .
no:INFECT -8 .
no:KEEP 14 arm
no:LEAK -13 . -9 $
no:LEG 15 $
no:LIFT 13 .
no:LOOK 15 .
no:LOOSE -15 $ .
no:LOST -11 . -8 strength
no:MANY -11 $ -9 . 6 no
no:MISSILE -12 to 6 $ anymore 13 .
no:MOTOR -7 in -6 on 6 arm out 7 shirt 8 top 9 it myself 10 toothpaste 11 $ 12 hair 14 door 26 .
no:MOVE -15 it 20 $ 29 .
no:MY 23 .
no:NEW 13 $
no:NIGHTS 7 . 13 $
no:NOT -31 to -24 with -23 that went -22 anymore trouble -21 swelling tingling -20 have weak -19 more numbness -18 on pop -16 complain falls shoulder time wake -15 complaints say -14 weird -13 $ cold good -12 new pinch problem think was -11 came fall start -10 problems short throws -9 contact dropping fear hurt in resistance slept weakness -8 cuff drop hit hot issues loss signs special swollen tingle towel -7 above come dizzy drama dropped fever noticed pain thanks training -6 issue looks nothing painful popped shortness 6 button force motivation notice pills zip 7 biggie catch energy fell going here lying sitting snap walk 8 fit pull quits stay wash worth 9 higher press rotate 10 . lets 11 coming dieting gone 12 numb scratch turn 13 air for recover sensation 14 budge look meaning noticing 15 take 16 gas obey squeeze 17 control get sore speak unscrew 19 goes leaves reach regular 20 and drive go stops 21 power strength want 22 breathe diet same 23 feeling 25 position wanna 30 trying
no:NUM -15 . -9 $ 6 no
no:NUMB -30 $ -19 in -15 anymore feeling -12 fingers -7 . no or
no:ODD -8 feelings 11 $ 13 .
no:ON -11 it -9 $ 6 . 13 that 17 ball
no:ONTO -13 bat -6 it 6 which 7 head 8 to 12 . 15 that 17 ball 18 $ 20 arm
no:OUT -20 $ -13 .
no:PAIN -18 same -16 at -15 $ -14 since -7 or 6 no 17 it 27 but
no:PART -11 in 6 and when 7 after 10 up 15 since 16 $ 31 .
no:PILL 9 .
no:POP -24 . -15 $ 7 fingers
no:POSITION 7 in position 17 that 24 $ 50 .
no:POWER -8 at -6 on 17 to 21 ball 24 $ 34 .
no:PUSH 6 $ 9 myself 14 door 19 .
no:PUT -12 over -10 out 8 past 9 myself 10 $ door 16 away
no:REACH 6 out 13 back 44 .
no:SEAT 6 in 17 that 31 .
no:SHAPE 7 $
no:SHEETS 11 .
no:SHOULDER -14 $ -12 .
no:SINCE 12 . 17 $
no:SLIP -24 . -14 $
no:SOCKETED 6 up 7 . since
no:STOP 10 up 13 hurting 19 $ 31 .
no:SWELL -32 . -21 $ -9 either
no:THING -7 . and 8 with 11 $
no:TIGHT 8 . 10 toothpaste
no:TRAINING -18 . -9 $ -8 today
no:UNSTABLE -6 $ .
no:VEHICLE -6 . 8 with
no:WAKE -17 $ -14 .
no:WEAK -23 . -12 $
no:WEAKNESS -23 $ 18 no
no:WENT -12 over -9 out -8 numb 8 past 9 $ down 12 on 23 away 38 .
no:WORN -10 $ 6 . finger
no:^ -7 i 6 ACHE 7 PAIN pain 17 NUMB 18 tingling
no:a 34 .
no:above -7 # NUM
no:air 8 ONTO in 20 $ 22 .
no:alive 7 SINCE anymore 18 $ 23 .
no:and -19 NOT -16 no -7 HOLD MOTOR POWER grip 6 its 10 hand it 11 ACHE i 12 FACE face 14 HAND 16 HANDS PART 30 .
no:anymore 13 . 17 $
no:anything -23 . -9 $ -7 and
no:arm 6 up 7 $ 11 HEIGHT 23 .
no:as -8 .
no:asleep -16 .
no:at -30 . -17 home -15 $ -6 NIGHTS night
no:away 18 $ 23 .
no:back 11 $ 26 .
no:bad -15 .
no:ball 6 anymore 15 . 18 SINCE
no:band -24 . -19 $
no:bat -11 . 7 $
no:be -6 better 8 . 23 alive
no:bed 11 .
no:behind 7 .
no:better -21 . -19 $
no:between 9 . 15 LEG legs
no:biggie 7 $ .
no:bit -15 .
no:bladder 20 .
no:blue -6 .
no:bottle 11 .
no:breath -11 at 7 $ 10 sitting 14 NOT without 19 .
no:breathe -12 ONTO from 7 deep 8 good 11 $ 18 .
no:budge 14 $ .
no:but 13 . 16 NOT no
no:button 6 .
no:came -12 back -11 .
no:cannot 7 HAVE MOTOR get 9 FEELING feel 14 BE
no:cant -17 say -16 complain -15 come -12 THING -9 push -6 FEELING PUT feel 6 button walk 7 DAILY TIGHT squeeze turn 8 PUSH wash 9 WENT press 10 BE 12 scratch 13 reach recover 14 HOLD 15 take 16 CATCH catch 17 unscrew 19 MOTOR 21 control 29 MOVE 31 breathe 32 REACH 37 BREATH 38 HAVE get
no:cap 8 $ 9 .
no:catch 7 . BREATH breath
no:catching -7 $ .
no:chest -14 .
no:coffee 6 .
no:cold -14 . -11 $
no:come -11 OUT out 9 back 11 CHANGED ODD ONTO off
no:comfortable 7 POSITION SEAT position 22 .
no:coming 9 . 11 back
no:complain -24 . -21 $
no:complaints -15 . -11 $
no:contact -9 .
no:control -15 ACHE it 17 .
no:could -12 .
no:couldnt -15 MOVE control -9 CATCH catch -6 HAVE be get 7 push 8 BE 11 HOLD PUT TIGHT squeeze 14 pick 16 PUSH 19 FEELING feel 33 MOTOR
no:cuff -8 $
no:day -6 .
no:dead -25 . -15 ACHE ARM PART SOCKETED arm
no:deep 7 NOT without 15 BREATH breath 20 .
no:did -16 .
no:didnt -22 WAKE wake -13 COME -11 HAVE -10 FALL -9 fall -8 DROPPING drop get -7 MOTOR 9 ACHE PAIN hurt 10 .
no:diet 17 . 22 $
no:dieting 11 $ .
no:difference -21 .
no:dizzy -10 . -7 $
no:does 14 .
no:doesnt -20 WAKE wake -13 BULGE POP pop -10 hurt -8 NUMB tingle -6 ACHE COME FEELING PAIN feel 14 BE LOOK look 17 WENT go
no:dont -19 have -13 HAVE -12 think 21 want 25 wanna
no:door 7 $ 11 LEAK MOTOR PUSH open 17 .
no:down -10 . 14 $
no:drama -7 .
no:draw 9 . full
no:drive 20 .
no:drop -8 . THING anything
no:dropped 8 .
no:dropping -9 . THING
no:either -9 $ .
no:elbow 6 $
no:energy 7 .
no:enough -15 $ 14 BREATH air
no:even 23 .
no:explain 7 .
no:fall -11 . -8 $
no:falls -17 .
no:fear -9 .
no:feel -21 difference -15 better -12 LEG legs -11 HAND hand -8 for 6 . WORN finger ring 9 ACHE fingers 10 $ 11 it 24 DIGIT when 25 MISSILE ball
no:feeling 6 $ . 7 ON on 12 in 21 ONTO
no:feelings -8 .
no:feels -7 .
no:felt -6 . 9 ACHE it
no:fever -10 . -6 $
no:find -17 BREAKS_LIKE band -12 zone 7 comfortable 18 SEAT position 20 words 22 POSITION
no:finger 15 $ 18 .
no:fingers -8 today 7 $ 8 .
no:fingertips 9 .
no:fit 8 .
no:for -8 TRAINING 6 it 16 . ACHE 19 month
no:force 6 $ 8 ONTO in 14 .
no:full 12 BREATH breath 19 .
no:gas 16 .
no:get -16 to -11 last 6 ACHE ARM HOT LEAK SOCKETED arm warm 8 air 10 BREATH PART 14 enough words 15 POSITION comfortable 19 .
no:go -10 over -9 OUT out -6 ONTO 8 away past 14 up 19 . 21 HEIGHT
no:goes 10 away 12 $ 19 .
no:going 7 . 11 up 13 HEIGHT
no:gone 11 .
no:good -6 .
no:got -9 .
no:grip -18 ONTO -6 ON on 6 .
no:had -6 .
no:hair 10 $ 12 .
no:hand 11 SINCE
no:hasnt -6 PUT 11 BE LOST WENT gone
no:have -25 . -11 NUMB
no:havent -10 HAVE -7 noticed -6 COME DROPPING QUITS dropped 11 POWER
no:head 6 . 7 $
no:heat 10 .
no:here -21 $ -8 . 30 SINCE anymore
no:higher 9 than 10 .
no:his -18 .
no:hit -12 .
no:home -21 . -10 $
no:hot -8 .
no:hurt -13 .
no:hurting 9 $ .
no:hurts -9 $ .
no:i -10 . HAVE -7 have
no:in 6 SEAT which 7 DIGIT HANDS 18 ACHE 19 ARM arm 21 SOCKETED 23 PART
no:infection -8 .
no:is -8 none -7 . there
no:isnt -16 WEAK weak -15 NUMB -13 numb -9 LEAK 7 COME going 15 WENT 17 BE worth
no:issue -6 $ .
no:issues -8 . -6 $
no:it 13 . 17 $
no:jk -6 .
no:keep 6 . 14 SOCKETED arm
no:last -12 $ 10 week
no:leaves 19 .
no:left 10 .
no:legs 15 $
no:lets 10 . HEIGHT up
no:lifting 9 .
no:live 17 SINCE anymore 18 . more 21 $
no:living 17 $ .
no:lol -21 . -20 $
no:look 14 .
no:looks -6 .
no:loose -15 $ .
no:loss -8 . POWER strength
no:lying 7 $ .
no:me -12 .
no:meaning 14 . to
no:month 19 .
no:more -9 than -6 PAIN 8 POWER force
no:motivation 6 .
no:my 32 .
no:myself -15 $ -7 . 9 OUT out
no:neither -13 ACHE
no:net 9 .
no:never -23 went -13 COME -12 came -11 BE -7 ACHE PAIN PUT hurt 8 QUITS quits 10 lets 16 goes 19 leaves 20 stops 28 STOP
no:new -21 .
no:night 7 . 13 $
no:no -34 NUMB -25 . -19 SWELL swelling -18 numbness tingling -17 CANT trouble -16 PILL -15 complaints -13 POP pinch -12 TRAINING -11 MOTOR PART SHOULDER -10 COME -9 contact fear numb that time -8 BULGE CHANGED FEVER FLUTTER LOST ODD SHAPE feel loss signs towel weird -7 $ drama fever issues thanks throws training -6 HOLD LOOK NOT WEAKNESS issue looks pop shortness weakness 6 BREATH air motivation 7 HEIGHT biggie higher power 8 HEART 12 sensation 14 BE zip 16 gas 19 strength 20 POWER drive 21 feeling 23 FEELING 25 POSITION SEAT position
no:nobody -8 ACHE PAIN hurt
no:normal -7 $ .
no:not -22 SINCE anymore -20 ONTO -19 PART -15 SOCKETED -13 SHOULDER -11 shoulder -10 more short -9 in -8 COLD cold -6 painful 7 . NUMB lying numb 9 BE 11 COME PAIN coming dieting 17 sore 18 trying 19 regular
no:nothing -27 to -18 CHANGED ODD -17 that -13 COME -12 NUMB -11 . NEW new numb -8 ACHE special -6 $ FLUTTER weird 9 PAIN 13 ONTO for in
no:notice 6 .
no:noticed -11 .
no:noticing 14 $ .
no:numb -22 $ -14 PART -12 DIGIT HANDS SINCE fingers
no:numbness -26 . -15 ONTO in
no:obey 16 .
no:of -12 .
no:off 14 $ 20 .
no:on -11 ACHE it -9 $ 6 . 13 that 17 ball
no:once -17 . -16 $
"""
