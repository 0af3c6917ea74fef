"""At the close of a job: which wrench did a torque, and at which setting, so that a look-back can answer."""

from __future__ import annotations

from pathlib import Path

import pytest

from cribkit.domain.problem import BadInput
from tests.desk.test_jobs import BODY, ROWS, closed, pulled, world

# a = 4 % (ISO 6789): a wrench set to s applies s/1.04 to s/0.96. The spec is 10 N·m ± 10 %: 9 to 11 N·m.
OTHERS = (
    "\nTWO,dial,4,20,N·m,0.2,4,1/4,200,2026-09-01,12,W1,ok"
    "\nINCH,click,40,200,in-lb,1,4,1/4,200,2026-09-01,12,W1,ok"
    "\nFIX,fixed,10,10,N·m,0,4,1/4,200,2026-09-01,12,W1,ok"
    "\nLATE,click,2,24,N·m,0.2,4,1/4,200,2024-09-01,12,W1,ok"
)
WRENCHES = ROWS["wrenches"] + OTHERS

SAID = {
    "a mark in its unit": ("TWO@10 N·m", 10.0, "N·m", []),
    "a bare mark is of its own scale": ("INCH@89", 89.0, "in-lb", []),
    "10/0.96 is 10.4 and 10/1.04 is 9.6": ("TWO@10", 10.0, "N·m", []),
    "10.6/0.96 is 11.04, above 11": ("TWO@10.6", 10.6, "N·m", ["setting-outside"]),
    "9.2/1.04 is 8.85, below 9": ("TWO@9.2", 9.2, "N·m", ["setting-outside"]),
    "far off": ("TWO@20 Nm", 20.0, "N·m", ["setting-outside"]),
    "the planned wrench at another mark": ("TW1@9.8", 9.8, "N·m", []),
    "one fixed value needs no word": ("FIX", 10.0, "N·m", []),
    "nothing said": ("TWO", None, "", ["setting-unknown"]),
    "past its calibration": ("LATE@10", 10.0, "N·m", ["wrench-not-usable"]),
    "past its calibration, and nothing said": ("LATE", None, "", ["wrench-not-usable", "setting-unknown"]),
}


@pytest.mark.parametrize(("text", "setting", "unit", "doubts"), SAID.values(), ids=SAID.keys())
def test_the_setting_goes_on_record_and_a_doubt_is_told(
    tmp_path: Path, text: str, setting: float | None, unit: str, doubts: list[str]
) -> None:
    with world(tmp_path, wrenches=WRENCHES) as crib:
        pulled(crib)
        done = closed(crib, torque={"bolts": text})
        (line,) = done.torques
        assert (line.wrench, line.setting, line.setting_unit) == (text.partition("@")[0], setting, unit)
        assert [doubt.code for doubt in done.doubts] == doubts


REFUSED = {
    "another unit": ("TWO@89 in-lb", "'89 in-lb' is not a setting of this wrench"),
    "above its marks": ("TWO@21", "it cannot be set to 21"),
    "below its marks": ("INCH@39", "it cannot be set to 39"),
    "a range": ("TWO@9-11 N·m", "is not a setting of this wrench"),
    "no number": ("TWO@tight", "tight"),
    "another fixed value": ("FIX@11", "it cannot be set to 11"),
    "no wrench": ("S8@10", "it is not a torque wrench"),
    "no item": ("TW-99@10", "there is no item TW-99"),
}


@pytest.mark.parametrize(("text", "message"), REFUSED.values(), ids=REFUSED.keys())
def test_a_setting_that_the_wrench_does_not_have_is_refused(tmp_path: Path, text: str, message: str) -> None:
    with world(tmp_path, wrenches=WRENCHES) as crib:
        pulled(crib)
        with pytest.raises(BadInput, match=message):
            closed(crib, torque={"bolts": text})
        assert crib.must_have("S8").on_hand == 0


def test_without_a_tolerance_the_setting_is_the_mark_nearest_to_the_torque(tmp_path: Path) -> None:
    body = BODY.replace('tolerance = "10 %"', "").replace("10 N·m", "10.1 N·m")
    for mark, doubts in (("10.2", []), ("10", []), ("9.8", ["setting-outside"])):
        (tmp_path / mark).mkdir()
        with world(tmp_path / mark, wrenches=WRENCHES) as crib:
            pulled(crib, body=body)
            done = closed(crib, torque={"bolts": f"TWO@{mark}"})
            assert [doubt.code for doubt in done.doubts] == doubts, mark
