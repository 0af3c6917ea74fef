"""A small cache of texts by the content they were made from, in $XDG_CACHE_HOME/cribkit, else ~/.cache/cribkit
(XDG Base Directory Specification 0.8).

It never fails: where it cannot be read or written, or an entry is damaged, the text is simply made again. Only a
folder that belongs to this user and that nobody else may write to is trusted.

An entry holds the whole content that it was made from, which is compared before it is used; its name is a checksum
only, because a cryptographic digest costs 3 ms to import (docs/performance.md).
"""

from __future__ import annotations

import contextlib
import os
from collections.abc import Callable
from functools import cache
from pathlib import Path
from typing import Any
from zlib import crc32

import cribkit

MOST = 2000  # entries of one room; the oldest go first
HEAD = 29  # letters of an entry's first line: two lengths and a checksum


def cached(room: str, version: str, content: str, make: Callable[[], str | None]) -> str | None:
    """The text that `make` makes of `content`, from the cache if it was made before by this version.

    None is not kept: what could not be made is made again each time.
    """
    folder = _folder(room, version)
    data = content.encode("utf-8", "surrogatepass")
    if folder and (found := _entry(folder, data)) is not None:
        return found
    text = make()
    if folder and text is not None:
        with contextlib.suppress(OSError):
            _keep(folder, data, text.encode("utf-8", "surrogatepass"))
    return text


def remembered_toml(text: str) -> dict[str, Any]:
    """What TOML text says; a text that was parsed before costs no parser."""
    import json

    from cribkit.domain.tables import parse_toml

    return dict(json.loads(cached("tables", cribkit.__version__, text, lambda: json.dumps(parse_toml(text))) or "{}"))


def remembered(name: str, make: Callable[[], str]) -> str:
    """What is worked out of the tables alone, until any table or reader changes."""
    return cached("derived", f"{cribkit.__version__}-{program()}", name, make) or make()


def forget(room: str, version: str, content: str) -> None:
    """Take out an entry that turned out to be of no use."""
    folder = _folder(room, version)
    if folder:
        with contextlib.suppress(OSError):
            (folder / _name(content.encode("utf-8", "surrogatepass"))).unlink()


@cache
def program() -> str:
    """A mark of the readers that this program is made of: any change of their code or tables gives another.

    Versions raised by hand are forgotten; what is cached must never outlive the reader that made it.
    """
    domain = Path(cribkit.__file__).parent / "domain"
    folders = [domain, *(Path(entry.path) for entry in os.scandir(domain) if entry.is_dir())]
    folders += [folder / "data" for folder in folders if (folder / "data").is_dir()]
    facts = sorted(
        (entry.path, facts.st_size, facts.st_mtime_ns)
        for folder in folders
        for entry in os.scandir(folder)
        if entry.name.endswith((".py", ".toml")) and (facts := entry.stat())
    )
    return f"{crc32(repr(facts).encode('utf-8', 'surrogateescape')):08x}"


def _folder(room: str, version: str) -> Path | None:
    """Where entries of this version stand, whether it is there or not; None where there is no home."""
    named = os.environ.get("XDG_CACHE_HOME", "")
    try:
        top = Path(named) if Path(named).is_absolute() else Path.home() / ".cache"
    except RuntimeError:
        return None
    return top / "cribkit" / room / version


def _name(content: bytes) -> str:
    return f"{crc32(content):08x}-{len(content):x}"


def _head(content: bytes, text: bytes) -> bytes:
    """Lengths of content and text, and a checksum of the text: damage shows."""
    return f"{len(content):09d} {len(text):09d} {crc32(text):08x}\n".encode("ascii")


def _entry(folder: Path, content: bytes) -> str | None:
    """The text of a sound entry that was made from exactly this content."""
    try:
        if not _ours(folder):
            return None
        data = (folder / _name(content)).read_bytes()
    except (OSError, ValueError):
        return None
    start = HEAD + len(content)
    if data[:HEAD] != _head(content, data[start:]) or data[HEAD:start] != content:
        return None
    return data[start:].decode("utf-8", "surrogatepass")


def _ours(folder: Path) -> bool:
    """Does the folder belong to this user, and may nobody else write to it?"""
    if not hasattr(os, "getuid"):
        return True
    facts = folder.stat()
    return facts.st_uid == os.getuid() and not facts.st_mode & 0o022


def _keep(folder: Path, content: bytes, text: bytes) -> None:
    """Write beside it and put it in place at once; then make room."""
    import tempfile

    folder.mkdir(mode=0o700, parents=True, exist_ok=True)
    if not _ours(folder):
        return
    handle, beside = tempfile.mkstemp(dir=folder, prefix=".")  # mkstemp makes it readable by this user only
    try:
        with os.fdopen(handle, "wb") as out:
            out.write(_head(content, text) + content + text)
        Path(beside).replace(folder / _name(content))
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
