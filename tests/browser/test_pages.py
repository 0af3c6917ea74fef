"""Every sheet for paper and phones in a real browser: what is stored runs nowhere, and fits a phone and A4.

All names and values are invented; the hostile ones stand where people write freely.
"""

from __future__ import annotations

import re
import shutil
import subprocess
from html import escape
from html.parser import HTMLParser
from pathlib import Path

import pytest

from cribkit.desk.keeping import load_folder
from tests.cli.test_check import run
from tests.store.small import ENTRY

pytestmark = pytest.mark.skipif(shutil.which("chromium") is None, reason="no Chromium here to look at the sheets with")

EVIL = "<script>document.body.dataset.ran='1'</script><img src=x onerror=document.body.dataset.ran=1>"
LONG = "W" * 90  # a word that no column of a phone holds
DAY = ("--on", "2026-11-25")
SEED = {
    "tools.csv": f'tag,description,quantity,location,note\nS8,"8 mm socket, 1/4 drive",1,{EVIL} {LONG},{EVIL}\n',
    "torque_wrenches.csv": "tag,description,mechanism,range_min,range_max,unit,graduation,drive,calibrated_on,note\n"
    f"TW1,{EVIL} {LONG},click,5,25,N·m,0.25,1/4,2026-09-14,{EVIL}\n",
    "suppliers.csv": f"name,lead_days,note\nMarsh {EVIL},3,{EVIL}\n",
    "consumables.csv": "tag,description,unit,on_hand,min,max,supplier,lot,location\n"
    f"CL,wipes {EVIL} {LONG},each,5,10,20,Marsh {EVIL},{EVIL[:64]},{EVIL}\n",
}
PROCEDURE = f"""
id = "cover"
title = "Cover {EVIL}"
applies_to = "{EVIL} {LONG}"
revision = "{EVIL}"
source = "Invented. {EVIL}"
cautions = ["Engine cold. {EVIL} {LONG}"]
[[tool]]
need = "8 mm socket, 1/4 drive"
use = "{EVIL}"
[[torque]]
id = "bolts"
fastener = "cover bolts {EVIL}"
count = 4
head = "8 mm hex"
spec = "10 N·m"
tolerance = "10 %"
order = "{EVIL}"
[[torque]]
id = "nut"
fastener = "hub nut {EVIL} {LONG}"
spec = "500 N·m"
without_wrench = "{EVIL}"
"""
CERTIFICATE = (
    "tag,certificate,date,laboratory,device,phase,setting,reading,note\n"
    + f"TW1,C-1 {EVIL},2026-11-20,Bench {EVIL},{EVIL},as-found,5,5;5;5;5;5,{EVIL}\n"
    + "".join(f"TW1,C-1 {EVIL},,,,as-found,{at},{at};{at};{at};{at};{at},\n" for at in (15, 25))
)
SHEETS: dict[str, tuple[str, ...]] = {
    "job": ("check", "cover", "--as", "html", *DAY),
    "picture": ("wrench", "picture", "--as", "html", *DAY),
    "certificate": ("wrench", "sheet", "TW1"),
    "labels": ("wrench", "labels"),
    "restock": ("restock", "--as", "html", *DAY),
}


class Page(HTMLParser):
    """The elements of a page as the browser has them, and its words."""

    def __init__(self, text: str) -> None:
        super().__init__()
        self.tags: list[str] = []
        self.classes: list[str] = []
        self.attributes: set[str] = set()
        self.words = ""
        self.feed(text)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append(tag)
        self.attributes |= {name for name, _ in attrs}
        self.classes += [value or "" for name, value in attrs if name == "class"]

    def handle_data(self, data: str) -> None:
        self.words += data


@pytest.fixture(scope="module")
def sheets(tmp_path_factory: pytest.TempPathFactory) -> dict[str, str]:
    """Every sheet of a crib whose stored text means harm."""
    here = tmp_path_factory.mktemp("sheets")
    (here / "seed").mkdir()
    (here / "procedures").mkdir()
    for name, text in SEED.items():
        (here / "seed" / name).write_text(text, encoding="utf-8")
    (here / "procedures" / "cover.toml").write_text(PROCEDURE, encoding="utf-8")
    (here / "november.csv").write_text(CERTIFICATE, encoding="utf-8")
    with pytest.MonkeyPatch.context() as patch:
        patch.chdir(here)
        load_folder(here / "crib.db", here / "seed", ENTRY)
        assert run("wrench", "record", "--from", "november.csv", "--by", EVIL, *DAY)[0] == 0
        found = {name: run(*command)[1] for name, command in SHEETS.items()}
        assert run("order", "--by", "A. Keeper", "--to", "orders", *DAY)[0] == 0
        (order,) = (here / "orders").glob("*.html")
        return found | {"order": order.read_text(encoding="utf-8")}


def browser(page: str, folder: Path, *words: str) -> str:
    """A page in a real browser; what it wrote."""
    (folder / "page.html").write_text(page, encoding="utf-8")
    flags = ["--headless", "--no-sandbox", "--disable-gpu", f"--user-data-dir={folder / 'profile'}"]
    command = ["chromium", *flags, *words, (folder / "page.html").as_uri()]
    return subprocess.run(command, capture_output=True, check=True, timeout=90).stdout.decode()


def framed(sheets: dict[str, str], width: int, tell: str) -> str:
    """All sheets side by side in frames of one width; `tell` is a function of a frame's document, and what it says of
    each is the page's text."""
    frames = "".join(
        f'<iframe width="{width}" height="800" srcdoc="{escape(page)}"></iframe>' for page in sheets.values()
    )
    told = (
        f"<script>const tell = {tell};"
        "onload = () => { document.body.textContent = Array.from(frames, one => tell(one.document)).join(';') }"
        "</script>"
    )
    return frames + told


def answers(sheets: dict[str, str], folder: Path, tell: str, width: int = 390) -> dict[str, str]:
    """What `tell` said of each sheet."""
    said = Page(browser(framed(sheets, width, tell), folder, "--dump-dom")).words
    return dict(zip(sheets, said.strip().split(";"), strict=True))


def test_no_script_runs_from_stored_text(sheets: dict[str, str], tmp_path: Path) -> None:
    counted = "(page) => page.querySelectorAll('script, img, iframe, object').length + ' ' + page.body.dataset.ran"
    assert answers(sheets, tmp_path, counted) == dict.fromkeys(sheets, "0 undefined")
    shown = {name for name, page in sheets.items() if "&lt;script&gt;" in page}
    assert shown == {*sheets} - {"picture"}  # which shows tags, ids and torques only, none of them free text


def test_the_trap_itself_springs(sheets: dict[str, str], tmp_path: Path) -> None:
    page = sheets["job"].replace("&lt;", "<").replace("&gt;", ">").replace("&#x27;", "'")
    ran = answers({"job": page}, tmp_path, "(page) => page.body.dataset.ran")
    assert ran == {"job": "1"}


def test_every_sheet_is_no_wider_than_a_phone(sheets: dict[str, str], tmp_path: Path) -> None:
    wide = "(page) => page.documentElement.scrollWidth + ' of ' + page.documentElement.clientWidth"
    for name, said in answers(sheets, tmp_path, wide).items():
        width, room = map(int, said.split(" of "))
        assert 300 < room <= 390
        assert width <= room, f"{name} is {width} px wide on a phone of {room} px"


def test_the_job_sheet_has_boxes_to_tick_and_room_for_initials(sheets: dict[str, str], tmp_path: Path) -> None:
    page = Page(browser(sheets["job"], tmp_path, "--dump-dom"))
    assert page.classes.count("box") == 2 * 2  # out and back, for the socket and the wrench
    assert page.classes.count("initials") == 2
    assert "NOT READY: 1 of 3 needs block the job" in page.words
    size = (
        "(page) => [...page.querySelectorAll('.box, .initials')].every(one => one.getBoundingClientRect().width > 12)"
    )
    assert answers({"job": sheets["job"]}, tmp_path, size) == {"job": "true"}


@pytest.mark.parametrize("demo", [False, True], ids=["hostile words", "demo"])
def test_the_picture_prints_on_one_sheet_of_a4(sheets: dict[str, str], tmp_path: Path, demo: bool) -> None:
    page = run("wrench", "picture", "--demo", "--as", "html", *DAY)[1] if demo else sheets["picture"]
    browser(page, tmp_path, "--no-pdf-header-footer", f"--print-to-pdf={tmp_path / 'picture.pdf'}")
    paper = (tmp_path / "picture.pdf").read_bytes()
    assert len(re.findall(rb"/Type\s*/Page\b", paper)) == 1
    # ISO 216: A4 is 210 mm x 297 mm; PDF's unit is 1/72 in.
    size = sorted(map(float, re.findall(rb"/MediaBox\s*\[0 0 ([\d.]+) ([\d.]+)\]", paper)[0]))
    assert size == [pytest.approx(210 / 25.4 * 72, abs=1), pytest.approx(297 / 25.4 * 72, abs=1)]
