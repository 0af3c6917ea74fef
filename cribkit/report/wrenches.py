"""Answers about torque wrenches: the list, what covers a torque, the picture."""

from __future__ import annotations

from textwrap import fill

from cribkit.desk.wrenches import Chart, Covering, Mark, Row
from cribkit.domain.torque import Coverage, Guard, Scale, Usable, Wrench
from cribkit.domain.torque.guard import narrowed
from cribkit.report.answer import Answer, Listing
from cribkit.report.forms import as_table


def listed(rows: tuple[Row, ...]) -> Answer:
    """`wrench list`: range, usable range, marks, accuracy, due date, state and place of each wrench."""
    return Answer(
        command="wrench list",
        ok=True,
        result=lambda: {"wrenches": [wrench_json(row) for row in rows]},
        listing=lambda: list_listing(rows),
        text=lambda width: as_table(short_listing(rows), width),
    )


def wrench_json(row: Row) -> dict[str, object]:
    """One wrench in the JSON contract."""
    wrench = row.wrench
    return {
        "tag": wrench.tag,
        "description": wrench.description,
        "mechanism": wrench.kind.name,
        "iso_6789": wrench.kind.iso,
        "scales": [
            {
                "unit": scale.unit.symbol,
                "low": scale.low,
                "high": scale.high,
                "graduation": scale.graduation or None,
                "usable_low": usable.low if usable else None,
                "usable_high": usable.high if usable else None,
            }
            for scale, usable in zip(wrench.scales, wrench.usable, strict=True)
        ],
        "accuracy_pct": round(100 * wrench.deviation, 6),
        "accuracy_stated": wrench.accuracy is not None,
        "drive": wrench.drive,
        "lever_mm": wrench.lever_mm,
        "two_way": wrench.two_way,
        "calibrated_on": wrench.calibrated_on,
        "due": wrench.due,
        "location": wrench.location,
        "out_to": list(wrench.loans),
        "ready": not row.reasons,
        "reasons": list(row.reasons),
        "why": row.why,
    }


def list_listing(rows: tuple[Row, ...]) -> Listing:
    """Every column, for csv and markdown."""
    columns = (
        "tag", "description", "mechanism", "range", "usable", "unit", "graduation", "second range", "accuracy %",
        "drive", "due", "state", "where", "why",
    )  # fmt: skip
    return Listing(columns, tuple(list_row(row) for row in rows), "No torque wrenches in the crib.")


def list_row(row: Row) -> tuple[object, ...]:
    """One wrench."""
    wrench, scale, usable = row.wrench, row.wrench.scales[0], row.wrench.usable[0]
    return (
        wrench.tag,
        wrench.description,
        wrench.kind.name,
        span(scale.low, scale.high),
        usable_text(usable),
        scale.unit.symbol,
        scale.graduation or None,
        "; ".join(scale_text(other) for other in wrench.scales[1:]),
        round(100 * wrench.deviation, 6),
        wrench.drive,
        wrench.due,
        row.state,
        place(wrench),
        row.why,
    )


def short_listing(rows: tuple[Row, ...]) -> Listing:
    """What fits on a terminal."""
    columns = ("tag", "kind", "usable range", "mark", "±%", "drive", "due", "where")
    return Listing(columns, tuple(short_row(row) for row in rows), "No torque wrenches in the crib.")


def short_row(row: Row) -> tuple[object, ...]:
    """One wrench in few columns: line ends where they read well, a line for each scale."""
    wrench = row.wrench
    pairs = tuple(zip(wrench.scales, wrench.usable, strict=True))
    away = place(wrench) if "out" in row.reasons else wrench.location
    return (
        wrench.tag,
        wrench.kind.name.removeprefix("screw").replace("-", "-\n", 1),
        "\n".join(f"{usable_text(part)} {scale.unit.symbol}" for scale, part in pairs),
        "\n".join(f"{scale.graduation:g}" if scale.graduation else "-" for scale in wrench.scales),
        f"{100 * wrench.deviation:.3g}",
        wrench.drive,
        wrench.due,
        "\n".join(text for text in (away, *(reason for reason in row.reasons if reason != "out")) if text),
    )


def span(low: float, high: float) -> str:
    """ "5-25", or one value."""
    return f"{low:.6g}" if low == high else f"{low:.6g}-{high:.6g}"


def usable_text(usable: Usable) -> str:
    """The usable range; a limited calibration may leave none."""
    return span(usable.low, usable.high) if usable else "none"


def scale_text(scale: Scale) -> str:
    """A scale in words."""
    return f"{span(scale.low, scale.high)} {scale.unit.symbol} by {scale.graduation:g}"


def place(wrench: Wrench) -> str:
    """Where it is: its shelf, or who has it."""
    return f"out: {', '.join(wrench.loans)}" if wrench.loans and wrench.on_hand < 1 else wrench.location


def covers(found: Covering) -> Answer:
    """`wrench covers`: best first, with the setting on the wrench's own scale."""
    return Answer(
        command="wrench covers",
        ok=found.covered,
        result=lambda: {
            "target_nm": found.spec.target_nm,
            "low_nm": found.spec.low_nm,
            "high_nm": found.spec.high_nm,
            "wrenches": [coverage_json(coverage) for coverage in found.coverages],
        },
        listing=lambda: covers_listing(found),
        text=lambda width: covers_text(found, width),
        problems=found.problems,
    )


def coverage_json(coverage: Coverage) -> dict[str, object]:
    """One wrench in the JSON contract."""
    return {
        "tag": coverage.tag,
        "covers": coverage.covers,
        "reasons": list(coverage.reasons),
        "setting": coverage.setting,
        "setting_unit": coverage.setting_unit or None,
        "applied_low_nm": coverage.applied_low_nm,
        "applied_high_nm": coverage.applied_high_nm,
        "position_pct": coverage.position_pct,
    }


def covers_listing(found: Covering) -> Listing:
    """Every wrench, for csv and markdown."""
    columns = (
        "tag", "covers", "reasons", "setting", "setting_unit", "applied_low_nm", "applied_high_nm", "position_pct",
        "uses_of_tolerance", "adapters", "due", "where", "why",
    )  # fmt: skip
    rows = tuple(
        (
            *coverage_json(coverage).values(),
            coverage.uses_of_tolerance,
            coverage.adapters,
            found.wrenches[coverage.tag].due,
            place(found.wrenches[coverage.tag]),
            "; ".join(coverage.why),
        )
        for coverage in found.coverages
    )
    return Listing(columns, rows, "No torque wrenches in the crib.")


def covers_text(found: Covering, width: int) -> str:
    """For a person: those that cover with their settings, then the others with the reason."""
    yes = tuple(one for one in found.coverages if one.covers)
    parts = [fill(headline(found), width)]
    if yes:
        parts.append(as_table(Listing(YES, tuple(yes_row(one, found) for one in yes)), width))
    far = {code: [one.tag for one in found.coverages if one.reasons == (code,)] for code in RANGE}
    near = tuple(one for one in found.coverages if not one.covers and one.reasons[0] not in RANGE)
    if near:
        rows = tuple((one.tag, ", ".join(one.reasons), "; ".join(one.why)) for one in near)
        parts.append(as_table(Listing(("not", "reasons", "why"), rows), width))
    far |= {"out of range, and more": both(found)}
    lines = [fill(f"{code}: {', '.join(tags)}", width, subsequent_indent="  ") for code, tags in far.items() if tags]
    parts += ["\n".join(lines)] if lines else []
    if not found.coverages:
        parts.append("No torque wrenches in the crib.")
    return "\n\n".join(parts)


YES = ("tag", "set to", "applies, N·m", "scale", "tolerance", "due", "where", "note")
RANGE = ("below-range", "above-range")


def both(found: Covering) -> list[str]:
    """The tags of wrenches out of range with a further reason."""
    return [one.tag for one in found.coverages if len(one.reasons) > 1 and one.reasons[0] in RANGE]


def headline(found: Covering) -> str:
    """The torque as it was understood, and the verdict."""
    spec = found.spec
    low, high = (None if one is None else f"{one:.4g}" for one in (spec.low_nm, spec.high_nm))
    band = f", {low or 'any'} to {high or 'any'} N·m" if low or high else ", no tolerance stated"
    guard = found.question.guard
    if guard and (low or high):
        low, high = (None if one is None else f"{one:.4g}" for one in kept(found, guard))
        band += f", with the guard {low or 'any'} to {high or 'any'}"
    count = sum(one.covers for one in found.coverages)
    verdict = f"{count} of {len(found.coverages)} wrenches cover it" if count else "No wrench covers it"
    return f"{spec.text}: {spec.target_nm:.4g} N·m{band}. {verdict} on {found.on.isoformat()}."


def kept(found: Covering, guard: Guard) -> tuple[float | None, float | None]:
    """What the guard leaves of the band."""
    spec = found.spec
    return narrowed(spec.low_nm, spec.target_nm, spec.high_nm, guard)


def yes_row(coverage: Coverage, found: Covering) -> tuple[object, ...]:
    """One wrench that covers."""
    wrench = found.wrenches[coverage.tag]
    adapters = f"{coverage.adapters} adapter" + ("s" if coverage.adapters > 1 else "") if coverage.adapters else ""
    used = coverage.uses_of_tolerance
    return (
        coverage.tag,
        f"{coverage.setting:.6g} {coverage.setting_unit}",
        f"{coverage.applied_low_nm:.4g}-{coverage.applied_high_nm:.4g}",
        f"{coverage.position_pct:.0f} %",
        f"uses {100 * used:.0f} %" if used else "",
        wrench.due,
        place(wrench),
        "; ".join([*([adapters] if adapters else []), *coverage.why]),
    )


def pictured(chart: Chart) -> Answer:
    """`wrench picture`: usable ranges on a logarithmic axis, with the torques of the procedures."""

    def text(width: int) -> str:
        from cribkit.report.picture import as_text

        return as_text(chart, width)

    def sheet() -> str:
        from cribkit.report.drawing import as_page

        return as_page(chart)

    return Answer(
        command="wrench picture",
        ok=all(mark.covered for mark in chart.marks),
        result=lambda: {
            "on": chart.on,
            "wrenches": [wrench_json(row) for row in chart.rows],
            "torques": [mark_json(mark) for mark in chart.marks],
        },
        listing=lambda: Listing(MARKS, tuple(tuple(mark_json(mark).values()) for mark in chart.marks), "No torques."),
        text=text,
        sheet=sheet,
    )


MARKS = ("procedure", "id", "torque", "target_nm", "low_nm", "high_nm", "covered", "why")


def mark_json(mark: Mark) -> dict[str, object]:
    """One torque on the picture."""
    return dict(
        zip(
            MARKS,
            (mark.procedure, mark.id, mark.text, mark.target_nm, mark.low_nm, mark.high_nm, mark.covered, mark.why),
            strict=True,
        )
    )
