"""The numbers of what is used up or fitted: threads, seals, clamps, fluids; measures of any kind."""

from __future__ import annotations

import re
from collections.abc import Callable
from fractions import Fraction
from itertools import pairwise

from cribkit.domain.wording.lexer import Token
from cribkit.domain.wording.measure import decimal, number, tell_decimal
from cribkit.domain.wording.reading import Reading
from cribkit.domain.wording.sizes import Group, Length
from cribkit.domain.wording.squares import missing_square, one_size, points
from cribkit.domain.wording.tables import tables
from cribkit.domain.wording.text import tidy


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
        _coded(reading, _INSERT, "insert_length")
    if reading.family == "grease-nipple" and (angle := reading.take("deg")):
        reading.set("nipple", f"{angle.values[0]} deg")
    if grade := reading.take("bolt_grade"):
        reading.set("bolt_grade", grade.values[0])
    _property_class(reading)
    _thread_rest(reading)


_CLASS_WORDS = frozenset({"grade", "gr", "class", "cl", "property"})
_CLASSES = frozenset({"2", "5", "8", "10", "12", "6"})


def _property_class(reading: Reading) -> None:
    """ "grade 8", "GR5", "class 10": inch bolts by SAE J429, nuts by ISO 898-2 (from memory)."""
    tokens = [token for token in reading.tokens if token.text != "."]
    for before, token in pairwise(tokens):
        if token.kind == "num" and before.text in _CLASS_WORDS and token.values[0] in _CLASSES and not token.unit:
            token.used = True
            reading.set("bolt_grade", token.values[0])
            for said in reading.words:
                if said.text == before.text:
                    said.used, said.how = True, "known"
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
_NUMBERED = frozenset({"self-tapping-screw", "machine-screw", "wood-screw", "cage-nut", "screw", "countersunk-screw"})
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
        if "thread" not in reading.attributes and len(lengths) == 2 and group.relation == "by":
            group.use()
            reading.set("thread", lengths[0].text)
            reading.set("bolt_length", lengths[1].text)
        elif "thread" in reading.attributes and len(lengths) == 1:
            told = group.tokens[0].unit == "mm" or "." in group.tokens[0].text
            if told and 0.2 < float(lengths[0].mm) <= 3 and "pitch" not in reading.attributes:
                reading.set("pitch", decimal(lengths[0].mm))
                group.use()
            elif "bolt_length" not in reading.attributes and (
                group.tokens[0].unit or "/" in group.tokens[0].text or _long(reading, group)
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


def _long(reading: Reading, group: Group) -> bool:
    """Whether "long" stands after the number: 2 1/2 long."""
    place = next(place for place, token in enumerate(reading.tokens) if token is group.tokens[-1])
    if [token.text for token in reading.tokens[place + 1 : place + 2]] != ["long"]:
        return False
    reading.use("long")
    return True


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


def _named_measures(reading: Reading, first: str, second: str) -> None:
    for place, token in enumerate(reading.tokens):
        if token.kind != "num" or token.used:
            continue
        beside = [other.text for other in reading.tokens[max(place - 1, 0) : place + 2] if other.kind == "word"]
        after = reading.tokens[place + 1].text if place + 1 < len(reading.tokens) else ""
        word = after if after in _BESIDE else next((text for text in beside if text in _BESIDE), "")
        if word:
            name = (first, second, "thickness")[_BESIDE[word]]
            token.used = True
            for said in reading.words:
                if said.text in (word, "x"):
                    said.used, said.how = True, "known"
            inches = "/" in token.text or (token.text.isdigit() and int(token.text) <= 2 and _in_fractions(reading))
            unit = token.unit or ("in" if inches else "mm")
            reading.set(name, Length(number(token.values[0].replace("-", " ")), unit).text)
            reading.use(word, "internal", "external")


def _in_fractions(reading: Reading) -> bool:
    """Whether other measures are in fractions of an inch, so that a bare 1 is an inch."""
    return any(token.kind == "num" and "/" in token.text for token in reading.tokens)


_DASH = re.compile(r"(?:^|[ (])(?:dash ?|- ?)(\d{1,3})\b(?! ?(?:mm|in\b|deg|\d))")


def oring(reading: Reading) -> None:
    """Inside x section; a dash size of those for bosses."""
    if found := _DASH.search(tidy(reading.text)):
        reading.set("dash_size", found[1])
        for token in reading.tokens:
            token.used = token.used or (token.kind == "num" and token.values[0] == found[1] and not token.unit)
    reading.use("section", "cross")
    two_ends("inner", "section_mm")(reading)


_EARS = {
    "1": re.compile(r"\b(?:single|one|1)[ -]ear|\bear,? (?:single|1)\b|\bstepless"),
    "2": re.compile(r"\b(?:two|double|twin|2)[ -]ear|\bear,? (?:double|twin|2)\b"),
}


def _ears(reading: Reading) -> None:
    """One ear or two."""
    plain = reading.text.lower()
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
    for group in reading.numbers():
        lengths = group.lengths()
        if len(lengths) == 2 and lengths[0].mm < lengths[1].mm:
            group.use()
            reading.set("range", f"{decimal(lengths[0].mm)} - {decimal(lengths[1].mm)} mm")
        elif len(lengths) == 1 and _width_of_band(reading, group):
            group.use()
        elif len(lengths) == 1 and (
            group.tokens[0].unit or "/" in group.tokens[0].text or "." in group.tokens[0].text or _lone_number(reading)
        ):
            group.use()
            reading.set("range", f"{decimal(lengths[0].mm)} mm")


def _width_of_band(reading: Reading, group: Group) -> bool:
    """Whether the measure is that of the band: 9 mm band."""
    place = next(place for place, token in enumerate(reading.tokens) if token is group.tokens[0])
    return [token.text for token in reading.tokens[place + 1 : place + 2]] in (["band"], ["wide"], ["width"])


def tie(reading: Reading) -> None:
    """Length and width of a tie: the longer is the length."""
    for group in reading.numbers():
        lengths = sorted(group.lengths(), key=lambda length: -length.mm)
        if group.tokens[-1].unit or len(lengths) > 1 or _lone_number(reading):
            group.use()
            for length in lengths:
                reading.set("length" if float(length.mm) >= 50 else "width", length.text)


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
    "chemical": "chemical",
    "gauntlet": "chemical",
}


def glove(reading: Reading) -> None:
    """The size of a glove: a letter or a number."""
    for group in reading.numbers():
        token = group.tokens[0]
        if not token.unit and token.values[0] in GLOVE_NUMBERS and len(group.tokens) == 1:
            token.used = True
            reading.set("glove_size", GLOVE_NUMBERS[token.values[0]])
        elif token.unit:
            group.use()
    if any(word.text == "lg" for word in reading.words):
        reading.set("glove_size", "L")
        reading.use("long")
    for kind in ("numbered", "power", "percent"):
        reading.take(kind)
    if rated_class := reading.take("class"):
        reading.set("class", rated_class.values[0])
        reading.family = "high-voltage-gloves"  # only these have classes


_GRITTED = frozenset({"sandpaper", "abrasive-disc", "abrasive-belt", "scouring-pad"})
_DISCS = frozenset({"50", "75", "76", "100", "115", "125", "150", "180", "230"})


_ONLY_DISCS = frozenset({"50", "75", "76", "115", "125", "230"})  # no usual grits


def _disc(reading: Reading) -> None:
    """A bare number that is a usual diameter of discs, beside a grit that is told as one."""
    numbers = [token for token in reading.tokens if token.kind == "num" and not token.used and not token.unit]
    told = any(token.kind == "grit" and not token.used for token in reading.tokens)
    if len(numbers) == 1 and numbers[0].values[0] in (_DISCS if told else _ONLY_DISCS):
        numbers[0].unit = "mm"


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
    """Wipes and rags: how many or how much does not matter."""
    packing(reading)
    for group in reading.numbers():
        group.use()


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


def _fork_oil(reading: Reading) -> None:
    """Fork oils are told by one figure: 10W."""
    for token in reading.tokens:
        figure = re.fullmatch(r"(\d{1,2}(?:\.5)?)w?", token.text)
        if figure and not token.used:
            token.used = True
            reading.set("viscosity", f"{figure[1]}W")


def oil(reading: Reading) -> None:
    """Viscosity, GL class, DOT grade, other grades."""
    if token := reading.take("visc"):
        one, two, single, iso, axle = token.values
        reading.set(
            "viscosity", f"{one}W-{two}" if one else f"SAE {single}" if single else f"ISO {iso}" if iso else f"{axle}W"
        )
    while token := reading.take("dot"):
        grade = token.values[0]
        reading.attributes["dot"] = ";".join(
            sorted({*filter(None, reading.attributes.get("dot", "").split(";")), grade})
        )
        if token.values[1].strip() in ("+", "plus"):
            reading.set("dot_class", "plus")
        if "lv" in token.values[1]:
            reading.traits.add("low-viscosity")
        _more_dots(reading)
    classes = []
    while token := reading.take("gl"):
        classes += [one for one in token.values if one]
    if classes:
        reading.set("gl", ";".join(sorted(set(classes))))
    if reading.family == "fork-oil":
        _fork_oil(reading)
    if reading.family in ("pag-oil", "poe-oil", "hydraulic-oil", "compressor-oil"):
        for group in reading.numbers():
            if (
                len(group.tokens) == 1
                and not group.tokens[0].unit
                and group.tokens[0].values[0] in ("15", "22", "32", "46", "68", "100", "150")
            ):
                group.use()
                reading.set("viscosity", f"ISO {group.tokens[0].values[0]}")
    packing(reading)


# Classes of engine oils (ACEA, API, ILSAC, JASO), as written. From memory.
_SPECS = re.compile(
    r"\b(?:[abe]\d{1,2}|c[1-6]|c[d-k] ?-? ?4|fa ?-? ?4|s[g-q]|gf ?-? ?[3-6][ab]?|ma2?|mb)\b(?! ?[vw])", re.IGNORECASE
)


def oil_specs(reading: Reading) -> None:
    """The classes of an engine oil; the name of an ATF's maker says no more than its number."""
    words = set(reading.attributes.get("spec", "").split())
    if reading.family == "engine-oil":
        for found in _SPECS.finditer(tidy(reading.text)):
            words.add(re.sub(r"[ -]", "", found[0]))
            for token in reading.tokens:
                if not token.used and token.kind in ("mixed", "word", "tip", "num") and token.text.strip() in found[0]:
                    token.used = True
            for said in reading.words:
                if said.how == "unread" and said.text in found[0]:
                    said.how, said.used = "known", True
    if words:
        reading.attributes["spec"] = " ".join(sorted(words))


def _more_dots(reading: Reading) -> None:
    """ "DOT 3 and 4", "DOT 3/4": the second number is a grade too."""
    for place, token in enumerate(reading.tokens):
        if token.kind != "dot":
            continue
        after = reading.tokens[place + 1 : place + 4]
        for later in after:
            if later.kind == "num" and later.values[0] in ("3", "4", "5", "5.1") and not later.unit:
                later.used = True
                reading.attributes["dot"] = ";".join(sorted({*reading.attributes["dot"].split(";"), later.values[0]}))


# Chemicals that are told by their strength.
_BY_STRENGTH = frozenset({"isopropyl-alcohol", "acetone", "meths"})


FAHRENHEIT = 400  # a figure without its letter from here on is Fahrenheit: no sealant stands 400 °C. Common practice
_HEAT_RATED = frozenset({"rtv", "sealant", "anti-seize", "exhaust-paste"})


def _from_fahrenheit(degrees: float) -> int:
    return round((degrees - 32) / 1.8)


def celsius(token: Token) -> str:
    """A temperature as written, in degrees Celsius."""
    return f"{_from_fahrenheit(float(token.values[1]))}c" if token.values[1] else token.text.strip()


def packing(reading: Reading) -> None:
    """How much a container holds: nothing that a match hangs on."""
    if reading.family == "moly-grease" and (token := reading.take("percent")):
        reading.set("moly_content", f"{token.values[0]} %")
    if found := re.search(r"\bgrade (0{1,3}|[0-3])\b", tidy(reading.text)) if "grease" in reading.family else None:
        reading.set("nlgi", found[1])
        for token in reading.tokens:
            token.used = token.used or (token.kind in ("num", "mixed") and token.text == found[1])
    if reading.family in _BY_STRENGTH and (token := reading.take("percent")):
        reading.set("purity", f"{token.values[0]} %")
    for token in reading.tokens:
        if token.kind in ("volume", "mass", "percent", "temp", "nlgi") and not token.used:
            token.used = True
            if token.kind == "nlgi":
                reading.set("nlgi", token.values[0])
            if token.kind == "temp":
                reading.set("temperature", celsius(token))
    if reading.family in _HEAT_RATED and (token := reading.take("deg")):
        figure = round(float(number(token.values[0])))
        reading.set("temperature", f"{figure if figure < FAHRENHEIT else _from_fahrenheit(figure)}c")


LOCK_COLOURS = {"blue": "medium", "red": "high", "purple": "low", "green": "wicking"}


def lock(reading: Reading) -> None:
    """Strength of an anaerobic adhesive; by its usual colour where it is not said."""
    packing(reading)


_FROST = re.compile(r"(?<![\d\w])-\s?(\d{2})\b")


def chem(reading: Reading) -> None:
    """A chemical: its pack does not matter, its traits are words."""
    if reading.family == "washer-fluid" and (found := _FROST.search(reading.text)):
        reading.set("temperature", f"-{found[1]}c")
        for token in reading.tokens:
            token.used = token.used or found[1] in token.text
    packing(reading)


_AREA = re.compile(r"\b((?:\d+(?:\.\d+)? ?(?:-|to) ?)?\d+(?:\.\d+)?) ?(?:mm ?2\b|sq\.? ?mm|mm ?sq\b|sqmm)")
_AWG = re.compile(r"\b(\d{1,2}) ?(?:awg|gauge|ga|swg)\b|\bawg ?(\d{1,2})\b")
_RATIO = re.compile(r"\b([234]) ?: ?1\b|\b([234]) to 1\b")


def wire(reading: Reading) -> None:
    """A cross-section in square millimetres or a gauge; other measures."""
    for name, pattern in (("area", _AREA), ("gauge", _AWG), ("ratio", _RATIO)):
        if name != "ratio" or reading.family == "heat-shrink":
            _figure(reading, name, pattern)
    any_numbers(reading)


def _figure(reading: Reading, name: str, pattern: re.Pattern[str]) -> None:
    """A figure that only its unit or sign tells, anywhere in the text."""
    found = pattern.search(reading.text.lower().replace("²", "2"))
    if found is None:
        return
    value = next(group for group in found.groups() if group)
    reading.set(
        name, f"{value.replace('to', '-').replace(' ', '').replace('-', ' - ')} mm2" if name == "area" else value
    )
    for token in reading.tokens:
        if (
            token.kind in ("num", "mixed", "numbered", "teeth")
            and token.text.strip()
            and token.text.strip() in found[0]
        ):
            token.used = True
    for said in reading.words:
        if said.text in ("awg", "gauge", "ga", "swg", "sq", "sqmm", "mm", "square mm"):
            said.used, said.how = True, "known"


_PLUGS = frozenset({"spark-plug", "glow-plug"})  # told by the engine; the thread says no more


def part(reading: Reading) -> None:
    """A part of a vehicle: told by its place, sometimes by its measures."""
    for kind in ("thread",):
        if token := reading.take(kind):
            reading.set("plug_thread" if reading.family in _PLUGS else "thread", token.values[0])
    while code := reading.take("mixed"):
        put_place(reading, code.text.strip("-"))
    for group in reading.numbers():
        token = group.tokens[0]
        if len(group.tokens) == 1 and not token.unit and "/" not in token.text:
            token.used = True
            put_place(reading, token.values[0])
    dims(reading)


def put_place(reading: Reading, word: str) -> None:
    places = set(filter(None, reading.attributes.get("place", "").split(" ")))
    reading.attributes["place"] = " ".join(sorted(places | {word}))


def dims(reading: Reading) -> None:
    """Measures without a name of their own, as a set."""
    found = set()
    inches = any(said.word in ("inch", "imperial") for said in reading.words)
    for group in reading.numbers():
        lengths = group.lengths()
        if inches and not any(token.unit for token in group.tokens) and group.relation == "range":
            lengths = [Length(length.value, "in") for length in lengths]
        if (
            group.tokens[-1].unit
            or group.tokens[0].unit
            or len(lengths) > 1
            or "/" in group.tokens[0].text
            or "." in group.tokens[0].text
        ):
            group.use()
            join = " to " if group.relation == "range" else " x "
            found |= (
                {join.join(length.text for length in lengths)}
                if group.relation == "range"
                else {length.text for length in lengths}
            )
    if "length" in reading.attributes:
        found.add(reading.attributes.pop("length"))
    if not found and (bare := _lone_number(reading)):
        bare.use()
        found.add(f"{bare.tokens[0].values[0]} mm")
    if found:
        reading.set("dims", "; ".join(sorted(found)))


SMALLEST_BARE = 15  # a bare number below it may be how many


def _lone_number(reading: Reading) -> Group | None:
    """The one number of a text, if it is no count and stands where a measure stands: "combination pliers, 180"."""
    numbers = [token for token in reading.tokens if token.kind == "num"]
    groups = reading.numbers()
    if len(numbers) != 1 or len(groups) != 1 or reading.tokens[0] is numbers[0]:
        return None
    value = numbers[0].values[0]
    return groups[0] if value.isdigit() and SMALLEST_BARE <= int(value) <= 2000 else None


def adapters_threads(reading: Reading) -> None:
    """The threads that a tester comes with: what goes into the engine, not what it is told by."""
    threads = set()
    while token := reading.take("thread"):
        threads.add(token.values[0])
    if threads:
        reading.set("adapters", " ".join(sorted(threads)))
    any_numbers(reading)


# Categories of measuring instruments, IEC 61010 (from memory).
_CAT = re.compile(r"\bcat\.? ?-?(iv|iii|ii|i|[1-4])\b", re.IGNORECASE)
_CATS = {"i": 1, "ii": 2, "iii": 3, "iv": 4, "1": 1, "2": 2, "3": 3, "4": 4}
# Pliers that are told by the section of the wire that they work on.
_WIRED = frozenset({"crimping-pliers", "wire-strippers", "cable-cutters"})


def any_numbers(reading: Reading) -> None:
    """Measures and ratings of any kind."""
    if found := _CAT.search(reading.text):
        reading.set("cat", str(_CATS[found[1].lower()]))
        for said in reading.words:
            if said.text in ("cat", found[1].lower()):
                said.used, said.how = True, "known"
        for token in reading.tokens:
            token.used = token.used or (token.kind in ("num", "mixed") and token.text.strip() == found[1])
    if reading.family in _WIRED:
        _figure(reading, "area", _AREA)
    points(reading)
    dims(reading)
    thread_token = reading.take("thread")
    if thread_token:
        reading.set("thread", thread_token.values[0])
        if thread_token.values[1]:
            reading.set("pitch", thread_token.values[1])
    family = tables().families.get(reading.family)
    if family is not None and family.shape.startswith("set"):
        numbers = [token for token in reading.tokens if token.kind == "numbered" and not token.used]
        for token in numbers:
            token.used = True
        if numbers:
            reading.set("numbers", " ".join(token.values[0] for token in numbers))
    for token in reading.tokens:
        if token.kind == "count" and token.text.rstrip(".").endswith("tpi"):
            reading.set("tpi", token.values[0])
    lifting = family is not None and family.shape == "jack"
    for token in [one for one in reading.tokens if not one.used]:
        if token.kind == "ton" or (token.kind == "teeth" and lifting):
            token.used = True
            reading.set("capacity", f"{decimal(number(token.values[0]))} t")
        elif token.kind == "mass":
            token.used = True
            _weight(reading, _grams(token), lifting)
    for kind, name in (("flutes", "flutes"), ("deg", "angle")):
        if one := reading.take(kind):
            reading.set(name, one.values[0])
    ratings = [
        token
        for token in reading.tokens
        if token.kind in ("power", "pressure", "volume", "temp", "torque", "teeth", "percent") and not token.used
    ]
    for token in ratings:
        token.used = True
    if ratings:
        reading.set("rating", "; ".join(sorted(rated(token) for token in ratings)))


def _weight(reading: Reading, grams: str, lifting: bool) -> None:
    """A weight; of lifting gear, from 100 kg, what it carries."""
    mass = Fraction(grams.split()[0])
    if lifting and mass >= 100_000:
        reading.set("capacity", f"{decimal(mass / 1_000_000)} t")
    else:
        reading.set("weight", grams)


_RATED = {"volt": "v", "volts": "v", "amp": "a", "amps": "a", "watt": "w", "watts": "w", "lumens": "lm", "lumen": "lm"}


def rated(token: Token) -> str:
    """A rating in one spelling: 12 volt is 12v."""
    plain = "".join(token.text.split()).replace("to", "-")
    plain = re.sub(r"-(?=[a-z])", "", plain) if token.kind == "power" else plain
    figures = plain.rstrip("abcdefghijklmnopqrstuvwxyz")
    unit = plain[len(figures) :]
    return figures + _RATED.get(unit, unit)


def _grams(token: Token) -> str:
    value, unit = number(token.values[0]), token.values[1]
    factor = (
        1000.0
        if unit.startswith("k")
        else 453.59237
        if unit.startswith(("lb", "pound"))
        else 28.349523
        if unit.startswith("o")
        else 1.0
    )
    return f"{float(value) * factor:.0f} g"


def drill(reading: Reading) -> None:
    """The diameter of a drill or the number of an extractor, then lengths and what else is measured."""
    if token := reading.take("numbered"):
        reading.set("size", f"no {token.values[0]}")
    one_size(reading, 0.3, 80)
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


def _coded(reading: Reading, pattern: re.Pattern[str], name: str) -> None:
    """An attribute that the whole text tells by its form; the pieces that it is made of are read with it."""
    plain = reading.text.lower() if name == "bulb" else tidy(reading.text)
    if found := pattern.search(plain):
        reading.set(name, (found[1] if pattern.groups else found[0]).replace(" ", ""))
        for token in reading.tokens:
            watts = name == "bulb" and token.kind == "power" and token.text.strip() in found[0]
            if watts or (not token.used and token.kind not in ("power", "stop") and token.text.strip() in found[0]):
                token.used = True
        for said in reading.words:
            if said.text in found[0].split() or (said.text in found[0] and len(said.text) < 3):
                said.used, said.how = True, "known"


def fuse(reading: Reading) -> None:
    """A rating in A, V or W; codes of bulbs, pins of relays."""
    if reading.family == "bulb":
        _coded(reading, _BULB, "bulb")
        for token in reading.tokens:
            if token.kind == "num" and not token.used and (code := _BULB_NUMBERS.get(token.text.strip())):
                token.used = True
                reading.set("bulb", code)
    if reading.family == "relay":
        _coded(reading, _PINS, "pins")
    found = [token for token in reading.tokens if token.kind == "power" and not token.used]
    for token in found:
        token.used = True
    if found:
        reading.set("rating", "; ".join(sorted(rated(token) for token in found)))
    dims(reading)


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
