"""How people write one thing in other ways: a pattern, and what it stands for.

Applied to text in lower case, one after the other. A module holds what belongs to one kind of thing; inside it, and
between the modules, a pattern may count on what the earlier ones have written. Common practice of the trade, no source.
"""

from __future__ import annotations

from cribkit.domain.wording.patterns.abrasives import ABRASIVES
from cribkit.domain.wording.patterns.bulbs import BULBS
from cribkit.domain.wording.patterns.chemicals import CHEMICALS
from cribkit.domain.wording.patterns.cutting import CUTTING
from cribkit.domain.wording.patterns.drives import DRIVES
from cribkit.domain.wording.patterns.electrics import ELECTRICS
from cribkit.domain.wording.patterns.fasteners import FASTENERS
from cribkit.domain.wording.patterns.gaskets import GASKETS
from cribkit.domain.wording.patterns.greases import GREASES
from cribkit.domain.wording.patterns.hoses import HOSES
from cribkit.domain.wording.patterns.lifting import LIFTING
from cribkit.domain.wording.patterns.measuring import MEASURING
from cribkit.domain.wording.patterns.notes import NOTES
from cribkit.domain.wording.patterns.numbers import NUMBERS
from cribkit.domain.wording.patterns.oils import OILS
from cribkit.domain.wording.patterns.pattern import Pattern
from cribkit.domain.wording.patterns.pliers import PLIERS
from cribkit.domain.wording.patterns.remarks import REMARKS
from cribkit.domain.wording.patterns.requests import REQUESTS
from cribkit.domain.wording.patterns.said import SAID
from cribkit.domain.wording.patterns.seals import SEALS
from cribkit.domain.wording.patterns.shorthand import SHORTHAND
from cribkit.domain.wording.patterns.signs import SIGNS
from cribkit.domain.wording.patterns.sockets import SOCKETS
from cribkit.domain.wording.patterns.spanners import SPANNERS
from cribkit.domain.wording.patterns.supplies import SUPPLIES
from cribkit.domain.wording.patterns.tapes import TAPES
from cribkit.domain.wording.patterns.tips import TIPS
from cribkit.domain.wording.patterns.tools import TOOLS

# In the order in which a text passes them.
PATTERNS: list[Pattern] = [
    *SIGNS,
    *SHORTHAND,
    *NOTES,
    *REQUESTS,
    *SAID,
    *REMARKS,
    *MEASURING,
    *HOSES,
    *BULBS,
    *SEALS,
    *FASTENERS,
    *GASKETS,
    *NUMBERS,
    *CHEMICALS,
    *OILS,
    *GREASES,
    *CUTTING,
    *TOOLS,
    *PLIERS,
    *SPANNERS,
    *LIFTING,
    *TAPES,
    *SUPPLIES,
    *ABRASIVES,
    *ELECTRICS,
    *TIPS,
    *SOCKETS,
    *DRIVES,
]
