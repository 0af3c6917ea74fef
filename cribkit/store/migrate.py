"""Migrations: named and ordered, each in one transaction with its own record, never edited after release.

A migration is a file `migrations/NAME.sql` and its name at the end of `MIGRATIONS`. The number of migrations that a
file has seen stands in its `user_version`, so that opening an up-to-date crib costs one read of the header.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Callable, Iterator
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from sqlite_utils import Database

MIGRATIONS = ("0001_stock", "0002_orders", "0003_scans", "0004_calibration", "0005_said", "0006_squares")
FORMAT = len(MIGRATIONS)
APPLICATION = 0x43524942  # "CRIB" in the header of the file


def migrate(connection: sqlite3.Connection) -> None:
    """Bring the open crib to this program's format. Call it inside a transaction."""
    from sqlite_utils import Database
    from sqlite_utils.migrations import Migrations

    ordered = Migrations("cribkit")
    for name in MIGRATIONS:
        ordered(name=name)(_step(name))
    ordered.apply(Database(connection, recursive_triggers=False, execute_plugins=False))
    connection.execute(f"PRAGMA application_id = {APPLICATION}")
    connection.execute(f"PRAGMA user_version = {FORMAT}")


def _step(name: str) -> Callable[[Database], None]:
    """The function of one migration, for sqlite-utils."""

    from importlib.resources import files

    def step(db: Database, /) -> None:
        for statement in statements((files("cribkit.store") / "migrations" / f"{name}.sql").read_text("utf-8")):
            db.conn.execute(statement)

    return step


def statements(script: str) -> Iterator[str]:
    """The statements of a script one by one: `executescript` would commit the transaction first."""
    lines: list[str] = []
    for line in script.splitlines():
        lines.append(line)
        if line.rstrip().endswith(";") and sqlite3.complete_statement("\n".join(lines)):
            yield "\n".join(lines)
            lines.clear()
