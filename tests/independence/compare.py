# SPDX-License-Identifier: GPL-2.0-or-later
"""Solves a splice with DOLFINx and compares it with the program, number by number, within the sum of both error bars.

    compare.py --program BUILD/tests/independence/meridian_numbers [--update docs/independence.md] CASE...

Agreement: at least 95 % of all numbers lie within the sum of both bars, and none is farther off than twice that sum.
Exit status: 0 agrees, 1 does not agree, 77 skipped because the library is not installed.
"""

import argparse
import fnmatch
import json
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path

SKIPPED = 77
LIBRARY_MODULES = ("dolfinx", "gmsh", "mpi4py", "numpy", "petsc4py", "ufl")
MESHES = (8, 12, 18)  # elements on a quarter turn of a notch, of third degree
LEAST_ORDER = 2  # of a raw stress at a surface in the element size; three in theory where it is smooth
PROGRAM_ACCURACY_PERCENT = 0.2
SHARE_WITHIN_BARS = 0.95  # what the program promises of its bars
# Both bars are changes between meshes, which for twist, rotation, extension and shares shrink to the sixth digit: below
# this neither side claims anything, and no check reads so far.
NOT_CLAIMED = 5e-5
# Differences with a cause that is understood: case, number, largest difference allowed, cause.
UNDERSTOOD = (
    ("bonded-slit", "share, *", 0.003,
     "the program sums nodal forces, and the node where section and joined slit meet brings in some of the slit's"),
)

try:
    import harmonics
    import surface
    from dolfinx import __version__ as library_version, fem
except ModuleNotFoundError as missing:
    if missing.name not in LIBRARY_MODULES:
        raise
    print(f"SKIPPED: {missing}. The comparison with a general finite-element library needs the Debian packages\n"
          "python3-dolfinx and python3-gmsh: apt-get install --no-install-recommends python3-dolfinx python3-gmsh",
          flush=True)
    sys.exit(SKIPPED)

import page
from case_numbers import read_splice


def sites(body):
    """Site id, its curves, and the regions whose side of the curve is read."""
    everywhere = list(body.region)
    found = {}
    for side in ("left", "right"):
        for notch in ("bar-toe", "root", "sleeve-toe"):
            found[f"{notch}.{side}"] = ([f"{notch}.{side}"], everywhere)
        found[f"bar.{side}"] = ([c for c in body.curve if c.startswith(f"bar.{side} section")], everywhere)
        for curve in body.curve:
            if curve.startswith(f"shoulder.{side}"):
                found[curve] = ([curve], everywhere)
    found["land-edge"] = (["land-edge"], everywhere)
    found["sleeve-mid"] = (["sleeve-mid"], everywhere)
    found["butt-surface"] = (["butt-surface"], ["bar.left", "bar.right"])
    return {site: place for site, place in found.items() if all(c in body.curve for c in place[0])}


def reference(splice, per_quarter_turn):
    body = harmonics.meshed(splice, per_quarter_turn)
    numbers, loads = {}, {"torsion": harmonics.torsion(body), "bending": harmonics.bending(body),
                          "axial": harmonics.tension(body)}
    reader = surface.Reader(body)
    for load, answer in loads.items():
        for name in ("twist", "end rotation", "extension"):
            if name in answer:
                numbers[name] = answer[name]
        numbers[f"share, {load}"] = harmonics.sleeve_share(body, answer["section"])
        phases = [answer["stress"]]
        if load == "bending":
            phases = [harmonics.with_phase(answer["stress"], in_plane) for in_plane in (True, False)]
        stresses = [fem.Expression(harmonics.von_mises(s), reader.points) for s in phases]
        for site, (curves, regions) in sites(body).items():
            numbers[f"{site}, {load}"] = max(reader.peak(s, curves, regions) for s in stresses)
    return numbers


def reference_with_bars(path):
    """Finest value; its bar is the change from the mesh before, and not less than what the change before that one would
    leave after another refinement, because two meshes can agree by chance."""
    splice = read_splice(path)
    first, second, third = (reference(splice, n) for n in MESHES)
    shrink = (MESHES[2] / MESHES[1])**LEAST_ORDER
    return {name: (third[name], max(abs(third[name] - second[name]), abs(second[name] - first[name]) / shrink))
            for name in third}


@dataclass
class Row:
    name: str
    ours: float
    our_bar: float
    theirs: float
    their_bar: float
    allowed: float = 0.0  # of an understood difference, relative
    cause: str = ""

    @property
    def difference(self):
        return self.ours / self.theirs - 1

    @property
    def bars(self):
        """Sum of both, relative, and not below what is claimed."""
        return max((self.our_bar + self.their_bar) / abs(self.theirs), NOT_CLAIMED)

    @property
    def verdict(self):
        if abs(self.difference) <= self.bars:
            return "within the bars"
        if self.cause:
            return "understood" if abs(self.difference) <= self.allowed else "DIFFERS"
        return "outside the bars" if abs(self.difference) <= 2 * self.bars else "DIFFERS"


def program_numbers(program, path):
    run = subprocess.run([program, path, str(PROGRAM_ACCURACY_PERCENT)], stdout=subprocess.PIPE, check=True, text=True)
    return json.loads(run.stdout)


def understood(path, name):
    for case, pattern, allowed, cause in UNDERSTOOD:
        if Path(path).stem == case and fnmatch.fnmatch(name, pattern):
            return allowed, cause
    return 0.0, ""


def compared(program, path):
    """Rows of one case; both sides must know the same numbers."""
    ours, theirs = program_numbers(program, path), reference_with_bars(path)
    if set(ours) != set(theirs):
        raise SystemExit(f"{path}: known to one side only: {sorted(set(ours) ^ set(theirs))}")
    return [Row(name, *ours[name], *theirs[name], *understood(path, name)) for name in ours]


def agree(rows):
    plain = [row for row in rows if not row.cause]
    within = sum(row.verdict == "within the bars" for row in plain)
    return within >= SHARE_WITHIN_BARS * len(plain) and all(row.verdict != "DIFFERS" for row in rows)


def printed(path, rows):
    print(path)
    for row in rows:
        print(f"{row.name:28} {row.ours:13.6e} +-{100 * row.our_bar / row.ours:8.4f} %  {row.theirs:13.6e} "
              f"+-{100 * row.their_bar / row.theirs:8.4f} %  {100 * row.difference:+9.5f} %  {row.verdict}", flush=True)


def main():
    arguments = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    arguments.add_argument("--program", required=True, help="the built meridian_numbers")
    arguments.add_argument("--update", metavar="FILE", help="write the page with the table of these cases")
    arguments.add_argument("cases", nargs="+")
    asked = arguments.parse_args()
    results = {}
    for path in asked.cases:
        results[path] = compared(asked.program, path)
        printed(path, results[path])
    agrees = agree([row for rows in results.values() for row in rows])
    print("The two agree." if agrees else "The two do NOT agree.")
    if asked.update:
        Path(asked.update).write_text(page.text(results, library_version, PROGRAM_ACCURACY_PERCENT), encoding="utf-8")
    return 0 if agrees else 1


if __name__ == "__main__":
    sys.exit(main())
