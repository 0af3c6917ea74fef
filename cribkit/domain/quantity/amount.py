"""Amounts of consumables, lengths and angles as people write them."""

from __future__ import annotations

import re
from functools import cache

from cribkit.domain.problem import BadInput, CribkitError
from cribkit.domain.quantity.measure import BASES, Amount
from cribkit.domain.quantity.numbers import NUMBER, number, plain
from cribkit.domain.tables import table

HINT = 'write it as "4", "120 mL", "0.5 L", "250 g" or "1.5 m".'
TIMES = re.compile(r"(?P<times>[1-9][0-9]{0,5})\s?[x×*]\s?(?P<rest>.*)\Z", re.IGNORECASE)
SHAPE = re.compile(rf"(?P<number>{NUMBER})\s*(?P<unit>.*)\Z")
# 1 turn = 360° = 400 gon; a radian is 180/pi degrees (ISO 80000-3).
DEGREES = {
    **dict.fromkeys(("°", "deg", "degs", "degree", "degrees"), 1.0),
    **dict.fromkeys(("turn", "turns", "rev", "revs", "of a turn", "revolution", "revolutions"), 360.0),
}


def parse_amount(text: str) -> Amount:
    """Read a count, volume, mass or length above zero; "2 x 500 mL" is 1000 mL. A count is whole.

    BadInput "no-number", "unknown-unit", "ambiguous", "negative" or "not-whole" otherwise.
    """
    tidy = plain(text)
    times = TIMES.match(tidy)
    value, unit = _measure(times["rest"] if times else tidy, text)
    value *= int(times["times"]) if times else 1
    if value <= 0:
        raise _bad("negative", f"{tidy!r} is not an amount above zero")
    if unit == "each" and value != int(value):
        raise _bad("not-whole", f"{tidy!r} is not a whole count")
    return Amount(value, unit, text.strip())


def parse_length_mm(text: str) -> float:
    """A length in mm, from "40 mm", "4 cm" or "1 1/2 in". Zero is a length."""
    value, unit = _measure(plain(text), text)
    if unit != "mm":
        raise BadInput.of("not-length", f"{text.strip()[:60]!r} is not a length", 'write it as "40 mm" or "1.5 in".')
    return value


def parse_angle_deg(text: str) -> float:
    """An angle in degrees, from "90°", "90 deg", "1/4 turn" or "+45°"."""
    shape = SHAPE.match(plain(text).removeprefix("+").lstrip())
    if shape is None or shape["unit"].strip(" .").lower() not in DEGREES:
        raise BadInput.of("not-angle", f"{text.strip()[:60]!r} is not an angle", 'write it as "90°" or "1/4 turn".')
    return number(shape["number"]) * DEGREES[shape["unit"].strip(" .").lower()]


def _measure(tidy: str, text: str) -> tuple[float, str]:
    """The value in the base of its dimension, and that base."""
    shape = SHAPE.match(tidy)
    if shape is None:
        if re.match(r"-\s?[0-9.,]", tidy):
            raise _bad("negative", f"{tidy!r} is not an amount above zero")
        raise _bad("no-number", f"{text.strip()[:60]!r} does not begin with a number")
    word = shape["unit"].strip(" ").rstrip(".").replace(".", " ")
    word = " ".join(word.split()).lower()
    if word in _ambiguous():
        raise _bad("ambiguous", f"{word!r} {_ambiguous()[word]}")
    if word not in _units():
        raise _bad("unknown-unit", f"{word[:40]!r} is not a unit of amount")
    base, factor = _units()[word]
    return number(shape["number"]) * factor, base


@cache
def _units() -> dict[str, tuple[str, float]]:
    """Spelling -> base and factor."""
    rows = table("cribkit.domain.quantity", "amount_units.toml")
    return {word: (base, float(factor)) for base in BASES for factor, words in rows[base].items() for word in words}


@cache
def _ambiguous() -> dict[str, str]:
    """Spelling -> why it may mean two things."""
    rows = table("cribkit.domain.quantity", "amount_units.toml")["ambiguous"]
    return {word: reason for reason, words in rows.items() for word in words}


def _bad(code: str, message: str) -> CribkitError:
    return BadInput.of(code, message, HINT)
