// SPDX-License-Identifier: GPL-2.0-or-later
// The sites of a scenario: what is told of each, where it is marked, and the list with its links.
import { valueAt } from './fields.js';
import { anglesOf, placeOf } from './solid.js';
import { pick } from './pick.js';
import { isKept as isInBody, nearestPoint as nearestInBody, valuesOf } from './tetrahedra.js';
import { made } from './controls.js';
import { withError } from './words.js';

const nearInDepth = 0.6; // mm: a mark on a face is not behind that face
const nearInBody = 0.6; // mm: a place of a site has a point of the mesh that near
const fullTurn = 2 * Math.PI;

function nearestPoint(fields, { z, r }) {
  let best = 0, least = Infinity;
  for (let i = 0; i < fields.z.length; ++i) {
    const away = (fields.z[i] - z) ** 2 + (fields.r[i] - r) ** 2;
    if (away < least) [least, best] = [away, i];
  }
  return best;
}

const inSpace = ({ z, r }, theta) => [r * Math.cos(theta), r * Math.sin(theta), z];

// { value, error } of a site; a movement is read from the field. A value of null: it has no stress of its own.
export function siteValue(site, load, quantity, scenario, fields, largestMovement) {
  const place = site.loads[load];
  if (quantity.key !== 'movement') {
    const [value, error] = place[quantity.key] ?? [null, null];
    return { value, error };
  }
  const value = scenario.solid
    ? valuesOf(scenario, load, quantity)[nearestInBody(scenario, inSpace(place, place.theta)).point]
    : valueAt(fields, quantity, nearestPoint(fields, place), place.theta);
  return { value, error: value * scenario.movement_error + largestMovement * scenario.share };
}

const isKept = (theta, { from, to }) => ((theta - from) % fullTurn + fullTurn) % fullTurn <= to - from + 1e-9;

// Where a site can be seen: on a cut face, where it is worst, or on the side that faces the eye; else nothing.
export function visibleSpot(site, load, section, cut, factor, camera, views) {
  const place = site.loads[load];
  if (cut.kind === 'across' && place.z > cut.place) return null;
  const angles = anglesOf(cut);
  const { toward } = camera.axes();
  const candidates = [...angles.faces].reverse();
  for (const theta of [place.theta, Math.atan2(toward[1], toward[0])])
    if (isKept(theta, angles)) candidates.push(theta);
  const point = nearestPoint(section.fields, place);
  const [width, height] = camera.size;
  for (const theta of candidates) {
    const [x, y, depth] = camera.project(placeOf(section.fields, point, theta, factor, place));
    if (x < 0 || y < 0 || x > width || y > height) continue;
    const hit = pick(views, x, y);
    if (!hit || hit.depth <= depth + nearInDepth) return [x, y];
  }
  return null;
}

// Where a site of the solid model can be seen: where it is worst, or on a cut face that meets the same weld or notch.
export function visibleSpotOfBody(scenario, site, load, cut, factor, camera, views) {
  const place = site.loads[load];
  const { moved } = scenario.loads[load];
  const [width, height] = camera.size;
  for (const theta of [place.theta, ...(site.goes_round ? anglesOf(cut).faces : [])]) {
    const here = inSpace(place, theta);
    const { point, away } = nearestInBody(scenario, here);
    if (!isInBody(cut, here, nearInDepth) || away > nearInBody) continue;
    const [x, y, depth] = camera.project(here.map((value, k) => value + factor * moved[3 * point + k]));
    if (x < 0 || y < 0 || x > width || y > height) continue;
    const hit = pick(views, x, y);
    if (!hit || hit.depth <= depth + nearInDepth) return [x, y];
  }
  return null;
}

// An entry for each site: link to its row, value, button that turns the view to it.
export function siteList(sites, show) {
  const list = made('ol', { class: 'view3d-sites' });
  const values = new Map();
  for (const site of sites) {
    const value = made('span', { class: 'view3d-value', 'data-site': site.id });
    const name = site.row ? made('a', { href: `#${site.row}` }, site.id) : made('span', {}, site.id);
    const button = made('button', { type: 'button', 'aria-label': `Show ${site.id} in the view` }, 'show');
    button.addEventListener('click', () => show(site.id));
    list.append(made('li', site.governs ? { class: 'governs', value: site.number } : { value: site.number }, name, ' ', value, ' ', button));
    values.set(site.id, value);
  }
  return { list, values };
}

export function tellValues(values, told, unit) {
  for (const [id, element] of values) {
    const { value, error } = told.get(id);
    element.textContent = withError(value, error, unit);
  }
}
