"""Orders: placed from the restock list, received in parts, ended; what is open and what is late."""

from __future__ import annotations

import datetime as dt
import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

from cribkit.desk.handing import Handed, handed
from cribkit.desk.ledger import Arrival, Posted, settled, take_in
from cribkit.desk.restock import Restock, lead_times
from cribkit.domain.problem import BadInput
from cribkit.domain.quantity import format_amount
from cribkit.domain.stock.item import Item
from cribkit.domain.stock.leadtime import ASSUMED_DAYS, Lead
from cribkit.domain.stock.movement import Movement
from cribkit.domain.stock.purchase import Group
from cribkit.domain.stock.thousandths import whole
from cribkit.store.crib import Crib
from cribkit.store.posting import Entry
from cribkit.store.purchases import NewLine, Purchase, PurchaseLine, arrived, end, now_stocked, place, purchases
from cribkit.store.stocking import suppliers

NOBODY = ""  # the supplier of what nobody is known to supply


@dataclass(frozen=True, slots=True)
class Orders:
    """Orders and what each supplier really takes."""

    on: dt.date
    orders: tuple[Purchase, ...]
    leads: dict[str, Lead]


def order(crib: Crib, result: Restock, entry: Entry, named: Sequence[str] = ()) -> tuple[Purchase, ...]:
    """Place one order with each supplier, or with those named, for everything that the list says. In one block.

    Worn tools and needs that are not stocked go on the order without a supplier: the attendant finds one.
    """
    groups = chosen(result, named)
    numbers = []
    for group in groups:
        lead = group.lines[0].held.lead if group.lines else Lead(ASSUMED_DAYS, source="assumed")
        numbers.append(place(crib, group.supplier, due_on(entry.day, lead), new_lines(group), entry, group.note))
    others = other_lines(result)
    if others and not named:
        due = due_on(entry.day, Lead(ASSUMED_DAYS, source="assumed"))
        numbers.append(place(crib, NOBODY, due, others, entry, "find a supplier"))
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


def end_order(crib: Crib, number: int, entry: Entry, why: str) -> Purchase:
    """What has not come of this order will not come any more; it is no longer on order."""
    found = must_have(crib, number)
    if not found.open:
        raise BadInput.of(
            "nothing-open", "nothing of this order is still to come", "see `cribkit orders`.", f"order {number}"
        )
    end(crib, number, entry, why)
    return must_have(crib, number)


def must_have(crib: Crib, number: int) -> Purchase:
    """The order of this number; an unknown number is bad input."""
    found = purchases(crib, [number])
    if not found:
        raise BadInput.of("unknown-order", f"there is no order {number}", "see `cribkit orders`.", f"order {number}")
    return found[0]


@dataclass(frozen=True, slots=True)
class Delivery:
    """What is said about the order that stock comes from."""

    order: int = 0  # 0: none is named
    line: int = 0  # 0: the line of the item's tag


def receive(crib: Crib, text: str, arrival: Arrival, delivery: Delivery, entry: Entry) -> Posted:
    """Take stock in, and book it on its order. Without an amount: all that is still to come of the line.

    Without an item: all that is still to come of the whole order.
    """
    with crib.posting():
        if not delivery.order:
            what = handed(crib, text, entry.day)
            return settled(crib, [take_in(crib, what, arrival, entry)], expected(crib, what.item.tag))
        found = must_have(crib, delivery.order)
        if found.ended_on:
            message = f"it was ended on {found.ended_on.isoformat()}: {found.ended_why}"
            raise BadInput.of("order-ended", message, "receive without --order.", f"order {found.id}")
        if not text:
            return receive_rest(crib, found, arrival, entry)
        what = handed(crib, text, entry.day)
        line = line_for(found, what.item, delivery.line)
        return settled(crib, *book(crib, found, line, what, arrival, entry))


def book(
    crib: Crib, found: Purchase, line: PurchaseLine, what: Handed, arrival: Arrival, entry: Entry
) -> tuple[list[Movement], list[str]]:
    """The receipt of one line, and what is to be said about it; inside a posting block."""
    if arrival.amount is None and what.amount(None) is None:
        arrival = replace(arrival, amount=written(line))
    posted = take_in(crib, what, replace(arrival, note=arrival.note or f"order {found.id}"), entry)
    if line.tag is None:
        now_stocked(crib, found.id, line.line, what.item.tag)
    arrived(crib, found.id, line.line, posted.id)
    left = round(line.open - whole(posted.amount), 3)
    if left > 0:
        return [posted], [f"order {found.id}: {format_amount(left, line.unit)} of {posted.tag} still to come"]
    more = f"order {found.id}: {format_amount(-left, line.unit)} of {posted.tag} more than was still to come"
    return [posted], [more] if left < 0 else []


def written(line: PurchaseLine) -> str | None:
    """What is still to come, as an amount that can be read back; None where nothing is."""
    return f"{line.open:.10g} {line.unit}" if line.open else None


def receive_rest(crib: Crib, found: Purchase, arrival: Arrival, entry: Entry) -> Posted:
    """Book in everything that is still to come of an order; inside a posting block."""
    lines = [line for line in found.open if line.tag]
    if arrival.amount or arrival.lot or arrival.expires_on:
        raise BadInput.of(
            "no-tag", "an amount, a lot or an expiry date needs its item", "name the TAG.", f"order {found.id}"
        )
    if not lines:
        raise BadInput.of(
            "nothing-open", "nothing stocked is still to come of it", "see `cribkit orders --all`.", f"order {found.id}"
        )
    posted: list[Movement] = []
    notes = []
    for line in lines:
        what = handed(crib, str(line.tag), entry.day)
        posted += book(crib, found, line, what, arrival, entry)[0]
        if any(lot.expires_on for lot in what.item.lots):
            notes.append(
                f"{what.item.tag} came without lot and expiry: undo it and receive it by itself if it has them"
            )
    notes += [
        f"line {line.line} ({line.what}) has no tag yet: load the item, then receive it with --line {line.line}"
        for line in found.open
        if not line.tag
    ]
    return settled(crib, posted, notes)


def expected(crib: Crib, tag: str) -> list[str]:
    """The orders from which a delivery without a number may have come."""
    waiting = [order.id for order in purchases(crib) if any(same(line.tag, tag) for line in order.open)]
    if not waiting:
        return []
    return [f"{tag} is on order ({', '.join(map(str, waiting))}): if this is it, undo it and receive it with --order"]


def same(one: str | None, other: str) -> bool:
    """Whether two tags are the same, whatever the case of their letters."""
    return one is not None and one.casefold() == other.casefold()


def line_for(found: Purchase, item: Item, number: int = 0) -> PurchaseLine:
    """The line of an order that a delivery belongs to: the one named, else one of the item's, open if possible."""
    if number:
        named = [line for line in found.lines if line.line == number and (line.tag is None or same(line.tag, item.tag))]
        if named and named[0].unit == item.unit:
            return named[0]
        message = f"line {number} is not {item.tag} in {item.unit}"
        raise BadInput.of("other-line", message, "see `cribkit orders`.", f"order {found.id}")
    lines = [line for line in found.lines if same(line.tag, item.tag)]
    if not lines:
        have = ", ".join(line.tag or f"line {line.line} (new item)" for line in found.lines)
        raise BadInput.of("not-on-order", f"{item.tag} is not on it", f"it has {have}.", f"order {found.id}")
    return next((line for line in lines if line.open), lines[0])


__all__ = [
    "Delivery",
    "Entry",
    "Orders",
    "Purchase",
    "PurchaseLine",
    "end_order",
    "line_for",
    "must_have",
    "order",
    "overview",
    "receive",
]
