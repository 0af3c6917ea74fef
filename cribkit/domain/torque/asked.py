"""What a specification asks for, as data. Apart from its reader, whose patterns cost several ms to load: the specs of
a procedure that was checked before are not read again."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import NamedTuple

from cribkit.domain.torque.wanted import SLACK, Wanted


class StepKind(StrEnum):
    """What is done in one step."""

    TORQUE = "torque"  # tighten to a torque
    ANGLE = "angle"  # turn on by so many degrees: needs an angle gauge or a wrench that measures angle
    TURN = "turn"  # turn on by a part of a turn or so many flats: by eye or by a mark
    LOOSEN = "loosen"
    HAND = "hand"  # by hand, no tool
    SNUG = "snug"  # until the resistance rises and the parts are seated
    CHECK = "check"  # the torque must be at least (or within) this
    REPLACE = "replace"  # a new fastener
    REPEAT = "repeat"  # go through the order again


class Step(NamedTuple):
    """One step. Angles in degrees; a band of angles has its ends."""

    kind: StepKind
    text: str
    wanted: Wanted | None = None
    angle: float | None = None
    angle_low: float | None = None
    angle_high: float | None = None
    label: str = ""  # "bolt 9": the step is for these alone
    prevailing: bool = False  # the fastener's own prevailing torque is added
    added_nm: float = 0.0  # that prevailing torque where the text states it


@dataclass(frozen=True, slots=True)
class Spec(Wanted):
    """A tightening specification: the torque that counts (the last one), and the steps to it where there are any."""

    steps: tuple[Step, ...] = ()
    prevailing: bool = False  # the fastener's prevailing torque is measured and added on the job

    @property
    def torques(self) -> tuple[Wanted, ...]:
        """Every different torque that a wrench must apply or check: the steps' in order, the one that counts last."""
        found: list[Wanted] = []
        for wanted in (step.wanted for step in self.steps if step.wanted):
            if not any(same(wanted, other) for other in (*found, self.main)):
                found.append(wanted)
        return (*found, self.main)

    @property
    def main(self) -> Wanted:
        """The torque that counts, without its steps."""
        return Wanted(self.text, self.unit, self.target_nm, self.low_nm, self.high_nm)

    @property
    def needs_angle_gauge(self) -> bool:
        """Whether some step is given in degrees: an angle gauge, or a wrench that measures angle, must be there."""
        return any(step.kind is StepKind.ANGLE for step in self.steps)

    @property
    def one_time(self) -> bool:
        """Whether some step says that the fastener is replaced."""
        return any(step.kind is StepKind.REPLACE for step in self.steps)


def same(one: Wanted, other: Wanted) -> bool:
    """Whether two torques ask for the same, whatever the words."""
    return one.unit == other.unit and all(
        a == b or (a is not None and b is not None and abs(a - b) <= SLACK * max(a, b))
        for a, b in (
            (one.target_nm, other.target_nm),
            (one.low_nm, other.low_nm),
            (one.high_nm, other.high_nm),
        )
    )
