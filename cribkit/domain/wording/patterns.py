"""How people write one thing in other ways: a pattern, and what it stands for.

Applied in this order to text in lower case. Common practice of the trade, no source."""

from __future__ import annotations

# A date as labels have it: Oct, Oct 26, 06/26, 2026-06, 12/06/2026.
_DATE = (
    r"(?:\d{4}-\d\d(?:-\d\d)?|(?:\d\d?/)?\d\d?/(?:20)?\d\d|"
    r"(?:jan|feb|mar|apr|may|jun|jul|aug|sept?|oct|nov|dec)[a-z]*\.?(?: '?(?:20)?\d\d)?|0[1-9]|1[0-2])"
)

# What a chemical may do harm to.
_HARMED = (
    r"(?:plastics?|rubbers?|paint|paintwork|coatings?|alumini?um|alumin|alum|alu|ally|alloys?|polycarbonates?|"
    r"bronze|brass|yellow metals?|chrome|tint(?:ed)?(?: film)?|sensors?)"
)

# What a chemical may hold, and what its label may say that it does not.
_HELD = (
    r"(?:acids?|acetone|ammonia|methanol|chlorine|chlorinated solvents?|methylene chloride|perchloroethylene|residue|"
    r"silicones?|zinc|pumice|moly|molybdenum|graphite|copper|nickel|dye|ash)"
)

_SINGLE = ("one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "twelve")

# Units and words stuck together, and other ways to write one thing.
STUCK = [
    # Said in passing: how many there should be, that anything will do, which one is meant.
    (
        r"[,;(] ?(?:x ?)?"
        r"(?:[1-9]|1[0-2]|one|two|three|four|five|six|eight|ten|twelve|a dozen|(?:a )?couple(?: of)?|a few) "
        r"?(?:off|of|please|bottles?|cans?|tins?|tubes?|sachets?|packs?|boxes|rolls?|cartridges?|drums?|jugs?|bags?)"
        r"(?: please)?\)?$",
        "",
    ),
    (r"^(?:a )?couple (?:of )?(?=[a-z])", ""),
    (
        r",? ?\bany (?:drive|mechanism|type|make|length|colour|color|depth|size|style|kind|points?|handle)\b"
        r"(?: (?:will do|is fine|is ok|ok))?$",
        "",
    ),
    (r",? (?:the )?one with (?=the |an? )", " with "),
    (r", the (.*\d.*) one$", r", \1"),
    (
        r",? (?:it )?(?:has to|must|needs? to|should|able to) (?:read|reach|go|take|measure|show)(?: up)?(?: to)? "
        r"(?=\d|one|two|three|four|five|six|seven|eight|nine|ten|[a-z]+teen|twenty|thirty|forty|fifty)",
        " ",
    ),
    (r"\bso (?=an? )", "for "),  # an adapter so a 1/2 socket goes on
    (r"\b(?:number|no\.?|#) ?(\d) (?=.*\b(?:ph|pz)\1\b)", ""),  # number 2 crosshead (PH2)
    (r"\b(?:number|no\.?|#) ?([0-4]) (ph|pz)\b", r"\2\1"),
    (r"\b(left|right)[- ]hand side\b", r"\1"),
    (r"\bstrength class\b|\bstrength (?=\d\d?\.\d\b)", "class "),
    (r"\bbtskt\b", "bit socket"),
    (r"\borng (?=(?:nbr|fkm|epdm|hnbr|nitrile|\d))", "o-ring "),
    (r"(\b(?:bit|skt|drvr|adptr|hldr|scrdvr|driver|holder|adapter)\b.*)\b(\d{2,3})l$", r"\1\2 mm long"),
    (r"\bt[- ]keys?\b", "t handle key"),
    (r"\b(\d/\d) t[- ]bar\b", r"\1 drive t-bar"),
    (
        r"\b(?:all|the|both) (?:\d{1,2}|two|three|four|five|six|eight|ten|twelve) "
        r"(?=(?:bolts?|nuts?|screws?|studs?)\b)",
        "",
    ),
    (
        r"\b(\d+/\d+\"? ?a/?f\b.*?\bsockets?),? "
        r"(half|quarter|three[- ](?:eighths?|quarters?)|\d/\d)(?:[- ]?inch| in)?$",
        r"\1 \2 drive",
    ),
    # In full words what is mostly written short.
    (r"\bamperes?\b", "amp"),
    (r"\balternating and direct current\b", "ac/dc"),
    (r"\balternating current\b(?: only)?", "ac"),
    (r"\bdirect current\b", "dc"),
    (r"\btrue root[- ]mean[- ]square\b", "true rms"),
    (r"\bcategory (?=i{1,3}v?\b)", "cat "),
    (r"\bgrit (?=p\d)", ""),
    (r"\bhigh[- ]speed steel\b", "hss"),
    (r"\bpolyvinyl chloride\b", "pvc"),
    (r"\boutside diameter\b", "od"),
    (r"\bmulti[- ]layer(?:ed)? steel\b", "mls"),
    (r"\bhydrogenated nitrile\b", "hnbr"),
    (r"\bside crimp(?:ing)?\b", "side jaw"),
    (r"\bfree of metal\b", "metal free"),
    (r"\b(shallows|deeps)\b", r"\1 socket set"),
    (r"\bdeep impacts\b", "deep impact socket set"),
    (r"\bshallows (?=socket set)", "shallow "),
    (r"\bdeeps (?=socket set)", "deep "),
    (r"\b(\d{2,3}) ?x ?(\d{1,2}) (?=(?:flat|slotted) (?:screwdriver|s/driver|driver))", r"\2 x \1 "),
    (r"\b((?:breaker|knuckle|power|pry|crow) bar .*?)\b([1-9]\d{2})$", r"\1\2 mm"),
    (r"(?<=13/16)( in|\")? ?\(20\.8\)", r"\1"),
    (r"\bsquare drive bit\b(?! holder)(?=.*(?:#|\bno\.? ?)\d)", "robertson bit"),
    (r"(\bnut\b.*\bm\d+(?: ?x ?[\d.]+)?) (8|10|12)(?= [a-z]|$)", r"\1 class \2"),
    (r"\b(o-?ring\b.*)\bac$", r"\1a/c"),
    (r"\b(bent|straight|angled) tips?\b(?! ?\d)", r"\1"),
    # Supply style: what a socket is driven by, the noun first.
    (r"\b((?:sockets?|skts?|socket set|universal joint|extension|adapter)), impact wrench\b", r"\1, impact"),
    (r"\bbar,? t,? (?:sldg|sliding|slide)\b", "sliding t bar"),
    (r"\bwrench, ratchet, (?:pneumatic|air)\b", "air ratchet"),
    (r"\b(spl(?:ine)?\b.*?),? \b(?:12|twelve)[- ]?(?:pt|point)\b", r"\1"),
    (r"\b\d+ ?(?:bld|blds)\b", ""),
    (r"\btr (?=t\d)", "tamper "),
    (r"\b6lb (?=t\d|e\d|tr\b|tamper)|(?<=ext )6lb\b|(?<=bit )6lb\b|(?<=skt )6lb\b", "sixlobe "),
    (r"\btw\b(?=.*(?:\bdr\b|\bdrive\b|nm\b|n\.m|lb))", "torque wrench"),
    (r"\bpl(?=\d\d\b)(?=.*1/4|.*hex)|(?<=security bit )pl(?=\d\d\b)", "ts"),
    (
        r"\b(\d{1,2}) and (\d{1,2}) ?mm\b(?=.*\b(?:drain|plug|key)\b)|(?<=square, )(\d{1,2}) and (\d{1,2}) ?mm\b",
        r"\1\3 mm, \2\4 mm",
    ),
    (
        r"\b(sockets?|skts?|bits?) on (?:an? |the )?(\d/\d[a-z\" -]*?(?:drive|dr|sq)) (?:handle|ratchet|bar)\b",
        r"\1, \2",
    ),
    (r"([a-hj-wyz])\1{2,}", r"\1\1"),  # deeep
    # Squares, ends and shafts as some lists have them.
    (r"\b(1/4|3/8|1/2|3/4|1|1-1/2)(?: ?(?:in|inch|\"))? ?sd\b", r"\1 dr"),
    (r"\b(1/4|3/8|1/2|3/4)d\b", r"\1 dr"),
    (r"(?:^|(?<=, )|(?<=on )|(?<=wrench )|(?<=socket )|(?<=for ))inch[- ]drive\b", "1 in drive"),
    (r"(?<=[a-z]{3})/(?=[a-z]{3})(?!(?:out|off|female|male|shallow|steel)\b)", " "),  # BIT/SIX-LOBE
    (r"(?<=[a-z]) - (?=\S)", ", "),
    (r"\be[- ](?:lobe|skt|sckt|socket)\b", "external sixlobe socket"),
    (r"\bext(?:ernal)?[- ]lobe\b", "external sixlobe"),
    (r"\b(?:dre|d/ring|d/re|dbl/ring)\b", "double ring end"),
    (r"\bd/e\b", "double ended"),
    (r"\bpound[- ]?(?:thru|through)\b", "strike through"),
    (r"#(\d) (?=\d/\d ?hex)", r"#\1, "),
    (r"\bsq(?:uare)? recess\b", "robertson"),
    (r"\bsockets? with (?:a |the )?(?:built[- ]in )?swivel(?: built in)?\b", "swivel socket"),
    (r"\b(swivel) (?:u/j|uj)\b|\b(?:u/j|uj) (swvl|swivel)\b", "swivel"),
    (r"\b(screws?\b.*)\bph\b(?! ?\d)", r"\1 phillips"),
    (r"\b(pan|csk|countersunk|raised) ph\b(?! ?\d)", r"\1 phillips"),
    (r"\bhand impact\b(?! (?:driver|skt|socket))", "impact driver"),
    (r"(impact (?:wrench|gun)\b.*)\bbattery\b", r"\1 cordless"),
    (r"\bbattery (?=impact (?:wrench|gun))", "cordless "),
    (r"\b(\d+ ?mm),? cap(?:acity)?$", r"\1"),
    (r"\b(\d\d(?:\.\d+)?) ?pc\b(?=.*)(?<=9pc)", r"\1 %"),
    (r"\b(?:down|on|at) one (?:side|end)\b", ""),
    (r",? \b(?:two|three|four|five|six|eight|ten) (?:in|to) (?:the|a) (?:roll|box|pack|bag|set|case)$", ""),
    (r"\b(fault )?code reader,? (.*)\b16[- ]?pin\b", r"\1code reader \2"),
    (r"\bcat(?=i{1,3}v?\b)", "cat "),
    (r"\bcat three\b", "cat iii"),
    (r"\bcat two\b", "cat ii"),
    (r"\bcat four\b", "cat iv"),
    (r"(?<=[a-z]{3})/(?=\d[- ]?(?:leg|jaw))", " "),
    (r"\b(t\d\d?|ph\d|pz\d|e\d\d?) - (?=\d+ ?mm)", r"\1, "),
    (r"\b(?:a |one )?met(?:re|er)[- ]long\b", "1000 mm"),
    (r"(\bt-?bolt\b.*?)\b(\d\.\d\d)-(\d\.\d\d)\b(?! ?(?:in|mm|\"))", r"\1\2-\3 in"),
    (r"\bp ?h ?(?=(?:nought|zero|one|two|three|four)\b)|\bp h (?=\d)", "ph "),
    (r"\bp ?z ?(?=(?:nought|zero|one|two|three|four)\b)|\bp z (?=\d)", "pz "),
    (r"\bp (?=(?:[a-z]+ )?hundred\b)", "grit "),
    (r"\b(two|three)[- ]leg(?:ged)?\b(?=.*pull)|\b(2|3)[- ]leg(?:ged)?\b", r"\1\2 jaw"),
    (
        "".join(f"(?<!{one} )" for one in ("a", "teen", *_SINGLE)) + r"(?<!\d )\b(hundred|thousand)\b(?!ths)",
        r"one \1",
    ),
    (r"\b(\d{2,3}|fifty|eighty|(?:[a-z]+ )?hundred) mil (?=bottle|tube|can|aerosol|tin|cartridge|spray)", r"\1 ml "),
    (r"\b(\d{1,3}) mil (?=bottle|tube|can|aerosol|tin|cartridge|spray)", r"\1 ml "),
    (r"\b(nuts?\b.*?) with (?:an? )?(?:nylon|plastic|nyloc) (?:insert|ring|collar)s?\b", r"nylon insert lock \1"),
    (r"(?<=[a-z] )x(?=\d{2,3}$)", "x "),  # TMPR X100
    (r"\b(\d\.\d)d\b(?<!1\.5d)", r"\1 diesel"),  # an insert is 1.5D long
    (r"\bflat (m\d+) washer", r"\1 flat washer"),
    (r"\bcut gloves?\b", "cut resistant gloves"),
    (r"\bcut (?:lvl|lv) (?=\d|[a-f]\b)", "cut level "),
    (r"\bno[- ]ball(?: end)?\b", "plain end"),
    (r"\bstandard height\b", ""),
    (r"\b(?:for )?live work(?:ing)?\b", "insulated"),
    (r"(\b(?:bit|hex|sixlobe|torx)\b.*)\breach (\d+ ?mm)\b", r"\1\2 long"),
    (r"\bfem(?:ale)? (?=(?:tx|torx|star|six)\b)", "external "),
    (r"\b(seals?\b[^\d]*)(\d+(?:\.\d)?)-(\d+(?:\.\d)?)-(\d+(?:\.\d)?)\b", r"\1\2 x \3 x \4"),
    (r"\b(\d+(?:\.\d)?)-(\d+(?:\.\d)?)-(\d+(?:\.\d)?)\b(?=.*\bseals?\b)", r"\1 x \2 x \3"),
    (r"\b(\d{1,2})/(\d{1,2})/(\d{1,2})(?:/(\d{1,2}))(?= ?mm\b|$)", r"\1 x \2 x \3 x \4"),  # a brace of four sizes
    (  # ten forty
        r"\b(zero|five|ten|fifteen|twenty)[- ](?=(?:twenty|thirty|forty|fifty|sixty)\b.*\b(?:oil|synth\w*|semi)\b)",
        r"\1 w ",
    ),
    (r"\b(?:the )?rattle gun (?:type|sort|kind|one)\b", "impact"),
    (r"\b(?:the|an|one)[ -]inch gun\b", "1 in drive"),
    (r",? \beither (?:bottle|one|size|tube|can)$", ""),
    (
        r"\bthat(?:'ll| will)? (?:gets? (?:me |us )?to|does?|do|go(?:es)? to|reads?|reach(?:es)?|covers?|shows?)\b",
        " ",
    ),
    (r"\bclicking\b", "click"),
    (r"\bbendy(?: flexible)? (?=ext)", "flexible "),
    (r"\bstubby flat ?head\b", "stubby slotted screwdriver"),
    (r"(\bclamp\b.*\b(?:dc|ac|amps?)\b[^\d]*)\b(\d{2,4})$", r"\1\2 a"),
    (r"(\bcrimp\w*\b.*?)\b(\d\d)-(\d\d)\b(?! ?(?:mm|awg))", r"\1\2-\3 awg"),
    (
        r"(\binsulation (?:\w+ )?(?:tester|meter)\b.*)(?<!/)(?<!/ )\b1000 ?v(?:olts?)?\b",
        r"\g<1>1000 vdc",
    ),  # its own voltage
    (r"(\btread\b.*?)(?:,? in)? (?:32nds?|thirty[- ]seconds?)$", r"\1"),
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
    (r"(\bpliers?\b.*?)\b(0?\.\d\d\d?) (?=tips?\b)", r"\1\2 in "),
    (r"\b(\d+/\d+)(?: ?in)?\.? grip\b", r"grip \1"),
    (r"(\btriple ?sq(?:uare)?\b|\bxzn\b)(.*?),? \b(?:12|twelve)[- ]?(?:pt|point)\b", r"\1\2"),  # its twelve teeth
    (r"(\b(?:12|twelve)[- ]?(?:pt|point)\b) (?=m\d+\b.*\btriple)", ""),
    (r"\btw (?=click|dial|beam|electronic|preset)", "torque wrench "),
    (r"(\bties?\b.*\d.*), (?:25|50|100|200|250|500|1000)$", r"\1"),  # so many in the bag
    (r"\bfluoro[- ]?rubber\b", "fkm"),
    (
        r"(cleaner|grease|oil|spray|driver|wrench|spanner|socket|sealant|paste), not (?:the |an? )?(?:[a-z]+ )?\1\b",
        r"\1",
    ),
    (r"\b(v ?[68]|engine) gas$", r"\1 petrol"),  # gasoline
    (r"(\bopen end\w*|\bspanner|\bwrench)(.*?) (\d\d?) and (\d\d?)(?= ?mm\b|$|,)", r"\1\2 \3 x \4"),
    (r"^slide (?=\d)", "fit "),
    # How drives, heads and ends are written short.
    (r"\bf/h(?:ea)?d\b", "flex head"),
    (r"\b(?:li|lithium)[- ]?ion\b", "lithium"),  # a battery's kind
    (r"\bmirror[- ](?:polish(?:ed)?|finish(?:ed)?|chromed?)\b", "polished"),  # no inspection mirror
    (r"\bi[- ]beam(?: (?:handle|shank|section|pattern))?\b(?=.*(?:spanner|wrench|spnr))", " "),
    (r"((?:spanner|wrench|spnr)\b.*?),? \bi[- ]beam(?: (?:handle|shank|section|pattern))?\b", r"\1"),
    (r"(?<=\d) ?c/v\b", " "),  # 8 X 10 C/V: chrome vanadium, no degrees
    (r"(?<=mm) o/?a\b\.?", " long"),  # 95 mm o/a
    (
        r"\bpin (?:and|n|/|\+) (?:o[- ]?)?ring (?:type|style|retention|retained|groove|design|fixing|held)\b",
        " ",  # how an impact socket is held
    ),
    (
        r"\b(screwdriver|s/driver|scdr|sdrvr|nut driver)\b(.*?)\b(?:plastic|acetate|pvc)[- ]handle[ds]?\b",
        r"\1\2handle",  # no plastic scraper
    ),
    (r"\b(skt|sckt|socket)\b(.*)\b(6|8|12) ?p\b", r"\1\2\3pt"),  # skt 10 3/8 dp 6p
    (r"\bdw (?=(?:skt|sckt|socket)s?\b)|(?<=skt )dw\b|(?<=socket )dw\b", "deep "),
    (r"\b(?:mid|medium)[- ]length (?=(?:\w+ )?(?:skt|sckt|socket)s?\b)", "mid depth "),
    (r"\b((?:skt|sckt|socket)s?\b.*)\b(?:mid|medium)[- ]length\b", r"\1mid depth"),
    (r"\b(?:machine|air) (?=(?:skt|sckt|socket)s?\b(?! (?:head|cap|screw|set))(?!.*\b(?:bsp|npt)).*\d)", "impact "),
    (r"\bair (?=ext(?:ension)?(?: bar)?\b(?! (?:hose|lead|reel|line)))", "impact "),
    (r"\btilt (?=ext(?:n|ension)?\b)", "wobble "),
    (
        r"\b(ratchet|rat|ext|extn|extension|adapter|adaptor|bit holder)\b(.*)\bpush[- ]?button\b(?! release)",
        r"\1\2quick release",
    ),
    (r"\bpush[- ]?button (?=(?:\S+ )?(?:ratchet|extension|adapter|adaptor|bit holder)\b)", "quick release "),
    (r"\b((?:skt|sckt|socket)s?\b.*)\b(?:four|4)[- ](?:lugs|pegs|pins|prongs?|tangs?)\b", r"\1fourlug"),
    (r"\b(?:four|4)[- ](?:lugs|pegs|pins|prongs?|tangs?)\b(?=.*\b(?:skt|sckt|socket)s?\b)", "fourlug"),
    (r"\b(flare|brake pipe|brake line)\b(.*)\b[56][- ](?:sided|flats?)\b", r"\1\2"),  # its ring, no size
    (r"\b[56][- ](?:sided|flats?) (?=.*\bflare)", ""),
    (r"\bt[- ](?=(?:spanner|wrench)\b)(?!.*(?:torque|nm\b|n\.m|lb|\bdr))", "tee "),  # no torque wrench
    (r"\b(\d{1,2}) ?ba\b(?=.*\b(?:spanner|wrench|spnr|skt|socket|driver)\b)", r"ba\1"),  # a system of its own, no mm
    (r"\b((?:spanner|wrench|spnr|skt|socket|driver)\b.*?)\b(\d{1,2}) ?ba\b", r"\1ba\2"),
    (r"\bpinned (?=.*\b(?:joint|uj|swivel)\b)", ""),  # how a joint is built, no pin in a recess
    (r"\b((?:joint|uj|u/j|swivel|impact (?:skt|sckt|socket)s?)\b(?!.*\b(?:torx|bit)).*)\bpinned\b", r"\1"),
    (r"\b((?:adapter|adaptor|adptr|ext|extension|impact (?:skt|sckt|socket)s?)\b.*)\bpin ?hole\b", r"\1"),
    (
        r"(?<!open )(?<!and )(?<!nut )(?<!ratchet )(?<!ratcheting )\bring (?=(?:spanner|wrenche?|spnr)s?\b.*\bset\b)|"
        r"(?<=set of )ring (?=(?:spanner|wrenche?|spnr)s?\b)",
        "ring end ",
    ),
    (
        r"\b((?:skt|sckt|socket) on (?:an? |the )?(?:\d/\d\S*(?: (?:in|drive|dr))? )?)"
        r"(?:flex\w*|wobbl\w*|swivel\w*|locking|long|short) (?=ext(?:n|ension)?\b)",
        r"\1",  # what the socket is put on
    ),
    # Tips and their shanks.
    (r"\be[- ]?torx ?-?(?:no\.? ?)?([45678]|1[01246]|18|2[0248])\b(?! ?(?:mm|pc|pt|piece|/))", r"e\1 external sixlobe"),
    (r"\btt[- ]?(?=\d{1,2}\b)", "tamper t"),  # TT30
    (r"\b(tx?\d{1,2}) (?:tr|t/r|sec)\b", r"\1 tamper"),  # T25 TR
    (r"\bsec\.? (?=(?:torx|star|hex|allen|t\d))", "security "),
    (r"\b(?:5|five)[- ]?(?:star|point star)\b", "five lobe"),
    (r"\brobertson( bits?| driver| screwdriver)? (?:#|no\.? ?)([0-4]) sq(?:uare)?\b", r"robertson\1 #\2"),
    (r"\b(r[0-4]) (?=1/4 ?(?:\"|in\.?)? ?(?:dr|drv|drive|sq|hex)\b)", r"\1 , "),  # no pipe thread
    (r"\bsl ?([01]\.\d) ?x ?(?=\d)", r"slotted \1 x "),  # SL 1.2X6.5: thickness and width
    (r"\bflt (?=(?:bits?|tip|blade|screwdriver|s/?driver|scdr|sdrvr)\b)|(?<=bit )flt\b|(?<=driver )flt\b", "flat "),
    (r"\bshank x (\d{2,3})(?= ?$|,| ?mm\b)(?: ?mm\b)?", r"shank , \1 mm long"),  # no count
    (r"\bhex(?:agon)? (?:drive|drv) (?=(?:skt|sckt|socket)s?\b)", "hex bit "),
    (r"\bright[- ]angled? screwdriver\b", "offset screwdriver"),
    (r"\b(?:that |which )?(?:may|can) be (?:hit|struck)(?: with an? hammer)?\b", "strike through"),
    # Sets of lengths.
    (r"(?<![\d,.])(\d{2,3}),(\d{2,3}),(\d{2,3})(?![\d,.])", r"\1 , \2 , \3"),  # 75,125,250
    (
        r"\b(ext(?:n|ension)?s?\b.* )([1-9]|1\d)-([1-9]|1\d)-([1-9]|1\d)(?= ?(?:in\b|inch\b|\"|$|,))",
        r"\1\2 in , \3 in , \4 in ",  # ext set 3/8 3-6-10
    ),
    # Words about the use that are no measure and no end of the thing.
    (
        r"\b(?:plus|then|and|by) (?:(?:an?|another|a further) )?(?:quarter|half|third|eighth|[1-3]/[48])"
        r"(?:[- ]of a)?[- ]turn\b",
        " ",
    ),
    (r"(\btorque\b.*)\bleft (?:and|n|/|\+) right(?:[- ]hand(?:ed)?)?\b", r"\1"),
    (r"\blong[- ]reach (?=(?:comb\w*|open|ring|box|flat)\b.*(?:spanner|wrench|spnr))", "long "),
    (r"\b(comb\w*|open|ring|box)\b(.*(?:spanner|wrench|spnr)\b.*)\blong[- ]reach\b", r"\1\2long"),
    (
        r"\b((?:wrench|spanner|crow ?foot|open end(?:ed)?|ring|comb\w*|key)\b.*\bset\b(?!.*(?:skt|socket)).*)\bimp$",
        r"\1imperial",
    ),
    (r"\b(?:do not|don't|never) use (?:an? |the |any )?(fork|wedge|pickle fork)\b[^,;.)]*", r"not \1"),
    (r"\b(batter(?:y|ies)|case|box) (?:incl(?:uded)?|inc|supplied)\b\.?$", r"with \1"),  # ..., battery incl
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
    (  # a caliper, 150/6"
        r"\b(?:(100) ?/ ?4|(150) ?/ ?6|(200) ?/ ?8|(250) ?/ ?10|(300) ?/ ?12)(?:\"|''| ?in\b)",
        r"\1\2\3\4\5 mm",
    ),
    (r"\b(?:right|rt)[- ]angled?\b(?=.*\b(?:pick|hook|nose|pliers?|plr)\b)", "90 deg"),
    (r"(?<=[\d\"] )stk\b|(?<=in )stk\b|(?<=in\. )stk\b", "stock"),  # a punch of 1/4 in stock
    (r"\b(pliers?,?) (?:for )?housings?\b", r"\1 internal"),  # circlips in a housing
    (r"\bpen (?:lite|light|torch)\b", "penlight"),
    (r"^(?=.*\b(?:voltage|volt)\b)(.*?)\b(?:two|2)[- ]?poles?\b", r"\1pole"),  # of a voltage tester
    (  # 6LB is a weight (a hammer), but six-lobe beside what has such a tip: 6LB SKT E10, SDRV 6LB T15
        r"^(?=.*(?:\b(?:[te]\d{1,2}h?|bits?|skts?|sckts?|sockets?|keys?|sdrvs?|screwdrivers?)\b))(.*?)\b6[- ]?lb\b",
        r"\1sixlobe",
    ),
    (rf"\b(?:zero|nil|0%) (?={_HELD}\b)", "no "),  # zero chlorine
    (rf"\bfree (?:of|from) (?:any |all )?(?={_HELD}\b)", "no "),  # free of methylene chloride
    (r"\b(methylene chloride|perchloroethylene|moly|molybdenum|graphite|pumice|dye)[- ]free\b", r"no \1"),
    (
        r"(?<=\d) no (?=(?:dye|uv dye|residue|acetone|acid|ammonia|chlorine|pumice)\b)",
        " without ",
    ),  # PAG 46 no dye: not so many
    (
        rf"\b(?:safe|ok|okay|kind|fine|compatible) (?:on|for|with|to) (?:any |all |bare )?({_HARMED}) "
        rf"?(?:and|&|/|,|\+) ?({_HARMED})\b",
        r"\1 safe \2 safe",
    ),
    (r"\b(?:2x-?|xx[- ]?)(?:l|lg|lge|large)\b|(?<=gloves )2x\b(?! ?\d)|(?<=size )2x\b(?! ?\d)", "xxl"),  # 2XL
    (r"\b(?:3x-?|xxx[- ]?)(?:l|lg|lge|large)\b|(?<=gloves )3x\b(?! ?\d)", "xxxl"),  # 3X-large
    (r"\b(?:4x-?|xxxx[- ]?)(?:l|lg|lge|large)\b", "xxxxl"),
    (
        r"(gloves?\b.{0,30}?)(?:,| and| \+| plus)(?= (?:leather )?(?:over[- ]?gloves?|(?:glove )?protectors?)\b)",
        r"\1 with",  # insulating gloves and leather over-gloves
    ),
    (r"\bep[ -]?(80|90|140)\b(?! ?w)", r"ep sae \1"),  # EP90, of gear oils
    (r"\b(?:iso|clp) ?(32|46|68|100|150|220|320|460|680)\b", r"iso vg \1"),  # CLP 320
    (r"\b(hv|hlpd|hl)(?=(?:15|22|32|46|68|100)\b)", r"\1 "),  # HV46
    (r"(?<!\d)\b(0|5|10|15|20|25) w[- ](16|20|30|40|50|60)\b", r"\1w-\2"),  # 15 W 40
    (r"\b(?:hdeo|uhpdo?|shpdo?)\b", "heavy duty diesel engine oil"),
    (r"\br?[- ]?1234 ?yf\b|(?<=pag) ?yf\b", " r1234yf"),
    (r"\b(pag[ -]?\d{2,3})[ -]?yf\b", r"\1 r1234yf"),  # PAG 46 YF
    (r"\bglycol(?: ether)?[- ]based (?=brake fluid)", "non silicone "),
    (r"\bnsf[ -]?h-?1\b", "food grade"),
    (r"(\bfood[ -](?:grade|safe)\b.*?)\bh1\b", r"\1"),  # NSF H1
    (r"\b(iii|ii)-h\b", r"\1h"),  # ATF III-H
    (r"\b(\d{4}) ?f\b", r"\1 deg f"),
    (r"(\bgrease\b.*\d) ?gr\b", r"\1 g"),
    (r"\bnot gl[- ]?\d\b", " "),
    (r"\bc v (?=joint|boot)", "cv "),
    (r"\bliquid (?=grease)", "semi fluid "),
    (r"(\b(?:oil|fluid)\b.*\b\d) pt\b", r"\1 pint"),
    (r"\ben ?388(?:[:-]20\d\d)?[ ,:]*[0-5x]{4}([a-f])p?\b", r"level\1"),  # EN 388 4X43D, from memory
    # Fasteners
    (r"\b(?:alloy|carbon) steel\b", "steel"),  # alloy alone is aluminium
    (
        r"\bh\.?t\.?(?= ?(?:bolts?|screws?|setscrews?|studs?|nuts?|8\.8|10\.9|12\.9)\b)"
        r"|(?<=bolt )h\.?t\b|(?<=bolts )h\.?t\b|(?<=8\.8 )h\.?t\b",
        "high tensile",
    ),
    (
        r"\b(cap|btn|button|flange|dome|cheese|csk|round|washer|hex|mushroom|fillister) ?hd\b",
        r"\1 head",
    ),  # HD alone is heavy duty
    (r"\b(skt|sck|socket|sock) ?hd\b(?=.*\b(?:screw|scr|cap|bolt|m\d))", r"\1 head"),
    (r"\b(self|st|tek|tapping|drilling)\b(.*)\bhex(?:agon)? washer head\b", r"\1\2"),
    (r"\b(st ?\d\.\d.*)\bhex(?:agon)? washer head\b", r"\1"),
    (r"\bhex(?:agon)? washer head\b", "hex head"),  # a hexagon with a flange pressed on, no washer
    (r"\bst ?([2-8]\.\d) ?x ?(?=\d)", r"self tapping screw \1 mm x "),  # ISO 1478 threads, from memory
    (
        r"^(?!.*\b(?:screw|scr|bolt|bit|driver|screwdriver|insert|nut|socket|skt|key)s?\b)(?=.*\bm\d[\d.]* ?x ?\d)"
        r"(.*\b(?:pan|cheese|csk|countersunk|mushroom|fillister)\b.*)$",
        r"\1 screw",
    ),  # pan pozi M5x20
    (r"\bc/s (?=(?:socket|skt|screw|pozi|hex|allen|torx|bolt|slot|phil|head|m\d))", "csk "),
    (r"\bspring cotters?\b", "r clip"),
    (r"\bcup square(?= (?:bolt|head|hex))", "coach"),
    (r"(\binsert.*)\bscrew[- ]?lock(?:ing)?\b", r"\1 self lock"),
    (r"\bnuts? with (?:a )?captive washers?\b", "nut captive"),
    (r"\b(thin|half) lock ?nut", "half nut"),
    (r"\block ?nut\b(?=[ mx\d.,]* (?:thin|half)\b)", "nut"),
    (r"\b(m\d{1,2}) (?:fine|coarse)?(?: pitch)? ?(?=m\d{1,2} ?x ?\d?\.?\d)(?=\1 ?x)", ""),  # M10 fine M10x1.25
    (r"\b(m\d{1,2}) (fine|coarse)(?: pitch)? x ?(\d+(?:\.\d+)?)\b", r"\1 x \3 \2"),
    (r"\b(un[cf]|unef) ?-? ?[123][ab]\b", r"\1"),  # how close a thread fits, ASME B1.1 (from memory)
    (r"\b(dowel.*?\d ?x ?\d+(?: ?mm)?),? ?[mh][5678]\b", r"\1"),  # m6: a fit, no thread
    (r"\bbolts? (?:and|\+) washers?\b", "bolt with washer"),
    (r"\bset of \d (?=wheel (?:bolt|nut))", ""),
    (r"\be[- ]type (?=circlip|retaining|snap|ring|clip)|\b(retaining|snap|ret) ring,? e[- ]type\b", "e clip "),
    (r"\bring,? retaining,? e[- ]type\b|\bcirclip,? e[- ]type\b", "e clip "),
    (r"\bdin ?471\b", "external"),  # circlips by their standards, from memory
    (r"\bdin ?472\b", "internal"),
    (r"\bwasher(.*)\bdin ?9021\b", r"penny washer\1"),
    (r"\bwasher(.*)\bdin ?127\b", r"spring washer\1"),
    (r"\bnut(.*)\bdin ?985\b", r"nyloc nut\1"),
    (r"\b(bolt|screw)(.*)\bdin ?931\b", r"\1\2 part thread"),
    (r"\b(bolt|screw)(.*)\bdin ?933\b", r"\1\2 full thread"),
    (r"\b(?:allen|hex socket|internal hex) (?:head )?plug(?=.*\b(?:bspt?|npt|taper)\b)", "pipe plug"),
    (r"\bplug,? ?pipe\b(.*)\bhex socket\b", r"pipe plug\1"),
    # What is used up
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
    (r"\bmagnetic base (dial (?:gauge|indicator))\b", r"\1 with magnetic base"),
    (r"\b(tape\b.*\d(?:\"| ?in\b).*?)\b\d{1,2}(?:\.\d)? ?mil\b", r"\1"),  # thousandths of an inch thick
    (r"\b(clamp|clip|clmp|clp)(.*?),? ?\bscrew 5/16 hex\b", r"\1\2"),
    (
        r"^(?!.*\b(?:bulb|lamp|key|bit|socket|skt|driver)s?\b)"
        r"((?:h[1-9]|h1[0-9]|hb[34]) .*\b(?:p43t|px26d|\d\d ?v|\d\d ?w)\b)",
        r"bulb \1",
    ),
    (r"^(\d+(?:\.\d+)?) ?(t|tons?|tonnes?) stands?\b", r"\1 \2 axle stands"),
    (
        r"\b(\d+) mm or (?:longer|more|larger)\b(?=.*caliper)|(?<=caliper, )(\d+) mm or (?:longer|more|larger)\b",
        r"0-\1\2 mm",
    ),
    (
        r"(?<!washer, )(?<!washer )(slotted|flat)(?! washer)(.{0,12}) (\d+(?:\.\d)?) ?(?:mm)? x ([0-2]\.\d) ?mm\b",
        r"\1\2 \3 mm",
    ),
    (r"\b(unc|unf|unef) ?x ?(\d+(?:[- ]\d+/\d+|/\d+|\.\d+)?)(?![\d/.])(?: ?(?:inch|in\b|\"))?(?! ?mm)", r"\1, \2 in"),
    (
        r"\bwith (?:one|1) open and (?:one|1) (?:ring|box) end\b|\bopen one end,? (?:ring|box) (?:the )?other\b",
        "combination",
    ),
    (r"\b(?:one|1) open and (?:one|1) (?:ring|box) end\b", "combination"),
    (
        r"\bm(\d{1,2}) (?:fine(?: pitch)?|coarse) (bolt|screw|nut|stud),? (\d\.\d+)( x \d+)?\b(?: pitch)?",
        r"m\1x\3\4 \2",
    ),
    (r"\b(?:in )?range (?:of )?at least\b", "range"),
    (r"(?<=mm) or (?:longer|more|larger|over)\b", ""),
    (r"\bnon-?chlor\b", "non-chlorinated"),
    (r"\b(phillips|slotted|flat tip) sd\b", r"\1 screwdriver"),
    (
        r"\bcross[- ]?(?:tip|head|recess(?:ed)?|point|slot)?(?: (bit socket|screwdriver|driver|bit))?,? type z\b",
        r"pozi \1",
    ),
    (
        r"\bcross[- ]?(?:tip|head|recess(?:ed)?|point|slot)?(?: (bit socket|screwdriver|driver|bit))?,? type h\b",
        r"phillips \1",
    ),
    (r"(?<=\d l) engine\b|(?<=litre) engine\b|(?<=liter) engine\b", ""),
    (r"(?<=, )ph$", "phillips"),
    (r"\bs/d\b", "screwdriver"),
    (r"\b(\d{1,2}) ?teeth per inch\b", r"\1 tpi"),
    (r"\bv[- ]?notch(?:ed)?\b", "vnotch"),
    (r"(?<=feeler)(.*)\bstraight blades?\b", r"\1straight"),
    (r"\b(?:magnetic|magnet) (?:insert|holding|retention)\b", "magnetic"),
    (r"\bair ?/ ?hydraulic\b|\bair over hydraulic\b|\bair[- ]hydraulic\b", "airhydraulic"),
    (
        r"\btaper(?:ed)? 60 ?deg(?:rees?)?\b|\b60 ?deg(?:rees?)? taper(?:ed)?\b",
        "taper",
    ),
    (r"\brd\b(?= ?(?:file|sling|bar|nose))|(?<=file )rd\b|(?<=file, )rd\b|(?<=sling )rd\b", "round"),
    (r"(?<=\d/\d) l (?=(?:hex|allen|ball)\b)|(?<=\d/\d\d) l (?=(?:hex|allen|ball)\b)", " "),  # an L key, no litres
    (r"\bset ?screw \(grub\)", "grub screw"),
    (r"\bs/?drv\b", "screwdriver"),
    (r"\bt[- ]?bolt hose (?=clamp|clip)", "t-bolt "),
    (r"\b(\d{2,4}) ?v ?/ ?(?=\d{3,4} ?v\b)", r"\1/"),
    (r"^set (?=.{0,30}\bchocks? )", "place "),
    (r"(?<=nlgi 00), ?semi[- ]?fluid\b|(?<=nlgi 000), ?semi[- ]?fluid\b|(?<=nlgi 0), ?semi[- ]?fluid\b", ""),
    (r"\bfold[- ]?up\b", "folding"),
    (r"(?<=drive) one\b$|(?<=square) one\b$", ""),
    (r"(?<=\bv[468]) engine\b|(?<=\bv1[02]) engine\b", ""),
    (r"\ba/c line\b", "a/c"),
    (r"\b(\d+(?:\.\d+)?) wide\b", r"\1 mm wide"),
    (r"\bzinc[- ]?plated steel\b", "zinc plated"),
    (r"\bkey set, socket head screw\b", "hex key set"),
    (r",? ?\b(?:a|one|100|1000) ?(?:hundred|thousand|dozen)? (?:in|to) (?:the|a) (?:bag|box|pack|packet|tin)\b", " "),
    (r"\bworm ?drive, (?=\d)", "wormdrive "),
    (r"\bin (?:half|0?\.5)[ -](?:millimetres?|millimeters?|mm|mil) steps\b", "in 0.5 mm steps"),
    (r"(?<=bit, )1/4\"? ?(?:in )?hex drive\b|(?<=bit )1/4\"? ?(?:in )?hex drive\b", "1/4 hex shank"),
    (r"\bplain[ -]end(?:s|ed)?\b|\bplain tips?\b", "plainend"),
    (r"\b(?:does|do) not burn\b|\bwill not burn\b", "non-flammable"),
    (r"(?<=\d) ?in\.? roll\b", '" roll'),
    (
        r"\bsockets?, (\d{1,2}) (?:to|-) (\d{1,2}) ?mm, (.{0,20}?),? ?\b(?:box|set|case) of (\d{1,2})\b",
        r"socket set, \1-\2 mm, \3, \4 pc",
    ),
    (r"\br[- ]?(134a|1234yf|744|404a)\b", r"r\1"),
    (r"\b([ac]\d)(?=b\d\b)", r"\1 "),  # A5B5
    (r"\bep(?=\d+w)", "ep "),
    (r"(?<= )x(?=\d+(?:\.\d+)? ?m\b)", "x "),  # 12mm x12m
    (r"(?<=\d) ?in\.? (?=hex)", '" '),  # 1 in. hex head is no internal hexagon
    (r"\b([io])\. ?d\b\.?", r"\1d"),  # I.D.
    (r"\b(m\d{1,2}) ?- ?(?=\d?\.\d|[123] ?x)", r"\1 x "),  # M8-1.25 x 40
    (r"\b(pag|poe|vg|hlp|hm|hvlp|iso)(?=\d{2,3}\b)", r"\1 "),  # PAG46
    (r"\bvg(?= ?\d{2,3}\b)", "iso vg"),
    (r"\biso iso\b", "iso"),
    (r"(?<=\d)(?=awg\b|sqmm\b)", " "),
    (r"\bw ?/ ?d\b(?=.*\b(?:clamp|clip|clp))|(?<=clamp )w ?/ ?d\b|(?<=clip )w ?/ ?d\b", "worm drive"),
    (r"\bw ?(?:and|n|\+|/) ?d\b", "wet and dry"),
    (r"(-?\d+) ?/ ?\+ ?(?=\d+ ?(?:deg ?)?c\b)", r"\1 to "),  # -50/+550C
    (r"(?<=\dv)(?=\d+ ?[wa]\b)", " "),  # 12V55W
    (r"(?<=\d)(?=(?:nbr|fkm|epdm|hnbr)\b)", " "),
    (r"\be[- ]?(?=torx|star\b|sixlobe|six[- ]lobe|6[- ]lobe)", "external "),
    (r"\b([1-4])\.(\d{1,2}/(?:2|4|8|16|32)\b)", r"\1-\2"),  # 1.1/16
    (r"\b\d{1,2}(?:\.\d)? ?: ?1\b", " "),  # a ratio of gears
    (
        r"(?:#|\bno\.? ?)([0-4])[ -](?:sq|square)(?:[ -](?:drive|recess|head|tip))?\b(?! ?\d)",
        r" robertson \1 ",
    ),
    (r"\b(?:sq|square)(?:[ -](?:drive|recess|head|tip))? ?(?:#|no\.? ?)([0-4])\b", r" robertson \1 "),
    (r"\b(e\d{1,2}) ?[x/] ?(?=e\d)", r"\1 x "),
    (r"\b((?:ph|pz|tx?|sl)\d{1,2}) ?/ ?(?=(?:ph|pz|tx?|sl)\d)", r"\1 x "),  # PH1/PH2
    (
        (r"\b(?:the|a|an) (?!(?:number|size|no|nr|class|grade|type|twenty|thirty|forty|fifty)\b)([a-z]+) one\b"),
        r"\1",  # the deep one
    ),
    (r"\bwet[ -]or[ -]dry\b", "wet and dry"),
    (r"\b(ph|pz|sl|tx) (\d(?:\.\d)?) ?x ?(?=\d)", r"\1\2 x "),  # SL 5.5X125
    (r", (\d{1,2}) (?:keys|sizes|bits|sockets|spanners|wrenches)$", r", \1 pc"),
    (r",\s*(?:two|three|four|five|six|eight|ten)(?: off)?$", ""),  # so many of them
    (r"\babr (?=ppr\b)", "abrasive "),
    (r"\bppr\b", "paper"),
    (r"\bsz(?=\d)", "size "),
    (r"\b(jt|joint) sep\b", r"\1 separator"),
    (r"\baxl?e? stnds?\b", "axle stand"),
    (r"\bdrl(?=,? ?\d)", "drill"),
    (r"\b(maf|o2|oxy|lambda|air ?flow) sens\b", r"\1 sensor"),
    (r"\b(\d+pt|\d+mm|pt) shall?\b", r"\1 shallow"),
    (r"\bspnn?r hdl\b", "spinner handle"),
    (r"\bct?r pnch\b", "centre punch"),
    (r"\bpnch auto\b", "punch automatic"),
    (r"\bctr pnch auto\b", "centre punch automatic"),
    (r"\bside[- ]jaws?\b", "sidejaw"),
    (r"\b(keys?),? on (?:a |the )?(?:ring|rail|rack)\b", r"\1 set"),
    (r"(\bt[yi]res?\b.*)\blow?[- ]press(?:ure)?\b", r"\1lowpressure"),
    (r"\blow?[- ]press(?:ure)?\b(?=.*\bt[yi]re)", "lowpressure"),
    (r"(?<=\d)ot\b", "0t"),  # 1OT
    (r"\b0il\b", "oil"),
    (r"\b(ptfe|copper|nickel|zinc|silicone)[- ]free\b", r"non \1"),
    (r"\(([a-z]+) one\)", r"(\1)"),
    (r"\bmedium ?[-/] ?high strength", "medium strength , high strength"),
    (
        r"(\btester\b.*?),? ?\b(?:for )?dot ?\d(?:\.\d)?(?:[/, ]+(?:dot ?)?\d(?:\.\d)?)*\b",
        r"\1",
    ),  # what a fluid tester is for
    (r"\bset of (?:\d+|two|three|four|five|six|seven|eight|nine|ten|twelve)$", "set"),
    (r"\bdip(?:ped)?[- ]insulated\b", "dipped"),  # handles dipped in plastic stand no voltage
    (r"\bhose pinch clamps?\b", "hose pinch pliers"),
    (
        (
            r"\b(8|eight)[- ]?(?:pt|point) socket for (?:an? |the )?(\d+ ?mm|\d/\d+)(?: in\b\.?)? "
            r"square (?:head(?:ed)? )?plugs?\b"
        ),
        r"8 point socket \2",
    ),
    (
        (
            r"\b(?:won't|wont|will not|does not|doesn't|that spares?) "
            r"(?:strip|harm|attack|damage|hurt|eat|melt|lift) (?:the |any |your )?" + rf"({_HARMED})\b"
        ),
        r"\1 safe",
    ),
    (r"(?<=\d-\d\d)/(9|12)(?:\.7)?\b", r" mm, \1 mm band"),  # a hose clip
    (r"\b(?:a |one )?metre (?=straight|rule\b|ruler)", "1000 mm "),
    (r"\bfriction modifi(?:er|ed)\b", "limited slip"),
    (
        (r"\b(?:overhauled|reconditioned|serviced|bought|repaired|tested|rebuilt|painted)(?: in)? (?:19|20)\d\d\b"),
        " ",
    ),
    (r"\b(\d{1,2}) ?mm sq(?:uare)? bit (?=socket|skt)", r"\1 mm male square bit "),
    (
        r"\bbit (?:socket|skt),? (8|10|12|13) ?mm sq(?:uare)?\b(?=.*(?:/\d|half|quarter).*\bdr)",
        r"bit socket \1 mm male square",
    ),
    (r"\b(?:rbr|rubb) (?=safe\b)", "rubber "),
    (r"\b(?:plstc|plst) (?=safe\b)", "plastic "),
    (r"\b(?:snsr|sens) (?=safe\b)", "sensor "),
    (r"\bhook ?(?:\+|and|&|n|/) ?loop\b", "hook and loop"),
    (r"\bhhcs\b", "hex head cap screw"),
    (r"\b(?:two|three|four|five|six|eight|ten) (?=\d{1,2}/\d{1,2}-\d\d\b)", ""),  # so many bolts
    (r"(?<=key), ?l[- ]handle\b|(?<=\d), l[- ]handle\b|\bl[- ]handle(?= (?:hex|key|star|six))", " l type"),
    (r"\bsae (?=45 ?deg)", ""),
    (r"\bflat[- ]band\b", "spring band"),
    (r"\bnought(?= ?w\b)|\bnaught(?= ?w\b)|\boh(?= ?w\b)", "zero"),
    (r"\binch and (?=an? (?:eighth|quarter|half|sixteenth))", "1 and "),
    (r"(?<=\d) ?0z\b", " oz"),
    (r"(?<=\d)oo(?=[avwm]\b)", "00"),  # 4OOA
    (r"(?<=\d)o(?=[avwmg]\b|pk\b|ml\b|pcs?\b)", "0"),  # 5Om
    (r"\bhaif\b", "half"),
    (
        r"(?<![\d.])(\d{1,2}(?:\.\d\d?)? ?mm) \(\d{1,2}/\d{1,2}(?:\"| ?in\.?)?\)"
        r"(?! (?:square|sq|drive|dr)\b)(?=.*(?:drive|dr\b))(?<=\))",
        r"\1",
    ),  # 22 mm (7/8)
    (r", [a-z]+ (?:a bit|slightly|rather|quite) [a-z]+$", ""),  # pin a bit loose
    (r"\b(?:insulation|insul|megger)(.*?)(\d+) to (?=\d+ ?v\b)", r"insulation\1\2-"),
    (r"\bmed(?:ium)?[- ]?(?:to[- ]|/)?high(?:[- ]strength)\b", "medium strength , high strength"),
    (r"\bpads?,? abr\b", "pad abrasive"),
    (r"\babr (?=(?:disc|pad|cloth|belt|wheel|strip)s?\b)", "abrasive "),
    (r"(?<=square )pipe (?=plugs?\b)|(?<=sq )pipe (?=plugs?\b)", ""),
    (r"\b(1/4|5/16)(?: in\b\.?|\")? hex (?:female|socket|recess)(?: end)?(?: for bits)?\b", r"\1 hex"),
    (r"(\d(?:\.\d+)? ?(?:-|to) ?\d+(?:\.\d+)?) ?mm sq\b\.?(?! ?(?:dr|drive|square))", r"\1 sqmm"),
    (r"\b(mic|micrometer|mike),? o/s\b", r"\1 outside"),
    (r"\bbattery(?= impact| ratchet| drill| driver| gun)", "cordless"),
    (r"\bon (?:the|a) (?:torque )?(?:tester|test bench|analyser)$", ""),
    (r"(?<=\()(?:taper|square|gearbox|drain|filler|sump|level)(?: head(?:ed)?)? plugs?(?=\))", " "),
    (r"\bnuts?\b(.*)\bpln\b|\bpln\b(?=.*\bnut)", r"plain nut\1"),
    (r"\b(?:triple|trpl|trp|tri)[ -]sq(?:r|uare)?\b", "triplesquare"),
    (r"\bsae (?=\d{1,2}[- ]?(?:pt|point|pc|piece))", "inch "),
    (r"(?<=[\d\"]) ?thru ?(?=\d)", " to "),
    (
        r"\b(?:at )?(?:one|each|either|the other|other) end\b|(?<=\d mm) the other$",
        " ",
    ),  # a spanner, 16 mm one end
    (r"(?<=\d ) ?bl\b(?=$|,| )|(?<=\d)bl\b", " blades"),
    (r"\((?:\+ ?|with |and |has )?(?:a )?spare [^()]*\)", " "),
    (r"\((?:it )?(?:lives|kept|stored|hangs|hung|stays|belongs|sits|stands|keep|lies) [^()]*\)", " "),
    (r",? (?:the )?(?:one|ones) (?:you|we|that|which|they)\b.*$", " "),  # the one you hit
    (
        (r"\bnot (?:for use |to be used |for )?(?:near|on|around|with|by) (?:any |oxygen |lambda )?sensors?\b"),
        "not sensor safe",
    ),
    (
        (r"\b(rubber|plastic|paint|sensor|metal) ?(?:and|/|,|\+) ?(rubber|plastic|paint|sensor|metal)[ -]safe\b"),
        r"\1 safe \2 safe",
    ),
    (r"\bd/e\b", "double ended"),
    (r"\b(tr\d{1,2})x(?=\d)", r"\1 x "),  # TR10X80MM
    (r"(?<=/\d-\d\d )n([cf])\b|(?<=/\d\d-\d\d )n([cf])\b", r"un\1\2"),  # NC, NF
    (r"\bin thou(?:sandths?)?\b", "inch"),
    (r"\bin 0?\.\d+ ?mm (?:steps|increments)\b", " "),
    (r"\bhalf a (?:mil|millimetre|millimeter|mm)\b", "0.5 mm"),
    (r"\b(\d{1,2}) ?mm (sq(?:uare)?(?: drive| dr)?) ?\((?=\d/\d)", r"\2 ("),  # 10 mm square drive (3/8 in)
    (
        r"(?<!one[ -])(?<!three[ -])(?<!five[ -])(?<!seven[ -])(?<!\d[ -])(?<!an )\beighth by "
        r"(?=(?:an )?inch|one|two|\d)",
        "1/8 x ",
    ),
    (r"(?<=x )inch and (?=a )", "an inch and "),
    (r"\b(?:the )?(bendy|bent|long|short|stubby|deep|thin|small|big|straight) ones\b", r"\1"),
    (r"\b(?:to be )?set (?:to|at) (?=\d)", "for "),
    (r"\bto set (?=\d)", "for "),
    (r",? one per (?:port|cylinder|side|bolt|hole)\b", ""),
    (r"\bpower sockets?\b", "impact socket"),
    (r"\bred[- ]brown(?: \(maroon\))?", "maroon"),
    (r"\bph ?(?:no\.?|nr|number|#) ?(?=[0-4]\b)", "ph"),
    (r"\bpz ?(?:no\.?|nr|number|#) ?(?=[0-4]\b)", "pz"),
    (r"(?<![/\d])\b(?:four|4)[- ](?:lug|peg|pin)\b(?! punch)", "fourlug"),
    (r"^((?:[a-z]+ )?masking)$", r"\1 tape"),
    (r"^wipers\b(?=,? (?:pair|front|rear)|$)", "wiper blades"),
    (r"(?<!towels )(?<!towel )(?<!rags )\bblue roll\b", "blue paper roll"),
    (r"\bil(?= (?:tin|can|bottle|jug|btl)\b)", "1 l"),
    (
        r"\bfilter cap(?=.*\d ?(?:flutes?|fl|flats?)\b)(?! (?:wrench|wr|spanner|socket|skt|type))",
        "filter cap wrench",
    ),
    (r"\b(filter\b.*\d) ?flats?\b", r"\1 flutes"),
    (r"(?<= )w/? ?(?=(?:rubber|magnet|ball|case|box|adapt|exten|handle|washer|nut)[a-z]*\b)", "with "),
    (r"\b(ream\w*.*?)[ ,]+h[6-9]\b", r"\1"),  # a fit, ISO 286
    (r"\b(compress\w*\b.*)\b(10|12|14|18) ?mm (?=adapt|adptr?)", r"\1m\2 "),
    (
        r"\b(hex|hexagon|pan|round|flat|button|btn|socket|soc|skt|sckt|csk|cheese|truss) ?h(?:ea)?d\b",
        r"\1 head",
    ),
    (r"\bnylon ins\b", "nylon insert"),
    (r"\bcal(?=,? (?:vern|dig|dial)[a-z]*\b)", "caliper"),
    (r"\b((?:scissor|lever|screw)\b.*\d ?mm) fork\b", r"\1"),  # its opening
    (r"\bto suit\b", " for "),
    (r"\b(?:12|twelve)[- ]?(?:pt|point),? (?=triple|trpl|xzn)", " "),
    (r"\b2nd\b", "second"),
    (r"\b(\d+(?:\.\d)? ?mm),? (?:lg|long) (?=\d+ ?mm\b)", r"\1 , long , "),
    (r"\bhalf[- ](?:a )?lit(?:re|er)s?\b", "0.5 litre"),
    (r"\bdial,? ind\b", "dial indicator"),
    (r"\b(?:inch|in|foot|ft)[- /.]?(?:pounds?|lbs?) (?=wrench|spanner|driver\b)", "torque "),
    (r"(?<=mm) ?x ?(?=0?\.0\d+)", " , "),  # 25-50mm x 0.01
    (r"\bfilter socket,? cap\b", "filter cap socket"),
    (
        (r"\bhs(?=,? (?:htr|heater|fuel|vac|rad|clnt|coolt|air|brk|oil|hyd|pwr)\b)|(?<=clmp )hs\b|(?<=clamp )hs\b"),
        "hose",
    ),
    (r"\b(washers?|wshrs?),? lk\b", r"\1 lock"),
    (r"\b(tester|tstr|gauge|gge|ga),? press\b", r"\1 pressure"),
    (r"\btherm(?=,? (?:i/?r|infra))|(?<=ir )therm\b|(?<=i/r )therm\b", "thermometer"),
    (r"\bi/r\b", "infrared"),
    (r"\bcompr(?=,? (?:sprg|spring|vlv|valve|pstn|piston|ring|strut))", "compressor"),
    (r"(?<=\dmm)x(?=\d)", " x "),
    (r"\b(?:fld|fluid),? (?:pwr|power|p/s) ?(?:strg|steer|steering)?\b", "power steering fluid"),
    (r"\b(?:sft|soft),? (?:fc|face|faced)\b", "soft face"),
    (r"\b(?:rng)\b(?! ?\d+(?:\.\d+)? ?(?:-|to))", "ring"),
    (r"\bga(?=,? (?:feel|flr|thk|press|tyre|tire|vac|comp|oil|dial|depth|bore|angle)[a-z]*\b)", "gauge"),
    (r"\bgauge,? feel\b", "gauge feeler"),
    (r"\boil,? gr\b(?=.*\d)", "gear oil"),
    (r"\b(?:pliers?|plrs?),? circ\b", "pliers circlip"),
    (r"\btp(?=,? (?:msk|mskg|mask|insul|ins|elec|dbl|alum|alu|ptfe|duct|cloth|foam)[a-z]*\b)", "tape"),
    (r"\b(washers?|wshrs?|wsr),? flt\b", r"\1 flat"),
    (r"\bf/ ?(?=[a-z]{2})", "for "),  # F/DRAIN PLUGS
    (r"\b(fixed|flx|flex|flexi|flexible|swivel|reversible|hex|hx|flg|flange) hd\b", r"\1 head"),
    (r"\bthn (?=wll?\b|wall\b)", "thin "),
    (r"\b(lug|whl|wheel|hex|flg|lck|lock|wng|wing|axl|axle) nts?\b", r"\1 nut"),
    (r"\b(?:hs|hse|hose) grp\b", "hose grip"),
    (r"\(?\bsign(?:ed)? out\b\)?", " "),
    (r"\b((?:\d|1\d|2[0-2])(?:\.\d)? ?mm) long (?=(?:\w+ )?(?:hex|ball|bit|socket)\b)", r"\1 , long "),
    (r"\babr (?=sheets?\b|paper\b|rolls?\b|discs?\b|belts?\b)", "abrasive "),
    (r"\bwet ?/ ?dry\b", "wet and dry"),
    (r"(?<=\d) ?sq\.? ?mm\b", " sqmm"),
    (
        r"\bfor an? (?:straight |in-?line )?(?:three|four|five|six|[3-6]|v ?[68])(?=$|[,;)]|\.(?!\d))",
        " ",  # so many cylinders
    ),
    (r"(?<=\d)[- ]degrees?\b", " deg"),
    (r"\b(?:cut )?(?:level|lvl) (?=[a-f]\b)", "level"),
    (
        (
            r"\b(?:not (?:safe |to be used |for use )?(?:for|on|with)|never (?:use )?on|keep (?:off|away from)|"
            r"unsafe (?:on|for)|(?:do not|don't|dont) (?:use|get|put) (?:it )?(?:on|near)|attacks|harms|damages|"
            r"dissolves|eats|melts|will (?:lift|attack|damage|harm|eat|melt)) (?:any |all |bare |soft |old |painted )?"
            rf"({_HARMED})\b(?! safe)"
        ),
        r"not \1 safe",
    ),
    (
        rf"\b(?:safe|ok|okay|kind|fine|compatible) (?:on|for|with|to) (?:any |all |bare )?({_HARMED})\b",
        r"\1 safe",
    ),
    (rf"\bcal(?:ibration|ibrated|\.)?(?: is)? due:?(?: {_DATE})?(?!\w)", " "),
    (rf"\b(?:exp(?:iry|ires|ired|\.)?|use by|best before)(?: date)?:? {_DATE}(?!\w)", " "),
    (r"\b[ce] ?6[.,]3\b(?: ?\(1/4\"? ?hex\w*(?: shank)?\))?", "1/4 hex shank"),  # ISO 1173
    (r"\bxii[- ]point\b", "12 point"),
    (r"\bs2\b(?: (?:steel|blade))?", " "),
    (r"\bip ?(?:[45]4|6[5-9]|x[4-8])\b", " "),  # how far it is sealed, IEC 60529: no number of a lobe
    (
        (
            r"(?<=[\d,a-z] )(?<!blk )(?<!blu )(?<!nitrile )(?<!latex )(?<!free )(?<!black )(?<!blue )"
            r"(?:l\.?|length:?) ?=? ?(\d{2,4})(?: ?mm\b)?(?![\w.]| ?(?:pcs?|pk|ml|g|off|box|pairs?)\b)"
        ),
        r"\1 mm long",  # L 63
    ),
    (r"(?<![/.\d-])\b(\d{2,4}) (?=long\b)(?!.*\b\d{2,4} mm long)", r"\1 mm "),
    (r"\be[- ]sockets?\b", " external sixlobe socket "),
    (r"\be[- ]profile\b", " external sixlobe "),
    (r"\boutside[- ](?=star|torx|six|hexalob)", "external "),
    (r"\bac ?(?:/|and|\+|&|-)? ?dc\b|\bdc ?(?:/|and|\+|&|-)? ?ac\b", "acdc"),
    (r"\bac[ -]?only\b|\bonly ac\b", "aconly"),
    (r"\b(?:sz|size) (\d{1,2}) (?=(?:pairs?|prs?)\b)", r"size \1 , "),
    (r"\b(petrol|gasoline|diesel) (?:engines?|engined|motor)\b", r"\1"),
    (r"\b2 ?t (?=.*\boil\b)", "two stroke "),
    (r"\b4 ?t (?=.*\boil\b)", "four stroke "),
    (r"\b(m\d{1,2}) ?/ ?(?=m\d)", r"\1 , "),  # M10/M12/M14
    (r"(?<=\d/\d)( ?)w\b(?! ?\d)|(?<=\d/\d\d)( ?)w\b(?! ?\d)", " whitworth"),
    (
        (r"(?<!\d )(?<!\d)(?<!\d-)\b(?:inch|foot|in|ft)[- ]?(?:pounds?|lbs?) (?=torque|tq|click|wrench|dial|beam)"),
        "",
    ),
    (r"\bdot (?:five|5) (?:point|pt) (?:one|1)\b", "dot 5.1"),
    (r"\btee ?(?=\d\d\b)|\btee (?=ten|fifteen|twenty|thirty|forty|fifty)", "t "),
    (r"(?<=\d)[- ]?(?:wt|weight)\b", "w"),
    (r"(?<=8pt)(.*)\bsquare nuts?\b|(?<=point)(.*)\bsquare nuts?\b", r"\1\2"),  # an 8-point socket's
    (
        (r"^(.*\b(?:8|eight)[- ]?(?:pt|point).*?)\bsquare[- ]head(?:ed|s)?\b(?: (?:plug|bolt|nut|screw)s?\b)?"),
        r"\1",  # what an 8-point socket turns
    ),
    (r"\bbox (?=\d+ ?deg)", "box end "),
    (r"\b\d ?mil (?=.*glove|.*\bglv)|(?<=nitrile) ?\d ?mil\b|\b\d ?mil\b(?=.*nitrile)", " "),
    (r"\bninety (?=duro|shore)", "90 "),
    (r"\bseventy (?=duro|shore)", "70 "),
    (r"\b(hi|high|lo|low|oil|fuel|tyre|tire|system|sys) press\b", r"\1 pressure"),
    (r"\b(hyd|hydraulic) press\b(?=,? (?:ga|gge|gauge|test|tester|tstr|hose|switch|sensor|kit)\b)", r"\1 pressure"),
    (r"\bpress(?= (?:ga|gauge|gage|tester|test|tstr)\b)", "pressure"),
    (r"\bdash (?=\d|four\b|six\b|eight\b|ten\b|twelve\b|sixteen\b)", "-"),
    (r"(?<=[a-wyz])\.(?=\d)", " "),  # SKT.10MM
    (r"\be[- ]type\b", " external sixlobe "),
    (r"\b((?:ph|pz|tx?|sl|jis|h)\d{1,2}(?:\.\d)?)x(?=\d)", r"\1 x "),  # PZ2x100
    (
        (
            r"\b(?:reading |reads |scaled? |marked |graduated )?in "
            r"(?:n\.?m|ft[- ./]?lbs?|lbf?[- ./]?ft|newton met(?:re|er)s)\b(?!\.?\d)"
        ),
        " ",
    ),
    (r"\bsocket wrench[,:; ]+impact\b", "impact socket wrench"),
    (r"\btl (?=(?:med|hi|high|lo|low|stick|wick|perm|ret|blu|red|grn|green)[a-z]*\b)", "threadlocker "),
    (r"(?<=\d\dh) tpr\b|(?<=tx\d\d) tpr\b|(?<=tx) tpr\b", " tamper"),  # behind another profile it may be a taper
    (r"\bt/w\b", "torque wrench"),
    (r"\balloy (?=wheels?\b|rims?\b)", ""),
    (r"\b(female|male) \([fm]\)", r"\1"),
    (r"(?<=; on )(?:the )?oil filter (?:cap|housing|cover|canister)$", "cover"),  # a hexagon on it
    (r"(?<=, )((?:hv )?battery) trays?$", r"\1 cover"),  # where a job is, no tray of sockets
    (r"(?<=brake fluid )5\.1\b", "dot 5.1"),
    (r"(?<=\d )t[- ]?(?:handled?|bar|grip)\b", "tbar"),
    (
        (
            r"\b(sockets|spanners|wrenches|keys)\b(?!.*\bset\b)"
            r"(?=.*\b\d+(?:\.\d)? ?(?:mm )?(?:-|to) ?\d+ ?mm\b.*\b\d+[- ]?(?:pcs?|piece)\b)"
        ),
        r"\1 set",
    ),
    (r"(?:^|(?<=, ))inch and (?=a )", "an inch and "),
    (r"\bc/w\b", " with "),
    (r"\bt?[- ]?(\d{1,3})[- ]?ip\b", r" ip\1 "),  # T25 IP
    (r"(?<=/\d)[\"']{0,2} ?-?(?:sd|sqd)\b", " sq dr"),  # 3/8SD
    (r"(?<=[\d\"'])(?=(?:dr|drv|drive|sq|sqdr|skt|socket|sckt)\b)", " "),  # 1/4dr
    (r"(?<=\d)(?=(?:deep|dp|impact|imp|hex|hx|long|pos|ratchet|ext)\b)", " "),
    (r"\b(dr|drv|drive|sq(?![0-4](?![\d/.]))|skt|sckt|socket|spanner|spnr)(?=\d)", r"\1 "),
    (r"(?<=[a-z]),(?=[a-z\d])", ", "),
    (r"(?<=\dmm)(?=\d)", " "),
    (r"(?<=\d[\"'])(?=[a-z\d])", " "),
    (r"(?<=mm)(?=dp\b|deep\b|skt\b|imp\b|hex\b|x\d)", " "),
    (r"(?<![\d,])(\d+),(\d{1,2})(?![\d,])(?=\s*(?:mm|nm|n\.m|l\b|ml|kg|in\b|x))", r"\1.\2"),  # 6,3 mm
    (r"(?<=x)(\d),(\d{1,2})\b", r"\1.\2"),  # M8x1,25
    (r"(?<![\d,./])(\d{1,3}),(\d{1,2})(?![\d,./]|\s*(?:pt|point|dr|drive|sq|pc|-))", r"\1.\2"),  # 15,3
    (r"(?<=\d),(?=\d{3}\b)", ""),  # 1,000
]
