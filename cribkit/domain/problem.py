"""Broken rules as data, and the exceptions for "cannot go on".

A check returns a tuple of problems and its caller collects them; one place prints them. An exception is
raised only where the work cannot go on, and carries its exit code and its problems.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import NamedTuple


class Problem(NamedTuple):
    """One broken rule: where it is, what is wrong and what to do next."""

    source: str  # "procedures/plenum.toml:14", "tools.csv:3", a tag, or "" where there is no place
    code: str  # a stable word for programs, such as "unknown-key"
    message: str  # what is wrong, in one sentence
    next: str = ""  # what to do about it, in one sentence

    def __str__(self) -> str:
        text = f"{self.source}: {self.message}" if self.source else self.message
        return f"{text}: {self.next}" if self.next else text

    def as_json(self) -> dict[str, str]:
        """The four keys of the JSON contract."""
        return self._asdict()


class CribkitError(Exception):
    """The work cannot go on. `exit_code` is what the process returns."""

    exit_code = 2

    def __init__(self, *problems: Problem) -> None:
        super().__init__(*problems)
        self.problems: tuple[Problem, ...] = problems

    def __str__(self) -> str:
        return "\n".join(map(str, self.problems))

    @classmethod
    def of(cls, code: str, message: str, todo: str = "", source: str = "") -> CribkitError:
        """An error of one problem."""
        return cls(Problem(source=source, code=code, message=message, next=todo))


class BadInput(CribkitError):  # noqa: N818 - read as a sentence: "raise BadInput"
    """What a person wrote cannot be used; nothing was changed. Exit code 2."""

    exit_code = 2


class CribUnusable(CribkitError):  # noqa: N818 - read as a sentence: "raise CribUnusable"
    """The crib file is missing, busy too long, damaged or from a newer version. Exit code 3."""

    exit_code = 3


def refuse(problems: Iterable[Problem]) -> None:
    """Raise BadInput with every problem, in order of place, if there is one."""
    found = tuple(sorted(set(problems), key=_place))
    if found:
        raise BadInput(*found)


def _place(problem: Problem) -> tuple[str, int, str]:
    """Files in name order, lines as numbers: line 9 comes before line 10."""
    file, _, line = problem.source.rpartition(":")
    if line.isdigit():
        return file, int(line), problem.message
    return problem.source, 0, problem.message
