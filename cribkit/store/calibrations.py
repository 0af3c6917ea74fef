"""Certificates and events of torque wrenches in the crib's file: append-only and chained."""

from __future__ import annotations

import datetime as dt
import json
import sqlite3
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from cribkit.domain.calibration.certificate import Certificate, Finding, Fitness
from cribkit.domain.calibration.due import Policy, Rules, Start
from cribkit.domain.calibration.readings import Direction, Phase, Reading
from cribkit.domain.calibration.state import Calibrated, Event, Happening
from cribkit.domain.quantity import torque_unit

if TYPE_CHECKING:
    from cribkit.store.crib import Crib

CALIBRATED, WITHDRAWN = "calibrated", "withdrawn"
HEAD = "wrench_head"  # the fact that says how many lines there are and the last digest
POLICY = "calibration_policy"
LINE = "SELECT id, at, day, by, tag, what, note, withdraws, digest FROM wrench_event"
CERTIFICATE = (
    "number, laboratory, device, uncertainty_pct, temperature_c, note, limit_pct, accepted_pct, as_found, as_left, "
    "fitness, low_nm, high_nm, two_way, why, mended"
)
READING = "phase, direction, setting, reference, unit"


@dataclass(frozen=True, slots=True)
class Line:
    """One line of a wrench's life as it is stored."""

    id: int
    at: str
    day: dt.date
    by: str
    tag: str
    what: str
    note: str = ""
    withdraws: int | None = None
    digest: str = ""


@dataclass(frozen=True, slots=True)
class Kept:
    """A recorded certificate and the verdict that was recorded with it."""

    line: Line
    certificate: Certificate
    limit: float
    accepted: float | None
    as_found: str
    as_left: str
    fitness: Fitness
    usable: tuple[float, float] | None
    two_way: bool
    why: str
    mended: bool
    withdrawn: bool = False

    @property
    def calibrated(self) -> Calibrated:
        """What the state is folded from."""
        limited = self.usable if self.fitness is Fitness.LIMITED else None
        line, number = self.line, self.certificate.number
        return Calibrated(line.day, line.id, self.fitness, number, limited, self.two_way, self.why)


@dataclass(frozen=True, slots=True)
class Life:
    """Everything recorded about one wrench, in the order of recording."""

    lines: tuple[Line, ...] = ()
    certificates: tuple[Kept, ...] = ()

    @property
    def in_force(self) -> tuple[Kept, ...]:
        """The certificates that were not withdrawn."""
        return tuple(kept for kept in self.certificates if not kept.withdrawn)

    @property
    def events(self) -> tuple[Event, ...]:
        """What happened to it, without what was withdrawn."""
        gone = {line.withdraws for line in self.lines}
        words = set(Happening)
        return tuple(
            Event(Happening(line.what), line.day, line.id, line.by, line.note)
            for line in self.lines
            if line.what in words and line.id not in gone
        )


NOTHING = Life()


def lives(crib: Crib, tag: str = "") -> dict[str, Life]:
    """The recorded life of every wrench that has one, or of one wrench, by tag."""
    where, values = ("WHERE tag = ?", (tag,)) if tag else ("", ())
    lines = [line_of(row) for row in crib.connection.execute(f"{LINE} {where} ORDER BY id", values)]
    if not lines:
        return {}
    kept = {item.line.id: item for item in certificates(crib.connection, lines)}
    found: dict[str, tuple[list[Line], list[Kept]]] = {}
    for line in lines:
        mine = found.setdefault(line.tag, ([], []))
        mine[0].append(line)
        if line.id in kept:
            mine[1].append(kept[line.id])
    return {name: Life(tuple(happened), tuple(papers)) for name, (happened, papers) in found.items()}


def life(crib: Crib, tag: str) -> Life:
    """The recorded life of one wrench."""
    return next(iter(lives(crib, tag).values()), NOTHING)


def line_of(row: Sequence[object]) -> Line:
    """A line from a row of `LINE`."""
    number, at, day, by, tag, what, note, withdraws, digest = row
    return Line(
        id=int(str(number)),
        at=str(at),
        day=dt.date.fromisoformat(str(day)),
        by=str(by),
        tag=str(tag),
        what=str(what),
        note=str(note),
        withdraws=None if withdraws is None else int(str(withdraws)),
        digest=str(digest),
    )


def certificates(connection: sqlite3.Connection, lines: Iterable[Line]) -> list[Kept]:
    """The certificates that belong to these lines."""
    by_id = {line.id: line for line in lines}
    gone = {line.withdraws for line in by_id.values()}
    wanted = json.dumps([line.id for line in by_id.values() if line.what == CALIBRATED])
    there = "event IN (SELECT value FROM json_each(?))"
    readings: dict[int, list[Reading]] = {}
    for event, *cells in connection.execute(
        f"SELECT event, {READING} FROM reading WHERE {there} ORDER BY event, place", (wanted,)
    ):
        readings.setdefault(event, []).append(reading_of(cells))
    rows = connection.execute(f"SELECT event, {CERTIFICATE} FROM certificate WHERE {there} ORDER BY event", (wanted,))
    return [
        kept_of(by_id[event], cells, tuple(readings.get(event, ())), event in gone) for event, *cells in rows.fetchall()
    ]


def reading_of(cells: Sequence[object]) -> Reading:
    """A reading from a row of `READING`."""
    phase, direction, setting, reference, unit = cells
    known = torque_unit(str(unit))
    return Reading(
        Phase(str(phase)), Direction(str(direction)), float(str(setting)), float(str(reference)), str(unit), known.nm
    )


def kept_of(line: Line, cells: Sequence[object], readings: tuple[Reading, ...], withdrawn: bool) -> Kept:
    """A certificate from a row of `CERTIFICATE`."""
    row = dict(zip(CERTIFICATE.split(", "), cells, strict=True))
    low, high = optional(row["low_nm"]), optional(row["high_nm"])
    accepted = optional(row["accepted_pct"])
    paper = Certificate(
        number=str(row["number"]),
        on=line.day,
        laboratory=str(row["laboratory"]),
        readings=readings,
        device=str(row["device"]),
        uncertainty_pct=optional(row["uncertainty_pct"]),
        temperature_c=optional(row["temperature_c"]),
        note=str(row["note"]),
    )
    return Kept(
        line=line,
        certificate=paper,
        limit=float(str(row["limit_pct"])) / 100,
        accepted=None if accepted is None else accepted / 100,
        as_found=str(row["as_found"]),
        as_left=str(row["as_left"]),
        fitness=Fitness(str(row["fitness"])),
        usable=None if low is None or high is None else (low, high),
        two_way=bool(row["two_way"]),
        why=str(row["why"]),
        mended=bool(row["mended"]),
        withdrawn=withdrawn,
    )


def optional(value: object) -> float | None:
    """A number that may be absent."""
    return None if value is None else float(str(value))


def add_line(crib: Crib, line: Line, certificate: str = "") -> Line:
    """Append one line, chained to the one before. Inside `posting()`. `certificate` is its canonical text, if any."""
    last = crib.connection.execute("SELECT id, digest FROM wrench_event ORDER BY id DESC LIMIT 1").fetchone() or (0, "")
    posted = replace(line, id=last[0] + 1)
    posted = replace(posted, digest=digest(last[1], posted, certificate))
    cells = (posted.id, posted.at, posted.day.isoformat(), posted.by, posted.tag, posted.what, posted.note)
    crib.connection.execute(
        "INSERT INTO wrench_event (id, at, day, by, tag, what, note, withdraws, digest) VALUES (?,?,?,?,?,?,?,?,?)",
        (*cells, posted.withdraws, posted.digest),
    )
    head = f"{posted.id}:{posted.digest}"
    crib.connection.execute("INSERT OR REPLACE INTO fact (name, value) VALUES (?, ?)", (HEAD, head))
    return posted


def digest(before: str, line: Line, certificate: str = "") -> str:
    """SHA-256 over the digest before, the line and its certificate, each on a line of its own."""
    from hashlib import sha256  # readers never need it

    cells = (line.id, line.at, line.day.isoformat(), line.by, line.tag, line.what, line.note, line.withdraws)
    text = "\n".join((before, json.dumps(cells, ensure_ascii=False), certificate))
    return sha256(text.encode("utf-8")).hexdigest()


def canonical(row: Sequence[object], readings: Iterable[Reading]) -> str:
    """A certificate and its readings as one text, the same for the same content."""
    cells = [[r.phase.value, r.direction.value, float(r.setting), float(r.reference), r.unit] for r in readings]
    return json.dumps([list(row), cells], ensure_ascii=False)


def row_of(finding: Finding, limit: float, accepted: float | None, mended: bool) -> tuple[object, ...]:
    """The values of `CERTIFICATE` for a finding. Percent are rounded to hide the dust of binary fractions."""
    paper = finding.certificate
    low, high = finding.usable or (None, None)
    return (
        paper.number,
        paper.laboratory,
        paper.device,
        optional(paper.uncertainty_pct),
        optional(paper.temperature_c),
        paper.note,
        float(f"{limit * 100:.12g}"),
        None if accepted is None else float(f"{accepted * 100:.12g}"),
        finding.as_found.outcome.value if finding.as_found else "",
        finding.as_left.outcome.value if finding.as_left else "",
        finding.fitness.value,
        optional(low),
        optional(high),
        int(finding.two_way),
        finding.why,
        int(mended),
    )


def add_certificate(
    crib: Crib, tag: str, finding: Finding, limit: float, accepted: float | None, mended: bool, by: str, at: str
) -> Line:
    """Append a judged certificate. Inside `posting()`."""
    row, readings = row_of(finding, limit, accepted, mended), finding.certificate.readings
    line = add_line(crib, Line(0, at, finding.certificate.on, by, tag, CALIBRATED), canonical(row, readings))
    marks = ", ".join("?" * (len(row) + 1))
    crib.connection.execute(f"INSERT INTO certificate (event, {CERTIFICATE}) VALUES ({marks})", (line.id, *row))
    crib.connection.executemany(
        f"INSERT INTO reading (event, place, {READING}) VALUES (?, ?, ?, ?, ?, ?, ?)",
        [
            (line.id, place, r.phase.value, r.direction.value, r.setting, r.reference, r.unit)
            for place, r in enumerate(readings)
        ],
    )
    return line


def broken_line(crib: Crib) -> int | None:
    """The first line of the wrenches' chain that was changed behind the program's back; None if all is whole."""
    before = ""
    count = 0
    for row in crib.connection.execute(f"{LINE} ORDER BY id").fetchall():
        line = line_of(row)
        count += 1
        if line.id != count or line.digest != digest(before, line, stored_text(crib.connection, line.id)):
            return count
        before = line.digest
    head = crib.connection.execute("SELECT value FROM fact WHERE name = ?", (HEAD,)).fetchone()
    return None if (head[0] if head else "0:") == f"{count}:{before}" else count + 1


def stored_text(connection: sqlite3.Connection, event: int) -> str:
    """The canonical text of a stored certificate; "" where the line has none."""
    row = connection.execute(f"SELECT {CERTIFICATE} FROM certificate WHERE event = ?", (event,)).fetchone()
    if row is None:
        return ""
    found = connection.execute(f"SELECT {READING} FROM reading WHERE event = ? ORDER BY place", (event,))
    return canonical(row, map(reading_of, found.fetchall()))


def rules(crib: Crib) -> Rules:
    """The shop's rules for due dates; the defaults if it set none."""
    row = crib.connection.execute("SELECT value FROM fact WHERE name = ?", (POLICY,)).fetchone()
    if row is None:
        return Rules()
    said = json.loads(row[0])
    return Rules(Policy(said["policy"]), Start(said["start"]), int(said["days_away"]), said["by"], said["at"])


def set_rules(crib: Crib, wanted: Rules) -> None:
    """Keep the shop's rules. Inside `posting()`."""
    text = json.dumps(
        {
            "policy": wanted.policy.value,
            "start": wanted.start.value,
            "days_away": wanted.days_away,
            "by": wanted.by,
            "at": wanted.at,
        }
    )
    crib.connection.execute("INSERT OR REPLACE INTO fact (name, value) VALUES (?, ?)", (POLICY, text))
