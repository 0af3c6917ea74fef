"""Counting: what is on the shelf against what the ledger says. Shown first, posted only when asked for."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from contextlib import nullcontext
from dataclasses import dataclass, replace
from pathlib import Path

from cribkit.desk.handing import handed
from cribkit.domain.problem import BadInput, CribkitError, Problem, refuse
from cribkit.domain.stock.item import Item, Kind
from cribkit.domain.stock.movement import Movement, MovementKind
from cribkit.domain.stock.thousandths import parts
from cribkit.store.crib import Crib
from cribkit.store.posting import Entry, post
from cribkit.store.seed.sheet import read_sheet

COLUMNS = ("tag", "counted", "lot", "location", "description", "unit", "note")


@dataclass(frozen=True, slots=True)
class Counted:
    """What a person counted, as written. `source` is the line of the sheet."""

    source: str
    tag: str
    counted: str
    lot: str = ""
    note: str = ""


@dataclass(frozen=True, slots=True)
class Difference:
    """One lot of one item: in the ledger and on the shelf, in thousandths of its unit."""

    item: Item
    lot: str
    ledger: int
    shelf: int
    note: str = ""
    movement: int | None = None  # its number, once posted

    @property
    def change(self) -> int:
        """More (or, negative, less) than the ledger says."""
        return self.shelf - self.ledger


@dataclass(frozen=True, slots=True)
class Count:
    """The result of a count."""

    lines: tuple[Difference, ...]  # everything that was counted
    not_counted: tuple[Item, ...] = ()  # on the shelf that was named, but not on the sheet
    posted: bool = False
    warnings: tuple[Problem, ...] = ()

    @property
    def differences(self) -> tuple[Difference, ...]:
        """Where shelf and ledger disagree."""
        return tuple(line for line in self.lines if line.change)


def read_count(path: Path) -> tuple[Counted, ...]:
    """A count sheet: the columns tag and counted, and lot where there are several. A blank count is not counted."""
    sheet = read_sheet(path, COLUMNS, ("tag", "counted"))
    refuse(sheet.problems)
    return tuple(
        Counted(row.source, row.cells["tag"], row.cells["counted"], row.cells.get("lot", ""), row.cells.get("note", ""))
        for row in sheet.rows
        if row.cells.get("tag") and row.cells.get("counted")
    )


def count(crib: Crib, rows: Sequence[Counted], entry: Entry, shelf: str = "", do_post: bool = False) -> Count:
    """Compare, and post the differences if told to. Every row that cannot be used is listed; then nothing is posted."""
    with crib.posting() if do_post else nullcontext():
        lines = compared(crib, rows, entry)
        seen = {line.item.tag for line in lines}
        missed = tuple(item for item in on_shelf(crib, shelf) if item.tag not in seen) if shelf else ()
        if do_post:
            lines = tuple(posted(crib, line, entry) for line in lines)
        return Count(lines, missed, do_post, crib.warnings)


def compared(crib: Crib, rows: Sequence[Counted], entry: Entry) -> tuple[Difference, ...]:
    """Each row against the ledger; BadInput with every problem."""
    lines: dict[tuple[str, str], Difference] = {}
    problems: list[Problem] = []
    for row in rows:
        try:
            line = difference(crib, row, entry)
        except CribkitError as error:
            problems += [one._replace(source=row.source or one.source) for one in error.problems]
            continue
        key = (line.item.tag, line.lot)
        if key in lines:
            problems.append(
                Problem(row.source, "counted-twice", f"{line.item.tag} is on the sheet twice", "add it up.")
            )
        lines[key] = line
    refuse(problems)
    return tuple(lines.values())


def difference(crib: Crib, row: Counted, entry: Entry) -> Difference:
    """One row against the ledger."""
    what = handed(crib, row.tag, entry.day)
    amount = what.amount(row.counted)
    assert amount is not None, "the row has a count"
    lot = what.lot(row.lot or None)
    kept = {
        name: int(inside)
        for name, inside in crib.connection.execute("SELECT lot, inside FROM balance WHERE tag = ?", (what.item.tag,))
    }
    if lot is None:
        lot = the_only_lot(what.item, kept)
    if lot not in kept and lot and amount:
        todo = "receive it first, so that its expiry is known; then count."
        raise BadInput.of("unknown-lot", f"the ledger has no lot {lot} of it", todo, what.item.tag)
    return Difference(what.item, lot, kept.get(lot, 0), amount, row.note)


def the_only_lot(item: Item, kept: dict[str, int]) -> str:
    """Which lot is meant where none is said: the only one that is there, or was."""
    if item.kind is not Kind.CONSUMABLE or not kept:
        return ""
    there = [lot for lot, inside in kept.items() if inside] or list(kept)
    if len(there) > 1:
        names = ", ".join(lot or "(no number)" for lot in sorted(there))
        raise BadInput.of("which-lot", f"it has the lots {names}", "count each lot for itself.", item.tag)
    return there[0]


def posted(crib: Crib, line: Difference, entry: Entry) -> Difference:
    """Post one difference; inside a posting block."""
    if not line.change:
        return line
    note = line.note or "count"
    movement = Movement(MovementKind.COUNT, line.item.tag, line.change, entry.by, entry.day, lot=line.lot, note=note)
    return replace(line, movement=post(crib, movement, entry.at).id)


def on_shelf(crib: Crib, shelf: str) -> tuple[Item, ...]:
    """Items whose place is this shelf, or a place on it: "A1" has "A1-02", not "A10"."""
    wanted = shelf.casefold()
    return tuple(item for item in crib.items() if belongs(item.location.casefold(), wanted))


def belongs(location: str, shelf: str) -> bool:
    """Whether a location is a shelf or begins with it."""
    return location == shelf or (location.startswith(shelf) and not location[len(shelf)].isalnum())


def sheet_rows(items: Iterable[Item]) -> tuple[tuple[str, str, str, str, str, str], ...]:
    """A blank count sheet: a row for each item and lot, in the order of the shelves."""
    rows = []
    for item in sorted(items, key=lambda one: (one.location, one.tag)):
        lots = dict.fromkeys(lot.lot for lot in item.lots) or {"": None}
        unit = item.unit if item.pack == 1 else f"containers of {item.pack:g} {item.unit}"
        rows += [(item.tag, "", lot, item.location, item.description, unit) for lot in lots]
    return tuple(rows)


__all__ = ["Count", "Counted", "Difference", "count", "on_shelf", "parts", "read_count", "sheet_rows"]
