"""How each kind of cell is read. A reader returns the value, or raises `Wrong` with what to write instead."""

from __future__ import annotations

import datetime as dt
import re
from collections.abc import Callable
from typing import TypeVar

from cribkit.domain.problem import CribkitError
from cribkit.domain.stock.dates import parse_day, parse_expiry
from cribkit.domain.stock.gs1 import as_gtin
from cribkit.domain.stock.item import Condition

Value = TypeVar("Value")

NUMBER = re.compile(r"[+-]?(\d+(\.\d*)?|\.\d+)([eE][+-]?\d{1,2})?\Z", re.ASCII)
TAG = re.compile(r"[^\s=;,\"'-][^\s=;,\"']{0,63}\Z")
# The Globally Harmonized System's nine pictograms, and its hazard and precautionary statements ("H222", "EUH066",
# "P410+P412"; with a letter as in "H360FD").
GHS = re.compile(r"GHS0[1-9]\Z|(?:H|EUH|P)[0-9]{3}[A-Z]{0,2}(?:\+(?:H|EUH|P)[0-9]{3}[A-Z]{0,2})*\Z")
MOST = 1e9  # no crib holds more of anything: a larger number is a mistake in writing

# How the files write units -> the unit of the ledger and how many of those it is.
STOCK_UNITS: dict[str, tuple[str, float]] = {
    "each": ("each", 1),
    "mL": ("mL", 1),
    "L": ("mL", 1000),
    "g": ("g", 1),
    "kg": ("g", 1000),
    "mm": ("mm", 1),
    "m": ("mm", 1000),
}


class Wrong(Exception):  # noqa: N818 - read as a sentence: "raise Wrong"
    """A cell that cannot be used: what is wrong and what to write."""

    def __init__(self, message: str, todo: str) -> None:
        super().__init__(message, todo)
        self.message, self.todo = message, todo


def number(text: str) -> float:
    """Zero or more, with a decimal point."""
    if re.fullmatch(r"\d+,\d+", text):
        raise Wrong(f"{text!r} has a decimal comma", f"write {text.replace(',', '.')}.")
    if not NUMBER.match(text):
        raise Wrong(f"{text!r} is not a number", "write digits and a decimal point, such as 2.5.")
    value = float(text)
    if value < 0:
        raise Wrong(f"{text} is negative", "write zero or more.")
    if value > MOST:
        raise Wrong(f"{text} is too large", "write at most 1000000000.")
    return value + 0.0  # -0 becomes 0


def positive(text: str) -> float:
    """More than zero."""
    value = number(text)
    if value == 0:
        raise Wrong(f"{text} is not more than zero", "write a number above zero, or leave the cell blank.")
    return value


def pieces(text: str) -> int:
    """A whole number, zero or more."""
    value = number(text)
    if value != int(value):
        raise Wrong(f"{text} is not a whole number", "write whole pieces.")
    return int(value)


def count(text: str) -> int:
    """A whole number, one or more."""
    value = pieces(text)
    if value == 0:
        raise Wrong("0 is not more than zero", "write a whole number above zero, or leave the cell blank.")
    return value


def tag(text: str) -> str:
    """An item's unique mark."""
    if not TAG.match(text):
        raise Wrong(f"{text!r} cannot be a tag", "write at most 64 characters without spaces, quotes, = ; or commas.")
    return text


def gtin(text: str) -> str:
    """The number of a barcode, padded to 14 digits."""
    found = as_gtin(text)
    if found is None:
        raise Wrong(f"{text!r} is not a GTIN", "copy all 8, 12, 13 or 14 digits below the barcode.")
    return found


def lot(text: str) -> str:
    """A lot number as the label has it."""
    if len(text) > 64:
        raise Wrong("the lot number is longer than 64 characters", "write what the label says.")
    return text


def condition(text: str) -> Condition:
    """ok, damaged or missing."""
    try:
        return Condition(text.casefold())
    except ValueError:
        raise Wrong(f"{text!r} is not a condition", f"write {', '.join(Condition)}.") from None


def stock_unit(text: str) -> str:
    """One of the units that stock is kept in, spelled as in `STOCK_UNITS`."""
    found = text if text in STOCK_UNITS else {unit.casefold(): unit for unit in STOCK_UNITS}.get(text.casefold())
    if found is None:
        raise Wrong(f"{text!r} is not a unit of stock", f"write one of {', '.join(STOCK_UNITS)}.")
    return found


def day(text: str) -> dt.date:
    """A calendar date."""
    found = parse_day(text)
    if found is None:
        raise Wrong(f"{text!r} is not a date", "write it as 2026-11-30.")
    return found


def expiry(text: str) -> dt.date:
    """A calendar date, or a month that means its last day."""
    found = parse_expiry(text)
    if found is None:
        raise Wrong(f"{text!r} is not a date", "write it as 2026-11-30, or 2026-11 for the end of that month.")
    return found


def hazards(text: str) -> str:
    """GHS codes separated by semicolons."""
    codes = [code.replace(" ", "").upper() for code in re.split(r"[;,]", text) if code.strip()]
    for code in codes:
        if not GHS.match(code):
            raise Wrong(
                f"{code!r} is not a GHS code",
                "write GHS01 to GHS09 or statements such as H222, separated by semicolons.",
            )
    return ";".join(codes)


def torque_unit(text: str) -> str:
    """A unit of torque; it stays as it was written."""
    from cribkit.domain.quantity import torque_unit as read

    retold(read, text)
    return text


def mechanism(text: str) -> str:
    """A kind of torque wrench, by the name that the table of kinds has for it."""
    from cribkit.domain.torque.kinds import mechanism as read

    return retold(read, text).name


def square(text: str) -> str:
    """A square drive, by the name that the table of squares has for it."""
    from cribkit.domain.torque.reach import square as read
    from cribkit.domain.torque.reach import squares

    if read(text) not in squares():
        raise Wrong(f"{text!r} is not a square drive", f"write one of {', '.join(squares())}.")
    return read(text)


def retold(read: Callable[[str], Value], text: str) -> Value:
    """Let the domain read it; its problem becomes the cell's."""
    try:
        return read(text)
    except CribkitError as error:
        raise Wrong(error.problems[0].message, error.problems[0].next) from error


READERS: dict[str, Callable[[str], object]] = {
    "text": str,
    "tag": tag,
    "lot": lot,
    "gtin": gtin,
    "number": number,
    "positive": positive,
    "pieces": pieces,
    "count": count,
    "condition": condition,
    "stock-unit": stock_unit,
    "day": day,
    "expiry": expiry,
    "hazards": hazards,
    "torque-unit": torque_unit,
    "mechanism": mechanism,
    "square": square,
}
