"""How people write one thing in other ways: a pattern, and what it stands for.

Applied to text in lower case, one after the other. A module holds what belongs to one kind of thing; inside it, and
between the modules, a pattern may count on what the earlier ones have written. Common practice of the trade, no source.
"""

from __future__ import annotations

from cribkit.domain.wording.patterns.chemicals import CHEMICALS
from cribkit.domain.wording.patterns.drives import DRIVES
from cribkit.domain.wording.patterns.fasteners import FASTENERS
from cribkit.domain.wording.patterns.measuring import MEASURING
from cribkit.domain.wording.patterns.notes import NOTES
from cribkit.domain.wording.patterns.numbers import NUMBERS
from cribkit.domain.wording.patterns.pattern import Pattern
from cribkit.domain.wording.patterns.requests import REQUESTS
from cribkit.domain.wording.patterns.said import SAID
from cribkit.domain.wording.patterns.shorthand import SHORTHAND
from cribkit.domain.wording.patterns.signs import SIGNS
from cribkit.domain.wording.patterns.supplies import SUPPLIES
from cribkit.domain.wording.patterns.tips import TIPS
from cribkit.domain.wording.patterns.tools import TOOLS

# In the order in which a text passes them.
PATTERNS: list[Pattern] = [
    *SIGNS,
    *SHORTHAND,
    *NOTES,
    *REQUESTS,
    *SAID,
    *MEASURING,
    *FASTENERS,
    *NUMBERS,
    *CHEMICALS,
    *TOOLS,
    *SUPPLIES,
    *TIPS,
    *DRIVES,
]
