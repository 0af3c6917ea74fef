"""What restocking needs to know of a crib, read in a few passes over whole tables: never item by item."""

from __future__ import annotations

import datetime as dt
import json
from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass

from cribkit.domain.stock.demand import Use
from cribkit.domain.stock.item import Lot
from cribkit.domain.stock.movement import whole
from cribkit.store.crib import Crib
from cribkit.store.rows import date, day

CONSUMABLES = """
    SELECT item.tag, description, unit, pack, minimum, maximum, coalesce(supplier.name, ''), unit_cost, location
    FROM item JOIN consumable ON consumable.tag = item.tag LEFT JOIN supplier ON supplier.name = consumable.supplier
    WHERE condition <> 'missing' ORDER BY item.tag
"""
# An opened container is good for its service life at most (common practice).
LOTS = """
    SELECT balance.tag, balance.lot, inside, expires_on,
           date(opened_on, '+' || service_life_days || ' days') AS served_until
    FROM balance JOIN consumable ON consumable.tag = balance.tag
    LEFT JOIN lot ON lot.tag = balance.tag AND lot.lot = balance.lot
    WHERE inside > 0
"""
# Used up, lost, or found less at a count; found more is taken off again. Thrown away is no demand.
USES = """
    SELECT movement.tag, day, sum(CASE movement.kind WHEN 'count' THEN -amount ELSE amount END)
    FROM movement JOIN consumable ON consumable.tag = movement.tag
    WHERE movement.kind IN ('use', 'lost', 'count') AND day >= ? {} GROUP BY movement.tag, day
"""
NOT_OF = "AND (job = '' OR job NOT IN (SELECT value FROM json_each(?)))"
FIRST = "SELECT tag, min(day) FROM movement GROUP BY tag"
SHELF_LIVES = """
    SELECT movement.tag, max(julianday(expires_on) - julianday(day))
    FROM movement JOIN lot ON lot.tag = movement.tag AND lot.lot = movement.lot
    WHERE movement.kind = 'receive' AND amount > 0 AND expires_on > day GROUP BY movement.tag
"""
RATIOS = """
    SELECT job_consumable.tag, sum(planned), sum(used), count(*) FROM job_consumable
    JOIN job ON job.job = job_consumable.job AND job.state = 'closed'
    JOIN (SELECT job, tag, sum(amount) AS used FROM movement WHERE kind = 'use' AND job <> '' GROUP BY job, tag) AS took
      ON took.job = job_consumable.job AND took.tag = job_consumable.tag
    WHERE planned > 0 GROUP BY job_consumable.tag
"""
# Units of a tool that went for good, and what came in their place since the first of them.
GONE = """
    WITH gone AS (
        SELECT movement.tag, min(movement.id) AS first, max(day) AS last, sum(amount) AS amount
        FROM movement JOIN item ON item.tag = movement.tag AND item.kind <> 'consumable'
        WHERE movement.kind IN ('scrap', 'lost') GROUP BY movement.tag)
    SELECT gone.tag, item.description, item.kind, gone.last, gone.amount - coalesce(sum(came.amount), 0)
    FROM gone JOIN item ON item.tag = gone.tag
    LEFT JOIN movement AS came ON came.tag = gone.tag AND came.id > gone.first AND came.kind IN ('receive', 'found')
    GROUP BY gone.tag
"""
UNFIT = """
    SELECT item.tag, description, kind, condition, coalesce(sum(inside), 0)
    FROM item LEFT JOIN balance ON balance.tag = item.tag
    WHERE kind <> 'consumable' AND condition <> 'ok' GROUP BY item.tag
"""


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
    for tag, lot, inside, expires_on, served_until in crib.connection.execute(LOTS):
        last = min((text for text in (expires_on, served_until) if text), default=None)
        found[tag].append(Lot(lot, whole(inside), date(last)))
    return {tag: tuple(lots) for tag, lots in found.items()}


def uses(crib: Crib, since: dt.date, without_jobs: Iterable[str] = ()) -> dict[str, list[Use]]:
    """What was used of each consumable on each day, apart from what these jobs used."""
    jobs = sorted(without_jobs)
    sql = USES.format(NOT_OF if jobs else "")
    values = (since.isoformat(), *([json.dumps(jobs)] if jobs else []))
    found: dict[str, list[Use]] = defaultdict(list)
    for tag, on, amount in crib.connection.execute(sql, values):
        found[tag].append(Use(day(on), whole(amount)))
    return found


def first_days(crib: Crib) -> dict[str, dt.date]:
    """The first day on record of each item."""
    return {tag: day(first) for tag, first in crib.connection.execute(FIRST)}


def jobs_of(crib: Crib, procedures: Iterable[str]) -> tuple[str, ...]:
    """The jobs that were done after one of these procedures."""
    asked = set(procedures)
    rows = crib.connection.execute("SELECT job, procedures FROM job ORDER BY job")
    return tuple(job for job, done in rows if asked & {_id(one) for one in json.loads(done)})


def _id(done: object) -> str:
    """The procedure's id: alone, or with its revision."""
    return str(done.get("id", "")) if isinstance(done, dict) else str(done)


def suppliers(crib: Crib) -> dict[str, Supplier]:
    """Every supplier by name."""
    rows = crib.connection.execute("SELECT name, lead_days, coalesce(minimum_order, 0) FROM supplier ORDER BY name")
    return {row[0]: Supplier(*row) for row in rows}


def shelf_lives(crib: Crib) -> dict[str, int]:
    """The longest time for which a delivery of each item was good when it came, in days."""
    return {tag: int(days) for tag, days in crib.connection.execute(SHELF_LIVES)}


def ratios(crib: Crib) -> dict[str, Ratio]:
    """Used and estimated amounts of each item over the closed jobs."""
    rows = crib.connection.execute(RATIOS)
    return {tag: Ratio(whole(planned), whole(used), jobs) for tag, planned, used, jobs in rows}


def worn_tools(crib: Crib) -> tuple[Worn, ...]:
    """Tools that were lost or scrapped and not replaced, and those noted as damaged or missing."""
    found = {
        tag: Worn(tag, what, kind, whole(left), f"lost or scrapped, last on {last}")
        for tag, what, kind, last, left in crib.connection.execute(GONE)
        if left > 0
    }
    for tag, what, kind, condition, inside in crib.connection.execute(UNFIT):
        before = found.get(tag)
        count = max(1.0, whole(inside)) if before is None else before.count + whole(inside)
        found[tag] = Worn(tag, what, kind, count, condition if before is None else f"{condition}; {before.why}")
    return tuple(found[tag] for tag in sorted(found))
