"""Amounts are shared exactly: checked against networkx' maximum flow."""

from collections.abc import Mapping, Sequence

import networkx as nx
import pytest
from hypothesis import given
from hypothesis import strategies as st

from cribkit.domain.stock.rationing import Draw, Ration, ration

CASES = {
    "enough": ([Draw(5, ("A",))], {"A": 8}, (Ration((("A", 5),), 0),)),
    "not stocked": ([Draw(5, ())], {}, (Ration((), 5),)),
    "some": ([Draw(5, ("A",))], {"A": 2}, (Ration((("A", 2),), 3),)),
    "from two items": ([Draw(5, ("A", "B"))], {"A": 2, "B": 9}, (Ration((("A", 2), ("B", 3)), 0),)),
    "the first gives way": (
        [Draw(5, ("A", "B")), Draw(5, ("A",))],
        {"A": 5, "B": 5},
        (Ration((("B", 5),), 0), Ration((("A", 5),), 0)),
    ),
    "a large call that cannot be served does not starve a small one": (
        [Draw(9, ("A",)), Draw(2, ("A",))],
        {"A": 5},
        (Ration((("A", 3),), 6), Ration((("A", 2),), 0)),
    ),
}


@pytest.mark.parametrize(("draws", "available", "rations"), CASES.values(), ids=CASES)
def test_amounts_are_given_out(draws: list[Draw], available: dict[str, float], rations: tuple[Ration, ...]) -> None:
    assert ration(draws, available) == rations


def all_can_be_served(draws: Sequence[Draw], available: Mapping[str, float]) -> bool:
    """By networkx.maximum_flow_value."""
    graph = nx.DiGraph()
    graph.add_nodes_from(["source", "sink"])
    for at, draw in enumerate(draws):
        graph.add_edge("source", at, capacity=draw.amount)
        graph.add_edges_from((at, tag) for tag in draw.tags)
    for tag, amount in available.items():
        graph.add_edge(tag, "sink", capacity=amount)
    return bool(nx.maximum_flow_value(graph, "source", "sink") >= sum(draw.amount for draw in draws))


TAGS = st.sampled_from("ABCD")
DRAWS = st.lists(st.builds(Draw, st.integers(1, 9), st.lists(TAGS, unique=True).map(tuple)), max_size=6)


@given(DRAWS, st.dictionaries(TAGS, st.integers(0, 15)))
def test_nobody_is_called_short_while_a_sharing_exists(draws: list[Draw], available: dict[str, float]) -> None:
    rations = ration(draws, available)
    for draw, got in zip(draws, rations, strict=True):
        assert sum(amount for _, amount in got.parts) + got.short == pytest.approx(draw.amount)
        assert {tag for tag, _ in got.parts} <= set(draw.tags)
    for tag, amount in available.items():
        assert sum(dict(got.parts).get(tag, 0) for got in rations) <= amount + 1e-9
    assert all(got.short == 0 for got in rations) == all_can_be_served(draws, available)
