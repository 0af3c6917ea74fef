"""One place prints answers and problems."""

from __future__ import annotations

import os
import shutil
import sys

import typer

from cribkit.cli.options import Form
from cribkit.domain.problem import BadInput, CribUnusable, Problem
from cribkit.report.answer import Answer
from cribkit.report.forms import as_csv, as_json, as_markdown, as_table

WIDEST = 100  # a page wider than this is hard to read


def emit(answer: Answer, form: Form, failure: int = 1, warnings: tuple[Problem, ...] = ()) -> None:
    """Print the answer on stdout and its problems on stderr; end with 1 (or `failure`) if the answer is no.

    `warnings`: about the crib's file, told as problems of the answer.
    """
    answer = answer._replace(problems=(*answer.problems, *warnings))
    text = written(answer, form)
    try:
        typer.echo(text)
    except BrokenPipeError:
        raise
    except OSError as error:
        drop_stdout()
        raise unwritten(error) from error
    for problem in answer.problems:
        print(problem, file=sys.stderr)
    if not answer.ok:
        raise typer.Exit(failure)


def drop_stdout() -> None:
    """Keep Python from flushing what is left into an output that takes nothing more."""
    os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())


def unwritten(error: OSError) -> CribUnusable:
    """The answer was found and cannot be handed over: a full disk behind `> file`."""
    problem = Problem(
        source="",
        code="answer-not-written",
        message=f"the answer cannot be written ({error.strerror})",
        next="write it elsewhere; a posting of this command was made: do not post it again.",
    )
    return CribUnusable(problem)


def written(answer: Answer, form: Form) -> str:
    """The answer in one form."""
    match form:
        case Form.JSON:
            return as_json(answer.command, answer.ok, answer.result(), answer.problems)
        case Form.CSV:
            return as_csv(answer.listing())
        case Form.MARKDOWN:
            return answer.markdown() if answer.markdown else as_markdown(answer.listing())
        case Form.HTML:
            return sheet(answer)
        case Form.TABLE:
            return answer.text(page_width()) if answer.text else as_table(answer.listing(), page_width())


def sheet(answer: Answer) -> str:
    """The HTML page, where the command has one."""
    if answer.sheet is None:
        raise BadInput.of("no-sheet", f"`{answer.command}` has no sheet for paper", "use another --as form.")
    return answer.sheet()


def page_width() -> int:
    """Columns of the terminal; 80 where there is none."""
    return max(40, min(WIDEST, shutil.get_terminal_size((80, 24)).columns))
