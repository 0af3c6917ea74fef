"""The demo world is sound as data, before any of the program reads it. All values in it are invented."""

from __future__ import annotations

import csv
import datetime as dt
import re
import tomllib
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest

ROOT = Path(__file__).parent.parent
PROCEDURES = sorted((ROOT / "procedures").glob("*.toml"))
SEED = ROOT / "seed_inventory"
TODAY = dt.date(2026, 11, 25)  # the day for which the demo was written; a year later nothing may have changed
A_YEAR_LATER = dt.date(2027, 12, 31)

Table = dict[str, Any]

TOP_KEYS = {
    "id",
    "title",
    "applies_to",
    "revision",
    "minutes",
    "source",
    "cautions",
    "covers",
    "moves",
    "tool",
    "torque",
    "consumable",
}
NEED_KEYS = {
    "tool": {"need", "count", "use", "instead", "optional"},
    "torque": {
        "id",
        "fastener",
        "count",
        "head",
        "spec",
        "tolerance",
        "steps",
        "order",
        "reach",
        "lubrication",
        "thread_forming",
        "replace",
        "without_wrench",
        "direction",
    },
    "consumable": {"need", "amount", "never", "use", "optional"},
}
COLUMNS = {
    "tools.csv": "tag description quantity location condition contents note",
    "torque_wrenches.csv": "tag description mechanism range_min range_max unit graduation accuracy_pct drive lever_mm "
    "calibrated_on interval_months interval_cycles certificate location condition "
    "second_unit second_min second_max second_graduation",
    "consumables.csv": "tag description unit pack on_hand min max supplier unit_cost lot expires_on location traits "
    "hazards gtin",
    "suppliers.csv": "name lead_days minimum_order note",
    "loans.csv": "tag by since quantity job note",
}
LAST_CAUTION = "The vehicle maker's service information, local codes and licensed practice come first."


def procedure(path: Path) -> Table:
    return tomllib.loads(path.read_text(encoding="utf-8"))


def rows(name: str) -> list[dict[str, str]]:
    with (SEED / name).open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


def everything() -> Iterator[tuple[str, Table]]:
    for path in PROCEDURES:
        yield path.stem, procedure(path)


def torques() -> Iterator[Table]:
    for _, table in everything():
        yield from table["torque"]


def tool_needs() -> str:
    return "\n".join(tool["need"] for _, table in everything() for tool in table["tool"])


def specs() -> str:
    return "\n".join(torque["spec"] for torque in torques())


@pytest.mark.parametrize("path", PROCEDURES, ids=lambda path: path.stem)
class TestEachProcedure:
    def test_is_named_after_its_file_and_says_that_it_is_invented(self, path: Path) -> None:
        table = procedure(path)
        assert table["id"] == path.stem
        assert table["source"] == "Invented for the demo. Never use on a real vehicle."
        assert re.search("Wren|Tern|Heron", table["applies_to"])

    def test_uses_only_the_keys_of_the_format(self, path: Path) -> None:
        table = procedure(path)
        assert set(table) <= TOP_KEYS
        for kind, keys in NEED_KEYS.items():
            for need in table[kind]:
                assert set(need) <= keys, need

    def test_warns_and_defers_to_the_maker(self, path: Path) -> None:
        cautions = procedure(path)["cautions"]
        assert LAST_CAUTION in cautions
        assert len(cautions) >= 4

    def test_has_torque_ids_of_its_own(self, path: Path) -> None:
        ids = [torque["id"] for torque in procedure(path)["torque"]]
        assert len(ids) == len(set(ids))

    def test_calls_for_an_angle_gauge_when_a_step_is_an_angle(self, path: Path) -> None:
        table = procedure(path)
        angles = [step for torque in table["torque"] for step in torque.get("steps", ()) if step.startswith("+")]
        if angles:
            assert any("angle gauge" in tool["need"] for tool in table["tool"]), angles

    def test_calls_for_a_new_piece_for_each_one_time_fastener(self, path: Path) -> None:
        table = procedure(path)
        for torque in table["torque"]:
            if torque.get("replace"):
                assert replacements(table, torque["fastener"]) >= torque["count"], torque["fastener"]

    def test_asks_for_ten_needs_or_more(self, path: Path) -> None:
        table = procedure(path)
        assert sum(len(table[kind]) for kind in NEED_KEYS) >= 10


def replacements(table: Table, fastener: str) -> int:
    return sum(int(line["amount"]) for line in table["consumable"] if line["need"].startswith(fastener))


def any_torque(test: Callable[[Table], object]) -> bool:
    return any(test(torque) for torque in torques())


FEATURES: dict[str, Callable[[], object]] = {
    "small torque in in-lb with a fallback": lambda: any_torque(
        lambda t: "in-lb" in t["spec"] and t.get("without_wrench") == "snug, then 1/8 turn"
    ),
    "range": lambda: re.search(r"\d-\d", specs()),
    "tolerance in percent": lambda: any_torque(lambda t: "%" in t.get("tolerance", "")),
    "tolerance in the spec": lambda: "±" in specs(),
    "newton metres": lambda: "N·m" in specs(),
    "foot pounds": lambda: "ft-lb" in specs(),
    "pound feet": lambda: "lb-ft" in specs(),
    "slash notation": lambda: "in/lb" in specs(),
    "kgf·cm": lambda: "kgf·cm" in specs(),
    "kgf·m": lambda: "kgf·m" in specs(),
    "torque, then angle": lambda: any_torque(lambda t: any(s.startswith("+") for s in t.get("steps", ()))),
    "one-time fastener": lambda: any_torque(lambda t: t.get("replace")),
    "left-hand thread": lambda: any_torque(lambda t: t.get("direction") == "left-hand"),
    "thread-forming screws": lambda: any_torque(lambda t: t.get("thread_forming") and "by hand" in t["order"]),
    "crowfoot with its offset": lambda: any_torque(lambda t: "offset" in t.get("reach", {})),
    "extension on the way": lambda: any_torque(lambda t: "extension" in t.get("reach", {})),
    "order with passes": lambda: any_torque(lambda t: "passes" in t.get("order", "")),
    "external six-lobe": lambda: re.search(r"E\d+ external six-lobe", tool_needs()),
    "internal six-lobe": lambda: re.search(r"T\d+ internal six-lobe", tool_needs()),
    "hex bit": lambda: "hex bit socket" in tool_needs(),
    "flare-nut wrench": lambda: "flare-nut wrench" in tool_needs(),
    "universal joint": lambda: any_torque(lambda t: t.get("reach", {}).get("joint")),
    "parts moved over": lambda: any(table.get("moves") for _, table in everything()),
    "open ports to cover": lambda: any(table.get("covers") for _, table in everything()),
    "forbidden substitute": lambda: any(line.get("never") for _, t in everything() for line in t["consumable"]),
    "optional need": lambda: any(line.get("optional") for _, t in everything() for line in t["consumable"]),
    "another tool instead": lambda: any(line.get("instead") for _, t in everything() for line in t["tool"]),
    "several at once": lambda: any(line.get("count", 1) > 1 for _, t in everything() for line in t["tool"]),
}


@pytest.mark.parametrize("feature", FEATURES.values(), ids=FEATURES.keys())
def test_the_procedures_together_show(feature: Callable[[], object]) -> None:
    assert feature()


@pytest.mark.parametrize(
    "word", ["cold", "battery", "pressure", "stands", "airbag", "hot", "dust", "solvent", "gloves"]
)
def test_the_cautions_speak_of(word: str) -> None:
    cautions = " ".join(caution for _, table in everything() for caution in table["cautions"]).lower()
    assert word in cautions


def test_there_are_enough_of_everything() -> None:
    assert len(PROCEDURES) >= 14
    assert len(rows("torque_wrenches.csv")) >= 12
    assert sum(len(rows(name)) for name in ("tools.csv", "torque_wrenches.csv", "consumables.csv")) >= 250
    assert 2 <= len(rows("loans.csv")) <= 4


@pytest.mark.parametrize("name", COLUMNS)
def test_the_columns_are_those_of_the_format(name: str) -> None:
    with (SEED / name).open(encoding="utf-8", newline="") as file:
        assert next(csv.reader(file)) == COLUMNS[name].split()
    assert all(None not in row and None not in row.values() for row in rows(name))


def test_tags_are_unique_and_references_resolve() -> None:
    tags = [row["tag"] for name in ("tools.csv", "torque_wrenches.csv", "consumables.csv") for row in rows(name)]
    assert len(tags) == len(set(tags))
    assert {row["tag"] for row in rows("loans.csv")} <= set(tags)
    suppliers = {row["name"] for row in rows("suppliers.csv")}
    assert {row["supplier"] for row in rows("consumables.csv")} - {""} <= suppliers
    assert all(name.endswith("(invented)") for name in suppliers)


def test_wrenches_are_of_many_kinds() -> None:
    wrenches = rows("torque_wrenches.csv")
    assert {"click", "fixed", "non-graduated", "dial", "beam", "electronic"} <= {row["mechanism"] for row in wrenches}
    assert {"N·m", "in-lb", "ft-lb", "kgf·cm"} <= {row["unit"] for row in wrenches}
    assert any(row["second_unit"] for row in wrenches)
    assert any(not row["lever_mm"] for row in wrenches)
    assert any(not row["calibrated_on"] for row in wrenches)
    assert any(row["condition"] == "damaged" for row in wrenches)


def test_no_calibration_changes_its_state_within_a_year() -> None:
    for row in rows("torque_wrenches.csv"):
        if row["calibrated_on"]:
            year = dt.date.fromisoformat(row["calibrated_on"]).year + int(row["interval_months"]) // 12
            due = dt.date.fromisoformat(row["calibrated_on"]).replace(year=year)
            assert due < TODAY or due > A_YEAR_LATER, row["tag"]


def test_no_lot_changes_its_state_within_a_year() -> None:
    for row in rows("consumables.csv"):
        if row["expires_on"]:
            end = dt.date.fromisoformat(row["expires_on"])
            assert end < TODAY or end > A_YEAR_LATER, row["tag"]


def test_the_throttle_body_job_lacks_what_the_guide_says() -> None:
    quarter = [row for row in rows("tools.csv") if re.search(r"1/4 ?dr|1/4 drive|quarter", row["description"], re.I)]
    assert not [row for row in quarter if re.search(r"\b10 ?mm", row["description"], re.I)]
    assert [row["tag"] for row in quarter if "10 mm (missing)" in row["contents"]] == ["SK-001"]
    shelf = " ".join(row["description"] for row in rows("consumables.csv")).lower()
    assert "throttle" not in shelf.replace("gasket, throttle body", "")
    assert "brake parts cleaner" in shelf
    assert "TS-01" in {row["tag"] for row in rows("loans.csv")}


def test_the_guide_lists_every_procedure_once() -> None:
    guide = (ROOT / "docs" / "demo-world.md").read_text(encoding="utf-8")
    listed = re.findall(r"^\| ([a-z-]+) \| [^|]+ \| (?:NOT )?READY \|", guide, re.M)
    assert listed == [path.stem for path in PROCEDURES]


RENEWED = {
    "alternator": "alternator",
    "front-brakes": "brake pad set",
    "front-hub-bearing": "wheel bearing kit",
    "fuel-line": "fuel feed pipe",
    "spark-plugs": "spark plug,",
    "suspension-arm": "lower suspension arm",
    "thermostat-housing": "thermostat housing,",
    "timing-belt-tensioner": "timing belt kit",
    "water-pump": "water pump,",
}


@pytest.mark.parametrize("name", RENEWED)
def test_a_job_that_renews_a_part_asks_for_the_part(name: str) -> None:
    table = tomllib.loads((ROOT / "procedures" / f"{name}.toml").read_text(encoding="utf-8"))
    assert any(need["need"].startswith(RENEWED[name]) for need in table["consumable"])
