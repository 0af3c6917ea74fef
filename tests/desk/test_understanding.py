"""What the words of procedures mean is read once; from the cache it is exactly the same."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

import cribkit
from cribkit.desk import understanding
from cribkit.desk.procedures import all_procedures, find_procedure
from cribkit.desk.understanding import Understanding, words_of
from cribkit.domain.wording import head_drivers, near, read
from cribkit.store import cache


def test_every_word_of_the_demo_means_the_same_when_it_is_read_and_when_it_is_kept() -> None:
    for procedure in all_procedures(demo=True):
        for _ in range(2):  # the second time from the cache
            known = Understanding([procedure])
            for text, kind in words_of(procedure):
                assert known.read(text, kind) == read(text, kind)
            for torque in procedure.torques:
                assert known.heads(torque.head) == head_drivers(torque.head)


def test_what_is_not_known_yet_is_read() -> None:
    assert Understanding().read("8 mm socket, 1/4 drive", "tool") == read("8 mm socket, 1/4 drive", "tool")
    assert Understanding().heads("T30") == head_drivers("T30")


@pytest.mark.parametrize("damage", ["", "[1]", '[[["a"]], []]', '[[["a", "tool", "{}"]], []]', "null"])
def test_a_kept_reading_that_makes_no_sense_is_read_again(monkeypatch: pytest.MonkeyPatch, damage: str) -> None:
    procedure = find_procedure("plenum-reseal", demo=True)
    with monkeypatch.context() as patch:
        patch.setattr(understanding, "cached", lambda *args: damage)
        known = Understanding([procedure])
    need = procedure.tools[0].need
    assert known.read(need, "tool") == read(need, "tool")


def test_the_second_check_of_a_procedure_loads_no_reader(tmp_path: Path) -> None:
    code = (
        "import sys; from cribkit.desk.procedures import find_procedure; "
        "from cribkit.desk.understanding import Understanding; "
        "procedure = find_procedure('plenum-reseal', demo=True); known = Understanding([procedure]); "
        "known.read(procedure.tools[0].need, 'tool'); print('cribkit.domain.wording.reader' in sys.modules)"
    )
    env = {**os.environ, "XDG_CACHE_HOME": str(tmp_path)}
    runs = [
        subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True, env=env).stdout
        for _ in range(2)
    ]
    assert runs == ["True\n", "False\n"]


def test_judging_without_lengths_loads_no_exact_fractions() -> None:
    code = "import sys, cribkit.domain.wording.rule; print('fractions' in sys.modules, 'decimal' in sys.modules)"
    run = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert run.stdout == "False False\n"


def test_functions_named_like_their_modules_stay_functions() -> None:
    assert callable(read)
    assert callable(near)
    assert callable(cribkit.domain.wording.read)  # type: ignore[attr-defined]  # imported above, by its full name


def test_a_change_of_any_reader_or_table_gives_another_mark(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    for name in ("domain/wording/data/words.toml", "domain/wording/lexer.py", "domain/tables.py"):
        path = tmp_path / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text("1", encoding="utf-8")
    monkeypatch.setattr(cribkit, "__file__", str(tmp_path / "__init__.py"))

    def mark() -> str:
        cache.program.cache_clear()
        return cache.program()

    marks = [mark(), mark()]
    for name in ("domain/wording/data/words.toml", "domain/wording/lexer.py", "domain/tables.py"):
        (tmp_path / name).write_text("22", encoding="utf-8")
        marks.append(mark())
    cache.program.cache_clear()
    assert marks[0] == marks[1]
    assert len(set(marks)) == 4
