"""The look back over the work done with a wrench."""

import datetime as dt
from pathlib import Path

import pytest

from cribkit.desk.recording import change_rules, changed, shop_rules
from cribkit.desk.tracing import trace_wrench
from cribkit.domain.calibration.due import Start
from cribkit.domain.calibration.trace import Answer
from cribkit.report.tracing import trace_listing, trace_sheet, trace_text
from tests.calibration.world import GOOD, STRONG, TODAY, WRENCHES, calibrate, crib_at, happen, posted, work, wrench

LATER = dt.date(2027, 9, 1)
INSIDE, OUTSIDE, OPEN = Answer.INSIDE, Answer.OUTSIDE, Answer.CANNOT_TELL


def test_a_failed_as_found_lists_every_job_since_the_last_good_calibration(tmp_path: Path) -> None:
    with crib_at(tmp_path) as crib:
        work(crib, "J-0", "TW-1", "2026-03-01")
        work(crib, "J-1", "TW-1", "2026-03-02", setting=20, band=(19, 21))
        work(crib, "J-2", "TW-1", "2026-06-01", setting=100, band=(95, 105), vehicle="Tern minibus 3")
        work(crib, "J-2", "TW-1", "2026-06-01", setting=60, band=(55, 65), torque="nut", vehicle="Tern minibus 3")
        work(crib, "J-3", "TW-2", "2026-06-01")
        work(crib, "J-4", "TW-1", "2026-07-01", done=0)
        work(crib, "J-5", "TW-1", "2026-11-20", setting=100, band=(100, 110), state="open", done=0)
        work(crib, "J-6", "TW-1", "2026-11-21", setting=100, band=(95, 105))
        found = calibrate(crib, "TW-1", "SD-26-101", "2026-11-20", STRONG, GOOD).trace
        assert found is not None
        assert [(one.work.job, one.work.torque_id, one.answer) for one in found.doubts] == [
            ("J-1", "bolts", INSIDE),
            ("J-2", "bolts", OUTSIDE),
            ("J-2", "nut", INSIDE),
            ("J-5", "bolts", OPEN),
        ]
        assert (str(found.since), [name for name, _ in found.vehicles]) == (
            "2026-03-02",
            ["Wren van 12", "Tern minibus 3"],
        )
        # 110 applied where 100 was set: the mean of 1/1.10, 1/1.105 and 1/1.095 turned round.
        strong = found.doubts[1].estimate
        assert strong is not None
        assert (round(strong.likely_nm, 2), strong.low_nm, round(strong.high_nm, 6)) == (110.0, 109.5, 110.5)


def test_the_same_look_back_can_be_asked_for_later(tmp_path: Path) -> None:
    with crib_at(tmp_path) as crib:
        work(crib, "J-2", "TW-1", "2026-06-01", setting=100, band=(95, 105))
        done = calibrate(crib, "TW-1", "SD-26-101", "2026-11-20", STRONG, GOOD)
        assert trace_wrench(crib, wrench(crib, "TW-1"), TODAY) == done.trace
        assert trace_wrench(crib, wrench(crib, "TW-1"), TODAY, dt.date(2026, 6, 2)).doubts == ()


def test_jobs_past_due_are_listed_whatever_the_readings_say(tmp_path: Path) -> None:
    with crib_at(tmp_path) as crib:
        work(crib, "J-1", "TW-1", "2027-03-02", setting=60)
        work(crib, "J-2", "TW-1", "2027-03-03", setting=60)
        found = trace_wrench(crib, wrench(crib, "TW-1"), dt.date(2027, 4, 1))
        assert [(one.work.job, one.work.past_due, one.answer) for one in found.doubts] == [
            ("J-1", False, OPEN),
            ("J-2", True, OPEN),
        ]
        assert found.doubts[0].why == "no calibration since then has as-found readings"


def test_jobs_beyond_the_cycles_are_past_due(tmp_path: Path) -> None:
    with crib_at(tmp_path) as crib:
        work(crib, "J-1", "TW-1", "2026-05-01", count=5000)
        work(crib, "J-2", "TW-1", "2026-05-02", count=1)
        found = trace_wrench(crib, wrench(crib, "TW-1"), TODAY)
        assert [one.work.past_due for one in found.doubts] == [False, True]


def test_work_on_the_day_of_a_calibration_may_have_come_after_it_and_gets_the_worse_answer(tmp_path: Path) -> None:
    with crib_at(tmp_path) as crib:
        work(crib, "J-1", "TW-1", "2026-06-01", setting=100, band=(95, 105))
        calibrate(crib, "TW-1", "SD-26-101", "2026-06-01", GOOD)
        found = calibrate(crib, "TW-1", "SD-26-102", "2026-11-20", STRONG, GOOD).trace
        assert found is not None
        assert [(one.work.job, one.answer) for one in found.doubts] == [("J-1", OUTSIDE)]
        # The other way round: found strong that day, right in November.
        work(crib, "J-2", "TW-2", "2026-06-01", setting=60, band=(57, 63), unit="ft-lb")
        low = {"30": "33;33;33;33;33", "90": "99;99;99;99;99", "150": "165;165;165;165;165"}
        right = {"30": "30;30;30;30;30", "90": "90;90;90;90;90", "150": "150;150;150;150;150"}
        calibrate(crib, "TW-2", "SD-26-201", "2026-06-01", low, right)
        calibrate(crib, "TW-2", "SD-26-202", "2026-11-20", right)
        later = trace_wrench(crib, wrench(crib, "TW-2"), TODAY, dt.date(2026, 6, 1))
        assert [(one.work.job, one.answer) for one in later.doubts] == [("J-2", OUTSIDE)]


@pytest.mark.parametrize(("pulled", "past_due"), [("2026-08-20", True), ("2026-11-20", False)])
def test_work_pulled_before_the_day_of_a_late_calibration_counts_as_done_before_it(
    tmp_path: Path, pulled: str, past_due: bool
) -> None:
    with crib_at(tmp_path, WRENCHES.replace("12,5000,SD-26-001", "6,5000,SD-26-001")) as crib:
        work(crib, "J-1", "TW-1", "2026-11-20")
        with crib.posting():
            crib.connection.execute("UPDATE job SET day = ? WHERE job = 'J-1'", (pulled,))
        calibrate(crib, "TW-1", "SD-26-101", "2026-11-20", GOOD)
        found = trace_wrench(crib, wrench(crib, "TW-1"), TODAY)
        assert [(one.work.job, one.work.past_due) for one in found.doubts] == [("J-1", past_due)]


def test_an_interval_that_starts_at_first_use_is_counted_so_in_the_look_back(tmp_path: Path) -> None:
    with crib_at(tmp_path) as crib:
        work(crib, "J-1", "TW-1", "2026-08-01")
        work(crib, "J-2", "TW-1", "2027-08-01")
        work(crib, "J-3", "TW-1", "2027-08-02")
        days = {one.work.job: one.work.past_due for one in trace_wrench(crib, wrench(crib, "TW-1"), LATER).doubts}
        assert days == {"J-1": False, "J-2": True, "J-3": True}
        change_rules(crib, changed(shop_rules(crib), None, Start.FIRST_USE, None), posted())
        days = {one.work.job: one.work.past_due for one in trace_wrench(crib, wrench(crib, "TW-1"), LATER).doubts}
        assert days == {"J-1": False, "J-2": False, "J-3": True}


def test_each_job_is_judged_by_the_readings_that_came_next(tmp_path: Path) -> None:
    with crib_at(tmp_path) as crib:
        work(crib, "J-1", "TW-1", "2026-04-01", setting=100, band=(95, 105))
        work(crib, "J-2", "TW-1", "2026-08-01", setting=100, band=(95, 105))
        calibrate(crib, "TW-1", "SD-26-101", "2026-06-01", GOOD)
        found = calibrate(crib, "TW-1", "SD-26-102", "2026-11-20", STRONG, GOOD).trace
        assert found is not None
        assert [(one.work.job, one.answer) for one in found.doubts] == [("J-2", OUTSIDE)]
        longer = trace_wrench(crib, wrench(crib, "TW-1"), TODAY, dt.date(2026, 1, 1))
        assert [(one.work.job, one.answer) for one in longer.doubts] == [("J-1", INSIDE), ("J-2", OUTSIDE)]


def test_units_adapters_and_left_hand_threads_are_taken_into_account(tmp_path: Path) -> None:
    points = {"30": "33", "90": "99", "150": "165"}  # a tenth too strong everywhere
    with crib_at(tmp_path) as crib:
        work(crib, "J-1", "TW-2", "2026-06-01", setting=100, unit="ft-lb", band=(148, 150))
        work(crib, "J-2", "TW-2", "2026-06-01", setting=100, unit="ft-lb", band=(185, 187), lever=0.8)
        work(crib, "J-3", "TW-2", "2026-06-01", setting=100, unit="ft-lb", left_hand=1)
        found = calibrate(crib, "TW-2", "SD-26-102", "2026-11-20", points).trace
        assert found is not None
        # 110 lbf·ft = 149.13997431644404 N·m (from the definitions); over 0.8 with the adapter = 186.425.
        assert [(one.answer, one.estimate and round(one.estimate.likely_nm, 3)) for one in found.doubts] == [
            (INSIDE, 149.14),
            (INSIDE, 186.425),
            (OPEN, None),
        ]


def test_without_an_earlier_good_calibration_everything_is_listed(tmp_path: Path) -> None:
    with crib_at(tmp_path) as crib:
        work(crib, "J-1", "TW-4", "2020-01-01", setting=15, band=(14, 16))
        found = calibrate(crib, "TW-4", "SD-26-104", "2026-11-20", {"5": "6", "15": "18", "25": "30"}).trace
        assert found is not None
        assert (found.since, [one.answer for one in found.doubts]) == (None, [OUTSIDE])
        assert found.doubts[0].work.past_due


def test_the_page_and_the_rows_say_the_same(tmp_path: Path) -> None:
    with crib_at(tmp_path) as crib:
        work(crib, "J-2", "TW-1", "2026-06-01", setting=100, band=(95, 105), vehicle="<b>Tern</b> & co")
        found = calibrate(crib, "TW-1", "SD-26-101", "2026-11-20", STRONG, GOOD).trace
        assert found is not None
        assert trace_text(found, 80) == (
            "TW-1: certificate SD-26-101 found it out of tolerance; 1 torque from 2026-03-02\n"
            "to 2026-11-20: 0 inside, 1 OUTSIDE, 0 cannot tell.\n"
            "\n"
            "<b>Tern</b> & co\n"
            "day         job    fasteners     spec        applied N·m    answer\n"
            "----------  -----  ------------  ----------  -------------  ------------\n"
            "2026-06-01  J-2    2 x bolts of  as written  110 (109.5 to  OUTSIDE: too\n"
            "                   the carrier               110.5)         high"
        )
        row = dict(zip(trace_listing(found).columns, trace_listing(found).rows[0], strict=True))
        assert (row["answer"], row["likely N·m"], row["vehicle"]) == ("outside", row["likely N·m"], "<b>Tern</b> & co")
        page = trace_sheet(found)
        assert "&lt;b&gt;Tern&lt;/b&gt; &amp; co" in page
        assert "<b>Tern" not in page
        assert "service information, local codes and licensed practice come first" in page


def test_a_dropped_wrench_is_traced_by_its_next_as_found_readings(tmp_path: Path) -> None:
    with crib_at(tmp_path) as crib:
        work(crib, "J-1", "TW-1", "2026-06-01", setting=100, band=(95, 105))
        happen(crib, "TW-1", "dropped", "2026-11-01")
        assert [one.answer for one in trace_wrench(crib, wrench(crib, "TW-1"), TODAY).doubts] == [OPEN]
        assert calibrate(crib, "TW-1", "SD-26-101", "2026-11-20", GOOD).trace is None
