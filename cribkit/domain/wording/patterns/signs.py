"""Signs and letters between words."""

from __future__ import annotations

# Three in a row stand in Roman numerals, crosses and cells (AAA) too.
_THREE_ALIKE = "|".join(3 * letter for letter in "bcdefghjklmnopqrstuvwyz")

SIGNS = [
    (r"(?<=\d)-(?=mm\b)", " "),  # 16-mm socket
    # "25mm - 40mm": what a clip, a gauge or a micrometer spans.
    (
        r"(\b(?:clips?|clamps?|mic\w*|gauges?|gages?|calipers?)\b.*?(?<![\d.])\d+(?:\.\d+)?) ?mm"
        r" - (\d{2,3}(?:\.\d+)?) ?mm\b",
        r"\1-\2 mm",
    ),
    (r"(?<=\d) ?(nm|n\.m|ft-?lbs?|in-?lbs?|lbf?-?ft) - (?=\d)", r" \1-"),
    (r"\bo/e\b(?= ?\d)|(?<=spnr )o/e\b|(?<=spanner )o/e\b|(?<=wr )o/e\b|(?<=wrench )o/e\b", "open end"),
    (r"\b((?:0|5|10|15|20|25|70|75|80|85)w) - (?=\d{2,3}\b)", r"\1-"),
    (r"^(?=.*silicone)(.*\bdot) 5,1 (?=gal|l\b|lit|qt)", r"\1 5, 1 "),
    (r"^sss (?=m\d)", "socket set screw "),
    (r"^(?=.*\bsets?\b)(.*?\d) ?mm (?:-|to) (?=\d+(?:\.\d+)? ?mm\b)", r"\1-"),  # 1.5mm - 10mm
    (r"\bw/o\b", "without"),
    (rf"(?={_THREE_ALIKE})([a-z])\1{{2,}}", r"\1\1"),  # deeep
    (r"(?<=[a-z]{3})/(?=[a-z]{3}|6lb\b)(?!(?:out|off|female|male|shallow|steel)\b)", " "),  # BIT/SIX-LOBE
    (r"(?<=[a-z]) - (?=\S)", ", "),
]
