"""What the keeper's commands say."""

from __future__ import annotations

from collections.abc import Mapping
from collections.abc import Set as AbstractSet
from dataclasses import asdict
from pathlib import Path
from textwrap import fill

from cribkit.desk.keeping import Audit, Copied, Loaded, Recount
from cribkit.domain.problem import Problem
from cribkit.domain.wording import Meaning
from cribkit.domain.wording.meaning import Word
from cribkit.domain.wording.slips import slips
from cribkit.domain.wording.tables import kin
from cribkit.report.answer import Answer, Listing
from cribkit.report.forms import cell

WORST = 10  # descriptions that are shown of those that could not be read


def loaded(done: Loaded, warnings: tuple[Problem, ...]) -> Answer:
    """What a load added, changed and left alone."""
    return Answer(
        "load",
        ok=True,
        result=lambda: loaded_json(done),
        listing=lambda: loaded_listing(done),
        text=lambda width: loaded_text(done, width),
        problems=warnings,
    )


def loaded_json(done: Loaded) -> Mapping[str, object]:
    """The JSON result of `load`."""
    return {
        "added": done.added,
        "changed": [asdict(change) for change in done.changes],
        "quantities": [asdict(one) for one in done.recounts],
        "recounted": done.recounted,
        "movements": done.posted,
        "not_in_files": done.vanished,
        "unread": [asdict(one) for one in done.unread],
        "ignored_files": done.ignored,
    }


def loaded_listing(done: Loaded) -> Listing:
    """Every change as a row."""
    added = [(tag, "added", "", None, None) for tag in done.added]
    changed = [(one.tag, "changed", one.column, one.before, one.after) for one in done.changes]
    posted = "counted" if done.recounted else "quantity differs"
    counts = [(one.tag, posted, f"lot {one.lot}" if one.lot else "", one.ledger, one.file) for one in done.recounts]
    gone = [(tag, "not in the files", "", None, None) for tag in done.vanished]
    return Listing(("tag", "what", "column", "before", "after"), (*added, *changed, *counts, *gone))


def loaded_text(done: Loaded, width: int) -> str:
    """The page of `load`."""
    head = "Nothing is new: the crib already says what the files say."
    if not done.nothing_new:
        words = counted(len(done.changes), "changed word")
        head = f"Loaded: {counted(len(done.added), 'new item')}, {words}, {counted(done.posted, 'movement')}."
    lines = [head]
    changes = [
        f"{one.tag}: {one.column}: {cell(one.before) or '-'} -> {cell(one.after) or '-'}" for one in done.changes
    ]
    lines += [below(text, width) for text in changes]
    lines += recount_lines(done, width)
    if done.vanished:
        lines.append(paragraph(f"In the crib but not in the files (left alone): {', '.join(done.vanished)}", width))
    if done.ignored:
        lines.append(paragraph(f"Not a crib's file, ignored: {', '.join(done.ignored)}", width))
    return "\n".join([*lines, *unread_lines(done, width)])


def below(text: str, width: int) -> str:
    """A line under its heading."""
    return fill(text, width, initial_indent="  ", subsequent_indent="    ", break_on_hyphens=False)


def recount_lines(done: Loaded, width: int) -> list[str]:
    """Quantities that differ."""
    if not done.recounts:
        return []
    head = "Counted:" if done.recounted else "Quantities that differ, not posted (--recount posts them as counts):"
    return [head, *(below(recount_text(one), width) for one in done.recounts)]


def recount_text(one: Recount) -> str:
    """One quantity in the crib and in the files."""
    lot = f" lot {one.lot}" if one.lot else ""
    unit = "" if one.unit == "each" else f" {one.unit}"
    return f"{one.tag}{lot}: crib {cell(one.ledger)}{unit}, files {cell(one.file)}{unit}"


def unread_lines(done: Loaded, width: int) -> list[str]:
    """Descriptions that the reader could not use well."""
    if not done.unread:
        return []
    lines = [
        paragraph(
            f"{counted(len(done.unread), 'description')} could not be read fully; such an item is offered only to be "
            "confirmed, or not at all. The worst (see `cribkit read`):",
            width,
        )
    ]
    for one in done.unread[:WORST]:
        what = f"unread: {', '.join(one.words)}" if one.family else "not understood"
        lines.append(below(f"{one.tag}: {one.description} ({what})", width))
    return lines


def exported(paths: tuple[Path, ...]) -> Answer:
    """Which files were written."""
    return Answer(
        "export",
        ok=True,
        result=lambda: {"files": [str(path) for path in paths]},
        listing=lambda: Listing(("file",), tuple((str(path),) for path in paths)),
        text=lambda width: "\n".join(f"Wrote {path}" for path in paths),
    )


def copied(command: str, done: Copied) -> Answer:
    """A backup that was made or put back."""
    facts = {
        "file": str(done.path),
        "movements": done.audit.movements,
        "head": done.audit.head,
        "kept": str(done.kept) if done.kept else None,
    }
    verb = "Wrote" if command == "backup" else "Restored"
    kept = f"\nWhat was there is kept as {done.kept}." if done.kept else ""
    text = f"{verb} {done.path}: verified, {counted(done.audit.movements, 'movement')}.{kept}"
    return Answer(
        command,
        ok=True,
        result=lambda: facts,
        listing=lambda: Listing(tuple(facts), (tuple(facts.values()),)),
        text=lambda width: text,
    )


def audited(found: Audit) -> Answer:
    """What an audit proved, or what it found."""
    columns = ("where", "what", "finding", "next")
    rows = tuple((one.source, one.code, one.message, one.next) for one in found.problems)
    return Answer(
        "audit",
        ok=found.sound,
        result=lambda: {"sound": found.sound, "movements": found.movements, "head": found.head},
        listing=lambda: Listing(columns, rows, empty="Sound."),
        text=lambda width: audit_text(found),
        problems=found.problems,
    )


def audit_text(found: Audit) -> str:
    """The page of `audit`; what is wrong stands with the problems. The end of a broken chain is not worth noting."""
    state = "Sound" if found.sound else f"NOT SOUND: {counted(len(found.problems), 'problem')}"
    note = f"\nNote for the next audit: --was {found.head[:24]}" if found.sound else ""
    return f"{state}: {counted(found.movements, 'movement')}.{note}"


def understood(meaning: Meaning) -> Answer:
    """How a description was read."""
    rows = [("family", meaning.family or "not understood")]
    rows += [(kin().called(name), value) for name, value in meaning.attributes]
    mended = slips(meaning.text)
    said = meaning.traits | set(dict(meaning.attributes).get("finer", "").split())
    rows += [("trait", _told(trait)) for trait in sorted(meaning.traits)]
    rows += [("contains", member.text) for member in meaning.members]
    rows += [(f"slip: {word}", f"taken for {meant}") for word, meant in mended.items()]
    rows += [("not used", word) for word in meaning.unread]
    rows += [(f"word: {word.text}", _sense(word, said)) for word in meaning.words]
    return Answer(
        "read",
        ok=bool(meaning.family),
        result=lambda: {
            "text": meaning.text,
            "kind": meaning.kind,
            "family": meaning.family,
            "attributes": dict(meaning.attributes),
            "traits": sorted(meaning.traits),
            "members": [member.text for member in meaning.members],
            "slips": mended,
            "unread": list(meaning.unread),
            "words": [word._asdict() for word in meaning.words],
        },
        listing=lambda: Listing(("what", "value"), tuple(rows)),
    )


def _told(trait: str) -> str:
    """A trait in plain words; "not-size=10 mm" is what the thing is not to be."""
    name, sign, value = trait.removeprefix("not-").partition("=")
    return f"not {kin().called(name)} {value}" if sign else trait


def _sense(word: Word, said: AbstractSet[str]) -> str:
    """What became of one word, in plain words; `said` holds what the words beside the name say."""
    if word.how == "size":
        return "a measure or a code"
    if word.how == "context":
        return "passed over: what it is used on, or where"
    if word.how == "denied":
        return "what it is not to have, or has not"
    if word.how == "beside":
        return "what it is to have, which the other must say"
    if word.how == "stray":
        return "not used: it names another thing"
    if word.how == "unread":
        return "not used"
    if word.how == "name":
        return "names the thing" if word.became.startswith("~") else f"names the thing: {word.became}"
    if word.how == "corrected":
        return f"taken for {word.became}"
    if word.became.startswith("~") or (word.became == word.text and word.became not in said):
        return "says nothing that tells it apart"
    named = (part.partition(" ") for part in word.became.split(", "))
    return "says " + ", ".join(f"{kin().called(name)}{gap}{value}" for name, gap, value in named)


def counted(number: int, noun: str) -> str:
    """1 item, 2 items."""
    return f"{number} {noun}{'' if number == 1 else 's'}"


def paragraph(text: str, width: int) -> str:
    """Text filled to the width."""
    return fill(text, width, subsequent_indent="  ", break_on_hyphens=False, break_long_words=False)
