"""Bulbs, relays and batteries."""

from __future__ import annotations

BULBS = [
    (r"^(?=.*\b(?:capless|wedge|w3x16[qd])\b)(.*?)(?<![\w/])21/5 ?w\b", r"\1w21/5w"),  # no bayonet: another bulb
    (
        r"(\bbulb\b.*?)\b(?:(?:capless |push-?in |all-glass |glass )?wedge(?: \(capless\)| type| base| bs)?|"
        r"wdge(?: base)?|cap-? ?less|(?:base )?w2[.,]1 ?x ?9[.,]5 ?d)(?=$|[ ,])",
        r"\1capless",
    ),
    (r"(\brelay\b.*?)\b(?:four|4)[- ]?pin\b", r"\g<1>4pin"),
    (r"\btwenty[- ]one[ /-](?:watt )?five(?: watt)?\b(?=.*\b(?:bulb|lamp)s?\b)", "21/5w"),
    (r"\b21(?: ?/ ?| ?- ?)5 ?w\b|(?<=v)21(?:/|-)5 ?w\b", " 21/5watt "),
    (r"^lamp,? filament,? (?=.*\b21/5watt)|^lamp,? (?=stop ?(?:/|and|) ?tail\b.*\b21/5watt)", "bulb "),
    (r"(\b21/5watt\b.*\bbulbs?),? for the rear (?:light|lamp)s?\b", r"\1"),
    (r"\bblub\b", "bulb"),
    (
        r"^(?=.*\b(?:bolts?|nuts?|studs?|(?:cap)?screws?)\b)(.*?)\b(?:[lr]h|left[- ]hand|right[- ]hand|left|right) "
        r"(?=(?:front |rear )?(?:door|mirror|seat|wing|headlamp|bumper|caliper|hub|side)\b)",
        r"\1",
    ),
]
