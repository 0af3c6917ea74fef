"""The folder for an auditor: tables about one wrench as CSV, sheets of its calibrations, the look back."""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Iterable
from pathlib import Path

from cribkit.desk.papers import Sheet, Table
from cribkit.desk.tracing import Trace
from cribkit.domain.cells import guard
from cribkit.report.answer import Answer, Listing
from cribkit.report.tracing import trace_sheet
from cribkit.report.wrench_sheet import sheet_page


def folder_files(tables: Iterable[Table], sheets: Iterable[Sheet], trace: Trace) -> dict[str, str]:
    """Every file of the folder by its name."""
    files = {table.name: as_csv(table) for table in tables}
    for at, sheet in enumerate(sheets, 1):
        number = re.sub(r"[^A-Za-z0-9-]+", "-", sheet.recorded.finding.certificate.number).strip("-")
        files[f"certificate-{at:02}-{number}.html"] = sheet_page(sheet)
    return files | {"work.html": trace_sheet(trace)}


def folder_answer(tag: str, files: tuple[Path, ...]) -> Answer:
    """What was written."""
    return Answer(
        command="wrench export",
        ok=True,
        result=lambda: {"tag": tag, "files": [str(file) for file in files]},
        listing=lambda: Listing(("file",), tuple((str(file),) for file in files)),
    )


def as_csv(table: Table) -> str:
    """RFC 4180, guarded against spreadsheets that run cells."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(table.columns)
    writer.writerows([guard(text(value)) for value in row] for row in table.rows)
    return out.getvalue()


def text(value: object) -> str:
    """A cell: numbers with every digit that matters to read them back."""
    match value:
        case None:
            return ""
        case bool():
            return "yes" if value else "no"
        case float():
            return f"{value:.12g}"
        case _:
            return str(value)
