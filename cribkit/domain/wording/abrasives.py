"""The numbers of abrasives and wipes: grit, diameter, holes, grades of steel wool."""

from __future__ import annotations

import re

from cribkit.domain.wording.figures import dims
from cribkit.domain.wording.fluids import packing
from cribkit.domain.wording.reading import Reading

_GRITTED = frozenset({"sandpaper", "abrasive-disc", "abrasive-belt", "scouring-pad"})
_DISCS = frozenset({"50", "75", "76", "100", "115", "125", "150", "180", "230"})


_HOLES = re.compile(r"\b(\d{1,2}) ?-?(?:h|hole|holes)\b|\b(no|without|six|eight|fifteen)[ -]holes?\b")
_COUNTED = {"six": "6", "eight": "8", "fifteen": "15"}
_ONLY_DISCS = frozenset({"50", "75", "76", "115", "125", "230"})  # no usual grits


def _disc(reading: Reading) -> None:
    """A bare number that is a usual diameter of discs, beside a grit that is told as one."""
    numbers = [token for token in reading.tokens if token.kind == "num" and not token.used and not token.unit]
    told = any(token.kind == "grit" and not token.used for token in reading.tokens)
    if found := _HOLES.search(reading.plain):
        reading.set("holes", found[1] or _COUNTED.get(found[2], "0"))
        reading.attributes.pop("tip", None)
        for token in reading.tokens:
            token.used = token.used or token.text.strip() in found[0]
        for said in reading.words:
            if said.text in found[0].split():
                said.used, said.how, said.negated = True, "attribute", False
    if len(numbers) == 1 and numbers[0].values[0] in (_DISCS if told else _ONLY_DISCS):
        numbers[0].unit = "mm"
    grits = [token for token in reading.tokens if token.kind == "grit" and not token.used]
    if len(grits) > 1 and (across := next((one for one in grits if {*one.values} & _ONLY_DISCS), None)):
        across.used = True
        reading.set("dims", f"{({*across.values} & _ONLY_DISCS).pop()} mm")


# Grades of steel wool, finest first. Common practice.
_WOOL = frozenset({"0000", "000", "00", "0", "1", "2", "3", "4"})


def _wool(reading: Reading) -> None:
    """The grade of steel wool: 0000 to 4, also as 4/0."""
    for token in reading.tokens:
        written = token.values[0] if token.kind in ("num", "numbered", "class") else ""
        zeros = "0" * int(written[0]) if re.fullmatch(r"[234]/0", written) else written
        if zeros in _WOOL and not token.unit and not token.used:
            token.used = True
            reading.set("wool", zeros)


def wipes(reading: Reading) -> None:
    """Wipes and rags: how many or how much does not matter; how large a sheet is does where its unit is clear."""
    if reading.family == "wet-wipe" and reading.has_said("isopropyl") and (share := reading.take("percent")):
        reading.set("alcohol_share", f"{share.values[0]} %")
    packing(reading)
    for group in reading.numbers():
        sheet = len(group.tokens) == 2 and (
            group.tokens[-1].unit or all(re.fullmatch(r"\d{3}", token.values[0]) for token in group.tokens)
        )
        if not sheet:
            group.use()
    dims(reading)


def grit(reading: Reading) -> None:
    """The grit number."""
    if reading.family == "steel-wool":
        _wool(reading)
    for weight in reading.tokens:  # 80G of an abrasive is its grit, not its weight
        if weight.kind == "mass" and re.fullmatch(r"\d{2,4} ?g", weight.text) and reading.family in _GRITTED:
            weight.kind, weight.values = "grit", (weight.values[0], "")
    if reading.family == "abrasive-disc":
        _disc(reading)
    if token := reading.take("grit"):
        reading.set("grit", token.values[0] or token.values[1])
    else:
        for group in reading.numbers():
            token = group.tokens[0]
            if (
                len(group.tokens) == 1
                and not token.unit
                and token.values[0].isdigit()
                and 24 <= int(token.values[0]) <= 5000
            ):
                token.used = True
                reading.set("grit", token.values[0])
    dims(reading)
