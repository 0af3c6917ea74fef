"""Try the policy out: over the crib's own record, over random futures, and between two service levels."""

from __future__ import annotations

import math
import random
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from cribkit.desk.restock import Known, read
from cribkit.domain.problem import BadInput
from cribkit.domain.stock.futures import Cheapest, cheapest, futures, past
from cribkit.domain.stock.held import Held, Policy
from cribkit.domain.stock.simulate import Outcome
from cribkit.store.crib import Crib

SEED = 20260101  # the same question always gets the same answer
YEAR = 365  # days of a future
Progress = Callable[[str, int, int], None]


@dataclass(frozen=True, slots=True)
class Costs:
    """What a stock-out and an order cost, in the money of the crib's prices. Our own assumptions, to be set."""

    stock_out: float = 25.0  # each order cycle of an item that did not last
    order: float = 2.0  # each line of an order
    holding: float = 0.2  # of the stock's value, per year


@dataclass(frozen=True, slots=True)
class Reached:
    """What a policy reached, over all items that move."""

    items: int
    days: float  # of one future, or the mean of the items' own records
    service: float  # share of order cycles that lasted
    margin: float | None  # half of its 95 % confidence interval; None for the past, of which there is only one
    fill: float  # share of the demand served at once, the mean over the items
    stock_outs: float  # cycles that did not last, per year
    orders: float  # per year
    stock_value: float  # average, in money
    wasted_value: float  # per year
    cost: float  # per year
    unpriced: int  # items whose price is not known: they are missing in the money


@dataclass(frozen=True, slots=True)
class Tried:
    """The trial of a policy."""

    policy: Policy
    runs: int
    seed: int
    costs: Costs
    past: Reached | None  # None where no item's record is long enough
    futures: Reached
    computed: Reached | None  # the futures without own minimums and maximums; None where there are none
    worst: tuple[tuple[Held, Outcome], ...]  # items by stock-outs in the past, the worst first
    search: Cheapest | None = None


@dataclass(frozen=True, slots=True)
class _Played:
    """One item's outcomes."""

    held: Held
    outcomes: tuple[Outcome, ...]

    @property
    def price(self) -> float:
        """Of one unit; 0 where no price is known."""
        return (self.held.cost or 0.0) / self.held.pack


def try_policy(
    crib: Crib,
    policy: Policy,
    runs: int,
    progress: Progress,
    costs: Costs | None = None,
    between: tuple[float, float] | None = None,
    seed: int = SEED,
) -> Tried:
    """Replay the policy. With `between`, also search the service level that costs least over the futures; an own
    minimum or maximum would hide what a level does, so the search goes by the computed levels."""
    costs = costs or Costs()
    known = read(crib, policy.today)
    moving = [held for held in known.held if held.usual.per_day.mean > 0 and held.pack > 0]
    if not moving:
        todo = "post what is used for a while, then try again."
        raise BadInput.of("no-record", "nothing in this crib was used on record: there is nothing to replay", todo)
    replayed = replay(known, policy, progress)
    drawn = draw(moving, policy, runs, seed, progress)
    free = [replace(held, minimum=None, maximum=None) for held in moving]
    unbound = draw(free, policy, runs, seed, progress, "computed levels") if free != moving else []
    return Tried(
        policy=policy,
        runs=runs,
        seed=seed,
        costs=costs,
        past=reached(replayed, costs) if replayed else None,
        futures=reached(drawn, costs),
        computed=reached(unbound, costs) if unbound else None,
        worst=worst(replayed),
        search=search(free, policy, runs, seed, costs, between, progress) if between else None,
    )


def replay(known: Known, policy: Policy, progress: Progress) -> list[_Played]:
    """Each item's own past, where its record is long enough."""
    played = []
    for at, held in enumerate(known.held, 1):
        progress("the past", at, len(known.held))
        uses = known.uses.get(held.tag, [])
        outcome = past(held, uses, known.since[held.tag], policy) if uses else Outcome()
        if outcome.checks and outcome.demand:
            played.append(_Played(held, (outcome,)))
    return played


def draw(
    moving: Sequence[Held], policy: Policy, runs: int, seed: int, progress: Progress, what: str = "futures"
) -> list[_Played]:
    """Futures of each item. Each has random numbers of its own, so that one item more changes no other."""
    played = []
    for at, held in enumerate(moving, 1):
        progress(what, at, len(moving))
        rng = random.Random(f"{seed}:{held.tag}")
        played.append(_Played(held, tuple(futures(held, policy, rng, runs, YEAR))))
    return played


def reached(played: Sequence[_Played], costs: Costs) -> Reached:
    """All items together, per year."""
    runs = len(played[0].outcomes)
    every = [outcome for one in played for outcome in one.outcomes]
    checks = sum(outcome.checks for outcome in every)
    spans = [(one, sum(outcome.days for outcome in one.outcomes) / YEAR) for one in played]
    stock = sum(one.price * sum(o.stock_days for o in one.outcomes) / YEAR / span for one, span in spans)
    wasted = sum(one.price * sum(o.wasted for o in one.outcomes) / span for one, span in spans)
    short = sum(sum(o.stock_outs for o in one.outcomes) / span for one, span in spans)
    orders = sum(sum(o.orders for o in one.outcomes) / span for one, span in spans)
    fills = [sum(o.served for o in one.outcomes) / (sum(o.demand for o in one.outcomes) or 1) for one in played]
    return Reached(
        items=len(played),
        days=sum(outcome.days for outcome in every) / len(every),
        service=sum(outcome.lasted for outcome in every) / checks if checks else 1.0,
        margin=margin(played) if runs > 1 else None,
        fill=sum(fills) / len(fills),
        stock_outs=short,
        orders=orders,
        stock_value=stock,
        wasted_value=wasted,
        cost=costs.holding * stock + wasted + costs.stock_out * short + costs.order * orders,
        unpriced=sum(one.held.cost is None for one in played),
    )


def margin(played: Sequence[_Played]) -> float:
    """1.96 standard errors of the mean service over the futures, which are independent of each other."""
    rates = []
    for at in range(len(played[0].outcomes)):
        checks = sum(one.outcomes[at].checks for one in played)
        rates.append(sum(one.outcomes[at].lasted for one in played) / checks if checks else 1.0)
    mean = sum(rates) / len(rates)
    return 1.96 * math.sqrt(sum((rate - mean) ** 2 for rate in rates) / (len(rates) - 1) / len(rates))


def worst(replayed: Sequence[_Played], count: int = 10) -> tuple[tuple[Held, Outcome], ...]:
    """The items that ran out most often in the past."""
    short = [(one.held, one.outcomes[0]) for one in replayed if one.outcomes[0].stock_outs]
    return tuple(sorted(short, key=lambda one: (-one[1].stock_outs, one[0].tag))[:count])


def search(
    moving: Sequence[Held],
    policy: Policy,
    runs: int,
    seed: int,
    costs: Costs,
    between: tuple[float, float],
    progress: Progress,
) -> Cheapest:
    """The service level that costs least; every level meets the same futures."""

    def cost(level: float) -> float:
        played = draw(moving, replace(policy, service=level), runs, seed, progress, f"service {level:.4g}")
        return reached(played, costs).cost

    return cheapest(cost, *between)
