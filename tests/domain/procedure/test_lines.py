"""The line of each table and key of a TOML text."""

import json
import tomllib
from pathlib import Path

from hypothesis import given
from hypothesis import strategies as st

from cribkit.domain.procedure.lines import Lines

TEXT = Path(__file__).with_name("every_form.toml").read_text(encoding="utf-8")


def test_each_path_has_its_line() -> None:
    lines = Lines(TEXT)
    assert {
        path: lines.of(path)
        for path in [
            ("id",),
            ("quoted key",),
            ("long",),
            ("literal",),
            ("a", "b", "c"),
            ("list",),
            ("list", 0),
            ("list", 1),
            ("list", 2),
            ("table",),
            ("table", "key"),
            ("tool", 0),
            ("tool", 0, "need"),
            ("tool", 1),
            ("tool", 1, "need"),
            ("tool", 1, "inside", "deep"),
            ("tool", 1, "inside", "deep", "two"),
            ("torque", 0),
            ("torque", 0, "step", 1),
            ("torque", 0, "step", 1, "n"),
        ]
    } == {
        ("id",): 2,
        ("quoted key",): 3,
        ("long",): 4,
        ("literal",): 8,
        ("a", "b", "c"): 10,
        ("list",): 11,
        ("list", 0): 12,
        ("list", 1): 13,
        ("list", 2): 16,
        ("table",): 19,
        ("table", "key"): 20,
        ("tool", 0): 21,
        ("tool", 0, "need"): 22,
        ("tool", 1): 23,
        ("tool", 1, "need"): 24,
        ("tool", 1, "inside", "deep"): 26,
        ("tool", 1, "inside", "deep", "two"): 26,
        ("torque", 0): 27,
        ("torque", 0, "step", 1): 30,
        ("torque", 0, "step", 1, "n"): 31,
    }


def test_a_path_that_is_not_there_has_the_line_of_what_is_around_it() -> None:
    lines = Lines(TEXT)
    assert lines.of(("tool", 1, "missing")) == 23
    assert lines.of(("nothing",)) == 1


def quoted(text: str) -> str:
    """A basic string of TOML."""
    return json.dumps(text, ensure_ascii=False)


VALUE = st.one_of(
    st.text(alphabet=st.characters(exclude_categories=["Cs", "Cc"]), max_size=20).map(quoted),
    st.sampled_from(
        ["1", "1.5e3", "true", "2026-11-30T10:00:00Z", "'#[]='", "[1, [2, 3]]", "[\n1,\n2\n]", "{ a = 1 }"]
    ),
    st.sampled_from(['"""\n[x]\na = 1"""', "'''\n\"\"\"\n'''", '"""a\\"""" # "']),
)


@given(st.lists(st.tuples(st.booleans(), VALUE), max_size=15))
def test_every_key_of_a_made_text_is_found_where_it_was_put(rows: list[tuple[bool, str]]) -> None:
    text, wanted, tables = "", {}, -1
    for number, (header, value) in enumerate(rows):
        if header:
            tables += 1
            wanted[("t", tables)] = text.count("\n") + 1
            text += "[[t]]\n"
        path = ("t", tables, f"k{number}") if tables >= 0 else (f"k{number}",)
        wanted[path] = text.count("\n") + 1
        text += f"k{number} = {value} # note = [1\n"
    tomllib.loads(text)
    lines = Lines(text)
    assert {path: lines.of(path) for path in wanted} == wanted
