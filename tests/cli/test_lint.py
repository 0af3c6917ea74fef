"""`cribkit lint` and `cribkit procedures`, as a person runs them: whole outputs."""

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest
from typer.testing import CliRunner, Result

from cribkit.cli.app import app

GOOD = """\
id = "hub-nut"
title = "Retighten the hub nut"
applies_to = "Tern minibus"
minutes = 20
source = "Invented for this test."
cautions = ["On stands, never on a jack alone."]

[[tool]]
need = "30 mm socket, 1/2 drive"

[[torque]]
id = "hub-nut"
fastener = "hub nut"
head = "30 mm hex"
spec = "180 N·m"
replace = true

[[consumable]]
need = "hub nut, new"
amount = "1"
"""
BAD = GOOD.replace('"hub-nut"\ntitle', '"bad"\ntitel').replace('"180 N·m"', '"180 N·m (90 ft-lb)"').replace(
    'amount = "1"', 'amount = "1 tube"'
)  # fmt: skip
YARD = "Wren van, Tern minibus, Heron flatbed, and what else is in the yard"
BARE = 'id = "bare"\ntitle = "Bare"\napplies_to = "Wren van"\nsource = "Invented for this test."\n'


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A folder with procedures/ in it, as the working folder."""
    monkeypatch.chdir(tmp_path)
    (tmp_path / "procedures").mkdir()
    write(tmp_path, "hub-nut", GOOD)
    return tmp_path


def write(folder: Path, name: str, text: str) -> None:
    """A procedure's file."""
    (folder / "procedures" / f"{name}.toml").write_text(text, encoding="utf-8")


def run(*words: str) -> Result:
    """The command, in 80 columns."""
    return CliRunner(env={"COLUMNS": "80"}).invoke(app, [*words], prog_name="cribkit")


def test_files_without_a_problem(folder: Path) -> None:
    done = run("lint")
    assert (done.exit_code, done.stdout, done.stderr) == (0, "1 procedure, no problems\n", "")


def test_the_demo_has_no_error() -> None:
    done = run("lint", "--demo")
    assert done.exit_code == 0
    assert all(": note: " in line for line in done.stderr.splitlines())


def test_every_problem_of_every_file_is_told_at_once(folder: Path) -> None:
    write(folder, "bad", BAD)
    write(folder, "bare", BARE)
    write(folder, "broken", 'id = "broken"\ntitle = no\n')
    done = run("lint")
    assert done.exit_code == 2
    assert done.stdout == "4 procedures, 5 errors, 2 notes\n"
    assert done.stderr == (
        "procedures/bad.toml:1: 'title' is missing: write it.\n"
        "procedures/bad.toml:2: 'titel' is not a key of this table: did you mean 'title'?\n"
        "procedures/bad.toml:15: spec of hub-nut: '180 N·m (90 ft-lb)': the first value is 132.761 ft-lb, "
        "the second says 90 ft-lb: find out which one is right and mend the other.\n"
        "procedures/bad.toml:20: amount: 'tube' may hold any amount: "
        'write it as "4", "120 mL", "0.5 L", "250 g" or "1.5 m".\n'
        "procedures/broken.toml:2: not valid TOML at column 9: Invalid value: mend the line.\n"
        "procedures/bare.toml:1: note: the procedure has no cautions: "
        "say what can hurt: heat, pressure, lifting, battery, dust, solvents.\n"
        "procedures/bare.toml:1: note: the procedure calls for nothing: "
        "add [[tool]], [[torque]] and [[consumable]] tables.\n"
    )


def test_an_id_that_two_files_claim_is_told_although_one_has_other_errors(folder: Path) -> None:
    write(folder, "twin", "# a copy\n" + GOOD.replace("minutes = 20", 'minutes = "many"'))
    done = run("lint")
    assert (done.exit_code, done.stdout) == (2, "2 procedures, 2 errors\n")
    assert done.stderr == (
        "procedures/twin.toml:5: minutes is 'many': it has to be a whole number without quotes.\n"
        "procedures/twin.toml:2: the id 'hub-nut' is taken by procedures/hub-nut.toml:1: give one of them another.\n"
    )


def test_notes_alone_are_no_error(folder: Path) -> None:
    write(folder, "bare", BARE)
    done = run("lint", "procedures/bare.toml")
    assert (done.exit_code, done.stdout) == (0, "1 procedure, 2 notes\n")


def test_the_json_form_is_the_contract(folder: Path) -> None:
    write(folder, "bad", BAD.replace("titel", "title").replace(" (90 ft-lb)", ""))
    done = run("lint", "--json")
    assert done.exit_code == 2
    assert json.loads(done.stdout) == {
        "cribkit": 1,
        "command": "lint",
        "ok": False,
        "result": {"files": 2, "procedures": ["hub-nut"], "errors": 1, "notes": 0},
        "problems": [
            {
                "source": "procedures/bad.toml:20",
                "code": "ambiguous",
                "message": "amount: 'tube' may hold any amount",
                "next": 'write it as "4", "120 mL", "0.5 L", "250 g" or "1.5 m".',
            }
        ],
    }


def test_the_csv_form_has_a_row_for_each_problem(folder: Path) -> None:
    write(folder, "bare", BARE + '[[torque]]\nid = "t"\nfastener = "nut"\nspec = "5 N·m"\n')
    assert run("lint", "--as", "csv").stdout == (
        "kind,where,code,what is wrong,what to do\n"
        "note,procedures/bare.toml:1,note-no-cautions,note: the procedure has no cautions,"
        '"say what can hurt: heat, pressure, lifting, battery, dust, solvents."\n'
        "note,procedures/bare.toml:5,note-no-head,note: t does not say what the socket or bit must fit,"
        '"write head = ""10 mm hex"", ""T30"" or ""E12""."\n'
    )


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (
            ["lint", "nowhere"],
            "nowhere: the procedures cannot be read: No such file or directory: "
            "name a folder with --procedures, or use --demo.\n",
        ),
        (
            ["procedures", "--procedures", "empty"],
            "empty: the folder has no .toml file: name another folder.\n",
        ),
        (["lint", "photo.toml"], "photo.toml:1: the file is not UTF-8: save it as UTF-8.\n"),
        (["lint", "office.toml"], "office.toml:2: the file is not UTF-8: save it as UTF-8.\n"),
    ],
    ids=["no folder", "empty folder", "a JPEG", "Windows-1252"],
)
def test_what_cannot_be_read_is_told_and_ends_with_2(folder: Path, words: list[str], said: str) -> None:
    (folder / "empty").mkdir()
    (folder / "photo.toml").write_bytes(b"\xff\xd8\xff\xe0\x00\x10JFIF")
    (folder / "office.toml").write_bytes('id = "x"\ntitle = "Käfig"\n'.encode("cp1252"))
    done = run(*words)
    assert (done.exit_code, done.stderr) == (2, said)


def test_the_list_of_procedures_fits_80_columns(folder: Path) -> None:
    write(
        folder, "long", BARE.replace("Wren van", "Wren van, Tern minibus, Heron flatbed, and what else is in the yard")
    )
    done = run("procedures")
    assert (done.exit_code, done.stderr) == (0, "")
    assert done.stdout == (
        "bare     Bare\n"
        "         Wren van, Tern minibus, Heron flatbed, and what else is in the yard; 0\n"
        "         tools, 0 torques, 0 consumables\n"
        "hub-nut  Retighten the hub nut\n"
        "         Tern minibus; 20 min; 1 tool, 1 torque, 1 consumable\n"
    )


def test_the_list_of_procedures_for_programs(folder: Path) -> None:
    assert json.loads(run("procedures", "--json").stdout) == {
        "cribkit": 1,
        "command": "procedures",
        "ok": True,
        "result": {
            "procedures": [
                {
                    "id": "hub-nut",
                    "title": "Retighten the hub nut",
                    "applies_to": "Tern minibus",
                    "revision": "",
                    "minutes": 20,
                    "tools": 1,
                    "torques": 1,
                    "consumables": 1,
                    "file": "procedures/hub-nut.toml",
                }
            ]
        },
        "problems": [],
    }
    assert run("procedures", "--as", "csv").stdout == (
        "id,title,applies to,minutes,tools,torques,consumables\nhub-nut,Retighten the hub nut,Tern minibus,20,1,1,1\n"
    )


def test_a_procedure_with_an_error_does_not_hide_the_others(folder: Path) -> None:
    write(folder, "broken", "id =")
    done = run("procedures", "--as", "csv")
    assert (done.exit_code, done.stdout.splitlines()[1:]) == (
        2,
        ["hub-nut,Retighten the hub nut,Tern minibus,20,1,1,1"],
    )
    assert done.stderr == (
        "procedures/broken.toml:1: not valid TOML at the end of the file: Invalid value: mend the line.\n"
    )


def test_there_is_no_sheet_of_procedures(folder: Path) -> None:
    done = run("procedures", "--as", "html")
    assert done.exit_code != 0
    assert "no sheet" in str(done.exception)


@pytest.mark.parametrize("env", [{"LANG": "C", "PYTHONIOENCODING": ""}, {"LC_ALL": "C", "PYTHONUTF8": "0"}])
def test_a_plain_terminal_gets_no_traceback(folder: Path, env: dict[str, str]) -> None:
    write(folder, "bad", BAD)
    done = subprocess.run(
        [sys.executable, "-m", "cribkit", "lint"],
        capture_output=True,
        cwd=folder,
        env={**os.environ, **env},
        check=False,
    )
    assert done.returncode == 2
    assert b"Traceback" not in done.stderr
    assert len(done.stderr.splitlines()) == 4
