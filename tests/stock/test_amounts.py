"""Amounts of stock: pieces, measures and containers."""

from __future__ import annotations

import pytest

from cribkit.domain.problem import BadInput
from cribkit.domain.stock.amounts import amount_words, stock_amount


@pytest.mark.parametrize(
    ("text", "unit", "pack", "parts"),
    [
        ("3", "each", 1, 3000),
        ("3 pcs", "each", 1, 3000),
        ("0", "each", 1, 0),
        ("2 boxes", "each", 100, 200_000),
        ("half a box", "each", 100, 50_000),
        ("1/2 box", "each", 100, 50_000),
        ("12 each", "each", 100, 12_000),
        ("2", "mL", 400, 800_000),
        ("0.5 can", "mL", 400, 200_000),
        ("a can", "mL", 400, 400_000),
        ("1 1/2 cans", "mL", 400, 600_000),
        ("120 mL", "mL", 400, 120_000),
        ("0.5 L", "mL", 400, 500_000),
        ("0 mL", "mL", 400, 0),
        ("1.5 m", "mm", 10_000, 1_500_000),
        ("250 g", "g", 1000, 250_000),
        ("2 x 400 mL", "mL", 400, 800_000),
    ],
)
def test_an_amount_is_read_into_the_item_s_unit(text: str, unit: str, pack: float, parts: int) -> None:
    assert stock_amount(text, unit, pack) == parts


@pytest.mark.parametrize(
    ("text", "unit", "pack", "code"),
    [
        ("2", "each", 100, "ambiguous-amount"),
        ("120 mL", "each", 1, "wrong-unit"),
        ("3 pcs", "mL", 400, "wrong-unit"),
        ("0 g", "mL", 400, "wrong-unit"),
        ("-1", "each", 1, "negative"),
        ("nan", "each", 1, "no-number"),
        ("many", "each", 1, "no-number"),
        ("2 furlongs", "mm", 1, "unknown-unit"),
        ("", "each", 1, "no-number"),
    ],
)
def test_what_is_no_amount_of_the_item_is_refused(text: str, unit: str, pack: float, code: str) -> None:
    with pytest.raises(BadInput) as refused:
        stock_amount(text, unit, pack)
    assert refused.value.problems[0].code == code


def test_tools_come_in_whole_pieces() -> None:
    with pytest.raises(BadInput, match="whole"):
        stock_amount("1.5", "each", 1, counted=True)


@pytest.mark.parametrize(
    ("parts", "unit", "pack", "words"),
    [
        (3000, "each", 1, "3"),
        (800_000, "mL", 400, "800 mL (2 containers)"),
        (400_000, "mL", 400, "400 mL (1 container)"),
        (20_000_000, "mL", 5000, "20 L (4 containers)"),
    ],
)
def test_an_amount_is_shown_with_its_containers(parts: int, unit: str, pack: float, words: str) -> None:
    assert amount_words(parts, unit, pack) == words
