"""The ways to do one torque need: wrenches for its torques, each with its way to the fastener, best first."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import product
from typing import NamedTuple

from cribkit.domain.stock.sharing import Bundle
from cribkit.domain.torque import Coverage
from cribkit.domain.torque.reach import Role, Way

Reached = list[tuple[Coverage, Way | None]]


class Option(NamedTuple):
    """One way to do a torque need: for each different torque of its spec a wrench and its way to the fastener."""

    reached: tuple[tuple[Coverage, Way | None], ...]  # in the order of Spec.torques; the last is the main one

    @property
    def coverages(self) -> tuple[Coverage, ...]:
        """The wrench of each torque."""
        return tuple(coverage for coverage, _ in self.reached)

    @property
    def ways(self) -> tuple[tuple[str, Way], ...]:
        """Each wrench with its way, the main one's first."""
        return tuple(dict.fromkeys((coverage.tag, way) for coverage, way in reversed(self.reached) if way))

    @property
    def bundle(self) -> Bundle:
        """Everything that it takes at once."""
        tags = {coverage.tag for coverage in self.coverages}
        return tuple((tag, 1) for tag in sorted(tags.union(*(way.tags for _, way in self.ways))))

    @property
    def effort(self) -> tuple[int, int]:
        """How many adapters and how many wrenches it takes."""
        adapters = {tag for _, way in self.ways for tag, role in way.parts if role == Role.ADAPTER}
        return len(adapters), len({coverage.tag for coverage in self.coverages})


def combine(reached: Sequence[Reached]) -> Iterator[Option]:
    """Options best first: the main torque's wrench and way; for the other torques the same where they cover."""
    *others, main = reached
    for chosen in main:
        for rest in product(*(beside(chosen, pairs) for pairs in others)):
            yield Option((*rest, chosen))


def beside(chosen: tuple[Coverage, Way | None], pairs: Reached) -> Reached:
    """The wrenches and ways of another torque in the order of how little they add to the main torque's."""
    coverage, way = chosen
    mine = {coverage.tag, *(way.tags if way else ())}
    same_way = [pair for pair in pairs if pair[0].tag == coverage.tag and pair[1] == way]
    if same_way:
        return same_way + [pair for pair in pairs if pair[0].tag != coverage.tag]
    return sorted(pairs, key=lambda pair: len({pair[0].tag, *(pair[1].tags if pair[1] else ())} - mine))
