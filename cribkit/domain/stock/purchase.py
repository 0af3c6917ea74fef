"""Lines grouped by supplier, with the supplier's minimum order met where that makes sense."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass, replace
from heapq import heapify, heappop, heapreplace

from cribkit.domain.stock.ordersize import SLACK
from cribkit.domain.stock.reorder import Line

QUARTER = 91  # days of use beyond the target that may fill up an order (our own rule)


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
    """Add pack after pack of what would be used up first, as long as there is room, up to the minimum."""
    lines, before = list(group.lines), group.cost
    total, extra = before, [0] * len(lines)
    waiting = [(cover(line, 0), at) for at, line in enumerate(lines) if room(line, 0)]
    heapify(waiting)
    while total < group.minimum - SLACK and waiting:
        _, at = waiting[0]
        extra[at] += 1
        total += lines[at].held.cost or 0.0
        if room(lines[at], extra[at]):
            heapreplace(waiting, (cover(lines[at], extra[at]), at))
        else:
            heappop(waiting)
    if total < group.minimum - SLACK:
        missing = f"{before:.2f} is below the minimum order of {group.minimum:.2f}: wait, or add something"
        return replace(group, note=missing)
    more = tuple(replace(one, packs=one.packs + n, filled=n) for one, n in zip(lines, extra, strict=True))
    note = f"filled up from {before:.2f} to the minimum order of {group.minimum:.2f}"
    return replace(group, lines=more, note=note)


def cover(line: Line, extra: int) -> float:
    """Days that position and order last, by which the next pack is given."""
    return (line.position + line.amount + extra * line.held.pack) / line.held.usual.per_day.mean


def room(line: Line, extra: int) -> bool:
    """Whether one more pack would be used: it moves, its price is known, own maximum and shelf life allow it, and it
    adds no more than a quarter of a year's use to the target."""
    held, per_day = line.held, line.held.usual.per_day.mean
    if not held.cost or held.pack <= 0 or per_day <= 0:
        return False
    after = line.position + line.amount + (extra + 1) * held.pack
    most = [line.target + QUARTER * per_day]
    if held.maximum is not None:
        most.append(held.maximum)
    if held.shelf_days is not None:
        most.append(per_day * (held.lead.days + held.shelf_days))
    return after <= min(most) + SLACK
