# SPDX-License-Identifier: GPL-2.0-or-later
"""docs/independence.md, from the rows of a comparison."""

import fnmatch
import tomllib
from pathlib import Path

SHOWN = ("twist", "end rotation", "extension", "share, *", "bar-toe.*", "root.*, torsion", "root.*, bending",
         "land-edge, torsion", "land-edge, bending", "bar.*, torsion", "bar.*, bending")
UNITS = {"twist": ("rad/(kN·m)", 1e6), "end rotation": ("rad/(kN·m)", 1e6), "extension": ("mm/kN", 1e3)}

HEAD = """# Compared with a general finite-element library

Written by `cmake --build BUILD --target independence_page`; do not edit.

The same splices are solved a second time by a program that shares nothing with this one: [DOLFINx](https://fenicsproject.org) {library} from the Debian distribution, driven from `tests/independence/`.
It reads the case file with its own reader and draws and meshes the section with code of its own.
It solves torsion in the angle of twist and bending in u_r and u_r + u_θ, with elements of third degree.
It takes the stress raw from the displacement and cuts the section by virtual work.
It knows open and bonded slits; snug and pressed ones, which need constraints between faces, are not compared.

The program was asked for {accuracy:g} %; its bars are its own.
The library is run on meshes with 8, 12 and 18 elements on a quarter turn of each notch; its bar is the last change, and not less than the change before it over 2.25.
A number agrees when the difference is within the sum of both bars, or below 0.005 %, where neither side claims anything.
The two programs agree when at least 95 % of all numbers do and none is farther off than twice that sum, differences with an understood cause apart.
Stresses are von Mises peaks of a site.

To run it: `apt-get install --no-install-recommends python3-dolfinx python3-gmsh`, then `./run test -L slow -R Independence`.
Without the packages these tests count as skipped.
"""


def unit_and_factor(name):
    if name in UNITS:
        return UNITS[name]
    if name.startswith("share"):
        return "", 1.0
    return ("MPa/kN", 1e3) if name.endswith("axial") else ("MPa/(kN·m)", 1e6)


def table_line(row):
    unit, factor = unit_and_factor(row.name)
    our_bar, their_bar = 100 * row.our_bar / abs(row.ours), 100 * row.their_bar / abs(row.theirs)
    return (f"| {row.name} | {row.ours * factor:.6g} | {our_bar:.4f} | {row.theirs * factor:.6g} | {their_bar:.4f} "
            f"| {unit} | {100 * row.difference:+.4f} | {row.verdict} |")


def section(path, rows):
    title = tomllib.loads(Path(path).read_text(encoding="utf-8"))["title"]
    within = sum(row.verdict == "within the bars" for row in rows)
    plain = [row for row in rows if not row.cause]
    worst = max(plain, key=lambda row: abs(row.difference))
    lines = [f"## {title}", "", f"{len(rows)} numbers compared, {within} within the bars.",
             f"Largest difference without an understood cause: {100 * worst.difference:+.3f} % ({worst.name}).", ""]
    outside = [row for row in plain if row.verdict != "within the bars"]
    for row in outside:
        lines.append(f"Outside the bars: {row.name}, {100 * row.difference:+.3f} % against {100 * row.bars:.3f} %.")
    causes = {}
    for row in rows:
        if row.cause and row.verdict != "within the bars":
            causes.setdefault(row.cause, []).append(f"{row.name} ({100 * row.difference:+.2f} %)")
    for cause, names in causes.items():
        lines.append(f"Understood: {'; '.join(names)}: {cause}.")
    if outside or causes:
        lines.append("")
    lines += ["| number | program | bar % | library | bar % | unit | difference % | |"]
    lines += ["|---|---|---|---|---|---|---|---|"]
    lines += [table_line(row) for row in rows if any(fnmatch.fnmatch(row.name, pattern) for pattern in SHOWN)]
    return "\n".join(lines) + "\n"


def text(results, library, accuracy):
    plain = [row for rows in results.values() for row in rows if not row.cause]
    within = sum(row.verdict == "within the bars" for row in plain)
    total = (f"Of the {len(plain)} numbers without an understood cause {within} are within the bars, "
             f"{100 * within / len(plain):.0f} %.\n")
    sections = [section(path, rows) for path, rows in results.items()]
    return "\n".join([HEAD.format(library=library, accuracy=accuracy), total, *sections])
