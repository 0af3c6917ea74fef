"""What was recorded about a torque wrench, added to its history."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from cribkit.desk.recording import LifeLine
from cribkit.report.answer import Answer, Listing
from cribkit.report.forms import as_table


def with_life(answer: Answer, lines: Sequence[LifeLine]) -> Answer:
    """The history's answer, and below its movements the certificates and events."""
    if not lines:
        return answer
    result, text, listing = answer.result, answer.text, answer.listing

    def page(width: int) -> str:
        above = text(width) if text else as_table(listing(), width)
        return f"{above}\n\nCalibration and events:\n{as_table(life_listing(lines), width)}"

    return answer._replace(result=lambda: {**result(), "life": [life_json(line) for line in lines]}, text=page)


def life_listing(lines: Sequence[LifeLine]) -> Listing:
    """One row for each line."""
    rows = tuple((line.line, line.day, line.what, line.by, line.note) for line in lines)
    return Listing(("line", "day", "what", "by", "note"), rows)


def life_json(line: LifeLine) -> Mapping[str, object]:
    """One line in the JSON contract."""
    return {
        "line": line.line,
        "at": line.at,
        "day": line.day,
        "what": line.what,
        "by": line.by,
        "note": line.note,
        "certificate": line.certificate,
        "withdrawn": line.withdrawn,
    }
