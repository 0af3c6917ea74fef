"""Wrenches for the tests, said shortly. Every one is invented."""

from __future__ import annotations

import datetime as dt
from typing import Any

from cribkit.domain.quantity import torque_unit
from cribkit.domain.torque import Scale, Wrench

TODAY = dt.date(2026, 11, 25)
GOOD = dt.date(2026, 3, 2)


def scale(low: float, high: float, unit: str = "N·m", graduation: float = 1.0) -> Scale:
    """One scale."""
    return Scale(torque_unit(unit), low, high, graduation)


def wrench(low: float, high: float, unit: str = "N·m", graduation: float = 1.0, **more: Any) -> Wrench:
    """A click wrench in calibration, if nothing else is said."""
    facts: dict[str, Any] = {
        "tag": "TW-1",
        "description": "torque wrench",
        "mechanism": "click",
        "accuracy": 0.04,
        "drive": "3/8",
        "calibrated_on": GOOD,
    }
    scales = (scale(low, high, unit, graduation), *more.pop("second", ()))
    return Wrench(scales=scales, **(facts | more))
