"""Ratings: whether a gauge, a lamp or a meter is rated for what is asked."""

from __future__ import annotations

import re

_PRESSURES = {"bar": 1.0, "psi": 0.0689476, "kpa": 0.01, "mpa": 10.0}  # in bar
_FIGURE = re.compile(r"\d*\.?\d+")


def rated(asked: str, has: str) -> list[str] | None:
    """Each asked rating is there, or lies in a range of the same unit: a 0-20 bar gauge for 10 bar.

    A pressure alone is the upper end of a scale; what the item does not rate is a doubt.
    """
    given = [_ended(one) for one in has.split("; ")]
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
    unit = rating.lstrip("0123456789.-/to ")
    figures = [float(part) for part in _FIGURE.findall(rating[: len(rating) - len(unit)])] or [0.0]
    factor = _PRESSURES.get(unit, 1.0)
    return min(figures) * factor, max(figures) * factor, "bar" if unit in _PRESSURES else unit
