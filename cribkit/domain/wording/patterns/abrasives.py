"""Discs, papers, pads and brushes."""

from __future__ import annotations

ABRASIVES = [
    (r"^wet paper (\d{3,4})$", r"wet sandpaper p\1"),
    (r"\b(p ?\d{2,4}|\d{2,4} ?grit) (wet (?:or dry )?)?paper\b", r"\2sandpaper \1"),
    (r"^paper,? (p ?\d{2,4}|\d{2,4} ?grit)\b", r"sandpaper \1"),
    (r"\b((?:p ?)?\d{2,4} ?grit) sheets?\b", r"sandpaper \1 sheet"),
    (r"\bgirt\b", "grit"),
    (r"\bgrit: ?(?=\d)", "grit "),
    (r"^(?=.*\b(?:dis[ck]s?|paper|sheets?|abrasive|sanding|belts?)\b)(.*?)(?:#|\bk)(\d{2,4})\b", r"\1p\2"),
    (r"(\bdis[ck]\b.*\d ?mm) (?:od|o/d|outside dia\w*)\b", r"\1"),
    (
        r"\b(wheel|disc) cut[- ]?off (\d(?:\.\d)?) ?x ?(\d/\d+) ?x ?(\d/\d)\b",
        r"cutoff wheel \2 in x \3 in , \4 in bore",
    ),
    (r"(\b(?:wet and dry|wet/dry|paper|sheets?)\b.*\d{3} ?x ?\d{3}(?: ?mm)?) (10|25|50|100)$", r"\1, \2 pc"),
    (
        r"\b(?:waterproof|wet) paper\b(?=.*\b(?:p?\d{3,4}|grit)\b)|(?<=grit )wet paper\b|(?<=\d )"
        r"waterproof paper\b|\bwet paper(?=,? [a-z ]*grit)",
        "wet and dry paper",
    ),
    (r"^(?=.*\b(?:discs?|disks?)\b)(.*?)\b(?:qc|q/c|q/change|quick[- ]chg)\b", r"\1quick change"),
    (r"(?<=\d)( ?)grt\b", r"\1grit"),
    (r"^(?=.*\bdis[ck]s?\b)(?!.*(?:quick|q/?c|q/change))(.*?)\broll[- ]on\b", r"\1quick change roll-on"),
    (r"^(?=.*\bdis[ck]s?\b)(.*?)\broll[- ]on\b(?:,? \(?(?:type r|tr)\b\)?)?", r"\1type r"),
    (r"^(?=.*\bdis[ck]s?\b.*\bq)(.*?)\bturn[- ]on\b(?:,? \(?(?:type s|ts)\b\)?)?", r"\1type s"),
    (r"\bh and l dis[ck](s?)\b", r"hook and loop disc\1"),
    (
        r"(\bhook and loop discs?|\bda discs?) (75|125|150|200)(?: ?mm)? ?/ ?(40|60|80|120|180|240|320|400|500|800)$",
        r"\1 \2 mm p\3",
    ),
    (r"\bgasket cleaning (?=discs?\b.*\bsurface conditioning\b)", ""),
    (r"(\bsurface conditioning\b.*?\bdiscs?\b.*?),? non[- ]?woven\b", r"\1"),
    (r"(\bcup brush(?:es)?\b.*?) for (?:the |an? )?(?:angle )?grinder\b", r"\1"),
    (r"(\bcup brush(?:es)?\b.*?) for cleaning [a-z ]+$", r"\1"),
    (r"(\bcup brush(?:es)?\b.*?\bm1[04](?:x[\d.]+)?) thread\b", r"\1"),
    (
        r"^(?=.*\b(?:wet (?:and|or|n) dry|sheets?|discs?|sand(?:ing|paper)|abrasive|belts?)\b)(.*?)"
        r"\bp-(?=(?:24|36|40|50|60|80|1[0258]0|220|240|280|3[26]0|400|500|600|800|1000|1200|1500|2000)\b)",
        r"\1p",
    ),
    (
        r"^(?=.*\b(?:discs?|disks?|sanding)\b)(.*?)\b(?:(hook[ -]?(?:and|n|&|/)[ -]?loop|h ?& ?l|h/l)"
        r"[- ]back(?:ed|ing)?(?! ?(?:pad|plate))"
        r"|(?:velour|velcro|grip)[- ]back(?:ed|ing)?(?! ?(?:pad|plate)))\b",
        r"\1hook and loop",
    ),
    (r"(\bdiscs?\b.*?) for (?:the |an? )?right[- ]angle(?:d)? (?=die grinder\b)", r"\1 for the "),
    (r"(\bflap\b.*?)[, ]za\b", r"\1 zirconia"),
    (r"^(?=.*\b(?:discs?|disks?|sheets?|paper|belts?)\b)(.*?\b\d{2,4}) grade (?=\d)", r"\1 grit, "),
    (
        r"(\b(?:cut[- ]?off|cutting|slitting) (?:disc|disk|wheel)s?,? (?:100|115|125|150|180|230|300|350)) ?dia\b",
        r"\1 mm",
    ),
    (r"\bc/o (?=(?:wheel|disc|disk)s?\b)", "cutoff "),
    (r"(\bcloth emery\b.*\d ?m),? rls?\b", r"\1 roll"),
    (
        r"^(?!.*\b(?:grit|p ?\d{2,4}|\d{2,4} ?g)\b)"
        r"(?=.*\b(?:wet (?:and|or|n) dr(?:y|ie)|wet ?[/&] ?dry|sand ?papp?er|abrasive paper)\b)(.*?)"
        r"(?<![x.\d] )(?<![x.\d])\b(240|3[26]0|400|600|800|1200|1500|2000) (?=sheets\b)",
        r"\1p\2 ",
    ),
    (r"\b(?:a )?roll of (blue|white|green|yellow) (?=paper\b)", r"\1 roll of "),
    (
        r"^(?=.*\b(?:abrasive|flap|sanding|sand ?paper|emery|wet (?:and|or|n) dry|wet ?& ?dry)\b)(.*?)\bp "
        r"(?=(?:24|36|40|50|60|80|1[0258]0|220|240|280|3[26]0|400|500|600|800|1000|1200|1500|2000)\b)",
        r"\1p",
    ),
    (r"\bflap (?:dsic|dics|dick|disk)s?\b", "flap disc"),
    (r"\bflap wheel(?=.*\bangle grinder\b)", "flap disc"),
    (r"^(?=.*\b(?:cut[- ]?off|cutting|slitting|grinding)[, ]+(?:wheel|disc|disk)s?\b)(.*?\d ?mm)[- ]thick\b", r"\1"),
    (r"\bcrepe paper (?=(?:masking )?tape\b)", "crepe "),
    (r"\b(?:non[- ]?woven )?scuff?(?:ing)?[- ]pads\b|\bscuf pad\b", "scuff pad"),
    (
        r"^(?=.*\b(?:scuff\w*|abrasive|hand pads?|scour\w*|web|nylon|prep)\b)"
        r"(.*?\bpads?\b.*?)\b(?:six|6) ?(?:by|x) ?(?:nine|9)\b(?! ?(?:mm|in\b|inch|\"|cm))",
        r"\1 6 in x 9 in",
    ),
    (r"\b(?:wet|wt) (?:and|n|&) (?:drie|drey|dyr)\b", "wet and dry"),
    (r"^(.*\bcut(?:ting|-?off)? dis[ck]s?) (75|100|115|125|180|230|300|350)$", r"\1 \2 mm"),
    (r"\bready[- ]?(?:wet(?:ted)?|soaked|moistened)\b|\bpre[- ]?(?:soaked|sat)\b", "presaturated"),
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
    (r"(\bdiscs?\b.*)\bza ?(\d{2,3})\b", r"\1zirconia p\2"),
    (r"^(discs?,? flap),? angle grinder\b", r"\1"),
    (r"^cut[- ]?off wheel\b", "cutting disc"),
    (r"\b(blue|paper) rol\b", r"\1 roll"),
    (r"\bwet ?\+ ?dry\b", "wet and dry"),
    (r"^oil only pads$", "oil only absorbent pad"),
    (r"\bcut[- ]?off wheel (\d(?: \d/\d)?) x (0?\.\d+)\b", r"cutoff wheel \1 in x \2 in"),
    (r"\bsand (?=discs?\b)", "sanding "),
    (r"\bspill pads\b", "spill pad"),
    (r"(\bdiscs?\b.*)\b(?:grip|velour(?: backed)?)\b", r"\1hook and loop"),
    (r"(\bdiscs?\b.*)\bgr ?(\d{2,4})\b", r"\1p\2"),
    (r"(\bpaper\b.*),? a4$", r"\1"),
    (r"\bflap wheel (?=disc)", "flap "),
    (r"\bpads?,? absorb(?:ent|ing)?\b|\babsorb(?:ent|ing)?,? pads\b", "absorbent pad"),
    (r"(\b(?:discs?|wheels?|cutoff)\b.*)\b[ac]-?(?:24|30|36|46|60|80)[a-z]?\b", r"\1"),  # its grain and bond
    (r"\bgrit (?=p\d)", ""),
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
    (r"\bgrip (?=discs?\b)", "hook and loop "),
    (r"\bsurface prep(?:aration)? (?=(?:\S+ ){0,2}discs?\b)", "surface conditioning "),
    # The form of a wheel, ISO 525 (from memory)
    (r"\bt(?:ype)? ?(?:1|27|29|41|42)\b(?=.*\b(?:disc|whl|wheel|cutoff))", ""),
    (r"\b((?:disc|whl|wheel|cutoff).*)\bt(?:1|27|29|41|42)\b", r"\1"),
    # The usual sheet of abrasive paper
    (r"\b9 ?x ?11\b(?! ?(?:mm|in\b|\"))(?=.*(?:grit|paper|sheet|\bp\d))", "9 in x 11 in"),
    (r"\b((?:sheet|paper)s?\b.*)\b9 ?x ?11\b(?! ?(?:mm|in\b|\"))", r"\1 9 in x 11 in"),
    (r"\bw ?(?:and|n|\+|/) ?d\b", "wet and dry"),
    (r"\bwet[ -]or[ -]dry\b", "wet and dry"),
    (r"\bppr\b", "paper"),
    (r"\bpads?,? abr\b", "pad abrasive"),
    (r"\babr (?=(?:disc|pad|cloth|belt|wheel|strip)s?\b)", "abrasive "),
    (r"(?<!towels )(?<!towel )(?<!rags )\bblue roll\b", "blue paper roll"),
    (r"\babr (?=sheets?\b|paper\b|rolls?\b|discs?\b|belts?\b)", "abrasive "),
    (r"\bwet ?/ ?dry\b", "wet and dry"),
]
