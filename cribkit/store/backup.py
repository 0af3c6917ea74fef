"""Copies of the crib's file: made while others post, verified after writing, put back only when asked for."""

from __future__ import annotations

import os
import sqlite3
import tempfile
from dataclasses import dataclass
from pathlib import Path

from cribkit.domain.problem import BadInput
from cribkit.store.audit import Audit, audit
from cribkit.store.faults import unusable
from cribkit.store.opening import connect, make_private, open_crib


@dataclass(frozen=True, slots=True)
class Copied:
    """A copy that was made and verified."""

    path: Path
    audit: Audit
    kept: Path | None = None  # where the crib that was replaced is kept


def backup(path: Path, target: Path, replace: bool = False) -> Copied:
    """Copy the crib by SQLite's online backup, verify the copy, and put it in its place."""
    if target.exists() and not replace:
        raise BadInput.of("file-exists", "this file is already there", "choose another, or --replace.", str(target))
    try:
        with tempfile.TemporaryDirectory(dir=target.absolute().parent, prefix=".cribkit-") as beside:
            copy = Path(beside) / target.name
            make_private(copy)
            with open_crib(path) as crib:
                pour(crib.connection, copy)
            found = verified(copy)
            with copy.open("rb") as file:
                os.fsync(file.fileno())
            copy.replace(target)
    except OSError as error:
        raise BadInput.of(
            "cannot-write", f"cannot write here ({error.strerror})", "choose another place.", str(target)
        ) from error
    return Copied(target, found)


def restore(path: Path, source: Path, replace: bool = False) -> Copied:
    """Put a backup in the crib's place. A crib that is there is kept beside it, and replaced only when asked for.

    The crib's pages are replaced in one transaction, so that desks which have it open see either the old or the new.
    """
    found = verified(source)
    kept = None
    if path.exists():
        if not replace:
            todo = "say --replace to put the backup in its place; the crib is then kept beside it."
            raise BadInput.of("crib-exists", "there is a crib here already", todo, str(path))
        kept = put_aside(path)
    if not path.exists():
        make_private(path)
    with open_crib(source) as crib:
        pour(crib.connection, path)
    verified(path)
    return Copied(path, found, kept)


def put_aside(path: Path) -> Path:
    """Keep the crib that is to be replaced: a copy of it, or, if it cannot be read, the file itself."""
    number = 1
    while (kept := path.with_name(f"{path.name}.before-restore-{number}")).exists():
        number += 1
    try:
        connection = connect(path, "mode=rw")
        make_private(kept)
        try:
            pour(connection, kept)
        finally:
            connection.close()
    except sqlite3.Error:
        for end in ("", "-wal", "-shm"):
            if (file := path.with_name(path.name + end)).exists():
                file.replace(kept.with_name(kept.name + end))
    return kept


def pour(connection: sqlite3.Connection, path: Path) -> None:
    """Copy all pages into a file, in one transaction of that file."""
    target = connect(path, "mode=rw")
    try:
        connection.backup(target)
    finally:
        target.close()


def verified(path: Path) -> Audit:
    """The audit of a copy; CribUnusable if it is not sound."""
    with open_crib(path) as crib:
        found = audit(crib)
    if not found.sound:
        raise unusable("copy-not-sound", path, f"this copy is not sound: {found.problems[0]}", "use another backup.")
    return found
