"""What the files say, checked: the rows as frozen values."""

from __future__ import annotations

import datetime as dt
from dataclasses import dataclass

from cribkit.domain.stock.item import Condition, Kind


@dataclass(frozen=True, slots=True)
class SeedWrench:
    """The row of a torque wrench, beside what every item has."""

    mechanism: str
    range_min: float
    range_max: float
    unit: str
    graduation: float
    second_unit: str
    second_min: float | None
    second_max: float | None
    second_graduation: float | None
    accuracy_pct: float | None
    drive: str
    lever_mm: float | None
    calibrated_on: str | None  # ISO 8601
    interval_months: int
    interval_cycles: int
    certificate: str


@dataclass(frozen=True, slots=True)
class SeedConsumable:
    """The row of a consumable, beside what every item has. Minimum and maximum are in containers."""

    stock_unit: str
    minimum: float | None
    maximum: float | None
    supplier: str | None
    unit_cost: float | None
    service_life_days: int | None


@dataclass(frozen=True, slots=True)
class SeedLot:
    """Stock of one lot, in thousandths of the item's unit."""

    source: str
    lot: str
    amount: int
    expires_on: dt.date | None = None


@dataclass(frozen=True, slots=True)
class SeedItem:
    """One item of the files."""

    source: str  # "tools.csv:3"
    tag: str
    kind: Kind
    description: str
    location: str = ""
    condition: Condition = Condition.OK
    unit: str = "each"
    pack: float = 1.0  # content of one container, in `unit`
    contents: str = ""
    traits: str = ""
    hazards: str = ""
    note: str = ""
    gtin: str = ""
    lots: tuple[SeedLot, ...] = ()
    wrench: SeedWrench | None = None
    consumable: SeedConsumable | None = None


@dataclass(frozen=True, slots=True)
class SeedSupplier:
    """One supplier."""

    source: str
    name: str
    lead_days: float
    minimum_order: float | None
    note: str


@dataclass(frozen=True, slots=True)
class SeedLoan:
    """What is out when the files are loaded for the first time. `amount` in thousandths of the item's unit."""

    source: str
    tag: str
    by: str
    since: dt.date
    amount: int
    lot: str
    job: str
    note: str


@dataclass(frozen=True, slots=True)
class SeedSquare:
    """What the crib's parts of one square bear."""

    source: str
    square: str
    limit_nm: float
    note: str


@dataclass(frozen=True, slots=True)
class Seed:
    """All files of a folder."""

    items: tuple[SeedItem, ...] = ()
    suppliers: tuple[SeedSupplier, ...] = ()
    loans: tuple[SeedLoan, ...] = ()
    squares: tuple[SeedSquare, ...] = ()
    files: frozenset[str] = frozenset()  # which of a crib's files the folder has
    ignored: tuple[str, ...] = ()  # CSV files of other names
