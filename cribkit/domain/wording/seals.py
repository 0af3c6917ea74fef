"""The numbers of rings, seals and washers: inside, outside, section, hardness."""

from __future__ import annotations

import re
from collections.abc import Callable

from cribkit.domain.wording.lexer import Token
from cribkit.domain.wording.measure import number
from cribkit.domain.wording.reading import Reading
from cribkit.domain.wording.sizes import Length


def two_ends(first: str, second: str, third: str = "") -> Callable[[Reading], None]:
    """Measures in a row, such as inside x outside x thickness; words like ID and OD beside a number rule."""

    def read(reading: Reading) -> None:
        _named_measures(reading, first, second)
        if token := reading.take("thread"):
            across, pitch, far = token.values
            reading.set(first, f"{across.removeprefix('M')} mm")
            for key, given in ((second, pitch or far), (third, far if pitch else "")):
                if key and given:
                    reading.set(key, f"{given} mm")
        for group in reading.numbers():
            lengths = group.lengths()
            names = [name for name in (first, second, third) if name and name not in reading.attributes]
            if group.relation != "range" and (
                group.tokens[0].unit or len(lengths) > 1 or "/" in group.tokens[0].text or "." in group.tokens[0].text
            ):
                if len(lengths) > 1 and lengths[0].text == reading.attributes.get(first):
                    lengths = lengths[1:]
                for name, length in zip(names, lengths, strict=False):
                    reading.set(name, length.text)
                group.use()

    return read


_BESIDE = {
    "id": 0,
    "i/d": 0,
    "inside": 0,
    "inner": 0,
    "bore": 0,
    "od": 1,
    "o/d": 1,
    "outer": 1,
    "outside": 1,
    "cs": 1,
    "section": 1,
    "cord": 1,
    "c/s": 1,
    "thick": 2,
    "thk": 2,
    "thickness": 2,
    "wide": 1,
}


_OUTSIDE = frozenset({"od", "o/d", "outer", "outside"})


def _named_measures(reading: Reading, first: str, second: str) -> None:
    leads, spoken = _words_lead(reading.tokens), set()
    for place, token in enumerate(reading.tokens):
        if token.kind != "num" or token.used:
            continue
        near = [other for other in reading.tokens[max(place - 1, 0) : place + 2] if other.kind == "word"]
        beside = [other.text for other in near if id(other) not in spoken]
        after = reading.tokens[place + 1].text if place + 1 < len(reading.tokens) and not leads else ""
        word = after if after in _BESIDE else next((text for text in beside if text in _BESIDE), "")
        if word:
            spoken |= {id(other) for other in near if other.text == word}
            name = (first, second, "thickness")[_BESIDE[word]]
            if reading.family == "o-ring":  # told by its section; the outside may stand there too
                name = "dims" if word in _OUTSIDE else second if name == "thickness" else name
            token.used = True
            reading.pass_by(word, "x")
            inches = "/" in token.text or (token.text.isdigit() and int(token.text) <= 2 and _in_fractions(reading))
            unit = token.unit or ("in" if inches else "mm")
            reading.set(name, Length(number(token.values[0].replace("-", " ")), unit).text)
            reading.use(word, "internal", "external")


def _words_lead(tokens: list[Token]) -> bool:
    """Whether the words stand before their numbers: ID 20 CS 2."""
    told = [token.text in _BESIDE for token in tokens if token.kind == "num" or token.text in _BESIDE]
    if told[:4] == [True, False, True, False]:
        return True
    told = told[told.index(True) :] if True in told else []
    return len(told) > 3 and not told[-1] and told[::2] == [True] * len(told[::2]) and not any(told[1::2])


def _in_fractions(reading: Reading) -> bool:
    """Whether other measures are in fractions of an inch, so that a bare 1 is an inch."""
    return any(token.kind == "num" and "/" in token.text for token in reading.tokens)


_DASH = re.compile(r"(?:^|[ (])(?:dash ?|- ?)(\d{1,3})\b(?! ?(?:mm|in\b|deg|\d))")


# Hardness in Shore A (ISO 48-4): NBR 70, 70 shore, 90 durometer. From memory.
_SHORE = re.compile(
    r"\b([4-9][05]) ?(?:shore|durometer|duro|sh|irhd)(?: ?a)?\b|\b(?:shore|durometer|duro|irhd)(?: a)?,? ?([4-9][05])\b"
)


def hardness(reading: Reading) -> None:
    """How hard a rubber is."""
    if found := _SHORE.search(reading.plain):
        degrees = found[1] or found[2]
        reading.set("hardness", degrees)
        reading.spend(degrees)
        for said in reading.words:
            if said.text in ("shore", "duro", "durometer", "sh", "irhd", "a"):
                said.used, said.how, said.became = True, "attribute", f"hardness {degrees}"


# Rubber by the metre, of which rings are made.
_CORD = re.compile(r"\bo[- ]?ring cord\b|\bcord,? o[- ]?ring\b|\brubber cord\b|\bcord\b.*\bper met")


def oring(reading: Reading) -> None:
    """Inside x section; a dash size of those for bosses."""
    if found := _DASH.search(reading.plain):
        reading.set("dash_size", found[1])
        for token in reading.tokens:
            token.used = token.used or (token.kind == "num" and token.values[0] == found[1] and not token.unit)
    if _CORD.search(reading.plain):
        reading.set("form_of", "cord")
    reading.use("section", "cross")
    for group in reading.numbers():
        if group.relation == "by" and len(group.tokens) == 3:  # inside x outside x section
            lengths = group.lengths()
            group.use()
            reading.set("inner", lengths[0].text)
            reading.set("section_mm", lengths[-1].text)
            reading.set("dims", lengths[1].text)
    for group in reading.numbers():
        if group.relation == "by" and len(group.tokens) == 2:
            inside, outside = group.lengths()
            if outside.mm > inside.mm:  # no section is so thick
                group.use()
                reading.set("inner", inside.text)
                reading.set("dims", outside.text)
    if numbered := reading.take("numbered"):
        reading.set("dash_size", numbered.values[0])  # of those of air conditioning
    two_ends("inner", "section_mm")(reading)
