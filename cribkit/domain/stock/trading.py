"""A quick sharing by trading places, and an upper bound that can prove it best.

Calls are served one after the other; where an option lacks a tag, one owner that holds it may move all its calls that
use the tag to other options. No claim is made for the result alone: it is best when it serves every call, or as many as
the bound allows.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence

Options = Sequence[tuple[int, Mapping[str, int]]]  # the option's index and its scarce part

MOST_TRADES = 3000  # tried in one group


class Trading:
    """Who holds what, and which option serves which call."""

    def __init__(self, owners: Mapping[int, str], options: Mapping[int, Options], free: Mapping[str, int]) -> None:
        self.owners, self.options = owners, options
        self.free = dict(free)
        self.users: dict[tuple[str, str], dict[int, int]] = defaultdict(dict)  # (owner, tag) -> call -> units
        self.chosen: dict[int, int] = {}
        self.trades = 0

    def run(self) -> dict[int, int]:
        """The option of each call that is served."""
        waiting = [at for at in sorted(self.options, key=lambda at: (len(self.options[at]), at)) if not self.place(at)]
        for at in waiting:
            self.trade(at)
        return self.chosen

    def lacking(self, at: int, units: Mapping[str, int]) -> list[str]:
        """The tags of which not enough is free for this option."""
        owner = self.owners[at]
        return [tag for tag, count in units.items() if count - self.held(owner, tag) > self.free[tag]]

    def held(self, owner: str, tag: str) -> int:
        """What an owner holds of a tag: the most that one of its calls takes."""
        return max(self.users[owner, tag].values(), default=0)

    def place(self, at: int) -> bool:
        """Serve the call by the first option that needs nothing more, else by the first for which enough is free."""
        owner, fitting = self.owners[at], []
        for index, units in self.options[at]:
            more = sum(max(0, count - self.held(owner, tag)) for tag, count in units.items())
            if not more:
                self.take(at, index, units)
                return True
            if not self.lacking(at, units):
                fitting.append((more, index, units))
        if fitting:
            _, index, units = min(fitting, key=lambda one: one[:2])
            self.take(at, index, units)
        return bool(fitting)

    def take(self, at: int, index: int, units: Mapping[str, int]) -> None:
        """Serve a call by an option."""
        owner = self.owners[at]
        for tag, count in units.items():
            before = self.held(owner, tag)
            self.users[owner, tag][at] = count
            self.free[tag] -= self.held(owner, tag) - before
        self.chosen[at] = index

    def give_back(self, at: int) -> None:
        """Leave a call unserved again."""
        owner, index = self.owners[at], self.chosen.pop(at)
        for tag in dict(self.options[at])[index]:
            before = self.held(owner, tag)
            del self.users[owner, tag][at]
            self.free[tag] += before - self.held(owner, tag)

    def trade(self, at: int) -> bool:
        """Serve the call by moving the calls of another owner away from a tag that it lacks."""
        for index, units in self.options[at]:
            lacking = self.lacking(at, units)
            for other in self.holders(lacking, self.owners[at]) if len(lacking) == 1 else ():
                self.trades += 1
                if self.trades > MOST_TRADES:
                    return False
                if self.swap(at, index, units, list(self.users[other, lacking[0]])):
                    return True
        return False

    def holders(self, tags: Iterable[str], but: str) -> list[str]:
        """The owners that hold one of the tags."""
        return [owner for (owner, tag), users in list(self.users.items()) if tag in tags and users and owner != but]

    def swap(self, at: int, index: int, units: Mapping[str, int], movers: Sequence[int]) -> bool:
        """Take the option and serve the movers otherwise; all as before where that fails."""
        before = [(mover, self.chosen[mover]) for mover in movers]
        for mover in movers:
            self.give_back(mover)
        moved: list[int] = []
        if not self.lacking(at, units):
            self.take(at, index, units)
            moved = [mover for mover in movers if self.place(mover)]
            if len(moved) == len(movers):
                return True
            self.give_back(at)
        for mover in moved:
            self.give_back(mover)
        for mover, option in before:
            self.take(mover, option, dict(self.options[mover])[option])
        return False


def surely_lost(owners: Mapping[int, str], options: Mapping[int, Options], free: Mapping[str, int]) -> int:
    """How many calls no sharing can serve, as far as single tags prove it.

    A call loses its choice where every option takes a certain tag. The owners that cannot do without it are more than
    its units: those with the fewest such calls lose them. Each call is counted for one tag only.
    """
    must: dict[str, dict[str, list[int]]] = defaultdict(lambda: defaultdict(list))
    for at, mine in options.items():
        for tag in sorted(set.intersection(*(set(units) for _, units in mine))) if mine else ():
            must[tag][owners[at]].append(at)
    lost, counted = 0, set[int]()
    for tag, by_owner in sorted(must.items(), key=lambda pair: -sum(map(len, pair[1].values()))):
        sizes = sorted(len([at for at in ats if at not in counted]) for ats in by_owner.values())
        lost += sum(sizes[: max(0, len(sizes) - free[tag])])
        counted |= {at for ats in by_owner.values() for at in ats}
    return lost
