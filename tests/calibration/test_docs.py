"""The documents say what the tables say, and their example can be recorded."""

import re
from collections.abc import Iterator, Mapping
from pathlib import Path

from cribkit.desk.advice import advise
from cribkit.desk.certificates import read_rows
from cribkit.desk.due_list import due_list
from cribkit.desk.papers import labels
from cribkit.desk.recording import record, shop_rules
from cribkit.domain.calibration.points import plan_for
from cribkit.domain.torque.kinds import mechanisms
from cribkit.report.calibration import advice_answer, policy_answer, record_answer, wrench_answer
from cribkit.report.due import due_answer
from cribkit.report.wrench_sheet import label_answer
from cribkit.store.seed.sheet import parse_sheet
from tests.calibration.world import STRONG, TODAY, calibrate, crib_at, posted, work, wrench

DOCS = Path(__file__).parent.parent.parent / "docs"
WRENCH = """\
tag,description,mechanism,range_min,range_max,unit,graduation,accuracy_pct,drive,calibrated_on
TW-04,torque wrench 3/8 drive 20-110 Nm,click,20,110,N·m,0.5,4,3/8,2025-06-02
"""


def block(file: str, name: str) -> list[str]:
    """The lines of a marked block of a document."""
    text = (DOCS / file).read_text(encoding="utf-8")
    return text.partition(f"<!-- {name} -->\n")[2].partition("<!-- end -->")[0].splitlines()


def test_the_table_of_points_is_the_programs() -> None:
    def words(points: tuple[float | str, ...]) -> str:
        names = {"lowest": "lowest mark", "set": "its set torque"}
        return ", ".join(names[p] if isinstance(p, str) else f"{p * 100:.0f} %" for p in points)

    plans = {plan.iso_class: plan for plan in map(plan_for, mechanisms().values())}
    rows = [
        f"| {plan.iso_class} | {words(plan.at)} | {words(plan.or_at)} | {plan.readings} | {plan.preload} |"
        for _, plan in sorted(plans.items())
    ]
    assert block("calibration.md", "points")[2:] == rows


def test_the_example_of_a_certificate_can_be_recorded(tmp_path: Path) -> None:
    text = "\n".join(line.strip() for line in block("file-formats.md", "certificate"))
    sheet = parse_sheet(text.encode(), "c.csv", tuple(text.partition("\n")[0].split(",")), ())
    assert sheet.problems == ()
    with crib_at(tmp_path, WRENCH) as crib:
        entries, problems = read_rows(crib, [(at, row.cells) for at, row in enumerate(sheet.rows, 2)], "c.csv")
        assert problems == ()
        (one,) = record(crib, entries, posted())
        assert (one.finding.fitness, one.finding.found_out, one.finding.warnings) == ("ready", True, ())


def test_the_json_page_names_every_key(tmp_path: Path) -> None:
    page = (DOCS / "json.md").read_text(encoding="utf-8")
    with crib_at(tmp_path) as crib:
        work(crib, "J-1", "TW-1", "2026-06-01", setting=100)
        recorded = (calibrate(crib, "TW-1", "SD-26-101", "2026-11-20", STRONG),)
        answers = [
            record_answer(recorded),
            due_answer(due_list(crib, (), TODAY, 300)),
            advice_answer(advise(crib)),
            policy_answer(shop_rules(crib)),
            label_answer(labels(crib, (), TODAY)),
            wrench_answer("wrench event", wrench(crib, "TW-1"), "noted"),
        ]
    keys = {key for answer in answers for key in keys_of(answer.result())}
    named = set(re.findall(r"`(?:result\.)?(\w+)(?:\[\])?`", page))
    assert keys - named == set()


def keys_of(value: object) -> Iterator[str]:
    """Every key of a JSON value, however deep."""
    if isinstance(value, Mapping):
        for key, inner in value.items():
            yield key
            yield from keys_of(inner)
    elif isinstance(value, list | tuple):
        for inner in value:
            yield from keys_of(inner)
