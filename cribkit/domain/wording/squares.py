"""Squares, sizes and points among the numbers of a text."""

from __future__ import annotations

from itertools import pairwise

from cribkit.domain.wording.lexer import Token
from cribkit.domain.wording.measure import number
from cribkit.domain.wording.reading import Reading
from cribkit.domain.wording.sizes import Group, Length, square
from cribkit.domain.wording.tips import find_tips


def find_square(reading: Reading) -> None:
    """Codes of tips, and the number beside a word for the square drive."""
    find_tips(reading)
    tokens = [token for token in reading.tokens if token.kind not in ("sign", "end")]
    marked = [token.kind == "word" and _is_mark(token) for token in tokens]
    marks = [place for place, mark in enumerate(marked) if mark and not (place and marked[place - 1])]
    if len(marks) > 1 and any(token.kind == "points" or token.text == "eightpoint" for token in tokens):
        marks = [place for place in marks if tokens[place].text == "drive"] or marks  # the other square is the plug's
    for place in marks:
        before, after = _number_before(tokens, place), _number_after(tokens, place)
        chosen = _choose(before, after)
        if before and after and metric(before) and square(before) == square(after) and chosen is after:
            reading.doubts.append(f"{before.text} or {after.text}: one is the square")
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
    if token and token.kind == "num" and metric(token) and tokens[place + 1].text in ("hex", "hexagon"):
        return None  # a hexagon's size, no square
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
    if token is None or token.kind != "num" or token.used or (not token.unit and metric(token)):
        return None
    return token if square(token) else None


def _choose(before: Token | None, after: Token | None) -> Token | None:
    """Of two squares beside the word the one in inches; of two alike the one before."""
    if before is None or after is None:
        return before or after
    if before.unit == "mm" and before.values[0] in METRIC_ONLY_SQUARES:
        return before
    return after if metric(before) and not metric(after) else before


def metric(token: Token) -> bool:
    return token.unit == "mm" or (not token.unit and "/" not in token.text and number(token.values[0]) > 2)


def long_numbers(reading: Reading) -> None:
    """A number beside "long", "length" or "OAL" is a length, if it is not the only number."""
    tokens = reading.tokens
    others = sum(1 for group in reading.numbers() for token in group.tokens if metric(token) or not square(token))
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
            and (after.text != "blade" or _blade(token))
            and after.text in ("long", "lg", "lng", "oal", "overall", "reach", "blade")
        ):
            before = tokens[place - 1] if place else None
            if before is not None and (before.kind == "by" or before.text == "x"):
                continue
            token.used = after.used = True
            reading.set("length", Length(number(token.values[0]), token.unit).text)
            reading.use("long", "deep") if after.text != "reach" else None


def _blade(token: Token) -> bool:
    """Whether a measure before "blade" is its length: 5/16 in is its width."""
    return float(Length(number(token.values[0].replace("-", " ")), token.unit).mm) >= 20


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
    sizes = _across_flats(reading, sizes) or sizes
    if "drive" not in reading.attributes and len(sizes) > 1:
        squares = [entry for entry in sizes if square(entry[2]) and entry[1].unit != "mm" and not metric(entry[2])]
        twice = len(squares) == len(sizes) and len({square(entry[2]) for entry in squares}) == 1
        if len(squares) == 1 or twice or (squares and any(entry[1].unit == "mm" for entry in sizes)):
            reading.set("drive", square(squares[0][2]))
            squares[0][2].used = True
            sizes.remove(squares[0])
    if "drive" not in reading.attributes and len(sizes) > 1:
        told = [entry for entry in sizes if entry[2].values[0] in METRIC_ONLY_SQUARES]
        if len(told) == 1:
            reading.set("drive", square(told[0][2]))
            told[0][2].used = True
            sizes.remove(told[0])
    elif "drive" in reading.attributes and not sizes:
        sizes = [entry for entry in flat if low <= float(entry[1].mm) <= high]
    if "drive" not in reading.attributes and len(written) < len(flat) and len(sizes) == 1:
        _bare_beside_square(reading, flat, sizes, low, high)
    if sizes:
        sizes[0][2].used = True
        reading.set("size", sizes[0][1].text)


def _across_flats(reading: Reading, sizes: list[_Entry]) -> list[_Entry]:
    """The one size with "AF" behind it, which is no square, and what else may be one: "1/4 AF x 75 mm" is 1/4 in."""
    after = {id(one): two.text for one, two in pairwise(reading.tokens)}
    marked = [entry for entry in sizes if after.get(id(entry[2])) in ("af", "a/f")]
    if len(marked) != 1:
        return []
    others = [entry for entry in sizes if entry is not marked[0] and square(entry[2]) and entry[1].unit != "mm"]
    if len(others) == 1 and "drive" not in reading.attributes:
        reading.set("drive", square(others[0][2]))
        others[0][2].used = True
    return marked


# Squares in mm that are no size across flats.
METRIC_ONLY_SQUARES = frozenset({"6.3", "6.35", "9.5", "9.53", "9.525", "12.5", "12.7", "19.05", "25.4"})


_Entry = tuple[Group, Length, Token]


def _bare_beside_square(reading: Reading, flat: list[_Entry], sizes: list[_Entry], low: float, high: float) -> None:
    """ "10 3/8 socket": a bare number beside a square is the size in mm."""
    bare = [entry for entry in flat if entry not in sizes and low <= float(entry[1].mm) <= high and entry[1].value >= 4]
    if len(bare) == 1 and square(sizes[0][2]) and not metric(sizes[0][2]):
        reading.set("drive", square(sizes[0][2]))
        sizes[0][2].used = True
        sizes[0] = bare[0]


def length_left(reading: Reading, least: float) -> None:
    """How long a thing is: the one measure that is left beside its sizes, from `least` mm on."""
    left = [group for group in reading.numbers() if len(group.tokens) == 1 and group.tokens[0].unit in ("mm", "in")]
    if len(left) == 1 and "length" not in reading.attributes and float(left[0].lengths()[0].mm) >= least:
        left[0].use()
        reading.set("length", left[0].lengths()[0].text)


def points(reading: Reading) -> None:
    while token := reading.take("points"):  # told twice it must agree
        reading.set("points", token.values[0])


def missing_square(reading: Reading) -> None:
    if "drive" in reading.attributes:
        return
    entries = [group for group in reading.numbers() if len(group.tokens) == 1 and group.tokens[0].unit != "mm"]
    squares = [group for group in entries if square(group.tokens[0]) and not metric(group.tokens[0])]
    others = (
        any(token.kind == "thread" for token in reading.tokens)
        or "tip" in reading.attributes
        or len(reading.numbers()) > len(squares)
    )
    if len(squares) == 1 and others:
        squares[0].use()
        reading.set("drive", square(squares[0].tokens[0]))


def lone_square(reading: Reading) -> None:
    if "drive" in reading.attributes:
        return
    for group in reading.numbers():
        token = group.tokens[0]
        if len(group.tokens) == 1 and square(token) and not metric(token):
            group.use()
            reading.set("drive", square(token))
            return
    for group in reading.numbers():
        if group.relation == "by" and square(group.tokens[0]) and len(group.tokens) == 2:
            group.tokens[0].used = True
            reading.set("drive", square(group.tokens[0]))
            return
