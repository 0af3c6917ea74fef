"""Torque tools by mechanism: type and class of ISO 6789, permissible deviation, how they are set or read.

The table is kinds.toml, with its sources.
"""

from __future__ import annotations

from functools import cache
from typing import NamedTuple

from cribkit.domain.problem import BadInput
from cribkit.domain.tables import table

SMALL_NM = 10.0  # ISO 6789 has one limit up to this maximum torque and another above it


class Mechanism(NamedTuple):
    """One row of the table."""

    name: str  # "click", "dial", "screwdriver-click" ...
    iso: str  # "II A"
    text: str
    acts: str  # "indicating" or "setting"
    scale: str  # "marks", "value" or "fixed"
    upto_10: float  # percent
    above_10: float  # percent
    readings: int  # at each test point
    two_way: bool
    lever: bool
    also: tuple[str, ...]

    @property
    def indicating(self) -> bool:
        """Read while pulling, instead of set beforehand."""
        return self.acts == "indicating"

    def deviation(self, full_scale_nm: float) -> float:
        """Maximum permissible relative deviation as a fraction, by the tool's maximum torque in N·m."""
        return (self.upto_10 if full_scale_nm <= SMALL_NM * (1 + 1e-9) else self.above_10) / 100


@cache
def mechanisms() -> dict[str, Mechanism]:
    """Every row, by name."""
    rows = table("cribkit.domain.torque", "kinds.toml")
    return {name: Mechanism(name=name, **(row | {"also": tuple(row["also"])})) for name, row in rows.items()}


@cache
def _by_word() -> dict[str, Mechanism]:
    rows = mechanisms()
    words = {_plain(word): row for row in rows.values() for word in row.also}
    return words | {_plain(name): row for name, row in rows.items()}


def mechanism(text: str) -> Mechanism:
    """The mechanism that a person named; BadInput for a word that the table does not have."""
    found = _by_word().get(_plain(text))
    if found is None:
        raise BadInput.of(
            "unknown-mechanism", f"{text!r} is not a kind of torque wrench", f"write one of: {', '.join(mechanisms())}."
        )
    return found


def _plain(text: str) -> str:
    return " ".join(text.casefold().replace("-", " ").replace("_", " ").split())
