"""What falls due, which procedures that closes, and in which order to send wrenches out."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from cribkit.desk.candidates import Finder
from cribkit.desk.reaching import Reacher
from cribkit.desk.torque_needs import plan_torque
from cribkit.domain.calibration.due import Due, Rules, Standing, Terms, Use, due
from cribkit.domain.calibration.losses import Loss, Requirement, losses, uncovered
from cribkit.domain.calibration.sending import Sending, order
from cribkit.domain.procedure import Procedure
from cribkit.domain.torque import Wrench
from cribkit.store.calibrations import life, rules
from cribkit.store.crib import Crib
from cribkit.store.wrench_state import first_use, state_of


@dataclass(frozen=True, slots=True)
class DueLine:
    """One wrench and its due date. `until` is the last good day; None: no clock runs, or no calibration."""

    wrench: Wrench
    standing: Standing
    due: Due | None
    stored: bool
    unfit: str  # why it must not be used now, calendar and cycles apart

    @property
    def until(self) -> dt.date | None:
        """The last good day, by the calendar or by the forecast of its cycles."""
        return self.due.until if self.due else None

    @property
    def calls(self) -> bool:
        """Whether it asks for a calibration: soon or past due, never calibrated, or harmed. A stored one does not."""
        if self.stored or self.wrench.condition != "ok":
            return False
        return bool(self.unfit) or self.standing is not Standing.GOOD


@dataclass(frozen=True, slots=True)
class DueList:
    """The answer to "what falls due?"."""

    today: dt.date
    within: int
    rules: Rules
    lines: tuple[DueLine, ...]  # those that ask for a calibration, the most urgent first
    stored: tuple[DueLine, ...]
    uncovered: tuple[Requirement, ...]  # torques that no wrench can do today
    losses: tuple[Loss, ...]
    sending: Sending
    procedures: int  # how many were looked at


def due_list(crib: Crib, procedures: Sequence[Procedure], today: dt.date, within: int) -> DueList:
    """Wrenches that are overdue or fall due within so many days, and what that means for the procedures."""
    shop = rules(crib)
    wrenches = crib.wrenches()
    lines = [due_line(crib, wrench, shop, today, within) for wrench in wrenches]
    calling = sorted((line for line in lines if line.calls), key=urgency)
    wanted = requirements(crib, procedures, wrenches, today)
    until = {line.wrench.tag: line.until for line in lines if usable(line)}
    return DueList(
        today=today,
        within=within,
        rules=shop,
        lines=tuple(calling),
        stored=tuple(line for line in lines if line.stored),
        uncovered=uncovered(wanted, until, today),
        losses=losses(wanted, until, today, today + dt.timedelta(days=within + 1)),
        sending=order(wanted, [line.wrench.tag for line in calling], until, today, shop.days_away),
        procedures=len(procedures),
    )


def urgency(line: DueLine) -> tuple[bool, dt.date, str]:
    """What cannot be used comes first, then the earliest end."""
    return usable(line), line.until or dt.date.min, line.wrench.tag


def usable(line: DueLine) -> bool:
    """Whether it can be used today, in the crib or out on loan."""
    return not line.unfit and line.wrench.condition == "ok" and line.standing in (Standing.GOOD, Standing.SOON)


def due_line(crib: Crib, wrench: Wrench, shop: Rules, today: dt.date, within: int) -> DueLine:
    """One wrench against its clocks."""
    stored = state_of(wrench, life(crib, wrench.tag)).stored
    if wrench.calibrated_on is None or wrench.calibrated_on > today:
        return DueLine(wrench, Standing.NEVER, None, stored, wrench.unfit_reason)
    months = wrench.interval_months or stored_months(crib, wrench.tag)
    terms = Terms(months or None, wrench.interval_cycles or None, shop.policy, shop.start)
    used = Use(first_use(crib, wrench.tag, wrench.calibrated_on), wrench.cycles)
    found = due(wrench.calibrated_on, terms, used, today)
    return DueLine(wrench, found.standing(today, within), found, stored, wrench.unfit_reason)


def stored_months(crib: Crib, tag: str) -> int:
    """The interval in the wrench's row: a clock that has not started yet shows none."""
    return int(crib.connection.execute("SELECT interval_months FROM wrench WHERE tag = ?", (tag,)).fetchone()[0])


def requirements(
    crib: Crib, procedures: Iterable[Procedure], wrenches: Sequence[Wrench], today: dt.date
) -> tuple[Requirement, ...]:
    """Every torque of the procedures with the wrenches that would do it, were they all here and in calibration."""
    fresh = [freshened(wrench, today) for wrench in wrenches if wrench.condition == "ok"]
    reacher = Reacher(Finder(crib))
    found = []
    for procedure in procedures:
        for need in procedure.torques:
            plan = plan_torque(reacher, fresh, procedure.id, need, today, None)
            found += [
                Requirement(procedure.id, need.id, frozenset(one.tag for one in coverages if one.covers))
                for coverages in plan.coverages
            ]
    return tuple(dict.fromkeys(found))


def freshened(wrench: Wrench, today: dt.date) -> Wrench:
    """The wrench as it would be back from the laboratory: here, calibrated today, without what a calibration mends.

    A limited range stays: nothing says that it will pass as a whole next time.
    """
    return replace(wrench, calibrated_on=today, valid_until=None, cycles=0, unfit_reason="", on_hand=1.0, loans=())
