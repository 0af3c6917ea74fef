"""What is asked for without its noun: "impact 10 3/8 sq", "deep 30 impact", "7/16 AF deep", "ratcheting 12 mm".

Tried last, once every number stands in digits.
"""

from __future__ import annotations

import re

from cribkit.domain.wording.patterns.pattern import Pattern


def _ratcheting(found: re.Match[str]) -> str:
    return f"ratcheting spanner {found[1] or found[2]}" if bool(found[1]) != bool(found[2]) else found[0]


_SIZE = r"(?:\d{1,2}(?:\.\d)?(?: ?mm)?|\d{1,2}/\d{1,2}(?: ?in(?:ch)?| ?\")?(?: ?af)?)"
_SQUARE = r"(?:(?:1/4|3/8|1/2|3/4|1)(?: ?in(?:ch)?| ?\")?[ -]?(?:dr(?:ive)?|sq(?:uare)?|sd)?)"
NAMELESS: list[Pattern] = [
    (rf"^impact,? ({_SIZE}),? ({_SQUARE})(?=,|$)", r"impact socket \1, \2"),
    (rf"^({_SIZE}),? impact,? ({_SQUARE})(?=,|$)", r"impact socket \1, \2"),
    (rf"^(\d{{1,2}}(?: ?mm)?) deep,? ({_SQUARE})$", r"deep socket \1, \2 drive"),
    (
        r"^(\d{1,2} ?mm) (?:imp(?:act)? deep|deep imp(?:act)?),? (?:half|1/2)(?: inch)?$",
        r"deep impact socket \1, 1/2 drive",
    ),
    (rf"^(\d{{1,2}}(?: ?mm)?) crow,? ({_SQUARE})$", r"crowfoot \1, \2 drive"),
    (rf"^({_SQUARE}) (?:to|-|x) ({_SQUARE}) red(?:uc)?$", r"reducer \1 to \2"),
    (rf"^(\d+(?:-| to )\d+ ?n[.·]?m),? ({_SQUARE})$", r"torque wrench \1, \2 drive"),
    (r"^(\d{1,2}(?:/\d{1,2}|(?: ?mm)?)),? (?:deep impact|impact deep)(?=,|$)", r"deep impact socket \1"),
    (rf"^({_SIZE}) impact swivel(?=,? {_SQUARE}(?:,|$)|$)", r"swivel impact socket \1"),
    (rf"^({_SIZE}) deep on (?:an? |the )?({_SQUARE})$", r"deep socket \1, \2 drive"),
    (
        rf"^({_SIZE})(,? (?:6|12|six|twelve)[- ]?(?:pt|point))? for (?:the |a |my )?({_SQUARE}) ratchet$",
        r"socket \1\2, \3 drive",
    ),
    (rf"^({_SIZE}) ring$", r"ring spanner \1"),
    (rf"^thin[- ]?wall(?:ed)? deep ({_SIZE}) impact\b", r"thin wall deep impact socket \1"),
    (r"^(m\d{1,2} ?x ?\d(?:\.\d+)?) (\d{2,3})(?: ?mm)? long,? (8\.8|10\.9|12\.9)$", r"bolt \1 x \2 \3"),
    (r"^(\d{2}w(?:-?\d{2,3})?) gl-?([45])\b(?!.*\boil\b)", r"gear oil \1 gl-\2"),
    (rf"^impact swivel ({_SIZE}),? ({_SQUARE})(?=,|$)", r"swivel impact socket \1, \2 drive"),
    (rf"^swivel ({_SIZE}) impact(?=,? {_SQUARE}(?:,|$)|$)", r"swivel impact socket \1"),
    (rf"^thin[- ]?wall(?:ed)? ({_SIZE}) deep\b", r"thin wall deep socket \1"),
    (r"^straight (\d\d)(?: ?wt| ?weight|w)\b(?!.*\b(?:oil|fluid)\b)", r"engine oil sae \1"),
    (rf"^deep,? ({_SIZE}) impact(?= for\b|,|$)", r"deep impact socket \1"),
    (rf"^(\d{{1,2}}/\d{{1,2}} ?(?:af|in(?:ch)?|\")|\d{{1,2}} ?mm),? deep(?=,? {_SQUARE}$|$)", r"deep socket \1"),
    (r"^(\d{1,2} ?mm|\d{1,2}/\d{1,2})? ?ratcheting(?: (\d{1,2} ?mm|\d{1,2}/\d{1,2}))?(?=,|$)", _ratcheting),
]
