"""Digits for spoken numbers: "ten mil", "three eighths", "half thirteen", "two hundred", "eighty W ninety"."""

from __future__ import annotations

import re

UNITS = {
    "one": 1,
    "two": 2,
    "three": 3,
    "four": 4,
    "five": 5,
    "six": 6,
    "seven": 7,
    "eight": 8,
    "nine": 9,
    "ten": 10,
    "eleven": 11,
    "twelve": 12,
    "thirteen": 13,
    "fourteen": 14,
    "fifteen": 15,
    "sixteen": 16,
    "seventeen": 17,
    "eighteen": 18,
    "nineteen": 19,
    "zero": 0,
    "nought": 0,
    "naught": 0,
}
TENS = {
    "twenty": 20,
    "thirty": 30,
    "forty": 40,
    "fourty": 40,
    "fifty": 50,
    "sixty": 60,
    "seventy": 70,
    "eighty": 80,
    "ninety": 90,
}
PARTS = {
    "half": 2,
    "halves": 2,
    "quarter": 4,
    "quarters": 4,
    "fourths": 4,
    "eighth": 8,
    "eighths": 8,
    "eights": 8,
    "sixteenth": 16,
    "sixteenths": 16,
    "sixteenth's": 16,
    "thirty-second": 32,
    "thirty-seconds": 32,
}
_ONES = "|".join(sorted(UNITS, key=len, reverse=True))
_TENS = "|".join(TENS)
_PARTS = "|".join(sorted(PARTS, key=len, reverse=True))
_NUMBER = rf"(?:(?:{_TENS})(?:[ -](?:{_ONES}))?|{_ONES})"
_FRACTION = re.compile(
    rf"\b(?:(?:(an|a|{_NUMBER}|\d+) (?:inch(?:es)? )?and (?:a |an )?)?(?:({_ONES}|a|an|\d+)[ -])?\b({_PARTS}))\b"
)
_POINT = re.compile(
    rf"\b({_NUMBER}|\d+) (?!point half)(?:point|and a) (half|one|two|three|four|five|six|seven|eight|nine)\b"
    r"(?= *(?:mm|mil|milli|nm|inch|in\b))"
)
# "a drill, six point five": no drill has points.
_DRILLED = re.compile(rf"\b({_NUMBER}) point ({_ONES})\b(?! ?(?:mm|mil|inch|in\b|eighth|sixteenth))")
_DRILL = re.compile(r"\b(?:drills?|reamers?|twist)\b")
# Property classes of bolts, ISO 898-1: "ten point nine".
_CLASS = re.compile(r"\b(four|five|six|eight|ten|twelve) point (six|eight|nine)\b")
_HUNDREDS = re.compile(rf"\b({_NUMBER}|a|\d{{1,2}}) hundred(?: and)?(?:[ -]({_NUMBER}|\d{{1,2}}))?\b")
_THOUSANDS = re.compile(rf"\b({_NUMBER}|a|\d{{1,3}}) thousand\b(?! ?ths)")
_SPOKEN = re.compile(rf"\b{_NUMBER}\b")
_ONE = rf"\b(?:{_NUMBER}|{_PARTS}|hundred|thousand)\b"
_ANY = re.compile(_ONE)
SPOKEN = rf"^.*?{_ONE}.*"  # a whole text with a spoken number
_FRACTION_BEFORE = re.compile(
    r"in|dr|sq|\"|d |hex|female|male|f |m |(?:to|x|by) (?:a )?(?:\d|three|quarter|half|one)|ratchet|breaker|extension|"
    r"ext\b|converter|adapt[eo]r|reducer|section|cross|combination|wrench|spanner|socket|deep|tap|die|unc|unf|end"
)
# Coarse and fine threads to the inch by diameter, ASME B1.1 (from memory): "half thirteen" is a thread.
THREADS = {
    "1/4": (20, 28),
    "5/16": (18, 24),
    "3/8": (16, 24),
    "7/16": (14, 20),
    "1/2": (13, 20),
    "9/16": (12, 18),
    "5/8": (11, 18),
    "3/4": (10, 16),
    "7/8": (9, 14),
}
_PITCHED = "|".join(
    str(pitch) for pitch in sorted({pitch for both in THREADS.values() for pitch in both}, reverse=True)
)
_THREADED = re.compile(
    rf"\b(\d{{1,2}}/\d{{1,2}})(?: ?(?:inch|in|\"))?[ -]({_PITCHED})\b(?! ?(?:mm|in\b|inch|\"|pt|point|pc|/))"
)
_FASTENED = re.compile(r"\b(?:bolts?|nuts?|screws?|studs?|taps?|dies?|inserts?|unc|unf|threads?|capscrews?)\b")
_PITCH_WORDS = "twenty(?:[ -](?:four|eight))?|sixteen|thirteen|eighteen|fourteen|twelve|eleven|ten|nine"  # of THREADS
_BARE_PART = re.compile(
    r"\b(half|quarter|(?:three|five|seven|nine)[ -](?:eighths?|sixteenths?|quarters?))"
    rf"(?=[ -](?:inch[ -])?(?:{_PITCH_WORDS}|\d\d)\b(?! (?:point|pt|inch|mm|mil)))"
)
_VISCOSITY = re.compile(r"\b(\d{1,3})[ -]?w[ -]?(\d{2,3})\b(?! ?v)")
_GEAR_OIL = re.compile(r"\b(70|75|80|85)[ -](80|85|90|110|140)\b(?=.*\b(?:gear|gl|oil)\b)")
# Hyphens between a spoken number and what follows: "two-hundred-mil ties", "six-tonne stands".
_HYPHENED = re.compile(
    r"(?<=[a-z])-(?=(?:hundred|thousand|mil|mill|tonne|ton|inch|volt|amp|lit(?:re|er)|degree|pin|jaw|"
    r"piece|way|point|pound)s?\b)"
)
_DOUBLE_NOUGHT = re.compile(r"\bdouble[- ](?:nought|naught|zero)\b")
_FIGURE = "one|two|three|four|five|six|seven|eight|nine|zero|nought|naught"
_BARE_POINT = re.compile(rf"\b({_NUMBER})[ -]point[ -]({_FIGURE})(?:[ -]({_FIGURE}))?\b")
_NOUGHT_POINT = re.compile(
    rf"(?<![a-z] )(?<![a-z-])\bpoint ({_ONES})(?: ({_ONES}))?\b|(?<=need )point ({_ONES})(?: ({_ONES}))?\b"
)
_POINTED = re.compile(r"\b(?:sockets?|skts?|spanners?|wrench(?:es)?|(?<!\bo[- ])ring|bits?)\b")
# "sixteen by two and a half", where nothing is in inches.
_AND_A = re.compile(rf"(?<=by )({_NUMBER}) and a (half|quarter)\b")
# "six and a half wide", "thickness one and a half", "four tenths of a millimetre".
_HALF_WIDE = re.compile(
    rf"\b({_NUMBER}) and a half(?= ?(?:wide|thick|across)\b)|(?<=thickness )({_NUMBER}) and a half\b"
)
_DECIMALS = re.compile(
    rf"\b({_NUMBER}|\d) (tenth|hundredth)s?(?: (?:of an? )?(?:millimet(?:re|er)|mil|mm)s?\b|(?= to (?:{_NUMBER}|\d)))"
)
_IN_INCHES = re.compile(
    r"\b(?:inch(?:es)?|in(?! (?:fkm|nbr|nitrile|epdm|silicone|rubber|copper))|eighths?|sixteenths?|\d/\d+|"
    r"three[- ]quarters?|unc|unf)\b|\""
)
_PAIR_BY = re.compile(r"\b(two|three|four|five|six)-(one|two|three|four|five|six|seven|eight|nine) (?=by\b)")
_SHORT_CLASS = re.compile(
    r"\b(four|five|six|eight|ten|twelve)[- ](six|eight|nine)\b(?! ?(?:mm|mil|by|hundred|inch|point|pt))"
)
_ONE_FIFTEEN = re.compile(
    r"\bone[- ](fifteen|twenty[- ]five|fifty|eighty)\b(?=.*\b(?:disc|grinder)s?\b)"
    r"|(?<=disc, )one[- ](fifteen|twenty[- ]five|fifty|eighty)\b"
)
_GRIT_PAIR = re.compile(
    r"\b(one|two|three|four|six)[- ](twenty|forty|fifty|sixty|eighty)\b(?=.*\b(?:wet|grit|paper|emery)\b)"
)
_ONE_TWO_FIVE = re.compile(r"\bone[- ]two[- ]five\b( pitch)?|\bone[- ]five( pitch)\b")


def in_digits(text: str) -> str:
    """The text, in lower case, with digits for its spoken numbers."""
    if not _ANY.search(text):
        return text
    text = _run_together(_HYPHENED.sub(" ", _DOUBLE_NOUGHT.sub("00", text)))
    text = _CLASS.sub(lambda found: f"{UNITS[found[1]]}.{UNITS[found[2]]}", text)
    text = _HUNDREDS.sub(lambda found: str(100 * _count(found[1]) + (_count(found[2]) if found[2] else 0)), text)
    text = _THOUSANDS.sub(lambda found: str(1000 * _count(found[1])), text)
    text = _POINT.sub(_decimal, text)
    if _DRILL.search(text) and not _POINTED.search(text.replace("drill bit", "drill")):
        text = _DRILLED.sub(lambda found: f"{_count(found[1])}.{_count(found[2])} mm", text)
    if _FASTENED.search(text):
        text = _BARE_PART.sub(lambda found: _fraction_text(found[1]), text)
    text = _FRACTION.sub(_fraction, text)
    text = _SPOKEN.sub(lambda found: str(_count(found[0])), text)
    text = _GEAR_OIL.sub(r"\1w-\2", _VISCOSITY.sub(r"\1w-\2", text))
    return _THREADED.sub(_thread, text) if _FASTENED.search(text) else text


def _run_together(text: str) -> str:
    """Numbers of which not every figure is said: 4.2 by 16, 8.8, 115 of a disc, grit 240."""
    if not _POINTED.search(text):
        text = _BARE_POINT.sub(lambda m: f"{_count(m[1])}.{_count(m[2])}{_count(m[3]) if m[3] else ''}", text)
        text = _NOUGHT_POINT.sub(lambda m: f"0.{''.join(str(_count(one)) for one in m.groups() if one)}", text)
    if not _IN_INCHES.search(text):
        text = _AND_A.sub(lambda m: f"{_count(m[1])}.{'5' if m[2] == 'half' else '25'}", text)
        text = _HALF_WIDE.sub(lambda m: f"{_count(m[1] or m[2])}.5 mm", text)
    text = _DECIMALS.sub(lambda m: f"{_count(m[1]) / (10 if m[2] == 'tenth' else 100):g} mm", text)
    text = _PAIR_BY.sub(lambda m: f"{_count(m[1])}.{_count(m[2])} ", text)
    if _FASTENED.search(text):
        text = _SHORT_CLASS.sub(lambda m: f"{UNITS[m[1]]}.{UNITS[m[2]]}", text)
    text = _ONE_FIFTEEN.sub(lambda m: f"1{_count(m[1] or m[2])} mm", text)
    text = _GRIT_PAIR.sub(lambda m: str(100 * _count(m[1]) + _count(m[2])), text)
    return _ONE_TWO_FIVE.sub(lambda m: f"1.25{m[1]}" if m[1] else f"1.5{m[2]}" if m[2] else "125", text)


def _decimal(found: re.Match[str]) -> str:
    """ "six point five mil", but twelve points of a socket of eight millimetres."""
    if found[1] in ("12", "twelve") and _POINTED.search(found.string):
        return found[0]
    return f"{_count(found[1])}.{_count(found[2]) if found[2] != 'half' else 5}"


def _thread(found: re.Match[str]) -> str:
    pitches = THREADS.get(found[1], ())
    return f"{found[1]}-{found[2]}" if int(found[2]) in pitches else found[0]


def _fraction_text(words: str) -> str:
    top, _, part = words.replace("-", " ").rpartition(" ")
    return f"{_count(top) if top else 1}/{PARTS[part]}"


def _fraction(found: re.Match[str]) -> str:
    whole, over, part = found[1], found[2], found[3]
    after = found.string[found.end() :].lstrip(" -,")
    if over is None and not whole and not _FRACTION_BEFORE.match(after):
        return found[0]
    # "13 half inch drive", "200 half round", "8 quarter drive": so many halves or quarters are not told so
    if over is not None and not whole and over not in ("a", "an") and not _is_fraction(over, PARTS[part]):
        return f"{over}, 1/{PARTS[part]}" if _FRACTION_BEFORE.match(after) else found[0]
    top = 1 if over is None else _count(over)
    return f"{_count(whole)} {top}/{PARTS[part]}" if whole else f"{top}/{PARTS[part]}"


def _is_fraction(over: str, part: int) -> bool:
    """Whether so many halves, quarters, eighths are what an inch is told in: three quarters, not eight."""
    return _count(over) < part and _count(over) % 2 == 1


def _count(words: str) -> int:
    if words in ("a", "an"):
        return 1
    if words.isdigit():
        return int(words)
    tens, _, ones = words.replace("-", " ").partition(" ")
    return TENS[tens] + UNITS.get(ones, 0) if tens in TENS else UNITS[tens]
