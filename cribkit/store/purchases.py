"""Orders in the crib: placing, receiving against, ending, and what is still to come."""

from __future__ import annotations

import datetime as dt
from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from cribkit.domain.stock.thousandths import parts, whole
from cribkit.store.crib import Crib
from cribkit.store.posting import Entry
from cribkit.store.rows import date, day

CAME = """
    SELECT purchase_arrival.purchase, purchase_arrival.line, sum(movement.amount) AS came, max(movement.day) AS last
    FROM purchase_arrival JOIN movement
      ON movement.id = purchase_arrival.movement OR movement.corrects = purchase_arrival.movement
    GROUP BY purchase_arrival.purchase, purchase_arrival.line
"""
LINES = f"""
    SELECT purchase.id, purchase.supplier, purchase.day, purchase.due, purchase.by, purchase.note, ended_on, ended_by,
           ended_why, purchase_line.line, purchase_line.tag, what, packs, amount, unit, unit_cost, why,
           coalesce(came, 0), last
    FROM purchase JOIN purchase_line ON purchase_line.purchase = purchase.id
    LEFT JOIN ({CAME}) AS arrived ON arrived.purchase = purchase.id AND arrived.line = purchase_line.line
    WHERE {{}} ORDER BY purchase.id, purchase_line.line
"""


@dataclass(frozen=True, slots=True)
class NewLine:
    """A line of an order that is to be placed."""

    what: str
    packs: int
    amount: float  # in `unit`
    unit: str
    tag: str | None = None
    cost: float | None = None  # of one pack
    why: str = ""


@dataclass(frozen=True, slots=True)
class PurchaseLine:
    """A line of a placed order and what came of it."""

    line: int
    tag: str | None
    what: str
    packs: int
    amount: float
    unit: str
    cost: float | None
    why: str
    came: float
    last: dt.date | None  # the day of the last receipt

    @property
    def open(self) -> float:
        """Still to come."""
        return max(0.0, round(self.amount - self.came, 3))


@dataclass(frozen=True, slots=True)
class Purchase:
    """A placed order."""

    id: int
    supplier: str
    day: dt.date
    due: dt.date
    by: str
    note: str
    ended_on: dt.date | None
    ended_by: str
    ended_why: str
    lines: tuple[PurchaseLine, ...]

    @property
    def open(self) -> tuple[PurchaseLine, ...]:
        """The lines of which something is still to come."""
        return () if self.ended_on else tuple(line for line in self.lines if line.open > 0)

    def overdue(self, today: dt.date) -> int:
        """Days past the day it was expected on; 0 while it is in time or complete."""
        return max(0, (today - self.due).days) if self.open else 0

    @property
    def taken(self) -> int | None:
        """Days from the order to its last receipt; None until everything has come."""
        if self.open or self.ended_on:
            return None
        return (max(line.last or self.day for line in self.lines) - self.day).days


def place(crib: Crib, supplier: str, due: dt.date, lines: Sequence[NewLine], entry: Entry, note: str = "") -> int:
    """Note an order as placed; its number. Inside `posting()`."""
    row = (supplier, entry.day.isoformat(), due.isoformat(), entry.at, entry.by, note)
    cursor = crib.connection.execute(
        "INSERT INTO purchase (supplier, day, due, at, by, note) VALUES (?, ?, ?, ?, ?, ?)", row
    )
    number = cursor.lastrowid
    assert number is not None
    crib.connection.executemany(
        "INSERT INTO purchase_line (purchase, line, tag, what, packs, amount, unit, unit_cost, why) "
        "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
        [
            (number, at, one.tag, one.what, one.packs, parts(one.amount), one.unit, one.cost, one.why)
            for at, one in enumerate(lines, 1)
        ],
    )
    return number


def end(crib: Crib, number: int, entry: Entry, why: str) -> None:
    """Note that what has not come of an order will not come any more. Inside `posting()`."""
    crib.connection.execute(
        "UPDATE purchase SET ended_on = ?, ended_by = ?, ended_why = ? WHERE id = ? AND ended_on IS NULL",
        (entry.day.isoformat(), entry.by, why, number),
    )


def arrived(crib: Crib, number: int, line: int, movement: int) -> None:
    """Note that a receipt belongs to a line. Inside `posting()`."""
    crib.connection.execute(
        "INSERT INTO purchase_arrival (movement, purchase, line) VALUES (?, ?, ?)", (movement, number, line)
    )


def now_stocked(crib: Crib, number: int, line: int, tag: str) -> None:
    """Note under which tag a line is stocked that was a new item when it was ordered. Inside `posting()`."""
    crib.connection.execute(
        "UPDATE purchase_line SET tag = ? WHERE purchase = ? AND line = ? AND tag IS NULL", (tag, number, line)
    )


def purchases(crib: Crib, numbers: Iterable[int] | None = None) -> tuple[Purchase, ...]:
    """Placed orders with their lines, oldest first; only these numbers where they are given."""
    wanted = None if numbers is None else sorted(numbers)
    marks = ", ".join("?" * len(wanted or ()))
    rows = crib.connection.execute(LINES.format("1" if wanted is None else f"purchase.id IN ({marks})"), wanted or [])
    heads: dict[int, tuple[object, ...]] = {}
    lines: dict[int, list[PurchaseLine]] = defaultdict(list)
    for row in rows:
        heads[row[0]] = row[:9]
        lines[row[0]].append(purchase_line(row[9:]))
    return tuple(purchase(head, tuple(lines[number])) for number, head in heads.items())


def purchase(head: Sequence[object], lines: tuple[PurchaseLine, ...]) -> Purchase:
    """An order from its row and lines."""
    number, supplier, on, due, by, note, ended_on, ended_by, why = head
    return Purchase(
        id=int(str(number)),
        supplier=str(supplier),
        day=day(str(on)),
        due=day(str(due)),
        by=str(by),
        note=str(note),
        ended_on=date(str(ended_on)) if ended_on else None,
        ended_by=str(ended_by),
        ended_why=str(why),
        lines=lines,
    )


def purchase_line(row: Sequence[object]) -> PurchaseLine:
    """A line from its row."""
    line, tag, what, packs, amount, unit, cost, why, came, last = row
    return PurchaseLine(
        line=int(str(line)),
        tag=None if tag is None else str(tag),
        what=str(what),
        packs=int(str(packs)),
        amount=whole(int(str(amount))),
        unit=str(unit),
        cost=None if cost is None else float(str(cost)),
        why=str(why),
        came=whole(int(str(came))),
        last=date(str(last)) if last else None,
    )
