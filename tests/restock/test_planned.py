"""From a plan to what it needs of each item."""

import datetime as dt
from pathlib import Path

import pytest

from cribkit.desk.candidates import Finder
from cribkit.desk.plan import PlannedJob, once, planned_jobs
from cribkit.desk.planned import PlannedNeeds, planned_needs
from cribkit.desk.procedures import find_procedure
from cribkit.domain.problem import BadInput
from cribkit.domain.procedure import Procedure
from cribkit.store.opening import open_crib
from cribkit.store.stocking import Ratio
from tests.restock.shop import TODAY, Shop

NEXT = TODAY + dt.timedelta(days=7)


@pytest.fixture
def shop(tmp_path: Path) -> Shop:
    return Shop(tmp_path)


def lookup(shop: Shop, name: str = "hub-nut") -> Procedure:
    return find_procedure(name, shop.folder / "procedures")


def needs(shop: Shop, *jobs: tuple[int, int], ratios: dict[str, Ratio] | None = None) -> PlannedNeeds:
    """What hub-nut jobs need: (count, days from today)."""
    plan = [PlannedJob(lookup(shop), count, TODAY + dt.timedelta(days=on)) for count, on in jobs]
    with open_crib(shop.path) as crib:
        return planned_needs(Finder(crib), plan, ratios or {})


def amounts(found: PlannedNeeds, tag: str) -> list[tuple[str, float]]:
    return [(one.on.isoformat(), pytest.approx(one.amount)) for one in found.by_tag.get(tag, ())]


def test_a_plan_needs_the_procedures_amounts_times_its_runs(shop: Shop) -> None:
    found = needs(shop, (2, 1), (1, 5))
    assert amounts(found, "CP-1") == [("2026-12-01", 4), ("2026-12-05", 2)]
    assert found.by_tag["CP-1"][0].job == "hub-nut x2"
    assert "GL-1" not in found.by_tag  # its need is optional


def test_what_several_items_serve_is_taken_from_what_is_there_and_the_rest_asked_of_the_best(shop: Shop) -> None:
    found = needs(shop, (19, 1), (4, 2))
    first, second = sorted(found.by_tag["BC-1"][:1] + found.by_tag["BC-2"][:1], key=lambda one: -one.amount)
    assert (first.amount, second.amount) == (1500, 400)
    total = sum(one.amount for tag in ("BC-1", "BC-2") for one in found.by_tag[tag])
    assert total == 2300


def test_needs_that_nothing_serves_become_new_items_with_the_needs_own_words(shop: Shop) -> None:
    found = {one.need: one for one in needs(shop, (2, 1), (1, 5)).not_stocked}
    gasket, socket = found["hub cap gasket, 90 mm"], found["36 mm socket, 3/4 drive"]
    assert (gasket.kind, gasket.amount, gasket.unit, gasket.status) == ("consumable", 3, "each", "absent")
    assert (gasket.on, gasket.jobs) == (TODAY + dt.timedelta(days=1), ("hub-nut x2", "hub-nut"))
    assert (socket.kind, socket.amount, socket.status) == ("tool", 1, "absent")
    assert "10 mm socket, 3/8 drive" not in found


def test_jobs_that_use_more_than_their_procedure_says_are_planned_with_more(shop: Shop) -> None:
    ratios = {"CP-1": Ratio(planned=20, used=30, jobs=3)}
    assert amounts(needs(shop, (2, 1), (1, 5), ratios=ratios), "CP-1") == [("2026-12-01", 6), ("2026-12-05", 3)]


def test_two_closed_jobs_teach_nothing_yet(shop: Shop) -> None:
    ratios = {"CP-1": Ratio(planned=20, used=30, jobs=2)}
    assert amounts(needs(shop, (2, 1), ratios=ratios), "CP-1") == [("2026-12-01", 4)]


def test_jobs_that_use_less_still_need_the_last_jobs_whole_amount_to_start(shop: Shop) -> None:
    """Half is used: of 2 + 2 + 2 a job of two runs uses 2, and the last one needs its 2 on the shelf."""
    ratios = {"CP-1": Ratio(planned=20, used=10, jobs=5)}
    assert amounts(needs(shop, (2, 1), (1, 5), ratios=ratios), "CP-1") == [("2026-12-01", 2), ("2026-12-05", 2)]


def read(shop: Shop, text: str | bytes | None = None, *named: str) -> tuple[PlannedJob, ...]:
    """The jobs of a plan file and of --for options."""
    path = None
    if text is not None:
        path = shop.folder / "plan.csv"
        path.write_bytes(text.encode() if isinstance(text, str) else text)
    return planned_jobs(named, path, once(lambda name: lookup(shop, name)), TODAY, NEXT)


def test_a_plan_file_and_options_are_one_plan_in_order_of_day(shop: Shop) -> None:
    found = read(shop, "procedure,count,on,job\nhub-nut,2,2026-12-10,tern-07\nhub-nut,,,\n", "hub-nut=3")
    assert [(job.name, job.count, job.on.isoformat(), job.dated) for job in found] == [
        ("hub-nut x3", 3, "2026-12-07", False),
        ("hub-nut", 1, "2026-12-07", False),
        ("hub-nut x2 (tern-07)", 2, "2026-12-10", True),
    ]


def test_a_plan_with_a_byte_order_mark_is_read(shop: Shop) -> None:
    assert len(read(shop, b"\xef\xbb\xbfprocedure\nhub-nut\n")) == 1


def test_every_problem_of_a_plan_is_told_at_once_with_its_line(shop: Shop) -> None:
    text = "procedure,count,on\nhub-nut,2,2026-11-29\nno-such,1,\nhub-nut,0,30.11.2026\n,1,\nhub-nut,1.5,\n"
    with pytest.raises(BadInput) as refused:
        read(shop, text, "nor-this=2", "hub-nut=many")
    assert [(one.source, one.code) for one in refused.value.problems] == [
        ("--for", "bad-count"),
        ("--for", "unknown-procedure"),
        ("plan.csv:2", "date-past"),
        ("plan.csv:3", "unknown-procedure"),
        ("plan.csv:4", "bad-count"),
        ("plan.csv:4", "bad-date"),
        ("plan.csv:5", "no-procedure"),
        ("plan.csv:6", "bad-count"),
    ]
    assert all(one.next for one in refused.value.problems)


@pytest.mark.parametrize(
    ("text", "code"),
    [
        ("procedure,count\n", "empty-plan"),
        ("", "empty-file"),
        ("count,on\n1,\n", "missing-column"),
        ("procedure;count\nhub-nut;1\n", "not-commas"),
        ("procedure,colour\nhub-nut,red\n", "unknown-column"),
        (b"procedure\nhub-n\xfct\n", "not-utf-8"),
    ],
)
def test_a_file_that_is_no_plan_is_refused(shop: Shop, text: str | bytes, code: str) -> None:
    with pytest.raises(BadInput) as refused:
        read(shop, text)
    assert refused.value.problems[0].code == code


def test_a_plan_that_is_not_there_is_refused(shop: Shop) -> None:
    with pytest.raises(BadInput):
        planned_jobs([], shop.folder / "none.csv", lambda name: lookup(shop, name), TODAY, NEXT)
