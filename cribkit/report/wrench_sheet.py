"""The sheet of one calibration, and labels for the wrenches, on paper."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable, Mapping
from dataclasses import replace

from cribkit.desk.papers import Label, Sheet
from cribkit.domain.calibration.readings import Direction, Point, Verdict
from cribkit.report import paper
from cribkit.report.answer import Answer, Listing
from cribkit.report.calibration import fitness_text, recorded_json, verdict_text
from cribkit.report.deviation_plot import legend, plot

LABEL_STYLE = """
.labels { display: flex; flex-wrap: wrap; gap: 4mm; }
.label { border: 1.5px solid #000; border-radius: 2mm; width: 58mm; min-height: 34mm; padding: 2mm 3mm;
  box-sizing: border-box; break-inside: avoid; font-size: 9.5pt; overflow-wrap: anywhere; }
.label b { font-size: 13pt; } .label .due { font-weight: bold; font-size: 11pt; }
.label .stop { border: 2px solid #000; padding: 0 1mm; font-weight: bold; }
"""


def sheet_answer(found: Sheet) -> Answer:
    """The record of one calibration."""
    return Answer(
        command="wrench sheet",
        ok=True,
        result=lambda: recorded_json(found.recorded),
        listing=lambda: sheet_listing(found),
        sheet=lambda: sheet_page(found),
    )


def sheet_listing(found: Sheet) -> Listing:
    """One row for each reading."""
    return Listing(
        ("phase", "direction", "setting", "unit", "reading", "deviation %"),
        tuple(
            (
                reading.phase.value,
                reading.direction.value,
                reading.setting,
                reading.unit,
                reading.reference,
                f"{reading.deviation * 100:+.3f}",
            )
            for reading in found.recorded.finding.certificate.readings
        ),
        empty="No readings.",
    )


def sheet_page(found: Sheet) -> str:
    """Verdict first, then the certificate, a plot for each direction, and every reading."""
    finding = found.recorded.finding
    title = f"Calibration of torque wrench {found.recorded.tag}"
    parts = [
        paper.Markup(f"<h1>{paper.html(title)}</h1>"),
        paper.paragraph(found.recorded.description),
        paper.paragraph(fitness_text(finding), "verdict"),
        paper.bullets(remarks(found)),
        paper.table(("Certificate", ""), facts(found)),
    ]
    verdicts = [verdict for verdict in (finding.as_found, finding.as_left) if verdict]
    for direction in Direction:
        mine = [one for verdict in verdicts if (one := only(verdict, direction)) is not None]
        if mine:
            parts.append(paper.heading(f"Deviation, {direction.value}"))
            parts.append(plot(mine, found.limit, found.accepted, mine[0].points[0].unit))
            parts.append(paper.paragraph(legend(found.accepted is not None), "note"))
            parts.append(paper.table(COLUMNS, (row for one in mine for row in rows(one))))
    parts.append(
        paper.paragraph(
            "Deviation = (setting - reference) / reference, as ISO 6789 defines it. "
            "Every single reading has to lie inside the limit.",
            "note",
        )
    )
    return paper.page(title, parts)


COLUMNS = ("Phase", "Setting", "Readings of the reference", "Deviations, %", "Verdict")


def rows(verdict: Verdict) -> Iterable[tuple[object, ...]]:
    """One row for each point."""
    for point in verdict.points:
        yield (
            verdict.phase.value,
            f"{point.setting:.6g} {point.unit}",
            ", ".join(f"{reference(point, deviation):.5g}" for deviation in point.deviations),
            ", ".join(f"{deviation * 100:+.2f}" for deviation in point.deviations),
            point.outcome.value,
        )


def reference(point: Point, deviation: float) -> float:
    """The reading of the reference device behind a deviation."""
    return point.setting / (1 + deviation)


def only(verdict: Verdict, direction: Direction) -> Verdict | None:
    """One direction of a verdict."""
    side = verdict.side(direction)
    return None if side is None else replace(verdict, sides=(side,))


def remarks(found: Sheet) -> list[str]:
    """Verdicts of both phases, and the warnings."""
    finding = found.recorded.finding
    said = [verdict_text(verdict) for verdict in (finding.as_found, finding.as_left) if verdict]
    said += [problem.message for problem in finding.warnings]
    if not found.recorded.newest:
        said.append("A younger calibration is on record: it decides what the wrench may be used for.")
    return said


def facts(found: Sheet) -> list[tuple[str, str]]:
    """What the certificate says about itself."""
    certificate = found.recorded.finding.certificate
    uncertainty, temperature = certificate.uncertainty_pct, certificate.temperature_c
    limit = f"±{found.limit * 100:.3g} %"
    if found.accepted is not None:
        limit += f", accepted inside ±{found.accepted * 100:.3g} % (guard band)"
    pairs = [
        ("Number", certificate.number),
        ("Date", certificate.on.isoformat()),
        ("Laboratory", certificate.laboratory),
        ("Reference device", certificate.device),
        ("Its uncertainty (k = 2)", "" if uncertainty is None else f"{uncertainty:.3g} %"),
        ("Room", "" if temperature is None else f"{temperature:.3g} °C"),
        ("Limit", limit),
        ("Type of ISO 6789", found.iso_class),
        ("Asked for before readings", found.preload),
        ("Recorded by", f"{found.by}, {found.at}"),
        ("Note", certificate.note),
    ]
    return [(name, text) for name, text in pairs if text]


def label_answer(labels: tuple[Label, ...]) -> Answer:
    """Labels to print and stick on."""
    return Answer(
        command="wrench labels",
        ok=True,
        result=lambda: {"labels": [label_json(label) for label in labels]},
        listing=lambda: label_listing(labels),
        sheet=lambda: label_page(labels),
    )


def label_listing(labels: Iterable[Label]) -> Listing:
    """One row for each label."""
    return Listing(
        ("tag", "calibrated", "due", "certificate", "limited to", "not for use"),
        tuple((one.tag, one.calibrated_on, due_words(one), one.certificate, one.limited, one.stop) for one in labels),
        empty="No torque wrenches.",
    )


def due_words(label: Label) -> dt.date | str | None:
    """The last good day, or what decides it."""
    return label.until or (label.no_date if label.calibrated_on else None)


def label_json(label: Label) -> Mapping[str, object]:
    """One label in the JSON contract."""
    return {
        "tag": label.tag,
        "calibrated_on": label.calibrated_on,
        "due": label.until,
        "certificate": label.certificate,
        "limited_to": label.limited,
        "not_for_use": label.stop,
    }


def label_page(labels: Iterable[Label]) -> str:
    """Several labels on a sheet. Words only: nobody has to know a colour."""
    inside = "".join(f'<div class="label">{"<br>".join(label_lines(label))}</div>' for label in labels)
    title = "Labels for torque wrenches"
    parts = [paper.Markup(f"<h1>{title}</h1>"), paper.Markup(f'<div class="labels">{inside}</div>')]
    return paper.page(title, parts, LABEL_STYLE)


def label_lines(label: Label) -> list[str]:
    """The words of one label. One that must not be used shows no due date."""
    lines = [f"<b>{paper.html(label.tag)}</b> {paper.html(label.range)}"]
    if label.stop:
        lines.append(f'<span class="stop">NOT FOR USE</span> {paper.html(label.stop)}')
    if label.calibrated_on:
        lines.append(f"calibrated {label.calibrated_on}")
    if label.calibrated_on and not label.stop:
        due = f"due {label.until}" if label.until else f"due {paper.html(label.no_date)}"
        lines += [f'<span class="due">{due}</span>', paper.html(label.cycles)]
    if label.certificate:
        lines.append(f"certificate {paper.html(label.certificate)}")
    if label.limited:
        lines.append(f'<span class="stop">LIMITED</span> {paper.html(label.limited)}')
    return [line for line in lines if line]
