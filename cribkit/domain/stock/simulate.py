"""What an ordering policy would do: day by day over a demand that is known, or drawn.

Each day begins with what arrives and what has expired; on a review day an order is placed; then demand takes from
the lot that expires first. What cannot be served waits and is served first when stock arrives (a job waits for its
parts). An order at a review must last until the order of the next review can arrive, lead time and review time
later; on the evening before that it shows whether it lasted.
"""

from __future__ import annotations

import math
from collections import deque
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field

from cribkit.domain.stock.ordersize import SLACK


@dataclass(frozen=True, slots=True)
class Rule:
    """The policy for one item at one review. Amounts in the item's unit, times in days."""

    point: float
    target: float
    pack: float
    lead_days: int
    review_days: int
    per_day: float = 0.0  # usual use, by which stock that will expire unused is left out
    shelf_days: int | None = None  # how long a delivery stays good


@dataclass(frozen=True, slots=True)
class Outcome:
    """What happened, in sums that can be added up over items and futures."""

    days: int = 0
    checks: int = 0  # evenings before an order could arrive
    lasted: int = 0  # of them, with nobody waiting
    demand: float = 0.0
    served: float = 0.0  # of the demand, at once
    stock_days: float = 0.0  # stock of every evening, added up
    orders: int = 0
    packs: int = 0
    wasted: float = 0.0

    @property
    def service(self) -> float:
        """Share of order cycles that lasted; 1 where there was none."""
        return self.lasted / self.checks if self.checks else 1.0

    @property
    def fill(self) -> float:
        """Share of the demand served at once; 1 where nothing was asked for."""
        return self.served / self.demand if self.demand else 1.0

    @property
    def mean_stock(self) -> float:
        return self.stock_days / self.days if self.days else 0.0

    @property
    def stock_outs(self) -> int:
        return self.checks - self.lasted


@dataclass(slots=True)
class _Shelf:
    """The state of the replay: lots as [last good day, amount], deliveries under way, what is waited for."""

    lots: deque[list[float]] = field(default_factory=deque)
    coming: deque[tuple[int, float]] = field(default_factory=deque)
    waiting: float = 0.0
    wasted: float = 0.0

    def stock(self) -> float:
        return sum(amount for _, amount in self.lots)

    def expire(self, day: int) -> None:
        while self.lots and self.lots[0][0] < day:
            self.wasted += self.lots.popleft()[1]

    def take(self, amount: float) -> float:
        """Take as much of the amount as there is, first expired first; what was taken."""
        left = amount
        while left > SLACK and self.lots:
            lot = self.lots[0]
            taken = min(left, lot[1])
            lot[1] -= taken
            left -= taken
            if lot[1] <= SLACK:
                self.lots.popleft()
        return amount - max(0.0, left)

    def arrive(self, day: int, shelf_days: int | None) -> None:
        while self.coming and self.coming[0][0] <= day:
            amount = self.coming.popleft()[1]
            self.lots.append([math.inf if shelf_days is None else float(day + shelf_days), amount])
            self.waiting -= self.take(self.waiting)

    def good(self, day: int, rule: Rule) -> float:
        """Stock that will be used before it expires, as `shelf.good_by` counts it, with today's use still to come."""
        until = day + rule.lead_days + rule.review_days - 1
        used = 0.0
        for last, amount in self.lots:
            room = amount if last >= until else max(0.0, rule.per_day * (last - day + 1) - used)
            used += min(amount, room)
        return used

    def position(self, day: int, rule: Rule) -> float:
        stock = self.stock() if rule.shelf_days is None else self.good(day, rule)
        return stock + sum(amount for _, amount in self.coming) - self.waiting


def packs_to_order(position: float, rule: Rule) -> int:
    """Whole packs up to the target when the position is below the reorder point, capped by shelf life."""
    if position >= rule.point - SLACK:
        return 0
    packs = max(1, math.ceil((rule.target - position) / rule.pack - SLACK))
    if rule.shelf_days is None:
        return packs
    useful = rule.per_day * (rule.lead_days + rule.shelf_days) - position
    return min(packs, max(1, math.floor(useful / rule.pack + SLACK)))


def play(demand: Sequence[float], rule_at: Callable[[int], Rule], start: float) -> Outcome:
    """Replay the demand, one figure a day, from a stock of `start`. `rule_at(day)` is asked at each review.

    The clock starts with a review. Cycles are judged from the first order on that could have arrived.
    """
    rule = rule_at(0)
    shelf = _Shelf()
    if start > 0:
        shelf.lots.append([math.inf if rule.shelf_days is None else float(rule.shelf_days), start])
    checks = lasted = orders = packs = 0
    served = stock_days = 0.0
    for day, wanted in enumerate(demand):
        shelf.arrive(day, rule.shelf_days)
        shelf.expire(day)
        if day % rule.review_days == 0:
            rule = rule_at(day)
            more = packs_to_order(shelf.position(day, rule), rule)
            if more:
                orders, packs = orders + 1, packs + more
                shelf.coming.append((day + rule.lead_days, more * rule.pack))
                shelf.arrive(day, rule.shelf_days)
        taken = shelf.take(wanted)
        served += taken
        shelf.waiting += wanted - taken
        stock_days += shelf.stock()
        since = day + 1 - rule.lead_days
        if since > 0 and since % rule.review_days == 0:
            checks += 1
            lasted += shelf.waiting <= SLACK
    total = math.fsum(demand)
    return Outcome(len(demand), checks, lasted, total, served, stock_days, orders, packs, shelf.wasted)
