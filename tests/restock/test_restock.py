"""The list as a whole: history, plan, orders, worn tools, wrenches; and what a person reads."""

import json
from pathlib import Path

import pytest

from cribkit.desk.orders import order, overview
from cribkit.desk.restock import Ratio, Restock, line_of, restock
from cribkit.domain.problem import BadInput
from cribkit.domain.stock.held import Policy
from cribkit.domain.stock.leadtime import Lead
from cribkit.report.restock import answer, explained
from cribkit.store.posting import Entry
from cribkit.store.purchases import arrived
from tests.restock.shop import TODAY, Shop
from tests.restock.world import POSTING, World, day

POLICY = Policy(TODAY)


@pytest.fixture
def world() -> World:
    """Cotter pins used two a week for a year, gloves never used, an old lot, one supplier."""
    made = World()
    made.supplier("Marsh Lane (invented)", 3)
    made.consumable("CP-1", "cotter pin", supplier="Marsh Lane (invented)", cost=0.2)
    made.consumable("GL-1", "nitrile gloves", pack=100, minimum=1, maximum=3, supplier="Marsh Lane (invented)", cost=9)
    made.consumable("CL-1", "cleaner", "mL", 500)
    made.move("receive", "CP-1", 106, on=-364)
    made.move("receive", "GL-1", 50, on=-364)
    made.move("receive", "CL-1", 500, on=-364, lot="A", expires=-1)
    for week in range(52):
        made.use("CP-1", 2, on=-7 * week)
    return made


def listed(world: World) -> Restock:
    return restock(world.crib, POLICY)


def test_every_consumable_has_a_line_and_what_is_short_is_ordered(world: World) -> None:
    found = listed(world)
    assert sorted(line.held.tag for line in found.lines) == ["CL-1", "CP-1", "GL-1"]
    assert {line.held.tag: line.packs for line in found.to_order} == {"CP-1": 6, "GL-1": 2}
    assert not found.nothing_to_do


def test_a_steady_use_gives_a_steady_demand(world: World) -> None:
    """Two a week, ten days: 20/7; no variance, so Poisson."""
    line = line_of(listed(world), "cp-1")
    assert (line.good, line.demand.name) == (2, "Poisson")
    assert line.demand.mean == pytest.approx(20 / 7)


def test_minimum_and_maximum_are_of_containers(world: World) -> None:
    line = line_of(listed(world), "GL-1")
    assert (line.point, line.target, line.position, line.amount) == (100, 300, 50, 200)


def test_expired_stock_is_waste_and_not_stock(world: World) -> None:
    line = line_of(listed(world), "CL-1")
    assert (line.on_hand, line.good, line.waste) == (500, 0, 500)


def test_a_supplier_nobody_knows_has_an_assumed_lead_time_that_the_list_names(world: World) -> None:
    line = line_of(listed(world), "CL-1")
    assert line.held.lead == Lead(14, source="assumed")


def test_what_is_on_order_is_not_ordered_again(world: World) -> None:
    placed = order(world.crib, listed(world), POSTING)
    assert [(one.supplier, [line.tag for line in one.lines]) for one in placed] == [
        ("Marsh Lane (invented)", ["CP-1", "GL-1"])
    ]
    again = listed(world)
    assert again.nothing_to_do
    assert line_of(again, "GL-1").on_order == 200
    assert order(world.crib, again, POSTING) == ()


def test_a_late_order_is_named_until_it_has_come(world: World) -> None:
    (placed,) = order(world.crib, listed(world), POSTING)
    later = restock(world.crib, Policy(day(9)))
    assert [(one.id, one.overdue(day(9))) for one in later.late] == [(placed.id, 6)]
    assert "LATE by 6 d" in "\n".join(str(line) for line in overview_text(world, 9))
    for line in placed.lines:
        assert line.tag
        arrived(world.crib, placed.id, line.line, world.move("receive", line.tag, line.amount, on=9))
    assert restock(world.crib, Policy(day(9))).late == ()


def overview_text(world: World, days: int) -> list[str]:
    from cribkit.report.orders import overview as page

    text = page(overview(world.crib, day(days))).text
    assert text
    return text(80).splitlines()


def test_lead_times_are_learned_from_complete_orders(world: World) -> None:
    for took in (9, 10, 11):
        (placed,) = order(world.crib, listed(world), Entry("J. Sedge", day(0), "2026-11-30T08:00:00Z"))
        for line in placed.lines:
            assert line.tag
            arrived(world.crib, placed.id, line.line, world.move("receive", line.tag, line.amount, on=took))
            world.use(line.tag, line.amount, on=-400)
    lead = line_of(listed(world), "GL-1").held.lead
    assert lead == Lead(10, 1, "learned from 3 deliveries")


def test_worn_tools_are_purchase_lines_until_they_are_on_order_or_replaced(world: World) -> None:
    world.tool("SK-8", "8 mm socket", count=2)
    world.move("scrap", "SK-8", 1, on=-3)
    (tool,) = listed(world).tools
    assert (tool.tag, tool.count) == ("SK-8", 1)
    placed = order(world.crib, listed(world), POSTING)
    assert [(line.tag, line.packs, line.why) for line in placed[-1].lines] == [
        ("SK-8", 1, f"lost or scrapped, last on {day(-3).isoformat()}")
    ]
    assert listed(world).tools == ()
    arrived(world.crib, placed[-1].id, 1, world.move("receive", "SK-8", 1, on=1))
    assert listed(world).tools == ()


def test_an_unknown_tag_cannot_be_explained(world: World) -> None:
    with pytest.raises(BadInput, match="there is no consumable SK-8"):
        line_of(listed(world), "SK-8")


def test_an_empty_crib_has_nothing_to_order() -> None:
    found = answer(restock(World().crib, POLICY))
    assert found.ok
    assert found.text
    assert found.text(80).splitlines()[0] == "NOTHING TO ORDER"


def test_the_whole_page(world: World) -> None:
    found = answer(listed(world))
    assert found.text
    assert found.text(80) == PAGE


PAGE = """\
ORDER 2 of 3 consumables for 19.20
On 2026-11-30; service 0.95, review every 7 d.

Marsh Lane (invented): 19.20, 3 d
---------------------------------
CP-1     cotter pin                                                  6      1.20
         position 2 is below the reorder point 6; smooth use, Croston, Poisson
         good 2, usual use in 10 d 2.9, reorder point 6, target 8, runs out
         2026-12-08
GL-1     nitrile gloves                                        2 x 100     18.00
         position 50 is below the own min 100; nothing used on record
         good 50, reorder point 100, target 300

Waste
-----
CL-1     cleaner
         500 mL has expired: scrap it

1 other consumable with enough; --all shows them, --explain TAG the sums."""


@pytest.mark.parametrize("width", [60, 80, 100])
def test_no_line_is_wider_than_the_page(world: World, width: int) -> None:
    world.consumable("A-VERY-LONG-TAG-INDEED-01", "x" * 200, supplier="Marsh Lane (invented)", minimum=4, cost=12345.67)
    world.consumable("LONG-2", "an item with a long description of many words " * 4, minimum=4)
    found = listed(world)
    for text in (answer(found, every=True).text, explained(found.lines[0]).text):
        assert text
        assert max(map(len, text(width).splitlines())) <= width


def test_the_working_of_a_line_is_given_in_every_form(world: World) -> None:
    found = explained(line_of(listed(world), "CP-1"))
    result = json.loads(json.dumps(found.result(), default=str))
    assert result["line"]["reorder_point"] == 6
    assert {"what": "demand per day", "sums": "2 ÷ 7", "result": "0.285714 each"} in result["working"]
    assert found.listing().columns == ("what", "sums", "result")


def test_the_working_shows_what_closed_jobs_taught(world: World) -> None:
    line = line_of(listed(world), "CP-1")
    text = explained(line, Ratio(planned=20, used=30, jobs=3)).text
    few = explained(line, Ratio(planned=20, used=30, jobs=2)).text
    assert text
    assert few
    assert "used ÷ estimated, 3 closed jobs:       30 ÷ 20 = 1.5" in text(80)
    assert "used ÷ estimated, 2 closed jobs:       30 ÷ 20 = 1.5 (too few: 1)" in few(80)


def test_the_sheet_escapes_what_people_wrote(tmp_path: Path) -> None:
    world = World()
    world.consumable("X-1", "<script>alert(1)</script>", minimum=2)
    sheet = answer(restock(world.crib, POLICY)).sheet
    assert sheet
    assert "<script>" not in sheet()
    assert "&lt;script&gt;" in sheet()


def test_what_jobs_of_a_planned_procedure_used_is_not_counted_twice(tmp_path: Path) -> None:
    """The plan stands for its procedure until the next review; then what its past jobs used counts."""
    shop = Shop(tmp_path)
    done = '[["hub-nut", ""]]'
    shop.sql("INSERT INTO job (job, opened_at, day, by, procedures) VALUES ('j', '', '2026-11-01', 'x', ?)", done)
    shop.use("CP-1", 4, 20, job="j")
    shop.use("CP-1", 1, 30)
    free = json.loads(shop.run("restock", "--json", "--on", "2026-11-30").stdout)
    plan = json.loads(shop.run("restock", "--json", "--on", "2026-11-30", "--for", "hub-nut").stdout)
    # Lead time 3, review 7: 10 days of the one, and of the four only the 3 days after the plan.
    assert demand(plan, "CP-1") == pytest.approx(demand(free, "CP-1") * (10 * 1 + 3 * 4) / (10 * 5))


def demand(result: dict[str, dict[str, list[dict[str, list[dict[str, object]]]]]], tag: str) -> object:
    lines = [line for group in result["result"]["suppliers"] for line in group["lines"]]
    return next(line["demand"] for line in lines if line["tag"] == tag)


def test_the_sheet_says_what_the_page_says(tmp_path: Path) -> None:
    shop = Shop(tmp_path)
    day = ("--on", "2026-11-30")
    shop.run("order", *day, "--by", "J. Sedge", "--for", "hub-nut=8")
    words = ("restock", "--on", "2027-01-30", "--for", "hub-nut=40")
    page = " ".join(shop.run(*words).stdout.split())
    sheet = shop.run(*words, "--as", "html").stdout
    for title in ("Planned jobs that go short", "Late orders"):
        assert title in page
        assert title in sheet
    assert "Plan: hub-nut x40 by 2027-02-06" in sheet
    assert "reorder point" in sheet
