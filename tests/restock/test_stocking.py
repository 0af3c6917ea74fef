"""What restocking reads from the crib: uses, lots, shelf lives, ratios, worn tools."""

import datetime as dt

import pytest

from cribkit.domain.stock.demand import Use
from cribkit.domain.stock.item import Lot
from cribkit.store import stocking
from tests.restock.world import TODAY, World, day


def worn(world: World) -> tuple[stocking.Worn, ...]:
    return stocking.worn_tools(world.crib, stocking.record(world.crib, TODAY).gone)


@pytest.fixture
def world() -> World:
    made = World()
    made.supplier("Marsh Lane (invented)", 3, 40)
    made.consumable("GL-1", "nitrile gloves", pack=100, minimum=1, maximum=5, supplier="marsh lane (INVENTED)", cost=9)
    made.consumable("CL-1", "cleaner", "mL", 400, life=30)
    made.tool("SK-8", "8 mm socket", count=3)
    return made


def test_a_consumable_has_its_supplier_as_the_supplier_is_spelled(world: World) -> None:
    gloves = stocking.consumables(world.crib)[1]
    assert (gloves.tag, gloves.pack, gloves.minimum, gloves.cost) == ("GL-1", 100, 1, 9)
    assert gloves.supplier == "Marsh Lane (invented)"


def test_uses_are_what_was_used_up_lost_or_found_less_and_never_what_was_thrown_away(world: World) -> None:
    world.move("receive", "GL-1", 300, on=-40)
    world.use("GL-1", 20, on=-30)
    world.use("GL-1", 5, on=-30)
    world.move("issue", "GL-1", 30, on=-20)
    world.move("return", "GL-1", 10, on=-20)
    world.move("lost", "GL-1", 20, on=-19)
    world.move("count", "GL-1", -7, on=-10)
    world.move("count", "GL-1", 2, on=-9)
    world.move("scrap", "GL-1", 50, on=-8)
    found = stocking.record(world.crib, day(-100)).uses["GL-1"]
    assert found == [Use(day(-30), 20), Use(day(-30), 5), Use(day(-19), 20), Use(day(-10), 7), Use(day(-9), -2)]


def test_a_use_that_was_corrected_is_no_use(world: World) -> None:
    world.move("receive", "GL-1", 300, on=-40)
    world.move("issue", "GL-1", 20, on=-30)
    used = world.move("use", "GL-1", 20, on=-30)
    world.move("use", "GL-1", -20, on=-30, corrects=used)
    assert stocking.record(world.crib, day(-100)).uses["GL-1"] == [Use(day(-30), 20), Use(day(-30), -20)]


def test_uses_of_planned_procedures_and_of_earlier_days_are_left_out(world: World) -> None:
    world.job("wren-31", '[["plenum-reseal", "C"], ["alternator", ""]]')
    world.job("tern-07", '[["alternator", "B"]]')
    world.move("receive", "GL-1", 300, on=-90)
    world.use("GL-1", 1, on=-80)
    world.use("GL-1", 2, on=-30, job="wren-31")
    world.use("GL-1", 4, on=-20, job="tern-07")
    jobs = stocking.jobs_of(world.crib, ["plenum-reseal"])
    assert jobs == ("wren-31",)
    assert stocking.jobs_of(world.crib, ["alternator"]) == ("tern-07", "wren-31")
    assert stocking.record(world.crib, day(-60), jobs).uses["GL-1"] == [Use(day(-20), 4)]
    assert stocking.record(world.crib, day(0)).first["GL-1"] == day(-90)


def test_an_opened_container_ends_with_its_service_life(world: World) -> None:
    world.move("receive", "CL-1", 400, on=-10, lot="A", expires=300)
    world.move("receive", "CL-1", 100, on=-10, lot="B", expires=300)
    world.sql("UPDATE lot SET opened_on = ? WHERE lot = 'B'", day(-5).isoformat())
    assert set(stocking.lots(world.crib)["CL-1"]) == {Lot("A", 400, day(300)), Lot("B", 100, day(25), day(-5))}


def test_stock_that_is_damaged_or_missing_is_no_stock_but_keeps_its_line(world: World) -> None:
    world.move("receive", "CL-1", 400, on=-10)
    world.sql("UPDATE item SET condition = 'damaged' WHERE tag = 'CL-1'")
    assert "CL-1" not in stocking.lots(world.crib)
    assert "CL-1" in [one.tag for one in stocking.consumables(world.crib)]


def test_the_shelf_life_is_the_longest_that_a_delivery_had(world: World) -> None:
    world.move("receive", "CL-1", 400, on=-50, lot="A", expires=30)
    world.move("receive", "CL-1", 400, on=-10, lot="B", expires=355)
    assert stocking.record(world.crib, day(0)).shelf_days == {"CL-1": 365}


def test_used_over_estimated_is_learned_from_closed_jobs_only(world: World) -> None:
    world.move("receive", "GL-1", 300, on=-90)
    for name, used, state in (("a", 12, "closed"), ("b", 8, "closed"), ("c", 100, "open")):
        world.job(name, "[]", {"GL-1": 8}, state)
        world.use("GL-1", used, on=-3, job=name)
    assert stocking.ratios(world.crib) == {"GL-1": stocking.Ratio(16, 20, 2)}


def test_a_job_that_took_an_item_and_used_nothing_counts_and_one_that_never_had_it_does_not(world: World) -> None:
    world.move("receive", "GL-1", 300, on=-90)
    for name in ("a", "b", "c"):
        world.job(name, "[]", {"GL-1": 8})
    world.use("GL-1", 8, on=-3, job="a")
    world.move("issue", "GL-1", 8, on=-3, job="b")
    world.move("return", "GL-1", 8, on=-3, job="b")
    assert stocking.ratios(world.crib) == {"GL-1": stocking.Ratio(16, 8, 2)}


def test_a_lost_or_scrapped_tool_is_to_be_replaced_until_one_came_or_it_was_found(world: World) -> None:
    assert worn(world) == ()
    world.move("scrap", "SK-8", 1, on=-9)
    world.move("issue", "SK-8", 1, on=-8)
    world.move("lost", "SK-8", 1, on=-7)
    (gone,) = worn(world)
    assert (gone.tag, gone.count, gone.why) == ("SK-8", 2, f"lost or scrapped, last on {day(-7).isoformat()}")
    world.move("receive", "SK-8", 1, on=-2)
    assert worn(world)[0].count == 1
    world.move("receive", "SK-8", 1, on=-1)
    assert worn(world) == ()


def test_a_damaged_or_missing_tool_is_to_be_replaced(world: World) -> None:
    world.tool("PL-1", "long nose pliers", condition="damaged")
    world.tool("TW-9", "torque wrench", condition="missing", kind="wrench")
    assert [(one.tag, one.kind, one.count, one.why) for one in worn(world)] == [
        ("PL-1", "tool", 1, "damaged"),
        ("TW-9", "wrench", 1, "missing"),
    ]


def test_today_is_not_needed_to_read(world: World) -> None:
    assert isinstance(TODAY, dt.date)
    assert stocking.suppliers(world.crib)["Marsh Lane (invented)"] == stocking.Supplier("Marsh Lane (invented)", 3, 40)
