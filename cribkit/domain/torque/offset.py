"""The correction for an offset adapter (a crowfoot or spanner end) on a torque wrench.

The wrench measures at its own square. An adapter that carries the fastener a distance E away from that square, at
angle a to the handle's axis, changes the lever from L to L + E·cos a, so the wrench must be set to
T·L / (L + E·cos a). Source: TM 1-1500-204-23-9 paragraph 8-5; the angled form uses the length projected on the
handle's axis (US Navy training text). Straight out (0°) lowers the setting, square to the handle (90°) leaves it as
it is, back over the handle (180°) raises it. Extensions in line with the square need no correction (figure 8-15
there).
"""

from __future__ import annotations

import math
from typing import NamedTuple

SQUARE_TO_HANDLE = 1e-12  # a cosine below this is 90 degrees: floating cos(90°) is 6e-17


class Offset(NamedTuple):
    """An offset adapter as it is used: length in mm from square to fastener, angle in degrees to the handle."""

    length_mm: float
    angle_deg: float = 0.0
    handle_mm: float = 0.0  # an extension handle on the grip's end

    @property
    def along_mm(self) -> float:
        """How far the adapter lengthens the lever; negative where it points back over the handle."""
        cosine = math.cos(math.radians(self.angle_deg))
        return 0.0 if abs(cosine) < SQUARE_TO_HANDLE else self.length_mm * cosine


def factor(lever_mm: float, offset: Offset) -> float:
    """What the fastener's torque is multiplied by to get the wrench's: L / (L + E·cos a).

    ValueError where the lever is not a positive length, or the adapter points back past the grip.
    """
    if not lever_mm > 0 or not math.isfinite(lever_mm):
        raise ValueError("the lever length must be more than nothing")
    lever = lever_mm + offset.along_mm
    if not lever > 0:
        raise ValueError("the adapter points back past the grip: no lever is left")
    return lever_mm / lever
