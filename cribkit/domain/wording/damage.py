"""Words that a scanner or a hurried hand damaged: S0CKET, b1ue, hlgh, six piont."""

from __future__ import annotations

import re
from functools import cache
from itertools import product

from cribkit.domain.wording.tables import tables

_WORD = re.compile(r"(?<![a-z\d./'-])[a-z\d]{3,}(?![a-z\d/'])")
# What a scanner takes for what: from memory of scanned lists.
_ALIKE: dict[str, tuple[str, ...]] = {
    "0": ("o",),
    "1": ("l", "i"),
    "5": ("s",),
    "8": ("b",),
    "6": ("b", "g"),
    "3": ("e",),
    "4": ("a",),
    "l": ("l", "i"),
    "i": ("i", "l"),
    "q": ("q", "g"),
    "c": ("c", "e"),
}
_PAIRS = (
    ("rn", "m"),
    ("vv", "w"),
    ("cl", "d"),
    ("ii", "u"),
)
# Words that the lexer reads beside a number: they must be whole before the numbers are read.
_BESIDE_NUMBERS = frozenset(
    [
        "point",
        "points",
        "pointed",
        "pitch",
        "grit",
        "tooth",
        "teeth",
        "pieces",
        "piece",
        "inch",
        "inches",
        "litre",
        "litres",
        "liter",
        "metre",
        "female",
        "male",
        "volts",
        "degrees",
        "drive",
        "square",
    ]
)


def mend(text: str) -> str:
    """The tidied text with damaged words made whole, where only one known word fits."""
    return _WORD.sub(_whole, text)


def _whole(found: re.Match[str]) -> str:
    return whole(found[0])


_VOWEL = frozenset("aeiouy")  # plirs is a slip of pliers, no scan of an abbreviation


@cache
def whole(word: str) -> str:
    """The one known word that a damaged one can have been, or the word as it is."""
    known = tables()
    letters = sum(char.isalpha() for char in word)
    if _knows(word) or letters < 2 or (letters < len(word) and letters < 3) or len(word) > 16:
        return word
    if letters == len(word) and len(word) < 4:
        return word
    if _knows(word.rstrip("0123456789")) or _knows(word.lstrip("0123456789")):
        return word  # a code: DOT5, 4jaw
    fits = {one for one in _variants(word) if _knows(one) and (letters < 5 or not _VOWEL.isdisjoint(one))}
    if len({known.spellings.get((one,), one) for one in fits}) == 1:
        return min(fits)
    return _beside(word)


def _knows(word: str) -> bool:
    known = tables()
    return word != "" and (
        word in known.known
        or word in known.longest
        or word in _BESIDE_NUMBERS
        or (word[-1:] == "s" and (word[:-1] in known.known or word[:-1] in known.longest))
    )


def _variants(word: str) -> set[str]:
    """What the scanner may have seen: letters for all digits, one or two letters for others."""
    bases = {word, *(word.replace(pair, one) for pair, one in _PAIRS)}
    found = set()
    for base in bases:
        if base != word and base.isalpha():
            found.add(base)
        choices = [_ALIKE.get(char, (char,)) for char in base]
        if sum(len(choice) > 1 for choice in choices) > 6:
            continue
        for letters in product(*choices):
            one = "".join(letters)
            changed = sum(a != b for a, b in zip(one, base, strict=True))
            if one.isalpha() and 0 < changed <= 2 + sum(char.isdigit() for char in base):
                found.add(one)
    return found


def _beside(word: str) -> str:
    """A word that stands beside numbers, with one slip: piont, litrs."""
    if len(word) < 5 or not word.isalpha():
        return word
    from rapidfuzz import process  # imported here: start-up counts
    from rapidfuzz.distance import OSA

    hits = process.extract(word, sorted(_BESIDE_NUMBERS), scorer=OSA.distance, score_cutoff=1, limit=2)
    return str(hits[0][0]) if hits else word
