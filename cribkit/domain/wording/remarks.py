"""What a text says in passing behind a whole name: what the thing is used on ("5/16 skt 1/4dr, hose clamps")."""

from __future__ import annotations

from itertools import takewhile

from cribkit.domain.wording.context import idle
from cribkit.domain.wording.lexer import Token
from cribkit.domain.wording.reading import Reading, Said
from cribkit.domain.wording.tables import FLUIDS, listed, tables

# Names that say in the first part of a text that it is a tool.
_TOOL_NAMES = frozenset(
    [
        "socket",
        "wrench",
        "torquewrench",
        "pliers",
        "key",
        "bit",
        "screwdriver",
        "ratchet",
        "puller",
        "nutdriver",
        "punch",
        "extension",
    ]
)
# Shapes of consumables whose place says nothing of them.
_UNPLACED = FLUIDS | {"clamp", "lock", "wipe", "glove", "tape", "grit"}

# Behind these stands where the thing of a remark is.
_WHEREABOUTS = frozenset({"on", "of", "at", "behind", "under"})


def set_apart(reading: Reading) -> None:
    """A part behind a comma or in brackets that only names what the thing is used on is an aside or a remark.

    Of what is fitted it is the place ("BOLT, CALIPER CARRIER").
    """
    if not any(token.kind == "stop" for token in reading.tokens):
        return
    at = {id(token): said for said in reading.words for token in said.tokens}
    parts: list[list[Token]] = [[]]
    bracketed = [False]
    for token in reading.tokens:
        if token.kind == "stop":
            parts.append([])
            bracketed.append(token.text in "([" or (bracketed[-1] and token.text not in ")]"))
        else:
            parts[-1].append(token)
    words_in = [
        [at[id(token)] for token in part if id(token) in at and at[id(token)].tokens[0] is token] for part in parts
    ]
    first = {said.word for said in words_in[0]}
    tipped = any(token.kind in ("tip", "numbered") for token in parts[0])
    whole = _whole_name(words_in[0])
    by_itself = whole or tipped or bool(first & (_TOOL_NAMES | {"drive"})) or _names_tool(words_in[0])
    named = first if by_itself else reading.said()
    shapes = _consumable_shapes(named)
    if not shapes <= _UNPLACED:
        return
    sized = False
    told = _measured(parts[0]) and (tipped or bool(first & (_TOOL_NAMES | {"drive"})) or _names_tool(words_in[0]))
    for place, (part, words) in enumerate(zip(parts, words_in, strict=True)):
        first_of_all, sized = place == 0 or (not sized and bool(first & _TOOL_NAMES)), sized or _measured(part)
        after = told or (whole and (shapes or _measured(parts[0]) or bracketed[place] or _looked_for(words)))
        if place > 0 and after and words and _used_on(_further(words, first), part, bracketed[place], bool(shapes)):
            for said in words:
                said.aside = said.remark = True
                said.worked_on = not shapes
        elif first_of_all or shapes:
            continue  # nouns that come before the size are its name
        elif (
            (len(words) > 1 or (sized and words and len(words[0].tokens) > 1))
            and sum(len(said.tokens) for said in words)
            == len([token for token in part if token.kind not in ("sign", "end", "dash", "slash")])
            and all(said.word in listed("worked_on") or said.word in listed("where") for said in words)
        ):
            for said in words:
                said.aside = True


def _further(words: list[Said], first: set[str]) -> list[Said]:
    """The words of a remark, without where its thing is and without what only says again what the first part says.

    "Insulated socket, HV battery tray" says insulated once more; of "hose clips on the intercooler" the clips count.
    """
    effects = tables().effects
    told = {effects[word] for word in first if word in effects}
    head = list(takewhile(lambda said: said.text not in _WHEREABOUTS, words)) or words
    if any(said.negated or _tells(said, poured=True) for said in words[len(head) :] if said.text not in _WHEREABOUTS):
        head = words
    return [said for said in head[:-1] if effects.get(said.word) not in told] + head[-1:]


def _names_tool(words: list[Said]) -> bool:
    """Whether one of the words alone names a tool: "hex key", "multimeter"."""
    known = tables()
    families = (known.families[known.names_of[said.word]] for said in words if said.word in known.names_of)
    return any(family.kind == "tool" for family in families)


def _measured(part: list[Token]) -> bool:
    return any(token.kind in ("num", "tip", "torque", "thread", "numbered") for token in part)


def _consumable_shapes(words: set[str]) -> set[str]:
    """The shapes of the consumables that the words name."""
    known = tables()
    families = (known.families[known.names_of[word]] for word in words & known.names_of.keys())
    return {family.shape for family in families if family.kind == "consumable"}


def _looked_for(words: list[Said]) -> bool:
    """Whether a part ends in what is looked for and is no part of a gauge's name: runout, lash."""
    return bool(words) and words[-1].word in listed("measured") - listed("gauged")


def _whole_name(words: list[Said]) -> bool:
    """Whether the words of the first part name a thing, and more words than one stand there."""
    said = {one.word for one in words}
    names = (name for word in said for name, _ in tables().names.get(word, ()) if name <= said)
    return sum(len(one.tokens) for one in words) > 1 and any(names)


def _used_on(words: list[Said], part: list[Token], bracketed: bool, poured: bool) -> bool:
    """Whether a part says what the thing is used on: it ends in a part, a fastener or a measure, and has no number.

    One alone in the singular may be a part of the thing itself ("rolling head"). No word tells things apart or begins
    a clause.
    """
    sized = any(token.kind in ("num", "tip", "thread", "numbered") for token in part)  # a torque is the fastener's
    if sized or any(said.negated for said in words):
        return False
    last, before = words[-1], words[:-1]
    plural = last.text.endswith("s") and not last.text.endswith("ss")
    measured = {last.word, last.word.removesuffix("s")} & listed("measured")
    own = last.word in listed("of_tools") and not all(_noun(said) for said in before)
    phrase = len(last.tokens) > 1 and last.word not in listed("of_tools")
    alone = plural or bracketed or phrase or bool(measured) or (bool(before) and not own)
    if last.text.endswith("ed"):
        return False  # "(flanged)": no flange
    strange = last.how == "unread" and idle(last.text) and any(_noun(said) for said in before)  # battery isolator
    plug = bool(before) and last.word == "plug"  # of a drain
    telling = [said for said in words if not (said.text.startswith("sleeve") and before)]  # of a guide, no cover
    return (_noun(last) or strange or plug) and alone and not any(_tells(said, poured) for said in telling)


def _noun(said: Said) -> bool:
    known = tables()
    fitted = known.families.get(known.names_of.get(said.word, ""))
    single, text = said.word.removesuffix("s"), said.text.removesuffix("s")
    return (bool({said.word, single} & (listed("worked_on") | listed("measured"))) or text in listed("worked_on")) or (
        fitted is not None and fitted.kind == "consumable" and fitted.shape not in _UNPLACED - {"clamp"}
    )


def _tells(said: Said, poured: bool) -> bool:
    """Whether a word tells tools apart, or begins a clause of its own."""
    effect = tables().effects.get(said.word, ("~", ""))[0] if said.text not in ("lock", "locks") else "~"
    return effect not in ("~", "side") or (said.word in _TOOL_NAMES and not poured) or said.text in listed("leads")
