"""Guard bands: taking the uncertainty of a calibration off the tolerance.

ILAC-G8:09/2019 clause 4: the acceptance limit is AL = TL - w. w = 0 is simple acceptance (up to 50 % specific risk
at the limit); w = U, the expanded uncertainty for 95 %, keeps the risk to at most 2.5 %. Two more rules make w a part
of U: method 6 of the handbook to ANSI/NCSL Z540.3 (from memory) and the root of squares (common practice).
"""

from __future__ import annotations

import math
from enum import StrEnum
from typing import NamedTuple


class Rule(StrEnum):
    """How wide the guard band is, for a tolerance TL (half a span) and an expanded uncertainty U of 95 %."""

    FULL = "full"  # ILAC-G8: w = U
    MANAGED = "managed"  # Z540.3 handbook method 6: w = U·(1.04 - exp(0.38 ln TUR - 0.54)), never below 0
    ROOT = "root"  # AL = TL·sqrt(1 - 1/TUR²)


class Guard(NamedTuple):
    """The calibration's expanded uncertainty as a fraction of the torque, and the rule that uses it."""

    uncertainty: float
    rule: Rule = Rule.FULL


def ratio(tolerance: float, uncertainty: float) -> float:
    """Test uncertainty ratio TUR = T / U95, both as half spans; infinite without uncertainty."""
    return math.inf if uncertainty == 0 else tolerance / uncertainty


def acceptance_limit(tolerance: float, uncertainty: float, rule: Rule = Rule.FULL) -> float:
    """The limit AL inside the tolerance limit TL; 0 where nothing can be accepted. Same unit as given."""
    if uncertainty == 0:
        return tolerance
    tur = ratio(tolerance, uncertainty)
    match rule:
        case Rule.FULL:
            limit = tolerance - uncertainty
        case Rule.MANAGED:
            managed = 1.04 - math.exp(0.38 * math.log(tur) - 0.54) if tur > 0 else 1.0
            limit = tolerance - uncertainty * max(0.0, managed)
        case Rule.ROOT:
            limit = tolerance * math.sqrt(1 - 1 / tur**2) if tur > 1 else 0.0
    return max(0.0, limit)


def specific_risk(tolerance: float, reading: float, uncertainty: float) -> float:
    """The chance that the true value lies above the upper limit when this was read; U = 2 u, normal law.

    As the examples of ILAC-G8 do: one limit, the expanded uncertainty for k = 2.
    """
    if uncertainty == 0:
        return float(reading > tolerance)
    return 0.5 * math.erfc((tolerance - reading) / (uncertainty / 2) / math.sqrt(2))


def narrowed(
    low: float | None, target: float, high: float | None, guard: Guard | None
) -> tuple[float | None, float | None]:
    """The band with its guard taken off each stated limit. U is the guard's fraction of the target."""
    if guard is None or guard.uncertainty == 0:
        return low, high
    uncertainty = guard.uncertainty * target
    if low is not None and high is not None:
        half = (high - low) / 2
        taken = half - acceptance_limit(half, uncertainty, guard.rule)
        return low + taken, high - taken
    return (None if low is None else low + uncertainty, None if high is None else high - uncertainty)
