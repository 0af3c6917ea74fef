"""Which torques a calibration has to test, and how often: the table points.toml, by the classes of ISO 6789."""

from __future__ import annotations

from dataclasses import dataclass

from cribkit.domain.tables import table
from cribkit.domain.torque.kinds import Mechanism

SLACK = 1e-9  # relative, for torques that went through a unit


@dataclass(frozen=True, slots=True)
class Plan:
    """What ISO 6789 asks of one class. A point is a share of the maximum, "lowest" (mark) or "set" (the one torque)."""

    iso_class: str  # "II A"
    at: tuple[float | str, ...]
    or_at: tuple[float | str, ...]  # the other edition's points, as good; empty: none
    readings: int  # at each point and direction
    preload: str


@dataclass(frozen=True, slots=True)
class Span:
    """What the points are shares of: N·m. For a fixed tool `lowest` and `maximum` are both its set torque.

    A scale that starts at nought has no lowest mark to test; its `lowest` is 20 % of the maximum (our own rule).
    """

    lowest: float
    maximum: float
    graduation: float = 0.0


def plan_for(kind: Mechanism) -> Plan:
    """What ISO 6789 asks of a mechanism's class. Every class of torque/kinds.toml has a row here (a test checks it)."""
    known = table(__package__, "points.toml")
    row = known["classes"][kind.iso]
    return Plan(
        iso_class=kind.iso,
        at=tuple(row["at"]),
        or_at=tuple(row.get("or_at", ())),
        readings=kind.readings,
        preload=str(known["preload"][kind.iso.split()[0]]),
    )


def targets(at: tuple[float | str, ...], span: Span) -> tuple[float, ...]:
    """The points in N·m, rising, each once; a share that lies below the lowest mark becomes the lowest mark."""
    torques = {max(point * span.maximum, span.lowest) if isinstance(point, float) else span.lowest for point in at}
    return tuple(sorted(torques))


def tested(target: float, settings: tuple[float, ...], span: Span) -> bool:
    """Whether one of the settings is this point: at most one mark or 2 % of the maximum away (our own rule).

    A point need not fall on a mark, and a laboratory sets the nearest one; ISO 6789:2003 takes the mark below.
    """
    near = max(span.graduation, 0.02 * span.maximum) * (1 + SLACK)
    return any(abs(setting - target) <= near for setting in settings)


def missing(plan: Plan, settings: tuple[float, ...], span: Span) -> tuple[float, ...]:
    """The points that were not tested, N·m; the choice of points with the fewest missing is the one that counts."""
    choices = [at for at in (plan.at, plan.or_at) if at]
    gaps = [tuple(t for t in targets(at, span) if not tested(t, settings, span)) for at in choices]
    return min(gaps, key=len)
