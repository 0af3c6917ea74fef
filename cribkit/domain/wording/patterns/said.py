"""What is said in passing: how many there should be, that anything will do, where a thing is kept, dates."""

from __future__ import annotations

# A date as labels have it: Oct, Oct 26, 06/26, 2026-06, 12/06/2026.
_DATE = (
    r"(?:\d{4}-\d\d(?:-\d\d)?|(?:\d\d?/)?\d\d?/(?:20)?\d\d|"
    r"(?:jan|feb|mar|apr|may|jun|jul|aug|sept?|oct|nov|dec)[a-z]*\.?(?: '?(?:20)?\d\d)?|0[1-9]|1[0-2])"
)

SAID = [
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
    (r", straight nose, no ball$", ", plain end"),
    (r"\blockers \(locking pliers\)", "locking pliers"),
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
    (r"\b(?:to|at) \d(?:\.\d)? bar with (?=(?:an? |the )?cooling)", "with "),
    (r", not the (?:\d+|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen)$", ""),
    (r"\b(\d{1,2}) ?mm m\1\b", r"m\1"),
    (r"^half by (?=(?:\w+|\d+)[- /](?:sixteenths|eighths|16))", "1/2 x "),
    (r"\btub(?=\d{2,3}\b)", "tub "),
    (r"\bprotected (?=(?:deep |impact )*(?:socket|skt)\b)", ""),
    (r"(?<=\dv),? truck$|(?<=\d v),? truck$|(?<=\bdrive), lorry (?:wheels|bits)$|(?<=kn m), lorry wheels$", ""),
    (r"(\bflange nut),? (?:for )?(?:the )?exhaust (?:clamp|bracket|flange|stud|u-?bolt)s?\b", r"\1"),
    (r"(\bdielectric grease\b.*?),? (?:for )?bulb (?:sockets|holders|caps)\b", r"\1"),
    (r"(\bjaw (?:gear )?puller\b.*?), (?:harmonic )?balancer$", r"\1"),
    (r"(\bextension on (?:the )?(?:1/4|3/8|1/2|3/4)(?: drive)?) to reach the [a-z ]+$", r"\1"),
    (r"\b(\w+) extension on (?=(?:the )?(?:1/4|3/8|1/2|3/4|quarter|half|three[- ]eighths?)\b)", r"\1 extension, "),
    (r"^leaking (?:oil|coolant|fuel):? (?=.*\bgasket\b)|\bleaking (?:oil|coolant|fuel|water): (?=.*\bgasket\b)", ""),
    (r",? for use (?:on|with) (?:an? |the )?impact (?:wrench|gun|driver)\b", ", impact"),
    (r"\b(?:gun )?cartridge for the gun\b|(?<!grease )(?<!grease-)\bgun cartridge\b", "cartridge"),
    (r"\burea for (?:the )?(?:scr|adblue|def)(?: tank| system)?\b", "urea solution"),
    (r"^(\d+(?:\.\d)? ?mm) flat ?head$", r"slotted screwdriver \1"),
    (r"^(?=.*\b(?:1000 ?v|insul|vde))(.*?)\bcombis\b(?=.*\b(?:1[4-9]\d|2\d\d) ?mm)", r"\1combination pliers"),
    (r"\bpz (?=(?:cross|screwdriver|driver|s/driver|bit|sdrv)\b.*\bpz ?[0-4]\b)", ""),
    (r"^(?=.*\b(?:nuts?|plugs?|studs?|bolts?|screws?)\b)(.*?\bby )one[- ]five\b(?! (?:hundred|mm|mil))", r"\g<1>1.5"),
    (r"^(?=.*\b(?:nuts?|plugs?|studs?|bolts?|screws?)\b)(.*?\bby )one[- ]two[- ]five\b", r"\g<1>1.25"),
    (r"\b0,(\d{2,3})(?= ?(?:-|to\b|/|x\b|mm\b|$))", r"0.\1"),
    (r"\bmin\.? (\d+)(?: ?n\.?m)?,? max\.? (?=\d+ ?(?:n\.?m|ft|in|lb))", r"\1-"),
    (r"\bclk\b(?=.*\b(?:torque|nm|n\.m|ft-?lb|\d+ ?nm)\b)|(?<=\btw )clk\b|(?<=sd )clk\b", "click"),
    (r"(?<=, )inch (?=out\b)", "1 inch "),
    (
        r"\b(three[- ]quarters?|half|three[- ]eighths|3/4|1/2|3/8)(?:[- ]inch|"
        r"\")? (?:going )?in,? (?:and )?(1|3/4|1/2|one|three[- ]quarters?|half)(?: ?inch|\")? (?:coming )?out\b",
        r"\1 female, \2 inch male",
    ),
    (r"(?<=[\s,])l\.(?=\d{2,3} ?mm)", "long "),
    (r"\b(6|8|12) ?p(?= (?:socket|skt|sckt)\b)", r"\1pt"),
    (r"(?<=\d/\d)(?:\"| ?in)? d\b(?=$| \d|,)", " dr"),
    (r"(?<=\d/\d)(?:\"| ?in)? ?s/d\b|(?<=\b1)\" ?s/d\b", " in drive"),
    (r"\b(shallow|semi[- ]deep|standard)[- ]well(?= (?:socket|skt)\b)", r"\1"),
    (r"\b(?:mid|med|medium|intermediate)[- ]?length(?= (?:socket|skt)\b)", "semi-deep"),
    (r"\bhalf[- ]deep(?= (?:socket|skt)\b)", "semi-deep"),
    (r"\bimpact (?:gun|wrench)(?= (?:socket|skt)\b)", "impact"),
    (r"(?<!air-)(?<!air )(?<!rattle )\b(deep )?gun(?= (?:socket|skt)\b)", r"\1impact"),
    (r"\bnonimpact\b|\bnot for impact(?= (?:socket|skt)\b)", "non-impact"),
    (r"\bhand[- ]operated(?= (?:socket|skt)\b)", "hand"),
    (r"\bchrome plated(?= (?:hand )?(?:socket|skt)\b)", "chrome"),
    (r"\b(?:an? |one )?inch and (?:an?|one)[- ](quarter|half|eighth|sixteenth)\b", r"one and one \1 inch"),
    (r"\binch and (three|five|seven)[- ](quarters|eighths|sixteenths)\b", r"one and \1 \2 inch"),
    (r"(?<=\d/\d)(?:\"| ?in)? ?w{1,2}(?= (?:socket|skt|spanner|spnr|wrench)\b)", " whitworth"),
    (r"\b(t\d{1,2}) h(?= (?:bit|key|skt|socket)\b)", r"\1 tamper"),
    (r"\bhex(\d{1,2})(?= (?:bit|skt|socket|key)\b)", r"hex \1 mm"),
    (r"\bhex (\d+(?:\.\d)? ?mm )?tr(?= (?:bit|key|skt|socket)\b)", r"hex \1tamper"),
    (r"\bm-(?=\d{1,2} triple)", "m"),
    (r"\bm(\d{1,2}) internal 12[- ]p(?:oin)?t\b", r"m\1 triple square"),
    (r"#([0-4]) (ph|pz)\b", r"\2\1"),
    (r"\bpzd ?(?=[0-4]\b)", "pz"),
    (r"(?<=\bjis )cross[- ]recess\b", ""),
    (r"(?<![a-z])sl (?=\d+(?:\.\d)? ?mm\b)", "slotted "),
    (r"(?<=\dmm )sl(?= bit\b)|(?<=\d mm )sl(?= bit\b)", "slotted"),
    (r"\bflat ?head (?=\d+(?:\.\d)? ?mm bit\b)", "slotted "),
    (r"\b(?:sq(?:uare)?\.?[- ]?(?:no\.? ?|size |#)?|number two square)([0-4])(?= bit\b)", r"square no. \1"),
    (r"\bnumber (one|two|three) square bit\b", r"square no. \1 bit"),
    (r"\b6\.35 ?mm(?= hex)", "1/4 in"),
    (r"(?<=\bbit )(1/4|5/16)(?:\"| ?in)? hex dr(?:ive)?\b", r"\1 hex shank"),
    (r"\b8 ?mm \(5/16(?:\"| ?in)?\)(?= hex)", "5/16 in"),
    (r"(?<!mm )(?<!\d )(?<!\d\" )(?<!in )\bhex shank (\d+ ?mm)\b(?! ?x|,? ?long)", r"\1 hex shank"),
    (r"(?<=mm )oal\b|\boal (?=\d+ ?mm\b)", "long "),
    (r"\bext(?:n|ension)?bar\b", "extension bar"),
    (r"\bratchet extension\b", "extension"),
    (r"\bwobble[- ]head(?= ext)", "wobble"),
    (r"\bwobl?b?(?= (?:ext|bar))", "wobble"),
    (r"\blockg\b", "locking"),
    (r"\b(?:pos(?:itive)?|self|button)[- ]lock(?:ing)?(?= (?:ext|bar|adapt))", "locking"),
    (r"\bswiv(?= (?:socket|skt|ratchet)\b)", "swivel"),
    (r"\brach[ei]tt\b", "ratchet"),
    (r"\b(\d{2}) ?(?:th\.?|toothed)(?= (?:ratchet|rtcht|head)\b)", r"\1 tooth"),
    (r"\bq(?:k|ik|uik|uick)\.?[- ]r(?:el|ls|lse|elease)(?: button)?\b", "quick release"),
    (r"\b(?:push[- ])?button[- ]release\b", "quick release"),
    (r"\b(?:brk|breaker|hinged?|breaking) b(?:a?r)\b", "breaker bar"),
    (r"\bslid(?= t\b)", "sliding"),
    (r"\bball[- ]?head(?= (?:hex|allen|key))|\bb/e(?= (?:hex|allen))", "ball end"),
    (r"\b(hex|allen)key\b", r"\1 key"),
    (r"\bt[- ]shaped? handle\b", "t handle"),
    (r"\bbitsocket\b", "bit socket"),
    (r"\bpei?ces\b|\bpeices?\b", "pieces"),
    (r"(?<=\d)~(?=\d)", "-"),
    (r"^(?=.*\bsets?\b)(.*?\d) ?mm (?:to|up to|through|thru) (?=\d+(?:\.\d+)? ?mm\b)", r"\1-"),
    (r"^(?=.*\bsets?\b)(.*\d/\d)(?:\"| ?in)? (?:up to|through|thru) (?=\d)", r"\1 to "),
    (r"^(?=.*\bsets?\b)(.*\d) (?:up to|through|thru) (?=\d)", r"\1 to "),
    (r"\b(\d{1,3})-part\b", r"\1 piece"),
    (r",? \(?(?:for |to )?top(?:ping)?[- ]up\)?$", ""),  # oil, top up
    (r"^service: ", ""),
    (r"^(?=.*\bflaring\b)(.*?)\b4\.75\b(?! ?mm)", r"\g<1>4.75 mm"),
    (
        r",? \b(?:and )?(?:it )?(?:has|have|needs|ought) to be (?:a |an |the )?(deep|long|short|shallow|thin|"
        r"insulated|magnetic|impact)(?: one)?$",
        r", \1",
    ),
    (r"^(?=.*shrink)(.*?)\bthree to one\b", r"\g<1>3:1"),
    (r"^(?=.*shrink)(.*?)\btwo to one\b", r"\g<1>2:1"),
    (r"^(?=.*shrink)(.*?)\bfour to one\b", r"\g<1>4:1"),
    (r"(\b(?:grip|zip|press|snap)[- ]?(?:seal|top|lock)\b.*\bbags?\b.*\d.*), ?(?:100|500|1000)$", r"\1"),  # how many
    (r"\bf/thd\b", "full thread"),
    (
        r"^for (the|an?) ((?:[a-z]+[ -]){0,3}[a-z]+): (?=.*[a-z])(.+)$",
        r"\3 for \1 \2",
    ),
    (r"\bbeneath (?=the\b|an?\b)", "under "),
    (
        r"\b(?:an?|one|another|about a) (?:quarter|half|full|1/[248])(?: of a)?[ -]turns?(?: (?=(?:with|using)\b)|$)",
        "",
    ),
    (
        r"(?<=\w) (?:which |that |where )?a (?:socket|ring spanner) (?:won'?t|will not|can'?t|cannot|can not|"
        r"does ?n[o']t) (?:go|fit|get|reach)(?: (?:over|on|onto|in|into|past|to))?(?=[.,;)]|$)",
        "",
    ),
    (r"\bfor knocking (?=(?:the|a|an|out|off|in|on|back|loose|free)\b)", "for driving "),
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
    (r"\bone and a half bar\b", "1.5 bar"),
    (r"\btwo and a half bar\b", "2.5 bar"),
    (r"(?<=\d) 1/2 ?(?=(?:mm|bar)\b)", ".5 "),
    (r"(?<=\d)½ ?(?=(?:mm|bar)\b)", ".5 "),
    (r"\b(click|beam|dial|lever|plunger)type\b", r"\1 type"),
    (r",? ?\bmisfir(?:e|es|ing) on (?:no\.? ?|number |cyl(?:inder)?\.? ?)\d\b", ""),
    (r",? chas(?:e|ing) (?:down )?(?:an? )?(?:bad |poor )?(?:earth|ground|short|voltage drop|parasitic drain)s?$", ""),
    (r"^stick (?=an? |the )", "use "),
    (r"\bfor (?:the|an?|our) \d+(?:\.\d+)?[- ]?tonner\b", "for the lorry"),
    (r"\bsold as (?:a )?(?:2|two|pair)\b", "pair"),
    (r"\ba\.c\.? ?/ ?d\.c\.?(?=[ ,]|$)", "ac/dc"),
    (r"\bthe (flat(?: web(?:bing)?)?|round|web(?:bing)?) kind\b", r"\1"),
    (r"^(?:doing|changing|fitting|replacing|removing|servicing|checking|working on) (?:the |an? )?[a-z ]+: (?=\S)", ""),
    (r"^(?:er|erm|um),? (?=\w)", ""),
    (r"\bhead ?bolts\b", "head bolts"),
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
    (r",? (?:the |an? )?(\d{1,2}(?:\.\d+)? ?(?:%|per ?cent)) stuff\b", r", \1"),
    (
        r"\b(\d{1,3}|ten|twenty|fifty|a hundred) ?(mm|mil|millimet(?:re|er)s?|ml|mls|g) will do(?: fine| nicely)?$",
        r"\1 \2",
    ),
    (
        r"^(?!.*\d ?(?:pce?s?|pieces?)\b)(.*\b(?:allen|hex) key set) (\d[\d.]*)/(?:\d[\d.]*/){4}(\d[\d.]*) ?mm\b",
        r"6 pc \1 \2-\3 mm",
    ),
    (
        r"^(?!.*\d ?(?:pce?s?|pieces?)\b)(.*\b(?:allen|hex) key set) (\d[\d.]*)/(?:\d[\d.]*/){5}(\d[\d.]*) ?mm\b",
        r"7 pc \1 \2-\3 mm",
    ),
    (
        r"^(?!.*\d ?(?:pce?s?|pieces?)\b)(.*\b(?:allen|hex) key set) (\d[\d.]*)/(?:\d[\d.]*/){6}(\d[\d.]*) ?mm\b",
        r"8 pc \1 \2-\3 mm",
    ),
    (
        r"^(?!.*\d ?(?:pce?s?|pieces?)\b)(.*\b(?:allen|hex) key set) (\d[\d.]*)/(?:\d[\d.]*/){7}(\d[\d.]*) ?mm\b",
        r"9 pc \1 \2-\3 mm",
    ),
    (
        r"^(?!.*\d ?(?:pce?s?|pieces?)\b)(.*\b(?:allen|hex) key set) (\d[\d.]*)/(?:\d[\d.]*/){8}(\d[\d.]*) ?mm\b",
        r"10 pc \1 \2-\3 mm",
    ),
    (r"\bthe three[- ]eighths?\b", "the 3/8"),
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
    (r"(?<=\d) \((mm|in)\)", r" \1"),
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
        r"^(?=.*\bball\b)(.*?\b(?:allen|hex)\b.*?)(?:, )?\b(?:the )?(long |short )?(?:one )?with (?:the |an? )?balls?"
        r"(?: on(?: (?:it|them|the ends?))?)?(?=$|,)",
        r"\1 \2ball end",
    ),
    (r"(\b(?:allen|hex) keys?) with balls on\b", r"\1 ball end"),
    (
        r"\bset of (two|three|four|five|six|seven|eight|nine|ten|\d{1,2})(?= (?:[a-z-]+ )*(?:allen|hex) keys\b)",
        r"\1 pc set of",
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
    (r"(?<= )f\. (?=[a-z]{3})", "for "),
    (r"\bf/bed\b", "flatbed"),
    (r"\bm/bus\b", "minibus"),
    (
        r" \((?:hang(?:s|ing)?|hung|hooked|kept|stored|stands?|laid) (?:up )?on "
        r"(?:the |a )?(?:rail|hook|peg|wall|rack|shelf)\)",
        "",
    ),
    (r" \((?:keep|store|lay|stored|kept) (?:it )?flat\)|, (?:keep|store) (?:it )?flat$", ""),
    (r"^an? h (?:one|1)\b(?=,? (?:twelve|twenty|12|24)[ -]?v)", "bulb h1"),
    (r"(\d) ?mm (?=[234]:1\b)", r"\1 mm, "),  # no square millimetres: what it shrinks by
    (r",? (?:the )?old one (?:is |has |was )?(?:rounded(?: off)?|stripped|chewed(?: up)?|lost|snapped)$", ""),
    (
        r"\b(spanner|wrench) with (?:an? )?(?:ring|box)(?:[- ]end)?(?: on| at)? (?:one|the one) (?:side|end),?(?: and)?"
        r"(?: an?)? (?:open|jaw)[- ](?:jaw|end|ended)(?: on| at)?(?: the)? other(?: (?:side|end))?\b",
        r"combination \1",
    ),
    (
        r"\b(spanner|wrench) with (?:an? )?(?:open|jaw)[- ](?:jaw|end|ended)(?: on| at)? (?:one|the one) (?:side|end),?"
        r"(?: and)?(?: an?)? (?:ring|box)(?:[- ]end)?(?: on| at)?(?: the)? other(?: (?:side|end))?\b",
        r"combination \1",
    ),
    (r"\bpoint (?:oh|o) (?=(?:one|two|three|four|five|six|seven|eight|nine)\b)", "point zero "),
    (r"(\b(?:gauges?|feelers?|blades?|from)) point (?=zero [a-z])", r"\1, point "),
    (
        r"\bto point (?=(?:zero )?(?:one|two|three|four|five|six|seven|eight|nine) (?:mm|mil|millimet))",
        "to zero point ",
    ),
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
    (r"\b(\d{1,2})-1/2 ?mm\b", r"\1.5 mm"),
    (r"\bfwd ?[/ ] ?rev(?: lever| switch)?\b|\bforward ?(?:and|/) ?reverse (?:lever|switch)\b", "reversible"),
    (
        r"\b(?:open|jaw)(?:[- ]end)?(?: on| at)? one (?:side|end),?(?: and)?(?: an?)? (?:box|ring)(?:[- ]end)?"
        r"(?: on| at)?(?: the)? other(?: (?:side|end))?\b,?"
        r"|\b(?:box|ring)(?:[- ]end)?(?: on| at)? one (?:side|end),?(?: and)?(?: an?)? (?:open|jaw)(?:[- ]end)?"
        r"(?: on| at)?(?: the)? other(?: (?:side|end))?\b,?",
        "combination",
    ),
    (
        r"\b(\d{1,2}) ?mm(?: on| at)? one (?:side|end),?(?: and)? (\d{1,2}) ?mm(?: on| at)?(?: the)? other(?: (?:side|"
        r"end))?\b",
        r"\1 x \2 mm",
    ),
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
        r",? goes on (?:my|the|an?|our) (1/4|3/8|1/2|3/4|quarter|half|three[- ]eighths?)[- ]?(?:inch|in\b\.?|\")?"
        r"(?: drive| dr)? (?:extension|ratchet|handle|bar|torque wrench)\b",
        r", \1 drive",
    ),
    (
        r"(\b(?:lock\w*|magnet\w*|retain\w*)\b.*?),? (?:so (?:that )?(?:it|they|the (?:socket|bit))|for) "
        r"(?:can't|cannot|won't|will not|doesn't) (?:drop|fall|get lost|be lost|roll away)"
        r"(?: off| out| in| down| into)?(?: (?:the |an? )?[a-z ]+)?$",
        r"\1",
    ),
    (r"\b(set of \d{1,2}): (?=\d)", r"\1, "),  # no ratio
    (r"\bone and a half (?:up )?to (?=(?:eight|ten|twelve) mil)", "1.5 to "),
    (r", (?:van|workshop|toolbox|glovebox) kit$", ""),
    (r"\bpoint eight (?=(?:mm |mil )?thick\b)", "0.8 "),
    (r"\bpoint six (?=(?:mm |mil )?thick\b)", "0.6 "),
    (r"\bpoint five (?=(?:mm |mil )?thick\b)", "0.5 "),
    (r"(?<!1\.5/)(?<!1\.5, )(?<!1\.5,)\b2(?:\.0)?[ ,/]+2\.5[ ,/]+3[ ,/]+4[ ,/]+5[ ,/]+6[ ,/]+8(?: ?mm)?$", "2-8 mm"),
    (
        r"\b1\.5[ ,/]+2(?:\.0)?[ ,/]+2\.5[ ,/]+3(?:\.0)?[ ,/]+4[ ,/]+5[ ,/]+6[ ,/]+8[ ,/]+10(?: ?mm)?\b",
        "1.5-10 mm",  # every size there is in between
    ),
    (r"\bquat(?:er|re|tre)(?=[- ](?:inch|in\b|drive|dr\b|hex|sq))", "quarter"),
    (r"\bsq(?:aure|are|uar|uae)\b", "square"),
    (r"(?<=ty)([- ])five[- ]star\b", r"\1five , star"),  # a size of six-lobe tips, no lobes
    (r"(?<=ty)[- ]five[- ]lobe\b", " five"),
    (
        r"\btee[- ](?=(?:eight|nine|ten|fifteen|twenty|twenty[- ]five|thirty|forty|fifty|sixty)\b)(?!.*\bpieces?\b)",
        "t ",
    ),
    (r"(?<=[a-z\d\"]) - ?\d{1,3} ?(?:off|ea|each|pcs?)$", ""),  # so many of them: T25 - 4 off
    (r", \d{1,2} in (?:an? |the )?(?:tub|pot|tin|pack|packet)$", ""),
    (
        r"(?:^|(?<=, )|(?<=ordinary )|(?<=standard )|(?<=short )|(?<!half )(?<!of )\b(?:an?|one) )inch[- ]long\b",
        "1 in long",
    ),
    (r"\b(?:the )?short inch(?: ones?\b|(?=,|$))", "1 in"),
    (r"\binch and a half (?=blade|shaft|shank|long)", "1-1/2 in "),
    (r"\bjust (?=the (?:bent|long|short|straight|small|big|plain)(?: one\b|$))", ""),
    (r"\b([a-z]+)-and-a-half\b", r"\1 and a half"),
    (
        r",? (?:two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\d{1,2}) of them(?=,|$)",
        "",
    ),
    (r"\(found (?:in|on|under|behind) (?:the )?[a-z]+(?: [a-z]+)?\)", ""),
    (r" - (?:oily|greasy|dusty)$|, (?:oily|greasy|dusty)$", ""),
    (r"\bfor (?:the|my|a) cordless(?: drill| driver| screwdriver)?$", ""),
    (r",? \(?ev bay\)?$", ""),
    (r"\b(?:that|which) folds? like an? (?:pen|pocket|jack)[- ]?knife\b", "folding"),
    (r"\b(?:pen|pocket|jack)[- ]?knife[- ](?:style|type|pattern)\b", "folding"),
    (r"^take along (?:one |an? |the )?(?=\w)", ""),
    (r"\bproper(?:ly)? handled (?=.*\bscrewdriver\b)", ""),
    (r"(?<=\d) up to (?=\d)", " to "),
    (r"\b(one and a half|two|one) up to (?=(?:eight|ten|twelve|fourteen)\b)", r"\1 to "),
    (r"\b(?:that|which) (?:can be )?(?:folds?|folded)(?: up| away| flat)?\b", "folding"),
    (
        r"\b(?:that|which) (?:stands?|takes?|withstands?|resists?|can take) (?:the )?(?:high )?(?:heat|"
        r"high temperatures?)\b",
        "high temperature",
    ),
    (
        r"\b(?:that|which) (?:stands?|takes?|withstands?|resists?) (?:the )?(?:sunlight|sunshine|sun|uv(?: light)?)\b",
        "uv resistant",
    ),
    (r"\b(?:that|which) resists? cuts?\b", "cut resistant"),
    (r"\bwith (?:an? )?(long|short|bent|flat|round|straight) nose\b", r"\1 nose"),
    (r"\bto get (?:a?round|past) (?:the )?[a-z ]+$", ""),
    (r"^(gasket (?:paper|sheet|material)\b.*?) (?:to cut|to make|for cutting|for making) (?:an? |the )?.*$", r"\1"),
    (
        r"^(?=.*\b(?:pliers?|snips|cutters|nippers|files?|water ?pumps?)\b)(.*?)(?:, the )?\b(one|two|three)-"
        r"(twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)\b(?![- ](?:mm|mil|inch|one|two|three|four|five|six|"
        r"seven|eight|nine|seconds?|fourths?|grit|volt|v|amp|a|deg))(?: ones?\b)?",
        r"\1 \2 hundred and \3 mm ",
    ),
    (r"^(?:an? )?pair of (?=\d{3}\b|(?:one|two|three)(?:-| hundred))", ""),
    (r"\bf/glass\b", "fibreglass"),
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
    (r"\bwedge bulbs?\b", "capless bulb"),
    (r"^(?=.*\bgasket\b)(.*?) ([2-9])-([2-9]0)$", r"\1 \2\3"),  # a model, as spoken: four-twenty
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
    (r"^(?:the |some )?stuff (for [^,\d]*), the (?=[a-z]{3})(.+)$", r"\2 \1"),
    (
        r"^(?:that |the |some )?((?:[a-z]+ )?)stuff (?:you|we|they|people) (?:put|use|spread) [^,\d]*"
        r"(?:, for [^,\d]*)?, ([^,]+)$",
        r"\1\2",
    ),
    (r"\btmep\b|\btepm\b", "temp"),
    (r"\btueb\b|\btbue\b", "tube"),
    (r"\bgaer\b", "gear"),
    (r"\b(?:oli|iol)\b(?=$|,| \d)", "oil"),
    (r"\bredy\b", "ready"),
    (r"(?<=\d )minuite\b|(?<=\d)minuite\b|(?<=five )minuite\b", "minute"),
    (r",? (?:an? |the )?(long|short|deep|shallow) one(?=,|$)", r", \1"),
    (r"^(?=.*\d)(.*?),? (?:in an? |for an? )?(?:tight|awkward|narrow) (?:spot|space|place|corner|gap)s?\b", r"\1"),
    (r"(?:\ba )?\bhandful(?: of)?\b", ""),
    (r" \(\d{1,3} of\)", ""),
    (r"(?<=\d) ?mn\b", " mm"),
    (r"\bnot (?:made )?of\b", "not"),
    (r"\b(?:without|no|free of|free from|not containing) lead\b(?=$|[,;.)]| and\b)", "lead free"),
    (r"\b(?:without|no|free of) insulation\b", "uninsulated"),
    (r"\b(?:not attracted by|does not stick to|do not stick to) magnets?\b", "non-magnetic"),
    (r"\bhalf a kilo\b", "500 g"),
    (r"\b(\w+)-hundred-grit\b", r"\1 hundred grit"),
    (r"\"?\b(?:vde|insul\w*|1000 ?v|tamper\w*|sensor safe)\?\"?", "uncertain"),
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
    (r"\b(?:bigger|larger|greater|wider) than (?=\d)", "biggerthan "),
    (r"\b(?:smaller|narrower|thinner) than (?=\d)", "smallerthan "),
    (r"[-,;(]* ?\bnew \d\d/\d\d\b\)?", ""),
    (
        r"^(?=.*\b(?:socket|skt|spanner|spnr|wrench|bit|key|pliers|screwdriver|extension|ratchet|drill|tap)"
        r"\b)(.*\d.*) - ((?:[a-z]+ ){1,4}[a-z]+|[a-z]{3,} \d\.\d)$",
        r"\1 (\2)",
    ),
    (r"\bair[- ]gun[- ]grade\b|\bimpact[- ]grade\b", "impact"),
    (r"\bself[- ]grip(?:ping)? pliers with (?:an? )?(?:long )?(?:needle|long) nose\b", "long nose locking pliers"),
    (r"\bwith something in it that holds the plug\b.*$", "with insert"),
    (r"\bwith the drive (?:on|at) (?:the )?top\b", "topdrive"),
    (r"\bwhose head (?:bends|flexes|tilts|pivots|swivels)\b", "flex head"),
    (
        r"\bfor (?:work|working|use) on (?:an? |the )?(?:live|energi[sz]ed|powered) (?:panel|circuit|"
        r"terminal|battery|system|equipment|part)s?\b",
        "insulated",
    ),
    (
        r"\bgloves for (?:work|working) on (?:an? |the )?(?:\d{3} ?v(?:olts?)?|high[- ]voltage|ev|hybrid)"
        r" batter(?:y|ies)\b",
        "high voltage gloves",
    ),
    (r"\b(?:that )?pulls? from (?:the )?inside(?: (?:of )?(?:an? |the )?bore)?\b", "internal"),
    (r"\bfor (?:a |the )?starter(?: motor)? current\b", "dc"),
    (r"\b(?:that (?:can|may) go in(?:to)? (?:the )?(?:coolant|water|oil)|splash[- ]?proof)\b,?", "splashproof"),
    (r"\bip ?6[5-8]\b", "splashproof"),
    (
        r"\b(?:that |which |so (?:that )?it )?(?:can|may) be undone (?:later|again)?(?: ?with (?:ordinary|"
        r"hand|normal) tools)?\b"
        r"|\bthat comes undone with (?:hand|ordinary|normal) tools\b|\b(?:i can )?undo(?:es)? (?:later )?with (?:hand|"
        r"ordinary|normal) tools\b",
        "medium strength",
    ),
    (r"\b(?:that |which )?(?:stays|remains) soft\b.*$", "non-setting"),
    (r"\bto pour (?:straight|directly) in\b", "ready mixed"),
    (r"\bgloves up to the elbow\b|\belbow[- ]length gloves\b", "gloves long cuff"),
    (r"\b(?:that can be drawn out|extractable|pull-out)\b(?: of (?:an? |the )?blind hole)?", "drawable"),
    (r"\bbolt (m\d+ ?x ?\d+) with (?:an? )?(?:washer face|flange) (?:made )?in one with the head\b", r"flange bolt \1"),
    (r"\b(?:rounded|radius(?:ed)?|ball) seat\b", "spherical seat"),
    (r"\b(?:that )?i can (?:put|use|get) in at (?:a slant|an angle)\b", "ball end"),
    (r"\b(?:insert|rubber|magnet) (?:is )?(?:lost|gone|missing|torn out)\b", "no insert"),
    (r"\b(?:cannot|can't|can not|must not|mustn't|do not|don't) (?:have|contain|want|wear)(?: any)?\b", "not"),
    (r"\bfree (?:of|from) ((?:methylene )?[a-z]+)\b", r"\1 free"),
    (r"(?<=\d) in it\b", ""),
    (
        r"(x ?\d+(?:\.\d+)?) in (?=(?:copper|alumini?um|steel|stainless|brass|nylon|fibre|a[24]\b|rubber|nitrile|fkm|"
        r"epdm|ptfe|silicone|plastic|zinc|bronze|leather|mild|spring)\b)",
        r"\1 , ",
    ),
    (r"\bsafe (?:on|for|with) live (?:circuits?|work(?:ing)?|parts?|terminals?|conductors?|wires?)\b", "insulated"),
    (
        r"\b(?:that |which )?(?:must not|does not|doesn't|won't|will not|cannot) (?:make (?:a )?)?sparks?\b",
        "non-sparking",
    ),
    (
        r"\b(?:that |which )?(?:must not|does not|doesn't|won't|will not|cannot) (?:burn|catch fire|ignite)\b",
        "non-flammable",
    ),
    (r" - ((?:for )?(?:the )?[a-z]{3,}(?: [a-z]{3,})?)$", r" (\1)"),
    (r",? ?\bmust be (?=\d|[a-z])", ", "),
    (
        r",? ?\b(?:i )?(?:need|want) (?:two|three|four|five|six|\d)(?: (?:of them|off))?$|,? \b(?:two|three|"
        r"four|\d) if (?:you have|there are|possible)(?: it| them)?$",
        "",
    ),
    (r"^(?=.*\b(?:spanner|spnr|wrench|socket|skt|pliers|screwdriver|hammer|ratchet)s?\b)(.*\d ?mm) x ?[2-9]$", r"\1"),
    (r",? ?\bwood(?:en)? handles?\b", ""),
    (
        r"\b(?:that |which )?(?:won't|will not|does not|doesn't|cannot|must not) (?:scratch|mark|mar|scuff)\b"
        r"(?: (?:the |your |my )?(?:alloys?|wheels?|rims?|paint\w*|finish|trim|chrome)\b)*",
        "nonmarring",
    ),
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
    (
        r"\b(?:the|all|both) (?:two|three|four|five|six|eight|ten|twelve|[2-9]|1[0-2]) "
        r"(?=[a-z]+s\b(?<!sockets)(?<!spanners)(?<!wrenches)(?<!keys)(?<!bits)(?<!gauges)(?<!tools))",
        "the ",
    ),
    (r"(?:, |; ?)?\b(?:one|two|three|four|\d) (?:for|per|on|to) (?:each|every) [a-z ]+$", ""),
    (r", (?:to be )?applied (?:after|before|on) [a-z ]+$", ""),
    (r",? ?\b(?:service |wear )?limit(?: of)? \d+(?:\.\d+)? ?mm\b", ""),
    (r"(\b(?:gloves?|wipes?|masks?)\b.*) x ?(?:50|100|150|200|250|500|1000)$", r"\1"),
    (r"\bso (?=(?:an? |the )?(?:quarter|half|three|[13]/[248]))", "for "),
    (r"\btaking (?=\d)", "for "),
    (r"\b(?:calibrated(?: and)? )?in date\b|\b(?:with |w/ ?)(?:valid )?cal(?:ibration)? cert\w*(?: valid)?\b", ""),
    (r"\bable to (?:do|reach|read|go to|set|measure)(?: up to)? (?=\d)", ""),
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
    (r"^slide (?=\d)", "fit "),
    (
        r"\b(?:plus|then|and|by) (?:(?:an?|another|a further) )?(?:quarter|half|third|eighth|[1-3]/[48])"
        r"(?:[- ]of a)?[- ]turn\b",
        " ",
    ),
    (r"\b(batter(?:y|ies)|case|box) (?:incl(?:uded)?|inc|supplied)\b\.?$", r"with \1"),  # ..., battery incl
    (r"\b(?:in )?range (?:of )?at least\b", "range"),
    (r"^set (?=.{0,30}\bchocks? )", "place "),
    (r",? ?\b(?:a|one|100|1000) ?(?:hundred|thousand|dozen)? (?:in|to) (?:the|a) (?:bag|box|pack|packet|tin)\b", " "),
    (
        (r"\b(?:the|a|an) (?!(?:number|size|no|nr|class|grade|type|twenty|thirty|forty|fifty)\b)([a-z]+) one\b"),
        r"\1",  # the deep one
    ),
    (r",\s*(?:two|three|four|five|six|eight|ten)(?: off)?$", ""),  # so many of them
    (r"\(([a-z]+) one\)", r"(\1)"),
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
    (r"\b(?:to be )?set (?:to|at) (?=\d)", "for "),
    (r"\bto set (?=\d)", "for "),
    (r",? one per (?:port|cylinder|side|bolt|hole)\b", ""),
    (r"(?<= )w/? ?(?=(?:rubber|magnet|ball|case|box|adapt|exten|handle|washer|nut)[a-z]*\b)", "with "),
    (r"\bto suit\b", " for "),
    (r"\bf/ ?(?!h(?:ea)?d\b)(?=[a-z]{2}|\d)", "for "),  # F/DRAIN PLUGS
    (r"\(?\bsign(?:ed)? out\b\)?", " "),
    (
        r"\bfor an? (?:straight |in-?line )?(?:three|four|five|six|[3-6]|v ?[68])(?=$|[,;)]|\.(?!\d))",
        " ",  # so many cylinders
    ),
    (rf"\bcal(?:ibration|ibrated|\.)?(?: is)? due:?(?: {_DATE})?(?!\w)", " "),
    (rf"\b(?:exp(?:iry|ires|ired|\.)?|use by|best before)(?: date)?:? {_DATE}(?!\w)", " "),
    (r"(?<=; on )(?:the )?oil filter (?:housing )?(?:cap|housing|cover|canister)$", "cover"),  # a hexagon on it
    (
        r"(?:(?<=, )|(?<=for the )|(?<=for ))((?:hv )?battery) trays?(?= bolts?\b| screws?\b| nuts?\b|$)",
        r"\1 cover",
    ),  # where a job is, no tray of sockets
    (r"\bc/w\b", " with "),
    (r" \((?:[a-z]+ )+(?:axle|sump|box|diff|side|case),? \d(?:\.\d+)? ?l(?:itres?)?\)$", ""),  # as much as it takes
    (r" \(hold \d[\d.]* ?(?:bar|psi|kpa)(?:,? (?:for )?\d+ ?min\w*)?\)$", ""),
    (r"\bpee ?(?:zed|zee) (?=\d|one|two|three)", "pz"),
    (r"\bpee ?aitch (?=\d|one|two|three)", "ph"),
    (r",? (?:the |a )?(?:big|large|small|little|good|old|new|spare) one$", ""),
    (r"(\bdrill\b.*) \((?:stud|bolt|screw|stud and bolt) (?:removal|extraction|removing)\)$", r"\1"),
]
