"""Purchase lists for suppliers, and the list of orders."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from textwrap import wrap

from cribkit.desk.orders import Orders, Purchase, PurchaseLine
from cribkit.domain.quantity import format_amount
from cribkit.report.answer import Answer, Listing
from cribkit.report.forms import as_csv, as_markdown

COLUMNS = ("order", "supplier", "line", "tag", "what", "packs", "pack", "amount", "unit", "unit_cost", "cost", "why")
OPEN = (
    "order", "supplier", "ordered", "due", "late_days", "line", "tag", "what", "ordered_amount", "came", "open", "unit",
)  # fmt: skip


def placed(orders: Sequence[Purchase]) -> Answer:
    """The purchase lists of orders that were placed."""
    return Answer(
        command="order",
        ok=True,
        result=lambda: {"orders": [as_result(order) for order in orders]},
        listing=lambda: listing(orders),
        text=lambda width: "\n".join(page(orders, width)),
        markdown=lambda: "\n\n".join(map(markdown, orders)) or "Nothing to order.",
        sheet=lambda: sheet(orders),
    )


def lists_of(order: Purchase) -> dict[str, str]:
    """One order's purchase list in every form that a supplier may want, by suffix."""
    return {"csv": as_csv(listing([order])) + "\n", "md": markdown(order) + "\n", "html": sheet([order]) + "\n"}


def listing(orders: Iterable[Purchase]) -> Listing:
    """Every line of every order."""
    rows = tuple(
        (
            order.id, order.supplier, line.line, line.tag, line.what, line.packs, line.amount / line.packs, line.amount,
            line.unit, money(line.cost), money(cost(line)), line.why,
        )
        for order in orders
        for line in order.lines
    )  # fmt: skip
    return Listing(COLUMNS, rows, "Nothing to order.")


def cost(line: PurchaseLine) -> float | None:
    """Of all packs."""
    return None if line.cost is None else line.cost * line.packs


def money(value: float | None) -> str:
    """An amount of money; nothing where it is not known."""
    return "" if value is None else f"{value:.2f}"


def total(order: Purchase) -> str:
    """What an order comes to, as far as prices are known."""
    unpriced = sum(line.cost is None for line in order.lines)
    text = f"{sum(cost(line) or 0.0 for line in order.lines):.2f}"
    return f"{text} (+ {unpriced} without a price)" if unpriced else text


def packs(line: PurchaseLine) -> str:
    """ "4 x 500 mL"; single pieces go without a pack."""
    pack = line.amount / line.packs
    return f"{line.packs}" if (line.unit, pack) == ("each", 1) else f"{line.packs} x {format_amount(pack, line.unit)}"


def head(order: Purchase) -> str:
    """Number, supplier, dates."""
    return f"Order {order.id}: {order.supplier or 'no supplier on record'}"


def page(orders: Sequence[Purchase], width: int) -> Iterator[str]:
    """The lists on a page."""
    if not orders:
        yield "NOTHING TO ORDER"
        return
    for order in orders:
        title = head(order)
        yield ""
        yield title
        yield "-" * len(title)
        yield f"Ordered {order.day.isoformat()} by {order.by}, expected {order.due.isoformat()}, {total(order)}"
        if order.note:
            yield from wrap(order.note, width)
        for line in order.lines:
            right = f"{packs(line)}  {money(cost(line)):>9}".rstrip()
            first, *rest = wrap(f"{line.tag or 'NEW':8} {line.what}", width - len(right) - 2, subsequent_indent=" " * 9)
            yield f"{first:{width - len(right) - 2}}  {right}"
            yield from rest


def markdown(order: Purchase) -> str:
    """One order as Markdown."""
    rows = tuple((line.tag, line.what, packs(line), money(line.cost), money(cost(line))) for line in order.lines)
    table = as_markdown(Listing(("tag", "what", "order", "price of one", "cost"), rows))
    return (
        f"## {head(order)}\n\nOrdered {order.day.isoformat()} by {order.by}, expected {order.due.isoformat()}. "
        f"Total {total(order)}.\n\n{table}"
    )


def sheet(orders: Sequence[Purchase]) -> str:
    """The lists on paper, an order a table."""
    from cribkit.report.paper import BOX, heading, paragraph, table
    from cribkit.report.paper import page as paper

    parts: list[str] = ["<h1>Purchase list</h1>"]
    for order in orders:
        parts.append(heading(head(order)))
        dates = (
            f"Ordered {order.day.isoformat()} by {order.by}, expected {order.due.isoformat()}. Total {total(order)}."
        )
        parts.append(paragraph(dates))
        rows = ((BOX, one.tag, one.what, packs(one), money(one.cost), money(cost(one))) for one in order.lines)
        parts.append(table(("Came", "Tag", "What", "Order", "Price of one", "Cost"), rows))
    return paper("Purchase list", parts)


def as_result(order: Purchase) -> dict[str, object]:
    """One order in the JSON contract."""
    return {
        "order": order.id,
        "supplier": order.supplier,
        "ordered": order.day,
        "due": order.due,
        "by": order.by,
        "note": order.note,
        "ended": order.ended_on,
        "lines": [
            {
                "line": line.line, "tag": line.tag, "what": line.what, "packs": line.packs, "amount": line.amount,
                "unit": line.unit, "unit_cost": line.cost, "came": line.came, "open": line.open if order.open else 0,
                "why": line.why,
            }
            for line in order.lines
        ],
    }  # fmt: skip


# ---------------------------------------------------------------- what is on order


def overview(result: Orders) -> Answer:
    """Orders with what has come of them. The answer is no where one is late."""
    late = [order for order in result.orders if order.overdue(result.on)]
    return Answer(
        command="orders",
        ok=not late,
        result=lambda: {
            "on": result.on,
            "orders": [as_result(order) | {"late_days": order.overdue(result.on)} for order in result.orders],
            "lead_times": [
                {"supplier": name, "days": lead.days, "sd": lead.sd, "from": lead.source}
                for name, lead in result.leads.items()
            ],
        },
        listing=lambda: Listing(OPEN, tuple(open_rows(result)), "Nothing is on order."),
        text=lambda width: "\n".join(open_page(result, width)),
    )


def open_rows(result: Orders) -> Iterator[tuple[object, ...]]:
    """Every line with what came and what is to come."""
    for order in result.orders:
        late = order.overdue(result.on) or None
        for line in order.lines:
            left = line.open if order.open else 0.0
            yield (
                order.id, order.supplier, order.day, order.due, late, line.line, line.tag, line.what, line.amount,
                line.came, left, line.unit,
            )  # fmt: skip


def open_page(result: Orders, width: int) -> Iterator[str]:
    """The orders, the first to come on top, and what suppliers really take."""
    if not result.orders:
        yield "Nothing is on order."
    for order in result.orders:
        late = order.overdue(result.on)
        state = f"LATE by {late} d" if late else "complete" if not order.open and not order.ended_on else ""
        if order.ended_on:
            state = f"ended on {order.ended_on.isoformat()} by {order.ended_by}: {order.ended_why}"
        yield from wrap(f"{head(order)}, ordered {order.day.isoformat()}, due {order.due.isoformat()}", width)
        if state:
            yield from wrap(state, width, initial_indent="  ", subsequent_indent="  ")
        for line in order.lines:
            done = f"{format_amount(line.came, line.unit)} of {format_amount(line.amount, line.unit)} came"
            tag = line.tag or f"line {line.line}"
            yield from wrap(f"  {tag:8} {done:24} {line.what}", width, subsequent_indent=" " * 36)
    if result.leads:
        yield "\nLead times"
        yield "----------"
        for name, lead in result.leads.items():
            spread = f" ± {lead.sd:.3g}" if lead.sd else ""
            yield f"{lead.days:6.3g}{spread} d  {name}, {lead.source}"
