"""What a wrench may be used for today: folded from its certificates and from what happened to it.

A drop, an overload or a repair makes it unfit until it is calibrated (AC 43.13-1B par. 7-40: at once after abuse or a
drop; overload and repair: ISO 6789, from memory). Storage stops its use and its clock; it comes back only with a
calibration that is younger than the storage (common practice, no source).
"""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable
from dataclasses import dataclass
from enum import StrEnum

from cribkit.domain.calibration.certificate import Fitness
from cribkit.domain.problem import BadInput


class Happening(StrEnum):
    """What can happen to a wrench between calibrations."""

    DROPPED = "dropped"
    OVERLOADED = "overloaded"
    REPAIRED = "repaired"
    STORED = "stored"  # taken out of use
    RETURNED = "returned"  # back in use


HARM = frozenset({Happening.DROPPED, Happening.OVERLOADED, Happening.REPAIRED})


@dataclass(frozen=True, slots=True)
class Event:
    """One happening. `order` is its place among everything recorded, to decide within one day."""

    what: Happening
    on: dt.date
    order: int
    by: str = ""
    note: str = ""


@dataclass(frozen=True, slots=True)
class Calibrated:
    """One certificate's outcome in the history. `order` as for Event."""

    on: dt.date
    order: int
    fitness: Fitness
    number: str = ""
    limited: tuple[float, float] | None = None  # N·m, when limited
    two_way: bool = True
    why: str = ""


@dataclass(frozen=True, slots=True)
class State:
    """Today's standing, calendar and cycles apart."""

    last: Calibrated | None  # the certificate that counts
    unfit: str = ""  # why it must not be used; "" when it may
    stored: bool = False


def state(calibrations: Iterable[Calibrated], events: Iterable[Event]) -> State:
    """The newest certificate counts, by its date and then by when it was recorded; harm after it makes unfit."""
    last = max(calibrations, key=lambda c: (c.on, c.order), default=None)
    happened = sorted(events, key=lambda e: (e.on, e.order))
    stored = is_stored(happened)
    reasons = [storage_reason(happened)] if stored else []
    harms = [event for event in happened if event.what in HARM and not cleared(event, last)]
    reasons += [f"{event.what} on {event.on}, not calibrated since" for event in harms]
    if last is not None and last.fitness is Fitness.UNFIT:
        reasons.append(f"certificate {last.number}: {last.why}")
    return State(last, "; ".join(reasons), stored)


def cleared(event: Event, last: Calibrated | None) -> bool:
    """Whether a calibration came after the event: on a later day, or recorded later with the same date."""
    return last is not None and (last.on, last.order) > (event.on, event.order)


def is_stored(happened: Iterable[Event]) -> bool:
    """Whether the last word on storage is that it is stored."""
    words = [event.what for event in happened if event.what in (Happening.STORED, Happening.RETURNED)]
    return bool(words) and words[-1] is Happening.STORED


def storage_reason(happened: list[Event]) -> str:
    """Since when it is stored."""
    day = next(event.on for event in reversed(happened) if event.what is Happening.STORED)
    return f"in storage since {day}"


def check_event(tag: str, event: Event, calibrations: Iterable[Calibrated], events: Iterable[Event]) -> None:
    """Refuse a return that has no calibration younger than the storage, and storage events out of turn."""
    happened = sorted(events, key=lambda e: (e.on, e.order))
    stored = is_stored(happened)
    if event.what is Happening.STORED and stored:
        raise BadInput.of("stored", f"it is {storage_reason(happened)} already", source=tag)
    if event.what is not Happening.RETURNED:
        return
    if not stored:
        raise BadInput.of("not-stored", "it is not in storage", "only a stored wrench can be returned.", tag)
    since = next(e for e in reversed(happened) if e.what is Happening.STORED)
    last = max(calibrations, key=lambda c: (c.on, c.order), default=None)
    if not cleared(since, last):
        todo = "have it calibrated and record the certificate first."
        raise BadInput.of("needs-calibration", f"no calibration since it was stored on {since.on}", todo, tag)
