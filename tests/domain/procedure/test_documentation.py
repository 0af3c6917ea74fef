"""docs/file-formats.md names every key, and its examples can be read."""

import re
from pathlib import Path

import pytest

from cribkit.domain.procedure import schema
from cribkit.domain.quantity import parse_amount, parse_torque

PAGE = (Path(__file__).parents[3] / "docs" / "file-formats.md").read_text(encoding="utf-8")
MODELS = [
    schema.ProcedureTable,
    schema.ToolTable,
    schema.TorqueTable,
    schema.ReachTable,
    schema.ConsumableTable,
]


@pytest.mark.parametrize("model", MODELS, ids=lambda model: model.__name__)
def test_every_key_has_a_row(model: type[schema.Strict]) -> None:
    keys = set(model.model_fields) - {"tool", "torque", "consumable"}
    assert {key for key in keys if f"| `{key}` |" not in PAGE} == set()


@pytest.mark.parametrize("text", re.findall(r"`([^`]*[0-9][^`]*)`", PAGE.split("### Torques")[1].split("Units:")[0]))
def test_the_torques_are_read_as_the_page_says(text: str) -> None:
    if text == "1,250 Nm":
        with pytest.raises(Exception, match="may be"):
            parse_torque(text)
    else:
        assert parse_torque(text).nm > 0


@pytest.mark.parametrize("text", re.findall(r"`([^`]*[0-9][^`]*)`", PAGE.split("### Amounts")[1].split("\n## ")[0]))
def test_the_amounts_are_read(text: str) -> None:
    assert parse_amount(text).value > 0
