# SPDX-License-Identifier: GPL-2.0-or-later
"""Torsion, tension and bending of a body of revolution, written for DOLFINx from the equations of docs/theory.md.

On purpose not as the program solves them: torsion in the angle of twist, bending in u_r and the sum u_r + u_theta,
elements of third degree, stress taken raw from the displacement with all six components, no recovery, no averaging,
sections cut by the principle of virtual work.
"""

import logging
import math
from dataclasses import dataclass

import gmsh
import numpy as np
import ufl
from dolfinx import fem
from dolfinx.fem.petsc import LinearProblem
from dolfinx.io import gmshio
from mpi4py import MPI
from petsc4py import PETSc

from section import NOTCH, REGIONS, draw_and_mesh

logging.disable(logging.INFO)  # the library tells of every form it compiles

DEGREE = 3
DIRECT = {"ksp_type": "preonly", "pc_type": "lu", "pc_factor_mat_solver_type": "mumps"}


@dataclass
class Body:
    splice: object
    mesh: object
    cells: object  # region tags
    facets: object  # curve tags
    region: dict
    curve: dict

    def __post_init__(self):
        self.z, self.r = ufl.SpatialCoordinate(self.mesh)
        metadata = {"quadrature_degree": 2 * DEGREE + 4}
        self.dx = ufl.Measure("dx", self.mesh, subdomain_data=self.cells, metadata=metadata)
        self.ds = ufl.Measure("ds", self.mesh, subdomain_data=self.facets, metadata=metadata)
        self.E, self.nu = self.by_region("E"), self.by_region("nu")
        self.G = self.E / (2 * (1 + self.nu))

    def by_region(self, constant):
        values = fem.Function(fem.FunctionSpace(self.mesh, ("DG", 0)))
        for name in REGIONS:
            part, side = name.split(".")
            steels = {"bar": self.splice.halves[side].bar, "sleeve": self.splice.sleeve, "fillet": self.splice.filler}
            values.x.array[self.cells.find(self.region[name])] = getattr(steels[part], constant)
        return values

    def ends(self):
        """Sign, measure, inner and outer radius of the two loaded ends."""
        for side, sign in (("left", -1), ("right", 1)):
            outer = self.splice.halves[side].sections[-1][1]
            yield sign, self.ds(self.curve[f"end.{side}"]), self.splice.bore, outer

    def node_at(self, space, r):
        """Unknown at the left end, at radius r: the middle of the end's outermost stretch, where a motion is held."""
        z = -sum(length for length, _, _ in self.splice.halves["left"].sections)
        return fem.locate_dofs_geometrical(space, lambda x: np.isclose(x[0], z) & np.isclose(x[1], r))

    def ramp(self, length):
        """0 up to -length, 1 at the joint, smooth: lets a rigid motion in that ends at the section at z = 0."""
        return ufl.max_value(1 + self.z / length, 0)**4


def meshed(splice, per_quarter_turn):
    gmsh.initialize()
    gmsh.option.setNumber("General.Terminal", 0)
    try:
        region, curve = draw_and_mesh(splice, per_quarter_turn)
        mesh, cells, facets = gmshio.model_to_mesh(gmsh.model, MPI.COMM_SELF, 0, gdim=2)
    finally:
        gmsh.finalize()
    return Body(splice, mesh, cells, facets, region, curve)


def solved(a, L, fixed):
    return LinearProblem(a, L, bcs=fixed, petsc_options=DIRECT).solve()


def value(form):
    return fem.assemble_scalar(fem.form(form))


def on_axis(x):
    return np.isclose(x[1], 0)


def torsion(body):
    """Angle of twist p = u_theta / r: strain r grad p. Source: [TimoshenkoGoodier1970] art. 119."""
    space = fem.FunctionSpace(body.mesh, ("Lagrange", DEGREE))
    p, q = ufl.TrialFunction(space), ufl.TestFunction(space)
    a = 2 * math.pi * body.G * body.r**3 * ufl.inner(ufl.grad(p), ufl.grad(q)) * body.dx
    L = 0
    for sign, ds, inner, outer in body.ends():
        J = math.pi / 2 * (outer**4 - inner**4)
        L += sign * 2 * math.pi * body.r / J * body.r**2 * q * ds
    hold = fem.dirichletbc(PETSc.ScalarType(0), body.node_at(space, body.splice.halves["left"].sections[-1][1]), space)
    p = solved(a, L, [hold])
    stress = {"tz": body.G * body.r * p.dx(0), "rt": body.G * body.r * p.dx(1)}
    return {"twist": value(ufl.replace(L, {q: p})), "stress": stress, "section": 2 * math.pi * stress["tz"] * body.r**2}


def normal_stress(body, rr, tt, zz):
    lame = body.E * body.nu / ((1 + body.nu) * (1 - 2 * body.nu))
    return {k: lame * (rr + tt + zz) + 2 * body.G * e for k, e in (("rr", rr), ("tt", tt), ("zz", zz))}


def work(stress, strain):
    """Stress on strain, all shears engineering strains."""
    return sum(stress[k] * strain[k] for k in stress)


def tension(body):
    space = fem.VectorFunctionSpace(body.mesh, ("Lagrange", DEGREE))

    def strain(u):
        return {"rr": u[1].dx(1), "tt": u[1] / body.r, "zz": u[0].dx(0), "rz": u[1].dx(0) + u[0].dx(1)}

    def stress(u):
        e = strain(u)
        return {**normal_stress(body, e["rr"], e["tt"], e["zz"]), "rz": body.G * e["rz"]}

    u, v = ufl.TrialFunction(space), ufl.TestFunction(space)
    a = 2 * math.pi * work(stress(u), strain(v)) * body.r * body.dx
    L = 0
    for sign, ds, inner, outer in body.ends():
        L += sign * 2 * math.pi * v[0] / (math.pi * (outer**2 - inner**2)) * body.r * ds
    along, radial = space.sub(0).collapse()[0], space.sub(1).collapse()[0]
    zero, flat = fem.Function(along), fem.Function(radial)
    rim = body.splice.halves["left"].sections[-1][1]
    fixed = [fem.dirichletbc(zero, body.node_at((space.sub(0), along), rim), space.sub(0))]
    if body.splice.bore == 0:
        axis = fem.locate_dofs_geometrical((space.sub(1), radial), on_axis)
        fixed.append(fem.dirichletbc(flat, axis, space.sub(1)))
    u = solved(a, L, fixed)
    s = stress(u)
    return {"extension": value(ufl.replace(L, {v: u})), "stress": s, "section": 2 * math.pi * s["zz"] * body.r}


def bending(body):
    """Unknowns w = u_z, u = u_r and s = u_r + u_theta, amplitudes of cos, cos and sin: on the axis w = s = 0."""
    space = fem.VectorFunctionSpace(body.mesh, ("Lagrange", DEGREE), dim=3)

    def strain(x):
        w, u, s = x[0], x[1], x[2]
        v = s - u
        return {"rr": u.dx(1), "tt": s / body.r, "zz": w.dx(0), "rt": v.dx(1) - s / body.r,
                "tz": v.dx(0) - w / body.r, "rz": u.dx(0) + w.dx(1)}

    def stress(x):
        e = strain(x)
        return {**normal_stress(body, e["rr"], e["tt"], e["zz"]), **{k: body.G * e[k] for k in ("rt", "tz", "rz")}}

    x, y = ufl.TrialFunction(space), ufl.TestFunction(space)
    a = math.pi * work(stress(x), strain(y)) * body.r * body.dx
    L = 0
    for sign, ds, inner, outer in body.ends():
        second_moment = math.pi / 4 * (outer**4 - inner**4)
        L += sign * math.pi * body.r / second_moment * y[0] * body.r * ds
    rim = body.splice.halves["left"].sections[-1][1]
    fixed = []
    for component, held_at_rim, zero_on_axis in ((0, True, True), (1, True, False), (2, False, True)):
        part = space.sub(component).collapse()[0]
        zero = fem.Function(part)
        if held_at_rim:
            fixed.append(fem.dirichletbc(zero, body.node_at((space.sub(component), part), rim), space.sub(component)))
        if zero_on_axis and body.splice.bore == 0:
            axis = fem.locate_dofs_geometrical((space.sub(component), part), on_axis)
            fixed.append(fem.dirichletbc(zero, axis, space.sub(component)))
    x = solved(a, L, fixed)
    s = stress(x)
    section = math.pi * (s["zz"] * body.r - s["rz"] * body.z + s["tz"] * body.z) * body.r
    return {"end rotation": value(ufl.replace(L, {y: x})), "stress": s, "section": section}


def sleeve_share(body, section):
    """The sleeve's part of a unit load at z = 0: virtual work of a rigid motion let in over a short length of a sleeve
    that is free there, or, where it is joined to the bar, the stress summed over its section."""
    if body.splice.bonded:
        dS = ufl.Measure("dS", body.mesh, subdomain_data=body.facets)
        return abs(value(ufl.avg(section) * dS(body.curve["sleeve section"])))
    half = body.splice.halves["left"]
    ramp = body.ramp(0.8 * (half.reach - 2 * NOTCH))
    return abs(value(section * ramp.dx(0) * body.dx(body.region["sleeve.left"])))


def von_mises(s):
    zero = ufl.as_ufl(0.0)
    rr, tt, zz, rt, tz, rz = (s.get(k, zero) for k in ("rr", "tt", "zz", "rt", "tz", "rz"))
    return ufl.sqrt(((rr - tt)**2 + (tt - zz)**2 + (zz - rr)**2) / 2 + 3 * (rt**2 + tz**2 + rz**2))


def with_phase(stress, in_plane):
    """Stress of harmonic 1 in the plane of bending (cosine parts) or across it (sine parts)."""
    cosine = ("rr", "tt", "zz", "rz")
    return {k: s for k, s in stress.items() if (k in cosine) == in_plane}
