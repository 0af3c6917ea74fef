"""From the text of a TOML file to a checked procedure, or to every problem in it with file and line."""

from __future__ import annotations

import re
import tomllib
from dataclasses import replace
from difflib import get_close_matches
from typing import TYPE_CHECKING, Any, TypeVar

from cribkit.domain.problem import Problem
from cribkit.domain.procedure.checks import Draft, check_draft
from cribkit.domain.procedure.lines import Lines, Path
from cribkit.domain.procedure.model import ConsumableNeed, Procedure, Reach, ToolNeed, TorqueNeed
from cribkit.domain.quantity import parse_amount, parse_angle_deg, parse_length_mm

if TYPE_CHECKING:
    from pydantic import BaseModel

    from cribkit.domain.procedure import schema

    M = TypeVar("M", bound=BaseModel)

LONGEST = 1_000_000  # characters: a procedure is a page, not a book
SYNTAX = re.compile(r"\s*\(at (?:line (?P<line>\d+), column (?P<column>\d+)|end of document)\)\Z")


def read_procedure(text: str, source: str) -> tuple[Procedure | None, tuple[Problem, ...]]:
    """The procedure, or None with every problem of the file, in the order of its lines.

    `source` is how problems name the file. What is doubtful but not wrong is told by `notes`.
    """
    if len(text) > LONGEST:
        todo = "name a procedure's TOML file."
        return None, (Problem(source, "too-long", "the file is too long to be a procedure", todo),)
    try:
        raw = tomllib.loads(text.removeprefix("\ufeff"))
    except RecursionError:
        return None, (Problem(source, "syntax", "the file is nested too deeply", "write plain tables."),)
    except ValueError as error:  # TOMLDecodeError is one; so is a number of thousands of digits
        return None, (_syntax(str(error), text, source),)
    return _Reader(raw, Lines(text), source).read()


def _syntax(message: str, text: str, source: str) -> Problem:
    """tomllib's message with the place in front."""
    place = SYNTAX.search(message)
    last = text.rstrip().count("\n") + 1
    line = place["line"] if place and place["line"] else last
    column = f" at column {place['column']}" if place and place["column"] else " at the end of the file"
    said = SYNTAX.sub("", message).rstrip(".")
    return Problem(f"{source}:{line}", "syntax", f"not valid TOML{column if place else ''}: {said}", "mend the line.")


class _Reader:
    """One file on its way from raw tables to a procedure."""

    def __init__(self, raw: dict[str, Any], lines: Lines, source: str) -> None:
        self.raw, self.lines, self.source = raw, lines, source
        self.problems: list[Problem] = []
        self.lost: list[str] = []  # need and use of consumables that could not be settled

    def read(self) -> tuple[Procedure | None, tuple[Problem, ...]]:
        from cribkit.domain.procedure import schema

        top = self._settle(schema.ProcedureTable, self.raw, ())
        of = self.lines.of
        torques = self._tables("torque", schema.TorqueTable)
        draft = Draft(
            tools=tuple(_tool(table, of(path)) for path, table in self._tables("tool", schema.ToolTable)),
            torques=tuple(_torque(table, of(path)) for path, table in torques),
            paths=tuple(path for path, _ in torques),
            consumables=tuple(
                _consumable(table, of(path)) for path, table in self._tables("consumable", schema.ConsumableTable)
            ),
            lost=tuple(self.lost),
            source=self.source,
            lines=self.lines,
        )
        self.problems += check_draft(draft)
        if self.problems or top is None:
            return None, tuple(sorted(set(self.problems), key=_by_line))
        return _procedure(top, draft, self.lines), ()

    def _tables(self, name: str, model: type[M]) -> list[tuple[Path, M]]:
        """Each table of an array of tables that can be settled, with its path."""
        tables = self.raw.get(name, [])
        found = []
        for at, table in enumerate(tables if isinstance(tables, list) else []):
            path: Path = (name, at)
            if not isinstance(table, dict):
                self._add(path, "not-a-table", f"{name} {at + 1} is not a table", f"write [[{name}]] above its keys.")
            elif (settled := self._settle(model, table, path)) is not None:
                found.append((path, settled))
            elif name == "consumable":
                self.lost.append(f"{table.get('need', '')} {table.get('use', '')}")
        return found

    def _settle(self, model: type[M], table: dict[str, Any], path: Path) -> M | None:
        """Validate, and note every error; then without the bad keys, so that the checks between tables still see it."""
        from pydantic import ValidationError

        try:
            return model.model_validate(table)
        except ValidationError as error:
            found = error.errors(include_url=False)
        bad = {str(one["loc"][0]) for one in found}
        for one in found:
            self._pydantic(model, dict(one), path)
        try:
            return model.model_validate({key: value for key, value in table.items() if key not in bad})
        except ValidationError:
            return None

    def _pydantic(self, model: type[BaseModel], error: dict[str, Any], path: Path) -> None:
        """One error of pydantic in our words, at its line."""
        loc: Path = tuple(error["loc"])
        self._add((*path, *loc), *_words(error, _keys(model, loc)))

    def _add(self, path: Path, code: str, message: str, todo: str) -> None:
        self.problems.append(Problem(f"{self.source}:{self.lines.of(path)}", code, message, todo))


def _keys(model: type[BaseModel], loc: Path) -> list[str]:
    """The keys of the table in which an error stands: the model's own, or those of its `reach`."""
    if len(loc) > 1 and loc[0] == "reach":
        from cribkit.domain.procedure.schema import ReachTable

        return list(ReachTable.model_fields)
    return list(model.model_fields)


def _words(error: dict[str, Any], keys: list[str]) -> tuple[str, str, str]:
    """Code, message and next step for an error of pydantic."""
    key = ".".join(str(part) if isinstance(part, str) else str(part + 1) for part in error["loc"])
    context = error.get("ctx", {})
    match error["type"]:
        case "ours":
            return context["code"], f"{key}: {context['message']}", context["todo"]
        case "missing":
            return "missing-key", f"{key!r} is missing", "write it."
        case "extra_forbidden":
            return "unknown-key", f"{key!r} is not a key of this table", _nearest(str(error["loc"][-1]), keys)
        case "greater_than_equal" | "less_than_equal":
            limit = f"at least {context['ge']}" if "ge" in context else f"at most {context['le']}"
            return "out-of-range", f"{key} is {error['input']}", f"it has to be {limit}."
        case "string_too_long":
            return "too-long", f"{key} is longer than {context['max_length']} letters", "say it shorter."
        case "list_type" if key in ("tool", "torque", "consumable"):
            return "wrong-kind", f"{key} is {_shown(error['input'])}", f"begin each with a line [[{key}]]."
        case kind:
            wanted = KINDS.get(kind, "another kind of value")
            return "wrong-kind", f"{key} is {_shown(error['input'])}", f"it has to be {wanted}."


KINDS = {
    "string_type": 'text in quotes, such as "10 N·m"',
    "int_type": "a whole number without quotes",
    "int_from_float": "a whole number without quotes",
    "bool_type": "true or false without quotes",
    "list_type": 'a list, such as ["first", "second"]',
    "model_type": 'a table, such as { adapter = "10 mm crowfoot", offset = "40 mm" }',
}


def _shown(value: object) -> str:
    """What was written, short."""
    shown = repr(value)
    return shown if len(shown) <= 40 else f"{shown[:37]}..."


def _nearest(key: str, keys: list[str]) -> str:
    """The known key that was probably meant."""
    near = get_close_matches(key, keys, n=1)
    return f"did you mean {near[0]!r}?" if near else f"the keys are {', '.join(keys)}."


def _tool(table: schema.ToolTable, line: int) -> ToolNeed:
    return ToolNeed(table.need, table.count, table.use, tuple(table.instead), table.optional, line)


def _torque(table: schema.TorqueTable, line: int) -> TorqueNeed:
    own = table.model_dump(exclude={"steps", "reach"})
    return TorqueNeed(**own, steps=tuple(table.steps), reach=_reach(table.reach), line=line)


def _reach(table: schema.ReachTable | None) -> Reach | None:
    if table is None:
        return None
    return Reach(
        adapter=table.adapter,
        offset_mm=parse_length_mm(table.offset) if table.offset else None,
        angle_deg=parse_angle_deg(table.angle),
        extension_mm=parse_length_mm(table.extension) if table.extension else None,
        joint=table.joint,
    )


def _consumable(table: schema.ConsumableTable, line: int) -> ConsumableNeed:
    amount = parse_amount(table.amount)
    return ConsumableNeed(table.need, amount, tuple(table.never), table.use, table.optional, line)


def _procedure(top: schema.ProcedureTable, draft: Draft, lines: Lines) -> Procedure:
    return Procedure(
        id=top.id,
        title=top.title,
        applies_to=top.applies_to,
        source=top.source,
        revision=top.revision,
        minutes=top.minutes if "minutes" in top.model_fields_set else 0,
        cautions=tuple(top.cautions),
        covers=tuple(top.covers),
        moves=tuple(top.moves),
        tools=draft.tools,
        torques=tuple(replace(need, known=need.asks()) for need in draft.torques),
        consumables=draft.consumables,
        file=draft.source,
        line=lines.of(("id",)),
    )


def _by_line(problem: Problem) -> tuple[int, str]:
    return int(problem.source.rpartition(":")[2]), problem.message
