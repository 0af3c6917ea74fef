"""Stock comes in, goes out, comes back and is thrown away. Each use case is one atomic block."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from cribkit.desk.handing import Handed, handed
from cribkit.domain.problem import BadInput, Problem
from cribkit.domain.stock.amounts import amount_words
from cribkit.domain.stock.item import Condition, Item, Kind, Lot
from cribkit.domain.stock.movement import Movement, MovementKind
from cribkit.domain.stock.thousandths import parts
from cribkit.store.crib import Crib
from cribkit.store.loans import OpenLoan, open_loans
from cribkit.store.posting import Entry, post, set_lot


@dataclass(frozen=True, slots=True)
class Posted:
    """Movements that were posted, and how the item stands after them."""

    movements: tuple[Movement, ...]
    items: tuple[Item, ...]
    notes: tuple[str, ...] = ()
    warnings: tuple[Problem, ...] = ()

    def item(self, tag: str) -> Item:
        """The item of a movement."""
        return next(item for item in self.items if item.tag == tag)


def settled(crib: Crib, movements: Sequence[Movement], notes: Sequence[str] = ()) -> Posted:
    """The result of a posting, with the items as they are now."""
    items = crib.items_tagged({movement.tag for movement in movements})
    return Posted(tuple(movements), items, tuple(notes), crib.warnings)


@dataclass(frozen=True, slots=True)
class Arrival:
    """What is said about a delivery."""

    amount: str | None = None
    lot: str | None = None
    expires_on: dt.date | None = None
    note: str = ""
    anyway: str = ""


def receive(crib: Crib, text: str, arrival: Arrival, entry: Entry) -> Posted:
    """Take stock in. A scan fills lot, expiry and count."""
    with crib.posting():
        return settled(crib, [take_in(crib, handed(crib, text, entry.day), arrival, entry)])


def take_in(crib: Crib, what: Handed, arrival: Arrival, entry: Entry) -> Movement:
    """The receipt of one item; inside a posting block."""
    item = what.item
    amount = some(item, what.amount(arrival.amount), "how much came")
    lot = what.lot(arrival.lot) or ""
    expires_on = arrival.expires_on or (what.scan.expires_on if what.scan else None)
    if item.kind is Kind.CONSUMABLE:
        keep_lot(crib, item, lot, expires_on)
        if expires_on and expires_on < entry.day and not arrival.anyway:
            todo = "send it back, or say --anyway REASON."
            raise BadInput.of("expired", f"it expired on {expires_on}", todo, item.tag)
    elif lot or expires_on:
        raise BadInput.of("no-lots", "tools have no lots", "leave out --lot and --expires.", item.tag)
    note = noted(arrival.note, arrival.anyway)
    return post(
        crib, Movement(MovementKind.RECEIVE, item.tag, amount, entry.by, entry.day, lot=lot, note=note), entry.at
    )


def keep_lot(crib: Crib, item: Item, lot: str, expires_on: dt.date | None) -> None:
    """Note a lot's expiry; a lot has one expiry date."""
    query = "SELECT expires_on FROM lot WHERE tag = ? AND lot = ?"
    row = crib.connection.execute(query, (item.tag, lot)).fetchone()
    new = expires_on.isoformat() if expires_on else None
    if row and row[0] and new and row[0] != new and any(one.lot == lot for one in item.lots):
        name = f"lot {lot}" if lot else "the stock without a lot number"
        message = f"{name} is noted with expiry {row[0]}, not {new}"
        raise BadInput.of("other-expiry", message, "look at the label; give other stock its lot.", item.tag)
    if row is None or new:
        set_lot(crib, item.tag, lot, new)


@dataclass(frozen=True, slots=True)
class Errand:
    """What is said about stock that goes out or comes back."""

    amount: str | None = None
    holder: str = ""
    job: str = ""
    lot: str | None = None
    due: dt.date | None = None
    note: str = ""
    anyway: str = ""
    use: bool = False  # going out: used at once; coming back: the rest was used


def issue(crib: Crib, text: str, errand: Errand, entry: Entry) -> Posted:
    """Hand stock to a person; consumables first expired, first out. What is unfit stays unless there is a reason."""
    with crib.posting():
        what = handed(crib, text, entry.day)
        amount = some(what.item, what.amount(errand.amount), "how much goes out", one=True)
        doubts = tuple(unfit(crib, what.item, entry.day))
        if doubts and not errand.anyway:
            raise BadInput.of("unfit", "; ".join(doubts), "say --anyway REASON if it must go out.", what.item.tag)
        lots = choose_lots(what.item, amount, what.lot(errand.lot), entry.day, bool(errand.anyway))
        posted = [hand_out(crib, what.item.tag, lot, part, errand, entry) for lot, part in lots]
        if errand.use:
            posted += [use_up(crib, movement, entry) for movement in tuple(posted)]
        return settled(crib, posted, doubts)


def hand_out(crib: Crib, tag: str, lot: str, amount: int, errand: Errand, entry: Entry) -> Movement:
    """The issue of one lot; inside a posting block."""
    return post(
        crib,
        Movement(
            MovementKind.ISSUE,
            tag,
            amount,
            entry.by,
            entry.day,
            lot=lot,
            holder=errand.holder,
            job=errand.job,
            due=errand.due,
            note=noted(errand.note, errand.anyway),
        ),
        entry.at,
    )


def use_up(crib: Crib, issued: Movement, entry: Entry) -> Movement:
    """What was issued is used."""
    used = replace(issued, kind=MovementKind.USE, due=None, note="", id=0, digest="")
    return post(crib, used, entry.at)


def unfit(crib: Crib, item: Item, day: dt.date) -> Iterator[str]:
    """Why an item should not go out: damaged, missing, or a torque wrench out of calibration, harmed or stored."""
    if item.condition is not Condition.OK:
        yield f"it is marked {item.condition.value}"
    if item.kind is Kind.WRENCH:
        from cribkit.domain.torque.cover import state

        wrench = next(one for one in crib.wrenches() if one.tag == item.tag)
        asked = {"no-calibration", "overdue"} | ({"unfit"} if wrench.unfit_reason else set())
        yield from (why for code, why in zip(*state(wrench, day), strict=True) if code in asked)


def choose_lots(item: Item, amount: int, lot: str | None, day: dt.date, expired_too: bool) -> list[tuple[str, int]]:
    """Which lots go out, first expired first; what has expired stays unless there is a reason."""
    if item.kind is not Kind.CONSUMABLE:
        return [("", amount)]
    wanted = [one for one in item.lots if lot is None or one.lot == lot]
    good = [one for one in wanted if expired_too or one.good_on(day)]
    left, chosen = amount, dict[str, int]()
    for one in good:
        part = min(left, parts(one.amount))
        if part:
            chosen[one.lot] = chosen.get(one.lot, 0) + part
            left -= part
    if left:
        raise too_little(item, wanted, good, amount, day)
    return list(chosen.items())


def too_little(item: Item, wanted: Sequence[Lot], good: Sequence[Lot], amount: int, day: dt.date) -> Exception:
    """Not enough that is good on the day."""
    there = amount_words(sum(parts(one.amount) for one in good), item.unit, item.pack)
    message = f"{amount_words(amount, item.unit, item.pack)} asked for, {there} in the crib"
    expired = sum(parts(one.amount) for one in wanted if not one.good_on(day))
    if expired:
        message += f" (and {amount_words(expired, item.unit, item.pack)} expired)"
    return BadInput.of("too-little", message, "take less, or see `cribkit restock`.", item.tag)


def give_back(crib: Crib, text: str, errand: Errand, entry: Entry) -> Posted:
    """Take stock back from the person or job that has it: all of it, or so much; the rest may be used up."""
    with crib.posting():
        what = handed(crib, text, entry.day)
        loans = loans_meant(crib, what.item, errand)
        out = sum(loan.amount for loan in loans)
        amount = what.amount(errand.amount)
        amount = out if amount is None else amount
        if amount > out:
            there = amount_words(out, what.item.unit, what.item.pack)
            raise BadInput.of("too-much", f"only {there} out", "see `cribkit out`.", what.item.tag)
        back = spread(loans, amount)
        posted = [come_back(crib, loan, part, entry, errand.note) for loan, part in back.items() if part]
        if errand.use:
            rest = {loan: loan.amount - back[loan] for loan in loans}
            posted += [leave(crib, loan, part, MovementKind.USE, entry) for loan, part in rest.items() if part]
        if not posted:
            raise BadInput.of("nothing", "nothing would be posted", "say how much comes back.", what.item.tag)
        return settled(crib, posted)


def loans_meant(crib: Crib, item: Item, errand: Errand) -> tuple[OpenLoan, ...]:
    """The loans of one person and job; refused where it could be several people's."""
    loans = [
        loan
        for loan in open_loans(crib, tag=item.tag)
        if (not errand.holder or loan.holder.casefold() == errand.holder.casefold())
        and (not errand.job or loan.job.casefold() == errand.job.casefold())
        and (errand.lot is None or loan.lot == errand.lot)
    ]
    if not loans:
        raise BadInput.of("not-out", "none of it is out", "see `cribkit out` and `cribkit history`.", item.tag)
    holders = sorted({(loan.holder, loan.job) for loan in loans})
    if len(holders) > 1:
        names = "; ".join(f"{holder}{f' for {job}' if job else ''}" for holder, job in holders)
        raise BadInput.of("whose", f"several have it: {names}", "say whose with --from or --job.", item.tag)
    return tuple(loans)


def spread(loans: Sequence[OpenLoan], amount: int) -> dict[OpenLoan, int]:
    """Which lots come back: those that expire last, since the first to expire are used first."""
    parts_of: dict[OpenLoan, int] = {}
    for loan in sorted(loans, key=lambda one: (one.expires_on or dt.date.max, one.lot), reverse=True):
        parts_of[loan] = min(amount, loan.amount)
        amount -= parts_of[loan]
    return parts_of


def come_back(crib: Crib, loan: OpenLoan, amount: int, entry: Entry, note: str = "") -> Movement:
    """The return of one loan, or of a part of it; inside a posting block."""
    return leave(crib, loan, amount, MovementKind.RETURN, entry, note)


def leave(crib: Crib, loan: OpenLoan, amount: int, kind: MovementKind, entry: Entry, note: str = "") -> Movement:
    """What was out comes back, is used or is lost; inside a posting block."""
    return post(
        crib,
        Movement(
            kind,
            loan.tag,
            amount,
            entry.by,
            entry.day,
            lot=loan.lot,
            holder=loan.holder,
            job=loan.job,
            note=note,
        ),
        entry.at,
    )


def scrap(crib: Crib, text: str, errand: Errand, entry: Entry) -> Posted:
    """Throw stock away that is in the crib."""
    with crib.posting():
        what = handed(crib, text, entry.day)
        amount = some(what.item, what.amount(errand.amount), "how much is thrown away", one=True)
        lots = choose_lots(what.item, amount, what.lot(errand.lot), entry.day, expired_too=True)
        posted = [
            post(
                crib,
                Movement(MovementKind.SCRAP, what.item.tag, part, entry.by, entry.day, lot=lot, note=errand.note),
                entry.at,
            )
            for lot, part in lots
        ]
        return settled(crib, posted)


def some(item: Item, amount: int | None, question: str, one: bool = False) -> int:
    """An amount above zero; where `one` is allowed, a blank means one tool."""
    if amount is None and one and item.kind is not Kind.CONSUMABLE:
        return parts(1)
    if not amount:
        hint = 'such as 2, "2 cans" or "250 mL".' if item.pack != 1 or item.unit != "each" else "such as 2."
        raise BadInput.of("no-amount", f"say {question}", f"give an amount above zero, {hint}", item.tag)
    return amount


def noted(note: str, anyway: str) -> str:
    """A note with the reason for going against a refusal."""
    return "; ".join(filter(None, (note, f"anyway: {anyway}" if anyway else "")))
