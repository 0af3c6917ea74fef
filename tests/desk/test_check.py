"""What the pre-job check answers, need by need, on small cribs."""

from __future__ import annotations

import datetime as dt
from pathlib import Path

import pytest

from cribkit.desk.check import check, shelf
from cribkit.desk.results import Check, Status
from cribkit.domain.torque import Guard
from tests.desk.world import DAY, consumable, crib_of, job, tool, torque

SOCKET = "S8,SKT 1/4DR 8MM 6PT,1,A1,ok,,"
CLICK = "TW1,click,2,24,N·m,0.2,4,1/4,200,2026-09-01,12,W1,ok"


def checked(folder: Path, *bodies: str, on: dt.date = DAY, **rows: str) -> Check:
    """Check one procedure for each body, side by side."""
    with crib_of(folder, **rows) as crib:
        return check(crib, [job(body, f"job-{at}") for at, body in enumerate(bodies, 1)], on)


TOOLS = {
    "there": (SOCKET, "", Status.READY, ""),
    "another size": ("S9,SKT 1/4DR 9MM 6PT,1,A1,ok,,", "", Status.ABSENT, "not stocked"),
    "another drive": ("S8,SKT 3/8DR 8MM 6PT,1,A1,ok,,", "", Status.ABSENT, "not stocked"),
    "external six-lobe is no hexagon": ("E8,SKT 1/4DR E8,1,A1,ok,,", "", Status.ABSENT, "not stocked"),
    "damaged": ("S8,SKT 1/4DR 8MM 6PT,1,A1,damaged,,split", "", Status.UNFIT, "S8 is damaged (split)"),
    "missing": ("S8,SKT 1/4DR 8MM 6PT,1,A1,missing,,", "", Status.UNFIT, "S8 is missing"),
    "issued": (SOCKET, "S8,A. Reed,2026-11-20,1,J7", Status.OUT, "S8 is out to A. Reed since 2026-11-20"),
    "in a set": ("SET,socket set 1/4 dr 6 pt,1,A2,ok,6 mm;7 mm;8 mm,", "", Status.READY, ""),
    "missing from its set": ("SET,socket set 1/4 dr 6 pt,1,A2,ok,6 mm;7 mm;8 mm (missing),", "", Status.ABSENT, ""),
    "the drive is left open": ("S8,8MM SOCKET,1,A1,ok,,", "", Status.CONFIRM, ""),
}


@pytest.mark.parametrize(("row", "loan", "status", "why"), TOOLS.values(), ids=TOOLS)
def test_a_tool_need_stands_as_the_crib_says(tmp_path: Path, row: str, loan: str, status: Status, why: str) -> None:
    result = checked(tmp_path, tool("8 mm socket, 1/4 drive"), tools=row, loans=loan)
    assert result.tools[0].status is status
    assert why in result.tools[0].why
    assert result.ready is (status is Status.READY)


def test_what_is_taken_from_a_set_is_named(tmp_path: Path) -> None:
    row = "SET,socket set 1/4 dr 6 pt,1,A2,ok,6 mm;7 mm;8 mm,"
    body = tool("8 mm socket, 1/4 drive") + tool("6 mm socket, 1/4 drive")
    (pick,) = checked(tmp_path, body, tools=row).pull
    assert (pick.tag, pick.count) == ("SET", 1)
    assert "8 mm" in pick.member
    assert "6 mm" in pick.member


def test_needs_of_one_procedure_share_and_procedures_side_by_side_do_not(tmp_path: Path) -> None:
    body = tool("8 mm socket, 1/4 drive")
    result = checked(tmp_path, body + body, body, tools=SOCKET)
    assert [line.status for line in result.tools] == [Status.READY, Status.READY, Status.SHORT]
    assert "job-1" in result.tools[2].why
    assert [(pick.tag, pick.count) for pick in result.pull] == [("S8", 1)]


def test_several_at_once_may_come_from_two_shelves(tmp_path: Path) -> None:
    rows = 'V1,"clamp, hose, 12-20 mm",1,A1,ok,,\nAX1,axle stand,2,F1,ok,,\nAX2,axle stand,3,F2,ok,,'
    result = checked(tmp_path, tool("axle stand", count=4), tools=rows)
    assert result.ready
    assert sum(pick.count for pick in result.pull) == 4


def test_some_but_not_enough_is_short(tmp_path: Path) -> None:
    result = checked(tmp_path, tool("axle stand", count=4), tools="AX1,axle stand,3,F1,ok,,")
    assert result.tools[0].status is Status.SHORT
    assert result.tools[0].why == "3 of 4 there"


def test_a_stand_in_is_taken_only_when_the_first_choice_is_not_there(tmp_path: Path) -> None:
    body = tool("8 mm socket, 1/4 drive", instead=["8 mm nut driver"])
    result = checked(tmp_path, body, tools="N8,nut driver 8 mm,1,A3,ok,,")
    assert [pick.tag for pick in result.tools[0].picked] == ["N8"]
    with_both = checked_again(tmp_path, body, SOCKET + "\nN8,nut driver 8 mm,1,A3,ok,,")
    assert [pick.tag for pick in with_both.tools[0].picked] == ["S8"]


def checked_again(folder: Path, body: str, tools: str) -> Check:
    """The same question to another crib."""
    other = folder / "other"
    other.mkdir()
    return checked(other, body, tools=tools)


def test_an_optional_need_does_not_block(tmp_path: Path) -> None:
    result = checked(tmp_path, tool("inspection mirror", optional=True), tools=SOCKET)
    assert result.ready
    assert result.tools[0].status is Status.ABSENT


SPEC = torque("10 N·m", tolerance="10 %")
TORQUES = {
    "covered": (CLICK, SPEC, Status.READY, ()),
    "overdue": ("TW1,click,2,24,N·m,0.2,4,1/4,200,2025-09-01,12,W1,ok", SPEC, Status.UNFIT, ("overdue",)),
    "valid through the due date": ("TW1,click,2,24,N·m,0.2,4,1/4,200,2025-11-25,12,W1,ok", SPEC, Status.READY, ()),
    "overdue from the next day": (
        "TW1,click,2,24,N·m,0.2,4,1/4,200,2025-11-24,12,W1,ok",
        SPEC,
        Status.UNFIT,
        ("overdue",),
    ),
    "never calibrated": ("TW1,click,2,24,N·m,0.2,4,1/4,200,,12,W1,ok", SPEC, Status.UNFIT, ("no-calibration",)),
    "below a fifth of full scale": (
        "TW1,click,5,100,N·m,0.2,4,1/4,200,2026-09-01,12,W1,ok",
        SPEC,
        Status.UNFIT,
        ("below-range",),
    ),
    "above its range": ("TW1,click,1,5,N·m,0.05,4,1/4,200,2026-09-01,12,W1,ok", SPEC, Status.UNFIT, ("above-range",)),
    "marks too coarse": ("TW1,click,5,25,N·m,4,4,1/4,200,2026-09-01,12,W1,ok", SPEC, Status.UNFIT, ("too-coarse",)),
    "damaged": ("TW1,click,2,24,N·m,0.2,4,1/4,200,2026-09-01,12,W1,damaged", SPEC, Status.UNFIT, ("unfit",)),
    "no way from another square": (
        "TW1,click,2,24,N·m,0.2,4,3/8,200,2026-09-01,12,W1,ok",
        SPEC,
        Status.ABSENT,
        ("no-reach",),
    ),
    "no wrench at all": ("", SPEC, Status.ABSENT, ()),
}


@pytest.mark.parametrize(("row", "body", "status", "reasons"), TORQUES.values(), ids=TORQUES)
def test_a_torque_need_stands_as_the_wrenches_allow(
    tmp_path: Path, row: str, body: str, status: Status, reasons: tuple[str, ...]
) -> None:
    result = checked(tmp_path, body, tools=SOCKET, wrenches=row)
    (line,) = result.torques
    assert line.status is status
    assert [wrench.reasons for wrench in line.rejected] == ([reasons] if reasons else [])


def test_the_card_says_wrench_setting_and_way(tmp_path: Path) -> None:
    (line,) = checked(tmp_path, SPEC, tools=SOCKET, wrenches=CLICK).torques
    assert line.coverage is not None
    assert (line.coverage.tag, line.coverage.setting, line.coverage.setting_unit) == ("TW1", 10, "N·m")
    # ISO 6789: a = (set - applied) / applied, so a wrench within 4 % set to 10 applies 10/1.04 to 10/0.96.
    assert line.coverage.applied_low_nm == pytest.approx(10 / 1.04)
    assert line.coverage.applied_high_nm == pytest.approx(10 / 0.96)
    assert [(pick.role, pick.tag) for pick in line.reach] == [("driver", "S8")]


def test_two_procedures_cannot_both_have_the_only_wrench(tmp_path: Path) -> None:
    rows = SOCKET.replace(",1,A1", ",2,A1")
    result = checked(tmp_path, SPEC, SPEC, tools=rows, wrenches=CLICK)
    assert sorted(line.status for line in result.torques) == [Status.READY, Status.SHORT]


def test_an_adapter_opens_the_way_and_is_pulled(tmp_path: Path) -> None:
    rows = SOCKET + '\nAD,"adapter, 3/8 female x 1/4 male",1,A4,ok,,'
    wrench = "TW1,click,2,24,N·m,0.2,4,3/8,200,2026-09-01,12,W1,ok"
    result = checked(tmp_path, SPEC, tools=rows, wrenches=wrench)
    assert result.ready
    assert [pick.tag for pick in result.torques[0].reach] == ["AD", "S8"]
    assert {pick.tag for pick in result.pull} == {"AD", "S8", "TW1"}


def test_an_adapter_the_wrong_way_round_does_not(tmp_path: Path) -> None:
    rows = SOCKET + '\nAD,"adapter, 1/4 female x 3/8 male",1,A4,ok,,'
    wrench = "TW1,click,2,24,N·m,0.2,4,3/8,200,2026-09-01,12,W1,ok"
    assert checked(tmp_path, SPEC, tools=rows, wrenches=wrench).torques[0].status is Status.ABSENT


def test_steps_may_take_two_wrenches(tmp_path: Path) -> None:
    body = torque("60 N·m", tolerance="10 %", head="13 mm hex", steps=["10 N·m", "60 N·m"])
    tools = 'S13,SKT 1/2DR 13MM,1,A1,ok,,\nAD,"adapter, 3/8 female x 1/2 male",1,A4,ok,,'
    small = "TW1,click,5,25,N·m,0.2,4,3/8,200,2026-09-01,12,W1,ok"
    large = "TW2,click,40,200,N·m,1,4,1/2,400,2026-09-01,12,W2,ok"
    (line,) = checked(tmp_path, body, tools=tools, wrenches=f"{small}\n{large}").torques
    assert line.status is Status.READY
    assert [step.coverage.tag if step.coverage else None for step in line.steps] == ["TW1", "TW2"]


def test_every_wrench_of_a_step_has_its_way_and_all_of_it_is_pulled(tmp_path: Path) -> None:
    body = torque("60 N·m", tolerance="10 %", head="13 mm hex", steps=["10 N·m", "60 N·m"])
    tools = 'S13,SKT 1/2DR 13MM,1,A1,ok,,\nAD,"adapter, 3/8 female x 1/2 male",1,A4,ok,,'
    small = "TW1,click,5,25,N·m,0.2,4,3/8,200,2026-09-01,12,W1,ok"
    large = "TW2,click,40,200,N·m,1,4,1/2,400,2026-09-01,12,W2,ok"
    result = checked(tmp_path, body, tools=tools, wrenches=f"{small}\n{large}")
    (line,) = result.torques
    assert [pick.tag for pick in line.reach] == ["S13"]
    assert [(tag, [pick.tag for pick in picks]) for tag, picks in line.other_ways] == [("TW1", ["AD", "S13"])]
    assert {pick.tag for pick in result.pull} == {"TW1", "TW2", "S13", "AD"}


def test_one_wrench_for_all_steps_goes_before_two_with_as_many_adapters(tmp_path: Path) -> None:
    body = torque("10 N·m", tolerance="10 %", steps=["5 N·m", "10 N·m"])
    tools = 'S8,SKT 3/8DR 8MM,1,A1,ok,,\nAD,"adapter, 1/4 female x 3/8 male",1,A4,ok,,'
    both = "TW1,click,2,24,N·m,0.2,4,1/4,200,2026-09-01,12,W1,ok"
    main_only = "TW2,click,9,45,N·m,0.2,4,3/8,250,2026-09-01,12,W2,ok"
    (line,) = checked(tmp_path, body, tools=tools, wrenches=f"{both}\n{main_only}").torques
    assert [step.coverage.tag if step.coverage else None for step in line.steps] == ["TW1", "TW1"]
    assert line.other_ways == ()


def test_of_equal_ways_the_one_over_the_procedures_own_socket_is_taken(tmp_path: Path) -> None:
    tools = "S1,SKT 1/4DR 8MM 6PT,1,A1,ok,,\nS2,SKT 1/4DR 8MM DP 6PT,1,A2,ok,,"
    result = checked(tmp_path, tool("8 mm deep socket, 1/4 drive") + SPEC, tools=tools, wrenches=CLICK)
    assert [pick.tag for pick in result.torques[0].reach] == ["S2"]
    assert {pick.tag for pick in result.pull} == {"S2", "TW1"}


def test_an_adapter_square_to_the_handle_is_said_to_leave_the_setting(tmp_path: Path) -> None:
    reach = {"adapter": "8 mm crowfoot, 1/4 drive", "offset": "30 mm", "angle": "90°"}
    body = torque("10 N·m", tolerance="10 %", reach=reach)
    (line,) = checked(tmp_path, body, tools="CF,crowfoot 8 mm 1/4 drive,1,A1,ok,,", wrenches=CLICK).torques
    assert line.coverage is not None
    assert line.coverage.setting == 10
    assert any("leaves the setting as it is" in text for text in line.warnings)


def test_a_head_that_is_not_understood_is_said_to_be_the_procedures_fault(tmp_path: Path) -> None:
    (line,) = checked(tmp_path, torque("10 N·m", head="blorp"), tools=SOCKET, wrenches=CLICK).torques
    assert line.status is Status.ABSENT
    assert line.why.startswith('the head "blorp" is not understood')
    assert "mend the procedure" in line.next


CLEANER = "C1,throttle body cleaner,mL,500,2,L1,2028-01,B1,sensor-safe"
CONSUMABLES = {
    "there": (CLEANER, "120 mL", [], Status.READY, 1000),
    "not enough": (CLEANER, "1.2 L", [], Status.SHORT, 1000),
    "expired": ("C1,throttle body cleaner,mL,500,2,L1,2026-10,B1,", "120 mL", [], Status.UNFIT, 0),
    "good through the month's last day": (
        "C1,throttle body cleaner,mL,500,2,L1,2026-11,B1,",
        "120 mL",
        [],
        Status.READY,
        1000,
    ),
    "another chemistry": (
        "C1,brake parts cleaner,mL,500,2,L1,,B1,",
        "120 mL",
        ["brake parts cleaner"],
        Status.ABSENT,
        0,
    ),
    "none left": ("C1,throttle body cleaner,mL,500,0,,,B1,", "120 mL", [], Status.ABSENT, 0),
}


@pytest.mark.parametrize(("row", "amount", "never", "status", "on_hand"), CONSUMABLES.values(), ids=CONSUMABLES)
def test_a_consumable_need_stands_as_the_lots_allow(
    tmp_path: Path, row: str, amount: str, never: list[str], status: Status, on_hand: float
) -> None:
    result = checked(tmp_path, consumable("throttle body cleaner", amount, never=never), consumables=row)
    (line,) = result.consumables
    assert (line.status, line.on_hand) == (status, on_hand)


def test_two_jobs_draw_on_the_same_can(tmp_path: Path) -> None:
    body = consumable("throttle body cleaner", "600 mL")
    result = checked(tmp_path, body, body, consumables=CLEANER)
    assert [line.status for line in result.consumables] == [Status.READY, Status.SHORT]
    assert result.consumables[1].short == pytest.approx(200)


def test_pieces_of_a_liquid_are_whole_containers(tmp_path: Path) -> None:
    result = checked(tmp_path, consumable("throttle body cleaner", "2"), consumables=CLEANER)
    assert (result.consumables[0].needed, result.consumables[0].unit) == (1000, "mL")


def test_shelves_are_in_the_order_of_their_numbers() -> None:
    assert sorted(["A10-1", "A2-10", "A2-9", "", "B1"], key=shelf) == ["A2-9", "A2-10", "A10-1", "B1", ""]


def test_a_prevailing_torque_that_nobody_knows_yet_is_said_to_be_left_out(tmp_path: Path) -> None:
    result = checked(tmp_path, torque("10 N·m + prevailing torque", tolerance="10 %"), tools=SOCKET, wrenches=CLICK)
    assert result.torques[0].warnings == (
        "the setting leaves out the prevailing torque: measure it on the job, add it to the setting, and see that "
        "the sum lies in the wrench's usable range",
    )


def test_a_prevailing_torque_that_is_stated_is_in_the_setting(tmp_path: Path) -> None:
    """AC 43.13-1B page 7-43: final torque = drag + desired torque."""
    body = torque("10 N·m + 2 N·m prevailing torque", tolerance="10 %")
    line = checked(tmp_path, body, tools=SOCKET, wrenches=CLICK).torques[0]
    assert line.coverage is not None
    assert (line.coverage.setting, line.warnings) == (12, ())


def test_an_angle_is_turned_on_from_the_step_before(tmp_path: Path) -> None:
    body = torque("10 N·m", tolerance="10 %", steps=["10 N·m", "+1/4 turn", "60 degrees", "loosen 360°"])
    gauge = tool("angle gauge")
    line = checked(tmp_path, gauge + body, tools=SOCKET, wrenches=CLICK).torques[0]
    assert [step.text for step in line.steps] == ["10 N·m", "+1/4 turn", "+60 degrees", "loosen 360°"]


def test_with_a_guard_the_card_says_how_much_of_the_tolerance_the_wrench_uses(tmp_path: Path) -> None:
    with crib_of(tmp_path, SOCKET, CLICK) as crib:
        done = check(crib, (job(torque("10 N·m", tolerance="10 %")),), DAY, Guard(0.01))
        # 10/1.04 to 10/0.96 N·m applied, of 9 to 11 N·m allowed: 0.801/2 = 40 %
        assert done.torques[0].warnings == ("guard of 1 % kept: TW1 uses 40 % of the tolerance (2.5 to 1)",)
        bare = check(crib, (job(torque("10 N·m")),), DAY, Guard(0.01))
        assert bare.torques[0].warnings == (
            "no tolerance is stated, so the guard of 1 % has nothing to keep TW1 clear of",
        )
        assert check(crib, (job(torque("10 N·m", tolerance="10 %")),), DAY).torques[0].warnings == ()
