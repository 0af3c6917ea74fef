"""What to buy: the smallest set that closes every gap, against brute force."""

from __future__ import annotations

import random
from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from cribkit.domain.problem import BadInput
from cribkit.domain.torque import Coverage, cover, parse_spec
from cribkit.domain.torque.gaps import advise, cause, closed_by
from cribkit.domain.torque.offers import offered
from cribkit.domain.torque.smallest import smallest_set
from tests.torque.makers import TODAY


def brute(wanted, choices):
    """The size of the smallest cover of what can be covered, by trying every set of choices."""
    goal = set(wanted) & set().union(*choices.values(), set())
    for size in range(len(choices) + 1):
        for some in combinations(choices.values(), size):
            if goal <= set().union(*some, set()):
                return size
    raise AssertionError("all choices together cover the goal")


CHOICES = st.dictionaries(st.integers(0, 9), st.frozensets(st.integers(0, 11), max_size=6), max_size=9)


@given(st.frozensets(st.integers(0, 11)), CHOICES)
def test_the_set_is_as_small_as_trying_every_set_finds(wanted, choices):
    found = smallest_set(sorted(wanted), choices)
    reachable = wanted & frozenset().union(*choices.values(), frozenset())
    assert reachable <= frozenset().union(*(choices[name] for name in found), frozenset())
    assert len(found) == brute(wanted, choices)


def test_it_is_exact_where_taking_the_most_useful_first_is_not():
    dice, worse = random.Random(6), 0
    for _ in range(120):
        choices = {name: frozenset(dice.sample(range(14), dice.randint(3, 5))) for name in range(10)}
        found = smallest_set(range(14), choices)
        assert len(found) == brute(range(14), choices)
        worse += len(greedily(choices)) > len(found)
    assert worse > 5, "the cases are hard enough to tell exact from greedy"


def greedily(choices):
    """The usual short cut: always the choice that adds most."""
    left, chosen = set().union(*choices.values()), []
    while left:
        chosen.append(max(choices, key=lambda name: len(choices[name] & left)))
        left -= choices[chosen[-1]]
    return chosen


def test_the_greedy_trap_is_avoided():
    # Textbook case: the largest set first leaves two more, where two alone do it.
    choices = {"large": {1, 2, 3, 4}, "top": {1, 2, 5}, "bottom": {3, 4, 6}}
    assert smallest_set(range(1, 7), choices) == ("top", "bottom")


def test_of_two_that_do_the_same_the_earlier_is_taken():
    assert smallest_set([1, 2], {"a": [1], "b": [1, 2], "c": [2, 1]}) == ("b",)
    assert smallest_set([], {"a": [1]}) == ()
    assert smallest_set([1, 9], {"a": [1]}) == ("a",)


def test_a_large_case_is_solved():
    rows = range(120)
    choices = {f"c{k}": [row for row in rows if (row * 7 + k * 11) % 40 < 9] for k in range(40)}
    found = smallest_set(rows, choices)
    assert {row for name in found for row in choices[name]} == {row for name in choices for row in choices[name]}


def test_advice_counts_the_jobs_that_each_purchase_opens():
    advice = advise(
        gaps=["a", "b", "c", "d"],
        choices={"low": ["a", "b"], "high": ["c"], "useless": ["z"]},
        jobs={"one": frozenset("a"), "two": frozenset("ab"), "three": frozenset("bc"), "ready": frozenset()},
    )
    assert [(one.name, one.opens) for one in advice.buy] == [("low", ("one", "two")), ("high", ())]
    assert [one.name for one in advice.single] == ["low", "high"]
    assert advice.left == ("d",)


def test_the_cause_is_that_of_the_wrench_nearest_to_covering():
    far = Coverage("T1", False, ("below-range",))
    late = Coverage("T2", False, ("overdue",))
    away = Coverage("T3", False, ("no-reach",))
    assert cause([far, away, late]) == ("overdue",)
    assert cause([far, away]) == ("no-reach",)
    assert cause([]) == ("absent",)
    assert closed_by({"gap": [far, late]}, frozenset({"overdue"})) == {"T2": ["gap"]}


def test_the_offers_are_wrenches_that_cover_ordinary_torques():
    tools = offered(TODAY)
    for text in ("0.5 N·m", "2 N·m", "89 in-lb", "24 N·m", "110 N·m", "130 ft-lb", "447 N·m", "900 N·m"):
        assert any(cover(tool, parse_spec(text), TODAY).covers for tool in tools), text
    assert len({tool.tag for tool in tools}) == len(tools)


@pytest.mark.parametrize(
    "change",
    [{"range": [5]}, {"range": [9, 5]}, {"unit": "J"}, {"mechanism": "magic"}, {"accuracy_pct": 0}, {"graduation": -1}],
    ids=str,
)
def test_an_offer_that_is_no_wrench_is_refused_with_its_place(change):
    row = {"name": "x", "mechanism": "click", "range": [5, 25], "unit": "N·m", "graduation": 1, "drive": "1/4"}
    assert offered(TODAY, [row])[0].full_scale_nm == 25
    with pytest.raises(BadInput):
        offered(TODAY, [row | change])
