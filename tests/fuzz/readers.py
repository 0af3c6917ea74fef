"""The readers of what people and machines write, each as a function of bytes."""

from __future__ import annotations

import contextlib
import datetime as dt
from collections.abc import Callable
from pathlib import Path

from cribkit.domain.problem import CribkitError
from cribkit.domain.procedure import read_procedure
from cribkit.domain.stock.amounts import stock_amount
from cribkit.domain.stock.dates import parse_expiry
from cribkit.domain.stock.gs1 import parse_scan
from cribkit.store.seed.columns import FILES
from cribkit.store.seed.folder import read_row
from cribkit.store.seed.sheet import parse_sheet
from tests.store.small import FILES as SMALL

ROOT = Path(__file__).parents[2]
TODAY = dt.date(2026, 11, 25)


def csv(data: bytes) -> None:
    """Every file of the seed inventory."""
    for name, columns in FILES.items():
        sheet = parse_sheet(
            data, name, tuple(one.name for one in columns), tuple(o.name for o in columns if o.required)
        )
        for row in sheet.rows:
            read_row(name, row, [])


def toml(data: bytes) -> None:
    """A procedure."""
    read_procedure(data.decode("utf-8", "replace"), "fuzz.toml")


def scan(data: bytes) -> None:
    """What a scanner sends."""
    parse_scan(data.decode("utf-8", "replace"), TODAY)


def amount(data: bytes) -> None:
    """An amount at the counter."""
    text = data.decode("utf-8", "replace")
    parse_expiry(text)
    for unit, pack in (("each", 1.0), ("each", 100.0), ("mL", 400.0)):
        stock_amount(text, unit, pack)


def forgiving(reader: Callable[[bytes], None]) -> Callable[[bytes], None]:
    """Bad input told as problems is a good end."""

    def read(data: bytes) -> None:
        with contextlib.suppress(CribkitError):
            reader(data)

    return read


READERS = {reader.__name__: forgiving(reader) for reader in (csv, toml, scan, amount)}
INPUTS: dict[str, list[bytes]] = {
    "csv": [text.encode() for text in SMALL.values()],
    "toml": [path.read_bytes() for path in sorted((ROOT / "procedures").glob("*.toml"))[:6]],
    "scan": [b"(01)12345678901231(17)270300(10)LOT-7/B(30)12", b"]C10112345678901231\x1d10ABC\x1d30005"],
    "amount": [b"2 cans", b"1 1/2 L", b"half a box", b"2 x 400 mL", b"2026-11"],
}
