"""A job that tools and consumables were pulled for, and what keeps it from being released."""

from __future__ import annotations

import datetime as dt
from dataclasses import dataclass
from enum import StrEnum


class JobState(StrEnum):
    """Where a job stands."""

    OPEN = "open"  # pulled, work in progress
    HELD = "held"  # closed by the technician, but something is missing: search the vehicle before it is released
    CLOSED = "closed"  # everything is back, used or settled


class HoldKind(StrEnum):
    """What is missing."""

    MISSING = "missing"  # the tool itself
    PIECE = "piece"  # a piece of a broken tool: it counts as missing until it is found


@dataclass(frozen=True, slots=True)
class Hold:
    """One reason why a job cannot be released."""

    id: int
    job: str
    tag: str
    lot: str
    what: HoldKind
    amount: int  # thousandths of the item's unit
    by: str
    at: str  # UTC, ISO 8601
    settled: str = ""  # "found" or "lost"
    settled_by: str = ""
    settled_at: str = ""
    reason: str = ""


@dataclass(frozen=True, slots=True)
class Job:
    """One job."""

    job: str
    day: dt.date
    by: str
    bay: str
    vehicle: str
    procedures: tuple[tuple[str, str], ...]  # id and revision
    anyway: str  # why it was started although it was not ready
    state: JobState
    closed_at: str = ""
    closed_by: str = ""

    @classmethod
    def of_loan(cls, job: str, since: dt.date, holder: str) -> Job:
        """A job of which only its loans are known: the first of them opened it."""
        return cls(job, since, holder, "", "", (), "", JobState.OPEN)


@dataclass(frozen=True, slots=True)
class JobTorque:
    """Which wrench does, or did, which torque. Torques in N·m."""

    procedure: str
    torque: str  # its id in the procedure
    fastener: str
    count: int
    steps: int  # times that the wrench acts on each fastener
    spec: str
    target_nm: float | None
    low_nm: float | None
    high_nm: float | None
    setting: float | None
    setting_unit: str
    wrench: str | None
    lever: float = 1.0  # the wrench's torque for one N·m at the fastener: an offset adapter changes it
    left_hand: bool = False
    angle: bool = False  # an angle follows the torque

    @property
    def cycles(self) -> int:
        """How often the wrench acts."""
        return self.count * self.steps
