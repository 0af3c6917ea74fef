"""A listing as a table for the terminal, as CSV and as Markdown; an answer as JSON."""

from __future__ import annotations

import io
import json
from collections.abc import Mapping
from datetime import date

from cribkit.domain.cells import guard
from cribkit.domain.problem import Problem
from cribkit.report.answer import Listing

CONTRACT = 1  # the version of the JSON contract: raised when a key changes its meaning or goes
LONGEST_WORD = 26  # a longer one may be broken
NARROWEST = 8  # a column is never wrapped narrower than this


def cell(value: object) -> str:
    """A value as a person reads it: no trailing zeros, dates as ISO 8601, nothing for None."""
    match value:
        case None:
            return ""
        case bool():
            return "yes" if value else "no"
        case float():
            return f"{value:.6g}"
        case date():
            return value.isoformat()
        case tuple() | list():
            return ", ".join(map(cell, value))
        case _:
            return str(value)


def as_table(listing: Listing, width: int) -> str:
    """Columns with their names above, wrapped to the width."""
    if not listing.rows:
        return listing.empty
    import tabulate

    rows = [[cell(value) for value in row] for row in listing.rows]
    for padding in (2, 0):  # tabulate gives a heading two more columns, which a full page cannot spare
        widths, fits = column_widths(listing.columns, rows, width, padding)
        if fits:
            break
    tabulate.MIN_PADDING = padding
    return tabulate.tabulate(rows, listing.columns, tablefmt="simple", disable_numparse=True, maxcolwidths=list(widths))


def column_widths(names: tuple[str, ...], rows: list[list[str]], width: int, padding: int) -> tuple[list[int], bool]:
    """The width of each column, and whether the rows fit without breaking a word.

    A column has its natural width; then the widest gives up columns until the row fits. A word is broken only when no
    other column can give up something between its words.
    """
    columns = [[name + " " * padding, *(row[at] for row in rows)] for at, name in enumerate(names)]
    widths = [max(len(line) for text in column for line in (text.splitlines() or [""])) for column in columns]
    words = [min(LONGEST_WORD, max(len(word) for text in column for word in [*text.split(), ""])) for column in columns]
    least = [max(size, len(name) + padding) for size, name in zip(words, names, strict=True)]
    room = max(width, 40) - 2 * (len(names) - 1)
    fits = sum(least) <= room
    for limits in (least, [max(NARROWEST, len(name) + padding) for name in names]):
        while sum(widths) > room:
            spare = [at for at, size in enumerate(widths) if size > limits[at]]
            if not spare:
                break
            widths[max(spare, key=lambda at: (widths[at], -at))] -= 1
    return [max(1, size) for size in widths], fits


def as_csv(listing: Listing) -> str:
    """RFC 4180, with cells guarded that a spreadsheet would run."""
    import csv

    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(listing.columns)
    writer.writerows([guard(cell(value)) for value in row] for row in listing.rows)
    return out.getvalue().rstrip("\n")


def as_markdown(listing: Listing) -> str:
    """A pipe table; pipes and line ends inside a cell are made harmless."""
    lines = [listing.columns, ("---",) * len(listing.columns), *listing.rows]
    return "\n".join("| " + " | ".join(escape_markdown(cell(value)) for value in line) + " |" for line in lines)


def escape_markdown(text: str) -> str:
    """Text that stays inside one cell of a Markdown table."""
    return " ".join(text.replace("\\", "\\\\").replace("|", "\\|").replace("<", "&lt;").split())


def as_json(command: str, ok: bool, result: Mapping[str, object], problems: tuple[Problem, ...]) -> str:
    """The JSON contract's envelope."""
    envelope = {
        "cribkit": CONTRACT,
        "command": command,
        "ok": ok,
        "result": result,
        "problems": [problem.as_json() for problem in problems],
    }
    return json.dumps(envelope, ensure_ascii=False, indent=2, default=plain)


def plain(value: object) -> object:
    """Dates as ISO 8601 text in JSON."""
    if isinstance(value, date):
        return value.isoformat()
    raise TypeError(f"{type(value).__name__} has no place in the JSON contract")
