"""The rule for a match. docs/matching.md tells it in plain words."""

from __future__ import annotations

from cribkit.domain.wording.attributes import Pair, hold, same_model
from cribkit.domain.wording.implied import USUAL_SHANK
from cribkit.domain.wording.leftovers import unnamed, unread_doubts
from cribkit.domain.wording.meaning import MOST_DOUBTED, NONE, Judgement, Meaning
from cribkit.domain.wording.tables import OPEN_RULE, kin
from cribkit.domain.wording.traits import hold_traits

# How it is packed makes no item the better or the worse.
UNCOUNTED = frozenset({"dispensed", "pack", "amount", "finer", "also", "pieces", "presumed"})
# Members that a list of contents tells apart by their forms: the straight pick is not the hook.
TOLD_APART = frozenset({"pick"})
# Screwed in by fine threads as often as by coarse ones: common practice, no source.
OFTEN_FINE = frozenset({"sump-plug", "spark-plug", "glow-plug", "grease-nipple", "brake-pipe-nut"})


def judge(need: Meaning, item: Meaning) -> Judgement:
    """Whether the item (or a member of it) is what the need, or one of its alternatives, asks for."""
    asked_for = (need, *need.others)
    best = max((_judge_one(asked, item) for asked in asked_for), key=lambda found: found.rank)
    whole = "set" in need.traits or need.family.endswith("-set")
    part = need.family != item.family and item.family.endswith("-set")
    if item.members and not (whole and need.family == item.family) and (part or best.status == "review"):
        best = NONE  # its contents are known: they say what it has
    for member in item.members:
        found = max((_judge_one(asked, member) for asked in asked_for), key=lambda found: found.rank)
        if member.family in TOLD_APART and "not stated" in found.weakness:
            continue  # a list of forms leaves none open
        if found.rank > best.rank and found.status != "none":
            why = f"{found.why}; in the set {item.text}"
            best = Judgement(found.status, found.score - 1, why, member.text, found.weakness)
    return best


def _judge_one(need: Meaning, item: Meaning) -> Judgement:
    if not need.family or not item.family:
        return unnamed(need, item)
    bond = kinship(need.family, item.family)
    if bond is None:
        return NONE
    if bond and need.family == "combination-wrench" and " x " in dict(item.attributes).get("size", ""):
        return NONE  # two rings, and no open end
    if bond and item.family == "t-bolt-clamp" and "worm" in need.text.lower():
        return NONE  # closed by a bolt, not by a worm
    doubts = [bond] if bond else []
    loss = 0.0 if need.family == item.family else 3.0
    asked, has = dict(need.attributes), dict(item.attributes)
    pair = Pair(need, item, asked, has)
    if "inner" in asked and "inner" not in has and has.get("thread", "").endswith("BSP"):
        return NONE  # a seal of the other series
    for name, value in asked.items():
        verdict = hold(name, value, pair)
        if verdict is None:
            return NONE
        doubts += verdict
    if has.get("mechanism") == "non-graduated" and "mechanism" not in asked and "range" in asked:
        doubts.append("it has no scale: it is set on a torque tester")
    if has.get("presumed", "") in asked:
        doubts.append(f"the {has['presumed']} is not stated")
    for name in has.keys() - asked.keys():
        rule = kin().rule(name) or OPEN_RULE
        if has[name] == rule.default or name in UNCOUNTED or (name == "single_of" and "dims" in asked):
            continue
        if name == "thread" and " to " in has[name]:
            continue
        if rule.unasked == "none" or (name == "points" and has[name] in SQUARE_HEADS):
            return NONE
        if name == "pitch_class" and has[name] == "fine" and "thread" in asked:
            if need.family in OFTEN_FINE:
                if not same_model(asked, has):  # else the vehicle tells which one it is
                    doubts.append("its thread is fine, and no pitch was asked for")
                continue
            return NONE  # a thread named without a pitch is coarse
        loss += 0.5
        if name == "form" and need.family == "needle-nose-pliers" and has[name] == "bent":
            doubts.append("bent was not asked for")
        if name == "shank" and need.family == "bit-holder":
            doubts.append(f"it takes bits of {has[name]}, not the usual {USUAL_SHANK}")
        if rule.unasked == "review" and not _left_open(name, has[name], need):
            doubts.append(f"{kin().called(name)} {has[name]} was not asked for")
    verdict = hold_traits(need, item)
    if verdict is None:
        return NONE
    doubts += verdict
    loss += 2.0 * sum(not trait.startswith("not-") for trait in item.traits - need.traits)
    if bond and doubts[1:] and (item.kind == "consumable" or doubts[2:]):
        return NONE  # perhaps another kind of thing, and it does not even say what is asked for
    strange = unread_doubts(need, item)
    if strange is None:
        return NONE
    doubts += strange
    agreed = [value for name, value in need.attributes if has.get(name)]
    return _verdict(need, item, agreed, doubts, loss)


def _left_open(name: str, value: str, need: Meaning) -> bool:
    """Whether what only the item says is left open by every need of this kind."""
    if need.family == "torque-multiplier":
        return name in ("drive_in", "drive_out")
    if need.family in _TOLD_BY_VEHICLE and name == "thread":
        return "model" in dict(need.attributes)
    if need.family == "general-grease" and name == "soap":
        return "thickener" not in dict(need.attributes)
    hexagon = name == "drive_in" and "hex_end" in dict(need.attributes)  # the hexagon that a drill takes
    return hexagon or (need.family, name, value) == ("wrench-set", "set_of", "combination")  # the usual set


# Threaded parts of which the vehicle tells which one it is.
_TOLD_BY_VEHICLE = frozenset({"sump-plug", "wheel-stud", "wheel-nut", "wheel-bolt"})
# Sockets for square heads: never meant where nothing is said.
SQUARE_HEADS = frozenset({"4", "8"})


def _verdict(need: Meaning, item: Meaning, agreed: list[str], doubts: list[str], loss: float) -> Judgement:
    why = ", ".join([item.family.replace("-", " "), *agreed, *sorted(need.traits & item.traits)])
    if doubts:
        return Judgement("review", max(MOST_DOUBTED - loss - 5 * len(doubts), 5.0), why, weakness="; ".join(doubts))
    return Judgement("match", max(100.0 - loss, 61.0), why)


# Families so wide that an item named only so may be the special thing that is asked for.
VAGUE = frozenset({"crowfoot", "wrench"})


def kinship(asked: str, has: str) -> str | None:
    """ "" where the item's family meets the need's, a doubt where it may, None where it does not."""
    if asked == has:
        return ""
    told, wanted = kin().family(has), kin().family(asked)
    if told and asked in told.parents:
        return ""
    if told and asked in told.perhaps:
        return f"{has} for {asked}"
    if wanted and (has in wanted.parents or (has in VAGUE and has in wanted.perhaps)):
        return f"may not be a {asked}"
    return None


# Families that may stand in for each other, but are not the same thing: a line against one says nothing of the other.
APART = frozenset(
    {
        ("wiping-rag", "wipe"),
        ("wipe", "wet-wipe"),
        ("penetrating-oil", "multi-purpose-spray"),
        ("terminal-grease", "petroleum-jelly"),
        ("power-steering-fluid", "central-hydraulic-fluid"),
        ("open-end-wrench", "combination-wrench"),
        ("ring-wrench", "combination-wrench"),
    }
)


def forbidden(never: Meaning, item: Meaning) -> bool:
    """Whether the item is what a `never` line means, or leaves open whether it is.

    What the item says beyond the line does not free it; another family, or a stated attribute that differs, does.
    """
    return any(_forbids(line, one) for line in (never, *never.others) for one in (item, *item.members))


def _forbids(never: Meaning, item: Meaning) -> bool:
    if (never.family, item.family) in APART:
        return False
    if never.family == "oil" and item.family.endswith("-oil"):  # mineral oil, whatever it is for
        never = never._replace(family=item.family)
    if "cure" in dict(never.attributes) and "sensor-safe" in item.traits and "cure" not in dict(item.attributes):
        item = item._replace(attributes=tuple(sorted({**dict(item.attributes), "cure": "neutral"}.items())))
    named = {name for name, _ in never.attributes} | {"thread", "strength"}
    kept = tuple(pair for pair in item.attributes if pair[0] in named or pair[0] in KEEPS_APART)
    plain = item._replace(attributes=kept, traits=item.traits & never.traits, members=(), unread=())
    return _judge_one(never, plain).status != "none"


# What an item says without being asked that still tells its kind, as the bolt grade tells steel.
KEEPS_APART = frozenset({"bolt_grade", "wool"})
