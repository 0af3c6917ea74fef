"""The floor of the start-up benchmarks: the least Typer command that asks SQLite one question."""

import sqlite3
import sys

import typer

app = typer.Typer(add_completion=False, rich_markup_mode=None, pretty_exceptions_enable=False)


@app.command()
def floor(crib: str) -> None:
    """Print how many items a crib has."""
    typer.echo(sqlite3.connect(crib).execute("SELECT count(*) FROM item").fetchone()[0])


if __name__ == "__main__":
    sys.exit(app())
