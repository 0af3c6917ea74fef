"""The picture of torque ranges: the axis, the terminal, and the page."""

from __future__ import annotations

import math
import re
import shutil
import subprocess
from pathlib import Path
from xml.etree import ElementTree

import pytest
from hypothesis import given
from hypothesis import strategies as st

from cribkit.desk.wrenches import Chart, Mark, row
from cribkit.report.axis import axis_for
from cribkit.report.drawing import as_page, svg
from cribkit.report.picture import as_text
from tests.torque.makers import TODAY, scale, wrench

CHROMIUM = shutil.which("chromium") or shutil.which("chromium-browser")


def chart() -> Chart:
    """Four wrenches and four torques, one of them not covered."""
    tools = [
        wrench(5, 25, tag="TW-01", graduation=0.25),
        wrench(2, 10, tag="TW-02", calibrated_on=None),
        wrench(110, 110, tag="TW-03", mechanism="fixed", graduation=0),
        wrench(0, 150, "ft-lb", tag="TW-04", second=(scale(0, 200, "N·m", 1.0),)),
    ]
    marks = [
        Mark("plenum", "bolts", "10 N·m", 10, 9, 11, True, ""),
        Mark("sump", "bolts", "10 N·m", 10, 10, 10, True, ""),
        Mark("wheel", "nuts", "110 N·m", 110, 99, 121, True, ""),
        Mark("hub", "nut <b>", "330 lb-ft (447 N·m)", 447.42, 447.42, 447.42, False, "TW-04: 330 is outside & beyond"),
    ]
    return Chart(TODAY, tuple(row(tool, TODAY) for tool in tools), tuple(marks))


PICTURE = """\
N·m              2        5    10     20      50     100   200     500
                 +--------+-----+------+-------+------+-----+--------+
TW-01                     [==============]
TW-02 no calib.  [::::::::::::::]
TW-03                                                  #
TW-04            ----------------------------[===============]

covered                         2                      o
not covered                                                         A

[===]  usable today    [:::]  not usable today    ---  on the scale,
below the usable range
o  a torque that some wrench covers (2-9, +: so many on one spot)
A, B ...  one that none covers

1 of 4 torques are not covered on 2026-11-25:
A  447.4 N·m: hub nut <b>, 330 lb-ft (447 N·m); TW-04: 330 is outside
   & beyond"""


def test_the_terminal_picture_is_this():
    assert as_text(chart(), 70) == PICTURE


def test_every_line_fits_the_width():
    for width in (60, 80, 100):
        assert max(map(len, as_text(chart(), width).splitlines())) <= width


def test_the_terminal_picture_lists_what_is_not_covered_by_its_letter():
    text = as_text(chart(), 80)
    assert "1 of 4 torques are not covered on 2026-11-25:" in text
    assert "A  447.4 N·m: hub nut <b>, 330 lb-ft (447 N·m); TW-04: 330 is outside & beyond" in " ".join(
        text.split("\n   ")
    )
    assert text.splitlines()[8].split() == ["not", "covered", "A"]


def test_more_gaps_than_letters_are_still_all_shown():
    marks = tuple(Mark("p", f"t{n}", "10 N·m", 10 + n, 10 + n, 10 + n, False, "none") for n in range(60))
    lines = as_text(Chart(TODAY, (), marks), 80).splitlines()
    strips = lines[lines.index("") + 2 : lines.index("", lines.index("") + 1)]
    assert sorted("".join(line[16:] for line in strips).replace(" ", "")) == sorted(
        [chr(65 + n) for n in range(26)] + [chr(97 + n) for n in range(26)] + ["*"] * 8
    )
    assert "60 of 60 torques are not covered on 2026-11-25:" in lines


def test_without_wrenches_or_torques_there_is_still_an_axis():
    text = as_text(Chart(TODAY, (), ()), 80)
    assert "1000" in text.splitlines()[0]
    assert "No torques" in text


@given(st.lists(st.floats(1e-3, 1e5), min_size=1, max_size=20))
def test_the_axis_holds_every_value_between_round_ends(values):
    axis = axis_for(values, 60)
    for value in values:
        assert axis.low <= value * (1 + 1e-9)
        assert value <= axis.high * (1 + 1e-9)
        assert -1e-9 <= axis.at(value) <= 60 + 1e-9
    for end in (axis.low, axis.high):
        assert f"{end:e}"[0] in "125"
    assert axis.low < axis.high
    assert axis.ticks()[0] == pytest.approx(axis.low)
    assert axis.ticks()[-1] == pytest.approx(axis.high)


def test_equal_ratios_are_equally_far_apart():
    axis = axis_for([1, 100], 60)
    assert axis.at(10) - axis.at(1) == pytest.approx(axis.at(100) - axis.at(10))
    assert axis.at(2) == pytest.approx(60 * math.log10(2) / 2)


def test_the_drawing_is_well_formed_and_says_everything_by_shape_too():
    drawing = ElementTree.fromstring(svg(chart()))
    kinds = [one.get("class") for one in drawing.iter()]
    assert kinds.count("usable") == 3 + 1  # three ready wrenches, and the key
    assert kinds.count("unusable") == 1 + 1
    assert kinds.count("ring") == 3 + 1
    assert kinds.count("cross") == 1 + 1
    assert [one.text for one in drawing.iter() if one.get("class") == "letter"] == ["A"]


def test_text_from_the_crib_is_escaped():
    page = as_page(chart())
    assert "nut <b>" not in page
    assert "nut &lt;b&gt;" in page
    assert "outside &amp; beyond" in page


def test_no_two_torques_are_drawn_over_each_other():
    marks = tuple(Mark("p", f"t{n}", "10 N·m", 10 + n / 10, 9, 11, n % 3 > 0, "") for n in range(30))
    drawing = ElementTree.fromstring(svg(Chart(TODAY, (), marks)))
    places = [
        (float(one.get("cx", "0")), float(one.get("cy", "0"))) for one in drawing.iter() if one.get("class") == "ring"
    ][:-1]
    near = [(a, b) for a in places for b in places if a < b and math.dist(a, b) < 9]
    assert len(places) == 20
    assert near == []


@pytest.mark.skipif(CHROMIUM is None, reason="no Chromium on this machine: install Debian's chromium package")
def test_the_page_prints_on_one_sheet_in_a_real_browser(tmp_path: Path):
    source, printed = tmp_path / "picture.html", tmp_path / "picture.pdf"
    many = tuple(row(wrench(low, low * 5, tag=f"TW-{low:02}", graduation=1), TODAY) for low in range(1, 26))
    marks = tuple(
        Mark("procedure", f"fastener-{n}", f"{n} N·m", n, n * 0.9, n * 1.1, n % 9 > 0, "TW-01: below")
        for n in range(2, 90)
    )
    source.write_text(as_page(Chart(TODAY, many, marks)), encoding="utf-8")
    command = [
        str(CHROMIUM), "--headless", "--no-sandbox", "--disable-gpu", f"--user-data-dir={tmp_path / 'profile'}",
        "--no-pdf-header-footer", f"--print-to-pdf={printed}", source.as_uri(),
    ]  # fmt: skip
    subprocess.run(command, check=True, capture_output=True, timeout=120)
    assert len(re.findall(rb"/Type\s*/Page\b", printed.read_bytes())) == 1
