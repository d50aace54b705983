"""The points of words, in tenths: for a warning sign above 0, against it below.

Law: data only, made by `tests/hearing/find_points.py` from our own labelled answers, which are
invented. One line holds all words of one value; `no:` marks a word that is denied, capitals a
family of the vocabulary, `#` any number.
"""

from __future__ import annotations

from typing import Final

START: Final = -26
TABLE: Final = """\
-52 if
-49 his
-41 fine
-36 good
-34 coach sore
-32 should
-31 do
-30 front
-29 barely
-28 lol normal
-27 didnt too was
-26 we
-25 six what
-24 a-saying
-23 last more
-22 ago did none nope traps
-21 bus no:SWELL
-20 great her long neck no:NUMB ok pinch them
-19 always from work working
-18 # ELSEWHERE band brother hurt stiff
-17 has new not were
-16 done mostly our pops struck you
-15 FRACTURE NUM blister easy knee no:or pinched same sister stretch
-14 he mom no:POP no:numbness no:swelling pinches seven sharp worried
-13 MANY biceps care could eight free gym hit nah no:# no:no surgery team three used well
-12 buddy can cracked does finish hardly labrum lifting no:WEAK no:weak rested started
-11 OPPONENT crossed dropped exercise kid light no:FALL no:MANY no:SLIP no:have pinching school throws week will writing year years
-10 balls broke clean four friend girlfriend grandpa heavy high ill later mean no no:i no:is pulled ready roommate set smooth stretched toss weight
-9 any blisters butter call clicks couple dad finished gone guess hair heavier hours must net old only pen pitcher played slept snapped solid stop tape thats tonight tossed towel triceps
-8 blade cannon cleats club course dog drills early em end go goal goalie knuckles lights live match most mound no:FAINT no:LEAK no:anything no:control no:pain no:report no:was or painful pr soreness strong struggled swells throat told wife worry
-7 BREAKS_LIKE ankle bad bp competition dislocate five foot form ft glove hands hmm infield isnt kept manageable much neither no:BULGE no:COME no:FEVER no:OUT no:at no:nothing no:once no:swollen no:throwing operation paining passes pitches quick scared season shelled skipped son squats stayed toe volleyball would
-6 away back bag comfortable cooked cousin cramp cuff day delt dunno fastball forgot haha half happy heat ish know late lats lets midnight minutes nail negative no:CHEST no:FLUTTER no:LEG no:chest no:dizzy no:felt no:fever no:issues no:legs no:numb no:say no:so no:tingling no:today no:weird painless rain say sir slow start tough typing usual very wait weights who wore
-5 asked at bar beat blades broken butt cheat college daughter dry enough final finally fire frozen game gimme had hate homework indeed kids lifted make march meet meh moved mud nicely no:BLOW no:BREAKS_LIKE no:COLD no:COLOUR no:HAVE no:WEAKNESS no:above no:band no:cold no:enough no:fall no:of no:pop no:popped no:signs no:slipped no:there no:think no:weakness odd order part partner physio position pt pump reps right serving shows so spot staying stretching swinging tad ten these threw trap uh wall weekend win wrist zero
-4 afraid baby bro bumpy burrito chilled cleared concert cracks curls cut dentist depends doc effort elbows fixed goose gripping helped him hits max mhm mobility money nada nap naw need nighter nil no:DROPPING no:INFECT no:WAKE no:any no:bad no:blue no:either no:feels no:grip no:hurts no:infection no:none no:normal no:noticed no:slip no:throws no:time no:whatsoever noticed nuh off ouch pains party probably question row run says scary session sets shaky shoveling signs skip somewhere spring stick sure swell teammate th thank top unfortunately warmup watch worked y yet zip
-3 LOOSE achy actually alright amount anything bands bends bones born bottle bunch burning burns busy catches challenging change chilly color crying dips doctor earlier eh field finger garbage goes hall helmet hope hospital huh inning jammed kinda knocked level loose mechanics month no:AGAIN no:BRUISE no:CANT no:NUM no:SHAPE no:UNSTABLE no:all no:as no:chills no:complaints no:difficulty no:dropped no:fallen no:good no:got no:great no:had no:hit no:like no:looks no:much no:needles no:new no:nor no:out no:pins no:pops no:problem no:shortness no:unstable no:wait no:yesterday numbness opening perfect pitch pitched please pm problem quarter ride rough saw shifted sliders slip sneeze snow some starts swings third tired toast today tolerable tomorrow topped tosses tuesday twenty until velos weather weekly
-2 DAILY DROPPING about afterwards alarm as ask attack banged behind bullpen chair class closed collar counts denies disc doubleheader drill drops exam falling finals friday gassed give gonna gross gun guy h handle hitter hoodie idk jav javelin jello jk keeper knows lazy low maximum months nails near needed no:HOLD no:RED no:THING no:am no:breathing no:bumps no:came no:discoloration no:dizziness no:everything no:fell no:jk no:little no:lol no:me no:painful no:pinch no:popping no:redness no:resting no:short no:shoulder no:sir no:slept no:slipping no:stuff no:tingles no:tingly no:too no:trouble no:why now numb ones overs peaked press pressing program promise reach reaching resting rly s said sec seconds serve sessions shirt shoes shots smoked sorry sprints stroke sunburned their thursday toes tournament travel traveling tree turf twinge ups warm whatever workout
-1 DULLED aint arms bent blew blue bout bowled bowling box burger changeup checked climbing cold curve defense different dinner drum ever failed fall far felt fielder flipped follow grade habits heater hill hip hovering innings keeping league leaves left lineup lot m machine many matches maxed mid no:KEEP no:MOVE no:QUITS no:SHOULDER no:anywhere no:bruises no:bruising no:clicking no:clicks no:clunks no:cough no:cuff no:drama no:drop no:falls no:feel no:hits no:hold no:hurt no:keep no:really no:sleeve no:thing no:those no:tingle no:yes no:zero otherwise paper plyo points pool popping practice quite rd scratch scrimmage seams seat served serves setter shin shoulders sick sidearm skating sleepy slump somewhat stand stopped stubbed study tell til tingled tore torn upper weird wind yards
1 CATCH alone backhand balled basically bat bed before better blotchy bluish brushing buckle bulge click close clue comes completely curb draining drenched due either else eye fielding first fluid fridge fuzzy gives giving goosebumps ground gut here hole hopped how instant joke jump kicked kill kneed lurched nerve no:ELBOW no:ELSEWHERE no:PAIN no:PUT no:ball no:button no:comb no:coming no:day no:elbow no:hair no:key no:more no:pick no:shampoo no:shirt no:straighten no:strong no:wash no:water no:week no:what pencil pizza plank poke pole polo poured pretty reddish rings single slider sliding smashed sneezed sorta spleen square squared straight straighten streaks stumbled swole table tea tried twang use wake wants warmups wave waxy way weighs went which won wood worse zaps
2 ASLEEP ability absolutely again asleep bandage base beaned being belly below bike bowl brief bruise burned button buzzy catch chalk changed clicked clunks comebacker crawling crunch crushing current dislocated dove drilled drop dude dull dusky elbowed few find fizzes foul gallon gray growing hard hasnt height honestly jolt jumped jumps kind lines made meets milk mornings mph no:LOOK no:LOST no:NOT no:bottle no:cap no:deep no:door no:ever no:fingers no:going no:head no:look no:matter no:over no:past no:press no:pull no:push no:ring no:rotate no:serve no:shelf no:shut no:socket no:throw no:top no:turn no:zip outfield outstretched patch popeye prickling pushup putting reached rebound roll scrum separated shade shaking shift shut skipping sleeps slides slipping smacked sock spaghetti stomach stood stops sunken swollen teeth thirty those tightness tops track try wearing wet zap zing
3 BRUISE above aching although apart basketball bath between bigger bolt both butterfly buttons clunk cock coin coming crooked deformed elephant except fist fluttering full gets going goosey helps holes hour ibuprofen id im index it keys ladder leave lightning limp locks may naproxen next ngl no:CATCH no:NEW no:NIGHTS no:TIGHT no:breath no:budge no:finger no:fit no:mine no:night no:scratch no:sitting no:sleep no:speak no:stay no:unscrew novocaine opens outer pan passed pitching prickly puffiness push r racing recliner release relief rolled rubber runs sat saturday secs shortstop shove skateboard sleeve slipped sometimes sort sound sparks spike squeezing steps sticks strike sunday sweaty taking tender that thrown tip touched turning vomiting walk weeping with wobbly wrists wrong yanked
4 CLUMSY COLD TIGHT arent armpit around atv balloon bases because bench bicycle block blown boards body bubble buzz clumsy constantly crash crazy dark deck dent dirt diving dropping ear er feel feet flat floor flops golf impossible injection laying locker makes middle might missed no:HAND no:behind no:but no:catch no:drive no:force no:goes no:juice no:net no:quits no:reach no:sensation no:side no:squeeze no:without partially pile prickles racket seatbelt shakes shelf shock shot site snapping speed standing strap struggling sucking sweating tackle they things throw thumb tight time tingles trouble turn unbearable waking wasnt watching words wrecked wrestling yellow
5 GIVES STOP across become bicep but buzzing coffee cork cup door droopy electricity ending fat frame gave grey gunk hollow house improvement infected inner joints lately leg less moment motion muscle nearly no:CHANGED no:ODD no:VEHICLE no:alive no:come no:does no:down no:full no:hurting no:left nowhere one outside pale perhaps plus possibly pounding puffed pushed put raise range rep ribs slide smell spiked stabbing stage stone tearing than thought tingle trainer trampoline tripping trucked tumbled turned velcro vision wiped wrap wrapped
6 FLU HOLD NOT TIGHTER TIRED UNDONE VEIN became black breathing cause colder compared control couch cutter days drooping droops edge ended gasping handlebars hanging have hot huge hurting irregular killing lightheaded line lower lump lungs minute never no:gas no:gone no:it no:not no:sudden on own playing pointer portal puking quit quits ripped scooter see sensation shape size soda stuck surgical sweat tear thick veins water
7 HAVE LIFT MY ODD ONTO also am another balance bender bit bladder boiling breakfast chasing clunked dizzy eating everything faint falls fence fender flew flight forearm freezing help itself ive lbs let lunch no:DIGIT no:MISSILE no:for no:in no:off no:that oozing open opened painkillers planted popped pressure room sheets short sit skiing slightly stuff sudden swelling tackled the tiny ucl useless vanished white why wound yeah
8 a anymore catcher degrees drive each electric everyone fast fork green havent having home in lay legs longboard meds monday no:GROUND no:ON no:be no:here no:lets no:on palm peed player poking ripping round scar smells stairs theyre thing till touch whats whole wish
9 HEADACHE PUT air ants breathe breathless bump come constant flu headache header joint leaking lie no:ACHE no:right rather rear rip shooting sleeping sticking though under wreck
10 BE CALF KEEP ON accident ate calf cannot car coughing dive doing fell getting hangs hold jaw my no:BY no:stops no:with no:words nonstop omg onto really reason shoulder skin snap someone stitches subluxed tv vomited wheezing worst wouldnt
11 BY CHANGED LIMP NEW are by clock crack dugout exhausted feverish get inside linebacker living mouth no:HANDS no:PUSH no:comfortable no:get no:go nothing of over point puffy pus red shivering slurred somebody speech static sweats think this to
12 HOT MISSILE MOVE RIBS SHEETS awake be beats collided collision coughed deep die fainted fingertips got is losing no:air no:back no:breathe no:feeling no:sore play purple rest swelled through tripped when yep
13 ARM COME LEG QUITS SOCKETED ache crashed doesnt funny kilos loud lying maybe no:BE no:REACH no:SINCE no:power no:up pounds ring small soaked took up without
14 aches big blacked couldnt dead ice lift no:FEELING no:anymore slurring take throbs touches unstable weak yup
15 ACHE POSITION WENT almost dislocation feeling forward me nights no:DAILY no:SOCKETED no:and no:arm no:even still strength
16 HEIGHT PUSH RED THING arm elbow horse i incision no:ARM no:away no:live pinky place then throwing times twice where winded yesterday
17 DROOP UNSTABLE face its matter no:HEIGHT no:a no:trying no:want sitting slammed sublux there weaker
18 ELBOW MOTOR down halfway keep keeps morning socket throbbing while
19 HAND SINCE all for no:MOTOR partial pop ran running something
20 LAND OUT PART SPENT blood life no:WENT no:to slight tingly
21 SHOULDER ball even hand landed night pain slid walking weakness yes
22 AGAIN hurts needles out second suddenly want
23 BULGE FLUTTER SLIP advil chills fingers heard no:BREATH no:MY no:PART no:my no:strength no:the once weeks
24 BONE FAINT GROUND PAIN SHOCK SWELL been dont grip other
25 INFECT came no:ONTO pins temp thinking woke
26 BLOW HEART LOST NEVER_ENDING POP heart like lost no:STOP wont
27 HANDS SEAT SLUR bone breath every fever just
28 DIGIT FACE FEELING LOOK WEAK no:position sleep
29 looks no:SEAT theres
30 BREAK POWER
31 GASP feels
32 and myself tingling
33 NIGHTS VOMIT since
34 FALL VEHICLE no:POWER
35 CHILL COLOUR side
36 BUZZ SWEATS temperature
37 FEVER WAKE WEAKNESS
38 chest
39 CHEST DISLOCATE NUMB
40 SHAPE into
41 CANT collarbone no:POSITION
43 LEAK
44 WOUND
47 BREATH
48 PILL
49 cant
57 FEVERISH FEVER_F
60 CRASH"""
