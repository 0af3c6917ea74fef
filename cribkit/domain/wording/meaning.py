"""What a description was understood to mean, and what a judgement says."""

from __future__ import annotations

import json
from typing import Any, NamedTuple

READER_VERSION = 40  # raised whenever a reading may change: stored meanings and index terms are then rebuilt


class Word(NamedTuple):
    """One word of a text and what the reader made of it."""

    text: str  # as it stands in the text, after tidying
    became: str  # "socket", "drive 1/4", "" for a word without a meaning of its own
    # "name", "size", "attribute", "known", "corrected", "context", "beside" (what it is to have), "denied", "unread" or
    # "stray" (names another thing)
    how: str


class Meaning(NamedTuple):
    """A description or a need, understood: what family of thing it names and its attributes."""

    text: str
    kind: str = ""  # "tool", "consumable" or "" where the text leaves it open
    family: str = ""  # "socket", "bit-socket", "throttle-body-cleaner" ...; "" where it could not be read
    attributes: tuple[tuple[str, str], ...] = ()  # sorted name -> value pairs, canonical text ("size" -> "8 mm")
    traits: frozenset[str] = frozenset()
    members: tuple[Meaning, ...] = ()  # what a set contains
    unread: tuple[str, ...] = ()  # words that could not be used
    words: tuple[Word, ...] = ()  # each word and what it became
    others: tuple[Meaning, ...] = ()  # "or": what would do as well

    @property
    def drive_in(self) -> str:
        """The square that it takes a tool's drive with ("1/4", "3/8" ...), or ""."""
        return dict(self.attributes).get("drive_in", self._square(self.family not in GIVES_ONLY))

    @property
    def drive_out(self) -> str:
        """The square that it drives the next part with, or ""."""
        return dict(self.attributes).get("drive_out", self._square(self.family in GIVES_ONLY | PASSES_ON))

    def _square(self, applies: bool) -> str:
        return dict(self.attributes).get("drive", "") if applies else ""

    def to_json(self) -> str:
        """Compact text for the store; `from_json` gives the same meaning back."""
        return json.dumps([READER_VERSION, _pack(self)], ensure_ascii=False, separators=(",", ":"))

    @classmethod
    def from_json(cls, text: str) -> Meaning:
        """The stored meaning; ValueError where another version of the reader wrote it."""
        version, packed = json.loads(text)
        if version != READER_VERSION:
            raise ValueError(f"read by version {version} of the reader, this is {READER_VERSION}")
        return _unpack(packed)


# What has a square of its own but takes none, and what hands its square on.
GIVES_ONLY = frozenset(
    {
        "ratchet",
        "breaker-bar",
        "t-handle",
        "l-handle",
        "speed-brace",
        "socket-handle",
        "spinner-handle",
        "torque-wrench",
        "torque-screwdriver",
        "impact-wrench",
        "impact-driver",
        "air-ratchet",
    }
)
PASSES_ON = frozenset({"extension", "universal-joint", "torque-multiplier", "torque-adapter", "angle-gauge"})


MOST_DOUBTED = 60.0  # the score that a review has at most


class Judgement(NamedTuple):
    """Whether an item is what a need asks for."""

    status: str  # "match", "review" (a person must confirm) or "none"
    score: float  # 0 to 100; ranks items of the same status
    why: str
    member: str = ""  # the member of a set that meets the need
    weakness: str = ""  # what is in doubt, for a review

    @property
    def rank(self) -> tuple[int, float]:
        """Sorts better judgements later: a match before a review before none, then by score."""
        return ({"none": 0, "review": 1, "match": 2}[self.status], self.score)


NONE = Judgement("none", 0.0, "")


class Near(NamedTuple):
    """Another size that would go on, by the published limits: only ever something to confirm."""

    play_low_mm: float  # smallest gap between opening and head
    play_high_mm: float  # largest
    why: str
    warning: str


def _pack(meaning: Meaning) -> list[Any]:
    words = [[word.text, word.became, word.how] for word in meaning.words]
    members = [_pack(member) for member in meaning.members]
    others = [_pack(other) for other in meaning.others]
    pairs = [list(pair) for pair in meaning.attributes]
    traits = sorted(meaning.traits)
    return [meaning.text, meaning.kind, meaning.family, pairs, traits, list(meaning.unread), members, others, words]


def _unpack(packed: list[Any]) -> Meaning:
    text, kind, family, pairs, traits, unread, members, others, words = packed
    return Meaning(
        text=text,
        kind=kind,
        family=family,
        attributes=tuple((name, value) for name, value in pairs),
        traits=frozenset(traits),
        members=tuple(_unpack(member) for member in members),
        unread=tuple(unread),
        words=tuple(Word(*word) for word in words),
        others=tuple(_unpack(other) for other in others),
    )
