"""Consumable needs: which lots could serve each, how much is good on the day, and what must not be picked."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterator, Mapping, Sequence
from typing import NamedTuple

from cribkit.desk.candidates import Finder, Found
from cribkit.desk.results import ConsumableLine, Pick, Status
from cribkit.domain.procedure import ConsumableNeed
from cribkit.domain.quantity import Amount
from cribkit.domain.stock.item import Condition, Item, Lot
from cribkit.domain.stock.rationing import Draw, Ration
from cribkit.domain.wording import forbidden


class ConsumablePlan(NamedTuple):
    """One consumable need before amounts are given out."""

    procedure: str
    need: ConsumableNeed
    amount: Amount
    unit: str  # what the line is reckoned in: the unit of the items that serve it
    needed: float
    serving: tuple[Found, ...]  # matching, allowed, in a unit that can be compared
    doubtful: tuple[tuple[Found, str], ...]  # items that a person must look at, and why
    refused: tuple[Found, ...]  # what `never` forbids

    @property
    def draw(self) -> Draw:
        """What it asks of the rationing."""
        return Draw(self.needed, tuple(entry.item.tag for entry in self.serving))


def plan_consumable(finder: Finder, procedure: str, need: ConsumableNeed) -> ConsumablePlan:
    """Everything that serves the need, apart from what it forbids."""
    amount = need.amount
    never = [finder.words.read(text, "consumable") for text in need.never]
    serving: list[Found] = []
    doubtful: list[tuple[Found, str]] = []
    refused: list[Found] = []
    for entry in finder.find(need.need, "consumable"):
        if any(forbidden(bad, entry.item.meaning) for bad in never):
            refused.append(entry)
        elif not entry.matches:
            doubtful.append((entry, entry.why))
        elif in_unit(amount, entry.item) is None:
            doubtful.append((entry, f"the procedure asks for {amount.text}, it is stocked in {entry.item.unit}"))
        elif not serving or entry.item.unit == serving[0].item.unit:
            serving.append(entry)
    refused += wrong_kinds(finder, need, refused)
    unit = serving[0].item.unit if serving else amount.unit
    needed = (in_unit(amount, serving[0].item) if serving else None) or amount.value
    return ConsumablePlan(procedure, need, amount, unit, needed, tuple(serving), tuple(doubtful), tuple(refused))


def wrong_kinds(finder: Finder, need: ConsumableNeed, known: Sequence[Found]) -> list[Found]:
    """What is in the crib of the kinds that the need forbids: told where nothing else serves."""
    tags = {entry.item.tag for entry in known}
    found = [entry for text in need.never for entry in finder.find(text, "consumable") if entry.matches]
    return [entry for entry in found if entry.item.on_hand > 0 and entry.item.tag not in tags]


def in_unit(amount: Amount, item: Item) -> float | None:
    """The amount in the item's unit; pieces of a thing stocked by content are whole containers; None: no comparison."""
    if amount.unit == item.unit:
        return amount.value
    return amount.value * item.pack if amount.unit == "each" else None


def good_lots(item: Item, on: dt.date) -> tuple[Lot, ...]:
    """The lots that may be used on that day, first expired first; what has no date goes last."""
    lots = item.lots or (Lot("", item.on_hand),)
    good = [lot for lot in lots if lot.amount > 0 and lot.good_on(on)]
    return tuple(sorted(good, key=lambda lot: (lot.expires_on is None, lot.expires_on or on, lot.lot)))


def good_amount(item: Item, on: dt.date) -> float:
    """How much of it may be used on that day."""
    return sum(lot.amount for lot in good_lots(item, on)) if item.condition is Condition.OK else 0.0


def consumable_line(plan: ConsumablePlan, ration: Ration, on: dt.date, drawn: dict[str, float]) -> ConsumableLine:
    """The need's answer once amounts are given out. `drawn`: what earlier lines take of each tag; added to here."""
    lots = tuple(pick for tag, part in ration.parts for pick in from_lots(plan, tag, part, on, drawn))
    on_hand = sum(good_amount(entry.item, on) for entry in plan.serving)
    status, why, todo = Status.READY, plan.serving[0].why if plan.serving else "", ""
    if ration.short:
        status, why, todo = trouble(plan, ration, on, on_hand)
    tag = lots[0].tag if lots else plan.serving[0].item.tag if plan.serving else ""
    anyway = "; ".join(entry.anyway for entry in plan.serving if entry.anyway and entry.item.tag in dict(ration.parts))
    return ConsumableLine(
        plan.procedure, plan.need, status, plan.needed, plan.unit, on_hand, ration.short, tag,
        lots if status is Status.READY else (), why, todo, anyway,
    )  # fmt: skip


def from_lots(plan: ConsumablePlan, tag: str, part: float, on: dt.date, drawn: dict[str, float]) -> Iterator[Pick]:
    """Which lots an amount comes from, after what earlier lines take."""
    item = next(entry.item for entry in plan.serving if entry.item.tag == tag)
    skip = drawn.get(tag, 0.0)
    drawn[tag] = skip + part
    for lot in good_lots(item, on):
        used, skip = min(lot.amount, skip), max(0.0, skip - lot.amount)
        take = min(part, lot.amount - used)
        if take > 0:
            part -= take
            yield Pick(tag, take, item.location, item.description, item.unit, lot=lot.lot, expires_on=lot.expires_on)


def trouble(plan: ConsumablePlan, ration: Ration, on: dt.date, on_hand: float) -> tuple[Status, str, str]:
    """Status, why and what to do about a need that is not served whole."""
    expired = [lot for entry in plan.serving for lot in expired_lots(entry.item, on)]
    away = [f"{entry.item.tag} is out to {loan.by}" for entry in plan.serving for loan in entry.item.loans]
    if on_hand > 0:
        more = f"; {expired_text(expired)}" if expired else ""
        others = " (other procedures of this check take the rest)" if on_hand >= plan.needed else ""
        return (
            Status.SHORT,
            f"{on_hand:g} of {plan.needed:g} {plan.unit} good on the day{others}{more}",
            "restock it before you start.",
        )
    if expired:
        return Status.UNFIT, expired_text(expired), "get a fresh lot; scrap the expired one."
    if away:
        return Status.OUT, "; ".join(away), "ask for it back, or restock."
    unfit = [entry for entry in plan.serving if entry.item.condition is not Condition.OK]
    if unfit:
        return Status.UNFIT, f"{unfit[0].item.tag} is {unfit[0].item.condition.value}", "replace it."
    return missing(plan)


def missing(plan: ConsumablePlan) -> tuple[Status, str, str]:
    """Nothing that serves for certain: something to confirm, only what is forbidden, or nothing."""
    there = [(entry, why) for entry, why in plan.doubtful if entry.item.on_hand > 0]
    if there:
        entry, why = there[0]
        todo = f'look at it; if it is right: cribkit confirm "{plan.need.need}" {entry.item.tag} --by NAME'
        return Status.CONFIRM, f"{entry.item.tag} ({entry.item.description}) may do: {why}", todo
    wrong = "; ".join(f"{e.item.tag} ({e.item.description}) must not be used for it" for e in plan.refused)
    if plan.serving:
        return Status.ABSENT, f"none left of {plan.serving[0].item.tag}", "restock it before you start."
    return Status.ABSENT, f"not stocked; {wrong}" if wrong else "not stocked", "get the right kind before you start."


def expired_lots(item: Item, on: dt.date) -> Sequence[Lot]:
    """What is there but past its date."""
    return [lot for lot in item.lots if lot.amount > 0 and not lot.good_on(on)]


def expired_text(lots: Sequence[Lot]) -> str:
    """The expired lots in words."""
    return ", ".join(f"lot {lot.lot or 'without number'} expired on {lot.expires_on}" for lot in lots)


def stock_of(plans: Sequence[ConsumablePlan], on: dt.date) -> Mapping[str, float]:
    """What is good on the day of every item that serves one of the needs."""
    return {entry.item.tag: good_amount(entry.item, on) for plan in plans for entry in plan.serving}
