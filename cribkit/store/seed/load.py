"""Load a seed into the crib: new rows are added, changed words update, changed quantities are shown."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace

from cribkit.domain.problem import Problem, refuse
from cribkit.domain.stock.item import Kind
from cribkit.domain.stock.movement import Movement, MovementKind
from cribkit.domain.stock.thousandths import whole
from cribkit.domain.wording import Meaning
from cribkit.store.crib import Crib
from cribkit.store.posting import Entry, post, set_lot
from cribkit.store.seed.parts import Seed, SeedItem, SeedLoan, SeedLot
from cribkit.store.seed.sheet import problem
from cribkit.store.seed.tables import consumable_row, item_row, square_row, supplier_row, wrench_row
from cribkit.store.terms import set_meaning

READ_FROM = ("kind", "description", "contents", "traits", "hazards")  # what an item's meaning is read from
PACKED = ("pack", "unit")  # and what its pack holds
KIND_OF = {"tools.csv": Kind.TOOL, "torque_wrenches.csv": Kind.WRENCH, "consumables.csv": Kind.CONSUMABLE}


@dataclass(frozen=True, slots=True)
class Change:
    """A word of an item that the files say differently now."""

    tag: str
    column: str
    before: object
    after: object


@dataclass(frozen=True, slots=True)
class Recount:
    """A quantity that the files say differently than the ledger, in the item's unit."""

    tag: str
    lot: str
    unit: str
    ledger: float
    file: float


@dataclass(frozen=True, slots=True)
class Unread:
    """A description that could not be read well."""

    tag: str
    description: str
    words: tuple[str, ...]  # what could not be used
    family: str  # "" where not even the kind of thing was understood


@dataclass(slots=True)
class Loaded:
    """What a load did."""

    added: list[str] = field(default_factory=list)
    changes: list[Change] = field(default_factory=list)
    recounts: list[Recount] = field(default_factory=list)
    posted: int = 0  # movements
    recounted: bool = False  # whether the recounts were posted
    vanished: tuple[str, ...] = ()
    unread: tuple[Unread, ...] = ()
    ignored: tuple[str, ...] = ()

    @property
    def nothing_new(self) -> bool:
        """Whether the crib already said what the files say."""
        return not (self.added or self.changes or self.posted)


def load(crib: Crib, seed: Seed, entry: Entry, recount: bool = False) -> Loaded:
    """Load in one atomic block. Raises BadInput, and changes nothing, where the seed does not fit the crib."""
    with crib.posting():
        seed = respelled(crib, seed)
        refuse(misfits(crib, seed))
        done = Loaded(recounted=recount, ignored=seed.ignored)
        for one in seed.suppliers:
            put(crib, "supplier", "name", supplier_row(one), done)
        put_squares(crib, seed, done)
        new = {item.tag for item in seed.items if put_item(crib, item, done)}
        for item in seed.items:
            if item.tag in new:
                open_stock(crib, item, seed.loans, entry, done)
            else:
                compare_stock(crib, item, entry, recount, done)
        done.vanished = vanished(crib, seed)
        done.unread = unread(crib)
    return done


def respelled(crib: Crib, seed: Seed) -> Seed:
    """The seed with tags spelled as the crib has them: case makes no difference between tags."""
    spelled = {str(row[0]).casefold(): str(row[0]) for row in crib.connection.execute("SELECT tag FROM item")}
    items = tuple(replace(item, tag=spelled.get(item.tag.casefold(), item.tag)) for item in seed.items)
    return replace(seed, items=items)


def misfits(crib: Crib, seed: Seed) -> Iterator[Problem]:
    """Where the files and the crib contradict each other."""
    have = {row[0].casefold(): row for row in crib.connection.execute("SELECT tag, kind, unit FROM item")}
    for item in seed.items:
        row = have.get(item.tag.casefold())
        if row and row[1] != item.kind:
            message = f"{item.tag} is a {row[1]} in the crib"
            yield problem(item.source, "other-kind", message, "give the new item a tag of its own.")
        elif row and row[2] != item.unit:
            message = f"{item.tag} is kept in {row[2]} in the crib, not in {item.unit}"
            yield problem(item.source, "other-unit", message, "give the new item a tag of its own.")
    numbers = {row[1]: row[0] for row in crib.connection.execute("SELECT tag, gtin FROM item WHERE gtin <> ''")}
    for item in seed.items:
        if numbers.get(item.gtin, item.tag) != item.tag:
            message = f"the GTIN {item.gtin} belongs to {numbers[item.gtin]} in the crib"
            yield problem(item.source, "double-gtin", message, "look at both labels.")
    names = {row[0].casefold() for row in crib.connection.execute("SELECT name FROM supplier")}
    names |= {one.name.casefold() for one in seed.suppliers}
    for item in seed.items:
        if item.consumable and item.consumable.supplier and item.consumable.supplier.casefold() not in names:
            message = f"there is no supplier {item.consumable.supplier!r}"
            yield problem(item.source, "unknown-supplier", message, "add it to suppliers.csv.")
    yield from loan_misfits(seed, set(have))


def loan_misfits(seed: Seed, have: set[str]) -> Iterator[Problem]:
    """A loan names an item and, for a consumable of several lots, which one."""
    items = {item.tag.casefold(): item for item in seed.items}
    for loan in seed.loans:
        item = items.get(loan.tag.casefold())
        if item is None:
            if loan.tag.casefold() not in have:
                yield problem(loan.source, "unknown-tag", f"there is no item {loan.tag}", "add it to its file.")
        elif loan_lot(loan, item) is None:
            names = ", ".join(lot.lot or "(blank)" for lot in item.lots)
            yield problem(loan.source, "unknown-lot", f"{loan.tag} has the lots {names}", "name one of them.")


def loan_lot(loan: SeedLoan, item: SeedItem) -> str | None:
    """The lot that is out; None where the file leaves it open."""
    lots = [lot.lot for lot in item.lots]
    if loan.lot in lots:
        return loan.lot
    return lots[0] if not loan.lot and len(lots) == 1 else None


def put(crib: Crib, table: str, key: str, row: Mapping[str, object], done: Loaded) -> bool:
    """Insert or update one row; whether it is new. Only words that differ are written."""
    columns = list(row)
    found = crib.connection.execute(f"SELECT {', '.join(columns)} FROM {table} WHERE {key} = ?", (row[key],)).fetchone()
    if found is None:
        marks = ", ".join("?" * len(columns))
        extra = ", meaning" if table == "item" else ""
        crib.connection.execute(
            f"INSERT INTO {table} ({', '.join(columns)}{extra}) VALUES ({marks}{', ?' if extra else ''})",
            (*row.values(), *(("{}",) if extra else ())),
        )
        return True
    for column, before in zip(columns, found, strict=True):
        if column != key and before != row[column]:
            crib.connection.execute(f"UPDATE {table} SET {column} = ? WHERE {key} = ?", (row[column], row[key]))
            done.changes.append(Change(str(row[key]), column, before, row[column]))
    return False


def put_squares(crib: Crib, seed: Seed, done: Loaded) -> None:
    """The crib's own limits of squares. A squares.csv says them all: a limit that it no longer has is the table's."""
    if "squares.csv" not in seed.files:
        return
    said = {one.square for one in seed.squares}
    for name, limit in sorted(crib.square_limits().items()):
        if name not in said:
            crib.connection.execute("DELETE FROM square WHERE square = ?", (name,))
            done.changes.append(Change(f"square {name}", "limit_nm", limit, None))
    for one in seed.squares:
        seen = len(done.changes)
        if put(crib, "square", "square", square_row(one), done):
            done.changes.append(Change(f"square {one.square}", "limit_nm", None, one.limit_nm))
        done.changes[seen:] = [replace(change, tag=f"square {one.square}") for change in done.changes[seen:]]


def put_item(crib: Crib, item: SeedItem, done: Loaded) -> bool:
    """Insert or update one item with its facts; whether it is new."""
    row, seen = item_row(item), len(done.changes)
    query = "SELECT condition, said_condition FROM item WHERE tag = ?"
    known = crib.connection.execute(query, (item.tag,)).fetchone()
    if known and known[1] == row["condition"]:
        row["condition"] = known[0]  # the files say nothing new: what happened since stands
    new = put(crib, "item", "tag", row, done)
    if item.wrench:
        put(crib, "wrench", "tag", wrench_row(item.tag, item.wrench), done)
    if new or item.wrench or any(change.column in READ_FROM + PACKED for change in done.changes[seen:]):
        set_meaning(crib.connection, item.tag, *(str(row[column]) for column in READ_FROM))
    if item.consumable:
        put(crib, "consumable", "tag", consumable_row(item.tag, item.consumable), done)
    if known is None or known[1] != item.condition:
        said = (item.condition.value, item.tag)
        crib.connection.execute("UPDATE item SET said_condition = ? WHERE tag = ?", said)
    if new:
        done.added.append(item.tag)
    return new


def open_stock(crib: Crib, item: SeedItem, loans: tuple[SeedLoan, ...], entry: Entry, done: Loaded) -> None:
    """The opening stock of a new item, and what of it is out already."""
    out = [(loan, loan_lot(loan, item)) for loan in loans if loan.tag.casefold() == item.tag.casefold()]
    for lot in item.lots:
        keep_lot(crib, item, lot, done, new=True)
        amount = lot.amount
        if item.consumable:  # on_hand is what is in the crib; what is out comes on top
            amount += sum(loan.amount for loan, name in out if name == lot.lot)
        if amount:
            come = Movement(
                MovementKind.RECEIVE, item.tag, amount, entry.by, entry.day, lot=lot.lot, note="opening stock"
            )
            done.posted += bool(post(crib, come, entry.at))
    for loan, name in out:
        note = loan.note or "out when the crib was loaded"
        went = Movement(
            MovementKind.ISSUE,
            item.tag,
            loan.amount,
            entry.by,
            loan.since,
            lot=name or "",
            holder=loan.by,
            job=loan.job,
            note=note,
        )
        done.posted += bool(post(crib, went, entry.at))


def keep_lot(crib: Crib, item: SeedItem, lot: SeedLot, done: Loaded, new: bool = False) -> None:
    """Note a consumable's lot and its expiry."""
    if not item.consumable:
        return
    key = (item.tag, lot.lot)
    row = crib.connection.execute("SELECT expires_on FROM lot WHERE tag = ? AND lot = ?", key).fetchone()
    after = lot.expires_on.isoformat() if lot.expires_on else None
    if row is None or row[0] != after:
        set_lot(crib, item.tag, lot.lot, after)
        if not new:
            done.changes.append(Change(item.tag, f"expires_on of lot {lot.lot}", row and row[0], after))


def compare_stock(crib: Crib, item: SeedItem, entry: Entry, recount: bool, done: Loaded) -> None:
    """Show, and with `recount` post, where the files say another quantity than the ledger."""
    in_file = {lot.lot: lot.amount for lot in item.lots}
    rows = crib.connection.execute("SELECT lot, inside, outside FROM balance WHERE tag = ?", (item.tag,))
    ledger = {lot: (inside, outside) for lot, inside, outside in rows}
    for lot in item.lots:
        keep_lot(crib, item, lot, done)
    for name in sorted(in_file | ledger):
        inside, outside = ledger.get(name, (0, 0))
        said = in_file.get(name, 0) - (0 if item.consumable else outside)
        if said == inside:
            continue
        shift = whole(0 if item.consumable else outside)
        done.recounts.append(Recount(item.tag, name, item.unit, whole(inside) + shift, whole(said) + shift))
        if recount:
            counted = Movement(
                MovementKind.COUNT, item.tag, said - inside, entry.by, entry.day, lot=name, note="recount from files"
            )
            done.posted += bool(post(crib, counted, entry.at))


def vanished(crib: Crib, seed: Seed) -> tuple[str, ...]:
    """Tags of the crib that the files no longer have; a file that is not there says nothing about its items."""
    kinds = {KIND_OF[name] for name in seed.files if name in KIND_OF}
    said = {item.tag.casefold() for item in seed.items}
    rows = crib.connection.execute("SELECT tag, kind FROM item ORDER BY tag")
    return tuple(tag for tag, kind in rows if kind in kinds and tag.casefold() not in said)


def unread(crib: Crib) -> tuple[Unread, ...]:
    """Descriptions that were not understood, the worst first."""
    found = []
    for tag, description, meaning in crib.connection.execute("SELECT tag, description, meaning FROM item"):
        read = Meaning.from_json(meaning)
        if not read.family or read.unread:
            found.append(Unread(tag, description, read.unread, read.family))
    return tuple(sorted(found, key=lambda one: (one.family != "", -len(one.words), one.tag)))
