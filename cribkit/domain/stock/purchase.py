"""Lines grouped by supplier, with the supplier's minimum order met where that makes sense."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass, replace

from cribkit.domain.stock.ordersize import SLACK
from cribkit.domain.stock.reorder import Line

NO_SUPPLIER = ""


@dataclass(frozen=True, slots=True)
class Group:
    """What to order from one supplier."""

    supplier: str
    lines: tuple[Line, ...]
    minimum: float  # the least order the supplier accepts, in money; 0: any
    note: str = ""

    @property
    def cost(self) -> float:
        """Of the lines whose price is known."""
        return sum(line.cost or 0.0 for line in self.lines)


def grouped(lines: Iterable[Line], minimums: dict[str, float]) -> tuple[Group, ...]:
    """Groups with blocking shortages first, then by name; inside a group the same, then by the day it runs out."""
    by: dict[str, list[Line]] = {}
    for line in lines:
        by.setdefault(line.held.supplier, []).append(line)
    groups = [group_of(name, found, minimums.get(name, 0.0)) for name, found in by.items()]
    return tuple(sorted(groups, key=lambda group: (not any(line.blocks for line in group.lines), group.supplier)))


def group_of(supplier: str, lines: list[Line], minimum: float) -> Group:
    """One supplier's lines; where they are worth less than the supplier's minimum, filled up."""
    ordered = tuple(sorted(lines, key=urgency))
    group = Group(supplier, ordered, minimum)
    if minimum <= 0 or not any(line.packs for line in ordered) or group.cost >= minimum:
        return group
    if any(line.packs and line.cost is None for line in ordered):
        return replace(group, note=f"some prices are not known: check against the minimum order of {minimum:.2f}")
    return filled_up(group)


def urgency(line: Line) -> tuple[object, ...]:
    """Blocking shortages, then what runs out first, then the tag."""
    first = min((block.job.on.toordinal() for block in line.blocks), default=math.inf)
    return first, line.run_out.toordinal() if line.run_out else math.inf, line.held.tag


def filled_up(group: Group) -> Group:
    """Add pack after pack of what would be used up first, inside own maximum and shelf life, up to the minimum."""
    lines = list(group.lines)
    total, before = group.cost, group.cost
    while total < group.minimum - SLACK:
        at = min((n for n, line in enumerate(lines) if room(line)), key=lambda n: cover(lines[n]), default=None)
        if at is None:
            missing = f"{before:.2f} is below the minimum order of {group.minimum:.2f}: wait, or add something"
            return replace(group, note=missing)
        lines[at] = replace(lines[at], packs=lines[at].packs + 1, filled=lines[at].filled + 1)
        total += lines[at].held.cost or 0.0
    note = f"filled up from {before:.2f} to the minimum order of {group.minimum:.2f}"
    return replace(group, lines=tuple(lines), note=note)


def cover(line: Line) -> tuple[float, str]:
    """Days that position and order last, by which the next pack is given."""
    return (line.position + line.amount) / line.held.usual.per_day.mean, line.held.tag


def room(line: Line) -> bool:
    """Whether one more pack would be used: it moves, its price is known, and own maximum and shelf life allow it."""
    held = line.held
    if not held.cost or held.pack <= 0 or held.usual.per_day.mean <= 0:
        return False
    after = line.position + line.amount + held.pack
    if held.maximum is not None and after > held.maximum + SLACK:
        return False
    if held.shelf_days is None:
        return True
    return after <= held.usual.per_day.mean * (held.lead.days + held.shelf_days) + SLACK
