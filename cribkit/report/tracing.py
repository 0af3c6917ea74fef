"""A look back over a wrench's work: on the screen, as rows, as a sheet for the recheck."""

from __future__ import annotations

from collections.abc import Mapping
from textwrap import fill

from cribkit.desk.tracing import Trace
from cribkit.domain.calibration.trace import Answer as Verdict
from cribkit.domain.calibration.trace import Doubt
from cribkit.report import paper
from cribkit.report.answer import Answer, Listing
from cribkit.report.forms import as_table

SAY = {Verdict.INSIDE: "inside", Verdict.OUTSIDE: "OUTSIDE", Verdict.CANNOT_TELL: "cannot tell"}
NOTE = (
    "Estimated from the as-found readings of the certificate; the range is that of the readings. Do not recheck by "
    "pulling on a tight fastener: loosen it and tighten it anew as its procedure says, with new one-time fasteners."
)


def trace_answer(found: Trace) -> Answer:
    """The look back. The answer is no if anything has to be rechecked."""
    return Answer(
        command="wrench trace",
        ok=not found.recheck,
        result=lambda: trace_json(found),
        listing=lambda: trace_listing(found),
        text=lambda width: trace_text(found, width),
        sheet=lambda: trace_sheet(found),
    )


def headline(found: Trace) -> str:
    """What was looked at, and the counts."""
    since = f"from {found.since}" if found.since else "from the beginning (no earlier good calibration)"
    reason = f"certificate {found.certificate} found it out of tolerance" if found.found_out else "looked back"
    if not found.doubts:
        return f"{found.tag}: {reason}; no torque was done with it {since} to {found.until}."
    counts = ", ".join(f"{found.count(answer)} {SAY[answer]}" for answer in Verdict)
    late = sum(doubt.work.past_due for doubt in found.doubts)
    past = f"; {late} done past due" if late else ""
    return f"{found.tag}: {reason}; {many(len(found.doubts))} {since} to {found.until}: {counts}{past}."


def many(count: int) -> str:
    """How many torques."""
    return "1 torque" if count == 1 else f"{count} torques"


def trace_text(found: Trace, width: int) -> str:
    """The page for a person, vehicle by vehicle."""
    parts = [fill(headline(found), width)]
    for vehicle, doubts in found.vehicles:
        rows = tuple(
            (one.work.on, one.work.job, fastener(one), one.work.spec, applied(one), said(one)) for one in doubts
        )
        columns = ("day", "job", "fasteners", "spec", "applied N·m", "answer")
        parts.append(f"{vehicle}\n{as_table(Listing(columns, rows), width)}")
    return "\n\n".join(parts)


def fastener(doubt: Doubt) -> str:
    """How many of which."""
    return f"{doubt.work.count} x {doubt.work.fastener}"


def applied(doubt: Doubt) -> str:
    """The estimate and the range of the readings, N·m."""
    if doubt.estimate is None:
        return f"? (set {doubt.work.setting})" if doubt.work.setting else "?"
    low, high = doubt.estimate.low_nm, doubt.estimate.high_nm
    return f"{doubt.estimate.likely_nm:.4g} ({low:.4g} to {high:.4g})"


def band(doubt: Doubt) -> str:
    """The spec's band, N·m."""
    low, high = doubt.work.low_nm, doubt.work.high_nm
    if low is None and high is None:
        return "none stated"
    return f"{'' if low is None else f'{low:.4g}'} to {'' if high is None else f'{high:.4g}'}".strip()


def said(doubt: Doubt) -> str:
    """The answer with its reason."""
    late = ["past due"] if doubt.work.past_due else []
    reasons = "; ".join([*([doubt.why] if doubt.why else []), *late])
    return f"{SAY[doubt.answer]}: {reasons}" if reasons else SAY[doubt.answer]


def trace_listing(found: Trace) -> Listing:
    """One row for each torque: the recheck list as CSV."""
    return Listing(
        (
            "wrench",
            "vehicle",
            "job",
            "day",
            "procedure",
            "torque",
            "fastener",
            "count",
            "spec",
            "low N·m",
            "high N·m",
            "setting",
            "likely N·m",
            "from N·m",
            "to N·m",
            "answer",
            "why",
            "past due",
            "by",
        ),
        tuple(trace_row(found.tag, doubt) for doubt in found.doubts),
        empty="No torque was done with it.",
    )


def trace_row(tag: str, doubt: Doubt) -> tuple[object, ...]:
    """One torque as cells."""
    work, guess = doubt.work, doubt.estimate
    return (
        tag,
        work.vehicle,
        work.job,
        work.on,
        work.procedure,
        work.torque_id,
        work.fastener,
        work.count,
        work.spec,
        work.low_nm,
        work.high_nm,
        work.setting,
        guess.likely_nm if guess else None,
        guess.low_nm if guess else None,
        guess.high_nm if guess else None,
        SAY[doubt.answer].lower(),
        doubt.why,
        work.past_due,
        work.by,
    )


def trace_json(found: Trace) -> Mapping[str, object]:
    """The JSON contract's result."""
    return {
        "tag": found.tag,
        "since": found.since,
        "until": found.until,
        "certificate": found.certificate,
        "found_out": found.found_out,
        "inside": found.count(Verdict.INSIDE),
        "outside": found.count(Verdict.OUTSIDE),
        "cannot_tell": found.count(Verdict.CANNOT_TELL),
        "vehicles": [
            {"vehicle": vehicle, "torques": [doubt_json(doubt) for doubt in doubts]}
            for vehicle, doubts in found.vehicles
        ],
    }


def doubt_json(doubt: Doubt) -> Mapping[str, object]:
    """One torque in the JSON contract."""
    work, guess = doubt.work, doubt.estimate
    return {
        "job": work.job,
        "day": work.on,
        "procedure": work.procedure,
        "torque": work.torque_id,
        "fastener": work.fastener,
        "count": work.count,
        "spec": work.spec,
        "low_nm": work.low_nm,
        "high_nm": work.high_nm,
        "setting": work.setting,
        "likely_nm": guess.likely_nm if guess else None,
        "from_nm": guess.low_nm if guess else None,
        "to_nm": guess.high_nm if guess else None,
        "answer": doubt.answer.value,
        "why": doubt.why,
        "past_due": work.past_due,
        "by": work.by,
    }


def unbroken(value: object) -> paper.Markup:
    """Text that stays on one line."""
    return paper.Markup(f'<span style="white-space: nowrap">{paper.html(value)}</span>')


def trace_sheet(found: Trace) -> str:
    """The recheck list on paper: vehicles, what to recheck first, room for the result."""
    title = f"Recheck list: torque wrench {found.tag}"
    parts = [
        paper.Markup(f"<h1>{paper.html(title)}</h1>"),
        paper.paragraph(found.description),
        paper.paragraph(headline(found), "verdict"),
        paper.paragraph(NOTE, "note"),
    ]
    for vehicle, doubts in found.vehicles:
        parts.append(paper.heading(vehicle))
        rows = [
            (
                paper.BOX if doubt in found.recheck else "",
                paper.lines((unbroken(doubt.work.on), doubt.work.job)),
                paper.lines((fastener(doubt), doubt.work.procedure)),
                paper.lines((doubt.work.spec, f"{band(doubt)} N·m")),
                paper.lines((f"set {doubt.work.setting}", applied(doubt))),
                said(doubt),
                "",
            )
            for doubt in sorted(doubts, key=lambda one: one not in found.recheck)
        ]
        columns = ("", "Day, job", "Fasteners", "Spec", "Applied, N·m", "Answer", "Rechecked, initials")
        parts.append(paper.table(columns, rows))
    return paper.page(title, parts)
