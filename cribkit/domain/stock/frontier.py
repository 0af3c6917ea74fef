"""Exact sharing where needs take several units at once, or can share a unit in more than one way.

For each owner: every holding of scarce tags that is worth having, with the calls that it serves (Pareto-optimal: no
holding takes no more and serves no fewer). Then owner after owner: for each amount left of the tags that later owners
still ask for, the best that can be served so far. What is pruned can never be part of a better sharing, until a limit
on the number of states is reached; then the answer is good, and said to be not proven.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import NamedTuple

MOST_CHOICES = 24  # of one call, the nearest to its first choice
MOST_HOLDINGS = 120  # of one owner
MOST_STATES = 4000  # between two owners; fewer where many owners have many holdings
MOST_WORK = 200_000  # steps from a state over a holding, in one group


class Holding(NamedTuple):
    """What an owner holds of scarce tags (sorted pairs), and which option serves each of its calls."""

    units: tuple[tuple[str, int], ...]
    served: int
    cost: int  # the sum of the options' indices: less is nearer to the first choices
    chosen: tuple[tuple[int, int], ...]  # (call, option)

    @property
    def worth(self) -> tuple[int, int]:
        """More calls served is better; then the nearer to first choices."""
        return self.served, -self.cost


NOTHING = Holding((), 0, 0, ())
Wanted = tuple[int, Sequence[tuple[int, Mapping[str, int]]]]  # a call, and its options' scarce parts


def holdings(calls: Iterable[Wanted]) -> tuple[tuple[Holding, ...], bool]:
    """The holdings of one owner that are worth having, and whether none was cut off."""
    found, whole = [NOTHING], True
    for call, options in calls:
        choices = [Holding(tuple(sorted(units.items())), 1, index, ((call, index),)) for index, units in options]
        choices, all_choices = undominated(choices, MOST_CHOICES)
        more_of = [merged(one, more) for one in found for more in choices]
        found, all_found = undominated([*found, *more_of], MOST_HOLDINGS)
        whole = whole and all_choices and all_found
        if not any(not one.units for one in found):
            found.append(NOTHING)  # an owner may always be left without
    return tuple(found), whole


def merged(one: Holding, more: Holding) -> Holding:
    """The owner's calls follow each other: it holds the most of each tag that any of them takes."""
    units = dict(one.units)
    for tag, count in more.units:
        units[tag] = max(count, units.get(tag, 0))
    return Holding(
        tuple(sorted(units.items())), one.served + more.served, one.cost + more.cost, one.chosen + more.chosen
    )


def undominated(found: Iterable[Holding], most: int) -> tuple[list[Holding], bool]:
    """Those for which no other takes no more and is worth no less, the worthiest first; whether all are there."""
    best: dict[tuple[tuple[str, int], ...], Holding] = {}
    for one in found:
        kept = best.get(one.units)
        if kept is None or one.worth > kept.worth:
            best[one.units] = one
    kept_all: list[Holding] = []
    for one in sorted(best.values(), key=lambda one: (-one.served, one.cost, len(one.units), one.units)):
        if not any(takes_no_more(other, one) for other in kept_all):
            if len(kept_all) == most:
                return kept_all, False
            kept_all.append(one)
    return kept_all, True


def takes_no_more(one: Holding, other: Holding) -> bool:
    """Whether the first holds at most what the second holds, of every tag."""
    if len(one.units) > len(other.units):
        return False
    has = dict(other.units)
    return all(count <= has.get(tag, 0) for tag, count in one.units)


class State(NamedTuple):
    """The best so far for what is left."""

    worth: tuple[int, int]
    chosen: tuple[Holding, ...]


def best_of_all(sides: Sequence[Sequence[Holding]], free: Mapping[str, int]) -> tuple[dict[int, int], bool]:
    """The option of each call that is served, over all owners, and whether it is proven to serve the most."""
    order = sorted(range(len(sides)), key=lambda at: len(sides[at]))
    later = tags_later([sides[at] for at in order])
    whole = True
    states = {left(free, {}, later[0]): State((0, 0), ())}
    room = max(20, min(MOST_STATES, MOST_WORK // max(1, sum(map(len, sides)))))
    for at, tags in zip(order, later[1:], strict=True):
        states = step(states, sides[at], tags)
        if len(states) > room:
            ranked = sorted(states.items(), key=lambda pair: (pair[1].worth, pair[0]), reverse=True)
            states, whole = dict(ranked[:room]), False
    best = max(states.values(), key=lambda state: state.worth)
    return {call: option for held in best.chosen for call, option in held.chosen}, whole


Left = tuple[tuple[str, int], ...]


def tags_later(sides: Sequence[Sequence[Holding]]) -> list[set[str]]:
    """Before each owner, and at the end, the tags that it and later owners may take."""
    found: list[set[str]] = [set()]
    for side in reversed(sides):
        found.append(found[-1] | {tag for one in side for tag, _ in one.units})
    return found[::-1]


def left(free: Mapping[str, int], taken: Mapping[str, int], tags: set[str]) -> Left:
    """What is left of the tags that still matter."""
    return tuple(sorted((tag, free[tag] - taken.get(tag, 0)) for tag in tags))


def step(states: Mapping[Left, State], side: Sequence[Holding], tags: set[str]) -> dict[Left, State]:
    """The states after one more owner."""
    after: dict[Left, State] = {}
    for before, state in states.items():
        free = dict(before)
        for held in side:
            if any(count > free[tag] for tag, count in held.units):
                continue
            key = left(free, dict(held.units), tags)
            worth = (state.worth[0] + held.served, state.worth[1] - held.cost)
            kept = after.get(key)
            if kept is None or worth > kept.worth:
                after[key] = State(worth, (*state.chosen, held))
    return after
