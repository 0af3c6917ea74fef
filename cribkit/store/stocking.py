"""What restocking needs to know of a crib, read in a few passes over whole tables: never item by item."""

from __future__ import annotations

import datetime as dt
import json
from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass, field

from cribkit.domain.stock.demand import Use
from cribkit.domain.stock.item import Lot
from cribkit.domain.stock.thousandths import parts, whole
from cribkit.store.crib import Crib
from cribkit.store.rows import date, day, lots_of

CONSUMABLES = """
    SELECT item.tag, description, unit, pack, minimum, maximum, coalesce(supplier.name, ''), unit_cost, location
    FROM item JOIN consumable ON consumable.tag = item.tag LEFT JOIN supplier ON supplier.name = consumable.supplier
    ORDER BY item.tag
"""
# What is noted as damaged or missing is no stock. An opened container is good for its service life at most (common
# practice).
LOTS = """
    SELECT balance.tag, balance.lot, inside, expires_on, opened_on, service_life_days, pack
    FROM balance JOIN consumable ON consumable.tag = balance.tag
    JOIN item ON item.tag = balance.tag AND item.condition = 'ok'
    LEFT JOIN lot ON lot.tag = balance.tag AND lot.lot = balance.lot
    WHERE inside > 0
"""
MOVEMENTS = "SELECT tag, day, kind, amount, lot, job FROM movement ORDER BY id"
USES = {"use": 1, "lost": 1, "count": -1}  # what a movement's amount says of use; thrown away is no demand
GONE = {"scrap": 1, "lost": 1, "receive": -1, "found": -1}  # what it says of units that must be replaced
EXPIRIES = "SELECT tag, lot, expires_on FROM lot WHERE expires_on IS NOT NULL"
# A job that took an item out and used nothing of it counts; one that never had it says nothing.
RATIOS = """
    SELECT job_consumable.tag, sum(planned), sum(used), count(*) FROM job_consumable
    JOIN job ON job.job = job_consumable.job AND job.state = 'closed'
    JOIN (SELECT job, tag, sum(CASE kind WHEN 'use' THEN amount ELSE 0 END) AS used FROM movement
          WHERE kind IN ('use', 'issue') AND job <> '' GROUP BY job, tag) AS took
      ON took.job = job_consumable.job AND took.tag = job_consumable.tag
    WHERE planned > 0 GROUP BY job_consumable.tag
"""
TOOLS = "SELECT tag, description, kind FROM item WHERE kind <> 'consumable'"
UNFIT = """
    SELECT item.tag, description, kind, condition, coalesce(sum(inside), 0)
    FROM item LEFT JOIN balance ON balance.tag = item.tag
    WHERE kind <> 'consumable' AND condition <> 'ok' GROUP BY item.tag
"""


TELLING = 3  # closed jobs from which on what was used counts more than the estimate (our own rule)


@dataclass(frozen=True, slots=True)
class Stocked:
    """A consumable's own words. Minimum, maximum and cost are of containers."""

    tag: str
    description: str
    unit: str
    pack: float
    minimum: float | None
    maximum: float | None
    supplier: str
    cost: float | None
    location: str


@dataclass(frozen=True, slots=True)
class Supplier:
    """Who delivers."""

    name: str
    lead_days: float
    minimum_order: float


@dataclass(frozen=True, slots=True)
class Ratio:
    """What closed jobs used of an item, over what their procedures estimated."""

    planned: float
    used: float
    jobs: int

    @property
    def counts(self) -> bool:
        """Whether it rests on enough jobs to count more than the estimate."""
        return self.jobs >= TELLING and self.planned > 0


@dataclass(frozen=True, slots=True)
class Worn:
    """A tool that must be replaced."""

    tag: str
    description: str
    kind: str
    count: float
    why: str


def consumables(crib: Crib) -> tuple[Stocked, ...]:
    """Every consumable, in the order of the tags."""
    return tuple(Stocked(*row) for row in crib.connection.execute(CONSUMABLES))


def lots(crib: Crib) -> dict[str, tuple[Lot, ...]]:
    """What is in the crib of each consumable, with the day through which it may be used."""
    found: dict[str, list[Lot]] = defaultdict(list)
    for tag, lot, inside, expires_on, opened_on, life, pack in crib.connection.execute(LOTS):
        found[tag] += lots_of(lot, inside, date(expires_on), date(opened_on), life, parts(pack))
    return {tag: tuple(lots) for tag, lots in found.items()}


@dataclass(slots=True)
class Record:
    """What the movements say, read in one pass."""

    uses: dict[str, list[Use]]  # of each consumable, oldest first
    first: dict[str, dt.date]  # the first day on record of each item
    shelf_days: dict[str, int]  # the longest time for which a delivery was good when it came
    gone: dict[str, tuple[int, dt.date]]  # thousandths lost or scrapped and not replaced, and the last day
    apart: dict[str, list[Use]] = field(default_factory=lambda: defaultdict(list))  # uses of the jobs named


def record(crib: Crib, since: dt.date, without_jobs: Iterable[str] = ()) -> Record:
    """Uses from that day on, those of these jobs apart; the rest over all movements.

    A use is what was used up, lost, or found less at a count (found more is taken off again). Units of a tool that
    were lost or scrapped are gone until as many came in or were found.
    """
    skipped = set(without_jobs)
    expiries = {(tag, lot): day(text) for tag, lot, text in crib.connection.execute(EXPIRIES)}
    days: dict[str, dt.date] = {}  # a record has many movements on each day
    uses: dict[str, list[Use]] = defaultdict(list)
    found = Record(uses, {}, {}, {})
    for tag, text, kind, amount, lot, job in crib.connection.execute(MOVEMENTS):
        on = days.get(text) or days.setdefault(text, day(text))
        if tag not in found.first or on < found.first[tag]:
            found.first[tag] = on
        if kind in USES and on >= since:
            (found.apart if job in skipped else uses)[tag].append(Use(on, USES[kind] * whole(amount)))
        if kind in GONE:
            count_gone(found, tag, GONE[kind] * amount, on)
        if kind == "receive" and (expiry := expiries.get((tag, lot))) and expiry > on:
            found.shelf_days[tag] = max(found.shelf_days.get(tag, 0), (expiry - on).days)
    return found


def count_gone(found: Record, tag: str, amount: int, on: dt.date) -> None:
    """Keep how much of a tag must be replaced: what came before anything was gone replaces nothing."""
    left, last = found.gone.get(tag, (0, on))
    if amount > 0 or left:
        found.gone[tag] = max(0, left + amount), max(last, on) if amount > 0 else last


def jobs_of(crib: Crib, procedures: Iterable[str]) -> tuple[str, ...]:
    """The jobs that were done after one of these procedures."""
    asked = set(procedures)
    rows = crib.connection.execute("SELECT job, procedures FROM job ORDER BY job")
    return tuple(job for job, done in rows if asked & {procedure for procedure, _revision in json.loads(done)})


def suppliers(crib: Crib) -> dict[str, Supplier]:
    """Every supplier by name."""
    rows = crib.connection.execute("SELECT name, lead_days, coalesce(minimum_order, 0) FROM supplier ORDER BY name")
    return {row[0]: Supplier(*row) for row in rows}


def ratios(crib: Crib) -> dict[str, Ratio]:
    """Used and estimated amounts of each item over the closed jobs."""
    rows = crib.connection.execute(RATIOS)
    return {tag: Ratio(whole(planned), whole(used), jobs) for tag, planned, used, jobs in rows}


def worn_tools(crib: Crib, gone: dict[str, tuple[int, dt.date]]) -> tuple[Worn, ...]:
    """Tools that were lost or scrapped and not replaced, and those noted as damaged or missing."""
    found = {
        tag: Worn(tag, what, kind, whole(gone[tag][0]), f"lost or scrapped, last on {gone[tag][1].isoformat()}")
        for tag, what, kind in crib.connection.execute(TOOLS)
        if gone.get(tag, (0, None))[0] > 0
    }
    for tag, what, kind, condition, inside in crib.connection.execute(UNFIT):
        before = found.get(tag)
        count = max(1.0, whole(inside)) if before is None else before.count + whole(inside)
        found[tag] = Worn(tag, what, kind, count, condition if before is None else f"{condition}; {before.why}")
    return tuple(found[tag] for tag in sorted(found))
