"""Pairs of a need and an item written to do harm: what is wrong is never a match. See harm/README.md."""

from __future__ import annotations

import csv
from collections import Counter
from functools import cache
from pathlib import Path

from cribkit.domain.wording import judge, read, read_item

HERE = Path(__file__).parent / "harm"
# Where we hold another view than the author: the reason.
OTHER_VIEW = {
    "2-285": "a spill kit that says nothing takes up oil, the usual one",
    "3-114": "a slogging spanner without more has a ring",
    "6-064": "whether a wrench is in date its own record says, not its description",
    "6-119": "an impact driver with a square is struck by hand; a cordless one says so",
    "6-185": "a micrometer without more is an outside one",
    "7-037": "whether a wrench is calibrated its own record says, not its description",
    "8-269": "an adapter's female end is named first",
    "9-083": "an adapter's female end is named first",
    "11-067": "a wrench that says nothing of a left-hand thread may still click on one, and its record tells",
    "11-196": "a bottle on the shelf is a sealed one",
    "12-194": "a funnel that says nothing is a clean one",
    "12-199": "no gasket sheet holds asbestos any more",
    "13-027": "whether a wrench is calibrated its own record says, not its description",
    "7-146": "a battery and a charger are no part of what is asked for",
}


@cache
def judged() -> tuple[tuple[dict[str, str], str], ...]:
    """Every pair with the status that it gets."""
    found = []
    for path in sorted(HERE.glob("pairs-*.csv")):
        with path.open(encoding="utf-8", newline="") as handle:
            for row in csv.DictReader(handle):
                need, item = read(row["need"], row["kind"]), read_item(row["item"], row["kind"])
                found.append((row, judge(need, item).status))
    return tuple(found)


def test_nothing_wrong_is_called_a_match() -> None:
    matched = [
        f"{row['id']} {row['need']} | {row['item']}"
        for row, status in judged()
        if status == "match" and row["label"] == "wrong"
    ]
    assert matched == []


def test_what_only_a_person_may_confirm_is_no_match_but_where_we_say_why() -> None:
    matched = {row["id"] for row, status in judged() if status == "match" and row["label"] == "doubt"}
    assert matched == OTHER_VIEW.keys()


def test_what_is_right_is_still_found() -> None:
    counts = Counter(status for row, status in judged() if row["label"] == "right")
    assert counts["match"] >= 0.67 * counts.total()
    assert counts["none"] <= 0.15 * counts.total()
