"""From the crib's items to the parts of a way: sockets and bits for a head, adapters, extensions, joints."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import NamedTuple

from cribkit.desk.candidates import Finder, Found
from cribkit.domain.problem import BadInput
from cribkit.domain.procedure import Reach as Wish
from cribkit.domain.procedure import TorqueNeed
from cribkit.domain.quantity import parse_length_mm
from cribkit.domain.stock.item import Condition, Item
from cribkit.domain.torque.reach import Found as Ways
from cribkit.domain.torque.reach import Part, Reach, Role, Way, find_ways
from cribkit.domain.wording import Judgement, Meaning, query_terms

FAMILIES = {Role.ADAPTER: "adapter", Role.EXTENSION: "extension", Role.JOINT: "universal-joint"}


class Kit(NamedTuple):
    """The parts on hand for one torque need, and those owned but not on the shelf."""

    asked: bool  # whether a way has to be found at all
    understood: bool  # whether the head's text was
    drivers: tuple[Part, ...]
    parts: tuple[Part, ...]
    away: tuple[Part, ...]  # owned, out or unfit
    found: dict[str, Found]


class Reacher:
    """Finds kits and ways in one crib; each question once."""

    def __init__(self, finder: Finder) -> None:
        self.finder = finder
        self.limits = finder.crib.square_limits()
        self.kits: dict[tuple[str, str, bool, bool], Kit] = {}
        self.known: dict[tuple[str, tuple[str, str, bool, bool], Reach], Ways] = {}

    def kit(self, need: TorqueNeed) -> Kit:
        """The parts for a fastener's head and the wished reach."""
        key = self.key(need)
        if key not in self.kits:
            self.kits[key] = make_kit(self.finder, need)
        return self.kits[key]

    def key(self, need: TorqueNeed) -> tuple[str, str, bool, bool]:
        """What the kit depends on."""
        wish = need.reach or Wish()
        return need.head, wish.adapter, wish.extension_mm is not None, wish.joint

    def ways(self, need: TorqueNeed, square: str, torque_nm: float, everything: bool = False) -> Ways:
        """The ways from a wrench's square; with `everything`, also over parts that are not on the shelf."""
        kit, want = self.kit(need), wanted_reach(need, torque_nm)
        if everything:
            drivers = [*kit.drivers, *drivers_of(kit.away)]
            return find_ways(square, drivers, [*kit.parts, *others_of(kit.away)], want, self.limits)
        key = square, self.key(need), want
        if key not in self.known:
            self.known[key] = find_ways(square, kit.drivers, kit.parts, want, self.limits)
        return self.known[key]

    def preferred(self, need: TorqueNeed, ways: Sequence[Way], pulled: frozenset[str] = frozenset()) -> list[Way]:
        """The same ways: first over what is pulled anyway, which is also what the procedure means by the socket;
        then single pieces before pieces of a set: a set that stays on its shelf serves others."""
        found = self.kit(need).found

        def order(way: Way) -> tuple[int, int, int]:
            more = len(set(way.tags) - pulled)
            return way.adapters, more, sum(bool(found[tag].judgement.member) for tag in way.tags)

        return sorted(ways, key=order)


def wanted_reach(need: TorqueNeed, torque_nm: float) -> Reach:
    """The procedure's wish as the search wants it."""
    wish = need.reach or Wish()
    return Reach(torque_nm, wish.extension_mm, wish.joint, bool(wish.adapter))


def make_kit(finder: Finder, need: TorqueNeed) -> Kit:
    """Look up everything that could stand on the way."""
    wish = need.reach or Wish()
    heads = finder.words.heads(need.head) if need.head else ()
    found: list[tuple[Role, Found]] = [
        (Role.DRIVER, entry) for head in heads for entry in finder.search(head, "tool") if entry.matches
    ]
    roles = [Role.ADAPTER]
    roles += [Role.EXTENSION] if wish.extension_mm is not None else []
    roles += [Role.JOINT] if wish.joint else []
    found += [(role, entry) for role in roles for entry in of_family(finder, FAMILIES[role])]
    if wish.adapter:
        found += [(Role.OFFSET, entry) for entry in finder.find(wish.adapter, "tool") if entry.matches]
    there = [part for role, entry in found if usable(entry.item) for part in parts_of(role, entry)]
    away = [part for role, entry in found if not usable(entry.item) for part in parts_of(role, entry)]
    return Kit(
        asked=bool(need.head or wish.adapter),
        understood=bool(heads) or not need.head or bool(wish.adapter),
        drivers=drivers_of(there),
        parts=others_of(there),
        away=tuple(away),
        found={entry.item.tag: entry for _, entry in found},
    )


def of_family(finder: Finder, family: str) -> Iterator[Found]:
    """Every item of a family, whatever its squares and length: the search for a way looks at those itself."""
    wanted = Meaning(text=family, kind="tool", family=family)
    for item in finder.crib.candidates(query_terms(wanted), "tool"):
        if item.meaning.family == family:
            yield Found(item, Judgement("match", 100.0, family))
        for member in item.meaning.members:
            if member.family == family:
                yield Found(item, Judgement("match", 99.0, family, member.text))


def usable(item: Item) -> bool:
    """On the shelf and fit."""
    return item.condition is Condition.OK and item.on_hand >= 1


def parts_of(role: Role, found: Found) -> Iterator[Part]:
    """An item as parts of a way; a set is the member that fits."""
    meaning = taken(found)
    if meaning.drive_in:
        text = found.judgement.member or found.item.description
        yield Part(found.item.tag, role, meaning.drive_in, meaning.drive_out, length_mm(meaning), text)


def taken(found: Found) -> Meaning:
    """The meaning of what is really used: the member of a set, or the item."""
    whole = found.item.meaning
    return next((member for member in whole.members if member.text == found.judgement.member), whole)


def length_mm(meaning: Meaning) -> float | None:
    """The length that a description states; None where it states none, or more than one."""
    text = dict(meaning.attributes).get("length", "")
    value, _, unit = text.partition(" ")
    if unit == "mm" and value.isdecimal():
        return float(value)  # the usual case, without the reader of lengths: start-up counts
    try:
        return parse_length_mm(text) if text else None
    except BadInput:
        return None


def drivers_of(parts: Sequence[Part]) -> tuple[Part, ...]:
    """The parts that grip the fastener."""
    return tuple(part for part in parts if part.role is Role.DRIVER)


def others_of(parts: Sequence[Part]) -> tuple[Part, ...]:
    """The parts between wrench and driver."""
    return tuple(part for part in parts if part.role is not Role.DRIVER)
