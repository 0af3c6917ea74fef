"""From a description to its meaning; does this item satisfy that need?"""

from typing import TYPE_CHECKING, Any

from cribkit.domain.wording.contrast import judge_all
from cribkit.domain.wording.meaning import READER_VERSION, Judgement, Meaning, Near, Word
from cribkit.domain.wording.rule import forbidden, judge
from cribkit.domain.wording.terms import index_terms, query_terms

if TYPE_CHECKING:
    from cribkit.domain.wording.heads import head_drivers
    from cribkit.domain.wording.near import near, near_sizes
    from cribkit.domain.wording.read import read, read_item, wrench_description

# The readers are imported when they are first used: their patterns cost about 40 ms, and a check whose words were
# read before needs none of them.
LATE = {"head_drivers": "heads", "near": "near", "near_sizes": "near"} | dict.fromkeys(
    ("read", "read_item", "wrench_description"), "read"
)


def __getattr__(name: str) -> Any:
    if name not in LATE:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    from importlib import import_module

    module = import_module(f"{__name__}.{LATE[name]}")
    # The import put the module itself under its name, which is also the name of a function.
    globals().update({other: getattr(module, other) for other, home in LATE.items() if home == LATE[name]})
    return globals()[name]


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
    "judge_all",
    "near",
    "near_sizes",
    "query_terms",
    "read",
    "read_item",
    "wrench_description",
]
