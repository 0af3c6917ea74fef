"""Movements from rows. Apart from the items' rows: a question about stock meets no movement, and start-up counts."""

from __future__ import annotations

from collections.abc import Sequence

from cribkit.domain.stock.movement import Movement, MovementKind
from cribkit.store.rows import date, day

MOVEMENT = "SELECT kind, tag, amount, by, day, lot, holder, job, due, note, corrects, id, at, digest FROM movement"


def movement_of(row: Sequence[object]) -> Movement:
    """A movement from a row of `MOVEMENT`."""
    kind, tag, amount, by, on, lot, holder, job, due, note, corrects, number, at, digest = row
    return Movement(
        MovementKind(str(kind)),
        str(tag),
        int(str(amount)),
        str(by),
        day(str(on)),
        str(lot),
        str(holder),
        str(job),
        date(str(due)) if due else None,
        str(note),
        None if corrects is None else int(str(corrects)),
        int(str(number)),
        str(at),
        str(digest),
    )
