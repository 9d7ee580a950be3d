# SPDX-License-Identifier: GPL-2.0-or-later
"""The meridian section of a splice, drawn and meshed again from docs/case-format.md and docs/theory.md.

z along the axis (left negative), r the radius, mm. Faces that are not fused get points and curves of their own at the
same place, so that the mesh comes out split: nothing is opened, nothing has to be duplicated later.
"""

import math

import gmsh

NOTCH = 1.0  # mm, fictitious notches at roots and at the edge of the land
REGIONS = ["bar.left", "bar.right", "sleeve.left", "sleeve.right", "fillet.left", "fillet.right"]


class Sketch:
    """Points and curves by place and face; what is asked for twice is made once."""

    def __init__(self):
        self.points, self.curves, self.named = {}, {}, {}

    def point(self, z, r, face=""):
        key = (round(z, 9) + 0.0, round(r, 9) + 0.0, face)
        if key not in self.points:
            self.points[key] = gmsh.model.geo.addPoint(z, r, 0)
        return self.points[key]

    def _curve(self, key, name, make):
        reverse = (key[1], key[0], *key[2:])
        if reverse in self.curves:
            return -self.curves[reverse]
        if key not in self.curves:
            self.curves[key] = make()
            self.named.setdefault(name, []).append(self.curves[key])
        return self.curves[key]

    def line(self, a, b, name):
        return self._curve((a, b, "line"), name, lambda: gmsh.model.geo.addLine(a, b))

    def arc(self, a, centre, b, name):
        middle = gmsh.model.geo.addPoint(*centre, 0)
        return self._curve((a, b, "arc", *centre), name, lambda: gmsh.model.geo.addCircleArc(a, middle, b))

    def surface(self, curves):
        return gmsh.model.geo.addPlaneSurface([gmsh.model.geo.addCurveLoop(curves)])


def fillet(corner, first, second, radius):
    """Rounds the corner between two unit directions that leave it: two tangent points, centre, middle of the arc."""
    half_angle = math.acos(first[0] * second[0] + first[1] * second[1]) / 2
    middle = (first[0] + second[0], first[1] + second[1])
    length = math.hypot(*middle)
    middle = (middle[0] / length, middle[1] / length)
    along, out = radius / math.tan(half_angle), radius / math.sin(half_angle)

    def place(direction, distance):
        return (corner[0] + direction[0] * distance, corner[1] + direction[1] * distance)

    return place(first, along), place(second, along), place(middle, out), place(middle, out - radius)


class HalfDrawing:
    """Draws one side; distances x are measured from the joint outward."""

    def __init__(self, sketch, splice, side):
        self.sketch, self.splice, self.side = sketch, splice, side
        self.half = splice.halves[side]
        self.sign = -1 if side == "left" else 1
        self.inside, self.outside = ("", "") if splice.bonded else ("bar", "sleeve")

    def at(self, x, r, face=""):
        return self.sketch.point(self.sign * x, r, face)

    def line(self, a, b, name):
        return self.sketch.line(a, b, name)

    def arc(self, a, centre, b, name):
        return self.sketch.arc(a, (self.sign * centre[0], centre[1]), b, name)

    def butt_and_slit(self, face):
        """From the joint to the notch at the root, on the given face: butt surface, slit."""
        s, R = self.splice, self.half.radius
        surface = sum(h.radius for h in s.halves.values()) / 2
        rise, length = R - surface, s.blend / 2
        zone = max(length, 2.0)
        name = "butt-surface" if face == self.inside else "bore"
        start, curves = self.at(0, surface, face), []
        if abs(rise) > 1e-6:
            radius = (length**2 + rise**2) / (2 * abs(rise))
            end = self.at(length, R, face)
            curves.append(self.arc(start, (length, R - math.copysign(radius, rise)), end, name))
            start = end
        if zone > length:
            end = self.at(zone, R, face)
            curves.append(self.line(start, end, name))
            start = end
        return curves + [self.line(start, self.at(self.half.reach - NOTCH, R, face), f"slit {face}")]

    def draw(self):
        s, h, side = self.splice, self.half, self.side
        R, root, rho = h.radius, h.reach, NOTCH
        surface = sum(k.radius for k in s.halves.values()) / 2
        face_length = math.hypot(s.leg_on_bar, s.leg_on_sleeve)
        up = (-s.leg_on_bar / face_length, s.leg_on_sleeve / face_length)
        down = (-up[0], -up[1])
        bar_from, bar_to, bar_centre, bar_middle = fillet((root + s.leg_on_bar, R), (1, 0), up, s.toe_radius)

        # Weld, from its lower root point round.
        low, high = self.at(root + rho, R), self.at(root, R + rho)
        toe_middle = self.at(*bar_middle)
        fusion_bar = self.line(low, toe_middle, "fusion bar")
        toe_of_weld = self.arc(toe_middle, bar_centre, self.at(*bar_to), f"bar-toe.{side}")
        top, behind, toe_of_sleeve = self.weld_top(up, down)
        weld_face = self.line(self.at(*bar_to), top, "weld face")
        fusion_sleeve = self.line(behind, high, "fusion sleeve")
        weld_root = self.arc(high, (root, R), low, f"root.{side}")
        weld = [fusion_bar, toe_of_weld, weld_face, *toe_of_sleeve, fusion_sleeve, weld_root]

        # Sleeve, from the joint along the bore, round its end and back over the outside.
        sleeve = self.butt_and_slit(self.outside)
        sleeve.append(self.arc(self.at(root - rho, R, self.outside), (root, R), high, f"root.{side}"))
        sleeve.append(-fusion_sleeve)
        sleeve += self.sleeve_outside(behind)
        sleeve.append(self.line(self.at(0, s.outer), self.at(0, surface, self.outside), "sleeve section"))

        # Bar, from the joint along its surface to the end, back along the axis and up the joint.
        bar = self.butt_and_slit(self.inside)
        bottom = self.at(root, R - rho)
        bar.append(self.arc(self.at(root - rho, R, self.inside), (root, R), bottom, f"root.{side}"))
        bar.append(self.arc(bottom, (root, R), low, f"root.{side}"))
        bar.append(fusion_bar)
        bar.append(self.arc(toe_middle, bar_centre, self.at(*bar_from), f"bar-toe.{side}"))
        bar += self.bar_surface(self.at(*bar_from))
        bar += self.joint(surface)
        return [self.sketch.surface(c) for c in (bar, sleeve, weld)]

    def weld_top(self, up, down):
        """Upper end of the weld face, point where weld and sleeve part, curves between them."""
        s, h = self.splice, self.half
        corner = (h.reach, h.radius + s.leg_on_sleeve)
        stub = s.end - corner[1]
        self.sleeve_toe = None
        if stub > 1e-9:
            toe = fillet(corner, down, (0, 1), s.toe_radius)
            if math.dist(toe[1], corner) + 0.05 * s.toe_radius < stub:
                self.sleeve_toe = toe
                face_end, _, centre, middle = toe
                arc = self.arc(self.at(*face_end), centre, self.at(*middle), f"sleeve-toe.{self.side}")
                return self.at(*face_end), self.at(*middle), [arc]
        self.cut = (h.reach + max(stub, 0) * up[0] / up[1], s.end)
        return self.at(*corner), self.at(*corner), []

    def sleeve_outside(self, start):
        s, curves = self.splice, []
        if self.sleeve_toe:
            _, end, centre, _ = self.sleeve_toe
            curves.append(self.arc(start, centre, self.at(*end), f"sleeve-toe.{self.side}"))
            curves.append(self.line(self.at(*end), self.at(self.half.reach, s.end), "sleeve end"))
            start = self.at(self.half.reach, s.end)
        elif self.at(*self.cut) != start:
            curves.append(self.line(start, self.at(*self.cut), "sleeve end"))
            start = self.at(*self.cut)
        if s.taper > 0:
            next_point = self.at(self.half.reach - s.taper, s.outer)
            curves.append(self.line(start, next_point, "sleeve-mid"))
            start = next_point
        return curves + [self.line(start, self.at(0, s.outer), "sleeve-mid")]

    def bar_surface(self, start):
        x, curves, name = 0.0, [], f"bar.{self.side}"
        for i, (length, radius, round_off) in enumerate(self.half.sections):
            if i > 0:
                step = self.half.sections[i - 1][1] - radius
                assert step >= round_off > 0, "this reference knows steps down with a full fillet only"
                if step > round_off:
                    low = self.at(x, radius + round_off)
                    curves.append(self.line(start, low, "shoulder face"))
                    start = low
                foot = self.at(x + round_off, radius)
                curves.append(self.arc(start, (x + round_off, radius + round_off), foot, f"shoulder.{self.side}.{i}"))
                start = foot
            x += length
            end = self.at(x, radius)
            curves.append(self.line(start, end, f"{name} section {i}"))
            start = end
        inner = self.at(x, self.splice.bore)
        curves.append(self.line(start, inner, f"end.{self.side}"))
        self.inner_start = self.at(0, self.splice.bore, self.side if self.splice.penetration else "")
        curves.append(self.line(inner, self.inner_start, "axis"))
        return curves

    def joint(self, surface):
        top, s = self.at(0, surface, self.inside), self.splice
        if not s.penetration:
            return [self.line(self.inner_start, top, "butt")]
        land = surface - s.penetration
        edge, ring, middle = self.at(0, land - NOTCH, self.side), self.at(0, land + NOTCH), self.at(NOTCH, land)
        return [self.line(self.inner_start, edge, "land"),
                self.arc(edge, (0, land), middle, "land-edge"),
                self.arc(middle, (0, land), ring, "land-edge"),
                self.line(ring, top, "butt")]


def is_notch(name):
    return name.split(".")[0] in ("bar-toe", "sleeve-toe", "root", "land-edge", "shoulder")


def ends_of(curves):
    return [tag for _, tag in gmsh.model.getBoundary([(1, c) for c in curves], combined=False, oriented=False)]


def set_sizes(sketch, splice, per_quarter_turn):
    """Elements grow linearly with the distance from the notches, up to a share of the wall."""
    fields = []
    radii = [h.radius for h in splice.halves.values()]
    wall = min(splice.outer - max(radii), splice.end - min(radii))

    def grow(curves, points, smallest):
        distance = gmsh.model.mesh.field.add("Distance")
        gmsh.model.mesh.field.setNumbers(distance, "CurvesList", curves)
        gmsh.model.mesh.field.setNumbers(distance, "PointsList", points)
        threshold = gmsh.model.mesh.field.add("Threshold")
        largest = 12 * wall / per_quarter_turn
        for key, value in (("InField", distance), ("SizeMin", smallest), ("SizeMax", largest), ("DistMin", 0.0),
                           ("DistMax", (largest - smallest) / 0.3)):
            gmsh.model.mesh.field.setNumber(threshold, key, value)
        fields.append(threshold)

    for name, curves in sketch.named.items():
        if is_notch(name):
            radius = {"bar-toe": splice.toe_radius, "sleeve-toe": splice.toe_radius}.get(name.split(".")[0], NOTCH)
            grow(curves, [], math.pi / 2 * radius / per_quarter_turn)
            grow([], ends_of(curves), 0.5 * math.pi / 2 * radius / per_quarter_turn)
    blend = [c for n in ("butt-surface", "bore") for c in sketch.named.get(n, [])
             if gmsh.model.getType(1, c) == "Circle"]
    grow(blend, ends_of(sketch.named["butt"]), 1.5 / per_quarter_turn)
    smallest = gmsh.model.mesh.field.add("Min")
    gmsh.model.mesh.field.setNumbers(smallest, "FieldsList", fields)
    gmsh.model.mesh.field.setAsBackgroundMesh(smallest)


def draw_and_mesh(splice, per_quarter_turn):
    """Leaves a second-order mesh in the open gmsh session; returns the tag of each name, of regions and of curves."""
    gmsh.model.add("section")
    for option in ("MeshSizeExtendFromBoundary", "MeshSizeFromPoints", "MeshSizeFromCurvature"):
        gmsh.option.setNumber(f"Mesh.{option}", 0)
    gmsh.option.setNumber("Mesh.Algorithm", 6)
    sketch, surfaces = Sketch(), {}
    for side in ("left", "right"):
        for part, tag in zip(("bar", "sleeve", "fillet"), HalfDrawing(sketch, splice, side).draw()):
            surfaces[f"{part}.{side}"] = tag
    gmsh.model.geo.synchronize()
    region_tag = {name: i + 1 for i, name in enumerate(REGIONS)}
    for name, tag in region_tag.items():
        gmsh.model.addPhysicalGroup(2, [surfaces[name]], tag)
    curve_tag = {}
    for i, (name, curves) in enumerate(sketch.named.items()):
        curve_tag[name] = i + 1
        gmsh.model.addPhysicalGroup(1, curves, i + 1)
    set_sizes(sketch, splice, per_quarter_turn)
    gmsh.model.mesh.generate(2)
    gmsh.model.mesh.setOrder(2)
    return region_tag, curve_tag
