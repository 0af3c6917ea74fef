"""docs/torque.md says what the tables say."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from cribkit.domain.torque import REASONS, Rule, mechanisms
from cribkit.domain.torque.reach import squares

PAGE = (Path(__file__).parents[2] / "docs" / "torque.md").read_text(encoding="utf-8")


def kinds() -> list[str]:
    """The rows of the table of mechanisms."""
    return [
        f"| {kind.name} | {kind.iso} | ±{kind.upto_10:g} % | ±{kind.above_10:g} % | {kind.readings} | {kind.text} |"
        for kind in sorted(mechanisms().values(), key=lambda kind: kind.iso)
    ]


def limits() -> list[str]:
    """The rows of the table of squares."""
    return [f"| {square} | {limit:g} |" for square, limit in squares().items()]


@pytest.mark.parametrize(("name", "rows"), [("kinds", kinds()), ("squares", limits())], ids=["kinds", "squares"])
def test_a_table_of_the_page_is_the_table_of_the_program(name, rows):
    found = re.search(rf"<!-- {name} -->\n(.*?)<!-- end -->", PAGE, re.DOTALL)
    assert found
    assert found[1].splitlines() == rows, "replace the rows by:\n" + "\n".join(rows)


def test_every_reason_code_and_guard_rule_is_explained():
    codes = PAGE[PAGE.index("## Reason codes") : PAGE.index("## What to buy")]
    assert re.findall(r"^\| `([a-z-]+)` \|", codes, re.MULTILINE) == list(REASONS)
    assert [rule for rule in Rule if f"| `{rule}` |" in PAGE] == list(Rule)
