"""Index terms: what is stored for an item and what a need looks up, so that no item is ever compared in vain."""

from __future__ import annotations

from itertools import combinations

from cribkit.domain.wording.contrast import spoken_terms
from cribkit.domain.wording.keys import KEYS
from cribkit.domain.wording.leftovers import wordy
from cribkit.domain.wording.meaning import Meaning
from cribkit.domain.wording.rule import VAGUE
from cribkit.domain.wording.tables import kin


def index_terms(item: Meaning) -> frozenset[str]:
    """The terms stored for an item, its members' included."""
    terms = _own(item) | spoken_terms(item)
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
    family = kin().family(item.family)
    if family is None:
        return {f"w|{word}" for word in wordy(item)}
    names = {f"={family.name}", *(f"<{parent}" for parent in family.parents | family.perhaps)}
    return {f"{name}{key}" for name in names for key in _keys(name[1:], item, stored=True)}


def _asked(need: Meaning) -> set[str]:
    family = kin().family(need.family)
    if family is None:
        return {f"w|{max(words, key=lambda word: (len(word), word))}"} if (words := wordy(need)) else set()
    vague = family.parents | (family.perhaps & VAGUE)
    names = {f"={family.name}", f"<{family.name}", *(f"={parent}" for parent in vague)}
    return {f"{name}{key}" for name in names for key in _keys(name[1:], need, stored=False)}


def _keys(family: str, meaning: Meaning, stored: bool) -> set[str]:
    """One text for each combination of the key attributes of the family that the term names.

    An item is stored under its values and "*", or "?" and "*" where it is silent; a need asks for its values and "?",
    or "*" where it leaves the attribute open.
    """
    attributes, told = dict(meaning.attributes), kin().family(family)
    parts = [""]
    for name in KEYS.get(told.shape, ()) if told else ():
        texts = _values(name, attributes.get(name, ""), stored, tool=told is not None and told.kind == "tool")
        parts = [f"{before}|{text}" for before in parts for text in sorted(texts)]
    return set(parts)


def _values(name: str, value: str, stored: bool, tool: bool) -> set[str]:
    """The texts of one key attribute."""
    if not value or (name == "dims" and (tool or " to " in value)):
        return {"?", "*"} if stored else {"*"}
    always = {"*"} if stored else {"?"}
    if name == "place":
        return always | _places(value.split(" "), stored)
    if name == "dims":
        sizes = sorted(set(value.split("; ")))
        if stored:
            return {*always, *sizes, *(" and ".join(pair) for pair in combinations(sizes, 2))}
        if len(sizes) > 1:
            from cribkit.domain.wording.measure import mm_of  # exact fractions cost 3 ms to import

            sizes = sorted(sorted(sizes, key=mm_of)[-2:])  # the small ones, as widths, are many items'
        return {*always, " and ".join(sizes)}
    return always | set(value.split(";") if name == "dot" else value.split(" x "))


def _places(words: list[str], stored: bool) -> set[str]:
    """Terms of a part's place, where an item may say more than the need, or (a doubt) less.

    More: it has the need's most telling word. Less: its own most telling word ("!") is one of the need's.
    """
    lead = min(words, key=_telling)
    return {*words, f"!{lead}"} if stored else {lead, *(f"!{word}" for word in words)}


def _telling(word: str) -> tuple[bool, bool, str]:
    """Codes with letters and digits tell most, then words, then bare numbers; any fixed order would be right."""
    digits = any(char.isdigit() for char in word)
    return not (digits and any(char.isalpha() for char in word)), digits, word
