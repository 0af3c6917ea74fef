"""One torque in words: "10 N·m", "8-10 N·m", "at least 90 N·m", "25 N·m max", "10 +2/-1 N·m", with a second value in
brackets that is checked. Values, ranges and ± are read by quantity; limits on one side and unequal ones here."""

from __future__ import annotations

import re
from functools import cache

from cribkit.domain.problem import BadInput
from cribkit.domain.quantity import Torque, TorqueUnit, parse_torque, torque_unit
from cribkit.domain.quantity.numbers import NUMBER, number, plain
from cribkit.domain.tables import table
from cribkit.domain.torque.wanted import Wanted

UNEQUAL = re.compile(
    rf"(?P<value>{NUMBER})\s*(?P<unit1>[^0-9%±+()-]*?)\s*\+\s*(?P<plus>{NUMBER})\s*(?P<percent1>%?)[^0-9%+-]*?"
    rf"\s*-\s*(?P<minus>{NUMBER})\s*(?P<unit2>%|[^0-9%±()]*)\s*(?P<rest>\(.*\))?\s*\Z"
)
BETWEEN = re.compile(rf"\bbetween\s+({NUMBER}[^0-9]*?)\s+and\s+", re.IGNORECASE)
WHOLE = re.compile(rf"{NUMBER}(?:\s*(?:-|to|±)\s*{NUMBER})?\Z")


def words(name: str) -> list[str]:
    """A list of spec_words.toml."""
    return list(table("cribkit.domain.torque", "spec_words.toml")[name])


@cache
def any_of(*names: str) -> re.Pattern[str]:
    """Matches each of the words of the lists, the longest first, on word borders where they are letters."""
    parts = [
        (r"\b" if word[0].isalpha() else "")
        + re.escape(word).replace(r"\ ", r"[\s-]+").replace(r"\-", r"[\s-]+")
        + (r"(?:s|es)?\b" if word[-1].isalpha() else "")
        for word in sorted((word for name in names for word in words(name)), key=len, reverse=True)
    ]
    return re.compile("|".join(parts), re.IGNORECASE)


def read_wanted(text: str, unit: TorqueUnit | None = None) -> Wanted:
    """The torque of one value, range or limit. A number alone takes the unit given."""
    tidy = plain(text)
    unequal = UNEQUAL.match(tidy)
    if unequal:
        return read_unequal(unequal, text, unit)
    bare, sides = without_limits(tidy)
    if len(sides) == 2:
        return read_two_limits(tidy, text)
    bare = BETWEEN.sub(r"\1 to ", bare).strip(" ,;.")
    torque = parse_torque(f"{bare} {unit}" if unit and WHOLE.match(bare) else bare)
    if sides and torque.is_range:
        raise BadInput.of(
            "unreadable", f"{text.strip()[:60]!r} is a range and a limit at once", "write one of the two."
        )
    return limited(torque, text, "at_least" in sides, "at_most" in sides)


def without_limits(tidy: str) -> tuple[str, set[str]]:
    """The text without its words for limits, and which sides they limit ("not more than" is no "more than")."""
    sides: set[str] = set()

    def drop(found: re.Match[str]) -> str:
        sides.add("at_least" if any_of("at_least").fullmatch(found[0]) else "at_most")
        return " "

    return any_of("at_least", "at_most").sub(drop, tidy), sides


def limited(torque: Torque, text: str, least: bool, most: bool) -> Wanted:
    """The band of a value, a range, or a limit on one side."""
    low = torque.low_nm if least or torque.is_range else None
    high = torque.high_nm if most or torque.is_range else None
    return Wanted(text.strip(), torque.unit, torque.nm, low, high)


def read_two_limits(tidy: str, text: str) -> Wanted:
    """ "min 8 N·m, max 10 N·m", in either order; the target is the middle."""
    pieces = [part for part in re.split(r"\s*(?:[,;/]|\band\b)\s*(?=\D)", tidy) if part.strip()]
    parts = [read_wanted(part) for part in pieces] if len(pieces) == 2 else []
    lows = [part.low_nm for part in parts if part.low_nm is not None]
    highs = [part.high_nm for part in parts if part.high_nm is not None]
    if len(parts) != 2 or len(lows) != 1 or len(highs) != 1 or lows[0] > highs[0]:
        raise BadInput.of("unreadable", f"{text.strip()[:60]!r} cannot be read", 'write it as "8-10 N·m".')
    return Wanted(text.strip(), parts[0].unit, (lows[0] + highs[0]) / 2, lows[0], highs[0])


def read_unequal(shape: re.Match[str], text: str, unit: TorqueUnit | None) -> Wanted:
    """ "10 +2/-1 N·m" or "10 N·m +10/-5 %": limits that are not as far down as up."""
    named = [part.strip(" .") for part in (shape["unit1"], shape["unit2"].replace("%", "")) if part.strip(" .")]
    if not named and unit is None:
        raise BadInput.of("no-unit", f"the torque {text.strip()[:60]!r} has no unit", 'write it as "10 +2/-1 N·m".')
    per = torque_unit(named[-1]) if named else unit
    assert per is not None
    percent = "%" in (shape["percent1"], shape["unit2"].strip())
    value, plus, minus = number(shape["value"]), number(shape["plus"]), number(shape["minus"])
    if percent:
        plus, minus = plus * value / 100, minus * value / 100
    if minus >= value or plus + minus <= 0:
        raise BadInput.of("unreadable", f"in {text.strip()[:60]!r} the tolerance is not one", 'write "10 +2/-1 N·m".')
    if shape["rest"]:
        parse_torque(f"{value} {per} {shape['rest']}")
    return Wanted(text.strip(), per, value * per.nm, (value - minus) * per.nm, (value + plus) * per.nm)
