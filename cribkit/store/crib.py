"""The crib as the use cases see it: items, their stock and who has what, read at one moment."""

from __future__ import annotations

import json
import re
import sqlite3
from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING

from cribkit.domain.problem import BadInput, Problem
from cribkit.domain.stock.item import Confirmation, Item, Kind, fold
from cribkit.store.rows import day, items_of

if TYPE_CHECKING:
    from cribkit.domain.torque import Wrench

MISSING = r"(?i)[\s,:-]*\(?\bmissing\b\)?"  # the note after a set's member
KINDS = {"tool": (Kind.TOOL, Kind.WRENCH), "wrench": (Kind.WRENCH,), "consumable": (Kind.CONSUMABLE,)}


class Crib:
    """An open crib. Reads are consistent with each other; writes happen inside `posting()`."""

    def __init__(
        self,
        connection: sqlite3.Connection,
        path: Path | None = None,
        warnings: tuple[Problem, ...] = (),
        in_memory: bool = False,
    ) -> None:
        self.connection = connection
        self.path = path  # None for the demo crib
        self.warnings = warnings  # told to the user with the answer
        self.in_memory = in_memory  # nothing written here stays

    @contextmanager
    def posting(self) -> Iterator[Crib]:
        """One atomic block of postings: all of it is kept, or nothing."""
        self.connection.execute("BEGIN IMMEDIATE")
        try:
            yield self
            self.connection.execute("COMMIT")
        except BaseException:
            if self.connection.in_transaction:
                self.connection.execute("ROLLBACK")
            raise

    def candidates(self, terms: Iterable[str], kind: str = "") -> tuple[Item, ...]:
        """Items that share at least one stored term with a need, in the order of their tags."""
        found = "SELECT DISTINCT tag FROM item_term WHERE term IN (SELECT value FROM json_each(?))"
        return self._items(f"tag IN ({found})", [json.dumps(sorted(terms))], kind)

    def stored_terms(self, terms: Iterable[str]) -> frozenset[str]:
        """Those of the terms that any item has."""
        rows = self.connection.execute(
            "SELECT value FROM json_each(?) WHERE EXISTS (SELECT 1 FROM item_term WHERE term = value)",
            [json.dumps(sorted(terms))],
        )
        return frozenset(row[0] for row in rows)

    def item(self, tag: str) -> Item | None:
        """The item with this tag, whatever the case of its letters."""
        return next(iter(self._items("tag = ?", [tag], "")), None)

    def must_have(self, tag: str) -> Item:
        """The item with this tag; an unknown tag is bad input."""
        found = self.item(tag)
        if found is None:
            raise BadInput.of("unknown-tag", f"there is no item {tag}", "see `cribkit find` for its tag.", source=tag)
        return found

    def item_by_gtin(self, gtin: str) -> Item | None:
        """The item whose packages carry this barcode number (14 digits)."""
        return next(iter(self._items("gtin = ?", [gtin], "")), None)

    def items(self, kind: str = "") -> tuple[Item, ...]:
        """Every item ("tool" includes the torque wrenches, "wrench" has only them), in the order of their tags."""
        return self._items("1", [], kind)

    def items_tagged(self, tags: Iterable[str]) -> tuple[Item, ...]:
        """The items with these tags."""
        return self._items("tag IN (SELECT value FROM json_each(?))", [json.dumps(sorted(tags))], "")

    def tags(self, start: str, most: int = 200) -> tuple[tuple[str, str], ...]:
        """Tags that begin so, whatever the case of their letters, with their descriptions: for completion."""
        rows = self.connection.execute(
            "SELECT tag, description FROM item WHERE substr(tag, 1, length(?1)) = ?1 COLLATE NOCASE "
            "ORDER BY tag LIMIT ?2",
            (start, most),
        )
        return tuple((tag, description) for tag, description in rows)

    def wrenches(self) -> tuple[Wrench, ...]:
        """Every torque wrench, as `cover` wants it."""
        from cribkit.store.wrenches import wrenches_of

        return wrenches_of(self)

    def square_limits(self) -> dict[str, float]:
        """What this crib's own parts bear, by square, in N·m: before the program's table."""
        return dict(self.connection.execute("SELECT square, limit_nm FROM square"))

    def incomplete_sets(self) -> tuple[tuple[str, str, str], ...]:
        """Tag, description and contents of the sets with a member noted missing; the contents as if it were there."""
        rows = self.connection.execute(
            "SELECT tag, description, contents FROM item WHERE contents LIKE '%missing%' ORDER BY tag"
        )
        return tuple((tag, description, re.sub(MISSING, "", contents)) for tag, description, contents in rows)

    def confirmations(self) -> tuple[Confirmation, ...]:
        """Decisions in force, in the order in which they were made."""
        rows = self.connection.execute(
            "SELECT need, tag, by, at, anyway FROM confirmation WHERE withdrawn_at IS NULL ORDER BY id"
        )
        return tuple(Confirmation(need, tag, by, day(at[:10]), anyway) for need, tag, by, at, anyway in rows)

    def confirm(self, text: str, tag: str, by: str, at: str, anyway: str = "") -> None:
        """Keep a person's decision; an earlier one about the same pair is withdrawn. Inside `posting()`."""
        self.withdraw(text, tag, by, at)
        self.connection.execute(
            "INSERT INTO confirmation (need, tag, by, at, anyway) VALUES (?, ?, ?, ?, ?)",
            (fold(text), tag, by, at, anyway),
        )

    def withdraw(self, text: str, tag: str, by: str, at: str) -> bool:
        """Withdraw a decision; whether there was one. It stays on record. Inside `posting()`."""
        cursor = self.connection.execute(
            "UPDATE confirmation SET withdrawn_at = ?, withdrawn_by = ? "
            "WHERE need = ? AND tag = ? AND withdrawn_at IS NULL",
            (at, by, fold(text), tag),
        )
        return cursor.rowcount > 0

    def _items(self, where: str, values: list[object], kind: str) -> tuple[Item, ...]:
        if kind:
            marks = ", ".join("?" * len(KINDS[kind]))
            where, values = f"({where}) AND kind IN ({marks})", [*values, *KINDS[kind]]
        return items_of(self.connection, where, values)
