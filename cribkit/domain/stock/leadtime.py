"""How long a supplier takes: stated, or learned from the orders that came in."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from cribkit.domain.stock.demand import sample_variance

ASSUMED_DAYS = 14  # where nothing is known; every line that rests on it says so
TELLING = 3  # deliveries from which on the record counts more than what the supplier states (our own rule)


@dataclass(frozen=True, slots=True)
class Lead:
    """A lead time in days, how much it varies, and where that is known from."""

    days: float
    sd: float = 0.0
    source: str = "stated"  # "stated", "learned from 5 deliveries", "assumed"

    @property
    def assumed(self) -> bool:
        return self.source == "assumed"


def lead_time(stated: float | None, taken: Sequence[float]) -> Lead:
    """Mean and sample standard deviation of the days that deliveries took; fewer than three: the stated time."""
    if len(taken) >= TELLING:
        mean = math.fsum(taken) / len(taken)
        return Lead(mean, math.sqrt(sample_variance(taken)), f"learned from {len(taken)} deliveries")
    return Lead(ASSUMED_DAYS, source="assumed") if stated is None else Lead(stated)
