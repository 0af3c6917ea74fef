"""Data tables of the trade: TOML files that stand beside the code that reads them."""

from __future__ import annotations

import pkgutil
import tomllib
from functools import cache
from typing import Any


@cache
def table(package: str, name: str) -> dict[str, Any]:
    """The TOML file `name` inside `package` (a dotted module name). Read once; treat it as read-only."""
    data = pkgutil.get_data(package, name)  # importlib.resources does the same and costs 10 ms more to import
    if data is None:
        raise FileNotFoundError(f"{package} has no {name}")
    return tomllib.loads(data.decode("utf-8"))
