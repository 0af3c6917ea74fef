"""Amounts of stock as whole thousandths of the item's unit, so that sums are exact: 1 each = 1000, 120 mL = 120000."""

from __future__ import annotations

STEP = 1000  # parts of one unit


def parts(amount: float) -> int:
    """An amount in the item's unit as whole thousandths."""
    return round(amount * STEP)


def whole(amount: int) -> float:
    """Thousandths as an amount in the item's unit."""
    return amount / STEP
