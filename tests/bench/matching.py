"""Matching 1,000 needs at 1,000 to 100,000 items: time a need, growth, ratio to brute-force rapidfuzz WRatio.

Run `python tests/bench/matching.py [largest]`. Items are written from attributes in many notations, with a fixed seed.
"""

from __future__ import annotations

import gc
import random
import sys
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))

from cribkit.domain.wording import Meaning, index_terms, judge_all, query_terms, read, read_item
from tests.wording.own import KINDS, Thing, asked, written

NEEDS = 1_000
TOOLS = 600
BRUTE = 20  # needs that are also put to brute force; it takes long enough


def wide(rng: random.Random) -> tuple[str, str]:
    """What a big stock grows by: fasteners, seals, drills and parts, each in very many sizes or for many vehicles."""
    number = rng.randrange(3, 400)
    return rng.choice(
        [
            (f"BOLT M{rng.choice((5, 6, 8, 10, 12, 14, 16))} x {number}", "consumable"),
            (f"O-ring {number / 2:.1f} x {rng.choice(('1.5', '2', '2.5', '3', '3.5'))} mm NBR", "consumable"),
            (f"drill bit {rng.randrange(5, 250) / 10:.1f} mm HSS", "tool"),
            (f"{rng.choice(('water pump', 'sump', 'thermostat'))} gasket, type K{number}x", "consumable"),
            (f"split pin {rng.choice(('1.6', '2', '2.5', '3.2', '4', '5'))} x {number}", "consumable"),
            (f"oil seal {number} x {number + rng.randrange(5, 40)} x 8", "consumable"),
        ]
    )


def some_items(count: int) -> tuple[list[str], list[Meaning]]:
    """That many descriptions, and their meanings: 600 hand tools and fluids, the rest ever more parts."""
    rng, texts, meanings = random.Random(1), [], []
    families = sorted(KINDS)
    for number in range(count):
        family = families[number % len(families)]
        kind = KINDS[family]
        thing = Thing(family, {name: rng.choice(options) for name, (options, _) in kind.fields.items()})
        text, stocked_as = (written(rng, thing), kind.kind) if number < TOOLS else wide(rng)
        texts.append(text)
        meanings.append(read_item(text, stocked_as))
    return texts, meanings


def main(largest: int) -> None:
    """Print the figures."""
    rng = random.Random(2)
    needs = [written(rng, asked(rng, rng.choice(sorted(KINDS)))) for _ in range(NEEDS // 2)]
    needs += [wide(rng)[0] for _ in range(NEEDS - len(needs))]
    start = time.perf_counter()
    texts, meanings = some_items(largest)
    print(f"written and read: {largest} items in {time.perf_counter() - start:.1f} s")
    print(f"{'items':>8} {'ms a need':>10} {'of it reading':>14} {'judged':>8} {'WRatio ms':>10} {'ratio':>8}")
    for count in (1_000, 10_000, 100_000):
        if count <= largest:
            measure(needs, texts[:count], meanings[:count])


def measure(needs: list[str], texts: list[str], meanings: list[Meaning]) -> None:
    """One line: the index and the rule against brute force, in the same run."""
    from rapidfuzz import fuzz, process, utils

    index: dict[str, list[int]] = {}
    for number, meaning in enumerate(meanings):
        for term in index_terms(meaning):
            index.setdefault(term, []).append(number)
    gc.collect()  # else the collector walks the index, held for the bench alone, while the needs are read
    start = time.perf_counter()
    read_needs = [read(text) for text in needs]
    reading = time.perf_counter() - start
    judged, start = 0, time.perf_counter()
    for meaning in read_needs:
        found = {number for term in query_terms(meaning) for number in index.get(term, ())}
        judged += len(found)
        verdicts = judge_all(meaning, [meanings[number] for number in found], index.keys().__and__)
        max((one.rank for one in verdicts), default=None)
    ours = (reading + time.perf_counter() - start) / len(needs)
    start = time.perf_counter()
    for text in needs[:BRUTE]:
        process.extractOne(text, texts, scorer=fuzz.WRatio, processor=utils.default_process)
    brute = (time.perf_counter() - start) / BRUTE
    print(
        f"{len(texts):8} {ours * 1000:10.3f} {reading / len(needs) * 1000:14.3f} {judged / len(needs):8.0f} "
        f"{brute * 1000:10.1f} {brute / ours:8.0f}"
    )


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 100_000)
