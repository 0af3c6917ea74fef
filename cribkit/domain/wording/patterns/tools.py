"""Spanners, pliers, pullers, hammers, saws, drills, lifting; sets of them."""

from __future__ import annotations

TOOLS = [
    (r"\blive[- ](?:work(?:ing)?|line)\b", "insulated"),
    (r"\bworking load\b", "wll"),
    (r",? \bboth (?:ends|sides)(?: open)?\b", ""),
    (r"\bspinner grip\b", "spinner handle"),
    (r"\b(?:ordinary|standard|normal|regular)[- ]length\b", "standard length"),
    (r"^(\d{3}) (?=(?:combi|combination|long[- ]nose|side|water[- ]pump|needle)\b.*pliers)", r"\1 mm "),
    (r"\b(pliers?\b.*?) for shafts?\b", r"\1 external"),
    (r"\b(pliers?\b.*?) for (?:bores?|holes?)\b", r"\1 internal"),
    (r"\bfixed[- ]head (?=ratchet)", "non flexible head "),
    (r"(\bjack\b.*)\blow[- ]entry\b", r"\1low profile"),
    (r"\bhammer with copper and (?:raw)?hide faces\b", "copper hide hammer"),
    (r"\btogether with\b", "with"),
    (r"(\bstands?) \(2\)", r"\1"),
    (r"\bspark[- ]resist(?:ant|ing)?\b", "non sparking"),
    (r"\bsump key\b", "sump plug key"),
    (r"\bf/?back (?=arrest)|\bf/b (?=arrest)", "flashback "),
    (r"(\barrest\w*),? f/b\b", r"flashback \1"),
    (r"\b1000 ?vac\b", "1000 v"),
    (r"\bswl\b|\bsafe working load\b|\bworking load limit\b", "wll"),
    (r"\b(\d+(?:\.\d+)?) ?t(?:on(?:ne)?s?)?,? \((\d+(?:\.\d+)?) ?t(?:on(?:ne)?s?)? (?:ea|each)\)", r"\2 t"),
    (r"\b(ring|box|dbl ring|double ring)\b(.*)\bcranked\b", r"\1\2offset"),
    (r"\bgear (?=(?:spnr|spanner|wrench)\b)", "ratcheting "),
    (r"\bhinged (?=h(?:ea)?d\b)", "flex "),
    (r"(\bhook\b.*)\b(\d{2,3})/(?=\d{2,3} ?mm)", r"\1\2-"),
    (r"\bb[- ]crimp\b", ""),
    (r"\bgrip pliers,? self[- ]lock(?:ing)?\b", "locking pliers"),
    (r"\b(?:iec|en) ?60900\b", "insulated 1000 v"),
    (r"\btaps? ?\+ ?dies?\b", "tap and die"),
    (r"\blow[- ]entry \(low[- ]profile\)", "low profile"),
    (r"\blow(?:[- ]entry)? (?=(?:trolley|floor|garage) jack)", "low profile "),
    (r"\bhammer with (?:an? )?copper face and (?:an? )?(?:raw)?hide face\b", "copper hide hammer"),
    (r"(\bcirclip pliers?\b.*)\bright[- ]angled?\b", r"\g<1>90 deg"),
    (r"\bpunch,? pin,? par\b", "parallel pin punch"),
    (r"\b(\d{1,2}) ?mm square sump key\b", r"\1 mm square sump plug key"),
    (r"\b\d+(?:\.\d+)? ?t per pair ?\((\d+(?:\.\d+)?) ?t(?:ons?|onnes?)? (?:ea|each)\)", r"\1 t"),
    (r"\bper pair\b(?=.*\bstands?\b)|(?<=stands )per pair\b|(?<=\dt )per pair\b", "perpair"),
    (r"\bplr(?=,? (?:brg|bearing|hub|gear|wiper|strg|steering|pulley)\b)", "puller"),
    (r"\bc15(?:e)?\b(?=.*\b(?:wll|m\d)|)", ""),
    (r"\bcomp (?=test)", "compression "),
    (r"\bvolt(?:age)? detector\b", "voltage tester"),
    (r"\b(?:cr|chrome)[- ]?(?:mo(?:ly)?|v(?:anadium)?)\b", ""),  # what it is forged of
    (r"\bcrow ring(?: spanner| wrench)?,? split\b", "flare nut crowfoot"),
    (r"\b(wrench|spanner|spnr),? (comb\w*),? gear\b", r"ratcheting \1 \2"),
    (r"(\bhook\b.*)\b(\d{2,3})/(\d{2,3})\b", r"\1\2-\3"),
    (r"\bpower bit (?:adaptor|adapter|adptr)\b", "drill adapter"),
    (r"\bbent(?=\d)", "bent "),
    (r"(\b(?:adapter|reducer|adaptor)\b.*)\bbreaker bar\b", r"\1"),
    (r"\b(?:red|r) ?/ ?(?:blue|blu|b) ?/ ?(?:yellow|yel|y)\b(?=.*\b(?:crimp|terminal))", ""),
    (r"(\bcrimp\w*\b.*)\b(?:red|r) ?/ ?(?:blue|blu|b) ?/ ?(?:yellow|yel|y)\b", r"\1"),
    (r"(\bferrules?\b.*)\b(0\.\d+-\d+)\b(?! ?(?:mm|sq))", r"\1\2 mm2"),
    (r"(\b(?:drift|punch)\b.*)\bd(\d{1,2})$", r"\1\2 mm"),
    (r"\b\d{1,2} pitches\b", ""),
    (r"(\b(?:hose cl[ai]\w*|clip|clamp) pliers\b.*)\bconstant tension(?: type)?\b", r"\1spring band"),
    (r"\btooth(?:ed)? (?=gear)", ""),
    (r"\bhigh[- ]speed steel\b", "hss"),
    (r"\bside crimp(?:ing)?\b", "side jaw"),
    (r"\b((?:breaker|knuckle|power|pry|crow) bar .*?)\b([1-9]\d{2})$", r"\1\2 mm"),
    (r"\b\d+ ?(?:bld|blds)\b", ""),
    (r"\b(?:dre|d/ring|d/re|dbl/ring)\b", "double ring end"),
    (r"\bd/e\b", "double ended"),
    (r"\b(\d+ ?mm),? cap(?:acity)?$", r"\1"),
    (r"(?<=[a-z]{3})/(?=\d[- ]?(?:leg|jaw))", " "),
    (r"\b(two|three)[- ]leg(?:ged)?\b(?=.*pull)|\b(2|3)[- ]leg(?:ged)?\b", r"\1\2 jaw"),
    (r"\bno[- ]ball(?: end)?\b", "plain end"),
    (r"\b(?:for )?live work(?:ing)?\b", "insulated"),
    (r"(\bpliers?\b.*?)\b(0?\.\d\d\d?) (?=tips?\b)", r"\1\2 in "),
    (r"\b(\d+/\d+)(?: ?in)?\.? grip\b", r"grip \1"),
    (r"(\bopen end\w*|\bspanner|\bwrench)(.*?) (\d\d?) and (\d\d?)(?= ?mm\b|$|,)", r"\1\2 \3 x \4"),
    (r"\bmirror[- ](?:polish(?:ed)?|finish(?:ed)?|chromed?)\b", "polished"),  # no inspection mirror
    (r"\bi[- ]beam(?: (?:handle|shank|section|pattern))?\b(?=.*(?:spanner|wrench|spnr))", " "),
    (r"((?:spanner|wrench|spnr)\b.*?),? \bi[- ]beam(?: (?:handle|shank|section|pattern))?\b", r"\1"),
    (r"(?<=\d) ?c/v\b", " "),  # 8 X 10 C/V: chrome vanadium, no degrees
    (r"\b(flare|brake pipe|brake line)\b(.*)\b[56][- ](?:sided|flats?)\b", r"\1\2"),  # its ring, no size
    (r"\b[56][- ](?:sided|flats?) (?=.*\bflare)", ""),
    (r"\bt[- ](?=(?:spanner|wrench)\b)(?!.*(?:torque|nm\b|n\.m|lb|\bdr))", "tee "),  # no torque wrench
    (r"\b(\d{1,2}) ?ba\b(?=.*\b(?:spanner|wrench|spnr|skt|socket|driver)\b)", r"ba\1"),  # a system of its own, no mm
    (r"\b((?:spanner|wrench|spnr|skt|socket|driver)\b.*?)\b(\d{1,2}) ?ba\b", r"\1ba\2"),
    (
        r"(?<!open )(?<!and )(?<!nut )(?<!ratchet )(?<!ratcheting )\bring (?=(?:spanner|wrenche?|spnr)s?\b.*\bset\b)|"
        r"(?<=set of )ring (?=(?:spanner|wrenche?|spnr)s?\b)",
        "ring end ",
    ),
    (r"\blong[- ]reach (?=(?:comb\w*|open|ring|box|flat)\b.*(?:spanner|wrench|spnr))", "long "),
    (r"\b(comb\w*|open|ring|box)\b(.*(?:spanner|wrench|spnr)\b.*)\blong[- ]reach\b", r"\1\2long"),
    (
        r"\b((?:wrench|spanner|crow ?foot|open end(?:ed)?|ring|comb\w*|key)\b.*\bset\b(?!.*(?:skt|socket)).*)\bimp$",
        r"\1imperial",
    ),
    (r"\b(?:do not|don't|never) use (?:an? |the |any )?(fork|wedge|pickle fork)\b[^,;.)]*", r"not \1"),
    (r"\b2 ?/ ?3[- ]?(?:jaws?|legs?|arms?)\b", "2 jaw 3 jaw"),  # 2/3 jaw puller
    (  # BSPT TAP 1/4
        r"\b(nptf?|bsp[pt]?),? (taps?|dies?|plugs?|fittings?),? (1/8|1/4|3/8|1/2|3/4|1)\b(?![/.\d-]| ?(?:npt|bsp|x))",
        r"\2 \3 \1",
    ),
    (r"(saws?\b.*?),? (?:x ?)?(14|18|24|32) ?t\b", r"\1, \2 tpi"),  # hacksaw blade 300 x 32T
    (r"\b(?:number|wire gauge) drills?(?: bit)?,? (\d{1,2})\b(?! ?mm|[./])", r"drill bit no \1"),
    (r"\b(?:\d/\d+|\d+ ?mm)?(?:\"| ?in\b)? ?reduced shank\b", " "),  # of a drill
    (r"\bslack adj\b", "slack adjuster"),
    (r"\b(flash ?light|torch)\b(.*)\bangled?[- ]head\b", r"\1\2angled"),
    (r"\b(?:right|rt)[- ]angled?\b(?=.*\b(?:pick|hook|nose|pliers?|plr)\b)", "90 deg"),
    (r"(?<=[\d\"] )stk\b|(?<=in )stk\b|(?<=in\. )stk\b", "stock"),  # a punch of 1/4 in stock
    (r"\b(pliers?,?) (?:for )?housings?\b", r"\1 internal"),  # circlips in a housing
    (r"\bpen (?:lite|light|torch)\b", "penlight"),
    (r"^(\d+(?:\.\d+)?) ?(t|tons?|tonnes?) stands?\b", r"\1 \2 axle stands"),
    (
        r"\bwith (?:one|1) open and (?:one|1) (?:ring|box) end\b|\bopen one end,? (?:ring|box) (?:the )?other\b",
        "combination",
    ),
    (r"\b(?:one|1) open and (?:one|1) (?:ring|box) end\b", "combination"),
    (r"\b(?:magnetic|magnet) (?:insert|holding|retention)\b", "magnetic"),
    (r"\bair ?/ ?hydraulic\b|\bair over hydraulic\b|\bair[- ]hydraulic\b", "airhydraulic"),
    (r"\brd\b(?= ?(?:file|sling|bar|nose))|(?<=file )rd\b|(?<=file, )rd\b|(?<=sling )rd\b", "round"),
    (r"\bfold[- ]?up\b", "folding"),
    (r"\bplain[ -]end(?:s|ed)?\b|\bplain tips?\b", "plainend"),
    (
        r"\bsockets?, (\d{1,2}) (?:to|-) (\d{1,2}) ?mm, (.{0,20}?),? ?\b(?:box|set|case) of (\d{1,2})\b",
        r"socket set, \1-\2 mm, \3, \4 pc",
    ),
    (r", (\d{1,2}) (?:keys|sizes|bits|sockets|spanners|wrenches)$", r", \1 pc"),
    (r"\b(jt|joint) sep\b", r"\1 separator"),
    (r"\baxl?e? stnds?\b", "axle stand"),
    (r"\bdrl(?=,? ?\d)", "drill"),
    (r"\bct?r pnch\b", "centre punch"),
    (r"\bpnch auto\b", "punch automatic"),
    (r"\bctr pnch auto\b", "centre punch automatic"),
    (r"\bside[- ]jaws?\b", "sidejaw"),
    (r"\bset of (?:\d+|two|three|four|five|six|seven|eight|nine|ten|twelve)$", "set"),
    (r"\bdip(?:ped)?[- ]insulated\b", "dipped"),  # handles dipped in plastic stand no voltage
    (r"\bhose pinch clamps?\b", "hose pinch pliers"),
    (r"\bbattery(?= impact| ratchet| drill| driver| gun)", "cordless"),
    (r"(?<=\d ) ?bl\b(?=$|,| )|(?<=\d)bl\b", " blades"),
    (r"\b(tr\d{1,2})x(?=\d)", r"\1 x "),  # TR10X80MM
    (
        r"\bfilter cap(?=.*\d ?(?:flutes?|fl|flats?)\b)(?! (?:wrench|wr|spanner|socket|skt|type))",
        "filter cap wrench",
    ),
    (r"\b(filter\b.*\d) ?flats?\b", r"\1 flutes"),
    (r"\b(ream\w*.*?)[ ,]+h[6-9]\b", r"\1"),  # a fit, ISO 286
    (r"\b((?:scissor|lever|screw)\b.*\d ?mm) fork\b", r"\1"),  # its opening
    (r"\bfilter socket,? cap\b", "filter cap socket"),
    (r"\bcompr(?=,? (?:sprg|spring|vlv|valve|pstn|piston|ring|strut))", "compressor"),
    (r"\b(?:sft|soft),? (?:fc|face|faced)\b", "soft face"),
    (r"\b(?:pliers?|plrs?),? circ\b", "pliers circlip"),
    (r"\b(fixed|flx|flex|flexi|flexible|swivel|reversible|hex|hx|flg|flange) hd\b", r"\1 head"),
    (r"\b(?:hs|hse|hose) grp\b", "hose grip"),
    (r"\bbox (?=\d+ ?deg)", "box end "),
    (
        (
            r"\b(sockets|spanners|wrenches|keys)\b(?!.*\bset\b)"
            r"(?=.*\b\d+(?:\.\d)? ?(?:mm )?(?:-|to) ?\d+ ?mm\b.*\b\d+[- ]?(?:pcs?|piece)\b)"
        ),
        r"\1 set",
    ),
]
