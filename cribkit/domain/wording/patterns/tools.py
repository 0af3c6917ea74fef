"""Spanners, pliers, pullers, hammers, saws, drills, lifting; sets of them."""

from __future__ import annotations

import re

from cribkit.domain.wording.patterns.pattern import Pattern

# Threads of taps and dies as they are said.
_BOLTS = {"six": "6", "eight": "8", "ten": "10", "twelve": "12", "fourteen": "14"}
_PITCHES = {
    **{"one point two five": "1.25", "one point five": "1.5", "one point seven five": "1.75"},
    **{"one and a quarter": "1.25", "one and a half": "1.5", "one and three quarters": "1.75"},
}


def _said_thread(found: re.Match[str]) -> str:
    """M8 by one point two five, eight mil by one and a quarter."""
    return f"{found[1]}m{_BOLTS.get(found[2], found[2])}x{_PITCHES[found[3]]}"


TOOLS: list[Pattern] = [
    (r"\b(spnrs?|spanners?|wrench(?:es)?),? (ring|open[- ]end(?:ed)?|combination|comb) set\b", r"\2 \1 set"),
    (r"\b([23])jw\b", r"\1 jaw"),
    (r"\bthn-?wl\b", "thin wall"),
    (r"\btrm-?clp\b", "trim clip"),
    (r"\bfrk\b", "fork"),
    (r"\bclth\b(?=.*\b(?:tape|hrns|loom|harness)\b)|(?<=tape )clth\b", "cloth"),
    (r"\bhrns\b", "harness"),
    (r"(\bdr(?:i?l)l?\b.*?) \((?:stud|bolt) extr\w*\)", r"\1"),
    (r"\bopen wr(?:ench)? set\b", "open end wrench set"),
    (r"\bfuel line disc(?:onn?(?:ect)?)? tool\b", "fuel line disconnect tool"),
    (r"\bcobalt drill for spot ?welds?\b|\bdrill,? (?:for )?spot ?welds?\b", "spot weld drill"),
    (
        r"\b(?:set|kit|tool) for winding back (?:the )?(?:rear )?(?:brake )?caliper pistons\b",
        "brake caliper wind back tool set",
    ),
    (r"\bhacksaw (?:frame )?for (\d+) ?(?:in|inch|\")(?: \w+)? blades\b", r"hacksaw frame \1 in"),
    (
        r"^form an? double flare on (?:the |an? )?(?:new )?(\S+ )?brake pipe with the flaring tool$",
        r"double flaring tool \1",
    ),
    (
        r"\b(pliers|plrs|plr),? (?:with (?:an? )?)?flexible cable(?: type)?\b|\b(?:flexible cable|"
        r"remote cable) (?=(?:pliers|plrs))",
        r"\1 remote ",
    ),
    (r"\bdrl[ /]?stp\b|\bdrill/step\b|\bdrl step\b", "step drill"),
    (r"\bsfty-?wr\b", "safety wire"),
    (r"\blng-?ns\b", "long nose"),
    (r"^(?=.*\b\d{2}[- ]?(?:t|th|teeth|tooth)\b)(?=.*\bratchet\b)(.*?)\bfine[- ]tooth(?:ed)?\b,? ?", r"\1"),
    (r"^(?=.*\bpliers?\b)(.*?)\b(?:non|un)[- ]?serrated\b", r"\1smooth"),
    (r"^(?=.*\b(?:luer|lure)[- ]?lock)(.*?)\b(?:plastic|disp(?:osable)?|single use)\b,?", r"\1"),
    (r"\bfunel\b", "funnel"),
    (r"(\bmirror\b.*); on the (?:rear|back|underside|bottom) of the [a-z ]+$", r"\1"),
    (r"(\bmag(?:net(?:ic)?)? ?pick[- ]?up\b.*), pen clip\b", r"\1"),
    (r"^(?=.*\bluerlock)(.*?)\b(?:disposable|single use)\b,?", r"\1"),
    (r"^(?=.*\bluerlock)(.*?)\bplastic\b,?", r"\1"),
    (r"(\bluerlock\b.*?),? (?:screw )?tip\b", r"\1"),
    (r"^draw (?:up )?\d+ ?ml of [a-z ]+ with an? (?=.*\bsyringe\b)", ""),
    (r"(\bsyringe\b.*?),? for dosing [a-z ]+$", r"\1"),
    (
        r"^(?=.*\bbrush)(?=.*\b(?:wire|scratch|brass|bristles?)\b)(.*?)\b(?:(?:two|2)[- ]?(?:rows?|r)|double[- ]row)\b",
        r"\1tworow",
    ),
    (
        r"^(?=.*\bbrush)(?=.*\b(?:wire|scratch|brass|bristles?)\b)(.*?)"
        r"\b(?:(?:three|3)[- ]?(?:rows?|r)|triple[- ]row)\b",
        r"\1threerow",
    ),
    (r"^(?=.*\bbrush)(?=.*\b(?:wire|scratch|brass|bristles?)\b)(.*?)\b(?:four|4)[- ]?(?:rows?|r)\b", r"\1fourrow"),
    (r"^(?=.*\bbrush)(?=.*\b(?:wire|scratch|brass|bristles?)\b)(.*?)\b(?:five|5)[- ]?(?:rows?|r)\b", r"\1fiverow"),
    (r"^(?=.*\bbrush)(?=.*\b(?:wire|scratch|brass|bristles?)\b)(.*?)\b(?:six|6)[- ]?(?:rows?|r)\b", r"\1sixrow"),
    (r"(\bwire brush\b.*),? for (?:alumini?um|alloy)(?: bits| parts)?$", r"\1"),
    (r"\bwier brush\b", "wire brush"),
    (
        r"^(?=.*\bbrush)(.*?)\b(?:twist(?:ed)?[- ]?knot(?:ted)?|twistknot|knot(?:ted)?[- ]type|"
        r"knotted|twisted not|knot)\b",
        r"\1twistknot",
    ),
    (r"\bmagnet on an? (?:telescop\w*|extend\w*) (?:stick|rod|wand|handle)\b", "telescopic pick up magnet"),
    (r"\bmirror on an? (?:telescop\w*|extend\w*) (?:stick|rod|wand|handle)\b", "telescopic inspection mirror"),
    (r"(\bmirror\b.*?)\b(telescopic|extending|telescoping|extendable) handle\b", r"\1\2"),
    (r"^(?=.*\bmirror)(.*?)\bcircular\b", r"\1round"),
    (r"^check the (?:rear|back|underside|bottom) of the [a-z]+ with an? (?=.*\bmirror\b)", ""),
    (
        r"^(?=.*\b(?:mag|magnet(?:ic)?)\b)(.*?)\b(?:cap(?:acity)?|lifts?|pulls?)\.? (?=\d+(?:\.\d+)? ?(?:kg|lbs?|g)\b)",
        r"\1",
    ),
    (
        r"^(?=.*\b(?:mag|magnet(?:ic)?)\b)(.*?\d ?(?:kg|lbs?|g|pounds?)\)?) (?:cap(?:acity)?|lifts?|lifting|pull)\b",
        r"\1",
    ),
    (
        r"^(?=.*\b(?:mag|magnet(?:ic)?)\b)(.*?)(?:0\.45 ?kg ?[(/] ?(1) ?lbs?|0\.7 ?kg ?[(/] ?(1\.5) ?lbs?|"
        r"0\.9 ?kg ?[(/] ?(2) ?lbs?|1\.36 ?kg ?[(/] ?(3) ?lbs?|2\.27 ?kg ?[(/] ?(5) ?lbs?|3\.6 ?kg ?[(/] ?(8) ?lbs?|"
        r"4\.5 ?kg ?[(/] ?(10) ?lbs?)\b\)?",
        r"\1\2\3\4\5\6\7\8 lb",
    ),
    (r",? dropped an? (?:bolt|nut|screw|socket|washer|clip) (?:behind|down|under|into|in) [a-z ]+$", ""),
    (r"^(?=.*\bfunnel)(.*?)\b(?:flexi|flexy|flex|bendy|flexible)[- ](?:pipe|nozzle|extension)\b", r"\1flexible spout"),
    (
        r"(\bfunnel\b.*?),? for (?:topping up|filling|pouring|adding) (?:diesel|oil|coolant|fuel|petrol|gear oil)$",
        r"\1",
    ),
    (r"^(?=.*\bfunnel)(.*?)\bbrass (?=(?:gauze|mesh|filter|strainer))", r"\1"),
    (r"^(?=.*\bdrain)(?=.*\b(?:pan|tray)\b)(.*?\b(?:l|lit(?:er|re)s?|ltr)) cap\b\.?", r"\1 capacity"),
    (r"\b(oil|coolant) draining (?=(?:tray|pan|bowl)\b)", r"\1 drain "),
    (r"\bdrain pna\b", "drain pan"),
    (r"(\bdrain (?:pan|tray|bowl)\b.*?) for (?:an )?oil changes?\b", r"\1"),
    (r"\b(?:luer|lure)[- ]?locks?\b|\bluerlock\b", "luerlock"),
    (r"(\bsyr(?:inge|igne)s?\b.*)\b(?:l/lock|ll)\b", r"\1luerlock"),
    (r"\bll \(luerlock\)", "luerlock"),
    (r"\bluer[- ]?slip\b", "luerslip"),
    (r"\bsyrigne\b", "syringe"),
    (r"^(?=.*\bsyringe)(.*?)\bdisp\b", r"\1disposable"),
    (r"^(?=.*\bsyringe)(.*?\d) ?cc\b", r"\1 ml"),
    (r"^(?=.*\bsyringe)(.*?)\b(?:sixty|60) mil\b", r"\g<1>60 ml"),
    (
        r"(\bratchet\w* (?:spanner|wrench)\b.*?),? with an open end (?:on|at) the other (?:side|end)\b",
        r"combination \1",
    ),
    (
        r"\b(ratchet\w* (?:spanner|wrench)),? open[- ]end(?:ed)? (?:\+|and|,) (hinged |flexible |swivel )?"
        r"ratchet(?:ing)? ring(?: end)?\b",
        r"combination \1 \2",
    ),
    (r"(\b(?:flexi?|flexible|hinged|fixed|swivel)[- ]h(?:ea)?d) (?:sort|kind|type)\b", r"\1"),
    (
        r"\b(?:open|split|slotted) ring (spanner|wrench|spnr|wr)"
        r"(?=,? for (?:the )?(?:pipe unions?|union nuts?|pipe nuts?))",
        r"flare nut \1",
    ),
    (r"\bhaf[- ]?moon\b", "half moon"),
    (r"\bslogg?ers?\b(?! (?:spanner|wrench|spnr|wr)\b)", "slogging wrench"),
    (r"\bang(?:le|el) tip\b(?! ?\d)", "angled tip"),
    (
        r"\b(?:flat|slot(?:ted)?)[- ]?head(?: (?=driver\b|screwdriver\b)| (?=[\d.]+ ?mm (?:by|x) \d+ ?"
        r"(?:mm|inch|in|\") (?:screw)?driver\b))",
        "slotted ",
    ),
    (
        r"^(?!.*\bscrewdriver)(?=.*\b(?:vde|1000 ?v\w*|insulated)\b)(.*)\bflat ?-?head "
        r"(?=[\d.]+ ?(?:mm)? ?(?:by|x) \d)",
        r"\1slotted screwdriver ",
    ),
    (r"\btamper[- ]?pro?f+\b", "tamperproof"),
    (r"\bdip(?:ped)? (?=(?:handles?|grips?)\b)", ""),
    (r"\bmulti[- ]?position (?=(?:water ?pump|groove joint|slip joint water ?pump)\b)", ""),
    (r"\b(?:self|lever)[- ]lock (?=(?:grip )?(?:pliers|plrs?|plier)\b)", "locking "),
    (r"(\bhose (?:clamp|clip)) (pliers),? (?:locking|lockable)\b", r"locking \1 \2"),
    (
        r"^(?=.*\b(?:cable|bowden)\b)(.*\bhose (?:clamp|clip) pliers) for the (?:spring|self[- ]tightening)"
        r"(?: band)? clips\b",
        r"\1 on clips",
    ),
    (
        r"^(?=.*(?:lock ?wire|safety wire))(.*?),? \d{1,2}(?:(?: to | ?- ?)\d{1,2})? turns (?:per|to the) inch\b",
        r"\1",
    ),
    (r"(\b(?:twisting|lock ?wire|twister) pliers),? spin(?:ning)?(?: type)?\b", r"\1"),
    (r"\bnon[- ]?rebound,? \(?dead[- ]?blow\)?(?= )", "dead blow"),
    (r"\bshot[- ](?:loaded|filled) head\b", "shot filled"),
    (r"(\bpunch\b.*\bauto(?:matic)?),? adjustable (?=(?:spring|force|tension|stroke)\b)", r"\1 type, selfadjusting "),
    (r"^(?=.*punch)(.*?),? self[- ]striking\b", r"\1"),
    (r"(?<=\bpuller )((?:mech\w* )?[23][- ](?:leg|jaw|arm)) ext\b\.?", r"\1 external"),
    (r"^(?=.*\brea?e?mm?e?r\b)(.*?\b(?:mm|mil),? )\(?h7\b\)?", r"\1"),
    (
        r"^(?=.*\b(?:taps?|dies?|die nut)\b)(.*?)\b(?:m )?(six|eight|ten|twelve|fourteen|6|8|1[024])"
        r"(?: (?:mil|mm))? by "
        r"(one (?:point (?:two five|five|seven five)|and (?:a quarter|a half|three quarters)))(?=,|$| )"
        r"(?! (?:and|mm|inch))",
        _said_thread,
    ),
    (r"\b(?:trolly|trolely|troley) jack\b", "trolley jack"),
    (r"(?<!floor )\bjack on (?:wheels|castors)\b", "trolley jack"),
    (r"(\b(?:jack|stand|hoist|crane|sling)\b.*?)\bcap(?:acity)? (?=\d+(?:\.\d+)? ?(?:t|te|tons?|tonnes?|kg)\b)", r"\1"),
    (r"(\bbottle jack\b.*?),? (?:with )?(?:screw[- ]extension|extension screw)\b", r"\1"),
    (r"\bmagnet(?:ic)? foot\b", "magnetic base"),
    (r"\busb[- ]?charg(?:e|ed|ing|eable)\b", "usb rechargeable"),
    (r"(\bslings?\b.*?)\b(?:with (?:soft )?loops|loop(?:ed)? ends?)\b", r"\1eye and eye"),
    (r"(\bslings?\b.*?)\be/e\b", r"\1eye and eye"),
    (r"^(?=.*\bsh(?:ac)?kl)(.*?)\b(?:s/pin|screwed pin)\b", r"\1screw pin"),
    (r"^(?=.*\b(?:dri?ll?s?|drls?)\b)(.*?)\bs/s\b", r"\1straight shank"),
    (r"\bjobb\b\.?", "jobber"),
    (r"\bstep ?drill\b", "step drill"),
    (r"^(?=.*\bstep)(?=.*\b(?:bit|drill)\b)(.*?)\b(\d{1,2})/(\d\d) ?mm\b", r"\1\2-\3 mm"),
    (r"^(?=.*\bdrill\b)(.*?)\b(\d{1,2}/\d{1,2})(?: ?in\b\.?| ?\")? ?\(\d+\.\d+ ?mm\)", r"\1\2 in"),
    (
        r"^(?=.*\b(?:tap|die)\b)(.*?)\b(\d{1,2}) ?(?:mm|mil) ?(?:x|by) ?([0-2]\.\d+)(?: ?mm)?\b(?! ?(?:od|long))",
        r"\1m\2x\3",
    ),
    (r"^(?=.*\btap\b)(.*\bm\d+(?: ?[x-] ?\d\.\d+)?) 6h\b", r"\1"),
    (r"^(?=.*\btap\b)(.*?)\btaper(?: lead)? \(no\.? ?1\)", r"\1taper"),
    (r"\btap tapper\b", "tap taper"),
    (r"\bfirst tap \(taper\)", "taper tap"),
    (r"^(?=.*\btap\b)(.*?)\bbott\b\.?", r"\1bottoming"),
    (r"^(?=.*\bdie\b)(.*?)\bspilt\b", r"\1split"),
    (r"^(?=.*\bdie\b)(.*\bm\d+.*?)\b(\d\d) ?mm dia(?:meter)?\b\.?(?! (?:stock|holder))", r"\1\2 mm od"),
    (r"^(?=.*\bdie\b)(.*\bm\d+.*?)\boutside dia(?:meter)?\.? (\d\d) ?mm\b", r"\1\2 mm od"),
    (
        r"(\bdie\b.*?)\b(?:to fit|for|to suit) (?:the |our |my )?(\d\d)[- ]?mm die[- ]?(?:stock|holder)\b",
        r"\1 \2 mm od",
    ),
    (r"^(?=.*\brea?e?mm?e?r\b)(.*?)\b(\d+(?:\.\d)?) ?(?:mm|mil)?,? ?(?:tol(?:erance)?\.? )?h7\b", r"\1\2 mm"),
    (r"^(?=.*\brea?me?r\b)(.*?)\bpar(?:l|a)?\b\.?", r"\1parallel"),
    (r"\bengrs?\b\.?", "engineers"),
    (r"^(?=.*\bfile\b)(.*?)\bflt\b\.?", r"\1flat"),
    (r"^(?=.*\bfile\b)(.*?)\bsec(?:ond)?\.? cut\b", r"\1second cut"),
    (r"(\bhacksaw blades?\b.*?)\b(14|18|24|32|twenty[- ]four|thirty[- ]two|eighteen) teeth\b", r"\1\2 tpi"),
    (r"^(?=.*\bflar)(?!.*\b3/16\b)(.*?)\b4\.75 ?mm\b", r"\1 3/16 in"),
    (r"\br[- ]?(?:1-3-4-?a|one[- ]three[- ]four[- ]?a|134 a)\b", "r134a"),
    (r"\br ?134 ?a\b", "r134a"),
    (r"^(?=.*\bmanif(?:old)?\b)(.*?)\b(?:2|two)[- ](?:valves?|gauges?|way)\b,?", r"\1"),
    (
        r"^(?=.*\b(?:r-?134a|134a|r-?1234yf|1234yf)\b)(?!.*\b(?:tool|machine|manifold|set|kit|cap|core)\b)"
        r"(.*?)\b(?:(?:a/?c|air ?con) )?(?:quick |snap |service )*(?:coupl(?:er|ing)|connector|copuler|cplr)\b",
        r"\1 ac coupler",
    ),
    (
        r"^(?=.* ac coupler\b)(.*?)\b(?:low[- ]?(?:side|sied|pressure)|lo[- ]side|l\.?p\.?(?: side)?)(?!\w)",
        r"\1lowside",
    ),
    (r"^(?=.* ac coupler\b)(.*?)\b(?:high[- ]?(?:side|pressure)|hi[- ]side|h\.?p\.?(?: side)?)(?!\w)", r"\1highside"),
    (r"(\bopen[- ]end(?:ed)? (?:spanner|wrench),? \d{1,2} and \d{1,2} ?mm) jaws\b", r"\1"),
    (r"(\badj\w*\.? (?:spanner|spnr|wrench)\b.*?) cap\.? (?=\d{2} ?mm)", r"\1 "),
    (r"(\btap\b.*?),? (?:standard|normal|usual) pitch\b", r"\1 coarse"),
    (r"\bone[- ]ear\b", "single ear"),
    (r"\bspk\.? plg\b", "spark plug"),
    (r"\bhex (?=nut ?-?(?:driver|setter|runner) bit\b)", ""),
    (r"\bhex nut bit\b", "nut setter"),
    (r"\bnut (?:divrer|drvier|dirver|driever)\b", "nut driver"),
    (r"\bbox spanner screwdriver type \(nut ?driver\)", "nut driver"),
    (r"(\bnut ?driver\b.*?\d ?mm) shank(?=$|,)", r"\1 shaft"),
    (
        r"^(?=.*\bnut ?setter\b)(.*?)(?<![\d/.])\b(5|5\.5|6|7|8|10|12|13) x (\d{2,3}) ?mm\b",
        r"\1\2 mm x \3 mm",
    ),
    (r"\bsocket bit for (?:the )?cordless,? mag(?:netic)?\b", "magnetic nut setter"),
    (r"\bbendy (?=nut ?-?driver|(?:hose )?(?:clip|clamp) driver|nut spinner)", "flexible "),
    (r"\bflat ?head (?=(?:insulated |vde |stubby |long )+screwdriver)", "slotted "),
    (r"\b(?:short|stubby),? fat (?=.*\bscrewdriver\b)", "stubby "),
    (r"^((?:pin|parallel|centre|taper) punch|cold chisel) (\d{1,2})$", r"\1 \2 mm"),
    (r"\bpick (90|45)$", r"pick \1 deg"),
    (r"^(\d{1,2} ?x ?\d{1,2}) ratchet ring$", r"ratchet ring spanner \1"),
    (r"\bhandle, socket wrench[:,] breaker bar\b", "breaker bar"),
    (r"^(?=.*\btest (?:lamp|light)\b|.*\bcircuit tester\b)(.*?)(?<![/\d.-])\b6 ?/ ?24 ?v\b", r"\g<1>6-24v"),
    (r"\b(?:re-)?chargeable\b", "rechargeable"),
    (r"\btwst (?=dril|drl|bit)", "twist "),
    (r"\bcordless (?=[a-z ]*\b(?:lamp|light|torch)\b.*\brechargeable\b)", ""),
    (r"\bswan[- ]?neck(?:ed)?(?= (?:double[- ])?(?:ring|box)\b)", "deep offset"),
    (r"(\bring (?:spanner|wrench|spnr|wr)\b.*?),? swan[- ]?neck(?:ed)?\b", r"\1 deep offset"),
    (r"\bdeep offset ring(?=,| \d|$)", "deep offset ring spanner"),
    (
        r"\b(?:open|split|slotted) ring (spanner|wrench|spnr|wr)(?=,? (?:for )?(?:the )?(?:brake|fuel|hydraulic|clutch)"
        r"(?: line| pipe)? (?:unions?|pipes?|lines?|nuts?)\b)",
        r"flare nut \1",
    ),
    (r"^(?:an? |the )?wobbl[ye] bar\b(?!.*\bext)", "wobble extension bar"),
    (r"^(?:an? |the )?long strong[- ]arm,?(?=.*\d (?:in|inch|mm)\b.*\bbreaker bar\b)", ""),
    (r"\bpcik\b|\bpik\b(?=.*\bdeg\b)", "pick"),
    (r"(\bpick\b.*\d deg) angled?\b", r"\1"),
    (r"(\bpuller\b.*?)\brev(?:\.|ersible)? (?:legs|leg|arms)\b", r"\1reversible"),
    (
        r"(\b\d{1,2} ?(?:mm|in|inch|\")|\b(?:four|six|eight|ten) inch) puller with (two|three|2|3) (legs|jaws|arms) "
        r"for (?:the |an? )?(?:crank |crankshaft )?pulley$",
        r"\1 \2 jaw puller",
    ),
    (r"(\bjack\b.*?),? twin[- ]pump\b", r"\1, twin"),
    # Drills and taps: HSS-E is the steel with cobalt, and a pitch behind a bare diameter is that of its thread.
    (r"\bhss-?e\b(?=.*\b(?:cobalt|co ?[58]))", "hss"),
    (
        r"^(?!.*\b(?:wrench|holder|drain|water|unc|unf|bsp|bsw|bsf|ba|npt|set|o-?ring|ring|seal|washer|"
        r"gasket|pin|punch|drift)s?\b)"
        r"(?=.*\b(?:taps?|dies?|die ?nuts?)\b(?! grinder))(.*?)(?<![\w./-])(?<!x )(\d{1,2}) ?x ?"
        r"(0\.[57]|0\.75|0\.8|1\.0|1\.25|1\.5|1\.75|2\.0|2\.5)(?![\d.])(?: ?mm)?(?! ?x)",
        r"\1m\2x\3",
    ),
    (r"(\btap\b.*)\bstraight[- ]flute[ds]?\b", r"\1straight"),
    (r"\bstraight[- ]fluted? (?=(?:hand |taper |plug |bottoming |second )?tap\b)", "straight "),
    (r"(\bfilter (?:cup|cap|socket)\b.*\b(?:6|12))[- ]?pt\b", r"\1 point"),  # no pint
    (r"(\b(?:wr|wrench|spnr|spanner|skt|socket)\b.*?\d.*?)\bcv (?=satin|matt?e?\b|polish|chrome|mirror|finish)", r"\1"),
    (r"(?<=\d/\d)ths?\b|(?<=\d/\d\d)ths?\b", ""),
    (
        r"(\bring\b.*?)\b(?:cranked|offset) 75(?: ?deg)\b|(\bring\b.*?)\b75 ?deg (?:cranked|offset)\b",
        r"\1\2deep offset",
    ),
    (r"\bdeep[- ](?:crank(?:ed)?|offset) ring (spanner|wrench|spnr)\b", r"ring \1 deep offset"),
    (r"(?<=deep )crank(?:ed)?\b(?=.*\bring\b)|(?<=deep-)crank(?:ed)?\b(?=.*\bring\b)", "offset"),
    (r"(\bring\b.*?\bdeep[- ])crank(?:ed)?\b", r"\1offset"),
    (r"\b(?:open|split|slotted) ring \((?:flare|line|pipe|tube|brake)(?:[- ]nut)?\)", "flare nut"),
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
    (r"\b(swivel|flex|flexi|flexible|hinged|pivot|pivoting|tilting|fixed)[- ]headed\b", r"\1 head"),
    (r"\bhaed\b", "head"),
    (r"\bflat (?=(?:double )?ring (?:spanner|wrench|spnr)\b)", "straight "),
    # Strap, band and claw wrenches for filters.
    (r"\bstarp\b", "strap"),
    (r"\bstrap (?:wrench|spanner) for (?:oil )?filters?(?=$|[,;])", "oil filter strap wrench"),
    (
        r"^(?=.*\b(?:filters?|fltr)\b)(?!.*\b(?:pliers|puller)\b)(.*?)"
        r"\b(3|2|three|two)[- ]?(?:arms?|armed|legs?|legged|jaws?|jawed|claws?|jwa)\b",
        r"\1claw \2 claw",
    ),
    (r"(\bclaw\b.*?),? \bself[- ]gripping\b", r"\1"),
    (r"\bfor (?:big |large )?diesel (?=(?:engine )?filters\b)", "for "),
    (r"\b(filter) (?:remover|removing tool|removal tool)\b(?! (?:pliers|socket|set|kit))", r"\1 wrench"),
    (
        r"\bswivel(?:l?ing)?[- ](?:grip|handled)\b(?=.*\b(?:band|filter)\b)|(?<=band wrench, )swivel(?:l?ing)? grip\b",
        "swivel handle",
    ),
    (r"(\b(?:band|filter)\b.*)\bswivel(?:l?ing)?[- ]grip\b", r"\1swivel handle"),
    (r"(\b(?:filter|fltr)\b.*)\b(?:swivel(?:l?ing)?|swvl)[- ](?:handle|hdl)\b", r"\1swivelhandle"),
    (r"\bswivel(?:l?ing)?[- ](?:handle|hdl)\b(?=.*\bfilter\b)", "swivelhandle"),
    (
        r"^(?=.*\bfilter\b)(?=.*\b(?:band|strap|claw|jaws?|legs?|arms?|chain|pliers)\b)(.*?)(?:\bcap(?:acity)?\.? )?"
        r"\b(\d{2,3})/(\d{2,3}) ?mm\b",
        r"\1\2-\3 mm",
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
        r"(\bfilters?\b.*)\b(\d{1,2}|twelve|fourteen|fifteen|sixteen|eighteen)[- ](?:sided|flats?|sides)\b"
        r"|(\bfilters?\b.*)\b(1[4-8]|3[06])[- ]?(?:points?|pt)\b",
        r"\1\3\2\4 flutes",
    ),
    (
        r"\b(\d{1,2})[- ](?:sided|flats?|sides)\b(?= .*\bfilter (?:cup|cap|socket)\b| filter (?:cup|cap|socket)\b)",
        r"\1 flutes ",
    ),
    (r"\b(\d{2,3}) ?mm ?/ ?(?=\d{2} flutes)", r"\1 mm "),
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
    (r"\bupright (?=(?:hydraulic )?bottle jack)", ""),
    (r"\bslip[- ]joint pump pliers\b", "water pump pliers"),
    (r"\b(open[- ]end(?:ed)? (?:wrench|spanner),?) (\d{1,2}) ?mm jaw and (\d{1,2}) ?mm jaw\b", r"\1 \2 x \3 mm"),
    (r"\brecoil(?:less|[- ]free)\b", "dead blow"),
    (r"\b(dead ?blow hammer) filled with shot\b", r"\1"),
    (
        r"\b(combination (?:wrench|spanner)),? (?:open (?:on )?(?:at )?one(?: end)?,? )"
        r"(?:and )?(?:a )?ring (?:on )?(?:the )?other(?: end)?\b",
        r"\1",
    ),
    (r"\bwrench with an? open (\d{1,2} ?mm|\d{1,2}/\d{1,2}(?: in)?) end\b", r"open end wrench \1"),
    (r"\bscrewdriver[- ]handled? nut (?:runner|driver|spinner)\b", "nut driver"),
    (r"\blow[- ](?:entry|loader|line) (?=.*jack)", "low profile "),
    (
        r"\b(?:steel )?forked lever for (?:popping|lifting|removing) trim (?:studs?|clips?)\b",
        "steel forked trim clip lifter",
    ),
    (r"\btapered fork (\d{1,2} ?mm) for (?:parting|splitting|separating) ball joints?\b", r"ball joint fork \1"),
    (r"\bthickness leaves\b", "feeler gauge"),
    (
        r"\b(?:cranked|offset) (?:cross[- ]head|phillips) driver with (ph\d) and (ph\d) ends\b",
        r"offset screwdriver \1 x \2",
    ),
    (r"\bhammer with copper (?:faces|ends|heads)$", "copper faces hammer"),
    (
        r"^(?:an? )?(?:stand|base) with (?:an? )?magnet (?:to hold|for holding|for) (?:an? |"
        r"the )?(dial indicator|dti|dial gauge|clock gauge)$",
        r"magnetic stand for \1",
    ),
    (r"\b(chisel|chsl)\b(.*?)\bflt\b", r"\1\2flat"),
    (r"^(?=.*\bpl(?:ie)?rs?\b)(.*?)\bconstant[- ]tension (hose )?(cl(?:amp|ip)s?)\b", r"\1spring \2\3"),
    (r"^(?=.*\bcrimp)(.*?)\b(0\.\d+) ?/ ?(\d+(?:\.\d)?)(?= ?mm ?2\b)", r"\1\2-\3"),
    (r"\btpa (?=m\d)", "tap "),
    (r"^(?=.*\bdie\b)(.*\bm\d+.*?)(?<! x) (\d\d) mm$", r"\1 \2 mm od"),
    (r"^(?=.*\b(?:hack|h/) ?saw\b)(.*?(?:\"|in\b|mm)) x (\d\d)(?:t| tpi)\b", r"\1 , \2 tpi"),
    (r"(sling\b.*?)\bl1 ?= ?(?=\d)", r"\1"),
    (r"\b(straight|bent) ((?:ext|int)\w*\.?) circlips(?= \d+-\d+)", r"\1 \2 circlip pliers"),
    (r"(\bpl(?:ie)?rs?\b.*?)\bfor (?:snap |retaining )?rings on (?:a )?shafts?\b", r"\1external"),
    (r"(\bpl(?:ie)?rs?\b.*?)\bfor (?:snap |retaining )?rings in (?:a )?bores?\b", r"\1internal"),
    (
        r"^(?=.*\b(?:c/?clip|circlip|snap ring|retaining ring)s? pl)(.*?)\b(\d{1,2})/(\d{2,3}) ?mm\b",
        r"\1\2-\3 mm",
    ),
    (r"^(?=.*\b(?:circlip|(?:retaining|snap) ring)\b)(.*?)\b(?:tips?|nose),? 0 ?deg(?:rees?)?\b", r"\1 straight"),
    (r"(?<![\d.])(\d)\.(1/2|[13]/4|[1357]/8)(?= ?(?:\"|in\b|inch))", r"\1 \2"),
    (
        r"(\b(?:pliers?|cutters?)\b.*?)\b(6[ -]1/4(?=.{1,6}\(160)|6(?=.{1,6}\(1[56]0)|7(?=.{1,6}\(1(?:75|80))|"
        r"8(?=.{1,6}\(200)|10(?=.{1,6}\(250))( ?(?:\"|in\b\.?|inch)) \((\d{3})\)",
        r"\1\2\3 (\4 mm)",
    ),
    (r"(?<=\d) deg - (?=\d+ ?(?:cm|mm|in)\b)", " deg , "),
    (r"\badjustable water ?pumps?\b(?! pl)", "water pump pliers"),
    (r"\bwatr (?=pump)", "water "),
    (r"\blever[- ]lock(?:ing)? (?=pl(?:ie)?rs?\b)", "locking "),
    (r"\blong cable (?=(?:operated )?(?:hose cl(?:ip|amp) )?pl(?:ie)?rs?\b)", "cable "),
    (r"^crimps\b(?=.*\b(?:connector|terminal|lug|ferrule)s?\b)", "crimping pliers"),
    (r"^(?=.*\bcrimp)(.*?)\b(0\.\d+) ?/ ?(\d+(?:\.\d)?)(?= ?(?:mm2|sqmm|sq\b))", r"\1\2-\3"),
    (r"^(?=.*\bcrimp)(.*?)\b(0\.\d+) ?- ?(\d{1,2})$", r"\1\2-\3 sqmm"),
    (r"\bhammer[- ]in (?=(?:wedge|fork))", ""),
    (r"\bball (?:join|jt|jnt|jiont) (?=splitter|sep\w+|fork|breaker|remover)", "ball joint "),
    (r"(\bpuller\b.*?), ?rev\.?(?=,|$)", r"\1, reversible"),
    (r"\bwith reversible (?:legs|jaws|arms)\b", "reversible"),
    (
        r"(\bpuller\b.*?),? ?(?:legs|jaws|arms) (?:that )?(?:turn|reverse) (?:a?round )?for (?:inside or outside|"
        r"internal or external|inside and outside)\b(?: (?:use|work))?",
        r"\1, reversible",
    ),
    (r"^(?=.*\bpuller\b)(.*?)\b0 ?(?:-|to) ?(?=\d{2,3} ?mm\b)", r"\1"),
    (r"\b(\d{1,3}|three|four|five|six|seven|eight|nine|ten|twelve)[- ]part(?= .*\b(?:set|kit)\b)", r"\1 piece"),
    (
        r"^(?=.*\b(?:plastic|nylon)\b)(?=.*\b(?:trim|panel)\b)(.*?)\bnon-? ?(?:marring|marking|scratch(?:ing)?)\b,?",
        r"\1",
    ),
    (r"\bwith (?:an? )?strik(?:ing|e)[- ]cap handle\b", "handled, strike cap"),
    (r"^(?=.*\bchisel\b)(.*?) ?\bcutting edge\b", r"\1"),
    (r"(?:^|\b(?:an?|one) )pound and a half\b", "1.5 lb"),
    (r"\b(\d)[ -]1/2 ?lbs?\b", r"\1.5 lb"),
    (r"\bto (?:drive|knock|tap|punch) (?:the )?(?:dowels?|pins?) out\b", ""),
    (r"\bha[fl] (?=round\b)", "half "),
    (r"\bhalf (?:roud|ronud|rnud|rund)\b", "half round"),
    (
        r"^(?=.*\b(?:second|bastard|smooth)[- ]cut\b)(?!.*\b(?:files?|rasps?|burrs?|bits?)\b)"
        r"(.*?)\b(half[- ]round|flat|round|square)\b",
        r"\1\2 file",
    ),
    (r"^(?=.*\bfile\b)(.*?)\bcut (?:no\.? ?)?2\b(?: \(second cut\))?", r"\1second cut"),
    (
        r"^(?=.*\bpick\b)(.*?)\bright[- ]angled?(?:,? (?:tip|point))?,? \(?90 ?deg(?:rees?)?\b\)?",
        r"\1 90 deg",
    ),
    (r"^(?=.*\bpick\b)(.*?)\b(?:bent|angled) (?:at |to )?(?=(?:ninety|forty[- ]five|\d\d) ?deg)", r"\1"),
    (r"\b(left|right)[- ]?(?:hnad|hadn|hnd|han)\b", r"\1 hand"),
    (r"\btapper (?=tap\b)", "taper "),
    (r"\btaper \(no\.? ?1\)|\bno\.? ?1 \(?taper\)?|\btaper,? no\.? ?1\b", "taper"),
    (r"\b(second|plug) \(no\.? ?2\)|\bno\.? ?2 \((second|plug)\)", r"\1\2"),
    (r"\bbottoming \(no\.? ?3\)|\bno\.? ?3 \(?bottoming\)?", "bottoming"),
    (r"^(?=.*\btap\b)(.*), (?!.*\b(?:blind|through|thru|deep)\b)[a-z]+ (?:[a-z]+ )?holes?$", r"\1"),
    (r"^(?=.*\bdie\b)(.*?)\b(\d\d)(?: ?mm)? (?:od|outside dia(?:meter)?\.?|o/d)(?=\b|$)", r"\1\2 mm od"),
    (r"^(?=.*\bdie\b)(.*?)\b(?:dia|od) (\d\d)$", r"\1\2 mm od"),
    (r"(\bdie\b.*?)\b(?:to fit|for) (?:an? )?(\d\d)[- ]?mm die[- ]?(?:stock|holder)\b", r"\1 \2 mm od"),
    (r"^(?=.*\b(?:hack|h/) ?saw\b)(.*?)\bteeth (?:to the|per|/) ?inch\b", r"\1tpi"),
    (r"^(?=.*\b(?:hack|h/) ?saw\b)(.*?)\b(\d\d)[- ]?(?:t|teeth)\b", r"\1\2 tpi"),
    (
        r"^(?=.*\b(?:hack|h/) ?saw\b)(.*?)\b(\d{3}) ?x ?(\d\d) ?x ?(\d\d) ?tpi\b",
        r"\1\2 mm x \3 mm , \4 tpi",
    ),
    (r"^(?=.*\bjack\b)(.*?)[- ]tonners?\b", r"\1 ton"),
    (r"^(?=.*\bstands?\b)(.*?)\b2 x (\d+) ?(?:t|tons?|tonnes?)\b", r"\1\2 t rated each pair"),
    (
        r"^(?=.*\bstands?\b)(.*?\d ?(?:t|tons?|tonnes?|kg)),? ?(?:(?:/ ?|(?:capacity )?per )stand\b|capacity each\b)",
        r"\1 rated each",
    ),
    (r"^(?=.*\bstands?\b)(.*?)\bx ?2, rated per stand\b", r"\1rated each"),
    (r"\brated per stand\b", "rated each"),
    (r"\bratchet adjustment\b", "ratchet"),
    (r"\bround ?slings?\b", "round sling"),
    (
        r"^(?=.*\b(?:ewl|effective (?:working )?length)\b)(.*sling\b.*?) ?\(?\d+(?:\.\d)? ?m "
        r"circ(?:umference)?\b\.?\)?",
        r"\1",
    ),
    (r"\bwll:? (?=\d)", ""),
    (r"\btester, circuit, lamp(?: type)?\b", "circuit test lamp"),
    (r"^(?=.*\btest (?:lamp|light)\b)(.*?)\b6/12/24 ?(?=v)", r"\1 6-24"),
    (r"\bcordless,? rechargeable\b", "rechargeable"),
    (r"\bhand[- ]held (?=led|insp|lamp|light|torch)", ""),
    (r"^(?=.*\bgrease ?gun\b)(.*?)\b14 ?oz ?/ ?400 ?gr?\b", r"\1 400 g"),
    (r"^(?=.*\bgrease ?gun\b)(.*?)(?<=\d)gr\b", r"\1 g"),
    (r"\bgreasegun\b", "grease gun"),
    (r"\b(?:lever[- ]action|levr) (?=.*\bgun\b|type\b)", "lever "),
    (r"\bhand lever operated\b", "lever"),
    (r"\bbendy spout\b|\bflexi hose spout\b", "flexible spout"),
    (
        r"^(?=.*\b(?:funnel|fnl|tray|pan|jug)\b)(.*?)\b(?:poly|polyethylene|polythene|polypropylene)\b(?! ?-?prop)",
        r"\1plastic",
    ),
    (r"^(?=.*\b(?:tray|pan)\b)(.*?)\bopen[- ]top(?:ped)?\b", r"\1open"),
    (r"^(?=.*\b(?:tray|pan)\b)(.*?)\bcap(?:acity)?\.?:? (?=\d+(?:\.\d+)? ?(?:l|lt|ltrs?|lit\w+|ml)\b)", r"\1"),
    (r"\bchain oil filter (?=wrench|spanner)", "oil filter chain "),
    (r"\bmalet\b", "mallet"),
    (r"\bdial test ind\b\.?", "dial test indicator"),
    (r"\b(\d+) ?mm throat\b", r"\1 mm"),
    (r"\bslip[- ]jaw (?=water pump)", ""),
    (r"\bring and open[- ]?end(?:ed)? \(combination\)", "combination"),
    (r"\brev(?=$|,)(?<=mm rev)|\brev(?=$|,)(?<=pc rev)", "reversible"),
    (r"\blift (?=sling\b)", "lifting "),
    (r"(\bjack\b.*?),? \b(?:std|standard|normal)[- ]height\b", r"\1"),
    (r"^(?:pair of )?(\w+) (ton(?:ne)?|t) stands?\b", r"axle stand \1 \2"),
    (r"\bremote cable pliers for spring hose clips\b", "hose clamp pliers cable spring clamp"),
    (r"\bstrike[- ]face ring (?=wrench|spanner)", "slogging ring "),
    (r"^bent[- ]nose (?=\d)", "bent nose pliers "),
    (r"\bcranked ring (?=\d)", "cranked ring spanner "),
    (
        r"\b(\d+(?:\.\d)?) ?(?:-|to) ?(\d+(?:\.\d)?)(?: ?mm)? x (0?\.\d+)(?: ?mm)?(?= .*\b\d+ ?(?:pc|pce|"
        r"piece)|,? \d+ ?(?:pc|pce|piece))",
        r"\1-\2 mm in \3 mm steps",
    ),
    (r"\bself[- ]grip(?:ping)? pliers\b", "locking pliers"),
    (r"\bcombined open and ring (?=wrench|spanner)", "combination "),
    (r"\bfour[- ]armed wheel (?=wrench|brace|spanner)", "four way wheel "),
    (r"\bbearing splitter plates?\b|\bsep(?:arator)?,? bearing(?: plate)?\b", "bearing separator"),
    (r"\bstrike[- ]with[- ]a[- ]hammer rotary driver\b", "hand impact driver"),
    (r"\bslip[- ]joint \(multi[- ]?grip\) pliers\b", "water pump pliers"),
    (r"\bbulb[- ]type circuit probe\b", "test lamp"),
    (r"\bchain[- ]type oil filter (?:remover|wrench)\b", "oil filter chain wrench"),
    (r"\bhammer with one copper\b", "copper"),
    (r"\b(?:tips?|points?|jaws?) in line\b", "straight"),
    (r"\b(?:tips?|points?|jaws?) (?:at|with) (?:a )?right angles?\b", "90 deg"),
    (r"\b(?:tips?|points?|jaws?) at an angle\b", "bent"),
    (r"\bd/(?=open\b|ring\b)", "double "),
    (r"\bs/(?=open\b|ring\b)", "single "),
    (r"\btwo[- ]mouthed open (?=spanner|wrench)", "double open end "),
    (r"\bopen[- ]jaw (?=spanner|wrench)", "open end "),
    (r"\bring[- ]and[- ]open(?:[- ]end)? (?=spanner|wrench)", "combination "),
    (r"\bshort[- ]bodied\b", "short"),
    (r"\b(?:slotted )?pipe[- ]union (?:\(?line\)? )?(?=crowfoot|spanner|wrench)", "flare nut "),
    (r"\bwheeled (?=(?:floor |trolley )?jack)", ""),
    (r"\bfloor jack for low (?:cars|vehicles)\b", "low entry trolley jack"),
    (r"\bupright hydraulic jack\b", "bottle jack"),
    (r"\b(?:that lets|lets|letting) the socket tilt\b", "wobble"),
    (r"\b(?:bendy|whippy) shaft\b", "flexible shaft"),
    (r"\bstiff shaft\b", "rigid shaft"),
    (r"\b(\d+|\w+teen|ten|twenty) mm mouth\b", r"\1 mm"),
    (r"\bone copper and one (?:raw)?hide (?:face|end)\b", "copper hide"),
    (r"\bbroken (?=(?:stud|bolt|screw)s?\b)", ""),
    (r"\bstrap wrench\b(.*)\boil filters?\b", r"oil filter strap wrench\1"),
    (
        r"\bthings? (?:that )?(?:a |the )?magnets? (?:does|do|will|can)(?:n't| not) (?:hold|pick|lift|catch)"
        r"\w*(?: up)?\b",
        "with claw",
    ),
    (r"\bcobalt[- ]blue\b", "blue"),
    (r"^(?=.*\bdrill\b)(.*?)\bsh(?:an)?k (?:of )?\d+(?:\.\d+)? ?mm\b", r"\1 shank"),
    (
        r"^(?=.*\bdrill\b)(.*?\d ?mm\b.*?),? \b\d+(?:\.\d+)? ?mm (?:reduced |parallel |straight )?sh(?:an)?k\b",
        r"\1 shank",
    ),
    (r"\bw/(?=cutters?\b|case\b|stand\b|sleeve\b|leads?\b)", "with "),
    (r"\beffective (?:working )?length\b|\bewl\b", "effectivelength"),
    (r"(\d ?mm,? hole\b.*?),? \b\d{1,2}(?:\.\d)? ?mm,? head\b", r"\1 head"),
    (r"\bhead,? (?:dia )?\d{1,2}(?:\.\d)? ?mm\b(?=.*\bhole\b)", "head"),
    (r"\bright[- ]angled? (?=(?:points?|tips?|jaws?|noses?|ends?)\b)", "90 deg "),
    (r"\b(two|three|2|3)[- ]?(?:armed|arms?|legged|legs?)\b(?=.*\bpuller)", r"\1 jaw"),
    (r"(\bpuller\b.*)\b(two|three|2|3)[- ]?(?:armed|arms?|legged|legs?)\b", r"\1\2 jaw"),
    (r"\bstepped (?=(?:cone|drill|cutter))", "step "),
    (r"\bslip[- ]?joint,? \(?water ?pump\)?", "water pump"),
    (r"\bslide (?=t[- ]?(?:bar|handle))", "sliding "),
    (
        r"^([^,]*\b(?:flare nut|brake[- ](?:line|pipe)|open[- ]end(?:ed)?|ring|double[- ]ended) (?:wrench|"
        r"spanner|spnr)),? "
        r"(\w+) and (\w+)(?= ?mm$| ?mil$|$)",
        r"\1 \2 x \3",
    ),
    (r"^[1-9]x (?=\d{1,2} ?mm [a-z])(?!.*\dx\d)", ""),
    (r"^reaction arm(?: only)?\b,? (?:for )?(?:an? |the )?(?=torque)", "spare bracket for "),
    (r"\btroll(?:e?y|ey) (?=jack)", "trolley "),
    (r"\b(?:slotted|split) ring (?=(?:spanner|spnr|wrench)\b)", "flare nut "),
    (r"(\b(?:brake pipe|flare nut) (?:spanner|spnr|wrench)),? (?:slotted|split) ring\b", r"\1"),
    (r"(\bratchet\w*\b.*)\brev\b", r"\1reversible"),
    (r"\blow[- ]profile jack\b", "low profile trolley jack"),
    (r"(\btrolley jack\b.*) low$", r"\1 low profile"),
    (r"\btiny (?=(?:ph|pz|t)\d)", ""),
    (r"^bent nose (?=\d)", "bent nose pliers "),
    (r"\b(\d/\d{1,2} x \d/\d{1,2}) (deep )?offset box$", r"\1 \2offset box wrench"),
    (r"\bext(?:ernal)? circlip (?=.*\b(?:45|90) ?deg)", "external circlip pliers "),
    (r"\bint(?:ernal)? circlip (?=.*\b(?:45|90) ?deg)", "internal circlip pliers "),
    (r"\bpliers (\d{1,2})$", r"pliers \1 in"),
    (r"\bbreaker bar (half inch|1/2|3/8|3/4)(?: drive| dr)? (1[258]|18|24|30|36)$", r"breaker bar \1 drive \2 in"),
    (r"\blive[- ](?:work(?:ing)?|line)\b", "insulated"),
    (r"\bworking load\b", "wll"),
    (r"\b(?<!-)(spanner|wrench)\b(.*?),? (?:with )?(?:both|two) ends open\b", r"open ended \1\2"),
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
    (r"\b\d+(?:\.\d+)? ?t per pair ?\((\d+(?:\.\d+)?) ?t(?:ons?|onnes?)? (?:ea|each)\)", r"\1 t each"),
    (r"^(?=.*\bstands?\b)(.*?\d ?(?:t|tons?|tonnes?),?) (?:ea|each)\b(?! side)", r"\1 rated each"),
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
    (r"\b(drills?\b.*\d.*?),? (?:with )?(?:\d/\d+|\d+ ?mm)(?:\"| ?in\b)? ?(?:reduced|red) shank\b", r"\1 reducedshank"),
    (r"\b(drills?\b.*\d.*?),? (?:with (?:a )?)?(?:reduced|red) shank\b", r"\1 reducedshank"),
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
    (r"\bpck (?=(?:and |& ?)?hook)", "pick "),
]
