"""Offset adapters: published worked examples."""

from __future__ import annotations

import pytest

from cribkit.domain.torque.offset import Offset, factor

IN, FT = 25.4, 304.8


@pytest.mark.parametrize(
    ("torque", "lever", "adapter", "angle", "setting", "digits"),
    [
        (300, 10 * IN, 4 * IN, 0, 214.2857, 4),  # TM 1-1500-204-23-9 paragraph 8-5 (printed: 214)
        (40, 12 * IN, 4 * IN, 0, 30, 9),  # TM 9-2350-277-40&P page 44, TM 9-2350-261-20-1 page 2-29
        (100, 12 * IN, 6 * IN, 0, 66.6667, 4),  # US Navy training manual 14315 figure 3-45 (printed: 66.7)
        (135, 10 * IN, 1.5 * IN, 0, 117.39, 2),  # a rotorcraft maintenance manual figure 20-1 (printed: 117)
        (135, 10 * IN, 1.5 * IN, 180, 158.82, 2),  # the same, figure 20-2, shortening (printed: 159)
        (30, 1 * FT, 0.25 * FT, 0, 24, 9),  # an aircraft maintenance manual page 2-90
        (20, 14 * IN, 3 * IN, 0, 16.4706, 4),  # a service manual (printed: 16.5)
        (50, 16 * IN, 2 * IN, 0, 44.44, 2),  # a hand-tool leaflet
        (30, 12 * IN, 6 * IN, 0, 20, 9),  # a published training example
        (80, 40, 5, 0, 71.1111, 4),  # from here on computed from L/(L + E·cos a)
        (80, 40, 5, 45, 73.5032, 4),
        (80, 40, 5, 90, 80, 12),
        (80, 40, 5, 270, 80, 12),
        (80, 40, 5, 180, 91.4286, 4),
    ],
)
def test_the_setting_is_that_of_the_published_example(torque, lever, adapter, angle, setting, digits):
    assert torque * factor(lever, Offset(adapter, angle)) == pytest.approx(setting, abs=0.51 * 10**-digits)


def test_the_torque_applied_follows_from_the_setting():
    # TM 9-254 figure 4-5, the other way round: set 60 in-lb, lever 12 in, adapter 2 in, actual 70 in-lb.
    assert 60 / factor(12 * IN, Offset(2 * IN)) == pytest.approx(70)


@pytest.mark.parametrize(
    ("lever", "offset"),
    [
        (0, Offset(40)),
        (-100, Offset(40)),
        (float("nan"), Offset(40)),
        (float("inf"), Offset(40)),
        (40, Offset(40, 180)),
    ],
)
def test_a_lever_that_is_none_is_refused(lever, offset):
    with pytest.raises(ValueError, match="lever"):
        factor(lever, offset)
