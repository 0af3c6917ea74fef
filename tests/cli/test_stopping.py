"""Ctrl-C at any moment: no traceback, and a posting is whole or not there."""

from __future__ import annotations

import builtins
import sys
from pathlib import Path
from typing import Any

import pytest

from cribkit.__main__ import STOPPED, main
from cribkit.store.audit import audit
from cribkit.store.crib import Crib
from cribkit.store.opening import open_crib
from tests.store.small import make_crib


def interrupted(*_: object) -> Any:
    raise KeyboardInterrupt


def stop(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], *words: str) -> str:
    """Run the command, which is interrupted; what it says on stderr."""
    monkeypatch.setattr(sys, "argv", ["cribkit", *words])
    with pytest.raises(SystemExit) as ended:
        main()
    assert ended.value.code == 130
    return capsys.readouterr().err


@pytest.mark.parametrize("step", ["change_balance", "change_loan"])
def test_in_the_middle_of_a_posting_nothing_of_it_stays(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], step: str
) -> None:
    path = make_crib(tmp_path)
    with open_crib(path) as crib:
        before = facts(crib)
    monkeypatch.setattr(f"cribkit.store.posting.{step}", interrupted)
    words = ("--crib", str(path), "issue", "SK-8", "--to", "R. Holm", "--by", "A. Keeper")
    assert stop(monkeypatch, capsys, *words).strip() == STOPPED
    with open_crib(path) as crib:
        assert facts(crib) == before


def facts(crib: Crib) -> tuple[object, ...]:
    """What a posting would change, of a sound crib."""
    found = audit(crib)
    assert found.sound
    return found.head, crib.must_have("SK-8")


def test_while_the_program_starts_up(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    real = builtins.__import__

    def load(name: str, *rest: Any, **named: Any) -> Any:
        return interrupted() if name == "cribkit.cli.app" else real(name, *rest, **named)

    monkeypatch.setattr(builtins, "__import__", load)
    assert stop(monkeypatch, capsys, "jobs").strip() == STOPPED
