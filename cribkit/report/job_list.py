"""What `jobs` says: every job, or one."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from textwrap import wrap

from cribkit.desk.whereabouts import JobView
from cribkit.domain.quantity.measure import show
from cribkit.domain.stock.job import Hold, HoldKind, JobState, JobTorque
from cribkit.domain.stock.thousandths import whole
from cribkit.report.answer import Answer, Listing
from cribkit.report.ledger import SEARCH, so_much, tabled


def job_list(views: Sequence[JobView]) -> Answer:
    """Jobs and how they stand."""
    columns = ("job", "state", "day", "by", "bay", "procedures", "out", "held for", "anyway")
    rows = tuple(
        (
            view.job.job,
            view.job.state.value,
            view.job.day,
            view.job.by,
            view.job.bay,
            tuple(name for name, _ in view.job.procedures),
            len(view.out),
            tuple(hold_text(view, at) for at in range(len(view.holds))),
            view.job.anyway,
        )
        for view in views
    )
    return Answer(
        "jobs",
        ok=True,
        result=lambda: {"jobs": [job_json(view) for view in views]},
        listing=lambda: Listing(columns, rows, empty="No job is open."),
        text=lambda width: "\n\n".join(job_text(view, width) for view in views) or "No job is open.",
    )


def hold_text(view: JobView, at: int) -> str:
    """What a job is held for."""
    one = view.holds[at]
    what = f"a piece of {one.tag}" if one.what is HoldKind.PIECE else f"{one.tag}"
    return f"{what} ({one.settled} by {one.settled_by})" if one.settled else what


def job_json(view: JobView) -> Mapping[str, object]:
    """The JSON of a job."""
    one = view.job
    return {
        "job": one.job,
        "state": one.state.value,
        "day": one.day,
        "by": one.by,
        "bay": one.bay,
        "vehicle": one.vehicle,
        "procedures": [{"id": name, "revision": revision} for name, revision in one.procedures],
        "anyway": one.anyway,
        "closed_at": one.closed_at or None,
        "closed_by": one.closed_by,
        "out": [
            {"tag": loan.tag, "lot": loan.lot, "amount": whole(loan.amount), "unit": loan.unit, "holder": loan.holder}
            for loan in view.out
        ],
        "holds": [
            {
                "tag": hold.tag,
                "what": hold.what.value,
                "amount": whole(hold.amount),
                "by": hold.by,
                "at": hold.at,
                "settled": hold.settled or None,
                "settled_by": hold.settled_by,
                "reason": hold.reason,
            }
            for hold in view.holds
        ],
        "torques": [
            {
                "procedure": torque.procedure,
                "id": torque.torque,
                "fastener": torque.fastener,
                "count": torque.count,
                "spec": torque.spec,
                "wrench": torque.wrench,
                "setting": torque.setting,
                "setting_unit": torque.setting_unit,
                "cycles": torque.cycles,
            }
            for torque in view.torques
        ],
    }


def job_text(view: JobView, width: int) -> str:
    """A job in a few lines: what holds it stands out."""
    first, *rest = job_lines(view)
    lines = wrap(first, width, subsequent_indent="  ")
    for text in rest:
        lines += wrap(text, width, initial_indent="  ", subsequent_indent="    ")
    return "\n".join(lines)


def job_lines(view: JobView) -> Iterator[str]:
    """Where the job stands, what for, what it has out and what holds it."""
    one = view.job
    place = "".join(f", {text}" for text in (one.vehicle, f"bay {one.bay}" if one.bay else "") if text)
    closed = f"; closed by {one.closed_by} at {one.closed_at}" if one.state is JobState.CLOSED else ""
    yield f"{one.job}: {one.state.value.upper()}, {one.by}, since {one.day}{place}{closed}"
    if one.procedures:
        yield ", ".join(f"{name} (revision {revision})" if revision else name for name, revision in one.procedures)
    if one.anyway:
        yield f"started anyway: {one.anyway}"
    held = [hold_text(view, at) for at, hold in enumerate(view.holds) if not hold.settled]
    if held:
        yield f"held for {', '.join(held)}: {SEARCH}"
    if view.out:
        yield f"out for it: {', '.join(dict.fromkeys(loan.tag for loan in view.out))}"


def hold_detail(one: Hold) -> str:
    """What is missing of it, and how that was settled."""
    settled = f"{one.settled} by {one.settled_by} at {one.settled_at}" if one.settled else SEARCH
    return "; ".join(filter(None, (one.what.value, one.reason, settled)))


def torque_text(torque: JobTorque) -> str:
    """Which torque, and at which setting."""
    mark = "" if torque.setting is None else f", set to {show(torque.setting)} {torque.setting_unit}"
    unknown = ", setting not on record" if torque.setting is None and torque.wrench else ""
    return f"{torque.procedure} {torque.torque}: {torque.count} x {torque.spec}{mark}{unknown}"


def job_page(view: JobView) -> Answer:
    """One job: what it has out, what holds it, and which wrench did which torque."""
    rows: list[tuple[object, ...]] = [
        ("out", loan.tag, f"{so_much(loan.amount, loan.unit, loan.description)}, {loan.holder}, since {loan.since}")
        for loan in view.out
    ]
    rows += [("held for" if not one.settled else one.settled, one.tag, hold_detail(one)) for one in view.holds]
    rows += [("torque", torque.wrench or "none", torque_text(torque)) for torque in view.torques]
    listing = Listing(("what", "tag", "detail"), tuple(rows), empty="Nothing is out for it.")
    return Answer(
        "jobs",
        ok=True,
        result=lambda: {"jobs": [job_json(view)]},
        listing=lambda: listing,
        text=lambda width: f"{job_text(JobView(view.job, (), view.holds), width)}\n\n{tabled(listing, width)}",
    )
