"""Who has what, what happened to an item, how the jobs stand, and what expires."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterator
from dataclasses import dataclass

from cribkit.desk.handing import handed
from cribkit.domain.stock.item import Item, Lot
from cribkit.domain.stock.job import Hold, Job, JobState, JobTorque
from cribkit.domain.stock.movement import Movement
from cribkit.store.crib import Crib
from cribkit.store.jobs import holds, job_torques, must_have_job
from cribkit.store.jobs import jobs as all_jobs
from cribkit.store.loans import OpenLoan, open_loans
from cribkit.store.posting import movements

WITHIN = 1  # days after which a loan without an agreed day is overdue: tools are back at the end of the next shift


@dataclass(frozen=True, slots=True)
class OutLine:
    """Something that is out."""

    loan: OpenLoan
    location: str  # where it belongs
    back_by: dt.date
    overdue_days: int  # 0: not overdue


def out(crib: Crib, on: dt.date, within: int = WITHIN, holder: str = "", job: str = "") -> tuple[OutLine, ...]:
    """What is out, overdue first and of those the longest overdue; then the oldest loans."""
    loans = open_loans(crib, holder=holder, job=job)
    places = {item.tag: item.location for item in crib.items_tagged({loan.tag for loan in loans})}
    lines = [
        OutLine(loan, places[loan.tag], loan.back_by(within), max(0, (on - loan.back_by(within)).days))
        for loan in loans
    ]
    return tuple(sorted(lines, key=lambda line: (-line.overdue_days, line.loan.since, line.loan.tag)))


@dataclass(frozen=True, slots=True)
class HistoryLine:
    """A movement, and how much was in and out after it."""

    movement: Movement
    inside: int
    outside: int
    corrected_by: int | None


def history(crib: Crib, text: str, on: dt.date) -> tuple[Item, tuple[HistoryLine, ...]]:
    """Every movement of an item, the first first."""
    item = handed(crib, text, on).item
    posted = movements(crib, "tag = ?", [item.tag])
    taken_back = {one.corrects: one.id for one in posted if one.corrects is not None}
    lines, inside, outside = [], 0, 0
    for one in posted:
        inside, outside = inside + one.inside, outside + one.outside
        lines.append(HistoryLine(one, inside, outside, taken_back.get(one.id)))
    return item, tuple(lines)


@dataclass(frozen=True, slots=True)
class JobView:
    """A job with what it has out and what holds it."""

    job: Job
    out: tuple[OpenLoan, ...]
    holds: tuple[Hold, ...]
    torques: tuple[JobTorque, ...] = ()


def jobs(crib: Crib, everything: bool = False) -> tuple[JobView, ...]:
    """Jobs that are not closed; all of them if asked for. What is held comes first."""
    found = (*all_jobs(crib, "1" if everything else "state <> 'closed'"), *lent(crib))
    order = (JobState.HELD, JobState.OPEN, JobState.CLOSED)
    return tuple(view(crib, job) for job in sorted(found, key=lambda job: (order.index(job.state), job.day, job.job)))


def lent(crib: Crib) -> Iterator[Job]:
    """Jobs known only from what is out for them: issued by hand, or taken over with the first load."""
    known = {one.job.casefold() for one in all_jobs(crib)}
    for loan in open_loans(crib):
        if loan.job and loan.job.casefold() not in known:
            known.add(loan.job.casefold())
            yield Job.of_loan(loan.job, loan.since, loan.holder)


def job(crib: Crib, name: str) -> JobView:
    """One job with its torques."""
    known = next((one for one in lent(crib) if one.job.casefold() == name.casefold()), None)
    return view(crib, known or must_have_job(crib, name), torques=True)


def view(crib: Crib, one: Job, torques: bool = False) -> JobView:
    """What is known of a job."""
    return JobView(
        one,
        open_loans(crib, job=one.job),
        holds(crib, job=one.job, unsettled=not torques),
        job_torques(crib, one.job) if torques else (),
    )


@dataclass(frozen=True, slots=True)
class ExpiryLine:
    """A lot, or the open container of one, and the days that it still has (negative: expired for so long)."""

    item: Item
    lot: Lot
    days: int


def expiring(crib: Crib, on: dt.date, within: int) -> tuple[ExpiryLine, ...]:
    """Lots in the crib that have expired or will within so many days, the first to expire first."""
    lines = [
        ExpiryLine(item, lot, (lot.expires_on - on).days)
        for item in crib.items("consumable")
        for lot in item.lots
        if lot.expires_on is not None and (lot.expires_on - on).days <= within
    ]
    return tuple(sorted(lines, key=lambda line: (line.days, line.item.tag, line.lot.lot)))
