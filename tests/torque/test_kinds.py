"""The table of torque tools, and due dates."""

from __future__ import annotations

import datetime as dt

import pytest
from dateutil.relativedelta import relativedelta
from hypothesis import given
from hypothesis import strategies as st

from cribkit.domain.problem import BadInput
from cribkit.domain.torque import add_months, due_date, mechanism, mechanisms


# ISO 6789-1:2017. II A: seen in a torque test device's manual that reviews the standard. The others: from memory.
@pytest.mark.parametrize(
    ("name", "iso", "upto_10", "above_10", "readings"),
    [
        ("click", "II A", 0.06, 0.04, 5),
        ("fixed", "II B", 0.06, 0.04, 10),
        ("non-graduated", "II C", 0.06, 0.04, 10),
        ("screwdriver-click", "II D", 0.06, 0.06, 5),
        ("screwdriver-fixed", "II E", 0.06, 0.06, 10),
        ("screwdriver-non-graduated", "II F", 0.06, 0.06, 10),
        ("flexion-bar-setting", "II G", 0.06, 0.06, 5),
        ("beam", "I A", 0.06, 0.06, 5),
        ("dial", "I B", 0.06, 0.04, 5),
        ("electronic", "I C", 0.06, 0.04, 5),
        ("screwdriver-dial", "I D", 0.06, 0.06, 5),
        ("screwdriver-electronic", "I E", 0.06, 0.04, 5),
    ],
)
def test_each_kind_has_its_permissible_deviation(name, iso, upto_10, above_10, readings):
    kind = mechanism(name)
    assert (kind.iso, kind.deviation(10), kind.deviation(10.1), kind.readings) == (iso, upto_10, above_10, readings)
    assert kind.indicating is iso.startswith("I ")


def test_every_kind_is_checked_above():
    assert len(mechanisms()) == 12
    assert sorted(kind.iso for kind in mechanisms().values()) == [f"I {c}" for c in "ABCDE"] + [
        f"II {c}" for c in "ABCDEFG"
    ]


@pytest.mark.parametrize(
    ("text", "name"),
    [("Click", "click"), ("preset", "fixed"), ("non graduated", "non-graduated"), ("digital", "electronic"),
     ("screwdriver_dial", "screwdriver-dial")],
)  # fmt: skip
def test_people_write_kinds_in_other_words(text, name):
    assert mechanism(text).name == name


def test_a_word_names_one_kind_only():
    words = [word for kind in mechanisms().values() for word in (kind.name.replace("-", " "), *kind.also)]
    assert len(words) == len(set(words))


def test_an_unknown_kind_is_refused_with_the_known_ones():
    with pytest.raises(BadInput, match=r"clicky.*write one of: beam"):
        mechanism("clicky")


@given(st.dates(dt.date(1990, 1, 1), dt.date(2090, 1, 1)), st.integers(-240, 240))
def test_months_are_added_as_dateutil_does(day, months):
    assert add_months(day, months) == day + relativedelta(months=months)


@pytest.mark.parametrize(
    ("day", "months", "due"),
    [("2025-01-31", 1, "2025-02-28"), ("2024-01-31", 1, "2024-02-29"), ("2024-02-29", 12, "2025-02-28"),
     ("2024-02-29", 48, "2028-02-29"), ("2025-08-31", 6, "2026-02-28")],
)  # fmt: skip
def test_a_due_date_is_clipped_to_the_end_of_the_month(day, months, due):
    # Computed with python-dateutil's relativedelta; ISO 8601 leaves the overflow open.
    assert due_date(dt.date.fromisoformat(day), months) == dt.date.fromisoformat(due)
    assert due_date(None, months) is None
