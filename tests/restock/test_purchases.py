"""Orders in the crib: what is still to come follows from receipts and their corrections."""

import sqlite3

import pytest

from cribkit.store.purchases import NewLine, arrived, end, now_stocked, place, purchases
from tests.restock.world import POSTING, World, day

GLOVES = NewLine("nitrile gloves", 3, 300, "each", "GL-1", 9.0, "below the reorder point")
SEAL = NewLine("plenum seal", 1, 2, "each", why="new item")


@pytest.fixture
def world() -> World:
    made = World()
    made.consumable("GL-1", "nitrile gloves", pack=100)
    place(made.crib, "Marsh Lane (invented)", day(5), [GLOVES, SEAL], POSTING)
    return made


def test_a_placed_order_is_open_and_says_what_was_ordered(world: World) -> None:
    (order,) = purchases(world.crib)
    assert (order.id, order.supplier, order.day, order.due, order.by) == (
        1, "Marsh Lane (invented)", day(0), day(5), "J. Sedge",
    )  # fmt: skip
    gloves, seal = order.open
    assert (gloves.tag, gloves.packs, gloves.amount, gloves.open, gloves.cost) == ("GL-1", 3, 300, 300, 9)
    assert (seal.tag, seal.what, seal.open) == (None, "plenum seal", 2)


def test_part_deliveries_and_their_corrections_change_what_is_open(world: World) -> None:
    world.crib.connection.execute("BEGIN")
    first = world.move("receive", "GL-1", 100, on=3)
    arrived(world.crib, 1, 1, first)
    second = world.move("receive", "GL-1", 150, on=4)
    arrived(world.crib, 1, 1, second)
    assert [line.open for line in purchases(world.crib)[0].lines] == [50, 2]
    world.move("receive", "GL-1", -150, on=4, corrects=second)
    assert purchases(world.crib)[0].lines[0].open == 200


def test_an_order_is_complete_when_every_line_has_come_and_says_how_long_it_took(world: World) -> None:
    arrived(world.crib, 1, 1, world.move("receive", "GL-1", 320, on=6))
    assert purchases(world.crib)[0].taken is None
    world.consumable("SE-1", "plenum seal")
    now_stocked(world.crib, 1, 2, "SE-1")
    arrived(world.crib, 1, 2, world.move("receive", "SE-1", 2, on=9))
    (order,) = purchases(world.crib)
    assert (order.open, order.taken, order.lines[1].tag) == ((), 9, "SE-1")


def test_an_open_order_is_late_from_the_day_after_it_is_due(world: World) -> None:
    (order,) = purchases(world.crib)
    assert (order.overdue(day(5)), order.overdue(day(6)), order.overdue(day(9))) == (0, 1, 4)


def test_an_ended_order_has_nothing_to_come_and_teaches_no_lead_time(world: World) -> None:
    end(world.crib, 1, POSTING, "not made any more")
    (order,) = purchases(world.crib, [1])
    assert (order.open, order.taken, order.overdue(day(99)), order.ended_why) == ((), None, 0, "not made any more")


def test_a_receipt_belongs_to_one_line_only(world: World) -> None:
    number = world.move("receive", "GL-1", 100, on=3)
    arrived(world.crib, 1, 1, number)
    with pytest.raises(sqlite3.IntegrityError):
        arrived(world.crib, 1, 1, number)


def test_only_the_orders_asked_for_are_read(world: World) -> None:
    place(world.crib, "", day(5), [SEAL], POSTING)
    assert [order.id for order in purchases(world.crib, [2])] == [2]
    assert purchases(world.crib, [7]) == ()
