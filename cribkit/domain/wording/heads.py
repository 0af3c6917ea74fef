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
# A hexagon recess. A "hex cap screw" has a hexagon outside (ASME B18.2.1), a "cap screw" alone a socket (ISO 4762).
_OUTSIDE = re.compile(r"hex(?:agon(?:al)?)?[ -]*(?:head|flange|washer|cap|bolt|nut)", re.I)
_INSIDE = re.compile(r"internal|allen|socket|recess|\bkey\b|in-?hex|inner|shcs", re.I)
_SOCKETED = re.compile(r"\bcap\b|capscrew|button|csk|countersunk|grub|set ?screw", re.I)
_SQUARE = re.compile(r"\b(?:square|sq)\b|four-?sided", re.I)
# Fasteners with sockets of their own, which also go on with a long socket, except where a cable is in the way.
_PLUGS = (
    ("spark plug", True),
    ("sparking plug", True),
    ("glow plug", True),
    ("oxygen sensor", False),
    ("lambda", False),
)
_DEEP = re.compile(r"\b(?:deep|long stud|long reach|stud end|recessed well)\b", re.I)


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
    if plug := next((entry for entry in _PLUGS if entry[0] in plain), None):
        return _plug(_size(plain), *plug)
    inside = bool(_INSIDE.search(plain) or (_SOCKETED.search(plain) and not _OUTSIDE.search(plain)))
    if _SQUARE.search(plain) and "hex" not in plain:
        return _read(f"{_size(plain)} 8 point socket") if _size(plain) and "head" in plain and not inside else ()
    if inside and (not tip or tip.startswith("hex")):
        return _read(f"{_size(plain)} hex bit socket")
    if (re.search(r"\bhex", plain) and not inside) or not tip or _plain_size(plain):
        deep = "deep " if _DEEP.search(plain) else ""
        return _read(f"{points}{deep}{_size(plain)} socket") if _size(plain) else ()
    return _read(f"{tip} {'tamper ' if _TAMPER.search(head) else ''}bit socket")


def _plug(size: str, name: str, long_socket: bool) -> tuple[Meaning, ...]:
    """The socket made for a plug or a sensor, then a deep one."""
    found = (f"{size} {name} socket", f"{size} deep socket")
    return _read(*found if long_socket else found[:1])


def _plain_size(head: str) -> bool:
    return bool(re.fullmatch(r"\s*[\d./ -]+\s*(?:mm|in(?:ch)?|\")?\s*(?:a/?f|bolt|nut|12[ -]?point|bi-?hex)?\s*", head))


def _size(head: str) -> str:
    found = re.search(r"\d[\d./ -]*\s*(?:mm|inch|in\b|\")?", head)
    return found[0].strip() if found else ""


def _read(*texts: str) -> tuple[Meaning, ...]:
    found = (read_one(text, "tool") for text in texts)
    return tuple(meaning for meaning in found if {"size", "tip"} & dict(meaning.attributes).keys())
