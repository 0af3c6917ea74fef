"""Hoses, clamps and clips."""

from __future__ import annotations

HOSES = [
    (r"(\bhose (?:clip|clamp)\b.*\d ?mm),? screw (?:band|type)\b", r"\1"),
    (
        r"^(clamp|clip)s? for (?:an? |the |my )?(?:lower |upper |top |bottom )?(radiator hose|hose)\b(?=.*\d)",
        r"hose \1 for \2",
    ),
    (
        r"^(clamp|clip)s? for (?:an? |the |my )?(?=(?:\d+|\d[\d/-]*) ?(?:mm|in|inch|\")? (?:od |id )?(?:radiator |"
        r"heater |coolant |intake )?hose\b)",
        r"hose \1 for ",
    ),
    (r"\b(clamps?|clips?) (?:to go|that goes|going|to fit) (?:a?round|over) (?:an? |the )?", r"\1 for "),
    (r"(?<=\bcable )reach\b(?=.*|$)", "type"),
    (r"\b(?:turbo )?hose clamp with (?:tee|t)[- ]bolt\b", "t-bolt clamp"),
    (r"(?<=injection clamp, )band, ", ""),
    (r"^(exhaust clamp,?) ([1-5](?:\.(?:25|5|75|0))?)$", r"\1 \2 in"),
    (r"\bfuel (?:line|hose|injection|injector) (?:hose )?clamps?\b(?! plier| tool)", "fuel hose clip"),
    (r"\bworked through (?=an? )", "with "),
    (r"\bcv[- ]?(?:joint )?boot (?=ear clamp\b.*\d)", ""),
    (r"^(\d{1,3}(?: ?mm)? ?(?:-|to|/) ?\d{2,3})(?: ?mm)? clips?$", r"hose clip \1 mm"),
    # "25MM MIN 40MM MAX", "25/40 x 12 mm" with its band.
    (r"(\b(?:clips?|clamps?)\b.*?)\b(\d{1,3}) ?mm min\.?,? (\d{1,3}) ?mm max\b\.?", r"\1\2-\3 mm"),
    (
        r"(\b(?:clips?|clamps?)\b.*?)(?<![\d/.])(\d{1,3}) ?[-/] ?(\d{2,3})(?: ?mm)? *x ?(9|12|12\.7|13|14|16)(?: ?mm)?"
        r"(?: wide)?$",
        r"\1\2-\3 mm band \4 mm",
    ),
    (r"^(?=.*\bt-?bolt\b)(.*?),? ?\b(?:charge air|boost|turbo|intercooler) hose\b,? ?", r"\1 "),
    (r"(\bcl(?:am|i|m)?ps?\b.*?)\bw/d\b(?= ?\d)", r"\1worm "),
    (r"\b(\d/\d{1,2}|\d{1,2} ?mm) fuel line (clamp|clip)s?\b(?! (?:pliers|tool|set))", r"fuel hose clip \1"),
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
    (r"\bfi (?=hose (?:clamp|clip))", "fuel injection "),
    (r"\bt[- ]?bolt (?:clamp )?for (?:an? )?(\d+) ?mm (?:hose|pipe)\b", r"t-bolt clamp for \1 mm hose"),
    (r"\b(?:fuel )?injection clamp\b(?! ?pump)", "fuel hose clip"),
    (r"^clamp,? mini,? fuel hose\b|\bfuel (?:line |hose )?mini cli?[pm]\w*\b", "fuel hose clip mini"),
    (
        r"\bconstant tension,? (?:spring )?(?:band )?(?=clamp\b.*\bhose|.*\bhose od)|(?<=spring band)"
        r", constant tension\b",
        "constant tension ",
    ),
    (r"(\b(?:p[- ]?clip|loop clamp)s?\b.*?\bm\d{1,2}) fixing\b", r"\1 hole"),
    (r"(\b(?:p[- ]?clip|loop clamp)s?\b.*?)\bfixing (?=m\d)", r"\1"),
    (r"(\bspring (?:band )?(?:hose )?(?:clip|clamp)s?\b.*?),? w(?:/|ith) tangs\b", r"\1"),
    (r"(\bhose (?:clamp|clip)s?\b.*?)\bd ?(\d{2})\b(?! ?x)", r"\1\2 mm"),
    (
        r"(\b(?:clip|clamp)s?,? hose\b.*?\b\d{2} ?mm|\bhose (?:clamp|clip)s?\b.*?\b\d{2} ?mm) dia x "
        r"(\d{1,2})(?: ?mm)? wide\b",
        r"\1, \2 mm band",
    ),
    (r"(\b(?:p[- ]?clip|loop clamp|clamp,? loop)s?\b.*?)\b6\.4 ?mm (?:fixing|mounting|bolt) hole\b", r"\1m6"),
    (r"(\b(?:p[- ]?clip|loop clamp|clamp,? loop)s?\b.*?)\b5\.3 ?mm (?:fixing|mounting|bolt) hole\b", r"\1m5"),
    (r"(\b(?:p[- ]?clip|loop clamp|clamp,? loop)s?\b.*?)\b8\.4 ?mm (?:fixing|mounting|bolt) hole\b", r"\1m8"),
    (
        r"\b(?:(?:clamp|clip|clmp),? hose|hose (?:clip|clamp|clmp)),? (?:crimp type,? )?(?:double|two|twin|2)[- ]ear\b",
        "ear clamp 2 ear",
    ),
    (
        r"\b(two|double|twin|dbl|2)[- ]ear(?:ed)? (?:hose |pinch |crimp |o[- ]?)(?:clip|clamp|clmp)(?=s?\b)",
        "2 ear clamp",
    ),
    (r"(\b(?:clip|clamp|clmp|clp)s?\b.*)\bw/d\b", r"\1worm drive"),
    (r"\b(single|double)-ear crimp clip\b", r"\1 ear clamp"),
    (r"\bt[- ]bolt for (?:an? )?(\d+) ?mm hose\b", r"t-bolt clamp \1 mm"),
    (r"\bclamp,? (1|2|one|two)[- ]ear\b", r"ear clamp \1 ear"),
    (r"^(?:clamp|clip) for (?:an? |the )?(\d+) ?mm (?:\w+ )?hose\b", r"hose clamp \1 mm"),
    (r"\bcrimp(?:ed|ing)?[- ](?:type )?(ear (?:clamp|clip))\b(?!.*\b(?:pliers?|tool|pincers?)\b)", r"\1"),
    (r"\bhose (?:clp|clip|clamp|clmp),? ear\b", "ear clamp"),
    (r"\bclamp to hold (?:an? |the )?", "hose clamp "),
    (r"(\b(?:clamp|clip|clmp)\b.*\d) ?(?:mm )?\b(9|12)w\b", r"\1 mm, \2 mm band"),
    (r"\bt[- ]?bolt (?=\d)", "t-bolt clamp "),
    (r"\btwo[- ]eared (?:crimp )?(?:clip|clamp)", "two ear clamp"),
    (r"\bt[- ]?bolt hose (?=clamp|clip)", "t-bolt "),
    (
        r"\bw ?/ ?d\b(?=.*\b(?:clamp|clip|clp))|(?<=clamp )w ?/ ?d\b|(?<=clip )w ?/ ?d\b|(?<=clmp )w ?/ ?d\b",
        "worm drive",
    ),
    (
        (r"\bhs(?=,? (?:htr|heater|fuel|vac|rad|clnt|coolt|air|brk|oil|hyd|pwr)\b)|(?<=clmp )hs\b|(?<=clamp )hs\b"),
        "hose",
    ),
    (r"^(clips?|clamps?),? (\d[\dx./ -]*(?: ?mm)?),? (hose|p|r|e|ear)\b(?! ?(?:clip|clamp))", r"\3 \1 \2"),
]
