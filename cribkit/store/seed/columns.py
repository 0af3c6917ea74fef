"""The files of a seed inventory and their columns: one table for the reader, the export and docs/file-formats.md."""

from __future__ import annotations

from typing import NamedTuple


class Column(NamedTuple):
    """One column: its name, what stands in it, and what a blank cell means."""

    name: str
    holds: str  # how a cell is read: a name of cells.py's READERS
    blank: str = ""  # the default, as it would be written
    required: bool = False
    about: str = ""


TOOLS = (
    Column("tag", "tag", required=True, about="the item's unique mark: no spaces, no =, at most 64 characters"),
    Column("description", "text", required=True, about="what it is, in any trade notation"),
    Column("quantity", "pieces", "1", about="how many interchangeable ones the crib owns, those on loan included"),
    Column("location", "text", about="the shelf"),
    Column("condition", "condition", "ok", about="ok, damaged or missing"),
    Column("contents", "text", about="members of a set, separated by `;`"),
    Column("note", "text"),
    Column("gtin", "gtin", about="the number of its barcode, so that a scan finds it"),
)
WRENCHES = (
    Column("tag", "tag", required=True),
    Column("description", "text", about="blank: made from mechanism, range, unit and drive"),
    Column("mechanism", "mechanism", required=True, about="click, fixed, non-graduated, dial, beam, electronic ..."),
    Column("range_min", "number", required=True, about="lowest mark"),
    Column("range_max", "positive", required=True, about="highest mark"),
    Column("unit", "torque-unit", required=True, about="the unit of the scale: N·m, in-lb, ft-lb ..."),
    Column("graduation", "number", "0", required=True, about="step between marks; 0 or blank where it has no scale"),
    Column("accuracy_pct", "positive", about="blank: the limit of ISO 6789 for its kind"),
    Column("drive", "text", about="1/4, 3/8, 1/2, 3/4, 1"),
    Column("lever_mm", "positive", about="centre of the square to the middle of the grip"),
    Column("calibrated_on", "day", about="2026-05-31; blank: never"),
    Column("interval_months", "count", "12"),
    Column("interval_cycles", "count", "5000"),
    Column("certificate", "text"),
    Column("location", "text"),
    Column("condition", "condition", "ok"),
    Column("second_unit", "torque-unit", about="a second scale has all four of these"),
    Column("second_min", "number"),
    Column("second_max", "positive"),
    Column("second_graduation", "positive"),
    Column("note", "text"),
)
CONSUMABLES = (
    Column("tag", "tag", required=True, about="a second row with the same tag and another lot is more of the same"),
    Column("description", "text", required=True),
    Column("unit", "stock-unit", required=True, about="each, mL, L, g, kg, mm or m"),
    Column("pack", "positive", "1", about="content of one container, in unit"),
    Column("on_hand", "number", required=True, about="containers in the crib; 0.5 is half a container"),
    Column("min", "number", about="containers"),
    Column("max", "number", about="containers"),
    Column("supplier", "text", about="a name of suppliers.csv"),
    Column("unit_cost", "number", about="money for one container"),
    Column("lot", "lot"),
    Column("expires_on", "expiry", about="2026-11-30, or 2026-11 for the last day of the month"),
    Column("location", "text"),
    Column("traits", "text", about="separated by `;`: sensor-safe, chlorinated, flammable ..."),
    Column("hazards", "hazards", about="GHS codes separated by `;`: GHS02;GHS07, or statements: H222;H229"),
    Column("service_life_days", "count", about="how long an opened container may be used; blank: as long as its lot"),
    Column("note", "text"),
    Column("gtin", "gtin", about="the number of its barcode, so that a scan finds it"),
)
SUPPLIERS = (
    Column("name", "text", required=True),
    Column("lead_days", "number", required=True, about="days from order to delivery"),
    Column("minimum_order", "number", about="money"),
    Column("note", "text"),
)
LOANS = (
    Column("tag", "tag", required=True),
    Column("by", "text", required=True, about="who has it"),
    Column("since", "day", required=True),
    Column("quantity", "positive", "1", about="pieces; containers of a consumable"),
    Column("lot", "lot"),
    Column("job", "text"),
    Column("note", "text"),
)
SQUARES = (
    Column("square", "square", required=True, about="1/4 hex, 1/4, 3/8, 1/2, 3/4, 1"),
    Column("limit_nm", "positive", required=True, about="the torque that the crib's parts of this square bear, N·m"),
    Column("note", "text", about="where the figure is from"),
)

FILES: dict[str, tuple[Column, ...]] = {
    "suppliers.csv": SUPPLIERS,
    "tools.csv": TOOLS,
    "torque_wrenches.csv": WRENCHES,
    "consumables.csv": CONSUMABLES,
    "loans.csv": LOANS,
    "squares.csv": SQUARES,
}
