"""Recording certificates and events in a crib's file, and what a check may rely on afterwards."""

import sqlite3
from pathlib import Path

import pytest

from cribkit.desk.certificates import read_file, read_rows
from cribkit.desk.keeping import load_folder
from cribkit.desk.recording import GuardBand, change_rules, changed, record, shop_rules, withdraw
from cribkit.domain.calibration.certificate import Fitness
from cribkit.domain.calibration.due import Policy, Rules, Start
from cribkit.domain.problem import BadInput
from cribkit.domain.torque import cover, parse_spec
from cribkit.store.audit import audit
from cribkit.store.calibrations import broken_line, life
from cribkit.store.crib import Crib
from cribkit.store.opening import open_crib
from cribkit.store.seed.export import export
from cribkit.store.seed.folder import read_folder
from cribkit.store.seed.load import load as load_seed
from tests.calibration.world import (
    GOOD,
    STRONG,
    TODAY,
    WEAK_LOW,
    calibrate,
    crib_at,
    happen,
    posted,
    rows,
    work,
    wrench,
)
from tests.store.small import ENTRY


def serves(crib: Crib, tag: str, spec: str, left_hand: bool = False) -> tuple[str, ...] | None:
    """None if the wrench covers the spec today, else the reasons why not."""
    found = cover(wrench(crib, tag), parse_spec(spec).torques[-1], TODAY, left_hand=left_hand)
    return None if found.covers else found.reasons


def test_a_pass_makes_a_wrench_ready_with_the_new_date(tmp_path: Path) -> None:
    with crib_at(tmp_path) as crib:
        done = calibrate(crib, "TW-1", "SD-26-101", "2026-11-20", GOOD)
        assert (done.finding.fitness, done.newest, done.trace) == (Fitness.READY, True, None)
        now = wrench(crib, "TW-1")
        assert (str(now.calibrated_on), now.certificate, now.unfit_reason) == ("2026-11-20", "SD-26-101", "")
        assert str(now.due) == "2027-11-20"


def test_a_part_that_passed_limits_what_a_check_may_use(tmp_path: Path) -> None:
    with crib_at(tmp_path) as crib:
        assert serves(crib, "TW-1", "24-28 N·m") is None
        done = calibrate(crib, "TW-1", "SD-26-101", "2026-11-20", WEAK_LOW)
        assert (done.finding.fitness, wrench(crib, "TW-1").limited_nm) == (Fitness.LIMITED, (60, 100))
        assert serves(crib, "TW-1", "24-28 N·m") == ("below-range",)
        assert serves(crib, "TW-1", "76-84 N·m") is None


def test_a_fail_makes_it_unfit_until_the_next_pass(tmp_path: Path) -> None:
    with crib_at(tmp_path) as crib:
        calibrate(crib, "TW-1", "SD-26-101", "2026-11-20", {"20": "18", "60": "50", "100": "90"})
        assert serves(crib, "TW-1", "76-84 N·m") == ("unfit",)
        calibrate(crib, "TW-1", "SD-26-102", "2026-11-22", GOOD)
        assert serves(crib, "TW-1", "76-84 N·m") is None


def test_found_out_but_adjusted_is_ready_again(tmp_path: Path) -> None:
    with crib_at(tmp_path) as crib:
        done = calibrate(crib, "TW-1", "SD-26-101", "2026-11-20", STRONG, GOOD)
        assert (done.finding.fitness, done.finding.found_out) == (Fitness.READY, True)
        assert done.trace is not None
        assert serves(crib, "TW-1", "76-84 N·m") is None


@pytest.mark.parametrize("what", ["dropped", "overloaded", "repaired", "stored"])
def test_what_happens_to_it_stops_its_use(tmp_path: Path, what: str) -> None:
    with crib_at(tmp_path) as crib:
        happen(crib, "TW-1", what, "2026-11-24")
        assert serves(crib, "TW-1", "76-84 N·m") == ("unfit",)


def test_storage_ends_with_a_calibration_and_a_return(tmp_path: Path) -> None:
    with crib_at(tmp_path) as crib:
        happen(crib, "TW-1", "stored", "2026-11-01")
        with pytest.raises(BadInput, match="no calibration since it was stored"):
            happen(crib, "TW-1", "returned", "2026-11-24")
        calibrate(crib, "TW-1", "SD-26-101", "2026-11-20", GOOD)
        assert serves(crib, "TW-1", "76-84 N·m") == ("unfit",)
        happen(crib, "TW-1", "returned", "2026-11-24")
        assert serves(crib, "TW-1", "76-84 N·m") is None


def test_a_wrench_marked_damaged_is_mended_by_a_pass_and_damaged_again_if_that_is_withdrawn(tmp_path: Path) -> None:
    points = {"5": "5", "15": "15", "25": "25"}
    with crib_at(tmp_path) as crib:
        assert serves(crib, "TW-4", "15 ± 1 N·m") == ("no-calibration", "unfit")
        assert calibrate(crib, "TW-4", "SD-26-104", "2026-11-20", points).mended
        assert serves(crib, "TW-4", "15 ± 1 N·m") is None
        withdraw(crib, "TW-4", "SD-26-104", posted(), "typed for the wrong wrench")
        assert serves(crib, "TW-4", "15 ± 1 N·m") == ("no-calibration", "unfit")


def test_a_left_hand_thread_needs_a_left_hand_test(tmp_path: Path) -> None:
    points = {"30": "30", "90": "90", "150": "150"}
    with crib_at(tmp_path) as crib:
        assert serves(crib, "TW-2", "90 ± 5 ft-lb", left_hand=True) is None
        calibrate(crib, "TW-2", "SD-26-102", "2026-11-20", points)
        assert serves(crib, "TW-2", "90 ± 5 ft-lb") is None
        assert serves(crib, "TW-2", "90 ± 5 ft-lb", left_hand=True) == ("unfit",)
        both = rows("TW-2", "SD-26-103", "2026-11-21", points) + rows(
            "TW-2", "SD-26-103", "2026-11-21", points, direction="ccw"
        )
        entries, problems = read_rows(crib, both, "c.csv")
        assert problems == ()
        record(crib, entries, posted())
        assert serves(crib, "TW-2", "90 ± 5 ft-lb", left_hand=True) is None


def test_an_older_certificate_typed_in_later_does_not_decide(tmp_path: Path) -> None:
    with crib_at(tmp_path) as crib:
        calibrate(crib, "TW-1", "SD-26-102", "2026-11-20", {"60": "50"})
        assert not calibrate(crib, "TW-1", "SD-26-101", "2026-06-01", GOOD).newest
        assert serves(crib, "TW-1", "76-84 N·m") == ("unfit",)


def test_a_withdrawn_certificate_no_longer_counts_but_stays_on_record(tmp_path: Path) -> None:
    with crib_at(tmp_path) as crib:
        calibrate(crib, "TW-1", "SD-26-101", "2026-11-20", GOOD)
        withdraw(crib, "TW-1", "SD-26-101", posted(), "typed for the wrong wrench")
        assert (str(wrench(crib, "TW-1").calibrated_on), wrench(crib, "TW-1").certificate) == (
            "2026-03-02",
            "SD-26-001",
        )
        assert [kept.withdrawn for kept in life(crib, "TW-1").certificates] == [True]
        with pytest.raises(BadInput, match="TW-1 has no certificate SD-26-101: recorded: none"):
            withdraw(crib, "TW-1", "SD-26-101", posted(), "again")
        calibrate(crib, "TW-1", "SD-26-101", "2026-11-20", GOOD)
        assert str(wrench(crib, "TW-1").calibrated_on) == "2026-11-20"


@pytest.mark.parametrize(
    ("change", "message"),
    [
        ({"day": "2026-11-26"}, "c.csv:2: SD-26-101 is dated 2026-11-26, after today: check the date."),
        ({"number": "SD-26-100"}, "c.csv:2: certificate SD-26-100 of TW-1 is recorded already: "
                                  "to correct it, take it back first with `cribkit wrench withdraw`."),
    ],
    ids=["from the future", "recorded already"],
)  # fmt: skip
def test_what_cannot_be_is_refused_and_nothing_is_recorded(
    tmp_path: Path, change: dict[str, str], message: str
) -> None:
    with crib_at(tmp_path) as crib:
        calibrate(crib, "TW-1", "SD-26-100", "2026-11-19", GOOD)
        before = life(crib, "TW-1")
        said = {"number": "SD-26-101", "day": "2026-11-20"} | change
        bad = rows("TW-1", said["number"], said["day"], GOOD)
        good = [(line + 10, row) for line, row in rows("TW-2", "SD-26-200", "2026-11-20", GOOD)]
        entries, _ = read_rows(crib, bad + good, "c.csv")
        with pytest.raises(BadInput) as refused:
            record(crib, entries, posted())
        assert str(refused.value) == message
        assert life(crib, "TW-1") == before
        assert life(crib, "TW-2").lines == ()


def test_a_guard_band_needs_the_uncertainty_and_makes_the_verdict_stricter(tmp_path: Path) -> None:
    off = {"20": "19.42", "60": "58.25", "100": "97.09"}  # 3 % weak: inside 4 %, outside 4 % - 1.6 %
    with crib_at(tmp_path) as crib:
        with pytest.raises(BadInput, match="states no uncertainty, and a guard band needs one"):
            calibrate(crib, "TW-1", "SD-26-101", "2026-11-20", off, guard=GuardBand())
        done = calibrate(crib, "TW-1", "SD-26-101", "2026-11-20", off, guard=GuardBand(), uncertainty_pct="1.6")
        assert done.finding.fitness is Fitness.UNFIT
        kept = life(crib, "TW-1").certificates[0]
        assert (kept.limit, kept.accepted) == (pytest.approx(0.04), pytest.approx(0.024))


def test_many_certificates_from_one_file(tmp_path: Path) -> None:
    file = tmp_path / "all.csv"
    file.write_text(
        "\ufefftag,certificate,date,laboratory,phase,setting,reading\n"
        "tw-1,SD-1,2026-11-20,Saltmarsh bench (invented),as-found,20,20\n"
        "tw-1,SD-1,,,as-found,60,60\n"
        "tw-1,SD-1,,,as-found,100,100\n"
        'TW-3,SD-3,2026-11-20,"Saltmarsh bench (invented)",as-found,110,110;111\n',
        encoding="utf-8",
    )
    with crib_at(tmp_path) as crib:
        entries, problems = read_file(crib, file)
        assert problems == ()
        done = record(crib, entries, posted())
        assert [(one.tag, one.finding.fitness) for one in done] == [("TW-1", "ready"), ("TW-3", "ready")]


def test_cycles_count_from_the_calibration_that_counts(tmp_path: Path) -> None:
    with crib_at(tmp_path) as crib:
        work(crib, "J-1", "TW-1", "2026-05-01", count=100, steps=3)
        assert wrench(crib, "TW-1").cycles == 300
        calibrate(crib, "TW-1", "SD-26-101", "2026-11-20", GOOD)
        assert wrench(crib, "TW-1").cycles == 0
        work(crib, "J-2", "TW-1", "2026-11-21", count=2500, steps=2)
        assert serves(crib, "TW-1", "76-84 N·m") == ("overdue",)


def test_the_shops_rules_move_the_last_good_day(tmp_path: Path) -> None:
    with crib_at(tmp_path) as crib:
        assert (shop_rules(crib), str(wrench(crib, "TW-1").due)) == (Rules(), "2027-03-02")
        change_rules(crib, changed(shop_rules(crib), Policy.END_OF_MONTH, None, 21), posted())
        assert str(wrench(crib, "TW-1").due) == "2027-03-31"
        assert (shop_rules(crib).days_away, shop_rules(crib).by) == (21, "R. Vale")
        change_rules(crib, changed(shop_rules(crib), Policy.SAME_DAY, Start.FIRST_USE, None), posted())
        assert wrench(crib, "TW-1").due is None
        work(crib, "J-1", "TW-1", "2026-05-10")
        assert str(wrench(crib, "TW-1").due) == "2027-05-10"
        assert wrench(crib, "TW-2").due is None


def test_the_chain_of_a_wrenchs_life_shows_a_change_behind_the_tools_back(tmp_path: Path) -> None:
    with crib_at(tmp_path) as crib:
        calibrate(crib, "TW-1", "SD-26-101", "2026-11-20", {"60": "50", "20": "20", "100": "100"})
        happen(crib, "TW-2", "dropped", "2026-11-24")
        assert (broken_line(crib), audit(crib).problems) == (None, ())
        with pytest.raises(sqlite3.IntegrityError, match="never edited"):
            crib.connection.execute("UPDATE reading SET reference = 60 WHERE setting = 60")
        crib.connection.execute("DROP TRIGGER reading_is_never_edited")
        crib.connection.execute("UPDATE reading SET reference = 60 WHERE setting = 60")
        assert broken_line(crib) == 1
        assert "chain-broken" in [problem.code for problem in audit(crib).problems]


def test_a_cut_end_of_the_chain_shows(tmp_path: Path) -> None:
    with crib_at(tmp_path) as crib:
        happen(crib, "TW-1", "dropped", "2026-11-24")
        happen(crib, "TW-2", "dropped", "2026-11-24")
        crib.connection.execute("DROP TRIGGER wrench_event_is_never_deleted")
        crib.connection.execute("DELETE FROM wrench_event WHERE id = 2")
        assert broken_line(crib) == 2


def test_exported_files_never_make_a_wrench_look_better_than_it_is(tmp_path: Path) -> None:
    with crib_at(tmp_path / "one") as crib:
        calibrate(crib, "TW-1", "SD-26-101", "2026-11-20", WEAK_LOW)
        calibrate(crib, "TW-2", "SD-26-102", "2026-11-20", {"30": "30", "90": "90", "150": "150"})
        happen(crib, "TW-3", "dropped", "2026-11-24")
        export(crib, tmp_path / "files")
        load_folder(tmp_path / "two.db", tmp_path / "files", ENTRY)
        with open_crib(tmp_path / "two.db") as other:
            found = {one.tag: (str(one.calibrated_on), one.certificate) for one in other.wrenches()}
        assert found == {"TW-1": ("None", ""), "TW-2": ("None", ""), "TW-3": ("None", ""), "TW-4": ("None", "")}
        points = rows("TW-2", "SD-26-103", "2026-11-21", {"30": "30", "90": "90", "150": "150"})
        both = points + [(line, row | {"direction": "ccw"}) for line, row in points]
        record(crib, read_rows(crib, both, "c.csv")[0], posted())
        export(crib, tmp_path / "files")
        load_seed(crib, read_folder(tmp_path / "files"), ENTRY)
        assert (str(wrench(crib, "TW-2").calibrated_on), wrench(crib, "TW-2").certificate) == (
            "2026-11-21",
            "SD-26-103",
        )
        withdraw(crib, "TW-2", "SD-26-103", posted(), "typed for the wrong wrench")
        assert serves(crib, "TW-2", "90 ± 5 ft-lb", left_hand=True) == ("unfit",)
        assert wrench(crib, "TW-2").certificate == "SD-26-102"
