"""Specifications: what people write, and what it means."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from cribkit.domain.problem import BadInput
from cribkit.domain.torque import StepKind, parse_spec

FT_LB, IN_LB = 1.3558179483314004, 0.1129848290276167  # N·m, NIST SP 811 (exact chain)


def band(spec):
    """(low, target, high) in N·m, rounded to a ten-thousandth."""
    return tuple(None if one is None else round(one, 4) for one in (spec.low_nm, spec.target_nm, spec.high_nm))


@pytest.mark.parametrize(
    ("text", "tolerance", "expected"),
    [
        ("10 N·m", "", (None, 10, None)),
        ("8-10 N·m", "", (8, 9, 10)),
        ("between 8 and 10 N·m", "", (8, 9, 10)),
        ("9 ± 1 N·m", "", (8, 9, 10)),
        ("9 N·m ± 10 %", "", (8.1, 9, 9.9)),
        ("9 N·m", "10 %", (8.1, 9, 9.9)),
        ("9 N·m", "±10%", (8.1, 9, 9.9)),
        ("9 N·m", "± 1 N·m", (8, 9, 10)),
        ("10 ft-lb", "1 ft-lb", (9 * FT_LB, 10 * FT_LB, 11 * FT_LB)),
        ("9 N·m", "+2/-1 N·m", (8, 9, 11)),
        ("10 N·m", "+10/-5 %", (9.5, 10, 11)),
        ("10 +2/-1 N·m", "", (9, 10, 12)),
        ("10 N·m +2/-0 N·m", "", (10, 10, 12)),
        ("10 N·m +10/-5 %", "", (9.5, 10, 11)),
        ("at least 90 N·m", "", (90, 90, None)),
        ("90 N·m minimum (66 ft-lb)", "", (90, 90, None)),
        ("> 122 Nm (90 ft.lbs.)", "", (122, 122, None)),
        ("max 25 N·m", "", (None, 25, 25)),
        ("not more than 25 N·m", "", (None, 25, 25)),
        ("do not exceed 25 N·m", "", (None, 25, 25)),
        ("25 N·m (max)", "", (None, 25, 25)),
        ("25 N·m (max.)", "", (None, 25, 25)),
        ("25 N·m (maximum, oiled)", "", (None, 25, 25)),
        ("25 N·m (oiled)", "", (None, 25, None)),
        ("snug to 5 N·m", "", (None, 5, None)),
        ("10 N·m + 2 N·m prevailing torque", "10 %", (11, 12, 13)),
        ("min 8 N·m, max 10 N·m", "", (8, 9, 10)),
        ("89 in-lb (10 N·m)", "", (None, 89 * IN_LB, None)),
        ("12 to 13 lb-ft (16 to 18 N·m)", "", (12 * FT_LB, 12.5 * FT_LB, 13 * FT_LB)),
        ("28 N·m, 2.9 kg-m, 21 ft-lb", "", (None, 28, None)),
        ("10 N·m + 2 N·m prevailing torque", "", (None, 12, None)),
        ("8-10 N·m + 2 N·m drag", "", (10, 11, 12)),
    ],
)
def test_a_specification_has_a_target_and_a_band(text, tolerance, expected):
    spec = parse_spec(text, tolerance)
    for found, wanted in zip((spec.low_nm, spec.target_nm, spec.high_nm), expected, strict=True):
        assert found == (wanted if wanted is None else pytest.approx(wanted))


def test_prevailing_torque_that_is_not_stated_is_measured_on_the_job():
    # AC 43.13-1B page 7-43: the drag of a locknut is added to the desired torque.
    spec = parse_spec("10 N·m + prevailing torque")
    assert (spec.target_nm, spec.prevailing) == (10, True)
    assert not parse_spec("10 N·m").prevailing


def told(spec):
    """The steps in short."""
    found = []
    for step in spec.steps:
        size = f" {step.wanted.target_nm:g}" if step.wanted else f" {step.angle:g}°" if step.angle else ""
        found.append(f"{step.label + ': ' if step.label else ''}{step.kind}{size}")
    return "; ".join(found)


# Step lists of published service data and army manuals.
@pytest.mark.parametrize(
    ("text", "steps", "target"),
    [
        (
            "37-43 Nm; +85-95°; loosen >=360°; 37-43 Nm; +85-95°; +85-95°",
            "torque 40; angle 90°; loosen 360°; torque 40; angle 90°; angle 90°",
            40,
        ),
        ("20; 35; 45 Nm + 90°; +90°", "torque 20; torque 35; torque 45; angle 90°; angle 90°", 45),
        ("20 Nm -> 40 Nm -> +60° -> +80°", "torque 20; torque 40; angle 60°; angle 80°", 40),
        (
            "61 Nm all; 88 all; 88 again; +1/4 turn (do not use torque wrench); "
            "then check > 122 Nm (90 ft.lbs.) else replace bolt; bolt 9 33 Nm",
            "torque 61; torque 88; torque 88; turn 90°; check 122; replace; bolt 9: torque 33",
            88,
        ),
        ("first pass 30 Nm, final pass 155°", "torque 30; angle 155°", 30),
        ("50 Nm + 77°", "torque 50; angle 77°", 50),
        ("25 Nm + 110°", "torque 25; angle 110°", 25),
        ("125 Nm + 130° (new bolt after seating with old)", "torque 125; angle 130°", 125),
        ("Stage 1 hand tighten; 6 Nm; +90°", "hand; torque 6; angle 90°", 6),
        ("tighten in increments of 3 turns until seated; 10 Nm", "snug; torque 10", 10),
        ("10 N·m; repeat in sequence 2 additional passes", "torque 10; repeat", 10),
    ],
)
def test_step_lists_of_published_manuals(text, steps, target):
    spec = parse_spec(text)
    assert (told(spec), spec.target_nm) == (steps, target)


@pytest.mark.parametrize(
    ("step", "kind", "low", "angle", "high"),
    [
        ("+45°", StepKind.ANGLE, None, 45, None),
        ("+90 deg", StepKind.ANGLE, None, 90, None),
        ("85-95 degrees", StepKind.ANGLE, 85, 90, 95),
        ("90° ± 5°", StepKind.ANGLE, 85, 90, 95),
        ("1/4 turn", StepKind.TURN, None, 90, None),
        ("a quarter turn", StepKind.TURN, None, 90, None),
        ("1/8 turn", StepKind.TURN, None, 45, None),  # snug plus 1/8 turn is 45 degrees
        ("two flats", StepKind.TURN, None, 120, None),  # TM 1-1500-204-23-9 page 148: one flat is 60 degrees
        ("one turn", StepKind.TURN, None, 360, None),
        ("loosen 180°", StepKind.LOOSEN, None, 180, None),
        ("back off one turn", StepKind.LOOSEN, None, 360, None),
        ("slacken", StepKind.LOOSEN, None, None, None),
        ("hand-tight", StepKind.HAND, None, None, None),
        ("finger tight", StepKind.HAND, None, None, None),
        ("snug", StepKind.SNUG, None, None, None),
        ("replace bolts", StepKind.REPLACE, None, None, None),
    ],
)
def test_a_step_without_a_torque(step, kind, low, angle, high):
    (found,) = parse_spec("10 N·m", steps=[step]).steps
    assert (found.kind, found.angle_low, found.angle, found.angle_high) == (kind, low, angle, high)
    assert found.wanted is None


def test_an_angle_in_degrees_needs_a_gauge_and_a_part_of_a_turn_does_not():
    assert parse_spec("20 N·m", steps=["20 N·m", "+90°"]).needs_angle_gauge
    assert not parse_spec("20 N·m", steps=["20 N·m", "1/4 turn"]).needs_angle_gauge


def test_steps_take_the_percentage_of_the_spec_and_each_other_torque_is_wanted_once():
    spec = parse_spec("80 in-lb (9 N·m)", "10 %", ["44 in-lb", "80 in-lb", "80 in-lb again"])
    assert [(round(one.low_nm / IN_LB, 6), round(one.high_nm / IN_LB, 6)) for one in spec.torques] == [
        (39.6, 48.4),
        (72.0, 88.0),
    ]


def test_a_tolerance_in_torque_holds_for_the_spec_and_for_steps_inside_its_band():
    spec = parse_spec("8-10 N·m", steps=["5 N·m", "9 N·m"])
    assert [band(one) for one in spec.torques] == [(None, 5, None), (8, 9, 10)]


def test_the_torque_that_counts_is_the_last_of_those_wanted():
    spec = parse_spec("110 N·m", steps=["50 N·m", "110 N·m", "check at least 122 N·m"])
    assert [one.target_nm for one in spec.torques] == [50, 122, 110]


def test_a_step_with_a_stated_prevailing_torque_has_it_added():
    spec = parse_spec("12 N·m", steps=["6 N·m + 2 N·m drag", "12 N·m"])
    assert [one.target_nm for one in spec.torques] == [8, 12]


def test_a_check_of_a_bare_value_means_at_least():
    (_, check) = parse_spec("88 N·m; check 122 N·m").steps
    assert (check.kind, check.wanted.low_nm, check.wanted.high_nm) == (StepKind.CHECK, 122, None)


@pytest.mark.parametrize(
    ("text", "tolerance", "code"),
    [
        ("", "", "no-torque"),
        ("snug, then 1/8 turn", "", "no-torque"),
        ("10", "", "no-unit"),
        ("10 J", "", "not-torque"),
        ("nan N·m", "", "no-number"),
        ("-5 N·m", "", "negative"),
        ("1,000 in-lb", "", "ambiguous"),
        ("10-8 N·m", "", "backwards"),
        ("5 N·m, 10 N·m", "", "disagrees"),
        ("max 10 N·m (100 ft-lb)", "", "disagrees"),
        ("min 10 N·m, max 8 N·m", "", "unreadable"),
        ("at least 8-10 N·m", "", "unreadable"),
        ("8-10 N·m", "10 %", "two-tolerances"),
        ("10 N·m", "100 %", "bad-tolerance"),
        ("10 N·m", "0 %", "bad-tolerance"),
        ("10 N·m", "about a tenth", "bad-tolerance"),
        ("20 N·m", "10", "bad-tolerance"),
        ("20 N·m", "+2/-1", "bad-tolerance"),
        ("10 N·m", "1 mm", "not-torque"),
        ("10 +20/-10 N·m", "", "unreadable"),
        ("10 N·m; loosen 5", "", "bad-step"),
        ("10 N·m; 2 x 90°", "", "bad-step"),
        ("10 N·m; 90° twice", "", "bad-step"),
        ("10 N·m; -90°", "", "bad-step"),
        ("10 N·m; 90° + 20 N·m", "", "bad-step"),
        ("10 N·m; loosen to 5 N·m", "", "bad-step"),
        ("10 N·m; snug 1/8 turn", "", "bad-step"),
        ("10 N·m; repeat 20", "", "bad-step"),
        ("10 N·m; else 12 N·m", "", "bad-step"),
        ("10 N·m dry, 8 N·m oiled", "", "not-torque"),
        ("M8: 25 N·m", "", "unreadable"),
        ("10 N·m including prevailing torque", "", "bad-step"),
        ("10 N·m; prevailing 2 N·m", "", "bad-step"),
    ],
)
def test_what_cannot_be_read_is_refused_with_a_code_and_a_next_step(text, tolerance, code):
    with pytest.raises(BadInput) as caught:
        parse_spec(text, tolerance)
    (problem,) = caught.value.problems
    assert problem.code == code
    assert problem.next


@given(
    st.integers(1, 5000).map(lambda tenths: tenths / 10),
    st.integers(1, 50),
    st.sampled_from([("N·m", 1.0), ("in-lb", IN_LB), ("ft-lb", FT_LB), ("kgf·cm", 0.0980665)]),
)
def test_the_ways_to_write_one_band_mean_the_same(value, percent, unit):
    name, nm = unit
    give = value * percent / 100
    expected = (
        pytest.approx((value - give) * nm, rel=1e-6),
        pytest.approx(value * nm, rel=1e-6),
        pytest.approx((value + give) * nm, rel=1e-6),
    )
    for spec in (
        parse_spec(f"{value} {name}", f"{percent} %"),
        parse_spec(f"{value} {name} ± {percent} %"),
        parse_spec(f"{value} ± {give:.9f} {name}"),
        parse_spec(f"{value - give:.9f}-{value + give:.9f} {name}"),
        parse_spec(f"{value} +{give:.9f}/-{give:.9f} {name}"),
    ):
        assert (spec.low_nm, spec.target_nm, spec.high_nm) == expected


@given(st.text(max_size=60))
def test_any_text_is_read_or_refused(text):
    try:
        spec = parse_spec(text)
    except BadInput:
        return
    assert spec.target_nm > 0
