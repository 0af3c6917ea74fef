"""One attribute in many notations: each way says what the plain one says, and none of the others does.

See ways/README.md.
"""

from __future__ import annotations

import json
from functools import cache
from pathlib import Path

import pytest

from cribkit.domain.wording import read, read_item
from tests.wording.test_groups import status

HERE = Path(__file__).parent / "ways"
FILES = sorted(path.name for path in HERE.glob("*.json"))
# Others that are no reading of the value at all, or that are right: the reason.
OTHER_VIEW = {
    "brake cleaner non-chlorinated pump spray 500 ml": "how a liquid is packed is free",
    "L-key T40 1/2 drive": "a key has no square; what is asked for with one is a bit socket",
}


def lines(entry: dict[str, str], ways: list[str]) -> list[str]:
    """The whole lines: a way in its carrier, or as it stands."""
    return [way[1:] if way.startswith("=") else entry["carrier"].replace("{}", way) for way in ways]


@cache
def judged(name: str) -> tuple[tuple[str, str, str, str, str], ...]:
    """Label, value, line, what the line finds as a need and what finds it as an item."""
    found = []
    for entry in json.loads((HERE / name).read_text(encoding="utf-8")):
        kind = entry["kind"]
        plain = lines(entry, [entry["value"]])[0]
        need, item = read(plain, kind), read_item(plain, kind)
        assert status(need, item) == "match", plain
        for label in ("ways", "others"):
            for line in lines(entry, entry[label]):
                asked, held = status(read(line, kind), item), status(need, read_item(line, kind))
                found.append((label, entry["value"], line, asked, held))
    return tuple(found)


@pytest.mark.parametrize("name", FILES)
def test_no_other_value_is_taken_for_it(name: str) -> None:
    taken = [
        f"{value}: {line}"
        for label, value, line, asked, held in judged(name)
        if label == "others" and (asked, held) == ("match", "match") and line not in OTHER_VIEW
    ]
    assert taken == []


@pytest.mark.parametrize("name", FILES)
def test_what_is_the_same_value_is_still_found(name: str) -> None:
    outcomes = [status for label, _, _, *both in judged(name) if label == "ways" for status in both]
    assert outcomes.count("match") >= LEAST[name] * len(outcomes)


# What was found when the file had been learnt from, less half of one in a hundred.
LEAST = {
    "names.json": 0.96,
    "consumables.json": 0.95,
    "consumables-2.json": 0.98,
    "hand-tools.json": 0.96,
    "hand-tools-2.json": 0.98,
    "sockets-bits.json": 0.99,
    "sockets-drives.json": 0.96,
}
