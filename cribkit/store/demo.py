"""The demo crib: built in memory from the demo's CSV files, and kept in the cache until files or program change."""

from __future__ import annotations

import base64
import datetime as dt
import sqlite3
from pathlib import Path

from cribkit.store.cache import cached
from cribkit.store.demo_folder import demo_folder
from cribkit.store.migrate import FORMAT, migrate

OPENED = dt.date(2026, 11, 1)  # when its opening stock was entered: a fixed day, so that the demo is always the same


def demo_connection() -> sqlite3.Connection:
    """A connection to the demo crib in memory."""
    from cribkit.domain.wording import READER_VERSION

    folder = demo_folder("seed_inventory")
    files = "\0".join(path.read_text("utf-8", "replace") for path in sorted(folder.glob("*.csv")))
    image = cached("demo-crib", f"{FORMAT}-{READER_VERSION}", files, lambda: built(folder))
    connection = sqlite3.connect(":memory:", isolation_level=None)
    connection.deserialize(base64.b64decode(image or built(folder)))
    connection.execute("PRAGMA foreign_keys = ON")
    return connection


def built(folder: Path) -> str:
    """The image of the demo crib, made from its files."""
    from cribkit.store.crib import Crib
    from cribkit.store.posting import Entry
    from cribkit.store.seed.folder import read_folder
    from cribkit.store.seed.load import load
    from cribkit.store.terms import reread

    connection = sqlite3.connect(":memory:", isolation_level=None)
    connection.execute("PRAGMA foreign_keys = ON")
    connection.execute("BEGIN")
    migrate(connection)
    reread(connection)
    connection.execute("COMMIT")
    load(Crib(connection), read_folder(folder), Entry("demo", OPENED, f"{OPENED}T08:00:00Z"))
    image = base64.b64encode(connection.serialize()).decode("ascii")
    connection.close()
    return image
