"""The table of commands: name, the person it serves, and where its function is.

A command's module is imported only when that command runs, so that one command does not pay for the others.
A name with a space belongs to a group ("wrench list").
"""

from __future__ import annotations

from typing import NamedTuple


class Entry(NamedTuple):
    """One command of the program."""

    name: str  # "check", or "wrench list" for a command of a group
    person: str  # the heading it stands under in the help
    place: str  # module:function


TECHNICIAN = "Technician"
ATTENDANT = "Crib attendant"
SHOP = "Shop"
KEEPER = "Keeper of the file"

GROUPS = {"wrench": "Torque wrenches: range, calibration, coverage."}

COMMANDS: tuple[Entry, ...] = (
    Entry("check", TECHNICIAN, "cribkit.cli.checking:check"),
    Entry("find", TECHNICIAN, "cribkit.cli.checking:find"),
    Entry("confirm", TECHNICIAN, "cribkit.cli.checking:confirm"),
    Entry("procedures", TECHNICIAN, "cribkit.cli.technician:procedures"),
    Entry("lint", TECHNICIAN, "cribkit.cli.technician:lint"),
    Entry("restock", ATTENDANT, "cribkit.cli.restocking:restock"),
    Entry("order", ATTENDANT, "cribkit.cli.restocking:order"),
    Entry("orders", ATTENDANT, "cribkit.cli.restocking:orders"),
    Entry("load", KEEPER, "cribkit.cli.keeper:load"),
    Entry("export", KEEPER, "cribkit.cli.keeper:export"),
    Entry("backup", KEEPER, "cribkit.cli.keeper:backup"),
    Entry("restore", KEEPER, "cribkit.cli.keeper:restore"),
    Entry("audit", KEEPER, "cribkit.cli.keeper:audit"),
    Entry("read", KEEPER, "cribkit.cli.keeper:read"),
)
