"""What is known before an order is worked out: the policy, and one consumable as the crib holds it."""

from __future__ import annotations

import datetime as dt
import math
from dataclasses import dataclass

from cribkit.domain.stock.demand import Usual
from cribkit.domain.stock.distributions import Moments
from cribkit.domain.stock.item import Lot
from cribkit.domain.stock.leadtime import Lead


@dataclass(frozen=True, slots=True)
class Policy:
    """What the crib asks for, the same for every line."""

    today: dt.date
    service: float = 0.95  # chance that the stock lasts until the next order can arrive
    review_days: int = 7  # how often somebody orders
    order_cost: float = 0.0  # of placing one order for one item; 0: order for one review time
    holding: float = 0.2  # of the stock's value, per year; only used with an order cost


@dataclass(frozen=True, slots=True)
class OnOrder:
    """Ordered and not received, in the item's unit."""

    amount: float
    due: dt.date | None = None
    order: str = ""


@dataclass(frozen=True, slots=True)
class Held:
    """One consumable as the crib knows it. Amounts in `unit`, `cost` of one pack."""

    tag: str
    description: str
    unit: str  # each, mL, g or mm
    pack: float  # content of one container
    lots: tuple[Lot, ...]  # the whole stock; a lot without a number is stock that never expires
    usual: Usual
    lead: Lead
    on_order: tuple[OnOrder, ...] = ()
    minimum: float | None = None
    maximum: float | None = None
    cost: float | None = None
    supplier: str = ""
    shelf_days: int | None = None  # how long a new delivery stays good
    beside: Usual | None = None  # what jobs of the planned procedures used before; not in `usual`
    plan_days: int = 0  # for so long the plan stands for those procedures; then what they used before counts

    @property
    def counted(self) -> bool:
        """Whether demand comes in whole pieces."""
        return self.unit == "each"

    @property
    def later(self) -> Moments:
        """One day's use by the planned procedures, once the plan has ended."""
        return self.beside.per_day if self.beside else Moments(0.0, 0.0)

    def days_after(self, days: float) -> float:
        """How many of the next so many days lie after the plan."""
        return max(0.0, days - self.plan_days)


def horizon(held: Held, policy: Policy) -> dt.date:
    """The day on which the order after this one can arrive."""
    return policy.today + dt.timedelta(days=math.ceil(held.lead.days + policy.review_days))
