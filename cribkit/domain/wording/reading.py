"""The state of one reading: tokens, words, and what has been made of them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from cribkit.domain.wording.agree import PLASTICS
from cribkit.domain.wording.lexer import Token
from cribkit.domain.wording.meaning import Meaning, Word
from cribkit.domain.wording.sizes import Group, groups
from cribkit.domain.wording.tables import listed, tables


@dataclass(slots=True)
class Said:
    """A word of the text as a word of the tables."""

    word: str
    text: str
    how: str
    tokens: list[Token]
    negated: bool = False
    bracketed: bool = False  # in brackets: a remark
    aside: bool = False  # after "with" or "for": what it comes with or is used on
    besides: bool = False  # after "with": no part of the thing itself
    worked_on: bool = False  # after "on"
    remark: bool = False  # behind a whole name: what it is used on
    taken: bool = False  # after "takes": what it is used with
    after_stop: bool = False  # a comma stands before it
    used: bool = False
    became: str = ""


@dataclass(slots=True)
class Reading:
    """Everything known so far about a text."""

    text: str
    tokens: list[Token]
    words: list[Said] = field(default_factory=list)
    plain: str = ""  # the text as the patterns leave it: one way of writing
    kind: str = ""
    family: str = ""
    name: frozenset[str] = frozenset()
    attributes: dict[str, str] = field(default_factory=dict)
    traits: set[str] = field(default_factory=set)
    hints: set[str] = field(default_factory=set)  # words that codes imply: T30 says sixlobe
    doubts: list[str] = field(default_factory=list)
    finer: set[str] = field(default_factory=set)  # words of the name's surroundings that tell things apart

    def add(self, word: str, text: str, how: str, tokens: list[Token], negated: bool = False) -> None:
        """Note a word; its place among the tokens is kept for the numbers beside it."""
        tokens[0].text = word if word == "drive" else tokens[0].text
        self.words.append(Said(word or text, text, how, list(tokens), negated))

    def said(self) -> set[str]:
        """The words that really stand there."""
        return {said.word for said in self.words if said.how != "unread" and not said.negated and not said.used}

    def beside(self) -> list[Said]:
        """What is read and stands beside the name: not after "with" and "for", and not denied."""
        return [said for said in self.words if said.how != "unread" and not said.negated and not said.aside]

    def main(self) -> set[str]:
        """The words before "with" and "for"."""
        said = self.beside()
        plain, bare = {one.word for one in said}, {one.word for one in said if not one.bracketed}
        return bare if any(word in tables().names for word in bare) else plain

    def vocabulary(self) -> set[str]:
        """The words that stand there and those that codes imply."""
        return self.said() | self.hints

    def head(self) -> str:
        """The word that an English name turns on: the last name before the first comma."""
        names = [said.word for said in self.first_part() if said.word in tables().names_of]
        return names[-1] if names else ""

    def first_part(self) -> list[Said]:
        """The words before the first comma."""
        stop = next((place for place, token in enumerate(self.tokens) if token.kind == "stop"), len(self.tokens))
        before = {id(token) for token in self.tokens[:stop]}
        return [said for said in self.words if id(said.tokens[0]) in before]

    def place_of(self, token: Token) -> int:
        """Where a token stands."""
        return next(place for place, one in enumerate(self.tokens) if one is token)

    def has(self, *words: str) -> bool:
        """Whether one of these words stands in the text or is implied."""
        return bool(self.vocabulary() & set(words))

    def spend(self, figure: str) -> None:
        """The numbers written so are used."""
        for token in self.tokens:
            token.used = token.used or token.text.strip() == figure

    def pass_by(self, *texts: str) -> None:
        """Words written so say nothing more: a number beside them has been read."""
        for said in self.words:
            if said.text in texts:
                said.used, said.how = True, "known"

    def has_said(self, *words: str) -> bool:
        """Whether one of these words stands in the text, also after "with" and "for", and is not denied."""
        return any(said.word in words and not said.negated for said in self.words)

    def use(self, *words: str) -> None:
        """These words have been read."""
        for said in self.words:
            if said.word in words and not said.used and not said.negated:
                said.used = True

    def take(self, kind: str) -> Token | None:
        """The first unused token of a kind, now used."""
        for token in self.tokens:
            if token.kind == kind and not token.used:
                token.used = True
                return token
        return None

    def numbers(self) -> list[Group]:
        """The unused numbers."""
        return groups(self.tokens)

    def set(self, name: str, value: str) -> None:
        """State an attribute; a second, different value is a doubt. "Short stubby" is stubby."""
        if name in SEVERAL and name in self.attributes:
            self.attributes[name] = " ".join(sorted({value, *self.attributes[name].split()}))
            return
        if name == "length_class" and {value, self.attributes.get(name)} == {"short", "stubby"}:
            self.attributes[name] = "stubby"
            return
        if name == "material" and "plastic" in (value, self.attributes.get(name)):
            given = {value, self.attributes.get(name, value)} - {"plastic"}
            if given and given <= PLASTICS:  # nylon is a plastic
                self.attributes[name] = given.pop()
                return
        if self.attributes.setdefault(name, value) != value:
            self.doubts.append(f"{name} {value}")

    def decide(self, name: str, value: str = "") -> None:
        """What was said of an attribute in several ways is no doubt; it has this value, or none."""
        self.doubts = [doubt for doubt in self.doubts if not doubt.startswith(f"{name} ")]
        self.attributes.pop(name, None)
        if value:
            self.attributes[name] = value

    def effect(self, effect: tuple[str, str], said: Said) -> None:
        """What a word of the trait table says."""
        name, value = effect
        said.used = True
        if name == "+":
            self.traits.add(value)
            said.became = value
        elif name != "~":
            self.set(name, value)
            said.became = f"{name} {value}"

    def meaning(self, kind: str) -> Meaning:
        """The finished meaning."""
        left = [token.text.strip() for token in self.tokens if not token.used and token.kind in LOUD]
        unread = [said.text if not said.negated else f"non-{said.text}" for said in self.words if said.how == "unread"]
        if self.finer:
            self.attributes["finer"] = " ".join(sorted(self.finer))
        return Meaning(
            text=self.text,
            kind=self.kind or kind,
            family=self.family,
            attributes=tuple(sorted(self.attributes.items())),
            traits=frozenset(self.traits),
            unread=tuple(dict.fromkeys([*unread, *left, *self.doubts])),
            words=self.account(),
        )

    def account(self) -> tuple[Word, ...]:
        """Each word and number of the text and what it became, in the order of the text."""
        of = {id(token): said for said in self.words for token in said.tokens[:1]}
        inner = {id(token) for said in self.words for token in said.tokens[1:]}
        found = []
        beside = _beside(self, of)
        for token in self.tokens:
            if said := of.get(id(token)):
                strange = said.how == "unread" and said.word not in tables().known
                became = said.became or ("" if strange else said.word)
                named = tables().names_of.get(said.text, self.family) if said.how == "unread" else self.family
                how = "stray" if named != self.family else said.how
                aside = (
                    how in ("known", "corrected", "context") and (said.aside or said.worked_on) and became == said.word
                )
                how = ("beside" if id(said) in beside else "context") if aside else how
                how = "denied" if said.negated and said.how == "known" and became == said.word else how
                found.append(Word(said.text, became, how))
            elif id(token) not in inner and token.kind not in QUIET:
                found.append(
                    Word(token.text.strip(), "" if not token.used else "read", "size" if token.used else "unread")
                )
        return tuple(found)


def _beside(reading: Reading, of: Mapping[int, Said]) -> set[int]:
    """The words after "with" of which nothing was made: what a thing is to have and a label may not tell."""
    found: set[int] = set()
    group: list[int] = []
    told, before, clause = True, "", False  # whether something of this group says more of the thing
    opens = WITH | THAT | listed("leads")
    for token in reading.tokens:
        said = of.get(id(token))
        within = clause and said is not None and said.text in listed("within_it")
        if token.kind == "stop" or (said is not None and not within and said.text in opens):
            found.update([] if told else group)
            clause = said is not None and said.text in THAT and said.besides
            with_it = clause or (said is not None and said.text in WITH)
            group, told = [], before in _USED or not with_it
        elif said is not None and said.besides and not (said.taken or said.worked_on or _said_more(reading, said)):
            if not _absorbed(reading, said):
                group.append(id(said))
        else:
            told = told or (token.used and not group) or (said is not None and _said_more(reading, said))
        before = token.text
    return found.union([] if told else group)


def _absorbed(reading: Reading, said: Said) -> bool:
    """Whether a word only rounds off what the word before it says: a ratchet ring, a magnetic stand."""
    family = tables().families.get(reading.family)
    return family is not None and said.word in family.absorbs and said.word in listed("rounds_off")


def _said_more(reading: Reading, said: Said) -> bool:
    """Whether something was made of a word: a part of the name, an attribute, a trait."""
    name, value = tables().effects.get(said.word, ("~", ""))
    if name == "+" and value in reading.family:
        return True  # a swivel socket with universal joint
    told = said.used and (value in reading.traits if name == "+" else reading.attributes.get(name) == value)
    return said.how in ("name", "attribute") or said.became not in ("", said.word) or told


# "Struck with a hammer", "for work with brake fluid": that is no part of the thing.
_USED = frozenset({"hit", "struck", "strike", "work", "use", "used", "works", "goes", "go", "compatible", "worked"})
THAT = frozenset({"that", "which"})
WITH = frozenset({"with", "w", "c/w", "incl", "including", "includes", "complete"})
# Attributes of which a thing may have several values at once.
SEVERAL = frozenset({"crimps", "jaw_at", "reads", "stamps", "jaws", "faces"})

# Tokens that may stand unread without a doubt, and those that may not.
QUIET = frozenset({"stop", "dash", "by", "slash", "sign", "word", "end"})
LOUD = frozenset(
    [
        "torque",
        "visc",
        "gl",
        "nlgi",
        "dot",
        "thread",
        "unc",
        "tip",
        "tip2",
        "numbered",
        "points",
        "teeth",
        "grit",
        "bolt_grade",
        "ton",
        "pressure",
        "power",
        "temp",
        "deg",
        "percent",
        "num",
        "mixed",
        "mass",
        "volume",
    ]
)
