"""The working of one line, figure by figure, and its reason in plain words.

Each step with sums is written so that a calculator gives the result from the figures shown.
"""

from __future__ import annotations

from dataclasses import dataclass

from cribkit.domain.stock.demand import ADI_CUT, CV2_CUT, Method, Pattern, Usual
from cribkit.domain.stock.distributions import STANDARD, Certain, Distribution, NegativeBinomial, Normal
from cribkit.domain.stock.forecast import ALPHA
from cribkit.domain.stock.held import Held
from cribkit.domain.stock.ordersize import YEAR, economic_quantity, words
from cribkit.domain.stock.reorder import Line

DIGITS = 6
PERIODS = {1: "day", 7: "week"}


@dataclass(frozen=True, slots=True)
class Step:
    """One step of the working: what, by which sum, and the result."""

    what: str
    sums: str  # "0.483 × 14"; "" where nothing is to be worked out
    result: str


def figure(value: float) -> str:
    """A figure with enough digits to work on with."""
    text = f"{abs(value):.{DIGITS}g}"
    return f"−{text}" if value < 0 and text != "0" else text


def term(value: float) -> str:
    """A figure inside a sum: in brackets when it is negative."""
    text = figure(value)
    return f"({text})" if text.startswith("−") else text


def explain(line: Line) -> tuple[Step, ...]:
    """Every step from the uses on record to the order."""
    return (
        *usual_steps(line.held.usual, line.held.unit, line.held.beside),
        *beside_steps(line),
        *point_steps(line),
        *target_steps(line),
        *position_steps(line),
        *order_steps(line),
    )


def usual_steps(usual: Usual, unit: str, beside: Usual | None = None) -> list[Step]:
    """From the record to demand per day."""
    period = PERIODS[usual.days]
    record = Step(f"{period}s on record", "", f"{len(usual.periods)}, {usual.used} of them with a use")
    if usual.pattern is Pattern.NONE:
        apart = "" if beside is None or beside.pattern is Pattern.NONE else " apart from the planned procedures"
        return [record, Step("usual demand per day", "", f"0 {unit} (nothing used on record{apart})")]
    size, interval = usual.smoothed.size, usual.smoothed.interval
    capped = [
        Step(
            f"outlier in the {period} to {giant.on.isoformat()}",
            "",
            f"{figure(giant.amount)} counts as {figure(giant.counted_as)} {unit}",
        )
        for giant in usual.outliers
    ]
    return [
        record,
        *capped,
        Step(f"{period}s between uses (cut-off {ADI_CUT})", f"{len(usual.periods)} ÷ {usual.used}", figure(usual.adi)),
        Step(f"CV² of the amounts (cut-off {CV2_CUT})", "", figure(usual.cv2)),
        Step("pattern", "", usual.pattern.value),
        Step("method", "", usual.method.value),
        Step("usual amount", "", f"{figure(size)} {unit}"),
        Step(f"usual interval in {period}s", "", figure(interval)),
        Step(f"demand per {period}", forecast_sum(usual), f"{figure(usual.smoothed.forecast)} {unit}"),
        Step(
            "demand per day",
            f"{figure(usual.smoothed.forecast)} ÷ {usual.days}",
            f"{figure(usual.per_day.mean)} {unit}",
        ),
        Step(
            "variance per day",
            f"{figure(usual.variance)} ÷ {usual.days}",
            figure(usual.per_day.variance),
        ),
    ]


def beside_steps(line: Line) -> list[Step]:
    """What the planned procedures used before, for the days after the plan."""
    held, days = line.held, line.horizon_days
    if held.beside is None or not held.later.mean:
        return []
    by = f"({held.beside.pattern.value}, {held.beside.method.value})"
    return [
        Step("planned procedures, use per day", "", f"{figure(held.later.mean)} {held.unit} {by}"),
        Step("its variance per day", "", figure(held.later.variance)),
        Step(
            "days after the plan", f"{figure(days)} − {days - held.days_after(days):g}", figure(held.days_after(days))
        ),
    ]


def forecast_sum(usual: Usual) -> str:
    """The sum behind the forecast for one period."""
    quotient = f"{figure(usual.smoothed.size)} ÷ {figure(usual.smoothed.interval)}"
    return f"(1 − {ALPHA:g} ÷ 2) × {quotient}" if usual.method is Method.SBA else quotient


def point_steps(line: Line) -> list[Step]:
    """From demand per day to the computed reorder point."""
    held, policy, day = line.held, line.policy, line.held.usual.per_day
    lead = f"{figure(held.lead.days)} ({held.lead.source})"
    if held.lead.sd:
        lead += f", standard deviation {figure(held.lead.sd)}"
    days = figure(line.horizon_days)
    spread, mean, each = f"{days} × {figure(day.variance)}", f"{days} × {figure(day.mean)}", figure(day.mean)
    after = held.days_after(line.horizon_days)
    if held.later.mean and after > 0:
        spread += f" + {figure(after)} × {figure(held.later.variance)}"
        mean += f" + {figure(after)} × {figure(held.later.mean)}"
        each = f"({each} + {figure(held.later.mean)})"
    if held.lead.sd:
        spread += f" + ({each} × {figure(held.lead.sd)})²"
    return [
        Step("lead time in days", "", lead),
        Step("lead time and review time", f"{figure(held.lead.days)} + {policy.review_days}", f"{days} days"),
        Step("demand in that time", mean, f"{figure(line.demand.mean)} {held.unit}"),
        *([] if isinstance(line.demand, Certain) else [Step("its variance", spread, figure(line.moments.variance))]),
        *level_steps(line),
    ]


def level_steps(line: Line) -> list[Step]:
    """The reorder point as a quantile of the distribution."""
    demand, service, unit = line.demand, line.policy.service, line.held.unit
    point = f"{figure(line.computed_point)} {unit}"
    if isinstance(demand, Certain):
        return [Step("reorder point", "", point)]
    if isinstance(demand, Normal):
        z = STANDARD.inv_cdf(service)
        sums = f"{figure(demand.mean)} + {figure(z)} × √{figure(demand.variance)}"
        if line.computed_point <= 0:
            return [Step("distribution", "", demand.name), Step("reorder point", "", f"{point} (not below nothing)")]
        return [
            Step("distribution", "", demand.name),
            Step(f"z for a service of {service:.4g}", "", figure(z)),
            Step("reorder point", sums, point),
        ]
    at = line.computed_point
    below = [Step(f"chance of at most {at - 1:g}", "", figure(demand.cdf(at - 1)))] if at >= 1 else []
    return [
        *distribution_steps(demand),
        *below,
        Step(f"chance of at most {at:g}", "", figure(demand.cdf(at))),
        Step(f"reorder point, first to reach {service:.4g}", "", point),
    ]


def distribution_steps(demand: Distribution) -> list[Step]:
    """The distribution with the parameters that a table or a spreadsheet asks for."""
    name = Step("distribution", "", demand.name)
    if not isinstance(demand, NegativeBinomial):
        return [name, Step("mean", "", figure(demand.mean))]
    mean, variance = figure(demand.mean), figure(demand.variance)
    return [
        name,
        Step("chance p", f"{mean} ÷ {variance}", figure(demand.p)),
        Step("number r", f"{mean}² ÷ ({variance} − {mean})", figure(demand.r)),
    ]


def target_steps(line: Line) -> list[Step]:
    """What an order fills up to, and the attendant's own bounds."""
    held, policy, unit = line.held, line.policy, line.held.unit
    usual, later = held.usual.per_day.mean, held.later.mean
    per_day = usual + later
    both = f"({figure(usual)} + {figure(later)})" if later else figure(usual)
    review = f"{policy.review_days} × {both}"
    size = line.computed_target - line.computed_point
    steps = [Step("use in one review time", review, f"{figure(policy.review_days * per_day)} {unit}")]
    if size > policy.review_days * per_day + 1e-9 and held.cost:
        each = policy.holding * held.cost / held.pack
        sums = f"√(2 × {figure(policy.order_cost)} × {figure(per_day * YEAR)} ÷ {figure(each)})"
        economic = economic_quantity(per_day * YEAR, policy.order_cost, each)
        steps.append(Step("economic quantity", sums, f"{figure(economic)} {unit}"))
    sums = f"{figure(line.computed_point)} + {figure(size)}"
    steps.append(Step("target", sums, f"{figure(line.computed_target)} {unit}"))
    if held.minimum is not None:
        steps.append(Step("own min wins: reorder point", "", f"{figure(line.point)} {unit}"))
    if held.minimum is not None or held.maximum is not None:
        name = "max" if held.maximum is not None else "min"
        steps.append(Step(f"own {name} wins: target", "", f"{figure(line.target)} {unit}"))
    return steps


def position_steps(line: Line) -> list[Step]:
    """What can be counted on."""
    unit = line.held.unit
    lost = line.on_hand - line.good
    jobs = [Step(f"{job.job} on {job.on.isoformat()}", "", f"{figure(job.amount)} {unit}") for job in line.planned]
    sums = f"{figure(line.good)} + {figure(line.on_order)} − {figure(line.reserved)}"
    return [
        Step("on hand", "", f"{figure(line.on_hand)} {unit}"),
        Step(
            "still good when needed",
            f"{figure(line.on_hand)} − {figure(lost)}",
            f"{figure(line.good)} {unit}",
        ),
        Step("on order", "", f"{figure(line.on_order)} {unit}"),
        *jobs,
        Step("position: good + on order − reserved", sums, f"{figure(line.position)} {unit}"),
    ]


def order_steps(line: Line) -> list[Step]:
    """The order in whole packs."""
    held = line.held
    notes = [Step("note", "", note) for note in line.notes]
    if not line.packs:
        why = f"position {figure(line.position)} is not below the reorder point {figure(line.point)}"
        return [Step("order", "", f"nothing: {why}"), *notes]
    exact = (line.target - line.position) / held.pack
    sums = f"({figure(line.target)} − {term(line.position)}) ÷ {figure(held.pack)}"
    steps = [
        Step("packs up to the target", sums, figure(exact)),
        *([Step("packs added for the supplier's minimum", "", str(line.filled))] if line.filled else []),
        Step("order in whole packs", "", f"{line.packs} × {figure(held.pack)} {held.unit}"),
    ]
    if line.cost is not None:
        steps.append(Step("cost", f"{line.packs} × {figure(held.cost or 0.0)}", figure(line.cost)))
    return [*steps, *notes]


def reason(line: Line) -> str:
    """Why this line says what it says, in one sentence a person can act on."""
    if line.blocks:
        first = line.blocks[0]
        late = (first.order_arrives - first.job.on).days
        when = f"; an order placed today comes {late} d after it" if late > 0 else ""
        return f"{first.job.job} on {first.job.on.isoformat()} is short of {amount(first.short, line)}{when}"
    if not line.packs:
        return f"position {amount(line.position, line)}, reorder point {amount(line.point, line)}"
    what = "own min" if line.held.minimum is not None else "reorder point"
    short = f"position {amount(line.position, line)} is below the {what} {amount(line.point, line)}"
    return f"{short}; {basis(line.held)}, {line.demand.name}" if line.demand.mean else f"{short}; {basis(line.held)}"


def basis(held: Held) -> str:
    """What is known of its use."""
    if held.usual.pattern is Pattern.NONE:
        if held.beside is None or held.beside.pattern is Pattern.NONE:
            return "nothing used on record"
        return f"{held.beside.pattern.value} use by the planned procedures, {held.beside.method.value}"
    return f"{held.usual.pattern.value} use, {held.usual.method.value}"


def amount(value: float, line: Line) -> str:
    """An amount of the line's item as people read it."""
    return words(value, line.held.unit)
