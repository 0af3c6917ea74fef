"""What a text must hold for a pattern to match: a plain `in` is far quicker than a search that finds nothing."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import chain, product
from operator import add
from typing import NamedTuple

# More choices than these are not worth looking for one by one.
MOST = 24
# Of what a match must hold, so many are looked for; the search itself finds the rest.
KEPT = 3
# By runs of so many characters the needles are looked up.
LONGEST_RUN = 4
_DIGITS = str.maketrans("123456789", "0" * 9)

Choices = frozenset[str]
_NOTHING: Choices = frozenset({""})


def plain_digits(text: str) -> str:
    """The text with a nought for every digit: the alphabet of `needles`."""
    if text.isascii():
        return text.translate(_DIGITS)
    return "".join("0" if char.isdecimal() else char for char in text)


def needles(pattern: str) -> tuple[tuple[str, ...], ...]:
    """What every match of a regular expression holds, the most telling first; () where nothing is known.

    Each is a tuple of plain texts, with a nought for any digit, of which the text around the match holds at least
    one, the character right before and behind it included where the expression looks at them. What is optional, what
    only may not be there, and wide classes of characters say nothing. No flags are allowed for.
    """
    piece, _ = _group(pattern, 0)
    held = {_least(choices) for choices in (*piece.held, *((piece.exact,) if piece.exact else ()))}
    telling: list[Choices] = []
    for choices in sorted((choices for choices in held if "" not in choices), key=_telling, reverse=True):
        if not any(_says(more, choices) for more in telling):
            telling.append(choices)
    return tuple(tuple(sorted(choices)) for choices in telling[:KEPT])


# Which patterns are always tried; what each must hold besides; needles and whose they are, by a run of each needle.
Packed = tuple[list[int], list[list[list[str]]], dict[str, list[tuple[str, list[int]]]]]


def pack(patterns: Sequence[str]) -> Packed:
    """What tells which of some regular expressions a text can match; it takes 0.1 ms for each and is worth keeping."""
    always: list[int] = []
    others: list[list[list[str]]] = []
    places: dict[str, list[int]] = {}
    for place, pattern in enumerate(patterns):
        first, *besides = needles(pattern) or ((),)
        others.append([list(choices) for choices in besides])
        if not first:
            always.append(place)
        for needle in first:
            places.setdefault(needle, []).append(place)
    # A needle is only looked for where the text has the run of it that fewest others have.
    often = Counter(chain.from_iterable(map(_keys, places)))
    keyed: dict[str, list[tuple[str, list[int]]]] = {}
    for needle, found in places.items():
        key = min(_keys(needle), key=lambda run: (often[run], run))
        keyed.setdefault(key, []).append((needle, found))
    return always, others, keyed


class Sieve:
    """Patterns, and which of them are worth trying on a text."""

    def __init__(self, packed: Packed) -> None:
        """Take what `pack` made of the patterns; it may have been through JSON."""
        self._always, self._besides, self._keyed = packed

    def due(self, text: str) -> list[int]:
        """The places of the patterns that may match, the last first."""
        plain = plain_digits(text)
        found: set[int] = set()
        for key in self._keyed.keys() & _runs(plain):
            for needle, places in self._keyed[key]:
                if needle in plain:
                    found.update(places)
        besides = self._besides
        return sorted([*(place for place in found if _holds(plain, besides[place])), *self._always], reverse=True)


def _holds(plain: str, besides: list[list[str]]) -> bool:
    """Whether a text has one of each; in plain loops, since it is asked some twenty times for each description."""
    for choices in besides:
        for needle in choices:
            if needle in plain:
                break
        else:
            return False
    return True


def _keys(needle: str) -> list[str]:
    """The longest runs of a needle that `_runs` finds in a text; of a short one itself."""
    return [needle[at : at + LONGEST_RUN] for at in range(max(1, len(needle) - LONGEST_RUN + 1))]


def _runs(plain: str) -> set[str]:
    """What stands one behind the other in a text, by one to LONGEST_RUN characters."""
    runs, found = list(plain), set(plain)
    for place in range(1, LONGEST_RUN):
        runs = list(map(add, runs, plain[place:]))
        found.update(runs)
    return found


class _Piece(NamedTuple):
    """A part of an expression: all that it can stand for, where that is little, and what its matches hold."""

    exact: Choices | None
    held: tuple[Choices, ...] = ()


_UNKNOWN = _Piece(None)


@dataclass
class _Sequence:
    """Pieces one behind the other, read from the left."""

    run: Choices = _NOTHING  # what can stand right before the next piece, as far back as it is known
    whole: bool = True  # the run reaches back to the beginning of the sequence and to nothing before it
    held: tuple[Choices, ...] = ()

    def follow(self, piece: _Piece) -> None:
        """One more piece."""
        self.held += piece.held
        if piece.exact is None:
            self.broken_off()
            return
        joined = _joined(self.run, piece.exact)
        if joined is None:
            self.broken_off()
            joined = piece.exact
        self.run = joined

    def repeated(self, piece: _Piece) -> None:
        """A piece that stands once or more: its first joins what was before, its last what comes."""
        self.follow(piece)
        if piece.exact is not None:
            self.broken_off()
            self.run = piece.exact

    def seen_ahead(self, piece: _Piece) -> None:
        """What must come next, which the pieces to come say once more."""
        self.held += piece.held
        if piece.exact is not None:
            self.held += (_joined(self.run, piece.exact) or piece.exact,)

    def seen_behind(self, piece: _Piece) -> None:
        """What must stand before; only where nothing of it has been read yet is it worth more than that."""
        self.held += piece.held
        if piece.exact is None:
            return
        self.held += (piece.exact,)
        if self.run == _NOTHING:
            self.run, self.whole = piece.exact, False

    def broken_off(self) -> None:
        """What comes next does not join what was before."""
        self.held += (self.run,)
        self.run, self.whole = _NOTHING, False

    def piece(self) -> _Piece:
        """All of it as one piece."""
        return _Piece(self.run, self.held) if self.whole else _Piece(None, (*self.held, self.run))


def _group(pattern: str, place: int) -> tuple[_Piece, int]:
    """The choices of a group, from its first character up to its closing bracket."""
    choices = []
    while True:
        one, place = _sequence(pattern, place)
        choices.append(one)
        if place >= len(pattern) or pattern[place] == ")":
            return _any_of(choices), place
        place += 1  # the stroke


def _any_of(choices: list[_Piece]) -> _Piece:
    if len(choices) == 1:
        return choices[0]
    exact = [one.exact for one in choices if one.exact is not None]
    together = frozenset().union(*exact)
    if len(exact) == len(choices) and len(together) <= MOST:
        return _Piece(together)
    said = [[_least(held) for held in (*one.held, one.exact or _NOTHING)] for one in choices]
    for better in (_telling, _few):
        together = _least(frozenset().union(*(max(held, key=better) for held in said)))
        if len(together) <= MOST:
            return _Piece(None, (together,))
    return _UNKNOWN


def _sequence(pattern: str, place: int) -> tuple[_Piece, int]:
    """One choice, up to a stroke or a closing bracket."""
    found = _Sequence()
    while place < len(pattern) and pattern[place] not in "|)":
        where = next((mark for mark in _LOOKS if pattern.startswith(mark, place)), "")
        if where:
            piece, place = _group(pattern, place + len(where))
            _LOOKS[where](found, piece)
            place += 1
            continue
        piece, place = _piece(pattern, place)
        times, place = _quantifier(pattern, place)
        if times == "?" and piece.exact is not None:
            found.follow(_Piece(piece.exact | {""}))
        elif times in ("?", "*"):
            found.follow(_UNKNOWN)
        elif times == "+":
            found.repeated(piece)
        else:
            found.follow(piece)
    return found.piece(), place


# Where an expression looks without reading on; what it only forbids says nothing.
_LOOKS = {
    "(?<!": lambda found, piece: None,
    "(?!": lambda found, piece: None,
    "(?<=": _Sequence.seen_behind,
    "(?=": _Sequence.seen_ahead,
}


def _piece(pattern: str, place: int) -> tuple[_Piece, int]:
    """A character, a class or a group, and the place behind it."""
    char = pattern[place]
    if char == "\\":
        return _escaped(pattern[place + 1]), place + 2
    if char == "[":
        end = _end_of_class(pattern, place)
        return _members(pattern[place + 1 : end]), end + 1
    if char == "(":
        inside = pattern.index(">", place) + 1 if pattern.startswith("(?P<", place) else place + 1
        piece, end = _group(pattern, inside + 2 if pattern.startswith("(?:", place) else inside)
        return piece, end + 1
    return _UNKNOWN if char == "." else _Piece(_NOTHING if char in "^$" else _one(char)), place + 1


def _one(char: str) -> Choices:
    return frozenset({plain_digits(char)})


def _escaped(char: str) -> _Piece:
    if char == "d":
        return _Piece(_one("0"))
    if char in "bB":
        return _Piece(_NOTHING)
    return _UNKNOWN if char.isalnum() else _Piece(_one(char))


def _members(inside: str) -> _Piece:
    """The characters of a class, where they are few."""
    if inside.startswith("^"):
        return _UNKNOWN
    found: set[str] = set()
    place = 0
    while place < len(inside):
        char = inside[place]
        if char == "\\":
            one = _escaped(inside[place + 1])
            if one.exact is None or one.exact == _NOTHING:
                return _UNKNOWN
            found |= one.exact
            place += 2
        elif inside[place + 1 : place + 2] == "-" and place + 2 < len(inside):
            found |= {plain_digits(chr(code)) for code in range(ord(char), ord(inside[place + 2]) + 1)}
            place += 3
        else:
            found |= _one(char)
            place += 1
    return _Piece(frozenset(found)) if len(found) <= MOST else _UNKNOWN


def _quantifier(pattern: str, place: int) -> tuple[str, int]:
    """How often the piece before may stand ("?", "*", "+", or "" for once), and the place behind that."""
    times = pattern[place : place + 1]
    if times == "{":
        end = pattern.index("}", place)
        least, _, most = pattern[place + 1 : end].partition(",")
        times = "+" if int(least or 0) else "?" if most == "1" else "*"
        place = end + 1
    elif times and times in "?*+":
        place += 1
    else:
        return "", place
    return times, place + (pattern[place : place + 1] == "?")


def _joined(one: Choices, other: Choices) -> Choices | None:
    """Each of the one before each of the other, where that is not too many."""
    if len(one) * len(other) > MOST:
        return None
    return frozenset(first + second for first, second in product(one, other))


def _least(choices: Choices) -> Choices:
    """The same without what holds another of them."""
    return frozenset(one for one in choices if not any(other != one and other in one for other in choices))


def _telling(choices: Choices) -> tuple[int, bool, int, list[str]]:
    """Of two sets of texts the one whose shortest is longer tells more; of two alike the smaller set, then any one.

    A mere digit or space tells least: nearly every text has them.
    """
    return min(map(len, choices)), not choices & {"0", " "}, -len(choices), sorted(choices)


def _few(choices: Choices) -> tuple[bool, int, int]:
    """The smaller set; of two alike the one that tells more."""
    return "" not in choices, -len(choices), min(map(len, choices))


def _says(more: Choices, less: Choices) -> bool:
    """Whether a text with one of the first has one of the second."""
    return all(any(one in other for one in less) for other in more)


def _end_of_class(pattern: str, place: int) -> int:
    place += 2 if pattern[place + 1] == "^" else 1
    place += pattern[place] == "]"
    while pattern[place] != "]":
        place += 2 if pattern[place] == "\\" else 1
    return place
