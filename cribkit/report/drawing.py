"""The picture of torque ranges as SVG on one sheet of paper.

Shape says everything that colour says: usable ranges are filled bars, the others hatched and dashed; covered torques
are rings, the others crosses with a letter. The colours are blue and vermilion of a palette that people with the
common kinds of colour blindness can tell apart (Okabe and Ito, from memory).
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from cribkit.desk.wrenches import Chart, Mark, Row
from cribkit.report.axis import Axis, axis_for
from cribkit.report.paper import Markup, html, page, paragraph, table
from cribkit.report.picture import ends, letters

WIDTH, LEFT, RIGHT, TOP = 1000, 190, 18, 34
LINE = 17  # height of one wrench
LANE = 13  # height of one row of torques
APART = 12  # marks nearer than this go on different rows

STYLE = """
body { max-width: 70rem; }
svg { width: 100%; height: auto; font: 11px system-ui, sans-serif; }
.tick { stroke: #999; stroke-width: .6; } .faint { stroke: #ccc; stroke-width: .5; }
.scale { stroke: #333; stroke-width: 1; } .usable { fill: #0072B2; stroke: #000; stroke-width: .8; }
.unusable { fill: url(#hatch); stroke: #333; stroke-width: 1; stroke-dasharray: 4 2; }
.ring { fill: #fff; stroke: #0072B2; stroke-width: 2; } .cross { stroke: #D55E00; stroke-width: 3; }
.band { stroke: #0072B2; stroke-width: 2; } .openband { stroke: #D55E00; stroke-width: 2; }
.guide { stroke: #D55E00; stroke-width: .8; stroke-dasharray: 2 3; } .letter { font-weight: bold; }
.small td, .small th { padding: .1rem .4rem; font-size: .85rem; }
@media print { @page { size: A4 landscape; margin: 9mm; } body { font-size: 8.5pt; }
  h1 { font-size: 13pt; } .small td, .small th { font-size: 7.5pt; padding: 0 .3rem; } p { margin: .25rem 0; }
  svg { max-height: 118mm; } .caution { font-size: 7.5pt; } }
"""
HATCH = (
    '<defs><pattern id="hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">'
    '<rect width="6" height="6" fill="#fff"/><line x1="0" y1="0" x2="0" y2="6" stroke="#555" stroke-width="1.6"/>'
    "</pattern></defs>"
)


def as_page(chart: Chart) -> str:
    """The whole page: picture, key, and the torques that are not covered."""
    open_ones = [mark for mark in chart.marks if not mark.covered]
    title = f"Torque ranges on {chart.on.isoformat()}"
    said = (
        f"{len(open_ones)} of {len(chart.marks)} torques of the procedures are not covered by a wrench that is ready."
    )
    parts = [f"<h1>{html(title)}</h1>", paragraph(said), svg(chart), *missing(chart)]
    return page(title, parts, STYLE)


def missing(chart: Chart) -> Iterator[str]:
    """The table of torques that are not covered."""
    names = letters(chart.marks)
    if names:
        rows = [
            (
                name,
                chart.marks[at].text,
                f"{chart.marks[at].target_nm:.4g}",
                where(chart.marks[at]),
                chart.marks[at].why,
            )
            for at, name in names.items()
        ]
        yield Markup(f'<div class="small">{table(("", "torque", "N·m", "where", "nearest wrench"), rows)}</div>')


def where(mark: Mark) -> str:
    """The procedure and its fastener."""
    return f"{mark.procedure} {mark.id}"


def svg(chart: Chart) -> Markup:
    """The picture."""
    axis = axis_for(ends(chart), WIDTH - LEFT - RIGHT)
    names = letters(chart.marks)
    bottom = TOP + LINE * len(chart.rows)
    covered = lanes([(at, mark) for at, mark in enumerate(chart.marks) if mark.covered], axis)
    open_ones = lanes([(at, mark) for at, mark in enumerate(chart.marks) if not mark.covered], axis)
    first, second = bottom + 16, bottom + 30 + LANE * count(covered)
    height = second + LANE * count(open_ones) + 38
    parts = [
        *grid(axis, height - 34),
        *(text for at, row in enumerate(chart.rows) for text in bar(row, axis, TOP + LINE * at)),
        label("torques covered", first + 8),
        *(
            text
            for at, mark in enumerate(chart.marks)
            if mark.covered
            for text in ring(mark, axis, first + LANE * covered[at])
        ),
        label("torques not covered", second + 8),
        *(
            text
            for at, mark in enumerate(chart.marks)
            if not mark.covered
            for text in cross(mark, names[at], axis, second + LANE * open_ones[at])
        ),
        *key(height - 12),
    ]
    head = f'<svg viewBox="0 0 {WIDTH} {height}" role="img" aria-label="Usable ranges of the torque wrenches">'
    return Markup(f"{head}{HATCH}{''.join(parts)}</svg>")


def count(places: dict[int, int]) -> int:
    """How many lanes are used, at least one."""
    return max(places.values(), default=0) + 1


def lanes(marks: Sequence[tuple[int, Mark]], axis: Axis) -> dict[int, int]:
    """A lane for each mark, so that no two touch."""
    ends_at: list[float] = []
    found = {}
    for at, mark in marks:
        left, right = axis.at(mark.low_nm), max(axis.at(mark.high_nm), axis.at(mark.target_nm) + APART)
        left = min(left, axis.at(mark.target_nm) - APART / 2)
        lane = next((n for n, end in enumerate(ends_at) if end <= left), len(ends_at))
        ends_at[lane : lane + 1] = [right + 4]
        found[at] = lane
    return found


def grid(axis: Axis, bottom: float) -> Iterator[str]:
    """Lines at the round values, with their numbers on top."""
    for value in axis.ticks():
        x = LEFT + axis.at(value)
        kind = "tick" if f"{value:g}".strip("0.").startswith("1") else "faint"
        yield f'<line class="{kind}" x1="{x:.1f}" x2="{x:.1f}" y1="{TOP - 8}" y2="{bottom}"/>'
        yield f'<text x="{x:.1f}" y="{TOP - 13}" text-anchor="middle">{value:g}</text>'
    yield f'<text x="{LEFT - 24}" y="{TOP - 13}" text-anchor="end">N·m</text>'


def label(text: str, y: float) -> str:
    """A name on the left."""
    return f'<text x="{LEFT - 10}" y="{y:.1f}" text-anchor="end">{html(text)}</text>'


def bar(row: Row, axis: Axis, y: float) -> Iterator[str]:
    """One wrench: a thin line for its scale, a bar for the usable part."""
    scale, usable = row.wrench.scales[0], row.wrench.usable[0]
    nm = scale.unit.nm
    name = f"{row.wrench.tag} {', '.join(row.reasons)}".strip()
    yield label(name[:30], y + 11)
    left, right = LEFT + axis.at(scale.low * nm), LEFT + axis.at(scale.high * nm)
    yield f'<line class="scale" x1="{left:.1f}" x2="{right:.1f}" y1="{y + 7:.1f}" y2="{y + 7:.1f}"/>'
    if usable:
        x, end = LEFT + axis.at(usable.low * nm), LEFT + axis.at(usable.high * nm)
        kind = "unusable" if row.reasons else "usable"
        about = f"{row.wrench.tag}: {usable.low:g} to {usable.high:g} {scale.unit.symbol} {row.why}".strip()
        x, width = (x - 2, 4.0) if end - x < 4 else (x, end - x)
        yield (
            f'<rect class="{kind}" x="{x:.1f}" y="{y + 2:.1f}" width="{width:.1f}" height="{LINE - 7}" rx="2">'
            f"<title>{html(about)}</title></rect>"
        )


def ring(mark: Mark, axis: Axis, y: float) -> Iterator[str]:
    """A covered torque: a ring on its band."""
    yield band(mark, axis, y, "band")
    x = LEFT + axis.at(mark.target_nm)
    yield f'<circle class="ring" cx="{x:.1f}" cy="{y + 5:.1f}" r="4">{about(mark)}</circle>'


def cross(mark: Mark, name: str, axis: Axis, y: float) -> Iterator[str]:
    """A torque that is not covered: a cross with its letter, and a dotted line up through the ranges."""
    x = LEFT + axis.at(mark.target_nm)
    yield f'<line class="guide" x1="{x:.1f}" x2="{x:.1f}" y1="{TOP - 8}" y2="{y:.1f}"/>'
    yield band(mark, axis, y, "openband")
    yield (
        f'<path class="cross" d="M{x - 4:.1f} {y + 1:.1f} l8 8 m0 -8 l-8 8">{about(mark)}</path>'
        f'<text class="letter" x="{x + 6:.1f}" y="{y + 9:.1f}">{html(name)}</text>'
    )


def band(mark: Mark, axis: Axis, y: float, kind: str) -> str:
    """The tolerance as a line."""
    left, right = LEFT + axis.at(mark.low_nm), LEFT + axis.at(mark.high_nm)
    return f'<line class="{kind}" x1="{left:.1f}" x2="{right:.1f}" y1="{y + 5:.1f}" y2="{y + 5:.1f}"/>'


def about(mark: Mark) -> str:
    """What a pointer on the mark tells."""
    return f"<title>{html(f'{mark.text}: {where(mark)} {mark.why}'.strip())}</title>"


def key(y: float) -> Iterator[str]:
    """What the shapes mean."""
    yield f'<rect class="usable" x="10" y="{y - 9:.1f}" width="34" height="10" rx="2"/>'
    yield f'<text x="50" y="{y:.1f}">usable range, ready today</text>'
    yield f'<rect class="unusable" x="215" y="{y - 9:.1f}" width="34" height="10" rx="2"/>'
    yield f'<text x="255" y="{y:.1f}">usable range, not ready today</text>'
    yield f'<line class="scale" x1="440" x2="474" y1="{y - 4:.1f}" y2="{y - 4:.1f}"/>'
    yield f'<text x="480" y="{y:.1f}">scale below the usable range</text>'
    yield f'<circle class="ring" cx="672" cy="{y - 4:.1f}" r="4"/><text x="682" y="{y:.1f}">covered torque</text>'
    yield f'<path class="cross" d="M795 {y - 8:.1f} l8 8 m0 -8 l-8 8"/>'
    yield f'<text x="810" y="{y:.1f}">torque not covered</text>'
