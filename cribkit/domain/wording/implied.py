"""What goes without saying: of an item that says nothing, of a family, of a thread without a pitch."""

from __future__ import annotations

import re

from cribkit.domain.wording.meaning import Meaning
from cribkit.domain.wording.tables import kin

# The hex that bits have unless another is said (ISO 1173 form C 6.3, from memory).
USUAL_SHANK = "1/4 in"
# Coarse pitches, ISO 261 (from memory); a thread named without a pitch is coarse (ISO 965-1).
COARSE_PITCH = {
    "M3": "0.5",
    "M4": "0.7",
    "M5": "0.8",
    "M6": "1",
    "M8": "1.25",
    "M10": "1.5",
    "M12": "1.75",
    "M14": "2",
    "M16": "2",
    "M18": "2.5",
    "M20": "2.5",
    "M22": "2.5",
    "M24": "3",
}

# What nobody leaves out: an item that does not say it does not have it.
ALWAYS_SAID = frozenset(
    {("material", "microfibre"), ("material", "butyl"), ("alloy", "lead-free"), ("head_form", "raised")}
    | {("points", "8"), ("points", "4"), ("holds_by", "magnet")}
)

# What a family implies where an item says nothing: a flat combination spanner's ring is 12 point. Common practice.
IMPLIED = {
    ("cable-tie", "material"): "nylon",
    ("stainless-brush", "material"): "stainless",
    ("plastic-scraper", "material"): "plastic",
    ("thread-tape", "material"): "ptfe",
    ("brass-brush", "material"): "brass",
    ("needle-nose-pliers", "form"): "straight",
    ("locking-pliers", "form"): "bent",
    ("feeler-gauge", "material"): "steel",
    ("file", "section"): "flat",
}

# What a family is safe on by its purpose. Common practice; the label decides.
IMPLIED_TRAITS = {
    "throttle-body-cleaner": frozenset({"throttle-body-safe"}),
    "maf-cleaner": frozenset({"residue-free"}),
    "offset-screwdriver": frozenset({"offset"}),
    "silicone-spray": frozenset({"on-rubber", "on-plastic"}),
    "anaerobic-flange-sealant": frozenset({"not-material=silicone"}),
    "silicone-grease": frozenset({"on-rubber", "on-plastic"}),
    "crimping-pliers": frozenset({"ratcheting"}),
    "anti-seize": frozenset({"high-temperature"}),
    "ceramic-grease": frozenset({"high-temperature"}),
    "exhaust-paste": frozenset({"high-temperature"}),
    "exhaust-tape": frozenset({"high-temperature"}),
}

# Degrees of frost from which on a screenwash is one for the winter. Common practice, no source.
WINTER = 10
_FROST_PROOF = re.compile(r"-(\d{1,2}) ?c")


def implied(name: str, item: Meaning) -> str | None:
    """What goes without saying."""
    attributes = dict(item.attributes)
    if name == "material" and "bolt_grade" in attributes:
        return "steel"
    if name == "strength_of" and (grade := attributes.get("bolt_grade")):
        return "high" if grade in ("8.8", "10.9", "12.9") else "low"  # ISO 898-1, from memory
    if name == "system":
        sized = f"{attributes.get('size', '')} {attributes.get('tip', '')} {attributes.get('thread', '')}".split()
        return "inch" if "in" in sized else "metric" if sized and ("mm" in sized or sized[0][:1] == "M") else None
    if name == "season" and (found := _FROST_PROOF.match(attributes.get("temperature", ""))):
        return "winter" if int(found[1]) >= WINTER else None
    return IMPLIED.get((item.family, name)) or kin().implied(item.family, name)
