"""The restock list as rows, as JSON and as a sheet of paper."""

from __future__ import annotations

from collections.abc import Sequence

from cribkit.desk.restock import Restock
from cribkit.desk.results import Status
from cribkit.domain.quantity import format_amount
from cribkit.domain.stock.explain import reason
from cribkit.domain.stock.purchase import Group
from cribkit.domain.stock.reorder import Line
from cribkit.report.answer import Listing
from cribkit.report.restock_words import (
    figures,
    group_head,
    lateness,
    money,
    ordered,
    shortages,
    until,
    verdict,
    wasted,
)

COLUMNS = (
    "supplier", "tag", "description", "unit", "on_hand", "good", "on_order", "reserved", "position", "demand", "days",
    "distribution", "reorder_point", "target", "packs", "pack", "order", "cost", "runs_out", "blocked", "waste", "why",
)  # fmt: skip


def as_listing(result: Restock) -> Listing:
    """Every consumable, then new items and tools, under the same columns."""
    rows = [row(line) for line in result.lines]
    rows += [
        spread(description=need.need, unit=need.unit, order=need.amount, blocked=", ".join(need.jobs),
               why=f"{'new item' if need.status is Status.ABSENT else 'to confirm'}: {need.why}")
        for need in result.not_stocked
    ]  # fmt: skip
    rows += [
        spread(tag=tool.tag, description=tool.description, unit="each", order=tool.count, why=f"replace: {tool.why}")
        for tool in result.tools
    ]
    return Listing(COLUMNS, tuple(rows), "No consumables.")


def spread(**cells: object) -> tuple[object, ...]:
    """A row of the listing from the cells that it has."""
    return tuple(cells.get(name) for name in COLUMNS)


def row(line: Line) -> tuple[object, ...]:
    """A line's figures, in the item's unit; packs are containers."""
    held = line.held
    return spread(
        supplier=held.supplier,
        tag=held.tag,
        description=held.description,
        unit=held.unit,
        on_hand=line.on_hand,
        good=line.good,
        on_order=line.on_order,
        reserved=line.reserved,
        position=line.position,
        demand=line.demand.mean,
        days=line.horizon_days,
        distribution=line.demand.name,
        reorder_point=line.point,
        target=line.target,
        packs=line.packs,
        pack=held.pack,
        order=line.amount,
        cost=None if line.cost is None else f"{line.cost:.2f}",
        runs_out=line.run_out,
        blocked=", ".join(block.job.job for block in line.blocks),
        waste=line.waste,
        why=". ".join((reason(line), *line.notes)),
    )


def as_result(result: Restock) -> dict[str, object]:
    """The JSON contract's result."""
    policy = result.policy
    return {
        "on": policy.today,
        "service": policy.service,
        "review_days": policy.review_days,
        "plan": [{"procedure": j.procedure.id, "count": j.count, "on": j.on, "job": j.job} for j in result.jobs],
        "suppliers": [supplier_result(group) for group in result.groups],
        "not_stocked": [
            {"kind": n.kind, "need": n.need, "amount": n.amount, "unit": n.unit, "on": n.on, "jobs": list(n.jobs),
             "status": n.status.value, "why": n.why, "next": n.next}
            for n in result.not_stocked
        ],
        "tools": [{"tag": t.tag, "description": t.description, "count": t.count, "why": t.why} for t in result.tools],
        "wrenches": [{"tag": w.tag, "good_through": w.until, "overdue": w.overdue} for w in result.wrenches],
        "late": [
            {"order": o.id, "supplier": o.supplier, "due": o.due, "days": o.overdue(policy.today)} for o in result.late
        ],
    }  # fmt: skip


def supplier_result(group: Group) -> dict[str, object]:
    """One supplier with every line, ordered or not."""
    lead = group.lines[0].held.lead
    return {
        "supplier": group.supplier,
        "lead_days": lead.days,
        "lead_days_sd": lead.sd,
        "lead_from": lead.source,
        "minimum_order": group.minimum,
        "cost": group.cost,
        "note": group.note,
        "lines": [line_result(line) for line in group.lines],
    }


def line_result(line: Line) -> dict[str, object]:
    """One consumable. Amounts in `unit`."""
    held = line.held
    return {
        "tag": held.tag,
        "description": held.description,
        "unit": held.unit,
        "on_hand": line.on_hand,
        "good": line.good,
        "on_order": line.on_order,
        "reserved": line.reserved,
        "position": line.position,
        "demand": line.demand.mean,
        "days": line.horizon_days,
        "pattern": held.usual.pattern.value,
        "method": held.usual.method.value,
        "distribution": line.demand.name,
        "reorder_point": line.point,
        "target": line.target,
        "computed_reorder_point": line.computed_point,
        "computed_target": line.computed_target,
        "packs": line.packs,
        "pack": held.pack,
        "order": line.amount,
        "cost": line.cost,
        "runs_out": line.run_out,
        "waste": line.waste,
        "blocked": [
            {"job": b.job.job, "on": b.job.on, "short": b.short, "order_arrives": b.order_arrives} for b in line.blocks
        ],
        "why": reason(line),
        "notes": list(line.notes),
    }


def sheet(result: Restock) -> str:
    """The list on paper: a table for each supplier, with boxes to tick."""
    from cribkit.report.paper import BOX, heading, lines, paragraph, table
    from cribkit.report.paper import page as paper

    parts: list[str] = ["<h1>Restock list</h1>", paragraph(verdict(result), "verdict")]
    day = f"Day: {result.policy.today.isoformat()}; service {result.policy.service:.4g}"
    parts.append(paragraph(f"{day}, review every {result.policy.review_days} d"))
    if result.jobs:
        parts.append(paragraph(f"Plan: {', '.join(f'{job.name} by {job.on.isoformat()}' for job in result.jobs)}"))
    short = [(one.held.tag, one.held.description, lines(shortages(one))) for one in result.blocked]
    parts += part("Planned jobs that go short", ("Tag", "What", "Short"), short)
    for group in result.groups:
        rows = [
            (BOX, one.held.tag, one.held.description, ordered(one), money(one.cost), lines(why(one)))
            for one in group.lines
            if one.packs
        ]
        if rows:
            parts += [heading(group_head(group)), paragraph(group.note) if group.note else ""]
            parts.append(table(("", "Tag", "What", "Order", "Cost", "Why"), rows))
    others = [(need.need, format_amount(need.amount, need.unit), need.why) for need in result.not_stocked]
    others += [(f"{tool.tag} {tool.description}", f"{tool.count:g}", tool.why) for tool in result.tools]
    parts += part("Not stocked, and tools to replace", ("What", "How many", "Why"), others)
    wrenches = [(one.tag, one.description, until(one)) for one in result.wrenches]
    parts += part("Torque wrenches due for calibration", ("Tag", "What", "Calibration"), wrenches)
    waste = [(one.held.tag, one.held.description, wasted(one)) for one in result.wasted]
    parts += part("Waste", ("Tag", "What", "How much"), waste)
    late = [(order.id, *lateness(order, result.policy.today)) for order in result.late]
    parts += part("Late orders", ("Order", "From", "Still to come"), late)
    return paper("Restock list", parts)


def part(title: str, columns: Sequence[str], rows: Sequence[Sequence[object]]) -> list[str]:
    """A heading and its table; nothing where there are no rows."""
    from cribkit.report.paper import heading, table

    return [heading(title), table(columns, rows)] if rows else []


def why(line: Line) -> list[str]:
    """The reason of a line, its figures and its notes."""
    filled = [f"{line.filled} of them for the supplier's minimum order"] if line.filled else []
    reasons = [] if line.packs and line.filled == line.packs else [reason(line)]
    return [*reasons, figures(line), *filled, *line.notes]
