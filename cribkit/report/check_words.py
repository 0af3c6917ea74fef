"""What a check says of one need, in the words that the page, the sheet and Markdown share."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from cribkit.desk.results import Check, ConsumableLine, Line, Pick, Status, ToolLine, TorqueLine, optional
from cribkit.domain.torque import Coverage
from cribkit.report.forms import cell

WAIVED = "Not there, and the job can start without it"


def waived(check: Check) -> tuple[Line, ...]:
    """The needs that are not ready and do not block."""
    return tuple(line for line in check.lines if line.status is not Status.READY and optional(line))


def name(line: Line) -> str:
    """What the line is about, as the procedure says it."""
    match line:
        case ToolLine():
            return counted(line.need.count, line.need.need)
        case TorqueLine():
            return f"{counted(line.need.count, line.need.fastener)} at {line.spec.text}"
        case ConsumableLine():
            return f"{line.need.need}, {amount(line.needed, line.unit)}"


def counted(count: int, text: str) -> str:
    """ "4 x axle stand"; one thing goes without its count."""
    return f"{count} x {text}" if count != 1 else text


def amount(value: float, unit: str) -> str:
    """ "120 mL"; pieces go without a unit."""
    return cell(float(value)) if unit == "each" else f"{cell(float(value))} {unit}"


def verdict(check: Check) -> str:
    """READY or NOT READY, and how much blocks."""
    needs = sum(not optional(line) for line in check.lines)
    if check.ready:
        return f"READY: all {needs} needs are in the crib and fit for use"
    return f"NOT READY: {len(check.blocking)} of {needs} needs block the job"


def where(line: Line, many: bool) -> str:
    """Which procedure it belongs to, where the check has several."""
    return f"  [{line.procedure}]" if many else ""


def fastener(line: TorqueLine) -> str:
    """ "4 x cover bolts, 8 mm hex"."""
    return ", ".join(text for text in (counted(line.need.count, line.need.fastener), line.need.head) if text)


def stated(line: TorqueLine) -> str:
    """The torque as the procedure writes it, with its tolerance."""
    return f"{line.spec.text} ({line.need.tolerance})" if line.need.tolerance else line.spec.text


def described(pick: Pick) -> str:
    """The item's description, the member of a set to take, the lot."""
    member = f", the {pick.member} of it" if pick.member else ""
    lot = f", lot {pick.lot}" if pick.lot else ""
    expires = f", good through {pick.expires_on.isoformat()}" if pick.expires_on else ""
    return f"{pick.description}{member}{lot}{expires}"


def card_texts(line: TorqueLine) -> Iterator[str]:
    """What stands under a torque on the card, in the order of work."""
    need = line.need
    if need.thread_forming:
        yield "Thread-forming: start every screw by hand in its old thread before driving any."
    yield from settings(line)
    if line.reach:
        yield f"way: {way(line.reach)}"
    for tag, picks in line.other_ways:
        yield f"way of {tag}: {way(picks)}"
    if need.lubrication:
        yield f"thread: {need.lubrication}"
    if need.order:
        yield f"order: {need.order}"
    if need.replace:
        yield "new fasteners: these are used once only"
    if need.direction == "left-hand":
        yield "left-hand thread"
    yield from line.warnings
    if need.without_wrench:
        yield f"the procedure's own way without a torque wrench: {need.without_wrench} (not counted as covered)"


def way(picks: Iterable[Pick]) -> str:
    """ "adapter EX-014 > driver SK-102", from the wrench outwards."""
    return " > ".join(f"{pick.role} {pick.tag}" if pick.role else pick.tag for pick in picks)


def settings(line: TorqueLine) -> Iterator[str]:
    """Which wrench at which mark; for each step where there are steps."""
    if line.status is not Status.READY:
        yield f"NOT COVERED ({line.status.value}): {line.why}"
        if not line.steps:
            return
    if len(line.steps) > 1:
        for number, step in enumerate(line.steps, 1):
            yield f"{number}. {step.text}" + (f": {mark(step.coverage)}" if step.coverage else "")
    elif line.coverage:
        yield mark(line.coverage)


def mark(coverage: Coverage) -> str:
    """ "TW-02 set to 89 in-lb: applies 9.7 to 10.5 N·m"."""
    setting = f"{coverage.tag} set to {cell(coverage.setting)} {coverage.setting_unit}"
    if coverage.applied_low_nm is None or coverage.applied_high_nm is None:
        return setting
    return f"{setting}: applies {coverage.applied_low_nm:.3g} to {coverage.applied_high_nm:.3g} N·m"


def care(check: Check) -> Iterator[str]:
    """Cautions, open ports, parts to move over; each once."""
    seen: set[str] = set()
    for procedure in check.procedures:
        covers = [f"Cover at once and count back out: {text}." for text in procedure.covers]
        moves = [f"Move from the old part to the new: {text}." for text in procedure.moves]
        for text in (*procedure.cautions, *covers, *moves):
            if text not in seen:
                seen.add(text)
                yield text
    yield from check.notes


def trouble_row(line: Line, many: bool) -> tuple[str, ...]:
    """A need that is not ready."""
    return line.status.value, name(line) + where(line, many), line.why, line.next


def consumable_row(line: ConsumableLine, many: bool) -> tuple[str, ...]:
    """A consumable."""
    never = f" Never {', '.join(line.need.never)}." if line.need.never else ""
    taken = "; ".join(f"{pick.tag} {amount(pick.count, pick.unit)}" for pick in line.lots)
    return line.status.value, name(line) + where(line, many), taken + never
