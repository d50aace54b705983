"""Real English words close to a word the ear knows: never taken for a misspelling of it.

Law: data only, made by `tests/hearing/find_real_words.py`. Source: the SCOWL word lists (Kevin
Atkinson and others; free for any use with its notice) and own additions.
"""

from __future__ import annotations

from typing import Final

WORDS: Final = """
mace maced maces macing madder mads mail mailed mails main mains make makes making male mall
mallet malls manged mangling mapped mapping maps marbled march marching maroons marry mars mash
mashed mastering matches matching matchs math mattered mattresses mattresss maturest maundered
maybes mead meads meanness meat meekness meet megs melds mellow melt melts mend mends mens mesa
mess metering mettle mettles mews midge might mightiness mights mighty migraines migrating mike
mild mile milf milks milky mill mills mils minded miner miners mingle mingled mingles mingling
mink minuet minuets minuses minuted minuter minutest mired mistress mite moaning mock mocked
mocking mocks mods moist mold molder mole moll molls molt molted molts month mooed mooing mooning
moose moot mope mopeds mopes moping mopped mopping mops more morn mornings moroseness mortal
mortals moss moth motorbiked motorbikes motorcycled motorcycles motorise motorize mottle mottles
moulders moulding mound mounded mounding mounds mounting mourning mouths movement mowed mower
mowers mowing muck muds muff muffed muffing mull mulled mumble mumbled mumbles mumbling mummy
mumps mums munched munching mungs mushed musky muss mustering mutt muttered muttering nagged
nagging nags nailbrush name napped napping nappy naps natl nauseam nauseas nauseate nauseates nave
near nearing nearness nears neat neater neatness necked need nerves nets nettle nettles neutering
nibbling nibs nice nicety nicked nifty niggle niggled niggling nigh nighty nightys nils nines
nineteens nineteenth nineties ninetys nipped nipping nips niter nitrating nitre nits node noes
noise nonce noodled noodles nook noose nosed noses nosey nosh noshing nosy notching note nothings
noting nudge nuke nuked nuking null number numbly numbnesss numbs nurtured nuts nutting oars oases
odorless odourless oedemas oiled oiling oink older omen omit omits omitting ones onrushing oops
opener openings opens opined opining opposition oppositions ordaining ours outs ovens overbear
overboard overhand overheads overhear overheard overhears overheat overheated overheats overload
overseas oxen pace paced paces pacing pack packed packet page pagers paid pail pailful pails
painfuller paint painted painting paintings paints pair pairs pajamass palace palates paled paler
pales pall palled pallet palliation palliations palling palls palmy palpation palpations
palpitating pals pampered pampers pancake pancakes pang panicked panning pans pants papery paps
paralyse paralyses paralysing paralysiss paralytic paralytics paralyze paralyzes parching pare
parenthesis parlayed paroling parrot parry pars part parting pasting patch patched patches
patching pate pates pattered patting paupers pave paved pavements pawn pawns payers peace peach
peak peaked peaking peaks pear pears peas peat pebbling peck pecked pecs peel peeling peels
peeping peeps pees pegs pelt pelts pence pencils pend pends penes penis pent peons pepped pepping
peps peptic perching performed perked permanence permanently permanents pertinent pestering
petering petition petitions pets pews phoned phones phoney phony pick picked picker pickle pickles
pickling picky pied pigged pike piked piking pile piles pill pilled pillows pimp pinchs pine pined
ping pinged pinging pings pinks pinning pins pint piped pipers pipped pipping pips pirating
pitchers pitchs pith pivot placed placement placer places plaice plain plains plane planes plank
planked planking planting plastered plastics plated platen platens platter platters pleading
pleasure pleated pleating pled plied plight plighting plonked plonking plopped plopping plops
plotters pluck plucked plucking plummeted plump plumping plumps plundered plunged plunging plunk
plunking plunks pneumonias poaching pock pocked pocket pockets pocking pocks pods point pointing
points pois poke poked poker pokey poking poled poles poll polled polling polls polo pols pomading
pommeled pommelled pomp pomps ponds pone pones pooching poodle poop pooped pooping poops poor pope
popes poppa poppy pore pork porn portions pose poser positing positional positioned positive
positives positron positrons poss postal pots pouching pounced pouncing pound pours pout powder
powers poxs practical practiced practices practised practises praise praising prates prawning pray
preach preached preachers preaching preen preening prepping preset pressing pressings pressured
pressures pressurise pressurize prey priceless pricking prickled pricklier prickliest primping
printing proactive prone proofing propped propping props protrude protruded prowling psalm psalms
psyching pucks puffer puffiest puffin puffinesss puffins puffs pugs pukes puller pullet pulley
pulls pulped pulsed pulses pummelled pump pumped pumping pumps punch punches punching punk puns
punting pupped pupping pups pure pureness purled purpler purples purplest purse pusher pushes
pushiness puts putt puttered puttering putting pwns pyjamass quacking quarrels quartered quarterly
quarterlys quartet quartets quashing quay quays queening queering quelling quenched quenching
questing quid quids quieting quiets quilters quilting quiltings quilts quipping quips quirking
quisling quitters quivering quizs quizzing quoiting quoits racer racers racings rack racked
rackets racking racks racquets racy rage raged rages ragged ragging raging rags raiding rail
railed railing rails rain rained raining rains raised raises raisin raisins rake raked rakes
raking rambling ramming rams ranch ranching rang ranged ranked rankle rankles ranting rants rape
raped rapes raping rapped rapping raps rapture raptures rare rared rareness rares raring rash rasp
rasping rate rated rates rating rave raved ravel ravelled raves raving raze razed razes razing
reachs react reacting read reader readiness readying reallocate reallocated rear rearing rearming
rears reassure reawakened rebelled recasting recent redden reddened rednesss redress redressing
reds reduce reduces reel reeling reels reformed reformer regent rehashing rein reins relegate
relegated relenting relentlessly relents reloaded relocates remoter remotes remove rend render
renovate renovated rent rented rents repelled repent repented replicate replicated reps rescuing
resent resets resonate resonated rest restoring retch retching retraining revealed reveled
revelled reveller revered rice riced rices ricing ricked ride ridged ridges rids rifting righter
righting rightness rightnesss rights rigour rigours rigs riled rill rills rimmed rims rind rinds
ringed ringer ringers ringing rink rinks ripe ripper rippled rippling rise rising rite roach
roaching roads roam roan roar roast robber robbery robe robs rock rocked rocket rockets rocking
rocks rode roes roil roiled roiling roils role roles roller rood rook rooked roosting root roped
ropes rose rotated rotates rotating rote round rounded rounding rounds rove roving rowelling rower
rowers rubbed rubbers rubble rubdown rubier rubs rucksacks rudder ruff ruffed ruffing rugs ruing
rumbaing rumble rumbled rumbles rumbling rumblings rummy rumoured rump rumpling rumps rums
rundowns rung rungs ruptures rush rushed rushing ruts rutting sacred sacs sadder safeness saga
sagas sage sages sago sagos said sail sailed sails saint saints sake sakes sakis sale salves same
sameness sanded sanding sands sandwiched sandwiches sandwichs sang sans sapped sapping sappy saps
sash sass sates satrap save saved saws saxs says scabbing scabs scad scads scag scagged scags
scald scalding scale scalping scalps scaly scam scammed scamp scams scan scanning scans scanting
scapulae scapulas scare scares scarf scarfs scarring scary scat scathing scats scattered scenting
sceptic scold scooping scooted scooters score scoreless scotches scotching scow scrap scrapping
scratching scratchs scratchy scrawling scrunch scrunched scrunches scrunching scuff sculling
scurrying scything seal seam sear searching searing sears seas seating seatings seats sect
sedating sedation seduced seed seeding seedling seeds seeing seeking seeks seeming seen seep seers
sees seething sell selling sells selves semen send sensational sensations sensitized sent sepsiss
sere serenest serges series serve served server servers servos sets settee settees settled settler
settlers sevens seventeens seventeenth seventh seventies seventys severed severing severs sewed
sewing shackles shackling shacks shad shaded shades shads shady shaft shafted shafting shafts
shagged shagging shags shake shaking shale sham shambled shambling shame shammed shammy shape
share sharking sharping shat shatters shave shaved shavers shearing sheathed sheathing shed sheen
sheens sheep sheeps sheer sheering sheers sheeting shell shelled shelling shells sheltered
shelving shies shiftier shiftily shill shilling shills shim shimmered shimmering shimming shims
shine shiners shines shingling shinning shiny ship shipped shipping shippings ships shirking
shirring shirt shirted shirting shirts shit shits shitting shitty shiver shlepping shock shocking
shod shoe shoed shoeing shone shoo shooed shooing shoon shoos shoot shooter shooting shop shopped
shopping shoppings shore shored shoring short shorting shortness shots shouldered shouldnt
shouldve shout shouting shovel shoveling shoves shoving show showed showering showers showery
showier showings shrew shrift shrifts shriveling shrove shucking shucks shuddered shudders shun
shuns shunting shushing shut shuttered shuttering shutters shutting sicked sicker sicking sided
sides sidewalks sidewall sidewalls sideways siding sift sifted sifting sifts sight sighting
sightless sights silk sill sills silvering simile simmered sine sinecure sing singed singeing
singer singers singing singings single singled singles singling singly sings sink sinks sinning
sins sipped sipping sips sire sired siring site sixteens sixth sixtys skate skateboarded
skateboarder skateboards skated skater skaters skeet skeets skeptic sketches skewed skewing skid
skidding skids skies skill skills skim skimming skimped skimping skimps skims skin skinning skins
skip skipper skippering skirting skit skits skittered skunking skys slab slabbing slacked slacking
slag slags slaked slaking slammer slams slanting slap slapped slapping slaps slash slashed
slashing slat slates slathered slavering slaw slay sledding sledging sleds sleek sleeking sleepier
sleepily sleeps sleepy sleet sleeting sleets slew slewed slewing slice sliced slices slicing slick
slicked slicking slicks slider sliders slight slighting slightness slim slime slimes slimmed
slimming slims slinging slings slink slinking slinks slipper slit slits slitting slivering slivers
slobbered slop slopped slopping slops slot sloth slow slowed slower slowing slue slued slues slug
slugging sluggishly slugs sluicing slum slummed slumming slump slumping slumps slums slunk slurp
slurped slurping slurps slut sluts sluttish smacker smacking smalls smashes smashing smashs
smearing smell smelled smelling smelting smelts smiled smiles smiley smirches smirking smite
smitten smocked smocking smocks smolders smoothing smoulder smoulders smug snacked snacking snag
snagged snagging snags snail snailed snailing snails snaked snaking snaky snapper snappier
snappish snarfing snarling snatches snatching sneaking sneering sneezing snickered snide sniffing
sniggering sniggers snip snipped snipping snippy snips snitch snitched snitches snitching
sniveling snob snooping snore snot snowboarded snowboards snowbound snowing snows snowy snub
snubbing snuff snugs soakings soap soaped soaping soaps soar soared soaring soars soberness sock
socked socking socks softballs softness soiling sold solder sole soled solid somethings soon soot
sooth soothing sopped sopping soppy sops sorceress sorehead soreheads sorenesss sorer sores sound
sounded sounding soundings sounds sour sourcing sourness sours south sower sowers sowing spade
spam spammed spangles spangling spanking spanning spar sparely spareness sparking sparkle sparkled
sparkler sparklers sparring spars spat spates spattered spatulas speaking spearing specking
speckles speckling sped speed speeding spell spelled spelling spellings spells spending spiel
spilling spills spilt spin spinners spinning spins spiraling spit spitball spitting splat
splattered spleens splint splits splurging spluttered spluttering splutters spongers sponging
spoof spook spool spoons spoor spore spraining sprawling spring springing sprinkles sprinkling
spryness spur spurning spurred spurring spurs spurting sputtered sputtering sputters squad squads
squarer squares squarest squaring squatted squatters squatting squeaked squeaking squealed
squealing squeamish squeegee squeegeed squeezer squeezers squeezes squinted squinter squinting
squire squired squiring squirmed squirrel squirting squished stabbings stability stables stabling
stabs stacked stacking staff staffing stag staggeringly staggers stags staid stain staining stains
staircases staked staking stales stalking stalling stammered stammering stamping stanched stanches
stanching standings stank staple stapled stapler staplers stapling star starches staring starkly
starling starring stars starters starting startles startling starving stash stashed stashing stat
states statics stay stealing steaming steamroll steamroller steamrollered steamrollers steamrolls
steeling steep steeping steeps steering stems stenches stepped stepping sterling stern sternums
stewed stewing stews sticker stickers stickier stickies stickpin stickpins sticks stiff stiffing
stifling stile stilling sting stingier stingily stinginess stingy stinker stinkers stinking stint
stinting stints stippling stir stirrers stirring stirs stitched stitching stitchs stocking
stockings stocks stole stomachs stomped stomping stooped stooping stopper stoppering store storing
storming stove stow stowing straightened straightens straighter straightest straights straining
straitening stranding stranger strangers strangle strapping straps straw stray strengthen
strengths strep streps stressing stretches striding striking stringer stringers stringing strings
stringy strip striping stripped stripping stroking strong strop stropped stropping strung stub
stubbing stubbles stuck studding stuffiness stuffs stuffy stumble stumbler stumblers stumbles
stumping stunk stunning stunting stuttered stuttering stutters subduing subjugated subjugation
sublimated sublimation sublimed sublimes subliming subsided subsides subsidy subsumed subsumes
subsuming suck sucked suckle suckled suckles suckling sucklings sued suffocation suffocations
suicides suits summered summing sump sumps sums sundered sundown sung sunk sups sure sureness
surenesss surf sutured swab swabbing swagged swaggering swagging swags swam swamping swanking swap
swapped swapping swaps swarm swash swashed swashing swat swatch swatches swathing swats swattered
swatting swear swearing swears sweatier sweatss sweep sweeping sweepings sweeps sweet sweets
sweller swellings swept swerves swerving swift swifts swig swigging swill swilled swilling swills
swinger swingers swinging swings swiped swirling switch switched switcher switches switching
swiveling swivelling swoon swooping swopped swopping swore symmetrical synching syringing tabbing
tables tablet tacked tackler tackles tackling tagged tagging tags tail tailed tails taint tainted
tainting taints take takes taking tale tall tame tampered tams tang tangle tangled tangles
tangling tangoing tanked tapers tapped tapping taps tared taring tarry tars tattered taunting
teach teachers teaching teachings teak teaks teal teals team teaming teams teary teas teased
teases teasing teat teats tees teetering teethe tell tend tens tent tented tenth tents tern
testable thank thanking thatching theater thee there thicker thin think thinks thins thirsty
thirteens thirteenth thirties thirtys thongs thorn thrashing threes thriving throe throes thronged
thronging thrumming thudding thumbed thumbing thump thumps thundered thunks ticked tickers ticket
ticking tickings tickle tickled tickling tided tied ties tighten tightens tightest tightnesss
tights tike tiled till tills timed timeless timeliness tine ting tinge tinged tingeing tinges
tinglings tings tinker tinkle tinkled tinkles tinkling tinning tinseling tipped tipping tippled
tippling tire tiredest tirednesss tireless tires tizzy toad toasting toasts toasty toed toffee
toggling togs togss toiling toke token tokes told tolerable toll tolled tolling tolls tomb tome
tomes toms tone tones tongued tongues tonguing tons tonsillitiss took toot toothbrushes
toothbrushs tooths toothy toots topped topping toppings topple topples toppling tops topsides tors
tort torte tosss tost totalled tote totes tots tour tours towelling tower towers town tows toys
trace traced traceries traces tracing tracked tracking tracks trailing trained trainings traipsed
traipsing tram trammed trammeled tramming tramped tramping trample tramples trampling trampolines
trap trapped trapping trash trashed trashing travel traveled trawling trays treasure treating
trebling trembled trembling trenched trenches trenching trialing trice tricepss trices trick
tricked tricking trickle trickled trickles trickling tried trig trilled trim trio tripe tripled
tripling tripping trips troll trolled trolling trolls tromping tron troop trooped trooping troops
trope troth trouping troy truce trucker trucking truckled truckles truckling trucks trumped
trumping trunk trunking trussing trusting tsar tsars tuck tucked tucker tugs tumbler tumbles
tummys turd turfs turnout tussling twanging twangs tweak tweaking tweeting twelves twentys twigs
twin twine twines twinged twingeing twinging twinkling twister twit twitches twitching twitted
twitting tyre tzar tzars umped umping umps unabated unbearably unbeatable unbeaten unbreakable
unbuckles unbuckling unchanged unchanging uncomfortable underact undercoat undercuts undressing
unformed unhanded unhinge unhinges unite unleaded unopened unpinned unreadable unrelated
unrelentingly unsaid unsalted unscathed unscrews unsealed unsettled unsheathed unsigned unsnapping
unstated unsteadily unstopping unsuitable unsuited untested untreated unusable uppercut upstanding
upturned urns uteri uttering vain vale valves vars vases vaunting veeps vehicles veil veils vend
vent vented vents verb verves vesicle vets vibration vibrations vigor vigors vine violating
violent violets visiting vitiating vole volition volitions volt voltages volts wade wades wading
wage wages wagged wagging waggle waggled waging wags wail wailed wails waist waistband waistbands
waists waitress waked waken wakened wakening wakens wale wales waling walking walled wallets
walling walls wand wands wane wanes wangling waning wanked wanking wanting wants warbled warbling
ward ware wares warms warn warp wars wart wary wasp watchbands watches watching watchman watchmans
watchs wave waved waves waviness waving waxes waxing weaken weakling weaknesses weaknesss weal
wean wear wearer weariness wearing wears weaseled weaseling weaver wedder wedding weds weeding
weeing week weekended weekending weepings weeps wees weighty welching well welled welling wells
welt weltering welts wend wended wens wets whacker whacking whammy wheedling wheel wheeling wheels
wheezed wheezes wheezier whelping whetting whiffing while whine whipping whips whist whists whit
whiten whiter whites whits whizzing wholly whooping whopping whove wicked wicker wigged wiggler
wiggles wiggling wiggly wight wights wiled will willow wills wimp winced winch winched winches
winching wine wined wing winged wingers winging wings wink winked winning winnings wipe wiper
wipes wired wireless wish wishes wist witch witched witches witching wive wives wizzes wobbled
wobblier woes woks womb womble wombles women wooded woodmen woody wool woolen woollys wools woolys
worded wore work worker worm wormed worn worse worsting would woulds wounded wounding wove woven
wrack wracks wrapping wreak wreaked wreath wreathe wreathed wreathes wreathing wreaths wrecker
wrecking wrecks wrenches wrenching wrest wresting wrests wretched wretches wriest wriggle wriggled
wring wringers wringing wrings wrinkles wrinkling wristbands writ write writs yacked yakked yall
yammered yams yapped yapping yaps year years yell yellowest yellowing yellows yens yesterdays
yipped yipping yips yock yocks yoke yore your yours youth yowl yuck yummy yups zapper zeds zens
zeros zinc zinced zincing zincking zincs zipped zipping zippy zips zone zones
""".split()
