"""What the crib lacks: torques that no wrench covers, what to buy for them, and which single step opens most jobs."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path

from cribkit.desk.candidates import Finder
from cribkit.desk.reaching import Reacher
from cribkit.desk.torque_needs import TorquePlan, plan_torque
from cribkit.domain.problem import BadInput
from cribkit.domain.procedure import Procedure
from cribkit.domain.procedure.model import LEFT_HAND
from cribkit.domain.torque import Coverage, Guard, Offset, Wanted, Wrench, cover
from cribkit.domain.torque.gaps import CALIBRATION, STATE, Advice, Purchase, advise, cause, closed_by, nearness
from cribkit.domain.torque.offers import offered
from cribkit.store.crib import Crib

Key = tuple[str, str, int]  # procedure, torque id, which of its torques


@dataclass(frozen=True, slots=True)
class Gap:
    """A torque that no wrench covers by any way on that day."""

    key: Key
    plan: TorquePlan
    wanted: Wanted
    coverages: tuple[Coverage, ...]  # of every wrench; those that only their state keeps back were asked for a way too
    cause: tuple[str, ...]  # the reasons of the wrench nearest to covering it
    nearest: str  # its tag, "" without any wrench
    why: str

    @property
    def procedure(self) -> str:
        """The procedure's id."""
        return self.key[0]


@dataclass(frozen=True, slots=True)
class Gaps:
    """The answer of `wrench gaps`."""

    on: dt.date
    procedures: tuple[Procedure, ...]
    torques: int  # how many were looked at
    gaps: tuple[Gap, ...]
    buy: Advice  # wrenches on offer
    calibrate: tuple[Purchase, ...]  # wrenches whose calibration alone is in the way, most jobs first

    @property
    def causes(self) -> tuple[tuple[tuple[str, ...], tuple[Gap, ...]], ...]:
        """The gaps by cause, the most frequent first."""
        found: dict[tuple[str, ...], list[Gap]] = {}
        for gap in self.gaps:
            found.setdefault(gap.cause, []).append(gap)
        return tuple(
            sorted(((why, tuple(some)) for why, some in found.items()), key=lambda one: (-len(one[1]), one[0]))
        )


def find_gaps(
    crib: Crib,
    procedures: Sequence[Procedure],
    on: dt.date,
    offers: Sequence[Wrench] | None = None,
    guard: Guard | None = None,
) -> Gaps:
    """Every torque of the procedures against every wrench, and what closes the gaps."""
    reacher, wrenches = Reacher(Finder(crib)), crib.wrenches()
    plans = [plan_torque(reacher, wrenches, one.id, need, on, guard) for one in procedures for need in one.torques]
    drives = {wrench.tag: wrench.drive for wrench in wrenches}
    gaps = tuple(gap for plan in plans for gap in gaps_of(reacher, plan, drives))
    choices = {
        offer.tag: closed(reacher, offer, gaps, on, guard) for offer in (offered(on) if offers is None else offers)
    }
    jobs = {one.id: frozenset(gap.key for gap in gaps if gap.procedure == one.id) for one in procedures}
    keys = [gap.key for gap in gaps]
    late = closed_by({gap.key: gap.coverages for gap in gaps}, CALIBRATION)
    return Gaps(
        on=on,
        procedures=tuple(procedures),
        torques=sum(len(plan.spec.torques) for plan in plans),
        gaps=gaps,
        buy=advise(keys, choices, jobs),
        calibrate=advise(keys, late, jobs).single,
    )


def gaps_of(reacher: Reacher, plan: TorquePlan, drives: Mapping[str, str]) -> Iterable[Gap]:
    """The torques of one need that nothing covers."""
    for at, wanted in enumerate(plan.spec.torques):
        if any(coverage.covers for coverage in plan.coverages[at]):
            continue
        found = tuple(with_reach(reacher, plan, one, drives[one.tag], wanted) for one in plan.coverages[at])
        nearest = min(found, key=lambda one: (nearness(one.reasons), one.tag), default=None)
        yield Gap(
            key=(plan.procedure, plan.need.id, at),
            plan=plan,
            wanted=wanted,
            coverages=found,
            cause=cause(found),
            nearest=nearest.tag if nearest else "",
            why="; ".join(nearest.why) if nearest else "no torque wrench is in the crib",
        )


def with_reach(reacher: Reacher, plan: TorquePlan, found: Coverage, drive: str, wanted: Wanted) -> Coverage:
    """A wrench that only its state keeps back is asked for a way too: calibrating it must be worth it."""
    if found.covers or not set(found.reasons) <= STATE or not plan.kit.asked:
        return found
    ways = reacher.ways(plan.need, drive, wanted.most_nm)
    if ways.ways:
        return found
    return found._replace(reasons=(*found.reasons, *ways.reasons), why=(*found.why, *ways.why))


def closed(reacher: Reacher, offer: Wrench, gaps: Iterable[Gap], on: dt.date, guard: Guard | None) -> tuple[Key, ...]:
    """The gaps that a wrench on offer would close."""
    return tuple(gap.key for gap in gaps if closes(reacher, offer, gap, on, guard))


def closes(reacher: Reacher, offer: Wrench, gap: Gap, on: dt.date, guard: Guard | None) -> bool:
    """Whether it covers the torque and reaches the fastener over parts on hand."""
    need = gap.plan.need
    offset = Offset(need.reach.offset_mm, need.reach.angle_deg) if need.reach and need.reach.offset_mm else None
    if not cover(offer, gap.wanted, on, offset, guard, need.direction == LEFT_HAND).covers:
        return False
    return not gap.plan.kit.asked or bool(reacher.ways(need, offer.drive, gap.wanted.most_nm).ways)


def read_offers(path: Path, on: dt.date) -> tuple[Wrench, ...]:
    """A shop's own table of offers, in the form of the package's offers.toml."""
    import tomllib

    try:
        with path.open("rb") as file:
            rows = tomllib.load(file).get("offer")
    except (OSError, UnicodeDecodeError, tomllib.TOMLDecodeError) as error:
        todo = "write [[offer]] tables with name, mechanism, range, unit, graduation and drive."
        raise BadInput.of("bad-offers", f"the offers cannot be read: {error}", todo, str(path)) from None
    if not isinstance(rows, list) or not rows or not all(isinstance(row, dict) for row in rows):
        raise BadInput.of("bad-offers", "the file has no [[offer]] table", "write one for each wrench.", str(path))
    return offered(on, rows, str(path))
