"""What a label grants and what it denies, what a glove is worn for, and which oil is an engine's.

Each pair was once judged otherwise, or stands beside one that was. The verdicts are common practice, no source.
"""

import pytest

from cribkit.domain.wording import forbidden, read, read_item
from tests.wording.pairs import over, verdict_on

# Leather worn over insulating gloves stands no voltage itself (IEC 60903, from memory).
OVER_GLOVES = [
    ("insulating gloves class 0", "leather over-gloves for HV gloves class 0", "none"),
    ("insulating gloves class 0", "HV glove leather protectors class 0", "none"),
    ("insulating gloves class 0", "leather protector gloves class 0", "none"),
    ("insulating gloves class 0", "GLOVE, OVER, LEATHER, CLASS 0", "none"),
    ("insulating gloves class 0", "protectors, leather, for gloves class 0", "none"),
    ("insulating gloves class 0", "gloves class 0 leather", "none"),
    ("insulating gloves class 0", "gloves, protector, goatskin, for class 0", "none"),
    ("insulating gloves class 0", "cotton liners for insulating gloves class 0", "none"),
    ("insulating gloves class 0", "leather gloves for HV work", "none"),
    ("HV gloves", "insulated leather winter gloves", "none"),
    ("insulating gloves class 0", "electrician's gloves class 0 rubber", "match"),
    ("insulating gloves class 0", "insulating gloves class 0 with leather over-gloves", "match"),
    ("insulating gloves class 0 and leather over-gloves", "insulating gloves class 0", "review"),
    ("Wear class 0 insulating gloves with leather over-gloves", "insulating gloves class 0", "review"),
    ("Wear class 0 insulating gloves with leather over-gloves", "leather over-gloves class 0", "none"),
    ("Wear class 0 insulating gloves with leather over-gloves", "rigger gloves leather", "none"),
    ("leather over-gloves for the insulating gloves", "leather over-gloves for HV gloves class 0", "match"),
    ("leather over-gloves for the insulating gloves", "rigger gloves leather", "none"),
    ("leather over-gloves class 2", "leather protector gloves class 0", "none"),
    ("leather over-gloves", "insulating gloves class 0", "none"),
    ("rigger gloves", "leather over-gloves", "none"),
    ("leather gloves", "leather rigger gloves size 10", "match"),
    ("leather gloves", "synthetic leather mechanics glove", "none"),
    ("mechanics gloves", "synthetic leather mechanics glove", "match"),
]

GLOVE_SIZES = [
    ("nitrile gloves size L", "nitrile gloves ex-large", "none"),
    ("nitrile gloves XL", "nitrile gloves ex-large", "match"),
    ("gloves size 2XL", "gloves XXL", "match"),
    ("gloves XXL", "gloves 2X-large", "match"),
    ("gloves XXL", "gloves xx-large", "match"),
    ("gloves size 2XL", "gloves XL", "none"),
    ("gloves XXXL", "gloves 3XL", "match"),
    ("gloves 3XL", "gloves XXL", "none"),
    ("gloves 4XL", "gloves XL", "none"),
    ("overalls XXL", "overalls 2XL", "match"),
    ("cut-resistant gloves level D", "EN388 4X43D cut-resistant gloves", "match"),
    ("cut-resistant gloves level D", "EN388 4X43C cut-resistant gloves", "none"),
]

# An engine oil is told by its grade, its class or the word.
OILS = [
    ("engine oil", "used oil", "none"),
    ("engine oil", "white oil", "none"),
    ("engine oil", "leather oil", "none"),
    ("engine oil", "compressor mineral oil", "none"),
    ("engine oil", "universal tractor oil", "none"),
    ("engine oil", "lubricating oil, instrument", "none"),
    ("engine oil", "lubricating oil, general purpose, 4 oz", "none"),
    ("engine oil", "LUBRICATING OIL, ENGINE, 15W-40", "match"),
    ("engine oil", "oil 5W-30 fully synthetic", "match"),
    ("compressor oil", "compressor mineral oil", "match"),
    ("oil", "oil 5W-30 fully synthetic", "review"),
    ("oil", "brake fluid DOT 4", "none"),
    ("penetrating oil", "LUBRICATING OIL, PENETRATING, 1 PT", "match"),
    ("15W-40 engine oil", "oil 15 W 40, 20 l", "match"),
    ("15W-40 heavy duty diesel engine oil", "HDEO 15W40 CK-4 20L", "match"),
    ("10W-40 engine oil E7", "UHPD 10W40 E4/E7 208L", "match"),
    ("10W-40 engine oil E7", "10W40 E4 208L", "none"),
    ("E7 socket 1/2 drive", "10W40 E7 208L", "none"),
    ("E7 socket 1/2 drive", "E7 socket 1/2 dr", "match"),
    ("engine oil low SAPS", "5W-30 C3 mid SAPS", "review"),
    ("5W-30 low SAPS engine oil", "5W-30 full SAPS A5/B5", "none"),
    ("automatic transmission fluid", "trans-hydraulic oil 20L", "none"),
    ("automatic transmission fluid", "synchromesh transmission fluid 1 qt", "none"),
    ("power steering fluid", "power steering oil red ATF type", "review"),
    ("EP 90 gear oil", "EP90 gear oil 5L", "match"),
    ("EP 90 gear oil", "GEAR OIL EP80 5L", "none"),
    ("ISO 220 gear oil", "industrial gear oil ISO VG 220", "match"),
    ("ISO 220 gear oil", "gear oil CLP 320", "none"),
    ("gear oil GL-4 75W-90, not GL-5", "gear oil 75W-90 GL-5", "none"),
    ("hydraulic oil ISO 46", "HV46 hydraulic oil", "match"),
    ("hydraulic oil HLP 46", "HM 46 hydraulic oil", "review"),
    ("hydraulic oil HLP 46", "HLP 32 20 L", "none"),
    ("hydraulic oil ISO 46", "LHM 46", "none"),
    ("hydraulic oil", "hydraulic oil LHM", "none"),
    ("PAG 46 without dye", "PAG 46 no dye", "match"),
    ("PAG 46 without dye", "PAG 46 with UV dye", "none"),
    ("PAG 46 oil for R1234yf", "PAG 46 YF oil 250ml", "match"),
    ("PAG 46 oil for R1234yf", "PAG 46 oil for R134a", "none"),
    ("glycol-based brake fluid DOT 4", "brake fluid DOT 4", "match"),
    ("glycol-based brake fluid", "brake fluid DOT 5 silicone", "none"),
]

# A claim, its contrary, and a label that says neither.
CLAIMS = [
    ("acid-free wheel cleaner", "wheel cleaner acid based 5 l", "none"),
    ("acid-free wheel cleaner", "wheel cleaner, acid free", "match"),
    ("acid-free wheel cleaner", "wheel cleaner 5 l", "review"),
    ("oil-resistant RTV", "rtv, not oil resistant", "none"),
    ("oil-resistant RTV", "RTV black, oil resistant", "match"),
    ("gear oil resistant RTV", "rtv black", "review"),
    ("hand cleaner without pumice", "hand cleaner with pumice", "none"),
    ("hand cleaner with pumice", "hand cleaner without pumice", "none"),
    ("hand cleaner without pumice", "hand cleaner, pumice-free", "match"),
    ("hand cleaner without pumice", "hand cleaner", "review"),
    ("brake cleaner with acetone", "brake cleaner without acetone", "none"),
    ("acetone-free brake cleaner", "brake cleaner with acetone", "none"),
    ("acetone-free brake cleaner", "disc & drum brake cleaner, without acetone, 600 ml", "match"),
    ("non-chlorinated brake cleaner", "brake cleaner, zero chlorine, 500 ml", "match"),
    ("non-chlorinated brake cleaner", "brake cleaner, chlorinated", "none"),
    ("paint stripper free of methylene chloride", "paint stripper with methylene chloride 1 l", "none"),
    ("paint stripper free of methylene chloride", "paint stripper, methylene chloride free", "match"),
    ("residue-free contact cleaner", "electronic contact cleaner, zero residue", "match"),
    ("brake cleaner for plastics", "brake cleaner, attacks plastics", "none"),
    ("brake cleaner for plastics", "brake cleaner", "review"),
    ("silicone-free panel wipe", "panel wipe", "review"),
    ("threadlocker without primer", "threadlocker", "review"),
    ("plastic safe silicone spray", "silicone spray, safe on rubber and plastic", "match"),
    ("catalyst safe throttle cleaner", "throttle cleaner, cat safe", "match"),
    ("fast-drying panel wipe", "panel wipe slow evaporating", "none"),
    ("high temperature grease", "low temp grease", "none"),
    ("lithium grease", "lithium grease moly-free", "match"),
    ("moly grease", "lithium grease moly-free", "none"),
    ("copper-free anti-seize", "anti-seize copper", "none"),
    ("copper-free anti-seize", "anti-seize", "review"),
    ("brake grease, not copper grease", "brake grease", "match"),
    ("lithium grease", "lithium-calcium grease 400 g", "review"),
]

LOCKERS = [
    ("red threadlocker", "threadlocker high strength green", "review"),
    ("green threadlocker", "threadlocker high strength green", "review"),
    ("wicking threadlocker, green", "threadlocker high strength green", "none"),
    ("green high strength threadlocker", "threadlocker high strength green", "match"),
    ("red threadlocker", "threadlocker high strength red", "match"),
    ("red threadlocker", "threadlocker high strength", "match"),
    ("red threadlocker", "threadlocker blue", "none"),
    ("medium strength retaining compound", "retaining compound, high viscosity, medium strength", "match"),
    ("high strength retaining compound", "retaining compound, high viscosity, medium strength", "none"),
    ("threadlocker high strength", "semi-permanent threadlocker", "review"),
    ("threadlocker medium for M8 bolts", "threadlocker medium, M6-M20", "match"),
    ("threadlocker medium for M8 bolts", "threadlocker medium blue 10 ml", "match"),
    ("threadlocker medium for M8 bolts", "threadlocker medium, M36 max", "match"),
    ("threadlocker medium for M36 studs", "threadlocker medium, M6-M20", "none"),
    ("semi-permanent threadlocker", "threadlocker high strength", "review"),
    ("semi-permanent threadlocker", "semi-permanent threadlocker 50 ml", "match"),
    ("removable threadlocker", "threadlocker, can be removed with hand tools", "match"),
    ("bearing retaining compound", "bearing retainer plate", "none"),
    ("bearing retaining compound", "bush and bearing retainer green", "match"),
]

FILLED = [
    ("epoxy putty steel", "epoxy putty aluminium", "none"),
    ("steel putty", "epoxy putty aluminium", "none"),
    ("epoxy putty steel", "epoxy putty", "review"),
    ("steel-filled epoxy", "epoxy, aluminium filled", "none"),
    ("steel-filled epoxy", "epoxy, steel filled", "match"),
    ("epoxy for aluminium", "epoxy", "match"),
    ("five-minute epoxy", "epoxy 5 min", "match"),
    ("five-minute epoxy", "epoxy 24 hour", "none"),
    ("windscreen urethane, 1 hour drive-away", "windscreen urethane 4 h drive away", "none"),
    ("windscreen urethane, 1 hour drive-away", "windscreen urethane 1 h drive away", "match"),
]

# The part that a lubricant or a cleaner is for names the stuff, not the part.
STUFF = [
    ("brake pads", "brake pad lubricant", "none"),
    ("brake grease", "brake pad lubricant", "match"),
    ("brake grease", "anti-squeal compound for brake pads tube", "match"),
    ("brake pads", "brake pads front", "match"),
    ("O-ring", "o-ring grease 50g", "none"),
    ("grease", "o-ring grease 50g", "none"),
    ("brake disc", "DISC BRAKE QUIET PASTE", "none"),
    ("RTV gasket maker", "silicone gasket set", "none"),
    ("RTV gasket maker", "silicone gasket maker", "match"),
    ("silicone gasket maker", "silicone rubber sheet", "none"),
    ("RTV", "RTV flange sealant black", "match"),
    ("paint stripper", "paint stripper wheel disc", "none"),
    ("ultrasonic cleaning fluid", "ultrasonic cleaner 3 L", "none"),
    ("ultrasonic cleaner", "ultrasonic cleaner 3 L", "match"),
    ("isopropyl alcohol", "industrial alcohol", "none"),
    ("citrus degreaser", "orange oil degreaser 750 ml", "match"),
    ("panel wipe", "silicone & wax remover 5 l", "match"),
    ("DPF cleaner", "diesel particulate filter cleaning spray 400ml", "match"),
    ("compressed air duster can", "air duster, non flammable 400 ml", "match"),
    ("blow gun", "air duster, non flammable 400 ml", "none"),
    ("MS polymer sealant", "hybrid sealant ms white 290 ml", "match"),
]

# What a clip spans, its band and its finish; O-rings by their number in the inch series, SAE AS568 (from memory).
CLIPS = [
    ("hose clip 25-40 mm", "HOSE CLIP 25MM - 40MM", "match"),
    ("hose clip 25-40 mm", "HOSE CLIP 40MM - 60MM", "none"),
    ("hose clip 25-40 mm", "CLAMP,HOSE,WORM DRIVE: 25MM MIN 40MM MAX, 12MM BAND", "match"),
    ("hose clip 25-40 mm", "CLAMP,HOSE,WORM DRIVE: 32MM MIN 50MM MAX, 12MM BAND", "none"),
    ("hose clip 25-40, 12 mm band", "hose clip 25/40 x 12mm", "match"),
    ("hose clip 25-40, 12 mm band", "hose clip 25/40 x 9mm", "none"),
    ("2-ear clamp 15-18 mm, zinc plated steel", "CLIP 2 EAR 15-18MM ZP", "match"),
    ("2-ear clamp 15-18 mm, stainless", "CLIP 2 EAR 15-18MM ZP", "none"),
    ("steel hose clip 12-20", "hose clip zinc plated 12-20", "match"),
    ("O-ring AS568-210 nitrile", "ORING -210 NBR", "match"),
    ("O-ring AS568-210 nitrile", "ORING AS568A-211 NBR", "none"),
    ("o-ring #014 FKM", "O-RING FKM SIZE 014", "match"),
    ("o-ring #014 FKM", "O-RING FKM SIZE 114", "none"),
    ("eighteen by two and a half O-ring in FKM", "O-RING FKM 18 X 2.5", "match"),
    ("eighteen by two and a half O-ring in FKM", "O-RING FKM 18 X 2", "none"),
]

IN_FEW_WORDS = [
    ("antifreeze, OAT, neat not mixed", "Coolant conc. OAT pink", "match"),
    ("antifreeze, OAT, neat not mixed", "Coolant OAT premixed pink", "none"),
    ("5W-30, has to be C3", "Eng oil 5W-30 ACEA C3", "match"),
    ("5W-30, has to be C3", "Eng oil 5W-30 ACEA A3/B4", "none"),
    ("low strength threadlock", "Thr/lock low strength (purple)", "match"),
    ("low strength threadlock", "Thr/lock med strength (blue)", "none"),
    ("DOT 4 LV class 6", "Brake fl. DOT 4 LV (ISO 4925 Cl.6)", "match"),
    ("DOT 4 LV class 6", "Brake fl. DOT 4 (ISO 4925 Cl.4)", "review"),
    ('1" masking', "MASKING TAPE 25MM", "match"),
    ('1" masking', "DUST MASK", "none"),
    ("20-32 clip", "HOSE CLIP 20-32MM", "match"),
    ("20-32 clip", "HOSE CLIP 25-40MM", "none"),
    ("cu washer 14", "WASHER CU 14X20X1.5", "match"),
    ("cu washer 14", "WASHER CU 12X18X1.5", "none"),
    ("red extended life coolant, premix", "COOLANT OAT EXT LIFE RED 50/50 GAL", "match"),
    ("hand wipes", "HAND WIPES CITRUS WATERLESS 72CT TUB", "match"),
    ("EP grease number 1 cartridge", "EP GREASE NLGI 1 LITH COMPLEX 14OZ CARTRIDGE", "match"),
    ("lithium grease NLGI 2", "LITHIUM COMPLEX GREASE NLGI 2", "review"),
    ("green wicking grade for screws already in", "WICKING THREADLOCK GREEN 10ML", "match"),
    ("1/4 heat shrink with glue", "HEAT SHRINK 1/4 DUAL WALL ADHESIVE BLK 4FT", "match"),
    ("3/8 flat washers grade 8", "FLAT WASHER 3/8 SAE GR8", "match"),
    ("3/8 flat washers grade 8", "FLAT WASHER 3/8 SAE GR5", "review"),
    ("80 grit sheets", "SANDPAPER 9X11 80 GRIT", "match"),
    ("80 grit sheets", "SANDPAPER 9X11 120 GRIT", "none"),
    ("seam sealer", "Seam sealer, self leveling, cartridge", "match"),
    ("straight 30 weight non detergent", "Engine oil SAE 30 non-detergent quart", "match"),
    ("straight 30 weight non detergent", "Engine oil 10W-30 quart", "none"),
    ("muffler cement", "Exhaust system sealing cement", "match"),
    ("caliper slide pin lube ceramic", "Ceramic brake lubricant 8 oz brush top", "match"),
    ("quarter twenty by one inch grade 5", "Hex bolt 1/4-20 x 1 grade 5 zinc", "match"),
    ("quarter twenty by one inch grade 5", "Hex bolt 1/4-28 x 1 grade 5 zinc", "none"),
    ("brake cleaner, chlorinated", "B/CLEANER CHLOR 600G", "match"),
    ("sensor safe RTV black", "RTV S/SAFE BLK", "match"),
    ("P120 emery cloth", "E/CLOTH P120 ROLL", "match"),
    ("two ear clamp 13-15", "CLIP 2EAR 13-15", "match"),
    ("two ear clamp 13-15", "CLIP 1EAR 13-15", "none"),
    ("clear silicone sealant", "SIL SEAL CLR 310ML", "match"),
    ("anaerobic flange sealant", "ANA FLNG SEAL 50ML", "match"),
    ("14mm copper sump washer 1.5 thick", "cu washer 14x20x1.5", "match"),
    ("14mm copper sump washer 1.5 thick", "cu washer 14x20x2", "none"),
    ("fuel line clamp for 10mm hose", "fuel hose clip nut & bolt 9-11mm", "match"),
    ("lint free wipes", "Dry wipes, white, that shed no lint.", "match"),
    ("M8 x 25 bolts 8.8 x 12", "BOLT, HEX, M8 X 25, 8.8, ZINC", "match"),
    ("wheel nuts for Wren M12 x 1.5, set of 5", "WHEEL NUT, M12 X 1.5, CONICAL SEAT, WREN", "match"),
    ("P400 wet paper", "PAPER W&D P400 SHT", "match"),
    ("14 gauge wire red", "WIRE 14AWG RED", "match"),
    ("medium blue nitrile, 4mil", "GLOVE NITRILE BLUE 4MIL M 100CT", "match"),
    ("nitrile gloves XXL", "GLOVE NITRILE BLUE 4MIL M 100CT", "none"),
    ("black urethane seam sealer", "SEAM SLR URETHANE BLK 10OZ", "match"),
    ("#8 self driller, hex head 3/4", "SCREW SELF DRILL HEX WSHR HD #8X3/4", "match"),
    ("weatherstrip cement, black", "WEATHERSTRIP ADH BLK 5OZ", "match"),
    ("starting ether", "STARTING FLUID 11OZ", "match"),
    ("Tern pan gasket", "GSKT OIL PAN TERN", "match"),
    ("rubbing alcohol 99 percent quart", "ISOPROPYL ALC 99% 1QT", "match"),
    ("chlorinated brake parts cleaner", "BRAKE CLNR CHL 19OZ", "match"),
    ("80W GL-4 axle/gearbox", "Gear oil, SAE 80W, GL-4, 5 L", "match"),
    ("80W GL-4 axle/gearbox", "Gear oil, SAE 80W, GL-5, 5 L", "none"),
    ("VG46 hydraulic", "Hydraulic oil ISO VG 46 20 L", "match"),
    ("dielectric grease", "Dielectric grease, electrical connectors, 50 g", "match"),
    ("silicone spray aerosol", "Silicone spray 400ml", "match"),
    ("M12x1.25 40 long 10.9", "Bolt M12x1.25x40 10.9 fine", "match"),
    ("M8xl.25x30 bolt 10.9", "Hex bolt M8 x 1.25 x 30 class 10.9", "match"),
]


@over([*CLIPS, *IN_FEW_WORDS])
def test_clips_and_rings_are_told_by_all_their_measures(need: str, item: str, verdict: str) -> None:
    assert verdict_on(need, item, "consumable") == verdict


@over([*OVER_GLOVES, *GLOVE_SIZES])
def test_gloves_are_told_by_what_they_protect_from_and_by_their_size(need: str, item: str, verdict: str) -> None:
    assert verdict_on(need, item, "consumable") == verdict


@over(OILS)
def test_an_oil_is_told_by_its_grade_or_its_noun(need: str, item: str, verdict: str) -> None:
    assert verdict_on(need, item, "consumable") == verdict


@over([*CLAIMS, *LOCKERS, *FILLED])
def test_a_label_that_says_the_contrary_is_another_thing(need: str, item: str, verdict: str) -> None:
    assert verdict_on(need, item, "consumable") == verdict


@over(STUFF)
def test_what_a_stuff_is_for_is_not_what_it_is(need: str, item: str, verdict: str) -> None:
    assert verdict_on(need, item, "consumable") == verdict


@pytest.mark.parametrize(
    ("item", "shut_out"),
    [
        ("engine oil 20W-50 mineral", True),
        ("engine oil 20W-50", True),
        ("hydraulic mineral oil ISO 46", True),
        ("engine oil 5W-30 fully synthetic", False),
        ("brake fluid DOT 4", False),
    ],
)
def test_a_line_against_mineral_oil_holds_whatever_the_oil_is_for(item: str, shut_out: bool) -> None:
    assert forbidden(read("mineral oil"), read_item(item, "consumable")) == shut_out
