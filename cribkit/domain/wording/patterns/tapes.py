"""Tapes and ties."""

from __future__ import annotations

TAPES = [
    (r"(\btape\b.*?\d ?mm) ?/ ?(\d{1,3}) ?m\b", r"\1 x \2 m"),
    (r"\b(?:paint )?masking roll\b", "masking tape"),
    (r"^tape dispensers?\b", "tape gun"),
    (r"\bmasking$", "masking tape"),
    (r"\bd/?sided\b", "double sided"),
    (r"\bmask(?:ing|'g|g)? ?t(?:ape|p)\b", "masking tape"),
    (r"\bpainter'?s (?=masking)", ""),
    (r"(?<=\d)( ?mm| ?in(?:ch)?| ?\") (?:wide|width) x (?=\d)", r"\1 x "),
    (r"\b(?:width|w) ?(\d{2,3} ?mm) x (?=\d)", r"\1 x "),
    (r"\bcble (?=tie)", "cable "),
    (r"\bziptie(s?)\b", r"zip tie\1"),
    (r"\bwire ties?\b(?=.*\d ?x ?\d)", "cable tie"),
    (r"(\bties?\b.*?)\b(\d{2,3}) ?l(?:ong)? x (\d{1,2}(?:\.\d)?) ?w(?:ide)?\b", r"\1\2 x \3 mm"),
    (r"(\bties?\b.*?)\b(\d{1,2}(?:\.\d)?) ?w(?:ide)? x (\d{2,3}) ?l(?:ong)?\b", r"\1\3 x \2 mm"),
    (r"(\bties?\b.*?)\bl(\d{2,3}) ?x? ?w(\d{1,2}(?:\.\d)?)\b", r"\1\2 x \3 mm"),
    (r"(\bties?\b.*?)\b(\d{3})/(\d{1,2}\.\d) ?mm\b", r"\1\2 x \3 mm"),
    (r"(\bties?\b.*?)\blength (\d{2,3})(?: ?mm)?,? width (\d{1,2}(?:\.\d)?)(?: ?mm)?\b", r"\1\2 x \3 mm"),
    (r"\bsealing tape\b(.*?),? for threads?\b", r"thread seal tape\1"),
    (
        r"^(?=.*\bbags?\b)(?=.*\b(?:(?:zip|grip|press|snap)[- ](?:seal|top|lock)|reseal\w*)\b)(.*?)"
        r"\b(?:plastic|polythene|poly|ldpe)\b,?",
        r"\1",
    ),
    (
        r"^(?=.*\bbags?\b)(?=.*\b(?:zip|grip|seal|reseal\w*|re-?asealable)\b)(.*?)\b(\d{1,3}|two|three|four|five|six)"
        r"(?: ?(?:in\b|\"))? ?(?:x|by|×) ?(\d{1,3}|four|five|six|seven|eight|nine) ?(?:in\b|inch(?:es)?\b|\")",
        r"\1\2 in x \3 in",
    ),
    (
        r"^(?=.*\bbags?\b)(?=.*\b(?:zip|grip|seal|reseal\w*)\b)(.*?)(?<![\d.])\b(\d{2,3}) ?(?:x|by|×) ?(\d{2,3})"
        r"(?= ?mm\b|$|[, ])(?! ?(?:cm|in|mic))(?: ?mm)?",
        r"\1\2 mm x \3 mm",
    ),
    (
        r"\b(?:grip|press|snap|zip|click)[- ](?:seal|top|lock)(?=[, ]+(?:(?:clear|plastic|poly\w*|ldpe) )*bags?\b)",
        "resealable",
    ),
    (r"(\bbag[, ]+)(?:grip|press|snap|zip|click)[- ](?:seal|top|lock)\b", r"\1resealable"),
    (r"\broll of masking(?=$|[,.]| \d)", "roll of masking tape"),
    (r"\bmask(?:ing)?\.? tape\b", "masking tape"),
    (r"(\btape\b.*),? ctn(?: of)? ?\d+\b", r"\1"),
    (r"\bthread seal(?:ant|er) tape\b|\bjointing tape(?=.*\bptfe\b)", "thread seal tape"),
    (r"\bptfe jointing (?:tape|taep|tpae)\b", "ptfe thread seal tape"),
    (r"(\btape\b.*)\bslvr?\b", r"\1silver"),
    (
        r"^(?=.*\btape\b)(?=.*\b(?:mask\w*|pvc|elec\w*|insul\w*|vinyl|ptfe|duct|foil|gaffer)\b)(.*?)(?<![\d./])"
        r"\b(\d{2}) ?x ?(\d{2}) ?m(?=$|,| )",
        r"\1\2 mm x \3 m",
    ),
    (r"(\btape\b.*\d ?mm?),? rls?\b", r"\1 roll"),
    (r"(\btape\b.*), rls?\b", r"\1, roll"),
    (r"^([a-z -]*\btape) (12|19|25|38|50)$", r"\1 \2 mm"),
    (r"(\btape\b.*),? automotive\b|\bautomotive (?=masking tape)", r"\1"),
    (r"\bmaking tape\b|\bmskn?g tape\b", "masking tape"),
    (
        r"(?:^|(?<=of )|(?<=, )|(?<=of an )|(?<=tape )|(?<=some ))(?:an? |one )?inch[- ]wide\b",
        "1 inch wide",
    ),
    (
        r"^(?=.*\btape\b)(?=.*\b(?:mask\w*|pvc|elec\w*|insul\w*|vinyl|ptfe|duct|foil|gaffer)\b)(.*?)(?<![\d.])"
        r"\b(\d{2})(?: ?mm)? ?(?:x|by) ?(\d{2})\b(?! ?(?:mm|m\b|in\b|inch|\"|x|yd|ft|met|cm|\.))",
        r"\1\2 mm x \3 m",
    ),
    (r"\bpolytetrafluoroethylene\b", "ptfe"),
    (r"\bcloth tape\b(?=.*\b(?:harness|loom|wiring)\b)", "cloth loom tape"),
    (r"\bfabric\b(?=.*\btape\b)|(?<=tape )fabric\b|(?<=tape, )fabric\b", "cloth"),
    (r"\b(tape\b.*\d(?:\"| ?in\b).*?)\b\d{1,2}(?:\.\d)? ?mil\b", r"\1"),  # thousandths of an inch thick
    (r"^((?:[a-z]+ )?masking)$", r"\1 tape"),
    (r"\btp(?=,? (?:msk|mskg|mask|insul|ins|elec|dbl|alum|alu|ptfe|duct|cloth|foam)[a-z]*\b)", "tape"),
]
