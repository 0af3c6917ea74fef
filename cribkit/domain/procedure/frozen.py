"""A checked procedure as JSON and back, so that a file that was checked once need not be read again."""

from __future__ import annotations

import json
from dataclasses import fields, is_dataclass
from typing import TYPE_CHECKING, Any

from cribkit.domain.procedure.model import ConsumableNeed, Procedure, Reach, ToolNeed, TorqueNeed
from cribkit.domain.quantity import Amount, TorqueUnit

if TYPE_CHECKING:
    from cribkit.domain.torque import Spec, Step

READER_VERSION = 2  # raised whenever the same text may give another procedure or another problem


def to_json(procedure: Procedure) -> str:
    """Compact JSON of everything but the name of the file."""
    return json.dumps(plain(procedure._replace(file="")), ensure_ascii=False, separators=(",", ":"))


def plain(value: Any) -> Any:
    """Named fields as a mapping, all the way down."""
    if is_dataclass(value):
        return {field.name: plain(getattr(value, field.name)) for field in fields(value)}
    if isinstance(value, tuple):
        names = getattr(value, "_fields", None)
        return dict(zip(names, map(plain, value), strict=True)) if names else list(map(plain, value))
    return value


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
    return TorqueNeed(**{**row, "steps": tuple(row["steps"]), "reach": reach, "known": _spec(row["known"])})


def _spec(row: dict[str, Any]) -> Spec:
    from cribkit.domain.torque import Spec

    return Spec(**{**row, "unit": TorqueUnit(**row["unit"]), "steps": tuple(_step(step) for step in row["steps"])})


def _step(row: dict[str, Any]) -> Step:
    from cribkit.domain.torque import Step, StepKind, Wanted

    wanted = row["wanted"] and Wanted(**{**row["wanted"], "unit": TorqueUnit(**row["wanted"]["unit"])})
    return Step(**{**row, "kind": StepKind(row["kind"]), "wanted": wanted})


def _consumable(row: dict[str, Any]) -> ConsumableNeed:
    return ConsumableNeed(**{**row, "never": tuple(row["never"]), "amount": Amount(**row["amount"])})
