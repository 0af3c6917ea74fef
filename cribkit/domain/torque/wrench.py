"""A torque wrench as data: its scales, how far it can be trusted, and whether it can be used today."""

from __future__ import annotations

import datetime as dt
import re
from dataclasses import dataclass, field
from functools import cached_property
from typing import NamedTuple

from cribkit.domain.quantity import TorqueUnit
from cribkit.domain.torque.due import due_date
from cribkit.domain.torque.kinds import Mechanism, mechanism

LOWEST_PART = 0.20  # of full scale: below it a torque wrench has no stated accuracy (TM 1-1500-204-23-9 chapter 8)
# Patterns, compiled only where they are asked for: most torques ask none of it.
TWO_WAY = r"two[- ]way|bi-?directional|left and right|both (directions|ways)|right and left|cw ?(/|and|\+) ?ccw"
ONE_WAY = r"one[- ]way|clockwise only|right[- ]hand only|cw only"
PIVOTED = r"pivot(ed|ing)?[- ](grip|handle)"
ANGLE = r"torque[- ](and|&|\+)[- ]angle|torque[-/]angle|measures angle|with angle|angle (display|readout)"


class Scale(NamedTuple):
    """One scale in its own unit: lowest and highest mark, and the step between marks (0: no marks)."""

    unit: TorqueUnit
    low: float
    high: float
    graduation: float


class Usable(NamedTuple):
    """The part of a scale that may be used for work, in the scale's own unit."""

    low: float
    high: float

    def __bool__(self) -> bool:
        return self.low <= self.high * (1 + 1e-9)


@dataclass(frozen=True)
class Wrench:
    """One torque wrench of the crib. Torques in N·m unless the name says a scale; lengths in mm."""

    tag: str
    description: str
    mechanism: str  # a name of kinds.toml
    scales: tuple[Scale, ...]  # the first is the main one
    accuracy: float | None = None  # a fraction (0.04); None: the limit of ISO 6789 for its kind
    drive: str = ""  # "1/4", "3/8" ... or "1/4 hex"
    lever_mm: float | None = None  # centre of the square to the grip's mark or pivot
    calibrated_on: dt.date | None = None
    interval_months: int = 12
    interval_cycles: int = 5000
    cycles: int = 0  # since the calibration
    certificate: str = ""
    location: str = ""
    condition: str = "ok"
    on_hand: float = 1
    loans: tuple[str, ...] = ()  # who has it
    limited_nm: tuple[float, float] | None = None  # a limited calibration's range
    valid_until: dt.date | None = None  # the last good day where the shop's policy is not the plain interval
    unfit_reason: str = ""  # why it must not be used, beyond its condition
    two_way_stated: bool | None = None  # None: read from the description, else the mechanism's habit
    extra: dict[str, str] = field(default_factory=dict, hash=False, compare=False)  # kept for reports, never judged

    @cached_property
    def kind(self) -> Mechanism:
        """Its row of the table of mechanisms."""
        return mechanism(self.mechanism)

    @cached_property
    def full_scale_nm(self) -> float:
        """The highest mark of the main scale, in N·m."""
        return self.scales[0].high * self.scales[0].unit.nm

    @cached_property
    def deviation(self) -> float:
        """What it may be off, as a fraction of the torque applied: as stated, else by ISO 6789."""
        return self.kind.deviation(self.full_scale_nm) if self.accuracy is None else self.accuracy

    @cached_property
    def usable(self) -> tuple[Usable, ...]:
        """The usable range of each scale."""
        return tuple(usable(scale, self.limited_nm, self.kind.scale == "fixed") for scale in self.scales)

    @cached_property
    def due(self) -> dt.date | None:
        """The last day on which its calibration is valid by the calendar; None: no calibration or no interval."""
        return self.valid_until or due_date(self.calibrated_on, self.interval_months)

    @cached_property
    def two_way(self) -> bool:
        """Whether it works to the left as well as to the right."""
        if self.two_way_stated is not None:
            return self.two_way_stated
        if self.says(ONE_WAY):
            return False
        return self.says(TWO_WAY) or self.kind.two_way

    @cached_property
    def pivoted_grip(self) -> bool:
        """A grip on a pivot fixes the lever: nothing may lengthen the handle."""
        return self.says(PIVOTED)

    @cached_property
    def measures_angle(self) -> bool:
        """Shows the angle turned, so that no angle gauge is needed."""
        return self.says(ANGLE)

    def says(self, pattern: str) -> bool:
        """Whether the description has such words."""
        return re.search(pattern, self.description, re.IGNORECASE) is not None


def usable(scale: Scale, limited_nm: tuple[float, float] | None = None, fixed: bool = False) -> Usable:
    """The larger of the lowest mark and 20 % of full scale, up to full scale; a limited calibration narrows it.

    A wrench with one fixed value is usable at that value.
    """
    low = scale.low if fixed else max(scale.low, LOWEST_PART * scale.high)
    high = scale.high
    if limited_nm is not None:
        low, high = max(low, limited_nm[0] / scale.unit.nm), min(high, limited_nm[1] / scale.unit.nm)
    return Usable(low, high)
