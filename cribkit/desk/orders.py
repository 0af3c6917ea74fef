"""Orders: placed from the restock list, received in parts, ended; what is open and what is late."""

from __future__ import annotations

import datetime as dt
import math
from collections.abc import Sequence
from dataclasses import dataclass

from cribkit.desk.restock import Restock, lead_times
from cribkit.domain.problem import BadInput
from cribkit.domain.stock.leadtime import ASSUMED_DAYS, Lead
from cribkit.domain.stock.purchase import Group
from cribkit.store.crib import Crib
from cribkit.store.purchases import NewLine, Posting, Purchase, PurchaseLine, end, place, purchases
from cribkit.store.stocking import suppliers

NOBODY = ""  # the supplier of what nobody is known to supply


@dataclass(frozen=True, slots=True)
class Orders:
    """Orders and what each supplier really takes."""

    on: dt.date
    orders: tuple[Purchase, ...]
    leads: dict[str, Lead]


def order(crib: Crib, result: Restock, posting: Posting, named: Sequence[str] = ()) -> tuple[Purchase, ...]:
    """Place one order with each supplier, or with those named, for everything that the list says. In one block.

    Worn tools and needs that are not stocked go on the order without a supplier: the attendant finds one.
    """
    groups = chosen(result, named)
    numbers = []
    for group in groups:
        lead = group.lines[0].held.lead if group.lines else Lead(ASSUMED_DAYS, source="assumed")
        numbers.append(place(crib, group.supplier, due_on(posting.day, lead), new_lines(group), posting, group.note))
    others = other_lines(result)
    if others and not named:
        due = due_on(posting.day, Lead(ASSUMED_DAYS, source="assumed"))
        numbers.append(place(crib, NOBODY, due, others, posting, "find a supplier"))
    return purchases(crib, numbers) if numbers else ()


def due_on(day: dt.date, lead: Lead) -> dt.date:
    """The day on which an order is expected."""
    return day + dt.timedelta(days=math.ceil(lead.days))


def chosen(result: Restock, named: Sequence[str]) -> list[Group]:
    """The groups with something to order; of these suppliers, where some are named."""
    groups = [group for group in result.groups if any(line.packs for line in group.lines)]
    if not named:
        return groups
    by_name = {group.supplier.casefold(): group for group in groups}
    unknown = [name for name in named if name.casefold() not in by_name]
    if unknown:
        have = ", ".join(repr(group.supplier) for group in groups) or "nobody"
        raise BadInput.of(
            "nothing-to-order", f"there is nothing to order from {unknown[0]!r}", f"today's list orders from {have}."
        )
    return [by_name[name.casefold()] for name in dict.fromkeys(named)]


def new_lines(group: Group) -> list[NewLine]:
    """A supplier's lines."""
    from cribkit.domain.stock.explain import reason

    return [
        NewLine(
            what=line.held.description,
            packs=line.packs,
            amount=line.amount,
            unit=line.held.unit,
            tag=line.held.tag,
            cost=line.held.cost,
            why=reason(line),
        )
        for line in group.lines
        if line.packs
    ]


def other_lines(result: Restock) -> list[NewLine]:
    """Tools to replace and new items. What a person must look at first is not ordered."""
    tools = [
        NewLine(worn.description, math.ceil(worn.count), math.ceil(worn.count), "each", worn.tag, None, worn.why)
        for worn in result.tools
    ]
    new = [
        NewLine(need.need, 1, need.amount, need.unit, why=f"new item for {', '.join(need.jobs)}")
        for need in result.not_stocked
        if need.status == "absent"
    ]
    return [*tools, *new]


def overview(crib: Crib, on: dt.date, every: bool = False) -> Orders:
    """Open orders, the first to come on top, or every order; and each supplier's lead time."""
    placed = purchases(crib)
    stated = {name: one.lead_days for name, one in suppliers(crib).items()}
    shown = sorted((one for one in placed if every or one.open), key=lambda one: (one.due, one.id))
    return Orders(on, tuple(shown), lead_times(stated, placed))


def end_order(crib: Crib, number: int, posting: Posting, why: str) -> Purchase:
    """What has not come of this order will not come any more; it is no longer on order."""
    found = must_have(crib, number)
    if not found.open:
        raise BadInput.of(
            "nothing-open", "nothing of this order is still to come", "see `cribkit orders`.", f"order {number}"
        )
    end(crib, number, posting, why)
    return must_have(crib, number)


def must_have(crib: Crib, number: int) -> Purchase:
    """The order of this number; an unknown number is bad input."""
    found = purchases(crib, [number])
    if not found:
        raise BadInput.of("unknown-order", f"there is no order {number}", "see `cribkit orders`.", f"order {number}")
    return found[0]


def line_for(order_: Purchase, tag: str) -> PurchaseLine:
    """The line of an order that a delivery of this tag belongs to: one still open if there is one."""
    lines = [line for line in order_.lines if line.tag and line.tag.casefold() == tag.casefold()]
    if not lines:
        have = ", ".join(line.tag or f"line {line.line} (new item)" for line in order_.lines)
        raise BadInput.of("not-on-order", f"{tag} is not on order {order_.id}", f"it has {have}.", f"order {order_.id}")
    return next((line for line in lines if line.open), lines[0])


__all__ = ["Orders", "Posting", "Purchase", "PurchaseLine", "end_order", "line_for", "must_have", "order", "overview"]
