"""What a text must hold for a pattern to match."""

from __future__ import annotations

import csv
from pathlib import Path

import pytest

from cribkit.domain.wording.needle import needle
from cribkit.domain.wording.patterns import SCAN, STUCK

FOUND = [
    (r"\bwet ?/ ?dry\b", "wet"),
    (r"\bi/r\b", "i/r"),
    (r"(?<=\d)oo+(?!x)", "oo"),
    (r"\bvernier?s*\b", "vernie"),
    (r"a{0,2}bc", "bc"),
    (r"[()\]]x", "x"),
    (r"[^]a]yz\.5", "yz.5"),
    (r"(?:pliers|plrs),? circ\b", " circ"),
    (r"one|two", ""),
    (r"\b\d+\b", ""),
]


@pytest.mark.parametrize(("pattern", "held"), FOUND, ids=[pattern for pattern, _ in FOUND])
def test_the_longest_plain_run_that_every_match_has(pattern: str, held: str) -> None:
    assert needle(pattern) == held


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
        (pattern.pattern, line)
        for pattern, _ in SCAN + STUCK
        for line in lines
        if needle(pattern.pattern) not in line and pattern.search(line)
    ]
    assert wrong == []
