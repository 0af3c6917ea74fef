"""Tidy text before it is read: signs, stuck units, scanning errors, spoken numbers."""

from __future__ import annotations

import re
import unicodedata

# Signs that people and programs write for the same thing.
SIGNS = str.maketrans(
    {
        "×": " x ",
        "✕": " x ",
        "–": "-",
        "—": " - ",
        "‐": "-",
        "‑": "-",
        "−": "-",
        "“": '"',
        "”": '"',
        "„": '"',
        "″": '"',
        "‟": '"',
        "′": "'",
        "’": "'",
        "‘": "'",
        "`": "'",
        "´": "'",
        "Ø": " dia ",
        "ø": " dia ",
        "⌀": " dia ",
        "°": " deg ",
        "º": " deg ",
        "·": ".",
        "⋅": ".",
        "•": " , ",
        "⁄": "/",
        "∕": "/",
        "™": "",
        "®": "",
        "©": "",
        "½": " 1/2",
        "¼": " 1/4",
        "¾": " 3/4",
        "⅛": " 1/8",
        "⅜": " 3/8",
        "⅝": " 5/8",
        "⅞": " 7/8",
        "¹": "1",
        "²": "2",
        "³": "3",
        "µ": "u",
        "&": " and ",
        "_": " ",
        "\\": "/",
        "±": " ",
    }
)
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
}
TENS = {"twenty": 20, "thirty": 30, "forty": 40, "fourty": 40, "fifty": 50, "sixty": 60, "seventy": 70, "eighty": 80}
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
    rf"\b(?:(?:(an|a|{_NUMBER}|\d+) (?:inch )?and (?:a |an )?)?(?:({_ONES}|a|an|\d+)[ -])?\b({_PARTS}))\b"
)
_POINT = re.compile(
    rf"\b({_NUMBER}|\d+) (?:point|and a) (five|half|two|three|seven|{_ONES})\b(?= *(?:mm|mil|milli|nm|inch|in\b))"
)
_SPOKEN = re.compile(rf"\b{_NUMBER}\b")

# Scanning errors inside sizes: letters for digits and a stroke read as a one or a bracket.
_SCAN = [
    (re.compile(r"\b([1-9]\d?)[l|i!]((?:2|4|8|16|32)(?=[ -]?(?:dr|drv|drive|sq)\b))"), r"\1/\2"),  # 1l2DR
    (re.compile(r"\b[il|](?=\d{1,3}(?:mm|nm)\b)"), "1"),  # l25MM
    (re.compile(r"\bdr[1l|]ve"), "drive"),
    (re.compile(r"\b[il|]{2}(?=\s*(?:mm|rnm)\b)"), "11"),  # ll mm
    (
        re.compile(r"(?<![a-z\d])(\d+)[il|](?=\s*(?:mm|rnm|nm|n\.m|in\.|inch|\")(?![a-z])|\s*x\s*\d)"),
        r"\g<1>1",
    ),  # 2l mm
    (
        re.compile(r"(?<![a-z\d])[il|](?=\d{1,3}(?:\.\d+)?\b\s*(?:mm|rnm|nm|x|pt|dr|deg|v|w|ml|t|kg|psi|bar|-))"),
        "1",
    ),  # l2 x 2
    (re.compile(r"(?<=x )[il|](?=\d{1,2}\b)"), "1"),  # 10 x l2
    (re.compile(r"(?<=\d)[il|](?=\d\s*(?:mm|nm)\b)"), "1"),  # 1l0 mm
    (re.compile(r"(?<![a-z\d])([p#]?\d+)oo+(?![a-z])"), r"\g<1>00"),  # P4OO
    (re.compile(r"(?<![a-z\d])(p?)(\d+)o(?=\d|[ -]?(?:grit|v|w|ton)\b)"), r"\1\g<2>0"),
    (re.compile(r"(?<![a-z\d])(\d?)ow(?=[ -]?\d)"), r"\g<1>0w"),  # OW-20
    (re.compile(r"(?<=\dw)([ -]?)(\d)o\b"), r"\1\g<2>0"),  # 0W-3O
    (re.compile(r"\bd0t\b"), "dot"),
    (re.compile(r"\b([il|1-9]\d?)/[il|]6\b"), r"\1/16"),  # 5/l6
    (re.compile(r"\b[il|]([il|1-5])/(?=16\b|32\b)"), r"1\1/"),  # l1/16
    (re.compile(r"\b[s](?=/(?:8|16|32)\b)"), "5"),  # S/16
    (re.compile(r"\b([1357])/[sb](?=[ -]*(?:in\b|inch|\"|dr\b|drive|sq\b|sq\.))"), r"\1/8"),  # 3/S drive
    (re.compile(r"\b([1il|])/z\b"), "1/2"),
    (re.compile(r"(?<=\d)([ -]?)[l1](?=n\b|nch\b)"), r"\1i"),  # 1/4-lnch
    (re.compile(r"(?<!\d)([1-9]?)b(?=\s*mm\b)"), r"\g<1>8"),  # 1B mm
    (re.compile(r"(?<=\d)o(?=\d|\s*mm\b|\s*pt\b|\s*nm\b|\b)"), "0"),  # 1O mm -> 10 mm, E1O, T3O
    (re.compile(r"(?<=\dw)(?=\d)"), "-"),  # 5w30
    (re.compile(r"\bo(?=[.,]\d)"), "0"),  # O.5
    (re.compile(r"\b[il|](?=[.,]\d)"), "1"),  # l.25
    (re.compile(r"\b([et]|tx|m|ph|pz)[il](?=\d\b)"), r"\g<1>1"),  # El0 -> E10
    (re.compile(r"\b([et])[il][o](?=\b)"), r"\g<1>10"),  # ElO -> E10
    (re.compile(r"\b[il|](?=[\d]\s*(?:mm|pt|dr)\b)"), "1"),  # l0mm -> 10mm
    (re.compile(r"\b[il|]o(?=\s*mm\b)"), "10"),  # lOmm
    (re.compile(r"\b([1-9]\d?)[l|i!(\[]((?:2|4|8|16|32)\b)"), r"\1/\2"),  # 3l8 -> 3/8, 1(2 -> 1/2
    (re.compile(r"\b[il|]/(?=[248](?!\d))"), "1/"),  # l/2 -> 1/2
    (re.compile(r"\b([1-9]\d?)/b\b"), r"\1/8"),  # 3/B
    (re.compile(r"\b([1357])1([248])(?=[ -]?(?:in\b|inch|\"|dr\b|drive|sq\b|sq\.))"), r"\1/\2"),  # 318-inch -> 3/8
    (re.compile(r"\b([1357]|1[135])1(16)(?=[ -]?(?:in\b|inch|\"))"), r"\1/\2"),  # 7116-inch -> 7/16
    (re.compile(r"(?<=\d)\s*(?:rnm|nnm|mrn|rnrn|mm\.|m\.m\.?|m/m|mms)(?![a-z])"), "mm"),
    (re.compile(r"(?<=\d) ?m m\b"), "mm"),
    (re.compile(r"\b([1-9])z(?=\s*mm\b)"), r"\g<1>2"),  # 1Zmm
    (re.compile(r"\b([12])s(?=\s*mm\b)"), r"\g<1>5"),  # 1Smm
]
_STUCK = [
    (re.compile(r"\br[- ]?(134a|1234yf|744|404a)\b"), r"r\1"),
    (re.compile(r"\b([ac]\d)(?=b\d\b)"), r"\1 "),  # A5B5
    (re.compile(r"\bep(?=\d+w)"), "ep "),
    (re.compile(r"(?<= )x(?=\d+(?:\.\d+)? ?m\b)"), "x "),  # 12mm x12m
    (re.compile(r"(?<=\d) ?in\.? (?=hex)"), '" '),  # 1 in. hex head is no internal hexagon
    (re.compile(r"\b([io])\. ?d\b\.?"), r"\1d"),  # I.D.
    (re.compile(r"\b(m\d{1,2}) ?- ?(?=\d?\.\d|[123] ?x)"), r"\1 x "),  # M8-1.25 x 40
    (re.compile(r"\b(pag|poe|vg|hlp|hm|hvlp|iso)(?=\d{2,3}\b)"), r"\1 "),  # PAG46
    (re.compile(r"\bvg(?= ?\d{2,3}\b)"), "iso vg"),
    (re.compile(r"\biso iso\b"), "iso"),
    (re.compile(r"(?<=\d)(?=awg\b|sqmm\b)"), " "),
    (re.compile(r"\bw ?(?:and|n|\+|/) ?d\b"), "wet and dry"),
    (re.compile(r"(?<=\dv)(?=\d+ ?[wa]\b)"), " "),  # 12V55W
    (re.compile(r"(?<=\d)(?=(?:nbr|fkm|epdm|hnbr)\b)"), " "),
    (re.compile(r"\be[- ]?(?=torx|star\b|sixlobe|six[- ]lobe|6[- ]lobe)"), "external "),  # e-torx
    (re.compile(r"\b([1-4])\.(\d{1,2}/(?:2|4|8|16|32)\b)"), r"\1-\2"),  # 1.1/16
    (re.compile(r"\b\d{1,2}(?:\.\d)? ?: ?1\b"), " "),  # a ratio of gears
    (
        re.compile(r"(?:#|\bno\.? ?)([0-4])[ -](?:sq|square)(?:[ -](?:drive|recess|head|tip))?\b(?! ?\d)"),
        r" robertson \1 ",
    ),
    (re.compile(r"\b(?:sq|square)(?:[ -](?:drive|recess|head|tip))? ?(?:#|no\.? ?)([0-4])\b"), r" robertson \1 "),
    (re.compile(r"\b(e\d{1,2}) ?[x/] ?(?=e\d)"), r"\1 x "),
    (re.compile(r"(?<=[a-z])\.(?=\d)"), " "),  # SKT.10MM
    (re.compile(r"\be[- ]type\b"), " external sixlobe "),
    (re.compile(r"\b((?:ph|pz|tx?|sl|jis|h)\d{1,2}(?:\.\d)?)x(?=\d)"), r"\1 x "),  # PZ2x100
    (
        re.compile(
            r"\b(?:reading |reads |scaled? |marked |graduated )?in "
            r"(?:n\.?m|ft[- ./]?lbs?|lbf?[- ./]?ft|newton met(?:re|er)s)\b(?!\.?\d)"
        ),
        " ",
    ),
    (re.compile(r"\bsocket wrench[,:; ]+impact\b"), "impact socket wrench"),
    (re.compile(r"(?:^|(?<=, ))inch and (?=a )"), "an inch and "),
    (re.compile(r"\bc/w\b"), " with "),
    (re.compile(r"\bt?[- ]?(\d{1,3})[- ]?ip\b"), r" ip\1 "),  # T25 IP
    (re.compile(r"(?<=/\d)[\"']{0,2} ?-?(?:sd|sqd)\b"), " sq dr"),  # 3/8SD
    (re.compile(r"(?<=[\d\"'])(?=(?:dr|drv|drive|sq|sqdr|skt|socket|sckt)\b)"), " "),  # 1/4dr
    (re.compile(r"(?<=\d)(?=(?:deep|dp|impact|imp|hex|hx|long|pos|ratchet|ext)\b)"), " "),
    (re.compile(r"\b(dr|drv|drive|sq(?![0-4](?![\d/.]))|skt|sckt|socket|spanner|spnr)(?=\d)"), r"\1 "),
    (re.compile(r"(?<=[a-z]),(?=[a-z\d])"), ", "),
    (re.compile(r"(?<=\dmm)(?=\d)"), " "),
    (re.compile(r"(?<=\d[\"'])(?=[a-z\d])"), " "),
    (re.compile(r"(?<=mm)(?=dp\b|deep\b|skt\b|imp\b|hex\b|x\d)"), " "),
    (re.compile(r"(?<![\d,])(\d+),(\d{1,2})(?![\d,])(?=\s*(?:mm|nm|n\.m|l\b|ml|kg|in\b|x))"), r"\1.\2"),  # 6,3 mm
    (re.compile(r"(?<=x)(\d),(\d{1,2})\b"), r"\1.\2"),  # M8x1,25
    (re.compile(r"(?<![\d,./])(\d{1,3}),(\d{1,2})(?![\d,./]|\s*(?:pt|point|dr|drive|sq|pc|-))"), r"\1.\2"),  # 15,3
    (re.compile(r"(?<=\d),(?=\d{3}\b)"), ""),  # 1,000
]


_RATIO = re.compile(r"\b(\d{1,3}(?:\.\d)?) ?(?::|to|-) ?1\b(?! ?/|[ \"]*(?:in\b|inch|dr\b|drive|sq))")
_INITIALS = re.compile(r"\b(?!n\.m|m\.m)(?:[a-z]\.){2,}[a-z]?\b\.?")


def tidy(text: str) -> str:
    """Lower case, plain signs, digits for spoken numbers, scanning errors in sizes mended."""
    plain = unicodedata.normalize("NFKC", text.translate(SIGNS)).translate(SIGNS).lower()
    plain = " ".join(plain.split()).rstrip(" .,;")
    for pattern, better in _SCAN:
        plain = pattern.sub(better, plain)
    if "mult" in plain:
        plain = _RATIO.sub(r" ratio\1 ", plain)
    plain = _INITIALS.sub(lambda found: found[0].replace(".", ""), plain)
    for pattern, better in _STUCK:
        plain = pattern.sub(better, plain)
    plain = _STANDARD.sub(" ", _REUSE.sub(" ", plain))
    if not _CLOSES.search(plain):
        plain = _PURPOSE.sub(" ", plain)
    plain = _HARDNESS.sub(r"\1", _SPLIT_UNIT.sub(" ", _NOTES.sub(" ", plain)))
    if "/" in plain:
        plain = _PAIR.sub(_pair, plain)
    if _SPOKEN.search(plain) or _FRACTION.search(plain):
        plain = _unspoken(plain)
    return " ".join(plain.split())


# Where a thing lies and how it is marked: notes of the crib, no part of its name.
_NOTES = re.compile(
    r"\b(?:bin|shelf|rack|drawer|row|bay|cabinet|cupboard|locker|loc|location|peg|aisle|bench|cab)\b"
    r"[ :#.]*(?:[a-z]-?\d{1,3}|\d{1,3}[a-z]?|[a-h])\b"
    r"|[(*\[]+ *(?:[a-z]+ )?(?:red|blue|green|grn|yellow|white|black|orange|pink|purple) "
    r"(?:tape|band|dot|mark|stripe|ring|tag|label|paint)s? *[)*\]]+"
)
# What a thing is wanted for, in a verb.
_PURPOSE = re.compile(
    r" \(?to (?:close|clean|cover|seal|wipe|protect|clear|stop|hold|catch|mark|check|dry|lubricate|coat|fill|top|flush|"
    r"secure|keep|avoid|prevent|plug|degrease|prime|bond|glue|fix|free|refit|reassemble|wash|rinse|polish)\b[^,;:()]*\)?"
)
# What is told by what it does.
_CLOSES = re.compile(r"\b(?:plugs?|caps?|bungs?|covers?)\b")
# Numbers of standards for the thing itself.
_STANDARD = re.compile(
    r"\b(?:iso[ -]?\d{4,5}|(?:din|en|bs|astm|jis|ece)[ -]?(?:en |iso |[a-z] ?)?\d{3,5})(?:[-:/]\d{1,4})*\b"
)
# "do not use the old ones again", "always renew": says nothing about the thing.
_REUSE = re.compile(
    r"[(,;-]? ?(?:do not|don't|never|must not be) (?:re-?use[d]?|use (?:the )?(?:old|again|twice))[^,;)]*\)?"
    r"|\b(?:single[- ]use|one[- ]time[- ]use|not re-?us(?:ed|able)|no re-?use)\b"
)
_SPLIT_UNIT = re.compile(r"(?<=\d)\s*[;,]\s*(?=(?:mm|inch|dr|drive|sq|pt)\b)")
_HARDNESS = re.compile(
    r"\b(nbr|fkm|fpm|epdm|hnbr|viton|nitrile)[ ,-]{0,2}(?:60|70|75|80|90)\b"
    r"(?: ?(?:deg(?:rees?)?|shore|sh|irhd|duro(?:meter)?) ?a?\b)?"
)
_PAIR = re.compile(r"(?<![\d./-])(\d{1,2})/(\d{1,2})(?![\d./])(\s*mm)?")


def _pair(found: re.Match[str]) -> str:
    """10/11 and 7/8 mm are two sizes, 7/8 is one."""
    top, under = int(found[1]), int(found[2])
    if top == under:
        return found[0]
    if found[3] or ((under not in (2, 4, 8, 16, 32, 64) or top % 2 == 0) and top > 3):
        return f"{found[1]} x {found[2]}{found[3] or ''}"
    return found[0]


def _unspoken(text: str) -> str:
    """Digits for numbers in words: "three eighths" -> 3/8, "an inch and a half" -> 1 1/2."""
    text = _POINT.sub(lambda found: f"{_count(found[1])}.{_count(found[2]) if found[2] != 'half' else 5}", text)
    text = _FRACTION.sub(_fraction, text)
    return _SPOKEN.sub(lambda found: str(_count(found[0])), text)


_FRACTION_BEFORE = re.compile(
    r"in|dr|sq|\"|d |hex|female|male|f |m |(?:to|x) (?:a )?(?:\d|three|quarter|half|one)|ratchet|breaker|extension"
)


def _fraction(found: re.Match[str]) -> str:
    whole, over, part = found[1], found[2], found[3]
    after = found.string[found.end() :].lstrip(" -")
    if over is None and not whole and not _FRACTION_BEFORE.match(after):
        return found[0]
    top = 1 if over is None else _count(over)
    return f"{_count(whole)} {top}/{PARTS[part]}" if whole else f"{top}/{PARTS[part]}"


def _count(words: str) -> int:
    if words in ("a", "an"):
        return 1
    if words.isdigit():
        return int(words)
    tens, _, ones = words.replace("-", " ").partition(" ")
    return TENS[tens] + UNITS.get(ones, 0) if tens in TENS else UNITS[tens]
