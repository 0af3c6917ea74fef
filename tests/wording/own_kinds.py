"""The families of our own labelled set: for each its nouns, its attributes, and how the trade writes them.

Notations are common practice of the trade, no source.
"""

from __future__ import annotations

import random
from collections.abc import Callable
from dataclasses import dataclass, field


def inch(rng: random.Random, size: str) -> str:
    return rng.choice([f'{size}"', f"{size} in", f"{size}IN", f"{size} inch", size, f"{size}-inch"])


def mm(rng: random.Random, size: str) -> str:
    return rng.choice(
        [f"{size}mm", f"{size} mm", f"{size}MM", f"{size} MM", f"{size}.0mm" if "." not in size else f"{size}mm"]
    )


def spoken(rng: random.Random, size: str) -> str:
    words = {
        "8": "eight",
        "10": "ten",
        "11": "eleven",
        "12": "twelve",
        "13": "thirteen",
        "17": "seventeen",
        "19": "nineteen",
        "21": "twenty one",
    }
    return f"{words[size]} mil" if size in words and rng.random() < 0.2 else mm(rng, size)


SQUARE_MM = {"1/4": "6.3", "3/8": "10", "1/2": "12.5", "3/4": "20"}
SPOKEN_SQUARE = {"1/4": "quarter inch", "3/8": "three eighths", "1/2": "half inch", "3/4": "three quarter"}


def square(rng: random.Random, size: str) -> str:
    return rng.choice(
        [
            f"{size}DR",
            f"{size} dr",
            f"{size} drive",
            f'{size}" dr',
            f"{size} sq dr",
            f"{size} SQ",
            f"{size} square drive",
            f"{size}-inch drive",
            f"{SQUARE_MM[size]} mm square drive",
            f"{SPOKEN_SQUARE[size]} drive",
        ]
    )


def across(rng: random.Random, size: str) -> str:
    value, _, unit = size.rpartition(" ")
    return spoken(rng, value) if unit == "mm" else inch(rng, value)


def tip(rng: random.Random, size: str) -> str:
    if size.startswith("hex"):
        return f"{mm(rng, size.split()[1])} {rng.choice(['hex bit', 'allen', 'in-hex', 'internal hex'])}"
    if size.startswith("PH"):
        return rng.choice([size, f"phillips {size[2:]}", f"#{size[2:]} phillips", f"No.{size[2:]} cross head"])
    return rng.choice(
        [
            size,
            size.lower(),
            f"{size[0]}-{size[1:]}",
            f"six-lobe {size}" if size[0] == "T" else f"external six-lobe {size}",
            f"TX{size[1:]}" if size[0] == "T" else size,
        ]
    )


def either(*words: str) -> Callable[[random.Random, str], str]:
    return lambda rng, _: rng.choice(words)


def plain(before: str = "", after: str = "") -> Callable[[random.Random, str], str]:
    return lambda rng, value: f"{before}{value}{after}"


def size_pair(rng: random.Random, value: str) -> str:
    one, other = value.split("x")
    return rng.choice([f"{one}x{other}mm", f"{one} x {other} mm", f"{one}/{other}mm", f"{one} X {other}"])


def bolt(rng: random.Random, value: str) -> str:
    return rng.choice(
        [value, value.lower(), value.replace("x", " x "), value.replace(".", ","), value.replace("x", " X ") + " mm"]
    )


def bolt_size(rng: random.Random, value: str) -> str:
    return rng.choice([value, value.lower(), value.replace("x", " x "), value.replace(".", ",")])


@dataclass(frozen=True)
class Kind:
    """A family: its nouns, and for each attribute its values and how they are written."""

    kind: str
    nouns: tuple[str, ...]
    fields: dict[str, tuple[tuple[str, ...], Callable[[random.Random, str], str]]] = field(hash=False)
    must: tuple[str, ...]  # attributes that a description always has
    default: dict[str, str] = field(default_factory=dict, hash=False)  # what an open attribute is taken to be


DEPTH = (
    ("standard", "deep"),
    lambda rng, value: rng.choice(["deep", "DP", "deep well", "long reach"]) if value == "deep" else "",
)
POINTS = (
    ("6", "12"),
    lambda rng, value: rng.choice(
        [f"{value}PT", f"{value} pt", f"{value}-point", f"{value} point", "bi-hex" if value == "12" else "single hex"]
    ),
)
SQUARES = (("1/4", "3/8", "1/2"), square)
SIZES = (
    *tuple(f"{size} mm" for size in ("8", "9", "10", "11", "12", "13", "14", "17", "19", "21")),
    "5/16 in",
    "3/8 in",
    "7/16 in",
    "9/16 in",
    "5/8 in",
    "11/16 in",
    "13/16 in",
)
KINDS: dict[str, Kind] = {
    "socket": Kind(
        "tool",
        ("socket", "SKT", "Sckt", "SOCKET, SOCKET WRENCH,", "sockets"),
        {"size": (SIZES, across), "drive": SQUARES, "depth": DEPTH, "points": POINTS},
        ("size", "depth"),
        {"depth": "standard"},
    ),
    "impact-socket": Kind(
        "tool",
        ("impact socket", "IMP SKT", "SOCKET, IMPACT,"),
        {"size": (SIZES, across), "drive": SQUARES, "depth": DEPTH},
        ("size", "drive", "depth"),
        {"depth": "standard"},
    ),
    "lobe-socket": Kind(
        "tool",
        ("socket", "SKT", "external six-lobe socket"),
        {"tip": (("E8", "E10", "E12", "E14"), tip), "drive": SQUARES},
        ("tip",),
    ),
    "bit-socket": Kind(
        "tool",
        ("bit socket", "BIT SKT", "socket bit"),
        {
            "tip": (
                (
                    "T20",
                    "T25",
                    "T27",
                    "T30",
                    "T40",
                    "T45",
                    "T50",
                    "hex 4",
                    "hex 5",
                    "hex 6",
                    "hex 7",
                    "hex 8",
                    "hex 10",
                    "PH2",
                ),
                tip,
            ),
            "drive": SQUARES,
        },
        ("tip",),
    ),
    "combination": Kind(
        "tool",
        (
            "combination spanner",
            "comb wrench",
            "COMBI SPNR",
            "WRENCH, BOX AND OPEN END, COMBINATION,",
            "combination wrench",
        ),
        {"size": (SIZES, across)},
        ("size",),
    ),
    "open-end": Kind(
        "tool",
        ("open ended spanner", "open-end wrench", "WRENCH, OPEN END,", "O/E spanner"),
        {"size": (("6x7", "8x9", "8x10", "10x11", "10x13", "12x13", "14x15", "16x17", "18x19", "21x23"), size_pair)},
        ("size",),
    ),
    "flare": Kind(
        "tool",
        ("flare nut spanner", "flare-nut wrench", "WRENCH, FLARE NUT,", "brake pipe spanner"),
        {"size": (("8x10", "9x11", "10x12", "13x14"), size_pair)},
        ("size",),
    ),
    "crowfoot": Kind(
        "tool",
        ("crowfoot", "crow foot wrench", "CROWFOOT ATTACHMENT, SOCKET WRENCH,"),
        {"size": (SIZES, across), "drive": SQUARES},
        ("size", "drive"),
    ),
    "ratchet": Kind(
        "tool",
        ("ratchet", "ratchet handle", "HANDLE, SOCKET WRENCH, RATCHET,", "reversible ratchet"),
        {"drive": (("1/4", "3/8", "1/2", "3/4"), square)},
        ("drive",),
    ),
    "breaker-bar": Kind(
        "tool",
        ("breaker bar", "knuckle bar", "HANDLE, HINGED, SOCKET WRENCH,"),
        {"drive": (("3/8", "1/2", "3/4"), square)},
        ("drive",),
    ),
    "extension": Kind(
        "tool",
        ("extension", "EXTN", "extension bar", "EXTENSION, SOCKET WRENCH,"),
        {
            "drive": SQUARES,
            "length": (
                ("75", "150", "250"),
                lambda rng, value: rng.choice(
                    [
                        f"{value}mm",
                        f"{value} mm",
                        f'{ {"75": 3, "150": 6, "250": 10}[value] }"',
                        f"{ {'75': 3, '150': 6, '250': 10}[value] } in",
                    ]
                ),
            ),
        },
        ("drive",),
    ),
    "joint": Kind(
        "tool",
        ("universal joint", "uni joint", "UNIVERSAL JOINT, SOCKET WRENCH,", "U-joint"),
        {"drive": SQUARES},
        ("drive",),
    ),
    "adapter": Kind(
        "tool",
        ("adapter", "adaptor", "ADAPTER, SOCKET WRENCH,"),
        {
            "ends": (
                ("1/4>3/8", "3/8>1/4", "3/8>1/2", "1/2>3/8", "1/2>3/4", "3/4>1/2"),
                lambda rng, value: rng.choice(
                    [
                        "{0}F x {1}M",
                        "{0} F to {1} M",
                        "{0} female x {1} male",
                        "{1}M x {0}F",
                        "{0} to {1}",
                        "male {1}, female {0}",
                    ]
                ).format(*value.split(">")),
            )
        },
        ("ends",),
    ),
    "key": Kind(
        "tool",
        ("key", "L-key", "wrench key"),
        {
            "tip": (
                ("hex 2.5", "hex 3", "hex 4", "hex 5", "hex 6", "hex 8", "hex 10", "T10", "T15", "T20", "T25", "T30"),
                lambda rng, value: (
                    f"{mm(rng, value.split()[1])} {rng.choice(['allen', 'hex'])}" if value.startswith("hex") else value
                ),
            )
        },
        ("tip",),
    ),
    "screwdriver": Kind(
        "tool",
        ("screwdriver", "s/driver", "SCREWDRIVER,"),
        {
            "tip": (
                ("PH1", "PH2", "PH3", "PZ1", "PZ2", "T15", "T20"),
                lambda rng, value: (
                    value
                    if value[:2] != "PH"
                    else rng.choice([value, f"phillips #{value[2]}", f"cross tip no {value[2]}"])
                ),
            )
        },
        ("tip",),
    ),
    "nut-driver": Kind(
        "tool",
        ("nut driver", "nut spinner", "nutdriver"),
        {"size": (("6 mm", "7 mm", "8 mm", "10 mm", "1/4 in", "5/16 in"), across)},
        ("size",),
    ),
    "torque-wrench": Kind(
        "tool",
        ("torque wrench", "WRENCH, TORQUE,", "torque wrench, adjustable"),
        {
            "range": (("5-25 Nm", "10-60 Nm", "20-100 Nm", "40-200 Nm", "30-150 in-lb", "10-75 ft-lb"), plain()),
            "drive": SQUARES,
        },
        ("range", "drive"),
    ),
    "bolt": Kind(
        "consumable",
        ("bolt", "hex bolt", "BOLT, MACHINE,", "hex head bolt"),
        {
            "thread": (
                (
                    "M5x0.8x16",
                    "M6x1x16",
                    "M6x1x20",
                    "M6x1x30",
                    "M8x1.25x25",
                    "M8x1.25x30",
                    "M8x1.25x40",
                    "M10x1.5x40",
                    "M10x1.25x40",
                    "M12x1.75x50",
                    "M12x1.25x50",
                ),
                bolt,
            ),
            "grade": (("8.8", "10.9"), plain()),
        },
        ("thread",),
    ),
    "nut": Kind(
        "consumable",
        ("nylon lock nut", "NUT, SELF-LOCKING, NYLON INSERT, HEXAGON,", "nylon insert lock nut"),
        {"thread": (("M6", "M8", "M10", "M12"), plain())},
        ("thread",),
    ),
    "cotter": Kind(
        "consumable",
        ("cotter pin", "split pin", "PIN, COTTER,"),
        {
            "size": (
                ("1.6x20", "2x20", "2x25", "2.5x25", "3.2x32", "3.2x40", "4x40", "4x50"),
                lambda rng, value: value.replace("x", rng.choice([" x ", "x", " X "])) + " mm",
            )
        },
        ("size",),
    ),
    "crush-washer": Kind(
        "consumable",
        ("crush washer", "sealing washer"),
        {
            "size": (("8x12", "10x14", "12x16", "12x18", "14x18", "14x20", "16x20", "18x22"), size_pair),
            "material": (
                ("copper", "aluminium"),
                lambda rng, value: (
                    rng.choice(["copper", "CU"]) if value == "copper" else rng.choice(["aluminium", "aluminum", "alum"])
                ),
            ),
        },
        ("size", "material"),
    ),
    "o-ring": Kind(
        "consumable",
        ("O-ring", "o ring", "PACKING, PREFORMED,"),
        {
            "size": (
                ("8x2", "10x2", "10x2.5", "12x2", "12x2.5", "14x2.5", "16x2.5", "20x3"),
                lambda rng, value: value.replace("x", rng.choice([" x ", "x"])) + "mm",
            ),
            "material": (
                ("nitrile", "fkm"),
                lambda rng, value: rng.choice({"nitrile": ["NBR", "nitrile"], "fkm": ["FKM", "fluororubber"]}[value]),
            ),
        },
        ("size",),
    ),
    "hose-clamp": Kind(
        "consumable",
        ("hose clip", "hose clamp", "worm drive clip", "worm clip"),
        {"range": (("8-16", "12-20", "16-27", "20-32", "25-40", "32-50", "40-60"), plain("", "mm"))},
        ("range",),
    ),
    "tie": Kind(
        "consumable",
        ("cable tie", "zip tie", "nylon tie"),
        {
            "length": (
                ("100x2.5", "140x3.6", "200x3.6", "200x4.8", "300x4.8", "370x4.8", "370x7.6"),
                lambda rng, value: value.replace("x", rng.choice([" x ", "x"])) + " mm",
            )
        },
        ("length",),
    ),
    "engine-oil": Kind(
        "consumable",
        ("engine oil", "motor oil", "LUBRICATING OIL, ENGINE,"),
        {
            "grade": (
                ("0W-20", "0W-30", "5W-20", "5W-30", "5W-40", "10W-40", "15W-40"),
                lambda rng, value: rng.choice([value, value.replace("-", ""), value.lower(), "SAE " + value]),
            )
        },
        ("grade",),
    ),
    "brake-fluid": Kind(
        "consumable",
        ("brake fluid", "BRAKE FLUID, AUTOMOTIVE,", "brake and clutch fluid"),
        {"dot": (("3", "4", "5.1"), lambda rng, value: rng.choice([f"DOT {value}", f"DOT{value}", f"dot-{value}"]))},
        ("dot",),
    ),
    "threadlocker": Kind(
        "consumable",
        ("threadlocker", "thread lock", "threadlocking compound"),
        {
            "strength": (
                ("low", "medium", "high"),
                lambda rng, value: rng.choice(
                    [f"{value} strength", {"low": "purple", "medium": "blue", "high": "red"}[value]]
                ),
            )
        },
        ("strength",),
    ),
    "gloves": Kind(
        "consumable",
        ("gloves", "disposable gloves", "GLOVES,"),
        {
            "material": (("nitrile", "latex"), plain()),
            "size": (
                ("M", "L", "XL"),
                lambda rng, value: rng.choice(
                    [value, f"size {value}", {"M": "medium", "L": "large", "XL": "extra large"}[value]]
                ),
            ),
        },
        ("material", "size"),
    ),
    "sandpaper": Kind(
        "consumable",
        ("sandpaper", "abrasive paper", "abrasive sheet", "sanding paper"),
        {
            "grit": (
                ("60", "80", "120", "180", "240", "400", "800", "1200"),
                lambda rng, value: rng.choice([f"P{value}", f"{value} grit", f"grit {value}"]),
            )
        },
        ("grit",),
    ),
    "anti-seize": Kind(
        "consumable",
        ("anti-seize", "antiseize compound", "anti seize paste"),
        {"metal": (("copper", "nickel", "aluminium"), plain())},
        ("metal",),
    ),
    "coolant": Kind(
        "consumable",
        ("coolant", "antifreeze", "engine coolant"),
        {"technology": (("OAT", "HOAT", "IAT"), plain())},
        ("technology",),
    ),
    "rtv": Kind(
        "consumable",
        ("RTV silicone", "silicone sealant RTV", "RTV gasket maker"),
        {"colour": (("black", "grey", "red"), plain())},
        ("colour",),
    ),
    "spark-plug-socket": Kind(
        "tool",
        ("spark plug socket", "SPARK PLUG SKT", "plug socket, spark", "SOCKET, SPARK PLUG,"),
        {"size": (("14 mm", "16 mm", "18 mm", "21 mm", "5/8 in", "13/16 in"), across), "drive": SQUARES},
        ("size", "drive"),
    ),
    "ring-spanner": Kind(
        "tool",
        ("ring spanner", "WRENCH, BOX,", "box end wrench", "double ring spanner"),
        {"size": (("8x10", "10x11", "12x13", "14x15", "16x17", "17x19"), size_pair)},
        ("size",),
    ),
    "circlip-pliers": Kind(
        "tool",
        ("circlip pliers", "PLIERS, RETAINING RING,", "snap ring pliers"),
        {
            "way": (
                ("internal", "external"),
                lambda rng, value: rng.choice([value, value[:3], f"for {value} rings"]),
            ),
            "tips": (
                ("straight", "90"),
                lambda rng, value: (
                    rng.choice(["straight", "straight tips", "STR"])
                    if value == "straight"
                    else rng.choice(["90 deg", "90° tips", "90 degree bent"])
                ),
            ),
        },
        ("way",),
    ),
    "ball-hammer": Kind(
        "tool",
        ("ball pein hammer", "ball peen hammer", "HAMMER, HAND, BALL PEEN,", "B/PEIN HAMMER"),
        {
            "weight": (
                ("8 oz", "16 oz", "24 oz", "32 oz"),
                lambda rng, value: rng.choice([value, value.replace(" ", "")]),
            )
        },
        ("weight",),
    ),
    "pin-punch": Kind(
        "tool",
        ("pin punch", "PUNCH, DRIVE PIN,", "parallel pin punch"),
        {"size": (("2 mm", "3 mm", "4 mm", "5 mm", "6 mm", "8 mm"), across)},
        ("size",),
    ),
    "drill": Kind(
        "tool",
        ("drill bit", "twist drill", "DRILL, TWIST,"),
        {
            "size": (
                (
                    "2 mm",
                    "2.5 mm",
                    "3 mm",
                    "3.3 mm",
                    "4 mm",
                    "4.2 mm",
                    "5 mm",
                    "6 mm",
                    "6.8 mm",
                    "8.5 mm",
                    "10.2 mm",
                    "1/4 in",
                    "3/8 in",
                ),
                across,
            ),
            "material": (("HSS", "cobalt"), lambda rng, value: rng.choice(["HSS", "hss"]) if value == "HSS" else value),
        },
        ("size",),
        {"material": "HSS"},
    ),
    "tap": Kind(
        "tool",
        ("tap", "hand tap", "TAP, THREAD CUTTING,"),
        {
            "thread": (("M6x1", "M8x1.25", "M10x1.25", "M10x1.5", "M12x1.5", "M12x1.75"), bolt_size),
            "form": (("taper", "bottoming"), plain()),
        },
        ("thread",),
    ),
    "die": Kind(
        "tool",
        ("die", "thread die", "DIE, THREAD CUTTING,"),
        {"thread": (("M6x1", "M8x1.25", "M10x1.25", "M10x1.5", "M12x1.5"), bolt_size)},
        ("thread",),
    ),
    "micrometer": Kind(
        "tool",
        ("outside micrometer", "micrometer, outside", "MICROMETER, CALIPER, OUTSIDE,"),
        {"range": (("0-25", "25-50", "50-75", "75-100"), plain("", " mm"))},
        ("range",),
    ),
    "vernier": Kind(
        "tool",
        ("vernier caliper", "vernier calipers", "CALIPER, VERNIER,"),
        {"length": (("150 mm", "200 mm", "300 mm"), across)},
        ("length",),
    ),
    "filter-cup": Kind(
        "tool",
        ("oil filter cup wrench", "oil filter cap wrench", "filter cup, oil"),
        {
            "size": (("65 mm", "74 mm", "76 mm", "86 mm"), across),
            "flutes": (
                ("14", "15", "16"),
                lambda rng, value: rng.choice([f"{value} flutes", f"{value} flute", f"{value}FL"]),
            ),
        },
        ("size",),
    ),
    "puller": Kind(
        "tool",
        ("puller", "gear puller", "PULLER, MECHANICAL,"),
        {
            "jaws": (("2", "3"), lambda rng, value: rng.choice([f"{value} jaw", f"{value}-jaw", f"{value} leg"])),
            "reach": (("100 mm", "150 mm", "200 mm"), across),
        },
        ("jaws", "reach"),
    ),
    "axle-stand": Kind(
        "tool",
        ("axle stand", "jack stand", "axle stands"),
        {"load": (("2", "3", "6", "10"), lambda rng, value: rng.choice([f"{value} t", f"{value}T", f"{value} tonne"]))},
        ("load",),
    ),
    "bottle-jack": Kind(
        "tool",
        ("bottle jack", "hydraulic bottle jack", "JACK, HYDRAULIC, BOTTLE,"),
        {
            "load": (
                ("4", "6", "10", "20"),
                lambda rng, value: rng.choice([f"{value} t", f"{value}T", f"{value} tonne"]),
            )
        },
        ("load",),
    ),
    "flat-screwdriver": Kind(
        "tool",
        ("slotted screwdriver", "flat blade screwdriver", "SCREWDRIVER, FLAT TIP,"),
        {"width": (("3 mm", "5.5 mm", "6.5 mm", "8 mm", "10 mm"), across)},
        ("width",),
    ),
    "gear-oil": Kind(
        "consumable",
        ("gear oil", "LUBRICATING OIL, GEAR,", "transmission oil, manual"),
        {
            "grade": (("75W-80", "75W-90", "80W-90"), lambda rng, value: rng.choice([value, value.replace("-", "")])),
            "class": (
                ("GL-4", "GL-5"),
                lambda rng, value: rng.choice([value, value.replace("-", ""), value.replace("-", " ")]),
            ),
        },
        ("grade",),
    ),
    "retaining": Kind(
        "consumable",
        ("retaining compound", "bearing retainer compound"),
        {"strength": (("medium", "high"), lambda rng, value: f"{value} strength")},
        ("strength",),
    ),
    "flat-washer": Kind(
        "consumable",
        ("flat washer", "WASHER, FLAT,", "plain washer"),
        {
            "thread": (("M5", "M6", "M8", "M10", "M12"), plain()),
            "material": (("stainless", "copper"), plain()),
        },
        ("thread", "material"),
    ),
    "spring-washer": Kind(
        "consumable",
        ("spring washer", "WASHER, LOCK, SPLIT,", "split lock washer"),
        {"thread": (("M5", "M6", "M8", "M10", "M12"), plain())},
        ("thread",),
    ),
    "blade-fuse": Kind(
        "consumable",
        ("blade fuse", "FUSE, BLADE,", "automotive blade fuse"),
        {
            "body": (("mini", "standard"), plain()),
            "rating": (
                ("5", "10", "15", "20", "30"),
                lambda rng, value: rng.choice([f"{value}A", f"{value} A", f"{value} amp"]),
            ),
        },
        ("body", "rating"),
    ),
    "bulb": Kind(
        "consumable",
        ("bulb", "LAMP, INCANDESCENT,", "headlamp bulb"),
        {
            "cap": (("H1", "H4", "H7", "H11"), plain()),
            "voltage": (("12", "24"), lambda rng, value: rng.choice([f"{value}V", f"{value} V", f"{value} volt"])),
        },
        ("cap", "voltage"),
    ),
    "masking-tape": Kind(
        "consumable",
        ("masking tape", "TAPE, PRESSURE SENSITIVE, MASKING,"),
        {"width": (("19", "25", "38", "50"), lambda rng, value: rng.choice([f"{value}mm", f"{value} mm"]) + " x 50 m")},
        ("width",),
    ),
    "fuel-hose": Kind(
        "consumable",
        ("fuel hose", "HOSE, FUEL,", "fuel line hose"),
        {
            "bore": (
                ("6", "8", "10", "12"),
                lambda rng, value: rng.choice([f"{value}mm bore", f"{value} mm ID", f"ID {value}mm"]),
            )
        },
        ("bore",),
    ),
    "heat-shrink": Kind(
        "consumable",
        ("heat shrink", "heat shrink tubing", "heatshrink sleeve"),
        {"bore": (("3 mm", "4.8 mm", "6 mm", "9 mm", "12 mm"), across)},
        ("bore",),
    ),
    "socket-screw": Kind(
        "consumable",
        ("socket cap screw", "SCREW, CAP, SOCKET HEAD,", "allen bolt", "cap head screw"),
        {
            "thread": (("M5x0.8x16", "M6x1x16", "M6x1x20", "M8x1.25x20", "M8x1.25x30"), bolt),
            "grade": (("8.8", "12.9"), plain()),
        },
        ("thread",),
    ),
    "grease": Kind(
        "consumable",
        ("grease", "GREASE, AUTOMOTIVE AND ARTILLERY,", "general purpose grease"),
        {
            "thickener": (("lithium", "lithium complex", "calcium"), plain()),
            "nlgi": (
                ("1", "2", "3"),
                lambda rng, value: rng.choice([f"NLGI {value}", f"NLGI{value}", f"NLGI no. {value}"]),
            ),
        },
        ("thickener",),
    ),
}
