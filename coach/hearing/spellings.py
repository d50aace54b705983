"""Misspellings and text-message spellings that are read as listed, without being a guess.

Law: only spellings that are no English word of their own. Short ones must be here, since words of
three letters are never guessed. Sources: own list; spellings reported for such words in public
misspelling lists.
"""

from __future__ import annotations

from functools import cache
from typing import Final

_LISTED: Final = """
yeha yeah | yaeh yeah | yse yes | eys yes | noep nope | nopee nope | npoe nope | alrite alright | alrihgt alright
tos toss | painfree pain free | painfull painful
num numb | nubm numb | nmb numb | numm numb | numbe numb | numn numb | nunb numb | numd numb
numness numbness | nummness numbness | numbnes numbness | numbess numbness | nubness numbness
tingley tingly | tingeling tingling | tinglng tingling | tingelly tingly | tingely tingly | tinglin tingling | tingels tingles | tingel tingle
tinging tingling | tingleing tingling | tingaling tingling | tinglig tingling | tingly tingly
neadles needles | nedles needles | needels needles | pinz pins
poped popped | poppd popped | popt popped | popd popped | poping popping | poppin popping
slipt slipped | sliped slipped | slippd slipped | slipd slipped | sliping slipping
swolen swollen | swoln swollen | swollin swollen | swelin swelling | sweling swelling
swellin swelling | swelld swelled | swollan swollen | swoolen swollen | sweled swelled
feaver fever | fevr fever | fver fever | fevar fever | fevor fever | rever fever
purpel purple | purpal purple | purpul purple | purpse purple | vlue blue | bleu blue
viens veins | vien vein | vains veins
chils chills | shivring shivering | shakin shaking | snaped snapped | snapd snapped
dislokated dislocated | disclocated dislocated | dislacated dislocated | dislocted dislocated
subluxd subluxed | dislocatd dislocated | dislocatedd dislocated | sockit socket | sockt socket | soket socket
brusied bruised | brused bruised | brooz bruise | bruse bruise
strenght strength | strenth strength | stregth strength | deformd deformed | acident accident
accidnt accident | lft lift | brething breathing | breathig breathing | feverr fever | wekness weakness
cyaan cant | cyah cant | cannae cant | cannie cant | couldnae couldnt | wouldnae wouldnt | dinnae dont | dinna dont | willnae wont | wasnae wasnt | isnae isnt | didnae didnt
cnt cant | kant cant | canot cannot | cannt cant | carnt cant | cantt cant
couldent couldnt | coudnt couldnt | cudnt couldnt | couldn couldnt | coulnt couldnt
dosnt doesnt | doesnot doesnt | dosent doesnt | dnt dont | wnt wont | woudnt wouldnt
hasent hasnt | hasn hasnt | havnt havent | isn isnt | didn didnt | didt didnt | wasn wasnt
breth breath | breef brief | breating breathing | breathin breathing | breahte breathe
cheast chest | ches chest | presure pressure | pian pain | paln pain | pane pain
atack attack | coffing coughing | coff cough | couging coughing | coughin coughing
sholder shoulder | shulder shoulder | sholdr shoulder | shouldr shoulder | shoudler shoulder
shldr shoulder | sholda shoulder | schoulder shoulder | sholders shoulders
elbo elbow | elbw elbow | fingrs fingers | fingr finger | fingas fingers | finge finger
bisep biceps | bicept biceps | tricept triceps | forarm forearm | foream forearm
limpp limp | moove move | reech reach | paralized paralyzed | parralyzed paralyzed
parralysed paralysed | weeker weaker | weekness weakness | wek weak | weka weak
dizy dizzy | dizzi dizzy | feinted fainted | fantied fainted | passd passed | faintd fainted
slured slurred | speach speech | drooppy droopy | clumsey clumsy | controll control
numming numbing | groan groin | vommiting vomiting | vommit vomit | vomitting vomiting
diarhea diarrhea | diarreah diarrhea | diareah diarrhea | diarrea diarrhea
insicion incision | insision incision | stiches stitches | puss pus | infecshun infection
infectd infected | infeckted infected | hott hot | redd red | calve calf | caff calf
teared tore | herd heard | crakc crack | crackd cracked | tare tear | straiten straighten
straitened straightened | snapt snapped | unberable unbearable | unbareable unbearable
sevear severe | sever severe | wakeing waking | sleap sleep | nite night | nites nights
acheing aching | achin aching | pich pitch | cluncking clunking | loks locks | pinkie pinky
tingels tingles | loosing losing | joynts joints | joynt joint | ibuprofin ibuprofen
ibprofen ibuprofen | ibuprofren ibuprofen | kilers killers | medz meds | exausted exhausted
exhuasted exhausted | tierd tired | tird tired | kil kill | suicidle suicidal | sucidal suicidal
stomack stomach | stomache stomach | lookin looking | feelin feeling | fel fell | feell feel
nuffin nothing | rdy ready | wth with | w with | w/ with | w/o without | & and | n and | nd and
siz six | nin nine | ine nine | thre three | noen none | mone none | trew threw
thru through | tho though | altho although | cuz because | cus because | coz because | bc because
cos because | becuz because | becus because | rn now | tmr tomorrow | tmrw tomorrow | 2day today
yest yesterday | ysterday yesterday | yesteday yesterday | ystrday yesterday | lastnight last night
outta out of | gotta got to | hav have | hv have | jst just | abit a bit
alot a lot | kindof kinda | sortof sorta | prolly probably | probs probably | prob probably
eachother each other | infront in front | ontop on top | aswell as well
shortof short of | cantfeel cant feel | cantlift cant lift
popd popped | droped dropped | droppd dropped | droping dropping | droppin dropping
burnin burning | throbbin throbbing | achey achy | hurtin hurting | hurtz hurts | hert hurt
startd started | felf felt | wierd weird | weerd weird | stifff stiff
bruze bruise | collor color | looze loose | unstabel unstable
swel swell | swels swells | tite tight | tyte tight | nummy numb | nummed numbed
ey hey | ya yeah | yea yeah | yeh yeah | yah yeah | yss yes | ues yes | yse yes | yess yes
twoo two | twpo two | threee three | fuor four | foru four | fiv five | sevn seven | seveen seven
eigth eight | reight eight | eigt eight | nien nine | zeor zero | tweny twenty | fourty forty
ninty ninety | fourtey forty | hald half | hahve half | hlaf half
cheet chest | clossion collision | coloer color | crach crash | falled fell | mabey maybe
minuts minutes | nimutes minutes | piches pitches | speeping sleeping | teh the | tht that
esy easy | eazy easy | aesy easy | dasy easy | reasy easy | eary easy | ezpz easy | ez easy
hevy heavy | heavey heavy | lite light | throwed threw | thow throw | thowing throwing
housr hours | houres hours | hrs hours | hr hour | mins minutes | min minutes
cach catch | pratice practice | practive practice | practise practice | lond long
"""


@cache
def spellings() -> dict[str, str]:
    """Each listed spelling with what it is read as, put together on first need."""
    pairs = (entry.split(maxsplit=1) for entry in _LISTED.replace("\n", "|").split("|"))
    return {pair[0]: pair[1].strip() for pair in pairs if len(pair) == 2 and pair[0] != pair[1]}  # noqa: PLR2004
