"""What goes without saying on fasteners, once their words and numbers are read."""

from __future__ import annotations

import re

from cribkit.domain.wording.measure import mm_of
from cribkit.domain.wording.reading import Reading


def settle(reading: Reading, shape: str) -> None:
    """The last word on washers, screws with six lobes, thread inserts and circlips."""
    words = {said.word for said in reading.words if not said.negated}
    own = reading.attributes
    if shape == "washer":
        _washer(own)
    if reading.family == "spring-washer":
        _teeth(reading)
    elif reading.family == "six-lobe-bolt":
        _lobes(own, words)
    elif reading.family == "thread-insert" and _WIRE.search(_DENIED.sub("", reading.plain)):
        own["insert_kind"] = "wire"
    elif reading.family == "circlip" and {"internal", "external"} <= words:
        reading.decide("side", "both")  # an assortment
    elif reading.family == "push-fitting":
        _ends(own)
    elif reading.family in ("cotter-pin", "roll-pin"):
        _thickness_first(own)
    elif reading.family == "bolt" and "setscrew" in words:
        own.setdefault("thread_length", "full")  # a hexagon set screw, by its name


def _thickness_first(own: dict[str, str]) -> None:
    """ "Split pin 40 x 3.2": no such pin is thicker than long."""
    diameter, length = own.get("diameter", ""), own.get("length", "")
    if diameter and length and "; " not in diameter + length and " to " not in diameter + length:
        own["diameter"], own["length"] = sorted((diameter, length), key=mm_of)


_DENIED = re.compile(r"\b(?:not|no|non)[ -](?:an? )?[a-z]+")
_WIRE = re.compile(r"\bwire|\bheli|\bcoil")

# The holes of flat washers, ISO 7089 (from memory), and the threads that they are for.
_CLEARANCE = {
    "3.2": "3",
    "4.3": "4",
    "5.3": "5",
    "6.4": "6",
    "8.4": "8",
    "10.5": "10",
    "13": "12",
    "15": "14",
    "17": "16",
    "21": "20",
}


def _washer(own: dict[str, str]) -> None:
    """Larger and smaller measure in either order; the hole stands for the thread."""
    if not {"inner", "outer"} <= own.keys():
        return
    if mm_of(own["inner"]) > mm_of(own["outer"]):
        own["inner"], own["outer"] = own["outer"], own["inner"]
    hole, _, unit = own["inner"].partition(" ")
    if unit == "mm" and hole in _CLEARANCE:
        own["inner"] = f"{_CLEARANCE[hole]} mm"


def _teeth(reading: Reading) -> None:
    """A star washer with internal teeth is that; a "spring" washer without more words is split."""
    own = reading.attributes
    doubts = [doubt for doubt in reading.doubts if doubt.startswith("washer_kind ")]
    kinds = {own.get("washer_kind", ""), *(doubt.removeprefix("washer_kind ") for doubt in doubts)}
    sided = kinds & {"internal-tooth", "external-tooth"}
    if doubts and len(sided) == 1 and kinds <= sided | {"star"}:
        own["washer_kind"] = sided.pop()
        reading.doubts = [doubt for doubt in reading.doubts if doubt not in doubts]
    if any("spring" in said.text or "spring" in said.word for said in reading.words if not said.negated):
        own.setdefault("washer_kind", "split")


def _ends(own: dict[str, str]) -> None:
    """A push-in fitting with two sizes goes from one to the other; one with a thread has a tube at one end only."""
    if ";" in own.get("dims", ""):
        own["tube_ends"] = own.pop("dims")
    if own.get("thread"):
        own.setdefault("thread_end", "threaded")


_SCREWS = frozenset({"capscrew", "screw", "machinescrew", "panhead", "button", "countersunk"})


def _lobes(own: dict[str, str], words: set[str]) -> None:
    """E10 and T50 say which side the lobes are on; a screw has them inside."""
    tip = own.get("tip", "")
    if tip.startswith("E"):
        own.setdefault("side", "external")
    elif tip.startswith("T") or words & _SCREWS:
        own.setdefault("side", "internal")
    if own.get("side") == "external":
        own["lobes"] = "external"
