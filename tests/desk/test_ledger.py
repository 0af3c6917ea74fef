"""Postings: in, out, back, counted, lost and found, as a person at the counter sees them."""

from __future__ import annotations

import datetime as dt
from collections.abc import Iterator
from pathlib import Path

import pytest

from cribkit.desk.counting import Counted, belongs, count, read_count
from cribkit.desk.ledger import Arrival, Errand, give_back, issue, receive, scrap
from cribkit.desk.missing import find_again, lose
from cribkit.desk.undoing import undo
from cribkit.desk.whereabouts import expiring, history, out
from cribkit.domain.problem import BadInput
from cribkit.domain.stock.item import Lot
from cribkit.store.audit import audit
from cribkit.store.crib import Crib
from cribkit.store.opening import open_crib
from cribkit.store.posting import Entry, movements
from tests.store.small import FILES, make_crib

TODAY = dt.date(2026, 11, 25)
ENTRY = Entry("M. Ashby", TODAY, "2026-11-25T09:00:00Z")
OIL_GTIN = FILES["consumables.csv"].replace("hazards\n", "hazards,gtin,service_life_days\n").replace(
    ",,GHS08\n", ",,GHS08,4006381333931,30\n"
)  # fmt: skip


@pytest.fixture
def crib(tmp_path: Path) -> Iterator[Crib]:
    """A small crib, open for posting; sound at the end of every test."""
    with open_crib(make_crib(tmp_path, consumables=OIL_GTIN), write=True) as opened:
        yield opened
        assert audit(opened).problems == ()


def code(refused: pytest.ExceptionInfo[BadInput]) -> str:
    """The code of the first problem."""
    return refused.value.problems[0].code


def test_a_receipt_adds_to_its_lot_and_notes_the_expiry(crib: Crib) -> None:
    receive(crib, "CL-1", Arrival("2 cans", "T2", dt.date(2028, 5, 31)), ENTRY)
    item = crib.must_have("CL-1")
    assert item.on_hand == 2600
    assert item.lots[-1] == Lot("T2", 800, dt.date(2028, 5, 31))


def test_a_scan_fills_item_lot_expiry_and_count(crib: Crib) -> None:
    done = receive(crib, "(01)04006381333931(17)280531(10)OL7(30)3", Arrival(), ENTRY)
    assert [(one.tag, one.lot, one.amount) for one in done.movements] == [("OIL-1", "OL7", 15_000_000)]
    assert crib.must_have("OIL-1").lots[0] == Lot("OL7", 15_000, dt.date(2028, 5, 31))


def test_a_plain_barcode_finds_the_item_wherever_a_tag_is_asked_for(crib: Crib) -> None:
    issue(crib, "4006381333931", Errand("1 L", "R. Holm"), ENTRY)
    assert history(crib, "04006381333931", TODAY)[0].tag == "OIL-1"


@pytest.mark.parametrize(
    ("text", "arrival", "expected"),
    [
        ("NO-1", Arrival("1"), "unknown-tag"),
        ("(01)12345678901231(10)A", Arrival("1"), "unknown-gtin"),
        ("(01)12345678901232(10)A", Arrival("1"), "bad-scan"),
        ("(01)04006381333931(10)A", Arrival("1 L", "B"), "two-lots"),
        ("SK-8", Arrival(), "no-amount"),
        ("SK-8", Arrival("0"), "no-amount"),
        ("SK-8", Arrival("1.5"), "not-whole"),
        ("SK-8", Arrival("1", "L1"), "no-lots"),
        ("GL-1", Arrival("2"), "ambiguous-amount"),
        ("CL-1", Arrival("3 kg"), "wrong-unit"),
        ("CL-1", Arrival("1", "T1", dt.date(2028, 1, 1)), "other-expiry"),
        ("CL-1", Arrival("1", "T9", dt.date(2026, 11, 24)), "expired"),
    ],
)
def test_a_receipt_that_is_unclear_is_refused(crib: Crib, text: str, arrival: Arrival, expected: str) -> None:
    before = len(movements(crib))
    with pytest.raises(BadInput) as refused:
        receive(crib, text, arrival, ENTRY)
    assert code(refused) == expected
    assert len(movements(crib)) == before


def test_what_expires_first_goes_out_first(crib: Crib) -> None:
    done = issue(crib, "CL-1", Errand("2 cans", "R. Holm"), ENTRY)
    assert [(one.lot, one.amount) for one in done.movements] == [("T0", 600_000), ("T1", 200_000)]


def test_what_has_expired_stays_in_the_crib(crib: Crib) -> None:
    later = Entry("M. Ashby", dt.date(2027, 1, 1), "2027-01-01T09:00:00Z")
    done = issue(crib, "CL-1", Errand("1 can", "R. Holm"), later)
    assert [one.lot for one in done.movements] == ["T1"]
    with pytest.raises(BadInput, match=r"expired") as refused:
        issue(crib, "CL-1", Errand("1 can", "R. Holm", lot="T0"), later)
    assert code(refused) == "too-little"
    forced = issue(crib, "CL-1", Errand("1 can", "R. Holm", lot="T0", anyway="cleaning a drip tray"), later)
    assert forced.movements[0].note == "anyway: cleaning a drip tray"


@pytest.mark.parametrize(
    ("tag", "day", "reason"),
    [
        ("PL-1", TODAY, "it is marked damaged"),
        ("TW-1", dt.date(2027, 9, 15), "its calibration ran out on 2027-09-14"),
    ],
)
def test_what_is_unfit_goes_out_only_for_a_reason(crib: Crib, tag: str, day: dt.date, reason: str) -> None:
    entry = Entry("M. Ashby", day, "2026-11-25T09:00:00Z")
    with pytest.raises(BadInput) as refused:
        issue(crib, tag, Errand(holder="R. Holm"), entry)
    assert refused.value.problems[0].message == reason
    done = issue(crib, tag, Errand(holder="R. Holm", anyway="to the laboratory"), entry)
    assert done.notes == (reason,)


def test_a_wrench_may_be_used_on_its_due_day(crib: Crib) -> None:
    issue(crib, "TW-1", Errand(holder="R. Holm"), Entry("M. Ashby", dt.date(2027, 9, 14), "2027-09-14T09:00:00Z"))


def test_nothing_goes_out_twice(crib: Crib) -> None:
    issue(crib, "SK-10", Errand(holder="R. Holm"), ENTRY)
    with pytest.raises(BadInput, match="SK-10: cannot issue 1: only 0 in the crib"):
        issue(crib, "SK-10", Errand(holder="J. Sedge"), ENTRY)


def test_a_return_may_keep_a_part_back_as_used(crib: Crib) -> None:
    issue(crib, "CL-1", Errand("2 cans", "R. Holm"), ENTRY)
    done = give_back(crib, "CL-1", Errand("300 mL", use=True), ENTRY)
    assert [(one.kind.value, one.lot, one.amount) for one in done.movements] == [
        ("return", "T1", 200_000),
        ("return", "T0", 100_000),
        ("use", "T0", 500_000),
    ]
    assert out(crib, TODAY, job="") == out(crib, TODAY)
    assert crib.must_have("CL-1").loans == ()


def test_a_return_asks_whose_it_is_where_several_have_it(crib: Crib) -> None:
    issue(crib, "SK-8", Errand(holder="R. Holm", job="heron-1"), ENTRY)
    issue(crib, "SK-8", Errand(holder="J. Sedge"), ENTRY)
    with pytest.raises(BadInput) as refused:
        give_back(crib, "SK-8", Errand(), ENTRY)
    assert refused.value.problems[0].message == "several have it: J. Sedge; R. Holm for heron-1"
    give_back(crib, "SK-8", Errand(holder="j. sedge"), ENTRY)
    assert [loan.by for loan in crib.must_have("SK-8").loans] == ["R. Holm"]


def test_more_than_is_out_does_not_come_back(crib: Crib) -> None:
    with pytest.raises(BadInput) as refused:
        give_back(crib, "SK-8", Errand(), ENTRY)
    assert code(refused) == "not-out"
    issue(crib, "SK-8", Errand(holder="R. Holm"), ENTRY)
    with pytest.raises(BadInput) as refused:
        give_back(crib, "SK-8", Errand("2"), ENTRY)
    assert code(refused) == "too-much"


def test_used_at_once_is_issued_and_used(crib: Crib) -> None:
    done = issue(crib, "GL-1", Errand("2 each", "R. Holm", use=True), ENTRY)
    assert [one.kind.value for one in done.movements] == ["issue", "use"]
    assert (crib.must_have("GL-1").on_hand, crib.must_have("GL-1").out) == (198, 0)


def test_a_count_is_shown_before_it_is_posted(crib: Crib) -> None:
    rows = [Counted("", "SK-8", "3"), Counted("", "CL-1", "1 can", "T0"), Counted("", "RA-1", "1")]
    shown = count(crib, rows, ENTRY)
    assert [(line.item.tag, line.change) for line in shown.differences] == [("SK-8", 1000), ("CL-1", -200_000)]
    assert crib.must_have("SK-8").on_hand == 2
    posted = count(crib, rows, ENTRY, do_post=True)
    assert [line.movement for line in posted.lines][-1] is None
    assert (crib.must_have("SK-8").on_hand, crib.must_have("CL-1").on_hand) == (3, 1600)
    assert count(crib, rows, ENTRY).differences == ()


def test_a_shelf_s_count_names_what_was_not_counted(crib: Crib) -> None:
    done = count(crib, [Counted("", "SK-8", "2")], ENTRY, shelf="a1")
    assert [item.tag for item in done.not_counted] == ["SK-10"]


@pytest.mark.parametrize(
    ("location", "shelf", "expected"),
    [("a1", "a1", True), ("a1-02", "a1", True), ("a10", "a1", False), ("a1b", "a1", False), ("b1", "a1", False)],
)
def test_a_place_belongs_to_its_shelf(location: str, shelf: str, expected: bool) -> None:
    assert belongs(location, shelf) is expected


def test_a_count_sheet_is_refused_with_every_problem_and_line(crib: Crib, tmp_path: Path) -> None:
    sheet = tmp_path / "counted.csv"
    sheet.write_text("tag,counted,lot\nSK-8,3,\nNO-1,1,\nCL-1,1,\nGL-1,5,\nSK-8,3,\nRA-1,,\n", encoding="utf-8")
    with pytest.raises(BadInput) as refused:
        count(crib, read_count(sheet), ENTRY, do_post=True)
    assert [(one.source, one.code) for one in refused.value.problems] == [
        ("counted.csv:3", "unknown-tag"),
        ("counted.csv:4", "which-lot"),
        ("counted.csv:5", "ambiguous-amount"),
        ("counted.csv:6", "counted-twice"),
    ]
    assert crib.must_have("SK-8").on_hand == 2


def test_a_loss_needs_a_reason_and_can_be_found_again(crib: Crib) -> None:
    issue(crib, "SK-8", Errand(holder="R. Holm"), ENTRY)
    with pytest.raises(BadInput) as refused:
        lose(crib, "SK-8", Errand(), ENTRY)
    assert code(refused) == "no-reason"
    lose(crib, "SK-8", Errand(note="fell into the dock"), ENTRY)
    assert (crib.must_have("SK-8").on_hand, crib.must_have("SK-8").out) == (1, 0)
    found = find_again(crib, "SK-8", Errand(), ENTRY)
    assert [(one.kind.value, one.amount, one.corrects is None) for one in found.movements] == [
        ("lost", -1000, False),
        ("found", 1000, True),
    ]
    assert crib.must_have("SK-8").on_hand == 2


def test_what_the_ledger_has_in_the_crib_is_counted_and_not_given_up(crib: Crib) -> None:
    with pytest.raises(BadInput) as refused:
        lose(crib, "SK-8", Errand(note="gone"), ENTRY)
    assert code(refused) == "not-out"
    with pytest.raises(BadInput) as refused:
        find_again(crib, "SK-8", Errand(), ENTRY)
    assert code(refused) == "not-missed"


def test_a_mistake_is_taken_back_once_by_a_movement_that_names_it(crib: Crib) -> None:
    number = scrap(crib, "SK-8", Errand(note="worn"), ENTRY).movements[0].id
    done = undo(crib, number, ENTRY, "wrong tag")
    assert [(one.kind.value, one.amount, one.corrects) for one in done.movements] == [("scrap", -1000, number)]
    assert crib.must_have("SK-8").on_hand == 2
    for wrong in (number, done.movements[0].id, 9999):
        with pytest.raises(BadInput):
            undo(crib, wrong, ENTRY, "again")


def test_a_return_taken_back_opens_the_loan_as_old_as_it_was(crib: Crib) -> None:
    early = Entry("M. Ashby", dt.date(2026, 11, 1), "2026-11-01T09:00:00Z")
    issue(crib, "SK-8", Errand(holder="R. Holm"), early)
    back = give_back(crib, "SK-8", Errand(), ENTRY)
    undo(crib, back.movements[0].id, ENTRY, "was another socket")
    assert crib.must_have("SK-8").loans[0].since == dt.date(2026, 11, 1)


def test_an_issue_that_came_back_cannot_be_taken_back(crib: Crib) -> None:
    number = issue(crib, "SK-10", Errand(holder="R. Holm"), ENTRY).movements[0].id
    back = give_back(crib, "SK-10", Errand(), ENTRY).movements[0].id
    with pytest.raises(BadInput, match=f"what came later first \\({back}\\)") as refused:
        undo(crib, number, ENTRY, "never happened")
    assert code(refused) == "moved-on"
    undo(crib, back, ENTRY, "never came back")
    undo(crib, number, ENTRY, "never happened")
    assert crib.must_have("SK-10").loans == ()


def test_overdue_loans_come_first(crib: Crib) -> None:
    issue(crib, "SK-8", Errand(holder="R. Holm", due=dt.date(2026, 12, 24)), ENTRY)
    issue(crib, "SK-10", Errand(holder="J. Sedge", due=dt.date(2026, 11, 26)), ENTRY)
    lines = out(crib, dt.date(2026, 11, 28))
    assert [(line.loan.tag, line.overdue_days) for line in lines] == [("TW-2", 7), ("SK-10", 2), ("SK-8", 0)]


def test_an_open_container_has_a_service_life_of_its_own(crib: Crib) -> None:
    """Shelf life ends and service life begins when a package is opened (PS Magazine 710 p. 51)."""
    issue(crib, "OIL-1", Errand("1 L", "R. Holm", use=True), ENTRY)
    opened, whole = crib.must_have("OIL-1").lots
    assert (opened.amount, opened.opened_on, opened.expires_on) == (4000, TODAY, dt.date(2026, 12, 25))
    assert (whole.amount, whole.opened_on, whole.expires_on) == (15_000, None, None)
    assert [(line.item.tag, line.days) for line in expiring(crib, TODAY, 30)] == [("OIL-1", 30)]
    later = Entry("M. Ashby", dt.date(2026, 12, 26), "2026-12-26T09:00:00Z")
    issue(crib, "OIL-1", Errand("16 L", "R. Holm", anyway="flushing"), later)


def test_history_adds_up_line_by_line(crib: Crib) -> None:
    issue(crib, "SK-8", Errand(holder="R. Holm"), ENTRY)
    number = scrap(crib, "SK-8", Errand(note="worn"), ENTRY).movements[0].id
    undo(crib, number, ENTRY, "not worn")
    _, lines = history(crib, "sk-8", TODAY)
    assert [(line.movement.kind.value, line.inside, line.outside, line.corrected_by) for line in lines] == [
        ("receive", 2000, 0, None),
        ("issue", 1000, 1000, None),
        ("scrap", 0, 1000, number + 1),
        ("scrap", 1000, 1000, None),
    ]
