"""Each blind set is fit to measure with: every tag exists, no label contradicts another, a third has no answer.

Nothing here reads a description: a set must not depend on what it measures.
"""

from __future__ import annotations

import csv
from collections import Counter
from pathlib import Path

import pytest

from tests.wording.scorer import OTHERS

HERE = Path(__file__).parent
LABELS = ("right", "doubt", "either")
STOCK = {
    "tools.csv": ("tag", "description"),
    "torque_wrenches.csv": (
        "tag",
        "mechanism",
        "range_min",
        "range_max",
        "unit",
        "graduation",
        "drive",
    ),
    "consumables.csv": ("tag", "description", "unit", "on_hand"),
}
# The least number of items, torque wrenches, consumables and needs of each set; some are smaller or larger ones.
LEAST = dict.fromkeys(OTHERS, (200, 10, 60, 370)) | {
    "blind": (300, 15, 90, 380),
    "second": (300, 15, 90, 380),
    "third": (300, 15, 90, 370),
    "fourth": (200, 10, 60, 250),
    "fiftyseventh": (150, 10, 60, 300),
    "fiftyeighth": (150, 10, 60, 300),
    "fiftyninth": (150, 10, 60, 370),
}
# Classes of one set whose needs are all met, or to be confirmed.
ALL_FOUND = {("nineteenth", "threadlockers"), ("thirtysixth", "chemicals")}
UNITS = {"each", "mL", "L", "g", "kg", "mm", "m"}


@pytest.fixture(params=list(LEAST))
def folder(request: pytest.FixtureRequest) -> Path:
    """One of the sets; they are independent of each other and held to the same rules."""
    return HERE / str(request.param)


def rows(folder: Path, name: str) -> list[dict[str, str]]:
    """The rows of one of the files, in order; a row with too many cells is refused."""
    with (folder / name).open(encoding="utf-8", newline="") as handle:
        found = list(csv.DictReader(handle, strict=True))
    assert all(None not in row and None not in row.values() for row in found), name
    return found


def tags(cell: str) -> list[str]:
    """The tags of one label cell."""
    return cell.split(";") if cell else []


def stocked(folder: Path) -> list[str]:
    """Every tag in the crib, repeats kept."""
    return [row["tag"] for name in STOCK for row in rows(folder, name)]


@pytest.mark.parametrize("name", STOCK)
def test_every_item_has_what_the_seed_inventory_requires(folder: Path, name: str) -> None:
    lacking = [(row["tag"], column) for row in rows(folder, name) for column in STOCK[name] if not row[column]]
    assert lacking == []


def test_tags_are_unique_across_the_crib(folder: Path) -> None:
    assert [tag for tag, times in Counter(stocked(folder)).items() if times > 1] == []


def test_descriptions_are_unique_so_that_a_label_cannot_mean_its_twin(folder: Path) -> None:
    seen = Counter(row["description"].lower() for name in STOCK for row in rows(folder, name))
    assert [text for text, times in seen.items() if times > 1] == []


def test_units_and_numbers_are_those_of_the_seed_inventory(folder: Path) -> None:
    for row in rows(folder, "consumables.csv"):
        assert row["unit"] in UNITS
        assert float(row["on_hand"]) >= 0
        assert float(row["pack"]) > 0
    for row in rows(folder, "torque_wrenches.csv"):
        assert 0 <= float(row["range_min"]) <= float(row["range_max"])
        assert float(row["graduation"]) > 0


def test_need_ids_and_texts_are_unique(folder: Path) -> None:
    for column in ("id", "need"):
        seen = Counter(row[column].lower() for row in rows(folder, "needs.csv"))
        assert [text for text, times in seen.items() if times > 1 or not text.strip()] == []


def test_every_label_names_a_stocked_tag_once_and_in_one_column_only(folder: Path) -> None:
    crib = set(stocked(folder))
    for row in rows(folder, "needs.csv"):
        named = [tag for label in LABELS for tag in tags(row[label])]
        assert set(named) <= crib, row["id"]
        assert len(named) == len(set(named)), row["id"]


def test_a_need_of_one_kind_is_answered_by_items_of_that_kind(folder: Path) -> None:
    consumables = {row["tag"] for row in rows(folder, "consumables.csv")}
    for row in rows(folder, "needs.csv"):
        assert row["kind"] in ("tool", "consumable", "")
        named = {tag for label in LABELS for tag in tags(row[label])}
        if row["kind"]:
            assert (named <= consumables) if row["kind"] == "consumable" else not named & consumables


def test_a_need_sent_to_a_person_only_says_why(folder: Path) -> None:
    silent = [
        row["id"]
        for row in rows(folder, "needs.csv")
        if not row["right"] and (row["doubt"] or row["either"]) and not row["note"]
    ]
    assert silent == []


def test_the_set_is_large_and_a_third_of_it_must_be_refused(folder: Path) -> None:
    needs = rows(folder, "needs.csv")
    refused = [row for row in needs if not any(row[label] for label in LABELS)]
    items, wrenches, consumables, least_needs = LEAST[folder.name]
    assert len(stocked(folder)) >= items
    assert len(rows(folder, "torque_wrenches.csv")) >= wrenches
    assert len(rows(folder, "consumables.csv")) >= consumables
    assert len(needs) >= least_needs
    assert 0.3 <= len(refused) / len(needs) <= 0.36


def test_every_class_has_needs_to_find_and_needs_to_refuse(folder: Path) -> None:
    needs = rows(folder, "needs.csv")
    for name in {row["class"] for row in needs}:
        group = [row for row in needs if row["class"] == name]
        assert any(row["right"] for row in group), name
        none = any(not any(row[label] for label in LABELS) for row in group)
        assert none or (folder.name, name) in ALL_FOUND, name


def counted(name: str, group: list[dict[str, str]]) -> str:
    """One line of the table of counts in the README."""
    refused = sum(not any(row[label] for label in LABELS) for row in group)
    right, doubt = (sum(bool(row[label]) for row in group) for label in ("right", "doubt"))
    return f"| {name} | {len(group)} | {right} | {refused} | {doubt} |"


def test_the_readme_states_the_counts_by_class(folder: Path) -> None:
    readme = (folder / "README.md").read_text(encoding="utf-8").splitlines()
    needs = rows(folder, "needs.csv")
    classes = list(dict.fromkeys(row["class"] for row in needs))
    for name in classes:
        assert counted(name, [row for row in needs if row["class"] == name]) in readme
    assert counted("all", needs) in readme
    for file in (*STOCK, "needs.csv"):
        assert any(line.startswith(f"| {file} | {len(rows(folder, file))} |") for line in readme)
