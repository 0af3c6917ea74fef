"""What the shell offers when a person presses Tab. It never fails: without an answer it offers nothing."""

from __future__ import annotations

import os
from pathlib import Path

import typer


def procedure_ids(ctx: typer.Context, incomplete: str) -> list[tuple[str, str]]:
    """The ids of procedures with their titles, from the folder that the command line names so far."""
    from cribkit.desk.procedures import procedure_ids as known

    named = ctx.params.get("procedures") or os.environ.get("CRIBKIT_PROCEDURES")
    found = known(Path(named) if named else None, bool(ctx.params.get("demo")))
    return [(name, title) for name, title in found if name.startswith(incomplete)]


def tags(ctx: typer.Context, incomplete: str) -> list[tuple[str, str]]:
    """The tags of items with their descriptions, from the crib that the command line names so far."""
    from cribkit.domain.problem import CribkitError
    from cribkit.store.opening import demo_crib, open_crib

    named = ctx.find_root().params.get("crib") or os.environ.get("CRIBKIT_CRIB") or "crib.db"
    try:
        with demo_crib() if ctx.params.get("demo") else open_crib(Path(named)) as crib:
            return list(crib.tags(incomplete))
    except CribkitError:
        return []
