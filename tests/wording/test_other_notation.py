"""The same thing in another notation: numbers spelled out, decimals of an inch, commas for points.

Each pair was once missed, or a wrong match. The verdicts are common practice, no source.
"""

from tests.wording.pairs import over, verdict_on

SPELLED = [
    ("PH number two screwdriver", "SCDR PH2X100MM", "match"),
    ("PH number two screwdriver", "SCDR PZ2X100MM", "none"),
    ("PZ size three insert bit", "BIT PZ3 1/4HEX 25MM", "match"),
    ("external six-lobe socket no. 10, three-eighths square", "SKT EXT 6LOBE E10 3/8DR", "match"),
    ("external six-lobe socket no. 10, three-eighths square", "SKT EXT 6LOBE E12 3/8DR", "none"),
    ("L-shaped six-lobe key number forty", "KEY 6LOBE T40 L", "match"),
    ("twelve-point ten-mil socket, three-eighths square", "SKT 3/8DR 10MM 12PT", "match"),
    ("stubby flat-blade screwdriver, six and a half wide", "SCDR SLOT 6.5X38MM STUBBY", "match"),
    ("split pin, eighth of an inch by one and a half", "PIN COTTER 1/8X1-1/2IN", "match"),
    ("copper crush washer, bore 12, outside 16, thickness one and a half", "WSHR SEAL CU 12X16X1.5", "match"),
    ("rotary shaft seal, shaft 35, housing 52, width 7", "OIL SEAL 35X52X7", "match"),
    ("rotary shaft seal, shaft 35, housing 50, width 7", "OIL SEAL 35X52X7", "none"),
    ("jointing paper, four tenths of a millimetre", "GSKT PAPER SHT 0.4MM", "match"),
    ("torque screwdriver set to half a newton metre", "torque screwdriver, click, 1-6 N·m, 1/4 drive", "none"),
    ("bolt em eight by thirty", "BOLT M8X30", "match"),
    ("brake-line wrench, ten and eleven", "SPNR FLARE 10X11MM", "match"),
    ("snap-ring pliers for shafts 19 to 60, right-angle points", "PLR CIRC EXT 19-60MM 90DEG", "match"),
    ("snap-ring pliers for shafts 19 to 60, right-angle points", "PLR CIRC EXT 19-60MM STR", "none"),
]

DECIMALS = [
    ("0.75 in A/F socket, 12.5 mm square", "SKT 1/2DR 3/4IN 12PT", "match"),
    ("0.6875 in A/F socket, 10 mm square", "SKT 3/8DR 18MM", "none"),
    ("open-ended wrench, 0.5 and 0.5625 in", "SPNR OE 1/2X9/16IN", "match"),
    ("bit PZ2 0.25 in hex shank", "BIT 1/4HEX PZ2 50MM", "match"),
    ("M8 x 1.25 hex nut", "NUT HEX M8X1.25", "match"),
    ("blind rivet 4.8 x 12", "RIVET, BLIND, DIA 4,8, LG 12MM", "match"),
    ("cotter pin 3.2 x 40", "PIN, COTTER, DIA 3,2, 40 LG", "match"),
    ("lead-free solder 0.7 mm", "SOLDER PB-FREE DIA 0,7", "match"),
    ("crimping pliers for insulated terminals 1.5 to 6 mm2", "CRIMPER, PRE-INSUL TERM, 1,5-6 SQMM", "match"),
    ("#10-32 machine screw, half inch", "MACH SCR 10-32UNF X .500", "match"),
    ("outside micrometer 25-50 mm", "MIC EXT 25/50MM", "match"),
    ("screen wash -25 C", "WASHER FLUID, WINTER, MINUS 25 DEGC", "match"),
]


@over(SPELLED)
def test_numbers_are_read_as_they_are_spoken(need: str, item: str, verdict: str) -> None:
    assert verdict_on(need, item) == verdict


@over(DECIMALS)
def test_decimals_are_read_however_they_are_written(need: str, item: str, verdict: str) -> None:
    assert verdict_on(need, item) == verdict
