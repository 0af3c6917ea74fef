"""A logarithmic axis of torque: where a value stands, and which round values are written at it."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass

ROUND = (1, 2, 5)


@dataclass(frozen=True, slots=True)
class Axis:
    """From `low` to `high` N·m over a length (columns or points)."""

    low: float
    high: float
    length: float

    def at(self, torque_nm: float) -> float:
        """How far along the axis a torque stands; what lies beyond the ends is put on them."""
        part = math.log(max(torque_nm, self.low) / self.low) / math.log(self.high / self.low)
        return min(1.0, part) * self.length

    def ticks(self) -> tuple[float, ...]:
        """The values 1, 2, 5 times a power of ten on the axis."""
        first, last = math.floor(math.log10(self.low)), math.ceil(math.log10(self.high))
        found = [step * 10.0**power for power in range(first, last + 1) for step in ROUND]
        return tuple(value for value in found if self.low <= value * (1 + 1e-9) and value <= self.high * (1 + 1e-9))


def axis_for(values: Iterable[float], length: float) -> Axis:
    """The axis from the round value below the smallest to the one above the largest; 1 to 1000 N·m for nothing."""
    found = [value for value in values if value > 0 and math.isfinite(value)]
    low, high = (min(found), max(found)) if found else (1.0, 1000.0)
    bottom, top = rounded(low, down=True), rounded(high, down=False)
    return Axis(bottom, top if bottom < top else rounded(top * 1.5, down=False), length)


def rounded(value: float, down: bool) -> float:
    """The nearest 1, 2, 5 times a power of ten below or above."""
    power = math.floor(math.log10(value))
    steps = [step * 10.0**at for at in (power - 1, power, power + 1) for step in ROUND]
    if down:
        return max(step for step in steps if step <= value * (1 + 1e-9))
    return min(step for step in steps if step >= value * (1 - 1e-9))
