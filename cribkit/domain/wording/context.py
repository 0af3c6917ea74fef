"""Words that nobody knows and that cannot matter: where a thing is used, what colour its case is."""

from __future__ import annotations

import re
from functools import cache
from itertools import pairwise

from cribkit.domain.wording.keys import KEYS
from cribkit.domain.wording.lexer import Token
from cribkit.domain.wording.reading import Reading, Said
from cribkit.domain.wording.tables import FLUIDS, Family, listed, tables

# Shapes of what is told by its place.
_PLACED_SHAPES = frozenset({"part", "bolt", "nut", "thread-part", "clip", "pin", "sized", "wire"})


def beside_the_point(family: Family | None, effect: tuple[str, str] | None, word: Said) -> bool:
    """Whether what a word after "for" or "with" says is said of the place where a hand tool is used."""
    if family is None or effect is None or family.shape in ("circlip", "part"):
        return False
    if family.shape == "clamp" and effect[0] == "material" and not word.besides:
        return True  # for a hose of silicone
    if family.kind != "tool":
        if family.shape in ("chem", "wipe", "grit", "glove", "lock", "grease", "seize") and effect == ("+", "flanged"):
            return True
        idle_here = {"side", "colour"} | (set() if word.besides else {"material"})
        return family.shape in FLUIDS and effect[0] in idle_here
    said = effect[1] if effect[0] == "+" else effect[0]
    if said in ("material", "flanged") and word.worked_on:
        return True  # what it is used on is of alloy
    if family.shape == "plug-socket" and said == "material":
        return False  # with a rubber insert: what holds the plug
    if family.shape not in listed("closed"):
        return said in ("side", "ratcheting") or (word.worked_on and said not in _OF_THE_TOOL)
    return said in (listed("of_the_grip") if word.besides else listed("of_the_place"))


# What counts of a tool wherever it is said.
_OF_THE_TOOL = frozenset({"insulated", "tamper", "impact", "points", "material", "internal", "external", "hand"})


def pass_over(reading: Reading, family: Family | None) -> None:
    """Words in a place where context stands are no doubt, once the thing is told by its numbers.

    Context stands after "for", "with", "in", "on", "of" and "to", in brackets, and at the end. A word that may be short
    for, or a slip of, one that tells things apart stays unread; so does one with digits, and a negated one.
    """
    closed = listed("closed")
    if family is None or (family.shape in closed and not _told(reading, family)):
        return
    if family.shape in FLUIDS - {"oil"}:  # a sealant for sumps is a sealant
        for said in reading.words:
            if said.how == "unread" and not said.negated and said.word in _never_fitted():
                said.how, said.used = "context", True
        return
    if family.shape not in closed and (family.kind != "tool" or family.shape in ("part", "thread-any")):
        return
    if family.name in _TOLD_BY_USE:
        return
    aside = _context(reading, end=False)
    context = _context(reading, end=family.shape in closed - FLUIDS and family.shape not in listed("placed"))
    worked_on, told = _worked_on(reading, family), _described(reading)
    for said in reading.words:
        sign = said.text == "x"  # between two sizes
        idles = id(said) in worked_on or (id(said) in context and (idle(said.text) or said.text in listed("places")))
        idles = idles or (id(said) in aside and _no_trait(said.text))
        if said.how == "unread" and not said.negated and (sign or (idles and id(said) not in told)):
            said.how, said.used = "context", True
    for token in _measures(reading):
        token.used = True
    if family.kind == "tool":
        _pass_vehicles(reading)


# What a word that nobody knows says of a thing, by its ending: textured, detectable, rustproof.
_DESCRIBES = re.compile(r"(?<!allow)(?<!need)(?<!requir)(?<!want)(?<!mark)(?<!e)(?:ed|[ai]ble|proof|less|resistant)$")


def describes(word: str) -> bool:
    """Whether a word describes a thing by its ending: "(hardened)"."""
    return bool(_DESCRIBES.search(word)) and word not in tables().vehicles


def _described(reading: Reading) -> set[int]:
    """The last words of brackets that describe the thing: "(metal detectable)"."""
    closed = {id(token) for token, after in pairwise(reading.tokens) if after.text in ")]"}
    return {
        id(said) for said in reading.words if said.bracketed and id(said.tokens[-1]) in closed and describes(said.text)
    }


def _pass_vehicles(reading: Reading) -> None:
    """The vehicle that a hand tool lies ready for, a name that nobody knows and its kind: "hub nut Heron flatbed"."""
    for name, kind in pairwise(reading.words):
        strange = name.how == "unread" and not name.negated and _no_trait(name.text)
        if strange and kind.text in tables().vehicles and not kind.negated:
            for said in (name, kind):
                said.how, said.used = "context", True
            reading.finer -= {kind.word}
    if found := _OF_AN_ENGINE.search(reading.plain):
        reading.spend(found[1] or found[2])


# The engine on which a tool is used, by its litres: "for the older 1.6 engine", "head bolts on the 2.0".
_OF_AN_ENGINE = re.compile(
    r"(?<![\w.])([1-9]\.\d)(?: ?l| litre)? (?:petrol |diesel )?engine\b"
    r"|\b(?:on|for|of) the (?:older |newer |old |new )?([1-9]\.\d)(?: ?l| litre| petrol| diesel)?$"
)


def pass_remarks(reading: Reading, family: Family | None) -> None:
    """What stands in brackets at the end is the crib's remark on it: "sledge hammer 14 lb (drawbar pins)".

    What the tables know of it has been read before; of parts and fasteners, which are told by their place, it counts.
    """
    if family is None or family.shape in _PLACED_SHAPES:
        return
    for said in reading.words:
        if said.remark and said.how == "unread" and not said.negated:
            said.how, said.used = "context", True
    at = {id(token): said for said in reading.words for token in said.tokens}
    denied = any(said.text == "not" for said in reading.words)  # "(ends not noted)" says something of the thing
    inside, told = False, _described(reading)
    for token in reading.tokens:
        here = at.get(id(token))
        if token.kind == "stop":
            inside = token.text in "([" or (inside and token.text not in ")]")
        elif (
            inside
            and here is not None
            and here.how == "unread"
            and not here.negated
            and id(here) not in told
            and _remark(here, denied)
        ):
            here.how, here.used = "context", True


def _remark(said: Said, denied: bool) -> bool:
    return (
        (not denied and _no_trait(said.text))
        or said.word in tables().names_of
        or said.word in listed("worked_on") | {"air", "flow", "plug", "plugs", "extr"}
    )


def _told(reading: Reading, family: Family) -> bool:
    """Whether the attribute that the family is told by is stated."""
    keys = KEYS.get(family.shape, ())[:1] or ("range", "drive", "size", "dims")
    return any(key in reading.attributes for key in (*keys, "tips", "drive_out"))


def _context(reading: Reading, end: bool) -> set[int]:
    """The words that stand where context stands."""
    at = {id(token): said for said in reading.words for token in said.tokens}
    found: set[int] = set()
    inside = led = False
    for token in reading.tokens:
        said = at.get(id(token))
        if token.kind == "stop":
            inside = token.text in "([" or (inside and token.text not in ")]")
            led = led and token.text in "()[]"
        elif said is None:
            continue
        elif said.text in listed("leads"):
            led = True
        elif led or inside:
            found.add(id(said))
    return found | (_tail(reading) | _segments(reading) if end else set())


def _worked_on(reading: Reading, family: Family) -> set[int]:
    """What a hand tool is used on, named between commas or before a colon; beside a torque wrench anywhere.

    A part of the text that holds anything else, a number or a word that says more of the tool, is not of that sort.
    """
    if family.shape == "clamp":
        return {id(said) for said in reading.words if said.how == "unread" and said.word in listed("hoses")}
    if family.kind != "tool" or family.shape not in listed("closed") | {"circlip"}:
        return set()
    at = {id(token): said for said in reading.words for token in said.tokens}
    parts: list[list[Token]] = [[]]
    for token in reading.tokens:
        parts.append([]) if token.kind == "stop" else parts[-1].append(token)
    labelled = any(token.text == ":" for token in reading.tokens)
    found: set[int] = set()
    for place, part in enumerate(parts):
        words = [at[id(token)] for token in part if id(token) in at]
        if words and words[-1].text in _SORT:
            continue  # "pipe union sort" says what it is, not what it is used on
        unread = [said for said in words if said.how == "unread"]
        named = all(_part_of_vehicle(said) for said in unread)
        alone = len(words) == len([token for token in part if token.kind not in ("sign", "end", "dash")])
        whole = alone and len(unread) == len([said for said in words if not said.used])
        if family.shape in _NAMED_BY_USE:
            more = listed("names_more") - ({"plug", "plugs"} if family.shape in _NO_PLUGS else set())
            found |= {id(said) for said in unread if said.word in (listed("worked_on") | {"plug"}) - more}
        if family.shape == "torque" or ((place > 0 or labelled) and whole and named and not _one_plug(words)):
            found |= {id(said) for said in unread if _part_of_vehicle(said)}
    return found


# What ends a part of the text that tells the kind of a thing.
_SORT = frozenset({"sort", "kind", "type", "style", "pattern", "version", "variety", "one"})
# What they are for is what they are: a word after "for" that nobody knows counts.
_TOLD_BY_USE = frozenset({"crimping-pliers", "terminal-tool"})


@cache
def _never_fitted() -> frozenset[str]:
    """What chemicals are used on that is no part of its own."""
    return frozenset(word for word in listed("worked_on") if not _fitted(word))


def _fitted(word: str) -> bool:
    """Whether a word alone names something that is fitted or used up: another thing than a chemical for it."""
    known = tables()
    named = known.families.get(known.names_of.get(word, ""))
    return named is not None and named.kind == "consumable"


# What is told by its size alone: a word for what it is used on may stand anywhere ("bleed nipple spanner").
_NAMED_BY_USE = frozenset({"socket", "bit-socket", "lobe-socket", "wrench", "wrench2", "key", "bit", "screwdriver"})


# These never turn a spark plug: plugs are drain and filler plugs.
_NO_PLUGS = frozenset({"bit-socket", "key", "bit"})


def _part_of_vehicle(said: Said) -> bool:
    return said.word in listed("worked_on") or (said.word != "plug" and idle(said.text)) or said.text == "plug"


def _one_plug(words: list[Said]) -> bool:
    """ "plug" alone may be a spark plug's socket."""
    return [said.word for said in words] == ["plug"]


def _segments(reading: Reading) -> set[int]:
    """The unread words of a part between commas that says nothing else, after the first."""
    at = {id(token): said for said in reading.words for token in said.tokens}
    found: set[int] = set()
    part: list[int] | None = None  # None while the part says more
    for token in [*reading.tokens[_first_stop(reading) :], Token("stop", "")]:
        said = at.get(id(token))
        if token.kind == "stop":
            found.update(part or ())
            part = []
        elif said is None and token.kind not in ("sign", "end", "dash"):
            part = None
        elif said is not None and part is not None:
            part = [*part, id(said)] if said.how == "unread" else None
    return found


def _first_stop(reading: Reading) -> int:
    places = (place for place, token in enumerate(reading.tokens) if token.kind == "stop")
    return next(places, len(reading.tokens))


def _measures(reading: Reading) -> list[Token]:
    """Measures after "for" and its like, up to the next stop."""
    found, led = [], False
    for token in reading.tokens:
        if token.kind == "stop":
            led = False
        elif token.kind == "word" and token.text in listed("leads"):
            led = True
        elif led and token.kind in listed("elsewhere"):
            found.append(token)
    return found


def _tail(reading: Reading) -> set[int]:
    """The unread words at the very end."""
    at = {id(token): said for said in reading.words for token in said.tokens}
    found: set[int] = set()
    for token in reversed(reading.tokens):
        said = at.get(id(token))
        if said is not None and said.how == "unread":
            found.add(id(said))
        elif said is not None or token.kind not in ("stop", "sign", "end", "dash", "slash"):
            break
    return found


@cache
def idle(text: str) -> bool:
    """Whether a word cannot be a short or damaged form of one that tells things apart."""
    words = text.replace("-", " ").split()
    return bool(words) and all(_idle(word) for word in words)


def _idle(word: str) -> bool:
    return _plain_word(word) and not any(_may_be(word, one) for one in telling())


@cache
def demands() -> frozenset[str]:
    """The words that ask something of the thing wherever they stand."""
    return listed("demanded") | listed("live") | listed("surfaces")


def _plain_word(word: str) -> bool:
    known = word in tables().names_of or word in telling() or word in listed("unfit") | demands()
    return len(word) >= 4 and word.isalpha() and not known


@cache
def _no_trait(text: str) -> bool:
    """Whether a word aside could at most be short for a noun: a wrench aside ("(Wren)") is no matter."""
    words = text.removesuffix("'s").replace("-", " ").split()
    traits = telling() & _traits()
    return bool(words) and all(_plain_word(word) and not any(_may_be(word, one) for one in traits) for word in words)


@cache
def _traits() -> frozenset[str]:
    known = tables()
    told = {word for word, effect in known.effects.items() if effect[0] != "~"}
    return frozenset(told | {phrase[0] for phrase, word in known.spellings.items() if word in told})


def _may_be(word: str, one: str) -> bool:
    """A word begun alike whose letters stand in the other in order ("INSLT"), one that holds it, or a slip of it."""
    if len(one) >= 5 and one in word:
        return True
    if word[0] == one[0] and len(word) < len(one) and _inside(word, one):
        return one.startswith(word) or len(word) * CUT_TO > len(one) or not _VOWELS & set(word)
    if abs(len(word) - len(one)) > 2 or min(len(word), len(one)) < 4:
        return False
    from rapidfuzz.distance import OSA  # imported here: start-up counts

    return OSA.distance(word, one) <= (1 if len(word) < 8 else 2)


# A word with vowels that does not begin the other is cut to half at most: "tern" is in "torquewrench" by chance.
CUT_TO = 2
_VOWELS = frozenset("aeiou")


def _inside(word: str, one: str) -> bool:
    letters = iter(one)
    return all(letter in letters for letter in word)


@cache
def telling() -> frozenset[str]:
    """The words that tell one thing from another: traits, and names of the families with closed lists."""
    known = tables()
    closed = {name for name, family in known.families.items() if family.shape in listed("closed")}
    names = {word for group in known.names.values() for name, owner in group if owner in closed for word in name}
    told = names | {word for word, effect in known.effects.items() if effect[0] != "~"}
    written = {phrase[0] for phrase, word in known.spellings.items() if word in told and len(phrase) == 1}
    return frozenset(word for word in told | written if word.isalpha() and len(word) > 1) - known.neutral
