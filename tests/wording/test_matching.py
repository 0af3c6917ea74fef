"""The rule for a match, on pairs written by hand and on the labelled sets: no dangerous match, ever."""

import csv
from pathlib import Path

import pytest

from cribkit.domain.wording import index_terms, judge, query_terms, read, read_item
from tests.wording.by_hand import PAIRS
from tests.wording.own import own_set
from tests.wording.scorer import HERE, OTHERS, blind_set, reader_finder, score


@pytest.mark.parametrize(("need", "item", "verdict"), PAIRS, ids=[f"{need} | {item}" for need, item, _ in PAIRS])
def test_a_pair_is_judged_as_the_trade_would(need: str, item: str, verdict: str) -> None:
    assert judge(read(need), read_item(item, "")).status == verdict


def test_our_own_set_has_no_dangerous_match_and_few_misses() -> None:
    items, needs = own_set()
    assert (len(items) >= 500, len(needs) >= 500) == (True, True)
    counts = score(needs, reader_finder(items)).counts
    assert counts["dangerous"] == 0
    assert counts["answer right"] + counts["answer either"] >= 0.99 * counts["answer"]
    assert counts["refuse right"] >= 0.99 * counts["refuse"]


@pytest.mark.parametrize("name", OTHERS)
def test_a_set_by_another_hand_has_no_dangerous_match(name: str) -> None:
    items, needs = blind_set(HERE / name)
    total = score(needs, reader_finder(items))
    assert [miss for miss in total.misses if miss.startswith("dangerous")] == []


def test_pairs_of_consumables_and_fasteners_are_judged_as_the_trade_would() -> None:
    rows = list(csv.DictReader((Path(__file__).parent / "stores.csv").open(encoding="utf-8")))
    told = [(row["need"], row["item"], row["verdict"]) for row in rows]
    judged = [(a, b, judge(read(a, "consumable"), read_item(b, "consumable")).status) for a, b, _ in told]
    assert judged == told


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
