"""The word tables, loaded once: spellings, families, traits and how a match treats them."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterator
from functools import cache
from itertools import permutations
from typing import NamedTuple

from cribkit.domain import tables as files


class Family(NamedTuple):
    """What a thing is: its names, its numbers, and whose need it meets."""

    name: str
    kind: str  # "tool" or "consumable"
    shape: str
    parents: frozenset[str]  # families whose need it meets
    perhaps: frozenset[str]  # families whose need it may meet: a person confirms
    absorbs: frozenset[str]


class Rule(NamedTuple):
    """How a match treats one attribute or trait."""

    silent: str  # the need states it, the item says nothing: "none", "review", "free"
    default: str  # what a silent item is taken to be, "" if nothing
    unasked: str  # only the item states it


# Of what the tables say nothing of.
OPEN_RULE = Rule("review", "", "free")


class Tables(NamedTuple):
    """Every table, ready for use."""

    spellings: dict[tuple[str, ...], str]  # a phrase -> its word
    longest: dict[str, int]  # first word of a phrase -> length of the longest
    families: dict[str, Family]
    names: dict[str, tuple[tuple[frozenset[str], str], ...]]  # a word -> the names that hold it as their rarest word
    effects: dict[str, tuple[str, str]]  # a word -> (attribute, value), or ("+", trait)
    rules: dict[str, Rule]
    kinds: dict[tuple[str, str], tuple[tuple[str, str], ...]]  # (family, word) -> what it says there
    neutral: frozenset[str]
    idle: frozenset[str]  # words that say nothing of any thing
    negations: frozenset[str]
    names_of: dict[str, str]  # words that alone name a thing -> its family
    telling: frozenset[tuple[str, str]]  # (family, word): goes without saying in the name, and tells things apart
    specs: frozenset[str]  # words of fluid grades
    vehicles: frozenset[str]
    sided: frozenset[str]  # words that have a contrary
    accessories: frozenset[str]  # what goes with a thing: right behind its name it is another thing
    fittings: frozenset[str]  # the same, but perhaps only what the thing has
    of_stuff: frozenset[str]  # accessories of fluids, chemicals, gloves and wipes
    known: frozenset[str]  # every single word that the reader knows


def lines(block: str) -> list[str]:
    """The lines of a table block, without empty ones and comments."""
    return [line for raw in block.splitlines() if (line := raw.strip()) and not line.startswith("#")]


def load(name: str) -> dict[str, str]:
    """One table file of this package."""
    return files.table("cribkit.domain.wording", f"data/{name}")


@cache
def listed(name: str) -> frozenset[str]:
    """A list of data/context.toml."""
    return frozenset(load("context.toml").get(name, "").split())


# Shapes of what is poured, sprayed or smeared.
FLUIDS = frozenset({"chem", "oil", "grease", "seize", "lock"})


class Kin:
    """What a judgement needs: which family meets the need of which, and how attributes are treated.

    The small part of the tables, without the words; an entry is unpacked when it is asked for: start-up counts.
    """

    def __init__(self, text: str) -> None:
        packed = json.loads(text)
        self._families: dict[str, list[str]] = packed["families"]
        self._rules: dict[str, list[str]] = packed["rules"]
        self._implied: dict[str, dict[str, str]] = packed["implied"]
        self._called: dict[str, str] = packed["called"]
        self.contraries: dict[str, list[str]] = packed["contraries"]
        self.parts = frozenset(packed["parts"])  # what things are used on, and where
        self.vehicles = frozenset(packed["vehicles"])
        self.unspoken = frozenset(packed["unspoken"])  # words that tell nothing apart, whatever a crib holds
        self.family = cache(self._family)
        self.rule = cache(self._rule)

    def _family(self, name: str) -> Family | None:
        """The family's entry, without what goes without saying in its descriptions; None for an unknown name."""
        if name not in self._families:
            return None
        kind, shape, parents = self._families[name]
        return Family(name, kind, shape, *_parents(parents), frozenset())

    def _rule(self, name: str) -> Rule | None:
        """How a match treats this attribute or trait; None where it has no rule of its own."""
        return Rule(*self._rules[name]) if name in self._rules else None

    def implied(self, family: str, attribute: str) -> str | None:
        """What a silent item of the family is."""
        return self._implied.get(family, {}).get(attribute)

    def called(self, name: str) -> str:
        """An attribute or trait in plain words: "kind of hole" for hole_kind."""
        if name in self._called:
            return self._called[name]
        thing, _, aspect = name.replace("-", " ").rpartition("_")
        thing, aspect = thing.replace("_", " "), aspect.replace("_", " ")
        return f"{aspect} of {thing}" if thing and aspect in ("kind", "form", "type") else f"{thing} {aspect}".strip()


@cache
def kin() -> Kin:
    """The part of the tables that judging needs, worked out once."""
    return Kin(files.remember("kin", packed_kin))


def packed_kin() -> str:
    """The same as text."""
    file = load("families.toml")
    families: dict[str, list[str]] = {}
    for kind, block in (("tool", file["tools"]), ("consumable", file["consumables"])):
        families |= {name: [kind, shape, parents] for name, shape, parents in _heads(block)}
    for block in load("names.toml").values():
        for name, shape, parents in _heads(block):
            families.setdefault(name, ["tool", shape, parents])
    traits = load("traits.toml")
    implied: dict[str, dict[str, str]] = {}
    for family, name, default, _ in _kinds(traits["kinds"]):
        if default:
            implied.setdefault(family, {})[name] = default
    rules = dict(_rule(line) for line in lines(traits["rules"]))
    called = dict(line.split(" | ") for line in lines(traits["called"]))
    idle = {*traits["idle"].split(), *traits["negations"].split(), *traits["unspoken"].split()}
    unspoken = sorted(idle - {*traits["spoken"].split()})
    packed = {
        "families": families,
        "rules": rules,
        "implied": implied,
        "called": called,
        "unspoken": unspoken,
        "vehicles": traits["vehicles"].split(),
    }
    context = load("context.toml")
    parts = sorted({*context["worked_on"].split(), *context["where"].split()})
    return json.dumps(packed | {"contraries": _contraries(traits["contraries"]), "parts": parts})


def _contraries(block: str) -> dict[str, list[str]]:
    """For each word those that say the contrary."""
    found: dict[str, list[str]] = {}
    for line in lines(block):
        for one, other in permutations([side.split() for side in line.split("|")], 2):
            for word in one:
                found.setdefault(word, []).extend(other)
    return found


def _heads(block: str) -> Iterator[tuple[str, str, str]]:
    """Name, shape and parents of each line of a block of families."""
    for line in lines(block):
        name, shape, parents = (part.strip() for part in line.split("|", 3)[:3])
        yield name, shape, parents


def _kinds(block: str) -> list[tuple[str, str, str, str]]:
    """One entry for each family of each line: family, attribute, default, values with their words."""
    found = []
    for line in lines(block):
        families, name, default, values = (part.strip() for part in line.split("|"))
        found += [(family, name, default, values) for family in families.split()]
    return found


def _said(block: str, spellings: dict[tuple[str, ...], str]) -> dict[tuple[str, str], tuple[tuple[str, str], ...]]:
    found: dict[tuple[str, str], tuple[tuple[str, str], ...]] = {}
    for family, name, _, values in _kinds(block):
        for entry in values.split():
            value, _, words = entry.partition("=")
            for word in words.split(","):
                key = (family, spellings.get((word,), word))
                found[key] = tuple(dict.fromkeys((*found.get(key, ()), (name, value))))
    return found


def _telling(block: str, spellings: dict[tuple[str, ...], str]) -> frozenset[tuple[str, str]]:
    pairs = ([part.split() for part in line.split("|")] for line in lines(block))
    return frozenset((name, spellings.get((w,), w)) for families, words in pairs for name in families for w in words)


def _parents(text: str) -> tuple[frozenset[str], frozenset[str]]:
    sure = frozenset(parent for parent in text.split() if "~" not in parent)
    return sure, frozenset(parent.strip("~") for parent in text.split() if "~" in parent)


@cache
def tables() -> Tables:
    """The tables, read on first use."""
    spellings = _spellings(load("words.toml"))
    longest = _longest(spellings)
    families, names = _unpacked(files.remember("families", lambda: _packed(spellings, longest)))
    traits = load("traits.toml")
    effects = _effects(traits["effects"])
    neutral = frozenset(traits["neutral"].split())
    in_names = {word for group in names.values() for name, _ in group for word in name}
    absorbed = {word for family in families.values() for word in family.absorbs}
    singles = {phrase[0] for phrase in spellings if len(phrase) == 1}
    specs = frozenset(traits["specs"].split())
    negations = frozenset(traits["negations"].split())
    kinds = _said(traits["kinds"], spellings)
    context = frozenset(traits["context"].split())
    known = singles | negations | in_names | absorbed | specs | set(effects) | neutral | set(spellings.values())
    known |= frozenset(traits["vehicles"].split())
    known |= context | {word for _, word in kinds}
    rules = dict(_rule(line) for line in lines(traits["rules"]))
    return Tables(
        spellings,
        longest,
        families,
        names,
        effects,
        rules,
        kinds,
        neutral,
        frozenset(traits["idle"].split()),
        negations,
        _lone(names),
        _telling(traits["telling"], spellings),
        specs,
        frozenset(traits["vehicles"].split()),
        frozenset(_contraries(traits["contraries"])),
        frozenset(traits["accessories"].split()),
        frozenset(traits["fittings"].split()),
        frozenset(traits["of_stuff"].split()),
        frozenset(known),
    )


def _spellings(words: dict[str, str]) -> dict[tuple[str, ...], str]:
    found: dict[tuple[str, ...], str] = {}
    for block in words.values():
        for line in lines(block):
            word, _, spelled = line.partition(":")
            found.setdefault((word.strip(),), word.strip())
            for spelling in spelled.split(","):
                if phrase := tuple(spelling.replace("-", " ").replace("/", " ").replace("'", "").split()):
                    found.setdefault(phrase, word.strip())
    for phrase, word in [entry for entry in found.items() if len(entry[0]) > 1]:
        found.setdefault(tuple(found.get((part,), part) for part in phrase), word)
    return found


def _longest(spellings: dict[tuple[str, ...], str]) -> dict[str, int]:
    """How many words the longest spelling has that begins with this word."""
    longest: dict[str, int] = {}
    for phrase in spellings:
        longest[phrase[0]] = max(longest.get(phrase[0], 1), len(phrase))
    return longest


_Names = dict[str, tuple[tuple[frozenset[str], str], ...]]


def _packed(spellings: dict[tuple[str, ...], str], longest: dict[str, int]) -> str:
    """The families and the index of their names as text: working them out takes 80 ms."""
    families, names = _families(load("families.toml"), spellings, longest)
    told = [[*family[:3], *map(sorted, family[3:])] for family in families.values()]
    return json.dumps([told, {word: [[sorted(name), one] for name, one in group] for word, group in names.items()}])


def _unpacked(text: str) -> tuple[dict[str, Family], _Names]:
    told, named = json.loads(text)
    families = {name: Family(name, kind, shape, *map(frozenset, words)) for name, kind, shape, *words in told}
    return families, {word: tuple((frozenset(name), one) for name, one in group) for word, group in named.items()}


def _families(
    file: dict[str, str], spellings: dict[tuple[str, ...], str], longest: dict[str, int]
) -> tuple[dict[str, Family], _Names]:
    def plain(words: str) -> frozenset[str]:
        return frozenset(spellings.get((word,), word) for word in words.split())

    families: dict[str, Family] = {}
    named: dict[frozenset[str], str] = {}
    for kind, block in (("tool", file["tools"]), ("consumable", file["consumables"])):
        for line in lines(block):
            name, shape, parents, names, absorbs = (part.strip() for part in line.split("|"))
            sure, perhaps = _parents(parents)
            families[name] = Family(name, kind, shape, sure, perhaps, plain(absorbs))
            for words in filter(str.strip, names.split(",")):
                named.setdefault(plain(words), name)
                named.setdefault(canonical(words, spellings, longest), name)
    for block in load("names.toml").values():
        for line in lines(block):
            told, more = _more_names(line, families, plain)
            families[told.name] = told
            named |= {words: told.name for words in (canonical(said, spellings, longest) for said in more) if words}
    return families, _by_rarest(list(named.items()))


def _more_names(
    line: str, families: dict[str, Family], plain: Callable[[str], frozenset[str]]
) -> tuple[Family, list[str]]:
    """A line of names.toml: a family, new or with more names and more that goes without saying."""
    name, shape, parents, names, absorbs = (part.strip() for part in line.split("|"))
    sure, perhaps = _parents(parents)
    before = families.get(name) or Family(name, "tool", shape, sure, perhaps, frozenset())
    return before._replace(absorbs=before.absorbs | plain(absorbs)), [said for said in names.split(",") if said.strip()]


def canonical(text: str, spellings: dict[tuple[str, ...], str], longest: dict[str, int]) -> frozenset[str]:
    """The words of the tables that a name in plain writing is made of; longer spellings first, as in a text."""
    texts = text.replace("-", " ").replace("/", " ").replace("'", "").split()
    singles = [spellings.get((word,), word) for word in texts]
    found, place = set(), 0
    while place < len(texts):
        most = max(longest.get(texts[place], 1), longest.get(singles[place], 1))
        for length in range(min(most, len(texts) - place), 0, -1):
            word = spellings.get(tuple(texts[place : place + length])) or (
                spellings.get(tuple(singles[place : place + length])) if length > 1 else ""
            )
            if word:
                break
        found.add(word or texts[place])
        place += length if word else 1
    return frozenset(found)


def _lone(names: _Names) -> dict[str, str]:
    return {next(iter(name)): family for group in names.values() for name, family in group if len(name) == 1}


def _by_rarest(named: list[tuple[frozenset[str], str]]) -> _Names:
    counts: dict[str, int] = {}
    for words, _ in named:
        for word in words:
            counts[word] = counts.get(word, 0) + 1
    index: dict[str, list[tuple[frozenset[str], str]]] = {}
    for words, name in named:
        index.setdefault(min(words, key=lambda word: (counts[word], word)), []).append((words, name))
    return {word: tuple(group) for word, group in index.items()}


def _effects(block: str) -> dict[str, tuple[str, str]]:
    found: dict[str, tuple[str, str]] = {}
    for line in lines(block):
        word, effect = (part.strip() for part in line.split("|"))
        name, _, value = effect.partition("=")
        found[word] = ("+", effect[1:]) if effect.startswith("+") else (name, value)
    return found


def _rule(line: str) -> tuple[str, Rule]:
    name, silent, unasked = (part.strip() for part in line.split("|"))
    default = silent[1:] if silent.startswith("=") else ""
    return name, Rule("none" if default else silent, default, unasked)
