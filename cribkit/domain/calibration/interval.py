"""Advice on calibration intervals, by three published methods. Advice only: nobody's interval is changed by it.

- staircase: ILAC-G24 / OIML D 10:2022 cl. 6, method 1 (automatic adjustment); the ladder and the 80 % are examples from
  memory.
- simple response: NCSLI RP-1 method A1 (formula from memory): I·(1 + a) when found in tolerance, I·(1 − b) when not.
- exponential rescale: reliability exp(−λ·I), so that I₂ = I₁·ln(target) / ln(observed).
"""

from __future__ import annotations

import math
from dataclasses import dataclass

LADDER = (1, 2, 3, 4, 6, 9, 12, 18, 24, 36)  # months
COMFORT = 0.80  # of the limit: found inside it, the interval may grow
GROWTH = 0.10  # a of the simple response
TARGET = 0.95  # the share that ought to be found in tolerance
SHORTEST, LONGEST = 1.0, 36.0  # months
MOST_GROWTH = 1.5  # in one adjustment


@dataclass(frozen=True, slots=True)
class Advice:
    """An interval that a method proposes, months, and what it was worked out from."""

    method: str
    months: float
    why: str


def staircase(months: int, worst_share: float) -> Advice:
    """One rung up, the same, or one rung down.

    `worst_share` is the largest as-found deviation as a share of the limit: up to 80 % up, up to 100 % the same.
    """
    told = f"the worst as-found reading took {worst_share * 100:.0f} % of the limit"
    if worst_share > 1 + 1e-9:
        shorter = [rung for rung in LADDER if rung < months]
        return Advice("staircase", float(shorter[-1] if shorter else LADDER[0]), f"{told}: one step shorter")
    if worst_share > COMFORT + 1e-9:
        return Advice("staircase", float(months), f"{told}: keep it")
    longer = [rung for rung in LADDER if rung > months]
    return Advice("staircase", float(longer[0] if longer else months), f"{told}: one step longer")


def shrink(growth: float = GROWTH, target: float = TARGET) -> float:
    """b of the simple response: (1 + a)^R·(1 − b)^(1 − R) = 1 keeps the interval steady when R are found good."""
    return float(1 - (1 + growth) ** (-target / (1 - target)))


def simple_response(months: float, good: bool, growth: float = GROWTH, target: float = TARGET) -> Advice:
    """NCSLI RP-1 method A1 on one as-found result."""
    part = 1 + growth if good else 1 - shrink(growth, target)
    told = "in" if good else "out of"
    why = f"found {told} tolerance: {months:.6g} months x {part:.4f} (a = {growth:.2f}, target {target * 100:.3g} %)"
    return Advice("simple response", months * part, why)


def rescale(
    months: float,
    good: int,
    tested: int,
    target: float = TARGET,
    bounds: tuple[float, float] = (SHORTEST, LONGEST),
    most_growth: float = MOST_GROWTH,
) -> Advice:
    """Exponential rescale on the results of like wrenches, inside bounds and with growth capped.

    All found good leaves the formula without a value: the cap decides. None found good gives the shortest.
    """
    if not 0 <= good <= tested or tested < 1:
        raise ValueError("the good ones are a part of those tested, and one at least was tested")
    told = f"{good} of {tested} found in tolerance, target {target * 100:.3g} %"
    low, high = bounds
    proposed = proposal(months, good / tested, target)
    capped = max(low, min(proposed, months * most_growth, high))
    if capped != proposed:
        told += f"; held between {low:.6g} and {min(high, months * most_growth):.6g} months"
    return Advice("exponential rescale", capped, told)


def proposal(months: float, observed: float, target: float) -> float:
    """I₁·ln(target) / ln(observed) without any cap: infinite when all were good, 0 when none was."""
    if observed >= 1:
        return math.inf
    if observed <= 0:
        return 0.0
    return months * math.log(target) / math.log(observed)
