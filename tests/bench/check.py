"""Every procedure against a large crib, in one process: python -m tests.bench.check [ITEMS] [PROCEDURES]

The crib is the demo inventory and copies of it under other tags in other sizes and drives, so that most needs meet
many items. All is invented. Printed: seconds, needs a second, and the growth from a tenth of the items.
"""

from __future__ import annotations

import csv
import datetime as dt
import io
import os
import re
import sys
import tempfile
from pathlib import Path

from cribkit.desk.check import check
from cribkit.desk.keeping import Entry, load_folder
from cribkit.desk.procedures import all_procedures
from cribkit.domain.procedure import Procedure
from cribkit.store.opening import open_crib
from tests.bench.clock import seconds

DAY = dt.date(2026, 11, 25)
SEED = Path(__file__).parents[2] / "seed_inventory"


def write_seed(folder: Path, items: int) -> None:
    """The demo inventory, grown to so many items."""
    folder.mkdir()
    for path in SEED.glob("*.csv"):
        rows = list(csv.reader(io.StringIO(path.read_text(encoding="utf-8"))))
        grown = {"tools.csv": items * 7 // 10, "consumables.csv": items * 3 // 10}.get(path.name, 0)
        with (folder / path.name).open("w", encoding="utf-8", newline="") as file:
            writer = csv.writer(file)
            writer.writerows(rows)
            copies = (copy_of(rows[1 + at % (len(rows) - 1)], at) for at in range(max(0, grown - len(rows))))
            barcode = rows[0].index("gtin") if "gtin" in rows[0] else -1
            writer.writerows(row if barcode < 0 else [*row[:barcode], "", *row[barcode + 1 :]] for row in copies)


def copy_of(row: list[str], at: int) -> list[str]:
    """A row under another tag; every number in its description is changed, so that it is another size."""
    turn = at // 97 + 2
    changed = re.sub(r"\b\d{1,3}\b(?!/)", lambda found: str(int(found[0]) + turn), row[1])
    return [f"{row[0]}-{at}", changed, *row[2:]]


def jobs(count: int) -> list[Procedure]:
    """So many procedures: the demo's, under other ids."""
    known = all_procedures(None, True)
    return [known[at % len(known)]._replace(id=f"{known[at % len(known)].id}-{at}") for at in range(count)]


def timed(items: int, procedures: int) -> tuple[float, float, float]:
    """Seconds to load, to check each procedure by itself, and all side by side."""
    with tempfile.TemporaryDirectory() as name:
        folder, path = Path(name), Path(name) / "crib.db"
        write_seed(folder / "seed", items)
        load = seconds(lambda: load_folder(path, folder / "seed", Entry("bench", DAY, "2026-11-25T08:00:00Z")))
        work = jobs(procedures)
        with open_crib(path) as crib:
            apart = seconds(lambda: [check(crib, [job], DAY) for job in work])
            together = seconds(lambda: check(crib, work, DAY))
    return load, apart, together


def main() -> None:
    """Print the figures for a tenth of the items and for all."""
    os.environ.setdefault("XDG_CACHE_HOME", tempfile.gettempdir())
    items = int(sys.argv[1]) if len(sys.argv) > 1 else 10_000
    procedures = int(sys.argv[2]) if len(sys.argv) > 2 else 200
    needs = sum(len(job.tools) + len(job.torques) + len(job.consumables) for job in jobs(procedures))
    print(f"{procedures} procedures with {needs} needs")
    apart: list[float] = []
    for size in (items // 10, items):
        load, alone, together = timed(size, procedures)
        apart.append(alone)
        print(
            f"  {size:7} items: load {load:6.2f} s, each procedure by itself {alone:6.2f} s "
            f"({needs / alone:7.0f} needs a second), all side by side {together:6.2f} s"
        )
    print(f"  ten times the items: {apart[1] / apart[0]:.2f} times the time")


if __name__ == "__main__":
    main()
