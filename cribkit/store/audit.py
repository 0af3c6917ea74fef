"""Prove that the crib's file is whole and that nobody changed the past."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from dataclasses import dataclass

from cribkit.domain.problem import Problem
from cribkit.domain.stock.ledger import Ledger
from cribkit.domain.stock.thousandths import whole
from cribkit.store.calibrations import broken_line
from cribkit.store.crib import Crib
from cribkit.store.migrate import migrate
from cribkit.store.movements import MOVEMENT, movement_of
from cribkit.store.posting import HEAD

RESTORE = "keep this file as it is, and `cribkit restore` the last backup."
COMPARE = "compare with the last backup; somebody wrote to this file without cribkit."

ENOUGH = 16  # hexadecimal digits of a digest: nobody can make another row with the same


@dataclass(frozen=True, slots=True)
class Audit:
    """What an audit found. `head` is "COUNT:DIGEST": note it down, and a later audit can prove that all of it stood."""

    movements: int
    head: str
    problems: tuple[Problem, ...]

    @property
    def sound(self) -> bool:
        """Whether every rule holds."""
        return not self.problems


def audit(crib: Crib, was: str = "") -> Audit:
    """Check the file, its schema, the chain of movements, the balances kept from them, and an earlier head."""
    connection = crib.connection
    ledger = Ledger()
    for row in connection.execute(f"{MOVEMENT} ORDER BY id"):
        ledger.apply(movement_of(row))
    head = f"{ledger.last}:{ledger.head}"
    problems = [
        *integrity(connection),
        *schema(connection),
        *ledger.problems,
        *end_of_chain(connection, head),
        *wrench_chain(crib),
        *balances(connection, ledger),
        *loans(connection, ledger),
        *releases(connection),
        *earlier(connection, was),
    ]
    return Audit(ledger.last, head, tuple(problems))


def integrity(connection: sqlite3.Connection) -> Iterator[Problem]:
    """SQLite's own checks of the file and its references."""
    for (line,) in connection.execute("PRAGMA integrity_check(20)"):
        if line != "ok":
            yield Problem("file", "damaged", str(line), RESTORE)
    for table, row, parent, _ in connection.execute("PRAGMA foreign_key_check"):
        yield Problem(f"{table} row {row}", "dangling", f"it refers to a {parent} that is not there", COMPARE)


def schema(connection: sqlite3.Connection) -> Iterator[Problem]:
    """Tables, checks and triggers are those of the migrations."""
    fresh = sqlite3.connect(":memory:", isolation_level=None)
    fresh.execute("BEGIN")
    migrate(fresh)
    want, have = parts_of(fresh), parts_of(connection)
    for name in sorted(want.keys() | have.keys()):
        if want.get(name) != have.get(name):
            what = "missing" if name not in have else "changed" if name in want else "not ours"
            yield Problem(f"schema: {name}", "schema-changed", f"this part of the file is {what}", COMPARE)
    fresh.close()


def parts_of(connection: sqlite3.Connection) -> dict[str, str]:
    """Tables, indexes and triggers by name, with their text."""
    rows = connection.execute("SELECT name, sql FROM sqlite_master WHERE sql IS NOT NULL AND name NOT LIKE 'sqlite_%'")
    return dict(rows.fetchall())


def end_of_chain(connection: sqlite3.Connection, head: str) -> Iterator[Problem]:
    """The noted end of the chain is its end: nothing was cut off."""
    row = connection.execute("SELECT value FROM fact WHERE name = ?", (HEAD,)).fetchone()
    noted = row[0] if row else "0:"
    if noted != head:
        message = f"the chain ends at movement {head.partition(':')[0]}, noted was {noted.partition(':')[0]}"
        yield Problem("movements", "chain-cut", message, COMPARE)


def wrench_chain(crib: Crib) -> Iterator[Problem]:
    """The chain of certificates and events of the torque wrenches is whole."""
    line = broken_line(crib)
    if line is not None:
        yield Problem(f"wrench_event {line}", "chain-broken", "a certificate or event was changed here", COMPARE)


def balances(connection: sqlite3.Connection, ledger: Ledger) -> Iterator[Problem]:
    """Each kept balance is the sum of its movements."""
    kept = {
        (tag, lot): (a, b) for tag, lot, a, b in connection.execute("SELECT tag, lot, inside, outside FROM balance")
    }
    for key in sorted(kept.keys() | ledger.balances.keys()):
        have, want = kept.get(key, (0, 0)), ledger.balances.get(key, (0, 0))
        if have != want:
            said, true = (f"{whole(pair[0]):g} in and {whole(pair[1]):g} out" for pair in (have, want))
            yield Problem(" lot ".join(filter(None, key)), "balance", f"kept is {said}, movements say {true}", COMPARE)


def loans(connection: sqlite3.Connection, ledger: Ledger) -> Iterator[Problem]:
    """Each kept loan is the sum of its movements."""
    rows = connection.execute("SELECT tag, lot, holder, job, amount FROM loan")
    kept = {(tag, lot, holder, job): amount for tag, lot, holder, job, amount in rows}
    for key in sorted(kept.keys() | ledger.loans.keys()):
        have, want = kept.get(key, 0), ledger.loans.get(key, 0)
        if have != want:
            message = f"{key[2] or 'nobody'} is noted with {whole(have):g}, movements say {whole(want):g}"
            yield Problem(key[0], "loan", message, COMPARE)


def releases(connection: sqlite3.Connection) -> Iterator[Problem]:
    """No job is closed while it misses something that is not found and not given up; and none is held for nothing."""
    query = (
        "SELECT job.job, state, group_concat(DISTINCT job_hold.tag) FROM job "
        "LEFT JOIN job_hold ON job_hold.job = job.job AND settled IS NULL GROUP BY job.job "
        "HAVING (state = 'closed') = (count(job_hold.id) > 0) AND state <> 'open' ORDER BY job.job"
    )
    for job, state, tags in connection.execute(query):
        why = f"it is held for {tags}" if tags else "nothing is missing"
        yield Problem(f"job {job}", "release", f"it is noted as {state}, but {why}", COMPARE)


def earlier(connection: sqlite3.Connection, was: str) -> Iterator[Problem]:
    """The head of an earlier audit still stands in the chain."""
    if not was:
        return
    number, _, digest = was.partition(":")
    row = connection.execute("SELECT digest FROM movement WHERE id = ?", (number,)).fetchone()
    if row is None or len(digest) < ENOUGH or not row[0].startswith(digest):
        message = f"movement {number} does not carry the digest of the earlier audit"
        yield Problem("movements", "past-changed", message, COMPARE)
