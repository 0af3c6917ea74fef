"""The program `cribkit`: a group that imports a command only when it is asked for, and the edge where
errors become messages and exit codes."""

from __future__ import annotations

import os
import sys
from collections.abc import Callable
from functools import wraps
from importlib import import_module
from pathlib import Path
from typing import Annotated, Any

import typer
from typer.core import TyperGroup

from cribkit.cli.commands import COMMANDS, GROUPS, Entry
from cribkit.domain import tables
from cribkit.domain.problem import CribkitError
from cribkit.store.cache import remembered, remembered_toml

# What a person may see of an unexpected fault: no traceback, unless asked for with CRIBKIT_TRACEBACK=1.
FAULT = (
    "cribkit: this is a fault of the program, not of your data: {kind}: {text}\n"
    "Look with `cribkit history` whether a posting was made. Run a reading command again with CRIBKIT_TRACEBACK=1\n"
    "and report what it prints."
)


WHOLE = 200  # characters of a command's first sentence in the list of commands: all of it


class LazyGroup(TyperGroup):
    """A group whose commands stand in the table of commands.py."""

    prefix = ""

    def entries(self) -> dict[str, Entry | str]:
        """What this group offers: an entry for a command, a help text for a group in it."""
        mine: dict[str, Entry | str] = {}
        for entry in COMMANDS:
            if not entry.name.startswith(self.prefix):
                continue
            name = entry.name[len(self.prefix) :]
            first, _, rest = name.partition(" ")
            mine[first] = GROUPS[first] if rest else entry
        return mine

    def list_commands(self, ctx: Any) -> list[str]:
        return list(self.entries())

    def get_command(self, ctx: Any, cmd_name: str) -> Any:
        entry = self.entries().get(cmd_name)
        if entry is None:
            return None
        return load_command(cmd_name, entry) if isinstance(entry, Entry) else load_group(cmd_name, entry)

    def format_commands(self, ctx: Any, formatter: Any) -> None:
        """Commands under the person they serve."""
        people: dict[str, list[tuple[str, str]]] = {}
        for name, entry in self.entries().items():
            command = self.get_command(ctx, name)
            person = entry.person if isinstance(entry, Entry) else person_of_group(name)
            people.setdefault(person, []).append((name, command.get_short_help_str(limit=WHOLE)))
        for person, rows in people.items():
            with formatter.section(person):
                formatter.write_dl(rows)


def person_of_group(name: str) -> str:
    """The person whom the first command of a group serves."""
    return next(entry.person for entry in COMMANDS if entry.name.startswith(f"{name} "))


def load_command(name: str, entry: Entry) -> Any:
    """Import the module of one command and make the command."""
    module, _, function = entry.place.partition(":")
    app = typer.Typer(add_completion=False, rich_markup_mode=None, pretty_exceptions_enable=False)
    loaded = unbroken(import_module)(module)
    app.command(name)(unbroken(getattr(loaded, function)))
    return typer.main.get_command(app)


# What reading a compiled file says, by where it ends; the end of the input is told in other words.
_CUT_SHORT = ("marshal", "EOF read where")


def unbroken(work: Callable[..., Any]) -> Callable[..., Any]:
    """The same, but a compiled file that a full disk or a kill cut short is told by its name.

    Python 3.11 keeps such a file and stumbles over it at each start; Typer takes the EOFError for the end of the input.
    """

    @wraps(work)
    def run(*words: Any, **options: Any) -> Any:
        try:
            return work(*words, **options)
        except EOFError as error:
            if not any(said in str(error) for said in _CUT_SHORT):
                raise
            raise CutShortError.of(
                "cut-short", "this compiled file was cut short. Delete it: it is made anew.", source=cut_short(error)
            ) from error

    return run


class CutShortError(CribkitError):
    """A compiled file that Python cannot read."""

    exit_code = 3


def cut_short(error: EOFError) -> str:
    """The path of the compiled file that the import system was reading."""
    place, found = error.__traceback__, ""
    while place is not None:
        found = str(place.tb_frame.f_locals.get("bytecode_path") or found)
        place = place.tb_next
    return found or "a file in a __pycache__ folder of cribkit"


def load_group(name: str, text: str) -> Any:
    """A group of commands such as `wrench`."""
    kind = type(f"{name.title()}Group", (LazyGroup,), {"prefix": f"{name} "})
    app = typer.Typer(cls=kind, add_completion=False, rich_markup_mode=None, no_args_is_help=True, help=text)
    app.callback()(lambda: None)
    return typer.main.get_command(app)


def root(
    ctx: typer.Context,
    crib: Annotated[
        Path, typer.Option(envvar="CRIBKIT_CRIB", help="The crib's file.", metavar="FILE", readable=False)
    ] = Path("crib.db"),
    version: Annotated[bool, typer.Option("--version", help="Print the version and end.")] = False,
) -> None:
    """Tool crib and consumables, keyed to repair procedures.

    The vehicle maker's service information, local codes and licensed practice come first.

    Exit codes: 0 all well; 1 done, and the answer is no; 2 wrong usage or bad input, nothing changed;
    3 the crib cannot be used.
    """
    ctx.obj = crib
    if version:
        from cribkit import __version__

        typer.echo(f"cribkit {__version__}")
        raise typer.Exit
    if ctx.invoked_subcommand is None:
        typer.echo(ctx.get_help())
        raise typer.Exit


app = typer.Typer(cls=LazyGroup, rich_markup_mode=None, pretty_exceptions_enable=False, invoke_without_command=True)
app.callback(invoke_without_command=True)(root)


def main() -> None:
    """Run the program. Problems go to stderr, one a line; no traceback reaches a user."""
    tables.parser, tables.remember = remembered_toml, remembered
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(errors="replace")  # a terminal that lacks a letter shows "?" instead of failing
    try:
        app(prog_name="cribkit")
    except CribkitError as error:
        leave(str(error), error.exit_code)
    except BrokenPipeError:
        close_pipe()
    except Exception as error:
        if os.environ.get("CRIBKIT_TRACEBACK"):
            raise
        leave(FAULT.format(kind=type(error).__name__, text=error), 3)


def leave(text: str, code: int) -> None:
    """Say it on stderr and end with this code."""
    sys.stdout.flush()
    print(text, file=sys.stderr)
    sys.exit(code)


def close_pipe() -> None:
    """The reader went away (`| head -1`): end quietly, and keep Python from flushing into the closed pipe."""
    from cribkit.cli.output import drop_stdout

    drop_stdout()
    sys.exit(0)
