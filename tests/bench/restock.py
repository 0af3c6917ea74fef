"""How long the restock list takes: 5,000 consumables with 200,000 movements, and how that grows with both.

Each figure stands beside the floor of the same run: reading those movements once from SQLite.

    python tests/bench/restock.py [--trial]
"""

from __future__ import annotations

import datetime as dt
import random
import sqlite3
import sys
import tempfile
from collections.abc import Callable
from pathlib import Path
from statistics import median
from time import perf_counter

from cribkit.desk.restock import restock
from cribkit.domain.stock.held import Policy
from cribkit.report.restock import answer
from cribkit.store.crib import Crib
from cribkit.store.migrate import migrate

TODAY = dt.date(2026, 11, 30)
DAYS = 720
SIZES = [(5_000, 200_000), (5_000, 100_000), (5_000, 50_000), (2_500, 200_000), (1_250, 200_000), (1_250, 50_000)]


def make(path: Path, items: int, movements: int) -> None:
    """A crib file with invented consumables and their uses over two years, written past the posting rules."""
    rng = random.Random(items * 31 + movements)
    connection = sqlite3.connect(path, isolation_level=None)
    connection.execute("BEGIN")
    migrate(connection)
    connection.executemany(
        "INSERT INTO supplier (name, lead_days, minimum_order) VALUES (?, ?, ?)",
        [(f"Supplier {n}", rng.randint(2, 20), rng.choice([None, 50, 100])) for n in range(20)],
    )
    tags = [f"C-{n:05}" for n in range(items)]
    connection.executemany(
        "INSERT INTO item (tag, kind, description, unit, pack, meaning) VALUES (?, 'consumable', ?, ?, ?, '{}')",
        [(tag, f"invented consumable {tag}", *rng.choice([("each", 1), ("each", 50), ("mL", 500)])) for tag in tags],
    )
    connection.executemany(
        "INSERT INTO consumable (tag, stock_unit, minimum, supplier, unit_cost) VALUES (?, 'each', ?, ?, ?)",
        [(tag, rng.choice([None, 1, 2]), f"Supplier {rng.randrange(20)}", rng.uniform(1, 40)) for tag in tags],
    )
    connection.executemany(
        "INSERT INTO lot (tag, lot, expires_on) VALUES (?, 'A', ?)",
        [(tag, str(TODAY + dt.timedelta(days=rng.randint(-30, 900)))) for tag in tags[::3]],
    )
    connection.executemany(
        "INSERT INTO balance (tag, lot, inside, outside) VALUES (?, ?, ?, 0)",
        [(tag, "A" if at % 3 == 0 else "", rng.randint(0, 200) * 1000) for at, tag in enumerate(tags)],
    )
    connection.executemany(
        "INSERT INTO movement (id, at, day, by, kind, tag, amount, digest) VALUES (?, '', ?, 'bench', ?, ?, ?, '')",
        (row(rng, number, tags, movements) for number in range(1, movements + 1)),
    )
    connection.execute("COMMIT")
    connection.close()


def row(rng: random.Random, number: int, tags: list[str], movements: int) -> tuple[object, ...]:
    """One movement: a receipt of each tag first, then uses, later numbers on later days."""
    day = TODAY - dt.timedelta(days=DAYS - DAYS * number // (movements + 1))
    if number <= len(tags):
        return number, str(day), "receive", tags[number - 1], 500_000
    return number, str(day), "use", rng.choice(tags), rng.randint(1, 6) * 1000


def timed(work: Callable[[], object], runs: int = 3) -> float:
    """Median of a few runs, in seconds."""
    times = []
    for _ in range(runs):
        start = perf_counter()
        work()
        times.append(perf_counter() - start)
    return median(times)


def floor(path: Path) -> None:
    """Read every movement once."""
    connection = sqlite3.connect(path)
    for _ in connection.execute("SELECT * FROM movement"):
        pass
    connection.close()


def run(path: Path) -> None:
    """The list, from opening the file to its last line of text."""
    connection = sqlite3.connect(path, isolation_level=None)
    found = answer(restock(Crib(connection), Policy(TODAY)))
    assert found.text is not None
    found.text(80)
    connection.close()


def trial(path: Path) -> None:
    """The past replayed and one future of each item."""
    from cribkit.desk.trying import try_policy

    connection = sqlite3.connect(path, isolation_level=None)
    try_policy(Crib(connection), Policy(TODAY), 1, lambda *_: None)
    connection.close()


def main() -> None:
    """Print a row for each size."""
    print(f"{'consumables':>12}{'movements':>11}{'list s':>9}{'floor s':>9}{'ratio':>8}")
    with tempfile.TemporaryDirectory() as folder:
        for items, movements in SIZES:
            path = Path(folder) / f"{items}-{movements}.db"
            make(path, items, movements)
            whole, least = timed(lambda path=path: run(path)), timed(lambda path=path: floor(path))
            print(f"{items:12,}{movements:11,}{whole:9.2f}{least:9.3f}{whole / least:8.1f}", flush=True)
        if "--trial" in sys.argv:
            first = Path(folder) / f"{SIZES[0][0]}-{SIZES[0][1]}.db"
            print(f"trial, past and one year, {SIZES[0][0]:,} consumables: {timed(lambda: trial(first), 1):.1f} s")


if __name__ == "__main__":
    main()
