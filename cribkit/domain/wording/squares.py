"""Squares, sizes and points among the numbers of a text; what they say about the family."""

from __future__ import annotations

import re
from itertools import pairwise

from cribkit.domain.wording.lexer import Token
from cribkit.domain.wording.measure import number
from cribkit.domain.wording.reading import Reading
from cribkit.domain.wording.sizes import Group, Length, square
from cribkit.domain.wording.tips import find_tips


def find_square(reading: Reading) -> None:
    """Codes of tips, and the number beside a word for the square drive."""
    find_tips(reading)
    tokens = [token for token in reading.tokens if token.kind not in ("sign", "end")]
    marked = [token.kind == "word" and _is_mark(token) for token in tokens]
    marks = [place for place, mark in enumerate(marked) if mark and not (place and marked[place - 1])]
    for place in marks:
        before, after = _number_before(tokens, place), _number_after(tokens, place)
        chosen = _choose(before, after)
        if before and after and metric(before) and square(before) == square(after) and chosen is after:
            reading.doubts.append(f"{before.text} or {after.text}: one is the square")
        if chosen is not None:
            chosen.used = True
            reading.set("drive", square(chosen)) if "drive" not in reading.attributes else reading.attributes.update(
                drive2=square(chosen)
            )
            if chosen.gender:
                reading.attributes.setdefault("gender", chosen.gender)
    if marks and "drive" in reading.attributes:
        reading.use("drive", "square")


def _is_mark(token: Token) -> bool:
    return token.text in ("drive", "square", "sq", "sqr")


def _number_before(tokens: list[Token], place: int) -> Token | None:
    place -= 1
    while place >= 0 and (_is_mark(tokens[place]) or tokens[place].kind == "dash" or tokens[place].text in ("hex",)):
        place -= 1
    token = tokens[place] if place >= 0 else None
    if token and token.kind == "num" and metric(token) and tokens[place + 1].text in ("hex", "hexagon"):
        return None  # a hexagon's size, no square
    return token if token and token.kind == "num" and not token.used and square(token) else None


def _number_after(tokens: list[Token], place: int) -> Token | None:
    place += 1
    while place < len(tokens) and (
        _is_mark(tokens[place])
        or tokens[place].kind == "dash"
        or tokens[place].text in (":", "=", "size", "sz", "of", "is", "(", ",")
    ):
        place += 1
    token = tokens[place] if place < len(tokens) else None
    if token is None or token.kind != "num" or token.used or (not token.unit and metric(token)):
        return None
    return token if square(token) else None


def _choose(before: Token | None, after: Token | None) -> Token | None:
    """Of two squares beside the word the one in inches; of two alike the one before."""
    if before is None or after is None:
        return before or after
    if before.unit == "mm" and before.values[0] in METRIC_ONLY_SQUARES:
        return before
    return after if metric(before) and not metric(after) else before


def metric(token: Token) -> bool:
    return token.unit == "mm" or (not token.unit and "/" not in token.text and number(token.values[0]) > 2)


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
_PIECES = re.compile(r"\b\d{1,2}[ -]?(?:pcs?|pieces?|pce)\b")
_FLAT_WRENCHES = frozenset({"wrench", "ring-wrench", "key", "open-end-wrench", "combination-wrench"})


def settle(reading: Reading) -> None:
    """What numbers and codes say about the family that words left open."""
    tip, drive = reading.attributes.get("tip", ""), "drive" in reading.attributes
    family = reading.family
    if family == "thermostat" and any("housing" in said.text for said in reading.words):
        family = "thermostat-housing"
    if (
        family == "flare-nut-wrench"
        and "wrench" not in reading.said()
        and any(t.kind == "thread" for t in reading.tokens)
    ):
        family = "pipe-nut"
    threaded = any(token.kind in ("thread", "unc") for token in reading.tokens)
    if family == "key" and threaded and reading.has("screw") and not reading.has("key", "wrench", "driver"):
        family = "cap-screw"
    if family == "scraper" and reading.has("plastic", "nylon"):
        family = "plastic-scraper"
    if family == "drain-plug-key" and drive and reading.has("bit"):
        family = "bit-socket"
    if family == "magnetic-base" and (
        (reading.has("dial") and any(one.relation == "range" for one in reading.numbers()))
        or _WITH_BASE.search(reading.text.lower())
    ):
        family = "dial-gauge"  # it comes with the base
    if family == "trim-tool" and _PIECES.search(reading.text.lower()):
        family = "trim-tool-set"
    if (
        family == "bit-holder"
        and drive
        and reading.has_said("shank")
        and any(t.gender == "m" or t.text == "male" for t in reading.tokens)
    ):
        family = "adapter"
    if family == "gasket-paper" and reading.has(*_GASKETED):
        family = "gasket"
    if family == "general-grease" and reading.has("lithium"):
        family = "lithium-grease"
    if family == "combination-wrench" and reading.has_said("ratcheting", "ratchet"):
        family = "ratcheting-wrench"
        reading.use("ratchet", "ratcheting", "ring")
    if (
        family == "flat-washer"
        and reading.has_said("copper", "aluminium")
        and any(g.relation == "by" for g in reading.numbers())
    ):
        family = "sealing-washer"
    if (
        family == "bit-socket"
        and reading.has_said("shank")
        and (reading.has_said("male") or reading.has_said("driver"))
        and not tip
    ):
        family = "adapter"
    if family == "bolt" and _only_for(reading, "bolt") and reading.has("triplesquare", "sixlobe", "insidehex"):
        family = "bit-socket"
    if family == "" and reading.has("gauge") and any(token.kind == "pressure" for token in reading.tokens):
        family = "pressure-gauge"
    if family == "screwdriver" and reading.has_said("offset"):
        family = "offset-screwdriver"
        reading.use("offset")
    if family == "key" and reading.has_said("tbar"):
        family = "t-key"
        reading.use("tbar")
    if family == "key" and reading.has_said("square") and reading.has_said("sumpplug", "plug", "filler"):
        family = "drain-plug-key"
    eight = any(token.kind == "points" and token.values[0] == "8" for token in reading.tokens)
    if family == "spark-plug-socket" and (eight or reading.has_said("eightpoint")):
        family = "socket"  # for plugs with a square head
    if family == "engine-oil" and any(
        t.kind == "visc" and t.values[0] and int(t.values[0]) >= LEAST_GEAR for t in reading.tokens
    ):
        family = "gear-oil"
    male = reading.has_said("male") or any(token.gender == "m" for token in reading.tokens)
    if family == "socket" and male and reading.has_said("hex", "hexagon", "insidehex"):
        family = "bit-socket"
    if family == "cap-screw" and _inch_hex(reading):
        family = "bolt"
    outside = tip.startswith("E")
    if family in ("bit", "key") and drive:
        family = "bit-socket"
    if family in ("socket", "bit-socket", "nut-driver", "screwdriver") and outside:
        family = "lobe-socket" if family in ("socket", "bit-socket") else family
    elif family in _FLAT_WRENCHES and outside:
        family = "lobe-wrench"
    elif family == "socket" and (tip or reading.has("insidehex", "sixlobe", "triplesquare", "phillips", "slotted")):
        family = "bit-socket"
    elif family == "bit-socket" and not drive and tip and not tip.startswith("hex") and _hex_shank(reading):
        family = "bit"
    elif family == "nut-driver" and drive and not _has_size(reading):
        family = "spinner-handle"
    elif family == "extension" and not drive and reading.has("hex", "shank"):
        family = "bit-extension"
    elif family == "ratcheting-wrench" and drive and not _has_size(reading):
        family = "ratchet"
    elif (
        family in ("", "screwdriver", *(("drill-bit",) if _only_for(reading, "drill") else ()))
        and drive
        and not tip
        and any(token.text in ("shank", "hex shank") for token in reading.tokens)
    ):
        family = "adapter"
    elif family == "universal-joint" and reading.has("socket") and _across_flats(reading):
        family = "swivel-socket"
    elif family == "" and reading.has("ring") and _only_sizes(reading):
        family = "ring-wrench"
    elif family == "" and drive and reading.has("triplesquare", "ribe"):
        family = "bit-socket"
    elif family == "" and drive:
        family = "lobe-socket" if outside else "bit-socket" if tip else "socket" if _has_size(reading) else ""
    elif family == "" and _size_beside_square(reading):
        family = "socket"
    elif family == "" and any(token.kind == "thread" and token.values[2] for token in reading.tokens):
        family = "bolt"
    elif family == "":
        family = _by_grade(reading)
    if family == "lobe-socket" and tip and not outside:
        reading.doubts.append(f"external {tip}")
    reading.family = family


# From this winter grade on SAE viscosities are those of gear oils, SAE J306 (from memory).
LEAST_GEAR = 70


def _inch_hex(reading: Reading) -> bool:
    """ "3/8-16 x 1 cap screw, grade 5": in inches a cap screw has a hexagon head unless a socket is said."""
    graded = any(said.text in ("grade", "gr") for said in reading.words) or any(
        token.kind == "class" or token.text.startswith(("grade", "gr")) for token in reading.tokens
    )
    plain = any(
        said.word == "capscrew" and said.text in ("cap screw", "screw cap", "cap screws") for said in reading.words
    )
    return plain and graded and any(token.kind == "unc" for token in reading.tokens)


_WITH_BASE = re.compile(r"\b(?:dial|dti|indicator|gauge)\b.*(?:\band|\bwith|\bw/|\+|&|,) ?(?:an? |the )?mag")


def _only_for(reading: Reading, word: str) -> bool:
    """Whether the word stands only after "for" and its like."""
    return all(said.aside for said in reading.words if said.word == word)


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


def _by_grade(reading: Reading) -> str:
    """An oil or fluid that only its grade names."""
    for token in reading.tokens:
        if token.kind == "dot":
            return "brake-fluid"
        if token.kind == "visc" and token.values[0]:
            return "gear-oil" if int(token.values[0]) >= LEAST_GEAR else "engine-oil"
    return ""


def _has_size(reading: Reading) -> bool:
    return any(group.tokens[0].unit in ("mm", "in") or "/" in group.tokens[0].text for group in reading.numbers())


def long_numbers(reading: Reading) -> None:
    """A number beside "long", "length" or "OAL" is a length, if it is not the only number."""
    tokens = reading.tokens
    others = sum(1 for group in reading.numbers() for token in group.tokens if metric(token) or not square(token))
    if (
        others < 2
        and "tip" not in reading.attributes
        and not any(token.kind in ("thread", "unc", "numbered") for token in tokens)
    ):
        return
    for place, token in enumerate(tokens[:-1]):
        after = tokens[place + 1]
        if (
            token.kind == "num"
            and (token.unit or token.values[0] in PLAIN_LENGTHS)
            and not token.used
            and (after.text != "blade" or _blade(token))
            and after.text in ("long", "lg", "lng", "oal", "overall", "reach", "blade")
        ):
            before = tokens[place - 1] if place else None
            if before is not None and (before.kind == "by" or before.text == "x"):
                continue
            token.used = after.used = True
            reading.set("length", Length(number(token.values[0]), token.unit).text)
            reading.use("long", "deep") if after.text != "reach" else None


def _blade(token: Token) -> bool:
    """Whether a measure before "blade" is its length: 5/16 in is its width."""
    return float(Length(number(token.values[0].replace("-", " ")), token.unit).mm) >= 20


# Lengths of bits and blades in mm that people write without the unit.
PLAIN_LENGTHS = frozenset({"25", "30", "50", "75", "80", "100", "120", "125", "150", "200", "250", "300"})


def one_size(reading: Reading, low: float, high: float) -> None:
    """One size across flats; a square without its word is told from the size beside it."""
    found = [group for group in reading.numbers() if group.relation != "range"]
    flat = [
        (group, length, token) for group in found for length, token in zip(group.lengths(), group.tokens, strict=True)
    ]
    written = [entry for entry in flat if entry[2].unit or "/" in entry[2].text or "." in entry[2].text] or flat
    sizes = [entry for entry in written if low <= float(entry[1].mm) <= high]
    if "drive" not in reading.attributes and len(sizes) > 1:
        squares = [entry for entry in sizes if square(entry[2]) and entry[1].unit != "mm" and not metric(entry[2])]
        twice = len(squares) == len(sizes) and len({square(entry[2]) for entry in squares}) == 1
        if len(squares) == 1 or twice or (squares and any(entry[1].unit == "mm" for entry in sizes)):
            reading.set("drive", square(squares[0][2]))
            squares[0][2].used = True
            sizes.remove(squares[0])
    if "drive" not in reading.attributes and len(sizes) > 1:
        told = [entry for entry in sizes if entry[2].values[0] in METRIC_ONLY_SQUARES]
        if len(told) == 1:
            reading.set("drive", square(told[0][2]))
            told[0][2].used = True
            sizes.remove(told[0])
    elif "drive" in reading.attributes and not sizes:
        sizes = [entry for entry in flat if low <= float(entry[1].mm) <= high]
    if "drive" not in reading.attributes and len(written) < len(flat) and len(sizes) == 1:
        _bare_beside_square(reading, flat, sizes, low, high)
    if sizes:
        sizes[0][2].used = True
        reading.set("size", sizes[0][1].text)


# Squares in mm that are no size across flats.
METRIC_ONLY_SQUARES = frozenset({"6.3", "6.35", "9.5", "9.53", "9.525", "12.5", "12.7", "19.05", "25.4"})


_Entry = tuple[Group, Length, Token]


def _bare_beside_square(reading: Reading, flat: list[_Entry], sizes: list[_Entry], low: float, high: float) -> None:
    """ "10 3/8 socket": a bare number beside a square is the size in mm."""
    bare = [entry for entry in flat if entry not in sizes and low <= float(entry[1].mm) <= high and entry[1].value >= 4]
    if len(bare) == 1 and square(sizes[0][2]) and not metric(sizes[0][2]):
        reading.set("drive", square(sizes[0][2]))
        sizes[0][2].used = True
        sizes[0] = bare[0]


def points(reading: Reading) -> None:
    if token := reading.take("points"):
        reading.set("points", token.values[0])


def missing_square(reading: Reading) -> None:
    if "drive" in reading.attributes:
        return
    entries = [group for group in reading.numbers() if len(group.tokens) == 1 and group.tokens[0].unit != "mm"]
    squares = [group for group in entries if square(group.tokens[0]) and not metric(group.tokens[0])]
    others = (
        any(token.kind == "thread" for token in reading.tokens)
        or "tip" in reading.attributes
        or len(reading.numbers()) > len(squares)
    )
    if len(squares) == 1 and others:
        squares[0].use()
        reading.set("drive", square(squares[0].tokens[0]))


def lone_square(reading: Reading) -> None:
    if "drive" in reading.attributes:
        return
    for group in reading.numbers():
        token = group.tokens[0]
        if len(group.tokens) == 1 and square(token) and not metric(token):
            group.use()
            reading.set("drive", square(token))
            return
    for group in reading.numbers():
        if group.relation == "by" and square(group.tokens[0]) and len(group.tokens) == 2:
            group.tokens[0].used = True
            reading.set("drive", square(group.tokens[0]))
            return
