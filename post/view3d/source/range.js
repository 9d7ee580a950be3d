// SPDX-License-Identifier: GPL-2.0-or-later
// The range of colours: one for all scenarios, so that their pictures can be held side by side.
import { worstAround } from './fields.js';
import { roundAbove } from './words.js';

const smallShare = 1 / 500, lowShare = 0.4;

// As the still pictures choose it: round above the largest value, or lower where only a tiny part lies above.
function topOf(scenario, fields, worst) {
  const parts = [];
  let total = 0, highest = 0;
  for (let t = 0; t < scenario.part.length; ++t) {
    const [a, b, c] = [0, 1, 2].map((k) => scenario.triangle[3 * t + k]);
    const area = Math.abs((fields.z[b] - fields.z[a]) * (fields.r[c] - fields.r[a]) -
      (fields.z[c] - fields.z[a]) * (fields.r[b] - fields.r[a])) / 2;
    parts.push([(worst[a] + worst[b] + worst[c]) / 3, area]);
    total += area;
    highest = Math.max(highest, worst[a], worst[b], worst[c]);
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

// fieldsOf: the chosen fields of each scenario. { top, highest, each: [the same of each scenario alone] }
export function rangeOf(scenarios, fieldsOf, quantity) {
  const each = scenarios.map((scenario, k) => topOf(scenario, fieldsOf[k], worstAround(fieldsOf[k], quantity)));
  return {
    top: Math.max(...each.map((one) => one.top)),
    highest: Math.max(...each.map((one) => one.highest)),
    each,
  };
}
