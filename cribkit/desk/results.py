"""What a pre-job check found, as plain data: the report renders it, `pull` issues it, `restock` reads it."""

from __future__ import annotations

import datetime as dt
from dataclasses import dataclass
from enum import StrEnum
from typing import NamedTuple

from cribkit.domain.procedure import ConsumableNeed, Procedure, ToolNeed, TorqueNeed
from cribkit.domain.torque import Coverage, Spec


class Status(StrEnum):
    """How a need stands. A job is ready only when every need that is not optional is READY."""

    READY = "ready"
    SHORT = "short"  # some, not enough
    OUT = "out"  # owned, but issued
    UNFIT = "unfit"  # there, but damaged, expired, overdue or out of range
    CONFIRM = "confirm"  # a likely match that a person must confirm
    ABSENT = "absent"  # not stocked


@dataclass(frozen=True, slots=True)
class Pick:
    """Units or an amount to take from a shelf."""

    tag: str
    count: float
    location: str
    description: str
    unit: str = "each"
    member: str = ""  # which member of a set
    lot: str = ""
    expires_on: dt.date | None = None
    role: str = ""  # its place on the way from wrench to fastener


class ToolLine(NamedTuple):
    """One tool need and what the crib has for it."""

    procedure: str
    need: ToolNeed
    status: Status
    picked: tuple[Pick, ...] = ()
    why: str = ""
    next: str = ""
    anyway: str = ""  # the reason of a confirmation against a hard attribute, where this line rests on one


class Rejected(NamedTuple):
    """A wrench that does not serve, and every reason."""

    tag: str
    reasons: tuple[str, ...]
    why: str = ""


class StepLine(NamedTuple):
    """One step of a tightening: what to do, and with which wrench at which mark."""

    text: str
    coverage: Coverage | None = None  # None where the step needs no torque wrench


class TorqueLine(NamedTuple):
    """One torque need: the wrench, its setting, and the way to the fastener."""

    procedure: str
    need: TorqueNeed
    spec: Spec
    status: Status
    coverage: Coverage | None = None  # of the wrench for the final torque
    steps: tuple[StepLine, ...] = ()
    reach: tuple[Pick, ...] = ()  # from the wrench's square outwards
    other_ways: tuple[tuple[str, tuple[Pick, ...]], ...] = ()  # tag and way of each other wrench that a step takes
    picked: tuple[Pick, ...] = ()  # wrenches and everything on the way
    rejected: tuple[Rejected, ...] = ()
    warnings: tuple[str, ...] = ()
    why: str = ""
    next: str = ""


class ConsumableLine(NamedTuple):
    """One consumable need and the lots to take."""

    procedure: str
    need: ConsumableNeed
    status: Status
    needed: float
    unit: str
    on_hand: float = 0.0  # of what serves it, good on the day
    short: float = 0.0
    tag: str = ""
    lots: tuple[Pick, ...] = ()  # first expired, first out
    why: str = ""
    next: str = ""
    anyway: str = ""


Line = ToolLine | TorqueLine | ConsumableLine


class Check(NamedTuple):
    """The answer to "can the job start?"."""

    on: dt.date
    procedures: tuple[Procedure, ...]
    tools: tuple[ToolLine, ...]
    torques: tuple[TorqueLine, ...]
    consumables: tuple[ConsumableLine, ...]
    pull: tuple[Pick, ...]  # in the order of the shelves
    proven: bool = True  # False: the sharing of units was too large to prove best
    notes: tuple[str, ...] = ()

    @property
    def lines(self) -> tuple[Line, ...]:
        """Every need."""
        return (*self.tools, *self.torques, *self.consumables)

    @property
    def blocking(self) -> tuple[Line, ...]:
        """The needs that keep the job from starting."""
        return tuple(line for line in self.lines if line.status is not Status.READY and not optional(line))

    @property
    def ready(self) -> bool:
        """Whether the job can start."""
        return not self.blocking


def optional(line: Line) -> bool:
    """Whether the job can start without it. A torque is never optional."""
    return not isinstance(line, TorqueLine) and line.need.optional
