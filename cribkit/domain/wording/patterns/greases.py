"""Greases and pastes."""

from __future__ import annotations

GREASES = [
    (r"^(?:pail|tub|tin|drum) of semi-fluid 00?\b(?: for (?:the )?auto-?lube)?$", "semi-fluid grease nlgi 00"),
    (r"(\bdielectric grease\b.*?)\belectrical (?=connect)", r"\1"),
    (r"^(?:caliper )?(?:slide|guide) pin (?:grease|lube),? ceramic\b", "ceramic brake grease"),
    (r"(?<=pin )lube\b|(?<=caliper )lube\b", "grease"),
    (r"\bconsistency (?=nlgi)", ""),
    (r"\bnlgi ?[:/#-]? ?(?:gr(?:ade)?\.? ?|class ?|nr\.? ?|no\.? ?|consistency ?)?#?(?=(?:000|00|[0-3])\b)", "nlgi "),
    (r"^(?=.*\bgre?a?se?s?\b)(.*?)\bgr\.? ?(000|00|[0-3])\b", r"\1nlgi \2"),
    (r"\blith(?:ium)? c(?:om)?pl(?:x|ex)?\b", "lithium complex"),
    (r"\bgrs (?=lith|moly|cop|hi|mp\b|ep\b)", "grease "),
    (r"\bmos ?2\b|\bmolybd(?:enum)?\.? di-?sul(?:ph|f)(?:ide)?\b\.?", "moly"),
    (r"(?<=grease )(?:with|w/|contains|containing|incl(?:uding)?\.?) ?(?=moly\b)", ""),
    (r"\bmoly(?:bdenum)?[- ](?:filled|additive|fortified|loaded|enriched)\b", "moly"),
    (
        r"\bsilicone grease for (?:the )?(?:brake )?(?:caliper )?(?:guide |slide |slider )?pins\b",
        "silicone brake grease",
    ),
    (r"\bplain (?=(?:ep ?-?\d )?(?:lithium|grease)\b)", ""),
    (r"\bbrake rubber silicone grease\b", "silicone grease brake rubber"),
    (
        r"(\bsilicone (?:lube|lubricant|spray)\b.*?)(?: - |, )(?:(?:car|door|window|boot|sunroof) )*"
        r"(?:rubbers|weather ?strips?)$",
        r"\1",
    ),
    (r"\bceramic brake (anti[- ]?s(?:ei|ie)ze?\b(?: paste| compound| grease)?)", r"ceramic \1 for brakes"),
    (
        r"\b(\d+ ?(?:g|gm|gr|grams?|kg|oz)) grease[- ]gun cartridge\b(?=.*\b(?:lithium|moly\w*|calcium|ep)\b)",
        r"\1 grease cartridge",
    ),
    (r"\b(cartridge|tube|tub|tin) of ((?:lithium )?ep ?-?[0-3])$", r"\1 of \2 grease"),
    (r"(\bgrease\b(?! gun).*?)(?<!grease )\bgun cartridge\b(?! (?:type|gun|pump|load\w*|tube))", r"\1cartridge"),
    (r"\b((?:lithium|moly|molly|mos2|calcium|complex|polyurea) )#?([0-3]) (?=grease\b)", r"\1nlgi \2 "),
    (r"\b(nickel|copper|ceramic|aluminium)(?:[- ]based)? (?:compound|paste) against seizing\b", r"\1 anti-seize"),
    (r"\bconsistency (?=[0-3]\b)", "nlgi "),
    (r"(\bgrease\b.*?)\btub\b(?! of)", r"\1tin"),  # a tub is also short for a tube
    (r"\btub of (?=.*\bgrease\b)", "tin of "),
    (r"(\bgrease\b.*\d ?(?:kg|lbs?)) (?:bucket|keg|drum)\b", r"\1 pail"),  # no bucket pins, no brake drums
    (r"^(?:an? )?(?:\d+ ?(?:kg|lbs?) )?(?:bucket|keg|drum) of (?=.*\bgrease\b)", "pail of "),
    (r"^grease[- ]gun cartridge,? (?:with |of )?(?=.*\b(?:lithium|moly\w*|calcium|ep)\b)", "grease cartridge, "),
    (r"^load (?:a |the )?cartridge of (.*?) into (?:the|an?) (?:grease )?gun\b.*", r"cartridge of \1"),
    (r"\bnlgi (?:grade |no\.? ?|# ?|number )(?=[0-3])", "nlgi "),
    (r"(?<=, )grease[- ]gun cartridge\b", "cartridge"),
    (r"(\bgrease\b.*?),? (?:for|to (?:go in|fit|suit)) (?:the |an? )?(?:grease )?gun\b", r"\1 cartridge"),
    (r"\b(?:ep|e\.p\.) ?([0-3]),? (?=cart)(?<!grease )", r"grease ep \1 "),
    (r"\bcopper[- ]based assembly (?:compound|paste)\b", "copper anti-seize"),
    (
        r"\bnon[- ]metallic\b(?=.*\b(?:paste|grease))|(?<=paste )non[- ]metallic\b|(?<=grease )non[- ]metallic\b",
        "metal free",
    ),
    (r"^(?!.*\b(?:grease|grs)\b)(.*)\bep ?-?([0123])\b(?! ?w| ?\d)", r"\1ep nlgi \2"),
    (
        r"^(?!.*(?:moly|copper|ceramic|lithium|;))(.*\bgrease),? (?:for |on )?(?:the )?"
        r"(?:clutch )?(?:shaft )?splines?\b",
        r"\1 clutchspline",
    ),
    (r"\b(?:clutch )?(?:input )?(?:shaft )?splines?\b(?= (?:grease|lubricant|lube))", "clutchspline"),
    (r"\b(methylene chloride|perchloroethylene|moly|molybdenum|graphite|pumice|dye)[- ]free\b", r"no \1"),
    (r"(\bgrease\b.*\d) ?gr\b", r"\1 g"),
]
