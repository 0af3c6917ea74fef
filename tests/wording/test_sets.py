"""Sets: a member satisfies a need, one noted as missing does not; never-lines and alternatives."""

import pytest

from cribkit.domain.wording import forbidden, index_terms, judge, query_terms, read, read_item

SET = read_item(
    "socket set 1/4 dr 6 pt", "tool", contents="8 mm; 9 mm; 10 mm (missing); 13 mm; ratchet 1/4; extension 75 mm"
)


@pytest.mark.parametrize(
    ("need", "status", "member"),
    [
        ("8 mm socket, 1/4 drive", "match", "8 mm"),
        ("8 mm socket, 1/4 drive, 6 point", "match", "8 mm"),
        ("8 mm socket, 3/8 drive", "none", ""),
        ("8 mm socket, 12 point", "none", ""),
        ("10 mm socket, 1/4 drive", "none", ""),
        ("11 mm socket", "none", ""),
        ("1/4 drive ratchet", "match", "ratchet 1/4"),
        ("E8 socket", "none", ""),
    ],
)
def test_a_member_of_a_set_satisfies_a_need(need: str, status: str, member: str) -> None:
    found = judge(read(need), SET)
    assert (found.status, found.member) == (status, member)
    assert status == "none" or query_terms(read(need)) & index_terms(SET)


NOTED = [
    ("8 mm; 9 mm (missing: 10 mm)", {"8 mm": "match", "9 mm": "match", "10 mm": "none"}),
    ("8 mm; 10 mm; 9 mm (missing 10 mm)", {"8 mm": "match", "9 mm": "match", "10 mm": "none"}),
    ("8 mm; 5.5 mm (missing: 5.5)", {"8 mm": "match", "5.5 mm": "none"}),
    ("8 mm; 9 mm (lost: 10 mm and 11 mm); 11 mm", {"9 mm": "match", "10 mm": "none", "11 mm": "none"}),
    ("8 mm; 9 mm (missing)", {"8 mm": "match", "9 mm": "none"}),
]


@pytest.mark.parametrize(("contents", "verdicts"), NOTED, ids=[contents for contents, _ in NOTED])
def test_a_note_says_which_member_is_missing(contents: str, verdicts: dict[str, str]) -> None:
    item = read_item("socket set 1/4 dr 6 pt", "tool", contents)
    assert {size: judge(read(f"{size} socket, 1/4 drive"), item).status for size in verdicts} == verdicts


@pytest.mark.parametrize(
    ("description", "need", "status"),
    [
        ("socket set 1/4 dr 4-14 mm 6 pt, 12 pc", "7 mm socket 1/4 drive", "match"),
        ("socket set 1/4 dr 4-14 mm 6 pt, 12 pc", "15 mm socket 1/4 drive", "none"),
        ("combination spanner set 8-19 mm, 12 pc", "13 mm combination spanner", "match"),
        (
            "combination spanner set 8-19 mm, 9 pc",
            "13 mm combination spanner",
            "review",
        ),  # which sizes it leaves out is not told
        ("combination spanner set 8-19 mm", "13 mm combination spanner", "review"),
        ("combination spanner set 8-19 mm", "19 mm combination spanner", "match"),  # an end of the range is there
        (
            "rail of deep sockets, 3/8 drive, 14-19 mm, five pieces",
            "14 mm deep socket, 3/8 drive",
            "review",
        ),  # one is left out
        ("bit set T10-T40, 7 pc", "T25 bit", "match"),
        ("bit set T10-T40, 7 pc", "T35 bit", "review"),  # seldom among them
        ("bit set T10-T40", "T25 bit", "review"),
        ("drill set 1-10 mm by 0.5, 19 pc", "6.5 mm drill bit", "match"),
        ("drill set 1-10 mm by 0.5, 19 pc", "6.4 mm drill bit", "none"),
        ("bit set T10-T40", "T50 bit", "none"),
        ("bit set T10-T40", "E10 socket", "none"),
        ("3/8 drive deep sockets 10-15 mm, 6 pc, 6pt", "12 mm deep socket 3/8 drive", "match"),
        ("3/8 drive deep sockets 10-15 mm, 6 pc, 6pt", "16 mm deep socket 3/8 drive", "none"),
        ("3/8 drive deep sockets 10-15 mm, 5 pc, 6pt", "12 mm deep socket 3/8 drive", "review"),
        ("hex key set, T-handle, 2-6 mm, 6 pc", "5 mm T-handle hex key", "match"),
        ("hex key set, T-handle, 2-6 mm, 6 pc", "5 mm hex L-key", "none"),
    ],
)
def test_a_range_in_the_description_names_the_members(description: str, need: str, status: str) -> None:
    assert judge(read(need), read_item(description, "tool")).status == status


@pytest.mark.parametrize(
    ("need", "status"),
    [
        ("3/16 T-handle hex key", "match"),
        ("3/16 hex L-key", "none"),
        ("3/16 hex key", "review"),
        ("5/16 T-handle hex key", "none"),
    ],
)
def test_a_set_of_t_handle_keys_has_no_l_keys(need: str, status: str) -> None:
    keys = read_item("HEX KEY SET, T-HANDLE, SAE", "tool", "3/32; 1/8; 5/32; 3/16; 1/4")
    assert judge(read(need), keys).status == status


@pytest.mark.parametrize(
    ("need", "item", "status"),
    [
        ("8 mm or 10 mm socket", "10mm socket 3/8 dr", "match"),
        ("8 mm or 10 mm socket", "12mm socket 3/8 dr", "none"),
        ("8 mm nut driver or 8 mm socket", "SKT 1/4DR 8MM", "match"),
        ("two 10 mm sockets", "SKT 1/4DR 10MM", "match"),
        ("10mm combintaion spaner", "combination spanner 10 mm", "match"),  # typing errors
        ("internall circlip pliers", "external circlip pliers", "none"),
    ],
)
def test_alternatives_quantities_and_typing_errors(need: str, item: str, status: str) -> None:
    assert judge(read(need), read_item(item, "tool")).status == status


@pytest.mark.parametrize(
    ("never", "item", "expected"),
    [
        ("brake parts cleaner", "BRAKE CLNR NON-CHLOR 500ML", True),
        ("brake parts cleaner", "THROTTLE BODY CLEANER 400ML", False),
        ("chlorinated brake cleaner", "brake cleaner 500 ml", True),  # in doubt it is meant
        ("acetoxy silicone", "anaerobic flange sealant", False),
    ],
)
def test_a_never_line_forbids_what_it_means_and_what_it_may_mean(never: str, item: str, expected: bool) -> None:
    assert forbidden(read(never), read_item(item, "consumable")) is expected


def test_the_traits_and_hazards_columns_say_more_of_an_item() -> None:
    item = read_item("THREADLOCKER 10ML", "consumable", traits="medium strength; blue", hazards="GHS07")
    assert judge(read("medium strength threadlocker"), item).status == "match"
    assert judge(read("high strength threadlocker"), item).status == "none"
    cleaner = read_item("brake cleaner 500 ml", "consumable", hazards="GHS02;GHS07")
    assert judge(read("non-flammable brake cleaner"), cleaner).status == "none"


@pytest.mark.parametrize(
    ("need", "status"),
    [
        ("PH3 screwdriver", "none"),
        ("PH3 bit, 1/4 hex shank", "none"),
        ("PH3 bit, 5/16 hex shank", "review"),  # the usual shank, but the list does not say so
        ("PH3 bit", "match"),
    ],
)
def test_what_a_hand_impact_driver_comes_with_are_bits_for_it(need: str, status: str) -> None:
    driver = read_item("IMPACT DRV 1/2DR HAND C/W BITS", "tool", contents="PH2;PH3;flat 8 mm")
    assert judge(read(need), driver).status == status


def test_a_bare_tip_in_a_kit_of_mixed_things_may_be_a_bit_or_a_screwdriver() -> None:
    kit = read_item("trim repair kit", "tool", contents="PH2;hook pick")
    assert judge(read("PH2 screwdriver"), kit).status != "match"


LISTED = [
    ("10 mm socket", "SOCKET SET 1/4DR 8, 10, 12, 13 MM", "match"),
    ("11 mm socket", "SOCKET SET 1/4DR 8, 10, 12, 13 MM", "none"),
    ("10 mm socket, 3/8 drive", "SOCKET SET 1/4DR 8, 10, 12, 13 MM", "none"),
    ("19 mm combination spanner", "SPANNER SET COMB 8 10 12 13 14 16 17 18 19 22", "match"),
    ("15 mm combination spanner", "SPANNER SET COMB 8 10 12 13 14 16 17 18 19 22", "none"),
    ("3/8 socket", "SKT SET 1/4DR 3/16 1/4 5/16 3/8 IN", "match"),
    ("10 mm socket", "SKT SET 1/4DR 3/16 1/4 5/16 3/8 IN", "none"),
    ("5 mm hex key", "HEX KEY SET 1.5 2 2.5 3 4 5 6", "match"),
    ("12 mm socket", "SOCKET SET 3/8DR 10 12 14 17 (12 missing)", "none"),
    ("14 mm socket", "SOCKET SET 3/8DR 10 12 14 17 (12 missing)", "match"),
]


@pytest.mark.parametrize(("need", "item", "status"), LISTED, ids=[f"{need} | {item}" for need, item, _ in LISTED])
def test_a_description_may_name_each_size_of_a_set(need: str, item: str, status: str) -> None:
    held = read_item(item, "tool")
    assert judge(read(need), held).status == status
    assert held.unread == ()
    assert status == "none" or query_terms(read(need)) & index_terms(held)
