"""Random sequences of all postings, against a plain model of who has what. Refusals are predicted too."""

from __future__ import annotations

import shutil
import tempfile
from collections import Counter
from contextlib import ExitStack
from pathlib import Path

import pytest
from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, invariant, precondition, rule

from cribkit.desk.closing import Said, close
from cribkit.desk.counting import Counted, count
from cribkit.desk.ledger import Arrival, Errand, give_back, issue, receive, scrap
from cribkit.desk.missing import find_again, lose
from cribkit.desk.pulling import Order, pull
from cribkit.desk.undoing import undo
from cribkit.desk.whereabouts import out
from cribkit.domain.problem import BadInput
from cribkit.store.audit import audit
from cribkit.store.opening import open_crib
from cribkit.store.posting import Entry
from tests.desk.world import DAY, consumable, crib_of, job, tool

ENTRY = Entry("M. Ashby", DAY, "2026-11-25T09:00:00Z")
TOOLS = "S8,SKT 1/4DR 8MM 6PT,2,A1,ok,,\nR1,ratchet 1/4 drive,1,A1,ok,,"
STUFF = "CL,throttle body cleaner 400 ml,mL,400,1,L1,2027-01,C1,sensor-safe\nCL,throttle body cleaner 400 ml,mL,400,1,L2,2027-06,C1,sensor-safe"  # noqa: E501 - rows of a file
PROCEDURE = job(tool("8 mm socket, 1/4 drive") + consumable("throttle body cleaner", "120 mL"))
LOTS = {"S8": ("",), "R1": ("",), "CL": ("L1", "L2")}  # in the order in which they expire

tags = st.sampled_from(sorted(LOTS))
lots = st.sampled_from(["L1", "L2"])
people = st.sampled_from(["R. Holm", "J. Sedge"])
amounts = st.integers(1, 3)


def said(tag: str, number: int) -> str:
    """So many pieces, or as many times 100 mL."""
    return f"{number * 100} mL" if tag == "CL" else str(number)


def units(tag: str, number: int) -> int:
    """The same in the model's units."""
    return number * 100 if tag == "CL" else number


class Desk(RuleBasedStateMachine):
    """The crib's counter, and a model of it: plain sums, no SQL."""

    def __init__(self) -> None:
        super().__init__()
        self.folder = Path(tempfile.mkdtemp(prefix="cribkit-machine-"))
        with crib_of(self.folder, tools=TOOLS, consumables=STUFF):
            pass
        self.stack = ExitStack()
        self.open()
        self.inside = Counter({("S8", ""): 2, ("R1", ""): 1, ("CL", "L1"): 400, ("CL", "L2"): 400})
        self.out: Counter[tuple[str, str, str, str]] = Counter()  # tag, lot, holder, job
        self.posted: dict[int, tuple[str, str, str, str, int, int]] = {}  # number -> key, change inside, change out
        self.taken_back: set[int] = set()
        self.lost: list[int] = []
        self.jobs: dict[str, str] = {}  # name -> state
        self.missing: Counter[tuple[str, str, str]] = Counter()  # job, tag, lot

    def open(self) -> None:
        """Open the file as the next command does."""
        self.crib = self.stack.enter_context(open_crib(self.folder / "crib.db", write=True))

    def teardown(self) -> None:
        """Every sequence ends with a sound crib."""
        assert audit(self.crib).problems == ()
        self.stack.close()
        shutil.rmtree(self.folder)

    def noted(self, key: tuple[str, str, str, str], inside: int, outside: int, number: int) -> None:
        """Change the model."""
        self.inside[key[:2]] += inside
        self.out[key] += outside
        self.posted[number] = (*key, inside, outside)

    def take(self, tag: str, wanted: int) -> list[tuple[str, int]] | None:
        """Lots first expired first out; None where there is not enough."""
        found = []
        for lot in LOTS[tag]:
            part = min(wanted, self.inside[tag, lot])
            if part:
                found.append((lot, part))
                wanted -= part
        return None if wanted else found

    def loans(self, tag: str, holder: str = "", name: str = "") -> list[tuple[str, str, str, str]]:
        """Who has it."""
        keys = [key for key, number in self.out.items() if number and key[0] == tag]
        return [key for key in keys if holder in ("", key[2]) and name in ("", key[3])]

    @rule(tag=tags, number=amounts, lot=lots)
    def receive(self, tag: str, number: int, lot: str) -> None:
        lot = lot if tag == "CL" else ""
        done = receive(self.crib, tag, Arrival(said(tag, number), lot or None), ENTRY)
        self.noted((tag, lot, "", ""), units(tag, number), 0, done.movements[0].id)

    @rule(tag=tags, number=amounts, holder=people)
    def issue(self, tag: str, number: int, holder: str) -> None:
        chosen = self.take(tag, units(tag, number))
        errand = Errand(said(tag, number), holder)
        if chosen is None:
            with pytest.raises(BadInput):
                issue(self.crib, tag, errand, ENTRY)
            return
        done = issue(self.crib, tag, errand, ENTRY)
        for (lot, part), movement in zip(chosen, done.movements, strict=True):
            self.noted((tag, lot, holder, ""), -part, part, movement.id)

    @rule(tag=tags, number=amounts, holder=people, use=st.booleans())
    def give_back(self, tag: str, number: int, holder: str, use: bool) -> None:
        errand = Errand(said(tag, number), holder, use=use)
        mine = sorted(self.loans(tag, holder), key=lambda key: key[1], reverse=True)
        left = units(tag, number)
        if not mine or len({key[3] for key in mine}) > 1 or sum(self.out[key] for key in mine) < left:
            with pytest.raises(BadInput):
                give_back(self.crib, tag, errand, ENTRY)
            return
        done = give_back(self.crib, tag, errand, ENTRY)
        numbers = iter(done.movements)
        rest = {}
        for key in mine:
            part = min(left, self.out[key])
            left -= part
            rest[key] = self.out[key] - part
            if part:
                self.noted(key, part, -part, next(numbers).id)
        for key, part in rest.items():
            if use and part:
                self.noted(key, 0, -part, next(numbers).id)
        assert next(numbers, None) is None

    @rule(tag=tags, number=amounts)
    def scrap(self, tag: str, number: int) -> None:
        chosen = self.take(tag, units(tag, number))
        errand = Errand(said(tag, number), note="worn")
        if chosen is None:
            with pytest.raises(BadInput):
                scrap(self.crib, tag, errand, ENTRY)
            return
        done = scrap(self.crib, tag, errand, ENTRY)
        for (lot, part), movement in zip(chosen, done.movements, strict=True):
            self.noted((tag, lot, "", ""), -part, 0, movement.id)

    @rule(tag=tags, number=st.integers(0, 4), lot=lots, do_post=st.booleans())
    def count(self, tag: str, number: int, lot: str, do_post: bool) -> None:
        lot = lot if tag == "CL" else ""
        (line,) = count(self.crib, [Counted("", tag, said(tag, number), lot)], ENTRY, do_post=do_post).lines
        change = units(tag, number) - self.inside[tag, lot]
        assert line.change == change * 1000
        if do_post and change:
            assert line.movement is not None
            self.noted((tag, lot, "", ""), change, 0, line.movement)

    @rule(tag=tags, holder=people)
    def lose(self, tag: str, holder: str) -> None:
        mine = self.loans(tag, holder)
        errand = Errand(holder=holder, note="gone")
        if not mine or len({key[3] for key in mine}) > 1:
            with pytest.raises(BadInput):
                lose(self.crib, tag, errand, ENTRY)
            return
        for movement in lose(self.crib, tag, errand, ENTRY).movements:
            key = (tag, movement.lot, holder, movement.job)
            assert movement.amount == self.out[key] * 1000
            self.noted(key, 0, -self.out[key], movement.id)
            self.lost.append(movement.id)
            self.settle(movement.job, tag, movement.lot)

    @rule(tag=tags)
    def find_again(self, tag: str) -> None:
        mine = self.loans(tag)
        gone = [number for number in self.lost if self.posted[number][0] == tag and number not in self.taken_back]
        matters = {key[3] or key[2] for key in [*mine, *(self.posted[number] for number in gone)]}
        if len({key[2:] for key in mine}) > 1 or len(matters) != 1:
            with pytest.raises(BadInput):
                find_again(self.crib, tag, Errand(), ENTRY)
            return
        done = find_again(self.crib, tag, Errand(), ENTRY)
        if mine:
            for movement in done.movements:
                key = (tag, movement.lot, movement.holder, movement.job)
                self.noted(key, self.out[key], -self.out[key], movement.id)
                self.settle(movement.job, tag, movement.lot)
            return
        last = gone[-1]
        *key, _, outside = self.posted[last]
        self.taken_back.add(last)
        self.inside[key[0], key[1]] += -outside
        self.posted[done.movements[1].id] = (key[0], key[1], key[2], key[3], -outside, outside)
        self.posted[done.movements[0].id] = (key[0], key[1], key[2], key[3], 0, -outside)
        self.taken_back.add(done.movements[0].id)  # a correction is not taken back

    def settle(self, name: str, tag: str, lot: str) -> None:
        """What a job was held for is accounted for."""
        self.missing.pop((name, tag, lot), None)
        if self.jobs.get(name) == "held" and not any(key[0] == name for key in self.missing):
            self.jobs[name] = "closed"

    @precondition(lambda self: self.posted)
    @rule(data=st.data())
    def undo(self, data: st.DataObject) -> None:
        number = data.draw(st.sampled_from(sorted(self.posted)))
        tag, lot, holder, name, inside, outside = self.posted[number]
        settled = name in self.jobs and self.jobs[name] != "open" and number in self.settling()
        fits = self.inside[tag, lot] >= inside and self.out[tag, lot, holder, name] >= outside
        if number in self.taken_back or not fits or settled:
            with pytest.raises(BadInput):
                undo(self.crib, number, ENTRY, "mistake")
            return
        done = undo(self.crib, number, ENTRY, "mistake")
        self.noted((tag, lot, holder, name), -inside, -outside, done.movements[0].id)
        self.taken_back |= {number, done.movements[0].id}

    def settling(self) -> set[int]:
        """Movements that settled what a job was held for."""
        rows = self.crib.connection.execute(
            "SELECT movement.id FROM movement "
            "JOIN job_hold ON job_hold.job = movement.job AND job_hold.tag = movement.tag "
            "WHERE kind IN ('lost', 'found') AND settled IS NOT NULL"
        )
        return {number for (number,) in rows}

    @rule(name=st.sampled_from(["wren-1", "wren-2", "tern-1"]), holder=people)
    def pull(self, name: str, holder: str) -> None:
        entry = Entry(holder, DAY, ENTRY.at)
        order = Order((PROCEDURE,), name)
        if name in self.jobs:
            with pytest.raises(BadInput):
                pull(self.crib, order, entry)
            return
        socket, cleaner = self.take("S8", 1), self.take("CL", 120)
        done = pull(self.crib, order, entry)
        assert (done.posted is not None) == (socket is not None and cleaner is not None)
        if done.posted is None or socket is None or cleaner is None:
            return
        self.jobs[name] = "open"
        chosen = {("S8", lot): part for lot, part in socket} | {("CL", lot): part for lot, part in cleaner}
        for movement in done.posted.movements:
            part = chosen.pop((movement.tag, movement.lot))
            self.noted((movement.tag, movement.lot, holder, name), -part, part, movement.id)
        assert chosen == {}

    @precondition(lambda self: "open" in self.jobs.values())
    @rule(data=st.data(), missing=st.booleans(), used=st.integers(0, 120))
    def close(self, data: st.DataObject, missing: bool, used: int) -> None:
        name = data.draw(st.sampled_from(sorted(key for key, state in self.jobs.items() if state == "open")))
        mine = sorted(key for key, number in self.out.items() if number and key[3] == name)
        there = {key[0] for key in mine}
        stuff = sum(self.out[key] for key in mine if key[0] == "CL")
        words = Said(
            missing={"S8": ""} if missing and "S8" in there else {},
            used={"CL": f"{min(used, stuff)} mL"} if stuff else {},
        )
        done = close(self.crib, name, words, ENTRY)
        for movement in done.posted.movements:
            key = (movement.tag, movement.lot, movement.holder, movement.job)
            part = movement.amount // 1000
            self.noted(key, part if movement.kind == "return" else 0, -part, movement.id)
        left = sorted(key for key, number in self.out.items() if number and key[3] == name)
        assert {key[0] for key in left} == set(words.missing)
        assert sum(m.amount for m in done.posted.movements if m.kind == "use") == min(used, stuff) * 1000
        for key in left:
            self.missing[name, key[0], key[1]] = self.out[key]
        self.jobs[name] = "held" if left else "closed"
        assert done.job.state == self.jobs[name]

    @rule()
    def open_again(self) -> None:
        self.stack.close()
        self.open()

    @invariant()
    def the_crib_says_what_the_model_says(self) -> None:
        rows = self.crib.connection.execute("SELECT tag, lot, inside, outside FROM balance")
        sums = {key: (self.inside[key] * 1000, self.of(key) * 1000) for key in self.inside}
        assert {(tag, lot): (a, b) for tag, lot, a, b in rows if a or b} == {
            key: v for key, v in sums.items() if any(v)
        }
        loans = [line.loan for line in out(self.crib, DAY)]
        assert {(one.tag, one.lot, one.holder, one.job): one.amount for one in loans} == {
            key: number * 1000 for key, number in self.out.items() if number
        }
        states = self.crib.connection.execute("SELECT job, state FROM job")
        assert dict(states.fetchall()) == self.jobs

    def of(self, key: tuple[str, str]) -> int:
        """How much of a lot is out."""
        return sum(number for loan, number in self.out.items() if loan[:2] == key)


TestTheCounter = Desk.TestCase
TestTheCounter.settings = settings(max_examples=15, stateful_step_count=25, deadline=None)
