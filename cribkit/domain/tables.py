"""Data tables of the trade: TOML files that stand beside the code that reads them."""

from __future__ import annotations

from collections.abc import Callable
from functools import cache
from importlib import import_module
from typing import Any


def parse_toml(text: str) -> dict[str, Any]:
    """TOML text as a mapping."""
    import tomllib  # 10 ms: start-up counts

    return tomllib.loads(text)


# The program's edge may put a quicker reader here, one that remembers texts it has parsed before.
parser: Callable[[str], dict[str, Any]] = parse_toml


def made_anew(name: str, make: Callable[[], str]) -> str:
    """What is worked out of the tables alone, under a name, as text."""
    return make()


# And here a store for that, which must forget it when any table or reader changes.
remember: Callable[[str, Callable[[], str]], str] = made_anew


@cache
def table(package: str, name: str) -> dict[str, Any]:
    """The TOML file `name` inside `package` (a dotted module name). Read once; treat it as read-only."""
    module = import_module(package)
    loader = module.__spec__ and module.__spec__.loader
    # What importlib.resources and pkgutil do, without the 10 ms and the 1 ms that they cost to import.
    read = getattr(loader, "get_data", None)
    if read is None:
        raise FileNotFoundError(f"{package} has no {name}")
    return parser(read(f"{module.__path__[0]}/{name}").decode("utf-8"))
