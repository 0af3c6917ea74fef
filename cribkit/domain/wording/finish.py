"""The last rules, once every number and word of a text is read."""

from __future__ import annotations

import re
from itertools import pairwise

from cribkit.domain.wording.accessory import accessory
from cribkit.domain.wording.fasteners import settle
from cribkit.domain.wording.fluids import LOCK_COLOURS, oil_specs, packing
from cribkit.domain.wording.implied import COARSE_PITCH, USUAL_SHANK
from cribkit.domain.wording.lexer import Token
from cribkit.domain.wording.measure import mm_of
from cribkit.domain.wording.media import find_medium
from cribkit.domain.wording.own_sense import own_sense
from cribkit.domain.wording.reading import Reading
from cribkit.domain.wording.shapes import placed
from cribkit.domain.wording.spoken import UNITS
from cribkit.domain.wording.stores import put_place
from cribkit.domain.wording.tables import tables
from cribkit.domain.wording.threads import inch_thread
from cribkit.domain.wording.tips import TIPPED, profile, set_profiles
from cribkit.domain.wording.twice import told_twice

# Classes of oils with little sulphated ash, phosphorus and sulphur, ACEA (from memory).
_LOW_SAPS = frozenset({"c1", "c2", "c3", "c4", "c5", "c6", "e6", "e8", "e9", "e11"})
# Classes of insulating gloves by the a.c. voltage that they may be used on, IEC 60903 (from memory).
GLOVE_CLASSES = {500: "00", 1000: "0", 7500: "1", 17000: "2", 26500: "3", 36000: "4"}
_GLOVE_VOLTS = re.compile(r"\b(\d{1,2} ?\d{3}|\d{1,4}) ?(kv|v|volts?)\b")
_SQUARE_HEADED = re.compile(
    r"\bsq[a-z]{3,5}(?:[- ]head(?:ed|s)?| nuts?| bolts?| screws?| (?:sump |drain |filler? |level |pipe )?plugs?)\b"
    r"(?! drive)"
)
_THREADED = frozenset({"bolt", "nut", "tap", "thread-part"})
# Old inch systems, in each of which the figure is that of another hexagon: 3/8 BSF is that of 5/16 W (from memory).
_BRITISH = frozenset({"whitworth", "bsf"})
# What insulated tools are made for, IEC 60900 (from memory): a tool that only says insulated may be dipped.
_TO_1000 = re.compile(r"\b(?:1000 ?v(?:olts?)?|1 ?kv|60900|vde)\b")
_LEFT_THREAD = re.compile(r"\bleft[- ]hand(?:ed)? threads?\b")
# Shapes of hand tools that may be insulated.
_HANDLED = frozenset(
    {"socket", "lobe-socket", "bit-socket", "wrench", "wrench2", "screwdriver", "key", "pliers", "circlip", "ratchet"}
    | {"extension", "crowfoot", "set", "set-bit", "set-any"}
)
_RATCHET = re.compile(
    r"\b(?:(?P<none>no|without(?: an?)?|w/o|less|not incl\w*) (?:\w+ )?ratchet"
    r"|(?:with|w/|and|incl\w*|plus|c/w|\+) (?:an? |the )?(?:[\w/]+ )?ratchet)\b"
    r"(?! (?:ring|spanner|wrench|driver|screw))"
)
# More than one profile goes by the name of spline in the trade: common practice, no source.
_NO_MERE_SPLINE = re.compile(
    r"\btr[a-z]* ?-?sq|\b3[ -]sq|xzn|multi|\b12[ -]?(?:spl|p(?:oin)?t)|\b(?:twelve|12)[ -]point"
)
_SPEEDS = re.compile(r"\b(\d{1,2}|four|five|six|seven|eight|nine|ten)[- ]?(?:speed|spd)\b")


_OFFSET = re.compile(r"(?<!no )(?<!not )(?<!non[ -])(?<!without )\b(?:offset|crank(?:ed)?)\b")  # of a ring: not flat


def finish(reading: Reading) -> None:
    """Last rules once every word is read."""
    family = tables().families.get(reading.family)
    shape = family.shape if family else ""
    reading.attributes.pop("gender", None)
    if reading.attributes.pop("drive2", "") and shape not in ("adapter", "multiplier"):
        reading.doubts.append("two drives")
    if reading.family == "ring-wrench" and _OFFSET.search(reading.plain):
        reading.traits.add("not-ring_form=flat")
    _depth(reading, shape)
    own_sense(reading, shape)
    if shape == "set-bit":
        set_profiles(reading)
    elif shape in TIPPED:
        profile(reading)
    if reading.family in _SETS_OF:
        _set_of(reading)
    if reading.family == "key-set" and reading.has_said("folding"):
        reading.traits.add("folding")  # also where its name says so
    if reading.family == "bit-set" and reading.attributes.get("dims") == USUAL_SHANK:
        del reading.attributes["dims"]
    if reading.family in _TWO_SYSTEMS or (shape.startswith("set") and reading.kind == "tool"):
        _system(reading)
    else:
        system = reading.attributes.pop("system", None)
        told = shape in _SYSTEMED and not {"size", "tip", "thread"} & reading.attributes.keys()
        told = told or reading.family in _MARKED_IN
        if system == "both" or (system in ("metric", "inch") and told):  # both are the scales of a caliper
            reading.attributes["system"] = system
        if system in _BRITISH and {"size", "thread"} & reading.attributes.keys():
            reading.traits.add(system)
    if "weld_kind" in reading.attributes:  # whatever leather or gauntlet they are
        reading.decide("glove_type", "welding")
    if shape == "glove" and "cut_level" in reading.attributes:  # A to F, or 1 to 5, of EN 388 (from memory)
        reading.traits.add("cut-resistant")
    if shape == "glove" and "cut-resistant" in reading.traits:
        reading.attributes.setdefault("glove_type", "work")
    if shape == "glove" and reading.attributes.get("material") in ("nitrile", "latex", "vinyl"):
        reading.attributes.setdefault("glove_type", "disposable")
    coarse = COARSE_PITCH.get(reading.attributes.get("thread", ""))
    if coarse and "pitch" in reading.attributes and (shape in _THREADED or reading.family == "thread-gauge"):
        reading.attributes["pitch_class"] = "coarse" if reading.attributes["pitch"] == coarse else "fine"
    if shape in _THREADED:
        inch_thread(reading)
    if shape == "lock":
        _strength(reading)
    if reading.family == "atf" and (found := _SPEEDS.search(reading.text.lower())):
        speeds = str(UNITS.get(found[1], found[1]))
        reading.set("speeds", speeds)
        reading.traits.discard("speed")
        reading.spend(speeds)
    if shape == "oil":
        oil_specs(reading)
        if reading.family == "engine-oil" and _LOW_SAPS & set(reading.attributes.get("spec", "").split()):
            reading.attributes.setdefault("saps", "low")
    if reading.family == "high-voltage-gloves" and (volts := _GLOVE_VOLTS.search(reading.text.lower())):
        stands = int(volts[1].replace(" ", "")) * (1000 if volts[2] == "kv" else 1)
        reading.attributes.setdefault("class", GLOVE_CLASSES.get(stands, f"for {stands} V"))
    if reading.family == "rtv" and _celsius(reading) >= _HOT:
        reading.traits.add("high-temperature")
    if reading.attributes.get("nlgi") in ("0", "00", "000"):
        reading.attributes["fluidity"] = "semi-fluid"
    if reading.family in ("impact-wrench", "impact-driver"):
        reading.traits.discard("impact")  # its name says it
    if reading.attributes.get("tip", "").startswith("XZN") and not _NO_MERE_SPLINE.search(reading.text.lower()):
        reading.traits.add("called-spline")
    if shape in _HANDLED and "insulated" in reading.traits and _TO_1000.search(reading.plain):
        reading.attributes["insulated_to"] = "1000 V"
    if shape in _HANDLED and _LEFT_THREAD.search(reading.plain):
        reading.decide("hand")  # of what is turned
    if shape.startswith("set") and (ratchet := _RATCHET.search(reading.plain)):
        reading.traits.add("not-with-ratchet" if ratchet["none"] else "with-ratchet")
    if shape == "oring" or reading.family in ("seal", "pipe-sealant", "thread-tape"):
        find_medium(reading)
    if shape == "socket" and _SQUARE_HEADED.search(reading.text.lower()):
        reading.attributes.setdefault("points", "8")  # no hexagon grips a square
    if shape == "clip" and reading.attributes.get("place") == reading.attributes.get("side"):
        reading.attributes.pop("place", None)
    if family and family.kind == "tool" and (shape.startswith("set") or reading.has_said("set", "kit", *_COUNTED)):
        _pieces(reading)
    told_twice(reading)
    if shape != "torque" and "torque" not in reading.family:
        while reading.take("torque"):
            pass  # what the fastener gets says nothing of what turns it, nor of itself
    if shape == "tie" and "length" in reading.attributes:
        reading.attributes.pop("length_class", None)
    settle(reading, shape)
    _sides(reading)
    if family:
        accessory(reading, family)
    if placed(family):
        _unknown_places(reading)
    if reading.family == "radiator-hose":
        _part_of_hose(reading)
    if reading.kind == "consumable":
        packing(reading)
    _counts(reading)


def _part_of_hose(reading: Reading) -> None:
    """The name of a part beside a moulded hose may make another thing of it: its flange, its sensor, its overflow."""
    for said in reading.words:
        if said.how == "known" and said.became.startswith("place "):
            said.how = "unread"


# Families of sets that differ in what they are sets of, by the words for it.
_SETS_OF = {
    "wrench-set": frozenset(
        {
            "combination",
            "flarenut",
            "openend",
            "ringend",
            "crowfoot",
            "ratcheting",
            "ratchet",
            "adjustable",
            "hook",
            "offset",
        }
    ),
    "pliers-set": frozenset({"circlip", "locking", "combination", "needle", "long", "hoseclamp", "ear", "waterpump"}),
    "tap-set": frozenset({"tap", "die", "restorer"}),
    "puller-set": frozenset({"bearing", "gear", "hub", "seal", "slide", "steering", "blind", "pulley"}),
    "punch-set": frozenset(
        {"pin", "rollpin", "parallel", "centre", "taper", "drift", "brass", "chisel", "hollow", "letter"}
    ),
}


# What is told by its blades, as a set by its pieces.
_COUNTED = ("feeler", "thickness")
_PIECES = re.compile(
    r"\b(\d{1,3})[ -]?(?:pcs?|pces?|pieces?|parts?|blades?|leaf|leaves|lvs|bl)\b"
    r"(?! (?:(?:are|is|of (?:it|them)) )?(?:missing|lost|gone|short|broken))|"
    r"\b(?:set|kit) of (\d{1,3})\b(?! ?(?:[-/x,.\"]|mm\b|in\b|inch|to\b|and\b|or\b|pt\b|point|k?v\b))"
)


def _pieces(reading: Reading) -> None:
    """How many pieces a set has, or blades: a set of another number is another set."""
    counts = {one or other for one, other in _PIECES.findall(reading.plain)} - {"1"}  # one set
    if counts:
        reading.attributes["pieces"] = ";".join(sorted(counts))


def _set_of(reading: Reading) -> None:
    """What a set is a set of: flare-nut spanners, dies."""
    words = {said.word for said in reading.words if not said.negated and not said.aside}
    found = words & _SETS_OF[reading.family]
    if "combination" in found:
        found -= {"openend", "ringend"}
    if "ratchet" in found:
        found = found - {"ratchet"} | {"ratcheting"}
    if found & {"rollpin", "parallel"}:
        found = found - {"rollpin", "parallel"} | {"pin"}
    if found:
        reading.attributes["set_of"] = " ".join(sorted(found))
        for said in reading.words:
            if said.word in found and said.how == "unread":
                said.how, said.used = "attribute", True


# From this length on a bit socket or a bit is called long, mm. Common practice, no source.
LONG_BIT = {"bit-socket": 75, "bit": 50, "screwdriver": 200}
# What is not to be long of a socket is not to be deep.
_NOT_DEEP = {"not-length_class=long": "not-depth=deep", "not-length_class=short": "not-depth=standard"}


def _depth(reading: Reading, shape: str) -> None:
    """A long socket is a deep one, a deep bit socket a long one; sockets for plugs are all deep."""
    attributes = reading.attributes
    if shape in ("socket", "lobe-socket"):
        reading.traits |= {_NOT_DEEP[trait] for trait in reading.traits & _NOT_DEEP.keys()}
    if shape in ("socket", "lobe-socket") and (long := attributes.pop("length_class", "")):
        depth = {"long": "deep", "extra-long": "extra-deep"}.get(long, "standard")
        reading.set("depth", depth) if attributes.get("depth") != "extra-deep" else None
    if shape == "plug-socket" and attributes.get("depth") != "extra-deep":
        attributes.pop("depth", None)
    if shape == "bit-socket" and (deep := attributes.pop("depth", "")):
        attributes.setdefault("length_class", {"deep": "long", "extra-deep": "extra-long"}.get(deep, "standard"))
    least = LONG_BIT.get(shape)
    if least and mm_of(attributes.get("length", "0 mm").partition("; ")[0]) >= least:
        attributes.setdefault("length_class", "long")


# From here on a silicone sealant is one for high temperatures. Common practice.
_HOT = 250


def _celsius(reading: Reading) -> int:
    """The highest temperature that the text names, 0 if none."""
    figures = reading.attributes.get("temperature", "").rstrip("c").replace("to", "-").split("-")
    return max((int(figure) for figure in figures if figure.strip().isdigit()), default=0)


_MILLIMETRES = re.compile(r"(?<!\d)(?<!\d )\bmm\b")
_ACROSS_FLATS = re.compile(r"\ba\.?/?f\b")


def _system(reading: Reading) -> None:
    """Metric or inch, by the unit of the measures where no word says it."""
    units = {part.rpartition(" ")[2] for part in reading.attributes.get("dims", "").split("; ") if part}
    if len(units) == 1 and "system" not in reading.attributes:
        reading.set("system", "metric" if units == {"mm"} else "inch")
    if not units and _MILLIMETRES.search(reading.text.lower()):
        reading.attributes.setdefault("system", "metric")
    if not units and _ACROSS_FLATS.search(reading.text.lower()):  # in a crib AF means inches
        reading.attributes.setdefault("system", "inch")


# Told by a size in one system or the other; a need may say which and leave the size open.
_SYSTEMED = frozenset({"key", "socket", "bit-socket", "bit", "wrench", "wrench2", "bolt", "nut", "tap"})

# Marked in one system or the other, or in both: the label says which.
_MARKED_IN = frozenset(
    {
        "caliper",
        "depth-gauge",
        "depth-micrometer",
        "dial-gauge",
        "steel-rule",
        "thread-file",
        "tape-measure",
        "height-gauge",
        "micrometer",
        "inside-micrometer",
        "test-indicator",
        "combination-square",
    }
)

# Gauges that are made for one system or the other.
_TWO_SYSTEMS = frozenset({"o-ring-set", "feeler-gauge", "thread-gauge"})


def _strength(reading: Reading) -> None:
    colour = reading.attributes.get("colour", "")
    if reading.family == "retaining-compound":
        return  # their colours say nothing
    if "wicking" in reading.traits:
        own = reading.attributes.get("strength", "")
        told = {doubt.removeprefix("strength ") for doubt in reading.doubts if doubt.startswith("strength ")} | {own}
        if told := told & {"low", "medium", "high"}:
            reading.attributes["wick_strength"] = " ".join(sorted(told))
            reading.doubts = [doubt for doubt in reading.doubts if not doubt.startswith("strength ")]
        reading.attributes["strength"] = "wicking"
        reading.traits.discard("wicking")
    strength = LOCK_COLOURS.get(colour, "")
    if colour:
        reading.attributes["dyed"] = colour
    stated = reading.attributes.setdefault("strength", strength) if strength else ""
    if strength and stated != strength and colour != "green":
        reading.attributes["strength"] = f"{stated}, but {colour}"  # purple and high: nobody sells it
    if strength and (colour != "green" or stated == strength):
        reading.attributes.pop("colour", None)
        if stated == strength and reading.has_said(strength):
            reading.attributes["shade"] = colour


def _unknown_places(reading: Reading) -> None:
    """A word that nobody knows on a part names a vehicle or an engine: it counts."""
    for said in reading.words:
        if said.how == "unread" and not said.negated and said.text.isalpha() and len(said.text) > 2:
            said.how, said.used = "attribute", True
            said.became = f"for {said.text}"
            put_place(reading, said.text)
            reading.attributes["model"] = "named"


def _sides(reading: Reading) -> None:
    """Words beside the name that have a contrary, as written: an item that says the contrary is another thing."""
    said = (
        one
        for one in reading.words
        if not (one.aside or one.negated or one.bracketed or one.worked_on)
        and not (one.word in reading.name and " " in one.text)  # an open end is a name
    )
    words = {part for one in said for part in one.text.split(" ")} & tables().sided
    if words:
        reading.attributes["also"] = " ".join(sorted(words))


def _before_a_slip(reading: Reading, number: Token) -> bool:
    """ "3 leged puller", "4 jaw puller": what is counted is no thing, or a word that was mistyped and may be none."""
    after = next(iter(reading.tokens[reading.place_of(number) + 1 :]), None)
    said = next((said for said in reading.words if after is not None and said.tokens[0] is after), None)
    if said is None:
        return False
    return said.text in _PARTS_COUNTED or (said.how == "corrected" and said.word not in tables().names_of)


# What a thing has so many of: a 4 jaw puller is not four pullers.
_PARTS_COUNTED = frozenset(
    {"jaw", "jaws", "leg", "legs", "arm", "arms", "way", "pin", "flute", "flutes", "pole", "stage"}
)


def _counts(reading: Reading) -> None:
    """How many: a whole number at the start that nothing else claimed, or one alone in brackets at the end."""
    tokens = [token for token in reading.tokens if token.kind not in ("sign", "dash", "end", "by")]
    numbers = [token for token in tokens if token.kind != "stop"]
    last = numbers[-1] if numbers else None
    bracketed = [token for before, token in pairwise(tokens) if before.text == "(" and token is last]
    for token in (numbers[:1] + bracketed) if len(numbers) > 1 else []:
        if (
            token.kind == "num"
            and not token.used
            and not token.unit
            and token.values[0].isdigit()
            and int(token.values[0]) <= 20
            and not _before_a_slip(reading, token)
        ):
            token.used = True
            break
