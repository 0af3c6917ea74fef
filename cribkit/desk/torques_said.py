"""Torques that another wrench did than was planned, and what that wrench was set to."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass

from cribkit.desk.handing import handed
from cribkit.domain.problem import BadInput, Problem, refuse
from cribkit.domain.quantity.measure import show
from cribkit.domain.quantity.torque import parse_torque
from cribkit.domain.stock.item import Kind
from cribkit.domain.stock.job import JobTorque
from cribkit.domain.torque.cover import state
from cribkit.domain.torque.wrench import Scale, Wrench
from cribkit.store.crib import Crib

SLACK = 1e-9
AT = "@"  # between the wrench and its setting


@dataclass(frozen=True, slots=True)
class Done:
    """One torque of the job, the wrench that did it, and its setting (None: nobody said it)."""

    torque: JobTorque
    wrench: Wrench
    scale: Scale
    setting: float | None
    lever: float  # the wrench's torque for one N·m at the fastener

    @property
    def unit(self) -> str:
        """The unit of the setting; "" where there is none."""
        return "" if self.setting is None else self.scale.unit.symbol


def torques_said(crib: Crib, torques: Sequence[JobTorque], said: Mapping[str, str], on: dt.date) -> tuple[Done, ...]:
    """Read ID=TAG and ID=TAG@SETTING. BadInput with every problem."""
    problems: list[Problem] = []
    found = []
    wrenches = {one.tag: one for one in crib.wrenches()} if said else {}
    for name, text in said.items():
        try:
            found.append(one_said(crib, torques, wrenches, name, text, on))
        except BadInput as error:
            problems += error.problems
    refuse(problems)
    return tuple(found)


def one_said(
    crib: Crib, torques: Sequence[JobTorque], wrenches: Mapping[str, Wrench], name: str, text: str, on: dt.date
) -> Done:
    """One torque, its wrench, and the setting."""
    tag, _, mark = (text, "", "") if crib.item(text) else text.partition(AT)
    item = handed(crib, tag.strip(), on).item
    meant = [one for one in torques if name.casefold() in (one.torque.casefold(), full_name(one).casefold())]
    if len(meant) != 1:
        names = ", ".join(full_name(one) for one in meant or torques)
        todo = f"the torques are {names}." if names else "the job has no torques."
        raise BadInput.of("which-torque", f"{name} is not one torque of the job", todo, name)
    if item.kind is not Kind.WRENCH:
        raise BadInput.of("no-wrench", "it is not a torque wrench", "say which wrench did it.", item.tag)
    wrench = wrenches[item.tag]
    scale, setting = setting_said(wrench, mark.strip())
    return Done(meant[0], wrench, scale, setting, lever_of(wrenches, meant[0], wrench))


def setting_said(wrench: Wrench, mark: str) -> tuple[Scale, float | None]:
    """The mark on one of the wrench's own scales; a wrench with one fixed value needs no word. None: not said."""
    first = wrench.scales[0]
    if not mark:
        return first, first.high if wrench.kind.scale == "fixed" else None
    text = mark if len(wrench.scales) > 1 or not is_number(mark) else f"{mark} {first.unit.symbol}"
    torque = parse_torque(text)
    units = " or ".join(scale.unit.symbol for scale in wrench.scales)
    scale = next((one for one in wrench.scales if one.unit == torque.unit), None)
    if scale is None or torque.is_range:
        todo = f"say one mark of its own scale, in {units}."
        raise BadInput.of("bad-setting", f"{mark!r} is not a setting of this wrench", todo, wrench.tag)
    if not scale.low * (1 - SLACK) <= torque.low <= scale.high * (1 + SLACK):
        marks = f"{show(scale.low)} to {show(scale.high)} {scale.unit.symbol}"
        raise BadInput.of("bad-setting", f"it cannot be set to {mark}", f"its marks go from {marks}.", wrench.tag)
    return scale, torque.low


def is_number(text: str) -> bool:
    """A setting without its unit."""
    return not any(letter.isalpha() for letter in text)


def lever_of(wrenches: Mapping[str, Wrench], torque: JobTorque, other: Wrench) -> float:
    """Another wrench on the same offset adapter: from L / (L + e) of the planned one, e; then the same for this one."""
    if torque.lever == 1:
        return 1.0
    planned = wrenches.get(torque.wrench or "")
    if planned is None or planned.lever_mm is None or other.lever_mm is None:
        todo = "write its lever_mm in torque_wrenches.csv and load it: the adapter's effect depends on it."
        raise BadInput.of("no-lever", f"the lever length of {other.tag} is not known", todo, other.tag)
    return other.lever_mm / (other.lever_mm + planned.lever_mm / torque.lever - planned.lever_mm)


def full_name(torque: JobTorque) -> str:
    """A torque's id with its procedure."""
    return f"{torque.procedure}/{torque.torque}"


def doubts(done: Done, on: dt.date) -> Iterator[Problem]:
    """Why the torque has to be looked at again before the vehicle is released."""
    name, tag, again = full_name(done.torque), done.wrench.tag, "tighten it again before the vehicle is released"
    reasons, why = state(done.wrench, on, done.torque.left_hand)
    unusable = [text for code, text in zip(reasons, why, strict=True) if code != "out"]  # out for this job: no wonder
    if unusable:
        todo = f"{again}, with a wrench that `cribkit check` gives."
        yield Problem(name, "wrench-not-usable", f"{tag} was not fit for it: {'; '.join(unusable)}", todo)
    if done.setting is None:
        todo = f"say it where it is known (--torque {done.torque.torque}={tag}@SETTING); a look-back needs it."
        yield Problem(name, "setting-unknown", f"what {tag} was set to is not on record", todo)
    elif (missed := outside(done)) != "":
        yield Problem(name, "setting-outside", f"{tag} at {show(done.setting)} {done.unit} {missed}", f"{again}.")


def outside(done: Done) -> str:
    """How the wrench's permissible deviation leaves the spec at this setting; "" where it stays inside.

    With a tolerance: s/(1+a) to s/(1-a) at the fastener lies inside it (ISO 6789: a = (set - applied) / applied). With
    none: the setting is the mark nearest to the target.
    """
    torque, a = done.torque, done.wrench.deviation
    at = (done.setting or 0.0) * done.scale.unit.nm / done.lever
    if torque.low_nm is not None and torque.high_nm is not None and torque.low_nm < torque.high_nm:
        low, high = at / (1 + a), at / (1 - a)
        inside = low >= torque.low_nm * (1 - SLACK) and high <= torque.high_nm * (1 + SLACK)
        spec = f"{show(torque.low_nm)} to {show(torque.high_nm)}"
        return "" if inside else f"applies {low:.4g} to {high:.4g} N·m, the spec is {spec} N·m"
    step = done.scale.graduation * done.scale.unit.nm / done.lever / 2
    if torque.target_nm is None or abs(at - torque.target_nm) <= step + SLACK * at:
        return ""
    return f"is {at:.4g} N·m at the fastener, the spec is {show(torque.target_nm)} N·m"
