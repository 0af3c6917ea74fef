"""What a text must hold for a pattern to match."""

from __future__ import annotations

import csv
import re
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from cribkit.domain.wording.needle import Sieve, needles, pack, plain_digits
from cribkit.domain.wording.patterns import PATTERNS as MENDED
from cribkit.domain.wording.patterns.scanning import SCAN

# A pattern, and what each of its matches must hold: one text of each tuple, with a nought for any digit.
FOUND = [
    (r"\bwet ?/ ?dry\b", (("wet / dry", "wet /dry", "wet/ dry", "wet/dry"),)),
    (r"\bi/r\b", (("i/r",),)),
    (r"(?<=\d)oo+(?!x)", (("0oo",),)),
    (r"(?<=\dmm)(?=\d)", (("0mm0",),)),
    (r"\bvernier?s*\b", (("vernie",),)),
    (r"a{0,2}bc", (("bc",),)),
    (r"a{0,1}bc", (("bc",),)),
    (r"a?bc", (("bc",),)),
    (r"[()\]]x", (("(x", ")x", "]x"),)),
    (r"[^]a]yz\.5", (("yz.0",),)),
    (r"[a-z]\d[x-z]", (("0x", "0y", "0z"),)),
    (r"[1-9]o", (("0o",),)),
    (r"(?:pliers|plrs),? circ\b", (("pliers circ", "pliers, circ", "plrs circ", "plrs, circ"),)),
    (r"(?:safe|okay) \w+ x", (("okay ", "safe "), (" x",))),
    (r"(?:half)? (?=inch|in )", ((" in ", " inch"),)),
    (r"(?<!not )done", (("done",),)),
    (r"x(?:one|[a-z])y", (("y",), ("x",))),
    (r"x(?:one|two)*y", (("y",), ("x",))),
    (r"one|two", (("one", "two"),)),
    (r"one|\d", (("0", "one"),)),
    (r"one|\s", ()),
    (r"ab+c", (("bc",), ("ab",))),
    (r"(?P<size>mm){1,2}", (("mm",),)),
    (r"(a)b\1", (("ab",),)),
    (r"\b\d+\b", (("0",),)),
    (
        r"(?<=nlgi 0), ?fluid|(?<=grade 0), ?fluid",
        (("grade 0, fluid", "grade 0,fluid", "nlgi 0, fluid", "nlgi 0,fluid"),),
    ),
]


@pytest.mark.parametrize(("pattern", "held"), FOUND, ids=[pattern for pattern, _ in FOUND])
def test_what_every_match_must_hold_the_most_telling_first(pattern: str, held: tuple[tuple[str, ...], ...]) -> None:
    assert needles(pattern) == held


def test_any_digit_of_any_script_is_a_nought() -> None:
    assert plain_digits("M8 x 1.25 mm") == "M0 x 0.00 mm"
    assert plain_digits("M٣ ½") == "M0 ½"


PATTERNS = [pattern for pattern, _ in FOUND]


@given(st.text("0359xyoabcdmnlgi wet/-(),.pliersofj", max_size=20), st.data())
def test_the_sieve_lets_every_match_pass(text: str, data: st.DataObject) -> None:
    """Of a text with a match of any pattern in it, that pattern is due."""
    pattern = data.draw(st.sampled_from(PATTERNS))
    inside = data.draw(st.from_regex(pattern))
    for line in (text, f"{text}{inside}", inside):
        due = set(Sieve(pack(PATTERNS)).due(line))
        assert {place for place, one in enumerate(PATTERNS) if re.search(one, line)} <= due


def test_the_sieve_keeps_back_what_cannot_match() -> None:
    assert Sieve(pack(("one", r"\s", "two|three"))).due("a three") == [2, 1]


def test_no_pattern_of_the_reader_matches_a_text_that_the_sieve_keeps_from_it() -> None:
    lines = sorted(
        {
            row[column].lower()
            for path in Path(__file__).parent.glob("*/*.csv")
            for row in csv.DictReader(path.read_text(encoding="utf-8").splitlines())
            for column in ("need", "description")
            if row.get(column)
        }
    )[::8]
    patterns = [pattern for pattern, _ in SCAN + MENDED]
    sieve, compiled = Sieve(pack(patterns)), list(map(re.compile, patterns))
    wrong = [
        (patterns[place], line)
        for line in lines
        for place in set(range(len(patterns))) - set(sieve.due(line))
        if compiled[place].search(line)
    ]
    assert wrong == []
