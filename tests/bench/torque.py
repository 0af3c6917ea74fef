"""Coverage of many torques by many wrenches in one process, and how it grows:  python tests/bench/torque.py

The floor is one division and one comparison for each pair, the least that any answer needs. Then the smallest set of
purchases, and the reading of specs.
"""

from __future__ import annotations

import datetime as dt
import random
import statistics
import time
from collections.abc import Callable

from cribkit.domain.quantity import torque_unit
from cribkit.domain.torque import Scale, Spec, Wrench, cover, parse_spec, rank
from cribkit.domain.torque.smallest import smallest_set

TODAY = dt.date(2026, 11, 25)
UNITS = ("N·m", "in-lb", "ft-lb", "kgf·cm")


def wrenches(number: int, dice: random.Random) -> list[Wrench]:
    """Invented wrenches; every fifth has a second scale, every tenth is overdue."""
    return [wrench(at, dice) for at in range(number)]


def wrench(at: int, dice: random.Random) -> Wrench:
    """One invented wrench."""
    unit = torque_unit(dice.choice(UNITS))
    high = dice.choice([10, 25, 50, 100, 200, 300]) / unit.nm
    step = 10.0 ** (len(str(int(high))) - 3)
    scales = (Scale(unit, high / 5, high, step),)
    if at % 5 == 0:
        nm = torque_unit("N·m")
        scales = (*scales, Scale(nm, high * unit.nm / 5, high * unit.nm, 0.1))
    return Wrench(
        tag=f"TW-{at:04}",
        description="torque wrench",
        mechanism=dice.choice(["click", "dial", "beam", "electronic"]),
        scales=scales,
        drive="3/8",
        calibrated_on=dt.date(2024 if at % 10 == 0 else 2026, 3, 2),
    )


def specs(number: int, dice: random.Random) -> list[Spec]:
    """Invented torques: bare values, ranges, tolerances."""
    found = []
    for at in range(number):
        unit, value = dice.choice(UNITS), dice.randint(20, 3000) / 10
        forms = (f"{value} {unit}", f"{value}-{value * 1.2:.1f} {unit}", f"{value} {unit} ± 10 %")
        found.append(parse_spec(forms[at % 3]))
    return found


def seconds(work: Callable[[], object], rounds: int = 3) -> float:
    """Median seconds of a call."""
    times = []
    for _ in range(rounds):
        start = time.perf_counter()
        work()
        times.append(time.perf_counter() - start)
    return statistics.median(times)


def least(tools: list[Wrench], wanted: list[Spec]) -> int:
    """The floor: one division and one comparison a pair."""
    return sum(one.target_nm / tool.full_scale_nm < 1 for one in wanted for tool in tools)


def main() -> None:
    """Print the figures."""
    dice = random.Random(1)
    print(f"{'specs':>6} {'wrenches':>8} {'seconds':>8} {'µs a pair':>10} {'ranked':>8} {'x floor':>8}")
    for number, many in ((250, 125), (500, 250), (1000, 500)):
        tools, wanted = wrenches(many, dice), specs(number, dice)
        floor = seconds(lambda t=tools, w=wanted: least(t, w))  # type: ignore[misc]  # defaults bind the loop's values
        spent = seconds(lambda t=tools, w=wanted: sum(cover(tool, one, TODAY).covers for one in w for tool in t))  # type: ignore[misc]
        ranked = seconds(lambda t=tools, w=wanted: sum(len(rank(cover(x, one, TODAY) for x in t)) for one in w))  # type: ignore[misc]
        each = 1e6 * spent / number / many
        print(f"{number:6} {many:8} {spent:8.2f} {each:10.2f} {ranked:8.2f} {spent / floor:8.1f}")
    texts = [f"{at}.{at % 10}-{at + 9} N·m (see the table)" if at % 2 else f"{at}.5 in-lb" for at in range(1, 1001)]
    print(f"reading 1,000 specs: {seconds(lambda: [parse_spec(text.split(' (')[0]) for text in texts], 1):.3f} s")
    rows = range(300)
    choices = {at: [row for row in rows if dice.random() < 0.06] for at in range(60)}
    print(f"smallest of 60 purchases for 300 gaps: {seconds(lambda: smallest_set(rows, choices), 1):.3f} s")


if __name__ == "__main__":
    main()
