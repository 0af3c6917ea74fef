"""Coverage: which wrench applies which torque, and what it is set to."""

from __future__ import annotations

import datetime as dt
from dataclasses import replace

import pytest

from cribkit.domain.torque import Guard, Offset, cover, parse_spec, rank
from tests.torque.makers import GOOD, TODAY, scale, wrench


def verdict(tool, spec, **more):
    """("setting unit" or the reasons) of one coverage."""
    found = cover(tool, parse_spec(spec, more.pop("tolerance", "")), more.pop("on", TODAY), **more)
    return f"{found.setting:g} {found.setting_unit}" if found.covers else found.reasons


# TM 1-1500-204-23-9 chapter 8: accuracy is stated from 20 % of full scale to full scale only. The specs and wrenches
# come from TM 9-2320-269-20-1 page 2-702 (250-275 ft-lb) and TM 9-2330-328-14&P WP 0017 (30 lb-ft with a 0-600
# lb-ft wrench, which that chapter does not allow).
@pytest.mark.parametrize(
    ("full_scale", "spec", "expected"),
    [
        (600, "250-275 ft-lb", "262 ft-lb"),
        (600, "30 lb-ft", ("below-range",)),
        (175, "250-275 ft-lb", ("above-range",)),
        (250, "250-275 ft-lb", ("above-range",)),
        (150, "28-31 ft-lb", ("below-range",)),
    ],
)
def test_the_usable_range_is_20_percent_of_full_scale_up_to_full_scale(full_scale, spec, expected):
    assert verdict(wrench(0, full_scale, "ft-lb", graduation=2), spec) == expected


# Computed from the definition: lo(1+p) <= hi(1-p). 12-13 lb-ft at 4 % is just possible, at 12.48 alone.
@pytest.mark.parametrize(
    ("spec", "graduation", "accuracy", "expected"),
    [
        ("12-13 lb-ft", 0.01, 0.04, "12.48 ft-lb"),
        ("12-13 lb-ft", 0.1, 0.04, ("too-coarse",)),
        ("12-13 lb-ft", 0.01, 0.0401, ("not-accurate-enough",)),
        ("16-18 lb-ft", 0.5, 0.04, "17 ft-lb"),
        ("37-43 lb-ft", 0.01, 0.06, "40 ft-lb"),
    ],
)
def test_the_whole_applied_band_must_lie_inside_the_spec(spec, graduation, accuracy, expected):
    assert verdict(wrench(5, 50, "ft-lb", graduation, accuracy=accuracy), spec) == expected


def test_the_applied_band_is_that_of_iso_6789():
    # ISO 6789: a = (set - applied) / applied; set 100 N·m within ±4 % applies 96.1538... to 104.1667 N·m.
    found = cover(wrench(20, 200), parse_spec("100 N·m"), TODAY)
    assert (found.setting, found.position_pct) == (100, 50)
    assert found.applied_low_nm == pytest.approx(96.153846, abs=1e-6)
    assert found.applied_high_nm == pytest.approx(104.166667, abs=1e-6)


@pytest.mark.parametrize(
    ("low", "high", "graduation", "spec", "expected"),
    [
        (20, 100, 5, "52.5 N·m", "50 N·m"),  # of two equally near marks the lower
        (20, 100, 5, "52.6 N·m", "55 N·m"),
        (20, 100, 5, "49 N·m", ("too-coarse",)),  # 5 is more than a tenth of 49
        (20, 100, 10, "99 N·m", ("too-coarse",)),
        (20, 100, 10, "100 N·m", "100 N·m"),
        (5, 25, 0.25, "10 N·m", "10 N·m"),
        (10, 50, 0.5, "9.9 N·m", ("below-range",)),  # no tolerance to lean on, although 10 is the nearest mark
        (4, 20, 1, "20.4 N·m", ("above-range",)),
        (4, 20, 0, "10 N·m", ("too-coarse",)),  # a graduated wrench without a graduation says nothing
    ],
)
def test_a_bare_value_takes_the_nearest_mark_if_the_marks_are_fine_enough(low, high, graduation, spec, expected):
    assert verdict(wrench(low, high, graduation=graduation), spec) == expected


def test_limits_on_one_side_take_the_nearest_mark_that_keeps_them():
    assert verdict(wrench(20, 200), "at least 90 N·m") == "94 N·m"  # 90 x 1.04 = 93.6
    assert verdict(wrench(5, 50), "max 25 N·m") == "24 N·m"  # 25 x 0.96
    assert verdict(wrench(0, 100, graduation=10), "at least 25 N·m") == ("too-coarse",)


def test_a_limited_calibration_narrows_the_range():
    tool = wrench(20, 100, limited_nm=(40, 60))
    assert verdict(tool, "30 N·m") == ("below-range",)
    assert verdict(tool, "70 N·m") == ("above-range",)
    assert verdict(tool, "50 N·m") == "50 N·m"
    assert verdict(replace(tool, limited_nm=(200, 300)), "50 N·m") == ("unfit",)


def test_the_limit_of_iso_6789_holds_where_no_accuracy_is_stated():
    assert wrench(2, 10, accuracy=None).deviation == 0.06
    assert wrench(2, 10.5, accuracy=None).deviation == 0.04
    assert wrench(20, 88, "in-lb", accuracy=None).deviation == 0.06  # 9.94 N·m
    assert wrench(20, 100, mechanism="beam", accuracy=None).deviation == 0.06


def test_a_wrench_with_two_scales_uses_the_scale_in_the_unit_of_the_spec():
    tool = wrench(20, 100, graduation=2, second=(scale(15, 75, "ft-lb", 1.0),))
    assert verdict(tool, "30 ft-lb") == "30 ft-lb"
    assert verdict(tool, "50 N·m") == "50 N·m"
    assert verdict(tool, "400 in-lb") == "46 N·m"  # 45.19 N·m: neither scale is in in-lb, the first serves
    assert verdict(tool, "19-21 ft-lb") == "20 ft-lb"


def test_the_other_scale_serves_where_the_first_is_too_coarse():
    tool = wrench(20, 100, graduation=20, second=(scale(15, 75, "ft-lb", 1.0),))
    assert verdict(tool, "50 N·m") == "37 ft-lb"


def test_a_fixed_wrench_does_its_one_value_and_nothing_else():
    tool = wrench(10, 10, mechanism="fixed", graduation=0)
    assert verdict(tool, "10 N·m") == "10 N·m"
    assert verdict(tool, "9-11 N·m") == "10 N·m"
    assert verdict(tool, "12 N·m") == ("above-range",)
    assert verdict(tool, "8 N·m") == ("below-range",)
    assert verdict(tool, "9.8-10.2 N·m") == ("not-accurate-enough",)


def test_a_wrench_without_a_scale_is_set_on_a_tester():
    tool = wrench(5, 25, mechanism="non-graduated", graduation=0)
    found = cover(tool, parse_spec("12.3 N·m"), TODAY)
    assert (found.covers, found.setting) == (True, 12.3)
    assert "torque tester" in found.why[0]


@pytest.mark.parametrize(
    ("change", "reasons"),
    [
        ({"calibrated_on": None}, ("no-calibration",)),
        ({"calibrated_on": TODAY + dt.timedelta(days=1)}, ("no-calibration",)),
        ({"calibrated_on": dt.date(2025, 11, 25)}, None),  # valid through the due date
        ({"calibrated_on": dt.date(2025, 11, 24)}, ("overdue",)),
        ({"cycles": 5000}, ("overdue",)),
        ({"cycles": 4999}, None),
        ({"on_hand": 0, "loans": ("Priya",)}, ("out",)),
        ({"condition": "damaged"}, ("unfit",)),
        ({"condition": "missing", "on_hand": 0}, ("unfit",)),
        ({"unfit_reason": "dropped, to be checked"}, ("unfit",)),
        ({"accuracy": 1.0}, ("unfit",)),
        ({"accuracy": 0.0}, ("unfit",)),
        ({"accuracy": -0.04}, ("unfit",)),
        ({"accuracy": float("nan")}, ("unfit",)),
        ({"calibrated_on": None, "on_hand": 0}, ("no-calibration", "out")),
    ],
    ids=str,
)
def test_a_wrench_that_cannot_be_used_today_says_why(change, reasons):
    found = cover(replace(wrench(20, 100), **change), parse_spec("50 N·m"), TODAY)
    assert (found.covers, found.reasons) == (reasons is None, reasons or ())
    assert found.covers or all(found.why)


@pytest.mark.parametrize(
    ("more", "covers"),
    [
        ({}, False),
        ({"description": "torque wrench, two-way"}, True),
        ({"description": "torque wrench, left and right"}, True),
        ({"mechanism": "dial"}, True),
        ({"mechanism": "dial", "description": "dial torque wrench, clockwise only"}, False),
    ],
    ids=str,
)
def test_a_left_hand_thread_needs_a_wrench_that_measures_to_the_left(more, covers):
    found = cover(wrench(20, 100, **more), parse_spec("50 N·m"), TODAY, left_hand=True)
    assert found.covers is covers
    assert found.reasons == (() if covers else ("unfit",))


def test_the_offset_changes_the_setting_and_the_range_is_asked_of_the_setting():
    # Published training example: 30 at the fastener, lever 12, adapter 6, set 20.
    tool = wrench(0, 25, "ft-lb", lever_mm=12 * 25.4)
    assert verdict(tool, "30 ft-lb") == ("above-range",)
    assert verdict(tool, "30 ft-lb", offset=Offset(6 * 25.4)) == "20 ft-lb"
    found = cover(tool, parse_spec("30 ft-lb"), TODAY, Offset(6 * 25.4))
    assert found.applied_low_nm / 1.3558179483314004 == pytest.approx(30 / 1.04)


@pytest.mark.parametrize(
    ("change", "offset", "reasons"),
    [
        ({"lever_mm": None}, Offset(40), ("no-reach",)),
        ({"lever_mm": None}, Offset(40, 90), ()),
        ({"lever_mm": 30.0}, Offset(40, 180), ("no-reach",)),
        ({"mechanism": "screwdriver-click", "lever_mm": 100.0}, Offset(40), ("no-reach",)),
        ({"lever_mm": 300.0, "description": "beam wrench, pivoted grip"}, Offset(40, 90, handle_mm=200), ("no-reach",)),
        ({"lever_mm": 300.0, "description": "beam wrench, pivoted grip"}, Offset(40), ()),
    ],
    ids=str,
)
def test_an_offset_that_cannot_be_worked_out_is_refused(change, offset, reasons):
    found = cover(replace(wrench(20, 100), **change), parse_spec("50 N·m"), TODAY, offset)
    assert found.reasons == reasons


def test_a_guard_takes_the_uncertainty_off_the_tolerance():
    tool, spec = wrench(20, 100), "47-53 N·m"
    assert verdict(tool, spec) == "50 N·m"
    assert verdict(tool, spec, guard=Guard(0.015)) == "50 N·m"
    assert verdict(tool, spec, guard=Guard(0.03)) == ("not-accurate-enough",)
    found = cover(tool, parse_spec(spec), TODAY)
    assert found.uses_of_tolerance == pytest.approx((50 / 0.96 - 50 / 1.04) / 6)
    assert found.accuracy_ratio == pytest.approx(6 / (50 / 0.96 - 50 / 1.04))


def test_the_best_wrench_has_the_fewest_adapters_then_the_middle_of_the_scale_then_the_unit_then_the_smallest():
    spec = parse_spec("50 N·m")
    tools = [
        wrench(20, 200, tag="BIG"),  # at 25 %
        wrench(10, 60, tag="TOP"),  # at 83 %
        wrench(10, 100, tag="MIDDLE"),
        wrench(10, 90, tag="SMALLER"),
        wrench(10, 90, tag="ADAPTED"),
        wrench(5, 66, "ft-lb", 0.5, tag="FEET"),
        wrench(60, 400, tag="NO"),
    ]
    found = [cover(tool, spec, TODAY) for tool in tools]
    found[4] = found[4]._replace(adapters=1)
    assert [one.tag for one in rank(found)] == ["SMALLER", "MIDDLE", "FEET", "TOP", "BIG", "ADAPTED", "NO"]
    assert rank(reversed(found)) == rank(found)


def test_the_calendar_clips_to_the_end_of_the_month():
    assert wrench(1, 2, calibrated_on=dt.date(2024, 2, 29)).due == dt.date(2025, 2, 28)
    assert wrench(1, 2, calibrated_on=GOOD, interval_months=0).due is None
