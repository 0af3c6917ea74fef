"""Bulbs, relays and batteries."""

from __future__ import annotations

BULBS = [
    (r"^(?=.*\b(?:capless|wedge|w3x16[qd])\b)(.*?)(?<![\w/])21/5 ?w\b", r"\1w21/5w"),  # no bayonet: another bulb
    (
        r"(\bbulb\b.*?)\b(?:(?:capless |push-?in |all-glass |glass )?wedge(?: \(capless\)| type| base| bs)?|"
        r"wdge(?: base)?|cap-? ?less|(?:base )?w2[.,]1 ?x ?9[.,]5 ?d)(?=$|[ ,])",
        r"\1capless",
    ),
    (r"(\brelay\b.*?)\b(?:four|4)[- ]?pin\b", r"\g<1>4pin"),
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
    (r"\btwenty[- ]one[ /-](?:watt )?five(?: watt)?\b(?=.*\b(?:bulb|lamp)s?\b)", "21/5w"),
    (r"\b21(?: ?/ ?| ?- ?)5 ?w\b|(?<=v)21(?:/|-)5 ?w\b", " 21/5watt "),
    (r"^lamp,? filament,? (?=.*\b21/5watt)|^lamp,? (?=stop ?(?:/|and|) ?tail\b.*\b21/5watt)", "bulb "),
    (r"(\b21/5watt\b.*\bbulbs?),? for the rear (?:light|lamp)s?\b", r"\1"),
    (
        r"\b(?:(?:clamp|clip|clmp),? hose|hose (?:clip|clamp|clmp)),? (?:crimp type,? )?(?:double|two|twin|2)[- ]ear\b",
        "ear clamp 2 ear",
    ),
    (
        r"\b(two|double|twin|dbl|2)[- ]ear(?:ed)? (?:hose |pinch |crimp |o[- ]?)(?:clip|clamp|clmp)(?=s?\b)",
        "2 ear clamp",
    ),
    (r"\bblub\b", "bulb"),
    (r"(\b(?:clip|clamp|clmp|clp)s?\b.*)\bw/d\b", r"\1worm drive"),
    (r"\b(single|double)-ear crimp clip\b", r"\1 ear clamp"),
    (r"\bt[- ]bolt for (?:an? )?(\d+) ?mm hose\b", r"t-bolt clamp \1 mm"),
    (r"\bclamp,? (1|2|one|two)[- ]ear\b", r"ear clamp \1 ear"),
    (r"^(?:clamp|clip) for (?:an? |the )?(\d+) ?mm (?:\w+ )?hose\b", r"hose clamp \1 mm"),
    (r"\bcrimp(?:ed|ing)?[- ](?:type )?(ear (?:clamp|clip))\b(?!.*\b(?:pliers?|tool|pincers?)\b)", r"\1"),
    (r"\bhose (?:clp|clip|clamp|clmp),? ear\b", "ear clamp"),
    (
        r"^(?=.*\b(?:bolts?|nuts?|studs?|(?:cap)?screws?)\b)(.*?)\b(?:[lr]h|left[- ]hand|right[- ]hand|left|right) "
        r"(?=(?:front |rear )?(?:door|mirror|seat|wing|headlamp|bumper|caliper|hub|side)\b)",
        r"\1",
    ),
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
