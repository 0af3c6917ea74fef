"""The stored meaning of each item and the terms by which it is looked up."""

from __future__ import annotations

import sqlite3

NOTE = "reader"  # the fact that says which reader understood the stored descriptions


def reader_is_behind(connection: sqlite3.Connection) -> bool:
    """Whether the stored meanings come from another version of the reader than this program's."""
    from cribkit.domain.wording import READER_VERSION

    if not connection.execute("SELECT 1 FROM sqlite_master WHERE name = 'fact'").fetchone():
        return True
    row = connection.execute("SELECT value FROM fact WHERE name = ?", (NOTE,)).fetchone()
    return row is None or row[0] != str(READER_VERSION)


def reread(connection: sqlite3.Connection) -> None:
    """Read every description again. Call it inside a transaction."""
    from cribkit.domain.wording import READER_VERSION

    for row in connection.execute("SELECT tag, kind, description, contents, traits, hazards FROM item").fetchall():
        set_meaning(connection, *row)
    connection.execute("INSERT OR REPLACE INTO fact (name, value) VALUES (?, ?)", (NOTE, str(READER_VERSION)))


def set_meaning(
    connection: sqlite3.Connection, tag: str, kind: str, description: str, contents: str, traits: str, hazards: str
) -> None:
    """Understand one item anew and store its meaning and terms. A torque wrench is what its columns say."""
    from cribkit.domain.wording import index_terms, read_item

    if kind == "wrench":
        description = columns_told(connection, tag, description) or description
    row = connection.execute("SELECT pack, unit FROM item WHERE tag = ?", (tag,)).fetchone()
    pack = f"{row[0]:g} {row[1]}" if row and kind == "consumable" else ""
    read_as = "consumable" if kind == "consumable" else "tool"
    meaning = read_item(description, read_as, contents, traits, hazards, pack)
    connection.execute("UPDATE item SET meaning = ? WHERE tag = ?", (meaning.to_json(), tag))
    connection.execute("DELETE FROM item_term WHERE tag = ?", (tag,))
    connection.executemany(
        "INSERT INTO item_term (term, tag) VALUES (?, ?)", [(term, tag) for term in sorted(index_terms(meaning))]
    )


def columns_told(connection: sqlite3.Connection, tag: str, description: str) -> str:
    """The columns of a torque wrench as a description: people seldom write range, unit and square into its words.

    That it measures angle is the one thing that only its words tell.
    """
    from cribkit.domain.procedure.checks import measures_angles
    from cribkit.domain.wording import wrench_description

    row = connection.execute(
        "SELECT mechanism, range_min, range_max, unit, drive, second_unit, second_min, second_max "
        "FROM wrench WHERE tag = ?",
        (tag,),
    ).fetchone()
    if row is None:
        return ""
    mechanism, low, high, unit, drive, unit2, low2, high2 = row
    second = f"{low2:g}-{high2:g} {unit2}" if unit2 and low2 is not None and high2 is not None else ""
    told = wrench_description("", mechanism, f"{low:g}", f"{high:g}", unit, drive, second)
    return f"{told}, angle" if measures_angles(description) else told
