// SPDX-License-Identifier: GPL-2.0-or-later
// The arithmetic of the view's script against states of stress whose answers are in every textbook.
import assert from 'node:assert/strict';
import { largestPrincipal, shearAround, valueAt, chosenFields, quantities, vonMises } from '../../../post/view3d/source/fields.js';
import { cutFaces, sectionOf, anglesOf, sweptSkin } from '../../../post/view3d/source/solid.js';
import { bodyOf, cutOpen, isKept, nearestPoint, outsideAreas, valuesOf } from '../../../post/view3d/source/tetrahedra.js';
import { siteValue } from '../../../post/view3d/source/sites.js';
import { rangeOf } from '../../../post/view3d/source/range.js';
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

// Of the solid model: a cube of 2 mm around the axis in six tetrahedra around the diagonal from corner 0 to corner 7; the
// value is x + 5, and a middle on that diagonal, which a straight line misses by 4, parts all six.
const cube = Array.from({ length: 8 }, (_, i) => [(i & 1) * 2 - 1, (i >> 1 & 1) * 2 - 1, (i >> 2) * 2 - 1]);
const ways = [[1, 2], [2, 1], [1, 4], [4, 1], [2, 4], [4, 2]];
const oriented = ways.map(([a, b]) => {
  const list = [0, a, a | b, 7];
  const [p, q, r] = list.slice(1).map((k) => cube[k].map((value, c) => value - cube[0][c]));
  const volume = p[0] * (q[1] * r[2] - q[2] * r[1]) - p[1] * (q[0] * r[2] - q[2] * r[0]) + p[2] * (q[0] * r[1] - q[1] * r[0]);
  return volume > 0 ? list : [0, a | b, a, 7];
});
// Faces without the diagonal lie outside: 0 2 1 is face 0 and 1 2 3 is face 2 of an element.
const cubeSides = oriented.map(() => 1 | (1 << 4));
const solid = { solid: true, points: 9, corners: 8, place: Float32Array.from([...cube.flat(), 0, 0, 0]),
  middle: Uint16Array.of(0, 7), element: Uint16Array.from(oriented.flat()), edge: Uint16Array.of(0, 1),
  sides: Uint8Array.from(cubeSides), z: Float32Array.from([...cube.map((p) => p[2]), 0]),
  r: Float32Array.from([...cube.map(([x, y]) => Math.hypot(x, y)), 0]), movement_error: 0, share: 0,
  loads: [{ von_mises: Float32Array.from([...cube.map((p) => p[0] + 5), 9]), principal: new Float32Array(9),
    shear: new Float32Array(9), moved: new Float32Array(27).fill(1) }] };
const areaOf = ({ points, triangles }) => {
  let sum = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const [a, b, c] = [0, 1, 2].map((k) => points.slice(3 * triangles[t + k], 3 * triangles[t + k] + 3));
    const u = b.map((value, k) => value - a[k]), v = c.map((value, k) => value - a[k]);
    sum += Math.hypot(u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]) / 2;
  }
  return sum;
};
const close = (a, b) => assert.ok(Math.abs(a - b) < 1e-4 * b, `${a} for ${b}`);
assert.equal(bodyOf(solid).tetrahedra.length, 4 * 48);
close(outsideAreas(solid).reduce((sum, { area }) => sum + area, 0), 24);
const opened = (kind, place, factor = 0) => cutOpen(solid, 0, quantities[0], { kind, place }, factor);
close(areaOf(opened('whole', 0).skin), 24);
close(areaOf(opened('half', 0).skin), 4 * 2 + 2 * 2);
close(areaOf(opened('half', 0).faces), 4);
close(areaOf(opened('across', 0.5).skin), 4 + 4 * 2 * 1.5);
close(areaOf(opened('across', 0.5).faces), 4);
close(areaOf(opened('quarter', 0).skin), 18);
close(areaOf(opened('quarter', 0).faces), 4);
assert.ok(isKept({ kind: 'quarter', place: 0 }, [-0.5, 0.5, 0]) && !isKept({ kind: 'quarter', place: 0 }, [0.5, 0.5, 0]));
// Normals of the skin point away from the middle; a movement of one millimetre in each direction shifts all.
const shown = opened('whole', 0, 2).skin;
for (let p = 0; p < shown.values.length; ++p) {
  const away = [0, 1, 2].map((k) => shown.places[3 * p + k]), normal = shown.normals.slice(3 * p, 3 * p + 3);
  assert.ok(away[0] * normal[0] + away[1] * normal[1] + away[2] * normal[2] > 0);
  assert.ok([0, 1, 2].every((k) => Math.abs(shown.points[3 * p + k] - away[k] - 2) < 1e-6));
}
// The value is linear beside the middle that stands out.
Object.assign(camera, { size: [100, 100], halfHeight: 2, centre: [0, 0, 0], turn: { around: 0, above: 0 } });
const read = told(pick(seen([opened('whole', 0).skin], camera), 50 + 12.5, 50 - 12.5));
close(read.value, 5.5);
assert.equal(read.spread, null);
close(valuesOf(solid, 0, quantities[3])[0], Math.sqrt(3));
assert.equal(nearestPoint(solid, [0.1, 0, 0]).point, 8);
assert.equal(rangeOf([solid], 0, null, quantities[0]).highest, 9);
assert.equal(siteValue({ loads: [{ von_mises: null }] }, 0, quantities[0], solid, null, 0).value, null);
assert.equal(withError(null, null, 'MPa'), 'no stress of its own, judged by its force');
// The view that opens a cut at an angle sees its face from the same side as at the start.
const turned = new Camera();
turned.turnAround(0);
near(turned.turn.above, 30);
near(turned.turn.around, 17);

assert.equal(withError(295.636, 0.083, 'MPa'), '295.6 ± 0.1 MPa');
assert.equal(withError(457.3, 1.2, 'MPa'), '457 ± 2 MPa');
assert.equal(withError(0.01234, 0.00031, 'mm'), '0.0123 ± 0.0004 mm');
assert.equal(withError(12, null, 'MPa'), '12.0 MPa, no error bar');
assert.equal(roundAbove(394), 400);
assert.equal(roundAbove(0.0563), 0.06);
assert.deepEqual(factorsUpTo(25), [0, 1, 2, 5, 10, 20]);
console.log('the arithmetic of the view holds');
