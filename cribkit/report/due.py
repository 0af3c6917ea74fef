"""What falls due, for people and programs."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from datetime import date, timedelta
from textwrap import fill

from cribkit.desk.due_list import DueLine, DueList
from cribkit.domain.calibration.due import Standing
from cribkit.domain.calibration.losses import Loss
from cribkit.domain.problem import Problem
from cribkit.domain.torque import Wrench
from cribkit.report.answer import Answer, Listing
from cribkit.report.forms import as_table

SAY = {
    Standing.GOOD: "good",
    Standing.SOON: "due soon",
    Standing.OVERDUE: "OVERDUE",
    Standing.NEVER: "NO CALIBRATION",
}


def due_answer(found: DueList, unread: tuple[Problem, ...] = ()) -> Answer:
    """What falls due. The answer is no if anything does, or if a procedure could not be read."""
    return Answer(
        command="wrench due",
        ok=not (found.lines or unread),
        result=lambda: due_json(found),
        listing=lambda: due_listing(found.lines),
        text=lambda width: due_text(found, width, bool(unread)),
        problems=unread,
    )


def due_listing(lines: Iterable[DueLine]) -> Listing:
    """One row for each wrench."""
    return Listing(
        ("tag", "standing", "last good day", "by", "cycles left", "description", "where", "why"),
        tuple(
            (
                line.wrench.tag,
                "UNFIT" if line.unfit else SAY[line.standing],
                None if line.unfit else line.until,
                line.due.by if line.due and not line.unfit else "",
                line.due.cycles_left if line.due else None,
                line.wrench.description,
                place(line.wrench),
                line.unfit,
            )
            for line in lines
        ),
        empty="No wrench falls due.",
    )


def place(wrench: Wrench) -> str:
    """On its shelf, or who has it."""
    return wrench.location if wrench.on_hand >= 1 else f"out: {', '.join(wrench.loans)}"


def due_text(found: DueList, width: int, partial: bool = False) -> str:
    """The page for a person: verdict, what falls due, what it closes, the order of sending."""
    last = found.today + timedelta(days=found.within)
    count = len(found.lines)
    head = f"{count} torque wrench{'es ask' if count > 1 else ' asks'} for calibration by {last}."
    parts = [head if count else f"No torque wrench asks for calibration by {last}."]
    if count:
        parts.append(as_table(short_listing(found.lines), width))
    if found.stored:
        parts.append("In storage, not counted: " + ", ".join(line.wrench.tag for line in found.stored) + ".")
    if partial:
        some = "Procedures that cannot be read were left out; what they need is not looked at. Mend them and ask again."
        parts.append(fill(some, width))
    elif not found.procedures:
        parts.append("No procedures were looked at: name their folder with --procedures.")
    parts += [closing(found, width), sending(found, width)]
    return "\n\n".join(part for part in parts if part)


def short_listing(lines: Iterable[DueLine]) -> Listing:
    """The columns that a person needs; reasons only where there are any."""
    rows = due_listing(lines).rows
    if any(row[7] for row in rows):
        columns = ("tag", "standing", "last good day", "by", "where", "why")
        return Listing(columns, tuple((*row[:4], row[6], row[7]) for row in rows))
    return Listing(("tag", "standing", "last good day", "by", "where"), tuple((*row[:4], row[6]) for row in rows))


def closing(found: DueList, width: int) -> str:
    """Torques that lose their last wrench, and those that have none."""
    parts = []
    if found.losses:
        table = as_table(Listing(("from", "procedure", "torques", "last wrench"), loss_rows(found.losses)), width)
        parts.append(f"Without a covering wrench from these days on:\n{table}")
    if found.uncovered:
        lines = by_procedure((one.procedure, one.torque) for one in found.uncovered)
        parts.append("Without a covering wrench today (`cribkit wrench gaps` says why):\n" + "\n".join(lines))
    if not parts and found.lines and found.procedures:
        return f"Every torque of {counted(found.procedures)} keeps a covering wrench until then."
    return "\n\n".join(parts)


def counted(procedures: int) -> str:
    """ "the procedure", "the 20 procedures"."""
    return "the procedure" if procedures == 1 else f"the {procedures} procedures"


def loss_rows(losses: Iterable[Loss]) -> tuple[tuple[object, ...], ...]:
    """One row for each day, procedure and set of last wrenches, with its torques."""
    rows: dict[tuple[date, str, tuple[str, ...]], list[str]] = {}
    for loss in losses:
        rows.setdefault((loss.day, loss.procedure, loss.last), []).append(loss.torque)
    return tuple((day, name, tuple(dict.fromkeys(torques)), last) for (day, name, last), torques in rows.items())


def by_procedure(torques: Iterable[tuple[str, str]]) -> list[str]:
    """One line for each procedure with its torques."""
    names: dict[str, list[str]] = {}
    for procedure, torque in sorted(set(torques)):
        names.setdefault(procedure, []).append(torque)
    return [f"  {procedure}: {', '.join(found)}" for procedure, found in names.items()]


def sending(found: DueList, width: int) -> str:
    """The order of sending out, and what it means for the torques."""
    plan, days = found.sending, found.rules.days_away
    if not plan.rounds:
        return ""
    lines = [f"Order of sending out ({days} days away each time):"]
    for at, tags in enumerate(plan.rounds):
        goes = found.today + timedelta(days=at * days)
        lines.append(fill(f"  {at + 1}. on {goes}: {', '.join(tags)}", width, subsequent_indent="     "))
    if found.procedures:
        lines += gap_lines(found)
    if not plan.exact:
        lines.append("  Too many wrenches share torques to try every order: a good one, not proven the best.")
    return "\n".join(lines)


def gap_lines(found: DueList) -> list[str]:
    """Torques that are covered today and lose their wrench to the laboratory; those that get one back."""
    bare = {(one.procedure, one.torque) for one in found.uncovered}
    lost = {(gap.round + 1, gap.procedure, gap.torque) for gap in found.sending.gaps}
    caused = sorted(gap for gap in lost if gap[1:] not in bare)
    if not caused:
        lines = ["  What is covered today stays covered throughout."]
    else:
        none = "No order keeps all of them covered; meanwhile" if found.sending.exact else "Meanwhile"
        lines = [f"  {none} these have no wrench:"]
        lines += [f"    round {at}: {procedure}, {torque}" for at, procedure, torque in caused]
    healed = sorted({gap[1:] for gap in lost} & bare)
    if healed:
        lines.append("  Covered again when they are back:")
        lines += [f"    {procedure}, {torque}" for procedure, torque in healed]
    return lines


def due_json(found: DueList) -> Mapping[str, object]:
    """The JSON contract's result."""
    return {
        "on": found.today,
        "within_days": found.within,
        "policy": {
            "due": found.rules.policy.value,
            "start": found.rules.start.value,
            "days_away": found.rules.days_away,
        },
        "wrenches": [due_line_json(line) for line in found.lines],
        "stored": [line.wrench.tag for line in found.stored],
        "uncovered": [{"procedure": one.procedure, "torque": one.torque} for one in found.uncovered],
        "losses": [
            {"day": one.day, "procedure": one.procedure, "torque": one.torque, "last": list(one.last)}
            for one in found.losses
        ],
        "sending": {
            "rounds": [list(tags) for tags in found.sending.rounds],
            "gaps": [
                {"round": gap.round + 1, "procedure": gap.procedure, "torque": gap.torque} for gap in found.sending.gaps
            ],
            "exact": found.sending.exact,
        },
    }


def due_line_json(line: DueLine) -> Mapping[str, object]:
    """One wrench that asks for calibration."""
    return {
        "tag": line.wrench.tag,
        "description": line.wrench.description,
        "standing": "unfit" if line.unfit else line.standing.value,
        "calibrated_on": line.wrench.calibrated_on,
        "until": line.until,
        "by": line.due.by if line.due else "",
        "cycles_left": line.due.cycles_left if line.due else None,
        "location": line.wrench.location,
        "out": list(line.wrench.loans) if line.wrench.on_hand < 1 else [],
        "why": line.unfit,
    }
