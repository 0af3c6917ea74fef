"""How the figures of a restock list are said."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable

from cribkit.desk.orders import Purchase
from cribkit.desk.restock import Restock, WrenchDue
from cribkit.desk.results import Status
from cribkit.domain.quantity import format_amount
from cribkit.domain.stock.explain import amount
from cribkit.domain.stock.purchase import Group
from cribkit.domain.stock.reorder import Line

LEAST = 1e-6  # amounts below are rounding


def verdict(result: Restock) -> str:
    """What the whole list comes to."""
    if result.nothing_to_do:
        return "NOTHING TO ORDER"
    parts = []
    if result.to_order:
        parts.append(f"ORDER {len(result.to_order)} of {len(result.lines)} consumables for {total(result.to_order)}")
    jobs = {block.job.job for line in result.blocked for block in line.blocks}
    if jobs:
        parts.append(f"{counted(len(jobs), 'planned job')} would go short")
    new = sum(need.status is Status.ABSENT for need in result.not_stocked)
    if new:
        parts.append(f"{counted(new, 'need')} not stocked")
    if result.tools:
        parts.append(f"{counted(len(result.tools), 'tool')} to replace")
    if result.late:
        parts.append(f"{counted(len(result.late), 'order')} late")
    text = "; ".join(parts) or "NOTHING TO ORDER; needs to confirm"
    return text[0].upper() + text[1:]


def counted(count: int, word: str) -> str:
    """ "1 tool", "3 tools"."""
    return f"{count} {word}" if count == 1 else f"{count} {word}s"


def total(lines: Iterable[Line]) -> str:
    """The cost of lines, and how many of them have no price."""
    lines = list(lines)
    unpriced = sum(line.cost is None for line in lines)
    text = f"{sum(line.cost or 0.0 for line in lines):.2f}"
    return f"{text} (+ {unpriced} without a price)" if unpriced else text


def ordered(line: Line) -> str:
    """ "4 x 500 mL"; single pieces go without a pack."""
    held = line.held
    return f"{line.packs}" if (held.unit, held.pack) == ("each", 1) else f"{line.packs} x {amount(held.pack, line)}"


def figures(line: Line) -> str:
    """The figures of a line in one sentence; what is nothing is left out."""
    bad = line.on_hand - line.good
    parts = [
        f"good {amount(line.good, line)}" + (f" ({amount(bad, line)} more expires)" if bad > LEAST else ""),
        f"on order {amount(line.on_order, line)}" if line.on_order > LEAST else "",
        f"reserved {amount(line.reserved, line)}" if line.reserved > LEAST else "",
        f"usual use in {line.horizon_days:.3g} d {amount(line.demand.mean, line)}" if line.demand.mean > LEAST else "",
        f"reorder point {amount(line.point, line)}",
        f"target {amount(line.target, line)}",
        f"runs out {line.run_out.isoformat()}" if line.run_out else "",
    ]
    return ", ".join(filter(None, parts))


def wasted(line: Line) -> str:
    """What has expired, what will, and when the first of it does."""
    today = line.policy.today
    expired = sum(lot.amount for lot in line.held.lots if not lot.good_on(today))
    parts = [f"{amount(expired, line)} has expired: scrap it"] if expired > LEAST else []
    if line.waste - expired > LEAST:
        days = [lot.expires_on for lot in line.held.lots if lot.expires_on and lot.good_on(today)]
        first = f", the first from {min(days).isoformat()} on" if days else ""
        parts.append(f"{amount(line.waste - expired, line)} will expire unused{first}")
    return "; ".join(parts)


def shortages(line: Line) -> list[str]:
    """Which jobs a line leaves short, and when an order would come."""
    sentences = []
    for block in line.blocks:
        late = (block.order_arrives - block.job.on).days
        when = f"an order today comes {block.order_arrives.isoformat()}"
        when += f", {late} d too late: find another way" if late > 0 else ", in time"
        if not line.packs:
            when = "it is on order, but late for this job: ask the supplier"
        sentences.append(f"{block.job.job} on {block.job.on.isoformat()} short of {amount(block.short, line)}; {when}")
    return sentences


def lateness(order: Purchase, today: dt.date) -> tuple[str, str]:
    """From whom and since when an order is late, and what is still to come of it."""
    text = f"{order.supplier or 'no supplier'}, due {order.due.isoformat()}, {order.overdue(today)} d late"
    return text, "; ".join(f"{format_amount(one.open, one.unit)} of {one.tag or one.what}" for one in order.open)


def group_head(group: Group) -> str:
    """The supplier, its lead time and what the order comes to."""
    lead = group.lines[0].held.lead
    known = {"stated": "", "assumed": ", assumed"}.get(lead.source, f", {lead.source}")
    name = group.supplier or "No supplier on record"
    return f"{name}: {total(line for line in group.lines if line.packs)}, {lead.days:.3g} d{known}"


def until(wrench: WrenchDue) -> str:
    """When the calibration ends."""
    if wrench.until is None:
        return "no calibration on record: send it out"
    return f"overdue since {wrench.until.isoformat()}" if wrench.overdue else f"good through {wrench.until.isoformat()}"


def money(cost: float | None) -> str:
    """An amount of money; nothing where it is not known."""
    return "" if cost is None else f"{cost:.2f}"
