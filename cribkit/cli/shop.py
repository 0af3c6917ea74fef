"""Commands of the shop about torque wrenches: list, covers, picture, gaps."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from cribkit.cli.opening import reading
from cribkit.cli.options import As, Demo, Form, Json, On, Procedures, form, today
from cribkit.cli.output import emit

Names = Annotated[
    list[str] | None,
    typer.Argument(help="Procedures, by id or file; all of the folder if none is named.", metavar="PROCEDURE"),
]


def wrench_list(
    ctx: typer.Context, demo: Demo = False, on: On = None, as_: As = Form.TABLE, json: Json = False
) -> None:
    """List the torque wrenches: usable range, marks, accuracy, due date, state and place.

    The usable range goes from the larger of the lowest mark and 20 % of full scale up to full scale.

    Example: cribkit wrench list --demo
    """
    from cribkit.desk.wrenches import wrench_rows
    from cribkit.report.wrenches import listed

    with reading(ctx, demo) as crib:
        emit(listed(wrench_rows(crib, today(on))), form(as_, json))


def wrench_covers(
    ctx: typer.Context,
    spec: Annotated[str, typer.Argument(help='A torque: "10 N·m", "8-10 N·m", "89 in-lb (10 N·m)".')],
    tolerance: Annotated[str, typer.Option("--tolerance", help='"10 %", "± 1 N·m" or "+2/-1 N·m".')] = "",
    drive: Annotated[str, typer.Option("--drive", help="The square that the socket takes: 1/4, 3/8, 1/2 ...")] = "",
    head: Annotated[str, typer.Option("--head", help='The head that must be reached: "10 mm hex", "T30".')] = "",
    adapter: Annotated[str, typer.Option("--adapter", help="Length of an offset adapter: 40 mm, 1.5 in.")] = "",
    angle: Annotated[str, typer.Option("--angle", help="The adapter's angle to the handle; 0° is straight on.")] = "0°",
    left_hand: Annotated[bool, typer.Option("--left-hand", help="The thread is left-hand.")] = False,
    guard: Annotated[str, typer.Option("--guard", help="Uncertainty of the calibration to keep off: 1 %.")] = "",
    guard_rule: Annotated[
        str, typer.Option("--guard-rule", help="full, managed or root; see docs/torque.md.")
    ] = "full",
    demo: Demo = False,
    on: On = None,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """Which wrenches cover a torque, what to set each to, and why the others do not.

    The setting is a mark on the wrench's own scale. With a tolerance the whole band that the wrench may apply must
    lie inside it; a bare value takes the nearest mark. Exit code 1 where no wrench covers it.

    Example: cribkit wrench covers "89 in-lb (10 N·m)" --tolerance "10 %" --demo
    """
    from cribkit.desk.wrenches import covering, question
    from cribkit.report.wrenches import covers

    asked = question(spec, tolerance, drive, head, adapter, angle, left_hand, guard, guard_rule)
    with reading(ctx, demo) as crib:
        emit(covers(covering(crib, asked, today(on))), form(as_, json))


def wrench_picture(
    ctx: typer.Context,
    names: Names = None,
    procedures: Procedures = None,
    demo: Demo = False,
    on: On = None,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """Picture the usable ranges of all wrenches, with the torques of the procedures on the same axis.

    With --as html: a page that prints on one sheet. Exit code 1 where some torque is not covered.

    Example: cribkit wrench picture --demo
    """
    from cribkit.desk.procedures import all_procedures, find_procedures
    from cribkit.desk.wrenches import chart
    from cribkit.report.wrenches import pictured

    wanted = find_procedures(names, procedures, demo) if names else all_procedures(procedures, demo)
    with reading(ctx, demo) as crib:
        emit(pictured(chart(crib, wanted, today(on))), form(as_, json))


def wrench_gaps(
    ctx: typer.Context,
    names: Names = None,
    procedures: Procedures = None,
    offers: Annotated[
        Path | None, typer.Option("--offers", help="Your own table of wrenches that can be bought.", metavar="FILE")
    ] = None,
    demo: Demo = False,
    on: On = None,
    as_: As = Form.TABLE,
    json: Json = False,
) -> None:
    """Torques that no wrench covers, by cause; the fewest wrenches to buy; which single step opens most jobs.

    Exit code 1 where some torque is not covered.

    Example: cribkit wrench gaps --demo
    """
    from cribkit.desk.openers import gaps_and_steps
    from cribkit.desk.procedures import all_procedures, find_procedures
    from cribkit.report.gaps import told

    wanted = find_procedures(names, procedures, demo) if names else all_procedures(procedures, demo)
    with reading(ctx, demo) as crib:
        emit(told(*gaps_and_steps(crib, wanted, today(on), offers)), form(as_, json))
