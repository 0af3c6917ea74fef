"""Reading a need, with its alternatives, and an item, with its members and its columns."""

from __future__ import annotations

import re

from cribkit.domain.wording.instruction import called_for
from cribkit.domain.wording.lacking import is_gone, without_missing
from cribkit.domain.wording.meaning import Meaning, Word
from cribkit.domain.wording.reader import alternatives, read_one
from cribkit.domain.wording.sentences import asked_part
from cribkit.domain.wording.sets import members, told_one_by_one

# The longest description that is read; what follows is left unread. A cell of a megabyte is no description.
LONGEST = 2000


def read(text: str, kind: str = "") -> Meaning:
    """What a need asks for; an instruction asks for what it calls for; "or" gives alternatives. Never raises."""
    plain = text[:LONGEST].lower() if text.isupper() else text[:LONGEST]  # capitals throughout begin no sentence
    rest, denied = _without_denied(_OTHER_THAN.sub("not", plain))
    return _denying(_read(called_for(asked_part(rest, called_for)), kind)._replace(text=text), denied)


# "Other than 12 point", "anything but black".
_OTHER_THAN = re.compile(
    r"\b(?:other than|anything but|anything except|any but|all but|but not|as long as it is not|except)\b",
    re.IGNORECASE,
)
# "Not the 3/8 drive one", "not M6": a measure or a code that is not wanted.
_DENIED = re.compile(
    r"[,;(]?\s*\bnot (?:the |an? |any )?"
    r"((?:[a-z]{1,3}[- ]?)?\d[\w./-]*(?: ?(?:mm|in|inch|\"|dr|drive|sq|square|pt|point)\b)*)(?: ones?\b)?"
    r"(?=\s*(?:$|[,;.()]|and\b|or\b|for\b))\s*\)?",
    re.IGNORECASE,
)


def _without_denied(text: str) -> tuple[str, list[str]]:
    """The text without the measures that it denies, and those."""
    denied = [found[1] for found in _DENIED.finditer(text)]
    return (_DENIED.sub(" ", text), denied) if denied else (text, denied)


def _denying(meaning: Meaning, denied: list[str]) -> Meaning:
    """The meaning with what must not be so: the same words with the denied measure are read for what it says."""
    if not denied:
        return meaning
    name = " ".join(word.text for word in meaning.words if word.how in ("name", "corrected"))
    name = name or meaning.family.replace("-", " ")  # "5W-30, not C3"
    wanted = set(meaning.attributes)
    not_so = {
        f"not-{key}={value}"
        for measure in denied
        for key, value in read_one(f"{measure} {name}", meaning.kind).attributes
        if (key, value) not in wanted
    }
    others = tuple(other._replace(traits=other.traits | not_so) for other in meaning.others)
    said = tuple(Word(f"not {measure}", "", "denied") for measure in denied)
    return meaning._replace(traits=meaning.traits | not_so, others=others, words=meaning.words + said)


def _read(text: str, kind: str) -> Meaning:
    parts = alternatives(text)
    if len(parts) < 2:
        found = read_one(text, kind)
        if kind == "tool" and found.family == "circlip" and _OF_PLIERS.search(text):
            pliers = read_one(f"{text} pliers", kind)  # "int circlip 19-60", "external circlip, bent"
            return pliers._replace(text=text, words=pliers.words[:-1])
        if kind == "tool" and found.family in _TURNED_BY_SIZE and (size := _WHOLE_MM.search(text)):
            socket = read_one(f"{text} socket", kind)  # "axle nut 36mm": the tool for it, if it is a tool
            return socket._replace(text=text, words=socket.words[:-1]) if _is_size(socket, size[1]) else found
        return found
    read_parts = [read_one(part, kind) for part in parts]
    if any(map(_is_named, read_parts)):  # "1/2 drive 150 mm" alone would be a socket
        read_parts = [part if _is_named(part) else part._replace(family="") for part in read_parts]
    named = [part for part in read_parts if part.family]
    if not named:
        return read_one(text, kind)
    first, *others = _of_one_size([_complete(part, named, kind) for part in _led_on(read_parts, kind)])
    return first._replace(text=text, others=tuple(others))


# What only the pliers for circlips have: a range, tips.
_OF_PLIERS = re.compile(r"\d ?(?:-|to) ?\d|\b(?:bent|straight|tips?|tipped|90|45)\b", re.IGNORECASE)
# Nuts that are told by the hexagon of the socket for them where a tool is asked for.
_TURNED_BY_SIZE = frozenset({"axle-nut", "wheel-nut"})
_WHOLE_MM = re.compile(r"\b(\d\d) ?mm\b", re.IGNORECASE)


def _is_size(socket: Meaning, across: str) -> bool:
    return socket.family == "socket" and dict(socket.attributes).get("size") == f"{across} mm"


def _is_named(part: Meaning) -> bool:
    """Whether a word names the thing, not its numbers alone."""
    return bool(part.family) and any(word.how in ("name", "corrected") for word in part.words)


def _of_one_size(parts: list[Meaning]) -> list[Meaning]:
    """Things of other kinds have the size that only one of them states: "13 mm spanner or socket"."""
    sizes = {size for part in parts if (size := dict(part.attributes).get("size"))}
    if len(sizes) != 1:
        return parts
    size = next(iter(sizes))
    return [
        part._replace(attributes=tuple(sorted((*part.attributes, ("size", size)))))
        if part.family in _SIZED and "size" not in dict(part.attributes)
        else part
        for part in parts
    ]


# Families told by the size of what they turn.
_SIZED = frozenset(
    {"socket", "wrench", "combination-wrench", "ring-wrench", "open-end-wrench", "ratcheting-wrench", "nut-driver"}
    | {"crowfoot", "flare-nut-wrench", "swivel-socket"}
)


def _led_on(parts: list[Meaning], kind: str) -> list[Meaning]:
    """What the last alternative adds without naming the thing holds for all: "extension 3/8 or 1/2 drive, 150 mm"."""
    last = parts[-1]
    if last.family or not any(part.family for part in parts):
        return parts
    whole = _complete(last, [part for part in parts if part.family], kind)
    told = {name: value for name, value in whole.attributes if name not in ("finer", "also")}  # "99 % or better"
    return [
        part._replace(
            attributes=tuple(sorted({**told, **dict(part.attributes)}.items())),
            traits=part.traits | whole.traits,
        )
        if part.family == whole.family
        else part
        for part in parts
    ]


def _complete(part: Meaning, named: list[Meaning], kind: str) -> Meaning:
    """An alternative that leaves out the name or a number has that of the others: "8 or 10 mm socket"."""
    other = next((one for one in named if one is not part), part)
    bare = not part.family
    if bare:
        words = " ".join(word.text for word in other.words if word.how in ("name", "corrected"))
        whole = read_one(f"{part.text} {words}", kind)
        # Where the name alone makes another thing of it, it is the thing of the others with what it says itself.
        own_family = whole.family == other.family
        part = (whole if own_family else part._replace(family=other.family, kind=other.kind))._replace(text=part.text)
    own = dict(part.attributes)
    shared = {name: value for name, value in other.attributes if name not in own and (bare or name in _SHARED)}
    if bare and part.family == other.family:
        part = part._replace(traits=part.traits | other.traits)
    return part._replace(attributes=tuple(sorted({**shared, **own}.items()))) if part.family == other.family else part


# What an alternative that names the thing itself still leaves to the other.
_SHARED = frozenset({"drive", "size", "depth"})

_FLAMMABLE = re.compile(r"GHS\s?02|\bH22[0-8]", re.IGNORECASE)


def read_item(
    description: str, kind: str, contents: str = "", traits: str = "", hazards: str = "", pack: str = ""
) -> Meaning:
    """What an item is: its description, the members of a set, the traits column and its pack. Never raises.

    `hazards` are GHS codes; GHS02 (the pictogram of the flame) and H220 to H228 say flammable (UN GHS).
    `pack` is what one container holds, "10 mL", where the description does not tell it.
    """
    item = read_one(description[:LONGEST], kind)
    gone: frozenset[str] = frozenset()
    if item.family.endswith("-set") or "set" in item.traits:
        whole, gone = without_missing(description[:LONGEST])
        if gone:
            item = read_one(whole, kind)._replace(text=description[:LONGEST])
            item = item._replace(traits=item.traits | {"incomplete"})
    else:
        rest, denied = _without_denied(description[:LONGEST])
        bare = read_one(rest, kind) if denied else item
        item = _denying(bare, denied)._replace(text=item.text) if bare.family else item
    item = _with_pack(item, pack)
    item = _with_traits(item, traits)
    if _FLAMMABLE.search(hazards) and not dict(item.attributes).get("flammable"):
        pairs = {**dict(item.attributes), "flammable": "flammable"}
        item = item._replace(attributes=tuple(sorted(pairs.items())))
    there = tuple(member for member in members(item, contents[:LONGEST]) if not is_gone(member, gone))
    if there and not contents.strip():
        told = {size.split(" ")[0] for size in told_one_by_one(item.text)}
        item = item._replace(unread=tuple(word for word in item.unread if word not in told))
    return _with_system(item._replace(members=there))


def _with_system(item: Meaning) -> Meaning:
    """A set whose members are all in mm is a metric one, in inches an inch one."""
    attributes = dict(item.attributes)
    if not item.members or not item.family.endswith("-set") or "system" in attributes:
        return item
    measures = [dict(member.attributes) for member in item.members]
    units = {(sized.get("size") or sized.get("tip") or "").rpartition(" ")[2] for sized in measures}
    system = {"mm": "metric", "in": "inch"}.get(units.pop()) if len(units) == 1 else None
    pairs = {**attributes, "system": system} if system else attributes
    return item._replace(attributes=tuple(sorted(pairs.items())))


def _with_pack(item: Meaning, pack: str) -> Meaning:
    """What a technician asks for by the tube or can has the content of its pack column."""
    from cribkit.domain.wording.fluids import held_as

    figure, _, unit = pack.strip().lower().partition(" ")
    name = held_as(item.family)
    if unit not in ("ml", "l", "g", "kg") or not name or name in dict(item.attributes):
        return item
    pairs = {**dict(item.attributes), name: f"{figure} {unit}"}
    return item._replace(attributes=tuple(sorted(pairs.items())))


def _with_traits(item: Meaning, traits: str) -> Meaning:
    """The traits column says more about the item than its description."""
    attributes, stated, unread = dict(item.attributes), set(item.traits), list(item.unread)
    for part in filter(None, (part.strip() for part in traits.replace(",", ";").split(";"))):
        said = read_one(part, item.kind)
        attributes.update({name: value for name, value in said.attributes if name not in attributes})
        stated |= said.traits
        claim = part.endswith("safe")  # another thing that it does no harm to
        unread += [word for word in said.unread if word not in unread and not claim]
    return item._replace(attributes=tuple(sorted(attributes.items())), traits=frozenset(stated), unread=tuple(unread))


def wrench_description(
    description: str, mechanism: str, low: str, high: str, unit: str, drive: str, second: str = ""
) -> str:
    """The columns of a torque wrench as one text that `read_item` understands; `second` is a second scale's."""
    scale = f"{low}-{high} {unit}".strip("- ") if low or high else ""
    name = "torque screwdriver" if "screwdriver" in mechanism else "torque wrench"
    square = f"{drive} drive" if drive else ""
    return ", ".join(filter(None, (name, mechanism.replace("screwdriver-", ""), scale, second, square)))
