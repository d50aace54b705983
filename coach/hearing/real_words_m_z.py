"""Real English words close to a word the ear knows, or made of two: never changed, never cut.

Law: data only, made by `tests/hearing/find_real_words.py`. Source: the SCOWL word lists (Kevin
Atkinson and others; free for any use with its notice) and own additions.
"""

from __future__ import annotations

from typing import Final

WORDS: Final = """
mace maced maces macing mads mail mailed mailing mails main mains make makes makeshift makeshifts
making male mall malls manged mangling mapped mapping maps marbled march marching mark marker
maroons mars mash mashed mastering matches matching matchs mate math mattered mattresses mattresss
maturest maundered maybes meads meanness medal meekness meet megs melds mellow melt melts mends
mens mesa mess metering mews midge might mightiness mights mighty migraines migrated migrates
migrating mile mills minded mine mingle mingled mingles mingling mink minuet minuets minuses
minuted minuter minutest mired mistress moaning moat mock mocked mocker mocking mocks mods mold
molder moll molls molt molted molts month mooning moor moors moose moot mopped mopping mops more
morn mornings moroseness mortal mortals moss moth mottle mottles moulders moulding mound mounded
mounding mounds mounting mourning moused mouser mouses mousey mousse mousy mouths mouthwash mover
movers mowed mowers muds mudslide mudslides muff muffed muffing mugger mull mulled mumble mumbled
mumbles mumbling mummy mumps mums munched munching munged muse mushed musky mustering mutt
muttered muttering mutton muttons nagged nagging nags nailbrush nailing name napped napping nappy
naps nark natl nauseam nauseas nauseate nauseates nauseatingly near nearing nearness nears
neatness necked need nerves netbook netbooks network networked neutering never nibbling nibs nice
nicety nicked nifty niggling nigh nightclub nightfall nightfalls nightshade nightshirt nightstick
nighty nightys nils nines nineteens nineteenth nineties ninetys nipped nipper nipping nips
nitrated nitrates nitrating node noes noise nonce noodled noodles noose nope nosed noses nosey
nosh noshing nosy notching note nothings notice noticeboard noticeboards noting notwork nuke nuked
nuking null number numbly numbnesss numbs nurtured nuts nutting oarlock oarlocks oars oddball odor
odorless odors odourless oedemas offhand office offset offside oiled oiling oink older omen omit
omits omitting ones onrushing oops open opener openings openwork opined opining oppressing orate
ordaining ours outburst outcome outcomes outdoor outdoors outfielder outflank outgoes outgoing
outlet outlets outlook outlooks outpost output outran outreach outreaching outright outs outset
outside outspread outstanding outstayed outstays ovens over overall overboard overbook overbooks
overcame overcoat overcome overcomes overcoming overdrive overextend overhand overhands overhang
overhead overheat overkills overland overlook overlooked overlooking overlooks overmuch overpower
overran overreach overreaching overs overshot overspill overspread overstayed overstays overstep
oversteps overthrow overthrowing overthrown overturn overturned overturning overturns overuse
overwork overworked overwrite oxen pace paced paces pacing packed packet packing page paid pail
pailful pails painfuller paint painted painting paintings paints pair paired pairing pairs
pajamass paled paleface paler pales pall palled palliation palliations palling palls palmy
palpation palpations palpitating pals pampered pancake pancakes pang panhandle panicked panned
panning pans pantie pants papergirl paperwork paps paralyse paralyses paralysing paralysiss
paralytic paralytics paralyze paralyzes parching pare parenthesis park parlayed paroling pars part
parting pasting patch patched patches patching pate pattered patting pave paved pawn pawned
pawning pawns peak peaked peaking peaks peal pear pears pebbling pecked pedals peel peeling peels
peeping peeps pees pegs pelt pelts penal pendent pendents penknife pensive pent pepped pepping
peps peptic perching performed perked permanence permanently permanents pertains pertinent
perusing pestering petal petering pick picked picker pickle pickles pickling picky pied pigged
pike piked piking pile piles pill pilled pillows pimp pinchs pine pined ping pinged pinging pings
pining pinkeye pinkeyes pinks pinning pins pint piped pipped pipping pips pirating pitcher
pitchers pitchfork pitchs pith pivot plackets plain plains plank planked planking planting
plastered plastics platelet platelets platters pleading pleasing pleasure pleated pleating pled
plied plight plighting plonked plonking plopped plopping plops plotters plucked plucking plugged
plummeted plump plumping plumps plundered plunged plunging plunk plunking plunks pneumonias
poaching pock pocked pocket pocking pocks pods point pointing pois poke poked poker pokey poking
pole poled poll polled polling polls pols pomading pommeled pommelled pomp pomps ponds pone pones
pooching poodle poop pooped pooping poops poor pope popes popgun popover poppa poppy pore porn
pose poser positing poss postal postbox postcard potbelly pothole pots potshot pouching pounced
pouncing pound pour pours powder powers poxes poxs practical practiced practices practised
practises praised praising prate prawning pray preached preaching preen preening premising
prepping presaging presiding pressings pressured pressures pressuring pressurise pressurize
presuming prey priceless pricking prickled pricklier prickliest primping printing proactive
processing professing proofing prop propped propping props protrude protruded prowling psalm
psalms psyching puffball puffer puffiest puffin puffinesss puffins puffs pukes pull puller pullet
pulley pullout pullover pulls pulped pulsed pulses pummelled pump pumped pumping pumps punch
punches punching punk punting pupped pupping pups pure pureness purled purpler purples purplest
purse pushcart pusher pushes pushiness pushover puts putt puttered puttering putting pyjamass
quacking quarrels quartered quarterly quarterlys quartet quartets quashing quay quays queening
queering quelling quenched quenching quid quids quiets quilters quilts quipping quips quit quite
quitters quivering quizs quoits racehorse racer racers racetrack raceway racial racially racings
rack racked racket racking racks racquetball racy rage raged rages ragged ragging raging rags
raided raiding rail railed railings rails rain rained raining rains raise raises raising rake
raked rakes raking rallying rambling ramming rams ranching rang ranged ranked rankle rankles
ransacked ranting rants rape raped rapes raping rapped rapping raps rapture raptures rare rared
rareness rares raring rash rasp rasping rate rated rates rating rave raved ravelled raves raving
rawer raze razed razes razing reaching reacting reader readiness rear rearing rears reassure
reawakened rebelled recasting redbreast redcoat redden reddened redhead rednesss redone redraft
redress reds reel reeling reels refits reformed reformer refuse rein reins relenting relentlessly
render rent rented rents repelled repented repressing reps restoring retching retraining revealed
reveled revelled reveller revered ribbed rice riced rices ricing ricked ride ridged ridgepole
ridges rids right righting rightmost rightness rightnesss rights rigour rigours rigs riled riling
rill rills rimmed rims ring ringed ringer ringers ringing ringlet ringlets rings ringside rink
ripe ripoff ripper rippled rippling roaching roadbed roadkills roadrunner roadside roadway
roadwork roam robber robbery robs rock rocked rocker rocket rocking rocks roes roil roiled roiling
roils role roles roller rooked roosting root rope roped ropes rose rotating round rounded rounding
rounds rouse rovers rowel rowelling rower rowers rubbed rubbers rubdown rubier rubs rudder ruff
ruffed ruffing rugged rumbaing rumble rumbled rumbles rumbling rumblings rummy rumoured rump
rumpling rumps rums rundowns ruptures rushed rushing ruts rutting sacking sacred sacs safeness
saga sagas sage sages sago sagos said sail sailed sailing sails saints sake sakes sale salves same
sameness sand sandbag sandbags sandbar sandbox sandboxes sanded sanding sandpaper sandpapers sands
sang sans sapped sapping sappy saps sash sass sate saved saws saxs says scabbed scabbing scabs
scad scads scag scagged scags scald scalding scale scalping scalps scaly scam scammed scamp scams
scan scanning scans scanting scapulae scapulas scarabs scare scares scarf scarfs scarlet scarlets
scarred scarring scary scat scathing scats scattered scenting sceptic scold scooping score
scoreless scotches scotching scrapping scratching scrawling scrunch scrunched scrunches scrunching
scuff sculling scurrying seaboard seam sear searing sears seat seating seatings seats sedating
sedation seeding seedling seeds seeing seeking seeks seeming seems seen seep seers sees sell
selling sells selves semen sensational sensations sensitized sent sepsiss sere serenest serges
series serve served server servers servos sevens seventeens seventeenth seventh seventies seventys
severed severing severs sewed sewing shack shackles shackling shacks shad shaded shades shads
shady shaft shafted shafting shafts shagged shagging shags shake shaking shale sham shambled
shambling shame shammed shammy shampoos shape share sharking sharping shat shatters shave shaved
shavers shearing sheathed sheathing shebang sheen sheens sheep sheeps sheer sheering sheers
sheeting shell shelled shelling shells sheltered shelving shies shiftier shiftily shill shilling
shills shim shimmered shimmering shimming shims shine shiners shines shingling shinning shiny ship
shipped shipping shippings ships shire shirk shirking shirr shirring shirted shirting shirts
shirtsleeve shirtsleeves shit shits shitting shitty shiver shlepping shlock shocking shod shoe
shoed shoeing shoo shooed shooing shook shoot shooting shop shopping shore shored shoring short
shorting shortness shotgun shots shouldered shouldnt shouldve shout shouting shove shovel
shoveling shoves shoving show showed showering showings shrew shrift shrifts shriveling shuck
shucking shucks shuddered shudders shun shuns shunting shushing shut shuttered shuttering shutters
shutting sicked sicker sicking side sidearm sidearms sidebar sideboard sideboards sideburns
sidecar sided sidereal sides sidestep sidesteps sidetrack sidewall siding sift sifted sifting
sifts sight sighting sightless sights sill sills silvering simile simmered sine sinecure sing
singed singeing singer singers singing singings single singled singles singling singly sings sink
sinks sinning sins sipped sipping sips sire sired sixteens sixth sixtys skeet skeets skeptic
sketches skewed skewing skid skidding skids skies skill skills skimming skimped skimping skimps
skims skin skinning skins skip skipper skippering skirt skirting skis skits skittered skunking
slab slabbing slabs slack slacked slacking slag slags slaked slaking slammer slams slanting slap
slapped slapping slaps slash slashed slashing slat slathered slavering slaw slay sled sledding
sledging sleek sleeking sleepier sleepily sleeps sleepy sleet sleeting sleets slenderness slewed
slewing slice sliced slices slicing slick slicked slicking slicks slider sliders slight slighting
slightness slim slime slimes slimmed slimming slims slinging slings slink slinking slinks
slipcovers slipper slit slits slitting slivering slivers slobbered slogged slop slopped slopping
slops slot slowed slowing slue slues slug slugger slugging sluggishly slugs sluicing slum slummed
slumming slump slumping slumps slums slunk slurp slurped slurping slurps slut sluts sluttish
smacker smacking smalls smashes smashing smashs smearing smell smelled smelling smelting smelts
smiled smiles smiley smirches smirking smite smitten smock smocked smocking smocks smolders
smoulder smoulders snacked snacking snag snagged snagging snags snail snailed snailing snails
snaked snaking snaky snapper snappier snappish snapshot snarfing snarling snatched snatches
snatching sneaking sneering sneezing snickered snide sniffing sniggering sniggers snip snipped
snipping snippy snips snitch snitched snitches snitching sniveling snob snooping snore snot
snowball snowboard snowboards snowdrop snowdrops snowfall snowfalls snowing snowplowed snubbing
snugged soakings soap soaped soaping soaps soar soared soaring soars soberness sock socked sockets
socking socks softness soiling sold solder sole solid some someone someplace something somethings
someway soot sooth sopped sopping soppy sops sorceress sorehead soreheads sorenesss sorer sores
sort sound sounded sounding soundings sounds sour sourcing sourness sours souse south sower sowers
sowing spade spam spammed spangles spangling spanking spanning spar sparely spareness sparking
sparkle sparkled sparkler sparklers sparring spars spattered speaking spearing specking speckles
speckling speed speeding spell spelled spelling spellings spells spending spiel spilling spills
spillway spilt spin spinners spinning spins spiraling spit spitting splat splattered spleens
splint splits splurging spluttered spluttering splutters spongers sponging spore spot spraining
sprawling spreadsheet spreadsheets springing sprinkles sprinkling spryness spur spurning spurred
spurring spurs spurting sputtered sputtering sputters squad squads square squarer squares squarest
squaring squatted squatters squeaked squeaking squealed squealing squeamish squeegee squeegeed
squeezer squeezers squeezes squinted squinter squired squiring squirmed squirrel squished stabbed
stabbings stability stables stabling stacked stacking staffing stag staggeringly staggers stags
staining stains stair stairway staked staking stales stalking stalling stammered stammering
stamped stamping stanched stanches stanching standings standoff standout standpoint standstill
stank staple stapled stapler staplers stapling star starches starkly starling starring stars
starters starting startles startling starving stash stashed stashing stat statics stats stay stays
stealing steaming steamroll steamroller steamrollered steamrollers steamrolls steeling steep
steeping steeps steering stenches stepladder stepping steps sterling sternums stewed stewing stick
sticker stickers stickier stickies stickpin stickpins sticks stiffing stifling stile still
stilling sting stingier stingily stinginess stingy stinker stinkers stinking stint stinting stints
stippling stirred stirrers stirring stirrings stirs stitched stitching stitchs stock stocking
stockings stocks stomachs stooped stooping stopover stopped stopping stopwatch store stowing
straightforward straightjacket straining stranding strangers strapping strengthen strengths
stressing stretches striding striking stringer stringers stringing strings strip stripped
stripping stroking stropping stub stubbing stubbles stubs stuck studding stuffiness stumble
stumbler stumblers stumbles stumped stumping stunk stunning stunting stuttered stuttering stutters
subduing subjugated subjugation sublimated sublimation sublimed sublimes subliming subsumed
subsumes subsuming sucked suckle suckled suckles suckling sucklings suffocation suffocations
suicides suitcases suits summered summing sump sumps sums sundered sundown sunk superpower
supervisor supportive sure sureness surenesss sustains sutured swab swabbing swabs swagged
swaggering swagging swags swam swamping swanking swap swapped swapping swaps swarm swash swashed
swashing swat swatch swatches swathing swats swattered swatting swear swearer swearing swears
sweaters sweatier sweatshirt sweatshop sweatss sweep sweeping sweepings sweeps sweet sweeter
sweets sweller swellhead swellings swelter swept swerves swerving swift swifts swigging swill
swilled swilling swills swinger swingers swinging swings swiped swirling switchblade switchboard
switchboards switched switcher switches switching switchs swiveling swivelling swooping swopping
swore symmetrical synching syringing tabbing tables tablet tabs tacked tacking tackler tackles
tackling tagged tagging tags tail tailed tailing tails tainted tainting taints take takes taking
tale tall tame tampered tams tang tangle tangled tangles tangling tangoing tanked tapped tapping
taps tared taring tars tattered taunting teak teaks teal teals team teaming teams teardrop
teardrops teary teas teasing teat teats tees teetering teethe tell tenants tenderest tenderfeet
tenderfoot tenderises tendernesss tenseness tent tented tenth tents tern testable tethered thank
thatching thee there thicker thin think thins thirsty thirteens thirteenth thirties thirtys thorn
thrash thrashing threes threesome thriving throe throes thronged thronging thrumming thudding
thumbed thumbing thump thumps thundered thunks ticked tickers ticket ticking tickings tickle
tickled tickling tided tied ties tightens tightest tightnesss tightrope tights tiled tills timed
timeless timeliness tine ting tinge tinged tingeing tinges tinglings tings tinker tinkle tinkled
tinkles tinkling tinning tinseling tipped tipper tipping tippled tippling tips tiptoe tiptoes tire
tiredest tirednesss tireless tires tizzy toasting toddle toddled toddlers toddles toed toehold
toggling togs togss toiling toke token tokes told tolerable toll tolled tolling tolls tome tomes
toms tone tones tongued tongues tonguing tons tonsillitiss toot toothbrush toothpastes toothpick
tooths toothsome toothy toots topped topping topple topples tops topsides tors tort torte tosss
tost totalled tote totes tots touchdown tour tours towed towelling towels tower towers town tows
toys trace traced traces tracing track tracked tracking tracks trailing trained trainings traipsed
traipsing trammed trammeled tramming tramped tramping trample tramples trap trapped trapping
trashed trashing trashs trashy traveled trawling tray treasure treating trebling tree trembled
trembling trenched trenches trenching trialing trice tricepss trices tricked tricking trickle
trickled trickles trickling tried trig trilled trim trio tripe tripled triplet triplets tripling
tripping trips tris troll trolled trolling trolls tromping tron troop trooped trooping troops
troth troubleshot troublesome trouping trowel truck trucker trucking truckled truckles truckling
trumped trumping trunking trunks trussing trusting tsar tsars tucked tucker tugged tumbledown
tumbler tumbles tummys turn turncoat turned turning turnkey turnkeys turnoff turnout turnover
turns tussling twangs tweak tweaking tweeting twelves twentys twine twines twinged twingeing
twinging twinkling twister twitch twitches twitching twitted twosome typeface typeset typesetter
typewrite tyre tzar tzars umped umping umps umpteen unabated unbearably unbeatable unbeaten
unbreakable unbuckles unbuckling unchanged uncooked uncorked underact undercoat undercuts
unfettered unformed unhanded unhinge unhinges unhitched unhorsed unlatches unleaded unlettered
unlocked unloosed unmatched unopened unpinned unplumbed unreadable unrelated unrelentingly unsaid
unsalted unscathed unscrews unsealed unsettled unsheathed unsigned unsnapping unstated unsteadily
unsuitable unsuited untested untreated unusable upchucks uppercut upstanding upturned urns
uttering vain vale valves vars vaunting veeps veil veils vent vented vents verves vibrate
vibration vibrations vibrator vibrators vibratos vigor vigors vine violated violates violating
violent violets visiting visors vitiated vitiates vitiating vizor volt voltages volts vowel wade
wades wading wage wages wagged wagging waging wags wail wailed wailing wails waist waists waitress
waked waken wakened wakening wakens wale wales waling walking wall wallboard wallboards walleye
walleyes walling wallpaper wallpapers walls wand wands wane wanes wangling waning wanked wanking
wanting wants warbled warbling ward ware wares warms warn warp wars wart wary washboard washboards
washbowl washcloth washout washstand wasp watch watchband watches watching wave waved waves
waviness waving waxes waxing wayside weaken weakling weaknesses weaknesss weal wean wear wearer
weariness wearing wears weaseled weaseling weaver wedder wedding weds weeding weeing week
weekended weekending weepings weeps wees weight weighty well welled welling wells welt weltering
welts wended went wetland whacker whacking whammy wheal wheedling wheelbase wheelchair wheeling
wheels wheezed wheezes wheezier whelping whetting whiffing while whine whipping whips whist whists
whit whiten whiter whites whitewall whitewash whits whizzing wholesome wholly whooping whopping
wicked wicker widow wiggling wiggly wight wights wiled willow wills wimp winced winch winched
winches winching windbag windbags windburns windfall windfalls windows wine wined wing winged
winger wingers winging wings wink winked winning winnings winnow wipe wiper wipes wired wireless
wist witch witched witches witching withhold without withstand withstanding wive wizzes wobbled
wobblier woes woks womble wombles women wooded woodmen woody wool woolen woollys wools woolys wore
workbench workbook workbooks workforce workhorse workout workplace worksheet worksheets worm worn
worsting would woulds wounded wounding wove woven wrack wracks wrapping wreak wreaked wreath
wreathe wreathed wreathes wreathing wreaths wrecker wrecking wrecks wrenches wrenching wrest
wresting wrests wretched wretches wriest wringers wringing wrinkles wrinkling wristband wristwatch
writ write writs yall yammered yams yanking yapped yapping yaps yard year years yell yellowest
yellowing yellows yesterdays yipped yipping yips yock yocks yoke yore your yours youth yucked
yucking yukked yukking yummy zapper zeds zeros zinc zinced zincing zincking zincs zipped zippers
zippier zipping zippy zips zone zones
"""
