"""The verb that an instruction begins with: "Undo the union" is one, "drain plug" is not."""

from __future__ import annotations

import re
from functools import cache

from cribkit.domain.wording.tables import load, tables


@cache
def words(name: str) -> frozenset[str]:
    """A list of data/instruction.toml."""
    return frozenset(load("instruction.toml")[name].split())


# "Check rotor runout with a dial indicator", "Pump grease into each nipple", "Tap round the edge": no name goes on so.
_LED = re.compile(r"^[a-z -]+ (?:with|using) (?:an?|the) ", re.I)
_GOES_ON = re.compile(
    r"^(?:[a-z -]+ )?(?:into|onto|through|along|around|round|inside|underneath) (?:the|each|every|both|all) ", re.I
)
# What is found out with a gauge is no part of its name.
_MEASURED = re.compile(
    r"^[a-z -]*\b(?:clearances?|gaps?|levels?|run-?out|play|end ?float|backlash|depth|thickness|wear|voltage|"
    r"resistance|alignment|flatness|straightness|concentration) (?:with|using) ",
    re.I,
)
# First words of names that are verbs elsewhere: the lower valve cover, an add-a-circuit holder.
_NAMES = re.compile(
    r"^(?:lower valve|add a circuit|tap (?:and die|wrench|holder|for m?\d)|pinch off (?:tool|pliers)|"
    r"cut off (?:wheel|disc)|(?:oil|grease|plug|clamp|seal|bolt|screw) for|grease gun cartridge|"
    r"(?:top|lower) (?:coolant |rad(?:iator)? )?hose|push on (?:spade|(?:fe)?male|terminal|receptacle))\b",
    re.I,
)
_BESIDES = ("up", "down", "off", "out", "in", "back", "on", "over")


# A fitting that a pipe is pushed into.
_PUSH_FITTING = re.compile(
    r"^push (?:in|fit),? (?:(?:equal|straight) )*(?:union|connector|joiner|coupling|elbow|tee)\b", re.I
)
_STEP = re.compile(r"^step (?:up|down),? (?:\d|from|adapt)", re.I)  # an adapter
_SCREWED = re.compile(
    r"^(?:screw|bolt|nut|thread) (?:on|in|onto|into|up|down|off|out) (?:an?|the|each|all|both) ", re.I
)


# With a hyphen behind these, no word is a verb.
_NO_VERB_AFTER = frozenset({"t", "u", "self", "quick", "soft", "push", "snap", "double", "twin", "cross"})


_RELATIVE = re.compile(
    r"^that (?:will|won't|can|cannot|can't|does|doesn't|do|is|isn't|has|must|may|stands?|takes?|fits?|goes|spares?|"
    r"leaves?|holds?|needs?|comes|keeps?|stays?)\b",
    re.I,
)


@cache
def any_verbs() -> frozenset[str]:
    """What may be a verb: what always is one, and what is one before some words."""
    return words("verbs") | words("perhaps")


def verb(text: str) -> str:
    """The verb that an instruction begins with, and what belongs to it ("drive out"); "" where there is none.

    No name of a thing has an article after its first word, so that any word but a preposition is a verb there.
    """
    first, _, rest = text.partition(" ")
    if "-to-" in first:
        return ""  # ready-to-use
    before, _, word = first.lower().rpartition("-")
    if _RELATIVE.match(rest):
        return ""  # RTV that will not harm a sensor
    if before in _NO_VERB_AFTER:
        return ""  # quick-release ratchet, self-grip pliers
    follows = rest.split(" ")[0].lower().strip(",;:")
    third = rest.split(" ")[1].lower() if follows == "and" and " " in rest else ""
    if third in any_verbs() and word in any_verbs():
        return f"{first} {follows} {third}"  # fill and bleed
    if _STEP.match(text):
        return ""
    if _PUSH_FITTING.match(text):
        return ""
    if _SCREWED.match(text):
        return f"{first} {follows}"
    if _NAMES.match(text):
        return ""
    if follows in ("up", "down", "off", "out") and rest.split(" ")[1:2] and rest.split(" ")[1] in words("articles"):
        return f"{first} {follows}"  # line up the holes
    if follows == "with" and word in words("nouns"):
        return ""  # a pick with a hook
    told = word in words("verbs") or (word in words("perhaps") and (follows in words("objects") or _led(word, rest)))
    if told or (word.isalpha() and follows in words("articles") and word not in words("no_verbs")):
        return f"{first} {follows}" if follows in _BESIDES else first
    return ""


# "Bleed brakes with DOT 4 fluid", "Run fill plug in with ...": what is done on what, and with what.
_WITH = re.compile(
    r"^(?P<on>(?!.*\bfor\b)[a-z][a-z' /-]*?)(?: (?:up|down|off|out|in|back|home))?(?: (?:to|at) \d[^,;:()]*?)?,? "
    r"(?:with|using) ",
    re.I,
)
# What stands last in the name of a thing, where no verb would have it as its object.
_GEAR = re.compile(
    r"\b(?:kit|set|pump|tester|gauge|tool|lamp|light|bottle|tank|can|machine|bench|wire|gun|reel)s?$", re.I
)


_ON_WHAT = re.compile(
    r"^[a-z -]+ (?:on|onto|over) (?:(?:an?|the|both|each|every|all) |[a-z ]*(?:jack|stands?|hoist|ramps?|trestles?)$)",
    re.I,
)
_THEN_TOOL = re.compile(r"^[a-z -]*(?:clearances?|gaps?|levels?|run-?out|play|thickness|wear|depth), (?=.*\d)", re.I)


def _led(word: str, rest: str) -> bool:
    """Whether what follows makes it a verb."""
    if _ON_WHAT.match(rest) or (word in ("check", "measure") and _THEN_TOOL.match(rest)):
        return True
    if _GOES_ON.match(rest) or (word in words("led") and _LED.match(rest)):
        return True
    if (found := _WITH.match(rest)) and not _GEAR.search(found["on"]) and not _is_name(word, found["on"]):
        return True
    return word in ("check", "test") and _MEASURED.match(rest) is not None


def _is_name(word: str, rest: str) -> bool:
    """Whether a word and what follows name a thing, of which the last word is the noun: "drain plug"."""
    known = tables()
    written = (word, *rest.lower().split())
    if word in words("nouns") and not (written[-1].endswith("s") and not written[-1].endswith("ss")):
        return True  # one "oil cooler", but "grease pins"
    said = [known.spellings.get((one,), one) for one in (word, *(one.rstrip("s") for one in written[1:]))]
    if word == "bleed" and said[-1] not in ("nipple", "screw", "valve", "wrench", "key", "hose", "tube"):
        return False
    if word in words("heads") and not _GEAR.search(rest):
        return False  # "lift gearbox with": a lift's name has its noun last
    whole = frozenset(said)
    return written in known.spellings or any(
        name <= whole and {said[0], said[-1]} <= name for one in whole for name, _ in known.names.get(one, ())
    )


_IT = frozenset({"it", "them", *words("articles")})


def acts(text: str) -> bool:
    """Whether another act begins here, after "and" or "then": "and slacken the bolt"."""
    first, follows = [*text.lower().split(" "), "", ""][:2]
    if (follows := follows.strip(",;:.")) in words("things_follow"):
        known = first in any_verbs()
        return known or (first.isalpha() and follows in _IT and first not in words("no_verbs"))
    return first in words("verbs") and first not in words("perhaps")
