"""Starting states for the tests of this room."""

import datetime as dt

from cribkit.domain.stock.demand import Method, Pattern, Usual
from cribkit.domain.stock.forecast import Smoothed
from cribkit.domain.stock.held import Held, OnOrder
from cribkit.domain.stock.item import Lot
from cribkit.domain.stock.leadtime import Lead
from cribkit.domain.stock.shelf import Planned

TODAY = dt.date(2026, 11, 30)


def day(days: int) -> dt.date:
    return TODAY + dt.timedelta(days=days)


def steady(per_day: float, variance: float, days: int = 7) -> Usual:
    """Usual demand with this mean and variance a day."""
    if per_day <= 0:
        return Usual(days, (), Pattern.NONE, Method.NONE, Smoothed(0, 0, 0), 0)
    periods = (per_day * days,) * 10
    smoothed = Smoothed(per_day * days, 1.0, per_day * days)
    return Usual(days, periods, Pattern.SMOOTH, Method.CROSTON, smoothed, variance * days)


def held(
    per_day: float = 0.0,
    variance: float = 0.0,
    lots: tuple[Lot, ...] = (),
    lead: float = 7,
    **more: object,
) -> Held:
    """One consumable, counted, in packs of one, with invented figures."""
    given: dict[str, object] = {
        "tag": "C-1",
        "description": "invented consumable",
        "unit": "each",
        "pack": 1.0,
        "lots": lots,
        "usual": steady(per_day, variance),
        "lead": Lead(lead),
        **more,
    }
    return Held(**given)  # type: ignore[arg-type] # the keyword arguments of the tests are Held's own


def lot(amount: float, expires: int | None = None, number: str = "") -> Lot:
    return Lot(number, amount, None if expires is None else day(expires))


def job(on: int, amount: float, name: str = "plenum-reseal") -> Planned:
    return Planned(day(on), amount, name)


def coming(amount: float, due: int | None) -> OnOrder:
    return OnOrder(amount, None if due is None else day(due))
