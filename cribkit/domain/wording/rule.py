"""The rule for a match. docs/matching.md tells it in plain words."""

from __future__ import annotations

import re
from math import inf

from cribkit.domain.wording.agree import PLASTICS, about, amount, mm_of, same, stands
from cribkit.domain.wording.leftovers import unnamed, unread_doubts
from cribkit.domain.wording.meaning import MOST_DOUBTED, NONE, Judgement, Meaning
from cribkit.domain.wording.tables import FLUIDS, Family, Rule, kin

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

# How it is packed makes no item the better or the worse.
UNCOUNTED = frozenset({"dispensed", "pack", "amount", "finer", "also", "pieces"})
# Members that a list of contents tells apart by their forms: the straight pick is not the hook.
TOLD_APART = frozenset({"pick"})
# The hex that bits have unless another is said (ISO 1173 form C 6.3, from memory).
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
USUAL_SHANK = "1/4 in"
# Screwed in by fine threads as often as by coarse ones: common practice, no source.
OFTEN_FINE = frozenset({"sump-plug", "spark-plug", "glow-plug", "grease-nipple", "brake-pipe-nut"})
_OPEN = Rule("review", "", "free")


def judge(need: Meaning, item: Meaning) -> Judgement:
    """Whether the item (or a member of it) is what the need, or one of its alternatives, asks for."""
    asked_for = (need, *need.others)
    best = max((_judge_one(asked, item) for asked in asked_for), key=lambda found: found.rank)
    whole = "set" in need.traits or need.family.endswith("-set")
    part = need.family != item.family and item.family.endswith("-set")
    if item.members and not (whole and need.family == item.family) and (part or best.status == "review"):
        best = NONE  # its contents are known: they say what it has
    for member in item.members:
        found = max((_judge_one(asked, member) for asked in asked_for), key=lambda found: found.rank)
        if member.family in TOLD_APART and "not stated" in found.weakness:
            continue  # a list of forms leaves none open
        if found.rank > best.rank and found.status != "none":
            why = f"{found.why}; in the set {item.text}"
            best = Judgement(found.status, found.score - 1, why, member.text, found.weakness)
    return best


def _judge_one(need: Meaning, item: Meaning) -> Judgement:
    if not need.family or not item.family:
        return unnamed(need, item)
    bond = kinship(need.family, item.family)
    if bond is None:
        return NONE
    if bond and need.family == "combination-wrench" and " x " in dict(item.attributes).get("size", ""):
        return NONE  # two rings, and no open end
    doubts = [bond] if bond else []
    loss = 0.0 if need.family == item.family else 3.0
    asked, has = dict(need.attributes), dict(item.attributes)
    for name, value in asked.items():
        verdict = _attribute(name, value, need, item, asked, has)
        if verdict is None:
            return NONE
        doubts += verdict
    if has.get("mechanism") == "non-graduated" and "mechanism" not in asked and "range" in asked:
        doubts.append("it has no scale: it is set on a torque tester")
    for name in has.keys() - asked.keys():
        rule = kin().rule(name) or _OPEN
        if has[name] == rule.default or name in UNCOUNTED or (name == "single_of" and "dims" in asked):
            continue
        if name == "thread" and " to " in has[name]:
            continue
        if rule.unasked == "none" or (name == "points" and has[name] in SQUARE_HEADS):
            return NONE
        if name == "pitch_class" and has[name] == "fine" and "thread" in asked:
            if need.family in OFTEN_FINE:
                if not _same_model(asked, has):  # else the vehicle tells which one it is
                    doubts.append("its thread is fine, and no pitch was asked for")
                continue
            return NONE  # a thread named without a pitch is coarse
        loss += 0.5
        if name == "form" and need.family == "needle-nose-pliers" and has[name] == "bent":
            doubts.append("bent was not asked for")
        if name == "shank" and need.family == "bit-holder":
            doubts.append(f"it takes bits of {has[name]}, not the usual {USUAL_SHANK}")
        if rule.unasked == "review" and not _left_open(name, has[name], need):
            doubts.append(f"{kin().called(name)} {has[name]} was not asked for")
    verdict = _traits(need, item)
    if verdict is None:
        return NONE
    doubts += verdict
    loss += 2.0 * sum(not trait.startswith("not-") for trait in item.traits - need.traits)
    if bond and doubts[1:] and (item.kind == "consumable" or doubts[2:]):
        return NONE  # perhaps another kind of thing, and it does not even say what is asked for
    strange = unread_doubts(need, item)
    if strange is None:
        return NONE
    doubts += strange
    agreed = [value for name, value in need.attributes if has.get(name)]
    return _verdict(need, item, agreed, doubts, loss)


def _same_model(asked: dict[str, str], held: dict[str, str]) -> bool:
    """Whether both texts name a vehicle, and the same one."""
    return "model" in asked and bool(set(asked.get("place", "").split()) & set(held.get("place", "").split()))


def _left_open(name: str, value: str, need: Meaning) -> bool:
    """Whether what only the item says is left open by every need of this kind."""
    if need.family == "torque-multiplier":
        return name in ("drive_in", "drive_out")
    if need.family == "sump-plug" and name == "thread":
        return "model" in dict(need.attributes)  # the vehicle tells which one it is
    hexagon = name == "drive_in" and "hex_end" in dict(need.attributes)  # the hexagon that a drill takes
    return hexagon or (need.family, name, value) == ("wrench-set", "set_of", "combination")  # the usual set


# Sockets for square heads: never meant where nothing is said.
SQUARE_HEADS = frozenset({"4", "8"})


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


def key_of(item: Meaning) -> tuple[str, ...]:
    """The attribute that items of this shape are told by."""
    family = kin().family(item.family)
    return KEYS.get(family.shape, ()) if family else ()


def _verdict(need: Meaning, item: Meaning, agreed: list[str], doubts: list[str], loss: float) -> Judgement:
    why = ", ".join([item.family.replace("-", " "), *agreed, *sorted(need.traits & item.traits)])
    if doubts:
        return Judgement("review", max(MOST_DOUBTED - loss - 5 * len(doubts), 5.0), why, weakness="; ".join(doubts))
    return Judgement("match", max(100.0 - loss, 61.0), why)


# Families so wide that an item named only so may be the special thing that is asked for.
VAGUE = frozenset({"crowfoot", "wrench"})


def kinship(asked: str, has: str) -> str | None:
    """ "" where the item's family meets the need's, a doubt where it may, None where it does not."""
    if asked == has:
        return ""
    told, wanted = kin().family(has), kin().family(asked)
    if told and asked in told.parents:
        return ""
    if told and asked in told.perhaps:
        return f"{has} for {asked}"
    if wanted and (has in wanted.parents or (has in VAGUE and has in wanted.perhaps)):
        return f"may not be a {asked}"
    return None


def _attribute(
    name: str, value: str, need: Meaning, item: Meaning, asked: dict[str, str], held: dict[str, str]
) -> list[str] | None:
    """No doubts, some doubts, or None for a difference."""
    rule, has = kin().rule(name) or _OPEN, held.get(name)
    if has is None:
        has = implied(name, item)
    if name == "strength" and value == "wicking" and "green" in (held.get("colour"), has):
        only_green = "dyed" in asked and "shade" not in asked
        return [f"green, but {has} strength"] if only_green else None
    if name == "colour" and has is None and item.family == "threadlocker" and "strength" in held:
        return None  # its strength has a colour of its own
    if (
        name == "material"
        and value == "paper"
        and has is None
        and item.family == "wipe"
        and "lint-free" not in item.traits
    ):
        return []
    if name == "place" and _measured(need.family, asked):
        ring = need.family in MEASURED_ONLY or need.family == "bonded-seal"
        known = kin().parts | WHERE_RINGS_GO if ring else kin().parts
        if set(value.split()) <= known and (has is None or (ring and set(has.split()) <= known)):
            return []  # where it goes says no more than its measures
    if name == "sling_ends" and has is None and asked.get("sling_kind") == held.get("sling_kind") == "round":
        return [] if value == "endless" else None  # EN 1492-2 (from memory)
    if name == "taper" and value == "parallel" and has is None and need.family == "bonded-seal":
        return []  # it seals no other
    if name == "bulb_kind" and has is None and held.get("bulb", "")[:1] == KIND_OF_CODE.get(value):
        return []  # its code says it
    if name == "rating" and "/" in held.get("bulb", "") and "bulb" not in asked and "w" in value:
        return None  # one filament is asked for
    if name == "saps" and "spec" in asked and asked["spec"] == held.get("spec"):
        return []  # it only follows from the class
    if name == "fuel" and need.family in MEASURED_ONLY and "medium" in asked:
        return []  # its rubber says whether it stands it
    if name == "amount":
        return amount(value, has)
    if name == "medium":
        return [] if value == has or "material" in asked else stands(value, held.get("material", ""))
    if name == "grade" and "wool" in asked:
        return []  # its number says it
    if name == "grade" and has is None and (wool := held.get("wool")):
        return ["fine may be 00 or 0"] if "fine" in value and wool in ("00", "0") else None
    if name == "finish" and has is None and held.get("material") == "stainless":
        return None
    if name == "material" and value == "steel" and has is None:
        return []
    if name == "also":
        return None if _contrary(set(value.split()), set((has or "").split())) else []
    if name == "finer":
        spoken = {word for said in item.words for word in said.became.split()}  # perhaps as a part of its name
        if _same_model(asked, held):
            spoken |= kin().vehicles  # the model says it
        spoken |= {"spray"} if held.get("dispensed") == "spray" else set()
        value, has = " ".join(sorted(set(value.split()) - spoken)), has or ""
    if has is None and name == "dims":
        has = held.get("size")
    if name == "vehicle" and has is None and "model" in asked:
        return []  # the model says it
    if name == "length_class" and has is None and item.family == "breaker-bar" and "dims" in held:
        stated = held["dims"].partition("; ")[0]
        return [f"{stated} may be long enough"] if value == "long" and mm_of(stated) >= LONG_BAR else None
    if (name, value) == ("length_class", "stubby") and has is None and "length" in held:
        short = mm_of(held["length"].partition("; ")[0]) <= SHORT_BLADE
        return ["short enough for a stubby one, but it does not say so"] if short else None
    if has is None:
        has = rule.default or None
    if has is None and (name, value) == ("shank", USUAL_SHANK):
        return []
    if (name, value) == ("system", "metric") and has is None and held.get("dims", "").endswith(" mm"):
        return []
    if has is None and name in ("size", "tip") and _other_system(value, held.get("system")):
        return None
    if has is None:
        if name == "angle" and "straight" in held.get("also", "").split():
            return None
        if {name, *held} >= {"size", "tip"}:
            return None  # a hexagon and a six-lobe are different things
        if name == "bolt_grade" and "stainless_class" in held:
            return None
        if name == "length" and held.get("length_class") == "stubby" and mm_of(value) > LONGEST_STUBBY:
            return None
        if name == "lining" and held.get("material") in PLASTICS:
            return None  # a clip of nylon alone
        if (name, value) in ALWAYS_SAID:
            return None
        if need.family == "adapter" and ({name} | held.keys()) >= {"thread", "drive_in"}:
            return None  # of pipes, and of squares
        if rule.silent == "none" or (name in key_of(item)[:1] and item.unread):
            return None  # an item without its size, and with words that nobody could read, is no candidate
        if name == "pitch" and held.get("pitch_class") == "fine":
            return ["fine, but its pitch is not stated"]  # M10 has two fine pitches
        if name in ("pitch", "pitch_class"):
            return [] if value in ("coarse", COARSE_PITCH.get(held.get("thread", ""))) else None
        return [f"{kin().called(name)} not stated"] if rule.silent == "review" else []
    if name == "current" and has == "both":
        return []
    if name == "material" and value == "plastic" and has in PLASTICS and _finer(item) - _finer(need):
        return [f"{has} is a plastic, but it is one of a kind"]
    if name == "dims" and item.family == "feeler-gauge" and " to " in has and " to " not in value:
        told = same(name, value, has)
        ends = value in (has.partition(" to ")[0], has.partition(" to ")[2])
        return told if told is None or ends or _BLADES.search(item.text.lower()) else ["it does not list its blades"]
    if name in ("dims", "graduation") and item.family in ONE_SYSTEM and _inches(value) != _inches(has):
        return None  # its scale is read in the other system
    if name == "graduation":
        return [] if mm_of(has) <= mm_of(value) else None
    if name in ("cat", "rating") and "cats" in held:
        return _categories(asked, held["cats"])
    if name == "cat":
        return [] if int(has) >= int(value) else None
    if name == "rating" and need.family in METERS:
        from cribkit.domain.wording.ratings import reaches

        return reaches(value, has)
    if name == "dims" and item.family in UP_TO and " to " not in value + has and "; " not in value + has:
        return [] if mm_of(value) <= mm_of(has) else None
    if name == "dims" and need.family in FROM_ZERO and (reach := _reach_of(has)):
        wanted = _reach_of(value) or value
        if " to " in wanted:  # a part of the scale
            return [] if mm_of(wanted.partition(" to ")[2]) <= mm_of(reach) else None
        return [] if all(about(part, reach) for part in wanted.split("; ")) else None
    if name == "dims" and need.family in FROM_ZERO and (wanted := _reach_of(value)):
        return [] if any(about(wanted, part) for part in has.split("; ")) else None
    return same(name, value, has, _nominal_from(item) if name == "dims" else 0.0)


def _measured(family: str, asked: dict[str, str]) -> bool:
    """Whether a need states the measures that things of its shape are told by."""
    told = kin().family(family)
    if told is not None and told.name == "bonded-seal" and "thread" in asked:
        return True  # the thread that it seals is its measure
    return told is not None and told.shape in MEASURED and all(name in asked for name in MEASURED[told.shape])


def _contrary(asked: set[str], has: set[str]) -> bool:
    """Whether the item says the contrary of a word of the need, and neither says both."""
    against = kin().contraries
    return any(asked.isdisjoint(shut := has.intersection(against[one])) and shut for one in asked - has)


def _categories(asked: dict[str, str], has: str) -> list[str] | None:
    """Whether one of the categories that a meter is marked with serves, up to its voltage (IEC 61010, from memory)."""
    volts = max((int(found) for found in re.findall(r"(\d+)v", asked.get("rating", ""))), default=0)
    pairs = (pair.split(":") for pair in has.split())
    return [] if any(int(cat) >= int(asked.get("cat", "0")) and int(top) >= volts for cat, top in pairs) else None


def _other_system(measure: str, system: str | None) -> bool:
    """Whether a set told to be in inches is asked for a size in mm, or the other way round."""
    return (system == "inch" and measure.endswith(" mm")) or (system == "metric" and measure.endswith(" in"))


# What the code of a bulb begins with, by its kind, UN ECE R37 (from memory).
KIND_OF_CODE = {"capless": "w", "halogen": "h"}
# From this length on a breaker bar may pass as a long one, mm. Common practice, no source.
LONG_BAR = 450
# A blade of no more may be a stubby one, mm. Common practice, no source.
SHORT_BLADE = 45
# No stubby blade is longer, mm. Common practice, no source.
LONGEST_STUBBY = 60


def _finer(meaning: Meaning) -> set[str]:
    return set(dict(meaning.attributes).get("finer", "").split())


# Meters that measure up to their rating: more is fine.
METERS = frozenset({"clamp-meter", "multimeter"})


def _nominal_from(item: Meaning) -> float:
    """From how many mm on a measure in inches stands for one in mm.

    Widths of tapes, scrapers and brushes are nominal (1 in, 25 mm). Of tools overall lengths are (8 in, 200 mm), while
    what works on something, as a punch or a fork does, is told exactly: 5/16 in is not 8 mm. Common practice.
    """
    if item.family.endswith("tape") or item.family in NOMINAL_WIDTHS:
        return 0.0
    if item.kind != "tool" or item.family in FITS_EXACTLY:
        return inf
    return SHORTEST_LENGTH


NOMINAL_WIDTHS = frozenset(
    {
        "chisel",
        "abrasive-disc",
        "brake-pipe",
        "cutting-disc",
        "fuse",
        "abrasive-belt",
        "lockwire",
        "sandpaper",
        "scouring-pad",
        "scraper",
        "plastic-scraper",
        "wire-brush",
        "brass-brush",
        "paint-brush",
        "wire-wheel",
        "resealable-bag",
    }
)
# Told by the size that fits, however large.
FITS_EXACTLY = frozenset(
    {"reamer", "hole-saw", "seal-driver", "hook-wrench", "pin-wrench", "hub-socket", "bearing-puller"}
)
# No tool is called by an overall length of less, mm. Common practice, no source.
SHORTEST_LENGTH = 50.0


# Told by the largest that they go round.
UP_TO = frozenset({"strap-wrench", "chain-wrench"})
_BLADES = re.compile(r"\b\d{1,2}[ -]?(?:blades?|leaf|leaves|lvs|bl|pcs?|pieces?)\b")
# Measuring tools with a scale in one system only.
ONE_SYSTEM = frozenset({"micrometer", "inside-micrometer", "depth-micrometer", "dial-gauge"})


def _inches(measure: str) -> bool:
    return measure.endswith(" in")


# Measuring tools that are called by the end of their scale: a 150 mm caliper reads 0-150 mm. Common practice.
FROM_ZERO = frozenset({"caliper", "depth-gauge", "steel-rule"})


def _reach_of(measure: str) -> str:
    """The end of a scale from nought, "" for any other measure."""
    low, to, high = measure.partition("; ")[0].partition(" to ")
    return high if to and low.split(" ")[0] == "0" else ""


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


# What is sold in assortments that name their smallest and largest only.
ASSORTED = frozenset({"hose-clamp", "ear-clamp", "fuel-hose-clip", "p-clip", "heat-shrink", "trim-clip", "circlip"})


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


def _traits(need: Meaning, item: Meaning) -> list[str] | None:
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
    if any(f"not-{word}" in need.traits for word in _finer(item)):
        return None
    denied = {trait.removeprefix("not-") for trait in item.traits if trait.startswith("not-")}
    used_on = {f"{trait.removeprefix('on-')}-safe" for trait in need.traits if trait.startswith("on-")}
    if denied & (need.traits | used_on | _finer(need) | {f"{name}={value}" for name, value in need.attributes}):
        return None  # the label says that it is not so
    if "sensor-safe" in need.traits and dict(item.attributes).get("cure") == "acetoxy":
        return None  # acetic acid is what harms the sensor
    safe |= {f"on-{trait.removesuffix('-safe')}" for trait in item.traits if trait.endswith("-safe")}
    for trait in need.traits - item.traits - safe - _finer(item):
        if trait.startswith("not-"):
            doubts += _without(trait.removeprefix("not-"), need, item)
            continue
        rule = kin().rule(trait) or _OPEN
        if rule.silent == "none" and not (trait == "high-temperature" and "temperature" in dict(need.attributes)):
            return None
        doubts += [f"{kin().called(trait)} not stated"] if rule.silent == "review" else []
    for trait in item.traits - need.traits - safe:
        if trait.startswith("not-"):
            continue
        rule = kin().rule(trait) or _OPEN
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
    if told is None or told.shape not in FLUIDS or name in dict(item.attributes) or _NOT.search(need.text.lower()):
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


# Families that may stand in for each other, but are not the same thing: a line against one says nothing of the other.
APART = frozenset(
    {
        ("wiping-rag", "wipe"),
        ("wipe", "wet-wipe"),
        ("penetrating-oil", "multi-purpose-spray"),
        ("terminal-grease", "petroleum-jelly"),
        ("power-steering-fluid", "central-hydraulic-fluid"),
        ("open-end-wrench", "combination-wrench"),
        ("ring-wrench", "combination-wrench"),
    }
)


def forbidden(never: Meaning, item: Meaning) -> bool:
    """Whether the item is what a `never` line means, or leaves open whether it is.

    What the item says beyond the line does not free it; another family, or a stated attribute that differs, does.
    """
    return any(_forbids(line, one) for line in (never, *never.others) for one in (item, *item.members))


def _forbids(never: Meaning, item: Meaning) -> bool:
    if (never.family, item.family) in APART:
        return False
    if never.family == "oil" and item.family.endswith("-oil"):  # mineral oil, whatever it is for
        never = never._replace(family=item.family)
    if "cure" in dict(never.attributes) and "sensor-safe" in item.traits and "cure" not in dict(item.attributes):
        item = item._replace(attributes=tuple(sorted({**dict(item.attributes), "cure": "neutral"}.items())))
    named = {name for name, _ in never.attributes} | {"thread", "strength"}
    kept = tuple(pair for pair in item.attributes if pair[0] in named or pair[0] in KEEPS_APART)
    plain = item._replace(attributes=kept, traits=item.traits & never.traits, members=(), unread=())
    return _judge_one(never, plain).status != "none"


# What an item says without being asked that still tells its kind, as the bolt grade tells steel.
KEEPS_APART = frozenset({"bolt_grade", "wool"})


def told(family: str) -> Family | None:
    """The table's entry of a family."""
    return kin().family(family)
