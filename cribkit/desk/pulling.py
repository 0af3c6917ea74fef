"""Pull everything for a job in one atomic block: check, issue, and note which wrench goes to which torque."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from cribkit.desk.check import check
from cribkit.desk.ledger import Posted, noted, settled
from cribkit.desk.results import Check, TorqueLine
from cribkit.desk.torque_needs import offset_of
from cribkit.domain.problem import BadInput, Problem
from cribkit.domain.procedure import LEFT_HAND, Procedure
from cribkit.domain.stock.job import Job, JobState, JobTorque
from cribkit.domain.stock.movement import Movement, MovementKind
from cribkit.domain.stock.thousandths import parts
from cribkit.domain.torque import Coverage, Guard, StepKind, Wanted, Wrench
from cribkit.domain.torque.cover import leverage
from cribkit.store.crib import Crib
from cribkit.store.jobs import add_torque, find_job, open_job, set_planned
from cribkit.store.posting import Entry, post


@dataclass(frozen=True, slots=True)
class Order:
    """What is pulled, and for what."""

    procedures: tuple[Procedure, ...]
    job: str
    bay: str = ""
    vehicle: str = ""
    anyway: str = ""  # why it starts although it is not ready
    guard: Guard | None = None


@dataclass(frozen=True, slots=True)
class Pulled:
    """What was pulled. Nothing was (`posted` is None) where the job is not ready and there is no reason to start."""

    check: Check
    job: Job
    posted: Posted | None
    torques: tuple[JobTorque, ...] = ()
    warnings: tuple[Problem, ...] = ()


def pull(crib: Crib, order: Order, entry: Entry) -> Pulled:
    """Check on what is there at this moment, then issue it; no other desk can post in between."""
    if not order.job.strip():
        raise BadInput.of("no-job", "a pull needs the name of its job", "give --job NAME.")
    with crib.posting():
        must_be_new(crib, order.job)
        found = check(crib, unique(order.procedures), entry.day, order.guard)
        job = job_of(order, found, entry)
        if not (found.ready or order.anyway):
            return Pulled(found, job, None, warnings=crib.warnings)
        open_job(crib, job, entry)
        posted = [post(crib, issue_of(pick.tag, pick.lot, pick.count, job, entry), entry.at) for pick in found.pull]
        levers = {wrench.tag: wrench for wrench in crib.wrenches()} if found.torques else {}
        torques = tuple(torque for line in found.torques for torque in torques_of(line, levers))
        for torque in torques:
            add_torque(crib, job, torque)
        set_planned(crib, job.job, planned(found))
        return Pulled(found, job, settled(crib, posted), torques, crib.warnings)


def must_be_new(crib: Crib, name: str) -> None:
    """Each pull has a job of its own."""
    known = find_job(crib, name)
    if known is not None:
        message = f"job {known.job} was pulled by {known.by} on {known.day} and is {known.state.value}"
        todo = "take another name; `cribkit issue TAG --job` adds to a job that is open."
        raise BadInput.of("job-exists", message, todo, known.job)


def unique(procedures: Sequence[Procedure]) -> tuple[Procedure, ...]:
    """Each procedure once."""
    return tuple({procedure.id: procedure for procedure in procedures}.values())


def job_of(order: Order, found: Check, entry: Entry) -> Job:
    """The job as it will be noted."""
    return Job(
        job=order.job.strip(),
        day=entry.day,
        by=entry.by,
        bay=order.bay,
        vehicle=order.vehicle,
        procedures=tuple((procedure.id, procedure.revision) for procedure in found.procedures),
        anyway="" if found.ready else order.anyway,
        state=JobState.OPEN,
    )


def issue_of(tag: str, lot: str, amount: float, job: Job, entry: Entry) -> Movement:
    """The issue of one line of the pull list."""
    return Movement(
        MovementKind.ISSUE,
        tag,
        parts(amount),
        entry.by,
        entry.day,
        lot=lot,
        holder=entry.by,
        job=job.job,
        note=noted("", job.anyway),
    )


def torques_of(line: TorqueLine, wrenches: Mapping[str, Wrench]) -> Iterator[JobTorque]:
    """The wrench of a torque and how often it acts; a step that another wrench does stands on a line of its own."""
    main = line.coverage
    mine = sum(step.coverage is not None and main is not None and step.coverage.tag == main.tag for step in line.steps)
    done = job_torque(line, main, line.need.id, max(1, mine), line.spec.text, line.spec)
    yield replace(done, lever=lever(line, wrenches.get(done.wrench or "")), angle=turns_on(line))
    for asked, step in zip(line.spec.steps, line.steps, strict=True):
        if main is not None and step.coverage is not None and step.coverage.tag != main.tag:
            name = f"{line.need.id}, {step.text}"
            other = job_torque(line, step.coverage, name, 1, step.text, asked.wanted)
            yield replace(other, lever=lever(line, wrenches.get(step.coverage.tag)))


def job_torque(
    line: TorqueLine, coverage: Coverage | None, name: str, steps: int, spec: str, wanted: Wanted | None
) -> JobTorque:
    """One line of a job's torques, with the band that it has to reach; without a wrench where none covers it."""
    return JobTorque(
        procedure=line.procedure,
        torque=name,
        fastener=line.need.fastener,
        count=line.need.count,
        steps=steps,
        spec=spec,
        target_nm=wanted.target_nm if wanted else None,
        low_nm=wanted.low_nm if wanted else None,
        high_nm=wanted.high_nm if wanted else None,
        setting=coverage.setting if coverage else None,
        setting_unit=coverage.setting_unit if coverage else "",
        wrench=coverage.tag if coverage else None,
        left_hand=line.need.direction == LEFT_HAND,
    )


def lever(line: TorqueLine, wrench: Wrench | None) -> float:
    """The wrench's torque for one N·m at the fastener, with the offset adapter that the procedure asks for."""
    found = leverage(wrench, offset_of(line.need))[0] if wrench else None
    return 1.0 if found is None else found


def turns_on(line: TorqueLine) -> bool:
    """Whether an angle or a part of a turn follows the torque."""
    return any(step.angle is not None and step.kind is not StepKind.LOOSEN for step in line.spec.steps)


def planned(found: Check) -> dict[str, int]:
    """What the procedures expect to use of each consumable."""
    amounts: dict[str, int] = {}
    for line in found.consumables:
        if line.tag:
            amounts[line.tag] = amounts.get(line.tag, 0) + parts(line.needed)
    return amounts
