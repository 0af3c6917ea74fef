"""Which procedures lose their last covering wrench, and on which day."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable, Mapping
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Requirement:
    """One torque of one procedure, and the tags of all wrenches that cover it while they are in calibration."""

    procedure: str
    torque: str
    wrenches: frozenset[str]


@dataclass(frozen=True, slots=True, order=True)
class Loss:
    """From `day` on, no wrench in calibration covers this torque. `last` is the wrench (or wrenches) that did."""

    day: dt.date
    procedure: str
    torque: str
    last: tuple[str, ...]


def losses(
    requirements: Iterable[Requirement], until: Mapping[str, dt.date | None], today: dt.date, horizon: dt.date
) -> tuple[Loss, ...]:
    """Losses from tomorrow to the horizon, earliest first.

    `until` has the last good day of each wrench that can be used today (None: no end); a wrench that it does not name
    cannot be used. A torque that no wrench covers today is no loss: it is missing already (see `uncovered`).
    """
    found = []
    for requirement in requirements:
        ends = [until[tag] for tag in requirement.wrenches if tag in until]
        last_days = [day for day in ends if day is not None]
        if not ends or len(last_days) < len(ends):
            continue
        day = max(last_days)
        if not today <= day < horizon:
            continue
        last = tuple(sorted(tag for tag in requirement.wrenches if until.get(tag) == day))
        found.append(Loss(day + dt.timedelta(days=1), requirement.procedure, requirement.torque, last))
    return tuple(sorted(found))


def uncovered(
    requirements: Iterable[Requirement], until: Mapping[str, dt.date | None], today: dt.date
) -> tuple[Requirement, ...]:
    """The torques that no wrench can do today."""

    def usable(tag: str) -> bool:
        return tag in until and ((day := until[tag]) is None or day >= today)

    return tuple(r for r in requirements if not any(map(usable, r.wrenches)))
