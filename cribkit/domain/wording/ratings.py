"""Ratings: whether a gauge, a lamp or a meter is rated for what is asked."""

from __future__ import annotations

import re

# In bar; NIST SP 811, shortened.
_PRESSURES = {
    "bar": 1.0,
    "psi": 0.0689476,
    "kpa": 0.01,
    "mpa": 10.0,
    "mbar": 0.001,
    "inhg": 0.0338639,
    "mmhg": 0.00133322,
}
_VOLUMES = {
    "l": 1000.0,
    "litre": 1000.0,
    "litres": 1000.0,
    "liter": 1000.0,
    "liters": 1000.0,
    "ltr": 1000.0,
    "lt": 1000.0,
}
_SMALL = {"ml": 1.0, "cc": 1.0, "cl": 10.0}  # in ml
_ENDS = re.compile(r"(-?\d*\.?\d+)(?:-(-?\d*\.?\d+))?")


def rated(asked: str, has: str) -> list[str] | None:
    """Each asked rating is there, or lies in a range of the same unit: a 0-20 bar gauge for 10 bar.

    A pressure alone is the upper end of a scale; what the item does not rate is a doubt.
    """
    given = [_ended(one) for rating in has.split("; ") for one in _each(rating)]
    doubts = []
    for wanted in asked.split("; "):
        low, high, unit = _ended(wanted)
        rivals = [one for one in given if one[2] == unit]
        if not rivals:
            doubts.append(f"rating {wanted} not stated")
        elif not any(_holds(bottom, top, low, high, unit) for bottom, top, _ in rivals):
            return None
    return doubts


def _holds(bottom: float, top: float, low: float, high: float, unit: str) -> bool:
    """Whether a rating or scale holds another; one figure in bar is the end of a scale."""
    if unit == "bar" and bottom == top:
        bottom = 0.0
    end_alone = unit == "bar" and (low in (0.0, high))
    share = 0.05 * high
    if end_alone:  # printed ends of scales are rounded in the other unit; a gauge twice too large reads too coarsely
        return high <= top + share and top <= 2.5 * high
    return bottom - share <= low and high <= top + share


def _ended(rating: str) -> tuple[float, float, str]:
    """Both ends of a rating and its unit; pressures in bar."""
    if not rating[:1].isdigit() and rating[:1] not in ".-":
        figure = float("".join(char for char in rating if char.isdigit()) or 0)
        return figure, figure, "".join(char for char in rating if not char.isdigit())
    found = _ENDS.match(rating)
    unit = rating.lstrip("0123456789.-/ ").replace(".", "").replace("deg", "").replace("celsius", "c")
    figures = [float(part) for part in found.groups() if part] if found else [0.0]
    for name, factors in (("bar", _PRESSURES), ("ml", _VOLUMES), ("ml", _SMALL)):
        if unit in factors:
            return min(figures) * factors[unit], max(figures) * factors[unit], name
    return min(figures), max(figures), unit


def _each(rating: str) -> list[str]:
    """6/12/24v is rated for each of them."""
    figures = rating.rstrip("abcdefghijklmnopqrstuvwxyz")
    if figures.count("-") > 1 and figures[0] != "-":  # 6-12-24 V
        figures = figures.replace("-", "/")
    unit = rating[len(figures) :]
    return [f"{one}{unit}" for one in figures.split("/")] if "/" in figures else [rating]


def reaches(asked: str, has: str) -> list[str] | None:
    """Whether a meter measures as much as is asked, in each unit: 400 A serves for 300 A."""
    given = [_ended(one) for rating in has.split("; ") for one in _each(rating)]
    doubts = []
    for wanted in asked.split("; "):
        _, high, unit = _ended(wanted)
        tops = [top for _, top, other in given if other == unit]
        if not tops:
            doubts.append(f"rating {wanted} not stated")
        elif max(tops) < high:
            return None
    return doubts
