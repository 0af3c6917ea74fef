"""Loading: opening stock as movements, changed words, counts only when asked for, and the way back by export."""

from __future__ import annotations

import csv
import datetime as dt
import stat
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from cribkit.desk.keeping import Loaded, load_folder
from cribkit.domain.stock.item import Condition, Loan, Lot
from cribkit.store.opening import open_crib
from cribkit.store.posting import movements
from cribkit.store.seed.cells import hazards
from cribkit.store.seed.export import export
from tests.store.small import ENTRY, FILES, make_crib, write_folder


def load_again(crib: Path, recount: bool = False, **changed: str) -> Loaded:
    """Load the small files again with some of them changed."""
    folder = write_folder(crib.parent / "again", **changed)
    return load_folder(crib, folder, ENTRY, recount)[0]


def test_items_arrive_with_their_stock_lots_and_loans(tmp_path: Path) -> None:
    with open_crib(make_crib(tmp_path)) as crib:
        cleaner, oil, socket = crib.must_have("CL-1"), crib.must_have("OIL-1"), crib.must_have("sk-8")
        assert cleaner.on_hand == 1800
        assert (cleaner.unit, cleaner.pack) == ("mL", 400)
        assert cleaner.lots == (Lot("T0", 600, dt.date(2026, 12, 31)), Lot("T1", 1200, dt.date(2027, 3, 31)))
        assert (oil.on_hand, oil.unit, oil.pack) == (20_000, "mL", 5000)
        assert (socket.tag, socket.on_hand, socket.location) == ("SK-8", 2, "A1")
        assert crib.must_have("GL-1").on_hand == 200
        assert crib.must_have("PL-1").condition is Condition.DAMAGED
        lent = crib.must_have("TW-2")
        assert (lent.on_hand, lent.loans) == (0, (Loan("R. Holm", dt.date(2026, 11, 20), 1, "wren-31"),))
        assert lent.description == "click torque wrench 40-200 in-lb, 1/4 drive"


def test_opening_stock_enters_as_movements(tmp_path: Path) -> None:
    with open_crib(make_crib(tmp_path)) as crib:
        posted = [(one.kind.value, one.tag, one.lot, one.amount, one.holder) for one in movements(crib)]
    assert ("receive", "SK-8", "", 2000, "") in posted
    assert ("receive", "CL-1", "T0", 600_000, "") in posted
    assert ("receive", "TW-2", "", 1000, "") in posted
    assert ("issue", "TW-2", "", 1000, "R. Holm") in posted
    assert len(posted) == 12


def test_wrenches_carry_scale_and_calibration(tmp_path: Path) -> None:
    with open_crib(make_crib(tmp_path)) as crib:
        first, second = crib.wrenches()
    scale = first.scales[0]
    assert (scale.unit.symbol, scale.low, scale.high, scale.graduation) == ("N·m", 5, 25, 0.25)
    assert (first.accuracy, first.calibrated_on, first.interval_cycles) == (0.04, dt.date(2026, 9, 14), 5000)
    assert (second.scales[0].unit.symbol, second.on_hand, second.loans) == ("in-lb", 0, ("R. Holm",))


def test_loading_the_same_folder_again_changes_nothing(tmp_path: Path) -> None:
    crib = make_crib(tmp_path)
    before = crib.read_bytes()
    assert load_again(crib).nothing_new
    assert crib.read_bytes() == before


def test_changed_words_update_the_item_and_its_meaning(tmp_path: Path) -> None:
    crib = make_crib(tmp_path)
    done = load_again(crib, tools=FILES["tools.csv"].replace("10 mm socket, 1/4", "11 mm socket, 1/4"))
    assert [(one.tag, one.column) for one in done.changes] == [("SK-10", "description")]
    with open_crib(crib) as opened:
        assert opened.must_have("SK-10").meaning.text == "11 mm socket, 1/4 drive, 6 point"


@pytest.mark.parametrize("recount", [False, True], ids=["shown only", "with --recount"])
def test_a_changed_quantity_is_posted_only_when_asked_for(tmp_path: Path, recount: bool) -> None:
    crib = make_crib(tmp_path)
    done = load_again(
        crib,
        recount,
        tools=FILES["tools.csv"].replace('6 point",2', '6 point",5'),
        consumables=FILES["consumables.csv"].replace("400,1.5", "400,1"),
    )
    assert [(one.tag, one.lot, one.ledger, one.file) for one in done.recounts] == [
        ("SK-8", "", 2, 5),
        ("CL-1", "T0", 600, 400),
    ]
    with open_crib(crib) as opened:
        assert opened.must_have("SK-8").on_hand == (5 if recount else 2)
        assert opened.must_have("CL-1").on_hand == (1600 if recount else 1800)
        assert len(movements(opened, "kind = 'count'")) == (2 if recount else 0)


def test_a_tool_on_loan_still_counts_in_its_quantity(tmp_path: Path) -> None:
    crib = make_crib(tmp_path, loans="tag,by,since,quantity\nSK-8,R. Holm,2026-11-20,1\n")
    assert load_again(crib, loans="").recounts == []


def test_tags_that_the_files_no_longer_have_are_listed_and_left_alone(tmp_path: Path) -> None:
    crib = make_crib(tmp_path)
    done = load_again(crib, tools=FILES["tools.csv"].replace("PL-1,long nose pliers,1,A4,damaged,,tip bent\n", ""))
    assert done.vanished == ("PL-1",)
    assert done.nothing_new
    with open_crib(crib) as opened:
        assert opened.item("PL-1") is not None


def test_a_description_that_cannot_be_read_is_reported_worst_first(tmp_path: Path) -> None:
    tools = FILES["tools.csv"] + "XX-1,zorblat frimble,1,,,,\n"
    done = load_folder(tmp_path / "crib.db", write_folder(tmp_path / "files", tools=tools), ENTRY)[0]
    assert done.unread[0].tag == "XX-1"
    assert done.unread[0].family == ""


def test_a_byte_order_mark_is_no_part_of_the_first_column(tmp_path: Path) -> None:
    folder = write_folder(tmp_path / "files")
    text = (folder / "tools.csv").read_bytes()
    (folder / "tools.csv").write_bytes(b"\xef\xbb\xbf" + text)
    load_folder(tmp_path / "crib.db", folder, ENTRY)
    with open_crib(tmp_path / "crib.db") as crib:
        assert crib.item("SK-8") is not None


def test_a_guarded_cell_is_taken_back(tmp_path: Path) -> None:
    tools = "tag,description,note\nA,hammer,'=1+1\nB,mallet,=1+1\nC,pick,'-x\n"
    crib = make_crib(tmp_path, tools=tools)
    with open_crib(crib) as opened:
        notes = [opened.must_have(tag).note for tag in "ABC"]
        export(opened, tmp_path / "out")
    assert notes == ["=1+1", "=1+1", "-x"]
    with (tmp_path / "out" / "tools.csv").open(encoding="utf-8", newline="") as file:
        assert [row["note"] for row in csv.DictReader(file)] == ["'=1+1", "'=1+1", "'-x"]


def test_the_crib_and_its_export_belong_to_their_owner_alone(tmp_path: Path) -> None:
    crib = make_crib(tmp_path)
    with open_crib(crib) as opened:
        written = export(opened, tmp_path / "out")
    for path in (crib, *written):
        assert stat.S_IMODE(path.stat().st_mode) == 0o600


def test_a_new_crib_leaves_nothing_beside_it(tmp_path: Path) -> None:
    make_crib(tmp_path)
    assert sorted(path.name for path in tmp_path.iterdir()) == ["crib.db", "files"]


WORDS = st.text(st.characters(codec="utf-8", exclude_categories=["C", "Z"]) | st.just(" "), max_size=12)
TAGS = st.from_regex(r"[A-Z]{1,3}-[0-9]{1,4}", fullmatch=True)
LOTS = st.from_regex(r"[A-Z0-9]{0,4}", fullmatch=True)
AMOUNTS = st.integers(0, 5000).map(lambda number: number / 1000)
DAYS = st.dates(dt.date(2020, 1, 1), dt.date(2040, 12, 31)).map(dt.date.isoformat) | st.just("")


@st.composite
def folders(draw: st.DrawFn) -> dict[str, list[list[str]]]:
    """Rows of tools, consumables and loans in every notation that a load accepts."""
    tags = draw(st.lists(TAGS, min_size=2, max_size=6, unique=True))
    middle = len(tags) // 2
    rows: dict[str, list[list[str]]] = {
        "tools": [["tag", "description", "quantity", "location", "contents", "note"]],
        "consumables": [["tag", "description", "unit", "pack", "on_hand", "lot", "expires_on", "traits", "note"]],
        "loans": [["tag", "by", "since", "quantity", "job"]],
    }
    for tag in tags[:middle]:
        owned = draw(st.integers(0, 9))
        rows["tools"].append([tag, f"tool {draw(WORDS)}", str(owned), draw(WORDS), draw(WORDS), draw(WORDS)])
        if owned and draw(st.booleans()):
            rows["loans"].append(
                [tag, f"R. {draw(WORDS)}", "2026-11-20", str(draw(st.integers(1, owned))), draw(WORDS)]
            )
    for tag in tags[middle:]:
        unit, pack = (
            draw(st.sampled_from(["each", "mL", "L", "kg", "m"])),
            draw(st.sampled_from(["1", "0.7", "3", "400"])),
        )
        words = [f"stuff {draw(WORDS)}", draw(WORDS)]
        for lot in draw(st.lists(LOTS, min_size=1, max_size=3, unique=True)):
            stock = [unit, pack, str(draw(AMOUNTS)), lot, draw(DAYS)]
            rows["consumables"].append([tag, words[0], *stock, words[1], ""])
    return rows


def as_csv(rows: list[list[str]]) -> str:
    """Rows as a person's program writes them: every cell in quotation marks."""
    return "".join(",".join('"' + cell.replace('"', '""') + '"' for cell in row) + "\n" for row in rows)


def state(crib: Path) -> list[list[tuple[object, ...]]]:
    """Everything that a crib says about its stock."""
    queries = (
        "SELECT tag, kind, description, location, condition, unit, pack, contents, traits, note, meaning FROM item",
        "SELECT tag, lot, inside, outside FROM balance WHERE inside + outside > 0 ORDER BY tag, lot",
        "SELECT tag, lot, holder, job, amount, since FROM loan ORDER BY tag, lot, holder, job",
        "SELECT * FROM consumable ORDER BY tag",
        "SELECT lot.tag, lot.lot, expires_on FROM lot JOIN balance USING (tag, lot) WHERE inside > 0 ORDER BY 1, 2",
    )
    with open_crib(crib) as opened:
        return [sorted(opened.connection.execute(query), key=repr) for query in queries]


@given(folders())
def test_load_export_load_gives_the_same_crib(
    tmp_path_factory: pytest.TempPathFactory, rows: dict[str, list[list[str]]]
) -> None:
    place = tmp_path_factory.mktemp("crib")
    files = {name: as_csv(lines) for name, lines in rows.items()}
    first = make_crib(place, torque_wrenches="", suppliers="", **files)
    with open_crib(first) as opened:
        export(opened, place / "out")
    load_folder(place / "second.db", place / "out", ENTRY)
    assert state(place / "second.db") == state(first)
    assert load_folder(first, place / "out", ENTRY)[0].nothing_new


def test_what_happened_to_an_item_stands_although_the_same_files_are_loaded_again(tmp_path: Path) -> None:
    crib = make_crib(tmp_path)
    with open_crib(crib, write=True) as opened:
        opened.connection.execute("UPDATE item SET condition = 'damaged' WHERE tag = 'TW-1'")
    assert load_again(crib).nothing_new
    with open_crib(crib) as opened:
        assert opened.must_have("TW-1").condition is Condition.DAMAGED
    changed = FILES["tools.csv"].replace("RA-1,1/4 drive ratchet,1,A2,ok", "RA-1,1/4 drive ratchet,1,A2,damaged")
    assert [(one.tag, one.column) for one in load_again(crib, tools=changed).changes] == [("RA-1", "condition")]
    assert [(one.tag, one.column) for one in load_again(crib).changes] == [("RA-1", "condition")]


@pytest.mark.parametrize(
    ("cell", "kept"),
    [
        ("GHS02;GHS07", "GHS02;GHS07"),
        ("H222; H229", "H222;H229"),
        ("H222+H229", "H222+H229"),
        ("euh066, h360fd", "EUH066;H360FD"),
        ("P410 + P412", "P410+P412"),
    ],
)
def test_pictograms_and_statements_of_the_ghs_are_taken(cell: str, kept: str) -> None:
    # CLP Annex I table 2.3.1: aerosols carry H222 + H229 and P410+P412.
    assert hazards(cell) == kept
