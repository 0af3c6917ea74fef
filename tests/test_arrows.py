"""Imports point only downwards: cli > report, desk > store > domain."""

import ast
from pathlib import Path

import pytest

PACKAGE = Path(__file__).parent.parent / "cribkit"

# What each layer may import, beside itself.
BELOW = {
    "cli": {"report", "desk", "store", "domain"},
    "report": {"desk", "domain"},
    "desk": {"store", "domain"},
    "store": {"domain"},
    "domain": set(),
}
# Inside the domain, too, a room imports only rooms further down this list.
ROOMS = ["calibration", "stock", "procedure", "torque", "wording", "quantity"]
# What the pure core must not touch: clocks, files, databases, the terminal.
IMPURE = {
    "sqlite3",
    "sqlite_utils",
    "typer",
    "os",
    "pathlib",
    "sys",
    "subprocess",
    "time",
    "random",
    "socket",
    "shutil",
}


def imports(source: str) -> set[str]:
    """Every module that a source imports, wherever the import stands."""
    found: set[str] = set()
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Import):
            found |= {name.name for name in node.names}
        elif isinstance(node, ast.ImportFrom) and node.module:
            assert node.level == 0, "relative imports hide the arrow"
            found |= {node.module} | {f"{node.module}.{name.name}" for name in node.names}
    return found


def wrong_arrows(layer: str, room: str, source: str) -> set[str]:
    """The imports of a file in this layer (and room of the domain) that point the wrong way."""
    wrong = set()
    for module in imports(source):
        top, *rest = module.split(".")
        if layer == "domain" and top in IMPURE:
            wrong.add(module)
        if top != "cribkit" or not rest:
            continue
        target = rest[0]
        if target in BELOW and target != layer and target not in BELOW[layer]:
            wrong.add(module)
        rooms = [room, *rest[1:2]] if layer == target == "domain" else []
        if len(rooms) == 2 and set(rooms) <= set(ROOMS) and ROOMS.index(rooms[1]) < ROOMS.index(room):
            wrong.add(module)
    return wrong


FILES = sorted(path for path in PACKAGE.rglob("*.py") if len(path.relative_to(PACKAGE).parts) > 1)


@pytest.mark.parametrize("path", FILES, ids=lambda path: str(path.relative_to(PACKAGE)))
def test_imports_point_downwards(path: Path) -> None:
    layer, room, *_ = [*path.relative_to(PACKAGE).parts, ""]
    assert wrong_arrows(layer, room, path.read_text(encoding="utf-8")) == set()


@pytest.mark.parametrize(
    ("layer", "room", "source"),
    [
        ("domain", "stock", "import sqlite3"),
        ("domain", "stock", "def f():\n    from cribkit.store import crib"),
        ("domain", "quantity", "from cribkit.domain.torque import spec"),
        ("store", "", "import cribkit.desk.check"),
        ("desk", "", "from cribkit.report.forms import cell"),
        ("report", "", "from cribkit.store import opening"),
    ],
    ids=[
        "database in core",
        "store from core",
        "upward room",
        "desk from store",
        "report from desk",
        "store from report",
    ],
)
def test_a_planted_wrong_arrow_is_found(layer: str, room: str, source: str) -> None:
    assert wrong_arrows(layer, room, source)
