"""The pre-job check on a page: the verdict, what blocks, the pull list, the torque card, consumables, cautions.

Columns are aligned here and not by tabulate: importing tabulate would add half as much again to the time of a check
(docs/performance.md).
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from textwrap import wrap

from cribkit.desk.results import Check, ConsumableLine, Line, Pick, Status, ToolLine, TorqueLine
from cribkit.report.answer import Answer, Listing
from cribkit.report.check_words import (
    WAIVED,
    amount,
    card_texts,
    care,
    consumable_row,
    described,
    fastener,
    mark,
    name,
    stated,
    trouble_row,
    verdict,
    waived,
    where,
)
from cribkit.report.forms import escape_markdown

CAUTION = (
    "The vehicle maker's service information, local codes and licensed practice come first; "
    "this report does not replace them."
)


def answer(check: Check) -> Answer:
    """The check in every form."""
    return Answer(
        command="check",
        ok=check.ready,
        result=lambda: as_result(check),
        listing=lambda: as_listing(check),
        text=lambda width: "\n".join(page(check, width)),
        markdown=lambda: "\n".join(as_markdown(check)),
        sheet=lambda: sheet(check),
    )


def sheet(check: Check) -> str:
    """The job sheet for paper."""
    from cribkit.report.sheet import job_sheet

    return job_sheet(check)


# ---------------------------------------------------------------- the page for a terminal


def page(check: Check, width: int) -> Iterator[str]:
    """The whole report, line by line."""
    yield verdict(check)
    for procedure in check.procedures:
        revision = f" Revision {procedure.revision}." if procedure.revision else ""
        head = f"{procedure.id}: {procedure.title}. {procedure.applies_to}.{revision}"
        yield from wrap(head, width, subsequent_indent="  ")
    yield f"On {check.on.isoformat()}."
    many = len(check.procedures) > 1
    yield from section("What blocks", (row for line in check.blocking for row in trouble(line, width, many)))
    yield from section(WAIVED, (row for line in waived(check) for row in trouble(line, width, many)))
    yield from section("Pull list, in the order of the shelves", pull_rows(check.pull, width))
    yield from section("Torque card", (row for line in check.torques for row in card(line, width, many)))
    yield from section("Consumables", (row for line in check.consumables for row in consumable(line, width, many)))
    yield from section("Take care", (row for text in care(check) for row in bullet(text, width)))
    yield ""
    yield from wrap(CAUTION, width)


def section(title: str, rows: Iterable[str]) -> Iterator[str]:
    """A heading and its rows; nothing where there are no rows."""
    rows = list(rows)
    if rows:
        yield ""
        yield title
        yield "-" * len(title)
        yield from rows


def trouble(line: Line, width: int, many: bool) -> Iterator[str]:
    """Status, what it is, why, and what to do."""
    label = f"{line.status.value:8}"
    yield from wrap(f"{label} {name(line)}{where(line, many)}", width, subsequent_indent=" " * 9)
    yield from indented(line.why, width, " " * 9)
    yield from indented(line.next, width, " " * 9, first=" " * 9 + "-> ")


def indented(text: str, width: int, indent: str, first: str = "") -> list[str]:
    """Text under its line."""
    return wrap(text, width, initial_indent=first or indent, subsequent_indent=indent + ("   " if first else ""))


def bullet(text: str, width: int) -> list[str]:
    """One caution."""
    return wrap(text, width, initial_indent="- ", subsequent_indent="  ")


def pull_rows(pull: tuple[Pick, ...], width: int) -> Iterator[str]:
    """Shelf, tag, how many, what."""
    shelf = max((len(pick.location or "no place") for pick in pull), default=0)
    tag = max((len(pick.tag) for pick in pull), default=0)
    for pick in pull:
        head = f"{pick.location or 'no place':{shelf}}  {pick.tag:{tag}}  {amount(pick.count, pick.unit):>7}  "
        yield from wrap(head + described(pick), width, subsequent_indent=" " * len(head), drop_whitespace=True)


def card(line: TorqueLine, width: int, many: bool) -> Iterator[str]:
    """One torque: the spec as written, the wrench and its mark, the way, the order."""
    head = f"{line.need.id}: {fastener(line)}, {stated(line)}{where(line, many)}"
    yield from wrap(head, width, subsequent_indent="    ")
    for text in card_texts(line):
        yield from wrap(text, width, initial_indent="    ", subsequent_indent="      ")


def consumable(line: ConsumableLine, width: int, many: bool) -> Iterator[str]:
    """Status, what, how much, from which lots, never what."""
    yield from wrap(f"{line.status.value:8} {name(line)}{where(line, many)}", width, subsequent_indent=" " * 9)
    for pick in line.lots:
        yield from indented(f"{pick.tag}: {amount(pick.count, pick.unit)} of {described(pick)}", width, " " * 9)
    if line.need.never:
        yield from indented(f"never: {', '.join(line.need.never)}", width, " " * 9)


# ---------------------------------------------------------------- the other forms


def as_result(check: Check) -> dict[str, object]:
    """The JSON contract's result."""
    return {
        "ready": check.ready,
        "on": check.on.isoformat(),
        "procedures": [procedure.id for procedure in check.procedures],
        "tools": [tool_result(line) for line in check.tools],
        "torques": [torque_result(line) for line in check.torques],
        "consumables": [consumable_result(line) for line in check.consumables],
        "cautions": list(care(check)),
    }


def tool_result(line: ToolLine) -> dict[str, object]:
    """One entry of result.tools."""
    return {
        "procedure": line.procedure,
        "need": line.need.need,
        "status": line.status.value,
        "count": line.need.count,
        "picked": [{"tag": p.tag, "count": int(p.count), "location": p.location} for p in line.picked],
        "why": line.why,
        "next": line.next,
    }


def torque_result(line: TorqueLine) -> dict[str, object]:
    """One entry of result.torques. Torques in N·m."""
    covered = line.coverage if line.status is Status.READY else None
    return {
        "procedure": line.procedure,
        "id": line.need.id,
        "fastener": line.need.fastener,
        "count": line.need.count,
        "spec": line.spec.text,
        "target_nm": line.spec.target_nm,
        "low_nm": line.spec.low_nm,
        "high_nm": line.spec.high_nm,
        "status": line.status.value,
        "wrench": covered.tag if covered else None,
        "setting": covered.setting if covered else None,
        "setting_unit": covered.setting_unit if covered else None,
        "applied_low_nm": covered.applied_low_nm if covered else None,
        "applied_high_nm": covered.applied_high_nm if covered else None,
        "reach": [pick.tag for pick in line.reach],
        "rejected": [{"tag": wrench.tag, "reasons": list(wrench.reasons)} for wrench in line.rejected],
        "why": line.why,
    }


def consumable_result(line: ConsumableLine) -> dict[str, object]:
    """One entry of result.consumables. Amounts in `unit`."""
    return {
        "procedure": line.procedure,
        "need": line.need.need,
        "status": line.status.value,
        "tag": line.tag or None,
        "needed": line.needed,
        "on_hand": line.on_hand,
        "short": line.short,
        "unit": line.unit,
        "lots": [pick.lot for pick in line.lots if pick.lot],
        "why": line.why,
    }


COLUMNS = ("procedure", "part", "need", "status", "take", "amount", "unit", "location", "set to", "why", "next")


def as_listing(check: Check) -> Listing:
    """One row for each need."""
    return Listing(COLUMNS, tuple(listing_row(line) for line in check.lines))


def listing_row(line: Line) -> tuple[object, ...]:
    """A need as a row."""
    picks = line.lots if isinstance(line, ConsumableLine) else line.picked
    part = {ToolLine: "tool", TorqueLine: "torque", ConsumableLine: "consumable"}[type(line)]
    tags = " + ".join(dict.fromkeys(pick.tag for pick in picks))
    places = " + ".join(dict.fromkeys(pick.location for pick in picks))
    size = line.needed if isinstance(line, ConsumableLine) else line.need.count
    unit = line.unit if isinstance(line, ConsumableLine) else "each"
    setting = (
        mark(line.coverage) if isinstance(line, TorqueLine) and line.coverage and line.status is Status.READY else ""
    )
    return (
        line.procedure,
        part,
        plain_name(line),
        line.status.value,
        tags,
        size,
        unit,
        places,
        setting,
        line.why,
        line.next,
    )


def plain_name(line: Line) -> str:
    """The need without its count."""
    return f"{line.need.fastener}: {line.spec.text}" if isinstance(line, TorqueLine) else line.need.need


def as_markdown(check: Check) -> Iterator[str]:
    """The report for a wiki or a message."""
    yield f"# {verdict(check)}"
    yield ""
    for procedure in check.procedures:
        yield f"- {escape_markdown(f'{procedure.id}: {procedure.title}, {procedure.applies_to}')}"
    yield f"- on {check.on.isoformat()}"
    many = len(check.procedures) > 1
    rows = ("status", "need", "why", "next")
    yield from markdown_table("What blocks", rows, (trouble_row(line, many) for line in check.blocking))
    yield from markdown_table(WAIVED, rows, (trouble_row(line, many) for line in waived(check)))
    yield from markdown_table("Pull list", ("shelf", "tag", "amount", "what"), map(pull_row, check.pull))
    card = (card_row(line, many) for line in check.torques)
    yield from markdown_table("Torque card", ("fastener", "spec", "do"), card)
    taken = (consumable_row(line, many) for line in check.consumables)
    yield from markdown_table("Consumables", ("status", "need", "take"), taken)
    yield from ("", "## Take care", "")
    yield from (f"- {escape_markdown(text)}" for text in (*care(check), CAUTION))


def markdown_table(title: str, columns: tuple[str, ...], rows: Iterable[tuple[str, ...]]) -> Iterator[str]:
    """A heading and a pipe table; nothing where there are no rows."""
    rows = list(rows)
    if rows:
        yield from ("", f"## {title}", "")
        yield "| " + " | ".join(columns) + " |"
        yield "|" + " --- |" * len(columns)
        yield from ("| " + " | ".join(map(escape_markdown, row)) + " |" for row in rows)


def pull_row(pick: Pick) -> tuple[str, ...]:
    """What to take."""
    return pick.location, pick.tag, amount(pick.count, pick.unit), described(pick)


def card_row(line: TorqueLine, many: bool) -> tuple[str, ...]:
    """A torque."""
    return fastener(line) + where(line, many), stated(line), "; ".join(card_texts(line))
