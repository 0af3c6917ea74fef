"""The line on which each table and key of a TOML text stands; the parser of the standard library does not tell.

The text has been parsed already, so that only valid TOML (v1.0.0) has to be understood here.
"""

from __future__ import annotations

import itertools
import re
from collections.abc import Iterator

Path = tuple[str | int, ...]

TOKEN = re.compile(
    r"""
    (?P<multi>\"{3}(?:[^\\]|\\.)*?\"{3,5}(?!\") | '{3}.*?'{3,5}(?!'))
    | (?P<text>\"(?:[^\"\\\n]|\\.)*\" | '[^'\n]*')
    | (?P<comment>\#[^\n]*)
    | (?P<end>\n)
    | (?P<open>[\[{]) | (?P<close>[\]}])
    | (?P<equals>=)
    | (?P<comma>,)
    | (?P<dot>\.)
    | (?P<bare>[A-Za-z0-9_-]+)
    | (?P<other>.)
    """,
    re.VERBOSE | re.DOTALL,
)


class Lines:
    """Paths such as ("torque", 0, "spec") and their lines."""

    def __init__(self, text: str) -> None:
        self._lines: dict[Path, int] = {}
        self._counts: dict[Path, int] = {}
        self._table: Path = ()
        for statement in _statements(text):
            self._add(statement)

    def of(self, path: Path) -> int:
        """The line of this path, or of the nearest table or key around it."""
        while path and path not in self._lines:
            path = path[:-1]
        return self._lines.get(path, 1)

    def _add(self, statement: list[tuple[str, str, int]]) -> None:
        kind, _, line = statement[0]
        if kind == "open":
            self._header(statement, line)
        else:
            self._key(statement)

    def _header(self, statement: list[tuple[str, str, int]], line: int) -> None:
        """[a.b] or [[a.b]]: what follows belongs to it."""
        names = tuple(_name(kind, word) for kind, word, _ in statement if kind in ("bare", "text"))
        path = self._inside(names)
        if sum(kind == "open" for kind, _, _ in statement) == 2:
            self._counts[path] = self._counts.get(path, -1) + 1
            self._lines.setdefault(path, line)
            path = (*path, self._counts[path])
        self._lines[path] = line
        self._table = path

    def _inside(self, names: tuple[str, ...]) -> Path:
        """Names below an array of tables mean its last table."""
        path: Path = ()
        for name in names[:-1]:
            path = (*path, name)
            if path in self._counts:
                path = (*path, self._counts[path])
        return (*path, *names[-1:])

    def _key(self, statement: list[tuple[str, str, int]]) -> None:
        """a.b = value: and the keys of inline tables in the value."""
        at = next((at for at, (kind, _, _) in enumerate(statement) if kind == "equals"), 0)
        key = (*self._table, *(_name(kind, word) for kind, word, _ in statement[:at] if kind in ("bare", "text")))
        for end in range(len(self._table) + 1, len(key) + 1):
            self._lines.setdefault(key[:end], statement[0][2])
        value = statement[at + 1 :]
        for before, this in itertools.pairwise(value):
            if this[0] == "equals":
                self._lines.setdefault((*key, _name(*before[:2])), before[2])
        for number, line in enumerate(_elements(value)):
            self._lines.setdefault((*key, number), line)


def _elements(value: list[tuple[str, str, int]]) -> Iterator[int]:
    """The line of each element of an array."""
    if not value or value[0][1] != "[":
        return
    depth, expected = 0, False
    for kind, _, line in value:
        if expected and depth == 1 and kind not in ("comma", "close"):
            yield line
            expected = False
        depth += (kind == "open") - (kind == "close")
        expected = expected or (depth == 1 and kind in ("open", "comma"))


def _statements(text: str) -> Iterator[list[tuple[str, str, int]]]:
    """The tokens of each header and each key with its value; a value may go over several lines."""
    statement: list[tuple[str, str, int]] = []
    line, depth, value = 1, 0, False
    for match in TOKEN.finditer(text):
        kind, word = str(match.lastgroup), match.group()
        if kind == "end" and depth == 0 and statement:
            yield statement
            statement, value = [], False
        elif kind not in ("end", "comment", "other"):
            statement.append((kind, word, line))
            value = value or kind == "equals"
            depth += ((kind == "open") - (kind == "close")) if value else 0
        line += word.count("\n")
    if statement:
        yield statement


def _name(kind: str, word: str) -> str:
    """A key without its quotes."""
    return word[1:-1] if kind == "text" else word
