"""Asking for a certificate at the keyboard: the same cells that a CSV file would have."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterator

import typer

from cribkit.domain.calibration.certificate import Subject, subject_of
from cribkit.domain.calibration.points import targets
from cribkit.domain.calibration.readings import Direction, Phase
from cribkit.domain.problem import BadInput
from cribkit.domain.torque import Wrench

ASKED = {
    "certificate": "Certificate number",
    "date": "Date (2026-11-30)",
    "laboratory": "Laboratory",
    "device": "Reference device (may be empty)",
    "uncertainty_pct": "Its uncertainty, % of reading, k = 2 (may be empty)",
    "temperature_c": "Temperature, °C (may be empty)",
}
MUST = ("certificate", "date", "laboratory")


def ask_certificate(wrench: Wrench, today: dt.date) -> list[tuple[int, dict[str, str]]]:
    """Rows as from a file; the number of the question stands for the line."""
    subject = subject_of(wrench)
    try:
        said = {name: ask(text, default(name, today)) for name, text in ASKED.items()}
        rows = [said | row for row in ask_readings(subject)]
    except typer.Abort:
        todo = "use --from FILE.csv where nobody can be asked."
        raise BadInput.of("not-answered", "the questions were not answered; nothing was recorded", todo) from None
    return list(enumerate(rows, 1))


def default(name: str, today: dt.date) -> str | None:
    """What an empty answer means: today for the date, nothing for what may be empty, and ask again else."""
    if name == "date":
        return today.isoformat()
    return None if name in MUST else ""


def ask(text: str, otherwise: str | None) -> str:
    """One answer. Questions go to stderr: stdout is for the result."""
    return str(typer.prompt(text, default=otherwise, show_default=bool(otherwise), err=True)).strip()


def ask_readings(subject: Subject) -> Iterator[dict[str, str]]:
    """The points that the wrench's class asks for, as found and, if it was adjusted, as left."""
    typer.echo(f"Class {subject.plan.iso_class}: {subject.plan.readings} readings at each point.", err=True)
    yield from ask_phase(subject, Phase.AS_FOUND)
    if typer.confirm("Was it adjusted (as-left readings)?", default=False, err=True):
        yield from ask_phase(subject, Phase.AS_LEFT)


def ask_phase(subject: Subject, phase: Phase) -> Iterator[dict[str, str]]:
    """Each point in each direction that the wrench works in."""
    for direction in Direction if subject.two_way else (Direction.CLOCKWISE,):
        for target in targets(subject.plan.at, subject.span):
            setting = f"{on_a_mark(target, subject):.6g}"
            text = f"{phase.value}, {direction.value}, {setting} {subject.unit}: readings (empty: not tested)"
            shown = ask(text, "")
            if shown:
                yield {
                    "phase": phase.value,
                    "direction": direction.value,
                    "setting": setting,
                    "reading": ";".join(shown.replace(";", " ").split()),
                }


def on_a_mark(target: float, subject: Subject) -> float:
    """The mark nearest to a point, in the scale's unit; the point itself where there are no marks."""
    value, graduation = target / subject.nm, subject.span.graduation / subject.nm
    return round(value / graduation) * graduation if graduation > 0 else value
