"""What SQLite's errors mean to the people of the crib."""

from __future__ import annotations

import sqlite3
from pathlib import Path

from cribkit.domain.problem import CribUnusable, Problem

# SQLite result code -> (our code, what is wrong, what to do).
FAULTS: dict[int, tuple[str, str, str]] = {
    sqlite3.SQLITE_BUSY: (
        "crib-busy",
        "another desk has kept this crib busy for too long",
        "nothing was changed; run the command again, and look for a cribkit that hangs.",
    ),
    sqlite3.SQLITE_READONLY: (
        "crib-read-only",
        "this crib cannot be written",
        "nothing was changed; ask its owner for write permission on the file and its folder.",
    ),
    sqlite3.SQLITE_PERM: (
        "crib-no-permission",
        "this crib may not be opened by you",
        "ask its owner for permission.",
    ),
    sqlite3.SQLITE_IOERR: (
        "crib-disk",
        "the disk failed or is full while the crib was used",
        "nothing was posted; free some space or look after the disk, then run `cribkit audit`.",
    ),
    sqlite3.SQLITE_FULL: (
        "crib-disk-full",
        "the disk is full",
        "nothing was posted; free some space and run the command again.",
    ),
    sqlite3.SQLITE_CORRUPT: (
        "crib-damaged",
        "this crib is damaged",
        "keep the file as it is, and `cribkit restore` the last backup.",
    ),
    sqlite3.SQLITE_NOTADB: (
        "not-a-crib",
        "this file is not a crib",
        "name the crib with --crib FILE, or make one with `cribkit load DIR`.",
    ),
    sqlite3.SQLITE_CANTOPEN: (
        "crib-cannot-open",
        "this crib cannot be opened",
        "see whether the file and its folder may be read by you.",
    ),
}
FAULTS[sqlite3.SQLITE_LOCKED] = FAULTS[sqlite3.SQLITE_PROTOCOL] = FAULTS[sqlite3.SQLITE_BUSY]


def unusable(code: str, path: Path | str, message: str, todo: str) -> CribUnusable:
    """The crib cannot be used: one problem whose source is the file."""
    return CribUnusable(Problem(source=str(path), code=code, message=message, next=todo))


def from_sqlite(error: sqlite3.Error, path: Path | str) -> CribUnusable | None:
    """What to tell a person about this error; None where the fault is the program's own."""
    result = getattr(error, "sqlite_errorcode", None)
    known = FAULTS.get(result & 0xFF) if result is not None else None
    if known is None and isinstance(error, sqlite3.OperationalError) and "decode" in str(error):
        known = FAULTS[sqlite3.SQLITE_CORRUPT]  # text in it is not UTF-8
    if known is None:
        return None
    code, message, todo = known
    return unusable(code, path, f"{message} (SQLite: {error})", todo)
