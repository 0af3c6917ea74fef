"""A plot of deviations against limits, as SVG: black on white, shapes instead of colours.

Across: the setting. Up: the deviation in percent. A reading is a circle as found and a cross as left, filled or bold
where it is outside its limit; the limits are full lines, a guard band's acceptance limits dashed.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from cribkit.domain.calibration.readings import Outcome, Phase, Verdict
from cribkit.report.paper import Markup, html

WIDE, HIGH = 640, 300
LEFT, RIGHT, TOP, BOTTOM = 52, 12, 14, 40
APART = 6.0  # pixels between readings of one point, so that they can be told apart


@dataclass(frozen=True, slots=True)
class Frame:
    """From settings and percent to pixels."""

    most: float  # the largest setting
    reach: float  # percent at the top; as much below nought at the bottom

    def x(self, setting: float) -> float:
        """Pixels from the left."""
        return LEFT + (WIDE - LEFT - RIGHT) * setting / (self.most * 1.06)

    def y(self, percent: float) -> float:
        """Pixels from the top."""
        return TOP + (HIGH - TOP - BOTTOM) * (1 - percent / self.reach) / 2


def plot(verdicts: Iterable[Verdict], limit: float, accepted: float | None, unit: str) -> Markup:
    """The plot of one direction's verdicts. Limits are shares (0.04)."""
    shown = list(verdicts)
    points = [point for verdict in shown for point in verdict.points]
    if not points:
        return Markup("")
    widest = max(abs(deviation) for point in points for deviation in point.deviations)
    frame = Frame(max(point.setting for point in points), 100 * max(limit * 1.4, widest * 1.1))
    parts = [*axes(frame, unit), *limits(frame, limit, accepted)]
    for verdict in shown:
        parts += marks(frame, verdict, limit)
    parts += ticks(frame, sorted({point.setting for point in points}))
    text = "".join(parts)
    return Markup(
        f'<svg viewBox="0 0 {WIDE} {HIGH}" width="100%" role="img" aria-label="deviation against setting" '
        f'font-family="sans-serif" font-size="12">{text}</svg>'
    )


def line(x1: float, y1: float, x2: float, y2: float, style: str = "") -> str:
    """A straight line."""
    return f'<line x1="{x1:.1f}" y1="{y1:.1f}" x2="{x2:.1f}" y2="{y2:.1f}" stroke="#000" {style}/>'


def label(x: float, y: float, words: str, anchor: str = "middle") -> str:
    """Words at a place."""
    return f'<text x="{x:.1f}" y="{y:.1f}" text-anchor="{anchor}">{html(words)}</text>'


def axes(frame: Frame, unit: str) -> list[str]:
    """The line of no deviation, the frame, and what the axes mean."""
    bottom, right = HIGH - BOTTOM, WIDE - RIGHT
    return [
        f'<rect x="{LEFT}" y="{TOP}" width="{right - LEFT}" height="{bottom - TOP}" fill="none" stroke="#000"/>',
        line(LEFT, frame.y(0), right, frame.y(0), 'stroke-width="0.6"'),
        label((LEFT + right) / 2, HIGH - 6, f"setting, {unit}"),
        f'<text transform="translate(13 {(TOP + bottom) / 2}) rotate(-90)" text-anchor="middle">deviation, %</text>',
        label(LEFT - 5, frame.y(0) + 4, "0", "end"),
    ]


def limits(frame: Frame, limit: float, accepted: float | None) -> list[str]:
    """The limits on both sides."""
    parts = []
    for sign in (1, -1):
        y = frame.y(sign * limit * 100)
        parts.append(line(LEFT, y, WIDE - RIGHT, y, 'stroke-width="2"'))
        parts.append(label(LEFT - 5, y + 4, f"{sign * limit * 100:+.3g}", "end"))
        if accepted is not None and accepted != limit:
            inner = frame.y(sign * accepted * 100)
            parts.append(line(LEFT, inner, WIDE - RIGHT, inner, 'stroke-width="1.2" stroke-dasharray="7 4"'))
            parts.append(label(WIDE - RIGHT - 4, inner - 4, f"accepted {sign * accepted * 100:+.3g}", "end"))
    return parts


def ticks(frame: Frame, settings: list[float]) -> list[str]:
    """The tested settings under the axis."""
    bottom = HIGH - BOTTOM
    parts = []
    for setting in settings:
        parts.append(line(frame.x(setting), bottom, frame.x(setting), bottom + 5))
        parts.append(label(frame.x(setting), bottom + 18, f"{setting:.6g}"))
    return parts


def marks(frame: Frame, verdict: Verdict, limit: float) -> list[str]:
    """Every single reading."""
    parts = []
    for point in verdict.points:
        middle = (len(point.deviations) - 1) / 2
        shift = -4.0 if verdict.phase is Phase.AS_FOUND else 4.0
        for at, deviation in enumerate(point.deviations):
            x = frame.x(point.setting) + (at - middle) * APART + shift
            parts.append(mark(x, frame.y(deviation * 100), verdict.phase, abs(deviation) > limit * (1 + 1e-9)))
    return parts


def mark(x: float, y: float, phase: Phase, out: bool) -> str:
    """One reading: a circle as found, a cross as left; filled or bold when it is outside the limit."""
    if phase is Phase.AS_FOUND:
        fill = "#000" if out else "none"
        return f'<circle cx="{x:.1f}" cy="{y:.1f}" r="3.2" fill="{fill}" stroke="#000"/>'
    weight = 'stroke-width="3"' if out else 'stroke-width="1.3"'
    return line(x - 3.2, y - 3.2, x + 3.2, y + 3.2, weight) + line(x - 3.2, y + 3.2, x + 3.2, y - 3.2, weight)


def legend(guarded: bool) -> str:
    """What the marks mean."""
    text = "Circle: as found. Cross: as left. Filled or bold: outside the limit. Full lines: limits."
    return f"{text} Dashed lines: limits less the guard band." if guarded else text


__all__ = ["Outcome", "legend", "plot"]
