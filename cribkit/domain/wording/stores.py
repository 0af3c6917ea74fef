"""The numbers of what is used up or fitted: clamps, ties, gloves, parts, drills, circlips."""

from __future__ import annotations

import re
from fractions import Fraction
from itertools import pairwise

from cribkit.domain.wording.figures import any_numbers, dims, lone_number, rated
from cribkit.domain.wording.measure import decimal, number
from cribkit.domain.wording.reading import Reading
from cribkit.domain.wording.sizes import Group
from cribkit.domain.wording.spoken import in_digits
from cribkit.domain.wording.squares import missing_square, one_size

_EARS = {
    "1": re.compile(
        r"\b(?:single|sgl|sngl|one|1)[ -]?ear|\bstepless|"
        r"\bear,? (?:(?:clamp|clip|clmp|clp),? )?(?:single|sgl|sngl|1)\b(?! ?-? ?ear|[/.])"
    ),
    "2": re.compile(
        r"\b(?:two|double|twin|dbl|2)[ -]?ear|"
        r"\bear,? (?:(?:clamp|clip|clmp|clp),? )?(?:double|twin|dbl|2)\b(?! ?-? ?\d|[/.])"
    ),
}


def _ears(reading: Reading) -> None:
    """One ear or two."""
    plain = reading.text.lower()
    if "stepless" in plain:
        reading.set("step", "none")
    for number_of, pattern in _EARS.items():
        if pattern.search(plain):
            reading.set("ears", number_of)
            for token in reading.tokens:
                if token.kind == "num" and token.values[0] == number_of and not token.unit:
                    token.used = True
    if "ears" not in reading.attributes and reading.has_said("double"):  # misspelt
        reading.set("ears", "2")


def clamp(reading: Reading) -> None:
    """The range of hoses that a clamp closes on, in mm."""
    if reading.family == "ear-clamp":
        _ears(reading)
    if size := reading.take("numbered"):
        reading.set("clamp_no", size.values[0])
    for before, token in pairwise(reading.tokens):
        if before.text in ("size", "sz") and token.kind == "num" and not token.unit and token.text.isdigit():
            token.used = True
            reading.set("clamp_no", token.values[0])
    if bolt := reading.take("thread"):
        reading.set("bolt_thread", bolt.values[0])
    if (size := reading.take("visc")) and size.values[2]:  # SAE 12
        reading.set("clamp_no", size.values[2])
    for group in reading.numbers():
        lengths = group.lengths()
        if reading.family == "exhaust-clamp" and group.relation == "by" and len(lengths) == 2:  # diameter x length
            group.use()
            reading.set("range", f"{decimal(lengths[0].mm)} mm")
            reading.set("dims", lengths[1].text)
        elif len(lengths) == 2 and lengths[0].mm < lengths[1].mm:
            group.use()
            if _told_again(reading, lengths[0].mm, lengths[1].mm):
                continue
            _named_by(reading, lengths[0].mm, lengths[1].mm)
            reading.set("range", f"{decimal(lengths[0].mm)} - {decimal(lengths[1].mm)} mm")
        elif len(lengths) == 1 and _width_of_band(reading, group):
            group.use()
            reading.set("band", lengths[0].text)
        elif len(lengths) == 1 and (
            group.tokens[0].unit or "/" in group.tokens[0].text or "." in group.tokens[0].text or lone_number(reading)
        ):
            group.use()
            behind = _bounds(reading)  # 20-32 9MM: less than the clamp closes on is the width of its band
            if behind and lengths[0].mm < behind and lengths[0].text in BANDS:
                reading.set("band", lengths[0].text)
            else:
                reading.set("range", f"{decimal(lengths[0].mm)} mm")


# Widths of worm-drive bands, DIN 3017 (from memory).
BANDS = frozenset({"5 mm", "8 mm", "9 mm", "12 mm", "12.7 mm", "14.2 mm"})


def _bounds(reading: Reading) -> Fraction | None:
    """The least that a clamp closes on, where a whole range was read."""
    low, _, high = reading.attributes.get("range", "").removesuffix(" mm").partition(" - ")
    return Fraction(low) if high else None


# How far a range that is told in both units may differ from itself, mm: each is rounded.
ROUNDED = 1


def _told_again(reading: Reading, low: Fraction, high: Fraction) -> bool:
    """Whether a range is the one already read, in the other unit: 7/16-25/32 (11-20 mm)."""
    given, _, upto = reading.attributes.get("range", "").removesuffix(" mm").partition(" - ")
    return bool(upto) and abs(Fraction(given) - low) <= ROUNDED and abs(Fraction(upto) - high) <= ROUNDED


def _width_of_band(reading: Reading, group: Group) -> bool:
    """Whether the measure is that of the band: 9 mm band, band 9 mm."""
    place = reading.place_of(group.tokens[0])
    words = [token.text for token in reading.tokens]
    before = words[max(place - 1, 0) : place] if reading.family != "spring-clamp" else []  # spring band 22 mm
    return not _BAND_WORDS.isdisjoint(words[place + 1 : place + 2] + before)


_BAND_WORDS = frozenset({"band", "wide", "width"})


def _named_by(reading: Reading, low: Fraction, high: Fraction) -> None:
    """A size beside the range that holds it only names the clamp: "3 in (2.97-3.28)"."""
    given = reading.attributes.get("range", "").removesuffix(" mm")
    if given and " - " not in given and low <= Fraction(given) <= high:
        reading.decide("range")


def tie(reading: Reading) -> None:
    """Length and width of a tie: the longer is the length."""
    for token, after in pairwise(reading.tokens):
        if token.kind == "num" and not token.unit and after.text in ("long", "wide"):
            token.unit = "mm"
    for group in reading.numbers():
        lengths = sorted(group.lengths(), key=lambda length: -length.mm)
        if group.tokens[-1].unit or len(lengths) > 1 or lone_number(reading):
            group.use()
            for length in lengths:
                reading.set("length" if float(length.mm) >= 50 else "width", length.text)
    for token in reading.tokens:
        if token.kind == "mass" and not token.used:  # what it holds
            token.used = True
            reading.set("tensile", f"{token.values[0]} {token.values[1].rstrip('s')}")


GLOVES = {
    "extralarge": "XL",
    "s": "S",
    "small": "S",
    "m": "M",
    "medium": "M",
    "l": "L",
    "large": "L",
    "xl": "XL",
    "xxl": "XXL",
    "xxxl": "XXXL",
    "xxxxl": "XXXXL",
    "xs": "XS",
}
GLOVE_NUMBERS = {"6": "XS", "7": "S", "8": "M", "9": "L", "10": "XL", "11": "XXL"}  # EN 420 hand sizes, from memory


GLOVE_TYPES = {
    "mechanics": "work",
    "work": "work",
    "disposable": "disposable",
    "exam": "disposable",
    "examination": "disposable",
    "examining": "disposable",
    "leather": "rigger",
    "welding": "welding",
    "mig": "welding",
    "tig": "welding",
    "chemical": "chemical",
    "gauntlet": "chemical",
}


_MIL = re.compile(r"\b(\d{1,2}(?:\.\d)?) ?(?:mil|thou)\b")


def glove(reading: Reading) -> None:
    """The size of a glove: a letter or a number."""
    for group in reading.numbers():
        token = group.tokens[0]
        if not token.unit and token.values[0] in GLOVE_NUMBERS and len(group.tokens) == 1:
            token.used = True
            reading.set("glove_size", GLOVE_NUMBERS[token.values[0]])
        elif token.unit or (token.values[0].isdigit() and int(token.values[0]) >= 20):  # so many in a box
            group.use()
    if found := _MIL.search(in_digits(reading.text.lower())):  # thousandths of an inch
        reading.set("glove_mil", found[1])
    if any(word.text == "lg" for word in reading.words):
        reading.set("glove_size", "L")
        reading.use("long")
    for kind in ("numbered", "power", "percent"):
        reading.take(kind)
    if rated_class := reading.take("class"):
        reading.set("class", rated_class.values[0])
        if reading.family != "over-gloves":  # only insulating gloves have classes, and those of leather worn over them
            reading.family = "high-voltage-gloves"


_PLUGS = frozenset({"spark-plug", "glow-plug"})  # told by the engine; the thread says no more


# Ribs and length of belts of profile PK, ISO 9981 (from memory): 6PK1750.
_RIBS = re.compile(r"\b([3-8]) ?pk(?:[ x-]*(\d{3,4}))?\b")


def part(reading: Reading) -> None:
    """A part of a vehicle: told by its place, sometimes by its measures."""
    if reading.family == "drive-belt" and (ribbed := _RIBS.search(reading.text.lower())):
        reading.set("ribs", ribbed[1])
        if ribbed[2]:
            reading.set("belt_length", f"{ribbed[2]} mm")
        for piece in reading.tokens:
            piece.used = piece.used or piece.text.strip() in ribbed[0]
    for kind in ("thread",):
        if token := reading.take(kind):
            reading.set("plug_thread" if reading.family in _PLUGS else "thread", token.values[0])
            if token.values[1]:
                reading.set("pitch", token.values[1])
    for token in reading.tokens:  # the size of the engine
        if (
            token.kind == "volume"
            and not token.used
            and token.values[1][:1] == "l"
            and 0.5 <= float(number(token.values[0])) <= 20
        ):
            token.used = True
            put_place(reading, f"{float(number(token.values[0])):.1f}")
    for token in reading.tokens:  # its valves: 16v
        if token.kind == "power" and not token.used and re.fullmatch(r"(?:8|12|16|20|24|32) ?v", token.text.strip()):
            token.used = True
            put_place(reading, token.text.strip().replace(" ", ""))
    while code := reading.take("mixed"):
        put_place(reading, code.text.strip("-"))
    for group in reading.numbers():
        token = group.tokens[0]
        if len(group.tokens) == 1 and not token.unit and "/" not in token.text:
            token.used = True
            put_place(reading, token.values[0])
    if reading.family == "cell":
        while token := reading.take("power"):
            if rated(token) not in _USUAL_VOLTS:  # a rechargeable cell of another chemistry in the same can
                reading.set("cell_volts", rated(token))
    if reading.family == "radiator-cap":
        _opens_at(reading)
    dims(reading)


# Of alkaline and zinc cells, nickel ones, lithium coins and blocks. Common practice, no source.
_USUAL_VOLTS = frozenset({"1.5v", "1.2v", "3v", "9v"})


def _opens_at(reading: Reading) -> None:
    """The pressure at which a cap opens, in bar: 16 psi is 1.1 bar."""
    while token := reading.take("pressure"):  # a second, other pressure is a doubt
        figure, unit = (
            float(number(token.values[0])) if token.values[0].replace(".", "").isdigit() else 0,
            token.values[1],
        )
        bar = figure / {"psi": 14.5, "kpa": 100, "mbar": 1000}.get(unit, 1)
        reading.set("rating", f"{bar:.1f}bar")


def put_place(reading: Reading, word: str) -> None:
    places = set(filter(None, reading.attributes.get("place", "").split(" ")))
    reading.attributes["place"] = " ".join(sorted(places | {word}))


def drill(reading: Reading) -> None:
    """The diameter of a drill or the number of an extractor, then lengths and what else is measured."""
    if token := reading.take("numbered"):
        reading.set("size", f"no {token.values[0]}")
    elif token := reading.take("bolt_grade"):  # 6.8 is no class here
        reading.set("size", f"{token.values[0]} mm")
    one_size(reading, 0.3, 80)
    if "size" in reading.attributes:
        reading.take("thread")  # a tap's, for which the hole is drilled
    any_numbers(reading)


def ring(reading: Reading) -> None:
    """A circlip: the diameter of its shaft or bore, in mm where no unit stands."""
    bare = [token for token in reading.tokens if token.kind == "num" and not token.used and not token.unit]
    if len(bare) == 1 and bare[0].values[0].replace(".", "").isdigit() and float(bare[0].values[0]) >= _LEAST_RING:
        bare[0].unit = "mm"
    any_numbers(reading)


_LEAST_RING = 3


def stud_tool(reading: Reading) -> None:
    """A thread or size, or a range of them, perhaps a square."""
    threads = [token for token in reading.tokens if token.kind == "thread" and not token.used]
    if len(threads) == 2:
        low, high = (token.values[0].removeprefix("M") for token in threads)
        threads[0].used = threads[1].used = True
        reading.set("dims", f"{low} mm to {high} mm")
    elif token := reading.take("thread"):
        reading.set("dims", f"{token.values[0].removeprefix('M')} mm")
    missing_square(reading)
    any_numbers(reading)
