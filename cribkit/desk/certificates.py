"""Certificates from a CSV file, or from answers at the keyboard."""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path

from cribkit.domain.calibration.sheet import COLUMNS, REQUIRED, Entry, Row, read_certificates
from cribkit.domain.problem import Problem
from cribkit.store.crib import Crib
from cribkit.store.seed.sheet import read_sheet

Read = tuple[tuple[Entry, ...], tuple[Problem, ...]]


def read_file(crib: Crib, path: Path, tag: str = "", far_off: bool = False) -> Read:
    """The certificates of a file, and every problem with it."""
    sheet = read_sheet(path, COLUMNS, REQUIRED)
    if sheet.problems:
        return (), sheet.problems
    rows = [(int(row.source.rpartition(":")[2]), row.cells) for row in sheet.rows]
    return read_rows(crib, rows, path.name, tag, far_off)


def read_rows(crib: Crib, rows: Iterable[tuple[int, Row]], file: str, tag: str = "", far_off: bool = False) -> Read:
    """Rows as certificates. Tags may be written in any case."""
    units = {wrench.tag: wrench.scales[0].unit for wrench in crib.wrenches()}
    spelled = {known.casefold(): known for known in units}
    tidy = [(line, {**row, "tag": spell(spelled, row.get("tag") or "")}) for line, row in rows]
    return read_certificates(tidy, units, file, spell(spelled, tag), far_off)


def spell(known: dict[str, str], tag: str) -> str:
    """The tag as the crib writes it."""
    return known.get(tag.strip().casefold(), tag.strip())
