"""The two ends of adapters and multipliers: which square takes the tool's drive, and which gives the next."""

from __future__ import annotations

from cribkit.domain.wording.lexer import Token
from cribkit.domain.wording.reading import Reading
from cribkit.domain.wording.sizes import square
from cribkit.domain.wording.squares import length_left


def adapter(reading: Reading) -> None:
    """Two squares. The female end takes the tool's drive, the male end gives the next; female is named first."""
    for token in reading.tokens:
        if token.kind == "num" and token.unit == "m" and token.values[0] == "1":
            token.unit, token.gender = "in", "m"
    tokens = [token for token in reading.tokens if token.kind == "num" and square(token)]
    hexed = [place for place, token in enumerate(reading.tokens) if token.text in ("hex", "hx", "shank", "shk")]
    if len(tokens) > 3 and sorted(map(square, tokens[:2])) == sorted(map(square, tokens[2:4])):
        for token in tokens[:2]:  # "1 in to 3/4 in adapter (female 1, male 3/4)": told again with its ends
            token.used, token.gender = True, ""
        tokens = tokens[2:4]
    told = _told_again(reading, tokens)
    tokens = told or tokens[:2]
    drives = [square(token) for token in tokens]
    reading.attributes.pop("drive", None)
    reading.attributes.pop("drive2", None)
    reading.attributes.pop("gender", None)
    if "length" in reading.attributes and reading.attributes.get("length_class") == "long":
        reading.attributes.pop("length_class")
    genders = [token.gender for token in told] if told else _genders(reading, tokens)
    for token in tokens:
        token.used = True
    reading.use("drive", "square", "female", "male")
    for said in reading.words:
        if not said.used and said.text in ("x", "m", "f", "by"):
            said.how, said.used = "known", True
    if hexed:
        reading.set("hex_end", "yes")
        if reading.family == "adapter":
            reading.family = "drive-drill-adapter"
        reading.use("hex", "shank")
    if len(drives) == 2:
        swap = genders[0] == "m" or genders[1] == "f" or (not any(genders) and _hex_last(reading, tokens))
        if genders[0] and (genders[0] == genders[1] or genders[0] == "?"):
            reading.doubts.append("two ends of one gender")
        drives = drives[::-1] if swap else drives
        reading.set("drive_in", drives[0])
        reading.set("drive_out", drives[1])
        length_left(reading, SHORTEST_ADAPTER)
    elif drives:
        driven = genders[0] == "m" or (bool(hexed) and genders[0] != "f" and not _hex_follows(reading, tokens[0]))
        reading.set("drive_out" if driven else "drive_in", drives[0])


def _told_again(reading: Reading, tokens: list[Token]) -> list[Token]:
    """ "1/2 to 3/4, female 1/2": one of the two squares stands again with its end."""
    if len(tokens) != 3 or square(tokens[0]) == square(tokens[1]):
        return []
    place = reading.place_of(tokens[2])
    beside = {token.text for token in reading.tokens[place - 1 : place + 2] if token is not tokens[2]}
    gender = "f" if beside & {"female", "fem", "f"} else "m" if beside & {"male", "m"} else tokens[2].gender
    others = [token for token in tokens[:2] if square(token) != square(tokens[2])]
    if not gender or len(others) != 1:
        return []
    for token in tokens:
        token.used = True
    tokens[2].gender, others[0].gender = gender, "m" if gender == "f" else "f"
    return [tokens[2], others[0]]


# Shorter than any adapter of two squares, mm. Common practice, no source.
SHORTEST_ADAPTER = 28.0


def _hex_follows(reading: Reading, end: Token) -> bool:
    """Whether a hexagon is named after the square: the square is then what drives."""
    place = reading.place_of(end)
    return any(token.text in ("hex", "shank") for token in reading.tokens[place + 1 :])


def _hex_last(reading: Reading, ends: list[Token]) -> bool:
    """Whether the second end is the hexagon that a drill takes: it is the one that is driven."""
    places = [reading.place_of(end) for end in ends]
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


GENDERS = {"female": "f", "fem": "f", "f": "f", "male": "m", "m": "m"}
_ENDS = GENDERS | {"internal": "f", "external": "m"}


def _genders(reading: Reading, squares: list[Token]) -> list[str]:
    """f or m of each square: stuck to the number, or the words about ends in the order of the numbers."""
    said = []
    for token in reading.tokens:
        if any(token is one for one in squares):
            said += [token.gender] if token.gender else []
        elif token.kind in ("word", "sign") and token.text in _ENDS:
            said.append(_ENDS[token.text])
    if not said and len(squares) == 2:
        return _by_use(reading, squares)
    if len(said) > len(squares):
        return ["?" for _ in squares]
    if len(said) == 1 and len(squares) == 2:
        return [*said, ""] if squares[0].gender else _one_gender(reading, squares, said[0])
    return [*said, *("" for _ in squares)][: len(squares)]


# What an adapter's female end goes on, and what goes on its male end.
_DRIVES = frozenset({"ratchet", "ratchets", "handle", "bar", "breaker", "wrench", "gun", "torque"})
_DRIVEN = frozenset({"sockets", "skts", "extensions"})


def _by_use(reading: Reading, squares: list[Token]) -> list[str]:
    """The ends told by use: 3/8 sockets on a 1/2 ratchet. What the whole is for ("for a gun") tells no end."""
    found, led = [], []
    for one in squares:
        place = reading.place_of(one)
        nearest = _up_to_stop(reading.tokens[place + 1 : place + 4])
        on = place > 0 and reading.tokens[place - 1].text in _ON_A
        ends = [_end_of(text, on) for text in nearest]
        found.append(next((end for end in ends if end), ""))
        led.append("for" in nearest)
    told = len(set(found)) == 2 and not ("" in found and any(led))
    return found if told else ["", ""]


def _end_of(text: str, on: bool) -> str:
    """ "on a 1/2 impact" is the tool that drives; "1/2 to 3/8 impact" only says how the adapter is built."""
    if text in _DRIVES or (on and text == "impact"):
        return "f"
    return "m" if text in _DRIVEN or (on and text == "socket") else ""


# What stands before the square of a tool that drives.
_ON_A = frozenset({"a", "an", "the", "my", "our", "your", "on", "from"})


def _up_to_stop(tokens: list[Token]) -> list[str]:
    """The words that follow a number, up to the next number or comma."""
    stop = next((place for place, one in enumerate(tokens) if one.kind in ("num", "stop")), len(tokens))
    return [token.text for token in tokens[:stop] if token.kind == "word"]


def _one_gender(reading: Reading, squares: list[Token], gender: str) -> list[str]:
    """Only one end is named: that of the number that the word stands nearest to."""
    word = next(place for place, token in enumerate(reading.tokens) if token.text in _ENDS or token.gender)
    places = [reading.place_of(one) for one in squares]
    parted = any(token.kind in ("stop", "end") for token in reading.tokens[places[0] + 1 : word])
    first = abs(places[0] - word) - abs(places[1] - word) < (0 if parted else 1)
    return [gender, ""] if first else ["", gender]
