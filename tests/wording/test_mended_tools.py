"""Sizes and weights of tools read wrongly once, and tools that shared a name with another, each with its look-alike.

The verdicts are common practice, no source.
"""

from cribkit.domain.wording import read
from tests.wording.pairs import over, verdict_on

# Whole inches from five up with a fraction; beside a square the whole number is millimetres.
MIXED = [
    ("diagonal cutters, 7 1/2 in", "PLIERS, DIAGONAL CUTTING, 7-1/2 IN.", "match"),
    ("diagonal cutters, 7 1/2 in", "PLIERS, DIAGONAL CUTTING, 6-1/2 IN.", "none"),
    ("tongue-and-groove pliers, 9-1/2 in", 'groove joint plier 9.5"', "match"),
    ("lineman's pliers, 9-1/2 in", "LINESMAN PLR 9 1/2 IN", "match"),
    ("long nose pliers, 6 5/8 in", "PLIERS, LONG NOSE, 6-5/8 IN. LG", "match"),
    ("long nose pliers, 5/8 in", "PLIERS, LONG NOSE, 6-5/8 IN. LG", "none"),
    ("socket 13 mm, 1/2 drive", "SKT 13-1/2 DR", "match"),
    ("socket 10 mm, 3/8 drive", "socket 10 3/8 dr", "match"),
]

# Pounds and tons are no six-lobe sizes, and no teeth.
WEIGHTS = [
    ("sledgehammer, 6 lb", "SLEDGE HAMMER 6LB", "match"),
    ("sledgehammer, 6 lb", "SLEDGE HAMMER 8LB", "none"),
    ("T20 bit socket, 1/4 drive", "6LB BIT SKT T20 1/4DR", "match"),
    ("hydraulic puller, 10 ton", "PULLER HYD 10T", "match"),
    ("hydraulic puller, 10 ton", "PULLER HYD 20T", "none"),
    ("hydraulic press 20 t", "HYDRAULIC PRESS 20 TON", "match"),
    ("hydraulic press 20 t", "HYD PRESS GAUGE", "none"),
    ("hacksaw blade 32 tpi", "hksaw bld 300 x 32t", "match"),
    ("hacksaw blade 24 tpi", "hksaw bld 300 x 32t", "none"),
]

# A decimal without a unit is in mm; a point without a nought, three places: inches.
DECIMALS = [
    ("feeler gauge 0.25 mm", "feeler blade 0.25", "match"),
    ("feeler gauge 1/4 in", "feeler blade 0.25", "none"),
    ("drill 4.75 mm", "drill hss 4.75", "match"),
    ("drill 4-3/4 in", "drill hss 4.75", "none"),
    ("lockwire .032 in", "lockwire .032", "match"),
    ("digital caliper 150 mm", 'DIGI VERN 150/6"', "match"),
    ("digital caliper 200 mm", 'DIGI VERN 150/6"', "none"),
]

# Machines and tools that are used for the same trade and yet do different things.
APART = [
    ("mig welder", "TIG WELDER 200A", "none"),
    ("mig welder", "WELDER MIG 180A", "match"),
    ("reciprocating saw", "jigsaw", "none"),
    ("reciprocating saw", "recip saw 18v", "match"),
    ("power saw", "power saw blade", "none"),
    ("jigsaw", "jigsaw blade 100 mm", "none"),
    ("ultrasonic cleaner", "ultrasonic cleaning fluid 1 l", "none"),
    ("belt sander", "random orbital sander", "none"),
    ("sander", "random orbital sander", "match"),
    ("tyre changer", "wheel balancer", "none"),
    ("two-pole voltage tester", "non contact voltage tester pen", "none"),
    ("two-pole voltage tester", "proving unit", "none"),
    ("voltage tester", "proving unit", "none"),
    ("two-pole voltage tester", "VOLTAGE DETECTOR 2 POLE", "match"),
    ("continuity tester", "test lamp 12 V", "review"),
    ("parts washer", "ultrasonic bath", "none"),
    ("ladder", "step stool", "none"),
    ("tow rope", "tow chain", "none"),
    ("air regulator", "air line lubricator", "none"),
    ("mounted point set", "carbide burr set", "none"),
    ("windscreen cutting wire", "windscreen cut out knife", "none"),
    ("camber gauge", "toe gauge", "none"),
    ("flywheel locking tool", "flywheel turning tool", "none"),
    ("glow plug reamer", "glow plug removal kit", "none"),
    ("wheel weight pliers", "WHEEL WEIGHT SCRAPER", "none"),
    ("spring caliper inside", "spring caliper outside", "none"),
    ("tap wrench bar", "tap wrench T", "none"),
    ("trickle charger", "starter charger", "review"),
    ("Vernier calliper, 150 mm", "Depth vernier 150mm", "none"),
    ("die 25 mm OD M8", "die 20 mm OD M8", "none"),
    ("die 25 mm OD M8", "die M8 25 mm OD", "match"),
    ("tap wrench M8", "TAP WR M1-M12", "match"),
    ("tap wrench M14", "TAP WR M1-M12", "none"),
    ("BSPT tap 1/4", "TAP 1/4 BSPT", "match"),
    ("BSPT tap 1/4", "TAP 1/4-20 UNC", "none"),
]

# Chisels, stamps, hammers: the form of the edge, what is stamped, the second face.
STRUCK = [
    ("cold chisel", "NYLON CHISEL", "none"),
    ("cape chisel", "chisel, diamond point, 1/4", "none"),
    ("round-nose chisel", "CAPE CHISEL 3/8", "none"),
    ("cape chisel", "CHISEL CROSS CUT 3/8", "match"),
    ("letter stamps", "NUMBER PUNCHES 0-9 1/8", "none"),
    ("letter stamps", "letter and number punch set", "match"),
    ("brass hammer", "BRASS/NYLON HAMMER 35MM", "none"),
    ("brass hammer", "BRASS HAMMER 2LB", "match"),
    ("brass drift", "BRASS DRIFT SET 3PC", "match"),
    ("air hammer", "NEEDLE SCALER", "none"),
    ("puller, 2 jaw", "2/3 JAW PULLER", "match"),
    ("puller, 4 jaw", "2/3 JAW PULLER", "none"),
]

# A shaft wants external circlip pliers, a bore or a housing internal ones.
CIRCLIPS = [
    ("external circlip pliers", "CIRCLIP PLIERS SHAFT 85-140MM", "match"),
    ("internal circlip pliers", "CIRCLIP PLIERS SHAFT 19-60", "none"),
    ("internal circlip pliers", "CIRCLIP PLIERS HOUSING 12-25MM", "match"),
    ("external circlip pliers", "circlip pliers for bores 19-60", "none"),
]

# The last noun is the thing: a tool for a part is not the part, and a part is not the tool for it.
NOUNS = [
    ("thermostat", "thermostat tester", "none"),
    ("wheel stud", "wheel stud removal tool", "none"),
    ("glow plug", "glow plug tester", "none"),
    ("oil filter", "oil filter cutter", "none"),
    ("tyre valve", "tyre valve core driver", "none"),
    ("thread insert M8", "helical insert tang break tool M8", "none"),
    ("ATF", "ATF dipstick", "none"),
    ("M12 nut", "EYE NUT M12", "none"),
    ("valve spring compressor", "valve spring", "none"),
    ("valve spring compressor", "COMPRESSOR, VALVE SPRING", "match"),
    ("water pump pliers", "COOLANT PUMP", "none"),
    ("10 x 11 mm bleed nipple spanner", "bleed nipple spanner 10x11", "match"),
    ("glow plug", "GLOW PLUG, M10", "match"),
]

# What is done next, how a thing is set, and what is not to be used name nothing.
STEPS = [
    ("Break the taper with a ball joint separator (do not use a fork).", "BALL JOINT SPLITTER SCISSOR TYPE", "match"),
    ("Break the taper with a ball joint separator (do not use a fork).", "PICKLE FORK 24MM", "none"),
    ("Measure the disc at eight points with a 0-25 mm micrometer", "MICROMETER 0-25MM", "match"),
    ("Probe the connector with a multimeter set to ohms", "MULTIMETER", "match"),
    ("Raise the axle with a bottle jack and set it down on stands", "BOTTLE JACK 5T", "match"),
    ("Listen at the bearing with a stethoscope", "STETHOSCOPE", "match"),
    ("Prove dead with a voltage tester, then prove the tester again", "VOLTAGE TESTER", "match"),
    ("Blow out the swarf with an air gun", "BLOW GUN", "match"),
    ("Blow out the swarf with an air gun", "AIR IMPACT GUN 1/2DR", "none"),
    ("Drill out the rivet with a 5 mm bit, taking care not to go through", "DRILL HSS 5MM", "match"),
    ("Line up the holes with an aligning punch before you start the bolts.", "LINE UP PUNCH 7/16X16", "match"),
]


@over(MIXED + WEIGHTS + DECIMALS)
def test_sizes_and_weights_are_read_in_their_units(need: str, item: str, verdict: str) -> None:
    assert verdict_on(need, item) == verdict


@over(APART + STRUCK + CIRCLIPS)
def test_things_of_one_trade_are_told_apart(need: str, item: str, verdict: str) -> None:
    assert verdict_on(need, item) == verdict


@over(NOUNS)
def test_the_last_noun_is_the_thing(need: str, item: str, verdict: str) -> None:
    assert verdict_on(need, item) == verdict


@over(STEPS)
def test_a_step_asks_for_the_thing_alone(need: str, item: str, verdict: str) -> None:
    assert verdict_on(need, item) == verdict


def test_a_part_named_beside_a_tool_word_has_no_family() -> None:
    assert read("thermostat tester").family == ""
    assert read("thermostat").family == "thermostat"
