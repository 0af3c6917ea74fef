"""Certificates as people type them: a CSV with one row for each point (or each reading).

    tag, certificate, date, laboratory, device, uncertainty_pct, temperature_c, phase, direction, setting, reading,
    unit, reading_unit, note

`reading` is what the reference device showed; several readings of one point stand in one cell with `;` between. What
is the same for the whole certificate may be left out after its first row. Every problem is reported, with its line.
"""

from __future__ import annotations

import datetime as dt
import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from cribkit.domain.calibration.certificate import Certificate
from cribkit.domain.calibration.readings import Direction, Phase, Reading
from cribkit.domain.problem import BadInput, Problem
from cribkit.domain.quantity import TorqueUnit, torque_unit

COLUMNS = (
    "tag",
    "certificate",
    "date",
    "laboratory",
    "device",
    "uncertainty_pct",
    "temperature_c",
    "phase",
    "direction",
    "setting",
    "reading",
    "unit",
    "reading_unit",
    "note",
)
REQUIRED = ("certificate", "date", "laboratory", "setting", "reading")
# What a certificate says once; its later rows may leave the cell empty.
ONCE = ("date", "laboratory", "device", "uncertainty_pct", "temperature_c", "note")
FAR_OFF = 0.5  # a deviation beyond this is more likely a slip of the pen or a wrong unit than a wrench

PHASES = {"as-found": Phase.AS_FOUND, "found": Phase.AS_FOUND, "as-left": Phase.AS_LEFT, "left": Phase.AS_LEFT}
DIRECTIONS = {
    "": Direction.CLOCKWISE,
    "cw": Direction.CLOCKWISE,
    "right": Direction.CLOCKWISE,
    "clockwise": Direction.CLOCKWISE,
    "ccw": Direction.COUNTER,
    "left": Direction.COUNTER,
    "counter-clockwise": Direction.COUNTER,
    "anticlockwise": Direction.COUNTER,
    "counterclockwise": Direction.COUNTER,
    "anti-clockwise": Direction.COUNTER,
}

Row = Mapping[str, str]


@dataclass(frozen=True, slots=True)
class Entry:
    """A certificate and the wrench that it is for. `source` is where it starts in the file."""

    tag: str
    certificate: Certificate
    source: str


class Collector:
    """Problems of one file, with the line that is being read."""

    def __init__(self, file: str, far_off: bool = False) -> None:
        self.file, self.line, self.far_off = file, 0, far_off
        self.problems: list[Problem] = []

    def add(self, code: str, message: str, todo: str = "") -> None:
        """Note a problem of the present line."""
        self.problems.append(Problem(f"{self.file}:{self.line}", code, message, todo))


def read_certificates(
    rows: Iterable[tuple[int, Row]], units: Mapping[str, TorqueUnit], file: str, tag: str = "", far_off: bool = False
) -> tuple[tuple[Entry, ...], tuple[Problem, ...]]:
    """The certificates of a file, and every problem with it; with a problem, nothing of it may be recorded.

    `rows` are (line, cells by column name); `units` has the main scale's unit of every wrench in the crib; `tag` is
    the wrench that the person named, if any. Readings off by half or more are refused unless `far_off` says that they
    are right.
    """
    notes = Collector(file, far_off)
    groups: dict[tuple[str, str], list[tuple[int, dict[str, str]]]] = {}
    for line, row in rows:
        notes.line = line
        cells = {name: " ".join((row.get(name) or "").split()) for name in COLUMNS}
        key = identify(cells, units, tag, notes)
        if key is not None:
            groups.setdefault(key, []).append((line, cells))
    if not groups and not notes.problems:
        notes.add("empty", "no readings in it", "write one row for each point.")
    entries = [gather(key, lines, units[key[0]], notes) for key, lines in groups.items()]
    return tuple(entry for entry in entries if entry), tuple(notes.problems)


def identify(
    cells: Mapping[str, str], units: Mapping[str, TorqueUnit], tag: str, notes: Collector
) -> tuple[str, str] | None:
    """The wrench and the certificate number of a row."""
    mine = cells["tag"] or tag
    if tag and mine != tag:
        notes.add("other-wrench", f"this row is for {mine}, not for {tag}", "leave the tag out of the command.")
    elif not mine:
        notes.add("no-tag", "no tag", "fill the tag column, or name the wrench in the command.")
    elif mine not in units:
        notes.add("unknown-wrench", f"{mine} is not a torque wrench of this crib", "see `cribkit wrench list`.")
    elif not cells["certificate"]:
        notes.add("no-certificate", "no certificate number", "fill the certificate column.")
    else:
        return mine, cells["certificate"]
    return None


def gather(
    key: tuple[str, str], lines: list[tuple[int, dict[str, str]]], unit: TorqueUnit, notes: Collector
) -> Entry | None:
    """One certificate from its rows; None if it cannot be built."""
    before = len(notes.problems)
    said = say_once(lines, notes)
    readings = [reading for line, cells in lines for reading in at_line(line, cells, unit, notes)]
    notes.line = lines[0][0]
    day = read_date(said["date"], notes)
    if not said["laboratory"]:
        notes.add("no-laboratory", "no laboratory", "fill the laboratory column.")
    uncertainty = number(said["uncertainty_pct"], "uncertainty_pct", notes, least=0.0, most=100.0)
    temperature = number(said["temperature_c"], "temperature_c", notes, least=-50.0, most=80.0)
    if len(notes.problems) > before or day is None:
        return None
    certificate = Certificate(
        number=key[1],
        on=day,
        laboratory=said["laboratory"],
        readings=tuple(readings),
        device=said["device"],
        uncertainty_pct=uncertainty,
        temperature_c=temperature,
        note=said["note"],
    )
    return Entry(key[0], certificate, f"{notes.file}:{lines[0][0]}")


def say_once(lines: list[tuple[int, dict[str, str]]], notes: Collector) -> dict[str, str]:
    """What the certificate says as a whole; rows that contradict each other are a problem."""
    said = dict.fromkeys(ONCE, "")
    for line, cells in lines:
        notes.line = line
        for name in ONCE:
            if cells[name] and said[name] and cells[name] != said[name]:
                text = f"{name} is {cells[name]!r} here and {said[name]!r} in an earlier row of the same certificate"
                notes.add("contradiction", text, "one certificate has one.")
            said[name] = said[name] or cells[name]
    return said


def at_line(line: int, cells: Mapping[str, str], unit: TorqueUnit, notes: Collector) -> list[Reading]:
    """The readings of one row."""
    notes.line = line
    phase = PHASES.get(cells["phase"].casefold().replace(" ", "-").replace("_", "-"))
    direction = DIRECTIONS.get(cells["direction"].casefold().replace(" ", "-"))
    if phase is None:
        notes.add("unknown-phase", f"phase {cells['phase']!r}", "write as-found or as-left.")
    if direction is None:
        notes.add("unknown-direction", f"direction {cells['direction']!r}", "write clockwise or counter-clockwise.")
    mine = read_unit(cells["unit"], unit, notes)
    theirs = read_unit(cells["reading_unit"], mine, notes)
    setting = number(cells["setting"], "setting", notes, above=0.0)
    shown = [number(text.strip(), "reading", notes, above=0.0) for text in cells["reading"].split(";") if text.strip()]
    if not shown:
        notes.add("no-reading", "no reading", "write what the reference device showed.")
    if phase is None or direction is None or setting is None:
        return []
    found = [
        Reading(
            phase, direction, setting, value if theirs == mine else value * theirs.nm / mine.nm, mine.symbol, mine.nm
        )
        for value in shown
        if value is not None
    ]
    check_sense(found, notes)
    return found


def check_sense(readings: list[Reading], notes: Collector) -> None:
    """A reading that is off by half is likely in another unit or mistyped."""
    for reading in readings:
        if abs(reading.deviation) > FAR_OFF and not notes.far_off:
            text = f"{reading.reference:.6g} read at {reading.setting:.6g} {reading.unit} is off by half or more"
            notes.add("far-off", text, "check the number and its unit; if it is right, say --far-off.")


def read_unit(text: str, otherwise: TorqueUnit, notes: Collector) -> TorqueUnit:
    """The unit of a cell; the other one if the cell is empty."""
    if not text:
        return otherwise
    try:
        return torque_unit(text)
    except BadInput as error:
        notes.add("no-unit", error.problems[0].message, error.problems[0].next)
        return otherwise


def read_date(text: str, notes: Collector) -> dt.date | None:
    """An ISO 8601 date."""
    try:
        return dt.date.fromisoformat(text)
    except ValueError:
        notes.add("no-date", f"date {text!r}", "write it as 2026-11-30.")
        return None


def number(
    text: str,
    name: str,
    notes: Collector,
    least: float = -math.inf,
    most: float = 1e7,
    above: float = -math.inf,
) -> float | None:
    """A plain decimal number; None if the cell is empty or wrong (wrong ones are noted; so are empty settings)."""
    if not text.strip():
        if above == 0.0:
            notes.add("no-number", f"no {name}", "fill it in.")
        return None
    try:
        value = float(text)
    except ValueError:
        notes.add("no-number", f"{name} {text!r} is not a number", "write it like 100.5, without the unit.")
        return None
    if not (math.isfinite(value) and least <= value <= most and value > above):
        notes.add("no-number", f"{name} {text} cannot be", "check it against the certificate.")
        return None
    return value
