"""`wrench due`: what falls due, what that closes, and the order of sending out, on a crib's file."""

from __future__ import annotations

import datetime as dt
import json
from pathlib import Path

import pytest
from typer.testing import CliRunner

from cribkit.cli.app import app
from cribkit.desk.due_list import DueList, due_list
from cribkit.domain.calibration.due import Standing
from cribkit.domain.calibration.losses import Loss
from cribkit.domain.procedure import Procedure, read_procedure
from cribkit.store.crib import Crib
from tests.calibration.world import GOOD, TODAY, calibrate, crib_at, happen, work

HEAD = "tag,description,mechanism,range_min,range_max,unit,graduation,accuracy_pct,drive,calibrated_on,interval_months"
WRENCHES = f"""{HEAD}
A-1,click torque wrench,click,20,100,N·m,0.5,4,3/8,2025-12-05,12
A-2,click torque wrench,click,20,100,N·m,0.5,4,3/8,2025-12-10,12
B-1,click torque wrench,click,100,500,N·m,5,4,3/4,2025-12-20,12
C-1,click torque wrench,click,5,20,N·m,0.25,4,1/4,2026-10-01,12
D-1,click torque wrench,click,5,20,N·m,0.25,4,1/4,2025-10-01,12
"""
TORQUES = {"carrier": "57-63 N·m", "hub": "300 ± 30 N·m", "cover": "9-11 N·m"}


def procedure(name: str, *torques: str) -> Procedure:
    """A job with these torques."""
    text = f'id = "{name}"\ntitle = "Try {name}"\napplies_to = "Wren van"\nsource = "Invented for this test."\n'
    for torque in torques:
        text += f'\n[[torque]]\nid = "{torque}"\nfastener = "{torque} bolts"\nspec = "{TORQUES[torque]}"\n'
    found, problems = read_procedure(text, f"{name}.toml")
    assert found is not None, problems
    return found


JOBS = (procedure("brakes", "carrier", "hub"), procedure("covers", "cover"))


def listed(crib: Crib, within: int = 30, today: dt.date = TODAY) -> DueList:
    return due_list(crib, JOBS, today, within)


def test_overdue_ones_come_first_then_the_earliest_last_day(tmp_path: Path) -> None:
    with crib_at(tmp_path, WRENCHES) as crib:
        found = listed(crib)
        assert [(line.wrench.tag, line.standing, str(line.until)) for line in found.lines] == [
            ("D-1", Standing.OVERDUE, "2026-10-01"),
            ("A-1", Standing.SOON, "2026-12-05"),
            ("A-2", Standing.SOON, "2026-12-10"),
            ("B-1", Standing.SOON, "2026-12-20"),
        ]
        assert [line.wrench.tag for line in listed(crib, within=10).lines] == ["D-1", "A-1"]


def test_a_torque_is_lost_the_day_after_its_last_wrenchs_last_day(tmp_path: Path) -> None:
    with crib_at(tmp_path, WRENCHES) as crib:
        assert listed(crib).losses == (
            Loss(dt.date(2026, 12, 11), "brakes", "carrier", ("A-2",)),
            Loss(dt.date(2026, 12, 21), "brakes", "hub", ("B-1",)),
        )
        assert listed(crib).uncovered == ()
        assert [one.torque for one in listed(crib, today=dt.date(2026, 12, 21)).uncovered] == ["carrier", "hub"]


def test_those_that_stand_in_for_each_other_go_one_after_the_other(tmp_path: Path) -> None:
    wrenches = WRENCHES.replace("2025-12-05", "2026-01-15").replace("2025-12-10", "2026-01-20")
    with crib_at(tmp_path, wrenches) as crib:
        found = listed(crib, within=60)
        assert found.sending.rounds == (("A-1", "B-1", "D-1"), ("A-2",))
        assert [(gap.round, gap.torque) for gap in found.sending.gaps] == [(0, "hub")]


def test_a_dropped_wrench_asks_for_calibration_and_a_stored_one_does_not(tmp_path: Path) -> None:
    with crib_at(tmp_path, WRENCHES) as crib:
        happen(crib, "C-1", "dropped", "2026-11-24")
        happen(crib, "A-1", "stored", "2026-11-24")
        found = listed(crib)
        assert [line.wrench.tag for line in found.lines] == ["D-1", "C-1", "A-2", "B-1"]
        assert [line.wrench.tag for line in found.stored] == ["A-1"]
        assert [one.torque for one in found.uncovered] == ["cover"]


def test_use_brings_the_day_forward(tmp_path: Path) -> None:
    with crib_at(tmp_path, WRENCHES) as crib:
        work(crib, "J-1", "C-1", "2026-10-06", count=4500)
        # 4,500 cycles in the 50 days since its first use: 500 more last five days and a half, today counted.
        (line,) = [line for line in listed(crib).lines if line.wrench.tag == "C-1"]
        assert line.due is not None
        assert (line.due.cycles_left, str(line.until), line.due.by) == (500, "2026-11-30", "cycles")


def test_a_fresh_calibration_takes_it_off_the_list(tmp_path: Path) -> None:
    with crib_at(tmp_path, WRENCHES) as crib:
        calibrate(crib, "A-1", "SD-26-201", "2026-11-20", GOOD)
        assert "A-1" not in [line.wrench.tag for line in listed(crib).lines]
        assert [one.torque for one in listed(crib).losses] == ["hub"]


def test_the_page_and_its_exit_code(tmp_path: Path) -> None:
    folder = tmp_path / "jobs"
    folder.mkdir()
    for job in JOBS:
        text = f'id = "{job.id}"\ntitle = "Try"\napplies_to = "Wren van"\nsource = "Invented for this test."\n'
        for need in job.torques:
            text += f'\n[[torque]]\nid = "{need.id}"\nfastener = "{need.fastener}"\nspec = "{need.spec}"\n'
        (folder / f"{job.id}.toml").write_text(text, encoding="utf-8")
    with crib_at(tmp_path, WRENCHES):
        pass
    words = ["--crib", str(tmp_path / "crib.db"), "wrench", "due", "--on", "2026-11-25", "--procedures", str(folder)]
    done = CliRunner(env={"COLUMNS": "80"}).invoke(app, words)
    assert done.output == PAGE
    assert done.exit_code == 1
    result = json.loads(CliRunner().invoke(app, [*words, "--json"]).stdout)["result"]
    assert " ".join(result) == "on within_days policy wrenches stored uncovered losses sending"
    assert " ".join(result["wrenches"][0]) == (
        "tag description standing calibrated_on until by cycles_left location out why"
    )
    assert result["sending"]["rounds"] == [["A-1", "B-1", "D-1"], ["A-2"]]


def test_a_procedure_that_cannot_be_read_is_named_and_the_others_are_looked_at(tmp_path: Path) -> None:
    folder = tmp_path / "jobs"
    folder.mkdir()
    good = 'id = "good"\ntitle = "Try"\napplies_to = "Wren van"\nsource = "Invented for this test."\n'
    good += '\n[[torque]]\nid = "hub"\nfastener = "hub bolts"\nspec = "300 ± 30 N·m"\n'
    (folder / "good.toml").write_text(good, encoding="utf-8")
    (folder / "bad.toml").write_text('id = "bad"\ntitle = \n', encoding="utf-8")
    with crib_at(tmp_path, WRENCHES):
        pass
    words = ["--crib", str(tmp_path / "crib.db"), "wrench", "due", "--on", "2026-01-01", "--procedures", str(folder)]
    done = CliRunner(env={"COLUMNS": "80"}).invoke(app, [*words, "--within", "1d"])
    assert (done.exit_code, "bad.toml:2" in done.stderr) == (1, True)
    assert "Procedures that cannot be read were left out" in done.stdout
    found = json.loads(CliRunner().invoke(app, [*words, "--within", "400d", "--json"]).stdout)
    assert [loss["procedure"] for loss in found["result"]["losses"]] == ["good"]
    assert (found["ok"], "bad.toml:2" in found["problems"][0]["source"]) == (False, True)


PAGE = """\
4 torque wrenches ask for calibration by 2026-12-25.

tag    standing    last good day    by        where
-----  ----------  ---------------  --------  -------
D-1    OVERDUE     2026-10-01       calendar
A-1    due soon    2026-12-05       calendar
A-2    due soon    2026-12-10       calendar
B-1    due soon    2026-12-20       calendar

Without a covering wrench from these days on:
from        procedure    torques    last wrench
----------  -----------  ---------  -------------
2026-12-11  brakes       carrier    A-2
2026-12-21  brakes       hub        B-1

Order of sending out (14 days away each time):
  1. on 2026-11-25: A-1, B-1, D-1
  2. on 2026-12-09: A-2
  No order keeps all of them covered; meanwhile these have no wrench:
    round 1: brakes, hub
"""


def test_nothing_due_is_well(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    with crib_at(tmp_path, "\n".join([HEAD, *[row for row in WRENCHES.splitlines() if row.startswith("C-1")]]) + "\n"):
        pass
    words = ["--crib", str(tmp_path / "crib.db"), "wrench", "due", "--on", "2026-11-25", "--within", "4w"]
    done = CliRunner(env={"COLUMNS": "80"}).invoke(app, words)
    assert done.exit_code == 0
    assert done.output.startswith("No torque wrench asks for calibration by 2026-12-23.\n")
    bad = CliRunner().invoke(app, [*words[:-1], "soon"])
    assert "'soon' is not a number of days" in str(bad.exception)
