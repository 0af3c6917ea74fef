"""A second figure on a label says the same in another unit, or tells another measure, or contradicts the first.

Each pair was once a wrong match, or a right one that was missed. The verdicts are common practice, no source.
"""

from tests.wording.pairs import over, verdict_on

# Scales in two units: their ends are round figures, so they agree roughly, but never by a factor of twelve.
SCALES = [
    ("torque wrench covering 20 N·m, 3/8 drive", "TW 3/8 5-25 NM (44-221 IN-LB)", "match"),
    ("torque wrench covering 20 N·m, 3/8 drive", "TW 3/8 5-25 NM (44-221 FT-LB)", "review"),
    ("torque wrench covering 20 N·m, 3/8 drive", "TW 3/8 10-50 NM / 7-37 FT-LB", "match"),
    ("torque wrench covering 20 N·m, 3/8 drive", "TW 3/8 10-50 NM / 7-37 IN-LB", "review"),
    ("torque wrench covering 100 N·m", "torque wrench 40-200 Nm (30-150 ft-lb) 1/2", "match"),
    ("torque wrench covering 100 N·m", "torque wrench 40-200 Nm (30-250 ft-lb) 1/2", "review"),
]

# The length of a socket or shaft is no second size, and a size that is neither is a doubt.
LENGTHS = [
    ("8 mm nut driver", "Nut driver, 8 mm x 125 mm", "match"),
    ("8 mm nut driver, 125 mm shaft", "Nut driver, 8 mm x 75 mm", "none"),
    ("19 mm impact socket 1/2", "impact socket 19 mm 1/2 dr 6 pt, 80 mm", "match"),
    ("16 mm spark plug socket", "spark plug socket 16 mm 3/8 dr 6 pt 100 mm", "match"),
    ("19 mm impact socket 1/2", "impact socket 19 mm 1/2 dr 6 pt, 22.5 mm", "review"),
    ("27 mm oil filter socket, 6 point", "oil filter socket 27 mm 6 pt 3/8dr", "match"),
    ("27 mm oil filter socket, 6 point", "oil filter socket 27 mm 12 pt 3/8dr", "none"),
]

# A clamp is named by the size in the middle of its range; the width is that of its band.
CLAMPS = [
    ("T-bolt clamp, 3 in", "T-BOLT CLAMP 3 IN (2.97-3.28)", "match"),
    ("T-bolt clamp, 3 in", "T-BOLT CLAMP 3 IN (3.27-3.58)", "review"),
    ("hose clamp 16-27 mm, 12 mm band", "hose clamp 16-27 mm, wide band 12 mm", "match"),
    ("hose clamp 16-27 mm, 12 mm band", "hose clamp 16-27 mm, band 9 mm", "none"),
    ("spring band clip 22 mm", "HOSE CLIP SPRING BAND 22MM", "match"),
]


@over(SCALES)
def test_a_second_scale_is_held_against_the_first(need: str, item: str, verdict: str) -> None:
    assert verdict_on(need, item) == verdict


@over(LENGTHS)
def test_a_second_measure_of_a_socket_is_its_length_or_a_doubt(need: str, item: str, verdict: str) -> None:
    assert verdict_on(need, item) == verdict


@over(CLAMPS)
def test_a_clamp_has_a_range_and_a_width(need: str, item: str, verdict: str) -> None:
    assert verdict_on(need, item) == verdict
