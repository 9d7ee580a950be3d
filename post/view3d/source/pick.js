// SPDX-License-Identifier: GPL-2.0-or-later
// What lies under a pixel: the nearest triangle there, found by looking through all of them.

// Surfaces seen from the camera, [3, n] each: pixels and mm towards the eye.
export function seen(surfaces, camera) {
  const axes = camera.axes(), mm = camera.mmPerPixel();
  return surfaces.map((surface) => {
    const n = surface.points.length / 3;
    const screen = new Float32Array(3 * n);
    for (let i = 0; i < n; ++i) {
      const x = surface.points[3 * i] - camera.centre[0], y = surface.points[3 * i + 1] - camera.centre[1],
        z = surface.points[3 * i + 2] - camera.centre[2];
      screen[3 * i] = camera.size[0] / 2 + (x * axes.right[0] + y * axes.right[1] + z * axes.right[2]) / mm;
      screen[3 * i + 1] = camera.size[1] / 2 - (x * axes.up[0] + y * axes.up[1] + z * axes.up[2]) / mm;
      screen[3 * i + 2] = x * axes.toward[0] + y * axes.toward[1] + z * axes.toward[2];
    }
    return { surface, screen };
  });
}

// { surface, corner: [3], weight: [3], depth } or null.
export function pick(views, x, y) {
  let best = null;
  for (const { surface, screen } of views) {
    const list = surface.triangles;
    for (let t = 0; t < list.length; t += 3) {
      const a = 3 * list[t], b = 3 * list[t + 1], c = 3 * list[t + 2];
      const ax = screen[a] - x, bx = screen[b] - x, cx = screen[c] - x;
      if ((ax > 0 && bx > 0 && cx > 0) || (ax < 0 && bx < 0 && cx < 0)) continue;
      const ay = screen[a + 1] - y, by = screen[b + 1] - y, cy = screen[c + 1] - y;
      const wa = bx * cy - by * cx, wb = cx * ay - cy * ax, wc = ax * by - ay * bx;
      if (!((wa >= 0 && wb >= 0 && wc >= 0) || (wa <= 0 && wb <= 0 && wc <= 0))) continue;
      const sum = wa + wb + wc;
      if (sum === 0) continue;
      const depth = (wa * screen[a + 2] + wb * screen[b + 2] + wc * screen[c + 2]) / sum;
      if (best && best.depth >= depth) continue;
      best = { surface, triangle: t / 3, corner: [list[t], list[t + 1], list[t + 2]],
        weight: [wa / sum, wb / sum, wc / sum], depth };
    }
  }
  return best;
}

// Value, spread and place of a picked point: interpolated between the corners of its triangle as the colours are.
// A spread of null: no error bar is known there.
export function told(hit) {
  const { surface, corner, weight } = hit;
  if (surface.read) return surface.read(corner, weight);
  const { fields } = surface.section;
  const mixed = (of) => corner.reduce((sum, p, k) => sum + weight[k] * of(p), 0);
  return {
    value: mixed((p) => surface.values[p]),
    spread: Math.max(...corner.map((p) => fields.spread[surface.at[p]])),
    z: mixed((p) => fields.z[surface.at[p]]),
    r: mixed((p) => fields.r[surface.at[p]]),
    theta: mixed((p) => surface.theta[p]),
  };
}
