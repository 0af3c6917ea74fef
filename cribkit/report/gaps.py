"""`wrench gaps`: what is not covered and why, what to buy, what to calibrate, and what opens most jobs."""

from __future__ import annotations

from collections.abc import Sequence
from textwrap import fill

from cribkit.desk.gaps import Gap, Gaps
from cribkit.desk.openers import Step
from cribkit.domain.torque.gaps import REACH, Purchase
from cribkit.report.answer import Answer, Listing
from cribkit.report.forms import as_table

MOST_STEPS = 12  # single steps that a person is shown; JSON has them all


def told(found: Gaps, steps: Sequence[Step]) -> Answer:
    """The answer in every form."""
    return Answer(
        command="wrench gaps",
        ok=not found.gaps,
        result=lambda: gaps_json(found, steps),
        listing=lambda: gap_listing(found),
        text=lambda width: text(found, steps, width),
    )


def gaps_json(found: Gaps, steps: Sequence[Step]) -> dict[str, object]:
    """The JSON contract's result."""
    return {
        "on": found.on,
        "procedures": [procedure.id for procedure in found.procedures],
        "torques": found.torques,
        "gaps": [gap_json(gap) for gap in found.gaps],
        "causes": [{"reasons": list(why), "count": len(some)} for why, some in found.causes],
        "buy": [purchase_json(one) for one in found.buy.buy],
        "calibrate": [purchase_json(one) for one in found.calibrate],
        "left": [place_json(key) for key in found.buy.left],
        "steps": [
            {
                "action": step.action,
                "what": step.what,
                "serves": [{"procedure": name, "kind": kind, "line": at} for name, kind, at in step.serves],
                "opens": list(step.opens),
            }
            for step in steps
        ],
    }


def gap_json(gap: Gap) -> dict[str, object]:
    """One torque that is not covered."""
    return {
        "procedure": gap.procedure,
        "id": gap.key[1],
        "fastener": gap.plan.need.fastener,
        "torque": gap.wanted.text,
        "target_nm": gap.wanted.target_nm,
        "low_nm": gap.wanted.low_nm,
        "high_nm": gap.wanted.high_nm,
        "reasons": list(gap.cause),
        "nearest": gap.nearest or None,
        "why": gap.why,
    }


def purchase_json(one: Purchase) -> dict[str, object]:
    """One wrench to buy or to calibrate."""
    return {"what": one.name, "closes": [place_json(key) for key in one.closes], "opens": list(one.opens)}


def place_json(key: object) -> dict[str, object]:
    """The place of a gap."""
    procedure, name, _ = key if isinstance(key, tuple) else (str(key), "", 0)
    return {"procedure": procedure, "id": name}


def gap_listing(found: Gaps) -> Listing:
    """The gaps, for csv and markdown."""
    columns = ("procedure", "id", "fastener", "torque", "target_nm", "low_nm", "high_nm", "reasons", "nearest", "why")
    return Listing(columns, tuple(tuple(gap_json(gap).values()) for gap in found.gaps), "Every torque is covered.")


def text(found: Gaps, steps: Sequence[Step], width: int) -> str:
    """For a person."""
    parts = [headline(found)]
    if found.gaps:
        parts += [cause_text(why, some, width) for why, some in found.causes]
        parts.append(advice(found, width))
    if steps:
        parts.append(steps_text(steps, width))
    return "\n\n".join(parts)


def cause_text(why: Sequence[str], some: Sequence[Gap], width: int) -> str:
    """The gaps of one cause, each with the wrench that is nearest to closing it."""
    lines = [f"{', '.join(why)} ({len(some)}):"]
    for gap in some:
        line = f"  {gap.wanted.text}: {gap.procedure} {gap.key[1]}; {gap.nearest}: {gap.why}".rstrip(": ")
        lines.append(fill(line, width, subsequent_indent="    "))
    return "\n".join(lines)


def headline(found: Gaps) -> str:
    """How much is missing."""
    jobs = len({gap.procedure for gap in found.gaps})
    if not found.gaps:
        return f"Every one of {found.torques} torques in {len(found.procedures)} procedures is covered on {found.on}."
    return (
        f"{len(found.gaps)} of {found.torques} torques, in {jobs} of {len(found.procedures)} procedures, "
        f"have no wrench on {found.on}."
    )


def advice(found: Gaps, width: int) -> str:
    """What to calibrate and what to buy."""
    lines = [f"Calibrate {one.name}: {effect(one)}." for one in found.calibrate]
    if found.buy.buy:
        lines.append("The fewest wrenches to buy that close every gap a wrench on offer can close:")
        lines += [f"  {one.name}: {effect(one)}" for one in found.buy.buy]
    causes = {gap.key: gap.cause for gap in found.gaps}
    left = [key for key in found.buy.left if isinstance(key, tuple)]
    blocked = [key for key in left if set(causes[key]) & REACH]
    if blocked:
        lines.append(f"{len(blocked)} gaps lack a part on the way to the fastener: see the steps.")
    if len(left) > len(blocked):
        names = ", ".join(f"{key[0]} {key[1]}" for key in left if key not in blocked)
        lines.append(f"No wrench on offer closes: {names}.")
    return "\n".join(fill(line, width, subsequent_indent="    ") for line in lines)


def effect(one: Purchase) -> str:
    """What a purchase does."""
    closes = f"closes {len(one.closes)} gap{'s' if len(one.closes) != 1 else ''}"
    return f"{closes}, all torques of {', '.join(one.opens)}" if one.opens else closes


def steps_text(steps: Sequence[Step], width: int) -> str:
    """The single steps that open most jobs."""
    rows = tuple(
        (step.action, step.what, len(step.serves), ", ".join(step.opens) or "none alone") for step in steps[:MOST_STEPS]
    )
    more = f"\n{len(steps) - MOST_STEPS} more with --json." if len(steps) > MOST_STEPS else ""
    title = "Single steps, by the jobs that each makes ready:\n\n"
    return title + as_table(Listing(("do", "what", "needs", "jobs made ready"), rows), width) + more
