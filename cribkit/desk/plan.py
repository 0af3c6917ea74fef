"""The jobs that are planned: from a CSV file and from the command line, checked before anything is worked out."""

from __future__ import annotations

import datetime as dt
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from pathlib import Path

from cribkit.desk.results import Status
from cribkit.domain.problem import BadInput, Problem, refuse
from cribkit.domain.procedure import Procedure
from cribkit.store.seed.sheet import Cells, read_sheet

COLUMNS = ("procedure", "count", "on", "job", "note")
MOST = 1000  # runs of one procedure in one line of a plan: more is a slip of the pen
Lookup = Callable[[str], Procedure]


@dataclass(frozen=True, slots=True)
class PlannedJob:
    """So many runs of a procedure by a day."""

    procedure: Procedure
    count: int
    on: dt.date
    job: str = ""  # the job's own name
    dated: bool = True  # False: no day was given, it is taken to be needed by the next review

    @property
    def name(self) -> str:
        """As reports name it: "plenum-reseal", "plenum-reseal x3", "plenum-reseal (wren-31)"."""
        times = f" x{self.count}" if self.count != 1 else ""
        return f"{self.procedure.id}{times}" + (f" ({self.job})" if self.job else "")


@dataclass(frozen=True, slots=True)
class NotStocked:
    """A need of a planned job that no item serves for certain."""

    kind: str  # "consumable" or "tool"
    need: str
    amount: float
    unit: str
    on: dt.date  # of the first job that needs it
    jobs: tuple[str, ...]
    status: Status  # ABSENT: a new item; CONFIRM: an item may serve, a person must look
    why: str
    next: str


def planned_jobs(
    named: Sequence[str], plan: Path | None, lookup: Lookup, today: dt.date, undated: dt.date
) -> tuple[PlannedJob, ...]:
    """Every planned job, by day. BadInput with every problem of the file and of the command line.

    `named`: "PROCEDURE" or "PROCEDURE=N". `undated`: the day taken for a job without one.
    """
    problems: list[Problem] = []
    sheet = read_sheet(plan, COLUMNS, ("procedure",)) if plan else None
    problems += sheet.problems if sheet else ()
    rows = [*map(from_option, named), *(sheet.rows if sheet else ())]
    jobs = [job for row in rows if (job := planned_job(row, lookup, today, undated, problems))]
    refuse(problems)
    if plan and sheet and not sheet.rows:
        raise BadInput.of("empty-plan", "the plan has no jobs", "add a line for each planned job.", plan.name)
    return tuple(sorted(jobs, key=lambda job: (job.on, job.procedure.id, job.job)))


def from_option(text: str) -> Cells:
    """ "plenum-reseal=3" as a row of a plan. The last = counts, because a path may contain one."""
    name, mark, count = text.rpartition("=")
    return Cells("--for", {"procedure": name if mark else text, "count": count if mark else ""})


def planned_job(
    row: Cells, lookup: Lookup, today: dt.date, undated: dt.date, problems: list[Problem]
) -> PlannedJob | None:
    """One row; None, and its problems noted, where it is wrong."""
    before = len(problems)
    count = count_of(row, problems)
    on = day_of(row, today, problems)
    procedure = procedure_of(row, lookup, problems)
    if procedure is None or len(problems) > before:
        return None
    return PlannedJob(procedure, count, on or undated, row.cells.get("job", "").strip(), on is not None)


def count_of(row: Cells, problems: list[Problem]) -> int:
    """How many runs: a whole number from 1 on."""
    text = row.cells.get("count", "").strip() or "1"
    if text.isascii() and text.isdigit() and 1 <= int(text) <= MOST:
        return int(text)
    todo = f"write a whole number from 1 to {MOST}."
    problems.append(Problem(row.source, "bad-count", f"{text!r} is not a number of jobs", todo))
    return 0


def day_of(row: Cells, today: dt.date, problems: list[Problem]) -> dt.date | None:
    """The job's day, not before today; None where the row has none."""
    text = row.cells.get("on", "").strip()
    if not text:
        return None
    try:
        on = dt.date.fromisoformat(text)
    except ValueError:
        problems.append(Problem(row.source, "bad-date", f"{text!r} is not a date", "write it as 2026-12-04."))
        return None
    if on < today:
        message = f"{text} is past (today is {today.isoformat()})"
        problems.append(Problem(row.source, "date-past", message, "correct the day, or take the job off the plan."))
    return on


def procedure_of(row: Cells, lookup: Lookup, problems: list[Problem]) -> Procedure | None:
    """The procedure that the row names; its own problems get the row's place."""
    name = row.cells.get("procedure", "").strip()
    if not name:
        problems.append(Problem(row.source, "no-procedure", "no procedure is named", "write its id."))
        return None
    try:
        return lookup(name)
    except BadInput as error:
        problems += [
            Problem(row.source, one.code, one.message, one.next) if one.code == "unknown-procedure" else one
            for one in error.problems
        ]
        return None


def once(lookup: Lookup) -> Lookup:
    """A lookup that reads each procedure once."""
    seen: dict[str, Procedure] = {}

    def find(name: str) -> Procedure:
        if name not in seen:
            seen[name] = lookup(name)
        return seen[name]

    return find


def procedures_in(jobs: Iterable[PlannedJob]) -> tuple[str, ...]:
    """The ids of the planned procedures."""
    return tuple(sorted({job.procedure.id for job in jobs}))
