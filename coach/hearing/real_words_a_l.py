"""Real English words close to a word the ear knows, or made of two: never changed, never cut.

Law: data only, made by `tests/hearing/find_real_words.py`. Source: the SCOWL word lists (Kevin
Atkinson and others; free for any use with its notice) and own additions.
"""

from __future__ import annotations

from typing import Final

WORDS: Final = """
abashing abdomens abounding aboveboard abreast abscesss abuzz accidental accidents aced aces
acetaminophens acing acme acmes acne acnes acre acres acridest acted acting acts aesthetic
aesthetics affected affection affections aflutter afoot aftershock aftershocks agate agonisingly
agonizingly agonys ailed ailing ails aims airbrush airdrop airdropped airdropping airdrops aired
airfoil airhead airlift airlifting airliner airliners airtight airway alight alighting alive
allover alls alms alts anaesthesia anaesthetics anaesthetise anaesthetist anaesthetize analysed
analysis analyzed anesthesia anesthetics anesthetist anesthetize angle angles anklet anklets ante
antes anti anticking antis anus anvil anyone anyplace anything anythings anyway arced arched
arches arching arcing arcs area ares aria arks armband armchair armhole armlet armlets armour army
armys aroma arts aseptic ashed ashes ashing ashs aspen aspiring aspirins asshole asymmetric
asymmetrically attached attaining aunts awaked awaken awakening awakes awaking aware awoken
babbling babe babys backbite backed backfire backing backsides backslid backslide backslider
backslides bade badmouth bagged bagging bags bail bailed bailing bails bake bakes baking balanced
bale baled ball balling balloonist balloons balloted balloting ballplayer ballpoint balls balm
balms band banded banding bandits bands bandstand bane banes bangs bani bank banked banned bans
barb barbed barbing bard bare bared bareness barfs barge barges barging baring bark barked barker
barking barn barns barred barring barrings bars bartender baseball baseboard baseboards baserunner
batch batches batching bate bating batten battened battered beaching beading beak beaked beaker
beaks beaming beaning bear bearable bearing bears beast beatings bedder beddings bedpan bedroll
bedrolls beds bedside bedsore bedspread beef beefs been beep beeping beeps beer beers beet beets
begged begs belay bell belle bellow bells bellyached bellyaching bellybutton bellybuttons bellys
belt belting belts benching bending bent bents berating berthing besting bets bettering betting
beveled bevelled bibs bicepss bicker bidding bight bights bilge bilges billow bills billy binged
bingeing binging binning biped birching bisection bitch bitched bitches bitching bitten blabbing
black blackens blackest blacking blackouts blades blame blanches bland blandest blank blanked
blanker blankest blanketed blanking blankness blare blasting blaze bleached bleaching bleak
bleakness bleated bleating bleed bleedings bleep bleeping blenched blenches blenching blend
blending blessing blew blight blighting blimp blinding blindside blindsides blinkers blinking blip
blips block blocked blocking blocks blondness bloodies bloodiest blooding bloodlessly blotch
blotched blotchs blotted blotters blowers blubbered bluebottle bluebottles blued bluefish
bluegrass bluejacket bluenose bluer blues blundered blunting blur blurred blurring blurs blurting
blush blushed blushing blustered blustering blusters blvd boasting boat boated boating bobble
bobbles bobbling bode boded bodes bodies bogied boilings bold bolder bole boles boll bolls bolt
bolted bolts bond bonds boned bonehead boner boners boney bong bonged bongs bonus bony boodle
bookkeeper bookkeeping booklet booklets bookshelf bookshop bookstore boor boors boosting boot
booth bootleg bootlegs bootless bootstrap booze boozed boozes boozing boozy bopped bopping bops
bore bores born borne boss botching bottled boulders bouncing bound bounded bounding bounds bowel
bower bowers bowling bowstring boxcar boxed boxen boxer boxers boxs brace braced braces bracing
brackets braiding brained braining braise braised braises braising brake branched branches
branching branding brash bravery brawling bray breach breached breaches breaching breachs breading
breadth breadths breaking breastbones breasted breasting breastplate breastplates breasts
breastwork breather breathers breathes breathier breathings breathy bred breeding breedings
breezing bricking bridge bridgehead bridgework brightened brightening brightness bringing brisking
britches broached broaching broiling broker brokered brokering brooding brooked brooking browsing
bruiser bruisers brunch brunched brunches brunching brunt brushed brushing bubbling bucked
bucketing bucking buckler bucklers budding budge budges budging buff buffed buffing bugged bugging
bugle bugles bugling bulged bulgy bulking bull bulldogged bulldoze bulldozer bulldozers bulldozes
bulled bulling bullpens bully bulrushes bumble bumbled bumbles bumbling bummed bumming bumper
bumping bums bunched bunching bundling bung bunged bunging bungling bunk buns bunt burbling
burgling burgs buried burn burner burnous burnouts burp burped burping burps burred burring burrs
burs bursts burying bushed bust bustling buts butte buttered buttering butting buttonhole buttress
butts buzzer buzzers buzzkills buzzs byes cabinets cache cached caches caching cackle cackled
cackling cage caged cake caked cakes caking calif califs calk calks call calling calls calm calms
calved cambered camel cameo camp camped cams candle cane caned canonising canonizing cantered
canting cants cape caped capped capping caps capsuled capsules captains captured carbonate
carbonates cardboards cards care cared caressing cargoes carjacking carmine caroling carp carpus
carryall carryout cars cart cartridge cartwheel carved carves case cased cash cashed cashing
catalysed catalysis catalyzed catchall catcher catchers catchier catchings catchs catchy catering
caulking cave caves cawed cell cellulite cellulites cent centering cents certain cessation
chaining chair chairlift chairperson chalking chammy champed champing chapping chartered charters
chat chattered chatterer cheat cheated cheating check checker checking cheeked cheeking cheeks
cheeky cheep cheeping cheer cheering cheesing chess chests chick chicks child childs chile chiles
chili chilis chilli chillis chin chinking chins chipped chipping chips chock chocked chocking
chocks chomping chopping chopstick chowing chroming chucked chucking chuckles chuckling chummier
chumminess chumming chump chunk chunks chunky cinch cinched cinches cinching cindered clacked
clacking clacks clam clambered clammed clammier clamminess clanging clank clanked clanking clanks
clapboard clapped clapping clash clashed clashing clasped clasping classier classiness classing
clattering clatters clavicles cleaned cleared cleaved clenched clenching clerking clever climb
climbing clinched clinching clinging clink clinked clinking clinks clip clipboard clipper clipping
clippings clips clipt cloaking clobbers clock clocked clocking clocks clod clomped clopped
clopping closeness closeout clothesline clotheslines cloudless clove clovers cloves clubbed
clubbing clubfeet clubfoot cluck clucked clucking clucks clue clump clumped clumping clumps
clumsiest clumsily clumsinesss clung clunker clunkier clustered clustering clusters clutched
clutching clutter cluttered cluttering clutters coaching coal coalition coalitions coast coasting
coats coax cobble cobbles cobbling cock cocked cocking cocks codeines codes coding coed coffeepot
coiling coke cokes coking cola colds collages collapse collared collated collates collation
collations collides collie collude colluded colludes collusion collusions colon colons coloreds
coloureds cols colt colts comas combing combs come comedown comer comers comet comets comings cone
cones confection confections confided conscripted consonant constable constancy constants
constraint constrict constrictor constricts constructed consultant cont contains contestant
contiguous continues continuum continuums contracted cooing cooked coolants coolly coordinated
coot copes coping copped copping cops cord core cores coring corn corning cortisones cost cotes
cottonmouth cottons couching coughing could countered counting coven covens cover covert coverts
coves covets coveys cower cowers cowing cozen crab crabbing crabs crackdown cracker crackings
crackled crackles crackling crackly crackpot cradling crafting crag cram crammed cramming cramped
cramping crane crank cranked cranking cranks crap crape crapping crashes crashs crass crated
crater cratered cratering crates crave craved craw crawl crawls cray craze creaking creasing
create created creating creek creeping crest cresting cribbing cribs crick cricked cricking cricks
crimping crimsons cringing crinkles crinkling crippling crisping croaked croaking crock crocked
crocks crooking crooned crooning crop cropped cropping crops crossing crouched crouching crowding
crowning cruise cruised cruises cruising crumbier crumbing crumbled crumbling crummier crumpled
cruncher crunches crunchier crunchs crunchy crusading crush crushes crusted crusting crutch
crutches cuffed cuffing cuffs cull culled cultured cumming cums cupboards curate curd curst curt
curtail curtails curtained curtsies cuts cutting dabbling dale dame dammed damming damped dams
dandle dangling dank danker dare darken darks darn dart dartboard date daunting deadening deafened
deafening deafness dealt dear dearness dears debauched debt debts decision decisions deckhand
deckhands deepened deeps defected defection defections deferred defining deforming deformitys deft
defuse deli delis dell dells delta deltas denied denoted dens deny deodorants deported depressing
dept derailing desensitise desensitised desensitises desensitize desensitizes detaches detailed
detained detaining detected detracted devilled diarrheas diarrhoeas dibbling dicker dill dills
dine ding dinged dinger dingers dinghies dinginess dinging dings dink dinkies dinky dinkys dinning
dint dints dipped dipper dipping dips dipstick dirk dirtball dirtiness discharged discharges
disclosed discolor discolorations discolors discolour discolourations discolours discomfit
discomforted discomforts disconcerted disconnect disconnectedly disconnects discontented
discovered disgorged dishcloth dishonored dishonoured dishpan dishtowel dishwashers dishwater
dislocations dislodge dislodges dissection dissociate dissociated dissociates dissociating
dissociation ditch ditched ditches ditching dive divining divots dizziest dizzinesss dock docked
docket docking docks doer doers does doing doll dolled dolling dolls dolt dolts domes doming done
donor donors dont doodle doom dooms doorknob doormat doorstep doorsteps doorstop doorstops doorway
dopey dork dose doubling dour douse dowel dowelling downfall downfalls downhill downpour downright
downstairs downswing downturn downturns downwind doyen doze dozed dozens dozes dozing drabs
drafting dragging drainages drainer drawers drawling dray drenches dressing dressings drifting
drilling drinking drip dripped drippings drips driveway droll drool drooled drooling drools
droopier droplet droplets dropout dropper droppings droppingss dropsy dross drowning drowsing
drubbing drunk dual ducked duckling ducklings duel duelling duff duke dulled dulls dully duly dumb
dumbness dumbnesss dummy dump dumping dumpling dumps dumpy dunk duped dusk dusks dusty dwell
dwelled dwelling dwellings dwells dwelt earaches earl earls earn earns earphone earring earrings
earshot earthen earthing ease easiness east eating eats eclectic edemas eels effected effervesce
effervesced effervescence effervesces effervescing egged eighteens eighteenth eighth eighties
eights eightys elastic electrically electrician electricitys electrify electrocute electrocutes
electron electronic elephants elevens elide elided elides eliding endorsed enema enforced engorge
engorges enlarge enlarger enlargers enlarges enlightening enormity entering envision envisions
eras errs esthetic even ever evergreen everyone everyplace everything everythings exampled
excision excisions excruciatingly exhalation exhaling exhausting exhaustions exhaustive exhausts
expounding expressing eyeball eyeglass eyeglasses eyelet eyelets eyelids eyeliner eyeliners
eyesore eyeteeth eyetooth faced facelift facepalm facepalms faces facet faceting facials facing
fact factored fade fagged fagging fags fail failed failing fails fain faint fainter fair fake
fakes faking falloff fallout faltering fame fang farce fare farm farms fascial fastened fastening
fate fatigues fatiguess fattened faucets faulting faze fear fearing fears feasting feat feathering
featured features featuring feds feed feeding feel feelings feels fees feinting feints felling
fellow fells felt felts fest fetching fettered fettering feverishly fewer fezzes fibs fife
fifteens fifth fiftys fight fighting fights filching file filed fill filling fills filtering
finagling finch finches finder finders fine finer fingerboard fingerboards fink fire firearm
firearms fired fiver fives fizzed fizzles fizzling fizzs flack flak flan flanking flanks flapped
flapping flashed flashing flask flatbed flatcar flatfeet flatfoot flatten flattening flattens
flatter flattered flatterer flattering flatters flattery flatterys flaunting flecking fled
fleecing fleet fleeting fleshed flick flicked flicking flicks flight flimsier flimsiness flinched
flinching flinging flints flip flippant flipper flippies flippy flips flirting flitting float
floated floaters floats flock flocked flocking flocks floorboard floorboards flopped flopping
floppys flour flowed flowers flue fluffiness fluids flukey flunk flunked flunking flunks flunky
flurrying flusher flushes flushing fluster flustered flustering flusters flute flutes fluttery
foal foams foamy foes foiling foisting fold folder follow font food fool football footbridge
footfall footfalls foothill foothold footlocker footloose foots footsore footstep footsteps
footstool footwork fops foray forbears forces forded fore forearmed forebear forehand foreheads
forewarns forge forged forked forklift form formed fort forte forth forts fortys forwards
fostering foul found founded foundered founding foundling founds fours foursome foursquare
fourteens fourteenth foxes frack fracked fracking fracks frank franking fray freaking freckles
freckling freeing freezings fret fretting fridges frightened frightening fringe fringing frittered
frittering fritters frizz frizzes frizzing frizzy fronting frosting froze fruiting fuddling
fueling fuelling full fulled fulling fulls fumbler fumblers fums funk funky future futures futz
fuze fuzzball fuzzed fuzzes fuzziness fuzzing fuzzs gabbing gabbled gabbling gabled gabs gage
gagged gagging gags gain gained gainful gaining gains gale gall galling galls gambled gambling
gamed gamer games gamey gamy gang ganged gangling gape gaping gaps garbed garble garbles garbling
garbs gargled gash gashing gasps gass gassing gated gatepost gates gateway gave gaze gear gearing
gears gees gelt gems gene gent gents gesturing gets giggling giggly gills ginger gingers ginning
give glade gland glide glided glides gliding glinting glitches glitching glittered glittering
glitters gloated globe globes gloved glowed glowers glue glues glut gluten glutens gluts gnashing
goalkeeper goalpost goaltender goat gobble gobbles gobbling gobs gods goings gold goner gong gonk
goodie goody gooey goofy goop goops goos goose gore gores goriness goring gotten gouts grab
grabbed grace graced graces gracing grackle grackles grad grads grafting grain gram grams granting
graphing grappled grappling grasp grasping grass grassing grassland grate gravy grays greasing
greed greening greens greet greeting grep grepping grew greys grid grieving grilled grilling grim
grin grinding grinning gripe griping gripped grips grist grists grit gritting grocer grocers
grocerys groins grooming grooving grossing groundball grounding groundswell groundswells
groundwork grouping grove groves growling grown grubbing grubs grumbled grumbling guessing guff
gull gulled gumming gummy gunks gunny gunpoint gunrunner guns gunshots gushed gust gusts gutsy
guttered guttering gutting guys gyms hacked hacking hackle hags hail hailed hailing hails hairball
hairbrush hairnet hairs hairy hake hakes hale halfs hall hallow halls halo halt haltered halves
hammed hammerhead hammering hammerings hamming hampered hampering hams hamstrung handbag handbags
handball handbook handbooks handcar handcart handcuff handed handgun handing handlebar handled
handler handles handout handpick handset handsome handstand handwork handy hang hanged hangout
hangover hangs hank hankered hanks happy hard hark harm harms hart harts hasp hassled hasten hatch
hatches hatching hatchings hate haunting haziness headband headboard headboards headland headlock
headlocks headphone headset headway headwind heal heals hear heard hearing hearkened hearkening
hears heartache heartaches heartbeats heartbreak heartbroken heartburns heartfelt hearth heartiest
heartiness heartland hearts heartthrob heartthrobs hearty heat heating heavenss heaviest
heavinesss heavyset heckling heed heeds heeling height heighten heightened heightening heir hell
hells hemming hemp hero hies high highness highs hill hills hillside hilly hims hind hindered
hinds hing hinged hinging hings hipped hipper hipping hired hiss hitch hitched hitches hitching
hits hive hoariness hobble hobbles hobbling hock hocked hocking hocks hoes hoisting hold holder
holdout holdover hollows homes homing hone hones hoodies hoot hopped hopping hops horn horsehair
horsepower hose hotbed hothead hotkey hotkeys hotshot hound hounded hounding hounds house hovering
hovers huff huffed huffing huffy hugged hull hulled humble humbled humbles humbling humblings
humeruss humped humping humps hums hunched hunching hundreds hungered hunk hunkered hunt hunting
hunts hurl hurling hurls hurtling hushed husky huts hyperventilation hyperventilations ibuprofens
icebox iceboxes ills impaling impermanent impounding impressing inability inaction inactions
incensed inception inceptions inch inched inches inching incident incing incising incisive
incisors inclusion inclusions inconstant incursion incursions indebted indecision indecisions
indents indentured indicted inducted induction inductions infarction infarctions infecting
infectious inferred infested inflame inflames inflated inflates inflation inflations inflected
inflection inflections inflicted infliction inflictions influence influenzas informed infraction
infractions infrared infusion infusions ingested ingestion ingestions inhalant inhaled inhaler
inhales inhering injected injection injections inking inky inlaying inoperable insecurely inserted
insertion insertions insetted inspected inspection inspections instabilitys instantly intended
intent intention intentions intolerably intolerance invading invasion invasions invent invented
invention inventions inverted invested ionising ionizing irate irregularly irregulars itch itched
itches itching jabs jacked jackets jacking jagged jags jail jailed jailing jails jake jamb jambs
jangling jarred jarring jars jaunting jaws jays jeeps jell jello jells jellys jets jetting
jewelled jewelling jibs jiggle jiggling jilt jilted jilts jingle jingled jingles jingling jive
jock jocks join joins jointing joints joist joke jolly jostle jostles jots jotted jotting jouncing
jousting jugged jugs jumble jumbles jumbling jumper jumpy junk junky just justice jute jutes kale
karma kate keel keeling keels keeping keeps kegs keyboarded keyboarder keyboards keyhole
keypunched kicker kill kilns kilos kilts kindliness kindling kindred king kinglier kingliest
kingly kings kink kinked kinky kipper kitten kittens knack knead kneel kneels knelling knew knight
knights knobs knocker knot know knuckleball knuckled knucklehead knuckling labelled labium lace
laced laces lacing lack lacked lacking lacks lade laded lading lagged lagging lags laid lain lair
laity lake lakes lamb lame lammed lamming lamp lamps lams lanced lancing lander landfall landfalls
landings landlocked lands landslid landslide landslides landsliding lane lank lapped lapping laps
larboard larch lard larded larding lark lash latches latching latchs late lath lathered laud
lauded lauding launched launching laundered laundrys laxitys leach lead leaded leading leads leaf
leafed leafing leafs leaky lean leaned leaning leanness leans leap leaped leaping leaps leas lease
leased leashing leashs leasing least leaved leavened leavening leaving leavingss leek leeks leer
lees leftmost leftover legged legwork leis lend lending lens lent leper lept less letdown lethargy
lethargys lets lettered lettering levee level leveler leveller levellers levered levers lexer
libelers libelled liberated liberates liberating libs lick licked licking lickings licks lids lies
liftoff lightened lighthearted lightheartedness lighting lightings lightness lightnesss
lightninged lightnings lights likeness limbless limbo limbs lime limiting limn limo limps limy
line linger lingers link lionising lionizing lipstick lipsticking lisp lisps listening listless
littered littering live liver loam lobbying loci lockers locket lockjaw lockout lockstep locksteps
loco locus logs loll lolled lolling lolls lone loners look looked looking lookout looks loopy
loosed loosen loosened loosenesss looses loot looter lopped lopping lops lopsidedly lore lorn lose
loser losers loss lounging louse lousiness love loveless lover lovers loves lowed lower loxes
lubber luck lucked lucking lucks luggages lugged lugs luke lull lulled lumped lumpiness lumping
lumpy lunched lunching lute lutes lynching
"""
