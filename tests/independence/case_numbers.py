# SPDX-License-Identifier: GPL-2.0-or-later
"""The numbers of a case file that shape and stiffness depend on, in mm and MPa, read without the program."""

import tomllib
from dataclasses import dataclass
from pathlib import Path

TO_HOUSE_UNIT = {"mm": 1.0, "GPa": 1000.0, "MPa": 1.0}
MATERIAL_FILE = Path(__file__).resolve().parents[2] / "cases" / "materials.toml"


def quantity(text):
    number, unit = text.split(" ", 1)
    return float(number) * TO_HOUSE_UNIT[unit]


@dataclass
class Steel:
    E: float
    nu: float


@dataclass
class Half:
    """One side of the splice; lengths from the joint outward, radii."""
    sections: list  # of (length, radius, fillet)
    reach: float  # of the sleeve
    bar: Steel

    @property
    def radius(self):
        return self.sections[0][1]


@dataclass
class Splice:
    halves: dict  # "left", "right"
    bore: float  # radius
    penetration: float  # 0: full
    blend: float
    outer: float  # radius of the sleeve
    end: float  # radius of the sleeve at its tapered ends
    taper: float
    leg_on_bar: float
    leg_on_sleeve: float
    toe_radius: float
    bonded: bool
    sleeve: Steel
    filler: Steel


def library(case):
    entries = tomllib.loads(MATERIAL_FILE.read_text(encoding="utf-8"))["material"] + case.get("material", [])
    steels = {}
    for entry in entries:
        steel = Steel(quantity(entry.get("elastic_modulus", "210 GPa")), entry.get("poisson_ratio", 0.3))
        for name in [entry["name"], *entry.get("loose_names", []), *entry.get("other_names", [])]:
            steels[name] = steel
    return steels


def half(case, side, steels):
    sleeve = case["sleeve"]
    shift = quantity(sleeve.get("offset", "0 mm")) * (1 if side == "right" else -1)
    sections = [(quantity(s["length"]), quantity(s["diameter"]) / 2, quantity(s.get("fillet", "0 mm")))
                for s in case[side]["section"]]
    return Half(sections, quantity(sleeve["length"]) / 2 + shift, steels[case[side]["material"]])


def read_splice(path):
    case = tomllib.loads(Path(path).read_text(encoding="utf-8"))
    steels = library(case)
    halves = {side: half(case, side, steels) for side in ("left", "right")}
    sleeve, weld, joint = case["sleeve"], case["sleeve"]["weld"], case["joint"]
    clearance = quantity(sleeve["clearance"])
    bonded = sleeve.get("slit") == "bonded"
    if not bonded and clearance <= 0:
        raise ValueError("this reference knows open and bonded slits only")
    larger_bore = max(h.radius for h in halves.values()) + clearance / 2
    outer = larger_bore + quantity(sleeve["wall"]) if "wall" in sleeve else quantity(sleeve["outer_diameter"]) / 2
    penetration = joint["penetration"]
    return Splice(
        halves=halves,
        bore=quantity(case["left"].get("bore", "0 mm")) / 2,
        penetration=0.0 if penetration == "full" else quantity(penetration),
        blend=quantity(joint["blend"]),
        outer=outer,
        end=larger_bore + quantity(sleeve["end_wall"]) if "end_wall" in sleeve else outer,
        taper=quantity(sleeve.get("taper_length", "0 mm")),
        leg_on_bar=quantity(weld.get("leg_on_bar", weld.get("leg"))),
        leg_on_sleeve=quantity(weld.get("leg_on_sleeve", weld.get("leg"))),
        toe_radius=quantity(weld.get("toe_radius", "1 mm")),
        bonded=bonded,
        sleeve=steels[sleeve["material"]],
        filler=steels[weld.get("filler", "ER70S-6")],
    )
