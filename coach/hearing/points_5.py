"""The points of words and of pairs of words, in tenths, joints to no:numb.

Law: data only, made by `tests/hearing/find_points.py` from our own labelled answers, which are
invented; how a line is read is told in `points`. Above 0 speaks for a warning sign.
"""

from __future__ import annotations

from typing import Final

TABLE: Final = """\
joints 7 hurt 11 ACHE PAIN 26 BE are 40 .
joke -9 . -7 $
joking -9 .
jolts 11 . ONTO
jumbled 9 .
jump 8 $
jumped 9 to 22 OUT out 23 .
jumping -12 .
jumps 17 ONTO 22 .
june -12 $ .
juniors -15 $ .
just 31 .
k -10 .
keep 7 fumbling 15 dropping 18 DROPPING 25 .
keeper -6 .
keeping -12 .
keeps 6 GIVES giving 8 FLUTTER WAKE awake 9 BULGE DROPPING POP dropping popping 14 slipping 18 SLIP 29 COME 51 .
kept -15 COME -13 ACHE -11 . -6 BE WENT going 9 waking
kettle 10 BY with
key 7 .
keys -23 . -16 $ -9 ONTO
kg -12 .
kicked -11 OUT out 6 ONTO
kid -23 . -14 ONTO 11 BLOW
kidding -31 . -18 $
kids -36 . -21 $
kill 10 $ 18 myself
killed -9 .
killer -6 TRAINING
killing 18 myself
kilos 12 for 15 and 26 .
kind 18 .
kinda 34 .
kit -20 $ .
kitchen 13 .
knackered -17 .
knee -20 . -15 SWELL swelled -9 BE -8 from -6 GIVES 7 in 21 to
kneed 7 . ONTO in
knees 10 BE are 13 . wrists 17 HAND HANDS PART 28 and
knocked -21 OUT out 8 . ARM ELBOW MISSILE PART elbow 10 ACHE 11 flat 12 ONTO 13 down 16 ODD
know -20 $ -18 . 19 why
knows -15 . -9 $
knuckle -6 .
knuckles -13 $ . -7 BLOW POP cracked
lab -19 .
labrum -15 $ -8 .
ladder 10 ON ONTO 12 $ 14 .
laid -10 .
lake -16 .
landed 6 hard 12 ODD 15 . 33 ON ONTO on
landing -14 .
last -31 year -26 summer -23 $ season -17 ones -15 month -14 . -13 # reps -9 winter -6 ONTO 6 serve 7 PUT set week 13 SHAPE step 16 DIGIT HANDS PART fingers 18 MOTOR throw 24 TRAINING
lat 14 .
late -26 . -20 $ -8 ON ONTO on
lately 33 . 34 $
later -23 $ .
lats -15 .
laughed -9 $ .
laughing -39 . -28 $
laundry -12 . -11 $
lay 12 down 13 ONTO 32 .
laying 6 . 12 down
lazy -13 . -8 $
lb 14 .
lbs -11 ONTO 7 . and
lead -27 .
league -13 . -10 $
leaking -14 and 8 yellow 12 . 17 LEAK 22 $
leash 15 .
lecture -26 . -15 $
leg -18 BY day -14 . 8 is 10 $ BE
legs -19 r -12 after were -10 shaky -9 COME WENT -8 SINCE -7 gave 9 are buckle 10 . 14 BE 26 FEELING NOT feel
lekker -6 .
length -21 .
less -19 than -11 $ 23 . 28 POWER 32 strong
let -7 . 6 HEIGHT up 9 ACHE it 12 COME 15 sleep 18 BE PUT WENT go
lets -16 . -6 BE COME
level -16 # -12 MANY 12 . 13 NUM
lid -8 .
lidocaine 12 $ .
lie 8 ON on 12 ODD 13 down 20 ONTO 29 .
life -16 ONTO 9 COME came 16 NOT isnt 17 is 23 BE 32 $ 43 .
lift -15 mood -13 that -12 HEIGHT -11 day 7 bag 9 . 10 ARM PART SOCKETED arm 11 gallon 12 it 17 ACHE 56 THING
lifted -9 .
lifting -31 . -8 BE
lifts 7 .
light -32 . -21 $
lightheaded 6 and 23 .
lightly 16 .
lightning 8 . bolt
lights -9 BE -8 COME PUT WENT went 8 OUT out 11 $
like 39 .
lil 36 .
limb 10 . BE
limp 9 $ .
line -27 $ -9 ON ONTO on 22 MISSILE drive
linebacker 17 . 20 $
lineup -18 . -15 $
lip -28 .
liquid 7 COME 11 .
list -9 .
lit -18 . -13 HEIGHT up
literally -6 .
livable -7 $ .
live 8 .
living 26 $ 29 .
load -9 .
loaded -11 .
loads 10 .
lock -9 . ONTO
locked -15 ONTO -7 OUT out 8 HEIGHT up
locker -14 . -8 $ 13 room
locks 8 BY with 25 .
log -19 .
lol -38 . -34 $ -9 jk
long -25 . -8 day -7 $ 9 MISSILE VEHICLE bus drive
longboard 30 $ .
longer -34 NUMB -11 $ 17 FEELING feel 26 BE
look -7 at 8 COLOUR 14 .
looked 6 .
looks -9 good 7 CHANGED 9 RED out 10 SHAPE 11 LEAK 13 COLOUR 16 ODD 25 .
loose -23 and -8 GROUND 7 $ 12 ACHE it 14 goosey 17 NOT
loosened -20 . -6 HEIGHT up
lopsided 15 .
lose -8 .
losing -14 $ -10 at 7 HOLD MOTOR POWER grip 15 weight
loss 11 POWER 16 .
lost -18 THING -16 TRAINING -15 BY by in -14 AGAIN DAILY three -12 voice -11 MISSILE ball feel -10 keys match toss -9 $ balance -8 HOLD MANY MOTOR grip -6 ONTO touch 6 feeling 7 # NUM 9 strength 10 POWER its 11 power 12 . 13 sensation 15 ability 17 half 23 MOVE control 25 consciousness
lot -12 ONTO 7 $ 8 .
loud 7 and 14 BULGE COME PUT pop 18 POP 35 .
love -14 .
lovely -11 .
low -6 $
lower -10 $ -6 back 9 and 14 LEG leg 17 . 22 than
luck -18 . -13 $
lump 12 near 15 . 17 in 20 ONTO
lumpy -10 .
lurched 9 .
luxation 17 .
lying 25 ONTO down 29 .
maam -10 $ .
machine -19 . -18 $
mad -9 . -7 $
made -14 ELSEWHERE -13 skin -11 FACE -8 ACHE 6 crack 19 POP
make -17 . -13 ACHE it 28 fist
makes -6 . 13 ACHE it
man -20 . -18 $
manage -8 $ 13 .
manageable -9 . -6 $
many 15 . 18 times
march -16 . -12 $
marks -18 .
mash -7 . HEIGHT up
mask -24 . -12 $
match -18 . -8 $ i
matches -8 $ .
mate -15 $ . -14 BE HAVE 17 CANT NOT cant
math -10 .
maths -7 . -6 $
matter 12 what 21 how 23 .
max -19 .
maximum -10 . -9 $
may 9 HAVE have
maybe -22 # -18 MANY -17 NUM -16 $ 8 PART 9 it 13 ACHE 17 FEVER fever 19 SWELL 22 numb 24 less 26 ONTO from 30 NUMB 35 .
me 36 .
mean -26 . -17 $
means -15 $ .
meat -19 .
medium -7 $ .
meds 9 NOT 19 .
meeting -14 .
meh -9 $ .
mhm -8 $ .
mi -11 RIBS belly 6 CANT NOT cant 7 DROPPING drop 11 PART 14 HAVE have 15 . HANDS
mid 9 . 13 MOTOR throw 16 TRAINING
middle -16 $ 6 DIGIT HANDS PART finger 9 . 28 CHEST chest
midnight -9 . WAKE
midterm -16 .
might 6 PUT 7 COME 12 HAVE have 15 BE be 20 .
mightve 6 NUMB 12 .
mild -12 . -9 $
milk -13 $
million -14 .
mind -26 . -15 $
mine -22 .
minute 14 day 18 .
minutes -10 for 8 $
missed -6 . TRAINING 13 last
missing 12 . 15 beats
mistake -6 .
mobility -25 . -21 $
model -7 .
mom -33 . -15 $ -10 COME FALL QUITS fell -9 HAVE -8 BE
moment -6 $ 6 .
momentum -19 .
monday 16 . 17 $
money -23 . -17 $
month 6 no 7 and 8 $ 13 NOT 28 .
months 11 .
mood -15 ONTO in -7 .
more -23 ONTO in -11 than -6 . weight 15 $
morning -24 and -17 but -10 # NUM 7 PART 21 . 36 $
mornings 12 $ .
mosquito -37 . -24 bite -22 bites
most -14 it -11 . -9 ACHE
mostly -32 . -25 ONTO -23 in -10 ARM PART -8 $
mother -17 .
motion 24 $ .
motorbike 10 .
motorway -20 $ .
mound -6 .
mouth -11 ACHE PAIN hurts 9 $ 16 hangs 21 is 26 . 27 BE
move 7 $
moved -13 . 16 OUT out
moves -17 . -12 better
movie -29 . -17 $
moving -10 $
mph 13 .
much -27 .
mud -11 $ .
mug 15 .
muscle -33 PAIN -20 ACHE -17 $ -14 HEIGHT behind -11 soreness -7 pain 8 at 11 POP tore 13 . 15 BE BREAK 18 COME
muscles -19 . -18 $
music -24 .
must -36 i -32 .
myself 9 BY with 13 NOT and without 15 ONTO 44 $ .
nah -28 . -21 PAIN sore 12 i
nail -26 . -17 $
nails -11 . -6 are 7 WENT turned
nap -24 . -18 $
naproxen 16 .
nasty 18 . 21 COME FALL fall
naw -7 $ .
near -15 top 6 . 10 ARM ELBOW MISSILE elbow 12 SHOULDER 13 ACHE 19 PART
nearly -14 died 9 FALL QUITS fell 10 BE 12 passed 14 FAINT PUT WENT fainted went 17 COME 21 .
neck -21 . -14 and -13 BE -12 is -6 $ 8 into 13 ACHE PAIN hurts 14 to
need -10 more -8 . -7 to -6 heavier 12 HAND HANDS PART 13 AGAIN KEEP always 18 PILL
needed 7 HAND HANDS PART PILL
needles 15 in 18 ONTO 40 .
needs -13 .
negative -18 . -11 $
neighbour -16 .
neighbours -22 .
neither -6 .
nerves -26 . -13 $
nervous -28 . -11 about -9 $ -8 for
net -11 TRAINING -10 $
nets 20 $
new -44 . -17 THING -9 TRAINING -8 cleats -7 BREAKS_LIKE MISSILE WORN -6 OPPONENT 9 lump 12 SHAPE 13 corner
next -6 week 21 $
ngl -14 $ -9 .
nice -27 . -17 $ -11 MOTOR -6 burn
nicely -27 $ .
night -16 was -13 TRAINING -10 before -7 SLIP game shift 6 NOT 7 PART SOCKETED this 8 because 10 ONTO 11 long 13 is 19 $ 20 from 22 PAIN SWEATS i pain sweats 25 . 26 it 41 ACHE
nighter -8 .
nights 8 because 10 NOT 13 $ 14 ONTO in 31 .
nil -9 $ .
ninety 12 .
ninth -7 .
nip -14 . at
no -22 problem -11 change -8 HANDS worries -7 it -6 ACHE NOT ONTO PART big 6 longer 8 clue 13 sleep 15 improvement 16 i 22 joke 26 matter 29 reason
no:# -12 . -10 $
no:ACHE -18 same -15 anymore -13 at -11 in -8 or -6 hurts 6 above no 7 up 10 it 26 but
no:AGAIN -10 $ 6 . 13 arm
no:ARM -13 in 6 above since 7 up 9 . 13 $
no:ASLEEP -17 .
no:BE -24 better -22 difference -18 for -15 dead -14 last -12 legs weakness -11 over -10 none -9 numb -8 back more -7 hurt out -6 normal there 6 finger ring warm 7 past to 8 air fingers 9 down 10 arm 11 in 13 enough 14 between words 16 on 17 . 18 comfortable 19 $ 21 it 24 away when 25 alive 26 ball
no:BLOW -18 . -9 $
no:BREAK -6 $ 7 fingers
no:BREAKS -23 LIKE -19 LIKE_$
no:BREATH -15 after -13 at -12 from 8 deep good in 10 sitting 13 when without 22 . 28 $
no:BULGE -21 . -6 $
no:BY -21 $ -13 this -8 . 11 it 25 that
no:CANT -27 . -24 complain -17 say -16 be -13 $ -10 at -9 start -7 push 6 button explain walk 7 pull snap wash 8 carry draw go rotate stay 9 feel 10 bring recover 11 press scratch 12 keep turn 13 budge speak 14 pick 15 squeeze take 16 reach 17 unscrew 21 breathe 22 get 24 wake
no:CATCH -8 $ 7 breath
no:CHANGED -9 feelings 12 $ .
no:CHEST -16 .
no:COLD -14 . -10 $
no:COLOUR -7 . -6 $
no:COME -24 $ out -14 . -11 over -8 numb 6 more 7 past up 9 back down 10 to 11 off 24 away
no:CRASH -6 .
no:DAILY 9 . 10 open with
no:DIGIT 21 $ 30 .
no:DROPPING -14 anything
no:ELBOW 6 $
no:FACE -14 .
no:FAINT -14 . -10 $
no:FALL -25 . -14 $
no:FEELING -22 difference -18 for -17 better -12 legs -11 hand 6 finger on ring 8 fingers 13 . 14 between 18 it 22 in 24 when 26 $ ball
no:FEVER -12 . -8 $
no:FLUTTER -17 . -8 $ -7 feelings
no:GIVES 7 .
no:GROUND -23 $
no:HAND 10 .
no:HANDS 6 when 7 after since 18 $ 34 .
no:HAVE -15 to -12 last -11 band 6 warm 8 air 10 arm 13 comfortable enough 14 $ words
no:HEART 11 .
no:HEIGHT -19 from 6 $ 7 shoulder 9 than 16 more 25 .
no:HOLD 7 bag 10 toothpaste 13 .
no:INFECT -8 .
no:KEEP 7 . 13 arm
no:LEAK -9 $ -6 .
no:LEG 14 $
no:LIFT 12 .
no:LOOK 15 .
no:LOOSE -15 $ .
no:LOST -15 . -8 strength
no:MANY -11 $
no:MISSILE -12 to 6 anymore 7 $ 14 .
no:MOTOR -6 in on 6 arm shirt 7 bag it 9 myself top 10 toothpaste 11 $ hair 13 door 15 at 29 .
no:MOVE -15 it 18 $ 31 .
no:MY 28 .
no:NEW -6 . 7 $
no:NIGHTS 11 $
no:NOT -32 to -27 that -23 went -22 anymore have tingling trouble -20 swelling -19 numbness on with -18 pop weak -17 complain more say shoulder -16 complaints falls time -14 $ weird -13 came cold good in new problem wake -12 fall start think was weakness -11 throws -10 short strange -9 dropping hot issues pinch problems resistance signs -8 contact cuff dizzy drop fear hurt issue loss slept special swollen tingle towel -7 at come drama felt noticed shortness sorry thanks -6 above dropped fever happened hit looks nothing painful popped sir training 6 button fell lying 7 appetite force pull snap wash 8 biggie going help press quits rotate sitting stay worth 9 higher 10 bring dieting fit gone lets recover 11 notice numb scratch turn 12 coming for meaning 13 air budge noticing speak 14 gas look 15 control here obey take 17 regular sore unscrew 19 get leaves pulse stops 20 drive go goes 21 breathe diet energy power reach squeeze strength 22 and sensation 23 position want 25 wanna 26 same 29 feeling 30 trying
no:NUM -17 . -11 $
no:NUMB -29 $ -19 in -16 anymore -14 feeling -12 fingers -7 . or -6 no
no:ODD -9 feelings 12 $ .
no:ON -10 $ it 14 that 17 ball
no:ONTO -15 bat 6 head which 8 to 15 . 16 that 17 $ arm ball
no:OUT -21 $ -13 . 8 bed
no:PAIN -19 at -18 same -14 $ -13 since -8 or 6 no 19 it 26 but
no:PART -13 in 6 above when 7 after 10 more up 13 since 14 $ 29 .
no:PILL 13 . 16 i
no:POP -25 . -15 $ 7 fingers
no:POSITION 7 in position 17 that 22 $ 45 .
no:POWER -10 at -6 on 6 since 19 to 20 ball 23 $ 36 .
no:PUSH 9 myself 13 door 20 .
no:PUT -11 out over 7 past 9 . myself 10 $ door 17 away
no:REACH 13 back 43 .
no:SEAT 6 in 8 $ 17 that 38 .
no:SHAPE 6 $
no:SHEETS 14 .
no:SHOULDER -14 $ -8 .
no:SINCE 11 . 15 $
no:SLIP -25 . -14 $
no:SOCKETED 6 above 7 . since up
no:STOP 10 up 13 hurting 20 $ 33 .
no:SWELL -37 . -23 $ -9 either
no:THING -11 . -8 and 13 with
no:TIGHT 10 toothpaste 12 . 13 $
no:TRAINING -26 . -9 $ -7 today
no:UNSTABLE -9 $ .
no:VEHICLE -6 . 8 with
no:WAKE -16 $ -15 .
no:WEAK -20 . -13 $
no:WEAKNESS -22 $ 19 no
no:WENT -11 over -10 out -8 numb 7 past 8 $ 9 down 12 on 24 away 34 .
no:WORN -9 $ 6 finger
no:^ -6 i 6 ACHE PAIN pain 18 NUMB 19 tingling
no:a 31 .
no:above -6 # NUM 6 ACHE PART SHOULDER SOCKETED shoulder
no:air 8 ONTO in 19 $ 20 .
no:alive 8 SINCE anymore 20 $ 25 .
no:and -18 NOT -15 no -8 HOLD MOTOR POWER grip 10 hand 11 i 12 ACHE FACE face it 14 HAND 15 HANDS PART 31 .
no:anymore 13 . 15 $
no:anything -26 . -17 $ -8 and
no:appetite 7 .
no:arm 6 SINCE above since 7 $ up 14 HEIGHT 22 .
no:as -10 .
no:asleep -17 .
no:at -31 . -18 home -12 $
no:away 19 $ 24 .
no:back 11 $ 26 .
no:bad -15 .
no:bag 7 .
no:ball 6 anymore 16 . 18 SINCE
no:band -24 . -19 $
no:bat -11 . 8 $
no:be -6 better 7 . 25 alive
no:bed 14 .
no:behind 7 .
no:better -24 . -16 $
no:between 9 . 14 LEG legs
no:biggie 8 $ .
no:bit -13 .
no:bladder 21 .
no:bottle 12 .
no:breath -13 at 8 sitting 9 $ 13 NOT without 21 .
no:breathe -12 ONTO from 8 deep good 12 $ 17 .
no:bring 10 . ACHE
no:budge 13 $ .
no:but 14 . 15 NOT no
no:button 6 .
no:came -13 . -11 back
no:cannot 6 HAVE get 7 HOLD carry 10 FEELING feel 12 MOTOR 14 BE
no:cant -18 say -17 complain -16 come -12 THING -9 COME push -6 PUT 6 button 7 DAILY turn wash 8 PUSH WENT press 10 recover 11 BE scratch 12 HOLD 14 AGAIN CATCH KEEP catch keep 15 reach take 17 unscrew 18 MOTOR 20 control 27 MOVE 30 REACH 31 breathe 35 HAVE get 36 BREATH
no:cap 8 $ 9 .
no:carry 7 THING bag 8 .
no:catch 7 BREATH breath 8 .
no:catching -7 $ .
no:chest -16 .
no:coffee 7 .
no:cold -14 . -10 $
no:come -11 OUT out 8 back 11 CHANGED ODD ONTO off
no:comfortable 7 POSITION SEAT position 21 .
no:coming 10 . 12 back
no:complain -25 . -21 $
no:complaints -16 . -12 $
no:contact -8 .
no:control -15 ACHE it 15 .
no:could -15 .
no:couldnt -15 MOVE control -11 CATCH catch -9 HAVE get -8 AGAIN KEEP keep -6 be 6 BE 7 push 9 HOLD TIGHT squeeze 12 PUT 14 pick 16 FEELING PUSH feel 31 MOTOR
no:crash -6 .
no:cuff -8 $
no:day 7 .
no:dead -25 . -15 ACHE ARM PART SOCKETED arm
no:deep 8 NOT without 15 BREATH breath 19 .
no:did -15 .
no:didnt -23 WAKE wake -15 COME -11 FALL -10 fall get -8 DROPPING drop -6 MOTOR 9 ACHE PAIN hurt 11 .
no:diet 18 . 21 $
no:dieting 10 $ .
no:difference -22 .
no:dizzy -10 . -8 $
no:do -6 .
no:does 14 .
no:doesnt -21 WAKE wake -12 BULGE POP pop -11 hurt -8 NUMB tingle 8 fit 14 LOOK look 16 BE WENT go
no:dont -20 have -13 HAVE -12 think 23 want 25 wanna
no:door 7 $ 10 LEAK MOTOR PUSH open 16 .
no:down 21 $
no:drama -7 .
no:draw 8 . full
no:drive 20 .
no:drop -8 . THING anything
no:dropped 10 .
no:dropping -9 . THING
no:either -9 $ .
no:elbow 6 $
no:energy 21 .
no:enough -15 $ 13 BREATH air
no:even 20 .
no:explain 6 .
no:fall -12 . -9 $
no:falls -16 .
no:fear -9 .
no:feel -22 difference -17 better -12 LEG legs -11 HAND hand -8 for 6 WORN finger ring 8 $ ACHE fingers 11 it 23 DIGIT when 26 MISSILE ball
no:feeling 6 ON on 11 . in 12 ACHE it 18 ONTO
no:feelings -9 .
no:feels -7 .
no:felt -8 . 6 ACHE it
no:fever -10 . -6 $
no:find -19 BREAKS_LIKE band -12 zone 7 comfortable 14 words 18 SEAT position 22 POSITION
no:finger 14 $ 17 .
no:fingers -8 today 8 $ .
no:fingertips 8 .
no:fit 6 ON ONTO on 10 .
no:for -7 TRAINING 13 ACHE 18 month 20 weeks 29 .
no:force 7 $ 8 ONTO in 13 .
no:form 24 .
no:full 11 BREATH breath 18 .
no:gas 14 .
no:get -15 to -12 last 6 HOT LEAK warm 7 ACHE 8 air 10 ARM BREATH SOCKETED arm 12 PART 13 comfortable enough 14 POSITION words 19 .
no:go -10 OUT out -9 over 7 past 9 away 12 up 20 HEIGHT 22 .
no:goes 12 $ away 20 .
no:going 8 . 13 up 15 HEIGHT
no:gone 10 .
no:good -7 .
no:got -9 .
no:grip -20 ONTO -6 ON on
no:hair 9 $ 11 .
no:hand 10 SINCE
no:happened -6 $ .
no:hasnt 10 BE LOST WENT gone
no:have -25 . -11 NUMB
no:havent -10 HAVE -7 noticed -6 COME DROPPING QUITS dropped 13 POWER
no:head 6 $
no:heat 10 .
no:help 8 .
no:here -9 $ 25 SINCE anymore
no:higher 9 than 10 .
no:his -18 .
no:hit -12 .
no:home -22 . -10 $
no:hot -9 .
no:hurt -14 .
no:hurting 9 $ .
no:hurts -9 . -8 $
no:i -11 . -10 HAVE -7 have
no:in -14 THING 6 DIGIT HANDS it which 17 ARM arm 19 ACHE 20 SOCKETED 21 PART
no:infection -8 .
no:is -8 . none -6 there
no:isnt -15 WEAK weak -14 NUMB -13 numb -12 LEAK 8 COME going 14 WENT 16 worth 17 BE
no:issue -8 . -7 $
no:issues -9 . -7 $
no:it 9 . 14 $
no:jk -6 .
no:keep 12 . 13 SOCKETED arm
no:last -13 $ -6 . 14 week
no:leaves 19 .
no:left 10 .
no:legs 14 $
no:lets 10 . HEIGHT up
no:lifting 8 .
no:live 15 . more 18 SINCE anymore 20 $
no:living 18 $ .
no:lol -24 . -22 $
no:look 14 .
no:looks -6 .
no:loose -15 $ .
no:loss -8 . POWER strength
no:lying 6 $ .
no:me -12 .
no:meaning 12 . to
no:month 18 .
no:more -9 than -6 PAIN 8 force 11 POWER
no:much -7 .
no:my 35 .
no:myself -16 $ -7 . 9 OUT out
no:neither -13 ACHE
no:net 11 .
no:never -23 went -16 BE more -12 COME came -8 ACHE PAIN hurt -6 PUT 7 QUITS 8 quits 10 lets 17 goes 19 leaves stops 29 STOP
no:new -20 .
no:night 11 $
no:no -36 NUMB -24 . -19 SWELL swelling -18 numbness -17 CANT tingling trouble -16 complaints -14 PILL -13 POP pinch -12 PART SHOULDER -10 COME MOTOR TRAINING that time -9 CHANGED ODD numb signs -8 BULGE FLUTTER LOST SHAPE contact fear feel issue loss throws towel weird -7 $ FEVER NOT WEAKNESS drama issues shortness sorry thanks weakness -6 HOLD LOOK fever looks pop sir training 6 force 7 BREATH air appetite power 8 HEIGHT biggie higher 11 BE HEART 13 zip 14 gas 18 strength 19 pulse 20 drive energy 21 feeling 22 sensation 23 POSITION POWER SEAT position 30 FEELING
no:nobody -10 ACHE PAIN hurt
no:normal -7 $ .
no:not -22 SINCE anymore -20 ONTO -19 PART -14 SOCKETED -13 SHOULDER -10 more short shoulder -9 COLD cold in -6 at painful 6 NUMB lying 8 . numb 9 PAIN 10 BE dieting 11 COME 12 coming 16 trying 17 regular sore
no:nothing -27 to -17 CHANGED ODD -16 that -14 COME -12 . -11 NEW new -9 NUMB numb -8 special -7 $ ACHE FLUTTER weird -6 happened 8 PAIN 12 for 16 ONTO in
no:notice 11 . 12 $
no:noticed -12 .
no:noticing 13 $ .
no:numb -22 $ -15 PART -12 DIGIT HANDS fingers -11 SINCE
"""
