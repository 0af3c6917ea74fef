"""Pliers, cutters and crimpers."""

from __future__ import annotations

PLIERS = [
    (r"\block-?on grips\b", "locking pliers"),
    (r"\bcranked at right angles\b", "90 degree"),
    (r"\bpliers on (?:an? )?cable for (spring )?hose clips\b", r"cable \1hose clip pliers"),
    (r"(?<=hose clip pliers) you can'?t reach$", ""),
    (r"\blines?m[ae]ns insulated\b", "insulated linesman pliers"),
    (r"(\bpliers\b.*?),? the (\d{3})s$", r"\1 \2 mm"),
    (r"\b(internal|external|int|ext) ring pliers\b", r"\1 retaining ring pliers"),
    (r"\bc[- ]?clamp locking (?:grips?|pliers)\b|\blocking c[- ]?clamp grips?\b", "locking c clamp"),
    (r"\bclamp, c[:,] locking pliers type\b", "locking c clamp"),
    (r"(\bhose (?:clip|clamp) pliers\b|\bpliers for )spring[- ]band (?=hose)", r"\1"),
    (r"(\b(?:circlip|snap ring|retaining ring|ret ring)\b.*?)\bconv(?:ertible)?\b\.?", r"\1internal external"),
    (r"\bconv(?:ertible)?\b\.? (?=(?:circlip|snap ring|retaining ring))", "internal external "),
    (
        r"\b(pliers|plrs|plr),? (?:with (?:an? )?)?flexible cable(?: type)?\b|\b(?:flexible cable|"
        r"remote cable) (?=(?:pliers|plrs))",
        r"\1 remote ",
    ),
    (r"^(?=.*\bpliers?\b)(.*?)\b(?:non|un)[- ]?serrated\b", r"\1smooth"),
    (r"\b(?:self|lever)[- ]lock (?=(?:grip )?(?:pliers|plrs?|plier)\b)", "locking "),
    (r"(\bhose (?:clamp|clip)) (pliers),? (?:locking|lockable)\b", r"locking \1 \2"),
    (
        r"^(?=.*\b(?:cable|bowden)\b)(.*\bhose (?:clamp|clip) pliers) for the (?:spring|self[- ]tightening)"
        r"(?: band)? clips\b",
        r"\1 on clips",
    ),
    (r"(\b(?:twisting|lock ?wire|twister) pliers),? spin(?:ning)?(?: type)?\b", r"\1"),
    (
        r"^(?=.*\b(?:filters?|fltr)\b)(?!.*\b(?:pliers|puller)\b)(.*?)"
        r"\b(3|2|three|two)[- ]?(?:arms?|armed|legs?|legged|jaws?|jawed|claws?|jwa)\b",
        r"\1claw \2 claw",
    ),
    (r"\b(filter) (?:remover|removing tool|removal tool)\b(?! (?:pliers|socket|set|kit))", r"\1 wrench"),
    (
        r"^(?=.*\bfilter\b)(?=.*\b(?:band|strap|claw|jaws?|legs?|arms?|chain|pliers)\b)(.*?)(?:\bcap(?:acity)?\.? )?"
        r"\b(\d{2,3})/(\d{2,3}) ?mm\b",
        r"\1\2-\3 mm",
    ),
    (r"\bslip[- ]joint pump pliers\b", "water pump pliers"),
    (r"^(?=.*\bpl(?:ie)?rs?\b)(.*?)\bconstant[- ]tension (hose )?(cl(?:amp|ip)s?)\b", r"\1spring \2\3"),
    (r"^(?=.*\bcrimp)(.*?)\b(0\.\d+) ?/ ?(\d+(?:\.\d)?)(?= ?mm ?2\b)", r"\1\2-\3"),
    (r"\b(straight|bent) ((?:ext|int)\w*\.?) circlips(?= \d+-\d+)", r"\1 \2 circlip pliers"),
    (r"(\bpl(?:ie)?rs?\b.*?)\bfor (?:snap |retaining )?rings on (?:a )?shafts?\b", r"\1external"),
    (r"(\bpl(?:ie)?rs?\b.*?)\bfor (?:snap |retaining )?rings in (?:a )?bores?\b", r"\1internal"),
    (
        r"(\b(?:pliers?|cutters?)\b.*?)\b(6[ -]1/4(?=.{1,6}\(160)|6(?=.{1,6}\(1[56]0)|7(?=.{1,6}\(1(?:75|80))|"
        r"8(?=.{1,6}\(200)|10(?=.{1,6}\(250))( ?(?:\"|in\b\.?|inch)) \((\d{3})\)",
        r"\1\2\3 (\4 mm)",
    ),
    (r"\badjustable water ?pumps?\b(?! pl)", "water pump pliers"),
    (r"\blever[- ]lock(?:ing)? (?=pl(?:ie)?rs?\b)", "locking "),
    (r"\blong cable (?=(?:operated )?(?:hose cl(?:ip|amp) )?pl(?:ie)?rs?\b)", "cable "),
    (r"^crimps\b(?=.*\b(?:connector|terminal|lug|ferrule)s?\b)", "crimping pliers"),
    (r"^(?=.*\bcrimp)(.*?)\b(0\.\d+) ?/ ?(\d+(?:\.\d)?)(?= ?(?:mm2|sqmm|sq\b))", r"\1\2-\3"),
    (r"^(?=.*\bcrimp)(.*?)\b(0\.\d+) ?- ?(\d{1,2})$", r"\1\2-\3 sqmm"),
    (r"\bremote cable pliers for spring hose clips\b", "hose clamp pliers cable spring clamp"),
    (r"^bent[- ]nose (?=\d)", "bent nose pliers "),
    (r"\bself[- ]grip(?:ping)? pliers\b", "locking pliers"),
    (r"\bslip[- ]joint \(multi[- ]?grip\) pliers\b", "water pump pliers"),
    (r"\bw/(?=cutters?\b|case\b|stand\b|sleeve\b|leads?\b)", "with "),
    (r"^bent nose (?=\d)", "bent nose pliers "),
    (r"\bext(?:ernal)? circlip (?=.*\b(?:45|90) ?deg)", "external circlip pliers "),
    (r"\bint(?:ernal)? circlip (?=.*\b(?:45|90) ?deg)", "internal circlip pliers "),
    (r"\bpliers (\d{1,2})$", r"pliers \1 in"),
    (r"^(\d{3}) (?=(?:combi|combination|long[- ]nose|side|water[- ]pump|needle)\b.*pliers)", r"\1 mm "),
    (r"\b(pliers?\b.*?) for shafts?\b", r"\1 external"),
    (r"\b(pliers?\b.*?) for (?:bores?|holes?)\b", r"\1 internal"),
    (r"\bb[- ]crimp\b", ""),
    (r"\bgrip pliers,? self[- ]lock(?:ing)?\b", "locking pliers"),
    (r"(\bcirclip pliers?\b.*)\bright[- ]angled?\b", r"\g<1>90 deg"),
    (r"\b(?:red|r) ?/ ?(?:blue|blu|b) ?/ ?(?:yellow|yel|y)\b(?=.*\b(?:crimp|terminal))", ""),
    (r"(\bcrimp\w*\b.*)\b(?:red|r) ?/ ?(?:blue|blu|b) ?/ ?(?:yellow|yel|y)\b", r"\1"),
    (r"(\b(?:hose cl[ai]\w*|clip|clamp) pliers\b.*)\bconstant tension(?: type)?\b", r"\1spring band"),
    (r"(\bpliers?\b.*?)\b(0?\.\d\d\d?) (?=tips?\b)", r"\1\2 in "),
    (r"\b(?:right|rt)[- ]angled?\b(?=.*\b(?:pick|hook|nose|pliers?|plr)\b)", "90 deg"),
    (r"\b(pliers?,?) (?:for )?housings?\b", r"\1 internal"),  # circlips in a housing
    (r"\bhose pinch clamps?\b", "hose pinch pliers"),
    (r"\b(?:pliers?|plrs?),? circ\b", "pliers circlip"),
]
