"""The wheel carries the demo: installed alone, in an empty folder, `--demo` works."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parent.parent


@pytest.fixture(scope="module")
def installed(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with the wheel installed in it, apart from this checkout."""
    built, target = tmp_path_factory.mktemp("wheel"), tmp_path_factory.mktemp("target")
    subprocess.run([sys.executable, "-m", "hatchling", "build", "-t", "wheel", "-d", str(built)], cwd=ROOT, check=True)
    (wheel,) = built.glob("*.whl")
    pip = [sys.executable, "-m", "pip", "install", "--quiet", "--no-deps", "--no-index", "--target", str(target)]
    subprocess.run([*pip, str(wheel)], check=True)
    return target


def run(installed: Path, folder: Path, *command: str) -> subprocess.CompletedProcess[str]:
    """Run the installed command in a folder, with nothing of this checkout in sight."""
    env = {"PATH": os.environ["PATH"], "HOME": str(folder), "PYTHONPATH": str(installed)}
    script = [sys.executable, str(installed / "bin" / "cribkit")]
    return subprocess.run([*script, *command], cwd=folder, env=env, capture_output=True, text=True, check=False)


def test_the_demo_works_from_the_wheel_in_an_empty_folder(installed: Path, tmp_path: Path) -> None:
    done = run(installed, tmp_path, "check", "throttle-body-service", "--demo")
    assert done.stderr == ""
    assert done.returncode == 1
    assert done.stdout.startswith("NOT READY: ")
    assert {path.name for path in tmp_path.iterdir()} <= {".cache"}


def test_the_wheel_lists_its_procedures(installed: Path, tmp_path: Path) -> None:
    done = run(installed, tmp_path, "procedures", "--demo", "--as", "csv")
    assert done.returncode == 0
    assert len(done.stdout.splitlines()) > 14
    assert str(ROOT) not in done.stdout
