"""Figures, units stuck to them, decimal commas, misread digits."""

from __future__ import annotations

import re

from cribkit.domain.wording.patterns.pattern import Pattern

_SINGLE = ("one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "twelve")

_MIL = re.compile(r"(?<=\d)[ -]?mil\b")

NUMBERS: list[Pattern] = [
    # Spoken millimetres; of a glove mil are thousandths of an inch, of a bottle millilitres.
    (
        r"^(?!.*(?:\b(?:gloves?|glvs?|latex|bottles?|btl|tubes? of|syringe|cans?|tins?|jugs?|sheeting|bags?|foil|"
        r"adhesive|"
        r"glue|superglue|sealants?|sealers?|oil|fluid|grease|paste|nitrile(?!.*\b(?:ring|seal))|\d ?pints?)\b|"
        r"lock(?:er|ing|ite)?\b|disposable)).*\d[ -]?mil\b.*$",
        lambda found: _MIL.sub(" mm", found[0]),
    ),
    # "twentyone", "thirtysix": two numbers in one word.
    (
        r"\b(twenty|thirty|forty|fourty|fifty|sixty|seventy|eighty|ninety)(one|two|three|four|five|six|seven|eight|"
        r"nine)\b",
        r"\1 \2",
    ),
    (r"\bnint(?:y|ey)\b|\bninety-?(?=deg)", "ninety "),
    (r"(?<![\d/.])((?:\d[ -])?\d{1,2}/(?:2|4|8|16|32)) (?=(?:wide|across)\b)", r"\1 in "),
    (r"(?<=\d)(\"| ?in\.?| ?inch(?:es)?) o/a\b(?: length\b)?", r"\1 long"),  # 8" o/a
    (
        r"(?:^|(?<=, )|(?<=by )|(?<=x ))(?:an? |one )?inch and an? (half|quarter)(?=$|,| (?:long|blade|shank|shaft)\b)",
        r"1 and a \1 inch",
    ),
    (
        r"\b((?:bent|angled|cranked|curved) (?:at|to|through|by)) (30|45|60|75|90|ninety|forty[ -]five|"
        r"sixty|thirty)(?=$|[,;)]| (?:for|on|to|in|please)\b)",
        r"\1 \2 deg",
    ),
    (r"(?<=\d) ?(deg(?:ree)?s?\.?) ang(?:el|le)d? (?=(?:tip|nose|point|end)s?\b)", r" \1 "),
    (r"(?<![\w./-])x(?=\d{2,3}(?:\.\d+)? ?mm\b)", "x "),  # PH2 x100mm
    (
        r"^(?=.*\b(?:screwdriver|flat blade|slotted|phillips|pozi)\b)(.*? by) one (fifty|twenty[- ]five|"
        r"seventy[- ]five)\b(?! ?(?:by|x)\b)",
        r"\1 one hundred and \2",
    ),
    (
        r"^(?=.*\b(?:screwdriver|driver|extension|pry bar|punch|chisel|file)\b)(.*?) one "
        r"(fifty|twenty[- ]five|seventy[- ]five)(?= (?:long|mil)\b)",
        r"\1 one hundred and \2 mm",
    ),
    (
        r"\b(?:(75) ?mm \(3|(100) ?mm \(4|(125) ?mm \(5|(150) ?mm \(6|(200) ?mm \(8|(250) ?mm \(10|(300) ?mm \(12)"
        r" ?(?:in\b\.?|inch|\")(?: (?:blade|shaft|long))?\)",
        r"\1\2\3\4\5\6\7 mm",
    ),
    (r"\bmf(?=\d{1,2} ?x)", "m"),
    (r"(?<=\d) ?mtrs?\b", " m"),
    (
        r"(?:, the )?\b(one|two|three)-(twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)\b"
        r"(?![- ](?:seconds?|fourths?|nd|th))"
        r"(?:-(?=(?:one|two|three|four|five|six|seven|eight|nine)\b))?(?: ones?\b)?",
        r" \1 hundred and \2 ",
    ),
    (r"(?<![\w.])\.(\d+)(?= ?(?:-|/|to) ?\d)", r"0.\1"),
    (r"\b(\d+) ?v ?(?:-|to) ?(\d+) ?v\b", r"\1-\2v"),
    (r"(?<=\")x(?=\d)", " x "),
    (r"(?<![\d./x-])(?<!x )(\d{1,3}(?:\.\d)?) dia\b(?!\.? ?\d)", r"\1 mm"),
    (r"(?<=\d)[- ]?(?:degre|dgree|degreee|degress)\b", " deg"),
    (r"^(?=.*\b(?:pick|punch|chisel|bar|drift|file)\b)(.*?)\b(\d{2,3}) lg\b", r"\1\2 mm long"),
    (r"(?<=\d) met(?:re|er)s?\b(?!s? long)", " m"),
    (r"\b(two|three|four|five|six|eight|ten|twelve) met(?:re|er)s?\b", r"\1 m"),
    (r"(?<![\d,./])(\d),(\d{1,2}) ?[-/] ?(\d{1,2}),(\d{1,2}) ?(?=(?:mm2?|sqmm|sq|nm|n\.m)\b)", r"\1.\2-\3.\4 "),
    (r"(?<![\d,./])(\d),(\d{1,2}) ?[-/] ?(\d{1,2}) ?(?=(?:mm2?|sqmm|sq|nm|n\.m)\b)", r"\1.\2-\3 "),
    (r"(?<![\d,./])(\d{1,2}),(\d{1,2})(?=,\s*(?:\d+ ?)?(?:lg|long|mm|len|thk|thick)\b)", r"\1.\2"),
    (r"\b(\d{1,3}) (000)\b(?= ?(?:kg|n\b|v\b|lbs?\b))", r"\1\2"),
    (r"\b(\d\.\d) d\b(?=$|,| )", r"\1 diesel"),
    (r"\b(\d) (\d/\d{1,2}) long\b", r"x \1-\2 in"),
    (r"\bhalf[- ]kilo\b", "500 g"),
    (r"\bdia(?:meter)?\.? ?(\d+(?:\.\d+)?)\b(?! ?(?:mm|in\b|x|/|\"|-)|,\d)", r"\1 mm"),
    (r"(-?\d+) ?\.{2,3} ?\+?(?=\d)", r"\1 to "),
    (r"\b(\d{1,2}) ?v ?/ ?(?=\d{1,3} ?w\b)", r"\1v "),
    (r"\bhalf[- ](?:a )?millimet(?:re|er)\b", "0.5 mm"),
    (r"\bhalf a (?:metric )?ton(?:ne)?\b", "0.5 t"),
    (r"\b[il](?=[05]w-?\d)", "1"),  # I5W-40
    (r"\bo-(?=\d{2,3} ?mm)", "0-"),
    (r"\bclass o\b", "class 0"),
    (r"\b(\d{2}) and (\d{2}) ?v(?:olts?)?\b", r"\1/\2v"),
    (r"\boutside diameter\b", "od"),
    (r"\b(?:a |one )?met(?:re|er)[- ]long\b", "1000 mm"),
    (r"\bp (?=(?:[a-z]+ )?hundred\b)", "grit "),
    (
        "".join(f"(?<!{one} )" for one in ("a", "teen", *_SINGLE)) + r"(?<!\d )\b(hundred|thousand)\b(?!ths)",
        r"one \1",
    ),
    (r"\b(\d{1,2})/(\d{1,2})/(\d{1,2})(?:/(\d{1,2}))(?= ?mm\b|$)", r"\1 x \2 x \3 x \4"),  # a brace of four sizes
    (r"(?<=mm) o/?a\b\.?", " long"),  # 95 mm o/a
    (r"(?<![\d,.])(\d{2,3}),(\d{2,3}),(\d{2,3})(?![\d,.])", r"\1 , \2 , \3"),  # 75,125,250
    (r"(?<=\d l) engine\b|(?<=litre) engine\b|(?<=liter) engine\b", ""),
    (r"(?<=\bv[468]) engine\b|(?<=\bv1[02]) engine\b", ""),
    (r"\ba/c line\b", "a/c"),
    (r"\b(\d+(?:\.\d+)?) wide\b", r"\1 mm wide"),
    (r"(?<= )x(?=\d+(?:\.\d+)? ?m\b)", "x "),  # 12mm x12m
    (r"(?<=\d) ?in\.? (?=hex)", '" '),  # 1 in. hex head is no internal hexagon
    (r"\b([io])\. ?d\b\.?", r"\1d"),  # I.D.
    (r"(-?\d+) ?/ ?\+ ?(?=\d+ ?(?:deg ?)?c\b)", r"\1 to "),  # -50/+550C
    (r"(?<=\dv)(?=\d+ ?[wa]\b)", " "),  # 12V55W
    (r"(?<=\d)(?=(?:nbr|fkm|epdm|hnbr)\b)", " "),
    (r"\b\d{1,2}(?:\.\d)? ?: ?1\b", " "),  # a ratio of gears
    (r"(?<=\d)ot\b", "0t"),  # 1OT
    (r"\b0il\b", "oil"),
    (r"\b(?:a |one )?metre (?=straight|rule\b|ruler)", "1000 mm "),
    (r"\binch and (?=an? (?:eighth|quarter|half|sixteenth))", "1 and "),
    (r"(?<=\d) ?0z\b", " oz"),
    (r"(?<=\d)oo(?=[avwm]\b)", "00"),  # 4OOA
    (r"(?<=\d)o(?=[avwmg]\b|pk\b|ml\b|pcs?\b)", "0"),  # 5Om
    (r"\bhaif\b", "half"),
    (r"(\d(?:\.\d+)? ?(?:-|to) ?\d+(?:\.\d+)?) ?mm sq\b\.?(?! ?(?:dr|drive|square))", r"\1 sqmm"),
    (r"\bsae (?=\d{1,2}[- ]?(?:pt|point|pc|piece))", "inch "),
    (r"(?<=[\d\"]) ?thru ?(?=\d)", " to "),
    (r"(?<=x )inch and (?=a )", "an inch and "),
    (r"\b2nd\b", "second"),
    (r"\b(\d+(?:\.\d)? ?mm),? (?:lg|long) (?=\d+ ?mm\b)", r"\1 , long , "),
    (r"(?<=\dmm)x(?=\d)", " x "),
    (r"(?<=\d) ?sq\.? ?mm\b", " sqmm"),
    (r"(?<=\d)[- ]degrees?\b", " deg"),
    (
        (
            r"(?<=[\d,a-z] )(?<!blk )(?<!blu )(?<!nitrile )(?<!latex )(?<!free )(?<!black )(?<!blue )"
            r"(?<!standard )(?<!std )(?<!normal )(?:l\.?|length:?) ?=? ?(\d{2,4})(?: ?mm\b)?(?![\w.]| ?(?:pcs?|pk|ml|"
            r"g|off|box|pairs?)\b)"
        ),
        r"\1 mm long",  # L 63
    ),
    (r"(?<![/.\d-])\b(\d{2,4}) (?=long\b)(?!.*\b\d{2,4} mm long)", r"\1 mm "),
    (r"\bdash (?=\d|four\b|six\b|eight\b|ten\b|twelve\b|sixteen\b)", "-"),
    (r"(?<=[a-wyz])\.(?=\d)", " "),  # SKT.10MM
    (r"(?:^|(?<=, ))inch and (?=a )", "an inch and "),
    (r"(?<=[a-z]),(?=[a-z\d])", ", "),
    (r"(?<=\dmm)(?=\d)", " "),
    (r"(?<=\d[\"'])(?=[a-z\d])", " "),
    (r"(?<=mm)(?=dp\b|deep\b|skt\b|imp\b|hex\b|x\d)", " "),
    (r"(?<![\d,./])(\d+),(\d{1,2})(?![\d,])(?=\s*(?:mm|nm|n\.m|l\b|ml|kg|in\b|x))", r"\1.\2"),  # 6,3 mm
    (r"(?<=x)(\d),(\d{1,2})\b", r"\1.\2"),  # M8x1,25
    (r"(?<![\d,./])(\d{1,3}),(\d{1,2})(?![\d,./]|\s*(?:pt|point|dr|drive|sq|pc|-))", r"\1.\2"),  # 15,3
    (r"(?<=\d),(?=\d{3}\b)", ""),  # 1,000
]
