"""What goes with a thing: "screwdriver rack" and "RACK, SCREWDRIVER" are no screwdrivers."""

from __future__ import annotations

import re

from cribkit.domain.wording.reading import Reading, Said
from cribkit.domain.wording.tables import FLUIDS, Family, tables

# Shapes of what is poured, spread, worn or wiped with.
_STUFF = FLUIDS | {"glove", "wipe"}
# Where one of these words stands, a pump belongs to the pack.
_PACKED = frozenset({"pack", "action", "spray", "can", "bottle"})
# What stuff comes in.
_PACKS = frozenset({"box", "case", "pouch", "refill", "refills"})
# A spare part, wherever it stands: lamp battery spare.
_PART = r"(face|battery|hose|lead|blade|handle|jaw|leg|tip|head|bulb|pad|cartridge|seal)s?"
_SPARE = re.compile(rf"\b{_PART} spares?\b|^spare {_PART}\b")
# Several of them right behind the name are spare ones, also where the name's own need no word.
_PAIRS = frozenset(
    {"pins", "guard", "jaws", "legs", "tips", "handle", "handles", "disc", "discs", "adapter", "adaptor"}
)
# What a stuff is used on, and no part that is sold for it: a compound for sleeves.
_HELD = frozenset({"sleeve", "sleeves"})
# Between a name and what goes with it.
_BETWEEN = frozenset({"bottle", "carry", "carrying", "roll", "wheel"})


def accessory(reading: Reading, family: Family) -> None:
    """State the accessory that stands right behind the name, or before it and a comma: RACK, SCREWDRIVER."""
    known = tables()
    texts = [said.text for said in reading.words]
    packed = not _PACKED.isdisjoint(texts)
    if family.kind == "tool" and reading.has_said("only") and reading.has_said("rail", "head"):
        reading.attributes["accessory"] = "part"  # a socket rail only
    if family.kind == "tool" and (part := _SPARE.search(reading.plain)):
        reading.attributes["fitting"] = part[1] or part[2]
    if (holds := _for_the_thing(reading)) and family.kind == "tool":
        reading.attributes["accessory"] = holds
    if (known.accessories | known.fittings | known.of_stuff).isdisjoint(texts):
        return
    strong = known.accessories
    if family.shape in _STUFF:
        strong = (strong - _HELD) | (frozenset() if packed else known.of_stuff)
    for said in _behind_the_name(reading):
        if said.word in reading.name or said.negated or said.text.removesuffix("s") in family.name:
            continue
        if said.text in strong:
            reading.attributes["accessory"] = said.text.removesuffix("s")
        elif family.shape in _STUFF and said.text in _PACKS:
            continue
        elif said.text in known.fittings and (
            said.word not in family.absorbs or (said.text in _PAIRS and (family.shape, said.text) != ("hammer", "tips"))
        ):
            reading.attributes["fitting"] = said.text.removesuffix("s")


# What is sold for a thing and stands before it: "handle for ball pein hammer".
_FOR_IT = frozenset(
    {"face", "faces", "bag", "cover", "shaft", "spare", "bracket", "holder", "stand", "clip", "rail"}
    | {"tray", "rack", "nozzle", "guard"}
)


def _for_the_thing(reading: Reading) -> str:
    """The part or holder that stands before "for", where all of the name comes after it; or ""."""
    named = [said for said in reading.words if said.word in reading.name and said.how == "name"]
    if not named or not all(said.aside and not said.besides for said in named):
        return ""
    known = tables()
    parts = known.accessories | known.fittings | _FOR_IT
    before = (said.text for said in reading.words if not (said.aside or said.worked_on or said.negated))
    return next((text.removesuffix("s") for text in before if text in parts), "")


def _behind_the_name(reading: Reading) -> list[Said]:
    """Words right behind one of the name, and a first word that a comma follows."""
    first = {id(said.tokens[0]): said for said in reading.words}
    last = {id(said.tokens[-1]): said for said in reading.words}
    tokens = [token for token in reading.tokens if token.kind != "sign"]
    found = []
    for one, two, three in zip(tokens, tokens[1:], [*tokens[2:], None], strict=False):
        before, said = last.get(id(one)), first.get(id(two))
        if three and (after := first.get(id(three))) and after.word in reading.name:
            continue  # an oil filter lid socket
        named = before is not None and (before.word in reading.name or before.text in _BETWEEN)
        if before and said and named and not (before.aside or said.aside or said.bracketed or said.worked_on):
            found.append(said)
    head = first.get(id(tokens[0])) if tokens else None
    if head and len(tokens) > 1 and tokens[1].kind == "stop" and head.word not in reading.name:
        found.append(head)
    return found
