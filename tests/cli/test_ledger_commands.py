"""The attendant's and keeper's commands as typed: exit codes, where things are printed, and the JSON contract."""

from __future__ import annotations

import csv
import io
import json
import os
import sqlite3
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from cribkit.cli.app import main
from cribkit.cli.attendant import parse_days
from tests.store.small import make_crib

MOVEMENT = {
    "movement", "at", "day", "by", "kind", "tag", "lot", "amount", "unit", "holder", "job", "due", "note", "corrects",
}  # fmt: skip
ITEM = {"tag", "description", "kind", "location", "unit", "pack", "on_hand", "out", "lots"}
POSTING = {"movements", "items", "notes"}
PROCEDURE = """
id = "clamp"
title = "Fit a clamp"
applies_to = "Wren van"
source = "Invented."
revision = "A"
minutes = 5
cautions = ["Engine cold."]

[[tool]]
need = "8 mm socket, 1/4 drive"
use = "clamp"

[[torque]]
id = "screw"
fastener = "clamp screw"
head = "8 mm hex"
spec = "10 N·m"

[[consumable]]
need = "throttle body cleaner"
amount = "120 mL"
"""


class Counter:
    """The program at one crib, run in this process as the console script runs it."""

    def __init__(self, folder: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch) -> None:
        self.folder, self.capsys, self.monkeypatch = folder, capsys, monkeypatch
        self.crib = make_crib(folder)
        (folder / "clamp.toml").write_text(PROCEDURE, encoding="utf-8")
        monkeypatch.chdir(folder)

    def __call__(self, *words: str, by: str = "M. Ashby") -> tuple[int, str, str]:
        """Exit code, stdout and stderr."""
        self.monkeypatch.setenv("CRIBKIT_BY", by)
        self.monkeypatch.setattr(sys, "argv", ["cribkit", *words])
        with pytest.raises(SystemExit) as ended:
            main()
        captured = self.capsys.readouterr()
        code = ended.value.code
        return (code if isinstance(code, int) else 0), captured.out, captured.err

    def json(self, *words: str, code: int = 0) -> dict[str, Any]:
        """The result of a command as JSON."""
        got, out, err = self(*words, "--json")
        assert got == code, err
        envelope = json.loads(out)
        assert list(envelope) == ["cribkit", "command", "ok", "result", "problems"]
        assert (envelope["cribkit"], envelope["ok"]) == (1, code == 0)
        return dict(envelope["result"])


@pytest.fixture
def counter(tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch) -> Counter:
    """A small crib and the program in its folder."""
    return Counter(tmp_path, capsys, monkeypatch)


def test_postings_tell_movements_and_what_is_there_now(counter: Counter) -> None:
    commands = [
        ("receive", "CL-1", "2 cans", "--lot", "T9", "--expires", "2028-05"),
        ("issue", "SK-8", "--to", "R. Holm"),
        ("return", "SK-8"),
        ("scrap", "SK-8", "--reason", "worn"),
        ("issue", "SK-10", "--to", "R. Holm", "--due", "2026-12-24"),
        ("lost", "SK-10", "--reason", "fell into the dock"),
        ("found", "SK-10"),
        ("undo", "13", "--reason", "wrong tag"),
    ]
    for words in commands:
        result = counter.json(*words)
        assert set(result) == POSTING, words
        assert all(set(movement) == MOVEMENT for movement in result["movements"]), words
        assert all(set(item) == ITEM for item in result["items"]), words
    assert counter.json("audit")["sound"] is True


def test_listings_have_these_keys(counter: Counter) -> None:
    assert set(counter.json("out")["out"][0]) == {
        "tag", "description", "kind", "lot", "amount", "unit", "holder", "job", "since", "due", "back_by",
        "overdue_days", "location",
    }  # fmt: skip
    history = counter.json("history", "TW-2")
    assert set(history) == {"item", "movements"}
    assert set(history["movements"][0]) == MOVEMENT | {"corrected_by", "in_after", "out_after"}
    assert set(counter.json("expiring", "--on", "2026-12-15", code=1)["lots"][0]) == {
        "tag", "description", "lot", "amount", "unit", "expires_on", "opened_on", "days", "expired", "location",
    }  # fmt: skip
    counted = counter.json("count", "SK-8", "3", code=1)
    assert set(counted) == {"posted", "counted", "differences", "not_counted"}
    assert set(counted["differences"][0]) == {
        "tag", "lot", "location", "ledger", "counted", "difference", "unit", "movement",
    }  # fmt: skip
    assert set(counter.json("audit")) == {"sound", "movements", "head"}
    assert set(counter.json("backup", "copy.db")) == {"file", "movements", "head", "kept"}
    assert set(counter.json("restore", "copy.db", "--replace")) == {"file", "movements", "head", "kept"}
    assert set(counter.json("export", "out-files")) == {"files"}
    assert set(counter.json("load", "files")) == {
        "added", "changed", "quantities", "recounted", "movements", "not_in_files", "unread", "ignored_files",
    }  # fmt: skip


def test_a_job_has_these_keys(counter: Counter) -> None:
    pulled = counter.json("pull", "clamp.toml", "--job", "wren-1", "--bay", "2", "--on", "2026-11-25")
    assert set(pulled) == {"job", "pulled", "anyway", "movements", "check"}
    (job,) = counter.json("jobs", "wren-1")["jobs"]
    assert set(job) == {
        "job", "state", "day", "by", "bay", "vehicle", "procedures", "anyway", "closed_at", "closed_by", "out",
        "holds", "torques",
    }  # fmt: skip
    closed = counter.json("close", "wren-1", "--missing", "SK-8", "--used", "CL-1=100 mL", code=1)
    assert set(closed) == {"job", "state", "movements", "holds", "usage", "torques", "broken"}
    assert closed["state"] == "held"
    assert counter.json("jobs")["jobs"][0]["holds"][0]["tag"] == "SK-8"
    counter.json("found", "SK-8", "--job", "wren-1")
    assert [one["job"] for one in counter.json("jobs")["jobs"]] == ["wren-31"], "known from a loan alone"


def test_a_pull_that_is_not_ready_says_why_and_posts_nothing(counter: Counter) -> None:
    counter("issue", "SK-8", "2", "--to", "R. Holm")
    code, out, _ = counter("pull", "clamp.toml", "--job", "wren-1", "--on", "2026-11-25")
    assert code == 1
    assert out.startswith("NOT READY")
    assert "R. Holm" in out
    assert "Nothing was pulled for job wren-1" in out
    assert [one["job"] for one in counter.json("jobs")["jobs"]] == ["wren-31"], "known from a loan alone"


@pytest.mark.parametrize(
    "words",
    [
        ("receive", "SK-8", "1"), ("issue", "SK-8"), ("return", "TW-2"), ("scrap", "SK-8", "--reason", "x"),
        ("lost", "TW-2", "--reason", "x"), ("found", "TW-2"), ("undo", "1", "--reason", "x"),
        ("count", "SK-8", "3", "--post"), ("load", "files", "--recount"), ("pull", "clamp.toml", "--job", "j"),
        ("close", "wren-31"),
    ],
    ids=lambda words: words[0],
)  # fmt: skip
def test_a_posting_needs_a_person_s_name(counter: Counter, words: tuple[str, ...]) -> None:
    before = counter.crib.read_bytes()
    code, out, err = counter(*words, by=" ")
    assert (code, out) == (2, "")
    assert err == "a posting needs a person's name: give --by NAME or set CRIBKIT_BY.\n"
    assert counter.crib.read_bytes() == before


@pytest.mark.parametrize(
    "words",
    [
        ("receive", "NO-1", "1"), ("receive", "SK-8"), ("receive", "SK-8", "-1"), ("receive", "SK-8", "nan"),
        ("receive", "CL-1", "1", "--expires", "2026-02-30"), ("receive", "(01)12345678901232", "1"),
        ("issue", "SK-10", "2"), ("issue", "PL-1"), ("return", "SK-8"), ("scrap", "SK-8"), ("lost", "TW-2"),
        ("found", "SK-8"), ("undo", "999", "--reason", "x"), ("undo", "1"), ("history", "NO-1"), ("jobs", "no-job"),
        ("count", "SK-8"), ("count", "--file", "no.csv"), ("expiring", "--within", "soon"), ("close", "no-job"),
        ("close", "wren-31", "--used", "TW-2"), ("pull", "no-procedure", "--job", "j"), ("pull", "clamp.toml"),
        ("backup", "no-folder/x.db"), ("backup", "clamp.toml"), ("restore", "clamp.toml"), ("load", "no-folder"),
    ],
    ids=" ".join,
)  # fmt: skip
def test_bad_input_is_refused_with_what_to_do(counter: Counter, words: tuple[str, ...]) -> None:
    code, out, err = counter(*words)
    assert code == (3 if words == ("restore", "clamp.toml") else 2)
    assert out == ""
    assert err.strip()
    assert "Traceback" not in err
    assert counter.json("audit")["movements"] == 12


def test_a_filled_count_sheet_goes_the_whole_way(counter: Counter) -> None:
    code, out, _ = counter("count", "--sheet", "--shelf", "A1", "--as", "csv")
    assert code == 0
    rows = list(csv.DictReader(io.StringIO(out)))
    assert [row["tag"] for row in rows] == ["SK-10", "SK-8"]
    filled = out.replace("SK-10,,", "SK-10,1,").replace("SK-8,,", "SK-8,1,")
    (counter.folder / "a1.csv").write_text(filled, encoding="utf-8")
    code, out, _ = counter("count", "--file", "a1.csv", "--shelf", "A1")
    assert (code, out) == (
        1,
        "Counted 2: 1 difference, not posted (--post posts them):\n  SK-8: ledger 2, shelf 1: -1\n",
    )
    code, out, _ = counter("count", "--file", "a1.csv", "--shelf", "A1", "--post")
    assert code == 0
    assert counter("count", "--file", "a1.csv")[:2] == (0, "Counted 2: no differences.\n")


def test_overdue_loans_are_the_answer_no(counter: Counter) -> None:
    code, out, _ = counter("out", "--overdue", "--on", "2026-11-25")
    assert (code, "TW-2" in out) == (1, True)
    assert counter("out", "--overdue", "--on", "2026-11-21")[:2] == (0, "Nothing is overdue.\n")
    assert counter("out", "--overdue", "--on", "2026-11-25", "--within", "1w")[0] == 0


def test_the_end_of_a_broken_chain_is_not_worth_noting(counter: Counter) -> None:
    assert "--was" in counter("audit")[1]
    connection = sqlite3.connect(counter.crib)
    connection.execute("UPDATE balance SET inside = inside + 1000 WHERE tag = 'SK-8'")
    connection.commit()
    connection.close()
    code, out, err = counter("audit")
    assert (code, "--was" in out, "SK-8: kept is" in err) == (1, False, True)


def test_a_file_that_is_not_there_is_told_as_such(counter: Counter) -> None:
    assert counter("count", "--file", "nothere.csv")[::2] == (
        2, "nothere.csv: there is no such file: look how it is spelled.\n",
    )  # fmt: skip


def test_a_scan_of_the_demo_fills_item_lot_expiry_and_count(counter: Counter) -> None:
    """The guide's line; numbers from 952 on are kept by GS1 for demonstrations (from memory)."""
    assert counter("export", "--demo", "demo")[0] == counter("--crib", "demo.db", "load", "demo")[0] == 0
    scan = "(01)09521234500261(17)290531(10)BN2611(30)6"
    assert scan in (Path(__file__).parents[2] / "docs" / "guide-attendant.md").read_text(encoding="utf-8")
    (one,) = counter.json("--crib", "demo.db", "receive", scan)["movements"]
    assert (one["tag"], one["lot"], one["amount"], one["unit"]) == ("CH-002", "BN2611", 3000, "mL")


def test_who_has_the_last_one_is_told_to_the_next(counter: Counter) -> None:
    counter("issue", "SK-8", "2", "--to", "R. Holm", "--job", "wren-7", "--on", "2026-11-25")
    code, _, err = counter("issue", "SK-8", "--to", "J. Sedge", "--on", "2026-11-25")
    assert code == 2
    assert "SK-8: cannot issue 1: only 0 in the crib; R. Holm, job wren-7, has 2 since 2026-11-25:" in err


@pytest.mark.parametrize(("text", "days"), [("60", 60), ("60d", 60), ("8w", 56), ("2 weeks", 14), ("1 day", 1)])
def test_days_are_written_as_people_write_them(text: str, days: int) -> None:
    assert parse_days(text) == days


def test_no_listing_is_wider_than_the_page(counter: Counter) -> None:
    for words in (("out",), ("history", "TW-2"), ("expiring", "--within", "900d"), ("jobs", "--all")):
        _, out, _ = counter(*words, "--on", "2026-11-25") if words[0] != "jobs" else counter(*words)
        assert max(map(len, out.splitlines())) <= 80, words


def test_a_name_that_is_no_text_is_refused_and_a_foreign_one_is_kept(counter: Counter) -> None:
    assert counter("issue", "SK-8", "--to", "Zoë Ångström, 測試")[0] == 0
    assert counter.json("out")["out"][-1]["holder"] == "Zoë Ångström, 測試"
    code, _, err = counter("issue", "SK-8", "--to", "broken \udcff name")
    assert code == 2, err
    assert counter.json("audit")["sound"] is True


@pytest.mark.parametrize("words", [("history", "TW-2"), ("export", "out-files"), ("out",)])
def test_a_plain_locale_and_a_closed_pipe_do_no_harm(counter: Counter, words: tuple[str, ...]) -> None:
    environment = {key: value for key, value in os.environ.items() if not key.startswith(("LC_", "LANG"))}
    process = subprocess.Popen(
        [sys.executable, "-m", "cribkit", *words],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        env=environment | {"LANG": "C", "PYTHONUTF8": "0", "PYTHONCOERCECLOCALE": "0"},
        cwd=counter.folder,
    )
    assert process.stdout is not None
    process.stdout.close()
    assert process.stderr is not None
    assert process.stderr.read() == b""
    process.wait()
