"""The repair procedure's model and its checks."""

from typing import TYPE_CHECKING, Any

from cribkit.domain.procedure.frozen import READER_VERSION, from_json, to_json
from cribkit.domain.procedure.model import (
    LEFT_HAND,
    RIGHT_HAND,
    ConsumableNeed,
    Procedure,
    Reach,
    ToolNeed,
    TorqueNeed,
)

if TYPE_CHECKING:
    from cribkit.domain.procedure.checks import check_ids, check_procedures, notes
    from cribkit.domain.procedure.reader import read_procedure

# The reader is imported when it is first used: a procedure from the cache does not pay for it.
LATE = {"read_procedure": "reader", "check_ids": "checks", "check_procedures": "checks", "notes": "checks"}


def __getattr__(name: str) -> Any:
    if name not in LATE:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    from importlib import import_module

    return getattr(import_module(f"{__name__}.{LATE[name]}"), name)


__all__ = [
    "LEFT_HAND",
    "READER_VERSION",
    "RIGHT_HAND",
    "ConsumableNeed",
    "Procedure",
    "Reach",
    "ToolNeed",
    "TorqueNeed",
    "check_ids",
    "check_procedures",
    "from_json",
    "notes",
    "read_procedure",
    "to_json",
]
