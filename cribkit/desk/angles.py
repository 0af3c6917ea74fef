"""What measures an angle of tightening: an angle gauge, or a torque wrench that shows the angle itself."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from cribkit.desk.candidates import Finder, Found
from cribkit.desk.results import Pick, Status, ToolLine
from cribkit.desk.tool_needs import ToolPlan, fit, pick, planned
from cribkit.desk.torque_needs import TorquePlan, part_pick
from cribkit.domain.procedure.checks import measures_angles
from cribkit.domain.stock.item import Kind
from cribkit.domain.torque import Wrench
from cribkit.domain.wording import Judgement

FAMILIES = ("angle-gauge", "protractor")
SHOWS = Judgement("match", 100.0, "it measures the angle itself")


def with_angle_wrenches(
    finder: Finder, plan: ToolPlan, torques: Sequence[TorquePlan], wrenches: Sequence[Wrench]
) -> ToolPlan:
    """The plan of a tool need; where that asks for something to measure an angle, nothing else may serve it.

    A torque wrench that measures angle serves it too, after the gauges, if it covers every torque of the procedure that
    an angle follows, and reaches its fastener. It comes with its way: then it can be on the fastener for the angle.
    """
    if not measures_angles(plan.need.need):
        return plan
    after = [one for one in torques if one.procedure == plan.procedure and one.spec.needs_angle_gauge]
    showing = {wrench.tag for wrench in wrenches if wrench.measures_angle and plan.need.count == 1}
    ways = ways_of(after, showing)
    gauges = tuple(one for one in plan.found if measures(one) and (one.confirmed or one.item.kind is not Kind.WRENCH))
    for entry in gauges:
        ways.pop(entry.item.tag, None)
    gone = tuple(one for one in plan.found if one not in gauges and measures(one) and (one.item.loans or not fit(one)))
    idle = sorted(wrench.tag for wrench in wrenches if wrench.measures_angle and wrench.tag not in ways)
    hint = f"{', '.join(idle)} can show the angle, but cannot be used for the torque before it" if idle else ""
    shown = [Found(finder.crib.must_have(tag), SHOWS) for tag in ways]
    own = planned(plan.procedure, plan.need, gauges, hint or plan.hint)
    picks = tuple((pick(one, 1), *ways[one.item.tag]) for one in shown)
    return own._replace(
        found=(*gauges, *shown, *gone),
        picks=own.picks + picks,
        options=own.options + tuple(tuple((one.tag, 1) for one in some) for some in picks),
        usable={**own.usable, **{one.item.tag: int(one.item.on_hand) for one in shown}},
    )


def ways_of(plans: Sequence[TorquePlan], showing: set[str]) -> dict[str, tuple[Pick, ...]]:
    """Those of the wrenches `showing` an angle that do all these torques, each with the parts of its ways."""
    found: list[dict[str, dict[str, Pick]]] = []
    for plan in plans:
        mine: dict[str, dict[str, Pick]] = {}
        for option in plan.options:
            main = option.coverages[-1]
            if main.tag in showing and main.tag not in mine:
                parts = (part for tag, way in option.ways if tag == main.tag for part in way.parts)
                mine[main.tag] = {tag: part_pick(plan.kit, tag, role) for tag, role in parts}
        found.append(mine)
    tags = sorted(set.intersection(*map(set, found))) if found else []
    return {tag: tuple({name: one for mine in found for name, one in mine[tag].items()}.values()) for tag in tags}


def measures(entry: Found) -> bool:
    """Whether this thing shows an angle: a plain torque wrench does not, whatever its size. A person may say so."""
    if entry.confirmed or entry.item.meaning.family in FAMILIES:
        return True
    return measures_angles(entry.judgement.member or entry.item.description)


def angle_notes(lines: Sequence[ToolLine], wrenches: Mapping[str, Wrench]) -> Iterator[str]:
    """What to mind where a wrench measures the angle: nobody knows beforehand how much torque the angle takes."""
    for line in lines:
        if line.status is Status.READY and measures_angles(line.need.need):
            for wrench in (wrenches[one.tag] for one in line.picked if one.tag in wrenches):
                scale = wrench.scales[0]
                yield (
                    f"{wrench.tag} measures the angle itself, in place of {line.need.need}: stop at its full scale of "
                    f"{scale.high:g} {scale.unit.symbol}, wherever the angle stands."
                )
