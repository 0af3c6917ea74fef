"""The audit finds every change behind the program's back and names the first broken row; copies are verified."""

from __future__ import annotations

import shutil
import sqlite3
from pathlib import Path

import pytest

from cribkit.domain.problem import BadInput, CribUnusable
from cribkit.domain.stock.movement import Movement, MovementKind, canonical, digest
from cribkit.store.audit import audit
from cribkit.store.backup import backup, restore
from cribkit.store.opening import open_crib
from cribkit.store.posting import post
from tests.store.small import DAY, make_crib

UNLOCK = "DROP TRIGGER movement_is_never_edited; DROP TRIGGER movement_is_never_deleted;"
LOCK = """
CREATE TRIGGER movement_is_never_edited BEFORE UPDATE ON movement BEGIN
    SELECT RAISE(ABORT, 'a movement is never edited: correct it with `cribkit undo`');
END;
CREATE TRIGGER movement_is_never_deleted BEFORE DELETE ON movement BEGIN
    SELECT RAISE(ABORT, 'a movement is never deleted: correct it with `cribkit undo`');
END;
"""


def found(path: Path, script: str, was: str = "") -> list[tuple[str, str]]:
    """What an audit finds after somebody ran a script on the file."""
    connection = sqlite3.connect(path)
    connection.executescript(script)
    connection.close()
    with open_crib(path) as crib:
        return [(problem.source, problem.code) for problem in audit(crib, was).problems]


def test_a_crib_that_nobody_touched_is_sound(tmp_path: Path) -> None:
    assert found(make_crib(tmp_path), "") == []


@pytest.mark.parametrize(
    ("script", "expected"),
    [
        ("UPDATE movement SET amount = 5000 WHERE id = 3", ("movement 3", "chain-broken")),
        ("UPDATE movement SET by = 'somebody else' WHERE id = 4", ("movement 4", "chain-broken")),
        ("UPDATE movement SET digest = 'abc' WHERE id = 5", ("movement 5", "chain-broken")),
        ("DELETE FROM movement WHERE id = 2", ("movement 3", "chain-broken")),
        ("DELETE FROM movement WHERE id = (SELECT max(id) FROM movement)", ("movements", "chain-cut")),
        ("UPDATE balance SET inside = 9000 WHERE tag = 'SK-8'", ("SK-8", "balance")),
        ("UPDATE loan SET holder = 'Nobody'", ("TW-2", "loan")),
        ("DELETE FROM loan", ("TW-2", "loan")),
        ("DELETE FROM item WHERE tag = 'SK-10'", ("balance row None", "dangling")),
        ("UPDATE fact SET value = '3:abc' WHERE name = 'head'", ("movements", "chain-cut")),
    ],
)
def test_a_change_behind_the_program_s_back_is_found(tmp_path: Path, script: str, expected: tuple[str, str]) -> None:
    assert expected in found(make_crib(tmp_path), f"{UNLOCK}{script};{LOCK}")


def test_only_the_first_broken_row_of_the_chain_is_named(tmp_path: Path) -> None:
    script = f"{UNLOCK}UPDATE movement SET note = 'x' WHERE id IN (4, 7);{LOCK}"
    assert [place for place, code in found(make_crib(tmp_path), script) if code == "chain-broken"] == ["movement 4"]


def test_a_missing_trigger_is_found(tmp_path: Path) -> None:
    assert found(make_crib(tmp_path), "DROP TRIGGER movement_is_never_edited") == [
        ("schema: movement_is_never_edited", "schema-changed")
    ]


def test_a_chain_forged_to_the_end_is_found_by_an_earlier_audit_s_note(tmp_path: Path) -> None:
    path = make_crib(tmp_path)
    with open_crib(path) as crib:
        noted = audit(crib).head
    assert found(path, "", was=noted[:24]) == []
    forge(path)
    assert found(path, "") == []
    assert found(path, "", was=noted[:24]) == [("movements", "past-changed")]


def forge(path: Path) -> None:
    """Change who posted what, and make every digest anew, as somebody could who has this program's source."""
    from dataclasses import replace

    from cribkit.store.movements import MOVEMENT, movement_of

    connection = sqlite3.connect(path)
    connection.executescript(UNLOCK)
    last = ""
    for row in connection.execute(f"{MOVEMENT} ORDER BY id").fetchall():
        movement = replace(movement_of(row), by="B. Smith")
        last = digest(last, movement)
        connection.execute("UPDATE movement SET by = ?, digest = ? WHERE id = ?", (movement.by, last, movement.id))
    connection.execute("UPDATE fact SET value = ? WHERE name = 'head'", (f"{movement.id}:{last}",))
    connection.executescript(LOCK)
    connection.commit()
    connection.close()


@pytest.mark.parametrize(
    "script",
    [
        "UPDATE movement SET amount = 1",
        "DELETE FROM movement",
        "INSERT OR REPLACE INTO movement SELECT * FROM movement WHERE id = 3",
        "INSERT INTO movement SELECT id + 100, at, day, by, kind, tag, lot, amount, holder, job, due, note, corrects, "
        "digest FROM movement WHERE id = 3",
        "UPDATE balance SET inside = -1",
        "INSERT INTO loan VALUES ('SK-8', '', 'X', '', 0, '2026-01-01', NULL)",
    ],
)
def test_the_file_itself_refuses_to_change_the_past(tmp_path: Path, script: str) -> None:
    connection = sqlite3.connect(make_crib(tmp_path))
    with pytest.raises(sqlite3.IntegrityError):
        connection.execute(script)


def test_the_digest_is_sha_256_over_the_canonical_form() -> None:
    """The form is documented, so that anybody can check the chain without this program: the digest here is what
    `printf '\\n%s' 'TEXT' | sha256sum` (GNU coreutils) prints."""
    movement = Movement(
        MovementKind.ISSUE, "SK-8", 1000, "M. Ashby", DAY, holder="R. Hölm", id=7, at="2026-11-25T09:00:00Z"
    )
    text = '[7,"2026-11-25T09:00:00Z","2026-11-25","M. Ashby","issue","SK-8","",1000,"R. Hölm","",null,"",null]'
    assert canonical(movement) == text
    assert digest("", movement) == "b1df15f68d9f918c29c65712ab70d3c1d669d9fd7b858136a6673e22adddac6d"


def test_a_backup_is_verified_and_restores_the_crib(tmp_path: Path) -> None:
    path, copy = make_crib(tmp_path), tmp_path / "copy.db"
    done = backup(path, copy)
    with open_crib(path, write=True) as crib, crib.posting():
        post(crib, Movement(MovementKind.SCRAP, "SK-8", 1000, "M. Ashby", DAY), "2026-11-25T09:00:00Z")
    with pytest.raises(BadInput, match="say --replace"):
        restore(path, copy)
    put_back = restore(path, copy, replace=True)
    with open_crib(path) as crib:
        assert (crib.must_have("SK-8").on_hand, audit(crib).head) == (2, done.audit.head)
    assert put_back.kept is not None
    with open_crib(put_back.kept) as crib:
        assert crib.must_have("SK-8").on_hand == 1


def test_a_backup_takes_no_other_file_s_place_unasked(tmp_path: Path) -> None:
    path, copy = make_crib(tmp_path), tmp_path / "copy.db"
    copy.write_text("something else")
    with pytest.raises(BadInput, match="already there"):
        backup(path, copy)
    assert copy.read_text() == "something else"
    backup(path, copy, replace=True)


def test_a_damaged_crib_is_kept_when_a_backup_takes_its_place(tmp_path: Path) -> None:
    path, copy = make_crib(tmp_path), tmp_path / "copy.db"
    backup(path, copy)
    path.write_bytes(b"not a database at all" * 100)
    done = restore(path, copy, replace=True)
    assert done.kept is not None
    assert done.kept.read_bytes().startswith(b"not a database")
    with open_crib(path) as crib:
        assert audit(crib).sound


def test_a_copy_that_is_not_sound_is_refused(tmp_path: Path) -> None:
    path, copy = make_crib(tmp_path), tmp_path / "copy.db"
    shutil.copy(path, copy)
    connection = sqlite3.connect(copy)
    connection.execute("UPDATE balance SET inside = 7000 WHERE tag = 'SK-8'")
    connection.commit()
    connection.close()
    with pytest.raises(CribUnusable, match="not sound"):
        restore(tmp_path / "other.db", copy)
    assert not (tmp_path / "other.db").exists()


HELD = (
    "INSERT INTO job (job, opened_at, day, by, state) "
    "VALUES ('wren-1', '2026-11-25T09:00:00Z', '2026-11-25', 'A', 'held');"
    "INSERT INTO job_hold (job, tag, what, amount, at, by) VALUES ('wren-1', 'SK-8', 'piece', 1000, '', 'A');"
)


@pytest.mark.parametrize(
    ("script", "expected"),
    [
        ("", []),
        ("UPDATE job SET state = 'closed'", [("job wren-1", "release")]),
        ("DELETE FROM job_hold", [("job wren-1", "release")]),
        ("UPDATE job_hold SET settled = 'found'", [("job wren-1", "release")]),
        ("UPDATE job_hold SET settled = 'found'; UPDATE job SET state = 'closed'", []),
    ],
)
def test_a_job_released_behind_the_program_s_back_is_found(
    tmp_path: Path, script: str, expected: list[tuple[str, str]]
) -> None:
    assert found(make_crib(tmp_path), HELD + script) == expected
