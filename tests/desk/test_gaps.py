"""`wrench gaps`: what is missing, and that its advice, once followed, really opens the jobs."""

from __future__ import annotations

import datetime as dt
import json
from pathlib import Path

import pytest
from typer.testing import CliRunner, Result

from cribkit.cli.app import app
from cribkit.desk.openers import gaps_and_steps
from cribkit.desk.procedures import all_procedures
from cribkit.domain.problem import BadInput
from cribkit.domain.torque.offers import offered
from cribkit.store.opening import open_crib

ON = dt.date(2026, 11, 25)
HEADINGS = (
    "tag,description,mechanism,range_min,range_max,unit,graduation,accuracy_pct,drive,lever_mm,calibrated_on,location"
)
WRENCHES = f"""{HEADINGS}
TW-1,click torque wrench,click,5,25,N·m,0.25,4,1/4,180,2026-03-02,C1
TW-2,click torque wrench,click,40,200,N·m,1,4,1/2,430,2025-03-02,C2
"""
TOOLS = """tag,description,quantity,location
S-1,"8 mm socket, 1/4 drive",1,A1
S-2,"19 mm socket, 1/2 drive",1,A2
S-3,"21 mm socket, 3/8 drive",1,A2
"""
PROCEDURE = """\
id = "{id}"
title = "{id}"
applies_to = "Wren van"
minutes = 10
source = "Invented for this test."
cautions = ["On level ground."]
{needs}
"""
TORQUE = '[[torque]]\nid = "{id}"\nfastener = "{id}"\nhead = "{head}"\nspec = "{spec}"\ntolerance = "10 %"\n'
NEEDS = {
    "covers": [("screws", "8 mm hex", "10 N·m")],
    "wheels": [("nuts", "19 mm hex", "110 N·m")],
    "plugs": [("plugs", "10 mm hex", "12 N·m")],
    "pump": [("pump", "8 mm hex", "2 N·m"), ("pulley", "19 mm hex", "90 N·m")],
    "arm": [("arm", "21 mm hex", "60 N·m")],
    "hub": [("hub", "19 mm hex", "447 N·m")],
}


@pytest.fixture
def world(tmp_path: Path) -> Path:
    """A folder with two wrenches (one overdue), three sockets and six jobs."""
    (tmp_path / "seed").mkdir()
    (tmp_path / "procedures").mkdir()
    (tmp_path / "seed" / "torque_wrenches.csv").write_text(WRENCHES, encoding="utf-8")
    (tmp_path / "seed" / "tools.csv").write_text(TOOLS, encoding="utf-8")
    for name, needs in NEEDS.items():
        text = "\n".join(TORQUE.format(id=one, head=head, spec=spec) for one, head, spec in needs)
        (tmp_path / "procedures" / f"{name}.toml").write_text(PROCEDURE.format(id=name, needs=text), encoding="utf-8")
    return tmp_path


def run(world: Path, *words: str) -> Result:
    """Load the world and run a command on it."""
    crib = str(world / "crib.db")
    CliRunner().invoke(app, ["--crib", crib, "load", str(world / "seed")])
    more = [] if words[0] == "load" else ["--procedures", str(world / "procedures"), "--on", ON.isoformat()]
    return CliRunner(env={"COLUMNS": "80"}).invoke(app, ["--crib", crib, *words, *more])


def gaps(world: Path) -> dict:
    """The answer of `wrench gaps`."""
    return json.loads(run(world, "wrench", "gaps", "--json").stdout)["result"]


def test_each_gap_has_the_cause_that_is_nearest_to_a_cure(world):
    assert {(gap["procedure"], gap["id"]): tuple(gap["reasons"]) for gap in gaps(world)["gaps"]} == {
        ("wheels", "nuts"): ("overdue",),
        ("plugs", "plugs"): ("no-reach",),
        ("pump", "pump"): ("below-range",),
        ("pump", "pulley"): ("overdue",),
        ("arm", "arm"): ("overdue", "no-reach"),
        ("hub", "hub"): ("above-range",),
    }


def test_one_calibration_closes_what_it_can_reach_and_no_more(world):
    (first,) = gaps(world)["calibrate"]
    assert first["what"] == "TW-2"
    assert {place["procedure"] for place in first["closes"]} == {"wheels", "pump"}
    assert first["opens"] == ["wheels"]


def test_the_fewest_purchases_close_every_gap_that_a_wrench_alone_closes(world):
    found = gaps(world)
    assert {place["procedure"] for place in found["left"]} == {"plugs", "hub"}
    closed = {(place["procedure"], place["id"]) for one in found["buy"] for place in one["closes"]}
    assert closed == {("wheels", "nuts"), ("pump", "pump"), ("pump", "pulley"), ("arm", "arm")}
    assert len(found["buy"]) == 3  # 2 N·m, 90 to 110 N·m over 1/2, and 60 N·m over 3/8


def follow(world: Path, action: str, what: str) -> None:
    """Do what a step says: add the thing to the files, with a new calibration or a new row."""
    wrenches, tools = world / "seed" / "torque_wrenches.csv", world / "seed" / "tools.csv"
    offers = {offer.tag: offer for offer in offered(ON)}
    if action == "calibrate":
        lines = wrenches.read_text(encoding="utf-8").splitlines()
        lines = [line.replace("2025-03-02", "2026-11-20") if line.startswith(what) else line for line in lines]
        wrenches.write_text("\n".join(lines) + "\n", encoding="utf-8")
    elif what in offers:
        new, scale = offers[what], offers[what].scales[0]
        cells = (
            "NEW", f'"{what}"', new.mechanism, scale.low, scale.high, scale.unit, scale.graduation,
            "" if new.accuracy is None else 100 * new.accuracy, new.drive, new.lever_mm or "", ON, "C9",
        )  # fmt: skip
        wrenches.write_text(WRENCHES + ",".join(map(str, cells)) + "\n", encoding="utf-8")
    else:
        tools.write_text(f'{TOOLS}NEW,"{what}",1,A9\n', encoding="utf-8")


@pytest.mark.parametrize("job", ["wheels", "plugs", "arm"])
def test_a_step_that_is_followed_makes_its_job_ready(world, job):
    steps = [step for step in gaps(world)["steps"] if job in step["opens"]]
    assert steps, "some single step opens the job"
    assert run(world, "check", job).exit_code == 1
    (world / "crib.db").unlink()
    follow(world, steps[0]["action"], steps[0]["what"])
    done = run(world, "check", job)
    assert done.exit_code == 0, (steps[0], done.output)


def test_no_step_opens_a_job_that_lacks_two_things(world):
    opened = {job for step in gaps(world)["steps"] for job in step["opens"]}
    assert "pump" not in opened
    assert "hub" not in opened
    assert "covers" not in opened  # it is ready already


def test_a_person_reads_causes_then_what_to_do(world):
    done = run(world, "wrench", "gaps")
    assert done.exit_code == 1
    lines = done.output.splitlines()
    assert lines[0] == "6 of 7 torques, in 5 of 6 procedures, have no wrench on 2026-11-25."
    assert "overdue (2):" in lines
    assert "Calibrate TW-2: closes 2 gaps, all torques of wheels." in lines
    assert max(map(len, lines)) <= 80


def test_a_crib_without_gaps_says_so_and_ends_well(world):
    done = run(world, "wrench", "gaps", "covers")
    assert done.exit_code == 0
    assert done.output == "Every one of 1 torques in 1 procedures is covered on 2026-11-25.\n"


def test_a_table_of_offers_of_the_shop_takes_the_place_of_the_packages(world):
    table = world / "offers.toml"
    row = """[[offer]]
name = "ours"
mechanism = "click"
range = [60, 600]
unit = "N·m"
graduation = 1
drive = "1/2"
"""
    table.write_text(row, encoding="utf-8")
    gaps(world)  # makes the crib
    with open_crib(world / "crib.db") as crib:
        found, _ = gaps_and_steps(crib, all_procedures(world / "procedures"), ON, table)
    assert [one.name for one in found.buy.buy] == ["ours"]
    for text in ("[[offer", "", "offer = 3", row.replace("600]", '"x"]')):
        table.write_text(text, encoding="utf-8")
        with pytest.raises(BadInput, match=r"offers\.toml"), open_crib(world / "crib.db") as crib:
            gaps_and_steps(crib, (), ON, table)
