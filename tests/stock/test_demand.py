"""From uses on record to usual demand: periods, patterns, methods, outliers."""

import datetime as dt
import json
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from cribkit.domain.stock.demand import (
    Method,
    Pattern,
    Use,
    cap_outliers,
    pattern_of,
    periods_of,
    usual,
)
from cribkit.domain.stock.forecast import croston, syntetos_boylan, teunter_syntetos_babai

TODAY = dt.date(2026, 11, 30)
Y1 = [0, 0, 5, 0, 0, 0, 3, 0, 4, 0, 0, 6]
Y2 = [6, 0, 0, 3, 0, 0, 0, 4, 0, 2, 0, 0]
REFERENCE = json.loads((Path(__file__).parent / "data" / "intermittent.json").read_text(encoding="utf-8"))


def weeks_ago(count: float) -> dt.date:
    return TODAY - dt.timedelta(days=round(7 * count))


def weekly(amounts: list[float]) -> list[Use]:
    """One use in each week, the last of them in the week that ends today."""
    return [Use(weeks_ago(len(amounts) - 1 - at), amount) for at, amount in enumerate(amounts) if amount]


@pytest.mark.parametrize("row", REFERENCE["rows"], ids=range(len(REFERENCE["rows"])))
def test_forecasts_agree_with_a_reference_library(row: dict[str, list[float]]) -> None:
    """tests/stock/data/intermittent.json names the library and its version."""
    demand = row["demand"]
    assert croston(demand, 0.1).forecast == pytest.approx(row["croston"])
    assert syntetos_boylan(demand, 0.1).forecast == pytest.approx(row["sba"])
    assert teunter_syntetos_babai(demand, 0.1, 0.1).forecast == pytest.approx(row["tsb_01_01"])
    assert teunter_syntetos_babai(demand, 0.2, 0.3).forecast == pytest.approx(row["tsb_02_03"])


def test_the_smoothed_figures_of_a_worked_example() -> None:
    """Worked by hand after Croston (1972) with smoothing 0.1; the last agrees with statsforecast 2.1.1."""
    found = croston(Y1, 0.1)
    assert (found.size, found.interval, found.forecast) == pytest.approx((4.848, 2.991, 1.62086259))
    running = [croston(Y1[:end], 0.1).forecast for end in (3, 7, 9, 12)]
    assert running == pytest.approx([1.666667, 1.548387, 1.578595, 1.620863], abs=5e-7)
    assert (croston(Y2, 0.2).forecast, syntetos_boylan(Y2, 0.2).forecast) == pytest.approx((2.32231405, 2.09008264))
    assert teunter_syntetos_babai(Y2, 0.2, 0.2).forecast == pytest.approx(1.48086451)


def test_only_the_third_method_falls_while_nothing_is_used() -> None:
    quiet = [*Y1, 0, 0, 0, 0, 0, 0]
    assert croston(quiet).forecast == croston(Y1).forecast
    assert teunter_syntetos_babai(quiet).forecast < teunter_syntetos_babai(Y1).forecast


@pytest.mark.parametrize(
    ("periods", "pattern"),
    [
        ([4, 5, 4, 6, 5, 4], Pattern.SMOOTH),
        ([1, 30, 2, 1, 25, 1], Pattern.ERRATIC),
        (Y1, Pattern.INTERMITTENT),
        ([0, 0, 1, 0, 0, 30, 0, 2, 0], Pattern.LUMPY),
        ([0, 0, 0], Pattern.NONE),
        ([], Pattern.NONE),
        ([1] * 100 + [0] * 32, Pattern.INTERMITTENT),  # an interval of exactly 1.32 is no longer often
        ([1] * 100 + [0] * 31, Pattern.SMOOTH),
    ],
)
def test_patterns_follow_the_published_cut_offs(periods: list[float], pattern: Pattern) -> None:
    """Interval 1.32 and squared coefficient of variation 0.49: Syntetos, Boylan and Croston (2005)."""
    assert pattern_of(periods) == pattern


@pytest.mark.parametrize(
    ("amounts", "method"),
    [
        ([5, 4, 5, 6, 5, 4, 5, 5, 6, 4], Method.CROSTON),
        (Y1, Method.SBA),
        ([*Y1, *[0] * 12], Method.TSB),
        ([0, 0, 0, 4, 0, 0, 0, 0, 0, 0], Method.MEAN),
        ([0] * 10, Method.NONE),
    ],
)
def test_the_method_follows_from_the_pattern_and_is_named(amounts: list[float], method: Method) -> None:
    found = usual(weekly(amounts), weeks_ago(len(amounts)) + dt.timedelta(days=1), TODAY, counted=True)
    assert (found.days, len(found.periods), found.method) == (7, len(amounts), method)


def test_a_week_is_seven_days_back_from_today_and_an_unfinished_oldest_one_is_left_out() -> None:
    since = TODAY - dt.timedelta(days=59)
    uses = [Use(TODAY, 1), Use(TODAY - dt.timedelta(days=6), 2), Use(TODAY - dt.timedelta(days=7), 4), Use(since, 99)]
    assert periods_of(uses, since, TODAY) == (7, [0, 0, 0, 0, 0, 0, 4, 3])


def test_a_short_record_is_seen_by_the_day() -> None:
    since = TODAY - dt.timedelta(days=2)
    assert periods_of([Use(TODAY, 1), Use(since, 2)], since, TODAY) == (1, [2, 0, 1])


def test_a_correction_is_taken_off_its_period_and_never_below_nothing() -> None:
    uses = [Use(TODAY, 5), Use(TODAY, -2), Use(weeks_ago(1), -3)]
    assert periods_of(uses, weeks_ago(8), TODAY)[1] == [0, 0, 0, 0, 0, 0, 0, 3]


def test_no_record_at_all_is_no_demand() -> None:
    for since in (TODAY, TODAY + dt.timedelta(days=3)):
        found = usual([], since, TODAY, counted=True)
        assert (found.pattern, found.method, found.per_day.mean, found.per_day.variance) == ("none", "none", 0, 0)


def test_one_giant_outlier_is_capped_and_named() -> None:
    amounts = [4, 5, 3, 4, 6, 5, 4, 5_000, 4, 5]
    plain = usual(weekly([4, 5, 3, 4, 6, 5, 4, 4, 4, 5]), weeks_ago(10), TODAY, counted=True)
    found = usual(weekly(amounts), weeks_ago(10), TODAY, counted=True)
    (giant,) = found.outliers
    assert (giant.on, giant.amount) == (weeks_ago(2), 5_000)
    assert giant.counted_as <= 25
    assert found.per_day.mean < 2 * plain.per_day.mean


def test_a_lively_item_of_few_uses_keeps_its_largest_use() -> None:
    assert cap_outliers([0, 1, 0, 50, 0, 1], 7, TODAY)[1] == ()


def test_equal_amounts_are_no_reason_to_call_a_double_one_an_outlier() -> None:
    assert cap_outliers([4, 4, 4, 4, 4, 8], 7, TODAY)[1] == ()


def test_variance_of_a_dying_item_is_that_of_rare_demand_not_of_its_livelier_past() -> None:
    lively = [6, 5, 7, 6, 5, 8, 6, 7]
    found = usual(weekly([*lively, *[0] * 30]), weeks_ago(38), TODAY, counted=True)
    assert found.method == Method.TSB
    assert found.smoothed.forecast < 0.3
    assert found.variance < 2.5


def test_a_single_period_has_the_variance_of_poisson() -> None:
    found = usual([Use(TODAY, 3)], TODAY, TODAY, counted=True)
    assert (found.per_day.mean, found.per_day.variance) == (3, 3)


@given(st.lists(st.integers(0, 9), min_size=1, max_size=80), st.floats(0.01, 0.5))
def test_forecasts_stay_between_nothing_and_the_largest_use(amounts: list[int], alpha: float) -> None:
    most = max(amounts)
    for method in (croston, syntetos_boylan, teunter_syntetos_babai):
        assert 0 <= method(amounts, alpha).forecast <= most + 1e-9


@given(st.lists(st.tuples(st.integers(0, 400), st.integers(-3, 9)), max_size=40), st.integers(0, 400))
def test_the_order_of_the_record_does_not_matter(record: list[tuple[int, int]], known: int) -> None:
    uses = [Use(TODAY - dt.timedelta(days=back), float(amount)) for back, amount in record]
    since = TODAY - dt.timedelta(days=known)
    assert usual(uses, since, TODAY, True) == usual(uses[::-1], since, TODAY, True)
