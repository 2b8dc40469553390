"""The same lattice solved by general libraries: networkx and scipy's csgraph."""

from __future__ import annotations

import networkx as nx
import numpy as np
from scipy.sparse import csr_matrix
from scipy.sparse.csgraph import dijkstra

from workbench.fingering.lattice.growth import Lattice


def numbered(lattice: Lattice) -> tuple[np.ndarray, np.ndarray, np.ndarray, int]:
    """(from, to, cost) of every step over one numbering of all states, and how many nodes
    there are; node 0 is the start, the last one the end. The lattice must be one chain."""
    offset, froms, tos, costs = [1], [], [], []
    for t, edges in enumerate(lattice.edges):
        up = lattice.frame.layers[t].parent
        assert up == t - 1
        froms.append(edges.before() + (offset[up] if up >= 0 else 0))
        tos.append(edges.into.astype(np.int64) + offset[t])
        costs.append(edges.cost)
        offset.append(offset[t] + len(lattice.states[t]))
    end = offset[-1]
    last = np.arange(offset[-2], end)
    froms.append(last)
    tos.append(np.full(len(last), end))
    costs.append(np.zeros(len(last), np.int64))
    return np.concatenate(froms), np.concatenate(tos), np.concatenate(costs), end + 1


def networkx_graph(lattice: Lattice) -> tuple[nx.DiGraph, int]:
    """The lattice as a graph of networkx, of several equal steps the cheapest; and its end."""
    a, b, c, nodes = numbered(lattice)
    order = np.argsort(-c, kind="stable")  # the cheapest is written last and stays
    graph = nx.DiGraph()
    graph.add_weighted_edges_from(
        zip(a[order].tolist(), b[order].tolist(), c[order].tolist(), strict=True)
    )
    return graph, nodes - 1


def networkx_least(graph: nx.DiGraph, end: int) -> int:
    """networkx's shortest path: cost."""
    path = nx.shortest_path(graph, 0, end, weight="weight")
    return int(nx.path_weight(graph, path, "weight"))


def scipy_least(lattice: Lattice) -> int:
    """scipy's shortest path on the lattice, matrix built on the way: cost.

    A stored 0 is no step in a sparse matrix, so every step costs 1 more, taken off again.
    """
    a, b, c, nodes = numbered(lattice)
    order = np.lexsort((c, b, a))
    a, b, c = a[order], b[order], c[order]
    first = np.ones(len(a), bool)
    first[1:] = (a[1:] != a[:-1]) | (b[1:] != b[:-1])
    matrix = csr_matrix((c[first] + 1.0, (a[first], b[first])), shape=(nodes, nodes))
    far = dijkstra(matrix, indices=0)
    return round(float(far[nodes - 1])) - len(lattice.edges) - 1
