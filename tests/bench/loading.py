"""Load 10,000 items: `python tests/bench/loading.py`; the floor is csv and as many rows in bare sqlite3."""

from __future__ import annotations

import csv
import sqlite3
import sys
import tempfile
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))

from tests.bench.clock import run, seconds

TOOLS, CONSUMABLES = 7000, 3000
BARE = "CREATE TABLE item (a, b, c, d, e, f, g, h); CREATE TABLE movement (a, b, c, d, e, f, g, h);"


def write(folder: Path) -> None:
    """Seven thousand tools and three thousand consumables with a lot each; all invented."""
    with (folder / "tools.csv").open("w", encoding="utf-8", newline="") as file:
        rows = csv.writer(file)
        rows.writerow(("tag", "description", "quantity", "location"))
        for at in range(TOOLS):
            words = f"SKT {('1/4', '3/8', '1/2')[at % 3]}DR {5 + at % 28}MM {('6PT', '12PT', 'DEEP 6PT')[at % 3]}"
            rows.writerow((f"SK-{at:05d}", words, 1 + at % 3, f"A{at % 20}-{at % 9}"))
    with (folder / "consumables.csv").open("w", encoding="utf-8", newline="") as file:
        rows = csv.writer(file)
        rows.writerow(("tag", "description", "unit", "pack", "on_hand", "lot", "expires_on", "location"))
        for at in range(CONSUMABLES):
            size = 1 + at % 5
            words = f"ENGINE OIL {('5W-30', '0W-20', '10W-40')[at % 3]} {size}L"
            expires = f"2099-0{1 + at % 9}"
            rows.writerow((f"CH-{at:05d}", words, "mL", 1000 * size, at % 12, f"L{at}", expires, f"F{at % 10}"))


def bare(folder: Path) -> None:
    """The same rows read and kept, twice, in one transaction."""
    connection = sqlite3.connect(folder / "bare.db")
    connection.executescript(BARE)
    for name in ("tools.csv", "consumables.csv"):
        with (folder / name).open(encoding="utf-8", newline="") as file:
            rows = [(*row, *[""] * (8 - len(row))) for row in csv.reader(file)]
        for table in ("item", "movement"):
            connection.executemany(f"INSERT INTO {table} VALUES (?, ?, ?, ?, ?, ?, ?, ?)", rows)
    connection.commit()
    connection.close()


def cribkit(folder: Path, name: str, *words: str) -> tuple[float, float]:
    """Seconds of a command on the wall and, of this process's children, at work."""
    before = children()
    spent = seconds(lambda: run(("-m", "cribkit", "--crib", str(folder / name), *words)))
    return spent, children() - before


def children() -> float:
    """Processor seconds of the processes that were waited for."""
    import os

    times = os.times()
    return times.children_user + times.children_system


def main() -> None:
    """Print seconds, and times the floor."""
    with tempfile.TemporaryDirectory() as place:
        folder = Path(place)
        write(folder)
        begin = time.process_time()
        bare(folder)
        floor = time.process_time() - begin
        print(f"bare csv and sqlite3: {floor:.2f} s at work")
        for what in ("load, a new crib", "load again, nothing new"):
            wall, work = cribkit(folder, "crib.db", "load", place)
            print(f"{what}: {wall:.1f} s on the wall, {work:.1f} s at work, {work / floor:.0f} x the floor")
        for words in (("find", "10 mm socket, 3/8 drive"), ("audit",), ("count", "--sheet", "--as", "csv")):
            wall, work = cribkit(folder, "crib.db", *words)
            print(f"{words[0]}: {wall:.1f} s on the wall, {work:.2f} s at work")


if __name__ == "__main__":
    main()
