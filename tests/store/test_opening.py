"""Opening: what is no crib is refused with a reason and a next step, and reading never writes."""

from __future__ import annotations

import os
import shutil
import sqlite3
import tempfile
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from cribkit.domain.problem import BadInput, CribUnusable
from cribkit.domain.stock.movement import Movement, MovementKind
from cribkit.store import opening
from cribkit.store.crib import Crib
from cribkit.store.migrate import FORMAT, statements
from cribkit.store.opening import file_system, network_warning, open_crib
from cribkit.store.posting import post
from tests.store.small import DAY, make_crib

JPEG = bytes.fromhex("ffd8ffe000104a46494600010100000100010000ffdb004300") + b"\x08" * 4000


def other_database(path: Path) -> None:
    connection = sqlite3.connect(path)
    connection.execute("CREATE TABLE note (text)")
    connection.commit()


def newer(path: Path) -> None:
    shutil.copy(make_crib(path.parent / "made"), path)
    connection = sqlite3.connect(path)
    connection.execute(f"PRAGMA user_version = {FORMAT + 1}")
    connection.close()


def damaged(path: Path) -> None:
    data = bytearray(make_crib(path.parent / "made").read_bytes())
    data[4096:] = b"\xff" * (len(data) - 4096)
    path.write_bytes(data)


UNUSABLE: dict[str, tuple[Callable[[Path], object], str]] = {
    "missing": (lambda path: None, "no-crib"),
    "a folder": (lambda path: path.mkdir(), "not-a-crib"),
    "a JPEG": (lambda path: path.write_bytes(JPEG), "not-a-crib"),
    "an empty file": (lambda path: path.touch(), "not-a-crib"),
    "text": (lambda path: path.write_text("tag,description\n" * 400), "not-a-crib"),
    "another program's database": (other_database, "not-a-crib"),
    "from a newer version": (newer, "crib-too-new"),
    "damaged": (damaged, "crib-damaged"),
}


@pytest.mark.parametrize("write", [False, True], ids=["to read", "to write"])
@pytest.mark.parametrize(("make", "code"), UNUSABLE.values(), ids=UNUSABLE.keys())
def test_what_is_no_crib_is_refused(tmp_path: Path, make: Callable[[Path], object], code: str, write: bool) -> None:
    (tmp_path / "made").mkdir()
    path = tmp_path / "crib.db"
    make(path)
    before = path.read_bytes() if path.is_file() else None
    with pytest.raises(CribUnusable) as refused, open_crib(path, write) as crib:
        crib.items()
    problem = refused.value.problems[0]
    assert (problem.code, problem.source, bool(problem.next)) == (code, str(path), True)
    assert refused.value.exit_code == 3
    if before is not None and code != "crib-damaged":
        assert path.read_bytes() == before, "what is refused is not touched"


def test_a_busy_crib_is_refused_after_the_wait(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    path = make_crib(tmp_path)
    monkeypatch.setenv("CRIBKIT_WAIT", "0.05")
    other = sqlite3.connect(path, isolation_level=None)
    other.execute("BEGIN IMMEDIATE")
    with pytest.raises(CribUnusable, match="another desk has kept this crib busy"):
        scrap(path, "SK-8")
    with open_crib(path) as crib:
        assert crib.items(), "readers are not held up by a desk that posts"
    other.close()


def test_a_reader_sees_one_moment(tmp_path: Path) -> None:
    path = make_crib(tmp_path)
    with open_crib(path) as reader:
        assert reader.must_have("SK-8").on_hand == 2
        scrap(path, "SK-8")
        assert reader.must_have("SK-8").on_hand == 2
    with open_crib(path) as reader:
        assert reader.must_have("SK-8").on_hand == 1


def scrap(path: Path, *tags: str) -> None:
    """Another desk takes these away, in one block."""
    with open_crib(path, write=True) as crib, crib.posting():
        for tag in tags:
            post(crib, Movement(MovementKind.SCRAP, tag, 1000, "A. Keeper", DAY), "2026-11-25T09:00:00Z")


def test_reading_leaves_no_file_behind_and_changes_none(tmp_path: Path) -> None:
    path = make_crib(tmp_path)
    before = path.read_bytes()
    with open_crib(path) as crib:
        crib.wrenches()
        with pytest.raises(sqlite3.OperationalError):
            crib.connection.execute("DELETE FROM supplier")
    assert path.read_bytes() == before
    assert sorted(found.name for found in tmp_path.iterdir()) == ["crib.db", "files"]


def read_without_write_permission(path: Path) -> str:
    """What a user who may only read finds: in a process of its own that gives its rights up first."""
    near, far = os.pipe()
    child = os.fork()
    if child == 0:
        try:
            if os.getuid() == 0:
                os.setgid(65534)
                os.setuid(65534)
            with open_crib(path) as crib:
                os.write(far, str(crib.must_have("SK-8").on_hand).encode())
        except BaseException as error:
            os.write(far, repr(error).encode())
        os._exit(0)
    os.waitpid(child, 0)
    return os.read(near, 10_000).decode()


def test_a_crib_in_a_folder_without_write_permission_can_be_read(tmp_path: Path, everybody: Path) -> None:
    path = everybody / "crib.db"
    shutil.copy(make_crib(tmp_path), path)
    path.chmod(0o444)
    everybody.chmod(0o555)
    assert read_without_write_permission(path) == "2.0"
    assert [found.name for found in everybody.iterdir()] == ["crib.db"]


def test_postings_that_are_still_in_the_wal_are_seen_without_write_permission(tmp_path: Path, everybody: Path) -> None:
    path = make_crib(tmp_path)
    keeper = sqlite3.connect(path)
    keeper.execute("PRAGMA wal_autocheckpoint = 0")
    keeper.execute("SELECT count(*) FROM item").fetchone()
    scrap(path, "SK-8")
    for name in ("crib.db", "crib.db-wal"):
        shutil.copy(tmp_path / name, everybody / name)
        (everybody / name).chmod(0o444)
    keeper.close()
    everybody.chmod(0o555)
    assert read_without_write_permission(everybody / "crib.db") == "1.0"


@pytest.fixture
def everybody() -> Iterator[Path]:
    """A folder to which every user can find the way.

    Not below pytest's own folder: each session that starts closes that one to other users, also for sessions that run.
    """
    with tempfile.TemporaryDirectory(prefix="everybody-") as name:
        folder = Path(name).resolve()
        folder.chmod(0o755)
        if os.getuid() == 0 and not all(part.stat().st_mode & 0o001 for part in folder.parents):
            pytest.skip(f"{folder.parent} is closed to the user whose rights this test takes: set TMPDIR")
        yield folder
        folder.chmod(0o755)  # so that its files can be removed


def test_an_older_reader_s_index_is_renewed_in_memory_to_read_and_in_the_file_to_write(tmp_path: Path) -> None:
    path = make_crib(tmp_path)
    connection = sqlite3.connect(path)
    connection.execute("UPDATE fact SET value = 'old' WHERE name = 'reader'")
    connection.execute("DELETE FROM item_term")
    connection.commit()
    connection.close()
    before = path.read_bytes()
    with open_crib(path) as crib:
        assert terms(crib) > 0
        assert crib.in_memory
    assert path.read_bytes() == before
    with open_crib(path, write=True):
        pass
    with open_crib(path) as crib:
        assert terms(crib) > 0
        assert not crib.in_memory


def terms(crib: Crib) -> int:
    """How many terms are stored."""
    return int(crib.connection.execute("SELECT count(*) FROM item_term").fetchone()[0])


def test_a_posting_is_whole_or_not_there(tmp_path: Path) -> None:
    path = make_crib(tmp_path)
    with pytest.raises(BadInput, match="SK-10: cannot scrap 1: only 0 in the crib"):
        scrap(path, "SK-8", "SK-8", "SK-10", "SK-10")
    with open_crib(path) as crib:
        assert crib.must_have("SK-8").on_hand == 2


@pytest.mark.parametrize(
    ("place", "kind"),
    [("/srv/share/crib.db", "nfs4"), ("/srv/share disk/crib.db", "cifs"), ("/home/crib.db", "ext4")],
)
def test_a_network_file_system_is_known_by_its_mount(tmp_path: Path, place: str, kind: str) -> None:
    mounts = tmp_path / "mounts"
    mounts.write_text(
        "/dev/sda1 / ext4 rw 0 0\nserver:/x /srv/share nfs4 rw 0 0\n//server/y /srv/share\\040disk cifs rw 0 0\n"
    )
    assert file_system(Path(place), mounts) == kind
    assert bool(network_warning(Path(place), mounts)) == (kind in opening.NETWORK)


def test_a_script_is_cut_into_whole_statements() -> None:
    script = "CREATE TABLE a (b); -- text;\nCREATE TRIGGER c BEFORE DELETE ON a BEGIN\n  SELECT 1;\nEND;\n"
    assert len(list(statements(script))) == 2
