"""Any need beside any item of its family has a verdict: over needs and items of the newest sets, and odd measures."""

import random
from collections import defaultdict

import pytest

from cribkit.domain.wording import Meaning, judge, read, read_item
from tests.wording.scorer import HERE, OTHERS, blind_set

NEWEST = 10  # sets
EACH = 25  # needs and items of a family


@pytest.fixture(scope="module")
def families() -> dict[str, tuple[list[Meaning], list[Meaning]]]:
    """Needs and items by family, a few of each, the same in every run."""
    needs, items = defaultdict(list), defaultdict(list)
    for name in OTHERS[-NEWEST:]:
        stocked, asked = blind_set(HERE / name)
        for item in stocked:
            items[item.meaning.family].append(item.meaning)
        for need in asked:
            meaning = read(need.text, need.kind)
            needs[meaning.family].append(meaning)
    draw = random.Random(1)
    return {
        family: tuple(draw.sample(found, min(EACH, len(found))) for found in (needs[family], items[family]))  # type: ignore[misc]
        for family in sorted(needs.keys() & items.keys() - {""})
    }


def test_every_pair_of_a_family_has_a_verdict(families: dict[str, tuple[list[Meaning], list[Meaning]]]) -> None:
    verdicts = {judge(need, item).status for needs, items in families.values() for need in needs for item in items}
    assert verdicts == {"match", "review", "none"}


@pytest.mark.parametrize("need", ["vernier 6in / 150", "caliper 0-150 mm / 0-6 in", "steel rule 12 in, 300 mm"])
@pytest.mark.parametrize("item", ["CALIPER, VERNIER, 0 TO 150 MILLIMETER", "STEEL RULE 300MM/12IN", "CALIPER 6IN"])
def test_measures_in_two_units_have_a_verdict(need: str, item: str) -> None:
    assert judge(read(need, "tool"), read_item(item, "tool")).status in ("match", "review", "none")
