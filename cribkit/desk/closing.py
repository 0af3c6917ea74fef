"""Close a job: everything comes back unless it is said otherwise, and nothing stays in the vehicle."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field, replace

from cribkit.desk.handing import Handed, handed
from cribkit.desk.ledger import Posted, come_back, leave, settled, spread
from cribkit.desk.torques_said import doubts, torques_said
from cribkit.domain.problem import BadInput, Problem, refuse
from cribkit.domain.stock.amounts import amount_words
from cribkit.domain.stock.item import Item, Kind
from cribkit.domain.stock.job import Hold, HoldKind, Job, JobState, JobTorque
from cribkit.domain.stock.movement import Movement, MovementKind
from cribkit.domain.stock.thousandths import parts
from cribkit.store.crib import Crib
from cribkit.store.jobs import (
    change_wrench,
    find_job,
    hold,
    holds,
    job_torques,
    open_job,
    planned_use,
    set_state,
    torques_done,
)
from cribkit.store.loans import OpenLoan, open_loans
from cribkit.store.posting import Entry, post

COMPLETE = "complete"  # said of a broken tool: every piece is here


@dataclass(frozen=True, slots=True)
class Said:
    """What is said about a job's tools and consumables, as TAG -> text; "" where only the tag is given."""

    missing: Mapping[str, str] = field(default_factory=dict)  # how many; "": all of them
    broken: Mapping[str, str] = field(default_factory=dict)  # "complete", or "": a piece may be missing
    piece: Mapping[str, str] = field(default_factory=dict)  # it is back, but this member or piece of it is not
    used: Mapping[str, str] = field(default_factory=dict)  # how much
    left: Mapping[str, str] = field(default_factory=dict)  # how much
    torque: Mapping[str, str] = field(default_factory=dict)  # torque's id -> TAG or TAG@SETTING
    as_planned: bool = False  # consumables of which nothing is said were used as the procedures expect


@dataclass(frozen=True, slots=True)
class Usage:
    """A consumable: what the procedures expected, and what was used, in thousandths of its unit."""

    item: Item
    planned: int
    used: int


@dataclass(frozen=True, slots=True)
class Closed:
    """How a job was closed."""

    job: Job
    posted: Posted
    holds: tuple[Hold, ...]  # why it cannot be released yet
    usage: tuple[Usage, ...]
    torques: tuple[JobTorque, ...]
    broken: tuple[str, ...] = ()
    doubts: tuple[Problem, ...] = ()  # torques that have to be looked at again, or whose setting is unknown


def close(crib: Crib, name: str, said: Said, entry: Entry) -> Closed:
    """Close a job in one atomic block. BadInput with every problem, and nothing posted, where anything is unclear."""
    with crib.posting():
        job, loans = open_one(crib, name, entry)
        plan = plans(crib, job, loans, said, entry)
        posted = [movement for one in plan for movement in carry_out(crib, job, one, entry)]
        told = torques_said(crib, job_torques(crib, job.job), said.torque, entry.day)
        for one in told:
            change_wrench(crib, job.job, one.torque, one.wrench.tag, one.lever, one.setting, one.unit)
        torques_done(crib, job.job, entry)
        held = holds(crib, job=job.job)
        state = JobState.HELD if held else JobState.CLOSED
        set_state(crib, job.job, state, entry)
        return Closed(
            replace(job, state=state),
            settled(crib, posted),
            held,
            usage(crib, job),
            job_torques(crib, job.job),
            tuple(one.item.tag for one in plan if one.broken),
            tuple(doubt for one in told for doubt in doubts(one, entry.day)),
        )


def open_one(crib: Crib, name: str, entry: Entry) -> tuple[Job, tuple[OpenLoan, ...]]:
    """The job, which must be open, and what it has out. A job known only from its loans is taken up here."""
    job, loans = find_job(crib, name), open_loans(crib, job=name)
    if job is None and loans:
        job = Job.of_loan(loans[0].job, loans[0].since, loans[0].holder)
        open_job(crib, job, entry)
    if job is None:
        raise BadInput.of("unknown-job", f"there is no job {name}", "`cribkit jobs` lists them.", name)
    if job.state is JobState.CLOSED:
        raise BadInput.of("job-closed", f"job {job.job} was closed by {job.closed_by}", "nothing is left to do.", name)
    if job.state is JobState.HELD:
        tags = ", ".join(one.tag for one in holds(crib, job=job.job))
        todo = "say `cribkit found TAG --job` or `cribkit lost TAG --job --reason`."
        raise BadInput.of("job-held", f"job {job.job} is held for {tags}", todo, name)
    return job, loans


@dataclass(frozen=True, slots=True)
class Plan:
    """What happens to one item of the job."""

    item: Item
    back: dict[OpenLoan, int]
    used: dict[OpenLoan, int]
    missing: dict[OpenLoan, int]
    broken: bool = False
    piece: str | None = None  # what is missing of it


def plans(crib: Crib, job: Job, loans: Iterable[OpenLoan], said: Said, entry: Entry) -> list[Plan]:
    """A plan for each item that is out; every contradiction is collected."""
    by_tag: dict[str, list[OpenLoan]] = {}
    for loan in loans:
        by_tag.setdefault(loan.tag, []).append(loan)
    items = {item.tag: item for item in crib.items_tagged(by_tag)}
    expected = planned_use(crib, job.job)
    problems: list[Problem] = []
    words = resolved(crib, said, set(items), entry, problems)
    found = []
    for tag, mine in by_tag.items():
        try:
            found.append(plan(items[tag], mine, words, expected.get(tag, 0)))
        except BadInput as error:
            problems += error.problems
    refuse(problems)
    return found


def resolved(crib: Crib, said: Said, out: set[str], entry: Entry, problems: list[Problem]) -> Said:
    """The same with each tag as the crib spells it; a tag that the job does not have out is a problem."""

    def spelled(words: Mapping[str, str]) -> dict[str, str]:
        found = {}
        for text, value in words.items():
            try:
                tag = handed(crib, text, entry.day).item.tag
            except BadInput as error:
                problems.extend(error.problems)
                continue
            if tag not in out:
                todo = f"see `cribkit jobs`; `cribkit issue {tag} --job` adds to the job."
                problems.append(Problem(tag, "not-of-job", "the job does not have it", todo))
            found[tag] = value
        return found

    return replace(
        said,
        missing=spelled(said.missing),
        broken=spelled(said.broken),
        piece=spelled(said.piece),
        used=spelled(said.used),
        left=spelled(said.left),
    )


def plan(item: Item, loans: list[OpenLoan], said: Said, expected: int) -> Plan:
    """What happens to one item: missing first, then used, and the rest comes back."""
    tag, out = item.tag, sum(loan.amount for loan in loans)
    missing = how_many(item, said.missing[tag], out) if tag in said.missing else 0
    used = use_said(item, said, out - missing, expected)
    if item.kind is not Kind.CONSUMABLE and used:
        raise BadInput.of("tool-used", "a tool is not used up", "say --broken, or leave it out.", tag)
    broken, whole = tag in said.broken, said.broken.get(tag, "").casefold()
    if broken and (whole not in ("", COMPLETE) or item.kind is Kind.CONSUMABLE):
        raise BadInput.of("bad-broken", f"--broken {tag}={whole} is not understood", f"say {tag}={COMPLETE}.", tag)
    if missing == out and (broken or tag in said.piece):
        raise BadInput.of("none-back", "all of it is missing, so nothing of it came back", "say one of them.", tag)
    gone = spread(loans, missing)
    rest = [replace(loan, amount=loan.amount - gone[loan]) for loan in loans]
    back = spread(rest, out - missing - used)
    piece = said.piece.get(tag, "a piece of it" if broken and whole != COMPLETE else None)
    return Plan(
        item,
        back={loan: amount for loan, amount in back.items() if amount},
        used={loan: loan.amount - back[loan] for loan in rest if loan.amount > back[loan]},
        missing={loan: amount for loan, amount in gone.items() if amount},
        broken=broken,
        piece=piece,
    )


def how_many(item: Item, text: str, out: int) -> int:
    """An amount that is said, at most what is out; "" is all of it."""
    amount = Handed(item).amount(text) if text else out
    assert amount is not None, "the text is not None"
    if amount > out:
        there = amount_words(out, item.unit, item.pack)
        asked = amount_words(amount, item.unit, item.pack)
        todo = "if more was used, `cribkit issue` the rest to the job first."
        raise BadInput.of("too-much", f"{asked} is more than the job has: {there}", todo, item.tag)
    return amount


def use_said(item: Item, said: Said, out: int, expected: int) -> int:
    """How much was used: said so, or what is not left, or, where asked for, what was expected."""
    if item.tag in said.used and item.tag in said.left:
        used, left = (how_many(item, words[item.tag], out) for words in (said.used, said.left))
        if used + left != out:
            there = amount_words(out, item.unit, item.pack)
            raise BadInput.of("no-sum", f"used and left do not add up to {there}", "say one of them.", item.tag)
        return used
    if item.tag in said.used:
        return how_many(item, said.used[item.tag], out)
    if item.tag in said.left:
        return out - how_many(item, said.left[item.tag], out)
    return min(expected, out) if said.as_planned and item.kind is Kind.CONSUMABLE else 0


def carry_out(crib: Crib, job: Job, one: Plan, entry: Entry) -> Iterator[Movement]:
    """Post what happens to one item, and hold the job for what is missing."""
    for loan, amount in one.used.items():
        yield leave(crib, loan, amount, MovementKind.USE, entry)
    for loan, amount in one.back.items():
        yield come_back(crib, loan, amount, entry)
    for loan, amount in one.missing.items():
        hold(crib, job.job, loan.tag, loan.lot, HoldKind.MISSING, amount, entry)
    back = sum(one.back.values())
    if one.broken and back:
        yield from take_out_of_use(crib, job, one.item, entry)
    if one.piece is not None:
        hold(crib, job.job, one.item.tag, "", HoldKind.PIECE, parts(1), entry, one.piece)


def take_out_of_use(crib: Crib, job: Job, item: Item, entry: Entry) -> Iterator[Movement]:
    """A broken torque wrench waits for repair and calibration; of other tools one is thrown away."""
    if item.kind is Kind.WRENCH:
        crib.connection.execute("UPDATE item SET condition = 'damaged' WHERE tag = ?", (item.tag,))
        return
    note = f"broken on job {job.job}"
    yield post(
        crib, Movement(MovementKind.SCRAP, item.tag, parts(1), entry.by, entry.day, job=job.job, note=note), entry.at
    )


def usage(crib: Crib, job: Job) -> tuple[Usage, ...]:
    """What was used for the job, and what was expected."""
    rows = crib.connection.execute(
        "SELECT tag, sum(amount) FROM movement WHERE job = ? COLLATE NOCASE AND kind = 'use' GROUP BY tag", (job.job,)
    )
    used = {str(tag): int(amount) for tag, amount in rows}
    expected = planned_use(crib, job.job)
    items = crib.items_tagged({*used, *expected})
    return tuple(Usage(item, expected.get(item.tag, 0), used.get(item.tag, 0)) for item in items)
