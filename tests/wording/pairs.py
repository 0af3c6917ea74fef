"""Tables of pairs: a need, an item, and the verdict that the trade would give."""

from __future__ import annotations

from collections.abc import Sequence

import pytest

from cribkit.domain.wording import judge, read, read_item


def over(pairs: Sequence[tuple[str, ...]]) -> pytest.MarkDecorator:
    """One test for each pair, named after it."""
    return pytest.mark.parametrize(("need", "item", "verdict"), pairs, ids=[f"{pair[0]} | {pair[1]}" for pair in pairs])


def verdict_on(need: str, item: str, kind: str = "") -> str:
    """What the item is to the need: "match", "review" or "none"."""
    return judge(read(need), read_item(item, kind)).status
