"""Papers about wrenches: the sheet of a calibration, labels, and the folder for an auditor."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from cribkit.desk.recording import Recorded, certificate_of, find_wrench
from cribkit.desk.tracing import finding_of, trace_wrench
from cribkit.domain.calibration.certificate import subject_of
from cribkit.domain.calibration.points import plan_for
from cribkit.domain.problem import BadInput
from cribkit.domain.torque import Wrench
from cribkit.store.calibrations import Kept, life
from cribkit.store.crib import Crib


@dataclass(frozen=True, slots=True)
class Sheet:
    """One calibration with all that its sheet says."""

    recorded: Recorded
    limit: float
    accepted: float | None
    iso_class: str
    preload: str
    by: str
    at: str


@dataclass(frozen=True, slots=True)
class Label:
    """What stands on a wrench."""

    tag: str
    range: str
    calibrated_on: date | None
    until: date | None  # the last good day
    no_date: str  # where there is no such day yet: what decides
    cycles: str
    certificate: str
    limited: str  # "60 to 100 N·m, clockwise only"; "" where nothing was barred
    stop: str  # why it must not be used; "" where it may


def sheet(crib: Crib, tag: str, number: str = "") -> Sheet:
    """The sheet of a certificate in force; without a number the newest."""
    wrench = find_wrench(crib, tag)
    kept = certificate_of(life(crib, wrench.tag), wrench.tag, number)
    return sheet_of(wrench, kept)


def sheet_of(wrench: Wrench, kept: Kept) -> Sheet:
    """The sheet of one recorded certificate."""
    plan = plan_for(wrench.kind)
    newest = (wrench.certificate, wrench.calibrated_on) == (kept.certificate.number, kept.certificate.on)
    recorded = Recorded(wrench.tag, wrench.description, finding_of(kept, wrench), wrench, newest, kept.mended, None)
    return Sheet(recorded, kept.limit, kept.accepted, plan.iso_class, plan.preload, kept.line.by, kept.line.at)


def labels(crib: Crib, tags: Iterable[str], today: date) -> tuple[Label, ...]:
    """Labels for some wrenches, or for all."""
    wanted = list(tags)
    wrenches = [find_wrench(crib, tag) for tag in wanted] if wanted else list(crib.wrenches())
    return tuple(label(wrench, today) for wrench in wrenches)


def label(wrench: Wrench, today: date) -> Label:
    """The words of one label."""
    scale = wrench.scales[0]
    ends = f"{scale.low:.6g} to {scale.high:.6g}" if scale.low != scale.high else f"{scale.high:.6g}"
    return Label(
        tag=wrench.tag,
        range=f"{ends} {scale.unit.symbol}",
        calibrated_on=wrench.calibrated_on,
        until=wrench.due,
        no_date="by first use",
        cycles=f"or after {wrench.interval_cycles} cycles" if wrench.interval_cycles else "",
        certificate=wrench.certificate,
        limited=limits(wrench),
        stop=stop(wrench, today),
    )


def limits(wrench: Wrench) -> str:
    """What a calibration barred: torques, or the way to the left of a wrench that is built for both."""
    scale, said = wrench.scales[0], []
    if wrench.limited_nm is not None:
        low, high = (end / scale.unit.nm for end in wrench.limited_nm)
        said.append(f"{low:.6g} to {high:.6g} {scale.unit.symbol}")
    if wrench.two_way_stated is False and subject_of(wrench).two_way:
        said.append("clockwise only")
    return ", ".join(said)


def stop(wrench: Wrench, today: date) -> str:
    """Why it must not be used."""
    if wrench.unfit_reason:
        return wrench.unfit_reason
    if wrench.condition != "ok":
        return wrench.condition
    if wrench.calibrated_on is None:
        return "no calibration"
    return "overdue" if wrench.due is not None and today > wrench.due else ""


@dataclass(frozen=True, slots=True)
class Table:
    """One file of the auditor's folder."""

    name: str
    columns: tuple[str, ...]
    rows: tuple[tuple[object, ...], ...]


def folder(crib: Crib, tag: str) -> tuple[Wrench, tuple[Table, ...], tuple[Sheet, ...]]:
    """Everything about one wrench: what it is, its life with chain values, certificates, readings, movements, work."""
    wrench = find_wrench(crib, tag)
    known = life(crib, wrench.tag)
    tables = (
        wrench_table(wrench),
        Table(
            "events.csv",
            ("line", "recorded", "day", "by", "what", "note", "withdraws", "chain value"),
            tuple((e.id, e.at, e.day, e.by, e.what, e.note, e.withdraws, e.digest) for e in known.lines),
        ),
        certificate_table(known.certificates),
        reading_table(known.certificates),
        rows_of(crib, "movements.csv", "SELECT * FROM movement WHERE tag = ? ORDER BY id", wrench.tag),
        rows_of(crib, "work.csv", "SELECT * FROM job_torque WHERE wrench = ? ORDER BY day, job", wrench.tag),
        rows_of(
            crib, "chain.csv", "SELECT name, value FROM fact WHERE name IN ('head', 'wrench_head') AND ? <> ''", "-"
        ),
    )
    return wrench, tables, tuple(sheet_of(wrench, kept) for kept in known.certificates)


def wrench_table(wrench: Wrench) -> Table:
    """The wrench as it stands now."""
    scale = wrench.scales[0]
    pairs = (
        ("tag", wrench.tag),
        ("description", wrench.description),
        ("mechanism", wrench.mechanism),
        ("class of ISO 6789", wrench.kind.iso),
        ("lowest mark", scale.low),
        ("highest mark", scale.high),
        ("graduation", scale.graduation),
        ("unit", scale.unit.symbol),
        ("limit %", wrench.deviation * 100),
        ("drive", wrench.drive),
        ("calibrated on", wrench.calibrated_on),
        ("certificate", wrench.certificate),
        ("last good day", wrench.due),
        ("interval, months", wrench.interval_months),
        ("interval, cycles", wrench.interval_cycles),
        ("cycles since", wrench.cycles),
        ("limited to, N·m", "" if wrench.limited_nm is None else "{:.6g} to {:.6g}".format(*wrench.limited_nm)),
        ("condition", wrench.condition),
        ("not for use because", wrench.unfit_reason),
    )
    return Table("wrench.csv", ("what", "value"), pairs)


def certificate_table(papers: Iterable[Kept]) -> Table:
    """Every certificate ever recorded, withdrawn ones too."""
    columns = ("line", "certificate", "date", "laboratory", "device", "uncertainty_pct", "temperature_c", "limit_pct")
    more = ("accepted_pct", "as_found", "as_left", "fitness", "from N·m", "to N·m", "why", "note", "withdrawn")
    rows = tuple(
        (
            kept.line.id,
            kept.certificate.number,
            kept.certificate.on,
            kept.certificate.laboratory,
            kept.certificate.device,
            kept.certificate.uncertainty_pct,
            kept.certificate.temperature_c,
            kept.limit * 100,
            None if kept.accepted is None else kept.accepted * 100,
            kept.as_found,
            kept.as_left,
            kept.fitness.value,
            *(kept.usable or (None, None)),
            kept.why,
            kept.certificate.note,
            kept.withdrawn,
        )
        for kept in papers
    )
    return Table("certificates.csv", (*columns, *more), rows)


def reading_table(papers: Iterable[Kept]) -> Table:
    """Every reading, in the columns that `wrench record` reads back."""
    columns = ("tag", "certificate", "date", "laboratory", "device", "uncertainty_pct", "temperature_c")
    rows = tuple(
        (
            kept.line.tag,
            kept.certificate.number,
            kept.certificate.on,
            kept.certificate.laboratory,
            kept.certificate.device,
            kept.certificate.uncertainty_pct,
            kept.certificate.temperature_c,
            reading.phase.value,
            reading.direction.value,
            reading.setting,
            reading.reference,
            reading.unit,
        )
        for kept in papers
        for reading in kept.certificate.readings
    )
    return Table("readings.csv", (*columns, "phase", "direction", "setting", "reading", "unit"), rows)


def rows_of(crib: Crib, name: str, query: str, value: str) -> Table:
    """Rows as they are stored."""
    cursor = crib.connection.execute(query, (value,))
    return Table(name, tuple(column[0] for column in cursor.description), tuple(cursor.fetchall()))


def write_folder(place: Path, files: Mapping[str, str]) -> tuple[Path, ...]:
    """Write the files into a folder that is new or empty: an old record is never written over."""
    try:
        place.mkdir(parents=True, exist_ok=True)
        if any(place.iterdir()):
            todo = "name a new folder."
            raise BadInput.of("not-empty", f"{place} is not empty", todo)
        for name, text in files.items():
            (place / name).write_text(text, encoding="utf-8")
    except OSError as error:
        todo = "choose another folder."
        raise BadInput.of("cannot-write", f"{place} cannot be written ({error.strerror})", todo) from error
    return tuple(place / name for name in files)


__all__ = ["Label", "Sheet", "Table", "folder", "labels", "sheet", "trace_wrench", "write_folder"]
