"""Torque wrenches for the shop: the list, which of them cover a torque, and the picture of their ranges."""

from __future__ import annotations

import datetime as dt
import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from cribkit.domain.problem import BadInput, Problem
from cribkit.domain.quantity import parse_angle_deg, parse_length_mm
from cribkit.domain.torque import Coverage, Guard, Offset, Rule, Spec, Wrench, cover, parse_spec, rank
from cribkit.domain.torque.cover import state
from cribkit.domain.torque.reach import Part, Role, find_ways, square, squares

if TYPE_CHECKING:  # imported where they are used: `wrench list` does not pay for procedures
    from cribkit.domain.procedure import Procedure, TorqueNeed
    from cribkit.store.crib import Crib


@dataclass(frozen=True, slots=True)
class Row:
    """A wrench and why it cannot be used that day ("" where it can)."""

    wrench: Wrench
    reasons: tuple[str, ...]
    why: str

    @property
    def state(self) -> str:
        """ "ready", or the codes."""
        return ", ".join(self.reasons) or "ready"


@dataclass(frozen=True, slots=True)
class Question:
    """What `wrench covers` is asked: the torque and the way to the fastener."""

    spec: str
    tolerance: str = ""
    drive: str = ""  # the square that the socket or bit takes
    head: str = ""  # the fastener's head: a socket or bit on hand must fit it
    adapter_mm: float | None = None  # an offset adapter's length
    angle_deg: float = 0.0
    left_hand: bool = False
    guard: Guard | None = None


@dataclass(frozen=True, slots=True)
class Covering:
    """Every wrench against one torque, best first."""

    on: dt.date
    question: Question
    spec: Spec
    coverages: tuple[Coverage, ...]
    wrenches: dict[str, Wrench]
    problems: tuple[Problem, ...] = ()

    @property
    def covered(self) -> bool:
        """Whether some wrench covers it."""
        return any(found.covers for found in self.coverages)


@dataclass(frozen=True, slots=True)
class Mark:
    """One torque of a procedure on the picture, in N·m."""

    procedure: str
    id: str
    text: str
    target_nm: float
    low_nm: float
    high_nm: float
    covered: bool
    why: str


@dataclass(frozen=True, slots=True)
class Chart:
    """What the picture shows."""

    on: dt.date
    rows: tuple[Row, ...]
    marks: tuple[Mark, ...]


def question(
    spec: str,
    tolerance: str = "",
    drive: str = "",
    head: str = "",
    adapter: str = "",
    angle: str = "0°",
    left_hand: bool = False,
    guard: str = "",
    rule: str = "full",
) -> Question:
    """The question in the words of a person. BadInput for a length, an angle or a part that cannot be read."""
    return Question(
        spec=spec,
        tolerance=tolerance,
        drive=known_square(drive),
        head=head.strip(),
        adapter_mm=parse_length_mm(adapter) if adapter.strip() else None,
        angle_deg=parse_angle_deg(angle if re.search(r"[^0-9.,+\s]", angle) else f"{angle}°"),
        left_hand=left_hand,
        guard=read_guard(guard, rule) if guard.strip() else None,
    )


def known_square(drive: str) -> str:
    """A square that the table knows, or ""."""
    name = square(drive)
    if name and name not in squares():
        raise BadInput.of("unknown-drive", f"{drive!r} is not a square drive", f"use one of {', '.join(squares())}.")
    return name


def read_guard(text: str, rule: str) -> Guard:
    """ "1 %" as a guard."""
    shape = re.fullmatch(r"\s*([0-9]{1,2}(?:[.,][0-9]{1,6})?)\s*%?\s*", text)
    if shape is None:
        raise BadInput.of("bad-guard", f"{text!r} is not an uncertainty", 'write it in percent: "1 %".')
    if rule not in list(Rule):
        raise BadInput.of("bad-guard", f"{rule!r} is not a rule for a guard", f"use one of {', '.join(Rule)}.")
    return Guard(float(shape[1].replace(",", ".")) / 100, Rule(rule))


def wrench_rows(crib: Crib, on: dt.date) -> tuple[Row, ...]:
    """Every torque wrench with its state on that day, smallest full scale first."""
    wrenches = sorted(crib.wrenches(), key=lambda wrench: (wrench.full_scale_nm, wrench.tag))
    return tuple(row(wrench, on) for wrench in wrenches)


def row(wrench: Wrench, on: dt.date) -> Row:
    """One wrench with its state."""
    reasons, why = state(wrench, on)
    return Row(wrench, tuple(reasons), "; ".join(why))


def covering(crib: Crib, question: Question, on: dt.date) -> Covering:
    """Which wrenches cover the torque. Reach is asked only where a drive or a head is named."""
    spec = parse_spec(question.spec, question.tolerance)
    offset = None if question.adapter_mm is None else Offset(question.adapter_mm, question.angle_deg)
    wrenches = {wrench.tag: wrench for wrench in crib.wrenches()}
    found = [cover(wrench, spec.main, on, offset, question.guard, question.left_hand) for wrench in wrenches.values()]
    if question.drive or question.head:
        found = reached(crib, question, spec, found, wrenches)
    return Covering(on, question, spec, rank(found), wrenches, tuple(notes(spec)))


def notes(spec: Spec) -> Iterable[Problem]:
    """What the answer does not say."""
    if len(spec.torques) > 1:
        others = ", ".join(f'"{one.text}"' for one in spec.torques[:-1])
        yield Problem("", "several-torques", f"answered for the torque that counts; not for {others}", "ask for each.")
    if spec.needs_angle_gauge:
        yield Problem(
            "", "angle", "the torque is followed by an angle", "have an angle gauge or a wrench that measures angle."
        )
    if spec.prevailing:
        yield Problem(
            "", "prevailing-torque", "the prevailing torque is not in the setting", "measure it and ask for the sum."
        )


def reached(
    crib: Crib, question: Question, spec: Spec, found: Sequence[Coverage], wrenches: dict[str, Wrench]
) -> list[Coverage]:
    """Coverages with the adapters on the way; no way is a reason."""
    from cribkit.desk.candidates import Finder
    from cribkit.desk.reaching import Reacher, wanted_reach
    from cribkit.domain.procedure.model import LEFT_HAND, RIGHT_HAND, Reach, TorqueNeed

    reacher = Reacher(Finder(crib))
    need = TorqueNeed(
        id="",
        fastener="",
        spec=question.spec,
        head=question.head,
        reach=Reach(),
        direction=LEFT_HAND if question.left_hand else RIGHT_HAND,
    )
    kit = reacher.kit(need)
    if question.head and not kit.understood:
        raise BadInput.of(
            "unknown-head", f"the head {question.head!r} was not understood", 'write it as "10 mm hex" or "T30".'
        )
    drivers = kit.drivers if question.head else (Part("", Role.DRIVER, question.drive),)
    if question.head and question.drive:
        drivers = tuple(part for part in drivers if square(part.female) == square(question.drive))
    after = []
    for coverage in found:
        want = wanted_reach(need, spec.most_nm)
        ways = find_ways(wrenches[coverage.tag].drive, drivers, kit.parts, want, reacher.limits, most=1)
        if ways.ways:
            after.append(coverage._replace(adapters=ways.ways[0].adapters))
        else:
            after.append(
                coverage._replace(
                    covers=False,
                    reasons=(*coverage.reasons, *ways.reasons),
                    why=(*coverage.why, *ways.why),
                )
            )
    return after


def chart(crib: Crib, procedures: Iterable[Procedure], on: dt.date) -> Chart:
    """Usable ranges and the torques of the procedures, covered and not, without asking for reach."""
    rows = wrench_rows(crib, on)
    marks = [
        mark(procedure, need, rows, on, at)
        for procedure in procedures
        for need in procedure.torques
        for at in range(len(need.asks().torques))
    ]
    return Chart(on, rows, tuple(sorted(marks, key=lambda one: (one.target_nm, one.procedure, one.id))))


def mark(procedure: Procedure, need: TorqueNeed, rows: Sequence[Row], on: dt.date, at: int) -> Mark:
    """One torque of a need against every wrench."""
    from cribkit.domain.procedure.model import LEFT_HAND

    wanted = need.asks().torques[at]
    reach = need.reach
    offset = Offset(reach.offset_mm, reach.angle_deg) if reach and reach.offset_mm else None
    left = need.direction == LEFT_HAND
    found = rank(cover(row.wrench, wanted, on, offset, left_hand=left) for row in rows)
    covered = bool(found) and found[0].covers
    return Mark(
        procedure=procedure.id,
        id=need.id,
        text=wanted.text,
        target_nm=wanted.target_nm,
        low_nm=wanted.target_nm if wanted.low_nm is None else wanted.low_nm,
        high_nm=wanted.target_nm if wanted.high_nm is None else wanted.high_nm,
        covered=covered,
        why="" if covered else nearest(found),
    )


def nearest(found: Sequence[Coverage]) -> str:
    """Which wrench is nearest to covering it, and why it does not."""
    from cribkit.domain.torque.gaps import nearness

    refused = sorted((one for one in found if one.reasons), key=lambda one: (nearness(one.reasons), one.tag))
    return f"{refused[0].tag}: {'; '.join(refused[0].why)}" if refused else "no torque wrench in the crib"
