"""The rule for a match, on pairs written by hand and on the labelled sets: no dangerous match, ever."""

import pytest

from cribkit.domain.wording import index_terms, judge, query_terms, read, read_item
from tests.wording.by_hand import PAIRS
from tests.wording.own import own_set
from tests.wording.scorer import blind_set, reader_finder, score


@pytest.mark.parametrize(("need", "item", "verdict"), PAIRS, ids=[f"{need} | {item}" for need, item, _ in PAIRS])
def test_a_pair_is_judged_as_the_trade_would(need: str, item: str, verdict: str) -> None:
    assert judge(read(need), read_item(item, "")).status == verdict


def test_our_own_set_has_no_dangerous_match_and_few_misses() -> None:
    items, needs = own_set()
    assert (len(items) >= 250, len(needs) >= 500) == (True, True)
    counts = score(needs, reader_finder(items)).counts
    assert counts["dangerous"] == 0
    assert counts["answer right"] + counts["answer either"] >= 0.99 * counts["answer"]
    assert counts["refuse right"] >= 0.99 * counts["refuse"]


def test_the_blind_set_has_no_dangerous_match() -> None:
    items, needs = blind_set()
    total = score(needs, reader_finder(items))
    assert [miss for miss in total.misses if miss.startswith("dangerous")] == []


def test_every_item_that_is_no_refusal_is_found_by_its_index_terms() -> None:
    items, needs = own_set()
    lost = [
        (need.text, item.text)
        for need in needs[::7]
        for meaning in [read(need.text, need.kind)]
        for item in items
        if judge(meaning, item.meaning).status != "none" and not query_terms(meaning) & index_terms(item.meaning)
    ]
    assert lost == []
