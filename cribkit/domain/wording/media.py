"""What a rubber ring, a seal or a sealant of threads is to keep in (`agree.stands`: which rubber does)."""

from __future__ import annotations

import re

from cribkit.domain.wording.reading import Reading

# What a rubber ring keeps in; where a fuel only names the engine it is none.
_MEDIA = (
    (
        "brake fluid",
        re.compile(
            r"\b(?:brake|clutch) (?:fluid|hydraulic\w*|unions?|pipes?|hoses?|lines?|master|slave|cylinder)"
            r"|\bcalip[a-z]+\b|\bdot ?[345]\b"
        ),
    ),
    ("refrigerant", re.compile(r"\ba/?c\b|\bair ?con\w*|\brefrigerant\b|\br-?(?:134|1234)")),
    (
        "fuel",
        re.compile(
            r"\bfuel\b|\binjectors?\b|\bgasoline\b|\be(?:5|10|85)\b"
            r"|\bfor (?:petrol|diesel)\b(?! (?:engine|van|minibus|truck)|[ -]\d)"
            r"|\b(?:petrol|diesel) (?:pump|line|pipe|hose|rail|filter|tank|proof|resist)"
        ),
    ),
    ("oil", re.compile(r"\boil\b(?! seals?\b)|\batf\b|\bsump\b|\bgearbox\b|\bhydraulics?\b")),
)


_DENIED = re.compile(r"\b(?:not?|non|never|without)[ -](?:for )?(?:an? |the )?\w+")


def find_medium(reading: Reading) -> None:
    """What a ring, a seal or a sealant of threads is to keep in, where the text says it: not each stands it."""
    said = _DENIED.sub("", reading.text.lower())
    medium = next((name for name, told in _MEDIA if told.search(said)), "")
    if medium:
        reading.attributes["medium"] = medium
