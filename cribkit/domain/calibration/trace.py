"""Looking back from a wrench that was found out of tolerance: what did each fastener really get?

The torque applied at a setting is estimated from the as-found readings: their deviation, interpolated between the two
tested points around the setting, turned round by applied = setting / (1 + deviation). The smallest and the largest
reading at each point give the range. Nothing is guessed outside the tested points.

The duty to look back: ISO/IEC 17025:2017 7.10 and ISO 9001:2015 7.1.5.2 (both from memory).
"""

from __future__ import annotations

import datetime as dt
from dataclasses import dataclass
from enum import StrEnum
from itertools import pairwise

from cribkit.domain.calibration.certificate import Finding
from cribkit.domain.calibration.points import SLACK
from cribkit.domain.calibration.readings import Direction, Point, Side


class Answer(StrEnum):
    """Whether a fastener got a torque inside its spec."""

    INSIDE = "inside"
    OUTSIDE = "outside"
    CANNOT_TELL = "cannot-tell"


@dataclass(frozen=True, slots=True)
class Fastened:
    """One torque of one job that was done with the wrench. N·m at the fastener; the setting at the wrench."""

    job: str
    vehicle: str
    procedure: str
    on: dt.date
    torque_id: str
    fastener: str
    count: int
    spec: str  # as the procedure writes it
    low_nm: float | None
    high_nm: float | None
    setting_nm: float | None  # None: not noted
    setting: str = ""  # as the technician set it: "100 N·m"
    lever: float = 1.0  # wrench torque for one N·m at the fastener, with an offset adapter
    direction: Direction = Direction.CLOCKWISE
    angle: bool = False  # an angle follows the torque
    past_due: bool = False  # the calibration had run out on that day
    by: str = ""


@dataclass(frozen=True, slots=True)
class Estimate:
    """What was applied at the fastener, N·m: the mean of the readings, and their range."""

    likely_nm: float
    low_nm: float
    high_nm: float


@dataclass(frozen=True, slots=True)
class Doubt:
    """One fastened torque with its answer."""

    work: Fastened
    estimate: Estimate | None
    answer: Answer
    why: str


def trace(work: Fastened, finding: Finding | None) -> Doubt:
    """The answer for one torque. `finding` is the certificate whose as-found readings speak about it."""
    if finding is None:
        return unknown(work, "no calibration since then has as-found readings")
    verdict = finding.as_found
    side = None if verdict is None else verdict.side(work.direction)
    if side is None:
        return unknown(work, f"certificate {finding.certificate.number} has no as-found readings {work.direction}")
    if work.setting_nm is None:
        return unknown(work, "the setting was not noted")
    found = estimate(side, work.setting_nm, work.lever)
    if found is None:
        return unknown(work, outside_points(side))
    uncertainty = (finding.certificate.uncertainty_pct or 0.0) / 100
    return answer(work, found, uncertainty)


def unknown(work: Fastened, why: str, found: Estimate | None = None) -> Doubt:
    """No answer, and why not."""
    return Doubt(work, found, Answer.CANNOT_TELL, why)


def outside_points(side: Side) -> str:
    """Why there is no estimate for a setting."""
    first, last = side.points[0], side.points[-1]
    if first is last:
        return f"tested as found only at {first.setting:.6g} {first.unit}"
    ends = f"{first.setting:.6g} to {last.setting:.6g} {first.unit}"
    return f"its setting is outside the points tested as found ({ends})"


def answer(work: Fastened, found: Estimate, uncertainty: float) -> Doubt:
    """Compare the range, widened by the reference's uncertainty (a share of the reading), with the spec's band."""
    if work.low_nm is None and work.high_nm is None:
        return unknown(work, "the procedure states no tolerance", found)
    low, high = found.low_nm * (1 - uncertainty), found.high_nm * (1 + uncertainty)
    floor = float("-inf") if work.low_nm is None else work.low_nm * (1 - SLACK)
    ceiling = float("inf") if work.high_nm is None else work.high_nm * (1 + SLACK)
    if high < floor:
        return Doubt(work, found, Answer.OUTSIDE, "too low")
    if low > ceiling:
        return Doubt(work, found, Answer.OUTSIDE, "too high")
    if low < floor or high > ceiling:
        return unknown(work, straddle(found, floor, ceiling), found)
    return Doubt(work, found, Answer.INSIDE, "the angle came after it" if work.angle else "")


def straddle(found: Estimate, floor: float, ceiling: float) -> str:
    """Why the readings do not decide."""
    if floor <= found.low_nm and found.high_nm <= ceiling:
        return "nearer to the limit than the reference device's uncertainty"
    limits = [name for name, out in (("lower", found.low_nm < floor), ("upper", found.high_nm > ceiling)) if out]
    return f"the readings lie on both sides of the {' and the '.join(limits)} limit"


def estimate(side: Side, setting_nm: float, lever: float = 1.0) -> Estimate | None:
    """What was applied at a setting; None outside the tested points."""
    found = deviations(side.points, setting_nm)
    if found is None:
        return None
    least, mean, most = found
    return Estimate(*(setting_nm / (1 + deviation) / lever for deviation in (mean, most, least)))


def deviations(points: tuple[Point, ...], setting_nm: float) -> tuple[float, float, float] | None:
    """The smallest, mean and largest deviation at a setting, each interpolated between its neighbours."""
    for point in points:
        if abs(setting_nm - point.setting_nm) <= SLACK * point.setting_nm:
            return spread(point)
    for lower, upper in pairwise(points):
        if lower.setting_nm < setting_nm < upper.setting_nm:
            part = (setting_nm - lower.setting_nm) / (upper.setting_nm - lower.setting_nm)
            low, mean, high = (a + (b - a) * part for a, b in zip(spread(lower), spread(upper), strict=True))
            return low, mean, high
    return None


def spread(point: Point) -> tuple[float, float, float]:
    """The smallest, mean and largest deviation at a tested point."""
    return min(point.deviations), point.mean, max(point.deviations)
