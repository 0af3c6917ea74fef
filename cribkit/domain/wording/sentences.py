"""Which of several sentences asks for the thing: "Remove the bolts with a 10 mm socket. On assembly: 106 in-lb."

A step of a procedure says what comes after and what to take care of in further sentences, behind a semicolon or in
brackets. What tells nothing of the thing is left out; what tells something stays, so that it is asked for.
"""

from __future__ import annotations

import re
from collections.abc import Callable

from cribkit.domain.wording.reader import read_one
from cribkit.domain.wording.speech import HINTS, OF_ITS_PLACE, says_something
from cribkit.domain.wording.tables import tables
from cribkit.domain.wording.verbs import verb

# No sentence ends with an abbreviation ("1/2 in. F").
_ENDS = re.compile(
    r"(?<=[a-z\d)%])(?<!\bno)(?<!\bnr)(?<!\bin)(?<!\bft)(?<!\blb)(?<!\bdr)(?<!\bsq)(?<!\bdia)(?<!\bmax)(?<!\bmin)"
    r"(?<!\bapprox)[.!] (?=[A-Z][a-z])|; ?|(?<=drive) - (?=[a-z])|(?<=mm) - (?=[a-z]{4})"
)
# Without any of these a text is one sentence with nothing beside it.
_MARKS = (". ", "! ", ") ", ";", "(", ":", " - ", ", so that")
_NUMBERED = re.compile(r"^\s*(?:step )?\d{1,2}[.)] (?=[A-Z])")
_WARNS = re.compile(r"^(?:caution|warning|danger|note|nb|care|important|hint)[:,] ?", re.I)
_WHERE = re.compile(r"^(?:place|position|location|where|access)[:,] ?", re.I)
_USES = re.compile(r"^(?:use|using|take|with) ", re.I)
# What is read or found with a meter: ": 3 to 5 ohm".
_READING = re.compile(
    r"(?<=[a-z]): ?(?:about )?\d[\d. to-]*(?:k?ohms?|mv|v|volts?|bar|psi|kpa|mbar|amps?|deg\w*|°c?)(?!\w)[^:;.]*$", re.I
)
# "(3.5 bar at idle)", "to measure the supply (5 V) at the plug": what is found there.
_PRESSED = re.compile(
    r" \((?:[^()]*\d ?(?:bar|psi|kpa)\b[^()]*\b(?:at|when|with)\b[^()]*)\)"
    r"|(?<=[a-z]) \(\d+(?:\.\d+)? ?(?:v|volts?|ohms?|bar|psi)\)(?= at | on | of )",
    re.I,
)
_SO_THAT = re.compile(r"(?<=\S), so that .*$", re.I)
_TALK = re.compile(
    r"^(?:note (?:which|how|where|that|the)|they|it|this|these|there|that"
    r"|the [a-z ]+ (?:is|are|may|will|can|has|have))\b(?!.*\b(?:must|needs?)\b)",
    re.I,
)
_DENIES = re.compile(r"^(?:and )?(?:do not|don't|never|must not|avoid|keep (?:off|away|clear))\b", re.I)
_TORQUE = r"\d[\d./ -]*(?:to \d+ )?(?:in[- .]?lbf?s?|ft[- .]?lbf?s?|lbf?[- .]?(?:ft|in)|n[·.⋅ ]?m)\b"
_TORQUED = re.compile(_TORQUE, re.I)
_IN_BRACKETS = re.compile(rf" ?\((?=[^()]*[a-z]{{3}})[^()]*{_TORQUE}[^()]*\)|(?<=[a-z]) \({_TORQUE}[^()]*\)", re.I)
_FIGURE = re.compile(r"\d")
# What a number is beside these says nothing of a thing that is asked for in another sentence.
_PASSING = re.compile(
    rf"{_TORQUE}|\d[\d. -]*(?:bar|psi|kpa|deg(?:rees)?|°|rpm|km|miles|minutes?|mins?|hours?|seconds?|turns?|%)(?!\w)",
    re.I,
)


def asked_part(text: str, called_for: Callable[[str], str]) -> str:
    """The text without sentences, clauses behind a semicolon and brackets that say nothing of what is asked for."""
    if not any(mark in text for mark in _MARKS):
        return text
    text = _NUMBERED.sub("", text)
    if "(" in text and "torque" not in text.lower():
        text = _IN_BRACKETS.sub("", text)
    text = _SO_THAT.sub("", _PRESSED.sub("", _READING.sub("", text)))
    parts = [part.strip(" .") for part in _ENDS.split(text) if part.strip(" .")]
    if len(parts) < 2:
        return text
    kinds = [_kind(called_for(part)) for part in parts]
    asked = next((place for place, kind in enumerate(kinds) if kind), None)
    used = next((place for place, part in enumerate(parts) if kinds[place] == "tool" and _USES.match(part)), None)
    if used is not None and asked is not None and kinds[asked] != "tool" and not _FIGURE.search(parts[asked]):
        asked = used  # "Air cleaner housing: three screws. Use a 7 mm socket."
    if asked is None:
        return text
    torque = "torque" in read_one(called_for(parts[asked])).family
    tells = [_tells(part, torque, kinds[asked], named) for part, named in zip(parts, kinds, strict=True)]
    told = [part for place, part in enumerate(parts) if place > asked and tells[place]]
    if asked != used and any(tells[:asked]):
        return text
    return "; ".join([parts[asked], *told])


def _kind(part: str) -> str:
    """Whether a sentence names a tool or something that is used up; "" where it names neither."""
    if _WARNS.match(part) or _DENIES.match(part) or _WHERE.match(part):
        return ""
    family = tables().families.get(read_one(part).family)
    return family.kind if family else ""


def _tells(part: str, torque: bool, kind: str, named: str) -> bool:
    """Whether a further sentence says something of the thing, which is of this kind; or names a tool itself."""
    if _WHERE.match(part):
        return False
    if (_TALK.match(part) or verb(part)) and not _qualifies(part, kind) and named != "tool":
        return False  # what is done next, or why
    said = _WARNS.sub("", part)
    if torque and _TORQUED.search(said):
        return True
    if _DENIES.match(said):
        return _qualifies(said, kind)
    if _OF_A_TYPE.match(said):
        return True
    said = _PASSING.sub("", said)
    return bool(_FIGURE.search(said)) or (says_something(said) and (said == part or _qualifies(said, kind)))


# "Hose clip 16-27 mm - spring type".
_OF_A_TYPE = re.compile(
    r"^(?:the )?[a-z -]{2,30} (?:types?|style|pattern|version)$"
    r"|^[a-z-]+(?:ed|able|ible|proof|less|resistant|safe|free)$",
    re.I,
)


def _qualifies(part: str, kind: str) -> bool:
    """Whether a word tells things of this kind apart, whatever tool is named beside it."""
    found = read_one(part)
    told = {name for name, _ in found.attributes} - OF_ITS_PLACE - {"use", "section"}
    safe = {trait for trait in found.traits if trait.endswith("-safe") and kind == "tool"}
    return bool(told or found.traits - safe or HINTS.search(part))
