"""Signs and letters between words."""

from __future__ import annotations

# Three in a row stand in Roman numerals, crosses and cells (AAA) too.
_THREE_ALIKE = "|".join(3 * letter for letter in "bcdefghjklmnopqrstuvwyz")

SIGNS = [
    (r"^(?=.*silicone)(.*\bdot) 5,1 (?=gal|l\b|lit|qt)", r"\1 5, 1 "),
    (r"^sss (?=m\d)", "socket set screw "),
    (r"^(?=.*\bsets?\b)(.*?\d) ?mm (?:-|to) (?=\d+(?:\.\d+)? ?mm\b)", r"\1-"),  # 1.5mm - 10mm
    (r"\bw/o\b", "without"),
    (rf"(?={_THREE_ALIKE})([a-z])\1{{2,}}", r"\1\1"),  # deeep
    (r"(?<=[a-z]{3})/(?=[a-z]{3}|6lb\b)(?!(?:out|off|female|male|shallow|steel)\b)", " "),  # BIT/SIX-LOBE
    (r"(?<=[a-z]) - (?=\S)", ", "),
]
