"""Write the crib back as the CSV files that it can be loaded from. History stays in the crib's file."""

from __future__ import annotations

import csv
import io
import os
import tempfile
from collections.abc import Iterable, Iterator
from pathlib import Path

from cribkit.domain.cells import guard
from cribkit.domain.problem import BadInput
from cribkit.domain.stock.thousandths import parts, whole
from cribkit.store.crib import Crib
from cribkit.store.seed.cells import STOCK_UNITS
from cribkit.store.seed.columns import FILES

TOOLS = """
    SELECT tag, description, (SELECT coalesce(sum(inside + outside), 0) FROM balance WHERE balance.tag = item.tag),
           location, condition, contents, note, gtin
    FROM item WHERE kind = 'tool' ORDER BY tag
"""
WRENCHES = """
    SELECT tag, description, mechanism, range_min, range_max, wrench.unit, graduation, accuracy_pct, drive, lever_mm,
           calibrated_on, interval_months, interval_cycles, certificate, location, condition,
           second_unit, second_min, second_max, second_graduation, note
    FROM item JOIN wrench USING (tag) ORDER BY tag
"""
CONSUMABLES = """
    SELECT item.tag, description, stock_unit, pack, coalesce(inside, 0), minimum, maximum, supplier, unit_cost,
           coalesce(lot.lot, ''), expires_on, location, traits, hazards, service_life_days, note, gtin
    FROM item JOIN consumable ON consumable.tag = item.tag
    LEFT JOIN lot ON lot.tag = item.tag
    LEFT JOIN balance ON balance.tag = item.tag AND balance.lot = lot.lot
    WHERE inside > 0 OR outside > 0
       OR coalesce(lot.lot, '') = (SELECT coalesce(min(lot), '') FROM lot AS first WHERE first.tag = item.tag)
    ORDER BY item.tag, lot.lot
"""
SUPPLIERS = "SELECT name, lead_days, minimum_order, note FROM supplier ORDER BY name"
LOANS = """
    SELECT loan.tag, holder, since, amount, pack, kind, lot, job,
           coalesce((SELECT movement.note FROM movement WHERE movement.tag = loan.tag AND movement.lot = loan.lot
                     AND movement.holder = loan.holder AND movement.job = loan.job AND movement.kind = 'issue'
                     ORDER BY id DESC LIMIT 1), '')
    FROM loan JOIN item ON item.tag = loan.tag ORDER BY loan.tag, lot, holder, job
"""
SQUARES = "SELECT square, limit_nm, note FROM square ORDER BY limit_nm, square"
CALIBRATION = ("calibrated_on", "certificate")  # columns of torque_wrenches.csv, in their order


def export(crib: Crib, folder: Path) -> tuple[Path, ...]:
    """Write all files; each is complete before it takes its place."""
    try:
        folder.mkdir(parents=True, exist_ok=True)
        return tuple(write(folder / name, sheet(name, rows)) for name, rows in sheets(crib))
    except OSError as error:
        raise BadInput.of(
            "cannot-write", f"cannot write here ({error.strerror})", "choose another folder.", source=str(folder)
        ) from error


def sheets(crib: Crib) -> Iterator[tuple[str, list[tuple[object, ...]]]]:
    """Each file's name and rows."""
    run = crib.connection.execute
    yield "suppliers.csv", list(run(SUPPLIERS))
    yield "tools.csv", [(*row[:2], whole(row[2]), *row[3:]) for row in run(TOOLS)]
    yield "torque_wrenches.csv", calibrated_rows(crib, list(run(WRENCHES)))
    yield "consumables.csv", [in_containers(row) for row in run(CONSUMABLES)]
    yield "loans.csv", [in_pieces(row) for row in run(LOANS)]
    if squares := list(run(SQUARES)):  # only where the crib has figures of its own
        yield "squares.csv", squares


def calibrated_rows(crib: Crib, rows: list[tuple[object, ...]]) -> list[tuple[object, ...]]:
    """Wrenches with the calibration that counts now.

    The files cannot say that a wrench was dropped, failed, is stored or may be used in a part of its range only: such a
    wrench is written without a calibration, so that nobody relies on it where only the files are known.
    """
    now = {wrench.tag: wrench for wrench in crib.wrenches()}
    day, number = (at for at, column in enumerate(FILES["torque_wrenches.csv"]) if column.name in CALIBRATION)
    done = []
    for row in rows:
        cells, wrench = list(row), now[str(row[0])]
        if wrench.unfit_reason or wrench.limited_nm or wrench.two_way_stated is False:
            cells[day], cells[number] = None, ""
        else:
            cells[day] = wrench.calibrated_on.isoformat() if wrench.calibrated_on else None
            cells[number] = wrench.certificate
        done.append(tuple(cells))
    return done


def in_containers(row: tuple[object, ...]) -> tuple[object, ...]:
    """A consumable's row with pack in the written unit and stock in containers."""
    tag, description, unit, pack, inside, *rest = row
    factor = STOCK_UNITS[str(unit)][1]
    content = float(str(pack))
    return (tag, description, unit, round(content / factor, 9), containers(int(str(inside)), content), *rest)


def in_pieces(row: tuple[object, ...]) -> tuple[object, ...]:
    """A loan's row with its quantity in pieces, or in containers of a consumable."""
    tag, holder, since, amount, pack, kind, lot, job, note = row
    content = float(str(pack)) if kind == "consumable" else 1.0
    return (tag, holder, since, containers(int(str(amount)), content), lot, job, note)


def containers(amount: int, pack: float) -> float:
    """Thousandths of the unit as containers: the shortest decimal that loads back as the same amount."""
    exact = whole(amount) / pack
    for digits in range(0, 16):
        short = round(exact, digits)
        if parts(short * pack) == amount:
            return short
    return exact


def sheet(name: str, rows: Iterable[tuple[object, ...]]) -> str:
    """One file's text: RFC 4180, cells guarded that a spreadsheet would run."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(column.name for column in FILES[name])
    writer.writerows([guard(written(value)) for value in row] for row in rows)
    return out.getvalue()


def written(value: object) -> str:
    """A cell: numbers without needless zeros, nothing for None."""
    if value is None:
        return ""
    if isinstance(value, float):
        return f"{value:.0f}" if value == int(value) else repr(value)
    return str(value)


def write(path: Path, text: str) -> Path:
    """Write beside the place and move into it, so that no half-written file is ever seen."""
    handle, name = tempfile.mkstemp(dir=path.parent, prefix=f".{path.name}-")
    beside = Path(name)
    try:
        with os.fdopen(handle, "w", encoding="utf-8", newline="") as file:
            file.write(text)
        beside.replace(path)
    except BaseException:
        beside.unlink(missing_ok=True)
        raise
    return path
