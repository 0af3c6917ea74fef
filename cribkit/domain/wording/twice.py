"""What a text tells twice: once more, in the other unit, or of what the thing is put on."""

from __future__ import annotations

from itertools import pairwise

from cribkit.domain.wording.agree import about
from cribkit.domain.wording.measure import mm_of, number
from cribkit.domain.wording.reading import Reading
from cribkit.domain.wording.sizes import Length, square


def told_twice(reading: Reading) -> None:
    """A number that only says again what was read is used."""
    _same_square(reading)
    _in_other_unit(reading)
    _said_again(reading)


def _said_again(reading: Reading) -> None:
    """A size or a tip that stands there twice: "impact (1-1/8)", "thirty (T30)"."""
    size, tip = reading.attributes.get("size"), reading.attributes.get("tip", "")
    for group in reading.numbers():
        length = group.lengths()[0].text if len(group.tokens) == 1 else ""
        if length and (length == size or group.tokens[0].values[0] == tip.lstrip("TEPHZ")):
            group.use()


def _in_other_unit(reading: Reading) -> None:
    """A length, a shank or a square that brackets tell again in the other unit: 4 in (100 mm), 10 mm sq. dr. (3/8)."""
    tokens = reading.tokens
    for bracket, token, closed in zip(tokens, tokens[1:], tokens[2:], strict=False):
        if bracket.text != "(" or closed.text != ")" or token.kind != "num" or token.used:
            continue
        told = Length(number(token.values[0].replace("-", " ")), token.unit).text
        same_length = any(
            told.rpartition(" ")[2] != value.rpartition(" ")[2] and about(value, told)
            for value in (reading.attributes.get("length", ""), reading.attributes.get("shank", ""))
            if value and " to " not in value and "; " not in value
        )
        if _same_size(reading, told):
            reading.attributes["size"] = " x ".join(sorted((reading.attributes["size"], told)))
            token.used = True
            continue
        token.used = same_length or (square(token) != "" and square(token) == reading.attributes.get("drive"))


# Two measures of a special socket that is sold under both: 7/8 in is 22.2 mm.
_SAME_SIZE = 0.3


def _same_size(reading: Reading, told: str) -> bool:
    """Whether the socket of a sensor or a plug is told in both units: 7/8 (22 mm)."""
    size = reading.attributes.get("size", "")
    return (
        reading.family in ("oxygen-sensor-socket", "spark-plug-socket")
        and size.endswith((" in", " mm"))
        and size[-3:] != told[-3:]
        and abs(float(mm_of(size)) - float(mm_of(told))) <= _SAME_SIZE
    )


def _same_square(reading: Reading) -> None:
    """The square of what a socket is put on, said again: "1/4 drive, for the 1/4 ratchet"."""
    drive = reading.attributes.get("drive")
    for before, token in pairwise(reading.tokens):
        led = before.text in ("the", "a", "my", "our", "for", "on")
        if token.kind == "num" and not token.used and led and square(token) == drive:
            token.used = True
