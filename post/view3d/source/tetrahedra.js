// SPDX-License-Identifier: GPL-2.0-or-later
// The body of the solid model: straight tetrahedra between points, cut open by planes. x, y and z in mm.

const sidesOf = { outside: 1, unfused: 2, between: 3 };
const dashLength = 0.05; // of the largest radius
const besideFaces = 0.004; // rad: faces of the lap lie in a plane through the axis and would be cut in themselves
const smoothCos = 0.8; // of the normals of faces that are one smooth surface

// Corners of the edges of an element, and its parts where middles stand on them: 4 to 9 in this order.
const edgesOfElement = [[0, 1], [1, 2], [0, 2], [0, 3], [1, 3], [2, 3]];
const partsOfElement = [[0, 4, 6, 7], [4, 1, 5, 8], [6, 5, 2, 9], [7, 8, 9, 3], [4, 9, 5, 6], [4, 9, 6, 7],
  [4, 9, 7, 8], [4, 9, 8, 5]];
// As solver/solid_face.h: corners counter-clockwise seen from outside, then the middles between them.
const facesOfElement = [[0, 2, 1, 6, 5, 4], [0, 1, 3, 4, 8, 7], [1, 2, 3, 5, 9, 8], [0, 3, 2, 7, 9, 6]];
const partsOfFace = [[0, 3, 5], [3, 1, 4], [5, 4, 2], [3, 4, 5]];

const dot = (a, b) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const minus = (a, b) => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const cross = (a, b) => [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
const mixed = (a, b, share) => a.map((value, k) => value + share * (b[k] - value));
const at = (list, i) => [list[3 * i], list[3 * i + 1], list[3 * i + 2]];

function unit(a) {
  const length = Math.hypot(...a);
  return length > 0 ? a.map((value) => value / length) : [0, 0, 1];
}

// Sum of the normals that belong to one smooth surface with each triangle's own.
function cornerNormals(triangles, normals) {
  const around = new Map();
  triangles.forEach((point, k) => {
    if (!around.has(point)) around.set(point, []);
    around.get(point).push(normals[Math.floor(k / 3)]);
  });
  return triangles.map((point, k) => {
    const own = normals[Math.floor(k / 3)], sum = [0, 0, 0];
    for (const normal of around.get(point))
      if (dot(normal, own) > smoothCos) for (let c = 0; c < 3; ++c) sum[c] += normal[c];
    return unit(sum);
  });
}

// Tetrahedra, faces by what lies behind them and lines on the outside, into points: those of the scenario, then the
// middles that it leaves out. Made once.
export function bodyOf(scenario) {
  if (scenario.body) return scenario.body;
  const key = (a, b) => (a < b ? 65536 * a + b : 65536 * b + a);
  const middles = new Map();
  const corners = scenario.corners;
  for (let k = 0; k < scenario.middle.length / 2; ++k)
    middles.set(key(scenario.middle[2 * k], scenario.middle[2 * k + 1]), corners + k);
  const added = [];
  const middleOf = (a, b) => {
    if (!middles.has(key(a, b))) {
      middles.set(key(a, b), scenario.points + added.length);
      added.push([a, b]);
    }
    return middles.get(key(a, b));
  };
  const body = { added, tetrahedra: [], faces: { 1: [], 2: [], 3: [] }, edges: [] };
  for (let e = 0; e < scenario.sides.length; ++e) {
    const node = [0, 1, 2, 3].map((k) => scenario.element[4 * e + k]);
    const isParted = edgesOfElement.some(([a, b]) => middles.has(key(node[a], node[b])));
    if (isParted) {
      for (const [a, b] of edgesOfElement) node.push(middleOf(node[a], node[b]));
      for (const part of partsOfElement) body.tetrahedra.push(...part.map((k) => node[k]));
    } else body.tetrahedra.push(...node);
    for (let f = 0; f < 4; ++f) {
      const list = body.faces[(scenario.sides[e] >> (2 * f)) & 3];
      if (!list) continue;
      const face = facesOfElement[f].map((k) => node[k]);
      if (isParted) for (const part of partsOfFace) list.push(...part.map((k) => face[k]));
      else list.push(face[0], face[1], face[2]);
    }
  }
  for (let e = 0; e < scenario.edge.length; e += 2) {
    const a = scenario.edge[e], b = scenario.edge[e + 1], middle = middles.get(key(a, b));
    if (middle === undefined) body.edges.push(a, b);
    else body.edges.push(a, middle, middle, b);
  }
  body.place = withAdded(scenario.place, added, 3);
  body.normals = {};
  for (const kind of [sidesOf.outside, sidesOf.unfused]) {
    const triangles = body.faces[kind], flat = [];
    for (let t = 0; t < triangles.length; t += 3) {
      const [a, b, c] = [0, 1, 2].map((k) => at(body.place, triangles[t + k]));
      flat.push(unit(cross(minus(b, a), minus(c, a))));
    }
    body.normals[kind] = cornerNormals(triangles, flat);
  }
  scenario.body = body;
  return body;
}

// Values at all points of a body: the middles that were left out lie halfway.
function withAdded(values, added, rows) {
  const all = new Float32Array(values.length + rows * added.length);
  all.set(values);
  let end = values.length;
  for (const [a, b] of added)
    for (let k = 0; k < rows; ++k) all[end++] = (all[rows * a + k] + all[rows * b + k]) / 2;
  return all;
}

export function hasUnjoined(scenario) {
  return bodyOf(scenario).faces[sidesOf.unfused].length > 0;
}

// A quantity of one load at the points of the scenario.
export function valuesOf(scenario, load, quantity) {
  const told = scenario.loads[load];
  if (quantity.key !== 'movement') return told[quantity.key];
  return Float32Array.from({ length: scenario.points }, (_, i) => Math.hypot(...at(told.moved, i)));
}

// Corners of the outside with their areas, for the range of colours.
export function outsideAreas(scenario) {
  const { place, faces, added } = bodyOf(scenario);
  const whole = scenario.points, own = (i) => (i < whole ? i : added[i - whole][0]);
  const list = [], triangles = faces[sidesOf.outside];
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => at(place, triangles[t + k]));
    list.push({ corner: [0, 1, 2].map((k) => own(triangles[t + k])), area: Math.hypot(...cross(minus(b, a), minus(c, a))) / 2 });
  }
  return list;
}

// A half space keeps normal . x <= offset. `pieces` do not overlap; each of `planes` is cut as far as `within` reaches.
export function pieces(cut) {
  const { kind, place } = cut;
  const cos = Math.cos(place + besideFaces), sin = Math.sin(place + besideFaces);
  const one = { normal: [-sin, cos, 0], offset: 0 };
  const other = { normal: [cos, sin, 0], offset: 0 };
  const turned = (half) => ({ normal: half.normal.map((value) => -value), offset: -half.offset });
  if (kind === 'half') return { pieces: [[one]], planes: [{ plane: one, within: [] }] };
  if (kind === 'quarter')
    return { pieces: [[one], [turned(one), other]],
      planes: [{ plane: one, within: [turned(other)] }, { plane: other, within: [turned(one)] }] };
  if (kind === 'across') {
    const half = { normal: [0, 0, 1], offset: place };
    return { pieces: [[half]], planes: [{ plane: half, within: [] }] };
  }
  return { pieces: [[]], planes: [] };
}

const beyond = (half, place) => dot(half.normal, place) - half.offset;

export function isKept(cut, place, reach = 0) {
  return pieces(cut).pieces.some((piece) => piece.every((half) => beyond(half, place) <= reach));
}

// { place, moved, value, normal }
function between(a, b, share) {
  return { place: mixed(a.place, b.place, share), moved: mixed(a.moved, b.moved, share),
    value: a.value + share * (b.value - a.value), normal: a.normal };
}

// Sutherland and Hodgman, one half space after the other.
function clipped(polygon, piece) {
  for (const half of piece) {
    const kept = [];
    polygon.forEach((a, i) => {
      const b = polygon[(i + 1) % polygon.length];
      const from = beyond(half, a.place), to = beyond(half, b.place);
      if (from <= 0) kept.push(a);
      if ((from <= 0) !== (to <= 0)) kept.push(between(a, b, from / (from - to)));
    });
    polygon = kept;
  }
  return polygon;
}

class Surface {
  constructor() {
    Object.assign(this, { points: [], normals: [], values: [], triangles: [], places: [] });
  }

  add(polygon) {
    const first = this.values.length;
    for (const { place, moved, value, normal } of polygon) {
      this.points.push(...moved);
      this.normals.push(...normal);
      this.values.push(value);
      this.places.push(...place);
    }
    for (let k = 2; k < polygon.length; ++k) this.triangles.push(first, first + k - 1, first + k);
  }

  // Value and place between the corners of a triangle; there is no error bar of the field.
  read(corner, weight) {
    const sum = (of) => corner.reduce((total, p, k) => total + weight[k] * of(p), 0);
    const [x, y, z] = [0, 1, 2].map((k) => sum((p) => this.places[3 * p + k]));
    return { value: sum((p) => this.values[p]), spread: null, z, r: Math.hypot(x, y), theta: Math.atan2(y, x) };
  }
}

// What is drawn of the body: its skin, the faces that the cut opens, and lines on both.
export function cutOpen(scenario, load, quantity, cut, factor) {
  const body = bodyOf(scenario);
  const { place, added } = body;
  const values = withAdded(valuesOf(scenario, load, quantity), added, 1);
  const moved = withAdded(scenario.loads[load].moved, added, 3);
  const { pieces: kept, planes } = pieces(cut);
  const corner = (i, normal) => {
    const here = at(place, i), movement = at(moved, i);
    return { place: here, moved: here.map((value, k) => value + factor * movement[k]), value: values[i], normal };
  };
  const skin = new Surface(), faces = new Surface(), lines = { edges: [], open: [], dashes: [] };

  for (const kind of cut.kind === 'whole' ? [sidesOf.outside] : [sidesOf.outside, sidesOf.unfused]) {
    const triangles = body.faces[kind], normals = body.normals[kind];
    for (let t = 0; t < triangles.length; t += 3) {
      const polygon = [0, 1, 2].map((k) => corner(triangles[t + k], normals[t + k]));
      for (const piece of kept) skin.add(clipped(polygon, piece));
    }
  }

  const addLine = (list, a, b) => list.push(...a.moved, ...b.moved);
  const addClipped = (list, a, b, piece) => {
    const ends = clipped([a, b], piece);
    // A segment clipped as a polygon of two corners meets itself on its way back.
    if (ends.length >= 2) addLine(list, ends[0], ends[1]);
  };
  for (let e = 0; e < body.edges.length; e += 2)
    for (const piece of kept) addClipped(lines.edges, corner(body.edges[e]), corner(body.edges[e + 1]), piece);

  const dash = dashLength * scenario.r.reduce((most, value) => Math.max(most, value), 0);
  for (const { plane, within } of planes) {
    const distance = Float64Array.from({ length: place.length / 3 }, (_, i) => beyond(plane, at(place, i)));
    const crossing = (i, j) => between(corner(i, plane.normal), corner(j, plane.normal), distance[i] / (distance[i] - distance[j]));
    const list = body.tetrahedra;
    for (let t = 0; t < list.length; t += 4) {
      const front = [], behind = [];
      for (let k = 0; k < 4; ++k) (distance[list[t + k]] >= 0 ? front : behind).push(list[t + k]);
      if (front.length === 0 || behind.length === 0) continue;
      const pairs = front.length === 2
        ? [[front[0], behind[0]], [front[0], behind[1]], [front[1], behind[1]], [front[1], behind[0]]]
        : front.flatMap((a) => behind.map((b) => [a, b]));
      faces.add(clipped(pairs.map(([a, b]) => crossing(a, b)), within));
    }
    for (const kind of Object.values(sidesOf)) {
      const triangles = body.faces[kind];
      for (let t = 0; t < triangles.length; t += 3) {
        const ends = [];
        for (let k = 0; k < 3; ++k) {
          const i = triangles[t + k], j = triangles[t + ((k + 1) % 3)];
          if (distance[i] >= 0 !== distance[j] >= 0) ends.push(crossing(i, j));
        }
        if (ends.length !== 2) continue;
        if (kind !== sidesOf.unfused) {
          addClipped(lines.edges, ...ends, within);
          continue;
        }
        addClipped(lines.open, ...ends, within);
        // Dashes go by place, so that they run on from one triangle to the next.
        const along = ends.map(({ place: [x, y, z] }) => [z, Math.hypot(x, y), Math.hypot(x, y) * Math.atan2(y, x)]);
        const reach = along[0].map((value, k) => Math.abs(along[1][k] - value));
        if (reach[2] > Math.PI * along[0][1]) continue; // behind the axis, where the angle jumps
        const c = reach.indexOf(Math.max(...reach));
        const n = Math.max(1, Math.ceil(Math.hypot(...minus(ends[1].place, ends[0].place)) / (dash / 4)));
        for (let k = 0; k < n; ++k)
          if (Math.floor((along[0][c] + ((along[1][c] - along[0][c]) * (k + 0.5)) / n) / dash) % 2 === 0)
            addClipped(lines.dashes, between(ends[0], ends[1], k / n), between(ends[0], ends[1], (k + 1) / n), within);
      }
    }
  }
  return { skin, faces, lines };
}

// Nearest point of the scenario to a place, and how far away it is; remembered.
export function nearestPoint(scenario, place) {
  scenario.nearest ??= new Map();
  const key = place.map((value) => value.toFixed(3)).join();
  if (!scenario.nearest.has(key)) {
    let best = 0, least = Infinity;
    for (let i = 0; i < scenario.points; ++i) {
      const away = (scenario.place[3 * i] - place[0]) ** 2 + (scenario.place[3 * i + 1] - place[1]) ** 2 +
        (scenario.place[3 * i + 2] - place[2]) ** 2;
      if (away < least) [least, best] = [away, i];
    }
    scenario.nearest.set(key, { point: best, away: Math.sqrt(least) });
  }
  return scenario.nearest.get(key);
}
