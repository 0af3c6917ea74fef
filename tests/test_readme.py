"""README shows what the program prints, and .ci/run runs README's own test command."""

import re
from pathlib import Path

from typer.testing import CliRunner

from cribkit.cli.app import app

ROOT = Path(__file__).parent.parent
README = (ROOT / "README.md").read_text(encoding="utf-8")


def block(heading: str) -> list[str]:
    """The first indented block under a heading, without its indent."""
    text = README.split(f"## {heading}\n", 1)[1]
    found = re.search(r"((?: {4}.*\n|\n)+)", text[text.index("\n    ") :])
    assert found is not None
    return [line[4:] for line in found[0].strip("\n").split("\n")]


def test_what_the_first_command_prints_is_what_readme_says() -> None:
    shown = block("What the first one prints")
    assert shown[-1] == "..."
    result = CliRunner(env={"COLUMNS": "80"}).invoke(
        app, ["check", "throttle-body-service", "--demo", "--on", "2026-11-25"], prog_name="cribkit"
    )
    assert result.stdout.split("\n")[: len(shown) - 1] == shown[:-1]
    assert result.exit_code == 1


def test_both_commands_are_one_line_to_paste() -> None:
    commands = [line[4:] for line in README.splitlines() if line.startswith("    python3 -m venv")]
    assert len(commands) == 2
    assert commands[0].endswith("cribkit check throttle-body-service --demo")
    assert "pytest" in commands[1]


def test_ci_runs_the_test_command_of_the_readme() -> None:
    assert re.search(r"<!-- tests -->\n    python3 -m venv .*pytest.*\n<!-- end -->", README)
    assert "<!-- tests -->" in (ROOT / ".ci" / "run").read_text(encoding="utf-8")
