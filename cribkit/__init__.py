"""cribkit: a tool-crib and consumables tracker keyed to repair procedures."""

__version__ = "0.1.0"
