"""What is missing: torques that no wrench covers, what to buy and what to calibrate."""

from __future__ import annotations

from collections.abc import Hashable, Iterable, Mapping, Sequence
from dataclasses import dataclass

from cribkit.domain.torque.cover import REASONS, Coverage
from cribkit.domain.torque.smallest import smallest_set

# Reasons that end when the wrench is calibrated, given back or mended, against those that need another wrench.
CALIBRATION = frozenset({"no-calibration", "overdue"})
STATE = CALIBRATION | {"out", "unfit"}
REACH = frozenset({"no-reach", "drive-too-small"})


@dataclass(frozen=True, slots=True)
class Purchase:
    """One choice and what it does: gaps closed, and jobs of which it closes every gap."""

    name: str
    closes: tuple[Hashable, ...]
    opens: tuple[str, ...]  # jobs that it opens by itself


@dataclass(frozen=True, slots=True)
class Advice:
    """The smallest set that closes every gap that can be closed, and each choice by what it opens."""

    buy: tuple[Purchase, ...]
    single: tuple[Purchase, ...]  # every choice that closes something, most jobs first
    left: tuple[Hashable, ...]  # gaps that nothing on offer closes


def cause(coverages: Iterable[Coverage]) -> tuple[str, ...]:
    """Why a torque is not covered: the reasons of the wrench that is nearest to covering it."""
    found = [one.reasons for one in coverages if not one.covers and one.reasons]
    return min(found, key=nearness, default=("absent",))


def nearness(reasons: Sequence[str]) -> tuple[int, int, tuple[int, ...]]:
    """How far a rejected wrench is from covering: its state, then the way to the fastener, then the wrench itself."""
    what = set(reasons)
    far = 0 if what <= STATE else 1 if what <= STATE | REACH else 2
    return far, len(what), tuple(REASONS.index(reason) for reason in reasons)


def advise(
    gaps: Iterable[Hashable],
    choices: Mapping[str, Iterable[Hashable]],
    jobs: Mapping[str, frozenset[Hashable]],
) -> Advice:
    """What to get. `choices` say which gaps each closes; `jobs` which gaps each job has (closed all: it opens)."""
    wanted = tuple(dict.fromkeys(gaps))
    closes = {name: frozenset(what) & frozenset(wanted) for name, what in choices.items()}
    reachable = frozenset().union(*closes.values()) if closes else frozenset()
    every = [purchase(name, what, wanted, jobs) for name, what in closes.items() if what]
    by_name = {one.name: one for one in every}
    return Advice(
        buy=tuple(by_name[name] for name in smallest_set(wanted, closes)),
        single=tuple(sorted(every, key=lambda one: (-len(one.opens), -len(one.closes)))),
        left=tuple(gap for gap in wanted if gap not in reachable),
    )


def purchase(
    name: str, what: frozenset[Hashable], wanted: Sequence[Hashable], jobs: Mapping[str, frozenset[Hashable]]
) -> Purchase:
    """What one choice does."""
    opens = tuple(job for job, missing in jobs.items() if missing and missing <= what)
    return Purchase(name, tuple(gap for gap in wanted if gap in what), opens)


def closed_by(coverages: Mapping[Hashable, Iterable[Coverage]], cured: frozenset[str]) -> dict[str, list[Hashable]]:
    """Tag -> gaps that the wrench would close once these reasons are gone ("overdue", "no-calibration")."""
    found: dict[str, list[Hashable]] = {}
    for gap, tools in coverages.items():
        for tool in tools:
            if not tool.covers and set(tool.reasons) <= cured:
                found.setdefault(tool.tag, []).append(gap)
    return found
