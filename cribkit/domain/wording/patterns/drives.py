"""Sockets, squares, extensions, joints, ratchets; points and depth."""

from __future__ import annotations

from cribkit.domain.wording.patterns.pattern import Pattern

# What goes on an impact wrench, how it is said, and what such a wrench is called.
_NOT_DENIED = r"^(?!.*\b(?:not|never|no|nor|hand|don't|step)\b)"
_PUT_ON = r"sockets?|skts?|sckts?|(?:(?:extensions?|ext|joints?|ujs?|adapt[eo]rs?)(?=.*(?:\d/\d|half|quarter|three)))"
_MEANT = r"(?:to (?:go|fit|be used)|going|goes|for use|use|used|using|fits?|safe|suitable|ok|good|rated)"
_THE = r"(?:the|an?|my|our|use (?:with|on))"
_RATCHETS = r"1/4|3/8|1/2|3/4|quarter|half|three[- ]eighths?"  # the squares of ratchets, as they are said
_SQUARE_SAID = rf"{_RATCHETS}|1|three[- ]quarters?"
_GUNS = (
    r"(?:impact|air|rattle|windy|buzz|nut|wheel) ?-?(?:guns?|wrench(?:es)?|drivers?|tools?|runners?)|guns?|rattler|"
    r"power tools?|nut ?runner"
)


DRIVES: list[Pattern] = [
    (
        r"\b(extension|adapt[eo]r|joint|socket|bit)\b(?=.*)(.*?),? (?:for use|to use|to be used|used) with (?:the |"
        r"an? |my )?(?:windy |air |rattle |nut ?|impact )?gun\b",
        r"impact \1\2",
    ),
    # "For the gun" asks for an impact tool: of what is put on a square.
    (
        r"^(?!.*\b(?:grease|spray|heat|glue|sealant|caulk\w*|cartridge|air ?brush)\b)(?=.*\b(?:sockets?|skt|bit|"
        r"adapt[eo]r|extension|joint|hex|in-?hex|"
        r"star|t\d\d|e\d\d?)\b)(?!.*\bimpact\b)(.*?),? ?\b(?:rated for|to go on|goes on|safe on|for use on|for|on)"
        r" (?:the |an? |my )?(?:windy |air |rattle |nut ?)?gun\b(?! down)",
        r"\1 impact",
    ),
    (r"^gun adapt[eo]r\b", "impact adapter"),
    (r"\b(\d\d?(?:\.\d)? ?mm) female down to (\d\d?(?:\.\d)?)(?: ?mm)? male\b", r"\1 female to \2 mm male"),
    (
        r"^(?:black )?(\d\d)(?: ?mm)? (?:for|on) the (?:windy|air|impact|rattle) gun, (1/4|3/8|1/2|3/4|1)(?: ?in(?:ch)?"
        r")?(?: dr(?:ive)?| sq(?:uare)?)?$",
        r"impact socket \1 mm, \2 drive",
    ),
    (r"^long (\d\d) ?mm for the impact gun\b", r"deep impact socket \1 mm"),
    (r"^impact (\d\d)(?: ?mm)? on (12\.5|10|20|25)(?: ?mm)? square\b", r"impact socket \1 mm \2 mm square"),
    (r"^(\d\d) ?mm impact on the inch drive, short pattern$", r"\1 mm impact socket 1 inch drive standard length"),
    (r"^(?:bi[- ]?hex) (\d\d?)(?: ?mm)? on (?:a )?(1/4|3/8|1/2|3/4)(?: inch)?$", r"bi-hex socket \1 mm \2 drive"),
    (r"^(\d\d?)(?: ?mm)? bi[- ]?hex, (1/4|3/8|1/2|3/4)(?: inch)?$", r"bi-hex socket \1 mm \2 drive"),
    (r"\bsquare[- ]head plug wants an? (?=(?:8|eight)[- ]point socket)", ""),
    (r",? \b(?:whatever|any|whichever) drive$|,? any (?:length|depth)$|,? long or short$", ""),
    (
        r"\b(3/4|1/2|1|3/8)(?:[- ]inch)? bar down to (1/4|3/8|1/2|3/4)(?:[- ]inch)? sockets?\b",
        r"adapter \1 female to \2 male",
    ),
    (
        r"^(?:i )?(?:want|need) to put (20|25|12\.5|10)(?: ?mm)?(?: square)? sockets on (?:the |an? )?(1/4|3/8|1/2|"
        r"3/4|1)(?:[- ]inch)? (?:bar|ratchet)$",
        r"adapter \2 female to \1 mm male",
    ),
    (
        r"\breducer: (1/4|3/8|1/2|3/4|1)(?:[- ]inch)? hole, (1/4|3/8|1/2|3/4)(?:[- ]inch)? peg\b",
        r"reducer \1 female to \2 male",
    ),
    (r"\bsliding t for (\d\d(?:\.\d)?) sockets\b", r"sliding t bar \1 mm square"),
    (r"\bbendy beam type\b", "beam torque wrench"),
    (
        r"^digital one with angle, (10 ?mm|1/2|3/8|12\.5 ?mm)(?: inch)? square, (\d+ (?:ft-lb|nm|n\.m))$",
        r"digital torque wrench with angle \1 square \2",
    ),
    (r"\bwith tell-?tale\b|\bwith follower pointer\b", ""),
    (
        r"^(1/4|3/8|1/2|3/4)(?:[- ]inch)? square, (\d+|ten|six|three) inch bar to extend$",
        r"extension bar \1 drive \2 inch",
    ),
    (r"\bjoint is part of the socket\b", ""),
    (r"\bbuilt-in universal joint\b", "universal joint"),
    (r"\bknuckle-jointed (?=\d+ ?mm socket)", "swivel "),
    (r"\b(\d\d?mm socket) but on\b", r"\1 on"),
    (
        r"^(shallow|deep) ([\d/]+(?: ?mm| ?in)?), (6|12|six|twelve)[ -]point(?:,? (1/4|3/8|1/2|3/4)(?: ?dr(?:ive)?)?)?"
        r"$",
        r"\1 socket \2, \3 point, \4 drive",
    ),
    (
        r"^(1/4|3/8|1/2|3/4|1)(?: ?in(?:ch)?)? bar onto (1/4|3/8|1/2|3/4|1)(?: ?in(?:ch)?)? sockets?,? (?:i )?"
        r"need (?:an? |the )?adapt[eo]r$",
        r"adapter \1 female to \2 male",
    ),
    (r"\bgoes on the (?:impact )?gun\b", "impact"),
    (
        r",? ?\b(?:nylon |plastic )?sleeve so it (?:won'?t|doesn'?t|will not) (?:chew|scratch|mark|mar|damage) (?:up )?"
        r"(?:the )?(?:alloys?|wheels?|rims?)\b",
        ", plastic sleeve",
    ),
    (
        r"^(?:thing|something|adapter|adaptor|bit) to (?:run|drive|turn) (1/4|3/8|1/2)(?: ?in| inch|\")?"
        r" sockets (?:in|with|from|on) (?:an? |the |my )?(?:cordless )?drill$",
        r"hex shank to \1 square male drill adapter",
    ),
    (r"^preset wheel(?: nut)? torque wrench (\d{2,3})$", r"preset torque wrench \1 nm"),
    (r"^big (3/4|1)(?: inch)? drive bar for (?:the )?hub nuts$", r"breaker bar \1 drive"),
    (r"^(\d{3}) (?:mm )?ext(?:ension)? bar (?=1/4|3/8|1/2|3/4)", r"\1 mm extension bar "),
    (r"\bgun[- ]rated (?:knuckle|joint)\b", "impact universal joint"),
    (r"\bgun[- ]rated\b", "impact"),
    (r"\b(?:wobble )?knuckle joint\b(?=.*\d)", "universal joint"),
    (
        r"\b(?:chuck|drill[- ]chuck) bit to (?:run|drive|turn) (\d/\d)(?:-inch| inch)? sockets\b",
        r"drill chuck to \1 square adapter",
    ),
    (r"^step[- ]?(?:up|down),? (?:from )?(?=\d/\d)(?=.*\bfemale\b)(?=.*\bmale\b)", "drive adapter "),
    (r"\b(?:one[- ]setting|single[- ]setting) torque\b", "preset torque"),
    (r"\bmicrometer click(?:er)?\b(?=.*\b(?:foot|ft|inch|in|nm|n·m)\b)", "click torque wrench"),
    (
        r"^(electronic|digital|dial|beam|click|bending beam) (\d/\d)(?: inch)?,? (\d+) (?:through|thru|to) (\d+)"
        r" (foot|ft|inch|in)[- ]?(?:pounds?|lbs?)\b",
        r"\1 torque wrench \2 drive \3 to \4 \5-lb",
    ),
    (r"^bending beam (\d/\d) for (?:an? )?(\d+) (ft|in)-lb bolt$", r"beam torque wrench \1 drive for \2 \3-lb"),
    (
        r"\b(inch|foot|in|ft)[- ](?:pounds?|lbs?) (torque (?:wrench|screwdriver)),? (\d+)(?: to |-| - )(\d+)"
        r"\b(?! ?(?:in|ft|nm|n·m|lb))",
        r"\2 \3-\4 \1-lb",
    ),
    (r"(\d+ )through( \d+ (?:foot|ft|inch|in)[- ]?(?:pounds?|lbs?)\b)", r"\1to\2"),
    (
        r"^(?:(deep)[ -]?well|deep) (\d[\d/]*(?: ?(?:mm|millimeters?|in|inch))?),? (?:fits|for|to fit|to go on)"
        r" (?:the |my |an? )?(1/4|3/8|1/2|3/4)(?:[ -]inch)? ratchet$",
        r"deep socket \2 \3 drive",
    ),
    (
        r"^(\d[\d/]*(?: ?(?:mm|in|inch))?) deep[ -]?well,? (1/4|3/8|1/2|3/4)(?:[ -]inch)? ratchet$",
        r"\1 deep socket \2 drive",
    ),
    (
        r"^(deep |shallow )?(six|6|twelve|12)[ -]point (\d\d? ?mm) for the (1/4|3/8|1/2|3/4)(?:[- ]inch)? impact gun$",
        r"\1impact socket \2 point \3 \4 drive",
    ),
    (r"^t(\d\d) for the (?:(1/4|3/8|1/2|3/4)(?: inch)? )?impact (?:gun|wrench)$", r"impact bit socket t\1 \2"),
    (r"^(1/4|3/8|1/2|3/4)(?: inch)? (?:square|drive) wobble,? (\d+ ?(?:mm|in|inch))$", r"wobble extension \1 drive \2"),
    (r"\brubber dipped\b(?=.*\b(?:hybrid|high voltage|ev|hv)\b)|(?<=, )dipped\b(?=.*\b(?:hybrid|hv)\b)", ""),
    (
        r"\bhigh[- ]voltage (?=(?:\d+ ?mm )?(?:socket|screwdriver|ratchet|extension|spanner|wrench|pliers)s?\b)",
        "insulated 1000v ",
    ),
    (r"\bsplit[- ]side (?=socket)", "slotted "),
    (r"\brubber grip inside\b", "rubber insert"),
    (r"\blug skt\b", "lug nut socket"),
    (
        r"\b((?:o2|oxygen|lambda)\b.*?\b(?:7/8|22))(?:\"| in| inch| ?mm)? ?/ ?(22 ?mm|7/8(?: in| inch|\"|\b))",
        r"\1 (\2)",
    ),
    (r"\brounded hex\b(?=.*\b\d/\d dr)", "hexagon"),
    (r"^(\d/\d) hex to (\d/\d) sq(?:uare)? driver$", r"\1 hex shank to \2 sq male socket driver"),
    (r"\bpozi(?=[0-4]\b)", "pz"),
    (r"\bp([0-4])(?= (?:phillips|philips)\b)", r"ph\1"),
    (r"\bflat ?head (\d+(?:\.\d)?)(?= (?:screw)?driver\b)", r"flat \1 mm"),
    (r"\bl/n(?= (?:pliers?|plrs?)\b)", "long nose"),
    (r"\bb/p(?= hammer\b)", "ball pein"),
    (r"\btriple(?=[- ]jaw\b)", "3"),
    (r"^spinner,? (\d[\d.]* ?(?:mm|in|\")?) nut$", r"nut spinner \1"),
    (
        r"(?<=, )(half|quarter|three[- ]eighths?|three[- ]quarters?|1/2|3/8|1/4|3/4)"
        r"([- ]inch|\"| in)? (?:air |impact |rattle )?gun$",
        r"\1\2 drive",
    ),
    (r"\bph(\d)-(?=ph\d\b)", r"ph\1 x "),
    (r"\bpz(\d)-(?=pz\d\b)", r"pz\1 x "),
    (r"\b3 ?-?sq(?= (?:bit )?(?:m\d|skt|bit))", "triple square"),
    # 1/2FX3/8M, 3/8F1/2M
    (r"\b(\d/\d|1)(\"|''|in)?([fm]) ?x? ?(?=(?:\d/\d|1)(?:\"|''|in)? ?[fm]\b)", r"\1\2\3 x "),
    # F1/2 M3/8
    (r"\bf ?(\d/\d|1)(?: ?in| ?\")?[ x/-]{1,3}m ?(\d/\d|1)\b(?![./-]|\d)", r"\1 f x \2 m"),
    (r"\bm ?(\d/\d|1)(?: ?in| ?\")?[ x/-]{1,3}f ?(\d/\d|1)\b(?![./-]|\d)", r"\1 m x \2 f"),
    (r"(?<=\d)ml\b(?=\)?$)(?<=\d/\dml)", " m"),  # 3/8ML
    (r"\b(\d/\d)(?: ?in| ?\")? (?:input|in), (\d/\d)(?: ?in| ?\")? (?:output|out)\b", r"\1 f x \2 m"),
    # six point by a P: with a socket and a square or a size, no pieces
    (r"^(?!.*\b(?:set|kit)\b)((?:.*[\s,])?)(6|12)p(?=[\s,/].*\b(?:skt|sckt|socket|so[c]?ket)s?\b)", r"\1\2pt"),
    (r"^(?!.*\b(?:set|kit)\b)(.*\b(?:skt|sckt|socket)\b.*[\s,])(6|12)p(?=\d{1,2} ?mm)", r"\1\2pt "),
    (r"\bd/h(?= (?:skt|socket|ring|spanner))", "12pt"),
    (r"(?<=\d/\d) d\b(?=$|,| deep| skt| socket)", " dr"),
    (r"(?<=[\s,])d(?=(?:1/4|3/8|1/2|3/4)(?:$|[\s,]))", "drive "),
    (r"\bdp-?skt\b", "deep skt"),
    (r"^i/skt\b", "impact skt"),
    (r"\be0(?=[4-9]\b)", "e"),
    (r"\betx(?= e\d)", "ext"),
    (r"\b(\d{1,2}) ?mill\b(?! (?:in|lit|l|sec))", r"\1 mm"),
    (r"\b(ten|eight|nine|eleven|twelve|thirteen|fourteen|seven|six|seventeen|nineteen) mill\b", r"\1 mil"),
    (r"\b(?:felx|flxe)(?=i?[- ]?(?:head|hd|handle|ratchet|ext)|$)", "flex"),
    (r"\bspiner(?=[- ])", "spinner"),
    (
        r"^(?=.*\b(?:socket|skt|sckt)\b)(?=.*\b\d{1,2} ?(?:mm|mil)\b)"
        r"(?!.*\b(?:not|never|no|hand|set|for)\b)(.*?)\b(?:rattle|windy|buzz) ?gun (?=(?:socket|skt|sckt)\b)",
        r"\1impact ",
    ),
    (
        r"^(swivel|universal|uj) impact ([1-3]\d|[89])(?: ?mm)? (1/4|3/8|1/2|3/4)(?: ?\"| ?in\b| ?inch)?(?: drive| "
        r"dr)?$",
        r"\2 mm swivel impact socket, \3 drive",
    ),
    (r"(\badapt[eo]r\b.*?\d\S*) ext\.? (?:to|x|-|/) (\d\S*) int\b\.?", r"\1 male to \2 female"),
    (
        rf"^((?:deep |long |shallow )?)(\d{{1,2}}|\w+)[- ]?(?:mm|mil) for (?:the |an? |my )({_RATCHETS})[- "
        rf"]?(?:inch|in\b|\")? "
        r"(?:drive |dr )?ratchet$",
        r"\1\2 mm socket, \3 drive",
    ),
    (
        rf"^({_SQUARE_SAID})[- ]?(?:inch|in\b|\")?(?: drive| dr)? (\d{{1,2}} ?mm) (deep |shallow )?impact,? for "
        rf"(?:{_THE} )*(?:{_GUNS})$",
        r"\2 \3impact socket, \1 drive",
    ),
    (
        rf"{_NOT_DENIED}(?=.*\b(?:male|female)\b)(.*?)\b(reducer|increaser|converter|convertor)(?: to go| to fit)? "
        rf"(?:for|on|under) (?:{_THE} )*(?:{_GUNS})\b",
        r"\1impact \2",
    ),
    (
        r"^(?:an? )?(6|12) ?pt (\d{1,2}) ?mm on (?:an? )?"
        r"(1/4|3/8|1/2|3/4)(?: ?\"| ?in\b| ?inch)?(?: drive\b| dr\b)?(?P<rest>.*?)(?:,? (?:6|12|six|twelve)[- "
        r"]sided heads?)?$",
        r"\1pt \2 mm socket, \3 drive\g<rest>",
    ),
    (
        r"^(1/4|3/8|1/2|3/4|1)(?: ?\"| ?in\b| ?inch)? impact (deep |shallow )?([1-6]\d|[89])(?: ?mm)?(?=$|,)",
        r"\3 mm \2impact socket, \1 drive",
    ),
    (r"\b(?:spark(?:ing)? ?)?plug box (?=.*\b(?:drive|dr|sd|sq)\b)", "spark plug socket "),
    (r"\bmagnetic (?:retention|hold|retainer)\b", "magnetic"),
    (r"\be-(?:soket|scoket|sokcet|sockt|skt|sckt)\b", "external sixlobe socket"),
    (r"(\bratchet\b.*?) with (?:the |an? )?bendy(?: head)?\b", r"\1 flex head"),
    (r"\bbendy[- ]head(?:ed)?\b", "flex head"),
    (r"(\bratchet\b.*?)\b(?:fine[- ])?(?:tooth|teeth),? \((\d\d)\)", r"\1\2 teeth"),
    (r"(?<=\d\d) ?tth\b", " teeth"),
    (
        r"^(\d{2,3} ?mm|\d{1,2} ?in) x (1/4|3/8|1/2|3/4)(?: ?\"| ?in\b| ?inch)? "
        r"((?:power|breaker|knuckle|strong|extension) bar|extension|ratchet)(?=$|,)",
        r"\3 \1, \2 drive",
    ),
    (
        r",? (?:(?:i |we )?(?:need|want)|gives?|to get) (?:a )?(?:(?:bit|little|touch) of )?(?:an )?angle"
        r"(?: (?:at|on|round|behind|to) (?:the )?[a-z ]+)?$",
        "",
    ),
    (
        r"^(1/4|3/8|1/2|3/4)(?: ?\"| ?in\b)? ?(?:drive|dr) (\d{1,2} ?(?:in\b|\")|\d{2,3} ?mm) wobble(?=$|,)",
        r"\2 wobble extension, \1 drive",
    ),
    (r"(\b(?:universal|uni|univ)\.? (?:jt|jnt|joint)\b.*), socket[- ]set type\b", r"\1"),
    (r"(\bjoint,? ?universal\b.*?),? \(?\bf ?(?:and|x|/) ?m\b\)?", r"\1"),
    (
        r"\bpower (?=(?:skt|sckt|sockt|scoket|sokcet|universal joint|u-?joint|uj)\b(?!.*\b(?:v|volts?|amps?|\d+ "
        r"?a)\b))",
        "impact ",
    ),
    (
        r"(\badapt[eo]r\b.*?)\binput:? (\d\S*(?: ?in\b)?)(?: female)?( sq(?:uare)?)?,? (?:and )?output:? "
        r"(\d\S*(?: ?in\b)?)(?: male)?(?: sq(?:uare)?)?(?=$|,)",
        r"\1\2 female\3 to \4 male",
    ),
    (
        r"(\bfemale\b.*\bmale\b.*|\d ?f\b.*\d ?m\b.*)\b(?:converter|convertor|reducer|increaser) so (?:that )?(?:i|"
        r"we|you) can "
        r"(?:use|run|put|fit) (?=.*\bsockets? on\b)",
        r"\1adapter to put ",
    ),
    (
        r"^(?=.*\b(?:adapt[eo]r|reducer|increaser|converter|convertor)\b)(.*?\d(?: ?in\b| ?\")?) ?(?:sq(?:uare)?) "
        r"int\b\.? ?,? ?"
        r"(?:(?:x|to|-|/) ?)?(\d\S*?(?: ?in\b)?) ?(?:sq(?:uare)?) ext\b\.?",
        r"\1 sq female x \2 sq male",
    ),
    (
        r"^(?=.*\d\S* ?\(?(?:f|female)\b.*\d\S* ?\(?(?:m|male)\b)(.*?), (?:i |we )?(?:want|need)(?: to (?:put|use|"
        r"run))? "
        r"(?:\S+ )?(?:\d/\d|half|quarter|three[- ]\w+)[- ]?(?:inch|in\b|\")? (?:impact )?sockets on (?:the |my |an? "
        r")(?:big |air )*"
        r"(?:gun|wrench|ratchet|bar)$",
        r"\1",
    ),
    (r"(\d ?\"? fem\b\.?.*\d ?\"? )mal\b", r"\1male"),
    (r"\bwhel(?=s?\b)", "wheel"),
    (r"(?<=\d) ?in a\.? ?f\b\.?", " in af"),
    (r"(\b(?:bar|handle)\b.*?),? (?:two|2)[- ]handed (?:use |job )?(?:on|for) [a-z ]+$", r"\1"),
    (
        r"(\bsensor (?:socket|skt)\b.*?),? (?:the )?(?:wiring|wires?|cables?|leads?|looms?) (?:has|have|needs?) to "
        r"(?:pass|go|come|run) (?:through|out)\b",
        r"\1 slotted",
    ),
    (r"(\b(?:spinner|ratchet|bar)\b.*\b(?:sq|square)) male\b", r"\1"),
    (r"(\bspinner\b.*?)\bdriver[- ](?:type|style|pattern) (?=handle\b)", r"\1"),
    (
        r"^(?:an? )?(1/4|quarter)(?:[- ]?(?:inch|in\b|\"))? hex(?: shank| shk)? to (1/4|3/8|1/2|quarter|half|"
        r"three[- ]eighths?)"
        r"(?:[- ]?(?:inch|in\b|\"))? (?:sq|square)(?: drive)?(?:, to (?:run|use|put|drive) sockets? (?:on|off|with) "
        r"(?:the |an? |my )?(?:cordless|drill|battery)(?: drill| driver| gun)?)?(?=$|,)",
        r"drill adapter \1 hex shank to \2 square",
    ),
    (r"(\badapt[eo]r\b.*) with (?:an? |the )sockets?$", r"\1"),
    (r"(\bbreaker bar\b[^,]*), (\d{3})$", r"\1, \2 mm"),
    (r"^(\d{1,2} ?mm) impact deep (3/8|1/2|3/4|1) for ", r"\1 deep impact socket \2 drive for "),
    (r"\b(female|male) onto\b", r"\1 to"),
    (
        r"^(?:(?:got|have you(?: got)?|need|want) )?(?:an? |the )?(deep|long|shallow|short) (\d{1,2})(?: ?mm| mil)? "
        r"for (?:the|an?|my) (1/2|3/4|3/8|1|half|one|three[- ](?:quarters?|eighths?))[- ]?(?:inch|in\b|\")? ?"
        r"(?:windy |impact |rattle |buzz |air )?gun\b\??(?:,? (?:an? |the )?impact one\b)?(?:, ?\2 ?mm)?$",
        r"\1 \2 mm impact socket, \3 drive",
    ),
    (
        r"^(?!.*\b(?:adapt\w*|dr|drive|sq|square|shank|(?:1/4|5/16)\"? ?(?:in )?hex)\b)"
        r"(.*\b(?:socket|skt|(?:star|allen|hex|spline|t\d\d) bit)\b.*?),? "
        r"(?:for|on) (?:the |an? |my )?"
        rf"({_RATCHETS})[- ]?(?:inch |in |\" ?)?(?:drive |dr )?ratchet(?=$|,)",
        r"\1, \2 drive",
    ),
    (r"^(deep|shallow) (\d{1,2}), (1/4|3/8|1/2), (?=.*\bsocket\b)", r"\1 \2 mm, \3 drive, "),
    (r"\b(6|12)[- ](?:piont|ponit|poitn|piotn)\b", r"\1 pt"),
    (
        r"^(?=.*\bs[oc]?[oc]?k[eo]?t\b)(?=.*\d/\d ?\"? ?(?:dr|drv|drive|sq|sd)\b)(.*?)(?<=[\s,])(6|12)p(?=$|[\s,])",
        r"\1\2pt",
    ),
    (
        r"^((?:1/2|3/4|3/8|1|half|one|three[- ](?:quarters?|eighths?))[- ]?(?:inch|in\b\.?|\")?)(?: drive)? gun and "
        r"(?![^;]*\b(?:dr|drive|sq|square)\b)(an? [^;]*\bimpact\b[^;]*)(?=$|;)",
        r"\2, \1 drive",
    ),
    (r"(\b(?:skt|socket)\b.*)\bstd\.? (?:lg|lgth|len)(?=$|,)", r"\1std"),
    (
        r"^(?=.*(?:\b(?:14|16|18|20\.8|21) ?(?:mm|mil)|5/8|13/16))(.*?)\b(?:socket|skt) for "
        r"(?:taking|getting|pulling|removing|undoing) (?:the )?(?:spark )?plugs(?: out)?\b",
        r"\1spark plug socket",
    ),
    (r"\bexhaust (?=(?:oxygen|o2|lambda) sensor)", ""),
    (
        r"\b(?:socket|skt) for (?:taking|getting|removing|undoing) (?:the )?(?:o2|oxygen|lambda) sensors?(?: out)?",
        "oxygen sensor socket",
    ),
    (
        r"(\b(?:o2|oxygen|lambda) sensor socket\b.*?),? with the (?:wire|lead|cable|wiring)s? (?:still )?"
        r"(?:on|attached|connected|in place|fitted)\b",
        r"\1 slotted",
    ),
    (r"(\b(?:o2|oxygen|lambda) sensor socket\b.*?)\bsplit(?: side)?\b", r"\1slotted"),
    (
        r"^(?=.*\bplug (?:socket|skt)\b)(.*?\b(?:sixteen|16) ?(?:mil|mm)\b.*?),? "
        r"the (?:five[- ]eighths?|5/8)(?: one)?(?=,|$)",
        r"\1",
    ),
    (
        r"\b(?:thirteen[- ]sixteenths?|13/16)(?= (?:spark )?plug socket\b)(.*?),? the (?:21|twenty[- ]one)"
        r" ?(?:mil|mm)\b",
        r"21 mm\1",
    ),
    (
        r"^(?!.*\d ?mm\b)(?!.*\b(?:torque|limit\w*|stick|extension|bar)\b)"
        r"((?:socket|skt) .*?\b\d/\d ?(?:dr|drive|sq|sd)\b.*?)(?<![\d.])\b([4-9]|[1-3]\d|[45]\.5) ?nm\b",
        r"\1\2 mm",
    ),
    (
        r"(\bimpact (?:skt|socket)\b.*),(?: for)? (?:lorry|truck|hgv) (?:hubs?|wheels?(?: nuts?)?)$",
        r"\1",
    ),
    (
        r"^((?:[a-z]+[- ])?[a-z]+ mil) (deep |shallow )?impact for the (one|half|three[- ]quarters?)[- ]inch gun$",
        r"\1 \2impact socket \3 inch drive",
    ),
    (r"\bcrow ?foot (\d{1,2}) ?- ?(1/4|3/8|1/2)$", r"crowfoot \1 mm \2 drive"),
    (r"^deep (\d{1,2} ?mm)$", r"deep socket \1"),
    (r"^(\d{1,2}) imp(?:act)? (deep )?(3/8|1/2|3/4|1)$", r"\1 mm \2impact socket \3 drive"),
    (r"^(\d{1,2} ?in|\d{2,3} ?mm) wobble (1/4|3/8|1/2)$", r"\1 wobble extension \2 drive"),
    (r"(\bbreaker bar (?:1/2|3/4|3/8)(?: ?dr(?:ive)?)?), (\d{3})$", r"\1, \2 mm"),
    (r"^swivel (\d{1,2} ?mm) (?=(?:1/4|3/8|1/2))", r"swivel socket \1 "),
    (r"\b(male|female) out of (?=\d)", r"\1 from "),
    (
        r"\b(socket|skt) on (?:an? |the )?(1/4|3/8|1/2|3/4|half|quarter|three eighths?)(?:[- ]inch|\"| in)?$",
        r"\1 \2 drive",
    ),
    (r"^(\d/\d) impact swivel (\d{1,2} ?mm)$", r"\1 impact swivel socket \2"),
    (r"^(\d{1,2} ?mm) (deep |shallow )?impact for the (1|3/4|1/2)(?:[- ]?inch)? gun$", r"\1 \2impact socket \3 drive"),
    (r"^(?=.*plug)(.*?)\b16 ?mm,? ?[(/=]? ?5/8(?![/\d])(?: ?(?:in\b\.?|inch|\"))?(?: ?a/?f)?\)?", r"\g<1>16 mm "),
    (r"^(?=.*plug)(.*?)(?<![\d/-])5/8(?: ?(?:in\b\.?|inch|\"))?(?: ?a/?f)? ?[(/=-]? ?16 ?mm\)?", r"\g<1>16 mm "),
    (r"^(?=.*plug)(.*?)\b21 ?mm,? ?[(/=]? ?13/16(?: ?(?:in\b\.?|inch|\"))?(?: ?a/?f)?\)?", r"\g<1>21 mm "),
    (r"^(?=.*plug)(.*?)(?<![\d/-])13/16(?: ?(?:in\b\.?|inch|\"))?(?: ?a/?f)? ?[(/=-]? ?21 ?mm\)?", r"\g<1>21 mm "),
    (r"\bsocket wrench insert\b", "socket"),
    (r"\bde(?:pe|pp)\b", "deep"),
    (r"\bair (?=impact (?:socket|skt)\b)", ""),
    (r"\bpower (?=impact (?:socket|skt)\b)", ""),
    (r"\b(?:normal|ordinary|regular) (?=(?:socket|skt)\b)", ""),
    (r"(\b(?:socket|skt)\b.*?)\bplastic (?:jacket|sleeve|coating|cover)\b", r"\1coated"),
    (r"\b25 ?mm sq(?:uare)? ?\(1 ?(?:\"|in)?\)", "1 in drive"),
    (r"(?<![\d.])0?\.250? ?(?=sd\b|(?:sq\.?|square)? ?(?:dr\b|drive))", "1/4 "),
    (r"(?<![\d.])0?\.375 ?(?=sd\b|(?:sq\.?|square)? ?(?:dr\b|drive))", "3/8 "),
    (r"(?<![\d.])0?\.50{0,2} ?(?=sd\b|(?:sq\.?|square)? ?(?:dr\b|drive))", "1/2 "),
    (r"(?<![\d.])0?\.750? ?(?=sd\b|(?:sq\.?|square)? ?(?:dr\b|drive))", "3/4 "),
    (r"\b(?<=\d )bi-?mat\b(?= grip| handle|$)|\bbi[- ]mat(?= grip| handle|$)", "bi-material"),
    (r"(\b(?:universal joint|uj|u-joint)\b.*?),? \(?\bf ?(?:and|x|/) ?m\b\)?", r"\1"),
    (
        r"^(?=.*\b(?:adapt[eo]r|reducer|increaser|converter|convertor)\b)(.*?\d(?: ?mm)?) int\b\.? ?,? ?"
        r"(?:(?:x|to|-|/) ?)?(\d\S*(?: ?mm)?) ext\b\.?",
        r"\1 female x \2 male",
    ),
    (
        r"(\bfemale\b.*\bmale\b.*),? so (?:that )?(?:my|the) [a-z ]*sockets (?:will |can )?(?:go|fit) on (?:the|my|"
        r"an?) .*$",
        r"\1",
    ),
    (
        r"(\badapt[eo]r|\breducer|\bincreaser) so (?:that )?(?:i|we|you) can (?:use|run|put|fit) (?=.*\bsockets? on\b)",
        r"\1 to put ",
    ),
    (r"\boutward[- ]facing star bolt needs a female (e\d{1,2}) socket\b", r"\1 external six-lobe socket"),
    (r"\b0?\.3125 ?(?:in|\")(?=\W*hex)", "5/16 in"),
    (r"\bdrill[- ]chuck adapt[eo]r:?", "drill adapter"),
    (r"(spark plug socket .*?\brubber) grip\b", r"\1 insert"),
    (r"(?<![\d.])\b0?\.(3125|5625|8125|4375|6875|9375)\b(?! ?(?:in|inch|\"|mm|-))", r"0.\1 in"),
    (r"\bdeg deg\b", "deg"),
    (r"^(deep |shallow |long )?impact for (\d{1,2} ?mm) (?=(?:lug|wheel|hub) )", r"\1impact socket \2 for "),
    (r"(\bswivel (?:socket|skt)\b.*?),? jointed\b", r"\1"),
    (r"^(\d{1,2} ?mm) (1/4|3/8|1/2|3/4|1) impact for (?:the |an? )?", r"\1 impact socket \2 drive for the "),
    (r"\bs/hex\b", "6pt"),
    (r"\bb/hex\b", "12pt"),
    (r"\bcompressed[- ]air (?=impact)", "air "),
    (r"(?<![\d.])0?\.(\d{3,4}) ?af\b", r"0.\1 in af"),
    (r"\baf,? (0?\.\d+) (?:by|x) (0?\.\d+)\b(?! ?(?:in|mm))", r"\1 in x \2 in"),
    (r"^((?:deep |thin[- ]wall )*impact) (\d{1,2} ?mm)(?=,|$)", r"\1 socket \2"),
    (r"^(\d{1,2} ?mm) impact for (?:the |an? )", r"\1 impact socket for the "),
    (r"^(\d/\d ?f) (?:to|x|-) (\d/\d ?m)$", r"adapter \1 x \2"),
    (r"^((?:impact )?hex bit \d{1,2} ?mm),? (1/2|3/8|3/4)$", r"\1 socket \2 drive"),
    (r"\b9\.5 mm square \(3/8\)", "3/8 square"),
    (r"\binch drive \(1 in\)", "1 in drive"),
    (
        r"^(\d{1,2}/\d{1,2})(?: ?in| ?\"| ?inch)? (deep|shallow) (6|12) ?pt (1/4|3/8|1/2)$",
        r"\1 in \2 socket \3pt \4 drive",
    ),
    (
        r"^(?:something|anything|a thing) to run (\S+(?: inch)?) sockets on (?:the |an? )(\S+(?: inch)?) ratchet$",
        r"adapter \2 female to \1 male",
    ),
    (r"\bwith (?:an? )?built[- ]in universal joint\b", "swivel"),
    (r"\bcardan(?: \(universal\))? joint\b", "universal joint"),
    (r"\bdrill[- ]chuck converter\b", "drill adapter"),
    (
        r"\b(?:do not|don't|not to be|never|must not be) (?:be )?use[d]? (?:on|with|for|under) (?:an? |"
        r"the )?(?:impact|air)\b.*$|\b(?:do not|don't|never) gun\b",
        "not impact",
    ),
    (r"\bnot slotted\b", "unslotted"),
    (
        r"^(?!.*\badapt)(.*\b(?:socket|skt|star bit|spline\)? bit|hex(?:agon)? bit)\b.*?)"
        r"(?:,|,? (?:for|on) (?:the |an? )) ?"
        rf"({_RATCHETS})[- ]?(?:inch |in |\" ?)?(?:drive |dr )?ratchet$",
        r"\1, \2 drive",
    ),
    (r"\b(six|eight|twelve|6|8|12) corners?\b", r"\1 pt"),
    (r"\bsingle[- ]hex(?=$|,| )", "6 pt"),
    (r"\bwith (?:an? )?(?:built[- ]in )?knuckle joint\b", "swivel"),
    (
        rf"^takes (?:the |an? )?({_RATCHETS})(?:[- ]inch)? (?:ratchet|handle|bar) on (?:the )?one side and "
        rf"({_RATCHETS})(?:[- ]inch)? sockets? on the other$",
        r"adapter \1 female to \2 male",
    ),
    (
        r"\b(extension|ext|extn|universal joint|uj|adapt[eo]r)\b(.*?),? (?:for use |to be used |used )?(?:on|"
        r"with|for|under) "
        r"(?:an? |the )?(?:impact|air|rattle|windy) ?(?:wrench|gun|driver)\b(?! down)",
        r"\1\2 impact",
    ),
    (
        r"\b(?:(6\.3) mm square(?: hole| peg)? \(quarter\)|(10) mm square(?: hole| peg)? \(three[- ]eighths\)|"
        r"(12\.5) mm square(?: hole| peg)? \(half\)|(20) mm square(?: hole| peg)? \(three[- ]quarters?\))",
        r"\1\2\3\4 mm square",
    ),
    (r"(?<=square) (?:hole|peg)\b", ""),
    (r"\bpower bar\b", "breaker bar"),
    (r"(\b(?:breaker|knuckle|power) bar\b.*?),? (\d{3}|\w+ hundred) long\b", r"\1, \2 mm"),
    (
        r"(\b(?:socket|skt)\b.*?),? \b(?:that |which |to )?(?:fits?|goes|passes|go|slips?) over (?:a |"
        r"the )?(?:long |protruding )?(?:stud|bolt|thread)s?\b",
        r"\1 overstud",
    ),
    (
        r"(\b(?:socket|skt)\b.*?),? \bfor (?:an? |the )?(?:deeply? )?recessed (?:bolt|nut|head|screw|fastener)s?\b",
        r"\1 recessed",
    ),
    (r"\bcable slot\b|\bside cut-?out\b|\bcut-?out side\b", "slotted"),
    (r"^(\d{1,2})(?: ?mm)? (deep|shallow) (1/4|3/8|1/2)(?: ?(?:dr|drive))?(?= for\b|,)", r"\1 mm \2 socket \3 drive"),
    (
        rf"{_NOT_DENIED}(.*\b(?:{_PUT_ON})\b.*?),? (?:that |which )?"
        rf"(?:can |will )?(?:stands?|takes?|withstands?|survives?|bears?)(?: up to)? (?:{_THE} )*(?:{_GUNS})\b",
        r"\1 impact",
    ),
    (
        r"[-,;(]+ ?\b(?:for )?(?:deep|long|impact|short|stubby|[\w./]+(?: ?mm)?) (?:one |see |is |"
        r"are )*(?:see|in) (?:the )?(?:next|other|top|bottom) (?:drawer|shelf|bin|rack|box|tray|board)\b\)?",
        "",
    ),
    (r"\b(?:no|without(?: an?)?) (?:side |cable )?(?:slot|window|cut-?out)\b", "unslotted"),
    (
        r"\b(socket|skt) (?:to (?:get|take|undo|remove|shift)|for (?:a |the )?|that (?:gets|takes)) ?(?:a |the )?"
        r"(?:rounded|chewed|worn|damaged)(?:[- ]off)?((?: \d{1,2} ?mm)?) (?:nut|bolt|fastener)"
        r"s?(?: heads?)?(?: off| out)?",
        r"extractor \1\2",
    ),
    (r"\b(?:that |which )locks?(?: on(?: ?to)?(?: the)?(?: socket)?)?\b", "locking"),
    (r"^(\d{1,2}/\d{1,2}|\d{1,2} ?mm) (deep|shallow) (1/4|3/8|1/2)(?: ?(?:dr|drive))?$", r"\1 \2 socket \3 drive"),
    (r"(\btorque wrench\b.*\d ?(?:nm|n\.m|ft-?lb)\b),? (?:for )?(?:the )?wheel ?(?:nuts?|bolts?)$", r"\1"),
    (r"\bsw ?(?=\d{1,2}\b(?!/))", "af "),
    (r"\balloy[- ]wheel (?=.*\b(?:socket|skt)\b)", "wheel nut "),
    (r"\b(\d{2,3})[-/](\d{2})p\b", r"\1 mm \2 flutes"),
    (r"(?<![\d.])\b(0?\.\d{1,4}) (?:and|x|by) (?=0?\.\d{1,4} ?(?:in\b|inch|\"))", r"\1 in x "),
    (r"(?<=\d) ?in\.? ?a/f\b", " in af"),
    (r"\bwobble bar\b", "wobble extension"),
    (r"\((?:universal[- ])?jointed\)|(?<!universal[- ])\bjointed (?=(?:\S+ )*(?:socket|skt)\b)", "swivel "),
    (  # "for the impact gun", "to go on the half inch air wrench": only an impact socket may be used there
        rf"{_NOT_DENIED}(.*\b(?:{_PUT_ON})\b.*?),? (?:{_MEANT} )*(?:for|on|with|under|off|onto|behind|after)"
        rf" (?:{_THE} )*"
        rf"({_SQUARE_SAID})(?:[- ]?(?:inch|in\b|\"))?(?: drive| dr)? (?:{_GUNS})\b(?! down)",
        r"\1, \2 drive impact",
    ),
    (
        rf"{_NOT_DENIED}(.*\b(?:{_PUT_ON})\b.*?),? (?:{_MEANT} )*(?:for|on|with|under|off|onto|behind|after)"
        rf" (?:{_THE} )*"
        rf"(?:{_GUNS})\b(?! down)",
        r"\1 impact",
    ),
    (
        rf"{_NOT_DENIED}(.*\b(?:{_PUT_ON})\b.*?),? (?:impact )?gun (?:use|rated|proof|safe)\b|"
        rf"{_NOT_DENIED}(.*\b(?:{_PUT_ON})\b.*?),? (?:rated|safe|fit|ok) (?:for|with|on) (?:impact|air tools?)\b",
        r"\1\2 impact",
    ),
    (r",? ?\bimpact[- ](?:proof|resistant|resisting) (?:case|box|tray|roll|pouch)\b", ""),
    (r"\b(six|eight|twelve)-point (?=\w+[- ])", r"\1 pt "),  # "twelve-point ten-mil socket": no 12.10
    (r"\bbit ?skt (?=hex)|\bbitskt\b", "bit socket "),
    (r"\b(\d) (\d/\d{1,2})(?=af\b)", r"\1-\2 "),
    (r"(\b(?:socket|skt)\b.*?),? for (?:the |an? )(\d/\d) (?:bar|ratchet|handle)$", r"\1, \2 drive"),
    (r"(\b(?:adapt\w*|reducer)\b.*)\bdown to\b", r"\1to"),
    (r"^(8|eight) ?(?:pt|point) (\d+/\d+|\d+ ?mm) for (?:an? )?sq(?:uare)? (?:pipe )?plugs?$", r"8 point socket \2"),
    (r"\binv star\b", "external sixlobe"),
    (
        r"\bdeep (six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen)"
        r" for (?:the |an? )?(half|quarter|three[- ]eighths?)(?:[- ]inch)? ratchet$",
        r"deep \1 mm socket \2 drive",
    ),
    (r"\b(\d{1,2}) ?mm square 8 ?pt socket drain plug (1/2|3/8)$", r"8 point socket \1 mm \2 drive"),
    (r"\b(?:increasing|reducing) (?=adapt)", ""),
    (
        r"\bholder (?:for|to put|to take|taking) (.*?\bhex) bits? on (?:an? |the )?"
        r"(\d/\d|half|quarter|three[- ]eighths?)(?:[- ]inch)? ratchet",
        r"bit holder \1 \2 drive",
    ),
    (
        r"^(?!.*\badapt)(.*\b(?:socket|skt|bit|extension)\b.*?),? on (?:an? |the )"
        r"(\d/\d|half|quarter|three[- ](?:eighths?|quarters?))(?:[- ]inch)? (?:ratchet|bar|handle)$",
        r"\1, \2 drive",
    ),
    (r"\blong (?=impact (?:socket|skt)\b)", "deep "),
    (r"\bdouble square\b(?=.*\b(?:socket|skt)\b)", "8 point"),
    (r"\bair[- ]powered\b", "air"),
    (r"\brubber[- ]lined (?=(?:spark ?)?plug (?:socket|skt))", "rubber insert "),
    (r"^(\d{1,2})(?: ?mm)? (deep )?impact,? on (?:an )?inch drive$", r"\1 mm \2impact socket, 1 in drive"),
    (r"\be[- ]soc\b", "external sixlobe socket"),
    (r"\b(?:ordinary|normal|regular) depth\b", "standard depth"),
    (
        r"\bfor (?:an? |the )?(quarter|half|three[- ](?:eighths?|quarters?)|[13]/[248])(?:[- ]inch)? (?:square|sq)\b"
        r"(?! (?:head|pipe|plug|nut|bolt|drain|sump|filler|recess))",
        r", \1 drive",
    ),
    (r"(\bsocket\b.*),? on ([13]/[248])$", r"\1, \2 drive"),
    (
        r"^(\d{1,2})(?: ?mm)? (deep )?(?:impact|imp),? (?=(?!.*\b(?:socket|skt|set)\b)"
        r"(?:half|quarter|three|[13]/[248]))",
        r"\1 mm \2impact socket, ",
    ),
    (
        r"(\bimpact socket, )(half|quarter|three[- ](?:eighths?|quarters?)|[13]/[248])(?:[- ]inch)?(?: square| sq)?$",
        r"\1\2 drive",
    ),
    (
        r"^(half|quarter|three[- ](?:eighths?|quarters?)|[13]/[248]) (?:f|female) to "
        r"(half|quarter|three[- ](?:eighths?|quarters?)|[13]/[248]) (?:m|male)$",
        r"adapter \1 female to \2 male",
    ),
    (r"\b(skt|socket),? pwr\b", r"impact \1"),
    (r"\bpwr (?=(?:skt|socket)\b)", "impact "),
    (r"\buniv(?:ersal)?[- ]jointed\b", "universal joint"),
    (r"\(0?\.\d+\"? ?a/?f\)", ""),  # across flats, of a Whitworth size
    (r"\b(?:female square|square female) (?=(?:skt|socket)\b)", "8 point "),
    (r"\bkey bit (?:skt|socket),? sq(?:uare)? (\d+) ?mm\b", r"bit socket \1 mm male square"),
    (r"(\b(?:fltr|filter)\b.*)\b(\d{2,3})/(\d{1,2})\b", r"\1\2 mm \3 flutes"),
    (r"\bhandle,? t,? (?:sliding|sldg)\b", "sliding t bar"),
    (r"\b(deep|shallow) impact set\b", r"\1 impact socket set"),
    (r"\b(5/8|13/16)(?: ?in\b|\")? ?\((16|20\.8|21) ?mm\)", r"\2 mm"),
    (r"\b(sockets?),? (imp(?:act)?),? (deep|shallow)? ?set\b", r"\2 \3 socket set"),
    (r"\bbtskt\b", "bit socket"),
    (r"(\b(?:bit|skt|drvr|adptr|hldr|scrdvr|driver|holder|adapter)\b.*)\b(\d{2,3})l$", r"\1\2 mm long"),
    (r"\b(\d/\d) t[- ]bar\b", r"\1 drive t-bar"),
    (
        r"\b(\d+/\d+\"? ?a/?f\b.*?\bsockets?),? "
        r"(half|quarter|three[- ](?:eighths?|quarters?)|\d/\d)(?:[- ]?inch| in)?$",
        r"\1 \2 drive",
    ),
    (r"\b(shallows|deeps)\b", r"\1 socket set"),
    (r"\bdeep impacts\b", "deep impact socket set"),
    (r"\bshallows (?=socket set)", "shallow "),
    (r"\bdeeps (?=socket set)", "deep "),
    (r"(?<=13/16)( in|\")? ?\(20\.8\)", r"\1"),
    (r"\b((?:sockets?|skts?|socket set|universal joint|extension|adapter)), impact wrench\b", r"\1, impact"),
    (r"\bbar,? t,? (?:sldg|sliding|slide)\b", "sliding t bar"),
    (r"\bwrench, ratchet, (?:pneumatic|air)\b", "air ratchet"),
    (
        r"^(?!.*adapt)(.*?)\b(sockets?|skts?|bits?) on (?:an? |the )?(\d/\d[a-z\" -]*?(?:drive|dr|sq))"
        r" (?:handle|ratchet|bar)\b",
        r"\1\2, \3",
    ),
    (r"\b(1/4|3/8|1/2|3/4|1|1-1/2)(?: ?(?:in|inch|\"))? ?sd\b", r"\1 dr"),
    (r"\b(1/4|3/8|1/2|3/4)d\b", r"\1 dr"),
    (r"(?:^|(?<=, )|(?<=on )|(?<=wrench )|(?<=socket )|(?<=for ))inch[- ]drive\b", "1 in drive"),
    (r"\bsockets? with (?:a |the )?(?:built[- ]in )?swivel(?: built in)?\b", "swivel socket"),
    (r"\b(swivel) (?:u/j|uj)\b|\b(?:u/j|uj) (swvl|swivel)\b", "swivel"),
    (r"\bhand impact\b(?! (?:driver|skt|socket))", "impact driver"),
    (r"(impact (?:wrench|gun)\b.*)\bbattery\b", r"\1 cordless"),
    (r"\bbattery (?=impact (?:wrench|gun))", "cordless "),
    (r"\b(?:the )?rattle gun (?:type|sort|kind|one)\b", "impact"),
    (r"\b(?:the|an|one)[ -]inch gun\b", "1 in drive"),
    (r"\bbendy(?: flexible)? (?=ext)", "flexible "),
    (r"\bf/h(?:ea)?d\b", "flex head"),
    (
        r"\bpin (?:and|n|/|\+) (?:o[- ]?)?ring (?:type|style|retention|retained|groove|design|fixing|held)\b",
        " ",  # how an impact socket is held
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
    (r"\bpinned (?=.*\b(?:joint|uj|swivel)\b)", ""),  # how a joint is built, no pin in a recess
    (r"\b((?:joint|uj|u/j|swivel|impact (?:skt|sckt|socket)s?)\b(?!.*\b(?:torx|bit)).*)\bpinned\b", r"\1"),
    (r"\b((?:adapter|adaptor|adptr|ext|extension|impact (?:skt|sckt|socket)s?)\b.*)\bpin ?hole\b", r"\1"),
    (
        r"\b((?:skt|sckt|socket) on (?:an? |the )?(?:\d/\d\S*(?: (?:in|drive|dr))? )?)"
        r"(?:flex\w*|wobbl\w*|swivel\w*|locking|long|short) (?=ext(?:n|ension)?\b)",
        r"\1",  # what the socket is put on
    ),
    (
        r"\b(ext(?:n|ension)?s?\b.* )([1-9]|1\d)-([1-9]|1\d)-([1-9]|1\d)(?= ?(?:in\b|inch\b|\"|$|,))",
        r"\1\2 in , \3 in , \4 in ",  # ext set 3/8 3-6-10
    ),
    (r"(?<=bit, )1/4\"? ?(?:in )?hex drive\b|(?<=bit )1/4\"? ?(?:in )?hex drive\b", "1/4 hex shank"),
    (r"\b(\d+pt|\d+mm|pt) shall?\b", r"\1 shallow"),
    (r"\bspnn?r hdl\b", "spinner handle"),
    (r"\b(\d{1,2}) ?mm sq(?:uare)? bit (?=socket|skt)", r"\1 mm male square bit "),
    (
        r"\bbit (?:socket|skt),? (8|10|12|13) ?mm sq(?:uare)?\b(?=.*(?:/\d|half|quarter).*\bdr)",
        r"bit socket \1 mm male square",
    ),
    (
        r"(?<![\d.])(\d{1,2}(?:\.\d\d?)? ?mm) \(\d{1,2}/\d{1,2}(?:\"| ?in\.?)?\)"
        r"(?! (?:square|sq|drive|dr)\b)(?=.*(?:drive|dr\b))(?<=\))",
        r"\1",
    ),  # 22 mm (7/8)
    (r"\b(1/4|5/16)(?: in\b\.?|\")? hex (?:female|socket|recess)(?: end)?(?: for bits)?\b", r"\1 hex"),
    (  # one square by its two names
        r"\b(?:10 ?mm (sq(?:uare)?(?: drive| dr)?) ?\((?=3/8)|20 ?mm (sq(?:uare)?(?: drive| dr)?) ?\((?=3/4))",
        r"\1\2 (",
    ),  # 10 mm square drive (3/8 in)
    (r"\bpower sockets?\b", "impact socket"),
    (r"(?<![/\d])\b(?:four|4)[- ](?:lug|peg|pin)\b(?! punch|.*\b(?:relay|connector|plug|bulb)\b)", "fourlug"),
    (r"\bxii[- ]point\b", "12 point"),
    (r"(?<=8pt)(.*)\bsquare nuts?\b|(?<=point)(.*)\bsquare nuts?\b", r"\1\2"),  # an 8-point socket's
    (
        (r"^(.*\b(?:8|eight)[- ]?(?:pt|point).*?)\bsquare[- ]head(?:ed|s)?\b(?: (?:plug|bolt|nut|screw)s?\b)?"),
        r"\1",  # what an 8-point socket turns
    ),
    (r"\bsocket wrench[,:; ]+impact\b", "impact socket wrench"),
    (r"(?<=\d )t[- ]?(?:handled?|bar|grip)\b", "tbar"),
    (r"(?<=/\d)[\"']{0,2} ?-?(?:sd|sqd)\b", " sq dr"),  # 3/8SD
    (r"\b(dr|drv|drive|sq(?![0-4](?![\d/.]))|skt|sckt|socket|spanner|spnr)(?=\d)", r"\1 "),
    (
        r"^(?=.*\bbits?\b)(?=.*\bset\b)(?!.*\b(?:soc|sock\w*|skts?|keys?|hex bits?)\b)"
        r"(.*?)(?<![\d/-])(1/4|5/16) ?hex\b(?! ?(?:sh\w*|bits?|dr\w*)\b)",
        r"\1\2 hex shank",
    ),
]
