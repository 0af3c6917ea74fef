"""Several desks, a killed process, a full disk: nothing acknowledged is lost, nothing is half posted.

The long versions, with figures, are in tests/bench/ledger.py and docs/reliability.md.
"""

from __future__ import annotations

import json
import marshal
import os
import random
import resource
import sqlite3
import subprocess
import sys
import threading
from concurrent.futures import ProcessPoolExecutor
from multiprocessing import get_context
from pathlib import Path

import pytest

from cribkit.store.audit import audit
from cribkit.store.backup import backup
from cribkit.store.opening import open_crib
from tests.reliability.world import after_a_kill, desk, make_crib, posted_until_killed

PROCEDURE = """
id = "{name}"
title = "A job"
applies_to = "Wren van"
source = "Invented."
revision = "A"
minutes = 5
cautions = ["Engine cold."]

[[tool]]
need = "8 mm socket, 1/4 drive"
use = "clamp"
"""


def cribkit(*words: str, crib: Path, **more: object) -> subprocess.Popen[str]:
    """Start the program."""
    command = [sys.executable, "-m", "cribkit", "--crib", str(crib), *words]
    # Python 3.11 keeps a module's compiled file that a full disk or a kill cut short, and stumbles over it ever after.
    environment = os.environ | {"CRIBKIT_BY": "M. Ashby", "PYTHONDONTWRITEBYTECODE": "1"}
    return subprocess.Popen(
        command,
        env=environment,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
        text=True,
        **more,  # type: ignore[call-overload]  # options of Popen
    )


def test_several_desks_post_at_once_and_every_movement_is_there(tmp_path: Path) -> None:
    path = make_crib(tmp_path)
    with open_crib(path) as crib:
        before = audit(crib).movements
    with ProcessPoolExecutor(4, mp_context=get_context("spawn")) as pool:
        list(pool.map(desk, [path] * 4, range(4), [25] * 4))
    with open_crib(path) as crib:
        found = audit(crib)
        assert (found.problems, found.movements) == ((), before + 100)


def test_a_process_that_is_killed_loses_nothing_that_it_told(tmp_path: Path) -> None:
    path, dice = make_crib(tmp_path), random.Random(7)
    for _ in range(5):
        assert after_a_kill(path, posted_until_killed(path, dice.uniform(0, 0.05))) == []


def test_of_two_who_pull_the_last_one_at_once_exactly_one_gets_it(tmp_path: Path) -> None:
    path = make_crib(tmp_path)
    for name in ("one", "two"):
        (tmp_path / f"{name}.toml").write_text(PROCEDURE.format(name=name), encoding="utf-8")
    started = [
        cribkit("pull", str(tmp_path / f"{name}.toml"), "--job", name, "--by", by, "--json", crib=path)
        for name, by in (("one", "R. Holm"), ("two", "J. Sedge"))
    ]
    outputs = [process.communicate()[0] for process in started]
    results = [json.loads(text)["result"] for text in outputs]
    assert sorted(process.returncode for process in started) == [0, 1]
    assert sorted(result["pulled"] for result in results) == [False, True]
    winner = "R. Holm" if results[0]["pulled"] else "J. Sedge"
    loser = next(result for result in results if not result["pulled"])
    assert winner in loser["check"]["tools"][0]["why"], "the other is told who has it"


@pytest.mark.parametrize("words", [("receive", "C1", "5"), ("load", "files", "--recount"), ("issue", "C1", "2")])
def test_a_full_disk_is_told_and_nothing_is_posted(tmp_path: Path, words: tuple[str, ...]) -> None:
    path = make_crib(tmp_path)
    (tmp_path / "files" / "consumables.csv").write_text("tag,description,unit,on_hand\nC1,nitrile gloves 1,each,7\n")
    limit = 16 * 1024  # bytes that a file may grow to: less than a posting needs
    process = cribkit(
        *words,
        crib=path,
        cwd=tmp_path,
        preexec_fn=lambda: resource.setrlimit(resource.RLIMIT_FSIZE, (limit, limit)),
    )
    out, err = process.communicate()
    assert (process.returncode, out) == (3, "")
    assert "nothing was posted" in err
    assert "Traceback" not in err
    with open_crib(path) as crib:
        assert audit(crib).problems == ()
        assert crib.must_have("C1").on_hand == 1_000_000


def test_a_backup_while_others_post_is_sound(tmp_path: Path) -> None:
    path = make_crib(tmp_path)
    poster = threading.Thread(target=desk, args=(path, 1, 60))
    poster.start()
    copies = [backup(path, tmp_path / f"copy-{number}.db").audit.movements for number in range(5)]
    poster.join()
    assert copies == sorted(copies)
    for number in range(5):
        connection = sqlite3.connect(tmp_path / f"copy-{number}.db")
        assert connection.execute("PRAGMA integrity_check").fetchone() == ("ok",)
        connection.close()


def test_a_compiled_file_that_was_cut_short_is_told_by_its_name(tmp_path: Path) -> None:
    """A disk that fills up while Python compiles leaves such a file; each start would stumble over it."""
    path = make_crib(tmp_path)
    environment = os.environ | {"PYTHONPYCACHEPREFIX": str(tmp_path / "compiled")}
    environment.pop("PYTHONDONTWRITEBYTECODE", None)
    command = [sys.executable, "-m", "cribkit", "--crib", str(path), "find", "8 mm socket"]
    assert subprocess.run(command, env=environment, capture_output=True, check=False).returncode == 0
    for name in ("checking", "find", "read"):  # the command itself, what it loads at once, what it loads in its course
        compiled = next((tmp_path / "compiled").rglob(f"cribkit/**/{name}.cpython-*.pyc"))
        whole = compiled.read_bytes()
        for cut in cuts(whole):
            compiled.write_bytes(whole[:cut])
            done = subprocess.run(command, env=environment, capture_output=True, text=True, check=False)
            assert (done.returncode, done.stdout) == (3, "")
            assert f"{compiled}: this compiled file was cut short. Delete it" in done.stderr
        compiled.unlink()
        assert subprocess.run(command, env=environment, capture_output=True, check=False).returncode == 0


def cuts(whole: bytes) -> list[int]:
    """One length for each thing that Python says of a compiled file, by what it was reading where the file ends."""
    found: dict[str, int] = {}
    for length in range(17, len(whole)):
        try:
            marshal.loads(whole[16:length])  # behind the header of a compiled file
        except EOFError as error:
            found.setdefault(str(error), length)
    assert len(found) > 1
    return list(found.values())
