"""What a person hands over the counter: a tag, the number of a barcode, or the scan of a package."""

from __future__ import annotations

import datetime as dt
import difflib
from dataclasses import dataclass

from cribkit.domain.problem import BadInput
from cribkit.domain.stock.amounts import stock_amount
from cribkit.domain.stock.gs1 import Scan, as_gtin, looks_like_scan, parse_scan
from cribkit.domain.stock.item import Item, Kind
from cribkit.domain.stock.thousandths import parts
from cribkit.store.crib import Crib


@dataclass(frozen=True, slots=True)
class Handed:
    """The item that is meant, and what the scan said, if it was one."""

    item: Item
    scan: Scan | None = None

    def amount(self, text: str | None) -> int | None:
        """The amount in thousandths of the item's unit: as written, else the scan's count of containers; None: open."""
        item = self.item
        if text is not None:
            try:
                return stock_amount(text, item.unit, item.pack, counted=item.kind is not Kind.CONSUMABLE)
            except BadInput as error:  # among several amounts, which
                raise BadInput(*(one._replace(source=one.source or item.tag) for one in error.problems)) from None
        if self.scan is None or self.scan.count is None:
            return None
        return parts(self.scan.count * item.pack)

    def lot(self, text: str | None) -> str | None:
        """The lot as written, else the scan's; None: open."""
        scanned = self.scan.lot if self.scan else ""
        if text is not None and scanned and text != scanned:
            raise BadInput.of("two-lots", f"--lot says {text}, the scan {scanned}", "look at the label.", self.item.tag)
        return text if text is not None else scanned or None


def handed(crib: Crib, text: str, today: dt.date) -> Handed:
    """Find the item: the tag first, then what a scanner may have sent."""
    item = crib.item(text)
    if item is not None:
        return Handed(item)
    if looks_like_scan(text):
        scan = parse_scan(text, today)
        return Handed(by_number(crib, scan.gtin), scan)
    gtin = as_gtin(text)
    if gtin is not None:
        return Handed(by_number(crib, gtin))
    raise unknown(crib, text)


def by_number(crib: Crib, gtin: str) -> Item:
    """The item with a barcode number."""
    item = crib.item_by_gtin(gtin)
    if item is None:
        todo = "write it in the gtin column of the item's file and load the files again."
        raise BadInput.of("unknown-gtin", f"no item has the barcode number {gtin}", todo)
    return item


def unknown(crib: Crib, text: str) -> Exception:
    """There is no such tag; the nearest ones are named."""
    tags = [str(row[0]) for row in crib.connection.execute("SELECT tag FROM item")]
    close = difflib.get_close_matches(text.upper(), [tag.upper() for tag in tags], 3)
    todo = f"did you mean {' or '.join(close)}?" if close else "`cribkit find` tells an item's tag."
    return BadInput.of("unknown-tag", f"there is no item {text[:64]}", todo)
