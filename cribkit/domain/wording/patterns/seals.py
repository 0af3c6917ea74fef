"""O-rings, washers, seals and circlips."""

from __future__ import annotations

SEALS = [
    (r"\bbonded washer\b", "bonded seal"),
    (r"^(?=.*\bo[- ]?ring\b)(.*?)\bac\b", r"\1a/c"),
    (r"(\bcopper washer) (\d\d) (sump|drain)$", r"\1 \2 mm \3 plug"),
    (r"(\bcopper washer) (\d\d ?mm) sump$", r"\1 \2 sump plug"),
    (r"^((?:fluorocarbon|nitrile|viton|fkm|nbr|epdm|silicone|hnbr)(?: rubber)?) ring (?=\d)", r"\1 o-ring "),
    (r"\b(a/?c) (?:line|pipe|hose) seal, green,? (?=\d)", r"\1 o-ring green "),
    (r"\bdrain seal ring\b", "drain plug washer"),
    (r"(?<=drain plug washer, )(copper|alumin(?:i)?um|alum|fibre|bonded), (\d\d)$", r"\1, \2 mm"),
    (r"\bcrush washer (?=alum|copper)", "drain plug crush washer "),
    (r"^(?!.*\d ?x ?\d)(.*\bwashers?\b.*?)\b(\d(?:\.\d)?) thick\b", r"\1thickness \2 mm"),
    (r"^(cu|copper|ali|aluminium) washers?,? (\d{1,2})$", r"\1 washer \2 mm"),
    # Numbers of the inch series of O-rings, SAE AS568.
    (r"\bas ?568[a-d]?,? ?-? ?(?=\d{3}\b)", "dash "),
    (r"^(?=.*\bo-?\s?rings?\b)(.*?)(?:#|\b(?:no\.?|size) ?)(?=\d{3}\b(?! ?mm))", r"\1dash "),
    (r"\bfluoro[- ]?carbon(?: rubber)?\b|\bfluoro[- ]?elastomer\b|\bf[kp]m rubber\b", "fkm"),
    (r"(?<=mm )c/s\b|(?<=mm) c/s\b", " cs"),
    (
        r"(\bo-?rings?\b.*?)\b(?:inside|inner|internal) dia(?:meter)?\.? (\d+(?:\.\d+)?)"
        r" ?mm,? (?:cross )?section (\d(?:\.\d+)?) ?mm\b",
        r"\1\2 x \3 mm",
    ),
    (r"(\bwashers?\b.*?)\bcop\b\.?", r"\1copper"),
    (r"\b(flat|plain|pln|spring|lock|sealing|copper) wash\b", r"\1 washer"),
    (r"^wash (?=(?:flat|plain|pln|spring|lock|copper|cu)\b)", "washer "),
    (r"\bpln (?=wa?s?he?r)|(?<=washer )pln\b|(?<=wshr )pln\b", "plain "),
    (r"\bbnd (?=seal\b)", "bonded "),
    (r"\b(washers?,? m\d{1,2}),? flat$", r"flat \1"),
    (
        r"^(?=.*\b(?:nuts?|bolts?|screws?|studs?)\b)(?!.*\b(?:washers?|rings?|seals?|sockets?|spanners?|"
        r"wrench)\b)(.*?)(?<![\d.x])(\d{1,2}) ?mm ?[-*x] ?([0-3]\.\d{1,2})(?: ?mm(?= pitch)| pitch)?(?! ?mm)\b",
        r"\1m\2x\3",
    ),
    (r"\bseal,? toroidal\b|\btoroidal (?:seal|ring)\b", "o-ring"),
    (r"(\bwasher.*?|\bwshr.*?)\bform j,? \(?(int[a-z]*)\)?", r"\1\2"),
    (r"\bhelical (?=(?:(?:spring|split|lock) ){1,2}washers?\b)", ""),
    (r"(\bcirclips?\b.*?)\bd ?(\d{1,3}) ?x ?(?=\d)", r"\1\2 mm x "),
    (r"(\bo-?rings?\b.*?)\b(\d{1,3}(?:\.\d{1,2})?) x(?=\d)", r"\1\2 x "),
    (r"(\bo[- ]?rings?\b.*?)\b(\d{1,3}\.\d{1,2}) ?- ?([1-9]\.\d{1,2})\b", r"\1\2 x \3 mm"),
    (
        r"(\b(?:washer|wshr)s?\b.*?)\b(\d{1,2}(?:\.\d)?) ?mm x (\d{1,2}(?:\.\d)?) ?mm x (\d(?:\.\d+)?) ?mm\b",
        r"\1\2 x \3 x \4 mm",
    ),
    (
        r"(\b(?:copper|coper|aluminium|alu|sealing|crush) (?:washer|wshr)s?\b.*?|"
        r"\b(?:washer|wshr)s?,? (?:copper|cu|aluminium|alu)\b.*?)\b(\d{1,2})-(\d{1,2})-(\d(?:\.\d)?)\b",
        r"\1\2 x \3 x \4 mm",
    ),
    (r"(\bo[- ]?rings?\b.*\d) (60|70|75|80|90)a\b", r"\1 \2 shore"),
    (r"\boilseal(?=s?\b)", "oil seal"),
    (
        r"(\bseals?\b.*?)\b(\d{1,3}(?:\.\d)?)(?: ?mm)? id,? (?:x )?(\d{1,3}(?:\.\d)?)(?: ?mm)? od,? (?:x )?"
        r"(\d{1,2}(?:\.\d)?)(?: ?mm)? (?:wide|width|thick|thk)\b",
        r"\1\2 x \3 x \4 mm",
    ),
    (
        r"(\bseals?\b.*?),? (?:with )?(?:the )?lips? (?:facing|towards) (?:the )?(?:oil|inside|inboard)(?: side)?$",
        r"\1",
    ),
    (r"(\bwshrs?\b[^/]*?)\b(\d{1,2})/(\d{1,2})/(\d(?:\.\d)?)\b(?! ?(?:in\b|\"))", r"\1\2 x \3 x \4"),
    (
        r"(\bbonded (?:sealing )?(?:seal|washer)s?\b.*?) (?:for|under|at|on) (?:the |an? )?"
        r"(?:(?:tail lift|hydraulic|pump|ram|valve|cylinder) ){0,3}(?:port|union|adapt[eo]r)\b",
        r"\1",
    ),
    (r"\bform ?([a-g]) (m\d{1,2}) flats\b", r"\2 flat washer form\1"),
    (
        r"(\b(?:lock ?washers|(?:spring|star|shake ?proof|lock) washers)\b.*\bm\d{1,2}) x (\d{1,3})$",
        r"\1, \2 pc",
    ),  # so many: they have no outside measure
    (r"(\b(?:nuts|washers)\b.*\bm\d.*[a-z]) x (\d{1,3})$", r"\1, \2 pc"),
    (
        r"^(?=.*\bstuds?\b)(?!.*\b(?:extract\w*|remov\w*|drill\w*|tool)\b)(.*?) (?:snapped|sheared|broken)(?: off)? in "
        r"the (?:cylinder )?head\b",
        r"\1",
    ),
    (
        r"(\bcirclips?\b.*?)\b(\d{1,3})(?: ?mm)? (shaft|bore),? (\d(?:\.\d+)?) ?(?:mm )?(?:thk|thick)\b",
        r"\1\2 x \4 mm \3",
    ),
    (r"^(?=.*\b(?:seal(?:ing)? ring|ring,? seal(?:ing)?)\b)(.*?)\bform[- ]?([a-g])\b", r"\1form\2"),
    (r"\b(?:whaser|wahser|wsaher)(?=s?\b)", "washer"),
    (
        r"^(?=.*\b(?:m\d|bolt|nut|screw|washer|wshr|rivet|pin|circlip|o-?ring|ties?)s?)(.*\d.*) "
        r"\((10|20|25|50|100|200|250|500|1000)\)$",
        r"\1, \2 pc",
    ),
    (r"^(?=.*\b(?:washer|wshr|washr|washrs)s?\b)(.*?)\bfrm (?=[a-g]\b)", r"\1form "),
    (r"\bform ([b-g])(?= washers?\b)", r"form\1"),
    (r"\bflt (?=wshr|washer|washr)", "flat "),
    (r"\bspg (?=wshr|washer|wsher|pin\b)", "spring "),
    (r"(\bcirclips?\b.*?)\bd(\d{2,3})\b", r"\1\2 mm"),
    (r"(\bcirclips?\b.*?)\bj(\d{2,3})\b", r"\1\2 mm internal"),  # after DIN 472, from memory
    (r"^(?=.*\bseals?\b|.*\bwashers?\b)(.*?)\bs/c(?:entring|entering|entr(?:ing)?)?\b", r"\1self centring"),
    (r"\bo[- ](?:rign|ing|rnig|rng)\b", "o-ring"),
    (r"\bo-?seal rings?\b|^rings?,? o,", "o-ring "),
    (r"\bo/seals?\b", "oil seal"),
    (r"(\bseals?\b.*\d.*)\btc\b", r"\1double lip"),  # rubber outside, a spring and a second lip: DIN 3760 (from memory)
    (
        r"(\bwashers?\b[^/]*?)\b(\d{1,2})/(\d{1,2})/(\d(?:\.\d)?)\b(?! ?(?:in\b|\"))",
        r"\1\2 x \3 x \4",
    ),
    (
        r"^(?=.*\b(?:washer|wshr|washr)s?\b)(.*?)\b(?:cu|copper)[- ]?(?:plated|pltd|coated|clad)\b(?:(.*?)"
        r"\b(?:steel|stl|st)\b)?",
        r"\1 steel\2",
    ),
    (r"^(?=.*\b(?:washer|wshr|washr)s?\b)(.*?)\bcoppered\b", r"\1"),
    (r"(\bo[- ]?rings?\b.*\d.*)\bcord (?=\d)", r"\1section "),
    (r"\bo/x[- ]?ring\b", "o-ring"),
    (r"(\bseals?\b[^/]*?)\b(\d{2,3})/(\d{2,3})/(\d{1,2})\b", r"\1\2 x \3 x \4"),
    (r"(\b(?:wshr|washer)\b.*)\b(\d(?:\.\d+)?)t\b", r"\1\2 thk"),
    (r"(\bseals?\b.*?)\b(\d{2,3}) (\d{2,3}) (\d{1,2})\b(?! ?(?:mm )?(?:x|by)\b)", r"\1\2 x \3 x \4"),
    (r"\borng (?=(?:nbr|fkm|epdm|hnbr|nitrile|\d))", "o-ring "),
    (r"\b(o-?ring\b.*)\bac$", r"\1a/c"),
    (r"\bflat (m\d+) washer", r"\1 flat washer"),
    (r"\b(seals?\b[^\d]*)(\d+(?:\.\d)?)-(\d+(?:\.\d)?)-(\d+(?:\.\d)?)\b", r"\1\2 x \3 x \4"),
    (r"\b(\d+(?:\.\d)?)-(\d+(?:\.\d)?)-(\d+(?:\.\d)?)\b(?=.*\bseals?\b)", r"\1 x \2 x \3"),
    (
        r"\b(cap|btn|button|flange|dome|cheese|csk|round|washer|hex|mushroom|fillister) ?hd\b",
        r"\1 head",
    ),  # HD alone is heavy duty
    (r"\bnuts? with (?:a )?captive washers?\b", "nut captive"),
    (r"\bbolts? (?:and|\+) washers?\b", "bolt with washer"),
    (r"\bwasher(.*)\bdin ?9021\b", r"penny washer\1"),
    (r"\bwasher(.*)\bdin ?127\b", r"spring washer\1"),
    (r"\b(washers?|wshrs?),? lk\b", r"\1 lock"),
    (r"\b(washers?|wshrs?|wsr),? flt\b", r"\1 flat"),
    # The noun first, its size, and then what kind it is.
    (r"^(washers?),? (m?\d[\dx.]*(?: ?mm)?),? (spring|split)\b", r"\3 \1 \2"),
]
