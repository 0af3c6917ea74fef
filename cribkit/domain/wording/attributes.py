"""The rule for attributes: what a need states of one, held against what an item states or goes without saying.

A few attributes have rules of their own, by name: first those that decide whatever the item says, then those for an
item that says nothing, then those for two values. Each may leave the matter to the rule of the table and to `agree`.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from math import inf
from typing import NamedTuple

from cribkit.domain.wording.agree import PLASTICS, Verdict, about, amount, mm_of, same, stands
from cribkit.domain.wording.implied import ALWAYS_SAID, COARSE_PITCH, USUAL_SHANK, implied
from cribkit.domain.wording.keys import MEASURED_ONLY, RINGS, WHERE_RINGS_GO, key_of, measured
from cribkit.domain.wording.meaning import Meaning
from cribkit.domain.wording.tables import OPEN_RULE, Rule, kin


class Pair(NamedTuple):
    """A need and an item, and the attributes of both by name."""

    need: Meaning
    item: Meaning
    asked: dict[str, str]
    held: dict[str, str]


# What a rule of one attribute says where it leaves the matter to the others.
_NOTHING: Verdict = ["nothing said"]
_Anyhow = Callable[[str, str | None, Pair], Verdict]
_Silent = Callable[[str, Pair], Verdict]
_Stated = Callable[[str, str, Pair], Verdict]


def hold(name: str, value: str, pair: Pair) -> Verdict:
    """No doubts, some doubts, or None for a difference."""
    has = pair.held.get(name)
    if has is None:
        has = implied(name, pair.item)
    if anyhow := _ANYHOW.get(name):
        found = anyhow(value, has, pair)
        if found is not _NOTHING:
            return found
    rule = kin().rule(name) or OPEN_RULE
    if has is None and name == "dims":
        has = pair.held.get("size")
    if has is None:
        has = rule.default or None
    if has is None:
        return _silent(name, value, rule, pair)
    if stated := _STATED.get(name):
        found = stated(value, has, pair)
        if found is not _NOTHING:
            return found
    return same(name, value, has)


def _silent(name: str, value: str, rule: Rule, pair: Pair) -> Verdict:
    """The item says nothing of it."""
    if silent := _SILENT.get(name):
        found = silent(value, pair)
        if found is not _NOTHING:
            return found
    if {name, *pair.held} >= {"size", "tip"}:
        return None  # a hexagon and a six-lobe are different things
    if (name, value) in ALWAYS_SAID:
        return None
    if pair.need.family == "adapter" and ({name} | pair.held.keys()) >= {"thread", "drive_in"}:
        return None  # of pipes, and of squares
    if rule.silent == "none" or (name in key_of(pair.item)[:1] and pair.item.unread):
        return None  # an item without its size, and with words that nobody could read, is no candidate
    if name in ("pitch", "pitch_class"):
        return _pitch(name, value, pair.held)
    return [f"{kin().called(name)} not stated"] if rule.silent == "review" else []


def same_model(asked: Mapping[str, str], held: Mapping[str, str]) -> bool:
    """Whether both texts name a vehicle, and the same one."""
    return "model" in asked and bool(set(asked.get("place", "").split()) & set(held.get("place", "").split()))


def finer(meaning: Meaning) -> set[str]:
    """The words of the name's surroundings that tell things apart."""
    return set(dict(meaning.attributes).get("finer", "").split())


def _strength(value: str, has: str | None, pair: Pair) -> Verdict:
    if value != "wicking" or "green" not in (pair.held.get("colour"), has):
        return _NOTHING
    only_green = "dyed" in pair.asked and "shade" not in pair.asked
    return [f"green, but {has} strength"] if only_green else None


def _colour(value: str, has: str | None, pair: Pair) -> Verdict:
    told = has is None and pair.item.family == "threadlocker" and "strength" in pair.held
    return None if told else _NOTHING  # its strength has a colour of its own


def _material(value: str, has: str | None, pair: Pair) -> Verdict:
    paper = value == "paper" and pair.item.family == "wipe" and "lint-free" not in pair.item.traits
    steel = value == "steel" and pair.item.family not in _NOT_OF_STEEL
    return [] if has is None and (paper or steel) else _NOTHING


# What is of steel only where it says so.
_NOT_OF_STEEL = frozenset(
    {"hose", "fuel-hose", "o-ring", "gasket", "sealing-washer", "cable-tie", "cable", "tape", "measuring-jug", "funnel"}
)


def _place(value: str, has: str | None, pair: Pair) -> Verdict:
    """Where a thing goes says no more than its measures."""
    if not measured(pair.need.family, pair.asked):
        return _NOTHING
    ring = pair.need.family in RINGS
    known = kin().parts | WHERE_RINGS_GO if ring else kin().parts
    there = has is None or (ring and set(has.split()) <= known)
    return [] if there and set(value.split()) <= known else _NOTHING


def _sling_ends(value: str, has: str | None, pair: Pair) -> Verdict:
    if has is None and pair.asked.get("sling_kind") == pair.held.get("sling_kind") == "round":
        return [] if value == "endless" else None  # EN 1492-2 (from memory)
    return _NOTHING


def _taper(value: str, has: str | None, pair: Pair) -> Verdict:
    return [] if value == "parallel" and has is None and pair.need.family == "bonded-seal" else _NOTHING


# What the code of a bulb begins with, by its kind, UN ECE R37 (from memory).
KIND_OF_CODE = {"capless": "w", "halogen": "h"}


def _bulb_kind(value: str, has: str | None, pair: Pair) -> Verdict:
    return [] if has is None and pair.held.get("bulb", "")[:1] == KIND_OF_CODE.get(value) else _NOTHING


def _filaments(value: str, has: str | None, pair: Pair) -> Verdict:
    """A rating in watts without a code asks for a bulb with one filament."""
    two = "/" in pair.held.get("bulb", "")
    return None if two and "bulb" not in pair.asked and "w" in value else _NOTHING


def _saps(value: str, has: str | None, pair: Pair) -> Verdict:
    follows = "spec" in pair.asked and pair.asked["spec"] == pair.held.get("spec")
    return [] if follows else _NOTHING  # from the class


def _fuel(value: str, has: str | None, pair: Pair) -> Verdict:
    told = pair.need.family in MEASURED_ONLY and "medium" in pair.asked
    return [] if told else _NOTHING  # its rubber says whether it stands it


def _medium(value: str, has: str | None, pair: Pair) -> Verdict:
    return [] if value == has or "material" in pair.asked else stands(value, pair.held.get("material", ""))


def _grade(value: str, has: str | None, pair: Pair) -> Verdict:
    """Of steel wool the number says it."""
    if "wool" in pair.asked:
        return []
    wool = pair.held.get("wool") if has is None else None
    if not wool:
        return _NOTHING
    return ["fine may be 00 or 0"] if "fine" in value and wool in ("00", "0") else None


def _finish(value: str, has: str | None, pair: Pair) -> Verdict:
    return None if has is None and pair.held.get("material") == "stainless" else _NOTHING


def _also(value: str, has: str | None, pair: Pair) -> Verdict:
    return None if _contrary(set(value.split()), set((has or "").split())) else []


def _finer(value: str, has: str | None, pair: Pair) -> Verdict:
    spoken = {word for said in pair.item.words for word in said.became.split()}  # perhaps as a part of its name
    if same_model(pair.asked, pair.held):
        spoken |= kin().vehicles  # the model says it
    spoken |= {"spray"} if pair.held.get("dispensed") == "spray" else set()
    return same("finer", " ".join(sorted(set(value.split()) - spoken)), has or "")


def _vehicle(value: str, has: str | None, pair: Pair) -> Verdict:
    return [] if has is None and "model" in pair.asked else _NOTHING  # the model says it


# From this length on a breaker bar may pass as a long one, mm. Common practice, no source.
LONG_BAR = 450
# From this one on it is one, mm. Common practice, no source.
SURELY_LONG_BAR = 600
# A blade of no more may be a stubby one, mm. Common practice, no source.
SHORT_BLADE = 45
# No stubby blade is longer, mm. Common practice, no source.
LONGEST_STUBBY = 60
# The short length of a bit with a hexagon shank, mm (ISO 1173 form C, from memory).
SHORT_BIT = 25.5
# The short ones of a 10 mm hexagon, beside 75 mm, mm. Common practice, no source.
SHORT_STOUT_BIT = 30


def _length_class(value: str, has: str | None, pair: Pair) -> Verdict:
    if has is not None:
        return _NOTHING
    if pair.item.family == "breaker-bar" and "dims" in pair.held:
        stated = pair.held["dims"].partition("; ")[0]
        if value != "long" or mm_of(stated) < LONG_BAR:
            return None
        return [] if mm_of(stated) >= SURELY_LONG_BAR else [f"{stated} may be long enough"]
    if value == "short" and pair.item.family == "bit" and "length" in pair.held:
        longest = SHORT_STOUT_BIT if pair.held.get("shank") == "10 mm" else SHORT_BIT
        return [] if mm_of(pair.held["length"]) <= longest else None
    if value == "stubby" and "length" in pair.held:
        short = mm_of(pair.held["length"].partition("; ")[0]) <= SHORT_BLADE
        return ["short enough for a stubby one, but it does not say so"] if short else None
    return _NOTHING


# Whatever the item says, or does not say.
_ANYHOW: dict[str, _Anyhow] = {
    "strength": _strength,
    "colour": _colour,
    "material": _material,
    "place": _place,
    "sling_ends": _sling_ends,
    "taper": _taper,
    "bulb_kind": _bulb_kind,
    "rating": _filaments,
    "saps": _saps,
    "fuel": _fuel,
    "amount": lambda value, has, pair: amount(value, has),
    "medium": _medium,
    "grade": _grade,
    "finish": _finish,
    "also": _also,
    "finer": _finer,
    "vehicle": _vehicle,
    "length_class": _length_class,
}


def _contrary(asked: set[str], has: set[str]) -> bool:
    """Whether the item says the contrary of a word of the need, and neither says both."""
    against = kin().contraries
    return any(asked.isdisjoint(shut := has.intersection(against[one])) and shut for one in asked - has)


def _pitch(name: str, value: str, held: Mapping[str, str]) -> Verdict:
    if name == "pitch" and held.get("pitch_class") == "fine":
        return ["fine, but its pitch is not stated"]  # M10 has two fine pitches
    return [] if value in ("coarse", COARSE_PITCH.get(held.get("thread", ""))) else None


def _other_system(measure: str, system: str | None) -> bool:
    """Whether a set told to be in inches is asked for a size in mm, or the other way round."""
    return (system == "inch" and measure.endswith(" mm")) or (system == "metric" and measure.endswith(" in"))


def _of_set(value: str, pair: Pair) -> Verdict:
    return None if _other_system(value, pair.held.get("system")) else _NOTHING


def _differs_if(differs: Callable[[str, dict[str, str]], bool]) -> _Silent:
    """What the item says of something else is the contrary."""
    return lambda value, pair: None if differs(value, pair.held) else _NOTHING


def _agrees_if(agrees: Callable[[str, dict[str, str]], bool]) -> _Silent:
    """It goes without saying."""
    return lambda value, pair: [] if agrees(value, pair.held) else _NOTHING


# Where the item says nothing.
_SILENT: dict[str, _Silent] = {
    "shank": _agrees_if(lambda value, held: value == USUAL_SHANK),
    "system": _agrees_if(lambda value, held: value == "metric" and held.get("dims", "").endswith(" mm")),
    "size": _of_set,
    "tip": _of_set,
    "angle": _differs_if(lambda value, held: "straight" in held.get("also", "").split()),
    "bolt_grade": _differs_if(lambda value, held: "stainless_class" in held),
    "length": _differs_if(lambda value, held: held.get("length_class") == "stubby" and mm_of(value) > LONGEST_STUBBY),
    "lining": _differs_if(lambda value, held: held.get("material") in PLASTICS),  # a clip of nylon alone
}


def _current(value: str, has: str, pair: Pair) -> Verdict:
    return [] if has == "both" else _NOTHING


def _plastic(value: str, has: str, pair: Pair) -> Verdict:
    one_of_a_kind = value == "plastic" and has in PLASTICS and finer(pair.item) - finer(pair.need)
    return [f"{has} is a plastic, but it is one of a kind"] if one_of_a_kind else _NOTHING


# Told by the largest that they go round.
UP_TO = frozenset({"strap-wrench", "chain-wrench"})
_BLADES = re.compile(r"\b\d{1,2}[ -]?(?:blades?|leaf|leaves|lvs|bl|pcs?|pieces?)\b")
# Measuring tools with a scale in one system only.
ONE_SYSTEM = frozenset({"micrometer", "inside-micrometer", "depth-micrometer", "dial-gauge"})


def _dims(value: str, has: str, pair: Pair) -> Verdict:
    item, need = pair.item, pair.need
    if item.family == "feeler-gauge" and " to " in has and " to " not in value:
        told = same("dims", value, has)
        ends = value in (has.partition(" to ")[0], has.partition(" to ")[2])
        return told if told is None or ends or _BLADES.search(item.text.lower()) else ["it does not list its blades"]
    if item.family in ONE_SYSTEM and _inches(value) != _inches(has):
        return None  # its scale is read in the other system
    if item.family in UP_TO and " to " not in value + has and "; " not in value + has:
        return [] if mm_of(value) <= mm_of(has) else None
    if need.family in FROM_ZERO and (reach := _reach_of(has)):
        wanted = _reach_of(value) or value
        if " to " in wanted:  # a part of the scale
            return [] if mm_of(wanted.partition(" to ")[2]) <= mm_of(reach) else None
        return [] if all(about(part, reach) for part in wanted.split("; ")) else None
    if need.family in FROM_ZERO and (wanted := _reach_of(value)):
        return [] if any(about(wanted, part) for part in has.split("; ")) else None
    return same("dims", value, has, _nominal_from(item))


def _inches(measure: str) -> bool:
    return measure.endswith(" in")


# Measuring tools that are called by the end of their scale: a 150 mm caliper reads 0-150 mm. Common practice.
FROM_ZERO = frozenset({"caliper", "depth-gauge", "steel-rule"})


def _reach_of(measure: str) -> str:
    """The end of a scale from nought, "" for any other measure."""
    low, to, high = measure.partition("; ")[0].partition(" to ")
    return high if to and low.split(" ")[0] == "0" else ""


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


def _graduation(value: str, has: str, pair: Pair) -> Verdict:
    if pair.item.family in ONE_SYSTEM and _inches(value) != _inches(has):
        return None
    return [] if mm_of(has) <= mm_of(value) else None


# Meters that measure up to their rating: more is fine.
METERS = frozenset({"clamp-meter", "multimeter"})


def _rating(value: str, has: str, pair: Pair) -> Verdict:
    if "cats" in pair.held:
        return _categories(pair.asked, pair.held["cats"])
    if pair.need.family not in METERS:
        return _NOTHING
    from cribkit.domain.wording.ratings import reaches

    return reaches(value, has)


def _cat(value: str, has: str, pair: Pair) -> Verdict:
    if "cats" in pair.held:
        return _categories(pair.asked, pair.held["cats"])
    return [] if int(has) >= int(value) else None


def _categories(asked: dict[str, str], has: str) -> list[str] | None:
    """Whether one of the categories that a meter is marked with serves, up to its voltage (IEC 61010, from memory)."""
    volts = max((int(found) for found in re.findall(r"(\d+)v", asked.get("rating", ""))), default=0)
    pairs = (pair.split(":") for pair in has.split())
    return [] if any(int(cat) >= int(asked.get("cat", "0")) and int(top) >= volts for cat, top in pairs) else None


# Where both say something.
_STATED: dict[str, _Stated] = {
    "current": _current,
    "material": _plastic,
    "dims": _dims,
    "graduation": _graduation,
    "rating": _rating,
    "cat": _cat,
}
