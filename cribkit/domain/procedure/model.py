"""A repair job's written method, checked: what it calls for, and in which order things are tightened.

Every need keeps the line of its file, so that a later finding can be traced to what was written.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING, NamedTuple

from cribkit.domain.quantity import Amount

if TYPE_CHECKING:
    from cribkit.domain.torque import Spec

RIGHT_HAND, LEFT_HAND = "right-hand", "left-hand"


@dataclass(frozen=True, slots=True)
class ToolNeed:
    """A tool that the job calls for."""

    need: str  # free text, read by the wording room
    count: int = 1  # at the same time
    use: str = ""
    instead: tuple[str, ...] = ()  # accepted in this order
    optional: bool = False
    line: int = 0


class Reach(NamedTuple):
    """The way from the wrench's square to a fastener that cannot be reached straight."""

    adapter: str = ""  # "10 mm crowfoot", free text
    offset_mm: float | None = None  # from the centre of the wrench's square to the centre of the fastener
    angle_deg: float = 0.0  # between wrench and adapter: 0° straight out, 90° across, 180° back over the handle
    extension_mm: float | None = None  # in line with the square: it does not change the setting; 0: any length
    joint: bool = False  # a universal joint


@dataclass(frozen=True, slots=True)
class TorqueNeed:
    """A fastener, or several alike, to be tightened to a spec."""

    id: str
    fastener: str
    spec: str  # as written: "10 N·m", "8-10 N·m", "89 in-lb (10 N·m)"
    count: int = 1
    head: str = ""  # what the socket or bit must fit
    tolerance: str = ""
    steps: tuple[str, ...] = ()
    order: str = ""
    reach: Reach | None = None
    lubrication: str = ""
    direction: str = RIGHT_HAND  # the way the wrench turns to tighten
    thread_forming: bool = False  # all are started by hand
    replace: bool = False  # one-time-use: never fitted again
    without_wrench: str = ""  # the procedure's own fallback; never counts as covered
    line: int = 0
    known: Spec | None = field(default=None, compare=False, repr=False)  # what `asks` gives, where it was read before

    def asks(self) -> Spec:
        """The spec with its tolerance and steps, read. BadInput where they cannot be read."""
        if self.known is not None:
            return self.known
        from cribkit.domain.torque import parse_spec

        return parse_spec(self.spec, self.tolerance, self.steps)


class ConsumableNeed(NamedTuple):
    """A consumable that the job uses up."""

    need: str
    amount: Amount
    never: tuple[str, ...] = ()  # must not be picked instead
    use: str = ""
    optional: bool = False
    line: int = 0


class Procedure(NamedTuple):
    """One repair job's written method, from one file."""

    id: str
    title: str
    applies_to: str
    source: str  # where the method comes from, as the file says
    revision: str = ""
    minutes: int = 0
    cautions: tuple[str, ...] = ()
    covers: tuple[str, ...] = ()  # open ports to cover
    moves: tuple[str, ...] = ()  # parts moved from the old housing to the new
    tools: tuple[ToolNeed, ...] = ()
    torques: tuple[TorqueNeed, ...] = ()
    consumables: tuple[ConsumableNeed, ...] = ()
    file: str = ""  # where it was read from
    line: int = 1  # of its id

    @property
    def claim(self) -> tuple[str, str]:
        """Its id and where that stands."""
        return self.id, self.at(self.line)

    def at(self, line: int) -> str:
        """A place in this procedure's file, as problems name it."""
        return f"{self.file}:{line}"
