"""Numbers as people write them: 25.4, 25,4, .5, 1/2, 1 1/2, 1-1/2 and the single-letter fractions."""

from __future__ import annotations

import re

from cribkit.domain.problem import BadInput

LONGEST = 200  # characters of one quantity; more is a mistake

# Dashes and multiplication signs that look alike become one; fractions become digits with a space in front.
LOOKALIKES = str.maketrans(
    {
        **dict.fromkeys("‐‑‒–—―−﹣－", "-"),
        **dict.fromkeys("⋅∙•‧・", "·"),
        **dict.fromkeys("“”„″", '"'),
        **dict.fromkeys("‘’′", "'"),
        "⁄": "/",
        "º": "°",
        "˚": "°",
        **{
            letter: f" {text}"
            for letter, text in zip(
                "½¼¾⅓⅔⅛⅜⅝⅞", ["1/2", "1/4", "3/4", "1/3", "2/3", "1/8", "3/8", "5/8", "7/8"], strict=True
            )
        },
    }
)
# A mixed number, a fraction, or a decimal; at most nine digits before the point, so that no sum overflows.
NUMBER = (
    r"(?:[0-9]{1,4}(?:\s+|\s?-)[0-9]{1,3}/[0-9]{1,3}|[0-9]{1,4}/[0-9]{1,3}"
    r"|[0-9]{1,9}(?:[.,][0-9]{1,12})?|[.,][0-9]{1,12})(?![0-9])"
)
MIXED = re.compile(r"(?:([0-9]+)[\s-]+)?([0-9]+)/([0-9]+)\Z")
THOUSANDS = re.compile(r"[1-9][0-9]{0,2},[0-9]{3}\Z")


def plain(text: str) -> str:
    """One spelling for signs that look alike, single spaces, no space at the ends."""
    if len(text) > LONGEST:
        raise BadInput.of("unreadable", "a quantity of this length cannot be read", f"use at most {LONGEST} letters.")
    return " ".join(text.translate(LOOKALIKES).split())


def number(text: str) -> float:
    """The value of text that matches NUMBER.

    A comma is a decimal comma, except where it may as well part thousands: "1,250" is refused. "0,125" is clear.
    """
    mixed = MIXED.match(text)
    if mixed:
        whole, over, under = (int(part or 0) for part in mixed.groups())
        if not 0 < over < under:  # "12/10 N·m" may mean 12 or 10: never guess
            raise BadInput.of("unreadable", f"{text!r} is not a fraction below one", "write the number as a decimal.")
        return whole + over / under
    if THOUSANDS.match(text):
        clear = text.replace(",", "")
        raise BadInput.of(
            "ambiguous",
            f"{text!r} may be {clear} or {text.replace(',', '.')}",
            f"write {clear} without a separator, or with a decimal point.",
        )
    return float(text.replace(",", "."))
