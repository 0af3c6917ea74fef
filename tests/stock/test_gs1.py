"""Scans: check digits, element strings and dates against GS1's own published data."""

from __future__ import annotations

import contextlib
import datetime as dt

import pytest
from hypothesis import given
from hypothesis import strategies as st

from cribkit.domain.problem import BadInput
from cribkit.domain.stock.gs1 import as_gtin, century, check_digit, is_checked, looks_like_scan, parse_scan, scan_date

TODAY = dt.date(2026, 11, 25)

# GS1 syntax dictionary, test data of lint_csum.
GOOD = ["02345673", "416000336108", "1234567890128", "12345678901231", "123456789012345675"]
BAD = ["12345673", "1234567890129", "12345678901232", "", "   "]
# Examples of GTIN-13 and GTIN-12 in GS1's public guides, and one GTIN-14 whose digit was computed by hand.
EXAMPLES = ["6291041500213", "4006381333931", "9501101530003", "036000291452", "06141411234562"]


@pytest.mark.parametrize("number", GOOD + EXAMPLES)
def test_a_right_check_digit_is_accepted(number: str) -> None:
    assert is_checked(number)


@pytest.mark.parametrize("number", BAD)
def test_a_wrong_check_digit_is_refused(number: str) -> None:
    assert not is_checked(number)


@given(st.from_regex(r"[0-9]{13}", fullmatch=True), st.integers(0, 13), st.integers(1, 9))
def test_any_single_wrong_digit_is_found(body: str, place: int, shift: int) -> None:
    number = f"{body}{check_digit(body)}"
    changed = number[:place] + str((int(number[place]) + shift) % 10) + number[place + 1 :]
    assert is_checked(number)
    assert not is_checked(changed)


def test_short_item_numbers_are_padded_to_14_digits() -> None:
    assert as_gtin("02345673") == "00000002345673"
    assert as_gtin("416000336108") == "00416000336108"
    assert as_gtin("1234567890128") == "01234567890128"
    assert as_gtin("1234567890129") is None
    assert as_gtin("SK-8") is None


# GS1 syntax engine, test data of ai.c and scandata.c ("^" stands for FNC1).
@pytest.mark.parametrize(
    ("raw", "bracketed"),
    [
        ("^01123456789012311012345", "(01)12345678901231(10)12345"),
        ("^011231231231233310ABC123^99TESTING", "(01)12312312312333(10)ABC123(99)TESTING"),
        ("^0112345678901231^1012345", "(01)12345678901231(10)12345"),
        ("^01123456789012311012345^", "(01)12345678901231(10)12345"),
        ("]C101123456789012311012345", "(01)12345678901231(10)12345"),
        ("]d201123456789012311012345", "(01)12345678901231(10)12345"),
        ("]Q301123456789012311012345", "(01)12345678901231(10)12345"),
        ("]e001123456789012311012345", "(01)12345678901231(10)12345"),
        ("0112345678901231\x1d1012345", "(01)12345678901231(10)12345"),
    ],
    ids=[
        "fixed then lot",
        "lot then text",
        "needless separator",
        "separator at the end",
        *"CdQe",
        "as a keyboard types",
    ],
)
def test_what_the_scanner_sends_and_what_people_read_are_the_same(raw: str, bracketed: str) -> None:
    assert looks_like_scan(raw)
    assert looks_like_scan(bracketed)
    assert parse_scan(raw, TODAY) == parse_scan(bracketed, TODAY)


# GS1 syntax engine and dictionary: short value, bad check digit, illegal month, and what must stand together.
@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("^011234567890123", "(01) has 13 characters, not 14"),
        ("^0112345678901234", "check digit of (01) 12345678901234 is 4, it should be 1"),
        ("(01)12345678901231(11)131313", "(11) 131313 is not a date"),
        ("(01)12345678901231(17)210229", "(17) 210229 is not a date"),
        ("(10)ABC", "(10) needs (01) or (02)"),
        ("(17)261231", "(17) needs (01) or (02)"),
        ("(02)12345678901231", "(02) needs (37)"),
        ("(01)12345678901231(02)12345678901231(37)2", "cannot be together"),
        ("(01)12345678901231(37)5", "(37) needs"),
        ("(01)12345678901231(30)123456789", "(30) has 9 characters"),
        ("(01)12345678901231(30)1x", "(30) must be digits"),
        ("(01)12345678901231(10)A\u00e9", "character that GS1 does not allow"),
        ("(01)12345678901231(10)A(10)B", "twice"),
        ("(01)12345678901231(88)1", "(88) is not known"),
        ("(21)ABC", "no item number"),
        ("(01", "brackets"),
        ("]C1", "empty"),
        ("^8812345", "not known"),
    ],
)
def test_a_scan_that_breaks_a_rule_is_refused(text: str, message: str) -> None:
    with pytest.raises(BadInput) as refused:
        parse_scan(text, TODAY)
    assert message in str(refused.value)


def test_lot_expiry_and_count_are_read() -> None:
    scan = parse_scan("(01)12345678901231(17)270300(10)LOT-7/B(30)12(21)S1", TODAY)
    assert (scan.gtin, scan.lot, scan.expires_on) == ("12345678901231", "LOT-7/B", dt.date(2027, 3, 31))
    assert (scan.count, scan.serial) == (12, "S1")
    assert parse_scan("(02)12345678901231(37)24(10)L", TODAY).count == 24


def test_a_weight_has_its_decimals_in_the_identifier() -> None:
    """GS1 syntax engine: (3103) is a net weight in kg with three decimals."""
    assert parse_scan("(01)95012345678903(3103)000123", TODAY).weight_kg == pytest.approx(0.123)


# GS1 General Specifications 3.4.5: day 00 is the last day of the month, leap years included.
@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("130200", dt.date(2013, 2, 28)),
        ("160200", dt.date(2016, 2, 29)),
        ("200229", dt.date(2020, 2, 29)),
        ("240229", dt.date(2024, 2, 29)),
        ("000229", dt.date(2000, 2, 29)),
    ],
)
def test_a_date_of_six_digits(text: str, day: dt.date) -> None:
    assert scan_date(text, TODAY) == day


# GS1 syntax dictionary, test data of lint_yymmd0.
@pytest.mark.parametrize("text", ["200230", "210229", "200431", "200010", "201310", "11111"])
def test_a_day_that_does_not_exist_is_refused(text: str) -> None:
    with pytest.raises(BadInput):
        scan_date(text, TODAY)


# GS1 syntax dictionary, lint_yymmd0: from 49 years back to 50 years ahead.
@pytest.mark.parametrize(
    ("digits", "this_year", "year"),
    [
        (76, 2026, 2076),
        (77, 2026, 1977),
        (26, 2026, 2026),
        (99, 2026, 1999),
        (0, 2026, 2000),
        (0, 2050, 2100),
        (1, 2050, 2001),
        (0, 2049, 2000),
        (49, 2099, 2149),
        (50, 2099, 2050),
    ],
)
def test_the_century_of_two_digits(digits: int, this_year: int, year: int) -> None:
    assert century(digits, this_year) == year


@given(st.text(max_size=60) | st.from_regex(r"[\^\x1d]?(01)[0-9]{10,16}(10|17|30|21)?[0-9A-Z^]{0,30}", fullmatch=True))
def test_no_input_ends_in_anything_but_a_scan_or_a_message(text: str) -> None:
    with contextlib.suppress(BadInput):
        assert is_checked(parse_scan(text, TODAY).gtin)
