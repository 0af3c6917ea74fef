"""What things of a shape are looked up and told by."""

from __future__ import annotations

from cribkit.domain.wording.meaning import Meaning
from cribkit.domain.wording.tables import kin

# The attributes that an item of a shape is looked up by; the first is the one that it is told by.
KEYS: dict[str, tuple[str, ...]] = {
    "socket": ("size", "drive"),
    "plug-socket": ("size", "drive"),
    "crowfoot": ("size", "drive"),
    "wrench": ("size",),
    "wrench2": ("size",),
    "lobe-wrench": ("size",),
    "lobe-socket": ("tip", "drive"),
    "bit-socket": ("tip", "drive"),
    "bit": ("tip", "shank"),
    "key": ("tip",),
    "screwdriver": ("tip",),
    "ratchet": ("drive",),
    "drive-tool": ("drive",),
    "extension": ("drive",),
    "adapter": ("drive_in", "drive_out"),
    "bolt": ("thread", "bolt_length"),
    "nut": ("thread",),
    "tap": ("thread",),
    "drill": ("size",),
    "thread-part": ("thread",),
    "part": ("place", "dims"),
    "pin": ("diameter", "length"),
    "clip": ("dims",),
    "washer": ("inner", "outer"),
    "seal-washer": ("inner", "outer"),
    "oring": ("inner", "section_mm"),
    "glove": ("glove_size", "material"),
    "grit": ("grit",),
    "oil": ("viscosity", "dot"),
    "lock": ("strength",),
}

# Shapes told by their measures, of which a place says no more: by the attributes that must then be stated.
MEASURED = {
    "bolt": ("thread",),
    "nut": ("thread",),
    "oring": ("inner", "section_mm"),
    "pin": ("diameter", "length"),
    "clip": ("dims",),
    "washer": ("inner",),
    "seal-washer": ("inner", "outer"),
}
# Rings that are told by their measures and their rubber alone, wherever either text would put them.
MEASURED_ONLY = frozenset({"o-ring", "quad-ring"})
WHERE_RINGS_GO = frozenset(
    {
        "temperature",
        "coolant",
        "air",
        "water",
        "level",
        "brake",
        "brakepiston",
        "brakecaliper",
        "hydraulic",
        "adapter",
        "ram",
        "fuel",
        "oil",
        "pneumatic",
        "airconditioning",
        "ac",
    }
)
# Rings that a place says no more of, where their measures are stated.
RINGS = MEASURED_ONLY | {"bonded-seal"}
# Of these one measure alone tells: the thread that a bonded seal seals.
_ALSO_TOLD_BY = {"bonded-seal": "thread"}


def key_of(item: Meaning) -> tuple[str, ...]:
    """The attribute that items of this shape are told by."""
    family = kin().family(item.family)
    return KEYS.get(family.shape, ()) if family else ()


def measured(family: str, asked: dict[str, str]) -> bool:
    """Whether a need states the measures that things of its shape are told by."""
    told = kin().family(family)
    if told is None:
        return False
    return _ALSO_TOLD_BY.get(family) in asked or (
        told.shape in MEASURED and all(name in asked for name in MEASURED[told.shape])
    )
