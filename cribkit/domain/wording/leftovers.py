"""What was not read, or has no family: the words of a need beside those of an item."""

from __future__ import annotations

import re

from cribkit.domain.wording.meaning import NONE, Judgement, Meaning
from cribkit.domain.wording.tables import kin, listed, tables


def unread_doubts(need: Meaning, item: Meaning) -> list[str] | None:
    """Words that were not used: agreed where both sides have them, a doubt where they could matter.

    A word that alone names another thing ("gasket" beside an oil) makes it another thing: None.
    """
    asked, has = set(need.unread), set(item.unread)
    if (asked ^ has) & (strays(need) | strays(item)):
        return None
    spoken = {
        part
        for word in item.words
        if word.how != "denied"
        for part in (word.text, word.became, *(word.text.split(" ") if word.became.startswith("~") else ()))
    } | {part for _, value in item.attributes for part in value.lower().split(" ")}
    free_of_it = need.kind == item.kind == "tool" and not _MUST_NOT.search(need.text)
    doubts = [
        f"could not read {word!r} of the need"
        for word in need.unread
        if word not in has and not (free_of_it and _denies_another(word, spoken))
    ]
    told = spoken | kin().unspoken | set(dict(need.attributes).get("finer", "").split())
    if need.family in _WITHOUT_HANDLE:
        told -= {"handle"} - spoken
    doubts += [
        f"whether it has {word.became!r} is not stated"
        for word in need.words
        if word.how == "beside" and word.became not in told
    ]
    doubts += [
        f"it says {word.became!r}, which is not wanted"
        for word in need.words
        if word.how == "denied" and word.became in spoken - kin().unspoken
    ]
    named = {part for word in need.words for part in (word.text, word.became)}
    more = {word for word in has - asked if matters(word) and not _denies_another(word, named)}
    if more and need.family == item.family:
        more -= _afterthoughts(item)
    doubts += [f"could not read {word!r} of the item" for word in item.unread if word in more]
    return doubts


# "That makes no sparks" asks for something, "without a case" hardly does.
_MUST_NOT = re.compile(r"\b(?:that|which)\b[^,;]*\b(?:no|not|never|without|\w+n't)\b", re.IGNORECASE)
# Asked for with a handle, the plain one is not meant: common practice, no source.
_WITHOUT_HANDLE = frozenset({"key", "bit", "chain-wrench", "tap", "file", "saw-blade"})


def _denies_another(word: str, named: set[str]) -> bool:
    """Whether an item only denies what the need does not speak of: "not for ABS sensors"."""
    denied = word.removeprefix("non-")
    unknown = denied in _KNOWN_BY_NOBODY  # "(ends not noted)": nobody has looked
    return denied != word and denied not in named and denied.removesuffix("s") not in named and not unknown


_KNOWN_BY_NOBODY = frozenset(
    {"noted", "marked", "known", "stated", "seen", "clear", "sure", "legible", "readable", "checked", "tested"}
    | {"verified", "confirmed", "recorded", "certain", "told", "given", "measured"}
)


def _afterthoughts(item: Meaning) -> frozenset[str]:
    """Words known of nothing that only add to a thing named before the first comma: "strap wrench, nylon web".

    What the item says beyond the need is free. Where the noun alone comes first ("JACK, DOLLIED"), nothing is.
    """
    name, _, rest = item.text.lower().partition(",")
    words = set(_WORDS.findall(rest))
    if " " not in name.strip() or words & _DENIALS:
        return frozenset()
    strange = {said.text for said in item.words if said.how == "unread" and not said.became}
    return frozenset(word for word in item.unread if word in (words & strange) - listed("unfit"))


_WORDS = re.compile(r"[a-z]+")
# An item that denies or doubts something is not read over.
_DENIALS = frozenset(
    {"not", "no", "non", "without", "never", "unknown", "unsure", "unmarked", "missing", "only", "except"}
)


def strays(meaning: Meaning) -> frozenset[str]:
    """Words that alone name another thing than the one that was read."""
    return frozenset(word.text for word in meaning.words if word.how == "stray")


def matters(word: str) -> bool:
    """Whether an unread word of an item could change what it is; a long code is a catalogue number and does not."""
    letters = sum(char.isalpha() for char in word)
    digits = sum(char.isdigit() for char in word)
    code = letters and digits and len(word) >= 6 and not {"/", " "} & set(word)
    return not code or bool(_MEASURE.fullmatch(word))


# A figure with its unit: "12.5mm", "1500rpm".
_MEASURE = re.compile(r"[\d.,-]+[a-z]{1,4}")


def unnamed(need: Meaning, item: Meaning) -> Judgement:
    """Texts whose family could not be read: the same words are the same thing, more words are a doubt."""
    if need.family or item.family:
        return NONE
    asked, has = wordy(need), wordy(item)
    if not figures(need) <= figures(item):
        return NONE
    if not asked or not asked <= has or not set(need.attributes) <= set(item.attributes) or need.traits - item.traits:
        return NONE
    if besides := _besides(need) - _besides(item):  # of a thing that nobody knows any word may tell which it is
        return Judgement("review", 40.0, "nearly the same words", weakness=f"{', '.join(sorted(besides))} not stated")
    if more := _besides(item) - _besides(need):  # the nozzle of an air gun
        return Judgement(
            "review", 40.0, "nearly the same words", weakness=f"the item also says {', '.join(sorted(more))}"
        )
    if asked == has:
        return Judgement("match", 80.0, "the same words")
    extra = ", ".join(sorted(has - asked))
    return Judgement("review", 40.0, "the same words and more", weakness=f"the item also says {extra}")


def _besides(meaning: Meaning) -> frozenset[str]:
    """The longer words that say nothing where the family is known: "wall" of a plug, but no packing."""
    known = tables()
    words = {part for word in meaning.words if word.how != "size" for part in word.text.split()}
    return frozenset(word for word in words & known.neutral if len(word) > 3 and word not in listed("idle"))


def figures(meaning: Meaning) -> frozenset[str]:
    """What was not read and has digits in it."""
    return frozenset("".join(word.split()) for word in meaning.unread if any(char.isdigit() for char in word))


def wordy(meaning: Meaning) -> frozenset[str]:
    """The words of a text without a family that must be the same: all that say something, no ratings."""
    known = tables()
    plain = (known.spellings.get((word.text,), word.text) for word in meaning.words if word.how != "size")
    return frozenset(part for word in plain for part in word.split() if part.isalpha() and part not in known.neutral)
