"""The readers are imported late: whichever is asked for first, each name stays a function."""

import subprocess
import sys

import pytest

NAMES = ("head_drivers", "near", "near_sizes", "read", "read_item")


@pytest.mark.parametrize("first", NAMES)
def test_every_reader_is_a_function_whichever_is_asked_for_first(first: str) -> None:
    code = f"import cribkit.domain.wording as w; w.{first}; print([callable(getattr(w, n)) for n in {NAMES!r}])"
    found = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert found.stdout.strip() == str([True] * len(NAMES))
