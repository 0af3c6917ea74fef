"""Reading a description: one table of texts in the trade's notations and what each must be read as."""

import pytest

from cribkit.domain.wording import Meaning, read

# Item names in noun-first order follow the federal supply catalogue's approved names (from memory).
READINGS = [
    ("SKT 1/4DR 8MM 6PT", "socket", {"size": "8 mm", "drive": "1/4", "points": "6"}),
    ("ten mil deep socket three eighths drive", "socket", {"size": "10 mm", "drive": "3/8", "depth": "deep"}),
    ("10 3/8 dr socket", "socket", {"size": "10 mm", "drive": "3/8"}),
    ("3/8 dr 3/8 socket", "socket", {"size": "3/8 in", "drive": "3/8"}),
    ("3l8 drive 1O mm socket", "socket", {"size": "10 mm", "drive": "3/8"}),
    # Scanning errors of TM 9-2320-269-20-1 p. 2-702: 318-inch is 3/8 inch, 1 118-inch is 1-1/8 inch
    ("7/16-inch socket with 318-inch drive", "socket", {"size": "7/16 in", "drive": "3/8"}),
    ("1 118-inch socket", "socket", {"size": "1-1/8 in"}),
    ("SOCKET, SOCKET WRENCH 3/8 IN SQ DR, 10MM, 12 PT", "socket", {"size": "10 mm", "drive": "3/8", "points": "12"}),
    ("socket 17mm, 12.5 mm square drive", "socket", {"size": "17 mm", "drive": "1/2"}),
    ("E10 skt", "lobe-socket", {"tip": "E10", "profile": "E"}),
    ("6mm allen socket 3/8 dr", "bit-socket", {"tip": "hex 6 mm", "profile": "hex", "drive": "3/8"}),
    ("T30 bit 1/4 hex", "bit", {"tip": "T30", "profile": "T", "shank": "1/4 in"}),
    ("KEY, SOCKET HEAD SCREW 5 mm", "key", {"tip": "hex 5 mm", "profile": "hex"}),
    ("WRENCH, BOX AND OPEN END, COMBINATION 13MM", "combination-wrench", {"size": "13 mm"}),
    ("10/11mm open ended spanner", "open-end-wrench", {"size": "10 mm x 11 mm"}),
    ("HANDLE, SOCKET WRENCH 1/2 DR RATCHET", "ratchet", {"drive": "1/2"}),
    ("1/4 dr extn 6 in wobble", "extension", {"drive": "1/4", "length": "6 in"}),
    ("3/8F x 1/2M adapter", "adapter", {"drive_in": "3/8", "drive_out": "1/2"}),
    ("flare nut crowfoot 17mm 3/8 dr", "flare-crowfoot", {"size": "17 mm", "drive": "3/8"}),
    ("torque wrench 5-25Nm 1/4 sq", "torque-wrench", {"range": "5 - 25 N·m", "drive": "1/4"}),
    ("PLIERS, RETAINING RING external", "circlip-pliers", {"side": "external"}),
    ("medium strength threadlocker 10ml", "threadlocker", {"strength": "medium", "pack": "10 ml"}),
    ("DOT 5.1 brake fluid 500ml", "brake-fluid", {"amount": "500 ml", "dot": "5.1"}),
    ("75W-90 GL-5", "gear-oil", {"viscosity": "75W-90", "gl": "5"}),
    ("copper crush washer 14x18", "sealing-washer", {"inner": "14 mm", "outer": "18 mm", "material": "copper"}),
    ("cotter pin 3.2 x 40", "cotter-pin", {"diameter": "3.2 mm", "length": "40 mm"}),
    ("cable ties 200 x 4.8", "cable-tie", {"length": "200 mm", "width": "4.8 mm"}),
    ("nitrile gloves L", "gloves", {"glove_size": "L", "glove_type": "disposable", "material": "nitrile"}),
]  # fmt: skip


@pytest.mark.parametrize(("text", "family", "attributes"), READINGS, ids=[text for text, _, _ in READINGS])
def test_a_description_is_read_whole(text: str, family: str, attributes: dict[str, str]) -> None:
    meaning = read(text)
    assert (meaning.family, dict(meaning.attributes), meaning.unread) == (family, attributes, ())


@pytest.mark.parametrize("text", [text for text, _, _ in READINGS])
def test_a_meaning_survives_the_store(text: str) -> None:
    assert Meaning.from_json(read(text).to_json()) == read(text)
