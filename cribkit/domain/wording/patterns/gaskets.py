"""Gaskets by place and engine."""

from __future__ import annotations

GASKETS = [
    (r"\b(rocker|valve|cam|tappet) cover seal (?=for )", r"\1 cover gasket "),
    (r"\bexhaust header gasket\b", "exhaust manifold gasket"),
    (r"\b(two|2)[- ]lit(?:er|re) (?=wren|tern|heron)", "2.0 "),
    # The engine's oil pan, where no other system is named; one word before it is the vehicle.
    (
        r"((?:^|[,;\d] ?)(?!(?:oil|sump|engine|trans\w*|gear ?box|atf|auto\w*|diff\w*|axle|rear|front|valve|drain|"
        r"drip)\b)"
        r"(?:[a-z]+ )?)pan gasket\b",
        r"\1oil pan gasket",
    ),
    (r"(\b(?:gasket|gskt)\b.*)\b(diesel|petrol) (?:version|model|variant)\b", r"\1\2"),
    (r"(\b(?:gasket|gskt)\b.*)\bdies\b\.?", r"\1diesel"),
    (r"\bheadgasket\b", "head gasket"),
    (
        r"\bcyl(?:inder)? hd\b(?=.*\bgas?ke?t|.*\bgskt)|(?<=gskt )cyl hd\b|(?<=gasket )cyl hd\b|\bc/head\b(?=.*\bg)",
        "cylinder head",
    ),
    (r"\brock cvr\b|\br/cvr\b(?=.*\bg)", "rocker cover"),
    (r"\bv/cov(?:er)?\b(?=.*\bg)", "valve cover"),
    (r"(\b(?:gasket|gskt)\b.*)\b(diesel|dsl|petrol) eng(?:ine)?\b\.?", r"\1\2"),
    (r"\bgasket seat\b(?=.*plug)|(?<=reach )gasket seat\b", "flat seat"),
    (r"\bcoppered (?=(?:exhaust |exh |manifold )*nuts?\b)", "copper plated "),
    (r"^blowing at the (?:head|joint|flange|port)s?[:;,-] ?(?=.*\bgasket\b)", ""),
    (r"^oil (?:weeping|leaking|seeping) (?:from|at) the top[:;,-] ?(?=.*\bgasket\b)", ""),
    (r"(\b(?:gasket|gskt)s?\b.*\b\d\.\d) ?dies\.?(?: eng(?:ine)?\b\.?)?(?=,|$| )", r"\1 diesel"),
    (r"(\b(?:gasket|gskt)s?\b.*\b\d\.\d) ptl\b", r"\1 petrol"),
    (r"^(?=.*\b(?:gasket|gskt)s?\b)(.*?)\b([1-6])([0-9])00 ?(?:cc )?(?=petrol|diesel)", r"\1\2.\3 "),
    (
        r"^(?:oil )?(?:weeping|leaking|seeping),? for the ((?:valve|rocker|cam) cover) on (?:the )?(.*?),? need the "
        r"gasket$",
        r"\1 gasket \2",
    ),
    (
        r"^(?=.*\b(?:gasket|gskt)s?\b)(.*?)\b(?:ex|exh|exhaust)\.? mani(?:fold)?\.? (?:cyl(?:inder)? )?(?:head|hd)\b",
        r"\1exhaust manifold to head",
    ),
    (r"(?<=\d\.\d) ?(?:p|pet)\b(?=.*\b(?:gasket|gskt)s?\b)", " petrol"),
    (r"(\b(?:gasket|gskt)s?\b.*\b\d\.\d) ?(?:p|pet)\b", r"\1 petrol"),
    (r"\br/cover\b", "rocker cover"),
    (r"^(?:piston )?protrusion (?:is )?(?:high|low|medium)[:;,-] ?(?=.*\bgasket\b)", ""),
    (r"(\bgasket\b.*?),? the (\w+)[- ]notch one\b", r"\1, \2 notch"),
    (r"\bblowing at the (?:head|joint|flange),? (?:i )?need (?=.*\bgasket\b)", ""),
    (
        r"^(?=.*\b(?:gasket|gskt)s?\b)(.*?)\bexh?(?:aust)?\.? mani(?:fold)?\.? ?/ ?(?:cyl(?:inder)? )?(?:head|hd)\b",
        r"\1exhaust manifold to head",
    ),
    (
        r"^(?=.*\bgasket\b)(.*?)\bbetween (?:the )?(exhaust|inlet) manifold and (?:the )?(?:cylinder )?head\b",
        r"\1\2 manifold",
    ),
    (r"^(?=.*\bgasket\b)(.*?),? (?:the )?old one (?:is )?(?:blowing|leaking|blown|burnt|split|perished)\b", r"\1"),
    (r"(\bgasket\b.*?\b(?:exhaust|inlet) manifold) to head\b", r"\1"),
    (r"^(?=.*\b(?:washer|wshr|washr)s?\b)(.*?)\bform[- ]?([a-g])\b(?! ?(?:seal|gasket|washer))", r"\1form\2"),
    (r"\bmanf\b", "manifold"),
    (r"\bexh(?:aust)?\.? man\b\.?", "exhaust manifold"),
    (r"\bexh gskt\b", "exhaust gasket"),
    (r"\bvalve \(rocker\) cover\b", "rocker cover"),
    (r"(\bgasket\b.*\d(?:\.\d+)? mm) thick\b", r"\1"),
    (
        r"^(?=.*\b(?:bolts?|nuts?|studs?|(?:cap)?screws?)\b)(.*\d.*?),? (?:for )?(?:the )?"
        r"(?:exh(?:aust)?|manifold|pipe|turbo|downpipe|prop ?shaft|drive ?shaft)\.? flange\b(?! (?:bolt|nut|"
        r"screw|stud|head))",
        r"\1 exhaust",
    ),
    (r"\bhd (?=(?:gasket|gskt|gkt)\b)", "cylinder head "),
    (r"\bcam \(rocker\) cover\b", "rocker cover"),
]
