"""Real English words close to a word the ear knows: never taken for a misspelling of it.

Law: data only, made by `tests/hearing/find_real_words.py`. Source: the SCOWL word lists (Kevin
Atkinson and others; free for any use with its notice) and own additions.
"""

from __future__ import annotations

from typing import Final

WORDS: Final = """
abashing abdomens aboard abode abounding aboves abscesss abuzz accidental accidents aced aces
acetaminophens acing acme acmes acne acnes acquitting acre acres acridest acted acting acts adder
addressing aesthetic aesthetics affected affection affections aflutter afoot agave agonisingly
agonizingly agonys aground aids ailed ails aims airbrush airbrushs aired alight alighting alive
allocate allocated alls alms alts anaesthesia anaesthetics anaesthetise anaesthetist anaesthetize
analysed analysis analyzed anesthesia anesthetics anesthetist anesthetize angles anklet anklets
ante antes anti anticking antis anus anvil anythings apposition appositions arced arched arches
arching arcing arcs area ares aria arise arising arks army armys aroma around arts aseptic ashed
ashes ashing ashs aspen asphalts aspiring aspirins asymmetric asymmetrically attaining aunts
awaked awaken awakening awakes awaking aware awoken baas babble babbling backbite backed backfire
backpacked backpacker backpacks backsides backslid backslide backslider backslides backspace
backtrack badder bade badge bads bagged bagging bail bailed bailing bails bake bakes baking
balanced bald balds bale baled bales balk balks ballet balling balloonist balloons balloted
balloting ballsy balm balms bandaged bandages banded banding bands bane banes bangs bani bank
banked banned bans barb barbed barbing bard bare bared bareness barfs barge barges barging baring
bark barked barking barn barns barred barring bars baseballs based basement bases basing
basketball bass batch batches batching bating bats battened battered battle battles bawl bawls
bays beach beaching bead beading beak beaked beaker beaks beaming beaning bear bearable beard
bearing bears beat beater beatings bedder beddings beds beef beefs beep beeping beeps beer beers
beet beets begged begs belay belching bell belle bellow bells bellys belt belting belts benching
bending bends bents berating berthing beset best besting bets bettering betting beveled bevelled
bibs bicepss bicker bicycled bicycles bidding bide bids bight bights biked biker bikes bile bilge
bilges bilk bill billow bills billy bind binged bingeing binging binning biped birching bisection
bitch bitched bitches bitching bite bitten blabbing blackest blacking blackjack blackouts bladder
blades blame blanch blanches bland blank blanking blare blasting blaze bleached bleacher bleaches
bleaching bleak bleakness bleated bleating bleed bleedings bleep bleeping blench blenched blenches
blenching blend blending blent blessing blew blight blighting blimp blinding blindside blindsides
blinking blip blips block blocked blocking blocks blondness bloodies bloodiest blooding
bloodlessly blot blotch blotched blotchs blotted blotters blowers blubbered blued bluefish bluer
blues blundered blunting blur blurred blurring blurs blurting blush blushed blushing blustered
blustering blusters blvd boar boars boast boasting boat boated boating bobble bobbles bobbling
bode boded bodes bodies bogied bogs boil boilings bold bolder bole boles boll bolls bolt bolted
bolts bomb bond bondage bonds boned bonehead boner boners boney bong bonged bongs bonus bony boob
boodle boom boon boor boos boost boosting booth bootless boots booty booze boozed boozes boozing
boozy bopped bopping bops bore bores born borne boss botching bottled boulders bounce bounced
bouncers bounces bouncier bouncing bound bounded bounder bounding bounds bout bowel bower bowers
bowling bowls bows boxes brace braced bracelets braces bracing bracket brags braiding brained
braining braise braised braises braising brake branched branches branching branchs branding brash
brass brawling bray breach breached breaches breaching breachs breading breadth breadths breaking
breastbones breasted breasting breather breathers breathes breathier breathiest breathings
breathlessly breathy bred breeding breedings breezing bricking bridge brightened brightening
brightness bring bringing brings brisking britches broached broaching broad broiling broker
brooding brook brooked brooking browsing bruiser bruisers brunch brunched brunches brunching brunt
brushed brushing brushs brusk bubbled bubbles bubbling bubbly buck bucked bucketing bucking
buckler bucklers budding budged budges budget budgie budging buff buffed buffing bugging bugle
bugles bugling bugs bulged bulgy bulk bulking bull bulldogged bulldoze bulldozer bulldozers
bulldozes bulled bulling bullpens bulls bully bumble bumbled bumbles bumbling bummed bumming
bumper bumping bumpy bums bunched bunching bundling bung bunged bunging bungling bunks buns bunt
burble burbling burgling burgs buried burn burner burnous burnouts burp burped burping burps
burred burring burrs burs bursts burying bush bushed bust bustling buts butte buttered buttering
butting buttress butts buzzer buzzers buzzs byes cabinets cache cached caches caching cackle
cackled cackling cage caged cake caked cakes caking calif califs calk calks call calling calls
calms calved cambered camel cameo camp camped cams cane caned canonising canonizing cantered
canting cants cape caped capers capped capping caps capsuled capsules captured carbonate
carbonates cardboards care cared caressing carjacking caroling carrots carrys cars carved carves
case cased casement cases cash cashed cashing casing catalysed catalysis catalyzed catchers
catchier catchings catchs catchy catering caulking cave caves cawed ceased ceases ceasing celerys
cell cellulite cellulites cent centering cents cessation chaffing chaining chairing chalking
chammy champed champing chanced chances chancing change changeling chanted chanting chapping
charged charges charging charming charring chartered charters charting chattered chatterer
chatting cheat cheated cheater cheating check checker checking cheeked cheeking cheeks cheeky
cheep cheeping cheer cheering cheesing chess chests chick chicks child childs chile chiles chili
chilis chilli chillis chin chinking chinning chins chipped chipping chips chocked chocking chocks
chomping chopping chopstick chowing chroming chucked chucking chuckles chuckling chugging chummier
chumminess chumming chump chunk chunks chunky cinch cinched cinches cinching cindered cite clack
clacked clacking clacks clam clambered clammed clammier clamminess clanged clanging clank clanked
clanking clanks clapboard clapped clapping clash clashed clashing clasped clasping class classes
classier classiness classing clatter clattering clatters clavicles cleaner cleansed cleared
cleaved clenched clenching clenchs clerking climb climbing clinch clinched clinching clinging
clink clinked clinking clinks clip clipboard clipper clipping clippings clips clipt cloaking
clobbers clock clocked clocking clocks clod clomped clopped clopping closeness clot clothe
clothesline clotheslines cloths clots cloudless clove cloves clubbing cluck clucked clucking
clucks clue clump clumped clumping clumps clumsiest clumsily clumsinesss clung clunker clunkier
clustered clustering clusters clutched clutching clutchs clutter cluttered cluttering clutters
coaching coalition coalitions coast coasting cobble cobbles cobbling cock cocked cocking cocks
codeines codes coding coed coffees coffer coiling coke cokes coking cola colds collages collapse
collared collated collates collation collations collides collie collude colluded colludes
collusion collusions colon colons coloreds coloureds cols colt colts coma comas combing combo
combs comeback comebacks comer comers comet comets comfortably comings comm comptroller concerted
concerti concerto concerts concreted concretely concretes cone cones confection confections
confided conscripted consonant constable constancy constants constraint constrict constrictor
constricts constructed consultant contestant contiguous continues continuum continuums contracted
contrite controlled controllers cooing cook cooked coolly coordinated coot cope coped copes coping
copped copping cops cord core cores coring cork corked corn corning cortisones cotes cottons
couching coughing could countered counting coups coven coves cower cowers cowing cowl cozen crab
crabbing crabs cracker crackings crackled crackles crackling crackly cradling crafting crammed
cramming cramped cramping crank cranked cranking cranks crapping crashes crashs crass cratered
craved crawl crawls cray creaking creasing created creating creek creeping crest cresting cribbing
cribs crick cricked crickets cricking cricks crimping crimsons cringing crinkles crinkling
crippling crisping croaked croaking crock crocked crocks crooking crooned crooning crop cropped
cropping crops crossing crouched crouching crowding crowning cruise cruised cruises cruising
crumbier crumbing crumbled crumbling crummier crumpled cruncher crunches crunchier crunchs crunchy
crusading crush crushes crusted crusting crutch crutches cubs cuds cues cuffed cuffing cuffs cull
culled cultured cumming cums cupboards curbs curd cure curl curry curs curst curt cusp cusps cuss
cutlerys cuts cutting dabbling dale dame dammed damming damped dams dangling dart dartboard dash
dashes daunting deadening deads deaf deafened deafening deafness deal dealt dean dear dearness
dears deathless debt debts decision decisions deduced deed deepened deeps defected defection
defections deferred defining deforming deformitys deft deli delicate delis dell dells delta deltas
demote denied denoted dens deny deported deposition depositions depressing dept derailing derive
desensitise desensitised desensitises desensitize desensitizes detaching detaining devilled
diarrheas diarrhoeas dibbling dicker diet digressing dike dill dills dine diner diners ding dinged
dinghies dinginess dinging dings dink dinkies dinky dinkys dinning dint dints dipped dipping dips
dire dirk dirtiness dirts dirty disc discharged discharges disclosed discolor discolors discolour
discolours discomfit discomforted discomforts discovered disgorged dished dishonored dishonoured
dishs disk dislocations dislodge dislodges diss dissection disses dissociate dissociated
dissociates dissociating dissociation ditch ditched ditches ditching dive dived dives diving
divining divots dizziest dizzinesss dock docked docket dockets docking docks does doing dole doll
dolled dolling dolls dolt dolts domes doming done doodle dope doped dopey dork dose doubling dour
dowelling doyen doze dozed dozens dozes dozing drab drabs drafting dragging drainages drainer
drawling dray dread dreading dreaming dredging drenches dressier dressings drifting drilling
drinking drip dripped drippings drips drivel driven drives driveways droll drool drooled drooling
drools droopier dropper droppings droppingss dropsy dross drove drowning drowsing drubbing dual
duck ducked duckling ducklings duel duelling duff duke dulled dulls dully duly dumb dumbness
dumbnesss dummy dump dumping dumpling dumps dunk duped dusk dusks dusty dwell dwelled dwelling
dwellings dwells dwelt earaches earl earls earn earns easel easels easiness east easts eater
eating eats eave eaves eclectic edemas eels effected effervesce effervesced effervescence
effervesces effervescing egged eighteens eighteenth eighth eighties eights eightys elastic elates
electrically electrician electricitys electrify electrocute electrocutes electron electronic
elephants elevated elevates elevens elide elided elides eliding emitting emote endorsed enema
enforced engorge engorges enlarge enlarger enlargers enlarges enlightening enormity entering
envision envisions eras erased erases erasing errs escalate escalated escalates escalation
escalators esthetic estrange everythings exampled excavator exchanging excision excisions
excruciatingly exhalation exhaling exhausting exhaustions exhaustive exhausts expend exposition
expositions expounding extends extent eyelids fabrics faced faces facet faceting facing fact
factored fagged fagging fags fail failing fain fainter fake fakes faking faltering fame fang farce
fare farm farms fastened fastening fate fatigues fatiguess fattened fatter faulting faze fear
fearing fears feasting feat feathering featured features featuring feds feed feeding feelings fees
feint feinting feints felling fellow fells felts fenced fencer fences fend fens fest fetching
fettered fettering fettle fettles feverishly fewer fezzes fibs fife fifteens fifth fiftys fight
fighter fighting fights filching file filed fill filling fills filtering finagling finch finches
finder finders fine finer fink fire firearm firearms firecrackers fired fish fishes fiver fives
fizzed fizzles fizzling fizzs flack flak flan flanking flanks flapped flapping flashed flashing
flask flatted flatten flattening flattens flattered flatterer flattering flatters flattery
flatterys flaunting flecking fled fleecing fleet fleeting fleshed flick flicked flicking flicks
flight flimsier flimsiness flinched flinching flinging flint flints flip flippant flipper flippies
flippy flips flirting flitting float floated floaters floats flock flocked flocking flocks flood
floors flopped flopping floppys flour flowed flowers flue fluffiness fluids flunk flunked flunking
flunks flunky flurrying flusher flushes flushing fluster flustered flustering flusters flute
flutes fluttery foal foams foamy foes foiling foist foisting fold folder folk follow font food
fool football foots fops fora foray forbears force forces ford forded fore forearmed forebear
forehand foreheads forewarns forged forked forks form formed fort forte forth forts fortys
forwards fostering foul found founded foundered founding foundling founds fours fourteens
fourteenth fowl frack fracked fracking fracks frank franking fray freckles freckling freeing
freezings fret fretting fridge frightened frightening fringing frittered frittering fritters frizz
frizzes frizzing frizzy fronting frosting froze fruiting fuck fuddling fudge fueling fuelling full
fulled fulling fulls fumbler fumblers fums funk funky future futures futz fuze fuzzed fuzzes
fuzziness fuzzing fuzzs gabbing gabbled gabbling gabled gabs gage gagged gagging gags gain gainful
gains gale gall galleon galling gallons gallop galls gambled gambling gamed gamer games gamey gamy
gang ganged gangling gape gaping gaps garb garbed garble garbles garbling garbs gargled gases gash
gashing gasps gass gasses gassing gate gavel gaze gear gearing gears gees gelt gems gene gens gent
gents gesturing gibe gibed gibes gibing gifting giggle giggled giggling giggly gill gills ginger
gingers ginning girt given givens gladder glade glads gland glassed glasss glassy gleaned glide
glided glides gliding glinting glitches glitching glittered glittering glitters gloated globe
globes gloss glosses gloved glowed glowers glue glues glut gluten glutens gluts gnashing goad
goalposts gobble gobbles gobbling gobs gods goings gold goner gong gonk goody gooey goofy gook
goop goops goos goose gore gores goriness goring gorse gouts grace graced graces gracing grackle
grackles grad grads grafting grain gram grams granting graphing grappled grappling grasping grasps
grasses grassing grasss grassy grave graved gravels gravely graven graver graves gravy grays
greasing greed greening greens greet greeting grep grepping grew greys grid grieving grilled
grilling grim grin grinding grinning gripe griping gripped grips grist grists grit gritting
grocerys groins grooming grooving grope gross grossing grounding grounds grouping grove grovel
groves growling grown grub grubbing grubs grumbled grumbling guessing guff guitars gull gulled
gumming gummy gunks gunny guns gunshots gushed gust gusts gutsy guttered guttering gutting guys
gyms hacked hackle hags hail hailed hails hairbrushes hairbrushs hake hakes hale halfs hall hallow
halls halo halt haltered halves hammed hammerhead hammering hammerings hamming hampered hampering
hams hamstrung handed handing handy hanged hanging hangings hangs hank hankered hanks happy hard
harm harms harry hart harts hasp hatch hatches hatching hatchings hater haunting haziness header
heal healer heals hear heard hearer hearing hearkened hearkening hears heartache heartaches
heartbeats heartbreak heartfelt hearth heartiest heartiness hearts hearty heated heaters heather
heating heavenss heaviest heavinesss heckling heed heeds heeling height heighten heightened
heightening heist hell hells helmets hemming hemp hence hens herb hero hickey hies high highness
highs hike hills hilly hilt hims hind hindered hinds hing hinged hinging hings hipped hipping
hired hiss hitch hitched hitches hitching hits hive hived hives hiving hoard hoariness hoarse
hobble hobbles hobbling hock hocked hockeys hocking hocks hoes hoisting hoists hokey holder holed
holes hollows holy home homes homing hone hones hook hookey hoot hope hoped hopped hopping hops
horde horn horsed horses horsey horsy hose host hotkey hound hounded hounding hounds house hove
hoverboards hovering howl huff huffed huffing huffy hugs hull hulled humble humbled humbles
humbling humblings humeruss humped humping humps hums hunched hunching hundreds hung hungered hunk
hunkered hunt hunting hunts hurl hurling hurls hurtling hushed husky huts hyperventilation
hyperventilations ibuprofens ills impaling impermanent imposition impositions impounding inability
inaction inactions incensed inception inceptions inch inched inches inching incident incing
incising incisive incisors inclusion inclusions inconstant incursion incursions indebted
indecision indecisions indents indentured indicted inducted induction inductions infarction
infarctions infecting infectious inferred infested inflame inflames inflated inflates inflation
inflations inflected inflection inflections inflicted infliction inflictions influence influenzas
informed infraction infractions infrared infusion infusions ingested ingestion ingestions inhalant
inhaled inhaler inhales inhering injected injection injections inking inky inlaying inoperable
insecurely inserted insertion insertions insetted inspected inspection inspections instabilitys
instantly intended intent intention intentions intolerably intolerance invading invasion invasions
invent invented invention inventions inverted invested ionising ionizing iphone irregularly
irregulars itch itched itches itching jabs jacked jacket jagged jags jail jailed jails jake jamb
jambs jangling jaunting javelins jaws jays jeeps jell jello jells jellys jets jetting jewelled
jewelling jibs jiggle jiggled jiggling jilt jilted jilts jingle jingled jingles jingling jive
jived jives jiving jock jockey jocks join joins jointing joints joist joke jolly jots jotted
jotting jouncing jousting jowl judge jugs jumble jumbles jumbling jumper jumpy junk junky jute
jutes kale karma keel keeling keels kegs kens kerbs kettles kicker kids kill kilns kilos kilts
kindliness kindling king kinglier kingliest kingly kings kink kinked kinky kite kitten kittens
knead kneel kneels knelling knew knifed knifes knight knights knitting knobs knocker knot know
knuckled knuckling kook labelled labium lace laced laces lacing lacked ladders lade laded lading
lads lagged lagging lags laid lain laity lake lakes lamb lame lammed lamming lamp lamps lams
lanced lancing lander landings lands lane lank lapped lapping laps laptops larboard lard larded
larder larding lased lases lasing lass lasses latch latches latching lathered lats latter laud
lauded lauding launched launching laundered laxitys leach leaching leaded leading leads leaf
leafed leafing leafs leaky lean leaned leaning leanness leans leap leaped leaping leaps leas
leased leases leashing leasing leathers leaved leavened leavening leaving leavingss leeching leek
leeks lees lefts legged leis lend lending lens lent lept less lest lethargy lethargys lettered
lettering leveler leveller levellers lever levered levers libelers libelled liberating libs lick
licked licking lickings licks lies lifer lifers lightened lighter lighthearted lightheartedness
lighting lightings lightness lightnesss lightninged lightnings lights likeness liker lilting
limbless limbo limbs lime limiting limn limo limps limy line linear lined linen linens lines
linger lingers link linker linting lionising lionizing lisp lisps listening listing listless liter
liters littered littering live lived liver livers lives living load loam lobbying loci locker
locket lockets loco locus lofting logs loll lolled lolling lolls lone loner loners loopy loosed
loosen loosened loosenesss looses loot looter lope loped lopped lopping lops lopsidedly lore lorn
loser losers loth lots lounging louse lousiness love loveless lovers loves loving lowed lubber
luck lucked lucking lucks lugs luke lull lulled lumped lumpiness lumping lumpy lunched lunching
lute lutes lynching
""".split()
