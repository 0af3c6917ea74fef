"""The job sheet for paper and phones, in a real browser where there is one."""

from __future__ import annotations

import re
import shutil
import subprocess
from html import escape
from pathlib import Path

import pytest

from tests.cli.test_check import DAY, Tags, run


def test_sheet_and_markdown_of_several_jobs_say_which_job_each_line_is_of() -> None:
    jobs = ("front-brakes", "suspension-arm", "--demo", *DAY)
    for form in ("html", "markdown"):
        _, text = run("check", *jobs, "--as", form)
        assert "wheel nuts, 19 mm hex [front-brakes]" in " ".join(text.split())
        assert "wheel nuts, 19 mm hex [suspension-arm]" in " ".join(text.split())


def browser(page: str, folder: Path, *words: str) -> subprocess.CompletedProcess[bytes]:
    """A job sheet in a real browser."""
    (folder / "sheet.html").write_text(page, encoding="utf-8")
    flags = ["--headless", "--no-sandbox", "--disable-gpu", f"--user-data-dir={folder / 'profile'}"]
    command = ["chromium", *flags, *words, (folder / "sheet.html").as_uri()]
    return subprocess.run(command, capture_output=True, check=True, timeout=60)


@pytest.mark.skipif(shutil.which("chromium") is None, reason="no Chromium here to look at the job sheet with")
def test_a_browser_shows_the_job_sheet_and_prints_it_on_a4(tmp_path: Path) -> None:
    code, sheet = run("check", "throttle-body-service", "front-hub-bearing", "--demo", "--as", "html", *DAY)
    assert code == 1
    shown = browser(sheet, tmp_path, "--dump-dom").stdout.decode()
    page = Tags(shown)
    assert page.tags.count("h2") == 5  # blocks, pull list, torque card, consumables, care
    assert page.tags.count("tr") == sheet.count("<tr>")
    assert any(word.startswith("NOT READY") for word in page.words)
    browser(sheet, tmp_path, "--no-pdf-header-footer", f"--print-to-pdf={tmp_path / 'sheet.pdf'}")
    paper = (tmp_path / "sheet.pdf").read_bytes()
    assert paper.startswith(b"%PDF-")
    # ISO 216: A4 is 210 mm x 297 mm; PDF's unit is 1/72 in.
    width, height = map(float, re.findall(rb"/MediaBox\s*\[0 0 ([\d.]+) ([\d.]+)\]", paper)[0])
    assert (width, height) == (pytest.approx(210 / 25.4 * 72, abs=1), pytest.approx(297 / 25.4 * 72, abs=1))


@pytest.mark.skipif(shutil.which("chromium") is None, reason="no Chromium here to look at the job sheet with")
def test_the_job_sheet_is_no_wider_than_a_phone(tmp_path: Path) -> None:
    _, sheet = run("check", "front-hub-bearing", "--demo", "--as", "html", *DAY)
    measure = (
        "<script>document.title = document.body.scrollWidth + ' of ' + document.documentElement.clientWidth</script>"
    )
    framed = f'<iframe width="390" height="800" srcdoc="{escape(sheet + measure)}"></iframe>'
    told = "<script>onload = () => { document.body.textContent = frames[0].document.title }</script>"
    shown = browser(framed + told, tmp_path, "--dump-dom").stdout.decode()
    wide, room = map(int, re.findall(r"(\d+) of (\d+)", shown)[0])
    assert 300 < room <= 390
    assert wide <= room
