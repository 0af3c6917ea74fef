"""Jobs in the crib: who pulled what for which vehicle, which wrench did which torque, and what is held."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping

from cribkit.domain.problem import BadInput
from cribkit.domain.stock.job import Hold, HoldKind, Job, JobState, JobTorque
from cribkit.domain.stock.movement import must_be_text
from cribkit.store.crib import Crib
from cribkit.store.posting import Entry
from cribkit.store.rows import day

JOBS = """
    SELECT job, day, by, bay, vehicle, procedures, anyway, state, coalesce(closed_at, ''), closed_by
    FROM job WHERE {} ORDER BY state = 'closed', day, job
"""
HOLDS = """
    SELECT id, job, tag, lot, what, amount, by, at, coalesce(settled, ''), settled_by, coalesce(settled_at, ''), reason
    FROM job_hold WHERE {} ORDER BY id
"""
TORQUES = """
    SELECT procedure, torque, fastener, count, steps, spec, target_nm, low_nm, high_nm, setting, setting_unit, wrench,
           lever, left_hand, angle
    FROM job_torque WHERE job = ? ORDER BY procedure, rowid
"""


def jobs(crib: Crib, where: str = "1", values: Iterable[str] = ()) -> tuple[Job, ...]:
    """Jobs, those that are not closed first."""
    return tuple(job_of(row) for row in crib.connection.execute(JOBS.format(where), tuple(values)))


def job_of(row: tuple[str, ...]) -> Job:
    """A job from its row."""
    job, on, by, bay, vehicle, procedures, anyway, state, closed_at, closed_by = row
    listed = tuple((str(name), str(revision)) for name, revision in json.loads(procedures))
    return Job(job, day(on), by, bay, vehicle, listed, anyway, JobState(state), closed_at, closed_by)


def find_job(crib: Crib, job: str) -> Job | None:
    """The job of this name, whatever the case of its letters."""
    return next(iter(jobs(crib, "job = ?", [job])), None)


def must_have_job(crib: Crib, job: str) -> Job:
    """The job of this name; an unknown one is bad input."""
    found = find_job(crib, job)
    if found is None:
        raise BadInput.of("unknown-job", f"there is no job {job}", "`cribkit jobs` lists them.", source=job)
    return found


def open_job(crib: Crib, job: Job, entry: Entry) -> None:
    """Note a new job. Inside `posting()`."""
    must_be_text(job.job, job.by, job.bay, job.vehicle, job.anyway)
    crib.connection.execute(
        "INSERT INTO job (job, opened_at, day, by, bay, vehicle, procedures, anyway) VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
        (
            job.job,
            entry.at,
            job.day.isoformat(),
            job.by,
            job.bay,
            job.vehicle,
            json.dumps(job.procedures),
            job.anyway,
        ),
    )


def set_state(crib: Crib, job: str, state: JobState, entry: Entry) -> None:
    """Note where a job stands now. Inside `posting()`."""
    closed = (entry.at, entry.by) if state is JobState.CLOSED else (None, "")
    crib.connection.execute(
        "UPDATE job SET state = ?, closed_at = ?, closed_by = ? WHERE job = ?", (state.value, *closed, job)
    )


def add_torque(crib: Crib, job: Job, torque: JobTorque) -> None:
    """Note which wrench goes to a torque. Inside `posting()`."""
    crib.connection.execute(
        "INSERT INTO job_torque (job, day, procedure, torque, fastener, count, steps, spec, "
        "target_nm, low_nm, high_nm, setting, setting_unit, wrench, lever, left_hand, angle) "
        "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
        (
            job.job,
            job.day.isoformat(),
            torque.procedure,
            torque.torque,
            torque.fastener,
            torque.count,
            torque.steps,
            torque.spec,
            torque.target_nm,
            torque.low_nm,
            torque.high_nm,
            torque.setting,
            torque.setting_unit,
            torque.wrench,
            torque.lever,
            int(torque.left_hand),
            int(torque.angle),
        ),
    )


def job_torques(crib: Crib, job: str) -> tuple[JobTorque, ...]:
    """The torques of a job."""
    cursor = crib.connection.execute(TORQUES, (job,))
    names = [column[0] for column in cursor.description]
    rows = [dict(zip(names, row, strict=True)) for row in cursor]
    return tuple(
        JobTorque(**(row | {"left_hand": bool(row["left_hand"]), "angle": bool(row["angle"])})) for row in rows
    )


def change_wrench(
    crib: Crib, job: str, torque: JobTorque, wrench: str, lever: float, setting: float | None, unit: str
) -> None:
    """Another wrench did it than was planned, or at another setting (None: not known). Inside `posting()`."""
    crib.connection.execute(
        "UPDATE job_torque SET wrench = ?, lever = ?, setting = ?, setting_unit = ? "
        "WHERE job = ? AND procedure = ? AND torque = ?",
        (wrench, lever, setting, unit, job, torque.procedure, torque.torque),
    )


def torques_done(crib: Crib, job: str, entry: Entry) -> None:
    """The job's torques count as done on this day. Inside `posting()`."""
    crib.connection.execute("UPDATE job_torque SET done = 1, day = ? WHERE job = ?", (entry.day.isoformat(), job))


def set_planned(crib: Crib, job: str, planned: Mapping[str, int]) -> None:
    """Note what the procedures expect to use. Inside `posting()`."""
    crib.connection.executemany(
        "INSERT INTO job_consumable (job, tag, planned) VALUES (?, ?, ?)",
        [(job, tag, amount) for tag, amount in planned.items()],
    )


def planned_use(crib: Crib, job: str) -> dict[str, int]:
    """What the procedures expected to use, by tag."""
    rows = crib.connection.execute("SELECT tag, planned FROM job_consumable WHERE job = ? ORDER BY tag", (job,))
    return {str(tag): int(amount) for tag, amount in rows}


def holds(crib: Crib, job: str = "", tag: str = "", unsettled: bool = True) -> tuple[Hold, ...]:
    """Holds, oldest first; of one job or tag where they are given."""
    wanted = {"job = ?": job, "tag = ?": tag}
    where = " AND ".join([key for key, value in wanted.items() if value] + ["settled IS NULL"] * unsettled) or "1"
    rows = crib.connection.execute(HOLDS.format(where), [value for value in wanted.values() if value])
    return tuple(hold_of(*row) for row in rows)


def hold_of(number: int, job: str, tag: str, lot: str, what: str, amount: int, by: str, at: str, *settled: str) -> Hold:
    """A hold from its row."""
    return Hold(number, job, tag, lot, HoldKind(what), amount, by, at, *settled)


def hold(crib: Crib, job: str, tag: str, lot: str, what: HoldKind, amount: int, entry: Entry, reason: str = "") -> None:
    """Hold a job until something is found or given up. Inside `posting()`."""
    must_be_text(reason)
    crib.connection.execute(
        "INSERT INTO job_hold (job, tag, lot, what, amount, at, by, reason) VALUES (?, ?, ?, ?, ?, ?, ?, ?)",
        (job, tag, lot, what.value, amount, entry.at, entry.by, reason),
    )


def settle(crib: Crib, one: Hold, amount: int, how: str, entry: Entry, reason: str) -> None:
    """Settle a hold, or so much of it; a job whose last hold is settled is closed. Inside `posting()`."""
    must_be_text(reason)
    if amount < one.amount:
        crib.connection.execute("UPDATE job_hold SET amount = ? WHERE id = ?", (one.amount - amount, one.id))
        cursor = crib.connection.execute(
            "INSERT INTO job_hold (job, tag, lot, what, amount, at, by) VALUES (?, ?, ?, ?, ?, ?, ?)",
            (one.job, one.tag, one.lot, one.what.value, amount, one.at, one.by),
        )
        number = cursor.lastrowid
    else:
        number = one.id
    crib.connection.execute(
        "UPDATE job_hold SET settled = ?, settled_at = ?, settled_by = ?, reason = ? WHERE id = ?",
        (how, entry.at, entry.by, "; ".join(filter(None, (one.reason, reason))), number),
    )
    job = find_job(crib, one.job)
    if job and job.state is JobState.HELD and not holds(crib, job=one.job):
        set_state(crib, one.job, JobState.CLOSED, entry)
