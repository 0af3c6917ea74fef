"""The ways in which `count` can be asked: one item, a sheet, a blank sheet."""

from __future__ import annotations

import datetime as dt
from pathlib import Path

import typer

from cribkit.cli.opening import reading, writing
from cribkit.cli.options import now, person, today
from cribkit.desk.counting import Counted, count, on_shelf, read_count, sheet_rows
from cribkit.domain.problem import BadInput
from cribkit.report.answer import Answer
from cribkit.report.ledger import count_sheet, counted
from cribkit.store.posting import Entry


def run_count(
    ctx: typer.Context,
    tag: str | None,
    amount: str | None,
    file: Path | None,
    shelf: str,
    sheet: bool,
    lot: str | None,
    post: bool,
    by: str | None,
    on: dt.date | None,
) -> Answer:
    """Print a blank sheet, or compare one item or a filled sheet with the ledger."""
    if sheet:
        with reading(ctx, demo=False) as crib:
            return count_sheet(sheet_rows(on_shelf(crib, shelf) if shelf else crib.items()))
    rows = what_was_counted(tag, amount, file, lot)
    name = person(by) if post else "nobody"
    with writing(ctx) if post else reading(ctx, demo=False) as crib:
        return counted(count(crib, rows, Entry(name, today(on), now()), shelf, post))


def what_was_counted(tag: str | None, amount: str | None, file: Path | None, lot: str | None) -> tuple[Counted, ...]:
    """One item's count from the command line, or the rows of a sheet."""
    if file is not None and tag is None:
        return read_count(file)
    if tag is None or amount is None or file is not None:
        raise BadInput.of("what-counted", "say what was counted", "give TAG AMOUNT, or --file CSV, or --sheet.")
    return (Counted(tag, tag, amount, lot or ""),)
