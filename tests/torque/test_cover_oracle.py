"""A slow second implementation of coverage in exact fractions, that tries every mark, agrees with the fast one.

It shares no code with the program but the names of the reasons: it walks the whole scale and asks the definitions of
each mark (ISO 6789's applied band; 20 % of full scale; a tenth of the torque for bare values).
"""

from __future__ import annotations

import random
from collections import Counter
from dataclasses import dataclass
from fractions import Fraction

import pytest

from cribkit.domain.quantity import torque_unit
from cribkit.domain.torque import Offset, Wanted, cover
from tests.torque.makers import TODAY, scale, wrench

# Exact, from the definitions: lb = 0.45359237 kg, g = 9.80665 m/s2, in = 0.0254 m (NIST SP 811 Appendix B).
INCH_POUND = Fraction("0.45359237") * Fraction("9.80665") * Fraction("0.0254")
NM = {
    "N·m": Fraction(1),
    "in-lb": INCH_POUND,
    "ft-lb": INCH_POUND * 12,
    "kgf·cm": Fraction("0.0980665"),
}
SLACK = 1 + Fraction(1, 10**9)
PAIRS = 10_000


@dataclass(frozen=True)
class Case:
    """One wrench and one torque, in exact numbers. Torques of the spec are in N·m."""

    kind: str
    unit: str
    low: Fraction
    high: Fraction
    step: Fraction
    accuracy: Fraction
    spec_unit: str
    target: Fraction
    least: Fraction | None
    most: Fraction | None
    lever: Fraction | None = None
    adapter: Fraction = Fraction(0)
    back: bool = False  # the adapter points back over the handle


def slow(case: Case) -> tuple[str, Fraction | None]:
    """The reason, or "" and the setting on the wrench's scale."""
    reach = -case.adapter if case.back else case.adapter
    lever = case.lever / (case.lever + reach) if case.lever else Fraction(1)
    nm = NM[case.unit]
    bottom = case.low if case.kind == "fixed" else max(case.low, case.high / 5)

    def in_range(mark: Fraction) -> bool:
        return bottom <= mark * SLACK and mark <= case.high * SLACK

    def in_spec(mark: Fraction) -> bool:
        weakest = mark * nm / lever / (1 + case.accuracy)
        strongest = mark * nm / lever / (1 - case.accuracy)
        return (case.least is None or weakest * SLACK >= case.least) and (
            case.most is None or strongest <= case.most * SLACK
        )

    wished = case.target * lever / nm
    tenth = case.step <= wished / 10 * SLACK
    if case.least is None and case.most is None:
        return slow_value(case, wished, bottom, in_range, tenth)
    if case.least and case.most and case.least * (1 + case.accuracy) > case.most * (1 - case.accuracy) * SLACK:
        return "not-accurate-enough", None
    lowest = None if case.least is None else case.least * (1 + case.accuracy) * lever / nm
    highest = None if case.most is None else case.most * (1 - case.accuracy) * lever / nm
    if highest is not None and highest * SLACK < bottom:
        return "below-range", None
    if lowest is not None and lowest > case.high * SLACK:
        return "above-range", None
    if case.kind != "click":
        settings = [case.high] if case.kind == "fixed" else [wished, lowest, highest, bottom, case.high]
        good = [mark for mark in settings if mark is not None and in_range(mark) and in_spec(mark)]
        return "", min(good, key=lambda mark: (abs(mark - wished), mark))
    end = int(max(case.high, highest or 0) / case.step) + 2
    marks = [case.step * at for at in range(1, end)]
    good = [mark for mark in marks if in_spec(mark) and in_range(mark)]
    if good:
        if (case.least is None or case.most is None) and not tenth:
            return "too-coarse", None
        return "", min(good, key=lambda mark: (abs(mark - wished), mark))
    elsewhere = [mark for mark in marks if in_spec(mark)]
    if not elsewhere:
        return "too-coarse", None
    nearest = min(elsewhere, key=lambda mark: (abs(mark - wished), mark))
    return ("below-range" if nearest < bottom else "above-range"), None


def slow_value(case, wished, bottom, in_range, tenth) -> tuple[str, Fraction | None]:
    """A bare value: the nearest of all marks, the lower of two."""
    if case.kind == "fixed":
        if abs(case.high - wished) <= wished / 200:
            return "", case.high
        return ("below-range" if wished < case.high else "above-range"), None
    if not in_range(wished):
        return ("below-range" if wished < bottom else "above-range"), None
    if case.kind == "non-graduated":
        return "", wished
    if not tenth:
        return "too-coarse", None
    marks = [case.step * at for at in range(1, int(case.high / case.step) + 3)]
    nearest = min(marks, key=lambda mark: (abs(mark - wished), mark))
    if in_range(nearest):
        return "", nearest
    return ("below-range" if nearest < bottom else "above-range"), None


def some_case(dice: random.Random) -> Case:
    """A wrench of ordinary make-up and a torque near its range; now and then exactly on an edge."""
    unit, spec_unit = dice.choice(list(NM)), dice.choice(list(NM))
    kind = dice.choices(["click", "fixed", "non-graduated"], [8, 1, 1])[0]
    step = Fraction(dice.choice(["0.1", "0.2", "0.25", "0.5", "1", "2", "2.5", "5", "10"]))
    high = step * dice.randint(4, 120)
    low = high if kind == "fixed" else step * dice.randint(0, int(high / step / 2))
    accuracy = Fraction(dice.choice([1, 2, 3, 4, 6, 10]), 100)
    lever = Fraction(dice.randint(100, 600)) if dice.random() < 0.3 else None
    adapter, back = Fraction(dice.randint(1, 90)), dice.random() < 0.3
    factor = lever / (lever - adapter if back else lever + adapter) if lever else Fraction(1)
    mark = step * dice.randint(1, int(high / step * Fraction(5, 4)) + 1)
    target = mark * NM[unit] / factor
    if dice.random() < 0.5:
        target *= Fraction(dice.randint(900, 1100), 1000)
    if dice.random() < 0.3:
        target = Fraction(round(target * 10), 10) * NM[spec_unit] or target
    down, up = (Fraction(dice.choice([1, 2, 4, 5, 6, 8, 10, 15, 25]), 100) for _ in range(2))
    match dice.randint(0, 6):
        case 0 | 1:
            least = most = None
        case 2:
            least, most = target, None
        case 3:
            least, most = None, target
        case 4:  # the edge itself: exactly as wide as the wrench is accurate
            least, most = mark * NM[unit] / factor / (1 + accuracy), mark * NM[unit] / factor / (1 - accuracy)
        case _:
            least, most = target * (1 - down), target * (1 + up)
    return Case(kind, unit, low, high, step, accuracy, spec_unit, target, least, most, lever, adapter, back)


def fast(case: Case) -> tuple[str, float | None]:
    """What the program says, as the slow one does."""
    step = 0 if case.kind != "click" else float(case.step)
    tool = wrench(
        float(case.low),
        float(case.high),
        case.unit,
        step,
        mechanism=case.kind,
        accuracy=float(case.accuracy),
        lever_mm=float(case.lever) if case.lever else None,
    )
    limits = [None if limit is None else float(limit) for limit in (case.least, case.most)]
    wanted = Wanted("", torque_unit(case.spec_unit), float(case.target), *limits)
    offset = Offset(float(case.adapter), 180.0 if case.back else 0.0) if case.lever else None
    found = cover(tool, wanted, TODAY, offset)
    return ("" if found.covers else found.reasons[-1]), found.setting


def test_ten_thousand_random_pairs_agree_with_exact_fractions_over_every_mark() -> None:
    dice = random.Random(6789)
    answers: Counter[str] = Counter()
    for _ in range(PAIRS):
        case = some_case(dice)
        reason, setting = slow(case)
        told, mark = fast(case)
        assert told == reason, case
        assert setting is None or mark == pytest.approx(float(setting), rel=1e-9), case
        answers[reason] += 1
    wanted = {"", "below-range", "above-range", "too-coarse", "not-accurate-enough"}
    assert {reason for reason, times in answers.items() if times > 300} == wanted, answers


def test_the_second_scale_is_taken_by_unit_then_by_order() -> None:
    """Of two scales the one in the unit of the spec goes first; the slow one asks each scale alone."""
    dice = random.Random(300)
    for _ in range(500):
        case = some_case(dice)
        if case.kind != "click" or case.lever:
            continue
        both = wrench(
            float(case.low),
            float(case.high),
            case.unit,
            float(case.step),
            accuracy=float(case.accuracy),
            second=(scale(5, 60, "ft-lb", 0.5),),
        )
        second = Case("click", "ft-lb", *map(Fraction, ("5", "60", "0.5")), *(
            case.accuracy, case.spec_unit, case.target, case.least, case.most
        ))  # fmt: skip
        order = [case, second]
        if case.spec_unit == "ft-lb" != case.unit:
            order.reverse()
        expected = next(((one.unit, mark) for one in order for why, mark in [slow(one)] if not why), None)
        limits = [None if limit is None else float(limit) for limit in (case.least, case.most)]
        found = cover(both, Wanted("", torque_unit(case.spec_unit), float(case.target), *limits), TODAY)
        assert found.covers is (expected is not None), case
        if expected:
            assert (found.setting_unit, found.setting) == (expected[0], pytest.approx(float(expected[1]))), case
