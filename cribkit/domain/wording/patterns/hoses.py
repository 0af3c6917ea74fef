"""Hoses, clamps and clips."""

from __future__ import annotations

HOSES = [
    (r"\bworm[- ](?:geared|driven|gear)\b", "worm drive"),
    (r"(\bcla?mps?\b.*?|\bclips?\b.*?)\bmin\.? ?(\d{1,3})(?: ?mm)?,? max\.? ?(?=\d{1,3} ?mm\b)", r"\1\2-"),
    (r"(\bcla?mps?\b.*?|\bclips?\b.*?)\bbetween (\d{1,3})(?: ?mm)? and (?=\d{1,3} ?mm\b)", r"\1\2-"),
    (r"(\bcla?mps?\b.*?|\bclips?\b.*?)\b(\d{1,3})(?: ?mm)? up to (?=\d{1,3} ?mm\b)", r"\1\2-"),
    (r"\bsstl\b|\bstainless st\b\.?|\bstain(?:l)?\.? steel\b", "stainless"),
    (
        r"(\b(?:push|trim|fir ?tree) (?:type )?(?:clip|rivet)s?\b.*?), (?:fender|wheel arch|arch|wing|bumper|"
        r"door|splash|engine) (?:liner|shield|card|panel|cover|to wing)s?$",
        r"\1",
    ),
    (r"^(?=.*\bworm\b)(.*?)\b(?:charge air|boost|turbo|intercooler) (?=(?:hose )?cli?[pm])", r"\1"),
    (
        r"\bworm[- ]drive clip to (?:the |an? )?(\d+) ?mm (?:charge air |boost |coolant |heater )?hose\b",
        r"hose clip worm drive for \1 mm hose",
    ),
    (r"\bhoseclip\b", "hose clip"),
    (r"\befi fuel (?:line|pipe)\b", "fuel injection hose"),
    (r"\bright[- ]angled?\b(?=.*\b(?:hose|elbow|bend)\b)", "90 deg"),
    (
        r"\be[- ]type (?:circlip|retaining ring|snap ring|ring)\b|"
        r"\b(?:retaining )?ring,? ?(?:retaining)?,? ?e[- ]type\b|\be[- ]?clpi\b",
        "e-clip",
    ),
    (
        r"^(?=.*\be[- ]?(?:clips?|rings?|clp)\b)(.*\d ?mm groove\b.*?) ?\(?shafts? \d+(?: ?mm)?(?:-| ?to ?)"
        r"\d+(?: ?mm)?\)?",
        r"\1",
    ),
    (r"(\bp[- ]?clips?\b.*?),? (?:to take|to suit|for) (?:an? )?(?:4|four) ?(?:mm|mil) bolts?\b", r"\1 m4"),
    (r"(\bp[- ]?clips?\b.*?),? (?:to take|to suit|for) (?:an? )?(?:5|five) ?(?:mm|mil) bolts?\b", r"\1 m5"),
    (r"(\bp[- ]?clips?\b.*?),? (?:to take|to suit|for) (?:an? )?(?:6|six) ?(?:mm|mil) bolts?\b", r"\1 m6"),
    (r"(\bp[- ]?clips?\b.*?),? (?:to take|to suit|for) (?:an? )?(?:8|eight) ?(?:mm|mil) bolts?\b", r"\1 m8"),
    (r"\be[- ]type (?:retaining )?(?:clip|clp)(?=s?\b)|\be clps?\b", "e-clip"),
    (r"\bretaining (?:washer|clip),? e[- ](?:shaped?|type)\b", "e-clip"),
    (
        r"\b(?:air ?con(?:ditioning)?|a/c|ac)(?: (?:pipe|hose|line|system|circuit))? seal,? (?=o[- ]?ring)",
        "a/c ",
    ),
    (r"(\bp[- ]?clips?\b.*?)\bd ?(\d{1,2}) (?=hole\b)", r"\1\2 mm "),
    (r"(\bp[- ]?clips?\b.*?)\bzinc steel\b", r"\1zinc"),
    (r"\bpipe clip,? \"?p\"?[ -]type\b", "p-clip"),
    (
        r"(\bp[- ]?clips?\b.*?) to (?:hold|carry|support|secure) (?:an? |the )?(\d{1,2}) ?mm "
        r"(?:hose|pipe|cable|tube)\b",
        r"\1 \2 mm",
    ),
    (r"(\b(?:push rivet|trim clip|scrivet|fir tree clip)s?\b.*?)\b(?:nylon|nyl)\b", r"\1plastic"),
    (r"\br (?=9\b)(?=.*\bfuel\b)|(\bfuel (?:pipe|hose|line)\b.*?)\br nine\b", r"\1 r9"),
    (r"\b(r(?:6|7|9|10)) fuel (?:line|pipe)\b", r"\1 fuel hose"),
    (r"^fuel line (?=efi\b|.*\b(?:i/?d|bore)\b.*\b(?:30)?r(?:6|7|9|10)\b)", "fuel hose "),
    (r"\bfuel injection rubber (?:pipe|hose)\b", "fuel injection hose"),
    (r"\bhose clp\b", "hose clip"),  # no oil of the kind CLP
    (r"\b(top|bottom|upper|lower) hose (?:for|of|on|to) the rad(?:iator)?\b", r"radiator \1 hose"),
    (r"^(?=.*\brad(?:iator)? hose\b)(.*?) (?:leaking|losing|dropping) (?:coolant|water),? (?:split|perished) ", r"\1 "),
    (r"; on the hose (?:onto |over )?the (?:stub|spigot|pipe|union|barb)s?(?: and)?$", ""),
    (r"\bclip,? mini,? bolt[- ]type\b", "fuel hose clip mini bolt"),
    (r"\bconstant[- ]tension band clip\b", "spring band clip"),
    (r"\bretainer,? e[- ]type\b|\bdin ?6799\b", "e clip "),
    (r"(\bt-?bolt\b.*?)\b(\d\.\d\d)-(\d\.\d\d)\b(?! ?(?:in|mm|\"))", r"\1\2-\3 in"),
    (r"\bspring cotters?\b", "r clip"),
    (r"\be[- ]type (?=circlip|retaining|snap|ring|clip)|\b(retaining|snap|ret) ring,? e[- ]type\b", "e clip "),
    (r"\bring,? retaining,? e[- ]type\b|\bcirclip,? e[- ]type\b", "e clip "),
    (r"\bworm ?drive, (?=\d)", "wormdrive "),
    (r"^(pins?),? (\d[\dx./ -]*(?: ?mm)?),? (split|roll|cotter|clevis|dowel|taper)\b(?! ?(?:pin|clip))", r"\3 \1 \2"),
]
