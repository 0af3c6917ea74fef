"""Who draws how much of which consumable: amounts, where sharing.py gives out units.

Calls are served one after the other along augmenting paths (Ford and Fulkerson 1956): a later call may move an
earlier one to another item that also serves it, never take from it. So if all calls can be served together, all are.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Mapping, Sequence
from typing import NamedTuple

SLACK = 1e-9  # relative to the amount asked for: floats are not exact


class Draw(NamedTuple):
    """How much a need asks for, and the tags that could give it, best first. Amounts in the items' common unit."""

    amount: float
    tags: tuple[str, ...]


class Ration(NamedTuple):
    """What one need gets from each tag, and what it still lacks."""

    parts: tuple[tuple[str, float], ...]
    short: float


def ration(draws: Sequence[Draw], available: Mapping[str, float]) -> tuple[Ration, ...]:
    """What each draw gets. A draw that cannot be served whole gets what is left when all others are served."""
    flow: list[dict[str, float]] = [{} for _ in draws]
    free = dict(available)
    partial: list[int] = []
    for at, draw in enumerate(draws):
        kept = [dict(given) for given in flow], dict(free)
        if fill(at, draws, flow, free) > SLACK * max(1.0, draw.amount):
            flow, free = kept
            partial.append(at)
    for at in partial:
        fill(at, draws, flow, free)
    return tuple(
        Ration(
            tuple((tag, given[tag]) for tag in draw.tags if given.get(tag, 0.0) > 0.0),
            lacking(draw.amount, sum(given.values())),
        )
        for draw, given in zip(draws, flow, strict=True)
    )


def lacking(amount: float, given: float) -> float:
    """What is missing, with float dust taken as nothing."""
    return 0.0 if given >= amount * (1 - SLACK) else amount - given


def fill(at: int, draws: Sequence[Draw], flow: list[dict[str, float]], free: dict[str, float]) -> float:
    """Give call `at` as much as paths allow; returns what is still missing."""
    missing = draws[at].amount - sum(flow[at].values())
    while missing > SLACK * max(1.0, draws[at].amount):
        path = find_path(at, draws, flow, free)
        if path is None:
            break
        # Along the path, each call draws more of its tag, and all but the first give up the tag before it.
        amount = min(missing, free[path[-1][1]], *(flow[call][path[n][1]] for n, (call, _) in enumerate(path[1:])))
        for n, (call, tag) in enumerate(path):
            flow[call][tag] = flow[call].get(tag, 0.0) + amount
            if n:
                flow[call][path[n - 1][1]] -= amount
        free[path[-1][1]] -= amount
        missing -= amount
    return missing


def find_path(
    start: int, draws: Sequence[Draw], flow: list[dict[str, float]], free: Mapping[str, float]
) -> list[tuple[int, str]] | None:
    """The shortest chain of (call, tag it draws more of) that ends at a tag with something free."""
    came: dict[str, tuple[int, str | None]] = {}
    line: deque[tuple[int, str | None]] = deque([(start, None)])
    while line:
        call, through = line.popleft()
        for tag in draws[call].tags:
            if tag in came:
                continue
            came[tag] = (call, through)
            if free.get(tag, 0.0) > SLACK:
                return trace(tag, came)
            line.extend((other, tag) for other, given in enumerate(flow) if given.get(tag, 0.0) > SLACK)
    return None


def trace(tag: str, came: Mapping[str, tuple[int, str | None]]) -> list[tuple[int, str]]:
    """The chain that led to this tag, from its start."""
    path: list[tuple[int, str]] = []
    here: str | None = tag
    while here is not None:
        call, before = came[here]
        path.append((call, here))
        here = before
    return path[::-1]
