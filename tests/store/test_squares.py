"""The crib's own limits of squares: squares.csv, and what rests on it. All values are invented."""

from __future__ import annotations

from pathlib import Path

import pytest

from cribkit.desk.check import check
from cribkit.desk.gaps import find_gaps
from cribkit.desk.keeping import load_folder
from cribkit.desk.results import Status
from cribkit.desk.wrenches import covering, question
from cribkit.domain.problem import BadInput
from cribkit.store.opening import open_crib
from cribkit.store.seed.export import export
from tests.desk.world import DAY, job, torque
from tests.store.small import ENTRY, make_crib, write_folder

HEAD = "square,limit_nm,note\n"
JOB = job(torque("12 N·m", tolerance="10 %", head="10 mm hex"))  # at most 13.2 N·m over a 1/4 square


def load_squares(crib: Path, text: str) -> list[tuple[str, object, object]]:
    """Load a squares.csv alone; what it changed."""
    folder = write_folder(crib.parent / "own", squares=text)
    for path in folder.glob("*.csv"):
        if path.name != "squares.csv":
            path.unlink()
    done, _ = load_folder(crib, folder, ENTRY)
    return [(one.tag, one.before, one.after) for one in done.changes]


def test_the_crib_s_own_limit_holds_in_check_covers_and_gaps(tmp_path: Path) -> None:
    path = make_crib(tmp_path)
    assert load_squares(path, HEAD + "6.3 mm,13,label\n") == [("square 1/4", None, 13.0)]
    with open_crib(path) as crib:
        line = check(crib, (JOB,), DAY).torques[0]
        assert line.status is not Status.READY
        assert "the 1/4 square bears 13 N·m, the fastener asks for 13.2 N·m" in line.why
        assert not covering(crib, question("12 N·m", "10 %", drive="1/4"), DAY).covered
        assert find_gaps(crib, (JOB,), DAY, ()).gaps[0].cause == ("drive-too-small",)
    assert load_squares(path, HEAD + "1/4,14,label\n") == [("square 1/4", 13.0, 14.0)]
    with open_crib(path) as crib:
        assert check(crib, (JOB,), DAY).torques[0].status is Status.READY
        assert covering(crib, question("12 N·m", "10 %", drive="1/4"), DAY).covered
        assert find_gaps(crib, (JOB,), DAY, ()).gaps == ()


def test_a_limit_that_the_file_no_longer_has_is_the_table_s_again(tmp_path: Path) -> None:
    path = make_crib(tmp_path)
    load_squares(path, HEAD + "1/4,13,\n1/2,90,\n")
    assert load_squares(path, HEAD + "1/2,90,\n") == [("square 1/4", 13.0, None)]
    with open_crib(path) as crib:
        assert crib.square_limits() == {"1/2": 90.0}
    assert load_squares(path, HEAD) == [("square 1/2", 90.0, None)]


def test_export_writes_the_limits_and_they_load_back(tmp_path: Path) -> None:
    path = make_crib(tmp_path)
    with open_crib(path) as crib:
        assert "squares.csv" not in {file.name for file in export(crib, tmp_path / "none")}
    load_squares(path, HEAD + "1/2,90,label of the sockets\n1/4,13.5,\n")
    with open_crib(path) as crib:
        export(crib, tmp_path / "out")
    assert (tmp_path / "out" / "squares.csv").read_text() == HEAD + "1/4,13.5,\n1/2,90,label of the sockets\n"
    again = tmp_path / "again.db"
    load_folder(again, tmp_path / "out", ENTRY)
    with open_crib(again) as crib:
        assert crib.square_limits() == {"1/4": 13.5, "1/2": 90.0}


@pytest.mark.parametrize(
    ("row", "code"),
    [
        ("5/8,90,", "bad-square"),
        ("1/4,0,", "bad-positive"),
        ("1/4,,", "blank-cell"),
        ("1/4,9,\n6.3,8,", "double-square"),
    ],
)
def test_a_bad_row_changes_nothing(tmp_path: Path, row: str, code: str) -> None:
    path = make_crib(tmp_path)
    with pytest.raises(BadInput) as caught:
        load_squares(path, HEAD + row + "\n")
    assert [problem.code for problem in caught.value.problems] == [code]
    with open_crib(path) as crib:
        assert crib.square_limits() == {}
