"""What a set contains: its contents column, or the range in its description."""

from __future__ import annotations

import re
from fractions import Fraction

from cribkit.domain.wording.meaning import Meaning
from cribkit.domain.wording.measure import decimal, mm_of, tell
from cribkit.domain.wording.reader import read_one
from cribkit.domain.wording.spoken import in_digits
from cribkit.domain.wording.tables import tables

# Which family a set's members have. Sets of mixed things have no entry: only their contents column says.
MEMBER = {
    "socket-set": "socket",
    "lobe-socket-set": "lobe-socket",
    "bit-socket-set": "bit-socket",
    "bit-set": "bit",
    "key-set": "key",
    "nut-driver-set": "nut-driver",
    "pick-set": "pick",
    "trim-tool-set": "trim-tool",
    "trim-tool": "trim-tool",
    "impact-driver": "bit",
    "punch-set": "pin-punch",
}
# Members that are told by a measure without a name of its own.
_BY_DIMS = frozenset({"pin-punch"})
# What the words of a set say of its members, beside what all families share.
_SAID_OF_ALL = frozenset({"rollpin"})
_WRENCHES = (
    "ratcheting-wrench",
    "flare-nut-wrench",
    "flare-crowfoot",
    "crowfoot",
    "combination-wrench",
    "open-end-wrench",
    "ring-wrench",
    "wrench",
)
# What a member is taken for by its tip or size alone; in a set of bits a PH1 is a bit, no screwdriver.
_DRIVERS = ("wrench", "screwdriver", "key", "bit", "bit-socket")
_BY_ITS_TIP = {"bit": _DRIVERS, "bit-socket": _DRIVERS, "key": _DRIVERS}
_MISSING = re.compile(r"\b(?:missing|lost|broken|absent|gone|out|not in set|damaged|worn out|snapped)\b", re.I)
_LISTED = re.compile(r"\s*[;\n]\s*")


def members(item: Meaning, contents: str) -> tuple[Meaning, ...]:
    """The members that are there; one noted as missing is none. A member inherits what the set says of all."""
    if contents.strip():
        said, gone = _present([part for part in _LISTED.split(contents) if part.strip()])
        listed = (member for part in said for member in _listed(item, part))
        return tuple(member for member in listed if _plain(member.text) not in gone)
    return tuple(_ranged(item))


# "9 mm (missing: 5.5 mm)" names another member that is missing; "9 mm (missing)" says it of this one.
_NAMED_MISSING = re.compile(
    r"^(?P<member>.*?\S)\s*\(\s*(?:missing|lost|gone|broken)\s*:?\s*(?P<gone>[^()]*\d[^()]*)\)\s*$", re.I
)
_UNIT = re.compile(r"\s*(?:mm|in\.?|inch|\")$")
_AND = re.compile(r"\s*(?:,|\band\b|&)\s*")


def _present(parts: list[str]) -> tuple[list[str], set[str]]:
    """The parts of a list of contents without the members that brackets name as missing, and those."""
    kept: list[str] = []
    gone: set[str] = set()
    for part in parts:
        if found := _NAMED_MISSING.match(part.strip()):
            gone |= {_plain(one) for one in _AND.split(found["gone"])}
            part = found["member"]
        kept.append(part)
    return kept, gone


def _plain(text: str) -> str:
    """A member as its size alone: 5.5 mm and 5.5 are one."""
    return _UNIT.sub("", " ".join(text.lower().split()))


# The hexagon of the bits that a hand impact driver takes. Common practice, no source.
STRUCK_SHANK = "5/16 in"
_BARE_TIP = re.compile(r"\s*(?:ph|pz|tx?|sl|flat|slotted)[ -]?\d[\d.]*(?: ?mm)?\s*", re.I)


def _listed(item: Meaning, part: str) -> list[Meaning]:
    if _MISSING.search(part):
        return []
    found = []
    inches = dict(item.attributes).get("system") == "inch"
    for piece in _pieces(part):
        piece = f"{piece.strip()} in" if inches and piece.strip() == "1" else piece  # no number of pieces
        member = read_one(piece, item.kind)
        wanted = member_family(item)
        if (
            wanted in ("pick", "trim-tool")
            or not member.family
            or (wanted and member.family in _BY_ITS_TIP.get(wanted, ("wrench",)))
        ):
            member = read_one(f"{piece} {_noun(item) or _name(item)}", item.kind)
        if member.family == "screwdriver" and not wanted and _BARE_TIP.fullmatch(piece) and "driver" not in item.family:
            member = member._replace(unread=(*member.unread, f"{piece.strip()}: a bit or a screwdriver?"))
        if item.family == "impact-driver" and "shank" not in dict(member.attributes):
            said = {**dict(member.attributes), "shank": STRUCK_SHANK, "presumed": "shank"}
            member = member._replace(attributes=tuple(sorted(said.items())))
        found.append(_inherit(item, member._replace(text=piece.strip())))
    return found


def _name(item: Meaning) -> str:
    """What the set is called, without "set": the name of its members."""
    said = (word for word in item.words if word.how in ("name", "known", "corrected"))
    return " ".join(word.text for word in said if word.became not in ("set", "kit", "drive", "square"))


def _pieces(part: str) -> list[str]:
    """ "8, 10, 12 mm" is three members; "4-14 mm" stays, read as a range by the caller."""
    bare = re.fullmatch(r"\s*((?:[\w./-]+\s*,\s*)+[\w./-]+)\s*(mm|in|\")?\s*", part)
    if not bare:
        return [part]
    unit = bare[2] or ""
    return [f"{piece.strip()} {unit}".strip() for piece in bare[1].split(",")]


def member_family(item: Meaning) -> str:
    """The family of a set's members, "" where the set mixes things."""
    if item.family in MEMBER.values():
        return item.family  # "impact driver bits" with contents
    if item.family == "key-set" and ("handle_of", "t") in item.attributes:
        return "t-key"
    if item.family == "punch-set" and not {"pin", "rollpin", "parallel"} & {word.became for word in item.words}:
        return ""
    if item.family != "wrench-set":
        return MEMBER.get(item.family, "")
    words = {word.became for word in item.words}
    if words & {"crowfoot"}:
        return "flare-crowfoot" if "flarenut" in words else "crowfoot"
    if words & {"flarenut"}:
        return "flare-nut-wrench"
    if words & {"ratcheting", "ratchet"}:
        return "ratcheting-wrench"
    if words & {"combination"}:
        return "combination-wrench"
    return "open-end-wrench" if "openend" in words else "ring-wrench" if "ringend" in words else "wrench"


def _noun(item: Meaning) -> str:
    """What a bare size or tip in the contents is a size of."""
    family = member_family(item)
    profile = _PROFILE_NAMES.get(dict(item.attributes).get("profile", ""), "")
    if profile and family in ("bit", "bit-socket", "key", "t-key"):
        return f"{profile} {_NOUNS[family]}"
    return _NOUNS.get(family, "")


_NOUNS = {
    "socket": "socket",
    "lobe-socket": "external six lobe socket",
    "bit-socket": "bit socket",
    "bit": "bit",
    "key": "key",
    "t-key": "t handle key",
    "nut-driver": "nut driver",
    "pin-punch": "pin punch",
    "pick": "pick",
    "trim-tool": "trim tool",
    "flare-crowfoot": "flare nut crowfoot",
    "crowfoot": "crowfoot",
    "flare-nut-wrench": "flare nut wrench",
    "ratcheting-wrench": "ratcheting wrench",
    "combination-wrench": "combination wrench",
    "open-end-wrench": "open end wrench",
    "ring-wrench": "ring wrench",
    "wrench": "wrench",
}
# Members that are of what the set is of.
_OF_ONE_STUFF = frozenset({"trim-tool", "trim-fork"})
# What bare sizes in the contents of a set of bits are, by the profile of the set.
_PROFILE_NAMES = {
    "hex": "hex",
    "XZN": "triple square",
    "T": "six lobe",
    "PH": "phillips",
    "PZ": "crosspz",
    "slot": "slotted",
}
# What is said of a set and not of its members.
_OF_THE_SET = frozenset({"set", "incomplete", "with-ratchet", "not-with-ratchet"})
# What a set says of all its members.
_SHARED = ("insulated_to", "drive", "points", "depth", "shank", "hand", "material", "length_class")


def _inherit(item: Meaning, member: Meaning) -> Meaning:
    own = dict(member.attributes)
    family = tables().families.get(member.family)
    if family and family.shape not in (
        "socket",
        "lobe-socket",
        "bit-socket",
        "plug-socket",
        "crowfoot",
        "wrench",
        "wrench2",
        "key",
        "bit",
    ):
        shared = {
            name: value
            for name, value in item.attributes
            if name == "insulated_to"
            or (name == "drive" and _has_drive(member.family))
            or (name == "material" and member.family in _OF_ONE_STUFF)
            or (name in ("thread", "pitch", "pitch_class") and member.family == "tap")
        }
    else:
        shared = {name: value for name, value in item.attributes if name in _SHARED}
    if family and family.shape in ("wrench", "wrench2", "key", "bit"):
        shared.pop("drive", None)
        shared.pop("depth", None)
    if finer := _SAID_OF_ALL & {word.became for word in item.words} if member.family in _BY_DIMS else frozenset():
        own.setdefault("finer", " ".join(sorted(finer)))
    said = {"ratcheting"} if member.family == "ratcheting-wrench" else set()  # its name says so
    return member._replace(
        attributes=tuple(sorted({**shared, **own}.items())),
        traits=member.traits | item.traits - _OF_THE_SET - said,
    )


def _has_drive(family: str) -> bool:
    told = tables().families.get(family)
    return bool(told) and told is not None and told.shape in ("ratchet", "drive-tool", "extension", "drive-any")


_STEPS = re.compile(
    r"(?P<low>\d+(?:\.\d+)?) ?(?:mm)? ?(?:-|to) ?(?P<high>\d+(?:\.\d+)?)"
    r"(?: ?mm,? ?(?:x|by|in|at|/)? ?|,? ?(?:x|by|in|at|/) ?)"
    r"(?P<step>0?\.\d+|1(?:\.0)?)(?: ?mm)?(?: (?:steps?|increments?|rises?))?\b"
)


# Drills in inches: "1/16-1/2 by 64ths".
_SIXTY_FOURTHS = re.compile(
    r"(?P<low>\d/\d{1,2})(?: ?in\b\.?|\")? ?(?:-|to|thru) ?(?P<high>\d/\d{1,2})(?: ?in\b\.?|\")?,? ?(?:x|by|in) ?"
    r"(?:64ths?|1/64|sixty-fourths)"
)


_HALF = re.compile(r"\bhalf(?: a)?[ -](?:millimetres?|millimeters?|mil|mm)\b")


def _stepped(item: Meaning) -> list[Meaning]:
    """Drills "1-10 mm by 0.5": every step is there."""
    if item.family != "drill-set":
        return []
    if found := _SIXTY_FOURTHS.search(item.text.lower()):
        first, last = (int(Fraction(found[name]) * 64) for name in ("low", "high"))
        inches = [f"{tell(Fraction(place, 64))} in" for place in range(first, last + 1)]
        return [_made(item, "drill-bit", size, (("size", size), *_shared_material(item))) for size in inches]
    found = _STEPS.search(_HALF.sub("0.5 mm", item.text.lower()))
    if found is None:
        return []
    low, high, step = (Fraction(found[name]) for name in ("low", "high", "step"))
    count = int((high - low) / step) + 1
    if not 1 < count <= MOST_STEPS:
        return []
    sizes = [f"{decimal(low + place * step)} mm" for place in range(count)]
    return [_made(item, "drill-bit", size, (("size", size), *_shared_material(item))) for size in sizes]


MOST_STEPS = 130  # a set of more drills is a misreading


def _shared_material(item: Meaning) -> tuple[tuple[str, str], ...]:
    return tuple(pair for pair in item.attributes if pair[0] == "material")


def _ranged(item: Meaning) -> list[Meaning]:
    """A range in whole millimetres, T10-T50, or drills in steps, told by the description."""
    if steps := _stepped(item):
        return steps
    family = member_family(item)
    dims = dict(item.attributes).get("dims", "")
    found: list[Meaning] = []
    if not family:
        return []
    if sizes := told_one_by_one(item.text):
        return [member for size in sizes for member in _listed(item, size)]
    for text in filter(None, dims.split("; ")):
        low, to, high = text.partition(" to ")
        held = _held(low, high, family in _HEXAGONS, _pieces_told(item.text)) if to else {text: True}
        if to and family in _OTHER_SERIES and len(held) < len(between(low, high)):
            held = dict.fromkeys(held, False)
        found += [_of_size(item, family, size, sure) for size, sure in held.items()]
    tips = dict(item.attributes).get("tips", "")
    usual = [tip for tip in tips.split("; ") if tip not in RARE]
    for tip in filter(None, tips.split("; ")):
        sure = proven(item.text, tips.count(";") + 1 if tip in RARE else len(usual))
        found.append(_of_tip(item, family, tip, sure or tip in (usual[0], usual[-1])))
    return found


_SIZE = r"(?:\d{1,2}(?:\.5)?|\d{1,2}/\d{1,2})"
_ONE_BY_ONE = re.compile(
    rf"(?<![\w./-]){_SIZE}(?:(?:\s*,\s*|\s+){_SIZE}){{2,}}(?P<unit> ?(?:mm|in\b|inch\b|\"))?"
    r"(?![\w./-]|,? ?(?:pcs?|piece|dr|drive|sq|pt|point)\b)",
    re.I,
)


def told_one_by_one(text: str) -> list[str]:
    """The sizes of a set whose description names each: 8, 10, 12, 13 mm; they rise, or it is another list."""
    found = _ONE_BY_ONE.search(text)
    if found is None:
        return []
    inches = "/" in found[0] or (found["unit"] or "").strip().lower() in ("in", "inch", '"')
    sizes = re.findall(_SIZE, found[0])
    values = [Fraction(size) for size in sizes]
    if values != sorted(set(values)):
        return []
    return [f"{size} {'in' if inches else 'mm'}" for size in sizes]


def _held(low: str, high: str, hexagons: bool, pieces: int) -> dict[str, bool]:
    """The sizes that a range with so many pieces may hold, and whether each is surely there."""
    sizes, inches = between(low, high), low.endswith(" in")
    usual = [size for size in sizes if size in (low, high) or not hexagons or _hex_size(size)]
    sixteenths = inches and not hexagons and pieces == len(whole := _sixteenths(sizes))
    usual = whole if sixteenths else usual
    stepped = not inches or sixteenths or (not hexagons and mm_of(low) >= mm_of("5/16 in"))  # others: nobody knows
    if pieces == len(usual) and (stepped or not hexagons):
        sizes = usual  # so many pieces leave no room for another size
    sure = stepped and pieces >= len(usual)
    ends = (low, high) if not pieces else ()  # with too few pieces nobody knows which are there
    return {size: size in ends or (sure and size in usual) for size in sizes}


def _sixteenths(sizes: list[str]) -> list[str]:
    """The inch sizes that are whole sixteenths."""
    return [size for size in sizes if (mm_of(size) / mm_of("1 in") * 16).denominator == 1]


_HEXAGONS = frozenset({"key", "t-key", "bit", "bit-socket"})
# Sets of keys hold the usual sizes; of bits and bit sockets some hold 7 or 9 mm in the place of others.
_OTHER_SERIES = frozenset({"bit", "bit-socket"})
# Sizes of the usual sets of hexagon keys, mm. Common practice, no source.
_HEX_KEYS = frozenset(
    {"1.5", "2", "2.5", "3", "4", "5", "6", "8", "10", "12", "14", "17", "19", "22", "24", "27", "30", "32", "36"}
)


def _hex_size(size: str) -> bool:
    return size.removesuffix(" mm") in _HEX_KEYS


def between(low: str, high: str) -> list[str]:
    """The sizes that a range may hold: whole millimetres, or thirty-seconds up to 3/8 in and sixteenths from there."""
    if low.endswith(" in") and high.endswith(" in"):
        first, last = (mm_of(end) / mm_of("1 in") for end in (low, high))
        steps = (Fraction(place, 32) for place in range(int(first * 32), int(last * 32) + 1) if place <= 64)
        inches = [step for step in steps if step > first and (step <= Fraction(3, 8) or step.denominator <= 16)]
        return list(dict.fromkeys([low, *(f"{tell(step)} in" for step in inches), high]))
    if not (low.endswith(" mm") and high.endswith(" mm")):
        return [low, high]
    first, last = Fraction(low.split()[0]), Fraction(high.split()[0])
    whole = range(int(first) + 1 if first.denominator > 1 else int(first), int(last) + 1)
    halves = ["2.5 mm"] if first < Fraction("2.5") < last else []  # of hexagon keys; other tools have none so small
    return sorted({low, *(f"{size} mm" for size in whole), *halves, high}, key=lambda size: Fraction(size.split()[0]))


RARE = frozenset({"T35", "T47"})  # left out of most sets. Common practice, no source
_PIECES = re.compile(
    r"\b(\d{1,3}) ?-? ?(?:pcs?|pce|pieces?|pc|off|blades?)\b|\b(?:set|box|case) of (\d{1,3})\b", re.IGNORECASE
)


def proven(text: str, sizes: int) -> bool:
    """Whether the number of pieces leaves no gap in a range of so many sizes; where none is told, nobody knows."""
    return _pieces_told(text) >= sizes


# What a set has beside its members: each is a piece that is no size.
_EXTRAS = re.compile(
    r"\b(?:ratchets?(?! (?:ring|comb|spanner|wrench))|(?<!t[- ])handles?|ext|extn|extensions?|bars?|"
    r"u-?joints?|joints?|adapt[eo]rs?)\b",
    re.IGNORECASE,
)


def _pieces_told(text: str) -> int:
    """How many sizes the told number of pieces leaves room for, 0 where none is told."""
    found = _PIECES.search(in_digits(text.lower()))
    return int(found[1] or found[2]) - len(_EXTRAS.findall(text)) if found else 0


def _of_size(item: Meaning, family: str, size: str, sure: bool) -> Meaning:
    if family in _HEXAGONS:
        return _of_tip(item, family, f"hex {size}", sure)
    return _made(item, family, size, (("dims" if family in _BY_DIMS else "size", size),), sure)


def _of_tip(item: Meaning, family: str, tip: str, sure: bool) -> Meaning:
    profile = tip.split(" ")[0].rstrip("0123456789")
    return _made(item, family, tip, (("profile", profile), ("tip", tip)), sure)


def _made(item: Meaning, family: str, name: str, attributes: tuple[tuple[str, str], ...], sure: bool = True) -> Meaning:
    """One member of a range; "unlisted" where only the range says that it is there."""
    traits = frozenset() if sure else frozenset({"unlisted"})
    traits |= {"t-handle"} if family == "t-key" else set()
    member = Meaning(text=f"{name} of {item.text}", kind=item.kind, family=family, attributes=attributes, traits=traits)
    return _inherit(item, member)
