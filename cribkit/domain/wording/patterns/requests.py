"""What frames a request and says nothing of the thing: "the manual says a ...", "... if possible"."""

from __future__ import annotations

REQUESTS = [
    (r"^(?:any|either) (?:depth|drive|mechanism|kind|type|make|length|style)(?: will do| is fine)?,? (?=\S+ \S)", ""),
    (r",? (?:any|either) (?:depth|drive|mechanism|kind|make|style)(?: will do| is fine)?$", ""),
    (r"^(?:whatever|whichever|any(?:thing)?) (?:you've|you have|we have|you) got,? (?=\S+ \S)", ""),
    (r"\b(torque wrench)(?: that will| to| which will) pull (?=\d)", r"\1 "),
    (r"^\"([^\"]*)\"$", r"\1"),
    (r"^1 x (?=\d{1,2} ?mm [a-z])(?!.*(?:\dx\d|\b(?:pins?|cotters?|rings?|wire|o-?rings?)\b))", ""),
    (r"^\d{1,2}[.)] (?=\d)", ""),
    (
        r"^(?:please |pls |plz )?(?:(?:can|could) (?:i|we) (?:have|get|borrow) |book out|issue|grab(?: me|"
        r" us)?|borrow|gimme|give us) ?(?:an? |the |one |1 )?(?=\S)",
        "",
    ),
    (r"^plz (?=\S)", ""),
    (r"^(?:i |we |you )?(?:could|might|may) (?:do with|need|use|want) (?:an? |the )?(?=\S)", ""),
    (r"^(?:the |an? )?(?:usual|decent|ordinary) (?=\S)(?!.*\bfor\b)", ""),
    (r"^another (?=\S)", ""),
    (
        r"^(?:the |an? )?replacement (?!(?:head|blade|kit|element|bulb|lens|tip|jaw|insert|face|refill|"
        r"cartridge|part|handle|pad|strap|belt)s?\b)(?=\S)",
        "",
    ),
    (r"^(?:it |this )?(?:should|must|has to|will have to|ought to) be (?:an? |the )?(?=\S)", ""),
    (r"^(?:preferably|ideally|probably|maybe|perhaps),? (?:an? |the )?(?=\S)", ""),
    (r"^i (?:think|reckon|guess) it's (?:an? |the )?(?=\S)", ""),
    (r"^(?:it |this one |this job |this )?(?:takes|needs|wants) (?:an? |the )(?=\S)", ""),
    (
        r"^(?:the )?(?:manual|book|spec|procedure|sheet|job card) (?:says|calls for|asks for|wants|specifies)"
        r" (?:to use )?(?:an? |the )?(?=\S)",
        "",
    ),
    (
        r"^(?:listed as|nothing but|what (?:i|we) (?:need|want) is|(?:we're|we are|i'm|i am) (?:short of|"
        r"out of|after)|(?:we've|we have|i've|i have) (?:run out of|lost)) (?:an? |the |my |our )?(?=\S)",
        "",
    ),
    (r"^the (.*) is (?:missing|gone) from my (?:tool ?)?(?:box|roll|bag|trolley|drawer)$", r"\1"),
    (r"^mine(?:'s| is) (?:broken|bust|lost|gone|missing|worn),? (?:i |so i )?need (?:an? )?(?=\S)", ""),
    (r"^(?:tool|item|line|part) (?:no\.? ?|number |# ?)\d{1,2}[:.)] ", ""),
    (r"^(?:job|order|card)(?: no\.?| number)? #?\d{3,6}[:;,.-]+ ?", ""),
    (r",? for (?:job|order|card)(?: no\.?| number)? #?\d{3,6}$", ""),
    (r"^(?:urgent|asap|description|descr?|as listed|listed)[:;,-]+ ?", ""),
    (
        r",? (?:asap|urgent(?:ly)?|if (?:at all )?possible|handy|see (?:the )?note(?: \d)?|"
        r"(?:as )?per (?:step|procedure|item|line)(?: \d{1,2})?|not too worn|in good (?:condition|nick|order)|"
        r"\(any make\)|any make)$",
        "",
    ),
    (
        r",? (?:to be |will be )?(?:returned|back)(?: here)? (?:by|before|at) (?:\d{1,2}(?::\d\d)?|[a-z]+)"
        r"(?: ?(?:am|pm|o'clock|today|tomorrow))?$",
        "",
    ),
    (r",? for (?:the )?(?:night|late|early|day|morning|next) shift$", ""),
    (r",? for (?:\d{1,2}|ten|five|twenty|half an|an|a few|two)(?: more)? (?:minutes?|mins?|hours?)$", ""),
    (r" in (?:the |our )?(?:crib|tool store|stores?)$", ""),
    (r"(?<=\d) x1$", ""),
]
