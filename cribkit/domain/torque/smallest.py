"""The fewest choices that together do everything: exact set cover by search."""

from __future__ import annotations

from collections.abc import Hashable, Iterable, Mapping, Sequence
from typing import TypeVar

T = TypeVar("T", bound=Hashable)
N = TypeVar("N", bound=Hashable)


def smallest_set(wanted: Iterable[T], choices: Mapping[N, Iterable[T]]) -> tuple[N, ...]:
    """The smallest set of choices that covers all of `wanted` that any choice covers.

    Exact: branch and bound over bit masks, after dominated choices (subsets of another) and dominated wants (covered
    whenever a harder one is) are left out. Of choices that do the same the earlier is taken; the answer is in the
    order of the choices and the same for the same input.
    """
    bits = {want: 1 << at for at, want in enumerate(dict.fromkeys(wanted))}
    masks = {name: sum({bits[want] for want in covers if want in bits}) for name, covers in choices.items()}
    names = undominated(masks)
    sets = [masks[name] for name in names]
    goal = hardest(sets)
    best = search(sets, goal, [], greedy(sets, goal))
    return tuple(names[at] for at in sorted(best))


def undominated(masks: Mapping[N, int]) -> list[N]:
    """The choices that are no part of another; of two equal ones the earlier."""
    kept: list[N] = []
    for name, mask in masks.items():
        others = [masks[other] for other in kept]
        if mask == 0 or any(mask | other == other for other in others):
            continue
        kept = [other for other in kept if masks[other] | mask != mask]
        kept.append(name)
    return kept


def hardest(sets: Sequence[int]) -> int:
    """The wants that decide: one is left out where another is covered by some of the same sets only."""
    everything = 0
    for mask in sets:
        everything |= mask
    coverers = {bit: who(sets, bit) for bit in bits_of(everything)}
    goal = 0
    for bit, mine in coverers.items():
        easier = any(
            (mine | other == mine) and (mine != other or earlier < bit)
            for earlier, other in coverers.items()
            if earlier != bit
        )
        goal |= 0 if easier else bit
    return goal


def who(sets: Sequence[int], bit: int) -> int:
    """The sets that have this want, as a mask of their places."""
    return sum(1 << at for at, mask in enumerate(sets) if mask & bit)


def bits_of(mask: int) -> list[int]:
    """The single bits of a mask, lowest first."""
    found = []
    while mask:
        low = mask & -mask
        found.append(low)
        mask ^= low
    return found


def greedy(sets: Sequence[int], goal: int) -> list[int]:
    """A first answer, not always the smallest: the set that covers most of what is left."""
    chosen: list[int] = []
    while goal:
        at = max(range(len(sets)), key=lambda at: ((sets[at] & goal).bit_count(), -at))
        chosen.append(at)
        goal &= ~sets[at]
    return chosen


def search(sets: Sequence[int], left: int, chosen: list[int], best: list[int]) -> list[int]:
    """Depth first on the want with the fewest sets; cut off where even disjoint wants need too many."""
    if not left:
        return list(chosen) if len(chosen) < len(best) else best
    if len(chosen) + apart(sets, left) >= len(best):
        return best
    bit = min(bits_of(left), key=lambda bit: (who(sets, bit).bit_count(), bit))
    able = [at for at, mask in enumerate(sets) if mask & bit]
    for at in sorted(able, key=lambda at: (-(sets[at] & left).bit_count(), at)):
        best = search(sets, left & ~sets[at], [*chosen, at], best)
    return best


def apart(sets: Sequence[int], left: int) -> int:
    """A lower bound: wants of which no set covers two need a set each."""
    count = 0
    while left:
        bit = min(bits_of(left), key=lambda bit: (who(sets, bit).bit_count(), bit))
        count += 1
        for mask in sets:
            if mask & bit:
                left &= ~mask
    return count
