"""The numbers of hand tools: sockets, bits, spanners, extensions, adapters, torque wrenches."""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise

from cribkit.domain.wording.figures import any_numbers
from cribkit.domain.wording.implied import USUAL_SHANK
from cribkit.domain.wording.lexer import Token
from cribkit.domain.wording.measure import mm_of, number
from cribkit.domain.wording.reading import Reading
from cribkit.domain.wording.sizes import Length, square
from cribkit.domain.wording.squares import (
    METRIC_ONLY_SQUARES,
    PLAIN_LENGTHS,
    length_left,
    lone_square,
    metric,
    missing_square,
    one_size,
    points,
)
from cribkit.domain.wording.tips import LETTERS, PROFILES, WIDEST, plausible, tip_from_numbers


def socket(reading: Reading) -> None:
    """Size across flats, square, points; a thread beside it is the bolt's, the flutes are the filter's."""
    points(reading)
    if token := reading.take("flutes"):
        reading.set("flutes", token.values[0])
    if reading.family == "oil-filter-socket":
        _two_cups(reading)
    one_size(reading, 3, 105)
    if "size" in reading.attributes:
        reading.take("thread")
        _how_long(reading)
    _doubt_hex(reading)


def _how_long(reading: Reading) -> None:
    """The length of a deep socket or of the shaft of a nut driver: a measure much greater than that of the hexagon."""
    sizes = [size for size in reading.attributes["size"].split(" x ") if size.endswith((" mm", " in"))]
    least = max([SHORTEST_SOCKET, *(2 * float(mm_of(size)) for size in sizes)])
    for before, token in pairwise(reading.tokens):
        if (before.kind == "by" or before.text == "x") and token.kind == "num" and not (token.used or token.unit):
            token.unit = "mm"  # 7MM X 125
    if sizes:
        length_left(reading, least)


# The length from which a second measure of a socket is no other size, mm. Common practice, no source.
SHORTEST_SOCKET = 38


def _two_cups(reading: Reading) -> None:
    """A cap for filters of two sizes: 74/76 mm."""
    for group in reading.numbers():
        sizes = group.lengths()
        if group.relation == "by" and len(sizes) == 2 and all(50 <= float(size.mm) <= 140 for size in sizes):
            group.use()
            reading.set("size", " x ".join(size.text for size in sizes))
            return


def _doubt_hex(reading: Reading) -> None:
    """ "hex socket" is a six-point socket to some and a bit socket to others."""
    if (
        reading.family == "socket"
        and not reading.has("sixpoint", "twelvepoint", "eightpoint")
        and (any(said.text == "hexagon" and not said.aside for said in reading.words) or _hex_is_size(reading))
    ):
        reading.attributes.setdefault("points", "6")
    if (
        reading.family == "socket"
        and not _is_bolt_size(reading)
        and any(said.word == "hex" and not said.aside and not said.negated for said in reading.words)
        and "points" not in reading.attributes
        and not reading.has("sixpoint", "twelvepoint", "eightpoint")
        and not any(said.text in ("female", "af", "a/f") for said in reading.words)
        and not _SIZE_OF_HEX.search(reading.plain)
    ):
        reading.doubts.append("hex socket: six point, or a bit?")


# "8 mm hex socket" is what turns a hexagon of that size; "hex socket, 8 mm" may be a bit. Common practice, no source.
_SIZE_OF_HEX = re.compile(r"\d ?(?:mm|in\.?|inch|\")? hex (?:sockets?|skts?|sckts?)\b")


def _is_bolt_size(reading: Reading) -> bool:
    """Whether the hexagon is greater than any that a bit socket turns, mm. Common practice, no source."""
    sizes = reading.attributes.get("size", "").split(" x ")
    return all(size.endswith(" mm") and float(size.removesuffix(" mm")) > GREATEST_BIT for size in sizes)


GREATEST_BIT = 22


def _hex_is_size(reading: Reading) -> bool:
    """ "14 mm hex" at the end of a part is the hexagon that it goes on; a deep or impact socket is no bit."""
    tokens = [*reading.tokens, Token("stop", "")]
    measured = any(
        one.kind == "num" and one.unit and two.text in ("hex", "hx") and three.kind in ("stop", "end")
        for one, two, three in zip(tokens, tokens[1:], tokens[2:], strict=False)
    ) and not any(said.text == "for" for said in reading.words)  # "for a 12 mm hexagon" says no points
    return measured or (reading.has("hex") and reading.has("deep", "impact"))


def tip_shape(reading: Reading) -> None:
    """A tip, perhaps a length."""
    if not reading.has("sixlobe", "fivelobe", "triplesquare", "phillips", "slotted", "robertson", "ribe", "crosspz"):
        reading.hints.add("insidehex")
    tip_from_numbers(reading)
    _rest_length(reading)


# A square that goes into the plug: no drive, no recess of a screw.
_MALE_SQUARE = re.compile(r"\bmale sq(?:uare)?\b|\bsq(?:uare)? male\b")


def _lone_mm(reading: Reading) -> str:
    """The one measure in mm, now used: "8 mm male square"."""
    found = [group for group in reading.numbers() if len(group.tokens) == 1 and group.tokens[0].unit == "mm"]
    if len(found) != 1:
        return ""
    found[0].use()
    return found[0].lengths()[0].text


def plug_key(reading: Reading) -> None:
    """The squares of a key for drain plugs: 8, 10 and 12 mm are what goes into the plug, no drives."""
    _free_of_drives(reading)
    any_numbers(reading)


def _free_of_drives(reading: Reading) -> None:
    """Whole millimetres beside "square" are what goes into the plug; the square in inches stays the drive."""
    drives = [token for token in reading.tokens if token.kind == "num" and token.used and square(token)]
    plain = [token for token in drives if metric(token) and token.values[0] not in METRIC_ONLY_SQUARES]
    if plain:
        for token in plain:
            token.used, token.unit = False, "mm"
        reading.attributes.pop("drive", None)
        reading.attributes.pop("drive2", None)
        for token in drives:
            if token not in plain:
                reading.set("drive", square(token))


def bit_socket(reading: Reading) -> None:
    """A tip and a square."""
    male = _MALE_SQUARE.search(reading.plain) is not None
    other = reading.has("insidehex", "sixlobe", "triplesquare") or reading.has_said("hex")
    if male or (not other and reading.has_said("square") and reading.has_said("sumpplug", "plug", "filler")):
        _free_of_drives(reading)
    missing_square(reading)
    squared = any(said.word == "square" and not said.used for said in reading.words)
    if (squared or male) and (across := _lone_mm(reading)):
        reading.set("profile", "square")
        reading.set("tip", f"square {across}")
    tip_from_numbers(reading)
    _rest_length(reading)


SHANKS = frozenset({"shank", "shk", "shnk", "hex shank"})
_SHANK_OR_DRIVE = SHANKS | {"drive"}


def bit(reading: Reading) -> None:
    """A tip, the hex shank, a length."""
    tokens = [token for token in reading.tokens if token.kind != "dash"]
    named = any(said.word == "shank" for said in reading.words)  # then a hexagon beside a number is the tip
    for place, token in enumerate(tokens):
        after = tokens[place + 1].text if place + 1 < len(tokens) else ""
        later = tokens[place + 2].text if place + 2 < len(tokens) else ""
        if token.kind != "num" or token.used:
            continue
        if _stout(token) and (after in SHANKS or _stout_hex(reading, after, later)):
            token.used = True
            reading.set("shank", STOUT[token.values[0]])
            reading.use("shank")
            continue
        if not _shank_size(token):
            continue
        beside = tokens[place + 1].kind == "word" if place + 1 < len(tokens) else False
        shank = after in _SHANK_OR_DRIVE or (beside and later in _SHANK_OR_DRIVE)
        another = (
            "tip" in reading.attributes
            or len(reading.numbers()) > 1
            or any(one.kind in ("numbered", "thread") for one in tokens)
        )
        if shank or (after in ("hex", "hexagon", "hx") and another and not named):
            token.used = True
            reading.set("shank", Length(number(token.values[0]), token.unit or "in").text)
            reading.use("shank", "drive")
    tip_from_numbers(reading)
    for token in reading.tokens:
        if (
            "tip" in reading.attributes
            and token.kind == "num"
            and not token.used
            and token.values[0] in ("1/4", "5/16")
        ):
            token.used = True
            reading.set("shank", f"{token.values[0]} in")
    if reading.has_said("doubleended") and sum(token.kind == "tip" for token in reading.tokens) > 1:
        _two_tips(reading)
    _rest_length(reading)


# Shanks of bits in mm; 8 mm is what is called 5/16 in. Common practice, no source.
STOUT = {"8": "5/16 in", "11": "11 mm", "12": "12 mm", "14": "14 mm", "17": "17 mm", "22": "22 mm"}


def _stout(token: Token) -> bool:
    return token.unit == "mm" and token.values[0] in STOUT


# Recesses that come in numbered sizes.
_NUMBERED = ("phillips", "crosspz", "robertson")


def _stout_hex(reading: Reading, after: str, later: str) -> bool:
    """Whether a hexagon is the shank: its word says so, or the tip is told by a code ("T50 BIT 14MM HEX")."""
    told = "tip" in reading.attributes or any(token.kind == "thread" for token in reading.tokens)
    told = told or (reading.has(*_NUMBERED) and any(token.kind == "numbered" for token in reading.tokens))
    return after in ("hex", "hexagon", "hx") and (later in SHANKS or told)


def bit_set(reading: Reading) -> None:
    """The hex shank that all bits of a set have, then the sizes."""
    tokens = [token for token in reading.tokens if token.kind not in ("dash", "stop")]
    for place, token in enumerate(tokens[:-1]):
        after = [one.text for one in tokens[place + 1 : place + 3]]
        if token.kind == "num" and not token.used and _shank_size(token) and SHANKS & set(after):
            token.used = True
            reading.set("shank", Length(number(token.values[0]), token.unit or "in").text)
    if reading.family == "bit-socket-set":
        lone_square(reading)
    any_numbers(reading)


def _shank_size(token: Token) -> bool:
    """Whether a number is the hex shank of bits: 1/4 or 5/16 in, 10 mm."""
    return (token.unit != "mm" and token.values[0] in ("1/4", "5/16")) or (
        token.unit == "mm" and token.values[0] == "10"
    )


def screwdriver(reading: Reading) -> None:
    """A tip and the blade's length; an offset one has a tip at each end."""
    if reading.family == "offset-screwdriver":
        _two_tips(reading)
    _flat_blade(reading)
    tip_from_numbers(reading)
    _rest_length(reading)
    mixed = [token for token in reading.tokens if token.kind == "num" and not token.used and "-" in token.values[0]]
    if len(mixed) == 1 and "tip" in reading.attributes and "length" not in reading.attributes:  # PH2 STUBBY 1-1/2
        mixed[0].used, mixed[0].unit = True, "in"
        reading.set("length", Length(number(mixed[0].values[0].replace("-", " ")), "in").text)


# Patterns of blades that only slotted drivers have.
_FLAT_BLADES = frozenset({"terminal", "flared", "cabinet", "parallel", "engineers", "electricians", "electrician"})


def _flat_blade(reading: Reading) -> None:
    """A blade of which only width and length are told is flat: 5.5 x 100; a person confirms unless the pattern says so.

    Common practice, no source.
    """
    if "tip" in reading.attributes or reading.has(*PROFILES):
        return
    named = any(said.text in _FLAT_BLADES for said in reading.words)
    pairs = [group for group in reading.numbers() if group.relation == "by" and len(group.tokens) == 2]
    sized = any(float(group.lengths()[0].mm) <= WIDEST < 25 <= float(group.lengths()[1].mm) for group in pairs)
    if named or sized:
        reading.hints.add("slotted")
    if sized and not named:
        reading.doubts.append("profile not said: slotted by its size")


_CROSS_SIZES = frozenset("01234")


def _two_tips(reading: Reading) -> None:
    """Both tips of an offset screwdriver: PH1 x PH2, or a slot and a PH2."""
    tips = []
    for token in reading.tokens:
        if token.kind == "tip" and token.values[0] in LETTERS:
            tips.append(f"{LETTERS[token.values[0]][1]}{token.values[1]}")
            token.used = True
        elif token.kind == "numbered" and reading.has("phillips", "crosspz"):
            tips.append(f"{'PH' if reading.has('phillips') else 'PZ'}{token.values[0]}")
            token.used = True
        elif token.kind == "num" and token.text in _CROSS_SIZES and not tips and reading.has("phillips"):
            tips.append(f"PH{token.text}")
            token.used = True
    if reading.has("slotted") and tips:
        for group in reading.numbers():
            if len(group.tokens) == 1 and group.tokens[0].unit in ("mm", "") and plausible(group.lengths()[0], "slot"):
                group.use()
                tips.append(f"slot {group.lengths()[0].text}")
                break
    if len(tips) == 1:
        reading.set("tip", tips[0])
    elif tips:
        reading.decide("tip", " x ".join(sorted(set(tips))))


def _rest_length(reading: Reading) -> None:
    """A single measured number that is left, or one after "x", is the length in mm."""
    for before, token in pairwise(reading.tokens):
        crossed = before.kind == "by" or before.text == "x"
        if token.kind == "num" and not token.used and not token.unit and crossed and token.values[0].isdigit():
            inches = int(token.values[0]) <= LONGEST_IN_INCHES and not reading.attributes.get("tip", "mm").endswith(
                "mm"
            )
            token.unit = "in" if inches else "mm"
    for group in reading.numbers():
        if (
            len(group.tokens) == 1
            and group.tokens[0].unit
            and float(group.lengths()[0].mm) >= 15
            and "length" not in reading.attributes
        ):
            group.use()
            reading.set("length", group.lengths()[0].text)
    left = reading.numbers()
    if {"tip", "length"} & reading.attributes.keys() == {"tip"} and len(left) == 1 and len(left[0].tokens) == 1:
        token = left[0].tokens[0]
        if not token.unit and token.values[0] in PLAIN_LENGTHS and int(token.values[0]) >= SHORTEST_BARE:
            token.used = True
            reading.set("length", f"{token.values[0]} mm")


# A bare number of mm beside a tip is a length from here on: "PH2 100". Common practice, no source.
SHORTEST_BARE = 50


# "PH3 x 6": a blade of so few can only be told in inches. Common practice, no source.
LONGEST_IN_INCHES = 12


# The larger end of a double-ended spanner is no more than this times the smaller; a wider pair is a range of sizes.
DOUBLE_ENDED = 1.25


def _teeth(reading: Reading) -> None:
    """How fine it ratchets."""
    if token := reading.take("teeth"):
        reading.set("teeth", token.values[0])


def wrench(reading: Reading) -> None:
    """One or two sizes across flats."""
    points(reading)
    _teeth(reading)
    reading.take("deg")  # of the offset
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
            and float(lengths[1].mm) > DOUBLE_ENDED * float(lengths[0].mm)
        ):
            continue
        four = reading.family == "ratcheting-wrench" and group.relation == "by"  # four in one: 8x10, 12x13
        if fits and not (bare and sizes and not four):
            sizes += lengths
            group.use()
    ends = len({length.text for length in sizes})
    if (ends > 1 and len(sizes) > 2 and reading.family == "combination-wrench") or (
        ends == 3 and reading.family in ("open-end-wrench", "ring-wrench", "flare-nut-wrench")
    ):
        reading.doubts.append("several sizes")
    if sizes:
        texts = sorted(
            {length.text for length in sizes}, key=lambda text: (float(number(text.split()[0].replace("-", " "))), text)
        )
        reading.set("size", " x ".join(texts))


def socket_set(reading: Reading) -> None:
    """The square that all have, then the sizes."""
    lone_square(reading)
    any_numbers(reading)


def wrench_set(reading: Reading) -> None:
    """Sizes; only crowfoot wrenches have a square."""
    if reading.has("crowfoot"):
        lone_square(reading)
    any_numbers(reading)


def lobe_wrench(reading: Reading) -> None:
    """External six-lobe sizes of a flat spanner, both ends."""
    tips = [token.values[1] for token in reading.tokens if token.kind == "tip" and token.values[0] in ("e", "txe")]
    reading.doubts = [doubt for doubt in reading.doubts if not doubt.startswith("tip E")]
    reading.attributes.pop("tip", None)
    if sizes := sorted(set(tips), key=int):
        reading.set("size", " x ".join(f"E{size}" for size in sizes))
    _rest_length(reading)


def drive_only(reading: Reading) -> None:
    """The square, then whatever else is measured."""
    lone_square(reading)
    _teeth(reading)
    any_numbers(reading)


def _length_by_square(reading: Reading) -> None:
    """ "12 in x 3/8 in": the length first."""
    for group in reading.numbers():
        if group.relation == "by" and len(group.tokens) == 2 and "drive" not in reading.attributes:
            long, across = float(group.lengths()[0].mm), group.tokens[1]
            if long >= SHORTEST_EXTENSION and not square(group.tokens[0]) and "/" in across.text and square(across):
                across.used = True
                reading.set("drive", square(across))


# No extension is shorter, mm. Common practice, no source.
SHORTEST_EXTENSION = 40


def _lengths(reading: Reading) -> None:
    """All lengths of a set of extensions."""
    found = [group for group in reading.numbers() if len(group.tokens) == 1 and float(group.lengths()[0].mm) >= 20]
    if len(found) > 1:
        for group in found:
            group.use()
        reading.set("length", "; ".join(group.lengths()[0].text for group in found))


def extension(reading: Reading) -> None:
    """The square and a length."""
    _length_by_square(reading)
    lone_square(reading)
    if reading.has("set"):
        _lengths(reading)
    for group in reading.numbers():
        if len(group.tokens) != 1 or "length" in reading.attributes:
            continue
        length, token = group.lengths()[0], group.tokens[0]
        if float(length.mm) >= 20:
            group.use()
            reading.set("length", length.text)
        elif token is not reading.tokens[0] and not token.unit and token.values[0].isdigit() and _inch_square(reading):
            group.use()
            reading.set("length", f"{token.values[0]} in")
    if "drive" not in reading.attributes:
        for group in reading.numbers():
            if len(group.tokens) == 1 and square(group.tokens[0]):
                group.use()
                reading.set("drive", square(group.tokens[0]))


def _inch_square(reading: Reading) -> bool:
    """Whether a square is written as a fraction of an inch, so that a bare length beside it is in inches too."""
    return any(token.kind == "num" and token.used and "/" in token.values[0] for token in reading.tokens)


def holder(reading: Reading) -> None:
    """What holds bits: the hex for them, perhaps a square."""
    for before, token, after in zip(reading.tokens, reading.tokens[1:], [*reading.tokens[2:], None], strict=False):
        del before
        if token.kind == "num" and not token.used and after is not None and after.text in ("hex", "hexagon", "hx"):
            _shank(reading, token)
    first = reading.tokens[0]
    if first.kind == "num" and not first.used and len(reading.tokens) > 1 and reading.tokens[1].text in ("hex", "hx"):
        _shank(reading, first)
    _bare_shank(reading)
    lone_square(reading)
    _rest_length(reading)


def _bare_shank(reading: Reading) -> None:
    """The hex of a holder without its word: 5/16, 10 mm, or 1/4 where it is alone or stands beside another square."""
    for token in reading.tokens:
        if token.kind == "num" and not token.used and _shank_size(token):
            return _shank(reading, token)
    return None


def _shank(reading: Reading, token: Token) -> None:
    token.used = True
    shank = Length(number(token.values[0]), token.unit or ("mm" if token.values[0] == "10" else "in")).text
    if shank != USUAL_SHANK:
        reading.set("shank", shank)


def torque(reading: Reading) -> None:
    """A range in N·m and a square."""
    lone_square(reading)
    scales = []
    while token := reading.take("torque"):
        scales.append(token.values)
    ranges = [values for values in scales if len(values) == 2]
    for ends in ranges:
        if ends is ranges[0] or not _same_scale(ranges[0], ends):  # a scale that contradicts the first is a doubt
            reading.set("range", " - ".join(ends) + " N·m")
    if scales and not ranges:
        reading.set("range", f"{'to ' if _UP_TO.search(reading.plain) else ''}{scales[0][0]} N·m")


def _same_scale(one: Sequence[str], other: Sequence[str]) -> bool:
    """Whether two scales of a wrench are one in two units: the marks at their ends are round figures of either."""
    (low, high), (low2, high2) = (tuple(map(float, ends)) for ends in (one, other))
    return abs(high - high2) <= END_ROUNDED * high and abs(low - low2) <= START_ROUNDED * max(low, low2)


# How far the ends of two scales of one wrench lie apart as a share, since each begins and ends at a round figure.
END_ROUNDED, START_ROUNDED = 0.1, 0.5
# Only the upper end of a scale is told.
_UP_TO = re.compile(r"\b(?:max(?:imum)?\.?|up to|upto) ?\d")
