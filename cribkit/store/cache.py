"""A small cache of texts by the content they were made from, in $XDG_CACHE_HOME/cribkit, else ~/.cache/cribkit
(XDG Base Directory Specification 0.8).

It never fails: where it cannot be read or written, or an entry is damaged, the text is simply made again. Only a
folder that belongs to this user and that nobody else may write to is trusted.
"""

from __future__ import annotations

import contextlib
import os
import tempfile
from collections.abc import Callable
from hashlib import sha256
from pathlib import Path

MOST = 2000  # entries of one room; the oldest go first


def cached(room: str, version: str, content: str, make: Callable[[], str | None]) -> str | None:
    """The text that `make` makes of `content`, from the cache if it was made before by this version.

    None is not kept: what could not be made is made again each time.
    """
    folder = _folder(room, version)
    name = sha256(content.encode("utf-8", "surrogatepass")).hexdigest()
    if folder and (found := _entry(folder / name)) is not None:
        return found
    text = make()
    if folder and text is not None:
        with contextlib.suppress(OSError):
            _keep(folder, name, text)
    return text


def forget(room: str, version: str, content: str) -> None:
    """Take out an entry that turned out to be of no use."""
    folder = _folder(room, version)
    if folder:
        with contextlib.suppress(OSError):
            (folder / sha256(content.encode("utf-8", "surrogatepass")).hexdigest()).unlink()


def _folder(room: str, version: str) -> Path | None:
    """Where entries of this version stand, whether it is there or not; None where there is no home."""
    named = os.environ.get("XDG_CACHE_HOME", "")
    try:
        top = Path(named) if Path(named).is_absolute() else Path.home() / ".cache"
    except RuntimeError:
        return None
    return top / "cribkit" / room / version


def _entry(path: Path) -> str | None:
    """A sound entry: its first line is the digest of the rest."""
    try:
        if not _ours(path.parent):
            return None
        digest, _, text = path.read_bytes().partition(b"\n")
    except (OSError, ValueError):
        return None
    if digest.decode("ascii", "replace") != sha256(text).hexdigest():
        return None
    return text.decode("utf-8")


def _ours(folder: Path) -> bool:
    """Does the folder belong to this user, and may nobody else write to it?"""
    if not hasattr(os, "getuid"):
        return True
    facts = folder.stat()
    return facts.st_uid == os.getuid() and not facts.st_mode & 0o022


def _keep(folder: Path, name: str, text: str) -> None:
    """Write beside it and put it in place at once; then make room."""
    folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    if not _ours(folder):
        return
    data = text.encode("utf-8")
    handle, beside = tempfile.mkstemp(dir=folder, prefix=".")  # mkstemp makes it readable by this user only
    try:
        with os.fdopen(handle, "wb") as out:
            out.write(sha256(data).hexdigest().encode("ascii") + b"\n" + data)
        Path(beside).replace(folder / name)
    except BaseException:
        Path(beside).unlink(missing_ok=True)
        raise
    _prune(folder)


def _prune(folder: Path) -> None:
    """Other versions go; of this one the newest stay."""
    for other in folder.parent.iterdir():
        if other != folder:
            _empty(other)
    entries = sorted(folder.iterdir(), key=lambda path: path.stat().st_mtime)
    for path in entries[: max(0, len(entries) - MOST)]:
        path.unlink(missing_ok=True)


def _empty(folder: Path) -> None:
    """Take out a folder of entries; what is not a plain entry stays."""
    with contextlib.suppress(OSError):
        for path in folder.iterdir():
            path.unlink()
        folder.rmdir()
