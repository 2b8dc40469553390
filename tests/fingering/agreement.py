"""How far the engine's fingers agree with published editions and charts.

    python -m tests.fingering.agreement            the table, cross-validated
    python -m tests.fingering.agreement --write    fit to everything, write resources/weights
    python -m tests.fingering.agreement --terms    what each term is worth, left out in turn
    python -m tests.fingering.agreement --seen     what the terms can say at most of an edition

Studies: tests/data/guitar-editions (Mutopia Project; README there). Charts: chords-db 0.5.1
(tests/shape/data). Fretted fingers and strings that the editions print are compared with the
least-cost fingering that knows nothing of the print. "By piece": five folds, no piece is
judged by weights that it was fitted to; "by author": all works of an author are left out.
"""

from __future__ import annotations

import json
import sys
import time
from collections.abc import Callable, Sequence
from concurrent.futures import ProcessPoolExecutor
from fractions import Fraction
from pathlib import Path
from typing import NamedTuple

from tests.fingering.charts import Charts, shares
from tests.fingering.editions import laid_rows
from tests.shape.shape_charts import Published, usable
from workbench.fingering.hand.among import AMONG
from workbench.fingering.hand.holding import HOLDING
from workbench.fingering.lattice.terms import LEFT_TERMS
from workbench.fingering.learning.field import Field
from workbench.fingering.learning.fitting import UNIT, Agreement, agreement, fit
from workbench.fingering.learning.observed import Chain, chain
from workbench.fingering.learning.printfit import WAYS, fitted
from workbench.fingering.types import Settings
from workbench.fingering.weights import RESOURCES, least, weights_for
from workbench.instrument.table import hand, instrument
from workbench.music.model import Piece, WrittenFingers
from workbench.music.reading.score import read_score

EDITIONS = Path(__file__).resolve().parents[1] / "data" / "guitar-editions"
FOLDS = 5
RIDGE, ROUNDS = 0.5, 250
EVEN, EVEN_MOST = 0.3, 3.0  # units of effect, and the most a weight may begin with
SMALL_RIDGE = 0.05
OTHER_CHART = 0.1  # what a row of the ukulele's chart counts beside one of the guitar's
SCHOOL_RIDGE = 6.0
SEEN_RIDGE = 0.005
#: Shares of the notes whose finger is printed, from ... on.
MUCH = ((0.4, "40 % and more"), (0.15, "15 to 40 %"), (0.0, "under 15 %"))
SCHOOLS = {"strong-fingers": ("sor-op35",), "little-finger": ("sor-op60",)}
#: What only charts speak of: whole chords held for their own sake.
CHARTED = (
    "wide_4", "apart_24", "weak_pair", "third_by_barre", "fourth_by_barre", "over_silent", "lone",
)  # fmt: skip
#: What adds to another term in held notes, tunes or broken chords: nothing until shown.
FINER = ("far_held", "displaced_held", "free_shift_tune", "taken_broken")
SHARPER = 2.5  # charts are this much surer of a grip than editions of a passage
TRADE = {
    "third_treble": 0, "fourth_bass": 0, "second_treble": 0, "third_first": 0,
    "fourth_inner": 0, "fourth_up": 0, "first_bass": 0, "second_on_3": 0, "open_only": 0,
    "whole_lean": 0, "middle": 0, "led_by_4": 1500, "cramped": 250, "position": 1950, "lean": 1600,
    "free_lean": 1600, "hop": 3600, "hop_across": 3600, "blocked": 2200, "place": 500,
    "slide": 200, "far": 30, "displaced": 1500, "high": 900,
    **dict.fromkeys(FINER, 0), "lone": 0, "skipped_by_barre": 2400,
    "move": 1085, "blind": 904, "shift": 22, "free_shift": 28, "cut": 1321,
    "cuts": 2077, "faded": 3067, "taken": 1705, "leap": 904,
    "inverted": 2541, "arched": 1072, "slur": 2558,
}  # fmt: skip
PLAYED = [t for t in LEFT_TERMS if t not in CHARTED]
Weights = dict[str, int]
AUTHORS = {"sor": "Sor", "carcassi": "Carcassi"}


def studies() -> list[str]:
    """The names of all studies."""
    return sorted(p.stem for p in EDITIONS.glob("*.json"))


def author(study: str) -> str:
    """Who wrote a study; several authors of one work each are taken together."""
    return AUTHORS.get(study.replace("_", "-").split("-")[0], "others")


def school(study: str) -> str:
    """The edition a study belongs to, as far as several studies share it."""
    for start in ("sor-op35", "sor-op60", "sor-op45", "carcassi"):
        if study.replace("_etude_opus", "-op").startswith(start):
            return start
    return "others"


def texture(piece: Piece) -> str:
    """What most moments of a piece are: one line, a line over a bass, or chords."""
    groups: dict[tuple[int, object], set[int]] = {}
    for bar in piece.bars:
        for n in bar.notes:
            groups.setdefault((bar.index, n.onset), set()).add(n.midi)
    mean = sum(len(g) for g in groups.values()) / max(1, len(groups))
    return "one note at a time" if mean < 1.3 else "line and bass" if mean < 1.9 else "chords"


def much_printed(piece: Piece, marks: Sequence[WrittenFingers]) -> str:
    """How much of a piece its edition fingers: printed left fingers of all that sounds."""
    sounds = {(bar.index, n.onset, n.midi) for bar in piece.bars for n in bar.notes}
    share = sum(bool(m.left) for m in marks) / max(1, len(sounds))
    return next(words for least, words in MUCH if share >= least)


def printed(piece: Piece, study: str) -> tuple[WrittenFingers, ...]:
    """The marks of the edition by note id."""
    at: dict[tuple[int, Fraction, int], str] = {}
    for bar in piece.bars:
        for n in bar.notes:
            if not n.grace:
                at.setdefault((bar.index, n.onset, n.midi), n.id)
    places = {note: place for place, note in at.items()}
    prints = {(*places[w.note], w.left) for w in piece.written if w.note in places}
    out = []
    for *place, left, string in laid_rows(study, set(at), prints):
        note = at.get(tuple(place))
        if note is not None:
            out.append(
                WrittenFingers(
                    note, string=string, fret=None, left=left if left in range(5) else None
                )
            )
    return tuple(out)


def load(study: str) -> tuple[Piece, tuple[WrittenFingers, ...]]:
    piece = read_score(EDITIONS / f"{study}.mxl", parts="all")
    return piece, printed(piece, study)


class Kind(NamedTuple):
    """What a study is: its texture, and how much of it is fingered in print."""

    texture: str
    much: str


def grow(study: str) -> tuple[Chain, Kind]:
    """A study's chain under the weights in force, and its kind."""
    piece, marks = load(study)
    weights = weights_for(Settings()).left
    made = chain(piece, marks, instrument("guitar"), hand("medium"), weights)
    return made, Kind(texture(piece), much_printed(piece, marks))


def grown(names: list[str], workers: int = 2) -> tuple[dict[str, Chain], dict[str, Kind]]:
    """All chains and kinds by study."""
    with ProcessPoolExecutor(workers) as pool:
        rows = list(pool.map(grow, names))
    return (
        {n: r[0] for n, r in zip(names, rows, strict=True)},
        {n: r[1] for n, r in zip(names, rows, strict=True)},
    )


def chart_rows(name: str, for_fit: bool | None = None) -> list[tuple[str, Published]]:
    """Rows of a chart: those of the keys fitted, of the keys kept, or all."""
    return [(name, r) for r in usable(name)[0] if for_fit in (None, r.for_fit)]


def even(field: Field) -> Weights:
    """Weights to begin with where nothing is known: every term has the same effect, by its root
    mean square over the steps. What is fitted from here has seen nothing else."""
    effect = [min(EVEN / rms, EVEN_MOST) for rms in field.scale()]
    return {
        t: max(least(t), round(float(w) * UNIT)) for t, w in zip(LEFT_TERMS, effect, strict=True)
    }


def learn(chains: list[Chain], charts: Charts) -> Weights:
    """What all editions and the guitar chart have in common, from even weights on: those in
    force have seen every study, and what begins with them has seen it too."""
    field = Field(chains)
    begin = {**even(field), **dict.fromkeys((*CHARTED, *FINER), 0)}
    return fit([field, charts], begin, ROUNDS, RIDGE, only=PLAYED)


def learn_small(charts: Charts, common: Weights) -> Weights:
    """The weights that differ on a small instrument: holding by its chart; what no chart can
    tell, how the hand moves, by the facts of the trade in test_facts and test_scales."""
    free = [t for t in (*HOLDING, *AMONG) if t not in TRADE]
    known = {t: round(w * SHARPER) for t, w in TRADE.items()}
    held = fit([charts], {**common, **known}, rounds=300, ridge=SMALL_RIDGE, only=free)
    return {**{t: max(least(t), round(held[t] / SHARPER)) for t in free}, **TRADE}


def learn_alone(name: str, common: Weights, for_fit: bool | None = True) -> Weights:
    """The weights of holding for chords that stand alone, as charts finger them. What one chart
    leaves open the other tells: on the guitar the ukulele's rows count as well, a little."""
    charts = [Charts(chart_rows(name, for_fit), 1.0)]
    if name == "guitar":
        charts.append(Charts(chart_rows("ukulele", for_fit), OTHER_CHART))
    free = [t for t in (*HOLDING, *AMONG, "place") if t != "stretch"]  # the hand tells of it
    held = fit(charts, common, rounds=300, ridge=SMALL_RIDGE, only=free, floors=False)
    return {t: held[t] for t in (*HOLDING, *AMONG, "place")}


def learn_school(chains: list[Chain], common: Weights) -> Weights:
    """Where one edition differs from what all have in common."""
    own = fit([Field(chains)], common, ridge=SCHOOL_RIDGE, only=PLAYED)
    return {t: w for t, w in own.items() if abs(w - common[t]) >= 30}


def total(rows: list[Agreement]) -> Agreement:
    return Agreement(sum(r[i] for r in rows) for i in range(4))


def judged(
    chains: dict[str, Chain], charts: Charts, group: Callable[[str], object]
) -> dict[str, Agreement]:
    """Agreement of every study under weights fitted without its group."""
    out: dict[str, Agreement] = {}
    for kept in sorted({group(n) for n in chains}, key=str):
        weights = learn([c for n, c in chains.items() if group(n) != kept], charts)
        out |= {n: agreement(c, weights) for n, c in chains.items() if group(n) == kept}
    return out


def line(name: str, found: Agreement) -> str:
    strings = f"{found.strings:6.1%} ({found[2]}/{found[3]})" if found[3] else "      -"
    return f"  {name:24} fingers {found.fingers:6.1%} ({found[0]}/{found[1]})  strings {strings}"


def tell(title: str, found: dict[str, Agreement], by: Callable[[str], str]) -> None:
    print(title)
    for key in sorted({by(n) for n in found}):
        print(line(key, total([a for n, a in found.items() if by(n) == key])))
    print(line("all", total(list(found.values()))), flush=True)


def main() -> None:
    begun = time.monotonic()
    names = studies()
    chains, kinds = grown(names)
    start = weights_for(Settings()).left
    print(f"{len(names)} studies, {sum(c.size for c in chains.values())} steps", flush=True)
    tell("Weights in force", {n: agreement(c, start) for n, c in chains.items()}, author)
    guitar = Charts(chart_rows("guitar", True))
    fold = {n: i % FOLDS for i, n in enumerate(names)}
    if "--terms" in sys.argv:
        left_out(chains, start)
        return
    if "--seen" in sys.argv:
        seen(chains)
        return
    if "--write" in sys.argv:
        common = learn(list(chains.values()), Charts(chart_rows("guitar")))
        tell("Fitted", {n: agreement(c, common) for n, c in chains.items()}, author)
        small = learn_small(Charts(chart_rows("ukulele", True), 1.0), common)
        found = {"small": small, **{k: of_school(chains, k, common) for k in SCHOOLS}}
        found |= {f"alone, {n}": learn_alone(n, common) for n in ("guitar", "ukulele")}
        write(common, found)
        return
    pieces = judged(chains, guitar, fold.__getitem__)
    tell("By piece (five folds), by author", pieces, author)
    tell("By piece, by edition", pieces, school)
    tell("By piece, by texture", pieces, lambda n: kinds[n].texture)
    tell("By piece, by how much is printed", pieces, lambda n: kinds[n].much)
    tell("By author (each left out whole)", judged(chains, guitar, author), author)
    taught(chains, guitar)
    common = learn(list(chains.values()), guitar)
    for name in ("guitar", "ukulele"):
        weights = {**common, **learn_alone(name, common)}
        first, three, count = shares(chart_rows(name, False), weights)
        print(f"{name} shapes of keys not fitted: first {first:.1%}, three {three:.1%} of {count}")
    print(f"{time.monotonic() - begun:.0f} s")


def of_school(chains: dict[str, Chain], name: str, common: Weights) -> Weights:
    return learn_school([c for n, c in chains.items() if school(n) in SCHOOLS[name]], common)


def taught(chains: dict[str, Chain], charts: Charts) -> None:
    """Works of an edition, or of an author, unseen, before and after the tool has learned from
    others of them, by each of the ways that learning tries."""
    for title, by, names in (
        ("An edition", school, ("sor-op35", "sor-op60", "carcassi")),
        ("An author", author, ("Sor", "Carcassi")),
    ):
        before: dict[str, Agreement] = {}
        after: dict[tuple[float, bool], dict[str, Agreement]] = {way: {} for way in WAYS}
        for name in names:
            mine = [n for n in chains if by(n) == name]
            rest = learn([c for n, c in chains.items() if n not in mine], charts)
            before |= {n: agreement(chains[n], rest) for n in mine}
            for at in range(FOLDS):
                held = [n for i, n in enumerate(mine) if i % FOLDS == at]
                others = [chains[n] for n in mine if n not in held]
                for way, own in zip(WAYS, fitted(others, rest), strict=True):
                    after[way] |= {n: agreement(chains[n], own) for n in held}
        tell(f"{title} before anything of it is seen", before, by)
        for (ridge, habits), found in after.items():
            also = ", with habits" if habits else ""
            tell(f"The same after a fit on its other pieces, strength {ridge}{also}", found, by)


def seen(chains: dict[str, Chain]) -> None:
    """Every edition judged by weights that were fitted to all of it and held to hardly anything:
    no fit of these terms can foretell more of it."""
    print("Fitted to all of an edition and judged on it")
    for name in sorted({school(n) for n in chains}):
        mine = [c for n, c in chains.items() if school(n) == name]
        field = Field(mine)
        own = fit([field], even(field), rounds=600, ridge=SEEN_RIDGE, only=PLAYED)
        print(line(name, total([agreement(c, own) for c in mine])), flush=True)


def left_out(chains: dict[str, Chain], start: Weights) -> None:
    """What the agreement on all studies is when a term counts nothing."""
    whole = total([agreement(c, start) for c in chains.values()])
    print(line("all terms", whole))
    for term in LEFT_TERMS:
        if start[term]:
            less = {**start, term: 0}
            found = total([agreement(c, less) for c in chains.values()])
            print(line(f"without {term}", found), f" {found.fingers - whole.fingers:+.1%}")


def write(common: Weights, found: dict[str, Weights]) -> None:
    """Put fitted weights into resources/weights; all else in the file stays as it is."""
    path = RESOURCES / "weights" / "fingering.json"
    text = path.read_text(encoding="utf-8")
    for term, weight in common.items():
        head, key, rest = text.partition(f'"{term}": {{"weight": ')
        assert key, term
        text = head + key + str(weight) + rest[rest.index(",") :]
    for name, weights in found.items():
        head, key, rest = text.partition(f'"{name}": {{')
        assert key, name
        before, mark, after = rest.partition('"weights": {')
        text = head + key + before + mark + json.dumps(weights)[1:] + after[after.index("}") + 1 :]
    json.loads(text)
    path.write_text(text, encoding="utf-8")


if __name__ == "__main__":
    main()
