"""Due dates: months against python-dateutil, both policies, both starts, cycles and their forecast."""

import datetime as dt

import pytest
from dateutil.relativedelta import relativedelta
from hypothesis import given
from hypothesis import strategies as st

from cribkit.domain.calibration.due import Due, Policy, Standing, Start, Terms, Use, due, forecast, last_good_day

DAY = dt.date.fromisoformat


# python-dateutil 2.9 relativedelta, worked with the library.
@pytest.mark.parametrize(
    ("begins", "months", "last"),
    [
        ("2025-01-31", 1, "2025-02-28"),
        ("2024-01-31", 1, "2024-02-29"),
        ("2024-02-29", 12, "2025-02-28"),
        ("2024-02-29", 48, "2028-02-29"),
        ("2025-08-31", 6, "2026-02-28"),
        ("2025-12-31", 2, "2026-02-28"),
    ],
)
def test_a_month_too_short_for_the_day_ends_the_calibration_on_its_last_day(
    begins: str, months: int, last: str
) -> None:
    assert last_good_day(DAY(begins), months) == DAY(last)


def test_the_whole_interval_is_added_to_the_calibration_date_never_to_a_clipped_one() -> None:
    january = DAY("2025-01-31")
    assert [last_good_day(january, n) for n in (1, 2, 3)] == [DAY("2025-02-28"), DAY("2025-03-31"), DAY("2025-04-30")]
    chained = january
    for _ in range(3):
        chained = last_good_day(chained, 1)
    assert chained == DAY("2025-04-28")


@given(st.dates(dt.date(1950, 1, 1), dt.date(2150, 12, 31)), st.integers(1, 240))
def test_months_agree_with_python_dateutil(begins: dt.date, months: int) -> None:
    assert last_good_day(begins, months) == begins + relativedelta(months=months)


@given(st.dates(dt.date(1950, 1, 1), dt.date(2150, 12, 31)), st.integers(1, 240))
def test_end_of_month_is_the_last_day_of_the_same_month(begins: dt.date, months: int) -> None:
    # relativedelta(day=31) clips to the month's last day.
    assert last_good_day(begins, months, Policy.END_OF_MONTH) == begins + relativedelta(months=months, day=31)


def test_a_calibration_is_good_through_its_last_day() -> None:
    ends = due(DAY("2025-11-25"), Terms(12, None), Use(), DAY("2026-11-25"))
    assert ends.until == DAY("2026-11-25")
    assert ends.standing(DAY("2026-11-25")) is Standing.SOON
    assert ends.standing(DAY("2026-11-26")) is Standing.OVERDUE
    assert ends.standing(DAY("2026-10-26"), within=30) is Standing.SOON
    assert ends.standing(DAY("2026-10-25"), within=30) is Standing.GOOD


def test_the_interval_may_start_at_first_use() -> None:
    terms = Terms(12, 5000, start=Start.FIRST_USE)
    unused = due(DAY("2025-01-10"), terms, Use(), DAY("2026-06-01"))
    assert (unused.calendar, unused.started) == (DAY("2027-06-01"), False)
    used = due(DAY("2025-01-10"), terms, Use(DAY("2025-03-15"), 10), DAY("2026-06-01"))
    assert (used.calendar, used.started) == (DAY("2026-03-15"), True)


def test_the_earlier_of_calendar_and_cycles_decides() -> None:
    # 4,000 of 5,000 cycles in 100 days: 40 a day, the last thousand last 25 days, today counted.
    worn = due(DAY("2026-01-01"), Terms(), Use(DAY("2026-01-01"), 4000), DAY("2026-04-11"))
    assert (worn.cycles_left, worn.cycles_until, worn.by) == (1000, DAY("2026-05-05"), "cycles")
    rested = due(DAY("2026-01-01"), Terms(), Use(DAY("2026-01-01"), 100), DAY("2026-04-11"))
    assert (rested.until, rested.by) == (DAY("2027-01-01"), "calendar")


@pytest.mark.parametrize(
    ("used", "standing"), [(4999, Standing.SOON), (5000, Standing.OVERDUE), (6000, Standing.OVERDUE)]
)
def test_no_cycle_left_is_overdue(used: int, standing: Standing) -> None:
    today = DAY("2026-04-11")
    assert due(DAY("2026-04-01"), Terms(), Use(DAY("2026-04-01"), used), today).standing(today, 30) is standing


def test_without_any_clock_it_never_falls_due() -> None:
    ends = due(DAY("2000-01-01"), Terms(None, None), Use(DAY("2000-02-01"), 10**6), DAY("2026-01-01"))
    assert ends == Due(None, None, None)
    assert (ends.until, ends.by, ends.standing(DAY("2026-01-01"), 9999)) == (None, "", Standing.GOOD)


@given(st.integers(1, 10**6), st.integers(1, 10**6), st.integers(0, 4000))
def test_the_forecast_never_lasts_longer_than_the_mean_rate_allows(left: int, used: int, days: int) -> None:
    since = DAY("2015-01-01")
    today = since + dt.timedelta(days=days)
    last = forecast(left, used, since, today)
    assert last is not None
    ahead = (last - today).days
    if last < dt.date.max:
        assert ahead * used < left * max(1, days) <= (ahead + 1) * used
