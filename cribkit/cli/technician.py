"""Commands about the procedures themselves: what there is, and whether the files are right."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from cribkit.cli.options import As, Form, Json, Procedures, form
from cribkit.cli.output import emit

DemoProcedures = Annotated[bool, typer.Option("--demo", help="Take the demo's procedures.")]
WRONG = 2  # a file that cannot be used is bad input


def procedures(
    procedures: Procedures = None,
    demo: DemoProcedures = False,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """List the procedures: what each is for, and how much it calls for.

    Example: cribkit procedures --demo
    """
    from cribkit.desk.procedures import procedures_folder, read_all
    from cribkit.report.procedures import listed

    emit(listed(read_all([procedures_folder(procedures, demo)])), form(as_, json), WRONG)


def lint(
    path: Annotated[
        list[Path] | None,
        typer.Argument(help="Files, or folders of .toml files.", metavar="[PATH]...", show_default=False),
    ] = None,
    procedures: Procedures = None,
    demo: DemoProcedures = False,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """Check procedure files: every problem at once, with its line and what to do.

    Ends with 2 if there is an error. A note tells what is doubtful, and is no error.

    Example: cribkit lint procedures
    """
    from cribkit.desk.procedures import lint as lint_files
    from cribkit.desk.procedures import procedures_folder
    from cribkit.report.procedures import linted

    emit(linted(lint_files(path or [procedures_folder(procedures, demo)])), form(as_, json), WRONG)
