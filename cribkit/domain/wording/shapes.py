"""Which numbers a family has, and how each is found among the numbers of a text."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from itertools import pairwise

from cribkit.domain.wording.lexer import Token
from cribkit.domain.wording.measure import decimal, number, tell_decimal
from cribkit.domain.wording.reading import Reading, Said
from cribkit.domain.wording.rule import COARSE_PITCH
from cribkit.domain.wording.sizes import Group, Length, square
from cribkit.domain.wording.tables import Family, tables
from cribkit.domain.wording.tips import find_tips, tip_from_numbers

NO_SQUARE = frozenset({"key", "bit", "screwdriver", "nut-driver"})


def find_square(reading: Reading) -> None:
    """Codes of tips, and the number beside a word for the square drive."""
    find_tips(reading)
    tokens = [token for token in reading.tokens if token.kind not in ("sign", "end")]
    marked = [token.kind == "word" and _is_mark(token) for token in tokens]
    marks = [place for place, mark in enumerate(marked) if mark and not (place and marked[place - 1])]
    for place in marks:
        before, after = _number_before(tokens, place), _number_after(tokens, place)
        chosen = _choose(before, after)
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
    if token is None or token.kind != "num" or token.used or (not token.unit and _metric(token)):
        return None
    return token if square(token) else None


def _choose(before: Token | None, after: Token | None) -> Token | None:
    """Of two squares beside the word the one in inches; of two alike the one before."""
    if before is None or after is None:
        return before or after
    return after if _metric(before) and not _metric(after) else before


def _metric(token: Token) -> bool:
    return token.unit == "mm" or (not token.unit and "/" not in token.text and number(token.values[0]) > 2)


def settle(reading: Reading) -> None:
    """What numbers and codes say about the family that words left open."""
    tip, drive = reading.attributes.get("tip", ""), "drive" in reading.attributes
    family = reading.family
    outside = tip.startswith("E")
    if family in ("bit", "key") and drive:
        family = "bit-socket"
    if family in ("socket", "bit-socket", "nut-driver", "screwdriver") and outside:
        family = "lobe-socket" if family in ("socket", "bit-socket") else family
    elif family == "socket" and (tip or reading.has("insidehex", "sixlobe", "triplesquare", "phillips", "slotted")):
        family = "bit-socket"
    elif family == "ratcheting-wrench" and drive and not _has_size(reading):
        family = "ratchet"
    elif family == "" and drive:
        family = "lobe-socket" if outside else "bit-socket" if tip else "socket" if _has_size(reading) else ""
    elif family == "" and any(token.kind == "thread" and token.values[2] for token in reading.tokens):
        family = "bolt"
    elif family == "":
        family = _by_grade(reading)
    if family == "lobe-socket" and tip and not outside:
        reading.doubts.append(f"external {tip}")
    reading.family = family


def _by_grade(reading: Reading) -> str:
    """An oil or fluid that only its grade names."""
    for token in reading.tokens:
        if token.kind == "dot":
            return "brake-fluid"
        if token.kind == "visc" and token.values[0]:
            return "gear-oil" if int(token.values[0]) >= 70 else "engine-oil"
    return ""


def _has_size(reading: Reading) -> bool:
    return any(group.tokens[0].unit in ("mm", "in") or "/" in group.tokens[0].text for group in reading.numbers())


def apply(reading: Reading, shape: str) -> None:
    """Read the numbers that belong to a family of this shape."""
    _long_numbers(reading)
    SHAPES.get(shape, any_numbers)(reading)


def _long_numbers(reading: Reading) -> None:
    """A number beside "long", "length" or "OAL" is a length, if it is not the only number."""
    tokens = reading.tokens
    others = sum(1 for group in reading.numbers() for token in group.tokens if _metric(token) or not square(token))
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
            and after.text in ("long", "lg", "lng", "oal", "overall", "reach", "blade")
        ):
            before = tokens[place - 1] if place else None
            if before is not None and (before.kind == "by" or before.text == "x"):
                continue
            token.used = after.used = True
            reading.set("length", Length(number(token.values[0]), token.unit).text)
            reading.use("long", "deep") if after.text != "reach" else None


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
        squares = [entry for entry in sizes if square(entry[2]) and entry[1].unit != "mm" and not _metric(entry[2])]
        if len(squares) == 1 or (squares and any(entry[1].unit == "mm" for entry in sizes)):
            reading.set("drive", square(squares[0][2]))
            squares[0][2].used = True
            sizes.remove(squares[0])
    elif "drive" in reading.attributes and not sizes:
        sizes = [entry for entry in flat if low <= float(entry[1].mm) <= high]
    if "drive" not in reading.attributes and len(written) < len(flat) and len(sizes) == 1:
        _bare_beside_square(reading, flat, sizes, low, high)
    if sizes:
        sizes[0][2].used = True
        reading.set("size", sizes[0][1].text)


_Entry = tuple[Group, Length, Token]


def _bare_beside_square(reading: Reading, flat: list[_Entry], sizes: list[_Entry], low: float, high: float) -> None:
    """ "10 3/8 socket": a bare number beside a square is the size in mm."""
    bare = [entry for entry in flat if entry not in sizes and low <= float(entry[1].mm) <= high and entry[1].value >= 4]
    if len(bare) == 1 and square(sizes[0][2]) and not _metric(sizes[0][2]):
        reading.set("drive", square(sizes[0][2]))
        sizes[0][2].used = True
        sizes[0] = bare[0]


def socket(reading: Reading) -> None:
    """Size across flats, square, points; a thread beside it is the bolt's, the flutes are the filter's."""
    _points(reading)
    reading.take("thread")
    if token := reading.take("flutes"):
        reading.set("flutes", token.values[0])
    one_size(reading, 3, 105)
    _doubt_hex(reading)


def _doubt_hex(reading: Reading) -> None:
    """ "hex socket" is a six-point socket to some and a bit socket to others."""
    if reading.family == "socket" and any(said.text == "hexagon" for said in reading.words):
        reading.attributes.setdefault("points", "6")
    if (
        reading.family == "socket"
        and reading.has("hex")
        and "points" not in reading.attributes
        and not reading.has("sixpoint")
    ):
        reading.doubts.append("hex socket: six point, or a bit?")


def _points(reading: Reading) -> None:
    if token := reading.take("points"):
        reading.set("points", token.values[0])


# What a tip is, by the word for it and by the letters of its code.
PROFILES = {
    "insidehex": "hex",
    "hex": "hex",
    "sixlobe": "T",
    "triplesquare": "XZN",
    "phillips": "PH",
    "pozidriv": "PZ",
    "slotted": "slot",
    "robertson": "R",
    "jis": "JIS",
    "ribe": "RIBE",
}
_TIPPED = frozenset({"key", "bit", "screwdriver", "bit-socket", "lobe-socket", "set-bit"})


def profile(reading: Reading) -> None:
    """The profile of the tip, by its code or its word; two that disagree are a doubt."""
    said = {PROFILES[word] for word in reading.said() if word in PROFILES and word != "hex"}
    tip = reading.attributes.get("tip", "")
    code = tip.rstrip("0123456789.") if " " not in tip else tip.split(" ")[0]
    if code in ("E", "IP"):
        said -= {"T"}
    told = said | ({code} if code else set())
    if len(told) > 1:
        reading.doubts.append(" or ".join(sorted(told)))
    elif told:
        reading.set("profile", told.pop())
    elif reading.has("hex") and reading.family != "lobe-socket":
        reading.set("profile", "hex")
    reading.attributes.pop("side", None) if code in ("T", "IP", "E", "hex") else None


def tip_shape(reading: Reading) -> None:
    """A tip, perhaps a length."""
    if not reading.has("sixlobe", "fivelobe", "triplesquare", "phillips", "slotted", "robertson", "ribe", "pozidriv"):
        reading.hints.add("insidehex")
    tip_from_numbers(reading)
    _rest_length(reading)


def bit_socket(reading: Reading) -> None:
    """A tip and a square."""
    _missing_square(reading)
    tip_from_numbers(reading)
    _rest_length(reading)


def _missing_square(reading: Reading) -> None:
    if "drive" in reading.attributes:
        return
    entries = [group for group in reading.numbers() if len(group.tokens) == 1 and group.tokens[0].unit != "mm"]
    squares = [group for group in entries if square(group.tokens[0]) and not _metric(group.tokens[0])]
    others = "tip" in reading.attributes or len(reading.numbers()) > len(squares)
    if len(squares) == 1 and others:
        squares[0].use()
        reading.set("drive", square(squares[0].tokens[0]))


def bit(reading: Reading) -> None:
    """A tip, the hex shank, a length."""
    tokens = [token for token in reading.tokens if token.kind != "dash"]
    for place, token in enumerate(tokens):
        after = tokens[place + 1].text if place + 1 < len(tokens) else ""
        later = tokens[place + 2].text if place + 2 < len(tokens) else ""
        if token.kind != "num" or token.used or not _shank_size(token):
            continue
        shank = after in ("shank", "shk", "drive") or later in ("shank", "shk", "drive")
        another = (
            "tip" in reading.attributes or len(reading.numbers()) > 1 or any(one.kind == "numbered" for one in tokens)
        )
        if shank or (after in ("hex", "hexagon", "hx") and another):
            token.used = True
            reading.set("shank", Length(number(token.values[0]), token.unit or "in").text)
            reading.use("shank", "drive")
    tip_from_numbers(reading)
    _rest_length(reading)


def _shank_size(token: Token) -> bool:
    """Whether a number is the hex shank of bits: 1/4 or 5/16 in, 10 mm."""
    return (token.unit != "mm" and token.values[0] in ("1/4", "5/16")) or (
        token.unit == "mm" and token.values[0] == "10"
    )


def screwdriver(reading: Reading) -> None:
    """A tip and the blade's length."""
    tip_from_numbers(reading)
    _rest_length(reading)


def _rest_length(reading: Reading) -> None:
    """A single measured number that is left, or one after "x", is the length in mm."""
    for before, token in pairwise(reading.tokens):
        crossed = before.kind == "by" or before.text == "x"
        if token.kind == "num" and not token.used and not token.unit and crossed and token.values[0].isdigit():
            token.unit = "mm"
    for group in reading.numbers():
        if (
            len(group.tokens) == 1
            and group.tokens[0].unit
            and float(group.lengths()[0].mm) >= 15
            and "length" not in reading.attributes
        ):
            group.use()
            reading.set("length", group.lengths()[0].text)


def wrench(reading: Reading) -> None:
    """One or two sizes across flats."""
    _points(reading)
    reading.take("teeth")
    sizes: list[Length] = []
    for group in reading.numbers():
        lengths = group.lengths()
        fits = all(2.5 <= float(length.mm) <= 120 for length in lengths)
        bare = not any(token.unit or "/" in token.text for token in group.tokens)
        if (
            group.relation == "range"
            and lengths[0].text != lengths[-1].text
            and fits
            and len(lengths) == 2
            and not reading.has("set")
        ):
            continue
        if fits and not (bare and sizes):
            sizes += lengths
            group.use()
    if (
        len(sizes) > 1
        and len({length.text for length in sizes}) > 1
        and reading.family == "combination-wrench"
        and len(sizes) > 2
    ):
        reading.doubts.append("several sizes")
    if sizes:
        texts = sorted(
            {length.text for length in sizes}, key=lambda text: (float(number(text.split()[0].replace("-", " "))), text)
        )
        reading.set("size", " x ".join(texts))


def drive_only(reading: Reading) -> None:
    """The square, then whatever else is measured."""
    _lone_square(reading)
    if token := reading.take("teeth"):
        reading.set("teeth", token.values[0])
    any_numbers(reading)


def _lone_square(reading: Reading) -> None:
    if "drive" in reading.attributes:
        return
    for group in reading.numbers():
        token = group.tokens[0]
        if len(group.tokens) == 1 and square(token) and not _metric(token):
            group.use()
            reading.set("drive", square(token))
            return
    for group in reading.numbers():
        if group.relation == "by" and square(group.tokens[0]) and len(group.tokens) == 2:
            group.tokens[0].used = True
            reading.set("drive", square(group.tokens[0]))
            return


def extension(reading: Reading) -> None:
    """The square and a length."""
    _lone_square(reading)
    for group in reading.numbers():
        if len(group.tokens) == 1 and "length" not in reading.attributes and float(group.lengths()[0].mm) >= 20:
            group.use()
            reading.set("length", group.lengths()[0].text)
    if "drive" not in reading.attributes:
        for group in reading.numbers():
            if len(group.tokens) == 1 and square(group.tokens[0]):
                group.use()
                reading.set("drive", square(group.tokens[0]))


def adapter(reading: Reading) -> None:
    """Two squares. The female end takes the tool's drive, the male end gives the next; female is named first."""
    for token in reading.tokens:
        if token.kind == "num" and token.unit == "m" and token.values[0] == "1":
            token.unit, token.gender = "in", "m"
    tokens = [token for token in reading.tokens if token.kind == "num" and square(token)]
    hexed = [place for place, token in enumerate(reading.tokens) if token.text in ("hex", "shank")]
    tokens = tokens[:2]
    drives = [square(token) for token in tokens]
    reading.attributes.pop("drive", None)
    reading.attributes.pop("drive2", None)
    reading.attributes.pop("gender", None)
    if "length" in reading.attributes and reading.attributes.get("length_class") == "long":
        reading.attributes.pop("length_class")
    genders = _genders(reading, tokens)
    for token in tokens:
        token.used = True
    reading.use("drive", "square", "female", "male")
    if hexed:
        reading.set("hex_end", "yes")
        reading.use("hex", "shank")
    if len(drives) == 2:
        swap = genders[0] == "m" or genders[1] == "f"
        if genders[0] and (genders[0] == genders[1] or genders[0] == "?"):
            reading.doubts.append("two ends of one gender")
        drives = drives[::-1] if swap else drives
        reading.set("drive_in", drives[0])
        reading.set("drive_out", drives[1])
    elif drives:
        reading.set("drive_in" if genders[0] != "m" else "drive_out", drives[0])


_ENDS = {"female": "f", "fem": "f", "f": "f", "internal": "f", "male": "m", "m": "m", "external": "m"}


def _genders(reading: Reading, squares: list[Token]) -> list[str]:
    """f or m of each square: stuck to the number, or the words about ends in the order of the numbers."""
    said = []
    for token in reading.tokens:
        if any(token is one for one in squares):
            said += [token.gender] if token.gender else []
        elif token.kind == "word" and token.text in _ENDS:
            said.append(_ENDS[token.text])
    if len(said) > len(squares):
        return ["?" for _ in squares]
    if len(said) == 1 and len(squares) == 2:
        return (
            [*said, ""]
            if squares[0].gender or not _between(reading, squares)
            else _one_gender(reading, squares, said[0])
        )
    return [*said, *("" for _ in squares)][: len(squares)]


def _between(reading: Reading, squares: list[Token]) -> bool:
    return not squares[0].gender


def _one_gender(reading: Reading, squares: list[Token], gender: str) -> list[str]:
    """Only one end is named: that of the number that the word stands nearest to."""
    word = next(place for place, token in enumerate(reading.tokens) if token.text in _ENDS or token.gender)
    places = [next(place for place, token in enumerate(reading.tokens) if token is one) for one in squares]
    return [gender, ""] if abs(places[0] - word) <= abs(places[1] - word) else ["", gender]


def torque(reading: Reading) -> None:
    """A range in N·m and a square."""
    _lone_square(reading)
    scales = []
    while token := reading.take("torque"):
        scales.append(token.values)
    ranges = [values for values in scales if len(values) == 2]
    if ranges:
        reading.set("range", " - ".join(ranges[0]) + " N·m")
    elif scales:
        reading.set("range", f"{scales[0][0]} N·m")


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
    if grade := reading.take("bolt_grade"):
        reading.set("bolt_grade", grade.values[0])
    _thread_rest(reading)


def _thread_rest(reading: Reading) -> None:
    if token := reading.take("pitch"):
        reading.set("pitch", tell_decimal(token.values[0] or token.values[1]))
    for group in reading.numbers():
        lengths = group.lengths()
        if "thread" not in reading.attributes and len(lengths) == 2 and group.relation == "by":
            group.use()
            reading.set("thread", lengths[0].text)
            reading.set("bolt_length", lengths[1].text)
        elif "thread" in reading.attributes and len(lengths) == 1:
            if 0.2 < float(lengths[0].mm) <= 3 and "pitch" not in reading.attributes:
                reading.set("pitch", decimal(lengths[0].mm))
                group.use()
            elif "bolt_length" not in reading.attributes and group.tokens[0].unit:
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
            unit = token.unit or ("in" if "/" in token.text else "mm")
            reading.set(name, Length(number(token.values[0].replace("-", " ")), unit).text)
            reading.use(word, "internal", "external")


def clamp(reading: Reading) -> None:
    """The range of hoses that a clamp closes on, in mm."""
    for group in reading.numbers():
        lengths = group.lengths()
        if len(lengths) == 2 and lengths[0].mm < lengths[1].mm:
            group.use()
            reading.set("range", f"{decimal(lengths[0].mm)} - {decimal(lengths[1].mm)} mm")
        elif len(lengths) == 1 and (group.tokens[0].unit or "/" in group.tokens[0].text or "." in group.tokens[0].text):
            group.use()
            reading.set("range", f"{decimal(lengths[0].mm)} mm")


def tie(reading: Reading) -> None:
    """Length and width of a tie: the longer is the length."""
    for group in reading.numbers():
        lengths = sorted(group.lengths(), key=lambda length: -length.mm)
        if group.tokens[-1].unit or len(lengths) > 1:
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
    for kind in ("numbered", "power", "percent"):
        reading.take(kind)
    if rated_class := reading.take("class"):
        reading.set("class", rated_class.values[0])


def grit(reading: Reading) -> None:
    """The grit number."""
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
        if "lv" in token.values[1]:
            reading.traits.add("low-viscosity")
        _more_dots(reading)
    if token := reading.take("gl"):
        reading.set("gl", token.values[0])
    if reading.family in ("pag-oil", "poe-oil", "hydraulic-oil", "compressor-oil"):
        for group in reading.numbers():
            if (
                len(group.tokens) == 1
                and not group.tokens[0].unit
                and group.tokens[0].values[0] in ("22", "32", "46", "68", "100", "150")
            ):
                group.use()
                reading.set("viscosity", f"ISO {group.tokens[0].values[0]}")
    packing(reading)


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


def packing(reading: Reading) -> None:
    """How much a container holds: nothing that a match hangs on."""
    for token in reading.tokens:
        if token.kind in ("volume", "mass", "percent", "temp", "nlgi") and not token.used:
            token.used = True
            if token.kind == "nlgi":
                reading.set("nlgi", token.values[0])
            if token.kind == "temp":
                reading.set("temperature", token.text.strip())


LOCK_COLOURS = {"blue": "medium", "red": "high", "purple": "low", "green": "wicking"}
# Common catalogue numbers of anaerobics by strength. From memory, common practice.
LOCK_NUMBERS = {
    "222": "low",
    "242": "medium",
    "243": "medium",
    "262": "high",
    "263": "high",
    "270": "high",
    "271": "high",
    "272": "high",
    "277": "high",
}


def lock(reading: Reading) -> None:
    """Strength of an anaerobic adhesive; by its usual colour where it is not said."""
    packing(reading)
    for group in reading.numbers():
        strength = LOCK_NUMBERS.get(group.tokens[0].values[0])
        if strength and len(group.tokens) == 1:
            group.use()
            reading.set("strength", strength)


def chem(reading: Reading) -> None:
    """A chemical: its pack does not matter, its traits are words."""
    packing(reading)


def part(reading: Reading) -> None:
    """A part of a vehicle: told by its place, sometimes by its measures."""
    for kind in ("thread",):
        if token := reading.take(kind):
            reading.set("thread", token.values[0])
    while code := reading.take("mixed"):
        _place(reading, code.text.strip("-"))
    for group in reading.numbers():
        token = group.tokens[0]
        if len(group.tokens) == 1 and not token.unit and "/" not in token.text:
            token.used = True
            _place(reading, token.values[0])
    dims(reading)


def _place(reading: Reading, word: str) -> None:
    places = set(filter(None, reading.attributes.get("place", "").split(" ")))
    reading.attributes["place"] = " ".join(sorted(places | {word}))


def dims(reading: Reading) -> None:
    """Measures without a name of their own, as a set."""
    found = set()
    for group in reading.numbers():
        lengths = group.lengths()
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
    if found:
        reading.set("dims", "; ".join(sorted(found)))


def any_numbers(reading: Reading) -> None:
    """Measures and ratings of any kind."""
    _points(reading)
    dims(reading)
    thread_token = reading.take("thread")
    if thread_token:
        reading.set("thread", thread_token.values[0])
        if thread_token.values[1]:
            reading.set("pitch", thread_token.values[1])
    family = tables().families.get(reading.family)
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
    plain = "".join(token.text.split()).replace("-", "") if token.kind == "power" else "".join(token.text.split())
    figures = plain.rstrip("abcdefghijklmnopqrstuvwxyz")
    unit = plain[len(figures) :]
    return figures + _RATED.get(unit, unit)


def _grams(token: Token) -> str:
    value, unit = number(token.values[0]), token.values[1]
    factor = (
        1000.0
        if unit.startswith("k")
        else 453.59237
        if unit.startswith("lb")
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


def fuse(reading: Reading) -> None:
    """A rating in A, V or W."""
    found = [token for token in reading.tokens if token.kind == "power"]
    for token in found:
        token.used = True
    if found:
        reading.set("rating", "; ".join(sorted(rated(token) for token in found)))
    dims(reading)


def stud_tool(reading: Reading) -> None:
    """A thread or size, or a range of them, perhaps a square."""
    threads = [token for token in reading.tokens if token.kind == "thread" and not token.used]
    if len(threads) == 2:
        low, high = (token.values[0].removeprefix("M") for token in threads)
        threads[0].used = threads[1].used = True
        reading.set("dims", f"{low} mm to {high} mm")
    elif token := reading.take("thread"):
        reading.set("dims", f"{token.values[0].removeprefix('M')} mm")
    _missing_square(reading)
    any_numbers(reading)


SHAPES: dict[str, Callable[[Reading], None]] = {
    "socket": socket,
    "plug-socket": socket,
    "crowfoot": socket,
    "lobe-socket": bit_socket,
    "bit-socket": bit_socket,
    "bit": bit,
    "key": tip_shape,
    "screwdriver": screwdriver,
    "wrench": wrench,
    "wrench2": wrench,
    "ratchet": drive_only,
    "drive-tool": drive_only,
    "drive-any": drive_only,
    "extension": extension,
    "adapter": adapter,
    "torque": torque,
    "tap": thread,
    "bolt": thread,
    "nut": thread,
    "thread-part": thread,
    "pin": two_ends("diameter", "length"),
    "washer": two_ends("inner", "outer", "thickness"),
    "seal-washer": two_ends("inner", "outer", "thickness"),
    "oring": two_ends("inner", "section_mm"),
    "clamp": clamp,
    "tie": tie,
    "glove": glove,
    "grit": grit,
    "oil": oil,
    "lock": lock,
    "chem": chem,
    "grease": chem,
    "seize": chem,
    "wipe": chem,
    "part": part,
    "fuse": fuse,
    "stud-tool": stud_tool,
    "drill": drill,
}


def _spec(reading: Reading, word: str) -> None:
    reading.attributes["spec"] = " ".join(sorted({*reading.attributes.get("spec", "").split(), word}))


# Shapes of parts that are told by where they go: words that mean nothing else are the place.
PLACED = frozenset({"part", "bolt", "nut", "thread-part", "clip", "oring", "pin", "seal-washer"})
# Attributes that only some shapes have; elsewhere the word is only colour.
_ONLY = {
    "depth": frozenset({"socket", "plug-socket", "lobe-socket", "bit-socket", "crowfoot", "set"}),
    "strength": frozenset({"lock"}),
    "jaws": frozenset({"puller", "any", "sized"}),
    "points": frozenset({"socket", "wrench", "wrench2", "crowfoot", "plug-socket", "set", "set-wrench"}),
}


def may_say(family: Family | None, name: str) -> bool:
    """Whether an attribute makes sense for the family."""
    return family is None or name not in _ONLY or family.shape in _ONLY[name]


def placed(family: Family | None) -> bool:
    """Whether the family is told by its place."""
    return family is not None and (family.shape in PLACED or (family.kind == "consumable" and family.shape == "sized"))


def _pliers(reading: Reading) -> None:
    """Tips of pliers: bent (45, 90 degrees) or straight."""
    for group in reading.numbers():
        if len(group.tokens) == 1 and not group.tokens[0].unit and group.tokens[0].values[0] in ("45", "90"):
            group.use()
            reading.set("form", "bent")
    while angle := reading.take("deg"):
        if angle.values[0] in ("45", "90"):
            reading.set("form", "bent")
    any_numbers(reading)


SHAPES |= {"pliers": _pliers, "circlip": _pliers}


# Kinds of torque wrench by the words for them.
MECHANISMS = {
    "click": "click",
    "beam": "beam",
    "dial": "dial",
    "digital": "digital",
    "electrical": "digital",
    "electronic": "digital",
    "fixed": "preset",
    "preset": "preset",
}


def takes_word(reading: Reading, said: Said) -> bool:
    """Whether the family gives this word a meaning of its own."""
    family = tables().families.get(reading.family)
    shape = family.shape if family else ""
    if shape == "glove" and said.word in GLOVE_TYPES:
        said.used = True
        reading.attributes.setdefault("glove_type", GLOVE_TYPES[said.word])
        return said.word != "leather"
    if shape == "glove" and said.word in GLOVES:
        said.used = True
        reading.set("glove_size", GLOVES[said.word])
        return True
    if shape in _TIPPED and said.word in PROFILES.keys() | {"internal", "external", "head", "male"}:
        said.used = True
        return True
    if shape == "torque" and said.word in MECHANISMS:
        said.used = True
        reading.set("mechanism", MECHANISMS[said.word])
        return True
    if family and placed(family) and said.word in ("petrol", "diesel"):
        said.used = True
        reading.set("fuel", said.word)
        return True
    if shape in ("bolt", "nut", "tap", "thread-part") and said.word in ("fine", "coarse", "finethread", "coarsethread"):
        said.used = True
        reading.set("pitch_class", said.word.removesuffix("thread"))
        return True
    if shape in ("pliers", "circlip") and said.word in ("bent", "straight"):
        said.used = True
        reading.set("form", said.word)
        return True
    if shape in ("wrench", "wrench2") and said.word == "shallow":
        said.used = True
        reading.set("length_class", "standard")
        return True
    if shape in ("wrench", "wrench2") and said.word in ("bent", "offset", "deep"):
        said.used = True
        return True
    if shape == "oil" and said.word in tables().specs:
        said.used = True
        _spec(reading, said.word)
        return True
    if family and placed(family) and said.word not in tables().neutral | family.absorbs | _SAYS | tables().negations:
        if said.word in tables().effects and tables().effects[said.word][0] not in ("side", "+") and shape != "part":
            return False
        said.used = True
        said.became = f"place {said.word}"
        _place(reading, said.word)
        return True
    return False


# Words that keep their own meaning on a part.
_SAYS = frozenset(
    {
        "set",
        "flange",
        "serrated",
        "left",
        "right",
        "lefthand",
        "magnetic",
        "hightemp",
        "selflocking",
        "staked",
        "finethread",
        "coarsethread",
    }
)


def finish(reading: Reading) -> None:
    """Last rules once every word is read."""
    family = tables().families.get(reading.family)
    shape = family.shape if family else ""
    reading.attributes.pop("gender", None)
    if reading.attributes.pop("drive2", "") and shape != "adapter":
        reading.doubts.append("two drives")
    if shape in _TIPPED and shape != "set-bit":
        profile(reading)
    if reading.family in _TWO_SYSTEMS:
        _system(reading)
    else:
        reading.attributes.pop("system", None)
    if shape == "glove" and reading.attributes.get("material") in ("nitrile", "latex", "vinyl"):
        reading.attributes.setdefault("glove_type", "disposable")
    coarse = COARSE_PITCH.get(reading.attributes.get("thread", ""))
    if coarse and "pitch" in reading.attributes and shape in ("bolt", "nut", "tap", "thread-part"):
        reading.attributes["pitch_class"] = "coarse" if reading.attributes["pitch"] == coarse else "fine"
    if shape == "lock":
        _strength(reading)
    if placed(family):
        _unknown_places(reading)
    if reading.kind == "consumable":
        packing(reading)
    _counts(reading)


def _system(reading: Reading) -> None:
    """Metric or inch, by the unit of the measures where no word says it."""
    units = {part.rpartition(" ")[2] for part in reading.attributes.get("dims", "").split("; ") if part}
    if len(units) == 1 and "system" not in reading.attributes:
        reading.set("system", "metric" if units == {"mm"} else "inch")


# Gauges that are made for one system or the other.
_TWO_SYSTEMS = frozenset({"feeler-gauge", "thread-gauge"})


def _strength(reading: Reading) -> None:
    colour = reading.attributes.get("colour", "")
    if reading.family == "retaining-compound":
        return  # their colours say nothing
    if "wicking" in reading.traits:
        reading.attributes["strength"] = "wicking"
        reading.traits.discard("wicking")
        reading.attributes.pop("colour", None)
    elif strength := LOCK_COLOURS.get(colour):
        reading.set("strength", strength)
        reading.attributes.pop("colour", None)


def _unknown_places(reading: Reading) -> None:
    """A word that nobody knows on a part names a vehicle or an engine: it counts."""
    for said in reading.words:
        if said.how == "unread" and not said.negated and said.text.isalpha() and len(said.text) > 2:
            said.how, said.used = "attribute", True
            said.became = f"for {said.text}"
            _place(reading, said.text)


def _counts(reading: Reading) -> None:
    """A whole number at the start or the end that nothing else claimed is how many."""
    numbers = [token for token in reading.tokens if token.kind not in ("stop", "sign", "dash", "end", "by")]
    for token in (numbers[:1] + numbers[-1:]) if len(numbers) > 1 else []:
        if (
            token.kind == "num"
            and not token.used
            and not token.unit
            and token.values[0].isdigit()
            and int(token.values[0]) <= 20
        ):
            token.used = True
            break
