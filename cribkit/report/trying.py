"""What a policy would reach: the past replayed, futures drawn, the cheapest level."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import asdict
from textwrap import wrap

from cribkit.desk.trying import Reached, Tried
from cribkit.report.answer import Answer, Listing

ROWS = (
    ("consumables", "items", "d"),
    ("days of each", "days", ".0f"),
    ("order cycles that lasted", "service", ".4f"),
    ("demand served at once", "fill", ".4f"),
    ("stock-outs a year", "stock_outs", ".2f"),
    ("order lines a year", "orders", ".1f"),
    ("average stock value", "stock_value", ".2f"),
    ("waste a year", "wasted_value", ".2f"),
    ("cost a year", "cost", ".2f"),
)


def answer(tried: Tried) -> Answer:
    """The trial in every form. The answer is no where the past did not reach the level asked for."""
    return Answer(
        command="restock",
        ok=reached(tried),
        result=lambda: as_result(tried),
        listing=lambda: Listing(("figure", "past", "futures", "computed"), tuple(rows(tried))),
        text=lambda width: "\n".join(page(tried, width)),
    )


def reached(tried: Tried) -> bool:
    """Whether the policy kept its promise, as far as the futures' confidence interval can say."""
    return tried.futures.service + (tried.futures.margin or 0.0) >= tried.policy.service


def rows(tried: Tried) -> Iterator[tuple[object, ...]]:
    """One figure a row, past and futures beside each other."""
    for title, name, form in ROWS:
        yield title, shown(tried.past, name, form), shown(tried.futures, name, form), shown(tried.computed, name, form)


def shown(one: Reached | None, name: str, form: str) -> str:
    """A figure; a service with its confidence interval where there is one."""
    if one is None:
        return ""
    text = format(getattr(one, name), form)
    return f"{text} ± {one.margin:.4f}" if name == "service" and one.margin is not None else text


def page(tried: Tried, width: int) -> Iterator[str]:
    """The trial on a page."""
    policy, costs = tried.policy, tried.costs
    word = "REACHED" if reached(tried) else "NOT REACHED"
    yield f"{word}: service {policy.service:.4g} asked for, review every {policy.review_days} d"
    yield from wrap(
        f"The past: what was used on record, each review knowing only what was known then. The futures: {tried.runs} "
        f"years drawn from the fitted demand (seed {tried.seed}). ± is a 95 % confidence interval.",
        width,
    )
    yield ""
    last = "computed" if tried.computed else ""
    yield f"{'':26}{'past':>12}{'futures':>19}{last:>19}".rstrip()
    for title, past, futures, computed in rows(tried):
        yield f"{title:26}{past or '-':>12}{futures:>19}{computed:>19}".rstrip()
    if tried.computed:
        yield from wrap("computed: the same futures without anybody's own minimum and maximum.", width)
    yield from wrap(
        f"Cost = {costs.holding:.4g} a year of the stock's value + {costs.order:g} for an order line + "
        f"{costs.stock_out:g} for a stock-out + waste; set your own with --holding, --order-cost, --shortage-cost.",
        width,
    )
    if tried.futures.unpriced:
        yield from wrap(f"{tried.futures.unpriced} consumables have no price and are missing in the money.", width)
    if tried.worst:
        yield "\nOut of stock most often in the past"
        yield "-----------------------------------"
        for held, outcome in tried.worst:
            short = f"{outcome.stock_outs} of {outcome.checks} cycles"
            yield from wrap(f"{held.tag:8} {short:18} {held.description}", width, subsequent_indent=" " * 28)
    if tried.search:
        yield "\nCheapest service level, by computed levels"
        yield "------------------------------------------"
        for level, cost in tried.search.tried:
            mark = "  <- cheapest" if level == tried.search.service else ""
            yield f"{level:8.4f} {cost:14.2f} a year{mark}"


def as_result(tried: Tried) -> dict[str, object]:
    """The JSON contract's result."""
    search = tried.search
    return {
        "service": tried.policy.service,
        "review_days": tried.policy.review_days,
        "runs": tried.runs,
        "seed": tried.seed,
        "costs": asdict(tried.costs),
        "past": asdict(tried.past) if tried.past else None,
        "futures": asdict(tried.futures),
        "computed": asdict(tried.computed) if tried.computed else None,
        "worst": [
            {"tag": held.tag, "stock_outs": outcome.stock_outs, "cycles": outcome.checks}
            for held, outcome in tried.worst
        ],
        "cheapest": None
        if search is None
        else {
            "service": search.service,
            "cost": search.cost,
            "tried": [{"service": level, "cost": cost} for level, cost in search.tried],
        },
    }
