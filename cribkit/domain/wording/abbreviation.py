"""Words cut short as catalogues do: CRVD is curved, HLDR holder, WHL NT a wheel nut."""

from __future__ import annotations

from functools import cache

from cribkit.domain.wording.tables import tables

_VOWELS = frozenset("aeiou")
SHORTEST_ALONE = 4  # letters of an abbreviation that is told without the words around it


@cache
def senses(word: str) -> frozenset[str]:
    """The words of the tables that this one may be short for.

    It has no vowels (a word with vowels may be a name: Wren), is begun alike, has its letters in the same order, and
    the last one alike or the consonants that come first.
    """
    if len(word) < 3 or not word.isalpha() or _VOWELS & set(word):
        return frozenset()
    spellings, likely = tables().spellings, _long_words().get(word[0], ())
    return frozenset(spellings.get((one,), one) for one in likely if _without_vowels(word, one))


def expanded(word: str, others: frozenset[str]) -> str:
    """The one word that this is short for, "" where that is not clear.

    Alone it is told by its consonants: all of them (DSL), or from four letters on those that come first (INSL). Else it
    must make a name with `others`, the words of the tables in the same text.
    """
    found = senses(word)
    if short := _short(word, found):
        return short
    if len(found) > 1:
        whole = {sense for sense in found if _whole(word, sense)}
        found = frozenset(whole) if len(whole) == 1 else found
    if len(found) == 1 and _told(word, next(iter(found))):
        return next(iter(found))
    named = {sense for sense in found if _names(sense, others)}
    return named.pop() if len(named) == 1 else ""


@cache
def _fours() -> dict[str, list[str]]:
    """The words of four letters by their consonants."""
    found: dict[str, list[str]] = {}
    for one in _four_letters():
        if len(one) == SHORTEST_ALONE:
            found.setdefault(_skeleton(one), []).append(one)
    return found


def _short(word: str, found: frozenset[str]) -> str:
    """The word of four letters that this one is all consonants of (PNK, HND), where no longer one can be meant."""
    four = _fours().get(word, ())
    if len(four) != 1:
        return ""
    longer = (one for sense in found for one in _spelled(word, sense) if not one.startswith(four[0]))
    if any(_single(_skeleton(one)) == _single(word) for one in longer):
        return ""
    return tables().spellings.get((four[0],), four[0])


@cache
def slipped(word: str, others: frozenset[str]) -> str:
    """A short word with one slip that makes a name with `others` when it is mended: "steering whel puller"."""
    if not 4 <= len(word) <= 7 or not word.isalpha():
        return ""
    from rapidfuzz import process  # imported here: start-up counts
    from rapidfuzz.distance import OSA

    spellings = tables().spellings
    hits = process.extract(word, _four_letters(), scorer=OSA.distance, score_cutoff=1, limit=30)
    senses_of = {spellings.get((hit,), hit) for hit, _, _ in hits if hit[0] == word[0]}
    named = {sense for sense in senses_of if _names(sense, others)}
    return named.pop() if len(named) == 1 else ""


@cache
def _four_letters() -> list[str]:
    return sorted(word for word in tables().known if len(word) >= 4 and word.isalpha())


def _whole(word: str, sense: str) -> bool:
    """Whether the word is all the consonants of some spelling of the sense."""
    return any(_single(_skeleton(one)) == _single(word) for one in _spelled(word, sense))


def _told(word: str, sense: str) -> bool:
    skeletons = [_single(_skeleton(one)) for one in _spelled(word, sense)]
    return any(
        one == _single(word) or (len(word) >= SHORTEST_ALONE and one.startswith(_single(word))) for one in skeletons
    )


def _spelled(word: str, sense: str) -> list[str]:
    spellings = tables().spellings
    return [one for one in _long_words().get(word[0], ()) if spellings.get((one,), one) == sense]


def _names(sense: str, others: frozenset[str]) -> bool:
    """Whether the word makes a name of two words or more with others of the text."""
    return any(len(name) > 1 and name - {sense} <= others for name in _names_with().get(sense, ()))


@cache
def _names_with() -> dict[str, tuple[frozenset[str], ...]]:
    found: dict[str, tuple[frozenset[str], ...]] = {}
    for group in tables().names.values():
        for name, _ in group:
            for word in name:
                found[word] = (*found.get(word, ()), name)
    return found


@cache
def _long_words() -> dict[str, tuple[str, ...]]:
    known = tables()
    words = {word for word in known.known if len(word) > 4} | {
        phrase[0] for phrase in known.spellings if len(phrase) == 1 and len(phrase[0]) > 4
    }
    found: dict[str, tuple[str, ...]] = {}
    for word in sorted(word for word in words if word.isalpha() and _VOWELS & set(word)):
        found[word[0]] = (*found.get(word[0], ()), word)
    return found


def _without_vowels(word: str, one: str) -> bool:
    if len(one) < len(word) + 1 or not _inside(word, one):
        return False
    skeleton = _skeleton(one)
    return word[-1] == one.removesuffix("s")[-1] or skeleton.startswith(word) or _single(skeleton).startswith(word)


def _skeleton(word: str) -> str:
    """The first letter and the consonants after it."""
    return word[0] + "".join(letter for letter in word[1:] if letter not in _VOWELS)


def _single(letters: str) -> str:
    """Doubled letters once: cmprssn, for compression."""
    return "".join(letter for at, letter in enumerate(letters) if at == 0 or letters[at - 1] != letter)


def _inside(word: str, one: str) -> bool:
    letters = iter(one)
    return all(letter in letters for letter in word)
