"""The numbers of what is used up or fitted: seals, clamps, ties, gloves, abrasives, fuses."""

from __future__ import annotations

import re
from collections.abc import Callable
from itertools import pairwise

from cribkit.domain.wording.figures import AREA, any_numbers, coded, dims, figure, lone_number, rated
from cribkit.domain.wording.fluids import packing
from cribkit.domain.wording.lexer import Token
from cribkit.domain.wording.measure import decimal, number
from cribkit.domain.wording.reading import Reading
from cribkit.domain.wording.sizes import Group, Length
from cribkit.domain.wording.spoken import in_digits
from cribkit.domain.wording.squares import missing_square, one_size


def two_ends(first: str, second: str, third: str = "") -> Callable[[Reading], None]:
    """Measures in a row, such as inside x outside x thickness; words like ID and OD beside a number rule."""

    def read(reading: Reading) -> None:
        _named_measures(reading, first, second)
        if token := reading.take("thread"):
            across, pitch, far = token.values
            reading.set(first, f"{across.removeprefix('M')} mm")
            for key, given in ((second, pitch or far), (third, far if pitch else "")):
                if key and given:
                    reading.set(key, f"{given} mm")
        for group in reading.numbers():
            lengths = group.lengths()
            names = [name for name in (first, second, third) if name and name not in reading.attributes]
            if group.relation != "range" and (
                group.tokens[0].unit or len(lengths) > 1 or "/" in group.tokens[0].text or "." in group.tokens[0].text
            ):
                if len(lengths) > 1 and lengths[0].text == reading.attributes.get(first):
                    lengths = lengths[1:]
                for name, length in zip(names, lengths, strict=False):
                    reading.set(name, length.text)
                group.use()

    return read


_BESIDE = {
    "id": 0,
    "i/d": 0,
    "inside": 0,
    "inner": 0,
    "bore": 0,
    "od": 1,
    "o/d": 1,
    "outer": 1,
    "outside": 1,
    "cs": 1,
    "section": 1,
    "cord": 1,
    "c/s": 1,
    "thick": 2,
    "thk": 2,
    "wide": 1,
}


_OUTSIDE = frozenset({"od", "o/d", "outer", "outside"})


def _named_measures(reading: Reading, first: str, second: str) -> None:
    leads, spoken = _words_lead(reading.tokens), set()
    for place, token in enumerate(reading.tokens):
        if token.kind != "num" or token.used:
            continue
        near = [other for other in reading.tokens[max(place - 1, 0) : place + 2] if other.kind == "word"]
        beside = [other.text for other in near if id(other) not in spoken]
        after = reading.tokens[place + 1].text if place + 1 < len(reading.tokens) and not leads else ""
        word = after if after in _BESIDE else next((text for text in beside if text in _BESIDE), "")
        if word:
            spoken |= {id(other) for other in near if other.text == word}
            name = (first, second, "thickness")[_BESIDE[word]]
            if reading.family == "o-ring":  # told by its section; the outside may stand there too
                name = "dims" if word in _OUTSIDE else second if name == "thickness" else name
            token.used = True
            reading.pass_by(word, "x")
            inches = "/" in token.text or (token.text.isdigit() and int(token.text) <= 2 and _in_fractions(reading))
            unit = token.unit or ("in" if inches else "mm")
            reading.set(name, Length(number(token.values[0].replace("-", " ")), unit).text)
            reading.use(word, "internal", "external")


def _words_lead(tokens: list[Token]) -> bool:
    """Whether the words stand before their numbers: ID 20 CS 2."""
    told = [token.text in _BESIDE for token in tokens if token.kind == "num" or token.text in _BESIDE]
    told = told[told.index(True) :] if True in told else []
    return len(told) > 3 and not told[-1] and told[::2] == [True] * len(told[::2]) and not any(told[1::2])


def _in_fractions(reading: Reading) -> bool:
    """Whether other measures are in fractions of an inch, so that a bare 1 is an inch."""
    return any(token.kind == "num" and "/" in token.text for token in reading.tokens)


_DASH = re.compile(r"(?:^|[ (])(?:dash ?|- ?)(\d{1,3})\b(?! ?(?:mm|in\b|deg|\d))")


# Hardness in Shore A (ISO 48-4): NBR 70, 70 shore, 90 durometer. From memory.
_SHORE = re.compile(
    r"\b([4-9][05]) ?(?:shore|durometer|duro|sh|irhd)(?: ?a)?\b|\b(?:shore|durometer|duro|irhd)(?: a)?,? ?([4-9][05])\b"
)


def hardness(reading: Reading) -> None:
    """How hard a rubber is."""
    if found := _SHORE.search(reading.plain):
        degrees = found[1] or found[2]
        reading.set("hardness", degrees)
        reading.spend(degrees)
        for said in reading.words:
            if said.text in ("shore", "duro", "durometer", "sh", "irhd", "a"):
                said.used, said.how, said.became = True, "attribute", f"hardness {degrees}"


# Rubber by the metre, of which rings are made.
_CORD = re.compile(r"\bo[- ]?ring cord\b|\bcord,? o[- ]?ring\b|\brubber cord\b|\bcord\b.*\bper met")


def oring(reading: Reading) -> None:
    """Inside x section; a dash size of those for bosses."""
    if found := _DASH.search(reading.plain):
        reading.set("dash_size", found[1])
        for token in reading.tokens:
            token.used = token.used or (token.kind == "num" and token.values[0] == found[1] and not token.unit)
    if _CORD.search(reading.plain):
        reading.set("form_of", "cord")
    reading.use("section", "cross")
    for group in reading.numbers():
        if group.relation == "by" and len(group.tokens) == 3:  # inside x outside x section
            lengths = group.lengths()
            group.use()
            reading.set("inner", lengths[0].text)
            reading.set("section_mm", lengths[-1].text)
            reading.set("dims", lengths[1].text)
    for group in reading.numbers():
        if group.relation == "by" and len(group.tokens) == 2:
            inside, outside = group.lengths()
            if outside.mm > inside.mm:  # no section is so thick
                group.use()
                reading.set("inner", inside.text)
                reading.set("dims", outside.text)
    if numbered := reading.take("numbered"):
        reading.set("dash_size", numbered.values[0])  # of those of air conditioning
    two_ends("inner", "section_mm")(reading)


_EARS = {
    "1": re.compile(
        r"\b(?:single|sgl|sngl|one|1)[ -]ear|\bstepless|"
        r"\bear,? (?:(?:clamp|clip|clmp|clp),? )?(?:single|sgl|sngl|1)\b(?! ?-? ?ear)"
    ),
    "2": re.compile(r"\b(?:two|double|twin|2)[ -]ear|\bear,? (?:double|twin|2)\b"),
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
            reading.set("range", f"{decimal(lengths[0].mm)} - {decimal(lengths[1].mm)} mm")
        elif len(lengths) == 1 and _width_of_band(reading, group):
            group.use()
            reading.set("band", lengths[0].text)
        elif len(lengths) == 1 and (
            group.tokens[0].unit or "/" in group.tokens[0].text or "." in group.tokens[0].text or lone_number(reading)
        ):
            group.use()
            reading.set("range", f"{decimal(lengths[0].mm)} mm")


def _width_of_band(reading: Reading, group: Group) -> bool:
    """Whether the measure is that of the band: 9 mm band."""
    place = reading.place_of(group.tokens[0])
    return [token.text for token in reading.tokens[place + 1 : place + 2]] in (["band"], ["wide"], ["width"])


def tie(reading: Reading) -> None:
    """Length and width of a tie: the longer is the length."""
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


_MIL = re.compile(r"\b(\d{1,2}(?:\.\d)?) ?mil\b")


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


_GRITTED = frozenset({"sandpaper", "abrasive-disc", "abrasive-belt", "scouring-pad"})
_DISCS = frozenset({"50", "75", "76", "100", "115", "125", "150", "180", "230"})


_HOLES = re.compile(r"\b(\d{1,2}) ?-?(?:h|hole|holes)\b|\b(no|without|six|eight|fifteen)[ -]holes?\b")
_COUNTED = {"six": "6", "eight": "8", "fifteen": "15"}
_ONLY_DISCS = frozenset({"50", "75", "76", "115", "125", "230"})  # no usual grits


def _disc(reading: Reading) -> None:
    """A bare number that is a usual diameter of discs, beside a grit that is told as one."""
    numbers = [token for token in reading.tokens if token.kind == "num" and not token.used and not token.unit]
    told = any(token.kind == "grit" and not token.used for token in reading.tokens)
    if found := _HOLES.search(reading.plain):
        reading.set("holes", found[1] or _COUNTED.get(found[2], "0"))
        reading.attributes.pop("tip", None)
        for token in reading.tokens:
            token.used = token.used or token.text.strip() in found[0]
        for said in reading.words:
            if said.text in found[0].split():
                said.used, said.how, said.negated = True, "attribute", False
    if len(numbers) == 1 and numbers[0].values[0] in (_DISCS if told else _ONLY_DISCS):
        numbers[0].unit = "mm"
    grits = [token for token in reading.tokens if token.kind == "grit" and not token.used]
    if len(grits) > 1 and (across := next((one for one in grits if {*one.values} & _ONLY_DISCS), None)):
        across.used = True
        reading.set("dims", f"{({*across.values} & _ONLY_DISCS).pop()} mm")


# Grades of steel wool, finest first. Common practice.
_WOOL = frozenset({"0000", "000", "00", "0", "1", "2", "3", "4"})


def _wool(reading: Reading) -> None:
    """The grade of steel wool: 0000 to 4, also as 4/0."""
    for token in reading.tokens:
        written = token.values[0] if token.kind in ("num", "numbered", "class") else ""
        zeros = "0" * int(written[0]) if re.fullmatch(r"[234]/0", written) else written
        if zeros in _WOOL and not token.unit and not token.used:
            token.used = True
            reading.set("wool", zeros)


def wipes(reading: Reading) -> None:
    """Wipes and rags: how many or how much does not matter; how large a sheet is does where its unit is clear."""
    packing(reading)
    for group in reading.numbers():
        sheet = len(group.tokens) == 2 and (
            group.tokens[-1].unit or all(re.fullmatch(r"\d{3}", token.values[0]) for token in group.tokens)
        )
        if not sheet:
            group.use()
    dims(reading)


def grit(reading: Reading) -> None:
    """The grit number."""
    if reading.family == "steel-wool":
        _wool(reading)
    for weight in reading.tokens:  # 80G of an abrasive is its grit, not its weight
        if weight.kind == "mass" and re.fullmatch(r"\d{2,4} ?g", weight.text) and reading.family in _GRITTED:
            weight.kind, weight.values = "grit", (weight.values[0], "")
    if reading.family == "abrasive-disc":
        _disc(reading)
    if token := reading.take("grit"):
        reading.set("grit", token.values[0] or token.values[1])
    else:
        for group in reading.numbers():
            token = group.tokens[0]
            if (
                len(group.tokens) == 1
                and not token.unit
                and token.values[0].isdigit()
                and 24 <= int(token.values[0]) <= 5000
            ):
                token.used = True
                reading.set("grit", token.values[0])
    dims(reading)


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
    if token := reading.take("pressure"):
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


# Codes of bulbs, UN ECE R37 and R99 (from memory).
_BULB = re.compile(
    r"\b(?:h(?:1[0-9]|[1-9])|hb[34]|hir2|py?21/?[45]?/?[45]?w|p21/[45]w|wy?\d{1,2}(?:/5)?w|ry?(?:5|10)w|t4w|c5w|c10w|d[1-4][sr])\b"
)
# What the trade calls them by number. From memory.
_BULB_NUMBERS = {
    "382": "p21w",
    "380": "p21/5w",
    "501": "w5w",
    "472": "h4",
    "477": "h7",
    "499": "h7",
    "448": "h1",
    "453": "h3",
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


_WATTS = re.compile(r"(\d{1,2})w$")


def _told_by_code(reading: Reading) -> None:
    """A code of a bulb tells its watts and its form: C5W is a festoon of 5 W; T10 beside it is its glass."""
    code = reading.attributes.get("bulb", "")
    if code in ("c5w", "c10w"):
        reading.attributes.setdefault("bulb_kind", "festoon")
    if code:
        reading.attributes.pop("tip", None)
    if watts := _WATTS.search(code):
        reading.attributes["rating"] = f"{watts[1]}w"


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
