"""The figures of oils, chemicals and lockers: grades, packings, temperatures."""

from __future__ import annotations

import re
from itertools import zip_longest

from cribkit.domain.wording.lexer import Token
from cribkit.domain.wording.measure import number
from cribkit.domain.wording.reading import Reading
from cribkit.domain.wording.spoken import in_digits
from cribkit.domain.wording.tables import FLUIDS, tables


def _fork_oil(reading: Reading) -> None:
    """Fork oils are told by one figure: 10W."""
    for token in reading.tokens:
        figure = re.fullmatch(r"(\d{1,2}(?:\.5)?)w?", token.text)
        if figure and not token.used:
            token.used = True
            reading.set("viscosity", f"{figure[1]}W")


def oil(reading: Reading) -> None:
    """Viscosity, GL class, DOT grade, other grades."""
    if token := reading.take("visc"):
        one, two, single, iso, axle = token.values
        reading.set(
            "viscosity", f"{one}W-{two}" if one else f"SAE {single}" if single else f"ISO {iso}" if iso else f"{axle}W"
        )
    while token := reading.take("dot"):
        grade = token.values[0]
        reading.attributes["dot"] = ";".join(
            sorted({*filter(None, reading.attributes.get("dot", "").split(";")), grade})
        )
        if token.values[1].strip() in ("+", "plus"):
            reading.set("dot_class", "plus")
        if "lv" in token.values[1]:
            reading.traits.add("low-viscosity")
        _more_dots(reading)
    classes = []
    while token := reading.take("gl"):
        classes += [one for one in token.values if one]
    if classes:
        reading.set("gl", ";".join(sorted(set(classes))))
    if reading.family == "fork-oil":
        _fork_oil(reading)
    if reading.family in ("pag-oil", "poe-oil", "hydraulic-oil", "compressor-oil"):
        for group in reading.numbers():
            if (
                len(group.tokens) == 1
                and not group.tokens[0].unit
                and group.tokens[0].values[0] in ("15", "22", "32", "46", "68", "100", "150")
            ):
                group.use()
                reading.set("viscosity", f"ISO {group.tokens[0].values[0]}")
    packing(reading)


# Classes of engine oils (ACEA, API, ILSAC, JASO), as written. From memory.
_SPECS = re.compile(
    r"\b(?:[abe]\d{1,2}|c[1-6]|c[d-k] ?-? ?4|fa ?-? ?4|s[g-q]|gf ?-? ?[3-6][ab]?|ma2?|mb)\b(?! ?[vw])", re.IGNORECASE
)


def oil_specs(reading: Reading) -> None:
    """The classes of an engine oil; the name of an ATF's maker says no more than its number."""
    words = set(reading.attributes.get("spec", "").split())
    if reading.attributes.get("tip"):  # E7 is a class of oils here
        reading.attributes.pop("profile", None)
        reading.decide("tip")
    if reading.family == "engine-oil":
        for found in _SPECS.finditer(reading.plain):
            words.add(re.sub(r"[ -]", "", found[0]))
            for token in reading.tokens:
                if not token.used and token.kind in ("mixed", "word", "tip", "num") and token.text.strip() in found[0]:
                    token.used = True
            for said in reading.words:
                if said.how == "unread" and said.text in found[0]:
                    said.how, said.used = "known", True
    words -= {one for one in words if f"{one}4" in words}  # CK-4
    if words:
        reading.attributes["spec"] = " ".join(sorted(words))


def _more_dots(reading: Reading) -> None:
    """ "DOT 3 and 4", "DOT 3/4": the second number is a grade too."""
    for place, token in enumerate(reading.tokens):
        if token.kind != "dot":
            continue
        after = reading.tokens[place + 1 : place + 4]
        for later, behind in zip_longest(after, reading.tokens[place + 2 : place + 2 + len(after)]):
            multiplied = behind is not None and behind.kind == "by"  # 4 x 1 L
            if later.kind == "num" and later.values[0] in ("3", "4", "5", "5.1") and not later.unit and not multiplied:
                later.used = True
                reading.attributes["dot"] = ";".join(sorted({*reading.attributes["dot"].split(";"), later.values[0]}))


# Chemicals that are told by their strength.
_BY_STRENGTH = frozenset({"isopropyl-alcohol", "acetone", "meths"})


FAHRENHEIT = 400  # a figure without its letter from here on is Fahrenheit: no sealant stands 400 °C. Common practice
_HEAT_RATED = frozenset({"chem", "seize", "lock", "grease"})  # shapes that know no angle
# What cans and bottles usually hold, mL: a bare figure says no more. Common practice, no source.
_USUAL_CANS = frozenset({"100", "200", "250", "300", "400", "500", "600", "750"})


def _from_fahrenheit(degrees: float) -> int:
    return round((degrees - 32) / 1.8)


def celsius(token: Token) -> str:
    """A temperature as written, in degrees Celsius."""
    return f"{_from_fahrenheit(float(token.values[1]))}c" if token.values[1] else token.text.strip()


# The consistency of a grease, told by its NLGI number (from memory).
_NLGI = re.compile(
    r"(?:\b(?:grade|no\.?|nr\.?|number|consistency) ?|#)(0{1,3}|[0-3])\b(?![./])|(?<![\w.,/])(000?)(?![\w.,/])"
)


# What is bought by the tube, bottle or can: how much one holds is told by its label, and a need may ask for it.
_BY_THE_TUBE = frozenset(
    {"threadlocker", "retaining-compound", "superglue", "rtv", "sealant", "anaerobic-flange-sealant", "pipe-sealant"}
    | {"brake-cleaner", "contact-cleaner", "maf-cleaner", "throttle-body-cleaner", "carburettor-cleaner", "seam-sealer"}
)


def by_the_tube(family: str) -> bool:
    told = tables().families.get(family)
    return family in _BY_THE_TUBE or (told is not None and told.shape in ("grease", "seize"))


def _so_much_of(reading: Reading, token: Token) -> bool:
    """ "2.1 L of gear oil" is what goes in, not what a container holds."""
    place = reading.place_of(token)
    return [one.text for one in reading.tokens[place + 1 : place + 2]] == ["of"]


def held_as(family: str) -> str:
    """The attribute that tells how much a container holds: its "pack", the "amount" of an oil or fluid, or ""."""
    if by_the_tube(family):
        return "pack"
    told = tables().families.get(family)
    return "amount" if told is not None and told.shape in ("oil", "chem") else ""


def packing(reading: Reading) -> None:
    """How much a container holds: nothing that a match hangs on."""
    if reading.family in ("moly-grease", "chassis-grease") and (token := reading.take("percent")):
        reading.set("moly_content", f"{token.values[0]} %")
    if found := _NLGI.search(reading.plain) if "grease" in reading.family else None:
        reading.set("nlgi", found[1] or found[2])
        for token in reading.tokens:
            number_of_it = token.kind in ("num", "mixed", "numbered") and token.text.endswith(found[1] or found[2])
            token.used = token.used or number_of_it
    if reading.family in _BY_STRENGTH and (token := reading.take("percent")):
        reading.set("purity", f"{token.values[0]} %")
    for token in reading.tokens:
        if token.kind in ("volume", "mass", "percent", "temp", "nlgi") and not token.used:
            token.used = True
            if token.kind in ("volume", "mass") and len(token.values) > 1 and (name := held_as(reading.family)):
                if name == "amount" and _so_much_of(reading, token):
                    continue
                reading.attributes.setdefault(name, f"{token.values[0]} {token.values[1]}")
            if token.kind == "nlgi":
                reading.set("nlgi", token.values[0])
                if token.text.startswith("ep") and (reading.family, "ep") in tables().telling:
                    reading.finer.add("ep")
            if token.kind == "temp":
                reading.set("temperature", celsius(token))
    bare = [token for token in reading.tokens if token.kind == "num" and not token.used and not token.unit]
    told = tables().families.get(reading.family)
    poured = told is not None and told.shape in FLUIDS
    if poured and len(bare) == 1 and bare[0].values[0] in _USUAL_CANS:
        bare[0].used = True
    _dispensed(reading)
    if told and told.shape in _HEAT_RATED and (token := reading.take("deg")):
        figure = round(float(number(token.values[0])))
        reading.set("temperature", f"{figure if figure < FAHRENHEIT else _from_fahrenheit(figure)}c")


LEAST_BULK = 2000.0  # no spray can holds as many mL


def _dispensed(reading: Reading) -> None:
    """A spray can, or a can to fill from."""
    family = tables().families.get(reading.family)
    words = set(_LETTERS.findall(_DENIED.sub("", reading.plain.partition("; on ")[0])))
    if (
        family is None
        or family.shape not in ("chem", "grease", "seize")
        or "spray" in family.name
        or reading.has("tape", "wipe")
    ):
        return
    held = _VOLUME.search(reading.plain)
    millilitres = float(held[1]) * (1.0 if held[2].startswith(("ml", "millil", "cc")) else 1000.0) if held else 0.0
    if words & {"aerosol", "aero", "spray", "spraycan"}:
        reading.attributes["dispensed"] = "spray"
    elif family.shape in ("grease", "seize"):
        if words & {"tube", "cartridge", "cart", "crtg", "tub", "tin", "pot", "pail"}:
            reading.attributes["dispensed"] = "pack"
    elif millilitres >= LEAST_BULK or words & {"bulk", "drum", "jerrycan", "keg", "concentrate", "concentrated"}:
        reading.attributes["dispensed"] = "bulk"


_LETTERS = re.compile(r"[a-z]+")
_DENIED = re.compile(r"\b(?:not|no|non)[ -](?:an? )?[a-z]+")
_VOLUME = re.compile(r"\b(\d+(?:\.\d+)?) ?(ml|millilit(?:re|er)s?|cc|lit(?:re|er)s?|ltrs?|lt|l)\b")

LOCK_COLOURS = {"blue": "medium", "red": "high", "purple": "low", "green": "wicking"}


def lock(reading: Reading) -> None:
    """An anaerobic adhesive: the threads that it suits, and its pack."""
    _used_on(reading)
    threads = [token for token in reading.tokens if token.kind == "thread" and not token.used]
    if threads and not any("".join(token.values[1:]) for token in threads):
        sizes = sorted((token.values[0] for token in threads), key=lambda size: float(size[1:]))
        for token in threads:
            token.used = True
        least = sizes[0] if len(sizes) > 1 else _LEAST_THREAD if _UP_TO.search(reading.plain) else ""
        reading.set("suits_threads", f"{least} to {sizes[-1]}" if least else sizes[0])
    packing(reading)


_LEAST_THREAD = "M1"
_UP_TO = re.compile(r"\bmax(?:imum)?\b|\b(?:up to|to) m\d")
_FROST = re.compile(r"(?<![\d\w])-\s?(\d{2})\b")


_SETS_IN = re.compile(r"\b(\d{1,3})[- ]?(min(?:ute)?|h|hr|hour)s?\b")
# Safe drive-away time of what holds a windscreen.
_DRIVE_AWAY = re.compile(r"\b(\d{1,3})[- ]?(min(?:ute)?|h|hr|hour)s?\b(?=.*\b(?:drive|sdat)\b)")


def _spent(reading: Reading, figure: str, *units: str) -> None:
    """A figure and the words beside it have been read."""
    reading.spend(figure)
    for said in reading.words:
        if said.text in units and not said.negated:
            said.how, said.used = "known", True


# What is filled with a metal, and the metals.
_FILLED = frozenset({"epoxy", "steel-putty"})
_METALS = frozenset({"steel", "aluminium", "titanium", "bronze", "brass", "copper", "iron", "stainless"})


def _filled(reading: Reading) -> None:
    """The metal in an epoxy or a putty; one after "for" and "on" is what it mends."""
    if "steel putty" in reading.plain:
        reading.set("filler_metal", "steel")
    for said in reading.words:
        if said.word in _METALS and not said.negated and (not said.aside or said.besides) and not said.worked_on:
            reading.set("filler_metal", said.word)
            said.how, said.used, said.became = "attribute", True, f"filler metal {said.word}"
        elif said.text in ("filled", "filler"):
            said.how, said.used = "known", True


_SURFACES = frozenset({"plastic", "rubber", "aluminium"})


def _used_on(reading: Reading) -> None:
    """What a chemical is used on: no claim that it does no harm, but an item that denies just that is refused."""
    for said in reading.words:
        surface = said.word.removesuffix("s")
        if said.aside and not said.besides and not said.negated and surface in _SURFACES:
            reading.traits.add(f"on-{surface}")


def _sets_in(reading: Reading) -> None:
    """How fast a glue of two parts sets, by the text as written or as the patterns leave it."""
    as_written = in_digits(reading.text.lower().replace("-", " "))
    if found := _SETS_IN.search(as_written) or _SETS_IN.search(reading.plain):
        reading.set("sets_in", f"{found[1]} {'min' if found[2][0] == 'm' else 'h'}")
        _spent(reading, found[1], "min", "mins", "minute", "minutes", "h", "hr", "hrs", "hour", "hours")


def chem(reading: Reading) -> None:
    """A chemical: its pack does not matter, its traits are words."""
    if reading.family == "epoxy":
        _sets_in(reading)
    if reading.family in _FILLED:
        _filled(reading)
    _used_on(reading)
    if reading.family == "body-sealant" and (found := _DRIVE_AWAY.search(reading.plain)):
        reading.set("drive_away", f"{found[1]} {found[2][0]}")
        _spent(reading, found[1], "h", "hr", "hour", "hours", "min", "mins", "minutes", "sdat", "drive", "away")
    if reading.family == "washer-fluid" and (found := _FROST.search(reading.text)):
        reading.set("temperature", f"-{found[1]}c")
        for token in reading.tokens:
            token.used = token.used or found[1] in token.text
    packing(reading)
