"""Fluids, oils, greases, cleaners, sealants; what is safe on what, and what a label says is not in it."""

from __future__ import annotations

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

# A class or grade that a label denies: "(not C3)", "DOT 5, not 5.1", "instead of GL-4".
_DENYING = r"(?:not|non|never|nor|instead of|in place of|rather than|except|excl(?:uding)?\.?|without|w/o)"
_FILLER = (
    r"(?:for|suitable|to|meeting|meets|mixable|mix|mixed|with|use|in|approved|compatible|api|acea|the|spec|class|any)"
)
_CODES = r"(?:dot ?\d(?:\.\d)?|gl[- ]?\d|[abe]\d{1,2}|c[1-6]|c[d-k]-?4|s[g-q]|5\.1|atf ?\w+)"

# Harm, as a need says that there must be none, and the words before what must not be harmed.
_HARM = (
    r"(?:strip|harm|attack|damage|hurt|eat|melt|lift|affect|poison|kill|upset|ruin|foul|contaminat|craze|soften|spoil)"
)
_DO_HARM = rf"{_HARM}e?"
_DOING_HARM = rf"{_HARM}ing"
_WHOSE = (
    r"(?:the|any|your|an?|our|oxygen|lambda|o2|air ?flow|maf|hot ?film|hot ?wire|wheel speed|abs|soft|old|painted|bare|"
    r"all) "
)

# What is sprayed, spread or poured, and knows neither left nor right.
_STUFF = (
    r"\b(?:spray|aerosol|aero|cleaner|degreaser|fluid|oil|grease|lube|lubricant|sealant|coolant|anti-?freeze|"
    r"thread ?l\w*|thd ?lkr|anti-?s(?:ei|ie)ze|anti s(?:ei|ie)ze|super ?glue|adhesive|rtv|paste|compound)\b"
)

CHEMICALS = [
    (r"\bcompound,? pipe thread sealing\b", "pipe thread sealant"),
    (
        r"^(?=.*\b(?:oil|fluid|coolant|antifreeze|degreaser|atf|synthetic|syn|\d{1,2}w-?\d\d)\b)"
        r"(?!.*\d ?(?:l|ml|lit\w*|qts?|quarts?|gal\w*|oz|pints?)\b)(.*[a-z]), (?:a )?(qt|quart|gal|gallon)$",
        r"\1, 1 \2",
    ),
    (r"\b(?:alcohol|ipa)[- ]wetted\b|\bpre-?wetted (?:with |in )?(?=(?:isopropyl )?alcohol)", "presaturated alcohol"),
    (r"\b(?:wind)?screen bonder\b", "windscreen adhesive"),
    (
        r"\bsilicone grease for (?:the )?(?:brake )?(?:caliper )?(?:guide |slide |slider )?pins\b",
        "silicone brake grease",
    ),
    (r"\bplain (?=(?:ep ?-?\d )?(?:lithium|grease)\b)", ""),
    (
        r"^(?=.*\b(?:oil|fluid|coolant|antifreeze|degreaser|atf|synthetic|syn|\d{1,2}w-?\d\d)\b)"
        r"(?!.*\d ?(?:l|ml|lit\w*|qts?|quarts?|gal\w*|oz|pints?)\b)(.*[a-z]) (qt|quart|gal|gallon)$",
        r"\1, 1 \2",
    ),
    (r"(?<!\d )(?<!\d)\bmin\b(?= (?:grn|green|red|oil|fluid|fld)\b)", "mineral"),
    (r"\bfld trans\b", "transmission fluid"),
    (r"\bleak[- ]finding\b", "leak detection"),
    (r"\banaer(?:obic)? (?:flange|flg) seal\b", "anaerobic flange sealant"),
    (r"\bpower steering, (mineral|synthetic|green|red)(?: hydraulic)? fluid\b", r"power steering fluid \1"),
    (r"\b(?:fluid|liquid|flowable) grease\b", "semi fluid grease"),
    (
        r"\bjoint(?:ing)? compound (?:for )?(?:water/coolant|coolant|water)(?: connections| joints)?\b",
        "jointing compound water",
    ),
    (r"\bfixing compound(?= .*\b(?:bearings?|sleeves?)\b)", "retaining compound"),
    (r"\b(?:auto(?:matic)? )?transmission fluid,? (?:for )?cvt(?: gear ?box(?:es)?| transmissions?)?\b", "cvt fluid"),
    (r"\bcvt gear ?box (?:fluid|oil)\b", "cvt fluid"),
    (r"\bdry cleaning solvent,? parts washer\b|\bparts? wash(?:er|ing) solvent\b", "parts cleaner solvent"),
    (r"\bsealing compound,? seam\b", "seam sealer"),
    (r"\bdot 5,1 gal\b", "dot 5, 1 gal"),
    (r"\bbrake rubber silicone grease\b", "silicone grease brake rubber"),
    (r"(\bsuper ?glue\b.*?)\bthe gel (?:kind|sort|type)\b", r"\1gel"),
    (rf"^(?=.*{_STUFF})(.*?),? \d{{1,3}} ?/ ?(?:case|carton|ctn)$", r"\1"),
    (rf"^(?=.*{_STUFF})(.*?[a-z)]),? (?:x ?)?\d{{1,2}} (?:tub|tin|can|tube|bottle|cartridge|aerosol)s$", r"\1"),
    (rf"^(?=.*{_STUFF})(.*), \d{{1,3}} left$", r"\1"),
    (rf"^any (.*{_STUFF}) left$", r"\1"),
    (
        rf"^(?=.*{_STUFF})(.*?)(?:,? \(| - |, )(?:the )?(?:(?:turbo|weld(?:ing)?|exhaust|gearbox|mower|brake|body|shop|"
        r"paint|tyre|oil|lube|grease|electrical|trim|main|back|top|bottom|flammables?|chemicals?|solvents?|fluids?|"
        r"axle|hub) ){1,2}(?:bench|bay|cage|cabinet|cupboard|locker|stores?|shelf|rack|room)\)?$",
        r"\1",
    ),
    (rf"^(?=.*{_STUFF})(.*?),? (?:in (?:the )?)?fridge(?: door)?$", r"\1"),
    (r", (drum|barrel|keg|bucket|jerrycan) by the (?:gate|door|wall|window|stairs|ramp|pit)$", r", \1"),
    (
        rf"^(?:a )?(?:little )?(?:bit|dab|spot|dollop|blob|smear|touch|splash|squirt) of "
        rf"(?=(?:[a-z]+[- ]){{0,4}}{_STUFF})",
        "",
    ),
    (r",? (?:and )?not the other(?: (?:stuff|one|ones|sort|kind|type|lot))?$", ""),
    (
        r"\b(?:spray|aerosol|stuff|fluid) for cleaning (?:the |an? )?(throttle bod(?:y|ies)|carburett?[eo]rs?|carbs|"
        r"(?:mass air ?-?flow|air ?-?mass|air ?-?flow) (?:meter|sensor)s?|electrical contacts)\b",
        r"\1 cleaner spray",
    ),
    (
        r"(\bcleaner\b.*?),? (?:(?:with|in) )?(?:(?:\w+ (?:to|-) )?\w+ )?(?:short|light|quick) bursts?\b"
        r"(?:,? and (?:leave|let|allow)(?: it)? to dry)?",
        r"\1",
    ),
    (r"\bmass air[- ]?flow meters?\b", "maf sensor"),
    (r"(\b(?:maf|air ?flow|air ?mass|mass air)\b.*\bcleaner\b.*) \(?petrol (?:\+|and|/) diesel\)?", r"\1"),
    (
        r"(\b(?:spray|aerosol|can)\b.*?),? (?:with|w/) ?(?:the |an? )?(?:little |small |thin |red |plastic )?"
        r"(?:extension )?straw\b",
        r"\1",
    ),
    (
        r"(\bsilicone (?:lube|lubricant|spray)\b.*?)(?: - |, )(?:(?:car|door|window|boot|sunroof) )*"
        r"(?:rubbers|weather ?strips?)$",
        r"\1",
    ),
    (
        r"\b(?:for [a-z ]+? )?(?:that|which) (?:must|should|shall|will|can) (?:never|not) "
        r"(?:come (?:out|undone|off|apart)|be (?:undone|removed))(?: again)?\b",
        "permanent",
    ),
    (r"^locker, ?(?:thread|stud|nut|bolt|screw)\b", "threadlocker"),
    (
        r"\b(?:that |which )?(?:wicks|creeps|seeps|runs) in ?to (?:the )?"
        r"(?:(?:already[- ])?(?:tightened|fitted|assembled) [a-z]+|[a-z]+ (?:that are |"
        r"which are )?(?:already )?(?:tightened|fitted|assembled|done up))\b",
        "wicking",
    ),
    (
        r"(\b(?:tape|ptfe)\b.*?),? (?:for |with |in )?(?:two|three|four|five|[2-9]) (?:full |complete )?"
        r"(?:turns|wraps|layers)(?=$|; on )",
        r"\1",
    ),
    (
        r"(\banti[- ]?s(?:ei|ie)ze?\b.*?), (?:for )?((?:stainless|steel|alloy|titanium)(?: steel)?) "
        r"(bolts|studs|fasteners|nuts|threads|fixings|screws)(?=,|$)",
        r"\1 for \2 \3",
    ),
    (r"\bceramic brake (anti[- ]?s(?:ei|ie)ze?\b(?: paste| compound| grease)?)", r"ceramic \1 for brakes"),
    (r"\bassembly (?:paste|compound) ?/ ?(?=anti[- ]?s(?:ei|ie)ze?\b)", ""),
    (
        r"\b(\d+ ?(?:g|gm|gr|grams?|kg|oz)) grease[- ]gun cartridge\b(?=.*\b(?:lithium|moly\w*|calcium|ep)\b)",
        r"\1 grease cartridge",
    ),
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
    (r"\brattle[- ]?cans?\b", "spray can"),
    (
        r"^(?!.*\b(?:paint|primer|lacquer|enamel|grease|lube|lubricant|rtv|sealant|sealer|cleaner|coating|adhesive|"
        r"silicone|tape|marker|pen|wax|dye|underseal|undercoat|remover|stripper)\b)"
        r"(.*\b(?:matte?|mat|gloss|satin|flat) (?:black|white|silver|grey|gray|red|blue|aluminium)\b.*?)"
        r"\b(?:aerosol|spray can)\b",
        r"\1spray paint",
    ),
    (r"\bhalf[- ]a?[- ]?litre\b", "500 ml"),
    (r"\br/mix\b", "ready mixed"),
    (r"\bhalf and half\b", "50/50"),
    (r"\bw/based\b", "water based"),
    (r"\b(?:t|thd|thrd)/lock(?:er)?\b", "threadlocker"),
    (r"\b(thd|thrd|thread) slg\b", "thread seal"),
    (r"(\b\d{1,2}w ?[-/]? ?\d{2}\b.*)\bs ?/ ?s(?:yn(?:th)?)?\b", r"\1semi synthetic"),
    (
        r"(\b(?:tape|ptfe)\b.*?),? (?:two|three|four|five|[2-5]) times,? (?:a?round|about|for) (?:the |an? )?(?:male )?"
        r"(?:thread|fitting|pipe|union)s?\b",
        r"\1",
    ),
    (r"\b(cartridge|tube|tub|tin) of ((?:lithium )?ep ?-?[0-3])$", r"\1 of \2 grease"),
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
        r"(?<=[a-z] )f\. (?=(?:bearings?|bush(?:es)?|brakes?|shafts?|threads?|flanges?|engines?|exhausts?|gaskets?|"
        r"cars?|trucks?)\b)",
        "for ",
    ),
    (r"^(?=.*\b(?:rtv|silicone|silicnoe)\b)(.*?)\bgasket seal(?:ant|er)\b", r"\1gasket maker"),
    (
        r"^(?!.*\b(?:not|non|no) ?-?(?:an? |the )?anaerobic\b)(.*?)\bliquid gasket(?: for (?:the |rigid )?flanges?)?,?"
        r" (?:the )?anaerobic(?: one| sort| kind| type)?\b",
        r"\1anaerobic flange sealant",
    ),
    (r"\b(one|two|three|four|five|\d{1,2})[- ]pound (?=can|tin|tub|pot|jar|pail|bottle)", r"\1 lb "),
    (r"(\bgrease\b(?! gun).*?)(?<!grease )\bgun cartridge\b(?! (?:type|gun|pump|load\w*|tube))", r"\1cartridge"),
    (r"\b((?:lithium|moly|molly|mos2|calcium|complex|polyurea) )#?([0-3]) (?=grease\b)", r"\1nlgi \2 "),
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
    (
        r"^mix (?:the )?(.*?\b(?:concentrated?|neat)\b.*?),? (?:at |in )?(?:50[:/]50|1:1|half and half|one to one|"
        r"in equal parts) with (?:deioni[sz]ed |distilled |demineralised |clean |tap )?water\b.*$",
        r"\1",
    ),
    (r"\bninety[- ]nine point nine\b(?=.*\b(?:ipa|isoprop\w*|alcohol))(?! ?(?:%|per ?cent))", "99.9 %"),
    (r"(\b(?:ipa|isoprop\w*|alcohol)\b.*?)\bninety[- ]nine point nine\b(?! ?(?:%|per ?cent))", r"\1 99.9 %"),
    (r"\b(?:two|three|four|five|six|a few|several|[2-9]) turns of (?=.*\b(?:tape|ptfe)\b)", ""),
    (r"^(dot \d(?:\.1)?) x \d$", r"\1"),
    (r"^(?=.*\batf\b|.*transmission fluid)(.*?)\btype (?:3|three)\b", r"\1type iii"),
    (
        r"^(?:an? )?(?:spray|aerosol) (?:for|to clean) (?:the |an? )?(throttle bod(?:y|ies)|"
        r"mass air ?flow (?:meter|sensor)|air ?mass (?:meter|sensor)|air ?flow (?:meter|sensor)|"
        r"electrical contacts?)\b",
        r"\1 cleaner",
    ),
    (r"\b(nickel|copper|ceramic|aluminium)(?:[- ]based)? (?:compound|paste) against seizing\b", r"\1 anti-seize"),
    (r"\b(?:body )?seam compound\b", "seam sealer"),
    (r"\b(?:that |which )?(?:cures?|curing) without air\b", "anaerobic"),
    (r"\b(?:gasket|flange) compound (?:that |which )?anaerobic\b", "anaerobic flange sealant"),
    (r"\bconsistency (?=[0-3]\b)", "nlgi "),
    (r"\b(?:that|which) (?:stands?|withstands?|resists?|takes?) (?:engine )?oil\b", "oil resistant"),
    (r"(?<=cleaner), certified sensor", ", sensor"),
    (
        r"\b(?:that|which) needs? no mixing\b|\b(?:that|which) (?:is|comes) ready to pour\b|\bneeding no mixing\b",
        "ready mixed",
    ),
    (
        r"\b(?:for|of) (?:an? |the )?diesels? with (?:an? |the )?(?:particle|particulate|soot) filters?\b",
        "low saps diesel",
    ),
    (r"\bthreadlocker (?:that|which)? ?(?:wicks|creeps|runs|gets drawn) into (?:the )?.*$", "threadlocker wicking"),
    (r"^paste (?:to seal|for sealing|for) (?:the )?exhaust (?:joints?|pipes?|clamps?)$", "exhaust assembly paste"),
    (r"\bane(?:a|ae)?robic\b", "anaerobic"),
    (r"(\bgrease\b.*?)\btub\b(?! of)", r"\1tin"),  # a tub is also short for a tube
    (r"\btub of (?=.*\bgrease\b)", "tin of "),
    (r"(\bgrease\b.*\d ?(?:kg|lbs?)) (?:bucket|keg|drum)\b", r"\1 pail"),  # no bucket pins, no brake drums
    (r"^(?:an? )?(?:\d+ ?(?:kg|lbs?) )?(?:bucket|keg|drum) of (?=.*\bgrease\b)", "pail of "),
    (r"(\banaerobic (?:flange )?seal(?:ant|er)),? gasket maker\b", r"\1"),
    (
        r",? (?:that|the|this) [a-z]+ (?:gets|will be|has to be|is to be) welded (?:later|after(?:wards)?|next|soon)\b",
        "",
    ),
    (r"\b(\d{3}) ?(?:deg ?)?c ?[/(] ?\d{3,4} ?(?:deg ?)?f\b\)?", r"\1 c"),  # one temperature in two units
    (r"\bpiant\b", "paint"),
    (r"^(?:an? |one )?lit(?:re|er) of (?=\S)", "1 litre "),
    (
        r"^((?:\d{1,2}|two|three|four|five|six|ten|twenty|twenty[- ]five)[- ]?(?:l|lit(?:re|er)s?)) of "
        r"(?=\S)(?!.*(?:\boil\b|\d ?w\b|\d ?w-?\d|\b(?:five|ten|fifteen|zero|seventy-five|eighty) w\b))",
        r"\1 ",
    ),  # so much is asked for; of an oil it is what goes in
    (r"(^|, )(?:an? )?lit(?:re|er) (?=bottle|can|jug|tin)", r"\1 1 litre "),
    (r"\((?:one|1) (\d+(?:\.\d)? ?lit(?:re|er)) (?:can|bottle|jug|tin)\)", r"(\1)"),
    (r"\b(?:ten|10) mil (?=bottle|of\b)", "10 ml "),
    (
        r"^(?!.*\b(?:socket|skt|spanner|wrench|key|bit|drill|bolt|hose|washers?|seal|gun|tape|sheet|shim)\b)"
        r"(.*\b(?:thread ?lock\w*|sealant|gasket maker|cleaner|lubricant|pipe dope|retaining compound|aerosol)\b.*?)"
        r"\b((?:(?:one|two|three|four|five) hundred|ten|twenty|twenty-five|fifty|eighty|\d{2,3})) mil$",
        r"\1\2 ml",
    ),
    (r",? \b(?:it |that |which )?(?:must|should|can)(?:not| not|n't|'t) be (?=chlorinated\b|flammable\b)", " non-"),
    (
        r"\b(?:for [a-z ]+? )?(?:that|which) (?:are|is) never (?:coming|to come|going to come) (?:out|off|undone|apart)"
        r"(?: again)?\b",
        "permanent",
    ),
    (r"\b(?:needs?|requires?) heat to (?:undo|remove|release|break|loosen)\b", "permanent"),
    (
        r"\b(?:that |which )?(?:creeps|wicks|seeps) (?:in|into [a-z ]+?) (?:after|when|once) (?:the )?[a-z]+ "
        r"(?:are|is) (?:tight(?:ened)?|done up|fitted|assembled)\b",
        "wicking",
    ),
    (r"\bpre[- ]assembled (?=fasteners?|threads?|screws?|bolts?|joints?)", "assembled "),
    (r"\bgasket goo\b", "gasket maker"),
    (r"\b(?:rtv )?gasket compound\b(?=.*\boil)|(?<=rtv )gasket compound\b", "gasket maker"),
    (r"\b(copper|black|red|blue|grey|clear|white)[- ]colou?red (?=rtv|silicone|gasket)", r"\1 "),
    (
        r"\bfor (?:something|anything|parts?|things?|places?) (?:that|which) gets? (?:really |very |quite )?hot\b",
        "high temperature",
    ),
    (
        r"\b(?:an? )?(?:(?:triangular|round|continuous|thin|thick|even|\d+(?:\.\d)? ?mm) )*bead of "
        r"(?=.*\b(?:adhesive|sealant|sealer|rtv|silicone|pu|gasket)\b)",
        "",
    ),
    (r"\b1 ?k (?=pu\b|polyurethane|adhesive)", ""),
    (r"\bfor round (?=the\b|an?\b)", "for "),
    (r"\bcontain(?:s|ing) no (?=[a-z])", "no "),
    (r"(\banti[- ]?s(?:ei|ie)ze?\b.*)\bnon[- ]metallic\b", r"\1metal free"),
    (r"\bptfe[- ]filled\b", "ptfe"),
    (r"\b(pipe )?thread seal(?:ing|er|ant) paste\b", r"\1thread sealant paste"),
    (r"^grease[- ]gun cartridge,? (?:with |of )?(?=.*\b(?:lithium|moly\w*|calcium|ep)\b)", "grease cartridge, "),
    (r"^load (?:a |the )?cartridge of (.*?) into (?:the|an?) (?:grease )?gun\b.*", r"cartridge of \1"),
    (r"\bnlgi (?:grade |no\.? ?|# ?|number )(?=[0-3])", "nlgi "),
    (r"\b(lithium|calcium)[- ]base\b", r"\1 based"),
    (r"\bthe ([a-z]+) (?:sort|kind|type) (?=for\b)", r"\1 "),
    (r"\belectrically (?=insulating)", ""),
    (r"\bsilicone oil (?=lubricant|spray|lube)", "silicone "),
    (
        r"(\bdot ?[345].*?)\bfor (?:an? |the )?(?:brake |clutch )bleed(?:ing)?\b(?! kit| bottle| tool| unit)",
        r"\1for bleeding",
    ),
    (
        r"(\bc[1-5]\b.*?) (?:spec )?for (?:(?:the|an?|engines?|diesels?|cars?|vans?) )*(?:with (?:an? )?)?dpf\b",
        r"\1",
    ),  # its class says it
    (r"\bfor (?:an? |the )?(?:four|five|six|[456])[- ]speed (?:manual )?(?:gear)?box\b", "for a manual gearbox"),
    (r"\bstick[- ]shift (?=(?:gear|transmission|trans) ?(?:oil|fluid|lube))", "manual "),
    (r"(\b(?:oil|fluid|lube|trans)\b.*), squeeze bottle$", r"\1, bottle"),
    (r"^(?:oil|fluid), ?(?:gearbox|transmission), ?(?:continuously variable )?\(?cvtf?\)?", "cvt fluid"),
    (r"(\bcvt\b.*), ?(?:red|green|blue|yellow) dye$", r"\1"),
    (r"(\b(?:cvt|continuously variable)\b.*) for (?:an? |the )?(?:[a-z]+ )?hybrid(?: car)?$", r"\1"),
    (
        r"^mix (\d.*?) with (?:\d+ ?(?:l|lit(?:re|er)s?) of )?(?:deioni[sz]ed |distilled |demineralised )?water$",
        r"\1",
    ),
    (
        r"(\b(?:wash|screen ?wash|washer fluid)\b.*?)\bminus (?:(\d{1,2})|(ten)|(twenty)|(thirty))\b(?! ?(?:deg|c\b))",
        r"\1-\2\3\4\5 c",
    ),
    (r"\bfrost protection (?:to |down to )?(?=-)", ""),
    (r"\bquick(?:[- ]set(?:ting)?)? (?=epoxy)", "rapid "),
    (r"(\bepoxy\b.*?)\bthe (five|\d{1,2})[- ]minute one\b", r"\1\2 minute"),
    (r"\b(\d{1,2} ?min(?:ute)?s?) set\b", r"\1"),
    (r"\b(?:twin|double|dual)(?:[- ]barrel)? (?=syringe\b)(?=.*\b(?:epoxy|glue|adhesive|resin)\b)", ""),
    (r"(\b(?:epoxy|glue|adhesive|resin)\b.*)\b(?:twin|double|dual)(?:[- ]barrel)? (?=syringe\b)", r"\1"),
    (
        r"(\b(?:super ?glue|cyanoacrylate|ca glue)\b.*?)\b(?:that |which )?(?:doesn't|does not|won't|will not) "
        r"(?:run|drip|sag)\b",
        r"\1gel",
    ),
    (r"\b(?:flat|mat|matte) (?=black|white|grey|silver)(?=.*\b(?:paint|lacquer|enamel|spray)\b)", "matt "),
    (
        r"^(?!.*\b(?:brush(?:es)?|scraper|pad|roller|gun)\b(?! on))(.*\b(?:paint|lacquer|enamel)\b.*?)"
        r"\b(?:flat|mat|matte)\b",
        r"\1matt",
    ),
    (r"\bvery (?=high[- ]temp.*\b\d{3,4} ?(?:deg(?:rees?)? ?)?[cf]\b)", ""),
    (r"(\bgalvani[sz]ing spray\b.*?) to touch up (?:an? |the )?[a-z ]+$", r"\1"),
    (
        r"(\b(?:ipa|isoprop\w*|propan-2-ol|alcohol)\b.*?)\b(9\d(?:\.\d)?)(?=,|$| \d+ ?l\b| one\b)(?<!\d[- ]9\d)",
        r"\1\2 %",
    ),
    (r"\bbreak (?=fluid|cleaner|clnr|pads?\b|discs?\b|pipes?\b|calipers?\b|hoses?\b|lines?\b)", "brake "),
    (r"^fluid for (?:the |an? )?(.*?) ?\b(?:automatic|auto) (?:gearbox|box|transmission)$", r"atf \1"),
    (r"\b(\d)[- ]?spd\b", r"\1 speed"),
    (r"\bboil(?:ing)? pt\b", "boiling point"),
    (r"(\bcoolant\b.*?)\bhybrid\b(?! oat)", r"\1hoat"),
    (rf"\bthat spares? (?:{_WHOSE})*({_HARMED})\b", r"\1 safe"),
    (r"\boil[- ]proof\b", "oil resistant"),
    (r"\b(?:flange )?sealer that cures without air\b", "anaerobic flange sealant"),
    (r"\bcreep-in \(?wicking\)?", "wicking"),
    (r"\burea liquid for diesel exhaust treatment\b", "diesel exhaust fluid"),
    (r"(?<=, )grease[- ]gun cartridge\b", "cartridge"),
    (r"\bcalc(?:ium)?\.? sulph(?:onate)?\b", "calcium sulphonate"),
    (r"(\bgrease\b.*?),? (?:for|to (?:go in|fit|suit)) (?:the |an? )?(?:grease )?gun\b", r"\1 cartridge"),
    (r"\burea (?:soln|solution)\b|\b(?:exhaust )?reagent,? urea\b", "diesel exhaust fluid urea"),
    (r"\boil[- ]res\b\.?", "oil resistant"),
    (r"\boil (?=for (?:an? )?(?:belt[- ]type )?cvt)", "cvt fluid "),
    (r"\boil for (?:an? )?(wet |dry |)(?:twin|dual)[- ]clutch gearbox(?:es)?\b", r"\1dct fluid"),
    (r"\bplain (?=lithium|nitrile|copper|silicone)", ""),
    (r"(?<!dot)(?<!dot )\b5\.1 brake fluid\b|(?<!dot )\bfive point one brake fluid\b", "dot 5.1 brake fluid"),
    (r"\bthat does (?:no harm to )?(sensors|plastics|rubber)(?: no harm)?\b", r"\1 safe"),
    (
        rf"\b(?:(?:that |which )?(?:won't|wont|will not|would not|does not|doesn't|do not|must not|mustn't|"
        rf"cannot|can't|"
        rf"never|not|should not|shouldn't) {_DO_HARM}|without {_DOING_HARM}|no (?:harm|damage|danger) to|"
        rf"(?:harmless|kind|gentle) (?:to|on|for)) (?:{_WHOSE})*({_HARMED})\b"
        r"(?: (?:plugs?|connectors?|lens(?:es)?|housings?|parts?|seals?)\b)?",
        r"\1 safe",
    ),
    (
        r"\b(?:that |which )?(?:leaves? (?:nothing|no (?:film|residue|trace|oil|deposit)s?)(?: behind)?|"
        r"(?:dries|drying) (?:without (?:a )?(?:residue|film|trace)|residue[- ]free))\b",
        "residue free",
    ),
    (r"\b(?:that |which )?(?:never|won't|will not|does not|doesn't) sets?\b|\bnon[- ]set(?:ting)?\b", "non-setting"),
    (r"\bminus (?=\d{1,2} ?(?:deg(?:rees?)? ?)?c\b)", "-"),
    (r"\bprop\.? (?=glycol)", "propylene "),
    (r"\badhs?v\b|\badhsv\b", "adhesive"),
    (r"\bwater[- ]borne\b", "water based"),
    (r"\b(?:a )?quarter (?:of a )?lit(?:re|er)\b", "250 ml"),
    (
        r"\b(?:muffler|silencer|exhaust|exh) (?:assembly|assy|jointing|jtg|joint) (?=paste|cement|compound|putty)",
        "exhaust ",
    ),
    (r"\bsemi[- ]?fluid\b(?=.*\b(?:000?|double (?:nought|zero|naught))\b)", ""),
    (r"\bready to (?:pour|use|go|fill)\b|\bdiluted ready(?: to pour)?\b", "ready mixed"),
    (r"\bthr?d?l(?:oc)?kr?\b|\bthdlkr\b|\bthrdlkr\b", "threadlocker"),
    (r"(\bthread ?lock\w*\b.*?)\bpur\b", r"\1purple"),
    (r"(\bthread ?lock\w*\b.*?)\bstk\b", r"\1stick"),
    (r"\b(?:ep|e\.p\.) ?([0-3]),? (?=cart)(?<!grease )", r"grease ep \1 "),
    (r"\btrans(?:mission)?\.? fluid,? (?=dct|dual)", "dct fluid "),
    (r"\bcopper[- ]based assembly (?:compound|paste)\b", "copper anti-seize"),
    (rf"[,;(]*\s?\b{_DENYING}[- ]?(?:{_FILLER} )*{_CODES}(?:(?: ?[/,&+] ?| and | or ){_CODES})*\b ?\)?", " "),
    (rf"\b((?:brake|clutch|brk)\b.*\bdot\b.*?)[,;(]*\s?\b{_DENYING}[- ]?(?:{_FILLER} )*[345](?:\.1)?\b ?\)?", r"\1 "),
    (r"(?<![\d./])\b[1-9]\d? ?x ?(?=\d+(?:\.\d+)? ?(?:ml|l|lt|ltrs?|lit(?:re|er)s?)\b)", ", "),  # 4x1L
    (
        r"(\bthread ?lock\w*\b.*?),? ?\b(?:red|blue|green|purple|yellow|black|white) (?:cap|lid|top|label|"
        r"bottle cap)\b",
        r"\1",
    ),
    (r"\bbrush (?=(?:tin|can|pot|tub)\b)", ""),
    (r"\b(ck-?4) (?=gal|qt|quart|l\b)", r"\1, 1 "),
    (r"\bdot 5,1 (?=gal|l\b|lit)", "dot 5, 1 "),
    (r"\btrans lube\b", "transmission oil"),
    (r"\bether start(?:ing)? fluid\b", "starting fluid"),
    (r"\bwindscreen bonder\b", "windscreen adhesive"),
    (r"\b(\d) ?x$", r"\1 off"),
    (r"\b(?:that |which )?leaves? no lint\b", "lint free"),
    (r"\bmeeting (?=acea|api|jaso|ilsac|[acbe]\d|s[nmpl]\b)", ""),
    (r"\bviscosity grade (?=\d)", "iso vg "),
    (r"\bdegreasing (?=concentrate|fluid|liquid|agent)", "degreaser "),
    (
        r"^(?!.*\b(?:seal|gasket|filter|o-?ring|washer|plug|pump|pipe|hose|cooler|switch|cap|tool|ring)s?\b)"
        r"(.*\boil\b.*) for (?:the |an? )?[a-z ]*?(?:van|minibus|flatbed|truck|lorry|engine) ?\d\.\d\b",
        r"\1",
    ),
    (r"\(?\bbead(?: of)? \d+(?:\.\d)? ?mm\b\)?", ""),
    (r"\bwheel speed sensor", "abs sensor"),
    (r"\b(c\d|a\d/b\d) spec\b", r"\1"),
    (r"\b(?:thinly|sparingly|lightly|evenly)\b", ""),
    (r"\bcontinuously variable (?:gearbox(?:es)?|transmissions?)\b", "cvt"),
    (r"\bready[- ](?:to|for)[- ]use\b|\brtu\b", "ready mixed"),
    (r"\bcont(?:inuously)? variable (?=\(?cvt)", ""),
    (
        r"\bnon[- ]metallic\b(?=.*\b(?:paste|grease))|(?<=paste )non[- ]metallic\b|(?<=grease )non[- ]metallic\b",
        "metal free",
    ),
    (r"\b(?:without|no) grit\b|\bgrit[- ]free\b|\bnon[- ]abrasive\b(?= hand)", "gritfree"),
    (r"\bprotects?(?: down)? to (-?\d{2})\b(?! ?c)", r"\1 c"),
    (r"\be-comp(?:ressor)?\b", "electric compressor"),
    (r"(\boil\b.*)\b2 ?t\b", r"\1two stroke"),
    (r"\btop(?:ping)?[- ]?up water\b", "deionised water"),
    (r"\b(?:without|no) metals?\b", "metal free"),
    (r"\bauto glass\b", "windscreen"),
    (r"\bsn ?60 ?/? ?pb ?40\b", "60/40"),
    (r"\bleaded\b(?=.*\b60/40)", ""),
    (r"\bspray for (?:cleaning )?(?:the )?(?:electrical )?contacts\b", "contact cleaner spray"),
    (r"\b(?:brake|clutch) juice\b", "brake fluid"),
    (r"\boil for (?:an? |the )?cvt\b(?: (?:gear)?box| transmission)?", "cvt fluid"),
    (r"\b(?:sae )?j?30 ?r ?(\d{1,2})\b", r"r\1"),  # classes of fuel hose
    (r"\boil,? mtr\b|\bmtr oil\b", "engine oil"),
    (r"\bm/cycle\b|\bm/c(?=.*\boil\b)", "motorcycle"),
    (r"\bt ?c ?-? ?w ?-? ?3\b", "tcw3"),  # a class of two-stroke oil
    (r"\bcont(?:inuously)? var(?:iable)? trans(?:mission)?\b", "cvt"),
    (r"\borg(?:anic)?\.? acid(?: technology)?\b", "oat"),
    (r"\blow[- ]cond(?:uctivity|uct)?\b|\bnon[- ]conductive(?= coolant)", "lowconductivity"),
    (r"< ?\d+ ?us(?:/cm)?\b", ""),
    (r"\bhfo[- ]?(?=1234)", "r"),
    (r"\bhfc[- ]?(?=134)", "r"),
    (r"\brefrig\b", "refrigerant"),
    (r"\bdiluted?(?: at| to)? 1 ?: ?\d+\b", ""),
    (r"\boil for (?:an? |the )?(?:\d+ ?t )?(?:bottle|trolley|floor|hydraulic) jacks?\b", "jack oil"),
    (r"\bnon[- ]?lint(?:ing)?\b|\bno lint\b", "lint free"),
    (r"\bcarbon dioxide\b", "co2"),
    (r"(\bext(?:inguisher)?\b.*)\b\d{1,3} ?[ab]\b", r"\1"),  # how large a fire it puts out
    (r"\b(?:cupro|copper)[- ]?nickel\b|\bcupro\b|\bcu ?-?ni(?:fe)?\b", "cupronickel"),
    (r"\bpolyamide\b|\bpa ?-?(?:6|11|12)\b(?=.*\b(?:tube|pipe|tie|brake)\b)", "nylon"),
    (r"(\b(?:tube|pipe|hose)\b.*)\bpa ?-?(?:6|11|12)\b", r"\1nylon"),
    (r"\b(nitrile|nbr|neoprene|epdm|fkm|silicone) sheet\b", r"\1 rubber sheet"),
    (r"\bpre[- ]?paint wipe\b", "panel wipe"),
    (r"\b(fkm|nbr|nitrile|epdm|fkm rubber) (?=(?:rubber )?seal(?:ing)? washers?\b)", r"\1 bonded "),
    (r"\boiled (?=gasket|paper)", "oil "),
    (r"\blow[- ]vol(?:atile|atility)\b(?=.*sensor)", ""),  # that is why it is safe on them
    (r"\b(?:asbestos[- ]free|non[- ]asbestos) (?=jointing|sheet|gasket)", "cnaf "),
    (r"\bno metals?\b", "metal free"),
    (r"\bbrush (?=tin\b)", ""),
    (r"^(?!.*\b(?:grease|grs)\b)(.*)\bep ?-?([0123])\b(?! ?w| ?\d)", r"\1ep nlgi \2"),
    (
        r"^(?!.*(?:moly|copper|ceramic|lithium|;))(.*\bgrease),? (?:for |on )?(?:the )?"
        r"(?:clutch )?(?:shaft )?splines?\b",
        r"\1 clutchspline",
    ),
    (r"\b(?:clutch )?(?:input )?(?:shaft )?splines?\b(?= (?:grease|lubricant|lube))", "clutchspline"),
    (r"\bcu[- ]free\b", "copper free"),
    (rf"\b({_HARMED}) ok\b", r"\1 safe"),
    (r"\b(?:ph[- ]?neutral|neutral,? ph ?7?|ph ?7|neutral ph)\b", "phneutral"),
    (r"\btrolley jack (?=oil)", "jack "),
    (r"(\bthread ?lock\w*\b.*) (\d{3}) ?deg(?:rees)?\b(?! ?[cf])", r"\1 \2 deg c"),
    (r"\bgel,? non[- ]?(?:run|drip)\b|\bnon[- ]?(?:run|drip) gel\b", "gel"),
    (r"\bgun[- ]grade\b", ""),
    (r"\bpress[- ]fit\b|\bbearing fit\b", "bearing fit"),
    (r"\belec(?:trically)?\.? conduct(?:ive|ing)?\b|\bsilver[- ](?:filled|loaded)\b", "electroconductive"),
    (r"\bfuel line(?=,? (?:rubber|nbr|nitrile|fkm|braided)\b)", "fuel hose"),  # no pipe
    (r"\bhose(.*)\bexh\b", r"hose\1exhaust"),
    (r"\bfree of metal\b", "metal free"),
    (r"\b(\d{2,3}|fifty|eighty|(?:[a-z]+ )?hundred) mil (?=bottle|tube|can|aerosol|tin|cartridge|spray)", r"\1 ml "),
    (r"\b(\d{1,3}) mil (?=bottle|tube|can|aerosol|tin|cartridge|spray)", r"\1 ml "),
    (r"\b(\d\.\d)d\b(?<!1\.5d)", r"\1 diesel"),  # an insert is 1.5D long
    (  # ten forty
        r"\b(zero|five|ten|fifteen|twenty)[- ](?=(?:twenty|thirty|forty|fifty|sixty)\b.*\b(?:oil|synth\w*|semi)\b)",
        r"\1 w ",
    ),
    (r"\bfluoro[- ]?rubber\b", "fkm"),
    (r"\b(v ?[68]|engine) gas$", r"\1 petrol"),  # gasoline
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
    (r"\bc v (?=joint|boot)", "cv "),
    (r"\bliquid (?=grease)", "semi fluid "),
    (r"^(?!.*\b(?:sockets?|skts?|spanners?|wrench(?:es)?|cap|key)\b)(.*\b(?:oil|fluid)\b.*\b\d) pt\b", r"\1 pint"),
    (r"\bnon-?chlor\b", "non-chlorinated"),
    (r"(?<=nlgi 00), ?semi[- ]?fluid\b|(?<=nlgi 000), ?semi[- ]?fluid\b|(?<=nlgi 0), ?semi[- ]?fluid\b", ""),
    (r"\b(?:does|do) not burn\b|\bwill not burn\b", "non-flammable"),
    (r"\br[- ]?(134a|1234yf|744|404a)\b", r"r\1"),
    (r"\bep(?=\d+w)", "ep "),
    (r"\b(pag|poe|vg|hlp|hm|hvlp|iso)(?=\d{2,3}\b)", r"\1 "),  # PAG46
    (r"\bvg(?= ?\d{2,3}\b)", "iso vg"),
    (r"\biso iso\b", "iso"),
    (r"\b(ptfe|copper|nickel|zinc|silicone)[- ]free\b", r"non \1"),
    (r"\bfriction modifi(?:er|ed)\b", "limited slip"),
    (r"\b(?:rbr|rubb) (?=safe\b)", "rubber "),
    (r"\b(?:plstc|plst) (?=safe\b)", "plastic "),
    (r"\b(?:snsr|sens) (?=safe\b)", "sensor "),
    (r"\bmed(?:ium)?[- ]?(?:to[- ]|/)?high(?:[- ]strength)\b", "medium strength , high strength"),
    (
        (r"\bnot (?:for use |to be used |for )?(?:near|on|around|with|by) (?:any |oxygen |lambda )?sensors?\b"),
        "not sensor safe",
    ),
    (
        (r"\b(rubber|plastic|paint|sensor|metal) ?(?:and|/|,|\+) ?(rubber|plastic|paint|sensor|metal)[ -]safe\b"),
        r"\1 safe \2 safe",
    ),
    (r"\bil(?= (?:tin|can|bottle|jug|btl)\b)", "1 l"),
    (r"\bhalf[- ](?:a )?lit(?:re|er)s?\b", "0.5 litre"),
    (r"\b(?:fld|fluid),? (?:pwr|power|p/s) ?(?:strg|steer|steering)?\b", "power steering fluid"),
    (r"\boil,? gr\b(?=.*\d)", "gear oil"),
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
    (r"\b(petrol|gasoline|diesel) (?:engines?|engined|motor)\b", r"\1"),
    (r"\b2 ?t (?=.*\boil\b)", "two stroke "),
    (r"\b4 ?t (?=.*\boil\b)", "four stroke "),
    (r"(?<=\d)[- ]?(?:wt|weight)\b", "w"),
    (r"\btl (?=(?:med|hi|high|lo|low|stick|wick|perm|ret|blu|red|grn|green)[a-z]*\b)", "threadlocker "),
    (r"(?<=brake fluid )5\.1\b", "dot 5.1"),
    (r"\bp(?:o?we?)?r st(?:ee)?r(?:i?ng|g) fl(?:ui)?d\b", "power steering fluid"),
    (r"\bthreadlock(?:er|ing)? (?=activator)", ""),
]
