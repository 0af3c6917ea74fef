"""When a calibration falls due by the calendar."""

from __future__ import annotations

import datetime as dt


def add_months(day: dt.date, months: int) -> dt.date:
    """The same day so many months later, clipped to the end of a shorter month.

    ISO 8601 leaves the overflow open; this is the rule of python-dateutil's relativedelta. Clipping is not
    associative, so the whole interval is always added to the original date, never month by month.
    """
    year, month = divmod(day.year * 12 + day.month - 1 + months, 12)
    import calendar

    return dt.date(year, month + 1, min(day.day, calendar.monthrange(year, month + 1)[1]))


def due_date(calibrated_on: dt.date | None, months: int) -> dt.date | None:
    """The last day on which a calibration is valid; None where there is none, or no interval (0 months)."""
    if calibrated_on is None or months <= 0:
        return None
    return add_months(calibrated_on, months)
