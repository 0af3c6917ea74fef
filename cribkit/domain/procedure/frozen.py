"""A checked procedure as JSON and back, so that a file that was checked once need not be read again."""

from __future__ import annotations

import json
from dataclasses import asdict, replace
from typing import Any

from cribkit.domain.procedure.model import ConsumableNeed, Procedure, Reach, ToolNeed, TorqueNeed
from cribkit.domain.quantity import Amount

READER_VERSION = 1  # raised whenever the same text may give another procedure or another problem


def to_json(procedure: Procedure) -> str:
    """Compact JSON of everything but the name of the file."""
    return json.dumps(asdict(replace(procedure, file="")), ensure_ascii=False, separators=(",", ":"))


def from_json(text: str, file: str = "") -> Procedure:
    """The procedure as it was; ValueError, KeyError or TypeError where the text is not one of `to_json`."""
    raw: dict[str, Any] = json.loads(text)
    return Procedure(
        **{
            **raw,
            **{name: tuple(raw[name]) for name in ("cautions", "covers", "moves")},
            "tools": tuple(_tool(row) for row in raw["tools"]),
            "torques": tuple(_torque(row) for row in raw["torques"]),
            "consumables": tuple(_consumable(row) for row in raw["consumables"]),
            "file": file,
        }
    )


def _tool(row: dict[str, Any]) -> ToolNeed:
    return ToolNeed(**{**row, "instead": tuple(row["instead"])})


def _torque(row: dict[str, Any]) -> TorqueNeed:
    reach = Reach(**row["reach"]) if row["reach"] else None
    return TorqueNeed(**{**row, "steps": tuple(row["steps"]), "reach": reach})


def _consumable(row: dict[str, Any]) -> ConsumableNeed:
    return ConsumableNeed(**{**row, "never": tuple(row["never"]), "amount": Amount(**row["amount"])})
