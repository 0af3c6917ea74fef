"""Whatever the crib holds, there is a list: it adds up, it fits its page, and it is the same each time."""

import json

from hypothesis import given, settings
from hypothesis import strategies as st

from cribkit.desk.orders import order
from cribkit.desk.restock import restock
from cribkit.domain.problem import BadInput
from cribkit.domain.stock.held import Policy
from cribkit.report.forms import as_csv, as_json, as_markdown
from cribkit.report.restock import answer, explained
from tests.restock.world import POSTING, TODAY, World

AMOUNT = st.one_of(st.integers(1, 2000), st.floats(0.001, 5000).map(lambda value: round(value, 3)))
MOVES = st.lists(
    st.tuples(
        st.sampled_from(["receive", "use", "count", "scrap", "lost"]),
        st.integers(0, 3),
        AMOUNT,
        st.integers(-900, 0),
        st.one_of(st.none(), st.integers(-400, 900)),
    ),
    max_size=40,
)
ITEM = st.fixed_dictionaries(
    {
        "unit": st.sampled_from(["each", "mL", "g", "mm"]),
        "pack": st.sampled_from([0.001, 1.0, 2.5, 100.0, 5000.0]),
        "minimum": st.one_of(st.none(), st.floats(0, 50)),
        "supplier": st.sampled_from([None, "Marsh Lane (invented)", "Saltings (invented)"]),
        "cost": st.one_of(st.none(), st.floats(0, 1000)),
    }
)


def filled(items: list[dict[str, object]], moves: list[tuple[str, int, float, int, int | None]]) -> World:
    """A crib with these items and movements; movements that the ledger refuses are left out."""
    world = World()
    world.supplier("Marsh Lane (invented)", 3, 500)
    world.supplier("Saltings (invented)", 0)
    for at, item in enumerate(items):
        world.consumable(f"C-{at}", f"invented consumable {at}, <b>|'", **item)  # type: ignore[arg-type] # as drawn
    for kind, at, amount, on, expires in sorted(moves, key=lambda move: move[3]):
        try:
            tag = f"C-{at % len(items)}"
            if kind in ("use", "lost"):
                world.move("issue", tag, amount, on)
            world.move(kind, tag, -amount if kind == "count" else amount, on, *([f"L{at}", expires] if expires else []))
        except BadInput:
            continue
    return world


@settings(max_examples=40)
@given(
    items=st.lists(ITEM, min_size=1, max_size=4),
    moves=MOVES,
    service=st.floats(0.5, 0.9999),
    review=st.integers(1, 60),
    width=st.integers(40, 120),
)
def test_every_crib_has_a_list(
    items: list[dict[str, object]],
    moves: list[tuple[str, int, float, int, int | None]],
    service: float,
    review: int,
    width: int,
) -> None:
    world = filled(items, moves)
    policy = Policy(TODAY, service, review)
    found = restock(world.crib, policy)
    said = answer(found, every=True)
    assert said.text
    assert max(map(len, said.text(width).splitlines())) <= max(width, 40)
    assert json.loads(as_json("restock", said.ok, said.result(), ()))
    assert as_csv(said.listing()) == as_csv(answer(restock(world.crib, policy)).listing())
    assert as_markdown(said.listing()).count("\n") == len(said.listing().rows) + 1
    for line in found.lines:
        assert 0 <= line.good <= line.on_hand + 1e-6
        assert line.waste >= 0
        assert line.packs >= 0
        text = explained(line).text
        assert text
        assert text(width)


@settings(max_examples=20)
@given(items=st.lists(ITEM, min_size=1, max_size=4), moves=MOVES)
def test_what_was_ordered_is_not_ordered_again(
    items: list[dict[str, object]], moves: list[tuple[str, int, float, int, int | None]]
) -> None:
    world = filled(items, moves)
    order(world.crib, restock(world.crib, Policy(TODAY)), POSTING)
    again = restock(world.crib, Policy(TODAY))
    # What is capped by shelf life or an own maximum may stay below its reorder point; nothing else does.
    assert all(line.held.shelf_days is not None for line in again.to_order)
