"""An angle step needs an angle gauge, or a torque wrench that measures angle. All values are invented."""

from __future__ import annotations

from pathlib import Path

import pytest

from cribkit.desk.check import check
from cribkit.desk.results import Check, Status
from tests.desk.world import DAY, crib_of, job, tool, torque

GAUGE = "angle gauge, 1/2 drive"
SOCKETS = 'S14,"14 mm socket, 1/2 drive",1,A1,ok,,\nS14T,"14 mm socket, 3/8 drive",1,A1,ok,,'
PLAIN = "TW1,click,40,200,N·m,1,4,1/2,500,2026-09-01,12,W1,ok"


def angle_wrench(drive: str = "1/2", calibrated: str = "2026-09-01", high: int = 200, condition: str = "ok") -> str:
    """An electronic wrench; its description is given on the side."""
    return f"TA,electronic,20,{high},N·m,0.1,2,{drive},500,{calibrated},12,W2,{condition}"


def checked(
    folder: Path,
    wrenches: str,
    tools: str = SOCKETS,
    need: str = GAUGE,
    loans: str = "",
    described: str = "torque and angle wrench",
) -> Check:
    """A job with one bolt that is turned on by an angle."""
    body = tool(need) + torque("60 N·m", tolerance="10 %", head="14 mm hex", steps=["60 N·m", "+90°"])
    note = [line + ("," + described if line.startswith("TA") else ",") for line in wrenches.splitlines()]
    with crib_of(folder, tools, "\n".join(note), loans=loans) as crib:
        return check(crib, (job(body),), DAY)


@pytest.fixture(autouse=True)
def a_described_column(monkeypatch: pytest.MonkeyPatch) -> None:
    """The small cribs' wrenches get descriptions."""
    from tests.desk import world

    monkeypatch.setitem(world.HEADS, "torque_wrenches.csv", world.HEADS["torque_wrenches.csv"] + ",description")


@pytest.mark.parametrize("need", [GAUGE, "torque angle wrench, 1/2 drive"])
def test_with_neither_gauge_nor_angle_wrench_the_job_is_blocked(tmp_path: Path, need: str) -> None:
    done = checked(tmp_path, PLAIN, need=need)
    assert done.torques[0].status is Status.READY
    assert (done.tools[0].status, done.ready) == (Status.ABSENT, False)


def test_a_gauge_goes_before_a_wrench_that_measures_angle(tmp_path: Path) -> None:
    done = checked(tmp_path, f"{PLAIN}\n{angle_wrench()}", SOCKETS + '\nAG,"angle gauge, 1/2 drive",1,A2,ok,,')
    assert [pick.tag for pick in done.tools[0].picked] == ["AG"]
    assert done.notes == ()


@pytest.mark.parametrize("need", [GAUGE, "torque angle wrench, 1/2 drive"])
@pytest.mark.parametrize(("drive", "way"), [("1/2", ["TA", "S14"]), ("3/8", ["TA", "S14T"])])
def test_a_wrench_that_measures_angle_serves_and_is_pulled_with_its_way(
    tmp_path: Path, need: str, drive: str, way: list[str]
) -> None:
    done = checked(tmp_path, f"{PLAIN}\n{angle_wrench(drive)}", need=need)
    assert done.ready
    assert [pick.tag for pick in done.tools[0].picked] == way
    assert set(way) <= {pick.tag for pick in done.pull}
    assert done.notes == (
        f"TA measures the angle itself, in place of {need}: stop at its full scale of 200 N·m, "
        "wherever the angle stands.",
    )


@pytest.mark.parametrize(
    ("wrench", "tools"),
    [
        (angle_wrench(calibrated="2025-01-01"), SOCKETS),
        (angle_wrench(high=50), SOCKETS),
        (angle_wrench(drive="1/4"), SOCKETS),
    ],
    ids=["overdue", "too small", "no way"],
)
@pytest.mark.parametrize("need", [GAUGE, "torque angle wrench, 1/2 drive"])
def test_one_that_cannot_do_the_torque_does_not_serve(tmp_path: Path, wrench: str, tools: str, need: str) -> None:
    line = checked(tmp_path, f"{PLAIN}\n{wrench}", tools, need).tools[0]
    assert line.status is Status.ABSENT
    assert line.why == "TA can show the angle, but cannot be used for the torque before it"


def test_one_that_is_out_is_asked_back_for(tmp_path: Path) -> None:
    described = '"torque angle wrench, 1/2 drive"'
    need = "torque angle wrench, 1/2 drive"
    done = checked(
        tmp_path, f"{PLAIN}\n{angle_wrench()}", need=need, loans="TA,R. Holm,2026-11-20,1,", described=described
    )
    assert done.tools[0].status is Status.OUT
    assert done.tools[0].why == "TA is out to R. Holm since 2026-11-20"


def test_the_only_angle_wrench_serves_one_of_two_jobs_side_by_side(tmp_path: Path) -> None:
    body = tool(GAUGE) + torque("60 N·m", tolerance="10 %", head="14 mm hex", steps=["60 N·m", "+90°"])
    sockets = 'S14,"14 mm socket, 1/2 drive",2,A1,ok,,'
    rows = f"{PLAIN},\n{PLAIN.replace('TW1', 'TW2')},\n{angle_wrench()},torque and angle wrench"
    with crib_of(tmp_path, sockets, rows) as crib:
        done = check(crib, (job(body, "one"), job(body, "two")), DAY)
    assert sorted(line.status for line in done.tools) == [Status.READY, Status.SHORT]
    assert {line.status for line in done.torques} == {Status.READY}
