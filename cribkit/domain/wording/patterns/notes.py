"""What a stock list notes beside a thing: its number, its shelf, how many there are, its condition."""

from __future__ import annotations

NOTES = [
    (
        r" ?\(\d[\w./-]*(?: ?(?:mm|a|amp|v|w|in))? in (?:the |an? )?(?:other )?"
        r"(?:tin|box|drawer|bin|tray|case|office|store|cupboard)\b[^()]*\)",
        "",
    ),
    (
        r" ?\([^()]*\b(?:next (?:bin|shelf|drawer|box|door|to|row)|on order|ordered|elsewhere|out of stock|"
        r"sold out|none left|to (?:follow|come)|finished|all gone|run out|deleted|discontinued|"
        r"back ?order\w*|coming|other (?:bin|shelf|drawer|box))\b[^()]*\)",
        "",
    ),  # of others
    (r" ?\([^()]* ones? (?:are |is )?(?:elsewhere|kept|in|on|at|under)\b[^()]*\)", ""),  # where the others are
    (r"(?<=\d) ?ct$|(?<=\d) ?ct(?=[,;)])", " pc"),
    (
        r" \((?:somebody|someone|who) (?:lost|has|borrowed|took|broke|walked off with) (?:mine|it|the last one|ours)\)",
        "",
    ),
    (
        r"^(?!.*\bbulb)(.*?\S)[ ,(\[-]+(?:s/?n|s/no|serial(?: no)?|asset(?: no| number)?|ref(?:erence)?|"
        r"item|code|cat(?:alogue)? no|p/?n|part no|tool no|inv(?:entory)?(?: no)?)\.?[ :#]*"
        r"(?:[a-z]{0,2}-?\d[\d-]{1,9}|none|n/a)[)\]]*$",
        r"\1",
    ),
    (r"^(?:item|asset|ref)(?: no\.?)? \d{3,5} (?=[a-z])", ""),
    (r"(?<=[a-z\d])[ (]+t-\d{3,4}\)?$", ""),
    (r"(?<=[a-z\d])[ ,(\[-]+(?:trolley|cage|shelf|bin|rack|drw|drawer) ?[a-z]?\d{1,2}(?:-\d{1,2})?[)\]]*$", ""),
    (r"(?<=[a-z\d])[ -]+[\[(][a-z]\d{1,2}-\d{2}[\])]$", ""),
    (r"(?<=[a-z\d]),? (?:purchased|bought|counted|inv\.?|stocktake),? (?:\d{1,2}/)?\d{1,4}$", ""),
    (r"^(?!.*\b(?:torque|tw|tq|trq|nm|n\.m|deg|bar|psi)\b)(.*[a-z\d]),? min\.? \d{1,3}(?:,? max\.? \d{1,3})?$", r"\1"),
    (r"(?<=[a-z\d]),? re-?order (?:at|when|level)(?: below)? \d+$", ""),
    (
        r"(?<=[a-z\d])[ ,(-]+(?:fair|own brand|no brand|imported|generic|see photo|demo(?: item)?|"
        r"single item|quality tool|(?:loose )?(?:one )?from (?:an? |the |old )*set)\)?$",
        "",
    ),
    (r"^(.*\d(?:mm|/\d).*?),? (?:engraved|etched) (?:[a-z]{1,3}|\d{1,3})$", r"\1"),
    (
        r" ?\((?:red|blue|green|yellow|white|black|orange) (?:tape|paint|band) on (?:the |its )?(?:handle|shaft|end)\)",
        "",
    ),
    (r"^(?!.*\bset\b)(.*[a-z\d]),? in (?:an? |the |its )?(?:tray|box|pouch)$", r"\1"),
    (r"(?<=[189]\.[89]) in (?:an? )?case$", ""),
    (r"^(?=.*driver)(.*\bx ?\d{2,3}(?: ?mm)?) x ?[2-9]$", r"\1"),
]
