"""The job sheet on paper: verdict, pull list with boxes to tick, torque card with room for initials, cautions."""

from __future__ import annotations

from collections.abc import Iterator

from cribkit.desk.results import Check, Pick, Status, TorqueLine
from cribkit.report.check_words import (
    WAIVED,
    amount,
    card_texts,
    care,
    consumable_row,
    described,
    fastener,
    stated,
    trouble_row,
    verdict,
    waived,
    where,
)
from cribkit.report.paper import BOX, Markup, bullets, heading, html, lines, page, paragraph, table

SHORT = 12  # characters: a tag or a shelf up to here is kept on one line of a phone


def job_sheet(check: Check) -> str:
    """The sheet as a whole HTML page."""
    titles = ", ".join(procedure.title for procedure in check.procedures)
    return page(f"Job sheet: {titles}", parts(check))


def parts(check: Check) -> Iterator[str]:
    """The sheet from the top down."""
    for procedure in check.procedures:
        yield f"<h1>{html(procedure.title)}</h1>"
        revision = f", revision {procedure.revision}" if procedure.revision else ""
        text = f"{procedure.id}{revision}. {procedure.applies_to}. {procedure.source}"
        yield paragraph(text, "note")
    yield paragraph(verdict(check), "verdict")
    yield paragraph(f"Day {check.on.isoformat()}. Job: ____________ Vehicle: ____________ Technician: ____________")
    many = len(check.procedures) > 1
    for title, needs in (("What blocks", check.blocking), (WAIVED, waived(check))):
        if needs:
            yield heading(title)
            yield table(("Status", "Need", "Why", "What to do"), (trouble_row(line, many) for line in needs))
    if check.pull:
        used_up = {pick.tag for line in check.consumables for pick in line.lots}
        yield heading("Pull list, in the order of the shelves")
        rows = (pulled(pick, back=pick.tag not in used_up) for pick in check.pull)
        yield table(("Out", "Shelf", "Tag", "How many", "What", "Back"), rows)
    if check.torques:
        yield heading("Torque card")
        yield table(("Fastener", "Spec", "Do", "Initials"), (torque(line, many) for line in check.torques))
    if check.consumables:
        yield heading("Consumables")
        yield table(("Status", "What", "Take"), (consumable_row(line, many) for line in check.consumables))
    yield heading("Take care")
    yield bullets(care(check))


def pulled(pick: Pick, back: bool) -> tuple[object, ...]:
    """One thing to pull, with a box for its way back unless it is used up."""
    whole = amount(pick.count, pick.unit)
    return BOX, unbroken(pick.location), unbroken(pick.tag), unbroken(whole), described(pick), BOX if back else ""


def unbroken(text: str) -> str:
    """A tag or shelf stays on one line, as it is looked for as a whole; a long one may break."""
    return Markup(f'<span class="whole">{html(text)}</span>') if len(text) <= SHORT else text


def torque(line: TorqueLine, many: bool) -> tuple[object, ...]:
    """One torque with a place for initials for each fastener's pass."""
    texts: list[object] = list(card_texts(line))
    if line.status is not Status.READY:
        texts = [Markup(f"<strong>{lines(texts[:1])}</strong>"), *texts[1:]]
    room = Markup('<div class="initials">&nbsp;</div>')
    return fastener(line) + where(line, many), stated(line), lines(texts), room
