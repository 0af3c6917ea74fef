"""Bolts, screws, nuts, washers, pins, clips, inserts, seals; threads and their standards."""

from __future__ import annotations

# A number as it is spoken.
_SPOKEN = (
    r"(?:(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)"
    r"(?:[- ](?:one|two|three|four|five|six|seven|eight|nine))?|"
    r"five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen)"
)

FASTENERS = [
    # A hexagon set screw is a "set" in the trade's short speech.
    (
        r"^((?:stainless )?m\d\d?(?: ?x ?[\d.]+)*) hex(?: head)? set\b(?! ?(?:screw|bolt))(?!.*\b(?:socket|grub|of)\b)",
        r"hexagon set screw \1",
    ),
    (r"^(m\d\d?) set, inch long \((\d\d)\), (?:high tensile )?(8\.8|10\.9|12\.9)$", r"hexagon set screw \1 x \2 \3"),
    (
        r"^(1/4|5/16|3/8|7/16|1/2) (unc|unf|fine|coarse) set, (?:an? |one |"
        r"1 )?inch(?: long)?$",
        r"hexagon set screw \1 \2 x 1 in",
    ),
    (r"\bten mil plain nuts, (?=m10)|\b10 ?mm plain nuts, (?=m10)", "plain nuts "),
    (r"\bpz(?= (?:pan|csk|countersunk|flange|button|round)(?:[- ]head)?\b)|(?<=head )pz$", "pozidriv"),
    (r"\bgrease (fitting|nipple) 1/4-28 straight$", r"straight grease \1 1/4-28"),
    (r"\b(?:quarter|1/4)[- ](?:twenty[- ]eight|28)$(?<=nipple, straight, quarter-28)", "1/4-28"),
    (
        r"\bcap screw\b(?=.*\b(?:grade|gr) ?(?:5|8|five|eight)\b)(?<!socket cap screw)(?<!head cap screw)"
        r"(?<!allen cap screw)(?<!hex cap screw)",
        "hex cap screw",
    ),
    (r"\bpush[- ]in retainer\b", "push clip"),
    (r"\bwheelhouse liner\b", "fender liner"),
    (r"\bpush clip nylon (\d+ ?mm) hole, ", r"nylon push clip \1 "),
    (r"\blube nipple\b", "grease nipple"),
    (r"\bgrease (fitting|nipple) 1/4-28 str$", r"straight grease \1 1/4-28"),
    (r"(\bcopper washer .*?)\bdrain$", r"\1drain plug"),
    (r"^(\d\d ?mm) copper drain washer$", r"\1 copper washer drain plug"),
    (r"\bclip push type nyl trim f/", "nylon push in trim clip for "),
    (r"^((?:1/4|5/16|3/8|7/16|1/2|9/16|5/8|3/4)-\d\d) ?x ?([\d/ -]+) (gr ?[58])$", r"bolt \1 x \2 \3"),
    (r"\bself[- ]?drillers?\b", "self drilling screw"),
    (r"(\bwashers?\b.*?)\b(?:gr|grade)\.? ?(5|8)\b", r"\1grade\2"),
    (r"(\bdie\b.*?\d) (?=(?:round|hexagon|hex|adj\w*|split)\b)", r"\1, "),
    (r"(\b(?:scr|screw)s?\b.*?)\b(pan|csk|rd|round|truss) ph\b(?! ?\d)", r"\1\2 phillips"),
    (r"^(\d{1,2}-\d\d) (machine screw) (\d/\d)\b", r"\2 \1 x \3"),
    (r"\b(?:zinc|zn)[- ]flake(?:d)?(?: coat(?:ed|ing)?)?\b", "geomet"),
    (r"\b(m\d{1,2})/(0\.\d+|[1-3](?:\.\d+)?)(?= ?x ?\d)", r"\1x\2"),
    (r"\b(m\d{1,2})(?: x |x| )p ?(\d(?:\.\d+)?)(?= ?x ?\d)", r"\1x\2"),
    (r"\b(m\d{1,2})(?: x |x| )(\d\.\d+)p(?= ?x ?\d)", r"\1x\2"),
    (r"\b(m\d{1,2}) ?x ?(\d{1,3}) (\d\.\d+) ?p\b", r"\1x\3x\2"),
    (r"\b(m\d{1,2} ?x ?\d\.\d+) (?:fine|fine pitch)(?= ?x ?\d)", r"\1"),
    (r"\bg(?:r(?:ade)?)?(?=(?:8\.8|10\.9|12\.9)\b)", "grade "),
    (r"\b(8\.8|10\.9|12\.9) ?gr\b", r"grade \1"),
    (r"\bcls\.? ?(?=(?:4\.6|5\.6|5\.8|6\.8|8\.8|10\.9|12\.9|8|10)\b)", "class "),
    (r"(?<=\d)mml\b|(?<=\d )mml\b", " mm long"),
    (r"(?<=\d) millimet(?:re|er)s?\b", " mm"),
    (
        r"^(?=.*\b(?:bolt|nut|screw|washer|scr|wshr|setscrew)s?\b)(.*?)\b(?:z/p|z\.p\b\.?|zplt|(?:zinc|zn|"
        r"zink)[- ](?:plt|plating|plated|electroplated)|electro[- ]?(?:zinc|galv\w*)(?: plated)?)(?=$|[ ,;)])",
        r"\1zinc plated",
    ),
    (r"\blk ?nuts?\b(?=.*\b(?:nyl|m\d))|(?<=insert )lknuts?\b", "lock nut"),
    (r"\block ?nuts? with (?:an? )?nylon insert\b", "nylon insert lock nut"),
    (r"\bset ?screws?,? (?:skt|socket)(?= m\d)", "grub screw"),
    (r"\bplastic[- ]insert (?=(?:lock ?)?nuts?\b)", "nyloc "),
    (r"\brol (?=pins?\b)", "roll "),
    (r"^(\d/\d|\d/\d\d) (fine|coarse) ?x ?(\S+) (.*?),? \1-(\d\d)$", r"\1-\5 x \3 \4"),
    (r"\bself[- ]?tap(?= (?:hex|pan|csk|screw|scr|pz|ph)\b)", "self tapping"),
    (
        r"\bscrew,? self[- ]?tap(?:ping)?,? hex(?:agon)? (?:wash(?:er)? )?h(?:ea)?d\b",
        "self tapping screw hex head",
    ),
    (r"\bwith (?:an? )?rubber lining\b", "rubber lined"),
    (r"\b(m\d{1,2}) (?:fine|coarse),? (\d\.\d+) ?x ?(?=\d)", r"\1 x \2 x "),
    (r"^(?=.*\bm\d{1,2}\b)(.*\bnut\b.*?)\b(?:gr(?:ade)?|cl)\.? ?(8|10|12)\b", r"\1class \2"),
    (r"^(?=.*\bm\d{1,2}\b)(.*?)\b(?:gr(?:ade)?|cl)\.? ?(8|10|12)\b(?=.*\bnuts?\b)", r"\1class \2"),
    (r", (?:pan|sump|cover|head) bolts \d+(?:\.\d+)? ?(?:in|ft|n)\S*$", ""),
    (r"\b(?:dolly(?: type)?|dollied)(?=.*\bhydraulic\b)|(?<=jack, )dollied", "trolley"),
    (r"\bset ?pin(s?)\b", r"setscrew\1"),
    (r"\bhex(?:agon)?[- ]headed\b", "hex head"),
    (r"(?<=\d) mf\b(?= (?:zinc|zn|bzp|steel)|$)", ""),
    (r"\b(?:plastic|nylon) (?:insert|ring|collar)(?=.*\bnut|$)|(?<=nut hex )plastic insert", "nylon insert"),
    (r"\bstiff ?nut\b(?=.*nylon)", "lock nut"),
    (
        r"^(?=.*\briv[ei]ts?\b)(.*?)\b(?:large|lrge|lge?|wide|big|oversized?)[ -]?(?:flange|flng|flnage|head|"
        r"hd)(?:e?d)?(?: h(?:ea)?d)?\b",
        r"\1largeflange",
    ),
    (r"^(?=.*\briv[ei]ts?\b)(.*?)\blf\b", r"\1largeflange"),
    (r"\ba(?=\d{1,2} ?x ?\d{1,2} ?x ?\d)(?<=\ba)", ""),
    (r"(?<=mm )band width\b", "band"),
    (r"(?<=\d )zy\b", "yellow zinc"),
    (r"\bgrd?e? (?=(?:5|8|8\.8|10\.9|12\.9)\b)", "grade "),
    (r"(?<=x )(\d)\.(?=\d/\d)|(?<=\dx)(\d)\.(?=\d/\d)", r"\1\2-"),
    (r"\bi/d\b", "id"),
    (r"(?<=mm )gro+ve dia(?:meter)?\b|(?<=mm )grove\b", "groove"),
    (
        r"^(?=.*\briv[ei]t nuts?\b|.*\bnut riv[ei]ts?\b|.*\bnut-riv[ei]ts?\b)(.*?)\bflat[- ]h(?:ea|e)?d\b",
        r"\1flatflange",
    ),
    (r"^(?=.*\brivets?\b)(.*?)\b(?:large|wide|big|lge?)[ -]?(?:flange|head)(?:e?d)?\b", r"\1largeflange"),
    (r"\b(?:bayonet )?with (?:the )?(?:staggered|offset) pins\b|\bstaggered pins\b", "offset pins"),
    (r"(\bp21[/-]5 ?w\b.*?),? off?set[- ]pins?\b", r"\1"),
    (
        r"^(?=.*\b(?:brake|tube|pipe)\b)(?=.*\b(?:nut|union|fitting)s?\b)(?!.*\b(?:bsp\w?|npt|wrench|spanner|drive)\b)"
        r"(.*?)\b(3/16|1/4|5/16)(?: ?in\b\.?| ?\")?,? (female|male)\b",
        r"\1\3, \2",
    ),  # the pipe's size has no gender
    (r"(\bstuds?\b.*?\d(?: ?mm)?) total length\b", r"\1 overall"),
    (r"^insert,? (?:thd |thread )?wire (?=m\d)", "wire thread insert "),
    (r"(\brivet nuts?\b.*?)\breduced (?:head|hd|flange)\b", r"\1reducedflange"),
    (r"(?<![\d.])0?\.250?-(20|28)\b", r"1/4-\1"),
    (r"(?<![\d.])0?\.312?5?-(18|24)\b", r"5/16-\1"),
    (r"(?<![\d.])0?\.375-(16|24)\b", r"3/8-\1"),
    (r"(?<![\d.])0?\.437?5?-(14|20)\b", r"7/16-\1"),
    (r"(?<![\d.])0?\.500?-(13|20)\b", r"1/2-\1"),
    (r"(?<![\d.])0?\.625-(11|18)\b", r"5/8-\1"),
    (r"(?<![\d.])0?\.750?-(10|16)\b", r"3/4-\1"),
    (r"\b(unc|unf) ([1-9]) (\d/\d{1,2}) ?(?:in\b|\")(?: (?:long|lg)\b)?", r"\1 x \2-\3 in"),
    (r"\b(?:10|ten) (?:x|by) (?:1|one) (?=(?:fe)?male (?:brake|pipe|tube)\b)", "m10 x 1 "),
    (r"\b(?:12|twelve) (?:x|by) (?:1|one) (?=(?:fe)?male (?:brake|pipe|tube)\b)", "m12 x 1 "),
    (
        r"\b(1/4|5/16|3/8|7/16|1/2|9/16|5/8|3/4)(?: ?in\b\.?| ?\"| inch)? ?x ?(\d\d) ?tpi\b"
        r"(?=.*\b(?:nut|bolt|screw|stud)s?\b)",
        r"\1-\2",
    ),
    (
        r"^(?=.*\bnuts?\b)(.*?)\b(1/4-28|5/16-24|3/8-24|7/16-20|1/2-20|9/16-18|5/8-18|3/4-16)"
        r"(?=,? (?:full|plain|thin|half|hex|hexagon|nyloc|zinc|zp|bzp|zn)\b|$)",
        r"\1\2 unf",
    ),
    (
        r"^(?=.*\bnuts?\b)(.*?)\b(1/4-20|5/16-18|3/8-16|7/16-14|1/2-13|9/16-12|5/8-11|3/4-10)"
        r"(?=,? (?:full|plain|thin|half|hex|hexagon|nyloc|zinc|zp|bzp|zn)\b|$)",
        r"\1\2 unc",
    ),
    (rf"(\bwashers?\b.*?\b(?:\d{{1,3}}|{_SPOKEN}))(?: ?mm| mil)? across\b(?! ?(?:the )?flats)", r"\1 mm od"),
    (
        rf"^((?:\d|{_SPOKEN}|three|four)(?:\.\d| point (?:two|four|eight))?)(?: ?mm)?( (?:[a-z]+ )?rivets?),? "
        rf"(\d{{1,2}}|{_SPOKEN})(?: ?mm)? long\b",
        r"\1 x \3 mm\2",
    ),
    (r"\binserts?,? spiral wire\b", "wire insert"),
    (r"\bcoarse thread repair insert,? (?:spiral )?wire\b", "coarse wire insert"),
    (r"\b(brake) pip (?=nut|union)", r"\1 pipe "),
    (r"\bnut,? tube,? brake\b", "brake pipe nut"),
    (r"(\b(?:nut|union)s?\b.*\b3/16\b.*?),? thread (?=m\d)", r"\1, "),
    (r"\bm(\d{1,2}) ?\* ?(?=\d)", r"m\1 x "),
    (r"(\b(?:insert|coil|helicoil)s?\b.*?)\bm(\d{1,2})x(\d\.\d+)x([123](?:\.5)?)d\b", r"\1m\2 x \3 x \4d"),
    (r"(\b(?:screw|bolt)s?,? (?:[a-z]+,? )?)(\d{1,2}) ?mm thread,? (\d{1,3})(?: ?mm)? long\b", r"\1m\2 x \3 mm"),
    (
        r"^(?!.*\b(?:torx|t\d\d|six[- ]lobe|6[- ]lobe|lobular)\b)(.*?)\bbhcs\b",
        r"\1button head hex socket screw",
    ),
    (r"\bdome(?:d)? head(?:ed)? (?=(?:hex(?:agon)? )?socket\b)", "button head "),
    (
        r"\bdome(?:d)? head(?:ed)? screw(s?) (?:for|with) (?:an? )?hex(?:agon)?[- ](?:key|socket)\b",
        r"button head hex socket screw\1",
    ),
    (
        r"\bthreaded (?:(?:right|all the way|all along|the whole way) )?(?:up )?(?:right )?to (?:the|its) head\b"
        r"|\bthreaded (?:right|all the way) up\b(?! to)",
        "full thread",
    ),
    (r"\bhex(?:agon)?(?: head)? set bolt(?=s?\b)", "hex setscrew"),
    (r"\btap bolt(s?),? hex(?:agon)?(?: (?:head|hd))?\b", r"full thread hex bolt\1"),
    (r"\bhex(?:agon)?(?: (?:head|hd))? tap bolt(?=s?\b)", "full thread hex bolt"),
    (r"\bpitch (\d),(\d{1,2})\b", r"pitch \1.\2"),
    (r"\bpc ?(?=(?:8\.8|10\.9|12\.9)\b)", "class "),
    (r"\bhex(?:agon)?(?: (?:head|hd))? (bolt|screw|nut)(s?),? with (?:a )?flange\b", r"hex flange \1\2"),
    (r"\bhex(?:agon)? flange (?:head |hd )?cap ?screw(?=s?\b)", "hex flange bolt"),
    (r"\b(hex[- ]key (?:bolt|screw)s?),? cylindrical head\b", r"\1"),
    (r"\bgrub (?:srew|scrw|scerw|scew|srcew)(?=s?\b)", "grub screw"),
    (r"\bgrubs?(?=(?:,? for\b|,? to\b|,? in\b|,|$))", "grub screw"),
    (r"\bint\.? hex(?:agon)?(?: drive)?\b", "internal hex"),
    (r"(\bstuds?\b.*?)\b(?:2|two)-end(?:ed)?\b", r"\1double ended"),
    (r"(\bstuds?\b.*?)\b(m\d{1,2})/\2\b", r"\1\2"),
    (r"(\bstuds?\b.*?)\btotal (?:l ?=? ?|length (?:of )?)(\d{2,3})\b(?: ?mm)?", r"\1\2 mm overall"),
    (r"(\bstuds?\b.*?\bm\d{1,2}(?: ?[x-] ?\d(?:\.\d+)?)?) thread (?=(?:on|at) both ends\b)", r"\1 "),
    (r"\bnut ne\b|\bne nut\b", "nylon insert nut"),
    (r"(\bnuts?\b.*?)\bsteel,? (?=(?:copper|cu)[- ](?:plated|coated|flashed)\b)", r"\1"),
    (r"(\b(?:nut|bolt|stud|screw)s?\b.*?),? standard pitch\b", r"\1 coarse"),
    (r"(\bnuts?\b.*?),? full height\b", r"\1 full"),
    (r"(\b(?:nut|bolt|stud)s?\b) and torque(?: (?:it|them|up))*$", r"\1"),
    (r"^fin(?:ished)? (?=hex(?:agon)? nuts?\b)", ""),
    (r"(\brivets?\b.*?),? \blarge flange\b(?: (?:head|hd))?", r"\1 largeflange"),
    (r"\blarge flange(?: (?:head|hd))? (?=(?:blind |pop |pull |break[- ]stem )?rivets?\b)", "largeflange "),
    (r"(\brivets?\b.*?)\bnormal (?=dome)", r"\1"),
    (
        r"(\b(?:split pin|cotter|cotter pin)s?\b.*?)\b(\d{1,3})(?: ?mm)? long,? (\d(?:\.\d)?)(?: ?mm)? "
        r"(?:thick|dia(?:meter)?)\b",
        r"\1\3 x \2 mm",
    ),
    (r",? tray slot \d{1,3}$", ""),
    (
        r"^(?=.*\b(?:inserts?|helicoils?|thread (?:repair|coil))\b)(.*?)\bone and a half (?:d|dia(?:meter)?s?)\b",
        r"\g<1>1.5d",
    ),
    (
        r"^(?=.*\b(?:inserts?|helicoils?|thread (?:repair|coil))\b)(.*?)\btwo and a half (?:d|dia(?:meter)?s?)\b",
        r"\g<1>2.5d",
    ),
    (r"^(?=.*\b(?:inserts?|helicoils?|thread (?:repair|coil))\b)(.*?)(?<![\d/])([12]) ?1/2 ?d\b", r"\1\2.5d"),
    (
        r"^(?=.*\b(?:inserts?|helicoils?|thread repair)\b)(.*?)(?<![\d.])([123](?:\.[05])?) ?(?:x )?"
        r"dia(?:meter)?\b(?! ?\d)",
        r"\1\2d",
    ),
    (
        r"^(?=.*\b(?:inserts?|helicoils?|thread repair)\b)(.*?)(?:x )?(?<![\d.])\d{1,2} ?mm(?: long)? "
        r"\(([123](?:\.5)?) ?d\)",
        r"\1\2d",
    ),
    (r"^(tap the hole and )?wind in (?=an? )", "fit "),
    (r"\bspiral wire\b(?=.*\binsert)|(\binserts?\b.*?),? spiral wire\b", r"\1 wire"),
    (r"\bex\. (?=mani(?:fold)?\b)", "exhaust "),
    (r"\bself[- ]tensioning (?=.*\bspring\b.*\bcl[ai])", ""),
    (r"\bpush[- ](?:pin|in|type)(?: plastic)? r(?:i)?vet(?=s?\b)", "plastic push rivet"),
    (r"\bpush rvet(?=s?\b)", "push rivet"),
    (r"\brivet,? push,? (?=plastic|nylon)", "push rivet "),
    (r"\b(?:j ?)?30[- ]?(?=r(?:6|7|9|10)\b)", "j30 "),
    (r"\bmlae\b", "male"),
    (r"\bmale (?:brake (?:pipe )?(?:union )?|tube )nut(?=s?\b)", "male brake pipe nut"),
    (r"\bmale nut(s?) for making up an? brake (?:line|pipe)(?: in)?\b", r"male brake pipe nut\1"),
    (
        r"^(?=.*\b(?:brake|tube|pipe|union)\b)(?=.*\b(?:nut|union|fitting)s?\b)(.*?)\b4\.75(?: ?mm)?\b(?! ?od\b)",
        r'\1 3/16" ',
    ),
    (
        r"^(?=.*\b(?:brake|tube|pipe|union)\b)(?=.*\b(?:nut|union|fitting)s?\b)(.*?)\b4\.75(?: ?mm)? od\b",
        r'\1 3/16" ',
    ),
    (r"\bplug(s?) for the (?:engine |oil )?sump\b", r"sump plug\1"),
    (r"(\b(?:sump|drain|filler|level) plugs?(?! thread)\b[^;:]*?),? thread (?=m\d{1,2} ?x ?\d(?:\.\d+)?$)", r"\1 "),
    (
        r"^(?!.*\b(?:\w*drivers?|tools?|blade|file|spanner|socket|plier)s?\b)"
        r"(?=.*\b(?:rivet[- ]?nuts?|nut rivets?|nut,? blind rivet|threaded rivet insert|blind nut(?: insert)?|"
        r"rviet nut|threaded insert,? blind rivet)\b)"
        r"(.*?)\bflat(?:[- ](?:head|hd|flange))?\b",
        r"\1flatflange",
    ),
    (r"\brivetnut(?=s?\b)", "rivet nut"),
    (r"\bthreaded insert,? blind rivet(?: type)?\b|\bthreaded rivet insert\b|\bblind nut insert\b", "blind rivet nut"),
    (r"(\brivet nuts?\b.*?),? open[- ]end(?:ed)?\b", r"\1 openbody"),
    (r"(\brivet nuts?\b.*?),? closed[- ]end(?:ed)?\b", r"\1 closedbody"),
    (r"\bexh? (?=mani\b)", "exhaust "),
    (r"(\bpins?\b.*?)\b(\d{1,2}(?:\.\d)?) ?dia,? (\d{1,3})(?: ?mm)?(?: ?lg| long)\b", r"\1\2 x \3 mm"),
    (
        r"(\bnuts?\b.*?),? with (?:the |a )?nylon (?:ring|insert|collar)s?$",
        r"\1 nylon insert",
    ),
    (r",? need (?:a )?new(?: one)?$", ""),
    (r"(\b(?:single|double|two|one|[12])[- ]ear\b.*?)(?<!stainless )(?<!mild )\bsteel,? (?=(?:bzp|zp|zinc)\b)", r"\1"),
    (r"(\bplug\b.*\bm\d{1,2} ?x ?\d(?:\.\d+)?),? thread(?=,|$)", r"\1"),
    (r"^(?:twin|double|dual)[- ]filament (?=.*\b21/5)", ""),
    (r"(?<=\d) x(?=\d+\.\d+ ?mm\b)", " x "),
    (r"\b(nbr|fkm|epdm|hnbr|viton|nitrile|silicone) (60|70|75|80|90)a\b", r"\1 \2"),
    (
        r"(\bnuts?\b.*?),? (?:the )?ones with (?:the |a )?nylon (?:ring|insert|collar)s?\b",
        r"\1 nylon insert",
    ),
    (r"\bd/lip\b", "double lip"),
    (r"\bs/lip\b", "single lip"),
    (
        rf"\b({_SPOKEN}),? ({_SPOKEN}),? ({_SPOKEN})(?: mil)?,? (?=(?:[a-z]+[ -]){{0,3}}(?:oil|shaft|lip) seals?\b)",
        r"\1 x \2 x \3 mm ",
    ),
    (r"\btwo and a half[- ]lit(?:re|er)s?\b(?=.*\b(?:diesel|petrol)\b)", "2.5"),
    (r"\bone and a half[- ]lit(?:re|er)s?\b(?=.*\b(?:diesel|petrol)\b)", "1.5"),
    (r"\bthree and a half[- ]lit(?:re|er)s?\b(?=.*\b(?:diesel|petrol)\b)", "3.5"),
    (r"\bsq\.? sect(?:ion)?\b", "square section"),
    (r"\bpart[- ]thread(?:ed)?,? with (?:a )?plain shank\b", "part thread"),
    (
        r"^(?=.*\b(?:bolts?|(?:cap ?|set ?)?screws?|scr|studs?)\b)"
        r"(?!.*\b(?:sets?|kit|extractors?|removers?|installers?|pullers?|drivers?|drills?|"
        r"taps?|dies?|tool|assorted|assortment|mixed|selection|range|nuts?|inserts?)\b(?! ?screws?))(.*?)"
        r"\bm(\d{1,2})-(16|[2-9][05]|\d{3})\b(?![.-])",
        r"\1m\2 x \3",
    ),
    (r"^(?=.*\b(?:bolt|screw)s?\b)(.*?)\bhh\b", r"\1hex head"),
    (r"\b(\d{1,2}) ?mm x (\d{1,3}) ?mm,? \(?m\1\b\)?", r"m\1 x \2 mm"),
    (r"\b(\d{1,2}) ?mm thread x (\d{1,3})(?: ?mm)? long,? \(?m\1\b\)?", r"m\1 x \2 mm"),
    (r"\b(\d{1,2}) ?mm x ([0-3]?\.\d+|[123]\.\d+)(?: pitch)?(?: thread)?,? \(?m\1\b\)?", r"m\1x\2"),
    (r"\bone and a quarter (?:mm |mil )?pitch\b", "1.25 pitch"),
    (r"\bone and a half (?:mm |mil )?pitch\b", "1.5 pitch"),
    (r"\bone and three[- ]quarters? (?:mm |mil )?pitch\b", "1.75 pitch"),
    (r"\b(m\d{1,2}) (fine |coarse )?\((\d\.\d+)\) ?x ?(?=\d)", r"\2\1x\3 x "),
    (r"\b(m\d{1,2})( fine| coarse)?,? p ?(\d\.\d+)\b", r"\1x\3\2"),
    (r"\bin (?:class |grade )?twelve nine\b", "12.9"),
    (r"\bin (?:class |grade )?ten nine\b", "10.9"),
    (r"\bin (?:class |grade )?eight eight\b", "8.8"),
    (r"\b(pan|csk|countersunk|raised)(?: head| hd)? pz\b(?! ?\d)", r"\1 head pozi"),
    (r"\b\d\.\d x \d\d?(?:\.\d)? ?mm \((no\.? ?\d+ x \d/\d)\"?\)", r"\1"),
    (r"(\btapp(?:ing|er)s?\b.*?)\bpz ?([0-3])\b(?!.*\b(?:bit|driver)\b)", r"\1pozi pz\2"),
    (
        r"^(?=.*\bself[- ]tapp|.*\bs/tap)(.*?)(?<![#\d./x-])(?<!no )(?<!no\.)(?<!no\. )(?<!x )"
        r"\b(4|6|8|10|12|14) ?x ?(?=\d/\d)",
        r"\1no \2 x ",
    ),
    (r"\bcotter pin \(split(?: type)?\)", "cotter pin"),
    (
        r"(\bwheel ?nut (?:spanner|wrench|socket|brace|key)\b.*?)\b(?:hex ?(17|19|21|22)|(17|19|21|22) ?hex)\b",
        r"\1\2\3 mm",
    ),
    (
        r"(\bnuts?\b.*?),? (?:the ones )?with (?:the |an? )?nylon (?:ring|insert|collar)s?(?: in (?:them|it))",
        r"\1 nylon insert",
    ),
    (
        r"^(?=.*\brivets?\b|.*\brvts?\b)(.*?)\b(?:ali|alu|al|ally|alum|aluminium|aluminum)[ /]"
        r"(?:st|stl|steel)\b(?! st)",
        r"\1aluminium steelmandrel",
    ),
    (r"(\brivets?\b.*?),? \b(?:with )?(?:a )?steel (?:mandrel|stem|pin|shank)\b", r"\1 steelmandrel"),
    (
        r"^(?=.*\brivets?\b)(.*?)\b(?:ali|alu?|ally|aluminium|aluminum)[ /](?:ali|alu?|ally|aluminium|aluminum)\b",
        r"\1aluminium alumandrel",
    ),
    (r"\bforty[- ]five h\b", "hclass45"),
    (r"\brect\.? (?=section|sect\b)", "rectangular "),
    (r"\bplgu\b", "plug"),
    (r"(?<=\d) ?mm dia(?:meter)? x (?=\d)", " mm x "),
    (r"(?<=x )(\d{1,3}),(\d{1,2})(?=,(?: |$))", r"\1.\2"),  # 22,2, for inox
    (
        r"^(?=.*\b(?:wheel|lug|whl) (?:nut|bolt)s?\b|(?:nut|bolt)s?,? (?:road )?wheel\b)"
        r"(?!.*\b(?:bits?|btt|skt|sockets?|keys?|wrench|spanner|tool|driver|brace|set|dr|drive)\b)(.*?)(?:"
        r"\bhex(?:agon)?(?: (?:head|hd))?,? (1[2-9]|2[0-4])(?: ?mm)?(?: a ?/? ?f)?\b(?! ?(?:x|to|-))"
        r"|(?<![\dx/.-])(?<!x )\b(1[2-9]|2[0-4]) ?(?:mm)?(?: ?a ?/? ?f)? ?hex(?:agon)?\b(?! (?:socket|key|recess))"
        r"(?: (?:head|hd)\b)?)",
        r"\1\2\3 af",
    ),  # what its head measures
    (r"\btaper(?:ed)? 60\b(?! ?(?:mm|deg))", "taper"),
    (r"(?<=[\d )])f/th(?:r(?:ea)?d)?\b", "full thread"),
    (
        r"^(?=.*\b(?:bolt|screw|setscrew|hex)s?\b)(?!.*\b(?:rod|bar|stud|studding)s?\b)(.*?)\ball[- ]?thread(?:ed)?\b",
        r"\1full thread",
    ),
    (r"\bhex(?:agon)? sets? (?=m\d{1,2} ?x ?\d)", "hex setscrew "),
    (
        r"^(?=.*\b(?:grub|gurb|set ?screw|headless|screw|scr|setscr\w*)s?\b)(?!.*\b(?:bit|key|driver)s?\b)(.*?)"
        r"\b(14|22|33|45) ?h\b",
        r"\1hclass\2",
    ),  # hardness classes of grub screws, ISO 898-5 (from memory)
    (r"\bcup[- ]point(?:ed)?\b|\bcup piont\b", "cup point"),
    (r"\bheadless (?:hex )?socket screws? \(grub\)", "grub screw"),
    (r"\bd/ends?\b", "double end"),
    (
        r"^(?=.*\bstuds?\b)(.*?)\b(?:over ?all|o/all|oal|o/a)(?: len(?:gth)?)?,? (\d{2,3})(?: ?mm)?\b",
        r"\1 \2 mm long",
    ),
    (
        r"^(?=.*\bstuds?\b)(.*?\d)(?: ?mm)?,?(?: long| lg)?,? (?:over ?all|o/all|oal|o/a)\b(?: length)?",
        r"\1 mm long",
    ),
    (r"^(?=.*\bstuds?\b)(?=.*\bm\d)(.*?),? coarse (\d\.\d+)\b", r"\1, pitch \2"),
    (r"^(?=.*\brivets?\b)(.*?)\baluminium(?: body)?,? aluminium (?:mandrel|stem|pin)\b", r"\1aluminium alumandrel"),
    (r"^(?=.*\brivets?\b|.*\brvts?\b)(.*?)\bdh\b", r"\1dome head"),
    (r"\bblind pull (?=rivet)|\bpull (?=rivets?\b)", "blind "),
    (r"^(?=.*\brivets?\b)(.*?)\b\d/\d{1,2}\"?(?: ?in)?(?: dia)? \((\d(?:\.\d)?)(?: ?mm)?\)", r"\1\2 mm"),
    (r"(?<!and )(?<!and a )(?<!\d )(?<!\d-)\b(?:a )?half(?: an)?(?: inch)? bsp\b", "1/2 bsp"),
    (r"\b(?:twin|dbl)[- ]lip(?:ped)?\b", "double lip"),
    (r"(\d) ?id x (?=\d+(?:\.\d+)? ?od\b)", r"\1 id, "),
    (r"\bwheel nit\b|\bweel nut\b", "wheel nut"),
    (r"\bdrain plug for (?:the )?sump\b", "sump plug"),
    (r"\btoothed flange nut\b", "serrated flange nut"),
    (r"\bpull[- ]stem (?=rivet)", "blind "),
    (r"\bst/st\b|\bs/st\b", "stainless"),
    (r"\b(m\d{1,2}) (?:coarse )?by (?=\w)", r"\1 x "),
    (r"\b(bolt\b.*?),? strength (?=\w+ point|\d)", r"\1, class "),
    (r"\bone[- ]millimet(?:re|er)[- ]pitch\b", "pitch 1 mm"),
    (r"\bfine (?=finish)|\bcoarse (?=finish)", ""),
    (r"(?:#|\bno\.? ?)(4-40|6-32|8-32|10-24|12-24)\b(?! ?un)", r"\1 unc "),  # ASME B1.1 (from memory)
    (r"(?:#|\bno\.? ?)(4-48|6-40|8-36|10-32|12-28)\b(?! ?un)", r"\1 unf "),
    (r"\bmach\.? (?=scr|screw)", "machine "),
    (r"^(?=.*\b(?:bolt|capscrew|cap screw|screw)\b)(.*?)\bf/?t\b(?! ?-?lb)", r"\1 full thread"),
    (
        r"^(?=.*\b(?:bolts?|pins?|rivets?|studs?|screws?)\b)(.*?)(?:\blg ?(\d{1,3})(?: ?mm)?\b|(?<![\d/.])"
        r"\b(\d{2,3}) ?(?:mm )?lg\b)",
        r"\1 \2\3 mm long",
    ),
    (
        r"\b(?:shaft|id) (\d+(?:\.\d+)?),? (?:housing|bore|od) (\d+(?:\.\d+)?),? (?:width|wide|thick\w*)"
        r" (\d+(?:\.\d+)?)\b",
        r"\1x\2x\3",
    ),
    (r"\b(?:an? |one )?(eighth|sixteenth|quarter) of an inch\b", r"\1 inch"),
    (r"(?<=ths) of an inch\b|(?<=quarters) of an inch\b", " inch"),
    (r"\bem (?=(?:\d|three|four|five|six|eight|ten|twelve|fourteen|sixteen|twenty)\b)", "m "),
    (r"\b(?:eight point eight|ten point nine|twelve point nine) ?\((8\.8|10\.9|12\.9)\)", r"\1"),
    (r"(?<=\bone) millimet(?:re|er) (?=pitch)", " "),
    (r"(\brivets?\b.*?)\bst\b", r"\1steel"),
    (r"\bstrap,? tie ?-?down,? (?:cable|electrical)\b", "cable tie"),
    (r"^(?=.*\bnuts?\b)(.*?)\b(?:solid|all|full|plain|hex) (?:nylon|plastic)\b(?! insert)", r"\1 plastic"),
    (r"\b(thk|dia|sg|id|od|cs|lg)(?=\d)", r"\1 "),
    (r"\bg([58])\b(?=$|,| )(?<=\d g\d)", r"grade \1"),
    (r"^handful of |^a few (?:of )?(?=[a-z]*\d|[a-z]+s\b)", ""),
    (r"(\bwheel nuts?|nuts?,? wheel)\b(.*)\b(?:hex ?(?:17|19|21|22)|(?:17|19|21|22) ?hex)\b", r"\1\2"),
    (r"(\b(?:cotter|split|roll) pins?\b.*?)(\d(?:\.\d+)?) ?mm thick\b", r"\1\2 mm"),
    (r"\b(\d+) ?mm shaft,? (\d+) ?mm bore,? (\d+) ?mm (?:wide|thick)\b", r"\1 x \2 x \3 mm"),
    (r"(\bspark ?plugs?\b.*),? set of (?:three|four|six|3|4|6)\b", r"\1"),
    (r",? \bspan (?=\d)", " "),
    (r",? either finish$", ""),
    (r"\bnuts?,? prevailing torque(?:,? all[- ](?:steel|metal))?", "all metal lock nut"),
    (r"\bhss[- ]?co(?: ?[58](?![\d.]| ?mm))?\b", "cobalt"),
    (r"\bno\.? ?3 (?=bottom)|\bno\.? ?1 (?=taper)|\bno\.? ?2 (?=second|plug|intermediate)", ""),
    (
        r"\bid ?(\d+(?:\.\d+)?)(?: ?mm)?,? (?:x )?od ?(\d+(?:\.\d+)?)(?: ?mm)?,? (?:x )?[wth] ?(\d+(?:\.\d+)?)\b",
        r"\1 x \2 x \3 mm",
    ),
    (r"\bnuts?,? lock(?:ing)?,? prevailing torque(?:,? all (?:steel|metal))?", "all metal lock nut"),
    (r"(\bbolts?,? wheel|wheel bolts?)\b(.*)\b(?:hex ?(?:17|19|21)|(?:17|19|21) ?hex)\b", r"\1\2"),
    (r"\bal/st\b", "aluminium"),
    (r"\bangled? 45\b", "45 deg"),
    (r"\b(\d/\d{1,2})\"-(?=\d\d ?un)", r"\1-"),
    (r"(\bnuts?\b.*\bm\d.*)\bgr(?:ade)? ?(6|8|10|12)\b", r"\1class \2"),
    (r"\b(m\d{1,2})( (?:fine|coarse)(?: threads?)?)?,? (\d(?:\.\d+)?) ?mm pitch\b", r"\1x\3\2"),
    (r"\b(\d{1,2}) ?mm ?x ?([0-3]?(?:\.\d+)?)p\b", r"m\1x\2"),
    (r"\b(m\d{1,2}) ?x ?([0-3]?(?:\.\d+)?)p\b", r"\1x\2"),
    (r"\b(\d{1,2}(?:\.\d+)?)p\b(?=.*\bm\d)", r"\1"),
    (
        r"((?:\btaps?|\bdies?|\bdie ?nut|\bdrain plug|\bsump plug)\b.*?)\b(\d{1,2}) ?mm ?x ?([123]?\.\d+|[123])\b",
        r"\1m\2x\3",
    ),
    (r"\bdie ?nut\b", "die nut"),
    (r"(\bbsp[pt]?\b.*?) ?x ?(?:28|19|14|11) ?tpi\b", r"\1"),
    (r"\b(\d/\d{1,2}) ?x ?(\d{2}) ?tpi\b", r"\1-\2"),
    (r"(\bbolts?\b.*\bx ?\d{1,3})l\b", r"\1"),
    (r"\b(din ?(?:912|7991|933|931|7380|7984),?) (\d{1,2}) ?x ?(?=\d)", r"\1 m\2 x "),
    (r"\bnuts?,? road wheel\b", "wheel nut"),
    (r"\bdin ?(?:94|580|582|1481|7346)\b", ""),
    (r"\b(\d(?:\.\d)?) ?dia ?x ?(?=\d)", r"\1 x "),
    (r"\b(id|od|cs) ?(?=\d+(?:\.\d+)?\b)(?=.*)", r"\1 "),
    (r"\bex (?=manif)", "exhaust "),
    (
        r"\b(?:take[- ]?off )?\((?:used|take[- ]?off|second[- ]hand)\)|(?:, )(?:used|take-?off)$"
        r"|\b(?:second|2nd)[- ]hand\b",
        "usedpart",
    ),
    (r"\bx[- ]ring\b", "quad ring"),
    (r"\bstrength class\b|\bstrength (?=\d\d?\.\d\b)", "class "),
    (r"\bmulti[- ]layer(?:ed)? steel\b", "mls"),
    (r"\bhydrogenated nitrile\b", "hnbr"),
    (r"(\bnut\b.*\bm\d+(?: ?x ?[\d.]+)?) (8|10|12)(?= [a-z]|$)", r"\1 class \2"),
    (r"\b(screws?\b.*)\bph\b(?! ?\d)", r"\1 phillips"),
    (r"\b(pan|csk|countersunk|raised) ph\b(?! ?\d)", r"\1 phillips"),
    (r"\b(nuts?\b.*?) with (?:an? )?(?:nylon|plastic|nyloc) (?:insert|ring|collar)s?\b", r"nylon insert lock \1"),
    (r"\b(?:alloy|carbon) steel\b", "steel"),  # alloy alone is aluminium
    (
        r"\bh\.?t\.?(?= ?(?:bolts?|screws?|setscrews?|studs?|nuts?|8\.8|10\.9|12\.9)\b)"
        r"|(?<=bolt )h\.?t\b|(?<=bolts )h\.?t\b|(?<=8\.8 )h\.?t\b",
        "high tensile",
    ),
    (r"\bhex(?:agon)? wash(?:er)? h(?:ea)?d\b", "hex head"),  # a hexagon with a flange pressed on, no washer
    (r"\bst ?([2-8]\.\d) ?x ?(?=\d)", r"self tapping screw \1 mm x "),  # ISO 1478 threads, from memory
    (
        r"^(?!.*\b(?:screw|scr|bolt|bit|driver|screwdriver|insert|nut|socket|skt|key)s?\b)(?=.*\bm\d[\d.]* ?x ?\d)"
        r"(.*\b(?:pan|cheese|csk|countersunk|mushroom|fillister)\b.*)$",
        r"\1 screw",
    ),  # pan pozi M5x20
    (r"\bc/s (?=(?:socket|skt|screw|pozi|hex|allen|torx|bolt|slot|phil|head|m\d))", "csk "),
    (r"\bcup square(?= (?:bolt|head|hex))", "coach"),
    (r"(\binsert.*)\bscrew[- ]?lock(?:ing)?\b", r"\1 self lock"),
    (r"\b(thin|half) lock ?nut", "half nut"),
    (r"\block ?nut\b(?=[ mx\d.,]* (?:thin|half)\b)", "nut"),
    (r"\b(m\d{1,2}) (?:fine|coarse)?(?: pitch)? ?(?=m\d{1,2} ?x ?\d?\.?\d)(?=\1 ?x)", ""),  # M10 fine M10x1.25
    (r"\b(m\d{1,2}) (fine|coarse)(?: pitch)? x ?(\d+(?:\.\d+)?)\b", r"\1 x \3 \2"),
    (r"\b(un[cf]|unef) ?-? ?[123][ab]\b", r"\1"),  # how close a thread fits, ASME B1.1 (from memory)
    (r"\b(dowel.*?\d ?x ?\d+(?: ?mm)?),? ?[mh][5678]\b", r"\1"),  # m6: a fit, no thread
    (r"\bset of \d (?=wheel (?:bolt|nut))", ""),
    (r"\bdin ?471\b", "external"),  # circlips by their standards, from memory
    (r"\bdin ?472\b", "internal"),
    (r"\bnut(.*)\bdin ?985\b", r"nyloc nut\1"),
    (r"\b(bolt|screw)(.*)\bdin ?931\b", r"\1\2 part thread"),
    (r"\b(bolt|screw)(.*)\bdin ?933\b", r"\1\2 full thread"),
    (r"\b(?:allen|hex socket|internal hex) (?:head )?plug(?=.*\b(?:bspt?|npt|taper)\b)", "pipe plug"),
    (r"\bplug,? ?pipe\b(.*)\bhex socket\b", r"pipe plug\1"),
    (r"\b(unc|unf|unef) ?x ?(\d+(?:[- ]\d+/\d+|/\d+|\.\d+)?)(?![\d/.])(?: ?(?:inch|in\b|\"))?(?! ?mm)", r"\1, \2 in"),
    (
        r"\bm(\d{1,2}) (?:fine(?: pitch)?|coarse) (bolt|screw|nut|stud),? (\d\.\d+)( x \d+)?\b(?: pitch)?",
        r"m\1x\3\4 \2",
    ),
    (r"\bset ?screw \(grub\)", "grub screw"),
    (r"\bzinc[- ]?plated steel\b", "zinc plated"),
    (r"(?<=\d) ?in\.? roll\b", '" roll'),
    (r"\b(m\d{1,2}) ?- ?(?=\d?\.\d|[123] ?x)", r"\1 x "),  # M8-1.25 x 40
    (r"\b([1-4])\.(\d{1,2}/(?:2|4|8|16|32)\b)", r"\1-\2"),  # 1.1/16
    (
        (
            r"\b(8|eight)[- ]?(?:pt|point) socket for (?:an? |the )?(\d+ ?mm|\d/\d+)(?: in\b\.?)? "
            r"square (?:head(?:ed)? )?plugs?\b"
        ),
        r"8 point socket \2",
    ),
    (r"(?<=\d-\d\d)/(9|12)(?:\.7)?\b", r" mm, \1 mm band"),  # a hose clip
    (r"\bhhcs\b", "hex head cap screw"),
    (r"\bsae (?=45 ?deg)", ""),
    (r"\bflat[- ]band\b", "spring band"),
    (r"(?<=square )pipe (?=plugs?\b)|(?<=sq )pipe (?=plugs?\b)", ""),
    (r"(?<=\()(?:taper|square|gearbox|drain|filler|sump|level)(?: head(?:ed)?)? plugs?(?=\))", " "),
    (r"\bnuts?\b(.*)\bpln\b|\bpln\b(?=.*\bnut)", r"plain nut\1"),
    (r"(?<=/\d-\d\d )n([cf])\b|(?<=/\d\d-\d\d )n([cf])\b", r"un\1\2"),  # NC, NF
    (
        r"\b(hex|hexagon|pan|round|flat|button|btn|socket|soc|skt|sckt|csk|cheese|truss) ?h(?:ea)?d\b",
        r"\1 head",
    ),
    (r"\bnylon ins\b", "nylon insert"),
    (r"\b(?:rng)\b(?! ?\d+(?:\.\d+)? ?(?:-|to))", "ring"),
    (r"\bthn (?=wll?\b|wall\b)", "thin "),
    (r"\b(lug|whl|wheel|hex|flg|lck|lock|wng|wing|axl|axle) nts?\b", r"\1 nut"),
    (r"\b(m\d{1,2}) ?/ ?(?=m\d)", r"\1 , "),  # M10/M12/M14
    (r"(?<=\d/\d)( ?)w\b(?! ?\d)|(?<=\d/\d\d)( ?)w\b(?! ?\d)", " whitworth"),
    (r"\balloy (?=wheels?\b|rims?\b)", ""),
    (r"\b(female|male) \([fm]\)", r"\1"),
    (r"^(plugs?),? (m\d[\dx. ]*),? (sump|drain)\b", r"\3 \1 \2"),
    (r"^(ties?),? (\d[\dx. ]*(?: ?mm)?),? (cable|zip)\b", r"\3 \1 \2"),
    (r"^(stands?),? (\d[\d.]* ?(?:t|ton|tonne)s?),? (axle|jack)\b", r"\3 \1 \2"),
    (r"^(wrench|spanner),? (\d[\d./ -]*(?: ?(?:mm|in))?),? (strap|chain)\b", r"\3 \1 \2"),
    (r"^(files?),? (\d[\d./ -]*(?: ?(?:mm|in))?),? half[ -]?round\b", r"half-round \1 \2"),
]
