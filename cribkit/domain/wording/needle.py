"""What a text must hold for a pattern to match: a plain `in` is far quicker than a search that finds nothing."""

from __future__ import annotations

_QUANTIFIERS = frozenset("?*{")


def needle(pattern: str) -> str:
    """The longest run of plain characters that stands in every match of a regular expression, "" where there is none.

    Only what is outside of groups and classes, and not optional, counts; with a choice at the top there is none.
    """
    plain: list[str] = []
    depth = place = 0
    while place < len(pattern):
        char = pattern[place]
        if char == "\\":
            following = pattern[place + 1]
            plain.append("\0" if depth or following.isalnum() else following)
            place += 1
        elif char == "[":
            place = _end_of_class(pattern, place)
            plain.append("\0")
        elif char in "()":
            depth += 1 if char == "(" else -1
            plain.append("\0")
        elif char == "|" and depth == 0:
            return ""
        elif char in _QUANTIFIERS:
            plain[-1:] = ["\0"]
            place = pattern.index("}", place) if char == "{" else place
        else:
            plain.append("\0" if depth or char in "+.^$" else char)
        place += 1
    return max("".join(plain).split("\0"), key=len)


def _end_of_class(pattern: str, place: int) -> int:
    place += 2 if pattern[place + 1] == "^" else 1
    place += pattern[place] == "]"
    while pattern[place] != "]":
        place += 2 if pattern[place] == "\\" else 1
    return place
