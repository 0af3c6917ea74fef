"""Can this wrench apply that torque, and what is it set to?

A wrench within ±a (ISO 6789: a = (set - applied) / applied) that is set to s applies between s/(1+a) and s/(1-a).
Which mark that is, setting.py says; here the wrench's state, its lever and its scales come together.
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable
from typing import NamedTuple

from cribkit.domain.torque.guard import Guard
from cribkit.domain.torque.offset import Offset, factor
from cribkit.domain.torque.setting import Setting, set_scale
from cribkit.domain.torque.wanted import Wanted, at_most
from cribkit.domain.torque.wrench import Scale, Wrench

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


class Coverage(NamedTuple):
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
    if not 0 < wrench.deviation < 1:
        return refusal(wrench, reasons, why)  # nothing can be said about what it applies
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
    if not 0 < wrench.deviation < 1:
        return "its stated accuracy is none"
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
