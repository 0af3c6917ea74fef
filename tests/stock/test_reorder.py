"""What to order: position, reorder point, target, whole packs, own bounds, shelf life, blocking shortages."""

import math
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from cribkit.domain.stock.demand import Method, Pattern, Usual
from cribkit.domain.stock.explain import reason
from cribkit.domain.stock.forecast import Smoothed
from cribkit.domain.stock.held import Held, Policy
from cribkit.domain.stock.leadtime import Lead, lead_time
from cribkit.domain.stock.ordersize import economic_quantity
from cribkit.domain.stock.reorder import Line, reorder
from cribkit.domain.stock.shelf import Planned
from tests.stock.build import TODAY, coming, day, held, job, lot, steady

WEEKLY = Policy(TODAY, service=0.95, review_days=7)


def line(held_: Held, *planned: Planned, policy: Policy = WEEKLY) -> Line:
    return reorder(held_, planned, policy)


@pytest.mark.parametrize(
    ("order_cost", "holding", "per_year", "quantity"),
    [(8, 0.225, 1300, 304.0467800264), (2250, 275, 182_500, 1728.10984)],
)
def test_the_economic_quantity_of_a_textbook(
    order_cost: float, holding: float, per_year: float, quantity: float
) -> None:
    """Snyder and Shen, examples 3.1 and on (stockpyl 1.0.2, economic_order_quantity)."""
    assert economic_quantity(per_year, order_cost, holding) == pytest.approx(quantity, rel=1e-8)


def test_a_stock_at_the_reorder_point_orders_nothing_and_one_less_fills_up_to_the_target() -> None:
    """Poisson demand of 3 in lead time and review: 6 at 95 % (cumulative Poisson table)."""
    per_day = 3 / 14
    enough = line(held(per_day, per_day, (lot(6),)))
    short = line(held(per_day, per_day, (lot(5),)))
    assert (enough.point, enough.packs) == (6, 0)
    assert (short.point, short.target, short.packs) == (6, pytest.approx(7.5), 3)


def test_on_order_counts_and_what_jobs_reserve_does_not() -> None:
    found = line(held(0, 0, (lot(10),), on_order=(coming(4, 3),)), job(5, 6), job(9, 3))
    assert (found.good, found.on_order, found.reserved, found.position) == (10, 4, 9, 5)


def test_a_job_after_lead_time_and_review_time_is_left_for_a_later_list() -> None:
    found = line(held(), job(14, 2), job(15, 30))
    assert (found.reserved, [late.amount for late in found.later], found.packs) == (2, [30], 2)


def test_litres_of_an_item_stocked_by_the_can_are_ordered_in_whole_cans() -> None:
    """2.5 L short in cans of 500 mL with one can open: five cans."""
    found = line(held(unit="mL", pack=500.0, lots=(lot(200),), cost=6.5), job(3, 2700))
    assert (found.packs, found.amount, found.cost) == (5, 2500, 32.5)


def test_an_own_minimum_and_maximum_win_and_the_line_says_when_they_are_far_off() -> None:
    per_day = 3 / 14
    found = line(held(per_day, per_day, (lot(1),), minimum=2.0, maximum=30.0))
    assert (found.computed_point, found.point, found.target, found.packs) == (6, 2, 30, 29)
    assert len(found.notes) == 2
    assert "own min 2 is used; far below the computed reorder point 6" in found.notes
    near = line(held(per_day, per_day, (lot(1),), minimum=5.0, maximum=8.0))
    assert near.notes == ()


def test_a_minimum_above_the_maximum_is_named() -> None:
    found = line(held(1, 1, (lot(0),), minimum=9.0, maximum=4.0))
    assert (found.point, found.target) == (4, 4)
    assert "own min 9 is above own max 4" in found.notes[0]


def test_a_pack_larger_than_the_room_under_the_maximum_is_still_ordered_once_and_named() -> None:
    found = line(held(0, 0, (lot(3),), minimum=4.0, maximum=5.0, pack=12.0))
    assert (found.packs, found.notes[-1]) == (1, "one pack of 12 goes over the own max")


def test_a_pack_of_nothing_orders_nothing_and_says_so() -> None:
    found = line(held(1, 1, (), pack=0.0))
    assert found.packs == 0
    assert "the content of a pack is not known (0)" in found.notes[0]


def test_expired_stock_is_not_stock_and_what_expires_unused_is_waste() -> None:
    found = line(held(1, 1, (lot(5, -1), lot(20, 6), lot(8, 200))))
    assert (found.on_hand, found.good, found.waste) == (33, 6 + 8, 5 + 14)


def test_an_order_is_no_more_than_is_used_while_it_is_good() -> None:
    """One a day, lead time 7 days, good for 10: seventeen days' use less the 2 there, though the target is higher."""
    free = line(held(1, 1, (lot(2),), maximum=60.0))
    capped = line(held(1, 1, (lot(2),), maximum=60.0, shelf_days=10))
    assert (free.packs, capped.packs, capped.waste) == (58, 15, 0)
    assert capped.notes[-1] == "15 instead of 58 packs: more would expire before it is used"


def test_a_pack_that_cannot_be_used_up_in_time_is_ordered_once_with_its_waste_foreseen() -> None:
    found = line(held(0.1, 0.1, (), pack=10.0, shelf_days=23))
    assert (found.packs, found.waste) == (1, pytest.approx(10 - 0.1 * 30))


def test_shelf_life_caps_nothing_while_no_use_is_known_and_does_after_half_a_year_without_use() -> None:
    item = held(0, 0, (), minimum=4.0, maximum=20.0, shelf_days=100)
    assert line(item).packs == 20
    quiet = replace(item, usual=Usual(7, (0.0,) * 26, Pattern.NONE, Method.NONE, Smoothed(0, 0, 0), 0))
    assert (line(quiet).packs, line(quiet).waste) == (1, 1)


def test_a_planned_job_that_stock_does_not_cover_blocks() -> None:
    found = line(held(0, 0, (lot(5),), lead=4), job(3, 2), job(6, 4, "hub-bearing"))
    (block,) = found.blocks
    assert (block.job.job, block.short, block.order_arrives) == ("hub-bearing", 1, day(4))


def test_an_order_due_before_the_job_helps_and_an_overdue_or_later_one_does_not() -> None:
    for due, blocked in ((5, 0), (6, 0), (7, 1), (-2, 1), (None, 1)):
        found = line(held(0, 0, (), on_order=(coming(4, due),)), job(6, 4))
        assert len(found.blocks) == blocked, due
        assert found.packs == 0  # it is on order already: chase it, do not order twice


def test_a_lot_that_expires_before_the_job_does_not_cover_it() -> None:
    assert line(held(0, 0, (lot(4, 5),)), job(6, 4)).blocks[0].short == 4
    assert line(held(0, 0, (lot(4, 6),)), job(6, 4)).blocks == ()


def test_each_job_is_short_of_its_own_part_of_what_is_missing() -> None:
    found = line(held(0, 0, (lot(5),)), job(1, 4), job(2, 4), job(3, 4))
    assert [(block.job.on, block.short) for block in found.blocks] == [(day(2), 3), (day(3), 4)]


def test_an_uncertain_lead_time_raises_the_reorder_point() -> None:
    sure = line(held(2, 2, (), unit="mL"))
    unsure = line(replace(held(2, 2, (), unit="mL"), lead=Lead(7, 3)))
    assert sure.point == pytest.approx(28 + 1.6448536 * math.sqrt(28))
    assert unsure.point == pytest.approx(28 + 1.6448536 * math.sqrt(28 + 36))


def test_a_lead_time_is_learned_from_three_deliveries_on() -> None:
    assert lead_time(5, [9, 10]) == Lead(5)
    assert lead_time(5, [9, 10, 11]) == Lead(10, 1, "learned from 3 deliveries")
    assert lead_time(None, [9]) == Lead(14, 0, "assumed")


def test_an_order_cost_makes_orders_larger() -> None:
    """K 8, holding 0.225 a year each, 1300 a year: 304.05 (Snyder and Shen, example 3.1)."""
    policy = Policy(TODAY, order_cost=8, holding=0.225)
    found = line(held(1300 / 365, 0, (lot(0),), unit="mL", cost=1.0), policy=policy)
    assert found.target - found.point == pytest.approx(304.04678, abs=1e-4)


def test_nothing_known_orders_nothing() -> None:
    found = line(held())
    assert (found.packs, found.point, found.run_out, found.blocks, found.waste) == (0, 0, None, (), 0)


@given(
    per_day=st.floats(0, 5),
    ratio=st.floats(0.2, 6),
    stock=st.floats(0, 60),
    pack=st.sampled_from([1.0, 2.5, 12.0, 500.0]),
    unit=st.sampled_from(["each", "mL"]),
    need=st.floats(0, 40),
    lead=st.floats(0, 40),
)
def test_after_the_order_the_position_reaches_the_target_with_less_than_a_pack_to_spare(
    per_day: float, ratio: float, stock: float, pack: float, unit: str, need: float, lead: float
) -> None:
    found = line(held(per_day, per_day * ratio, (lot(stock),), lead=lead, unit=unit, pack=pack), job(0, need))
    after = found.position + found.amount
    if found.packs:
        assert found.position < found.point
        assert found.target - 1e-6 <= after < found.target + pack + 1e-6
    else:
        assert after >= found.point - 1e-6


@given(
    per_day=st.floats(0.05, 5),
    stock=st.floats(0, 60),
    low=st.floats(0.6, 0.9),
    high=st.floats(0.9, 0.999),
)
def test_a_higher_service_level_never_lowers_the_reorder_point(
    per_day: float, stock: float, low: float, high: float
) -> None:
    item = held(per_day, per_day * 2, (lot(stock),))
    points = [line(item, policy=Policy(TODAY, service=level)).point for level in (low, high)]
    assert points == sorted(points)


def test_a_plan_for_one_review_time_does_not_leave_the_lead_time_after_it_bare() -> None:
    """Two a week were used by the planned procedure. The plan has this week's two; the order that is placed today
    must also last through the seven days after it."""
    planned = (job(3, 2),)
    bare = reorder(held(lots=(lot(2),)), planned, WEEKLY)
    assert bare.packs == 0
    line = reorder(held(lots=(lot(2),), beside=steady(2 / 7, 2 / 7), plan_days=7), planned, WEEKLY)
    assert line.demand.mean == pytest.approx(2)
    # Poisson(2): P(X <= 5) = 0.983, P(X <= 4) = 0.947; and two more for one review time.
    assert (line.point, line.target, line.packs) == (5, 7, 7)
    assert line.run_out == day(8)
    assert (
        reason(line)
        == "position 0 is below the reorder point 5; smooth use by the planned procedures, Croston, Poisson"
    )


def test_what_a_plan_alone_says_of_use_foresees_no_waste() -> None:
    """One planned job says nothing of the years until the lot expires; with a record of its jobs it does."""
    lots = (lot(20, expires=700, number="L1"),)
    assert reorder(held(lots=lots), (job(3, 4),), WEEKLY).waste == 0
    known = reorder(held(lots=lots, beside=steady(0.01, 0.01), plan_days=7), (job(3, 4),), WEEKLY)
    assert known.waste == pytest.approx(20 - 4 - 0.01 * 693)


def test_an_own_maximum_is_compared_with_the_computed_target_not_with_that_of_the_own_minimum() -> None:
    line = reorder(held(0.1, 0.1, minimum=50.0, maximum=100.0), (), WEEKLY)
    assert line.notes[1].endswith(f"far above the computed target {line.computed_target:.3g}")
