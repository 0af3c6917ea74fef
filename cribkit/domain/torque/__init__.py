"""Torque wrenches, specifications, settings and the way to the fastener."""

from typing import TYPE_CHECKING, Any

from cribkit.domain.torque.asked import Spec, Step, StepKind
from cribkit.domain.torque.cover import REASONS, Coverage, cover, rank
from cribkit.domain.torque.due import add_months, due_date
from cribkit.domain.torque.guard import Guard, Rule
from cribkit.domain.torque.kinds import Mechanism, mechanism, mechanisms
from cribkit.domain.torque.offset import Offset
from cribkit.domain.torque.reach import Found, Part, Reach, Role, Way, find_way, find_ways, square, ways
from cribkit.domain.torque.wanted import Wanted
from cribkit.domain.torque.wrench import Scale, Usable, Wrench, usable

if TYPE_CHECKING:
    from cribkit.domain.torque.spec import parse_spec


def __getattr__(name: str) -> Any:
    """The reader of specs is imported when it is first used: its patterns cost several ms."""
    if name != "parse_spec":
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    from cribkit.domain.torque.spec import parse_spec

    return parse_spec


__all__ = [
    "REASONS",
    "Coverage",
    "Found",
    "Guard",
    "Mechanism",
    "Offset",
    "Part",
    "Reach",
    "Role",
    "Rule",
    "Scale",
    "Spec",
    "Step",
    "StepKind",
    "Usable",
    "Wanted",
    "Way",
    "Wrench",
    "add_months",
    "cover",
    "due_date",
    "find_way",
    "find_ways",
    "mechanism",
    "mechanisms",
    "parse_spec",
    "rank",
    "square",
    "usable",
    "ways",
]
