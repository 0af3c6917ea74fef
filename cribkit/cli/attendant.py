"""Commands of the crib attendant: stock in, out, back, counted, lost and found; who has what."""

from __future__ import annotations

import datetime as dt
import re
from pathlib import Path
from typing import Annotated

import typer

from cribkit.cli.completion import tags
from cribkit.cli.opening import reading, writing
from cribkit.cli.options import As, By, Demo, Form, Json, On, form, now, parse_date, person, today
from cribkit.cli.output import emit
from cribkit.domain.problem import BadInput
from cribkit.domain.stock.item import Kind


def parse_expiry_option(text: str) -> dt.date:
    """A day, or a month that means its last day."""
    from cribkit.domain.stock.dates import parse_expiry

    found = parse_expiry(text)
    if found is None:
        raise typer.BadParameter(f"{text!r} is not a date: write it as 2026-11-30, or 2026-11 for its last day.")
    return found


def parse_days(text: str) -> int:
    """So many days: 60, 60d or 8w."""
    found = re.fullmatch(r"(\d{1,5})\s*(d|days?|w|weeks?)?", text.strip(), re.IGNORECASE | re.ASCII)
    if found is None:
        raise typer.BadParameter(f"{text!r} is not a number of days: write it as 60d or 8w.")
    return int(found[1]) * (7 if (found[2] or "d").casefold().startswith("w") else 1)


Tag = Annotated[str, typer.Argument(help="The item's tag, or what a scanner sends.", autocompletion=tags)]
Amount = Annotated[
    str | None, typer.Argument(help="How much: 3, '2 cans', '250 mL'; a bare number of measured stuff is containers.")
]
Lot = Annotated[str | None, typer.Option(help="The lot number on the label.")]
Job = Annotated[str, typer.Option(metavar="JOB", help="The job that it is for.")]
Note = Annotated[str, typer.Option(help="What else should be remembered.")]
Reason = Annotated[str, typer.Option("--reason", help="Why. It stays with the movement.")]
Anyway = Annotated[str, typer.Option(metavar="REASON", help="Do it although it is refused, for this reason.")]
From = Annotated[str, typer.Option("--from", metavar="NAME", help="Who has it, where several do.")]


def receive(
    ctx: typer.Context,
    tag: Annotated[str, typer.Argument(help="The item's tag, or what a scanner sends.", autocompletion=tags)] = "",
    amount: Amount = None,
    order: Annotated[int, typer.Option(min=0, metavar="NUMBER", help="The order that it comes from.")] = 0,
    line: Annotated[int, typer.Option(min=0, help="The line of the order, for what was not stocked before.")] = 0,
    lot: Lot = None,
    expires: Annotated[
        dt.date | None,
        typer.Option(parser=parse_expiry_option, metavar="DATE", help="2026-11-30, or 2026-11 for its last day."),
    ] = None,
    note: Note = "",
    anyway: Anyway = "",
    by: By = None,
    on: On = None,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """Take stock in. The scan of a package fills item, lot, expiry and count.

    With --order, what is still to come is taken in where no amount is given: of the item, or of the whole order.

    Example: cribkit receive CH-002 "6 cans" --lot BN2611 --expires 2029-05 --by "M. Ashby"
    """
    from cribkit.desk.ledger import Arrival
    from cribkit.desk.orders import Delivery
    from cribkit.desk.orders import receive as post
    from cribkit.report.ledger import posted
    from cribkit.store.posting import Entry

    if not tag and not order:
        raise BadInput.of("no-tag", "nothing is named", "give the item's TAG, or --order NUMBER.")
    entry = Entry(person(by), today(on), now())
    arrival = Arrival(amount, lot, expires, note, anyway)
    with writing(ctx) as crib:
        emit(posted("receive", post(crib, tag, arrival, Delivery(order, line), entry)), form(as_, json))


def issue(
    ctx: typer.Context,
    tag: Tag,
    amount: Amount = None,
    to: Annotated[str, typer.Option(metavar="NAME", help="Who takes it.")] = "",
    job: Job = "",
    lot: Lot = None,
    due: Annotated[
        dt.date | None, typer.Option(parser=parse_date, metavar="DATE", help="When it should be back.")
    ] = None,
    use: Annotated[bool, typer.Option("--use", help="It is used at once: nothing comes back.")] = False,
    note: Note = "",
    anyway: Anyway = "",
    by: By = None,
    on: On = None,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """Hand stock to a person. Consumables go out first expired, first out.

    What is damaged, expired or out of calibration stays in the crib, unless there is a reason (--anyway).

    Example: cribkit issue SK-002 --to "J. Sedge" --by "M. Ashby"
    """
    from cribkit.desk.ledger import Errand
    from cribkit.desk.ledger import issue as post
    from cribkit.report.ledger import posted
    from cribkit.store.posting import Entry

    entry = Entry(person(by), today(on), now())
    errand = Errand(amount, to.strip() or entry.by, job, lot, due, note, anyway, use)
    with writing(ctx) as crib:
        emit(posted("issue", post(crib, tag, errand, entry)), form(as_, json))


def give_back(
    ctx: typer.Context,
    tag: Tag,
    amount: Amount = None,
    holder: From = "",
    job: Job = "",
    lot: Lot = None,
    rest_used: Annotated[bool, typer.Option("--rest-used", help="What does not come back was used.")] = False,
    note: Note = "",
    by: By = None,
    on: On = None,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """Take stock back: all that is out, or so much of it.

    Example: cribkit return CH-002 "300 mL" --rest-used --by "M. Ashby"
    """
    from cribkit.desk.ledger import Errand
    from cribkit.desk.ledger import give_back as post
    from cribkit.report.ledger import posted
    from cribkit.store.posting import Entry

    entry = Entry(person(by), today(on), now())
    errand = Errand(amount, holder, job, lot, note=note, use=rest_used)
    with writing(ctx) as crib:
        emit(posted("return", post(crib, tag, errand, entry)), form(as_, json))


def scrap(
    ctx: typer.Context,
    tag: Tag,
    amount: Amount = None,
    reason: Reason = "",
    lot: Lot = None,
    by: By = None,
    on: On = None,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """Throw stock away that is in the crib: broken, expired, worn.

    Example: cribkit scrap SK-002 --reason "cracked" --by "M. Ashby"
    """
    from cribkit.desk.ledger import Errand
    from cribkit.desk.ledger import scrap as post
    from cribkit.report.ledger import posted
    from cribkit.store.posting import Entry

    if not reason.strip():
        raise BadInput.of("no-reason", "scrapping needs a reason", "give --reason TEXT.")
    entry = Entry(person(by), today(on), now())
    with writing(ctx) as crib:
        emit(posted("scrap", post(crib, tag, Errand(amount, lot=lot, note=reason), entry)), form(as_, json))


def lost(
    ctx: typer.Context,
    tag: Tag,
    amount: Amount = None,
    reason: Reason = "",
    holder: From = "",
    job: Job = "",
    by: By = None,
    on: On = None,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """Give up what is out and cannot be found. Settles the job that is held for it.

    Example: cribkit lost SK-002 --job wren-31 --reason "searched twice, panel X-rayed" --by "A. Keeper"
    """
    from cribkit.desk.ledger import Errand
    from cribkit.desk.missing import lose
    from cribkit.report.ledger import posted
    from cribkit.store.posting import Entry

    entry = Entry(person(by), today(on), now())
    with writing(ctx) as crib:
        done = lose(crib, tag, Errand(amount, holder, job, note=reason.strip()), entry)
        emit(posted("lost", done), form(as_, json))


def found(
    ctx: typer.Context,
    tag: Tag,
    amount: Amount = None,
    holder: From = "",
    job: Job = "",
    note: Note = "",
    by: By = None,
    on: On = None,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """What was missing is there again. Settles the job that is held for it.

    Example: cribkit found SK-002 --job wren-31 --by "A. Keeper"
    """
    from cribkit.desk.ledger import Errand
    from cribkit.desk.missing import find_again
    from cribkit.report.ledger import posted
    from cribkit.store.posting import Entry

    entry = Entry(person(by), today(on), now())
    with writing(ctx) as crib:
        emit(posted("found", find_again(crib, tag, Errand(amount, holder, job, note=note), entry)), form(as_, json))


def undo(
    ctx: typer.Context,
    movement: Annotated[int, typer.Argument(help="The movement's number, from `history`.", min=1)],
    reason: Reason = "",
    by: By = None,
    on: On = None,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """Correct a mistake: post the reverse of a movement. The mistake and its correction both stay in the ledger.

    Example: cribkit undo 417 --reason "wrong tag" --by "M. Ashby"
    """
    from cribkit.desk.undoing import undo as post
    from cribkit.report.ledger import posted
    from cribkit.store.posting import Entry

    entry = Entry(person(by), today(on), now())
    with writing(ctx) as crib:
        emit(posted("undo", post(crib, movement, entry, reason.strip())), form(as_, json))


def count(
    ctx: typer.Context,
    tag: Annotated[str | None, typer.Argument(help="The item's tag, or a scan.", autocompletion=tags)] = None,
    amount: Amount = None,
    file: Annotated[
        Path | None, typer.Option("--file", metavar="CSV", help="A count sheet: the columns tag, counted, lot.")
    ] = None,
    shelf: Annotated[str, typer.Option(metavar="PLACE", help="Whose items should all be counted: A1.")] = "",
    sheet: Annotated[bool, typer.Option("--sheet", help="Print a blank count sheet of the shelf.")] = False,
    lot: Lot = None,
    post: Annotated[bool, typer.Option("--post", help="Post the differences.")] = False,
    by: By = None,
    on: On = None,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """Compare what was counted with the ledger; post the differences only with --post.

    Exit code 1 while there are differences that are not posted.

    Examples: cribkit count SK-002 3 --post --by "M. Ashby"; cribkit count --shelf A1 --sheet --as csv;
    cribkit count --file counted.csv --shelf A1
    """
    from cribkit.cli.counting import run_count

    emit(run_count(ctx, tag, amount, file, shelf, sheet, lot, post, by, on), form(as_, json))


def out(
    ctx: typer.Context,
    holder: Annotated[str, typer.Option("--to", metavar="NAME", help="Only what this person has.")] = "",
    job: Annotated[str, typer.Option(metavar="JOB", help="Only what is out for this job.")] = "",
    overdue: Annotated[bool, typer.Option("--overdue", help="Only what is overdue; exit code 1 if any.")] = False,
    within: Annotated[
        int, typer.Option(parser=parse_days, metavar="DAYS", help="Without an agreed day, back after so long.")
    ] = "1d",  # type: ignore[assignment]  # Typer reads the default with the parser
    on: On = None,
    demo: Demo = False,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """Who has what since when, overdue first.

    Example: cribkit out --overdue
    """
    from cribkit.desk.whereabouts import out as who_has
    from cribkit.report.ledger import out_list

    with reading(ctx, demo) as crib:
        lines = who_has(crib, today(on), within, holder, job)
        lines = tuple(line for line in lines if line.overdue_days or not overdue)
        emit(out_list(lines, overdue), form(as_, json))


def history(
    ctx: typer.Context, tag: Tag, on: On = None, demo: Demo = False, as_: As = Form.TABLE, json: Json = False
) -> None:
    """Everything that happened to an item; of a torque wrench its certificates and events too.

    Example: cribkit history SK-002
    """
    from cribkit.desk.whereabouts import history as past
    from cribkit.report.ledger import history_list

    with reading(ctx, demo) as crib:
        item, lines = past(crib, tag, today(on))
        answer = history_list(item, lines)
        if item.kind is Kind.WRENCH:
            from cribkit.desk.recording import life_lines
            from cribkit.report.wrench_life import with_life

            answer = with_life(answer, life_lines(crib, item.tag))
        emit(answer, form(as_, json))


def jobs(
    ctx: typer.Context,
    job: Annotated[str | None, typer.Argument(help="One job: its tools, torques and what holds it.")] = None,
    everything: Annotated[bool, typer.Option("--all", help="Closed jobs too.")] = False,
    demo: Demo = False,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """Jobs that are open or held, or one job.

    Example: cribkit jobs --all
    """
    from cribkit.desk import whereabouts
    from cribkit.report.job_list import job_list, job_page

    with reading(ctx, demo) as crib:
        answer = job_page(whereabouts.job(crib, job)) if job else job_list(whereabouts.jobs(crib, everything))
        emit(answer, form(as_, json))


def expiring(
    ctx: typer.Context,
    within: Annotated[
        int, typer.Option(parser=parse_days, metavar="DAYS", help="How far ahead to look: 60d, 8w.")
    ] = "60d",  # type: ignore[assignment]  # Typer reads the default with the parser
    on: On = None,
    demo: Demo = False,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """Lots that have expired or will soon, and open containers at the end of their service life. Exit code 1 if any.

    Example: cribkit expiring --within 60d
    """
    from cribkit.desk.whereabouts import expiring as soon
    from cribkit.report.ledger import expiry_list

    with reading(ctx, demo) as crib:
        emit(expiry_list(soon(crib, today(on), within)), form(as_, json))
