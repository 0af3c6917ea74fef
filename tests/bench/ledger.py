"""Reliability and speed of the ledger: `python tests/bench/ledger.py [desks] [kills] [million]`.

desks    eight processes, 200 postings each, on one file; the same load in bare sqlite3
kills    200 rounds of SIGKILL at a random moment of a posting loop
million  check, find and issue on a crib with one million movements and on a new one
"""

from __future__ import annotations

import random
import statistics
import sys
import tempfile
import time
from collections.abc import Iterable
from concurrent.futures import ProcessPoolExecutor
from multiprocessing import get_context
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))

from tests.bench.clock import processes, show
from tests.reliability.world import after_a_kill, bare_desk, desk, make_bare, make_crib, posted_until_killed

DESKS, POSTINGS, ROUNDS, MANY = 8, 200, 200, 1_000_000


def desks(folder: Path) -> None:
    """All postings there, balances equal to the sum, and the worst wait."""
    from cribkit.store.audit import audit
    from cribkit.store.opening import open_crib

    make_bare(folder / "bare.db", DESKS)
    path = make_crib(folder)
    with open_crib(path) as crib:
        before = audit(crib).movements
    bare, bare_waits = together(bare_desk, folder / "bare.db")
    ours, waits = together(desk, path)
    with open_crib(path) as crib:
        found = audit(crib)
    print(f"{DESKS} processes x {POSTINGS} postings on one file, opened anew for each")
    print(f"  there: {found.movements - before} of {DESKS * POSTINGS}; problems of the audit: {len(found.problems)}")
    told("bare sqlite3", bare, bare_waits)
    told("cribkit", ours, waits)
    print(f"  ratio: time {ours / bare:.2f}, worst wait {max(waits) / max(bare_waits):.2f}")


def together(work: object, path: Path) -> tuple[float, list[float]]:
    """Run a desk in every process at once: seconds in all, and of each posting."""
    with ProcessPoolExecutor(DESKS, mp_context=get_context("spawn")) as pool:
        list(pool.map(abs, range(DESKS)))  # the processes are up
        start = time.perf_counter()
        waits = pool.map(work, [path] * DESKS, range(DESKS), [POSTINGS] * DESKS)  # type: ignore[arg-type]  # either desk
        flat = [wait for one in waits for wait in one]
        return time.perf_counter() - start, flat


def told(name: str, spent: float, waits: list[float]) -> None:
    """One line of figures."""
    ordered = sorted(waits)
    p99 = ordered[int(0.99 * len(ordered))]
    print(
        f"  {name:13} {spent:6.2f} s, {len(waits) / spent:6.0f} postings/s; a posting: median "
        f"{1000 * statistics.median(waits):.1f} ms, p99 {1000 * p99:.0f} ms, worst {1000 * ordered[-1]:.0f} ms"
    )


def kills(folder: Path) -> None:
    """No acknowledged movement lost, none half posted, integrity clean, the next command works."""
    dice, path, wrong, acknowledged = random.Random(5), make_crib(folder), [], 0
    for _ in range(ROUNDS):
        acknowledged = posted_until_killed(path, dice.uniform(0, 0.06))
        wrong += after_a_kill(path, acknowledged)
    print(f"{ROUNDS} rounds of SIGKILL, {acknowledged} movements acknowledged")
    print(f"  lost, torn, unsound or in need of repair: {len(wrong)}")
    for line in wrong[:5]:
        print(f"    {line}")


def million(folder: Path) -> None:
    """Whole commands on a new crib and on one with a long history, in turns."""
    from cribkit.desk.keeping import Entry, load_folder
    from cribkit.store.demo_folder import demo_folder
    from tests.reliability.world import DAY

    young, old = folder / "young.db", folder / "old.db"
    for path in (young, old):
        load_folder(path, demo_folder("seed_inventory"), Entry("A. Keeper", DAY, "2026-11-01T08:00:00Z"))
    spent = grow(old, MANY)
    print(f"{MANY} movements posted in bulk in {spent:.0f} s; the file has {old.stat().st_size / 1e6:.0f} MB")
    on = ("--on", "2026-11-25")
    commands = {
        "check": ("check", "throttle-body-service", "--procedures", str(demo_folder("procedures")), *on),
        "find": ("find", "8 mm socket, 1/4 drive"),
        "issue and use": ("issue", "CO-066", "1 each", "--use", "--by", "A. Keeper"),
    }
    for name, words in commands.items():
        crib = {key: ["-m", "cribkit", "--crib", str(path), *words] for key, path in (("new", young), ("old", old))}
        show(name, processes(crib, 25), "new")
    start = time.perf_counter()
    processes({"audit": ["-m", "cribkit", "--crib", str(old), "audit"]}, 1)
    print(f"audit of it: {(time.perf_counter() - start) / 2:.1f} s")


def grow(path: Path, count: int) -> float:
    """Add so many movements that balance each other, as years of work do: issue, return, use, receive."""
    from cribkit.domain.stock.movement import Movement, MovementKind, chained
    from cribkit.store.opening import open_crib
    from cribkit.store.posting import INSERT, row_of
    from tests.reliability.world import DAY

    start = time.perf_counter()
    with open_crib(path, write=True) as crib:
        tags = [row[0] for row in crib.connection.execute("SELECT tag FROM balance WHERE lot = '' AND inside >= 1000")]
        first, last = crib.connection.execute("SELECT id, digest FROM movement ORDER BY id DESC LIMIT 1").fetchone()

        def history() -> Iterable[Movement]:
            for at in range(count):
                kind = (MovementKind.ISSUE, MovementKind.RETURN)[at % 2]
                tag = tags[at // 2 % len(tags)]
                yield Movement(
                    kind, tag, 1000, "A. Keeper", DAY, holder="R. Holm", id=first + 1 + at, at="2026-11-25T08:00:00Z"
                )

        with crib.posting():
            end = None
            rows = chained(history(), last)
            while batch := [row for _, row in zip(range(10_000), rows, strict=False)]:
                crib.connection.executemany(INSERT, map(row_of, batch))
                end = batch[-1]
            assert end is not None
            crib.connection.execute("UPDATE fact SET value = ? WHERE name = 'head'", (f"{end.id}:{end.digest}",))
    return time.perf_counter() - start


if __name__ == "__main__":
    chosen = sys.argv[1:] or ["desks", "kills", "million"]
    for benchmark in (desks, kills, million):
        if benchmark.__name__ in chosen:
            with tempfile.TemporaryDirectory() as place:
                benchmark(Path(place))
