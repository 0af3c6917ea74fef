"""Cells of CSV files: what a spreadsheet would run as a formula is guarded, and the guard is taken back.

A cell that begins with =, +, -, @, a tab or a carriage return may be run by a spreadsheet; an apostrophe in front
makes it text (common practice for CSV export). A cell that begins with an apostrophe already gets one more, so that
taking the guard back always gives the original text. Plain numbers such as -3.5 are left alone.
"""

from __future__ import annotations

import re

STARTS = ("=", "+", "-", "@", "\t", "\r", "'")
NUMBER = re.compile(r"[+-]?\d+(\.\d+)?\Z")


def guard(text: str) -> str:
    """The cell as it may be written to a CSV file."""
    return f"'{text}" if text.startswith(STARTS) and not NUMBER.match(text) else text


def unguard(text: str) -> str:
    """The cell as it was before `guard`."""
    return text[1:] if text.startswith("'") and text[1:].startswith(STARTS) else text
