"""The restock list on a page: what blocks planned jobs, what to order from whom and why, what else needs a hand."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from textwrap import wrap

from cribkit.desk.plan import NotStocked
from cribkit.desk.restock import Ratio, Restock
from cribkit.desk.results import Status
from cribkit.domain.quantity import format_amount
from cribkit.domain.stock.explain import Step, explain, figure, reason
from cribkit.domain.stock.purchase import Group
from cribkit.domain.stock.reorder import Line
from cribkit.report.answer import Answer, Listing
from cribkit.report.restock_data import as_listing, as_result, line_result, sheet, why
from cribkit.report.restock_words import (
    counted,
    group_head,
    lateness,
    ordered,
    shortages,
    until,
    verdict,
    wasted,
)

INDENT = " " * 9


def answer(result: Restock, every: bool = False) -> Answer:
    """The list in every form. `every`: the page shows the lines with nothing to order too."""
    return Answer(
        command="restock",
        ok=result.nothing_to_do,
        result=lambda: as_result(result),
        listing=lambda: as_listing(result),
        text=lambda width: "\n".join(page(result, width, every)),
        sheet=lambda: sheet(result),
    )


def page(result: Restock, width: int, every: bool) -> Iterator[str]:
    """The whole list, line by line."""
    yield from wrap(verdict(result), width)
    policy = result.policy
    yield from wrap(
        f"On {policy.today.isoformat()}; service {policy.service:.4g}, review every {policy.review_days} d.", width
    )
    if result.jobs:
        names = ", ".join(f"{job.name} by {job.on.isoformat()}" for job in result.jobs)
        yield from wrap(f"Plan: {names}.", width, subsequent_indent="  ")
    yield from section("Planned jobs that go short", (row for line in result.blocked for row in blocked(line, width)))
    for group in result.groups:
        lines = [line for line in group.lines if line.packs or every]
        if lines:
            yield from section(group_head(group), group_rows(group, lines, width), width)
    yield from section(
        "Needs that are not stocked", (row for need in result.not_stocked for row in not_stocked(need, width))
    )
    yield from section("Tools to replace", (row for tool in result.tools for row in entry(
        tool.tag, f"{tool.count:g} x {tool.description}", [tool.why], width)))  # fmt: skip
    yield from section("Torque wrenches due for calibration", (row for one in result.wrenches for row in entry(
        one.tag, one.description, [until(one)], width)))  # fmt: skip
    yield from section("Waste", (row for line in result.wasted for row in entry(
        line.held.tag, line.held.description, [wasted(line)], width)))  # fmt: skip
    yield from section("Late orders", late_rows(result, width))
    if not every and (rest := len(result.lines) - len(result.to_order)):
        yield ""
        yield from wrap(
            f"{counted(rest, 'other consumable')} with enough; --all shows them, --explain TAG the sums.", width
        )


def section(title: str, rows: Iterable[str], width: int = 80) -> Iterator[str]:
    """A heading and its rows; nothing where there are no rows."""
    rows = list(rows)
    if rows:
        lines = wrap(title, width)
        yield from ("", *lines, "-" * max(map(len, lines)), *rows)


def entry(tag: str, text: str, more: Iterable[str], width: int, right: str = "") -> Iterator[str]:
    """A tag, what it is, something at the right edge, and sentences under it."""
    room = width - len(right) - 2 if right else width
    first, *rest = wrap(f"{tag:8} {text}", room, subsequent_indent=INDENT) or [tag]
    yield f"{first:{room}}  {right}" if right else first
    yield from rest
    for sentence in more:
        yield from wrap(sentence, width, initial_indent=INDENT, subsequent_indent=INDENT)


def blocked(line: Line, width: int) -> Iterator[str]:
    """Which jobs a line leaves short, and when an order would come."""
    yield from entry(line.held.tag, line.held.description, shortages(line), width)


def group_rows(group: Group, lines: Iterable[Line], width: int) -> Iterator[str]:
    """The lines of one supplier."""
    if group.note:
        yield from wrap(group.note, width)
    for line in lines:
        cost = "" if line.cost is None else f" {line.cost:9.2f}"
        right = f"{ordered(line)}{cost}" if line.packs else "enough"
        yield from entry(line.held.tag, line.held.description, why(line), width, right)


def not_stocked(need: NotStocked, width: int) -> Iterator[str]:
    """A need that nothing serves for certain."""
    word = "NEW" if need.status is Status.ABSENT else "CONFIRM"
    what = f"{format_amount(need.amount, need.unit)} x {need.need}" if need.unit == "each" else (
        f"{format_amount(need.amount, need.unit)} of {need.need}")  # fmt: skip
    sentences = [f"for {', '.join(need.jobs)} by {need.on.isoformat()}; {need.why}", f"-> {need.next}"]
    yield from entry(word, what, sentences, width)


def late_rows(result: Restock, width: int) -> Iterator[str]:
    """Orders that should have come."""
    for order in result.late:
        text, missing = lateness(order, result.policy.today)
        yield from entry(f"order {order.id}", text, [f"still to come: {missing}"], width)


# ---------------------------------------------------------------- the working of one line


def explained(line: Line, ratio: Ratio | None = None) -> Answer:
    """The working of one line, to be checked with a calculator. `ratio`: what closed jobs used of the estimates."""
    steps = (*learned(ratio), *explain(line))
    head = f"{line.held.tag}: {line.held.description}"
    return Answer(
        command="restock",
        ok=not line.packs,
        result=lambda: {
            "line": line_result(line),
            "working": [{"what": step.what, "sums": step.sums, "result": step.result} for step in steps],
        },
        listing=lambda: Listing(("what", "sums", "result"), tuple((s.what, s.sums, s.result) for s in steps)),
        text=lambda width: "\n".join([*wrap(head, width), *wrap(reason(line), width), "", *working(steps, width)]),
    )


def learned(ratio: Ratio | None) -> Iterator[Step]:
    """What closed jobs taught about the procedures' amounts."""
    if ratio is None:
        return
    jobs = f"used ÷ estimated, {counted(ratio.jobs, 'closed job')}"
    said = figure(ratio.used / ratio.planned)
    yield Step(
        jobs, f"{figure(ratio.used)} ÷ {figure(ratio.planned)}", said if ratio.counts else f"{said} (too few: 1)"
    )


def working(steps: Iterable[Step], width: int) -> Iterator[str]:
    """One step a line: what, the sum, the result."""
    for step in steps:
        sums = f"{step.sums} = " if step.sums else ""
        yield from wrap(f"{step.what + ':':38} {sums}{step.result}", width, subsequent_indent=" " * 39)
