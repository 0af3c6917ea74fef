"""The way from a torque wrench's square to the fastener, out of parts in the crib.

Wrench -> at most two adapters, an extension, a universal joint or an offset adapter where they are asked for -> the
socket or bit that fits the head (its driver). An offset adapter may itself grip the fastener. The smallest square on
the way bears the torque (squares.toml).
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator, Mapping, Sequence
from enum import StrEnum
from functools import cache
from typing import NamedTuple

from cribkit.domain.tables import table
from cribkit.domain.torque.wanted import at_most

MOST_ADAPTERS = 2
MOST_WAYS = 24  # other ways matter only so that units can be shared between needs
ALIKE = 8  # tags of interchangeable parts that the search looks at; more would only repeat the same ways
TOO_LONG = 1.5  # an extension longer than this many times the asked length may not fit where it must go


class Role(StrEnum):
    """What a part does on the way."""

    ADAPTER = "adapter"  # from one square to another
    EXTENSION = "extension"  # in line with the square: no correction (TM 1-1500-204-23-9 figure 8-15)
    JOINT = "joint"  # universal joint
    OFFSET = "offset"  # crowfoot or other offset adapter
    DRIVER = "driver"  # the socket or bit that fits the head


class Part(NamedTuple):
    """A part as reach sees it: the square that it takes, the square that it gives ("": it grips the fastener)."""

    tag: str
    role: Role
    female: str
    male: str = ""
    length_mm: float | None = None
    text: str = ""


class Reach(NamedTuple):
    """What the procedure asks for between wrench and fastener."""

    torque_nm: float = 0.0  # the most that the way must bear
    extension_mm: float | None = None  # None: none asked for; 0: any length
    joint: bool = False
    offset: bool = False


class Way(NamedTuple):
    """One way that works. `parts` are (tag, role) from the wrench to the fastener."""

    parts: tuple[tuple[str, str], ...]
    smallest: str  # the square that bears the least
    limit_nm: float | None  # what it bears; None where the table has no such square
    adapters: int
    warnings: tuple[str, ...] = ()
    doubts: tuple[str, ...] = ()  # what a person must confirm before this way is trusted

    @property
    def tags(self) -> tuple[str, ...]:
        """Every tag on the way, once for each unit that it takes."""
        return tuple(tag for tag, _ in self.parts)


class Found(NamedTuple):
    """The ways, best first; without any, the reason ("no-reach" or "drive-too-small") and why."""

    ways: tuple[Way, ...]
    reasons: tuple[str, ...] = ()
    why: tuple[str, ...] = ()


class _Walk(NamedTuple):
    """The search: what may still be used, what is needed before the driver, and the chains found so far."""

    want: Reach
    by_square: Mapping[str, tuple[Part, ...]]
    found: list[tuple[Part, ...]]


@cache
def squares() -> dict[str, float]:
    """Square -> what it bears in N·m."""
    rows = table("cribkit.domain.torque", "squares.toml")["limit_nm"]
    return {square: float(limit) for square, limit in rows.items()}


@cache
def square(text: str) -> str:
    """One name for a square: "1/4 in", "6.3 mm" and "1/4" are "1/4"."""
    bare = " ".join(text.lower().replace('"', " ").replace("drive", " ").replace("inch", " ").split())
    hexagon = bare.endswith("hex")
    bare = bare.removesuffix("hex").strip().removesuffix("in").removesuffix("mm").strip()
    names: dict[str, str] = table("cribkit.domain.torque", "squares.toml")["also"]
    name = names.get(bare, bare)
    return f"{name} hex" if hexagon else name


def ways(
    wrench_square: str,
    drivers: Iterable[Part],
    parts: Iterable[Part],
    want: Reach,
    limits: Mapping[str, float] | None = None,
    most: int = MOST_WAYS,
) -> tuple[Way, ...]:
    """Every way worth knowing, best first; see `find_ways` for the reason where there is none."""
    return find_ways(wrench_square, drivers, parts, want, limits, most).ways


def find_way(
    wrench_square: str,
    drivers: Iterable[Part],
    parts: Iterable[Part],
    want: Reach,
    limits: Mapping[str, float] | None = None,
) -> Way | None:
    """The best way, or None."""
    return next(iter(ways(wrench_square, drivers, parts, want, limits, 1)), None)


def find_ways(
    wrench_square: str,
    drivers: Iterable[Part],
    parts: Iterable[Part],
    want: Reach,
    limits: Mapping[str, float] | None = None,
    most: int = MOST_WAYS,
) -> Found:
    """The ways from the wrench's square to the fastener: fewest adapters first, then the stronger, then by tag.

    `limits` are the crib's own figures for squares, in N·m; they go before the table's.
    """
    bears = {**squares(), **(limits or {})}
    start = square(wrench_square)
    all_ways: list[Way] = []
    strong: list[Way] = []
    kits = sorted({*drivers, *parts}, key=lambda part: (part.role, part.tag))
    by_square = by_female(few_alike(kits))
    for adapters in range(MOST_ADAPTERS + 1):
        walk = _Walk(want, by_square, [])
        go(walk, start, (), adapters)
        all_ways += (judged(chain, start, want, bears) for chain in walk.found)
        strong = [way for way in all_ways if way.limit_nm is None or at_most(want.torque_nm, way.limit_nm)]
        if len(strong) >= most:
            break  # more adapters only make worse ways
    if not all_ways:
        return Found((), ("no-reach",), (missing(kits, start, want),))
    if not strong:
        best = max(all_ways, key=lambda way: way.limit_nm or 0.0)
        text = f"the {best.smallest} square bears {best.limit_nm:g} N·m, the fastener asks for {want.torque_nm:.4g} N·m"
        return Found((), ("drive-too-small",), (text,))
    return Found(tuple(sorted(strong, key=preference)[:most]))


def few_alike(parts: Sequence[Part]) -> Iterator[Part]:
    """The parts without the many that are alike in all but their tag."""
    seen: Counter[tuple[object, ...]] = Counter()
    for part in parts:
        alike = (part.role, square(part.female), square(part.male), part.length_mm)
        seen[alike] += 1
        if seen[alike] <= ALIKE:
            yield part


def by_female(parts: Iterable[Part]) -> dict[str, tuple[Part, ...]]:
    """Parts by the square that they take."""
    found: dict[str, list[Part]] = {}
    for part in parts:
        found.setdefault(square(part.female), []).append(part)
    return {name: tuple(some) for name, some in found.items()}


def go(walk: _Walk, at: str, chain: tuple[Part, ...], adapters: int) -> None:
    """Depth first through the parts; every chain with exactly the adapters allowed, and all that is asked for."""
    for part in walk.by_square.get(at, ()):
        if part in chain or not allowed(walk.want, part, chain, adapters):
            continue
        longer = (*chain, part)
        if grips(part):
            if adapters == 0 and complete(walk.want, longer):
                walk.found.append(longer)
            continue
        go(walk, square(part.male), longer, adapters - (part.role is Role.ADAPTER))


def grips(part: Part) -> bool:
    """Whether the part is the last one, on the fastener."""
    return part.role is Role.DRIVER or (part.role is Role.OFFSET and not part.male)


def allowed(want: Reach, part: Part, chain: tuple[Part, ...], adapters: int) -> bool:
    """Whether the part may come next: nothing twice, nothing that was not asked for, no adapter back and forth."""
    match part.role:
        case Role.ADAPTER:
            back = chain and chain[-1].role is Role.ADAPTER and square(chain[-1].female) == square(part.male)
            return adapters > 0 and not back and square(part.female) != square(part.male)
        case Role.EXTENSION:
            return want.extension_mm is not None and lacks(chain, Role.EXTENSION) and long_enough(want, part)
        case Role.JOINT:
            return want.joint and lacks(chain, Role.JOINT)
        case Role.OFFSET:
            return want.offset and lacks(chain, Role.OFFSET)
        case Role.DRIVER:
            return True


def lacks(chain: tuple[Part, ...], role: Role) -> bool:
    """Whether no part of the chain has this role."""
    return all(part.role is not role for part in chain)


def long_enough(want: Reach, part: Part) -> bool:
    """An extension of unknown length may do, to be confirmed; 5 % short is a nominal length."""
    return part.length_mm is None or part.length_mm >= 0.95 * (want.extension_mm or 0.0)


def complete(want: Reach, chain: tuple[Part, ...]) -> bool:
    """Whether all that was asked for is on the way."""
    roles = {part.role for part in chain}
    asked = {
        Role.EXTENSION: want.extension_mm is not None,
        Role.JOINT: want.joint,
        Role.OFFSET: want.offset,
    }
    return all(role in roles for role, needed in asked.items() if needed)


def judged(chain: tuple[Part, ...], start: str, want: Reach, bears: Mapping[str, float]) -> Way:
    """The chain as a way: its weakest square, warnings and doubts."""
    on_the_way = [start, *(square(part.male) for part in chain if part.male)]
    known = [name for name in on_the_way if name in bears]
    smallest = min(known, key=lambda name: bears[name], default=start)
    warnings, doubts = [], []
    if any(part.role is Role.JOINT for part in chain):
        warnings.append("universal joint: keep it nearly straight, at an angle less torque reaches the fastener")
    for part in chain:
        if part.role is Role.EXTENSION and want.extension_mm:
            if part.length_mm is None:
                doubts.append(f"the length of {part.tag} is not known, {want.extension_mm:g} mm is asked for")
            elif part.length_mm > TOO_LONG * want.extension_mm:
                warnings.append(f"{part.tag} is {part.length_mm:g} mm long, {want.extension_mm:g} mm is asked for")
    if len(known) < len(on_the_way):
        unknown = ", ".join(sorted(set(on_the_way) - set(known)))
        doubts.append(f"no torque limit is known for the drive {unknown or 'that is not stated'}")
    return Way(
        parts=tuple((part.tag, str(part.role)) for part in chain),
        smallest=smallest,
        limit_nm=bears.get(smallest),
        adapters=sum(part.role is Role.ADAPTER for part in chain),
        warnings=tuple(warnings),
        doubts=tuple(doubts),
    )


def preference(way: Way) -> tuple[int, int, int, float, tuple[str, ...]]:
    """Fewest adapters, nothing to confirm, no warning, the stronger, the tags."""
    return way.adapters, len(way.doubts), len(way.warnings), -(way.limit_nm or 0.0), way.tags


def missing(parts: Sequence[Part], start: str, want: Reach) -> str:
    """What stands in the way, as far as it can be told: the first thing that the crib does not have at all."""
    roles = {part.role for part in parts}
    if not start:
        return "the wrench's drive is not known"
    if Role.DRIVER not in roles and not any(grips(part) for part in parts):
        return "no socket or bit for this head is in the crib"
    if want.offset and Role.OFFSET not in roles:
        return "the offset adapter is not in the crib"
    if want.joint and Role.JOINT not in roles:
        return "no universal joint is in the crib"
    if want.extension_mm is not None and not any(
        part.role is Role.EXTENSION and long_enough(want, part) for part in parts
    ):
        return f"no extension of {want.extension_mm:g} mm is in the crib"
    ends = sorted({square(part.female) for part in parts if grips(part)})
    return f"no way with at most {MOST_ADAPTERS} adapters from {start} to {', '.join(ends)}"
