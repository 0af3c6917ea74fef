"""Certificates as people type them."""

import datetime as dt

import pytest
from hypothesis import given
from hypothesis import strategies as st

from cribkit.domain.calibration.readings import Direction, Phase
from cribkit.domain.calibration.sheet import COLUMNS, read_certificates
from cribkit.domain.quantity import torque_unit

UNITS = {"TW-01": torque_unit("N·m"), "TW-06": torque_unit("ft-lb")}
FIRST = {
    "tag": "TW-01",
    "certificate": "SD-1",
    "date": "2026-11-02",
    "laboratory": "Saltmarsh bench (invented)",
    "phase": "as-found",
    "setting": "100",
    "reading": "99.5; 100.5",
}


def read(*rows: dict[str, str], tag: str = "", far_off: bool = False):  # type: ignore[no-untyped-def]
    entries, problems = read_certificates(enumerate(rows, 2), UNITS, "c.csv", tag, far_off)
    return entries, [str(problem) for problem in problems]


def test_a_certificate_says_things_once_and_readings_may_share_a_cell() -> None:
    entries, problems = read(
        FIRST | {"device": "bench 3", "uncertainty_pct": "0.5", "temperature_c": "21"},
        {
            "tag": "TW-01",
            "certificate": "SD-1",
            "phase": "As Left",
            "direction": "CCW",
            "setting": "20",
            "reading": "20",
        },
    )
    assert problems == []
    paper = entries[0].certificate
    assert (entries[0].tag, entries[0].source, paper.number, paper.on) == (
        "TW-01",
        "c.csv:2",
        "SD-1",
        dt.date(2026, 11, 2),
    )
    assert (paper.device, paper.uncertainty_pct, paper.temperature_c) == ("bench 3", 0.5, 21.0)
    assert [(r.phase, r.direction, r.setting, r.reference) for r in paper.readings] == [
        (Phase.AS_FOUND, Direction.CLOCKWISE, 100, 99.5),
        (Phase.AS_FOUND, Direction.CLOCKWISE, 100, 100.5),
        (Phase.AS_LEFT, Direction.COUNTER, 20, 20),
    ]


def test_many_certificates_in_one_file() -> None:
    entries, problems = read(FIRST, FIRST | {"tag": "TW-06", "certificate": "SD-2"}, FIRST | {"phase": "as-left"})
    assert problems == []
    assert [(e.tag, e.certificate.number, len(e.certificate.readings)) for e in entries] == [
        ("TW-01", "SD-1", 4),
        ("TW-06", "SD-2", 2),
    ]


def test_the_reference_may_read_in_another_unit() -> None:
    # 1 lbf·ft = 1.3558179483314004 N·m, from the definitions of the pound, the foot and standard gravity.
    entries, problems = read(FIRST | {"tag": "TW-06", "reading": "135.58179483314004", "reading_unit": "Nm"})
    assert problems == []
    reading = entries[0].certificate.readings[0]
    assert (reading.unit, reading.setting, reading.reference) == ("ft-lb", 100, pytest.approx(100))
    assert reading.deviation == pytest.approx(0)
    assert reading.setting_nm == pytest.approx(135.58179483314004)


@pytest.mark.parametrize(
    ("change", "message"),
    [
        ({"tag": ""}, "c.csv:2: no tag: fill the tag column, or name the wrench in the command."),
        ({"tag": "X"}, "c.csv:2: X is not a torque wrench of this crib: see `cribkit wrench list`."),
        ({"certificate": ""}, "c.csv:2: no certificate number: fill the certificate column."),
        ({"date": "31/02/2026"}, "c.csv:2: date '31/02/2026': write it as 2026-11-30."),
        ({"laboratory": ""}, "c.csv:2: no laboratory: fill the laboratory column."),
        ({"phase": "before"}, "c.csv:2: phase 'before': write as-found or as-left."),
        ({"direction": "up"}, "c.csv:2: direction 'up': write clockwise or counter-clockwise."),
        ({"setting": "-5"}, "c.csv:2: setting -5 cannot be: check it against the certificate."),
        ({"setting": "nan"}, "c.csv:2: setting nan cannot be: check it against the certificate."),
        ({"setting": ""}, "c.csv:2: no setting: fill it in."),
        ({"reading": " ; "}, "c.csv:2: no reading: write what the reference device showed."),
        ({"reading": "100; 0"}, "c.csv:2: reading 0 cannot be: check it against the certificate."),
        ({"reading": "1e999"}, "c.csv:2: reading 1e999 cannot be: check it against the certificate."),
        (
            {"reading": "100,5"},
            "c.csv:2: reading '100,5' is not a number: write it like 100.5, without the unit.",
        ),
        (
            {"reading": "73.8"},
            "",
        ),
        (
            {"reading": "10.2"},
            "c.csv:2: 10.2 read at 100 N·m is off by half or more: "
            "check the number and its unit; if it is right, say --far-off.",
        ),
        (
            {"unit": "psi"},
            "c.csv:2: 'psi' is not a unit of torque: write the unit as N·m, in-lb, ft-lb, kgf·m or kgf·cm.",
        ),
        ({"uncertainty_pct": "200"}, "c.csv:2: uncertainty_pct 200 cannot be: check it against the certificate."),
        (
            {"temperature_c": "warm"},
            "c.csv:2: temperature_c 'warm' is not a number: write it like 100.5, without the unit.",
        ),
    ],
)
def test_a_bad_row_is_told_with_its_line_and_what_to_do(change: dict[str, str], message: str) -> None:
    entries, problems = read(FIRST | change)
    assert problems == ([message] if message else [])
    assert bool(entries) is not bool(message)


def test_every_problem_is_told_at_once_and_contradictions_too() -> None:
    entries, problems = read(FIRST, FIRST | {"date": "2026-11-03"}, FIRST | {"tag": "TW-06", "phase": ""})
    assert entries == ()
    assert problems == [
        "c.csv:3: date is '2026-11-03' here and '2026-11-02' in an earlier row of the same certificate: "
        "one certificate has one.",
        "c.csv:4: phase '': write as-found or as-left.",
    ]


def test_a_row_for_another_wrench_than_the_named_one_is_refused() -> None:
    assert read(FIRST, tag="TW-06")[1] == [
        "c.csv:2: this row is for TW-01, not for TW-06: leave the tag out of the command."
    ]
    assert read()[1] == ["c.csv:0: no readings in it: write one row for each point."]


def test_far_off_readings_are_taken_when_a_person_says_that_they_are_right() -> None:
    entries, problems = read(FIRST | {"reading": "10.2"}, far_off=True)
    assert problems == []
    assert entries[0].certificate.readings[0].reference == 10.2


@given(st.lists(st.fixed_dictionaries({name: st.text(max_size=12) for name in COLUMNS}), max_size=4))
def test_no_text_makes_the_reader_fail(rows: list[dict[str, str]]) -> None:
    entries, problems = read_certificates(enumerate(rows, 2), UNITS, "c.csv")
    assert problems or entries


@given(st.sampled_from(COLUMNS), st.text(max_size=30))
def test_no_single_cell_makes_the_reader_fail(column: str, text: str) -> None:
    entries, problems = read_certificates([(2, FIRST | {column: text})], UNITS, "c.csv")
    assert bool(entries) != bool(problems)
