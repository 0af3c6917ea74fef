"""Threads: metric, inch, pipe; pitches, lengths and classes."""

from __future__ import annotations

import re
from itertools import pairwise

from cribkit.domain.wording.adapters import GENDERS
from cribkit.domain.wording.figures import any_numbers, coded
from cribkit.domain.wording.lexer import PITCHES
from cribkit.domain.wording.measure import decimal, number, tell_decimal
from cribkit.domain.wording.reading import Reading
from cribkit.domain.wording.sizes import Group, Length
from cribkit.domain.wording.tables import tables


def pipe_thread(reading: Reading) -> None:
    """A pipe thread: its size and system (NPT, BSP), and whether it is taper or parallel where that is told."""
    _pipe_ends(reading)
    if token := reading.take("pipe"):
        name, form = token.values
        reading.set("thread", name)
        if form and name.endswith("BSP"):
            reading.set("taper", form)
        if reading.family == "air-fittings" and (other := reading.take("pipe")):
            reading.attributes["thread"] = f"{name} x {other.values[0]}"


_GENDERS = {word: {"f": "female", "m": "male"}[gender] for word, gender in GENDERS.items()}


def _pipe_ends(reading: Reading) -> None:
    """The ends of a fitting: each pipe thread with its gender, which stands behind it or else before it."""
    ends: list[str] = []
    told = False
    for place, token in enumerate(reading.tokens):
        if token.kind == "pipe":
            beside = [*reading.tokens[place + 1 : place + 2], *reading.tokens[max(place - 1, 0) : place]]
            gender = next((_GENDERS[one.text] for one in beside if one.text in _GENDERS), "")
            told = told or gender != ""
            ends.append(f"{token.values[0]} {gender}".strip())
    both = _BOTH_ENDS.search(reading.text.lower())
    if both and len(ends) == 1:
        ends, told = [f"{ends[0].removesuffix(' male').removesuffix(' female')} {_GENDERS[both[1]]}"] * 2, True
    if told or len(ends) > 1:
        reading.set("pipe_ends", "; ".join(sorted(ends)))
    if told:
        for said in reading.words:
            if said.text in _GENDERS:
                said.used, said.how = True, "known"


_BOTH_ENDS = re.compile(r"\b(male|female)(?: thread)? (?:at|on) both ends\b")


def thread(reading: Reading) -> None:
    """A thread, its pitch, a length and a grade."""
    token = reading.take("thread")
    if token:
        name, pitch, length = token.values
        reading.set("thread", name)
        if pitch:
            reading.set("pitch", pitch)
        if length:
            reading.set("bolt_length", f"{length} mm")
    elif inch := reading.take("unc"):
        reading.set("thread", f"{inch.values[0]}-{inch.values[1]}")
        if inch.values[2]:
            reading.set("bolt_length", Length(number(inch.values[2].replace("-", " ")), "in").text)
    elif reading.family in _NUMBERED and (numbered := reading.take("numbered")):
        reading.set("thread", f"#{numbered.values[0]}")
    if reading.family == "thread-insert":
        coded(reading, _INSERT, "insert_length")
    if reading.family in _SEATED and any(token.kind == "deg" and token.values[0] == "60" for token in reading.tokens):
        reading.take("deg")
        reading.set("seat", "conical")
    if reading.family == "rivet-nut" and reading.has_said("grip"):
        _grip(reading)
    if reading.family == "grease-nipple" and (angle := reading.take("deg")):
        reading.set("nipple", f"{angle.values[0]} deg")
    if grade := reading.take("bolt_grade"):
        reading.set("bolt_grade", grade.values[0])
        if grade.values[0] in _HIGH_TENSILE and reading.has_said("tensile"):
            reading.use("tensile")
    _head(reading)
    _property_class(reading)
    _thread_rest(reading)
    _width(reading)


# Property classes of high tensile steel, ISO 898-1 (from memory).
_HIGH_TENSILE = frozenset({"8.8", "10.9", "12.9"})
_ACROSS = re.compile(r"(?<![\d/.])(\d{1,2})(?: ?mm)? ?a\.?/?f\b|\ba\.?/?f ?(\d{1,2})(?: ?mm)?\b")
_BALL = re.compile(r"\br ?(1[2-4])\b")


def _head(reading: Reading) -> None:
    """What fits its head: 13 mm across flats, twelve points; the radius of a ball seat (R13)."""
    if found := _ACROSS.search(reading.plain):
        reading.set("across", f"{found[1] or found[2]} mm")
        _spend(reading, found[0])
    if reading.family == "sump-plug":
        _plug_head(reading)
    if reading.family in _SEATED and (ball := _BALL.search(reading.plain)):
        reading.set("radius", f"{ball[1]} mm")
        reading.attributes.setdefault("seat", "spherical")
        _spend(reading, ball[0])
    if any(token.kind == "points" and token.values[0] == "12" for token in reading.tokens):
        reading.take("points")
        reading.set("style", "twelve-point")


def _spend(reading: Reading, figure: str) -> None:
    """The pieces of a figure are used."""
    pieces = {figure, *figure.split(), *re.findall(r"\d+(?:\.\d+)?", figure)}
    for token in reading.tokens:
        token.used = token.used or (token.text.strip() in pieces and any(char.isdigit() for char in token.text))
    for said in reading.words:
        if said.text in ("af", "a/f", "a", "f") and any(said.text in piece for piece in pieces):
            said.used, said.how = True, "known"


# Their cone has 60 degrees unless another angle is said. Common practice, no source.
_SEATED = frozenset({"wheel-nut", "wheel-bolt"})


def _grip(reading: Reading) -> None:
    """From what to what thickness of sheet a rivet nut grips."""
    for group in reading.numbers():
        if len(lengths := group.lengths()) == 2:
            inches = lengths[1].unit == "in"
            low, high = (decimal(length.mm if inches else length.value) for length in lengths)
            group.use()
            reading.use("grip")
            reading.set("grip", f"{low} mm to {high} mm")


# Widths across flats of wheel nuts, mm. Common practice, no source.
_WIDTHS = frozenset({"17", "18", "19", "20", "21", "22", "24"})


def _width(reading: Reading) -> None:
    """One measure in mm of a wheel nut is its width across flats."""
    if reading.family == "sump-plug" and reading.attributes.get("bolt_length") == reading.attributes.get("across", ""):
        del reading.attributes["bolt_length"]
    given = reading.attributes.get("bolt_length", "").removesuffix(" mm")
    if reading.family == "wheel-nut" and given in _WIDTHS:
        del reading.attributes["bolt_length"]
        reading.set("across", f"{given} mm")


# The hexagon head of a sump plug and how wide it is: 17 mm hex head, hexagon head 17 mm.
_HEX_HEAD = re.compile(
    r"(?<![\d/.])(\d{2}) ?(?:mm|mil)?(?: ?a ?/? ?f)? hex(?:agon)?,? (?:head|hd)\b"
    r"|\bhex(?:agon)?(?: (?:head|hd))?,? (\d{2})\b(?! ?x)(?! (?:mm )?(?:key|socket|recess))"
)


def _plug_head(reading: Reading) -> None:
    if (found := _HEX_HEAD.search(reading.plain)) and not reading.has_said("insidehex", "internal", "socket"):
        reading.attributes.setdefault("across", f"{found[1] or found[2]} mm")
        _spend(reading, found[0])
    if "across" in reading.attributes:
        reading.attributes["plug_drive"] = "external"


_CLASS_WORDS = frozenset({"grade", "gr", "class", "cl", "property"})
_CLASSES = frozenset({"2", "5", "8", "10", "12", "6"})


def _property_class(reading: Reading) -> None:
    """ "grade 8", "GR5", "class 10": inch bolts by SAE J429, nuts by ISO 898-2 (from memory)."""
    tokens = [token for token in reading.tokens if token.text != "."]
    for before, token in pairwise(tokens):
        if token.kind == "num" and before.text in _CLASS_WORDS and token.values[0] in _CLASSES and not token.unit:
            token.used = True
            reading.set("bolt_grade", token.values[0])
            reading.pass_by(before.text)
    for token in tokens:
        if token.kind == "mixed" and (found := re.fullmatch(r"(?:gr|cl)(2|5|8|10|12)", token.text)):
            token.used = True
            reading.set("bolt_grade", found[1])


# Threads to the inch of UNC and UNF, ASME B1.1 (from memory).
_INCH_PITCHES = {
    "1/4": ("20", "28"),
    "5/16": ("18", "24"),
    "3/8": ("16", "24"),
    "7/16": ("14", "20"),
    "1/2": ("13", "20"),
    "9/16": ("12", "18"),
    "5/8": ("11", "18"),
    "3/4": ("10", "16"),
    "7/8": ("9", "14"),
    "1": ("8", "12"),
}


def inch_thread(reading: Reading) -> None:
    """5/16 UNF is 5/16-24; once the pitch is told, coarse and fine say nothing more."""
    name = reading.attributes.get("thread", "")
    pitches = _INCH_PITCHES.get(name.removesuffix(" in"))
    if pitches:
        told = reading.attributes.pop("pitch_class", "")  # a thread named without a pitch is coarse
        reading.attributes["thread"] = f"{name.removesuffix(' in')}-{pitches[told == 'fine']}"
    elif "-" in name:
        reading.attributes.pop("pitch_class", None)


# Screws that are sold by a number, and wire inserts by diameters of length.
_NUMBERED = frozenset(
    {"self-tapping-screw", "machine-screw", "wood-screw", "cage-nut", "spire-nut", "screw", "countersunk-screw"}
)
_INSERT = re.compile(r"(?<![\d.])([123](?:\.5)?) ?x? ?d\b")


def _thread_rest(reading: Reading) -> None:
    if token := reading.take("pitch"):
        reading.set("pitch", tell_decimal(token.values[0] or token.values[1]))
    diameter = reading.attributes.get("thread", "").partition("-")[0]
    for group in reading.numbers():
        lengths = group.lengths()
        if len(lengths) == 1 and "-" in reading.attributes.get("thread", "") and lengths[0].text == f"{diameter} in":
            group.use()  # half inch coarse bolt 1/2-13
            continue
        if "thread" not in reading.attributes and group.relation == "by" and _metric(reading, group, lengths):
            continue
        if "thread" not in reading.attributes and len(lengths) == 2 and group.relation == "by":
            group.use()
            _inch_bolt(reading, group, lengths)
        elif "thread" in reading.attributes and len(lengths) == 1:
            told = group.tokens[0].unit == "mm" or "." in group.tokens[0].text
            if told and 0.2 < float(lengths[0].mm) <= 3 and "pitch" not in reading.attributes:
                reading.set("pitch", decimal(lengths[0].mm))
                group.use()
            elif "bolt_length" not in reading.attributes and (
                group.tokens[0].unit
                or "/" in group.tokens[0].text
                or _long(reading, group)
                or (reading.attributes["thread"].startswith("#") and lengths[0].value > LEAST_MM)
            ):
                reading.set("bolt_length", lengths[0].text)
                group.use()
        elif (
            "thread" not in reading.attributes
            and len(lengths) == 1
            and (group.tokens[0].unit or "/" in group.tokens[0].text)
        ):
            reading.set("thread", lengths[0].text if lengths[0].unit != "mm" else f"M{decimal(lengths[0].mm)}")
            group.use()
    if "length" in reading.attributes:
        reading.attributes.setdefault("bolt_length", reading.attributes.pop("length"))


def _inch_bolt(reading: Reading, group: Group, lengths: list[Length]) -> None:
    """ "5/16 x 3" is three inches long, "5/16 x 18" a thread."""
    first, second = (token.values[0] for token in group.tokens)
    if lengths[0].text.endswith(" in") and not any(token.unit for token in group.tokens) and second.isdigit():
        if second in _INCH_PITCHES.get(first.replace("-", " "), ()):
            reading.set("thread", f"{first}-{second}")
            return
        if int(second) <= _LONGEST_INCHES:
            lengths = [lengths[0], Length(number(second), "in")]
    reading.set("thread", lengths[0].text)
    reading.set("bolt_length", lengths[1].text)


# No longer bolt is kept, in inches; beyond it a bare number is in mm. Common practice, no source.
_LONGEST_INCHES = 12


# Fasteners whose bare first number is the diameter of a metric thread: "wheel bolt 14x1.5x28".
_METRIC = frozenset({"bolt", "nut", "thread-part"})


def _metric(reading: Reading, group: Group, lengths: list[Length]) -> bool:
    """Read "14 x 1.5 x 28", "12 x 1.5" and "8 x 25": a diameter, a pitch that it has, a length."""
    family = tables().families.get(reading.family)
    first, *others = (tell_decimal(token.values[0]) for token in group.tokens)
    if (
        family is None
        or family.shape not in _METRIC
        or reading.family in _NUMBERED
        or first not in PITCHES
        or any(length.unit not in ("", "mm") for length in lengths)
        or not 1 <= len(others) <= 2
    ):
        return False
    pitched = others[0] in PITCHES[first]
    if len(others) == 2 and not pitched:
        return False
    group.use()
    reading.set("thread", f"M{first}")
    if pitched:
        reading.set("pitch", others[0])
    if len(others) > pitched:
        reading.set("bolt_length", f"{others[-1]} mm")
    return True


LEAST_MM = 4  # of a screw known by its number a bare length from here on is in mm: no 10 x 25


def _long(reading: Reading, group: Group) -> bool:
    """Whether "long" stands after the number: 2 1/2 long."""
    place = reading.place_of(group.tokens[-1])
    if [token.text for token in reading.tokens[place + 1 : place + 2]] != ["long"]:
        return False
    reading.use("long")
    return True


def adapters_threads(reading: Reading) -> None:
    """The threads that a tester comes with: what goes into the engine, not what it is told by."""
    threads = set()
    while token := reading.take("thread"):
        threads.add(token.values[0])
    if threads:
        reading.set("adapters", " ".join(sorted(threads)))
    any_numbers(reading)
