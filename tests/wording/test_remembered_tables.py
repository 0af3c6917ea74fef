"""What is worked out of the tables is the same when it was remembered as text."""

import json

from cribkit.domain.wording import tables
from cribkit.domain.wording.needle import Sieve, pack
from cribkit.domain.wording.patterns import PATTERNS


def test_families_and_the_order_of_their_names_survive_being_remembered() -> None:
    spellings = tables._spellings(tables.load("words.toml"))
    longest = tables._longest(spellings)
    families, names = tables._families(tables.load("families.toml"), spellings, longest)
    again, names_again = tables._unpacked(tables._packed(spellings, longest))
    assert list(again.items()) == list(families.items())
    assert list(names_again.items()) == list(names.items())


def test_what_patterns_must_hold_survives_being_remembered() -> None:
    packed = pack([pattern for pattern, _ in PATTERNS])
    text = "sckt,1/4 dr 8mm tl med blue t/w"
    assert Sieve(json.loads(json.dumps(packed))).due(text) == Sieve(packed).due(text) != []
