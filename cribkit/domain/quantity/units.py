"""Units of torque: how people write them, and what they are in N·m.

A separator between a force and a length always means their product: in-lb, in/lb, lb-in, in.lbs, inch pounds and
lbf·in are one unit. (pint's own parser reads ft-lb as a subtraction, ft lb as mass times length and Nm as a unit of
textiles, so that our table of spellings stands in front of it.)
"""

from __future__ import annotations

import re
from functools import cache
from typing import Any, NamedTuple, TypeVar

from cribkit.domain.problem import BadInput
from cribkit.domain.quantity.measure import show
from cribkit.domain.quantity.numbers import plain
from cribkit.domain.tables import table

SEPARATORS = re.compile(r"[\s.·*×/_-]+")
TRIM = " ."
T = TypeVar("T")
HINT = "write the unit as N·m, in-lb, ft-lb, kgf·m or kgf·cm."


class TorqueUnit(NamedTuple):
    """A unit of torque. Two spellings of one unit give equal objects: in-lb is lbf·in."""

    symbol: str  # as people read it: "N·m", "in-lb", "ft-lb", "kgf·cm"
    nm: float  # one of this unit in N·m

    def __str__(self) -> str:
        return self.symbol


def torque_unit(text: str) -> TorqueUnit:
    """The unit that the text names. BadInput "no-unit" or "not-torque" otherwise."""
    tidy = plain(text).strip(TRIM)
    if not tidy:
        raise BadInput.of("no-unit", "the torque has no unit", HINT)
    pair = _pair(tidy)
    if pair is None:
        raise BadInput.of("not-torque", f"{tidy!r} is not a unit of torque", HINT)
    return _unit(*pair)


def format_torque(value: float, unit: TorqueUnit) -> str:
    """A value with its unit, such as "89 in-lb": six digits at most, and `parse_torque` reads it back."""
    return f"{show(value)} {unit.symbol}"


@cache
def _unit(force: str, length: str) -> TorqueUnit:
    """From the table of exact values; a pair that it does not hold is made by the registry."""
    for symbol, row in _tables()["unit"].items():
        if (row["force"], row["length"]) == (force, length):
            return TorqueUnit(symbol, row["nm"])
    return TorqueUnit(f"{force}·{length}", registry_factor(force, length))


def registry_factor(force: str, length: str) -> float:
    """One force times one length in N·m, by the pint registry."""
    return float(_registry().Quantity(1.0, f"{force} * {length}").to("newton * metre").magnitude)


@cache
def _registry() -> Any:
    """A small pint registry of our own: pint's full one takes 110 ms to build."""
    import pint

    return pint.UnitRegistry(_tables()["pint"]["definitions"].strip().splitlines())


def _pair(tidy: str) -> tuple[str, str] | None:
    """The force and the length that a unit's text is made of."""
    words = [word for word in SEPARATORS.split(tidy) if word]
    if len(words) == 3 and "force" in words[1:]:  # "pound-force inch", "inch pound-force"
        words.remove("force")
    if len(words) == 1:
        return _look(_together(), words[0].removesuffix("force"))
    if len(words) != 2:
        return None
    first, second = words
    forces, lengths = _spellings("force"), _spellings("length")
    force, length = _look(forces, first), _look(lengths, second)
    if force is None or length is None:
        force, length = _look(forces, second), _look(lengths, first)
        if force is None or _system(force) == "newton":  # "m N" is too near to mN, a force
            return None
    return (force, length) if force and length else None


def _look(names: dict[str, T], word: str) -> T | None:
    """By exact letters first (mN is not MN), then in small letters."""
    return names.get(word) or names.get(f"~{word.lower()}")


@cache
def _spellings(kind: str) -> dict[str, str]:
    """Spelling -> force or length; "~" marks a spelling that does not mind capitals."""
    found: dict[str, str] = {}
    for name, row in _tables()[kind].items():
        found |= {f"~{word}": name for word in row["spellings"]} | dict.fromkeys(row.get("exact", ()), name)
    return found


@cache
def _together() -> dict[str, tuple[str, str]]:
    """Force and length written as one word: Nm, ftlbs, mkg, cmkp."""
    found: dict[str, tuple[str, str]] = {}
    for force, name in _spellings("force").items():
        for length, measure in _spellings("length").items():
            if _system(name) not in _tables()["length"][measure]["systems"]:
                continue
            mark, bare = ("~" if force[0] == "~" else ""), length[1:]
            found[f"{force}{bare}"] = (name, measure)
            if _system(name) != "newton":
                found[f"{mark}{bare}{force.removeprefix('~')}"] = (name, measure)
    return found


def _system(force: str) -> str:
    return str(_tables()["force"][force]["system"])


def _tables() -> dict[str, Any]:
    return table("cribkit.domain.quantity", "torque_units.toml")
