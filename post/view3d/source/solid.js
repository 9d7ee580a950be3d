// SPDX-License-Identifier: GPL-2.0-or-later
// The body of revolution made from its meridian section: x = r cos(theta), y = r sin(theta), z along the shaft.
import { addBetween, movementAt, valueAt } from './fields.js';

const sectorAngle = (5 * Math.PI) / 180;
const dashLength = 0.05; // of the largest radius

// The part of a section left of z = limit; its cut edges are listed.
function leftOf(section, limit) {
  const fields = {};
  for (const [name, values] of Object.entries(section.fields)) fields[name] = Array.from(values);
  const inside = (i) => fields.z[i] <= limit;
  const made = new Map();
  const crossing = (a, b) => {
    const key = a < b ? `${a} ${b}` : `${b} ${a}`;
    if (!made.has(key)) {
      made.set(key, addBetween(fields, a, b, (limit - fields.z[a]) / (fields.z[b] - fields.z[a])));
      fields.z[made.get(key)] = limit;
    }
    return made.get(key);
  };
  const kept = { fields, triangle: [], part: [], skin: [], outline: [], unfused: [], across: [] };
  for (let t = 0; t < section.part.length; ++t) {
    const corner = [0, 1, 2].map((k) => section.triangle[3 * t + k]);
    const polygon = [], cut = [];
    for (let k = 0; k < 3; ++k) {
      const a = corner[k], b = corner[(k + 1) % 3];
      if (inside(a)) polygon.push(a);
      if (inside(a) !== inside(b)) {
        polygon.push(crossing(a, b));
        cut.push(polygon.at(-1));
      }
    }
    for (let k = 2; k < polygon.length; ++k) {
      kept.triangle.push(polygon[0], polygon[k - 1], polygon[k]);
      kept.part.push(section.part[t]);
    }
    // Walked outward, so that the material lies on the left.
    if (cut.length === 2) kept.across.push(...cut.sort((a, b) => fields.r[a] - fields.r[b]));
  }
  for (const name of ['skin', 'outline', 'unfused'])
    for (let e = 0; e < section[name].length; e += 2) {
      const a = section[name][e], b = section[name][e + 1];
      if (inside(a) && inside(b)) kept[name].push(a, b);
      else if (inside(a)) kept[name].push(a, crossing(a, b));
      else if (inside(b)) kept[name].push(crossing(a, b), b);
    }
  return kept;
}

export function sectionOf(scenario, fields, cut) {
  const section = { fields, triangle: scenario.triangle, part: scenario.part, skin: scenario.skin,
    outline: scenario.outline, unfused: scenario.unfused, across: [] };
  return cut.kind === 'across' ? leftOf(section, cut.place) : section;
}

// Angles of the body that stay, and those of its flat faces.
export function anglesOf(cut) {
  if (cut.kind === 'half')
    return { from: cut.place + Math.PI, to: cut.place + 2 * Math.PI, faces: [cut.place + Math.PI, cut.place] };
  if (cut.kind === 'quarter')
    return { from: cut.place + Math.PI / 2, to: cut.place + 2 * Math.PI, faces: [cut.place + Math.PI / 2, cut.place] };
  return { from: 0, to: 2 * Math.PI, faces: [] };
}

const movement = new Float64Array(3);

// In space, with the movement of point i; { z, r }: that point itself, or a place near it.
export function placeOf(fields, i, theta, factor, { z, r } = { z: fields.z[i], r: fields.r[i] }) {
  const cos = Math.cos(theta), sin = Math.sin(theta);
  const [u, v, w] = movementAt(fields, i, cos, sin, movement);
  const out = r + factor * u;
  return [out * cos - factor * v * sin, out * sin + factor * v * cos, z + factor * w];
}

// Points and triangles with a value at each point; each point knows where in the section and at which angle it lies.
class Surface {
  constructor(section, quantity, factor) {
    Object.assign(this, { section, quantity, factor });
    this.points = [];
    this.normals = [];
    this.values = [];
    this.triangles = [];
    this.at = []; // point of the section
    this.theta = [];
  }

  add(i, theta, normal) {
    this.points.push(...placeOf(this.section.fields, i, theta, this.factor));
    this.normals.push(...normal);
    this.values.push(valueAt(this.section.fields, this.quantity, i, theta));
    this.at.push(i);
    this.theta.push(theta);
    return this.at.length - 1;
  }
}

// Edges of the section swept from one angle to another; the material lies on the left of each edge.
function sweep(surface, edges, { from, to }) {
  const n = Math.ceil((to - from) / sectorAngle - 1e-9);
  const { z, r } = surface.section.fields;
  for (let e = 0; e < edges.length; e += 2) {
    const a = edges[e], b = edges[e + 1];
    const length = Math.hypot(z[b] - z[a], r[b] - r[a]);
    if (length < 1e-9) continue;
    const across = -(z[b] - z[a]) / length, along = (r[b] - r[a]) / length;
    const first = surface.at.length;
    for (let k = 0; k <= n; ++k) {
      const theta = from + ((to - from) * k) / n;
      const normal = [across * Math.cos(theta), across * Math.sin(theta), along];
      surface.add(a, theta, normal);
      surface.add(b, theta, normal);
    }
    for (let k = 0; k < n; ++k) {
      const p = first + 2 * k;
      surface.triangles.push(p, p + 1, p + 2, p + 1, p + 3, p + 2);
    }
  }
}

export function sweptSkin(section, quantity, factor, angles) {
  const surface = new Surface(section, quantity, factor);
  sweep(surface, section.skin, angles);
  return surface;
}

export function cutFaces(section, quantity, factor, angles) {
  const surface = new Surface(section, quantity, factor);
  sweep(surface, section.across, angles);
  angles.faces.forEach((theta, side) => {
    const facing = side === 0 ? -1 : 1;
    const normal = [-facing * Math.sin(theta), facing * Math.cos(theta), 0];
    const first = surface.at.length;
    for (let i = 0; i < section.fields.z.length; ++i) surface.add(i, theta, normal);
    for (const corner of section.triangle) surface.triangles.push(first + corner);
  });
  return surface;
}

// Lines on the faces: edges of the parts and welds, and the dashes of faces that are not joined.
export function faceLines(section, factor, { faces }) {
  const { z, r } = section.fields;
  const lines = { edges: [], open: [], dashes: [] };
  const dash = dashLength * r.reduce((most, value) => Math.max(most, value), 0);
  const place = (a, b, share, theta) => {
    const p = placeOf(section.fields, a, theta, factor), q = placeOf(section.fields, b, theta, factor);
    return p.map((value, k) => value + share * (q[k] - value));
  };
  for (const theta of faces) {
    for (let e = 0; e < section.outline.length; e += 2)
      lines.edges.push(...place(section.outline[e], section.outline[e + 1], 0, theta),
        ...place(section.outline[e], section.outline[e + 1], 1, theta));
    for (let e = 0; e < section.unfused.length; e += 2) {
      const a = section.unfused[e], b = section.unfused[e + 1];
      lines.open.push(...place(a, b, 0, theta), ...place(a, b, 1, theta));
      const length = Math.hypot(z[b] - z[a], r[b] - r[a]);
      const along = Math.abs(z[b] - z[a]) >= Math.abs(r[b] - r[a]) ? z : r;
      // Dashes go by place, so that they run on from one edge to the next.
      const n = Math.max(1, Math.ceil(length / (dash / 4)));
      for (let k = 0; k < n; ++k) {
        const middle = along[a] + ((along[b] - along[a]) * (k + 0.5)) / n;
        if (Math.floor(middle / dash) % 2 === 0)
          lines.dashes.push(...place(a, b, k / n, theta), ...place(a, b, (k + 1) / n, theta));
      }
    }
  }
  return lines;
}
