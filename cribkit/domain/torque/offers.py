"""Torque wrenches that can be bought: the editable table offers.toml, as wrenches fresh from calibration."""

from __future__ import annotations

import datetime as dt
from typing import Any

from cribkit.domain.problem import BadInput
from cribkit.domain.quantity import torque_unit
from cribkit.domain.tables import table
from cribkit.domain.torque.kinds import mechanism
from cribkit.domain.torque.wrench import Scale, Wrench


def offered(on: dt.date, rows: list[dict[str, Any]] | None = None, source: str = "offers.toml") -> tuple[Wrench, ...]:
    """Each offer as a wrench calibrated that day; its tag is the offer's name.

    `rows` are those of a table of the shop's own. BadInput for a row that cannot be a wrench.
    """
    found = table("cribkit.domain.torque", "offers.toml")["offer"] if rows is None else rows
    return tuple(offer(row, on, f"{source}: offer {at}") for at, row in enumerate(found, 1))


def offer(row: dict[str, Any], on: dt.date, source: str) -> Wrench:
    """One row as a wrench."""
    try:
        unit, kind = torque_unit(str(row["unit"])), mechanism(str(row["mechanism"]))
    except BadInput as error:
        raise BadInput(*(problem._replace(source=source) for problem in error.problems)) from None
    except KeyError as error:
        raise unreadable(error, source) from None
    try:
        low, high = map(float, row["range"])
        step = float(row["graduation"])
        name, drive, percent = str(row["name"]), str(row["drive"]), row.get("accuracy_pct")
        accuracy, lever = None if percent is None else float(percent) / 100, row.get("lever_mm")
        lever_mm = None if lever is None else float(lever)
    except (KeyError, TypeError, ValueError) as error:
        raise unreadable(error, source) from None
    if not 0 <= low <= high or high == 0 or step < 0 or (accuracy is not None and not 0 < accuracy < 1):
        raise BadInput.of("bad-offer", "the offer's range, graduation or accuracy is not one", "mend it.", source)
    return Wrench(
        tag=name,
        description=name,
        mechanism=kind.name,
        scales=(Scale(unit, low, high, step),),
        accuracy=accuracy,
        drive=drive,
        lever_mm=lever_mm,
        calibrated_on=on,
    )


def unreadable(error: Exception, source: str) -> Exception:
    """An offer that lacks something."""
    todo = "give name, mechanism, range, unit, graduation and drive."
    return BadInput.of("bad-offer", f"the offer cannot be read ({error})", todo, source)
