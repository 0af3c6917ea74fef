"""The documents say what the tables say, and their example can be recorded."""

from pathlib import Path

from cribkit.desk.certificates import read_rows
from cribkit.desk.recording import record
from cribkit.domain.calibration.points import plan_for
from cribkit.domain.torque.kinds import mechanisms
from cribkit.store.seed.sheet import parse_sheet
from tests.calibration.world import crib_at, posted

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
