"""What does a procedure cost that is in the cache, and one that is not?  python tests/bench/procedures.py

Whole processes, medians of several runs, against the floor of an empty Python process in the same run; then the time
for each of 200 procedures inside one process.
"""

from __future__ import annotations

import os
import statistics
import subprocess
import sys
import tempfile
import time
from pathlib import Path

from cribkit.desk.procedures import read_all
from cribkit.store.demo_folder import demo_folder

RUNS = 15
READ = "from cribkit.desk.procedures import find_procedure; find_procedure('plenum-reseal', demo=True)"


def process(code: str, cache: str) -> float:
    """Seconds of one Python process that runs this code."""
    start = time.perf_counter()
    subprocess.run([sys.executable, "-c", code], check=True, env={**os.environ, "XDG_CACHE_HOME": cache})
    return time.perf_counter() - start


def median(code: str, warm: bool) -> float:
    """Milliseconds of a process; warm: the cache already has what it reads."""
    with tempfile.TemporaryDirectory() as kept:
        if warm:
            process(code, kept)
        times = []
        for _ in range(RUNS):
            with tempfile.TemporaryDirectory() as fresh:
                times.append(process(code, kept if warm else fresh))
    return statistics.median(times) * 1000


def many(number: int) -> tuple[float, float]:
    """Milliseconds a procedure, for the first and for the second reading of a folder."""
    texts = [path.read_text(encoding="utf-8") for path in sorted(demo_folder("procedures").glob("*.toml"))]
    with tempfile.TemporaryDirectory() as folder:
        os.environ["XDG_CACHE_HOME"] = f"{folder}/cache"
        for at in range(number):
            text = texts[at % len(texts)].replace('id = "', f'id = "copy-{at}-', 1)
            Path(folder, f"{at}.toml").write_text(text, encoding="utf-8")
        times = []
        for _ in range(2):
            start = time.perf_counter()
            found = read_all([Path(folder)])
            times.append((time.perf_counter() - start) * 1000 / number)
            assert len(found.procedures) == number, found.errors[:3]
    return times[0], times[1]


def main() -> None:
    """Print the figures."""
    floor = median("pass", warm=True)
    for name, warm in (("not in the cache", False), ("in the cache", True)):
        took = median(READ, warm)
        print(f"one procedure, {name}: {took:6.1f} ms the whole process, {took / floor:4.1f} x an empty one")
    first, second = many(200)
    print(f"200 procedures in one process: {first:.2f} ms each when new, {second:.2f} ms each from the cache")


if __name__ == "__main__":
    main()
