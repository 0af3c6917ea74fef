"""What a text denies it does not say: "not digital" is never read as "digital"."""

from __future__ import annotations

import pytest

from cribkit.domain.wording import Meaning, judge, read, read_item
from cribkit.domain.wording.tables import tables

# A word that no table knows names a vehicle on a part, denied or not: it tells the part apart either way.
NAMED = {"place", "model", "also", "section"}


def names() -> dict[str, str]:
    """Of each family the shortest name."""
    found: dict[str, str] = {}
    for group in tables().names.values():
        for words, family in group:
            text = " ".join(sorted(words))
            if family not in found or (len(text), text) < (len(found[family]), found[family]):
                found[family] = text
    return found


def said(item: Meaning) -> set[tuple[str, str]]:
    """The attributes and traits of an item."""
    return {pair for pair in item.attributes if pair[0] not in NAMED} | {("+", trait) for trait in item.traits}


def test_no_word_that_says_something_of_a_family_says_it_when_it_is_denied() -> None:
    wrong = []
    words = {*tables().kinds, *tables().telling}
    for family, name in names().items():
        plain = read_item(name, "")
        for word in sorted(word for owner, word in words if owner == family and word.isalpha()):
            told, denied = read_item(f"{name}, {word}", ""), read_item(f"{name}, not {word}", "")
            if plain.family == told.family == denied.family == family and word not in name.split():
                wrong += [(name, word, pair) for pair in (said(told) - said(plain)) & said(denied)]
    assert wrong == []


DENIED = [
    ("13 mm spanner other than ratcheting", "RATCH SPNR 13MM", "none"),
    ("13 mm spanner other than ratcheting", "COMB SPNR 13MM", "match"),
    ("5W-30 but not C3", "OIL 5W-30 C3", "none"),
    ("5W-30 but not C3", "OIL 5W-30 A3/B4", "match"),
    ("caliper over 150 mm", "CALIPER 150MM", "review"),
    ("150 mm digital caliper", "Vernier caliper, 0-150 mm, 0.02 mm, not digital", "none"),
    ("vernier caliper 150 mm", "Vernier caliper, 0-150 mm, 0.02 mm, not digital", "match"),
    ("M6 nylon insert lock nut", "lock nut M6, not nylon", "none"),
    ("M8 wire thread insert", "thread insert M8, not wire", "none"),
    ("8 mm impact socket, 3/8 drive", "skt 8mm 3/8dr, not impact", "none"),
    ("magnetic bit holder, 1/4 hex", "bit holder 1/4 hex, not magnetic", "none"),
    ("anti-seize for ABS sensors", "Copper anti-seize paste, 500 g tin, not for ABS sensors", "review"),
    ("copper anti-seize, 500 g", "Copper anti-seize paste, 500 g tin, not for ABS sensors", "match"),
]


@pytest.mark.parametrize(("need", "item", "status"), DENIED, ids=[f"{need} | {item}" for need, item, _ in DENIED])
def test_a_denied_word_counts_against_the_need_for_it(need: str, item: str, status: str) -> None:
    assert judge(read(need), read_item(item, "")).status == status
