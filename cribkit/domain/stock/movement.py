"""Movements: posted facts about stock, chained so that a change behind the tool's back shows.

A movement is never edited or deleted. Each carries a digest: SHA-256 over the digest before it, a line end and the
movement in its canonical form. To change one row unseen, every row after it would have to be changed as well.

Amounts are whole thousandths of the item's unit (thousandths.py).
"""

from __future__ import annotations

import datetime as dt
import json
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from enum import StrEnum

from cribkit.domain.problem import BadInput


class MovementKind(StrEnum):
    """What happened."""

    RECEIVE = "receive"  # came into the crib from outside
    ISSUE = "issue"  # left the crib with a person
    RETURN = "return"  # came back
    USE = "use"  # was out and is used up
    COUNT = "count"  # a count found more (or, negative, less) than the ledger said
    SCRAP = "scrap"  # left the crib for good
    LOST = "lost"  # was out and is written off
    FOUND = "found"  # was out and missed, and came to light


# What one unit of a movement does to what is in the crib and to what is out.
EFFECT: dict[MovementKind, tuple[int, int]] = {
    MovementKind.RECEIVE: (1, 0),
    MovementKind.ISSUE: (-1, 1),
    MovementKind.RETURN: (1, -1),
    MovementKind.USE: (0, -1),
    MovementKind.COUNT: (1, 0),
    MovementKind.SCRAP: (-1, 0),
    MovementKind.LOST: (0, -1),
    MovementKind.FOUND: (1, -1),
}


@dataclass(frozen=True, slots=True)
class Movement:
    """One posted fact. `id`, `at` and `digest` are given when it is posted."""

    kind: MovementKind
    tag: str
    amount: int  # thousandths of the item's unit; negative where it takes back the movement that it corrects
    by: str  # who posted it
    day: dt.date  # the day that it counts for
    lot: str = ""
    holder: str = ""  # who has it, or had it
    job: str = ""
    due: dt.date | None = None  # when it is expected back
    note: str = ""
    corrects: int | None = None  # the movement that this one takes back
    id: int = 0
    at: str = ""  # when it was posted: UTC, ISO 8601 with a Z
    digest: str = ""

    @property
    def inside(self) -> int:
        """Change of what is in the crib."""
        return EFFECT[self.kind][0] * self.amount

    @property
    def outside(self) -> int:
        """Change of what is out."""
        return EFFECT[self.kind][1] * self.amount


LONGEST = 1000  # characters of a name, a note or a reason


def must_be_text(*texts: str) -> None:
    """Names, notes and reasons are printable text: BadInput for control characters, broken letters or endless text."""
    for text in texts:
        if len(text) > LONGEST or not text.isprintable():
            shown = ascii(text[:40])
            todo = f"write letters, digits and signs on one line, at most {LONGEST}."
            raise BadInput.of("bad-text", f"{shown} cannot be kept as text", todo)


def canonical(movement: Movement) -> str:
    """The movement as the chain sees it: a JSON list in a fixed order, without spaces."""
    fields: list[str | int | None] = [
        movement.id,
        movement.at,
        movement.day.isoformat(),
        movement.by,
        movement.kind.value,
        movement.tag,
        movement.lot,
        movement.amount,
        movement.holder,
        movement.job,
        movement.due.isoformat() if movement.due else None,
        movement.note,
        movement.corrects,
    ]
    return json.dumps(fields, ensure_ascii=False, separators=(",", ":"))


def digest(before: str, movement: Movement) -> str:
    """The movement's digest, given the digest of the movement before it ("" for the first)."""
    from hashlib import sha256  # 3 ms: only a posting needs it

    return sha256(f"{before}\n{canonical(movement)}".encode()).hexdigest()


def chained(movements: Iterable[Movement], before: str = "") -> Iterator[Movement]:
    """The movements with their digests."""
    for movement in movements:
        before = digest(before, movement)
        yield replace(movement, digest=before)


def undoing(movement: Movement, by: str, day: dt.date, reason: str) -> Movement:
    """The movement that takes another one back."""
    return replace(
        movement, amount=-movement.amount, by=by, day=day, note=reason, corrects=movement.id, id=0, at="", digest=""
    )
