"""The cache of texts: it saves work, and it never fails."""

import os
from pathlib import Path

import pytest

from cribkit.store import cache
from cribkit.store.cache import cached


@pytest.fixture
def home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """An empty cache folder."""
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path))
    return tmp_path


class Maker:
    """Makes a text and counts how often."""

    def __init__(self, text: str | None = "made\nof ½") -> None:
        self.text, self.calls = text, 0

    def __call__(self) -> str | None:
        self.calls += 1
        return self.text


def test_the_same_content_is_made_once(home: Path) -> None:
    make = Maker()
    assert [cached("room", "1", "content", make) for _ in range(3)] == ["made\nof ½"] * 3
    assert make.calls == 1


def test_other_content_and_another_version_are_made_anew(home: Path) -> None:
    make = Maker()
    for version, content in [("1", "a"), ("1", "b"), ("2", "a")]:
        cached("room", version, content, make)
    assert make.calls == 3


def test_older_versions_go_when_a_newer_one_writes(home: Path) -> None:
    for version in ("1", "2", "3"):
        cached("room", version, "a", Maker())
    assert [path.name for path in (home / "cribkit" / "room").iterdir()] == ["3"]


def test_only_so_many_entries_stay(home: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(cache, "MOST", 5)
    for number in range(12):
        cached("room", "1", str(number), Maker())
    assert len(list((home / "cribkit" / "room" / "1").iterdir())) == 5


def test_what_could_not_be_made_is_not_kept(home: Path) -> None:
    make = Maker(None)
    assert [cached("room", "1", "a", make), cached("room", "1", "a", make)] == [None, None]
    assert make.calls == 2


def test_what_fails_to_be_made_says_so_each_time(home: Path) -> None:
    def make() -> str:
        raise ValueError("no")

    for _ in range(2):
        with pytest.raises(ValueError, match="no"):
            cached("room", "1", "a", make)


def only_entry(home: Path) -> Path:
    """The one file in the cache."""
    (path,) = (path for path in home.rglob("*") if path.is_file())
    return path


@pytest.mark.parametrize(
    "damage", [b"", b"\xff\xd8\xff\xe0", b"0" * 64 + b"\nmade", b"made", b"\n\n\n"], ids=lambda data: repr(data[:8])
)
def test_a_damaged_entry_is_made_anew(home: Path, damage: bytes) -> None:
    make = Maker()
    cached("room", "1", "a", make)
    only_entry(home).write_bytes(damage)
    assert cached("room", "1", "a", make) == make.text
    assert cached("room", "1", "a", make) == make.text
    assert make.calls == 2


def test_contents_with_one_checksum_do_not_answer_for_each_other(home: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(cache, "crc32", lambda data: 1)
    assert cached("room", "1", "one", Maker("1")) == "1"
    assert cached("room", "1", "two", Maker("2")) == "2"
    assert cached("room", "1", "one", Maker("1")) == "1"


def test_a_cut_off_entry_is_made_anew(home: Path) -> None:
    make = Maker()
    cached("room", "1", "a", make)
    path = only_entry(home)
    path.write_bytes(path.read_bytes()[:-3])
    assert cached("room", "1", "a", make) == make.text
    assert make.calls == 2


def test_entries_are_for_the_user_alone(home: Path) -> None:
    cached("room", "1", "a", Maker())
    path = only_entry(home)
    assert path.stat().st_mode & 0o777 == 0o600
    assert path.parent.stat().st_mode & 0o777 == 0o700


def test_a_folder_that_others_may_write_to_is_not_trusted(home: Path) -> None:
    make = Maker()
    cached("room", "1", "a", make)
    only_entry(home).parent.chmod(0o777)
    assert cached("room", "1", "a", make) == make.text
    assert make.calls == 2


def test_a_home_that_is_a_file_is_no_reason_to_fail(home: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (home / "file").write_text("x")
    monkeypatch.setenv("XDG_CACHE_HOME", str(home / "file"))
    assert cached("room", "1", "a", Maker()) == "made\nof ½"


@pytest.mark.skipif(os.name != "posix" or os.geteuid() == 0, reason="root may write everywhere")
def test_a_read_only_home_is_no_reason_to_fail(home: Path) -> None:
    home.chmod(0o500)
    assert cached("room", "1", "a", Maker()) == "made\nof ½"
    home.chmod(0o700)


def test_a_full_disk_is_no_reason_to_fail(home: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def full(*args: object, **named: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr("tempfile.mkstemp", full)
    assert cached("room", "1", "a", Maker()) == "made\nof ½"


def test_without_a_home_nothing_is_kept(monkeypatch: pytest.MonkeyPatch) -> None:
    def homeless() -> Path:
        raise RuntimeError("Could not determine home directory.")

    monkeypatch.setenv("XDG_CACHE_HOME", "relative/paths/are/ignored")  # XDG Base Directory Specification 0.8
    monkeypatch.setattr(Path, "home", homeless)
    make = Maker()
    assert [cached("room", "1", "a", make) for _ in range(2)] == ["made\nof ½"] * 2
    assert make.calls == 2
