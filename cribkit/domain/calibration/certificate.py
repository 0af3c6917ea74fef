"""A calibration certificate: who measured what, and what follows for the wrench."""

from __future__ import annotations

import datetime as dt
from collections import Counter
from dataclasses import dataclass, replace
from enum import StrEnum

from cribkit.domain.calibration.points import SLACK, Plan, Span, missing, plan_for
from cribkit.domain.calibration.readings import Direction, Limit, Outcome, Phase, Reading, Verdict, judge
from cribkit.domain.problem import Problem
from cribkit.domain.torque.guard import Rule, acceptance_limit
from cribkit.domain.torque.wrench import LOWEST_PART, Wrench, usable

# ISO 6789:2003: the room between 18 and 28 °C (seen in a test-device manual that reviews the standard).
ROOM_C = (18.0, 28.0)
# ISO 6789:2017 and ASME B107.300-2021: a reference device four times better than the tool's limit.
TIMES_BETTER = 4.0


class Fitness(StrEnum):
    """What a wrench may be used for after its calibration."""

    READY = "ready"
    LIMITED = "limited"  # only inside the range that passed
    UNFIT = "unfit"


@dataclass(frozen=True, slots=True)
class Certificate:
    """One calibration of one wrench as the laboratory reports it."""

    number: str
    on: dt.date
    laboratory: str
    readings: tuple[Reading, ...]
    device: str = ""  # the reference device
    uncertainty_pct: float | None = None  # its expanded uncertainty (k = 2), % of reading
    temperature_c: float | None = None
    note: str = ""


@dataclass(frozen=True, slots=True)
class Subject:
    """What has to be known of a wrench to judge its certificate."""

    tag: str
    plan: Plan
    span: Span
    usable: tuple[float, float]  # the range used for work, N·m
    limit: Limit
    two_way: bool = False
    unit: str = "N·m"
    nm: float = 1.0


@dataclass(frozen=True, slots=True)
class Finding:
    """A certificate, judged. The as-found verdict speaks about the past, the as-left verdict about the future."""

    certificate: Certificate
    as_found: Verdict | None
    as_left: Verdict | None
    fitness: Fitness
    usable: tuple[float, float] | None  # N·m; None when unfit
    two_way: bool  # whether it may be used counter-clockwise too
    why: str
    warnings: tuple[Problem, ...] = ()

    @property
    def last(self) -> Verdict | None:
        """The verdict on the wrench as it leaves: as left, or as found where nothing was adjusted."""
        return self.as_left or self.as_found

    @property
    def found_out(self) -> bool:
        """Whether the as-found readings throw doubt on the work done with it."""
        return self.as_found is not None and self.as_found.outcome is not Outcome.PASS


def subject_of(wrench: Wrench, guard_with: float | None = None, rule: Rule = Rule.FULL) -> Subject:
    """What the main scale asks for. `guard_with` is the uncertainty for a guard band, as a share of the reading.

    Whether it works both ways is asked of the tool itself: an earlier calibration may have barred one way.
    """
    scale, kind = wrench.scales[0], wrench.kind
    nm = scale.unit.nm
    work = usable(scale, None, kind.scale == "fixed")
    accepted = None if guard_with is None else acceptance_limit(wrench.deviation, guard_with, rule)
    return Subject(
        tag=wrench.tag,
        plan=plan_for(kind),
        span=Span((scale.low or LOWEST_PART * scale.high) * nm, scale.high * nm, scale.graduation * nm),
        usable=(work.low * nm, work.high * nm),
        limit=Limit(wrench.deviation, accepted),
        two_way=replace(wrench, two_way_stated=None).two_way,
        unit=scale.unit.symbol,
        nm=nm,
    )


def examine(certificate: Certificate, subject: Subject) -> Finding:
    """Judge a certificate and say what the wrench may be used for now."""
    found = judge(certificate.readings, Phase.AS_FOUND, subject.limit)
    left = judge(certificate.readings, Phase.AS_LEFT, subject.limit)
    last = left or found
    warnings = (*conditions(certificate, subject), *coverage(certificate, subject))
    if last is None:
        return Finding(certificate, found, left, Fitness.UNFIT, None, False, "no readings", warnings)
    usable = common_range(last, subject)
    fitness, why = fitness_of(last, usable, subject)
    return Finding(certificate, found, left, fitness, usable, may_turn_back(last, usable, subject), why, warnings)


def common_range(last: Verdict, subject: Subject) -> tuple[float, float] | None:
    """The clockwise range that passed, inside the usable range; its ends may be one near-miss of a mark short."""
    side = last.side(Direction.CLOCKWISE)
    if side is None or side.passed is None:
        return None
    low, high = side.passed
    near = nearness(subject)
    low = subject.usable[0] if low <= subject.usable[0] + near else low
    high = subject.usable[1] if high >= subject.usable[1] - near else high
    if low > high * (1 + SLACK) or (low == high and subject.span.lowest != subject.span.maximum):
        return None
    return low, high


def nearness(subject: Subject) -> float:
    """How far a tested point may lie from the end of the range: the same as for `points.tested`."""
    return max(subject.span.graduation, 0.02 * subject.span.maximum) * (1 + SLACK)


def fitness_of(last: Verdict, usable: tuple[float, float] | None, subject: Subject) -> tuple[Fitness, str]:
    """Ready over its whole usable range, limited to a part of it, or unfit; with the reason."""
    side = last.side(Direction.CLOCKWISE)
    if side is None:
        return Fitness.UNFIT, "not tested clockwise"
    if usable is None:
        return Fitness.UNFIT, "no usable range passed clockwise"
    if usable == subject.usable:
        return Fitness.READY, "every point of its usable range passed"
    low, high = (f"{end / subject.nm:.6g}" for end in usable)
    return Fitness.LIMITED, f"only {low} to {high} {subject.unit} passed"


def may_turn_back(last: Verdict, usable: tuple[float, float] | None, subject: Subject) -> bool:
    """Counter-clockwise use needs a counter-clockwise test that passed over the range that is usable clockwise."""
    side = last.side(Direction.COUNTER)
    if not subject.two_way or usable is None or side is None or side.passed is None:
        return False
    near = nearness(subject)
    return side.passed[0] <= usable[0] + near and side.passed[1] >= usable[1] - near


def coverage(certificate: Certificate, subject: Subject) -> tuple[Problem, ...]:
    """Warnings: points that the class asks for and the certificate lacks, and points with too few readings."""
    directions = tuple(Direction) if subject.two_way else (Direction.CLOCKWISE,)
    phases = [phase for phase in Phase if any(r.phase is phase for r in certificate.readings)]
    found: list[Problem] = []
    if Phase.AS_FOUND not in phases:
        text = "no as-found readings: nothing can be said about the work done since the last calibration"
        found.append(Problem(subject.tag, "no-as-found", text, "ask the laboratory for them."))
    for phase in phases:
        for direction in directions:
            found += gaps(certificate, subject, phase, direction)
    return tuple(found)


def gaps(certificate: Certificate, subject: Subject, phase: Phase, direction: Direction) -> list[Problem]:
    """What one phase and direction lacks."""
    mine = [r for r in certificate.readings if r.phase is phase and r.direction is direction]
    place, plan = f"{phase}, {direction}", subject.plan
    if not mine:
        todo = "it may not be used that way until it is tested." if phase is Phase.AS_LEFT else ""
        return [Problem(subject.tag, "direction-not-tested", f"{place}: not tested", todo)]
    counts = Counter(reading.setting_nm for reading in mine)
    absent = missing(plan, tuple(counts), subject.span)
    found = [
        Problem(
            subject.tag,
            "point-not-tested",
            f"{place}: class {plan.iso_class} asks for readings at {target / subject.nm:.6g} {subject.unit}",
            "have that point tested too.",
        )
        for target in absent
    ]
    found += [
        Problem(
            subject.tag,
            "too-few-readings",
            f"{place}: {count} readings at {setting / subject.nm:.6g} {subject.unit}, class {plan.iso_class} asks for "
            f"{plan.readings}",
            "have the others taken too.",
        )
        for setting, count in sorted(counts.items())
        if count < plan.readings
    ]
    return found


def conditions(certificate: Certificate, subject: Subject) -> tuple[Problem, ...]:
    """Warnings about the room and the reference device."""
    found: list[Problem] = []
    temperature, uncertainty = certificate.temperature_c, certificate.uncertainty_pct
    if temperature is not None and not ROOM_C[0] <= temperature <= ROOM_C[1]:
        text = f"measured at {temperature:.6g} °C, ISO 6789 asks for {ROOM_C[0]:.6g} to {ROOM_C[1]:.6g} °C"
        found.append(Problem(subject.tag, "temperature", text, "have it calibrated again in a steady room."))
    most = subject.limit.permitted / TIMES_BETTER * 100
    if uncertainty is not None and uncertainty > most * (1 + SLACK):
        text = f"the reference device's uncertainty is {uncertainty:.6g} %, a quarter of the limit is {most:.6g} %"
        found.append(Problem(subject.tag, "coarse-reference", text, "use a better device, or judge with a guard band."))
    return tuple(found)
