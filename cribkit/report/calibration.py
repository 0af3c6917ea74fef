"""Due lists, records, looks back and interval advice, for people and programs."""

from __future__ import annotations

from collections.abc import Iterable, Mapping

from cribkit.desk.advice import Advised
from cribkit.desk.recording import Recorded
from cribkit.domain.calibration.certificate import Finding, Fitness
from cribkit.domain.calibration.due import Rules
from cribkit.domain.calibration.readings import Verdict
from cribkit.domain.torque import Wrench
from cribkit.report.answer import Answer, Listing
from cribkit.report.forms import as_table, cell
from cribkit.report.tracing import trace_json, trace_text


def record_answer(recorded: tuple[Recorded, ...]) -> Answer:
    """What certificates brought about. The answer is no if a wrench is unfit now or work is in doubt."""
    ok = all(one.finding.fitness is not Fitness.UNFIT and not one.finding.found_out for one in recorded)
    warnings = tuple(problem for one in recorded for problem in one.finding.warnings)
    return Answer(
        command="wrench record",
        ok=ok,
        result=lambda: {"certificates": [recorded_json(one) for one in recorded]},
        listing=lambda: point_listing(recorded),
        text=lambda width: "\n\n".join(recorded_text(one, width) for one in recorded),
        problems=warnings,
    )


def recorded_text(one: Recorded, width: int) -> str:
    """One certificate for a person: the verdict first."""
    finding = one.finding
    lines = [
        f"{one.tag}: {fitness_text(finding)}",
        f"  certificate {finding.certificate.number} of {finding.certificate.on}",
    ]
    if not one.newest:
        lines.append("  A younger calibration is on record: it decides what the wrench may be used for.")
    elif one.wrench.unfit_reason and finding.fitness is not Fitness.UNFIT:
        lines.append(f"  The wrench is unfit all the same: {one.wrench.unfit_reason}.")
    if one.mended:
        lines.append('  It passed: the mark "damaged" was taken off.')
    lines += [f"  {verdict_text(verdict)}" for verdict in (finding.as_found, finding.as_left) if verdict]
    table = as_table(short_listing(one), width)
    look_back = f"\n\n{trace_text(one.trace, width)}" if one.trace else ""
    return "\n".join(lines) + f"\n\n{table}{look_back}"


def fitness_text(finding: Finding) -> str:
    """READY, LIMITED or UNFIT, with the reason."""
    return f"{finding.fitness.value.upper()} - {finding.why}"


def verdict_text(verdict: Verdict) -> str:
    """One phase in a line."""
    sides = "; ".join(f"{side.direction.value} {side.outcome.value}" for side in verdict.sides)
    return f"{verdict.phase.value}: {sides}"


def short_listing(one: Recorded) -> Listing:
    """The points of one certificate for the screen."""
    rows = tuple(
        (row[2], row[3], f"{cell(row[4])} {row[5]}", row[6], row[7], row[8], row[9])
        for row in point_listing((one,)).rows
    )
    return Listing(("phase", "direction", "setting", "readings", "worst %", "mean %", "verdict"), rows, "No readings.")


def point_listing(recorded: Iterable[Recorded]) -> Listing:
    """One row for each tested point."""
    return Listing(
        ("tag", "certificate", "phase", "direction", "setting", "unit", "readings", "worst %", "mean %", "verdict"),
        tuple(
            (
                one.tag,
                one.finding.certificate.number,
                verdict.phase.value,
                point.direction.value,
                point.setting,
                point.unit,
                len(point.deviations),
                f"{point.worst * 100:+.2f}",
                f"{point.mean * 100:+.2f}",
                point.outcome.value,
            )
            for one in recorded
            for verdict in (one.finding.as_found, one.finding.as_left)
            if verdict
            for point in verdict.points
        ),
        empty="No readings.",
    )


def recorded_json(one: Recorded) -> Mapping[str, object]:
    """One certificate in the JSON contract."""
    finding, paper = one.finding, one.finding.certificate
    return {
        "tag": one.tag,
        "certificate": paper.number,
        "date": paper.on,
        "laboratory": paper.laboratory,
        "fitness": finding.fitness.value,
        "usable_nm": list(finding.usable) if finding.usable else None,
        "two_way": finding.two_way,
        "why": finding.why,
        "newest": one.newest,
        "unfit": one.wrench.unfit_reason,
        "as_found": verdict_json(finding.as_found),
        "as_left": verdict_json(finding.as_left),
        "trace": trace_json(one.trace) if one.trace else None,
    }


def verdict_json(verdict: Verdict | None) -> Mapping[str, object] | None:
    """One phase's verdict for each point, each direction and the whole."""
    if verdict is None:
        return None
    return {
        "verdict": verdict.outcome.value,
        "directions": [
            {
                "direction": side.direction.value,
                "verdict": side.outcome.value,
                "passed_nm": list(side.passed) if side.passed else None,
                "points": [
                    {
                        "setting": point.setting,
                        "unit": point.unit,
                        "deviations_pct": [round(value * 100, 4) for value in point.deviations],
                        "verdict": point.outcome.value,
                    }
                    for point in side.points
                ],
            }
            for side in verdict.sides
        ],
    }


def advice_answer(advised: tuple[Advised, ...]) -> Answer:
    """What the interval methods propose."""
    return Answer(
        command="wrench advice",
        ok=True,
        result=lambda: {"advice": [advised_json(one) for one in advised]},
        listing=lambda: advice_listing(advised),
        text=lambda width: advice_text(advised, width),
    )


def advice_listing(advised: Iterable[Advised]) -> Listing:
    """One row for each method."""
    return Listing(
        ("about", "now", "results", "method", "months", "worked out from"),
        tuple(
            (one.about, one.months, one.results, advice.method, round(advice.months, 1), advice.why)
            for one in advised
            for advice in one.advice
        ),
        empty="No as-found results are recorded yet: nothing to advise on.",
    )


def advice_text(advised: tuple[Advised, ...], width: int) -> str:
    """The table, and what it is worth."""
    table = as_table(advice_listing(advised), width)
    return f"{table}\n\nAdvice only: no interval is changed by it." if advised else table


def advised_json(one: Advised) -> Mapping[str, object]:
    """One wrench or group in the JSON contract."""
    return {
        "about": one.about,
        "months": one.months,
        "results": one.results,
        "methods": [
            {"method": advice.method, "months": round(advice.months, 3), "why": advice.why} for advice in one.advice
        ],
    }


def wrench_answer(command: str, wrench: Wrench, done: str) -> Answer:
    """What was noted about a wrench, and how it stands now."""
    why = wrench.unfit_reason
    text = f"{wrench.tag}: {done}. " + (f"Unfit: {why}." if why else "It may be used as its calibration allows.")
    return Answer(
        command=command,
        ok=True,
        result=lambda: {
            "tag": wrench.tag,
            "done": done,
            "unfit": why,
            "calibrated_on": wrench.calibrated_on,
            "certificate": wrench.certificate,
            "limited_nm": list(wrench.limited_nm) if wrench.limited_nm else None,
        },
        listing=lambda: Listing(("tag", "done", "unfit"), ((wrench.tag, done, why),)),
        text=lambda width: text,
    )


def policy_answer(shop: Rules) -> Answer:
    """The shop's rules for due dates."""
    set_by = f"set by {shop.by}, {shop.at}" if shop.by else "as the program comes"
    rows = (
        ("due", shop.policy.value, set_by),
        ("start", shop.start.value, set_by),
        ("away", f"{shop.days_away} days", set_by),
    )
    return Answer(
        command="wrench policy",
        ok=True,
        result=lambda: {
            "due": shop.policy.value,
            "start": shop.start.value,
            "days_away": shop.days_away,
            "by": shop.by,
            "at": shop.at,
        },
        listing=lambda: Listing(("rule", "value", "since"), rows),
    )
