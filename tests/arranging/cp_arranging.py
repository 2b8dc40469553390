"""The declared cost of an arrangement once more, plainly, as a model for OR-Tools CP-SAT.

One variable for each sound and place or its being left out, one for every
sound that is held on or ended at every later moment; hand, bass octave and
grips as table constraints. Nothing of the search is used but the prices of
the ways of one moment by ``Options.whole``, which are checked by hand elsewhere.
"""

from __future__ import annotations

from itertools import product

from ortools.sat.python import cp_model

from workbench.arranging.decisions import Decisions
from workbench.arranging.options import Options
from workbench.arranging.search import Search
from workbench.arranging.sounds import BASS, TUNE, Texture
from workbench.arranging.weights import SHIFT_MOST


def least_cost(
    texture: Texture, options: Options, semitones: int, wanted: Decisions | None = None
) -> int:
    """The least cost of the piece moved by ``semitones``, one phrase octave (0) throughout,
    with the teacher's decisions."""
    search = Search(texture, options, wanted)
    assert all(choice == [0] for choice in search.phrase_choices(semitones))
    model = cp_model.CpModel()
    w, tuning = options.weights, options.instrument.open_midi
    costs = []
    place: dict[tuple[int, int, int], cp_model.IntVar] = {}  # sound, string, fret
    top = max(options.shapes.shift[0])
    hand_before, bass_before = None, None
    moments = len(texture.moments)
    on: dict[tuple[int, int], cp_model.IntVar] = {}  # sound still sounding at moment
    for m in range(moments):
        heard = search.heard(m, semitones, 0)
        struck = texture.struck[m]
        ways = []
        choices = [
            [(None, None)]
            + [(k, p) for k, _ in options.octaves(h) for p in options.where(h.midi + 12 * k)]
            for h in heard
        ]
        for chosen in product(*choices):
            octaves, places = [c[0] for c in chosen], [c[1] for c in chosen]
            down = [p for p in places if p]
            midis = [h.midi + 12 * k for h, k in zip(heard, octaves, strict=True) if k is not None]
            if len({s for s, _ in down}) < len(down) or len(set(midis)) < len(midis):
                continue
            price = options.whole(heard, octaves, places)
            if price is not None:
                ways.append((price, octaves, places))
        picks = [model.new_bool_var(f"w{m}_{i}") for i in range(len(ways))]
        model.add_exactly_one(picks)
        costs += [price * pick for (price, _, _), pick in zip(ways, picks, strict=True)]
        for at, i in enumerate(struck):
            rows: dict[tuple[int, int], list[cp_model.IntVar]] = {}
            for (_, _, places), pick in zip(ways, picks, strict=True):
                if places[at]:
                    rows.setdefault(places[at], []).append(pick)
            for (s, f), members in rows.items():
                place[i, s, f] = model.new_bool_var(f"p{i}_{s}_{f}")
                model.add(sum(members) == place[i, s, f])
            on[i, m] = model.new_bool_var(f"on{i}_{m}")
            model.add(on[i, m] == sum(v for (j, _, _), v in place.items() if j == i))
        # the hand
        hand = model.new_int_var(0, top, f"hand{m}")
        if hand_before is None:
            hand_before = model.new_constant(0)
        shift = model.new_int_var(0, SHIFT_MOST, f"shift{m}")
        for (_, _, places), pick in zip(ways, picks, strict=True):
            stopped = [p[1] for p in places if p and p[1]]
            if stopped:
                model.add(hand == min(stopped)).only_enforce_if(pick)
            else:
                model.add(hand == hand_before).only_enforce_if(pick)
        frets = len(options.shapes.shift)
        model.add_allowed_assignments(
            [hand_before, hand, shift],
            [
                (a, b, min(SHIFT_MOST, w["shift"] * options.shapes.shift[a][b]) if a else 0)
                for a in range(frets)
                for b in range(frets)
            ],
        )
        costs.append(shift)
        hand_before = hand
        # the bass line, 9 standing for none yet
        bass = model.new_int_var(-4, 9, f"bass{m}")
        if bass_before is None:
            bass_before = model.new_constant(9)
        leap = model.new_bool_var(f"leap{m}")
        for (_, octaves, _), pick in zip(ways, picks, strict=True):
            ks = [k for h, k in zip(heard, octaves, strict=True) if h.role == BASS]
            if ks and ks[0] is not None:
                model.add(bass == ks[0]).only_enforce_if(pick)
            else:
                model.add(bass == bass_before).only_enforce_if(pick)
        known = range(-4, 10)
        model.add_allowed_assignments(
            [bass_before, bass, leap],
            [(a, b, int(a not in (9, b))) for a in known for b in known],
        )
        costs.append(w["bass_leap"] * leap)
        bass_before = bass
        # what goes on sounding
        alive = [i for i, until in enumerate(texture.until)
                 if until > m and texture.sounds[i].start < texture.moments[m]]  # fmt: skip
        fret_on = []
        for s in range(1, len(tuning) + 1):
            fret = model.new_int_var(-1, options.top, f"f{m}_{s}")
            loud = []
            for i in (*alive, *struck):
                for (j, string, f), var in place.items():
                    if j != i or string != s:
                        continue
                    here = model.new_bool_var(f"h{i}_{s}_{f}_{m}")
                    live = on.setdefault((i, m), model.new_bool_var(f"on{i}_{m}"))
                    model.add_bool_and([var, live]).only_enforce_if(here)
                    model.add_bool_or([var.negated(), live.negated(), here])
                    loud.append((f, here))
            model.add(sum(h for _, h in loud) <= 1)
            model.add(fret == sum((f + 1) * h for f, h in loud) - 1)
            fret_on.append(fret)
        for i in alive:
            live = on.setdefault((i, m), model.new_bool_var(f"on{i}_{m}"))
            model.add(live <= on[i, m - 1])
            model.add(live <= sum(v for (j, _, _), v in place.items() if j == i))
            ended = model.new_bool_var(f"end{i}_{m}")
            model.add(ended == on[i, m - 1] - live)
            costs.append(search.cut_cost(i, m) * ended)
        # grips: what all that sounds costs beyond what is struck alone
        allowed, own = [], []
        for _, _, places in ways:
            excess = options.shapes.ease(tuple(sorted(p for p in places if p)))
            assert excess is not None
            own.append(excess.hold)
        sets = [
            sorted({-1, *(f for (i, s2, f) in place if s2 == s and i in (*alive, *struck))})
            for s in range(1, len(tuning) + 1)
        ]
        for frets_now in product(*sets):
            excess = options.shapes.ease(
                tuple((s, f) for s, f in enumerate(frets_now, 1) if f >= 0)
            )
            if excess is not None:
                allowed.append((*frets_now, excess.hold))
        full = model.new_int_var(0, 100_000, f"full{m}")
        model.add_allowed_assignments([*fret_on, full], allowed)
        costs.append(full)
        costs += [-o * pick for o, pick in zip(own, picks, strict=True)]
        # held sounds above the tune struck now
        line = [texture.sounds[i].midi for i in struck if texture.sounds[i].role == TUNE]
        for i in alive if line else ():
            if texture.sounds[i].midi > max(line):
                continue
            for (j, s, f), var in list(place.items()):
                if j != i:
                    continue
                for (_, octaves, _), pick in zip(ways, picks, strict=True):
                    tune = [
                        h.midi + 12 * k
                        for h, k in zip(heard, octaves, strict=True)
                        if h.role == TUNE and k is not None
                    ]
                    if tune and tuning[s - 1] + f > max(tune):
                        both = model.new_bool_var("")
                        model.add_bool_or([var.negated(), on[i, m].negated(), pick.negated(), both])
                        costs.append(w["tune_covered"] * both)
    model.minimize(sum(costs))
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    assert solver.solve(model) == cp_model.OPTIMAL
    return round(solver.objective_value)
