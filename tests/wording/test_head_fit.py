"""What turns a fastener's head. From the trade: common practice, no source, but for the tables of the sizes."""

import pytest

from cribkit.domain.wording import head_drivers, judge, read_item

CASES = [
    ("8 mm hex", "SKT 1/4DR 8MM 6PT", True),
    ("8 mm hex", "SKT 1/4DR 8MM 12PT", True),
    ("8 mm hex", "SKT 1/4DR 9MM 6PT", False),
    ("8 mm hex", "SKT 1/4DR E8", False),
    ("8 mm hex", "8 mm hex bit socket, 1/4 drive", False),
    ("30 mm 12-point", "SOCKET 30MM 1/2DR 12PT", True),
    ("30 mm 12-point", "SOCKET 30MM 1/2DR 6PT", False),
    ("30 mm bi-hex", "SOCKET 30MM 1/2DR 6PT", False),
    ("5 mm internal hex", "5 mm hex bit socket, 3/8 drive", True),
    ("5 mm internal hex", "6 mm hex bit socket, 3/8 drive", False),
    ("5 mm internal hex", "SKT 1/4DR 5MM 6PT", False),
    ("T30", "T30 BIT SKT 1/4DR", True),
    ("T30", "T27 BIT SKT 1/4DR", False),
    ("T30", "SKT 1/4DR E8", False),
    ("T25 tamper", "T25 TAMPER BIT SKT 1/4DR", True),
    ("T25 tamper", "T25 BIT SKT 1/4DR", False),
    ("E10 external six-lobe", "SKT 3/8DR E10", True),
    ("E10 external six-lobe", "SKT 3/8DR 10MM", False),
    ("E10 external six-lobe", "T50 BIT SKT 3/8DR", False),
]


@pytest.mark.parametrize(("head", "item", "fits"), CASES, ids=lambda value: str(value))
def test_only_what_fits_the_head_turns_it(head: str, item: str, fits: bool) -> None:
    meaning = read_item(item, "tool")
    assert any(judge(driver, meaning).status == "match" for driver in head_drivers(head)) is fits


@pytest.mark.parametrize("head", ["", "a strange head", "M8", "12 point"])
def test_a_head_that_cannot_be_read_has_no_driver(head: str) -> None:
    assert head_drivers(head) == ()
