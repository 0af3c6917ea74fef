"""The rule for traits: what a thing is said to be or not to be, beside its attributes."""

from __future__ import annotations

import re

from cribkit.domain.wording.agree import PLASTICS
from cribkit.domain.wording.attributes import finer
from cribkit.domain.wording.implied import IMPLIED_TRAITS
from cribkit.domain.wording.meaning import Meaning
from cribkit.domain.wording.tables import FLUIDS, OPEN_RULE, kin

# What is sold in assortments that name their smallest and largest only.
ASSORTED = frozenset({"hose-clamp", "ear-clamp", "fuel-hose-clip", "p-clip", "heat-shrink", "trim-clip", "circlip"})


def hold_traits(need: Meaning, item: Meaning) -> list[str] | None:
    """No doubts, some doubts, or None for a difference."""
    doubts: list[str] = []
    if (
        item.family in ASSORTED
        and "set" in item.traits - need.traits
        and {"dims", "range"} & dict(need.attributes).keys()
    ):
        doubts.append("a set, and its sizes are not listed")
    safe = IMPLIED_TRAITS.get(item.family, frozenset())
    if dict(item.attributes).get("material") in ("brass", "plastic", "aluminium", "copper"):
        safe |= {"non-magnetic"}
    if any(f"not-{trait}" in need.traits for trait in item.traits):
        return None
    if any(f"not-{name}={value}" in need.traits for name, value in item.attributes):
        return None
    if "not-material=plastic" in need.traits and any(value in PLASTICS for _, value in item.attributes):
        return None
    if any(one in need.traits and other in item.traits - need.traits for one, other in OPPOSED):
        return None
    if "straight" in need.traits and item.traits & {"offset", "bent"}:
        return None
    if any(f"not-{word}" in need.traits for word in finer(item)):
        return None
    if need.family != item.family and any(f"not-{word}" in need.traits for word in item.family.split("-")):
        return None  # any spanner but a ratcheting one
    denied = {trait.removeprefix("not-") for trait in item.traits if trait.startswith("not-")}
    used_on = {f"{trait.removeprefix('on-')}-safe" for trait in need.traits if trait.startswith("on-")}
    if denied & (need.traits | used_on | finer(need) | {f"{name}={value}" for name, value in need.attributes}):
        return None  # the label says that it is not so
    if "sensor-safe" in need.traits and dict(item.attributes).get("cure") == "acetoxy":
        return None  # acetic acid is what harms the sensor
    safe |= {f"on-{trait.removesuffix('-safe')}" for trait in item.traits if trait.endswith("-safe")}
    for trait in need.traits - item.traits - safe - finer(item):
        if trait.startswith("not-"):
            doubts += _without(trait.removeprefix("not-"), need, item)
            continue
        if trait == "double-ended" and " x " in dict(item.attributes).get("size", ""):
            continue  # two sizes say it
        rule = kin().rule(trait) or OPEN_RULE
        if rule.silent == "none" and not (trait == "high-temperature" and "temperature" in dict(need.attributes)):
            return None
        doubts += [f"{kin().called(trait)} not stated"] if rule.silent == "review" else []
    for trait in item.traits - need.traits - safe:
        if trait.startswith("not-"):
            continue
        rule = kin().rule(trait) or OPEN_RULE
        if trait == "folding":
            if "not-t-handle" in need.traits:
                return None  # no L keys
            continue  # of a key whose handle is left open
        if rule.unasked == "none":
            return None
        doubts += [UNASKED.get(trait, f"{kin().called(trait)} was not asked for")] if rule.unasked == "review" else []
    return sorted(doubts)


# What would have made another thing of it: a grease with moly is a moly grease.
NEVER_IN = frozenset({("lithium-grease", "moly")})


def _without(held: str, need: Meaning, item: Meaning) -> list[str]:
    """A doubt where a chemical is to be free of something, and the item says nothing of it."""
    told, name = kin().family(need.family), held.partition("=")[0]
    if need.family == "gloves" and name == "material" and name not in dict(item.attributes):
        return [f"without {held.rpartition('=')[2]} not stated"]  # whom latex harms
    free_of_it = held == "material=silicone" and need.kind == "consumable"  # it spoils paint, whatever brings it
    if (
        told is None
        or not (free_of_it or told.shape in FLUIDS)
        or name in dict(item.attributes)
        or _NOT.search(need.text.lower())
    ):
        return []  # "brake grease, not copper grease": another thing, and this is not it
    value = held.rpartition("=")[2]
    if (item.family, value) in NEVER_IN:
        return []
    return [f"without {kin().called(name) if value in ('yes', 'with') else value} not stated"]


_NOT = re.compile(r"\b(?:not|never|don't)\b")


# Of these the one shuts out the other.
OPPOSED = tuple(
    pair
    for one, other in (("high-temperature", "low-temperature"), ("fast-drying", "slow-drying"))
    for pair in ((one, other), (other, one))
)
# What is said of a trait that nobody asked for, where its name says too little.
UNASKED = {
    "unlisted": "the set names a range, not this size",
    "crosshead": "a crosshead may be PH or PZ",
    "called-spline": "'spline' may be another profile than triple square",
}
