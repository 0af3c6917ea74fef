"""Use cases of the keeper: load a folder into the crib's file."""

from __future__ import annotations

import os
import tempfile
from pathlib import Path

from cribkit.domain.problem import BadInput, Problem
from cribkit.store.audit import Audit, audit
from cribkit.store.backup import Copied
from cribkit.store.backup import backup as back_up
from cribkit.store.backup import restore as put_back
from cribkit.store.faults import unusable
from cribkit.store.opening import open_crib
from cribkit.store.posting import Entry
from cribkit.store.seed.folder import read_folder
from cribkit.store.seed.load import Loaded, Recount
from cribkit.store.seed.load import load as load_seed
from cribkit.store.seed.parts import Seed

__all__ = ["Audit", "Copied", "Entry", "Loaded", "Recount", "audit", "back_up", "load_folder", "put_back"]


def load_folder(path: Path, folder: Path, entry: Entry, recount: bool = False) -> tuple[Loaded, tuple[Problem, ...]]:
    """Load the folder's files; what was done, and warnings about the crib's file. Only a good load makes a crib."""
    seed = read_folder(folder)
    if not path.exists():
        return load_new(path, seed, entry)
    with open_crib(path, write=True) as crib:
        return load_seed(crib, seed, entry, recount), crib.warnings


def put_in_place(young: Path, path: Path) -> None:
    """Move without taking another's place: by a hard link, which fails where there is a file already."""
    try:
        os.link(young, path)
    except FileExistsError:
        raise
    except OSError:  # a file system without hard links
        if path.exists():
            raise FileExistsError(path) from None
        young.replace(path)


def load_new(path: Path, seed: Seed, entry: Entry) -> tuple[Loaded, tuple[Problem, ...]]:
    """Make the crib beside its place and put it there when it is whole; a crib that came meanwhile is kept."""
    try:
        with tempfile.TemporaryDirectory(dir=path.absolute().parent, prefix=".cribkit-") as beside:
            young = Path(beside) / path.name
            with open_crib(young, write=True, create=True) as crib:
                done, warnings = load_seed(crib, seed, entry), crib.warnings
            put_in_place(young, path)
    except FileExistsError:
        raise BadInput.of("crib-came", "another desk made this crib just now", "load again.", str(path)) from None
    except OSError as error:
        why = f"no crib can be made here ({error.strerror})"
        raise unusable("crib-cannot-be-made", path, why, "choose another place, or make the folder first.") from error
    return done, warnings
