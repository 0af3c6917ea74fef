"""How well needs find their items: right answers, right refusals, dangerous matches, what goes to a person.

Run `python -m tests.wording.scorer [own] [blind] [second] ...` for the figures, `-v` for every miss,
`--baseline` for plain rapidfuzz scorers.
"""

from __future__ import annotations

import csv
import sys
from collections import Counter
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from functools import partial
from pathlib import Path

from cribkit.domain.wording import Meaning, index_terms, judge_all, query_terms, read, read_item

HERE = Path(__file__).parent


@dataclass(frozen=True)
class Need:
    """A labelled need: the tags that satisfy it, that a person may confirm, and on which people differ."""

    text: str
    kind: str
    group: str
    right: frozenset[str]
    doubt: frozenset[str] = frozenset()
    either: frozenset[str] = frozenset()

    @property
    def refuse(self) -> bool:
        return not (self.right or self.doubt or self.either)


@dataclass(frozen=True)
class Stocked:
    """An item of a labelled set."""

    tag: str
    text: str
    meaning: Meaning


@dataclass
class Score:
    """Counts of outcomes, and the misses for a closer look."""

    counts: Counter[str] = field(default_factory=Counter)
    groups: dict[str, Counter[str]] = field(default_factory=dict)
    misses: list[str] = field(default_factory=list)

    def add(self, need: Need, outcome: str, note: str) -> None:
        expected = "answer" if need.right else "refuse" if need.refuse else "person"
        for counts in (self.counts, self.groups.setdefault(need.group, Counter())):
            counts[expected] += 1
            counts[f"{expected} {outcome}"] += 1
            counts[outcome] += 1
        if outcome != "right":
            self.misses.append(f"{outcome:9} {need.group:14} {need.text!r} -> {note}")


# A finder: the best status, the tag, a note; and every tag that it calls a match.
Finder = Callable[[Need], tuple[str, str, str, frozenset[str]]]


def reader_finder(items: Iterable[Stocked]) -> Finder:
    """The product's way: candidates by index terms, the rule for each, then all beside each other."""
    index: dict[str, set[str]] = {}
    by_tag = {item.tag: item for item in items}
    for item in by_tag.values():
        for term in index_terms(item.meaning):
            index.setdefault(term, set()).add(item.tag)

    def find(need: Need) -> tuple[str, str, str, frozenset[str]]:
        meaning = read(need.text, need.kind)
        tags = sorted(set().union(*(index.get(term, set()) for term in query_terms(meaning))))
        found = judge_all(meaning, [by_tag[tag].meaning for tag in tags], index.keys().__and__)
        judged = list(zip(found, tags, strict=True))
        matches = frozenset(tag for one, tag in judged if one.status == "match")
        if not judged:
            return "none", "", f"read as {meaning.family} {dict(meaning.attributes)} {meaning.unread}", matches
        best, tag = max(judged, key=lambda entry: (entry[0].rank, entry[1]))
        item = by_tag[tag]
        note = f"{best.status} {item.text!r} {best.weakness} [{meaning.family} {meaning.unread}]"
        return best.status, tag, note, matches

    return find


def fuzzy_finder(items: Iterable[Stocked], scorer: Callable[..., float], sure: float, unsure: float) -> Finder:
    """The baseline: the likest text; a match from one cutoff, a doubt from another."""
    from rapidfuzz import process, utils

    texts = {item.tag: item.text for item in items}

    def find(need: Need) -> tuple[str, str, str, frozenset[str]]:
        text, score, tag = process.extractOne(need.text, texts, scorer=scorer, processor=utils.default_process)
        status = "match" if score >= sure else "review" if score >= unsure else "none"
        return status, tag, f"{text!r} {score:.0f}", frozenset({tag} if status == "match" else ())

    return find


def outcome(need: Need, status: str, tag: str, matches: frozenset[str]) -> str:
    """right, either, review, missed or dangerous. Any match on a wrong item is dangerous, best or not."""
    if matches - need.right - need.either:
        return "dangerous"
    if status == "match":
        return "right" if tag in need.right else "either"
    if status == "review":
        return (
            "right"
            if not need.right and tag in need.doubt
            else "either"
            if not need.right and need.either
            else "review"
        )
    return "right" if need.refuse else "either" if not need.right and not need.doubt else "missed"


def score(needs: Iterable[Need], find: Finder) -> Score:
    """The outcomes of all needs."""
    total = Score()
    for need in needs:
        status, tag, note, matches = find(need)
        wrong = matches - need.right - need.either
        extra = f" WRONG MATCHES {sorted(wrong)}" if wrong else ""
        total.add(need, outcome(need, status, tag, matches), note + extra)
    return total


def cells(row: dict[str, str], name: str) -> frozenset[str]:
    return frozenset(filter(None, row[name].split(";")))


def blind_set(folder: Path = HERE / "blind") -> tuple[list[Stocked], list[Need]]:
    """A set in the seed-inventory format: items and needs."""
    items = []
    for file, kind in (("tools.csv", "tool"), ("consumables.csv", "consumable")):
        for row in csv.DictReader((folder / file).open(encoding="utf-8")):
            told = (row.get(name) or "" for name in ("contents", "traits", "hazards"))
            meaning = read_item(row["description"], kind, *told, f"{row.get('pack') or ''} {row.get('unit') or ''}")
            items.append(Stocked(row["tag"], row["description"], meaning))
    for row in csv.DictReader((folder / "torque_wrenches.csv").open(encoding="utf-8")):
        text = wrench_text(row)
        items.append(Stocked(row["tag"], text, read_item(text, "tool")))
    needs = [
        Need(row["need"], row["kind"], row["class"], cells(row, "right"), cells(row, "doubt"), cells(row, "either"))
        for row in csv.DictReader((folder / "needs.csv").open(encoding="utf-8"))
    ]
    return items, needs


# The sets by other hands, in the order in which they were written.
OTHERS = (
    "blind",
    "second",
    "third",
    "fourth",
    "fifth",
    "sixth",
    "seventh",
    "eighth",
    "ninth",
    "tenth",
    "eleventh",
    "twelfth",
    "thirteenth",
    "fourteenth",
    "fifteenth",
    "sixteenth",
    "seventeenth",
    "eighteenth",
    "nineteenth",
    "twentieth",
    "twentyfirst",
    "twentysecond",
    "twentythird",
    "twentyfourth",
    "twentyfifth",
    "twentysixth",
    "twentyseventh",
    "twentyeighth",
    "twentyninth",
    "thirtieth",
    "thirtyfirst",
    "thirtysecond",
    "thirtythird",
    "thirtyfourth",
    "thirtyfifth",
    "thirtysixth",
    "thirtyseventh",
    "thirtyeighth",
    "thirtyninth",
    "fortieth",
    "fortyfirst",
    "fortysecond",
    "fortythird",
    "fortyfourth",
    "fortyfifth",
    "fortysixth",
    "fortyseventh",
    "fortyeighth",
    "fortyninth",
    "fiftieth",
    "fiftyfirst",
    "fiftysecond",
    "fiftythird",
    "fiftyfourth",
    "fiftyfifth",
    "fiftysixth",
    "fiftyseventh",
    "fiftyeighth",
    "fiftyninth",
    "sixtieth",
    "sixtyfirst",
    "sixtysecond",
    "sixtythird",
    "sixtyfourth",
    "sixtyfifth",
    "sixtysixth",
    "sixtyseventh",
    "sixtyeighth",
    "sixtyninth",
    "seventieth",
    "seventyfirst",
    "seventysecond",
    "seventythird",
    "seventyfourth",
    "seventyfifth",
    "seventysixth",
    "seventyseventh",
    "seventyeighth",
    "seventyninth",
    "eightieth",
    "eightyfirst",
    "eightysecond",
    "eightythird",
    "eightyfourth",
    "eightyfifth",
    "eightysixth",
    "eightyseventh",
    "eightyeighth",
    "eightyninth",
    "ninetieth",
    "ninetyfirst",
    "ninetysecond",
    "ninetythird",
    "ninetyfourth",
    "ninetyfifth",
    "ninetysixth",
    "ninetyseventh",
    "ninetyeighth",
    "ninetyninth",
    "hundredth",
    "hundredandfirst",
    "hundredandsecond",
    "hundredandthird",
    "hundredandfourth",
    "hundredandfifth",
    "hundredandsixth",
    "hundredandseventh",
    "hundredandeighth",
    "hundredandninth",
    "hundredandtenth",
    "hundredandeleventh",
    "hundredandtwelfth",
    "hundredandthirteenth",
    "hundredandfourteenth",
    "hundredandfifteenth",
    "hundredandsixteenth",
    "hundredandseventeenth",
    "hundredandeighteenth",
    "hundredandnineteenth",
    "hundredandtwentieth",
    "hundredandtwentyfirst",
    "hundredandtwentysecond",
    "hundredandtwentythird",
    "hundredandtwentyfourth",
    "hundredandtwentyfifth",
    "hundredandtwentysixth",
    "hundredandtwentyseventh",
    "hundredandtwentyeighth",
    "hundredandtwentyninth",
    "hundredandthirtieth",
    "hundredandthirtyfirst",
    "hundredandthirtysecond",
    "hundredandthirtythird",
    "hundredandthirtyfourth",
    "hundredandthirtyfifth",
    "hundredandthirtysixth",
    "hundredandthirtyseventh",
    "hundredandthirtyeighth",
    "hundredandthirtyninth",
    "hundredandfortieth",
    "hundredandfortyfirst",
    "hundredandfortysecond",
    "hundredandfortythird",
    "hundredandfortyfourth",
    "hundredandfortyfifth",
    "hundredandfortysixth",
    "hundredandfortyseventh",
    "hundredandfortyeighth",
    "hundredandfortyninth",
    "hundredandfiftieth",
    "hundredandfiftyfirst",
    "hundredandfiftysecond",
    "hundredandfiftythird",
    "hundredandfiftyfourth",
    "hundredandfiftyfifth",
    "hundredandfiftysixth",
    "hundredandfiftyseventh",
    "hundredandfiftyeighth",
    "hundredandfiftyninth",
    "hundredandsixtieth",
    "hundredandsixtyfirst",
    "hundredandsixtysecond",
    "hundredandsixtythird",
    "hundredandsixtyfourth",
    "hundredandsixtyfifth",
    "hundredandsixtysixth",
    "hundredandsixtyseventh",
    "hundredandsixtyeighth",
    "hundredandsixtyninth",
    "hundredandseventieth",
    "hundredandseventyfirst",
    "hundredandseventysecond",
    "hundredandseventythird",
    "hundredandseventyfourth",
    "hundredandseventyfifth",
    "hundredandseventysixth",
    "hundredandseventyseventh",
    "hundredandseventyeighth",
    "hundredandseventyninth",
    "hundredandeightieth",
    "hundredandeightyfirst",
    "hundredandeightysecond",
    "hundredandeightythird",
    "hundredandeightyeighth",
    "hundredandninetyfifth",
    "hundredandeightyninth",
    "hundredandninetythird",
    "hundredandninetysecond",
    "hundredandninetyfourth",
    "hundredandninetieth",
    "hundredandninetysixth",
    "hundredandninetyseventh",
    "hundredandninetyeighth",
    "hundredandninetyninth",
    "twohundredandfirst",
    "twohundredandfourth",
    "twohundredandfifth",
    "twohundredth",
    "twohundredandsixth",
)


def wrench_text(row: dict[str, str]) -> str:
    """A torque wrench's columns as a description, as loading does."""
    from cribkit.domain.procedure.checks import measures_angles
    from cribkit.domain.wording import wrench_description

    description = row.get("description") or ""
    columns = (row[name] for name in ("mechanism", "range_min", "range_max", "unit", "drive"))
    told = wrench_description(description, *columns)
    return f"{told}, angle" if measures_angles(description) else told


def table(total: Score) -> str:
    """The figures, whole and by class."""
    lines = [f"{'class':18}{'needs':>6}{'right':>14}{'refused':>14}{'to person':>11}{'dangerous':>10}{'review':>8}"]
    for name, counts in [*sorted(total.groups.items()), ("all", total.counts)]:
        needs = counts["answer"] + counts["refuse"] + counts["person"]
        right = f"{counts['answer right'] + counts['answer either']}/{counts['answer']}"
        refused = f"{counts['refuse right']}/{counts['refuse']}"
        person = f"{counts['person right'] + counts['person either']}/{counts['person']}"
        lines.append(
            f"{name:18}{needs:6}{right:>14}{refused:>14}{person:>11}{counts['dangerous']:10}{counts['review']:8}"
        )
    return "\n".join(lines)


def main(arguments: list[str]) -> None:
    """Print the figures of the sets that are named."""
    from tests.wording.own import own_set

    sets = {"own": own_set} | {name: partial(blind_set, HERE / name) for name in OTHERS}
    for name, load in sets.items():
        if name not in arguments and sets.keys() & set(arguments):
            continue
        items, needs = load()
        print(f"\n{name}: {len(needs)} needs over {len(items)} items")
        total = score(needs, reader_finder(items))
        print(table(total))
        if "-v" in arguments:
            print("\n".join(total.misses))
        if "--baseline" in arguments:
            baseline(items, needs)


def baseline(items: list[Stocked], needs: list[Need]) -> None:
    """Plain rapidfuzz scorers at their better cutoffs, for comparison."""
    from rapidfuzz import fuzz

    print("\nplain rapidfuzz: scorer, cutoff, right answers, right refusals, dangerous")
    for scorer in (fuzz.ratio, fuzz.token_sort_ratio, fuzz.token_set_ratio, fuzz.WRatio):
        for sure in (60, 75, 90):
            counts = score(needs, fuzzy_finder(items, scorer, sure, 101)).counts
            right = f"{counts['answer right'] + counts['answer either']}/{counts['answer']}"
            refused = f"{counts['refuse right']}/{counts['refuse']}"
            print(f"{scorer.__name__:18}{sure:4} {right:>9} {refused:>9} {counts['dangerous']:5}")


if __name__ == "__main__":
    main(sys.argv[1:])
