"""Typing slips in the words that patterns look for: three-eighhts, plies, degere. They must be whole before."""

from __future__ import annotations

import re
from functools import cache

from cribkit.domain.wording.tables import listed, tables

_WORD = re.compile(r"(?<![a-z\d./'])[a-z]{5,}(?![a-z\d/'])")
_ENDINGS = ("ed", "ing", "er", "or", "ly", "ment")


def unslipped(text: str) -> str:
    """The text with one slip mended in each common word that nobody knows as it stands."""
    return _WORD.sub(_whole, text)


def slips(text: str) -> dict[str, str]:
    """The words of a text in which a slip is mended, and what each is taken for."""
    return {word: meant for word in _WORD.findall(text.lower()) if (meant := whole(word)) != word}


def _whole(found: re.Match[str]) -> str:
    return whole(found[0])


@cache
def whole(word: str) -> str:
    """The common word that a strange one is a slip of, or the word as it is; no slip in the first letter."""
    known = tables()
    common = listed("slipped")
    if word in common or word in listed("no_slips") or not {word, word.removesuffix("s")}.isdisjoint(known.known):
        return word
    if word in known.longest:
        return word
    from rapidfuzz import process  # imported here: start-up counts
    from rapidfuzz.distance import OSA

    hits = process.extract(word, sorted(common), scorer=OSA.distance, score_cutoff=1, limit=3)
    near = [str(hit) for hit, _, _ in hits if hit[0] == word[0] and _ending(word) in ("", _ending(hit))]
    if len(near) == 2 and {near[0], near[0] + "s"} == set(near):
        return near[0] + "s" if word.endswith("s") else near[0]
    return near[0] if len(near) == 1 else word


def _ending(word: str) -> str:
    """What makes another word of the same stem: pulled is no puller."""
    return next((ending for ending in _ENDINGS if word.endswith(ending)), "")
