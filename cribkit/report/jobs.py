"""What `pull` and `close` say."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from textwrap import wrap

from cribkit.desk.closing import Closed, Usage
from cribkit.desk.pulling import Pulled
from cribkit.domain.stock.amounts import amount_words
from cribkit.domain.stock.job import HoldKind, JobState
from cribkit.domain.stock.movement import MovementKind
from cribkit.domain.stock.thousandths import whole
from cribkit.report.answer import Answer, Listing
from cribkit.report.check import answer as check_answer
from cribkit.report.check import bullet, card, pull_rows, section, trouble
from cribkit.report.check_words import care, verdict
from cribkit.report.ledger import SEARCH, movement_json

PULLED = ("tag", "lot", "amount", "unit", "location", "description", "movement")


def pulled(done: Pulled) -> Answer:
    """The pull: what was issued, or why nothing was."""
    if done.posted is None:
        return refused(done)
    return Answer(
        "pull",
        ok=True,
        result=lambda: pull_json(done),
        listing=lambda: Listing(PULLED, tuple(pull_listing(done)), empty="The job needs nothing from the crib."),
        text=lambda width: "\n".join(pull_page(done, width)),
        problems=done.warnings,
    )


def refused(done: Pulled) -> Answer:
    """The check's page, and that nothing was pulled."""
    base = check_answer(done.check)
    page = base.text
    assert page is not None, "a check has a page"
    tail = f"Nothing was pulled for job {done.job.job}. With --anyway REASON, what is there is pulled all the same."
    return base._replace(
        command="pull",
        ok=False,
        result=lambda: pull_json(done),
        text=lambda width: "\n".join([page(width), "", *bullet(tail, width)]),
        sheet=None,
        problems=done.warnings,
    )


def pull_json(done: Pulled) -> Mapping[str, object]:
    """The JSON of a pull: the check's result, and what was posted."""
    posted = done.posted
    return {
        "job": done.job.job,
        "pulled": posted is not None,
        "anyway": done.job.anyway,
        "movements": [movement_json(one, posted.item(one.tag)) for one in posted.movements] if posted else [],
        "check": check_answer(done.check).result(),
    }


def pull_listing(done: Pulled) -> Iterator[tuple[object, ...]]:
    """A row for each thing pulled."""
    movements = done.posted.movements if done.posted else ()
    for pick, one in zip(done.check.pull, movements, strict=False):
        yield (pick.tag, pick.lot, pick.count, pick.unit, pick.location, pick.description, one.id)


def pull_page(done: Pulled, width: int) -> Iterator[str]:
    """What was pulled, the torque card, and what to take care of."""
    job, check = done.job, done.check
    place = f", bay {job.bay}" if job.bay else ""
    yield f"Pulled for job {job.job} by {job.by}{place}."
    yield verdict(check)
    if job.anyway:
        yield f"Started anyway: {job.anyway}"
        yield from section("Still missing", (row for line in check.blocking for row in trouble(line, width, False)))
    yield from section("Take from the shelves", pull_rows(check.pull, width))
    yield from section("Torque card", (row for line in check.torques for row in card(line, width, False)))
    yield from section("Take care", (row for text in care(check) for row in bullet(text, width)))
    yield ""
    yield f"When the job is done: cribkit close {job.job}"


def closed(done: Closed) -> Answer:
    """How a job was closed."""
    columns = ("what", "tag", "lot", "amount", "unit", "movement")
    rows = [
        (one.kind.value, one.tag, one.lot, whole(one.amount), done.posted.item(one.tag).unit, one.id)
        for one in done.posted.movements
    ]
    rows += [(f"held: {one.what.value}", one.tag, one.lot, whole(one.amount), "", 0) for one in done.holds]
    return Answer(
        "close",
        ok=done.job.state is JobState.CLOSED and all(one.code == "setting-unknown" for one in done.doubts),
        result=lambda: close_json(done),
        listing=lambda: Listing(columns, tuple(rows)),
        text=lambda width: "\n".join(row for text in close_page(done) for row in close_rows(text, width)),
        problems=(*done.posted.warnings, *done.doubts),
    )


def close_json(done: Closed) -> Mapping[str, object]:
    """The JSON of a closed job; amounts in the items' units."""
    return {
        "job": done.job.job,
        "state": done.job.state.value,
        "movements": [movement_json(one, done.posted.item(one.tag)) for one in done.posted.movements],
        "holds": [{"tag": one.tag, "what": one.what.value, "amount": whole(one.amount)} for one in done.holds],
        "usage": [
            {"tag": one.item.tag, "unit": one.item.unit, "planned": whole(one.planned), "used": whole(one.used)}
            for one in done.usage
        ],
        "torques": [
            {
                "procedure": one.procedure,
                "id": one.torque,
                "wrench": one.wrench,
                "setting": one.setting,
                "setting_unit": one.setting_unit,
                "cycles": one.cycles,
            }
            for one in done.torques
        ],
        "broken": list(done.broken),
    }


def close_rows(text: str, width: int) -> list[str]:
    """One line of the page, wrapped; what goes on stands further in."""
    return wrap(text, width, subsequent_indent="    ", break_on_hyphens=False)


def close_page(done: Closed) -> Iterator[str]:
    """The page of `close`: what holds the job comes first."""
    if done.holds:
        yield f"HELD: job {done.job.job}: {SEARCH}."
        for one in done.holds:
            what = "is missing" if one.what is HoldKind.MISSING else f"came back, but {one.reason} is missing"
            yield f"  {one.tag} {what}"
        yield "  Then say `cribkit found TAG --job` or `cribkit lost TAG --job --reason`."
    else:
        yield f"Closed: job {done.job.job}."
    back = [one for one in done.posted.movements if one.kind is MovementKind.RETURN]
    if back:
        yield f"Back in the crib: {', '.join(dict.fromkeys(one.tag for one in back))}"
    for tag in done.broken:
        yield f"Out of use, broken: {tag}"
    yield from (usage_text(one) for one in done.usage if one.used)
    whole_back = [one.item.tag for one in done.usage if not one.used]
    if whole_back:
        yield f"Nothing was used, though the procedures expect it, of: {', '.join(whole_back)}"
        yield f"  If it was used: `cribkit issue TAG AMOUNT --use --job {done.job.job}`."
    cycles: dict[str, int] = {}
    for torque in done.torques:
        if torque.wrench:
            cycles[torque.wrench] = cycles.get(torque.wrench, 0) + torque.cycles
    yield from (f"Torque wrench {tag}: {count} cycle{'' if count == 1 else 's'}" for tag, count in cycles.items())


def usage_text(one: Usage) -> str:
    """What was used against what was expected."""
    used = amount_words(one.used, one.item.unit)
    if one.used == one.planned:
        return f"Used {used} of {one.item.tag}, as expected"
    return f"Used {used} of {one.item.tag}; expected {amount_words(one.planned, one.item.unit)}"
