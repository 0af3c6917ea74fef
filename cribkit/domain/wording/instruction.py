"""Whole instructions as needs: "Undo the union with an 11 mm flare nut spanner" asks for the spanner.

The thing that is called for comes first, and what is done with it follows after "on", where it can add a measure but
names no other thing. Of what is done, how many there are and words that no table knows are left out: they say nothing
of the tool.
"""

from __future__ import annotations

import re
from functools import cache

from cribkit.domain.wording.clauses import first_act, kept, stripped, what_is_turned
from cribkit.domain.wording.context import demands
from cribkit.domain.wording.speech import plainly
from cribkit.domain.wording.tables import tables
from cribkit.domain.wording.verbs import any_verbs, verb
from cribkit.domain.wording.verbs import words as listed

_ARTICLE = r"(?:an? |the |your |our |some |its |suitable |correct )*"
# How much of it: no pack of such a size is asked for ("Apply 90 g of grease"), and no measure ("a dab of").
_DAB = re.compile(
    r"^(?:(?:about|approximately|around|some|exactly) )?\d+(?:\.\d+)?(?: ?(?:to|-) ?\d+(?:\.\d+)?)? ?"
    r"(?:g|grams?|grammes?|kg|ml|cc|cl|l|litres?|liters?|oz|fl oz|pints?|quarts?|qts?|cm3) of "
    r"(?:the |new |fresh |clean )*"
    r"|^(?:(?:an?|one|two|three|the) )?(?:\d+ ?mm )?(?:(?:thin|light|small|single|even|good|fresh|continuous) )*"
    r"(?:drops?|dabs?|beads?|smears?|films?|coats?|layers?|touch|bit|little|lengths?|pieces?|strips?|pairs?|squirts?)"
    r" of ",
    re.I,
)
_W = re.compile(r"\bw/ ?(?!o\b)(?=[a-z\d])", re.I)  # "w/ torque screwdriver"
# "Rub on threadlocker from a red stick": what it comes in says more of it.
_FROM = re.compile(
    r",? from (?:an? |the )?(?=[^,;:]*\b"
    r"(?:stick|tube|bottle|cartridge|can|tin|tub|aerosol|syringe|sachet|pen|applicator)\b)",
    re.I,
)
# "Fit the socket to a 1/4 drive ratchet": what is there already is put on what is asked for.
_PUT_ON = re.compile(
    r"^(?:fit|attach|connect|put|mount|push|snap|slip) (?:the|this|that|your|its) [^,;:\d]*? (?:to|on|onto|into|in) "
    r"(?P<thing>an? [^,;:]*\b(?:ratchet|bar|bit holder|extension|wrench|spanner|handle|driver|adapter|adaptor)\b.*)$",
    re.I,
)
_STEP = re.compile(
    r"^\s*(?:please |then |now |next,? |first,? |finally,? |step \d+ ?[-.:)]? |(?:caution|warning)[:,] "
    r"|\d{1,2}[.)] (?=[a-z]))+",
    re.I,
)
_AND_REPLACE = re.compile(r"^\s*r ?(?:&|and|/|\+) ?r:? (?=\S)", re.I)  # remove and replace
_TESTED = re.compile(r"^(?:pressure|leak|vacuum|load|bench)[- ]test(?= (?:the|each|a|all|both)\b)", re.I)
_JUMP = re.compile(r"^jump start(?= (?:the|a|any) )", re.I)
# "Drive out the old roll pin and fit a new one, 5 x 30 mm": the old one tells what it is, the new one which.
_ANEW = re.compile(
    r"^[a-z]+(?: out| off| up)? (?:the |an? )?(?:(?:old|worn|used|broken|damaged|perished|leaking) )*"
    r"(?P<thing>[^,;:\d]+?),? and (?:fit|install|(?:drive|tap|press|push|put|knock|slide) in|replace with|use) "
    r"(?:an? |the )?(?:new|fresh) (?P<which>one\b,? ?[^;:]*\d.*|\d[\d./ x-]*(?:mm)?)$",
    re.I,
)
_RENEWED = re.compile(r"^(?:renew|replace|fit|install|refit) ", re.I)
# What only a tool undoes: where none is named the fasteners themselves are not asked for, and a size is the tool's.
_UNDONE = re.compile(
    r"^(?:undo|loosen|slacken|unscrew|unbolt|unfasten|crack)\b(?: off)?(?! .*\bwith\b)[^,;:]*\b"
    r"(?:bolts?|nuts?|screws?|studs?|unions?|capscrews?|setscrews?|plugs?|fasteners?|fixings?)\b(?P<rest>.*)$",
    re.I,
)
_TO_TEMPERATURE = re.compile(r",? to (?:about )?\d+ ?(?:deg|degrees|c|f|°)\b.*$", re.I)
# What stands ready under a load: "Support the van on 6 t axle stands".
_ON = re.compile(
    rf"^(?P<done>.*?\S) (?:on|onto|with|from) (?!\d/\d)(?P<thing>{_ARTICLE}(?:[^,;:]*? )?"
    r"(?:stands?|ramps?|hoist|crane|jack|trestles?|lift|dolly|dollies|chocks?|slings?|support beam|"
    r"heater|hot plate|hotplate)\b.*)$",
    re.I,
)
_USING = re.compile(
    rf"^(?:using|with) {_ARTICLE}(?P<thing>[^;:]+?), "
    r"(?P<done>[a-z]+ (?:(?:open|off|out|up|down|back|loose) )?(?:the|both|all|each|a|an|two) .*)$",
    re.I,
)
# "With an insulated 10 mm socket loosen the lugs".
_WITH_FIRST = re.compile(
    rf"^(?:using|with) {_ARTICLE}(?P<thing>[^,;:]*?) (?P<done>(?:loosen|undo|slacken|tighten|remove|unscrew|"
    r"release|lift|turn|hold|clean|check|measure|fit|press|pull|drive|torque|crack) (?:the|both|all|each|every) .*)$",
    re.I,
)
_VERB = re.compile(r"^[a-z]+ (?:(?:open|off|out|up|down|back|loose) )?", re.I)
# A hole of a size is drilled with a drill of that size.
_HOLE = re.compile(
    r"^(?P<verb>drill|ream|tap|countersink)(?: out)? (?P<done>.*?)\b(?:to |at )?"
    r"(?P<size>m\d[\w. x]*|\d[\d./-]*(?: ?mm| ?in)?)"
    r"(?P<rest>(?: (?:for|before) .*)?)$",
    re.I,
)
# The form of a flare is that of the tool.
_FLARE = re.compile(
    r"^(?:form|make|put) (?:an? |the )?(?P<form>double|single|bubble|inverted)(?: |-)flares? (?P<done>.*?) (?:with|"
    r"using) "
    r"(?:an? |the )?(?P<thing>.*\bflaring tool\b.*)$",
    re.I,
)
_LEFT_HAND = re.compile(r"\b(?:left[- ]hand(?:ed)?|l/?h)\b", re.I)
_HOLE_TOOLS = {"drill": "drill bit", "ream": "reamer", "tap": "tap", "countersink": "countersink"}
_CUT_FROM = re.compile(
    rf"^(?:cut|make|punch)(?: out)? {_ARTICLE}(?:[a-z]+ )*gaskets? (?:from|out of) {_ARTICLE}(?P<thing>.+)$", re.I
)
_AND_FIT = re.compile(
    rf"^(?:clean|wipe|dry|degrease|scrape|clear|inspect|check|remove|discard|lift off|take off|bin|throw away|isolate|"
    rf"disconnect|drain|switch off|turn off|line up|align|raise|lower|lift|centre|jack up|unstake|turn|"
    rf"press in|slacken(?= (?:both|all|the) (?:hose )?clips\b)) "
    rf"[^;:\d]*?,?(?: and| then)+ (?:then )?(?P<act>fit|install|use|put on|apply|renew|screw in|set|place|insert"
    r"|replace(?: it)? with) (?!(?:it|them) (?:down|aside|back)\b)"
    rf"{_ARTICLE}(?P<thing>.+)$",
    re.I,
)
# "Push the lever onto the pin and fit a new E-clip": what is fitted is asked for, where no tool is named.
_PUSHED_AND_FIT = re.compile(
    r"^(?!.*\b(?:with|using|by means of)\b)(?:push|squeeze|press|slide|hook|tap|drill out) "
    r"(?:(?:the|an?|both|each) [^,;:\d]*? )?and (?:then )?(?:fit|install|set|insert|screw in|wind in) "
    r"an? (?:new )?(?P<thing>[^,;:]*\d.*)$",
    re.I,
)
# "Lower the vehicle and tighten the nuts with ...": what comes first asks for nothing.
_AND_ACT = re.compile(
    r"^(?:lower|raise|lift|support|clean|open|close|refit|fit|align|centre|unstake|clear|turn|jack up|line up) "
    r"[^,;:\d]*?,? and "
    r"(?P<act>(?:tighten|loosen|undo|remove|measure|check|unscrew|torque|slacken) .*\b(?:with|using)\b .*)$",
    re.I,
)
# What is put back is there: "Refit the cover and tighten the bolts with ...".
_THERE_ALREADY = re.compile(
    r"^(?:re)?fit (?:the|both|all|each) (?!new\b|.*?\bnew\b.* and )(?:(?!\b(?:with|using)\b)[^,;:\d])*? and ", re.I
)
# "Refit the bearing and secure with a circlip": what holds it is asked for.
_AND_SECURE = re.compile(
    r"^(?:refit|fit|install|slide|push|press)(?: in)? [^;:\d]*?,? and (?:then )?(?:secure|retain|tighten|lock|clamp)"
    rf"(?: it| them)? with (?!.*\busing\b){_ARTICLE}"
    r"(?P<thing>[^,;:]*\b(?:circlip|clip|clamp|snap ring|retaining ring|pin|tie)s?\b.*)$",
    re.I,
)
# What is started by hand is done with a tool only then: "Fit the plug by hand, then torque it with a ...".
_BY_HAND = re.compile(
    r"^(?:(?:re)?fit|(?:re)?install|start|screw in|run in|thread|spin on|enter) [^,;:\d]*? by hand,? (?:and )?then "
    r"(?P<act>(?:tighten|loosen|torque|nip|pinch|finish|secure)\b [^;:]*\b(?:with|using) .*\d.*)$",
    re.I,
)
# Why a thing has a sleeve, where the sleeve is asked for.
_UNHARMED = re.compile(
    r"(?<=\S),? so (?:that )?(?:the|my|your|it|they) ?[a-z ]*?"
    r"(?:(?:are|is) not|aren't|isn't|don't get|doesn't get) (?:scratched|marked|damaged|chipped)\.?$",
    re.I,
)
_SLEEVED = re.compile(r"\b(?:sleeved?|coated|jacketed|plastic|nylon)\b", re.I)
_CHOCK = re.compile(r"^chock (?:the|both|all|its) (?:[a-z]+ )*(?:wheels?|tyres?|axle)\b(?!.* chocks?\b)", re.I)
# The tool comes last: "Loosen the lock nut, 17 mm combination spanner".
_LAST = re.compile(
    r"^(?P<done>[^,;:\d]+)[,;:] (?P<thing>(?:\S+ ){0,6}\S*"
    r"(?:wrench|spanner|socket|skt|key|driver|screwdriver|pliers|puller|bit|ratchet|bar|caliper|micrometer|gauge|"
    r"tester)"
    r"\b.*)$",
    re.I,
)
_REASON = re.compile(r",? (?:there(?:'s| is| are)|because|since the|so (?:that|the|it|they|you)) (?:no )?(.*)$", re.I)
_TAKE = re.compile(
    rf"^(?:(?:for|at|on|to) (?P<done>[^,;:]+?),? (?:take|use|you need|you will need|we need|needs?|fetch|get)|"
    rf"(?P<then>[^;:]*?)(?<! for)[;:,.]? (?:the|each|this|that) (?P<what>[a-z -]+?) "
    r"(?:takes|needs|wants|requires|calls for)) "
    rf"{_ARTICLE}(?P<thing>.+)$",
    re.I,
)
_LABELLED = re.compile(r"^(?P<done>[A-Za-z][A-Za-z' -]*?)\s*: (?P<thing>.+)$")
# "Consumables: brake cleaner", "Unscrew the plugs. Tool: 14 mm spark plug socket".
_TOOL_LIST = re.compile(
    r"^(?:(?P<done>.+?)[.;,] )?(?:(?:special |required )?tools?|consumables?|materials?|parts?)"
    r"(?: (?:list|required|needed))?\s*: (?P<thing>.+)$",
    re.I,
)
# "Caliper bracket bolts 200 N·m, torque wrench 1/2 drive".
_GETS = re.compile(
    r"^(?P<done>[a-z][^,;:\d]*?\b(?:bolts?|nuts?|screws?|plugs?|unions?|studs?|caps?)) "
    r"(?P<value>\d[\d./ -]*(?:ft[- .]?lbs?|in[- .]?lbs?|n[·.]?m)\b), (?P<thing>[^,;]*torque .*)$",
    re.I,
)
# "..., 3/8 drive, torque to 52 ft-lb after", "...; retighten to 16 N·m": what is done with it.
_AND_THEN = re.compile(
    r"^(?P<thing>.+?)(?:[;,.]| -) (?P<done>(?:(?:re)?tighten(?: (?:to|again))?|torque (?:to|plug|bolts?|nuts?|it)"
    r"|refit(?:ting)?(?: (?:at|to))?|reinstall(?: (?:at|to))?|reassembl[ey](?: (?:at|to))?|final torque|renew)\b"
    r"(?! wrench| screwdriver| driver).*)$",
    re.I,
)
# "22 mm crowfoot, 1/2 drive: torque the union".
_THING_FIRST = re.compile(
    r"^(?P<thing>[^:;]+?)\s*: (?P<done>(?!torque (?:wrench|screwdriver|driver|multiplier|angle))[a-z].*)$", re.I
)
_NUMBERED_LABEL = re.compile(r"^(?P<done>[A-Za-z][^:;,]*?)\s*: (?P<thing>.+)$")
_TORQUE = re.compile(
    r"^(?:(?:re)?tighten|(?:torque|set|nip)(?= (?:up|down|to|the|all|each|every|[a-z]+(?: [a-z]+)? to)\b))"
    r"(?: down| up)?"
    r"(?: (?P<done>[^,;:\d]*?))? (?:to|at) (?P<value>\d[^,;:]*?)(?:,| with| using) "
    rf"{_ARTICLE}(?P<thing>[^,;:]*?wrench.*)$",
    re.I,
)
# "Sump plug to 35 Nm with 3/8 torque wrench", "gearbox filler plug out using 17 mm hex bit socket".
_TORQUED = re.compile(
    rf"^(?P<done>[a-z][^,;:\d]*?) to (?P<value>\d[^,;:]*?) (?:with|using) {_ARTICLE}"
    r"(?P<thing>[^,;:]*?(?:wrench|torque (?:screw)?driver).*)$",
    re.I,
)
_USED = re.compile(rf"^(?P<done>[a-z][^,;:\d]*?)(?<! for),? using {_ARTICLE}(?P<thing>.+)$", re.I)
# "The nut is released with a C-spanner", "It is best removed with a strap wrench".
_IS_DONE = re.compile(
    r"^(?P<done>(?:the|all|both|each|every|an?|it|its|this|they|these|those|any|new|most)\b[^;:]*?) "
    r"(?:is|are|(?:must|should|can|may|will|is to|are to|needs? to|has to|have to|ought to)(?: only| then| always)? be"
    r"|gets?) "
    r"(?:(?:best|then|only|also|always|now|usually|easily|normally|[a-z]+ly) )*"
    r"(?!equipped|supplied|marked|provided|compatible|packed|sold|held|associated|covered)"
    r"(?:[a-z-]*(?:ed|en|un|ut|ne|ound|et|ean|ept|eld|wn))\b(?: (?:up|down|off|out|in|home|back|apart|on))?"
    rf"[^;:]*? (?:with|using|by means of) {_ARTICLE}(?P<thing>.+)$",
    re.I,
)
# "A 27 mm socket is required for the hub nut", "You will need a torque wrench to ...".
_NEEDED = re.compile(
    rf"^(?:(?:you|we)(?:'ll| will)? (?:also )?need {_ARTICLE}(?P<asked>[^;:]+?)|{_ARTICLE}(?P<told>[^;:]+?) "
    r"(?:is|are|will be) (?:also )?(?:required|needed|necessary|essential|called for))"
    r"(?:,? (?:for|to|when|on|before|in order to) (?P<done>.+))?$",
    re.I,
)
# What a part is washed in or soaked in.
_DIPPED = re.compile(
    r"^(?:dip|soak|immerse|bathe|wash|rinse|steep|clean) (?P<done>(?!.* (?:with|using) )[^;:]*?) in "
    rf"(?!(?:place|turn|order|position|situ|and|line|the (?:car|vehicle|frame|engine|block)|an? (?:figure|row))\b)"
    rf"{_ARTICLE}(?P<thing>.+)$",
    re.I,
)
_ONTO = re.compile(
    r" (?:to(?: [a-z]+)?|on|onto|into|over|around|round|between|under|behind|in|at|through|against|along|inside|across)"
    r" (?=(?:the|each|all|both|every|its) )",
    re.I,
)


# A remark on the hand of what is worked on says nothing of the thing: "...; the thread may be left-hand".
_LATER_SAID = re.compile(
    r"; ?(?:the|its|this|some|both) (?:threads?|nuts?|bolts?|screws?) [a-z ]*left[- ]hand\w*$", re.I
)
# What is held in the meantime with a thing of its own size: "Hold a 6 mm Allen key in the stud while undoing ...".
_MEANWHILE = re.compile(
    r"^(?P<held>(?:hold|insert|use|fit) an? [^,;:]*?\d[^,;:]*?),? (?:while|whilst) [a-z]+ing [^;:]*\bwith an? ", re.I
)
# The tool in brackets after what is done: "Back off the locknut (13 mm open-ended spanner), then set the clearance".
_IN_BRACKETS = re.compile(
    r"^(?P<done>[^()\d]+) \((?P<thing>(?=[^()]*\d)"
    r"(?![^()]*\b(?:\d{1,2}|five|six|seven|eight|nine|ten|twelve) keys\b)[^()]*\b"
    r"(?:wrench|spanner|socket|skt|key|driver|screwdriver|bit|pliers|puller|punch|hammer|gauge)s?\b[^()]*)\)",
    re.I,
)
# Two tools that work together: either is asked for.
_TOGETHER = re.compile(
    r"^(?P<one>[^,;:]*\bsocket),? and an? (?P<other>(?:long |short |\d/\d[a-z\" -]* )?"
    r"(?:breaker bar|ratchet|t[- ]bar|extension|torque wrench))$",
    re.I,
)

# "Use a swivel joint with the air wrench": what is there already is what the thing asked for goes on.
_USE_ON = re.compile(
    r"^use (?:an? |the )?(?P<thing>[^,;:]*\b(?:sockets?|joint|extension(?: bar)?|adapt[eo]r)\b(?: ?\([^()]*\))?) "
    r"(?:with|on|under) "
    r"(?P<held>(?:the|your) (?:(?:air|impact|rattle|windy|pneumatic) (?:wrench|gun|driver)|ratchet))$",
    re.I,
)


def _held_meanwhile(text: str) -> str:
    found = _MEANWHILE.match(text)
    return found["held"] if found else text


# What an instruction may have beside its verb. Without any of these marks, of the words in `cues` of
# data/instruction.toml, and of a verb or a word for the manner in front, a text is none.
_MARKS = frozenset(":;()&!?+")


def _plain(text: str) -> bool:
    """Whether the text can only name a thing: most do, and the searches below are many."""
    if not _MARKS.isdisjoint(text) or text.endswith(".") or " - " in text or text[:1].isspace():
        return False
    lower = text.lower()
    words = lower.replace(",", " ").split()
    if (
        not words
        or "w/" in lower
        or not listed("cues").isdisjoint(words)
        or words[0] in listed("manners")
        or words[0].endswith("ly")
    ):
        return False
    return not verb(text) and not _AND_REPLACE.match(text)


def called_for(text: str) -> str:
    """The text with the thing that it calls for in front; a text that is no instruction stays as it is."""
    if _plain(text):
        return plainly(text)
    if found := _BY_HAND.match(text.strip()):
        return called_for(found["act"])
    if _SLEEVED.search(text):
        text = _UNHARMED.sub("", text.strip())
    bare = _REASON.sub(r", for \1", _STEP.sub("", _W.sub("with ", plainly(text.strip()))).rstrip(" ."))
    bare = _TESTED.sub("test", _AND_REPLACE.sub("Replace ", stripped(bare)))
    bare = _held_meanwhile(_LATER_SAID.sub("", bare))
    bare = _JUMP.sub("jump-start", bare)
    if verb(bare) and (found := _ANEW.match(bare)):
        return f"{found['thing']}, {found['which'].removeprefix('one').strip(' ,')}"
    if verb(bare) or _IS_DONE.match(bare):
        bare = kept(bare)
    if found := _USE_ON.match(bare):
        return f"{found['thing']}, for {found['held']}"
    if found := _AND_SECURE.match(bare):
        return found["thing"]
    if _RENEWED.match(bare) and not (_AND_ACT.match(bare) and _THERE_ALREADY.match(bare)):
        bare = first_act(bare)
    if found := _AND_ACT.match(bare):
        return called_for(found["act"])
    if found := _IS_DONE.match(bare):
        return _turned(_then(_DAB.sub("", found["thing"])), found["done"])
    if found := _NEEDED.match(bare):
        return _turned(found["asked"] or found["told"], found["done"] or "")
    if found := _TAKE.match(bare):
        return _turned(found["thing"], found["done"] or found["what"])
    if found := _TORQUE.match(bare):
        done = f", for {found['done']}" if found["done"] else ""
        return f"{found['thing']}, {found['value']}{done}"
    if found := _TOOL_LIST.search(bare):
        return _turned(found["thing"], found["done"] or "")
    if found := _GETS.match(bare):
        return f"{found['thing']}, {found['value']}, for {found['done'][len(verb(bare)) :].strip()}"
    if (found := _AND_THEN.match(bare)) and not verb(bare):
        return _turned(called_for(found["thing"]), found["done"])
    if (found := _THING_FIRST.match(bare)) and not verb(bare) and any(map(str.isdigit, found["thing"])):
        first = found["done"].split(" ")[0].lower()
        if verb(found["done"]) or first in any_verbs():
            return _turned(found["thing"], found["done"][len(first) :])
    if found := _TORQUED.match(bare):
        return f"{found['thing']}, {found['value']}, for {found['done'][len(verb(bare)) :].strip()}"
    if (found := _USED.match(bare)) and not verb(bare):
        return _turned(_then(found["thing"]), found["done"])
    if found := _USING.match(bare) or _WITH_FIRST.match(bare):
        return _turned(found["thing"], _VERB.sub("", found["done"]))
    if found := _PUT_ON.match(bare):
        return re.sub(rf"^{_ARTICLE}", "", found["thing"], flags=re.I)
    begins = verb(bare)
    if begins and (found := _NUMBERED_LABEL.match(bare)):
        return _turned(called_for(found["thing"]), found["done"][len(begins) :])
    if found := _LABELLED.match(bare):
        if begins or not any(char.isdigit() for char in found["done"]):
            return _turned(called_for(found["thing"]), found["done"][len(begins) :]) if begins else text
        return text
    if not begins:
        return bare if bare != text.strip().rstrip(" .") else text
    if found := _IN_BRACKETS.match(bare[len(begins) :].strip()):
        return _turned(found["thing"], found["done"])
    if found := _FLARE.match(bare):
        return _turned(f"{found['form']} flare {found['thing']}", found["done"])
    if found := _DIPPED.match(bare):
        return _turned(_then(found["thing"]), found["done"])
    if found := _CUT_FROM.match(bare):
        return found["thing"]
    if _CHOCK.match(bare):
        return "wheel chocks"
    if found := _PUSHED_AND_FIT.match(bare):
        return found["thing"]
    if found := _AND_FIT.match(bare):
        led = found["act"] in ("fit", "install") and " with " in found["thing"]  # the cover with a new gasket
        return _with(f"fit {found['thing']}", "fit") if led else found["thing"]
    if (found := _HOLE.match(bare)) and not re.search(r"\b(?:with|using|by means of)\b", bare, re.I):
        hand = ", left-hand" if _LEFT_HAND.search(found["done"]) else ""
        return f"{_HOLE_TOOLS[found['verb'].lower()]} {found['size']}{hand}"
    if begins.lower() in _WORN:
        return _object(bare, begins)
    return _with(bare, begins) or _on(bare, begins) or _last(bare, begins) or _undone(bare) or _object(bare, begins)


# What is worn comes first, whatever is worn with it: "Wear insulating gloves with leather over-gloves".
_WORN = frozenset({"wear", "don"})


def _on(text: str, begins: str) -> str:
    """What a load is set on."""
    found = _ON.match(_NEXT.sub("", text)[len(begins) :])
    return re.sub(rf"^{_ARTICLE}", "", _TO_TEMPERATURE.sub("", found["thing"]), flags=re.I) if found else ""


def _undone(text: str) -> str:
    """ "Undo the six bolts, 13 mm": a tool of 13 mm, not named."""
    found = _UNDONE.match(text)
    return f"tool {found['rest'].strip(' ,;:')}" if found else ""


def _last(text: str, begins: str) -> str:
    """ "Loosen the lock nut, 17 mm combination spanner": the tool comes last."""
    found = _LAST.match(text[len(begins) :].strip())
    return _turned(found["thing"], found["done"]) if found and not found["thing"].startswith("for ") else ""


# What a thing is "coated with" is not what it is done with.
_LUBRICATED = re.compile(r"\b(?:lubricated|coated|smeared|wetted|filled|moistened|greased|oiled|soaked)$", re.I)


# The shank that a bit has, the band of a clip or the base of a dial gauge is not what it is fitted with.
_SHANKED = re.compile(
    r"(?:an? )?\d[\d/.]*(?: ?mm| ?in\.?| ?\")? "
    r"(?:hex(?:agon)? shank|band|bore|flange|collar|hole|thread|pitch|seat|eye|stem|overlap|grip)\b"
    r"|(?:an? |its )?mag(?:netic)? (?:base|stand)\b",
    re.I,
)
_AIR_GUN = re.compile(r"\bair gun\b", re.I)
_BIT = re.compile(r"(?<!drill )\bbit\b", re.I)  # what a hole is drilled with


def _with(text: str, begins: str) -> str:
    """What stands after "with" or "using"; what is done follows it."""
    for word in ("using", "with", "by means of"):
        done, led, thing = text.partition(f" {word} ")
        if led and thing.strip() and not _LUBRICATED.search(done) and not _SHANKED.match(thing):
            thing = _DAB.sub("", thing)
            if found := _TOGETHER.match(thing):
                return f"{found['one']} or {found['other']}"
            if begins.lower().startswith("drill"):
                thing = _BIT.sub("drill bit", thing, count=1)
            if begins.lower().startswith("blow"):
                thing = _AIR_GUN.sub("blow gun", thing)
            return _turned(_then(re.sub(rf"^{_ARTICLE}", "", thing, flags=re.I)), done[len(begins) :])
    return ""


# What is done next says nothing of the thing.
_NEXT = re.compile(
    r",? (?:and "
    r"(?=(?:look|check|wait|watch|take|pump|undo|release|lower|raise|turn|wipe|leave|see|then|hold|let|keep|turn|pull|"
    r"push|lift|tap|do|remove|fit|clean|"
    r"lay|ease|put|note|keep|set|mop|read|throw|brush|blow|prove|press (?:in|on|home)|drive (?:in|on|home))\b)"
    r"|(?:holding|keeping|supporting|steadying) (?=(?:the|it|them|both)\b)"
    r"|then (?!.*\b(?:with|using)\b)|taking care "
    r"|(?:before|until|till|while|as|once|when|so that) (?=(?:you|it|the|they|[a-z]+ing|assembly|flush|tight)\b))(.*)$",
    re.I,
)


def _then(thing: str) -> str:
    """The thing without what is done next; the measures of that are kept."""
    if found := _AND_THEN.match(thing):
        return _turned(_then(found["thing"]), found["done"])
    return first_act(_NEXT.sub("", thing))


def _object(text: str, begins: str) -> str:
    """ "Apply threadlocker to the bolts", "Fit a new gasket": the thing itself comes after the verb."""
    thing = _DAB.sub("", text[len(begins) :].strip())
    thing = _then(re.sub(rf"^{_ARTICLE}", "", thing, flags=re.I))
    return _ONTO.sub(", for ", _FROM.sub(", ", thing), count=1)


# So many of them: a number before a word that is no unit and no trait of a tool.
_MANY = re.compile(
    r"(?<![\d/.,-])(?<!\bno )(?<!\bno\. )(?<!\bnumber )(?<!\bsize )\b(?:two|three|four|five|six|seven|eight|nine|ten|"
    r"eleven|twelve|1?\d) "
    r"(?=(?!mm|mils?\b|milli|inch|in\b|point|pt|sided|jaw|leg|way|pin|speed|stroke|ton|amp|volt|eighth|sixteenth|"
    r"bar\b|psi\b|"
    r"kpa|kilo|deg|watt|hole|cell|core|ply|hour|lobe|"
    r"and\b|by\b)[a-z]{3}|(?-i:[A-Z]{2,}\d? )|t\d\d? |m\d\d? (?:bolts?|nuts?|screws?|studs?))"
    r"|\b(?:two|three|four|five|six|seven|eight|nine|ten|twelve) (?=\d+(?:\.\d+)? ?mm [a-z])",
    re.I,
)


# "Remove the 12 mm bolts with a 12 mm socket": the socket says its own size.
_SIZED = re.compile(r"\d ?(?:mm|mil)\b", re.I)
_OF_BOLTS = re.compile(r"\bm?\d{1,2} ?(?:mm )?(?=(?:bolts?|nuts?|screws?|studs?)\b)", re.I)


@cache
def _telling() -> frozenset[str]:
    """The words of what is done that may tell the tool."""
    return tables().known | demands() | listed("telling")


def _known(done: str) -> str:
    """Of what is done the words that the tables know, alone or as a set phrase, and the measures."""
    known = _telling()
    words = [word for word in re.split(r"\s+", done) if word]
    phrased = _in_phrases([word.lower().strip(".,;:()") for word in words])
    kept = (
        word
        for place, (before, word) in enumerate(zip(["", *words], words, strict=False))
        if any(char.isdigit() for char in word)
        or before.replace(".", "").isdigit()  # its unit
        or place in phrased
        or {plain := word.lower().strip(".,;:()"), plain.rstrip("s")} & known
        or ("-" in plain and not known.isdisjoint(plain.split("-")))  # tamper-proof, left-hand, five-lobe
    )
    return " ".join(kept)


def _in_phrases(words: list[str]) -> set[int]:
    """The places of the words that make a spelling with those beside them."""
    spellings, longest = tables().spellings, tables().longest
    found: set[int] = set()
    for place, word in enumerate(words):
        for length in range(1, longest.get(word, 0) + 1):
            phrase = tuple(words[place : place + length])
            if phrase in spellings or (*phrase[:-1], phrase[-1].rstrip("s")) in spellings:
                found |= set(range(place, place + length))
    return found


_PLACES = re.compile(r"\bat (?:two|three|four|six|eight|several|\d+) (?:points|places|positions)\b", re.I)


_HOW = re.compile(
    r"\b(?:crosswise|diagonally|evenly|alternately|gradually|(?:hand|finger)[- ]tight|in (?:sequence|stages|turn))\b",
    re.I,
)


_UNMARRED = re.compile(r"\bwithout (?:scratching|marking|marring|gouging|damaging)\b", re.I)


def _turned(thing: str, done: str) -> str:
    thing = what_is_turned(thing)
    if _UNMARRED.search(done):
        thing = f"{thing}, nonmarring"
    done = _HOW.sub("", _MANY.sub("", _PLACES.sub("", done.strip(" ,"))))
    done = _known(_OF_BOLTS.sub("", done) if _SIZED.search(thing) else done)
    return f"{thing}; on {done.replace(',', ' ')}" if done else thing
