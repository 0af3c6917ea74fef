"""A number of a need always counts: another number in its place gives another meaning, or its reason is written here.

Over the needs of all labelled sets. A number that is read as nothing would let a wrong size match.
"""

from __future__ import annotations

import csv
import re
from pathlib import Path

from cribkit.domain.wording import Meaning, read

HERE = Path(__file__).parent
NUMBER = re.compile(r"\d+(?:[./]\d+)?")
OTHER = {"1/2": "3/8", "3/8": "1/2", "1/4": "3/8", "5/8": "7/16"}

# How many, how much is in a container, or said twice: what a match does not hang on.
HOW_MANY = re.compile(
    r"^[1-9] (?:off |new |copper |cable |litres of )|\((?:2|4)\)$|QTY 4|1 EA$|"
    r"\d ?(?:mL|L|qt|gal|gallon|g cartridge|oz cartridge)(?: bottle)?$|\d ?(?:mL|L|g|kg) of |"
    r"\ball [2-9] bolts|roll [2-9] ply|x ?[2-9]$|\d ea$|qty \d+$|\d ?pc$|\d (?:cans|bottles)$|^[1-9] ply |"
    r"\b[2-9] (?:mount )?bolts with |: \d off |\b[2-9][- ]ply$|"
    r"^[1-9]x |box (?:of )?\d+$|\d box$|paper roll, \d+ metres$|, \d{1,2} off$|, \d (?:tubes|sachets|if you have)$",
    re.IGNORECASE,
)
# The number of a step, and the torque that a fastener gets beside what turns it or what it is.
TORQUE = re.compile(r" ?(?:N·m|Nm|ft-lb|in-lb)")
STEP = re.compile(
    r"^\d{1,2}\. |^\d\) |^step \d(?::| -) |^Tighten .*?to \d+ Nm with an? .*(?:socket|crowfoot|nut)\b", re.IGNORECASE
)
CLASSED = re.compile(
    r"gloves,? (?:class 0+,? (?:1000|500) v|1000 v, class 0)|class 0 insulating gloves, 1000 v", re.IGNORECASE
)  # the class says it, EN 60903 (from memory)
# What insulated tools are made for, IEC 60900 (from memory).
INSULATED = re.compile(r"^insulated .* for 1000 volts", re.IGNORECASE)
ALLOWED = {
    "exhaust reagent, urea 32.5 per cent, ten litres": "the strength that it always has, ISO 22241 (from memory)",
    "19mm socket for the 3/4 bar (3/4 drive)": "said twice",
    "high strength red threadlock, fifty mil bottle (50 ml)": "said twice",
    "Insulated open-ended spanner, 10 mm, for the 48-volt terminal. Caution: remove rings and watches.": "the terminal",
    "Dial indicator with magnetic base; brake disc run-out, limit 0.05 mm": "what is measured, not what it shows",
    "Dial indicator with magnetic base, to check brake disc run-out (limit 0.05 mm)": "what is measured",
    "Cooling system pressure tester. Pump up to 15 psi and watch for two minutes.": "what is done with it",
    "Cooling system pressure tester; pump up to 1.2 bar with the engine cold": "what is done with it",
    "Adapter to drive 1/4-inch hexagon bits with a ratchet of 1/4-inch square drive": "one of two alike",
    "premixed 50 % pink OAT coolant, five litres": "ready mixed is ready mixed",
    "disposable nitrile gloves, size L, black, carton of 100": "how many",
    "two-ply blue paper wiping roll, 150 metres": "how much",
    "class 0 insulating gloves sz 10 1000V": "the class says it, EN 60903 (from memory)",
    "10off M8x25 8.8 set screws": "how many",
    "75W-90 GL-5 gear oil (rear axle, 1.6 L)": "how much goes in",
    "M8 flat washers 20": "how many",
    "- socket 13 mm, 1/2 in drive (1 off)": "how many",
    "T10 bits 1/4 hex, 2 of": "how many",
    "cooling system pressure tester (hold 1.4 bar, 5 min)": "what is done with it",
    "2 x 17mm thin wall impact skts 1/2": "how many",
    "EP2 grease cartridges 2x": "how many",
    "Penetrating oil for the exhaust manifold nuts; leave it for 15 minutes": "how long",
    "Engine oil 0W-20, fully synthetic, 3.8 L for the Wren van 1.6": "the engine; its grade is told",
    "Fuel pressure gauge up to 10 bar, for the rail (3.5 bar at idle)": "what it will show",
    "Digital multimeter, to measure the sensor supply (5 V) at the throttle body plug": "what it will show",
    "Silicone sealant, black, for the timing cover (bead 3 mm)": "the bead",
    "Adapter, 1/4-inch female to 3/8-inch male, so that the 3/8 sockets can be turned with the low-range "
    "torque wrench": "the same square again",
    "6.8 mm drill, tapping for M8": "the thread that is tapped; the drill is 6.8 mm",
    "pressure gauge adaptor, M10x1 female to 1/8 NPT male": "no gauge has such an end; none matches",
    "Brake fluid DOT 4, about 300 mL for bleeding the clutch": "how much goes in",
    "Cable ties, black, 200 x 4.8 mm, every 250 mm along the loom": "where they go",
    "Refrigerant R134a, 0.55 kg": "how much goes in",
    "Refrigerant R1234yf, 0.48 kg": "how much goes in",
    "E18 external star socket, half-inch drive, for the rear axle beam bolts; 90 N·m (66 ft-lb), then "
    "90 degrees": "how the bolts are tightened",
    "Click torque wrench, quarter-inch drive, 6 to 22 N·m (4.4 to 16 ft-lb)": "the same range in other units",
    "Dial torque wrench, half-inch drive, 15 to 100 N·m (11 to 74 ft-lb)": "the same range in other units",
    "Click torque wrench, 1/4 drive, 40 to 120 in-lb (4.5 to 13.5 N·m), for compressor clutch "
    "bolts": "the same range in other units",
    "Fit the 1/2 drive torque wrench with a 1/2 female to 3/4 male adaptor.": "what the adapter is put on",
    "tapping drill for M8 coarse, 6.8": "the thread that is tapped; the drill is 6.8 mm",
    "tapping drill for M8, 6.8 mm": "the thread that is tapped; the drill is 6.8 mm",
    "M12 bolt socket 18 mm AF, 1/2 dr": "the bolt; the socket is told by its size",
    "DEF / urea 32.5%": "the only strength there is, ISO 22241 (from memory)",
    "Top up the urea tank with 32.5 % urea solution.": "the only strength there is, ISO 22241 (from memory)",
    "Apply a 3 mm bead of black sensor-safe RTV to the sump flange.": "the bead",
    "3/8 drive torque wrench, 110-130 Nm (81-95 ft/lb)": "the same range in other units",
    "8-12 Nm (71.4-107.1 in/lb) torque wrench, 3/8 square": "the same range in other units",
    "pick set: hook, 90°, straight": "what the set holds",
    "insulating gloves class 2, 17 kV": "the class says it, EN 60903 (from memory)",
    "insulating rubber gloves, class 00, 500 V": "the class says it, EN 60903 (from memory)",
    "two inch by six foot eye and eye web sling rated 6000 lb": "one pound more in 6000 is rounded away",
    "Turn the head bolts a further 90 degrees with a 1/2 drive torque angle gauge.": "it measures any angle",
    "Apply a 3 mm bead of sensor-safe RTV to the sump flange": "the bead",
    "Run a 3 mm bead of black RTV silicone round the sump": "the bead",
    "Run a 3 mm bead of black RTV silicone on the sump": "the bead",
    "Discard the old bolts. Fit M10 x 30, 10.9, and tighten to 50 N·m plus 90 degrees": "how they are tightened",
    "Undo the subframe bolts (18 mm socket, 1/2 in drive), torque 90 N·m plus 90 degrees": "how they are tightened",
    "Lay a 3 mm bead of black RTV, sensor-safe": "the bead",
    "cable tie 200x4.8 mm, qty 3": "how many",
    "M8 x 25 bolts 8.8 x 12": "how many",
    "PZ2 screwdriver, 2 of": "how many",
    "cut gloves, size 9, 1 pair": "how many",
    "wheel nuts for Wren M12 x 1.5, set of 5": "how many",
    'x4 17mm impact sockets, 1/2" dr': "how many",
    "6.8 drill, tapping size for M8": "the thread that is tapped; the drill is 6.8 mm",
    "Left-hand drill bit, 6.8 mm, for broken M8 stud": "the stud; the drill is 6.8 mm",
    "drill, 6.8 mm, for M8 tapping hole": "the thread that is tapped; the drill is 6.8 mm",
    "Remove the 12 mm bolts with a 12 mm socket, 3/8 drive": "the bolt; the socket is told by its size",
    "Connect the cooling system pressure tester and pump to 1.5 bar.": "what is done, not what the tester reads to",
    "Lay a 3 mm bead of black sensor-safe RTV on the sump flange.": "the bead",
    "Tighten to 90 Nm with a click torque wrench, half inch drive, range 40 to 200 Nm": "it lies in the stated range",
    "Unscrew the plugs of the 1.2 petrol engine. Tool: 14 mm 12-point thin-wall magnetic spark plug socket, "
    "3/8 in. drive": "the engine",
    "Check disc run-out, dial test indicator with magnetic base, limit 0.05 mm": "what is measured, not what it shows",
    "Put on insulating gloves, class 0 (1000 V).": "the class says it, EN 60903 (from memory)",
    "Insulating gloves, class 00 (500 V)": "the class says it, EN 60903 (from memory)",
    "Lay a 3 mm bead of red high-temperature RTV on the manifold flange.": "the bead",
    "Spark plug socket, 21 mm (13/16 in.), 3/8 drive": "the size by its other name",
    "Wet the seized studs with penetrating oil and leave for 20 minutes.": "how long",
    "Torque angle gauge, 1/2 in. drive (stage 3: 90 degrees)": "it measures any angle",
    "transmission jack 1000 lb": "one pound more is rounded away",
    "transmission jack, 1000 LB": "one pound more is rounded away",
    "Run a 3 mm bead of black RTV silicone sealant round the sump flange.": "the bead",
    "class 00 electrician's gloves 500 V": "the class says it, EN 60903 (from memory)",
    "Turn a further 90 degrees using a torque angle gauge, half inch drive": "it measures any angle",
    "Tighten a further 90 degrees with an angle gauge, 1/2 drive": "an angle gauge measures any angle",
    "14mm plug socket for the 1.6 petrol": "the engine",
    "Spark plug socket, 18 mm, for the older 1.6 engine": "the engine",
    "Remove the plugs of the 1.2 engine with a magnetic thin-wall spark plug socket, 14 mm twelve-point, 3/8 drive; "
    "there is no room for the ordinary kind.": "the engine",
    "Step up from the 1/4 in. bar with a 1/4 F to 3/8 M adapter.": "the bar and the adapter say the same square",
    "Tools needed: digital multimeter, check 4.8-5.2 V at the plug": "what is measured",
}


def sense(meaning: Meaning) -> tuple[object, ...]:
    """What a match hangs on."""
    others = tuple(sense(other) for other in meaning.others)
    return (meaning.family, meaning.attributes, meaning.traits, meaning.unread, others)


def needs() -> list[tuple[str, str]]:
    """Every need of the labelled sets with its kind, once."""
    found: dict[str, str] = {}
    for path in sorted(HERE.glob("*/needs.csv")):
        with path.open(encoding="utf-8", newline="") as handle:
            found.update({row["need"]: row["kind"] for row in csv.DictReader(handle)})
    return list(found.items())


def idle_numbers(text: str, kind: str) -> list[str]:
    """The numbers of a text that could be others without a change of its meaning."""
    meant = sense(read(text, kind))
    if not meant[0]:
        return []
    idle: list[str] = []
    for found in NUMBER.finditer(text):
        if TORQUE.match(text, found.end()) and "torque" not in str(meant[0]):
            continue  # what the fastener gets, or the part that it holds
        if TORQUE.match(text, found.end()) and text[found.start() - 1 : found.start()] == "(":
            continue  # the same torque in other units, as near as figures are rounded
        told = found[0]
        other = OTHER.get(told, "5/8") if "/" in told else str(round(float(told) + 1, 3)).removesuffix(".0")
        if sense(read(text[: found.start()] + other + text[found.end() :], kind)) == meant:
            idle.append(told)
    return idle


def test_every_number_of_a_need_is_read_or_has_its_reason() -> None:
    dropped = {
        text: idle
        for text, kind in needs()
        if text not in ALLOWED
        and not HOW_MANY.search(text)
        and not STEP.search(text)
        and not CLASSED.search(text)
        and not INSULATED.search(text)
        and (idle := idle_numbers(text, kind))
    }
    assert dropped == {}


def test_the_reasons_are_still_needed() -> None:
    kinds = dict(needs())
    assert [text for text in ALLOWED if not idle_numbers(text, kinds[text])] == []
