"""A person's decision that an item serves a need: made, listed, withdrawn."""

from __future__ import annotations

from cribkit.domain.problem import BadInput
from cribkit.domain.stock.item import Item, Kind
from cribkit.domain.wording import judge, read
from cribkit.store.crib import Crib


def confirm(crib: Crib, text: str, tag: str, by: str, at: str, anyway: str = "") -> None:
    """Keep the decision, made at a time in UTC. Against a hard attribute it needs a reason, which every report that
    rests on it shows."""
    item = crib.must_have(tag)
    against = objection(text, item)
    if against and not anyway:
        raise BadInput.of(
            "against-attribute",
            f'{item.tag} ({item.description}) does not agree with "{text}": {against}',
            "choose another item, or give --anyway REASON if you take responsibility.",
            source=item.tag,
        )
    with crib.posting():
        crib.confirm(text, item.tag, by, at, anyway if against else "")


def objection(text: str, item: Item) -> str:
    """Why the item can not serve the need by its description; "" where only a person's word was missing."""
    kind = "consumable" if item.kind is Kind.CONSUMABLE else "tool"
    judgement = judge(read(text, kind), item.meaning)
    return (judgement.why or "its description says something else") if judgement.status == "none" else ""


def withdraw(crib: Crib, text: str, tag: str, by: str, at: str) -> None:
    """Take a decision back; the record of it stays."""
    with crib.posting():
        if not crib.withdraw(text, crib.must_have(tag).tag, by, at):
            raise BadInput.of(
                "no-confirmation", f'there is no confirmation of "{text}" for {tag}', "see `cribkit confirm`."
            )
