"""Jacks, stands, slings and hoists."""

from __future__ import annotations

LIFTING = [
    (r"\blow (?=(?:transmission|gearbox|trolley|floor) jack)", "low profile "),
    (r"(\bjack\b.*?), low$", r"\1 low profile"),
    (r"(\b(?:slings?|straps?|chains?)\b.*?\bx ?)(\d{1,2}) ?'(?!')", r"\1\2 ft"),
    (r"\baxle std(?=s?\b(?: \d| pr\b| pair|$))", "axle stand"),
    (r"(\bjack\b.*)\blp\b", r"\1low profile"),
    (r"\b(?:trolly|trolely|troley) jack\b", "trolley jack"),
    (r"(?<!floor )\bjack on (?:wheels|castors)\b", "trolley jack"),
    (r"(\b(?:jack|stand|hoist|crane|sling)\b.*?)\bcap(?:acity)? (?=\d+(?:\.\d+)? ?(?:t|te|tons?|tonnes?|kg)\b)", r"\1"),
    (r"(\bbottle jack\b.*?),? (?:with )?(?:screw[- ]extension|extension screw)\b", r"\1"),
    (r"(\bslings?\b.*?)\b(?:with (?:soft )?loops|loop(?:ed)? ends?)\b", r"\1eye and eye"),
    (r"(\bslings?\b.*?)\be/e\b", r"\1eye and eye"),
    (r"(\bjack\b.*?),? twin[- ]pump\b", r"\1, twin"),
    (r"\bupright (?=(?:hydraulic )?bottle jack)", ""),
    (r"\blow[- ](?:entry|loader|line) (?=.*jack)", "low profile "),
    (
        r"^(?:an? )?(?:stand|base) with (?:an? )?magnet (?:to hold|for holding|for) (?:an? |"
        r"the )?(dial indicator|dti|dial gauge|clock gauge)$",
        r"magnetic stand for \1",
    ),
    (r"(sling\b.*?)\bl1 ?= ?(?=\d)", r"\1"),
    (r"^(?=.*\bjack\b)(.*?)[- ]tonners?\b", r"\1 ton"),
    (r"^(?=.*\bstands?\b)(.*?)\b2 x (\d+) ?(?:t|tons?|tonnes?)\b", r"\1\2 t rated each pair"),
    (
        r"^(?=.*\bstands?\b)(.*?\d ?(?:t|tons?|tonnes?|kg)),? ?(?:(?:/ ?|(?:capacity )?per )stand\b|capacity each\b)",
        r"\1 rated each",
    ),
    (r"^(?=.*\bstands?\b)(.*?)\bx ?2, rated per stand\b", r"\1rated each"),
    (r"\brated per stand\b", "rated each"),
    (r"\bround ?slings?\b", "round sling"),
    (
        r"^(?=.*\b(?:ewl|effective (?:working )?length)\b)(.*sling\b.*?) ?\(?\d+(?:\.\d)? ?m "
        r"circ(?:umference)?\b\.?\)?",
        r"\1",
    ),
    (r"\blift (?=sling\b)", "lifting "),
    (r"(\bjack\b.*?),? \b(?:std|standard|normal)[- ]height\b", r"\1"),
    (r"^(?:pair of )?(\w+) (ton(?:ne)?|t) stands?\b", r"axle stand \1 \2"),
    (r"\bwheeled (?=(?:floor |trolley )?jack)", ""),
    (r"\bfloor jack for low (?:cars|vehicles)\b", "low entry trolley jack"),
    (r"\bupright hydraulic jack\b", "bottle jack"),
    (r"\btroll(?:e?y|ey) (?=jack)", "trolley "),
    (r"\blow[- ]profile jack\b", "low profile trolley jack"),
    (r"(\btrolley jack\b.*) low$", r"\1 low profile"),
    (r"(\bjack\b.*)\blow[- ]entry\b", r"\1low profile"),
    (r"(\bstands?) \(2\)", r"\1"),
    (r"\blow(?:[- ]entry)? (?=(?:trolley|floor|garage) jack)", "low profile "),
    (r"^(?=.*\bstands?\b)(.*?\d ?(?:t|tons?|tonnes?),?) (?:ea|each)\b(?! side)", r"\1 rated each"),
    (r"\bper pair\b(?=.*\bstands?\b)|(?<=stands )per pair\b|(?<=\dt )per pair\b", "perpair"),
    (r"^(\d+(?:\.\d+)?) ?(t|tons?|tonnes?) stands?\b", r"\1 \2 axle stands"),
    (r"\baxl?e? stnds?\b", "axle stand"),
    (r"\beffective (?:working )?length\b|\bewl\b", "effectivelength"),
]
