"""What `close` and `jobs` print on a page of 80 columns."""

from __future__ import annotations

import pytest

from tests.cli.test_ledger_commands import Counter, counter

__all__ = ["counter"]  # the fixture

CLOSED_PAGE = """\
HELD: job wren-1: search the vehicle before it is released.
  SK-8 is missing
  Then say `cribkit found TAG --job` or `cribkit lost TAG --job --reason`.
Back in the crib: CL-1, TW-1
Nothing was used, though the procedures expect it, of: CL-1
  If it was used: `cribkit issue TAG AMOUNT --use --job wren-1`.
Torque wrench TW-1: 1 cycle
"""
JOBS_PAGE = """\
wren-1: HELD, J. Sedge, since 2026-11-25, bay 2
  clamp (revision A)
  held for SK-8: search the vehicle before it is released
  out for it: SK-8

wren-31: OPEN, R. Holm, since 2026-11-20
  out for it: TW-2
"""
JOB_PAGE = """\
wren-1: HELD, J. Sedge, since 2026-11-25, bay 2
  clamp (revision A)
  held for SK-8: search the vehicle before it is released

what      tag    detail
--------  -----  ---------------------------------------------------------------
out       SK-8   1 x 8 mm socket, 1/4 drive, 6 point, J. Sedge, since 2026-11-25
held for  SK-8   missing; search the vehicle before it is released
torque    TW-1   clamp screw: 1 x 10 N·m, set to 10 N·m
"""


@pytest.fixture(autouse=True)
def narrow(monkeypatch: pytest.MonkeyPatch) -> None:
    """A page of 80 columns."""
    monkeypatch.setenv("COLUMNS", "80")


def test_jobs_can_be_read_at_a_glance_and_what_is_held_comes_first(counter: Counter) -> None:
    counter("pull", "clamp.toml", "--job", "wren-1", "--bay", "2", "--by", "J. Sedge", "--on", "2026-11-25")
    code, out, _ = counter("close", "wren-1", "--missing", "SK-8", "--by", "J. Sedge", "--on", "2026-11-25")
    assert (code, out) == (1, CLOSED_PAGE)
    assert counter("jobs")[:2] == (0, JOBS_PAGE)
    assert counter("jobs", "wren-1")[:2] == (0, JOB_PAGE)
    assert all(len(line) <= 80 for page in (CLOSED_PAGE, JOBS_PAGE, JOB_PAGE) for line in page.splitlines())
