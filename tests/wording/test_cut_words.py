"""Words cut short as storemen write them, and catalogue order: what they stand for, and what they never become."""

from __future__ import annotations

from pathlib import Path

import pytest

from cribkit.domain.wording import judge, read, read_item

HERE = Path(__file__).parent
LINES = (HERE / "cut_words.txt").read_text(encoding="utf-8").splitlines()
PAIRS = [tuple(part.strip() for part in line.split("|")) for line in LINES if line and not line.startswith("#")]


@pytest.mark.parametrize(("need", "item", "verdict"), PAIRS, ids=[f"{pair[0]} | {pair[1]}" for pair in PAIRS])
def test_a_storemans_line_is_read(need: str, item: str, verdict: str) -> None:
    assert judge(read(need), read_item(item, read(need).kind)).status == verdict


# Two spellings for two numbers never become one word.
APART = [
    ("flange gasket 3 bolt", "gasket flange 2 bolt"),
    ("exhaust gasket, two bolt", "exhaust gasket, four bolt"),
    ("7-way trailer tester", "trailer tester 13 pin"),
    ("6PK1750 belt", "BELT AUX 5PK1750"),
    ("blade fuse 15", "FUSE BLADE 10A"),
    ("M14 multi-tooth bit socket, 1/2 drive", "SKT BIT XZN M12 1/2DR"),
    ("split pin 5/32 inch x 2", "COTTER PIN 5/32 X 1-1/2 IN"),
    ("dial gauge 0.001 mm", "DIAL GAUGE 0-10MM 0.01MM"),
    ("digital caliper 0-300 mm", "CALIPER, DIGITAL, 0-150MM"),
    ("P-clip 12 mm", "P-CLIP 15MM RUBBER"),
]


@pytest.mark.parametrize(("need", "item"), APART, ids=[f"{need} | {item}" for need, item in APART])
def test_other_numbers_are_other_things(need: str, item: str) -> None:
    assert judge(read(need), read_item(item, "")).status == "none"
