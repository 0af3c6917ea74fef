"""What is usual: from the uses on record to demand per day, by a published method that the reason names.

Uses are put into weeks (days while the record is shorter than eight weeks) counted back from today, independent of
how often somebody orders. The pattern follows Syntetos, Boylan and Croston (2005), "On the categorization of demand
patterns": mean interval between demands 1.32, squared coefficient of variation of their sizes 0.49.
"""

from __future__ import annotations

import datetime as dt
import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from enum import StrEnum
from statistics import quantiles
from typing import NamedTuple

from cribkit.domain.stock.distributions import Moments
from cribkit.domain.stock.forecast import ALPHA, Smoothed, corrected, croston, teunter_syntetos_babai

ADI_CUT = 1.32  # mean interval between demands, in periods
CV2_CUT = 0.49  # squared coefficient of variation of the demands' sizes
WEEK = 7
WEEKS_ENOUGH = 8  # from this many full weeks on, demand is seen by the week
FEW = 3  # with fewer periods of use no method can be told from another: the plain mean serves
SILENT = 3.0  # nothing used for this many usual intervals: the item may have died (our own rule)
TELLING = 5  # with fewer periods of use an outlier cannot be told from a lively item
FENCE = 3.0  # Tukey's outer fence: three interquartile ranges above the upper quartile (Exploratory Data Analysis)
LEAST_FENCE = 5.0  # and never below five times the median: equal amounts have no interquartile range (our own rule)


class Pattern(StrEnum):
    """How demand comes."""

    NONE = "none"  # nothing used on record
    SMOOTH = "smooth"  # often, in like amounts
    ERRATIC = "erratic"  # often, in unlike amounts
    INTERMITTENT = "intermittent"  # now and then, in like amounts
    LUMPY = "lumpy"  # now and then, in unlike amounts


class Method(StrEnum):
    """How demand per day was estimated."""

    NONE = "none"
    MEAN = "plain mean"
    CROSTON = "Croston"
    SBA = "Croston with the Syntetos-Boylan correction"
    TSB = "Teunter-Syntetos-Babai"


class Use(NamedTuple):
    """An amount taken out of stock for good, in the item's unit. Negative: a correction.

    A tuple, because a crib's record has hundreds of thousands and a frozen dataclass takes four times as long to make.
    """

    on: dt.date
    amount: float


@dataclass(frozen=True, slots=True)
class Outlier:
    """A period whose use is out of all proportion, and what it counts as."""

    on: dt.date  # the period's last day
    amount: float
    counted_as: float


@dataclass(frozen=True, slots=True)
class Usual:
    """Usual demand, with the figures it was worked out from. Amounts in the item's unit, per period of `days`."""

    days: int  # length of a period
    periods: tuple[float, ...]  # oldest first, outliers capped
    pattern: Pattern
    method: Method
    smoothed: Smoothed
    variance: float  # of the use in one period
    outliers: tuple[Outlier, ...] = ()
    silent: int = 0  # periods since the last use

    @property
    def per_day(self) -> Moments:
        """Mean and variance of one day's use; days are taken as independent."""
        return Moments(self.smoothed.forecast / self.days, self.variance / self.days)

    @property
    def used(self) -> int:
        """Periods in which something was used."""
        return sum(1 for amount in self.periods if amount > 0)

    @property
    def adi(self) -> float:
        """Average interval between demands, in periods; 0 where there are none."""
        return len(self.periods) / self.used if self.used else 0.0

    @property
    def cv2(self) -> float:
        """Squared coefficient of variation of the demands' sizes."""
        return squared_variation(self.periods)


def usual(uses: Iterable[Use], since: dt.date, today: dt.date, counted: bool, alpha: float = ALPHA) -> Usual:
    """Usual demand from the uses between `since`, the first day on record, and `today`, both included."""
    days, raw = periods_of(uses, since, today)
    capped, outliers = cap_outliers(raw, days, today)
    pattern = pattern_of(capped)
    silent = trailing_zeros(capped)
    method, smoothed = estimate(capped, pattern, silent, alpha)
    spread = spread_of(capped, method, smoothed, counted)
    return Usual(days, tuple(capped), pattern, method, smoothed, spread, outliers, silent)


def periods_of(uses: Iterable[Use], since: dt.date, today: dt.date) -> tuple[int, list[float]]:
    """Length of a period in days, and the use in each whole period from the oldest to the one that ends today.

    An unfinished oldest period is left out; corrections are taken off their period, never below nothing.
    """
    known = max(0, (today - since).days + 1)
    days = WEEK if known >= WEEK * WEEKS_ENOUGH else 1
    count = known // days
    sums = [0.0] * count
    end = today.toordinal()
    for use in uses:
        back = (end - use.on.toordinal()) // days
        if 0 <= back < count:
            sums[count - 1 - back] += use.amount
    return days, [max(0.0, amount) for amount in sums]


def cap_outliers(periods: Sequence[float], days: int, today: dt.date) -> tuple[list[float], tuple[Outlier, ...]]:
    """Periods with giant ones capped at the fence, and those periods by name: nothing is capped silently."""
    sizes = [amount for amount in periods if amount > 0]
    if len(sizes) < TELLING:
        return list(periods), ()
    low, middle, high = quantiles(sizes, n=4, method="inclusive")
    fence = max(high + FENCE * (high - low), LEAST_FENCE * middle)
    last = len(periods) - 1
    outliers = tuple(
        Outlier(today - dt.timedelta(days=(last - at) * days), amount, fence)
        for at, amount in enumerate(periods)
        if amount > fence
    )
    return [min(amount, fence) for amount in periods], outliers


def pattern_of(periods: Sequence[float]) -> Pattern:
    """The quadrant of the published cut-offs."""
    used = sum(1 for amount in periods if amount > 0)
    if not used:
        return Pattern.NONE
    often = len(periods) / used < ADI_CUT
    alike = squared_variation(periods) < CV2_CUT
    if often:
        return Pattern.SMOOTH if alike else Pattern.ERRATIC
    return Pattern.INTERMITTENT if alike else Pattern.LUMPY


def squared_variation(periods: Sequence[float]) -> float:
    """CV²: variance of the demands' sizes over the square of their mean; 0 for fewer than two demands."""
    sizes = [amount for amount in periods if amount > 0]
    if len(sizes) < 2:
        return 0.0
    return sample_variance(sizes) * (len(sizes) / math.fsum(sizes)) ** 2


def estimate(periods: Sequence[float], pattern: Pattern, silent: int, alpha: float = ALPHA) -> tuple[Method, Smoothed]:
    """The method for this pattern and its figures.

    Smooth demand: Croston (1972); the other patterns: with the Syntetos-Boylan correction, as the authors of the
    cut-offs advise. Silent for three usual intervals: TSB, whose forecast falls. Fewer than three uses: the mean.
    """
    used = sum(1 for amount in periods if amount > 0)
    if not used:
        return Method.NONE, Smoothed(0.0, 0.0, 0.0)
    if used < FEW:
        total = math.fsum(periods)
        return Method.MEAN, Smoothed(total / used, len(periods) / used, total / len(periods))
    plain = croston(periods, alpha)
    if silent > SILENT * plain.interval:
        return Method.TSB, teunter_syntetos_babai(periods, alpha, alpha)
    if pattern is Pattern.SMOOTH:
        return Method.CROSTON, plain
    return Method.SBA, corrected(plain, alpha)


def trailing_zeros(periods: Sequence[float]) -> int:
    """Periods since the last one with a use."""
    for back, amount in enumerate(reversed(periods)):
        if amount > 0:
            return back
    return len(periods)


def spread_of(periods: Sequence[float], method: Method, smoothed: Smoothed, counted: bool) -> float:
    """Variance of a period's use.

    The sample variance; but for an item that may have died that of a demand of the smoothed size which comes with
    the smoothed chance, because the past was livelier. A single period says nothing: then that of Poisson, or for
    measured amounts a coefficient of variation of 1 (both our own rule).
    """
    mean = smoothed.forecast
    if method is Method.TSB:
        sizes = [amount for amount in periods if amount > 0]
        return mean * smoothed.size * (1 + squared_variation(sizes)) - mean * mean
    if len(periods) > 1:
        return sample_variance(periods)
    return mean if counted else mean * mean


def sample_variance(values: Sequence[float]) -> float:
    """Squared deviations from the mean over n - 1; the standard library's is exact and 30 times slower."""
    mean = math.fsum(values) / len(values)
    return math.fsum((value - mean) ** 2 for value in values) / (len(values) - 1)
