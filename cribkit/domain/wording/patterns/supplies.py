"""Gloves, abrasives, tapes, fuses, bulbs, ties and other things that are used up."""

from __future__ import annotations

import re

from cribkit.domain.wording.patterns.pattern import Pattern

# Where a ply or a centre feed is one of paper.
_PAPER = r"^(?=.*\b(?:rolls?|paper|towels?|tissues?|wip(?:es?|ers?|ing))\b)"

# Flared fittings by their dash size, and the thread that goes with it, SAE J514 (from memory).
_JIC = {
    "4": ("7/16", "20"),
    "6": ("9/16", "18"),
    "8": ("3/4", "16"),
    "10": ("7/8", "14"),
    "12": ("1-1/16", "12"),
    "16": ("1-5/16", "12"),
}
_DASHES = {"four": "4", "six": "6", "eight": "8", "ten": "10"}

# What heat shrink measures before and after.
_SHRUNK = (
    *(("3", "1"), ("6", "2"), ("9", "3"), ("12", "4"), ("18", "6"), ("24", "8"), ("39", "13"), ("40", "13")),
    *(("4", "1"), ("8", "2"), ("12", "3"), ("16", "4")),
    *(("2", "1"), ("4", "2"), ("6", "3"), ("8", "4"), ("10", "5"), ("12", "6")),
)


def _shrunk(found: re.Match[str]) -> str:
    """12 mm to 4 mm: what a heat shrink measures before and after, where such a one is made."""
    return f"{found[1]}{found[2]}/{found[3]}" if (found[2], found[3]) in _SHRUNK else found[0]


def _dash(found: re.Match[str]) -> str:
    return f"-{_DASHES[found[1]]} "


def _jic_thread(found: re.Match[str]) -> str:
    """The thread of a flared fitting says no more than its dash size, where the two belong together."""
    return found[2] if _JIC.get(found[1]) == (found[3], found[4] or found[5]) else found[0]


SUPPLIES: list[Pattern] = [
    (r"\b(\d(?:/\d+)?)(?: in)? arbor\b", r"\1 in bore"),
    (
        r"\b(wheel|disc) cut[- ]?off (\d(?:\.\d)?) ?x ?(\d/\d+) ?x ?(\d/\d)\b",
        r"cutoff wheel \2 in x \3 in , \4 in bore",
    ),
    (r"(?<=\d )quarts?\b|(?<=\d)quarts?\b", "qt"),
    (r"(?<=\d )gallons?\b|(?<=\d)gallons?\b", "gal"),
    (r"(\bpin) x (?=\d)", r"\1 "),
    (r"(\bgloves?\b.*) (s|m|l|xl|xxl) (50|100|200)$", r"\1 \2, \3 pc"),
    (r"(\b(?:wet and dry|wet/dry|paper|sheets?)\b.*\d{3} ?x ?\d{3}(?: ?mm)?) (10|25|50|100)$", r"\1, \2 pc"),
    (r"(\bties?\b.*\d ?x ?[\d.]+(?: ?mm)?,? (?:blk|black|nat|natural|white|uv)) (50|100|200|500|1000)$", r"\1, \2 pc"),
    (r"\bbale (?:of )?(\d+)\b", r", \1 pc"),
    (r"(\bgloves?\b.*?)\b(?:with )?textured grip\b", r"\1grip"),
    (r"(\b(?:butt|splice|crimp|terminal)\b.*?)\b(\d{1,2}) ?(?:-|to) ?(\d{1,2}) ?(?:ga|gauge|gge)\b", r"\1\2-\3 awg"),
    (
        r"\b(?:waterproof|wet) paper\b(?=.*\b(?:p?\d{3,4}|grit)\b)|(?<=grit )wet paper\b|(?<=\d )"
        r"waterproof paper\b|\bwet paper(?=,? [a-z ]*grit)",
        "wet and dry paper",
    ),
    (r"\bfs/bld\b|\bfs,? bld\b", "fuse blade"),
    (r"\b(size|sz) (\d{1,2})(?: (?:l|m|s|xl))? (?=(?:box|bx|pk|pack|pair)\b)", r"\1 \2, "),
    (r"\bbx\b(?!.*\d/\d)", "box"),
    (r"\bchlorinated[- ](?:solvents?[- ])?free\b", "non-chlorinated"),
    (r"(?<=cleaner )non chl\b|(?<=clnr )non chl\b", "non-chlorinated"),
    (r"\b(0|5|10|15|20)-w-? ?(?=\d\d\b)", r"\1w-"),
    (r"\bratio (?=[234]:1)", ""),
    (r"^(?=.*\b(?:discs?|disks?)\b)(.*?)\b(?:qc|q/c|q/change|quick[- ]chg)\b", r"\1quick change"),
    (r"\bhook-(?:n|and|&)-loop\b", "hook and loop"),
    (r"^(?:slide|slip|push|put|fit|place) an? (?:piece|length|bit) of (?=.*shrink)(.*?) over the [a-z ]+$", r"\1"),
    (r"\bheat[- ]?shrink crimp butts?\b", "heat shrink butt connector"),
    (r"(?<=\d)( ?)grt\b", r"\1grit"),
    (r"\bplug[- ]in fuse\b", "fuse"),
    (r", (?:body|paint) ?shop$", ""),
    (r"^(?=.*\bdis[ck]s?\b)(?!.*(?:quick|q/?c|q/change))(.*?)\broll[- ]on\b", r"\1quick change roll-on"),
    (r"^(?=.*\bdis[ck]s?\b)(.*?)\broll[- ]on\b(?:,? \(?(?:type r|tr)\b\)?)?", r"\1type r"),
    (r"^(?=.*\bdis[ck]s?\b.*\bq)(.*?)\bturn[- ]on\b(?:,? \(?(?:type s|ts)\b\)?)?", r"\1type s"),
    (
        r"^(?=.*\bbags?\b)(?=.*\b(?:(?:zip|grip|press|snap)[- ](?:seal|top|lock)|reseal\w*)\b)(.*?)"
        r"\b(?:plastic|polythene|poly|ldpe)\b,?",
        r"\1",
    ),
    (r"(\bmagnetic pick[- ]?up) tol\b", r"\1 tool"),
    (r"^(?=.*\bffp ?[123])(.*?)\bfold[- ]?flat\b", r"\1flatfold"),
    (r"\bjic (caps?),? (?:size |no\.? ?)(?=-?\d)", r"\1 jic "),
    (r"(?<![\w-])-(four|six|eight|ten) (?=jic\b)", _dash),
    (
        r"^(?=.*\b(?:caps?|cpa)\b)(?!.*\bplugs?\b)(.*?)(?:(?<![\w/.])(?:-|#|no\.? ?)?0?(4|6|8|10|12|16)[- ]?jic\b|"
        r"\bjic[-, ]*[-#]?0?(4|6|8|10|12|16)\b(?![/.]))",
        r"\1 jicsize\2\3",
    ),
    (
        r"^(?=.*\bjicsize(\d+)\b)(.*?),? ?\(?(?<![\d/])((?:1-)?\d{1,2}/\d{1,2})(?:\"| in)? ?(?:unf?)?"
        r"(?:(?:-| x | )(\d\d)| ?(\d\d) ?tpi)(?: ?unf?)?\b\)?",
        _jic_thread,
    ),
    (r"^(?=.*\bjicsize\d)(.*?)\b(?:threaded|thd|thrd|screw[- ]on|female thread)\b,? ?", r"\1"),
    (r"^(?=.*\bjicsize\d)(.*?)\b(?:protective|dust|blanking)\b,? ?", r"\1"),
    (r"^(?=.*\bjicsize\d)(.*?)\b(?:polyethylene|pe|ldpe|hdpe)\b", r"\1plastic"),
    (r"(\bjicsize\d+),? ?(?:male|37 ?deg)\b", r"\1"),
    (r"^(?=.*\bjicsize\d)(.*?)\bfor +(?=jicsize)", r"\1"),
    (r"^(?=.*\bjicsize\d)(.*?); on the open [a-z ]+$", r"\1"),
    (r"^(?=.*\bjicsize\d)(.*?)\bto (?:blank|close|cap) off an? ", r"\1"),
    (r"(\bjicsize\d+\b.*?) hose adap[a-z]+\b", r"\1"),
    (r"^(?=.*\bjicsize\d)(.*?)\b(?:caps?|cpa)\b", r"\1jic cap"),
    (r"(\b(?:connector|splice|terminal)s?\b.*), for (?:the )?[a-z]+ (?:feed|lead|wire|cable|harness)$", r"\1"),
    (r"(\b(?:connector|splice|terminal)s?\b.*); on the (?:cables?|wires?|leads?|ends)$", r"\1"),
    (r"(\bfuse\b.*); on fuse f\d{1,3}$", r"\1"),
    (r"\bh(1|3|4|7|11)\.(?=(?:12|24) ?v\b)", r"h\1 "),
    (r"\bpush[- ]on receptacles?\b", "female spade terminal"),
    (r"\bfully insulated females\b(?! \w)", "fully insulated female spade terminals"),
    (r"^(?=.*\b(?:ring|terminals?|lug)\b)(.*?\b(?:22-18|22-16|16-14|12-10)) ?g\b", r"\1 awg"),
    (
        r"^(?:\d|two|three|four|six|eight|ten|a couple of|some) "
        r"(?=(?:aaa?|pp3|double-a|triple-a) (?:alkaline|batter|cells?))",
        "",
    ),
    (r"\bbatt(?:rey|ey|rery|eyr)\b", "battery"),
    (r"\bh and l dis[ck](s?)\b", r"hook and loop disc\1"),
    (
        r"(\bhook and loop discs?|\bda discs?) (75|125|150|200)(?: ?mm)? ?/ ?(40|60|80|120|180|240|320|400|500|800)$",
        r"\1 \2 mm p\3",
    ),
    (r"\bgasket cleaning (?=discs?\b.*\bsurface conditioning\b)", ""),
    (r"\bnon[- ]?woven (?=surface conditioning\b)", ""),
    (r"(\bsurface conditioning\b.*?\bdiscs?\b.*?),? non[- ]?woven\b", r"\1"),
    (r"^(?=.*shrink)(.*?)\b(?:three|3) to (?:one|1)\b", r"\g<1>3:1"),
    (r"^(?=.*shrink)(.*?)\b(?:two|2) to (?:one|1)\b", r"\g<1>2:1"),
    (r"^(?=.*shrink)(.*?)\b(?:four|4) to (?:one|1)\b", r"\g<1>4:1"),
    (r"^(?=.*(?:shrink|shirnk))(.*?)\b(?:(?:glue|adhesive|adh|hot[- ]?melt)[- ]lined|adh)\b", r"\1adhesivelined"),
    (r"^(?:a )?(?:bit|piece|length) of (?=.*shrink)", ""),
    (r"(shrink.*?) for the [a-z ]*\b(?:wires?|cables?|leads?|loom|splice|joint)$", r"\1"),
    (r"^(?=.*shrink)(.*?)\b(\d{1,2})(?:\.0)? ?(?:mm)? ?(?:→|->|to|-) ?(\d{1,2})(?:\.0)? ?mm\b", _shrunk),
    (r"(\bcup brush(?:es)?\b.*?) for (?:the |an? )?(?:angle )?grinder\b", r"\1"),
    (r"(\bcup (?:wire )?brush(?:es)?) for (?:the |an? )?(?:angle )?grinder\b", r"\1"),
    (r"(\bcup brush(?:es)?\b.*?) for cleaning [a-z ]+$", r"\1"),
    (r"(\bcup brush(?:es)?\b.*?\bm1[04](?:x[\d.]+)?) thread\b", r"\1"),
    (r"^removed [a-z]+ in an? (?=.*\bbags?\b)", ""),
    (r"\bdust ?masks?\b", "dust mask"),
    (r"\bffp([123])v\b", r"ffp\1 valve"),
    (r"\bp3 class (?=.*\bffp3\b)", ""),
    (r"\b(ffp[123]) nr(?: d)?\b", r"\1"),
    (r"(\bmask\b.*\bffp[123]\b.*?),? cup (?:type|shaped?|style)\b", r"\1, moulded"),
    (
        r"^(?=.*\bffp ?[123]\b)(?!.*\b(?:disp\w*|throw\w*|half|full|reusable|moulded|cup|filters?|cartridges?|p3)\b)"
        r"(.*?)\b(ffp ?[123])\b",
        r"\1disposable \2",
    ),  # filtering face pieces are thrown away
    (r"\bbx of (?=\d)", "box of "),
    (r"\bpk of (?=\d)", "pack of "),
    (r"(\bbags?\b.*),? for bagging(?: up)? (?:the )?[a-z ]+$", r"\1"),
    (
        r"^(?=.*\bbags?\b)(?=.*\b(?:zip|grip|seal|reseal\w*|re-?asealable)\b)(.*?)\b(\d{1,3}|two|three|four|five|six)"
        r"(?: ?(?:in\b|\"))? ?(?:x|by|×) ?(\d{1,3}|four|five|six|seven|eight|nine) ?(?:in\b|inch(?:es)?\b|\")",
        r"\1\2 in x \3 in",
    ),
    (
        r"^(?=.*\bbags?\b)(?=.*\b(?:zip|grip|seal|reseal\w*)\b)(.*?)(?<![\d.])\b(\d{2,3}) ?(?:x|by|×) ?(\d{2,3})"
        r"(?= ?mm\b|$|[, ])(?! ?(?:cm|in|mic))(?: ?mm)?",
        r"\1\2 mm x \3 mm",
    ),
    (r"\b(?:re-?a?sealable|resealabel)\b", "resealable"),
    (
        r"\b(?:grip|press|snap|zip|click)[- ](?:seal|top|lock)(?=[, ]+(?:(?:clear|plastic|poly\w*|ldpe) )*bags?\b)",
        "resealable",
    ),
    (r"(\bbag[, ]+)(?:grip|press|snap|zip|click)[- ](?:seal|top|lock)\b", r"\1resealable"),
    (r"^(?:a )?few of the little (?=.*\bbags?\b)", ""),
    (r"(\b(?:nitrile|latex|vinyl)) disposables\b", r"\1 disposable gloves"),
    (r"(\bgloves?\b.*),? test date on (?:the )?cuff\b", r"\1"),
    (r"\bnat(?:ural)? (?=rubber\b|rub\b)", "natural "),
    (r"^(?=.*\bgl(?:o?ve|v)s?\b)(.*?)\bcl ?[-.] ?(?=0{1,2}\b|[1-4]\b)", r"\1class "),
    (r"\bcut[- ]?proofs\b", "cut resistant gloves"),
    (
        r"^(?=.*\bcut(?:ting)?[- ]?(?:res\w*|proof)\b)(?=.*\bgl(?:o?ve|v)s?\b)(?!.*\b(?:level|lvl|cut) ?[a-f]\b)"
        r"(.*?)(?<!-)\b([a-f])[, ]+(?=(?:sz|size) ?\d)",
        r"\1level \2 ",
    ),
    (r"(\bgloves?\b.*) for (?:handling )?(?:sharp )?(?:sheet[- ])?metal(?: edges)?\b", r"\1"),
    (r"\bgloves? for (?:handling )?(?:sharp )?(?:sheet[- ])?metal edges\b", "gloves"),
    (r"\bffp[- ]([123])(v?)\b", r"ffp\1\2"),
    (r"\bffp([123])s\b", r"ffp\1 masks"),
    (
        r"^(?=.*\b(?:masks?|respirators?|ffp ?[123]v?)\b)(.*?)\b"
        r"(?:exhal(?:e|ation|ing) (?:valve|vlv)|(?<!un)(?<!un-)(?<!non-)(?<!not )(?:valved|vlvd)|vlv)\b",
        r"\1valve",
    ),
    (r"\bind(?:\.|irect(?:ly)?)?[- ]? ?vent(?:s|ed|ilated|ilation)?\b", "indirect vent"),
    (
        r"(\b(?:goggles?|glasses|specs?)\b.*?) for (?:blowing (?:off|out|down)|using|working)"
        r"(?: with)? (?:the |an )?air ?(?:line|gun)\b",
        r"\1",
    ),
    (r"^(?:a )?few (?=(?:sheets?|lengths?|rolls?|pieces?) of\b)", ""),
    (
        r"^(?=.*\b(?:wet (?:and|or|n) dry|sheets?|discs?|sand(?:ing|paper)|abrasive|belts?)\b)(.*?)"
        r"\bp-(?=(?:24|36|40|50|60|80|1[0258]0|220|240|280|3[26]0|400|500|600|800|1000|1200|1500|2000)\b)",
        r"\1p",
    ),
    (r"\bhook (?:and|n|&) lop\b", "hook and loop"),
    (
        r"^(?=.*\b(?:discs?|disks?|sanding)\b)(.*?)\b(?:(hook[ -]?(?:and|n|&|/)[ -]?loop|h ?& ?l|h/l)"
        r"[- ]back(?:ed|ing)?(?! ?(?:pad|plate))"
        r"|(?:velour|velcro|grip)[- ]back(?:ed|ing)?(?! ?(?:pad|plate)))\b",
        r"\1hook and loop",
    ),
    (r"(\bdiscs?\b.*?) for (?:the |an? )?right[- ]angle(?:d)? (?=die grinder\b)", r"\1 for the "),
    (r"(\bflap\b.*?)[, ]za\b", r"\1 zirconia"),
    (r"^(?=.*\b(?:discs?|disks?|sheets?|paper|belts?)\b)(.*?\b\d{2,4}) grade (?=\d)", r"\1 grit, "),
    (r"(\b(?:cut[- ]?off|cutting|slitting)\b.*?)\btype 41\b", r"\1flat"),
    (
        r"(\b(?:cut[- ]?off|cutting|slitting) (?:disc|disk|wheel)s?,? (?:100|115|125|150|180|230|300|350)) ?dia\b",
        r"\1 mm",
    ),
    (
        r"\bsurface con?dito?n?i?o?ning\b|\bsurf(?:ace)?\.? cond(?:it)?\b\.?|\bs/c(?=[, ]+non[- ]?woven\b)",
        "surface conditioning",
    ),
    (r"\broll of masking(?=$|[,.]| \d)", "roll of masking tape"),
    (r"\bmask(?:ing)?\.? tape\b", "masking tape"),
    (r"(\btape\b.*),? ctn(?: of)? ?\d+\b", r"\1"),
    (r"\bthread seal(?:ant|er) tape\b|\bjointing tape(?=.*\bptfe\b)", "thread seal tape"),
    (r"\bptfe jointing (?:tape|taep|tpae)\b", "ptfe thread seal tape"),
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
    (r"\bf/ins\b", "fully insulated"),
    (
        r"^(?=.*\b(?:terminals?|spades?|push[- ]on|term)\b)(?=.*\b(?:fe?male|fem|male)\b)(.*?)"
        r"(?:(?<![\d/.])1/4(?: ?(?:in(?:ch)?\b|\"))?|(?<!\d)0?\.250?\b(?: ?in\b)?)(?: tab\b)?(?: \((6\.3)\))?",
        r"\g<1>6.3 mm",
    ),
    (r"\b(?:normal|ordinary|regular|standard),? full[- ]size[ds]? ones\b", "standard size"),
    (r"\bh-(?=(?:1|3|4|7|11) (?:head|bulb|halogen|globe|lamp))", "h"),
    (r"\b(head ?(?:light|lamp)|brake|tail|stop|brake/tail|indicator|halogen|side ?light) globes?\b", r"\1 bulb"),
    (r"^(h(?:1|3|4|7|11)) halogen,", r"\1 halogen bulb,"),
    (r"\blamp[, ]+auto(?:motive)?(?=.*\b(?:ba[yxu]?\d\d[sd]?|w\d|\d+/\d+ ?w|12v|24v)\b)", "bulb"),
    (r"\blamp[, ]+halogen[, ]+(?=h\d)", "halogen bulb "),
    (r"\b(p21|p27|w21|w16|r10|c5|w5)-(?=\d{1,2} ?w\b)", r"\1/"),
    (r"\bbay 15 ?d\b", "bay15d"),
    (r"\bcr[ -](?=(?:12|16|20|23|24)\d\d\b)", "cr"),
    (
        r"^(?=.*\b(?:coin|button|key fob|fob)\b)(.*?)(?<![\w.])(?=(?:2016|2025|2032|1616|1620|1632|2430|2450)\b)",
        r"\1cr",
    ),
    (r"(\b(?:coin|button)\b.*?)\btwenty (thirty|twenty|sixteen)[- ]?(two|five)?\b", r"\1twenty\2\3"),
    (r"\btwentythirtytwo\b", "cr2032"),
    (r"(\b(?:coin|button) (?:cell|battery)\b.*?)\b20 32(?=$|,)", r"\1cr2032"),
    (r"\btwentytwentyfive\b", "cr2025"),
    (r"\btwentysixteen\b", "cr2016"),
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
    (r"^(?=.*\bwipes?\b)(.*?)\bimpregnated\b", r"\1saturated"),
    (r"\b(?:ftg|fttg)(?=s?\b.*\bpush[- ](?:in|fit))", "fitting"),
    (
        r"^(?!.*\b(?:trim|clips?|rivets?|retainers?|terminals?|plug|bulb|gasket|wire|electrical|weatherstrip|socket|"
        r"grommet|fuel|coolant|water)\b)"
        r"(?=.*\b(?:connector|union|joiner|coupling|fitting|ftg|elbow|tee|reducer|join)s?\b)(.*?)"
        r"\b(?:push|psuh)[- ](?:in|fit)(?: both ends)?\b",
        r"\1pushfit",
    ),
    (r"^(?=.*\bpushfit\b)(.*?)\b(\d{1,2}) ?mm ?(?:to|-|x) ?\2 ?mm\b", r"\1\2 mm"),
    (r"(\b(?:wipes?|cloths?|sheets?)\b.*?)\b(\d{3}) ?mm square\b", r"\1\2 x \2 mm"),
    (rf"{_PAPER}(.*?)\bc/f(?:ee)?d\b", r"\1centrefeed"),
    (r"\bc/o (?=(?:wheel|disc|disk)s?\b)", "cutoff "),
    (r"(\btape\b.*)\bslvr?\b", r"\1silver"),
    (r"\bn/woven\b", "non-woven"),
    (r"(\bpads?\b.*)\bvf\b|\bvf (?=.*\bpads?\b)", r"\1very fine "),
    (r"(\bcloth emery\b.*\d ?m),? rls?\b", r"\1 roll"),
    (
        r"^(?!.*\b(?:grit|p ?\d{2,4}|\d{2,4} ?g)\b)"
        r"(?=.*\b(?:wet (?:and|or|n) dr(?:y|ie)|wet ?[/&] ?dry|sand ?papp?er|abrasive paper)\b)(.*?)"
        r"(?<![x.\d] )(?<![x.\d])\b(240|3[26]0|400|600|800|1200|1500|2000) (?=sheets\b)",
        r"\1p\2 ",
    ),
    (rf"{_PAPER}(.*?)\b(?:one|1|single)[- ]?ply\b", r"\1oneply"),
    (rf"{_PAPER}(.*?)\b(?:two|2|double)[- ]?ply\b", r"\1twoply"),
    (rf"{_PAPER}(.*?)\b(?:three|3|triple)[- ]?ply\b", r"\1threeply"),
    (r"\b(?:a )?roll of (blue|white|green|yellow) (?=paper\b)", r"\1 roll of "),
    (rf"{_PAPER}(.*?)\b(?:cent(?:re|er)|ctr)[- ]?(?:fed|feed|pull|fd)\b", r"\1centrefeed"),
    (
        r"^(?:an? )?box of (?:(black|blue|white|orange|purple) )?(small|medium|large|extra large|xl|xxl) "
        r"(?:(black|blue|white|orange|purple) )?nitriles\b",
        r"nitrile gloves \2 \1\3",
    ),
    (r"\bnitriles\b(?! (?:gloves?|seals?|o-?rings?))", "nitrile gloves"),
    (r"(\bnitrile gloves\b.*), box$", r"\1"),
    (r"\banti[- ]?cut\b", "cut resistant"),
    (r"(\bgl(?:o?ves?)\b.*?)\b(?:pu|polyurethane)(?: palm)?[- ](?:coated|dipped)\b", r"\1pu"),
    (r"\b(?:pu|polyurethane)(?: palm)?[- ](?:coated|dipped) (?=.*\bgl(?:o?ves?)\b)", "pu "),
    (
        r"^(?=.*\b(?:abrasive|flap|sanding|sand ?paper|emery|wet (?:and|or|n) dry|wet ?& ?dry)\b)(.*?)\bp "
        r"(?=(?:24|36|40|50|60|80|1[0258]0|220|240|280|3[26]0|400|500|600|800|1000|1200|1500|2000)\b)",
        r"\1p",
    ),
    (r"\bflap (?:dsic|dics|dick|disk)s?\b", "flap disc"),
    (r"\bflap wheel(?=.*\bangle grinder\b)", "flap disc"),
    (r"^(?=.*\b(?:cut[- ]?off|cutting|slitting|grinding)[, ]+(?:wheel|disc|disk)s?\b)(.*?\d ?mm)[- ]thick\b", r"\1"),
    (
        r"^(?=.*\btape\b)(?=.*\b(?:mask\w*|pvc|elec\w*|insul\w*|vinyl|ptfe|duct|foil|gaffer)\b)(.*?)(?<![\d./])"
        r"\b(\d{2}) ?x ?(\d{2}) ?m(?=$|,| )",
        r"\1\2 mm x \3 m",
    ),
    (r"(\btape\b.*\d ?mm?),? rls?\b", r"\1 roll"),
    (r"(\btape\b.*), rls?\b", r"\1, roll"),
    (r"\bcrepe paper (?=(?:masking )?tape\b)", "crepe "),
    (r"\b(?:non[- ]?woven )?scuff?(?:ing)?[- ]pads\b|\bscuf pad\b", "scuff pad"),
    (r"\bmar+oon \(red\)|\bred \(mar+oon\)", "maroon"),
    (
        r"^(?=.*\b(?:scuff\w*|abrasive|hand pads?|scour\w*|web|nylon|prep)\b)"
        r"(.*?\bpads?\b.*?)\b(?:six|6) ?(?:by|x) ?(?:nine|9)\b(?! ?(?:mm|in\b|inch|\"|cm))",
        r"\1 6 in x 9 in",
    ),
    (r"\b(?:wet|wt) (?:and|n|&) (?:drie|drey|dyr)\b", "wet and dry"),
    (r"^(.*\bcut(?:ting|-?off)? dis[ck]s?) (75|100|115|125|180|230|300|350)$", r"\1 \2 mm"),
    (r"^(red|blue|green|purple) ((?:hi(?:gh)?|med(?:ium)?|low)[- ]strength) (?=\d+ ?ml$)", r"\1 \2 threadlocker "),
    (r"(\bbearing (?:fit )?retainer) (10|24|50|250)$", r"\1 \2 ml"),
    (r"\b(\d{3} ?ml) foil\b", r"\1 sausage"),
    (r"^(.*\b(?:sealant|rtv|adhesive|silicone)\b[a-z -]*) (310|290|300|80|85)$", r"\1 \2 ml"),
    (r"^([a-z -]*\btape) (12|19|25|38|50)$", r"\1 \2 mm"),
    (r"(\bties?\b.*?\b\d{1,2}(?:\.\d)?) wide x (\d{2,4})(?: ?mm)? long\b", r"\1 x \2 mm"),
    (r"\bseven and a half[- ]amp\b", "7.5 amp"),
    (r"^(?=.*\b21 ?w\b)(?!.*\b21 ?w? ?/)(.*?),? single[- ]filament\b", r"\1"),
    (r"\bsixty[ /-]fifty[- ]five[ -]watts?\b", "60/55w"),
    (r"\bpush[- ]on,? fem\b(?=.*\b6\.3\b)", "spade female"),
    (r"(\bfuses?),? (?:in|for) the (?:in-?line )?(?:fuse )?holder$", r"\1"),
    (r"\brubber petrol ?(?:/|and|or)? ?diesel (?:pipe|hose|line)\b", "rubber fuel hose"),
    (r"\bfi (?=crimp term\w* fully ins|term\w* fully ins)", ""),
    (r"\bpre-?ins\b", "pre-insulated"),
    (r",? tub of (\d{2,4})$", r", \1 pc"),
    (r"(\bties?\b.*?\d ?mm) wide (?:x|by) (?=\d)", r"\1 x "),
    (r"\bnyl(?:on)? ?6[./]?6\b", "nylon"),
    (r"(\bties?\b.*?)\b(\d{2,4}) ?lg,? (?:x )?(\d{1,2}(?:\.\d)?) ?w\b", r"\1\2 x \3 mm"),
    (
        r"(\bo-?rings?\b.*?\d ?mm) (?:inside|inner|internal) dia(?:meter)?,? (?:by |x )?(\d+(?:\.\d+)? ?mm) "
        r"(?:cord|section|thick|thickness|cross[- ]section)\b",
        r"\1 x \2",
    ),
    (r"(\bo[- ]?rings?\b.*\bnitrile) rubber\b", r"\1"),
    (r",? \((?:pack|pk|box|bag|tub) (?:of )?(\d{1,4})\)$", r", \1 pc"),
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
    (r" \(boxed(?: single)?\)$", ""),
    (r"^(red|blue|yellow) rings?,? (?=m ?(?:\d|three|four|five|six|eight|ten|twelve))", r"\1 ring terminal "),
    (r"\bring[- ]tongue (?:terminal|connector|term)(?=s?\b)", "ring terminal"),
    (r"(\bterminals?\b.*) for the (?:[a-z]+ )?(?:wire|lead|cable|feed)$", r"\1"),
    (r"\b((?:fe)?male) blade connector(?=s?\b)", r"\1 blade terminal"),
    (r"(\b(?:terminal|spade|connector|crimp)s?\b.*?)\b6\.3 ?x ?0?\.8(?: ?mm)?\b", r"\1 6.3 mm"),
    (r"(\b(?:terminal|connector|crimp)s?\b.*) \((10|20|25|50|100|200|250|500)\)$", r"\1, \2 pc"),
    (r"\bfi (?=crimp|term)", "fully insulated "),
    (r"\bpush[- ]on,? (female|male)\b(?=.*\b6\.3\b)", r"spade \1"),
    (r"\bcrimp receptacle \(((?:fe)?male) spade\)", r"\1 spade terminal"),
    (r"\brubber (fuel|petrol) (?:pipe|line)\b(?! hose)", r"rubber \1 hose"),
    (r"\b([a-z]+|\d+) mil ((?:rubber )?fuel hose),? \1 (?:inside|bore)$", r"\1 mil bore \2"),
    (r" \(cut (?:off|from)(?: the)? (?:coil|reel|roll)\)$", ""),
    (
        r"\b(o-?rings?\b.*?\d ?mm) (?:bore|inside|id|inner),? (?:by |x )?(\d+(?:\.\d+)? ?mm) (?:cord|section|"
        r"thick|thickness|cross[- ]section)\b",
        r"\1 x \2",
    ),
    (r"\bsheds? no fibres?\b|\b(?:that |which )?(?:sheds?|leaves?|drops?) no (?:lint|fluff|fibres?)\b", "lint free"),
    (r"\bnitrile rubber (?=o-?ring)", "nitrile "),
    (r"\bplain flat washer", "flat washer"),
    (r"(\bfuse\b.*?),? (?:on|in|at) f ?\d{1,2}$", r"\1"),
    (r"^f ?\d{1,2} with an? (?=.*\bfuse\b)", ""),
    (r"(\btape\b.*),? automotive\b|\bautomotive (?=masking tape)", r"\1"),
    (r",? cage \d{1,2}$", ""),
    (r"\b(?:throw[- ]?aways?|throwaway) (?=(?:nitrile|latex|vinyl|gloves?)\b)", "disposable "),
    (r"\b(nitrile|latex|vinyl) throw[- ]?aways\b", r"\1 disposable gloves"),
    (r"\bready[- ]?(?:wet(?:ted)?|soaked|moistened)\b|\bpre[- ]?(?:soaked|sat)\b", "presaturated"),
    (r"^(?=.*\bwipes?\b)(.*?)\b70 ?/ ?30\b", r"\1 70 %"),
    (
        r"(?:,? (?:that|which))? (?:don't|dont|do not|doesn't|does not|won't) (?:leave|shed) (?:any )?lint\b",
        " lint free",
    ),
    (
        r"(\bwet[- ](?:or|and|n)[- ]dry\b.*?),? used wet(?: with (?:a little |some )?(?:soap|water|soapy water))?$",
        r"\1",
    ),
    (
        r"^(?=.*\b(?:wet (?:and|or) dry|wet ?/ ?dry|sand ?papp?er|abrasive paper)\b)(.*?)(?<!x )(?<!x)(?<![\d.])"
        r"\b(60|80|1[0258]0|220|240|3[26]0|400|600|800|1200|1500|2000) (?=sheet\b)",
        r"\1p\2 ",
    ),
    (r"\bflapdiscs?\b|\bflpa discs?\b|\bflap disks?\b", "flap disc"),
    (r"\bzirconia alumina\b|\bzirconia aluminium(?: oxide)?\b|\bzircona\b", "zirconia"),
    (r"(\bdiscs?\b.*)\bza ?(\d{2,3})\b", r"\1zirconia p\2"),
    (r"^(discs?,? flap),? angle grinder\b", r"\1"),
    (r"^cut[- ]?off wheel\b", "cutting disc"),
    (r"\bc/off\b", "cutoff"),
    (r"(?<=\d)mtrs?\b", " m"),
    (r"\bmaking tape\b|\bmskn?g tape\b", "masking tape"),
    (r",? \(?(\d{1,4}) per (?:box|pack|case|bag)\)?$", r", \1 pc"),
    (
        r"(?:^|(?<=of )|(?<=, )|(?<=of an )|(?<=tape )|(?<=some ))(?:an? |one )?inch[- ]wide\b",
        "1 inch wide",
    ),
    (
        r"^(?=.*\btape\b)(?=.*\b(?:mask\w*|pvc|elec\w*|insul\w*|vinyl|ptfe|duct|foil|gaffer)\b)(.*?)(?<![\d.])"
        r"\b(\d{2})(?: ?mm)? ?(?:x|by) ?(\d{2})\b(?! ?(?:mm|m\b|in\b|inch|\"|x|yd|ft|met|cm|\.))",
        r"\1\2 mm x \3 m",
    ),
    (r"\bcable straps?\b(?=.*\bnylon\b)|(?<=nylon )cable straps?\b", "cable tie"),
    (r"\b(\d{2,3}) ?l x (\d{1,2}(?:\.\d)?) ?w\b(?! ?\d)", r"\1 x \2 mm"),
    (r"(\bties?\b.*?\d.*?)\b(\d{1,2}\.\d) wide\b", r"\1\2 mm"),
    (r"\bcable (?:ites|teis|tise)\b", "cable ties"),
    (r"\bnormal standard\b", "standard"),
    (r"^(?=.*\bfuse\b)(.*?)\bvehicle, flat blade\b", r"\1blade"),
    (r"\b21 ?(?:/ ?5 ?watts?|w ?/ ?5 ?w|(?<= )5 ?w(?:atts?)?)\b", "21/5w"),
    (r"^(?=.*\b(?:bulb|lamp)\b)(.*?)\b21/5\b(?! ?w)", r"\1 21/5w"),
    (
        r"^(?=.*\b21/5w)(?!.*\b(?:wedge|capless)\b)(.*?)(?:,? (?:twin|double|dual)[- ]fil(?:ament)?s?\b\.?"
        r"|,? (?:with )?off?set[- ]pins?\b|,? bayonet(?: cap)?(?: (?:with )?off?set pins?)?\b)",
        r"\1",
    ),
    (r"\bw2\.1 ?x ?9\.5 ?d\b", ""),  # the cap of a W5W, UN ECE R37 (from memory)
    (r"(\bcrimps?\b.*?)\b(\d{2,3})s\b", r"\1\2 pc"),
    (r"^(.*\b(?:washers|nuts)),? (\d{2,3})$", r"\1, \2 pc"),
    (r"\b(?:1|one) sachet$", "sachet"),
    (r"\bbg ?(?=\d{2,3}\b)", "pk "),
    (r"(?<!and a )\bhalf[- ](?:a[- ])?mil\b", "0.5 mm"),
    (r"\b(blue|paper) rol\b", r"\1 roll"),
    (r"(t-?bolt clamp,?) ([1-9]\.\d\d) ?(?:to|-) ?([1-9]\.\d\d)$", r"\1 \2 - \3 in"),
    (r"(\bslings?\b.*)\bpoly\b", r"\1polyester"),
    (r"(?<=\s)(\d{2,3})'?s$", r"\1 pc"),
    (r",? \bpack(?: of)? (\d{2,4})$", r", \1 pc"),
    (r"\bpolytetrafluoroethylene\b", "ptfe"),
    (r"\bpainter'?s crepe\b|\bpainters? (?=masking)", ""),
    (r"\bcloths? (?:that|which) leaves? no (?:lint|fluff)\b", "lint free wipe"),
    (r"(\bties?\b.*)\bfor (?:out ?doors?|outdoor use|outside|sunlight|the sun)\b", r"\1 uv"),
    (r"\bwet ?\+ ?dry\b", "wet and dry"),
    (r"\b(?:to (?:lie|sit|run|go) |for use |for )?inside (?:the |a )?(?:fuel )?tank\b", "in-tank"),
    (r"\b(?:outside (?:of )?|not (?:for |in )?(?:the )?)(?:in[- ])?tank(?: only)?\b", ""),
    (r"\bpdr[- ]?free\b|\bpwd[- ]?free\b", "powder free"),
    (r"\bheat res\b\.?", "heat resistant"),
    (r"(\bgl(?:o?ves?)\b.*)\b(s|m|l|xl) (100|50|200)$", r"\1\2, \3 pc"),
    (r"^box of (small|medium|large|xl) nitriles?\b", r"nitrile gloves \1"),
    (r"^oil only pads$", "oil only absorbent pad"),
    (r"\bcut[- ]?off wheel (\d(?: \d/\d)?) x (0?\.\d+)\b", r"cutoff wheel \1 in x \2 in"),
    (r"\bsand (?=discs?\b)", "sanding "),
    (r"\bcloth tape\b(?=.*\b(?:harness|loom|wiring)\b)", "cloth loom tape"),
    (r"\bfabric\b(?=.*\btape\b)|(?<=tape )fabric\b|(?<=tape, )fabric\b", "cloth"),
    (r"(\bgl(?:o?ves?)\b.*)\b(\d{2,3})s\b", r"\1\2 pc"),
    (r"\bh ?\+ ?l\b(?=$|,| )", "hook and loop"),
    (r"\bspill pads\b", "spill pad"),
    (r"(?<=\dv)(?=\d+ ?ah\b)", " "),
    (r"(\bdiscs?\b.*)\b(?:grip|velour(?: backed)?)\b", r"\1hook and loop"),
    (r"(\bdiscs?\b.*)\bgr ?(\d{2,4})\b", r"\1p\2"),
    (r"\bfe ?/ ?s ?/ ?cl[- ]free\b|\bfe[- ]free\b", ""),
    (r"(\bpaper\b.*),? a4$", r"\1"),
    (r"\ball stainless\b", "stainless"),
    (r"\bflap wheel (?=disc)", "flap "),
    (r"\bleccy\b", "electrical"),
    (r"\bpads?,? absorb(?:ent|ing)?\b|\babsorb(?:ent|ing)?,? pads\b", "absorbent pad"),
    (r"\bss ?(?:304|316)\b", "stainless"),
    (r"\b22\.23? ?b\b", "22.23"),
    (r"(\bgl(?:o?v(?:es?)?)\b.*)\b[0-4][0-5x][0-4][0-4x]([a-f])p?\b", r"\1level\2"),  # EN 388, from memory
    (r"(\bbulbs?\b.*)\bsv ?[78](?:\.5)?\b", r"\1"),  # the cap of a festoon
    (r"(\brelays?\b.*)\b([45])t\b", r"\1\2 pin"),
    (r"(\brelays?\b.*)\bn/o\b", r"\1"),
    (r"\b(butyl|nitrile|neoprene|latex) rubber (?=gloves?\b|gauntlets?\b)", r"\1 "),
    (r"\bcut[- ]?(?:level )?([a-f])(?: cut)? or (?:better|higher|more)\b", r"level\1plus"),
    (r"\bcut(?:[- ]?(?:level|lvl|class))? ([a-f])\b(?! ?/)", r"level\1"),
    (r"\blevel([a-f]) or (?:better|higher|above)\b", r"level\1plus"),
    (r"(\bgloves?\b.*?)\bcl\.? ?(00|[0-4])\b", r"\1class \2"),
    (r"\bglove,? heat\b", "heat resistant glove"),
    (r"\ben ?407\b(?:,? contact)?(?: (?:level|lvl) ?[1-4])?", "heat resistant"),
    (r"\barc flash\b(?=.*\b(?:shield|visor|hood)\b)", "arc rated"),
    (r"(\bfuses?\b.*?)\bt ?(\d+(?:\.\d+)?) ?a\b", r"\1slowfuse \2a"),
    (r"(\bfuses?\b.*?)\bf ?(\d+(?:\.\d+)?) ?a\b", r"\1quickfuse \2a"),
    (r"\bfuse,? gl\b", "fuse glass"),
    (r"(\bfuses?\b.*)\b(?:slow(?:[- ]blow)?|time[- ]lag|anti[- ]?surge|delay(?:ed)?|slo-?blo)\b", r"\1slowfuse"),
    (r"\b(?:slow[- ]blow|time[- ]lag|anti[- ]?surge|slow)(?= .*\bfuses?\b)", "slowfuse"),
    (r"(\bfuses?\b.*)\b(?:quick(?:[- ](?:blow|acting))?|fast(?:[- ](?:blow|acting))?)\b", r"\1quickfuse"),
    (r"\b(?:quick|fast)(?:[- ](?:blow|acting))?(?= .*\bfuses?\b)", "quickfuse"),
    (r"^cb (?=\d+ ?a)", "circuit breaker "),
    (r"\bf/ins\b", "fully insulated"),
    (r"(\b(?:discs?|wheels?|cutoff)\b.*)\b[ac]-?(?:24|30|36|46|60|80)[a-z]?\b", r"\1"),  # its grain and bond
    (r"\bbatt?\.?,? alk(?:aline)?\b", "cell alkaline"),
    (r"\bbatt(?:ery)?,? lithium\b(?=.*\bcr ?\d)", "cell lithium"),
    (r"\b9 ?v block(?: battery)?\b|\b6lr61\b|\bpp ?3\b", "pp3 cell"),
    (r"\blr0?3\b", "aaa"),
    (r"\blr6\b", "aa"),
    (r"\bgrit (?=p\d)", ""),
    (r"\bpolyvinyl chloride\b", "pvc"),
    (r"\bcut gloves?\b", "cut resistant gloves"),
    (r"\bcut (?:lvl|lv) (?=\d|[a-f]\b)", "cut level "),
    (
        r"\b(100|115|125|150|180|230|300)(?! mm)"
        r"(?= (?:cutting|grinding|flap|sanding|abrasive|slitting) discs?\b)",
        r"\1 mm",
    ),
    (
        r"(\b(?:cutting|grinding|flap|sanding|abrasive|slitting) discs?\b[^\d]*)\b(75|100|115|125|150|180|230|300|355)"
        r"\b(?! ?(?:mm|in\b|pc|g\b|grit|\.|x ?\d))",
        r"\1\2 mm",
    ),
    (r"(\bties?\b.*\d.*), (?:25|50|100|200|250|500|1000)$", r"\1"),  # so many in the bag
    (r"\b(?:li|lithium)[- ]?ion\b", "lithium"),  # a battery's kind
    (r"\b(?:2x-?|xx[- ]?)(?:l|lg|lge|large)\b|(?<=gloves )2x\b(?! ?\d)|(?<=size )2x\b(?! ?\d)", "xxl"),  # 2XL
    (r"\b(?:3x-?|xxx[- ]?)(?:l|lg|lge|large)\b|(?<=gloves )3x\b(?! ?\d)", "xxxl"),  # 3X-large
    (r"\b(?:4x-?|xxxx[- ]?)(?:l|lg|lge|large)\b", "xxxxl"),
    (
        r"(gloves?\b.{0,30}?)(?:,| and| \+| plus)(?= (?:leather )?(?:over[- ]?gloves?|(?:glove )?protectors?)\b)",
        r"\1 with",  # insulating gloves and leather over-gloves
    ),
    (r"\ben ?388(?:[:-]20\d\d)?[ ,:]*[0-5x]{4}([a-f])p?\b", r"level\1"),  # EN 388 4X43D, from memory
    (r"\blow[- ]profile (?:mini )?(?=(?:blade )?fuses?\b)", "lp mini "),
    (r"\b(fuses?\b.*)\b(?:mini )?low[- ]profile(?: mini)?\b", r"\1lp mini"),
    (r"\bmini,? low[- ]profile\b", "lp mini"),
    (r"\bbutt(.*?)\bhs\b", r"butt\1heat shrink"),
    (r"\bgrip (?=discs?\b)", "hook and loop "),
    (r"\bsurface prep(?:aration)? (?=(?:\S+ ){0,2}discs?\b)", "surface conditioning "),
    # The form of a wheel, ISO 525 (from memory)
    (r"\bt(?:ype)? ?(?:1|27|29|41|42)\b(?=.*\b(?:disc|whl|wheel|cutoff))", ""),
    (r"\b((?:disc|whl|wheel|cutoff).*)\bt(?:1|27|29|41|42)\b", r"\1"),
    (r"\b(\d) ?x ?(\d{1,3}) ?(?:yds?|yards?)\b", r"\1 in x \2 yd"),
    # The usual sheet of abrasive paper
    (r"\b9 ?x ?11\b(?! ?(?:mm|in\b|\"))(?=.*(?:grit|paper|sheet|\bp\d))", "9 in x 11 in"),
    (r"\b((?:sheet|paper)s?\b.*)\b9 ?x ?11\b(?! ?(?:mm|in\b|\"))", r"\1 9 in x 11 in"),
    (r"(\bbelts?\b.*?\b\d/\d{1,2}) ?x ?(\d{2})\b(?! ?mm)", r"\1 in x \2 in"),
    (r"\b(tape\b.*\d(?:\"| ?in\b).*?)\b\d{1,2}(?:\.\d)? ?mil\b", r"\1"),  # thousandths of an inch thick
    (r"\b(clamp|clip|clmp|clp)(.*?),? ?\bscrew 5/16 hex\b", r"\1\2"),
    (
        r"^(?!.*\b(?:bulb|lamp|key|bit|socket|skt|driver)s?\b)"
        r"((?:h[1-9]|h1[0-9]|hb[34]) .*\b(?:p43t|px26d|\d\d ?v|\d\d ?w)\b)",
        r"bulb \1",
    ),
    (r"\b([ac]\d)(?=b\d\b)", r"\1 "),  # A5B5
    (r"\bw ?(?:and|n|\+|/) ?d\b", "wet and dry"),
    (r"\bwet[ -]or[ -]dry\b", "wet and dry"),
    (r"\bppr\b", "paper"),
    (r"\bsz(?=\d)", "size "),
    (r"(\bt[yi]res?\b.*)\blow?[- ]press(?:ure)?\b", r"\1lowpressure"),
    (r"\blow?[- ]press(?:ure)?\b(?=.*\bt[yi]re)", "lowpressure"),
    (r"\bhook ?(?:\+|and|&|n|/) ?loop\b", "hook and loop"),
    (r"\bpads?,? abr\b", "pad abrasive"),
    (r"\babr (?=(?:disc|pad|cloth|belt|wheel|strip)s?\b)", "abrasive "),
    (r"\bred[- ]brown(?: \(maroon\))?", "maroon"),
    (r"^((?:[a-z]+ )?masking)$", r"\1 tape"),
    (r"^wipers\b(?=,? (?:pair|front|rear)|$)", "wiper blades"),
    (r"(?<!towels )(?<!towel )(?<!rags )\bblue roll\b", "blue paper roll"),
    (r"\btp(?=,? (?:msk|mskg|mask|insul|ins|elec|dbl|alum|alu|ptfe|duct|cloth|foam)[a-z]*\b)", "tape"),
    (r"\babr (?=sheets?\b|paper\b|rolls?\b|discs?\b|belts?\b)", "abrasive "),
    (r"\bwet ?/ ?dry\b", "wet and dry"),
    (r"\b(?:cut )?(?:level|lvl) (?=[a-f]\b)", "level"),
    (r"\b(?:sz|size) (\d{1,2}) (?=(?:pairs?|prs?)\b)", r"size \1 , "),
    (r"\b\d ?mil (?=.*glove|.*\bglv)|(?<=nitrile) ?\d ?mil\b|\b\d ?mil\b(?=.*nitrile)", " "),
    (r"\bseventy (?=duro|shore)", "70 "),
]
