"""Sockets, ratchets and adapters asked for in few words or cut short in stock lists; before those of drives."""

from __future__ import annotations

import re

from cribkit.domain.wording.patterns.pattern import Pattern


def _told_last(found: re.Match[str]) -> str:
    """ "hex bit socket 8 mm half": the square comes last."""
    return f"{found[1]} {'1/2' if found[2] == 'half' else '1/4'} drive"


SOCKETS: list[Pattern] = [
    (
        r"\bscrewdriver[- ](?:style|type) (?:grip|handle) with (?:an? )?(quarter|1/4)(?:[- ]inch)?[ -](?:square|drive)"
        r"(?: on the end)?\b",
        "spinner handle 1/4 drive",
    ),
    (r"\bclaw[- ]?foot\b", "crowfoot"),
    (r"\bmetric tap, eight by 1\.25\b|\btap,? eight by (?=1\.25|1\b)", "tap m8x"),
    (
        r"\b(?:8|eight)[- ]?(?:pt|point) (?:skt|socket) for (?:an? )?(\d/\d{1,2})(?: ?in)? sq(?:uare)?(?:[- ]head)?"
        r" plugs?\b",
        r"8 point socket \1 in for square plugs",
    ),
    (r"^(\d{3}) (?=breaker bar\b)", r"\1 mm "),
    (
        r"\b(?:hammer[- ]strike|hit[- ]it[- ]with[- ]a[- ]hammer) impact driver(?: kit)?\b|\bhit driver(?: impact)?\b",
        "hand impact driver",
    ),
    (r"^(\d{2} ?mm) for the (?:[a-z]+ )?wheel nuts,? (?:windy|air|impact) gun\b", r"\1 impact socket"),
    (r"^(\d/\d|1)(?: in)? sockets? to (?:hold|take) (1/4|5/16)(?: in)? hex bits?\b", r"bit holder \1 drive to \2 hex"),
    (
        r"\bdrill chuck to (?=\d/\d.*\badapt[eo]r\b)(.*?) (?:socket )?(adapt[eo]r),? (1/4|3/8|1/2)(?: in)?"
        r" hex(?: shank)?$",
        r"\3 hex to \1 square \2",
    ),
    (r"(?:(?<=\d)|(?<=\dmm)|(?<=\d mm)|(?<=wall)) lug (?:nut )?sockets?\b", " wheel nut socket"),
    (r"^(?=.*\b(?:skts?|sockets?|ratchet|extension|ext|adapt[eo]r|bar)\b)(.*?\d.*?) (half|quarter)$", _told_last),
    (r"\b(half) (?=\d{2,3} ?(?:ft|nm|n\.m|lb))", "1/2 drive "),
    (r"^(?=.*\b(?:8|eight)[- ]?(?:pt|point)\b)(.*?)\bsquare (?=(?:drain|sump|filler) plugs?\b)", r"\1"),
    (r"\b(?:lorry|truck|hgv) (?=wheel ?nut (?:skt|socket)\b.*\d)", ""),
    (r"\bquarter (?=(?:hex )?shank\b)", "1/4 hex "),
    (r"(?<=\d in )d\b(?=,| \d|$)|(?<=\din )d\b(?=,| \d|$)", "drive"),
    (r"^(?:12\.5 ?mm|1/2) (?=sliding (?:t|tee)[- ](?:handle|bar))", "1/2 drive "),
    (r"^(?:10 ?mm|3/8) (?=sliding (?:t|tee)[- ](?:handle|bar))", "3/8 drive "),
    (r"(\bbreaker bar\b.*?)\(?\bhinged\b\)?|\bhinged (?=breaker bar\b)", r"\1"),
    (r"(\b(?:skts?|sckts?|sockets?|bars?|ratchets?|wrench|ratch)\b.*?) l/ ?(\d{2,4})(?: ?mm)?$", r"\1, \2 mm long"),
    (
        r"(\bsockets?\b.*?),? for (?:a |the )?(\d/\d)(?: ?in(?:ch)?\.?| ?\")? drive (?:handle|bar|ratchet)$",
        r"\1, \2 drive",
    ),
    (
        r"\b(\d{1,2} ?mm) male hex for (?:an? |the )?(?:(?:gearbox|diff|axle|transmission|oil) plug"
        r"|(?:[a-z]+ )?(?:drain|filler|level|sump)(?: ?plug)?)\b",
        r"\1 hex bit socket",
    ),
    (r"\bimp(?:act)? drv?r?\b(?=.*\b(?:hand|bits?|set)\b)", "impact driver"),
    (r"(?<=\w) (?=seat ?belt (?:anchor |reel |buckle )?(?:bolts?|screws?|nuts?)\b)", ", for "),
    (
        r"(?<=socket) (?=(?:fan|drive|aux\w*|alternator|serpentine) belt\b)|(?<=spanner) (?=(?:fan|drive|aux\w*|"
        r"alternator|serpentine) belt\b)",
        " for ",
    ),
    (r"(\b(?:skts?|sckts?|sockets?)\b.*?\d(?: ?mm|pt| pt)?),? sh(?=$|,)", r"\1 shallow"),
    # What the sockets are put on drives: "3/4 bar" is no pressure there.
    (r"(\bsockets? on(?:to)? (?:an? |the |my |our )?(?:\d/\d|1)(?:\"| ?in(?:ch)?)?) bar\b", r"\1 handle"),
    (
        r"\b(adapt[eo]r|reducer|increaser|converter) for (?:using|running|putting|fitting) (?=.*\bsockets? on\b)",
        r"\1 for ",
    ),
    (r"^(?:something|a thing|a bit) to (?:use|run|put|fit) (?=.*\bsockets? on(?:to)?\b)", "adapter for "),
    (r"(\badapter for .*?\bsockets? on)to\b", r"\1"),
    (r"\bsocket bits?\b(?! (?:set|wrench|holder|kit))", "bit socket"),
    (r", (?:1|one)[- ]?(?:in(?:ch)?|\") (?:air |impact )?gun$", ", 1 in drive"),
    (r"(\bbit (?:socket|skt)\b.*?\d ?mm) long (?=\d+(?:\.\d+)? ?(?:in\b|\"))", r"\1, long "),
    # "Skt 10mm hex std 3/8sd": a bit socket has no depth.
    (
        r"^(?=.*\b(?:skts?|sckts?|sockets?)\b)(?!.*\b(?:bits?|keys?|inhex|allen|(?:12|twelve) ?-?(?:pt|point)|12pt)\b)"
        r"(.*?)(?<!single )(?<!bi)(?<!bi[- ])(?<!double[- ])(?<!dbl[- ])\bhex,? (?=(?:std|standard|shallow|shlw|reg|"
        r"deep|dp)\b)",
        r"\1 6 point ",
    ),
    (
        r"^(?=.*\b(?:spark )?pl(?:u)?g (?:skt|socket)s?\b|.*\bspk (?:plug|plg)\b)(.*?)\bmag(?:netic)?\.? insert\b",
        r"\1 magnetic",
    ),
    (
        r"\bsquare[- ]head(?:ed)? (?=(?:drain |sump |filler )?plug socket,? (?:8|eight)[- ]?p(?:t|oint)\b)",
        "",
    ),
    (r"\bf/ ?sq(?:uare)?-?head plugs?\b", "for square plugs"),
    (r"\b(?:imp(?:act)?[/ ](?:pwr|power)|(?:pwr|power)[/ ]imp(?:act)?)\b(?! (?:tool|wrench))\.?", "impact"),
    (
        r"^((?:\d/\d{1,2}|\d{1,2} ?mm) (?:6|12) ?pt (?:shallow|deep|std|standard))(?: length)? (1/4|3/8|1/2|"
        r"3/4)(?: dr| drive| sq)?$",
        r"socket \1 \2 drive",
    ),
    (
        r"^(\d{1,2} ?mm) impact swivel,? (1/4|3/8|1/2|3/4)(?: in\.?)?(?: drive| dr| square)?$",
        r"impact swivel socket \1 \2 drive",
    ),
    (
        r"^((?:\d/\d{1,2}|\d{1,2} ?mm),? (?:six|twelve|6|12)[- ](?:point|pt),?(?: deep| shallow)?),? (?:for|"
        r"on) (?:the |my |an? )?(1/4|3/8|1/2|3/4)(?:[- ]inch)? (?:ratchet|drive|handle|bar)$",
        r"socket \1, \2 drive",
    ),
    (
        r"^((?:\d/\d{1,2}|\d{1,2} ?mm),? (?:deep|shallow)),? (?:for|on) (?:the |my |an? )?(1/4|3/8|1/2|3/4)"
        r"(?:[- ]inch)? (?:ratchet|drive|handle|bar)$",
        r"socket \1, \2 drive",
    ),
    (
        r"^((?:deep |impact |shallow |long )*)(?:skts|sockets)"
        r" (?=.*\b\d{1,2} ?-\d{1,2} ?mm\b.*\b\d{1,2} ?(?:pc|pce|piece)s?\b)",
        r"\1socket set ",
    ),
    (r"\brubber[- ]lined (?=spark)", "rubber insert "),
    (r"(\b1/4 ?f\b.*), on the 1/4(?: ratchet)?$", r"\1"),
    (r"(\b3/8 ?f\b.*), on the 3/8(?: ratchet)?$", r"\1"),
    (r"(\b(?:plug )?(?:skt|socket) (?:13/16|5/8)(?: ?in)?) \((?:20\.8|16)(?: ?mm)?\)", r"\1"),
    (r"(\badapt[eo]r\b.*?) \(cordless\)$", r"\1"),
]
