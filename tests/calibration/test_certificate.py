"""A full certificate of every type, worked again independently in exact fractions; what follows for the wrench."""

import datetime as dt
import random
from fractions import Fraction

import pytest

from cribkit.domain.calibration.certificate import Certificate, Finding, Fitness, examine, subject_of
from cribkit.domain.calibration.points import Span, missing, plan_for, targets
from cribkit.domain.calibration.readings import Direction, Outcome, Phase, Reading
from cribkit.domain.calibration.sheet import read_certificates
from cribkit.domain.quantity import torque_unit
from cribkit.domain.torque.guard import Rule
from cribkit.domain.torque.kinds import mechanisms
from cribkit.domain.torque.wrench import Scale, Wrench

CW, CCW, FOUND, LEFT = Direction.CLOCKWISE, Direction.COUNTER, Phase.AS_FOUND, Phase.AS_LEFT
DAY = dt.date(2026, 11, 2)

# Mechanism: maximum and lowest mark (N·m); then, from memory of ISO 6789:2003 and ISO 6789-1:2017 but for class II A
# (a test-device manual that reviews the standard): limit in %, share of the maximum for each point, readings at each.
TYPES = {
    "beam": (200, 40, 6, ["20", "60", "100"], 5),
    "dial": (100, 10, 4, ["10", "60", "100"], 5),
    "electronic": (340, 34, 4, ["20", "60", "100"], 5),
    "screwdriver-dial": (5, 1, 6, ["20", "60", "100"], 5),
    "screwdriver-electronic": (8, 1, 6, ["20", "60", "100"], 5),
    "click": (100, 10, 4, ["10", "60", "100"], 5),
    "fixed": (110, 110, 4, ["100"], 10),
    "non-graduated": (50, 10, 4, ["20", "60", "100"], 10),
    "screwdriver-click": (6, 1, 6, ["20", "60", "100"], 5),
    "screwdriver-fixed": (3, 3, 6, ["100"], 10),
    "screwdriver-non-graduated": (4, 0.8, 6, ["20", "60", "100"], 10),
    "flexion-bar-setting": (120, 24, 6, ["20", "60", "100"], 5),
}

SAID = {"certificate": "SD-1", "date": "2026-11-02", "laboratory": "Saltmarsh bench (invented)", "phase": "as-found"}


def wrench(kind: str = "click", low: float = 20, high: float = 100, graduation: float = 1, **more: object) -> Wrench:
    scale = Scale(torque_unit("N·m"), low, high, graduation)
    more = {"description": ""} | more
    return Wrench(tag="TW-01", mechanism=kind, scales=(scale,), **more)  # type: ignore[arg-type]


def test_every_mechanism_is_tried_and_has_its_points() -> None:
    assert set(TYPES) == set(mechanisms())
    for kind in mechanisms().values():
        assert plan_for(kind).iso_class == kind.iso


@pytest.mark.parametrize("kind", TYPES)
@pytest.mark.parametrize("seed", range(6))
def test_a_full_certificate_agrees_with_an_independent_working(kind: str, seed: int) -> None:
    maximum, lowest, percent, shares, readings = TYPES[kind]
    dice = random.Random(f"{kind} {seed}")
    rows, expected = [], {}
    for share in shares:
        setting = Fraction(share) * Fraction(str(maximum)) / 100
        spread = dice.choice([percent * 0.8, percent * 1.05])
        cell = [f"{float(setting) * (1 + dice.uniform(-spread, spread) / 100):.4f}" for _ in range(readings)]
        rows.append(SAID | {"setting": f"{float(setting):g}", "reading": ";".join(cell)})
        # Independently: a = (set - reference) / reference, exact; every one inside the limit.
        deviations = [(setting - Fraction(text)) / Fraction(text) for text in cell]
        expected[setting] = all(abs(a) <= Fraction(percent, 100) for a in deviations)
    entries, problems = read_certificates(enumerate(rows, 2), {"TW-01": torque_unit("N·m")}, "c.csv", "TW-01")
    assert problems == ()
    finding = examine(entries[0].certificate, subject_of(wrench(kind, lowest, maximum, maximum / 100)))
    verdict = finding.as_found
    assert verdict is not None
    assert [point.outcome is Outcome.PASS for point in verdict.points] == list(expected.values())
    assert (verdict.outcome is Outcome.PASS) == all(expected.values())
    assert finding.found_out == (not all(expected.values()))
    assert [p.message for p in finding.warnings if p.code in ("point-not-tested", "too-few-readings")] == []
    assert finding.usable == usable_range([float(setting) for setting in expected], list(expected.values()), maximum)


def usable_range(points: list[float], passed: list[bool], maximum: float) -> tuple[float, float] | None:
    """By hand: neighbours that passed, from 20 % of the maximum (TM 1-1500-204-23-9 chapter 8)."""
    if len(points) == 1:
        return (points[0], points[0]) if passed[0] else None
    low, middle, high = points
    floor = max(low, 0.2 * maximum)
    table = {
        (True, True, True): (floor, high),
        (False, True, True): (middle, high),
        (True, True, False): (floor, middle),
    }
    return table.get((passed[0], passed[1], passed[2]))


def certificate(*rows: tuple[Phase, Direction, float, list[float]], **more: object) -> Certificate:
    readings = tuple(Reading(p, d, setting, value) for p, d, setting, values in rows for value in values)
    return Certificate("SD-1", DAY, "bench", readings, **more)  # type: ignore[arg-type]


def five(phase: Phase, setting: float, direction: Direction = CW, off: float = 1.0) -> tuple:  # type: ignore[type-arg]
    return (phase, direction, setting, [setting * off] * 5)


def good(phase: Phase, direction: Direction = CW) -> list:  # type: ignore[type-arg]
    return [five(phase, setting, direction) for setting in (20, 60, 100)]


def codes(finding: Finding) -> list[str]:
    return [problem.code for problem in finding.warnings]


def test_found_out_but_left_good_goes_back_to_ready_and_still_throws_doubt_on_the_past() -> None:
    finding = examine(certificate(five(FOUND, 60, off=0.9), *good(LEFT)), subject_of(wrench()))
    assert (finding.fitness, finding.found_out, finding.usable) == (Fitness.READY, True, (20, 100))


def test_a_part_that_passed_limits_it() -> None:
    readings = certificate(five(FOUND, 20, off=0.9), five(FOUND, 60), five(FOUND, 100))
    finding = examine(readings, subject_of(wrench()))
    assert (finding.fitness, finding.usable) == (Fitness.LIMITED, (60, 100))
    assert finding.why == "only 60 to 100 N·m passed"


@pytest.mark.parametrize(
    "rows",
    [
        [five(FOUND, 20), five(FOUND, 60, off=1.1), five(FOUND, 100)],
        [five(FOUND, 20, off=1.1), five(FOUND, 60, off=1.1), five(FOUND, 100, off=1.1)],
        [five(FOUND, 60)],
        good(FOUND, CCW),
        [*good(FOUND), *[five(LEFT, setting, off=0.9) for setting in (20, 60, 100)]],
    ],
    ids=["a gap in the middle", "nothing passed", "a single point", "only the other way", "adjusted and still out"],
)
def test_without_a_range_that_passed_it_is_unfit(rows: list) -> None:  # type: ignore[type-arg]
    finding = examine(certificate(*rows), subject_of(wrench()))
    assert (finding.fitness, finding.usable, finding.two_way) == (Fitness.UNFIT, None, False)


def test_no_readings_at_all_is_unfit() -> None:
    assert examine(certificate(), subject_of(wrench())).fitness is Fitness.UNFIT


def test_nothing_beyond_the_tested_points_is_relied_on() -> None:
    finding = examine(certificate(five(FOUND, 40), five(FOUND, 60)), subject_of(wrench()))
    assert (finding.fitness, finding.usable) == (Fitness.LIMITED, (40, 60))
    assert [p.message for p in finding.warnings] == [
        "as-found, clockwise: class II A asks for readings at 20 N·m",
        "as-found, clockwise: class II A asks for readings at 100 N·m",
    ]


def test_too_few_readings_and_an_untested_direction_are_named() -> None:
    rows = [(FOUND, CW, setting, [setting]) for setting in (20.0, 60.0, 100.0)]
    finding = examine(certificate(*rows), subject_of(wrench(description="two-way")))
    assert codes(finding) == ["too-few-readings"] * 3 + ["direction-not-tested"]
    assert finding.warnings[0].message == "as-found, clockwise: 1 readings at 20 N·m, class II A asks for 5"
    assert (finding.fitness, finding.two_way) == (Fitness.READY, False)


def test_left_hand_use_needs_a_left_hand_test() -> None:
    both = subject_of(wrench(description="two-way"))
    assert examine(certificate(*good(FOUND), *good(FOUND, CCW)), both).two_way
    bad = [five(FOUND, 20, CCW, 0.9), five(FOUND, 60, CCW), five(FOUND, 100, CCW)]
    assert not examine(certificate(*good(FOUND), *bad), both).two_way


def test_a_missing_as_found_is_named() -> None:
    assert "no-as-found" in codes(examine(certificate(*good(LEFT)), subject_of(wrench())))


# ISO 6789:2003, 18 to 28 °C; ISO 6789:2017 and ASME B107.300-2021, a device four times better than the tool.
@pytest.mark.parametrize(
    ("temperature", "uncertainty", "expected"),
    [
        (18.0, 1.0, []),
        (28.0, None, []),
        (17.9, None, ["temperature"]),
        (28.1, 1.01, ["temperature", "coarse-reference"]),
    ],
)
def test_the_room_and_the_reference_device_are_looked_at(
    temperature: float, uncertainty: float | None, expected: list[str]
) -> None:
    paper = certificate(*good(FOUND), temperature_c=temperature, uncertainty_pct=uncertainty)
    assert codes(examine(paper, subject_of(wrench()))) == expected


def test_a_guard_band_refuses_what_lies_within_the_uncertainty_of_the_limit() -> None:
    # ILAC-G8:09/2019: acceptance limit 4 % - 1.6 % = 2.4 %; 3 % off is inside the limit but within the guard band.
    rows = certificate(*[five(FOUND, setting, off=1 / 1.03) for setting in (20, 60, 100)])
    assert examine(rows, subject_of(wrench())).fitness is Fitness.READY
    guarded = examine(rows, subject_of(wrench(), guard_with=0.016))
    assert guarded.as_found is not None
    assert (guarded.fitness, guarded.as_found.outcome) == (Fitness.UNFIT, Outcome.CONDITIONAL_PASS)
    # Method 6 at TUR 2.5 takes less: its acceptance limit is 3.68 %.
    assert examine(rows, subject_of(wrench(), guard_with=0.016, rule=Rule.MANAGED)).fitness is Fitness.READY


def test_the_older_editions_points_are_as_good() -> None:
    # ISO 6789:2003: 20, 60 and 100 % of the maximum; ISO 6789-1:2017 cl. 5.1.3: from the lowest mark.
    plan, span = plan_for(mechanisms()["click"]), Span(10, 100, 1)
    assert targets(plan.at, span) == (10, 60, 100)
    assert missing(plan, (10, 60, 100), span) == ()
    assert missing(plan, (20, 60, 100), span) == ()
    assert missing(plan, (60, 100), span) == (10,)
    assert missing(plan, (30, 60, 100), span) == (10,)


def test_a_point_may_be_the_nearest_mark() -> None:
    plan = plan_for(mechanisms()["beam"])
    assert missing(plan, (40, 110, 200), Span(40, 200, 10)) == ()
    assert missing(plan, (40, 100, 200), Span(40, 200, 10)) == (120,)


def test_a_scale_from_nought_starts_at_a_fifth() -> None:
    subject = subject_of(wrench("beam", 0, 200, 10))
    assert (subject.span.lowest, subject.usable) == (40, (40, 200))


def test_the_points_are_in_the_scales_unit() -> None:
    scale = Scale(torque_unit("ft-lb"), 30, 150, 1)
    subject = subject_of(Wrench(tag="TW-06", description="", mechanism="click", scales=(scale,)))
    paper = Certificate("SD-2", DAY, "bench", ())
    assert examine(paper, subject).why == "no readings"
    rows = [Reading(FOUND, CW, s, s, "ft-lb", torque_unit("ft-lb").nm) for s in (30, 90, 150) for _ in range(5)]
    finding = examine(Certificate("SD-2", DAY, "bench", tuple(rows)), subject)
    assert (finding.fitness, finding.warnings) == (Fitness.READY, ())
    assert finding.usable == (30 * 1.3558179483314004, 150 * 1.3558179483314004)
