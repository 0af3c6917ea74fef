"""What the shell offers when a person presses Tab."""

import os
import subprocess
import sys
from pathlib import Path

import pytest
import typer

from cribkit.cli.app import app
from cribkit.cli.completion import procedure_ids, tags
from cribkit.store.demo_folder import demo_folder

HUB = 'id = "hub-nut"\ntitle = "Retighten the hub nut"\napplies_to = "Wren van"\nsource = "Invented for this test."\n'


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A working folder with one procedure."""
    monkeypatch.chdir(tmp_path)
    (tmp_path / "procedures").mkdir()
    (tmp_path / "procedures" / "hub-nut.toml").write_text(HUB, encoding="utf-8")
    return tmp_path


def typed(**params: object) -> typer.Context:
    """A command line as far as it is typed."""
    ctx = typer.Context(typer.main.get_command(app))
    ctx.params = dict(params)
    return ctx


@pytest.mark.parametrize(
    ("params", "start", "offered"),
    [
        ({}, "", ["hub-nut"]),
        ({}, "x", []),
        ({"procedures": Path("none")}, "", []),
        ({"procedures": Path("procedures")}, "hub", ["hub-nut"]),
        ({"demo": True}, "plenum", ["plenum-reseal"]),
    ],
    ids=["here", "another start", "no folder", "a folder", "the demo"],
)
def test_ids_of_procedures(folder: Path, params: dict[str, object], start: str, offered: list[str]) -> None:
    assert [name for name, _ in procedure_ids(typed(**params), start)] == offered


def test_tags_of_the_demo_whatever_the_case_of_their_letters() -> None:
    first = (demo_folder("seed_inventory") / "tools.csv").read_text("utf-8").splitlines()[1]
    tag = first.split(",")[0]
    assert tag in [name for name, _ in tags(typed(demo=True), tag[:3].lower())]
    assert tags(typed(demo=True), "no such tag") == []


@pytest.mark.parametrize("content", [None, b"\xff\xd8\xff\xe0 a photo"], ids=["no crib", "a JPEG"])
def test_without_a_crib_nothing_is_offered(folder: Path, content: bytes | None) -> None:
    if content:
        (folder / "crib.db").write_bytes(content)
    assert tags(typed(), "") == []


def test_bash_gets_the_commands_from_the_program_itself(folder: Path) -> None:
    done = subprocess.run(
        [sys.executable, "-c", "from cribkit.cli.app import main; main()"],
        capture_output=True,
        text=True,
        cwd=folder,
        check=False,
        env={**os.environ, "_CRIBKIT_COMPLETE": "complete_bash", "COMP_WORDS": "cribkit li", "COMP_CWORD": "1"},
    )
    assert done.stdout.split() == ["lint"]
