"""Units and how people write them."""

from typing import TYPE_CHECKING, Any

from cribkit.domain.quantity.measure import Amount, format_amount

if TYPE_CHECKING:
    from cribkit.domain.quantity.amount import parse_amount, parse_angle_deg, parse_length_mm
    from cribkit.domain.quantity.torque import Torque, parse_torque
    from cribkit.domain.quantity.units import TorqueUnit, format_torque, torque_unit

# Readers are imported when they are first used: their patterns cost several ms, and a check of procedures and
# wrenches that were read before needs few of them.
LATE = {
    "Torque": "torque",
    "TorqueUnit": "units",
    "format_torque": "units",
    "parse_amount": "amount",
    "parse_angle_deg": "amount",
    "parse_length_mm": "amount",
    "parse_torque": "torque",
    "torque_unit": "units",
}


def __getattr__(name: str) -> Any:
    if name not in LATE:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    from importlib import import_module

    return getattr(import_module(f"{__name__}.{LATE[name]}"), name)


__all__ = [
    "Amount",
    "Torque",
    "TorqueUnit",
    "format_amount",
    "format_torque",
    "parse_amount",
    "parse_angle_deg",
    "parse_length_mm",
    "parse_torque",
    "torque_unit",
]
