"""Warning signs of the whole body, of illness, of the night, and the weekly ones.

Law: data only; how a pattern is written is told in `patterns`. `stop` patterns are clear signs,
`ask` patterns lead to one closed question. May be added to, never taken from. Wording from memory
and common usage, to be signed by a clinician.
"""

from __future__ import annotations

from typing import Final

from coach.model.flags import Group

BODY_SIGNS: Final = (
    (
        Group.CHEST_BREATH,
        "E01",
        "stop",
        """
        CHEST .. PAIN
        PAIN .. in|across|behind|over|through CHEST
        PAIN .. from|into|to|under|beneath|around|near|inside|through CHEST
        PAIN .. CHEST .. jaw
        someone|something|somebody .. on .. CHEST
        CHEST .. weight|elephant|brick|rock|someone|something .. on|sitting
        CHEST .. TIGHT
        TIGHT .. on|in|across|around CHEST
        tight CHEST
        CHEST .. closing|caving|pounding|fluttering
        sitting|standing on .. CHEST
        heart attack
        jaw .. PAIN|TIGHT .. arm|shoulder|sweating
        jaw .. arm|shoulder .. PAIN
        PAIN .. jaw .. arm|shoulder
        PAIN .. left arm .. sick|NAUSEA|sweating|sweaty|jaw
        arm|shoulder .. sweating|sweaty|clammy .. sick|NAUSEA|breath
        angina
        heart PAIN
        CHEST BE|are killing me
        vice|vise|band|belt|rope|strap|weight|rock|brick|elephant|anvil .. around|on|across|over .. CHEST|ribs
        CHEST .. vice|vise|elephant|squeezed|crushed
        ribs .. squeezing|squeezed|tight
        PAIN .. down .. left arm
        left arm .. PAIN .. chest|jaw|sweating|sick|breath
        indigestion .. arm|jaw|sweating
        CHEST .. feels|felt .. weird|funny|off|bad
        """,
    ),
    (
        Group.CHEST_BREATH,
        "E02",
        "stop",
        """
        CANT .. breathe|breath|inhale
        CANT .. catch|get|take|draw|find .. BREATH
        trouble|hard|difficulty|difficult|struggling|tough|struggle .. to .. breathe|breath|breathing|inhale
        trouble|difficulty|struggling breathing|breath
        trouble|difficulty|struggling|struggle|hard|tough|having .. BREATH
        short of|on BREATH
        shortness of BREATH
        breath .. short|shallow|wont|gone
        BREATH .. PAIN|hurts|sharp|stabs|catches
        PAIN|sharp|stab .. BREATH .. in|deep
        PAIN .. to|when|with|every|on .. BREATH
        sucking wind|air .. nothing|rest|sitting|still
        out of breath .. nothing|rest|sitting|stairs|talking|walking|still|lying
        GASP .. air|nothing|sitting|rest|breath
        wheezing|wheezy|wheeze
        coughed|coughing|cough|spit|spitting|hacking .. blood|bloody
        blood .. cough|spit
        blood clot
        cant|couldnt .. deep breath
        breathing .. hard|heavy|weird|funny|labored|laboured|fast .. nothing|rest|sitting|lying
        BREATH .. heart .. racing
        heart .. racing|pounding .. BREATH|chest
        GASP
        gasping|panting|winded|breathless .. stairs|walking|sitting|nothing|lying|talking|still|resting
        stabbing|stab|stabs|sharp|knife .. breath|breathe|inhale
        CANT .. fill|expand .. lungs|chest
        lungs .. wont|cant|tight|burn|hurt|full|collapsed
        not .. enough air
        BREATH .. shallow|rapid|fast
        huffing .. nothing|sitting|stairs|puffing
        breathing .. PAIN
        winded .. nothing
        """,
    ),
    (
        Group.CHEST_BREATH,
        None,
        "ask",
        """
        out of breath
        breathless|winded|panting
        CHEST
        lungs .. ODD|tight|bad|fire|PAIN
        ribs .. PAIN
        breathing
        sucking wind
        CHEST .. feels|felt .. ODD|funny|bad
        pec|pecs .. PAIN .. breath
        coughing|cough
        """,
    ),
    (
        Group.FAINT_HEART,
        "E08",
        "stop",
        """
        fainted|fainting|blackout|syncope
        went|everything|vision|world black
        lost consciousness
        HEART .. FLUTTER
        HEART .. BE .. weird|funny|fast|crazy
        palpitations|palpitation
        skipped|skipping|skips .. beat|beats
        keeled|keel over
        DIZZY .. FAINT
        dizzy|lightheaded|woozy|lightheadedness|dizziness
        light headed
        room|world|everything .. spinning|spun
        felt|feel|feeling|feels|bit|little|so faint $
        faint and|after|when|during
        almost|nearly|about|close|going .. passed|pass|passing|black|blacked out
        passed|pass out .. set|rep|throw|practice|game|standing|field
        went|go|going down .. unconscious|fainted
        came to .. floor|ground
        unconscious
        i|just|then collapsed
        heart .. PAIN|stopped|stops|skips|weird|wild|crazy|jumping|flips
        vision .. tunnel|dark|black
        tunnel vision
        HEART .. out .. chest
        seeing|saw .. stars|spots
        """,
    ),
    (
        Group.STROKE_SIGNS,
        "E07",
        "stop",
        """
        FACE .. DROOP
        FACE .. hangs|hanging|hung|drops|dropped
        FACE .. NUMB
        NUMB .. FACE
        DROOP .. FACE
        side of face
        SLUR
        SLUR .. speech|words|talking
        speech .. weird|off|slow|funny|SLUR|thick
        words .. wrong|jumbled|scrambled|funny|mixed
        CANT .. get|find|say .. words
        CANT .. talk|speak
        talking .. funny|weird|drunk
        worst headache
        worst HEADACHE .. life|ever
        HEADACHE .. ever|thunderclap|exploded|explosive|worst
        thunderclap
        one side .. WEAK|body|NUMB
        half .. face|body .. NUMB|droop|weak|dead|limp
        FACE .. crooked|slack|dropped|falling
        CANT .. smile|swallow
        blind .. eye|in|one
        CANT .. words .. out|right
        words .. come|came|coming .. wrong|funny|weird|jumbled|mush
        sudden .. confusion|blindness
        whole|left|right|one side .. WEAK|limp|NUMB
        double vision
        seeing double
        LOST .. vision|sight
        CANT see .. eye|one|left|right
        vision .. blurry|gone|blurred|double
        """,
    ),
    (
        Group.CORD_SIGNS,
        "E06",
        "stop",
        """
        LEG .. WOBBLY
        WOBBLY LEG
        LEG .. weak|WEAKNESS
        LEG .. GIVES .. way|out
        LEG .. NUMB .. arm|hand|hands|both
        hands .. CLUMSY
        CLUMSY hands|hand|fingers
        CANT .. button .. tripping|walk|legs|balance
        tripping .. over|walk|all
        balance .. off|gone|bad|shot|terrible|weird
        CANT .. walk .. straight|right|properly|without
        trouble|hard|difficulty .. walking|balancing
        wet|pissed|peed|soiled|shit|pooped myself
        peed|pee .. pants|bed
        CANT .. pee|poop|urinate|hold .. pee|bladder
        CANT .. pee|urinate
        bladder
        bowel|bowels
        NUMB .. between legs|thighs
        NUMB .. down there|below
        NUMB .. groin|crotch|saddle|privates|genitals|waist|legs|butt
        groin|crotch|saddle|genitals|privates .. NUMB
        no feeling .. groin|crotch|between|down there
        shock .. spine|legs .. neck|chin
        neck|chin .. SHOCK .. legs|spine|back
        LEG .. jelly .. hands|arms
        LEG .. dont|wont|not|doesnt|arent|cant .. work|working|listen|move|hold|respond
        LEG .. feel|feels|like .. wont|dont|belong|disconnected
        CANT .. feel .. LEG|legs
        CANT .. do .. buttons|button
        CANT .. control .. LEG|bladder|bowels|pee
        NUMB .. both .. arms|hands .. legs
        stumbling|staggering .. walk|drunk|around
        wet|wetting .. bed|pants
        leaking pee|urine
        balance .. way|really|so off
        """,
    ),
    (
        Group.FEVER_INFECTION,
        "B11",
        "stop",
        """
        FEVER
        temp|temperature .. 38|39|40|100|101|102|103|104|high|up|elevated|spiked|running
        temp|temperature of
        running .. temp|temperature
        have|got|had temp|temperature
        102|103|104|101 degrees|fever|temp
        body|achy|aching|aches .. all over .. sick|chills|flu|hot
        body aches
        CHILL
        burning up
        cold sweats
        sweats .. CHILL|cold|shaking|hot
        teeth .. chattering|chatter
        chattering
        thermometer .. FEVERISH|high|red|over
        temp|temperature|fever|thermometer .. FEVERISH
        FEVERISH .. temp|temperature|fever|degrees|thermometer|f|c
        CANT .. stop shaking|shivering
        ^ FEVER_F $
        FEVER_F and .. shaking|sweating|chills|achy|sick
        FEVER_F this|last|today|now|since|yesterday|tonight|fever
        freezing|cold|shaking .. boiling|burning|sweating|hot|roasting
        hot|boiling|burning|sweating .. freezing|shivering
        strep|sepsis|pneumonia
        CANT .. get|stay warm
        puked|puking
        sick .. stomach
        came down with
        hot .. cold .. all|sweats|shaking|keep
        swollen glands|tonsils
        headache .. fever|chills
        VOMIT
        threw up .. night|today|morning|twice|all|after|times
        throwing up .. all|since|today|night|everything|sick
        been|keep throwing up
        stomach bug|flu
        FLU
        food poisoning
        """,
    ),
    (
        Group.FEVER_INFECTION,
        "E09",
        "stop",
        """
        shaking .. burning|FEVER|CHILL|hot|sweats
        FEVER .. confused|shaking|CHILL|delirious|foggy|out of it
        CHILL .. FEVER
        confused|delirious .. hot|FEVER|CHILL
        out of it .. hot|boiling|FEVER
        CHILL .. burning
        """,
    ),
    (
        Group.FEVER_INFECTION,
        "S02",
        "stop",
        """
        PART .. HOT .. RED
        PART .. RED .. HOT
        PART .. HOT .. swollen|touch|SWELL
        shoulder|elbow|joint|skin|collarbone .. BE .. hot|boiling
        arm|hand|forearm .. hot|boiling .. touch|red|swollen
        hot .. swollen|red|RED .. PART
        HOT to touch
        RED and hot|warm|swollen|puffy|burning
        hot and red|swollen|puffy
        PART|it|joint|skin .. RED .. HOT
        RED .. SWELL
        SWELL .. RED
        PART .. burning to touch
        PART .. RED .. SWELL
        joint .. hot
        red streak|streaks|line|lines
        skin .. HOT|RED .. touch|over|around|joint
        HOT .. over .. joint|PART
        PART .. on fire .. red|hot|touch
        heat .. coming|radiating .. off|from .. PART|joint
        PART .. throbbing .. hot|red
        PART .. angry|inflamed
        INFECT
        looks infected
        """,
    ),
    (
        Group.WOUND,
        "S03",
        "stop",
        """
        WOUND .. LEAK
        liquid|stuff|fluid|something|goo|gunk|water|blood .. coming|came|comes|running|dripping|out .. WOUND
        cut .. leaking|oozing|infected|pus|smells|weeping|reopened|draining|angry
        from .. portal|surgery|incision .. hole|holes|site|spot
        LEAK .. from|around|at|out .. WOUND
        LEAK WOUND
        WOUND .. smell|smells|smelly|stinks|funky|gross
        WOUND .. weepy|mushy|soggy|black|crusty|open|wider|separated
        surgical|surgery .. site|spot|area|cut .. weepy|warm|hot|red|LEAK
        WOUND .. hole|gap|gaping|pulled|popped|came
        RED .. around .. WOUND
        yellow|green .. stuff|fluid|goo|gunk|liquid|discharge
        surgery|surgical|op site|spot|scar .. LEAK|RED
        """,
    ),
    (
        Group.LEG_CLOT,
        "S04",
        "stop",
        """
        CALF .. SWELL|PAIN|HOT|RED|tight|cramp
        SWELL|PAIN|HOT|RED|sore|tight .. CALF
        LEG .. SWELL
        SWELL LEG
        LEG .. HOT|RED .. one|side|since|swollen|surgery|tight
        back of leg|knee .. PAIN|tight|swollen
        LEG .. tight .. hot|flight|surgery
        """,
    ),
    (
        Group.FEVER_INFECTION,
        "B11",
        "ask",
        """
        feel|feeling|felt|been|getting|im|am|was|be ill|unwell|sick
        sick .. all|week|days|today|yesterday|still
        body|whole aches|ache|achy
        coming down .. something
        slight|bit|little|mild|low|small|touch temperature|temp
        low grade
        WOUND
        hot .. cold
        chest cough
        NAUSEA
        PART .. RED
        RED PART
        WOUND .. ODD|itchy|PAIN|tender|hard
        """,
    ),
    (
        Group.NIGHT_PAIN_UNRELENTING,
        "S09",
        "stop",
        """
        ACHE .. nothing .. helps|helped|works|worked|touches|eases|relieves|takes|stops
        nothing .. helps|helped|eases|relieves|touches|takes .. PAIN|it|edge
        nothing .. helps|helped|eases|relieves
        no POSITION .. helps|comfortable|works|good|comfy|better|eases
        no position|angle
        no way to lay|lie|sleep|sit|hold
        nights are .. worst|worse|bad|brutal|hell
        PAIN .. most|worst|worse .. night
        no comfortable|comfy .. way|spot|position|side
        CANT .. get comfortable|comfy
        nothing .. comfortable
        PAIN .. even .. rest|resting|still|nothing|sitting|lying|laying
        PAIN .. at|in rest
        cant|dont|doesnt sleep .. PAIN|PART
        PAIN .. doing nothing|anything
        PAIN .. matter .. what|how|position
        unbearable|excruciating|agonizing|agonising|intolerable
        worst PAIN .. life|ever|had|felt|known|experienced|yet|imaginable
        in agony
        rest|resting|ice|meds .. doesnt|dont|didnt|not .. help|touch .. PAIN|it
        nothing .. makes|made|gets|works|touches|stops|kills|dulls|touch|fixes .. better|PAIN|it|edge
        none .. touches|helps|helped|works|worked|touch
        PAIN .. none|nothing .. touches|helps|works|touch|helped
        lying|laying|lay|lie down .. kills|killed|hurts|hurt|worse|unbearable|murder|torture
        PAIN .. no|without .. break|letup|relief|let
        no|zero relief|letup|escape
        PILL|ice|heat|rest|nothing .. do|does|did|doing nothing|zero|squat|jack
        PAIN .. just|while|when|even|im sitting|resting|lying|standing
        every|any|each position .. no|zero relief
        no .. relief .. PAIN
        PAIN .. sitting|resting|lying|laying|standing|even .. still
        PAIN .. regardless
        every|each|any position .. PAIN|hurts|worse
        PAIN .. every|any|all position|positions|angle
        meds|advil|ibuprofen|pills|ice|heat .. dont|doesnt|didnt|arent|isnt|aint|nothing|not|cant|wont .. touch|touching|help|helping|work|working|do|doing
        10 out of .. pain
        PAIN .. off .. charts|scale
        severe|extreme|insane|unreal PAIN
        """,
    ),
    (
        Group.NIGHT_PAIN_UNRELENTING,
        "B01",
        "stop",
        """
        PAIN|it .. all night
        all night .. PAIN
        all night long
        ACHE .. CANT|doesnt|didnt|isnt|arent|never|hasnt|not|wont|refuses|dont STOP
        ACHE .. CANT|doesnt|didnt|isnt|arent|never|hasnt|not|wont|dont .. go|gone|goes|going|went away
        ACHE .. CANT|doesnt|didnt|isnt|arent|never|hasnt|wont|dont .. let up|off
        ACHE .. never .. STOP|lets|goes|leaves
        CANT .. find|get|found .. POSITION
        CANT .. find .. way .. lay|lie|sleep
        CANT .. sleep .. PAIN|PART|hurts|because
        CANT .. sleep .. on it .. nights
        PAIN .. CANT .. sleep
        PART .. CANT .. sleep
        didnt|barely|hardly|no|zero|never|not sleep|slept|sleeping .. PAIN|PART|aching|throbbing
        didnt|barely|hardly .. sleep|slept .. from|because|with|due .. PAIN|PART
        zero|no sleep .. PAIN|PART|CANT
        PAIN|PART|it|this|ache|throbbing kept|keeps|keeping .. me .. WAKE|up|all
        kept|keeping|keeps me .. up|awake .. PAIN|PART|ache|throbbing|hurting|shoulder
        awake .. all|half|most .. night .. PAIN|PART|ache|with
        up all night .. PAIN|PART|with
        PART .. up all night
        woke|wakes|waking|wake .. me .. AGAIN
        WAKE .. me up .. night|nights|PAIN
        wakes|waking|wake me
        WAKE .. AGAIN .. PAIN|PART|night|nights
        PAIN .. WAKE .. me
        WAKE .. MANY .. times|nights .. PAIN|PART
        PAIN|PART .. WAKE .. MANY .. times|nights
        PART .. WAKE .. me
        MANY NIGHTS .. PAIN|PART|row|sleep|awake|now
        nights .. row
        constant|nonstop|unrelenting|relentless|continuous .. PAIN
        PAIN .. constant|nonstop|constantly|unrelenting|relentless|continuous
        PAIN .. 24|247|clock
        PAIN .. all the time
        PAIN .. all day .. night
        throbs|throbbing|aches|aching|hurts|pounding .. night
        night .. throbs|throbbing|aches|aching|hurts|pain|ache
        PAIN .. through night
        PAIN .. never .. lets|let|goes|stops|leaves
        CANT lie|lay|lying .. PAIN|side|it|without
        sat|slept|sleep|sleeping|stuck .. up|in .. chair|recliner|couch|upright .. PAIN|PART|night|because|cant|lying
        slept|sleep|sleeping upright
        havent|hasnt|not|cant|couldnt|didnt .. slept|sleep|sleeping .... PAIN|PART|days|nights
        up|awake till|til|until .. with|PAIN|PART|shoulder|hurting|aching
        up with .. PAIN|PART|ache
        night|nights in row .. awake|up|PAIN|with
        up|awake MANY hour|hours
        awake|up .. with .. ache|PAIN|shoulder|arm|it
        up .. all|half|most .. night .. PAIN|PART|hurting|throbbing|aching|ache
        MANY .. hour|hours|nights .. woke|wake|waking|awake .. PAIN|hurting|PART
        woke|wake|waking|wakes .. MANY|AGAIN hour|hours|night|nights
        cried|crying .. night|sleep|PAIN
        PAIN .. since .. night|hours .. stop|straight|without
        PAIN .. every|all minute|hour|second|day
        slept|sleep .. NUM|an|one|two|maybe hour|hours|minutes .. PAIN|PART
        paced|pacing|walking ... because|from|with .. PAIN
        am .. because|from|with .. PAIN
        PAIN .. never quits|stops|ends|leaves|eases
        watched|watching .. clock|ceiling .. PAIN|night
        ACHE .. never .. quit|quits|eases|stops|stopped|leaves|ends
        painful .. night .. long
        toss|tossed|tossing .. turned|turning .. PAIN|ache|PART|shoulder|night
        worse|worst at night
        PAIN .. worse .. night|lying|rest
        zero|no|hardly sleep .... nights|PAIN|PART
        PAIN .. through .. sleep|night|everything
        relentless|unrelenting|nonstop|nonstop
        throbs|throbbing|aching|aches .. constantly|nonstop|always
        ache|pain|throb .. there .. always|time|constantly
        always .. PAIN .. even|rest|night
        """,
    ),
    (
        Group.NIGHT_PAIN_UNRELENTING,
        "S09",
        "ask",
        """
        ^ its a 8|9|10 $
        worst pain
        horrible|terrible|awful|intense PAIN
        PAIN .. severe|horrible|terrible|awful|intense|extreme
        """,
    ),
    (
        Group.NIGHT_PAIN_UNRELENTING,
        "B01",
        "ask",
        """
        WAKE .. me .. up
        WAKE me
        WAKE .. up .. MANY .. times|nights
        woke|wake|waking .. MANY times
        PAIN & sleep|night|nights|awake|wake
        PART & awake|woke|waking|wakes
        PART .. screams|screaming|screamed
        WAKE .. from|by|with|because|to|cause .. it|PAIN|PART
        WAKE .. PAIN|PART
        PAIN|PART .. WAKE
        CANT .. sleep .. on|side
        night pain
        PAIN .. at night
        kept me up
        constant
        tossed|tossing .. turned|turning
        all night
        sleep .. PART .. PAIN|bad|bothered
        CANT .. sleep
        PAIN .. rest
        always PAIN
        """,
    ),
    (
        Group.WEIGHT_NIGHT_SWEATS,
        "B07",
        "stop",
        """
        night SWEATS
        SWEATS .. at night
        SWEATS .. through|soaking .. SHEETS
        SHEETS .. SWEATS
        woke .. SWEATS
        losing|lost|dropping|dropped .. weight|pounds|kilos|lbs|kg .. reason|trying|without|why|explained
        weight .. falling|dropping off|reason|trying
        unexplained|unintended weight
        lump .. neck|armpit|breast
        cancer|tumor|tumour
        losing weight
        weight .. dropped|dropping|lost|loss .. reason|trying|why|unexplained
        lost .. NUM .. pounds|lbs|kg|kilos|pound .. without|trying|reason|why
        lost .. stone|pounds|kilos .. without|trying|reason
        drenched|soaked|soaking .. sweat|bed|sheets|night
        """,
    ),
    (
        Group.MANY_JOINTS,
        "B08",
        "stop",
        """
        all|several|many|multiple|other|most|lots .. joints .. SWELL|stiff|PAIN
        joints .. all .. SWELL|stiff|PAIN
        joints .. SWELL|stiff
        both shoulders .. stiff|PAIN|SWELL
        stiff .. both shoulders
        knees|hands|wrists|ankles .. and .. knees|hands|wrists|ankles|fingers .. SWELL|stiff
        """,
    ),
    (
        Group.PAINKILLERS,
        "B09",
        "stop",
        """
        PILL .. so .. could|can|able
        PILL .. to .. throw|pitch|play|train|get|lift|bowl|serve|practice|exercise|finish
        PILL .. before|for .. throwing|session|practice|exercises|game|training|workout|set|match|bullpen
        PILL .. get through
        PILL .. every|each|daily .. throw|session|practice|day|game
        need|needing|using|relying|living|survive .. PILL
        PILL .. just to
        popped|took|taking|takes .. PILL .. warmup|throw|pitch|practice|game|session|bullpen|exercises|rehab|so
        pain PILL .. before|throw|session|to
        pain killers .. before|throw|session|to|so
        """,
    ),
    (
        Group.OVERTIRED,
        "B10",
        "stop",
        """
        TIRED .. for .. weeks
        always|constantly TIRED
        TIRED .. always|constantly|weeks|month|matter
        SPENT .. weeks|days|always|matter
        TIRED .. all the time
        TIRED .. weeks
        no motivation .. weeks|tired|slow
        burned|burnt out
        burnout
        weeks .. TIRED
        nothing left .. weeks
        """,
    ),
    (
        Group.SELF_HARM,
        "E11",
        "stop",
        """
        kill|killing|harm|harming|cut|cutting myself
        SUICIDE
        want|wanna|wanted|wish .. to die
        wanna die
        want to be dead
        wish .. dead
        rather .. dead
        better off dead
        better .. without me
        end it all
        end my life
        take my .. life
        dont|didnt|not|doesnt want|wanna to be here|alive
        dont|didnt|not|doesnt want|wanna be here|alive|around
        dont|didnt|not wanna|want .. live|exist|alive|here
        dont|not want|wanna .. wake up
        CANT .. live .. anymore
        not|isnt worth living
        point of|in living|life
        ending|end my|it all|life
        thinking|thought|thoughts .. killing|ending|dying|suicide
        wish i .. wasnt|werent|never .. alive|here|born
        disappear forever
        no .. point .. living|live|alive
        no reason .. live|living
        dont see .. point .. living|anymore|going on
        thoughts of .. harming|dying|suicide|death
        overdose|od on
        """,
    ),
    (
        Group.SELF_HARM,
        "E11",
        "ask",
        """
        hurt|hurting myself
        hate myself
        give|giving up on life|everything
        whats the point
        no|any point anymore
        dont care if i .. die|live
        die
        hopeless
        """,
    ),
)
