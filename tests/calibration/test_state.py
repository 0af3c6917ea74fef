"""What a wrench may be used for, from its history."""

import datetime as dt

import pytest
from hypothesis import given
from hypothesis import strategies as st

from cribkit.domain.calibration.certificate import Fitness
from cribkit.domain.calibration.state import Calibrated, Event, Happening, check_event, state
from cribkit.domain.problem import BadInput

READY, UNFIT = Fitness.READY, Fitness.UNFIT
H = Happening


def day(number: int) -> dt.date:
    return dt.date(2026, 1, 1) + dt.timedelta(days=number)


def cal(number: int, order: int, fitness: Fitness = READY) -> Calibrated:
    return Calibrated(day(number), order, fitness, f"C{order}", why="no usable range passed clockwise")


def event(what: Happening, number: int, order: int) -> Event:
    return Event(what, day(number), order)


@pytest.mark.parametrize("what", [H.DROPPED, H.OVERLOADED, H.REPAIRED])
def test_harm_makes_unfit_until_calibrated(what: Happening) -> None:
    # AC 43.13-1B par. 7-40: calibrate at once after abuse or a drop.
    assert state([cal(0, 1)], [event(what, 5, 2)]).unfit == f"{what} on 2026-01-06, not calibrated since"
    assert state([cal(0, 1), cal(6, 3)], [event(what, 5, 2)]).unfit == ""


@pytest.mark.parametrize(
    ("calibrated", "unfit"),
    [((5, 3), False), ((5, 1), True), ((4, 3), True), ((6, 1), False)],
    ids=["same day, recorded later", "same day, recorded before", "dated before, recorded later", "dated after"],
)
def test_a_calibration_clears_only_what_came_before_it(calibrated: tuple[int, int], unfit: bool) -> None:
    assert bool(state([cal(*calibrated)], [event(H.DROPPED, 5, 2)]).unfit) is unfit


def test_the_newest_certificate_counts_even_if_an_older_one_is_typed_in_later() -> None:
    failed, older = cal(10, 1, UNFIT), cal(3, 2)
    assert state([failed, older], []).last is failed
    assert state([failed, older], []).unfit == "certificate C1: no usable range passed clockwise"


def test_storage_stops_use_and_a_return_asks_for_a_calibration() -> None:
    calibrations, events = [cal(0, 1)], [event(H.STORED, 3, 2)]
    assert state(calibrations, events).stored
    assert state(calibrations, events).unfit == "in storage since 2026-01-04"
    back = event(H.RETURNED, 40, 5)
    with pytest.raises(BadInput, match="no calibration since it was stored on 2026-01-04: have it calibrated"):
        check_event("TW-01", back, calibrations, events)
    calibrations.append(cal(38, 4))
    assert state(calibrations, events).unfit == "in storage since 2026-01-04"
    check_event("TW-01", back, calibrations, events)
    assert state(calibrations, [*events, back]).unfit == ""


def test_storage_events_out_of_turn_are_refused() -> None:
    with pytest.raises(BadInput, match="not in storage"):
        check_event("TW-01", event(H.RETURNED, 3, 2), [cal(0, 1)], [])
    with pytest.raises(BadInput, match="in storage since 2026-01-03 already"):
        check_event("TW-01", event(H.STORED, 4, 3), [cal(0, 1)], [event(H.STORED, 2, 2)])


histories = st.lists(st.tuples(st.integers(0, 6), st.sampled_from([READY, UNFIT, *H])), max_size=10)


@given(histories)
def test_usable_means_that_the_last_harm_is_older_than_a_passed_calibration(history: list[tuple[int, object]]) -> None:
    calibrations = [Calibrated(day(d), n, what) for n, (d, what) in enumerate(history) if isinstance(what, Fitness)]
    events = [Event(what, day(d), n) for n, (d, what) in enumerate(history) if isinstance(what, Happening)]
    found = state(calibrations, events)
    # The plain way: walk through everything by day and order, and keep a flag.
    bad, stored = False, False
    for _, what in sorted(((d, n), w) for n, (d, w) in enumerate(history)):
        if isinstance(what, Fitness):
            bad = what is UNFIT
        elif what is H.STORED:
            stored = True
        elif what is H.RETURNED:
            stored = False
        else:
            bad = True
    assert (bool(found.unfit), found.stored) == (bad or stored, stored)
