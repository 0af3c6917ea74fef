"""A text means the same in every process: Python shuffles its sets anew in each one (PYTHONHASHSEED)."""

from __future__ import annotations

import csv
import os
import subprocess
import sys
from pathlib import Path

from cribkit.domain.wording import read

SEED = Path(__file__).parents[2] / "seed_inventory"
READ_ALL = """
import sys
from cribkit.domain.wording import read
for line in sys.stdin.read().splitlines():
    print(read(line, "").to_json())
"""


def descriptions() -> list[str]:
    found: list[str] = []
    for name in ("tools.csv", "consumables.csv"):
        with (SEED / name).open(encoding="utf-8", newline="") as file:
            found += [row["description"] for row in csv.DictReader(file)]
    return found


def read_in_a_process(texts: list[str], hash_seed: str) -> list[str]:
    env = {**os.environ, "PYTHONHASHSEED": hash_seed, "PYTHONUTF8": "1"}
    command = [sys.executable, "-c", READ_ALL]
    done = subprocess.run(
        command, input="\n".join(texts), env=env, text=True, encoding="utf-8", capture_output=True, check=True
    )
    return done.stdout.splitlines()


def test_every_process_reads_the_same() -> None:
    texts = descriptions()
    here = [read(text, "").to_json() for text in texts]
    for hash_seed in ("1", "2", "3"):
        assert read_in_a_process(texts, hash_seed) == here
