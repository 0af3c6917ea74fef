"""The service really reached when demand is only known from a record: known demand, 12 to 104 weeks of record, then a
year of ordering at 95 %. 150 trials a row, fixed seeds.

    python tests/bench/restock_service.py
"""

from __future__ import annotations

import datetime as dt
import random
from bisect import bisect_left
from collections.abc import Callable

from cribkit.domain.stock.demand import Use, usual
from cribkit.domain.stock.distributions import fitted
from cribkit.domain.stock.futures import rule_for
from cribkit.domain.stock.held import Held, Policy
from cribkit.domain.stock.leadtime import Lead
from cribkit.domain.stock.simulate import Outcome, play

TODAY = dt.date(2026, 11, 30)
TRIALS = 150
DEMANDS = [(0.02, 0.02), (0.1, 0.1), (0.1, 0.3), (0.5, 0.5), (0.5, 2.0), (2.0, 2.0), (2.0, 8.0)]


def sampler(mean: float, variance: float) -> Callable[[random.Random], float]:
    """Draws of a day's demand."""
    demand = fitted(mean, variance, counted=True)
    table = [demand.cdf(count) for count in range(int(demand.quantile(1 - 1e-9)) + 1)]
    return lambda rng: float(bisect_left(table, min(rng.random(), table[-1])))


def trial(mean: float, variance: float, days: int, seed: int) -> Outcome:
    """A record of so many days, the policy that follows from it, and a year under that policy."""
    rng, draw = random.Random(seed), sampler(mean, variance)
    uses = [Use(TODAY - dt.timedelta(days=back), draw(rng)) for back in range(days)]
    known = usual(uses, TODAY - dt.timedelta(days=days - 1), TODAY, counted=True)
    rule = rule_for(Held("X", "invented", "each", 1.0, (), known, Lead(7)), Policy(TODAY))
    assert rule is not None
    return play([draw(rng) for _ in range(365)], lambda _: rule, rule.target)


def main() -> None:
    """Print a row for each demand and length of record."""
    print(f"{'mean a day':>11}{'variance':>10}{'weeks':>7}{'cycles that lasted':>20}{'served at once':>16}")
    for mean, variance in DEMANDS:
        for weeks in (12, 52, 104):
            runs = [trial(mean, variance, 7 * weeks, seed) for seed in range(TRIALS)]
            service = sum(run.lasted for run in runs) / sum(run.checks for run in runs)
            fill = sum(run.served for run in runs) / sum(run.demand for run in runs)
            print(f"{mean:11}{variance:10}{weeks:7}{service:20.4f}{fill:16.4f}", flush=True)


if __name__ == "__main__":
    main()
