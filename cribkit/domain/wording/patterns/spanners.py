"""Spanners, wrenches and ratchets."""

from __future__ import annotations

SPANNERS = [
    (
        r"^(?:spanner|wrench),? for (?:an? |the )?(\d\d? ?mm|\d/\d+) (?:brake|clutch|fuel|hydraulic|injector)(?: pipe|"
        r" line)? unions?\b",
        r"flare nut spanner \1",
    ),
    (
        r"^(\d\d? ?mm|\d/\d+) (?:spanner|wrench) for (?:the |an? )?(?:brake|clutch|hydraulic)(?: pipe| line)?"
        r" unions?\b",
        r"\1 flare nut spanner",
    ),
    (r"\bcrowfoot, (?:pipe|brake pipe|brake|fuel)? ?union (?:sort|type|pattern)\b", "flare-nut crowfoot"),
    (r"\b(\d\d? ?mm|\d/\d+) curved ring for (?:the )?(?:starter|manifold) bolts?$", r"half-moon ring spanner \1"),
    (r"^(\d\d)(?: ?mm)? ring you can hit with (?:a )?(?:sledge|hammer)$", r"slogging ring spanner \1 mm"),
    (
        r"\bdouble open-?ender, (\d\d?)(?: ?mm)? (?:at )?one end (?:and )?(\d\d?)(?: ?mm)? (?:at )?the other\b",
        r"double open ended spanner \1 x \2 mm",
    ),
    (r"\bhalf-moon \(starter motor\) pattern\b", "half-moon"),
    (r"\bplumber'?s wrench\b", "pipe wrench"),
    (r"\bshort[- ]handled?\b(?=.*\b(?:combination|spanner|wrench)\b)", "stubby"),
    (r"\bflare nut,? open ring\b", "flare nut"),
    (r"\b(\d{2,3} ?mm),? (\d{1,2}) flutes? filter cap\b", r"oil filter cap wrench \1 \2 flute"),
    (r"^offset box (\d)", r"offset box wrench \1"),
    (r"\bbrakepipe\b", "brake pipe"),
    (r"\bfixed wheel ?nut wrench\b", "fixed torque wrench"),
    (r"\bnon-? ?revers(?:ible|ing)\b", "nonreversible"),
    (r"(\brat(?:chet(?:ing)?)?\b.*?),? (?:with )?(?:an? |the )?reverse (?:lever|switch)\b", r"\1 reversible"),
    (r"\bsplit[- ]ring (?:\([^()]*\) )?(?=spanner|wrench)", "flare nut "),
    (r"^thin (\d{1,2} ?mm) (spanner|wrench) for the fan hub$", r"thin \1 \2"),
    (
        r"(\brat(?:chet(?:ing)?)?\b.*|\brtchtg\b.*)\b(?:rev(?:ersing|ersible)?\.?|the reversing) (?:lever|switch)\b",
        r"\1reversible",
    ),
    (
        r"\b(\d{1,2}(?:/\d{1,2})?)(?: ?mm)? (?:at |on )?one (?:side|end|way),?(?: and)? (\d{1,2}(?:/\d{1,2})?)(?: ?mm)?"
        r" (?:at |on )?(?:the )?other(?: side| end| way)?\b",
        r"\1 x \2",
    ),
    (r"^(?=.*\b(?:spnr|spanner|wrench)\b)(.*?\bring\b.*?)\bflat\b(?! (?:head|blade|tip))", r"\1flatring"),
    (r"\bflat (?=(?:double |dbl )?ring (?:spanner|spnr|wrench|wr)\b)", "flatring "),
    (r"(\b(?:comb\w*|spnr|spanner|ring|wrench)\b.*?\b(?:\d|[1-4]\d) ?mm) (?:long|lng|lg)\b(?! ?\d)", r"\1, long"),
    (r"(\bfilter\b.*?\d ?(?:mm)?) (\d\d)f(?:l(?:ute)?s?)?\b", r"\1 \2 flute"),
    (r"(\b(?:filter claw|filter wrench|filter spanner)\b.*?) (1/4|3/8|1/2)$", r"\1 \2 drive"),
    (r"\bdeeply (?=cranked|offset)|\bdeep offs\b", "deep "),
    (r"(\b(?:ring|box)\b.*?)\b75 ?(?:deg(?:ree)?s?)\b\.?(?: (?:offset|offs|crank(?:ed)?|angle))?", r"\1deep offset"),
    (r"\b75 ?(?:deg(?:ree)?s?)\b\.?(?: (?:offset|offs|crank(?:ed)?|angle))?(?=.*\b(?:ring|box)\b)", "deep offset"),
    (r"\b1/2 moon (?=(?:ring )?(?:spanner|wrench|spnr))", "half moon "),
    (r"\b(spnrs?|spanners?|wrench(?:es)?),? (ring|open[- ]end(?:ed)?|combination|comb) set\b", r"\2 \1 set"),
    (r"\bopen wr(?:ench)? set\b", "open end wrench set"),
    (r"\bsfty-?wr\b", "safety wire"),
    (r"^(?=.*\b\d{2}[- ]?(?:t|th|teeth|tooth)\b)(?=.*\bratchet\b)(.*?)\bfine[- ]tooth(?:ed)?\b,? ?", r"\1"),
    (
        r"(\bratchet\w* (?:spanner|wrench)\b.*?),? with an open end (?:on|at) the other (?:side|end)\b",
        r"combination \1",
    ),
    (
        r"\b(ratchet\w* (?:spanner|wrench)),? open[- ]end(?:ed)? (?:\+|and|,) (hinged |flexible |swivel )?"
        r"ratchet(?:ing)? ring(?: end)?\b",
        r"combination \1 \2",
    ),
    (
        r"\b(?:open|split|slotted) ring (spanner|wrench|spnr|wr)"
        r"(?=,? for (?:the )?(?:pipe unions?|union nuts?|pipe nuts?))",
        r"flare nut \1",
    ),
    (r"\bslogg?ers?\b(?! (?:spanner|wrench|spnr|wr)\b)", "slogging wrench"),
    (r"(\bopen[- ]end(?:ed)? (?:spanner|wrench),? \d{1,2} and \d{1,2} ?mm) jaws\b", r"\1"),
    (r"(\badj\w*\.? (?:spanner|spnr|wrench)\b.*?) cap\.? (?=\d{2} ?mm)", r"\1 "),
    (r"\bbox spanner screwdriver type \(nut ?driver\)", "nut driver"),
    (r"^(\d{1,2} ?x ?\d{1,2}) ratchet ring$", r"ratchet ring spanner \1"),
    (r"\bhandle, socket wrench[:,] breaker bar\b", "breaker bar"),
    (r"(\bring (?:spanner|wrench|spnr|wr)\b.*?),? swan[- ]?neck(?:ed)?\b", r"\1 deep offset"),
    (r"\bdeep offset ring(?=,| \d|$)", "deep offset ring spanner"),
    (
        r"\b(?:open|split|slotted) ring (spanner|wrench|spnr|wr)(?=,? (?:for )?(?:the )?(?:brake|fuel|hydraulic|clutch)"
        r"(?: line| pipe)? (?:unions?|pipes?|lines?|nuts?)\b)",
        r"flare nut \1",
    ),
    (
        r"^(?!.*\b(?:wrench|holder|drain|water|unc|unf|bsp|bsw|bsf|ba|npt|set|o-?ring|ring|seal|washer|"
        r"gasket|pin|punch|drift)s?\b)"
        r"(?=.*\b(?:taps?|dies?|die ?nuts?)\b(?! grinder))(.*?)(?<![\w./-])(?<!x )(\d{1,2}) ?x ?"
        r"(0\.[57]|0\.75|0\.8|1\.0|1\.25|1\.5|1\.75|2\.0|2\.5)(?![\d.])(?: ?mm)?(?! ?x)",
        r"\1m\2x\3",
    ),
    (r"(\b(?:wr|wrench|spnr|spanner|skt|socket)\b.*?\d.*?)\bcv (?=satin|matt?e?\b|polish|chrome|mirror|finish)", r"\1"),
    (r"\bdeep[- ](?:crank(?:ed)?|offset) ring (spanner|wrench|spnr)\b", r"ring \1 deep offset"),
    (r"(\bflare nut (?:spanner|wrench|wr)\b.*), hex(?:agon)? ends\b", r"\1 6 pt"),
    (r"\btubing (?:wrench|spanner)\b|\bpipe (?:wrench|spanner),? split[- ]ring(?: type)?\b", "flare nut wrench"),
    (
        r"(\b(?:flare[- ]nut|line|brake pipe) (?:wrench|spanner)\b.*?), (?:the )?split[- ]ring(?: sort| type| kind| "
        r"one)?",
        r"\1",
    ),
    (
        r"(\b(?:crow'?s? ?-?foot|crows ?foot)\b.*?)\b(?:ring (?:spanner|wrench),? slotted for (?:pipe|line|tube|"
        r"brake) nuts|"
        r"split[- ]ring)\b",
        r"\1 flare nut",
    ),
    (r"\bflat (?=(?:double )?ring (?:spanner|wrench|spnr)\b)", "straight "),
    (r"\bstrap (?:wrench|spanner) for (?:oil )?filters?(?=$|[,;])", "oil filter strap wrench"),
    (
        r"\bswivel(?:l?ing)?[- ](?:grip|handled)\b(?=.*\b(?:band|filter)\b)|(?<=band wrench, )swivel(?:l?ing)? grip\b",
        "swivel handle",
    ),
    (
        r"\b(?<!filter )(?<!filter, )band (?:wrench|spanner|remover)\b(?=.*\d{2,3} ?(?:-|to) ?\d{2,3} ?mm)",
        "filter band wrench",
    ),
    (
        r"(\d{2,3} ?(?:-|to) ?\d{2,3} ?mm )(swivel[- ]?handle )?(?:band (?:wrench|spanner))\b",
        r"\1filter band wrench \2",
    ),
    (r"\b(swivel[- ]?handle) (filter band wrench)\b", r"\2 \1"),
    (
        r"(\b(?:filter|filtr|fltr) (?:cap|cup)(?: wrench)?\b.*?\b)(\d{2,3})(?: ?mm)? x (1[4-8]|3[06])\b(?! ?mm)(?: "
        r"flutes)?",
        r"\1\2 mm \3 flutes",
    ),
    (r"\bfilter cap(?=.*\bflutes?\b)(?! (?:wrench|wr|spanner|socket|skt|type))", "filter cap wrench"),
    (r"(\b\d{2})[- ]flutes? cap (?:wrench|spanner)\b", r"\1 flutes oil filter cap wrench"),
    (r"\b(?:end )?cap filter tool\b", "filter cap wrench"),
    (
        r"(\bfilter\b.*\b(?:wrench|spanner)\b.*?),? and (?:an? )?(1/4|3/8|1/2)(?:[- ]in\b\.?|[- ]inch| ?\")? drive "
        r"ratchet(?=$|;)",
        r"\1, \2 drive",
    ),
    (r"(\bstrap wrench) on (?:an? )?(1/4|3/8|1/2)(?:[- ]in\b\.?|[- ]inch| ?\")? drive ratchet(?=$|;)", r"\1, \2 drive"),
    # A square for the ratchet is on the strap wrenches of filters.
    (
        r"^(?!.*\b(?:rubber|leather|pipe)\b)(.*?)(?<!filter )(?<!filter, )\b(strap (?:wrench|spanner|wr)|wrench, "
        r"strap)\b(?! (?:oil )?filter)"
        r"(?=.*(?:1/2|3/8|half|three[- ]eighths?|12\.5 ?mm|10 ?mm).{0,12}(?:dr|drive|sq)\b|.*\dsd\b)",
        r"\1oil filter strap wrench",
    ),
    # A T-handle with a socket on its end.
    (
        r"^(?!.*\b(?:sliding|slide|slider|drive|dr|sq|square|keys?|allen|alan|bits?|ball|set|torx|screwdriver|"
        r"torque|taps?|reamer|spark|plugs?)\b)"
        r"(?!.*\bhex(?:agon)?[- ](?:socket|head)\b)(?!(?!.*\b(?:socket|skt|nut|box)\b).*\bhex)"
        r"(?=.*(?<![\d/.])\b(?:[5-9]|1\d|2[0-4]|eight|ten|twelve|thirteen)(?:\.5)? ?(?:mm|millimet(?:re|er)s?|mil)\b)"
        r"(.*?)"
        r"(?:\b(?:socket|skt) (?:wrench|spanner|wr)[, ]+(?:t|tee)[- ](?:handle|bar)\b"
        r"|\b(?:wrench|spanner),? socket,? (?:t|tee)[- ](?:handle|bar)\b"
        r"|\b(?:t|tee)[- ](?:handle|handel|hdl|bar)[, ]+(?:(?:s[ocke]{4}t|skt|box|nut|fixed) )?(?:wrench|spanner|wr|"
        r"spinner)\b"
        r"|\b(?:t|tee)[- ](?:handle|bar) (?:socket|skt)\b"
        r"|\b(?:t|tee)[- ](?:handle|bar) with (?=.*\bsocket\b)"
        r"|\b(?:t|tee)[- ](?:wrench|spanner)(?: with (?:an? )?socket end)?)",
        r"\1 tee wrench ",
    ),
    (r"^(\d{1,2} ?mm) (?:t|tee)[- ]handle$|^(?:t|tee)[- ]handle (\d{1,2} ?mm)$", r"tee wrench \1\2"),
    (r"(\btee wrench\b) ?,? fixed\b", r"\1"),
    (r"(\btee wrench\b.*\b(?:mm|mil|millimetre)) socket(?: on the end)?\b", r"\1"),
    (r"(\btee wrench\b.*\d ?mm) hex$", r"\1 6 pt"),
    (r"\b(open[- ]end(?:ed)? (?:wrench|spanner),?) (\d{1,2}) ?mm jaw and (\d{1,2}) ?mm jaw\b", r"\1 \2 x \3 mm"),
    (
        r"\b(combination (?:wrench|spanner)),? (?:open (?:on )?(?:at )?one(?: end)?,? )"
        r"(?:and )?(?:a )?ring (?:on )?(?:the )?other(?: end)?\b",
        r"\1",
    ),
    (r"\bwrench with an? open (\d{1,2} ?mm|\d{1,2}/\d{1,2}(?: in)?) end\b", r"open end wrench \1"),
    (r"\bratchet adjustment\b", "ratchet"),
    (r"\bchain oil filter (?=wrench|spanner)", "oil filter chain "),
    (r"\bstrike[- ]face ring (?=wrench|spanner)", "slogging ring "),
    (r"\bcranked ring (?=\d)", "cranked ring spanner "),
    (r"\bcombined open and ring (?=wrench|spanner)", "combination "),
    (r"\bfour[- ]armed wheel (?=wrench|brace|spanner)", "four way wheel "),
    (r"\bchain[- ]type oil filter (?:remover|wrench)\b", "oil filter chain wrench"),
    (r"\btwo[- ]mouthed open (?=spanner|wrench)", "double open end "),
    (r"\bopen[- ]jaw (?=spanner|wrench)", "open end "),
    (r"\bring[- ]and[- ]open(?:[- ]end)? (?=spanner|wrench)", "combination "),
    (r"\b(?:slotted )?pipe[- ]union (?:\(?line\)? )?(?=crowfoot|spanner|wrench)", "flare nut "),
    (r"\bstrap wrench\b(.*)\boil filters?\b", r"oil filter strap wrench\1"),
    (
        r"^([^,]*\b(?:flare nut|brake[- ](?:line|pipe)|open[- ]end(?:ed)?|ring|double[- ]ended) (?:wrench|"
        r"spanner|spnr)),? "
        r"(\w+) and (\w+)(?= ?mm$| ?mil$|$)",
        r"\1 \2 x \3",
    ),
    (r"\b(?:slotted|split) ring (?=(?:spanner|spnr|wrench)\b)", "flare nut "),
    (r"(\b(?:brake pipe|flare nut) (?:spanner|spnr|wrench)),? (?:slotted|split) ring\b", r"\1"),
    (r"(\bratchet\w*\b.*)\brev\b", r"\1reversible"),
    (r"\b(\d/\d{1,2} x \d/\d{1,2}) (deep )?offset box$", r"\1 \2offset box wrench"),
    (r"\bfixed[- ]head (?=ratchet)", "non flexible head "),
    (r"\bgear (?=(?:spnr|spanner|wrench)\b)", "ratcheting "),
    (r"\bcrow ring(?: spanner| wrench)?,? split\b", "flare nut crowfoot"),
    (r"\b(wrench|spanner|spnr),? (comb\w*),? gear\b", r"ratcheting \1 \2"),
    (r"(\bopen end\w*|\bspanner|\bwrench)(.*?) (\d\d?) and (\d\d?)(?= ?mm\b|$|,)", r"\1\2 \3 x \4"),
    (r"\bi[- ]beam(?: (?:handle|shank|section|pattern))?\b(?=.*(?:spanner|wrench|spnr))", " "),
    (r"((?:spanner|wrench|spnr)\b.*?),? \bi[- ]beam(?: (?:handle|shank|section|pattern))?\b", r"\1"),
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
    (r", (\d{1,2}) (?:keys|sizes|bits|sockets|spanners|wrenches)$", r", \1 pc"),
    (r"\bbattery(?= impact| ratchet| drill| driver| gun)", "cordless"),
    (
        r"\bfilter cap(?=.*\d ?(?:flutes?|fl|flats?)\b)(?! (?:wrench|wr|spanner|socket|skt|type))",
        "filter cap wrench",
    ),
    (
        (
            r"\b(sockets|spanners|wrenches|keys)\b(?!.*\bset\b)"
            r"(?=.*\b\d+(?:\.\d)? ?(?:mm )?(?:-|to) ?\d+ ?mm\b.*\b\d+[- ]?(?:pcs?|piece)\b)"
        ),
        r"\1 set",
    ),
]
