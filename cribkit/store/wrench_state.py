"""What torque wrenches may be used for today: their rows, with their certificates and events folded in."""

from __future__ import annotations

import datetime as dt
from collections.abc import Mapping
from dataclasses import replace
from typing import TYPE_CHECKING

from cribkit.domain.calibration.certificate import Fitness
from cribkit.domain.calibration.due import Policy, Rules, Start, last_good_day
from cribkit.domain.calibration.state import Calibrated, State, state
from cribkit.domain.torque import Wrench
from cribkit.store.calibrations import NOTHING, Life, lives, rules

if TYPE_CHECKING:
    from cribkit.store.crib import Crib

CYCLES = "SELECT coalesce(sum(count * steps), 0) FROM job_torque WHERE wrench = ? AND day >= ?"
FIRST_USE = """
    SELECT min(day) FROM (
        SELECT day FROM movement WHERE tag = ?1 AND kind = 'issue' AND amount > 0 AND day >= ?2
        UNION ALL SELECT day FROM job_torque WHERE wrench = ?1 AND day >= ?2
    )
"""


def with_state(crib: Crib, wrenches: tuple[Wrench, ...]) -> tuple[Wrench, ...]:
    """The wrenches as they may be used: newest certificate, its limits, harm, storage, the shop's rules."""
    lived, shop = lives(crib), rules(crib)
    plain = (shop.policy, shop.start) == (Policy.SAME_DAY, Start.CALIBRATION)
    if plain and not lived:
        return wrenches
    by_tag = {tag.casefold(): found for tag, found in lived.items()}
    return tuple(one(crib, wrench, by_tag, shop) for wrench in wrenches)


def one(crib: Crib, wrench: Wrench, lived: Mapping[str, Life], shop: Rules) -> Wrench:
    """One wrench with its state."""
    now = state_of(wrench, lived.get(wrench.tag.casefold(), NOTHING))
    last = now.last
    if last is None:
        return replace(wrench, unfit_reason=now.unfit)
    cycles = crib.connection.execute(CYCLES, (wrench.tag, last.on.isoformat())).fetchone()[0]
    clocked = replace(
        wrench,
        calibrated_on=last.on,
        certificate=last.number,
        cycles=cycles,
        limited_nm=last.limited,
        unfit_reason=now.unfit,
        two_way_stated=wrench.two_way_stated if last.two_way else False,
    )
    return by_rules(clocked, shop, first_use(crib, wrench.tag, last.on) if shop.start is Start.FIRST_USE else None)


def state_of(wrench: Wrench, life: Life) -> State:
    """The state of one wrench. The date and certificate of its row count as a calibration that passed.

    A row may have come from an export that named a certificate which was withdrawn later: then it does not count.
    """
    withdrawn = {kept.certificate.number for kept in life.certificates if kept.withdrawn}
    withdrawn -= {kept.certificate.number for kept in life.in_force}
    first = () if wrench.certificate in withdrawn else loaded(wrench)
    return state([*first, *(kept.calibrated for kept in life.in_force)], life.events)


def loaded(wrench: Wrench) -> tuple[Calibrated, ...]:
    """The calibration that the wrench was loaded with, older than anything recorded on the same day."""
    if wrench.calibrated_on is None:
        return ()
    return (Calibrated(wrench.calibrated_on, 0, Fitness.READY, wrench.certificate),)


def by_rules(wrench: Wrench, shop: Rules, first: dt.date | None) -> Wrench:
    """The last good day under the shop's rules. Until its first use, a clock that starts there does not run."""
    if wrench.calibrated_on is None or wrench.interval_months <= 0:
        return wrench
    if shop.start is Start.FIRST_USE and first is None:
        return replace(wrench, interval_months=0)
    begins = wrench.calibrated_on if shop.start is Start.CALIBRATION else first
    assert begins is not None
    return replace(wrench, valid_until=last_good_day(begins, wrench.interval_months, shop.policy))


def first_use(crib: Crib, tag: str, since: dt.date) -> dt.date | None:
    """The first day that a wrench went out, or did a torque, from a day on."""
    found = crib.connection.execute(FIRST_USE, (tag, since.isoformat())).fetchone()[0]
    return dt.date.fromisoformat(found) if found else None
