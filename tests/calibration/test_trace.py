"""What was applied, estimated from as-found readings; and the answer for each fastener."""

import datetime as dt
from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from cribkit.domain.calibration.certificate import Certificate, Finding, examine, subject_of
from cribkit.domain.calibration.readings import Direction, Phase, Reading
from cribkit.domain.calibration.trace import Answer, Fastened, deviations, trace
from tests.calibration.test_certificate import wrench

DAY = dt.date(2026, 11, 2)


def finding(points: dict[float, list[float]], **more: object) -> Finding:
    """Found: at each setting these references."""
    readings = tuple(
        Reading(Phase.AS_FOUND, Direction.CLOCKWISE, setting, value) for setting, row in points.items() for value in row
    )
    paper = Certificate("SD-9", DAY, "bench", readings, **more)  # type: ignore[arg-type]
    return examine(paper, subject_of(wrench()))


WORK = Fastened(
    job="J-1",
    vehicle="Wren van 12",
    procedure="front-brakes",
    on=dt.date(2026, 6, 1),
    torque_id="carrier",
    fastener="carrier bolts",
    count=2,
    spec="90-110 N·m",
    low_nm=90,
    high_nm=110,
    setting_nm=100,
)
# 10 % too strong at 100 (it applied 110 where it said 100), right at 20.
STRONG = finding({20: [20.0, 20.0], 60: [63.0, 63.0], 100: [109.0, 111.0]})


def test_the_estimate_is_setting_over_one_plus_deviation() -> None:
    doubt = trace(replace(WORK, setting_nm=80.0, low_nm=80), STRONG)
    # By hand: at 60 a = -3/63; at 100 the readings give -9/109 and -11/111; half way between: their means.
    middle = (Fraction(-3, 63) + (Fraction(-9, 109) + Fraction(-11, 111)) / 2) / 2
    most, least = ((Fraction(-3, 63) + a) / 2 for a in (Fraction(-9, 109), Fraction(-11, 111)))
    assert doubt.estimate is not None
    assert doubt.estimate.likely_nm == pytest.approx(float(80 / (1 + middle)))
    assert doubt.estimate.low_nm == pytest.approx(float(80 / (1 + most)))
    assert doubt.estimate.high_nm == pytest.approx(float(80 / (1 + least)))
    assert doubt.answer is Answer.INSIDE


@pytest.mark.parametrize(
    ("changes", "answer", "why"),
    [
        ({"high_nm": 112.0}, Answer.INSIDE, ""),
        ({"high_nm": 108.0}, Answer.OUTSIDE, "too high"),
        ({"low_nm": 112.0, "high_nm": None}, Answer.OUTSIDE, "too low"),
        ({"high_nm": 110.0}, Answer.CANNOT_TELL, "the readings lie on both sides of the upper limit"),
        ({"low_nm": 110.0, "high_nm": None}, Answer.CANNOT_TELL, "the readings lie on both sides of the lower limit"),
        ({"low_nm": None, "high_nm": None}, Answer.CANNOT_TELL, "the procedure states no tolerance"),
        ({"setting_nm": None}, Answer.CANNOT_TELL, "the setting was not noted"),
        (
            {"setting_nm": 15.0},
            Answer.CANNOT_TELL,
            "its setting is outside the points tested as found (20 to 100 N·m)",
        ),
        (
            {"direction": Direction.COUNTER},
            Answer.CANNOT_TELL,
            "certificate SD-9 has no as-found readings counter-clockwise",
        ),
        ({"high_nm": 112.0, "angle": True}, Answer.INSIDE, "the angle came after it"),
        ({"lever": 0.8, "low_nm": 135.0, "high_nm": 140.0}, Answer.INSIDE, ""),
    ],
)
def test_inside_outside_or_cannot_tell_with_the_reason(changes: dict[str, object], answer: Answer, why: str) -> None:
    doubt = trace(replace(WORK, **changes), STRONG)  # type: ignore[arg-type]
    assert (doubt.answer, doubt.why) == (answer, why)


def test_near_the_limit_the_references_uncertainty_leaves_it_open() -> None:
    unsure = finding({20: [20.0], 60: [63.0], 100: [109.0, 111.0]}, uncertainty_pct=1.0)
    doubt = trace(replace(WORK, high_nm=111.5), unsure)
    assert (doubt.answer, doubt.why) == (
        Answer.CANNOT_TELL,
        "nearer to the limit than the reference device's uncertainty",
    )


def test_without_any_as_found_nothing_can_be_said() -> None:
    left = Certificate("SD-9", DAY, "bench", (Reading(Phase.AS_LEFT, Direction.CLOCKWISE, 100, 100),))
    assert trace(WORK, examine(left, subject_of(wrench()))).answer is Answer.CANNOT_TELL
    assert trace(WORK, None).why == "no calibration since then has as-found readings"


@given(st.floats(20, 100), st.lists(st.floats(0.8, 1.2), min_size=3, max_size=3))
def test_the_estimate_lies_between_those_of_its_neighbours(setting: float, factors: list[float]) -> None:
    points = {t: [t * f] for t, f in zip((20.0, 60.0, 100.0), factors, strict=True)}
    side = finding(points).as_found
    assert side is not None
    least, mean, most = deviations(side.sides[0].points, setting) or (0, 0, 0)
    ends = [1 / f - 1 for f in (factors[:2] if setting <= 60 else factors[1:])]
    assert least == mean == most
    assert min(ends) - 1e-12 <= mean <= max(ends) + 1e-12
