"""What the movements add up to, worked out from the first to the last, and every rule that they break."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field

from cribkit.domain.problem import Problem
from cribkit.domain.stock.movement import Movement, MovementKind, digest
from cribkit.domain.stock.thousandths import whole

Key = tuple[str, str]  # tag, lot
LoanKey = tuple[str, str, str, str]  # tag, lot, holder, job


@dataclass(slots=True)
class Ledger:
    """Balances and loans after the movements seen so far, and what was wrong with them."""

    balances: dict[Key, tuple[int, int]] = field(default_factory=dict)  # inside, outside
    loans: dict[LoanKey, int] = field(default_factory=dict)
    problems: list[Problem] = field(default_factory=list)
    seen: dict[int, Movement] = field(default_factory=dict)  # by number, for corrections
    corrected: set[int] = field(default_factory=set)
    last: int = 0
    head: str = ""  # the last digest

    def apply(self, movement: Movement) -> None:
        """Take one more movement."""
        if not self.broken:
            self.check_chain(movement)
        self.check_correction(movement)
        self.check_sign(movement)
        self.move(movement)
        self.last, self.head = movement.id, movement.digest
        self.seen[movement.id] = movement

    @property
    def broken(self) -> bool:
        """Whether the chain is known to be broken: only its first broken row is named."""
        return any(problem.code == "chain-broken" for problem in self.problems)

    def check_chain(self, movement: Movement) -> None:
        """Numbers without a gap, and each digest follows from the one before."""
        if movement.id != self.last + 1:
            self.found(movement, "chain-broken", f"movement {self.last + 1} is missing before it")
        elif movement.digest != digest(self.head, movement):
            self.found(movement, "chain-broken", "it or the movement before it was changed behind the program's back")

    def check_correction(self, movement: Movement) -> None:
        """A correction takes back exactly one earlier movement, once."""
        if movement.corrects is None:
            return
        first = self.seen.get(movement.corrects)
        if first is None:
            self.found(movement, "corrects-nothing", f"it corrects movement {movement.corrects}, which is not there")
        elif mirror(first) != mirror(movement) or first.amount != -movement.amount:
            self.found(movement, "not-a-mirror", f"it is not the reverse of movement {movement.corrects}")
        elif movement.corrects in self.corrected:
            self.found(movement, "corrected-twice", f"movement {movement.corrects} was taken back before")
        self.corrected.add(movement.corrects)

    def check_sign(self, movement: Movement) -> None:
        """Only corrections and counts go below zero."""
        if movement.amount <= 0 and movement.corrects is None and movement.kind is not MovementKind.COUNT:
            self.found(movement, "bad-amount", f"its amount is {whole(movement.amount):g}")

    def move(self, movement: Movement) -> None:
        """Change balance and loan; what becomes negative was not there."""
        key = (movement.tag, movement.lot)
        inside, outside = self.balances.get(key, (0, 0))
        self.balances[key] = inside + movement.inside, outside + movement.outside
        if min(self.balances[key]) < 0 and min(inside, outside) >= 0:
            self.found(movement, "negative", f"it moves more of {movement.tag} than was there")
        if movement.outside:
            loan = (*key, movement.holder, movement.job)
            before = self.loans.pop(loan, 0)
            if before + movement.outside:
                self.loans[loan] = before + movement.outside
            if before + movement.outside < 0 <= before:
                self.found(movement, "no-issue", f"{movement.holder or 'nobody'} did not have so much of it")

    def found(self, movement: Movement, code: str, message: str) -> None:
        """Note a broken rule."""
        todo = "compare with the last backup; correct it with a movement, never in the file."
        self.problems.append(Problem(f"movement {movement.id}", code, message, todo))


def mirror(movement: Movement) -> tuple[object, ...]:
    """What a correction shares with the movement that it takes back."""
    return movement.kind, movement.tag, movement.lot, movement.holder, movement.job


def folded(movements: Iterable[Movement]) -> Ledger:
    """The ledger after these movements."""
    ledger = Ledger()
    for movement in movements:
        ledger.apply(movement)
    return ledger
