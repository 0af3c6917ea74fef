"""Hoses by the metre: bore, what they carry, how they are built. Common practice of the trade, no source."""

from __future__ import annotations

import re

from cribkit.domain.wording.agree import same
from cribkit.domain.wording.figures import any_numbers
from cribkit.domain.wording.reading import Reading
from cribkit.domain.wording.sizes import Length
from cribkit.domain.wording.tables import listed

# What a hose carries, the more telling first; a hose for one is none for another.
_CARRIES = (
    ("exhaust", r"\bexhaust\b|\bfumes?\b"),
    ("refrigerant", r"\ba/?c\b|\bair ?con\w*|\brefrigerant\b|\br-?(?:134a|1234yf)\b|\bbarrier\b"),
    ("brake fluid", r"\bdot ?[345]|\bbrake fluid\b|\bbrake reservoir\b|\bclutch (?:fluid|master|feed)\b"),
    ("vacuum", r"\bvac(?:uum)?\b|\bservo\b|\bbooster\b"),
    ("charge air", r"\bboost\b|\bintercooler\b|\bcharge[ -]air\b|\bcharge cooler\b|\bturbo (?:hose|boost)\b"),
    ("acetylene", r"\bacetylene\b|\bfuel gas\b"),
    ("lpg", r"\blpg\b|\bpropane\b"),
    ("oxygen", r"\boxygen hose\b|\bhose,? oxygen\b"),
    ("hydraulics", r"\bhydraulic\b|\bhyd\b|\b[12]sn\b|\ben ?85[37]\b|\bsae ?100"),
    ("transmission oil", r"\batf\b|\btransmission\b|\btrans(?:mission)? cooler\b"),
    ("screenwash", r"\bscreen ?wash\b|\bwasher (?:hose|jet|tube|pump)\b"),
    ("fuel", r"\bfuel\b|\bpetrol\b|\bgasoline\b|\bdiesel\b|\binjection\b|\befi\b|\binjectors?\b"),
    ("coolant", r"\bcoolant\b|\bheater\b|\bradiator\b|\bhtr\b|\bwater\b"),
    ("oil", r"\boil\b"),
)
_FAMILIES = {"vacuum": "vacuum-hose", "fuel": "fuel-hose", "coolant": "coolant-hose"}
_CARRIED = {family: carried for carried, family in _FAMILIES.items()}
_HIGH = re.compile(r"\b(?:hi(?:gh)?[- ]?press(?:ure)?|hp|efi|fuel[- ]injection|injection|rail|r9)\b")
_LOW = re.compile(
    r"\bmax(?:imum)? [1-4](?:\.\d)? ?bar\b|\b(?:lo(?:w)?[- ]?press(?:ure)?|lp|carburett?[eo]r|carb|r6|r7)\b"
)
_NOT_BEFORE = re.compile(r"\b(?:not|non|never|no)[- ](?:for |to be |suitable for |use )*$")
_IN_TANK = re.compile(r"\bin[- ]?tank\b|\bsubmersible\b|\bimmersion\b|\bsubmerged\b|\br10\b")
_LEAK_OFF = re.compile(r"\bleak[- ]?off\b|\bspill\b|\breturn\b")
_OUTSIDE = re.compile(r"^(?:od|o/d|outer|outside)$")
# Moulded hoses go to one place only.
_WHICH = (
    ("top", ("top", "upper")),
    ("bottom", ("bottom", "lower")),
    ("inlet", ("inlet", "intake")),
    ("outlet", ("outlet",)),
)
_ETHANOL = re.compile(r"\bethanol\b|\be ?(?:10|85)\b|\bbio ?ethanol\b")
_ELBOW = re.compile(r"\belbow\b|\b(?:45|90|135|180) ?(?:deg|degrees?)\b(?! ?c)")
# Nominal bores, ISO 4397 (from memory): DN 10 is 3/8.
_DN = {"5": "3/16", "6": "1/4", "8": "5/16", "10": "3/8", "12": "1/2", "16": "5/8", "19": "3/4", "20": "3/4", "25": "1"}
_NOMINAL = re.compile(r"\bdn ?(\d{1,2})\b")
_WIRES = re.compile(r"\b(?:(one|two|single|double|1|2)[ -]wire|([12])s[nt])\b")
_COUNT = {"one": "1", "single": "1", "two": "2", "double": "2"}
_ALSO_SAID = re.compile(
    r"^(?:wp|resistant|resist|proof|ethanol|bioethanol|e10|e85|id|i/d|od|o/d|inner|outer|inside|outside|internal|bore|"
    r"dia|diameter|hose|line|pipe|tube|tubing|rubber|lined|"
    r"braid|braided|reinf|reinforced|feed|supply|rail|cotton|textile|low|high|hi|lo|pressure|press|max|efi|injection|"
    r"injector|injectors|return|spill|leak|off|fuel|petrol|gasoline|diesel|in|tank|submersible|immersion|brake|servo|"
    r"booster|vac|"
    r"vacuum|coolant|heater|radiator|htr|water|system|barrier|type|ac|a/c|aircon|elbow|straight|intercooler|boost|"
    r"charge|air|turbo|against|extraction|extract|exhaust|fume|fumes|hydraulic|hyd|wire|fluid|clutch|master|reservoir|"
    r"sn|j30|dot4|r-?134a|r-?1234yf|transmission|trans|cooler|oil|atf|washer|screenwash|gas|acetylene|oxygen|lpg|carb|"
    r"carburettor|carburetor|per|mtr|"
    r"metre|meter|m|by|the|roll|coil|cut|length)$"
)


def hose(reading: Reading) -> None:
    """Bore (or outside), what it carries, pressure, build; in mm or inches as written."""
    said = reading.plain
    _carried(reading, said)
    if _told(_HIGH, said):
        reading.set("pressure_class", "high")
    elif _told(_LOW, said) or _HIGH.search(said):  # "not high pressure"
        reading.set("pressure_class", "low")
    if reading.family == "fuel-hose":
        for trait, pattern in (("in-tank", _IN_TANK), ("leak-off", _LEAK_OFF)):
            if pattern.search(said):
                reading.traits.add(trait if _told(pattern, said) else f"not-{trait}")
        kinds = [kind for kind, words in (("petrol", ("petrol",)), ("diesel", ("diesel",))) if reading.has_said(*words)]
        if len(kinds) == 1:
            reading.attributes["fuel_kind"] = kinds[0]
    for which, words in _WHICH:
        if reading.has_said(*words):
            reading.set("which_hose", which)
            reading.pass_by(*words)
    if _ETHANOL.search(said):
        reading.traits.add("ethanol-resistant" if _told(_ETHANOL, said) else "not-ethanol-resistant")
    if _ELBOW.search(said):
        reading.traits.add("elbow")
        if angle := reading.take("deg"):
            reading.set("angle", angle.values[0])
    if wires := _WIRES.search(said):
        count = wires[1] or wires[2]
        reading.set("wires", _COUNT.get(count, count))
        reading.spend(count)
        _spend(reading, wires[0])
    if nominal := _NOMINAL.search(said):
        reading.set("bore", f"{_DN.get(nominal[1], nominal[1])} in" if nominal[1] in _DN else f"{nominal[1]} mm")
        _spend(reading, nominal[0])
    _measures(reading)
    if numbered := reading.take("numbered"):
        reading.set("numbered_size", numbered.values[0])  # of those of air conditioning
    for token in reading.tokens:
        token.used = token.used or (token.kind in ("mixed", "dot") and bool(_ALSO_SAID.match(token.text.strip())))
    reading.pass_by(*(one.text for one in reading.words if _ALSO_SAID.match(one.text) and not one.negated))
    reading.pass_by(*(one.text for one in reading.words if one.word in listed("worked_on") and not one.negated))
    any_numbers(reading)


def _told(pattern: re.Pattern[str], said: str) -> bool:
    """Whether the text says so anywhere without denying it."""
    return any(not _NOT_BEFORE.search(said[: found.start()]) for found in pattern.finditer(said))


def _carried(reading: Reading, said: str) -> None:
    """Of what it carries the family has the usual three; the words for another decide against the name."""
    told = next((name for name, pattern in _CARRIES if re.search(pattern, said)), "")
    carried = told or _CARRIED.get(reading.family, "")
    if (told and told not in _FAMILIES) or reading.family == "hose":
        reading.family = _FAMILIES.get(carried, "hose")
    if carried:
        reading.attributes["carries"] = carried


def _spend(reading: Reading, written: str) -> None:
    """What was read as a code is used, in whatever pieces it stands."""
    pieces = {*written.split(), written}
    for token in reading.tokens:
        token.used = token.used or (token.kind != "stop" and token.text.strip() in pieces)
    reading.pass_by(*pieces)


def _measures(reading: Reading) -> None:
    """The bore, or the outside where OD says so; how long a coil is says nothing of the hose."""
    for group in reading.numbers():
        token = group.tokens[0]
        place = reading.place_of(group.tokens[-1])
        beside = [other.text for other in reading.tokens[max(place - 2, 0) : place + 2] if other.kind == "word"]
        if token.unit in ("m", "ft"):
            group.use()
        elif len(group.tokens) == 1 and (token.unit or "/" in token.text or "." in token.text or _near(beside)):
            group.use()
            unit = token.unit or ("in" if "/" in token.text else "mm")
            outer = any(_OUTSIDE.match(word) for word in beside)
            name, size = "outside" if outer else "bore", Length(group.lengths()[0].value, unit).text
            if same(name, size, reading.attributes.get(name, size)) is None:  # "5/16 (8 mm)" is one bore
                reading.doubts.append(f"{name} {size}")
            else:
                reading.attributes.setdefault(name, size)


def _near(beside: list[str]) -> bool:
    """Whether a bare number stands beside a word for its bore."""
    return any(word in ("id", "i/d", "bore", "inside", "inner", "od", "o/d", "hose") for word in beside)
