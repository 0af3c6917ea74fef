"""A crib of every past format opens: read from a copy in memory, written after it was brought up to date."""

from __future__ import annotations

import sqlite3
from pathlib import Path

import pytest

from cribkit.domain.stock.movement import Movement, MovementKind, digest
from cribkit.store import migrate
from cribkit.store.audit import audit
from cribkit.store.opening import open_crib
from tests.store.small import DAY


def old_crib(path: Path, migrations: tuple[str, ...], monkeypatch: pytest.MonkeyPatch) -> None:
    """A crib as a program with only these migrations left it: one item, one movement."""
    with monkeypatch.context() as patched:
        patched.setattr(migrate, "MIGRATIONS", migrations)
        patched.setattr(migrate, "FORMAT", len(migrations))
        connection = sqlite3.connect(path, isolation_level=None)
        connection.execute("BEGIN")
        migrate.migrate(connection)
    moved = Movement(MovementKind.RECEIVE, "SK-8", 2000, "A. Keeper", DAY, id=1, at="2026-11-25T08:00:00Z")
    sealed = digest("", moved)
    connection.execute(
        "INSERT INTO item (tag, kind, description, meaning) VALUES ('SK-8', 'tool', '8 mm socket', '{}')"
    )
    connection.execute(
        "INSERT INTO movement (id, at, day, by, kind, tag, amount, digest) VALUES (1, ?, ?, ?, ?, 'SK-8', 2000, ?)",
        (moved.at, DAY.isoformat(), moved.by, moved.kind.value, sealed),
    )
    connection.execute("INSERT INTO balance VALUES ('SK-8', '', 2000, 0)")
    connection.execute("INSERT INTO fact VALUES ('head', ?), ('reader', 'none')", (f"1:{sealed}",))
    connection.execute("COMMIT")
    connection.close()


@pytest.mark.parametrize("count", range(1, migrate.FORMAT), ids=lambda count: migrate.MIGRATIONS[count - 1])
def test_a_crib_of_a_past_format_is_read_and_brought_up_to_date(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, count: int
) -> None:
    path = tmp_path / "crib.db"
    old_crib(path, migrate.MIGRATIONS[:count], monkeypatch)
    before = path.read_bytes()
    with open_crib(path) as crib:
        assert (crib.must_have("SK-8").on_hand, crib.in_memory) == (2, True)
        assert crib.must_have("SK-8").meaning.family == "socket"
    assert path.read_bytes() == before, "reading never writes"
    with open_crib(path, write=True):
        pass
    with open_crib(path) as crib:
        assert (crib.must_have("SK-8").on_hand, crib.in_memory) == (2, False)
        assert audit(crib).problems == ()
