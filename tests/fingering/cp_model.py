"""The lattice given to OR-Tools CP-SAT as a flow of truth values, joins included."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from ortools.sat.python import cp_model

from workbench.fingering.lattice.growth import Lattice
from workbench.fingering.lattice.paths import Sweeper

STATUS = {cp_model.OPTIMAL: "optimal", cp_model.FEASIBLE: "feasible"}


@dataclass(frozen=True)
class Answer:
    status: str
    cost: int
    bound: int


def cp_sat(sweeper: Sweeper, seconds: float = 900.0, workers: int = 1) -> Answer:
    """Solve the lattice by CP-SAT: one truth value for each state of a layer and for each
    step, what flows in flows out into every branch; the price of a join hangs on the
    pair of its source's state and its target's grip."""
    lattice = sweeper.lattice
    model = cp_model.CpModel()
    at = [[model.new_bool_var("") for _ in range(len(s))] for s in lattice.states]
    terms: list[cp_model.IntVar] = []
    prices: list[int] = []
    for t, layer in enumerate(lattice.frame.layers):
        before, into, cost = _steps(lattice, t)
        step = [model.new_bool_var("") for _ in cost]
        terms += step
        prices += cost
        leaving: dict[int, list[cp_model.IntVar]] = {}
        entering: dict[int, list[cp_model.IntVar]] = {}
        for a, b, x in zip(before, into, step, strict=True):
            leaving.setdefault(a, []).append(x)
            entering.setdefault(b, []).append(x)
        for b, x in enumerate(at[t]):
            model.add(sum(entering.get(b, [])) == x)
        if layer.parent < 0:
            model.add(sum(step) == 1)
        else:
            for a, x in enumerate(at[layer.parent]):
                model.add(sum(leaving.get(a, [])) == x)
    for join, table in zip(sweeper.joins, sweeper.join_costs, strict=True):
        grip = lattice.states[join.to_layer].grip
        pair = [[model.new_bool_var("") for _ in row] for row in table]
        for a, x in enumerate(at[join.from_layer]):
            model.add(sum(pair[a]) == x)
        for g in range(table.shape[1]):
            chosen = [x for b, x in enumerate(at[join.to_layer]) if grip[b] == g]
            model.add(sum(row[g] for row in pair) == sum(chosen))
        terms += [x for row in pair for x in row]
        prices += [int(c) for c in table.ravel()]
    model.minimize(cp_model.LinearExpr.weighted_sum(terms, prices))
    solver = cp_model.CpSolver()
    solver.parameters.max_time_in_seconds = seconds
    solver.parameters.num_workers = workers
    status = STATUS.get(solver.solve(model), "unknown")
    if status == "unknown":
        return Answer(status, -1, -1)
    return Answer(status, round(solver.objective_value), round(solver.best_objective_bound))


def _steps(lattice: Lattice, t: int) -> tuple[list[int], list[int], list[int]]:
    """Steps into a layer, of several between the same two states the cheapest alone."""
    edges = lattice.edges[t]
    order = np.lexsort((edges.cost, edges.into, edges.before()))
    a, b, c = edges.before()[order], edges.into[order], edges.cost[order]
    first = np.ones(len(a), bool)
    first[1:] = (a[1:] != a[:-1]) | (b[1:] != b[:-1])
    return a[first].tolist(), b[first].tolist(), c[first].tolist()
