"""Can the job start? Every need of one or more procedures against one crib on one day."""

from __future__ import annotations

import datetime as dt
import re
from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import replace

from cribkit.desk.candidates import Finder
from cribkit.desk.consumable_needs import ConsumablePlan, consumable_line, plan_consumable, stock_of
from cribkit.desk.reaching import Reacher
from cribkit.desk.results import Check, ConsumableLine, Pick, Status, StepLine, ToolLine, TorqueLine
from cribkit.desk.tool_needs import ToolPlan, plan_tool, tool_line
from cribkit.desk.torque_needs import TorquePlan, plan_torque, torque_line
from cribkit.desk.understanding import Understanding
from cribkit.domain.procedure import Procedure
from cribkit.domain.stock.rationing import ration
from cribkit.domain.stock.sharing import Sharing, share
from cribkit.domain.torque import Guard, Wrench
from cribkit.store.crib import Crib


def check(crib: Crib, procedures: Sequence[Procedure], on: dt.date, guard: Guard | None = None) -> Check:
    """The procedures run side by side; the needs of each follow each other."""
    finder = Finder(crib, Understanding(procedures))
    reacher = Reacher(finder)
    wrenches = crib.wrenches() if any(procedure.torques for procedure in procedures) else ()
    tools = [plan_tool(finder, p.id, need) for p in procedures for need in p.tools]
    pulled = pulled_anyway(tools)
    torques = [
        plan_torque(reacher, wrenches, p.id, need, on, guard, pulled[p.id]) for p in procedures for need in p.torques
    ]
    angled = {plan.procedure for plan in torques if plan.spec.needs_angle_gauge}
    if angled:  # imported where an angle is asked for: other checks do not pay for it
        from cribkit.desk.angles import with_angle_wrenches

        tools = [
            with_angle_wrenches(finder, plan, torques, wrenches) if plan.procedure in angled else plan for plan in tools
        ]
    plans = [plan_consumable(finder, p.id, need) for p in procedures for need in p.consumables]
    sharing, takers = give_out(tools, torques, units_of(tools, torques, wrenches))
    tool_lines = tuple(tool_line(plan, sharing.chosen[at], takers) for at, plan in enumerate(tools))
    by_tag = {wrench.tag: wrench for wrench in wrenches}
    torque_lines = tuple(
        torque_line(plan, sharing.chosen[len(tools) + at], takers, by_tag) for at, plan in enumerate(torques)
    )
    if guard:
        torque_lines = tuple(line._replace(warnings=(*line.warnings, *guarded(line, guard))) for line in torque_lines)
    consumable_lines = ration_out(plans, on)
    told: tuple[str, ...] = ()
    if angled:
        from cribkit.desk.angles import angle_notes

        told = tuple(angle_notes([line for line in tool_lines if line.procedure in angled], by_tag))
    return Check(
        on=on,
        procedures=tuple(procedures),
        tools=tool_lines,
        torques=torque_lines,
        consumables=consumable_lines,
        pull=pull_list(tool_lines, torque_lines, consumable_lines),
        proven=sharing.proven,
        notes=(*notes(tool_lines, consumable_lines, sharing), *told),
    )


def pulled_anyway(tools: Iterable[ToolPlan]) -> dict[str, frozenset[str]]:
    """What the tool needs of each procedure take by their first choice."""
    first: dict[str, set[str]] = defaultdict(set)
    for plan in tools:
        first[plan.procedure].update(tag for option in plan.options[:1] for tag, _ in option)
    return defaultdict(frozenset, {procedure: frozenset(tags) for procedure, tags in first.items()})


def units_of(tools: Sequence[ToolPlan], torques: Sequence[TorquePlan], wrenches: Sequence[Wrench]) -> dict[str, int]:
    """How many units of each tag are on the shelf."""
    units = {tag: count for plan in tools for tag, count in plan.usable.items()}
    for plan in torques:
        units |= {tag: int(found.item.on_hand) for tag, found in plan.kit.found.items()}
    return units | {wrench.tag: int(wrench.on_hand) for wrench in wrenches}


def give_out(
    tools: Sequence[ToolPlan], torques: Sequence[TorquePlan], units: dict[str, int]
) -> tuple[Sharing, dict[str, list[str]]]:
    """The exact sharing of units, and which procedures hold each tag."""
    calls = [plan.call for plan in tools] + [plan.call for plan in torques]
    sharing = share(calls, units)
    takers: dict[str, list[str]] = defaultdict(list)
    for call, index in zip(calls, sharing.chosen, strict=True):
        for tag, _ in () if index is None else call.options[index]:
            if call.owner not in takers[tag]:
                takers[tag].append(call.owner)
    return sharing, dict(takers)


def ration_out(plans: Sequence[ConsumablePlan], on: dt.date) -> tuple[ConsumableLine, ...]:
    """Amounts for every consumable need, the optional ones after all others."""
    order = sorted(range(len(plans)), key=lambda at: plans[at].need.optional)
    rations = ration([plans[at].draw for at in order], stock_of(plans, on))
    drawn: dict[str, float] = {}
    lines = {at: consumable_line(plans[at], got, on, drawn) for at, got in zip(order, rations, strict=True)}
    return tuple(lines[at] for at in range(len(plans)))


def pull_list(
    tools: Iterable[ToolLine], torques: Iterable[TorqueLine], consumables: Iterable[ConsumableLine]
) -> tuple[Pick, ...]:
    """What to take, in the order of the shelves: of each tool the most that a procedure uses at once, added up over
    procedures; of each lot the sum."""
    units: dict[str, dict[str, list[Pick]]] = defaultdict(lambda: defaultdict(list))
    lines: list[ToolLine | TorqueLine] = [*tools, *torques]
    for line in lines:
        for pick in line.picked:
            units[pick.tag][line.procedure].append(pick)
    taken = [total([in_turn(picks) for picks in by_procedure.values()]) for by_procedure in units.values()]
    lots: dict[tuple[str, str], list[Pick]] = defaultdict(list)
    for consumable in consumables:
        for pick in consumable.lots:
            lots[pick.tag, pick.lot].append(pick)
    taken += [total(picks) for picks in lots.values()]
    return tuple(sorted(taken, key=lambda pick: (shelf(pick.location), pick.tag, pick.lot)))


def in_turn(picks: Sequence[Pick]) -> Pick:
    """What one procedure takes of a tag: the most at once."""
    return replace(picks[0], count=max(pick.count for pick in picks), member=members(picks))


def total(picks: Sequence[Pick]) -> Pick:
    """What several procedures take of the same thing together."""
    return replace(picks[0], count=sum(pick.count for pick in picks), member=members(picks))


def members(picks: Sequence[Pick]) -> str:
    """The members of a set that are wanted, each once."""
    return ", ".join(dict.fromkeys(name for pick in picks for name in pick.member.split(", ") if name))


def shelf(location: str) -> tuple[tuple[bool, int, str], ...]:
    """Shelf order: numbers as numbers, so that A2 comes before A10; what has no place comes last."""
    parts = re.findall(r"\d+|\D+", location) or ["\uffff"]
    return tuple((part.isdigit(), int(part) if part.isdigit() else 0, part) for part in parts)


def guarded(line: TorqueLine, guard: Guard) -> Iterable[str]:
    """With a guard, how much of the tolerance each wrench uses; its inverse is the accuracy ratio."""
    if line.status is not Status.READY:
        return
    given = f"guard of {100 * guard.uncertainty:g} %"
    for used in dict.fromkeys(step.coverage for step in (*line.steps, StepLine("", line.coverage))):
        if used and used.uses_of_tolerance and used.accuracy_ratio:
            share, ratio = f"{100 * used.uses_of_tolerance:.0f} %", f"{used.accuracy_ratio:.2g} to 1"
            yield f"{given} kept: {used.tag} uses {share} of the tolerance ({ratio})"
        elif used and line.spec.low_nm is None and line.spec.high_nm is None:
            yield f"no tolerance is stated, so the {given} has nothing to keep {used.tag} clear of"


def notes(tools: Iterable[ToolLine], consumables: Iterable[ConsumableLine], sharing: Sharing) -> Iterable[str]:
    """What a reader of the report must know beside the lines."""
    lines: list[ToolLine | ConsumableLine] = [*tools, *consumables]
    for line in lines:
        if line.status is Status.READY and line.anyway:
            yield f'"{line.need.need}" rests on a confirmation against its description: {line.anyway}'
    if not sharing.proven:
        yield "The sharing of units between these procedures was too large to prove; check fewer at once."
