"""What stands round an instruction: when and how it is done, what must not be used, what is done next.

"Carefully, with the engine cold, undo ..." asks for no more than "Undo ...".
"""

from __future__ import annotations

import re

from cribkit.domain.wording.speech import says_something
from cribkit.domain.wording.verbs import acts, any_verbs, verb

# "Do not use an impact wrench; tighten ...": what is denied is never the thing. Old gaskets are another matter.
_ACT = r"(?:use|using|try|attempt|force|hammer|strike|lever|prise|pry|clean|heat|work|rely|mix|hit|drive|apply|wear)"
_OLD = r"(?! (?:the |any )?(?:old|again|twice|more than once))"
_DENIED = re.compile(
    rf"^(?:(?:do not|don't|must not|avoid) (?!re-?us)[a-z]+{_OLD}|never {_ACT}{_OLD})\b"
    r"[^;:.]*?(?:$|[;:.] ?|, (?:but |instead )?|(?: - | but )(?:instead )?)",
    re.I,
)
_DENIED_LAST = re.compile(
    rf"[;,.:(]? (?:(?:and )?(?:do not|don't|never)|without|not with|rather than|instead of) (?:use|using){_OLD}\b"
    r"[^;:.]*$"
    r"|, (?:not with|rather than|instead of|and not|but not) (?:an?|the) [^;:.]*$",
    re.I,
)
# When and in what case: the clause before the first comma says nothing of the thing.
_WHEN = re.compile(
    r"^(?:if|unless|where|wherever|when|whenever|once|after|before|while|whilst|during|having|prior to|as)\b"
    r"[^,;:]*, (?P<rest>.+)$",
    re.I,
)
_STATE = re.compile(
    r"^(?:with|without) (?:the |both |all |each |your )[^,;:\d]*\b"
    r"(?:cold|cool|warm|hot|running|off|on|up|down|out|removed|raised|lifted|jacked|"
    r"supported|disconnected|stopped|idling|open|closed|level|fitted|clear|still|drained|clean|dry|ground|air|neutral|"
    r"gear|stands|ramps|wheels)(?: for [a-z ]*(?:minutes?|hours?))?, (?P<rest>.+)$",
    re.I,
)
_WHERE = re.compile(
    r"^(?:at|on|in|under|inside|behind|from|near) (?:the|each|both|either) [^,;:\d]*, (?P<rest>.+)$", re.I
)
_CIRCUMSTANCE = re.compile(r"^with(?:out)? [^,;:\d]*, (?P<rest>.+ (?:with|using) .+)$", re.I)
# What is cleaned first: "Clean the bore, apply retaining compound".
_CLEANED = re.compile(
    r"^(?:clean|degrease|wipe|dry|deburr) (?:the|both|all|each) (?:(?!with |using )[^,;:\d ]+(?: |(?=,)))+, "
    r"(?:then |and )?(?P<rest>(?:apply|smear|spread|coat|brush) .+)$",
    re.I,
)
# How it is done.
_MANNER = re.compile(
    r"^(?!apply|supply|assembly|family|reply|molly|dolly|trolly|multiply)"
    r"(?:[a-z]{3,}ly|always|also|just|again|only|now|then|best|slow|by hand)"
    r"(?:,? and [a-z]+ly)?,? "
    r"(?P<rest>.+)$",
    re.I,
)
# "Wear ear plugs when using the air chisel": what else is used then.
_WHILE = re.compile(
    r",? (?:when|while|whilst|whenever|before|after|if) (?:you are |you're )?"
    r"(?:using|handling|working|operating|use|you use|you work)\b.*$",
    re.I,
)
_AND = re.compile(r",? (?:and|then|and then),? (?=[a-z])", re.I)
_THEN = re.compile(r",? (?:and )?then,? (?P<act>[a-z]+)\b.*$", re.I)
# What turns a socket, named after it, with no size of its own.
_TURNED_BY = re.compile(
    r"(?<=socket)(?P<more>.*?),? (?:and|on|with) (?:an? |the )(?:(?:long|short|strong|suitable|big|good|sturdy) )*"
    r"(?:breaker |power |knuckle |johnson )?(?:bar|ratchet|handle|t-bar|sliding bar|tommy bar)$",
    re.I,
)

# "CAUTION: air bag wiring below", "; hold against the spring", ", both sides": said of the job, where no word of it
# tells things apart, counts or asks for something.
_ASKS = re.compile(r"\d|\b(?:use|using|with|wear|non|not|only)\b", re.I)
_SAID_OF_THE_JOB = re.compile(
    r"[.;] ?(?:caution|warning|note|nb)[:,]? (?P<warned>[^.;]*)$"
    r"|; ?(?P<held>(?:hold|keep|support|leave|discard|catch|mind|watch|let|stand|work|take care) [^.;]*)$"
    r"|; ?nip (?:it )?up(?: to [\d.]+ ?n.?m)?$"
    r"|,? (?:on )?(?:both|each|either) sides?$|, and (?:stake|peen|stake it|peen it)$"
    r"|, (?P<kept_off>away from the [a-z ]+)$",
    re.I,
)

_IT = re.compile(r", (?:then )?(?:replace|renew|change|fit|use) (?:it|them|these|those)$", re.I)


def stripped(text: str) -> str:
    """An instruction without what stands before it; a text that is none stays as it is."""
    denied = _DENIED.sub("", text)
    if denied != text:
        return stripped(denied)
    if _IT.search(text):
        return text  # the clause names the thing: "Where the chain is worn, replace it"
    for clause in (_STATE, _WHEN, _WHERE, _CIRCUMSTANCE, _CLEANED, _MANNER):
        if (found := clause.match(text)) and _begins(found["rest"]):
            return stripped(found["rest"])
    return text


def _begins(rest: str) -> bool:
    """Whether an instruction begins here, perhaps after a word for how it is done."""
    first, _, more = rest.partition(" ")
    if first.lower() in any_verbs() or verb(rest):
        return True
    found = _MANNER.match(rest) or _WHEN.match(rest)
    return bool(more) and found is not None and _begins(found["rest"])


def kept(text: str) -> str:
    """An instruction without what must not be used, what is used besides and what only warns."""
    return _SAID_OF_THE_JOB.sub(_unless_it_tells, _WHILE.sub("", _DENIED_LAST.sub("", text)))


def _unless_it_tells(found: re.Match[str]) -> str:
    """Nothing; or what was found, where a word of it tells things apart or names a tool."""
    said = found["warned"] or found["held"] or found["kept_off"]
    return found[0] if said and (_ASKS.search(said) or says_something(said)) else ""


# What turns a socket or a bit; only its square says anything of those.
_DRIVER = (
    r"(?:long |short |air |click )*(?:(?P<gun>impact (?:wrench|gun|driver)|air (?:wrench|gun)|rattle gun|windy gun)|"
    r"breaker bar|power bar|knuckle bar|ratchet|torque wrench|t-bar|sliding bar|extension(?: bar)?|angle gauge|handle)"
)
_SQUARE_OF = r"(?:(?P<square>\d/\d|1)(?:[- ]?(?:in(?:ch)?\b\.?|\"))?,?(?: square)?(?: drive| dr)? )?"
_DRIVER_FIRST = re.compile(
    rf"^(?:an? |the )?{_SQUARE_OF}{_DRIVER} and (?:an? |the )?(?P<turned>[^;]*\b(?:socket|skt|bit)\b[^;]*)$", re.I
)
_DRIVER_LAST = re.compile(
    rf"^(?P<turned>(?![^;]*\bbetween\b)[^;]*\b(?:socket|skt|bit)\b[^;]*?),? (?:and|on|with) (?:an? |the )?"
    rf"{_SQUARE_OF}{_DRIVER}$",
    re.I,
)
_HAS_SQUARE = re.compile(r"\b(?:drive|dr|square|sq)\b", re.I)


def what_is_turned(thing: str) -> str:
    """Of a socket and what drives it the socket, with the square of the other: "a 1/2 in ratchet and a 13 mm socket".

    On an impact wrench the socket is an impact socket, whether the text says so or not.
    """
    found = _DRIVER_FIRST.match(thing) or _DRIVER_LAST.match(thing)
    if not found:
        return thing
    turned = found["turned"]
    if found["gun"] and "impact" not in turned.lower():
        turned = f"impact {turned}"
    return f"{turned}, {found['square']} drive" if found["square"] and not _HAS_SQUARE.search(turned) else turned


def first_act(thing: str) -> str:
    """The thing without what is done next: "a trolley jack and chock the rear wheels"."""
    if (then := _THEN.search(thing)) and then["act"].lower() in any_verbs():
        thing = thing[: then.start()]
    for found in _AND.finditer(thing):
        if acts(thing[found.end() :]):
            return thing[: found.start()].rstrip(" ,")
    return _TURNED_BY.sub(r"\g<more>", thing)
