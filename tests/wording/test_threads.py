"""Threads as the trade writes them: metric with and without the M, inch, and pipe."""

from __future__ import annotations

import pytest

from cribkit.domain.wording import read
from tests.wording.pairs import over, verdict_on

# Pipe threads of ASME B1.20.1 (NPT, 1/8-27, 1/4-18), ISO 228 (G) and ISO 7 (R, Rc); pitches of ISO 261. From memory.
READ = [
    ("1/8 NPT tap", "1/8 NPT", {}),
    ("TAP,PIPE,1/8-27 NPT", "1/8 NPT", {}),
    ("die 1/4-18 NPTF", "1/4 NPT", {}),
    ("bonded seal G1/2", "1/2 BSP", {"taper": "parallel"}),
    ("bonded seal, half inch BSP", "1/2 BSP", {}),
    ("BONDED SEAL, 1/4 IN. BSP", "1/4 BSP", {}),
    ("pipe plug R1/4", "1/4 BSP", {"taper": "taper"}),
    ("pipe plug 1 1/4 BSPT", "1-1/4 BSP", {"taper": "taper"}),
    ("wheel bolt 14x1.5x28", "M14", {"pitch": "1.5", "bolt_length": "28 mm"}),
    ("wheel nut 12 x 1.5", "M12", {"pitch": "1.5"}),
    ("bolt 8 x 25", "M8", {"bolt_length": "25 mm"}),
    ("bolt M8x1.25x40", "M8", {"pitch": "1.25", "bolt_length": "40 mm"}),
    ("bolt 5/16 x 1", "5/16-18", {"bolt_length": "1 in"}),
]


@pytest.mark.parametrize(("text", "thread", "more"), READ, ids=[row[0] for row in READ])
def test_a_thread_is_read_with_what_belongs_to_it(text: str, thread: str, more: dict[str, str]) -> None:
    found = dict(read(text).attributes)
    assert {name: found.get(name) for name in ("thread", *more)} == {"thread": thread, **more}


# Threads of one size in two systems do not screw into each other, ISO 228 and ASME B1.20.1 (from memory).
PAIRS = [
    ("1/8 NPT tap", "TAP 1/8-27 NPT", "match"),
    ("1/8 NPT tap", "TAP 1/8 BSP", "none"),
    ("1/8 NPT tap", "TAP 1/8", "none"),
    ("1/4 NPT tap", "TAP 1/8-27 NPT", "none"),
    ("1/8 BSPT tap", "TAP G1/8", "none"),
    ("1/8 BSPT tap", "TAP 1/8 BSP", "review"),
    ("bonded seal 1/2 BSP", "bonded seal G1/2", "match"),
    ("pipe plug 1/4 NPT", "PLUG PIPE M10", "none"),
    ("wheel bolt M14x1.5x28", "BLT WHL 14X1.5X28 BALL", "match"),
    ("wheel bolt M14x1.25x28", "BLT WHL 14X1.5X28 BALL", "none"),
    ("drill bit 6.8 mm", "DRL BT 6.8 HSS", "match"),
    ("6.8 drill for tapping M8", "DRILL BIT 6.8MM HSS", "match"),
    ("6.8 drill for tapping M8", "DRILL BIT 8MM HSS", "none"),
]


@over(PAIRS)
def test_a_thread_fits_its_own_kind(need: str, item: str, verdict: str) -> None:
    assert verdict_on(need, item) == verdict
