"""A mistake is corrected by a movement that names it; the past stays as it was."""

from __future__ import annotations

from cribkit.desk.ledger import Posted, settled
from cribkit.domain.problem import BadInput
from cribkit.domain.stock.movement import Movement, MovementKind, undoing
from cribkit.store.crib import Crib
from cribkit.store.jobs import holds
from cribkit.store.posting import Entry, movements, post

NAMED = 5  # so many later movements are named


def undo(crib: Crib, number: int, entry: Entry, reason: str) -> Posted:
    """Post the reverse of a movement, with the reason."""
    if not reason:
        raise BadInput.of("no-reason", "a correction needs a reason", "give --reason TEXT.")
    with crib.posting():
        found = movements(crib, "id = ?", [number])
        if not found:
            raise BadInput.of("no-movement", f"there is no movement {number}", "`cribkit history TAG` has the numbers.")
        must_be_undoable(crib, found[0])
        try:
            return settled(crib, [post(crib, undoing(found[0], entry.by, entry.day, reason), entry.at)])
        except BadInput as error:
            raise later_ones_first(crib, found[0], error) from None


def later_ones_first(crib: Crib, movement: Movement, error: BadInput) -> BadInput:
    """What was moved has moved on: the later movements of the lot that no correction has taken back, newest first."""
    since = movements(crib, "id > ? AND tag = ? AND lot = ?", [movement.id, movement.tag, movement.lot])
    taken_back = {one.corrects for one in since}
    later = [one.id for one in since if one.corrects is None and one.id not in taken_back]
    if not later:
        return error
    names = ", ".join(f"{one}" for one in sorted(later, reverse=True)[:NAMED])
    lot = f" lot {movement.lot}" if movement.lot else ""
    found = BadInput.of(
        "moved-on",
        f"movement {movement.id} cannot be taken back: its stock was moved again",
        f"take back what came later first ({names}), or post what really happened.",
        f"{movement.tag}{lot}",
    )
    assert isinstance(found, BadInput)
    return found


def must_be_undoable(crib: Crib, movement: Movement) -> None:
    """Once, not a correction itself, and not what settled a held job."""
    name = f"movement {movement.id}"
    if movement.corrects is not None:
        raise BadInput.of("is-correction", f"{name} is a correction itself", "post what really happened.")
    again = movements(crib, "corrects = ?", [movement.id])
    if again:
        raise BadInput.of("corrected", f"{name} was taken back by movement {again[0].id}", "nothing is left to do.")
    if movement.kind in (MovementKind.LOST, MovementKind.FOUND) and movement.job:
        settled_here = [one for one in holds(crib, movement.job, movement.tag, unsettled=False) if one.settled]
        if settled_here:
            todo = f"use `cribkit found {movement.tag}` or `cribkit lost {movement.tag}`."
            raise BadInput.of("settled-a-job", f"{name} settled job {movement.job}", todo)
