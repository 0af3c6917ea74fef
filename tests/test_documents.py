"""The documents say what the program does: every command has help, an example, and a place in a guide."""

from pathlib import Path

import pytest

from cribkit.cli.commands import COMMANDS, Entry
from cribkit.cli.reference import PAGE, help_text, page

DOCS = Path(__file__).parent.parent / "docs"
GUIDES = sorted(DOCS.glob("guide-*.md"))


def test_the_command_reference_is_what_the_program_prints() -> None:
    assert PAGE.read_text(encoding="utf-8") == "\n".join(page())


@pytest.mark.parametrize("entry", COMMANDS, ids=lambda entry: entry.name)
def test_every_command_shows_an_example(entry: Entry) -> None:
    assert f"Example: cribkit {entry.name}" in " ".join(help_text(entry).split())


@pytest.mark.parametrize("entry", COMMANDS, ids=lambda entry: entry.name)
def test_every_command_stands_in_a_guide(entry: Entry) -> None:
    assert any(
        f"`cribkit {entry.name}" in guide.read_text(encoding="utf-8")
        or f"cribkit {entry.name} " in guide.read_text(encoding="utf-8")
        for guide in GUIDES
    )
