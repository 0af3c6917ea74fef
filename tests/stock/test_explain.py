"""The working can be checked with a calculator: every sum shown gives the result shown."""

import datetime as dt
import math
import re
from dataclasses import replace

import pytest

from cribkit.domain.stock.demand import Use, usual
from cribkit.domain.stock.explain import explain
from cribkit.domain.stock.held import Held, Policy
from cribkit.domain.stock.leadtime import Lead
from cribkit.domain.stock.reorder import Line, reorder
from tests.stock.build import TODAY, coming, held, job, lot

POLICY = Policy(TODAY, service=0.95, review_days=7)


def used(amounts: list[float], counted: bool = True) -> Held:
    """A consumable with these weekly uses, one pack of 1 on the shelf."""
    since = TODAY - dt.timedelta(days=7 * len(amounts) - 1)
    uses = [
        Use(TODAY - dt.timedelta(days=7 * (len(amounts) - 1 - at)), amount)
        for at, amount in enumerate(amounts)
        if amount
    ]
    unit = "each" if counted else "mL"
    return held(0, 0, (lot(1),), usual=usual(uses, since, TODAY, counted), unit=unit, cost=1.25)


SMOOTH = [4, 5, 3, 6, 5, 4, 4, 5, 6, 3]
LUMPY = [0, 0, 9, 0, 0, 1, 0, 0, 0, 4, 0, 0, 22, 0, 1, 0, 0, 3]
LINES: dict[str, Line] = {
    "smooth, negative binomial or Poisson": reorder(used(SMOOTH), (), POLICY),
    "lumpy": reorder(used(LUMPY), (), POLICY),
    "dying item": reorder(used([*SMOOTH, *[0] * 9]), (), POLICY),
    "few uses": reorder(used([0, 0, 7, 0, 0, 0, 0, 0]), (), POLICY),
    "measured": reorder(used([x * 120.0 for x in SMOOTH], counted=False), (job(3, 240),), POLICY),
    "outlier": reorder(used([*SMOOTH, 4000]), (), POLICY),
    "never used": reorder(held(0, 0, (lot(2),)), (job(3, 4), job(5, 1)), POLICY),
    "unsure lead time": reorder(replace(used(SMOOTH), lead=Lead(8.5, 2.5), on_order=(coming(2, 3),)), (), POLICY),
    "economic quantity": reorder(used(SMOOTH), (), Policy(TODAY, order_cost=8, holding=0.25)),
    "after the plan": reorder(
        replace(used(SMOOTH), beside=used(SMOOTH).usual, plan_days=7, lead=Lead(8.5, 2.5)), (job(3, 4),), POLICY
    ),
    "own bounds": reorder(held(0.5, 0.5, (lot(1),), minimum=3.0, maximum=10.0), (), POLICY),
}


def worked_out(sums: str) -> float:
    """What a calculator says."""
    text = sums.replace("×", "*").replace("÷", "/").replace("−", "-").replace("²", "**2")
    text = re.sub(r"√\(", "math.sqrt(", text)
    text = re.sub(r"√([\d.e+-]+)", r"math.sqrt(\1)", text)
    assert re.fullmatch(r"[\d.e+\-*/() ]*(math\.sqrt[\d.e+\-*/() ]*)*", text), text
    return float(eval(text, {"math": math}))


@pytest.mark.parametrize("name", LINES)
def test_every_sum_gives_the_result_beside_it(name: str) -> None:
    line = LINES[name]
    checked = 0
    for step in explain(line):
        if not step.sums:
            continue
        number = re.match(r"-?[\d.]+(e[+-]?\d+)?", step.result.replace("−", "-"))
        assert number, step
        assert worked_out(step.sums) == pytest.approx(float(number[0]), rel=2e-4, abs=2e-4), step
        checked += 1
    assert checked >= 3


@pytest.mark.parametrize("name", LINES)
def test_the_working_ends_in_the_line_that_it_explains(name: str) -> None:
    line, steps = LINES[name], {step.what: step for step in explain(LINES[name])}
    assert steps["position: good + on order − reserved"].result.startswith(f"{line.position:g}".replace("-", "−")[:4])
    if line.packs:
        assert steps["order in whole packs"].result == f"{line.packs} × {line.held.pack:g} {line.held.unit}"
    else:
        assert steps["order"].result.startswith("nothing: position")


def test_the_whole_working_of_a_lumpy_item() -> None:
    found = [f"{step.what} | {step.sums} | {step.result}" for step in explain(LINES["lumpy"])]
    assert found == [
        "weeks on record |  | 18, 6 of them with a use",
        "weeks between uses (cut-off 1.32) | 18 ÷ 6 | 3",
        "CV² of the amounts (cut-off 0.49) |  | 1.464",
        "pattern |  | lumpy",
        "method |  | Croston with the Syntetos-Boylan correction",
        "usual amount |  | 7.84362 each",
        "usual interval in weeks |  | 2.9829",
        "demand per week | (1 − 0.1 ÷ 2) × 7.84362 ÷ 2.9829 | 2.49805 each",
        "demand per day | 2.49805 ÷ 7 | 0.356865 each",
        "variance per day | 29.5948 ÷ 7 | 4.22782",
        "lead time in days |  | 7 (stated)",
        "lead time and review time | 7 + 7 | 14 days",
        "demand in that time | 14 × 0.356865 | 4.9961 each",
        "its variance | 14 × 4.22782 | 59.1895",
        "distribution |  | negative binomial",
        "chance p | 4.9961 ÷ 59.1895 | 0.0844086",
        "number r | 4.9961² ÷ (59.1895 − 4.9961) | 0.460592",
        "chance of at most 19 |  | 0.944773",
        "chance of at most 20 |  | 0.950411",
        "reorder point, first to reach 0.95 |  | 20 each",
        "use in one review time | 7 × 0.356865 | 2.49805 each",
        "target | 20 + 2.49805 | 22.4981 each",
        "on hand |  | 1 each",
        "still good when needed | 1 − 0 | 1 each",
        "on order |  | 0 each",
        "position: good + on order − reserved | 1 + 0 − 0 | 1 each",
        "packs up to the target | (22.4981 − 1) ÷ 1 | 21.4981",
        "order in whole packs |  | 22 × 1 each",
        "cost | 22 × 1.25 | 27.5",
    ]
