"""What frames a request or a stock line says nothing of the thing; what it demands in any frame is never passed over.

The frames are our own, of what is said at a counter and noted on a stock list. All values are invented.
"""

from __future__ import annotations

import pytest

from cribkit.domain.wording import read, read_item
from tests.wording.test_groups import status

# Kind, the thing asked for, the line of the stock list.
THINGS = [
    ("tool", "10 mm deep socket 3/8 drive", "SKT 3/8DR 10MM DEEP 6PT"),
    ("tool", "13 mm combination spanner", "COMB SPNR 13MM"),
    ("tool", "T30 bit socket 1/4 drive", "BIT SKT T30 1/4DR"),
    ("tool", "PH2 screwdriver 100 mm", "SCREWDRIVER PH2 X 100"),
    ("tool", "torque wrench 1/2 drive 40-200 Nm", "TORQUE WRENCH CLICK 1/2 40-200NM"),
    ("tool", "internal circlip pliers straight", "CIRCLIP PLIERS INT STRAIGHT"),
    ("consumable", "copper washer 14 x 20 x 1.5", "WASHER CU 14X20X1.5"),
    ("consumable", "brake cleaner non-chlorinated", "BRAKE CLEANER NON-CHLORINATED 500ML"),
    ("consumable", "M8 x 30 bolt 8.8", "BOLT HEX M8X30 8.8"),
    ("consumable", "medium strength threadlocker", "THREADLOCKER MEDIUM 50ML"),
]
REQUESTS = """\
could I have a {t} please
can I get a {t}
can you pass me the {t}
I need a {t}
need: {t}
1 x {t}
1x {t}
{t} - 1 off
{t}, qty 1
{t} (1)
one {t}
a {t}
the {t}
any {t}?
do we have a {t}
have we got a {t}?
is there a {t} in the crib
where is the {t}
who's got the {t}
looking for a {t}
I'm after a {t}
after a {t}
{t} please
{t}, please mate
{t} asap
{t} urgent
urgent: {t}
{t} for the Wren van
{t} for Tern minibus job
{t} for job 4471
job 4471: {t}
{t} (bay 3)
{t} for bay 2
{t} for tomorrow
{t} for this afternoon
{t} for the apprentice
{t} required
{t} needed
required: {t}
tool required: {t}
special tool: {t}
tools: {t}
use a {t}
using a {t}
with a {t}
you will need a {t}
you'll need a {t}
requires a {t}
step 4: {t}
4. {t}
- {t}
* {t}
• {t}
a) {t}
{t};
{t}.
"{t}"
({t})
please book out a {t}
book out {t}
issue {t}
sign out a {t}
check out one {t}
lend me a {t}
borrow a {t}
can I borrow the {t} for ten minutes
grab me a {t}
grab a {t}
fetch the {t}
get me a {t} from the crib
hi, do you have a {t}?
morning, {t} please
sorry to bother you, got a {t}?
got a {t} handy
got a spare {t}
spare {t}
another {t}
new {t}
a decent {t}
good {t}
a clean {t}
the usual {t}
ordinary {t}
our {t}
shop {t}
workshop {t}
{t} from the crib
{t} from the tool store
{t}, if there is one
{t} if you have one
{t} if possible
{t} or nothing
just a {t}
only the {t}
nothing but a {t}
it's a {t} I need
what I need is a {t}
we're short of a {t}
we've run out of {t}
I've lost the {t}
someone has taken the {t}
the {t} is missing from my box
mine's broken, need a {t}
replacement {t}
to do the job I need a {t}
for the sump I need a {t}
for the throttle body: {t}
throttle body service - {t}
{t} - inlet manifold
{t} (inlet manifold)
{t} as per procedure
{t} per step 6
{t} see note
{t} (see caution)
{t} - to be returned today
{t} to be returned by five
{t} for apprentice
{t} for the night shift
{t} on loan
qty 1 {t}
qty: 1, {t}
1 no. {t}
1 off {t}
1 ea {t}
1ea {t}
{t} 1ea
{t} ea
{t} each
1 pc {t}
item: {t}
description: {t}
part: {t}
tool no. 3: {t}
3) {t}
wanted {t}
wanted - {t}
pls issue {t}
pls {t}
plz can i have {t}
gimme a {t}
give us a {t}
pass us the {t}
chuck me that {t}
could do with a {t}
I could use a {t}
we need one {t} for the Heron
might need a {t}
probably a {t}
should be a {t}
must be a {t}
has to be a {t}
preferably a {t}
ideally a {t}
I think it's a {t}
it wants a {t}
it takes a {t}
takes a {t}
this one needs a {t}
the manual says a {t}
manual calls for {t}
book says {t}
spec says {t}
as listed: {t}
listed as {t}
{t} (as listed)
{t} or equivalent
{t} or similar
{t} approx
{t} (any make)
{t}, any make
{t} any brand
{t}, any colour
{t}, whichever is nearest
{t} in good condition
{t} in date
{t} not too worn
{t} (clean)
""".splitlines()
NOTED = """\
{t}
{t}.
{t} (2)
{t} qty 3
{t} QTY:3
{t} 2 off
{t} - 2 off
{t} - spare
{t} (spare)
{t} NEW
{t} (new)
{t} new 2024
{t} (old)
{t} old stock
{t} good
{t} good cond
{t} fair
{t} - worn but ok
{t} (worn)
{t} marked W
{t} marked with paint
{t} yellow paint
{t} red tape
{t} (blue tape on handle)
{t} chrome
{t} cr-v
{t} CRV
{t} CrV steel
{t} chrome vanadium
{t} satin finish
{t} black finish
{t} polished
{t} boxed
{t} in box
{t} in case
{t} in pouch
{t} in tray
{t} loose
{t} on rail
{t} w/ rail
{t} (trolley 2)
{t} trolley 3
{t} Drawer 4
{t} BIN B3
{t} bin 12
{t} shelf 2
{t} - shelf B3-04
{t} [B3-04]
{t} S/N 00123
{t} SN 4471
{t} s/no 4471-2
{t} asset 0042
{t} asset no. 42
{t} tool no 17
{t} T-1004
{t} (T-1004)
17. {t}
{t} - Wren van
{t} (Wren)
{t} (Wren van)
{t} for Tern
{t} (Tern + Heron)
{t} - do not remove from shop
{t} (return to crib)
{t} (signed out to bay 2)
{t} bought 2025
{t} purchased 03/2025
{t} inv. 2025
{t} checked ok
{t} counted 3
{t} min 2
{t} min 2 max 5
{t} reorder at 2
{t} EA
{t} each
{t} pcs
{t} PK10
{t} pack of 10
{t} 10/box
{t} BX 100
{t} box of 100
{t} tub of 50
{t} 1 pc
{t}, invented
{t} (invented value)
{t} - DEMO
{t} demo item
{t} professional
{t} pro
{t} heavy duty
{t} HD
{t} trade quality
{t} ISO
{t} DIN
{t} DIN 3120
{t} ISO 2725
{t} quality tool
{t} imported
{t} generic
{t} unbranded
{t} no brand
{t} own brand
{t} see photo
{t} ref 1123
{t} item 1123
ITEM 1123 {t}
{t} code 88-12
{t} cat no 5512
{t} p/n none
STOCK: {t}
TOOL: {t}
{t} ***
*** {t}
{t} !!
{t} ??
{t} ok
{t} serviceable
{t} slight rust
{t} rusty
{t} left-over
{t} ex set
{t} from set
{t} single item
""".splitlines()

# Of so many of a hundred the frame says nothing; the rest go to a person.
AS_GOOD_AS_ALL = 98


def test_a_request_is_read_in_whatever_frame_it_stands() -> None:
    outcomes = [
        status(read(frame.replace("{t}", asked), kind), read_item(line, kind))
        for frame in REQUESTS
        for kind, asked, line in THINGS
    ]
    assert 100 * outcomes.count("match") >= AS_GOOD_AS_ALL * len(outcomes)


def test_a_stock_line_is_read_with_whatever_is_noted_beside_it() -> None:
    outcomes = [
        status(read(asked, kind), read_item(frame.replace("{t}", line), kind))
        for frame in NOTED
        for kind, asked, line in THINGS
    ]
    assert 100 * outcomes.count("match") >= AS_GOOD_AS_ALL * len(outcomes)


# Ways to demand something more of a thing.
DEMANDED = """\
{d} {t}
{t} {d}
{t}, {d}
{t} ({d})
{t}, must be {d}
{t} that is {d}
{t} - {d} type
{d} type {t}
{t}, {d} one
I need a {d} {t} please
{t}, the {d} sort
{t} and it has to be {d}
{t} with {d} feature
{t} w/ {d}
{d}-{t}
{t} but {d}
""".splitlines()
# What a plain line does not say it has.
MORE = [
    (
        "tool",
        "10 mm deep socket 3/8 drive",
        "SKT 3/8DR 10MM DEEP",
        "insulated magnetic impact swivel thin-wall left-hand tamper 12-point 6-point square-head "
        "non-sparking stainless extra-deep coated hollow through-hole 8-point",
    ),
    (
        "tool",
        "13 mm combination spanner",
        "COMB SPNR 13MM",
        "insulated ratcheting stubby flexible-head non-sparking reversible left-hand magnetic slim reverse "
        "12-point 6-point angled",
    ),
    (
        "tool",
        "T30 bit socket 1/4 drive",
        "BIT SKT T30 1/4DR",
        "tamper long impact insulated magnetic ball-end stubby swivel 5-lobe left-hand extra-long",
    ),
    (
        "tool",
        "PH2 screwdriver 100 mm",
        "SCREWDRIVER PH2 X 100",
        "insulated magnetic ratcheting stubby impact through-tang hexagon-bolster offset flexible "
        "non-sparking demagnetised",
    ),
    (
        "tool",
        "torque wrench 1/2 drive 40-200 Nm",
        "TORQUE WRENCH CLICK 1/2 40-200NM",
        "insulated digital dial beam preset left-hand angle flexible-head electronic two-way",
    ),
    (
        "tool",
        "extension 3/8 drive 150 mm",
        "EXT 3/8DR 6IN",
        "wobble locking insulated impact flexible magnetic telescopic quick-release",
    ),
    (
        "tool",
        "ratchet 3/8 drive",
        "RATCHET 3/8DR",
        "insulated flexible-head stubby long locking quick-release swivel air cordless 72-tooth fine-tooth",
    ),
    (
        "tool",
        "needle nose pliers 200 mm",
        "LONG NOSE PLIERS 200MM",
        "insulated bent stainless locking non-serrated smooth-jaw antistatic spring-loaded",
    ),
    ("tool", "5 mm hex key", "KEY HEX 5MM", "ball-end long T-handle tamper stainless insulated stubby folding"),
    (
        "consumable",
        "brake cleaner",
        "BRAKE CLEANER 500ML",
        "non-chlorinated plastic-safe residue-free non-flammable rubber-safe food-safe chlorinated acetone-free",
    ),
    (
        "consumable",
        "M8 x 30 bolt 8.8",
        "BOLT HEX M8X30 8.8",
        "flanged stainless left-hand zinc fully-threaded drilled-head countersunk button-head black "
        "self-locking fine hollow shouldered partially-threaded",
    ),
    ("consumable", "copper washer 14 x 20 x 1.5", "WASHER CU 14X20X1.5", "crush folded bonded serrated"),
    (
        "consumable",
        "medium strength threadlocker",
        "THREADLOCKER MEDIUM 50ML",
        "oil-tolerant high-temperature wicking fast-curing non-staining stick plastic-safe",
    ),
    (
        "consumable",
        "nitrile gloves large",
        "GLOVES NITRILE L",
        "powder-free insulated long-cuff sterile chemical-resistant cut-resistant black textured antistatic",
    ),
    ("consumable", "engine oil 5W-30 C3", "OIL 5W30 C3 5L", "fully-synthetic mineral semi-synthetic"),
    ("consumable", "hose clip 16-27 mm", "HOSE CLIP 16-27", "stainless spring constant-tension W4 double-wire lined"),
    (
        "consumable",
        "cable ties 200 x 4.8",
        "CABLE TIE 200X4.8",
        "UV-resistant stainless releasable black heat-resistant metal-detectable double-headed",
    ),
    ("tool", "trolley jack 2 t", "TROLLEY JACK 2T", "low-profile aluminium long-reach high-lift air"),
    ("tool", "8 mm drill", "DRILL 8MM HSS", "left-hand cobalt long stub masonry carbide reduced-shank spot"),
]


@pytest.mark.parametrize(("kind", "asked", "line", "demands"), MORE, ids=[asked for _, asked, _, _ in MORE])
def test_a_demand_is_never_passed_over(kind: str, asked: str, line: str, demands: str) -> None:
    item = read_item(line, kind)
    assert status(read(asked, kind), item) == "match"
    passed_over = [
        need
        for demand in demands.split()
        for said in (demand, demand.replace("-", " "))
        for frame in DEMANDED
        for need in [frame.replace("{t}", asked).replace("{d}", said)]
        if status(read(need, kind), item) == "match"
    ]
    assert passed_over == []
