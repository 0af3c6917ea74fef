"""Small cribs and procedures for the desk's tests, written as a person would write them."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from cribkit.desk.keeping import Entry, load_folder
from cribkit.domain.procedure import Procedure, read_procedure
from cribkit.store.crib import Crib
from cribkit.store.opening import open_crib

DAY = dt.date(2026, 11, 25)
HEADS = {
    "tools.csv": "tag,description,quantity,location,condition,contents,note",
    "torque_wrenches.csv": "tag,mechanism,range_min,range_max,unit,graduation,accuracy_pct,drive,lever_mm,"
    "calibrated_on,interval_months,location,condition",
    "consumables.csv": "tag,description,unit,pack,on_hand,lot,expires_on,location,traits",
    "suppliers.csv": "name,lead_days",
    "loans.csv": "tag,by,since,quantity,job",
}


@contextmanager
def crib_of(
    folder: Path, tools: str = "", wrenches: str = "", consumables: str = "", loans: str = ""
) -> Iterator[Crib]:
    """A crib with these rows, in the columns of HEADS."""
    rows = {"tools.csv": tools, "torque_wrenches.csv": wrenches, "consumables.csv": consumables, "loans.csv": loans}
    seed = folder / "seed"
    seed.mkdir()
    for name, head in HEADS.items():
        lines = [line.strip() for line in rows.get(name, "").strip().splitlines()]
        (seed / name).write_text("\n".join([head, *lines]) + "\n", encoding="utf-8")
    crib = folder / "crib.db"
    load_folder(crib, seed, Entry("tests", DAY, "2026-11-25T08:00:00Z"))
    with open_crib(crib) as opened:
        yield opened


def job(body: str, name: str = "job") -> Procedure:
    """A procedure with these needs."""
    head = (
        f'id = "{name}"\ntitle = "A job"\napplies_to = "Wren van"\nsource = "Invented."\ncautions = ["Engine cold."]\n'
    )
    procedure, problems = read_procedure(head + body, f"{name}.toml")
    assert procedure is not None, problems
    return procedure


def tool(need: str, **more: object) -> str:
    """A tool need."""
    return table("tool", need=need, **more)


def consumable(need: str, amount: str, **more: object) -> str:
    """A consumable need."""
    return table("consumable", need=need, amount=amount, **more)


def torque(spec: str, head: str = "8 mm hex", **more: object) -> str:
    """A torque need."""
    return table("torque", id="bolts", fastener="cover bolts", head=head, spec=spec, **more)


def table(name: str, **values: object) -> str:
    """One table of a TOML array of tables."""
    return f"[[{name}]]\n" + "".join(f"{key} = {written(value)}\n" for key, value in values.items())


def written(value: object) -> str:
    """A value as TOML writes it."""
    match value:
        case bool():
            return str(value).lower()
        case list():
            return "[" + ", ".join(map(written, value)) + "]"
        case dict():
            return "{ " + ", ".join(f"{key} = {written(entry)}" for key, entry in value.items()) + " }"
        case int():
            return str(value)
        case _:
            return f'"{value}"'
