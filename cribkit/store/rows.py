"""From rows to the domain's dataclasses."""

from __future__ import annotations

import datetime as dt
import json
import sqlite3
from collections import defaultdict
from collections.abc import Sequence
from functools import lru_cache

from cribkit.domain.stock.item import Condition, Item, Kind, Loan, Lot
from cribkit.domain.stock.thousandths import parts, whole
from cribkit.domain.wording import Meaning

ITEM = "SELECT tag, kind, description, meaning, location, condition, unit, pack, note FROM item WHERE {} ORDER BY tag"
STOCK = """
    SELECT balance.tag, balance.lot, inside, expires_on, opened_on, service_life_days
    FROM balance LEFT JOIN lot ON lot.tag = balance.tag AND lot.lot = balance.lot
    LEFT JOIN consumable ON consumable.tag = balance.tag
    WHERE balance.tag IN (SELECT value FROM json_each(?))
    ORDER BY expires_on IS NULL, expires_on, balance.lot
"""
LOANS = """
    SELECT tag, holder, since, amount, job FROM loan WHERE tag IN (SELECT value FROM json_each(?))
    ORDER BY since, holder, job
"""


@lru_cache(maxsize=8192)
def meaning_of(text: str) -> Meaning:
    """A stored meaning; the same text is unpacked once, however many questions meet it."""
    return Meaning.from_json(text)


def date(text: str | None) -> dt.date | None:
    """A stored day."""
    return dt.date.fromisoformat(text) if text else None


def day(text: str) -> dt.date:
    """A stored day that is always there."""
    return dt.date.fromisoformat(text)


def items_of(connection: sqlite3.Connection, where: str, values: Sequence[object]) -> tuple[Item, ...]:
    """The items that a condition selects, with lots (first expired first) and loans (longest out first)."""
    rows = connection.execute(ITEM.format(where), values).fetchall()
    tags = json.dumps([row[0] for row in rows])
    on_hand: dict[str, int] = defaultdict(int)
    lots: dict[str, list[Lot]] = defaultdict(list)
    packs = {row[0]: parts(row[7]) for row in rows}
    for tag, lot, inside, expires_on, opened_on, life in connection.execute(STOCK, (tags,)):
        on_hand[tag] += inside
        if inside > 0:
            lots[tag] += lots_of(lot, inside, date(expires_on), date(opened_on), life, packs[tag])
    loans: dict[str, list[Loan]] = defaultdict(list)
    for tag, holder, since, amount, job in connection.execute(LOANS, (tags,)):
        loans[tag].append(Loan(holder, day(since), whole(amount), job))
    return tuple(
        Item(
            tag=tag,
            kind=Kind(kind),
            description=description,
            meaning=meaning_of(meaning),
            location=location,
            condition=Condition(condition),
            on_hand=whole(on_hand[tag]),
            unit=unit,
            pack=pack,
            loans=tuple(loans[tag]),
            lots=tuple(sorted(lots[tag], key=expiry)) if kind == Kind.CONSUMABLE else (),
            note=note,
        )
        for tag, kind, description, meaning, location, condition, unit, pack, note in rows
    )


def lots_of(
    lot: str, inside: int, expires_on: dt.date | None, opened_on: dt.date | None, life: int | None, pack: int
) -> list[Lot]:
    """A lot's stock; where an open container has a service life, that container stands apart."""
    rest = inside % pack
    if opened_on is None or life is None or not rest:
        return [Lot(lot, whole(inside), expires_on)]
    until = opened_on + dt.timedelta(days=life)
    opened = Lot(lot, whole(rest), min(until, expires_on or until), opened_on)
    return [opened, *([Lot(lot, whole(inside - rest), expires_on)] if inside > rest else [])]


def expiry(lot: Lot) -> tuple[dt.date, str, bool]:
    """First expired, first out; of one day and lot the open container first."""
    return lot.expires_on or dt.date.max, lot.lot, lot.opened_on is None
