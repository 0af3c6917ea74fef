"""A crib in memory for the tests of restocking, built movement by movement. All names and values are invented."""

from __future__ import annotations

import datetime as dt
import sqlite3

from cribkit.domain.stock.movement import Movement, MovementKind
from cribkit.domain.stock.thousandths import parts
from cribkit.store.crib import Crib
from cribkit.store.migrate import migrate
from cribkit.store.posting import Entry, post, set_lot

TODAY = dt.date(2026, 11, 30)
AT = "2026-11-30T08:00:00Z"
POSTING = Entry("J. Sedge", TODAY, AT)


def day(days: int) -> dt.date:
    """So many days after today."""
    return TODAY + dt.timedelta(days=days)


class World:
    """A crib, and short words to fill it with."""

    def __init__(self) -> None:
        connection = sqlite3.connect(":memory:", isolation_level=None)
        connection.execute("PRAGMA foreign_keys = ON")
        connection.execute("BEGIN")
        migrate(connection)
        connection.execute("COMMIT")
        self.crib = Crib(connection, in_memory=True)

    def sql(self, text: str, *values: object) -> None:
        self.crib.connection.execute(text, values)

    def supplier(self, name: str, lead_days: float = 5, minimum: float | None = None) -> None:
        self.sql("INSERT INTO supplier (name, lead_days, minimum_order) VALUES (?, ?, ?)", name, lead_days, minimum)

    def tool(self, tag: str, description: str, condition: str = "ok", count: float = 1, kind: str = "tool") -> None:
        self.item(tag, description, kind=kind, condition=condition)
        self.move("receive", tag, count, on=-400)

    def consumable(
        self,
        tag: str,
        description: str,
        unit: str = "each",
        pack: float = 1,
        minimum: float | None = None,
        maximum: float | None = None,
        supplier: str | None = None,
        cost: float | None = None,
        life: int | None = None,
    ) -> None:
        self.item(tag, description, unit, pack, "consumable")
        self.sql(
            "INSERT INTO consumable (tag, stock_unit, minimum, maximum, supplier, unit_cost, service_life_days) "
            "VALUES (?, ?, ?, ?, ?, ?, ?)",
            tag, unit, minimum, maximum, supplier, cost, life,
        )  # fmt: skip

    def item(
        self,
        tag: str,
        description: str,
        unit: str = "each",
        pack: float = 1,
        kind: str = "tool",
        condition: str = "ok",
    ) -> None:
        self.sql(
            "INSERT INTO item (tag, kind, description, unit, pack, condition, meaning) VALUES (?, ?, ?, ?, ?, ?, '{}')",
            tag, kind, description, unit, pack, condition,
        )  # fmt: skip

    def move(
        self,
        kind: str,
        tag: str,
        amount: float,
        on: int = 0,
        lot: str = "",
        expires: int | None = None,
        job: str = "",
        corrects: int | None = None,
    ) -> int:
        """Post one movement; its number."""
        if expires is not None:
            set_lot(self.crib, tag, lot, day(expires).isoformat())
        movement = Movement(
            MovementKind(kind), tag, parts(amount), "J. Sedge", day(on), lot=lot, job=job, corrects=corrects
        )
        return post(self.crib, movement, AT).id

    def use(self, tag: str, amount: float, on: int, job: str = "") -> None:
        """Issue and use up."""
        self.move("issue", tag, amount, on, job=job)
        self.move("use", tag, amount, on, job=job)

    def job(self, job: str, procedures: str, planned: dict[str, float] | None = None, state: str = "closed") -> None:
        self.sql(
            "INSERT INTO job (job, opened_at, day, by, procedures, state) VALUES (?, ?, ?, 'J. Sedge', ?, ?)",
            job, AT, TODAY.isoformat(), procedures, state,
        )  # fmt: skip
        for tag, amount in (planned or {}).items():
            self.sql("INSERT INTO job_consumable (job, tag, planned) VALUES (?, ?, ?)", job, tag, parts(amount))
