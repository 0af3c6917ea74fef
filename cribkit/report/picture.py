"""The picture of torque ranges for the terminal: plain letters, so that every terminal shows it."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from string import ascii_lowercase, ascii_uppercase
from textwrap import wrap

from cribkit.desk.wrenches import Chart, Mark, Row
from cribkit.report.axis import Axis, axis_for

NAMES = 16  # columns for the names on the left
NAMES_OF_OPEN = ascii_uppercase + ascii_lowercase
SHORT = {"no-calibration": "no calib."}
LEGEND = (
    "[===]  usable today    [:::]  not usable today    ---  on the scale, below the usable range",
    "o  a torque that some wrench covers (2-9, +: so many on one spot)    A, B ...  one that none covers",
)


def ends(chart: Chart) -> Iterator[float]:
    """Every torque that the axis must hold."""
    for row in chart.rows:
        for scale, usable in zip(row.wrench.scales, row.wrench.usable, strict=True):
            yield from (usable.low * scale.unit.nm, scale.high * scale.unit.nm)
    for mark in chart.marks:
        yield from (mark.low_nm, mark.high_nm)


def letters(marks: Iterable[Mark]) -> dict[int, str]:
    """The letter of each torque that is not covered, by its place among the marks; "*" when letters run out."""
    open_ones = [at for at, mark in enumerate(marks) if not mark.covered]
    return {at: NAMES_OF_OPEN[n] if n < len(NAMES_OF_OPEN) else "*" for n, at in enumerate(open_ones)}


def as_text(chart: Chart, width: int) -> str:
    """The whole picture, so many columns wide."""
    axis = axis_for(ends(chart), max(width, 40) - NAMES - 2)
    names = letters(chart.marks)
    parts = [
        *header(axis),
        *(bar(row, axis) for row in chart.rows),
        "",
        *strips(chart.marks, names, axis),
        "",
        *(line for text in LEGEND for line in wrap(text, width)),
        *listing(chart, names, width),
    ]
    return "\n".join(line.rstrip() for line in parts)


def header(axis: Axis) -> tuple[str, str]:
    """The values along the axis and their ticks; a value that would touch the one before is left out."""
    numbers, ticks = [" "] * (int(axis.length) + 8), ["-"] * (int(axis.length) + 1)
    free = 0
    for value in axis.ticks():
        at = column(axis, value)
        text = f"{value:g}"
        ticks[at] = "+"
        start = max(0, min(at - len(text) // 2, int(axis.length) + 1 - len(text)))
        if start >= free:
            numbers[start : start + len(text)] = text
            free = start + len(text) + 1
    return named("N·m", "".join(numbers)), named("", "".join(ticks))


def named(name: str, line: str) -> str:
    """A line of the picture with its name on the left."""
    return f"{name[:NAMES]:<{NAMES}} {line}"


def column(axis: Axis, torque_nm: float) -> int:
    """The column of a torque."""
    return round(axis.at(torque_nm))


def bar(row: Row, axis: Axis) -> str:
    """One wrench: its scale, and the usable part of it."""
    cells = [" "] * (int(axis.length) + 1)
    scale, usable = row.wrench.scales[0], row.wrench.usable[0]
    nm = scale.unit.nm
    low, high = column(axis, usable.low * nm), column(axis, usable.high * nm)
    bottom = column(axis, max(scale.low * nm, axis.low))
    cells[bottom : column(axis, scale.high * nm) + 1] = "-" * (column(axis, scale.high * nm) + 1 - bottom)
    if usable:
        cells[low : high + 1] = bracket(high - low + 1, ":" if row.reasons else "=")
    return named(f"{row.wrench.tag} {', '.join(SHORT.get(reason, reason) for reason in row.reasons)}", "".join(cells))


def bracket(length: int, fill: str) -> str:
    """A range of so many columns; a single value is one sign."""
    return {1: "#" if fill == "=" else fill, 2: "[]"}.get(length, f"[{fill * (length - 2)}]")


def strips(marks: Sequence[Mark], names: dict[int, str], axis: Axis) -> Iterator[str]:
    """The torques of the procedures: how many are covered on each spot, and a letter for each that is not."""
    counts = [0] * (int(axis.length) + 1)
    for mark in marks:
        counts[column(axis, mark.target_nm)] += mark.covered
    yield named("covered", "".join(" o23456789"[count] if count < 10 else "+" for count in counts))
    lanes: list[list[str]] = [[" "] * (int(axis.length) + 1)]
    for at, name in names.items():
        place = column(axis, marks[at].target_nm)
        lane = next((lane for lane in lanes if lane[place] == " "), None)
        if lane is None:
            lanes.append(lane := [" "] * (int(axis.length) + 1))
        lane[place] = name
    for n, lane in enumerate(lanes):
        yield named("not covered" if n == 0 else "", "".join(lane))


def listing(chart: Chart, names: dict[int, str], width: int) -> Iterator[str]:
    """Each torque that is not covered, by its letter, with the reason of the nearest wrench."""
    if not chart.marks:
        yield "No torques: name procedures, or a folder with --procedures."
        return
    yield ""
    yield f"{len(names)} of {len(chart.marks)} torques are not covered on {chart.on.isoformat()}" + (
        ":" if names else "."
    )
    for at, name in names.items():
        mark = chart.marks[at]
        text = f"{name}  {mark.target_nm:.4g} N·m: {mark.procedure} {mark.id}, {mark.text}; {mark.why}"
        yield from wrap(text, width, subsequent_indent="   ")
