"""Words that the reader makes nothing of, but by which a crib tells its own items apart.

A judgement looks at one item. It passes over "wide" beside a washer, as most cribs have one washer of a size. Where
one washer of this crib says that it is wide, the word counts: the others are no longer a match, but to be confirmed.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence, Set

from cribkit.domain.wording.agree import same
from cribkit.domain.wording.meaning import MOST_DOUBTED, Judgement, Meaning
from cribkit.domain.wording.rule import judge
from cribkit.domain.wording.tables import kin


def spoken_terms(item: Meaning) -> frozenset[str]:
    """Index terms of the words by which an item may be told from others of its family."""
    return frozenset(f"~{item.family}|{word}" for word in _passed_over(item)) if item.family else frozenset()


def judge_all(need: Meaning, items: Sequence[Meaning], stored: Callable[[Set[str]], Set[str]]) -> list[Judgement]:
    """The judgements of all candidates, in their order, seen beside each other and beside what the crib holds.

    A large stock has many items of one description; each meaning is judged once. `stored` says which of some index
    terms any item of the crib has. A match becomes a review where another match says all that it says of the need's
    words and more, or where it lacks a word that its family uses in this crib. A need that offers a choice ("or") is
    left as it is.
    """
    alike, kinds = _alike(items)
    judged = [judge(need, item) for item in kinds]
    matches = [item for item, judgement in zip(kinds, judged, strict=True) if judgement.status == "match"]
    words = _passed_over(need) if matches and not need.others else frozenset()
    free = _free(need) if matches and not need.others else frozenset()
    if words or free:
        says = {id(item): (words & _words(item)) | _agreed(need, free, item) for item in matches}
        asked = {f"~{item.family}|{word}" for item in matches for word in words - says[id(item)]}
        used = stored(asked) if asked else frozenset()
        for place, (item, judgement) in enumerate(zip(kinds, judged, strict=True)):
            if judgement.status == "match":
                said = says[id(item)]
                lacks = {word for word in words - said if f"~{item.family}|{word}" in used}
                lacks = lacks.union(*(other - said for other in says.values() if said < other))
                judged[place] = _doubted(judgement, lacks) if lacks else judgement
    return [judged[place] for place in alike]


def _alike(items: Sequence[Meaning]) -> tuple[list[int], list[Meaning]]:
    """For each item the place of its meaning among the different ones, and those."""
    alike: list[int] = []
    kinds: list[Meaning] = []
    of_text: dict[str, list[int]] = {}  # much quicker to look up than a whole meaning
    for item in items:
        places = of_text.setdefault(item.text, [])
        place = next((place for place in places if kinds[place] == item), -1)
        if place < 0:
            place = len(kinds)
            places.append(place)
            kinds.append(item)
        alike.append(place)
    return alike, kinds


def _doubted(judgement: Judgement, lacks: Iterable[str]) -> Judgement:
    named = ", ".join(sorted(kin().called(word) for word in lacks))
    weakness = f"{named} not stated, by which others are told apart here"
    return judgement._replace(status="review", score=min(judgement.score, MOST_DOUBTED) - 5, weakness=weakness)


def _passed_over(meaning: Meaning) -> frozenset[str]:
    """Known words beside the name that became no attribute."""
    return frozenset(
        word.became
        for word in meaning.words
        if word.how == "known"
        and word.became
        and " " not in word.became
        and word.became not in kin().unspoken
        and word.became not in meaning.traits
    )


def _words(item: Meaning) -> frozenset[str]:
    """Every word of an item and of its members, as written and as understood."""
    said = {part for word in item.words for part in (word.text, word.became, *word.became.split(" "))}
    return frozenset(said.union(*(_words(member) for member in item.members)))


def _free(need: Meaning) -> frozenset[str]:
    """Attributes and traits of the need that an item may leave unsaid."""
    names = {name for name, _ in need.attributes} | need.traits
    return frozenset(
        name for name in names if (rule := kin().rule(name)) and rule.silent == "free" and not rule.default
    )


def _agreed(need: Meaning, free: Set[str], item: Meaning) -> frozenset[str]:
    """Which of them an item, or a member of it, states; that it differs is for the rule to say, but for amounts."""
    stated = {name for name, value in item.attributes if name != "amount" or _as_much(need, value)} | item.traits
    return frozenset(free & stated).union(*(_agreed(need, free, member) for member in item.members))


def _as_much(need: Meaning, amount: str) -> bool:
    """Whether an item holds as much as the need asks for: 1 litre, 1000 ml."""
    asked = dict(need.attributes).get("amount")
    return asked is not None and same("pack", asked, amount) == []
