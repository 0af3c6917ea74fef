"""What a description was understood to mean."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Meaning:
    """A description or a need, understood: what family of thing it names and its attributes."""

    text: str
    kind: str = ""  # "tool", "consumable" or "" where the text leaves it open
    family: str = ""  # "socket", "hex-bit-socket", "throttle-body-cleaner" ...; "" where it could not be read
    attributes: tuple[tuple[str, str], ...] = ()  # sorted name -> value pairs, canonical text ("size" -> "8 mm")
    traits: frozenset[str] = frozenset()
    members: tuple[Meaning, ...] = ()  # what a set contains
    unread: tuple[str, ...] = ()  # words that could not be used
