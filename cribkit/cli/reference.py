"""docs/commands.md, made from the commands themselves: python -m cribkit.cli.reference [--check]"""

from __future__ import annotations

import os
import sys
from collections.abc import Iterator
from pathlib import Path

from typer.testing import CliRunner

from cribkit.cli.app import app
from cribkit.cli.commands import COMMANDS, Entry

PAGE = Path(__file__).parents[2] / "docs" / "commands.md"
HEAD = """# Commands

This page is made by `python -m cribkit.cli.reference`; a test fails when it differs from the program.

`cribkit [--crib FILE] COMMAND` - the crib is the file `crib.db` here unless `--crib` or `CRIBKIT_CRIB` names another.
Data goes to stdout, problems to stderr.

| exit code | meaning |
| --- | --- |
| 0 | all well |
| 1 | done, and the answer is no: not ready, something falls due, a shortfall |
| 2 | wrong usage or bad input; nothing was changed |
| 3 | the crib cannot be used: missing, busy too long, damaged, or written by a newer version |
"""


def help_text(entry: Entry) -> str:
    """What `cribkit COMMAND --help` prints at 80 columns."""
    os.environ["COLUMNS"] = "80"
    result = CliRunner(env={"COLUMNS": "80", "TERMINAL_WIDTH": "80"}).invoke(
        app, [*entry.name.split(), "--help"], prog_name="cribkit"
    )
    if result.exit_code:
        raise SystemExit(f"cribkit {entry.name} --help failed: {result.output}")
    return "\n".join(line.rstrip() for line in result.output.strip().splitlines())


def page() -> Iterator[str]:
    """The whole page, a section for each person and command."""
    yield HEAD
    person = ""
    for entry in sorted(COMMANDS, key=lambda entry: [one.person for one in COMMANDS].index(entry.person)):
        if entry.person != person:
            person = entry.person
            yield f"## {person}\n"
        yield f"### {entry.name}\n\n```\n{help_text(entry)}\n```\n"


def main() -> None:
    """Write the page; with --check, fail where it differs."""
    text = "\n".join(page())
    if "--check" not in sys.argv:
        PAGE.write_text(text, encoding="utf-8")
    elif not PAGE.exists() or PAGE.read_text(encoding="utf-8") != text:
        sys.exit("docs/commands.md differs from the program: run `python -m cribkit.cli.reference` and commit it")


if __name__ == "__main__":
    main()
