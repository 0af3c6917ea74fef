"""Words that a crib tells its own items apart by: what one item says counts against those that do not say it.

The verdicts are common practice, no source.
"""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from cribkit.domain.wording import index_terms, judge, judge_all, read, read_item

# A need, its kind, and the items of a crib with the verdict on each.
CRIBS = [
    ("wide flat washer, M8", "consumable", {"flat washer M8": "review", "WASHER FLAT WIDE M8": "match"}),
    ("flat washer, M8", "consumable", {"flat washer M8": "match", "WASHER FLAT WIDE M8": "match"}),
    ("wide flat washer, M8", "consumable", {"flat washer M8": "match"}),  # this crib has but one
    ("wide flat washer, M8", "consumable", {"flat washer M8": "review", "flat washer M10, wide": "none"}),
    (
        "wide plastic trim tool",
        "tool",
        {"trim removal tool, plastic, narrow": "none", "trim removal tool, plastic, wide": "match"},
    ),
    (
        "water pump gasket, midibus",
        "consumable",
        {"water pump gasket, midibus": "match", "GASKET WATER PUMP COACH": "none", "gasket water pump": "review"},
    ),
    ("M8 flat washer or M8 spring washer", "consumable", {"flat washer M8": "match", "SPRING WASHER M8": "match"}),
    ("10 mm socket for the wide bracket", "tool", {"SKT 10MM 1/4DR": "match", "SKT 10MM 1/4DR WIDE": "match"}),
]


def verdicts(need: str, kind: str, items: list[str]) -> dict[str, str]:
    """The status of each item once all are seen beside each other."""
    asked = read(need, kind)
    meanings = [read_item(item, kind) for item in items]
    stored = frozenset().union(*(index_terms(meaning) for meaning in meanings))
    found = judge_all(asked, meanings, stored.intersection)
    return {item: judgement.status for item, judgement in zip(items, found, strict=True)}


@pytest.mark.parametrize(("need", "kind", "crib"), CRIBS, ids=[f"{need} | {len(crib)}" for need, _, crib in CRIBS])
def test_what_one_item_says_counts_against_the_others(need: str, kind: str, crib: dict[str, str]) -> None:
    assert verdicts(need, kind, list(crib)) == crib


def test_the_reason_names_the_word() -> None:
    asked = read("wide flat washer, M8", "consumable")
    plain, wide = (read_item(text, "consumable") for text in ("flat washer M8", "flat washer M8 wide"))
    found = judge_all(asked, [plain, wide], frozenset().intersection)
    assert found[0].weakness == "wide not stated, by which others are told apart here"


TEXTS = [text for _, _, crib in CRIBS for text in crib]


@given(st.sampled_from(CRIBS), st.lists(st.sampled_from(TEXTS), max_size=6, unique=True))
def test_company_never_makes_a_better_verdict(crib: tuple[str, str, dict[str, str]], others: list[str]) -> None:
    """Beside others an item is at most what it is alone."""
    need, kind, _ = crib
    rank = ["none", "review", "match"].index
    asked = read(need, kind)
    for item, status in verdicts(need, kind, others).items():
        assert rank(status) <= rank(judge(asked, read_item(item, kind)).status)


def test_the_order_of_the_items_does_not_matter() -> None:
    for need, kind, crib in CRIBS:
        assert verdicts(need, kind, list(crib)[::-1]) == verdicts(need, kind, list(crib))
