"""What the crib holds, as the domain sees it: items, their lots, and who has what."""

from __future__ import annotations

import datetime as dt
from enum import StrEnum
from typing import NamedTuple

from cribkit.domain.wording import Meaning


class Kind(StrEnum):
    """What an item is, by the file that it came from."""

    TOOL = "tool"
    WRENCH = "wrench"  # a torque wrench: a tool with a range and a calibration
    CONSUMABLE = "consumable"


class Condition(StrEnum):
    """Whether an item can be used."""

    OK = "ok"
    DAMAGED = "damaged"
    MISSING = "missing"


class Loan(NamedTuple):
    """Units that are issued and not back."""

    by: str
    since: dt.date
    amount: float
    job: str = ""


class Lot(NamedTuple):
    """Part of a consumable's stock. `amount` is in the item's unit; good through `expires_on`."""

    lot: str
    amount: float
    expires_on: dt.date | None = None  # of an open container: the end of its service life, if that is earlier
    opened_on: dt.date | None = None  # the open container of a lot stands apart from its whole ones

    def good_on(self, day: dt.date) -> bool:
        """Whether the lot may still be used on that day."""
        return self.expires_on is None or day <= self.expires_on


class Item(NamedTuple):
    """A stocked thing with a tag.

    Amounts are in `unit`: pieces ("each") for tools and counted consumables, else mL, g or mm. A consumable stocked
    in containers says what one container holds in `pack` (the same unit).
    """

    tag: str
    kind: Kind
    description: str
    meaning: Meaning
    location: str = ""
    condition: Condition = Condition.OK
    on_hand: float = 0.0  # in the crib now, in `unit`
    unit: str = "each"
    pack: float = 1.0
    loans: tuple[Loan, ...] = ()
    lots: tuple[Lot, ...] = ()
    note: str = ""

    @property
    def out(self) -> float:
        """Issued and not back."""
        return sum(loan.amount for loan in self.loans)


class Confirmation(NamedTuple):
    """A person's decision that an item serves a need. `anyway` is the reason given against a hard attribute."""

    text: str  # the need's text, folded by `fold`
    tag: str
    by: str
    at: dt.date
    anyway: str = ""


def fold(text: str) -> str:
    """A need's text as the key of a confirmation: case and spacing do not count."""
    return " ".join(text.casefold().split())
