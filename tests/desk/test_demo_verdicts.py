"""The demo's verdicts are the intended ones: each procedure alone, on the day of its writing and a year later.

docs/demo-world.md tells the same story in words; every value is invented.
"""

from __future__ import annotations

import json
import tomllib
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from typer.testing import CliRunner

from cribkit.cli.app import app

PROCEDURES = Path(__file__).parents[2] / "procedures"
READY: dict[str, str] = {}
# What blocks each job, by the need's text or the torque's id, with its status. Nothing else may block.
BLOCKED = {
    "alternator": READY,
    "battery-terminals": READY,
    "exhaust-studs": {"stud extractor, 8 mm": "out"},
    "front-brakes": READY,
    "front-hub-bearing": {"hub puller": "unfit"},
    "fuel-line": READY,
    "head-cover-gasket": READY,
    "plenum-reseal": READY,
    "rear-hub-oil-seal": {"hub-nut": "unfit"},
    "spark-plugs": READY,
    "steering-wheel": {"threadlocker, medium strength": "confirm"},
    "sump-gasket": {"flange sealant, anaerobic": "unfit"},
    "suspension-arm": READY,
    "thermostat-housing": READY,
    "throttle-body-service": {
        "10 mm socket, 1/4 drive": "absent",
        "position-sensor-screws": "out",
        "throttle-body-safe cleaner": "absent",
    },
    "timing-belt-tensioner": {"timing locking pin, 6 mm": "unfit"},
    "transmission-fluid": READY,
    "turbo-oil-feed": {"sealing washer, copper, 16 mm": "short"},
    "water-pump": {"coolant concentrate, OAT": "short"},
    "wheel-retorque": READY,
}


def check(procedure: str, day: str) -> dict[str, Any]:
    command = ["check", procedure, "--demo", "--json", "--on", day]
    result = CliRunner().invoke(app, command, prog_name="cribkit")
    assert result.exit_code in (0, 1), result.output
    return dict(json.loads(result.stdout)["result"])


def not_ready(result: dict[str, Any]) -> Iterator[tuple[str, str]]:
    for line in (*result["tools"], *result["torques"], *result["consumables"]):
        if line["status"] != "ready":
            yield line.get("id") or line["need"], line["status"]


def optional(procedure: str) -> set[str]:
    table = tomllib.loads((PROCEDURES / f"{procedure}.toml").read_text(encoding="utf-8"))
    return {need["need"] for need in (*table["tool"], *table["consumable"]) if need.get("optional")}


@pytest.mark.parametrize("day", ["2026-11-25", "2027-12-31"])
@pytest.mark.parametrize("procedure", BLOCKED)
def test_a_demo_job_is_blocked_by_its_intended_troubles_alone(procedure: str, day: str) -> None:
    result = check(procedure, day)
    blocks = {name: status for name, status in not_ready(result) if name not in optional(procedure)}
    assert blocks == BLOCKED[procedure]
    assert result["ready"] is not bool(BLOCKED[procedure])


def test_every_demo_procedure_has_its_verdict() -> None:
    assert sorted(path.stem for path in PROCEDURES.glob("*.toml")) == list(BLOCKED)


def test_the_right_sealant_and_brake_fluid_are_those_in_date() -> None:
    picked = {line["need"]: line["lots"] for line in check("front-brakes", "2026-11-25")["consumables"]}
    assert "BF2309" not in json.dumps(picked["brake fluid, DOT 4"])
    picked = {line["need"]: line["lots"] for line in check("head-cover-gasket", "2026-11-25")["consumables"]}
    assert "RG2408" not in json.dumps(picked["RTV silicone sealant, grey"])
