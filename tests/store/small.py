"""A small crib for tests: a folder of CSV files, and the crib made from it. All names and values are invented."""

from __future__ import annotations

import datetime as dt
from pathlib import Path

from cribkit.desk.keeping import Entry, load_folder

DAY = dt.date(2026, 11, 25)
ENTRY = Entry("A. Keeper", DAY, "2026-11-25T08:00:00Z")

FILES = {
    "tools.csv": """\
tag,description,quantity,location,condition,contents,note
SK-8,"8 mm socket, 1/4 drive, 6 point",2,A1,ok,,
SK-10,"10 mm socket, 1/4 drive, 6 point",1,A1,ok,,
RA-1,1/4 drive ratchet,1,A2,ok,,
SET-1,"socket set 1/4 drive, 3 pc",1,A3,ok,5 mm;6 mm;7 mm (missing),
PL-1,long nose pliers,1,A4,damaged,,tip bent
""",
    "torque_wrenches.csv": """\
tag,description,mechanism,range_min,range_max,unit,graduation,accuracy_pct,drive,lever_mm,calibrated_on,location
TW-1,torque wrench 1/4 drive 5-25 Nm,click,5,25,N·m,0.25,4,1/4,180,2026-09-14,B1
TW-2,,click,40,200,in-lb,1,4,1/4,,2026-09-14,B1
""",
    "consumables.csv": """\
tag,description,unit,pack,on_hand,min,max,supplier,unit_cost,lot,expires_on,location,traits,hazards
CL-1,"throttle body cleaner, sensor safe",mL,400,3,1,6,Marsh Lane,5.5,T1,2027-03,C1,sensor-safe,GHS02;GHS07
CL-1,"throttle body cleaner, sensor safe",mL,400,1.5,1,6,Marsh Lane,5.5,T0,2026-12-31,C1,sensor-safe,GHS02;GHS07
GL-1,nitrile gloves L,each,100,2,1,5,,9,,,C2,,
OIL-1,engine oil 5W-30,L,5,4,2,8,Marsh Lane,30,,,C3,,GHS08
""",
    "suppliers.csv": """\
name,lead_days,minimum_order,note
Marsh Lane,3,40,
""",
    "loans.csv": """\
tag,by,since,quantity,job,note
TW-2,R. Holm,2026-11-20,1,wren-31,
""",
}


def write_folder(folder: Path, **changed: str) -> Path:
    """The folder with its files; `tools="..."` replaces tools.csv, and "" leaves a file out."""
    folder.mkdir(parents=True, exist_ok=True)
    for name, text in (FILES | {f"{key}.csv": text for key, text in changed.items()}).items():
        if text:
            (folder / name).write_text(text, encoding="utf-8")
    return folder


def make_crib(folder: Path, **changed: str) -> Path:
    """A crib file loaded from the small files."""
    path = folder / "crib.db"
    load_folder(path, write_folder(folder / "files", **changed), ENTRY)
    return path
