"""Recesses and profiles of screws: T30, E10, PH2, hex 6 mm, M8 spline, slot 5.5 mm."""

from __future__ import annotations

from cribkit.domain.wording.lexer import Token
from cribkit.domain.wording.measure import tell_decimal
from cribkit.domain.wording.reading import Reading
from cribkit.domain.wording.sizes import Group, Length

# Sizes in the trade: internal (ISO 10664 plus the trade sizes T27 and T47) and external six-lobe. From memory.
T_SIZES = frozenset(
    [
        "1",
        "2",
        "3",
        "4",
        "5",
        "6",
        "7",
        "8",
        "9",
        "10",
        "15",
        "20",
        "25",
        "27",
        "30",
        "35",
        "40",
        "45",
        "47",
        "50",
        "55",
        "60",
        "70",
        "80",
        "90",
        "100",
    ]
)
E_SIZES = frozenset(["4", "5", "6", "7", "8", "10", "11", "12", "14", "16", "18", "20", "22", "24", "28", "32"])
# Letters before a number: the word that they say, and how the size is written.
LETTERS = {
    "t": ("sixlobe", "T"),
    "tx": ("sixlobe", "T"),
    "trx": ("sixlobe", "T"),
    "tks": ("sixlobe", "T"),
    "torx": ("sixlobe", "T"),
    "th": ("sixlobe", "T"),
    "tr": ("sixlobe", "T"),
    "tt": ("sixlobe", "T"),
    "ts": ("sixlobe", "T"),
    "ip": ("sixlobe", "IP"),
    "tp": ("sixlobe", "IP"),
    "e": ("external", "E"),
    "txe": ("external", "E"),
    "ph": ("phillips", "PH"),
    "pz": ("crosspz", "PZ"),
    "sl": ("slotted", "slot "),
    "jis": ("jis", "JIS"),
    "sq": ("robertson", "R"),
    "r": ("robertson", "R"),
    "h": ("insidehex", "hex "),
    "hx": ("insidehex", "hex "),
    "xzn": ("triplesquare", "XZN"),
}
_CROSS = frozenset(["0", "00", "000", *"1234"])
VALID = {"T": T_SIZES, "IP": T_SIZES, "E": E_SIZES, "PH": _CROSS, "PZ": _CROSS, "R": _CROSS, "JIS": _CROSS}
# Families whose size is a tip, by the word for its profile.
PREFIX = {
    "phillips": "PH",
    "crosspz": "PZ",
    "robertson": "R",
    "jis": "JIS",
    "triplesquare": "XZN",
    "ribe": "RIBE",
    "fivelobe": "TS",
}


def find_tips(reading: Reading) -> None:
    """Codes such as T30 or PH2 become the tip; words of the profile are implied."""
    for token in reading.tokens:
        if token.kind == "tip2" and not token.used:
            token.kind, token.values = "tip", (token.values[0], token.values[1], "")
        if token.kind == "tips":
            _tip_range(reading, token)
        if token.kind == "tip" and not token.used:
            _letter_tip(reading, token)


def _tip_range(reading: Reading, token: Token) -> None:
    """T10-T40 is every trade size from one end to the other."""
    letter, low, high = token.values
    sizes, prefix = (E_SIZES, "E") if letter == "e" else (T_SIZES, "T")
    if low in sizes and high in sizes and int(low) < int(high):
        token.used = True
        within = sorted((size for size in sizes if int(low) <= int(size) <= int(high)), key=int)
        reading.set("tips", "; ".join(f"{prefix}{size}" for size in within))
        reading.hints |= {"external", "sixlobe"} if prefix == "E" else {"sixlobe"}


def _letter_tip(reading: Reading, token: Token) -> None:
    letters, size, suffix = token.values
    if letters in ("sq", "r") and not reading.has("bit", "key", "screwdriver", "robertson", "driver"):
        return
    word, prefix = LETTERS[letters]
    if prefix == "T" and reading.has("sixlobeplus"):
        prefix = "IP"
    valid = VALID.get(prefix)
    if (valid and size not in valid) or ("." in size and prefix not in ("hex ", "slot ")):
        return
    token.used = True
    if prefix == "E" and reading.has("internal") and not reading.has("external"):
        reading.doubts.append(f"internal {token.text}")
    if prefix == "PH" and reading.has("jis"):
        prefix = "JIS"
    reading.hints |= {word, "sixlobe"} if word == "external" else {word}
    if suffix in ("h", "s", "tr", "tamper") or letters in ("tr", "th", "tt"):
        reading.traits.add("tamper")
    if letters == "ts":
        reading.traits |= {"tamper", "five-lobe"}
    unit = " mm" if prefix in ("hex ", "slot ") else ""
    reading.set("tip", f"{prefix}{size if size.startswith('00') else tell_decimal(size)}{unit}")


def tip_from_numbers(reading: Reading) -> None:
    """A profile named by a word and its size by a number: "6 mm hex bit", "No 2 phillips", "M8 spline"."""
    if "tip" in reading.attributes:
        return
    for word, prefix in PREFIX.items():
        if word == "phillips" and reading.has("jis"):
            continue
        if reading.has(word) and (size := _numbered(reading, prefix)):
            if prefix == "TS":  # as its code is read
                reading.traits |= {"tamper", "five-lobe"}
            reading.set("tip", f"{'T' if prefix == 'TS' else prefix}{size}")
            return
    if reading.has("sixlobe") and (group := _bare(reading, T_SIZES | E_SIZES)):
        outside = reading.has("external")
        size = group.tokens[0].values[0]
        if size in (E_SIZES if outside else T_SIZES):
            group.use()
            reading.set("tip", f"{'E' if outside else 'T'}{size}")
        return
    if reading.has("insidehex", "hex", "slotted", "ballend", "capscrew"):
        _measured(reading)


# No spline bit of the trade is larger, M18. Common practice, no source.
LARGEST_SPLINE = 18


def _numbered(reading: Reading, prefix: str) -> str:
    if prefix in ("XZN", "RIBE") and (thread := reading.take("thread")):
        return thread.values[0].removeprefix("M")
    if prefix in ("XZN", "RIBE"):
        for group in reading.numbers():
            if len(group.tokens) == 1 and group.tokens[0].unit in ("", "mm") and group.tokens[0].values[0].isdigit():
                if int(group.tokens[0].values[0]) > LARGEST_SPLINE:
                    continue
                group.use()
                return group.tokens[0].values[0]
        return ""
    if token := reading.take("numbered"):
        return token.values[0]
    for group in reading.numbers():  # "Phillips 1 x 75": the tip and the blade's length
        if group.relation == "by" and len(group.tokens) == 2 and group.tokens[0].values[0] in _CROSS and prefix != "TS":
            group.tokens[0].used = True
            return group.tokens[0].values[0]
    bare = _bare(reading, T_SIZES if prefix == "TS" else frozenset("01234"))
    if bare:
        bare.use()
        return bare.tokens[0].values[0]
    return ""


def _bare(reading: Reading, sizes: frozenset[str]) -> Group | None:
    for group in reading.numbers():
        token = group.tokens[0]
        if len(group.tokens) == 1 and not token.unit and token.values[0] in sizes:
            return group
    return None


def _measured(reading: Reading) -> None:
    """A hex or slot measured across: the first free number; "5.5 x 100" also says the blade's length."""
    prefix = "slot" if reading.has("slotted") and not reading.has("insidehex") else "hex"
    for group in reading.numbers():
        if group.relation == "range":
            continue
        lengths = group.lengths()
        if not plausible(lengths[0], prefix):
            continue
        group.use()
        if prefix == "slot" and len(lengths) > 1 and float(lengths[0].mm) <= THICKEST < float(lengths[1].mm) <= WIDEST:
            reading.set("blade_thickness", lengths[0].text)
            lengths = lengths[1:]  # 1.0 x 5.5: thickness and width, ISO 2380 (from memory)
            reading.set("tip", f"{prefix} {lengths[0].text}")
            if len(lengths) > 1:
                reading.set("length", lengths[-1].text)
            return
        reading.set("tip", f"{prefix} {lengths[0].text}")
        if prefix == "slot" and len(lengths) > 1 and float(lengths[1].mm) <= THICKEST < float(lengths[0].mm):
            reading.set("blade_thickness", lengths[1].text)  # 5.5 x 0.8
            lengths = [lengths[0], *lengths[2:]]
        if len(lengths) > 1:
            bare = not group.tokens[-1].unit and lengths[0].text.endswith(" in") and lengths[-1].value <= LONGEST_INCHES
            reading.set("length", f"{group.tokens[-1].values[0]} in" if bare else lengths[-1].text)
        return


# Blades of slotted drivers, mm: no thicker, no wider.
THICKEST = 1.6
WIDEST = 14
# A bare length beside a tip in inches is in inches up to here.
LONGEST_INCHES = 16


def plausible(length: Length, prefix: str) -> bool:
    """Whether a hex or slot of this size exists: 0.7 to 36 mm."""
    return 0.7 <= float(length.mm) <= (36 if prefix == "hex" else 16)


# What a tip is, by the word for it and by the letters of its code.
PROFILES = {
    "insidehex": "hex",
    "hex": "hex",
    "sixlobe": "T",
    "sixlobeplus": "IP",
    "triplesquare": "XZN",
    "phillips": "PH",
    "crosspz": "PZ",
    "slotted": "slot",
    "robertson": "R",
    "jis": "JIS",
    "ribe": "RIBE",
}
TIPPED = frozenset({"key", "bit", "screwdriver", "bit-socket", "lobe-socket", "set-bit"})


def profile(reading: Reading) -> None:
    """The profile of the tip, by its code or its word; two that disagree are a doubt."""
    words = {one.word for one in reading.beside()} | reading.hints
    said = {PROFILES[word] for word in words if word in PROFILES and word != "hex"}
    tip = reading.attributes.get("tip", "")
    if " x " in tip:
        codes = {one.split(" ")[0].rstrip("0123456789.") for one in tip.split(" x ")}
        reading.attributes["profile"] = " x ".join(sorted(codes))
        return
    code = tip.rstrip("0123456789.") if " " not in tip else tip.split(" ")[0]
    if code in ("E", "IP"):
        said -= {"T"}
    if code in ("T", "IP") and any(word.text.split(" ")[0] in _L_SHAPED for word in reading.words):
        said -= {"hex"}
    if code in ("PZ", "JIS") and not any(word.text.startswith("ph") for word in reading.words):
        said -= {"PH"}  # a cross recess, and the code says which
    told = said | ({code} if code else set()) or _of_the_screws(reading)
    if code in ("T", "IP") and any(word.word == "external" for word in reading.words):
        reading.doubts.append(f"external {tip}")
    if len(told) > 1 and reading.family == "offset-screwdriver":
        reading.attributes["profile"] = " x ".join(sorted(told))
    elif len(told) > 1:
        reading.doubts.append(" or ".join(sorted(told)))
    elif told:
        reading.set("profile", told.pop())
    elif reading.has("hex") and reading.family != "lobe-socket":
        reading.set("profile", "hex")
    reading.attributes.pop("side", None) if code in ("T", "IP", "E", "hex") else None


def _of_the_screws(reading: Reading) -> set[str]:
    """The profiles of what is turned, where the tool says none: "Undo the slotted screws with a screwdriver"."""
    if reading.family not in _TURNS_SCREWS:
        return set()
    turned = {said.word for said in reading.words if said.aside or said.worked_on}
    found = {PROFILES[word] for word in turned if word in PROFILES and word != "hex"}
    if found == {"T"} and not reading.has_said("bit", "driver", "screwdriver"):
        reading.doubts.append("internal or external six-lobe?")
    return found


_TURNS_SCREWS = frozenset({"screwdriver", "bit", "bit-socket", "offset-screwdriver", "impact-screwdriver"})

# Loosely said of any L key: "six-lobe Allen key T45".
_L_SHAPED = frozenset({"allen", "allan", "alan", "alen"})


def set_profiles(reading: Reading) -> None:
    """The profiles of all tips of a set; keys of which only sizes in mm or inches are told are for hexagons."""
    words = {said.word for said in reading.beside()}
    told = {PROFILES[word] for word in words if word in PROFILES}
    if {"external"} <= words and "T" in told and reading.family != "key-set":
        told = told - {"T"} | {"E"}
    sizes = [part for name in ("tips", "tip") for part in reading.attributes.get(name, "").split("; ") if part]
    told |= {part.split(" ")[0].rstrip("0123456789.") for part in sizes}
    if not told and reading.family == "key-set" and "dims" in reading.attributes:
        told = {"hex"}
    for said in reading.words:
        if said.text in ("ph", "pz"):
            said.how, said.used = "known", True
            told |= {said.text.upper()}
    if told:
        reading.attributes["profile"] = " x ".join(sorted(told))
