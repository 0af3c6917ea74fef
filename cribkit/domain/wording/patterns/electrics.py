"""Bulbs, fuses, relays, terminals, cable and cells."""

from __future__ import annotations

ELECTRICS = [
    (r"\b16[- ]?pin (?=obd)|(?<=obd) 16[- ]?pin\b", ""),
    (r"\b(\d{1,2}) ?(?:gauge|ga)\.? (?:primary )?wire\b(?! (?:strip|brush|crimp|tie))", r"wire \1 awg"),
    (r"^(\d\d-\d\d) butt\b(?! ?hinge)", r"\1 awg butt connector"),
    (r"\bmini ?blade\b", "mini blade"),
    (r"\bminifuses?\b", "mini blade fuse"),
    (r"(\bfuse\b.*\d ?a) rating\b", r"\1"),
    (r"(\bfuse\b.*?)\brating (?=\d)", r"\1"),
    (r"\beyelet (?:crimp )?terminals?\b", "ring terminal"),
    (r"\bcrimp eyes?\b", "ring terminal"),
    (r"(\b(?:butt|splice|crimp|terminal)\b.*?)\b(\d{1,2}) ?(?:-|to) ?(\d{1,2}) ?(?:ga|gauge|gge)\b", r"\1\2-\3 awg"),
    (r"\bfs/bld\b|\bfs,? bld\b", "fuse blade"),
    (r"^(?:slide|slip|push|put|fit|place) an? (?:piece|length|bit) of (?=.*shrink)(.*?) over the [a-z ]+$", r"\1"),
    (r"\bheat[- ]?shrink crimp butts?\b", "heat shrink butt connector"),
    (r"\bplug[- ]in fuse\b", "fuse"),
    (r"(\b(?:connector|splice|terminal)s?\b.*), for (?:the )?[a-z]+ (?:feed|lead|wire|cable|harness)$", r"\1"),
    (r"(\b(?:connector|splice|terminal)s?\b.*); on the (?:cables?|wires?|leads?|ends)$", r"\1"),
    (r"(\bfuse\b.*); on fuse f\d{1,3}$", r"\1"),
    (r"\bpush[- ]on receptacles?\b", "female spade terminal"),
    (r"\bfully insulated females\b(?! \w)", "fully insulated female spade terminals"),
    (r"^(?=.*\b(?:ring|terminals?|lug)\b)(.*?\b(?:22-18|22-16|16-14|12-10)) ?g\b", r"\1 awg"),
    (
        r"^(?:\d|two|three|four|six|eight|ten|a couple of|some) "
        r"(?=(?:aaa?|pp3|double-a|triple-a) (?:alkaline|batter|cells?))",
        "",
    ),
    (r"\bbatt(?:rey|ey|rery|eyr)\b", "battery"),
    (r"^(?=.*shrink)(.*?)\b(?:three|3) to (?:one|1)\b", r"\g<1>3:1"),
    (r"^(?=.*shrink)(.*?)\b(?:two|2) to (?:one|1)\b", r"\g<1>2:1"),
    (r"^(?=.*shrink)(.*?)\b(?:four|4) to (?:one|1)\b", r"\g<1>4:1"),
    (r"^(?=.*(?:shrink|shirnk))(.*?)\b(?:(?:glue|adhesive|adh|hot[- ]?melt)[- ]lined|adh)\b", r"\1adhesivelined"),
    (r"^(?:a )?(?:bit|piece|length) of (?=.*shrink)", ""),
    (r"(shrink.*?) for the [a-z ]*\b(?:wires?|cables?|leads?|loom|splice|joint)$", r"\1"),
    (r"(\bcup (?:wire )?brush(?:es)?) for (?:the |an? )?(?:angle )?grinder\b", r"\1"),
    (r"^(?:an? )?(?:bag|pack|packet|bundle|handful) of (?=[a-z ]*\b(?:ties|tie[- ]?wraps|zip ties|cable ties)\b)", ""),
    (r"\bcablet(?:ie|ei)s?\b|\bcable tei\b", "cable tie"),
    (
        r"(\b(?:cable|zip) ties?\b.*|\btie[- ]?wraps?\b.*|^ties?, cable\b.*)"
        r"\b3/16(?: ?(?:in|inch|\"))?(?= wide|$|[, ])",
        r"\g<1>4.8 mm",
    ),
    (r"\bcrimp(?:ing|ed)? eyelets?\b", "ring terminal"),
    (r"\bring tongues?(?: terminals?)?\b|\bring lugs?(?=.*\b(?:red|blue|yellow)\b)", "ring terminal"),
    (r"^(?:an? )?(?:few |handful of |some )?(red|blue|yellow) rings,(?= m\d)", r"\1 ring terminals,"),
    (r"\brnig terminal", "ring terminal"),
    (
        r"^(?=.*\b(?:tabs?|awg|terminals?|term|crimp|insul\w*)\b)(?!.*\b(?:hose|air|coupl\w*|fuel|line|tool|fitting)\b)"
        r"(.*?)\bquick[- ]disconnects?\b",
        r"\1spade terminal",
    ),
    (r"\bfully?[- ](?:covered|ins(?:ul(?:ated)?)?\.?) (?=(?:fe)?males?\b|spades?\b|terminals?\b)", "fully insulated "),
    (
        r"^(?=.*\b(?:terminals?|spades?|push[- ]on|term)\b)(?=.*\b(?:fe?male|fem|male)\b)(.*?)"
        r"(?:(?<![\d/.])1/4(?: ?(?:in(?:ch)?\b|\"))?|(?<!\d)0?\.250?\b(?: ?in\b)?)(?: tab\b)?(?: \((6\.3)\))?",
        r"\g<1>6.3 mm",
    ),
    (r"\bh-(?=(?:1|3|4|7|11) (?:head|bulb|halogen|globe|lamp))", "h"),
    (r"\b(head ?(?:light|lamp)|brake|tail|stop|brake/tail|indicator|halogen|side ?light) globes?\b", r"\1 bulb"),
    (r"^(h(?:1|3|4|7|11)) halogen,", r"\1 halogen bulb,"),
    (r"\blamp[, ]+auto(?:motive)?(?=.*\b(?:ba[yxu]?\d\d[sd]?|w\d|\d+/\d+ ?w|12v|24v)\b)", "bulb"),
    (r"\blamp[, ]+halogen[, ]+(?=h\d)", "halogen bulb "),
    (
        r"^(?=.*\b(?:coin|button|key fob|fob)\b)(.*?)(?<![\w.])(?=(?:2016|2025|2032|1616|1620|1632|2430|2450)\b)",
        r"\1cr",
    ),
    (r"(\b(?:coin|button)\b.*?)\btwenty (thirty|twenty|sixteen)[- ]?(two|five)?\b", r"\1twenty\2\3"),
    (r"(\b(?:coin|button) (?:cell|battery)\b.*?)\b20 32(?=$|,)", r"\1cr2032"),
    (
        r"^(?=cr\d{4}\b|.*\b(?:batt?er[yi]\w*|batt?|cells?|coin|button)\b)(?!.*\b(?:li|lith\w*|holder|clip|"
        r"cover|tester)\b)"
        r"(.*?)\b(cr(?:12|16|20|23|24)\d\d)\b",
        r"\1\2 lithium",
    ),
    (r"\bdouble[- ]a (?=alkaline|batter|cell)", "aa "),
    (r"\btriple[- ]a (?=alkaline|batter|cell)", "aaa "),
    (r"\balkalines\b", "alkaline batteries"),
    (r"^(?=.*\b(?:aaa?|lr0?[36]|batt?)\b)(.*?)\balk\b", r"\1alkaline"),
    (
        r"^(?:insert|fit|put|install)? ?(?:new )?(?=(?:.*\b)?(?:aaa?|pp3|cr\d{4}|lr\d+)\b)"
        r"(?=.*\b(?:cells?|batter(?:y|ies))\b)"
        r"(.*?),? (?:for|in|into) (?:the|my|an?) (?:inspection lamp|multi ?meter|meter|torch|lamp|tester|remote|"
        r"key fob|"
        r"remote key|thermometer|gauge|camera|scanner)$",
        r"\1",
    ),
    (
        r"^(?!.*\b(?:trim|clips?|rivets?|retainers?|terminals?|plug|bulb|gasket|wire|electrical|weatherstrip|socket|"
        r"grommet|fuel|coolant|water)\b)"
        r"(?=.*\b(?:connector|union|joiner|coupling|fitting|ftg|elbow|tee|reducer|join)s?\b)(.*?)"
        r"\b(?:push|psuh)[- ](?:in|fit)(?: both ends)?\b",
        r"\1pushfit",
    ),
    (r"\bpush[- ]on,? fem\b(?=.*\b6\.3\b)", "spade female"),
    (r"(\bfuses?),? (?:in|for) the (?:in-?line )?(?:fuse )?holder$", r"\1"),
    (r"\bfi (?=crimp term\w* fully ins|term\w* fully ins)", ""),
    (
        r"((?:\bamps?|\d ?a)) (mini|standard|maxi|micro|std|regular)[- ]blades?(?=$| please| x ?\d)",
        r"\1 \2 blade fuse",
    ),
    (r"\bfuse f ?\d{1,2} \(([^)]*)\)", r"fuse \1"),  # where it sits in the box
    (r"\bcar (?=(?:blade )?fuses?\b)", ""),
    (r"\bh seven\b(?=,? (?:twelve|twenty|12|24)[ -]?v)", "bulb h7"),
    (r"\bh four\b(?=,? (?:twelve|twenty|12|24)[ -]?v)", "bulb h4"),
    (r"\bh one\b(?=,? (?:twelve|twenty|12|24)[ -]?v)", "bulb h1"),
    (r"^(?=.*\bh(?:1|4|7|8|9|11)\b)(.*?)\b(?:dip(?:ped)?|main|high|low)[- ]beam (?=bulbs?\b)", r"\1"),
    (
        r"^(?:dip(?:ped)?|main|full)[- ]beam (?:is )?out,? (?:nearside|offside|n/s|o/s|left|right),? (?=h\d)",
        "bulb ",
    ),
    (r"^(red|blue|yellow) rings?,? (?=m ?(?:\d|three|four|five|six|eight|ten|twelve))", r"\1 ring terminal "),
    (r"\bring[- ]tongue (?:terminal|connector|term)(?=s?\b)", "ring terminal"),
    (r"(\bterminals?\b.*) for the (?:[a-z]+ )?(?:wire|lead|cable|feed)$", r"\1"),
    (r"\b((?:fe)?male) blade connector(?=s?\b)", r"\1 blade terminal"),
    (r"(\b(?:terminal|spade|connector|crimp)s?\b.*?)\b6\.3 ?x ?0?\.8(?: ?mm)?\b", r"\1 6.3 mm"),
    (r"(\b(?:terminal|connector|crimp)s?\b.*) \((10|20|25|50|100|200|250|500)\)$", r"\1, \2 pc"),
    (r"\bfi (?=crimp|term)", "fully insulated "),
    (r"\bpush[- ]on,? (female|male)\b(?=.*\b6\.3\b)", r"spade \1"),
    (r"\bcrimp receptacle \(((?:fe)?male) spade\)", r"\1 spade terminal"),
    (r"(\bfuse\b.*?),? (?:on|in|at) f ?\d{1,2}$", r"\1"),
    (r"^f ?\d{1,2} with an? (?=.*\bfuse\b)", ""),
    (r"\bcable straps?\b(?=.*\bnylon\b)|(?<=nylon )cable straps?\b", "cable tie"),
    (r"\bcable (?:ites|teis|tise)\b", "cable ties"),
    (r"^(?=.*\bfuse\b)(.*?)\bvehicle, flat blade\b", r"\1blade"),
    (r"^(?=.*\b(?:bulb|lamp)\b)(.*?)\b21/5\b(?! ?w)", r"\1 21/5w"),
    (r"(\bcrimps?\b.*?)\b(\d{2,3})s\b", r"\1\2 pc"),
    (r"(\bbulbs?\b.*)\bsv ?[78](?:\.5)?\b", r"\1"),  # the cap of a festoon
    (r"(\brelays?\b.*)\b([45])t\b", r"\1\2 pin"),
    (r"(\brelays?\b.*)\bn/o\b", r"\1"),
    (r"(\bfuses?\b.*?)\bt ?(\d+(?:\.\d+)?) ?a\b", r"\1slowfuse \2a"),
    (r"(\bfuses?\b.*?)\bf ?(\d+(?:\.\d+)?) ?a\b", r"\1quickfuse \2a"),
    (r"\bfuse,? gl\b", "fuse glass"),
    (r"(\bfuses?\b.*)\b(?:slow(?:[- ]blow)?|time[- ]lag|anti[- ]?surge|delay(?:ed)?|slo-?blo)\b", r"\1slowfuse"),
    (r"\b(?:slow[- ]blow|time[- ]lag|anti[- ]?surge|slow)(?= .*\bfuses?\b)", "slowfuse"),
    (r"(\bfuses?\b.*)\b(?:quick(?:[- ](?:blow|acting))?|fast(?:[- ](?:blow|acting))?)\b", r"\1quickfuse"),
    (r"\b(?:quick|fast)(?:[- ](?:blow|acting))?(?= .*\bfuses?\b)", "quickfuse"),
    (r"\bbatt?\.?,? alk(?:aline)?\b", "cell alkaline"),
    (r"\bbatt(?:ery)?,? lithium\b(?=.*\bcr ?\d)", "cell lithium"),
    (r"\b9 ?v block(?: battery)?\b|\b6lr61\b|\bpp ?3\b", "pp3 cell"),
    (r"\blow[- ]profile (?:mini )?(?=(?:blade )?fuses?\b)", "lp mini "),
    (r"\b(fuses?\b.*)\b(?:mini )?low[- ]profile(?: mini)?\b", r"\1lp mini"),
    (r"\bbutt(.*?)\bhs\b", r"butt\1heat shrink"),
    (
        r"^(?!.*\b(?:bulb|lamp|key|bit|socket|skt|driver)s?\b)"
        r"((?:h[1-9]|h1[0-9]|hb[34]) .*\b(?:p43t|px26d|\d\d ?v|\d\d ?w)\b)",
        r"bulb \1",
    ),
    (r"\btwentythirtytwo\b", "cr2032"),
    (r"^(?=.*\bpushfit\b)(.*?)\b(\d{1,2}) ?mm ?(?:to|-|x) ?\2 ?mm\b", r"\1\2 mm"),
]
