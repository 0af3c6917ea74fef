"""Commands around a job: pull everything for it, and close it."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Annotated

import typer

from cribkit.cli import options
from cribkit.cli.completion import procedure_ids
from cribkit.cli.opening import writing
from cribkit.cli.options import Form, form, now, person, today
from cribkit.cli.output import emit
from cribkit.domain.problem import BadInput


def pull(
    ctx: typer.Context,
    procedure: Annotated[list[str], typer.Argument(help="Procedures, by id or by file.", autocompletion=procedure_ids)],
    job: Annotated[str, typer.Option(metavar="JOB", help="The job's name: each pull has its own.")] = "",
    bay: Annotated[str, typer.Option(help="Where the vehicle stands.")] = "",
    vehicle: Annotated[str, typer.Option(help="Which vehicle.")] = "",
    anyway: Annotated[
        str,
        typer.Option(metavar="REASON", help="Pull what is there though the job is not ready; it stays noted."),
    ] = "",
    guard: options.Uncertainty = None,
    procedures: options.Procedures = None,
    by: options.By = None,
    on: options.On = None,
    as_: options.As = Form.TABLE,
    json: options.Json = False,
) -> None:
    """Check a job, and issue everything on its pull list in one go; exit code 1 and nothing issued if it is not ready.

    Example: cribkit pull throttle-body-service --job wren-40 --by "J. Sedge" --bay 2
    """
    from cribkit.desk.procedures import find_procedures
    from cribkit.desk.pulling import Order
    from cribkit.desk.pulling import pull as pull_job
    from cribkit.domain.torque import Guard
    from cribkit.report.jobs import pulled
    from cribkit.store.posting import Entry

    entry = Entry(person(by), today(on), now())
    found = find_procedures(procedure, procedures)
    order = Order(found, job, bay, vehicle, anyway.strip(), Guard(guard) if guard else None)
    with writing(ctx) as crib:
        emit(pulled(pull_job(crib, order, entry)), form(as_, json))


def close(
    ctx: typer.Context,
    job: Annotated[str, typer.Argument(help="The job.")],
    missing: Annotated[
        list[str] | None, typer.Option(metavar="TAG[=N]", help="It did not come back: holds the job.")
    ] = None,
    broken: Annotated[
        list[str] | None,
        typer.Option(metavar="TAG[=complete]", help="It broke. Holds the job unless every piece is there: =complete."),
    ] = None,
    piece: Annotated[
        list[str] | None,
        typer.Option(metavar="TAG=WHAT", help="It is back, but this member or piece of it is not: holds the job."),
    ] = None,
    used: Annotated[list[str] | None, typer.Option(metavar="TAG=AMOUNT", help="So much was used.")] = None,
    left: Annotated[
        list[str] | None, typer.Option(metavar="TAG=AMOUNT", help="So much is left; the rest was used.")
    ] = None,
    torque: Annotated[
        list[str] | None,
        typer.Option(
            metavar="ID=TAG[@SETTING]",
            help="This wrench did that torque, not the planned one, set to that mark: bolts=TW-03@25.",
        ),
    ] = None,
    as_planned: Annotated[
        bool, typer.Option("--as-planned", help="Other consumables were used as the procedures expect.")
    ] = False,
    by: options.By = None,
    on: options.On = None,
    as_: options.As = Form.TABLE,
    json: options.Json = False,
) -> None:
    """Hand everything back and close the job. What is not mentioned comes back whole.

    Exit code 1 where something is missing: the job is held until it is `found` or `lost`. Exit code 1 also where the
    wrench or setting that you say was not fit for its torque.

    Example: cribkit close wren-40 --used CH-002="120 mL" --missing SK-002 --by "J. Sedge"
    """
    from cribkit.desk.closing import Said
    from cribkit.desk.closing import close as close_job
    from cribkit.report.jobs import closed
    from cribkit.store.posting import Entry

    said = Said(
        pairs(missing, "--missing"),
        pairs(broken, "--broken"),
        pairs(piece, "--piece", needed=True),
        pairs(used, "--used", needed=True),
        pairs(left, "--left", needed=True),
        pairs(torque, "--torque", needed=True),
        as_planned,
    )
    entry = Entry(person(by), today(on), now())
    with writing(ctx) as crib:
        emit(closed(close_job(crib, job, said, entry)), form(as_, json))


def pairs(texts: Iterable[str] | None, option: str, needed: bool = False) -> dict[str, str]:
    """TAG=VALUE as tag -> value; "" where only the tag is given. A tag said twice is refused."""
    found: dict[str, str] = {}
    for text in texts or ():
        key, _, value = text.partition("=")
        key, value = key.strip(), value.strip()
        if not key or (needed and not value):
            raise BadInput.of("bad-pair", f"{option} {text!r} is not complete", f"write {option} TAG=VALUE.")
        if key in found:
            raise BadInput.of("said-twice", f"{option} {key} is said twice", "say it once.")
        found[key] = value
    return found
