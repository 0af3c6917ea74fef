"""`check`, `find` and `confirm` from the command line: whole pages, exit codes, bad input."""

from __future__ import annotations

import csv
import io
import json
import os
import subprocess
import sys
from html.parser import HTMLParser
from pathlib import Path

import pytest
from typer.testing import CliRunner

from cribkit.cli.app import app
from tests.desk.world import consumable, crib_of, tool, torque

DAY = ["--on", "2026-11-25"]
HEAD = 'id = "cover"\ntitle = "Reseal the cover"\napplies_to = "Wren van"\nrevision = "B"\nsource = "Invented."\n'
CAUTIONS = 'cautions = ["Engine cold."]\ncovers = ["oil filler"]\nmoves = ["breather valve"]\n'
BODY = (
    tool("8 mm socket, 1/4 drive", use="cover bolts")
    + tool("inspection mirror", optional=True)
    + torque("10 N·m", tolerance="10 %", order="centre outwards, twice", without_wrench="snug, then 1/8 turn")
    + consumable("throttle body cleaner", "120 mL", never=["brake parts cleaner"])
)
TOOLS = "S8,SKT 1/4DR 8MM 6PT,1,A2-01,ok,,"
WRENCHES = "TW1,click,2,24,N·m,0.2,4,1/4,200,2026-09-01,12,A10-01,ok"
CLEANER = "C1,throttle body cleaner,mL,500,2,L1,2028-01,B1,"


@pytest.fixture
def here(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A folder with a crib and one procedure."""
    with crib_of(tmp_path, tools=TOOLS, wrenches=WRENCHES, consumables=CLEANER):
        pass
    (tmp_path / "procedures").mkdir()
    (tmp_path / "procedures" / "cover.toml").write_text(HEAD + CAUTIONS + BODY, encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    return tmp_path


def run(*command: str, input_: str | None = None) -> tuple[int, str]:
    """Exit code and stdout."""
    result = CliRunner(env={"COLUMNS": "80"}).invoke(app, [*command], prog_name="cribkit", input=input_)
    if result.exception and not isinstance(result.exception, SystemExit):
        raise result.exception
    return result.exit_code, result.stdout


PAGE = """\
READY: all 3 needs are in the crib and fit for use
cover: Reseal the cover. Wren van. Revision B.
On 2026-11-25.

Not there, and the job can start without it
-------------------------------------------
absent   inspection mirror
         not stocked
         -> buy or borrow it before you start.

Pull list, in the order of the shelves
--------------------------------------
A2-01   S8         1  SKT 1/4DR 8MM 6PT
A10-01  TW1        1  click torque wrench 2-24 N·m, 1/4 drive
B1      C1    120 mL  throttle body cleaner, lot L1, good through 2028-01-31

Torque card
-----------
bolts: cover bolts, 8 mm hex, 10 N·m (10 %)
    TW1 set to 10 N·m: applies 9.62 to 10.4 N·m
    way: driver S8
    order: centre outwards, twice
    the procedure's own way without a torque wrench: snug, then 1/8 turn (not
      counted as covered)

Consumables
-----------
ready    throttle body cleaner, 120 mL
         C1: 120 mL of throttle body cleaner, lot L1, good through 2028-01-31
         never: brake parts cleaner

Take care
---------
- Engine cold.
- Cover at once and count back out: oil filler.
- Move from the old part to the new: breather valve.

The vehicle maker's service information, local codes and licensed practice come
first; this report does not replace them.
"""


@pytest.mark.usefixtures("here")
def test_the_whole_page_of_a_ready_job() -> None:
    assert run("check", "cover", *DAY) == (0, PAGE)


@pytest.mark.usefixtures("here")
def test_what_blocks_stands_right_after_the_verdict() -> None:
    code, page = run("check", "cover", "--on", "2027-09-02")
    assert code == 1
    assert page.splitlines()[:9] == [
        "NOT READY: 1 of 3 needs block the job",
        "cover: Reseal the cover. Wren van. Revision B.",
        "On 2027-09-02.",
        "",
        "What blocks",
        "-----------",
        "unfit    cover bolts at 10 N·m",
        "         TW1: its calibration ran out on 2027-09-01",
        "         -> have it calibrated or repaired, or get another that covers it.",
    ]
    assert all(len(line) <= 80 for line in page.splitlines())


@pytest.mark.usefixtures("here")
def test_the_csv_has_a_row_for_each_need() -> None:
    code, text = run("check", "cover", "--as", "csv", *DAY)
    rows = list(csv.DictReader(io.StringIO(text)))
    assert code == 0
    assert [(row["part"], row["status"], row["take"]) for row in rows] == [
        ("tool", "ready", "S8"),
        ("tool", "absent", ""),
        ("torque", "ready", "TW1 + S8"),
        ("consumable", "ready", "C1"),
    ]


@pytest.mark.usefixtures("here")
def test_the_markdown_has_the_verdict_as_its_title() -> None:
    code, text = run("check", "cover", "--as", "markdown", *DAY)
    assert code == 0
    assert text.startswith("# READY: all 3 needs are in the crib and fit for use\n")
    assert "| A2-01 | S8 | 1 | SKT 1/4DR 8MM 6PT |" in text


class Tags(HTMLParser):
    """The tags and the text of a page."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.tags: list[str] = []
        self.words: list[str] = []
        self.feed(page)

    def handle_starttag(self, tag: str, attrs: object) -> None:
        self.tags.append(tag)

    def handle_data(self, data: str) -> None:
        self.words.append(data)


def test_stored_text_is_escaped_on_the_sheet(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    rude = 'S8,"8 mm socket, 1/4 drive <script>alert(1)</script>",1,"<b>A1",ok,,'
    with crib_of(tmp_path, tools=rude, wrenches=WRENCHES, consumables=CLEANER):
        pass
    monkeypatch.chdir(tmp_path)
    body = tool("8 mm socket, 1/4 drive") + tool("<img src=x onerror=alert(2)>", optional=True)
    (tmp_path / "cover.toml").write_text(HEAD.replace("Reseal", "<i>Reseal") + body, encoding="utf-8")
    _, sheet = run("check", "./cover.toml", "--as", "html", *DAY)
    page = Tags(sheet)
    assert not {"script", "img", "i", "b"} & set(page.tags)
    assert "<i>Reseal the cover" in page.words


@pytest.mark.usefixtures("here")
def test_the_sheet_has_a_box_for_each_thing_to_pull() -> None:
    _, sheet = run("check", "cover", "--as", "html", *DAY)
    assert sheet.count('class="box"') == 3 + 2  # out for all three, back for what is not used up
    assert "Initials" in sheet


@pytest.mark.usefixtures("here")
def test_sheet_and_markdown_say_head_tolerance_and_what_is_missing_without_harm() -> None:
    _, sheet = run("check", "cover", "--as", "html", *DAY)
    _, markdown = run("check", "cover", "--as", "markdown", *DAY)
    for text in (sheet, markdown):
        assert "cover bolts, 8 mm hex" in text
        assert "10 N·m (10 %)" in text
        assert "Not there, and the job can start without it" in text


BAD = {
    "no such procedure": (["check", "covver"], 2, "did you mean cover?"),
    "no such file": (["check", "./nothing.toml"], 2, "the file cannot be read"),
    "no such folder": (["check", "cover", "--procedures", "elsewhere"], 2, "the procedures cannot be read"),
    "not a date": (["check", "cover", "--on", "31/02/2026"], 2, "is not a date"),
    "no crib": (["--crib", "none.db", "check", "cover"], 3, "there is no crib here"),
    "a folder as crib": (["--crib", "procedures", "check", "cover"], 3, "this is a folder"),
    "no sheet": (["find", "mirror", "--as", "html"], 2, "has no sheet for paper"),
    "bad guard": (["check", "cover", "--guard", "lots"], 2, "is not a percentage"),
    "nothing to find": (["find"], 2, "nothing to look for"),
    "bad kind": (["find", "mirror", "--kind", "vehicle"], 2, "is no kind"),
    "no name": (["confirm", "mirror", "S8"], 2, "a posting needs a person's name"),
    "unknown tag": (["confirm", "mirror", "S9", "--by", "A. Reed"], 2, "there is no item S9"),
    "against an attribute": (["confirm", "9 mm socket", "S8", "--by", "A. Reed"], 2, "does not agree"),
}


@pytest.mark.parametrize(("command", "code", "says"), BAD.values(), ids=BAD)
def test_bad_input_is_refused_with_what_to_do(here: Path, command: list[str], code: int, says: str) -> None:
    done = process(here, *command)
    assert done.returncode == code
    assert says in done.stderr
    assert done.stdout == ""
    assert "Traceback" not in done.stderr


def process(folder: Path, *command: str, **env: str) -> subprocess.CompletedProcess[str]:
    """The command as a process of its own."""
    root = str(Path(__file__).parents[2])
    return subprocess.run(
        [sys.executable, "-m", "cribkit", *command],
        cwd=folder,
        env={"PATH": os.environ["PATH"], "HOME": str(folder), "PYTHONPATH": root, **env},
        capture_output=True,
        text=True,
        check=False,
        encoding="utf-8",
    )


def test_a_picture_is_no_crib(here: Path) -> None:
    (here / "photo.db").write_bytes(b"\xff\xd8\xff\xe0\x00\x10JFIF" + bytes(2000))
    done = process(here, "--crib", "photo.db", "check", "cover")
    assert (done.returncode, done.stdout) == (3, "")
    assert "Traceback" not in done.stderr


def test_a_reader_that_goes_away_is_no_fault(here: Path) -> None:
    root = str(Path(__file__).parents[2])
    env = {"PATH": os.environ["PATH"], "HOME": str(here), "PYTHONPATH": root}
    line = f"{sys.executable} -m cribkit check cover --on 2026-11-25 | head -1"
    done = subprocess.run(line, shell=True, cwd=here, env=env, capture_output=True, text=True, check=False)
    assert done.stdout == "READY: all 3 needs are in the crib and fit for use\n"
    assert done.stderr == ""


@pytest.mark.parametrize("env", [{"LANG": "C"}, {"LC_ALL": "C", "PYTHONUTF8": "0", "PYTHONCOERCECLOCALE": "0"}])
def test_a_terminal_without_the_letters_still_gets_the_page(here: Path, env: dict[str, str]) -> None:
    done = process(here, "check", "cover", *DAY, **env)
    assert (done.returncode, done.stderr) == (0, "")
    assert "TW1 set to 10 N" in done.stdout


@pytest.mark.parametrize("columns", ["20", "40", "200"])
def test_a_narrow_or_wide_terminal_is_no_fault(here: Path, columns: str) -> None:
    done = process(here, "check", "cover", *DAY, COLUMNS=columns)
    assert (done.returncode, done.stderr) == (0, "")


def test_a_decision_is_used_listed_shown_and_withdrawn(here: Path) -> None:
    need = "8 mm deep socket, 1/4 drive"
    assert run("find", need, "--json")[0] == 1
    assert run("confirm", need, "S8", "--by", "A. Reed", "--anyway", "reaches all the same")[0] == 0
    code, text = run("find", need, "--json")
    match = json.loads(text)["result"]["matches"][0]
    assert (code, match["status"], match["tag"]) == (0, "match", "S8")
    assert "anyway: reaches all the same" in match["why"]
    (here / "deep.toml").write_text(HEAD.replace('"cover"', '"deep"') + tool(need), encoding="utf-8")
    assert "rests on a confirmation against its description: reaches all the same" in " ".join(
        run("check", "./deep.toml", *DAY)[1].split()
    )
    assert json.loads(run("confirm", "--json")[1])["result"]["confirmations"][0]["by"] == "A. Reed"
    assert run("confirm", need, "S8", "--withdraw", "--by", "A. Reed")[0] == 0
    assert run("find", need)[0] == 1


@pytest.mark.usefixtures("here")
def test_texts_come_from_a_file_or_stdin() -> None:
    Path("list.txt").write_text("8 mm socket, 1/4 drive\n\nthrottle body cleaner\n", encoding="utf-8")
    from_file = json.loads(run("find", "--from", "list.txt", "--json")[1])["result"]["matches"]
    assert [match["tag"] for match in from_file] == ["S8", "C1"]
    from_stdin = json.loads(run("find", "--from", "-", "--json", input_="9 mm socket\n")[1])["result"]["matches"]
    assert [match["status"] for match in from_stdin] == ["none"]
