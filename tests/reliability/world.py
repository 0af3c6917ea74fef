"""One crib file and the processes that post to it, for tests and benchmarks of reliability."""

from __future__ import annotations

import datetime as dt
import os
import signal
import sqlite3
import subprocess
import sys
import time
from pathlib import Path

from cribkit.desk.keeping import Entry, load_folder

DAY = dt.date(2026, 11, 25)
ENTRY = Entry("A. Keeper", DAY, "2026-11-25T08:00:00Z")
ITEMS = 8


def make_crib(folder: Path) -> Path:
    """A crib with a few consumables of which there is more than enough."""
    rows = [f"C{number},nitrile gloves {number},each,1000000" for number in range(ITEMS)]
    tools = ["W1,SKT 1/4DR 8MM 6PT,1", "R1,RATCHET 1/4DR,8"]
    (folder / "files").mkdir(parents=True)
    (folder / "files" / "consumables.csv").write_text("\n".join(["tag,description,unit,on_hand", *rows]) + "\n")
    (folder / "files" / "tools.csv").write_text("\n".join(["tag,description,quantity", *tools]) + "\n")
    load_folder(folder / "crib.db", folder / "files", ENTRY)
    return folder / "crib.db"


def desk(path: Path, number: int, postings: int) -> list[float]:
    """One desk: each posting opens the crib anew, as a command does. Seconds of each posting."""
    from cribkit.desk.ledger import Arrival, Errand, issue, receive
    from cribkit.store.opening import open_crib

    waits = []
    for turn in range(postings):
        start = time.perf_counter()
        with open_crib(path, write=True) as crib:
            if turn % 2:
                receive(crib, f"C{number % ITEMS}", Arrival("1"), ENTRY)
            else:
                issue(crib, f"C{number % ITEMS}", Errand("1", f"P{number}"), ENTRY)
        waits.append(time.perf_counter() - start)
    return waits


def bare_desk(path: Path, number: int, postings: int) -> list[float]:
    """The same load in bare sqlite3: two rows and a balance in one transaction, opened anew each time."""
    waits = []
    for turn in range(postings):
        start = time.perf_counter()
        connection = sqlite3.connect(path, timeout=30, isolation_level=None)
        connection.execute("PRAGMA synchronous = FULL")
        connection.execute("BEGIN IMMEDIATE")
        connection.execute("INSERT INTO posted (desk, turn, text) VALUES (?, ?, ?)", (number, turn, "x" * 150))
        connection.execute("UPDATE balance SET amount = amount + 1 WHERE desk = ?", (number,))
        connection.execute("UPDATE head SET count = count + 1")
        connection.execute("COMMIT")
        connection.close()
        waits.append(time.perf_counter() - start)
    return waits


def make_bare(path: Path, desks: int) -> None:
    """The tables of `bare_desk`."""
    connection = sqlite3.connect(path)
    connection.executescript(
        "PRAGMA journal_mode = WAL; CREATE TABLE posted (id INTEGER PRIMARY KEY, desk, turn, text);"
        "CREATE TABLE balance (desk INTEGER PRIMARY KEY, amount);"
        "CREATE TABLE head (count); INSERT INTO head VALUES (0);"
    )
    connection.executemany("INSERT INTO balance VALUES (?, 0)", [(number,) for number in range(desks)])
    connection.commit()
    connection.close()


POSTER = """
import sys
from pathlib import Path
from tests.reliability.world import ENTRY
from cribkit.desk.ledger import Errand, issue
from cribkit.store.opening import open_crib
while True:
    with open_crib(Path(sys.argv[1]), write=True) as crib:
        for _ in range(5):
            done = issue(crib, "C1", Errand("3", "P1", use=True), ENTRY)
            print(done.movements[-1].id, flush=True)
"""


def posted_until_killed(path: Path, seconds: float) -> int:
    """Start a process that posts without end, kill it so long after its first posting; the last number it told."""
    process = subprocess.Popen([sys.executable, "-c", POSTER, str(path)], stdout=subprocess.PIPE, text=True)
    assert process.stdout is not None
    told = [process.stdout.readline()]
    time.sleep(seconds)
    os.kill(process.pid, signal.SIGKILL)
    rest, _ = process.communicate()
    told += rest.splitlines(keepends=True)
    return int([line for line in told if line.endswith("\n")][-1])


def after_a_kill(path: Path, acknowledged: int) -> list[str]:
    """What is wrong with the crib after a kill; the crib is opened as the next command does."""
    from cribkit.desk.ledger import Arrival, receive
    from cribkit.store.audit import audit
    from cribkit.store.opening import open_crib

    wrong = []
    with open_crib(path, write=True) as crib:
        found = audit(crib)
        wrong += [str(problem) for problem in found.problems]
        if found.movements < acknowledged:
            wrong.append(f"movement {acknowledged} was acknowledged, the last is {found.movements}")
        counts = crib.connection.execute(
            "SELECT kind, count(*) FROM movement WHERE tag = 'C1' GROUP BY kind"
        ).fetchall()
        if dict(counts).get("issue", 0) != dict(counts).get("use", 0):
            wrong.append(f"half a posting: {counts}")
        receive(crib, "C1", Arrival("3"), ENTRY)
    return wrong
