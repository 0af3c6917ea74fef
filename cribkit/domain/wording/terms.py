"""Index terms: what is stored for an item and what a need looks up, so that no item is ever compared in vain."""

from __future__ import annotations

from cribkit.domain.wording.meaning import Meaning
from cribkit.domain.wording.rule import KEYS, VAGUE, wordy
from cribkit.domain.wording.tables import Family, kin


def index_terms(item: Meaning) -> frozenset[str]:
    """The terms stored for an item, its members' included."""
    terms = _own(item)
    for member in item.members:
        terms |= _own(member)
    return frozenset(terms)


def query_terms(need: Meaning) -> frozenset[str]:
    """The terms of a need: every item that `judge` would not call "none" has one of them."""
    terms: set[str] = set()
    for asked in (need, *need.others):
        terms |= _asked(asked)
    return frozenset(terms)


def _own(item: Meaning) -> set[str]:
    family = kin().families.get(item.family)
    if family is None:
        return {f"w|{word}" for word in wordy(item)}
    values = _values(family, item)
    names = {f"={family.name}", *(f"<{parent}" for parent in family.parents | family.perhaps)}
    return {f"{name}|{value}" for name in names for value in (*values, "*")}


def _asked(need: Meaning) -> set[str]:
    family = kin().families.get(need.family)
    if family is None:
        return {f"w|{max(words, key=lambda word: (len(word), word))}"} if (words := wordy(need)) else set()
    values = _values(family, need)
    wanted = {*values, "?"} if values != {"?"} else {"*"}
    vague = family.parents | (family.perhaps & VAGUE)
    names = {f"={family.name}", f"<{family.name}", *(f"={parent}" for parent in vague)}
    return {f"{name}|{value}" for name in names for value in wanted}


def _values(family: Family, meaning: Meaning) -> set[str]:
    """The key's values, "?" where the text leaves it open."""
    attributes = dict(meaning.attributes)
    for name in KEYS.get(family.shape, ()):
        if value := attributes.get(name):
            return set(value.split(" x "))
    return {"?"}
