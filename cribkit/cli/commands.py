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
    Entry("pull", TECHNICIAN, "cribkit.cli.jobs:pull"),
    Entry("close", TECHNICIAN, "cribkit.cli.jobs:close"),
    Entry("procedures", TECHNICIAN, "cribkit.cli.technician:procedures"),
    Entry("lint", TECHNICIAN, "cribkit.cli.technician:lint"),
    Entry("receive", ATTENDANT, "cribkit.cli.attendant:receive"),
    Entry("issue", ATTENDANT, "cribkit.cli.attendant:issue"),
    Entry("return", ATTENDANT, "cribkit.cli.attendant:give_back"),
    Entry("count", ATTENDANT, "cribkit.cli.attendant:count"),
    Entry("scrap", ATTENDANT, "cribkit.cli.attendant:scrap"),
    Entry("lost", ATTENDANT, "cribkit.cli.attendant:lost"),
    Entry("found", ATTENDANT, "cribkit.cli.attendant:found"),
    Entry("undo", ATTENDANT, "cribkit.cli.attendant:undo"),
    Entry("out", ATTENDANT, "cribkit.cli.attendant:out"),
    Entry("history", ATTENDANT, "cribkit.cli.attendant:history"),
    Entry("jobs", ATTENDANT, "cribkit.cli.attendant:jobs"),
    Entry("expiring", ATTENDANT, "cribkit.cli.attendant:expiring"),
    Entry("restock", ATTENDANT, "cribkit.cli.restocking:restock"),
    Entry("order", ATTENDANT, "cribkit.cli.restocking:order"),
    Entry("orders", ATTENDANT, "cribkit.cli.restocking:orders"),
    Entry("wrench list", SHOP, "cribkit.cli.shop:wrench_list"),
    Entry("wrench covers", SHOP, "cribkit.cli.shop:wrench_covers"),
    Entry("wrench gaps", SHOP, "cribkit.cli.shop:wrench_gaps"),
    Entry("wrench picture", SHOP, "cribkit.cli.shop:wrench_picture"),
    Entry("wrench due", SHOP, "cribkit.cli.due:due"),
    Entry("wrench record", SHOP, "cribkit.cli.calibrating:record"),
    Entry("wrench event", SHOP, "cribkit.cli.calibrating:event"),
    Entry("wrench withdraw", SHOP, "cribkit.cli.calibrating:withdraw"),
    Entry("wrench trace", SHOP, "cribkit.cli.calibrating:trace"),
    Entry("wrench advice", SHOP, "cribkit.cli.calibrating:advice"),
    Entry("wrench sheet", SHOP, "cribkit.cli.calibrating:sheet"),
    Entry("wrench labels", SHOP, "cribkit.cli.calibrating:labels"),
    Entry("wrench export", SHOP, "cribkit.cli.calibrating:export"),
    Entry("wrench policy", SHOP, "cribkit.cli.calibrating:policy"),
    Entry("load", KEEPER, "cribkit.cli.keeper:load"),
    Entry("export", KEEPER, "cribkit.cli.keeper:export"),
    Entry("backup", KEEPER, "cribkit.cli.keeper:backup"),
    Entry("restore", KEEPER, "cribkit.cli.keeper:restore"),
    Entry("audit", KEEPER, "cribkit.cli.keeper:audit"),
    Entry("read", KEEPER, "cribkit.cli.keeper:read"),
)
