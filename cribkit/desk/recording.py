"""Recording what a laboratory measured, and what happened to a wrench."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace

from cribkit.desk.tracing import Trace, trace_found
from cribkit.domain.calibration.certificate import Finding, Fitness, examine, subject_of
from cribkit.domain.calibration.due import Policy, Rules, Start
from cribkit.domain.calibration.sheet import Entry
from cribkit.domain.calibration.state import Event, Happening, check_event
from cribkit.domain.problem import BadInput, Problem, refuse
from cribkit.domain.torque import Rule, Wrench
from cribkit.store.calibrations import (
    WITHDRAWN,
    Kept,
    Life,
    Line,
    add_certificate,
    add_line,
    life,
    rules,
    set_rules,
)
from cribkit.store.crib import Crib
from cribkit.store.wrench_state import loaded, state_of


@dataclass(frozen=True, slots=True)
class Posted:
    """Who records it, on which day, and at what time (UTC)."""

    by: str
    on: dt.date
    at: str


@dataclass(frozen=True, slots=True)
class GuardBand:
    """Judge with a guard band: by this rule, with the uncertainty that each certificate states."""

    rule: Rule = Rule.FULL


@dataclass(frozen=True, slots=True)
class Recorded:
    """One certificate, recorded: the verdict, what the wrench may be used for now, and what has to be looked at."""

    tag: str
    description: str
    finding: Finding
    wrench: Wrench  # as it stands now
    newest: bool  # False: a later calibration decides what it may be used for
    mended: bool  # the mark "damaged" was taken off
    trace: Trace | None  # the look back, where the as-found readings ask for it


def record(
    crib: Crib, entries: Sequence[Entry], posted: Posted, guard: GuardBand | None = None
) -> tuple[Recorded, ...]:
    """Record certificates, all or none, oldest first. A failed as-found brings its look back with it."""
    ordered = sorted(entries, key=lambda entry: entry.certificate.on)
    with crib.posting():
        wrenches = by_tag(crib.wrenches())
        refuse(objections(crib, ordered, posted, guard))
        kept = [keep(crib, wrenches[entry.tag.casefold()], entry, posted, guard) for entry in ordered]
    return tuple(answer(crib, finding, tag, mended) for tag, finding, mended in kept)


def by_tag(wrenches: Iterable[Wrench]) -> dict[str, Wrench]:
    """Wrenches by their tags in small letters."""
    return {wrench.tag.casefold(): wrench for wrench in wrenches}


def find_wrench(crib: Crib, tag: str) -> Wrench:
    """The torque wrench with this tag; BadInput if there is none."""
    found = by_tag(crib.wrenches()).get(tag.strip().casefold())
    if found is None:
        todo = "see `cribkit wrench list`."
        raise BadInput.of("unknown-wrench", f"{tag} is not a torque wrench of this crib", todo)
    return found


def objections(crib: Crib, entries: Sequence[Entry], posted: Posted, guard: GuardBand | None) -> tuple[Problem, ...]:
    """Certificates that cannot be recorded: from the future, recorded already, or without what a guard band needs."""
    found: list[Problem] = []
    seen: set[tuple[str, str]] = set()
    for entry in entries:
        paper, tag = entry.certificate, entry.tag.casefold()
        if paper.on > posted.on:
            todo = "check the date."
            found.append(Problem(entry.source, "future", f"{paper.number} is dated {paper.on}, after today", todo))
        known = {kept.certificate.number for kept in life(crib, entry.tag).in_force}
        if paper.number in known or (tag, paper.number) in seen:
            todo = "to correct it, take it back first with `cribkit wrench withdraw`."
            text = f"certificate {paper.number} of {entry.tag} is recorded already"
            found.append(Problem(entry.source, "recorded", text, todo))
        if guard is not None and paper.uncertainty_pct is None:
            text = f"{paper.number} states no uncertainty, and a guard band needs one"
            found.append(Problem(entry.source, "no-uncertainty", text, "fill uncertainty_pct, or leave out --guard."))
        seen.add((tag, paper.number))
    return tuple(found)


def keep(
    crib: Crib, wrench: Wrench, entry: Entry, posted: Posted, guard: GuardBand | None
) -> tuple[str, Finding, bool]:
    """Judge one certificate and write it down."""
    uncertainty = None if guard is None else (entry.certificate.uncertainty_pct or 0.0) / 100
    rule = Rule.FULL if guard is None else guard.rule
    subject = subject_of(wrench, uncertainty, rule)
    finding = examine(entry.certificate, subject)
    mended = finding.fitness is not Fitness.UNFIT and is_damaged(crib, wrench.tag) and is_newest(crib, wrench, finding)
    limit = subject.limit
    add_certificate(crib, wrench.tag, finding, limit.permitted, limit.acceptance, mended, by=posted.by, at=posted.at)
    if mended:
        set_condition(crib, wrench.tag, "ok")
    return wrench.tag, finding, mended


def is_newest(crib: Crib, wrench: Wrench, finding: Finding) -> bool:
    """Whether no other calibration is younger, so that this one decides."""
    days = [kept.line.day for kept in life(crib, wrench.tag).in_force]
    days += [calibrated.on for calibrated in loaded(wrench)]
    return all(day <= finding.certificate.on for day in days)


def is_damaged(crib: Crib, tag: str) -> bool:
    """Whether the wrench is marked damaged."""
    row = crib.connection.execute("SELECT condition FROM item WHERE tag = ?", (tag,)).fetchone()
    return bool(row) and row[0] == "damaged"


def set_condition(crib: Crib, tag: str, condition: str) -> None:
    """Mark a wrench; inside `posting()`."""
    crib.connection.execute("UPDATE item SET condition = ? WHERE tag = ?", (condition, tag))


def answer(crib: Crib, finding: Finding, tag: str, mended: bool) -> Recorded:
    """What a recorded certificate brings about."""
    wrench = find_wrench(crib, tag)
    newest = wrench.certificate == finding.certificate.number and wrench.calibrated_on == finding.certificate.on
    look_back = trace_found(crib, wrench, finding) if finding.found_out else None
    return Recorded(wrench.tag, wrench.description, finding, wrench, newest, mended, look_back)


def note_event(crib: Crib, tag: str, what: Happening, posted: Posted, note: str, day: dt.date | None = None) -> Wrench:
    """Note what happened to a wrench; the wrench as it stands then."""
    on = day or posted.on
    if on > posted.on:
        raise BadInput.of("future", f"{on} is after today", "check the date.", tag)
    with crib.posting():
        wrench = find_wrench(crib, tag)
        known = life(crib, wrench.tag)
        event = Event(what, on, len(known.lines) and known.lines[-1].id + 1, posted.by, note)
        calibrations = [*loaded(wrench), *(kept.calibrated for kept in known.in_force)]
        check_event(wrench.tag, event, calibrations, known.events)
        add_line(crib, Line(0, posted.at, on, posted.by, wrench.tag, what.value, note))
    return find_wrench(crib, wrench.tag)


def withdraw(crib: Crib, tag: str, number: str, posted: Posted, reason: str) -> Wrench:
    """Take a certificate back that was recorded by mistake; it stays on record. The wrench as it stands then."""
    if not reason.strip():
        raise BadInput.of("no-reason", "a certificate is withdrawn for a reason", "say --reason TEXT.", tag)
    with crib.posting():
        wrench = find_wrench(crib, tag)
        kept = certificate_of(life(crib, wrench.tag), wrench.tag, number)
        add_line(crib, Line(0, posted.at, posted.on, posted.by, wrench.tag, WITHDRAWN, reason.strip(), kept.line.id))
        if kept.mended:
            set_condition(crib, wrench.tag, "damaged")
    return find_wrench(crib, wrench.tag)


def certificate_of(known: Life, tag: str, number: str = "") -> Kept:
    """A certificate in force by its number; without a number the newest. BadInput if there is none."""
    papers = sorted(known.in_force, key=lambda kept: (kept.line.day, kept.line.id))
    found = [kept for kept in papers if not number or kept.certificate.number == number]
    if not found:
        which = f"certificate {number}" if number else "recorded certificate"
        have = ", ".join(kept.certificate.number for kept in papers) or "none"
        raise BadInput.of("no-certificate", f"{tag} has no {which}", f"recorded: {have}.")
    return found[-1]


@dataclass(frozen=True, slots=True)
class LifeLine:
    """One line of a wrench's life, in words."""

    line: int
    at: str
    day: dt.date
    what: str
    by: str
    note: str
    certificate: str  # its number; "" where the line has none
    withdrawn: bool


def life_lines(crib: Crib, tag: str) -> tuple[LifeLine, ...]:
    """Certificates and events of a wrench, in the order of recording."""
    known = life(crib, tag)
    papers = {kept.line.id: kept for kept in known.certificates}
    gone = {line.withdraws for line in known.lines}
    return tuple(
        LifeLine(
            line.id,
            line.at,
            line.day,
            line.what,
            line.by,
            words_of(line, papers),
            papers[line.id].certificate.number if line.id in papers else "",
            line.id in gone,
        )
        for line in known.lines
    )


def words_of(line: Line, papers: Mapping[int, Kept]) -> str:
    """What a line says: a certificate's outcome, what was withdrawn, the note."""
    kept = papers.get(line.id)
    said = f"{kept.certificate.number}: {kept.fitness.value}, {kept.why}" if kept else ""
    back = papers.get(line.withdraws or 0)
    took = f"takes back {back.certificate.number}" if back else ""
    return "; ".join(part for part in (said, took, line.note) if part)


def shop_rules(crib: Crib) -> Rules:
    """The shop's rules for due dates."""
    return rules(crib)


def changed(now: Rules, policy: Policy | None, start: Start | None, days_away: int | None) -> Rules:
    """The rules with what was said anew."""
    return replace(
        now,
        policy=policy or now.policy,
        start=start or now.start,
        days_away=now.days_away if days_away is None else days_away,
    )


def change_rules(crib: Crib, wanted: Rules, posted: Posted) -> Rules:
    """Set the shop's rules for due dates."""
    if not 1 <= wanted.days_away <= 365:
        raise BadInput.of("bad-days", f"a laboratory takes 1 to 365 days, not {wanted.days_away}", "use --away 14.")
    with crib.posting():
        new = replace(wanted, by=posted.by, at=posted.at)
        set_rules(crib, new)
    return new


__all__ = [
    "GuardBand",
    "LifeLine",
    "Posted",
    "Recorded",
    "certificate_of",
    "change_rules",
    "changed",
    "find_wrench",
    "life_lines",
    "note_event",
    "record",
    "shop_rules",
    "state_of",
    "withdraw",
]
