"""Readings against limits: the published deviation, single readings, guard bands."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from cribkit.domain.calibration.readings import Direction, Limit, Outcome, Phase, Reading, judge
from cribkit.domain.torque.guard import Rule, acceptance_limit

CW, CCW, FOUND, LEFT = Direction.CLOCKWISE, Direction.COUNTER, Phase.AS_FOUND, Phase.AS_LEFT


def at(setting: float, *references: float, phase: Phase = FOUND, direction: Direction = CW) -> list[Reading]:
    return [Reading(phase, direction, setting, reference) for reference in references]


# ISO 6789:2003 cl. 6.5: the deviation is taken on the indication of the test device ("±4 % of the indication on the
# test device", a test-device manual that reviews the standard). Values worked from the formula.
@pytest.mark.parametrize(
    ("reference", "percent", "outcome"),
    [
        (104.0, -3.8462, Outcome.PASS),
        (96.0, 4.1667, Outcome.FAIL),
        (100 / 1.04, 4.0, Outcome.PASS),
        (100 / 0.96, -4.0, Outcome.PASS),
        (96.1537, 4.0002, Outcome.FAIL),
        (104.1668, -4.0001, Outcome.FAIL),
    ],
)
def test_limits_are_not_symmetric_in_torque(reference: float, percent: float, outcome: Outcome) -> None:
    verdict = judge(at(100, reference), FOUND, Limit(0.04))
    assert verdict is not None
    assert verdict.points[0].deviations[0] * 100 == pytest.approx(percent, abs=5e-5)
    assert verdict.outcome is outcome


@pytest.mark.parametrize(
    ("limit", "low", "high"),
    [(0.04, 96.1538, 104.1667), (0.06, 94.3396, 106.3830)],
    ids=["4 %", "6 %"],
)
def test_the_references_that_a_limit_accepts(limit: float, low: float, high: float) -> None:
    # 100/(1+a) and 100/(1-a).
    for reference, outcome in (
        (low + 1e-4, "pass"),
        (low - 1e-3, "fail"),
        (high - 1e-4, "pass"),
        (high + 1e-3, "fail"),
    ):
        verdict = judge(at(100, reference), FOUND, Limit(limit))
        assert verdict is not None
        assert verdict.outcome == outcome


def test_one_reading_outside_fails_the_point_whatever_the_mean_says() -> None:
    # "All readings shall be within" the limit (ISO 6789:2003).
    readings = at(100, 100, 100, 100, 100, 96)
    verdict = judge(readings, FOUND, Limit(0.04))
    assert verdict is not None
    point = verdict.points[0]
    assert (abs(point.mean) < 0.01, point.outcome, point.worst) == (True, Outcome.FAIL, pytest.approx(4 / 96))


def test_each_point_each_direction_and_the_whole_have_their_verdict() -> None:
    readings = at(20, 20) + at(60, 60) + at(100, 100) + at(20, 20, direction=CCW) + at(100, 120, direction=CCW)
    verdict = judge(readings, FOUND, Limit(0.04))
    assert verdict is not None
    assert [(side.direction, side.outcome, side.passed) for side in verdict.sides] == [
        (CW, Outcome.PASS, (20.0, 100.0)),
        (CCW, Outcome.FAIL, (20.0, 20.0)),
    ]
    assert [point.outcome for point in verdict.points] == ["pass", "pass", "pass", "pass", "fail"]
    assert verdict.outcome is Outcome.FAIL


def test_as_found_and_as_left_are_kept_apart() -> None:
    readings = at(100, 120) + at(100, 100, phase=LEFT)
    found, left = judge(readings, FOUND, Limit(0.04)), judge(readings, LEFT, Limit(0.04))
    assert found is not None
    assert left is not None
    assert (found.outcome, left.outcome) == (Outcome.FAIL, Outcome.PASS)
    assert judge(at(100, 100), LEFT, Limit(0.04)) is None


@pytest.mark.parametrize(
    ("passing", "expected"),
    [
        ("ppp", (20, 100)),
        ("fpp", (60, 100)),
        ("ppf", (20, 60)),
        ("pfp", (20, 20)),
        ("fff", None),
        ("fpf", (60, 60)),
    ],
)
def test_the_range_that_passed_is_the_widest_run_of_neighbours(passing: str, expected: tuple[int, int] | None) -> None:
    readings = [r for t, p in zip((20, 60, 100), passing, strict=True) for r in at(t, t if p == "p" else 2 * t)]
    verdict = judge(readings, FOUND, Limit(0.04))
    assert verdict is not None
    assert verdict.sides[0].passed == expected


# ILAC-G8:09/2019 cl. 4.2.3 with w = U: tolerance 4 %, U = 1.6 %, so that the acceptance limit is 2.4 %.
@pytest.mark.parametrize(
    ("deviation", "outcome"),
    [
        (0.024, Outcome.PASS),
        (0.02401, Outcome.CONDITIONAL_PASS),
        (0.04, Outcome.CONDITIONAL_PASS),
        (0.04001, Outcome.CONDITIONAL_FAIL),
        (0.056, Outcome.CONDITIONAL_FAIL),
        (0.05601, Outcome.FAIL),
    ],
)
def test_a_guard_band_parts_readings_into_four(deviation: float, outcome: Outcome) -> None:
    limit = Limit(0.04, acceptance_limit(0.04, 0.016))
    assert limit.accepted == pytest.approx(0.024)
    assert limit.judge(deviation) is outcome
    assert limit.judge(-deviation) is outcome


# Handbook to ANSI/NCSL Z540.3, method 6 (formula from memory): AL/TL for TUR 1.5, 2, 3 and 4.
@pytest.mark.parametrize(("tur", "part"), [(1.5, 0.7599), (2, 0.8592), (3, 0.9482), (4, 0.9867)])
def test_the_managed_guard_band_gives_the_published_acceptance_limits(tur: float, part: float) -> None:
    limit = Limit(0.04, acceptance_limit(0.04, 0.04 / tur, Rule.MANAGED))
    assert limit.judge(0.04 * (part - 1e-4)) is Outcome.PASS
    assert limit.judge(0.04 * (part + 1e-4)) is Outcome.CONDITIONAL_PASS


@given(st.floats(0.001, 0.2), st.floats(0.0, 1.0), st.floats(-0.5, 0.5))
def test_a_guard_band_never_turns_a_fail_into_a_pass(permitted: float, part: float, deviation: float) -> None:
    plain, guarded = Limit(permitted).judge(deviation), Limit(permitted, permitted * part).judge(deviation)
    assert not (guarded is Outcome.PASS and plain is not Outcome.PASS)
    assert (guarded in (Outcome.PASS, Outcome.CONDITIONAL_PASS)) == (plain is Outcome.PASS)
