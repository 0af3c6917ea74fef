"""Rows of the database from the rows of the files."""

from __future__ import annotations

from dataclasses import asdict

from cribkit.store.seed.parts import SeedConsumable, SeedItem, SeedSquare, SeedSupplier, SeedWrench


def item_row(item: SeedItem) -> dict[str, object]:
    """A row of `item`, without its meaning."""
    return {
        "tag": item.tag,
        "kind": item.kind.value,
        "description": item.description,
        "location": item.location,
        "condition": item.condition.value,
        "unit": item.unit,
        "pack": item.pack,
        "contents": item.contents,
        "traits": item.traits,
        "hazards": item.hazards,
        "note": item.note,
        "gtin": item.gtin,
    }


def wrench_row(tag: str, wrench: SeedWrench) -> dict[str, object]:
    """A row of `wrench`."""
    return {"tag": tag, **asdict(wrench)}


def consumable_row(tag: str, facts: SeedConsumable) -> dict[str, object]:
    """A row of `consumable`."""
    return {"tag": tag, **asdict(facts)}


def supplier_row(one: SeedSupplier) -> dict[str, object]:
    """A row of `supplier`."""
    row = asdict(one)
    del row["source"]
    return row


def square_row(one: SeedSquare) -> dict[str, object]:
    """A row of `square`."""
    return {"square": one.square, "limit_nm": one.limit_nm, "note": one.note}
