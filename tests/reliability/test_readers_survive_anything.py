"""Whatever bytes people's files and scanners hold: a result or a list of problems, never a traceback.

The same readers are driven by coverage-guided fuzzing outside the suite: tests/fuzz/readers.py, docs/reliability.md.
"""

from __future__ import annotations

import contextlib
import random
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from tests.fuzz.readers import INPUTS, READERS

DATA = st.binary(max_size=400)


@st.composite
def damaged(draw: st.DrawFn, good: bytes) -> bytes:
    """A good file with a few of its bytes cut, doubled or replaced."""
    dice = random.Random(draw(st.integers(0, 2**32)))
    data = bytearray(good)
    for _ in range(draw(st.integers(1, 6))):
        at, length = dice.randrange(len(data) + 1), dice.randrange(1, 12)
        piece = dice.choice(
            [b"", data[at : at + length] * 2, dice.randbytes(length), b'"', b"\xff", b"9" * length, b"\n"]
        )
        data[at : at + length] = piece
    return bytes(data)


@pytest.mark.parametrize("reader", READERS)
@given(data=st.data())
@settings(max_examples=120)
def test_a_reader_ends_with_a_result_or_with_problems(
    reader: str, data: st.DataObject, tmp_path_factory: pytest.TempPathFactory
) -> None:
    good = data.draw(st.sampled_from(INPUTS[reader]))
    READERS[reader](data.draw(DATA | damaged(good)))


def test_a_whole_load_of_damaged_files_leaves_no_crib_or_a_sound_one(tmp_path: Path) -> None:
    from cribkit.desk.keeping import load_folder
    from cribkit.domain.problem import CribkitError
    from cribkit.store.audit import audit
    from cribkit.store.opening import open_crib
    from tests.store.small import ENTRY, FILES

    dice = random.Random(11)
    for turn in range(40):
        folder = tmp_path / str(turn)
        folder.mkdir()
        for name, text in FILES.items():
            data = bytearray(text.encode())
            if dice.random() < 0.5:
                data[dice.randrange(len(data))] = dice.randrange(256)
            (folder / name).write_bytes(data)
        with contextlib.suppress(CribkitError):
            load_folder(tmp_path / f"{turn}.db", folder, ENTRY)
        if (tmp_path / f"{turn}.db").exists():
            with open_crib(tmp_path / f"{turn}.db") as crib:
                assert audit(crib).sound
