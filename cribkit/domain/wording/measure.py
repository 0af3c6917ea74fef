"""Exact numbers and lengths as canonical text: decimals, fractions, mixed numbers, mm and inch."""

from __future__ import annotations

from fractions import Fraction
from functools import lru_cache

MM = {"mm": Fraction(1), "cm": Fraction(10), "m": Fraction(1000), "in": Fraction("25.4"), "ft": Fraction("304.8")}


@lru_cache(maxsize=4096)  # the same sizes come again and again, and a Fraction is slow to make
def number(text: str) -> Fraction:
    """The exact value of a plain, decimal, fractional or mixed number."""
    whole, _, rest = text.replace("-", " ").partition(" ")
    if rest:
        return int(whole) + Fraction(rest)
    _, slash, under = text.partition("/")
    if slash and int(under) == 0:
        return Fraction(0)
    return Fraction(text if not text.startswith(".") else f"0{text}")


def tell(value: Fraction) -> str:
    """Canonical text of a number: integers and decimals plain, the rest as n/d or w-n/d."""
    if value.denominator == 1:
        return str(value.numerator)
    if value.denominator & (value.denominator - 1) == 0 and value.denominator <= 64:
        whole, rest = divmod(value, 1)
        return f"{whole}-{rest}" if whole else str(rest)
    return decimal(value, 4)  # thousandths of an inch are told with halves: 0.0015


def decimal(value: Fraction, places: int = 3) -> str:
    """A decimal number without trailing zeros."""
    return f"{float(value):.{places}f}".rstrip("0").rstrip(".")


def tell_decimal(text: str) -> str:
    """Canonical decimal text of a decimal number."""
    return decimal(number(text))


def mm_of(text: str) -> Fraction:
    """Millimetres of a canonical length ("8 mm", "1-1/8 in")."""
    value, _, unit = text.rpartition(" ")
    return number(value.replace("-", " ")) * MM[unit]
