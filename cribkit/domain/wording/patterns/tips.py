"""Bits, keys and screwdrivers: recesses and profiles, their sizes and shanks."""

from __future__ import annotations

_RARE_RECESSES = {
    "threewing": r"(?:tri|three)[- ]?wing",
    "clutch": r"clutch[- ]head",
    "oneway": r"one[- ]?way",
    "twohole": r"snake[- ]?eye|pig[- ]?nose|spanner[- ]head|two[- ]hole",
    "threegroove": r"(?:tri|three)[- ]?groove",
    "pentagon": r"pent(?:a|agon)[- ]?socket",
}

TIPS = [
    (r"(\btamper\b.*), pin type$", r"\1"),
    (r"\bsplined (m\d\d?) bit socket\b", r"triple square \1 bit socket"),
    (r"(?<=, )(?:the )?(?:stubby|short) sort$|(?<=, )the short one$", "short"),
    (r"^multi-spline (\d\d?) for the (1/4|3/8|1/2)(?:[- ]inch)? ratchet$", r"triple square m\1 bit socket \2 drive"),
    (r"^(\d\d?) ?mm male hex, (\d\d(?:\.5)?|1/2|3/8|1/4)(?: ?mm)? square$", r"hex bit socket \1 mm, \2 square"),
    (r"^male hex (\d\d?) ?mm on (1/4|3/8|1/2|10 ?mm)(?: inch)? square\b", r"hex bit socket \1 mm \2 square"),
    (
        r"^(quarter|1/4|5/16|3/8) af (?:male hex|in-hex)(?: on|,) (?:an? )?(10 ?mm|1/2|3/8|1/4)(?:[- ]inch)? ?square$",
        r"hex bit socket \1 in af \2 square",
    ),
    (
        r"^(?:in-?hex) (\d\d?)(?: ?mm)? for (?:the )?(?:sump|drain|filler|gearbox) plug\b(?=.*\b(?:half|1/2|3/8|12\.5)"
        r"\b)",
        r"hex bit socket \1 mm for plug",
    ),
    (r"\bstar bit socket, size (\d\d)\b", r"star bit socket t\1"),
    (r"\b(t\d\d) lobe bit\b(?=.*(?:1/4|3/8|1/2) ?(?:sq|dr))", r"\1 bit socket"),
    (r"^cross-?head ([0-4]), (ph|pz)\b", r"\2\1 screwdriver"),
    (r"\brated for live work\b", "insulated 1000v"),
    (r"\b(\d\d? ?mm) key with the cross handle\b", r"t-handle hex key \1"),
    (r"^(?=.*\bbit (?:socket|skt)\b)(.*?),? \bfill(?:er)? plug$", r"\1 for filler plug"),
    (r"^(#[0-4]) cross$", r"\1 crosshead screwdriver"),
    (
        r"(?<!type z )(?<!pozi )(?:#|\b(?:number|no\.?|size) ?)([0-4]) cross(?=(?: insert)? (?:screwdriver|driver|bit)"
        r"s?\b)",
        r"#\1 crosshead",
    ),
    (
        r"(#[0-4] (?:cross[- ]?(?:head|point|tip)|phillips|pozi\w*)) bit for (?:the |an? )?(?:cordless )?drill$",
        r"\1 bit",
    ),
    (
        r"^(\d\d?) ?mm hex for (?:the )?(?:diff|fill|filler|drain|sump|level|gearbox|axle)(?: \w+)? plug\b",
        r"\1 mm hex bit socket for plug",
    ),
    (r"^(t\d\d) security, |^security (t\d\d), has the pin in the (?:middle|centre|center)\b", r"tamper \1\2"),
    (r"^long[- ]reach (t\d\d|e\d\d), (1/4|3/8|1/2)$", r"long bit socket \1 \2 drive"),
    (r"^(\d\d?) ?mm hex for (?:the )?caliper(?: slide)? (?:pins|bolts)$", r"\1 mm hex bit socket for caliper bolts"),
    # A recess by its letters alone, its number by itself; "cross" before what has a tip.
    (
        r"\b(pz|ph)(?! ?\d)\b(?=.*(?:driver|\bbit))(.*?),? ?(?:\b(?:number|no\.?|size|sz)|#) ?([0-4])\b(?! ?(?:mm|x|/)"
        r")",
        r"\1\3\2",
    ),
    (r"(?:\b(?:number|no\.?|size)|#) ?([0-4]) (pz|ph)\b", r"\2\1"),
    (
        r"^(?!.*(?:type z|z type|\bpz|\bpozi|\bposi))(.*?)\bcross (?=(?:insert )?(?:screwdriver|driver|bit)"
        r"s?\b.*\b[0-4]\b)",
        r"\1crosshead ",
    ),
    (r"\b(?:cross ?point|crosshead) (screwdriver|driver), ([0-3]) and ([0-3]) on the ends\b", r"\1 ph\2 x ph\3"),
    (
        r"(?<![\w-])(?<!external )(?<!female )(?<!e )(?<!e-)star (1[05]|2[057]|[345]0|4[057]|55|60)\b(?! ?(?:mm|pc|pt|"
        r"pi|p\b|x|-|,? ?point))",
        r"t\1",
    ),
    (r"\bsix[- ]lobe bent key\b", "six-lobe l-key"),
    (r"\bround[- ]tip long bent hex (?:wrench|key)\b", "ball end long arm hex key"),
    (r"\btee[- ]grip hex (?:wrench|key)\b|\bt[- ]grip hex (?:wrench|key)\b", "t-handle hex key"),
    (r"\binhex driver on (1/4|3/8|1/2|3/4)\b", r"hex bit socket \1"),
    (
        r"^inhex (\d\d?) (?:mm )?(?=for (?:an? |the )?(?:gearbox|sump|diff|drain|axle))(?=.*\bsquare\b)",
        r"hex bit socket \1 mm ",
    ),
    (r"\b(?:mounted|fixed|fitted) on an? (?=\d/\d|\d\d?(?:\.\d)? ?mm sq)", "on a "),
    (r"\bflathead, \d mm or so: (?=\d/\d)", "slotted screwdriver "),
    (r"^pocket clip slotted screwdriver\b", "pocket slotted screwdriver"),
    (r"\bquarter wide\b(?=.*\b(?:shank|blade|screwdriver)\b)", "1/4 in wide"),
    (r"\b(12|twelve)[- ]tooth spline\b", "12 point spline"),
    (r"\bsocket, plain head, ", "socket, "),
    (r"\bshorty\b", "stubby"),
    (r"^t[- ]?handle,? ([2-6](?:\.5)? ?mm)$", r"t handle hex key \1"),
    (r"^(\d\d?) hex drain plug bit$", r"\1 mm hex bit socket drain plug"),
    (r"^impact (t\d\d) for (?:the )?(seat ?belt|hinge|caliper) (bolts?|screws?)\b", r"impact bit socket \1 for \2 \3"),
    (r"\bright[- ]angle (?=.*\boffset\b)", ""),
    (r"\bflat[- ]?head (?=\d\S*(?: ?in| ?mm)? (?:tip|blade) (?:screw)?driver\b)", "slotted "),
    (r"\b(?:cranked|offset) ((?:cross-?head|phillips|slotted|flat) )(?:screw)?driver\b", r"offset screwdriver \1"),
    (r"\b(t\d{1,2})h\b", r"\1 tamper"),
    (r"\btwelve[- ]point spline\b|\b12[- ]?point spline\b", "triple square"),
    (r"\bcross[- ]?(?:head|tip|recess|point)?,? ?\((?:pozi\w*|pz|z)(?: type)?\)", "pozi"),
    (r"\bwrench, socket head screw\b", "hex key"),
    # "Socket-screw wrench (L-key)", "key for socket head screws".
    (r"\b(?:socket|cap)[- ]?(?:head )?screw (?:wrench|spanner|key)\b", "hex key"),
    (r"(\b(?:scrdr|screwdriver|s/?dri?v?e?r)\b.*?),? sq(?:uare)? (?:shank|shk)\b", r"\1"),
    (r"^(?:the |an? )?(?:big|tiny|little|wee) (?=(?:flat|slotted|phillips|cross|torx|star|ph\d|pz\d)\b.*\d)", ""),
    (r"(\boffset (?:screw)?driver\b.*?)\bcross(?:[- ]tip)? and (?:flat|slotted)\b", r"\1phillips and slotted"),
    # Recesses of which no size is read: a person looks.
    *(
        (
            rf"^(?=.*\b(?:screws?|bolts?|bits?|drivers?|screwdrivers?|keys?)\b)(.*?)\b(?:{said})(?:ed)?\b",
            rf"\1{name}drive",
        )
        for name, said in _RARE_RECESSES.items()
    ),
    (r"\bloose (?=(?:[a-z]+ )?(?:t\d|ph|pz|hex|bit|star)\S* ?(?:bit\b)?)(?=.*\bbit\b)", ""),
    (r"\bball[- ]end(?:ed)? t[- ]?handle\b(?! (?:hex|allen|key))", "ball end hex key t handle"),
    (r"(\b(?:bits?|t\d\d|tx\d\d)\b.*)\blg\.? ?(\d{2,3})(?: ?mm)?$", r"\1\2 mm long"),
    # A cross tip and its size, a comma between.
    (r"\b(pz|ph),? (?:size|no\.?|number|point|pt) ?([0-4])\b(?! ?(?:mm|pc|off))", r"\1\2"),
    (
        r"^(\d{1,2} ?mm) hex for (?:the |an? )?(?:(?:gear ?box|sump|drain|filler|level|diff|axle|oil)"
        r"[- ]?)+ ?plugs?\b(?=.*(?:\b\d/\d|drive))",
        r"hex bit socket \1",
    ),
    (r"(\bscrewdriver,?) (?:flat-? ?head|slot head)\b", r"\1 slotted"),
    (r"(\bt\d{1,2}\b.*?)\b(?:tr|tamp proof|hollow tip|hollow end)(?=$|[ ,])", r"\1tamper"),
    (r"(?:#|\bno\.? ?)([0-4]) (?=(?:\S+ )*\(?p([hz])\1\)?)", ""),
    (r"(?<=hex )\((p[hz]\d)\)|(?<=shank )\((p[hz]\d)\)", r"\1\2"),
    (r"\bsix[- ]?lobe \(e\)", "sixlobe"),
    (r"(\d(?:\.\d)? ?mm),? blade width\b", r"\1 blade"),
    (r"\b(\d(?:/\d+)?) t-? ?hdl\b|\bt-hdl\b", r"\1 t-handle "),
    (r"(\b(?:bit|bits)\b.*\b1/4\"? ?hex) (?:drive|dr)\b(?! ?\d)", r"\1 shank"),
    (r"(\b(?:snap|retaining) ring pl(?:ie)?rs\b.*)\b(0?\.0\d\d)\b(?! ?(?:in|mm|\"))", r"\1\2 in"),
    (r"\b6lb (?=t(?:amp|mpr)|t\d|skt|bit|key)", "sixlobe "),
    (r"\boffset cross (?=screwdriver\b.*\bp[hz] ?\d)", "offset "),
    (r"(\bspline bit) \(12 tooth\)", r"\1 12 point"),
    (r"(\b(?:bit|bit[- ]?so?c?ke?t)\b.*\d) (\d{2,3}) ?lg\b", r"\1 \2 mm long"),
    (
        r"\boffset screwdriver with (?:an? )?(ph ?\d|pz ?\d)(?: end)? and (?:an? )?flat(?: end)?\b",
        r"offset screwdriver \1 slotted",
    ),
    (r"^cranked cross-recess driver\b", "offset screwdriver"),
    (r"\bskt-?cp\b", "socket cap"),
    (
        r"^((?:m\d{1,2} )?(?:triple ?square|trpl sq|spline)(?: m\d{1,2})?),? (?:on|for) (?:the |an? )?(1/4|"
        r"3/8|1/2)(?: drive| square| ratchet)?$",
        r"\1 bit socket \2 drive",
    ),
    (r"\b(?:tampre|tampr|tamepr)(?=[- ]?(?:proof|resist\w*))", "tamper"),
    (
        r"^(?=.*\b(?:socket|skt|ratchet|extension|ext|bar)\b)(.*\b(?:adapt[eo]r|reducer|increaser)\b.*?)\boutput:? "
        r"(\d\S*(?: ?in\b)?)(?: male)?(?: sq(?:uare)?)?,? (?:and )?input:? (\d\S*(?: ?in\b)?)(?: female)?"
        r"(?: sq(?:uare)?)?(?=$|,)",
        r"\1\3 female to \2 male",
    ),
    (
        r"^(?!.*\b(?:keys?|wrench(?:es)?|drivers?|bits?|sockets?|skts?)\b)(?=.*\b(?:long|short)[- ]arm\b)"
        r"(.*?\b(?:hex(?:agon)?|allen|torx|star))\b(?! head)",
        r"\1 key",
    ),
    (
        r"^(?=.*\b(?:hex(?:agon)?|allen|inhex|torx|star)\b)(?=.*(?:\bl[- ]?(?:wrench|key)\b|\bkey\b))"
        r"(?!.*\b(?:socket|skt)\b)(.*?)\b(?:long|extra)[- ]reach(?: long[- ]arm)?\b",
        r"\1long arm",
    ),
    (
        r"^(?=.*\b(?:hex(?:agon)?|allen|inhex)\b)(?=.*\b(?:key|wrench)\b)(.*?)\bball[- ](?:hd|head)(?:ed)?\b",
        r"\1ball end",
    ),
    (r"\bscrewdriver (?:socket|skt),? (?=(?:ph|pz)[- ]?[0-4]\b)", "bit socket "),
    (r"\bsocket with (?:an? )?male hex(?:agon)?\b(?! bit)", "male hex bit socket"),
    (r"\bpz cross[- ]?head (?:number |no\.? ?)?([0-4])\b", r"pz\1"),
    (r"\bpz cross[- ]?head (?=(?:screw)?driver (?:number |no\.? ?)?[0-4]\b)", "pz "),
    (r"\bpz cross[- ]?head number (one|two|three)\b", r"pz number \1"),
    (r"\bmagnetic[- ]tipped\b", "magnetic tip"),
    (r"(\b(?:flat blade|slotted|screwdriver)\b.*?)\bfive and a half (?=by\b)", r"\1 5.5 mm "),
    (r"(\b(?:flat blade|slotted|screwdriver)\b.*?)\bsix and a half (?=by\b)", r"\1 6.5 mm "),
    (r"\b(multi-?spline|triple[- ]?square|spline) \(12[- ]?(?:pt|point)\)", r"\1"),
    (r"\b(hex|allen|hexagon|torx|star) kees?\b", r"\1 key"),
    (r"\bbal(?=[- ]end)", "ball"),
    (r"\blong reach (?=(?:ball[- ](?:end\w*|point) )?(?:allen|hex)\b)", "long arm "),
    (r"(\b(?:l-?key|(?:allen|hex) key)) st\b(?=.*\d ?(?:pce?s?|pieces?)\b)", r"\1 set"),
    (r"^(?=.*\bbit\b)(?=.*\b(?:t|tx|ph|pz|m|h)[- ]?\d)(.*)\b10 ?hex(?=$|,| \d)", r"\1 10 mm hex shank"),
    (
        r"(\bbit\b.*?) (?:to go|to fit|going|goes|that goes) in(?:to)? (?:the|an?|my) (10 ?mm|1/4(?: ?in\b| ?\")?|5/16)"
        r" (?:hex )?bit holder\b",
        r"\1, \2 hex shank",
    ),
    (r"(\bbit\b.*?),? short (?=(?:25|30|twenty[- ]five|thirty) ?(?:mm|mil)\b)", r"\1, "),
    (r"\blonger (?=.*\bbit\b.*\d ?mm\b)", "long "),
    (r"\bth ?(?=\d{1,2}\b)(\d{1,2})\b", r"t\1 tamper"),  # T with a hole
    (r"\bspline,? \(12[- ]?p(?:oin)?t(?: xs)?\)", "spline"),
    (
        # The usual shank of a nut setter says no more beside the size of its socket; alone it may be that size.
        r"^(?=.*\bnut ?(?:set+ers?|driver|runner|spinner)\b)"
        r"(?=.*(?:(?<![\d.])(?:5|5\.5|6|7|8|10|12|13) ?(?:mm|mil)\b|"
        r"\b(?:five|six|seven|eight|ten|twelve|thirteen) mil\b|"
        r"\b(?:5/16|3/8|7/16|1/2)\b))"
        r"(.*?)\b(?:1/4|quarter)(?:[- ]?inch|[- ]?in\b\.?|\")? ?(?:hex(?:agon)?|hx)(?: ?(?:shank|shk|drive)\b|\b)",
        r"\1 ",
    ),
    (r"(\bnut ?setter \d{1,2} ?x ?\d{2,3}(?: ?mm)?),? 1/4(?: ?in\b|\")?$", r"\1"),
    (r"\b(1/4|5/16)(\"?) ?hx (?=1 ?(?:in\b|inch|\"))", r"\1\2 hex, "),
    (r"\bflat ?head bit (?=\d(?:\.\d)? ?x ?(?:0\.\d|1\.\d))", "slotted bit "),
    (r"(\bkeys\b.*?),? set of \d{1,2}\b", r"\1 set"),
    (
        r"(\b(?:flat(?:head| blade)?|slot(?:ted)?|sloted) bit \d(?:\.\d)?) ?(?:mm )?,? ?\(?(0\.\d|1\.\d)(?: ?mm)? thick"
        r"(?:\b\)?)",
        r"\1 x \2 mm",
    ),
    (
        r"^(?:an? |the )?(\d(?:\.\d)?|[a-z]+(?: and a half)?) ?(?:mm|mil) (flat blade bit),? (0\.\d|1\.\d) thick\b",
        r"\2 \1 mil x \3 mm",
    ),
    (r"\bsl ?(\d(?:\.\d)?) ?[-x] ?(0\.\d|1\.\d)(?: ?mm)?\b", r"slotted \1 x \2 mm"),
    (r"(\bbit\b.*?),? hex 6\.3\b(?! ?mm)", r"\1, 1/4 hex"),
    (r"^(?=.*\bbits?\b)(.*?)\b1 in long\b", r"\1 1 in"),
    (r"(\bbits?\b.*?),? (?:tub|pot|tin) of \d{1,3}$", r"\1"),
    (
        r"^(?=.*\b(?:(?:ph|pz|tx?)\d{1,2}\b|sl \d))(?=.*\bbits?\b)(.*\b(?:bits?|1/4 ?(?:hex|hx))) 25$",
        r"\1 25 mm",
    ),
    (r"(\bbit\b.*?),+ for the (?:bit holder|ratchet|driver)$", r"\1"),
    (r"^(?:an? |the )?set of (?:\d{1,2}|five|six|seven|eight|nine|ten|thirteen) ((?:[a-z-]+ )*keys)\b", r"\1 set"),
    (
        r"\b(fold(?:ing|able|[- ]?up)? (?:[a-z\d-]+ ){0,3}?(?:keys|wrenches))\b(?!.*\bset\b)"
        r"(?=.*(?:\d ?(?:mm)? ?(?:-|to|up to|,) ?t?\d|t\d\d?,? t\d))",
        r"\1 set",
    ),
    (
        r"^(?!.*\bset\b)(?=.*(?:\d|mil) ?(?:-|to) |.*\bt \w+ to t )(.*?\b(?:allen|hex|star|six[- ]lobe) keys) "
        r"(folding|that fold(?: up)?)\b(?: into the handle)?",
        r"\1 set folding",
    ),
    (r"\b(folding|foldable) ((?:metric )?(?:star|hex[a-z]*|six[- ]lobe|allen)) wrench(?:es)?\b", r"\1 \2 key"),
    (
        r"^(?=.*\b(?:keys?|wrench)\b)(?=.*\bset\b)(.*?)(?<!\d, )(?<!\d )\b"
        r"(\d{1,2}|five|six|seven|eight|nine|ten|twelve|thirteen) (?:keys|blades|sizes)\b",
        r"\1\2 pc",
    ),
    (r"^(?=.*\bkeys?\b)(?=.*\bset\b)(.*?),? (?:in )?(?:an? )?(?:plastic )?(?:clip|holder)$", r"\1"),
    (r"^(?=.*\bbit ?holder\b)(.*\bmagn?(?:etic)?\.?) (\d{2,3})$", r"\1 \2 mm"),
    (r"\b(?:foldable|fold[- ]?up|fold)(?= (?:[a-z-]+ ){0,2}(?:hex|allen|star|tx|six[- ]lobe|keys?)\b)", "folding"),
    (r"\bthat folds? (?:in)?to (?:the|its|a) handle\b", "folding"),
    (r"\bt(\d\d?)/t(\d\d)\b(?=.*\bset\b)", r"t\1-t\2"),
    (r"\bno\. ?(?=[te]\d{1,2}\b)", ""),
    (r"\bfor (?:[a-z]+ )?screws with (?:an? |the )?(?:(?:centre|center|middle) )?(?:pin|post)s?\b", "tamper"),
    (
        r"^(?=.*\b(?:star|tx?\d\d?h?|six[- ]?lobe)\b)(?=.*\bbits?\b)(.*?)\bhollow(?: \(pin\))?(?: tip(?:ped)?| pin)?"
        r"(?: type)?\b(?! (?:shaft|handle|door|section))",
        r"\1tamper",
    ),
    (
        r"\b(?:12|twelve)[- ]?p(?:oin)?t\b,? (?=(?:multi[- ]?tooth|triple[- ]square|xzn)\b)|"
        r"(?<=multi-tooth)(?:,? )\(?(?:12|twelve)[- ]?p(?:oin)?t\)?|(?<=triple square)(?:,? )\(?12[- ]?p(?:oin)?t\)?",
        " ",
    ),
    (
        r"\b(?:m[- ]?)?(five|six|eight|nine|ten|twelve|fourteen|sixteen) (?=triple[- ]sq(?:uare)?\b(?! bits| sockets))",
        r"m \1 ",
    ),
    (
        r"\btriple[- ]square on (?=(?:an? )?(?:half|three[- ]eighths?|quarter|1/2|3/8|1/4)\b)",
        "triple square bit socket ",
    ),
    (
        r"^(?=.*\b(?:tri?pp?le[- ]?sq\w*|trpl|xzn|multi[- ]?tooth)\b)(.*?\bm ?\d{1,2}) ?x ?(\d{2,3})(?: ?mm)?\b",
        r"\1 , \2 mm",
    ),
    (
        r"^(?=.*\b(?:tri?pp?le[- ]?sq\w*|trpl|xzn|multi[- ]?tooth)\b)(?=.*\bm ?\d)(.*?)\b(?:hx ?|hex ?)10\b",
        r"\1 10 mm hex shank",
    ),
    (
        r"^(?=.*\b(?:tri?pp?le[- ]?sq\w*|trpl|xzn|multi[- ]?tooth)\b)(?=.*\bm ?\d)(.*?) 10 ?hex\b",
        r"\1 10 mm hex shank",
    ),
    (r"\bshank (\d{1,2}) ?mm hex(?:agon)?\b", r"\1 mm hex shank"),
    (r"\b(\d{1,2})(?: ?mm)? a/?f shank\b", r"\1 mm hex shank"),
    (r"[- ]hex(?:agon)? drive end\b", " hex shank"),
    (
        r"(\bbit\b.*?),? (?:to suit|to fit|for) +(?:an? )?(10 ?mm|8 ?mm|5/16|1/4)(?: ?in)? hex(?:agon)? "
        r"(?:bit )?holder$",
        r"\1, \2 hex shank",
    ),
    (r"\b[ce] ?6[.,]3(?: ?x ?(\d{2,3})(?: ?mm)?\b|\b)", r", 1/4 hex shank , \1 mm"),
    (r", (1/4 hex shank) ,  mm", r", \1"),
    (
        r"^(?!.*\b(?:bin|drawer|rack|shelf|bay|row|tray|box|loc|peg|hook|locker|cabinet|cupboard|aisle|bench)\b)"
        r"(.*?\bbit\b.*?)(?<!\()\bc ?8\b(?: ?shank)?",
        r"\1 5/16 hex shank",
    ),
    (r"\boal (\d{2,3})\b(?! ?(?:mm|in\b|\"|cm))", r"\1 mm long"),
    (r"^(?=.*\bbits?\b)(.*\b\d{1,2} ?mm) long (\d{3})\b(?! ?(?:mm|in\b|\"))", r"\1 , long , \2 mm"),
    (r"(?<=\d\"),? long reach (?=.*\bkey\b)|^long reach (?=.*\bkey\b)", "long "),
    (r"\bball-hex\b", "ball end hex"),
    (r"\bwith (?:the |an? )?ball on (?:the |one |its )?end\b", "ball end"),
    (
        r"\bcross[- ]?(?:head|recess|tip|point)(?:ed)?[, ]+\(?(ph|pz)\)?[-, ]*(?:size |no\.? ?)?([0-4])(?:,(?=\d)|\b)",
        r"\1\2 , ",
    ),
    (
        r"\bcross[- ]?(?:head|recess|tip|point)(?:ed)? \((ph|pz)\) (screw ?driver),? (?:size |no\.? ?)?([0-4])\b",
        r"\1\3 \2",
    ),
    (r"\bsquare[- ]drive screw bit\b", "square recess bit"),
    (r"\b(screwdriver bit,?) square,? size (\d)\b", r"\1 sq\2"),
    (r"\bstar with (?:the |an? )?(?:tee|t)[- ]?(?:handle|bar|grip)\b", "star t handle key"),
    (r"\b(wrench|driver),? with (?:the |an? )?(?:tee|t)[- ]grip\b", r"t handle \1"),
    (r"\bt[- ]grip (?=key|wrench|driver)", "t handle "),
    (
        r"(\bslot(?:ted)?\b.*?\bblade) (\d(?:\.\d)?)(?: ?mm)? wide and (0\.\d|1\.\d)(?: ?mm)? thick\b",
        r"\1 \2 x \3 mm",
    ),
    (
        r"^(?=.*\b(?:insulated|vde|1000 ?v|thousand volts)\b)(.*?)\belectrician'?s "
        r"(?=(?:vde |insulated )?screwdriver\b)",
        r"\1",
    ),
    (r"\bbitholder\b", "bit holder"),
    (
        r"\b(?:socket )?(?:thing|piece|end) (?:that|which) takes (?=(?:the )?(?:quarter|1/4|5/16)[- a-z\"]* bits\b)",
        "bit holder for ",
    ),
    (r"\bcoupler (?=.*\bhe?x bits$)", "bit holder "),
    (r"\b6\.3 ?mm \(1/4(?: ?in\.?|\")?\)(?= hex)", "1/4"),
    (
        r"\b(?:(1/4)(?: ?in\.?|\")? \(6\.3 ?mm sq|(3/8)(?: ?in\.?|\")? \(10 ?mm sq|(1/2)(?: ?in\.?|\")? \(12\.5 ?mm sq)"
        r"(?:uare)?\.?\)",
        r"\1\2\3 square",
    ),
    (r"\b(nut ?(?:setter|driver).*?)\b(\d/\d)(?: ?in\b\.?|\")? hex drive\b", r"\1\2 hex shank"),
    (
        r"^(?=.*\bnut ?-?(?:setter|driver|seter) ?(?:bit)?\b)(.*?)\b(\d{2,3}|sixty[- ]five|fifty) ?(?:long|lg)\b",
        r"\1\2 mm",
    ),
    (r"(\bnut ?set+ers? \d{1,2} ?mm) (\d{2,3})(?= +1/4| *$)", r"\1 \2 mm"),
    (r"(\bnut ?setter\b.*?)\bhex(?:agon)? (?=(?:[5-9]|1\d) ?mm\b)|^hex(?:agon)? (?=nut driver bit\b)", r"\1"),
    (r"\b(nut driver bit .*)\bhex (\d{1,2}) a/f\b", r"\1 \2 mm"),
    (
        r"\b(?:drain|sump) ?(?:plug|plg) (?:bit )?(?:skt|socket) (?:square (\d{1,2})(?:\.0)?(?: ?a/?f| ?mm)?|"
        r"(\d{1,2})(?: ?mm)? sq(?:uare)?(?: male)?)(?=,? (?:3/8|1/2|$))",
        r"\1\2 mm male square bit socket",
    ),
    (r"\bsocket, bit,? square, (\d{1,2}) ?mm\b", r"\1 mm male square bit socket"),
    (
        r"\bsquare (?:drain|sump) ?plug (?:bit )?(?:socket|skt) (\d{1,2}) ?mm,? (3/8|1/2)(?: ?dr(?:ive)?)?$",
        r"\1 mm male square bit socket \2 drive",
    ),
    (
        r"\b(\d{1,2}|eight|ten|twelve) ?(?:mm|mil) square (?:drain|sump) ?plug bit\b(?! (?:socket|skt))",
        r"\1 mm male square bit socket",
    ),
    (
        r"\bbit (?:socket|skt) for square[- ]recess (?:oil )?(?:drain|sump) plugs?,? (\d{1,2}) ?mm(?: square)?\b",
        r"\1 mm male square bit socket",
    ),
    (r"\b(\d) /(\d{2})\b", r"\1/\2"),
    (r"\bbit((?:,? (?:skt|socket))?),? (ph|pz)\b(?! ?[0-4]\b(?!/))(.*?),? no\.? ?([0-4])\b", r"bit\1 \2\4\3"),
    (r"^triple[- ]?square (m\d{1,2})$", r"triple square bit socket \1"),
    (r"\bbit (?:skt|socket) (?:sq|square) drain plug\b", "square bit socket for drain plug"),
    (r"(\bspline bit (?:skt|socket)\b.*?) ?\(?\b12[- ]?p(?:oin)?t\b\)?", r"\1"),
    (r"\bemm? (?=(?:three|four|five|six|eight|ten|twelve|fourteen|sixteen)\b)", "m "),
    (
        r"\bcaliper (?:slide |guide )?pins?\b(?=.*\b(?:bit|hex|key)\b)|(?<=\d )caliper (?:slide |guide )?pins?$",
        "caliper",
    ),
    (r"\bcross tip \((ph|pz)\)[,:]? no\.? ?([0-4])\b", r"\1\2"),
    (r"^(?=.*\b(?:s/driver|screwdriver|scdr|sdrv|driver)\b)(.*?) x(\d{2,3})\b", r"\1 , \2 mm long"),
    (r"\b(m\d{1,2})h(?= tamper)", r"\1"),
    (r"\b(t\d\d? (?:\w+ )*bit.*?),? (quarter|1/4) hex drive\b", r"\1 1/4 hex shank"),
    (r"\bcranked \(offset\)", "offset"),
    (r"^(crosshead|cross head) (screwdriver),? (?:no\.?|number) ?([0-4]),? (.*)\((ph|pz)\3\)", r"\5\3 \2 \4"),
    (r"\bstar[- ]profile\b", "star"),
    (r"\b6[.,]3 hex\b", "1/4 hex"),
    (r"\bdouble[- ](?:nought|zero) (ph|pz)\b", r"\g<1>00"),
    (r"\bstrike driver\b", "hand impact driver"),
    (r"\bpin[- ]hole (?=star|t\d|six)", "tamper "),
    (r"\bspline bit,? (?=(?:1/2|3/8)$)", "spline bit socket "),
    (
        r"\bsquare (\d{1,2}) ?mm drain plug bit socket\b|\bbit (?:skt|socket) square (\d{1,2}) ?mm\b",
        r"\1\2 mm male square bit socket",
    ),
    (r"\bcaliper pin hex\b", "hex"),
    (r"^(5/16|1/4) shank (ph\d|pz\d|t\d+)\b", r"\2 bit \1 hex shank"),
    (r"(?<!the )\b(?:angled|bent) (?=(?:six|6)[- ]?lobe key|hex(?:agon)? key|star key|t\d\d? key)", "l "),
    (r"\be size (\w+)\b", r"e\1"),
    (r"\bfinishing \(bottoming\) tap\b", "bottoming tap"),
    (r"\bstraight nose\b(?=.*ball)|\bsolid nose\b", ""),
    (r"\b(?:rounded )?\(?ball\)? nose\b", "ball end"),
    (r"(\bkey\b.*),? bent(?: type\b|$)", r"l \1"),
    (
        r"\b(\d{1,2}) ?mm male hex(?:agon)?,? (?:on|for|with) (?:an? )?(\d/\d)(?: ?in\b| ?inch|"
        r"\")? ?(?:square|drive|sq|dr)?",
        r"\1 mm hex bit socket \2 drive",
    ),
    (
        r"\bmale hex(?:agon)? bit (\d{1,2}) ?mm\b(.*),? (1/2|3/8|3/4|half)(?:[- ]?inch)?$",
        r"\1 mm hex bit socket \2 \3 drive",
    ),
    (r"\b(fem(?:ale)?|ext(?:ernal)?)[- ]lobe\b", "external sixlobe"),
    (r"^(?=.*\bbits?\b)(.*?)\b(\d{2,3})l\b(?! ?(?:oil|tank))", r"\1 , \2 mm long"),
    (r"\bloose (?=(?:star |insert )?bits?\b)|(?<=bit, )loose\b", ""),
    (r"(?<!, the )\bbent (?:type )?(?=(?:hex(?:agon)?|star|t\d+|allen|six[- ]?lobe) (?:\w+ )?key)", "l "),
    (r"(\bkey\b.*?),? with (?:an? )?t[- ](?:grip|handle)\b", r"t handle \1"),
    (
        r"^(?!.*\b(?:terminals?|crimp\w*)\b)(.*?)\b(?:uninsulated|non-insulated)"
        r"\b(?=.*\b(?:driver|screwdriver|pliers|spanner|wrench|socket)\b)",
        r"\1not insulated ",
    ),
    (
        r"^(?!.*\b(?:terminals?|crimp\w*)\b)(.*\b(?:driver|screwdriver|pliers|spanner|wrench|socket)\b.*?)"
        r",? \b(?:uninsulated|non-insulated)\b",
        r"\1, not insulated",
    ),
    (r"\bvery short(?=$|,)|(?<!extra )\bvery short (?=\w+driver)", "stubby"),
    (r"\b(scr?dri?v\w*|screwdriver|scdr|sdriver|s/driver|bit),? sl\b(?= ?\d)", r"\1 slotted"),
    (r"\bbit (?=(?:1/2|3/8|3/4)(?: ?(?:dr|drive|sq)\b|$))", "bit socket "),
    (
        r"^(m\d{1,2}) (spline|triple[- ]square|xzn)\b(?!.*\b(?:bit|key|skt|socket)\b)(.*\b(?:1/2|3/8|half|quarter))",
        r"\1 \2 bit socket\3",
    ),
    (
        r"^(?=.*\b(?:t\d\d?|tamper\w*|security|sec)\b)(.*?)(?:, )?\bwith (?:the |a )(?:little |small |"
        r"centre |center |middle )?(?:pin|hole)(?: ?hole)?\b",
        r"\1 tamper",
    ),
    (
        r"^(?=.*\b(?:pz\b|pz ?\d|pozi\w*))(.*?)(?:, )?(?:the one )?with (?:the |its )?(?:extra|little|four|"
        r"small) (?:lines?|ribs?)\b",
        r"\1",
    ),
    (r"\bno\.? ?([0-4]) cross(?:[- ]?(?:head|point))? (ph|pz)\b", r"\2\1"),
    (r"\bsq(?:uare)? (?:drain|sump) ?plug bit,? (\d{1,2}) ?mm,? (\d/\d)(?! ?hex)", r"\1 mm male square bit socket \2"),
    (
        r"\bsq(?:uare)? (?:drain|sump) ?plug bit,? (\d/\d)(?! ?hex)( ?dr\w*)?,? (\d{1,2}) ?mm",
        r"\3 mm male square bit socket \1",
    ),
    (
        r"\b(ext(?:ernal)?[- ](?:six|6)[- ]?lobe|ext(?:ernal)? (?:torx|star)|inverted (?:torx|star)|"
        r"female (?:torx|star))\b"
        r"(?!.*\be\d)(.*?),? \b(?:no\.?|number|size) ?(\d{1,2})\b",
        r"\1 e\3\2",
    ),
    (r"\b(tamper|tpr|security|tmpr) x ?(\d{2,3})\b", r"\1 , \2 mm long"),
    (r"\bbit\b(.*?) for (?:an? |the )?(1/4|5/16)(?: ?in\b| ?inch|\")? (?:bit )?holder\b", r"bit\1 \2 hex shank"),
    (r"(?<![\d.])0?\.25 ?(?:in\b\.?|inch|\")? ?(?=hex)", "1/4 "),
    (r"\b(\d{1,2}) ?mm sq(?:uare)? (?:drain|sump) ?plug bit,? (\d/\d)(?! ?hex)", r"\1 mm male square bit socket \2"),
    (r"\bhex(?:agon)? key,? l (?=\d)", "hex l key "),
    (r"(\b(?:screwdriver|s/driver|driver|scdr)\b.*?)\b(\d{2,3}) blade\b(?!s)", r"\1\2 mm blade"),
    (r"\bin-?hex (\d{1,2}) ?mm (half|quarter|three[- ]eighths?)(?: ?inch)?$", r"hex bit socket \1 mm \2 drive"),
    (
        r"\b(\d{1,2}) ?mm hex for (?:the )?(?:diff|gearbox)? ?(?:fill|filler|drain) plug (\d/\d) ?(?:dr|drive)$",
        r"\1 mm hex bit socket \2 drive",
    ),
    (r"\b6[.,]3 ?mm hex(?:agon(?:al)?)?\b(?: shank)?", "1/4 hex shank"),  # ISO 1173
    (r"\b(ph|pz|tx) (?:size|sz) ([0-4])\b", r"\1\2"),
    (r"\bspherical[- ]end\b", "ball end"),
    (
        r"\bcross[- ]?(?:head|point|recess|slot)?\b(.*?),? \b(?:size|no\.?) ?([0-4])\b ?\((ph|pz)\)",
        r"\3\2 \1",
    ),
    (r",? \bstraight end,? not ball\b|,? \bnot ball(?:[- ]end(?:ed)?)?\b", " plainend"),
    (r"\bball(?:[- ]end(?:ed)?)? hex (?=(?:skt|socket)\b)", "ball end hex bit "),
    (r"\bwith (?:an? )?cross handle(?: \(t[- ]form\))?", "t handle"),
    (r"\b(?:extra )?long (\d{2,3})$", r"\1 mm long"),
    (r"\b(\d{1,2}) ?mm male square (?:drain |sump )?(?:plug )?socket\b", r"\1 mm male square bit socket"),
    (r"\b(security (?:star|torx) bit),? with (?:an? )?bore\b", r"\1 tamper"),
    (r"\b(five|six)[- ]lobed\b", r"\1 lobe"),
    (r"\bfive lobe security bit,? size (\d{1,2})", r"five lobe security bit \1"),
    (r",? \bholed tip\b", " tamper"),
    (r"\b(?:number|no\.?|#) ?([0-4])\b(.*?) ?\((ph|pz)\)", r"\3\1\2"),
    (r"\b(cross[- ]?(?:point|head|recess)\w*.*?),? sizes ([0-4]) and ([0-4])\b", r"\1 ph\2 x ph\3"),
    (r"\b(t\d{1,2}\b.*)\btpr\b", r"\1tamper"),
    (r"\band (e\d{1,2}) the other\b", r"x \1"),
    (
        r"(?<!triple )(?<!triple-)(?<!double )(?<!tri )\b(?:square|sq) bit (?:socket|skt),? (\d{1,2}) ?mm\b",
        r"\1 mm male square bit socket",
    ),
    (
        r"\b(\d{1,2}) ?mm (?:square|sq) (?:(?:drain|sump|filler|axle|gearbox) plug )?bit (?:socket|skt)\b",
        r"\1 mm male square bit socket",
    ),
    (
        r"\b(\d{1,2}) ?mm (?:square|sq) bit (?:socket )?for (?:an? |the )?"
        r"(?:drain|sump|filler|axle|gearbox) plugs?\b",
        r"\1 mm male square bit socket",
    ),
    (
        r"\b(bit (?:socket|skt)\b.*?)\b(\d{1,2}) ?mm sq(?:uare)? (?:drn|drain|sump) (?:plg|plug)\b",
        r"\2 mm male square \1",
    ),
    (r"\b((?:1/4|5/16)(?: in\b|\")? ?hex) x (\d{2,3})(?: ?mm)?$", r"\1 , \2 mm long"),
    (r"\b12[- ]?(?:pt|point) (?=male triple)", ""),
    (
        r"\b(star|torx|six[- ]lobe) (screwdriver|bit socket|bit skt|bit|key|driver)\b"
        r"(?!.*\bt\d)(.*?),? ?\b(?:no\.?|number|size) ?(\d{1,2})\b",
        r"t\4 \1 \2\3",
    ),
    (r"\b(\d{1,2}) ?mm male hex on (?:an? )?(\d/\d)(?: square| drive)?", r"\1 mm hex bit socket \2 drive"),
    (r"\b12[- ]?(?:pt|point) (?:internal )?serration\b", "triple square"),
    (r"\bph,? (?:size|sz|no\.?) ?([0-4])\b", r"ph\1"),
    (r"\bs/dr\b", "screwdriver"),
    (r"\b(?:number|no\.?|#) ?(\d) (?=.*\b(?:ph|pz)\1\b)", ""),  # number 2 crosshead (PH2)
    (r"\b(?:number|no\.?|#) ?([0-4]) (ph|pz)\b", r"\2\1"),
    (r"\bt[- ]keys?\b", "t handle key"),
    (r"(?<![/.\d])\b(\d{2,3}) ?x ?(\d{1,2}) (?=(?:flat|slotted) (?:screwdriver|s/driver|driver))", r"\2 x \1 "),
    (r"\bsquare drive bit\b(?! holder)(?=.*(?:#|\bno\.? ?)\d)", "robertson bit"),
    (r"\b(bent|straight|angled) tips?\b(?! ?\d)", r"\1"),
    (r"\b(spl(?:ine)?\b.*?),? \b(?:12|twelve)[- ]?(?:pt|point)\b", r"\1"),
    (r"\btr (?=t\d)", "tamper "),
    (r"\b6lb (?=t\d|e\d|tr\b|tamper)|(?<=ext )6lb\b|(?<=bit )6lb\b|(?<=skt )6lb\b", "sixlobe "),
    (r"\bpl(?=\d\d\b)(?=.*1/4|.*hex)|(?<=security bit )pl(?=\d\d\b)", "ts"),
    (
        r"\b(\d{1,2}) and (\d{1,2}) ?mm\b(?=.*\b(?:drain|plug|key)\b)|(?<=square, )(\d{1,2}) and (\d{1,2}) ?mm\b",
        r"\1\3 mm, \2\4 mm",
    ),
    (r"\be[- ](?:lobe|skt|sckt|socket)\b", "external sixlobe socket"),
    (r"\bext(?:ernal)?[- ]lobe\b", "external sixlobe"),
    (r"\bpound[- ]?(?:thru|through)\b", "strike through"),
    (r"#(\d) (?=\d/\d ?hex)", r"#\1, "),
    (r"\bsq(?:uare)? recess\b", "robertson"),
    (r"\b(t\d\d?|ph\d|pz\d|e\d\d?) - (?=\d+ ?mm)", r"\1, "),
    (r"\bp ?h ?(?=(?:nought|zero|one|two|three|four)\b)|\bp h (?=\d)", "ph "),
    (r"\bp ?z ?(?=(?:nought|zero|one|two|three|four)\b)|\bp z (?=\d)", "pz "),
    (r"(?<=[a-z] )x(?=\d{2,3}$)", "x "),  # TMPR X100
    (r"(\b(?:bit|hex|sixlobe|torx)\b.*)\breach (\d+ ?mm)\b", r"\1\2 long"),
    (r"\bfem(?:ale)? (?=(?:tx|torx|star|six)\b)", "external "),
    (r"\bstubby flat ?head\b", "stubby slotted screwdriver"),
    (r"(\btriple ?sq(?:uare)?\b|\bxzn\b)(.*?),? \b(?:12|twelve)[- ]?(?:pt|point)\b", r"\1\2"),  # its twelve teeth
    (r"(\b(?:12|twelve)[- ]?(?:pt|point)\b) (?=m\d+\b.*\btriple)", ""),
    (
        r"\b(screwdriver|s/driver|scdr|sdrvr|nut driver)\b(.*?)\b(?:plastic|acetate|pvc)[- ]handle[ds]?\b",
        r"\1\2handle",  # no plastic scraper
    ),
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
    (  # 6LB is a weight (a hammer), but six-lobe beside what has such a tip: 6LB SKT E10, SDRV 6LB T15
        r"^(?=.*(?:\b(?:[te]\d{1,2}h?|bits?|skts?|sckts?|sockets?|keys?|sdrvs?|screwdrivers?)\b))(.*?)\b6[- ]?lb\b",
        r"\1sixlobe",
    ),
    (
        r"(?<!washer, )(?<!washer )(slotted|flat)(?! washer)(.{0,12}) (\d+(?:\.\d)?) ?(?:mm)? x ([0-2]\.\d) ?mm\b",
        r"\1\2 \3 mm",
    ),
    (r"\b(phillips|slotted|flat tip) sd\b", r"\1 screwdriver"),
    (
        r"\bcross[- ]?(?:tip|head|recess(?:ed)?|point|slot)?(?: (bit socket|screwdriver|driver|bit))?,? type z\b",
        r"pozi \1",
    ),
    (
        r"\bcross[- ]?(?:tip|head|recess(?:ed)?|point|slot)?(?: (bit socket|screwdriver|driver|bit))?,? type h\b",
        r"phillips \1",
    ),
    (r"(?<=, )ph$", "phillips"),
    (r"\bs/d\b", "screwdriver"),
    (r"(?<=\d/\d) l (?=(?:hex|allen|ball)\b)|(?<=\d/\d\d) l (?=(?:hex|allen|ball)\b)", " "),  # an L key, no litres
    (r"\bs/?drv\b", "screwdriver"),
    (r"\bkey set, socket head screw\b", "hex key set"),
    (r"\be[- ]?(?=torx|star\b|sixlobe|six[- ]lobe|6[- ]lobe)", "external "),
    (
        r"(?:#|\bno\.? ?)([0-4])[ -](?:sq|square)(?:[ -](?:drive|recess|head|tip))?\b(?! ?\d)",
        r" robertson \1 ",
    ),
    (r"\b(?:sq|square)(?:[ -](?:drive|recess|head|tip))? ?(?:#|no\.? ?)([0-4])\b", r" robertson \1 "),
    (r"\b(e\d{1,2}) ?[x/] ?(?=e\d)", r"\1 x "),
    (r"\b((?:ph|pz|tx?|sl)\d{1,2}) ?/ ?(?=(?:ph|pz|tx?|sl)\d)", r"\1 x "),  # PH1/PH2
    (r"\b(?:(ph|pz) ([0-4])|(sl|tx) (\d(?:\.\d)?)) ?x ?(?=\d)", r"\1\3\2\4 x "),  # SL 5.5X125
    (r"\b(keys?),? on (?:a |the )?(?:ring|rail|rack)\b", r"\1 set"),
    (r"(?<=key), ?l[- ]handle\b|(?<=\d), l[- ]handle\b|\bl[- ]handle(?= (?:hex|key|star|six))", " l type"),
    (r"\b(?:triple|trpl|trp|tri)[ -]sq(?:r|uare)?\b", "triplesquare"),
    (r"\bph ?(?:no\.?|nr|number|#) ?(?=[0-4]\b)", "ph"),
    (r"\bpz ?(?:no\.?|nr|number|#) ?(?=[0-4]\b)", "pz"),
    (r"\b((?:\d|1\d|2[0-2])(?:\.\d)? ?mm) long (?=(?:\w+ )?(?:hex|ball|bit|socket)\b)", r"\1 , long "),
    (r"\b[ce] ?6[.,]3\b(?: ?\(1/4\"? ?hex\w*(?: shank)?\))?", "1/4 hex shank"),  # ISO 1173
    (r"\bs2\b(?: (?:steel|blade))?", " "),
    (r"\bip ?(?:[45]4|6[5-9]|x[4-8])\b", " "),  # how far it is sealed, IEC 60529: no number of a lobe
    (r"\be[- ]sockets?\b", " external sixlobe socket "),
    (r"\be[- ]profile\b", " external sixlobe "),
    (r"\boutside[- ](?=star|torx|six|hexalob)", "external "),
    (r"\btee ?(?=\d\d\b)|\btee (?=ten|fifteen|twenty|thirty|forty|fifty)", "t "),
    (r"\be[- ]type\b", " external sixlobe "),
    (r"\b((?:ph|pz|tx?|sl|jis|h)\d{1,2}(?:\.\d)?)x(?=\d)", r"\1 x "),  # PZ2x100
    (r"(?<=\d\dh) tpr\b|(?<=tx\d\d) tpr\b|(?<=tx) tpr\b", " tamper"),  # behind another profile it may be a taper
    (r"\bt?[- ]?(\d{1,3})[- ]?ip\b", r" ip\1 "),  # T25 IP
    (
        r"^((?:triplesquare|xzn),? m\d+|m\d+,? (?:triplesquare|xzn)),? "
        r"(half inch|half|1/2|3/8|three eighths)(?: (?:inch|in))?(?: (?:dr\w*|sq\w*))?$",
        r"\1 bit socket \2 drive",
    ),
    (r"\bsquare bit,? (?:no\.? ?|#|number )([0-4])\b", r"robertson bit #\1"),
]
