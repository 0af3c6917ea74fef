"""The way from the wrench to the fastener."""

from __future__ import annotations

from itertools import permutations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from cribkit.domain.torque import Part, Reach, Role, find_way, find_ways, square, ways

SOCKET_Q = Part("S10-Q", Role.DRIVER, "1/4")
SOCKET_T = Part("S10-T", Role.DRIVER, "3/8")
SOCKET_H = Part("S10-H", Role.DRIVER, "1/2")
UP = Part("A-QT", Role.ADAPTER, "1/4", "3/8")
DOWN = Part("A-TQ", Role.ADAPTER, "3/8", "1/4")
UP2 = Part("A-TH", Role.ADAPTER, "3/8", "1/2")
EXT_150 = Part("X-150", Role.EXTENSION, "3/8", "3/8", 150)
EXT_75 = Part("X-75", Role.EXTENSION, "3/8", "3/8", 75)
EXT_400 = Part("X-400", Role.EXTENSION, "3/8", "3/8", 400)
EXT_ANY = Part("X-ANY", Role.EXTENSION, "3/8", "3/8")
JOINT = Part("J-T", Role.JOINT, "3/8", "3/8")
CROWFOOT = Part("C-10", Role.OFFSET, "3/8")
BEARER = Part("O-T", Role.OFFSET, "3/8", "3/8")


def way(start, drivers, parts, **want):
    """The tags of the best way, or the reasons."""
    found = find_ways(start, drivers, parts, Reach(**want))
    return " ".join(found.ways[0].tags) if found.ways else found.reasons


@pytest.mark.parametrize(
    ("start", "drivers", "parts", "want", "expected"),
    [
        ("3/8", [SOCKET_T], [], {}, "S10-T"),
        ("3/8", [SOCKET_Q, SOCKET_T], [DOWN], {}, "S10-T"),
        ("3/8", [SOCKET_Q], [DOWN], {}, "A-TQ S10-Q"),
        ("1/4", [SOCKET_H], [UP, UP2], {}, "A-QT A-TH S10-H"),
        ("3/8", [SOCKET_Q], [], {}, ("no-reach",)),
        ("3/8", [], [DOWN], {}, ("no-reach",)),
        ("", [SOCKET_T], [], {}, ("no-reach",)),
        ("3/8", [SOCKET_T], [EXT_150], {}, "S10-T"),  # what is not asked for stays in the crib
        ("3/8", [SOCKET_T], [EXT_150, EXT_75], {"extension_mm": 150}, "X-150 S10-T"),
        ("3/8", [SOCKET_T], [EXT_75], {"extension_mm": 150}, ("no-reach",)),
        ("1/4", [SOCKET_T], [EXT_150, UP], {"extension_mm": 150}, "A-QT X-150 S10-T"),
        ("3/8", [SOCKET_Q], [EXT_150, DOWN], {"extension_mm": 150}, "X-150 A-TQ S10-Q"),
        ("3/8", [SOCKET_T], [EXT_150, JOINT], {"extension_mm": 150, "joint": True}, "J-T X-150 S10-T"),
        ("3/8", [SOCKET_T], [], {"joint": True}, ("no-reach",)),
        ("3/8", [], [CROWFOOT], {"offset": True}, "C-10"),
        ("3/8", [SOCKET_T], [BEARER], {"offset": True}, "O-T S10-T"),
        ("3/8", [SOCKET_T], [CROWFOOT], {}, "S10-T"),
        ("3/8", [SOCKET_T], [], {"offset": True}, ("no-reach",)),
        ("1/4", [SOCKET_Q], [], {"torque_nm": 50}, "S10-Q"),
        ("1/4", [SOCKET_Q], [], {"torque_nm": 50.1}, ("drive-too-small",)),
        ("1/2", [SOCKET_Q], [Part("A-HQ", Role.ADAPTER, "1/2", "1/4")], {"torque_nm": 80}, ("drive-too-small",)),
    ],
)
def test_the_best_way(start, drivers, parts, want, expected):
    assert way(start, drivers, parts, **want) == expected


def test_three_adapters_are_too_many():
    chain = [Part(f"A{n}", Role.ADAPTER, one, two) for n, (one, two) in enumerate(
        [("1/4", "3/8"), ("3/8", "1/2"), ("1/2", "3/4")])]  # fmt: skip
    assert way("1/4", [Part("S", Role.DRIVER, "3/4")], chain) == ("no-reach",)
    assert way("3/8", [Part("S", Role.DRIVER, "3/4")], chain) == "A1 A2 S"


def test_the_smallest_square_bears_the_torque_and_the_cribs_own_limits_go_first():
    found = find_way("3/8", [SOCKET_Q], [DOWN], Reach(torque_nm=40))
    assert found is not None
    assert (found.smallest, found.limit_nm, found.adapters) == ("1/4", 50, 1)
    assert find_way("3/8", [SOCKET_Q], [DOWN], Reach(torque_nm=40), {"1/4": 30}) is None
    assert "1/4 square bears 30" in find_ways("3/8", [SOCKET_Q], [DOWN], Reach(torque_nm=40), {"1/4": 30}).why[0]


def test_a_universal_joint_brings_a_warning_and_a_long_extension_too():
    found = find_way("3/8", [SOCKET_T], [EXT_400, JOINT], Reach(extension_mm=150, joint=True))
    assert found is not None
    assert [text.split()[0] for text in found.warnings] == ["universal", "X-400"]


def test_an_extension_of_unknown_length_is_to_be_confirmed_and_goes_last():
    found = ways("3/8", [SOCKET_T], [EXT_ANY, EXT_400], Reach(extension_mm=150))
    assert [one.tags[0] for one in found] == ["X-400", "X-ANY"]
    assert [bool(one.doubts) for one in found] == [False, True]


def test_an_unknown_square_has_no_limit_and_is_to_be_confirmed():
    found = find_way("5/8", [Part("S", Role.DRIVER, "5/8")], [], Reach(torque_nm=500))
    assert found is not None
    assert (found.limit_nm, bool(found.doubts)) == (None, True)


@pytest.mark.parametrize(
    ("text", "name"),
    [("1/4", "1/4"), ("1/4 in", "1/4"), ('3/8"', "3/8"), ("12.5 mm", "1/2"), ("3/4 inch drive", "3/4"), ("1in", "1"),
     ("1/4 hex", "1/4 hex"), ("1/4 in hex", "1/4 hex"), ("", "")],
)  # fmt: skip
def test_a_square_has_one_name(text, name):
    # ISO 1174-1 squares (from memory): 6.3, 10, 12.5, 20, 25 mm are 1/4, 3/8, 1/2, 3/4, 1 in.
    assert square(text) == name


SQUARES = ["1/4", "3/8", "1/2"]
PARTS = st.lists(
    st.builds(
        Part,
        tag=st.uuids().map(str),
        role=st.sampled_from([Role.ADAPTER, Role.EXTENSION, Role.JOINT]),
        female=st.sampled_from(SQUARES),
        male=st.sampled_from(SQUARES),
        length_mm=st.sampled_from([75.0, 150.0]),
    ),
    max_size=5,
)


@given(PARTS, st.sampled_from(SQUARES), st.sampled_from(SQUARES), st.booleans(), st.booleans())
def test_a_way_is_found_exactly_where_trying_every_order_of_every_part_finds_one(parts, start, end, long, joint):
    driver = Part("DRIVER", Role.DRIVER, end)
    want = Reach(extension_mm=150 if long else None, joint=joint)
    fewest = min(
        (
            sum(part.role is Role.ADAPTER for part in chain)
            for size in range(len(parts) + 1)
            for chain in permutations(parts, size)
            if fits(chain, start, end, long, joint)
        ),
        default=None,
    )
    found = find_way(start, [driver], parts, want)
    assert (found.adapters if found else None) == fewest


def fits(chain, start, end, long, joint):
    """Whether these parts in this order lead from one square to the other and are what was asked for."""
    ends = [start, *(part.male for part in chain)]
    roles = [part.role for part in chain]
    return (
        all(part.female == at for part, at in zip(chain, ends, strict=False))
        and ends[-1] == end
        and roles.count(Role.ADAPTER) <= 2
        and roles.count(Role.EXTENSION) == long
        and roles.count(Role.JOINT) == joint
        and all(part.length_mm >= 142.5 for part in chain if part.role is Role.EXTENSION)
        and all(part.female != part.male for part in chain if part.role is Role.ADAPTER)
    )


@given(PARTS, st.sampled_from(SQUARES))
def test_the_order_of_the_crib_does_not_matter(parts, start):
    want = Reach(extension_mm=0)
    drivers = [SOCKET_Q, SOCKET_T]
    assert ways(start, drivers, parts, want) == ways(start, drivers[::-1], parts[::-1], want)
