"""Where is it: the answers of `find` and the decisions of `confirm` on a page."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from textwrap import wrap

from cribkit.desk.find import Match
from cribkit.domain.stock.item import Confirmation, Item
from cribkit.report.answer import Answer, Listing
from cribkit.report.forms import cell

COLUMNS = ("query", "status", "tag", "description", "location", "on hand", "out", "why")


def answer(matches: Sequence[Match]) -> Answer:
    """`find`: no when some text has no certain match."""
    return Answer(
        command="find",
        ok=all(match.status == "match" for match in matches),
        result=lambda: {"matches": [as_result(match) for match in matches]},
        listing=lambda: Listing(COLUMNS, tuple(map(row, matches))),
        text=lambda width: "\n".join(line for match in matches for line in page(match, width)),
    )


def as_result(match: Match) -> dict[str, object]:
    """One entry of result.matches. Amounts are in the item's unit."""
    best = match.best
    return {
        "query": match.query,
        "status": match.status,
        "tag": best.item.tag if best else None,
        "description": best.item.description if best else None,
        "kind": best.item.kind.value if best else None,
        "score": round(best.judgement.score, 1) if best else 0,
        "why": match.why,
        "location": best.item.location if best else None,
        "on_hand": best.item.on_hand if best else 0,
        "out": best.item.out if best else 0,
        "alternatives": [
            {"tag": other.tag, "description": other.description, "score": round(other.score, 1), "why": other.why}
            for other in match.alternatives
        ],
    }


def row(match: Match) -> tuple[object, ...]:
    """One text as a row."""
    if match.best is None:
        return match.query, match.status, "", "", "", "", "", match.why
    item = match.best.item
    return match.query, match.status, item.tag, item.description, item.location, item.on_hand, item.out, match.why


def page(match: Match, width: int) -> Iterator[str]:
    """What was asked, what it is, where it is, who has the others, why, and what else may do."""
    yield from wrap(match.query, width) or [""]
    if match.best is None:
        yield from indented(f"none: {match.why}", width)
    else:
        item = match.best.item
        label = "" if match.status == "match" else "to be confirmed: "
        yield from indented(f"{label}{item.tag}  {item.description}", width)
        yield from indented(where(item), width)
        yield from indented(f"why: {match.why}", width)
        if match.status != "match":
            yield from indented(f'if it is right: cribkit confirm "{match.query}" {item.tag} --by NAME', width)
    for other in match.alternatives:
        yield from indented(f"also: {other.tag}  {other.description} ({other.why})", width)
    yield ""


def where(item: Item) -> str:
    """The shelf, how much is there, and who has the rest."""
    unit = "" if item.unit == "each" else f" {item.unit}"
    there = f"{item.location or 'no place'}: {cell(item.on_hand)}{unit} on hand"
    away = [f"{cell(loan.amount)} with {loan.by} since {loan.since.isoformat()}" for loan in item.loans]
    state = "" if item.condition.value == "ok" else f"; {item.condition.value}"
    return "; ".join([there, *away]) + state


def indented(text: str, width: int) -> Iterable[str]:
    """A line under its text."""
    return wrap(text, width, initial_indent="  ", subsequent_indent="    ")


def decisions(entries: Sequence[Confirmation]) -> Answer:
    """`confirm` without arguments: every decision in force."""
    columns = ("need", "tag", "by", "on", "anyway")
    rows = tuple((entry.text, entry.tag, entry.by, entry.at, entry.anyway) for entry in entries)
    return Answer(
        command="confirm",
        ok=True,
        result=lambda: {"confirmations": [dict(zip(columns, map(cell, row), strict=True)) for row in rows]},
        listing=lambda: Listing(columns, rows, "No confirmations."),
    )
