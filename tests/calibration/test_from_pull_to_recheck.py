"""The whole road: pull a job, close it, the wrench is found out, and the recheck list names the fasteners."""

from __future__ import annotations

import csv
import io
from pathlib import Path

import pytest
from typer.testing import CliRunner, Result

from cribkit.cli.app import app
from tests.calibration.world import STRONG
from tests.cli.test_calibrating import sheet
from tests.store.small import make_crib

TOOLS = """\
tag,description,quantity,location
CF-1,"13 mm crowfoot, 3/8 drive",1,A1
AG-1,torque angle gauge 1/2 drive,1,A1
"""
WRENCHES = """\
tag,description,mechanism,range_min,range_max,unit,graduation,accuracy_pct,drive,lever_mm,calibrated_on,location
TW-1,torque wrench 3/8 drive 10-100 Nm,click,10,100,N·m,0.5,4,3/8,200,2026-03-02,B1
"""
JOB = """\
id = "pipe"
title = "Renew the pipe"
applies_to = "Heron flatbed"
source = "Invented for this test."
cautions = ["Engine cold."]

[[tool]]
need = "angle gauge, 1/2 drive"

[[torque]]
id = "bracket"
fastener = "bracket bolts"
count = 2
spec = "57-63 N·m"

[[torque]]
id = "union"
fastener = "union nut"
spec = "72 ± 4 N·m"
head = "13 mm hex"
reach = { adapter = "13 mm crowfoot", offset = "40 mm", angle = "0°" }

[[torque]]
id = "mount"
fastener = "mount bolt"
spec = "60 N·m"
tolerance = "10 %"
steps = ["60 N·m", "+90°"]
"""


@pytest.fixture
def run(tmp_path: Path):
    """Runs the program as two people on one crib."""
    crib = make_crib(tmp_path, tools=TOOLS, torque_wrenches=WRENCHES, consumables="", loans="")
    (tmp_path / "pipe.toml").write_text(JOB, encoding="utf-8")

    def runner(*words: str) -> Result:
        return CliRunner(env={"COLUMNS": "80"}).invoke(app, ["--crib", str(crib), *words])

    return runner


def test_from_pull_to_recheck(run, tmp_path: Path) -> None:
    job = ("pipe-7", "--by", "J. Sedge", "--on")
    pulled = run("pull", str(tmp_path / "pipe.toml"), "--vehicle", "Heron flatbed 7", "--job", *job, "2026-05-04")
    assert pulled.exit_code == 0, pulled.output
    done = run("close", *job, "2026-05-05")
    assert done.exit_code == 0, done.output
    paper = tmp_path / "c.csv"
    paper.write_text(sheet("TW-1", "SD-26-101", STRONG), encoding="utf-8")
    assert run("wrench", "record", "--from", str(paper), "--by", "R. Vale", "--on", "2026-11-25").exit_code == 1
    rows = list(csv.DictReader(io.StringIO(run("wrench", "trace", "TW-1", "--as", "csv").stdout)))
    # 63 and 76 N·m are the upper limits, and the reference's own uncertainty is 0.8 %.
    # At 60 N·m the wrench applied 63, 5 % more. With the adapter 60 = 72 · 200 / 240, so that the nut got 75.6.
    assert [(row["torque"], row["day"], row["setting"], row["likely N·m"], row["answer"]) for row in rows] == [
        ("bracket", "2026-05-05", "60 N·m", "63", "cannot tell"),
        ("union", "2026-05-05", "60 N·m", "75.6", "cannot tell"),
        ("mount", "2026-05-05", "60 N·m", "63", "inside"),
    ]
    near = "nearer to the limit than the reference device's uncertainty"
    assert [row["why"] for row in rows] == [near, near, "the angle came after it"]
    assert {row["vehicle"] for row in rows} == {"Heron flatbed 7"}
