"""What people bring by mistake, through the whole program: a message that says what to do, the exit code, and nothing
half-done. Each command is a process of its own."""

from __future__ import annotations

import ctypes
import os
import shutil
import sqlite3
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest

from tests.desk.world import consumable, crib_of, tool, torque

ROOT = str(Path(__file__).parents[2])
HEAD = 'id = "cover"\ntitle = "Reseal the cover"\napplies_to = "Wren van"\nsource = "Invented."\ncautions = ["Hot."]\n'
BODY = (
    tool("8 mm socket, 1/4 drive")
    + torque("10 N·m", tolerance="10 %")
    + consumable("throttle body cleaner", "120 mL", never=["brake parts cleaner"])
)
TOOLS = "S8,SKT 1/4DR 8MM 6PT,1,Größe-01,ok,,"
WRENCHES = "TW1,click,2,24,N·m,0.2,4,1/4,200,2026-09-01,12,W1,ok"
CLEANER = "C1,throttle body cleaner,mL,500,2,L1,2028-01,B1,"
CHECK = ("check", "cover", "--on", "2026-11-25")


@pytest.fixture
def here(tmp_path: Path) -> Path:
    """A folder with a crib, the CSV files that it came from, and one procedure."""
    with crib_of(tmp_path, tools=TOOLS, wrenches=WRENCHES, consumables=CLEANER):
        pass
    (tmp_path / "procedures").mkdir()
    (tmp_path / "procedures" / "cover.toml").write_text(HEAD + BODY, encoding="utf-8")
    return tmp_path


def give_up_rights() -> None:
    """Take from root what lets it pass over file permissions: CAP_DAC_OVERRIDE and CAP_DAC_READ_SEARCH, capabilities
    1 and 2, out of the bounding set of the program that is about to start (prctl(2), PR_CAPBSET_DROP = 24)."""
    if os.getuid() == 0:
        libc = ctypes.CDLL(None, use_errno=True)
        for capability in (1, 2):
            libc.prctl(24, capability, 0, 0, 0)


def run(folder: Path, *command: str, stdout: int = subprocess.PIPE, **env: str) -> subprocess.CompletedProcess[str]:
    """The program as a person without special rights starts it."""
    return subprocess.run(
        [sys.executable, "-m", "cribkit", *command],
        cwd=folder,
        env={"PATH": os.environ["PATH"], "HOME": str(folder / "home"), "PYTHONPATH": ROOT, **env},
        stdout=stdout,
        stderr=subprocess.PIPE,
        stdin=subprocess.DEVNULL,
        check=False,
        encoding="utf-8",
        preexec_fn=give_up_rights,
    )


def told(done: subprocess.CompletedProcess[str], code: int, *words: str) -> None:
    """It ended with this code, said this on stderr, and nothing like a traceback."""
    assert done.returncode == code, done.stderr
    for word in words:
        assert word in done.stderr
    assert "Traceback" not in done.stderr
    assert "fault of the program" not in done.stderr


def cp1252(folder: Path) -> None:
    (folder / "seed" / "tools.csv").write_bytes("tag,description\nA,jig for café doors\n".encode("cp1252"))


def replaced(name: str, text: str) -> Callable[[Path], object]:
    """One of the files with another content."""
    return lambda folder: (folder / "seed" / name).write_text(text, encoding="utf-8")


HEADER = "tag,description,quantity\n"
LOTS = "tag,description,unit,on_hand,expires_on\n"
LOADS: dict[str, tuple[Callable[[Path], object], tuple[str, ...]]] = {
    "a folder that is not there": (lambda folder: shutil.rmtree(folder / "seed"), ("there is no such folder",)),
    "an empty file": (replaced("tools.csv", ""), ("tools.csv:1: the file is empty", "give it a header")),
    "Windows-1252": (cp1252, ("tools.csv:2: the file is not UTF-8", "save the file again as CSV UTF-8")),
    "one megabyte in a cell": (replaced("tools.csv", f"{HEADER}A,{'x' * 1_000_000},1\n"), ("tools.csv:2", "shorten")),
    "a tag twice": (replaced("tools.csv", f"{HEADER}A,hammer,1\nA,pick,1\n"), ("tools.csv:3", "each item its own tag")),
    "negative and not a number": (
        replaced("tools.csv", f"{HEADER}A,hammer,-3\nB,pick,nan\n"),
        ("tools.csv:2: quantity: -3 is negative", "tools.csv:3: quantity: 'nan' is not a number"),
    ),
    "31/02/2026": (replaced("consumables.csv", f"{LOTS}C,rags,each,1,31/02/2026\n"), ("consumables.csv:2",)),
    "a file without permission": (
        lambda folder: (folder / "seed" / "tools.csv").chmod(0),
        ("tools.csv: cannot be read", "ask its owner"),
    ),
}


@pytest.mark.parametrize(("spoil", "words"), LOADS.values(), ids=LOADS)
def test_a_bad_folder_is_refused_and_makes_no_crib(
    here: Path, spoil: Callable[[Path], object], words: tuple[str, ...]
) -> None:
    spoil(here)
    done = run(here, "--crib", "new.db", "load", "seed")
    told(done, 2, *words)
    assert done.stdout == ""
    assert not (here / "new.db").exists()


@pytest.mark.parametrize("before", ["", "\ufeff"], ids=["plain", "byte order mark"])
def test_quoted_line_ends_a_byte_order_mark_and_foreign_letters_are_no_fault(here: Path, before: str) -> None:
    text = f'{before}tag,description,quantity,location\nÄ-8,"8 mm socket,\n1/4 drive",1,Größe-01\n'
    (here / "seed" / "tools.csv").write_text(text, encoding="utf-8")
    told(run(here, "--crib", "neue Kiste ü.db", "load", "seed"), 0)
    found = run(here, "--crib", "neue Kiste ü.db", "find", "8 mm socket, 1/4 drive", LANG="C", LC_ALL="C")
    told(found, 0)
    assert "Ä-8" in found.stdout
    assert "Größe-01" in found.stdout


def newer(folder: Path) -> None:
    with sqlite3.connect(folder / "crib.db") as crib:
        crib.execute("PRAGMA user_version = 99")


CRIBS: dict[str, tuple[Callable[[Path], object], str]] = {
    "a picture": (lambda folder: (folder / "crib.db").write_bytes(b"\xff\xd8\xff\xe0" + bytes(3000)), "is not a crib"),
    "an empty file": (lambda folder: (folder / "crib.db").write_bytes(b""), "is not a crib"),
    "nothing": (lambda folder: (folder / "crib.db").unlink(), "there is no crib here"),
    "a newer version's": (newer, "written by a newer cribkit"),
    "not to be read": (lambda folder: (folder / "crib.db").chmod(0), "may not be read by you"),
}


@pytest.mark.parametrize(("spoil", "words"), CRIBS.values(), ids=CRIBS)
def test_a_crib_that_cannot_be_used_ends_with_3(here: Path, spoil: Callable[[Path], object], words: str) -> None:
    spoil(here)
    done = run(here, *CHECK)
    told(done, 3, words)
    assert done.stdout == ""


def test_a_crib_that_may_only_be_read_answers_and_refuses_postings(here: Path) -> None:
    (here / "crib.db").chmod(0o444)
    told(run(here, *CHECK), 0)
    told(run(here, "scrap", "S8", "--by", "A. Reed", "--reason", "worn"), 3, "cannot be written", "nothing was changed")


def test_a_folder_that_may_only_be_read_is_no_place_for_a_crib(here: Path) -> None:
    here.chmod(0o555)
    try:
        told(run(here, *CHECK), 0)
        told(run(here, "--crib", "new.db", "load", "seed"), 3, "no crib can be made here")
        told(run(here, "export", "out"), 2, "cannot write here")
    finally:
        here.chmod(0o755)


def test_while_another_desk_posts_a_check_answers_and_a_posting_is_refused_after_the_wait(here: Path) -> None:
    other = sqlite3.connect(here / "crib.db", isolation_level=None)
    other.execute("BEGIN IMMEDIATE")
    told(run(here, *CHECK), 0)
    command = ("scrap", "S8", "--by", "A. Reed", "--reason", "worn")
    told(run(here, *command, CRIBKIT_WAIT="0.1"), 3, "another desk has kept this crib busy", "nothing was changed")
    other.close()


def test_a_syntax_error_in_a_procedure_is_told_with_its_line(here: Path) -> None:
    path = here / "procedures" / "cover.toml"
    path.write_text(HEAD + BODY + "[[tool\n", encoding="utf-8")
    line = (HEAD + BODY).count("\n") + 1
    told(run(here, *CHECK), 2, f"procedures/cover.toml:{line}: not valid TOML")
    told(run(here, "lint"), 2, f"procedures/cover.toml:{line}: not valid TOML")


def test_a_procedure_named_twice_is_refused_as_its_lines_could_not_be_told_apart(here: Path) -> None:
    told(run(here, "check", "cover", "./procedures/cover.toml"), 2, "cover: this procedure is named more than once")


def test_a_blank_text_is_nothing_to_look_for(here: Path) -> None:
    told(run(here, "find", "8 mm socket", " "), 2, "nothing to look for")


@pytest.mark.parametrize("columns", ["0", "7", "80", "400", "many"])
def test_any_width_of_terminal_gets_the_page(here: Path, columns: str) -> None:
    done = run(here, *CHECK, COLUMNS=columns, TERM="dumb")
    told(done, 0)
    assert done.stdout.startswith("READY: all 3 needs")
    assert max(map(len, done.stdout.splitlines())) <= 100


@pytest.mark.parametrize("env", [{"LANG": "C"}, {"LC_ALL": "C", "PYTHONIOENCODING": "ascii"}], ids=["C", "ascii"])
def test_a_plain_locale_gets_the_page(here: Path, env: dict[str, str]) -> None:
    done = run(here, *CHECK, **env)
    told(done, 0)
    assert "TW1 set to 10 N" in done.stdout


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="no /dev/full here to stand for a full disk")
def test_an_answer_that_cannot_be_written_is_told_without_denying_the_posting(here: Path) -> None:
    with Path("/dev/full").open("w") as full:
        told(run(here, *CHECK, stdout=full.fileno()), 3, "the answer cannot be written", "write it elsewhere")


def test_a_place_for_the_cache_that_cannot_be_made_is_no_fault(here: Path) -> None:
    (here / "home").write_text("a file where the home folder should be", encoding="utf-8")
    told(run(here, *CHECK), 0)


def test_a_load_and_the_list_of_commands_keep_inside_the_page(here: Path) -> None:
    long = "a description that no reader understands and that is much longer than one line of a narrow terminal"
    (here / "seed" / "tools.csv").write_text(f"{HEADER}S8,{long},1\nX1,{long},1\n", encoding="utf-8")
    loaded, listed = run(here, "load", "seed", COLUMNS="80"), run(here, "--help", COLUMNS="80")
    assert "S8: description:" in loaded.stdout
    for done in (loaded, listed):
        told(done, 0)
        assert max(map(len, done.stdout.splitlines())) <= 80
    assert "..." not in listed.stdout.partition("\n")[2], "no sentence is cut off"
