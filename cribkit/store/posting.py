"""Post movements: the only way in which stock changes. Call these inside `crib.posting()`."""

from __future__ import annotations

import datetime as dt
import sqlite3
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from cribkit.domain.problem import BadInput
from cribkit.domain.stock.movement import Movement, MovementKind, digest, must_be_text
from cribkit.domain.stock.thousandths import parts, whole
from cribkit.store.crib import Crib
from cribkit.store.movements import MOVEMENT, movement_of

HEAD = "head"  # the fact that says how many movements there are and the last digest
COLUMNS = "kind, tag, amount, by, day, lot, holder, job, due, note, corrects, id, at, digest"
INSERT = f"INSERT INTO movement ({COLUMNS}) VALUES ({', '.join('?' * 14)})"


@dataclass(frozen=True, slots=True)
class Entry:
    """Who posts, for which day, and when."""

    by: str
    day: dt.date
    at: str  # UTC, ISO 8601


def post(crib: Crib, movement: Movement, at: str) -> Movement:
    """Append one movement, posted at this time (UTC, ISO 8601); refused where less is there than it takes."""
    must_be_text(movement.by, movement.lot, movement.holder, movement.job, movement.note)
    connection = crib.connection
    last = connection.execute("SELECT id, digest FROM movement ORDER BY id DESC LIMIT 1").fetchone() or (0, "")
    posted = replace(movement, id=last[0] + 1, at=at)
    posted = replace(posted, digest=digest(last[1], posted))
    change_balance(connection, posted)
    if posted.outside:
        change_loan(connection, posted)
    connection.execute(INSERT, row_of(posted))
    head = f"{posted.id}:{posted.digest}"
    connection.execute("INSERT OR REPLACE INTO fact (name, value) VALUES (?, ?)", (HEAD, head))
    return posted


def row_of(movement: Movement) -> Sequence[str | int | None]:
    """The values of `INSERT`."""
    return (
        movement.kind.value,
        movement.tag,
        movement.amount,
        movement.by,
        movement.day.isoformat(),
        movement.lot,
        movement.holder,
        movement.job,
        movement.due.isoformat() if movement.due else None,
        movement.note,
        movement.corrects,
        movement.id,
        movement.at,
        movement.digest,
    )


def change_balance(connection: sqlite3.Connection, movement: Movement) -> None:
    """Keep the balance of one lot; nothing becomes negative."""
    key = (movement.tag, movement.lot)
    row = connection.execute("SELECT inside, outside FROM balance WHERE tag = ? AND lot = ?", key).fetchone() or (0, 0)
    inside, outside = row[0] + movement.inside, row[1] + movement.outside
    if inside < 0:
        there = f"only {amount_text(connection, movement.tag, row[0])} in the crib"
        raise too_little(movement, "; ".join((there, *who_has(connection, movement.tag))))
    if outside < 0:
        raise too_little(movement, f"only {amount_text(connection, movement.tag, row[1])} out")
    connection.execute(
        "INSERT INTO balance (tag, lot, inside, outside) VALUES (?, ?, ?, ?) "
        "ON CONFLICT (tag, lot) DO UPDATE SET inside = excluded.inside, outside = excluded.outside",
        (*key, inside, outside),
    )
    if movement.inside:
        note_opening(connection, movement, row[0], inside)


def note_opening(connection: sqlite3.Connection, movement: Movement, before: int, after: int) -> None:
    """An item with a service life: from which day on the open container of a lot has been open.

    Containers are used one after the other, so what is no whole number of them is one open container. It is a new
    one where the number of whole ones fell.
    """
    query = "SELECT pack FROM item JOIN consumable USING (tag) WHERE tag = ? AND service_life_days IS NOT NULL"
    row = connection.execute(query, (movement.tag,)).fetchone()
    if row is None:
        return
    pack, key = parts(row[0]), (movement.tag, movement.lot)
    if after % pack == 0:
        connection.execute("UPDATE lot SET opened_on = NULL WHERE tag = ? AND lot = ?", key)
    elif before % pack == 0 or after // pack < before // pack:
        connection.execute("UPDATE lot SET opened_on = ? WHERE tag = ? AND lot = ?", (movement.day.isoformat(), *key))


def change_loan(connection: sqlite3.Connection, movement: Movement) -> None:
    """Keep who has what. A loan that a correction opens again is as old as its last issue."""
    key = (movement.tag, movement.lot, movement.holder, movement.job)
    where = "tag = ? AND lot = ? AND holder = ? AND job = ?"
    row = connection.execute(f"SELECT amount, since, due FROM loan WHERE {where}", key).fetchone()
    amount = (row[0] if row else 0) + movement.outside
    if amount < 0:
        has = amount_text(connection, movement.tag, row[0] if row else 0)
        raise too_little(movement, f"{movement.holder or 'nobody'} has {has}")
    if amount == 0:
        connection.execute(f"DELETE FROM loan WHERE {where}", key)
    else:
        due = movement.due.isoformat() if movement.due else None
        since, due = (row[1], due or row[2]) if row else (issued_on(connection, movement), due)
        connection.execute(
            "INSERT OR REPLACE INTO loan (tag, lot, holder, job, amount, since, due) VALUES (?, ?, ?, ?, ?, ?, ?)",
            (*key, amount, since, due),
        )


def issued_on(connection: sqlite3.Connection, movement: Movement) -> str:
    """The day on which a loan began that this movement opens."""
    if movement.corrects is None:
        return movement.day.isoformat()
    key = (movement.tag, movement.lot, movement.holder, movement.job)
    row = connection.execute(
        "SELECT day FROM movement WHERE tag = ? AND lot = ? AND holder = ? AND job = ? AND kind = 'issue' "
        "AND amount > 0 ORDER BY id DESC LIMIT 1",
        key,
    ).fetchone()
    return str(row[0]) if row else movement.day.isoformat()


def amount_text(connection: sqlite3.Connection, tag: str, amount: int) -> str:
    """An amount as people read it: "3", "120 mL"."""
    unit = connection.execute("SELECT unit FROM item WHERE tag = ?", (tag,)).fetchone()[0]
    return f"{whole(amount):g}" if unit == "each" else f"{whole(amount):g} {unit}"


def who_has(connection: sqlite3.Connection, tag: str) -> Iterator[str]:
    """Who has the rest of an item, longest first."""
    query = "SELECT holder, job, amount, since FROM loan WHERE tag = ? ORDER BY since, holder, job"
    for holder, job, amount, since in connection.execute(query, (tag,)):
        yield f"{holder}{f', job {job},' if job else ''} has {amount_text(connection, tag, amount)} since {since}"


def too_little(movement: Movement, there: str) -> BadInput:
    """More is asked for than is there."""
    lot = f" lot {movement.lot}" if movement.lot else ""
    message = f"cannot {movement.kind.value} {whole(abs(movement.amount)):g}: {there}"
    error = BadInput.of(
        "too-little", message, "see `cribkit history` and `cribkit out`, or count the shelf.", f"{movement.tag}{lot}"
    )
    assert isinstance(error, BadInput)
    return error


def movements(crib: Crib, where: str = "1", values: Sequence[object] = ()) -> tuple[Movement, ...]:
    """Posted movements in the order of posting."""
    rows = crib.connection.execute(f"{MOVEMENT} WHERE {where} ORDER BY id", tuple(values))
    return tuple(map(movement_of, rows))


def set_lot(crib: Crib, tag: str, lot: str, expires_on: str | None) -> None:
    """Note a lot and its expiry date."""
    crib.connection.execute(
        "INSERT INTO lot (tag, lot, expires_on) VALUES (?, ?, ?) "
        "ON CONFLICT (tag, lot) DO UPDATE SET expires_on = excluded.expires_on",
        (tag, lot, expires_on),
    )


__all__ = ["Entry", "Movement", "MovementKind", "movements", "post", "set_lot"]
