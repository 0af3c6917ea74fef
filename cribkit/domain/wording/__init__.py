"""From a description to its meaning; does this item satisfy that need?"""

from cribkit.domain.wording.heads import head_drivers
from cribkit.domain.wording.meaning import READER_VERSION, Judgement, Meaning, Near, Word
from cribkit.domain.wording.near import near, near_sizes
from cribkit.domain.wording.read import read, read_item
from cribkit.domain.wording.rule import forbidden, judge
from cribkit.domain.wording.terms import index_terms, query_terms

__all__ = [
    "READER_VERSION",
    "Judgement",
    "Meaning",
    "Near",
    "Word",
    "forbidden",
    "head_drivers",
    "index_terms",
    "judge",
    "near",
    "near_sizes",
    "query_terms",
    "read",
    "read_item",
]
