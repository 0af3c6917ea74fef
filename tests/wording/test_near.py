"""Near sizes: openings against the printed tables, and which size goes on which head."""

import pytest

from cribkit.domain.wording import near, read, read_item
from cribkit.domain.wording.near import near_sizes, opening_mm, play

# ASME B18.2.2 appendix, as printed in Machinery's Handbook: smallest and largest opening in inch. The handbook rounds,
# and prints 9/16 as .556 by mistake: the formula gives .566.
PRINTED = [
    ("5/16 in", 0.316, 0.322),
    ("3/8 in", 0.378, 0.384),
    ("7/16 in", 0.440, 0.446),
    ("1/2 in", 0.504, 0.510),
    ("9/16 in", 0.566, 0.573),
    ("5/8 in", 0.629, 0.636),
    ("3/4 in", 0.755, 0.763),
    ("7/8 in", 0.880, 0.888),
    ("1 in", 1.006, 1.015),
    ("1-1/8 in", 1.132, 1.142),
]


@pytest.mark.parametrize(("size", "low", "high"), PRINTED, ids=[size for size, _, _ in PRINTED])
def test_inch_openings_are_those_of_the_printed_table(size: str, low: float, high: float) -> None:
    limits = opening_mm(size)
    assert limits is not None
    assert limits[0] / 25.4 == pytest.approx(low, abs=0.0016)
    assert limits[1] / 25.4 == pytest.approx(high, abs=0.0016)


# Head, opening, smallest and largest play in mm: ASME formula and ISO 691 (from memory) against nominal heads.
PLAYS = [
    ("5/16 in", "8 mm", 0.09, 0.21),
    ("8 mm", "5/16 in", 0.00, 0.15),
    ("3/4 in", "19 mm", 0.01, 0.31),
    ("19 mm", "3/4 in", 0.18, 0.38),
    ("5/8 in", "16 mm", 0.18, 0.39),
]


@pytest.mark.parametrize(("head", "opening", "low", "high"), PLAYS, ids=[f"{o} on {h}" for h, o, _, _ in PLAYS])
def test_the_play_of_a_near_size_is_computed(head: str, opening: str, low: float, high: float) -> None:
    found = play(head, opening)
    assert found is not None
    assert (found.play_low_mm, found.play_high_mm) == (pytest.approx(low, abs=0.02), pytest.approx(high, abs=0.02))
    assert "onfirm" in found.warning


@pytest.mark.parametrize(
    ("head", "opening"), [("13 mm", "1/2 in"), ("9/16 in", "14 mm"), ("11/16 in", "17 mm"), ("10 mm", "12 mm")]
)
def test_what_does_not_go_on_or_would_turn_is_no_near_size(head: str, opening: str) -> None:
    assert play(head, opening) is None


def test_a_near_size_is_offered_only_beside_the_rule() -> None:
    need, item = read("19 mm socket 1/2 drive"), read_item("SKT 1/2DR 3/4 6PT", "tool")
    assert near(need, item) is not None
    assert near(need, read_item("SKT 3/4DR 3/4 6PT", "tool")) is None
    assert near(need, read_item("SKT 1/2DR 19MM 6PT", "tool")) is None
    assert "3/4 in" in near_sizes("19 mm")
