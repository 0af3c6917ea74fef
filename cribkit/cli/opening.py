"""How a command gets its crib: the file of --crib, or the demo's."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import typer

from cribkit.store.crib import Crib


@contextmanager
def reading(ctx: typer.Context, demo: bool) -> Iterator[Crib]:
    """A crib to read from: nothing is changed."""
    from cribkit.store.opening import demo_crib, open_crib

    with demo_crib() if demo else open_crib(path_of(ctx)) as crib:
        yield crib


@contextmanager
def writing(ctx: typer.Context) -> Iterator[Crib]:
    """A crib to post to."""
    from cribkit.store.opening import open_crib

    with open_crib(path_of(ctx), write=True) as crib:
        yield crib


def path_of(ctx: typer.Context) -> Path:
    """The crib's file, as the root command was told."""
    path = ctx.find_root().obj
    return path if isinstance(path, Path) else Path("crib.db")
