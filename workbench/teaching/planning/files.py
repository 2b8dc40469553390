"""A practice plan written down, to print or to send."""

from __future__ import annotations

from workbench.language.names import as_first_word
from workbench.language.speech import count, say
from workbench.teaching.planning.items import PlanItem
from workbench.teaching.planning.plan import DayPlan, Plan


def markdown(plan: Plan, title: str) -> str:
    """The plan as Markdown: a heading a day, a box to tick for every item, the cautions
    at the end."""
    time = as_first_word(plan.time.words)
    if plan.days:
        head = say(
            "{time} of practice, {minutes} minutes a day, to day {last}.",
            time=time,
            minutes=plan.minutes_a_day,
            last=plan.last_day,
        )
    else:
        head = say(
            "{time} of practice, {minutes} minutes a day.", time=time, minutes=plan.minutes_a_day
        )
    out = [f"# {say('{title}: practice plan', title=title)}", "", head]
    if plan.done:
        out += ["", f"## {say('Done')}", ""]
        out += [f"- [x] {item_in_words(i)}" for i in plan.done]
    for day in plan.days:
        out += ["", f"## {day_in_words(day)}"]
        if day.items:
            out += ["", *(f"- [ ] {item_in_words(i)}. {i.exercise}" for i in day.items)]
    if not plan.days:
        out += ["", say("Everything is done.")]
    out += ["", f"## {say('Take care')}", "", *(f"- {c}" for c in plan.cautions)]
    return "\n".join(out) + "\n"


def days_in_words(days: int) -> str:
    """For example "9 days"."""
    return count(days, "{n} day", "{n} days")


def day_in_words(day: DayPlan) -> str:
    """For example "Day 3, 18 minutes" or "Day 7, free"."""
    if day.rest:
        return say("Day {day}, free", day=day.day)
    minutes = max(1, round(day.minutes))
    return count(minutes, "Day {day}, {n} minute", "Day {day}, {n} minutes", day=day.day)


def item_in_words(item: PlanItem) -> str:
    """For example "Learn bars 1–4, 5 minutes, from 25 to 45 % (41 crotchets a minute)"."""
    minutes = max(1, round(item.minutes))
    said = count(minutes, "{what}, {n} minute", "{what}, {n} minutes", what=item.what)
    if not item.tempo_to:
        return said
    beats = say("({n} crotchets a minute)", n=item.beats)
    if item.tempo_from == item.tempo_to:
        share = say("at {percent} %", percent=item.tempo_to)
    else:
        share = say("from {low} to {high} %", low=item.tempo_from, high=item.tempo_to)
    return f"{said}, {share} {beats}"
