"""What to order of one consumable: position, reorder point, target, whole packs, and why.

Position = on hand that will still be good + on order - reserved by planned jobs. The reorder point covers demand
over lead time and review time at the service level asked for; below it an order fills up to the target. An
attendant's own minimum and maximum win over both. Formulas and their sources: docs/restock.md.
"""

from __future__ import annotations

import datetime as dt
import math
from dataclasses import dataclass

from cribkit.domain.stock.distributions import Distribution, Moments, fitted, over
from cribkit.domain.stock.held import Held, Policy, horizon
from cribkit.domain.stock.ordersize import SLACK, order_packs, order_size, own_bounds, use_is_known
from cribkit.domain.stock.shelf import Outlook, Planned, fates, good_by, run_out


@dataclass(frozen=True, slots=True)
class Block:
    """A planned job that the stock on its day does not cover."""

    job: Planned
    short: float
    order_arrives: dt.date  # if it is ordered today


@dataclass(frozen=True, slots=True)
class Line:
    """One consumable's answer with the figures it was worked out from. Amounts in the item's unit."""

    held: Held
    policy: Policy
    planned: tuple[Planned, ...]  # within lead time and review time
    later: tuple[Planned, ...]
    outlook: Outlook
    on_hand: float
    good: float  # of it, still good when needed
    on_order: float
    reserved: float
    demand: Distribution  # usual demand in lead time and review time
    computed_point: float
    computed_target: float
    point: float  # what is used: the computed ones, or the attendant's own
    target: float
    packs: int
    waste: float  # foreseen, of the stock and of the order
    run_out: dt.date | None
    blocks: tuple[Block, ...]
    notes: tuple[str, ...]
    filled: int = 0  # packs of the order that only serve the supplier's minimum

    @property
    def position(self) -> float:
        """What can be counted on."""
        return self.good + self.on_order - self.reserved

    @property
    def moments(self) -> Moments:
        """Mean and variance of usual demand in lead time and review time, before a distribution is chosen."""
        return demand_moments(self.held, self.policy)

    @property
    def amount(self) -> float:
        """The order in the item's unit."""
        return self.packs * self.held.pack

    @property
    def cost(self) -> float | None:
        """Of the order; None where the price of a pack is not known."""
        return None if self.held.cost is None else self.packs * self.held.cost

    @property
    def horizon_days(self) -> float:
        """Lead time and review time: how long the stock must last."""
        return self.held.lead.days + self.policy.review_days


def reorder(held: Held, planned: tuple[Planned, ...], policy: Policy) -> Line:
    """The line of one consumable."""
    until = horizon(held, policy)
    near = tuple(job for job in planned if job.on <= until)
    outlook = Outlook(policy.today, held.usual.per_day.mean, planned, held.later.mean, held.plan_days)
    demand = demand_over(held, policy)
    computed_point = max(0.0, demand.quantile(policy.service))
    computed_target = computed_point + order_size(held, policy)
    point, target, notes = own_bounds(held, computed_point, computed_target)
    good = good_by(held.lots, outlook, until)
    on_order = sum(order.amount for order in held.on_order)
    reserved = sum(job.amount for job in near)
    position = good + on_order - reserved
    packs, waste, pack_notes = order_packs(held, outlook, position, point, target)
    return Line(
        held=held,
        policy=policy,
        planned=near,
        later=tuple(job for job in planned if job.on > until),
        outlook=outlook,
        on_hand=sum(lot.amount for lot in held.lots),
        good=good,
        on_order=on_order,
        reserved=reserved,
        demand=demand,
        computed_point=computed_point,
        computed_target=computed_target,
        point=point,
        target=target,
        packs=packs,
        waste=waste + wasted(held, outlook),
        run_out=run_out(held.lots, outlook),
        blocks=blocks(held, near, policy.today),
        notes=(*notes, *pack_notes),
    )


def wasted(held: Held, outlook: Outlook) -> float:
    """What of the stock has expired or will before it is used; while no use is known only what has expired."""
    if use_is_known(held):
        return sum(fate.wasted for fate in fates(held.lots, outlook))
    return sum(lot.amount for lot in held.lots if not lot.good_on(outlook.today))


def demand_over(held: Held, policy: Policy) -> Distribution:
    """Usual demand over lead time and review time."""
    moments = demand_moments(held, policy)
    return fitted(moments.mean, moments.variance, held.counted)


def demand_moments(held: Held, policy: Policy) -> Moments:
    """Usual demand over lead time and review time, by its mean and variance.

    What the planned procedures used before counts for the days after the plan.
    """
    days = held.lead.days + policy.review_days
    usual, later, after = held.usual.per_day, held.later, held.days_after(days)
    if after <= 0:
        return over(usual, days, held.lead.sd)
    varies = ((usual.mean + later.mean) * held.lead.sd) ** 2
    return Moments(days * usual.mean + after * later.mean, days * usual.variance + after * later.variance + varies)


def blocks(held: Held, planned: tuple[Planned, ...], today: dt.date) -> tuple[Block, ...]:
    """The planned jobs, in order of day, that stock and orders due by then do not cover. Overdue orders are no help."""
    found: list[Block] = []
    arrives = today + dt.timedelta(days=math.ceil(held.lead.days))
    missing = 0.0
    for at, job in enumerate(ordered := sorted(planned, key=lambda job: (job.on, job.job))):
        ahead = Outlook(today, 0.0, tuple(ordered[: at + 1]))
        day = max(job.on, today)
        coming = sum(o.amount for o in held.on_order if o.due is not None and today <= o.due <= day)
        short = ahead.by(day) - good_by(held.lots, ahead, day) - coming
        if short > missing + SLACK:
            found.append(Block(job, short - missing, arrives))
            missing = short
    return tuple(found)
