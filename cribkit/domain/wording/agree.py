"""Whether two values of one attribute agree: sizes, ranges, lengths, places, packs."""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from fractions import Fraction

# [] where two values agree, what a person has to look at, or None where they differ.
Verdict = list[str] | None
Compare = Callable[[str, str], Verdict]

# Lengths of extensions, blades and ties are nominal: 6 in and 150 mm are one, within this share. Common practice.
NOMINAL = 0.04
NOMINAL_NAMES = frozenset({"length", "dims", "weight", "grip"})
# Bores of hoses: 5/16 in is sold as 8 mm, 3/4 as 19. Common practice, no source.
SAME_BORE = 0.15


def mm_of(text: str) -> Fraction:
    """A length as read, in mm; the exact fractions cost 5 ms to import, so only where two lengths are compared."""
    from cribkit.domain.wording.measure import mm_of as exact

    return exact(text)


def same(name: str, asked: str, has: str, nominal_from: float = 0.0) -> Verdict:
    """Whether two values of an attribute agree: [] yes, a doubt, or None.

    Lengths in mm and inches are nominal, one for the other, from `nominal_from` mm on.
    """
    if asked == has:
        return []
    if name == "dyed" or (name, {asked, has}) in ALIKE:
        return [f"it says {has}, not {asked}"]
    if name in NOMINAL_NAMES:
        return _nominal(asked, has, nominal_from)
    compared = AGREE.get(name)
    return compared(asked, has) if compared else None


# Values that the trade takes for each other, and yet not every label: a person looks. ACEA C3 counts as low in ash
# and as medium; HM (ISO 11158) is the HLP of DIN 51524. From memory.
ALIKE = (
    ("saps", {"low", "medium"}),
    ("oil_class", {"HLP", "HM"}),
    ("oil_class", {"HVLP", "HV"}),
)


def _all_there(separator: str) -> Compare:
    """Each part asked for is among those given."""
    return lambda asked, has: [] if set(asked.split(separator)) <= set(has.split(separator)) else None


def _one_there(asked: str, has: str) -> Verdict:
    return [] if set(asked.split(";")) & set(has.split(";")) else None


def _either(*pair: str) -> Compare:
    """Two words for one thing, in either order."""
    return lambda asked, has: [] if {asked, has} == set(pair) else None


def _serves(need: str, given: str) -> Compare:
    """The item's value serves where that is needed, or whatever is (""): a combination spanner has a ring end."""
    return lambda asked, has: [] if need in (asked, "") and has == given else None


def _bore(asked: str, has: str) -> Verdict:
    return [] if abs(mm_of(asked) - mm_of(has)) <= SAME_BORE else None


def _at_least(asked: str, has: str) -> Verdict:
    """What a thing stands or keeps off: more serves as well."""
    return [] if float(has) >= float(asked) else None


def _star_washer(asked: str, has: str) -> Verdict:
    if "star" not in (asked, has) or not f"{asked}{has}".replace("star", "").endswith("-tooth"):
        return None
    return [] if asked == "star" else ["internal or external teeth not stated"]


def _suits_threads(asked: str, has: str) -> Verdict:
    return _spanned(asked, has) if " to " in has else [f"it is for {has}"]


def _rated(asked: str, has: str) -> Verdict:
    from cribkit.domain.wording.ratings import rated  # few items have one: start-up counts

    return rated(asked, has)


def _cut_level(asked: str, has: str) -> Verdict:
    """A to F, EN 388 (from memory)."""
    if asked.rstrip("+") >= has:
        return None
    return [] if asked.endswith("+") else [f"its cut level is {has}, not {asked}"]


def _axle_class(asked: str, has: str) -> Verdict:
    return None if _one_there(asked, has) is None else [f"it says GL-{has.replace(';', ' and GL-')}"]


def _finer(asked: str, has: str) -> Verdict:
    lacking = " ".join(sorted(set(asked.split()) - set(has.split())))
    return [f"{lacking} not stated"] if lacking else []


def _pack(asked: str, has: str) -> Verdict:
    small, large = sorted((_content(asked), _content(has)))
    if large <= small * SAME_CAN:
        return []
    alike = large <= small * NEARLY_SAME_CAN or _weighed(asked) != _weighed(has)
    return [f"it holds {has}, not {asked}"] if alike else None


def _purity(asked: str, has: str) -> Verdict:
    """99.9 % serves for 99 %, the other way round only with a look; 70 % is another thing."""
    first, second = (float(text.partition(" ")[0]) for text in (asked, has))
    if first <= second < first + 1:
        return []
    return [f"it is {has} pure, not {asked}"] if abs(first - second) <= 1 else None


def _plastic(asked: str, has: str) -> Verdict:
    if "plastic" not in (asked, has) or not {asked, has} - {"plastic"} <= PLASTICS:
        return None
    return [] if asked == "plastic" else [f"it says plastic, not {asked}"]


def _spanned(asked: str, has: str) -> Verdict:
    """Whether the metric threads asked for lie between the smallest and the largest that the item serves."""
    wanted, served = ([float(part[1:]) for part in text.split(" to ") if _METRIC.match(part)] for text in (asked, has))
    if not wanted or not served:
        return None
    return [] if served[0] <= min(wanted) and max(wanted) <= served[-1] else None


_METRIC = re.compile(r"M\d+(?:\.\d+)?$")


# Cans that differ by no more than this are one to a technician (17 fl oz and 500 ml). Common practice, no source.
SAME_CAN = 1.05
# A person takes the one for the other where they differ by no more than this; 10 ml and 50 ml are two things.
NEARLY_SAME_CAN = 1.5


def amount(asked: str, has: str | None) -> list[str]:
    """Whether a container of an oil or fluid holds what is asked for: from a larger one it is drawn."""
    if has is None or _content(has) * SAME_CAN >= _content(asked):
        return []
    return [f"it holds {has}, not {asked}"]


def _weighed(pack: str) -> bool:
    return pack.split(" ")[-1] in ("g", "kg", "oz", "lb")


_UNITS = {"l": 1000.0, "kg": 1000.0, "cl": 10.0, "oz": 29.0, "fl oz": 29.0, "gal": 3785.0, "qt": 946.0, "lb": 454.0}


def _content(pack: str) -> float:
    """What a pack holds, in mL or g; near enough to compare two packs."""
    from cribkit.domain.wording.measure import number  # few needs state a pack: start-up counts

    figure, _, unit = pack.partition(" ")
    factor = next((_UNITS[one] for one in (unit, unit.rstrip("s"), unit[:2], unit[:1]) if one in _UNITS), 1.0)
    return float(number(figure.replace("-", " "))) * (1.0 if unit.startswith("ml") else factor)


# Materials that are plastics.
PLASTICS = frozenset({"nylon", "polyurethane", "pvc"})


def _reaches(asked: str, has: str) -> Verdict:
    """Whether what stands the item's temperature stands the asked one: as hot, or as cold below nought."""
    first, second = ([int(part) for part in _WHOLE.findall(text)] for text in (asked, has))
    if not first or not second:
        return ["temperature not clear"]
    if min(first) < 0:
        return [] if min(second) <= min(first) else None
    return [] if max(second) >= max(first) - (OF_TWO_SCALES if max(first) >= HOT else 0) else None


# 1200 °F is 649 °C and sold as 650: what is lost between the two scales, and from where they are so round.
OF_TWO_SCALES = 2
HOT = 200


_WHOLE = re.compile(r"(?<!\d)-?\d+")


def _words(asked: str, has: str, name: str) -> Verdict:
    wanted, given = set(asked.replace(";", " ").split()), set(has.replace(";", " ").split())
    if name == "place" and (given - wanted) & OTHER_PART:
        return None
    if name == "place" and "manifold" in wanted and wanted <= given and (beyond := (given - wanted) & JOINED):
        return [f"{' '.join(sorted(beyond))} was not asked for"]
    wanted -= {one for one in wanted if _older(one, given)}
    if "multi" in given and not wanted <= given:
        return ["it says multi-vehicle, without this grade"]
    if wanted <= given:
        return []
    if given < wanted:
        return [f"{name.replace('_', ' ')} {' '.join(sorted(wanted - given))} not stated"]
    return None


# A word that makes another part of the one that a need names: the gasket of the EGR cooler is not that of the EGR.
OTHER_PART = frozenset({"plenum", "cooler", "outlet", "return", "feed", "elbow", "bypass", "adapter", "intermediate"})

# What a manifold is joined to at its other end: that gasket is another one.
JOINED = frozenset({"turbo", "downpipe"})


def _older(one: str, given: set[str]) -> bool:
    """Whether an API class for petrol engines is met by a later one: SP serves where SN is asked for (API 1509)."""
    return len(one) == 2 and one[0] == "s" and any(len(has) == 2 and has[0] == "s" and has > one for has in given)


def _nominal(asked: str, has: str, nominal_from: float) -> Verdict:
    """Each asked measure is there; across units within the nominal share, unless the measure is what identifies."""
    given = has.split("; ")
    for wanted in asked.split("; "):
        if wanted not in given and not any(about(wanted, one, nominal_from) for one in given):
            return None
    return []


# Widths that the trade uses for one another, though they are further apart than the share. Common practice, no source.
_SAME_WIDTHS = frozenset({"12 mm", "1/2 in"})
# The hole of discs for angle grinders, ISO 603 (from memory).
_SAME_HOLES = frozenset({"22 mm", "22.2 mm", "22.23 mm", "7/8 in"})


def about(one: str, other: str, nominal_from: float = 0.0) -> bool:
    """Whether the asked measure is the given one, or lies in the given range."""
    if {one, other} <= _SAME_HOLES:
        return True
    if one == other or (nominal_from == 0.0 and {one, other} == _SAME_WIDTHS):
        return True
    if " to " in other and not one.endswith(" g"):
        low, high = (mm_of(end) for end in other.split(" to "))
        ends = [mm_of(end) for end in one.split(" to ")]
        return low <= min(ends) and max(ends) <= high
    if " to " in one or " to " in other:
        return one == f"0 {other.rpartition(' ')[2]} to {other}"  # 0-10 mm and 10 mm travel
    unit, unit2 = one.rpartition(" ")[2], other.rpartition(" ")[2]
    if unit == unit2 == "g":
        grams, grams2 = float(one.split()[0]), float(other.split()[0])
        return abs(grams - grams2) <= max(grams, grams2) * NOMINAL
    if unit == unit2 or "g" in (unit, unit2):
        return False
    first, second = mm_of(one), mm_of(other)
    return min(first, second) >= nominal_from and abs(first - second) <= max(first, second) * NOMINAL


def _range(asked: str, has: str) -> Verdict:
    """The item's range holds the asked one; "0 - 200" and "200" alone are upper ends."""
    if asked.rpartition(" ")[2] != has.rpartition(" ")[2]:
        return None
    (low, high), (bottom, top) = _ends(asked), _ends(has)
    if has.startswith("to "):
        return ["the lower end of its scale is not stated"] if high <= top * (1 + ROUNDED) else None
    if asked.endswith("N·m") and bottom == 0 < low < LOWEST_SHARE * top and high <= top * (1 + ROUNDED):
        return [f"below {LOWEST_SHARE:.0%} of its scale it has no stated accuracy"]
    if asked.endswith("N·m") and bottom == top and low != high:
        return ["range not stated in full"] if high <= top * (1 + ROUNDED) else None
    return [] if bottom <= low * (1 + ROUNDED) and high <= top * (1 + ROUNDED) else None


# Ends of scales are printed rounded.
ROUNDED = 0.0005
# A scale marked from zero may be used from 20 % of its end (TM 1-1500-204-23-9, chapter 8).
LOWEST_SHARE = 0.2


def _ends(text: str) -> tuple[float, float]:
    numbers = [float(part) for part in text.removeprefix("to ").rpartition(" ")[0].split(" - ")]
    return numbers[0], numbers[-1]


# Rubbers by what they stand and what they do not. Common practice, no source; the maker's information decides.
_STANDS = {
    "fuel": frozenset({"nitrile", "fkm", "hnbr", "fluorosilicone"}),
    "oil": frozenset({"nitrile", "fkm", "hnbr", "acm", "ptfe", ""}),
    "brake fluid": frozenset({"epdm"}),
    "refrigerant": frozenset({"hnbr"}),
}
_HARMED = {
    "fuel": frozenset({"epdm", "silicone"}),
    "oil": frozenset({"epdm"}),
    "brake fluid": frozenset({"nitrile", "fkm", "hnbr"}),
    "refrigerant": frozenset({"silicone"}),
}


def stands(medium: str, rubber: str) -> Verdict:
    """Whether a ring of this rubber may keep that in: None where it is harmed, a doubt where nobody can tell."""
    if rubber in _HARMED[medium]:
        return None
    return [] if rubber in _STANDS[medium] else [f"whether {rubber or 'it'} stands {medium} is not stated"]


def _pipe_ends(asked: str, has: str) -> Verdict:
    """Each end asked for is an end of the item; an end whose gender is not told is to be confirmed."""
    left, doubts = has.split("; "), []
    for wanted in asked.split("; "):
        bare = wanted.removesuffix(" female").removesuffix(" male")
        if wanted in left:
            left.remove(wanted)
        elif bare == wanted and (found := next((one for one in left if one.startswith(bare)), "")):
            left.remove(found)
        elif bare in left:
            left.remove(bare)
            doubts.append("male or female end not stated")
        else:
            return None
    return doubts


# How two different values of an attribute are held against each other; what is not named here must be equal.
AGREE: dict[str, Compare] = {
    "size": _all_there(" x "),
    "tip": _all_there(" x "),
    "profile": _all_there(" x "),
    "set_of": _all_there(" "),
    "wick_strength": _all_there(" "),
    "dot": _one_there,
    "pieces": _one_there,
    "faces": _all_there(" "),
    "gl": _axle_class,
    "ends_of": _serves("ring", "combination"),
    "side": _serves("", "both"),
    "system": _serves("", "both"),
    "length_class": _either("short", "stubby"),
    "washer_kind": _star_washer,
    "thread": lambda asked, has: _spanned(asked, has) if " to " in has else None,
    "suits_threads": _suits_threads,
    "bore": _bore,
    "outside": _bore,
    "range": _range,
    "area": _range,
    "rating": _rated,
    "rpm": _at_least,
    "snr": _at_least,
    "temperature": _reaches,
    "cut_level": _cut_level,
    "pack": _pack,
    "purity": _purity,
    "pipe_ends": _pipe_ends,
    "material": _plastic,
    "finer": _finer,
    # The item may have more of these than the need asks for.
    **{
        name: partial(_words, name=name)
        for name in ("place", "spec", "adapters", "crimps", "jaw_at", "reads", "stamps", "jaws", "gauges")
    },
}
