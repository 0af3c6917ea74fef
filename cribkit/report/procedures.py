"""The list of procedures, and what a check of their files found."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from textwrap import wrap

from cribkit.desk.procedures import Lint
from cribkit.domain.procedure import Procedure
from cribkit.report.answer import Answer, Listing

COLUMNS = ("id", "title", "applies to", "minutes", "tools", "torques", "consumables")


def listed(found: Lint) -> Answer:
    """Every procedure that can be read, by id; the problems of the others are told beside."""
    rows = sorted(found.procedures, key=lambda procedure: procedure.id)
    return Answer(
        command="procedures",
        ok=not found.errors,
        result=lambda: {"procedures": [_as_json(procedure) for procedure in rows]},
        listing=lambda: Listing(COLUMNS, tuple(_row(procedure) for procedure in rows), "No procedures."),
        text=lambda width: page(rows, width),
        problems=found.errors,
    )


def page(rows: Sequence[Procedure], width: int) -> str:
    """Two lines for each: the id whole, so that it can be copied; the title; what it is for and calls for."""
    if not rows:
        return "No procedures."
    margin = " " * (2 + max(len(procedure.id) for procedure in rows))
    lines = []
    for procedure in rows:
        lines.append(f"{procedure.id:{len(margin)}}{procedure.title}")
        lines += wrap(
            _calls_for(procedure), max(width, len(margin) + 30), initial_indent=margin, subsequent_indent=margin
        )
    return "\n".join(lines)


def _calls_for(procedure: Procedure) -> str:
    """The vehicle, the time and the number of needs."""
    needs = (
        count(len(procedure.tools), "tool"),
        count(len(procedure.torques), "torque"),
        count(len(procedure.consumables), "consumable"),
    )
    time = [f"{procedure.minutes} min"] if procedure.minutes else []
    return "; ".join([procedure.applies_to, *time, ", ".join(needs)])


def _row(procedure: Procedure) -> tuple[object, ...]:
    needs = (procedure.tools, procedure.torques, procedure.consumables)
    return (procedure.id, procedure.title, procedure.applies_to, procedure.minutes or None, *map(len, needs))


def _as_json(procedure: Procedure) -> Mapping[str, object]:
    return {
        "id": procedure.id,
        "title": procedure.title,
        "applies_to": procedure.applies_to,
        "revision": procedure.revision,
        "minutes": procedure.minutes or None,
        "tools": len(procedure.tools),
        "torques": len(procedure.torques),
        "consumables": len(procedure.consumables),
        "file": procedure.file,
    }


def linted(found: Lint) -> Answer:
    """How many files were read, and every error and note."""
    columns = ("kind", "where", "code", "what is wrong", "what to do")
    told = [("error", one) for one in found.errors] + [("note", one) for one in found.notes]
    rows = tuple((kind, one.source, one.code, one.message, one.next) for kind, one in told)
    return Answer(
        command="lint",
        ok=not found.errors,
        result=lambda: {
            "files": found.files,
            "procedures": [procedure.id for procedure in found.procedures],
            "errors": len(found.errors),
            "notes": len(found.notes),
        },
        listing=lambda: Listing(columns, rows, "No problems."),
        text=lambda width: summary(found),
        problems=(*found.errors, *found.notes),
    )


def summary(found: Lint) -> str:
    """One line: "18 procedures, no problems" or "18 procedures, 2 errors, 1 note"."""
    told = [count(len(found.errors), "error"), count(len(found.notes), "note")]
    said = ", ".join(text for text in told if not text.startswith("0 ")) or "no problems"
    return f"{count(found.files, 'procedure')}, {said}"


def count(number: int, word: str) -> str:
    """ "1 error", "2 errors"."""
    return f"{number} {word}" if number == 1 else f"{number} {word}s"
