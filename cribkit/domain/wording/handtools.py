"""The numbers of hand tools: sockets, bits, spanners, extensions, adapters, torque wrenches."""

from __future__ import annotations

import re
from itertools import pairwise

from cribkit.domain.wording.figures import any_numbers
from cribkit.domain.wording.lexer import Token
from cribkit.domain.wording.measure import number
from cribkit.domain.wording.reading import Reading
from cribkit.domain.wording.rule import USUAL_SHANK
from cribkit.domain.wording.sizes import Length, square
from cribkit.domain.wording.squares import lone_square, missing_square, one_size, points
from cribkit.domain.wording.tips import LETTERS, plausible, tip_from_numbers


def socket(reading: Reading) -> None:
    """Size across flats, square, points; a thread beside it is the bolt's, the flutes are the filter's."""
    points(reading)
    if token := reading.take("flutes"):
        reading.set("flutes", token.values[0])
    one_size(reading, 3, 105)
    if "size" in reading.attributes:
        reading.take("thread")
    _doubt_hex(reading)


def _doubt_hex(reading: Reading) -> None:
    """ "hex socket" is a six-point socket to some and a bit socket to others."""
    if (
        reading.family == "socket"
        and not reading.has("sixpoint", "twelvepoint", "eightpoint")
        and (any(said.text == "hexagon" for said in reading.words) or _hex_is_size(reading))
    ):
        reading.attributes.setdefault("points", "6")
    if (
        reading.family == "socket"
        and reading.has("hex")
        and "points" not in reading.attributes
        and not reading.has("sixpoint", "twelvepoint", "eightpoint")
        and not any(said.text in ("female", "af", "a/f") for said in reading.words)
    ):
        reading.doubts.append("hex socket: six point, or a bit?")


def _hex_is_size(reading: Reading) -> bool:
    """ "14 mm hex" at the end of a part is the hexagon that it goes on; a deep or impact socket is no bit."""
    tokens = [*reading.tokens, Token("stop", "")]
    measured = any(
        one.kind == "num" and one.unit and two.text in ("hex", "hx") and three.kind in ("stop", "end")
        for one, two, three in zip(tokens, tokens[1:], tokens[2:], strict=False)
    )
    return measured or (reading.has("hex") and reading.has("deep", "impact"))


# What a tip is, by the word for it and by the letters of its code.
PROFILES = {
    "insidehex": "hex",
    "hex": "hex",
    "sixlobe": "T",
    "sixlobeplus": "IP",
    "triplesquare": "XZN",
    "phillips": "PH",
    "crosspz": "PZ",
    "slotted": "slot",
    "robertson": "R",
    "jis": "JIS",
    "ribe": "RIBE",
}
TIPPED = frozenset({"key", "bit", "screwdriver", "bit-socket", "lobe-socket", "set-bit"})


def profile(reading: Reading) -> None:
    """The profile of the tip, by its code or its word; two that disagree are a doubt."""
    words = {one.word for one in reading.beside()} | reading.hints
    said = {PROFILES[word] for word in words if word in PROFILES and word != "hex"}
    tip = reading.attributes.get("tip", "")
    if " x " in tip:
        codes = {one.split(" ")[0].rstrip("0123456789.") for one in tip.split(" x ")}
        reading.attributes["profile"] = " x ".join(sorted(codes))
        return
    code = tip.rstrip("0123456789.") if " " not in tip else tip.split(" ")[0]
    if code in ("E", "IP"):
        said -= {"T"}
    if code in ("PZ", "JIS") and not any(word.text.startswith("ph") for word in reading.words):
        said -= {"PH"}  # a cross recess, and the code says which
    told = said | ({code} if code else set())
    if code in ("T", "IP") and any(word.word == "external" for word in reading.words):
        reading.doubts.append(f"external {tip}")
    if len(told) > 1 and reading.family == "offset-screwdriver":
        reading.attributes["profile"] = " x ".join(sorted(told))
    elif len(told) > 1:
        reading.doubts.append(" or ".join(sorted(told)))
    elif told:
        reading.set("profile", told.pop())
    elif reading.has("hex") and reading.family != "lobe-socket":
        reading.set("profile", "hex")
    reading.attributes.pop("side", None) if code in ("T", "IP", "E", "hex") else None


def set_profiles(reading: Reading) -> None:
    """The profiles of all tips of a set; keys of which only sizes in mm or inches are told are for hexagons."""
    words = {said.word for said in reading.beside()}
    told = {PROFILES[word] for word in words if word in PROFILES}
    if {"external"} <= words and "T" in told and reading.family != "key-set":
        told = told - {"T"} | {"E"}
    sizes = [part for name in ("tips", "tip") for part in reading.attributes.get(name, "").split("; ") if part]
    told |= {part.split(" ")[0].rstrip("0123456789.") for part in sizes}
    if not told and reading.family == "key-set" and "dims" in reading.attributes:
        told = {"hex"}
    if "ph" in {said.text for said in reading.words}:
        told |= {"PH"}
    if told:
        reading.attributes["profile"] = " x ".join(sorted(told))


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


def bit_socket(reading: Reading) -> None:
    """A tip and a square."""
    missing_square(reading)
    if _MALE_SQUARE.search(reading.text.lower()) and (across := _lone_mm(reading)):
        reading.set("profile", "square")
        reading.set("tip", f"square {across}")
    tip_from_numbers(reading)
    _rest_length(reading)


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
            "tip" in reading.attributes
            or len(reading.numbers()) > 1
            or any(one.kind in ("numbered", "thread") for one in tokens)
        )
        if shank or (after in ("hex", "hexagon", "hx") and another):
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
    _rest_length(reading)


def bit_set(reading: Reading) -> None:
    """The hex shank that all bits of a set have, then the sizes."""
    tokens = [token for token in reading.tokens if token.kind not in ("dash", "stop")]
    for place, token in enumerate(tokens[:-1]):
        after = [one.text for one in tokens[place + 1 : place + 3]]
        if token.kind == "num" and not token.used and _shank_size(token) and {"shank", "shk", "hex shank"} & set(after):
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
    tip_from_numbers(reading)
    _rest_length(reading)


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
        reading.attributes["tip"] = " x ".join(sorted(set(tips)))
        reading.doubts = [doubt for doubt in reading.doubts if not doubt.startswith("tip ")]


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


# "PH3 x 6": a blade of so few can only be told in inches. Common practice, no source.
LONGEST_IN_INCHES = 12


# The larger end of a double-ended spanner is no more than this times the smaller; a wider pair is a range of sizes.
DOUBLE_ENDED = 1.25


def wrench(reading: Reading) -> None:
    """One or two sizes across flats."""
    points(reading)
    reading.take("teeth")
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
    if token := reading.take("teeth"):
        reading.set("teeth", token.values[0])
    any_numbers(reading)


def extension(reading: Reading) -> None:
    """The square and a length."""
    lone_square(reading)
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


def adapter(reading: Reading) -> None:
    """Two squares. The female end takes the tool's drive, the male end gives the next; female is named first."""
    for token in reading.tokens:
        if token.kind == "num" and token.unit == "m" and token.values[0] == "1":
            token.unit, token.gender = "in", "m"
    tokens = [token for token in reading.tokens if token.kind == "num" and square(token)]
    hexed = [place for place, token in enumerate(reading.tokens) if token.text in ("hex", "shank")]
    if len(tokens) > 3 and sorted(map(square, tokens[:2])) == sorted(map(square, tokens[2:4])):
        for token in tokens[:2]:  # "1 in to 3/4 in adapter (female 1, male 3/4)": told again with its ends
            token.used, token.gender = True, ""
        tokens = tokens[2:4]
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
    for said in reading.words:
        if not said.used and said.text in ("x", "m", "f", "by"):
            said.how, said.used = "known", True
    if hexed:
        reading.set("hex_end", "yes")
        for_power = any(said.text in ("drill", "cordless", "driver") for said in reading.words)
        if reading.family == "adapter" and (for_power or any(token.text == "shank" for token in reading.tokens)):
            reading.family = "drive-drill-adapter"
        reading.use("hex", "shank")
    if len(drives) == 2:
        swap = genders[0] == "m" or genders[1] == "f" or (not any(genders) and _hex_last(reading, tokens))
        if genders[0] and (genders[0] == genders[1] or genders[0] == "?"):
            reading.doubts.append("two ends of one gender")
        drives = drives[::-1] if swap else drives
        reading.set("drive_in", drives[0])
        reading.set("drive_out", drives[1])
        _adapter_length(reading)
    elif drives:
        driven = genders[0] == "m" or (bool(hexed) and genders[0] != "f" and not _hex_follows(reading, tokens[0]))
        reading.set("drive_out" if driven else "drive_in", drives[0])


def _adapter_length(reading: Reading) -> None:
    """How long it is: a measure that is left beside the two squares."""
    left = [group for group in reading.numbers() if len(group.tokens) == 1 and group.tokens[0].unit in ("mm", "in")]
    if len(left) == 1 and float(left[0].lengths()[0].mm) >= SHORTEST_ADAPTER and "length" not in reading.attributes:
        left[0].use()
        reading.set("length", left[0].lengths()[0].text)


# Shorter than any adapter of two squares, mm. Common practice, no source.
SHORTEST_ADAPTER = 28.0


def _hex_follows(reading: Reading, end: Token) -> bool:
    """Whether a hexagon is named after the square: the square is then what drives."""
    place = next(place for place, token in enumerate(reading.tokens) if token is end)
    return any(token.text in ("hex", "shank") for token in reading.tokens[place + 1 :])


def _hex_last(reading: Reading, ends: list[Token]) -> bool:
    """Whether the second end is the hexagon that a drill takes: it is the one that is driven."""
    places = [next(place for place, token in enumerate(reading.tokens) if token is end) for end in ends]
    follows = [token.text for token in reading.tokens[places[1] + 1 : places[1] + 3]]
    between = [token.text for token in reading.tokens[places[0] + 1 : places[1]]]
    return "hex" in follows and "hex" not in between


def multiplier(reading: Reading) -> None:
    """Two squares, in and out, and a ratio; one square alone is left open as to its end."""
    for token in reading.tokens:
        if token.kind == "mixed" and token.text.startswith("ratio"):
            token.used = True
            reading.set("ratio", token.text.removeprefix("ratio"))
    drive = reading.attributes.get("drive", "")
    adapter(reading)
    if "drive_out" not in reading.attributes or "drive_in" not in reading.attributes:
        drive = reading.attributes.pop("drive_in", "") or reading.attributes.pop("drive_out", "") or drive
        if drive:
            reading.set("drive", drive)


def holder(reading: Reading) -> None:
    """What holds bits: the hex for them, perhaps a square."""
    for before, token, after in zip(reading.tokens, reading.tokens[1:], [*reading.tokens[2:], None], strict=False):
        del before
        if token.kind == "num" and not token.used and after is not None and after.text in ("hex", "hexagon", "hx"):
            _shank(reading, token)
    first = reading.tokens[0]
    if first.kind == "num" and not first.used and len(reading.tokens) > 1 and reading.tokens[1].text in ("hex", "hx"):
        _shank(reading, first)
    lone_square(reading)
    _rest_length(reading)


def _shank(reading: Reading, token: Token) -> None:
    token.used = True
    shank = Length(number(token.values[0]), token.unit or ("mm" if token.values[0] == "10" else "in")).text
    if shank != USUAL_SHANK:
        reading.set("shank", shank)


_ENDS = {"female": "f", "fem": "f", "f": "f", "internal": "f", "male": "m", "m": "m", "external": "m"}


def _genders(reading: Reading, squares: list[Token]) -> list[str]:
    """f or m of each square: stuck to the number, or the words about ends in the order of the numbers."""
    said = []
    for token in reading.tokens:
        if any(token is one for one in squares):
            said += [token.gender] if token.gender else []
        elif token.kind == "word" and token.text in _ENDS:
            said.append(_ENDS[token.text])
    if not said and len(squares) == 2:
        return _by_use(reading, squares)
    if len(said) > len(squares):
        return ["?" for _ in squares]
    if len(said) == 1 and len(squares) == 2:
        return (
            [*said, ""]
            if squares[0].gender or not _between(reading, squares)
            else _one_gender(reading, squares, said[0])
        )
    return [*said, *("" for _ in squares)][: len(squares)]


# What an adapter's female end goes on, and what goes on its male end.
_DRIVES = frozenset({"ratchet", "ratchets", "handle", "bar", "breaker", "wrench", "gun", "torque", "impact"})
_DRIVEN = frozenset({"sockets", "skts", "extensions"})


def _by_use(reading: Reading, squares: list[Token]) -> list[str]:
    """The ends told by use: 3/8 sockets on a 1/2 ratchet."""
    found = []
    for one in squares:
        place = next(place for place, token in enumerate(reading.tokens) if token is one)
        nearest = [token.text for token in reading.tokens[place + 1 : place + 4] if token.kind in ("word", "num")]
        ends = ("f" if text in _DRIVES else "m" if text in _DRIVEN else "" for text in _until_number(nearest))
        found.append(next((end for end in ends if end), ""))
    return found if "" in found or len(set(found)) == 2 else ["", ""]


def _until_number(texts: list[str]) -> list[str]:
    stop = next((place for place, text in enumerate(texts) if text[:1].isdigit()), len(texts))
    return texts[:stop]


def _between(reading: Reading, squares: list[Token]) -> bool:
    return not squares[0].gender


def _one_gender(reading: Reading, squares: list[Token], gender: str) -> list[str]:
    """Only one end is named: that of the number that the word stands nearest to."""
    word = next(place for place, token in enumerate(reading.tokens) if token.text in _ENDS or token.gender)
    places = [next(place for place, token in enumerate(reading.tokens) if token is one) for one in squares]
    parted = any(token.kind in ("stop", "end") for token in reading.tokens[places[0] + 1 : word])
    first = abs(places[0] - word) - abs(places[1] - word) < (0 if parted else 1)
    return [gender, ""] if first else ["", gender]


def torque(reading: Reading) -> None:
    """A range in N·m and a square."""
    lone_square(reading)
    scales = []
    while token := reading.take("torque"):
        scales.append(token.values)
    ranges = [values for values in scales if len(values) == 2]
    if ranges:
        reading.set("range", " - ".join(ranges[0]) + " N·m")
    elif scales:
        reading.set("range", f"{scales[0][0]} N·m")
