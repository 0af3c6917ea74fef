"""The order of sending out, against a search through every possible order."""

import datetime as dt
import random
from itertools import product

from hypothesis import given
from hypothesis import strategies as st

from cribkit.domain.calibration.losses import Loss, Requirement, losses, uncovered
from cribkit.domain.calibration.sending import Gap, order

TODAY = dt.date(2026, 11, 25)
DAYS = 14


def day(ahead: int) -> dt.date:
    return TODAY + dt.timedelta(days=ahead)


def needs(*sets: str) -> tuple[Requirement, ...]:
    return tuple(Requirement(f"job-{at}", "bolts", frozenset(tags)) for at, tags in enumerate(sets))


def test_two_that_stand_in_for_each_other_go_one_after_the_other_the_earlier_due_first() -> None:
    plan = order(needs("AB"), "AB", {"A": day(20), "B": day(10)}, TODAY, DAYS)
    assert (plan.rounds, plan.gaps, plan.exact) == ((("B",), ("A",)), (), True)


def test_wrenches_without_a_common_torque_go_together() -> None:
    plan = order(needs("AX", "BX"), "AB", {"A": day(20), "B": day(10), "X": None}, TODAY, DAYS)
    assert plan.rounds == (("A", "B"),)


def test_one_that_has_run_out_goes_at_once_and_stands_in_when_it_is_back() -> None:
    plan = order(needs("AB"), "AB", {"A": day(60), "B": day(-3)}, TODAY, DAYS)
    assert (plan.rounds, plan.gaps) == ((("B",), ("A",)), ())


def test_a_torque_with_one_wrench_has_a_gap_and_the_others_have_none() -> None:
    plan = order(needs("A", "BC"), "ABC", {tag: day(60) for tag in "ABC"}, TODAY, DAYS)
    assert plan.gaps == (Gap(0, "job-0", "bolts"),) or plan.gaps == (Gap(1, "job-0", "bolts"),)
    assert len(plan.rounds) == 2


def test_a_day_too_early_is_a_gap() -> None:
    # B stands in for A in the first round only if it is good through day 13, the round's last day.
    assert order(needs("AB"), "AB", {"A": day(3), "B": day(13)}, TODAY, DAYS).gaps == ()
    assert order(needs("AB"), "AB", {"A": day(3), "B": day(12)}, TODAY, DAYS).gaps != ()


def every_order(wanted: tuple[Requirement, ...], going: str, until: dict[str, dt.date]) -> tuple[int, int]:
    """The fewest gaps, then the fewest rounds, over every way to put wrenches into rounds."""
    best = (10**9, 10**9)
    for slots in product(range(len(going)), repeat=len(going)):
        rounds = max(slots) + 1
        sent = dict(zip(going, slots, strict=True))
        lost = 0
        for at in range(rounds):
            last = day((at + 1) * DAYS - 1)
            here = {t for t, u in until.items() if u >= last and sent.get(t) != at}
            here |= {t for t, slot in sent.items() if slot < at}
            lost += sum(bool(r.wrenches & set(going)) and not r.wrenches & here for r in wanted)
        best = min(best, (lost, rounds))
    return best


@given(
    st.lists(st.frozensets(st.sampled_from("ABCDX"), min_size=1, max_size=4), min_size=1, max_size=6),
    st.integers(1, 4),
    st.lists(st.sampled_from([-1, 0, 12, 13, 14, 26, 27, 28, 41, 55, 60]), min_size=5, max_size=5),
)
def test_no_order_is_better(sets: list[frozenset[str]], count: int, ahead: list[int]) -> None:
    going = "ABCD"[:count]
    until = {tag: day(days) for tag, days in zip("ABCDX", ahead, strict=True)}
    wanted = tuple(Requirement(f"job-{at}", "bolts", tags) for at, tags in enumerate(sets))
    plan = order(wanted, going, until, TODAY, DAYS)
    assert plan.exact
    assert sorted(tag for tags in plan.rounds for tag in tags) == list(going)
    fewest_gaps, fewest_rounds = every_order(wanted, going, until)
    assert (len(plan.gaps), len(plan.rounds)) == (fewest_gaps, fewest_rounds)


def test_many_wrenches_that_share_torques_are_still_searched_exactly() -> None:
    tags = [f"W{at:02}" for at in range(16)]
    wanted = tuple(Requirement(f"job-{at}", "t", frozenset({tags[at], tags[at - 1]})) for at in range(16))
    plan = order(wanted, tags, {tag: day(200) for tag in tags}, TODAY, DAYS)
    assert (len(plan.rounds), plan.gaps, plan.exact) == (2, (), True)


def test_a_crib_too_large_to_search_gets_an_order_that_says_so() -> None:
    dice = random.Random(7)
    tags = [f"W{at:02}" for at in range(80)]
    wanted = tuple(Requirement(f"job-{at}", "t", frozenset(dice.sample(tags, dice.randint(2, 9)))) for at in range(300))
    plan = order(wanted, tags, {tag: day(400) for tag in tags}, TODAY, DAYS)
    assert not plan.exact
    assert sorted(tag for tags in plan.rounds for tag in tags) == tags
    assert (len(plan.gaps), len(plan.rounds) <= 4) == (0, True)


def test_a_procedure_loses_its_last_wrench_on_the_day_after_its_last_good_day() -> None:
    until = {"A": day(5), "B": day(9), "C": None}
    wanted = needs("A", "AB", "ABC", "Z")
    assert losses(wanted, until, TODAY, day(30)) == (
        Loss(day(6), "job-0", "bolts", ("A",)),
        Loss(day(10), "job-1", "bolts", ("B",)),
    )
    assert losses(wanted, until, TODAY, day(6)) == (Loss(day(6), "job-0", "bolts", ("A",)),)
    assert losses(wanted, until, TODAY, day(5)) == ()
    assert uncovered(wanted, until, TODAY) == (wanted[3],)
    assert uncovered(wanted, until, day(6)) == (wanted[0], wanted[3])
