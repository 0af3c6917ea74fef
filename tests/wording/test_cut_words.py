"""Words cut short as storemen write them, and catalogue order: what they stand for, and what they never become."""

from __future__ import annotations

from pathlib import Path

from cribkit.domain.wording import read
from tests.wording.pairs import over, verdict_on

HERE = Path(__file__).parent
LINES = (HERE / "cut_words.txt").read_text(encoding="utf-8").splitlines()
PAIRS = [tuple(part.strip() for part in line.split("|")) for line in LINES if line and not line.startswith("#")]


@over(PAIRS)
def test_a_storemans_line_is_read(need: str, item: str, verdict: str) -> None:
    assert verdict_on(need, item, read(need).kind) == verdict


# Two spellings for two numbers never become one word.
APART = [
    ("flange gasket 3 bolt", "gasket flange 2 bolt"),
    ("exhaust gasket, two bolt", "exhaust gasket, four bolt"),
    ("7-way trailer tester", "trailer tester 13 pin"),
    ("6PK1750 belt", "BELT AUX 5PK1750"),
    ("blade fuse 15", "FUSE BLADE 10A"),
    ("M14 multi-tooth bit socket, 1/2 drive", "SKT BIT XZN M12 1/2DR"),
    ("split pin 5/32 inch x 2", "COTTER PIN 5/32 X 1-1/2 IN"),
    ("dial gauge 0.001 mm", "DIAL GAUGE 0-10MM 0.01MM"),
    ("digital caliper 0-300 mm", "CALIPER, DIGITAL, 0-150MM"),
    ("P-clip 12 mm", "P-CLIP 15MM RUBBER"),
]


@over([(*pair, "none") for pair in APART])
def test_other_numbers_are_other_things(need: str, item: str, verdict: str) -> None:
    assert verdict_on(need, item) == verdict


# A range and a number of pieces: what else is in the set takes room. Hexagon keys are those of ISO 2936 (from memory).
SETS = [
    ("13 mm socket, 3/8 drive", "SKT SET 3/8DR 8-19MM 6PT 12PC", "match"),
    ("13 mm socket, 3/8 drive", "SKT SET 3/8DR 8-19MM 6PT 10PC", "review"),
    ("12 mm socket, 1/2 drive", "socket set 1/2 dr 10-32 mm with ratchet and 2 extensions, 24 pc", "review"),
    ("12 mm socket, 1/2 drive", "socket set 1/2 dr 10-32 mm with ratchet and 2 extensions, 26 pc", "match"),
    ("5 mm hex key", "hex key set 1.5-10mm 9pc", "match"),
    ("2.5 mm hex key", "hex key set 1.5-10mm 9pc", "match"),
    ("7 mm hex key", "hex key set 1.5-10mm 9pc", "none"),
    ("5 mm T-handle hex key", "T-handle hex key set 2-10mm 8pc", "match"),
    ("5 mm hex key", "T-handle hex key set 2-10mm 8pc", "review"),  # as one T-handle key is for a plain key
    ("1/2 in socket, 3/8 drive", "SKT SET 3/8DR 5/16-3/4IN 8PC", "match"),
    ("5/32 hex key", "KEY SET HEX 5/64-1/4IN 8PC", "review"),
]


@over(SETS)
def test_a_set_holds_what_its_pieces_leave_room_for(need: str, item: str, verdict: str) -> None:
    assert verdict_on(need, item, "tool") == verdict
