"""A material, a form or a place that is asked for is never passed over where the item says another one.

Each thing is asked for in one word and offered in its contrary; common practice of the trade, no source.
"""

from __future__ import annotations

import pytest

from cribkit.domain.wording import read, read_item
from tests.wording.test_groups import status

TOOLS = ("pry bar 300 mm", "straightedge 500 mm", "spatula", "extension 150 mm 3/8 drive", "caliper 150 mm")
PARTS = (
    "bolt M8x30",
    "sealing washer 14x18x1.5",
    "O-ring 20x2.5",
    "cable tie 300 mm",
    "shim 0.5 mm",
    "hose clamp 16-27",
)
OTHERS = ("brass", "copper", "aluminium", "nylon", "plastic", "bronze")


@pytest.mark.parametrize("thing", [*TOOLS, *PARTS])
def test_steel_is_no_other_material(thing: str) -> None:
    kind = "tool" if thing in TOOLS else "consumable"
    need = read(f"{thing}, steel", kind)
    passed = [one for one in OTHERS if status(need, read_item(f"{one} {thing}", kind)) == "match"]
    assert passed == []


@pytest.mark.parametrize(
    ("need", "item"),
    [
        ("cable tie 300 mm, steel", "CABLE TIE 300X4.8 BLK"),
        ("sealing washer 14x18, steel", "SEALING WASHER 14X18X1.5"),
        ("steel rule 300 mm", "aluminium rule 300 mm"),
    ],
)
def test_what_is_seldom_of_steel_must_say_so(need: str, item: str) -> None:
    kind = "tool" if "rule" in need else "consumable"
    assert status(read(need, kind), read_item(item, kind)) != "match"


@pytest.mark.parametrize(
    ("one", "other", "thing", "kind"),
    [
        ("large", "small", "funnel", "tool"),
        ("large", "small", "trim tool", "tool"),
        ("flat", "round", "chisel 20 mm", "tool"),
        ("swivel", "fixed", "inspection lamp", "tool"),
        ("high", "low", "axle stand 3 t", "tool"),
        ("inlet", "outlet", "hose 8 mm", "consumable"),
        ("intake", "exhaust", "O-ring 20x2.5", "consumable"),
    ],
)
def test_contraries_are_no_match(one: str, other: str, thing: str, kind: str) -> None:
    for asked, held in ((one, other), (other, one)):
        assert status(read(f"{asked} {thing}", kind), read_item(f"{held} {thing}", kind)) != "match", asked


@pytest.mark.parametrize(
    ("need", "item", "kind"),
    [
        ("self tapping screw, hex washer head, 4.8 x 19", "self tapping screw 4.8x19 pan head", "consumable"),
        ("wall plug 8 mm", "PLUG 8MM", "consumable"),
        ("hybrid coolant", "COOLANT OAT RED", "consumable"),
        ("bolt M8 x 30 8.8, zinc flake", "BOLT M8X30 8.8 ZINC PLATED", "consumable"),
        ("wide jaw adjustable spanner 200 mm", "SPNR ADJ 200MM", "tool"),
        ("reverse drill bit 5 mm", "DRILL HSS 5MM", "tool"),
        ("open end spanner 10 x 11 mm", "SOCKET E10 3/8DR", "tool"),
        ("external star socket E10", "SPNR O/E 10 X 11MM", "tool"),
        ("brake fluid DOT 5.1", "BRAKE FLUID,SILICONE,DOT 5,1 GAL", "consumable"),
        ("torque wrench 1/2 drive, 20 Nm", "torque wrench 1/2 drive 40 Nm - 200 Nm", "tool"),
        ("M6 tap, spiral", "TAP M6 HAND TAPER", "tool"),
        ("offset ring spanner 13 mm", "SPNR RING FLAT 13X15MM", "tool"),
        ("flat ring spanner 13 mm", "SPNR RING OFFSET 13X15MM", "tool"),
        ("RTV for oxygen sensors", "RTV BLACK ACETOXY", "consumable"),
        ("hose clip 16-27 worm drive 1/2 to 3/4", "CLAMP HOSE W/D 1/4-5/8", "consumable"),
    ],
)
def test_what_was_passed_over_once(need: str, item: str, kind: str) -> None:
    assert status(read(need, kind), read_item(item, kind)) != "match"


@pytest.mark.parametrize(
    ("need", "item", "kind"),
    [
        ("10 mm socket 3/8 drive", "SKT SET 3/8DR 8-19MM EXC 10MM", "tool"),
        ("10 mm socket 3/8 drive", "SKT SET 3/8DR 8-19MM 12PC 10mm o/s", "tool"),
        ("10 mm socket 3/8 drive", "SKT 3/8DR 11MM (10MM IN C4)", "tool"),
        ("10 mm socket 3/8 drive", "SKT 3/8DR 11MM REPLACES 10MM", "tool"),
        ("13 mm spanner", "SPNR COMB 12MM (13 ON LOAN)", "tool"),
        ("T30 bit socket", "BIT SKT T27 (T30 BROKEN)", "tool"),
        ("250 mm extension 3/8", "EXT 3/8DR 75MM (250 NOT FOUND)", "tool"),
        ("torque wrench 40-200 Nm 1/2 drive", "TORQUE WRENCH 1/2DR 20-100NM (40-200 AWAY FOR CAL)", "tool"),
        ("15 A fuse", "FUSE 10A (15A IN TIN)", "consumable"),
        ("head gasket Wren 2.0", "GASKET HEAD WREN 1.6 (2.0 TO FOLLOW)", "consumable"),
        ("heat shrink 6 mm", "HEAT SHRINK 3MM (6MM NEXT BIN)", "consumable"),
        ("5W-30 engine oil", "ENGINE OIL 5W-40 (REPLACES 5W-30)", "consumable"),
        ("hose clip 16-27", "HOSE CLIP 20-32 WAS 16-27", "consumable"),
        ("non-chlorinated brake cleaner", "BRAKE CLEANER CHLORINATED (NON-CHLOR DISCONTINUED)", "consumable"),
    ],
)
def test_what_an_item_says_of_another_one_is_not_what_it_is(need: str, item: str, kind: str) -> None:
    assert status(read(need, kind), read_item(item, kind)) != "match"
