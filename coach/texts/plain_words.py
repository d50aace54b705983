"""The words that clearance words and the words of a key are made of: short, plain, told apart.

Law: only lower-case letters, each once. The number of words decides how hard a guess is, so the
list only grows, and only at its end: the words of a key are counted from the first 512.
"""

from __future__ import annotations

from typing import Final

PLAIN_WORDS: Final = tuple(
    """
acorn amber anchor anvil apple april apron arch arrow ash aspen atlas autumn badge bagel baker
bamboo banjo banner barley barn basil basin basket beach beacon bean bear beaver bell bench
berry birch bird biscuit bison blanket blossom blue boat bonfire bonnet book boot bottle bowl
bread breeze brick bridge bright broom brown brush bucket buffalo bugle butter button cabin
cable cactus camel camera candle candy canoe canyon cape carpet carrot castle cat cavern cedar
celery cello chalk cherry chess chestnut chimney cinema circle citrus clam clay cliff clock
cloud clover coast cobalt cocoa cocoon coffee comet compass copper coral cork corn cottage
cotton cousin crab cradle crane crayon creek cricket crimson crow crown crystal cube cuckoo
cup curtain cypress dahlia daisy dawn deer delta denim desert diamond diary dingo dolphin dome
donkey door dove dragon drum duck dune dusk eagle earth easel east echo elbow elder elephant
elm ember emerald engine evening falcon farm feast feather felt fern ferry fiber fiddle field
fig finch fire fish flag flame flask flint flock flour flower flute fog forest fork fossil
fountain fox frog frost fruit fudge galaxy garden garlic garnet gate gecko ginger giraffe
glacier glass globe glove goat gold goose grain granite grape grass gravel gravy green grove
guitar gull hammer hammock harbor harp harvest hawk hazel hedge heron hill hinge hockey holly
honey hoop horn horse hotel hour house ice igloo ink iris iron island ivory ivy jacket jade
jaguar january jar jasmine jelly jersey jewel jigsaw juice july jungle juniper kayak kelp
kettle key kitchen kite kitten kiwi koala ladder lagoon lake lamp lantern lark lasso laurel
lava lavender leaf lemon lentil leopard letter library lilac lily lime linen lion lizard llama
lobby lobster locket lotus lunar lynx magnet magpie maize mango maple marble march marina
market marsh meadow melody melon meteor midnight milk mill mint mirror mitten mole monday moon
morning mosaic moss moth mountain mouse mule museum mushroom music mustard napkin nectar
needle nest nettle nickel north notebook nutmeg oak oasis oat ocean olive onion opal orange
orbit orchard orchid otter oven owl oxen oyster paddle paint palm panda pansy panther paper
parade parcel park parrot parsley pasta path peach peanut pebble pelican pencil penguin pepper
piano pier pigeon pillow pine pink planet plaza plum pocket poem pond pony poplar poppy porch
potato prairie prism pumpkin puppet purple puzzle quail quartz quiet quilt quiver rabbit radio
radish raft raisin ranch raven reed ribbon rice ridge ring river robin rocket rodeo rope rose
ruby saddle saffron sage salmon salt sand sandal satin saturn scarf scooter seal season seed
shadow sheep shell sherbet ship shore silk silver sketch sky slate sled snail snow soap sofa
song sonnet south spade spark sparrow spice spider spoon spring spruce square squirrel stable
star stone stork storm stove straw stream street sugar summer sunset surf swan table tango
tassel temple tent thistle thunder tiger timber toast tomato topaz torch tower tractor train
tree trophy trout trumpet tulip tundra tunnel turkey turnip turtle tweed umbrella vale valley
vanilla velvet village vine violet violin waffle walnut walrus water wave west whale wheat
wheel whistle willow wind window winter wolf wood wool wren yarn yellow zebra
""".split()
)
