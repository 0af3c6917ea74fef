"""Deliveries on orders: in parts, too much, the rest, new items; and what a mistake does."""

from pathlib import Path

import pytest

from cribkit.desk.ledger import Arrival
from cribkit.desk.orders import Delivery, receive
from cribkit.domain.problem import BadInput
from cribkit.store.opening import open_crib
from cribkit.store.posting import Entry
from cribkit.store.purchases import NewLine, Purchase, place, purchases
from tests.restock.shop import TODAY, Shop

ENTRY = Entry("J. Sedge", TODAY, "2026-11-30T08:00:00Z")
BY = ("--by", "J. Sedge")
LINES = [
    NewLine("nitrile gloves L", 3, 300, "each", "GL-1", 9.0),
    NewLine("brake cleaner", 4, 2000, "mL", "BC-1", 3.6),
    NewLine("hub cap gasket, 90 mm", 1, 2, "each"),
]


@pytest.fixture
def shop(tmp_path: Path) -> Shop:
    made = Shop(tmp_path)
    with open_crib(made.path, write=True) as crib, crib.posting():
        place(crib, "Marsh Lane (invented)", TODAY, LINES, ENTRY)
    return made


def placed(shop: Shop) -> Purchase:
    with open_crib(shop.path) as crib:
        return purchases(crib)[0]


def still_to_come(shop: Shop) -> list[float]:
    return [line.open for line in placed(shop).lines]


def test_a_part_delivery_leaves_the_rest_on_order(shop: Shop) -> None:
    found = shop.run("receive", "GL-1", "200 each", "--order", "1", *BY)
    assert "Note: order 1: 100 of GL-1 still to come" in found.stdout
    assert still_to_come(shop) == [100, 2000, 2]


def test_without_an_amount_all_that_is_to_come_is_taken_in(shop: Shop) -> None:
    shop.run("receive", "BC-1", "1 can", "--order", "1", *BY)
    assert still_to_come(shop) == [300, 1500, 2]
    shop.run("receive", "bc-1", "--order", "1", *BY)
    assert still_to_come(shop) == [300, 0, 2]


def test_more_than_was_to_come_is_taken_in_and_said(shop: Shop) -> None:
    found = shop.run("receive", "GL-1", "320 each", "--order", "1", *BY)
    assert "Note: order 1: 20 of GL-1 more than was still to come" in found.stdout
    assert still_to_come(shop)[0] == 0


def test_the_rest_of_an_order_is_taken_in_at_once_and_what_has_no_tag_is_named(shop: Shop) -> None:
    found = shop.run("receive", "--order", "1", *BY)
    assert still_to_come(shop) == [0, 0, 2]
    assert "line 3 (hub cap gasket, 90 mm) has no tag yet" in found.stdout


def test_a_new_item_is_received_under_its_new_tag(shop: Shop) -> None:
    text = (shop.folder / "files" / "consumables.csv").read_text(encoding="utf-8")
    (shop.folder / "files" / "consumables.csv").write_text(
        text + 'HC-1,"hub cap gasket, 90 mm",each,1,0,,,,,,,,,\n', encoding="utf-8"
    )
    assert shop.run("load", "files").exit_code == 0
    (problem,) = shop.refused("receive", "HC-1", "2", "--order", "1", *BY)
    assert problem == "order 1: HC-1 is not on it: it has GL-1, BC-1, line 3 (new item)."
    assert shop.run("receive", "HC-1", "--order", "1", "--line", "3", *BY).exit_code == 0
    assert (placed(shop).lines[2].tag, still_to_come(shop)[2]) == ("HC-1", 0)


def test_a_receipt_that_is_undone_is_on_order_again(shop: Shop) -> None:
    shop.run("receive", "GL-1", "300 each", "--order", "1", *BY)
    with open_crib(shop.path) as crib:
        number = crib.connection.execute("SELECT max(id) FROM movement").fetchone()[0]
    assert still_to_come(shop)[0] == 0
    assert shop.run("undo", str(number), "--reason", "counted wrong", *BY).exit_code == 0
    assert still_to_come(shop)[0] == 300


def test_a_delivery_without_a_number_points_to_the_orders_that_wait_for_it(shop: Shop) -> None:
    found = shop.run("receive", "GL-1", "100 each", *BY)
    assert "GL-1 is on order (1)" in found.stdout
    assert still_to_come(shop)[0] == 300
    assert "on order" not in shop.run("receive", "CP-1", "3", *BY).stdout


def test_a_lead_time_is_learned_from_the_receipts(shop: Shop) -> None:
    for line in placed(shop).lines[:2]:
        shop.run("receive", str(line.tag), "--order", "1", "--on", "2026-12-09", *BY)
    shop.sql("UPDATE purchase_line SET tag = 'CP-1' WHERE line = 3")
    shop.run("receive", "CP-1", "--order", "1", "--on", "2026-12-11", *BY)
    assert placed(shop).taken == 11


@pytest.mark.parametrize(
    ("words", "problem"),
    [
        (("receive", "CP-1", "2", "--order", "1"), "order 1: CP-1 is not on it: it has GL-1, BC-1, line 3 (new item)."),
        (("receive", "GL-1", "2", "--order", "8"), "order 8: there is no order 8: see `cribkit orders`."),
        (("receive",), "nothing is named: give the item's TAG, or --order NUMBER."),
        (
            ("receive", "--order", "1", "--lot", "A"),
            "order 1: an amount, a lot or an expiry date needs its item: name the TAG.",
        ),
        (
            ("receive", "GL-1", "2 packs", "--order", "1", "--line", "2"),
            "order 1: line 2 is not GL-1 in each: see `cribkit orders`.",
        ),
    ],
)
def test_a_delivery_that_does_not_fit_its_order_is_refused(shop: Shop, words: tuple[str, ...], problem: str) -> None:
    before = still_to_come(shop)
    assert shop.refused(*words, *BY) == [problem]
    assert still_to_come(shop) == before


def test_an_ended_order_takes_no_delivery(shop: Shop) -> None:
    shop.run("order", "--end", "1", "--reason", "not made any more", "--on", "2026-11-30", *BY)
    (problem,) = shop.refused("receive", "GL-1", "2", "--order", "1", *BY)
    assert problem.startswith("order 1: it was ended on 2026-11-30: not made any more")


def test_nothing_is_kept_of_a_delivery_that_fails_half_way(shop: Shop) -> None:
    """The expired lot is refused; so is its place on the order."""
    arrival = Arrival("100 each", "A", TODAY.replace(year=2020))
    with open_crib(shop.path, write=True) as crib, pytest.raises(BadInput, match="expired"):
        receive(crib, "GL-1", arrival, Delivery(1), ENTRY)
    assert still_to_come(shop)[0] == 300
