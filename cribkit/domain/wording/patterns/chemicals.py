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
    (
        r"\bthreadlock(?:er|ing)? for (?:(?:bolts|nuts|screws|studs|threads) )?(?:that are )?(?:already )?(?:fitted|"
        r"assembled|tightened|done up)(?: (?:bolts|nuts|screws|studs|threads))?\b",
        "wicking threadlocker",
    ),
    (r"(\bcoolant\b.*?),? \b(?:no|without|free of|low) silicates?\b", r"\1 silicate free"),
    (r"\bno[- ]silicates? (?=coolant|antifreeze)", "silicate free "),
    (
        r"\b(threadlock(?:er)?)\b(.*?)\bthat (?:you|one) can (?:undo|take apart|remove)(?: later| again)?"
        r"(?: with (?:ordinary |normal )?(?:hand )?tools)?",
        r"\1\2 medium strength",
    ),
    (r"\b(threadlock(?:er)?),? (?:that )?you can undo(?: later| again)?(?: with hand tools)?", r"\1 medium strength"),
    (r"\bair flow meter spray, safe on (?:the )?sensors?\b", "air mass meter cleaner spray sensor-safe"),
    (r"\bspray for (?:the )?(?:seized|rusted|stuck) (?:nuts|bolts|threads)\b", "penetrating oil spray"),
    (r"\bspray for (?:the )?plugs and switches\b", "electrical contact cleaner spray"),
    (r"\b(?:that )?won'?t eat plastics?\b", "plastic safe"),
    (r"\bhot[- ]end red silicone, (\d{3}) degrees\b", r"red rtv silicone high temperature \1 c"),
    (r"\b(anaerobic gasket) for machined faces, no gap\b", r"\1 for machined faces"),
    (r"\balloy-coloured anti-seize, alumini?um not copper\b", "aluminium anti-seize"),
    (r"\bnut lock that creeps in after assembly\b", "wicking threadlocker"),
    (r"^wicking green\b(?=.*\b(?:bolts|screws|threads)\b)", "green wicking threadlocker"),
    (r"(?<=green wicking threadlocker) for (?:already )?assembled (?:bolts|screws|threads)$", ""),
    (r"\blocker\b(?=.*\b(?:studs?|bolts?|wicks?|strength|bearings?)\b)(?<!key locker)", "threadlocker"),
    (r"\bthreadlocker that wicks into (?:bolts|threads) already (?:tightened|assembled)\b", "wicking threadlocker"),
    (r"\bsolid stick\b", "stick"),
    (r"\bcreeping spray to free\b", "penetrating oil spray to free"),
    (r"\bspray for dirty (?:plug )?terminals\b", "contact cleaner spray"),
    (r"^final wipe for bare panels(?: ahead of primer| before primer)?\b", "panel wipe"),
    (r"\banti[- ]galling (?=(?:paste|compound|lube))", "anti-seize "),
    (r"^glue to hold (?:an? )?(?:loose )?bearing in its bore$", "retaining compound bearing fit"),
    (r"\b(body|panel) (?:joint|seam) caulk(?:ing)?\b", r"\1 seam sealer"),
    (r"^spray for gumming in the throttle (?:plate|body)\b", "throttle body cleaner spray"),
    (r"\bwon'?t (?:hurt|harm|damage) (?:an? |the )?(?:o2|oxygen|lambda) sensors?\b", "oxygen sensor safe"),
    (r"\bo2 sensor (?:ok|okay)\b", "oxygen sensor safe"),
    (r"\bwon'?t swell rubber(?: boots| parts)?\b", "rubber safe"),
    (r"\bok on plastic(?: housings| parts|s)?\b", "plastic safe"),
    (r"\b(?:gre?a?se?|grs) brake ceramic caliper pin\b", "brake grease, ceramic, caliper pin"),
    (r"\bsealant body seam\b", "seam sealer"),
    (r"\b(low|medium|high)([- ]strength) locker\b", r"\1\2 threadlocker"),
    (r"(\b[a-z]+ spray),? aerosol\b", r"\1"),
    (r"\bseam slr\b", "seam sealer"),
    (r"(\b(?:brk|brake) cl\w+\b.*?) chl\b", r"\1 chlorinated"),
    (r"(\bthread ?lock\w*\b.*?),? permanent until heated\b", r"\1, permanent"),
    (r"\bsealing compound, thread[:,] (?=(?:high|medium|low|med)\b)", "threadlocker "),
    (r"\bwicking grade\b(?!.*\bthread)", "wicking threadlocker"),
    (r"\bexhaust (?:system )?(?:sealing|joint(?:ing)?|assembly) (?:cement|paste|putty)\b", "exhaust paste"),
    (
        r"^(?=.*\bthread ?lock)(.*?),? ?(?:(?:so )?(?:that |which |it |they )?(?:can|may|could|to|must) be (?:undone|"
        r"removed|taken apart|dismantled)"
        r"|that comes? (?:out|off|apart))(?: again| later)?\b",
        r"\1 removable",
    ),
    (r"^(thread ?lock(?:er|ing)?\b.*?); on (.*?)\bpermanently\b", r"permanent \1; on \2"),
    (r"\bpermanently\b", "permanent"),
    (r"\bthr(?:ea)?d?[/ -]lock(?:er|ing)?\b", "threadlocker"),
    (r"\bstone ?chip\b(?: guard| protection| protector)?", "stonechip"),
    (r"\bpipe seal\b(?= |$)(?!ant|er|ing)", "pipe sealant"),
    (r"(\bepoxy\b.*?)\b(?:2|two)[- ]?(?:pt|part|pack)\b", r"\1two part"),
    (r"\bwtr\b(?=.*\bdi\b)", "water"),
    (r"\bwater,? di\b|\bdi water\b", "deionised water"),
    (r"(\bhand cleaner\b.*?)\b(?:with )?bead(?:s|ed)?\b", r"\1grit"),
    (
        r"\b(rtv|silicone|gasket (?:maker|sealant)|sealant)(?: that is)? (?:safe )?(?:for|near|around|with|"
        r"by) (?:use (?:near|with|on) )?(?:the |an? )?(?:oxygen|o2|lambda) sensors?\b",
        r"sensor safe \1",
    ),
    (r"^cleaner for (?:the )?(?:mass )?(?:air ?-?flow|air mass|maf) (?:sensor|meter)s?\b", "maf cleaner"),
    (r"\bnon-?chl\b\.?|\bchlorine-?free\b", "non-chlorinated"),
    (r"\b(?:contains|containing) chlorine\b", "chlorinated"),
    (r"\bchlorinated (?:formula|kind|type|version)\b", "chlorinated"),
    (r"\bspr can\b|\bspraycan\b", "spray can"),
    (r"\bsens[- ]safe\b", "sensor-safe"),
    (r"\bplast[- ]safe\b", "plastic-safe"),
    (r"\bmedstr\b", "medium strength"),
    (r"^(?=.*\bthread)(.*?)\b(low|medium|med|high) hold\b", r"\1\2 strength"),
    (r"\bcolou?r(?:ed)?:? (?=(?:blue|blu|red|green|grn|black|blk|grey|gray|white|clear|orange|yellow|purple)\b)", ""),
    (
        r"\b(blue|blu|red|green|grn|black|blk|grey|gray|white|clear|orange|yellow|purple) (?:col(?:ou?r)?(?:ed)?)\b\.?",
        r"\1",
    ),
    (r"\bcol\.?:? (?=(?:blue|blu|red|green|grn|black|blk|grey|gray|white|clear|orange|yellow|purple)\b)", ""),
    (r"^(?=.*\b(?:rtv|silicone|sealant|grease|paint)\b)(.*?)\bh/t\b", r"\1high temperature"),
    (
        r"\b(?:spray|aerosol|stuff|fluid) for cleaning (?:the |an? )?(throttle bod(?:y|ies)|carburett?[eo]rs?|carbs|"
        r"(?:mass air ?-?flow|air ?-?mass|air ?-?flow) (?:meter|sensor)s?|electrical contacts)\b",
        r"\1 cleaner spray",
    ),
    (r"^spray for (?:the )?brakes?(?: discs| parts)?\b", "brake cleaner spray"),
    (r"\bcompound,? pipe thread sealing\b", "pipe thread sealant"),
    (r"\b(?:alcohol|ipa)[- ]wetted\b|\bpre-?wetted (?:with |in )?(?=(?:isopropyl )?alcohol)", "presaturated alcohol"),
    (r"\b(?:wind)?screen bonder\b", "windscreen adhesive"),
    (r"\bleak[- ]finding\b", "leak detection"),
    (r"\banaer(?:obic)? (?:flange|flg) seal\b", "anaerobic flange sealant"),
    (r"\bfixing compound(?= .*\b(?:bearings?|sleeves?)\b)", "retaining compound"),
    (r"\bdry cleaning solvent,? parts washer\b|\bparts? wash(?:er|ing) solvent\b", "parts cleaner solvent"),
    (r"\bsealing compound,? seam\b", "seam sealer"),
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
    (r"\bassembly (?:paste|compound) ?/ ?(?=anti[- ]?s(?:ei|ie)ze?\b)", ""),
    (r"\brattle[- ]?cans?\b", "spray can"),
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
    (
        r"^mix (?:the )?(.*?\b(?:concentrated?|neat)\b.*?),? (?:at |in )?(?:50[:/]50|1:1|half and half|one to one|"
        r"in equal parts) with (?:deioni[sz]ed |distilled |demineralised |clean |tap )?water\b.*$",
        r"\1",
    ),
    (r"\bninety[- ]nine point nine\b(?=.*\b(?:ipa|isoprop\w*|alcohol))(?! ?(?:%|per ?cent))", "99.9 %"),
    (r"(\b(?:ipa|isoprop\w*|alcohol)\b.*?)\bninety[- ]nine point nine\b(?! ?(?:%|per ?cent))", r"\1 99.9 %"),
    (r"\b(?:two|three|four|five|six|a few|several|[2-9]) turns of (?=.*\b(?:tape|ptfe)\b)", ""),
    (
        r"^(?:an? )?(?:spray|aerosol) (?:for|to clean) (?:the |an? )?(throttle bod(?:y|ies)|"
        r"mass air ?flow (?:meter|sensor)|air ?mass (?:meter|sensor)|air ?flow (?:meter|sensor)|"
        r"electrical contacts?)\b",
        r"\1 cleaner",
    ),
    (r"\b(?:body )?seam compound\b", "seam sealer"),
    (r"\b(?:that |which )?(?:cures?|curing) without air\b", "anaerobic"),
    (r"\b(?:gasket|flange) compound (?:that |which )?anaerobic\b", "anaerobic flange sealant"),
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
    (r"(\banaerobic (?:flange )?seal(?:ant|er)),? gasket maker\b", r"\1"),
    (
        r",? (?:that|the|this) [a-z]+ (?:gets|will be|has to be|is to be) welded (?:later|after(?:wards)?|next|soon)\b",
        "",
    ),
    (r"\b(\d{3}) ?(?:deg ?)?c ?[/(] ?\d{3,4} ?(?:deg ?)?f\b\)?", r"\1 c"),  # one temperature in two units
    (r"\bpiant\b", "paint"),
    (r"^(?:an? |one )?lit(?:re|er) of (?=\S)", "1 litre "),
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
    (r"\b(lithium|calcium)[- ]base\b", r"\1 based"),
    (r"\bthe ([a-z]+) (?:sort|kind|type) (?=for\b)", r"\1 "),
    (r"\belectrically (?=insulating)", ""),
    (
        r"(\bc[1-5]\b.*?) (?:spec )?for (?:(?:the|an?|engines?|diesels?|cars?|vans?) )*(?:with (?:an? )?)?dpf\b",
        r"\1",
    ),  # its class says it
    (r"\bfor (?:an? |the )?(?:four|five|six|[456])[- ]speed (?:manual )?(?:gear)?box\b", "for a manual gearbox"),
    (r"(\bcvt\b.*), ?(?:red|green|blue|yellow) dye$", r"\1"),
    (r"(\b(?:cvt|continuously variable)\b.*) for (?:an? |the )?(?:[a-z]+ )?hybrid(?: car)?$", r"\1"),
    (
        r"^mix (\d.*?) with (?:\d+ ?(?:l|lit(?:re|er)s?) of )?(?:deioni[sz]ed |distilled |demineralised )?water$",
        r"\1",
    ),
    (r"\bfrost protection (?:to |down to )?(?=-)", ""),
    (r"\bquick(?:[- ]set(?:ting)?)? (?=epoxy)", "rapid "),
    (r"(\bepoxy\b.*?)\bthe (five|\d{1,2})[- ]minute one\b", r"\1\2 minute"),
    (r"\b(\d{1,2} ?min(?:ute)?s?) set\b", r"\1"),
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
    (r"\b(\d)[- ]?spd\b", r"\1 speed"),
    (rf"\bthat spares? (?:{_WHOSE})*({_HARMED})\b", r"\1 safe"),
    (r"\b(?:flange )?sealer that cures without air\b", "anaerobic flange sealant"),
    (r"\bcreep-in \(?wicking\)?", "wicking"),
    (r"\bcalc(?:ium)?\.? sulph(?:onate)?\b", "calcium sulphonate"),
    (r"\bplain (?=lithium|nitrile|copper|silicone)", ""),
    (r"\bthat does (?:no harm to )?(sensors|plastics|rubber)(?: no harm)?\b", r"\1 safe"),
    (
        rf"\b(?:(?:that |which )?(?:won't|wont|will not|would not|does not|doesn't|do not|must not|mustn't|"
        rf"cannot|can't|"
        rf"never|not|should not|shouldn't) {_DO_HARM}|without {_DOING_HARM}|no (?:harm|damage|danger) to|"
        rf"(?:harmless|kind|gentle) (?:to|on|for)) (?:{_WHOSE})*({_HARMED})\b"
        r"(?: (?:plugs?|connectors?|lens(?:es)?|housings?|parts?|seals?)\b)?",
        r"\1 safe",
    ),
    (r"\b(?:that |which )?(?:never|won't|will not|does not|doesn't) sets?\b|\bnon[- ]set(?:ting)?\b", "non-setting"),
    (r"\bminus (?=\d{1,2} ?(?:deg(?:rees?)? ?)?c\b)", "-"),
    (r"\badhs?v\b|\badhsv\b", "adhesive"),
    (r"\bwater[- ]borne\b", "water based"),
    (r"\b(?:a )?quarter (?:of a )?lit(?:re|er)\b", "250 ml"),
    (
        r"\b(?:muffler|silencer|exhaust|exh) (?:assembly|assy|jointing|jtg|joint) (?=paste|cement|compound|putty)",
        "exhaust ",
    ),
    (r"\bready to (?:pour|use|go|fill)\b|\bdiluted ready(?: to pour)?\b", "ready mixed"),
    (r"\bthr?d?l(?:oc)?kr?\b|\bthdlkr\b|\bthrdlkr\b", "threadlocker"),
    (r"(\bthread ?lock\w*\b.*?)\bpur\b", r"\1purple"),
    (r"(\bthread ?lock\w*\b.*?)\bstk\b", r"\1stick"),
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
    (r"\bwindscreen bonder\b", "windscreen adhesive"),
    (r"\b(\d) ?x$", r"\1 off"),
    (r"\b(?:that |which )?leaves? no lint\b", "lint free"),
    (r"\bmeeting (?=acea|api|jaso|ilsac|[acbe]\d|s[nmpl]\b)", ""),
    (r"\bviscosity grade (?=\d)", "iso vg "),
    (r"\(?\bbead(?: of)? \d+(?:\.\d)? ?mm\b\)?", ""),
    (r"\bwheel speed sensor", "abs sensor"),
    (r"\b(c\d|a\d/b\d) spec\b", r"\1"),
    (r"\b(?:thinly|sparingly|lightly|evenly)\b", ""),
    (r"\bcontinuously variable (?:gearbox(?:es)?|transmissions?)\b", "cvt"),
    (r"\bready[- ](?:to|for)[- ]use\b|\brtu\b", "ready mixed"),
    (r"\bcont(?:inuously)? variable (?=\(?cvt)", ""),
    (r"\b(?:without|no) grit\b|\bgrit[- ]free\b|\bnon[- ]abrasive\b(?= hand)", "gritfree"),
    (r"\bprotects?(?: down)? to (-?\d{2})\b(?! ?c)", r"\1 c"),
    (r"\be-comp(?:ressor)?\b", "electric compressor"),
    (r"\btop(?:ping)?[- ]?up water\b", "deionised water"),
    (r"\b(?:without|no) metals?\b", "metal free"),
    (r"\bsn ?60 ?/? ?pb ?40\b", "60/40"),
    (r"\bleaded\b(?=.*\b60/40)", ""),
    (r"\bspray for (?:cleaning )?(?:the )?(?:electrical )?contacts\b", "contact cleaner spray"),
    (r"\bt ?c ?-? ?w ?-? ?3\b", "tcw3"),  # a class of two-stroke oil
    (r"\bcont(?:inuously)? var(?:iable)? trans(?:mission)?\b", "cvt"),
    (r"\borg(?:anic)?\.? acid(?: technology)?\b", "oat"),
    (r"< ?\d+ ?us(?:/cm)?\b", ""),
    (r"\bhfo[- ]?(?=1234)", "r"),
    (r"\bhfc[- ]?(?=134)", "r"),
    (r"\brefrig\b", "refrigerant"),
    (r"\bdiluted?(?: at| to)? 1 ?: ?\d+\b", ""),
    (r"\bnon[- ]?lint(?:ing)?\b|\bno lint\b", "lint free"),
    (r"\bcarbon dioxide\b", "co2"),
    (r"(\bext(?:inguisher)?\b.*)\b\d{1,3} ?[ab]\b", r"\1"),  # how large a fire it puts out
    (r"\b(?:cupro|copper)[- ]?nickel\b|\bcupro\b|\bcu ?-?ni(?:fe)?\b", "cupronickel"),
    (r"\bpolyamide\b|\bpa ?-?(?:6|11|12)\b(?=.*\b(?:tube|pipe|tie|brake)\b)", "nylon"),
    (r"(\b(?:tube|pipe|hose)\b.*)\bpa ?-?(?:6|11|12)\b", r"\1nylon"),
    (r"\b(nitrile|nbr|neoprene|epdm|fkm|silicone) sheet\b", r"\1 rubber sheet"),
    (r"\bpre[- ]?paint wipe\b", "panel wipe"),
    (r"\b(fkm|nbr|nitrile|epdm|fkm rubber) (?=(?:rubber )?seal(?:ing)? washers?\b)", r"\1 bonded "),
    (r"\blow[- ]vol(?:atile|atility)\b(?=.*sensor)", ""),  # that is why it is safe on them
    (r"\b(?:asbestos[- ]free|non[- ]asbestos) (?=jointing|sheet|gasket)", "cnaf "),
    (r"\bno metals?\b", "metal free"),
    (r"\bbrush (?=tin\b)", ""),
    (r"\bcu[- ]free\b", "copper free"),
    (rf"\b({_HARMED}) ok\b", r"\1 safe"),
    (r"\b(?:ph[- ]?neutral|neutral,? ph ?7?|ph ?7|neutral ph)\b", "phneutral"),
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
    (r"\bfluoro[- ]?rubber\b", "fkm"),
    (r"\b(v ?[68]|engine) gas$", r"\1 petrol"),  # gasoline
    (rf"\b(?:zero|nil|0%) (?={_HELD}\b)", "no "),  # zero chlorine
    (rf"\bfree (?:of|from) (?:any |all )?(?={_HELD}\b)", "no "),  # free of methylene chloride
    (
        r"(?<=\d) no (?=(?:dye|uv dye|residue|acetone|acid|ammonia|chlorine|pumice)\b)",
        " without ",
    ),  # PAG 46 no dye: not so many
    (
        rf"\b(?:safe|ok|okay|kind|fine|compatible) (?:on|for|with|to) (?:any |all |bare )?({_HARMED}) "
        rf"?(?:and|&|/|,|\+) ?({_HARMED})\b",
        r"\1 safe \2 safe",
    ),
    (r"\b(?:iso|clp) ?(32|46|68|100|150|220|320|460|680)\b", r"iso vg \1"),  # CLP 320
    (r"\b(hv|hlpd|hl)(?=(?:15|22|32|46|68|100)\b)", r"\1 "),  # HV46
    (r"\br?[- ]?1234 ?yf\b|(?<=pag) ?yf\b", " r1234yf"),
    (r"\b(pag[ -]?\d{2,3})[ -]?yf\b", r"\1 r1234yf"),  # PAG 46 YF
    (r"\bnsf[ -]?h-?1\b", "food grade"),
    (r"(\bfood[ -](?:grade|safe)\b.*?)\bh1\b", r"\1"),  # NSF H1
    (r"\b(iii|ii)-h\b", r"\1h"),  # ATF III-H
    (r"\b(\d{4}) ?f\b", r"\1 deg f"),
    (r"\bc v (?=joint|boot)", "cv "),
    (r"\bnon-?chlor\b", "non-chlorinated"),
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
    (r"(?<=\d)[- ]?(?:wt|weight)\b", "w"),
    (r"\btl (?=(?:med|hi|high|lo|low|stick|wick|perm|ret|blu|red|grn|green)[a-z]*\b)", "threadlocker "),
    (r"\bthreadlock(?:er|ing)? (?=activator)", ""),
]
