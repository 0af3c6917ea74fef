"""Our own labelled set: attributes written out in many notations, with a fixed seed, and pairs written by hand.

The labels come from the attributes alone, never from the reader. Notations are common practice of the trade.
"""

from __future__ import annotations

import random
from collections.abc import Callable
from dataclasses import dataclass, field

from cribkit.domain.wording import read_item
from tests.wording.by_hand import PAIRS
from tests.wording.scorer import Need, Stocked

SEED = 20260131


@dataclass(frozen=True)
class Thing:
    """An item by its attributes; None where its description leaves one open."""

    family: str
    values: dict[str, str | None] = field(hash=False)


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
            f"torx {size}" if size[0] == "T" else f"external torx {size}",
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
        {"tip": (("T20", "T25", "T27", "T30", "T40", "hex 5", "hex 6", "hex 8", "PH2"), tip), "drive": SQUARES},
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
        {"size": (("8x9", "10x11", "12x13", "14x15", "16x17", "18x19"), size_pair)},
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
                ("hex 4", "hex 5", "hex 6", "hex 8", "T20", "T25", "T30"),
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
            "thread": (("M6x1x20", "M8x1.25x25", "M8x1.25x30", "M10x1.5x40", "M10x1.25x40", "M12x1.75x50"), bolt),
            "grade": (("8.8", "10.9"), plain()),
        },
        ("thread",),
    ),
    "nut": Kind(
        "consumable",
        ("nyloc nut", "NUT, SELF-LOCKING, HEXAGON,", "nylon insert lock nut"),
        {"thread": (("M6", "M8", "M10", "M12"), plain())},
        ("thread",),
    ),
    "cotter": Kind(
        "consumable",
        ("cotter pin", "split pin", "PIN, COTTER,"),
        {
            "size": (
                ("2x20", "2.5x25", "3.2x40", "4x50"),
                lambda rng, value: value.replace("x", rng.choice([" x ", "x", " X "])) + " mm",
            )
        },
        ("size",),
    ),
    "crush-washer": Kind(
        "consumable",
        ("crush washer", "sealing washer"),
        {
            "size": (("12x16", "14x18", "14x20", "16x20"), size_pair),
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
                ("10x2", "12x2.5", "14x2.5", "20x3"),
                lambda rng, value: value.replace("x", rng.choice([" x ", "x"])) + "mm",
            ),
            "material": (
                ("nitrile", "viton"),
                lambda rng, value: {"nitrile": rng.choice(["NBR", "nitrile"]), "viton": rng.choice(["FKM", "viton"])}[
                    value
                ],
            ),
        },
        ("size",),
    ),
    "hose-clamp": Kind(
        "consumable",
        ("hose clip", "hose clamp", "worm drive clip", "jubilee clip"),
        {"range": (("8-16", "16-27", "25-40", "40-60"), plain("", "mm"))},
        ("range",),
    ),
    "tie": Kind(
        "consumable",
        ("cable tie", "zip tie", "nylon tie"),
        {
            "length": (
                ("100x2.5", "200x4.8", "300x4.8", "370x7.6"),
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
                ("0W-20", "5W-30", "5W-40", "10W-40"),
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
        ("sandpaper", "abrasive paper", "wet and dry paper", "emery cloth"),
        {
            "grit": (
                ("120", "240", "400", "1200"),
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
}


def written(rng: random.Random, thing: Thing) -> str:
    """A description in one of many notations: noun first or last, any order, any case, packing words."""
    kind = KINDS[thing.family]
    parts = [
        text for name, value in thing.values.items() if value is not None and (text := kind.fields[name][1](rng, value))
    ]
    rng.shuffle(parts)
    noun = rng.choice(kind.nouns)
    noun_first = noun.endswith(",") or rng.random() < 0.5
    joined = rng.choice([" ", ", "]).join(parts)
    text = f"{noun} {joined}" if noun_first else f"{joined} {noun}"
    return rng.choice([text, text, text.upper(), text.lower()])


def stocked(name: str, options: tuple[str, ...]) -> tuple[str, ...]:
    """The values that are stocked: the last ones are only ever asked for, so that needs without answer arise."""
    return options if name in ("depth", "points", "drive") else options[: -(1 + len(options) // 5)]


def some_things(rng: random.Random) -> list[Thing]:
    """About twenty different items of each family; one in six leaves an attribute open that it may."""
    found = []
    for family, kind in KINDS.items():
        seen = set()
        for _ in range(90):
            values: dict[str, str | None] = {
                name: rng.choice(stocked(name, options)) for name, (options, _) in kind.fields.items()
            }
            for name in values:
                if name not in kind.must and rng.random() < 0.17:
                    values[name] = None
            key = tuple(values.items())
            if key not in seen and len(seen) < 40:
                seen.add(key)
                found.append(Thing(family, values))
    return found


def asked(rng: random.Random, family: str) -> Thing:
    """A need of a family: some attributes are left open."""
    kind = KINDS[family]
    values: dict[str, str | None] = {name: rng.choice(options) for name, (options, _) in kind.fields.items()}
    for name in values:
        if (name not in kind.must and rng.random() < 0.4) or (name == "depth" and values[name] == "standard"):
            values[name] = None
    return Thing(family, values)


def verdict(need: Thing, item: Thing) -> str:
    """right, doubt or wrong by the attributes alone."""
    if need.family != item.family:
        impact = {need.family, item.family} == {"socket", "impact-socket"} and need.family == "socket"
        if not impact:
            return "wrong"
    doubt = False
    for name, value in need.values.items():
        has = item.values.get(name, KINDS[need.family].default.get(name))
        if value is not None and has is None:
            doubt = True
        elif value is not None and not agrees(name, need.family, value, str(has)):
            return "wrong"
    if need.family != item.family:
        return "either"
    return "doubt" if doubt else "right"


NM = {"Nm": 1.0, "in-lb": 0.1129848, "ft-lb": 1.3558179}  # NIST SP 811


def agrees(name: str, family: str, asked_value: str, has: str) -> bool:
    if family != "torque-wrench" or name != "range":
        return asked_value == has
    (low, high), (bottom, top) = ends(asked_value), ends(has)
    return bottom <= low * 1.02 and top >= high * 0.98


def ends(text: str) -> tuple[float, float]:
    numbers, unit = text.split(" ")
    low, high = (float(part) * NM[unit] for part in numbers.split("-"))
    return low, high


def own_set() -> tuple[list[Stocked], list[Need]]:
    """The items and the needs, always the same."""
    rng = random.Random(SEED)
    things = some_things(rng)
    texts = [written(rng, thing) for thing in things]
    tags = [f"G{number:04}" for number in range(len(things))]
    items = [
        Stocked(tag, text, read_item(text, KINDS[thing.family].kind))
        for tag, text, thing in zip(tags, texts, things, strict=True)
    ]
    needs = []
    for family in KINDS:
        for _ in range(18):
            need = asked(rng, family)
            told: dict[str, set[str]] = {"right": set(), "doubt": set(), "either": set(), "wrong": set()}
            for tag, thing in zip(tags, things, strict=True):
                told[verdict(need, thing)].add(tag)
            text = written(rng, need)
            needs.append(
                Need(
                    text,
                    KINDS[family].kind,
                    family,
                    frozenset(told["right"]),
                    frozenset(told["doubt"]),
                    frozenset(told["either"]),
                )
            )
    return items, needs


__all__ = ["PAIRS", "own_set"]
