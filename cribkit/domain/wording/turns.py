"""What numbers, codes and words beside the name say about the family: a key with a square is a bit socket."""

from __future__ import annotations

import re
from collections.abc import Callable
from itertools import pairwise
from typing import NamedTuple

from cribkit.domain.wording.reading import Reading
from cribkit.domain.wording.sizes import square
from cribkit.domain.wording.squares import metric


class Turn(NamedTuple):
    """A reading of one of these families is one of another where `when` holds; the words of `uses` are then read."""

    families: frozenset[str]
    to: str
    when: Callable[[Reading], bool]
    uses: tuple[str, ...] = ()
    frees: tuple[str, ...] = ()  # words of the old name that say something of the new thing


def _swivels(reading: Reading) -> bool:
    """Whether a joint is built into a socket: its own word, or that of the joint."""
    return reading.has_said("swivel", "ujoint")


def turn(
    families: str, to: str, when: Callable[[Reading], bool], uses: tuple[str, ...] = (), frees: tuple[str, ...] = ()
) -> Turn:
    """The same with the families in one text; "" stands for a reading without one."""
    return Turn(frozenset(families.split() or [""]), to, when, uses, frees)


def settle(reading: Reading) -> None:
    """The family that numbers, codes and other words make of the one that the name says, or of none."""
    for one in TURNS:
        if reading.family in one.families:
            _follow(reading, one)
    if not any(reading.family in one.families and _follow(reading, one) for one in ENDS) and not reading.family:
        reading.family = _by_grade(reading)
    if reading.family == "lobe-socket" and _tip(reading) and not _outside(reading):
        reading.doubts.append(f"external {_tip(reading)}")


def _follow(reading: Reading, one: Turn) -> bool:
    applies = one.when(reading)
    if applies:
        reading.family = one.to
        reading.use(*one.uses)
        reading.name -= set(one.frees)
    return applies


def _said(*words: str) -> Callable[[Reading], bool]:
    return lambda reading: reading.has_said(*words)


def _has(*words: str) -> Callable[[Reading], bool]:
    return lambda reading: reading.has(*words)


def _written(pattern: str) -> Callable[[Reading], bool]:
    found = re.compile(pattern)
    return lambda reading: found.search(reading.text.lower()) is not None


def _tokens(*kinds: str) -> Callable[[Reading], bool]:
    return lambda reading: any(token.kind in kinds for token in reading.tokens)


def _only_for(reading: Reading, word: str) -> bool:
    """Whether the word stands only after "for" and its like."""
    return all(said.aside for said in reading.words if said.word == word)


def _driven(reading: Reading) -> bool:
    return "drive" in reading.attributes


def _tip(reading: Reading) -> str:
    return reading.attributes.get("tip", "")


def _outside(reading: Reading) -> bool:
    """Whether the tip is an external six-lobe."""
    return _tip(reading).startswith("E")


def _by(reading: Reading) -> bool:
    """Whether two measures stand there, one by the other."""
    return any(group.relation == "by" for group in reading.numbers())


def _male(reading: Reading) -> bool:
    return any(token.gender == "m" or token.text == "male" for token in reading.tokens)


# From this winter grade on SAE viscosities are those of gear oils, SAE J306 (from memory).
LEAST_GEAR = 70


def _thick(reading: Reading) -> bool:
    grades = (token.values[0] for token in reading.tokens if token.kind == "visc")
    return any(grade and int(grade) >= LEAST_GEAR for grade in grades)


def _eight_points(reading: Reading) -> bool:
    eight = any(token.kind == "points" and token.values[0] == "8" for token in reading.tokens)
    return eight or reading.has_said("eightpoint")


def _inch_hex(reading: Reading) -> bool:
    """ "3/8-16 x 1 cap screw": in inches a cap screw has a hexagon head unless a socket is said."""
    plain = any(
        said.word == "capscrew" and said.text in ("cap screw", "screw cap", "cap screws") for said in reading.words
    )
    return plain and any(token.kind == "unc" for token in reading.tokens)


_WITH_BASE = _written(r"\b(?:dial|dti|indicator|gauge)\b.*(?:\band|\bwith|\bw/|\+|&|,) ?(?:an? |the )?mag")


def _dial_with_base(reading: Reading) -> bool:
    ranged = reading.has("dial") and any(one.relation == "range" for one in reading.numbers())
    return ranged or _WITH_BASE(reading)


def _scale(reading: Reading) -> bool:
    """Whether a range of torques stands there."""
    return any(token.kind == "torque" and len(token.values) == 2 for token in reading.tokens)


def _hex_driver(reading: Reading) -> bool:
    """Whether a driver for hexagons is named, and no key."""
    named = any(said.text in ("hex driver", "hexagon driver") and not said.aside for said in reading.words)
    return named and not reading.has_said("key", "wrenchkey", "wrench", "tbar", "l")


def _joint_alone(reading: Reading) -> bool:
    """ "swivel 3/8 dr": a square, and a word that only joints go by without a noun."""
    words = {said.word for said in reading.words} - {"drive", "square", "impact", "x", "to", "springloaded", "a", "the"}
    return _driven(reading) and words in ({"swivel"}, {"universal"}, {"knuckle"}) and not reading.numbers()


_SOCKET_DRIVER = _written(r"\bsocket driver\b")


# Words for joints and swivels.
_SWIVELS = ("swivel", "ujoint", "flexible", "universal", "wobble")


def _alongside(*words: str) -> Callable[[Reading], bool]:
    """Whether one of the words stands there, neither denied nor after "with" and "for"."""
    return lambda reading: any(said.word in words for said in reading.beside())


_UNDER_TENSION = _said("hv", "voltage", "insulating", "electrical", "vde", "overglove")


def _over_gloves(reading: Reading) -> bool:
    """Leather does not insulate: beside gloves for high voltage it is worn over them, IEC 60903 (from memory)."""
    if _alongside("overglove")(reading):
        return True
    classed = any(token.kind == "class" for token in reading.tokens)
    return _alongside("leather", "syntheticleather")(reading) and (classed or _UNDER_TENSION(reading))


# Words that tell an engine oil where no grade stands, and the classes that only engine oils have.
_ENGINE_WORDS = _said(
    "engineoil",
    "engine",
    "petrol",
    "diesel",
    "twostroke",
    "fourstroke",
    "multigrade",
    "motorcycle",
    "api",
    "acea",
    "lowsaps",
    "midsaps",
    "fullsaps",
)


def _of_no_engine(reading: Reading) -> bool:
    """ "white oil", "lubricating oil, instrument": an oil that neither a grade nor a word tells as an engine's."""
    return not (_tokens("visc")(reading) or _ENGINE_WORDS(reading))


# What has a gasket of its own: paper is then what that is of.
_GASKETED = (
    "waterpump",
    "thermostat",
    "thermostathousing",
    "sump",
    "rockercover",
    "manifold",
    "carburettor",
    "throttlebody",
    "diff",
    "axle",
    "cover",
)

_GLOVE_SIZES = frozenset({"xs", "s", "m", "l", "xl", "xxl", "small", "medium", "large", "powderfree", "powdered"})


def _glove_size(reading: Reading) -> bool:
    """Whether a size of gloves or their powder is told."""
    return any(said.text in _GLOVE_SIZES or said.word in _GLOVE_SIZES for said in reading.words)


# Each is looked at in this order, and one may follow on another. Common practice of the trade, no source.
# Codes of bulbs that nothing else has, UN ECE R37 and R99 (from memory).
_BULB_CODE = re.compile(r"\b(?:p21/?5?w|py21w|w[35]w|wy5w|w16w|r(?:5|10)w|c(?:5|10)w|t4w|d[1-4][sr])\b")


# A cleaner that is sprayed is no brush.
_SPRAYED_CLEANER = r"\b(?:cleaner|clnr)\b.*\b(?:spray|aerosol|foam)\b|\b(?:spray|aerosol|foam)\b.*\b(?:cleaner|clnr)\b"


TURNS = (
    turn("thermostat", "thermostat-housing", lambda r: any("housing" in said.text for said in r.words)),
    turn("flare-nut-wrench", "pipe-nut", lambda r: "wrench" not in r.said() and _tokens("thread")(r)),
    turn(
        "key",
        "cap-screw",
        lambda r: _tokens("thread", "unc")(r) and r.has("screw") and not r.has("key", "wrench", "driver"),
    ),
    turn("scraper", "plastic-scraper", _has("plastic", "nylon")),
    turn("l-handle", "key", lambda r: r.has_said("key", "wrenchkey", "insidehex") and not _driven(r)),
    turn("six-lobe-bolt", "bit-socket", _driven),  # "T55, 1/2 square, seat belt bolts": a bolt has no square
    turn("drain-plug-key", "socket", _eight_points),  # it goes over the square
    turn("drain-plug-key", "bit-socket", lambda r: _driven(r) and r.has("bit")),
    turn("chain-wrench", "oil-filter-chain", _alongside("filter", "oilfilter")),
    turn("magnetic-base", "dial-gauge", _dial_with_base),  # it comes with the base
    turn(  # a saw that says what blade it takes
        "hacksaw-blade",
        "hacksaw",
        _written(
            r"^hack ?saw(?: frame)?, (?!.*\b(?:tpi|teeth|t\.p\.i)\b)(?!.*\bblades\b)|"
            r"^(?:junior )?hack ?saw (?:with|c/w|incl\w*|w/) (?:[\w.\"-]+ )*blade"
        ),
    ),
    turn("trim-tool", "trim-tool-set", _written(r"\b\d{1,2}[ -]?(?:pcs?|pieces?|pce)\b|^set of \w+ ")),
    turn("bit-holder", "adapter", lambda r: _driven(r) and r.has_said("shank") and _male(r)),
    turn("gasket-paper", "gasket", _has(*_GASKETED)),
    turn("hydraulic-oil", "brake-fluid", _tokens("dot")),
    turn("bit-holder", "bit", lambda r: _only_for(r, "holder") and bool(_tip(r)) and r.has_said("bit"), ("holder",)),
    turn("gear-oil-pump", "bit-socket", lambda r: r.has_said("bit") and r.has_said("hex") and _driven(r)),
    turn("socket", "bit-socket", _has("ballend")),
    turn("guide-pin", "bit-socket", lambda r: r.has_said("bit") and r.has_said("socket")),
    turn("box", "gear-oil", lambda r: _tokens("gl")(r) or _thick(r)),
    turn("rtv", "brake-fluid", _tokens("dot")),
    turn("hydraulic-oil", "mineral-brake-fluid", _written(r"\biso ?7308\b")),
    turn("inspection-lamp", "bulb", _written(r"\bp(?:x|k|gj)?\d\d(?:t|d)(?:-\d)?\b"), ("inspectionlamp",)),
    turn("pin", "bulb", _written(r"\bbulb\b"), ("bulb",)),
    turn("inspection-lamp", "bulb", lambda r: _BULB_CODE.search(r.text.lower()) is not None, ("inspectionlamp",)),
    turn("jump-leads", "cable", _written(r"\d ?(?:mm ?2|sq ?mm|mm ?sq|sqmm)\b")),
    turn("vehicle-battery", "cell", _written(r"\b(?:aaa?|l?r0?3|lr6|6lr61|pp3|cr\d{4}|9 ?v)\b")),
    turn("stud bolt nut", "anti-seize", lambda r: r.has_said("antiseize") and not _tokens("thread", "unc")(r)),
    turn("pipe-sealant", "anti-seize", _written(r"\b(?:lambda|oxygen|o2|glow ?plug|spark ?plug)\b")),
    turn("anaerobic-flange-sealant", "pipe-sealant", _written(r"\bpipe threads?\b|\bthreads?,? pipe\b")),
    turn("battery-brush terminal-grease", "terminal-cleaner", _written(_SPRAYED_CLEANER)),
    turn("general-grease", "lithium-grease", _has("lithium")),
    turn("general-grease", "lithium-grease", _has("mixedsoap")),
    turn("lithium-grease", "moly-grease", lambda r: r.has_said("moly") and not r.has("cvjoint")),
    turn("combination-wrench", "ratcheting-wrench", _said("ratcheting", "ratchet"), ("ratchet", "ratcheting", "ring")),
    turn("flat-washer", "spring-washer", _said("serrated")),  # it locks
    turn("flat-washer", "sealing-washer", lambda r: r.has_said("copper", "aluminium") and _by(r)),
    turn("bit-socket", "adapter", lambda r: r.has_said("shank") and r.has_said("male", "driver") and not _tip(r)),
    turn("bolt", "bit-socket", lambda r: _only_for(r, "bolt") and r.has("triplesquare", "sixlobe", "insidehex")),
    turn("", "pressure-gauge", lambda r: r.has("gauge") and _tokens("pressure")(r)),
    turn("screwdriver", "offset-screwdriver", _said("offset"), ("offset",)),
    turn("screwdriver", "impact-driver", lambda r: _driven(r) and r.has_said("impact"), ("impact", "hand")),
    turn("impact-wrench", "socket", _alongside("socket")),
    turn("t-bolt-clamp", "hose-clamp", _said("worm")),
    turn("clip", "hose-clamp", _said("hose")),
    turn("oil-filter-socket", "socket", lambda r: _driven(r) and _has_size(r) and r.has_said("housing")),
    turn("adapter drive-drill-adapter", "bit-holder", _written(r"\bhex bits\b")),
    turn("corrosion-inhibitor", "wax", _alongside("wax")),
    turn("ratchet", "air-ratchet", _alongside("pneumatic")),
    turn("key", "t-key", _said("tbar"), ("tbar",)),
    turn("key", "drain-plug-key", lambda r: r.has_said("square") and r.has_said("sumpplug", "plug", "filler")),
    turn("spark-plug-socket", "socket", _eight_points),  # for plugs with a square head
    turn("gloves high-voltage-gloves", "over-gloves", _over_gloves),
    turn("high-voltage-gloves", "gloves", _alongside("leather")),  # insulated against the cold
    turn("engine-oil", "gear-oil", _thick),
    turn("hydraulic-oil engine-oil", "mineral-suspension-fluid", _alongside("lhm")),
    turn("o-ring", "general-grease", _alongside("grease")),
    turn("engine-oil", "oil", _of_no_engine),
    turn("oil", "compressor-oil", _alongside("compressor"), ("compressor",)),
    turn("oil", "hydraulic-oil", _alongside("hydraulic"), ("hydraulic",)),
    turn("brake-pads brake-disc brake-shoes", "brake-grease", _alongside("lubricant", "grease", "paste", "antisqueal")),
    turn("brake-disc brake-shoes", "brake-cleaner", _alongside("cleaner"), ("cleaner",)),  # disc and drum brake cleaner
    turn("bolt stud", "anti-seize", _alongside("paste")),
    turn("refrigerant", "pag-oil", _alongside("pagoil")),
    turn("refrigerant", "poe-oil", _alongside("poeoil")),
    turn("atf", "power-steering-fluid", _alongside("powersteeringfluid")),
    turn("anaerobic-flange-sealant", "rtv", _alongside("rtv"), ("rtv",)),
    turn("battery-acid", "gloves", _alongside("glove")),
    turn("blow-gun", "air-duster-can", lambda r: _tokens("volume")(r) or r.has_said("flammable", "nonflammable")),
    turn("retaining-compound threadlocker", "", _alongside("plate", "clip", "tab")),  # of metal
    turn("parts-washer", "", _written(r"\b(?:fluid|solution|concentrate)\b")),  # what goes into it
    turn("rtv", "gasket-set", _written(r"^(?!.*\b(?:rtv|sealant|maker)\b).*\bgaskets?\b.*\bset\b")),
    turn("rtv", "", lambda r: _alongside("sheet", "sheeting", "mat", "tray")(r) and not r.has("rtv", "sealant")),
    turn("paint-stripper", "abrasive-disc", _alongside("disc", "wheel")),
    turn("", "hydraulic-oil", _written(r"\b(?:hlpd?|hvlp|hm|aw)[ -]?(?:22|32|46|68|100)\b")),
    turn("lobe-socket", "engine-oil", lambda r: _tokens("visc")(r) and not r.has_said("socket")),  # 10W-40 E7
    turn(
        "socket",
        "bit-socket",
        lambda r: (
            (r.has_said("male") or any(token.gender == "m" for token in r.tokens))
            and r.has_said("hex", "hexagon", "insidehex")
        ),
    ),
    turn("cap-screw", "bolt", _inch_hex),
    turn("bit key", "bit-socket", _driven),
    turn("swivel-socket", "lobe-socket", _outside, frees=_SWIVELS),
    turn("swivel-socket", "bit-socket", lambda r: bool(_tip(r)), frees=_SWIVELS),
    turn("ring-wrench", "box-spanner", _said("tbar"), ("tbar",)),  # a tube, turned by its bar
    turn("key", "screwdriver", _hex_driver),
    turn("washer-pump", "washer-fluid", _written(r"\bpump (?:pack|bottle|spray)\b")),
    turn(  # a nut driver to some
        "bit-socket",
        "nut-driver",
        lambda r: _SOCKET_DRIVER(r) and not _driven(r) and not _tip(r) and not r.has_said("bit"),
    ),
    turn("pry-bar", "ratchet", lambda r: r.has_said("ratcheting", "ratchet") and _tokens("teeth")(r), ("lever",)),
    turn("", "universal-joint", _joint_alone, ("swivel", "universal", "knuckle")),
    turn("", "torque-wrench", lambda r: _scale(r) and r.has("click", "dial", "beam", "deflecting")),
    turn("", "torque-wrench", lambda r: _tokens("torque")(r) and r.has("click", "beam", "preset", "electronic")),
    turn("", "threadlocker", lambda r: r.has("wicking")),
    turn("socket", "swivel-socket", _swivels),
    turn("", "coolant", lambda r: r.has_said("oat", "hoat", "iat", "sioat", "poat", "phoat")),
    turn("pipe-plug-socket", "socket", _eight_points),
    turn("set-screw", "bolt", _tokens("bolt_grade")),  # a hexagon's: grub screws have a hardness
    turn("", "impact-wrench", lambda r: _driven(r) and r.has("impact") and _written(r"\bguns?\b")(r)),
    turn("", "gloves", lambda r: r.has_said("nitrile", "latex", "vinyl") and _glove_size(r)),
    turn("", "abrasive-disc", lambda r: r.has_said("disc") and _tokens("grit")(r)),
    turn(  # the blade is not the saw
        "power-saw reciprocating-saw jigsaw circular-saw bandsaw body-saw",
        "",
        lambda r: any(said.word == "blade" for said in r.beside()),
    ),
    turn("ultrasonic-cleaner", "", _written(r"\b(?:fluid|solution|detergent|concentrate)\b")),
    turn("air-lubricator", "", _has("oil")),
    turn("belt-sander", "", _has("abrasive")),
)


def _across_flats(reading: Reading) -> bool:
    """Whether a size in mm stands there that is no usual square."""
    return any(
        len(group.tokens) == 1 and group.tokens[0].unit == "mm" and 4 <= float(group.lengths()[0].mm) <= 80
        for group in reading.numbers()
    )


def _only_sizes(reading: Reading) -> bool:
    """ "17x19 ring": nothing but one or two sizes across flats beside the word."""
    found = reading.numbers()
    words = {said.word for said in reading.words} - {"ring", "x", "by", "double", "deep", "offset", "flat"}
    return len(found) == 1 and found[0].relation in ("", "by") and not words


def _size_beside_square(reading: Reading) -> bool:
    """ "21 mm 1/2 deep impact": what only sockets have, a size in mm and a square in inches."""
    pointed = any(token.kind == "points" for token in reading.tokens)
    if not (pointed or reading.has("deep", "shallow", "impact", "sixpoint", "twelvepoint")) or reading.has(
        "drift", "punch", "drill"
    ):
        return False
    tokens = [token for group in reading.numbers() for token in group.tokens]
    squares = [token for token in tokens if square(token) and not metric(token)]
    return len(tokens) == 2 and len(squares) == 1 and any(token.unit == "mm" for token in tokens)


def _hex_shank(reading: Reading) -> bool:
    """Whether a size of shank stands beside "hex"."""
    tokens = [token for token in reading.tokens if token.kind != "dash"]
    beside = pairwise(tokens)
    return any(
        one.kind == "num" and one.values[0] in ("1/4", "5/16") and two.text in ("hex", "hx") for one, two in beside
    )


def _has_size(reading: Reading) -> bool:
    return any(group.tokens[0].unit in ("mm", "in") or "/" in group.tokens[0].text for group in reading.numbers())


def _bare_size(reading: Reading) -> bool:
    """ "22 deep 6pt 1/2 dr": what only sockets have beside a whole number."""
    pointed = any(token.kind == "points" for token in reading.tokens)
    numbers = [group.tokens[0].values[0] for group in reading.numbers() if len(group.tokens) == 1]
    told = pointed or reading.has("deep", "shallow", "sixpoint", "twelvepoint")
    return told and len(numbers) == 1 and numbers[0].isdigit() and 4 <= int(numbers[0]) <= 60


def _square_and_shank(reading: Reading) -> bool:
    shank = any(token.text in ("shank", "hex shank") for token in reading.tokens)
    return _driven(reading) and not _tip(reading) and shank


def _threaded_with_length(reading: Reading) -> bool:
    """Whether a thread and a length stand there; beside an inch thread the grade must stand as well."""
    graded = any(token.kind == "bolt_grade" for token in reading.tokens) or reading.has_said("grade", "gr")
    return any(
        (token.kind == "thread" and token.values[2]) or (graded and token.kind == "unc" and token.values[2])
        for token in reading.tokens
    )


def _two_ends(reading: Reading) -> bool:
    """ "3/8 in (F) - 1/4 in (M)": two squares and their ends, and nothing else."""
    numbers = [token for token in reading.tokens if token.kind == "num"]
    return sorted(token.gender for token in numbers) == ["f", "m"] and all(map(square, numbers)) and not reading.words


# The first of these that applies is the last turn. Common practice of the trade, no source.
ENDS = (
    turn("socket bit-socket", "lobe-socket", _outside),
    turn("nut-driver", "nut-driver", _outside),
    turn("screwdriver", "screwdriver", _outside),
    turn("wrench ring-wrench key open-end-wrench combination-wrench", "lobe-wrench", _outside),
    turn(
        "socket",
        "bit-socket",
        lambda r: bool(_tip(r)) or r.has("insidehex", "sixlobe", "triplesquare", "phillips", "slotted"),
    ),
    turn(
        "bit-socket",
        "bit",
        lambda r: not _driven(r) and bool(_tip(r)) and not _tip(r).startswith("hex") and _hex_shank(r),
    ),
    turn("nut-driver", "spinner-handle", lambda r: _driven(r) and not _has_size(r)),
    turn("extension", "bit-extension", lambda r: not _driven(r) and r.has("hex", "shank")),
    turn("ratcheting-wrench", "ratchet", lambda r: _driven(r) and not _has_size(r)),
    turn("screwdriver", "adapter", _square_and_shank),
    turn("", "adapter", _square_and_shank),
    turn("drill-bit", "adapter", lambda r: _only_for(r, "drill") and _square_and_shank(r)),
    turn("universal-joint", "swivel-socket", lambda r: r.has("socket") and _across_flats(r)),
    turn("", "ring-wrench", lambda r: r.has("ring") and _only_sizes(r)),
    turn("", "bit-socket", lambda r: _driven(r) and r.has("triplesquare", "ribe")),
    turn("", "lobe-socket", lambda r: _driven(r) and _outside(r)),
    turn("", "bit-socket", lambda r: _driven(r) and bool(_tip(r))),
    turn("", "socket", lambda r: _driven(r) and (_has_size(r) or _bare_size(r))),
    turn("", "", _driven),  # a square and nothing else: it could be anything
    turn("", "socket", _size_beside_square),
    turn("socket", "swivel-socket", _swivels),
    turn("", "bolt", _threaded_with_length),
    turn("", "adapter", _two_ends),
    turn("", "bit", lambda r: r.has("triplesquare", "ribe") and r.has_said("shank")),
)


def _by_grade(reading: Reading) -> str:
    """An oil, fluid or grease that only its grade names."""
    if _BULB_CODE.search(reading.text.lower()):
        return "bulb"
    if reading.has("ffp1", "ffp2", "ffp3"):
        return "dust-mask"
    if reading.has("lithium") and _tokens("nlgi")(reading):
        return "lithium-grease"
    for token in reading.tokens:
        if token.kind == "dot":
            return "brake-fluid"
        if token.kind == "visc" and token.values[0]:
            return "gear-oil" if int(token.values[0]) >= LEAST_GEAR else "engine-oil"
    return ""
