"""The replay itself is checked against exact results; then the policy is checked by the replay."""

import datetime as dt
import math
import random
from collections.abc import Callable

import pytest

from cribkit.domain.stock.demand import Use
from cribkit.domain.stock.distributions import fitted
from cribkit.domain.stock.futures import add, cheapest, daily, futures, past
from cribkit.domain.stock.held import Held, Policy
from cribkit.domain.stock.simulate import Outcome, Rule, play
from tests.stock.build import TODAY, held, lot, steady


def drawn(mean: float, variance: float, days: int, seed: int) -> list[float]:
    rng = random.Random(seed)
    draw = daily(steady(mean, variance), counted=True)
    return [draw(rng) for _ in range(days)]


def always(rule: Rule) -> Callable[[int], Rule]:
    return lambda _: rule


def test_a_replay_that_can_be_followed_by_hand() -> None:
    """Review every 2 days, lead time 1, two asked for each day, four on the shelf."""
    rule = Rule(point=5, target=8, pack=3, lead_days=1, review_days=2)
    found = play([2, 2, 2, 2, 2, 2], always(rule), start=4)
    # day 0: position 4, orders 2 packs (6). Evenings: 2, then 2+6-2 = 6, 4, 2 (position 6 at day 2: no order),
    # day 4: position 2, orders 6, evening 0; day 5: 6 arrive, evening 4. The orders of the reviews on days 0 and 2
    # must last until the evenings of days 2 and 4.
    assert found == Outcome(
        days=6, checks=2, lasted=2, demand=12, served=12, stock_days=2 + 6 + 4 + 2 + 0 + 4, orders=2, packs=4, wasted=0
    )


def test_what_is_not_there_is_waited_for_and_served_first() -> None:
    rule = Rule(point=1, target=4, pack=1, lead_days=2, review_days=1)
    # Four come on day 2: three go to who waits, one is left, and the position never falls below one again.
    found = play([3, 0, 0, 0], always(rule), start=0)
    assert (found.served, found.checks, found.lasted, found.packs) == (0, 2, 2, 4)


def test_stock_that_expires_is_thrown_away_and_counted() -> None:
    rule = Rule(point=2, target=2, pack=10, lead_days=0, review_days=1, per_day=1, shelf_days=3)
    found = play([1] * 9, always(rule), start=0)
    assert found.demand == found.served == 9
    assert found.wasted == 12  # two packs of ten, each good for four days of one


# Order up to S at each review: what is there when the next order can arrive is S - demand over lead and review time,
# so the chance to last is exactly P(D <= S). Mean and variance a day, lead time, review time.
KNOWN = [(0.5, 0.5, 7, 7), (0.2, 0.6, 10, 7), (3.0, 7.5, 3, 1), (1.0, 1.0, 0, 5)]


@pytest.mark.parametrize(("mean", "variance", "lead", "review"), KNOWN)
def test_a_known_demand_reaches_its_service_level_within_the_confidence_interval(
    mean: float, variance: float, lead: int, review: int
) -> None:
    """400 independent futures; 99.9 % interval of a mean. Exact result: any textbook on base-stock policies."""
    days = lead + review
    demand = fitted(mean * days, variance * days, counted=True)
    stock = demand.quantile(0.95)
    expected = demand.cdf(stock)
    assert expected >= 0.95
    rule = Rule(point=stock, target=stock, pack=1, lead_days=lead, review_days=review)
    reached = [
        play(drawn(mean, variance, lead + 15 * review, seed), always(rule), start=stock).service for seed in range(400)
    ]
    middle = math.fsum(reached) / len(reached)
    error = math.sqrt(math.fsum((one - middle) ** 2 for one in reached) / (len(reached) - 1) / len(reached))
    assert abs(middle - expected) < 3.29 * error


@pytest.mark.parametrize("level", [0.8, 0.95, 0.99])
@pytest.mark.parametrize("unit", ["each", "mL"])
def test_the_whole_policy_reaches_at_least_the_level_asked_for(level: float, unit: str) -> None:
    """Ordering only below the reorder point, and in whole packs, leaves more than the level, never less."""
    item = held(0.4, 0.9, (), lead=5, pack=4.0, unit=unit)
    found = add(list(futures(item, Policy(TODAY, service=level), random.Random(7), 60, 365)))
    error = math.sqrt(level * (1 - level) / (found.checks / 3))  # neighbouring cycles share their lead time
    assert found.service > level - 3.29 * error


# Snyder and Shen (stockpyl 1.0.2, s_s_discrete_exact): mean a period, holding, shortage, order, s, S, cost a period.
POLICIES = [(6, 1, 4, 5, 4, 10, 8.034112), (4, 40, 125, 150, 2, 7, 223.574830)]


@pytest.mark.parametrize(("mean", "holding", "shortage", "ordering", "low", "high", "cost"), POLICIES)
def test_the_cost_of_a_textbook_policy_is_that_of_the_simulation(
    mean: float, holding: float, shortage: float, ordering: float, low: float, high: float, cost: float
) -> None:
    """Poisson demand, no lead time; holding and shortage are judged in the evening."""
    rng, draw = random.Random(11), daily(steady(mean, mean), counted=True)
    demand = [draw(rng) for _ in range(60_000)]
    # The textbook orders when the position is at s or below, our rule when it is below its point.
    rule = Rule(point=low + 1, target=high, pack=1, lead_days=0, review_days=1)
    found = play(demand, always(rule), start=high)
    held_, missed = found.stock_days / found.days, waited(demand, rule)
    assert holding * held_ + shortage * missed + ordering * found.orders / found.days == pytest.approx(cost, rel=0.01)


def waited(demand: list[float], rule: Rule) -> float:
    """Mean of what waits in the evening, by a second and simpler replay."""
    net, total = rule.target, 0.0
    for wanted in demand:
        if net < rule.point:
            net = rule.target
        net -= wanted
        total += max(0.0, -net)
    return total / len(demand)


@pytest.mark.parametrize(("mean", "variance", "counted"), [(0.3, 0.3, True), (0.3, 1.4, True), (40, 9000, False)])
def test_drawn_demand_has_the_fitted_mean_and_variance(mean: float, variance: float, counted: bool) -> None:
    rng, draw = random.Random(5), daily(steady(mean, variance, days=1 if counted else 7), counted)
    days = [draw(rng) for _ in range(40_000)]
    middle = math.fsum(days) / len(days)
    spread = math.fsum((one - middle) ** 2 for one in days) / len(days)
    assert middle == pytest.approx(mean, rel=0.05)
    assert spread == pytest.approx(variance, rel=0.1)


def test_the_same_seed_gives_the_same_futures() -> None:
    item = held(0.4, 0.9, ())
    runs = [list(futures(item, Policy(TODAY), random.Random(3), 5, 100)) for _ in range(2)]
    assert runs[0] == runs[1]
    assert len({one.demand for one in runs[0]}) > 1


def test_the_past_is_replayed_with_what_was_known_on_each_day() -> None:
    """Two a week, then from one day on ten a week: the replay must be caught out by the change, and recover."""
    since = TODAY - dt.timedelta(days=700)
    uses = [Use(since + dt.timedelta(days=at), 2 if at < 350 else 10) for at in range(0, 700, 7)]
    item: Held = held(0, 0, (lot(0),), lead=14)
    found = past(item, uses, since, Policy(TODAY))
    assert found.days == 700 - 56
    assert 1 <= found.stock_outs <= 20
    even = past(item, [Use(since + dt.timedelta(days=at), 2) for at in range(0, 700, 7)], since, Policy(TODAY))
    assert (even.service, even.fill) == (1, 1)


def test_a_past_too_short_to_replay_is_an_empty_outcome() -> None:
    assert past(held(), [], TODAY - dt.timedelta(days=20), Policy(TODAY)) == Outcome()


def test_the_cheapest_level_is_found_between_the_two_given() -> None:
    found = cheapest(lambda level: (level - 0.937) ** 2, 0.80, 0.999)
    assert found.service == pytest.approx(0.937, abs=0.02)
    assert found.cost == min(cost for _, cost in found.tried)
    edge = cheapest(lambda level: -level, 0.8, 0.99)
    assert edge.service == pytest.approx(0.99)
    assert all(0.8 <= level <= 0.99 for level, _ in edge.tried)


def test_a_year_of_record_is_enough_to_keep_the_level_for_a_steady_item() -> None:
    """Demand is only known from its record here; tests/bench/restock_service.py prints more of these."""
    from tests.bench.restock_service import trial

    runs = [trial(0.5, 0.5, 364, seed) for seed in range(40)]
    assert sum(run.lasted for run in runs) / sum(run.checks for run in runs) > 0.95
