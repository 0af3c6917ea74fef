"""When a wrench falls due: by the calendar and by its cycle count, whichever comes first.

The month arithmetic is `torque.due.add_months`: the whole interval is added to the calibration date and clipped to the
month's end. A calibration is good *through* its last day; the wrench is overdue from the next day (common practice,
no source). 12 months or 5,000 cycles is the usual interval where a shop has no procedure of its own (ISO 6789, from
memory); the interval may start at first use (from memory).
"""

from __future__ import annotations

import datetime as dt
from calendar import monthrange
from dataclasses import dataclass
from enum import StrEnum

from cribkit.domain.torque.due import add_months


class Policy(StrEnum):
    """Which day of the month a calibration ends on."""

    SAME_DAY = "same-day"  # the day of the month of the calibration, or the month's last day where it has none
    END_OF_MONTH = "end-of-month"  # the month's last day; the shop's written procedure must say so


class Start(StrEnum):
    """What starts the interval."""

    CALIBRATION = "calibration"
    FIRST_USE = "first-use"  # the first time it goes out after its calibration


class Standing(StrEnum):
    """How a wrench stands against its due date."""

    GOOD = "good"
    SOON = "soon"  # falls due within the days asked for
    OVERDUE = "overdue"
    NEVER = "never"  # no calibration on record


@dataclass(frozen=True, slots=True)
class Terms:
    """How long a calibration holds. None: that clock does not run."""

    months: int | None = 12
    cycles: int | None = 5000
    policy: Policy = Policy.SAME_DAY
    start: Start = Start.CALIBRATION


@dataclass(frozen=True, slots=True)
class Rules:
    """The shop's own rules for due dates."""

    policy: Policy = Policy.SAME_DAY
    start: Start = Start.CALIBRATION
    days_away: int = 14  # how long the laboratory takes
    by: str = ""
    at: str = ""


@dataclass(frozen=True, slots=True)
class Use:
    """What a wrench did since its calibration."""

    first_on: dt.date | None = None  # None: not used yet
    cycles: int = 0


@dataclass(frozen=True, slots=True)
class Due:
    """When a calibration ends. Dates are the last good day."""

    calendar: dt.date | None  # None: no clock by the calendar
    cycles_left: int | None  # None: no cycle clock
    cycles_until: dt.date | None  # forecast of the last day with cycles left; None: no use to forecast from
    started: bool = True  # False: the interval starts at first use, and there was none yet

    @property
    def until(self) -> dt.date | None:
        """The earlier of the two clocks' last good days."""
        return min((day for day in (self.calendar, self.cycles_until) if day), default=None)

    @property
    def by(self) -> str:
        """The clock that ends it: "calendar", "cycles" or "" for none."""
        if self.until is None:
            return ""
        return "calendar" if self.calendar == self.until else "cycles"

    def standing(self, today: dt.date, within: int = 0) -> Standing:
        """Overdue from the day after `until`; soon if `until` lies at most `within` days ahead."""
        if self.cycles_left is not None and self.cycles_left <= 0:
            return Standing.OVERDUE
        if self.calendar is not None and today > self.calendar:
            return Standing.OVERDUE
        if self.until is not None and (self.until - today).days <= within:
            return Standing.SOON
        return Standing.GOOD


def due(calibrated_on: dt.date, terms: Terms, use: Use, today: dt.date) -> Due:
    """The ends of a calibration as seen today."""
    waiting = terms.start is Start.FIRST_USE and use.first_on is None
    begins = calibrated_on
    if terms.start is Start.FIRST_USE:
        begins = max(calibrated_on, use.first_on or today)
    left = None if terms.cycles is None else terms.cycles - use.cycles
    return Due(
        calendar=None if terms.months is None else last_good_day(begins, terms.months, terms.policy),
        cycles_left=left,
        cycles_until=None if left is None else forecast(left, use.cycles, use.first_on or calibrated_on, today),
        started=not waiting,
    )


def last_good_day(begins: dt.date, months: int, policy: Policy = Policy.SAME_DAY) -> dt.date:
    """The last day of an interval of whole months.

    Always the whole interval from the beginning, never from an earlier due date that was clipped already.
    """
    day = add_months(begins, months)
    if policy is Policy.END_OF_MONTH:
        return day.replace(day=monthrange(day.year, day.month)[1])
    return day


def forecast(left: int, used: int, since: dt.date, today: dt.date) -> dt.date | None:
    """The last day on which cycles are left, if use goes on at its mean rate since its first use.

    None where nothing was used yet. With no cycles left it is the day before today.
    """
    if left <= 0:
        return today - dt.timedelta(days=1)
    days = max(1, (today - since).days)
    if used <= 0:
        return None
    ahead = (left * days - 1) // used
    latest = (dt.date.max - today).days
    return today + dt.timedelta(days=min(ahead, latest))
