"""What is missing is found or given up. A job is held until then."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NoReturn

from cribkit.desk.handing import Handed, handed
from cribkit.desk.ledger import Errand, Posted, leave, loans_meant, settled
from cribkit.domain.problem import BadInput
from cribkit.domain.stock.amounts import amount_words
from cribkit.domain.stock.job import Hold, HoldKind
from cribkit.domain.stock.movement import Movement, MovementKind, undoing
from cribkit.store.crib import Crib
from cribkit.store.jobs import holds, settle
from cribkit.store.loans import OpenLoan, open_loans
from cribkit.store.posting import Entry, movements, post

LOST = """
    kind = 'lost' AND tag = ? AND corrects IS NULL
    AND id NOT IN (SELECT corrects FROM movement WHERE corrects IS NOT NULL)
"""


def lose(crib: Crib, text: str, errand: Errand, entry: Entry) -> Posted:
    """Give up what is out or missed, with the reason. Settles a held job."""
    if not errand.note:
        raise BadInput.of("no-reason", "a loss needs a reason", "give --reason TEXT.")
    with crib.posting():
        what = handed(crib, text, entry.day)
        if not meant(crib, what, errand):
            return settled_piece(crib, what, errand, entry, "lost") or in_the_crib(what)
        loans = missed_first(crib, loans_meant(crib, what.item, errand))
        amount = what.amount(errand.amount)
        posted = [
            leave(crib, loan, part, MovementKind.LOST, entry, errand.note) for loan, part in upto(loans, amount, what)
        ]
        for movement in posted:
            settle_holds(crib, movement, "lost", entry, errand.note)
        return settled(crib, posted)


def meant(crib: Crib, what: Handed, errand: Errand, gone: Sequence[Movement] = ()) -> bool:
    """Whether something that is out is meant; False: a piece or an earlier loss.

    Refused where it could be several matters: what somebody uses is never taken for what another job misses.
    """
    loans = [one for one in open_loans(crib, tag=what.item.tag) if fits(one.job, one.holder, errand)]
    matters = {(one.job.casefold() or one.holder.casefold()): f"{named(one.holder, one.job)} has it" for one in loans}
    for one in missing_pieces(crib, what, errand):
        matters.setdefault(one.job.casefold(), f"job {one.job} misses a piece of it")
    for loss in gone:
        matters.setdefault(loss.job.casefold() or loss.holder.casefold(), f"{named(loss.holder, loss.job)} lost it")
    if len(matters) > 1:
        raise BadInput.of("whose", "; ".join(matters.values()), "say which with --job or --from.", what.item.tag)
    return bool(loans)


def fits(job: str, holder: str, errand: Errand) -> bool:
    """Whether it is what the errand names by job and person."""
    return (not errand.job or errand.job.casefold() == job.casefold()) and (
        not errand.holder or errand.holder.casefold() == holder.casefold()
    )


def named(holder: str, job: str) -> str:
    """A person, and the job."""
    return f"{holder or 'nobody'}{f' for job {job}' if job else ''}"


def in_the_crib(what: Handed) -> NoReturn:
    """Nothing is out: the shelf must be counted."""
    todo = "if it is not on its shelf, post what is there with `cribkit count --post`."
    raise BadInput.of("not-out", "none of it is out: the ledger has it in the crib", todo, what.item.tag)


def missed_first(crib: Crib, loans: tuple[OpenLoan, ...]) -> list[OpenLoan]:
    """Loans of held jobs before others."""
    held = {(one.job, one.tag) for one in holds(crib)}
    return sorted(loans, key=lambda loan: (loan.job, loan.tag) not in held)


def upto(loans: list[OpenLoan], amount: int | None, what: Handed) -> list[tuple[OpenLoan, int]]:
    """The loans up to an amount; all of them where none is said."""
    left = sum(loan.amount for loan in loans) if amount is None else amount
    found = []
    for loan in loans:
        part = min(left, loan.amount)
        if part:
            found.append((loan, part))
            left -= part
    if left or not found:
        out = amount_words(sum(loan.amount for loan in loans), what.item.unit, what.item.pack)
        raise BadInput.of("too-much", f"only {out} out", "see `cribkit out`.", what.item.tag)
    return found


def settle_holds(crib: Crib, movement: Movement, how: str, entry: Entry, reason: str) -> None:
    """Settle what a job was held for."""
    left = movement.amount
    for one in holds(crib, job=movement.job, tag=movement.tag) if movement.job else ():
        if one.what is HoldKind.MISSING and one.lot == movement.lot and left:
            part = min(left, one.amount)
            settle(crib, one, part, how, entry, reason)
            left -= part


def settled_piece(crib: Crib, what: Handed, errand: Errand, entry: Entry, how: str) -> Posted | None:
    """The piece of a broken tool is found, or given up: no stock moves."""
    pieces = missing_pieces(crib, what, errand)
    if not pieces:
        return None
    for one in pieces:
        settle(crib, one, one.amount, how, entry, errand.note)
    return Posted((), (what.item,), (piece_text(pieces[0], how),), crib.warnings)


def missing_pieces(crib: Crib, what: Handed, errand: Errand) -> tuple[Hold, ...]:
    """Pieces of the item that jobs are held for; a piece is a job's, not a person's."""
    found = holds(crib, job=errand.job, tag=what.item.tag) if errand.job or not errand.holder else ()
    return tuple(one for one in found if one.what is HoldKind.PIECE)


def losses(crib: Crib, what: Handed, errand: Errand) -> tuple[Movement, ...]:
    """What of the item was given up and has not come to light."""
    found = movements(crib, LOST, [what.item.tag])
    return tuple(one for one in found if fits(one.job, one.holder, errand))


def piece_text(one: Hold, how: str) -> str:
    """What happened to a piece."""
    return f"The missing piece of {one.tag} is {how}; noted on job {one.job}."


def find_again(crib: Crib, text: str, errand: Errand, entry: Entry) -> Posted:
    """What was missed, or given up as lost, is there again. Settles a held job."""
    with crib.posting():
        what = handed(crib, text, entry.day)
        gone = losses(crib, what, errand)
        if not meant(crib, what, errand, gone):
            piece = settled_piece(crib, what, errand, entry, "found")
            return piece or settled(crib, found_after_loss(crib, what, gone, errand, entry))
        loans = missed_first(crib, loans_meant(crib, what.item, errand))
        amount = what.amount(errand.amount)
        posted = [
            leave(crib, loan, part, MovementKind.FOUND, entry, errand.note) for loan, part in upto(loans, amount, what)
        ]
        for movement in posted:
            settle_holds(crib, movement, "found", entry, errand.note)
        return settled(crib, posted)


def found_after_loss(
    crib: Crib, what: Handed, lost: Sequence[Movement], errand: Errand, entry: Entry
) -> list[Movement]:
    """It had been given up: the loss is taken back, then it is found."""
    item = what.item
    amount = what.amount(errand.amount)
    if not lost or (amount is not None and amount != lost[-1].amount):
        todo = "if there is more on its shelf than the ledger says, post it with `cribkit count --post`."
        raise BadInput.of("not-missed", "nothing of it is out or lost", todo, item.tag)
    last = lost[-1]
    back = post(crib, undoing(last, entry.by, entry.day, errand.note or "found again"), entry.at)
    found = Movement(
        MovementKind.FOUND,
        last.tag,
        last.amount,
        entry.by,
        entry.day,
        lot=last.lot,
        holder=last.holder,
        job=last.job,
        note=errand.note,
    )
    return [back, post(crib, found, entry.at)]
