"""Stock over time: first expired first out, waste, the day it runs out."""

import datetime as dt

import pytest
from hypothesis import given
from hypothesis import strategies as st

from cribkit.domain.stock.item import Lot
from cribkit.domain.stock.shelf import Outlook, Planned, fates, good_by, run_out
from tests.stock.build import TODAY, day, job, lot


def outlook(per_day: float, *planned: Planned) -> Outlook:
    return Outlook(TODAY, per_day, planned)


def test_the_lot_that_expires_first_is_used_first_and_is_good_through_its_day() -> None:
    found = fates((lot(9, None, "C"), lot(9, 6, "B"), lot(9, 3, "A")), outlook(2))
    assert [(fate.lot.lot, fate.used, fate.wasted) for fate in found] == [("A", 6, 3), ("B", 6, 3), ("C", 9, 0)]


def test_a_lot_that_is_good_beyond_the_day_asked_for_counts_whole() -> None:
    lots = (lot(50, 10),)
    assert (good_by(lots, outlook(1), day(10)), good_by(lots, outlook(1), day(11))) == (50, 10)


def test_a_planned_job_uses_a_lot_that_would_else_expire() -> None:
    lots = (lot(5, 4),)
    assert good_by(lots, outlook(0)) == 0
    assert good_by(lots, outlook(0, job(4, 3))) == 3
    assert good_by(lots, outlook(0, job(5, 3))) == 0


@pytest.mark.parametrize(
    ("lots", "per_day", "jobs", "expected"),
    [
        ((lot(10),), 2, (), 6),  # the tenth is used on day 5: day 6 finds nothing
        ((lot(10),), 0, (), None),
        ((), 1, (), 1),
        ((lot(10),), 0, (job(3, 10), job(9, 1)), 9),
        ((lot(10),), 1, (job(4, 6),), 5),
        ((lot(10),), 1, (job(4, 7),), 4),
        ((lot(10, 3), lot(5)), 2, (), 6),  # four of the first lot expire
        ((lot(1),), 1e-9, (), None),
        ((), 0, (job(-3, 1),), 0),  # a job of a day past is due now
    ],
)
def test_the_day_it_runs_out(
    lots: tuple[Lot, ...], per_day: float, jobs: tuple[Planned, ...], expected: int | None
) -> None:
    assert run_out(lots, outlook(per_day, *jobs)) == (None if expected is None else day(expected))


@given(
    lots=st.lists(st.tuples(st.integers(1, 30), st.one_of(st.none(), st.integers(-5, 60))), max_size=6),
    per_day=st.sampled_from([0.0, 0.5, 1.0, 3.0]),
    jobs=st.lists(st.tuples(st.integers(0, 50), st.integers(1, 20)), max_size=4),
)
def test_the_run_out_day_is_that_of_a_walk_day_by_day(
    lots: list[tuple[int, int | None]], per_day: float, jobs: list[tuple[int, int]]
) -> None:
    stock = [lot(amount, expires) for amount, expires in lots]
    plan = tuple(job(on, amount) for on, amount in jobs)
    found = run_out(stock, outlook(per_day, *plan))
    walked = walk(stock, per_day, plan, days=400)
    assert found == walked or (walked is None and found is not None and found > day(400))


def walk(stock: list[Lot], per_day: float, plan: tuple[Planned, ...], days: int) -> dt.date | None:
    """The first day on which somebody goes without."""
    left = [[one.expires_on or dt.date.max, one.amount] for one in stock]
    for at in range(days + 1):
        today = day(at)
        left = sorted([one for one in left if one[0] >= today], key=lambda one: one[0])
        wanted = (per_day if at else 0) + sum(one.amount for one in plan if one.on == today)
        for one in left:
            taken = min(one[1], wanted)
            one[1] -= taken
            wanted -= taken
        if wanted > 1e-9:
            return today
    return None
