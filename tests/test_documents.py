"""The documents say what the program does: every command has help, an example, and a place in a guide."""

import re
from pathlib import Path

import pytest

from cribkit.cli.commands import COMMANDS, Entry
from cribkit.cli.reference import PAGE, help_text, page

ROOT = Path(__file__).parent.parent
DOCS = ROOT / "docs"
GUIDES = sorted(DOCS.glob("guide-*.md"))


def test_the_command_reference_is_what_the_program_prints() -> None:
    same = PAGE.read_text(encoding="utf-8") == "\n".join(page())
    assert same, "docs/commands.md is behind: run `python -m cribkit.cli.reference` and commit it"


@pytest.mark.parametrize("entry", COMMANDS, ids=lambda entry: entry.name)
def test_every_command_shows_an_example(entry: Entry) -> None:
    assert re.search(f"Examples?: cribkit {entry.name}( |$)", " ".join(help_text(entry).split()))


@pytest.mark.parametrize("entry", COMMANDS, ids=lambda entry: entry.name)
def test_every_command_stands_in_a_guide(entry: Entry) -> None:
    told = re.compile(rf"cribkit {re.escape(entry.name)}\b|`{re.escape(entry.name)}\b")
    assert any(told.search(guide.read_text(encoding="utf-8")) for guide in GUIDES)


@pytest.mark.parametrize("page", [ROOT / "README.md", *sorted(DOCS.glob("*.md"))], ids=lambda page: page.name)
def test_no_link_between_the_pages_is_broken(page: Path) -> None:
    links = re.findall(r"\]\(([^)#]+?\.md)[^)]*\)", page.read_text(encoding="utf-8"))
    assert [link for link in links if not (page.parent / link).exists()] == []
