"""Whatever is done to the wrenches, the check relies on one only if a plain model of its life says that it may.

The model keeps a list of what was done and walks through it; it shares no code with the program. It also says when a
wrench may be used, so that the test would notice a check that refuses everything.
"""

from __future__ import annotations

import datetime as dt
import shutil
import tempfile
from contextlib import ExitStack
from dataclasses import dataclass, field
from pathlib import Path

import pytest
from dateutil.relativedelta import relativedelta
from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, initialize, invariant, precondition, rule

from cribkit.desk.certificates import read_rows
from cribkit.desk.check import check
from cribkit.desk.ledger import Errand, give_back, issue
from cribkit.desk.recording import Posted, change_rules, changed, note_event, record, shop_rules, withdraw
from cribkit.desk.results import Status
from cribkit.domain.calibration.due import Policy, Start
from cribkit.domain.calibration.state import Happening
from cribkit.domain.problem import BadInput
from cribkit.domain.procedure import Procedure, read_procedure
from cribkit.store.opening import open_crib
from cribkit.store.posting import Entry
from tests.calibration.world import rows, work
from tests.store.small import make_crib

HEAD = "tag,description,mechanism,range_min,range_max,unit,graduation,accuracy_pct,drive,calibrated_on,interval_cycles"
WRENCHES = f"""{HEAD}
A,click torque wrench,click,10,100,N·m,0.5,4,3/8,2026-01-31,400
B,"click torque wrench, two-way",click,10,100,N·m,0.5,4,3/8,,5000
C,click torque wrench,click,10,100,N·m,0.5,4,3/8,2026-08-15,5000
"""
TWO_WAY = {"A": False, "B": True, "C": False}
# Torque id -> the lowest and highest setting at which ±4 % stays inside the band, and whether it turns left.
TORQUES = {"low": ("24-28 N·m", False), "middle": ("57-63 N·m", False), "left": ("85-95 N·m", True)}
SETTINGS = {"low": 26.0, "middle": 60.0, "left": 90.0}
JOB_TEXT = 'id = "try"\ntitle = "Try"\napplies_to = "Wren van"\nsource = "Invented for this test."\n' + "".join(
    f'\n[[torque]]\nid = "{name}"\nfastener = "{name}"\nspec = "{spec}"\n'
    + ('direction = "left-hand"\n' if left else "")
    for name, (spec, left) in TORQUES.items()
)
# What the laboratory finds: which of the points 10, 60 and 100 N·m are inside.
OUTCOMES = {"good": "ppp", "weak below": "fpp", "weak above": "ppf", "bad": "fff", "holed": "pfp"}
RANGES = {"good": (20.0, 100.0), "weak below": (60.0, 100.0), "weak above": (20.0, 60.0)}


@dataclass
class Said:
    """One thing that was done to a wrench, in the words of the model."""

    day: dt.date
    what: str  # "good", "weak below" ..., or an event
    number: str = ""
    both_ways: bool = False
    withdrawn: bool = False


@dataclass
class Plain:
    """The model of one wrench."""

    first: dt.date | None  # the calibration that it was loaded with
    two_way: bool
    most: int
    said: list[Said] = field(default_factory=list)
    work: list[tuple[dt.date, int]] = field(default_factory=list)
    outings: list[dt.date] = field(default_factory=list)
    out: bool = False

    def walk(self) -> tuple[bool, bool, tuple[float, float], bool, dt.date | None]:
        """Walk through its life by day: harmed?, stored?, usable range, left-hand too?, calibrated on."""
        harmed, stored, usable, left, last = False, False, (20.0, 100.0), self.two_way, self.first
        for one in sorted((s for s in self.said if not s.withdrawn), key=lambda s: s.day):
            if one.what in ("stored", "returned"):
                stored = one.what == "stored"
            elif one.what in ("dropped", "overloaded", "repaired"):
                if last is None or one.day >= last:
                    harmed = True
            elif last is None or one.day >= last:
                last, harmed = one.day, one.what not in RANGES
                usable = RANGES.get(one.what, (0.0, 0.0))
                left = self.two_way and one.both_ways and not harmed
        return harmed, stored, usable, left, last

    def may(self, setting: float, turns_left: bool, today: dt.date, policy: Policy, start: Start) -> bool:
        """Whether it may be used for a setting today."""
        harmed, stored, usable, left, last = self.walk()
        if harmed or stored or self.out or last is None or last > today:
            return False
        if not usable[0] <= setting <= usable[1] or (turns_left and not left):
            return False
        cycles = sum(count for day, count in self.work if day >= last)
        if cycles >= self.most:
            return False
        begins: dt.date | None = last
        if start is Start.FIRST_USE:
            begins = min((day for day in [*self.outings, *[d for d, _ in self.work]] if day >= last), default=None)
        if begins is None:
            return True
        ends = begins + relativedelta(months=12, day=31 if policy is Policy.END_OF_MONTH else None)
        return today <= ends


class Shop(RuleBasedStateMachine):
    """Random commands on a crib's file, and the model beside it."""

    @initialize()
    def begin(self) -> None:
        """A fresh crib."""
        self.stack = ExitStack()
        folder = Path(self.stack.enter_context(tempfile.TemporaryDirectory()))
        shutil.copy(template(), folder / "crib.db")
        self.crib = self.stack.enter_context(open_crib(folder / "crib.db", write=True))
        self.today = dt.date(2026, 11, 25)
        self.policy, self.start, self.count = Policy.SAME_DAY, Start.CALIBRATION, 0
        self.model = {
            "A": Plain(dt.date(2026, 1, 31), False, 400),
            "B": Plain(None, True, 5000),
            "C": Plain(dt.date(2026, 8, 15), False, 5000),
        }

    def teardown(self) -> None:
        """Close the crib."""
        if hasattr(self, "stack"):
            self.stack.close()

    @property
    def posted(self) -> Posted:
        """Today."""
        return Posted("R. Vale", self.today, f"{self.today}T09:00:00Z")

    @property
    def entry(self) -> Entry:
        """Today, for the ledger."""
        return Entry("R. Vale", self.today, f"{self.today}T09:00:00Z")

    @rule(
        tag=st.sampled_from("ABC"),
        outcome=st.sampled_from(sorted(OUTCOMES)),
        ago=st.sampled_from([0, 0, 0, 1, 40, 400]),
        both=st.booleans(),
        left=st.booleans(),
    )
    def calibrate(self, tag: str, outcome: str, ago: int, both: bool, left: bool) -> None:
        """A certificate comes in, perhaps late; with as-left readings the as-found ones do not decide."""
        self.count += 1
        number, day = f"N-{self.count}", self.today - dt.timedelta(days=ago)
        points = {
            t: t if p == "p" else str(float(t) * 0.9)
            for t, p in zip(("10", "60", "100"), OUTCOMES[outcome], strict=True)
        }
        found = {"60": "50"} if left else points
        paper = rows(tag, number, str(day), found, points if left else None)
        if both:
            paper += rows(tag, number, str(day), found, points if left else None, direction="ccw")
        entries, problems = read_rows(self.crib, paper, "c.csv")
        assert problems == ()
        record(self.crib, entries, self.posted)
        self.model[tag].said.append(Said(day, outcome, number, both))

    @rule(
        tag=st.sampled_from("ABC"),
        what=st.sampled_from(["dropped", "overloaded", "repaired", "stored", "returned"]),
        ago=st.sampled_from([0, 0, 1, 40]),
    )
    def happens(self, tag: str, what: str, ago: int) -> None:
        """Something happens to a wrench; a return that is refused changes nothing."""
        day = self.today - dt.timedelta(days=ago)
        if what in ("stored", "returned"):
            day = self.today
        try:
            note_event(self.crib, tag, Happening(what), self.posted, "", day)
        except BadInput:
            assert what in ("stored", "returned")
            return
        if what == "returned":
            *_, last = self.model[tag].walk()
            since = max(one.day for one in self.model[tag].said if one.what == "stored")
            assert last is not None
            assert last >= since, "returned from storage without a calibration"
        self.model[tag].said.append(Said(day, what))

    @rule(tag=st.sampled_from("ABC"), data=st.data())
    def takes_back(self, tag: str, data: st.DataObject) -> None:
        """A certificate turns out to be a mistake."""
        numbers = [one.number for one in self.model[tag].said if one.number and not one.withdrawn]
        if numbers:
            number = data.draw(st.sampled_from(numbers))
            withdraw(self.crib, tag, number, self.posted, "a mistake")
            next(one for one in self.model[tag].said if one.number == number).withdrawn = True

    @rule(tag=st.sampled_from("ABC"))
    def goes_out_or_comes_back(self, tag: str) -> None:
        """Somebody takes it, or brings it back."""
        if self.model[tag].out:
            give_back(self.crib, tag, Errand(), self.entry)
        else:
            issue(self.crib, tag, Errand(holder="I. Marsh", anyway="to try it"), self.entry)
            self.model[tag].outings.append(self.today)
        self.model[tag].out = not self.model[tag].out

    @rule(tag=st.sampled_from("ABC"), count=st.sampled_from([1, 150, 399]))
    def works(self, tag: str, count: int) -> None:
        """A job is done with it."""
        self.count += 1
        work(self.crib, f"J-{self.count}", tag, str(self.today), count=count)
        self.model[tag].work.append((self.today, count))

    @rule(days=st.sampled_from([1, 30, 150, 370]))
    def time_passes(self, days: int) -> None:
        """Days go by."""
        self.today += dt.timedelta(days=days)

    @rule(policy=st.sampled_from(list(Policy)), start=st.sampled_from(list(Start)))
    def rules_change(self, policy: Policy, start: Start) -> None:
        """The shop's written procedure changes."""
        change_rules(self.crib, changed(shop_rules(self.crib), policy, start, None), self.posted)
        self.policy, self.start = policy, start

    @invariant()
    @precondition(lambda self: hasattr(self, "crib"))
    def the_check_relies_on_exactly_what_may_be_used(self) -> None:
        """Each wrench covers a torque in the check if and only if the model allows it."""
        lines = check(self.crib, [JOB], self.today).torques
        for line in lines:
            setting, (_, left) = SETTINGS[line.need.id], TORQUES[line.need.id]
            fit = {t for t, m in self.model.items() if m.may(setting, left, self.today, self.policy, self.start)}
            covering = set("ABC") - {entry.tag for entry in line.rejected}
            assert covering == fit, (line.need.id, [(e.tag, e.why) for e in line.rejected])
            if line.status is Status.READY:
                assert line.coverage is not None
                assert line.coverage.tag in fit
            else:
                assert not fit


JOB: Procedure = read_procedure(JOB_TEXT, "try.toml")[0]  # type: ignore[assignment]  # it is sound: the tests below use it
TEMPLATE: list[Path] = []


def template() -> Path:
    """The crib's file as it is loaded, made once."""
    return TEMPLATE[0]


@pytest.fixture(scope="module", autouse=True)
def loaded(tmp_path_factory: pytest.TempPathFactory) -> None:
    """Load the wrenches once for all runs."""
    TEMPLATE[:] = [make_crib(tmp_path_factory.mktemp("shop"), torque_wrenches=WRENCHES, loans="")]


Shop.TestCase.settings = settings(max_examples=40, stateful_step_count=15, deadline=None)
TestNoSequenceMakesTheCheckRelyOnABadWrench = Shop.TestCase
