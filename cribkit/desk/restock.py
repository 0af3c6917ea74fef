"""What to order, from whom, and why: every consumable against the plan and its own record; worn tools; wrenches."""

from __future__ import annotations

import datetime as dt
from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from cribkit.desk.plan import NotStocked, PlannedJob, procedures_in
from cribkit.domain.problem import BadInput
from cribkit.domain.stock.demand import Use, usual
from cribkit.domain.stock.held import Held, OnOrder, Policy
from cribkit.domain.stock.leadtime import ASSUMED_DAYS, Lead, lead_time
from cribkit.domain.stock.purchase import Group, grouped
from cribkit.domain.stock.reorder import Line, reorder
from cribkit.store import stocking
from cribkit.store.crib import Crib
from cribkit.store.purchases import Purchase, purchases
from cribkit.store.stocking import Ratio, Worn

if TYPE_CHECKING:
    from cribkit.desk.planned import PlannedNeeds
    from cribkit.domain.torque import Wrench

RECORD = dt.timedelta(days=728)  # two years of weeks: what lies further back says little of today's use


@dataclass(frozen=True, slots=True)
class WrenchDue:
    """A torque wrench whose calibration ends before the list after next."""

    tag: str
    description: str
    until: dt.date | None  # the last good day; None: no calibration on record
    overdue: bool


@dataclass(frozen=True, slots=True)
class Restock:
    """The whole list."""

    policy: Policy
    jobs: tuple[PlannedJob, ...]
    lines: tuple[Line, ...]  # every consumable, by supplier and urgency
    groups: tuple[Group, ...]
    not_stocked: tuple[NotStocked, ...]
    tools: tuple[Worn, ...]
    wrenches: tuple[WrenchDue, ...]
    late: tuple[Purchase, ...]
    ratios: dict[str, Ratio] = field(default_factory=dict)  # of the items that the plan needs

    @property
    def to_order(self) -> tuple[Line, ...]:
        return tuple(line for line in self.lines if line.packs)

    @property
    def blocked(self) -> tuple[Line, ...]:
        """Lines of which a planned job goes short."""
        return tuple(line for line in self.lines if line.blocks)

    @property
    def wasted(self) -> tuple[Line, ...]:
        """Lines of which something will expire unused."""
        return tuple(line for line in self.lines if line.waste > 1e-6)

    @property
    def nothing_to_do(self) -> bool:
        return not (self.to_order or self.blocked or self.not_stocked or self.tools or self.late)


@dataclass(frozen=True, slots=True)
class Known:
    """Everything that the crib knows of its consumables, read once."""

    held: tuple[Held, ...]
    uses: dict[str, list[Use]]
    since: dict[str, dt.date]
    minimums: dict[str, float]
    orders: tuple[Purchase, ...]
    gone: dict[str, tuple[int, dt.date]]  # see stocking.Record


def restock(crib: Crib, policy: Policy, jobs: Sequence[PlannedJob] = ()) -> Restock:
    """The list. Lines of one supplier are filled up to its minimum order where that makes sense."""
    known = read(crib, policy.today, jobs, policy.review_days)
    ratios = stocking.ratios(crib) if jobs else {}
    needs = needs_of(crib, jobs, ratios) if jobs else None
    by_tag = needs.by_tag if needs else {}
    lines = [reorder(held, by_tag.get(held.tag, ()), policy) for held in known.held]
    groups = grouped(lines, known.minimums)
    return Restock(
        policy=policy,
        jobs=tuple(jobs),
        lines=tuple(line for group in groups for line in group.lines),
        groups=groups,
        not_stocked=needs.not_stocked if needs else (),
        tools=to_replace(crib, known),
        wrenches=wrenches_due(crib, policy),
        late=tuple(order for order in known.orders if order.overdue(policy.today)),
        ratios={tag: ratios[tag] for tag in by_tag if tag in ratios},
    )


def needs_of(crib: Crib, jobs: Sequence[PlannedJob], ratios: dict[str, Ratio]) -> PlannedNeeds:
    """What the plan needs. The reader of descriptions is only loaded where there is a plan."""
    from cribkit.desk.candidates import Finder
    from cribkit.desk.planned import planned_needs

    return planned_needs(Finder(crib), jobs, ratios)


def read(crib: Crib, today: dt.date, jobs: Sequence[PlannedJob] = (), review_days: int = 0) -> Known:
    """Read the crib.

    What jobs of the planned procedures used before is kept apart from what is usual: the plan stands for them until
    its last day, and at least until the next review.
    """
    plan_days = max([review_days, *((job.on - today).days for job in jobs)])
    start = today - RECORD
    skipped = stocking.jobs_of(crib, procedures_in(jobs)) if jobs else ()
    record = stocking.record(crib, start, skipped)
    since = {tag: max(first, start + dt.timedelta(days=1)) for tag, first in record.first.items()}
    suppliers = stocking.suppliers(crib)
    orders = purchases(crib)
    leads = lead_times({name: one.lead_days for name, one in suppliers.items()}, orders)
    coming = on_order(orders)
    lots = stocking.lots(crib)
    held = tuple(
        Held(
            tag=one.tag,
            description=one.description,
            unit=one.unit,
            pack=one.pack,
            lots=lots.get(one.tag, ()),
            usual=usual(record.uses.get(one.tag, ()), since.get(one.tag, today), today, one.unit == "each"),
            lead=leads.get(one.supplier) or Lead(ASSUMED_DAYS, source="assumed"),
            on_order=tuple(coming.get(one.tag, ())),
            minimum=None if one.minimum is None else one.minimum * one.pack,
            maximum=None if one.maximum is None else one.maximum * one.pack,
            cost=one.cost,
            supplier=one.supplier,
            shelf_days=record.shelf_days.get(one.tag),
            beside=usual(record.apart[one.tag], since.get(one.tag, today), today, one.unit == "each")
            if one.tag in record.apart
            else None,
            plan_days=plan_days,
        )
        for one in stocking.consumables(crib)
    )
    minimums = {name: one.minimum_order for name, one in suppliers.items()}
    return Known(held, record.uses, since, minimums, orders, record.gone)


def lead_times(stated: dict[str, float], orders: Sequence[Purchase]) -> dict[str, Lead]:
    """The lead time of each supplier: learned from complete orders, else stated."""
    taken: dict[str, list[float]] = defaultdict(list)
    for order in orders:
        if order.taken is not None:
            taken[order.supplier.casefold()].append(order.taken)
    return {name: lead_time(days, taken[name.casefold()]) for name, days in stated.items()}


def on_order(orders: Sequence[Purchase]) -> dict[str, list[OnOrder]]:
    """What is still to come of each tag."""
    coming: dict[str, list[OnOrder]] = defaultdict(list)
    for order in orders:
        for line in order.open:
            if line.tag:
                coming[line.tag].append(OnOrder(line.open, order.due, str(order.id)))
    return coming


def to_replace(crib: Crib, known: Known) -> tuple[Worn, ...]:
    """Worn and lost tools that are not on order yet."""
    coming = {tag: sum(one.amount for one in found) for tag, found in on_order(known.orders).items()}
    return tuple(worn for worn in stocking.worn_tools(crib, known.gone) if worn.count > coming.get(worn.tag, 0.0))


def wrenches_due(crib: Crib, policy: Policy) -> tuple[WrenchDue, ...]:
    """Wrenches whose calibration ends within the review time and the time that it takes to have them back."""
    last = policy.today + dt.timedelta(days=policy.review_days + ASSUMED_DAYS)
    found = []
    for wrench in crib.wrenches():
        until = good_through(wrench, policy.today)
        if wrench.calibrated_on is None or (until is not None and until <= last):
            overdue = until is None or until < policy.today
            found.append(WrenchDue(wrench.tag, wrench.description, until, overdue))
    return tuple(found)


def good_through(wrench: Wrench, today: dt.date) -> dt.date | None:
    """The last good day of a calibration, by the calendar or by the forecast of its cycles, whichever is first."""
    from cribkit.domain.calibration.due import forecast

    days = [wrench.due]
    if wrench.calibrated_on and wrench.interval_cycles > 0:
        left = wrench.interval_cycles - wrench.cycles
        days.append(forecast(left, wrench.cycles, wrench.calibrated_on, today))
    return min((day for day in days if day), default=None)


def line_of(result: Restock, tag: str) -> Line:
    """The line of one tag; BadInput where it is no consumable of the crib."""
    for line in result.lines:
        if line.held.tag.casefold() == tag.casefold():
            return line
    raise BadInput.of("unknown-tag", f"there is no consumable {tag}", "see `cribkit restock --all`.", source=tag)


__all__ = ["Known", "Ratio", "Restock", "WrenchDue", "lead_times", "line_of", "read", "restock"]
