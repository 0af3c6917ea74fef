"""How scanners misread what stands inside sizes: a pattern, and what it stood for.

Applied in this order to text in lower case. Common practice of the trade, no source."""

from __future__ import annotations

# Scanning errors inside sizes: letters for digits and a stroke read as a one or a bracket.
SCAN = [
    (r"\b(m\d{1,2} ?x ?)l(?=\.\d)", r"\g<1>1"),
    (
        r"(?<=\bno )([0-4]),(?=\d)|(?<=\bno\. )([0-4]),(?=\d)|(?<=#)([0-4]),(?=\d)|(?<=size )([0-4]),(?=\d\d)",
        r"\1\2\3\4 , ",
    ),  # PHILLIPS,NO 2,75MM
    (r"(?<![\d.,])([1-9]\d?),(\d{3})(?= ?(?:kg|lbs?|n|rpm|v|w)\b)", r"\1\2"),  # 3,000KG
    (r"\b((?:e|t|tx)-?\d{1,2}),(?=\d+ ?(?:mm|in\b|\"|/))", r"\1, "),  # STAR,TX30,10MM SQ
    (r"(?<=hex )l ?(\d{2,3})\b(?! ?x)", r"\1 mm long"),  # 10HEX L75
    (
        r"(?<=\binsp )lmp\b|(?<=\btest )lmp\b|(?<=\bhand )lmp\b|(?<=\bwork )lmp\b|\blmp(?=,? (?:insp|test|led)\b)",
        "lamp",
    ),
    (r"(?<=(?:ph|pz)-[0-4]),(?=\d)", " , "),  # PZ-1,80MM
    (r"(?<=[a-z],)l,(?=\d)", "l , "),  # HEX KEY,L,5MM
    (r"(?<![a-z\d])(\d)ooo(?= ?v\b)", r"\g<1>000"),  # 1OOOV
    (r"(?<=x)([1-9])oo\b|\b([1-9])oo(?=mm\b)", r"\1\g<2>00"),  # PH2X1OO, 3OOMM
    (r"\b([1-9]\d?)[l|i!]((?:2|4|8|16|32)(?=[ -]?(?:dr|drv|drive|sq)\b))", r"\1/\2"),  # 1l2DR
    (r"\b[il|](?=\d{1,3}(?:mm|nm)\b)", "1"),  # l25MM
    (r"\b[il|]{2}(?=\s*(?:mm|rnm)\b)", "11"),  # ll mm
    (
        r"(?<![a-z\d])(\d+)[il|](?=\s*(?:mm|rnm|nm|n\.m|in\.|inch|\")(?![a-z])|\s*x\s*\d)",
        r"\g<1>1",
    ),  # 2l mm
    (
        r"(?<![a-z\d])[il|](?=\d{1,3}(?:\.\d+)?\b\s*(?:mm|rnm|nm|x|pt|dr|deg|v|w|ml|t|kg|psi|bar|-))",
        "1",
    ),  # l2 x 2
    (r"(?<=x )[il|](?=\d{1,2}\b)", "1"),  # 10 x l2
    (r"(?<=\d)[il|](?=\d\s*(?:mm|nm)\b)", "1"),  # 1l0 mm
    (r"(?<![a-z\d])([p#]?\d+)oo+(?![a-wyz]|x(?!\d))", r"\g<1>00"),
    (r"(?<![a-z\d])(\d)oo(?=ml\b|mm\b|nm\b|g\b|gm\b|v\b|w\b)", r"\g<1>00"),  # 4OOML
    (r"\bdot[ -]?s(?=\.1|\b)", "dot 5"),
    (r"\bsw-?(?=[2-6]0\b)", "5w-"),  # SW30
    (r"(?<=x\d)s\b", "5"),  # M8X2S
    (r"(?<=\d\.)s(?=x\d|\b)", "5"),  # 6.SX150
    (r"\b[il]o(?=ml\b|mm\b)", "10"),
    (r"\bbx[1il]oo\b", "bx100"),
    (r"\b[il](?=\dx\d)", "1"),
    (r"\blmp\b", "imp"),
    (r"(?<=\d)o(?=in\b)", "0"),
    (r"\b5(?=kt\b|ckt\b|pnr\b|cdr\b|crew|ocket|panner)", "s"),  # 5KT  # P4OO
    (r"(?<![a-z\d])(\d?)ow(?=[ -]?\d)", r"\g<1>0w"),  # OW-20
    (r"\bd0t\b", "dot"),
    (r"\b(dot[ -]?5[.,])[il|]\b", r"\g<1>1"),  # DOT 5.l
    (r"\b(ph|pz)o\b", r"\g<1>0"),  # PHO
    (r"\b([1357])[l|i!(\[]([248]|16)(?=[fm]\b)", r"\1/\2"),  # 3l4F
    (r"\b([il|1-9]\d?)/[il|]6(?=\b|in\b|dr\b)", r"\1/16"),  # 5/l6
    (r"\b[il|]([il|1-5])/(?=16\b|32\b)", r"1\1/"),  # l1/16
    (r"\b[s](?=/(?:8|16|32)\b)", "5"),  # S/16
    (r"\b([1il|])/z\b", "1/2"),
    (r"(?<=\d)([ -]?)[l1](?=n\b|nch\b)", r"\1i"),  # 1/4-lnch
    (r"(?<!\d)([1-9]?)b(?=\s*mm\b)", r"\g<1>8"),  # 1B mm
    (r"(?<=\d\.)o\b", "0"),  # 1.O
    (r"(?<=\d)o(?=\d|x\d|\s*mm\b|\s*pt\b|\s*nm\b|\b)", "0"),  # 1O mm -> 10 mm, E1O, T3O
    (r"(?<=\dw)(?=\d)", "-"),  # 5w30
    (r"\bo(?=[.,]\d)", "0"),  # O.5
    (r"\b[il|](?=[.,]\d)(?![.,]\d{2,3} ?mm)", "1"),  # l.25
    (r"\b([et]|tx|m|ph|pz)[il](?=\d\b)", r"\g<1>1"),  # El0 -> E10
    (r"\b([et])[il][o](?=\b)", r"\g<1>10"),  # ElO -> E10
    (r"\b[il|](?=[\d]\s*(?:mm|pt|dr)\b)", "1"),  # l0mm -> 10mm
    (r"\b[il|]o(?=\s*mm\b)", "10"),  # lOmm
    (r"\b([1-9]\d?)[l|i!(\[]((?:2|4|8|16|32)\b)", r"\1/\2"),  # 3l8 -> 3/8, 1(2 -> 1/2
    (r"\b[il|]/(?=[248](?!\d))", "1/"),  # l/2 -> 1/2
    (r"\b([1-9]\d?)/b\b", r"\1/8"),  # 3/B
    (r"\b([1357])1([248])(?=[ -]?(?:in\b|inch|\"|dr\b|drive|sq\b|sq\.))", r"\1/\2"),  # 318-inch -> 3/8
    (r"\b([1357]|1[135])1(16)(?=[ -]?(?:in\b|inch|\"))", r"\1/\2"),  # 7116-inch -> 7/16
    (r"(?<=\d)\s*(?:rnm|nnm|mrn|rnrn|mm\.|m\.m\.?|m/m|mms)(?![a-z])", "mm"),
    (r"(?<=\d) ?m m\b", "mm"),
    (r"\b([1-9])z(?=\s*mm\b)", r"\g<1>2"),  # 1Zmm
    (r"\b([12])s(?=\s*mm\b)", r"\g<1>5"),  # 1Smm
]
