"""Measures, ratings and codes of any kind, whatever they are told of."""

from __future__ import annotations

import re
from fractions import Fraction
from itertools import pairwise

from cribkit.domain.wording.lexer import Token
from cribkit.domain.wording.measure import decimal, number
from cribkit.domain.wording.reading import Reading
from cribkit.domain.wording.sizes import Group, Length
from cribkit.domain.wording.squares import points
from cribkit.domain.wording.tables import tables

AREA = re.compile(r"\b((?:\d+(?:\.\d+)? ?(?:-|to) ?)?\d+(?:\.\d+)?) ?(?:mm ?2\b(?! ?:)|sq\.? ?mm|mm ?sq\b|sqmm)")


def figure(reading: Reading, name: str, pattern: re.Pattern[str]) -> None:
    """A figure that only its unit or sign tells, anywhere in the text."""
    found = pattern.search(reading.plain) or pattern.search(reading.text.lower().replace("²", "2"))
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
    reading.pass_by("awg", "gauge", "ga", "swg", "sq", "sqmm", "mm", "square mm")


def _numbered_size(reading: Reading) -> None:
    """ "Size 2", of hammers and the like that come in numbered sizes."""
    for before, token in pairwise(reading.tokens):
        if before.text == "size" and token.kind == "num" and not token.used and not token.unit:
            token.used = True
            reading.set("numbered_size", token.values[0])


# Instruments that are told by what they can tell apart as well, and the coarsest that one of them shows, mm.
_GRADUATED = frozenset(
    {"dial-gauge", "micrometer", "caliper", "depth-gauge", "bore-gauge", "depth-micrometer", "ruler"}
)
_COARSEST = 0.1


def _graduation(reading: Reading) -> None:
    """What a measuring instrument can tell apart: 0.01 mm, .0005 in."""
    if reading.family not in _GRADUATED:
        return
    for group in reading.numbers():
        lengths = group.lengths()
        if len(lengths) == 1 and 0 < float(lengths[0].mm) <= _COARSEST and "graduation" not in reading.attributes:
            group.use()
            reading.set("graduation", lengths[0].text)


def dims(reading: Reading) -> None:
    """Measures without a name of their own, as a set."""
    _graduation(reading)
    found = set()
    inches = any(said.word in ("inch", "imperial") for said in reading.words)
    inches = inches or (reading.family in _MICROMETERS and all(_under(group, 12) for group in reading.numbers()))
    for group in reading.numbers():
        lengths = group.lengths()
        if _all_inches(group):
            lengths = [Length(length.value, "in") for length in lengths]
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
    if not found and (nominal := _nominal(reading)):
        nominal.use()
        found.add(f"{nominal.tokens[0].values[0]} in")
    if not found and (bare := lone_number(reading)):
        bare.use()
        found.add(f"{bare.tokens[0].values[0]} mm")
    if found:
        reading.set("dims", "; ".join(sorted(found)))


_MICROMETERS = frozenset({"micrometer", "inside-micrometer", "depth-micrometer"})


def _under(group: Group, most: int) -> bool:
    """Whether no number without a unit is larger: micrometers in mm go up by 25."""
    return all(token.unit or float(number(token.values[0])) <= most for token in group.tokens)


LARGEST_INCHES = 14  # of a disc or wheel told in inches


def _all_inches(group: Group) -> bool:
    """ "3 x 1/16 x 3/8": no unit, and fractions beside a small whole number."""
    tokens = group.tokens
    return (
        group.relation == "by"
        and len(tokens) > 1
        and not any(token.unit for token in tokens)
        and any("/" in token.text for token in tokens)
        and all("/" in token.text or float(number(token.values[0])) <= LARGEST_INCHES for token in tokens)
    )


# Hand tools sold by their length in whole inches, and the shortest and longest of them: "pipe wrench 14", "side
# cutters 7". In mm such a number would be ten times as great. Common practice, no source.
_NOMINAL_INCHES = {
    "adjustable-wrench": (4, 24),
    "pipe-wrench": (6, 60),
    "pry-bar": (6, 60),
    "breaker-bar": (10, 40),
    "caliper": (4, 24),
    "hacksaw": (6, 12),
    "file": (4, 14),
    "g-clamp": (2, 12),
    "tin-snips": (7, 14),
    "ruler": (6, 36),
    "bolt-cutters": (8, 42),
}
_NOMINAL_PLIERS = (4, 16)


def _nominal(reading: Reading) -> Group | None:
    """The bare number beside the name of a tool that is sold by its length in inches."""
    family = tables().families.get(reading.family)
    pliers = family is not None and family.shape == "pliers"
    least, most = _NOMINAL_INCHES.get(reading.family, _NOMINAL_PLIERS if pliers else (1, 0))
    left = reading.numbers()
    if len(left) != 1 or len(left[0].tokens) != 1:
        return None
    token = left[0].tokens[0]
    if token is reading.tokens[0] and (pliers or any(said.text.endswith("s") for said in reading.words)):
        return None  # how many: "6 side cutters", "2 pry bars"
    told = token.values[0].isdigit() and not token.unit and least <= int(token.values[0]) <= most
    return left[0] if told else None


SMALLEST_BARE = 15  # a bare number below it may be how many


def lone_number(reading: Reading) -> Group | None:
    """The one number of a text, if it is no count and stands where a measure stands: "combination pliers, 180"."""
    numbers = [token for token in reading.tokens if token.kind == "num"]
    groups = reading.numbers()
    if len(numbers) != 1 or len(groups) != 1 or reading.tokens[0] is numbers[0]:
        return None
    value = numbers[0].values[0]
    return groups[0] if value.isdigit() and SMALLEST_BARE <= int(value) <= 2000 else None


# Categories of measuring instruments, IEC 61010 (from memory).
_CAT = re.compile(r"\bcat\.? ?-?(iv|iii|ii|i|[1-4])\b", re.IGNORECASE)
_CATS = {"i": 1, "ii": 2, "iii": 3, "iv": 4, "1": 1, "2": 2, "3": 3, "4": 4}
_CAT_VOLTS = re.compile(r"\bcat\.? ?-?(iv|iii|ii|i|[1-4]),? ?(\d{3,4}) ?v", re.IGNORECASE)
# Pliers that are told by the section of the wire that they work on.
_WIRED = frozenset({"crimping-pliers", "wire-strippers", "cable-cutters"})


# What is told by its poles.
_POLED = frozenset({"trailer-tester", "breakout-box", "trailer-socket", "trailer-plug", "connector"})
_POLES = re.compile(r"\b(\d{1,2})[ -]?(?:pins?|p|poles?|ways?|cores?)\b")


_AWG = re.compile(
    r"\b(\d{1,2})(?: ?(?:-|to|thru) ?(\d{1,2}))? ?(?:awg|gauge|ga)\b|\bawg ?(\d{1,2})(?: ?(?:-|to|thru) ?(\d{1,2}))?\b"
)


def _wire_gauge(reading: Reading) -> None:
    """Wire by its gauge, AWG (ASTM B258): the thicker the lower the number."""
    found = _AWG.search(reading.plain)
    if found is None:
        return
    ends = sorted(int(number) for number in found.groups() if number)
    reading.set("area", f"{ends[0]} - {ends[-1]} awg")
    for token in reading.tokens:
        if token.kind in ("num", "mixed", "numbered", "tip") and token.text.strip() in map(str, ends):
            token.used = True
    reading.pass_by("awg", "gauge", "ga")


# What one figure tells of some things, by the unit beside it.
_FIGURES = (
    ("abrasive-disc", "button_type", re.compile(r"\btype ([rs])\b")),
    ("manifold-gauge-set ac-coupler", "gas_code", re.compile(r"\br? ?-?(134a|1234yf|744)\b")),
    ("respirator-filter", "filter_class", re.compile(r"\b((?:a|ab|abe|abek)?[12]?-?p[123]|abek[12]?)\b")),
    ("ear-defenders ear-plugs", "snr", re.compile(r"\bsnr ?(\d\d)(?: ?db)?\b|\b(\d\d) ?db\b")),
    ("cutting-disc abrasive-disc grinding-wheel", "rpm", re.compile(r"\b(\d{4,5}) ?(?:rpm|/ ?min|min-1|r/min)\b")),
    ("vehicle-battery", "ah", re.compile(r"\b(\d{2,3}) ?ah\b")),
    ("vehicle-battery", "cca", re.compile(r"\b(\d{3,4}) ?(?:cca|a)\b")),
)


def told_figures(reading: Reading) -> None:
    """Noise that ear defenders keep off, how fast a disc may turn, what a battery holds."""
    for families, name, pattern in _FIGURES:
        if reading.family in families.split() and (found := pattern.search(reading.plain)):
            reading.set(name, (found[1] or found[pattern.groups]).replace("-", ""))
            for token in reading.tokens:
                token.used = token.used or (token.kind != "stop" and token.text.strip() in found[0])
            reading.pass_by(
                "snr", "db", "rpm", "r134a", "r1234yf", "r744", "min", "ah", "cca", "or", "more", "max", "r"
            )


# Told by the smallest and the largest thread that they serve.
_SPANS_THREADS = frozenset({"rivet-nut-tool", "thread-file", "thread-gauge", "tap-wrench", "die-stock", "tap-set"})


def any_numbers(reading: Reading) -> None:
    """Measures and ratings of any kind."""
    if reading.family in _POLED:
        coded(reading, _POLES, "poles")
    if len(pairs := _CAT_VOLTS.findall(reading.text)) > 1:
        reading.set("cats", " ".join(f"{_CATS[cat.lower()]}:{volts}" for cat, volts in pairs))
    if found := _CAT.search(reading.text):
        reading.set("cat", str(_CATS[found[1].lower()]))
        reading.pass_by("cat", *(cat.lower() for cat, _ in pairs), found[1].lower())
        for token in reading.tokens:
            token.used = token.used or (token.kind in ("num", "mixed") and token.text.strip() == found[1])
    if reading.family in _WIRED:
        figure(reading, "area", AREA)
        _wire_gauge(reading)
    points(reading)
    dims(reading)
    thread_token = reading.take("thread")
    if thread_token:
        reading.set("thread", thread_token.values[0])
        if thread_token.values[1]:
            reading.set("pitch", thread_token.values[1])
        if reading.family in _SPANS_THREADS and (last := reading.take("thread")):
            reading.attributes["thread"] = f"{thread_token.values[0]} to {last.values[0]}"
    family = tables().families.get(reading.family)
    if family is not None and family.shape.startswith("set"):
        numbers = [token for token in reading.tokens if token.kind == "numbered" and not token.used]
        told = [number for token in numbers for number in _numbered_to(reading, token)]
        for token in numbers:
            token.used = True
        if numbers:
            reading.set("numbers", " ".join(told))
    for token in reading.tokens:
        if token.kind == "count" and token.text.rstrip(".").endswith("tpi"):
            reading.set("tpi", token.values[0])
    lifting = family is not None and (family.shape in ("jack", "puller") or reading.has("hydraulic"))
    for token in [one for one in reading.tokens if not one.used]:
        if token.kind == "ton" or (token.kind == "teeth" and lifting):
            token.used = True
            reading.set("capacity", f"{decimal(number(token.values[0]))} t")
        elif token.kind == "mass":
            token.used = True
            _weight(reading, _grams(token), lifting)
    for kind, name in (("flutes", "flutes"), ("deg", "angle")):
        if (one := reading.take(kind)) and reading.family != "angle-gauge":  # it measures any angle
            reading.set(name, one.values[0])
    ratings = [
        token
        for token in reading.tokens
        if token.kind in ("power", "pressure", "volume", "temp", "torque", "teeth", "percent")
        and not token.used
        and (token.kind != "torque" or _gives_torque(reading))
    ]
    for token in ratings:
        token.used = True
    if ratings:
        reading.set("rating", "; ".join(sorted(rated(token) for token in ratings)))
    _numbered_size(reading)


def _numbered_to(reading: Reading, first: Token) -> list[str]:
    """The number of a piece, or of all of them: "no 1-5", "#1 to #5"."""
    place = reading.place_of(first)
    ahead = reading.tokens[place + 1 : place + 3]
    low = int(first.values[0])
    if len(ahead) < 2 or ahead[0].text not in ("-", "to") or ahead[1].kind != "num" or ahead[1].unit:
        return [first.values[0]]
    last = ahead[1].values[0]
    if not last.isdigit() or not low < int(last) <= low + _MOST_NUMBERED:
        return [first.values[0]]
    ahead[1].used = True
    return [str(number) for number in range(low, int(last) + 1)]


# No set has more pieces that are told by whole numbers. Common practice, no source.
_MOST_NUMBERED = 12


def _gives_torque(reading: Reading) -> bool:
    """Whether a torque can be a rating of the thing, and not what the fastener gets: of what drives."""
    return any(one in reading.family for one in ("impact", "torque", "ratchet", "drill", "multiplier", "driver", "gun"))


def _weight(reading: Reading, grams: str, lifting: bool) -> None:
    """A weight; of lifting gear, from 100 kg, what it carries."""
    mass = Fraction(grams.split()[0])
    if lifting and mass >= 100_000:
        reading.set("capacity", f"{decimal(mass / 1_000_000)} t")
    else:
        reading.set("weight", grams)


_RATED = {
    "vdc": "v",
    "volt": "v",
    "volts": "v",
    "amp": "a",
    "amps": "a",
    "watt": "w",
    "watts": "w",
    "lumens": "lm",
    "lumen": "lm",
}


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


# The two filaments of a bulb: 21W/5W, 21/5, "twenty-one five watt".
_TWO_WATTS = re.compile(
    r"(?<![\d./])21 ?w? ?/ ?5 ?w(?:atts?)?\b|(?<![\d./])21 ?/ ?5\b(?! ?[/w.])|(?<![\d./])21 5 ?w(?:atts?)?\b"
)


def coded(reading: Reading, pattern: re.Pattern[str], name: str) -> None:
    """An attribute that the whole text tells by its form; the pieces that it is made of are read with it."""
    plain = reading.plain
    if name == "bulb":  # before its "w" is taken for another thing
        plain = _TWO_WATTS.sub("21/5w", reading.text.lower())
        plain = plain if pattern.search(plain) else _TWO_WATTS.sub("21/5w", reading.plain)
    if found := pattern.search(plain):
        reading.set(name, (found[1] if pattern.groups else found[0]).replace(" ", ""))
        for token in reading.tokens:
            watts = name == "bulb" and token.kind == "power" and token.text.strip() in found[0]
            if watts or (not token.used and token.kind not in ("power", "stop") and token.text.strip() in found[0]):
                token.used = True
        for said in reading.words:
            if said.text in found[0].split() or (said.text in found[0] and len(said.text) < 3):
                said.used, said.how = True, "known"
