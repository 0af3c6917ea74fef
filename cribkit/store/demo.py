"""The demo crib: built in memory from the demo's CSV files."""

from __future__ import annotations

import datetime as dt
import sqlite3

from cribkit.store.crib import Crib
from cribkit.store.demo_folder import demo_folder
from cribkit.store.migrate import migrate
from cribkit.store.seed.folder import read_folder
from cribkit.store.seed.load import Entry, load
from cribkit.store.terms import reread

# When the demo's opening stock was entered: a fixed day of its invented world, so that the demo is always the same.
OPENED = Entry(by="demo", day=dt.date(2026, 11, 1), at="2026-11-01T08:00:00Z")


def demo_connection() -> sqlite3.Connection:
    """A connection to the demo crib."""
    return built()


def built() -> sqlite3.Connection:
    """The demo crib, made from its files."""
    connection = sqlite3.connect(":memory:", isolation_level=None)
    connection.execute("PRAGMA foreign_keys = ON")
    connection.execute("BEGIN")
    migrate(connection)
    reread(connection)
    connection.execute("COMMIT")
    load(Crib(connection), read_folder(demo_folder("seed_inventory")), OPENED)
    return connection
