"""Our own labelled set: attributes written out in many notations, with a fixed seed, and pairs written by hand.

The labels come from the attributes alone, never from the reader. Notations are common practice of the trade.
"""

from __future__ import annotations

import random
from dataclasses import dataclass, field

from cribkit.domain.wording import read_item
from tests.wording.by_hand import PAIRS
from tests.wording.own_kinds import KINDS
from tests.wording.scorer import Need, Stocked

SEED = 20260131


@dataclass(frozen=True)
class Thing:
    """An item by its attributes; None where its description leaves one open."""

    family: str
    values: dict[str, str | None] = field(hash=False)


def written(rng: random.Random, thing: Thing) -> str:
    """A description in one of many notations: noun first or last, any order, any case, packing words."""
    kind = KINDS[thing.family]
    parts = [
        text for name, value in thing.values.items() if value is not None and (text := kind.fields[name][1](rng, value))
    ]
    rng.shuffle(parts)
    noun = rng.choice(kind.nouns)
    noun_first = noun.endswith(",") or rng.random() < 0.5
    joined = rng.choice([" ", ", "]).join(parts)
    text = f"{noun} {joined}" if noun_first else f"{joined} {noun}"
    return rng.choice([text, text, text.upper(), text.lower()])


def stocked(name: str, options: tuple[str, ...]) -> tuple[str, ...]:
    """The values that are stocked: the last ones are only ever asked for, so that needs without answer arise."""
    return options if name in ("depth", "points", "drive") else options[: -(1 + len(options) // 5)]


def some_things(rng: random.Random) -> list[Thing]:
    """Up to eighty different items of each family; one in six leaves an attribute open that it may."""
    found = []
    for family, kind in KINDS.items():
        seen = set()
        for _ in range(400):
            values: dict[str, str | None] = {
                name: rng.choice(stocked(name, options)) for name, (options, _) in kind.fields.items()
            }
            for name in values:
                if name not in kind.must and rng.random() < 0.17:
                    values[name] = None
            key = tuple(values.items())
            if key not in seen and len(seen) < 80:
                seen.add(key)
                found.append(Thing(family, values))
    return found


def asked(rng: random.Random, family: str) -> Thing:
    """A need of a family: some attributes are left open."""
    kind = KINDS[family]
    values: dict[str, str | None] = {name: rng.choice(options) for name, (options, _) in kind.fields.items()}
    for name in values:
        if (name not in kind.must and rng.random() < 0.4) or (name == "depth" and values[name] == "standard"):
            values[name] = None
    return Thing(family, values)


def verdict(need: Thing, item: Thing) -> str:
    """right, doubt or wrong by the attributes alone."""
    if need.family != item.family:
        impact = {need.family, item.family} == {"socket", "impact-socket"} and need.family == "socket"
        if not impact:
            return "wrong"
    doubt = False
    for name, value in need.values.items():
        stated = item.values.get(name)
        has = KINDS[need.family].default.get(name) if stated is None else stated
        if value is not None and has is None:
            doubt = True
        elif value is not None and not agrees(name, need.family, value, str(has)):
            return "wrong"
    if need.family != item.family:
        return "either"
    return "doubt" if doubt else "right"


NM = {"Nm": 1.0, "in-lb": 0.1129848, "ft-lb": 1.3558179}  # NIST SP 811


def agrees(name: str, family: str, asked_value: str, has: str) -> bool:
    if family != "torque-wrench" or name != "range":
        return asked_value == has
    (low, high), (bottom, top) = ends(asked_value), ends(has)
    return bottom <= low * 1.02 and top >= high * 0.98


def ends(text: str) -> tuple[float, float]:
    numbers, unit = text.split(" ")
    low, high = (float(part) * NM[unit] for part in numbers.split("-"))
    return low, high


def own_set() -> tuple[list[Stocked], list[Need]]:
    """The items and the needs, always the same."""
    rng = random.Random(SEED)
    things = some_things(rng)
    texts = [written(rng, thing) for thing in things]
    tags = [f"G{number:04}" for number in range(len(things))]
    items = [
        Stocked(tag, text, read_item(text, KINDS[thing.family].kind))
        for tag, text, thing in zip(tags, texts, things, strict=True)
    ]
    needs = []
    for family in KINDS:
        for _ in range(18):
            need = asked(rng, family)
            told: dict[str, set[str]] = {"right": set(), "doubt": set(), "either": set(), "wrong": set()}
            for tag, thing in zip(tags, things, strict=True):
                told[verdict(need, thing)].add(tag)
            text = written(rng, need)
            needs.append(
                Need(
                    text,
                    KINDS[family].kind,
                    family,
                    frozenset(told["right"]),
                    frozenset(told["doubt"]),
                    frozenset(told["either"]),
                )
            )
    return items, needs


__all__ = ["PAIRS", "own_set"]
