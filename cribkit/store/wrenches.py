"""Torque wrenches as the domain wants them."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from cribkit.domain.quantity import torque_unit
from cribkit.domain.stock.item import Item
from cribkit.domain.torque import Scale, Wrench
from cribkit.store.rows import date

if TYPE_CHECKING:
    from cribkit.store.crib import Crib

# A wrench's cycles since its calibration: fasteners times the steps that it acted in, from the calibration's day on.
ROWS = """
    SELECT tag, mechanism, range_min, range_max, unit, graduation, second_unit, second_min, second_max,
           second_graduation, accuracy_pct, drive, lever_mm, calibrated_on, interval_months, interval_cycles,
           certificate,
           (SELECT coalesce(sum(count * steps), 0) FROM job_torque
            WHERE job_torque.wrench = wrench.tag AND job_torque.day >= coalesce(calibrated_on, '')) AS cycles
    FROM wrench ORDER BY tag
"""
# Whether any certificate or event was recorded, or the shop set rules of its own.
LIVED = """
    SELECT EXISTS (SELECT 1 FROM wrench_event) OR EXISTS (SELECT 1 FROM fact WHERE name = 'calibration_policy')
"""


def wrenches_of(crib: Crib) -> tuple[Wrench, ...]:
    """Every torque wrench with its stock and condition, and its calibration as it stands now."""
    items = {item.tag: item for item in crib.items("wrench")}
    cursor = crib.connection.execute(ROWS)
    names = [column[0] for column in cursor.description]
    found = tuple(wrench(dict(zip(names, row, strict=True)), items[row[0]]) for row in cursor)
    if not crib.connection.execute(LIVED).fetchone()[0]:
        return found
    from cribkit.store.wrench_state import (
        with_state,  # only where there is something to fold in: it costs start-up time
    )

    return with_state(crib, found)


def wrench(row: dict[str, Any], item: Item) -> Wrench:
    """One wrench from its row of the database and its item."""
    accuracy = row["accuracy_pct"]
    return Wrench(
        tag=item.tag,
        description=item.description,
        mechanism=row["mechanism"],
        scales=scales(row),
        accuracy=None if accuracy is None else accuracy / 100,
        drive=row["drive"],
        lever_mm=row["lever_mm"],
        calibrated_on=date(row["calibrated_on"]),
        interval_months=row["interval_months"],
        interval_cycles=row["interval_cycles"],
        cycles=row["cycles"],
        certificate=row["certificate"],
        location=item.location,
        condition=item.condition.value,
        on_hand=item.on_hand,
        loans=tuple(loan.by for loan in item.loans),
    )


def scales(row: dict[str, Any]) -> tuple[Scale, ...]:
    """The scale of a wrench, and its second one if it has one."""
    main = Scale(torque_unit(row["unit"]), row["range_min"], row["range_max"], row["graduation"])
    if not row["second_unit"]:
        return (main,)
    second = (row["second_min"], row["second_max"], row["second_graduation"])
    return (main, Scale(torque_unit(row["second_unit"]), *second))
