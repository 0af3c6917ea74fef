"""A job: pulled in one block, closed with everything accounted for, held for what is missing."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

from cribkit.desk.closing import Closed, Said, close
from cribkit.desk.ledger import Errand, issue
from cribkit.desk.missing import find_again, lose
from cribkit.desk.pulling import Order, Pulled, pull
from cribkit.desk.results import Status
from cribkit.domain.problem import BadInput
from cribkit.domain.stock.job import JobState
from cribkit.store.audit import audit
from cribkit.store.crib import Crib
from cribkit.store.jobs import find_job, holds
from cribkit.store.loans import open_loans
from cribkit.store.opening import open_crib
from cribkit.store.posting import Entry
from tests.desk.world import DAY, consumable, crib_of, job, tool, torque

ENTRY = Entry("J. Sedge", DAY, "2026-11-25T09:00:00Z")
ROWS = {
    "tools": "S8,SKT 1/4DR 8MM 6PT,1,A1,ok,,\nSET,socket set 1/4 dr 6 pt,1,A2,ok,6 mm;7 mm,",
    "wrenches": "TW1,click,2,24,N·m,0.2,4,1/4,200,2026-09-01,12,W1,ok\n"
    "TW2,click,2,24,N·m,0.2,4,1/4,200,2026-09-01,12,W1,ok",
    "consumables": "CL,throttle body cleaner 400 ml,mL,400,1.5,L1,2027-01,C1,sensor-safe\n"
    "CL,throttle body cleaner 400 ml,mL,400,1,L2,2027-06,C1,sensor-safe",
}
BODY = (
    tool("8 mm socket, 1/4 drive")
    + tool("7 mm socket, 1/4 drive")
    + torque("10 N·m", count=7, steps=["5 N·m", "10 N·m"], tolerance="10 %")
    + consumable("throttle body cleaner", "120 mL")
)


@contextmanager
def world(folder: Path, **rows: str) -> Iterator[Crib]:
    """A crib open for posting; sound at the end."""
    with crib_of(folder, **(ROWS | rows)):
        pass
    with open_crib(folder / "crib.db", write=True) as crib:
        yield crib
        assert audit(crib).problems == ()


def pulled(crib: Crib, name: str = "wren-1", body: str = BODY, anyway: str = "") -> Pulled:
    """Pull the job."""
    return pull(crib, Order((job(body),), name, bay="2", anyway=anyway), ENTRY)


def closed(crib: Crib, name: str = "wren-1", **said: object) -> Closed:
    """Close the job."""
    return close(crib, name, Said(**said), ENTRY)  # type: ignore[arg-type]  # the fields of Said


def test_a_pull_issues_the_whole_list_and_notes_the_wrench_of_each_torque(tmp_path: Path) -> None:
    with world(tmp_path) as crib:
        done = pulled(crib)
        assert done.posted is not None
        assert [(one.tag, one.lot, one.amount, one.holder, one.job) for one in done.posted.movements] == [
            ("S8", "", 1000, "J. Sedge", "wren-1"),
            ("SET", "", 1000, "J. Sedge", "wren-1"),
            ("CL", "L1", 120_000, "J. Sedge", "wren-1"),
            ("TW1", "", 1000, "J. Sedge", "wren-1"),
        ]
        (line,) = done.torques
        assert (line.wrench, line.setting, line.setting_unit, line.count, line.steps) == ("TW1", 10, "N·m", 7, 2)
        assert (line.target_nm, line.low_nm, line.high_nm) == (10, 9, 11)


def test_a_job_that_is_not_ready_is_not_pulled_unless_there_is_a_reason(tmp_path: Path) -> None:
    with world(tmp_path, tools="SET,socket set 1/4 dr 6 pt,1,A2,ok,6 mm;7 mm,") as crib:
        done = pulled(crib)
        assert done.posted is None
        assert find_job(crib, "wren-1") is None
        assert crib.must_have("SET").on_hand == 1
        forced = pulled(crib, anyway="the customer brings the socket")
        assert forced.posted is not None
        assert {one.tag for one in forced.posted.movements} >= {"SET", "CL"}
        assert find_job(crib, "wren-1").anyway == "the customer brings the socket"  # type: ignore[union-attr]  # there


def test_each_pull_has_a_job_of_its_own(tmp_path: Path) -> None:
    with world(tmp_path) as crib:
        pulled(crib)
        with pytest.raises(BadInput, match=r"job wren-1 was pulled by J\. Sedge on 2026-11-25 and is open"):
            pulled(crib, "WREN-1")


def test_the_second_to_come_is_told_who_has_the_last_one(tmp_path: Path) -> None:
    with world(tmp_path) as crib:
        pulled(crib)
        second = pulled(crib, "wren-2", body=tool("8 mm socket, 1/4 drive"))
        assert second.posted is None
        (line,) = second.check.tools
        assert line.status is Status.OUT
        assert "J. Sedge" in line.why


def test_everything_comes_back_unless_it_is_said_otherwise(tmp_path: Path) -> None:
    with world(tmp_path) as crib:
        pulled(crib)
        done = closed(crib)
        assert done.job.state is JobState.CLOSED
        assert [one.kind.value for one in done.posted.movements] == ["return"] * 4
        assert crib.must_have("CL").on_hand == 1000
        assert [(one.item.tag, one.planned, one.used) for one in done.usage] == [("CL", 120_000, 0)]


@pytest.mark.parametrize(
    ("said", "used"),
    [
        ({"used": {"CL": "100 mL"}}, 100_000),
        ({"left": {"CL": "30 mL"}}, 90_000),
        ({"used": {"cl": "90 mL"}, "left": {"CL": "30 mL"}}, 90_000),
        ({"as_planned": True}, 120_000),
        ({"as_planned": True, "left": {"CL": "0 mL"}}, 120_000),
        ({"used": {"CL": "0 mL"}, "as_planned": True}, 0),
    ],
)
def test_what_was_used_is_kept_beside_what_was_expected(tmp_path: Path, said: dict[str, object], used: int) -> None:
    with world(tmp_path) as crib:
        pulled(crib)
        done = closed(crib, **said)
        assert [(one.planned, one.used) for one in done.usage] == [(120_000, used)]
        assert crib.must_have("CL").on_hand == 1000 - used / 1000


def test_a_missing_tool_holds_the_job_until_it_is_found(tmp_path: Path) -> None:
    with world(tmp_path) as crib:
        pulled(crib)
        done = closed(crib, missing={"S8": ""})
        assert done.job.state is JobState.HELD
        assert crib.must_have("S8").loans[0].job == "wren-1"
        with pytest.raises(BadInput, match="job wren-1 is held for S8"):
            closed(crib)
        find_again(crib, "S8", Errand(job="wren-1"), ENTRY)
        assert find_job(crib, "wren-1").state is JobState.CLOSED  # type: ignore[union-attr]  # there
        assert crib.must_have("S8").on_hand == 1


def test_a_missing_tool_is_given_up_with_a_reason_and_can_still_be_found(tmp_path: Path) -> None:
    with world(tmp_path) as crib:
        pulled(crib)
        closed(crib, missing={"S8": "1"})
        lose(crib, "S8", Errand(job="wren-1", note="searched twice"), ENTRY)
        assert find_job(crib, "wren-1").state is JobState.CLOSED  # type: ignore[union-attr]  # there
        assert [(one.settled, one.reason) for one in holds(crib, "wren-1", unsettled=False)] == [
            ("lost", "searched twice")
        ]
        find_again(crib, "S8", Errand(), ENTRY)
        assert crib.must_have("S8").on_hand == 1


def test_a_broken_tool_holds_the_job_until_its_pieces_are_accounted_for(tmp_path: Path) -> None:
    with world(tmp_path) as crib:
        pulled(crib)
        done = closed(crib, broken={"S8": ""}, piece={"SET": "the 7 mm"})
        assert done.job.state is JobState.HELD
        assert [(one.tag, one.reason) for one in done.holds] == [("S8", "a piece of it"), ("SET", "the 7 mm")]
        assert (crib.must_have("S8").on_hand, crib.must_have("SET").on_hand) == (0, 1)
        find_again(crib, "S8", Errand(job="wren-1"), ENTRY)
        lose(crib, "SET", Errand(job="wren-1", note="magnet swept the floor"), ENTRY)
        assert find_job(crib, "wren-1").state is JobState.CLOSED  # type: ignore[union-attr]  # there


def test_a_broken_tool_with_every_piece_there_does_not_hold_the_job(tmp_path: Path) -> None:
    with world(tmp_path) as crib:
        pulled(crib)
        done = closed(crib, broken={"S8": "complete", "TW1": "complete"})
        assert done.job.state is JobState.CLOSED
        assert crib.must_have("S8").on_hand == 0
        assert crib.must_have("TW1").condition == "damaged"


def test_a_step_that_another_wrench_does_keeps_its_own_band(tmp_path: Path) -> None:
    wrenches = (
        "LOW,click,2,10,N·m,0.2,4,1/4,200,2026-09-01,12,W1,ok\nHIGH,click,8,40,N·m,0.5,4,1/4,200,2026-09-01,12,W1,ok"
    )
    body = tool("8 mm socket, 1/4 drive") + torque("20 N·m", count=7, steps=["5 N·m", "20 N·m"], tolerance="10 %")
    with world(tmp_path, wrenches=wrenches) as crib:
        main, step = pulled(crib, body=body).torques
        assert (main.wrench, main.low_nm, main.high_nm) == ("HIGH", pytest.approx(18), pytest.approx(22))
        assert (step.wrench, step.target_nm, step.setting) == ("LOW", 5, 5)
        assert (step.low_nm, step.high_nm) == (pytest.approx(4.5), pytest.approx(5.5))


def test_cycles_are_fasteners_times_steps_of_the_wrench_that_did_them(tmp_path: Path) -> None:
    with world(tmp_path) as crib:
        pulled(crib)
        closed(crib, torque={"bolts": "TW2"})
        assert {one.tag: one.cycles for one in crib.wrenches()} == {"TW1": 0, "TW2": 14}


def test_every_problem_of_a_close_comes_at_once_and_nothing_is_posted(tmp_path: Path) -> None:
    with world(tmp_path) as crib:
        pulled(crib)
        with pytest.raises(BadInput) as refused:
            closed(
                crib,
                missing={"NO-1": "", "S8": "2"},
                used={"CL": "500 mL", "SET": "1"},
                broken={"TW2": "", "TW1": "somehow"},
            )
        assert sorted(problem.code for problem in refused.value.problems) == [
            "bad-broken",
            "not-of-job",
            "too-much",
            "too-much",
            "tool-used",
            "unknown-tag",
        ]
        assert find_job(crib, "wren-1").state is JobState.OPEN  # type: ignore[union-attr]  # there
        for torque_said in ({"bolts": "S8"}, {"nuts": "TW2"}):
            with pytest.raises(BadInput):
                closed(crib, torque=torque_said)
        assert crib.must_have("S8").on_hand == 0


def test_what_was_issued_to_a_job_later_comes_back_with_it(tmp_path: Path) -> None:
    with world(tmp_path) as crib:
        pulled(crib)
        issue(crib, "TW2", Errand(holder="R. Holm", job="wren-1"), ENTRY)
        closed(crib)
        assert crib.must_have("TW2").loans == ()


def test_a_job_known_only_from_its_loans_can_be_closed(tmp_path: Path) -> None:
    with world(tmp_path, loans="S8,R. Holm,2026-11-20,1,heron-9") as crib:
        done = closed(crib, "heron-9")
        assert (done.job.state, done.job.by, done.job.day) == (JobState.CLOSED, "R. Holm", dt.date(2026, 11, 20))
        assert crib.must_have("S8").on_hand == 1


def test_an_offset_adapter_and_a_left_hand_thread_stay_on_record_for_a_later_look_back(tmp_path: Path) -> None:
    """L / (L + E·cos a) with L 200 mm, E 40 mm straight out: 200/240; another wrench with L 260 mm: 260/300."""
    dials = (
        ROWS["wrenches"]
        .replace("click", "dial")
        .replace("TW2,dial,2,24,N·m,0.2,4,1/4,200", "TW2,dial,2,24,N·m,0.2,4,1/4,260")
    )
    tools = ROWS["tools"] + "\nCF,CROWFOOT 8 MM 1/4 DRIVE OPEN END,1,A3,ok,,"
    body = torque("10 N·m", reach={"adapter": "8 mm crowfoot, 1/4 drive", "offset": "40 mm"}, direction="left-hand")
    with world(tmp_path, wrenches=dials, tools=tools) as crib:
        (line,) = pulled(crib, body=body).torques
        assert line.lever == pytest.approx(200 / 240 if line.wrench == "TW1" else 260 / 300)
        assert line.left_hand
        other = "TW2" if line.wrench == "TW1" else "TW1"
        (after,) = closed(crib, torque={"bolts": other}).torques
        assert after.lever == pytest.approx(260 / 300 if other == "TW2" else 200 / 240)


def test_what_another_job_uses_is_never_found_for_a_job_that_misses_its_own(tmp_path: Path) -> None:
    """Two sockets of one tag: a piece of one is missing in wren-1, the other is in use in wren-2."""
    with world(tmp_path, tools=ROWS["tools"].replace("6PT,1", "6PT,2")) as crib:
        pulled(crib)
        issue(crib, "S8", Errand(holder="R. Holm", job="wren-2"), ENTRY)
        closed(crib, piece={"S8": "a splinter"})
        with pytest.raises(
            BadInput, match=r"R\. Holm for job wren-2 has it; job wren-1 misses a piece of it: say which"
        ):
            find_again(crib, "S8", Errand(), ENTRY)
        assert find_again(crib, "S8", Errand(job="wren-1"), ENTRY).movements == ()
        assert find_job(crib, "wren-1").state is JobState.CLOSED  # type: ignore[union-attr]  # there
        assert [loan.job for loan in open_loans(crib, tag="S8")] == ["wren-2"]


def test_a_loss_is_found_again_while_another_job_uses_its_twin(tmp_path: Path) -> None:
    with world(tmp_path, tools=ROWS["tools"].replace("6PT,1", "6PT,2")) as crib:
        pulled(crib)
        issue(crib, "S8", Errand(holder="R. Holm", job="wren-2"), ENTRY)
        closed(crib, missing={"S8": ""})
        lose(crib, "S8", Errand(job="wren-1", note="searched twice"), ENTRY)
        with pytest.raises(BadInput, match=r"R\. Holm for job wren-2 has it; J\. Sedge for job wren-1 lost it"):
            find_again(crib, "S8", Errand(), ENTRY)
        find_again(crib, "S8", Errand(job="wren-1"), ENTRY)
        assert crib.must_have("S8").on_hand == 1
        assert [loan.job for loan in open_loans(crib, tag="S8")] == ["wren-2"]


def test_what_did_not_come_back_has_no_missing_piece(tmp_path: Path) -> None:
    with world(tmp_path) as crib:
        pulled(crib)
        for said in ({"piece": {"S8": "a splinter"}}, {"broken": {"S8": ""}}):
            with pytest.raises(BadInput, match="nothing of it came back"):
                closed(crib, missing={"S8": ""}, **said)
