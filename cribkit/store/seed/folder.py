"""From a folder of CSV files to one checked `Seed`: every problem of every file at once, or none."""

from __future__ import annotations

import datetime as dt
import difflib
from collections.abc import Iterable, Iterator
from dataclasses import replace
from pathlib import Path
from typing import TypedDict

from cribkit.domain.problem import BadInput, Problem, refuse
from cribkit.domain.stock.item import Condition, Kind
from cribkit.domain.stock.thousandths import parts
from cribkit.store.seed.cells import READERS, STOCK_UNITS, Wrong
from cribkit.store.seed.columns import FILES
from cribkit.store.seed.parts import (
    Seed,
    SeedConsumable,
    SeedItem,
    SeedLoan,
    SeedLot,
    SeedSquare,
    SeedSupplier,
    SeedWrench,
)
from cribkit.store.seed.sheet import Cells, problem, read_sheet


def read_folder(folder: Path) -> Seed:
    """The seed in a folder; raises BadInput with all problems of all files."""
    present = files_of(folder)
    problems: list[Problem] = []
    rows: dict[str, list[Row]] = {}
    for name in FILES:
        rows[name] = []
        if name in present:
            sheet = read_sheet(
                folder / name,
                [column.name for column in FILES[name]],
                [column.name for column in FILES[name] if column.required],
            )
            problems += sheet.problems
            rows[name] = [row for cells in sheet.rows if (row := read_row(name, cells, problems)) is not None]
    seed = assembled(rows, problems)
    refuse([*problems, *crossing(seed)])
    return replace(seed, files=frozenset(present & set(FILES)), ignored=tuple(sorted(present - set(FILES))))


def files_of(folder: Path) -> set[str]:
    """The names of the CSV files of a folder."""
    if not folder.is_dir():
        what = "this is a file" if folder.exists() else "there is no such folder"
        raise BadInput.of("no-folder", what, "name the folder that holds the CSV files.", source=str(folder))
    present = {path.name for path in folder.iterdir() if path.suffix.casefold() == ".csv"}
    if not present & set(FILES):
        close = [found[0] for name in sorted(present) if (found := difflib.get_close_matches(name, FILES, 1))]
        hint = f"is one of its files meant to be {close[0]}?" if close else f"it may have {', '.join(FILES)}."
        raise BadInput.of("no-files", "this folder has none of a crib's files", hint, source=str(folder))
    return present


class Row:
    """A row whose cells could all be read. Its values are of the types that columns.py promises."""

    def __init__(self, source: str, values: dict[str, object]) -> None:
        self.source, self.values = source, values

    def text(self, column: str) -> str:
        """A text; "" where the cell is blank."""
        value = self.values[column]
        return "" if value is None else str(value)

    def number(self, column: str) -> float | None:
        """A number; None where the cell is blank."""
        value = self.values[column]
        return float(value) if isinstance(value, int | float) else None

    def filled(self, column: str) -> float:
        """A number that is always there."""
        value = self.number(column)
        assert value is not None, column
        return value

    def whole(self, column: str) -> int | None:
        """A whole number; None where the cell is blank."""
        value = self.values[column]
        return value if isinstance(value, int) else None

    def day(self, column: str) -> dt.date | None:
        """A day; None where the cell is blank."""
        value = self.values[column]
        return value if isinstance(value, dt.date) else None


def read_row(file: str, cells: Cells, problems: list[Problem]) -> Row | None:
    """The row's values by column; None, and its problems added, where a cell cannot be read."""
    values: dict[str, object] = {}
    good = True
    for column in FILES[file]:
        written = cells.cells.get(column.name, "") or column.blank
        if not written:
            values[column.name] = None
            if column.required:
                good = False
                message = f"{column.name} is blank"
                problems.append(problem(cells.source, "blank-cell", message, "fill it in, or delete the row."))
            continue
        try:
            values[column.name] = READERS[column.holds](written)
        except Wrong as wrong:
            good = False
            problems.append(problem(cells.source, f"bad-{column.holds}", f"{column.name}: {wrong.message}", wrong.todo))
    return Row(cells.source, values) if good else None


def assembled(rows: dict[str, list[Row]], problems: list[Problem]) -> Seed:
    """The rows of all files as items, suppliers and loans."""
    items = [
        *map(tool, rows["tools.csv"]),
        *map(torque_wrench, rows["torque_wrenches.csv"]),
        *map(consumable, rows["consumables.csv"]),
    ]
    merged = merge_lots(items, problems)
    by_tag = {item.tag.casefold(): item for item in merged}
    suppliers = tuple(map(supplier, rows["suppliers.csv"]))
    loans = tuple(loan(row, by_tag.get(row.text("tag").casefold())) for row in rows["loans.csv"])
    squares = tuple(
        SeedSquare(row.source, row.text("square"), row.filled("limit_nm"), row.text("note"))
        for row in rows["squares.csv"]
    )
    return Seed(merged, suppliers, loans, squares)


class Common(TypedDict):
    """What the items of every file have."""

    source: str
    tag: str
    description: str
    location: str
    note: str


def common(row: Row) -> Common:
    """The columns that every item file has."""
    return Common(
        source=row.source,
        tag=row.text("tag"),
        description=row.text("description"),
        location=row.text("location"),
        note=row.text("note"),
    )


def tool(row: Row) -> SeedItem:
    """A row of tools.csv."""
    stock = (SeedLot(row.source, "", parts(row.filled("quantity"))),)
    return SeedItem(
        **common(row),
        kind=Kind.TOOL,
        condition=Condition(row.text("condition")),
        contents=row.text("contents"),
        gtin=row.text("gtin"),
        lots=stock,
    )


def torque_wrench(row: Row) -> SeedItem:
    """A row of torque_wrenches.csv: always one piece."""
    facts = SeedWrench(
        mechanism=row.text("mechanism"),
        range_min=row.filled("range_min"),
        range_max=row.filled("range_max"),
        unit=row.text("unit"),
        graduation=row.filled("graduation"),
        second_unit=row.text("second_unit"),
        second_min=row.number("second_min"),
        second_max=row.number("second_max"),
        second_graduation=row.number("second_graduation"),
        accuracy_pct=row.number("accuracy_pct"),
        drive=row.text("drive"),
        lever_mm=row.number("lever_mm"),
        calibrated_on=row.text("calibrated_on") or None,
        interval_months=row.whole("interval_months") or 12,
        interval_cycles=row.whole("interval_cycles") or 5000,
        certificate=row.text("certificate"),
    )
    words = common(row)
    words["description"] = words["description"] or described(facts)
    return SeedItem(
        **words,
        kind=Kind.WRENCH,
        condition=Condition(row.text("condition")),
        lots=(SeedLot(row.source, "", parts(1)),),
        wrench=facts,
    )


def described(wrench: SeedWrench) -> str:
    """The description of a torque wrench whose row has none."""
    drive = f", {wrench.drive} drive" if wrench.drive else ""
    low = "" if wrench.range_min == wrench.range_max else f"{wrench.range_min:g}-"
    return f"{wrench.mechanism} torque wrench {low}{wrench.range_max:g} {wrench.unit}{drive}"


def consumable(row: Row) -> SeedItem:
    """A row of consumables.csv. Stock enters in the item's unit: containers times their content."""
    unit, factor = STOCK_UNITS[row.text("unit")]
    pack = round(row.filled("pack") * factor, 6)
    stock = SeedLot(row.source, row.text("lot"), parts(row.filled("on_hand") * pack), row.day("expires_on"))
    return SeedItem(
        **common(row),
        kind=Kind.CONSUMABLE,
        unit=unit,
        pack=pack,
        traits=row.text("traits"),
        hazards=row.text("hazards"),
        gtin=row.text("gtin"),
        lots=(stock,),
        consumable=SeedConsumable(
            stock_unit=row.text("unit"),
            minimum=row.number("min"),
            maximum=row.number("max"),
            supplier=row.text("supplier") or None,
            unit_cost=row.number("unit_cost"),
            service_life_days=row.whole("service_life_days"),
        ),
    )


def supplier(row: Row) -> SeedSupplier:
    """A row of suppliers.csv."""
    return SeedSupplier(
        row.source, row.text("name"), row.filled("lead_days"), row.number("minimum_order"), row.text("note")
    )


def loan(row: Row, item: SeedItem | None) -> SeedLoan:
    """A row of loans.csv: pieces, or containers of a consumable."""
    since = row.day("since")
    assert since is not None, "a required column"
    amount = parts(row.filled("quantity") * (item.pack if item else 1))
    return SeedLoan(
        row.source,
        item.tag if item else row.text("tag"),
        row.text("by"),
        since,
        amount,
        row.text("lot"),
        row.text("job"),
        row.text("note"),
    )


def merge_lots(items: Iterable[SeedItem], problems: list[Problem]) -> tuple[SeedItem, ...]:
    """Rows of one consumable with different lots become one item; any other repeated tag is a problem."""
    found: dict[str, SeedItem] = {}
    for item in items:
        first = found.setdefault(item.tag.casefold(), item)
        if first is item:
            continue
        lots = {lot.lot for lot in first.lots}
        if plain(first) == plain(item) and item.kind == Kind.CONSUMABLE and item.lots[0].lot not in lots:
            found[item.tag.casefold()] = replace(first, lots=(*first.lots, *item.lots))
            continue
        message = f"the tag {item.tag} is already at {first.source}"
        todo = "give each item its own tag; only more lots of one consumable share a tag, and all their other words."
        problems.append(problem(item.source, "double-tag", message, todo))
    return tuple(found.values())


def plain(item: SeedItem) -> SeedItem:
    """An item without what may differ from one of its lots' rows to the next."""
    return replace(item, source="", lots=(), tag=item.tag.casefold())


def crossing(seed: Seed) -> Iterator[Problem]:
    """Problems that only show when rows are seen together."""
    yield from doubled_suppliers(seed)
    yield from doubled_squares(seed)
    yield from doubled_gtins(seed)
    for item in seed.items:
        if item.wrench:
            yield from wrench_problems(item.source, item.wrench)
        if item.consumable:
            yield from consumable_problems(item.source, item.consumable)
    yield from loan_problems(seed)


def doubled_suppliers(seed: Seed) -> Iterator[Problem]:
    """One name, one supplier."""
    seen: dict[str, str] = {}
    for one in seed.suppliers:
        first = seen.setdefault(one.name.casefold(), one.source)
        if first != one.source:
            yield problem(one.source, "double-supplier", f"{one.name} is already at {first}", "delete one of them.")


def doubled_squares(seed: Seed) -> Iterator[Problem]:
    """One square, one limit."""
    seen: dict[str, str] = {}
    for one in seed.squares:
        first = seen.setdefault(one.square, one.source)
        if first != one.source:
            message = f"the square {one.square} is already at {first}"
            yield problem(one.source, "double-square", message, "delete one of them.")


def doubled_gtins(seed: Seed) -> Iterator[Problem]:
    """One barcode number, one item."""
    seen: dict[str, str] = {}
    for item in seed.items:
        if item.gtin and (first := seen.setdefault(item.gtin, item.source)) != item.source:
            message = f"the GTIN {item.gtin} is already at {first}"
            yield problem(item.source, "double-gtin", message, "look at both labels.")


def wrench_problems(source: str, wrench: SeedWrench) -> Iterator[Problem]:
    """A scale goes upwards, and has marks unless the wrench is of a kind without."""
    from cribkit.domain.torque.kinds import mechanism

    marks = mechanism(wrench.mechanism).scale == "marks"
    second = (wrench.second_min, wrench.second_max, wrench.second_graduation)
    scales = [("range_min", wrench.range_min, wrench.range_max, wrench.graduation)]
    if wrench.second_unit and None not in second:
        scales.append(("second_min", wrench.second_min or 0, wrench.second_max or 0, wrench.second_graduation or 0))
    elif wrench.second_unit or any(value is not None for value in second):
        todo = "fill second_unit, second_min, second_max and second_graduation, or none of them."
        yield problem(source, "half-scale", "the second scale is not complete", todo)
    for name, low, high, graduation in scales:
        if low > high:
            yield problem(source, "scale-falls", f"{name} is above the highest mark", "write the lower one first.")
        if marks and not graduation:
            message = f"a {wrench.mechanism} wrench has marks, but graduation is 0 or blank"
            yield problem(source, "no-graduation", message, "write the step between two marks.")
        if graduation > high:
            yield problem(source, "coarse-scale", "the graduation is larger than the scale", "write the step.")


def consumable_problems(source: str, facts: SeedConsumable) -> Iterator[Problem]:
    """The maximum is not below the minimum."""
    if facts.minimum is not None and facts.maximum is not None and facts.minimum > facts.maximum:
        yield problem(source, "min-above-max", "min is above max", "write the smaller number as min.")


def loan_problems(seed: Seed) -> Iterator[Problem]:
    """No more can be out than the crib owns; what a tool's quantity says includes what is out."""
    left = {item.tag.casefold(): sum(lot.amount for lot in item.lots) for item in seed.items if not item.consumable}
    for loan_ in seed.loans:
        key = loan_.tag.casefold()
        if key in left:
            left[key] -= loan_.amount
            if left[key] < 0:
                message = f"more of {loan_.tag} is out than the crib owns"
                yield problem(loan_.source, "too-much-out", message, "correct quantity here or in tools.csv.")
