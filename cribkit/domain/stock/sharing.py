"""Who gets which unit: an exact sharing between needs, never first come, first served.

The needs of one owner (a procedure) follow each other, so a unit that one of them used is there for the next: an owner
holds of each tag the most that any one of its needs takes at once. Several owners work side by side, so what they
hold together must be there. A job is called short only when no sharing serves it.

The question is split into independent groups of needs that compete for the same scarce tags. Where each need of a group
takes one unit of one scarce tag, the group is a bipartite matching, solved by augmenting paths; the heaviest slots
first serves the most needs (the transversal matroid's greedy rule; Edmonds and Fulkerson 1965). Other groups are
shared by trading places (trading.py); where that does not serve all that a bound allows, by dynamic programming over
the owners (frontier.py).
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from typing import TYPE_CHECKING, NamedTuple

if TYPE_CHECKING:
    from cribkit.domain.stock.trading import Options


Bundle = tuple[tuple[str, int], ...]  # what one way to serve a need takes at once: (tag, units), tags distinct


class Call(NamedTuple):
    """One need's call on units: any one of its options serves it. Options stand best first."""

    owner: str
    options: tuple[Bundle, ...]


class Sharing(NamedTuple):
    """`chosen[i]` is the index of the option that serves call i, None where nothing is left for it."""

    chosen: tuple[int | None, ...]
    proven: bool = True  # False: the search was cut off; a better sharing may exist


def share(calls: Sequence[Call], available: Mapping[str, int]) -> Sharing:
    """The sharing that serves the most calls; an uncontested call gets its best option."""
    options = [feasible(call, available) for call in calls]
    scarce = scarce_tags(calls, options, available)
    chosen: list[int | None] = [None] * len(calls)
    proven = True
    for group in groups(options, scarce):
        if len(group) == 1 or not any(tag in scarce for at in group for index in options[at] for tag in index[1]):
            for at in group:
                chosen[at] = options[at][0][0] if options[at] else None
            continue
        picked, sure = solve(group, calls, options, scarce, available)
        proven = proven and sure
        for at, index in picked.items():
            chosen[at] = index
    return Sharing(tuple(chosen), proven)


Option = tuple[int, dict[str, int]]  # the index in the call's options, and its bundle


def feasible(call: Call, available: Mapping[str, int]) -> list[Option]:
    """The options that the crib could serve if nobody else asked."""
    return [
        (index, dict(bundle))
        for index, bundle in enumerate(call.options)
        if all(units <= available.get(tag, 0) for tag, units in bundle)
    ]


def scarce_tags(calls: Sequence[Call], options: list[list[Option]], available: Mapping[str, int]) -> set[str]:
    """The tags of which all owners together could ask for more than there is."""
    most: dict[str, dict[str, int]] = defaultdict(dict)
    for call, mine in zip(calls, options, strict=True):
        for _, bundle in mine:
            for tag, units in bundle.items():
                most[tag][call.owner] = max(units, most[tag].get(call.owner, 0))
    return {tag for tag, owners in most.items() if sum(owners.values()) > available[tag]}


def groups(options: list[list[Option]], scarce: set[str]) -> Iterator[list[int]]:
    """Calls that compete, directly or through others, for scarce tags."""
    parent = list(range(len(options)))

    def top(at: int) -> int:
        while parent[at] != at:
            parent[at] = parent[parent[at]]
            at = parent[at]
        return at

    first: dict[str, int] = {}
    for at, mine in enumerate(options):
        # A call whose best option touches nothing scarce takes it and competes with nobody.
        if mine and not scarce & mine[0][1].keys():
            continue
        for tag in {tag for _, bundle in mine for tag in bundle if tag in scarce}:
            parent[top(at)] = top(first.setdefault(tag, at))
    found: dict[int, list[int]] = defaultdict(list)
    for at in range(len(options)):
        found[top(at)].append(at)
    yield from found.values()


def solve(
    group: list[int],
    calls: Sequence[Call],
    options: list[list[Option]],
    scarce: set[str],
    available: Mapping[str, int],
) -> tuple[dict[int, int], bool]:
    """The options that serve the most calls of one group, and whether that is proven."""
    slots = matching_slots(group, calls, options, scarce)
    if slots is not None:
        return match(slots, available), True
    from cribkit.domain.stock.trading import Trading, surely_lost

    mine = {at: tuple((index, only(bundle, scarce)) for index, bundle in options[at]) for at in group if options[at]}
    owners = {at: calls[at].owner for at in mine}
    free = {tag: available[tag] for tag in scarce}
    traded = Trading(owners, mine, free).run()
    most = len(mine) - surely_lost(owners, mine, free)
    if len(traded) == most:
        return traded, True
    searched, proven = search(owners, mine, free)
    return max(searched, traded, key=len), proven or len(searched) == most


def search(
    owners: Mapping[int, str], options: Mapping[int, Options], free: Mapping[str, int]
) -> tuple[dict[int, int], bool]:
    """The best sharing by dynamic programming over the owners, and whether it is proven best."""
    from cribkit.domain.stock.frontier import best_of_all, holdings

    by_owner: dict[str, list[int]] = defaultdict(list)
    for at in options:
        by_owner[owners[at]].append(at)
    sides = [holdings([(at, options[at]) for at in ats]) for ats in by_owner.values()]
    chosen, proven = best_of_all([side for side, _ in sides], free)
    return chosen, proven and all(whole for _, whole in sides)


def only(bundle: Mapping[str, int], tags: set[str]) -> dict[str, int]:
    """The part of a bundle that is scarce."""
    return {tag: units for tag, units in bundle.items() if tag in tags}


class Slot(NamedTuple):
    """Calls of one owner that one and the same unit can serve in turn."""

    calls: tuple[int, ...]
    tags: tuple[str, ...]  # the scarce tags that serve it, best first
    indices: tuple[tuple[int, ...], ...]  # for each tag, the option's index in each call


def matching_slots(
    group: list[int], calls: Sequence[Call], options: list[list[Option]], scarce: set[str]
) -> list[Slot] | None:
    """The group as the one side of a bipartite matching; None where it is not one."""
    slots: dict[tuple[str, tuple[str, ...]], list[int]] = defaultdict(list)
    choices: dict[int, dict[str, int]] = {}
    for at in group:
        mine: dict[str, int] = {}
        for index, bundle in options[at]:
            taken = [(tag, units) for tag, units in bundle.items() if tag in scarce]
            if len(taken) != 1 or taken[0][1] != 1:
                return None
            mine.setdefault(taken[0][0], index)
        choices[at] = mine
        if mine:
            slots[calls[at].owner, tuple(sorted(mine))].append(at)
    seen: set[tuple[str, str]] = set()
    for owner, tags in slots:
        if any((owner, tag) in seen for tag in tags):
            return None  # two slots of one owner could share a unit: more than a matching
        seen.update((owner, tag) for tag in tags)
    return [
        Slot(
            tuple(ats), tuple(choices[ats[0]]), tuple(tuple(choices[at][tag] for at in ats) for tag in choices[ats[0]])
        )
        for ats in slots.values()
    ]


def match(slots: list[Slot], available: Mapping[str, int]) -> dict[int, int]:
    """Augmenting paths, the slots that serve most calls first."""
    holders: dict[str, list[int]] = defaultdict(list)

    def place(at: int, tried: set[str]) -> bool:
        for tag in slots[at].tags:
            if tag in tried:
                continue
            tried.add(tag)
            if len(holders[tag]) < available[tag]:
                holders[tag].append(at)
                return True
            for number, other in enumerate(holders[tag]):
                if place(other, tried):
                    holders[tag][number] = at
                    return True
        return False

    for at in sorted(range(len(slots)), key=lambda at: -len(slots[at].calls)):
        place(at, set())
    chosen: dict[int, int] = {}
    for tag, ats in holders.items():
        for at in ats:
            slot = slots[at]
            chosen |= dict(zip(slot.calls, slot.indices[slot.tags.index(tag)], strict=True))
    return chosen
