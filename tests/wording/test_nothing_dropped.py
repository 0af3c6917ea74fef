"""Figures and words that a reading once lost, each of which made a match of a wrong thing. All values are invented."""

from __future__ import annotations

import pytest

from cribkit.domain.wording import read, read_item
from tests.wording.test_groups import status

WRONG = [
    ("tool", "4 jaw puller 150 mm", "PULLER 3 JAW 150MM"),
    ("tool", "6 jaw puller 150 mm", "PULLER 3 JAW 150MM"),
    ("tool", "3 leged pullar 150mm", "PULLER 2 LEG 150MM"),
    ("tool", "external circlip pliers 30 degree", "CIRCLIP PLIERS EXT 90"),
    ("tool", "adapter 3/8F x 1/2M", "ADAPTOR 1/2FX3/8M"),
    ("tool", "adapter 1/2F x 3/8M", "ADAPTOR 3/8F1/2M"),
    ("tool", "3/8 BSF socket 1/2 drive", "SKT 1/2DR 3/8 WHITWORTH"),
    ("tool", "feeler gauge 0,05-1,00", "FEELER GAUGE 1-5MM"),
    ("tool", "sqaure head 10 mm socket 3/8 drive", "SKT 3/8DR 10MM"),
    ("tool", "thread plug gauge M8 6H", "THD PLUG GAUGE M8X1.0 6H"),
    ("tool", "star sd T20, 100 blade, with a handle", "SCREWDRIVER HEXALOB TX20 LG.200"),
    ("consumable", "crankshaft rear oil seal for Heron flatbed 3.0 D", "Wren 2.0 dsl rear main seal"),
    ("consumable", "Drive out the old tension pin and fit a new one, 5 mm x 30 mm", "PIN ROLL 6X30"),
    ("consumable", "E-clip for 6 mm groove", "E-clip 4 mm groove (shaft 5-7)"),
    ("consumable", "35 mm core plug, steel cup", "Core plug, cup type, brass, 35 mm"),
    ("consumable", "rivit nut M6 steel flat hed", "Blind rivet nuts M6 steel countersunk head"),
    ("consumable", "AAA battery", "BATTERY LR61 AAAA 1.5V"),
    ("consumable", "hose clip 16-27 mm - spring type", "HOSE CLIP 16-27"),
    ("consumable", "M8 x 30 bolt 8.8 (flanged)", "BOLT HEX M8X30 8.8"),
    ("consumable", "BRK CLNR N/CHLR", "BRAKE CLEANER CHLORINATED"),
    (
        "consumable",
        "Fit a new worm-drive hose clip, W4 stainless, 25-40 mm with 9 mm band, to the hose.",
        "HOSE CLIP W/DRIVE 25-40MM 9MM BAND W1 ZINC",
    ),
]


@pytest.mark.parametrize(("kind", "need", "line"), WRONG, ids=[need for _, need, _ in WRONG])
def test_a_wrong_thing_is_no_match(kind: str, need: str, line: str) -> None:
    assert status(read(need, kind), read_item(line, kind)) != "match"
