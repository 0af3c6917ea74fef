"""Interval advice against the worked values of the methods."""

import math

import pytest

from cribkit.domain.calibration.interval import rescale, shrink, simple_response, staircase


# ILAC-G24 / OIML D 10:2022 method 1; the 80 % is its example, from memory.
@pytest.mark.parametrize(
    ("months", "share", "proposed"),
    [(12, 0.5, 18), (12, 0.8, 18), (12, 0.81, 12), (12, 1.0, 12), (12, 1.01, 9), (1, 2, 1), (36, 0.1, 36), (10, 2, 9)],
)
def test_the_staircase_goes_one_step(months: int, share: float, proposed: float) -> None:
    assert staircase(months, share).months == proposed


def test_the_simple_response_is_steady_when_the_target_is_met() -> None:
    # NCSLI RP-1 method A1 (formula from memory): b = 1 - (1 + a)^(-R / (1 - R)); R = 0.95, a = 0.10: b = 1 - 1.1^-19.
    b = shrink(0.10, 0.95)
    assert b == pytest.approx(1 - 1.1**-19)
    assert b == pytest.approx(0.8365, abs=5e-5)
    assert (1.10**0.95) * ((1 - b) ** 0.05) == pytest.approx(1)
    assert simple_response(12, True).months == pytest.approx(13.2)
    assert simple_response(12, False).months == pytest.approx(12 * 1.1**-19)


# I2 = I1 ln(target) / ln(observed), worked from the formula: 12 months, target 95 %.
@pytest.mark.parametrize(("good", "tested", "months"), [(17, 20, 3.787), (48, 50, 15.078)])
def test_the_exponential_rescale(good: int, tested: int, months: float) -> None:
    assert rescale(12, good, tested).months == pytest.approx(months, abs=5e-4)


@pytest.mark.parametrize(
    ("good", "tested", "months"),
    [(10, 10, 18.0), (0, 5, 1.0), (99, 100, 18.0), (1, 20, 1.0)],
    ids=["all good: growth is capped", "none good: the shortest", "growth is capped", "not below the shortest"],
)
def test_the_exponential_rescale_keeps_its_bounds(good: int, tested: int, months: float) -> None:
    advice = rescale(12, good, tested)
    assert advice.months == months
    assert "held between 1 and 18 months" in advice.why


@pytest.mark.parametrize(("good", "tested"), [(3, 2), (-1, 2), (0, 0)])
def test_impossible_counts_are_refused(good: int, tested: int) -> None:
    with pytest.raises(ValueError, match="a part of those tested"):
        rescale(12, good, tested)


def test_the_longest_interval_is_kept() -> None:
    assert rescale(36, 10, 10).months == 36
    assert math.isfinite(rescale(36, 10, 10).months)
