"""An amount as data, and how it is shown. Apart from the reader, whose patterns cost several ms to load."""

from __future__ import annotations

from typing import NamedTuple

BASES = ("each", "mL", "g", "mm")


class Amount(NamedTuple):
    """So many of "each", so much in mL, g or mm."""

    value: float
    unit: str  # one of BASES
    text: str = ""

    def __str__(self) -> str:
        return format_amount(self.value, self.unit)


def format_amount(value: float, unit: str) -> str:
    """As people read it: "4", "120 mL", "1.5 m", "250 g"."""
    if unit == "each":
        return show(value)
    if unit == "mm" and value >= 1000:
        return f"{show(value / 1000)} m"
    if unit == "mL" and value >= 1000:
        return f"{show(value / 1000)} L"
    if unit == "g" and value >= 1000:
        return f"{show(value / 1000)} kg"
    return f"{show(value)} {unit}"


def show(value: float) -> str:
    """A number in at most six digits without trailing zeros and never with an exponent."""
    text = f"{value:.6g}"
    return text if "e" not in text else f"{value:.12f}".rstrip("0").rstrip(".")
