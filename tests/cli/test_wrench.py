"""`cribkit wrench list`, `covers` and `picture`, as a person runs them on a loaded crib: whole outputs."""

from __future__ import annotations

import json
import re
from pathlib import Path

import pytest
from typer.testing import CliRunner, Result

from cribkit.cli.app import app

WRENCHES = """\
tag,description,mechanism,range_min,range_max,unit,graduation,accuracy_pct,drive,lever_mm,calibrated_on,\
interval_months,location,condition,second_unit,second_min,second_max,second_graduation
TW-1,click torque wrench,click,5,25,N·m,0.25,4,1/4,180,2026-03-02,12,C1,ok,,,,
TW-2,dual scale click wrench,click,40,200,in-lb,1,4,1/4,190,2026-03-02,12,C1,ok,N·m,4.6,22.6,0.2
TW-3,preset wrench for wheel nuts,fixed,110,110,N·m,0,4,1/2,440,2026-03-02,12,C2,ok,,,,
TW-4,click torque wrench,click,40,200,N·m,1,,1/2,430,2025-06-02,12,C2,ok,,,,
TW-5,beam wrench,beam,0,200,N·m,10,4,1/2,480,2026-03-02,12,C3,ok,,,,
TW-6,"click wrench, two-way",click,10,60,N·m,0.5,4,3/8,,2026-03-02,12,C3,damaged,,,,
"""
PROCEDURE = """\
id = "wheel"
title = "Retighten the wheels"
applies_to = "Wren van"
minutes = 10
source = "Invented for this test."
cautions = ["On level ground."]

[[torque]]
id = "nuts"
fastener = "wheel nuts"
spec = "110 N·m"
tolerance = "10 %"

[[torque]]
id = "hub"
fastener = "hub nut"
spec = "330 lb-ft (447 N·m)"
"""


@pytest.fixture
def run(tmp_path: Path):
    """Runs the program on a crib with six invented wrenches, on 25 November 2026."""
    seed, procedures, crib = tmp_path / "seed", tmp_path / "procedures", str(tmp_path / "crib.db")
    for folder in (seed, procedures):
        folder.mkdir()
    (seed / "torque_wrenches.csv").write_text(WRENCHES, encoding="utf-8")
    (procedures / "wheel.toml").write_text(PROCEDURE, encoding="utf-8")

    def runner(*words: str) -> Result:
        more = ["--procedures", str(procedures)] if words[1] in ("picture", "gaps") else []
        return CliRunner(env={"COLUMNS": "80"}).invoke(app, ["--crib", crib, *words, *more])

    loaded = CliRunner().invoke(app, ["--crib", crib, "load", str(seed)])
    assert loaded.exit_code == 0, loaded.output
    return runner


ON = ("--on", "2026-11-25")


def test_the_list_says_range_marks_accuracy_due_date_and_place(run):
    done = run("wrench", "list", *ON)
    assert done.exit_code == 0
    assert done.output == LIST


LIST = """\
tag    kind    usable range    mark    ±%    drive    due         where
-----  ------  --------------  ------  ----  -------  ----------  -------
TW-2   click   40-200 in-lb    1       4     1/4      2027-03-02  C1
               4.6-22.6 N·m    0.2
TW-1   click   5-25 N·m        0.25    4     1/4      2027-03-02  C1
TW-6   click   12-60 N·m       0.5     4     3/8      2027-03-02  C3
                                                                  unfit
TW-3   fixed   110 N·m         -       4     1/2      2027-03-02  C2
TW-4   click   40-200 N·m      1       4     1/2      2026-06-02  C2
                                                                  overdue
TW-5   beam    40-200 N·m      10      4     1/2      2027-03-02  C3
"""


def test_what_covers_comes_first_with_its_setting_then_the_others_with_their_reasons(run):
    done = run("wrench", "covers", "89 in-lb (10 N·m)", "--tolerance", "10 %", *ON)
    assert done.exit_code == 0
    assert done.output == COVERS


COVERS = """\
89 in-lb (10 N·m): 10.06 N·m, 9.05 to 11.06 N·m. 2 of 6 wrenches cover it on
2026-11-25.

tag   set to    applies, N·m  scale  tolerance  due         where  note
----  --------  ------------  -----  ---------  ----------  -----  ----
TW-2  89 in-lb  9.669-10.47   44 %   uses 40 %  2027-03-02  C1
TW-1  10 N·m    9.615-10.42   40 %   uses 40 %  2027-03-02  C1

below-range: TW-3, TW-5
out of range, and more: TW-6, TW-4
"""


def test_the_json_has_exactly_the_keys_of_the_contract(run):
    done = run("wrench", "covers", "110 N·m", "--tolerance", "10 %", "--json", *ON)
    envelope = json.loads(done.output)
    assert list(envelope) == ["cribkit", "command", "ok", "result", "problems"]
    result = envelope["result"]
    assert list(result) == ["target_nm", "low_nm", "high_nm", "wrenches"]
    assert [one["tag"] for one in result["wrenches"]] == ["TW-5", "TW-3", "TW-2", "TW-1", "TW-4", "TW-6"]
    assert result["wrenches"][1] == {
        "tag": "TW-3",
        "covers": True,
        "reasons": [],
        "setting": 110.0,
        "setting_unit": "N·m",
        "applied_low_nm": pytest.approx(110 / 1.04),
        "applied_high_nm": pytest.approx(110 / 0.96),
        "position_pct": 100.0,
    }
    assert result["wrenches"][4] == {
        "tag": "TW-4",
        "covers": False,
        "reasons": ["overdue"],
        "setting": None,
        "setting_unit": None,
        "applied_low_nm": None,
        "applied_high_nm": None,
        "position_pct": None,
    }


def test_the_answer_no_is_exit_code_1(run):
    done = run("wrench", "covers", "447 N·m", *ON)
    assert done.exit_code == 1
    assert "No wrench covers it on 2026-11-25." in done.output


@pytest.mark.parametrize(
    ("words", "setting"),
    [
        (("30 N·m", "--adapter", "90 mm"), "20 N·m"),  # 30 x 180 / (180 + 90)
        (("20 N·m", "--adapter", "90 mm", "--angle", "90°"), "20 N·m"),
        (("20 N·m", "--adapter", "90 mm", "--angle", "90"), "20 N·m"),
        (("9-11 N·m", "--guard", "1 %"), "10 N·m"),
    ],
)
def test_an_adapter_and_a_guard_change_the_setting(run, words, setting):
    done = run("wrench", "covers", *words, "--as", "csv", *ON)
    row = next(line for line in done.output.splitlines() if line.startswith("TW-1,"))
    value, unit = setting.split()
    assert row.split(",")[1:5] == ["yes", "", value, unit]


@pytest.mark.parametrize(
    ("words", "message"),
    [
        (("10",), "has no unit"),
        (("10 J",), "is not a unit of torque"),
        (("10 N·m", "--tolerance", "wide"), "the tolerance 'wide' cannot be used"),
        (("10 N·m", "--adapter", "4 kg"), "is not a length"),
        (("10 N·m", "--angle", "steep"), "is not an angle"),
        (("10 N·m", "--guard", "much"), "is not an uncertainty"),
        (("10 N·m", "--guard", "1 %", "--guard-rule", "x"), "use one of full, managed, root"),
    ],
    ids=lambda value: " ".join(value) if isinstance(value, tuple) else "",
)
def test_what_cannot_be_read_is_refused(run, words, message):
    done = run("wrench", "covers", *words, *ON)
    assert message in str(done.exception)
    assert getattr(done.exception, "exit_code", None) == 2


def test_several_torques_are_answered_for_the_one_that_counts(run):
    done = run("wrench", "covers", "50 N·m; 110 N·m", "--json", *ON)
    (problem,) = json.loads(done.stdout)["problems"]
    assert problem["code"] == "several-torques"
    assert "50 N·m" in problem["message"]


@pytest.mark.parametrize(
    ("spec", "code"), [("110 N·m + 90°", "angle"), ("110 N·m + prevailing torque", "prevailing-torque")]
)
def test_what_else_the_torque_asks_for_is_told(run, spec, code):
    done = run("wrench", "covers", spec, "--json", *ON)
    (problem,) = json.loads(done.stdout)["problems"]
    assert problem["code"] == code


def test_left_hand_threads_want_a_wrench_that_measures_to_the_left(run):
    done = run("wrench", "covers", "100 N·m", "--left-hand", "--json", *ON)
    reasons = {one["tag"]: one["reasons"] for one in json.loads(done.stdout)["result"]["wrenches"]}
    assert reasons["TW-5"] == []
    assert reasons["TW-4"] == ["overdue", "unfit"]


def test_the_picture_shows_what_is_not_covered_and_ends_with_1(run):
    done = run("wrench", "picture", *ON)
    assert done.exit_code == 1
    assert "1 of 2 torques are not covered on 2026-11-25:" in done.output
    assert "A  447.4 N·m: wheel hub" in done.output


def test_the_picture_as_json_and_as_a_page(run):
    result = json.loads(run("wrench", "picture", "--json", *ON).stdout)["result"]
    assert [(one["id"], one["covered"]) for one in result["torques"]] == [("nuts", True), ("hub", False)]
    assert result["wrenches"][0]["scales"][1]["unit"] == "N·m"
    assert run("wrench", "picture", "--as", "html", *ON).stdout.startswith("<!DOCTYPE html>")


def test_a_drive_or_a_head_asks_for_a_way_over_parts_on_hand(run):
    done = run("wrench", "covers", "110 N·m", "--drive", "1/2", "--json", *ON)
    rows = {one["tag"]: one for one in json.loads(done.stdout)["result"]["wrenches"]}
    assert rows["TW-5"]["covers"]
    done = run("wrench", "covers", "110 N·m", "--drive", "3/8", "--json", *ON)
    rows = {one["tag"]: one for one in json.loads(done.stdout)["result"]["wrenches"]}
    assert rows["TW-5"]["reasons"] == ["no-reach"]
    assert rows["TW-4"]["reasons"] == ["overdue", "no-reach"]
    done = run("wrench", "covers", "110 N·m", "--head", "19 mm hex", "--json", *ON)
    rows = {one["tag"]: one for one in json.loads(done.stdout)["result"]["wrenches"]}
    assert rows["TW-5"]["reasons"] == ["no-reach"]


@pytest.mark.parametrize("words", [("--drive", "7/16"), ("--head", "strange thing")])
def test_a_drive_or_a_head_that_is_not_known_is_refused(run, words):
    done = run("wrench", "covers", "110 N·m", *words, *ON)
    assert getattr(done.exception, "exit_code", None) == 2


def test_the_page_names_every_key_of_the_answers(run):
    page = (Path(__file__).parents[2] / "docs" / "torque.md").read_text(encoding="utf-8")

    def keys(value: object) -> set[str]:
        if isinstance(value, dict):
            return set(value).union(*(keys(part) for part in value.values()))
        return set().union(*(keys(part) for part in value)) if isinstance(value, list) else set()

    for words in (("covers", "110 N·m"), ("list",), ("picture",), ("gaps",)):
        done = run("wrench", *words, "--json", *ON)
        line = next(line for line in page.splitlines() if line.startswith(f"| `wrench {words[0]}`"))
        named = set(re.findall(r"`([a-z_0-9]+)(?:\[\])?`", line))
        more = {"wrenches", "usable_low"} if words[0] == "picture" else set()
        shared = set(re.findall(r"`([a-z_0-9]+)(?:\[\])?`", page)) if more else named
        missing = keys(json.loads(done.stdout)["result"]) - shared - {"procedure", "id", "kind", "line"}
        assert missing == set(), words
