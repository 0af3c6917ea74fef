"""How much to order: the size of an order, own minimum and maximum, whole packs, and the cap of shelf life."""

from __future__ import annotations

import datetime as dt
import math

from cribkit.domain.quantity import format_amount
from cribkit.domain.stock.demand import Pattern
from cribkit.domain.stock.held import Held, Policy
from cribkit.domain.stock.shelf import Outlook, good_by

SLACK = 1e-9
MUCH = 2.0  # an own minimum or maximum this many times the computed one, or its inverse, is worth a word
YEAR = 365.0
HALF_YEAR = 182  # days


def order_size(held: Held, policy: Policy) -> float:
    """What an order adds above the reorder point: usual use in one review time, or the economic quantity if larger."""
    per_day = held.usual.per_day.mean + held.later.mean
    size = per_day * policy.review_days
    if policy.order_cost > 0 and policy.holding > 0 and held.cost and held.pack > 0:
        size = max(size, economic_quantity(per_day * YEAR, policy.order_cost, policy.holding * held.cost / held.pack))
    return size


def economic_quantity(per_year: float, order_cost: float, holding: float) -> float:
    """The order that costs least to place and to hold: sqrt(2 K D / h); h is the cost of holding one for a year."""
    return math.sqrt(2 * order_cost * per_year / holding)


def own_bounds(held: Held, point: float, target: float) -> tuple[float, float, tuple[str, ...]]:
    """Reorder point and target with the attendant's own minimum and maximum, and a word where they differ much."""
    minimum, maximum = held.minimum, held.maximum
    notes: list[str] = []
    if minimum is not None and maximum is not None and minimum > maximum:
        bounds = f"own min {words(minimum, held.unit)} is above own max {words(maximum, held.unit)}"
        notes.append(f"{bounds}: the max is used; correct one")
        minimum = maximum
    size, computed = target - point, target
    known = was_used(held)  # without a record there is nothing to compare with
    if minimum is not None:
        notes += differs("min", minimum, "reorder point", point, held.unit) if known else []
        point, target = minimum, max(target, minimum + size)
    if maximum is not None:
        notes += differs("max", maximum, "target", computed, held.unit) if known else []
        point, target = min(point, maximum), maximum
    return point, target, tuple(notes)


def differs(name: str, own: float, what: str, computed: float, unit: str) -> list[str]:
    """A word on an own bound that is far from the computed one."""
    more, less = max(own, computed), min(own, computed)
    if more <= MUCH * less + SLACK or more <= 1:
        return []
    side = "above" if own > computed else "below"
    return [f"own {name} {words(own, unit)} is used; far {side} the computed {what} {words(computed, unit)}"]


def words(value: float, unit: str) -> str:
    """An amount as people read it: pieces to a tenth, measured amounts to three digits; below zero with a minus."""
    size = round(abs(value), 1) if unit == "each" else float(f"{abs(value):.3g}")
    return f"−{format_amount(size, unit)}" if value < 0 and size else format_amount(size, unit)


def order_packs(
    held: Held, outlook: Outlook, position: float, point: float, target: float
) -> tuple[int, float, list[str]]:
    """Whole packs up to the target if the position is below the reorder point; what of them will expire; remarks."""
    if position >= point - SLACK:
        return 0, 0.0, []
    if held.pack <= 0:
        return 0, 0.0, ["the content of a pack is not known (0): nothing can be ordered; correct `pack`"]
    packs = math.ceil((target - position) / held.pack - SLACK)
    notes: list[str] = []
    if held.maximum is not None:
        packs, notes = within_maximum(held, position, packs)
    return within_shelf_life(held, outlook, max(1, packs), notes)


def within_maximum(held: Held, position: float, packs: int) -> tuple[int, list[str]]:
    """No more packs than the own maximum allows; one at least, because something is needed."""
    room = math.floor(((held.maximum or 0.0) - position) / held.pack + SLACK)
    if room < 1:
        return 1, [f"one pack of {words(held.pack, held.unit)} goes over the own max"]
    return min(packs, room), []


def within_shelf_life(held: Held, outlook: Outlook, packs: int, notes: list[str]) -> tuple[int, float, list[str]]:
    """No more packs than are used while they are good; one at least; and what of them will expire."""
    if held.shelf_days is None or not use_is_known(held):
        return packs, 0.0, notes
    last_day = outlook.today + dt.timedelta(days=math.floor(held.lead.days) + held.shelf_days)
    there = good_by(held.lots, outlook, last_day) + sum(order.amount for order in held.on_order)
    useful = max(0.0, outlook.by(last_day) - there)
    fit = max(1, math.floor(useful / held.pack + SLACK))
    if fit < packs:
        notes = [*notes, f"{fit} instead of {packs} packs: more would expire before it is used"]
        packs = fit
    return packs, max(0.0, packs * held.pack - useful), notes


def was_used(held: Held) -> bool:
    """Whether a use is on record, by the planned procedures or apart from them."""
    return any(one is not None and one.pattern is not Pattern.NONE for one in (held.usual, held.beside))


def use_is_known(held: Held) -> bool:
    """Whether the record says how much is used: something was, or nothing for half a year (our own rule)."""
    return was_used(held) or len(held.usual.periods) * held.usual.days >= HALF_YEAR
