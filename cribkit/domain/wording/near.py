"""Sizes that would go on: computed from the published limits of openings and heads, only ever to confirm."""

from __future__ import annotations

from fractions import Fraction
from functools import cache

from cribkit.domain.wording.meaning import Meaning, Near
from cribkit.domain.wording.measure import number
from cribkit.domain.wording.rule import kinship
from cribkit.domain.wording.tables import lines, load

# Beyond this gap the opening turns on the corners of the head. Common practice, no source.
LOOSE_MM = 0.6
FAMILIES = frozenset(
    {
        "socket",
        "combination-wrench",
        "open-end-wrench",
        "ring-wrench",
        "wrench",
        "crowfoot",
        "flare-nut-wrench",
        "nut-driver",
    }
)


def near(need: Meaning, item: Meaning) -> Near | None:
    """Whether an item of another size would go on the need's head, and with how much play.

    The opening's smallest size must reach the head's largest (the nominal size); the play runs from there to the
    largest opening. None where it does not go on, turns, or is the size asked for.
    """
    asked, has = dict(need.attributes), dict(item.attributes)
    if need.family not in FAMILIES or kinship(need.family, item.family) is None:
        return None
    if asked.get("drive", has.get("drive")) != has.get("drive") or "size" not in asked or "size" not in has:
        return None
    found = (play(asked["size"], size) for size in has["size"].split(" x "))
    return next((one for one in found if one is not None), None)


def play(head: str, opening: str) -> Near | None:
    """The play of an opening of one nominal size on a head of another, in mm."""
    if head == opening or " x " in head:
        return None
    limits = opening_mm(opening)
    largest = head_mm(head)
    if limits is None or limits[0] < largest or limits[0] - largest > LOOSE_MM:
        return None
    low, high = round(limits[0] - largest, 2), round(limits[1] - largest, 2)
    warning = (
        "Confirm on the fastener: a loose opening rounds the corners of the head."
        if high > 0.2
        else "Confirm on the fastener before it is loaded."
    )
    return Near(low, high, f"{opening} goes on a {head} head with {low:.2f} to {high:.2f} mm of play", warning)


def opening_mm(size: str) -> tuple[float, float] | None:
    """Smallest and largest opening, mm: the metric table, or the ASME formula for inch sizes.

    ASME B18.2.2 appendix: smallest 1.005 W + 0.001 in, tolerance 0.005 W + 0.004 in.
    """
    value, _, unit = size.rpartition(" ")
    width = number(value.replace("-", " "))
    if unit == "mm":
        return openings().get(width)
    inch = float(width)
    smallest = 1.005 * inch + 0.001
    return smallest * 25.4, (smallest + 0.005 * inch + 0.004) * 25.4


def head_mm(size: str) -> float:
    """The largest head of a nominal size, mm: the nominal size itself (DIN 475-1, ASME B18.2.1)."""
    value, _, unit = size.rpartition(" ")
    return float(number(value.replace("-", " "))) * (25.4 if unit == "in" else 1.0)


@cache
def openings() -> dict[Fraction, tuple[float, float]]:
    """Metric openings by nominal size, mm."""
    rows = (line.split() for line in lines(load("openings.toml")["metric"]))
    return {Fraction(size): (float(low), float(high)) for size, low, high in rows}


def near_sizes(size: str) -> tuple[str, ...]:
    """The sizes of openings that would go on a head of this size."""
    return tuple(other for other in _common() if play(size, other) is not None)


@cache
def _common() -> tuple[str, ...]:
    inches = [Fraction(count, 16) for count in range(3, 33)]
    return tuple([f"{size} mm" for size in map(str, openings())] + [_inch(size) for size in inches])


def _inch(size: Fraction) -> str:
    whole, rest = divmod(size, 1)
    return f"{whole}-{rest} in" if whole and rest else f"{whole or rest} in"
