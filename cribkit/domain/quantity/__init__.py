"""Units and how people write them."""

from cribkit.domain.quantity.amount import Amount, format_amount, parse_amount, parse_angle_deg, parse_length_mm
from cribkit.domain.quantity.torque import Torque, format_torque, parse_torque
from cribkit.domain.quantity.units import TorqueUnit, torque_unit

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
