"""Which items of a crib could serve a need's text: the one road from words to items, for every use case."""

from __future__ import annotations

from typing import NamedTuple

from cribkit.desk.understanding import Understanding
from cribkit.domain.stock.item import Confirmation, Item, Kind, fold
from cribkit.domain.wording import Judgement, Meaning, judge_all, query_terms
from cribkit.store.crib import Crib

KINDS = {"tool": (Kind.TOOL, Kind.WRENCH), "consumable": (Kind.CONSUMABLE,), "": tuple(Kind)}


class Found(NamedTuple):
    """One item that serves a need, or may serve it."""

    item: Item
    judgement: Judgement
    confirmed: Confirmation | None = None

    @property
    def matches(self) -> bool:
        """Whether it serves the need without asking anybody."""
        return self.confirmed is not None or self.judgement.status == "match"

    @property
    def anyway(self) -> str:
        """The reason of a confirmation against a hard attribute."""
        return self.confirmed.anyway if self.confirmed else ""

    @property
    def why(self) -> str:
        """Why it matched, or what is in doubt."""
        if self.confirmed is None:
            return self.judgement.weakness or self.judgement.why
        against = f", anyway: {self.confirmed.anyway}" if self.confirmed.anyway else ""
        return f"confirmed by {self.confirmed.by} on {self.confirmed.at.isoformat()}{against}"


class Finder:
    """Looks texts up in one crib; each text once."""

    def __init__(self, crib: Crib, words: Understanding | None = None) -> None:
        self.crib = crib
        self.words = words or Understanding()
        self.decisions: dict[str, dict[str, Confirmation]] = {}
        for entry in crib.confirmations():
            self.decisions.setdefault(entry.text, {})[entry.tag] = entry
        self.seen: dict[tuple[str, str], tuple[Found, ...]] = {}

    def find(self, text: str, kind: str = "") -> tuple[Found, ...]:
        """Items that serve the text or may serve it, best first."""
        if (text, kind) not in self.seen:
            self.seen[text, kind] = self.search(self.words.read(text, kind), kind)
        return self.seen[text, kind]

    def search(self, need: Meaning, kind: str = "") -> tuple[Found, ...]:
        """The same for a need that is already read."""
        pool = {item.tag: item for item in self.crib.candidates(query_terms(need), kind)}
        decided = self.decisions.get(fold(need.text), {}) if self.decisions else {}
        pool |= {tag: item for tag in decided.keys() - pool.keys() if (item := self.crib.item(tag)) is not None}
        items = [item for item in pool.values() if item.kind in KINDS[kind]]
        judged = judge_all(need, [item.meaning for item in items], self.crib.stored_terms)
        found = (Found(*one, decided.get(one[0].tag)) for one in zip(items, judged, strict=True))
        return tuple(sorted((one for one in found if one.confirmed or one.judgement.status != "none"), key=order))


def order(found: Found) -> tuple[bool, bool, float, bool, str]:
    """Certain before doubtful; a person's decision first; then the score; then what is there; then the tag."""
    return not found.matches, found.confirmed is None, -found.judgement.score, found.item.on_hand <= 0, found.item.tag
