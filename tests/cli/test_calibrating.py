"""The shop's calibration commands, as a person runs them on a crib's file."""

from __future__ import annotations

import csv
import io
import json
import re
import shutil
import subprocess
from collections.abc import Callable
from pathlib import Path

import pytest
from typer.testing import CliRunner, Result

from cribkit.cli.app import app
from tests.calibration.world import GOOD, STRONG, crib_at, work

Run = Callable[..., Result]
ON = ("--on", "2026-11-25")
BY = ("--by", "R. Vale")
HEAD = "tag,certificate,date,laboratory,device,uncertainty_pct,temperature_c,phase,direction,setting,reading\n"


def sheet(tag: str, number: str, found: dict[str, str], left: dict[str, str] | None = None) -> str:
    """A certificate's file; what is the same for all stands in its first row alone."""
    rows = [("as-found", *point) for point in found.items()] + [("as-left", *p) for p in (left or {}).items()]
    said = "2026-11-20,Saltmarsh bench (invented),bench 3,0.8,21"
    lines = [
        f"{tag},{number},{said if at == 0 else ',,,,'},{phase},cw,{setting},{shown}"
        for at, (phase, setting, shown) in enumerate(rows)
    ]
    return HEAD + "\n".join(lines) + "\n"


@pytest.fixture
def run(tmp_path: Path) -> Run:
    """Runs the program on a crib where TW-1 did two jobs."""
    with crib_at(tmp_path) as crib:
        work(crib, "J-1", "TW-1", "2026-06-01", setting=100, band=(95, 105), vehicle="Tern minibus 3")
        work(crib, "J-2", "TW-1", "2026-07-01", setting=60, band=(55, 65), vehicle="<i>Wren</i> van 12")

    def runner(*words: str, **more: str) -> Result:
        return CliRunner(env={"COLUMNS": "80"}).invoke(app, ["--crib", str(tmp_path / "crib.db"), *words], **more)

    return runner


@pytest.fixture
def strong(tmp_path: Path) -> str:
    """A file with a certificate of TW-1: found too strong, left good."""
    path = tmp_path / "SD-26-101.csv"
    path.write_text(sheet("TW-1", "SD-26-101", STRONG, GOOD), encoding="utf-8")
    return str(path)


def test_a_failed_as_found_says_what_to_recheck_at_once(run: Run, strong: str) -> None:
    done = run("wrench", "record", "TW-1", "--from", strong, *BY, *ON)
    assert done.output == RECORDED
    assert done.exit_code == 1


RECORDED = """\
TW-1: READY - every point of its usable range passed
  certificate SD-26-101 of 2026-11-20
  as-found: clockwise fail
  as-left: clockwise pass

phase     direction    setting    readings    worst %    mean %    verdict
--------  -----------  ---------  ----------  ---------  --------  ---------
as-found  clockwise    20 N·m     5           +0.50      +0.00     pass
as-found  clockwise    60 N·m     5           -4.76      -4.76     fail
as-found  clockwise    100 N·m    5           -9.50      -9.09     fail
as-left   clockwise    20 N·m     5           +0.50      +0.00     pass
as-left   clockwise    60 N·m     5           +0.17      +0.00     pass
as-left   clockwise    100 N·m    5           +0.10      +0.00     pass

TW-1: certificate SD-26-101 found it out of tolerance; 2 torques from 2026-03-02
to 2026-11-20: 1 inside, 1 OUTSIDE, 0 cannot tell.

Tern minibus 3
day         job    fasteners     spec        applied N·m    answer
----------  -----  ------------  ----------  -------------  ------------
2026-06-01  J-1    2 x bolts of  as written  110 (109.5 to  OUTSIDE: too
                   the carrier               110.5)         high

<i>Wren</i> van 12
day         job    fasteners                 spec        applied N·m    answer
----------  -----  ------------------------  ----------  -------------  --------
2026-07-01  J-2    2 x bolts of the carrier  as written  63 (63 to 63)  inside
"""


def test_the_json_of_a_record_has_the_keys_of_the_contract(run: Run, strong: str) -> None:
    result = json.loads(run("wrench", "record", "--from", strong, "--json", *BY, *ON).stdout)["result"]
    (one,) = result["certificates"]
    assert " ".join(one) == (
        "tag certificate date laboratory fitness usable_nm two_way why newest unfit as_found as_left trace"
    )
    assert list(one["as_found"]) == ["verdict", "directions"]
    assert list(one["as_found"]["directions"][0]) == ["direction", "verdict", "passed_nm", "points"]
    assert " ".join(one["trace"]) == ("tag since until certificate found_out inside outside cannot_tell vehicles")
    assert (one["trace"]["inside"], one["trace"]["outside"], one["trace"]["cannot_tell"]) == (1, 1, 0)


def test_the_recheck_list_as_csv_and_html(run: Run, strong: str) -> None:
    run("wrench", "record", "TW-1", "--from", strong, *BY, *ON)
    rows = list(csv.DictReader(io.StringIO(run("wrench", "trace", "TW-1", "--as", "csv", *ON).stdout)))
    assert [(row["vehicle"], row["job"], row["answer"], row["why"]) for row in rows] == [
        ("Tern minibus 3", "J-1", "outside", "too high"),
        ("<i>Wren</i> van 12", "J-2", "inside", ""),
    ]
    page = run("wrench", "trace", "TW-1", "--as", "html", *ON).stdout
    assert "&lt;i&gt;Wren&lt;/i&gt; van 12" in page
    assert "<i>" not in page
    assert "service information, local codes and licensed practice come first" in page
    since = run("wrench", "trace", "tw-1", "--since", "2026-06-15", "--json", *ON)
    assert (since.exit_code, json.loads(since.stdout)["result"]["outside"]) == (0, 0)


def test_several_wrenches_from_one_file_and_a_bad_row_stops_all(run: Run, tmp_path: Path) -> None:
    path = tmp_path / "all.csv"
    both = sheet("TW-1", "SD-26-101", GOOD) + sheet("TW-3", "SD-26-103", {"110": "110"}).removeprefix(HEAD)
    path.write_text(both.replace("110,110\n", "110,fast\n"), encoding="utf-8")
    bad = run("wrench", "record", "--from", str(path), *BY, *ON)
    assert str(bad.exception) == "all.csv:5: reading 'fast' is not a number: write it like 100.5, without the unit."
    assert (
        json.loads(run("wrench", "labels", "TW-1", "--json").stdout)["result"]["labels"][0]["certificate"]
        == "SD-26-001"
    )
    path.write_text(both, encoding="utf-8")
    good = run("wrench", "record", "--from", str(path), "--as", "csv", *BY, *ON)
    assert good.exit_code == 0
    assert [row["tag"] for row in csv.DictReader(io.StringIO(good.stdout))] == ["TW-1", "TW-1", "TW-1", "TW-3"]
    again = run("wrench", "record", "--from", str(path), *BY, *ON)
    assert "certificate SD-26-101 of TW-1 is recorded already" in str(again.exception)


@pytest.mark.parametrize(
    ("content", "message"),
    [
        (b"", "c.csv:1: the file is empty: give it a header: tag,certificate,"),
        (b"tag,setting\n", "c.csv:1: "),
        ("tag,certificate,date,laboratory,setting,reading\nTW-1,S,2026-11-20,Prüf,1,1".encode("cp1252"), "c.csv:2: "),
        (b"\xff\xd8\xff\xe0 a photo", "c.csv:1: "),
    ],
    ids=["empty", "columns missing", "Windows-1252", "a photo"],
)
def test_a_file_that_cannot_be_read_is_told_with_its_place(
    run: Run, tmp_path: Path, content: bytes, message: str
) -> None:
    path = tmp_path / "c.csv"
    path.write_bytes(content)
    assert str(run("wrench", "record", "--from", str(path), *BY, *ON).exception).startswith(message)


def test_a_certificate_may_be_typed_at_the_keyboard(run: Run) -> None:
    answers = ["SD-26-103", "", "Saltmarsh bench (invented)", "bench 3", "0.8", "21", "110 110.5 109.8", "n"]
    done = run("wrench", "record", "TW-3", "--json", *BY, *ON, input="\n".join(answers) + "\n")
    (one,) = json.loads(done.stdout[done.stdout.index("{") :])["result"]["certificates"]  # the runner echoes answers
    assert (one["certificate"], one["date"], one["fitness"]) == ("SD-26-103", "2026-11-25", "ready")
    assert one["as_found"]["directions"][0]["points"][0]["deviations_pct"] == [0.0, -0.4525, 0.1821]
    unanswered = run("wrench", "record", "TW-3", *BY, *ON, input="SD-26-104\n")
    assert "the questions were not answered; nothing was recorded" in str(unanswered.exception)


def test_what_happened_is_noted_and_a_wrong_certificate_withdrawn(run: Run, strong: str) -> None:
    dropped = run("wrench", "event", "TW-1", "dropped", "--note", "from the lift", *BY, *ON)
    assert dropped.output == "TW-1: dropped on 2026-11-25. Unfit: dropped on 2026-11-25, not calibrated since.\n"
    late = run("wrench", "record", "TW-1", "--from", strong, *BY, *ON)
    assert "The wrench is unfit all the same: dropped on 2026-11-25, not calibrated since." in late.output
    back = run("wrench", "withdraw", "TW-1", "SD-26-101", "--reason", "wrong wrench", *BY, *ON)
    assert back.output.startswith("TW-1: certificate SD-26-101 withdrawn. Unfit: dropped on")
    nobody = run("wrench", "event", "TW-1", "dropped", *ON)
    assert "a posting needs a person's name" in str(nobody.exception)
    assert run("wrench", "event", "TW-9", "dropped", *BY, *ON).exception is not None


def test_the_history_of_a_wrench_has_its_certificates_and_events(run: Run, strong: str) -> None:
    run("wrench", "record", "TW-1", "--from", strong, *BY, *ON)
    run("wrench", "event", "TW-1", "dropped", "--note", "from the lift", *BY, *ON)
    run("wrench", "withdraw", "TW-1", "SD-26-101", "--reason", "wrong wrench", *BY, *ON)
    page = run("history", "TW-1", *ON).output
    assert page.partition("Calibration and events:\n")[2] == LIFE
    lines = json.loads(run("history", "TW-1", "--json", *ON).stdout)["result"]["life"]
    assert " ".join(lines[0]) == "line at day what by note certificate withdrawn"
    assert [(line["what"], line["certificate"], line["withdrawn"]) for line in lines] == [
        ("calibrated", "SD-26-101", True),
        ("dropped", "", False),
        ("withdrawn", "", False),
    ]


LIFE = """\
line    day         what        by       note
------  ----------  ----------  -------  ------------------------------------
1       2026-11-20  calibrated  R. Vale  SD-26-101: ready, every point of its
                                         usable range passed
2       2026-11-25  dropped     R. Vale  from the lift
3       2026-11-25  withdrawn   R. Vale  takes back SD-26-101; wrong wrench
"""


def test_labels_say_in_words_what_may_be_done(run: Run, tmp_path: Path) -> None:
    path = tmp_path / "c.csv"
    path.write_text(sheet("TW-1", "SD-26-101", GOOD | {"20": "18"}), encoding="utf-8")
    run("wrench", "record", "--from", str(path), *BY, *ON)
    run("wrench", "event", "TW-3", "overloaded", *BY, *ON)
    page = run("wrench", "labels", *ON).stdout
    text = re.sub(r"<[^>]+>", " ", page.replace("<br>", "\n"))
    assert "LIMITED  60 to 100 N·m" in text
    assert "NOT FOR USE  overloaded on 2026-11-25, not calibrated since" in text
    assert page.count('class="label"') == 4
    table = run("wrench", "labels", "TW-1", "--as", "csv", *ON).stdout.splitlines()
    assert table[1] == "TW-1,2026-11-20,2027-11-20,SD-26-101,60 to 100 N·m,"


def test_the_sheet_shows_every_reading_and_the_limits(run: Run, strong: str) -> None:
    run("wrench", "record", "TW-1", "--from", strong, *BY, *ON)
    page = run("wrench", "sheet", "TW-1").stdout
    assert page.count("<circle") == 15
    assert page.count('fill="#000" stroke') == 10, "readings outside the limit are filled"
    assert ">+4<" in page
    assert "110, 110.5, 109.5, 110, 110" in page
    assert "service information, local codes and licensed practice come first" in page
    none = run("wrench", "sheet", "TW-2")
    assert "TW-2 has no recorded certificate: recorded: none." in str(none.exception)


def test_the_folder_for_an_auditor_has_everything_and_is_never_written_over(
    run: Run, strong: str, tmp_path: Path
) -> None:
    run("wrench", "record", "TW-1", "--from", strong, *BY, *ON)
    run("wrench", "event", "TW-1", "dropped", "--note", "=cmd()", *BY, *ON)
    folder = tmp_path / "audit"
    done = run("wrench", "export", "TW-1", str(folder), "--json", *ON)
    assert " ".join(sorted(Path(name).name for name in json.loads(done.stdout)["result"]["files"])) == (
        "certificate-01-SD-26-101.html certificates.csv chain.csv events.csv movements.csv readings.csv "
        "work.csv work.html wrench.csv"
    )
    events = list(csv.DictReader((folder / "events.csv").open(encoding="utf-8")))
    assert [(row["what"], row["note"]) for row in events] == [("calibrated", ""), ("dropped", "'=cmd()")]
    chain = {row["name"]: row["value"] for row in csv.DictReader((folder / "chain.csv").open(encoding="utf-8"))}
    assert chain["wrench_head"] == f"2:{events[-1]['chain value']}"
    movements = list(csv.DictReader((folder / "movements.csv").open(encoding="utf-8")))
    assert [row["kind"] for row in movements] == ["receive"]
    assert len(movements[0]["digest"]) == 64
    assert "is not empty: name a new folder." in str(run("wrench", "export", "TW-1", str(folder)).exception)


def test_exported_readings_can_be_recorded_again(run: Run, strong: str, tmp_path: Path) -> None:
    run("wrench", "record", "TW-1", "--from", strong, *BY, *ON)
    run("wrench", "export", "TW-1", str(tmp_path / "audit"))
    run("wrench", "withdraw", "TW-1", "SD-26-101", "--reason", "to try", *BY, *ON)
    done = run("wrench", "record", "--from", str(tmp_path / "audit" / "readings.csv"), "--json", *BY, *ON)
    (one,) = json.loads(done.stdout)["result"]["certificates"]
    assert [point["verdict"] for point in one["as_found"]["directions"][0]["points"]] == ["pass", "fail", "fail"]


def test_advice_names_its_inputs(run: Run, strong: str) -> None:
    empty = run("wrench", "advice")
    assert empty.output == "No as-found results are recorded yet: nothing to advise on.\n"
    run("wrench", "record", "TW-1", "--from", strong, *BY, *ON)
    methods = json.loads(run("wrench", "advice", "--json").stdout)["result"]["advice"]
    assert [(one["about"], one["results"], [m["method"] for m in one["methods"]]) for one in methods] == [
        ("TW-1", 1, ["staircase", "simple response"]),
        ("click, 12 months (1 wrench)", 1, ["exponential rescale"]),
    ]
    assert methods[0]["methods"][0]["months"] == 9
    assert methods[1]["methods"][0]["months"] == 1
    assert "Advice only: no interval is changed by it." in run("wrench", "advice").output


def test_the_shops_rules_are_shown_and_set(run: Run) -> None:
    assert json.loads(run("wrench", "policy", "--json").stdout)["result"] == {
        "due": "same-day",
        "start": "calibration",
        "days_away": 14,
        "by": "",
        "at": "",
    }
    set_ = json.loads(run("wrench", "policy", "--due", "end-of-month", "--away", "3w", "--json", *BY, *ON).stdout)
    assert (set_["result"]["due"], set_["result"]["days_away"], set_["result"]["by"]) == ("end-of-month", 21, "R. Vale")
    assert "2027-03-31" in run("wrench", "labels", "TW-1", "--as", "csv", *ON).stdout
    assert "a laboratory takes 1 to 365 days" in str(run("wrench", "policy", "--away", "0d", *BY).exception)


@pytest.mark.skipif(shutil.which("chromium") is None, reason="no Chromium here to look at the sheets with")
@pytest.mark.parametrize("words", [("sheet", "TW-1"), ("labels",), ("trace", "TW-1", "--as", "html")], ids=" ".join)
def test_a_browser_shows_the_whole_page(run: Run, strong: str, tmp_path: Path, words: tuple[str, ...]) -> None:
    run("wrench", "record", "TW-1", "--from", strong, *BY, *ON)
    page = tmp_path / "page.html"
    page.write_text(run("wrench", *words).stdout, encoding="utf-8")
    flags = ["--headless", "--no-sandbox", "--disable-gpu", f"--user-data-dir={tmp_path / 'profile'}"]
    command = ["chromium", *flags, "--dump-dom", page.as_uri()]
    shown = subprocess.run(command, capture_output=True, text=True, check=True, timeout=60).stdout
    assert "TW-1" in shown
    assert shown.rstrip().endswith("</body></html>")
    assert "not replace them." in shown
