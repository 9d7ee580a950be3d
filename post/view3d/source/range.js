// SPDX-License-Identifier: GPL-2.0-or-later
// The range of colours: one for all scenarios, so that their pictures can be held side by side.
import { worstAround } from './fields.js';
import { outsideAreas, valuesOf } from './tetrahedra.js';
import { roundAbove } from './words.js';

const smallShare = 1 / 500, lowShare = 0.4;

// Corners of the triangles of a section with their areas.
function sectionAreas(scenario) {
  const { z, r, triangle } = scenario;
  return Array.from(scenario.part, (_, t) => {
    const [a, b, c] = [0, 1, 2].map((k) => triangle[3 * t + k]);
    return { corner: [a, b, c], area: Math.abs((z[b] - z[a]) * (r[c] - r[a]) - (z[c] - z[a]) * (r[b] - r[a])) / 2 };
  });
}

// As the still pictures choose it: round above the largest value, or lower where only a tiny part lies above.
function topOf(areas, worst) {
  const parts = [];
  let total = 0;
  const highest = worst.reduce((most, value) => Math.max(most, value), 0);
  for (const { corner: [a, b, c], area } of areas) {
    parts.push([(worst[a] + worst[b] + worst[c]) / 3, area]);
    total += area;
  }
  parts.sort((p, q) => q[0] - p[0]);
  let above = 0, level = highest;
  for (const [value, area] of parts) {
    level = value;
    above += area;
    if (above > total * smallShare) break;
  }
  const reduced = roundAbove(level);
  return { top: reduced < lowShare * highest ? reduced : roundAbove(highest), highest };
}

// load: number of the load shown; fieldsOf: its fields in each scenario whose section is swept. { top, highest, each: [the same of each scenario alone] }
export function rangeOf(scenarios, load, fieldsOf, quantity) {
  const each = scenarios.map((scenario) => (scenario.solid
    ? topOf(outsideAreas(scenario), valuesOf(scenario, load, quantity))
    : topOf(sectionAreas(scenario), worstAround(fieldsOf(scenario), quantity))));
  return {
    top: Math.max(...each.map((one) => one.top)),
    highest: Math.max(...each.map((one) => one.highest)),
    each,
  };
}
