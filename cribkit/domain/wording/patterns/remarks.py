"""Remarks that say nothing of the thing: the job, the place, the reason, what is done next."""

from __future__ import annotations

REMARKS = [
    (r"(?<=[,;(]) ?(?:one|two|three|1|2|3) short\b(?=\)?$)", " some missing"),
    (r",? ?\b(?:a )?(?:short|shallow|standard|plain|normal|deep|long) one (?:will do|is (?:fine|ok))\b", ""),
    (r" ?\((?:pack|box|bag|tray) of \d+[^()]*\)", ""),
    (r"^x ?\d{1,2} (?=\d)", ""),
    (r"(\b(?:nuts|bolts|screws|washers)\b.*?), set of \d{1,2}$", r"\1"),
    (r"(\b(?:nuts|bolts|screws|studs)\b.*\b(?:8\.8|10\.9|12\.9)) x ?\d{1,3}$", r"\1"),
    (r" ?\([^()]*\b(?:must|may|should|do|can) not be (?:used|fitted)\)", ""),
    (r" ?\((?:renew|replace|discard|change) (?:at|after|on|with) (?:every|each|any) [^()]*\)", ""),
    (r",? capable of (?=\d)", ", "),
    (r"(?<=ratchet), (?:just )?(?:an? )?(?:plain|ordinary|normal|basic)(?: one)?$", ""),
    (r"\b(is|are|sits?|being) set (?=deep|back|in\b|into|behind|below|low|high|well)", r"\1 "),
    (r"\(?\b(?:o/a|overall|o\.a\.) (?:length |lg )?(?=\d+ ?(?:mm|m/m|in|\"))", ""),
    (r"\((?:bd|board|bin|shelf|drawer|drw|rack|row|bay|hook|peg|tray|box) ?[a-z]?\d{1,3}[a-z]?\)", ""),
    (
        r"(?<=\S),? (?:as |because |since )?(?:the |an? )?[a-z\d/.-]+(?: ?(?:mm|point|pt|ones?|kind|sort|"
        r"size))* (?:is |was |are |were )?"
        r"(?:far |a bit |much )?too (?:loose|tight|short|long|small|big|large|thin|thick|coarse|fine|strong|"
        r"weak|soft|hard|"
        r"wide|narrow|deep|shallow)$",
        "",
    ),
    (r", (?:i |we )?(?:have )?(?:had|tried) (?:the |an? )?[a-z\d/.-]+(?: ?mm)?(?: ones?)?(?: already| first)?$", ""),
    (r",? (?:in place|instead) of (?:the |an? )?(?:old )?[\d/.]+(?: ?(?:mm|in))?(?: one)?$", ""),
    (r"^final tighten(?:ing)?:? ", ""),
    (
        r"^step (?:up|down) from (?:the )?(1/4|3/8|1/2|3/4)(?: ?in\.?)? (?:bar|ratchet|handle|drive)"
        r" with (?:an? )?(?=\1)",
        "",
    ),
    (r",? for the (?:coolant|exhaust|water|pump|carrier|driveshaft|propshaft|manifold|hub) flange$", ""),
    (r"^(?:driveshaft|propshaft|exhaust|coolant) flange, (?=.*\b(?:socket|bit|spanner|key)\b)", ""),
    (r",? to thin the [a-z]+$", ""),
    (
        r", (?:at the )?(?:back|rear|front|top|bottom) of (?:the )?(?:intake|inlet manifold|engine|gear ?box|"
        r"bell ?housing|head|block)$",
        "",
    ),
    (r" \((?:[a-z]+ )?(?:bolt|nut|screw)s? (?:that )?you can(?:'t|not) (?:see|reach|get at)\)", ""),
    (r"(?: in (?:two|three|several) (?:stages|steps|passes)| cross-?wise)\b", ""),
    (r", (?:drain and (?:re)?fill|top[- ]up)(?: of)?(?: \d+(?:\.\d)? ?l(?:itres?)?)?$", ""),
    (r"^meter,? (?=multimeter\b)", ""),
    (
        r", (?:[a-z]+ )?(?!cut|shut|live|hot|wet|dry|one|push|pull|twist|roll|snap|lift|quick)[a-z]+ (?:off|"
        r"swap|work|job|refit|overhaul|reseal)$",
        "",
    ),
    (r", (?:dash|door card|bumper|seat|console|trim|headlining) out$", ""),
    (r"^(?=.*\b(?:bit|socket|skt|key)\b)(?:seat ?)?belt anchor(?:age)?(?: bolts?)?[,:] ", ""),
    (
        r"(\b(?:bit|socket|skt|key)\b.*?)(?: -|,| for(?: the)?) (?:seat ?)?belt(?: anchor(?:age)?)?s?(?: bolts?)?$",
        r"\1",
    ),
    (
        r"^(?=.*\b(?:bolts?|screws?|nuts?|spanner|socket|key)\b)(.*?), (?:the )?(?:number plate|brake pipe|"
        r"exhaust|mudflap|bumper|relay|battery) bracket$",
        r"\1",
    ),
    (r"(\b(?:key|bit|socket)\b.*?), caliper guide (?:sleeve|pin|bolt)s?$", r"\1"),
    (
        r"(\b(?:sleeved?|nylon|plastic)\b.*?),? so (?:that )?(?:it|they) (?:will not|won't|does not|doesn't|"
        r"do not|don't) (?:mark|scratch|damage) (?:the |my )?(?:alloy )?(?:wheels?|rims?|alloys?)",
        r"\1",
    ),
    (
        r"^(?=.*: .*\b(?:socket|skt|spanner|wrench|key|bit|driver)\b)(?:[a-z-]+ ){1,5}(?:nuts?|bolts?|"
        r"screws?|plugs?|unions?|studs?|filler|level|out)(?: out)?: (?=(?:an? )?\S)",
        "",
    ),
    (r"^[a-z]+: (?:remove|undo|slacken|loosen|refit) (?:the )?[a-z ]+, (?=\d)", ""),
    (r", check [\d.]+(?:-[\d.]+)? ?v(?: at the [a-z ]+)?$", ""),
    (r"^check (?:the )?[a-z ]+: (?=\S)", ""),
    (r", parasitic drain\b.*$", ""),
    (r", spray (?:the )?maf .*$", ""),
    (r" \(stage \d[^)]*\)", ""),
    (r",? to compare .*$", ""),
    (r"\bround (?:the )(?:inner |outer |front |rear )?[a-z]+(?: [a-z]+)?$|^work round the [a-z]+ with (?=an? )", ""),
    (r"\bbefore the boss comes round\b|, bi-hex rounds '?em off$", ""),
    (r", not the (?:\d+|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen)$", ""),
    (r"\bprotected (?=(?:deep |impact )*(?:socket|skt)\b)", ""),
    (r"(?<=\dv),? truck$|(?<=\d v),? truck$|(?<=\bdrive), lorry (?:wheels|bits)$|(?<=kn m), lorry wheels$", ""),
    (r"(\bflange nut),? (?:for )?(?:the )?exhaust (?:clamp|bracket|flange|stud|u-?bolt)s?\b", r"\1"),
    (r"(\bdielectric grease\b.*?),? (?:for )?bulb (?:sockets|holders|caps)\b", r"\1"),
    (r"(\bjaw (?:gear )?puller\b.*?), (?:harmonic )?balancer$", r"\1"),
    (r"(\bextension on (?:the )?(?:1/4|3/8|1/2|3/4)(?: drive)?) to reach the [a-z ]+$", r"\1"),
    (r"^leaking (?:oil|coolant|fuel):? (?=.*\bgasket\b)|\bleaking (?:oil|coolant|fuel|water): (?=.*\bgasket\b)", ""),
    (r"\bpz (?=(?:cross|screwdriver|driver|s/driver|bit|sdrv)\b.*\bpz ?[0-4]\b)", ""),
    (r"\b(shallow|semi[- ]deep|standard)[- ]well(?= (?:socket|skt)\b)", r"\1"),
    (r"(?<=\bjis )cross[- ]recess\b", ""),
    (r",? \(?(?:for |to )?top(?:ping)?[- ]up\)?$", ""),  # oil, top up
    (r"^service: ", ""),
    (r"(\b(?:grip|zip|press|snap)[- ]?(?:seal|top|lock)\b.*\bbags?\b.*\d.*), ?(?:100|500|1000)$", r"\1"),  # how many
    (
        r"\b(?:an?|one|another|about a) (?:quarter|half|full|1/[248])(?: of a)?[ -]turns?(?: (?=(?:with|using)\b)|$)",
        "",
    ),
    (
        r"(?<=\w) (?:which |that |where )?a (?:socket|ring spanner) (?:won'?t|will not|can'?t|cannot|can not|"
        r"does ?n[o']t) (?:go|fit|get|reach)(?: (?:over|on|onto|in|into|past|to))?(?=[.,;)]|$)",
        "",
    ),
    (r"(?<=\w), (?:in (?:the |a )?)?(?:cup|pot|tub|tin|jar|mug|tray|box) on (?:the )?(?:bench|shelf|wall|desk)$", ""),
    (
        r"^(?!.*\b(?:holders?|rails?|hold(?:s|ing)?|slots?|way|empty|racks?)\b.*,)"
        r"(.*\b(?:screwdriver|driver|spanner|wrench|"
        r"pliers|hammer|punch|chisel|puller)\b.*\d.*), (?:on (?:the )?|in (?:the )?)?"
        r"(?:screwdriver|spanner|pliers|hammer|punch|socket|tool) (?:rack|board)$",
        r"\1",
    ),
    (
        r"(\b(?:socket|skt|plug|\d ?pt)\b.*?),? (?:the )?(?:studs?|bolts?|threads?) (?:sticks?|pokes?|stands?|"
        r"comes?) out"
        r"(?: (?:too|quite|very|so))?(?: (?:far|long|much|a lot|a long way))?$",
        r"\1",
    ),
    (
        r",? (?:the )?(?:studs?|bolts?|threads?|hoses?|brackets?) (?:stops?|fouls?|blocks?) (?:the|an?) "
        r"(?:short|shallow|standard|ordinary|normal|regular|long|deep) (?:ones?|sockets?)"
        r"(?: (?:from )?(?:going|fitting|getting|sitting) (?:on|in|over))?$",
        "",
    ),
    (
        r"(\bplug (?:socket|skt)\b.*?),? (?:the )?plugs? (?:is|are|sits?) (?:right |deep )?down (?:in )?(?:an? |the "
        r")?(?:deep )?"
        r"(?:wells?|tubes?|holes?)\b",
        r"\1",
    ),
    (
        r"(\bplug (?:socket|skt)\b.*?\bmagnet\w*\b.*?),? (?:and )?(?:the |as |because )*rubbers? keeps? "
        r"(?:coming|falling|dropping|pulling) (?:out|off)\b",
        r"\1",
    ),
    (
        r",? (?:i |we |you )?(?:can't|cannot|can not|couldn't) (?:get|reach|go)(?: (?:in|on|at it|to it|on it|there|"
        r"it))? "
        r"(?:dead )?straight(?: on)?\b(?: (?:behind|at|under|past|to) (?:the )?[a-z ]+)?$",
        "",
    ),
    (r",? (?:in|on) (?:the )?(?:caddy|rack|hook|peg)? ?on (?:the )?wall(?: ?bo?a?rd)?$", ""),
    (r", (?:caddy|rack|hook|peg) on (?:the )?wall(?: ?bo?a?rd)?$", ""),
    (r", \d{1,3} (?:in|away for|out for|off for) (?:repair|service|calibration)$", ""),
    (r" \((?:workshop|garage|stores?|crib|shop|van|room) (?:\d{1,2}|[a-d])\)", ""),
    (
        r",? so (?:that )?(?:we|i|you|it) (?:stops?|avoids?|don't|doesn't|won't) "
        r"(?:mark|scratch|chip|damag|scuff)(?:e|s|ing)? (?:the |our |customers?'? |my )*(?:alloys?|wheels?|rims?|paint)"
        r"(?: wheels?| rims?)?$",
        "",
    ),
    (r",? ?\bmisfir(?:e|es|ing) on (?:no\.? ?|number |cyl(?:inder)?\.? ?)\d\b", ""),
    (r",? chas(?:e|ing) (?:down )?(?:an? )?(?:bad |poor )?(?:earth|ground|short|voltage drop|parasitic drain)s?$", ""),
    (r"\bthe (flat(?: web(?:bing)?)?|round|web(?:bing)?) kind\b", r"\1"),
    (r"^(?:doing|changing|fitting|replacing|removing|servicing|checking|working on) (?:the |an? )?[a-z ]+: (?=\S)", ""),
    (r"^(?:er|erm|um),? (?=\w)", ""),
    (r"\btop(?:ping)?[- ]up (?:the |my )?(?:batteries|battery|cells)\b", ""),
    (
        r"^(.*\b(?:penetrating oil|releasing oil|cleaner|degreaser)),? "
        r"for (?:(?:five|ten|fifteen|twenty|thirty|\d{1,2}) minutes|an hour|(?:one|two|\d) hours?|a few minutes)"
        r"(?=[.,;]|$)",
        r"\1",
    ),
    (r"\b(?:packs?|packets?) of (?=p?\d{2,4} ?grit\b)", ""),
    (r"^of (?:that|this|the|those|these) (?=[a-z])", ""),  # got any of that
    (r"\bthe (\d+(?:\.\d+)? ?(?:ml|mls|g|kg|l|lit(?:re|er)s?|oz)) one\b", r"\1"),  # the 50 ml one
    (
        r"\b(\d{1,3}|ten|twenty|fifty|a hundred) ?(mm|mil|millimet(?:re|er)s?|ml|mls|g) will do(?: fine| nicely)?$",
        r"\1 \2",
    ),
    (
        r"(\bdeep\b.*?) ?[-,;] ?(?:the )?(?:studs?|threads?) (?:stick|sticks|sticking|poke|pokes) (?:out|through)"
        r"(?: too far| too much| a long way| a lot)?(?: (?:on|of|from) the [a-z ]+)?$",
        r"\1",
    ),
    (
        r"((?:\bsleeved|\bcoated|protect|plastic).*?),? so (?:that )?(?:the|my) "
        r"(?:alloys?|(?:alloy )?wheels?|(?:wheel )?nuts?|rims?|paint) (?:(?:are|is) not|aren't|isn't|don't get)"
        r" (?:scratched|marked|damaged|chipped)$",
        r"\1",
    ),
    (r" ?\(\d{1,3} (?:in stock|left|on hand|available|in the bin)\)", ""),
    (r", from (?:the |an? )?(?:metric |imperial |big |old )?set$", ""),
    (r" ?\((?:small |big |old )?set spares?\)", ""),
    (r" ?\((?:hybrid|ev|hv) (?:cage|bay|area|bench|cabinet)\)", ""),
    (r", big lump$", ""),
    (r"(\b(?:insulated|vde)\b.*?\b1000 ?v) a\.?c\b\.?(?! ?[/&]| and| or)", r"\1"),
    (
        r"((?:\b(?:stubby|short|slim|flexible|low|thin|offset)\b).*?),? (?:there is |there's )?no room "
        r"(?:under|behind|in|above|round|around|by|beside) (?:the|an?) [a-z ]+$",
        r"\1",
    ),
    (
        r"(\bball\b.*?)(?: -|,)? (?:i |you )?(?:can't|cannot) get (?:straight|square|in line)(?: on| onto| to)?"
        r" the (?:screw|bolt|head)$",
        r"\1",
    ),
    (
        r"(\b(?:nut ?(?:setter|driver bit)|(?:driver|screwdriver|star|hex|pozi|ph|pz) bit|pz\d bit)\b.*?)"
        r" for (?:the |my |an? )cordless(?: drill| driver| gun)?\b",
        r"\1",
    ),
    (
        r"(\bhex (?:wrench|key)\b.*?) for (?:the |an? |my |our )(?:old |imperial )*lathe(?: tool ?posts?| chuck)?$",
        r"\1",
    ),
    (r"\bb\+ (?=nut|stud|terminal|cable|post)", ""),
    (
        r" \((?:hang(?:s|ing)?|hung|hooked|kept|stored|stands?|laid) (?:up )?on "
        r"(?:the |a )?(?:rail|hook|peg|wall|rack|shelf)\)",
        "",
    ),
    (r" \((?:keep|store|lay|stored|kept) (?:it )?flat\)|, (?:keep|store) (?:it )?flat$", ""),
    (r",? (?:the )?old one (?:is |has |was )?(?:rounded(?: off)?|stripped|chewed(?: up)?|lost|snapped)$", ""),
    # How many there are, behind the measure of a tool that has no second one: "extension 150 mm x4", "pick 90 deg x2".
    (
        r"^(?!.*\b(?:set|bits?|keys?|double|dbl|ring|open|blades?|rings?|circlips?|seals?|screws?|"
        r"bolts?|straps?|hoses?|ties?|tapes?)\b)"
        r"(?=.*\b(?:extn|exten[st]ions?|ext bar|adjust\w*|adj|ajust\w*|ratchet|pliers?|plyers?|"
        r"pilers|sockets?|skt|breaker|hammer)\b)"
        r"(.*\d ?(?:mm|in|inch|ins|lb|oz|kg|\")),? x[2-9]$",
        r"\1",
    ),
    (r"^(?=.*\b(?:picks?|pik|pikc|hooks?|pliers?|plr)\b)(.*\d ?deg(?:rees)?\.?(?: tips?)?),? x[2-9]$", r"\1"),
    (r" \((?:pit|lift|ramp|stall|trolley|cage|tray|press shop) ?\d{1,2}[a-z]?\)$", ""),
    (
        r"^(?!.*\b(?:set|kit|parts|magnetic|mag|drip|drain|sump|sockets|foam)\b)"
        r"(.*(?:[a-z\d\"]), |.*\d ?(?:mm|in|nm|v|t|kg|deg|\") )tray \d{1,2}$",
        r"\1",
    ),
    (
        r"\bso (?:that )?(?=(?:my|the|an?|our|this) (?:\d/\d|quarter|half|three[- ](?:eighths?|quarters?))[a-z\" -]* "
        r"(?:takes?|drives?|fits?|turns?|can take|will take) )",
        "",
    ),
    (
        r"\b(van|car|truck|lorry|bus|minibus|engine|tractor|pickup) with (?:an? )?(?:misfire|misfiring cylinder|"
        r"rough idle|knock|rattle|oil leak|water leak|flat battery|hard start)$",
        r"\1",
    ),
    (
        r"(\bpin punch\b.*?),? to (?:knock|drift|drive|tap|tip|get|push) (?:the |an? )?pin out(?: of (?:the |an? )?"
        r"[a-z ]+)?$",
        r"\1",
    ),
    (r",? (?:there is |there's )?no room for (?:an? )?[a-z ]+$", ""),
    (r",? 1 only$", ""),
    (
        r"(, |\()(?:a )?(?:little )?bit (?=(?:scratched|rust(?:y|ed)|dirty|greasy|oily|faded|tatty|grubby|"
        r"battered|scuffed|tarnished)(?:$|[,;)]))",
        r"\1",
    ),
    (r"\bback there\b(?=\W*$)", ""),
    (
        r",? (?:in (?:places|spots) )?where (?:an? |the )?(?:normal|standard|ordinary|full[- ]size|full[- ]length|long)"
        r"(?: one| spanner| wrench| ratchet| driver| screwdriver)? "
        r"(?:doesn't|won't|can't|will not|cannot|does not) (?:swing|fit|turn|go|reach|get in)(?: in)?$",
        "",
    ),
    (
        r"(?<=[a-z\d]) to (?:get|reach) (?:down |up |in |back )?(?:onto|on to|into|in to) "
        r"(?!.*\b(?:deep|long|tight|narrow|thin|awkward|live|hot)\b)(?:the )?[a-z ]+$",
        "",
    ),
    (
        r",? \b(?:1st|2nd|3rd|[4-9]th|first|second|third|fourth|fifth) (?:drawer|shelf|tray|rack)(?: down| up)?(?=$|"
        r"[,;)])",
        "",
    ),
    (
        r"^(?=.*\d)(.*), (?:torque|gauge|brake|axle|gearbox|bike|tyre|lube|body|tool|paint|electrical|main|tractor) "
        r"(?:board|cabinet|bench|cupboard|locker|shop|bay)$",
        r"\1",
    ),
    (r" \((?:kit|drawer|cabinet|board|shelf|bay|bench) \d{1,2}(?: spares?)?\)", ""),
    (
        r"(\b(?:lock\w*|magnet\w*|retain\w*)\b.*?),? (?:so (?:that )?(?:it|they|the (?:socket|bit))|for) "
        r"(?:can't|cannot|won't|will not|doesn't) (?:drop|fall|get lost|be lost|roll away)"
        r"(?: off| out| in| down| into)?(?: (?:the |an? )?[a-z ]+)?$",
        r"\1",
    ),
    (r", (?:van|workshop|toolbox|glovebox) kit$", ""),
    (r"(?<=[a-z\d\"]) - ?\d{1,3} ?(?:off|ea|each|pcs?)$", ""),  # so many of them: T25 - 4 off
    (r", \d{1,2} in (?:an? |the )?(?:tub|pot|tin|pack|packet)$", ""),
    (r"\bjust (?=the (?:bent|long|short|straight|small|big|plain)(?: one\b|$))", ""),
    (
        r",? (?:two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\d{1,2}) of them(?=,|$)",
        "",
    ),
    (r"\(found (?:in|on|under|behind) (?:the )?[a-z]+(?: [a-z]+)?\)", ""),
    (r" - (?:oily|greasy|dusty)$|, (?:oily|greasy|dusty)$", ""),
    (r"\bfor (?:the|my|a) cordless(?: drill| driver| screwdriver)?$", ""),
    (r",? \(?ev bay\)?$", ""),
    (r"^take along (?:one |an? |the )?(?=\w)", ""),
    (r"\bproper(?:ly)? handled (?=.*\bscrewdriver\b)", ""),
    (r"\bto get (?:a?round|past) (?:the )?[a-z ]+$", ""),
    (r"^(gasket (?:paper|sheet|material)\b.*?) (?:to cut|to make|for cutting|for making) (?:an? |the )?.*$", r"\1"),
    (r"^(?:an? )?pair of (?=\d{3}\b|(?:one|two|three)(?:-| hundred))", ""),
    (r"\bint[/ ]ext (?=rev)|(?<=reversible )int[/ ]ext\b", ""),
    (r"(?:[,;] | - )(?:van|board) \d{1,2}[a-z]?$", ""),
    (
        r"^(?=.*\bp?21 ?w? ?[/ ] ?5w?\b|.*twenty[- ]one five watt)(?=.*\b(?:bulb|lamp)\b)"
        r"(?!.*\b(?:wedge|capless)\b)"
        r"(.*?),? (?:twin|double|dual)[- ]fil\w*\.?",
        r"\1",
    ),
    (
        r"^(?=.*\bp?21 ?w? ?[/ ] ?5w?\b|.*twenty[- ]one five watt)(?!.*\b(?:wedge|capless|baz15d)\b)"
        r"(.*?),? (?:with )?off?set[- ]pins?\b",
        r"\1",
    ),
    (
        r"^(?=.*\bp?21 ?w? ?[/ ] ?5w?\b|.*twenty[- ]one five watt)(?!.*\b(?:wedge|capless|baz15d)\b)"
        r"(.*?),? bayonet(?: cap)?(?: with)?\b",
        r"\1",
    ),
    (r"^[^?]*\? ?no ?-+ ?(?=[a-z]{3})", ""),  # "ceramic? No - copper": what it was first taken for
    (r", \d{1,3} (?:in (?:stock|hand)|on (?:the )?(?:shelf|hand)|counted|remaining|opened|off)$", ""),
    (r", (?:counted|count|stock) \d{1,3}$", ""),
    (r",? \b\d{1,3} (?:per|to (?:a|the)|in (?:a|the)) (?:carton|box|case|pack)$", ""),
    (r"\(?\b(?:half|part(?:ly|ially)?|nearly|almost)[- ](?:used|full|empty|gone)\b\)?", ""),
    (r",? \b(?:keep|store|kept|stored) in (?:the |a )?(?:fridge|refrigerator|cool place)$", ""),
    (r", (?:do not|don't) take (?:it )?(?:into|in) [a-z ]+$", ""),
    (r", (?:a |the )?(?:stack|pallet|shelf|box|rack|crate) by the (?:gate|door|wall|window|stairs)$", ""),
    (
        r"^(?=.*\d ?(?:ml|l|lt|ltr|lit(?:re|er)s?|g|gm|kg)\b)(.*), (?:(?:welding|grease|oil|tyre|paint|electrical|"
        r"brake|wash|body|chemicals?|locked|flammables?|solvents?|lubes?) ){1,2}"
        r"(?:bay|stores?|bench|cabinet|locker|cupboard|room|cage|shelf)$",
        r"\1",
    ),
    (
        r"^(?:that |the |some )?((?:[a-z]+ )?)stuff (?:you|we|they|people) (?:put|use|spread) [^,\d]*"
        r"(?:, for [^,\d]*)?, ([^,]+)$",
        r"\1\2",
    ),
    (r"^(?=.*\d)(.*?),? (?:in an? |for an? )?(?:tight|awkward|narrow) (?:spot|space|place|corner|gap)s?\b", r"\1"),
    (r"(?:\ba )?\bhandful(?: of)?\b", ""),
    (r" \(\d{1,3} of\)", ""),
    (
        r",? ?\b(?:ex|formerly|former|used to be)[- ](?!la?r?ge?\b|small\b|rated|zone|proof|certif|atex|d\b|"
        r"i[abc]\b)(?:an? )?[a-z0-9][a-z0-9 /-]{2,30}?(?=,|;|$|\))(?<!ex works)",
        "",
    ),
    (
        r"^(?=.*\b(?:tester|gauge)\b)(.*?)[(,]? ?\bm\d{2}(?: x ?[\d.]+)? (?:is |now )?(?:gone|missing|lost|"
        r"broken)\b\)?",
        r"\1",
    ),
    (r"[-,;(]* ?\bnew \d\d/\d\d\b\)?", ""),
    (r"(?<=\d) in it\b", ""),
    (
        r",? ?\b(?:i )?(?:need|want) (?:two|three|four|five|six|\d)(?: (?:of them|off))?$|,? \b(?:two|three|"
        r"four|\d) if (?:you have|there are|possible)(?: it| them)?$",
        "",
    ),
    (r"^(?=.*\b(?:spanner|spnr|wrench|socket|skt|pliers|screwdriver|hammer|ratchet)s?\b)(.*\d ?mm) x ?[2-9]$", r"\1"),
    (r",? ?\bwood(?:en)? handles?\b", ""),
    (
        r"\b(?:that|which) (?:is|are) (?=(?:magnetic|insulated|impact|deep|long|short|stubby|flexible|bent|"
        r"angled|swivel\w*)\b)",
        "",
    ),
    (
        r"[-,;(]* ?\bnew,? (?:in )?20[12]\d\b\)?|[-,;(]* ?\b(?:bought|purchased|received|ordered|replaced)"
        r" (?:in )?(?:[a-z]{3,9} )?20[12]\d\b\)?",
        "",
    ),
    (
        r",? ?\b(?:a )?couple of (?:sheets?|lit(?:re|er)s?|tubes?|cans?|tins?|bottles?|pairs?|packs?|rolls?|"
        r"lengths?|pieces)\b(?: of)?",
        "",
    ),
    (r"[-,(]* ?\b(?:on )?(?:the )?(?:top|bottom|middle|upper|lower) (?:shelf|drawer|tray|rack)\b\)?", ""),
    (
        r",? (?:red|blue|green|yellow|white|black|orange|pink|purple) (?:tape|band|dot|stripe|ring|tag|paint)"
        r"(?: mark)?$",
        "",
    ),
    (
        r"^(?!.*\b(?:torque|wrench|tw)\b)(.*?\d.*?),? (?:then |and )?"
        r"(?:tighten(?: to)?|refit at|refit|(?:bolts?|plug|nuts?) to) "
        r"\d[\d ./-]* ?(?:n\.?m|in-?lbs?|ft-?lbs?)$",
        r"\1",
    ),
    (r"\bthe (?:van|minibus|flatbed|truck|lorry|car|bus|engine)'s got\b", ""),
    (r"\([^()]*\b(?:do not lend|don't lend|and the like|back of|ask first|low stock|green or brown)\b[^()]*\)", ""),
    (r"\((?:dilute|shake|mix)[^()\d]*\)", ""),
    (r",? \b(?:half a|one|two|three|\d+) met(?:re|er)s? between [a-z ]+$", ""),
    (r",? every \d+(?:\.\d+)? ?(?:mm|cm|m) [a-z ]+$", ""),
    (r", (?:one|two|three|four|half a|a) (?:full )?turns?(?: only)?$", ""),
    (r",? about (?:\d+(?:\.\d+)?|half a|one|two|three|four|five|ten) (?:litres?|liters?|ml|kg|grams?|g)\b", ""),
    (
        r",? (?:but )?not (?:over|on|near|into|onto) (?:the|any) "
        r"(?:gaskets?|threads?|boots?|linings?|discs?|seat|head)\b",
        "",
    ),
    (
        r",? between (?:the )?(?:socket|ratchet|extension|wrench|bar|handle)s? and "
        r"(?:the )?(?:socket|ratchet|extension|wrench|bar|handle)s?\b",
        "",
    ),
    (r",? (?:crosswise|diagonally|in a star pattern)$", ""),
    (
        r", (?:and )?(?:held|left|kept|turned|pushed) (?:at|in|on|flush|clear|square|against|by) (?!.*\d).*$",
        "",
    ),
    (r"(?<=drive), so that (?!.*\d).*$|(?<=mm), so that (?!.*\d).*$", ""),
    (r"(?:, |; ?)?\b(?:one|two|three|four|\d) (?:for|per|on|to) (?:each|every) [a-z ]+$", ""),
    (r", (?:to be )?applied (?:after|before|on) [a-z ]+$", ""),
    (r",? ?\b(?:service |wear )?limit(?: of)? \d+(?:\.\d+)? ?mm\b", ""),
    (r"(\b(?:gloves?|wipes?|masks?)\b.*) x ?(?:50|100|150|200|250|500|1000)$", r"\1"),
    (r"\b(?:calibrated(?: and)? )?in date\b|\b(?:with |w/ ?)(?:valid )?cal(?:ibration)? cert\w*(?: valid)?\b", ""),
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
    (
        r",? (?:it )?(?:has to|must|needs? to|should|able to) (?:read|reach|go|take|measure|show)(?: up)?(?: to)? "
        r"(?=\d|one|two|three|four|five|six|seven|eight|nine|ten|[a-z]+teen|twenty|thirty|forty|fifty)",
        " ",
    ),
    (r"\b(left|right)[- ]hand side\b", r"\1"),
    (
        r"\b(?:all|the|both) (?:\d{1,2}|two|three|four|five|six|eight|ten|twelve) "
        r"(?=(?:bolts?|nuts?|screws?|studs?)\b)",
        "",
    ),
    (r"\b(?:down|on|at) one (?:side|end)\b", ""),
    (r",? \b(?:two|three|four|five|six|eight|ten) (?:in|to) (?:the|a) (?:roll|box|pack|bag|set|case)$", ""),
    (r"\bstandard height\b", ""),
    (r",? \beither (?:bottle|one|size|tube|can)$", ""),
    (
        r"\bthat(?:'ll| will)? (?:gets? (?:me |us )?to|does?|do|go(?:es)? to|reads?|reach(?:es)?|covers?|shows?)\b",
        " ",
    ),
    (
        r"(cleaner|grease|oil|spray|driver|wrench|spanner|socket|sealant|paste), not (?:the |an? )?(?:[a-z]+ )?\1\b",
        r"\1",
    ),
    (
        r"\b(?:plus|then|and|by) (?:(?:an?|another|a further) )?(?:quarter|half|third|eighth|[1-3]/[48])"
        r"(?:[- ]of a)?[- ]turn\b",
        " ",
    ),
    (r",? ?\b(?:a|one|100|1000) ?(?:hundred|thousand|dozen)? (?:in|to) (?:the|a) (?:bag|box|pack|packet|tin)\b", " "),
    (
        (r"\b(?:the|a|an) (?!(?:number|size|no|nr|class|grade|type|twenty|thirty|forty|fifty)\b)([a-z]+) one\b"),
        r"\1",  # the deep one
    ),
    (r",\s*(?:two|three|four|five|six|eight|ten)(?: off)?$", ""),  # so many of them
    (
        (r"\b(?:overhauled|reconditioned|serviced|bought|repaired|tested|rebuilt|painted)(?: in)? (?:19|20)\d\d\b"),
        " ",
    ),
    (r"\b(?:two|three|four|five|six|eight|ten) (?=\d{1,2}/\d{1,2}-\d\d\b)", ""),  # so many bolts
    (r", [a-z]+ (?:a bit|slightly|rather|quite) [a-z]+$", ""),  # pin a bit loose
    (r"\bon (?:the|a) (?:torque )?(?:tester|test bench|analyser)$", ""),
    (
        r"\b(?:at )?(?:one|each|either|the other|other) end\b|(?<=\d mm) the other$",
        " ",
    ),  # a spanner, 16 mm one end
    (r"\((?:\+ ?|with |and |has )?(?:a )?spare [^()]*\)", " "),
    (r"\((?:it )?(?:lives|kept|stored|hangs|hung|stays|belongs|sits|stands|keep|lies) [^()]*\)", " "),
    (r",? (?:the )?(?:one|ones) (?:you|we|that|which|they)\b.*$", " "),  # the one you hit
    (r"\b(?:the )?(bendy|bent|long|short|stubby|deep|thin|small|big|straight) ones\b", r"\1"),
    (r",? one per (?:port|cylinder|side|bolt|hole)\b", ""),
    (r"\(?\bsign(?:ed)? out\b\)?", " "),
    (
        r"\bfor an? (?:straight |in-?line )?(?:three|four|five|six|[3-6]|v ?[68])(?=$|[,;)]|\.(?!\d))",
        " ",  # so many cylinders
    ),
    (r" \((?:[a-z]+ )+(?:axle|sump|box|diff|side|case),? \d(?:\.\d+)? ?l(?:itres?)?\)$", ""),  # as much as it takes
    (r" \(hold \d[\d.]* ?(?:bar|psi|kpa)(?:,? (?:for )?\d+ ?min\w*)?\)$", ""),
    (r",? (?:the |a )?(?:big|large|small|little|good|old|new|spare) one$", ""),
    (r"(\bdrill\b.*) \((?:stud|bolt|screw|stud and bolt) (?:removal|extraction|removing)\)$", r"\1"),
]
