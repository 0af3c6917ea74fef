"""Which numbers and words a family has."""

from __future__ import annotations

import re
from collections.abc import Callable

from cribkit.domain.wording.abrasives import grit, wipes
from cribkit.domain.wording.adapters import adapter, multiplier
from cribkit.domain.wording.electrics import fuse, wire
from cribkit.domain.wording.figures import any_numbers, told_figures
from cribkit.domain.wording.fluids import chem, lock, oil
from cribkit.domain.wording.handtools import (
    bit,
    bit_set,
    bit_socket,
    drive_only,
    extension,
    holder,
    lobe_wrench,
    plug_key,
    screwdriver,
    socket,
    socket_set,
    tip_shape,
    torque,
    wrench,
    wrench_set,
)
from cribkit.domain.wording.hoses import hose
from cribkit.domain.wording.keys import KEYS
from cribkit.domain.wording.measure import number
from cribkit.domain.wording.reading import Reading, Said
from cribkit.domain.wording.seals import hardness, oring, two_ends
from cribkit.domain.wording.squares import long_numbers
from cribkit.domain.wording.stores import (
    GLOVE_TYPES,
    GLOVES,
    clamp,
    drill,
    glove,
    part,
    put_place,
    ring,
    stud_tool,
    tie,
)
from cribkit.domain.wording.tables import Family, tables
from cribkit.domain.wording.threads import adapters_threads, thread
from cribkit.domain.wording.tips import PROFILES, TIPPED


def apply(reading: Reading, shape: str) -> None:
    """Read the numbers that belong to a family of this shape."""
    long_numbers(reading)
    told_figures(reading)
    if shape in ("oring", "part", "seal-washer"):
        hardness(reading)
    if shape == "thread-part" and (found := _ENGINE.search(reading.text.lower())):
        reading.attributes["engine"] = found[1] or found[2]
        reading.spend(found[1] or found[2])
    (plug_key if reading.family == "drain-plug-key" else SHAPES.get(shape, any_numbers))(reading)


# The size of the engine that a part is for: 2.0 diesel.
_ENGINE = re.compile(
    r"(?<![\w.])([1-9]\.\d) ?(?:l|litre|liter)? ?(?:tdi|turbo ?)?(?:diesel|petrol|engine)\b"
    r"|\b(?:van|minibus|flatbed|truck|bus|coach|lorry|pick-?up),? ([1-9]\.\d)(?= ?[dp]?(?:$|[ ,;)]))"
    r"(?! ?(?:mm|x|bar|l\b))"
)


SHAPES: dict[str, Callable[[Reading], None]] = {
    "socket": socket,
    "plug-socket": socket,
    "crowfoot": socket,
    "lobe-socket": bit_socket,
    "bit-socket": bit_socket,
    "bit": bit,
    "key": tip_shape,
    "screwdriver": screwdriver,
    "wrench": wrench,
    "wrench2": wrench,
    "ratchet": drive_only,
    "drive-tool": drive_only,
    "drive-any": drive_only,
    "extension": extension,
    "adapter": adapter,
    "torque": torque,
    "multiplier": multiplier,
    "set-bit": bit_set,
    "set-lobe": socket_set,
    "set": socket_set,
    "set-wrench": wrench_set,
    "holder": holder,
    "lobe-wrench": lobe_wrench,
    "tap": thread,
    "bolt": thread,
    "nut": thread,
    "thread-part": thread,
    "pin": two_ends("diameter", "length"),
    "washer": two_ends("inner", "outer", "thickness"),
    "seal-washer": two_ends("inner", "outer", "thickness"),
    "oring": oring,
    "clamp": clamp,
    "tie": tie,
    "glove": glove,
    "grit": grit,
    "oil": oil,
    "lock": lock,
    "chem": chem,
    "grease": chem,
    "seize": chem,
    "wipe": wipes,
    "part": part,
    "fuse": fuse,
    "wire": wire,
    "clip": ring,
    "stud-tool": stud_tool,
    "drill": drill,
    "hose": hose,
}


def _spec(reading: Reading, word: str) -> None:
    reading.attributes["spec"] = " ".join(sorted({*reading.attributes.get("spec", "").split(), word}))


# Shapes of parts that are told by where they go: words that mean nothing else are the place.
PLACED = frozenset({"part", "bolt", "nut", "thread-part", "clip", "oring", "pin", "seal-washer"})
# Attributes that only some shapes have; elsewhere the word is only colour.
_ONLY = {
    "depth": frozenset({"socket", "plug-socket", "lobe-socket", "bit-socket", "crowfoot", "set"}),
    "strength": frozenset({"lock"}),
    "mechanism": frozenset({"torque"}),
    "jaws": frozenset({"puller", "any", "sized"}),
    "points": frozenset({"socket", "wrench", "wrench2", "crowfoot", "plug-socket", "set", "set-wrench"}),
}


def may_say(family: Family | None, name: str) -> bool:
    """Whether an attribute makes sense for the family."""
    return family is None or name not in _ONLY or family.shape in _ONLY[name]


# What cuts says nothing of what is cut.
_ANYWHERE = frozenset({"cutting-disc"})


def placed(family: Family | None) -> bool:
    """Whether the family is told by its place."""
    return family is not None and (
        family.shape in PLACED or (family.kind == "consumable" and family.shape in ("sized", "wire"))
    )


STRAIGHT = 180  # degrees


def _pliers(reading: Reading) -> None:
    """Tips of pliers: bent (mostly by 45 or 90 degrees) or straight."""
    for group in reading.numbers():
        if len(group.tokens) == 1 and not group.tokens[0].unit and group.tokens[0].values[0] in ("45", "90"):
            group.use()
            reading.set("form", "bent")
            reading.set("angle", group.tokens[0].values[0])
    while angle := reading.take("deg"):
        if number(angle.values[0]) not in (0, STRAIGHT):
            reading.set("form", "bent")
        reading.set("angle", angle.values[0])
    any_numbers(reading)


SHAPES |= {"pliers": _pliers, "circlip": _pliers, "range": adapters_threads}


# Kinds of torque wrench by the words for them.
MECHANISMS = {
    "click": "click",
    "beam": "beam",
    "dial": "dial",
    "digital": "digital",
    "electrical": "digital",
    "electronic": "digital",
    "fixed": "preset",
    "preset": "preset",
    "slipper": "slipper",
}


def takes_word(reading: Reading, said: Said) -> bool:
    """Whether the family gives this word a meaning of its own."""
    family = tables().families.get(reading.family)
    shape = family.shape if family else ""
    if shape == "glove" and said.word in GLOVE_TYPES and not (said.aside and said.word == "work"):
        said.used = True
        reading.attributes.setdefault("glove_type", GLOVE_TYPES[said.word])
        if {reading.attributes["glove_type"], GLOVE_TYPES[said.word]} == {"rigger", "work"}:
            reading.attributes["glove_type"] = "rigger"  # work gloves of leather, whichever is said first
        if said.word in ("welding", "mig", "tig"):  # whatever leather or gauntlet they are
            reading.attributes["glove_type"] = "welding"
        return said.word not in ("leather", "mig", "tig")
    if shape == "glove" and said.word in GLOVES:
        said.used = True
        reading.set("glove_size", GLOVES[said.word])
        return True
    if shape == "part" and (vehicle := {said.text, said.text.removesuffix("s")} & tables().vehicles):
        said.used = True
        said.became = f"for {said.text}"
        reading.set("vehicle", vehicle.pop())
        return True
    if shape in TIPPED and said.word in PROFILES.keys() | {"internal", "external", "head", "male"}:
        said.used = True
        return True
    if reading.family in _FILES and said.word in _SECTIONS:
        said.used = True
        reading.set("section", _SECTIONS[said.word])
        return True
    if shape == "torque" and said.word in MECHANISMS:
        said.used = True
        reading.set("mechanism", MECHANISMS[said.word])
        return True
    if family and placed(family) and said.word in ("petrol", "diesel"):
        said.used = True
        reading.set("fuel", said.word)
        return True
    if shape in ("bolt", "nut", "tap", "thread-part") and said.word in ("fine", "coarse", "finethread", "coarsethread"):
        said.used = True
        reading.set("pitch_class", said.word.removesuffix("thread"))
        return True
    if shape in ("pliers", "circlip") and said.word in ("bent", "straight"):
        said.used = True
        reading.set("form", said.word)
        return True
    if shape in ("wrench", "wrench2") and said.word == "shallow":
        said.used = True
        reading.set("length_class", "standard")
        return True
    if shape in ("wrench", "wrench2") and said.word in ("bent", "offset", "deep"):
        said.used = True
        return True
    if said.word == "head" and reading.family in ("gasket", "gasket-set"):
        said.used = True
        put_place(reading, "cylinderhead")
        return True
    if shape == "oil" and said.word in tables().specs:
        said.used = True
        _spec(reading, said.word)
        return True
    used_on = said.worked_on or (said.aside and not said.besides and reading.family in _BY_DIMS)
    if used_on and (reading.family in _BY_DIMS or shape == "sized") and "dims" in reading.attributes:
        said.used = True
        return True
    if said.aside and not said.besides and shape in _BY_MEASURES and KEYS[shape][0] in reading.attributes:
        if said.word == "lefthand" and shape in ("bolt", "nut") and not _LEFT_SIDE.search(reading.plain):
            return False  # a nut for a left-hand thread
        said.used = True
        return True
    if family and family.name in _ANYWHERE and (said.aside or said.worked_on) and not said.besides:
        return False
    if family and placed(family) and said.word not in tables().neutral | family.absorbs | _SAYS | tables().negations:
        if said.word in tables().effects and tables().effects[said.word][0] not in ("side", "+") and shape != "part":
            return False
        said.used = True
        said.became = f"place {said.word}"
        put_place(reading, said.word)
        return True
    return False


# Left as a place of the vehicle, not of a thread.
_LEFT_SIDE = re.compile(
    r"\bleft[- ]hand (?:side|drive|front|rear|door|wheel|mirror|wing|bank|headlamp|lower|upper|drop)"
)
# Parts told by their measures alone: what they are for says nothing more.
_BY_MEASURES = frozenset({"pin", "washer", "seal-washer", "bolt", "nut", "oring"})
_BY_DIMS = frozenset({"circlip", "e-clip", "rivet", "trim-clip", "seal", "terminal"})
# Files by their section; a file of which nothing is said is flat.
_FILES = frozenset({"file", "needle-file"})
_SECTIONS = {
    "flat": "flat",
    "slotted": "flat",
    "flatblade": "flat",
    "mill": "flat",
    "millsaw": "flat",
    "warding": "warding",
    "square": "square",
    "robertson": "square",
    "triplesquare": "three-square",
    "threesquare": "three-square",
    "triangular": "three-square",
    "halfround": "half-round",
    "rattail": "round",
    "round": "round",
    "rasp": "rasp",
}


# Words that keep their own meaning on a part.
_SAYS = frozenset(
    {
        "set",
        "flange",
        "serrated",
        "left",
        "right",
        "lefthand",
        "magnetic",
        "hightemp",
        "selflocking",
        "staked",
        "finethread",
        "coarsethread",
        "usedpart",
    }
)
