"""What a `never` line forbids: what it names and what may be that; not another kind. Common practice, no source."""

import pytest

from cribkit.domain.wording import forbidden, read, read_item

# (the line, the item, whether it is forbidden)
CASES = [
    ("rags", "RAG, WIPING: COTTON, WHITE", True),
    ("rags", "lint-free rags 5 kg", True),
    ("rags", "lint-free wipes, tub of 100", False),
    ("rags", "tack cloth", False),
    ("acetoxy silicone", "RTV grey, neutral cure, 80 ml", False),
    ("acetoxy silicone", "silicone sealant clear, acetic cure", True),
    ("acetoxy silicone", "RTV BLACK 80ML", True),
    ("acetoxy silicone", "RTV BLACK SENSOR SAFE 80ML", False),
    ("acetoxy silicone", "anaerobic flange sealant 50 ml", False),
    ("chlorinated brake cleaner", "BRAKE CLNR NON-CHLOR AERO", False),
    ("chlorinated brake cleaner", "brake cleaner 500 ml", True),
    ("chlorinated brake cleaner", "Chlorinated brake parts cleaner", True),
    ("chlorinated brake cleaner", "throttle body cleaner", False),
    ("brake parts cleaner", "BRAKE CLNR NON-CHLOR AERO", True),
    ("brake parts cleaner", "carburettor cleaner", False),
    ("copper grease", "ANTI-SEIZE COPPER 500G TIN", True),
    ("copper grease", "nickel anti-seize 250 g", False),
    ("copper grease", "anti-seize compound 250 g", True),
    ("copper grease", "ceramic brake paste, metal free", False),
    ("RTV silicone sealant, grey", "RTV BLACK SENSOR SAFE 80ML", False),
    ("RTV silicone sealant, grey", "RTV gasket maker 80 ml", True),
    ("RTV silicone sealant, grey", "GREY RTV 200ML", True),
    ("brake fluid, DOT 5", "brake fluid DOT 5.1", False),
    ("brake fluid, DOT 5", "SILICONE BRAKE FLUID", True),
    ("brake fluid, DOT 5", "brake fluid 1 L", True),
    ("coolant, IAT", "coolant OAT pink conc. 5L", False),
    ("coolant, IAT", "antifreeze blue 5 L", True),
    ("coolant, IAT", "IAT antifreeze concentrate", True),
    ("engine oil, 15W-40", "ENGINE OIL 5W30 C3", False),
    ("engine oil, 15W-40", "15w40 diesel 20L drum, mineral", True),
    ("gear oil", "75W-90 GL-5 gear oil", True),
    ("gear oil", "ATF VI 1 litre", False),
    ("lithium grease", "White lithium grease spray", True),
    ("lithium grease", "Red rubber grease", False),
    ("threadlocker, high strength", "THREADLOCKER MED STR BLUE", False),
    ("threadlocker, high strength", "threadlocker 10 ml", True),
    ("threadlocker", "Wicking-grade threadlocker, green", True),
    ("steel wool, coarse", "wire wool 0000", False),
    ("steel wool", "wire wool 0000", True),
    ("pipe sealant", "PTFE thread tape 12 mm", False),
    ("latex gloves", "GLOVES NITRILE XL BLK", False),
    ("latex gloves", "disposable gloves L", True),
    ("zinc plated bolt M8", "bolt M8x30 A2", False),
    ("wire brush", "brass wire brush", True),
    ("hammer", "ball pein hammer 1 lb", True),
]


@pytest.mark.parametrize(("never", "item", "is_forbidden"), CASES, ids=[f"{line} | {item}" for line, item, _ in CASES])
def test_a_never_line_forbids_what_it_names_and_what_may_be_that(never: str, item: str, is_forbidden: bool) -> None:
    assert forbidden(read(never), read_item(item, "")) is is_forbidden
