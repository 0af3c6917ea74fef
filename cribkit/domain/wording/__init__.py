"""From a description to its meaning; does this item satisfy that need?"""

from cribkit.domain.wording.meaning import Meaning

__all__ = ["Meaning"]
