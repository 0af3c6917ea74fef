"""The attendant's purchasing: what to order, the orders themselves, and what has come of them."""

from __future__ import annotations

import datetime as dt
import re
import sys
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from cribkit.cli import options
from cribkit.cli.completion import procedure_ids, tags
from cribkit.cli.opening import reading, writing
from cribkit.cli.options import Form
from cribkit.cli.output import emit
from cribkit.domain.problem import BadInput

if TYPE_CHECKING:
    from cribkit.desk.orders import Purchase
    from cribkit.desk.plan import PlannedJob
    from cribkit.domain.stock.held import Policy

LENGTH = re.compile(r"\s*([0-9]{1,4})\s*(d|days?|w|weeks?)?\s*\Z", re.IGNORECASE)
LEAST, MOST = 0.5, 0.9999  # service levels below and above make no sense for a crib


def parse_days(text: str) -> int:
    """A length of time in whole days: "7", "7d", "2 weeks"."""
    found = LENGTH.match(text)
    days = int(found[1]) * (7 if (found[2] or "d").lower().startswith("w") else 1) if found else 0
    if not 1 <= days <= 365:
        raise typer.BadParameter(f"{text!r} is no length of time from 1 to 365 days: write 7d or 2w.")
    return days


def parse_service(text: str) -> float:
    """A service level: "0.95" or "95%"."""
    number = text.strip().removesuffix("%").strip()
    try:
        level = float(number) / (100 if "%" in text else 1)
    except ValueError:
        level = 0.0
    if not LEAST <= level <= MOST:
        raise typer.BadParameter(f"{text!r} is no service level from {LEAST} to {MOST}: write 0.95 or 95%.")
    return level


def parse_cost(text: str) -> float:
    """An amount of money, or a share: a number from 0 to a million."""
    try:
        cost = float(text)
    except ValueError:
        cost = -1.0
    if not 0 <= cost <= 1e6:
        raise typer.BadParameter(f"{text!r} is no cost: write a number from 0 on, such as 2.50.")
    return cost


def parse_range(text: str) -> tuple[float, float]:
    """Two service levels: "0.90,0.99"."""
    low, comma, high = text.partition(",")
    levels = (parse_service(low), parse_service(high)) if comma else (0.0, 0.0)
    if not levels[0] < levels[1]:
        raise typer.BadParameter(f"{text!r} is not two service levels, the lower first: write 0.90,0.99.")
    return levels


For = Annotated[
    list[str] | None,
    typer.Option(
        "--for",
        metavar="PROCEDURE[=N]",
        help="Plan N runs of a procedure before the next review.",
        autocompletion=procedure_ids,
    ),
]
Plan = Annotated[
    Path | None, typer.Option("--plan", metavar="FILE", help="Planned jobs as CSV: procedure, count, on, job, note.")
]
Service = Annotated[
    float, typer.Option("--service", parser=parse_service, metavar="LEVEL", help="Chance that stock lasts until the "
                        "next order can arrive."),
]  # fmt: skip
Review = Annotated[int, typer.Option("--review", parser=parse_days, metavar="TIME", help="How often you order.")]
OrderCost = Annotated[
    float,
    typer.Option(
        "--order-cost",
        parser=parse_cost,
        metavar="MONEY",
        help="Cost of placing an order line; makes orders of cheap things larger.",
    ),
]
Holding = Annotated[
    float,
    typer.Option(
        "--holding", parser=parse_cost, metavar="SHARE", help="Yearly cost of holding stock, as a share of its value."
    ),
]
ShortageCost = Annotated[
    float, typer.Option("--shortage-cost", parser=parse_cost, metavar="MONEY", help="With --try: cost of a stock-out.")
]
# As typed: Typer hands defaults to the parser too.
SERVICE, REVIEW, NO_COST, HOLDING, SHORTAGE = "0.95", "7d", "0", "0.2", "25"


def restock(
    ctx: typer.Context,
    for_: For = None,
    plan: Plan = None,
    service: Service = SERVICE,  # type: ignore[assignment] # read by parse_service
    review: Review = REVIEW,  # type: ignore[assignment] # read by parse_days
    order_cost: OrderCost = NO_COST,  # type: ignore[assignment] # read by parse_cost
    holding: Holding = HOLDING,  # type: ignore[assignment] # read by parse_cost
    explain: Annotated[
        str, typer.Option(metavar="TAG", help="Show the working of one line.", autocompletion=tags)
    ] = "",
    every: Annotated[bool, typer.Option("--all", help="Show what needs no order too.")] = False,
    try_: Annotated[int, typer.Option("--try", min=0, max=1000, metavar="N", help="Replay the policy over the record "
                    "and over N random years.")] = 0,
    between: Annotated[str, typer.Option(metavar="LOW,HIGH", help="With --try: find the cheapest service level "
                       "between two.")] = "",
    shortage_cost: ShortageCost = SHORTAGE,  # type: ignore[assignment] # read by parse_cost
    procedures: options.Procedures = None,
    demo: options.Demo = False,
    on: options.On = None,
    as_: options.As = Form.TABLE,
    json: options.Json = False,
) -> None:  # fmt: skip
    """What to order, how much, from whom, and why, before a job is held up.

    Planned jobs come first, then what is usually used, for the time until the next order can arrive.

    Example: cribkit restock --for plenum-reseal=2 --demo
    """
    from cribkit.domain.stock.held import Policy

    policy = Policy(options.today(on), service, review, order_cost, holding)
    written = options.form(as_, json)
    if between and not try_:
        raise BadInput.of("no-try", "--between needs --try N", "add --try 50.")
    with reading(ctx, demo) as crib:
        if try_:
            from cribkit.desk.trying import Costs, try_policy
            from cribkit.report.trying import answer as tried

            costs = Costs(shortage_cost, order_cost or Costs().order, holding)
            result = try_policy(crib, policy, try_, progress, costs, parse_range(between) if between else None)
            emit(tried(result), written)
            return
        from cribkit.desk.restock import line_of
        from cribkit.desk.restock import restock as work_out
        from cribkit.report.restock import answer, explained

        found = work_out(crib, policy, jobs_of(policy, for_, plan, procedures, demo))
        if explain:
            line = line_of(found, explain)
            emit(explained(line, found.ratios.get(line.held.tag)), written)
        else:
            emit(answer(found, every), written)


def jobs_of(
    policy: Policy, named: list[str] | None, plan: Path | None, procedures: Path | None, demo: bool
) -> tuple[PlannedJob, ...]:
    """The planned jobs; a job without a day is needed by the next review."""
    from cribkit.desk.plan import once, planned_jobs
    from cribkit.desk.procedures import find_procedure

    lookup = once(lambda name: find_procedure(name, procedures, demo))
    undated = policy.today + dt.timedelta(days=policy.review_days)
    return planned_jobs(named or [], plan, lookup, policy.today, undated)


def progress(what: str, done: int, count: int) -> None:
    """Tell on stderr how far a trial is: on one line of a terminal, else when a part is done."""
    if sys.stderr.isatty():
        print(f"\r{what}: {done} of {count}", end="" if done < count else "\n", file=sys.stderr, flush=True)
    elif done == count:
        print(f"{what}: {done} of {count}", file=sys.stderr)


def order(
    ctx: typer.Context,
    supplier: Annotated[list[str] | None, typer.Argument(help="Only from these suppliers.", show_default=False)] = None,
    for_: For = None,
    plan: Plan = None,
    service: Service = SERVICE,  # type: ignore[assignment] # read by parse_service
    review: Review = REVIEW,  # type: ignore[assignment] # read by parse_days
    order_cost: OrderCost = NO_COST,  # type: ignore[assignment] # read by parse_cost
    holding: Holding = HOLDING,  # type: ignore[assignment] # read by parse_cost
    to: Annotated[
        Path | None, typer.Option("--to", metavar="DIR", help="Write each purchase list here as csv, md and html.")
    ] = None,
    end: Annotated[int, typer.Option("--end", min=0, metavar="ORDER", help="What has not come of this order will not "
                   "come any more.", show_default=False)] = 0,
    reason: Annotated[str, typer.Option(help="With --end: why.")] = "",
    by: options.By = None,
    procedures: options.Procedures = None,
    on: options.On = None,
    as_: options.As = Form.TABLE,
    json: options.Json = False,
) -> None:  # fmt: skip
    """Place an order with each supplier for everything on the restock list, and print the purchase lists.

    What is ordered counts as on order until it is received with `cribkit receive --order`. Look at
    `cribkit restock` with the same options first.

    Example: cribkit order --by "J. Sedge" --to orders
    """
    from cribkit.desk import orders as desk
    from cribkit.desk.restock import restock as work_out
    from cribkit.domain.stock.held import Policy
    from cribkit.report.orders import placed
    from cribkit.store.posting import Entry

    policy = Policy(options.today(on), service, review, order_cost, holding)
    entry = Entry(options.person(by), policy.today, options.now())
    if end:
        if not reason.strip():
            raise BadInput.of("no-reason", "ending an order needs a reason", "give --reason TEXT.")
        with writing(ctx) as crib, crib.posting():
            ended = desk.end_order(crib, end, entry, reason.strip())
        emit(placed([ended]), options.form(as_, json), warnings=crib.warnings)
        return
    jobs = jobs_of(policy, for_, plan, procedures, demo=False)
    with writing(ctx) as crib, crib.posting():
        found = desk.order(crib, work_out(crib, policy, jobs), entry, supplier or [])
        if to:
            write_lists(to, found)  # before the orders are kept: a folder that cannot be written to ends in nothing
    emit(placed(found), options.form(as_, json), warnings=crib.warnings)


def write_lists(folder: Path, found: Sequence[Purchase]) -> None:
    """Each order's purchase list as order-NUMBER-SUPPLIER.csv, .md and .html."""
    from cribkit.report.orders import lists_of

    try:
        folder.mkdir(parents=True, exist_ok=True)
        for one in found:
            name = re.sub(r"[^a-z0-9]+", "-", one.supplier.casefold()).strip("-") or "no-supplier"
            for suffix, text in lists_of(one).items():
                (folder / f"order-{one.id}-{name}.{suffix}").write_text(text, encoding="utf-8")
    except OSError as error:
        todo = "name another folder with --to; nothing was ordered."
        raise BadInput.of(
            "cannot-write", f"no list can be written here ({error.strerror})", todo, str(folder)
        ) from None


def orders(
    ctx: typer.Context,
    every: Annotated[bool, typer.Option("--all", help="Complete and ended orders too.")] = False,
    on: options.On = None,
    as_: options.As = Form.TABLE,
    json: options.Json = False,
) -> None:
    """What is on order, what has come of it, what is late, and how long each supplier really takes.

    Example: cribkit orders
    """
    from cribkit.desk.orders import overview
    from cribkit.report.orders import overview as answer

    with reading(ctx, demo=False) as crib:
        emit(answer(overview(crib, options.today(on), every)), options.form(as_, json))
