"""Typing slips in common words are mended before anything is read; words of their own stay.

Common practice, no source.
"""

from __future__ import annotations

import pytest

from cribkit.domain.wording import read, read_item
from cribkit.domain.wording.slips import slips, whole
from tests.wording.test_groups import status


@pytest.mark.parametrize(
    ("slip", "meant"),
    [
        ("eighhts", "eighths"),
        ("quartr", "quarter"),
        ("plies", "pliers"),
        ("degere", "degree"),
        ("drvier", "driver"),
        ("spnner", "spanner"),
        ("exhuast", "exhaust"),
        ("socekts", "sockets"),
    ],
)
def test_one_slip_is_mended(slip: str, meant: str) -> None:
    assert whole(slip) == meant


@pytest.mark.parametrize(
    "word",
    ["pulled", "cracked", "torqued", "adapted", "diver", "making", "eighth", "taper", "tamper", "seating", "cured"],
)
def test_a_word_of_its_own_stays(word: str) -> None:
    assert whole(word) == word


@pytest.mark.parametrize(
    ("need", "item", "kind"),
    [
        ("E12 socket, three-eighhts drive", "skt, ext six-lobe, E12, 3/8 dr", "tool"),
        ("7mm quaretr-drive socket", "7 mm socket 1/4dr", "tool"),
        ("straight long nose plies, 8 inch", "LONG NOSE PLIERS 200MM STRAIGHT", "tool"),
        ("half-inch female down to three-eihgths male", "ADPTR 1/2 F - 3/8 M", "tool"),
        ("diesel exhuast fluid", "Diesel exhaust fluid, 10 L", "consumable"),
        ("Circlip plirs, internal, straight tips, 19 to 60 mm", "circlip plr int str 19-60mm", "tool"),
    ],
)
def test_a_need_with_a_slip_finds_its_thing(need: str, item: str, kind: str) -> None:
    assert status(read(need, kind), read_item(item, kind)) == "match"


@pytest.mark.parametrize(
    "step",
    [
        "Refit sump with new gasket - Wren van 2.0 diesel",
        "Disconnect pipe from calliper hose with 11 mm flare nut spanner",
        "Step 2: isolate pack, then undo busbar nuts with insulated 10 mm socket, 3/8 drive",
    ],
)
def test_capitals_throughout_change_nothing(step: str) -> None:
    one, other = read(step), read(step.upper())
    assert (one.family, one.attributes, one.traits, one.unread) == (
        other.family,
        other.attributes,
        other.traits,
        other.unread,
    )


def test_a_reading_tells_which_slips_it_mended() -> None:
    assert slips("8 mm deep socket, quartr drive") == {"quartr": "quarter"}
    assert slips("8 mm deep socket, 1/4 drive") == {}
