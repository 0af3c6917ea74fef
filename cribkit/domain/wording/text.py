"""Tidy text before it is read: signs, stuck units, scanning errors, spoken numbers."""

from __future__ import annotations

import json
import re
import unicodedata
from functools import cache

from cribkit.domain import tables as files
from cribkit.domain.wording.lexer import torque_nm
from cribkit.domain.wording.needle import Sieve, pack
from cribkit.domain.wording.patterns import PATTERNS
from cribkit.domain.wording.patterns.nameless import NAMELESS
from cribkit.domain.wording.patterns.pattern import Pattern
from cribkit.domain.wording.patterns.scanning import SCAN
from cribkit.domain.wording.slips import unslipped
from cribkit.domain.wording.spoken import SPOKEN, in_digits

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
_Found = re.Match[str]


def tidy(text: str) -> str:
    """Lower case, plain signs, digits for spoken numbers, scanning errors in sizes mended."""
    plain = unicodedata.normalize("NFKC", text.translate(SIGNS)).translate(SIGNS).lower()
    return " ".join(_mended(unslipped(" ".join(plain.split()).rstrip(" .,;"))).split())


def _mended(text: str) -> str:
    """All patterns, one after the other."""
    patterns, sieve = _patterns(), _sieve()
    due, again = sieve.due(text), False
    while due:
        place = due.pop()
        pattern, better = patterns[place]
        changed = _compiled(pattern).sub(better, text)
        if changed != text:
            after = place
            if pattern is SPOKEN and not again:
                again, after = True, -1  # in digits it may be what a pattern knows
            text, due = changed, [later for later in sieve.due(changed) if later > after]
    return text


@cache
def _patterns() -> list[Pattern]:
    """All patterns with what they stand for, in the order in which a text passes them."""
    return [*SCAN, *_FIRST, *PATTERNS, *_THEN, (SPOKEN, lambda found: in_digits(found[0])), *_LAST]


_compiled = cache(re.compile)  # few of them are ever tried


@cache
def _sieve() -> Sieve:
    """What says which patterns are worth trying; finding that out takes a quarter of a second and is remembered."""
    return Sieve(json.loads(files.remember("needles", lambda: json.dumps(pack([one for one, _ in _patterns()])))))


def _ratio(found: _Found) -> str:
    """The ratio of a torque multiplier."""
    return f" ratio{found[1]} " if "mult" in found.string else found[0]


def _run_together(found: _Found) -> str:
    return found[0].replace(".", "").replace(" ", "")


AS_MUCH = 0.06  # figures in two units are rounded


def _one_torque(found: _Found) -> str:
    """One torque in two units, where the two agree: "22 N·m (195 in-lb)"."""
    one, other = (float(found[at].rstrip(".")) * float(torque_nm(found[at + 1])) for at in (1, 3))
    said = f"{found[1]} {found[2]}"
    return said if abs(one - other) <= AS_MUCH * one else f"{said} {found[3]}"  # a number that nothing takes is a doubt


_MM_SQUARES = {
    "1/4": ("6.3", "6.35"),
    "3/8": ("9.5", "10"),
    "1/2": ("12.5", "12.7"),
    "3/4": ("19", "20"),
    "1": ("25", "25.4"),
}


def _one_square(found: _Found) -> str:
    """One square by its two names, ISO 1174-1 (from memory): "12.5 mm square (1/2 in.) drive"."""
    return f"{found[3]} in" if found[1] in _MM_SQUARES.get(found[3], ()) else found[0]


def _size_in_digits(found: _Found) -> str:
    return f"{found[1]} {in_digits(found[2])}"


_TORQUE = r"(\d[\d.]*) ?(n[.·]?m|in[-./ ]?lbs?|ft[-./ ]?lbs?)\.?"

# Before the patterns of the single trades.
_FIRST: list[Pattern] = [
    (r"\b(\d{1,3}(?:\.\d)?) ?(?::|to|-) ?1\b(?! ?/|[ \"]*(?:in\b|inch|dr\b|drive|sq))", _ratio),
    (r"\b(?!n\.m|m\.m)(?:[a-z]\.){2,}[a-z]?\b\.?|(?<=\d )a\. ?f\b", _run_together),
    (
        r"(?<![\d.])(\d{1,2}(?:\.\d\d?)?) ?mm( square| sq)? \((\d(?:/\d)?)(?: ?in\.?| ?inch|\")?\)"
        r"(?= (?:square|sq|drive|dr)\b)",
        _one_square,
    ),
    (rf"\b{_TORQUE} \({_TORQUE}\)", _one_torque),
    # "PH number two", "size ten": the digits of what comes in numbered sizes.
    (
        r"\b(number|no\.?|size) ((?:(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:[ -](?:five|"
        r"seven|six|eight))?|"
        r"nought|zero|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|sixteen|"
        r"eighteen)(?![a-z]))"
        r"(?! (?:hundred|thousand|point|and|half|inch))",
        _size_in_digits,
    ),
]

# What is told by what it does.
_CLOSES = re.compile(r"\b(?:plugs?|caps?|bungs?|covers?)\b")


def _purpose(found: _Found) -> str:
    return found[0] if _CLOSES.search(found.string) else " "


# Where a square or a hexagon may stand, a whole number before a fraction is a size in mm beside the square (13 1/2 dr).
_SQUARED = re.compile(
    r"\b(?:dr|drv|drive|sq|square|skts?|sckts?|sockets?|ratchets?|extensions?|ext|adapt\w*|bits?|hex|hx|"
    r"allen|bolts?|screws?|"
    r"nuts?|studs?|spanners?|spnrs?|wrench(?:es)?|wr|dp|deep|pt|point)\b"
)


def _mixed(found: _Found) -> str:
    """7-1/2 in as 7.5 in; no fraction of one or more."""
    if int(found[3]) >= int(found[4]) or _SQUARED.search(found.string):
        return found[0]
    value = int(found[1]) + int(found[3]) / int(found[4])
    return f"{value:g}{'' if found[5] else ' in'}" if found[5] or found[2] == "-" else found[0]


def _pair(found: _Found) -> str:
    """10/11 and 7/8 mm are two sizes, 7/8 is one."""
    top, under = int(found[1]), int(found[2])
    if top == under:
        return found[0]
    if found[3] or ((under not in (2, 4, 8, 16, 32, 64) or top % 2 == 0) and top > 3):
        return f"{found[1]} x {found[2]}{found[3] or ''}"
    return found[0]


# Behind the patterns of the single trades.
_THEN: list[Pattern] = [
    # "do not use the old ones again", "always renew": says nothing about the thing.
    (
        r"[(,;-]? ?(?:do not|don't|never|must not be) (?:re-?use[d]?|use (?:the )?(?:old|again|twice))[^,;)]*\)?"
        r"|\b(?:single[- ]use|one[- ]time[- ]use|not re-?us(?:ed|able)|no re-?use)\b",
        " ",
    ),
    # Numbers of standards for the thing itself.
    (r"\b(?:iso[ -]?\d{4,5}|(?:din|en|bs|astm|jis|ece)[ -]?(?:en |iso |[a-z] ?)?\d{3,5})(?:[-:/]\d{1,4})*\b", " "),
    # What a thing is wanted for, in a verb.
    (
        r" \(?to (?:close|clean|cover|seal|wipe|protect|clear|stop|hold|catch|mark|check|dry|lubricate|coat|fill|top|"
        r"flush|secure|keep|avoid|prevent|plug|degrease|prime|bond|glue|fix|free|refit|reassemble|wash|rinse|polish)\b"
        r"(?![^,;:()]*\d)[^,;:()]*\)?",  # a number counts
        _purpose,
    ),
    # Where a thing lies and how it is marked: notes of the crib, no part of its name.
    (
        r"\b(?:bin|shelf|rack|drawer|row|bay|cabinet|cupboard|locker|loc|location|peg|aisle|bench|cab)\b"
        r"[ :#.]*(?:[a-z]-?\d{1,3}|\d{1,3}[a-z]?|[a-h])\b",
        " ",
    ),
    (
        # no measure: a hook of 10 mm, a tub of 5 l
        r"\b(?:return to )?(?:tub|dwr|hook)(?: no\.?)? ?(?:[a-h]-?)?[12]?\d\b"
        r"(?![./]|-\d| ?(?:mm|in\b|inch|\"|l\b|lt|ml|pcs?\b|x|deg|kg|way|tier|t\b))"
        r"|\(tray \d{1,2}\)",
        " ",
    ),
    (
        r"[(*\[]+ *(?:[a-z]+ )?(?:red|blue|green|grn|yellow|white|black|orange|pink|purple) "
        r"(?:tape|band|dot|mark|stripe|ring|tag|label|paint)s? *[)*\]]+",
        " ",
    ),
    (r"(?<=\d)\s*[;,]\s*(?=(?:mm|inch|dr|drive|sq|pt)\b)", " "),
    (
        r"\b(nbr|fkm|fpm|epdm|hnbr|viton|nitrile)[ ,-]{0,2}(60|70|75|80|90)\b(?! ?x\b)"
        r"(?: ?(?:deg(?:rees?)?|shore|sh|irhd|duro(?:meter)?) ?a?\b)?",
        r"\1 \2 shore ",
    ),
    # A mixed number from 5 up: 7-1/2, 6 5/8 in.; behind a bare space it may be how many there are, and the size.
    (
        r"(?<![\w./#-])(?<!\bno )(?<!\bx )([5-9]|[1-5]\d|60)(-| (?=\d{1,2}/\d{1,2}-? ?(?:in\b|inch|\"|'')))"
        r"(\d{1,2})/(2|4|8|16|32|64)(?![\d/.]|-\d| ?-?(?:unc|unf|npt|bsp))"
        r"(?=( ?-?(?:in\b|inch|\"|''|lbs?\b|oz\b|kg\b|tons?\b))?)",
        _mixed,
    ),
    (r"(?<![\d./-])(\d{1,2})/(\d{1,2})(?![\d./]| ?[vw]\b)(\s*mm)?", _pair),
    # "(engine not marked)": what a label does not say.
    (
        r"\(?\b(?:(?:engine|vehicle|model|side|size|drive|grade|length|type|application|points?|make|strength|spec) )?"
        r"(?<!ends )(?:is )?(?:not|un) ?-?"
        r"(?:marked|stated|noted|given|known|legible|readable|recorded|specified|labelled|shown)\b\)?"
        r"|\(?\b(?:no|without) (?:marking|label|mark|size mark)s?\b\)?"
        r"|\((?:the )?label [^()]*(?:gone|missing|torn|worn|faded|off|illegible)\)",
        " ",
    ),
]


def _metres(found: _Found) -> str:
    return f"{float(found[1]) * 0.9144:.0f} m"


def _pitch(found: _Found) -> str:
    return f"{found[3]} x 1.75" if found[3] else f"{found[1]} x {'1.5' if found[2] == '2' else '1.25'}"


def _inches(thou: str) -> str:
    value = float(thou.replace("-", " ").split(" ")[0]) + (0.5 if "1/2" in thou else 0.0)
    return f"{value / 1000:.4f}".rstrip("0")


# Numbers in digits that belong together: 200 by 4.8, M10 by 1 1/2, 25 thou.
_LAST: list[Pattern] = [
    *NAMELESS,
    # "quarter twenty by one inch": the thread that is so called.
    (r"\b(?:quarter|1/4) ?-? ?(20|28)(?= (?:x|by|bolt|nut|screw|tap|die|stud)\b)", r"1/4-\1"),
    (r"\b(\d{1,3}) ?(?:yds?|yards?)\b", _metres),
    (r"(?<=\d) by (?=\d|\.\d)", " x "),
    (r"\b([1-9]) and (?=\d{1,2}/\d{1,2}\b)", r"\1 "),
    # "Half-inch female to three-eighths male": an adapter, once the numbers stand in digits.
    (
        r"^(\d/\d|1)(?: ?in(?:ch)?)? fem(?:ale)? (?:to|x|-) (\d/\d|1)(?: ?in(?:ch)?)? male\b",
        r"adapter \1 f x \2 m",
    ),
    (
        r"^(\d/\d|1)(?: ?in(?:ch)?)? male (?:to|x|-) (\d/\d|1)(?: ?in(?:ch)?)? fem(?:ale)?\b",
        r"adapter \1 m x \2 f",
    ),
    (r"\baw[- ]?(?=\d\d\b)", "hydraulic "),  # AW46: hydraulic oil against wear
    # "the twelve triple-square", "tee nine to tee forty": sizes of tips that were said.
    (r"\bm (?=\d{1,2} triple ?square\b)", "m"),
    (r"\bt (\d{1,2}) (?:to|-) t (\d{2})\b", r"t\1-t\2"),
    (r"\b(m\d{1,2}) x 1 1/(2|4)\b(?!\d)|\b(m\d{1,2}) x 1 3/4\b", _pitch),
    (
        r"(\d+(?:\.\d+)?) ?(-|to) ?(?=\d+(?:\.\d+)? ?(?:thou|thousandths?)\b)",
        lambda found: f"{_inches(found[1])} in {found[2]} ",
    ),
    (
        r"(\d+(?:\.\d+)?|\d+ 1/2|\d+-1/2) ?(?:thou|thousandths?)\b(?: of an inch)?",
        lambda found: f"{_inches(found[1])} in",
    ),
]
