// SPDX-License-Identifier: GPL-2.0-or-later
// The fields of one scenario under the loads chosen, at the points of its meridian section and any angle.

const stressRows = 6, movementRows = 3;

// Sum of the loads that do not depend on the angle, and the amplitudes of bending: [rows * n].
export function chosenFields(scenario, on) {
  const n = scenario.points;
  const chosen = {
    z: scenario.z, r: scenario.r,
    steady: new Float32Array(stressRows * n), bent: new Float32Array(stressRows * n),
    moved: new Float32Array(movementRows * n), bowed: new Float32Array(movementRows * n),
    spread: new Float32Array(n),
  };
  for (const field of scenario.fields) {
    if (!on.includes(field.load)) continue;
    const [stress, movement] = field.load === 'bending' ? [chosen.bent, chosen.bowed] : [chosen.steady, chosen.moved];
    field.stress.forEach((values, row) => values.forEach((value, i) => { stress[stressRows * i + row] += value; }));
    field.movement.forEach((values, row) => values.forEach((value, i) => { movement[movementRows * i + row] += value; }));
    // A sum of lengths: no combination lies further apart.
    field.spread.forEach((value, i) => { chosen.spread[i] += value; });
  }
  return chosen;
}

// The point of a section between two others.
export function addBetween(fields, a, b, share) {
  const mixed = (list, rows) => {
    for (let k = 0; k < rows; ++k) list.push(list[rows * a + k] + share * (list[rows * b + k] - list[rows * a + k]));
  };
  for (const name of ['z', 'r', 'spread']) mixed(fields[name], 1);
  for (const name of ['steady', 'bent']) mixed(fields[name], stressRows);
  for (const name of ['moved', 'bowed']) mixed(fields[name], movementRows);
  return fields.z.length - 1;
}

// Components rr tt zz rt tz rz at an angle: of bending, rt and tz go with its sine and the others with its cosine.
export function stressAt(fields, i, cos, sin, into) {
  for (let k = 0; k < stressRows; ++k)
    into[k] = fields.steady[stressRows * i + k] + (k === 3 || k === 4 ? sin : cos) * fields.bent[stressRows * i + k];
  return into;
}

export function movementAt(fields, i, cos, sin, into) {
  for (let k = 0; k < movementRows; ++k)
    into[k] = fields.moved[movementRows * i + k] + (k === 1 ? sin : cos) * fields.bowed[movementRows * i + k];
  return into;
}

export function vonMises([rr, tt, zz, rt, tz, rz]) {
  return Math.sqrt(((rr - tt) ** 2 + (tt - zz) ** 2 + (zz - rr) ** 2) / 2 + 3 * (rt * rt + tz * tz + rz * rz));
}

// The principal stress that is largest by size, by the angle of the cubic's three real roots; always >= 0 here.
export function largestPrincipal([rr, tt, zz, rt, tz, rz]) {
  const mean = (rr + tt + zz) / 3;
  const a = rr - mean, b = tt - mean, c = zz - mean;
  const second = (a * a + b * b + c * c) / 2 + rt * rt + tz * tz + rz * rz;
  if (second === 0) return Math.abs(mean);
  const third = a * (b * c - tz * tz) - rt * (rt * c - tz * rz) + rz * (rt * tz - b * rz);
  const angle = Math.acos(Math.min(1, Math.max(-1, (third / 2) * (3 / second) ** 1.5))) / 3;
  const reach = 2 * Math.sqrt(second / 3);
  return Math.max(Math.abs(mean + reach * Math.cos(angle)), Math.abs(mean + reach * Math.cos(angle + (2 * Math.PI) / 3)));
}

// Shear stress around the axis, on faces across it and around it: what carries torque.
export function shearAround(stress) {
  return Math.hypot(stress[3], stress[4]);
}

// `bound`: how far the value can move when the stress moves by a tensor of length one.
export const quantities = [
  { key: 'von_mises', name: 'von Mises stress', unit: 'MPa', of: vonMises, bound: Math.sqrt(1.5),
    plain: 'One number for a mixed stress, to be held against the strength of a tensile test.' },
  { key: 'principal', name: 'Largest principal stress, by size', unit: 'MPa', of: largestPrincipal, bound: 1,
    plain: 'The strongest pull or push at a place, whichever way it points.' },
  { key: 'shear', name: 'Shear stress around the axis', unit: 'MPa', of: shearAround, bound: Math.sqrt(0.5),
    plain: 'What carries the torque.' },
  { key: 'movement', name: 'Movement, seen from the joint', unit: 'mm', of: null, bound: 0,
    plain: 'How far a place moves when the joint is held still.' },
];

const scratch = new Float64Array(stressRows);

export function valueAt(fields, quantity, i, theta) {
  const cos = Math.cos(theta), sin = Math.sin(theta);
  if (quantity.key === 'movement') {
    const [u, v, w] = movementAt(fields, i, cos, sin, scratch);
    return Math.hypot(u, v, w);
  }
  return quantity.of(stressAt(fields, i, cos, sin, scratch));
}

export function isSteady(fields) {
  return !fields.bent.some((value) => value !== 0);
}

const anglesLookedAt = 24;

// Largest value of each point all around.
export function worstAround(fields, quantity) {
  const n = isSteady(fields) ? 1 : anglesLookedAt;
  return Float32Array.from(fields.z, (_, i) => {
    let worst = 0;
    for (let k = 0; k < n; ++k) worst = Math.max(worst, valueAt(fields, quantity, i, (2 * Math.PI * k) / n));
    return worst;
  });
}
