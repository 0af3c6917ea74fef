"""What is out: who has it, since when, for which job."""

from __future__ import annotations

import datetime as dt
from dataclasses import dataclass

from cribkit.domain.stock.item import Kind
from cribkit.store.crib import Crib
from cribkit.store.rows import date, day

QUERY = """
    SELECT loan.tag, loan.lot, holder, job, amount, since, due, lot.expires_on, description, kind, unit, pack
    FROM loan JOIN item ON item.tag = loan.tag LEFT JOIN lot ON lot.tag = loan.tag AND lot.lot = loan.lot
    WHERE {} ORDER BY since, loan.tag, loan.lot, holder, job
"""


@dataclass(frozen=True, slots=True)
class OpenLoan:
    """Something that is issued and not back."""

    tag: str
    lot: str
    holder: str
    job: str
    amount: int  # thousandths of the item's unit
    since: dt.date
    due: dt.date | None
    expires_on: dt.date | None
    description: str
    kind: Kind
    unit: str
    pack: float

    def back_by(self, within: int) -> dt.date:
        """The day by which it should be back: as agreed, else so many days after it went out."""
        return self.due or self.since + dt.timedelta(days=within)


def open_loans(crib: Crib, tag: str = "", job: str = "", holder: str = "") -> tuple[OpenLoan, ...]:
    """What is out, longest first; of one tag, job or person where they are given."""
    wanted = {"loan.tag = ?": tag, "job = ? COLLATE NOCASE": job, "holder = ? COLLATE NOCASE": holder}
    where = " AND ".join(key for key, value in wanted.items() if value) or "1"
    rows = crib.connection.execute(QUERY.format(where), [value for value in wanted.values() if value])
    return tuple(
        OpenLoan(tag, lot, who, of, amount, day(since), date(due), date(expires), text, Kind(kind), unit, pack)
        for tag, lot, who, of, amount, since, due, expires, text, kind, unit, pack in rows
    )
