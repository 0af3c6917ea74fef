"""What people say round what they ask for: "Could I have a deep 8 mm socket, please?"."""

from __future__ import annotations

import re

from cribkit.domain.wording.reader import read_one
from cribkit.domain.wording.tables import tables
from cribkit.domain.wording.verbs import words as listed

# How a request begins. Common practice, no source.
_ASKS = re.compile(
    r"^(?:(?:hi|hello|morning|hey|right|ok|okay|so|well|and|also|er|um)[,!]? )*"
    r"(?:(?:please )?(?:could|can|may|might|would) (?:i|we|you|somebody|someone) (?:please )?"
    r"(?:have|borrow|get|take|give me|pass me|hand me|find me|use|draw|lend me|let me have)(?: a look at)?"
    r"|(?:do|have) (?:we|you)(?: still)? (?:got|have)|have (?:we|you)"
    r"|(?:i|we)(?:'ll|'d| will| would)? (?:like|need|want|take|have)|i(?:'m| am) (?:after|looking for)"
    r"|i(?:'ve| have) got to (?:have|use)|(?:is|are) there|got"
    r"|(?:give|pass|hand|get|find|lend|fetch|chuck) (?:me|us)|any chance of|(?:any|some)thing to"
    r"|(?:has |have |did |does )?(?:any|some)(?: ?one|body) (?:got|seen|have|has|know where)(?: is)?"
    r"|who(?: has|'s got)|where(?: is|'s| are)|looking for|after(?! [a-z]+ing,)|just|needs?|wanted:?)"
    r"(?: (?:please|also|just|another|again|maybe|perhaps))* (?=\S)",
    re.I,
)
# What only asks in the course of a sentence.
_PLEASE = re.compile(
    r",? ?\b(?:please|pls|thanks|thank you|ta|cheers|mate|if you have (?:one|it|any)|if there is one)\b[.!?]*", re.I
)
# A clause of the speaker's own that names no measure: "I don't mind which drive", "I'll bring my own sledge".
_OWN = re.compile(
    r"(?<!\bcan)(?<!\bcould)(?<!\bmay)(?<!\bmight)(?:[,;.] ?|- | )(?:i|we|it|they)(?:'ll|'ve|'d|'m|'re|'s)?"
    r"(?: (?:do not|don't|will|have|am|can|can't|need to|want to|has|is|are))? (?!is |are )"
    r"(?:mind|care|bring|brought|broke|lost|snapped|rounded|left|know|think|keep|promise|have|had|dropped|swear|hope|"
    r"get)\b"
    r"[^\d,;.]*$",
    re.I,
)
# "I've bolts at 300 N·m, half-inch torque wrench wanted": the thing comes last, and the number counts.
_I_HAVE = re.compile(r"^(?:i|we)(?:'ve| have)(?: got)? (?P<done>.*?), (?P<thing>.*) wanted$", re.I)
# "Got any of that spray?", before "any" opens what is said in passing.
_GOT_ANY = re.compile(
    r"^(?:have (?:you|we) )?(?:still )?got any (?:more )?(?:of (?:that|this|the|those|these|your) )?(?=\S)", re.I
)
# "Is the deep socket back?", "has the ratchet come back yet?"
_IS_BACK = re.compile(
    r"^(?:is|are|has|have) (?:the |that |our |any of the )?(?P<thing>.+?),? "
    r"(?:come back|been (?:returned|brought back)|back(?: in)?|returned|free|in stock|available)(?: yet| now)?[.!?]*$",
    re.I,
)
# "Needs to be plastic-safe: brake cleaner".
_MUST_BE = re.compile(
    r"^(?:it |this )?(?:must|(?:needs|has|ought) to) be (?:an? )?(?P<which>[^:,]+): ?(?P<thing>.+)$", re.I
)
_WANTED = re.compile(r",? (?:is |are )?(?:wanted|needed|required)(?: today| now)?[.!?]*$", re.I)
# Which one is meant, where it says nothing: "the sort you hit", "whichever is open".
_WHICHEVER = re.compile(
    r",? (?:whichever|whatever|wherever|any|anything) (?:is |are |you |that )?[a-z' ]*$"
    r"|,? the (?:sort|kind|ones?|type) (?:you|we|they|that) [a-z ]+$",
    re.I,
)
_THE_SORT = re.compile(r",? the (?:sort|kind|ones?|type) (?=(?:with|on|for|that|in|of)\b)", re.I)
_THE_ONE = re.compile(  # but "DOT five point one" is a number
    r", (?:the |a )?(?P<which>[^,;]+?)(?<! point)(?<! and)(?<!twenty)(?<!thirty)(?<!forty)(?<!fifty)"
    r"(?<!number)(?<!size) ones?$",
    re.I,
)
_DOZEN = re.compile(r"^(?:half a |a half |a |two |one )?dozen (?:of )?(?=\S)", re.I)
_SETS = re.compile(
    r"^(?:a |one |two )?(?:full )?sets? of "
    r"(?=(?:four |six |new )?(?:spark|glow|brake|disc)\b(?! (?:pipe|spanner|tool|spoon|adj)))",
    re.I,
)
# Parts of a text: up to a comma, or to the end of a sentence.
_PARTS = re.compile(r"(?:,|(?<=[a-z]{4})[.!?](?= [A-Z])|\.\.\.(?= )) *")
# What only speech has: "it's welded itself on", "if nobody's under it", "he's waiting on the ramp".
_CHATTER = re.compile(
    r"\b(?:i|me|my|mine|myself|we|us|our|you|he|she|they|them|their|it|everybody|nobody|somebody|anybody|everywhere"
    r"|sorry|love|darling|mate|boss|course|especially|really|maybe|perhaps|today|again|yesterday|morning|afternoon"
    r"|is|are|was|were|am|will|won't|can't|don't|didn't|isn't|aren't|doesn't|wasn't|comes|goes|going|gone|keeps|keep"
    r"|started|spins|popped|if|because|cause|cos|before|already|at last|look|mind|budge|matter|ask)\b"
    r"|[a-z](?:'s|'re|'ll|'ve|'d|'m|n't)\b",
    re.I,
)
_GREETING = re.compile(
    r"^(?:hi|hello|hey|morning|good morning|afternoon|evening|right|ok|okay|now then|sorry(?: to bother you)?|excuse me"
    r"|quick one|me again)(?: (?:mate|all|there|chief|boss|love))?$",
    re.I,
)
_STUFF = re.compile(
    r"^(?:the |a |an )?(?P<which>.+?) (?P<sort>ones?|sorts?|kinds?|things?|stuff|version|types?|variety|jobs?)$", re.I
)
_IT_MUST = re.compile(
    r"^(?:and )?(?:it|they|that) (?:must|has to|have to|needs? to|should|had better) be (?:a |an |the )?", re.I
)
_ARTICLE = re.compile(r"^(?:an? |the |some |any |another )", re.I)


def _unchatty(text: str) -> str:
    """The text without parts that are only talk: no number, nothing that tells things apart, no name of a tool."""
    parts = _PARTS.split(text)
    if len(parts) < 2:
        return text
    ends = [found[0] for found in _PARTS.finditer(text)]
    while len(parts) > 1 and _GREETING.match(parts[0].strip()):
        parts, ends = parts[1:], ends[1:]
    kept = [parts[0]]
    for part, end in zip(parts[1:], ends, strict=False):
        said = _IT_MUST.sub("", part.strip())
        if (found := _STUFF.match(said)) and not _NUMBER.search(said):
            vague = found["sort"].lower().startswith(("thing", "stuff", "job"))
            said = found["which"] if vague else f"{found['which']} type"
        if not said or (_CHATTER.search(said) and not _NUMBER.search(said) and not _tells(said, parts[0])):
            continue
        kept += [", " if end.strip() in ("", ".", "!", "?", "...") else end, said if said != part.strip() else part]
    return "".join(kept)


def _tells(part: str, thing: str) -> bool:
    """Whether the part says something by itself, or of the thing: "super glue, the gel kind that doesn't run"."""
    if says_something(part):
        return True
    alone, with_it = read_one(thing), read_one(f"{thing}, {part}")
    more = {name for name, _ in with_it.attributes} - {name for name, _ in alone.attributes} - OF_ITS_PLACE
    return alone.family == with_it.family and bool(more or with_it.traits - alone.traits)


_FOR_IT = re.compile(r"\bfor (?:it|them|that)\b", re.I)
_NUMBER = re.compile(
    r"\d|\b(?:half|quarter|eighths?|sixteenths?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve"
    r"|[a-z]+teen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|thousand|nought|naught)\b",
    re.I,
)


# Words that hint at a special kind of fastener or tool, though no table makes them say so alone.
HINTS = re.compile(
    r"\b(?:insulat\w*|hv|\w*volts?|\w*voltage|spark\w*|\w*proof|\w*resist\w*|pins?|holes?|secur\w*|special|revers\w*"
    r"|safe|free)\b",
    re.I,
)
# What is said of a part and where it is, and tells no tools apart.
OF_ITS_PLACE = frozenset({"side", "fuel", "place", "model", "vehicle", "also", "finer", "carries", "which_hose"})


def says_something(part: str) -> bool:
    """Whether a word of the part tells things apart, or names a tool."""
    said = read_one(part)
    told = {name for name, _ in said.attributes} - OF_ITS_PLACE
    named = tables().families.get(said.family)
    of_tools = named is not None and named.kind == "tool"
    return bool(told or said.traits or of_tools or _FOR_IT.search(part) or HINTS.search(part))


_MARKS = str.maketrans(",.?!;:()-", "         ")


def plainly(text: str) -> str:
    """The text without what only makes it a request; a text that is none stays as it is."""
    words = text.lower().translate(_MARKS).split()
    if "'" not in text and listed("talk").isdisjoint(words) and not (words and words[0] in listed("talk_first")):
        return text  # most have none of the words that the searches below turn on
    plain = _OWN.sub("", _WHICHEVER.sub("", _PLEASE.sub("", text).rstrip(" .?!")))
    plain = _MUST_BE.sub(r"\g<thing>, \g<which>", plain)
    plain = _IS_BACK.sub(r"\g<thing>", plain)
    plain = _I_HAVE.sub(r"\g<thing>; on \g<done>", plain)
    plain = _WANTED.sub("", _GOT_ANY.sub("", plain))
    plain = _THE_SORT.sub(", ", plain)
    plain = _unchatty(_THE_ONE.sub(r", \g<which>", plain))
    asked = _ASKS.sub("", plain)
    plain = _ARTICLE.sub("", asked) if asked != plain else plain
    plain = _SETS.sub("", _DOZEN.sub("", plain))
    return plain if plain.strip() else text
