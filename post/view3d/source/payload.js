// SPDX-License-Identifier: GPL-2.0-or-later
// Reads what post/view_payload.cpp writes; the order of the arrays is told in post/view_payload.h.

function bytesOf(base64) {
  const text = atob(base64);
  const bytes = new Uint8Array(text.length);
  for (let i = 0; i < text.length; ++i) bytes[i] = text.charCodeAt(i);
  return bytes;
}

// Arrays one after the other, aligned or not.
function reader(bytes, start) {
  let at = start;
  return (Kind, length) => {
    const size = length * Kind.BYTES_PER_ELEMENT;
    const part = bytes.slice(at, at + size);
    at += size;
    return new Kind(part.buffer);
  };
}

const stressRow = { rr: 0, tt: 1, zz: 2, rt: 3, tz: 4, rz: 5 };
const movementRow = { r: 0, t: 1, z: 2 };

// stress: [6, n] MPa and movement: [3, n] mm, by row; rows that a load has not are absent.
function readField(next, told, n) {
  const field = { load: told.load, stress: [], movement: [], spread: null };
  told.names.forEach((name, k) => {
    const whole = next(Int16Array, n);
    const values = Float32Array.from(whole, (value) => value * told.steps[k]);
    if (name in stressRow) field.stress[stressRow[name]] = values;
    else field.movement[movementRow[name]] = values;
  });
  return field;
}

// Of the solid model: place [3, n] mm, and of each load of the view three stresses [n] MPa and moved [3, n] mm.
function readSolid(next, told) {
  const n = told.points;
  const inSteps = (length, step) => Float32Array.from(next(Int16Array, length), (value) => value * step);
  const scenario = { ...told, place: inSteps(3 * n, told.place_step) };
  scenario.loads = told.steps.map((step) => ({ von_mises: inSteps(n, step.von_mises), principal: inSteps(n, step.principal),
    shear: inSteps(n, step.shear), moved: inSteps(3 * n, step.movement) }));
  scenario.middle = next(Uint16Array, 2 * (n - told.corners));
  scenario.element = next(Uint16Array, 4 * told.elements);
  scenario.edge = next(Uint16Array, 2 * told.edges);
  scenario.sides = next(Uint8Array, told.elements);
  scenario.z = Float32Array.from({ length: n }, (_, i) => scenario.place[3 * i + 2]);
  scenario.r = Float32Array.from({ length: n }, (_, i) => Math.hypot(scenario.place[3 * i], scenario.place[3 * i + 1]));
  return scenario;
}

function readScenario(next, told, spreadStep) {
  if (told.solid) return readSolid(next, told);
  const n = told.points;
  const scenario = { ...told, z: next(Float32Array, n), r: next(Float32Array, n) };
  scenario.fields = told.fields.map((field) => readField(next, field, n));
  scenario.fields.forEach((field, k) => {
    const peak = told.fields[k].spread;
    field.spread = Float32Array.from(next(Uint8Array, n), (below) => (below === 255 ? 0 : peak * 2 ** (-below / spreadStep)));
  });
  scenario.part = next(Uint8Array, told.triangles);
  scenario.triangle = next(Uint16Array, 3 * told.triangles);
  scenario.skin = next(Uint16Array, 2 * told.skin);
  scenario.outline = next(Uint16Array, 2 * told.outline);
  scenario.unfused = next(Uint16Array, 2 * told.unfused);
  return scenario;
}

export function readPayload(base64) {
  const bytes = bytesOf(base64);
  const length = new DataView(bytes.buffer).getUint32(0, true);
  const header = JSON.parse(new TextDecoder().decode(bytes.subarray(4, 4 + length)));
  const next = reader(bytes, 4 + length);
  return { ...header, scenarios: header.scenarios.map((told) => readScenario(next, told, header.spread_step)) };
}
