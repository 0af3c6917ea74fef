"""In which order to send wrenches out for calibration, so that every torque keeps a covering wrench.

Wrenches go out in rounds; a round lasts as long as the laboratory takes. A wrench is away for one round and good from
then on. One that has run out covers nothing until it is back, so it goes at once. Among the others the search is
exact: it finds the fewest rounds in which no torque is ever without a covering wrench, if there is such an order. Two
facts keep it small: waiting never helps (but for the first round, when those that had run out come back), and sending
more wrenches in a round that allows it never hurts, so only the largest sets that a round allows are tried. Where there
is no such order, the one with the fewest gaps is found. Beyond a fixed amount of work the search gives up: the order is
then made greedily, and says so.
"""

from __future__ import annotations

import datetime as dt
from collections import Counter
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from heapq import heappop, heappush

from cribkit.domain.calibration.losses import Requirement

MOST_WORK = 10_000_000  # comparisons of sets, about a second: what the search for an order without gaps may take
MOST_GAPPED = 9  # wrenches that share torques, for the search that allows gaps: 3 to this power is its work


@dataclass(frozen=True, slots=True)
class Gap:
    """A torque that has no covering wrench during a round (counted from 0)."""

    round: int
    procedure: str
    torque: str


@dataclass(frozen=True, slots=True)
class Sending:
    """The rounds, each with the tags that go; the gaps that remain; whether the search was exhaustive."""

    rounds: tuple[tuple[str, ...], ...]
    gaps: tuple[Gap, ...] = ()
    exact: bool = True


@dataclass(frozen=True, slots=True)
class Row:
    """What one torque needs, in bits: the wrenches to send that cover it while they are here and good."""

    mask: int
    always_until: dt.date  # another wrench, that stays, covers it so long
    from_second: bool  # a wrench that has run out covers it again when it is back from the first round
    count: int = 1  # how many torques are alike in all this


@dataclass(frozen=True, slots=True)
class Board:
    """One group of wrenches that share torques."""

    tags: tuple[str, ...]
    rows: tuple[Row, ...]
    until: tuple[dt.date, ...]
    today: dt.date
    days: int

    def end(self, at: int) -> dt.date:
        """The last day of a round."""
        return self.today + dt.timedelta(days=(at + 1) * self.days - 1)

    def alive(self, at: int) -> int:
        """The wrenches whose present calibration lasts through a round."""
        return sum(1 << bit for bit, day in enumerate(self.until) if day >= self.end(at))

    def may_wait(self, at: int) -> bool:
        """Whether sending none of them in a round can be of use."""
        return at == 0 and any(row.from_second for row in self.rows)

    def open_rows(self, at: int, done: int) -> list[tuple[int, int]]:
        """What must be hit by the wrenches that stay: for each torque in need, those that could cover it; how many."""
        left = self.alive(at) & ~done
        return [
            (row.mask & left, row.count)
            for row in self.rows
            if row.always_until < self.end(at) and not (at and row.from_second) and not row.mask & done
        ]


def order(
    requirements: Iterable[Requirement],
    send: Iterable[str],
    until: Mapping[str, dt.date | None],
    today: dt.date,
    days: int,
) -> Sending:
    """The order for the wrenches in `send`; `until` has the last good day of every wrench that can be used today.

    `days` is how long a wrench is away. A wrench that `until` does not name, or whose day is past, has run out.
    """
    wanted = tuple(requirements)
    going = sorted(set(send))
    good = {tag: day or dt.date.max for tag, day in until.items() if day is None or day >= today}
    spent = [tag for tag in going if tag not in good]
    rounds: list[list[str]] = [spent]
    exact = True
    for board in boards(wanted, [tag for tag in going if tag in good], good, frozenset(spent), today, days):
        picked, sure = solve(board)
        exact = exact and sure
        for at, bits in enumerate(picked):
            if at == len(rounds):
                rounds.append([])
            rounds[at] += names(board, bits)
    plan = tuple(tuple(sorted(tags)) for tags in rounds if tags)
    return Sending(plan, gaps(wanted, plan, good, today, days), exact)


def boards(
    wanted: tuple[Requirement, ...],
    going: list[str],
    good: Mapping[str, dt.date],
    spent: frozenset[str],
    today: dt.date,
    days: int,
) -> Iterator[Board]:
    """The wrenches in groups that have no torque in common: each group is searched by itself."""
    for group in groups(wanted, going):
        bit = {tag: 1 << at for at, tag in enumerate(group)}
        rows: Counter[tuple[int, dt.date, bool]] = Counter()
        for requirement in wanted:
            if not requirement.wrenches & set(group):
                continue
            stay = [good[tag] for tag in requirement.wrenches if tag in good and tag not in going]
            mask = sum(bit[tag] for tag in requirement.wrenches if tag in bit)
            rows[mask, max(stay, default=dt.date.min), bool(requirement.wrenches & spent)] += 1
        ordered = tuple(Row(*row, count) for row, count in sorted(rows.items()))
        yield Board(tuple(group), ordered, tuple(good[tag] for tag in group), today, days)


def groups(wanted: tuple[Requirement, ...], going: list[str]) -> list[list[str]]:
    """Tags joined by the torques that they share, each group in tag order."""
    group_of = {tag: {tag} for tag in going}
    for requirement in wanted:
        shared = [tag for tag in going if tag in requirement.wrenches]
        joined = set().union(*(group_of[tag] for tag in shared)) if shared else set()
        for tag in joined:
            group_of[tag] = joined
    unique = {id(group): group for group in group_of.values()}
    return sorted(sorted(group) for group in unique.values())


def names(board: Board, bits: int) -> list[str]:
    """The tags of some bits."""
    return [tag for at, tag in enumerate(board.tags) if bits >> at & 1]


class TooMuchWork(Exception):  # noqa: N818 - read as a sentence: "raise TooMuchWork"
    """The search takes too long."""


class Work:
    """Counts what a search does."""

    def __init__(self, most: int) -> None:
        self.left = most

    def spend(self, amount: int) -> None:
        """Count some work; raise TooMuchWork when none is left."""
        self.left -= amount
        if self.left < 0:
            raise TooMuchWork


def solve(board: Board) -> tuple[list[int], bool]:
    """The sets to send, round by round, and whether that is certainly the best."""
    try:
        perfect = without_gaps(board, Work(MOST_WORK))
    except TooMuchWork:
        return by_greed(board), False
    if perfect is not None:
        return perfect, True
    if len(board.tags) <= MOST_GAPPED:
        return with_gaps(board), True
    return by_greed(board), False


def by_greed(board: Board) -> list[int]:
    """In each round keep the wrenches that cover most, and send the others; if all are needed, send the first due."""
    everything, done = (1 << len(board.tags)) - 1, 0
    rounds: list[int] = []
    while done != everything:
        left = [mask for mask, _ in board.open_rows(len(rounds), done) if mask]
        kept = 0
        while left:
            best = max(range(len(board.tags)), key=lambda bit: sum(mask >> bit & 1 for mask in left))
            kept |= 1 << best
            left = [mask for mask in left if not mask & kept]
        sent = everything & ~done & ~kept
        if not sent and not board.may_wait(len(rounds)):
            sent = 1 << min((bit for bit in range(len(board.tags)) if not done >> bit & 1), key=board.until.__getitem__)
        rounds.append(sent)
        done |= sent
    return rounds


def without_gaps(board: Board, work: Work) -> list[int] | None:
    """Breadth first: the fewest rounds that leave no torque uncovered; None if there is no such order."""
    everything = (1 << len(board.tags)) - 1
    paths: dict[int, list[int]] = {0: []}
    for at in range(len(board.tags) + 1):
        following: dict[int, list[int]] = {}
        for done, path in sorted(paths.items()):
            for kept in smallest_kept({mask for mask, _ in board.open_rows(at, done)}, work):
                sent = everything & ~done & ~kept
                if sent | done == everything:
                    return [*path, sent]
                if sent or board.may_wait(at):
                    following.setdefault(done | sent, [*path, sent])
        paths = following
    return None


def smallest_kept(rows: set[int], work: Work) -> set[int]:
    """Every smallest set of wrenches that hits all rows; none if a row cannot be hit."""
    kept = {0}
    for row in sorted(rows):
        bits = [1 << at for at in range(row.bit_length()) if row >> at & 1]
        grown = {k for k in kept if k & row} | {k | bit for k in kept if not k & row for bit in bits}
        work.spend(len(grown) ** 2)
        kept = {k for k in grown if not any(other != k and other & k == other for other in grown)}
    return kept


def with_gaps(board: Board) -> list[int]:
    """Uniform cost: the fewest gaps (a torque in a round is one), then the fewest rounds, then a fixed order."""
    everything = (1 << len(board.tags)) - 1
    queue: list[tuple[int, int, tuple[int, ...], int]] = [(0, 0, (), 0)]
    seen: set[tuple[int, int]] = set()
    while queue:
        cost, at, path, done = heappop(queue)
        if done == everything:
            return list(path)
        if (at, done) in seen:
            continue
        seen.add((at, done))
        rows, left = board.open_rows(at, done), everything & ~done
        for sent in (*subsets(left), *([0] if board.may_wait(at) else [])):
            lost = sum(count for mask, count in rows if not mask & ~sent)
            heappush(queue, (cost + lost, at + 1, (*path, sent), done | sent))
    raise AssertionError("sending them one after the other always ends")


def subsets(bits: int) -> Iterator[int]:
    """Every set of the bits but the empty one."""
    subset = bits
    while subset:
        yield subset
        subset = (subset - 1) & bits


def gaps(
    wanted: tuple[Requirement, ...],
    plan: tuple[tuple[str, ...], ...],
    good: Mapping[str, dt.date],
    today: dt.date,
    days: int,
) -> tuple[Gap, ...]:
    """The torques without a covering wrench in a round, of those that the wrenches sent could cover."""
    going = {tag for tags in plan for tag in tags}
    back: set[str] = set()
    found = []
    for at, away in enumerate(plan):
        end = today + dt.timedelta(days=(at + 1) * days - 1)
        here = back | {tag for tag, day in good.items() if day >= end and tag not in away and tag not in back}
        found += [
            Gap(at, requirement.procedure, requirement.torque)
            for requirement in wanted
            if requirement.wrenches & going and not requirement.wrenches & here
        ]
        back |= set(away)
    return tuple(found)
