"""Torque needs: which wrenches cover every step, by which way, and how to say why none does."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterator, Mapping, Sequence
from itertools import islice
from typing import NamedTuple

from cribkit.desk.reaching import Kit, Reacher
from cribkit.desk.results import Pick, Rejected, Status, StepLine, TorqueLine
from cribkit.desk.torque_options import Option, Reached, combine
from cribkit.domain.procedure import TorqueNeed
from cribkit.domain.procedure.model import LEFT_HAND
from cribkit.domain.stock.sharing import Call
from cribkit.domain.torque import REASONS, Coverage, Guard, Offset, Spec, Wanted, Wrench, cover, rank
from cribkit.domain.torque.asked import Step, StepKind, same

MOST_OPTIONS = 400  # ways to do one torque that the sharing looks at

ACROSS = 90.0  # degrees: an adapter square to the handle leaves the setting as it is
STATE = {"out", "no-calibration", "overdue", "unfit"}  # reasons that have nothing to do with the torque


class TorquePlan(NamedTuple):
    """One torque need before units are given out."""

    procedure: str
    need: TorqueNeed
    spec: Spec
    kit: Kit
    options: tuple[Option, ...]  # nothing in doubt
    doubtful: tuple[Option, ...]  # a person must confirm something on the way
    coverages: tuple[tuple[Coverage, ...], ...]  # for each torque of the spec, every wrench, best first
    away: tuple[str, ...]  # parts that would open a way if they were on the shelf

    @property
    def call(self) -> Call:
        """What it asks of the sharing."""
        return Call(self.procedure, tuple(option.bundle for option in self.options))


def plan_torque(
    reacher: Reacher,
    wrenches: Sequence[Wrench],
    procedure: str,
    need: TorqueNeed,
    on: dt.date,
    guard: Guard | None,
    pulled: frozenset[str] = frozenset(),
) -> TorquePlan:
    """Every wrench against every torque of the spec, and the ways to the fastener.

    `pulled`: what the procedure's tool needs take anyway; of equal ways, one over those sockets goes first.
    """
    spec = need.asks()
    kit = reacher.kit(need)
    offset = offset_of(need)
    left = need.direction == LEFT_HAND
    by_torque = tuple(
        rank(cover(wrench, wanted, on, offset, guard, left) for wrench in wrenches) for wanted in spec.torques
    )
    squares = {wrench.tag: wrench.drive for wrench in wrenches}
    reached, blocked = reach_all(reacher, need, by_torque, squares, spec, pulled)
    options = sorted(islice(combine(reached), MOST_OPTIONS), key=lambda option: option.effort)
    return TorquePlan(
        procedure=procedure,
        need=need,
        spec=spec,
        kit=kit,
        options=tuple(option for option in options if not doubts(need, kit, option)),
        doubtful=tuple(option for option in options if doubts(need, kit, option)),
        coverages=blocked,
        away=() if options else parts_away(reacher, need, by_torque[-1], squares, spec),
    )


def offset_of(need: TorqueNeed) -> Offset | None:
    """The offset adapter that the procedure asks for, where it states its length."""
    if need.reach is None or not need.reach.offset_mm:
        return None
    return Offset(need.reach.offset_mm, need.reach.angle_deg)


def doubts(need: TorqueNeed, kit: Kit, option: Option) -> tuple[str, ...]:
    """What a person must confirm about the way before the setting may be trusted."""
    found = [doubt for _, way in option.ways for doubt in way.doubts]
    if not kit.understood:
        found.append(f'the head "{need.head}" was not understood')
    if need.reach and need.reach.adapter and need.reach.offset_mm is None and need.reach.angle_deg != ACROSS:
        found.append("the procedure does not state the offset of its adapter, which changes the setting")
    return tuple(dict.fromkeys(found))


def reach_all(
    reacher: Reacher,
    need: TorqueNeed,
    by_torque: Sequence[Sequence[Coverage]],
    squares: Mapping[str, str],
    spec: Spec,
    pulled: frozenset[str],
) -> tuple[list[Reached], tuple[tuple[Coverage, ...], ...]]:
    """For each torque, the covering wrenches with their ways, best first; and every coverage with its final reasons."""
    reached: list[Reached] = []
    judged: list[tuple[Coverage, ...]] = []
    for wanted, coverages in zip(spec.torques, by_torque, strict=True):
        pairs: Reached = []
        final: list[Coverage] = []
        for coverage in coverages:
            mine, after = reach_one(reacher, need, coverage, squares[coverage.tag], wanted, pulled)
            pairs += mine
            final.append(after)
        order = {id(one): at for at, one in enumerate(rank(coverage for coverage, _ in pairs))}
        reached.append(sorted(pairs, key=lambda pair: order[id(pair[0])]))
        judged.append(tuple(final))
    return reached, tuple(judged)


def reach_one(
    reacher: Reacher, need: TorqueNeed, coverage: Coverage, square: str, wanted: Wanted, pulled: frozenset[str]
) -> tuple[Reached, Coverage]:
    """The ways of one covering wrench; without any, the wrench is rejected for it.

    A wrench that only its state keeps back is asked for its way too, so that nobody calibrates it in vain.
    """
    if not (coverage.covers or set(coverage.reasons) <= STATE):
        return [], coverage
    if not reacher.kit(need).asked:
        return ([(coverage, None)] if coverage.covers else []), coverage
    found = reacher.ways(need, square, wanted.most_nm)
    if not found.ways:
        reasons = tuple(sorted({*coverage.reasons, *found.reasons}, key=REASONS.index))
        return [], coverage._replace(covers=False, reasons=reasons, why=(*coverage.why, *found.why))
    if not coverage.covers:
        return [], coverage
    ways = reacher.preferred(need, found.ways, pulled)
    return [(coverage._replace(adapters=way.adapters), way) for way in ways], coverage


def parts_away(
    reacher: Reacher, need: TorqueNeed, coverages: Sequence[Coverage], squares: Mapping[str, str], spec: Spec
) -> tuple[str, ...]:
    """The parts not on the shelf over which a covering wrench would reach the fastener."""
    gone = {part.tag for part in reacher.kit(need).away}
    for coverage in coverages:
        if coverage.covers:
            for way in reacher.ways(need, squares[coverage.tag], spec.most_nm, everything=True).ways:
                return tuple(tag for tag in way.tags if tag in gone)
    return ()


def torque_line(
    plan: TorquePlan, chosen: int | None, takers: Mapping[str, Sequence[str]], places: Mapping[str, Wrench]
) -> TorqueLine:
    """The need's answer once the units are given out."""
    base = TorqueLine(plan.procedure, plan.need, plan.spec, Status.READY, rejected=tuple(rejections(plan)))
    if chosen is None:
        status, why, todo = trouble(plan, takers)
        return base._replace(status=status, why=why, next=todo, steps=step_lines(plan, None))
    option = plan.options[chosen]
    ways = [(tag, tuple(part_pick(plan.kit, *part) for part in way.parts)) for tag, way in option.ways]
    parts = {pick.tag: pick for _, picks in ways for pick in picks}
    wrenches = {coverage.tag: wrench_pick(places[coverage.tag]) for coverage in option.coverages}
    main = option.coverages[-1]
    told = dict.fromkeys(warning for _, way in option.ways for warning in way.warnings)
    return base._replace(
        coverage=main,
        steps=step_lines(plan, option),
        reach=ways[0][1] if ways else (),
        other_ways=tuple(ways[1:]),
        picked=(*wrenches.values(), *parts.values()),
        warnings=(*told, *corrections(plan)),
        why="; ".join(main.why),
        rejected=tuple(entry for entry in base.rejected if entry.tag not in wrenches),
    )


def corrections(plan: TorquePlan) -> Iterator[str]:
    """What the setting leaves out, and the offset adapter's work on it."""
    if plan.spec.prevailing:
        yield (
            "the setting leaves out the prevailing torque: measure it on the job, add it to the setting, and see that "
            "the sum lies in the wrench's usable range"
        )
    reach = plan.need.reach
    if reach is None or not reach.offset_mm:
        return
    if reach.angle_deg == ACROSS:
        yield "the offset adapter stands at 90° to the handle, where it leaves the setting as it is: keep it there"
        return
    yield (
        f"the setting allows for the offset adapter ({reach.offset_mm:g} mm at {reach.angle_deg:g}°): "
        "hold the grip at its middle"
    )


def step_lines(plan: TorquePlan, option: Option | None) -> tuple[StepLine, ...]:
    """Each step with the coverage of its torque."""
    by_wanted = dict(zip(plan.spec.torques, option.coverages, strict=True)) if option else {}
    return tuple(
        StepLine(step_text(step), next((c for w, c in by_wanted.items() if step.wanted and same(w, step.wanted)), None))
        for step in plan.spec.steps
    )


def step_text(step: Step) -> str:
    """The step as written; an angle or part of a turn is turned on from where the step before it ended."""
    onward = step.kind in (StepKind.ANGLE, StepKind.TURN) and step.text[:1].isdigit()
    return f"+{step.text}" if onward else step.text


def wrench_pick(wrench: Wrench) -> Pick:
    """The wrench to take."""
    return Pick(
        wrench.tag, 1, wrench.location, wrench.description or f"{wrench.mechanism} torque wrench", role="wrench"
    )


def part_pick(kit: Kit, tag: str, role: str) -> Pick:
    """One part on the way."""
    found = kit.found[tag]
    return Pick(tag, 1, found.item.location, found.item.description, member=found.judgement.member, role=role)


def rejections(plan: TorquePlan) -> Iterator[Rejected]:
    """Every wrench that does not serve the main torque, and why."""
    for coverage in plan.coverages[-1]:
        if not coverage.covers:
            yield Rejected(coverage.tag, coverage.reasons, "; ".join(coverage.why))


def trouble(plan: TorquePlan, takers: Mapping[str, Sequence[str]]) -> tuple[Status, str, str]:
    """Status, why and what to do about a torque that nothing serves; the nearest to a cure first."""
    if plan.options:
        tags = {tag for option in plan.options for tag, _ in option.bundle}
        who = sorted({name for tag in tags for name in takers.get(tag, ()) if name != plan.procedure})
        return Status.SHORT, f"needed at the same time by {', '.join(who)}", "do the jobs one after the other."
    if plan.doubtful:
        return doubtful(plan)
    for wanted, coverages in zip(plan.spec.torques, plan.coverages, strict=True):
        if not any(coverage.covers for coverage in coverages):
            return uncovered(plan, wanted, coverages)
    return Status.ABSENT, "no wrench covers it", "see `cribkit wrench gaps`."


def doubtful(plan: TorquePlan) -> tuple[Status, str, str]:
    """A way that a person must look at."""
    option = plan.doubtful[0]
    why = "; ".join(doubts(plan.need, plan.kit, option))
    return (
        Status.CONFIRM,
        f"{option.coverages[-1].tag} covers it, but {why}",
        "look at the parts before you rely on them.",
    )


def uncovered(plan: TorquePlan, wanted: Wanted, coverages: Sequence[Coverage]) -> tuple[Status, str, str]:
    """No wrench covers one of the torques: say what is nearest to a cure."""
    if not coverages:
        return Status.ABSENT, "no torque wrench is in the crib", "get one that covers it."
    which = f"{wanted.text}: " if len(plan.spec.torques) > 1 else ""
    nearest = min(coverages, key=lambda found: (cure(found.reasons), found.tag))
    told = f"{which}{nearest.tag}: {'; '.join(nearest.why)}"
    match cure(nearest.reasons):
        case 0:
            return Status.OUT, told, "ask for it back, or wait."
        case 1:
            return Status.UNFIT, told, "have it calibrated or repaired, or get another that covers it."
        case 2:
            if not plan.kit.understood:
                why = f'the head "{plan.need.head}" is not understood: no socket or bit can be chosen for it'
                return Status.ABSENT, why, 'mend the procedure: head = "10 mm hex", "T30" or "E12".'
            if plan.away:
                return (
                    Status.OUT,
                    f"{which}the way to it needs {', '.join(plan.away)}, not on the shelf",
                    "get it back.",
                )
            return Status.ABSENT, told, "get the part that is missing on the way from wrench to fastener."
    return (
        Status.UNFIT,
        f"{which}no wrench fits: {summary(coverages)}",
        "borrow or buy one that covers it: `cribkit wrench gaps`.",
    )


def cure(reasons: Sequence[str]) -> int:
    """How far a rejected wrench is from serving: 0 it is out, 1 its state, 2 the way, 3 its range or its marks."""
    if set(reasons) <= {"out"}:
        return 0
    if set(reasons) <= STATE:
        return 1
    return 2 if set(reasons) <= STATE | {"no-reach", "drive-too-small"} else 3


def summary(coverages: Sequence[Coverage]) -> str:
    """The reasons of several wrenches, each tag once."""
    return ", ".join(f"{coverage.tag} {' and '.join(coverage.reasons)}" for coverage in coverages[:6]) + (
        f" and {len(coverages) - 6} more" if len(coverages) > 6 else ""
    )
