"""The job sheet on paper: verdict, pull list with boxes to tick, torque card with room for initials, cautions."""

from __future__ import annotations

from collections.abc import Iterator

from cribkit.desk.results import Check, Line, Pick, Status, TorqueLine
from cribkit.report.check import amount, card_texts, care, consumable_row, counted, described, name, verdict
from cribkit.report.paper import BOX, Markup, bullets, heading, html, lines, page, paragraph, table


def job_sheet(check: Check) -> str:
    """The sheet as a whole HTML page."""
    titles = ", ".join(procedure.title for procedure in check.procedures)
    return page(f"Job sheet: {titles}", parts(check))


def parts(check: Check) -> Iterator[str]:
    """The sheet from the top down."""
    for procedure in check.procedures:
        yield f"<h1>{html(procedure.title)}</h1>"
        text = f"{procedure.id}, revision {procedure.revision}. {procedure.applies_to}. {procedure.source}"
        yield paragraph(text, "note")
    yield paragraph(verdict(check), "verdict")
    yield paragraph(f"Day {check.on.isoformat()}. Job: ____________ Vehicle: ____________ Technician: ____________")
    if check.blocking:
        yield heading("What blocks")
        yield table(("Status", "Need", "Why", "What to do"), (blocked(line) for line in check.blocking))
    if check.pull:
        yield heading("Pull list, in the order of the shelves")
        yield table(("Out", "Shelf", "Tag", "How many", "What", "Back"), (pulled(pick) for pick in check.pull))
    if check.torques:
        yield heading("Torque card")
        yield table(("Fastener", "Spec", "Do", "Initials"), (torque(line) for line in check.torques))
    if check.consumables:
        yield heading("Consumables")
        yield table(("Status", "What", "Take"), (consumable_row(line) for line in check.consumables))
    yield heading("Take care")
    yield bullets(care(check))


def blocked(line: Line) -> tuple[object, ...]:
    """A need that blocks."""
    return line.status.value, name(line), line.why, line.next


def pulled(pick: Pick) -> tuple[object, ...]:
    """One thing to pull, and to bring back."""
    back: object = BOX if pick.unit == "each" and not pick.lot else ""
    return BOX, pick.location, pick.tag, amount(pick.count, pick.unit), described(pick), back


def torque(line: TorqueLine) -> tuple[object, ...]:
    """One torque with a place for initials for each fastener's pass."""
    texts: list[object] = list(card_texts(line))
    if line.status is not Status.READY:
        texts = [Markup(f"<strong>{lines(texts[:1])}</strong>"), *texts[1:]]
    return (
        counted(line.need.count, line.need.fastener),
        line.spec.text,
        lines(texts),
        Markup('<div class="initials">&nbsp;</div>'),
    )
