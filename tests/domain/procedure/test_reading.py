"""A procedure's TOML becomes a checked procedure, or every problem in it with file and line."""

import subprocess
import sys
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from cribkit.domain.procedure import (
    ConsumableNeed,
    Procedure,
    Reach,
    ToolNeed,
    TorqueNeed,
    check_procedures,
    from_json,
    notes,
    read_procedure,
    to_json,
)
from cribkit.domain.procedure.checks import measures_angles
from cribkit.domain.quantity import Amount
from cribkit.domain.torque import parse_spec

DEMO = sorted((Path(__file__).parents[3] / "procedures").glob("*.toml"))

HEAD = """\
id = "invented"
title = "Invented job"
applies_to = "Wren van"
source = "Invented for this test."
cautions = ["Engine cold."]
"""
WHOLE = (
    HEAD
    + """revision = "C"
minutes = 95
covers = ["inlet ports"]
moves = ["seal carrier"]

[[tool]]
need = "8 mm socket, 1/4 drive"
count = 2
use = "duct clamps"
instead = ["8 mm nut driver"]
optional = true

[[tool]]
need = "angle gauge, 1/2 drive"

[[torque]]
id = "head-bolts"
fastener = "cylinder head bolts"
count = 10
head = "E12"
spec = "25 N·m"
tolerance = "10 %"
steps = ["25 N·m", "+90°"]
order = "centre outwards"
reach = { adapter = "10 mm crowfoot", offset = "40 mm", angle = "90°", extension = "150 mm", joint = true }
lubrication = "oiled"
direction = "left-hand"
thread_forming = true
replace = true
without_wrench = "snug, then 1/8 turn"

[[consumable]]
need = "head bolt, M10 x 140"
use = "new cylinder head bolts"
amount = "10"

[[consumable]]
need = "throttle-body-safe cleaner"
amount = "0.12 L"
never = ["brake parts cleaner"]
optional = true
"""
)


def problems(text: str) -> list[str]:
    """Every problem of the text as a person reads it."""
    procedure, found = read_procedure(text, "p.toml")
    assert (procedure is None) == bool(found)
    return [str(problem) for problem in found]


def codes(text: str) -> list[tuple[str, str]]:
    """Place and code of every problem."""
    return [(problem.source, problem.code) for problem in read_procedure(text, "p.toml")[1]]


def test_every_key_arrives_in_the_procedure() -> None:
    procedure, found = read_procedure(WHOLE, "p.toml")
    assert found == ()
    assert procedure == Procedure(
        id="invented",
        title="Invented job",
        applies_to="Wren van",
        source="Invented for this test.",
        revision="C",
        minutes=95,
        cautions=("Engine cold.",),
        covers=("inlet ports",),
        moves=("seal carrier",),
        tools=(
            ToolNeed("8 mm socket, 1/4 drive", 2, "duct clamps", ("8 mm nut driver",), True, 11),
            ToolNeed("angle gauge, 1/2 drive", line=18),
        ),
        torques=(
            TorqueNeed(
                id="head-bolts",
                fastener="cylinder head bolts",
                spec="25 N·m",
                count=10,
                head="E12",
                tolerance="10 %",
                steps=("25 N·m", "+90°"),
                order="centre outwards",
                reach=Reach("10 mm crowfoot", 40.0, 90.0, 150.0, True),
                lubrication="oiled",
                direction="left-hand",
                thread_forming=True,
                replace=True,
                without_wrench="snug, then 1/8 turn",
                line=21,
            ),
        ),
        consumables=(
            ConsumableNeed("head bolt, M10 x 140", Amount(10, "each", "10"), (), "new cylinder head bolts", False, 37),
            ConsumableNeed(
                "throttle-body-safe cleaner", Amount(120, "mL", "0.12 L"), ("brake parts cleaner",), "", True, 42
            ),
        ),
        file="p.toml",
    )


def test_a_byte_order_mark_and_windows_line_ends_change_nothing() -> None:
    dos, found = read_procedure("\ufeff" + WHOLE.replace("\n", "\r\n"), "p.toml")
    assert (dos, found) == (read_procedure(WHOLE, "p.toml")[0], ())


def test_all_problems_are_told_at_once_each_at_its_line() -> None:
    text = """\
id = "bad job"
titel = "x"
applies_to = ""
minutes = 0
cautions = ["ok",
  "bad \\u001b[31m", 3]
source = "Invented"

[[tool]]
need = "socket"
count = -1
drvie = "3/8"

[[torque]]
id = "a"
fastener = "head bolts"
count = 7
spec = "10 N·m (9 ft-lb)"
replace = true

[[torque]]
id = "a"
fastener = "sump bolts"
spec = \"\"\"8-10
 N·m\"\"\"
tolerance = "10 %"
reach = { adpater = "crow", offset = "40" }

[[torque]]
id = "c"
fastener = "hub nut"
spec = "20 Nm"
steps = ["20 N·m",
   "+90°"]
reach = { adapter = "crowfoot" }

[[torque]]
id = "d"
fastener = "plug"
spec = "tight"
count = "7"
direction = "widdershins"

[[consumable]]
need = "head bolt, new"
amount = "5"

[[consumable]]
need = "cleaner"
amount = "5 fl oz"

[spare]
x = 1
"""
    assert codes(text) == [
        ("p.toml:1", "missing-key"),
        ("p.toml:1", "bad-id"),
        ("p.toml:2", "unknown-key"),
        ("p.toml:3", "empty"),
        ("p.toml:4", "out-of-range"),
        ("p.toml:6", "control-character"),
        ("p.toml:6", "wrong-kind"),
        ("p.toml:11", "out-of-range"),
        ("p.toml:12", "unknown-key"),
        ("p.toml:18", "disagrees"),
        ("p.toml:19", "no-replacement"),
        ("p.toml:22", "duplicate-id"),
        ("p.toml:26", "two-tolerances"),
        ("p.toml:27", "unknown-key"),
        ("p.toml:27", "not-length"),
        ("p.toml:33", "no-angle-gauge"),
        ("p.toml:35", "no-offset"),
        ("p.toml:40", "no-number"),
        ("p.toml:41", "wrong-kind"),
        ("p.toml:42", "bad-direction"),
        ("p.toml:50", "ambiguous"),
        ("p.toml:52", "unknown-key"),
    ]


@pytest.mark.parametrize(
    ("lines", "said"),
    [
        ('titel = "x"', "p.toml:6: 'titel' is not a key of this table: did you mean 'title'?"),
        (
            '[[tool]]\nneed = "socket"\ncount = 0',
            "p.toml:8: count is 0: it has to be at least 1.",
        ),
        ("[[tool]]\ncount = 1", "p.toml:6: 'need' is missing: write it."),
        ("[[tool]]\nneed = 10", 'p.toml:7: need is 10: it has to be text in quotes, such as "10 N·m".'),
        (
            '[[tool]]\nneed = "socket"\noptional = "no"',
            "p.toml:8: optional is 'no': it has to be true or false without quotes.",
        ),
        (
            '[[tool]]\nneed = "socket"\ninstead = "spanner"',
            'p.toml:8: instead is \'spanner\': it has to be a list, such as ["first", "second"].',
        ),
        ('tool = ["socket"]', "p.toml:6: tool 1 is not a table: write [[tool]] above its keys."),
        (
            '[tool]\nneed = "x"',
            "p.toml:6: tool is {'need': 'x'}: begin each with a line [[tool]].",
        ),
        ("minutes = nan", "p.toml:6: minutes is nan: it has to be a whole number without quotes."),
        ("minutes = 1.5", "p.toml:6: minutes is 1.5: it has to be a whole number without quotes."),
        (
            '[[torque]]\nid = "t"\nfastener = "nut"\nspec = "10 N·m (8 ft-lb)"',
            "p.toml:9: spec of t: '10 N·m (8 ft-lb)': the first value is 7.37562 ft-lb, the second says 8 ft-lb: "
            "find out which one is right and mend the other.",
        ),
        (
            '[[torque]]\nid = "t"\nfastener = "hub nuts"\nspec = "10 N·m"\ncount = 2\nreplace = true',
            "p.toml:11: hub nuts (t) are used once; no new ones are asked for: "
            'add a [[consumable]] whose need or use says "hub nuts", amount = "2".',
        ),
        (
            '[[torque]]\nid = "t"\nfastener = "bolt"\nspec = "30 N·m"\nsteps = ["30 N·m", "+90°"]',
            "p.toml:10: t is tightened by an angle, and no tool of the procedure measures one: "
            'add a [[tool]] with need = "angle gauge, 1/2 drive"; a wrench that measures angle serves it too.',
        ),
        (
            '[[consumable]]\nneed = "oil"\namount = "4 quarts"',
            "p.toml:8: amount: 'quarts' is 946 mL in the US and 1137 mL in the UK: "
            'write it as "4", "120 mL", "0.5 L", "250 g" or "1.5 m".',
        ),
        ('title = "again"', "p.toml:6: not valid TOML at column 16: Cannot overwrite a value: mend the line."),
        ('x = "', "p.toml:6: not valid TOML at column 6: Illegal character '\\n': mend the line."),
    ],
)
def test_a_problem_says_what_is_wrong_and_what_to_do(lines: str, said: str) -> None:
    assert problems(f"{HEAD}{lines}\n") == [said]


def test_what_stands_in_for_an_angle_gauge_measures_angles_and_neither_is_optional() -> None:
    torque = '[[torque]]\nid = "t"\nfastener = "bolt"\nspec = "30 N·m"\nsteps = ["30 N·m", "+90°"]\n'
    gauge = '[[tool]]\nneed = "degree wheel"\ninstead = ["torque angle gauge"]\n'
    assert codes(HEAD + gauge + torque) == []
    marker = gauge.replace("degree wheel", "marker")
    assert codes(HEAD + marker + torque) == [("p.toml:13", "no-angle-gauge")]
    assert codes(HEAD + gauge + "optional = true\n" + torque) == [("p.toml:14", "no-angle-gauge")]


@pytest.mark.parametrize(
    ("tool", "measures"),
    [
        ("angle gauge, 1/2 drive", True),
        ("Torque-angle gauge", True),
        ("GAUGE, ANGLE, 1/2 DR", True),
        ("electronic torque-angle wrench 20-200 N·m", True),
        ("degree wheel", True),
        ("torque wrench 20-200 N·m", False),
        ("angle grinder", False),
        ("right-angle ratchet", False),
        ("feeler gauge", False),
    ],
)
def test_which_tools_measure_angles(tool: str, measures: bool) -> None:
    assert measures_angles(tool) == measures


@pytest.mark.parametrize(
    ("reach", "found"),
    [
        ('{ adapter = "crowfoot" }', ["no-offset"]),
        ('{ adapter = "crowfoot", angle = "45°" }', ["no-offset"]),
        ('{ adapter = "crowfoot", angle = "90°" }', []),
        ('{ adapter = "3/8 to 1/4 adapter", offset = "0 mm" }', []),
        ('{ adapter = "crowfoot", offset = "1.5 in" }', []),
        ('{ extension = "150 mm" }', []),
        ('{ extension = "150" }', ["not-length"]),
        ('{ joint = "yes" }', ["wrong-kind"]),
        ('"crowfoot"', ["wrong-kind"]),
    ],
)
def test_an_adapter_that_changes_the_setting_says_by_how_much(reach: str, found: list[str]) -> None:
    torque = f'[[torque]]\nid = "t"\nfastener = "bolt"\nspec = "30 N·m"\nreach = {reach}\n'
    assert [code for _, code in codes(HEAD + torque)] == found


def test_part_of_a_turn_by_eye_needs_no_angle_gauge() -> None:
    torque = '[[torque]]\nid = "t"\nfastener = "bolt"\nspec = "30 N·m"\nsteps = ["30 N·m", "+1/4 turn"]\n'
    assert codes(HEAD + torque) == []


@pytest.mark.parametrize(
    ("need", "amount", "found"),
    [
        ("wheel hub nut, new", "2", []),
        ("hub nuts (front)", "3", []),
        ("self-locking nuts", "2", ["no-replacement"]),
        ("hub nut", "1", ["no-replacement"]),
        ("hub nut grease", "20 g", ["no-replacement"]),
    ],
)
def test_a_fastener_used_once_needs_as_many_new_ones(need: str, amount: str, found: list[str]) -> None:
    torque = '[[torque]]\nid = "t"\nfastener = "hub nuts"\nspec = "30 N·m"\ncount = 2\nreplace = true\n'
    consumable = f'[[consumable]]\nneed = "{need}"\namount = "{amount}"\n'
    assert [code for _, code in codes(HEAD + torque + consumable)] == found


def test_two_fasteners_do_not_share_one_set_of_new_ones() -> None:
    torque = '[[torque]]\nid = "{}"\nfastener = "hub nuts"\nspec = "30 N·m"\ncount = 2\nreplace = true\n'
    new = '[[consumable]]\nneed = "hub nut"\namount = "3"\n'
    assert codes(HEAD + torque.format("left") + torque.format("right") + new) == [
        ("p.toml:11", "no-replacement"),
        ("p.toml:17", "no-replacement"),
    ]


def test_two_files_may_not_have_one_id() -> None:
    first, _ = read_procedure(HEAD, "a.toml")
    second, _ = read_procedure(HEAD.replace("invented", "Invented"), "b.toml")
    assert first
    assert second
    assert [str(problem) for problem in check_procedures([first, second])] == [
        "b.toml:1: the id 'Invented' is taken by a.toml:1: give one of them another."
    ]


def test_what_is_doubtful_is_a_note_and_no_error() -> None:
    bare = HEAD.replace('cautions = ["Engine cold."]\n', "")
    procedure, found = read_procedure(bare, "p.toml")
    assert found == ()
    assert procedure
    assert [problem.code for problem in notes(procedure)] == ["note-no-cautions", "note-no-needs"]


@pytest.mark.parametrize(
    ("lines", "found"),
    [
        ('[[tool]]\nneed = "8 mm socket, 1/4 drive"', []),
        ('[[tool]]\nneed = "flibbertigibbet"', ["note-not-understood"]),
        ('[[tool]]\nneed = "8 mm socket"\ninstead = ["flibbertigibbet"]', ["note-not-understood"]),
        ('[[torque]]\nid = "t"\nfastener = "nut"\nspec = "5 N·m"\nhead = "8 mm hex"', []),
        ('[[torque]]\nid = "t"\nfastener = "nut"\nspec = "5 N·m"', ["note-no-head"]),
        ('[[torque]]\nid = "t"\nfastener = "nut"\nspec = "5 N·m"\nhead = "strange"', ["note-no-head"]),
        ('[[consumable]]\nneed = "alternator, Heron"\namount = "1"', []),
        ('[[consumable]]\nneed = "x"\namount = "1"\nnever = ["flibbertigibbet"]', ["note-not-understood"]),
    ],
)
def test_what_cannot_be_understood_gives_a_note(lines: str, found: list[str]) -> None:
    procedure, problems = read_procedure(f"{HEAD}{lines}\n", "p.toml")
    assert problems == ()
    assert procedure
    assert [note.code for note in notes(procedure)] == found


@pytest.mark.parametrize("path", DEMO, ids=lambda path: path.stem)
def test_the_demo_procedures_have_no_error_and_survive_json(path: Path) -> None:
    procedure, found = read_procedure(path.read_text(encoding="utf-8"), path.name)
    assert found == ()
    assert procedure
    assert procedure.id == path.stem
    thawed = from_json(to_json(procedure), path.name)
    assert thawed == procedure
    assert [need.known for need in thawed.torques] == [
        parse_spec(need.spec, need.tolerance, need.steps) for need in procedure.torques
    ]


@given(text=st.one_of(st.text(max_size=200), st.text(alphabet="[]{}=\"\n.#ab1'\\,torqueid ", max_size=200)))
def test_any_text_gives_a_procedure_or_problems_with_a_line(text: str) -> None:
    procedure, found = read_procedure(text, "p.toml")
    assert (procedure is None) == bool(found)
    last = text.count("\n") + 1
    for problem in found:
        assert 1 <= int(problem.source.removeprefix("p.toml:")) <= last
        assert problem.message
        assert problem.next


# Keys of the format with values of every kind: whatever stands there, it is told and nothing falls over.
VALUES = st.sampled_from(
    ['"text"', '""', "1", "-1", "0", "1.5", "nan", "true", "[]", '["a", "b"]', "[1]", "{}", '{ offset = "4 mm" }',
     "2026-11-30", '"10 N·m"', '"8-10 N·m"', '"10 %"', '["+90°"]', '"4"', '"120 mL"', '"""long\ntext"""', "[[1], [2]]"]
)  # fmt: skip
NAMES = [
    "id",
    "title",
    "applies_to",
    "source",
    "minutes",
    "cautions",
    "need",
    "count",
    "use",
    "instead",
    "optional",
    "fastener",
    "head",
    "spec",
    "tolerance",
    "steps",
    "reach",
    "lubrication",
    "direction",
    "thread_forming",
    "replace",
    "without_wrench",
    "amount",
    "never",
    "other",
    "reach.offset",
    '"a.b"',
]
KEYS = st.sampled_from(NAMES)
TABLES = st.sampled_from(["[[tool]]", "[[torque]]", "[[consumable]]", "[tool]", "[x]", "[[torque.steps]]"])


@given(
    start=st.sampled_from(["", HEAD, WHOLE]),
    body=st.lists(st.one_of(TABLES, st.builds("{} = {}".format, KEYS, VALUES)), max_size=12),
)
def test_any_arrangement_of_keys_gives_a_procedure_or_problems(start: str, body: list[str]) -> None:
    text = start + "\n".join(body)
    procedure, found = read_procedure(text, "p.toml")
    assert (procedure is None) == bool(found)
    if procedure:
        assert from_json(to_json(procedure), "p.toml") == procedure
    for problem in found:
        assert 1 <= int(problem.source.removeprefix("p.toml:")) <= text.count("\n") + 1


def test_a_procedure_from_the_cache_loads_no_reader() -> None:
    code = (
        "import sys; from pathlib import Path; from cribkit.desk.procedures import find_procedure; "
        "[need.asks() for need in find_procedure('plenum-reseal', demo=True).torques]; "
        "print([name for name in ('pydantic', 'pint', 'cribkit.domain.torque.spec', 'cribkit.domain.quantity.torque', "
        "'cribkit.domain.procedure.reader') if name in sys.modules])"
    )
    runs = [subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True) for _ in range(2)]
    assert "pydantic" in runs[0].stdout or runs[0].stdout == "[]\n"  # an earlier test may have filled the cache
    assert runs[1].stdout == "[]\n"
