"""Numbers of a text as sizes: squares, lengths that belong together, canonical text."""

from __future__ import annotations

import re
from dataclasses import dataclass
from fractions import Fraction

from cribkit.domain.wording.lexer import Token
from cribkit.domain.wording.measure import MM, decimal, mm_of, number, tell

# Square drives, ISO 1174-1 nominal sizes in mm beside their inch names (from memory), with what people round them to.
SQUARES = {
    "1/4": ("6.3", "6.35", "6"),
    "3/8": ("10", "9.5", "9.53", "9.525"),
    "1/2": ("12.5", "12.7", "13", "12"),
    "3/4": ("20", "19", "19.05"),
    "1": ("25", "25.4"),
    "1-1/2": ("38", "38.1", "40"),
}
_INCH_SQUARES = {number(inch.replace("-", " ")): inch for inch in SQUARES}
_MM_SQUARES = {Fraction(mm): inch for inch, many in SQUARES.items() for mm in many}


# .032 is thousandths of an inch: a millimetre has a nought before its point. Common practice.
_THOU = re.compile(r"\.\d{3,4}")
# A decimal with a figure before its point is in mm where no unit stands: 0.25, 4.75.
_DECIMAL = re.compile(r"\d+\.")


@dataclass(frozen=True, slots=True)
class Length:
    """One length as written: its exact value and its unit, "" where none stands."""

    value: Fraction
    unit: str

    @property
    def text(self) -> str:
        """Canonical: "8 mm", "5/16 in"; lengths in cm, m and ft become mm."""
        if self.unit == "ft":
            return f"{tell(self.value * 12)} in"
        if self.unit == "in" or (not self.unit and self.value.denominator in (2, 4, 8, 16, 32, 64) and self.fraction):
            return f"{tell(self.value)} in"
        return f"{decimal(self.value * MM.get(self.unit or 'mm', Fraction(1)))} mm"

    @property
    def fraction(self) -> bool:
        """Whether it can only be an inch size: below 1 or with a binary fraction finer than a half."""
        return self.value < 1 or self.value.denominator > 2

    @property
    def mm(self) -> Fraction:
        """The length in mm."""
        return mm_of(self.text)


LARGEST_BARE_INCH = 2  # a whole number up to this beside a fraction is in inches: 15/16 x 1


@dataclass(slots=True)
class Group:
    """Numbers that stand together: one alone, "10 x 11" (by), "8-16 mm" (range), "3/8 to 1/4"."""

    tokens: list[Token]
    relation: str  # "", "by", "range"

    def lengths(self) -> list[Length]:
        """The lengths, a missing unit taken from the next number that has one."""
        units = self._units()
        found = []
        for place, token in enumerate(self.tokens):
            written = "/" in token.text or token.values[0].startswith((".", "0."))
            inch = "/" in token.values[0] or _THOU.fullmatch(token.values[0])
            unit = units[place] or ("in" if written and inch else "")
            if not unit:
                unit = next((later for later in units[place + 1 :] if later), "") or next(
                    (earlier for earlier in reversed(units[:place]) if earlier), ""
                )
            if not unit and self.relation and number(token.values[0]) <= LARGEST_BARE_INCH:
                unit = "in" if any("/" in other.values[0] for other in self.tokens) else ""
            if not unit and _DECIMAL.match(token.values[0]):
                unit = "in" if any(_THOU.fullmatch(other.values[0]) for other in self.tokens) else "mm"
            found.append(Length(number(token.values[0]), unit))
        return found

    def _units(self) -> list[str]:
        """The units as written, and those that a row of bare numbers has by its decimals."""
        units = [token.unit for token in self.tokens]
        values = [token.values[0] for token in self.tokens]
        if self.relation != "by" or any(units) or any("/" in value for value in values):
            return units
        if any(_THOU.fullmatch(value) for value in values) and all("." in value for value in values):
            return ["in"] * len(units)  # 1.500 x 2.250 x .375
        bare = any(value.startswith("0.") for value in values) and not any(value.startswith(".") for value in values)
        return ["mm"] * len(units) if bare and max(map(number, values)) > LARGEST_BARE_INCH else units

    @property
    def free(self) -> bool:
        """Whether no number of it has been used."""
        return not any(token.used for token in self.tokens)

    def use(self) -> None:
        """Mark its numbers as read."""
        for token in self.tokens:
            token.used = True


def square(token: Token) -> str:
    """The square that a number names ("3/8", "10 mm"), or ""."""
    value = number(token.values[0])
    if token.unit == "in" or (not token.unit and ("/" in token.values[0] or value <= 1)):
        return _INCH_SQUARES.get(value, "")
    return _MM_SQUARES.get(value, "") if token.unit in ("mm", "") else ""


def groups(tokens: list[Token]) -> list[Group]:
    """The unused numbers, those that belong together in one group."""
    found: list[Group] = []
    place = 0
    while place < len(tokens):
        token = tokens[place]
        if token.kind != "num" or token.used:
            place += 1
            continue
        group = Group([token], "")
        while place + 2 < len(tokens) and (relation := _relation(tokens, place, group)):
            group.relation = relation
            group.tokens.append(tokens[place + 2])
            place += 2
        found.append(group)
        place += 1
    return found


def _relation(tokens: list[Token], place: int, group: Group) -> str:
    """How the number at this place and the next belong together, "" if they do not."""
    link, after = tokens[place + 1], tokens[place + 2]
    here = tokens[place]
    if link.kind == "dash" and here.unit != "mm" and "/" in here.text and after.unit == "mm":
        return ""
    if after.kind != "num" or after.used:
        return ""
    if link.kind == "by" or (link.kind == "word" and link.text in ("x", "by")):
        return "by"
    if link.kind == "slash" or (link.kind == "stop" and link.text == "+"):
        return "by"
    if (
        link.kind == "dash" or (link.kind == "word" and link.text in ("to", "thru", "through", "until"))
    ) and not group.relation:
        return "range"
    return ""
