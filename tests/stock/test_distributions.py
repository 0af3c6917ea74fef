"""Distributions of demand against tables, textbook examples and reference libraries.

Where a value was computed with a library that the suite does not install, its name and version stand beside it.
"""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy import stats

from cribkit.domain.stock.distributions import (
    Certain,
    Moments,
    NegativeBinomial,
    Normal,
    Poisson,
    critical_ratio,
    expected_cost,
    fill_rate,
    fitted,
    over,
)

MEANS = [0.02, 0.25, 1.0, 3.0, 17.5, 240.0, 3000.0]
LEVELS = [0.55, 0.8, 0.9, 0.95, 0.99, 0.999]


@pytest.mark.parametrize("mean", MEANS)
def test_poisson_agrees_with_scipy(mean: float) -> None:
    mine, theirs = Poisson(mean), stats.poisson(mean)
    for level in LEVELS:
        assert mine.quantile(level) == theirs.ppf(level)
    for x in range(0, int(3 * mean) + 5, max(1, int(mean / 5))):
        assert mine.cdf(x) == pytest.approx(theirs.cdf(x), abs=1e-9)
        loss = theirs.expect(lambda d, x=x: d - x, lb=x + 1, maxcount=20_000) if mean < 100 else None
        if loss is not None:
            assert mine.loss(x) == pytest.approx(loss, abs=1e-6)


@pytest.mark.parametrize("ratio", [1.0001, 1.5, 2.0, 12.0])
@pytest.mark.parametrize("mean", MEANS)
def test_negative_binomial_agrees_with_scipy(mean: float, ratio: float) -> None:
    mine = NegativeBinomial(mean, mean * ratio)
    theirs = stats.nbinom(mine.r, mine.p)
    assert (theirs.mean(), theirs.var()) == pytest.approx((mean, mean * ratio))
    for level in LEVELS:
        assert mine.quantile(level) == theirs.ppf(level)
    for x in range(0, int(3 * mean) + 5, max(1, int(mean / 5))):
        assert mine.cdf(x) == pytest.approx(theirs.cdf(x), abs=1e-7)


@pytest.mark.parametrize(("mean", "sd"), [(50, 5), (0.3, 2.0), (12_000, 800)])
def test_normal_agrees_with_scipy(mean: float, sd: float) -> None:
    mine, theirs = Normal(mean, sd), stats.norm(mean, sd)
    for level in LEVELS:
        assert mine.quantile(level) == pytest.approx(theirs.ppf(level))
    for z in (-2.0, 0.0, 0.7, 3.1):
        x = mean + z * sd
        assert mine.cdf(x) == pytest.approx(theirs.cdf(x))
        assert mine.loss(x) == pytest.approx(theirs.expect(lambda d, x=x: d - x, lb=x), rel=1e-5)


@pytest.mark.parametrize(
    ("level", "z"),
    [
        (0.80, 0.8416),
        (0.85, 1.0364),
        (0.90, 1.2816),
        (0.95, 1.6449),
        (0.975, 1.9600),
        (0.98, 2.0537),
        (0.99, 2.3263),
        (0.995, 2.5758),
        (0.999, 3.0902),
    ],
)
def test_z_of_a_service_level_is_that_of_the_tables(level: float, z: float) -> None:
    """Standard normal table, as in any statistics handbook (recomputed with scipy)."""
    assert Normal(0, 1).quantile(level) == pytest.approx(z, abs=5e-5)


@pytest.mark.parametrize(
    ("z", "loss"), [(0, 0.398942), (0.3, 0.266761), (1, 0.083315), (1.645, 0.020886), (1.88, 0.011642), (2, 0.008491)]
)
def test_the_standard_loss_is_that_of_the_tables(z: float, loss: float) -> None:
    """Unit normal loss table (recomputed with scipy)."""
    assert Normal(0, 1).loss(z) == pytest.approx(loss, abs=5e-7)


@pytest.mark.parametrize(
    ("mean", "at_95", "at_99"),
    [
        (0.25, 1, 2),
        (0.5, 2, 3),
        (1, 3, 4),
        (1.5, 4, 5),
        (2, 5, 6),
        (3, 6, 8),
        (4, 8, 9),
        (5, 9, 11),
        (8, 13, 15),
        (10, 15, 18),
    ],
)
def test_the_smallest_stock_for_poisson_demand(mean: float, at_95: int, at_99: int) -> None:
    """Cumulative Poisson table (recomputed with scipy)."""
    assert (Poisson(mean).quantile(0.95), Poisson(mean).quantile(0.99)) == (at_95, at_99)


def test_the_cumulative_tables_of_mean_three() -> None:
    """Poisson(3), and negative binomial with mean 3 and variance 6, for 0 to 8 (recomputed with scipy)."""
    poisson = [0.0498, 0.1991, 0.4232, 0.6472, 0.8153, 0.9161, 0.9665, 0.9881, 0.9962]
    negative = [0.125, 0.3125, 0.5, 0.6562, 0.7734, 0.8555, 0.9102, 0.9453, 0.9673]
    assert [Poisson(3).cdf(k) for k in range(9)] == pytest.approx(poisson, abs=5.1e-5)
    assert [NegativeBinomial(3, 6).cdf(k) for k in range(9)] == pytest.approx(negative, abs=5.1e-5)
    assert (NegativeBinomial(3, 6).p, NegativeBinomial(3, 6).r) == (0.5, 3)


def test_a_lively_demand_asks_for_more_stock_than_poisson() -> None:
    """Mean 3 at 95 %: Poisson 6, normal 7.03 and negative binomial 8 with variance 6 (recomputed with scipy)."""
    assert Poisson(3).quantile(0.95) == 6
    assert Normal(3, math.sqrt(6)).quantile(0.95) == pytest.approx(7.03, abs=5e-3)
    assert NegativeBinomial(3, 6).quantile(0.95) == 8


@pytest.mark.parametrize(
    ("mean", "point", "quantity", "service", "short", "fill"),
    [
        (3, 3, 5, 0.6472, 0.67213, 0.86557),
        (3, 5, 5, 0.9161, 0.13462, 0.97308),
        (6, 6, 10, 0.6063, 0.96374, 0.90363),
    ],
)
def test_cycle_service_and_fill_rate_of_poisson_demand(
    mean: float, point: float, quantity: float, service: float, short: float, fill: float
) -> None:
    """Computed with stockpyl 1.0.2 (poisson_loss) and scipy."""
    demand = Poisson(mean)
    assert demand.cdf(point) == pytest.approx(service, abs=5e-5)
    assert demand.loss(point) == pytest.approx(short, abs=5e-6)
    assert fill_rate(demand, point, quantity) == pytest.approx(fill, abs=5e-6)


def test_fill_rate_of_normal_demand() -> None:
    """sd 5, z 1.88, order of 100: 0.05821 missed in a cycle, fill 0.999418 (recomputed with scipy)."""
    demand = Normal(50, 5)
    assert demand.loss(50 + 1.88 * 5) == pytest.approx(0.05821, abs=5e-6)
    assert fill_rate(demand, 50 + 1.88 * 5, 100) == pytest.approx(0.999418, abs=5e-7)


@pytest.mark.parametrize(("mean", "stock", "fill"), [(1.5, 3, 0.8088), (3, 6, 0.9161)])
def test_a_base_stock_serves_what_is_below_it(mean: float, stock: int, fill: float) -> None:
    """One for one replenishment: a demand is served at once when fewer than the stock are under way (scipy)."""
    assert Poisson(mean).cdf(stock - 1) == pytest.approx(fill, abs=5e-5)


# Newsvendor examples of Snyder and Shen, "Fundamentals of Supply Chain Theory", as printed in the documentation of
# stockpyl 1.0.2 and recomputed with it: holding, shortage, demand, stock, cost.
NEWSVENDOR = [
    (0.18, 0.70, Normal(50, 8), 56.603956, 1.997605),
    (0.18, 0.70, Normal(250, 8 * math.sqrt(5)), 264.766894, 4.466781),  # with a lead time of four periods
    (0.18, 0.70, Poisson(50), 56, 1.797235),
    (200, 270, Poisson(18), 19, 786.088441),
]


@pytest.mark.parametrize(("holding", "shortage", "demand", "stock", "cost"), NEWSVENDOR)
def test_the_cheapest_stock_for_one_period(
    holding: float, shortage: float, demand: Normal | Poisson, stock: float, cost: float
) -> None:
    found = demand.quantile(critical_ratio(holding, shortage))
    assert found == pytest.approx(stock, abs=1e-6)
    assert expected_cost(demand, found, holding, shortage) == pytest.approx(cost, abs=1e-6)


def cost_rate(point: int, quantity: int) -> float:
    """Average cost of an (r, Q) policy: Poisson demand 1.5 a year, lead time 2, holding 20, shortage 150, order 100."""
    lead_time_demand = Poisson(1.5 * 2)
    positions = range(point + 1, point + quantity + 1)
    return (100 * 1.5 + sum(expected_cost(lead_time_demand, y, 20, 150) for y in positions)) / quantity


def test_the_exact_reorder_policy_of_a_textbook() -> None:
    """Snyder and Shen: r = 3, Q = 5, cost 107.923581 (stockpyl r_q_poisson_exact)."""
    best = min((cost_rate(r, q), r, q) for r in range(10) for q in range(1, 15))
    assert best[1:] == (3, 5)
    assert best[0] == pytest.approx(107.923581, abs=1e-6)


def test_the_reorder_policy_from_expected_shortages() -> None:
    """Snyder and Shen, K 8, h 0.225, p 7.5, demand 1300 sd 150 a year, lead time 1/12 (stockpyl r_q_eil_approximation):
    r = 213.970440 and Q = 318.590181 satisfy both conditions of the optimum."""
    demand, r, q = Normal(1300 / 12, 150 / math.sqrt(12)), 213.970440, 318.590181
    assert 1 - demand.cdf(r) == pytest.approx(q * 0.225 / (7.5 * 1300), rel=1e-4)
    assert math.sqrt(2 * 1300 * (8 + 7.5 * demand.loss(r)) / 0.225) == pytest.approx(q, rel=1e-6)


def test_the_reorder_point_with_safety_stock_of_a_textbook() -> None:
    """The same example by safety stock: r = 190.336997 (stockpyl r_q_eoqss_approximation)."""
    demand = Normal(1300 / 12, 150 / math.sqrt(12))
    assert demand.quantile(critical_ratio(0.225, 7.5)) == pytest.approx(190.336997, abs=1e-6)


@pytest.mark.parametrize(
    ("per_day", "days", "days_sd", "mean", "variance"),
    [
        (Moments(29, 5.7**2), 3, 0, 87, 3 * 5.7**2),
        (Moments(20, 0), 4, 1.5, 80, (20 * 1.5) ** 2),
        (Moments(20, 9), 4, 1.5, 80, 4 * 9 + 30**2),
    ],
)
def test_demand_over_an_uncertain_time(
    per_day: Moments, days: float, days_sd: float, mean: float, variance: float
) -> None:
    """Variance = days × var_d + d² × var_days: the textbook form, from memory."""
    found = over(per_day, days, days_sd)
    assert (found.mean, found.variance) == pytest.approx((mean, variance))


# Stevenson, "Operations Management", 14th edition: example 8 (p. 557) and problems of the same chapter; the answers
# to the problems were computed with scipy. Demand per day and its sd, lead time, service, reorder point.
STEVENSON = [
    (Moments(50, 25), 1, 0.97, 59.40397),  # printed with z = 1.88: 59.40
    (Moments(29, 5.7**2), 3, 0.95, 103.239),
    (Moments(5, 4), 3, 0.95, 20.698),
    (Moments(20, 25), 14, 0.87, 301.0728),
    (Moments(65, 100), 1, 0.90, 77.8155),
    (Moments(10, 4), 6.5, 0.90, 71.5346),
]


@pytest.mark.parametrize(("per_day", "days", "service", "point"), STEVENSON)
def test_the_reorder_points_of_a_textbook(per_day: Moments, days: float, service: float, point: float) -> None:
    demand = over(per_day, days)
    assert fitted(demand.mean, demand.variance, counted=False).quantile(service) == pytest.approx(point, abs=1e-3)


def test_a_safety_stock_of_twenty_gives_the_service_of_the_textbook() -> None:
    """Stevenson: 29 a day sd 5.7, three days, reorder point 107 → service 0.978607 (scipy)."""
    assert Normal(87, 5.7 * math.sqrt(3)).cdf(107) == pytest.approx(0.978607, abs=1e-6)


@pytest.mark.parametrize(
    ("mean", "variance", "counted", "name"),
    [
        (3, 3, True, "Poisson"),
        (3, 1, True, "Poisson"),
        (3, 6, True, "negative binomial"),
        (3, 6, False, "normal"),
        (3, 0, False, "certain"),
        (0, 0, True, "certain"),
    ],
)
def test_the_distribution_follows_from_variance_and_kind(
    mean: float, variance: float, counted: bool, name: str
) -> None:
    assert fitted(mean, variance, counted).name == name


@given(
    mean=st.floats(0.01, 200),
    ratio=st.floats(1.0, 30),
    service=st.floats(0.5, 0.999),
)
def test_the_stock_asked_for_reaches_the_level_and_one_less_does_not(mean: float, ratio: float, service: float) -> None:
    demand = fitted(mean, mean * ratio, counted=True)
    stock = demand.quantile(service)
    assert demand.cdf(stock) >= service - 1e-9
    assert stock == 0 or demand.cdf(stock - 1) < service + 1e-9
    assert demand.loss(stock) <= demand.loss(max(0.0, stock - 1))


def test_demand_that_is_certain_is_never_missed() -> None:
    assert (Certain(4).quantile(0.99), Certain(4).loss(4), Certain(4).loss(3), Certain(4).cdf(3)) == (4, 0, 1, 0)
