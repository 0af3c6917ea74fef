"""Lines by supplier, blocking shortages first, the supplier's minimum met."""

from dataclasses import replace

from cribkit.domain.stock.held import Held, Policy
from cribkit.domain.stock.purchase import grouped
from cribkit.domain.stock.reorder import Line, reorder
from cribkit.domain.stock.shelf import Planned
from tests.stock.build import TODAY, held, job, lot


def line(tag: str, supplier: str, per_day: float = 0.5, stock: float = 0, *jobs: Planned, **more: object) -> Line:
    item: Held = held(per_day, per_day, (lot(stock),), tag=tag, supplier=supplier, **more)
    return reorder(item, jobs, Policy(TODAY))


def test_a_supplier_with_a_blocking_shortage_comes_first_and_the_rest_by_name() -> None:
    lines = [line("C-1", "Alder"), line("C-2", "Birch", 0.5, 0, job(2, 3)), line("C-3", ""), line("C-4", "Cedar")]
    assert [group.supplier for group in grouped(lines, {})] == ["Birch", "", "Alder", "Cedar"]


def test_inside_a_supplier_the_first_job_then_the_first_to_run_out_come_first() -> None:
    lines = [
        line("C-1", "Alder", 0.1, 1),
        line("C-2", "Alder", 0.1, 0),
        line("C-3", "Alder", 0.1, 0, job(5, 3)),
        line("C-4", "Alder", 0.1, 0, job(2, 3)),
        line("C-5", "Alder", 0.0, 5),
    ]
    (group,) = grouped(lines, {})
    assert [one.held.tag for one in group.lines] == ["C-4", "C-3", "C-2", "C-1", "C-5"]


def test_an_order_below_the_minimum_is_filled_up_with_what_is_used_first() -> None:
    lines = [
        line("C-1", "Alder", cost=2.0),
        line("C-2", "Alder", 0.5, 30, cost=2.0),
        line("C-3", "Alder", 0, 9, cost=1.0),
    ]
    (bare,), (group,) = grouped(lines, {}), grouped(lines, {"Alder": 80.0})
    assert (bare.cost, group.cost) == (32.0, 80.0)
    packs = {one.held.tag: (one.packs, one.filled) for one in group.lines}
    assert packs == {"C-1": (35, 19), "C-2": (5, 5), "C-3": (0, 0)}
    assert group.note == "filled up from 32.00 to the minimum order of 80.00"


def test_nothing_is_added_beyond_an_own_maximum_or_the_shelf_life() -> None:
    lines = [line("C-1", "Alder", cost=2.0, maximum=10.0), line("C-2", "Alder", cost=2.0, shelf_days=20)]
    (group,) = grouped(lines, {"Alder": 500.0})
    assert [one.packs for one in group.lines] == [10, 13]
    assert group.note == "46.00 is below the minimum order of 500.00: wait, or add something"


def test_a_minimum_that_cannot_be_judged_is_said() -> None:
    (group,) = grouped([line("C-1", "Alder")], {"Alder": 50.0})
    assert group.note == "some prices are not known: check against the minimum order of 50.00"


def test_nothing_to_order_is_not_filled_up() -> None:
    stocked = replace(line("C-1", "Alder", 0.5, 50, cost=2.0))
    (group,) = grouped([stocked], {"Alder": 50.0})
    assert (group.cost, group.note) == (0, "")
