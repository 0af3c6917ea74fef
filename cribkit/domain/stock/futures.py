"""Random futures of an item, the replay of its past, and the search for the service level that costs least.

Nothing here draws by itself: a source of random numbers with a fixed seed is passed in, so that the same question
always has the same answer.
"""

from __future__ import annotations

import datetime as dt
import math
from bisect import bisect_left
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Protocol

from cribkit.domain.stock.demand import Use, Usual, usual
from cribkit.domain.stock.distributions import STANDARD, fitted
from cribkit.domain.stock.held import Held, Policy
from cribkit.domain.stock.ordersize import order_size, own_bounds
from cribkit.domain.stock.reorder import demand_over
from cribkit.domain.stock.simulate import Outcome, Rule, play

WARM_UP = 56  # days of record before a replay of the past may begin: what the first estimate needs
LAST = 1 - 1e-9  # a table of chances ends here


class Rng(Protocol):
    """A source of random numbers, such as random.Random(seed)."""

    def random(self) -> float: ...


def daily(usual_: Usual, counted: bool) -> Callable[[Rng], float]:
    """A day's demand with the mean and variance that were fitted.

    Counted: Poisson or negative binomial. Measured: a use comes with a chance, and is normal and not below nothing.
    """
    day = usual_.per_day
    if day.mean <= 0:
        return lambda rng: 0.0
    if not counted:
        return measured(usual_)
    demand = fitted(day.mean, day.variance, True)
    most = int(demand.quantile(LAST))
    table = [demand.cdf(count) for count in range(most + 1)]
    return lambda rng: float(bisect_left(table, min(rng.random(), table[-1])))


def measured(usual_: Usual) -> Callable[[Rng], float]:
    """A use comes with chance 1 / interval; its size has what is left of the day's variance."""
    day = usual_.per_day
    chance = min(1.0, 1 / (usual_.smoothed.interval * usual_.days))
    size = day.mean / chance
    sd = math.sqrt(max(0.0, (day.variance + day.mean**2) / chance - size**2))

    def draw(rng: Rng) -> float:
        if rng.random() >= chance:
            return 0.0
        return max(0.0, size + sd * STANDARD.inv_cdf(max(1e-12, rng.random())))

    return draw


def rule_for(held: Held, policy: Policy) -> Rule | None:
    """The item's policy as a rule; None for an item that cannot be ordered because its pack is not known."""
    if held.pack <= 0:
        return None
    point = max(0.0, demand_over(held, policy).quantile(policy.service))
    point, target, _ = own_bounds(held, point, point + order_size(held, policy))
    return Rule(
        point=point,
        target=target,
        pack=held.pack,
        lead_days=math.ceil(held.lead.days),
        review_days=policy.review_days,
        per_day=held.usual.per_day.mean,
        shelf_days=held.shelf_days,
    )


def futures(held: Held, policy: Policy, rng: Rng, count: int, days: int) -> Iterator[Outcome]:
    """`count` futures of `days` days each, started with a stock at the target."""
    rule = rule_for(held, policy)
    if rule is None:
        return
    draw = daily(held.usual, held.counted)
    for _ in range(count):
        yield play([draw(rng) for _ in range(days)], lambda _: rule, rule.target)


def past(held: Held, uses: Sequence[Use], since: dt.date, policy: Policy) -> Outcome:
    """The policy over the item's own record: at each review it knows only what was on record by then."""
    start = since + dt.timedelta(days=WARM_UP)
    days = (policy.today - start).days
    if days < policy.review_days or held.pack <= 0:
        return Outcome()
    demand = [0.0] * days
    for use in uses:
        at = (use.on - start).days
        if 0 <= at < days:
            demand[at] += use.amount
    ordered = sorted(uses, key=lambda use: use.on)

    def rule_at(day: int) -> Rule:
        before = start + dt.timedelta(days=day - 1)
        known = [use for use in ordered if use.on <= before]
        then = replace(held, usual=usual(known, since, before, held.counted))
        rule = rule_for(then, replace(policy, today=before))
        assert rule is not None  # the pack was looked at above
        return rule

    return play([max(0.0, amount) for amount in demand], rule_at, rule_at(0).target)


def add(outcomes: Sequence[Outcome]) -> Outcome:
    """All sums added up, the days too: `mean_stock` of the result is per outcome."""
    names = Outcome.__dataclass_fields__
    return Outcome(**{name: sum(getattr(outcome, name) for outcome in outcomes) for name in names})


@dataclass(frozen=True, slots=True)
class Cheapest:
    """The level that cost least, and every level that was tried with its cost."""

    service: float
    cost: float
    tried: tuple[tuple[float, float], ...]


def cheapest(cost: Callable[[float], float], low: float, high: float, points: int = 5, rounds: int = 2) -> Cheapest:
    """Search a service level between two: `points` levels evenly spaced in z, then again around the best.

    A grid, not a halving: costs in whole packs have steps and may have several valleys.
    """
    tried: dict[float, float] = {}
    left, right = STANDARD.inv_cdf(low), STANDARD.inv_cdf(high)
    for _ in range(rounds):
        step = (right - left) / (points - 1)
        levels = [min(high, max(low, STANDARD.cdf(left + at * step))) for at in range(points)]
        for level in levels:
            if level not in tried:
                tried[level] = cost(level)
        best = min(tried, key=lambda level: (tried[level], level))
        middle = STANDARD.inv_cdf(best)
        left, right = max(left, middle - step), min(right, middle + step)
    return Cheapest(best, tried[best], tuple(sorted(tried.items())))
