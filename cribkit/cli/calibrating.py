"""The shop's commands for calibration: what was measured, what happened, what has to be rechecked."""

from __future__ import annotations

import datetime as dt
from pathlib import Path
from typing import Annotated

import typer

from cribkit.cli.completion import tags
from cribkit.cli.opening import reading, writing
from cribkit.cli.options import As, By, Demo, Form, Json, On, days, form, now, parse_date, person, today
from cribkit.cli.output import emit
from cribkit.domain.calibration.due import Policy, Start
from cribkit.domain.calibration.state import Happening
from cribkit.domain.problem import BadInput, refuse
from cribkit.domain.torque.guard import Rule

Tag = Annotated[str, typer.Argument(metavar="TAG", help="The wrench.", autocompletion=tags)]
Reason = Annotated[str, typer.Option("--reason", metavar="TEXT", help="Why it is taken back.")]
Since = Annotated[
    dt.date | None,
    typer.Option("--since", parser=parse_date, metavar="DATE", help="Look back to this day [default: last good one]."),
]


def record(
    ctx: typer.Context,
    tag: Annotated[str, typer.Argument(metavar="[TAG]", help="The wrench.", autocompletion=tags)] = "",
    from_: Annotated[
        Path | None, typer.Option("--from", metavar="FILE.csv", help="The certificate, or many [default: asked].")
    ] = None,
    guard: Annotated[
        Rule | None, typer.Option("--guard", help="Judge with a guard band made from the stated uncertainty.")
    ] = None,
    far_off: Annotated[bool, typer.Option("--far-off", help="Readings off by half or more are right.")] = False,
    by: By = None,
    on: On = None,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """Record a certificate: ready, limited or unfit.

    Without a TAG, the file holds certificates of several wrenches. If the as-found readings are out of tolerance, the
    jobs done with the wrench since its last good calibration are listed at once. Exit code 1 if a wrench is unfit, or
    work is in doubt.

    Example: cribkit wrench record TW-04 --from SD-26-0401.csv --by "R. Vale"
    """
    from cribkit.desk.certificates import read_file, read_rows
    from cribkit.desk.recording import GuardBand, Posted, find_wrench
    from cribkit.desk.recording import record as keep
    from cribkit.report.calibration import record_answer

    posted = Posted(person(by), today(on), now())
    if not tag and from_ is None:
        raise BadInput.of("no-wrench", "neither a wrench nor a file is named", "give TAG, or --from FILE.csv.")
    with writing(ctx) as crib:
        if from_ is not None:
            entries, problems = read_file(crib, from_, tag, far_off)
        else:
            from cribkit.cli.asking import ask_certificate

            rows = ask_certificate(find_wrench(crib, tag), posted.on)
            entries, problems = read_rows(crib, rows, "answers", tag, far_off)
        refuse(problems)
        found = keep(crib, entries, posted, GuardBand(guard) if guard else None)
        emit(record_answer(found), form(as_, json), warnings=crib.warnings)


def event(
    ctx: typer.Context,
    tag: Tag,
    what: Annotated[Happening, typer.Argument(help="What happened.")],
    note: Annotated[str, typer.Option("--note", metavar="TEXT", help="How it came about.")] = "",
    day: Annotated[
        dt.date | None, typer.Option("--day", parser=parse_date, metavar="DATE", help="When [default: today].")
    ] = None,
    by: By = None,
    on: On = None,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """Note a drop, an overload, a repair, storage or a return.

    After a drop, an overload or a repair it is unfit until it is calibrated. A stored wrench is returned only after a
    calibration that is younger than its storage.

    Example: cribkit wrench event TW-03 dropped --note "from the lift" --by "R. Vale"
    """
    from cribkit.desk.recording import Posted, note_event
    from cribkit.report.calibration import wrench_answer

    posted = Posted(person(by), today(on), now())
    with writing(ctx) as crib:
        wrench = note_event(crib, tag, what, posted, note, day)
        answer = wrench_answer("wrench event", wrench, f"{what.value} on {day or posted.on}")
        emit(answer, form(as_, json), warnings=crib.warnings)


def withdraw(
    ctx: typer.Context,
    tag: Tag,
    number: Annotated[str, typer.Argument(metavar="CERTIFICATE", help="The certificate's number.")],
    reason: Reason,
    by: By = None,
    on: On = None,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """Take back a certificate that was a mistake.

    It stays on record, and the one before it counts again.

    Example: cribkit wrench withdraw TW-04 SD-26-0401 --reason "typed for the wrong wrench" --by "R. Vale"
    """
    from cribkit.desk.recording import Posted
    from cribkit.desk.recording import withdraw as take_back
    from cribkit.report.calibration import wrench_answer

    posted = Posted(person(by), today(on), now())
    with writing(ctx) as crib:
        wrench = take_back(crib, tag, number, posted, reason)
        answer = wrench_answer("wrench withdraw", wrench, f"certificate {number} withdrawn")
        emit(answer, form(as_, json), warnings=crib.warnings)


def trace(
    ctx: typer.Context,
    tag: Tag,
    since: Since = None,
    demo: Demo = False,
    on: On = None,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """The work done with a wrench, and what to recheck.

    Every torque since its last good calibration, what was applied, and whether that was inside its spec. The
    applied torque is estimated from the as-found readings; jobs done past due are marked. `--as csv` or `--as html`
    gives the recheck list. Exit code 1 if anything has to be rechecked.

    Example: cribkit wrench trace TW-04 --since 2026-03-01 --as html > recheck.html
    """
    from cribkit.desk.recording import find_wrench
    from cribkit.desk.tracing import trace_wrench
    from cribkit.report.tracing import trace_answer

    with reading(ctx, demo) as crib:
        emit(trace_answer(trace_wrench(crib, find_wrench(crib, tag), today(on), since)), form(as_, json))


def advice(
    ctx: typer.Context,
    target: Annotated[float, typer.Option("--target", min=0.5, max=0.999, help="Share to be found good.")] = 0.95,
    demo: Demo = False,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """Longer or shorter intervals, by three methods.

    Advice only: nothing is changed by it.

    Example: cribkit wrench advice --target 0.9
    """
    from cribkit.desk.advice import advise
    from cribkit.report.calibration import advice_answer

    with reading(ctx, demo) as crib:
        emit(advice_answer(advise(crib, target)), form(as_, json))


def labels(
    ctx: typer.Context,
    wrenches: Annotated[
        list[str] | None, typer.Argument(metavar="[TAG]...", help="Which [default: all].", autocompletion=tags)
    ] = None,
    demo: Demo = False,
    on: On = None,
    as_: As = Form.HTML,
    json: Json = False,
) -> None:
    """Labels for the wrenches, several on a sheet.

    Example: cribkit wrench labels --demo > labels.html
    """
    from cribkit.desk.papers import labels as make
    from cribkit.report.wrench_sheet import label_answer

    with reading(ctx, demo) as crib:
        emit(label_answer(make(crib, wrenches or (), today(on))), form(as_, json))


def sheet(
    ctx: typer.Context,
    tag: Tag,
    number: Annotated[str, typer.Argument(metavar="[CERTIFICATE]", help="Which [default: the newest].")] = "",
    as_: As = Form.HTML,
    json: Json = False,
) -> None:
    """The record of a calibration on paper, with a plot.

    Example: cribkit wrench sheet TW-04 > TW-04.html
    """
    from cribkit.desk.papers import sheet as find
    from cribkit.report.wrench_sheet import sheet_answer

    with reading(ctx, demo=False) as crib:
        emit(sheet_answer(find(crib, tag, number)), form(as_, json))


def export(
    ctx: typer.Context,
    tag: Tag,
    folder: Annotated[Path, typer.Argument(metavar="DIR", help="A new or empty folder.")],
    on: On = None,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """Everything about one wrench, for an auditor.

    One folder: certificates, readings, events, movements and work, with the ledger's chain values.

    Example: cribkit wrench export TW-04 audit-TW-04
    """
    from cribkit.desk.papers import folder as collect
    from cribkit.desk.papers import trace_wrench, write_folder
    from cribkit.report.wrench_folder import folder_answer, folder_files

    with reading(ctx, demo=False) as crib:
        wrench, tables, sheets = collect(crib, tag)
        files = folder_files(tables, sheets, trace_wrench(crib, wrench, today(on)))
        emit(folder_answer(wrench.tag, write_folder(folder, files)), form(as_, json))


def policy(
    ctx: typer.Context,
    due_: Annotated[Policy | None, typer.Option("--due", help="Which day of the month a calibration ends on.")] = None,
    start: Annotated[Start | None, typer.Option("--start", help="What starts the interval.")] = None,
    away: Annotated[str, typer.Option("--away", metavar="DAYS", help="How long the laboratory takes: 14d.")] = "",
    by: By = None,
    on: On = None,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """The shop's rules for due dates.

    Without options they are shown. "End of month" needs a written procedure that says so.

    Example: cribkit wrench policy --due end-of-month --by "R. Vale"
    """
    from cribkit.desk.recording import Posted, change_rules, changed, shop_rules
    from cribkit.report.calibration import policy_answer

    if due_ is None and start is None and not away:
        with reading(ctx, demo=False) as crib:
            emit(policy_answer(shop_rules(crib)), form(as_, json))
        return
    posted = Posted(person(by), today(on), now())
    with writing(ctx) as crib:
        wanted = changed(shop_rules(crib), due_, start, days(away) if away else None)
        emit(policy_answer(change_rules(crib, wanted, posted)), form(as_, json), warnings=crib.warnings)
