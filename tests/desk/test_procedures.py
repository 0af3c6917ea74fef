"""Finding procedures by id or by file."""

import shutil
from pathlib import Path

import pytest

from cribkit.desk import procedures as desk
from cribkit.desk.procedures import all_procedures, find_procedure, find_procedures, lint, read_file
from cribkit.domain.problem import BadInput
from cribkit.store.demo_folder import demo_folder

TEXT = """\
id = "{id}"
title = "Invented {id}"
applies_to = "Wren van"
source = "Invented for this test."
"""


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """Three procedures; one stands in a file of another name."""
    for name, identity in [("plenum", "plenum"), ("pump", "pump"), ("old-name", "hub")]:
        (tmp_path / f"{name}.toml").write_text(TEXT.format(id=identity), encoding="utf-8")
    return tmp_path


def refused(call: object, *args: object, **named: object) -> list[str]:
    """What a refusal says."""
    with pytest.raises(BadInput) as caught:
        call(*args, **named)  # type: ignore[operator]  # any of the functions under test
    return str(caught.value).splitlines()


@pytest.mark.parametrize("name", ["plenum", "pump", "hub"])
def test_a_procedure_is_found_by_its_id(folder: Path, name: str) -> None:
    assert find_procedure(name, folder).title == f"Invented {name}"


def test_a_procedure_is_found_by_its_file(folder: Path) -> None:
    assert find_procedure(str(folder / "old-name.toml")).id == "hub"


def test_without_a_folder_procedures_here_is_meant(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (folder / "here").mkdir()
    shutil.copytree(folder, folder / "here" / "procedures", ignore=shutil.ignore_patterns("here"))
    monkeypatch.chdir(folder / "here")
    assert find_procedure("pump").file == "procedures/pump.toml"


def test_the_demo_has_its_own_folder() -> None:
    assert find_procedure("plenum-reseal", demo=True).id == "plenum-reseal"
    assert len(all_procedures(demo=True)) >= 14
    assert (demo_folder("seed_inventory") / "tools.csv").is_file()


def test_an_unknown_id_names_the_nearest(folder: Path) -> None:
    assert refused(find_procedure, "plenun", folder) == [
        f"{folder}: no procedure has the id 'plenun': did you mean plenum or pump?"
    ]
    assert refused(find_procedure, "xyz", folder) == [
        f"{folder}: no procedure has the id 'xyz': `cribkit procedures` lists the 3 there are."
    ]


def test_several_unknown_ids_are_told_at_once(folder: Path) -> None:
    assert len(refused(find_procedures, ["pump", "plenun", "hubb"], folder)) == 2


def test_a_missing_folder_and_an_empty_one_are_told(tmp_path: Path) -> None:
    (tmp_path / "empty").mkdir()
    assert refused(find_procedure, "pump", tmp_path / "none") == [
        f"{tmp_path}/none: the procedures cannot be read: No such file or directory: "
        "name a folder with --procedures, or use --demo."
    ]
    assert refused(all_procedures, tmp_path / "empty") == [
        f"{tmp_path}/empty: the folder has no .toml file: name another folder."
    ]


@pytest.mark.parametrize(
    ("data", "said"),
    [
        (b"id = \"caf\xe9\"\n", "p.toml:1: the file is not UTF-8: save it as UTF-8."),
        (b"id = \"a\"\n\xff\xd8", "p.toml:2: the file is not UTF-8: save it as UTF-8."),
        (b"# long\n" * 200_000, "p.toml: the file is too long to be a procedure: name its TOML file."),
        (b"", "p.toml:1: 'applies_to' is missing: write it."),
        (b"x" * 999_999, "p.toml:1: not valid TOML at the end of the file: Expected '=' after a key in a key/value"
         " pair: mend the line."),
    ],
    ids=["windows-1252", "jpeg", "large", "empty", "no line end"],
)  # fmt: skip
def test_a_file_that_is_no_procedure_is_refused(tmp_path: Path, data: bytes, said: str) -> None:
    (tmp_path / "p.toml").write_bytes(data)
    assert refused(read_file, tmp_path / "p.toml")[0] == f"{tmp_path}/{said}"


def test_a_folder_or_nothing_in_place_of_a_file_is_refused(tmp_path: Path) -> None:
    (tmp_path / "a.toml").mkdir()
    assert refused(find_procedure, str(tmp_path / "a.toml")) == [
        f"{tmp_path}/a.toml: the file cannot be read: Is a directory: name another."
    ]
    assert refused(find_procedure, str(tmp_path / "b.toml")) == [
        f"{tmp_path}/b.toml: the file cannot be read: No such file or directory: name another."
    ]


def test_a_procedure_from_the_cache_is_the_same_and_is_not_read_again(
    folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    first = read_file(folder / "pump.toml")
    monkeypatch.setattr(desk, "_checked", lambda *args: pytest.fail("read again"))
    assert read_file(folder / "pump.toml") == first


def test_a_changed_file_is_read_again(folder: Path) -> None:
    path = folder / "pump.toml"
    read_file(path)
    path.write_text(TEXT.format(id="other"), encoding="utf-8")
    assert read_file(path).id == "other"


def test_an_entry_that_is_no_procedure_is_read_again(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(desk, "to_json", lambda procedure: "[1, 2]")
    assert read_file(folder / "pump.toml").id == "pump"
    monkeypatch.undo()
    assert read_file(folder / "pump.toml").id == "pump"


def test_lint_reads_files_and_folders_once(folder: Path) -> None:
    (folder / "twin.toml").write_text(TEXT.format(id="pump"), encoding="utf-8")
    (folder / "bad.toml").write_text(TEXT.format(id="bad") + "colour = 1\n", encoding="utf-8")
    found = lint([folder, folder / "bad.toml", folder / "none"])
    assert found.files == 5
    assert [str(problem) for problem in found.errors] == [
        f"{folder}/none: the procedures cannot be read: No such file or directory: "
        "name a folder with --procedures, or use --demo.",
        f"{folder}/bad.toml:5: 'colour' is not a key of this table: the keys are id, title, applies_to, source, "
        "revision, minutes, cautions, covers, moves, tool, torque, consumable.",
        f"{folder}/twin.toml:1: the id 'pump' is taken by {folder}/pump.toml:1: give one of them another.",
    ]
    assert {problem.code for problem in found.notes} == {"note-no-cautions", "note-no-needs"}
