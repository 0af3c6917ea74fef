"""Where the demo world of Saltmarsh Depot stands: inside an installed package, or at the top of a checkout."""

from __future__ import annotations

from pathlib import Path

import cribkit
from cribkit.domain.problem import CribUnusable


def demo_folder(name: str) -> Path:
    """The folder "procedures" or "seed_inventory" of the demo. CribUnusable where the program came without it."""
    package = Path(cribkit.__file__).parent
    for folder in (package / "demo" / name, package.parent / name):
        if folder.is_dir():
            return folder
    raise CribUnusable.of("no-demo", f"this installation has no demo {name}", "install cribkit again.")
