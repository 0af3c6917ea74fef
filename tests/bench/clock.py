"""How the benchmarks measure: whole processes in turn, medians, ratios to a floor of the same run."""

from __future__ import annotations

import os
import statistics
import subprocess
import sys
import time
from collections.abc import Callable, Mapping, Sequence

# What some machines set that changes how quickly Python starts.
UNUSUAL = ("PYTHONDONTWRITEBYTECODE", "PYTHONUNBUFFERED", "PYTHONPROFILEIMPORTTIME")


def seconds(work: Callable[[], object]) -> float:
    """How long one call takes."""
    start = time.perf_counter()
    work()
    return time.perf_counter() - start


def processes(commands: Mapping[str, Sequence[str]], rounds: int = 15) -> dict[str, float]:
    """Median seconds of each command as a whole process; the commands take turns, so that load hits all alike."""
    times: dict[str, list[float]] = {name: [] for name in commands}
    for turn in range(rounds + 1):
        for name, command in commands.items():
            spent = seconds(lambda command=command: run(command))  # type: ignore[misc]  # a default binds the loop's value
            if turn:  # the first round warms the file cache
                times[name].append(spent)
    return {name: statistics.median(values) for name, values in times.items()}


def run(command: Sequence[str]) -> None:
    """Run it as on a plain machine, which keeps compiled modules; an answer of "no" (exit code 1) is well."""
    plain = {name: value for name, value in os.environ.items() if name not in UNUSUAL}
    done = subprocess.run([sys.executable, *command], capture_output=True, text=True, check=False, env=plain)
    if done.returncode not in (0, 1):
        raise SystemExit(f"{' '.join(command)} failed: {done.stderr}")


def show(title: str, rows: Mapping[str, float], floor: str) -> None:
    """Milliseconds, and times the floor."""
    print(title)
    for name, value in rows.items():
        print(f"  {name:44} {1000 * value:9.1f} ms  {value / rows[floor]:6.2f} x the floor")
