"""One place opens the crib's file, sets its pragmas and refuses what it cannot use.

Reading never writes: a crib that an older program wrote, or whose descriptions an older reader understood, is
brought up to date in a copy in memory; the next posting does it in the file.
"""

from __future__ import annotations

import os
import shutil
import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from cribkit.domain.problem import Problem
from cribkit.store.crib import Crib
from cribkit.store.faults import from_sqlite, unusable
from cribkit.store.migrate import APPLICATION, FORMAT, migrate
from cribkit.store.terms import reader_is_behind, reread

WAIT = 30.0  # seconds that a command waits for other desks; CRIBKIT_WAIT sets another value
PRIVATE = 0o600  # a crib holds names of people: it belongs to its owner alone until the owner shares it
# File systems on which SQLite's locks cannot be trusted (sqlite.org, "How To Corrupt An SQLite Database File", 2.1).
NETWORK = {"nfs", "nfs4", "cifs", "smb3", "smbfs", "afs", "9p", "ncpfs", "glusterfs", "ceph", "fuse.sshfs", "davfs"}


@contextmanager
def open_crib(path: Path, write: bool = False, create: bool = False) -> Iterator[Crib]:
    """The crib in this file. A reader sees one moment of it for as long as it is open."""
    with faults_told(path):
        connection, made = (open_to_write(path, create), False) if write else open_to_read(path)
    try:
        with faults_told(path):
            warnings = network_warning(path) if write else ()
            yield Crib(connection, path=path, warnings=warnings, in_memory=made)
    finally:
        close(connection)


@contextmanager
def demo_crib() -> Iterator[Crib]:
    """A throw-away crib in memory from the seed inventory that comes with the program."""
    from cribkit.store.demo import demo_connection

    connection = demo_connection()
    try:
        yield Crib(connection, in_memory=True)
    finally:
        connection.close()


@contextmanager
def faults_told(path: Path) -> Iterator[None]:
    """What SQLite cannot do becomes a message for people."""
    try:
        yield
    except sqlite3.Error as error:
        told = from_sqlite(error, path)
        if told is None:
            raise
        raise told from error


def close(connection: sqlite3.Connection) -> None:
    """Close without waiting: an open transaction was not committed and is not wanted."""
    if connection.in_transaction:
        connection.rollback()
    connection.close()


def open_to_read(path: Path) -> tuple[sqlite3.Connection, bool]:
    """A connection for reading, and whether it is a copy in memory."""
    must_be_there(path)
    try:
        connection = connect(path, "mode=rw")  # SQLite itself falls back to reading where it may not write
        connection.execute("PRAGMA query_only = ON")
        check_header(connection, path)
    except sqlite3.OperationalError as error:
        if error.sqlite_errorcode & 0xFF not in (sqlite3.SQLITE_CANTOPEN, sqlite3.SQLITE_READONLY):
            raise
        connection = connect_where_nothing_may_be_written(path)
        check_header(connection, path)
    connection.execute("BEGIN")
    if version(connection) == FORMAT and not reader_is_behind(connection):
        return connection, False
    return renewed_in_memory(connection), True


def connect(path: Path, query: str) -> sqlite3.Connection:
    """A connection that begins and ends transactions only when told to."""
    wait = float(os.environ.get("CRIBKIT_WAIT", WAIT))
    return sqlite3.connect(f"{path.absolute().as_uri()}?{query}", uri=True, timeout=wait, isolation_level=None)


def connect_where_nothing_may_be_written(path: Path) -> sqlite3.Connection:
    """SQLite wants to write beside a file in WAL mode even to read it: where it may not, take the file as it is.

    If postings still stand in the -wal file, that would miss them: then file and -wal are copied first.
    """
    wal = path.with_name(f"{path.name}-wal")
    if not (wal.exists() and wal.stat().st_size):
        return connect(path, "mode=ro&immutable=1")
    import tempfile

    with tempfile.TemporaryDirectory(prefix="cribkit-") as folder:
        for file in (path, wal):
            shutil.copy(file, folder)
        copy = connect(Path(folder) / path.name, "mode=rw")
        return in_memory(copy)


def in_memory(connection: sqlite3.Connection) -> sqlite3.Connection:
    """A copy of the whole crib in memory; the original is closed."""
    memory = sqlite3.connect(":memory:", isolation_level=None)
    connection.backup(memory)
    close(connection)
    return memory


def renewed_in_memory(connection: sqlite3.Connection) -> sqlite3.Connection:
    """A copy in memory, brought to this program's format and reader."""
    connection.execute("ROLLBACK")
    memory = in_memory(connection)
    memory.execute("BEGIN")
    if version(memory) < FORMAT:
        migrate(memory)
    reread(memory)
    return memory


def open_to_write(path: Path, create: bool) -> sqlite3.Connection:
    """A connection for postings, brought up to date."""
    if not (create and not path.exists()):
        must_be_there(path)
    if not path.exists():
        make_private(path)
    connection = connect(path, "mode=rw")
    if path.stat().st_size:
        check_header(connection, path)
    elif not create:
        raise not_a_crib(path)
    connection.execute("PRAGMA journal_mode = WAL")
    connection.execute("PRAGMA synchronous = FULL")  # a posting that was acknowledged survives a power cut
    connection.execute("PRAGMA foreign_keys = ON")
    bring_up_to_date(connection)
    return connection


def make_private(path: Path) -> None:
    """An empty file that only its owner may read; SQLite gives its companion files the same permissions."""
    try:
        os.close(os.open(path, os.O_CREAT | os.O_EXCL | os.O_WRONLY, PRIVATE))
    except FileExistsError:
        return  # another desk was faster
    except OSError as error:
        raise unusable(
            "crib-cannot-be-made", path, f"no crib can be made here ({error.strerror})", "choose another place."
        ) from error


def bring_up_to_date(connection: sqlite3.Connection) -> None:
    """Migrate, and read the descriptions again if the reader has changed."""
    if version(connection) == FORMAT and not reader_is_behind(connection):
        return
    connection.execute("BEGIN IMMEDIATE")
    try:
        if version(connection) < FORMAT:
            migrate(connection)
        if reader_is_behind(connection):
            reread(connection)
        connection.execute("COMMIT")
    except BaseException:
        close(connection)
        raise


def version(connection: sqlite3.Connection) -> int:
    """The format of the crib: how many migrations it has seen."""
    return int(connection.execute("PRAGMA user_version").fetchone()[0])


def check_header(connection: sqlite3.Connection, path: Path) -> None:
    """Refuse what is not a crib, and what a newer program wrote."""
    application = connection.execute("PRAGMA application_id").fetchone()[0]
    connection.execute("SELECT count(*) FROM sqlite_master").fetchone()  # a file that is not SQLite fails here
    if application != APPLICATION:
        raise not_a_crib(path)
    if (found := version(connection)) > FORMAT:
        raise unusable(
            "crib-too-new",
            path,
            f"this crib was written by a newer cribkit (format {found}; this program knows {FORMAT})",
            "install the newer cribkit on this machine too.",
        )


def not_a_crib(path: Path) -> Exception:
    """A SQLite file of another program, or an empty file."""
    return unusable(
        "not-a-crib",
        path,
        "this file is not a crib",
        "name the crib with --crib FILE, or make one with `cribkit load DIR`.",
    )


def must_be_there(path: Path) -> None:
    """A missing crib, a folder and a file without permission get their own words."""
    if path.is_dir():
        raise unusable("not-a-crib", path, "this is a folder, not a crib", "name the crib's file with --crib FILE.")
    if not path.exists():
        raise unusable(
            "no-crib", path, "there is no crib here", "make one with `cribkit load DIR`, or try a command with --demo."
        )
    if not os.access(path, os.R_OK):
        raise unusable("crib-no-permission", path, "this crib may not be read by you", "ask its owner for permission.")


def network_warning(path: Path, mounts: Path = Path("/proc/mounts")) -> tuple[Problem, ...]:
    """A warning where several desks on different machines could damage the file."""
    kind = file_system(path, mounts)
    if kind not in NETWORK:
        return ()
    message = f"this crib is on a network file system ({kind}), where SQLite's locks cannot be trusted"
    todo = "keep it on a disk of this machine and let the other desks work here."
    return (Problem(source=str(path), code="crib-on-network", message=message, next=todo),)


def file_system(path: Path, mounts: Path) -> str:
    """The kind of file system that a path is on; "" where this machine does not say."""
    try:
        lines = mounts.read_text("utf-8", "replace").splitlines()
    except OSError:
        return ""
    folders = {Path(field[1].replace("\\040", " ")): field[2] for line in lines if len(field := line.split()) > 2}
    return next((folders[folder] for folder in path.resolve().parents if folder in folders), "")
