"""What holds for every text: reading never raises, and how a text is laid out does not change what it means."""

import csv
import random
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from cribkit.domain.wording import (
    Meaning,
    forbidden,
    head_drivers,
    index_terms,
    judge,
    near,
    query_terms,
    read,
    read_item,
)
from tests.wording.by_hand import PAIRS
from tests.wording.own import KINDS, Thing, asked, own_set, verdict, written

# The same examples in each run: whoever looks for new ones takes SAME away.
SAME = settings(derandomize=True)
TEXTS = sorted({text for need, item, _ in PAIRS for text in (need, item)})
ITEMS, NEEDS = own_set()
OWN = st.sampled_from([need.text for need in NEEDS])


def core(meaning: Meaning) -> tuple[object, ...]:
    """What a meaning says, without how it was written."""
    return (meaning.family, meaning.attributes, meaning.traits, frozenset(meaning.unread))


@SAME
@given(st.text(max_size=60))
def test_reading_never_raises(text: str) -> None:
    need, item = read(text), read_item(text, "tool", contents=text, traits=text, hazards=text)
    judge(need, item)
    near(need, item)
    forbidden(need, item)
    head_drivers(text)
    index_terms(item), query_terms(need)
    assert Meaning.from_json(item.to_json()) == item


@SAME
@given(st.text(alphabet="0123456789/x-.,\"' mtedrNmsqphzkgl#()", max_size=40))
def test_reading_numbers_never_raises(text: str) -> None:
    judge(read(text), read_item(text, "", contents=text))


LINES = sorted(
    {
        row["need"]
        for path in Path(__file__).parent.glob("*/needs.csv")
        for row in csv.DictReader(path.read_text(encoding="utf-8").splitlines())
    }
)
SIGNS = st.text(alphabet="()/.,;:-+\"'#%&*=[]{}|~<>° x0", min_size=1, max_size=3)


@SAME
@given(st.sampled_from(LINES), st.sampled_from(LINES), SIGNS, st.randoms(use_true_random=False))
def test_reading_damaged_lines_of_the_trade_never_raises(
    one: str, other: str, signs: str, chance: random.Random
) -> None:
    words = [*one.split(), *other.split()[: chance.randint(0, 4)], signs]
    chance.shuffle(words)
    text = " ".join(words)
    cut = text[: chance.randint(0, len(text))] + signs + text[chance.randint(0, len(text)) :]
    for damaged in (text, cut, signs):
        judge(read(damaged), read_item(damaged, "", contents=damaged, traits=damaged))


@pytest.mark.parametrize("text", TEXTS)
def test_case_and_spacing_do_not_change_the_meaning(text: str) -> None:
    expected = core(read(text))
    for other in (text.upper(), text.lower(), f"  {text.replace(' ', '   ')} ", f"{text}.", text.replace(", ", " , ")):
        assert core(read(other)) == expected, other


@SAME
@given(OWN, st.randoms(use_true_random=False))
def test_case_does_not_change_the_meaning_of_any_notation(text: str, rng: random.Random) -> None:
    mixed = "".join(rng.choice([letter.upper(), letter.lower()]) for letter in text)
    assert core(read(mixed)) == core(read(text))


@SAME
@given(st.sampled_from(sorted(KINDS)), st.integers(0, 10_000))
def test_every_notation_of_the_same_attributes_matches_itself(family: str, seed: int) -> None:
    rng = random.Random(seed)
    thing = asked(rng, family)
    one, other = written(rng, thing), written(rng, thing)
    found = judge(read(one), read_item(other, KINDS[family].kind))
    assert found.status == "match", (one, other, found)


@SAME
@given(st.sampled_from(sorted(KINDS)), st.integers(0, 10_000), st.data())
def test_changing_a_stated_attribute_always_ends_the_match(family: str, seed: int, data: st.DataObject) -> None:
    rng = random.Random(seed)
    need = asked(rng, family)
    stated = [name for name, value in need.values.items() if value is not None]
    name = data.draw(st.sampled_from(stated))
    others = [value for value in KINDS[family].fields[name][0] if value != need.values[name]]
    changed = Thing(family, {**need.values, name: data.draw(st.sampled_from(others))})
    if verdict(need, changed) == "wrong":
        assert judge(read(written(rng, need)), read_item(written(rng, changed), KINDS[family].kind)).status != "match"


@SAME
@given(st.sampled_from(NEEDS), st.sampled_from(ITEMS))
def test_an_item_that_is_no_refusal_shares_a_term_with_the_need(need: object, item: object) -> None:
    meaning = read(need.text, need.kind)  # type: ignore[attr-defined]
    other = item.meaning  # type: ignore[attr-defined]
    assert judge(meaning, other).status == "none" or query_terms(meaning) & index_terms(other)
