"""The words of a text as words of the tables: spellings, slips, cut words, and what is said only by the way."""

from __future__ import annotations

import re
from functools import cache

from cribkit.domain.wording import shapes
from cribkit.domain.wording.abbreviation import expanded, senses, slipped
from cribkit.domain.wording.lexer import Token
from cribkit.domain.wording.reading import THAT, WITH, Reading, Said
from cribkit.domain.wording.remarks import set_apart
from cribkit.domain.wording.tables import Family, listed, tables


def name_words(reading: Reading) -> None:
    """Phrases of the text to words of the tables; what stays unknown is corrected or left unread."""
    run: list[Token] = []
    for token in [*reading.tokens, Token("end", "")]:
        if token.kind == "word" and not (token.text == "x" and run == []):
            run.append(token)
        elif token.kind in ("dash", "slash") or token.text in (".", "'", ","):
            continue
        else:
            _name_run(reading, run)
            run = []
    _expand(reading)
    _external(reading)
    _asides(reading)
    _ball_end(reading)
    set_apart(reading)


# What a ball end is on, and what a ball is in another sense.
_BALL_ENDED = frozenset({"insidehex", "wrenchkey", "key"})
_OTHER_BALL = frozenset({"joint", "hammer", "stud", "valve", "bearing", "retainer", "detent", "pein", "hone"})


def _ball_end(reading: Reading) -> None:
    """ "L KEY BALL 6MM", "T HANDLE HEX 6MM BALL": of a key for hexagons the ball is its end."""
    said = {one.word for one in reading.beside()}
    keyed = said & _BALL_ENDED or said >= {"hex", "tbar"} or said >= {"hex", "screwdriver"}
    if keyed and not said & _OTHER_BALL:
        for one in reading.beside():
            if one.word == "ball":
                one.word = "ballend"


def _expand(reading: Reading) -> None:
    """Words cut short, told by the others."""
    others = frozenset(reading.said() | reading.hints)
    for said in reading.words:
        if (said.how == "unread" and not said.negated and (word := expanded(said.text, others))) or (
            said.how == "unread" and not said.negated and (word := slipped(said.text, others))
        ):
            said.word, said.how = word, "corrected"


def expand_in(reading: Reading, family: Family) -> None:
    """Words cut short that may stand for several are told by what is said of the family at all."""
    known = tables()
    for said in reading.words:
        if said.how != "unread" or said.negated:
            continue
        fits = {
            word
            for word in senses(said.text)
            if word in family.absorbs
            or (family.name, word) in known.kinds
            or (word in known.effects and shapes.may_say(family, known.effects[word][0]))
        }
        if len(fits) == 1:
            said.word, said.how = fits.pop(), "corrected"


# What follows says what a thing comes with or is used on, up to the next stop.
_ASIDE = frozenset(
    {"with", "w", "for", "incl", "including", "includes", "c/w", "complete", "suits", "fits", "on", "from"}
)


# What a thing is mounted on is no part of it.
_MOUNTS = frozenset({"stand", "base", "magnetic", "tripod", "arm"})
# "hex to square" is an adapter, "to chase the thread" a purpose.
_ENDS = frozenset(
    {
        "square",
        "sq",
        "hex",
        "hexagon",
        "drive",
        "dr",
        "male",
        "female",
        "suit",
        "fit",
        "yield",
        "jaso",
        "acea",
        "api",
        "sae",
        "din",
        "iso",
        "spec",
        "standard",
    }
)


def _purpose(tokens: list[Token], place: int) -> bool:
    """Whether "to" stands here before what the thing is for."""
    after = tokens[place + 1] if place + 1 < len(tokens) else None
    return tokens[place].text == "to" and after is not None and after.kind == "word" and after.text not in _ENDS


# What a thing takes is no part of it.
_TAKES = frozenset({"takes", "accepts", "holds"})
_BESIDES = WITH | THAT


def _clause(tokens: list[Token], place: int) -> bool:
    """Whether a clause about the use begins at this place."""
    after = tokens[place + 1].text if place + 1 < len(tokens) else ""
    return tokens[place].text in listed("begins") or after in listed(f"after_{tokens[place].text}")


def _relative(tokens: list[Token], place: int) -> bool:
    """Whether a clause begins here that tells of the thing ("that bends"), not of its use ("that fits the Tern")."""
    if tokens[place].text not in THAT:
        return False
    after = [token.text for token in tokens[place + 1 : place + 4] if token.kind == "word"]
    if {"itself", "themselves"} & set(after):
        return True
    verb = next((word for word in after if word not in listed("auxiliary")), "")
    return verb not in listed("of_use")


def _asides(reading: Reading) -> None:
    """Mark the words after "with" and "for"."""
    at = {id(token): said for said in reading.words for token in said.tokens}
    aside, before = "", ""
    sized = stopped = taken = bracket = denied = False
    for place, token in enumerate(reading.tokens):
        sized = sized or (not stopped and token.kind in ("num", "tip"))
        if token.kind == "stop":
            aside, stopped, denied = "", True, False
            bracket = token.text in "([" or (bracket and token.text not in ")]")
        elif said := at.get(id(token)):
            said.after_stop = stopped and sized
            said.bracketed = bracket
            if said.word == "torquewrench" and _driven(reading.words, said):
                aside = "for"
            if aside in THAT and said.text in listed("within_it"):
                pass  # still the same clause
            elif place > 0 and (
                said.text in _ASIDE or _clause(reading.tokens, place) or _purpose(reading.tokens, place)
            ):
                aside = said.text if said.text in _ASIDE or _relative(reading.tokens, place) else "for"
            denied = denied or (said.text == "for" and before in tables().negations)
            said.negated = said.negated or (denied and said.text != "for")  # not for ABS sensors
            before = said.word
            said.aside = aside != ""
            said.worked_on = aside == "on"
            taken = aside != "" and (taken or said.text in _TAKES)
            said.taken = taken
            said.besides = aside in _BESIDES or said.taken or (aside == "on" and said.word in _MOUNTS)


# What a torque wrench turns: named after one of these and its size, the wrench is what it is used with.
_DRIVEN = frozenset({"socket", "bit", "crowfoot", "extension", "adapter", "ujoint", "insidehex", "sixlobe"})


def _driven(words: list[Said], wrench: Said) -> bool:
    """Whether a torque wrench is named after a comma, beside the socket that it turns."""
    before = words[: next(place for place, said in enumerate(words) if said is wrench)]
    return any(said.word in _DRIVEN for said in before) and wrench.after_stop


def _external(reading: Reading) -> None:
    """ "EXT" beside a six-lobe or a circlip is external, not an extension."""
    codes = any(token.kind in ("tip", "tips") and token.values[0] in ("e", "txe") for token in reading.tokens)
    if codes or reading.has("sixlobe", "circlip", "springwasher", "shakeproof", "star", "tooth"):
        for said in reading.words:
            if said.word == "extension" and said.text == "ext":
                said.word = "external"


def _name_run(reading: Reading, run: list[Token]) -> None:
    known = tables()
    place = 0
    texts = [plain(token.text) for token in run]
    texts = [
        text if text in known.known or text in known.longest else _beside(texts, at) or text
        for at, text in enumerate(texts)
    ]
    singles = [known.spellings.get((text,), text) for text in texts]
    while place < len(run):
        length = 1
        most = max(known.longest.get(texts[place], 1), known.longest.get(singles[place], 1))
        for length in range(min(most, len(run) - place), 0, -1):
            if found := known.spellings.get(tuple(texts[place : place + length])):
                break
            if length > 1 and (found := known.spellings.get(tuple(singles[place : place + length]))):
                break
        else:
            found = texts[place] if texts[place] in known.known else ""
            length = 1
        written = " ".join(token.text for token in run[place : place + length])
        if not found:
            found, how = correct(texts[place]), "corrected"
        else:
            how = "known"
        before = texts[place - 1] if place else ""
        if before in _ARTICLES and place > 1 and texts[place - 2] in known.negations:
            before = texts[place - 2]  # not a screwdriver
        denied = before in known.negations and texts[place] not in _ARTICLES and texts[place] != "for"
        if denied and not found and (whole := _denied(texts[place])):
            found, how = whole, "corrected"
            denied = False
        negated = denied and found not in known.negations
        reading.add(found, written, how if found else "unread", run[place : place + length], negated=negated)
        place += length


_ARTICLES = frozenset({"a", "an", "the"})


def _denied(text: str) -> str:
    """ "NON-CHLR": the word for the contrary of what a cut word stands for, "" where there is none."""
    sense = expanded(text, frozenset())
    return f"non{sense}" if sense and f"non{sense}" in tables().known else ""


@cache
def plain(word: str) -> str:
    """A word without its plural, if only the singular is known."""
    known = tables()
    word = word.replace("'", "")
    if word in known.known or word in known.longest:
        return word
    for ending, instead in (("ies", "y"), ("es", ""), ("s", "")):
        single = word[: -len(ending)] + instead
        if word.endswith(ending) and len(single) > 2 and (single in known.known or single in known.longest):
            return single
    return word


@cache
def _targets() -> tuple[list[str], dict[str, str]]:
    known = tables()
    words = sorted({word for word in known.known if len(word) >= 5 and word.isalpha()})
    phrase_words = {word for phrase in known.spellings for word in phrase if len(word) >= 5 and word.isalpha()}
    return sorted({*words, *phrase_words}), {}


# What a correction must never turn one into the other.
_OPPOSITE = re.compile(r"^(?:non|un|de|anti|in|im|dis)")


def _beside(texts: list[str], place: int) -> str:
    """A word that may be a slip of several, told by its neighbour: "sprak plug" is a spark plug, no spray."""
    known, word = tables(), texts[place]
    if len(word) < 5 or not word.isalpha():
        return ""
    found = set()
    for sense, _, hit in _near(word):
        before, after = texts[place - 1 : place], texts[place + 1 : place + 2]
        pairs = [(*before, hit)] * bool(before) + [(hit, *after)] * bool(after)
        found |= {sense for pair in pairs if pair in known.spellings}
    return found.pop() if len(found) == 1 else ""


@cache
def correct(word: str) -> str:
    """The known word that an unknown one is a typing error of, or "".

    Only words of five letters or more, one slip (two from eight letters on), never by dropping or adding a prefix that
    turns the meaning round, and never where two different words are equally near.
    """
    if scanned := _rescanned(word):
        return scanned
    if len(word) < 5 or not word.isalpha():
        return ""
    near = _near(word)
    nearest = [entry for entry in near if entry[1] == near[0][1]]
    if len({sense for sense, _, _ in nearest}) > 1:  # a hurried hand gets the first letter right
        nearest = [entry for entry in nearest if entry[2][0] == word[0]]
    return nearest[0][0] if len({sense for sense, _, _ in nearest}) == 1 else ""


@cache
def _near(word: str) -> list[tuple[str, float, str]]:
    """The known words that this may be a slip of: what each means, how many slips, the word itself."""
    from rapidfuzz import process  # imported here: start-up counts
    from rapidfuzz.distance import OSA

    slips = 1 if len(word) < 8 else 2
    found = process.extract(word, _targets()[0], scorer=OSA.distance, score_cutoff=slips, limit=4)
    known = tables()
    return [(known.spellings.get((hit,), hit), distance, hit) for hit, distance, _ in found if _same_sense(word, hit)]


# Letters that a scanner takes for each other.
_ALIKE = (("l", "i"), ("i", "l"), ("rn", "m"), ("m", "rn"), ("vv", "w"), ("cl", "d"), ("ii", "u"), ("0", "o"))


_VOWEL = frozenset("aeiouy")


def _rescanned(word: str) -> str:
    """The one known word that this is when a letter was taken for one that looks like it: hlgh is high."""
    if len(word) < 3 or not word.isalpha():
        return ""
    known = tables()
    found = set()
    for wrong, right in _ALIKE if len(word) > 3 else _ALIKE[:2]:
        for at in range(len(word)):
            if word.startswith(wrong, at):
                other = word[:at] + right + word[at + len(wrong) :]
                if len(word) > 4 and _VOWEL.isdisjoint(other):
                    continue  # plirs is a slip of pliers, no scan of an abbreviation
                if other in known.known and _same_sense(word, other):
                    found.add(known.spellings.get((other,), other))
    return found.pop() if len(found) == 1 else ""


def _same_sense(word: str, hit: str) -> bool:
    before, after = _OPPOSITE.match(word), _OPPOSITE.match(hit)
    if hit in _CONTRARY:
        return False
    if after and not before and hit[after.end() :] not in tables().known:
        return True  # the antiseize of which there is no "seize"
    one, other = (found[0] if found else "" for found in (before, after))
    return one == other or (one, other) == ("in", "im")  # inpact


# Words that differ by a letter or two from their opposite: written out or not at all.
_CONTRARY = frozenset({"chlorinated", "nonchlorinated", "flammable", "nonflammable", "inflammable"})
