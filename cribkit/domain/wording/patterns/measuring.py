"""Measuring and test instruments, torque wrenches, electric units."""

from __future__ import annotations

from cribkit.domain.wording.patterns.pattern import Pattern
from cribkit.domain.wording.spoken import in_digits

# The units of a torque, where "half a" stands before one.
_TORQUE_UNIT = r"(?:newton|nm\b|n\.m|foot[- ]p|ft[- ]?lb|pound[- ]f|lbf?[- ]f|inch[- ]p|in[- ]?lb)"

# Categories of IEC 61010 (from memory) in their own figures.
_CATEGORIES = {"2": "ii", "3": "iii", "4": "iv"}

MEASURING: list[Pattern] = [
    (r"(\bthread (?:pitch )?gau?ges?\b.*)\bbsp\b", r"\1whitworth"),
    (r"\bbsp (thread (?:pitch )?gau?ge)\b", r"whitworth \1"),
    (r"\bcoolant strength tester, optical\b|\boptical coolant strength tester\b", "coolant refractometer"),
    (r"^digital meter, auto[- ]?rang(?:e|ing)\b", "digital multimeter auto ranging"),
    (r"\bvolts to (\d{3,4})$", r"\1 v"),
    (r"^one-to-two-inch (?:mike|mic), but in metric: (\d+) to (\d+)$", r"outside micrometer \1-\2 mm"),
    (r"^thread gauge for bsw threads\b", "whitworth thread pitch gauge"),
    (r"\bstands, a pair good for (\w+) tons? each\b", r"axle stands pair \1 tonne"),
    (r"\b(?:spark ?plug )?gapping coin, ramp\b|\bspark ?plug gapping coin\b", "spark plug gap gauge ramp type"),
    (r"\bair pressure checker\b", "tyre pressure gauge"),
    (r"\bdual[- ]head (?=tyre)", "dual foot "),
    (r"\bscrew pitch leaves\b", "thread pitch gauge"),
    (r"^leaves for setting clearances?\b", "feeler gauge"),
    (r"\bpoint[- ]and[- ]shoot temperature gun\b", "infrared thermometer"),
    (r"\b(?:12|6|24) volt circuit probe with (?:an? )?bulb\b", "test light 12 volt"),
    (r"\bmicrometer for outside\b", "outside micrometer"),
    (r"(\bcompression tester .*?)\b14 ?(?:&|and|\+|/) ?18 ?mm\b", r"\g<1>14 mm 18 mm"),
    (r"\bgauge (?:to check|for checking|for) t[iy]re pressures?\b", "tyre pressure gauge"),
    (r"\bpreset (?:lug|wheel ?nut) wrench\b", "preset torque wrench"),
    (r"\(d\.c\.\)|\bd\.c\.", "dc"),
    (r"\(a\.c\.\)|\ba\.c\.(?= clamp| volt)", "ac"),
    (r"(\bt[iy]re (?:pressure )?gauge),? (0-(?:60|100|120|150|160))$", r"\1 \2 psi"),
    (r"\b(?:coolant|anti-?freeze) freez(?:e|ing)[- ]point (?:tester|checker|meter)\b", "coolant refractometer"),
    (r"^(?=.*\btape measure\b)(.*?)\b25 ?mm x (?=\d)", r"\g<1>1 in x "),
    (r"\b12 ?v ?/ ?24 ?v\b", "12/24v"),
    # "Check the diesel compression with a gauge": which engine tells which gauge.
    (r"^((?:compression )?(?:tester|gauge)\b.*?); on (.*?)\b(diesel|petrol) (?=compression\b)", r"\3 \1; on \2"),
    (r"\b(?:two|2|twin|double)[- ]pole tester\b", "two pole voltage tester"),
    (r"(\bfeeler\b[^\d]*), (?:in )?thou$", r"\1, inch"),
    (r"^(?=.*\btest (?:lamp|light)\b)(.*?)(?<![\d.])(6|12)/(12|24)(?: ?v(?:olts?)?)?(?=$|[ ,])", r"\1\2-\3 v"),
    (r"(\bfeelers?\b.*?)\bimp(?:l)?\b\.?", r"\1inch"),
    (r"\bun(?:-form|ified)? threads?\b(?! ?ed)", "unified thread"),
    (
        r"^in(?:ch)?[- ](?:lb|pound)s? clicker,? (1/4|3/8|1/2)(?: dr| drive)?,? (\d+ ?- ?\d+)$",
        r"click torque wrench \1 drive \2 in-lb",
    ),
    (
        r"^(?:ft|foot)[- ](?:lb|pound)s? clicker,? (1/4|3/8|1/2|3/4)(?: dr| drive)?,? (\d+ ?- ?\d+)$",
        r"click torque wrench \1 drive \2 ft-lb",
    ),
    (r"(\btorque wr(?:ench)?\b.*?)\bmicrometer(?: (?:type|style|adjust\w*))?\b", r"\1click"),
    (r"\bmicrometer (?:type |style )?(?=torque wr)", "click "),
    (
        r"(\btorque wr(?:ench)?\b.*?)\b(?:with (?:an? )?|round )?dial (?:indicator|gauge|readout|reading)(?: type)?\b",
        r"\1dial",
    ),
    (r"(\btorque wr(?:ench)?\b.*?)\bround dial\b", r"\1dial"),
    (
        r"(\btorque wr(?:ench)?\b.*?)\b(?:with (?:an? )?)?(?:lcd|led|digital) (?:display|readout|screen)\b",
        r"\1electronic",
    ),
    (r"(\btorque wr(?:ench)?\b.*?)\belectr\b\.?", r"\1electronic"),
    (
        r"(\btorque wr(?:ench)?\b.*?)\b(?:deflect(?:ion|ing) beam|beam (?:and|with|w/) pointer|bending (?:bar|beam))\b",
        r"\1beam",
    ),
    (r"\bdial clock\b", "dial gauge"),
    (r"\bmagnet(?:ic)? stand\b", "magnetic base"),
    (r"\binsul(?:ation)? (?:tstr|tester)\b(.*?)(?<!/)(?<!/ )\b1000 ?v\b", r"insulation tester\g<1>1000 vdc"),
    (r"^(?=.*\b(?:voltage|volt) (?:tester|detector)\b)(.*?), 1000 ?v(?:olts?)?$", r"\1, rated 1000 vac"),
    (r"\bangle gauge,? (?=(?:half|1/2|3/8|three[- ]eighths?)\b)", "torque angle gauge "),
    (
        r"\bcat(?:egory|\.)? ?([234])\b(?=.*(?:\dk?v\b|\d k?v\b|volt|meter|tester))",
        lambda found: f"cat {_CATEGORIES[found[1]]}",
    ),
    (r"\btiming light with (?:an? )?inductive pick-?up\b", "inductive timing light"),
    (
        r"\b(?:two|2|dual)[- ]?(?:ch(?:an(?:nel)?)?s?|trace)\b(?=.*scope)|(?<=scope) (?:two|2|dual)"
        r"[- ]?(?:ch(?:an(?:nel)?)?s?|trace)\b",
        " twochannel ",
    ),
    (r"(\b(?:oscillo)?scope\b.*?)\b(?:two|2|dual)[- ]?(?:ch(?:an(?:nel)?)?s?|trace)\b", r"\1twochannel "),
    (r"\b(?:four|4)[- ]?ch(?:an(?:nel)?)?s?\b(?=.*scope)", " fourchannel "),
    (r"(\b(?:oscillo)?scope\b.*?)\b(?:four|4)[- ]?ch(?:an(?:nel)?)?s?\b", r"\1fourchannel "),
    (r"\bminus (\d+) (?=to (?:plus )?\d+ ?(?:deg|c\b))", r"-\1 "),
    (r"\bdisc run-?out, (?=dial\b)|^check (?:the )?(?:brake )?disc run-?out(?: with)?,? ", ""),
    (
        r"(\bdial (?:test )?(?:indicator|gauge|clock)\b.*?),? (?:for )?(?:hub|rotor|(?:brake )?disc)"
        r" run-?out(?:,? limit [\d.]+ ?mm)?$",
        r"\1",
    ),
    (r"\bgauge for (?:checking |measuring )?(?:the )?tread (?:depth )?on (?:the )?tyres?\b", "tyre tread depth gauge"),
    (r"\bsmoke leak tester\b", "smoke machine"),
    (r"^(?=.*\bga(?:u)?ge\b)(.*\bm\d{1,2}\b.*?)\b([4-7])([gh])\b(?! ?mm)", r"\1class\3\2"),
    (
        r"(\b(?:t(?:or)?que?|trq) ?wr(?:ench)?\b.*?)\b(?:ratchet(?:ing)? head|reversible ratchet(?: head)?)\b",
        r"\1ratchethead",
    ),
    (r"\bclick[- ]release\b", "click"),
    (
        r"(?<![\d.])(\d+(?:\.\d+)?) ?n[.·]?m ?(?:-|–|/|to) ?(\d+(?:\.\d+)?) ?n[.·]?m\b",
        r"\1-\2 nm",
    ),
    (r"^(?=.*\bt(?:or)?q(?:ue?)?\b|.*\btrq)(.*?\d) ?n/m\b", r"\1 nm"),
    (r"^(?=.*\bfeeler)(.*?),? in (?:an? )?holder$", r"\1"),
    (r"^(?=.*\bfeeler)(.*?)\b(\d) hundredths(?: of a mm| mm)? to\b", r"\g<1>0.0\2 to"),
    (
        r"^(?=.*\bfeeler)(?=.*\bmet(?:ric)?\b)(.*?)(?<![\d.])(0?\.\d+)/(\d\.\d+)$",
        r"\1\2-\3 mm",
    ),
    (
        r"(\b(?:calipers?|callipers?|micrometer|torque wrench|gauge)\b.*?)\b(?:(?:with |w/ ?|w\. ?)(?:an? )?)?"
        r"digital read-?out\b",
        r"\1digital",
    ),
    (r"^(?=.*\b(?:calipers?|callipers?)\b)(.*?) (100|150|200|300) (?=0?\.0\d+ ?mm\b)", r"\1 \2 mm "),
    (r"(\d ?mm) (?:res(?:olution)?|div(?:ision)?s?)\b\.?", r"\1 graduation"),
    (r"^(?!.*(?:\bin\b|\binch|\"))(.*\d ?mm\b.*?) (0?\.0\d+) (?:div|grad)s?\b\.?", r"\1 \2 mm graduation"),
    (
        r"^(?=.*\b(?:micrometer|microm|mic|mike)\b)(.*?)\b(0|25|50|75)/(25|50|75|100) ?mm\b",
        r"\1\2-\3 mm",
    ),
    (
        r"^(?=.*\b(?:dial|clock|dti|indicator)\b)(.*?\b0 ?[-–] ?\d+ ?mm) ?/ ?(0?\.0\d+)(?: ?mm)?\b",
        r"\1, \2 mm graduation",
    ),
    (r"(\b(?:dial|clock|dti|plunger)\b.*?\d ?mm) trav(?:el)?\b\.?", r"\1 travel"),
    (r"\b(?:lbf?|pounds?)(?: ?/ ?| per )(?:sq(?:uare)?\.? ?in(?:ch)?|in2|in²)(?!\w)\.?", "psi"),
    (r"^(?=.*\bt[iy]re\b)(?=.*\b(?:gauge|gage|ga)\b)(.*?\d) ?(?:pounds|lbs?)\b", r"\1 psi"),
    (
        r"^(?=.*\bt[iy]re\b)(?=.*\b(?:gauge|gage|ga)\b)(.*?)\b(?:round (?:dial|clock)(?: (?:type|face))?|dial face)\b",
        r"\1dial",
    ),
    (r"(\bt[iy]re )pres\b\.?", r"\1pressure"),
    (r"\bspark[- ]?ign(?:ition)?\b\.?", "petrol"),
    (r"\bdmms?\b", "digital multimeter"),
    (r"(\bcat \w+),? three hundred volts?\b", r"\1 300v"),
    (r"(\bcat \w+),? six hundred volts?\b", r"\1 600v"),
    (r"\ba/rang(?:e|ing)\b", "auto range"),
    (r"\bdia(?:meter)?\.? ?(\d+\.\d+) ?mm\b", r"\1 mm dia"),
    (r"\bmanual(?:ly)?[- ]rang(?:e|ing)\b", "manualranging"),
    (r"\balligator\b", "crocodile"),
    (
        r"^(?=.*\bleads?\b)(?=.*\bcroc)(.*?)\b(4|four) ?(?:mm|mil) (?:banana )?plugs?\b",
        r"\g<1>4 mm banana",
    ),
    (
        r"\b(red (?:and|\+|&) black|black (?:and|\+|&) red) leads\b(?=.*\bbanana\b)(?=.*\bcroc)",
        r"\1 test leads",
    ),
    (r"\bcroc(?:odile)? clips? lead\b", "crocodile test lead"),
    (r"\bin (inch|foot)[- ]pounds,? (\d{1,3}) to (\d{2,3})\b", r"\2-\3 \1 pounds"),
    (
        r"^(fixed|preset|click|dial|beam|digital|electronic) (?=\d+(?:[ -]+\d+)? ?(?:nm|n\.?m|ft-?lbs?|in-?lbs?)\b)",
        r"\1 torque wrench ",
    ),
    (r"^(1/4|3/8|1/2|3/4|1) (click|dial|beam) (?=\d{1,3}-\d{2,3}$)", r"\2 torque wrench \1 drive "),
    (r"(\bcat ?(?:iii|ii|iv|[234]) ?)(300|600|1000)$", r"\1\2 v"),
    (r"\bo/s (?=(?:mikes?|mics?|micrometers?|micromters?)\b)", "outside "),
    (r"\bi/s (?=(?:mikes?|mics?|micrometers?)\b)", "inside "),
    (
        r"^(?=.*\b(?:calipers?|callipers?|micrometer|mike|mic|gauge|torque|multimeter|vernier|dti)\b)"
        r"(.*?),? cal(?:'?d|ibrated)?\.? (?:0[1-9]|1[0-2])/(?:20)?[2-4]\d$",
        r"\1",
    ),
    (r"^(?=.*\bdigital\b)(?=.*\b(?:calipers?|callipers?|verniers?)\b)(.*?)\belectronic\b,? ?", r"\1"),
    (r"(?<=\d) ?(mm|in|\") thru (?=\d)", r" \1 to "),
    (
        r"\b(feelers?|feeler gauges?) (?:blades|leaves),? (\d{1,2}|ten|thirteen|fifteen|seventeen|twenty|"
        r"twenty[- ](?:two|five|six|eight)|thirty[- ]two),(?= )",
        r"\1 \2 blades,",
    ),
    (
        r"^(?=.*\btest(?:er)? (?:lamp|light|lapm)\b|.*\bcircuit tester\b)(.*?)\b6 ?v? ?/ ?12 ?v? ?/ ?24(?= ?v)",
        r"\g<1>6-24",
    ),
    (
        r"^(test (?:light|lamp)\b[^,]*?\d ?v(?:olts?|dc| dc)?),? (?:with |w/ ?)?(?:an? )?croc(?:odile)? clip$",
        r"\1 with crocodile clip",
    ),
    (r"\bcct (?=test)", "circuit "),
    (r"\blapm\b", "lamp"),
    (r"\b(\d(?:\.\d+)?)\" ?- ?(\d(?:\.\d+)?)\" ?/ ?(\d{2,3} ?- ?\d{2,3}) ?mm\b", r"\1-\2 in (\3 mm)"),
    (r"\btwo[- ](twenty|fifty|forty)\b(?=[- ](?:foot|ft|inch|in[- .]?lb|newton|nm\b|pound|lb))", r"two hundred and \1"),
    (
        r"\b(inch|foot)[- ](?:pounds?|lbs?) torque wrench\b(.*?)\b(\d{1,3}) ?(?:to|-) ?(\d{1,3})$",
        r"torque wrench\2\3-\4 \1 pounds",
    ),
    (r"\bpointer \(beam\)|\bbeam \(pointer\)|\bpointer(?: type)? beam\b", "beam"),
    (
        r"^(?!.*\b(?:cordless|electric|battery|air|pneumatic|impact|drill|\d+ ?v)\b)(.*?)"
        r"\bscrewdriver,? (?:with )?(?:an? )?(?:adjustable |settable )?torque[- ]limiting\b",
        r"\1torque screwdriver",
    ),
    (
        r"^(?!.*\b(?:cordless|electric|battery|air|pneumatic|impact|drill|\d+ ?v)\b)(.*?)"
        r"\bscrewdriver with (?:an? )?(?:settable|adjustable|variable) torque\b",
        r"\1adjustable torque screwdriver",
    ),
    (
        r"^(?=.*\b(?:torque (?:screw ?)?driver|torque s/driver|screwdriver,? torque)\b)(.*?)"
        r"\b(1/4|quarter)(?:[- ]inch|[- ]in\b\.?| ?\")? (?:int(?:ernal)? )?hex(?:agon)? (?:bit (?:socket|holder)|"
        r"bits?|socket)\b",
        r"\1\2 hex",
    ),
    (
        r"^(?=.*\b(?:torque (?:screw ?)?driver|torque s/driver|screwdriver,? torque)\b)(.*?)"
        r"\bbit holder (?:6\.3|6\.35) ?mm hex\b",
        r"\1 1/4 hex",
    ),
    (
        r"(\btorque (?:screw ?)?driver\b|\btorque s/driver\b)(.*?)\b(1/4|quarter)(?:[- ]inch|[- ]in\b\.?| ?\")? int"
        r"(?:ernal)? hex\b",
        r"\1\2\3 hex",
    ),
    (r"(\btorque (?:screw ?)?driver\b) and (?:an? )?(?=(?:1/4|quarter)\S*(?: in\.?)? hex\b)", r"\1 "),
    (r"\bdial test clock\b", "dial test indicator"),
    (r"\b(dial (?:test )?(?:indicator|gauge)\b.*?) in hundredths\b", r"\1 0.01 mm"),
    (
        r"\b(?:oh|nought|naught|zero|o) point (?:oh|nought|naught|zero|o) (one|two|three|four|five|six|seven|"
        r"eight|nine)\b",
        lambda found: f"0.0{in_digits(found[1])}",
    ),
    (r"^(?=.*\b(?:feeler|thickness ga))(.*?)\b(\d\d) ?bl\b\.?", r"\1\2 blades"),
    (
        r"^(?=.*\bfeelers?\b)(?=.*\d[- ]?(?:blade|leaf|leaves|bl\b))(.*?)(?<![\d.])(0?\.\d+)/(\d\.\d+) ?mm\b",
        r"\1\2-\3 mm",
    ),
    (r"^(?=.*\bcall?ipers?\b)(.*?)\blcd\b", r"\1digital"),
    (r"\b(?:that does )?(?:dc as well as ac|ac as well as dc|both ac and dc|both dc and ac)\b", "ac/dc"),
    (r"\b(\w+) to (\w+) square mil\b", r"\1 to \2 sqmm"),
    (r"\bhalf to (?=\w+ sqmm)", "0.5 to "),
    (r"^(?=.*\bcomp(?:r?ess?ion|\b))(?=.*\b(?:tester|gauge)\b)(.*?)\b(?:14|fourteen) ?(?:mm|mil)\b", r"\1m14"),
    (
        r"^(?=.*\bcomp(?:r?ess?i?on|\b))(?=.*\b(?:tester|gauge)\b)(?=.*\bm1[0248]\b)(.*?),? ?\bscrew[- ]?in\b"
        r"(?: type)?",
        r"\1",
    ),
    (
        r"^((?:dti|dial (?:test )?(?:ind(?:icator)?\.?|gauge)|clock gauge)(?!\w).*\d.*?),? (?<!with )"
        r"(mag(?:netic)?\.? (?:base|stand))\b",
        r"\1 with \2",
    ),
    (r"(\b(?:dial gauge|clock gauge|dti|dial indicator)\b.*?),? (?:in )?hundredths\b", r"\1, 0.01 mm"),
    (r"\bcontactless\b", "non contact"),
    (r"(\b(?:thermometer|temperature gun)\b.*?\bup to \d{2,3}) degrees\b(?! ?[cf]\b)", r"\1 c"),
    (r"\bself[- ]ranging\b", "auto range"),
    (
        r"^(electronic|digital|click|dial|beam)(?: (?:w/?|with) angle)?,? "
        r"(?!.*\b(?:wrench|(?:screw)?driver|scdr|s/d|tq|torque|tester|gauge|caliper|scale|adapter|meter)\b)"
        r"(?=.*\d ?(?:nm|n\.m|ft-?lb|in-?lb)\b)",
        r"\1 torque wrench ",
    ),
    (
        r"\b(?:4 ?(?:in\b|\") ?/ ?(100)|6 ?(?:in\b|\") ?/ ?(150)|8 ?(?:in\b|\") ?/ ?(200)|12 ?(?:in\b|\")"
        r" ?/ ?(300))(?: ?mm)?\b",
        r"\1\2\3\4 mm",
    ),
    (r"\bpounds per square inch\b", "psi"),
    (r"(-\d+) ?c? ?(?:to|/) ?\+ ?(?=\d+ ?(?:deg ?)?c\b)", r"\1 to "),
    (r"^(?=.*\bvoltage (?:detector|tester|indicator)\b)(.*?),? \bac ?/ ?dc\b", r"\1"),
    (r"\bclock gauge\b", "dial gauge"),
    (r"\bdigital display\b", "digital"),
    (r"\bclock[- ]face\b", "dial"),
    (r"\btong (?:ammeter|tester)\b", "clamp meter"),
    (r"\bvolt[- ]ohm meter\b", "multimeter"),
    (r"\bcategory (three|four|two|iii|iv|ii|[234])\b", r"cat \1"),
    (r"\bfrom (\w+) up to (?=\w+ ?(?:nm|n\.m|ft|in-?lb|lb|newton))", r"\1 to "),
    (r"\bsingle[- ](?:setting|value) (?=.*torque wrench)", "preset "),
    (r"\b(\w+) square (?:mm|millimet(?:re|er)s?)\b", r"\1 sqmm"),
    (r"\bcylinder pressure tester\b", "compression tester"),
    (r"\b(?:sliding|slide) caliper\b", "caliper"),
    (r"\bgauge,? ?press\b(?!ure)", "pressure gauge"),
    (
        r"^(?=.*\b(?:vernier|vern|calipers?|micrometer|mic)\b)(.*?)\bdual (?:grad(?:uation|uated)?s?|scales?|"
        r"units?|marked|readings?)\b\.?",
        r"\1 bothscales",
    ),
    (
        r"^(?=.*\b(?:vernier|calipers?|micrometer)\b)(.*?)\b(?:with )?both (?:scales?|units?|"
        r"systems?|graduations?)\b",
        r"\1 bothscales",
    ),
    (
        r"\b(?:mag(?:netic)? )?(stand|base|holder|handle|adapt[eo]r|case|leads?|batter(?:y|ies)|charger|"
        r"lance|nozzle|hose|sleeve|key|face)s? "
        r"(?:is |are )?not (?:incl(?:uded)?\b\.?|supplied|present|here|with it)",
        r"without \1",
    ),
    (r",? \bwith (?:the |an? )?engine (?:cold|hot|warm|off|running|idling)\b", ""),
    (r"\bthat (?:can be |is )?sets? (?:to |at )?(?=\d+(?:\.\d+)? ?(?:nm|n\.m|ft|in-?lb|lb))", ""),
    (r"\b(mic|micrometer)\b(\D*?)\b(\d{1,3})/(\d{1,3}) ?(?=mm\b)", r"\1\2 \3-\4 "),
    (r"^(?=.*\bmultiplier\b)(.*?)(?:\bratio )?\b1 ?: ?(\d{1,3})\b", r"\1 ratio\2 "),
    (r"^(?=.*\b(?:terminal|lug|cable|ferrule|wire|crimp\w*)s?\b)(.*?\d) ?sq\b(?! ?(?:dr|drive|mm|m))", r"\1 sqmm"),
    (r"\b(\d{2}) ?mm (?:spark )?plug (?:thread|adapt[eo]r)\b", r"m\1 adapter"),
    (
        r"\b(coolant|cooling|radiator|rad|cyl|fuel|oil) (?:system )?press\.? (?=(?:tester|tstr|test|gauge)\b)",
        r"\1 pressure ",
    ),
    (r"\bunc ?(?:/|and|&|\+)? ?unf(?= .*\bgauge\b)|(?<=gauge for )unc ?(?:/|and|&|\+)? ?unf\b", "inch"),
    (
        r"^(?=.*(?:\bnm\b|n\.m|\dnm\b|in-?lb|ft-?lb|\bclick\b|\bbeam\b|\bdial\b|\bpreset\b))(.*?)\btw\b",
        r"\1torque wrench",
    ),
    (r"\bwheel ?nut wrench\b(?=.*\d ?(?:nm|n\.m|ft-?lb))", "torque wrench"),
    (
        rf"\b(?:one )?half (?:of )?(?:an? )?(?={_TORQUE_UNIT})",
        "0.5 ",
    ),
    (
        rf"\b(?:a |one )?quarter (?:of )?(?:an? )?(?={_TORQUE_UNIT})",
        "0.25 ",
    ),
    (
        r"^(?=.*\b(?:vernier|calipers?|micrometer)\b)(.*?)\b(?:with )?(?:both )?(?:dual )?"
        r"(?:mm|metric|cm|millimet\w+) ?(?:and|/|&|\+|or) ?(?:inch(?:es)?|imperial|in)\b(?: scales?| graduations?)?",
        r"\1 bothscales",
    ),
    (r"\b(mic|micrometer|(?:circlip|retaining ring|snap[- ]?ring)\b.*?) (\d{1,3})/(\d{1,3}) ?(?=mm\b)", r"\1 \2-\3 "),
    (
        r"\bpressure[- ]?(?:limit(?:ed|ing)|reduc(?:ed|ing)|relief|safe)\b(?=.*\b(?:tip|nozzle|gun)\b)|"
        r"\b(?:limited|reduced) pressure\b(?=.*\b(?:tip|nozzle|gun)\b)",
        "pressurelimited",
    ),
    (
        r"^(?=.*(?:nm|n\.m|lbs?\b|newton))(.*?)\b(beam|click|dial)(?: type)? wrench\b",
        r"\1\2 torque wrench",
    ),
    (
        r"^(dial|beam|click|digital|electronic) (?=(?:\d/\d) ?(?:dr|drive|sq)\b.*(?:in-lb|ft-lb|nm|n\.m))",
        r"\1 torque wrench ",
    ),
    (r"\bpointer[- ]and[- ]beam\b|\bdeflecting[- ]beam\b", "beam"),
    (r"\bnon[- ]graduated (?:\(preset\) )?(?=wrench)", "non-graduated torque "),
    (
        r"\b(beam|click|dial|electronic)(?: type)?(?: \([a-z ]+\))? wrench\b(?=.*(?:nm|n\.m|lb|newton))",
        r"\1 torque wrench",
    ),
    (r"\bcategory ([1-4])\b", r"cat \1"),
    (r"\b(\d+) up to (?=\d)", r"\1-"),
    (r"\binch feelers?\b(?: for [a-z ]+)?,? 0?(\.\d+)", r"feeler gauge \1 in"),
    (r"\b0 ?(?:-|to) ?360 ?deg(?:rees)?\b", ""),
    (r"\b2 probe\b(?=.*\bv)", "two pole"),
    (r"(\b(?:micrometer|mic)\b.*)\b(\d{1,3})/(\d{2,3})\b(?! ?in)", r"\1\2-\3"),
    (
        r"(\bdrills?\b.*)\b(\d+)(?: ?mm)?(?:-| to )(\d+)(?: ?mm)? ?x ?0?(\.\d+)(?: ?mm)?(?: ?steps)?\b",
        r"\1\2-\3 mm in 0\4 mm steps",
    ),
    (r"\b(\d+)-(\d+) ?x ?0?(\.\d+) ?mm\b", r"\1-\2 mm , 0\3 mm"),
    (r"\btorque meter wrench\b", "torque wrench"),
    (
        r"^(?=.*(?:\btorque|\btw\b))(.*?)\b(?:measuring )?(?:anti-?|counter-?)clockwise(?: as well| too| also)?\b",
        r"\1twoway",
    ),
    (
        r"^(?=.*(?:\btorque|\btw\b))(.*?)\b(?:clockwise and twoway|both (?:directions|ways)|bi-?directional|two[- ]way"
        r"|cw(?: ?[/&+] ?| and )ccw)\b",
        r"\1twoway",
    ),
    (r"\bamperes?\b", "amp"),
    (r"\balternating and direct current\b", "ac/dc"),
    (r"\balternating current\b(?: only)?", "ac"),
    (r"\bdirect current\b", "dc"),
    (r"\btrue root[- ]mean[- ]square\b", "true rms"),
    (r"\bcategory (?=i{1,3}v?\b)", "cat "),
    (r"\btw\b(?=.*(?:\bdr\b|\bdrive\b|nm\b|n\.m|lb))", "torque wrench"),
    (r"(?<!set )\b(9\d(?:\.\d+)?) ?pc\b(?!.*\bset\b)", r"\1 %"),
    (r"\b(fault )?code reader,? (.*)\b16[- ]?pin\b", r"\1code reader \2"),
    (r"\bcat(?=i{1,3}v?\b)", "cat "),
    (r"\bcat three\b", "cat iii"),
    (r"\bcat two\b", "cat ii"),
    (r"\bcat four\b", "cat iv"),
    (r"\bclicking\b", "click"),
    (r"(\bclamp\b.*\b(?:dc|ac|amps?)\b[^\d]*)\b(\d{2,4})$", r"\1\2 a"),
    (r"(\bcrimp\w*\b.*?)\b(\d\d)-(\d\d)\b(?! ?(?:mm|awg))", r"\1\2-\3 awg"),
    (
        r"(\binsulation (?:\w+ )?(?:tester|meter)\b.*)(?<!/)(?<!/ )\b1000 ?v(?:olts?)?\b",
        r"\g<1>1000 vdc",
    ),  # its own voltage
    (r"(\btread\b.*?)(?:,? in)? (?:32nds?|thirty[- ]seconds?)$", r"\1"),
    (r"\btw (?=click|dial|beam|electronic|preset)", "torque wrench "),
    (r"(\btorque\b.*)\bleft (?:and|n|/|\+) right(?:[- ]hand(?:ed)?)?\b", r"\1"),
    (  # a caliper, 150/6"
        r"\b(?:(100) ?/ ?4|(150) ?/ ?6|(200) ?/ ?8|(250) ?/ ?10|(300) ?/ ?12)(?:\"|''| ?in\b)",
        r"\1\2\3\4\5 mm",
    ),
    (r"^(?=.*\b(?:voltage|volt)\b)(.*?)\b(?:two|2)[- ]?poles?\b", r"\1pole"),  # of a voltage tester
    (r"\bmagnetic base (dial (?:gauge|indicator))\b", r"\1 with magnetic base"),
    (
        r"\b(\d+) mm or (?:longer|more|larger)\b(?=.*caliper)|(?<=caliper, )(\d+) mm or (?:longer|more|larger)\b",
        r"0-\1\2 mm",
    ),
    (r"(?<=mm) or (?:longer|more|larger|over)\b", ""),
    (r"\b(\d{1,2}) ?teeth per inch\b", r"\1 tpi"),
    (r"\bv[- ]?notch(?:ed)?\b", "vnotch"),
    (r"(?<=feeler)(.*)\bstraight blades?\b", r"\1straight"),
    (
        r"\btaper(?:ed)? 60 ?deg(?:rees?)?\b|\b60 ?deg(?:rees?)? taper(?:ed)?\b",
        "taper",
    ),
    (r"\b(\d{2,4}) ?v ?/ ?(?=\d{3,4} ?v\b)", r"\1/"),
    (r"\bin (?:half|0?\.5)[ -](?:millimetres?|millimeters?|mm|mil) steps\b", "in 0.5 mm steps"),
    (r"\b(maf|o2|oxy|lambda|air ?flow) sens\b", r"\1 sensor"),
    (r"\b(?:insulation|insul|megger)(.*?)(\d+) to (?=\d+ ?v\b)", r"insulation\1\2-"),
    (r"\b(mic|micrometer|mike),? o/s\b", r"\1 outside"),
    (r"\bin thou(?:sandths?)?\b", "inch"),
    (r"\bin 0?\.\d+ ?mm (?:steps|increments)\b", " "),
    (r"\b(compress\w*\b.*)\b(10|12|14|18) ?mm (?=adapt|adptr?)", r"\1m\2 "),
    (r"\bcal(?=,? (?:vern|dig|dial)[a-z]*\b)", "caliper"),
    (r"\bdial,? ind\b", "dial indicator"),
    (r"\b(?:inch|in|foot|ft)[- /.]?(?:pounds?|lbs?) (?=wrench|spanner|driver\b)", "torque "),
    (r"(?<=mm) ?x ?(?=0?\.0\d+)", " , "),  # 25-50mm x 0.01
    (r"\b(tester|tstr|gauge|gge|ga),? press\b", r"\1 pressure"),
    (r"\btherm(?=,? (?:i/?r|infra))|(?<=ir )therm\b|(?<=i/r )therm\b", "thermometer"),
    (r"\bi/r\b", "infrared"),
    (r"\bga(?=,? (?:feel|flr|thk|press|tyre|tire|vac|comp|oil|dial|depth|bore|angle)[a-z]*\b)", "gauge"),
    (r"\bgauge,? feel\b", "gauge feeler"),
    (r"\bac ?(?:/|and|\+|&|-)? ?dc\b|\bdc ?(?:/|and|\+|&|-)? ?ac\b", "acdc"),
    (r"\bac[ -]?only\b|\bonly ac\b", "aconly"),
    (
        (r"(?<!\d )(?<!\d)(?<!\d-)\b(?:inch|foot|in|ft)[- ]?(?:pounds?|lbs?) (?=torque|tq|click|wrench|dial|beam)"),
        "",
    ),
    (r"\b(hi|high|lo|low|oil|fuel|tyre|tire|system|sys) press\b", r"\1 pressure"),
    (r"\bpress(?= (?:ga|gauge|gage|tester|test|tstr)\b)", "pressure"),
    (
        (
            r"\b(?:reading |reads |scaled? |marked |graduated )?in "
            r"(?:n\.?m|ft[- ./]?lbs?|lbf?[- ./]?ft|newton met(?:re|er)s)\b(?!\.?\d)"
        ),
        " ",
    ),
    (r"\bt/w\b", "torque wrench"),
    (r"\bup to (\d+) ?(n\.?m|nm|ft-?lbs?|in-?lbs?),? (?:and )?from (\d+)$", r"\3-\1 \2"),
    (r"\b(\d+)/(\d+) volts?\b", r"\1/\2v"),
    (r"\b([oi])/d\b", r"\1d"),
]
