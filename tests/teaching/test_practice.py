from dataclasses import replace

import pytest
from scipy.integrate import quad  # outside check of the summed learning curve

from tests.teaching.hand_made import HAND, UKE, bar, build, n, song
from workbench.fingering.types import Barre
from workbench.language.speech import speaking
from workbench.music.errors import BadInput
from workbench.teaching.assess import assess_and_plan, grade_document
from workbench.teaching.planning.cautions import cautions
from workbench.teaching.planning.files import item_in_words, markdown
from workbench.teaching.planning.plan import make_plan, rest_day
from workbench.teaching.planning.practice import (
    PAUSE,
    practice_time,
    seconds_of_tries,
    tempo_after,
    time_of_try,
    tries_to_tempo,
)


def plan(made=None, **options):
    return make_plan(*(made or song()), UKE, HAND, **options)


def time(made=None, **options):
    return practice_time(*(made or song()), UKE, HAND, **options)


# Common practice, no source: a mid grade 1 piece for a student of grade 1.
@pytest.mark.parametrize("minutes", [20, 25, 30])
def test_a_middle_grade_one_piece_takes_one_to_two_weeks(minutes):
    document = grade_document(
        *assess_and_plan(*song(), UKE, HAND, minutes_a_day=minutes, student=1)
    )
    assert (document["grade"], document["level"]) == (1, "middle")
    assert 7 <= document["days"] <= 14


def test_the_power_law_reaches_the_tempo_at_its_last_try():
    # Newell and Rosenbloom 1981: T(n) = T(1) n^-a
    tries = tries_to_tempo(3.0, 0.4)
    assert tries == pytest.approx(3.0**2.5)
    assert time_of_try(tries, 3.0, 2.0, 0.4) == pytest.approx(2.0)
    assert time_of_try(1, 3.0, 2.0, 0.4) == pytest.approx(6.0)
    assert tempo_after(1.0, 3.0, 0.4) == pytest.approx(1.0)
    assert tempo_after(0.0, 3.0, 0.4) == pytest.approx(1 / 3)


def test_the_sum_over_tries_lies_by_the_integral_of_the_curve():
    tries = tries_to_tempo(4.0, 0.4)
    area, _ = quad(lambda k: time_of_try(k, 4.0, 2.0, 0.4), 1, tries)
    playing = seconds_of_tries(4.0, 2.0, 0.4) - tries * PAUSE
    assert area < playing < area + time_of_try(1, 4.0, 2.0, 0.4)


def test_bars_played_the_same_way_are_learned_once():
    once = [bar(n("C4"), n("E4"), n("G4"), n("A4")), bar(n("C4", 2), n("E4", 2))]
    short, long = time(build(*once)), time(build(*once, *once, *once))
    assert [b.bar for b in long.bars] == [b.bar for b in short.bars] == [0, 1]
    assert sum(b.minutes for b in long.bars) == pytest.approx(
        sum(b.minutes for b in short.bars), rel=0.1
    )
    assert long.minutes < 2 * short.minutes


def test_the_same_notes_fingered_otherwise_are_new():
    made = build(bar(n("E4", 4)), bar(n("E4", 4, string=3, left=4)))
    assert [b.bar for b in time(made).bars] == [0, 1]


def test_a_better_student_needs_less_and_a_higher_tempo_more():
    assert time(student=3).minutes < time(student=1).minutes < time(student=0).minutes
    assert time(tempo_percent=60).minutes < time().minutes < time(tempo_percent=150).minutes


def test_the_range_holds_the_likely_time_and_is_rounded_in_words():
    found = time()
    assert found.low < found.minutes < found.high
    assert str(found.words).startswith("about ") and str(found.words).endswith("hours")


def test_the_plan_does_all_the_work_of_the_estimate_and_no_more():
    made = plan()
    work = [i for i in made.items if i.kind != "warm up"]
    assert sum(i.minutes for i in work) == pytest.approx(made.time.minutes)
    assert len({i.id for i in work}) == len(work)
    assert {i.kind for i in work} == {"learn", "join", "review", "play through"}


def test_no_day_runs_over_and_rest_days_are_free():
    for minutes in (12, 20, 45):
        made = plan(minutes_a_day=minutes)
        assert all(d.minutes <= minutes + 1e-6 for d in made.days)
        assert [d.day for d in made.days if d.rest] == [
            d for d in range(1, made.last_day + 1) if d % 7 == 0
        ]
        assert all(d.items or d.rest for d in made.days)


def test_rest_days_are_spread_over_the_week():
    assert [d for d in range(1, 15) if rest_day(d, 5)] == [4, 7, 11, 14]
    assert not any(rest_day(d, 7) for d in range(1, 30))


def test_joins_come_after_both_passages_and_runs_after_all_joins():
    made = plan()
    learned = {}
    for day in made.days:
        for item in day.items:
            if item.kind == "learn":
                for b in item.bars:
                    learned[b] = day.day
    days = {i.id: d.day for d in made.days for i in d.items}
    joins = [i for i in made.items if i.kind == "join"]
    assert joins
    for item in joins:
        assert days[item.id] > max(learned[b] for b in item.bars)
    first_run = min(days[i.id] for i in made.items if i.kind == "play through")
    assert first_run >= max(days[i.id] for i in joins)


def test_reviews_are_spaced_with_growing_gaps():
    made = plan()
    for chunk in {i.bars for i in made.items if i.kind == "review"}:
        learned = max(
            d.day for d in made.days for i in d.items if i.kind == "learn" and i.bars == chunk
        )
        reviewed = [
            d.day for d in made.days for i in d.items if i.kind == "review" and i.bars == chunk
        ]
        first, second = reviewed[:2]
        assert first > learned and second - first >= 2


def test_sessions_of_a_passage_get_faster_over_several_days():
    made = plan()
    for chunk in {i.bars for i in made.items if i.kind == "learn"}:
        rows = [
            (d.day, i) for d in made.days for i in d.items if i.kind == "learn" and i.bars == chunk
        ]
        assert len({day for day, _ in rows}) >= len(rows) / 2
        tempos = [i.tempo_to for _, i in rows]
        assert tempos == sorted(tempos) and tempos[-1] == 100


def test_the_hardest_passage_is_begun_on_the_first_day():
    easy = bar(n("C4", 2), n("E4", 2))
    other = [bar(n("C4"), n("G4"), n("E4"), n(k)) for k in ("C4", "A4", "E4", "G4")]
    hard = bar(
        n("A#4", 1, 0, left=1, move="shift"),
        n("F4", 1, 0, left=1),
        n("D5", 2, 1, left=4),
        barres=[Barre(0, 1, (1, 2, 3, 4))],
        reach=80.0,
    )
    made = plan(build(easy, *other, hard), minutes_a_day=10)
    assert 5 in made.days[0].items[0].bars


def test_ticked_items_are_gone_and_the_rest_flows_again():
    whole = plan()
    ticked = [i.id for d in whole.days[:3] for i in d.items if i.kind != "warm up"]
    again = plan(done=ticked, first_day=4)
    assert again.days[0].day == 4
    assert {i.id for i in again.done} == set(ticked) and all(i.done for i in again.done)
    left = {i.id for i in again.items if i.kind != "warm up"}
    assert left == {i.id for i in whole.items if i.kind != "warm up"} - set(ticked)
    assert again.last_day == whole.last_day


def test_skipped_days_push_the_end_back():
    whole = plan()
    ticked = [i.id for i in whole.days[0].items]
    late = plan(done=ticked, first_day=9)
    assert late.last_day > whole.last_day


def test_everything_ticked_leaves_no_day():
    everything = [i.id for i in plan().items]
    made = plan(done=everything, first_day=12)
    assert made.days == () and made.last_day == 0


@pytest.mark.parametrize(
    ("options", "says"),
    [
        ({"minutes_a_day": 3}, "between 5 and 240"),
        ({"days_a_week": 0}, "between 1 and 7"),
        ({"first_day": 0}, "count from 1"),
        ({"tempo_percent": 5}, "20 to 200"),
        ({"student": 12}, "from 0 to 8"),
    ],
)
def test_impossible_wishes_are_answered_in_a_sentence(options, says):
    with pytest.raises(BadInput, match=says):
        plan(**options)


def test_cautions_name_stretch_barre_and_long_days():
    piece, fingering = build(
        bar(n("C4", 4)), bar(n("A#4", 4, left=1), barres=[Barre(0, 1, (1, 2))], reach=110.0)
    )
    said = [str(c) for c in cautions(piece, fingering, UKE, HAND, minutes_a_day=60)]
    assert len(said) == 4
    assert "stop at once" in said[0]
    assert "Stretch" in said[1] and "bar 2" in said[1]
    assert "Barre in bar 2" in said[2] and "break" in said[3]
    easy = cautions(*song(), UKE, HAND)
    assert len(easy) == 1


def test_the_document_holds_what_the_contract_asks():
    import json

    document = grade_document(*assess_and_plan(*song(), UKE, HAND))
    assert {"grade", "level", "evidence", "minutes_total", "days", "hardest_bars"} <= set(document)
    assert json.loads(json.dumps(document)) == document
    low, high = document["minutes_range"]
    assert low <= document["minutes_total"] <= high
    assert document["hardest_bars"][0]["number"] == "8"


def test_a_repeat_sign_costs_little():
    piece, fingering = song()
    last = replace(piece.bars[-1], repeat_end=True)
    twice = replace(piece, bars=(*piece.bars[:-1], last))
    assert time((piece, fingering)).minutes < time((twice, fingering)).minutes
    assert time((twice, fingering)).minutes < 1.2 * time((piece, fingering)).minutes


def test_a_day_without_anything_due_is_free_and_no_item_is_longer_than_a_short_day():
    tiny = build(bar(n("C4", 2), n("E4", 2)))
    made = plan(tiny, days_a_week=7)
    assert made.days[0].items and made.days[-1].items
    assert all(d.rest != bool(d.items) for d in made.days)
    hard = [
        bar(
            n("A#4", 1, 0, left=1, move="shift"),
            n("F4", 1, 0, left=1),
            n("D5", 7, 1, left=4),
            barres=[Barre(0, 1, (1, 2, 3, 4))],
            reach=110.0,
            time_signature=(8, 4),
        ),
        bar(n("C4", 8), time_signature=(8, 4)),
    ] * 3
    for d in plan(build(*hard, tempo=40.0), student=0, minutes_a_day=12).days:
        assert d.minutes <= 12 + 1e-6


def test_the_plan_as_markdown_has_boxes_to_tick_free_days_and_cautions():
    whole = plan()
    text = markdown(whole, "First song")
    assert text.startswith("# First song: practice plan\n")
    assert text.count("- [ ] ") == len(whole.items)
    assert "Day 7, free" in text and "## Take care" in text
    ticked = whole.days[0].items[1]
    later = markdown(plan(done=[ticked.id], first_day=2), "First song")
    assert f"- [x] {item_in_words(ticked)}" in later
    everything = markdown(plan(done=[i.id for i in whole.items]), "First song")
    assert "Everything is done." in everything


def test_items_in_words():
    item = next(i for i in plan().items if i.kind == "learn")
    words = item_in_words(item)
    assert words.startswith("Learn bars ") and f"to {item.tempo_to} %" in words
    assert words.endswith(f"({item.beats} crotchets a minute)")
    with speaking("de"):
        assert str(item.what) == f"Lernen: {item.where}"
        assert str(next(i for i in plan().items if i.kind == "warm up").what) == "Aufwärmen"
