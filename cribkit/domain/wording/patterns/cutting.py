"""Taps, dies, drills, saws and files."""

from __future__ import annotations

CUTTING = [
    (r"(\bdrills?(?: bits?)?),? l/hand\b", r"\1 left hand"),
    (r"(\bdies?\b.*?)\b(?:standard|std|normal|ordinary) (?=coarse\b|fine\b)", r"\1"),
    (r"^(?=.*\btaps?\b)(.*?)\bspiral[- ]?(?:flute[ds]?|point(?:ed)?|gun)?\b", r"\1spiralflute"),
    (r"(\bchaser\b.*?)\b(10|12|14|18) ?mm\b(?=.*spark)", r"\1m\2"),
    (r"\bdrillbit\b", "drill bit"),
    (r"^(?=.*\bdrills?\b)(.*?)\b(?:hss-?e )?(?:co ?5|m35|5 ?% cobalt|cobalt 5 ?%)(?=$|[ ,)])", r"\1cobalt"),
    (r"\bcobalt steel\b", "cobalt"),
    (r"(\btap\b.*?)\bm (?=\d{1,2} ?x ?\d)", r"\1m"),
    (
        r"(\btap\b.*?)(?<![\w.])(3|4|5|6|8|10|12|14|16) ?(?:x|by) ?(0\.[578]0?|1(?:\.(?:25|50?|75|0))?|"
        r"2(?:\.0)?)(?= ?(?:mm)?(?:$|[ ,]))(?! ?x)",
        r"\1m\2x\3",
    ),
    (r"(\btap\b.*?)\b(?:1st|first)(?: (?:tap|taper|cut))?\b", r"\1taper"),
    (r"(\btap\b.*?)\btaper (?:first|1st|\(1st\)|taper)", r"\1taper"),
    (r"^(?:1st|first) (?=.*\btap\b)", "taper "),
    (r"\breverse (?=(?:twist )?drills?\b)", "left hand "),
    (r"\bcobalt drill for spot ?welds?\b|\bdrill,? (?:for )?spot ?welds?\b", "spot weld drill"),
    (r"\bhacksaw (?:frame )?for (\d+) ?(?:in|inch|\")(?: \w+)? blades\b", r"hacksaw frame \1 in"),
    (r"\bdrl[ /]?stp\b|\bdrill/step\b|\bdrl step\b", "step drill"),
    (r"^(?=.*\brea?e?mm?e?r\b)(.*?\b(?:mm|mil),? )\(?h7\b\)?", r"\1"),
    (r"\bstep ?drill\b", "step drill"),
    (r"^(?=.*\bstep)(?=.*\b(?:bit|drill)\b)(.*?)\b(\d{1,2})/(\d\d) ?mm\b", r"\1\2-\3 mm"),
    (r"^(?=.*\bdrill\b)(.*?)\b(\d{1,2}/\d{1,2})(?: ?in\b\.?| ?\")? ?\(\d+\.\d+ ?mm\)", r"\1\2 in"),
    (
        r"^(?=.*\b(?:tap|die)\b)(.*?)\b(\d{1,2}) ?(?:mm|mil) ?(?:x|by) ?([0-2]\.\d+)(?: ?mm)?\b(?! ?(?:od|long))",
        r"\1m\2x\3",
    ),
    (r"\btap tapper\b", "tap taper"),
    (r"\bfirst tap \(taper\)", "taper tap"),
    (
        r"(\bdie\b.*?)\b(?:to fit|for|to suit) (?:the |our |my )?(\d\d)[- ]?mm die[- ]?(?:stock|holder)\b",
        r"\1 \2 mm od",
    ),
    (r"^(?=.*\brea?e?mm?e?r\b)(.*?)\b(\d+(?:\.\d)?) ?(?:mm|mil)?,? ?(?:tol(?:erance)?\.? )?h7\b", r"\1\2 mm"),
    (r"^(?=.*\brea?me?r\b)(.*?)\bpar(?:l|a)?\b\.?", r"\1parallel"),
    (r"(\bhacksaw blades?\b.*?)\b(14|18|24|32|twenty[- ]four|thirty[- ]two|eighteen) teeth\b", r"\1\2 tpi"),
    (r"^(?:an? |the )?long strong[- ]arm,?(?=.*\d (?:in|inch|mm)\b.*\bbreaker bar\b)", ""),
    # Drills and taps: HSS-E is the steel with cobalt, and a pitch behind a bare diameter is that of its thread.
    (r"\bhss-?e\b(?=.*\b(?:cobalt|co ?[58]))", "hss"),
    (r"\bstraight[- ]fluted? (?=(?:hand |taper |plug |bottoming |second )?tap\b)", "straight "),
    (r"\btpa (?=m\d)", "tap "),
    (r"^(?=.*\b(?:hack|h/) ?saw\b)(.*?(?:\"|in\b|mm)) x (\d\d)(?:t| tpi)\b", r"\1 , \2 tpi"),
    (r"\bball (?:join|jt|jnt|jiont) (?=splitter|sep\w+|fork|breaker|remover)", "ball joint "),
    (r"\bto (?:drive|knock|tap|punch) (?:the )?(?:dowels?|pins?) out\b", ""),
    (
        r"^(?=.*\b(?:second|bastard|smooth)[- ]cut\b)(?!.*\b(?:files?|rasps?|burrs?|bits?)\b)"
        r"(.*?)\b(half[- ]round|flat|round|square)\b",
        r"\1\2 file",
    ),
    (r"\btapper (?=tap\b)", "taper "),
    (r"(\bdie\b.*?)\b(?:to fit|for) (?:an? )?(\d\d)[- ]?mm die[- ]?(?:stock|holder)\b", r"\1 \2 mm od"),
    (r"^(?=.*\b(?:hack|h/) ?saw\b)(.*?)\bteeth (?:to the|per|/) ?inch\b", r"\1tpi"),
    (r"^(?=.*\b(?:hack|h/) ?saw\b)(.*?)\b(\d\d)[- ]?(?:t|teeth)\b", r"\1\2 tpi"),
    (
        r"^(?=.*\b(?:hack|h/) ?saw\b)(.*?)\b(\d{3}) ?x ?(\d\d) ?x ?(\d\d) ?tpi\b",
        r"\1\2 mm x \3 mm , \4 tpi",
    ),
    (r"^(?=.*\bdrill\b)(.*?)\bsh(?:an)?k (?:of )?\d+(?:\.\d+)? ?mm\b", r"\1 shank"),
    (
        r"^(?=.*\bdrill\b)(.*?\d ?mm\b.*?),? \b\d+(?:\.\d+)? ?mm (?:reduced |parallel |straight )?sh(?:an)?k\b",
        r"\1 shank",
    ),
    (r"\bstepped (?=(?:cone|drill|cutter))", "step "),
    (r"\bbreaker bar (half inch|1/2|3/8|3/4)(?: drive| dr)? (1[258]|18|24|30|36)$", r"breaker bar \1 drive \2 in"),
    (r"\btaps? ?\+ ?dies?\b", "tap and die"),
    (r"\bpower bit (?:adaptor|adapter|adptr)\b", "drill adapter"),
    (r"(\b(?:adapter|reducer|adaptor)\b.*)\bbreaker bar\b", r"\1"),
    (r"\bhigh[- ]speed steel\b", "hss"),
    (r"\b((?:breaker|knuckle|power|pry|crow) bar .*?)\b([1-9]\d{2})$", r"\1\2 mm"),
    (  # BSPT TAP 1/4
        r"\b(nptf?|bsp[pt]?),? (taps?|dies?|plugs?|fittings?),? (1/8|1/4|3/8|1/2|3/4|1)\b(?![/.\d-]| ?(?:npt|bsp|x))",
        r"\2 \3 \1",
    ),
    (r"(saws?\b.*?),? (?:x ?)?(14|18|24|32) ?t\b", r"\1, \2 tpi"),  # hacksaw blade 300 x 32T
    (r"\b(?:number|wire gauge) drills?(?: bit)?,? (\d{1,2})\b(?! ?mm|[./])", r"drill bit no \1"),
    (r"\b(drills?\b.*\d.*?),? (?:with )?(?:\d/\d+|\d+ ?mm)(?:\"| ?in\b)? ?(?:reduced|red) shank\b", r"\1 reducedshank"),
    (r"\b(drills?\b.*\d.*?),? (?:with (?:a )?)?(?:reduced|red) shank\b", r"\1 reducedshank"),
    (r"\bdrl(?=,? ?\d)", "drill"),
    (r"(?<=\d ) ?bl\b(?=$|,| )|(?<=\d)bl\b", " blades"),
    (r"(\btap\b.*?),? (?:standard|normal|usual) pitch\b", r"\1 coarse"),
]
