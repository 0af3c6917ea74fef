"""From a text to its meaning: words to a family, numbers and traits to attributes."""

from __future__ import annotations

import re
from itertools import pairwise

from cribkit.domain.wording import shapes, squares, stores, threads, tips, turns
from cribkit.domain.wording.context import beside_the_point, demands, describes, pass_over, pass_remarks
from cribkit.domain.wording.damage import mend
from cribkit.domain.wording.finish import finish
from cribkit.domain.wording.lexer import lex
from cribkit.domain.wording.meaning import Meaning
from cribkit.domain.wording.naming import expand_in, name_words
from cribkit.domain.wording.reading import Reading, Said
from cribkit.domain.wording.tables import FLUIDS, Family, listed, tables
from cribkit.domain.wording.text import tidy

# Ends of a word that say nothing: sockets, boxes.
_WET = re.compile(r"\bwet[ -]or[ -]dry\b", re.IGNORECASE)
_OR = re.compile(r"\s+(?:or|alternatively)\s+|\s*\bor\b\s*")


def read_one(text: str, kind: str = "") -> Meaning:
    """The meaning of one text without alternatives."""
    plain = tidy(text)
    reading = Reading(text, lex(mend(plain)), plain=plain)
    name_words(reading)
    squares.find_square(reading)
    choose_family(reading, kind)
    family = tables().families.get(reading.family)
    threads.pipe_thread(reading)
    if family:
        shapes.apply(reading, family.shape)
        reading.kind = family.kind
        expand_in(reading, family)
        claims(reading, family)
    spend_words(reading)
    if "insulated" in reading.traits:
        reading.finer -= listed("live")  # what the insulation is for
    pass_over(reading, family)
    pass_remarks(reading, family)
    finish(reading)
    return reading.meaning(kind)


# Words that name another thing only where they stand before it: a plug socket, but a socket for square plugs.
_WEAK = frozenset({"glowplug", "plug", "sumpplug", "stud", "filter", "wheelstud", "sensor", "extension"})
_NO_NAMES = frozenset({"lock", "locking"})  # pliers for a lock tab are no locking pliers
# Of what a socket is used on, what makes it a special one; the caps of oil filters are turned by a plain socket.
_PLUGGED = frozenset({"sparkplug", "plug", "glowplug", "oxygen", "lambda", "sensor", "spark", "glow", "rail", "tray"})
_WEAK_OF_TOOLS = frozenset({"sensor"})  # a cleaner for the air flow sensor is told by it


def choose_family(reading: Reading, kind: str) -> None:
    """The family whose name is there with most words; those after "with" and "for" may only add to it."""
    main = reading.main()
    _best_name(reading, kind, main | reading.hints)
    first, known = reading.name, tables().families.get(reading.family)
    wider = reading.said() - {
        said.word
        for said in reading.words
        if said.besides
        or (said.remark and known and known.kind == "tool" and (known.name != "socket" or said.word not in _PLUGGED))
        or (
            said.bracketed
            and known
            and known.shape in ("bolt", "nut")
            and said.word in listed("worked_on")
            and not said.text.endswith("ed")  # (flange) is where it goes, (flanged) is what it is
        )
        or (said.bracketed and said.word in ("external", "internal"))
        or (said.aside and said.word in _WEAK and (said.word not in _WEAK_OF_TOOLS or (known and known.kind == "tool")))
        or (said.worked_on and known and known.shape == "grease")
        or (said.worked_on and said.word in _NO_NAMES)
    }
    if wider - main:
        _best_name(reading, kind, wider | reading.hints)
        if first and (not first < reading.name or (known is not None and not _may_be_meant(reading, known))):
            _best_name(reading, kind, main | reading.hints)
    turns.settle(reading)
    if tool := _tool_for(reading):
        reading.family, reading.name = "", frozenset()
        if tool == "wrench":  # of which there are many by other names: a bleed nipple spanner
            _best_name(reading, "tool", main, tools_only=True)
            turns.settle(reading)


def _may_be_meant(reading: Reading, known: Family) -> bool:
    """Whether the thing of the longer name can be meant where the words before "for" and "on" name another.

    "Undo the caliper pin bolt with a 12 mm socket" asks for a plain socket; only of those for plugs, sensors and oil
    filters does the use alone tell.
    """
    wider = tables().families[reading.family]
    on = {said.word for said in reading.words if said.worked_on or (said.aside and not said.besides and not said.taken)}
    beside = {said.word for said in reading.beside()}
    special = bool(
        known.name == "socket" and wider.shape in ("any", "drive-any", "socket") and reading.name & on - beside
    )
    if known.name == "socket" and wider.name == "oil-filter-socket":  # the hexagon on its cap, or its flutes?
        fluted = any(token.kind == "flutes" for token in reading.tokens) or reading.has_said("flutes")
        special = not fluted and (reading.has_said("deep") or "drive" in reading.attributes)
    return wider.kind == known.kind and not special


# What a name of several nouns is when it ends in one of these: a thermostat tester is no thermostat.
_TOOL_WORDS = frozenset(
    {"tester", "extractor", "puller", "driver", "cutter", "wrench", "tool", "dipstick", "pliers", "gauge"}
)


def _tool_for(reading: Reading) -> str:
    """The word for a tool that the first part of the text ends in, after the name of a part or a fluid, or ""."""
    family = tables().families.get(reading.family)
    if family is None or family.kind != "consumable":
        return ""
    beside = reading.beside()
    first = [said for said in reading.first_part() if said in beside and said.word != "set"]
    last = first[-1] if len(first) > 1 else None
    return last.word if last and last.word in _TOOL_WORDS and last.word not in reading.name else ""


# What belongs to another part: a water pump gasket is a gasket, however its words stand.
_PARTS_OF = frozenset({"gasket", "seal", "oring", "grommet"})


# What is driven, or drives, in another sense: a worm drive clip.
_DRIVEN_BY = frozenset({"hoseclamp", "worm", "earclamp", "boltclamp", "belt", "chain"})


def _best_name(reading: Reading, kind: str, words: set[str], tools_only: bool = False) -> None:
    known = tables()
    reading.family, reading.name = "", frozenset()
    said, head = reading.said(), reading.head()
    best: tuple[int, ...] = (0,)
    guessed = {one.word for one in reading.words if one.how == "corrected"}
    guessed -= {one.word for one in reading.words if one.how != "corrected"}
    squared = "drive" in reading.attributes and not said & _DRIVEN_BY
    for word in sorted(words):  # of two names that fit as well, always the same one is taken
        for name, family in known.names.get(word, ()):
            if name <= words:
                told = known.families[family]
                if (squared or tools_only) and told.kind == "consumable":
                    continue  # only tools have a square
                explained = len(words & (name | told.absorbs | {"kit"}))
                fits = 1 if kind and told.kind == kind else 0
                grouped = 1 if "set" in name else 0
                counted = 2 * (len(name & said) + grouped) - len(name & said & tips.PROFILES.keys())
                part = 1 if told.kind == "consumable" and name & _PARTS_OF else 0
                heads, sure = (1 if head in name else 0), (0 if name & guessed else 1)
                score = (counted, fits, part, explained, sure, heads, len(name))
                if score > best:
                    best = score
                    reading.family, reading.name = family, name


def claims(reading: Reading, family: Family) -> None:
    """What the label of a chemical says it is free of, or safe on, in words that nobody foresaw: ammonia-free."""
    if family.shape not in FLUIDS:
        return
    for one, two in pairwise(reading.words):
        if two.text in ("free", "safe") and two.how == "unread" and one.how == "unread" and not one.negated:
            reading.traits.add(f"{one.text}-{two.text}")
            for said in (one, two):
                said.used, said.how, said.became = True, "attribute", f"{one.text}-{two.text}"


def spend_words(reading: Reading) -> None:
    """What the words beside the name say: an attribute, nothing, or something that could not be used."""
    known = tables()
    family = known.families.get(reading.family)
    placed = shapes.placed(family) or (family is not None and family.kind == "tool")
    for said in reading.words:
        word = said.word
        if said.how == "unread" and said.text in stores.GLOVES and shapes.takes_word(reading, said):
            said.how = "attribute"
        against = family is not None and family.shape == "glove" and said.word not in listed("worked_on") | {"plug"}
        if (
            said.how == "unread"
            and said.aside
            and not said.besides
            and not against
            and family
            and _aside_is_idle(family)
            and not _demanded(reading, said)
        ):
            said.how, said.used = "known", True
        if said.how == "unread" or said.used:
            continue
        if (
            (reading.family, word) in known.telling
            and not said.negated
            and (not said.aside or said.besides or (reading.family == "hose-clamp-pliers" and not said.worked_on))
        ):
            reading.finer.add(word)
        if (reading.family, word) in known.telling and said.negated:
            reading.traits.add(f"not-{word}")
        says = known.kinds.get((reading.family, word), ())
        if said.worked_on and not placed and any(name != "~" for name, _ in says):
            says = ()
        if said.negated and says:
            said.used = True
            reading.traits |= {f"not-{name}={value}" for name, value in says}
            continue
        if says:
            said.used, said.how = True, "name" if word in reading.name else said.how
            said.became = ", ".join(f"{name} {value}" for name, value in says)
            for name, value in says:
                if name != "~":
                    reading.set(name, value)
            continue
        if said.negated and (word not in (family.absorbs if family else ()) or word in _DENIABLE):
            guessed = said.how == "corrected"
            other = family is not None and not guessed and known.names_of.get(word, family.name) != family.name
            effect = known.effects.get(word)
            if other and family and family.shape in FLUIDS and f"not {said.text}" in reading.plain:
                said.used = True  # "not acetone": another thing, and this is not it
            elif effect and effect[0] == "+":
                said.used = True
                reading.traits.add(f"not-{effect[1]}")
            elif effect and effect[0] != "~":
                said.used = True
                reading.traits.add(f"not-{effect[0]}={effect[1]}")
            elif other and family and family.shape in FLUIDS:
                said.used = True
                if re.search(rf"\b(?:without|no|w/o|needs no) (?:an? |any )?{re.escape(said.text)}\b", reading.plain):
                    reading.traits.add(f"not-{word}")  # without primer: something that others have or need
            else:
                said.how = "unread"
        elif word in reading.name:
            said.how = "name" if said.how == "known" else said.how
            given = (
                bool(family) and family is not None and family.shape in _NAME_GIVES and shapes.takes_word(reading, said)
            )
            if family and not given and _says_more(reading, family, word):
                reading.effect(known.effects[word], said)
        elif not said.negated and shapes.takes_word(reading, said):
            continue
        elif family and word in family.absorbs and _tells_things_apart(said):
            said.used = True
            reading.finer.add(word)
        elif (family and word in family.absorbs) or (
            said.aside and beside_the_point(family, known.effects.get(word), said)
        ):
            said.used = True
        elif (effect := known.effects.get(word)) and shapes.may_say(family, effect[0]):
            reading.effect(effect, said)
        elif family and _tells_things_apart(said):
            said.used = True
            reading.finer.add(word)
        elif _demanded(reading, said):
            said.how = "unread"
        elif effect or said.aside or word in known.neutral or word in known.negations or _says_the_same(reading, word):
            said.used = True
        else:
            said.how = "unread"


def _demanded(reading: Reading, said: Said) -> bool:
    """Whether a word aside asks something of the thing: a driver for electricians, a primer for galvanised steel."""
    family = tables().families.get(reading.family)
    if said.aside and family and family.shape == "glove" and said.text in listed("handled"):
        return True
    if not said.aside or said.text not in demands():
        return False
    if said.text in listed("live"):
        return "insulated" not in reading.traits and not reading.has_said("insulated")
    return reading.family not in _WIPED or said.text not in listed("surfaces")


# What is wiped or held with these is no matter.
_WIPED = frozenset({"wipe", "wet-wipe", "wiping-rag", "tack-cloth", "cloth"})


def _says_the_same(reading: Reading, word: str) -> bool:
    """Whether the word belongs to another name of the same thing: "cherry picker engine hoist"."""
    known, said = tables(), reading.said()
    return reading.kind == "tool" and any(
        owner == reading.family and word in name and name <= said
        for one in said
        for name, owner in known.names.get(one, ())
    )


# What a name lets go without saying, and yet means something when it is denied: a non-serrated flange nut.
_DENIABLE = frozenset({"serrated", "flange"})


def _tells_things_apart(said: Said) -> bool:
    """Whether a word that the family makes nothing of stands beside the name and may tell things apart.

    It does of other things, or is a general word and none of those that say nothing. Nobody foresaw it here, so it
    is kept: an item that does not say it as well is to be confirmed.
    """
    known = tables()
    name, _ = known.effects.get(said.word, ("~", ""))
    remark = said.bracketed and not describes(said.text)
    beside = not (said.aside or said.worked_on or remark or said.negated) and said.word not in known.negations
    return beside and (name != "~" or (said.word in known.neutral and said.word not in known.idle))


def _aside_is_idle(family: Family) -> bool:
    """Whether what a thing is used on says nothing about it: chemicals, tapes and the like, not parts."""
    return family.kind == "consumable" and not shapes.placed(family)


# Shapes whose names hold words that are attributes too: copper washer, nickel paste, lint-free wipe.
_NAME_SAYS = frozenset({"seal-washer", "seize", "wipe", "puller"})


# Shapes in which a word of the name may be an attribute of their own: bent nose pliers.
_NAME_GIVES = frozenset({"glove", "torque", "pliers", "circlip"})


def _says_more(reading: Reading, family: Family, word: str) -> bool:
    """Whether a word of the name is an attribute as well: the family has the same name without it."""
    known = tables()
    if word not in known.effects or family.shape == "part":
        return False
    name, value = known.effects[word]
    if family.kind == "tool" and family.shape != "torque":
        if name == "material":
            return value not in family.name and word not in family.absorbs
        if word in family.absorbs:
            return False
    rest = reading.name - {word}
    return family.shape in _NAME_SAYS or any(rest == name and owner == family.name for name, owner in _names_of(rest))


def _names_of(rest: frozenset[str]) -> list[tuple[frozenset[str], str]]:
    return [entry for word in rest for entry in tables().names.get(word, ())]


def alternatives(text: str) -> list[str]:
    """The texts that "or" offers."""
    return [part for part in _OR.split(_WET.sub("wet and dry", text)) if part and part.strip()]
