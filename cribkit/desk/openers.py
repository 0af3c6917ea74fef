"""Which single step opens most jobs: one purchase, one calibration, one thing brought back or confirmed."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from cribkit.desk.candidates import Finder
from cribkit.desk.check import check
from cribkit.desk.gaps import Gap, Gaps, closes, find_gaps, read_offers
from cribkit.desk.reaching import FAMILIES, Reacher, length_mm, wanted_reach
from cribkit.desk.results import Check, ConsumableLine, Line, Status, ToolLine, TorqueLine, optional
from cribkit.desk.torque_needs import TorquePlan
from cribkit.domain.procedure import Procedure, TorqueNeed
from cribkit.domain.torque import Guard, Wrench
from cribkit.domain.torque.gaps import STATE
from cribkit.domain.torque.offers import offered
from cribkit.domain.torque.reach import Part, Role, find_ways, squares
from cribkit.domain.wording import Meaning, head_drivers, judge, read, read_item
from cribkit.store.crib import Crib

Blocker = tuple[str, str, int]  # procedure, "tool" | "torque" | "consumable", which of its lines


@dataclass(frozen=True, slots=True)
class Step:
    """One step and what it does: the needs that it serves and the jobs that it makes ready all by itself."""

    action: str  # "buy", "restock", "calibrate", "get back", "mend" or "confirm"
    what: str
    serves: tuple[Blocker, ...]
    opens: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Blocked:
    """What keeps jobs from starting, each job checked by itself."""

    checks: Mapping[str, Check]
    lines: Mapping[Blocker, Line]


def blocked(crib: Crib, procedures: Iterable[Procedure], on: dt.date, guard: Guard | None = None) -> Blocked:
    """Check each job by itself and keep the needs that are in its way."""
    checks = {one.id: check(crib, (one,), on, guard) for one in procedures}
    lines: dict[Blocker, Line] = {}
    for name, done in checks.items():
        kinds: dict[str, Sequence[Line]] = {"tool": done.tools, "torque": done.torques, "consumable": done.consumables}
        for kind, some in kinds.items():
            for at, line in enumerate(some):
                if line.status is not Status.READY and not optional(line):
                    lines[name, kind, at] = line
    return Blocked(checks, lines)


def gaps_and_steps(
    crib: Crib, procedures: Sequence[Procedure], on: dt.date, offers: Path | None = None
) -> tuple[Gaps, tuple[Step, ...]]:
    """The gaps, and the single steps, with the offers of a file or of the package."""
    tools = read_offers(offers, on) if offers else offered(on)
    found = find_gaps(crib, procedures, on, tools)
    return found, openers(crib, found, tools, on)


def openers(
    crib: Crib, found: Gaps, offers: Sequence[Wrench], on: dt.date, guard: Guard | None = None
) -> tuple[Step, ...]:
    """Every single step that serves a need in the way; the one that opens most jobs first."""
    stuck = blocked(crib, found.procedures, on, guard)
    reacher = Reacher(Finder(crib))
    drives = {wrench.tag: wrench.drive for wrench in crib.wrenches()}
    serving: dict[tuple[str, str], list[Blocker]] = {}
    for step, key in [*plain_steps(stuck), *wrench_steps(stuck, found, offers, reacher, on, guard)]:
        serving.setdefault(step, []).append(key)
    for text in wished_parts(stuck, found):
        serving.setdefault(("buy", text), []).extend(served_by(text, stuck, found, drives, reacher.limits))
    jobs = {name: {key for key in stuck.lines if key[0] == name} for name in stuck.checks}
    steps = [
        Step(action, what, tuple(sorted(set(keys))), opens(set(keys), jobs))
        for (action, what), keys in serving.items()
        if keys
    ]
    return tuple(
        sorted(without_weaker(steps), key=lambda one: (-len(one.opens), -len(one.serves), one.action, one.what))
    )


def opens(served: set[Blocker], jobs: Mapping[str, set[Blocker]]) -> tuple[str, ...]:
    """The jobs of which every blocker is served."""
    return tuple(name for name, keys in jobs.items() if keys and keys <= served)


def without_weaker(steps: Sequence[Step]) -> Iterator[Step]:
    """Of purchases that serve the same needs the first; of one thing in several drives none that serves less."""
    for at, step in enumerate(steps):
        mine = set(step.serves)
        better = (
            other.action == step.action
            and (
                (mine == set(other.serves) and n < at)
                or (mine < set(other.serves) and thing(other.what) == thing(step.what))
            )
            for n, other in enumerate(steps)
        )
        if step.action != "buy" or not any(better):
            yield step


def thing(text: str) -> str:
    """What is bought, without its drive."""
    return text.rpartition(", ")[0] or text


def plain_steps(stuck: Blocked) -> Iterator[tuple[tuple[str, str], Blocker]]:
    """A doubt to confirm; a consumable to restock."""
    for key, line in stuck.lines.items():
        if line.status is Status.CONFIRM:
            yield ("confirm", line.need.spec if isinstance(line, TorqueLine) else line.need.need), key
        elif isinstance(line, ConsumableLine):
            yield ("restock", line.need.need), key


def wrench_steps(
    stuck: Blocked,
    found: Gaps,
    offers: Sequence[Wrench],
    reacher: Reacher,
    on: dt.date,
    guard: Guard | None,
) -> Iterator[tuple[tuple[str, str], Blocker]]:
    """Wrenches to calibrate, bring back, mend or buy: each must close every gap of the need."""
    for key, plan in torque_plans(stuck, found):
        gaps = [gap for gap in found.gaps if gap.plan is plan]
        for offer in offers:
            if all(closes(reacher, offer, gap, on, guard) for gap in gaps):
                yield ("buy", offer.tag), key
        cures = [{(cure(one.reasons), one.tag) for one in gap.coverages if set(one.reasons) <= STATE} for gap in gaps]
        for action, tag in set.intersection(*cures):
            yield (action, tag), key


def cure(reasons: Sequence[str]) -> str:
    """What is done about a wrench that only its state keeps back."""
    if "unfit" in reasons:
        return "mend"
    return "get back" if "out" in reasons else "calibrate"


def torque_plans(stuck: Blocked, found: Gaps) -> Iterator[tuple[Blocker, TorquePlan]]:
    """The blocked torque needs that have gaps, with their plans."""
    plans = {(gap.procedure, gap.key[1]): gap.plan for gap in found.gaps}
    for key, line in stuck.lines.items():
        if isinstance(line, TorqueLine) and (key[0], line.need.id) in plans:
            yield key, plans[key[0], line.need.id]


def wished_parts(stuck: Blocked, found: Gaps) -> tuple[str, ...]:
    """Things whose purchase could help: the tools asked for, and the parts of ways that are missing."""
    texts = [
        line.need.need
        for line in stuck.lines.values()
        if isinstance(line, ToolLine) and line.status is not Status.CONFIRM
    ]
    for _, plan in torque_plans(stuck, found):
        texts += parts_for(plan)
    return tuple(dict.fromkeys(texts))


def parts_for(plan: TorquePlan) -> Iterator[str]:
    """The parts that could open a way for a wrench that covers the torque but does not reach."""
    drives = [square for square in squares() if "hex" not in square]
    reach = plan.need.reach
    for female, male in zip((*drives, *drives[1:]), (*drives[1:], *drives), strict=False):
        yield f"adapter, {female} female x {male} male"
    for drive in drives:
        for head in heads_of(plan.need.head):
            yield f"{head.text}, {drive} drive"
        if reach and reach.extension_mm is not None:
            yield f"{reach.extension_mm or 150:g} mm extension bar, {drive} drive"
        if reach and reach.joint:
            yield f"universal joint, {drive} drive"
        if reach and reach.adapter:
            yield f"{reach.adapter}, {drive} drive"


def served_by(
    text: str, stuck: Blocked, found: Gaps, drives: Mapping[str, str], limits: Mapping[str, float]
) -> Iterator[Blocker]:
    """The needs that a thing of this description would serve."""
    meaning = read_item(text, "tool")
    for key, line in stuck.lines.items():
        if isinstance(line, ToolLine) and line.status is not Status.CONFIRM:
            wanted = (line.need.need, *line.need.instead)
            if any(judge(need_of(one), meaning).status == "match" for one in wanted):
                yield key
    for key, plan in torque_plans(stuck, found):
        gaps = [gap for gap in found.gaps if gap.plan is plan]
        more = tuple(as_parts(text, meaning, plan.need))
        if all(reaches(drives, limits, gap, more) for gap in gaps):
            yield key


def as_parts(text: str, meaning: Meaning, need: TorqueNeed) -> Iterator[Part]:
    """The thing as a part of the way to this fastener."""
    roles = [role for role, family in FAMILIES.items() if meaning.family == family]
    heads = heads_of(need.head)
    roles += [Role.DRIVER] if any(judge(head, meaning).status == "match" for head in heads) else []
    adapter = need.reach.adapter if need.reach else ""
    roles += [Role.OFFSET] if adapter and judge(need_of(adapter), meaning).status == "match" else []
    if meaning.drive_in:
        for role in roles:
            yield Part(text, role, meaning.drive_in, meaning.drive_out, length_mm(meaning), text)


@cache
def need_of(text: str) -> Meaning:
    """A need's text, read once."""
    return read(text, "tool")


@cache
def heads_of(head: str) -> tuple[Meaning, ...]:
    """The sockets and bits for a head, read once."""
    return head_drivers(head) if head else ()


def reaches(drives: Mapping[str, str], limits: Mapping[str, float], gap: Gap, more: tuple[Part, ...]) -> bool:
    """Whether these parts open a way for a wrench that lacks nothing else."""
    near = [one.tag for one in gap.coverages if one.reasons == ("no-reach",)] if more else []
    kit, want = gap.plan.kit, wanted_reach(gap.plan.need, gap.wanted.most_nm)
    return any(find_ways(drives[tag], kit.drivers, (*kit.parts, *more), want, limits, most=1).ways for tag in near)
