"""Procedures by id or by file, and the check of whole folders."""

from __future__ import annotations

import os
from collections import Counter
from collections.abc import Iterable
from pathlib import Path
from typing import NamedTuple

from cribkit.domain.problem import BadInput, Problem, refuse
from cribkit.domain.procedure import READER_VERSION, Procedure, from_json, to_json
from cribkit.store.cache import cached, forget, program
from cribkit.store.demo_folder import demo_folder

HERE = Path("procedures")
SUFFIX = ".toml"
LARGEST = 1_000_000  # bytes: a procedure is a page, not a book


class Lint(NamedTuple):
    """What a check of procedure files found."""

    files: int
    procedures: tuple[Procedure, ...]  # those without an error
    errors: tuple[Problem, ...]
    notes: tuple[Problem, ...]


def procedures_folder(folder: Path | None = None, demo: bool = False) -> Path:
    """Where ids are looked up: the folder that was named, else the demo's, else procedures/ here."""
    return folder or (demo_folder("procedures") if demo else HERE)


def find_procedure(name: str, folder: Path | None = None, demo: bool = False) -> Procedure:
    """The procedure of this id in the folder, or in the file of this name. BadInput with every problem of its file,
    or with the nearest ids where there is none."""
    if name.endswith(SUFFIX) or os.sep in name:
        return read_file(Path(name))
    top = procedures_folder(folder, demo)
    if (guess := top / f"{name}{SUFFIX}").is_file() and (found := read_file(guess)).id == name:
        return found
    readable = _readable(top)
    for procedure in readable:
        if procedure.id == name:
            return procedure
    raise _unknown(name, top, [procedure.id for procedure in readable])


def find_procedures(names: Iterable[str], folder: Path | None = None, demo: bool = False) -> tuple[Procedure, ...]:
    """Several procedures; the problems of all of them at once."""
    found: list[Procedure] = []
    problems: list[Problem] = []
    for name in names:
        try:
            found.append(find_procedure(name, folder, demo))
        except BadInput as error:
            problems += error.problems
    refuse([*problems, *_named_twice(found)])
    return tuple(found)


def _named_twice(procedures: Iterable[Procedure]) -> Iterable[Problem]:
    """One procedure for two vehicles would need everything twice, which no line of the answer could tell apart."""
    for name, times in Counter(procedure.id for procedure in procedures).items():
        if times > 1:
            todo = "name it once; for a second vehicle check again when the first job has been pulled."
            yield Problem(name, "named-twice", "this procedure is named more than once", todo)


def all_procedures(folder: Path | None = None, demo: bool = False) -> tuple[Procedure, ...]:
    """Every procedure of the folder, by id. BadInput with every problem of every file."""
    found: list[Procedure] = []
    problems: list[Problem] = []
    for path in files_of(procedures_folder(folder, demo)):
        try:
            found.append(read_file(path))
        except BadInput as error:
            problems += error.problems
    refuse([*problems, *_duplicates(procedure.claim for procedure in found)])
    return tuple(sorted(found, key=lambda procedure: procedure.id))


def procedure_ids(folder: Path | None = None, demo: bool = False) -> tuple[tuple[str, str], ...]:
    """Id and title of each procedure that can be read; for completion, so that it never fails."""
    try:
        return tuple((procedure.id, procedure.title) for procedure in _readable(procedures_folder(folder, demo)))
    except BadInput:
        return ()


def read_all(paths: Iterable[Path]) -> Lint:
    """Files, and the TOML files of folders: what can be read, and every problem of what cannot."""
    found: list[Procedure] = []
    errors: list[Problem] = []
    files: list[Path] = []
    for path in paths:
        try:
            files += files_of(path) if path.is_dir() or not path.exists() else [path]
        except BadInput as error:
            errors += error.problems
    files = list(dict.fromkeys(files))
    claims: list[tuple[str, str]] = []
    for path in files:
        try:
            found.append(read_file(path))
            claims.append(found[-1].claim)
        except BadInput as error:
            errors += error.problems
            claims += _claim(path)
    return Lint(len(files), tuple(found), (*errors, *_duplicates(claims)), ())


def lint(paths: Iterable[Path]) -> Lint:
    """Every problem of files and folders at once, and the notes on those without an error."""
    from cribkit.domain.procedure import notes

    read = read_all(paths)
    return read._replace(notes=tuple(note for procedure in read.procedures for note in notes(procedure)))


def files_of(folder: Path) -> list[Path]:
    """The TOML files in a folder, in the order of their names."""
    try:
        files = sorted(path for path in folder.iterdir() if path.suffix == SUFFIX and not path.name.startswith("."))
    except OSError as error:
        todo = "name a folder with --procedures, or use --demo."
        raise BadInput.of("no-folder", f"the procedures cannot be read: {error.strerror}", todo, str(folder)) from None
    if not files:
        raise BadInput.of("no-procedures", "the folder has no .toml file", "name another folder.", str(folder))
    return files


def read_file(path: Path) -> Procedure:
    """The checked procedure of one file, from the cache if the same text was checked before."""
    text, source = _text(path), str(path)
    version = f"{READER_VERSION}-{program()}"
    frozen = cached("procedures", version, text, lambda: to_json(_checked(text, source)))
    try:
        return from_json(frozen or "", source)
    except (ValueError, KeyError, TypeError):
        forget("procedures", version, text)
        return _checked(text, source)


def _checked(text: str, source: str) -> Procedure:
    from cribkit.domain.procedure import read_procedure

    procedure, problems = read_procedure(text, source)
    refuse(problems)
    if procedure is None:
        raise BadInput.of("unreadable", "the procedure cannot be read", "run `cribkit lint` on it.", source)
    return procedure


def _text(path: Path) -> str:
    """The file as text; UTF-8 with or without a byte order mark."""
    try:
        with path.open("rb") as file:
            data = file.read(LARGEST + 1)
    except (OSError, ValueError) as error:
        why = error.strerror if isinstance(error, OSError) else "no such file"
        raise BadInput.of("no-file", f"the file cannot be read: {why}", "name another.", str(path)) from None
    if len(data) > LARGEST:
        raise BadInput.of("too-long", "the file is too long to be a procedure", "name its TOML file.", str(path))
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        line = data[: error.start].count(b"\n") + 1
        raise BadInput.of("not-utf-8", "the file is not UTF-8", "save it as UTF-8.", f"{path}:{line}") from None


def _readable(folder: Path) -> list[Procedure]:
    """The procedures of a folder that have no error."""
    found = []
    for path in files_of(folder):
        try:
            found.append(read_file(path))
        except BadInput:
            continue
    return found


def _duplicates(claims: Iterable[tuple[str, str]]) -> tuple[Problem, ...]:
    """Ids that two files claim; the checks are imported only if there are."""
    found = list(claims)
    if len({name.casefold() for name, _ in found}) == len(found):
        return ()
    from cribkit.domain.procedure import check_ids

    return check_ids(found)


def _claim(path: Path) -> list[tuple[str, str]]:
    """The id that a file with errors claims all the same, and where."""
    import tomllib

    try:
        text = _text(path)
        name = tomllib.loads(text).get("id")
    except (BadInput, tomllib.TOMLDecodeError):
        return []
    keys = [line.partition("=")[0].strip() for line in text.splitlines()]
    line = keys.index("id") + 1 if "id" in keys else 1
    return [(name, f"{path}:{line}")] if isinstance(name, str) and name else []


def _unknown(name: str, folder: Path, ids: list[str]) -> BadInput:
    """No such id: name the nearest ones."""
    from difflib import get_close_matches

    near = get_close_matches(name, ids, n=3, cutoff=0.4)
    todo = f"did you mean {' or '.join(near)}?" if near else f"`cribkit procedures` lists the {len(ids)} there are."
    return BadInput(Problem(str(folder), "unknown-procedure", f"no procedure has the id {name!r}", todo))
