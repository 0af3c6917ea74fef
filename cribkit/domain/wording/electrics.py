"""The numbers of electric supplies: cable, terminals, sleeves, fuses, bulbs, relays."""

from __future__ import annotations

import re

from cribkit.domain.wording.figures import AREA, any_numbers, coded, dims, figure, rated
from cribkit.domain.wording.lexer import Token
from cribkit.domain.wording.reading import Reading

_AWG = re.compile(r"\b(\d{1,2}) ?(?:awg|gauge|ga|swg)\b|\bawg ?(\d{1,2})\b")
_RATIO = re.compile(r"\b([234]) ?: ?1\b|\b([234]) to 1\b")


def wire(reading: Reading) -> None:
    """A cross-section in square millimetres or a gauge; other measures."""
    for name, pattern in (("area", AREA), ("gauge", _AWG), ("ratio", _RATIO)):
        if name != "ratio" or reading.family == "heat-shrink":
            figure(reading, name, pattern)
    if reading.family == "terminal":
        _terminal(reading)
    if reading.family == "heat-shrink":
        _shrunk(reading)
    any_numbers(reading)
    if reading.family == "terminal" and (stud := reading.attributes.pop("thread", "")):
        reading.attributes["dims"] = f"{stud.removeprefix('M')} mm"  # M8 is a stud of 8 mm


# Sizes of wire that a terminal takes, with or without AWG: 16-14, 22-18.
_SECTIONS = re.compile(
    r"(?<![\d.x])(0\.5-1\.5|0\.25-1\.5|1-2\.5|1\.5-2\.5|2\.5-6|4-6)\b(?! ?(?:mm|sq|awg))"
)  # usual sections, mm²
_WIRES = re.compile(
    r"(?<![\d.x/])(26|24|22|20|18|16|14|12|10|8|6) ?(?:-|to) ?(18|16|14|12|10|8|6|4)(?: ?(?:awg|ga))?\b(?! ?mm)"
)


def _terminal(reading: Reading) -> None:
    """The wires that a terminal takes, and whether it is the male or the female half."""
    if "area" not in reading.attributes and (section := _SECTIONS.search(reading.plain)):
        reading.set("area", f"{section[1].replace('-', ' - ')} mm2")
        for token in reading.tokens:
            token.used = token.used or (token.kind == "num" and token.text.strip() in section[1].split("-"))
    if (wires := _WIRES.search(reading.plain)) and int(wires[1]) > int(wires[2]):
        reading.attributes.pop("gauge", None)
        reading.set("gauges", " ".join(str(gauge) for gauge in range(int(wires[2]), int(wires[1]) + 1, 2)))
        reading.spend(wires[1])
        for token in reading.tokens:
            token.used = token.used or token.text.strip().removesuffix("awg").strip() in (wires[1], wires[2])
    elif gauge := reading.attributes.pop("gauge", ""):
        reading.set("gauges", gauge)
    for token in reading.tokens:  # 6.3 mm female
        if token.kind == "num" and token.gender:
            reading.set("terminal_gender", {"f": "female", "m": "male"}[token.gender])


def _shrunk(reading: Reading) -> None:
    """ "12.7/6": as supplied and shrunk."""
    for group in reading.numbers():
        lengths = group.lengths()
        if len(lengths) == 2 and "/" in reading.text and lengths[1].mm * 1.7 < lengths[0].mm < lengths[1].mm * 5:
            group.use()
            reading.set("dims", lengths[0].text)
            reading.set("shrunk", lengths[1].text)
            if (ratio := lengths[0].mm / lengths[1].mm) in (2, 3, 4):
                reading.attributes.setdefault("ratio", str(int(ratio)))


# Codes of bulbs, UN ECE R37 and R99 (from memory).
_BULB = re.compile(
    r"\b(?:h(?:1[0-9]|[1-9])|hb[34]|hir2|py?21/?[45]?/?[45]?w|p21/[45]w|wy?\d{1,2}(?:/5)?w|ry?(?:5|10)w|t4w|c5w|c10w|"
    r"d[1-4][sr])\b"
)
# What the trade calls them by number. From memory.
_BULB_NUMBERS = {
    "382": "p21w",
    "380": "p21/5w",
    "501": "w5w",
    "581": "py21w",
    "207": "r5w",
    "245": "r10w",
    "233": "t4w",
    "472": "h4",
    "477": "h7",
    "499": "h7",
    "448": "h1",
    "453": "h3",
    # Numbers of lamps in North America, SAE J573 (from memory): they are codes of their own.
    **{number: number for number in ("1156", "1157", "2057", "2357", "3156", "3157", "4157", "7440", "7443")},
    **{number: number for number in ("168", "194", "912", "921", "1141", "1895")},
    **{"9003": "h4", "9005": "hb3", "9006": "hb4", "9012": "hir2"},
}
_PINS = re.compile(r"\b([2-8])[ -]?(?:pin|p|terminal|way|pole)s?\b")


def fuse(reading: Reading) -> None:
    """A rating in A, V or W; codes of bulbs, pins of relays."""
    if reading.family == "bulb":
        coded(reading, _BULB, "bulb")
        _filaments(reading)
        _told_by_code(reading)
        for token in reading.tokens:
            if token.kind == "num" and not token.used and (code := _BULB_NUMBERS.get(token.text.strip())):
                token.used = True
                reading.set("bulb", code)
                _told_by_code(reading)
    if reading.family == "relay":
        coded(reading, _PINS, "pins")
    found = [token for token in reading.tokens if token.kind == "power" and not token.used]
    for token in found:
        token.used = True
    if found:
        coded_watts = reading.attributes.pop("rating", "")
        ratings = {rated(token) for token in found} | ({coded_watts} if coded_watts else set())
        reading.attributes["rating"] = "; ".join(sorted(ratings))
    elif reading.family == "fuse" and (bare := _bare_amps(reading)):
        bare.used = True
        reading.set("rating", f"{bare.values[0]}a")
    dims(reading)


# Bulbs without a cap by their watts, UN ECE R37 (from memory).
_WEDGES = {"3": "w3w", "5": "w5w", "16": "w16w"}
_WATTS = re.compile(r"((?:\d{2}/)?\d{1,2})w$")  # of both filaments


def _told_by_code(reading: Reading) -> None:
    """A code of a bulb tells its watts and its form: C5W is a festoon of 5 W; T10 beside it is its glass."""
    if "bulb" not in reading.attributes and reading.has_said("capless"):
        watts = {
            token.values[0] for token in reading.tokens if token.kind == "power" and token.values[-1].startswith("w")
        }
        if len(watts) == 1 and (code := _WEDGES.get(watts.pop())) and not reading.has_said("led", "amber", "orange"):
            reading.attributes["bulb"] = code
    code = reading.attributes.get("bulb", "")
    if code in ("c5w", "c10w"):
        reading.attributes.setdefault("bulb_kind", "festoon")
    if code:
        reading.attributes.pop("tip", None)
    if told := _WATTS.search(code):
        reading.attributes["rating"] = f"{told[1]}w"


_FILAMENTS = re.compile(r"\b(21 ?/ ?[45]|21) ?w\b")


def _filaments(reading: Reading) -> None:
    """Bulbs told by their watts (21 W, 21/5 W), and the amber ones, which have a code of their own."""
    if "bulb" not in reading.attributes:
        coded(reading, _FILAMENTS, "bulb")
        if watts := reading.attributes.get("bulb"):
            reading.attributes["bulb"] = f"p{watts}w"
    code = reading.attributes.get("bulb", "")
    if code in ("w5w", "w3w", "w16w", "p21w", "r5w", "r10w") and reading.has_said("amber", "orange"):
        reading.attributes["bulb"] = {"p": "py", "w": "wy", "r": "ry"}[code[0]] + code[1:]
        reading.use("amber", "orange")


# Ratings of fuses for vehicles, ISO 8820 (from memory): "10 blade fuse".
_AMPS = frozenset({"3", "5", "7.5", "10", "15", "20", "25", "30", "35", "40", "50", "60", "70", "80", "100", "125"})


def _bare_amps(reading: Reading) -> Token | None:
    bare = [
        token
        for token in reading.tokens
        if not token.used and ((token.kind == "num" and not token.unit) or token.text.endswith((" blade", " blades")))
    ]
    return bare[0] if len(bare) == 1 and bare[0].values[0] in _AMPS else None
