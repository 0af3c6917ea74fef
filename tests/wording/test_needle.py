"""What a text must hold for a pattern to match."""

from __future__ import annotations

import csv
import re
from pathlib import Path

import pytest

from cribkit.domain.wording.needle import needles
from cribkit.domain.wording.patterns import STUCK
from cribkit.domain.wording.scanning import SCAN

FOUND = [
    (r"\bwet ?/ ?dry\b", ("wet",)),
    (r"\bi/r\b", ("i/r",)),
    (r"(?<=\d)oo+(?!x)", ("oo",)),
    (r"\bvernier?s*\b", ("vernie",)),
    (r"a{0,2}bc", ("bc",)),
    (r"[()\]]x", ("x",)),
    (r"[^]a]yz\.5", ("yz.5",)),
    (r"(?:pliers|plrs),? circ\b", (" circ",)),
    (r"(?:pliers|plrs),? ci\b", ("pliers", "plrs")),
    (r"(?:safe|okay) (?:on|for) x", ("okay", "safe")),
    (r"(?:half)? (?=inch|in )", ("in ", "inch")),
    (r"(?<!not )done", ("done",)),
    (r"x(?:one|[a-z])y", ("x",)),
    (r"one|two", ("one", "two")),
    (r"one|\d", ()),
    (r"(?P<size>mm){1,2}", ("mm",)),
    (r"\b\d+\b", ()),
]


@pytest.mark.parametrize(("pattern", "held"), FOUND, ids=[pattern for pattern, _ in FOUND])
def test_the_longest_plain_texts_of_which_every_match_has_one(pattern: str, held: tuple[str, ...]) -> None:
    assert needles(pattern) == held


def test_no_pattern_matches_a_text_without_what_it_must_hold() -> None:
    lines = sorted(
        {
            row[column].lower()
            for path in Path(__file__).parent.glob("*/*.csv")
            for row in csv.DictReader(path.read_text(encoding="utf-8").splitlines())
            for column in ("need", "description")
            if row.get(column)
        }
    )[::8]
    wrong = [
        (pattern, line)
        for pattern, held in ((pattern, needles(pattern)) for pattern, _ in SCAN + STUCK)
        for line in lines
        if held and not any(one in line for one in held) and re.search(pattern, line)
    ]
    assert wrong == []
