"""Where is it: one answer for each text, with why, and what else might do."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from cribkit.desk.candidates import Finder, Found
from cribkit.domain.wording import Meaning, query_terms
from cribkit.store.crib import Crib

MOST_ALTERNATIVES = 5


class Alternative(NamedTuple):
    """Another item that may do, after a person has confirmed it."""

    tag: str
    description: str
    score: float
    why: str


class Match(NamedTuple):
    """The answer to one text. `status`: match, review (a person must confirm) or none."""

    query: str
    status: str
    best: Found | None
    alternatives: tuple[Alternative, ...] = ()
    why: str = ""


def find(crib: Crib, texts: Sequence[str], kind: str = "") -> tuple[Match, ...]:
    """One match for each text, in the order of the texts."""
    finder = Finder(crib)
    return tuple(look_up(finder, text, kind) for text in texts)


def look_up(finder: Finder, text: str, kind: str) -> Match:
    """The best item for one text, and the others."""
    found = finder.find(text, kind)
    others = tuple(alternative(entry) for entry in found[1:])
    nearly = nearly_fitting(finder, text, kind)
    alternatives = (*others, *nearly)[:MOST_ALTERNATIVES]
    if not found:
        return Match(text, "none", None, alternatives, refusal(finder, text))
    best = found[0]
    return Match(text, "match" if best.matches else "review", best, alternatives, best.why)


def alternative(found: Found) -> Alternative:
    """Another candidate for the same text."""
    return Alternative(found.item.tag, found.item.description, found.judgement.score, found.why)


def nearly_fitting(finder: Finder, text: str, kind: str) -> tuple[Alternative, ...]:
    """Items of a near size: never a match, always with the play and the warning."""
    from cribkit.domain.wording import near

    need = finder.words.read(text, kind)
    near_by = [(item, near(need, item.meaning)) for item in finder.crib.candidates(near_terms(need), kind)]
    return tuple(
        Alternative(item.tag, item.description, 0.0, f"{close.why}. {close.warning}")
        for item, close in sorted(near_by, key=lambda pair: pair[0].tag)
        if close is not None
    )


def near_terms(need: Meaning) -> frozenset[str]:
    """The index terms of the same need in each size that would go on its head."""
    from cribkit.domain.wording import near_sizes

    attributes = dict(need.attributes)
    sizes = near_sizes(attributes["size"]) if "size" in attributes else ()
    others = (need._replace(attributes=tuple(sorted((attributes | {"size": size}).items()))) for size in sizes)
    return frozenset(term for other in others for term in query_terms(other))


def refusal(finder: Finder, text: str) -> str:
    """Why nothing was found."""
    need = finder.words.read(text)
    if not need.family:
        return "the text names no tool or consumable that is known: `cribkit read` shows how it was understood"
    return "nothing in this crib agrees in every attribute that the text states"
