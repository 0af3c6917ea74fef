"""A crib with torque wrenches and the work that was done with them. All names and values are invented."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from cribkit.desk.certificates import read_rows
from cribkit.desk.recording import GuardBand, Posted, Recorded, note_event, record
from cribkit.domain.calibration.state import Happening
from cribkit.domain.torque import Wrench
from cribkit.store.crib import Crib
from cribkit.store.opening import open_crib
from tests.store.small import make_crib

TODAY = dt.date(2026, 11, 25)
WRENCHES = """\
tag,description,mechanism,range_min,range_max,unit,graduation,accuracy_pct,drive,lever_mm,calibrated_on,interval_months,interval_cycles,certificate,location,condition
TW-1,torque wrench 3/8 drive 10-100 Nm,click,10,100,N·m,0.5,4,3/8,300,2026-03-02,12,5000,SD-26-001,B1,ok
TW-2,"torque wrench 1/2 drive 30-150 ft-lb, two-way",click,30,150,ft-lb,1,4,1/2,430,2026-03-02,12,5000,SD-26-002,B1,ok
TW-3,preset torque wrench 110 Nm,fixed,110,110,N·m,0,4,1/2,440,2026-03-02,12,5000,SD-26-003,B2,ok
TW-4,torque wrench 1/4 drive 5-25 Nm,click,5,25,N·m,0.25,4,1/4,180,,12,5000,,B2,damaged
"""
GOOD = {"20": "20;20.1;19.9;20;20", "60": "60;60.1;59.9;60;60", "100": "100;100.1;99.9;100;100"}
STRONG = {"20": "20;20.1;19.9;20;20", "60": "63;63;63;63;63", "100": "110;110.5;109.5;110;110"}
WEAK_LOW = GOOD | {"20": "18;18;18;18;18"}


@contextmanager
def crib_at(path: Path, wrenches: str = WRENCHES) -> Iterator[Crib]:
    """A crib file with these wrenches, open for writing."""
    path.mkdir(exist_ok=True)
    with open_crib(make_crib(path, torque_wrenches=wrenches, loans=""), write=True) as crib:
        yield crib


def posted(on: dt.date = TODAY) -> Posted:
    """Who and when."""
    return Posted("R. Vale", on, f"{on}T09:00:00Z")


def rows(
    tag: str, number: str, day: str, found: dict[str, str], left: dict[str, str] | None = None, **more: str
) -> list[tuple[int, dict[str, str]]]:
    """A certificate's rows as from a file."""
    said = {"tag": tag, "certificate": number, "date": day, "laboratory": "Saltmarsh bench (invented)"} | more
    cells = [("as-found", found), *([("as-left", left)] if left else [])]
    made = [
        said | {"phase": phase, "setting": setting, "reading": shown}
        for phase, points in cells
        for setting, shown in points.items()
    ]
    return list(enumerate(made, 2))


def calibrate(
    crib: Crib,
    tag: str,
    number: str,
    day: str,
    found: dict[str, str],
    left: dict[str, str] | None = None,
    guard: GuardBand | None = None,
    **more: str,
) -> Recorded:
    """Record one certificate."""
    entries, problems = read_rows(crib, rows(tag, number, day, found, left, **more), "c.csv")
    assert problems == ()
    return record(crib, entries, posted(), guard)[0]


def happen(crib: Crib, tag: str, what: str, day: str) -> Wrench:
    """Note an event."""
    return note_event(crib, tag, Happening(what), posted(), "", dt.date.fromisoformat(day))


def wrench(crib: Crib, tag: str) -> Wrench:
    """The wrench as the check sees it."""
    return next(one for one in crib.wrenches() if one.tag == tag)


def work(
    crib: Crib,
    job: str,
    tag: str,
    day: str,
    setting: float | None = 60,
    band: tuple[float | None, float | None] = (57, 63),
    torque: str = "bolts",
    unit: str = "N·m",
    count: int = 2,
    steps: int = 1,
    state: str = "closed",
    done: int = 1,
    vehicle: str = "Wren van 12",
    lever: float = 1.0,
    left_hand: int = 0,
) -> None:
    """A job's torque that was done with a wrench, as the ledger keeps it."""
    last = (day, done, lever, left_hand)
    with crib.posting():
        crib.connection.execute(
            "INSERT OR IGNORE INTO job (job, opened_at, day, by, vehicle, state) VALUES (?, ?, ?, 'I. Marsh', ?, ?)",
            (job, f"{day}T08:00:00Z", day, vehicle, state),
        )
        crib.connection.execute(
            "INSERT INTO job_torque (job, procedure, torque, fastener, count, steps, spec, target_nm, low_nm, high_nm, "
            "setting, setting_unit, wrench, day, done, lever, left_hand) "
            "VALUES (?, 'front-brakes', ?, ?, ?, ?, 'as written', ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
            (job, torque, f"{torque} of the carrier", count, steps, setting, *band, setting, unit, tag, *last),
        )
