"""The shape of a procedure's TOML, as pydantic models: strict, unknown keys forbidden, every error reported at once.

pydantic takes about 60 ms to import: only the reader imports this module, when a file is not in the cache.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Callable
from typing import Annotated, Any

from pydantic import AfterValidator, BaseModel, ConfigDict, Field
from pydantic_core import PydanticCustomError

from cribkit.domain.problem import BadInput
from cribkit.domain.procedure.model import LEFT_HAND, RIGHT_HAND
from cribkit.domain.quantity import parse_amount, parse_angle_deg, parse_length_mm

IDENTITY = re.compile(r"[^\W_][\w.-]{0,63}\Z")


def fault(code: str, message: str, todo: str) -> PydanticCustomError:
    """An error that carries our own code, message and next step through pydantic."""
    return PydanticCustomError("ours", "ours", {"code": code, "message": message, "todo": todo})


def tidy(text: str) -> str:
    """Single spaces; empty text and control characters (they could command a terminal) are refused."""
    text = " ".join(text.split())
    if not text:
        raise fault("empty", "the text is empty", "write it, or leave the key out.")
    if any(unicodedata.category(letter) in ("Cc", "Cf", "Cs") for letter in text):
        raise fault("control-character", "the text holds a control character", "write plain letters.")
    return text


def identity(text: str) -> str:
    """A name for programs and file names."""
    if not IDENTITY.match(text):
        raise fault("bad-id", f"{text[:40]!r} is not an id", "use letters, digits, '-', '_' and '.', 64 at most.")
    return text


def direction(text: str) -> str:
    """Which way the wrench turns to tighten."""
    if text not in (RIGHT_HAND, LEFT_HAND):
        raise fault("bad-direction", f"{text[:40]!r} is not a direction", f'write "{RIGHT_HAND}" or "{LEFT_HAND}".')
    return text


def readable(reader: Callable[[str], object]) -> AfterValidator:
    """The text is kept; a quantity's reader has to be able to read it."""

    def check(text: str) -> str:
        try:
            reader(text)
        except BadInput as error:
            first = error.problems[0]
            raise fault(first.code, first.message, first.next) from None
        return text

    return AfterValidator(check)


Text = Annotated[str, Field(max_length=1000), AfterValidator(tidy)]
Identity = Annotated[Text, AfterValidator(identity)]
Direction = Annotated[Text, AfterValidator(direction)]
AmountText = Annotated[Text, readable(parse_amount)]
Length = Annotated[Text, readable(parse_length_mm)]
Angle = Annotated[Text, readable(parse_angle_deg)]
Count = Annotated[int, Field(ge=1, le=1000)]


class Strict(BaseModel):
    """No unknown key, no silent conversion."""

    model_config = ConfigDict(extra="forbid", strict=True)


class ToolTable(Strict):
    """[[tool]]"""

    need: Text
    count: Count = 1
    use: Text = ""
    instead: list[Text] = []
    optional: bool = False


class ReachTable(Strict):
    """reach = { ... }"""

    adapter: Text = ""
    offset: Length = ""
    angle: Angle = "0°"
    extension: Length = ""
    joint: bool = False


class TorqueTable(Strict):
    """[[torque]]; spec, tolerance and steps are read together, by the torque room."""

    id: Identity
    fastener: Text
    spec: Text
    count: Count = 1
    head: Text = ""
    tolerance: Text = ""
    steps: list[Text] = []
    order: Text = ""
    reach: ReachTable | None = None
    lubrication: Text = ""
    direction: Direction = RIGHT_HAND
    thread_forming: bool = False
    replace: bool = False
    without_wrench: Text = ""


class ConsumableTable(Strict):
    """[[consumable]]"""

    need: Text
    amount: AmountText
    never: list[Text] = []
    use: Text = ""
    optional: bool = False


class ProcedureTable(Strict):
    """The top of the file."""

    id: Identity
    title: Text
    applies_to: Text
    source: Text
    revision: Text = ""
    minutes: Annotated[int, Field(ge=1, le=100_000)] = 1
    cautions: list[Text] = []
    covers: list[Text] = []
    moves: list[Text] = []
    tool: list[Any] = []  # each table is validated by itself, so that one bad table does not hide the others
    torque: list[Any] = []
    consumable: list[Any] = []
