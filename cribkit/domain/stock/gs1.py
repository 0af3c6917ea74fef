"""Scans of trade packages: GS1 element strings with item number (GTIN), lot, expiry and count.

Sources: GS1 General Specifications 3.4 (dates), 7.8 (check digits, element strings); the identifiers are in gs1.toml.
"""

from __future__ import annotations

import datetime as dt
import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache

from cribkit.domain.problem import BadInput, CribkitError
from cribkit.domain.stock.dates import last_day
from cribkit.domain.tables import table

FNC1 = "\x1d"  # the separator that a scanner sends; "^" is accepted for it, as GS1's own test data writes it
SYMBOLOGIES = ("]C1", "]d2", "]Q3", "]e0")  # what a scanner may send first: GS1-128, DataMatrix, QR, DataBar
# GS1 General Specifications figure 7.11-1: the characters that a value may have (character set 82).
TEXT = re.compile(r"[!\"%&'()*+,\-./0-9:;<=>?A-Z_a-z]+\Z", re.ASCII)
DIGITS = re.compile(r"[0-9]+\Z", re.ASCII)
BRACKETED = re.compile(r"\((?P<ai>[0-9]{2,4})\)(?P<value>(?:\\\(|[^(])*)", re.ASCII)
LOOKS = re.compile(r"[\x1d^]|\]|\([0-9]{2,4}\)|(00|01|02)[0-9]{14}", re.ASCII)
ITEM_NUMBERS = (8, 12, 13, 14)  # digits of GTIN-8, -12, -13 and -14
TODO = "scan it again, or type tag, lot and expiry from the label."


@dataclass(frozen=True, slots=True)
class Identifier:
    """One row of the table."""

    ai: str
    least: int
    most: int
    digits: bool = False
    check: bool = False
    date: bool = False
    fixed: bool = False
    needs: tuple[str, ...] = ()
    excludes: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Scan:
    """What a package says of itself. `gtin` has 14 digits; weights in kg."""

    gtin: str
    lot: str = ""
    expires_on: dt.date | None = None
    count: int | None = None  # AI 30 or 37
    serial: str = ""
    weight_kg: float | None = None
    elements: tuple[tuple[str, str], ...] = ()  # every identifier and its value


def looks_like_scan(text: str) -> bool:
    """Whether a text is meant as an element string, right or wrong."""
    return LOOKS.match(text) is not None


def check_digit(digits: str) -> int:
    """The modulo 10 check digit of the digits before it: weights 3, 1, 3 ... from the right."""
    total = sum(int(digit) * (3 if place % 2 == 0 else 1) for place, digit in enumerate(reversed(digits)))
    return -total % 10


def is_checked(number: str) -> bool:
    """Whether a number's last digit is its check digit."""
    return len(number) > 1 and bool(DIGITS.match(number)) and check_digit(number[:-1]) == int(number[-1])


def as_gtin(text: str) -> str | None:
    """A plain barcode number as a GTIN of 14 digits; None where it is none or its check digit is wrong."""
    return text.zfill(14) if len(text) in ITEM_NUMBERS and is_checked(text) else None


def parse_scan(text: str, today: dt.date) -> Scan:
    """Read an element string, bracketed or as the scanner sends it. BadInput where any part of it is wrong."""
    elements = tuple(bracketed(text) if text.lstrip().startswith("(") else raw(text))
    names = [ai for ai, _ in elements]
    for ai, value in elements:
        check_value(ai, value)
        check_company(ai, names)
        if row_of(ai).date:
            scan_date(value, today, ai)
    values = dict(elements)
    if len(values) != len(elements):
        raise wrong("an identifier is there twice")
    gtin = values.get("01") or values.get("02")
    if gtin is None:
        raise wrong("there is no item number (01) in it")
    expiry = values.get("17") or values.get("7003") or values.get("15")
    count = values.get("30") or values.get("37")
    weight = next(((ai, value) for ai, value in elements if ai.startswith("310")), None)
    return Scan(
        gtin=gtin,
        lot=values.get("10", ""),
        expires_on=scan_date(expiry, today) if expiry else None,
        count=int(count) if count else None,
        serial=values.get("21", ""),
        weight_kg=int(weight[1]) / 10 ** int(weight[0][3]) if weight else None,
        elements=elements,
    )


def bracketed(text: str) -> Iterator[tuple[str, str]]:
    """Elements of the form that people read: (01)12345678901231(10)ABC."""
    place = 0
    stripped = text.strip()
    while place < len(stripped):
        found = BRACKETED.match(stripped, place)
        if found is None:
            raise wrong("the brackets do not pair")
        yield found["ai"], found["value"].replace("\\(", "(")
        place = found.end()


def raw(text: str) -> Iterator[tuple[str, str]]:
    """Elements as a scanner sends them: values of variable length end at a separator."""
    rest = text.strip(" \r\n\t").replace("^", FNC1)
    for mark in SYMBOLOGIES:
        rest = rest.removeprefix(mark)
    rest = rest.lstrip(FNC1)
    if not rest:
        raise wrong("it is empty")
    while rest:
        row, ai = identifier_at(rest)
        rest = rest[len(ai) :]
        value = rest[: row.most] if row.fixed else rest.partition(FNC1)[0]
        rest = rest[len(value) :].removeprefix(FNC1)
        if FNC1 in value:
            raise wrong(f"({ai}) is too short")
        yield ai, value


def identifier_at(text: str) -> tuple[Identifier, str]:
    """The identifier that a text begins with."""
    for length in (2, 3, 4):
        row = rows().get(pattern(text[:length]))
        if row is not None and len(text) >= length and len(row.ai) == length:
            return row, text[:length]
    raise wrong(f"it has an identifier that is not known: {text[:4]!r}")


def row_of(ai: str) -> Identifier:
    """The row of an identifier; BadInput for one that is not known."""
    row = rows().get(pattern(ai))
    if row is None or len(row.ai) != len(ai):
        raise wrong(f"({ai}) is not known")
    return row


def pattern(ai: str) -> str:
    """The identifier as the table writes it."""
    if ai in rows():
        return ai
    return f"{ai[:-1]}n"


@cache
def rows() -> dict[str, Identifier]:
    """The table by identifier."""
    listed = table("cribkit.domain.stock", "gs1.toml")["ai"]
    lists = ("needs", "excludes")
    return {row["ai"]: Identifier(**(row | {key: tuple(row.get(key, ())) for key in lists})) for row in listed}


def check_value(ai: str, value: str) -> None:
    """Length, characters and check digit of one value."""
    row = row_of(ai)
    if not row.least <= len(value) <= row.most:
        raise wrong(f"({ai}) has {len(value)} characters, not {span(row)}")
    if row.digits and not DIGITS.match(value):
        raise wrong(f"({ai}) must be digits")
    if not TEXT.match(value):
        raise wrong(f"({ai}) has a character that GS1 does not allow")
    if row.check and not is_checked(value):
        raise wrong(f"the check digit of ({ai}) {value} is {value[-1]}, it should be {check_digit(value[:-1])}")


def span(row: Identifier) -> str:
    """The length that a value must have."""
    return f"{row.least}" if row.least == row.most else f"{row.least} to {row.most}"


def check_company(ai: str, names: list[str]) -> None:
    """What must and what must not stand in the same scan."""
    row = row_of(ai)
    if row.needs and not set(row.needs) & set(names):
        raise wrong(f"({ai}) needs ({') or ('.join(row.needs)}) beside it")
    for other in row.excludes:
        if other in names:
            raise wrong(f"({ai}) and ({other}) cannot be together")


def scan_date(text: str, today: dt.date, ai: str = "") -> dt.date:
    """YYMMDD; day 00 is the last day of the month (GS1 General Specifications 3.4.5). The century is the one that
    brings the year from 49 back to 50 ahead of this year (GS1 syntax dictionary, lint_yymmd0)."""
    try:
        if not re.match(r"[0-9]{6}", text, re.ASCII):
            raise ValueError(text)
        year, month, day = century(int(text[:2]), today.year), int(text[2:4]), int(text[4:6])
        return last_day(year, month) if day == 0 else dt.date(year, month, day)
    except (ValueError, IndexError):  # IllegalMonthError is a ValueError; on 3.12 also an IndexError
        raise wrong(f"{f'({ai}) ' if ai else ''}{text[:6]} is not a date YYMMDD") from None


def century(year: int, this_year: int) -> int:
    """The full year for two digits."""
    ahead = year - this_year % 100
    hundreds = this_year // 100 * 100
    if ahead >= 51:
        return hundreds - 100 + year
    return hundreds + year if ahead > -50 else hundreds + 100 + year


def wrong(message: str) -> CribkitError:
    """A scan that cannot be used."""
    return BadInput.of("bad-scan", f"this scan cannot be read: {message}", TODO)
