"""The commands as a person runs them."""

import csv
import io
import json
from pathlib import Path

import pytest
import typer

from cribkit.cli.restocking import parse_cost, parse_days, parse_range, parse_service
from cribkit.domain.problem import Problem
from cribkit.store import opening
from tests.restock.shop import Shop

ON = ("--on", "2026-11-30")
BY = ("--by", "J. Sedge")


@pytest.fixture
def shop(tmp_path: Path) -> Shop:
    """A year of cotter pins, two a week, of which too few are left."""
    made = Shop(tmp_path, PINS)
    made.use("CP-1", 2, *range(0, 364, 7))
    return made


PINS = """\
tag,description,unit,pack,on_hand,min,max,supplier,unit_cost,lot,expires_on,location
CP-1,"cotter pin, 3.2 x 40 mm",each,1,106,,,Marsh Lane (invented),0.2,,,C4
BC-1,"brake cleaner, non-chlorinated, 500 mL",mL,500,3,,,Saltings (invented),3.6,,,C1
"""


def test_the_answer_is_no_while_something_must_be_ordered(shop: Shop) -> None:
    first = shop.run("restock", *ON)
    assert (first.exit_code, first.stdout.splitlines()[0]) == (1, "ORDER 1 of 2 consumables for 1.20")
    assert shop.run("order", *ON, *BY).exit_code == 0
    second = shop.run("restock", *ON)
    assert (second.exit_code, second.stdout.splitlines()[0]) == (0, "NOTHING TO ORDER")


def test_planned_jobs_that_go_short_come_first(shop: Shop) -> None:
    lines = shop.run("restock", *ON, "--for", "hub-nut=3").stdout.splitlines()
    assert lines[0].startswith("ORDER 1 of 2 consumables for ")
    assert "1 planned job would go short; 2 needs not stocked" in " ".join(lines[:2])
    assert lines[5] == "Planned jobs that go short" or lines[4] == "Planned jobs that go short"
    assert "NEW      3 x hub cap gasket, 90 mm" in lines


def test_the_list_has_a_row_for_every_consumable_as_csv(shop: Shop) -> None:
    text = shop.run("restock", *ON, "--as", "csv", "--for", "hub-nut").stdout
    rows = list(csv.DictReader(io.StringIO(text)))
    assert [row["tag"] for row in rows[:2]] == ["CP-1", "BC-1"] or [row["tag"] for row in rows[:2]] == ["BC-1", "CP-1"]
    assert {row["why"].split(":")[0] for row in rows[2:]} == {"new item"}


def test_the_json_contract_of_the_list(shop: Shop) -> None:
    found = json.loads(shop.run("restock", *ON, "--json", "--for", "hub-nut").stdout)
    assert (found["cribkit"], found["command"], found["ok"]) == (1, "restock", False)
    assert set(found["result"]) == {
        "on", "service", "review_days", "plan", "suppliers", "not_stocked", "tools", "wrenches", "late",
    }  # fmt: skip
    assert set(found["result"]["suppliers"][0]) == {
        "supplier", "lead_days", "lead_days_sd", "lead_from", "minimum_order", "cost", "note", "lines",
    }  # fmt: skip
    assert set(found["result"]["suppliers"][0]["lines"][0]) == {
        "tag", "description", "unit", "on_hand", "good", "on_order", "reserved", "position", "demand", "days",
        "pattern", "method", "distribution", "reorder_point", "target", "computed_reorder_point", "computed_target",
        "packs", "pack", "order", "cost", "runs_out", "waste", "blocked", "why", "notes",
    }  # fmt: skip


@pytest.mark.parametrize("form", ["table", "json", "csv", "markdown", "html"])
def test_every_form_of_every_command_can_be_written(shop: Shop, form: str) -> None:
    assert shop.run("restock", *ON, "--as", form).exit_code == 1
    assert shop.run("order", *ON, *BY, "--as", form).exit_code == 0
    if form != "html":
        assert shop.run("orders", *ON, "--as", form).exit_code == 0
        assert shop.run("restock", *ON, "--as", form, "--explain", "CP-1").exit_code == 0
        assert shop.run("restock", *ON, "--as", form, "--try", "2").exit_code in (0, 1)


def test_purchase_lists_are_written_for_each_supplier(shop: Shop) -> None:
    assert shop.run("order", *ON, *BY, "--to", "lists").exit_code == 0
    names = sorted(path.name for path in (shop.folder / "lists").iterdir())
    assert names == [f"order-1-marsh-lane-invented.{suffix}" for suffix in ("csv", "html", "md")]
    row = next(csv.DictReader((shop.folder / "lists" / names[0]).open(encoding="utf-8")))
    assert (row["order"], row["tag"], row["packs"], row["cost"]) == ("1", "CP-1", "6", "1.20")


def test_an_order_whose_lists_cannot_be_written_is_not_placed(shop: Shop) -> None:
    (shop.folder / "lists").write_text("a file", encoding="utf-8")
    (problem,) = shop.refused("order", *ON, *BY, "--to", "lists")
    assert "nothing was ordered" in problem
    assert shop.run("orders", *ON).stdout.splitlines()[0] == "Nothing is on order."


def test_only_the_named_supplier_gets_an_order(shop: Shop) -> None:
    (problem,) = shop.refused("order", "Saltings (invented)", *ON, *BY)
    assert problem == (
        "there is nothing to order from 'Saltings (invented)': today's list orders from 'Marsh Lane (invented)'."
    )
    assert shop.run("order", "marsh lane (INVENTED)", *ON, *BY).exit_code == 0


def test_an_order_is_late_from_the_day_after_it_is_due_until_it_is_ended(shop: Shop) -> None:
    shop.run("order", *ON, *BY)
    assert shop.run("orders", "--on", "2026-12-03").exit_code == 0
    late = shop.run("orders", "--on", "2026-12-05")
    assert (late.exit_code, late.stdout.splitlines()[1].strip()) == (1, "LATE by 2 d")
    assert shop.refused("order", "--end", "1", *BY) == ["ending an order needs a reason: give --reason TEXT."]
    assert shop.run("order", "--end", "1", "--reason", "not made any more", *ON, *BY).exit_code == 0
    assert shop.run("orders", "--on", "2026-12-05").exit_code == 0
    assert "not made any more" in shop.run("orders", "--all", *ON).stdout
    assert shop.refused("order", "--end", "1", "--reason", "again", *BY)[0].startswith("order 1: nothing of this order")
    assert shop.refused("order", "--end", "7", "--reason", "again", *BY)[0].startswith("order 7: there is no order 7")


def test_an_order_needs_a_name(shop: Shop) -> None:
    assert shop.refused("order", *ON) == ["a posting needs a person's name: give --by NAME or set CRIBKIT_BY."]


def test_a_trial_tells_what_was_reached_and_how_far_it_is_on_stderr(shop: Shop) -> None:
    found = shop.run("restock", *ON, "--try", "3", "--between", "0.8,0.99", "--json")
    result = json.loads(found.stdout)["result"]
    assert result["past"]["items"] == result["futures"]["items"] == 1
    assert 0.9 <= result["futures"]["service"] <= 1
    levels = [one["service"] for one in result["cheapest"]["tried"]]
    assert (levels[0], levels[-1]) == (0.8, 0.99)
    assert result["cheapest"]["cost"] == min(one["cost"] for one in result["cheapest"]["tried"])
    assert "futures: 1 of 1" in found.stderr


def test_the_same_trial_gives_the_same_answer(shop: Shop) -> None:
    words = ("restock", *ON, "--try", "4", "--json")
    assert shop.run(*words).stdout == shop.run(*words).stdout


def test_a_crib_without_a_record_has_nothing_to_try(tmp_path: Path) -> None:
    (problem,) = Shop(tmp_path).refused("restock", *ON, "--try", "5")
    assert problem.startswith("nothing in this crib was used on record")


def test_a_search_needs_a_trial(shop: Shop) -> None:
    assert shop.refused("restock", "--between", "0.8,0.9") == ["--between needs --try N: add --try 50."]


@pytest.mark.parametrize(
    ("parse", "text", "value"),
    [
        (parse_days, "7", 7),
        (parse_days, "7d", 7),
        (parse_days, "2 weeks", 14),
        (parse_days, " 1W ", 7),
        (parse_service, "0.95", 0.95),
        (parse_service, "95%", 0.95),
        (parse_service, "99.5 %", 0.995),
        (parse_range, "0.9,99%", (0.9, 0.99)),
        (parse_cost, "2.50", 2.5),
        (parse_cost, "0", 0),
        (parse_cost, "-1", None),
        (parse_cost, "nan", None),
        (parse_cost, "inf", None),
        (parse_cost, "much", None),
        (parse_days, "0d", None),
        (parse_days, "-7", None),
        (parse_days, "7 months", None),
        (parse_days, "400", None),
        (parse_service, "95", None),
        (parse_service, "0.3", None),
        (parse_service, "1", None),
        (parse_service, "nan", None),
        (parse_service, "high", None),
        (parse_range, "0.99,0.9", None),
        (parse_range, "0.9", None),
    ],
)
def test_lengths_of_time_and_service_levels_are_read_or_refused(parse: object, text: str, value: object) -> None:
    assert callable(parse)
    if value is None:
        with pytest.raises(typer.BadParameter):
            parse(text)
    else:
        assert parse(text) == pytest.approx(value)


def test_the_demo_has_a_list() -> None:
    from typer.testing import CliRunner

    from cribkit.cli.app import app

    found = CliRunner().invoke(app, ["restock", "--demo", "--for", "plenum-reseal=2", *ON, "--json"])
    assert found.exit_code == 1, found.exception
    assert json.loads(found.stdout)["result"]["plan"][0]["count"] == 2


def test_a_crib_on_a_network_file_system_is_warned_about_when_an_order_is_placed(
    shop: Shop, monkeypatch: pytest.MonkeyPatch
) -> None:
    warned = Problem("crib.db", "crib-on-network", "this crib is on a network file system", "move it.")
    monkeypatch.setattr(opening, "network_warning", lambda path: (warned,))
    done = shop.run("order", *ON, *BY)
    assert (done.exit_code, "network file system" in done.stderr) == (0, True)
    ended = shop.run("order", *ON, *BY, "--end", "1", "--reason", "not made any more", "--json")
    assert [one["code"] for one in json.loads(ended.stdout)["problems"]] == ["crib-on-network"]
