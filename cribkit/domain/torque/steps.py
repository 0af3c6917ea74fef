"""The steps of a tightening: torque, angle, part of a turn, loosen, by hand, snug, check, replace, repeat."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from functools import cache

from cribkit.domain.problem import BadInput
from cribkit.domain.quantity import TorqueUnit
from cribkit.domain.quantity.numbers import NUMBER, number, plain
from cribkit.domain.tables import table
from cribkit.domain.torque.asked import Step, StepKind
from cribkit.domain.torque.values import any_of, read_wanted
from cribkit.domain.torque.wanted import Wanted

STAGE = re.compile(
    r"(?:(?:first|second|third|fourth|fifth|final|last|next|[0-9]+(?:st|nd|rd|th))\s+(?:stage|pass|step|round)"
    r"|(?:stage|pass|step|round)\s*[0-9]+|finally)\s*[:.)-]?\s*",
    re.IGNORECASE,
)
LABEL = re.compile(r"(?P<label>(?:bolts?|nuts?|screws?|studs?)\s+[0-9]+(?:\s*(?:-|,|and|to)\s*[0-9]+)*)\s*:?\s+", re.I)
OTHERWISE = re.compile(r"\b(?:else|otherwise|if not)\b(?P<rest>.*)\Z", re.IGNORECASE)
REMARK = re.compile(r"\((?![^)]*[0-9])[^)]*\)")
TILL = re.compile(r"\b(?:until|till)\b", re.IGNORECASE)
TWICE = re.compile(r"[0-9]|-\s*\Z|\b(?:twice|thrice|times|double|half|quarter)\b", re.IGNORECASE)
TRIMS = " ,:+."


def read_steps(text: str, main: Wanted | None = None) -> tuple[Step, ...]:
    """Every step in the text, in order. A number alone takes its unit from its neighbours, else from `main`."""
    pieces = list(split(plain(text)))
    units = [unit_of(piece) for piece in pieces]
    fallback = main.unit if main else None
    steps: list[Step] = []
    for at, piece in enumerate(pieces):
        before = next((unit for unit in reversed(units[:at]) if unit), None)
        after = next((unit for unit in units[at + 1 :] if unit), None)
        steps += read_piece(piece, before or after or fallback)
    if not steps:
        raise BadInput.of("no-torque", "a torque or a step has no text", 'write it as "10 N·m".')
    return tuple(steps)


def split(text: str) -> Iterator[str]:
    """The pieces between semicolons, arrows and "then", and where an angle is added: "50 N·m + 77°"."""
    for piece in ends().split(text):
        for part in added_angle().split(piece):
            if part.strip(TRIMS):
                yield part.strip()


@cache
def ends() -> re.Pattern[str]:
    """What stands between two steps. A comma before a number or a limit ("min 8, max 10") belongs to one torque."""
    limits = f"{any_of('at_least').pattern}|{any_of('at_most').pattern}"
    return re.compile(
        rf"\s*(?:;|->|=>|→|\n|,?\s*\bthen\b:?|\.\s+(?=[a-z])|,\s*(?=[^0-9\s])(?!{limits}))\s*(?![^(]*\))",
        re.IGNORECASE,
    )


@cache
def turns() -> dict[str, float]:
    """Spelling of an angle -> degrees."""
    rows = table("cribkit.domain.torque", "spec_words.toml")
    return {word: float(value) for word, value in (rows["angle"] | rows["turn"]).items()}


@cache
def angle_unit() -> str:
    """Matches a unit of angle."""
    return "|".join(
        re.escape(word) + (r"\b" if word[-1].isalpha() else "") for word in sorted(turns(), key=len, reverse=True)
    )


@cache
def fractions() -> tuple[re.Pattern[str], dict[str, str]]:
    """ "a quarter turn" and the number it stands for."""
    rows: dict[str, str] = table("cribkit.domain.torque", "spec_words.toml")["fraction"]
    names = "|".join(re.escape(word) for word in sorted(rows, key=len, reverse=True))
    return re.compile(rf"\b(?P<word>{names})[\s-]+(?=(?:{angle_unit()}))", re.IGNORECASE), rows


@cache
def added_angle() -> re.Pattern[str]:
    """The plus sign between a torque and the angle that follows it."""
    number_and_unit = rf"{NUMBER}\s*(?:(?:-|to|±)\s*{NUMBER})?\s*(?:{angle_unit()})"
    return re.compile(rf"\s*(?:\+|\bplus\b|\band\b)\s*(?={number_and_unit})", re.IGNORECASE)


@cache
def angle_shape() -> re.Pattern[str]:
    """A whole angle: "90°", "85-95 degrees", "90° ± 5°", "1/4 turn"."""
    unit = rf"(?:{angle_unit()})"
    return re.compile(
        rf"(?P<first>{NUMBER})\s*{unit}?\s*(?:(?P<to>-|\bto\b|±)\s*(?P<last>{NUMBER})\s*)?(?P<unit>{unit})\.?",
        re.IGNORECASE,
    )


def unit_of(piece: str) -> TorqueUnit | None:
    """The unit of torque that a piece names, if it is a torque that can be read alone."""
    try:
        steps = list(read_piece(piece, None))
    except BadInput:
        return None
    return next((step.wanted.unit for step in steps if step.wanted), None)


def read_piece(piece: str, unit: TorqueUnit | None) -> Iterator[Step]:
    """One piece: mostly one step; "else replace bolt" after a check makes a second."""
    text = piece.strip(TRIMS)
    otherwise = OTHERWISE.search(text)
    if otherwise and re.search("[0-9]", otherwise["rest"]):
        raise unreadable(text)  # a second torque hides behind the "else"
    head = text[: otherwise.start()].strip(TRIMS) if otherwise else text
    label = LABEL.match(STAGE.sub("", head, count=1))
    yield read_one(head, text, unit, label["label"] if label else "")
    if otherwise and any_of("replace").search(otherwise["rest"]):
        yield Step(StepKind.REPLACE, otherwise["rest"].strip(TRIMS))


def read_one(head: str, text: str, unit: TorqueUnit | None, label: str) -> Step:
    """The step that a piece without its "else" says."""
    bare = STAGE.sub("", head, count=1)
    bare = REMARK.sub(remark, LABEL.sub("", bare, count=1) if label else bare).strip(TRIMS)
    bare = fractions()[0].sub(lambda found: fractions()[1][found["word"].lower()] + " ", bare)
    kind = kind_of(bare)
    if kind in (StepKind.LOOSEN, StepKind.ANGLE, StepKind.TURN):
        return with_angle(Step(kind, text, label=label), bare)
    if kind in (StepKind.TORQUE, StepKind.CHECK):
        return with_torque(Step(kind, text, label=label), bare, unit)
    return without_size(Step(kind, text, label=label), bare)


def remark(found: re.Match[str]) -> str:
    """A remark in brackets goes, except where it is a limit: "25 N·m (max)"."""
    said = any_of("at_least", "at_most", "prevailing").search(found[0])
    return f" {found[0][1:-1]} " if said else " "


def without_size(step: Step, bare: str) -> Step:
    """By hand, snug, replace, repeat: a size in it must not get lost. "Snug to 5 N·m" is a torque."""
    if not re.search("[0-9]", bare):
        return step
    if step.kind in (StepKind.HAND, StepKind.SNUG):
        if angle_shape().search(bare):
            if TILL.search(bare):
                return step  # "in increments of 3 turns until seated"
            raise unreadable(step.text)
        return with_torque(step._replace(kind=StepKind.TORQUE), any_of("hand", "snug").sub(" ", bare), None)
    if re.search(r"[0-9]\s*\Z", bare) or angle_shape().search(bare):
        raise unreadable(step.text)
    return step


def kind_of(bare: str) -> StepKind:
    """By its words; a number with a unit of angle is an angle, and what is left is a torque."""
    for name in (StepKind.CHECK, StepKind.LOOSEN, StepKind.HAND, StepKind.SNUG):
        if any_of(name).search(bare):
            return name
    angle = angle_shape().search(bare)
    if angle:
        return StepKind.ANGLE if turns()[angle["unit"].lower()] == 1 else StepKind.TURN
    for name in (StepKind.REPEAT, StepKind.REPLACE):
        if any_of(name).search(bare) and not re.search(r"[0-9]\s*[^\W\d]*\s*[·.*-]?\s*(?:m|lb|in|ft)\b", bare):
            return name
    return StepKind.TORQUE


def with_angle(step: Step, bare: str) -> Step:
    """The angle of a step, in degrees. Loosening without an angle is allowed; so is a lower limit."""
    shape = angle_shape().search(bare)
    if shape is None:
        if step.kind is StepKind.LOOSEN and not re.search("[0-9]", bare):
            return step
        raise unreadable(step.text)
    if TWICE.search(bare[: shape.start()]) or TWICE.search(bare[shape.end() :]):
        raise unreadable(step.text)  # "2 x 90°", "90° + 20 N·m": what is left says more than the angle
    per = turns()[shape["unit"].lower()]
    first = number(shape["first"]) * per
    if shape["last"] is None:
        return step._replace(angle=first)
    last = number(shape["last"]) * per
    low, high = (first - last, first + last) if shape["to"] == "±" else (first, last)
    if low > high or high <= 0:
        raise unreadable(step.text)
    return step._replace(angle=(low + high) / 2, angle_low=low, angle_high=high)


def with_torque(step: Step, bare: str, unit: TorqueUnit | None) -> Step:
    """The torque of a step; a check of a bare value means at least that."""
    step, rest = without_prevailing(step, bare, unit)
    if step.kind is StepKind.CHECK:
        rest = any_of("check").sub(" ", rest)
    wanted = read_wanted(trimmed(rest), unit)
    if step.kind is StepKind.CHECK and not wanted.banded:
        wanted = replace(wanted, low_nm=wanted.target_nm)
    return step._replace(wanted=replace(wanted, text=step.text))


def without_prevailing(step: Step, bare: str, unit: TorqueUnit | None) -> tuple[Step, str]:
    """ "10 N·m + prevailing torque" or "10 N·m + 2 N·m prevailing torque": the part to add, taken apart."""
    found = any_of("prevailing").search(bare)
    if found is None:
        return step, bare
    head, plus, amount = bare[: found.start()].rpartition("+")
    if not plus:
        head, plus, amount = bare[: found.start()].rpartition(" plus ")
    if not plus or bare[found.end() :].strip(TRIMS):
        raise unreadable(step.text)
    added = read_wanted(amount, unit or read_wanted(trimmed(head)).unit).target_nm if amount.strip(" the") else 0.0
    return step._replace(prevailing=True, added_nm=added), head


def shifted(wanted: Wanted, added_nm: float) -> Wanted:
    """The band with a stated prevailing torque added: final = drag + desired (AC 43.13-1B page 7-43)."""
    return replace(
        wanted,
        target_nm=wanted.target_nm + added_nm,
        low_nm=None if wanted.low_nm is None else wanted.low_nm + added_nm,
        high_nm=None if wanted.high_nm is None else wanted.high_nm + added_nm,
    )


def trimmed(text: str) -> str:
    """Without the words around a torque that say nothing about its size."""
    around = table("cribkit.domain.torque", "spec_words.toml")["around"]
    before = "|".join(re.escape(word) for word in sorted(around["before"], key=len, reverse=True))
    after = "|".join(re.escape(word) for word in sorted(around["after"], key=len, reverse=True))
    text = re.sub(rf"\A(?:\s*(?:{before})\b)+\s*", "", text.strip(TRIMS), flags=re.IGNORECASE)
    return re.sub(rf"(?:\s+(?:{after}))+\s*\Z", "", text, flags=re.IGNORECASE).strip(TRIMS)


def unreadable(text: str) -> Exception:
    """A step that cannot be read."""
    return BadInput.of(
        "bad-step",
        f"the step {text.strip()[:60]!r} cannot be read",
        'write it as "10 N·m", "+90°", "+1/4 turn", "loosen 360°", "hand-tight", "snug" or "check at least 90 N·m".',
    )


__all__ = ["Step", "StepKind", "read_steps", "shifted"]
