"""What a label promises (safe on, free of) and what it warns of, against what a need asks for."""

from __future__ import annotations

from tests.wording.pairs import over, verdict_on

# Common practice of labels, no source.
PAIRS = [
    ("brake cleaner, plastic safe", "brake cleaner, plastic safe, 500 ml", "match"),
    ("brake cleaner, plastic safe", "brake cleaner 500 ml", "review"),
    ("brake cleaner, plastic safe", "brake cleaner, not safe for plastics", "none"),
    ("brake cleaner, plastic safe", "brake cleaner, unsafe on plastic", "none"),
    ("brake cleaner, rubber safe", "BRK CLNR NOT RUBBER SAFE", "none"),
    ("brake cleaner, rubber safe", "brake cleaner, keep off rubber", "none"),
    ("carb cleaner, paint safe", "CARB CLNR AERO 400ML - will lift paint", "none"),
    ("carb cleaner", "CARB CLNR AERO 400ML - will lift paint", "match"),
    ("contact cleaner safe on polycarbonate", "contact cleaner, polycarbonate safe", "match"),
    ("contact cleaner safe on polycarbonate", "contact cleaner, never on polycarbonate", "none"),
    ("contact cleaner safe on polycarbonate", "contact cleaner", "review"),
    ("gasket remover, aluminum safe", "GSKT RMVR FOAM, ALUM SAFE", "match"),
    ("gasket remover, aluminum safe", "gasket remover, not for aluminium", "none"),
    ("gasket remover", "gasket remover, not for aluminium", "match"),
    ("tint-safe glass cleaner", "glass cleaner", "review"),
    ("glass cleaner without ammonia", "GLASS CLNR AMM FREE", "match"),
    ("glass cleaner, ammonia-free", "glass cleaner with ammonia", "none"),
    ("glass cleaner, ammonia-free", "GLASS CLEANER 500ML", "review"),
    ("screen wash, methanol free", "screenwash winter -20, methanol free", "match"),
    ("brake cleaner, acetone free", "brake cleaner 500 ml", "review"),
    ("GL-4 gear oil, safe on bronze", "gear oil GL-4 75W-90, yellow metal safe", "match"),
]


@over(PAIRS)
def test_a_claim_is_met_denied_or_confirmed(need: str, item: str, verdict: str) -> None:
    assert verdict_on(need, item, "consumable") == verdict


# What one tube or can holds, where a need says it; of oils and fluids the litres are an amount.
PACKS = [
    ("blue threadlocker 50 ml", "thread lock blue 50ML", "match"),
    ("blue threadlocker 50 ml", "thread lock blue 10ml", "none"),
    ("brake cleaner 500 ml", "brake cleaner 600 ml", "review"),
    ("grey RTV, 310 ml", "grey RTV silicone 85 g", "review"),
    ("blue threadlocker", "thread lock blue 10ml", "match"),
    ("5W-30 C3 engine oil, 4.2 L", "ENG OIL 5W30 C3 5L", "match"),
]


@over(PACKS)
def test_a_stated_pack_that_differs_is_confirmed_or_refused(need: str, item: str, verdict: str) -> None:
    assert verdict_on(need, item, "consumable") == verdict
