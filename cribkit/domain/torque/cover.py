"""Can this wrench apply that torque, and what is it set to?

A wrench within ±a (ISO 6789: a = (set - applied) / applied) that is set to s applies between s/(1+a) and s/(1-a).
It covers a torque with a tolerance when some mark of its usable range keeps that whole band inside the tolerance; a
bare value asks for the nearest mark, and for marks no coarser than a tenth of the torque (TM 1-1500-204-23-9
chapter 8).
"""

from __future__ import annotations

import datetime as dt
import math
from collections.abc import Iterable
from dataclasses import dataclass

from cribkit.domain.torque.guard import Guard, narrowed
from cribkit.domain.torque.offset import Offset, factor
from cribkit.domain.torque.wanted import SLACK, Wanted, at_most
from cribkit.domain.torque.wrench import Scale, Usable, Wrench

COARSEST = 0.10  # of the torque: the largest graduation for a value without a tolerance on both sides
ROUNDING = 0.005  # a fixed wrench's value may differ so much from a bare value: conversion and rounding
BEST_LOW, BEST_HIGH = 30.0, 80.0  # percent of full scale where torque wrenches are best (TM 1-1500-204-23-9 chapter 8)

# The reasons why a wrench is rejected, in the order in which they are told.
REASONS = (
    "below-range",
    "above-range",
    "too-coarse",
    "not-accurate-enough",
    "no-calibration",
    "overdue",
    "out",
    "unfit",
    "no-reach",
    "drive-too-small",
)


@dataclass(frozen=True, slots=True)
class Coverage:
    """One wrench against one torque. The applied band is at the fastener; `setting` is on the wrench's own scale."""

    tag: str
    covers: bool
    reasons: tuple[str, ...] = ()  # codes of REASONS
    setting: float | None = None
    setting_unit: str = ""
    applied_low_nm: float | None = None
    applied_high_nm: float | None = None
    position_pct: float | None = None  # of full scale
    why: tuple[str, ...] = ()  # each reason, and each thing to know, in words
    uses_of_tolerance: float | None = None  # the applied band as a part of the spec's band; None: it has none
    same_unit: bool = False  # the setting is in the unit of the spec
    full_scale_nm: float = 0.0
    adapters: int = 0  # on the way to the fastener, where that has been worked out

    @property
    def accuracy_ratio(self) -> float | None:
        """How many times the applied band fits in the tolerance."""
        return 1 / self.uses_of_tolerance if self.uses_of_tolerance else None


@dataclass(frozen=True, slots=True)
class Setting:
    """What one scale gives: a value on it, or the reason why not. Torques are at the wrench's square."""

    value: float | None = None
    reasons: tuple[str, ...] = ()
    why: tuple[str, ...] = ()


def cover(
    wrench: Wrench,
    wanted: Wanted,
    on: dt.date,
    offset: Offset | None = None,
    guard: Guard | None = None,
    left_hand: bool = False,
) -> Coverage:
    """Whether the wrench covers the torque on that day, and its setting. The scale in the spec's unit goes first."""
    reasons, why = state(wrench, on, left_hand)
    lever, lever_why = leverage(wrench, offset)
    if lever is None:
        return refusal(wrench, (*reasons, "no-reach"), (*why, *lever_why))
    chosen, setting = best_scale(wrench, wanted, lever, guard)
    if setting.value is None or reasons:
        return refusal(wrench, (*setting.reasons, *reasons), (*setting.why, *why))
    return coverage(wrench, wanted, chosen, setting, lever)


def refusal(wrench: Wrench, reasons: Iterable[str], why: Iterable[str]) -> Coverage:
    """The wrench does not cover: every reason once, in the order of REASONS."""
    codes = tuple(sorted(set(reasons), key=REASONS.index))
    return Coverage(wrench.tag, False, codes, why=tuple(why), full_scale_nm=wrench.full_scale_nm)


def coverage(wrench: Wrench, wanted: Wanted, scale: Scale, setting: Setting, lever: float) -> Coverage:
    """The wrench covers: what it is set to and what it will then apply at the fastener."""
    value = setting.value or 0.0
    a, at_fastener = wrench.deviation, value * scale.unit.nm / lever
    low, high = at_fastener / (1 + a), at_fastener / (1 - a)
    span = None if wanted.low_nm is None or wanted.high_nm is None else wanted.high_nm - wanted.low_nm
    return Coverage(
        tag=wrench.tag,
        covers=True,
        setting=value,
        setting_unit=scale.unit.symbol,
        applied_low_nm=low,
        applied_high_nm=high,
        position_pct=100 * value / scale.high,
        why=setting.why,
        uses_of_tolerance=(high - low) / span if span else None,
        same_unit=scale.unit == wanted.unit,
        full_scale_nm=wrench.full_scale_nm,
    )


def state(wrench: Wrench, on: dt.date, left_hand: bool = False) -> tuple[list[str], list[str]]:
    """The reasons that have nothing to do with the torque: calibration, condition, where it is, direction."""
    reasons, why = [], []
    for code, text in (
        ("no-calibration", uncalibrated(wrench, on)),
        ("overdue", overdue(wrench, on)),
        ("out", gone(wrench)),
        ("unfit", unfit(wrench, left_hand)),
    ):
        if text:
            reasons.append(code)
            why.append(text)
    return reasons, why


def uncalibrated(wrench: Wrench, on: dt.date) -> str:
    """Why there is no calibration on that day; "" where there is one."""
    if wrench.calibrated_on is None:
        return "it has no calibration date"
    return f"it was calibrated only on {wrench.calibrated_on}" if wrench.calibrated_on > on else ""


def overdue(wrench: Wrench, on: dt.date) -> str:
    """Why its calibration has run out; valid through the due date."""
    if wrench.due is not None and on > wrench.due:
        return f"its calibration ran out on {wrench.due}"
    if 0 < wrench.interval_cycles <= wrench.cycles:
        return f"it has done {wrench.cycles} of {wrench.interval_cycles} cycles since its calibration"
    return ""


def gone(wrench: Wrench) -> str:
    """Where it is if it is not in the crib."""
    if wrench.on_hand >= 1 or wrench.condition == "missing":
        return ""
    return f"it is out to {', '.join(wrench.loans)}" if wrench.loans else "it is not in the crib"


def unfit(wrench: Wrench, left_hand: bool = False) -> str:
    """Why it must not be used although it is there."""
    if wrench.unfit_reason:
        return wrench.unfit_reason
    if wrench.condition != "ok":
        return f"it is marked {wrench.condition}"
    if left_hand and not wrench.two_way:
        return "it measures clockwise only, and the thread is left-hand"
    return ""


def leverage(wrench: Wrench, offset: Offset | None) -> tuple[float | None, tuple[str, ...]]:
    """Wrench torque per fastener torque with this offset adapter; None and the reason where it cannot be known."""
    if offset is None:
        return 1.0, ()
    if offset.handle_mm and wrench.pivoted_grip:
        return None, ("its grip is pivoted: no extension handle may be put on it",)
    if offset.along_mm == 0:
        return 1.0, ()
    if not wrench.kind.lever:
        return None, ("a torque screwdriver has no lever for an offset adapter",)
    if wrench.lever_mm is None:
        return None, ("its lever length is not known: record it, or use the adapter at 90° to the handle",)
    try:
        return factor(wrench.lever_mm + offset.handle_mm, offset), ()
    except ValueError as error:
        return None, (str(error),)


def best_scale(wrench: Wrench, wanted: Wanted, lever: float, guard: Guard | None) -> tuple[Scale, Setting]:
    """The first scale that covers, the scale in the spec's unit first; else the first scale and its reasons."""
    first: tuple[Scale, Setting] | None = None
    pairs = list(zip(wrench.scales, wrench.usable, strict=True))
    if len(pairs) > 1:
        pairs.sort(key=lambda pair: pair[0].unit != wanted.unit)
    for scale, usable in pairs:
        setting = set_scale(wrench, scale, usable, wanted, lever, guard)
        if setting.value is not None:
            return scale, setting
        first = first or (scale, setting)
    assert first is not None, "a wrench has at least one scale"
    return first


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


def rank(coverages: Iterable[Coverage]) -> tuple[Coverage, ...]:
    """Best first; those that do not cover follow. Always the same order for the same crib."""
    return tuple(sorted(coverages, key=preference))


def preference(found: Coverage) -> tuple[bool, int, bool, bool, float, str]:
    """Fewest adapters, a setting in the middle of the scale, the spec's unit, the smallest full scale, the tag.

    Of those that do not cover, the one with the fewest reasons goes first.
    """
    if not found.covers:
        return True, len(found.reasons), False, False, found.full_scale_nm, found.tag
    position = found.position_pct or 0.0
    middle = at_most(BEST_LOW, position) and at_most(position, BEST_HIGH)
    return False, found.adapters, not middle, not found.same_unit, found.full_scale_nm, found.tag
