"""Words that nobody knows: passed over where they cannot matter, a doubt where they could. Common practice."""

import pytest

from cribkit.domain.wording import read
from tests.wording.pairs import over, verdict_on

PAIRS = [
    # context, on either side
    ("14 mm socket for the quillon bolts, 3/8 drive", "SKT 3/8DR 14MM", "match"),
    ("14 mm socket, 3/8 drive (quillon)", "SKT 3/8DR 14MM", "match"),
    ("14 mm socket, 3/8 drive", "SKT 3/8DR 14MM QUILLON", "match"),
    ("14 mm socket, 3/8 drive", "socket, 14 mm, quillon, 3/8 drive", "match"),
    ("13 mm spanner to counterhold the quillon nut", "COMB SPNR 13MM", "match"),
    ("10 mm socket for the 12 V battery clamp, 1/4 dr", "SKT 1/4DR 10MM", "match"),
    ("M8x25 bolt for the quillon", "bolt M8x25", "match"),
    # before the name it may be part of it
    ("quillon socket 14 mm 3/8 drive", "SKT 3/8DR 14MM", "review"),
    # it may be short for something that counts
    ("10 mm socket 3/8 drive", "SKT 3/8DR 10MM SWVLG", "review"),
    ("10 mm socket 3/8 drive", "SKT 3/8DR 10MM XQZ", "review"),
    ("10 mm socket 3/8 drive", "SKT 3/8DR 10MM QX7", "review"),
    # nothing else tells the thing
    ("ratchet for the quillon", "RATCHET 3/8DR", "review"),
    # open-ended families
    ("grease, quillon", "general purpose grease", "review"),
    ("brake cleaner quillon", "brake cleaner", "review"),
    # a difference stays a difference
    ("14 mm socket for the quillon bolts, 3/8 drive", "SKT 3/8DR 13MM QUILLON", "none"),
    ("14 mm deep socket for the quillon bolts", "SKT 3/8DR 14MM QUILLON", "none"),
    ("cordless impact wrench 1/2", "1/2 AIR IMPACT WRENCH", "none"),
    ("torque wrench 70-340 N·m", "TQ WR 50-250 LB-FT 1/2DR", "none"),
    ("extension 75 mm, 3/8 drive", "wobble extension 3/8 dr 75 mm", "review"),
    ("T30 bit socket 3/8, external", "SKT BIT T30 3/8DR", "none"),
    ("thermostat, Wren", "thermostat housing, Wren, plastic", "none"),
]


@over(PAIRS)
def test_an_unknown_word_counts_where_it_could_matter(need: str, item: str, verdict: str) -> None:
    assert verdict_on(need, item) == verdict


DAMAGED = [
    ("1O mm S0CKET, l/4 DR, DEEP", "10 mm socket, 1/4 drive, deep"),
    ("2l mm 1/2dr 6 pt skt", "21 mm socket 1/2 drive 6 point"),
    ("Open-ended spanner l2 x l3 mm", "open ended spanner 12 x 13 mm"),
    ("18 mm socket, six piont, 1/2 sq drive", "18 mm socket, six point, 1/2 drive"),
    ("SKT BIT HEX 5MM l/4DR", "5 mm hex bit socket 1/4 drive"),
    ("socket 5/l6 1/4-lnch drive", "socket 5/16 in 1/4 inch drive"),
    ("T25 IP bit", "IP25 bit"),
    ("SKT 10MM 1l2DR", "10 mm socket 1/2 drive"),
    ("PZ2 screwdriver x 100 mm", "PZ2 screwdriver 100 mm"),
]


@pytest.mark.parametrize(("damaged", "whole"), DAMAGED, ids=[pair[0] for pair in DAMAGED])
def test_a_damaged_text_means_what_the_whole_one_does(damaged: str, whole: str) -> None:
    found, meant = read(damaged), read(whole)
    assert (found.family, found.attributes, found.unread) == (meant.family, meant.attributes, ())


@pytest.mark.parametrize(("text", "low", "high"), [("25-250 lb-ft", 33.895, 338.954), ("25-250 lb-in", 2.825, 28.246)])
def test_pound_feet_are_never_pound_inches(text: str, low: float, high: float) -> None:
    # NIST SP 811: 1 lbf.ft = 1.355818 N.m, 1 lbf.in = 0.1129848 N.m
    assert dict(read(f"torque wrench {text}").attributes)["range"] == f"{low} - {high} N·m"
