"""Published forecasts for demand that comes now and then.

Croston (1972) smooths the size of a demand and the interval between demands, each only when a demand comes.
Syntetos and Boylan (2005) take the bias out of the quotient: × (1 - alpha / 2). Teunter, Syntetos and Babai (2011)
smooth the chance of a demand in every period, so that the forecast falls while nothing is used.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

ALPHA = 0.1  # smoothing: 0.05 to 0.2 is what the literature uses for intermittent demand


@dataclass(frozen=True, slots=True)
class Smoothed:
    """The two smoothed figures and the forecast for one period made of them."""

    size: float  # of a demand when it comes
    interval: float  # periods from one demand to the next; for TSB 1 / chance
    forecast: float  # demand per period


def croston(periods: Sequence[float], alpha: float = ALPHA) -> Smoothed:
    """Size / interval. Starts with the first demand and the periods until it; 0 where nothing was ever used."""
    size = interval = 0.0
    waited = 0
    for amount in periods:
        waited += 1
        if amount <= 0:
            continue
        if size:
            size += alpha * (amount - size)
            interval += alpha * (waited - interval)
        else:
            size, interval = amount, float(waited)
        waited = 0
    return Smoothed(size, interval, size / interval if interval else 0.0)


def syntetos_boylan(periods: Sequence[float], alpha: float = ALPHA) -> Smoothed:
    """Croston's forecast × (1 - alpha / 2)."""
    return corrected(croston(periods, alpha), alpha)


def corrected(plain: Smoothed, alpha: float = ALPHA) -> Smoothed:
    """The correction of Syntetos and Boylan on a forecast that Croston's method made."""
    return Smoothed(plain.size, plain.interval, (1 - alpha / 2) * plain.forecast)


def teunter_syntetos_babai(periods: Sequence[float], alpha: float = ALPHA, beta: float = ALPHA) -> Smoothed:
    """Size × chance; the chance is smoothed by `beta` in every period, the size by `alpha` at each demand."""
    size = 0.0
    chance = float(periods[0] > 0) if periods else 0.0
    for at, amount in enumerate(periods):
        if at:
            chance += beta * ((amount > 0) - chance)
        if amount > 0:
            size = size + alpha * (amount - size) if size else amount
    return Smoothed(size, 1 / chance if chance else 0.0, size * chance)
