"""From a fastener's head to the sockets and bits that turn it."""

from __future__ import annotations

import re

from cribkit.domain.wording.meaning import Meaning
from cribkit.domain.wording.reader import read_one

# A thread does not tell the socket (M8 has 13, 12 or 14 mm across flats: ISO 4014, JIS B 1180, DIN 931 of old), and
# a number of points is no size.
_NO_SIZE = re.compile(r"\bm\s?\d+(?:[.,]\d+)?(?:\s*[x×*]\s*\d+(?:[.,]\d+)?)*\b|\b\d+[ -]?(?:pt|points?)\b", re.I)
_SPLINE = re.compile(r"spline|xzn|triple", re.I)  # their sizes are called M6, M8 ...
_TWELVE = re.compile(r"\b(?:12[ -]?(?:pt|points?)|bi-?hex|double[ -]?hex)", re.I)  # a 6-point socket does not go on it
_TAMPER = re.compile(r"tamper|security|pin[ -]?in|tr\b", re.I)  # a plain bit does not enter a recess with a pin
_INSIDE = re.compile(r"internal|allen|socket|recess|cap|key|inhex", re.I)


def head_drivers(head: str) -> tuple[Meaning, ...]:
    """The sockets, bit sockets or crowfoot that fit a head such as "8 mm hex", "E10", "T30" or "PH2".

    Best first; nothing where the head cannot be read.
    """
    points = "12 point " if _TWELVE.search(head) else ""
    if not _SPLINE.search(head):
        head = _NO_SIZE.sub(" ", head)
    plain = head.lower()
    if "flare" in plain or "pipe nut" in plain or "line nut" in plain:
        return _read(f"{_size(plain)} flare nut crowfoot", f"{_size(plain)} crowfoot")
    tip = dict(read_one(f"{head} bit socket").attributes).get("tip", "")
    if tip.startswith("E"):
        return _read(f"{tip} external six lobe socket")
    if "spark plug" in plain:
        return _read(f"{_size(plain)} spark plug socket", f"{_size(plain)} socket deep")
    if (re.search(r"\bhex", plain) and not _INSIDE.search(plain)) or not tip or _plain_size(plain):
        return _read(f"{points}{_size(plain)} socket") if _size(plain) else ()
    return _read(f"{tip} {'tamper ' if _TAMPER.search(head) else ''}bit socket")


def _plain_size(head: str) -> bool:
    return bool(re.fullmatch(r"\s*[\d./ -]+\s*(?:mm|in(?:ch)?|\")?\s*(?:a/?f|bolt|nut|12[ -]?point|bi-?hex)?\s*", head))


def _size(head: str) -> str:
    found = re.search(r"\d[\d./ -]*\s*(?:mm|inch|in\b|\")?", head)
    return found[0].strip() if found else ""


def _read(*texts: str) -> tuple[Meaning, ...]:
    found = (read_one(text, "tool") for text in texts)
    return tuple(meaning for meaning in found if {"size", "tip"} & dict(meaning.attributes).keys())
