// SPDX-License-Identifier: GPL-2.0-or-later
// The arithmetic of the view's script against states of stress whose answers are in every textbook.
import assert from 'node:assert/strict';
import { largestPrincipal, shearAround, valueAt, chosenFields, quantities, vonMises } from '../../../post/view3d/source/fields.js';
import { cutFaces, sectionOf, anglesOf, sweptSkin } from '../../../post/view3d/source/solid.js';
import { Camera } from '../../../post/view3d/source/camera.js';
import { pick, seen, told } from '../../../post/view3d/source/pick.js';
import { factorsUpTo, roundAbove, withError } from '../../../post/view3d/source/words.js';

const near = (a, b) => assert.ok(Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(b)), `${a} for ${b}`);

// rr tt zz rt tz rz: pull, shear by torque, equal all around, compression.
near(vonMises([0, 0, 100, 0, 0, 0]), 100);
near(largestPrincipal([0, 0, 100, 0, 0, 0]), 100);
near(vonMises([0, 0, 0, 0, 80, 0]), 80 * Math.sqrt(3));
near(largestPrincipal([0, 0, 0, 0, 80, 0]), 80);
near(shearAround([0, 0, 0, 30, 40, 0]), 50);
near(vonMises([70, 70, 70, 0, 0, 0]), 0);
near(largestPrincipal([70, 70, 70, 0, 0, 0]), 70);
near(largestPrincipal([0, 0, -60, 0, 0, 0]), 60);
// Mohr's circle of 60 and 20 with shear 15: centre 40, radius 25.
near(largestPrincipal([0, 60, 20, 0, 15, 0]), 65);

// A square in the section, swept: a pipe of radii 1 and 2, under a bending stress of 10 at theta = 0.
const n = 4;
const scenario = { points: n, z: Float32Array.of(0, 1, 1, 0), r: Float32Array.of(1, 1, 2, 2), part: Uint8Array.of(0, 0),
  triangle: Uint16Array.of(0, 1, 2, 0, 2, 3), skin: Uint16Array.of(0, 1, 1, 2, 2, 3, 3, 0), outline: new Uint16Array(0),
  unfused: new Uint16Array(0),
  fields: [{ load: 'bending', stress: [, , new Float32Array(n).fill(10)], movement: [], spread: new Float32Array(n).fill(0.5) }] };
const fields = chosenFields(scenario, ['bending']);
near(valueAt(fields, quantities[0], 0, 0), 10);
near(valueAt(fields, quantities[0], 0, Math.PI / 3), 5);
near(valueAt(chosenFields(scenario, ['torsion']), quantities[0], 0, 0), 0);

// Normals point away from the metal: outward outside, inward in the bore.
const whole = { kind: 'whole', place: 0 };
const skin = sweptSkin(sectionOf(scenario, fields, whole), quantities[0], 0, anglesOf(whole));
for (let i = 0; i < skin.at.length; ++i) {
  const radial = skin.normals[3 * i] * Math.cos(skin.theta[i]) + skin.normals[3 * i + 1] * Math.sin(skin.theta[i]);
  if (Math.abs(radial) > 0.5) assert.equal(radial > 0, fields.r[skin.at[i]] > 1.5);
}

// Cut across in the middle: a ring at the cut, and nothing beyond it.
const across = { kind: 'across', place: 0.5 };
const half = sectionOf(scenario, fields, across);
const ring = cutFaces(half, quantities[0], 0, anglesOf(across));
assert.ok(ring.triangles.length > 0);
assert.ok(sweptSkin(half, quantities[0], 0, anglesOf(across)).points.every((value, k) => k % 3 !== 2 || value <= 0.5));
for (let k = 2; k < ring.points.length; k += 3) near(ring.points[k], 0.5);

// Looked at along the normal of the cut face at theta = 0, the middle shows the point between the radii.
const lengthwise = { kind: 'half', place: 0 };
const section = sectionOf(scenario, fields, lengthwise);
const camera = new Camera();
Object.assign(camera, { size: [100, 100], halfHeight: 1, centre: [1.5, 0, 0.5], turn: { around: 0, above: 0 } });
const views = seen([cutFaces(section, quantities[0], 0, anglesOf(lengthwise))], camera);
const hit = told(pick(views, 50, 50));
near(hit.r, 1.5);
near(hit.z, 0.5);
near(hit.value, 10);
near(hit.spread, 0.5);
assert.equal(pick(views, 50, 99), null);

assert.equal(withError(295.636, 0.083, 'MPa'), '295.6 ± 0.1 MPa');
assert.equal(withError(457.3, 1.2, 'MPa'), '457 ± 2 MPa');
assert.equal(withError(0.01234, 0.00031, 'mm'), '0.0123 ± 0.0004 mm');
assert.equal(withError(12, null, 'MPa'), '12.0 MPa, no error bar');
assert.equal(roundAbove(394), 400);
assert.equal(roundAbove(0.0563), 0.06);
assert.deepEqual(factorsUpTo(25), [0, 1, 2, 5, 10, 20]);
console.log('the arithmetic of the view holds');
