"""Words that mean something else on some families."""

from __future__ import annotations

import re
from itertools import pairwise

from cribkit.domain.wording.reading import Reading

_TAPS = frozenset({"taper", "plug", "second", "bottom", "bottoming"})


def words_of(reading: Reading) -> set[str]:
    """Every word that stands in the text and is not denied."""
    return {said.word for said in reading.words if not said.negated}


# Tools of which the colour says something: white rubber leaves no marks. Common practice.
_COLOURED = frozenset({("rubber-mallet", "white"), ("rubber-mallet", "black")})


def _set_to(reading: Reading) -> bool:
    """ "set to 100 ft-lb" names no set."""
    after = [(one.text, two.text) for one, two in pairwise(reading.tokens)]
    return any(one in ("set", "sets") and two in ("to", "at", "from", "between") for one, two in after)


# Shapes of which "long" is a class of its own, also beside a measure.
_LONG_SHAPES = frozenset({"socket", "lobe-socket", "plug-socket", "bit-socket", "bit", "key", "screwdriver", "drill"})


def _long_measure(reading: Reading) -> bool:
    """Whether "long" stands after a measure: 24 in long."""
    return any(one.kind == "num" and one.unit and two.text == "long" for one, two in pairwise(reading.tokens))


_L_KEY = re.compile(r"\bl[- ]?(?:keys?|type|shaped?|pattern)\b", re.IGNORECASE)


# How a caliper shows its measure, the telling ones first in the alphabet: a digital vernier is digital.
_DISPLAYS = {
    "digital": "digital",
    "electronic": "digital",
    "electrical": "digital",
    "dial": "dial",
    "vernier": "vernier",
}


_SYSTEMS = frozenset({"system inch", "system metric"})


# What is chromed is turned by hand: impact sockets are black.
_PLATED = frozenset({"socket", "bit-socket", "lobe-socket", "plug-socket", "extension", "adapter"})


def _unnamed(reading: Reading) -> None:
    """Everyday names that leave open what the thing is, or say what it must stand."""
    if reading.family in ("screwdriver", "bit", "bit-socket") and reading.attributes.get("tip", "").startswith("PH"):
        texts = {said.text for said in reading.words if said.word == "phillips"}
        if texts <= {"crosshead", "cross head", "x head"} and not _CODED.search(reading.text.lower()):
            reading.traits.add("crosshead")
    if reading.family == "set-screw" and any(
        _HEADLESS & set(said.text.split()) for said in reading.words if not said.negated
    ):
        reading.traits.add("grub")  # a set screw alone may be a bolt that is threaded up to its head
    if reading.family == "anti-seize" and "material" not in reading.attributes and reading.has_said("oxygen"):
        reading.traits.add("sensor-safe")


def _tested(reading: Reading) -> None:
    """The fluids that a tester is for: DOT 3/4/5.1."""
    grades = [grade for found in _DOTS.finditer(reading.plain) for grade in _DOT.findall(found[0])]
    if grades:
        reading.attributes["dot"] = ";".join(sorted(set(grades)))
        for token in reading.tokens:
            token.used = token.used or token.kind == "dot" or (len(token.values) > 0 and token.values[0] in grades)
        reading.attributes.pop("dims", None)  # the pieces of "3/4/5.1"


_DOTS = re.compile(r"\bdot ?\d(?:\.\d)?(?:[/, ]+(?:and )?(?:dot ?)?(?:3|4|5\.1|5)\b)*")
_DOT = re.compile(r"5\.1|[345]")
_CODED = re.compile(r"ph ?\d|\bph\b|#")
# What only a screw without a head is called by, or has.
_HEADLESS = frozenset({"grub", "grubs", "grubscrew", "headless", "cup", "cone", "dog", "flat", "point", "socket"})


# A lower socket there is none: the word says where the bolt is.
_UNSIDED = frozenset({"socket", "bit-socket", "lobe-socket", "wrench", "wrench2", "key", "bit", "extension"})
_WHERE = frozenset({"front", "rear", "upper", "lower"})


def own_sense(reading: Reading, shape: str) -> None:
    """Words that mean something else on some families."""
    if reading.family in ("caliper", "depth-gauge"):
        words = words_of(reading)
        reading.traits -= {"digital", "dial"}
        if words & _DISPLAYS.keys():
            reading.set("display", min(_DISPLAYS[word] for word in words & _DISPLAYS.keys()))
    words = words_of(reading)
    if shape == "wrench2" and " x " in reading.attributes.get("size", ""):
        reading.traits.discard("double-ended")  # two sizes say it
    if reading.family == "die":
        across = reading.attributes.pop("bolt_length", "")  # its own width
        if across and "od" in words:
            reading.attributes["outer"] = across
        reading.use("od")
    if shape == "torque" and reading.attributes.get("mechanism") == "non-graduated":
        told = ("mechanism preset", "mechanism click")
        reading.doubts = [doubt for doubt in reading.doubts if doubt not in told]
    if shape == "torque" and "mechanism non-graduated" in reading.doubts:
        reading.attributes["mechanism"] = "non-graduated"
        reading.doubts.remove("mechanism non-graduated")
    if shape == "socket" and any(said.word == "hand" and not said.aside for said in reading.words):
        reading.traits.add("not-impact")
    if shape in _PLATED and reading.has_said("chrome") and "impact" not in reading.traits:
        reading.traits.add("not-impact")
        reading.finer.discard("chrome")
    if reading.family == "hose-clamp-pliers" and reading.attributes.get("jaws_kind") == "cable":
        reading.finer.discard("springclamp")  # what they open anyway. Common practice, no source
    if reading.family == "dial-gauge" and reading.has_said("magnetic", "base", "stand"):
        reading.attributes["base_of"] = "yes"
    dims = reading.attributes.get("dims", "")
    if reading.family == "feeler-gauge" and dims and " to " not in dims and "; " not in dims:
        reading.attributes["single_of"] = dims
    if shape == "bolt" and reading.attributes.get("tip", "").startswith("PH"):
        reading.attributes.setdefault("recess", "phillips")
    _unnamed(reading)
    if reading.family == "lock-nut" and any("nyl" in said.text for said in reading.words if not said.negated):
        reading.attributes.setdefault("locking_kind", "nylon")
    if reading.family == "ratcheting-wrench" and (
        " x " in reading.attributes.get("size", "") or reading.has_said("ringend", "ring")
    ):  # unless it is the ring of a combination wrench that ratchets
        reading.attributes.setdefault("ends_of", "ring")
    if (
        reading.family == "rivet" and "dims" in reading.attributes
    ):  # the thickness that it grips is no measure of its own
        dims = reading.attributes["dims"]
        own = [part for part in dims.split("; ") if " to " not in part]
        reading.attributes["dims"] = "; ".join(own or dims.split(" to "))  # 4.8-12 is the diameter and the length
    if _set_to(reading) and not reading.family.endswith("-set"):
        reading.traits.discard("set")
    if shape == "clamp":
        reading.attributes.pop("side", None)
    if reading.family == "circlip-pliers" and ({"internal", "external"} <= words or "convertible" in words):
        reading.decide("side", "both")
    if reading.family == "brake-fluid-tester":
        _tested(reading)
    if reading.family == "thread-gauge" and reading.attributes.get("angle") == "55":  # BS 84 (from memory)
        reading.decide("system", "whitworth")
    if reading.family == "feeler-gauge" and {"metric", "inch"} & words and _SYSTEMS.intersection(reading.doubts):
        reading.attributes["system"] = "both"  # marked in both
        reading.doubts = [doubt for doubt in reading.doubts if doubt not in _SYSTEMS]
    if shape in ("bolt", "nut") or (reading.family == "rivet" and "dims" in reading.attributes):
        reading.attributes.pop("length_class", None)
    if reading.family in ("drill-bit", "drill-set") and "hss" in words:
        reading.attributes.setdefault("material", "HSS")
    if reading.family == "heat-shrink":
        reading.traits.discard("coated")  # a sleeve is what it is
    if shape not in _LONG_SHAPES and _long_measure(reading):
        reading.attributes.pop("length_class", None)
    if reading.family == "tap":
        for form in sorted(_TAPS & {text for word in reading.words for text in (word.text, word.word)}):
            reading.set("tap_form", form.removesuffix("ing"))
    if reading.family == "pick-set":
        reading.attributes.pop("angle", None)
        reading.traits -= {"straight", "bent"}
    if reading.family in ("extension", "nut-driver") and "flexible" in reading.traits:
        reading.traits = reading.traits - {"flexible"} | {"flexible-shaft"}
    if (
        reading.family == "extension"
        and reading.attributes.pop("length_class", "")
        and "length" not in reading.attributes
    ):
        reading.doubts.append("a length in words only")
    if reading.kind == "tool" and (reading.family, reading.attributes.get("colour")) not in _COLOURED:
        reading.decide("colour")
    if reading.family == "lobe-wrench" or (shape in _UNSIDED and reading.attributes.get("side") in _WHERE):
        reading.attributes.pop("side", None)
    if reading.family == "crowfoot" and reading.has_said("openend", "open"):
        reading.traits.add("open-end")
    if reading.family in ("flare-crowfoot", "ring-crowfoot"):
        reading.traits.add("not-open-end")
    if reading.family == "t-key":
        reading.traits.add("t-handle")
    if reading.family in ("key", "key-set") and (words & {"l", "wrenchkey"} or _L_KEY.search(reading.text)):
        reading.traits.add("not-t-handle")
    if reading.family in ("ratcheting-wrench", "ratchet", "bit-ratchet", "ratchet-screwdriver"):
        reading.traits.discard("ratcheting")
