"""A torque as the procedure states it: a value, a range, a tolerance, a limit, or steps.

`parse_spec` reads the whole; steps.py reads one step. BadInput says what cannot be read and what to write.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass, replace
from functools import lru_cache

from cribkit.domain.problem import BadInput
from cribkit.domain.quantity.numbers import NUMBER, number, plain
from cribkit.domain.torque.asked import Spec, Step, StepKind
from cribkit.domain.torque.steps import read_steps, shifted
from cribkit.domain.torque.values import read_wanted
from cribkit.domain.torque.wanted import SLACK, Wanted

GIVE = re.compile(rf"\s*(?:±|\+\s?/?\s?-)?\s*(?P<one>{NUMBER})\s*(?P<unit>%|[^0-9%±+]*)\s*\Z")
UNEQUAL = re.compile(
    rf"\s*\+\s*(?P<plus>{NUMBER})\s*%?\s*[/,]?\s*-\s*(?P<minus>{NUMBER})\s*(?P<unit>%|[^0-9%±+]*)\s*\Z"
)


def parse_spec(spec: str, tolerance: str = "", steps: Iterable[str] = ()) -> Spec:
    """Read a specification with its tolerance and steps. A range carries its own tolerance.

    A tolerance in percent also holds for the steps that state none; a tolerance in a unit of torque holds for the
    spec alone. BadInput where something cannot be read, or where two tolerances contradict each other.
    """
    return _parse(spec, tolerance, tuple(steps))


@lru_cache(maxsize=4096)
def _parse(spec: str, tolerance: str, steps: tuple[str, ...]) -> Spec:
    own = read_steps(spec)
    main = the_torque(own, spec)
    wanted = with_tolerance(main.wanted, tolerance, spec)
    listed = tuple(step for text in steps for step in read_steps(text, main.wanted))
    if not listed and len(own) > 1:
        listed = own
    banded = tuple(with_prevailing(step_band(step, wanted, tolerance)) for step in listed)
    wanted = shifted(wanted, main.added_nm)
    return Spec(
        text=spec.strip(),
        unit=wanted.unit,
        target_nm=wanted.target_nm,
        low_nm=wanted.low_nm,
        high_nm=wanted.high_nm,
        steps=banded,
        prevailing=any(step.prevailing and not step.added_nm for step in (*own, *banded)),
    )


@dataclass(frozen=True, slots=True)
class _Main:
    wanted: Wanted
    added_nm: float


def the_torque(steps: tuple[Step, ...], text: str) -> _Main:
    """The torque that counts: the last one that is applied, not one for a single named bolt; else the one checked."""
    torques = [step for step in steps if step.kind is StepKind.TORQUE and step.wanted]
    general = [step for step in torques if not step.label] or torques
    general = general or [step for step in steps if step.kind is StepKind.CHECK and step.wanted]
    if not general:
        raise BadInput.of(
            "no-torque", f"{text.strip()[:60]!r} states no torque", 'write one such as "10 N·m", and its steps apart.'
        )
    last = general[-1]
    assert last.wanted is not None
    return _Main(last.wanted, last.added_nm)


def with_tolerance(wanted: Wanted, tolerance: str, text: str) -> Wanted:
    """The band that the tolerance gives to a bare value."""
    if not tolerance.strip():
        return wanted
    if wanted.banded:
        raise BadInput.of(
            "two-tolerances",
            f"{text.strip()[:60]!r} carries its own limits, and a tolerance of {tolerance.strip()[:40]!r} is given too",
            "leave out the one that does not count.",
        )
    minus, plus, percent = read_tolerance(tolerance, wanted)
    if percent:
        minus, plus = minus * wanted.target_nm, plus * wanted.target_nm
    if minus >= wanted.target_nm or minus + plus <= 0:
        raise unreadable(tolerance, "it must be more than nothing and less than the torque")
    return replace(wanted, low_nm=wanted.target_nm - minus, high_nm=wanted.target_nm + plus)


def read_tolerance(tolerance: str, wanted: Wanted) -> tuple[float, float, bool]:
    """Downwards, upwards, and whether they are fractions ("10 %") instead of N·m ("± 1 N·m", "+2/-1 N·m")."""
    tidy = plain(tolerance)
    unequal = UNEQUAL.match(tidy)
    shape = unequal or GIVE.match(tidy)
    if shape is None:
        raise unreadable(tolerance, 'write "10 %", "± 1 N·m" or "+2/-1 N·m"')
    plus = number(shape["plus"] if unequal else shape["one"])
    minus = number(shape["minus"]) if unequal else plus
    if "%" in tidy:
        return minus / 100, plus / 100, True
    from cribkit.domain.quantity import torque_unit

    if not shape["unit"].strip(" ."):
        raise unreadable(tolerance, f"write {plus:g} % or {plus:g} {wanted.unit}: a number alone may mean either")
    per = torque_unit(shape["unit"]).nm
    return minus * per, plus * per, False


def unreadable(tolerance: str, why: str) -> Exception:
    """A tolerance that cannot be used."""
    return BadInput.of("bad-tolerance", f"the tolerance {tolerance.strip()[:40]!r} cannot be used", f"{why}.")


def step_band(step: Step, main: Wanted, tolerance: str) -> Step:
    """A step without limits of its own gets the spec's: its percentage, or its band where the step lies in it."""
    wanted = step.wanted
    if wanted is None or wanted.banded or not main.banded:
        return step
    if tolerance.strip():
        minus, plus, percent = read_tolerance(tolerance, main)
        if percent:
            low, high = wanted.target_nm * (1 - minus), wanted.target_nm * (1 + plus)
            return step._replace(wanted=replace(wanted, low_nm=low, high_nm=high))
    if inside(wanted.target_nm, main):
        return step._replace(wanted=replace(wanted, low_nm=main.low_nm, high_nm=main.high_nm))
    return step


def with_prevailing(step: Step) -> Step:
    """The step with its stated prevailing torque added, after the tolerance of what is left for clamping."""
    return step._replace(wanted=shifted(step.wanted, step.added_nm)) if step.wanted and step.added_nm else step


def inside(torque_nm: float, band: Wanted) -> bool:
    """Whether a torque lies in the band."""
    slack = SLACK * torque_nm
    low, high = band.low_nm, band.high_nm
    return (low is None or torque_nm >= low - slack) and (high is None or torque_nm <= high + slack)


__all__ = ["Spec", "Step", "StepKind", "Wanted", "parse_spec", "read_wanted"]
