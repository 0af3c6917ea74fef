"""Commands of the one who keeps the crib's file: load, export, backup, restore, audit, read."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from cribkit.cli.opening import path_of, reading
from cribkit.cli.options import As, By, Demo, Form, Json, On, form, now, person, today
from cribkit.cli.output import emit

Replace = Annotated[bool, typer.Option("--replace", help="Take the place of what is there.")]
Recount = Annotated[bool, typer.Option("--recount", help="Post quantities that differ as counts; needs a name.")]
OPENING = "opening stock"  # who posts what was there before the first day, if nobody gives a name


def load(
    ctx: typer.Context,
    folder: Annotated[Path, typer.Argument(help="The folder with the CSV files.", metavar="DIR")],
    recount: Recount = False,
    by: By = None,
    on: On = None,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """Load a folder of CSV files into the crib; makes the crib if there is none.

    New rows are added and changed words update their items. A changed quantity is shown, and posted as a count
    only with --recount. If any row of any file is wrong, every problem is listed and nothing is changed.

    Example: cribkit load seed_inventory
    """
    from cribkit.desk.keeping import Entry, load_folder
    from cribkit.report.keeping import loaded

    name = person(by) if recount else (by or OPENING)
    done, warnings = load_folder(path_of(ctx), folder, Entry(name, today(on), now()), recount)
    emit(loaded(done, warnings), form(as_, json))


def export(
    ctx: typer.Context,
    folder: Annotated[Path, typer.Argument(help="Where the CSV files go.", metavar="DIR")],
    demo: Demo = False,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """Write the crib back as CSV files, in the form that `load` reads.

    Cells that a spreadsheet would run as a formula get an apostrophe in front; `load` takes it away again.
    History is not exported: it stays in the crib's file (see `backup`).

    Example: cribkit export out
    """
    from cribkit.report.keeping import exported
    from cribkit.store.seed.export import export as write

    with reading(ctx, demo) as crib:
        emit(exported(write(crib, folder)), form(as_, json))


def read(
    text: Annotated[str, typer.Argument(help="A description, or what a procedure asks for.")],
    kind: Annotated[str, typer.Option("--kind", help="tool or consumable; open if not given.")] = "",
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """Show how a description is understood, and which words could not be used.

    Example: cribkit read "8 mm socket, 1/4 drive"
    """
    from cribkit.domain.wording import read as understand
    from cribkit.report.keeping import understood

    emit(understood(understand(text, kind)), form(as_, json))


def backup(
    ctx: typer.Context,
    file: Annotated[Path, typer.Argument(help="Where the copy goes.", metavar="FILE")],
    replace: Replace = False,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """Copy the crib to a file, also while others post, and verify the copy.

    Example: cribkit backup crib-2026-11-25.db
    """
    from cribkit.desk.keeping import back_up
    from cribkit.report.keeping import copied

    emit(copied("backup", back_up(path_of(ctx), file, replace)), form(as_, json))


def restore(
    ctx: typer.Context,
    file: Annotated[Path, typer.Argument(help="The backup.", metavar="FILE")],
    replace: Replace = False,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """Put a backup in the crib's place; a crib that is there is kept beside it.

    Example: cribkit restore crib-2026-11-25.db --replace
    """
    from cribkit.desk.keeping import put_back
    from cribkit.report.keeping import copied

    emit(copied("restore", put_back(path_of(ctx), file, replace)), form(as_, json))


def audit(
    ctx: typer.Context,
    was: Annotated[
        str, typer.Option("--was", metavar="COUNT:DIGEST", help="What an earlier audit noted: proves it still stands.")
    ] = "",
    demo: Demo = False,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """Prove that the crib's file is whole and that nobody changed the past.

    Checks the file and its schema, the chain of movements, and the balances and loans that are kept from them.
    Note what it prints on paper: with --was a later audit proves that nothing before was changed or cut off.

    Example: cribkit audit
    """
    from cribkit.desk.keeping import audit as prove
    from cribkit.report.keeping import audited

    with reading(ctx, demo) as crib:
        emit(audited(prove(crib, was)), form(as_, json))
