"""What `find` finds, beyond the words of descriptions."""

from pathlib import Path

import pytest

from cribkit.desk.find import find
from tests.desk.world import crib_of

WRENCHES = """
W1,click,5,25,N·m,0.25,4,1/4,180,2026-09-01,12,C1,ok
W2,click,40,200,in-lb,1,4,1/4,180,2026-09-01,12,C1,ok
W3,screwdriver-click,1,6,N·m,0.1,6,1/4,,2026-09-01,12,C1,ok
"""


@pytest.mark.parametrize(
    ("text", "tag"),
    [
        ("torque wrench 5-25 N·m, 1/4 drive", "W1"),
        ("torque wrench 40-200 in-lb 1/4 drive", "W2"),
        ("torque screwdriver 1-6 Nm", "W3"),
        ("torque wrench 60-340 N·m, 1/2 drive", None),
        ("torque wrench 5-25 N·m, 3/8 drive", None),
    ],
)
def test_a_torque_wrench_is_found_by_its_columns(tmp_path: Path, text: str, tag: str | None) -> None:
    with crib_of(tmp_path, wrenches=WRENCHES) as crib:
        (match,) = find(crib, [text])
    assert (match.best.item.tag if match.best and match.status == "match" else None) == tag


CONSUMABLES = """
C1,flat washer M8,each,10,40,C1,,
C2,flat washer M8 wide,each,10,40,C1,,
C3,flat washer M10,each,10,40,C1,,
"""


def test_a_word_by_which_the_crib_tells_its_items_apart_counts(tmp_path: Path) -> None:
    with crib_of(tmp_path, consumables=CONSUMABLES) as crib:
        (wide, plain, ten) = find(crib, ["wide flat washer M8", "flat washer M8", "wide flat washer M10"])
    assert (wide.status, wide.best and wide.best.item.tag) == ("match", "C2")
    assert [(other.tag, other.why) for other in wide.alternatives] == [
        ("C1", "wide not stated, by which others are told apart here")
    ]
    assert (plain.status, plain.best and plain.best.item.tag) == ("match", "C1")
    assert (ten.status, ten.why) == ("review", "wide not stated, by which others are told apart here")
