"""From planned jobs to what they need of each item: procedure amounts × runs × what such jobs really use."""

from __future__ import annotations

import datetime as dt
from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from cribkit.desk.candidates import Finder
from cribkit.desk.consumable_needs import ConsumablePlan, good_amount, missing, plan_consumable
from cribkit.desk.plan import NotStocked, PlannedJob
from cribkit.desk.results import Status
from cribkit.domain.procedure import ToolNeed
from cribkit.domain.stock.shelf import Planned
from cribkit.store.stocking import Ratio


@dataclass(frozen=True, slots=True)
class PlannedNeeds:
    """What the plan needs of each tag, and what nothing stocked serves."""

    by_tag: Mapping[str, tuple[Planned, ...]]
    not_stocked: tuple[NotStocked, ...]


@dataclass(frozen=True, slots=True)
class _Share:
    """What one planned job takes of one tag."""

    job: PlannedJob
    once: float  # amount of one run
    amount: float
    need: str


def planned_needs(finder: Finder, jobs: Sequence[PlannedJob], ratios: Mapping[str, Ratio]) -> PlannedNeeds:
    """Needs that are not optional, job by job in order of day; each is served from what is there, best match first,
    and what is missing is asked of the best match."""
    left: dict[str, float] = {}
    shares: dict[str, list[_Share]] = defaultdict(list)
    lacking: dict[tuple[str, str], NotStocked] = {}
    plans: dict[tuple[str, int], ConsumablePlan] = {}
    for job in jobs:
        for at, need in enumerate(job.procedure.consumables):
            if need.optional:
                continue
            key = (job.procedure.id, at)
            plan = plans.get(key) or plan_consumable(finder, job.procedure.id, need)
            plans[key] = plan
            if plan.serving:
                give(plan, job, left, shares)
            else:
                status, why, todo = missing(plan)
                note(lacking, "consumable", need.need, plan.needed * job.count, plan.unit, job, status, why, todo)
        for tool in job.procedure.tools:
            if not tool.optional:
                look_for_tool(finder, tool, job, lacking)
    by_tag = {tag: tuple(in_all(found, ratios.get(tag))) for tag, found in shares.items()}
    return PlannedNeeds(by_tag, tuple(lacking.values()))


def give(plan: ConsumablePlan, job: PlannedJob, left: dict[str, float], shares: dict[str, list[_Share]]) -> None:
    """Take a job's amount from what is left of the items that serve it."""
    wanted = plan.needed * job.count
    for entry in plan.serving:
        tag = entry.item.tag
        there = left.setdefault(tag, good_amount(entry.item, job.on))
        taken = min(there, wanted)
        if taken > 0:
            left[tag] = there - taken
            wanted -= taken
            shares[tag].append(_Share(job, min(plan.needed, taken), taken, plan.need.need))
    if wanted > 0:
        best = plan.serving[0].item.tag
        shares[best].append(_Share(job, min(plan.needed, wanted), wanted, plan.need.need))


def in_all(shares: Sequence[_Share], ratio: Ratio | None) -> list[Planned]:
    """The amounts that are really used: estimate × (used / estimated of the closed jobs).

    Where jobs use less than their procedure says, the last one still needs its whole amount on the shelf to start.
    """
    factor = factor_of(ratio)
    found = [Planned(one.job.on, one.amount * factor, one.job.name, one.need) for one in shares]
    if factor < 1:
        last, share = found[-1], shares[-1]
        found[-1] = Planned(last.on, last.amount + share.once * (1 - factor), last.job, last.need)
    return merged(found)


def factor_of(ratio: Ratio | None) -> float:
    """Used over estimated; 1 with too few closed jobs."""
    return max(0.0, ratio.used) / ratio.planned if ratio and ratio.counts else 1.0


def merged(found: Sequence[Planned]) -> list[Planned]:
    """One line for a job, though several of its needs may be served by one item."""
    sums: dict[tuple[dt.date, str], Planned] = {}
    for one in found:
        before = sums.get((one.on, one.job))
        amount = one.amount + (before.amount if before else 0.0)
        need = one.need if before is None or one.need in before.need else f"{before.need}; {one.need}"
        sums[one.on, one.job] = Planned(one.on, amount, one.job, need)
    return list(sums.values())


def look_for_tool(finder: Finder, tool: ToolNeed, job: PlannedJob, lacking: dict[tuple[str, str], NotStocked]) -> None:
    """A tool that nothing stocked serves is a new item; whether a stocked one is free is the check's question."""
    found = [entry for text in (tool.need, *tool.instead) for entry in finder.find(text, "tool")]
    if any(entry.matches for entry in found):
        return
    status, why, todo = Status.ABSENT, "not stocked", "get it before the job."
    if found:
        item = found[0].item
        status, why = Status.CONFIRM, f"{item.tag} ({item.description}) may do: {found[0].why}"
        todo = f'look at it; if it is right: cribkit confirm "{tool.need}" {item.tag} --by NAME'
    count = float(tool.count)  # one job after the other can use the same
    note(lacking, "tool", tool.need, count, "each", job, status, why, todo, at_once=True)


def note(
    lacking: dict[tuple[str, str], NotStocked],
    kind: str,
    need: str,
    amount: float,
    unit: str,
    job: PlannedJob,
    status: Status,
    why: str,
    todo: str,
    at_once: bool = False,
) -> None:
    """Add a need to the list, or to the line of the same need."""
    before = lacking.get((kind, need))
    if before is not None:
        amount = max(before.amount, amount) if at_once else before.amount + amount
    jobs = (*(before.jobs if before else ()), job.name)
    first = min(before.on, job.on) if before else job.on
    lacking[kind, need] = NotStocked(kind, need, amount, unit, first, tuple(dict.fromkeys(jobs)), status, why, todo)
