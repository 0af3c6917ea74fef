"""Distributions of demand: how likely it stays within a stock, what stock a service level asks for, what is missed.

Each is asked three questions. `cdf(x)`: the chance that demand is at most x. `quantile(p)`: the smallest stock that
covers demand with chance p; a whole number where demand is counted. `loss(x)`: the expected demand beyond x,
E[(D - x)+], in the unit of the demand. scipy.stats answers the same questions in the tests.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from statistics import NormalDist
from typing import Protocol

STANDARD = NormalDist()
# Beyond this many standard deviations below the mean a discrete sum starts: what lies below is under 1e-15 for the
# means where it matters (mean - 12 sd > 0).
FAR = 12.0
# A negative binomial whose variance is this close to its mean is a Poisson distribution to all digits shown.
SAME = 1e-6
NOTHING = 1e-9  # a mean this small is no demand


class Distribution(Protocol):
    """Demand over a period, in the item's unit."""

    @property
    def mean(self) -> float: ...
    @property
    def variance(self) -> float: ...
    @property
    def name(self) -> str: ...
    def cdf(self, x: float) -> float: ...
    def quantile(self, p: float) -> float: ...
    def loss(self, x: float) -> float: ...


@dataclass(frozen=True, slots=True)
class Certain:
    """Demand that is known exactly, such as no demand at all."""

    mean: float

    @property
    def variance(self) -> float:
        return 0.0

    @property
    def name(self) -> str:
        return "certain"

    def cdf(self, x: float) -> float:
        return 1.0 if x >= self.mean else 0.0

    def quantile(self, p: float) -> float:
        return self.mean

    def loss(self, x: float) -> float:
        return max(0.0, self.mean - x)


@dataclass(frozen=True, slots=True)
class Normal:
    """Measured demand. The loss is sd × L(z) with the standard loss L(z) = phi(z) - z (1 - Phi(z))."""

    mean: float
    sd: float

    @property
    def variance(self) -> float:
        return self.sd * self.sd

    @property
    def name(self) -> str:
        return "normal"

    def cdf(self, x: float) -> float:
        return STANDARD.cdf((x - self.mean) / self.sd)

    def quantile(self, p: float) -> float:
        return self.mean + self.sd * STANDARD.inv_cdf(p)

    def loss(self, x: float) -> float:
        z = (x - self.mean) / self.sd
        return self.sd * (STANDARD.pdf(z) - z * STANDARD.cdf(-z))


class _Counted:
    """What the two counted distributions share: they differ in their first term and in the ratio of neighbours."""

    __slots__ = ()
    mean: float

    @property
    def variance(self) -> float:
        raise NotImplementedError

    def _log_pmf(self, k: int) -> float:
        raise NotImplementedError

    def _ratio(self, k: int) -> float:
        """pmf(k) / pmf(k - 1)."""
        raise NotImplementedError

    def _terms(self) -> Iterator[tuple[int, float]]:
        """k and pmf(k), from where the mass begins."""
        k = max(0, math.floor(self.mean - FAR * math.sqrt(self.variance)))
        term = math.exp(self._log_pmf(k))
        while True:
            yield k, term
            k += 1
            term *= self._ratio(k)

    def cdf(self, x: float) -> float:
        """P(D <= x)."""
        last, total = math.floor(x + 1e-9), 0.0
        for k, term in self._terms():
            if k > last:
                break
            total += term
        return min(1.0, total)

    def quantile(self, p: float) -> float:
        """The smallest whole r with P(D <= r) >= p."""
        total, ceiling = 0.0, self.mean + 1000 * (1 + math.sqrt(self.variance))
        for k, term in self._terms():
            total += term
            if total >= p - 1e-12 or k > ceiling:
                return float(k)
        raise AssertionError("the terms never end")

    def loss(self, x: float) -> float:
        """E[(D - x)+] = mean - x + E[(x - D)+], summed over the demands below x."""
        below = 0.0
        for k, term in self._terms():
            if k >= x:
                break
            below += (x - k) * term
        return max(0.0, self.mean - x + below)


@dataclass(frozen=True, slots=True)
class Poisson(_Counted):
    """Counted demand that arrives one by one: variance = mean."""

    mean: float

    @property
    def variance(self) -> float:
        return self.mean

    @property
    def name(self) -> str:
        return "Poisson"

    def _log_pmf(self, k: int) -> float:
        return k * math.log(self.mean) - self.mean - math.lgamma(k + 1)

    def _ratio(self, k: int) -> float:
        return self.mean / k


@dataclass(frozen=True, slots=True)
class NegativeBinomial(_Counted):
    """Counted demand that varies more than Poisson: p = mean / variance, r = mean² / (variance - mean)."""

    mean: float
    spread: float  # its variance: more than the mean

    @property
    def variance(self) -> float:
        return self.spread

    @property
    def name(self) -> str:
        return "negative binomial"

    @property
    def p(self) -> float:
        """Chance of success of one trial."""
        return self.mean / self.spread

    @property
    def r(self) -> float:
        """Number of successes waited for; need not be whole."""
        return self.mean * self.mean / (self.spread - self.mean)

    def _log_pmf(self, k: int) -> float:
        return (
            math.lgamma(k + self.r)
            - math.lgamma(self.r)
            - math.lgamma(k + 1)
            + self.r * math.log(self.p)
            + k * math.log1p(-self.p)
        )

    def _ratio(self, k: int) -> float:
        return (k - 1 + self.r) / k * (1 - self.p)


def fitted(mean: float, variance: float, counted: bool) -> Distribution:
    """The distribution for this mean and variance.

    Counted demand: Poisson up to variance = mean, negative binomial above. Measured amounts: normal.
    """
    if mean <= NOTHING:
        return Certain(0.0)
    if not counted:
        return Normal(mean, math.sqrt(variance)) if variance > 0 else Certain(mean)
    return Poisson(mean) if variance <= mean * (1 + SAME) else NegativeBinomial(mean, variance)


@dataclass(frozen=True, slots=True)
class Moments:
    """Mean and variance of a demand."""

    mean: float
    variance: float

    @property
    def sd(self) -> float:
        return math.sqrt(self.variance)


def over(per_day: Moments, days: float, days_sd: float = 0.0) -> Moments:
    """Demand over `days` that are themselves uncertain.

    Independent days: mean = days × d; variance = days × var_d + d² × var_days (the usual textbook form; see
    docs/restock.md).
    """
    return Moments(per_day.mean * days, days * per_day.variance + (per_day.mean * days_sd) ** 2)


def fill_rate(demand: Distribution, reorder_point: float, quantity: float) -> float:
    """Share of the demand served from stock when `quantity` is ordered at the reorder point: 1 - E[(D - r)+] / Q."""
    return 1.0 - demand.loss(reorder_point) / quantity


def expected_cost(demand: Distribution, stock: float, holding: float, shortage: float) -> float:
    """Expected cost of one period that starts with `stock`: holding × what is left + shortage × what is missed."""
    missed = demand.loss(stock)
    return holding * (stock - demand.mean + missed) + shortage * missed


def critical_ratio(holding: float, shortage: float) -> float:
    """The service level that costs least over one period: shortage / (shortage + holding)."""
    return shortage / (shortage + holding)
