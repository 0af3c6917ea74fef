"""Whole-process times as ratios to the least Typer command: python tests/bench/startup.py

The crib is loaded from the demo inventory; the cache of checked procedures is warm, as it is from the second run on.
"""

from __future__ import annotations

import tempfile
from pathlib import Path

from tests.bench.clock import processes, run, show

ROOT = Path(__file__).parents[2]
FLOOR = "least Typer command, one query"


def main() -> None:
    """Load the demo crib into a file and time the commands on it."""
    with tempfile.TemporaryDirectory() as folder:
        crib = str(Path(folder) / "crib.db")
        start = ["-c", "from cribkit.__main__ import run_and_leave as run; run()"]  # as the installed command does
        cribkit = [*start, "--crib", crib]
        look = ["--procedures", str(ROOT / "procedures")]
        run([*cribkit, "load", str(ROOT / "seed_inventory")])
        commands = {
            "python -c pass": ["-c", "pass"],
            FLOOR: [str(Path(__file__).parent / "floor.py"), crib],
            "check throttle-body-service": [*cribkit, "check", "throttle-body-service", *look],
            "check throttle-body-service --json": [*cribkit, "check", "throttle-body-service", "--json", *look],
            "check throttle-body-service --demo": [*start, "check", "throttle-body-service", "--demo"],
            "find '8 mm socket, 1/4 drive'": [*cribkit, "find", "8 mm socket, 1/4 drive"],
            "wrench covers '89 in-lb'": [*cribkit, "wrench", "covers", "89 in-lb"],
        }
        show("Whole processes, median of 15", processes(commands), FLOOR)


if __name__ == "__main__":
    main()
