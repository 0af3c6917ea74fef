"""Interval advice for every wrench from its recorded as-found results."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from cribkit.desk.tracing import finding_of
from cribkit.domain.calibration.certificate import Finding
from cribkit.domain.calibration.interval import TARGET, Advice, rescale, simple_response, staircase
from cribkit.domain.torque import Wrench
from cribkit.store.calibrations import NOTHING, lives
from cribkit.store.crib import Crib


@dataclass(frozen=True, slots=True)
class Advised:
    """What the methods say about one wrench, or about all wrenches of a mechanism with the same interval."""

    about: str  # a tag, or "click, 24 months (5 wrenches)"
    months: int  # the interval now
    results: int  # as-found results that it rests on
    advice: tuple[Advice, ...]


def advise(crib: Crib, target: float = TARGET) -> tuple[Advised, ...]:
    """Staircase and simple response for each wrench with as-found results; the rescale for each group of like ones."""
    lived = {tag.casefold(): found for tag, found in lives(crib).items()}
    results: dict[str, list[Finding]] = {}
    wrenches = crib.wrenches()
    for wrench in wrenches:
        papers = lived.get(wrench.tag.casefold(), NOTHING).in_force
        ordered = sorted(papers, key=lambda kept: (kept.line.day, kept.line.id))
        results[wrench.tag] = [one for kept in ordered if (one := finding_of(kept, wrench)).as_found is not None]
    single = [of_wrench(wrench, results[wrench.tag]) for wrench in wrenches if results[wrench.tag]]
    return (*single, *of_groups(wrenches, results, target))


def of_wrench(wrench: Wrench, found: list[Finding]) -> Advised:
    """The two methods that look at the newest result of one wrench."""
    newest = found[-1]
    return Advised(
        wrench.tag,
        wrench.interval_months,
        len(found),
        (
            staircase(wrench.interval_months, worst_share(newest, wrench)),
            simple_response(wrench.interval_months, not newest.found_out),
        ),
    )


def worst_share(finding: Finding, wrench: Wrench) -> float:
    """The largest as-found deviation as a share of the limit."""
    verdict = finding.as_found
    assert verdict is not None, "only as-found results are advised on"
    return max(abs(point.worst) for point in verdict.points) / wrench.deviation


def of_groups(wrenches: Iterable[Wrench], results: dict[str, list[Finding]], target: float) -> list[Advised]:
    """The exponential rescale over wrenches of one mechanism and interval: it needs more than one wrench's history."""
    groups: dict[tuple[str, int], list[str]] = {}
    for wrench in wrenches:
        if results[wrench.tag]:
            groups.setdefault((wrench.mechanism, wrench.interval_months), []).append(wrench.tag)
    advised = []
    for (mechanism, months), tags in sorted(groups.items()):
        found = [finding for tag in tags for finding in results[tag]]
        good = sum(not finding.found_out for finding in found)
        about = f"{mechanism}, {months} months ({len(tags)} wrench{'es' if len(tags) > 1 else ''})"
        advised.append(Advised(about, months, len(found), (rescale(months, good, len(found), target),)))
    return advised
