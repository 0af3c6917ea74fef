"""The JSON contract: keys pinned exactly, version 1. Other programs rely on them."""

from __future__ import annotations

import json
from typing import Any

import pytest
from typer.testing import CliRunner

from cribkit.cli.app import app

TOOL = {"procedure", "need", "status", "count", "picked", "why", "next"}
TORQUE = {
    "procedure", "id", "fastener", "count", "spec", "target_nm", "low_nm", "high_nm", "status", "wrench", "setting",
    "setting_unit", "applied_low_nm", "applied_high_nm", "reach", "rejected", "why",
}  # fmt: skip
CONSUMABLE = {"procedure", "need", "status", "tag", "needed", "on_hand", "short", "unit", "lots", "why"}
MATCH = {"query", "status", "tag", "description", "kind", "score", "why", "location", "on_hand", "out", "alternatives"}
STATUSES = {"ready", "short", "out", "unfit", "confirm", "absent"}
REASONS = {
    "below-range", "above-range", "too-coarse", "not-accurate-enough", "no-calibration", "overdue", "out", "unfit",
    "no-reach", "drive-too-small",
}  # fmt: skip


def answer(*command: str, code: int) -> dict[str, Any]:
    """What a command prints as JSON; nothing else stands on stdout."""
    result = CliRunner().invoke(app, [*command, "--json", "--demo"], prog_name="cribkit")
    assert result.exit_code == code, result.output
    envelope = json.loads(result.stdout)
    assert list(envelope) == ["cribkit", "command", "ok", "result", "problems"]
    assert envelope["cribkit"] == 1
    assert envelope["ok"] is (code == 0)
    return dict(envelope)


@pytest.fixture(scope="module")
def checked() -> dict[str, Any]:
    """The README's own example."""
    return dict(answer("check", "throttle-body-service", "--on", "2026-11-25", code=1)["result"])


def test_check_has_these_keys(checked: dict[str, Any]) -> None:
    assert set(checked) == {"ready", "on", "procedures", "tools", "torques", "consumables", "cautions"}
    assert checked["ready"] is False
    assert checked["on"] == "2026-11-25"
    assert checked["procedures"] == ["throttle-body-service"]


@pytest.mark.parametrize(("part", "keys"), [("tools", TOOL), ("torques", TORQUE), ("consumables", CONSUMABLE)])
def test_each_line_of_a_check_has_these_keys(checked: dict[str, Any], part: str, keys: set[str]) -> None:
    assert checked[part]
    for line in checked[part]:
        assert set(line) == keys
        assert line["status"] in STATUSES


def test_what_is_picked_and_rejected_has_these_keys(checked: dict[str, Any]) -> None:
    picked = [pick for line in checked["tools"] for pick in line["picked"]]
    assert picked
    assert all(set(pick) == {"tag", "count", "location"} for pick in picked)
    rejected = [wrench for line in checked["torques"] for wrench in line["rejected"]]
    assert rejected
    assert all(set(wrench) == {"tag", "reasons"} for wrench in rejected)
    assert {reason for wrench in rejected for reason in wrench["reasons"]} <= REASONS


def test_find_answers_in_the_order_of_the_queries() -> None:
    queries = ["8 mm socket, 1/4 drive", "left-handed screwdriver for tea", "1/4 drive ratchet"]
    matches = answer("find", *queries, code=1)["result"]["matches"]
    assert [match["query"] for match in matches] == queries
    assert all(set(match) == MATCH for match in matches)
    assert [match["status"] for match in matches] == ["match", "none", "match"]
    alternatives = [other for match in matches for other in match["alternatives"]]
    assert all(set(other) == {"tag", "description", "score", "why"} for other in alternatives)
