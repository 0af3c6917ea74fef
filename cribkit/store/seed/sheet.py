"""A CSV file as rows of named cells with their line numbers; every problem of the file is collected."""

from __future__ import annotations

import csv
import difflib
import io
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from pathlib import Path

from cribkit.domain.cells import unguard
from cribkit.domain.problem import Problem

LONGEST = 4000  # characters in one cell: more is never a description but a broken file
LARGEST = 200_000_000  # bytes in one file


@dataclass(frozen=True, slots=True)
class Cells:
    """One row: its place and its cells by column, blank where the file leaves them out."""

    source: str  # "tools.csv:3"
    cells: dict[str, str]


@dataclass(frozen=True, slots=True)
class Sheet:
    """One file, as far as it could be read."""

    rows: tuple[Cells, ...] = ()
    problems: tuple[Problem, ...] = ()


TODO = "ask its owner for permission, or take it out of the folder."


def read_sheet(path: Path, known: Iterable[str], required: Iterable[str]) -> Sheet:
    """Read one file. `known` are the columns that it may have, `required` those that it must."""
    try:
        data = path.read_bytes() if path.stat().st_size <= LARGEST else None
    except FileNotFoundError:
        return Sheet(problems=(problem(path.name, "no-file", "there is no such file", "look how it is spelled."),))
    except OSError as error:
        return Sheet(problems=(problem(path.name, "unreadable-file", f"cannot be read ({error.strerror})", TODO),))
    if data is None:
        return Sheet(problems=(problem(path.name, "too-large", "the file is larger than 200 MB", "split it."),))
    return parse_sheet(data, path.name, tuple(known), tuple(required))


def parse_sheet(data: bytes, name: str, known: tuple[str, ...], required: tuple[str, ...]) -> Sheet:
    """The rows of a file's bytes."""
    text, found = decode(data, name)
    if found:
        return Sheet(problems=(found,))
    records, broken = read_records(text, name)
    if not records:
        empty = problem(f"{name}:1", "empty-file", "the file is empty", f"give it a header: {','.join(known)}.")
        return Sheet(problems=(*broken, *(() if broken else (empty,))))
    header = [cell.strip().casefold() for cell in records[0][1]]
    wrong = header_problems(f"{name}:1", header, known, required)
    if wrong:
        return Sheet(problems=(*broken, *wrong))
    rows, bad = named_rows(records[1:], header, name)
    return Sheet(rows, (*broken, *bad))


def decode(data: bytes, name: str) -> tuple[str, Problem | None]:
    """UTF-8 with or without a byte order mark; anything else is refused with its line."""
    todo = "save the file again as CSV UTF-8."
    if data.startswith((b"\xff\xfe", b"\xfe\xff")):
        return "", problem(f"{name}:1", "not-utf-8", "the file is UTF-16, not UTF-8", todo)
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        line = data.count(b"\n", 0, error.start) + 1
        seen = data[error.start : error.start + 1].decode("cp1252", "replace")
        message = f"the file is not UTF-8 (read as Windows-1252 there is a {seen!r} here)"
        return "", problem(f"{name}:{line}", "not-utf-8", message, todo)
    if "\0" in text:
        line = text.count("\n", 0, text.index("\0")) + 1
        return "", problem(f"{name}:{line}", "not-text", "there is a NUL character: this is not a text file", todo)
    return text, None


def read_records(text: str, name: str) -> tuple[list[tuple[int, list[str]]], tuple[Problem, ...]]:
    """Every record with the line that it begins on; blank lines are left out."""
    csv.field_size_limit(LARGEST)
    reader = csv.reader(io.StringIO(text, newline=""), strict=True)
    records: list[tuple[int, list[str]]] = []
    line = 1
    try:
        for record in reader:
            if any(cell.strip() for cell in record):
                records.append((line, record))
            line = reader.line_num + 1
    except csv.Error as error:
        todo = "close the quotation marks of this row; a quotation mark inside a cell is written twice."
        return records, (problem(f"{name}:{line}", "broken-csv", f"this row is not CSV ({error})", todo),)
    return records, ()


def header_problems(
    place: str, header: list[str], known: tuple[str, ...], required: tuple[str, ...]
) -> tuple[Problem, ...]:
    """Columns that are missing, unknown or there twice."""
    if len(header) == 1 and ";" in header[0]:
        return (problem(place, "not-commas", "the columns are separated by semicolons", "save it with commas."),)
    found = []
    for column in dict.fromkeys(header):
        if column not in known:
            close = difflib.get_close_matches(column, known, 1)
            todo = f"did you mean {close[0]}?" if close else f"the columns are {', '.join(known)}."
            found.append(problem(place, "unknown-column", f"there is no column {column!r}", todo))
        elif header.count(column) > 1:
            found.append(problem(place, "double-column", f"the column {column} is there twice", "delete one."))
    missing = [column for column in required if column not in header]
    if missing:
        message = f"the column{'s' * (len(missing) > 1)} {', '.join(missing)} must be there"
        found.append(problem(place, "missing-column", message, "add it to the header and fill it."))
    return tuple(found)


def named_rows(
    records: list[tuple[int, list[str]]], header: list[str], name: str
) -> tuple[tuple[Cells, ...], tuple[Problem, ...]]:
    """Cells under their columns, trimmed, with a spreadsheet's guard taken back."""
    rows: list[Cells] = []
    bad: list[Problem] = []
    for line, record in records:
        place = f"{name}:{line}"
        faults = list(cell_problems(place, header, record))
        bad += faults
        if not faults:
            cells = (" ".join(unguard(cell).split()) for cell in record)
            rows.append(Cells(place, dict(zip(header, cells, strict=False))))
    return tuple(rows), tuple(bad)


def cell_problems(place: str, header: list[str], record: list[str]) -> Iterator[Problem]:
    """Too many cells, a cell that is too long, characters that are no text."""
    if any(cell.strip() for cell in record[len(header) :]):
        message = f"there are {len(record)} cells under {len(header)} columns"
        yield problem(place, "too-many-cells", message, "put cells that contain a comma in quotation marks.")
    for column, cell in zip(header, record, strict=False):
        if len(cell) > LONGEST:
            message = f"{column} has {len(cell)} characters; a cell may have {LONGEST}"
            yield problem(place, "cell-too-long", message, "shorten it; if a quotation mark is missing, add it.")
        elif any(not character.isprintable() and not character.isspace() for character in cell):
            yield problem(place, "not-text", f"{column} contains a control character", "delete it.")


def problem(source: str, code: str, message: str, todo: str) -> Problem:
    """One problem of a file."""
    return Problem(source=source, code=code, message=message, next=todo)
