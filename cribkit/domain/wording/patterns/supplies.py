"""Gloves, abrasives, tapes, fuses, bulbs, ties and other things that are used up."""

from __future__ import annotations

# Where a ply or a centre feed is one of paper.
_PAPER = r"^(?=.*\b(?:rolls?|paper|towels?|tissues?|wip(?:es?|ers?|ing))\b)"

SUPPLIES = [
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
    (r"\bpa ?-?6[.,]?6\b", "nylon"),
    (r"\bcable straps?\b(?=.*\bnylon\b)|(?<=nylon )cable straps?\b", "cable tie"),
    (r"\b(\d{2,3}) ?l x (\d{1,2}(?:\.\d)?) ?w\b(?! ?\d)", r"\1 x \2 mm"),
    (r"(\bties?\b.*?\d.*?)\b(\d{1,2}\.\d) wide\b", r"\1\2 mm"),
    (r"\bcable (?:ites|teis|tise)\b", "cable ties"),
    (r"\bnormal standard\b", "standard"),
    (r"^(?=.*\bfuse\b)(.*?)\bvehicle, flat blade\b", r"\1blade"),
    (r"\b21 ?/ ?5 ?watts?\b|\b21 ?w ?/ ?5 ?w\b|\b21 5 ?w(?:atts?)?\b", "21/5w"),
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
    (r"\bmagnetic retainer\b", "magnetic"),
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
    (r"\b(?:that |which )?leaves? no lint\b", "lint free"),
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
    (r"\babr (?=ppr\b)", "abrasive "),
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
    (r"\bninety (?=duro|shore)", "90 "),
    (r"\bseventy (?=duro|shore)", "70 "),
]
