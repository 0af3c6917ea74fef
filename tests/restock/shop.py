"""A small workshop in a folder: a crib file, procedures, and the commands run in it. All names are invented."""

from __future__ import annotations

import datetime as dt
import os
from pathlib import Path

from typer.testing import CliRunner, Result

from cribkit.cli.app import app
from cribkit.desk.keeping import Entry, load_folder
from cribkit.domain.problem import CribkitError
from cribkit.domain.stock.movement import Movement, MovementKind
from cribkit.domain.stock.thousandths import parts
from cribkit.store.opening import open_crib
from cribkit.store.posting import post

TODAY = dt.date(2026, 11, 30)
OPENED = Entry("A. Keeper", TODAY - dt.timedelta(days=365), "2025-11-30T08:00:00Z")

TOOLS = """\
tag,description,quantity,location,condition,contents,note
SK-10,"10 mm socket, 3/8 drive, 6 point",2,A1,ok,,
"""
CONSUMABLES = """\
tag,description,unit,pack,on_hand,min,max,supplier,unit_cost,lot,expires_on,location,traits,hazards
GL-1,nitrile gloves L,each,100,2,1,5,Marsh Lane (invented),9,,,C2,,
CP-1,"cotter pin, 3.2 x 40 mm",each,1,6,,,Marsh Lane (invented),0.2,,,C4,,
BC-1,"brake cleaner, non-chlorinated, 500 mL",mL,500,3,,,Marsh Lane (invented),3.6,,,C1,non-chlorinated,GHS02
BC-2,"brake cleaner, non-chlorinated, 500 mL",mL,500,1,,,Saltings (invented),4,,,C1,non-chlorinated,GHS02
"""
SUPPLIERS = """\
name,lead_days,minimum_order,note
Marsh Lane (invented),3,,
Saltings (invented),10,60,
"""
HUB = """\
id = "hub-nut"
title = "Retighten the hub nut"
applies_to = "Tern minibus (invented)"
minutes = 20
source = "Invented for this test."

[[tool]]
need = "10 mm socket, 3/8 drive"

[[tool]]
need = "36 mm socket, 3/4 drive"

[[consumable]]
need = "cotter pin 3.2 x 40 mm"
amount = "2"

[[consumable]]
need = "non-chlorinated brake cleaner"
amount = "100 mL"
never = ["chlorinated brake cleaner"]

[[consumable]]
need = "hub cap gasket, 90 mm"
amount = "1"

[[consumable]]
need = "nitrile gloves L"
amount = "4"
optional = true
"""


class Shop:
    """The folder, and short words to work in it."""

    def __init__(self, folder: Path, consumables: str = CONSUMABLES) -> None:
        self.folder = folder
        files = folder / "files"
        files.mkdir()
        for name, text in (("tools", TOOLS), ("consumables", consumables), ("suppliers", SUPPLIERS)):
            (files / f"{name}.csv").write_text(text, encoding="utf-8")
        (folder / "procedures").mkdir()
        (folder / "procedures" / "hub-nut.toml").write_text(HUB, encoding="utf-8")
        self.path = folder / "crib.db"
        load_folder(self.path, files, OPENED)

    def use(self, tag: str, amount: float, *days_ago: int, job: str = "") -> None:
        """Issue and use up, on each of these days."""
        with open_crib(self.path, write=True) as crib, crib.posting():
            for back in days_ago:
                on = TODAY - dt.timedelta(days=back)
                for kind in (MovementKind.ISSUE, MovementKind.USE):
                    post(crib, Movement(kind, tag, parts(amount), "J. Sedge", on, job=job), "2026-11-30T08:00:00Z")

    def sql(self, text: str, *values: object) -> None:
        with open_crib(self.path, write=True) as crib, crib.posting():
            crib.connection.execute(text, values)

    def run(self, *words: str) -> Result:
        """A command in this folder, at 80 columns; problems are raised as the program's own errors."""
        before = Path.cwd()
        os.chdir(self.folder)
        try:
            return CliRunner(env={"COLUMNS": "80"}).invoke(app, list(words), catch_exceptions=True)
        finally:
            os.chdir(before)

    def refused(self, *words: str) -> list[str]:
        """The problems of a command that ends in bad input."""
        error = self.run(*words).exception
        assert isinstance(error, CribkitError), error
        assert error.exit_code == 2
        return [str(problem) for problem in error.problems]
