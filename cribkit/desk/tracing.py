"""The look back from a wrench: every job since its last good calibration, and what each fastener really got."""

from __future__ import annotations

import datetime as dt
from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cache

from cribkit.domain.calibration.certificate import Finding, Fitness, examine, subject_of
from cribkit.domain.calibration.due import Start, last_good_day
from cribkit.domain.calibration.readings import Direction, Limit
from cribkit.domain.calibration.trace import Answer, Doubt, Fastened, trace
from cribkit.domain.quantity import torque_unit
from cribkit.domain.torque import Wrench
from cribkit.store.calibrations import Kept, life, rules
from cribkit.store.crib import Crib
from cribkit.store.wrench_state import first_use

WORK = """
    SELECT job_torque.job, job.vehicle, job.bay, job_torque.procedure, job_torque.day, torque, fastener, count, steps,
           spec, low_nm, high_nm, setting, setting_unit, lever, left_hand, angle, job.by, job.day
    FROM job_torque JOIN job ON job.job = job_torque.job
    WHERE wrench = ? AND job_torque.day <= ?
      AND NOT (job.state = 'closed' AND job_torque.done = 0)
    ORDER BY job_torque.day, job_torque.job, job_torque.procedure, job_torque.rowid
"""


WORSE = (Answer.INSIDE, Answer.CANNOT_TELL, Answer.OUTSIDE)  # each worse than the one before


@dataclass(frozen=True, slots=True)
class Trace:
    """The look back over one wrench. `until` is the day of the certificate that it rests on, or today."""

    tag: str
    description: str
    since: dt.date | None  # None: there is no earlier good calibration, everything is listed
    until: dt.date
    certificate: str  # "" where no as-found readings speak about these jobs
    found_out: bool
    doubts: tuple[Doubt, ...]

    @property
    def recheck(self) -> tuple[Doubt, ...]:
        """What has to be checked on the vehicle: everything that is not certainly inside, and what was past due."""
        return tuple(doubt for doubt in self.doubts if doubt.answer is not Answer.INSIDE or doubt.work.past_due)

    def count(self, answer: Answer) -> int:
        """How many torques have this answer."""
        return sum(doubt.answer is answer for doubt in self.doubts)

    @property
    def vehicles(self) -> tuple[tuple[str, tuple[Doubt, ...]], ...]:
        """The torques by vehicle (by job where no vehicle was named), in the order of the first job."""
        groups: dict[str, list[Doubt]] = {}
        for doubt in self.doubts:
            groups.setdefault(doubt.work.vehicle or f"job {doubt.work.job}", []).append(doubt)
        return tuple((name, tuple(doubts)) for name, doubts in groups.items())


def trace_found(crib: Crib, wrench: Wrench, finding: Finding, since: dt.date | None = None) -> Trace:
    """The look back from one certificate, to the last good one before it."""
    paper = finding.certificate
    start = since or last_good_before(crib, wrench, paper.on, paper.number)
    return look_back(crib, wrench, start, paper.on, finding)


def trace_wrench(crib: Crib, wrench: Wrench, today: dt.date, since: dt.date | None = None) -> Trace:
    """The look back asked for by a person: from the newest certificate, if its as-found readings failed.

    Else every job since the last good calibration is listed, up to today.
    """
    newest = max(life(crib, wrench.tag).in_force, key=lambda kept: (kept.line.day, kept.line.id), default=None)
    if newest is not None and (finding := finding_of(newest, wrench)).found_out:
        return trace_found(crib, wrench, finding, since)
    return look_back(crib, wrench, since or last_good_before(crib, wrench, None, ""), today, None)


def look_back(crib: Crib, wrench: Wrench, since: dt.date | None, until: dt.date, finding: Finding | None) -> Trace:
    """Each torque with the as-found readings that came next after it."""
    papers = sorted(life(crib, wrench.tag).in_force, key=lambda kept: (kept.line.day, kept.line.id))
    found = [finding_of(kept, wrench) for kept in papers if kept.line.day <= until]
    doubts = tuple(judged(one, found) for one in work_of(crib, wrench, since, until))
    number = finding.certificate.number if finding else ""
    return Trace(wrench.tag, wrench.description, since, until, number, finding is not None, doubts)


def judged(work: Fastened, found: Sequence[Finding]) -> Doubt:
    """The answer of the as-found readings that came next.

    Work is noted by its day: what was done on the day of a calibration may have come before or after it. It is
    judged by the readings of that day and by the next ones, and the worse answer stands.
    """
    speaking = [one for one in found if one.as_found is not None and one.certificate.on >= work.on]
    same_day = [one for one in speaking if one.certificate.on == work.on]
    answers = [trace(work, finding) for finding in speaking[: len(same_day) + 1]] or [trace(work, None)]
    return max(answers, key=lambda doubt: WORSE.index(doubt.answer))


def finding_of(kept: Kept, wrench: Wrench) -> Finding:
    """A recorded certificate as it was judged then, with the limits of then."""
    subject = replace(subject_of(wrench), limit=Limit(kept.limit, kept.accepted))
    judged = examine(kept.certificate, subject)
    return replace(judged, fitness=kept.fitness, usable=kept.usable, two_way=kept.two_way, why=kept.why)


def last_good_before(crib: Crib, wrench: Wrench, day: dt.date | None, number: str) -> dt.date | None:
    """The day of the last calibration before a day (or at all) that left it fit for use; None if there was none."""
    days = [
        kept.line.day
        for kept in life(crib, wrench.tag).in_force
        if kept.fitness is not Fitness.UNFIT
        and kept.certificate.number != number
        and (day is None or kept.line.day <= day)
    ]
    row = crib.connection.execute("SELECT calibrated_on FROM wrench WHERE tag = ?", (wrench.tag,)).fetchone()
    if row and row[0]:
        first = dt.date.fromisoformat(row[0])
        days += [first] if day is None or first < day else []
    return max(days, default=None)


def work_of(crib: Crib, wrench: Wrench, since: dt.date | None, until: dt.date) -> tuple[Fastened, ...]:
    """The torques done with a wrench, first to last; those of a job that was closed without them are left out."""
    rows = crib.connection.execute(WORK, (wrench.tag, until.isoformat())).fetchall()
    clock = Clock(crib, wrench)
    days = dt.date.fromisoformat
    work = [fastened(row, clock.past_due(days(row[4]), row[7] * row[8], days(row[-1]))) for row in rows]
    return tuple(one for one in work if since is None or one.on >= since)


class Clock:
    """The calendar and the cycle count of a wrench, run through its work again from the first job on."""

    def __init__(self, crib: Crib, wrench: Wrench) -> None:
        self.rules = rules(crib)
        self.first = cache(lambda begins: first_use(crib, wrench.tag, begins))
        row = crib.connection.execute(
            "SELECT calibrated_on, interval_months, interval_cycles FROM wrench WHERE tag = ?", (wrench.tag,)
        ).fetchone()
        self.months, self.most = row[1], row[2]
        days = {kept.line.day for kept in life(crib, wrench.tag).in_force if kept.fitness is not Fitness.UNFIT}
        self.calibrated = sorted(days | ({dt.date.fromisoformat(row[0])} if row[0] else set()))
        self.cycles: dict[dt.date, int] = {}

    def past_due(self, day: dt.date, cycles: int, pulled: dt.date) -> bool:
        """Whether no calibration was in force for work of so many cycles on a day. Ask in the order of the days.

        A job that was pulled before the day of a calibration and done on it counts as done before it.
        """
        before = day - dt.timedelta(days=1) if pulled < day else day
        begins = max((known for known in self.calibrated if known <= before), default=None)
        if begins is None:
            return True
        counted = begins
        self.cycles[counted] = self.cycles.get(counted, 0) + cycles
        if self.rules.start is Start.FIRST_USE:
            begins = self.first(begins) or begins
        return day > last_good_day(begins, self.months, self.rules.policy) or self.cycles[counted] > self.most


def fastened(row: Sequence[object], past_due: bool) -> Fastened:
    """One torque from a row of `WORK`."""
    job, vehicle, bay, procedure, day, torque, fastener, count, _, spec, low, high = row[:12]
    setting, unit, lever, left_hand, angle, by = row[12:18]
    on = dt.date.fromisoformat(str(day))
    value = None if setting is None else float(str(setting))
    nm = torque_unit(str(unit)).nm if value is not None and unit else None
    return Fastened(
        job=str(job),
        vehicle=str(vehicle) or (f"bay {bay}" if bay else ""),
        procedure=str(procedure),
        on=on,
        torque_id=str(torque),
        fastener=str(fastener),
        count=int(str(count)),
        spec=str(spec),
        low_nm=None if low is None else float(str(low)),
        high_nm=None if high is None else float(str(high)),
        setting_nm=None if value is None or nm is None else value * nm,
        setting="" if value is None else f"{value:.6g} {unit}",
        lever=float(str(lever)),
        direction=Direction.COUNTER if left_hand else Direction.CLOCKWISE,
        angle=bool(angle),
        past_due=past_due,
        by=str(by),
    )
