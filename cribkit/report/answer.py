"""What a command has to say, in every form that it can be asked for."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import NamedTuple

from cribkit.domain.problem import Problem


class Listing(NamedTuple):
    """Rows under column names. Cells are text, numbers, dates or None."""

    columns: tuple[str, ...]
    rows: tuple[tuple[object, ...], ...]
    empty: str = "Nothing to list."  # what a person reads when there are no rows


class Answer(NamedTuple):
    """One command's answer. `ok` false means: done, and the answer is no (exit code 1).

    The forms are made only when asked for, so that a table is not laid out for someone who wants JSON.
    """

    command: str  # "check", "wrench covers"
    ok: bool
    result: Callable[[], Mapping[str, object]]  # the JSON contract's result
    listing: Callable[[], Listing]  # the rows, for csv and markdown
    text: Callable[[int], str] | None = None  # the page for a person, this many columns wide; None: the listing
    markdown: Callable[[], str] | None = None  # None: the listing
    sheet: Callable[[], str] | None = None  # a whole HTML page; None: html is refused
    problems: tuple[Problem, ...] = ()  # told on stderr too
