"""What a text must hold for a pattern to match: a plain `in` is far quicker than a search that finds nothing."""

from __future__ import annotations

# More choices than these are not worth looking for one by one.
MOST = 12
_OPTIONAL = ("?", "*", "{0")


def needles(pattern: str) -> tuple[str, ...]:
    """Plain texts of which every match of a regular expression holds at least one; () where none are known.

    Of all that a match must hold the longest is taken, of groups with choices one text for each choice. What is
    optional, what only may not be there, and classes of characters say nothing.
    """
    found, _ = _choices(pattern, 0)
    return tuple(sorted(found))


def _choices(pattern: str, place: int) -> tuple[frozenset[str], int]:
    """What the choices of a group hold, from its first character up to its closing bracket."""
    held: frozenset[str] | None = frozenset()
    while True:
        one, place = _sequence(pattern, place)
        held = held | one if held is not None and one else None
        if place >= len(pattern) or pattern[place] == ")":
            return (held if held and len(held) <= MOST else frozenset()), place
        place += 1  # the stroke


def _sequence(pattern: str, place: int) -> tuple[frozenset[str], int]:
    """The best of what one choice must hold."""
    best: frozenset[str] = frozenset()
    run = ""
    while True:
        char = pattern[place] if place < len(pattern) else ""
        if char in ("", "|", ")"):
            return _better(best, frozenset({run} if run else ())), place
        plain, held, place = _piece(pattern, place)
        optional = pattern.startswith(_OPTIONAL, place)
        if plain and not optional:
            run += plain
        if not plain or optional or pattern[place : place + 1] in ("+", "{"):
            best, run = _better(best, frozenset({run} if run else ())), ""
        if held and not optional:
            best = _better(best, held)
        place = _after_quantifier(pattern, place)


def _piece(pattern: str, place: int) -> tuple[str, frozenset[str], int]:
    """A plain character, or what a group must hold, and the place behind it."""
    char = pattern[place]
    if char == "\\":
        following = pattern[place + 1]
        return ("" if following.isalnum() else following), frozenset(), place + 2
    if char == "[":
        return "", frozenset(), _end_of_class(pattern, place) + 1
    if char == "(":
        inside, forbidden = _opened(pattern, place)
        held, end = _choices(pattern, inside)
        return "", frozenset() if forbidden else held, end + 1
    return ("" if char in ".^$" else char), frozenset(), place + 1


def _opened(pattern: str, place: int) -> tuple[int, bool]:
    """Where the inside of a group begins, and whether it says what may not be there."""
    for mark in ("(?<!", "(?!"):
        if pattern.startswith(mark, place):
            return place + len(mark), True
    for mark in ("(?<=", "(?=", "(?:"):
        if pattern.startswith(mark, place):
            return place + len(mark), False
    if pattern.startswith("(?P<", place):
        return pattern.index(">", place) + 1, False
    return place + 1, False


def _after_quantifier(pattern: str, place: int) -> int:
    if pattern[place : place + 1] == "{":
        return pattern.index("}", place) + 1
    while pattern[place : place + 1] in ("?", "*", "+"):
        place += 1
    return place


def _better(one: frozenset[str], other: frozenset[str]) -> frozenset[str]:
    """Of two sets of texts the one whose shortest is longer; of two alike the smaller set."""
    if not one or not other:
        return one or other
    return max((one, other), key=lambda held: (min(map(len, held)), -len(held)))


def _end_of_class(pattern: str, place: int) -> int:
    place += 2 if pattern[place + 1] == "^" else 1
    place += pattern[place] == "]"
    while pattern[place] != "]":
        place += 2 if pattern[place] == "\\" else 1
    return place
