"""From tidy text to tokens: words, numbers with units, and the codes of the trade (T30, M8x1.25, 5W-30, DOT 4)."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from fractions import Fraction
from functools import cache

from cribkit.domain.wording.measure import decimal, number, tell_decimal
from cribkit.domain.wording.tables import tables

# Metric pitches by diameter, ISO 261 (from memory): tells M8x1.25 (a pitch) from M8x25 (a length).
PITCHES: dict[str, frozenset[str]] = {
    "2": frozenset({"0.4"}),
    "2.5": frozenset({"0.45"}),
    "3": frozenset({"0.5"}),
    "3.5": frozenset({"0.6"}),
    "4": frozenset({"0.7", "0.5", "0.75"}),
    "5": frozenset({"0.8", "0.5"}),
    "6": frozenset({"1", "0.75"}),
    "7": frozenset({"1"}),
    "8": frozenset({"1.25", "1", "0.75"}),
    "10": frozenset({"1.5", "1.25", "1"}),
    "12": frozenset({"1.75", "1.5", "1.25", "1"}),
    "14": frozenset({"2", "1.5", "1.25", "1"}),
    "16": frozenset({"2", "1.5", "1"}),
    "18": frozenset({"2.5", "2", "1.5", "1"}),
    "20": frozenset({"2.5", "2", "1.5", "1"}),
    "22": frozenset({"2.5", "2", "1.5", "1"}),
    "24": frozenset({"3", "2", "1.5"}),
    "27": frozenset({"3", "2", "1.5"}),
    "30": frozenset({"3.5", "2", "1.5"}),
}
NUM = (
    r"(?:[1-4]-\d{1,2}/(?:2|4|8|16|32|64)(?!\d)|[1-4] \d{1,2}/(?:2|4|8|16|32|"
    r"64)\b(?![\"']*[ -]*(?:inch|in)?[ .-]*(?:sq|dr|square|d\b))|\d{1,3}/\d{1,2}(?!\d)|"
    r"\d*\.\d+|\d+)"
)
_LBF = r"(?:lbs?f?|pounds?|pound-force|#)"
_FT = r"(?:ft|foot|feet)"
_IN = r"(?:in|inch|inches)"
TORQUE = (
    rf"(?:n ?[.*-]? ?m\b|newton[ -]?met(?:re|er)s?|{_FT}[-./ ]*{_LBF}\b|{_LBF}[-./ ]*{_FT}\b|{_IN}[-./ ]*{_LBF}\b|"
    rf"{_LBF}[-./ ]*{_IN}\b|kgf?[-./ ]?cm\b|kgf?[-./ ]?m\b|m[.-]?kg\b|[cd]n ?\.?m\b|kn ?\.?m\b|"
    r"oz[ -]in\b|in[ -]oz\b)\.?"
)
UNIT = (
    r"(?:mm(?![a-z])|m+il+i?m+et(?:er|re)s?\b|millis?\b|mils?\b|\"|''|inch(?:es)?\b|"
    r"ins?\b(?! (?:a|the|case|box|stock|tin|holder|rail|pouch|roll|can)\b)\.?|cm\b|"
    r"centimet(?:er|re)s?\b|(?<!/\d)(?<!/\d\d)m\b|met(?:er|re)s\b|metre\b|ft\b|feet\b|foot\b)"
)

_PIPE = r"(?:1/16|1/8|1/4|3/8|1/2|5/8|3/4|7/8|[12][ -]1/[24]|[1-4])"

# A word with another word or nothing behind it, unless a number may follow that ("pack of 10"): no code begins with it.
_PLAIN_WORD = r"(?!(?:nlgi|ep|iso|pack|packet|box|bag|set|case|tin|roll|pkt|pair)\b)[a-z]+(?= [a-z]|,|$)"

_PARTS = [
    ("plain", _PLAIN_WORD),
    ("torque", rf"(?P<t1>{NUM})(?:\s*(?:-|to|/|\.\.|thru)\s*(?P<t2>{NUM}))?\s*-?(?P<tu>{TORQUE})"),
    (
        "visc",
        (
            r"(?:sae ?)?(?P<v1>\d{1,3})w[- /]?(?P<v2>\d{1,3})\b(?! ?v)|sae[- ]?(?P<v3>\d{1,3})\b(?!w|[/.]\d)|"
            r"iso ?vg ?(?P<v4>\d{2,3})\b|(?P<v5>75|80|85|90)w\b"
        ),
    ),
    ("gl", r"gl[- ]?(?P<g1>[1-6])\b(?:/(?P<g2>[1-6])\b)?"),
    ("nlgi", r"(?:nlgi|ep)[- ]?(?:no\.? ?)?(?P<n1>00|[0-3])\b"),
    ("dot", r"dot[- ]?(?P<d1>5\.1|3|4|5)(?P<d2>\+| plus\b| ?lv\b)?"),
    (
        "pipe",  # ASME B1.20.1, ISO 228, ISO 7
        (
            rf"(?:(?<!\d )(?:g ?|r[cp]?)(?=\d+/|\d[ -]\d/)|(?:nptf?|bsp[pt]?)[- ]?)(?P<pp1>{_PIPE})(?![\d/.])"
            rf"(?:\"|''| ?in\b)?(?: ?[-x] ?(?:27|18|14|11\.5|8|28|19|11)\b)?(?: ?(?:taper|parallel)\b)?|"
            rf"(?P<pp2>{_PIPE})(?:\"|''| ?-?in(?:ch)?\b\.?)?(?: ?[- ] ?(?:27|18|14|11\.5|11-1/2|8|28|19|11))?[ -]?"
            r"(?:nptf?|bsp[pt]?)\b(?: ?(?:taper|parallel)\b)?"
        ),
    ),
    (
        "thread",
        (
            r"m ?(?P<m1>\d{1,2}(?:\.\d)?)(?:\s*[x*]\s*(?P<m2>\d*\.\d+|\d+)(?:\s*(?:mm|p|"
            r"pitch)\b)?)?(?:\s*[x*]\s*(?P<m3>\d*\.\d+|\d+)(?:\s*mm\b)?)?(?![\w./])"
        ),
    ),
    (
        "unc",
        (
            r"(?P<u1>\d{1,2}/\d{1,2}|#\d{1,2}|no\.? ?\d{1,2}|"
            r"\b\d{1,2})\"?\s?-\s?(?P<u2>\d{2})(?:(?=\s*(?:x|unc|unf|unef|tpi|plug\b|taper|bottom|second\b|hand\b|"
            r"bolt|nut|screw|stud|thread|"
            r"tap|die|un\b|bsp|bsf))|(?:(?<=/\d-\d\d)|(?<=/\d\d-\d\d))(?=$|,|\s*(?:gr|hex|hx|cap|set\b|helicoil|"
            r"insert|flange|nyloc|nylon|plain|lock|wheel|cage)))"
            r"(?:\s*(?:unc|unf|unef|un)?\s*x\s*(?P<u3>[1-4] \d/\d{1,2}|"
            r"\d{1,2}-\d/\d|\d/\d{1,2}|\d*\.\d+|\d+)\"?)?"
        ),
    ),
    ("tips", r"(?P<r1>t|e|tx)[- ]?(?P<r2>\d{1,2})\s*(?:-|to|thru)\s*(?:tx|t|e)?(?P<r3>\d{1,3})(?![\d./])"),
    (
        "tip",
        (
            r"(?P<p1>torx|tx|trx|t|e|ip|tp|ts|tr|ph|pz|sl|jis|sq(?=[0-4]\b)|r(?=[0-4]\b)|h|hx|xzn|txe|"
            r"tks)[- ]?(?P<p2>\d{1,3}(?:\.\d)?)(?P<p3>[hs]|tr|tamper|x)?(?![\w./\"-]|\s*(?:tooth|"
            r"teeth|ton))"
        ),
    ),
    ("tip2", r"(?P<q1>\d{1,2})(?P<q2>ip|tp|h)\b"),
    ("numbered", r"(?:#|no\.? ?|nr\.? ?|number )(?P<no>\d{1,2})(?![\d./])"),
    ("points", r"(?P<pt>4|6|8|12)[- ]?(?:pts?|points?|pnts?|pointed|kt|sided)\b\.?"),
    ("pitch", r"(?P<pi1>\d*\.\d+|\d)\s*(?:mm)?\s*pitch\b|pitch (?P<pi2>\d*\.\d+|\d)(?:\s*mm\b)?"),
    ("class", r"cl(?:ass|\.)? ?(?P<cl>00|[0-4])(?![\d.])"),
    ("flutes", r"(?P<fl>\d{1,2})[- ]?(?:flutes?|fluted|flt|fl)\b(?!\.? ?oz)"),
    ("teeth", r"(?P<te>\d{2,3})[- ]?(?:t|tooth|teeth)\b"),
    ("grit", r"(?:grit ?|p|g)(?P<gr1>\d{2,4})(?:[- ]?grit)?\b|(?P<gr2>\d{2,4})[- ]?(?:grit|grade grit|gr\b)"),
    (
        "bolt_grade",
        (
            r"(?:grade |gr\.? ?|class |cl\.? ?)?(?P<bg>(?<![x*] )(?<![x*])(?:4\.6|5\.6|5\.8|6\.8|9\.8)|8\.8|10\.9|"
            r"12\.9)(?![\d.]|\s*(?:mm|x|in\b|l\b|lit|ltr|kg|v\b|volt|bar\b))(?:[- ]?(?:grade|class|ht))?"
        ),
    ),
    (
        "volume",
        (
            rf"(?P<vo>{NUM})[- ]?(?P<vu>ml|millilit(?:er|re)s?|cl|lit(?:er|re)s?|ltrs?|lt|l|fl\.? ?oz|"
            rf"us gal|gal|gallons?|qts?|quarts?|cc|pints?)\b"
        ),
    ),
    (
        "mass",
        rf"(?:0\s*(?:-|to)\s*)?(?P<ma>{NUM})[- ]?(?P<mu>kgs?|kilos?|g|gm|gms|grams?|lbs?|"
        r"pounds?|pounders?|ozs?|ounces?)\b",
    ),
    ("ton", rf"(?P<to>{NUM})[- ]?(?:tons?|tonnes?|t|te)\b"),
    ("pressure", rf"(?P<pr>{NUM}(?:\s*(?:-|to)\s*{NUM})?)[- ]?(?P<pu>psi|bar|kpa|mpa|mbar|in\.? ?hg|mm ?hg)\b"),
    (
        "power",
        rf"(?P<el>{NUM}(?:\s*(?:/|-|to)\s*{NUM})*)[- ]?"
        r"(?P<eu>kv|vdc|volts?|v|amps?|a|watts?|w|ah|mah|ohms?|lm|lumens?)\b(?!/)",
    ),
    (
        "temp",
        r"(?P<tt>-?\d+(?:\s*(?:-|to|\.\.+)\s*-?\d+)?)\s*(?:deg)?\s*(?P<tc>c|celsius)\b|(?P<tf>-?\d+)\s*deg(?:rees)?"
        r"\.?\s*f(?:ahrenheit)?\b|(?P<tg>\d{3})\s?f\b",
    ),
    ("deg", rf"(?P<de>{NUM})\s*(?:deg|degrees?)\b"),
    ("percent", r"(?P<pc>\d{1,3}(?:\.\d+)?)\s*(?:%|pct\b|percent\b|per cent\b)"),
    (
        "count",
        (
            r"(?<!\bx )(?<!\* )(?<![x*])(?P<co>\d{1,4})(?:[- ]?|/)(?:bx|box|"
            r"pcs?|pieces?|pce|pces|pk|pack|off|ea|each|pairs?|prs?|in 1(?![/\d])|way|tpi|"
            r"sheets?|leaf|leaves|rows?|blades?|ply|nos?)\b\.?|(?:qty|quantity|pack(?:et)? of|box of|bag of|set of|"
            r"(?:bx|box|pk|pkt|bag)(?=[ /]?\d)|case of|tin of|roll of|pkt of|pair of)[.:/]? ?(?P<co2>\d{1,4})\b"
            r"(?![./]\d| ?(?:tons?\b|tonnes?\b|t\b|kg|mm|in\b|inch|\"|x \d))|"
            r"(?<![\d\"'m] )(?<![\d\"'m])(?<! inch )(?<! in )\(?x ?(?P<co3>\d|1\d|2[0-5])\)?$"
        ),
    ),
    ("num", rf"(?P<nv>{NUM})(?:[ -]{{0,2}}(?P<nu>{UNIT}))?(?:\s*\(?(?P<ng>female|fem|male|f|m)\b\)?)?"),
    ("word", r"[a-z]+(?:'[a-z]+)?(?![a-z\d])"),
    ("mixed", r"[a-z\d]*(?:[a-z]\d|\d[a-z])[a-z\d-]*"),
    ("by", r"[x*]"),
    ("dash", r"-|\.\.+"),
    ("slash", r"/"),
    ("stop", r"[,;:()\[\]|+=]"),
    ("sign", r"\S"),
]


@cache
def _master() -> re.Pattern[str]:
    return re.compile(
        "|".join(
            rf"(?P<{name}>(?<![a-z\d.]){body})"
            if name not in ("by", "dash", "slash", "stop", "sign", "num", "plain", "word", "volume", "mass", "count")
            else f"(?P<{name}>{body})"
            for name, body in _PARTS
        )
    )


@dataclass(slots=True)
class Token:
    """One piece of a text."""

    kind: str  # a name of _PARTS, or "by", "to", "range" and "stop" between numbers
    text: str
    values: tuple[str, ...] = ()
    unit: str = ""  # "mm", "in", "m", "ft" for a length; "" where none is written
    gender: str = ""
    used: bool = False


@cache
def _digit_phrases() -> re.Pattern[str]:
    """Spellings with digits in them ("6 point", "3 jaw", "50/50"): replaced before numbers are read."""
    spelled = sorted(
        (p for p in tables().spellings if any(c.isdigit() for word in p for c in word)), key=lambda p: -len(" ".join(p))
    )
    return re.compile(
        r"(?<![a-z\d./#-])(?<!no\. )(?<!no )(?<! x )(?:"
        + "|".join(r"[ /-]?".join(re.escape(word) for word in phrase) for phrase in spelled)
        + r")(?![a-z\d/]|-\d)"
    )


def lex(text: str) -> list[Token]:
    """The tokens of a tidied text."""
    if any(c.isdigit() for c in text):
        text = _digit_phrases().sub(_plain_phrase, text)
    tokens = []
    for found in _pieces(text):
        kind = found.lastgroup or ""  # the group that closes last is the outer one, a name of _PARTS
        if kind == "plain":
            tokens.append(Token("word", found[0]))
            continue
        if kind == "mixed" and found[0] in tables().known:
            kind = "word"
        if kind == "mixed" and (word := unscanned(found[0])):
            tokens.append(Token("word", word))
            continue
        tokens.append(_MAKERS.get(kind, _plain)(kind, found))
    return tokens


def _pieces(text: str) -> Iterator[re.Match[str]]:
    """The pieces one after the other; at a space nothing begins, so that nothing is tried there."""
    match, at, end = _master().match, 0, len(text)
    while at < end:
        if text[at] == " ":
            at += 1
        elif found := match(text, at):
            yield found
            at = found.end()
        else:
            at += 1


_DIGITS_READ = (str.maketrans("01583", "olsbe"), str.maketrans("01583", "oisbe"))


@cache
def unscanned(text: str) -> str:
    """The known word of which letters were scanned as digits (b1ue, s0cket), or ""; codes have fewer letters."""
    if sum(char.isalpha() for char in text) < 3 or not text.isalnum():
        return ""
    known = tables()
    for swap in _DIGITS_READ:
        word = text.translate(swap)
        if word.isalpha() and {word, word.removesuffix("s")} & (known.known | known.longest.keys()):
            return word
    return ""


def _plain_phrase(found: re.Match[str]) -> str:
    phrase = tuple(found[0].replace("-", " ").replace("/", " ").split())
    spellings = tables().spellings
    if phrase in spellings:
        return f" {spellings[phrase]} "
    squeezed = "".join(phrase)
    hit = next((word for spelled, word in spellings.items() if "".join(spelled) == squeezed), "")
    return f" {hit} " if hit else found[0]


def _plain(kind: str, found: re.Match[str]) -> Token:
    return Token(kind, found[0])


NM = {"nm": Fraction(1), "cnm": Fraction(1, 100), "dnm": Fraction(1, 10), "knm": Fraction(1000)}
LBF_FT = Fraction("1.3558179483314004")  # NIST SP 811: 0.45359237 kg x 9.80665 m/s2 x 0.3048 m


def torque_nm(unit: str) -> Fraction:
    """The factor to N·m of a torque unit as written."""
    plain = re.sub(r"[^a-z#]", "", unit)
    if plain in NM:
        return NM[plain]
    if plain.startswith("newton"):
        return Fraction(1)
    if "kg" in plain:
        return Fraction("9.80665") / (100 if "cm" in plain else 1)
    if "oz" in plain:
        return LBF_FT / 192
    return LBF_FT / 12 if "in" in plain else LBF_FT


def _torque(kind: str, found: re.Match[str]) -> Token:
    factor = torque_nm(found["tu"])
    values = [number(found["t1"])] + ([number(found["t2"])] if found["t2"] else [])
    return Token(kind, found[0], tuple(decimal(value * factor) for value in values))


def _pipe(kind: str, found: re.Match[str]) -> Token:
    size = (found["pp1"] or found["pp2"]).replace(" ", "-")
    text = found[0]
    system = "NPT" if "npt" in text else "BSP"
    taper = system == "NPT" or re.search(r"bspt|taper|^r[c]?\d", text)
    parallel = system == "BSP" and re.search(r"bspp|parallel|^g|^rp", text)
    return Token(kind, text, (f"{size} {system}", "taper" if taper else "parallel" if parallel else ""))


def _thread(kind: str, found: re.Match[str]) -> Token:
    size, second, third = tell_decimal(found["m1"]), found["m2"], found["m3"]
    pitch = length = ""
    if second:
        value = tell_decimal(second)
        if third or value in PITCHES.get(size, ()) or (float(size) >= 8 and float(value) <= 3):
            pitch = value
        else:
            length = value
    if third:
        length = tell_decimal(third)
    return Token(kind, found[0], (f"M{size}", pitch, length))


def _values(*names: str) -> _Maker:
    def make(kind: str, found: re.Match[str]) -> Token:
        return Token(kind, found[0], tuple(found[name] or "" for name in names))

    return make


def _number(kind: str, found: re.Match[str]) -> Token:
    unit = (found["nu"] or "").rstrip(".")
    plain = "mm" if unit.startswith("mi") else "in" if unit in ('"', "''") or unit.startswith("in") else unit
    plain = {"cm": "cm", "ft": "ft", "feet": "ft", "foot": "ft", "m": "m"}.get(
        plain, "m" if plain.startswith("met") else "cm" if plain.startswith("cent") else plain
    )
    gender = (found["ng"] or "")[:1]
    text = found["nv"]
    if plain == "m" and "/" in text:
        plain, gender = "", "m"
    return Token(kind, found[0], (text,), plain, gender)


def _temperature(kind: str, found: re.Match[str]) -> Token:
    return Token(kind, found[0], (found["tt"] or "", found["tf"] or found["tg"] or ""))


_Maker = Callable[[str, re.Match[str]], Token]
_MAKERS: dict[str, _Maker] = {
    "torque": _torque,
    "visc": _values("v1", "v2", "v3", "v4", "v5"),
    "gl": _values("g1", "g2"),
    "nlgi": _values("n1"),
    "dot": _values("d1", "d2"),
    "pipe": _pipe,
    "thread": _thread,
    "unc": _values("u1", "u2", "u3"),
    "tip": _values("p1", "p2", "p3"),
    "tip2": _values("q2", "q1"),
    "tips": _values("r1", "r2", "r3"),
    "numbered": _values("no"),
    "points": _values("pt"),
    "pitch": _values("pi1", "pi2"),
    "class": _values("cl"),
    "flutes": _values("fl"),
    "teeth": _values("te"),
    "grit": _values("gr1", "gr2"),
    "bolt_grade": _values("bg"),
    "volume": _values("vo", "vu"),
    "mass": _values("ma", "mu"),
    "ton": _values("to"),
    "pressure": _values("pr", "pu"),
    "power": _values("el", "eu"),
    "temp": _temperature,
    "deg": _values("de"),
    "percent": _values("pc"),
    "count": _values("co", "co2", "co3"),
    "num": _number,
}
