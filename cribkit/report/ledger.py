"""What postings and the attendant's listings say."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from cribkit.desk.counting import Count, Difference
from cribkit.desk.ledger import Posted
from cribkit.desk.whereabouts import ExpiryLine, HistoryLine, OutLine
from cribkit.domain.stock.amounts import amount_words
from cribkit.domain.stock.item import Item
from cribkit.domain.stock.movement import Movement, MovementKind
from cribkit.domain.stock.thousandths import whole
from cribkit.report.answer import Answer, Listing

# What a person reads for each kind of movement; {} is the amount and the item.
SENTENCES = {
    MovementKind.RECEIVE: "Received {}",
    MovementKind.ISSUE: "Issued {} to {holder}",
    MovementKind.RETURN: "Took back {} from {holder}",
    MovementKind.USE: "Used {}",
    MovementKind.COUNT: "Counted {}",
    MovementKind.SCRAP: "Scrapped {}",
    MovementKind.LOST: "Gave up {}, last with {holder}",
    MovementKind.FOUND: "Found {}, last with {holder}",
}
SEARCH = "search the vehicle before it is released"


def amount(item: Item, parts: int) -> str:
    """An amount of an item as people read it."""
    return amount_words(parts, item.unit, item.pack)


def posted(command: str, done: Posted) -> Answer:
    """What was posted and what is there now."""
    columns = ("movement", "kind", "tag", "lot", "amount", "unit", "holder", "job", "note", "corrects")
    rows = tuple(
        (
            one.id,
            one.kind.value,
            one.tag,
            one.lot,
            whole(one.amount),
            done.item(one.tag).unit,
            one.holder,
            one.job,
            one.note,
            one.corrects,
        )
        for one in done.movements
    )
    return Answer(
        command,
        ok=True,
        result=lambda: {
            "movements": [movement_json(one, done.item(one.tag)) for one in done.movements],
            "items": [item_json(item) for item in done.items],
            "notes": list(done.notes),
        },
        listing=lambda: Listing(columns, rows),
        text=lambda width: posted_text(done),
        problems=done.warnings,
    )


def posted_text(done: Posted) -> str:
    """A sentence for each movement, then what is there now."""
    lines = [sentence(one, done.item(one.tag)) for one in done.movements]
    lines += [f"  Note: {note}" for note in done.notes]
    return "\n".join([*lines, *(stand(item) for item in done.items)])


def sentence(one: Movement, item: Item) -> str:
    """One movement in words, with its number."""
    lot = f" of lot {one.lot}" if one.lot else ""
    what = f"{amount(item, abs(one.amount))}{lot} of {one.tag} ({item.description})"
    if one.corrects is not None:
        return f"Took back movement {one.corrects} ({one.kind.value} of {what}). [movement {one.id}]"
    job = f" for job {one.job}" if one.job else ""
    return f"{SENTENCES[one.kind].format(what, holder=one.holder or 'nobody')}{job}. [movement {one.id}]"


def stand(item: Item) -> str:
    """How much is in the crib and out now."""
    there = amount(item, round(item.on_hand * 1000))
    away = f", out {amount(item, round(item.out * 1000))}" if item.out else ""
    place = f" at {item.location}" if item.location else ""
    return f"  {item.tag}: in the crib {there}{place}{away}."


def movement_json(one: Movement, item: Item) -> Mapping[str, object]:
    """The JSON of a movement; amounts in the item's unit."""
    return {
        "movement": one.id,
        "at": one.at,
        "day": one.day,
        "by": one.by,
        "kind": one.kind.value,
        "tag": one.tag,
        "lot": one.lot,
        "amount": whole(one.amount),
        "unit": item.unit,
        "holder": one.holder,
        "job": one.job,
        "due": one.due,
        "note": one.note,
        "corrects": one.corrects,
    }


def item_json(item: Item) -> Mapping[str, object]:
    """The JSON of an item's stock; amounts in its unit."""
    return {
        "tag": item.tag,
        "description": item.description,
        "kind": item.kind.value,
        "location": item.location,
        "unit": item.unit,
        "pack": item.pack,
        "on_hand": item.on_hand,
        "out": item.out,
        "lots": [{"lot": lot.lot, "amount": lot.amount, "expires_on": lot.expires_on} for lot in item.lots],
    }


def counted(done: Count) -> Answer:
    """The differences of a count."""
    columns = ("tag", "lot", "location", "ledger", "counted", "difference", "unit", "movement")
    return Answer(
        "count",
        ok=done.posted or not done.differences,
        result=lambda: {
            "posted": done.posted,
            "counted": len(done.lines),
            "differences": [dict(zip(columns, count_row(line), strict=True)) for line in done.differences],
            "not_counted": [item.tag for item in done.not_counted],
        },
        listing=lambda: Listing(columns, tuple(map(count_row, done.differences)), empty="No differences."),
        text=lambda width: count_text(done),
        problems=done.warnings,
    )


def count_row(line: Difference) -> tuple[object, ...]:
    """One difference."""
    figures = (whole(line.ledger), whole(line.shelf), whole(line.change))
    return (line.item.tag, line.lot, line.item.location, *figures, line.item.unit, line.movement)


def count_text(done: Count) -> str:
    """The page of `count`."""
    head = f"Counted {len(done.lines)}: {len(done.differences) or 'no'} difference{'s' * (len(done.differences) != 1)}"
    state = "" if not done.differences else ", posted." if done.posted else ", not posted (--post posts them):"
    lines = [f"{head}{state or '.'}", *(difference_text(line) for line in done.differences)]
    if done.not_counted:
        lines.append("On this shelf but not counted:")
        lines += [f"  {item.tag} {item.location} {item.description}" for item in done.not_counted]
    return "\n".join(lines)


def difference_text(line: Difference) -> str:
    """One difference in words."""
    lot = f" lot {line.lot}" if line.lot else ""
    sign = "+" if line.change > 0 else "-"
    number = f" [movement {line.movement}]" if line.movement else ""
    ledger, shelf = amount(line.item, line.ledger), amount(line.item, line.shelf)
    return (
        f"  {line.item.tag}{lot}: ledger {ledger}, shelf {shelf}: {sign}{amount(line.item, abs(line.change))}{number}"
    )


def count_sheet(rows: Sequence[Sequence[str]]) -> Answer:
    """A blank count sheet."""
    columns = ("tag", "counted", "lot", "location", "description", "unit")
    return Answer(
        "count",
        ok=True,
        result=lambda: {"sheet": [dict(zip(columns, row, strict=True)) for row in rows]},
        listing=lambda: Listing(columns, tuple(map(tuple, rows)), empty="Nothing has its place there."),
    )


def out_list(lines: Sequence[OutLine], only_overdue: bool) -> Answer:
    """Who has what, overdue first."""
    columns = ("overdue", "tag", "description", "amount", "holder", "job", "since", "back by", "location")
    rows = tuple(
        (
            f"{line.overdue_days} d" if line.overdue_days else "",
            line.loan.tag,
            line.loan.description,
            amount_words(line.loan.amount, line.loan.unit),
            line.loan.holder,
            line.loan.job,
            line.loan.since,
            line.back_by,
            line.location,
        )
        for line in lines
    )
    return Answer(
        "out",
        ok=not (only_overdue and lines),
        result=lambda: {"out": [out_json(line) for line in lines]},
        listing=lambda: Listing(columns, rows, empty="Nothing is overdue." if only_overdue else "Nothing is out."),
        text=lambda width: tabled(out_page(lines, only_overdue), width),
    )


def out_page(lines: Sequence[OutLine], only_overdue: bool) -> Listing:
    """The same in few columns, for a narrow page."""
    rows = tuple(
        (
            f"{line.overdue_days} d" if line.overdue_days else "",
            line.loan.tag,
            so_much(line.loan.amount, line.loan.unit, line.loan.description),
            f"{line.loan.holder}{f', job {line.loan.job}' if line.loan.job else ''}",
            line.loan.since,
        )
        for line in lines
    )
    empty = "Nothing is overdue." if only_overdue else "Nothing is out."
    return Listing(("overdue", "tag", "what", "who", "since"), rows, empty)


def so_much(amount: int, unit: str, description: str) -> str:
    """What is out, and how much of it: "2 x ...", "120 mL of ..."."""
    return f"{amount_words(amount, unit)} {'x' if unit == 'each' else 'of'} {description}"


def out_json(line: OutLine) -> Mapping[str, object]:
    """The JSON of something that is out."""
    loan = line.loan
    return {
        "tag": loan.tag,
        "description": loan.description,
        "kind": loan.kind.value,
        "lot": loan.lot,
        "amount": whole(loan.amount),
        "unit": loan.unit,
        "holder": loan.holder,
        "job": loan.job,
        "since": loan.since,
        "due": loan.due,
        "back_by": line.back_by,
        "overdue_days": line.overdue_days,
        "location": line.location,
    }


def history_list(item: Item, lines: Sequence[HistoryLine]) -> Answer:
    """Every movement of an item."""
    columns = ("no", "day", "kind", "amount", "lot", "by", "holder", "job", "in", "out", "note")
    rows = tuple(
        (
            line.movement.id,
            line.movement.day,
            line.movement.kind.value,
            signed(item, line.movement),
            line.movement.lot,
            line.movement.by,
            line.movement.holder,
            line.movement.job,
            whole(line.inside),
            whole(line.outside),
            history_note(line),
        )
        for line in lines
    )
    return Answer(
        "history",
        ok=True,
        result=lambda: {
            "item": item_json(item),
            "movements": [
                {
                    **movement_json(line.movement, item),
                    "corrected_by": line.corrected_by,
                    "in_after": whole(line.inside),
                    "out_after": whole(line.outside),
                }
                for line in lines
            ],
        },
        listing=lambda: Listing(columns, rows, empty="Nothing has happened to it yet."),
        text=lambda width: f"{item.tag}: {item.description}\n\n{tabled(history_page(item, lines), width)}",
    )


def history_page(item: Item, lines: Sequence[HistoryLine]) -> Listing:
    """The same in few columns, for a narrow page."""
    rows = tuple(
        (
            line.movement.id,
            line.movement.day,
            what_happened(item, line.movement),
            whole(line.inside),
            whole(line.outside),
            history_note(line),
        )
        for line in lines
    )
    return Listing(("no", "day", "what", "in", "out", "note"), rows, empty="Nothing has happened to it yet.")


def what_happened(item: Item, one: Movement) -> str:
    """Kind, amount, lot and people of a movement."""
    lot = f" of lot {one.lot}" if one.lot else ""
    way = " to " if one.kind is MovementKind.ISSUE else " from " if one.kind is MovementKind.RETURN else ", "
    holder = f"{way}{one.holder}" if one.holder else ""
    job = f", job {one.job}" if one.job else ""
    by = "" if one.by == one.holder else f" (by {one.by})"
    return f"{one.kind.value} {signed(item, one)}{lot}{holder}{job}{by}"


def signed(item: Item, one: Movement) -> str:
    """An amount with its sign where it is not simply added."""
    sign = "-" if one.amount < 0 else "+" if one.kind is MovementKind.COUNT else ""
    return f"{sign}{amount_words(abs(one.amount), item.unit)}"


def history_note(line: HistoryLine) -> str:
    """The note, and what corrects what."""
    corrects = f"takes back {line.movement.corrects}" if line.movement.corrects is not None else ""
    taken = f"taken back by {line.corrected_by}" if line.corrected_by is not None else ""
    return "; ".join(filter(None, (corrects, taken, line.movement.note)))


def tabled(listing: Listing, width: int) -> str:
    """A listing inside a page."""
    from cribkit.report.forms import as_table

    return as_table(listing, width)


def expiry_list(lines: Sequence[ExpiryLine]) -> Answer:
    """What has expired, and what will soon."""
    columns = ("expires on", "days", "tag", "description", "lot", "amount", "location", "opened on")
    rows = tuple(
        (
            line.lot.expires_on,
            line.days,
            line.item.tag,
            line.item.description,
            line.lot.lot,
            amount(line.item, round(line.lot.amount * 1000)),
            line.item.location,
            line.lot.opened_on,
        )
        for line in lines
    )
    return Answer(
        "expiring",
        ok=not lines,
        result=lambda: {
            "lots": [
                {
                    "tag": line.item.tag,
                    "description": line.item.description,
                    "lot": line.lot.lot,
                    "amount": line.lot.amount,
                    "unit": line.item.unit,
                    "expires_on": line.lot.expires_on,
                    "opened_on": line.lot.opened_on,
                    "days": line.days,
                    "expired": line.days < 0,
                    "location": line.item.location,
                }
                for line in lines
            ]
        },
        listing=lambda: Listing(columns, rows, empty="Nothing expires."),
        text=lambda width: tabled(expiry_page(lines), width),
    )


def expiry_page(lines: Sequence[ExpiryLine]) -> Listing:
    """The same in few columns, for a narrow page."""
    rows = tuple(
        (
            line.lot.expires_on,
            f"{-line.days} d ago" if line.days < 0 else f"in {line.days} d",
            line.item.tag,
            f"{line.item.description}{f', lot {line.lot.lot}' if line.lot.lot else ''}"
            f"{f', opened {line.lot.opened_on}' if line.lot.opened_on else ''}",
            amount_words(round(line.lot.amount * 1000), line.item.unit),
            line.item.location,
        )
        for line in lines
    )
    return Listing(("expires", "", "tag", "what", "amount", "shelf"), rows, empty="Nothing expires.")
