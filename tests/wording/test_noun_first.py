"""Lines that begin with the noun and end with the kind, and everyday names that leave something open.

Each pair was once a wrong match, or a right one that was missed. The verdicts are common practice, no source.
"""

from tests.wording.pairs import over, verdict_on

# The size stands between the noun and the word that says which kind it is.
BETWEEN = [
    ("spring washer M8", "WASHER M8 SPRING", "match"),
    ("spring washer M8", "WASHER M10 SPRING", "none"),
    ("split pin 3.2 x 40", "PIN 3.2X40 SPLIT", "match"),
    ("split pin 3.2 x 40", "PIN 3.2X40 ROLL", "none"),
    ("hose clip 20-32 mm", "CLIP 20-32 HOSE", "match"),
    ("sump plug M14x1.5", "PLUG M14X1.5 SUMP", "match"),
    ("cable tie 200 x 4.8", "TIE 200X4.8 CABLE", "match"),
    ("P-clip 10 mm", "CLIP 10MM P", "match"),
    ("strap wrench 150", "WRENCH 150 STRAP", "match"),
    ("half round file 200", "FILE 200 HALF ROUND", "match"),
    ("round file", "FILE 200 HALF ROUND", "none"),
    ("axle stand 3 t", "STAND 3T AXLE", "match"),
    ("glow plug for the Heron 3.0", "PLUG GLOW HERON FLATBED 3.0", "match"),
    ("13 mm socket 1/2", "SOCKET 13 HALF INCH DRIVE", "match"),
    ("ten half drive socket", "SOCKET 10MM 1/2DR", "match"),
    ("ten half drive socket", "SOCKET 5MM 1/2DR", "none"),
    ("bit set, 1/4 hex shank", "SET BIT 1/4HEX 25MM 8PC", "match"),
    ("bit set, 5/16 hex shank", "SET BIT 1/4HEX 25MM 8PC", "none"),
]

# In doubt a person looks.
OPEN = [
    ("axle stands 3 t each", "axle stands, pair, 3 t", "review"),
    ("axle stands 3 t each", "axle stands, pair, 3 t each", "match"),
    ("PH2 screwdriver", "screwdriver crosshead no 2", "review"),
    ("PH2 screwdriver", "crosshead screwdriver PH2", "match"),
    ("crosshead no 2 screwdriver", "screwdriver PH2 x 100", "match"),
    ("setscrew M8 x 20", "GRUB SCREW M8X20", "review"),
    ("grub screw M6 x 10", "SET SCREW M6X10", "review"),
    ("set screw, M5 x 8, cup point", "M5 x 8 grub screw, cup point", "match"),
    ("anti-seize for the oxygen sensor", "copper grease", "review"),
    ("anti-seize for the oxygen sensor", "nickel anti-seize, oxygen sensor safe", "match"),
    ("copper anti-seize, O2 sensor threads", "copper grease", "match"),
    ("sump plug M14", "drain plug M14x1.5", "review"),
    ("bolt M10 x 30", "bolt M10x1.25x30", "none"),
]

# What a hand adds, and how it cuts words.
ADDED = [
    ("test lamp 12/24 volt", "test lamp 12/24V", "match"),
    ("triple square M10 half inch", "XZN M10 BIT SKT 1/2DR", "match"),
    ("triple square M10 half inch", "XZN M10 BIT SKT 3/8DR", "none"),
    (
        "electronic torque wrench 1/2dr up to 300 Nm, from 20",
        "torque wrench, electronic, 17-340 N·m, 1/2dr",
        "match",
    ),
    (
        "electronic torque wrench 1/2dr up to 300 Nm, from 20",
        "torque wrench, electronic, 40-340 N·m, 1/2dr",
        "none",
    ),
    ("32mm combination spanner", "32mm combination spanner, big one", "match"),
    ("left hand drill 8mm", "LH drill 8 mm (stud removal)", "match"),
    ("square bit no 3", "square recess bit no. 3, 1/4 hex", "match"),
    ("square bit no 3", "square recess bit no. 2, 1/4 hex", "none"),
    ("pick and hook set", "pck & hook set 4pc", "match"),
    ("power steering fluid, synthetic", "pwr strng fld 1L", "review"),
    ("threadlock activator", "threadlocker activator spray 150 ml", "match"),
    ("gear oil 75W-90 GL-5 (rear axle, 1.6 L)", "OIL GEAR 75W-90 GL-5 1L", "match"),
    ("pee zed two screwdriver", "SCREWDRIVER PZ2X100MM", "match"),
]


# The label tells of a fault: the condition column says whether it may be used, and a person looks.
UNFIT = [
    ("17 mm socket 1/2", "SOCKET 17MM 1/2DR (CRACKED)", "review"),
    ("17 mm socket 1/2", "SOCKET 17MM 1/2DR, cracked", "review"),
    ("17 mm socket 1/2", "SOCKET 17MM 1/2DR (welded)", "review"),
    ("13 mm combination spanner", "COMB SPNR 13MM (damaged)", "review"),
    ("30 mm cold chisel", "COLD CHISEL 30MM (chipped)", "review"),
    ("axle stand 3 t", "AXLE STAND 3T - faulty", "review"),
]


@over(UNFIT)
def test_a_fault_that_the_label_tells_is_not_read_over(need: str, item: str, verdict: str) -> None:
    assert verdict_on(need, item) == verdict


@over(ADDED)
def test_what_a_hand_adds_says_nothing_of_the_thing(need: str, item: str, verdict: str) -> None:
    assert verdict_on(need, item) == verdict


@over(BETWEEN)
def test_the_kind_may_stand_behind_the_size(need: str, item: str, verdict: str) -> None:
    assert verdict_on(need, item) == verdict


@over(OPEN)
def test_a_name_that_leaves_the_kind_open_is_confirmed(need: str, item: str, verdict: str) -> None:
    assert verdict_on(need, item) == verdict
