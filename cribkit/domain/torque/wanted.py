"""The torque that a fastener wants: a target and the band around it."""

from __future__ import annotations

from dataclasses import dataclass

from cribkit.domain.quantity import TorqueUnit

SLACK = 1e-9  # torques are compared with this relative slack: units convert to floats that differ in the last digits


@dataclass(frozen=True, slots=True)
class Wanted:
    """Target and limits in N·m; a limit of None is open. Both None: a bare value, with no tolerance stated."""

    text: str
    unit: TorqueUnit  # the unit that it was written in
    target_nm: float
    low_nm: float | None = None
    high_nm: float | None = None

    @property
    def banded(self) -> bool:
        """Whether it states any limit."""
        return self.low_nm is not None or self.high_nm is not None

    @property
    def most_nm(self) -> float:
        """The largest torque that it asks for: what everything on the way must bear."""
        return max(self.target_nm, self.high_nm or 0.0, self.low_nm or 0.0)


def at_most(value: float, limit: float) -> bool:
    """value <= limit, with the relative slack."""
    return value <= limit + SLACK * max(abs(value), abs(limit))
