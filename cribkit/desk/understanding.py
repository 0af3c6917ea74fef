"""What the words of procedures mean: read once, and kept with the reader that read them.

Reading the needs of one procedure costs about 30 ms and loads patterns for as long again; taking them from the cache
costs less than one.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Iterator

from cribkit.domain.procedure import Procedure
from cribkit.domain.wording import READER_VERSION, Meaning
from cribkit.store.cache import cached, forget, program

Key = tuple[str, str]  # a text and its kind: "tool", "consumable" or ""


class Understanding:
    """Meanings by text; a text that is not known yet is read."""

    def __init__(self, procedures: Iterable[Procedure] = ()) -> None:
        self._texts: dict[Key, Meaning] = {}
        self._heads: dict[str, tuple[Meaning, ...]] = {}
        for procedure in procedures:
            self._learn(procedure)

    def read(self, text: str, kind: str = "") -> Meaning:
        """As `cribkit.domain.wording.read`."""
        if (text, kind) not in self._texts:
            from cribkit.domain.wording import read

            self._texts[text, kind] = read(text, kind)
        return self._texts[text, kind]

    def item(self, description: str, contents: str) -> Meaning:
        """As `cribkit.domain.wording.read_item` of a tool; kept like the words of procedures."""
        version, content = f"{READER_VERSION}-{program()}", json.dumps([description, contents])

        def make() -> str:
            from cribkit.domain.wording import read_item

            return read_item(description, "tool", contents).to_json()

        try:
            return Meaning.from_json(cached("items", version, content, make) or "")
        except (ValueError, KeyError, TypeError, IndexError):
            forget("items", version, content)
            return Meaning.from_json(make())

    def heads(self, head: str) -> tuple[Meaning, ...]:
        """As `cribkit.domain.wording.head_drivers`."""
        if head not in self._heads:
            from cribkit.domain.wording import head_drivers

            self._heads[head] = head_drivers(head)
        return self._heads[head]

    def _learn(self, procedure: Procedure) -> None:
        """Everything that a check of this procedure will ask for."""
        texts = sorted(set(words_of(procedure)))
        heads = sorted({need.head for need in procedure.torques if need.head})
        room, version, content = "meanings", f"{READER_VERSION}-{program()}", json.dumps([texts, heads])
        kept = cached(room, version, content, lambda: self._freeze(texts, heads))
        try:
            self._thaw(kept or "")
        except (ValueError, KeyError, TypeError, IndexError):
            forget(room, version, content)  # it is read again where it is asked for

    def _freeze(self, texts: list[Key], heads: list[str]) -> str:
        read = [[text, kind, self.read(text, kind).to_json()] for text, kind in texts]
        drivers = [[head, [meaning.to_json() for meaning in self.heads(head)]] for head in heads]
        return json.dumps([read, drivers], ensure_ascii=False)

    def _thaw(self, kept: str) -> None:
        read, drivers = json.loads(kept)
        texts = {(text, kind): Meaning.from_json(meaning) for text, kind, meaning in read}
        heads = {head: tuple(map(Meaning.from_json, meanings)) for head, meanings in drivers}
        self._texts |= texts
        self._heads |= heads


def words_of(procedure: Procedure) -> Iterator[Key]:
    """Every text of a procedure that is matched against items."""
    for tool in procedure.tools:
        yield from ((text, "tool") for text in (tool.need, *tool.instead))
    for torque in procedure.torques:
        if torque.reach and torque.reach.adapter:
            yield torque.reach.adapter, "tool"
    for consumable in procedure.consumables:
        yield from ((text, "consumable") for text in (consumable.need, *consumable.never))
