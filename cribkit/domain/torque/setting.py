"""The mark to set on one scale, or why there is none.

A wrench within ±a (ISO 6789: a = (set - applied) / applied) that is set to s applies between s/(1+a) and s/(1-a).
It covers a torque with a tolerance when some mark of its usable range keeps that whole band inside the tolerance; a
bare value asks for the nearest mark, and for marks no coarser than a tenth of the torque (TM 1-1500-204-23-9
chapter 8).
"""

from __future__ import annotations

import math
from typing import NamedTuple

from cribkit.domain.torque.guard import Guard, narrowed
from cribkit.domain.torque.wanted import SLACK, Wanted, at_most
from cribkit.domain.torque.wrench import Scale, Usable, Wrench

COARSEST = 0.10  # of the torque: the largest graduation for a value without a tolerance on both sides
ROUNDING = 0.005  # a fixed wrench's value may differ so much from a bare value: conversion and rounding


class Setting(NamedTuple):
    """What one scale gives: a value on it, or the reason why not. Torques are at the wrench's square."""

    value: float | None = None
    reasons: tuple[str, ...] = ()
    why: tuple[str, ...] = ()


def set_scale(
    wrench: Wrench, scale: Scale, usable: Usable, wanted: Wanted, lever: float, guard: Guard | None
) -> Setting:
    """The setting on one scale. Works in the scale's own unit, at the wrench's square."""
    per = lever / scale.unit.nm
    target = wanted.target_nm * per
    if not wanted.banded:
        return set_value(wrench, scale, usable, target)
    low, high = narrowed(wanted.low_nm, wanted.target_nm, wanted.high_nm, guard)
    a = wrench.deviation
    window = (
        -math.inf if low is None else low * per * (1 + a),
        math.inf if high is None else high * per * (1 - a),
    )
    return set_band(wrench, scale, usable, target, window)


def set_band(wrench: Wrench, scale: Scale, usable: Usable, target: float, window: tuple[float, float]) -> Setting:
    """The mark nearest the target whose applied band lies inside the spec's band.

    `window` holds the settings that keep the applied band inside the spec's band.
    """
    low, high = window
    if not at_most(low, high) or high <= 0:
        return Setting(
            None,
            ("not-accurate-enough", *outside(usable, target, target)),
            (f"±{100 * wrench.deviation:.3g} % is wider than the spec allows",),
        )
    beyond = outside(usable, low, high)
    if beyond:
        return Setting(None, beyond, (range_text(usable, scale, min(max(target, low), high)),))
    least, most = max(low, usable.low), min(high, usable.high)
    if wrench.kind.scale != "marks":
        return free_value(wrench, least, most, target)
    mark = nearest_mark(target, scale.graduation, least, most)
    if mark is None:
        return no_mark(scale, usable, target, window)
    if math.isinf(high - low) and not fine(scale.graduation, target):
        return coarse(scale, target)
    return Setting(mark)


def no_mark(scale: Scale, usable: Usable, target: float, window: tuple[float, float]) -> Setting:
    """No mark where the band and the usable range meet: marks too coarse, or the only good marks out of range."""
    mark = nearest_mark(target, scale.graduation, *window)
    if mark is None:
        text = f"marks of {scale.graduation:g} {scale.unit.symbol} step over the settings {spread(*window)}"
        return Setting(None, ("too-coarse",), (text,))
    reason = "below-range" if mark < usable.low else "above-range"
    return Setting(None, (reason,), (range_text(usable, scale, mark),))


def spread(low: float, high: float) -> str:
    """ "9.4 to 10.6", "up to 24" or "from 93.6"."""
    if math.isinf(low):
        return f"up to {high:.4g}"
    return f"from {low:.4g}" if math.isinf(high) else f"{low:.4g} to {high:.4g}"


def set_value(wrench: Wrench, scale: Scale, usable: Usable, target: float) -> Setting:
    """The setting for a bare value: the nearest mark (the lower of two), marks no coarser than a tenth of it.

    With no tolerance to lean on, the value itself must lie in the usable range, not only its nearest mark.
    """
    if wrench.kind.scale == "fixed":
        return set_fixed(scale, usable, target)
    beyond = outside(usable, target, target)
    if beyond:
        return Setting(None, beyond, (range_text(usable, scale, target),))
    if wrench.kind.scale == "value":
        return free_value(wrench, usable.low, usable.high, target)
    if not fine(scale.graduation, target):
        return coarse(scale, target)
    mark = nearest_mark(target, scale.graduation, -math.inf, math.inf)
    beyond = outside(usable, mark, mark) if mark is not None else ("too-coarse",)
    if beyond:
        return Setting(None, beyond, (range_text(usable, scale, mark or target),))
    return Setting(mark)


def set_fixed(scale: Scale, usable: Usable, target: float) -> Setting:
    """A wrench with one value does that value and nothing else."""
    value = scale.high
    if not usable:
        return Setting(None, ("unfit",), (range_text(usable, scale, target),))
    if abs(value - target) <= ROUNDING * target:
        return Setting(value, why=(f"fixed at {value:g} {scale.unit.symbol}",))
    return Setting(
        None,
        ("below-range",) if target < value else ("above-range",),
        (f"it is fixed at {value:g} {scale.unit.symbol}",),
    )


def free_value(wrench: Wrench, low: float, high: float, target: float) -> Setting:
    """A setting that is no mark: fixed by a laboratory, or set on a tester."""
    value = min(max(target, low), high)
    text = "its one fixed value" if wrench.kind.scale == "fixed" else "no scale: set it on a torque tester"
    return Setting(value, why=(text,))


def outside(usable: Usable, low: float, high: float) -> tuple[str, ...]:
    """The reason if the settings from low to high miss the usable range."""
    if not usable:
        return ("unfit",)
    if not at_most(usable.low, high):
        return ("below-range",)
    return () if at_most(low, usable.high) else ("above-range",)


def fine(graduation: float, target: float) -> bool:
    """Whether the marks are fine enough for this torque where nothing else bounds the error of the nearest mark."""
    return graduation > 0 and at_most(graduation, COARSEST * target)


def coarse(scale: Scale, target: float) -> Setting:
    """Refused for the step between marks."""
    text = f"marks of {scale.graduation:g} are more than a tenth of {target:.4g} {scale.unit.symbol}"
    return Setting(None, ("too-coarse",), (text,))


def range_text(usable: Usable, scale: Scale, wanted: float) -> str:
    """The wanted setting and the range, in words."""
    if not usable:
        return "its limited calibration leaves no usable range"
    if usable.low == usable.high:
        return f"it does {usable.high:g} {scale.unit.symbol} only"
    return f"{wanted:.4g} {scale.unit.symbol} is outside its usable {usable.low:.4g} to {usable.high:.4g}"


def nearest_mark(target: float, graduation: float, low: float, high: float) -> float | None:
    """The multiple of the graduation in low..high nearest the target, the lower of two; None where there is none."""
    if not graduation > 0:
        return None
    first = -math.inf if math.isinf(low) else math.ceil(low / graduation - SLACK * max(1.0, abs(low / graduation)))
    last = math.inf if math.isinf(high) else math.floor(high / graduation + SLACK * max(1.0, abs(high / graduation)))
    first = max(first, 1)
    if first > last:
        return None
    steps = target / graduation
    nearest = math.ceil(steps - 0.5 - SLACK * max(1.0, abs(steps)))
    return clean(min(max(nearest, first), last), graduation)


def clean(steps: float, graduation: float) -> float:
    """steps times graduation without the dust of binary fractions: 57 x 0.2 is 11.4."""
    return float(f"{steps * graduation:.12g}")
