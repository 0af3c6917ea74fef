"""Torques as people write them: "10 N·m", "8-10 Nm", "9 ± 1 N·m", "37 - 43 Nm (28 - 31 ft. lbs.)".

The first value written is the spec. A second one, in brackets or after a comma, is checked against it within 3 %
(published pairs disagree by their rounding) and else ignored.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from cribkit.domain.problem import BadInput, CribkitError
from cribkit.domain.quantity.measure import show
from cribkit.domain.quantity.numbers import NUMBER, number, plain
from cribkit.domain.quantity.units import TorqueUnit, torque_unit

AGREE = 0.03  # how far a second value may be from the first
SLACK = 1e-9
HINT = 'write it as "10 N·m", "8-10 N·m", "9 ± 1 N·m" or "89 in-lb (10 N·m)".'

UNIT = r"[^0-9%±()\[\]]*?"
TO = r"\s*(?:-|\bto\b|\bthrough\b|\bthru\b|\.{2,3}|…)\s*"
SHAPE = re.compile(
    rf"(?P<first>{NUMBER})\s*(?P<unit1>{UNIT})"
    rf"(?:(?P<to>{TO})(?P<last>{NUMBER})\s*(?P<unit2>{UNIT})"
    rf"|\s*(?:±|\+\s?/?\s?-)\s*(?P<give>{NUMBER})\s*(?P<unit3>%|{UNIT}))?\s*\Z",
    re.IGNORECASE,
)
BRACKETS = re.compile(r"(?P<spec>[^()\[\]]+)[(\[](?P<second>[^()\[\]]+)[)\]]\s*\.?\Z")
NEXT_VALUE = re.compile(r"(?<=[^\s0-9±+-])\s*[,;=/]\s*(?=[0-9])")


@dataclass(frozen=True, slots=True)
class Torque:
    """A torque as written: the first value, in its own unit.

    `low` and `high` are equal for a single value. `value` is the single value, the middle of a range, or the value
    before the "±".
    """

    low: float
    high: float
    value: float
    unit: TorqueUnit
    text: str = ""

    @property
    def nm(self) -> float:
        """`value` in N·m."""
        return self.value * self.unit.nm

    @property
    def low_nm(self) -> float:
        """`low` in N·m."""
        return self.low * self.unit.nm

    @property
    def high_nm(self) -> float:
        """`high` in N·m."""
        return self.high * self.unit.nm

    @property
    def is_range(self) -> bool:
        """Does the text carry its own tolerance?"""
        return self.low < self.high


def parse_torque(text: str) -> Torque:
    """Read a torque. BadInput says what is wrong: "no-number", "no-unit", "not-torque", "negative", "ambiguous",
    "backwards", "disagrees" or "unreadable"."""
    tidy = plain(text)
    brackets = BRACKETS.match(tidy)
    written = [brackets["spec"], brackets["second"]] if brackets else [tidy]
    spec, *others = (_one(part, text) for piece in written for part in NEXT_VALUE.split(piece))
    for other in others:
        _agree(spec, other)
    return spec


def _one(part: str, text: str) -> Torque:
    """One value, range or value with a tolerance."""
    shape = SHAPE.match(part.strip())
    if shape is None:
        raise _why(part.strip(), text)
    if shape["give"]:
        return _with_give(shape, text)
    unit = _same_unit(shape["unit1"], shape["unit2"])
    low = number(shape["first"])
    high = number(shape["last"]) if shape["last"] else low
    if low > high:
        raise BadInput.of("backwards", f"the range {part.strip()!r} runs backwards", "write the smaller value first.")
    return _positive(Torque(low, high, (low + high) / 2, unit, text.strip()))


def _with_give(shape: re.Match[str], text: str) -> Torque:
    """ "9 ± 1 N·m", "9 N·m ± 1 N·m" or "9 N·m ± 10 %"."""
    percent = shape["unit3"] == "%"
    unit = _same_unit(shape["unit1"], None if percent else shape["unit3"])
    value = number(shape["first"])
    give = number(shape["give"]) * (value / 100 if percent else 1)
    if give >= value:
        raise BadInput.of("unreadable", f"in {text!r} the tolerance is as large as the torque", HINT)
    return _positive(Torque(value - give, value + give, value, unit, text.strip()))


def _same_unit(first: str, second: str | None) -> TorqueUnit:
    """The unit stands after the first value, after the last, or after both and is then the same."""
    units = [torque_unit(text) for text in (first, second or "") if text.strip(" .")]
    if not units:
        return torque_unit("")
    if units[0] != units[-1]:
        raise BadInput.of("unreadable", f"one value is in {units[0]} and the other in {units[-1]}", HINT)
    return units[0]


def _positive(torque: Torque) -> Torque:
    if torque.high <= 0:
        raise BadInput.of("negative", f"{torque.text!r} is not a torque above zero", HINT)
    return torque


def _agree(spec: Torque, other: Torque) -> None:
    """Both ends of a second value lie within 3 % of the first; one value beside a range lies in it."""
    pairs = ((spec.low_nm, other.low_nm), (spec.high_nm, other.high_nm))
    if any(abs(second - first) > AGREE * first * (1 + SLACK) + SLACK for first, second in pairs):
        own = " to ".join(show(end / other.unit.nm) for end in dict.fromkeys((spec.low_nm, spec.high_nm)))
        said = " to ".join(show(end) for end in dict.fromkeys((other.low, other.high)))
        raise BadInput.of(
            "disagrees",
            f"{spec.text!r}: the first value is {own} {other.unit}, the second says {said} {other.unit}",
            "find out which one is right and mend the other.",
        )


def _why(part: str, text: str) -> CribkitError:
    """Why a text has not the shape of a torque."""
    said = repr(text.strip()[:60])
    if not re.search("[0-9]", part):
        return BadInput.of("no-number", f"the torque {said} has no number", HINT)
    if re.match(r"[-<>]", part):
        return BadInput.of("negative", f"{said} is not a torque above zero", HINT)
    return BadInput.of("unreadable", f"the torque {said} cannot be read", HINT)
