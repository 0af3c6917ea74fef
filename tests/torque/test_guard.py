"""Guard bands: check values of ILAC-G8 and of the Z540.3 handbook."""

from __future__ import annotations

import pytest

from cribkit.domain.torque.guard import Guard, Rule, acceptance_limit, narrowed, ratio, specific_risk


def test_the_full_guard_of_ilac_g8_takes_the_uncertainty_off():
    # ILAC-G8:09/2019 clause 4: w = U. Computed for T = 4, U = 1.6 (u = 0.8).
    assert ratio(4, 1.6) == 2.5
    assert acceptance_limit(4, 1.6) == pytest.approx(2.4)
    assert acceptance_limit(1, 2) == 0


@pytest.mark.parametrize(("reading", "risk"), [(2.4, 0.02275), (3.2, 0.15866), (4.0, 0.5)])
def test_the_risk_at_a_reading_is_that_of_the_normal_law(reading, risk):
    # ILAC-G8:09/2019: at most 2.5 % with w = U, up to 50 % with w = 0. Values computed from the normal law.
    assert specific_risk(4, reading, 1.6) == pytest.approx(risk, abs=5e-6)


@pytest.mark.parametrize(("tur", "part"), [(1.5, 0.7599), (2, 0.8592), (3, 0.9482), (4, 0.9867), (4.7, 1.0), (10, 1.0)])
def test_the_managed_guard_is_method_6_of_the_z540_3_handbook(tur, part):
    # The formula is from memory: AL = TL - U·(1.04 - exp(0.38 ln TUR - 0.54)).
    assert acceptance_limit(1, 1 / tur, Rule.MANAGED) == pytest.approx(part, abs=5e-5)


@pytest.mark.parametrize(("tur", "part"), [(2, 0.8660), (4, 0.9682), (0.5, 0)])
def test_the_root_of_squares(tur, part):
    # Common practice: AL = TL·sqrt(1 - 1/TUR²).
    assert acceptance_limit(1, 1 / tur, Rule.ROOT) == pytest.approx(part, abs=5e-5)


@pytest.mark.parametrize("rule", Rule)
def test_without_uncertainty_no_rule_takes_anything_off(rule):
    assert acceptance_limit(4, 0, rule) == 4
    assert narrowed(8, 10, 12, Guard(0, rule)) == (8, 12)


def test_the_band_is_narrowed_at_each_stated_limit():
    assert narrowed(8, 10, 12, Guard(0.05)) == pytest.approx((8.5, 11.5))
    assert narrowed(None, 10, 12, Guard(0.05)) == (None, 11.5)
    assert narrowed(8, 10, None, Guard(0.05)) == (8.5, None)
    assert narrowed(8, 10, 12, None) == (8, 12)
    low, high = narrowed(9.9, 10, 10.1, Guard(0.05))
    assert low == high  # nothing is left that any wrench could meet
