"""Whole instructions as needs: "Undo the union with an 11 mm flare nut spanner" asks for the spanner.

The thing that is called for comes first, and what is done with it follows after "on", where it can add a measure but
names no other thing. Of what is done, how many there are and words that no table knows are left out: they say nothing
of the tool.
"""

from __future__ import annotations

import re
from functools import cache

from cribkit.domain.wording.tables import load, tables

_ARTICLE = r"(?:an? |the |your |our |some |its |suitable |correct )*"
# How much of it, in words that are no amount.
_DAB = re.compile(
    r"^(?:(?:an?|one|two|three|the) )?(?:\d+ ?mm )?(?:(?:thin|light|small|single|even|good|fresh|continuous) )*"
    r"(?:drops?|dabs?|beads?|smears?|films?|coats?|layers?|touch|bit|little|lengths?|pieces?|strips?|pairs?|squirts?)"
    r" of ",
    re.I,
)
_STEP = re.compile(
    r"^\s*(?:please |then |now |next,? |first,? |finally,? |step \d+[.:)]? |\d{1,2}[.)] (?=[a-z]))+", re.I
)
_AND_REPLACE = re.compile(r"^\s*r ?(?:&|and|/|\+) ?r:? (?=\S)", re.I)  # remove and replace
_TESTED = re.compile(r"^(?:pressure|leak|vacuum|load|bench)[- ]test(?= (?:the|each|a|all|both)\b)", re.I)
# What stands ready under a load: "Support the van on 6 t axle stands".
_ON = re.compile(
    rf"^(?P<done>.*?\S) (?:on|onto|with|from) (?P<thing>{_ARTICLE}(?:[^,;:]*? )?"
    r"(?:stands?|ramps?|hoist|crane|jack|trestles?|lift|dolly|dollies|chocks?|slings?|support beam)\b.*)$",
    re.I,
)
_USING = re.compile(
    rf"^(?:using|with) {_ARTICLE}(?P<thing>[^;:]+?), "
    r"(?P<done>[a-z]+ (?:(?:open|off|out|up|down|back|loose) )?(?:the|both|all|each|a|an|two) .*)$",
    re.I,
)
_VERB = re.compile(r"^[a-z]+ (?:(?:open|off|out|up|down|back|loose) )?", re.I)
# A hole of a size is drilled with a drill of that size.
_HOLE = re.compile(
    r"^(?P<verb>drill|ream|tap|countersink)(?: out)? (?P<done>.*?)\b(?:to |at )?"
    r"(?P<size>m\d[\w. x]*|\d[\d./-]*(?: ?mm| ?in)?)"
    r"(?P<rest>(?: (?:for|before) .*)?)$",
    re.I,
)
_HOLE_TOOLS = {"drill": "drill bit", "ream": "reamer", "tap": "tap", "countersink": "countersink"}
_CUT_FROM = re.compile(
    rf"^(?:cut|make|punch)(?: out)? {_ARTICLE}(?:[a-z]+ )*gaskets? (?:from|out of) {_ARTICLE}(?P<thing>.+)$", re.I
)
_AND_FIT = re.compile(
    rf"^(?:clean|wipe|dry|degrease|scrape|clear|inspect|check|remove|discard|lift off|take off|bin|throw away) "
    rf"[^;:\d]*?,?(?: and| then)+ (?:then )?(?:fit|install|use|put on|apply|renew|screw in|replace(?: it)? with) "
    rf"{_ARTICLE}(?P<thing>.+)$",
    re.I,
)
_CHOCK = re.compile(r"^chock (?:the|both|all|its) (?:[a-z]+ )*(?:wheels?|tyres?|axle)\b(?!.* chocks?\b)", re.I)
# The tool comes last: "Loosen the lock nut, 17 mm combination spanner".
_LAST = re.compile(
    r"^(?P<done>[^,;:\d]+)[,;:] (?P<thing>(?:\S+ ){0,6}\S*"
    r"(?:wrench|spanner|socket|skt|key|driver|screwdriver|pliers|puller|bit|ratchet|bar)\b.*)$",
    re.I,
)
_REASON = re.compile(r",? (?:there(?:'s| is| are)|because|since the|so (?:that|the|it|they|you)) (?:no )?(.*)$", re.I)
_TAKE = re.compile(
    rf"^(?:(?:for|at|on|to) (?P<done>[^,;:]+?),? (?:take|use|you need|you will need|we need|needs?|fetch|get)|"
    rf"(?P<then>[^;:]*?)[;:,.]? (?:the|each|this|that) (?P<what>[a-z -]+?) (?:takes|needs|wants|requires|calls for)) "
    rf"{_ARTICLE}(?P<thing>.+)$",
    re.I,
)
_LABELLED = re.compile(r"^(?P<done>[A-Za-z][A-Za-z' -]*?)\s*: (?P<thing>.+)$")
_TORQUE = re.compile(
    r"^(?:(?:re)?tighten|(?:torque|set|nip)(?= (?:up|down|to|the|all|each|every|[a-z]+(?: [a-z]+)? to)\b))"
    r"(?: down| up)?"
    r"(?: (?P<done>[^,;:\d]*?))? (?:to|at) (?P<value>\d[^,;:]*?)(?:,| with| using) "
    rf"{_ARTICLE}(?P<thing>[^,;:]*?wrench.*)$",
    re.I,
)
_ONTO = re.compile(
    r" (?:to(?: [a-z]+)?|on|onto|into|over|around|round|between|under|behind|in|at) "
    r"(?=(?:the|each|all|both|every|its) )",
    re.I,
)


# When it is done says nothing of the thing: "Before removing the battery, undo the clamp with a 13 mm spanner".
_FIRST_DONE = re.compile(
    r"^(?:before|after|when|once|while|prior to) [a-z]+ing (?:(?!\b(?:with|using)\b)[^,;:\d])*, "
    r"(?=[a-z]+ (?:the|each|both|all) )",
    re.I,
)
# Nor does a remark on the hand of what is worked on: "...; the thread may be left-hand".
_LATER_SAID = re.compile(
    r"; ?(?:the|its|this|some|both) (?:threads?|nuts?|bolts?|screws?) [a-z ]*left[- ]hand\w*$", re.I
)
# What is held in the meantime with a thing of its own size: "Hold a 6 mm Allen key in the stud while undoing ...".
_MEANWHILE = re.compile(
    r"^(?P<held>(?:hold|insert|use|fit) an? [^,;:]*?\d[^,;:]*?),? (?:while|whilst) [a-z]+ing [^;:]*\bwith an? ", re.I
)
# The tool in brackets after what is done: "Back off the locknut (13 mm open-ended spanner), then set the clearance".
_IN_BRACKETS = re.compile(
    r"^(?P<done>[^()\d]+) \((?P<thing>[^()]*\d[^()]*\b(?:wrench|spanner|socket|key|driver|screwdriver|bit)s?)\)", re.I
)
# Two tools that work together: either is asked for.
_TOGETHER = re.compile(
    r"^(?P<one>[^,;:]*\bsocket),? and an? (?P<other>(?:long |short |\d/\d[a-z\" -]* )?"
    r"(?:breaker bar|ratchet|t[- ]bar|extension|torque wrench))$",
    re.I,
)


def _held_meanwhile(text: str) -> str:
    found = _MEANWHILE.match(text)
    return found["held"] if found else text


@cache
def _words(name: str) -> frozenset[str]:
    return frozenset(load("instruction.toml")[name].split())


def called_for(text: str) -> str:
    """The text with the thing that it calls for in front; a text that is no instruction stays as it is."""
    bare = _REASON.sub(r", for \1", _STEP.sub("", text.strip()).rstrip(" ."))
    bare = _TESTED.sub("test", _AND_REPLACE.sub("Replace ", bare))
    bare = _held_meanwhile(_LATER_SAID.sub("", _FIRST_DONE.sub("", bare)))
    if found := _TAKE.match(bare):
        return _turned(found["thing"], found["done"] or found["what"])
    if found := _TORQUE.match(bare):
        done = f", for {found['done']}" if found["done"] else ""
        return f"{found['thing']}, {found['value']}{done}"
    if found := _USING.match(bare):
        return _turned(found["thing"], _VERB.sub("", found["done"]))
    begins = verb(bare)
    if found := _LABELLED.match(bare):
        if begins or not any(char.isdigit() for char in found["done"]):
            return _turned(called_for(found["thing"]), found["done"][len(begins) :]) if begins else text
        return text
    if not begins:
        return bare if bare != text.strip().rstrip(" .") else text
    if found := _IN_BRACKETS.match(bare[len(begins) :].strip()):
        return _turned(found["thing"], found["done"])
    if found := _CUT_FROM.match(bare):
        return found["thing"]
    if _CHOCK.match(bare):
        return "wheel chocks"
    if found := _AND_FIT.match(bare):
        return found["thing"]
    if (found := _HOLE.match(bare)) and not re.search(r"\b(?:with|using|by means of)\b", bare, re.I):
        return f"{_HOLE_TOOLS[found['verb'].lower()]} {found['size']}"
    if begins.lower() in _WORN:
        return _object(bare, begins)
    return _with(bare, begins) or _on(bare, begins) or _last(bare, begins) or _object(bare, begins)


# What is worn comes first, whatever is worn with it: "Wear insulating gloves with leather over-gloves".
_WORN = frozenset({"wear", "don"})


def _on(text: str, begins: str) -> str:
    """What a load is set on."""
    found = _ON.match(text[len(begins) :])
    return re.sub(rf"^{_ARTICLE}", "", found["thing"], flags=re.I) if found else ""


def _last(text: str, begins: str) -> str:
    """ "Loosen the lock nut, 17 mm combination spanner": the tool comes last."""
    found = _LAST.match(text[len(begins) :].strip())
    return _turned(found["thing"], found["done"]) if found and not found["thing"].startswith("for ") else ""


def verb(text: str) -> str:
    """The verb that an instruction begins with, and what belongs to it ("drive out"); "" where there is none.

    No name of a thing has an article after its first word, so that any word but a preposition is a verb there.
    """
    first, _, rest = text.partition(" ")
    word, follows = first.lower().rpartition("-")[2], rest.split(" ")[0].lower().strip(",;:")
    third = rest.split(" ")[1].lower() if follows == "and" and " " in rest else ""
    if third in _words("verbs") | _words("perhaps") and word in _words("verbs") | _words("perhaps"):
        return f"{first} {follows} {third}"  # fill and bleed
    if word == "lower" and follows == "valve":
        return ""  # the lower valve cover
    if follows in ("up", "down", "off", "out") and rest.split(" ")[1:2] and rest.split(" ")[1] in _words("articles"):
        return f"{first} {follows}"  # line up the holes
    told = word in _words("verbs") or (
        word in _words("perhaps") and (follows in _words("objects") or (word in _words("led") and _led(rest)))
    )
    if told or (word.isalpha() and follows in _words("articles") and word not in _words("no_verbs")):
        return f"{first} {follows}" if follows in ("up", "down", "off", "out", "in", "back", "on", "over") else first
    return ""


_TOOL_LED = re.compile(r"^[a-z -]+ (?:with|using) (?:an?|the) ", re.I)


def _led(rest: str) -> bool:
    """ "Check rotor runout with a dial indicator": no name of a thing goes on so."""
    return _TOOL_LED.match(rest) is not None


# What a thing is "coated with" is not what it is done with.
_LUBRICATED = re.compile(r"\b(?:lubricated|coated|smeared|wetted|filled|moistened|greased|oiled|soaked)$", re.I)


_AIR_GUN = re.compile(r"\bair gun\b", re.I)
_BIT = re.compile(r"(?<!drill )\bbit\b", re.I)  # what a hole is drilled with


def _with(text: str, begins: str) -> str:
    """What stands after "with" or "using"; what is done follows it."""
    for word in ("using", "with", "by means of"):
        done, led, thing = text.partition(f" {word} ")
        if led and thing.strip() and not _LUBRICATED.search(done):
            thing = _DAB.sub("", thing)
            if found := _TOGETHER.match(thing):
                return f"{found['one']} or {found['other']}"
            if begins.lower().startswith("drill"):
                thing = _BIT.sub("drill bit", thing, count=1)
            if begins.lower().startswith("blow"):
                thing = _AIR_GUN.sub("blow gun", thing)
            return _turned(_then(re.sub(rf"^{_ARTICLE}", "", thing, flags=re.I)), done[len(begins) :])
    return ""


# What is done next says nothing of the thing.
_NEXT = re.compile(
    r",? (?:and "
    r"(?=(?:look|check|wait|watch|take|pump|undo|release|lower|raise|turn|wipe|leave|see|then|hold|let|keep|turn|pull|push|lift|tap|do|remove|fit|clean|"
    r"lay|ease|put|note|keep|set|mop|read|throw|brush|blow|prove)\b)"
    r"|then (?!.*\b(?:with|using)\b)|taking care "
    r"|(?:before|until|while|as|once|when) (?=(?:you|it|the|they|[a-z]+ing|assembly)\b))(.*)$",
    re.I,
)


def _then(thing: str) -> str:
    return _NEXT.sub("", thing)


def _object(text: str, begins: str) -> str:
    """ "Apply threadlocker to the bolts", "Fit a new gasket": the thing itself comes after the verb."""
    thing = _DAB.sub("", text[len(begins) :].strip())
    thing = _then(re.sub(rf"^{_ARTICLE}", "", thing, flags=re.I))
    return _ONTO.sub(", for ", thing, count=1)


# So many of them: a number before a word that is no unit and no trait of a tool.
_MANY = re.compile(
    r"(?<![\d/.,-])\b(?:two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|1?\d) "
    r"(?=(?!mm|mils?\b|milli|inch|in\b|point|pt|sided|jaw|leg|way|pin|speed|stroke|ton|amp|volt|eighth|sixteenth|"
    r"and\b|by\b)[a-z]{3})|\b(?:two|three|four|five|six|seven|eight|nine|ten|twelve) (?=\d+(?:\.\d+)? ?mm [a-z])",
    re.I,
)


# "Remove the 12 mm bolts with a 12 mm socket": the socket says its own size.
_SIZED = re.compile(r"\d ?(?:mm|mil)\b", re.I)
_OF_BOLTS = re.compile(r"\bm?\d{1,2} ?(?:mm )?(?=(?:bolts?|nuts?|screws?|studs?)\b)", re.I)


@cache
def _vocabulary() -> frozenset[str]:
    return tables().known | {word for phrase in tables().spellings for word in phrase}


def _known(done: str) -> str:
    known = _vocabulary()
    words = [word for word in re.split(r"\s+", done) if word]
    kept = (
        word
        for before, word in zip(["", *words], words, strict=False)
        if any(char.isdigit() for char in word)
        or before.replace(".", "").isdigit()  # its unit
        or {plain := word.lower().strip(".,;:()"), plain.rstrip("s")} & known
    )
    return " ".join(kept)


_PLACES = re.compile(r"\bat (?:two|three|four|six|eight|several|\d+) (?:points|places|positions)\b", re.I)


def _turned(thing: str, done: str) -> str:
    done = _MANY.sub("", _PLACES.sub("", done.strip(" ,")))
    done = _known(_OF_BOLTS.sub("", done) if _SIZED.search(thing) else done)
    return f"{thing}; on {done}" if done else thing
