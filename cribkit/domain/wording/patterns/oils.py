"""Oils, fluids and coolants by grade."""

from __future__ import annotations

from cribkit.domain.wording.patterns.pattern import Pattern

OILS: list[Pattern] = [
    (r"\balready[- ](?:mixed|diluted)\b|\bready[- ]to[- ]pour\b", "premixed"),
    (r"\b(85|80|75)[- ](140|90) hypoid\b", r"\1w-\2 hypoid gear oil"),
    (r"^straight (?:thirty|30)(?= for\b|$|,)", "engine oil sae 30"),
    (r"\b(80|85|75)[- ](90|140) gl-?([45])\b", r"\1w-\2 gear oil gl-\3"),
    (r",? ?\bfor (?:an? |the )?(?:box|gearbox|diff) with yellow metal(?: in it)?$", ""),
    (r"\bwet brake tractor back[- ]end oil\b", "tractor transmission oil wet brake"),
    (r",? ?\bmust (?:carry|have|be|meet) (?=api |acea |c[0-9]\b|s[nmp]\b|c[jk]-4)", " "),
    (r"(\b(?:antifreeze|coolant)\b.*?),? ?\bfull[- ]strength\b", r"\1 concentrate"),
    (r"\bfull[- ]strength (?=(?:antifreeze|coolant))", "concentrated "),
    (
        r"\b(5|10|15|20)[- ](20|30|40|50)\b(?=.*\b(?:ck-4|cj-4|ci-4|sn|sp|sm|c3|a3))(?! ?(?:mm|in|nm|ft))",
        r"\1w-\2 engine oil",
    ),
    (r"\b(7[05]w-?[89]0|8[05]w-?(?:90|140)) axle lube\b", r"\1 gear oil"),
    (r"\bdiesel exhaust urea(?: jug)?\b", "diesel exhaust fluid"),
    (r"\b(32|46|68|100) weight hydraulic (?:fluid|oil)\b", r"hydraulic oil iso \1"),
    (r"\bhydraulic (?:fluid|oil) (32|46|68|100) weight\b", r"hydraulic oil iso \1"),
    (r"^(\d{1,2}w-?\d\d) oil jug$", r"\1 engine oil"),
    (r"^(?:iso ?)?vg ?(\d{2,3}) hydraulic$", r"hydraulic oil iso vg \1"),
    (r"\bgood (?:to|for|down to) (\d{2}) below\b", r"-\1 c"),
    (r",? quart$(?<!\d quart)", ", 1 quart"),
    (r"\bquarts\b(?<!\d quarts)", "quart"),
    (r"\bstraight (?=\d\d ?(?:wt|weight)\b)", ""),
    (
        r"\b(10|20|30|40|50) ?(?:wt|weight)\b(?=.*\boil\b)|(?<=oil )(10|20|30|40|50) ?(?:wt|weight)\b",
        lambda m: f"sae {m[1] or m[2]}",
    ),
    (r"\bneat,? not (?:pre-?)?mixed\b", "concentrate"),
    (r"(\bdot ?[345](?:\.1)?\b.*?)\b(?:iso ?4925[, ]*)?cl(?:ass)?\.? ?([3-7])\b", r"\1 class \2"),
    (r"\burea sol(?:n|'n|ution)?\b\.?", "urea solution"),
    (r"\boil,? p/?steer(?:ing)?\b|\bp/?steer(?:ing)? (?=oil|fluid|fld)", "power steering fluid "),
    (r"\burea fluid\b", "urea solution"),
    (
        r"^(?=.*\bdot ?[345])(?!.*\d ?(?:l|ml|lit\w*|qts?|quarts?|gal\w*|oz|pints?)\b)(.*\d) (qt|quart|pint)$",
        r"\1, 1 \2",
    ),
    (r"\bhybrid (?=coolant|antifreeze)", "hoat "),
    (r"\bapi(?=gl ?-?[345])", "api "),
    (r"^(?=.*\b(?:gear|axle|hypoid|diff|transaxle)\b)(.*?)\bg\.? ?l\.?[ /]?([345])\b(?! ?l\b|\.\d)", r"\1gl-\2"),
    (r"^(?=.*\b(?:gear|axle|hypoid|diff|transaxle)\b)(.*?)\bgl/([345])\b", r"\1gl-\2"),
    (
        r"\b(?:spec(?:ification)?|service|serv|category|meets|meeting|quality)"
        r"\.?:? (?=(?:api )?(?:c[fghijk]-?4|s[jlmnp]\b|gl ?-?[345]|dot ?-?[345]))",
        "",
    ),
    (r"\b(c[fghijk]-?4|gl ?-?[345]|dot ?-?[345](?:\.1)?) (?:spec(?:ification)?|service|quality)\b", r"\1"),
    (r"\bapi (?:spec|service|serv|category|cat)\.? (?=(?:c[fghijk]-?4|s[jlmnp]\b|gl))", "api "),
    (r"\bapi(?=c[fghijk]-?4)", "api "),
    (r"\bfmvss ?(?:no\.? ?)?116\b", ""),
    (r"\bdot ?[:/] ?(?=[345])", "dot "),
    (r"\bdot (?:five|5) (?:point|pt) (?:one|1)\b", "dot 5.1"),
    (r"\b((?:[hp]{0,2}|si-?)oat|iat|organic acid|org acid) (?:tech(?:nology|n\.?)?|chemistry|formula|type)\b", r"\1"),
    (r"\bsae ?[-:] ?(?=\d{1,2}w)", "sae "),
    (r"\b(0|5|10|15|20|25|70|75|80|85)w ?- (?=\d{2,3}\b)", r"\1w-"),
    (r"(?<=\dw-\d\d) viscosity\b|(?<=\dw\d\d) viscosity\b|\bviscosity (?=\d{1,2}w)", ""),
    (
        r"^(?=.*\boil\b)(.*?)\b(?:conventional(?: mineral| type)?|conv|minrl|minl|mineral[- ]based?|min[- ]based?)\b",
        r"\1mineral",
    ),
    (r"(?<=\dw-\d\d )min\b\.?(?= |$)|(?<=\dw\d\d )min\b\.?(?= |$)|(?<=oil )min\b\.?(?= \d{1,2}w)", "mineral"),
    (r"\bful(?:l)? ?syn\b", "fully synthetic"),
    (
        r"(\bcoolant\b.*?)\b(?:concentr|full[- ]str(?:ength)?|undil|(?:not|non)[- ]diluted|undiluted)\b",
        r"\1concentrate",
    ),
    (r"(\bcoolant\b.*?)\b(?:pre[- ]?dil(?:uted)?|already (?:mixed|diluted)|(?<!be )(?<!un)diluted)\b", r"\1premixed"),
    (r"\bback axle (?=oil\b)", "axle "),
    (
        r"^(?=.*\b(?:oil|fluid|coolant|antifreeze|degreaser|atf|synthetic|syn|\d{1,2}w-?\d\d)\b)"
        r"(?!.*\d ?(?:l|ml|lit\w*|qts?|quarts?|gal\w*|oz|pints?)\b)(.*[a-z]), (?:a )?(qt|quart|gal|gallon)$",
        r"\1, 1 \2",
    ),
    (
        r"^(?=.*\b(?:oil|fluid|coolant|antifreeze|degreaser|atf|synthetic|syn|\d{1,2}w-?\d\d)\b)"
        r"(?!.*\d ?(?:l|ml|lit\w*|qts?|quarts?|gal\w*|oz|pints?)\b)(.*[a-z]) (qt|quart|gal|gallon)$",
        r"\1, 1 \2",
    ),
    (r"(?<!\d )(?<!\d)\bmin\b(?= (?:grn|green|red|oil|fluid|fld)\b)", "mineral"),
    (r"\bfld trans\b", "transmission fluid"),
    (r"\bpower steering, (mineral|synthetic|green|red)(?: hydraulic)? fluid\b", r"power steering fluid \1"),
    (r"\b(?:fluid|liquid|flowable) grease\b", "semi fluid grease"),
    (
        r"\bjoint(?:ing)? compound (?:for )?(?:water/coolant|coolant|water)(?: connections| joints)?\b",
        "jointing compound water",
    ),
    (r"\b(?:auto(?:matic)? )?transmission fluid,? (?:for )?cvt(?: gear ?box(?:es)?| transmissions?)?\b", "cvt fluid"),
    (r"\bcvt gear ?box (?:fluid|oil)\b", "cvt fluid"),
    (r"(\bsuper ?glue\b.*?)\bthe gel (?:kind|sort|type)\b", r"\1gel"),
    (
        r"\bseventy[- ]five(?: w)?[- ](ninety|eighty|one[- ]forty)\b(?=.*\b(?:gl ?-?[45]|gear|hypoid|axle|diff))",
        r"75w-\1",
    ),
    (r"\b75w-eighty\b", "75w-80"),
    (r"\b75w-one[- ]forty\b", "75w-140"),
    (r"\beighty[- ]five(?: w)?[- ]ninety(?=.*\b(?:gl ?-?[45]|gear|hypoid|axle|diff))", "85w-90"),
    (r"\beighty[- ]five(?: w)?[- ]one[- ]forty(?=.*\b(?:gl ?-?[45]|gear|hypoid|axle|diff))", "85w-140"),
    (r"\bfull[- ]strength (?=.*\b(?:coolant|anti-?freeze)\b)", "concentrated "),
    (r"(\b(?:coolant|anti-?freeze|anti freeze)\b.*?),? (?:do not|don't|never) use neat\b", r"\1, concentrate"),
    (
        r"\b((?:fluid|oil|atf|cvtf))\b (?:at|when at) \d{2}(?: ?(?:-|to) ?\d{2})? ?(?:deg(?:rees?)?)? ?c\b(?! ?flash)",
        r"\1",
    ),
    (r"^p/s fluid,? (?=power steering\b)", "fluid "),
    (r"\bhydraulic (?:fluid|oil) (?=for (?:the |an? )?power steering)", "power steering fluid "),
    (
        r"^(?!.*\b(?:paint|primer|lacquer|enamel|grease|lube|lubricant|rtv|sealant|sealer|cleaner|coating|adhesive|"
        r"silicone|tape|marker|pen|wax|dye|underseal|undercoat|remover|stripper)\b)"
        r"(.*\b(?:matte?|mat|gloss|satin|flat) (?:black|white|silver|grey|gray|red|blue|aluminium)\b.*?)"
        r"\b(?:aerosol|spray can)\b",
        r"\1spray paint",
    ),
    (r"\b(?:auto|automatic)[- ](?:gear)?box (?=(?:fluid|oil)\b)", "atf "),
    (r"\bbearing mount(?:ing)? (?=compound|fluid)", "bearing retaining "),
    (
        r"^(?!.*\b(?:socket|skt|spanner|wrench|key|bit|drill|hose|washers?|o-?rings?|tape|sheet|shim|gloves?|brush|"
        r"thick|wide|long|gap|nozzle|bead|bung|cord|strip)\b)"
        r"(?=.*\b(?:thread ?lock\w*|locking (?:stuff|compound|fluid)|sealant|gasket maker|"
        r"silicone (?:sealant|spray|gasket|lubricant|lube|grease)|rtv|cleaner|"
        r"lubricant|retaining compound|bearing fit|(?:releasing|penetrating) (?:oil|fluid)|aerosol|super ?glue|"
        r"brake fluid)\b)"
        r"(.*?)(?<![\d.] )\b((?:(?:one|two|three|four|five|six) hundred|ten|twenty|twenty-five|fifty|eighty|\d{2,3})) "
        r"mil\b",
        r"\1\2 ml",
    ),
    (r"\b(?:stud|bolt|nut|screw|thread)[- ]lock(?:ing)? (?:stuff|goo|glue)\b", "threadlocker"),
    (r"\b(?:press[- ]fit|bearing fit) retaining (?=adhesive|compound|fluid)", "retaining "),
    (
        r"(?<![\d./-])\b(0|5|10|15|20|25) ?[-/] ?(16|20|30|40|50|60)"
        r"(?= (?:(?:fully|full|semi|part|synthetic|synth|mineral|diesel|petrol)[- ])*(?:engine |motor )oil\b)",
        r"\1w-\2",
    ),
    (
        r"(\b(?:engine|motor) oil,? (?:sae )?)(0|5|10|15|20|25) ?[-/] ?(16|20|30|40|50|60)\b"
        r"(?! ?(?:l\b|lit|mm|ml|kg|pc|deg|c\b))",
        r"\1\2w-\3",
    ),
    (
        r"(?<![\d./-])\b(70|75|80|85) ?/ ?(80|85|90|110|140)\b(?! ?mm)(?=(?: \w+)? oil\b(?! filter| seal| pump)|"
        r".*\b(?:hypoid|gear(?:box)? oil|gl ?-?[45])\b)",
        r"\1w-\2",
    ),
    (
        r"(\bgear(?:box)? oil|\bhypoid(?: gear)?(?: oil)?)(,? )(70|75|80|85) ?/ ?(80|85|90|110|140)\b(?! ?mm)",
        r"\1\2\3w-\4",
    ),
    (
        r"^(?!.*\bfluid\b)(.*?)\bdot[- ]?([345](?:\.1)?),? (?:to bleed|for bleeding) (?:the |an? )?"
        r"(?:clutch|brakes?|hydraulics)\b(?: (?:system|circuit|hydraulics))?",
        r"\1dot \2 brake fluid",
    ),
    (r"^(dot \d(?:\.1)?) x \d$", r"\1"),
    (r"^(?=.*\batf\b|.*transmission fluid)(.*?)\btype (?:3|three)\b", r"\1type iii"),
    (r"\b(?:that|which) (?:stands?|withstands?|resists?|takes?) (?:engine )?oil\b", "oil resistant"),
    (
        r"^((?:\d{1,2}|two|three|four|five|six|ten|twenty|twenty[- ]five)[- ]?(?:l|lit(?:re|er)s?)) of "
        r"(?=\S)(?!.*(?:\boil\b|\d ?w\b|\d ?w-?\d|\b(?:five|ten|fifteen|zero|seventy-five|eighty) w\b))",
        r"\1 ",
    ),  # so much is asked for; of an oil it is what goes in
    (r"\b(?:rtv )?gasket compound\b(?=.*\boil)|(?<=rtv )gasket compound\b", "gasket maker"),
    (r"\bsilicone oil (?=lubricant|spray|lube)", "silicone "),
    (
        r"(\bdot ?[345].*?)\bfor (?:an? |the )?(?:brake |clutch )bleed(?:ing)?\b(?! kit| bottle| tool| unit)",
        r"\1for bleeding",
    ),
    (r"\bstick[- ]shift (?=(?:gear|transmission|trans) ?(?:oil|fluid|lube))", "manual "),
    (r"(\b(?:oil|fluid|lube|trans)\b.*), squeeze bottle$", r"\1, bottle"),
    (r"^(?:oil|fluid), ?(?:gearbox|transmission), ?(?:continuously variable )?\(?cvtf?\)?", "cvt fluid"),
    (
        r"(\b(?:wash|screen ?wash|washer fluid)\b.*?)\bminus (?:(\d{1,2})|(ten)|(twenty)|(thirty))\b(?! ?(?:deg|c\b))",
        r"\1-\2\3\4\5 c",
    ),
    (r"\b(?:twin|double|dual)(?:[- ]barrel)? (?=syringe\b)(?=.*\b(?:epoxy|glue|adhesive|resin)\b)", ""),
    (r"(\b(?:epoxy|glue|adhesive|resin)\b.*)\b(?:twin|double|dual)(?:[- ]barrel)? (?=syringe\b)", r"\1"),
    (
        r"(\b(?:super ?glue|cyanoacrylate|ca glue)\b.*?)\b(?:that |which )?(?:doesn't|does not|won't|will not) "
        r"(?:run|drip|sag)\b",
        r"\1gel",
    ),
    (r"\bbreak (?=fluid|cleaner|clnr|pads?\b|discs?\b|pipes?\b|calipers?\b|hoses?\b|lines?\b)", "brake "),
    (r"^fluid for (?:the |an? )?(.*?) ?\b(?:automatic|auto) (?:gearbox|box|transmission)$", r"atf \1"),
    (r"\bboil(?:ing)? pt\b", "boiling point"),
    (r"(\bcoolant\b.*?)\bhybrid\b(?! oat)", r"\1hoat"),
    (r"\boil[- ]proof\b", "oil resistant"),
    (r"\burea liquid for diesel exhaust treatment\b", "diesel exhaust fluid"),
    (r"\burea (?:soln|solution)\b|\b(?:exhaust )?reagent,? urea\b", "diesel exhaust fluid urea"),
    (r"\boil[- ]res\b\.?", "oil resistant"),
    (r"\boil (?=for (?:an? )?(?:belt[- ]type )?cvt)", "cvt fluid "),
    (r"\boil for (?:an? )?(wet |dry |)(?:twin|dual)[- ]clutch gearbox(?:es)?\b", r"\1dct fluid"),
    (r"(?<!dot)(?<!dot )\b5\.1 brake fluid\b|(?<!dot )\bfive point one brake fluid\b", "dot 5.1 brake fluid"),
    (
        r"\b(?:that |which )?(?:leaves? (?:nothing|no (?:film|residue|trace|oil|deposit)s?)(?: behind)?|"
        r"(?:dries|drying) (?:without (?:a )?(?:residue|film|trace)|residue[- ]free))\b",
        "residue free",
    ),
    (r"\bprop\.? (?=glycol)", "propylene "),
    (r"\bsemi[- ]?fluid\b(?=.*\b(?:000?|double (?:nought|zero|naught))\b)", ""),
    (r"\btrans(?:mission)?\.? fluid,? (?=dct|dual)", "dct fluid "),
    (r"\bdot 5,1 (?=gal|l\b|lit)", "dot 5, 1 "),
    (r"\btrans lube\b", "transmission oil"),
    (r"\bether start(?:ing)? fluid\b", "starting fluid"),
    (r"\bdegreasing (?=concentrate|fluid|liquid|agent)", "degreaser "),
    (
        r"^(?!.*\b(?:seal|gasket|filter|o-?ring|washer|plug|pump|pipe|hose|cooler|switch|cap|tool|ring)s?\b)"
        r"(.*\boil\b.*) for (?:the |an? )?[a-z ]*?(?:van|minibus|flatbed|truck|lorry|engine) ?\d\.\d\b",
        r"\1",
    ),
    (r"(\boil\b.*)\b2 ?t\b", r"\1two stroke"),
    (r"\bauto glass\b", "windscreen"),
    (r"\b(?:brake|clutch) juice\b", "brake fluid"),
    (r"\boil for (?:an? |the )?cvt\b(?: (?:gear)?box| transmission)?", "cvt fluid"),
    (r"\b(?:sae )?j?30 ?r ?(\d{1,2})\b", r"r\1"),  # classes of fuel hose
    (r"\boil,? mtr\b|\bmtr oil\b", "engine oil"),
    (r"\bm/cycle\b|\bm/c(?=.*\boil\b)", "motorcycle"),
    (r"\blow[- ]cond(?:uctivity|uct)?\b|\bnon[- ]conductive(?= coolant)", "lowconductivity"),
    (r"\boil for (?:an? |the )?(?:\d+ ?t )?(?:bottle|trolley|floor|hydraulic) jacks?\b", "jack oil"),
    (r"\boiled (?=gasket|paper)", "oil "),
    (r"\btrolley jack (?=oil)", "jack "),
    (  # ten forty
        r"\b(zero|five|ten|fifteen|twenty)[- ](?=(?:twenty|thirty|forty|fifty|sixty)\b.*\b(?:oil|synth\w*|semi)\b)",
        r"\1 w ",
    ),
    (r"\bep[ -]?(80|90|140)\b(?! ?w)", r"ep sae \1"),  # EP90, of gear oils
    (r"(?<!\d)\b(0|5|10|15|20|25) w[- ](16|20|30|40|50|60)\b", r"\1w-\2"),  # 15 W 40
    (r"\b(?:hdeo|uhpdo?|shpdo?)\b", "heavy duty diesel engine oil"),
    (r"\bglycol(?: ether)?[- ]based (?=brake fluid)", "non silicone "),
    (r"\bliquid (?=grease)", "semi fluid "),
    (r"^(?!.*\b(?:sockets?|skts?|spanners?|wrench(?:es)?|cap|key)\b)(.*\b(?:oil|fluid)\b.*\b\d) pt\b", r"\1 pint"),
    (r"(?<=nlgi 00), ?semi[- ]?fluid\b|(?<=nlgi 000), ?semi[- ]?fluid\b|(?<=nlgi 0), ?semi[- ]?fluid\b", ""),
    (r"\b(?:fld|fluid),? (?:pwr|power|p/s) ?(?:strg|steer|steering)?\b", "power steering fluid"),
    (r"\boil,? gr\b(?=.*\d)", "gear oil"),
    (r"\b2 ?t (?=.*\boil\b)", "two stroke "),
    (r"\b4 ?t (?=.*\boil\b)", "four stroke "),
    (r"(?<=brake fluid )5\.1\b", "dot 5.1"),
    (r"\bp(?:o?we?)?r st(?:ee)?r(?:i?ng|g) fl(?:ui)?d\b", "power steering fluid"),
]
