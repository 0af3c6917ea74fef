"""Gloves, abrasives, tapes, fuses, bulbs, ties and other things that are used up."""

from __future__ import annotations

import re

from cribkit.domain.wording.patterns.pattern import Pattern

# Where a ply or a centre feed is one of paper.
_PAPER = r"^(?=.*\b(?:rolls?|paper|towels?|tissues?|wip(?:es?|ers?|ing))\b)"

# Flared fittings by their dash size, and the thread that goes with it, SAE J514 (from memory).
_JIC = {
    "4": ("7/16", "20"),
    "6": ("9/16", "18"),
    "8": ("3/4", "16"),
    "10": ("7/8", "14"),
    "12": ("1-1/16", "12"),
    "16": ("1-5/16", "12"),
}
_DASHES = {"four": "4", "six": "6", "eight": "8", "ten": "10"}

# What heat shrink measures before and after.
_SHRUNK = (
    *(("3", "1"), ("6", "2"), ("9", "3"), ("12", "4"), ("18", "6"), ("24", "8"), ("39", "13"), ("40", "13")),
    *(("4", "1"), ("8", "2"), ("12", "3"), ("16", "4")),
    *(("2", "1"), ("4", "2"), ("6", "3"), ("8", "4"), ("10", "5"), ("12", "6")),
)


def _shrunk(found: re.Match[str]) -> str:
    """12 mm to 4 mm: what a heat shrink measures before and after, where such a one is made."""
    return f"{found[1]}{found[2]}/{found[3]}" if (found[2], found[3]) in _SHRUNK else found[0]


def _dash(found: re.Match[str]) -> str:
    return f"-{_DASHES[found[1]]} "


def _jic_thread(found: re.Match[str]) -> str:
    """The thread of a flared fitting says no more than its dash size, where the two belong together."""
    return found[2] if _JIC.get(found[1]) == (found[3], found[4] or found[5]) else found[0]


SUPPLIES: list[Pattern] = [
    # "8 mil, x-large": no sizes that are multiplied.
    (r"(?<![a-z\d])(x{1,4})-(?:large|lge|lrg|lg)\b", r"\1l"),
    (r"(?<![a-z\d])(x{1,3})-(?:small|sml|sm)\b", r"\1s"),
    (
        r"^(?=.*\b(?:gloves?|nitrile|latex|coveralls?|overalls?|suits?)\b)(.*?)(?<![a-z\d])(?<!\d )(x{1,4}) (?:large|"
        r"lge|lrg|lg)\b",
        r"\1\2l",
    ),
    (
        r"^(?=.*\b(?:gloves?|nitrile|latex|coveralls?|overalls?|suits?)\b)(.*?)(?<![a-z\d])(?<!\d )(x{1,3}) (?:small|"
        r"sml|sm)\b",
        r"\1\2s",
    ),
    (
        r"^(?=.*\bgloves?\b)(.*?)\b(?:extra[- ]){2}(large|small)\b",
        lambda found: found[1] + {"large": "xxl", "small": "xxs"}[found[2]],
    ),
    (r"\bleather hand protection\b", "leather work gloves"),
    (r"\b(heavy |thick )?(\d) mil nitrile,? (?=(?:small|medium|large|extra|x|s|m|l)\b)", r"\1nitrile gloves \2 mil "),
    (r"(\bgloves?\b.*?)\b(s|m|l|xl|xxl) (?=\d{2,3} ?(?:ct|pk|pcs?|bx)\b)", r"\1size \2 "),
    (r"^(small|medium|large) (?=(?:[a-z]+ )?nitrile\b)(?!.*\bglove)(.*)$", r"nitrile gloves \1 \2"),
    (r"\bsmall (?=(?:[a-z]+ )?cable ties\b.*\d)", ""),
    (r"\bweatherstrip cement\b", "weatherstrip adhesive"),
    (r"\bstarting ether\b|\bstarter ether\b", "starting fluid"),
    (r"(\bties?\b.*?\d) wide ones? (?=\d)", r"\1 x "),
    (r"\b(?:that )?sheds? (?:no lint|lint free)\b", "lint free"),
    (r"\bcleaning cloths?(?=,? lint[- ]free)", "wipes"),
    (r"^(?:the )?thick (?=(?:[a-z]+ )?gloves?\b)", "heavy duty "),
    (r"(\bwipes?\b.*?\b\d{2,3}) ?ct\b", r"\1 pc"),
    (r"(\bheat ?shrink\b.*?)\bdual[- ]wall\b(?:,? adhesive(?: lined)?)?", r"\1adhesive lined"),
    # What a glove must stand: solvents are no acid.
    (r"\b(gloves?|gauntlets?)(,? (?:size )?[smlx]{1,3})? (?:for|against) chemicals\b", r"chemical resistant \1\2"),
    (r"^(?=.*\b(?:gloves?|gauntlets?)\b)(.*?)\b(acid|solvent)s?[ -](?:resistant|proof|resisting)\b", r"\1\2resisting"),
    (
        r"\bmat(?:l|erial)?\.?:? (?=(?:nitrile|latex|vinyl|copper|cu|fkm|fpm|nbr|epdm|steel|stainless|brass|"
        r"alu\w*|nylon|leather)\b)",
        "",
    ),
    (
        r"\bmade (?:of|from|in) (?=(?:nitrile|latex|vinyl|copper|cu|fkm|fpm|nbr|epdm|steel|stainless|brass|"
        r"alu\w*|nylon|leather)\b)",
        "",
    ),
    (r"(\bgloves?\b.*?)\bnitrile rubber\b", r"\1nitrile"),
    (r"(\bgloves?\b.*?)\b(s|m|l|xl|xxl) (?=\d{2,3}/?(?:bx|box|pk)\b)", r"\1size \2 "),
    (r"\brubber gloves?,? nitrile\b", "nitrile gloves"),
    (r"\b(\d(?:/\d+)?)(?: in)? arbor\b", r"\1 in bore"),
    (r"(?<=\d )quarts?\b|(?<=\d)quarts?\b", "qt"),
    (r"(?<=\d )gallons?\b|(?<=\d)gallons?\b", "gal"),
    (r"(\bpin) x (?=\d)", r"\1 "),
    (r"(\bgloves?\b.*) (s|m|l|xl|xxl) (50|100|200)$", r"\1 \2, \3 pc"),
    (r"(\bties?\b.*\d ?x ?[\d.]+(?: ?mm)?,? (?:blk|black|nat|natural|white|uv)) (50|100|200|500|1000)$", r"\1, \2 pc"),
    (r"\bbale (?:of )?(\d+)\b", r", \1 pc"),
    (r"(\bgloves?\b.*?)\b(?:with )?textured grip\b", r"\1grip"),
    (r"\b(size|sz) (\d{1,2})(?: (?:l|m|s|xl))? (?=(?:box|bx|pk|pack|pair)\b)", r"\1 \2, "),
    (r"\bbx\b(?!.*\d/\d)", "box"),
    (r"\bchlorinated[- ](?:solvents?[- ])?free\b", "non-chlorinated"),
    (r"(?<=cleaner )non chl\b|(?<=clnr )non chl\b", "non-chlorinated"),
    (r"\b(0|5|10|15|20)-w-? ?(?=\d\d\b)", r"\1w-"),
    (r"\bratio (?=[234]:1)", ""),
    (r"\bhook-(?:n|and|&)-loop\b", "hook and loop"),
    (r", (?:body|paint) ?shop$", ""),
    (r"(\bmagnetic pick[- ]?up) tol\b", r"\1 tool"),
    (r"^(?=.*\bffp ?[123])(.*?)\bfold[- ]?flat\b", r"\1flatfold"),
    (r"\bjic (caps?),? (?:size |no\.? ?)(?=-?\d)", r"\1 jic "),
    (r"(?<![\w-])-(four|six|eight|ten) (?=jic\b)", _dash),
    (
        r"^(?=.*\b(?:caps?|cpa)\b)(?!.*\bplugs?\b)(.*?)(?:(?<![\w/.])(?:-|#|no\.? ?)?0?(4|6|8|10|12|16)[- ]?jic\b|"
        r"\bjic[-, ]*[-#]?0?(4|6|8|10|12|16)\b(?![/.]))",
        r"\1 jicsize\2\3",
    ),
    (
        r"^(?=.*\bjicsize(\d+)\b)(.*?),? ?\(?(?<![\d/])((?:1-)?\d{1,2}/\d{1,2})(?:\"| in)? ?(?:unf?)?"
        r"(?:(?:-| x | )(\d\d)| ?(\d\d) ?tpi)(?: ?unf?)?\b\)?",
        _jic_thread,
    ),
    (r"^(?=.*\bjicsize\d)(.*?)\b(?:threaded|thd|thrd|screw[- ]on|female thread)\b,? ?", r"\1"),
    (r"^(?=.*\bjicsize\d)(.*?)\b(?:protective|dust|blanking)\b,? ?", r"\1"),
    (r"^(?=.*\bjicsize\d)(.*?)\b(?:polyethylene|pe|ldpe|hdpe)\b", r"\1plastic"),
    (r"(\bjicsize\d+),? ?(?:male|37 ?deg)\b", r"\1"),
    (r"^(?=.*\bjicsize\d)(.*?)\bfor +(?=jicsize)", r"\1"),
    (r"^(?=.*\bjicsize\d)(.*?); on the open [a-z ]+$", r"\1"),
    (r"^(?=.*\bjicsize\d)(.*?)\bto (?:blank|close|cap) off an? ", r"\1"),
    (r"(\bjicsize\d+\b.*?) hose adap[a-z]+\b", r"\1"),
    (r"^(?=.*\bjicsize\d)(.*?)\b(?:caps?|cpa)\b", r"\1jic cap"),
    (r"\bh(1|3|4|7|11)\.(?=(?:12|24) ?v\b)", r"h\1 "),
    (r"\bnon[- ]?woven (?=surface conditioning\b)", ""),
    (r"^(?=.*shrink)(.*?)\b(\d{1,2})(?:\.0)? ?(?:mm)? ?(?:→|->|to|-) ?(\d{1,2})(?:\.0)? ?mm\b", _shrunk),
    (r"^removed [a-z]+ in an? (?=.*\bbags?\b)", ""),
    (r"\bdust ?masks?\b", "dust mask"),
    (r"\bffp([123])v\b", r"ffp\1 valve"),
    (r"\bp3 class (?=.*\bffp3\b)", ""),
    (r"\b(ffp[123]) nr(?: d)?\b", r"\1"),
    (r"(\bmask\b.*\bffp[123]\b.*?),? cup (?:type|shaped?|style)\b", r"\1, moulded"),
    (
        r"^(?=.*\bffp ?[123]\b)(?!.*\b(?:disp\w*|throw\w*|half|full|reusable|moulded|cup|filters?|cartridges?|p3)\b)"
        r"(.*?)\b(ffp ?[123])\b",
        r"\1disposable \2",
    ),  # filtering face pieces are thrown away
    (r"\bbx of (?=\d)", "box of "),
    (r"\bpk of (?=\d)", "pack of "),
    (r"(\bbags?\b.*),? for bagging(?: up)? (?:the )?[a-z ]+$", r"\1"),
    (r"\b(?:re-?a?sealable|resealabel)\b", "resealable"),
    (r"^(?:a )?few of the little (?=.*\bbags?\b)", ""),
    (r"(\b(?:nitrile|latex|vinyl)) disposables\b", r"\1 disposable gloves"),
    (r"(\bgloves?\b.*),? test date on (?:the )?cuff\b", r"\1"),
    (r"\bnat(?:ural)? (?=rubber\b|rub\b)", "natural "),
    (r"^(?=.*\bgl(?:o?ve|v)s?\b)(.*?)\bcl ?[-.] ?(?=0{1,2}\b|[1-4]\b)", r"\1class "),
    (r"\bcut[- ]?proofs\b", "cut resistant gloves"),
    (
        r"^(?=.*\bcut(?:ting)?[- ]?(?:res\w*|proof)\b)(?=.*\bgl(?:o?ve|v)s?\b)(?!.*\b(?:level|lvl|cut) ?[a-f]\b)"
        r"(.*?)(?<!-)\b([a-f])[, ]+(?=(?:sz|size) ?\d)",
        r"\1level \2 ",
    ),
    (r"(\bgloves?\b.*) for (?:handling )?(?:sharp )?(?:sheet[- ])?metal(?: edges)?\b", r"\1"),
    (r"\bgloves? for (?:handling )?(?:sharp )?(?:sheet[- ])?metal edges\b", "gloves"),
    (r"\bffp[- ]([123])(v?)\b", r"ffp\1\2"),
    (r"\bffp([123])s\b", r"ffp\1 masks"),
    (
        r"^(?=.*\b(?:masks?|respirators?|ffp ?[123]v?)\b)(.*?)\b"
        r"(?:exhal(?:e|ation|ing) (?:valve|vlv)|(?<!un)(?<!un-)(?<!non-)(?<!not )(?:valved|vlvd)|vlv)\b",
        r"\1valve",
    ),
    (r"\bind(?:\.|irect(?:ly)?)?[- ]? ?vent(?:s|ed|ilated|ilation)?\b", "indirect vent"),
    (
        r"(\b(?:goggles?|glasses|specs?)\b.*?) for (?:blowing (?:off|out|down)|using|working)"
        r"(?: with)? (?:the |an )?air ?(?:line|gun)\b",
        r"\1",
    ),
    (r"^(?:a )?few (?=(?:sheets?|lengths?|rolls?|pieces?) of\b)", ""),
    (r"\bhook (?:and|n|&) lop\b", "hook and loop"),
    (r"(\b(?:cut[- ]?off|cutting|slitting)\b.*?)\btype 41\b", r"\1flat"),
    (
        r"\bsurface con?dito?n?i?o?ning\b|\bsurf(?:ace)?\.? cond(?:it)?\b\.?|\bs/c(?=[, ]+non[- ]?woven\b)",
        "surface conditioning",
    ),
    (r"\bf/ins\b", "fully insulated"),
    (r"\b(?:normal|ordinary|regular|standard),? full[- ]size[ds]? ones\b", "standard size"),
    (r"\b(p21|p27|w21|w16|r10|c5|w5)-(?=\d{1,2} ?w\b)", r"\1/"),
    (r"\bbay 15 ?d\b", "bay15d"),
    (r"\bcr[ -](?=(?:12|16|20|23|24)\d\d\b)", "cr"),
    (r"\btwentytwentyfive\b", "cr2025"),
    (r"\btwentysixteen\b", "cr2016"),
    (r"^(?=.*\bwipes?\b)(.*?)\bimpregnated\b", r"\1saturated"),
    (r"\b(?:ftg|fttg)(?=s?\b.*\bpush[- ](?:in|fit))", "fitting"),
    (r"(\b(?:wipes?|cloths?|sheets?)\b.*?)\b(\d{3}) ?mm square\b", r"\1\2 x \2 mm"),
    (rf"{_PAPER}(.*?)\bc/f(?:ee)?d\b", r"\1centrefeed"),
    (r"\bn/woven\b", "non-woven"),
    (r"(\bpads?\b.*)\bvf\b|\bvf (?=.*\bpads?\b)", r"\1very fine "),
    (rf"{_PAPER}(.*?)\b(?:one|1|single)[- ]?ply\b", r"\1oneply"),
    (rf"{_PAPER}(.*?)\b(?:two|2|double)[- ]?ply\b", r"\1twoply"),
    (rf"{_PAPER}(.*?)\b(?:three|3|triple)[- ]?ply\b", r"\1threeply"),
    (rf"{_PAPER}(.*?)\b(?:cent(?:re|er)|ctr)[- ]?(?:fed|feed|pull|fd)\b", r"\1centrefeed"),
    (
        r"^(?:an? )?box of (?:(black|blue|white|orange|purple) )?(small|medium|large|extra large|xl|xxl) "
        r"(?:(black|blue|white|orange|purple) )?nitriles\b",
        r"nitrile gloves \2 \1\3",
    ),
    (r"\bnitriles\b(?! (?:gloves?|seals?|o-?rings?))", "nitrile gloves"),
    (r"(\bnitrile gloves\b.*), box$", r"\1"),
    (r"\banti[- ]?cut\b", "cut resistant"),
    (r"(\bgl(?:o?ves?)\b.*?)\b(?:pu|polyurethane)(?: palm)?[- ](?:coated|dipped)\b", r"\1pu"),
    (r"\b(?:pu|polyurethane)(?: palm)?[- ](?:coated|dipped) (?=.*\bgl(?:o?ves?)\b)", "pu "),
    (r"\bmar+oon \(red\)|\bred \(mar+oon\)", "maroon"),
    (r"^(red|blue|green|purple) ((?:hi(?:gh)?|med(?:ium)?|low)[- ]strength) (?=\d+ ?ml$)", r"\1 \2 threadlocker "),
    (r"(\bbearing (?:fit )?retainer) (10|24|50|250)$", r"\1 \2 ml"),
    (r"\b(\d{3} ?ml) foil\b", r"\1 sausage"),
    (r"^(.*\b(?:sealant|rtv|adhesive|silicone)\b[a-z -]*) (310|290|300|80|85)$", r"\1 \2 ml"),
    (r"(\bties?\b.*?\b\d{1,2}(?:\.\d)?) wide x (\d{2,4})(?: ?mm)? long\b", r"\1 x \2 mm"),
    (r"\bseven and a half[- ]amp\b", "7.5 amp"),
    (r"^(?=.*\b21 ?w\b)(?!.*\b21 ?w? ?/)(.*?),? single[- ]filament\b", r"\1"),
    (r"\bsixty[ /-]fifty[- ]five[ -]watts?\b", "60/55w"),
    (r"\brubber petrol ?(?:/|and|or)? ?diesel (?:pipe|hose|line)\b", "rubber fuel hose"),
    (r"\bpre-?ins\b", "pre-insulated"),
    (r",? tub of (\d{2,4})$", r", \1 pc"),
    (r"(\bties?\b.*?\d ?mm) wide (?:x|by) (?=\d)", r"\1 x "),
    (r"\bnyl(?:on)? ?6[./]?6\b", "nylon"),
    (r"(\bties?\b.*?)\b(\d{2,4}) ?lg,? (?:x )?(\d{1,2}(?:\.\d)?) ?w\b", r"\1\2 x \3 mm"),
    (
        r"(\bo-?rings?\b.*?\d ?mm) (?:inside|inner|internal) dia(?:meter)?,? (?:by |x )?(\d+(?:\.\d+)? ?mm) "
        r"(?:cord|section|thick|thickness|cross[- ]section)\b",
        r"\1 x \2",
    ),
    (r"(\bo[- ]?rings?\b.*\bnitrile) rubber\b", r"\1"),
    (r",? \((?:pack|pk|box|bag|tub) (?:of )?(\d{1,4})\)$", r", \1 pc"),
    (r" \(boxed(?: single)?\)$", ""),
    (r"\brubber (fuel|petrol) (?:pipe|line)\b(?! hose)", r"rubber \1 hose"),
    (r"\b([a-z]+|\d+) mil ((?:rubber )?fuel hose),? \1 (?:inside|bore)$", r"\1 mil bore \2"),
    (r" \(cut (?:off|from)(?: the)? (?:coil|reel|roll)\)$", ""),
    (
        r"\b(o-?rings?\b.*?\d ?mm) (?:bore|inside|id|inner),? (?:by |x )?(\d+(?:\.\d+)? ?mm) (?:cord|section|"
        r"thick|thickness|cross[- ]section)\b",
        r"\1 x \2",
    ),
    (r"\bsheds? no fibres?\b|\b(?:that |which )?(?:sheds?|leaves?|drops?) no (?:lint|fluff|fibres?)\b", "lint free"),
    (r"\bnitrile rubber (?=o-?ring)", "nitrile "),
    (r"\bplain flat washer", "flat washer"),
    (r",? cage \d{1,2}$", ""),
    (r"\b(?:throw[- ]?aways?|throwaway) (?=(?:nitrile|latex|vinyl|gloves?)\b)", "disposable "),
    (r"\b(nitrile|latex|vinyl) throw[- ]?aways\b", r"\1 disposable gloves"),
    (r"^(?=.*\bwipes?\b)(.*?)\b70 ?/ ?30\b", r"\1 70 %"),
    (
        r"(?:,? (?:that|which))? (?:don't|dont|do not|doesn't|does not|won't) (?:leave|shed) (?:any )?lint\b",
        " lint free",
    ),
    (r"\bzirconia alumina\b|\bzirconia aluminium(?: oxide)?\b|\bzircona\b", "zirconia"),
    (r"\bc/off\b", "cutoff"),
    (r"(?<=\d)mtrs?\b", " m"),
    (r",? \(?(\d{1,4}) per (?:box|pack|case|bag)\)?$", r", \1 pc"),
    (r"\b(\d{2,3}) ?l x (\d{1,2}(?:\.\d)?) ?w\b(?! ?\d)", r"\1 x \2 mm"),
    (r"(\bties?\b.*?\d.*?)\b(\d{1,2}\.\d) wide\b", r"\1\2 mm"),
    (r"\bnormal standard\b", "standard"),
    (r"\b21 ?(?:/ ?5 ?watts?|w ?/ ?5 ?w|(?<= )5 ?w(?:atts?)?)\b", "21/5w"),
    (
        r"^(?=.*\b21/5w)(?!.*\b(?:wedge|capless)\b)(.*?)(?:,? (?:twin|double|dual)[- ]fil(?:ament)?s?\b\.?"
        r"|,? (?:with )?off?set[- ]pins?\b|,? bayonet(?: cap)?(?: (?:with )?off?set pins?)?\b)",
        r"\1",
    ),
    (r"\bw2\.1 ?x ?9\.5 ?d\b", ""),  # the cap of a W5W, UN ECE R37 (from memory)
    (r"^(.*\b(?:washers|nuts)),? (\d{2,3})$", r"\1, \2 pc"),
    (r"\b(?:1|one) sachet$", "sachet"),
    (r"\bbg ?(?=\d{2,3}\b)", "pk "),
    (r"(?<!and a )\bhalf[- ](?:a[- ])?mil\b", "0.5 mm"),
    (r"(\bslings?\b.*)\bpoly\b", r"\1polyester"),
    (r"(?<=\s)(\d{2,3})'?s$", r"\1 pc"),
    (r",? \bpack(?: of)? (\d{2,4})$", r", \1 pc"),
    (r"\bpainter'?s crepe\b|\bpainters? (?=masking)", ""),
    (r"\bcloths? (?:that|which) leaves? no (?:lint|fluff)\b", "lint free wipe"),
    (r"(\bties?\b.*)\bfor (?:out ?doors?|outdoor use|outside|sunlight|the sun)\b", r"\1 uv"),
    (r"\b(?:to (?:lie|sit|run|go) |for use |for )?inside (?:the |a )?(?:fuel )?tank\b", "in-tank"),
    (r"\b(?:outside (?:of )?|not (?:for |in )?(?:the )?)(?:in[- ])?tank(?: only)?\b", ""),
    (r"\bpdr[- ]?free\b|\bpwd[- ]?free\b", "powder free"),
    (r"\bheat res\b\.?", "heat resistant"),
    (r"(\bgl(?:o?ves?)\b.*)\b(s|m|l|xl) (100|50|200)$", r"\1\2, \3 pc"),
    (r"^box of (small|medium|large|xl) nitriles?\b", r"nitrile gloves \1"),
    (r"(\bgl(?:o?ves?)\b.*)\b(\d{2,3})s\b", r"\1\2 pc"),
    (r"\bh ?\+ ?l\b(?=$|,| )", "hook and loop"),
    (r"(?<=\dv)(?=\d+ ?ah\b)", " "),
    (r"\bfe ?/ ?s ?/ ?cl[- ]free\b|\bfe[- ]free\b", ""),
    (r"\ball stainless\b", "stainless"),
    (r"\bleccy\b", "electrical"),
    (r"\bss ?(?:304|316)\b", "stainless"),
    (r"\b22\.23? ?b\b", "22.23"),
    (r"(\bgl(?:o?v(?:es?)?)\b.*)\b[0-4][0-5x][0-4][0-4x]([a-f])p?\b", r"\1level\2"),  # EN 388, from memory
    (r"\b(butyl|nitrile|neoprene|latex) rubber (?=gloves?\b|gauntlets?\b)", r"\1 "),
    (r"\bcut[- ]?(?:level )?([a-f])(?: cut)? or (?:better|higher|more)\b", r"level\1plus"),
    (r"\bcut(?:[- ]?(?:level|lvl|class))? ([a-f])\b(?! ?/)", r"level\1"),
    (r"\blevel([a-f]) or (?:better|higher|above)\b", r"level\1plus"),
    (r"(\bgloves?\b.*?)\bcl\.? ?(00|[0-4])\b", r"\1class \2"),
    (r"\bglove,? heat\b", "heat resistant glove"),
    (r"\ben ?407\b(?:,? contact)?(?: (?:level|lvl) ?[1-4])?", "heat resistant"),
    (r"\barc flash\b(?=.*\b(?:shield|visor|hood)\b)", "arc rated"),
    (r"^cb (?=\d+ ?a)", "circuit breaker "),
    (r"\bf/ins\b", "fully insulated"),
    (r"\blr0?3\b", "aaa"),
    (r"\blr6\b", "aa"),
    (r"\bpolyvinyl chloride\b", "pvc"),
    (r"\bcut gloves?\b", "cut resistant gloves"),
    (r"\bcut (?:lvl|lv) (?=\d|[a-f]\b)", "cut level "),
    (r"(\bties?\b.*\d.*), (?:25|50|100|200|250|500|1000)$", r"\1"),  # so many in the bag
    (r"\b(?:li|lithium)[- ]?ion\b", "lithium"),  # a battery's kind
    (r"\b(?:2x-?|xx[- ]?)(?:l|lg|lge|large)\b|(?<=gloves )2x\b(?! ?\d)|(?<=size )2x\b(?! ?\d)", "xxl"),  # 2XL
    (r"\b(?:3x-?|xxx[- ]?)(?:l|lg|lge|large)\b|(?<=gloves )3x\b(?! ?\d)", "xxxl"),  # 3X-large
    (r"\b(?:4x-?|xxxx[- ]?)(?:l|lg|lge|large)\b", "xxxxl"),
    (
        r"(gloves?\b.{0,30}?)(?:,| and| \+| plus)(?= (?:leather )?(?:over[- ]?gloves?|(?:glove )?protectors?)\b)",
        r"\1 with",  # insulating gloves and leather over-gloves
    ),
    (r"\ben ?388(?:[:-]20\d\d)?[ ,:]*[0-5x]{4}([a-f])p?\b", r"level\1"),  # EN 388 4X43D, from memory
    (r"\bmini,? low[- ]profile\b", "lp mini"),
    (r"\b(\d) ?x ?(\d{1,3}) ?(?:yds?|yards?)\b", r"\1 in x \2 yd"),
    (r"(\bbelts?\b.*?\b\d/\d{1,2}) ?x ?(\d{2})\b(?! ?mm)", r"\1 in x \2 in"),
    (r"\b([ac]\d)(?=b\d\b)", r"\1 "),  # A5B5
    (r"\bsz(?=\d)", "size "),
    (r"(\bt[yi]res?\b.*)\blow?[- ]press(?:ure)?\b", r"\1lowpressure"),
    (r"\blow?[- ]press(?:ure)?\b(?=.*\bt[yi]re)", "lowpressure"),
    (r"\bhook ?(?:\+|and|&|n|/) ?loop\b", "hook and loop"),
    (r"\bred[- ]brown(?: \(maroon\))?", "maroon"),
    (r"^wipers\b(?=,? (?:pair|front|rear)|$)", "wiper blades"),
    (r"\b(?:cut )?(?:level|lvl) (?=[a-f]\b)", "level"),
    (r"\b(?:sz|size) (\d{1,2}) (?=(?:pairs?|prs?)\b)", r"size \1 , "),
    (r"\b\d ?mil (?=.*glove|.*\bglv)|(?<=nitrile) ?\d ?mil\b|\b\d ?mil\b(?!.*\b(?:ring|seal))(?=.*nitrile)", " "),
    (r"\bseventy (?=duro|shore)", "70 "),
    (r"(t-?bolt clamp,?) ([1-9]\.\d\d) ?(?:to|-) ?([1-9]\.\d\d)$", r"\1 \2 - \3 in"),
    (r"\b(clamp|clip|clmp|clp)(.*?),? ?\bscrew 5/16 hex\b", r"\1\2"),
]
