"""The restock list as rows, as JSON and as a sheet of paper."""

from __future__ import annotations

from cribkit.desk.restock import Restock
from cribkit.desk.results import Status
from cribkit.domain.quantity import format_amount
from cribkit.domain.stock.explain import reason
from cribkit.domain.stock.purchase import Group
from cribkit.domain.stock.reorder import Line
from cribkit.report.answer import Listing
from cribkit.report.restock_words import group_head, money, ordered, verdict

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
    from cribkit.report.paper import BOX, heading, paragraph, table
    from cribkit.report.paper import page as paper

    parts: list[str] = ["<h1>Restock list</h1>", paragraph(verdict(result), "verdict")]
    parts.append(paragraph(f"Day: {result.policy.today.isoformat()}"))
    for group in result.groups:
        lines = [line for line in group.lines if line.packs]
        if lines:
            parts += [heading(group_head(group)), paragraph(group.note) if group.note else ""]
            rows = (
                (BOX, one.held.tag, one.held.description, ordered(one), money(one.cost), reason(one)) for one in lines
            )
            parts.append(table(("", "Tag", "What", "Order", "Cost", "Why"), rows))
    others = [(need.need, format_amount(need.amount, need.unit), need.why) for need in result.not_stocked]
    others += [(f"{tool.tag} {tool.description}", f"{tool.count:g}", tool.why) for tool in result.tools]
    if others:
        parts += [heading("Not stocked, and tools to replace"), table(("What", "How many", "Why"), others)]
    return paper("Restock list", parts)
