"""Days as people write them in stock: a day, or a month that means its last day."""

from __future__ import annotations

import calendar
import datetime as dt
import re

DAY = re.compile(r"(\d{4})-(\d{2})-(\d{2})\Z", re.ASCII)
MONTH = re.compile(r"(\d{4})-(\d{2})\Z", re.ASCII)


def last_day(year: int, month: int) -> dt.date:
    """The last day of a month."""
    return dt.date(year, month, calendar.monthrange(year, month)[1])


def parse_day(text: str) -> dt.date | None:
    """An ISO 8601 calendar date; None where the text is not one or the day does not exist."""
    found = DAY.match(text)
    try:
        return dt.date(*map(int, found.groups())) if found else None
    except ValueError:
        return None


def parse_expiry(text: str) -> dt.date | None:
    """A day, or a month: month-year dates expire on the last day of the month (shelf-life practice, PS Magazine 710
    p. 51). None where the text is neither."""
    found = MONTH.match(text)
    if found and int(found[1]) > 0 and 1 <= int(found[2]) <= 12:
        return last_day(int(found[1]), int(found[2]))
    return parse_day(text)
