"""Options that many commands share, so that each has one name, one help text and one meaning."""

from __future__ import annotations

import datetime as dt
import os
import re
from enum import StrEnum
from pathlib import Path
from typing import Annotated

import typer

from cribkit.domain.problem import BadInput


class Form(StrEnum):
    """How an answer is written."""

    TABLE = "table"
    JSON = "json"
    CSV = "csv"
    MARKDOWN = "markdown"
    HTML = "html"


def parse_date(text: str) -> dt.date:
    """An ISO 8601 calendar date, such as 2026-11-30."""
    try:
        return dt.date.fromisoformat(text)
    except ValueError:
        raise typer.BadParameter(f"{text!r} is not a date: write it as 2026-11-30.") from None


def parse_percent(text: str) -> float:
    """A percentage such as "1%" as a fraction; a bare number is percent too."""
    try:
        value = float(text.strip().removesuffix("%")) / 100
    except ValueError:
        value = -1.0
    if not 0 < value < 1:
        raise typer.BadParameter(f"{text!r} is not a percentage: write it as 1%.")
    return value


def today(on: dt.date | None) -> dt.date:
    """The day asked for with --on, else the day on this machine's clock. The only clock of the program's edge."""
    return on or dt.date.today()


def now() -> str:
    """The time on this machine's clock: UTC, ISO 8601."""
    return dt.datetime.now(dt.UTC).strftime("%Y-%m-%dT%H:%M:%SZ")


def days(text: str) -> int:
    """A number of days: 30d, 6w, or 30."""
    found = re.fullmatch(r"(\d{1,5})\s*([dw]?)", text.strip().lower())
    if found is None:
        raise BadInput.of("bad-days", f"{text!r} is not a number of days", "write it as 30d or 6w.")
    return int(found[1]) * (7 if found[2] == "w" else 1)


def form(as_: Form, json: bool) -> Form:
    """`--json` is short for `--as json`."""
    return Form.JSON if json else as_


def person(by: str | None) -> str:
    """Who posts: --by, else CRIBKIT_BY. A posting without a name is refused."""
    name = (by or os.environ.get("CRIBKIT_BY", "")).strip()
    if not name:
        raise BadInput.of("no-name", "a posting needs a person's name", "give --by NAME or set CRIBKIT_BY.")
    return name


As = Annotated[Form, typer.Option("--as", help="How the answer is written.", show_default=True)]
Json = Annotated[bool, typer.Option("--json", help="Short for --as json.")]
On = Annotated[
    dt.date | None,
    typer.Option("--on", parser=parse_date, metavar="DATE", help="Take this day as today (2026-11-30)."),
]
Demo = Annotated[bool, typer.Option("--demo", help="Use a throw-away crib with the demo inventory.")]
Procedures = Annotated[
    Path | None,
    typer.Option(
        "--procedures",
        envvar="CRIBKIT_PROCEDURES",
        metavar="DIR",
        help="Where procedures are looked up by id [default: procedures here].",
    ),
]
By = Annotated[str | None, typer.Option("--by", metavar="NAME", help="Who posts this [env: CRIBKIT_BY].")]
Uncertainty = Annotated[
    float | None,
    typer.Option(
        "--guard",
        parser=parse_percent,
        metavar="UNCERTAINTY",
        help="Keep each torque clear of its limits by the calibration's expanded uncertainty, such as 1%.",
    ),
]
