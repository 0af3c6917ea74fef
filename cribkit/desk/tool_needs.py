"""Tool needs: which units could serve each, and how to say what is wrong when none is left."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from itertools import islice
from typing import NamedTuple

from cribkit.desk.candidates import Finder, Found
from cribkit.desk.find import nearly_fitting
from cribkit.desk.results import Pick, Status, ToolLine
from cribkit.domain.procedure import ToolNeed
from cribkit.domain.stock.item import Condition
from cribkit.domain.stock.sharing import Bundle, Call
from cribkit.domain.wording import judge

MOST_OPTIONS = 60  # ways to gather several units at once from different tags; one unit has no such limit


class ToolPlan(NamedTuple):
    """One tool need before the units are given out. `options[i]` is served by `picks[i]`."""

    procedure: str
    need: ToolNeed
    found: tuple[Found, ...]
    hint: str  # why it may look as if it were there: missing from its set, or a near size that a person may confirm
    options: tuple[Bundle, ...]
    picks: tuple[tuple[Pick, ...], ...]
    usable: Mapping[str, int]

    @property
    def call(self) -> Call:
        """What it asks of the sharing."""
        return Call(self.procedure, self.options)


def plan_tool(finder: Finder, procedure: str, need: ToolNeed) -> ToolPlan:
    """Everything that serves the need or its stated stand-ins, in their order."""
    found: dict[str, Found] = {}
    for text in (need.need, *need.instead):
        for entry in finder.find(text, "tool"):
            kept = found.get(entry.item.tag)
            if kept is None or (entry.matches and not kept.matches):
                found[entry.item.tag] = entry
    hint = "" if found else hinted(finder, need.need)
    return planned(procedure, need, tuple(found.values()), hint)


def planned(procedure: str, need: ToolNeed, found: tuple[Found, ...], hint: str) -> ToolPlan:
    """The plan over what was found."""
    ready = [entry for entry in found if entry.matches and fit(entry) and entry.item.on_hand >= 1]
    picks = tuple(gather(ready, need.count))
    options = tuple(tuple((pick.tag, int(pick.count)) for pick in way) for way in picks)
    usable = {entry.item.tag: int(entry.item.on_hand) for entry in ready}
    return ToolPlan(procedure, need, found, hint, options, picks, usable)


def hinted(finder: Finder, text: str) -> str:
    """What to say about a need that nothing serves: the set that it is missing from, or a near size."""
    need = finder.words.read(text, "tool")
    for tag, description, contents in finder.crib.incomplete_sets():
        found = judge(need, finder.words.item(description, contents))
        if found.status == "match":
            return f"not stocked; it is noted missing from the set {tag} ({description})"
    return next((f"not stocked; {near.tag}: {near.why}" for near in nearly_fitting(finder, text, "tool")), "")


def fit(found: Found) -> bool:
    """Whether its condition lets it be used."""
    return found.item.condition is Condition.OK


def gather(ready: Sequence[Found], count: int) -> Iterator[tuple[Pick, ...]]:
    """Ways to have `count` units at once, as many as possible of the first tags first."""

    def ways(at: int, left: int) -> Iterator[tuple[Pick, ...]]:
        if left == 0:
            yield ()
            return
        if at == len(ready):
            return
        for units in range(min(left, int(ready[at].item.on_hand)), -1, -1):
            head = (pick(ready[at], units),) if units else ()
            for tail in ways(at + 1, left - units):
                yield head + tail

    return islice(ways(0, count), MOST_OPTIONS if count > 1 else None)


def pick(found: Found, units: int, role: str = "") -> Pick:
    """Units of one item to take."""
    item = found.item
    return Pick(item.tag, units, item.location, item.description, member=found.judgement.member, role=role)


def tool_line(plan: ToolPlan, chosen: int | None, takers: Mapping[str, Sequence[str]]) -> ToolLine:
    """The need's answer once the units are given out. `takers`: which procedures hold each tag."""
    if chosen is not None:
        picked = plan.picks[chosen]
        serving = next(entry for entry in plan.found if entry.item.tag == picked[0].tag)
        return ToolLine(plan.procedure, plan.need, Status.READY, picked, serving.why, anyway=serving.anyway)
    status, why, todo = trouble(plan, takers)
    return ToolLine(plan.procedure, plan.need, status, (), why, todo)


def trouble(plan: ToolPlan, takers: Mapping[str, Sequence[str]]) -> tuple[Status, str, str]:
    """Status, why, and what to do about a need that nothing serves; the most helpful reason first."""
    matching = [entry for entry in plan.found if entry.matches]
    have = sum(plan.usable.values())
    away = "; ".join(loans(entry) for entry in matching if entry.item.loans)
    if have >= plan.need.count:
        who = ", ".join(sorted({name for tag in plan.usable for name in takers.get(tag, ()) if name != plan.procedure}))
        return (
            Status.SHORT,
            f"{have} there, needed at the same time by {who}",
            "do the jobs one after the other, or get one more.",
        )
    if have:
        more = f"; {away}" if away else ""
        return Status.SHORT, f"{have} of {plan.need.count} there{more}", "get the missing ones before you start."
    if away:
        return Status.OUT, away, "ask for it back, or wait."
    if matching:
        return Status.UNFIT, "; ".join(state(entry) for entry in matching), "repair or replace it."
    return doubtful(plan)


def doubtful(plan: ToolPlan) -> tuple[Status, str, str]:
    """Nothing matches for certain: a likely item to confirm, or nothing at all."""
    likely = [entry for entry in plan.found if not entry.matches and fit(entry) and entry.item.on_hand >= 1]
    if likely:
        tag = likely[0].item.tag
        why = f"{tag} ({likely[0].item.description}) may do: {likely[0].why}"
        return Status.CONFIRM, why, f'look at it; if it is right: cribkit confirm "{plan.need.need}" {tag} --by NAME'
    if plan.hint:
        return Status.ABSENT, plan.hint, "get the right one before you start."
    return Status.ABSENT, "not stocked", "buy or borrow it before you start."


def loans(found: Found) -> str:
    """Who has the units that are out."""
    who = ", ".join(f"{loan.by} since {loan.since.isoformat()}" for loan in found.item.loans)
    return f"{found.item.tag} is out to {who}"


def state(found: Found) -> str:
    """Why an item that matches cannot be used."""
    note = f" ({found.item.note})" if found.item.note else ""
    if found.item.condition is Condition.OK:
        return f"{found.item.tag}: none on the shelf{note}"
    return f"{found.item.tag} is {found.item.condition.value}{note}"
