"""Stock over time: what is still good when it is needed, what will expire unused, and the day it runs out.

The lot that expires first is used first. A lot is good through its expiry date.
"""

from __future__ import annotations

import datetime as dt
import math
from collections.abc import Iterable
from dataclasses import dataclass

from cribkit.domain.stock.item import Lot

LONGEST = 36_500  # days: a run-out further away than a hundred years is no date


@dataclass(frozen=True, slots=True)
class Planned:
    """What a planned job needs of an item, in the item's unit, by a day."""

    on: dt.date
    amount: float
    job: str  # the procedure, and the job's name if it has one
    need: str = ""  # the procedure's own words


@dataclass(frozen=True, slots=True)
class Outlook:
    """Expected use from today on: so much a day, and the planned jobs."""

    today: dt.date
    per_day: float
    planned: tuple[Planned, ...] = ()
    later: float = 0.0  # more a day after the plan: what its procedures usually use
    plan_days: int = 0

    @property
    def plan_ends(self) -> dt.date:
        """The last day for which the plan stands."""
        return self.today + dt.timedelta(days=self.plan_days)

    def by(self, day: dt.date) -> float:
        """Expected use after today up to and including that day; planned jobs of days past are due now."""
        days = max(0, (day - self.today).days)
        usual = self.per_day * days + self.later * max(0, days - self.plan_days)
        return usual + sum(job.amount for job in self.planned if job.on <= max(day, self.today))


@dataclass(frozen=True, slots=True)
class Fate:
    """What becomes of a lot: how much of it is used in time, how much expires."""

    lot: Lot
    used: float
    wasted: float


def fates(lots: Iterable[Lot], outlook: Outlook, until: dt.date | None = None) -> tuple[Fate, ...]:
    """First expired first out. A lot that is good beyond `until` counts whole: nothing is said of later days."""
    found, used = [], 0.0
    for lot in sorted(lots, key=_expiry):
        good = lot.amount
        if not lot.good_on(outlook.today):
            good = 0.0
        elif lot.expires_on is not None and (until is None or lot.expires_on < until):
            good = min(good, max(0.0, outlook.by(lot.expires_on) - used))
        used += good
        found.append(Fate(lot, good, lot.amount - good))
    return tuple(found)


def _expiry(lot: Lot) -> tuple[dt.date, str]:
    return lot.expires_on or dt.date.max, lot.lot


def good_by(lots: Iterable[Lot], outlook: Outlook, until: dt.date | None = None) -> float:
    """Stock that will not have expired before it is used, up to the day `until`."""
    return sum(fate.used for fate in fates(lots, outlook, until))


def run_out(lots: Iterable[Lot], outlook: Outlook) -> dt.date | None:
    """The first day whose expected use is more than is left, if nothing arrives; None: not within a hundred years."""
    stock = good_by(lots, outlook)
    jobs = sorted(job.on for job in outlook.planned)
    for day in jobs:
        if outlook.by(day) > stock + 1e-9:
            return min(max(day, outlook.today), _steady(stock, outlook, before=day) or dt.date.max)
    found = _steady(stock, outlook, before=None)
    if outlook.later <= 0 or (found is not None and found <= outlook.plan_ends):
        return found
    left = max(0.0, stock - outlook.by(outlook.plan_ends))
    return _emptied(left, outlook.per_day + outlook.later, outlook.plan_ends)


def _steady(stock: float, outlook: Outlook, before: dt.date | None) -> dt.date | None:
    """The day on which usual use empties the stock that the jobs before `before` leave."""
    taken = sum(job.amount for job in outlook.planned if before is None or job.on < before)
    if outlook.per_day <= 0:
        return None
    return _emptied(max(0.0, stock - taken), outlook.per_day, outlook.today)


def _emptied(stock: float, per_day: float, since: dt.date) -> dt.date | None:
    """The first day whose steady use is more than is left."""
    days = stock / per_day + 1e-9
    return since + dt.timedelta(days=math.floor(days) + 1) if days < LONGEST else None
