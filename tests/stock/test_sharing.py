"""Units are shared exactly: checked against scipy's mixed-integer solver and networkx' bipartite matching."""

from collections import Counter
from collections.abc import Mapping, Sequence

import networkx as nx
import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.optimize import Bounds, LinearConstraint, milp

from cribkit.domain.stock.sharing import Bundle, Call, Sharing, share


def one(*tags: str) -> tuple[Bundle, ...]:
    """Options that take one unit of one tag."""
    return tuple(((tag, 1),) for tag in tags)


CASES = {
    "one unit, one need": ([Call("p", one("A"))], {"A": 1}, (0,)),
    "nothing there": ([Call("p", one("A"))], {}, (None,)),
    "needs of one procedure follow each other": ([Call("p", one("A")), Call("p", one("A"))], {"A": 1}, (0, 0)),
    "procedures run side by side": ([Call("p", one("A")), Call("q", one("A"))], {"A": 1}, (0, None)),
    "the one that can take another gives way": (
        [Call("p", one("A", "B")), Call("q", one("A"))],
        {"A": 1, "B": 1},
        (1, 0),
    ),
    "count is at once": ([Call("p", ((("A", 2),),))], {"A": 1}, (None,)),
    "count from two tags": ([Call("p", ((("A", 2),), (("A", 1), ("B", 1))))], {"A": 1, "B": 1}, (1,)),
    "a bundle is all or nothing": (
        [Call("p", ((("W", 1), ("S", 1)),)), Call("q", one("S"))],
        {"W": 0, "S": 1},
        (None, 0),
    ),
    "one unit serves two needs of a procedure where two tags would starve another": (
        [Call("p", one("A", "B")), Call("p", one("B", "C")), Call("q", one("A")), Call("r", one("C"))],
        {"A": 1, "B": 1, "C": 1},
        (1, 0, 0, 0),
    ),
    "the best option where nobody competes": ([Call("p", one("B", "A"))], {"A": 1, "B": 1}, (0,)),
}


@pytest.mark.parametrize(("calls", "available", "chosen"), CASES.values(), ids=CASES)
def test_units_are_given_out(calls: list[Call], available: dict[str, int], chosen: tuple[int | None, ...]) -> None:
    assert share(calls, available) == Sharing(chosen)


def is_valid(calls: Sequence[Call], available: Mapping[str, int], sharing: Sharing) -> bool:
    """Nobody holds what is not there."""
    held: dict[tuple[str, str], int] = {}
    for call, index in zip(calls, sharing.chosen, strict=True):
        for tag, units in () if index is None else call.options[index]:
            held[call.owner, tag] = max(units, held.get((call.owner, tag), 0))
    total = Counter[str]()
    for (_, tag), units in held.items():
        total[tag] += units
    return all(units <= available.get(tag, 0) for tag, units in total.items())


def most_served(calls: Sequence[Call], available: Mapping[str, int]) -> int:
    """The largest number of calls that can be served, by scipy.optimize.milp.

    x[i, o] = 1 where option o serves call i; y[owner, tag] is what the owner holds; bundle <= y; sum of y <= available.
    """
    picks = [(i, o) for i, call in enumerate(calls) for o in range(len(call.options))]
    holds = sorted({(call.owner, tag) for call in calls for bundle in call.options for tag, _ in bundle})
    if not picks:
        return 0
    width = len(picks) + len(holds)
    rows, upper = [], []
    for i in range(len(calls)):
        rows.append([1.0 if pick[0] == i else 0.0 for pick in picks] + [0.0] * len(holds))
        upper.append(1.0)
    for column, (i, o) in enumerate(picks):
        for tag, units in calls[i].options[o]:
            row = [0.0] * width
            row[column] = units
            row[len(picks) + holds.index((calls[i].owner, tag))] = -1.0
            rows.append(row)
            upper.append(0.0)
    for tag in {tag for _, tag in holds}:
        rows.append([0.0] * len(picks) + [1.0 if hold[1] == tag else 0.0 for hold in holds])
        upper.append(available.get(tag, 0))
    result = milp(
        c=[-1.0] * len(picks) + [0.0] * len(holds),
        constraints=LinearConstraint(np.array(rows), -np.inf, upper),
        integrality=np.ones(width),
        bounds=Bounds(0, [1] * len(picks) + [max(available.values(), default=0)] * len(holds)),
    )
    return round(-result.fun)


TAGS = st.sampled_from("ABCDE")
BUNDLES = st.dictionaries(TAGS, st.integers(1, 2), min_size=1, max_size=2).map(lambda d: tuple(sorted(d.items())))
CALLS = st.lists(
    st.builds(Call, st.sampled_from("pqrs"), st.lists(BUNDLES, max_size=3, unique=True).map(tuple)), max_size=9
)
STOCK = st.dictionaries(TAGS, st.integers(0, 3))


@given(CALLS, STOCK)
def test_as_many_needs_are_served_as_an_integer_program_can(calls: list[Call], available: dict[str, int]) -> None:
    sharing = share(calls, available)
    assert is_valid(calls, available, sharing)
    assert sharing.proven
    assert sum(index is not None for index in sharing.chosen) == most_served(calls, available)


SINGLES = st.lists(st.lists(TAGS, unique=True, max_size=4), max_size=12)


@given(SINGLES, STOCK)
def test_single_units_of_many_procedures_agree_with_a_bipartite_matching(
    wants: list[list[str]], available: dict[str, int]
) -> None:
    calls = [Call(f"p{at}", one(*tags)) for at, tags in enumerate(wants)]
    graph = nx.Graph()
    needs = list(range(len(wants)))
    graph.add_nodes_from(needs, bipartite=0)
    for at, tags in enumerate(wants):
        graph.add_edges_from((at, (tag, unit)) for tag in tags for unit in range(available.get(tag, 0)))
    matching = nx.bipartite.hopcroft_karp_matching(graph, needs)
    sharing = share(calls, available)
    assert is_valid(calls, available, sharing)
    assert sum(index is not None for index in sharing.chosen) == sum(at in matching for at in needs)


@given(CALLS, STOCK, st.randoms(use_true_random=False))
def test_the_order_of_procedures_does_not_change_how_many_are_served(
    calls: list[Call], available: dict[str, int], random: object
) -> None:
    mixed = list(calls)
    random.shuffle(mixed)  # type: ignore[attr-defined]  # hypothesis' Random has no public type
    served = [sum(index is not None for index in share(order, available).chosen) for order in (calls, mixed)]
    assert served[0] == served[1]


def test_two_hundred_procedures_at_once_are_shared_without_a_search() -> None:
    calls = [Call(f"p{at}", one("A", "B")) for at in range(200)]
    sharing = share(calls, {"A": 3, "B": 4})
    assert sharing.proven
    assert sum(index is not None for index in sharing.chosen) == 7
