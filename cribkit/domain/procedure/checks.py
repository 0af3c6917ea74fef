"""What one table of a procedure asks of another: unique ids, readable specs, an angle gauge for angles, a new
fastener for each that is used once. And what is doubtful without being wrong: the notes."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from cribkit.domain.problem import BadInput, Problem
from cribkit.domain.procedure.lines import Lines, Path
from cribkit.domain.procedure.model import ConsumableNeed, Procedure, ToolNeed, TorqueNeed
from cribkit.domain.tables import table
from cribkit.domain.torque import Spec, parse_spec

ACROSS = 90.0  # degrees: an adapter across the wrench leaves the setting as it is


@dataclass(frozen=True, slots=True)
class Draft:
    """The needs of a file that could be settled, before they are checked against each other."""

    tools: tuple[ToolNeed, ...]
    torques: tuple[TorqueNeed, ...]
    paths: tuple[Path, ...]  # of each torque in the file
    consumables: tuple[ConsumableNeed, ...]
    lost: tuple[str, ...]  # need and use of consumables that could not be settled: told already
    source: str
    lines: Lines

    def problem(self, at: int, key: str, code: str, message: str, todo: str) -> Problem:
        """A problem at one key of a torque."""
        return Problem(f"{self.source}:{self.lines.of((*self.paths[at], key))}", code, message, todo)


def check_draft(draft: Draft) -> Iterator[Problem]:
    """Every broken rule between the tables of one file."""
    yield from _torque_ids(draft)
    specs: dict[int, Spec] = {}
    for at, need in enumerate(draft.torques):
        try:
            specs[at] = need.asks()
        except BadInput as error:
            yield from _spec_problems(draft, at, error)
    yield from _angle_gauge(draft, specs)
    yield from _offsets(draft)
    yield from _replacements(draft, specs)


def check_procedures(procedures: Iterable[Procedure]) -> tuple[Problem, ...]:
    """Ids that more than one file claims."""
    return check_ids(procedure.claim for procedure in procedures)


def check_ids(claims: Iterable[tuple[str, str]]) -> tuple[Problem, ...]:
    """The same of ids and places, so that a file with other errors counts too."""
    first: dict[str, str] = {}
    problems = []
    for name, place in claims:
        if name.casefold() in first:
            message = f"the id {name!r} is taken by {first[name.casefold()]}"
            problems.append(Problem(place, "duplicate-id", message, "give one of them another."))
        first.setdefault(name.casefold(), place)
    return tuple(problems)


def _torque_ids(draft: Draft) -> Iterator[Problem]:
    first: dict[str, TorqueNeed] = {}
    for at, need in enumerate(draft.torques):
        other = first.setdefault(need.id, need)
        if other is not need:
            message = f"the torque id {need.id!r} is taken by line {other.line}"
            yield draft.problem(at, "id", "duplicate-id", message, "give one of them another.")


def _spec_problems(draft: Draft, at: int, error: BadInput) -> Iterator[Problem]:
    """The problems of a spec that cannot be read, at the key that brings the first of them."""
    need = draft.torques[at]
    key, guilty = "steps", error
    for name, tolerance in (("spec", ""), ("tolerance", need.tolerance)):
        try:
            parse_spec(need.spec, tolerance)
        except BadInput as found:
            key, guilty = name, found
            break
    for problem in guilty.problems:
        yield draft.problem(at, key, problem.code, f"{key} of {need.id}: {problem.message}", problem.next)


def _angle_gauge(draft: Draft, specs: dict[int, Spec]) -> Iterator[Problem]:
    """A step in degrees needs a tool that shows degrees, and so must whatever stands in for it."""
    needed = [(tool.need, *tool.instead) for tool in draft.tools if not tool.optional]
    if any(all(measures_angles(text) for text in texts) for texts in needed):
        return
    for at, spec in specs.items():
        if spec.needs_angle_gauge:
            message = f"{draft.torques[at].id} is tightened by an angle, and no tool of the procedure measures one"
            todo = 'add a [[tool]] with need = "angle gauge, 1/2 drive"; a wrench that measures angle serves it too.'
            yield draft.problem(at, "steps", "no-angle-gauge", message, todo)


def measures_angles(tool: str) -> bool:
    """Is this a tool that measures the angle of tightening?"""
    text = " ".join(re.split(r"[\s-]+", tool.casefold()))
    return any(re.search(rf"\b{re.escape(name)}s?\b", text) for name in _table("angle_gauge"))


def _offsets(draft: Draft) -> Iterator[Problem]:
    """An adapter changes the setting by its offset: without one the setting would be wrong."""
    todo = 'add offset = "40 mm", from square to fastener ("0 mm" for a part in line with the square).'
    for at, need in enumerate(draft.torques):
        reach = need.reach
        if reach and reach.adapter and reach.offset_mm is None and reach.angle_deg != ACROSS:
            yield draft.problem(at, "reach", "no-offset", f"the adapter of {need.id} has no offset", todo)


def _replacements(draft: Draft, specs: dict[int, Spec]) -> Iterator[Problem]:
    """A fastener that is used once needs as many new ones."""
    wanted: dict[tuple[int, ...], list[int]] = {}
    for at, need in enumerate(draft.torques):
        if any(names(text, need.fastener) for text in draft.lost):
            continue
        if need.replace or (at in specs and specs[at].one_time):
            new = tuple(no for no, item in enumerate(draft.consumables) if replaces(item, need.fastener))
            wanted.setdefault(new, []).append(at)
    for items, torques in wanted.items():
        have = sum(draft.consumables[no].amount.value for no in items)
        count = sum(draft.torques[at].count for at in torques) if items else 0
        if items and have >= count:
            continue
        said = f"{have:g} new of {count} are asked for" if items else "no new ones are asked for"
        for at in torques:
            need = draft.torques[at]
            todo = f'add a [[consumable]] whose need or use says "{need.fastener}", amount = "{count or need.count}".'
            message = f"{need.fastener} ({need.id}) are used once; {said}"
            yield draft.problem(at, "replace", "no-replacement", message, todo)


def replaces(item: ConsumableNeed, fastener: str) -> bool:
    """Is this consumable the new fastener: counted, and named so in its need or use?"""
    return item.amount.unit == "each" and not item.optional and names(f"{item.need} {item.use}", fastener)


def names(text: str, fastener: str) -> bool:
    """Does the text have every word of the fastener's name?"""
    return bool(_words(fastener)) and _words(fastener) <= _words(text)


def _words(text: str) -> frozenset[str]:
    """The words up to brackets, without plural endings."""
    bare = re.sub(r"\(.*?\)", " ", text.casefold())
    return frozenset(re.sub(r"(?<=[^s])s\Z", "", word) for word in re.findall(r"[^\W_]+", bare)) - set(
        _table("fillers")
    )


def _table(name: str) -> list[str]:
    words: list[str] = table("cribkit.domain.procedure", "words.toml")[name]
    return words


def notes(procedure: Procedure) -> tuple[Problem, ...]:
    """What is doubtful but not wrong, each with a code that begins with "note-"."""
    return (*_empty(procedure), *_heads(procedure), *_not_understood(procedure))


def _empty(procedure: Procedure) -> Iterator[Problem]:
    if not procedure.cautions:
        todo = "say what can hurt: heat, pressure, lifting, battery, dust, solvents."
        yield Problem(procedure.at(procedure.line), "note-no-cautions", "note: the procedure has no cautions", todo)
    if not (procedure.tools or procedure.torques or procedure.consumables):
        todo = "add [[tool]], [[torque]] and [[consumable]] tables."
        yield Problem(procedure.at(procedure.line), "note-no-needs", "note: the procedure calls for nothing", todo)


def _heads(procedure: Procedure) -> Iterator[Problem]:
    """A torque needs a head that some socket or bit is known to fit."""
    from cribkit.domain.wording import head_drivers

    for need in procedure.torques:
        if not need.head:
            message = f"note: {need.id} does not say what the socket or bit must fit"
        elif not head_drivers(need.head):
            message = f"note: no socket or bit is known for the head {need.head!r} of {need.id}"
        else:
            continue
        yield Problem(procedure.at(need.line), "note-no-head", message, 'write head = "10 mm hex", "T30" or "E12".')


def _not_understood(procedure: Procedure) -> Iterator[Problem]:
    """Tools, adapters and forbidden substitutes have to be understood. Parts of a vehicle need not be: they are
    compared by their words."""
    from cribkit.domain.wording import read

    tools = [(need.line, text, "tool") for need in procedure.tools for text in (need.need, *need.instead)]
    adapters = [(need.line, need.reach.adapter, "tool") for need in procedure.torques if need.reach]
    nevers = [(need.line, text, "consumable") for need in procedure.consumables for text in need.never]
    for line, text, kind in (*tools, *adapters, *nevers):
        if text and not read(text, kind).family:
            message = f"note: {text!r} is not understood, and can only be compared by its words"
            todo = "say it in words of the trade; `cribkit read` shows what is understood."
            yield Problem(procedure.at(line), "note-not-understood", message, todo)
