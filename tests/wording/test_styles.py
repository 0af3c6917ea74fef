"""Things asked for in plain words, and how a supply list (noun first) and a storeman's shorthand name them.

styles.csv is our own; all values are invented.
"""

from __future__ import annotations

import csv
from collections import defaultdict
from pathlib import Path

import pytest

from cribkit.domain.wording import read, read_item
from tests.wording.test_groups import status

ROWS = list(csv.DictReader(Path(__file__).with_name("styles.csv").open(encoding="utf-8")))


@pytest.mark.parametrize("row", ROWS, ids=[row["line"] for row in ROWS])
def test_a_line_in_any_style_answers_the_plain_need(row: dict[str, str]) -> None:
    assert status(read(row["asked"], row["kind"]), read_item(row["line"], row["kind"])) == "match"


def test_no_line_answers_the_need_for_another_thing() -> None:
    things: dict[tuple[str, str], list[str]] = defaultdict(list)
    for row in ROWS:
        things[row["kind"], row["asked"]].append(row["line"])
    needs = {thing: [read(text, thing[0]) for text in (thing[1], *lines)] for thing, lines in things.items()}
    items = {thing: [read_item(line, thing[0]) for line in lines] for thing, lines in things.items()}
    crossed = [
        (need.text, item.text)
        for asked, texts in needs.items()
        for need in texts
        for thing, lines in items.items()
        if thing != asked and thing[0] == asked[0]
        for item in lines
        if "SET" not in item.text and status(need, item) == "match"  # a set has the key among its members
    ]
    assert crossed == []
