# SPDX-License-Identifier: GPL-2.0-or-later
"""Von Mises stress along named curves, straight from the elements below them."""

import numpy as np
import ufl
from dolfinx import fem

PLACES_ON_EDGE = 9
CORNERS = np.array([[0.0, 0.0], [1.0, 0.0], [0.0, 1.0]])
EDGES = ((1, 2), (0, 2), (0, 1))  # corners of the local edge opposite to corner 0, 1, 2
END_MARGIN_DIAMETERS = 0.6  # plain bars are read away from notches and ends, as docs/theory.md says


def edge_points():
    share = np.linspace(0, 1, PLACES_ON_EDGE)[:, None]
    return np.vstack([CORNERS[a] * (1 - share) + CORNERS[b] * share for a, b in EDGES])


def cells_and_edges(body, curve, regions):
    """Each cell of the regions with an edge on the curve, and which of its edges."""
    mesh = body.mesh
    mesh.topology.create_connectivity(1, 2)
    mesh.topology.create_connectivity(2, 1)
    cells_of, edges_of = mesh.topology.connectivity(1, 2), mesh.topology.connectivity(2, 1)
    inside = set(np.concatenate([body.cells.find(body.region[name]) for name in regions]).tolist())
    return [(cell, list(edges_of.links(cell)).index(edge))
            for edge in body.facets.find(body.curve[curve]) for cell in cells_of.links(edge) if cell in inside]


class Reader:
    def __init__(self, body):
        self.body, self.points = body, edge_points()
        self.place = fem.Expression(ufl.SpatialCoordinate(body.mesh), self.points)

    def along(self, stress, curve, regions):
        """[n] z, r and stress at the places of a curve."""
        found = cells_and_edges(self.body, curve, regions)
        cells = np.array([c for c, _ in found], dtype=np.int32)
        n = len(self.points)
        places = self.place.eval(cells).reshape(len(cells), n, 2)
        values = stress.eval(cells).reshape(len(cells), n)
        rows = np.arange(len(cells))[:, None]
        columns = np.array([e for _, e in found])[:, None] * PLACES_ON_EDGE + np.arange(PLACES_ON_EDGE)[None, :]
        z, r = (places[rows, columns][..., axis].ravel() for axis in (0, 1))
        return z, r, values[rows, columns].ravel()

    def peak(self, stress, curves, regions):
        best = 0.0
        for curve in curves:
            z, r, values = self.along(stress, curve, regions)
            if " section " in curve:
                margin = np.minimum(END_MARGIN_DIAMETERS * 2 * r, 0.45 * (z.max() - z.min()))
                values = values[(z >= z.min() + margin) & (z <= z.max() - margin)]
            best = max(best, float(values.max()))
        return best
