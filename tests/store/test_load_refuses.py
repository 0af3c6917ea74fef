"""A load lists every problem of every file with its line, and changes nothing if there is one."""

from __future__ import annotations

from pathlib import Path

import pytest

from cribkit.desk.keeping import load_folder
from cribkit.domain.problem import BadInput
from tests.store.small import ENTRY, write_folder

TOOL = "tag,description,quantity\n"
WRENCH = "tag,mechanism,range_min,range_max,unit,graduation\n"
BAG = "C,rags,each,1,L,,,,,,\n"
STUFF = "tag,description,unit,on_hand,lot,expires_on,pack,min,max,supplier,hazards\n"


def refusals(folder: Path) -> list[str]:
    """What a load of the folder is refused with, as "place code"."""
    with pytest.raises(BadInput) as refused:
        load_folder(folder.parent / "new.db", folder, ENTRY)
    assert not (folder.parent / "new.db").exists(), "a refused load leaves no crib behind"
    assert all(problem.next for problem in refused.value.problems), "each problem says what to do"
    return [f"{problem.source} {problem.code}" for problem in refused.value.problems]


CASES = {
    "unknown column": ("tools", "tag,description,quantitty\nA,b,1\n", "1 unknown-column"),
    "missing column": ("tools", "tag,quantity\nA,1\n", "1 missing-column"),
    "column twice": ("tools", "tag,description,tag\nA,b,C\n", "1 double-column"),
    "empty file": ("tools", "\n \n", "1 empty-file"),
    "semicolons": ("tools", "tag;description\nA;b\n", "1 not-commas"),
    "blank tag": ("tools", TOOL + ",hammer,1\n", "2 blank-cell"),
    "tag with a space": ("tools", TOOL + "A 1,hammer,1\n", "2 bad-tag"),
    "too many cells": ("tools", TOOL + "A,hammer, ball peen,1\n", "2 too-many-cells"),
    "negative quantity": ("tools", TOOL + "A,hammer,-1\n", "2 bad-pieces"),
    "half a tool": ("tools", TOOL + "A,hammer,0.5\n", "2 bad-pieces"),
    "NaN": ("tools", TOOL + "A,hammer,NaN\n", "2 bad-pieces"),
    "infinity": ("tools", TOOL + "A,hammer,inf\n", "2 bad-pieces"),
    "huge exponent": ("tools", TOOL + "A,hammer,1e300\n", "2 bad-pieces"),
    "tag twice": ("tools", TOOL + "A,hammer,1\na,mallet,1\n", "3 double-tag"),
    "after quoted lines": ("tools", TOOL + 'A,"hammer\nball\npeen",1\nB,mallet,x\n', "5 bad-pieces"),
    "quote never closed": ("tools", TOOL + 'A,hammer,1\nB,"mallet,1\nC,pick,1\n', "3 broken-csv"),
    "one megabyte in a cell": ("tools", TOOL + f"A,{'x' * 1_000_000},1\n", "2 cell-too-long"),
    "control character": ("tools", TOOL + "A,ham\x1b[2Jmer,1\n", "2 not-text"),
    "NUL": ("tools", TOOL + "A,ham\0mer,1\n", "2 not-text"),
    "unknown condition": ("tools", "tag,description,condition\nA,hammer,fine\n", "2 bad-condition"),
    "unknown torque unit": ("torque_wrenches", WRENCH + "T,click,5,25,furlong,1\n", "2 bad-torque-unit"),
    "unknown mechanism": ("torque_wrenches", WRENCH + "T,magic,5,25,N·m,1\n", "2 bad-mechanism"),
    "falling scale": ("torque_wrenches", WRENCH + "T,click,25,5,N·m,1\n", "2 scale-falls"),
    "no graduation": ("torque_wrenches", WRENCH + "T,click,5,25,N·m,\n", "2 no-graduation"),
    "no such day": ("consumables", STUFF + "C,rags,each,1,,31/02/2026,,,,,\n", "2 bad-expiry"),
    "30 February": ("consumables", STUFF + "C,rags,each,1,,2026-02-30,,,,,\n", "2 bad-expiry"),
    "month 13": ("consumables", STUFF + "C,rags,each,1,,2026-13,,,,,\n", "2 bad-expiry"),
    "unknown unit": ("consumables", STUFF + "C,rags,box,1,,,,,,,\n", "2 bad-stock-unit"),
    "decimal comma": ("consumables", STUFF + 'C,rags,each,"1,5",,,,,,,\n', "2 bad-number"),
    "empty pack": ("consumables", STUFF + "C,rags,each,1,,,0,,,,\n", "2 bad-positive"),
    "min above max": ("consumables", STUFF + "C,rags,each,1,,,1,5,4,,\n", "2 min-above-max"),
    "no such supplier": ("consumables", STUFF + "C,rags,each,1,,,1,,,Nobody,\n", "2 unknown-supplier"),
    "no such hazard": ("consumables", STUFF + "C,rags,each,1,,,1,,,,GHS10\n", "2 bad-hazards"),
    "same lot twice": ("consumables", STUFF + BAG + BAG, "3 double-tag"),
    "lots that differ": ("consumables", STUFF + BAG + "C,wipes,each,2,M,,,,,,\n", "3 double-tag"),
    "supplier twice": (
        "suppliers",
        "name,lead_days\nMarsh Lane (invented),2\nmarsh lane (invented),3\n",
        "3 double-supplier",
    ),
    "loan of nothing": ("loans", "tag,by,since\nNO-1,R. Holm,2026-11-20\n", "2 unknown-tag"),
    "loan of too many": ("loans", "tag,by,since,quantity\nSK-8,R. Holm,2026-11-20,3\n", "2 too-much-out"),
    "loan from which lot": ("loans", "tag,by,since\nCL-1,R. Holm,2026-11-20\n", "2 unknown-lot"),
}


@pytest.mark.parametrize(("file", "text", "expected"), CASES.values(), ids=CASES.keys())
def test_a_bad_row_is_refused_with_its_place(tmp_path: Path, file: str, text: str, expected: str) -> None:
    others = {"loans": ""} if file != "loans" else {}
    assert refusals(write_folder(tmp_path / "files", **others, **{file: text})) == [f"{file}.csv:{expected}"]


def test_all_problems_of_all_files_come_at_once(tmp_path: Path) -> None:
    folder = write_folder(
        tmp_path / "files",
        tools=TOOL + "A,hammer,-1\nB B,mallet,x\nTW-1,pick,1\n",
        consumables=STUFF + "C,rags,box,-1,,2026-02-30,,,,,\n",
        loans="tag,by,since\nA,,yesterday\n",
    )
    assert sorted(refusals(folder)) == [
        "consumables.csv:2 bad-expiry",
        "consumables.csv:2 bad-number",
        "consumables.csv:2 bad-stock-unit",
        "loans.csv:2 bad-day",
        "loans.csv:2 blank-cell",
        "tools.csv:2 bad-pieces",
        "tools.csv:3 bad-pieces",
        "tools.csv:3 bad-tag",
        "torque_wrenches.csv:2 double-tag",
    ]


def test_windows_1252_is_refused_with_the_line_and_the_letter(tmp_path: Path) -> None:
    folder = write_folder(tmp_path / "files")
    (folder / "tools.csv").write_bytes(TOOL.encode() + "A,hammer,1\nB,jig for caf\u00e9 doors,1\n".encode("cp1252"))
    with pytest.raises(BadInput) as refused:
        load_folder(tmp_path / "new.db", folder, ENTRY)
    assert str(refused.value) == (
        "tools.csv:3: the file is not UTF-8 (read as Windows-1252 there is a 'é' here): "
        "save the file again as CSV UTF-8."
    )


@pytest.mark.parametrize(
    ("make", "code"),
    [
        (lambda path: None, "no-folder"),
        (lambda path: path.write_text("a file"), "no-folder"),
        (lambda path: path.mkdir(), "no-files"),
    ],
    ids=["not there", "a file", "an empty folder"],
)
def test_a_folder_without_files_is_refused(tmp_path: Path, make: object, code: str) -> None:
    make(tmp_path / "files")  # type: ignore[operator]
    assert [place.rpartition(" ")[2] for place in refusals(tmp_path / "files")] == [code]


def test_a_load_that_fails_on_an_existing_crib_changes_nothing(tmp_path: Path) -> None:
    from tests.store.small import make_crib

    crib = make_crib(tmp_path)
    before = crib.read_bytes()
    folder = write_folder(tmp_path / "next", consumables=STUFF + "SK-8,rags,each,1,,,,,,,\n", tools="", loans="")
    with pytest.raises(BadInput, match="SK-8 is a tool in the crib"):
        load_folder(crib, folder, ENTRY)
    assert crib.read_bytes() == before
