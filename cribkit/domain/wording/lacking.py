"""What the description of a set says is missing from it: "(10, 13 MISSING)", "less the 12 mm"."""

from __future__ import annotations

import re

from cribkit.domain.wording.meaning import Meaning

_SIZE = r"[te]?\d+(?:[./]\d+)?(?: ?mm\b| ?in\b|\")?"
_LIST = rf"{_SIZE}(?: ?(?:,|&|\+|/| and) ?{_SIZE})*"
_GONE = re.compile(
    rf"[,;]? ?\(?\b(?P<first>{_LIST})(?: (?:sockets?|bits?|keys?|spanners?|wrenche?s?|ones?))? ?"
    r"(?:is |are )?(?:missing|lost|gone|broken|absent|snapped|on loan|lent out|o/s|out of stock|worn out|scrapped)"
    r"(?!\w)\)?"
    rf"|[,;]? ?\(?\b(?:missing|less|minus|without|w/o|lacks|lacking|except(?: for)?|exc(?:l(?:uding)?|ept)?\.?|lost):? "
    rf"(?:the |an? )?(?P<last>{_LIST})\)?"
    rf"|[,;]? ?\(?\bno (?P<none>\d+(?:\.\d+)? ?mm|\d/\d+ ?(?:in\b|\"))\)?",
    re.IGNORECASE,
)
_UNIT = re.compile(r" ?(?:mm|in|\")$")
_BETWEEN = re.compile(r" ?(?:,|&|\+| and) ?")


def without_missing(description: str) -> tuple[str, frozenset[str]]:
    """The description without what it says of missing members, and their sizes, without units."""
    gone: set[str] = set()
    for found in _GONE.finditer(description):
        told = found["first"] or found["last"] or found["none"]
        gone |= {_UNIT.sub("", one.strip().lower()) for one in _BETWEEN.split(told)}
    return (_GONE.sub("", description).strip(" ,;"), frozenset(gone)) if gone else (description, frozenset())


def is_gone(member: Meaning, gone: frozenset[str]) -> bool:
    """Whether a member is one of the missing sizes."""
    told = dict(member.attributes)
    sizes = f"{told.get('size', '')} {told.get('tip', '')}".lower().split()
    return not gone.isdisjoint(sizes)
