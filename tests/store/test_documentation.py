"""The page about the files says what the program reads."""

from pathlib import Path

import pytest

from cribkit.store.seed.columns import FILES

PAGE = (Path(__file__).parents[2] / "docs" / "file-formats.md").read_text(encoding="utf-8")


@pytest.mark.parametrize("name", FILES)
def test_the_page_lists_each_file_s_columns(name: str) -> None:
    section = PAGE.partition(f"### {name}")[2].partition("\n##")[0]
    rows = [line for line in section.splitlines() if line.startswith("| `")]
    assert rows == [f"| `{one.name}`{'*' if one.required else ''} | {one.about} | {one.blank} |" for one in FILES[name]]
