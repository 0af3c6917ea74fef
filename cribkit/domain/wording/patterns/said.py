"""What is said in passing: how many there should be, that anything will do, where a thing is kept, dates."""

from __future__ import annotations

# A date as labels have it: Oct, Oct 26, 06/26, 2026-06, 12/06/2026.
_DATE = (
    r"(?:\d{4}-\d\d(?:-\d\d)?|(?:\d\d?/)?\d\d?/(?:20)?\d\d|"
    r"(?:jan|feb|mar|apr|may|jun|jul|aug|sept?|oct|nov|dec)[a-z]*\.?(?: '?(?:20)?\d\d)?|0[1-9]|1[0-2])"
)

SAID = [
    (
        r"\b(?:over|above|more than|longer than|exceeding) (?=\d+ ?(?:mm|in\b|inch|\")(?! ?(?:dr|drive|sq)))",
        "biggerthan ",
    ),
    (r"\b(?:that|which) (?:holds|grips|keeps) (?:on to )?(?:the|a) screws?\b", "screw holding"),
    (r"\b(?:wrench|spanner) (?:that|which) fits (?:any|all) (?:nuts?|bolts?|sizes?)\b", "adjustable wrench"),
    (r"\b(?:that|which) (?:goes|cuts|drills|gets) through (?:hard(?:ened)?|stainless|spring) steel\b", "cobalt"),
    (r",? ?\b(?:has|have|had) (?:got )?to be (?=\d|[a-z]\d|(?:non|fully|semi|low|high)\b)", ", "),
    (r", one (?=w/|with\b)", " "),
    (r"\bto go (?:a?round|over|on) (?=(?:an? |the )?\d+(?:\.\d+)? ?mm [a-z]+)", "for "),
    (r"\b(fem(?:ale)?) (?:down|up) to (?=\S+(?: inch)? (?:male|m)\b)", r"\1 to "),
    (r"\bable to (?:do|reach|read|go to|set|measure)(?: up to)? (?=\d)", ""),
    (r", straight nose, no ball$", ", plain end"),
    (r"\blockers \(locking pliers\)", "locking pliers"),
    (r"\b(?:to|at) \d(?:\.\d)? bar with (?=(?:an? |the )?cooling)", "with "),
    (r"\b(\d{1,2}) ?mm m\1\b", r"m\1"),
    (r"^half by (?=(?:\w+|\d+)[- /](?:sixteenths|eighths|16))", "1/2 x "),
    (r"\btub(?=\d{2,3}\b)", "tub "),
    (r"\b(\w+) extension on (?=(?:the )?(?:1/4|3/8|1/2|3/4|quarter|half|three[- ]eighths?)\b)", r"\1 extension, "),
    (r",? for use (?:on|with) (?:an? |the )?impact (?:wrench|gun|driver)\b", ", impact"),
    (r"\b(?:gun )?cartridge for the gun\b|(?<!grease )(?<!grease-)\bgun cartridge\b", "cartridge"),
    (r"\burea for (?:the )?(?:scr|adblue|def)(?: tank| system)?\b", "urea solution"),
    (r"^(\d+(?:\.\d)? ?mm) flat ?head$", r"slotted screwdriver \1"),
    (r"^(?=.*\b(?:1000 ?v|insul|vde))(.*?)\bcombis\b(?=.*\b(?:1[4-9]\d|2\d\d) ?mm)", r"\1combination pliers"),
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
    (r"^(?=.*\bflaring\b)(.*?)\b4\.75\b(?! ?mm)", r"\g<1>4.75 mm"),
    (
        r",? \b(?:and )?(?:it )?(?:has|have|needs|ought) to be (?:a |an |the )?(deep|long|short|shallow|thin|"
        r"insulated|magnetic|impact)(?: one)?$",
        r", \1",
    ),
    (r"^(?=.*shrink)(.*?)\bthree to one\b", r"\g<1>3:1"),
    (r"^(?=.*shrink)(.*?)\btwo to one\b", r"\g<1>2:1"),
    (r"^(?=.*shrink)(.*?)\bfour to one\b", r"\g<1>4:1"),
    (r"\bf/thd\b", "full thread"),
    (
        r"^for (the|an?) ((?:[a-z]+[ -]){0,3}[a-z]+): (?=.*[a-z])(.+)$",
        r"\3 for \1 \2",
    ),
    (r"\bbeneath (?=the\b|an?\b)", "under "),
    (r"\bfor knocking (?=(?:the|a|an|out|off|in|on|back|loose|free)\b)", "for driving "),
    (r"\bone and a half bar\b", "1.5 bar"),
    (r"\btwo and a half bar\b", "2.5 bar"),
    (r"(?<=\d) 1/2 ?(?=(?:mm|bar)\b)", ".5 "),
    (r"(?<=\d)½ ?(?=(?:mm|bar)\b)", ".5 "),
    (r"\b(click|beam|dial|lever|plunger)type\b", r"\1 type"),
    (r"^stick (?=an? |the )", "use "),
    (r"\bfor (?:the|an?|our) \d+(?:\.\d+)?[- ]?tonner\b", "for the lorry"),
    (r"\bsold as (?:a )?(?:2|two|pair)\b", "pair"),
    (r"\ba\.c\.? ?/ ?d\.c\.?(?=[ ,]|$)", "ac/dc"),
    (r"\bhead ?bolts\b", "head bolts"),
    (r",? (?:the |an? )?(\d{1,2}(?:\.\d+)? ?(?:%|per ?cent)) stuff\b", r", \1"),
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
    (r"(?<=\d) \((mm|in)\)", r" \1"),
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
    (r"(?<= )f\. (?=[a-z]{3})", "for "),
    (r"\bf/bed\b", "flatbed"),
    (r"\bm/bus\b", "minibus"),
    (r"^an? h (?:one|1)\b(?=,? (?:twelve|twenty|12|24)[ -]?v)", "bulb h1"),
    (r"(\d) ?mm (?=[234]:1\b)", r"\1 mm, "),  # no square millimetres: what it shrinks by
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
        r",? goes on (?:my|the|an?|our) (1/4|3/8|1/2|3/4|quarter|half|three[- ]eighths?)[- ]?(?:inch|in\b\.?|\")?"
        r"(?: drive| dr)? (?:extension|ratchet|handle|bar|torque wrench)\b",
        r", \1 drive",
    ),
    (r"\b(set of \d{1,2}): (?=\d)", r"\1, "),  # no ratio
    (r"\bone and a half (?:up )?to (?=(?:eight|ten|twelve) mil)", "1.5 to "),
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
    (
        r"(?:^|(?<=, )|(?<=ordinary )|(?<=standard )|(?<=short )|(?<!half )(?<!of )\b(?:an?|one) )inch[- ]long\b",
        "1 in long",
    ),
    (r"\b(?:the )?short inch(?: ones?\b|(?=,|$))", "1 in"),
    (r"\binch and a half (?=blade|shaft|shank|long)", "1-1/2 in "),
    (r"\b([a-z]+)-and-a-half\b", r"\1 and a half"),
    (r"\b(?:that|which) folds? like an? (?:pen|pocket|jack)[- ]?knife\b", "folding"),
    (r"\b(?:pen|pocket|jack)[- ]?knife[- ](?:style|type|pattern)\b", "folding"),
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
    (
        r"^(?=.*\b(?:pliers?|snips|cutters|nippers|files?|water ?pumps?)\b)(.*?)(?:, the )?\b(one|two|three)-"
        r"(twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)\b(?![- ](?:mm|mil|inch|one|two|three|four|five|six|"
        r"seven|eight|nine|seconds?|fourths?|grit|volt|v|amp|a|deg))(?: ones?\b)?",
        r"\1 \2 hundred and \3 mm ",
    ),
    (r"\bf/glass\b", "fibreglass"),
    (r"\bwedge bulbs?\b", "capless bulb"),
    (r"^(?=.*\bgasket\b)(.*?) ([2-9])-([2-9]0)$", r"\1 \2\3"),  # a model, as spoken: four-twenty
    (r"^(?:the |some )?stuff (for [^,\d]*), the (?=[a-z]{3})(.+)$", r"\2 \1"),
    (r"\btmep\b|\btepm\b", "temp"),
    (r"\btueb\b|\btbue\b", "tube"),
    (r"\bgaer\b", "gear"),
    (r"\b(?:oli|iol)\b(?=$|,| \d)", "oil"),
    (r"\bredy\b", "ready"),
    (r"(?<=\d )minuite\b|(?<=\d)minuite\b|(?<=five )minuite\b", "minute"),
    (r",? (?:an? |the )?(long|short|deep|shallow) one(?=,|$)", r", \1"),
    (r"(?<=\d) ?mn\b", " mm"),
    (r"\bnot (?:made )?of\b", "not"),
    (r"\b(?:without|no|free of|free from|not containing) lead\b(?=$|[,;.)]| and\b)", "lead free"),
    (r"\b(?:without|no|free of) insulation\b", "uninsulated"),
    (r"\b(?:not attracted by|does not stick to|do not stick to) magnets?\b", "non-magnetic"),
    (r"\bhalf a kilo\b", "500 g"),
    (r"\b(\w+)-hundred-grit\b", r"\1 hundred grit"),
    (r"\"?\b(?:vde|insul\w*|1000 ?v|tamper\w*|sensor safe)\?\"?", "uncertain"),
    (r"\b(?:bigger|larger|greater|wider) than (?=\d)", "biggerthan "),
    (r"\b(?:smaller|narrower|thinner) than (?=\d)", "smallerthan "),
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
        r"\b(?:that |which )?(?:won't|will not|does not|doesn't|cannot|must not) (?:scratch|mark|mar|scuff)\b"
        r"(?: (?:the |your |my )?(?:alloys?|wheels?|rims?|paint\w*|finish|trim|chrome)\b)*",
        "nonmarring",
    ),
    (
        r"\b(?:the|all|both) (?:two|three|four|five|six|eight|ten|twelve|[2-9]|1[0-2]) "
        r"(?=[a-z]+s\b(?<!sockets)(?<!spanners)(?<!wrenches)(?<!keys)(?<!bits)(?<!gauges)(?<!tools))",
        "the ",
    ),
    (r"\bso (?=(?:an? |the )?(?:quarter|half|three|[13]/[248]))", "for "),
    (r"\btaking (?=\d)", "for "),
    (r",? (?:the )?one with (?=the |an? )", " with "),
    (r", the (.*\d.*) one$", r", \1"),
    (r"\bso (?=an? )", "for "),  # an adapter so a 1/2 socket goes on
    (r"^slide (?=\d)", "fit "),
    (r"\b(batter(?:y|ies)|case|box) (?:incl(?:uded)?|inc|supplied)\b\.?$", r"with \1"),  # ..., battery incl
    (r"\b(?:in )?range (?:of )?at least\b", "range"),
    (r"^set (?=.{0,30}\bchocks? )", "place "),
    (r"\(([a-z]+) one\)", r"(\1)"),
    (r"\b(?:to be )?set (?:to|at) (?=\d)", "for "),
    (r"\bto set (?=\d)", "for "),
    (r"(?<= )w/? ?(?=(?:rubber|magnet|ball|case|box|adapt|exten|handle|washer|nut)[a-z]*\b)", "with "),
    (r"\bto suit\b", " for "),
    (r"\bf/ ?(?!h(?:ea)?d\b)(?=[a-z]{2}|\d)", "for "),  # F/DRAIN PLUGS
    (rf"\bcal(?:ibration|ibrated|\.)?(?: is)? due:?(?: {_DATE})?(?!\w)", " "),
    (rf"\b(?:exp(?:iry|ires|ired|\.)?|use by|best before)(?: date)?:? {_DATE}(?!\w)", " "),
    (r"(?<=; on )(?:the )?oil filter (?:housing )?(?:cap|housing|cover|canister)$", "cover"),  # a hexagon on it
    (
        r"(?:(?<=, )|(?<=for the )|(?<=for ))((?:hv )?battery) trays?(?= bolts?\b| screws?\b| nuts?\b|$)",
        r"\1 cover",
    ),  # where a job is, no tray of sockets
    (r"\bc/w\b", " with "),
    (r"\bpee ?(?:zed|zee) (?=\d|one|two|three)", "pz"),
    (r"\bpee ?aitch (?=\d|one|two|three)", "ph"),
]
