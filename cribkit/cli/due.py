"""The shop's command for what falls due."""

from __future__ import annotations

from typing import Annotated

import typer

from cribkit.cli.opening import reading
from cribkit.cli.options import As, Demo, Form, Json, On, Procedures, days, form, today
from cribkit.cli.output import emit

Within = Annotated[str, typer.Option("--within", metavar="DAYS", help="How far to look ahead: 30d, 6w.")]


def due(
    ctx: typer.Context,
    within: Within = "30d",
    procedures: Procedures = None,
    demo: Demo = False,
    on: On = None,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """Wrenches that fall due, the jobs that this closes, and the order to send.

    With the day from which on a torque has no wrench, and an order of sending out that keeps every torque covered,
    if there is one. A calibration is good through its last day. Cycles count as well, with a forecast from use so
    far. A procedure that cannot be read is named and left out. Exit code 1 if a wrench asks for calibration, or a
    procedure is left out.

    Example: cribkit wrench due --within 60d --demo
    """
    from cribkit.desk.due_list import due_list
    from cribkit.desk.procedures import files_of, procedures_folder, read_all
    from cribkit.report.due import due_answer

    ahead = days(within)
    folder = procedures_folder(procedures, demo)
    there = demo or procedures is not None or folder.is_dir()
    jobs = read_all(files_of(folder) if there else ())
    with reading(ctx, demo) as crib:
        emit(due_answer(due_list(crib, jobs.procedures, today(on), ahead), jobs.errors), form(as_, json))
