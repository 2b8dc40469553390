"""A practice plan written down, to print or to send."""

from __future__ import annotations

from workbench.teaching.plan import DayPlan, Plan
from workbench.teaching.plan_items import PlanItem


def markdown(plan: Plan, title: str) -> str:
    """The plan as Markdown: a heading a day, a box to tick for every item, the cautions
    at the end."""
    head = f"{plan.time.words.capitalize()} of practice, {plan.minutes_a_day} minutes a day" + (
        f", to day {plan.last_day}." if plan.days else "."
    )
    out = [f"# {title}: practice plan", "", head]
    if plan.done:
        out += ["", "## Done", ""]
        out += [f"- [x] {item_in_words(i)}" for i in plan.done]
    for day in plan.days:
        out += ["", f"## {day_in_words(day)}"]
        if day.items:
            out += ["", *(f"- [ ] {item_in_words(i)}. {i.exercise}" for i in day.items)]
    if not plan.days:
        out += ["", "Everything is done."]
    out += ["", "## Take care", "", *(f"- {c}" for c in plan.cautions)]
    return "\n".join(out) + "\n"


def day_in_words(day: DayPlan) -> str:
    """For example "Day 3, 18 minutes" or "Day 7, free"."""
    if day.rest:
        return f"Day {day.day}, free"
    return f"Day {day.day}, {max(1, round(day.minutes))} minutes"


def item_in_words(item: PlanItem) -> str:
    """For example "Learn bars 1–4, 5 minutes, from 25 to 45 % (to 41 beats a minute)"."""
    minutes = max(1, round(item.minutes))
    said = " ".join(w for w in (item.kind.capitalize(), item.where) if w)
    said += f", {minutes} {'minute' if minutes == 1 else 'minutes'}"
    if not item.tempo_to:
        return said
    if item.tempo_from == item.tempo_to:
        said += f", at {item.tempo_to} %"
    else:
        said += f", from {item.tempo_from} to {item.tempo_to} %"
    return said + f" ({item.beats} crotchets a minute)"
