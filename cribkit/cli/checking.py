"""The technician's questions: can the job start, where is it, and decisions about likely matches."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import Annotated

import typer

from cribkit.cli import options
from cribkit.cli.completion import procedure_ids, tags
from cribkit.cli.opening import reading, writing
from cribkit.cli.options import Form
from cribkit.cli.output import emit
from cribkit.domain.problem import BadInput


def check(
    ctx: typer.Context,
    procedure: Annotated[list[str], typer.Argument(help="Procedures, by id or by file.", autocompletion=procedure_ids)],
    guard: options.Uncertainty = None,
    procedures: options.Procedures = None,
    demo: options.Demo = False,
    on: options.On = None,
    as_: options.As = Form.TABLE,
    json: options.Json = False,
) -> None:
    """Can the job start? What blocks, what to pull, what to set, what to take care of.

    Example: cribkit check throttle-body-service --demo
    """
    from cribkit.desk.check import check as check_job
    from cribkit.desk.procedures import find_procedures
    from cribkit.domain.torque import Guard
    from cribkit.report.check import answer

    jobs = find_procedures(procedure, procedures, demo)
    with reading(ctx, demo) as crib:
        result = check_job(crib, jobs, options.today(on), Guard(guard) if guard else None)
    emit(answer(result), options.form(as_, json))


def find(
    ctx: typer.Context,
    text: Annotated[list[str] | None, typer.Argument(help="What you look for, in your own words.")] = None,
    from_: Annotated[
        Path | None, typer.Option("--from", metavar="FILE", help="A file with one text a line; - for stdin.")
    ] = None,
    kind: Annotated[str, typer.Option(help="Look only for a tool or a consumable.", metavar="KIND")] = "",
    demo: options.Demo = False,
    as_: options.As = Form.TABLE,
    json: options.Json = False,
) -> None:
    """Where is it? For each text the item, its shelf, how many are there, who has the others, and why it matched.

    Example: cribkit find "8 mm socket, 1/4 drive" --demo
    """
    from cribkit.desk.find import find as find_items
    from cribkit.report.find import answer

    if kind not in ("", "tool", "consumable"):
        raise BadInput.of("bad-kind", f"{kind!r} is no kind", "use --kind tool or --kind consumable.")
    texts = [*(text or []), *(lines_of(from_) if from_ else [])]
    if not texts or not all(one.strip() for one in texts):
        raise BadInput.of("no-text", "nothing to look for", "give a text, or --from FILE.")
    with reading(ctx, demo) as crib:
        matches = find_items(crib, texts, kind)
    emit(answer(matches), options.form(as_, json))


def lines_of(path: Path) -> list[str]:
    """The texts of a file, one a line; empty lines are passed over."""
    try:
        raw = sys.stdin.buffer.read() if str(path) == "-" else path.read_bytes()
        return [line.strip() for line in raw.decode("utf-8-sig").splitlines() if line.strip()]
    except OSError as error:
        raise BadInput.of("no-file", f"{path} cannot be read ({error.strerror})", "name another file.") from None
    except UnicodeDecodeError:
        raise BadInput.of("not-utf8", f"{path} is not UTF-8 text", "save it as UTF-8.") from None


def confirm(
    ctx: typer.Context,
    text: Annotated[str, typer.Argument(help="The need's text. Without it, every decision is listed.")] = "",
    tag: Annotated[str, typer.Argument(help="The item that serves it.", autocompletion=tags)] = "",
    by: options.By = None,
    anyway: Annotated[str, typer.Option(metavar="REASON", help="Needed against a hard attribute.")] = "",
    withdraw: Annotated[bool, typer.Option("--withdraw", help="Take a decision back.")] = False,
    as_: options.As = Form.TABLE,
    json: options.Json = False,
) -> None:
    """Keep your decision that an item serves a need; without arguments, list the decisions in force.

    Example: cribkit confirm "8 mm socket, 1/4 drive" SKT-031 --by "R. Vale"
    """
    from cribkit.desk import confirm as desk
    from cribkit.report.find import decisions

    if not text:
        with reading(ctx, demo=False) as crib:
            emit(decisions(crib.confirmations()), options.form(as_, json))
        return
    if not tag:
        raise BadInput.of("no-tag", "a decision needs the item's tag", "give TEXT and TAG.")
    who = options.person(by)
    with writing(ctx) as crib:
        if withdraw:
            desk.withdraw(crib, text, tag, who, options.now())
        else:
            desk.confirm(crib, text, tag, who, options.now(), anyway)
        emit(decisions(crib.confirmations()), options.form(as_, json))
