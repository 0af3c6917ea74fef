"""Readings of a calibration, and the verdict on them.

The relative deviation is a = (set or indicated − reference) / reference (ISO 6789:2003 cl. 6.5 and ISO 6789-1:2017
cl. 7, the latter from memory). The denominator is the reference, so the limits are not symmetric in torque: a wrench
set to 100 N·m that applies 104 passes ±4 %, one that applies 96 fails. Every single reading has to lie inside the
limit, never their mean.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum
from itertools import groupby

from cribkit.domain.calibration.points import SLACK


class Phase(StrEnum):
    """When a reading was taken."""

    AS_FOUND = "as-found"  # before any adjustment: speaks about the work that was done
    AS_LEFT = "as-left"  # after it: speaks about the work to come


class Direction(StrEnum):
    """Which way the wrench turns the fastener."""

    CLOCKWISE = "clockwise"
    COUNTER = "counter-clockwise"


class Outcome(StrEnum):
    """One reading, or the worst of several, in the words of ILAC-G8:09/2019 cl. 4."""

    PASS = "pass"
    CONDITIONAL_PASS = "conditional-pass"  # inside the limit, but within the guard band
    CONDITIONAL_FAIL = "conditional-fail"  # outside the limit, by less than the guard band
    FAIL = "fail"


SEVERITY = tuple(Outcome)  # from best to worst


@dataclass(frozen=True, slots=True)
class Reading:
    """One actuation: what the wrench was set to or showed, and what the reference device read, in one unit."""

    phase: Phase
    direction: Direction
    setting: float
    reference: float
    unit: str = "N·m"
    nm: float = 1.0  # N·m in one of the unit

    @property
    def deviation(self) -> float:
        """(setting − reference) / reference: positive where the wrench applies less than it says."""
        return (self.setting - self.reference) / self.reference

    @property
    def setting_nm(self) -> float:
        """The setting in N·m."""
        return self.setting * self.nm


@dataclass(frozen=True, slots=True)
class Limit:
    """How far a deviation may go, as shares (0.04 for ±4 %)."""

    permitted: float  # the tool's limit
    acceptance: float | None = None  # the limit less the guard band; None: no guard band

    @property
    def accepted(self) -> float:
        """What a reading has to stay inside to pass."""
        return self.permitted if self.acceptance is None else self.acceptance

    def judge(self, deviation: float) -> Outcome:
        """The outcome of one reading. A deviation on a limit is inside it."""
        size = abs(deviation)
        band = self.permitted - self.accepted
        steps = (self.accepted, self.permitted, self.permitted + band)
        for limit, outcome in zip(steps, SEVERITY, strict=False):
            if size <= limit * (1 + SLACK) and (outcome is Outcome.PASS or band > 0):
                return outcome
        return Outcome.FAIL


@dataclass(frozen=True, slots=True)
class Point:
    """The readings at one setting in one direction, judged."""

    direction: Direction
    setting: float
    unit: str
    nm: float
    deviations: tuple[float, ...]
    outcome: Outcome

    @property
    def setting_nm(self) -> float:
        """The setting in N·m."""
        return self.setting * self.nm

    @property
    def mean(self) -> float:
        """The mean deviation: for estimates only, never for the verdict."""
        return sum(self.deviations) / len(self.deviations)

    @property
    def worst(self) -> float:
        """The deviation furthest from nought."""
        return max(self.deviations, key=abs)


@dataclass(frozen=True, slots=True)
class Side:
    """The points of one direction, rising, and the range that passed in N·m (None: none did)."""

    direction: Direction
    points: tuple[Point, ...]
    outcome: Outcome
    passed: tuple[float, float] | None


@dataclass(frozen=True, slots=True)
class Verdict:
    """All readings of one phase, judged."""

    phase: Phase
    sides: tuple[Side, ...]
    outcome: Outcome

    @property
    def points(self) -> tuple[Point, ...]:
        """Every point, direction by direction."""
        return tuple(point for side in self.sides for point in side.points)

    def side(self, direction: Direction) -> Side | None:
        """One direction, if it was tested."""
        return next((side for side in self.sides if side.direction is direction), None)


def worst(outcomes: Iterable[Outcome]) -> Outcome:
    """The worst of some outcomes."""
    return max(outcomes, key=SEVERITY.index)


def judge(readings: Iterable[Reading], phase: Phase, limit: Limit) -> Verdict | None:
    """The verdict on one phase, for each point, each direction and the whole; None if it has no readings."""
    mine = sorted((r for r in readings if r.phase is phase), key=lambda r: (r.direction, r.setting_nm))
    if not mine:
        return None
    points = [judge_point(list(group), limit) for _, group in groupby(mine, lambda r: (r.direction, r.setting_nm))]
    sides = tuple(judge_side(direction, points) for direction in Direction if any_of(direction, points))
    return Verdict(phase, sides, worst(side.outcome for side in sides))


def any_of(direction: Direction, points: list[Point]) -> bool:
    """Whether a direction was tested at all."""
    return any(point.direction is direction for point in points)


def judge_point(readings: list[Reading], limit: Limit) -> Point:
    """Every single reading counts."""
    first = readings[0]
    deviations = tuple(reading.deviation for reading in readings)
    outcome = worst(map(limit.judge, deviations))
    return Point(first.direction, first.setting, first.unit, first.nm, deviations, outcome)


def judge_side(direction: Direction, points: list[Point]) -> Side:
    """A direction is as good as its worst point."""
    mine = tuple(point for point in points if point.direction is direction)
    return Side(direction, mine, worst(point.outcome for point in mine), passed_range(mine))


def passed_range(points: tuple[Point, ...]) -> tuple[float, float] | None:
    """The widest stretch of neighbouring points that all passed, in N·m; of two as wide, the lower.

    Nothing is known outside the tested points, so the range ends at them. A single point is a range of one torque.
    """
    runs: list[tuple[float, float]] = []
    for passed, run in groupby(points, lambda point: point.outcome is Outcome.PASS):
        if passed:
            torques = [point.setting_nm for point in run]
            runs.append((torques[0], torques[-1]))
    return max(runs, key=lambda run: run[1] - run[0], default=None)
