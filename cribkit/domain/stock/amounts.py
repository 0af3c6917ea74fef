"""Amounts of stock as people write them: pieces, measures or containers; kept as thousandths of the item's unit."""

from __future__ import annotations

import re
from functools import cache

from cribkit.domain.problem import BadInput
from cribkit.domain.quantity import format_amount, parse_amount
from cribkit.domain.quantity.numbers import NUMBER, number, plain
from cribkit.domain.stock.thousandths import parts, whole
from cribkit.domain.tables import table

SHAPE = re.compile(rf"(?P<number>{NUMBER}|half an?|an?)\s*(of an?\s+)?(?P<word>[A-Za-z]*)\Z", re.IGNORECASE)
MOST = 10**12  # thousandths: no crib holds more of anything
LEAST = 0.1  # of a container: less is told without it
DIMENSIONS = {"each": "pieces", "mL": "a volume", "g": "a mass", "mm": "a length"}


@cache
def container_words() -> frozenset[str]:
    """Words for one container."""
    return frozenset(table("cribkit.domain.stock", "containers.toml")["words"])


def stock_amount(text: str, unit: str, pack: float = 1.0, counted: bool = False) -> int:
    """Read an amount of an item that is kept in `unit`, in containers of `pack` units; thousandths of the unit.

    "2 cans" and, for what is measured, a bare "2" are containers; "250 mL" is a measure. A bare number of something
    that is counted and comes in packs could mean either, and is refused. Zero is an amount here. `counted` asks
    for whole pieces.
    """
    tidy = plain(text).strip()
    shape = SHAPE.match(tidy)
    if shape and shape["word"].casefold() in container_words():
        return sound(text, parts(value_of(shape["number"]) * pack), counted)
    if shape and not shape["word"]:
        if unit == "each" and pack != 1:
            todo = f'write "{tidy} each" or "{tidy} packs" (a pack is {format_amount(pack, unit)}).'
            raise BadInput.of("ambiguous-amount", f"{tidy} could be pieces or packs", todo)
        return sound(text, parts(value_of(shape["number"]) * (1 if unit == "each" else pack)), counted)
    if shape and value_of(shape["number"]) == 0:
        return 0 if parse_amount(f"1 {shape['word']}").unit == unit else parts(mismatch(text, unit))
    amount = parse_amount(tidy)
    return sound(text, parts(amount.value if amount.unit == unit else mismatch(text, unit)), counted)


def value_of(text: str) -> float:
    """A number, or "a" and "half a"."""
    word = text.casefold()
    return 0.5 if word.startswith("half") else 1.0 if word in ("a", "an") else number(text)


def mismatch(text: str, unit: str) -> float:
    """A volume of something that is weighed, and the like."""
    raise BadInput.of("wrong-unit", f"{text!r} is not {DIMENSIONS[unit]}", f"this item is kept in {unit}.")


def sound(text: str, amount: int, counted: bool) -> int:
    """Not beyond all bounds; whole where it is counted."""
    if not 0 <= amount <= MOST:
        raise BadInput.of("bad-amount", f"{text!r} is not an amount of stock", "write zero or more, within reason.")
    if counted and amount % parts(1):
        raise BadInput.of("not-whole", f"{text!r} is not a whole count", "write whole pieces.")
    return amount


def amount_words(amount: int, unit: str, pack: float = 1.0) -> str:
    """An amount as people read it, with its containers: "800 mL (2 containers)"."""
    text = format_amount(whole(amount), unit)
    held = whole(amount) / pack
    if pack == 1 or 0 < held < LEAST:
        return text
    return f"{text} ({held:.3g} container{'' if held == 1 else 's'})"


__all__ = ["amount_words", "stock_amount"]
