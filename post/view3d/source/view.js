// SPDX-License-Identifier: GPL-2.0-or-later
// The view as a whole: what is chosen, what is drawn of it, what is told.
import { Camera, startTurn } from './camera.js';
import { ColourBar } from './colour_bar.js';
import { buttons, choices, cuts, made } from './controls.js';
import { chosenFields, quantities } from './fields.js';
import { listen, zoomStep } from './hands.js';
import { Labels } from './labels.js';
import { pick, seen, told } from './pick.js';
import { rangeOf } from './range.js';
import { Scene } from './scene.js';
import { siteList, siteValue, tellValues, visibleSpot, visibleSpotOfBody } from './sites.js';
import { anglesOf, cutFaces, faceLines, sectionOf, sweptSkin } from './solid.js';
import { cutOpen, hasUnjoined } from './tetrahedra.js';
import { factorsUpTo, millimetres, rounded, withError } from './words.js';

const besideSleeve = 1, mostMovement = 0.5; // shares of the largest radius
const nearSite = 9; // pixels
const closeUp = 6; // mm, half the height of a look at one site
const degrees = (rad) => ((rad * 180) / Math.PI + 360) % 360;
const turnKeys = 15;
const facing = 50; // degrees

export const howTo = 'Drag, or use the arrow keys, to turn; two fingers, the right button or Shift to slide; pinch, ' +
  'wheel, + and − to zoom (click into the view first); Home for the start. Point at the part, or press Enter, to ' +
  'read the value there.';

export class View {
  constructor(data, host) {
    this.data = data;
    this.colours = { ramp: data.colours, above: data.above };
    this.chosen = { scenario: 0, load: 0, quantity: 0, cut: { kind: cuts[0].kind, place: 0 }, factor: 0, ownRange: false };
    this.camera = new Camera();
    this.ranges = new Map();
    this.build(host);
    this.fillSites();
    this.fillSliders();
    this.reshape();
    this.home();
  }

  build(host) {
    this.stage = made('div', { class: 'view3d-stage', tabindex: '0', role: 'application',
      'aria-label': `View in three dimensions: ${this.data.title}`, 'aria-describedby': 'view3d-how-to' });
    const canvas = made('div', { class: 'view3d-canvas' }), overlay = made('div', { class: 'view3d-overlay' });
    this.cross = made('span', { class: 'view3d-cross', hidden: '' });
    overlay.append(this.cross);
    this.stage.append(canvas, overlay);
    this.bar = new ColourBar(this.colours, (own) => { this.chosen.ownRange = own; this.reshape(); });
    this.told = made('output', { class: 'view3d-told' });
    this.sitesBox = made('div');
    const change = (key) => (value) => { this.chosen[key] = value; this.changed(key); };
    this.controls = choices(this.data, quantities, {
      scenario: change('scenario'), load: change('load'), quantity: change('quantity'),
      cut: (k) => this.setCut(cuts[k].kind),
      place: (value) => { this.chosen.cut.place = value; this.reshape(); },
      factor: (k) => { this.chosen.factor = this.factors[k]; this.reshape(); },
    });
    const moves = buttons([
      ['Turn left', () => this.turn(-turnKeys, 0)], ['Turn right', () => this.turn(turnKeys, 0)],
      ['Turn up', () => this.turn(0, turnKeys)], ['Turn down', () => this.turn(0, -turnKeys)],
      ['Nearer', () => this.zoom(zoomStep())], ['Farther', () => this.zoom(1 / zoomStep())],
      ['Start view', () => this.home()], ['Whole shaft', () => this.lookAt(this.extent())]]);
    this.note = made('p', { class: 'view3d-note' });
    host.append(this.controls.box, this.stage, this.told, this.bar.box, moves,
      made('p', { class: 'view3d-note', id: 'view3d-how-to' }, howTo),
      this.sitesBox, this.note);
    this.scene = new Scene(canvas, this.colours);
    this.labels = new Labels(overlay);
    listen(this.stage, {
      turn: (a, b) => this.turn(a, b), slide: (x, y) => { this.camera.slideBy(x, y); this.draw(); },
      zoom: (factor, at) => this.zoom(factor, at), home: () => this.home(),
      point: (at) => this.point(at), leave: () => this.tell(null),
      read: () => this.point([this.camera.size[0] / 2, this.camera.size[1] / 2]),
    });
    new ResizeObserver(() => this.draw()).observe(this.stage);
    matchMedia('(prefers-color-scheme: dark)').addEventListener('change', () => this.draw());
    this.stage.addEventListener('webglcontextlost', () => host.dispatchEvent(new Event('view3d-lost')), true);
  }

  noteOnErrors() {
    const { share, solid } = this.scenario();
    const unjoined = this.hasUnjoined()
      ? ' Dashed lines are faces that are not joined; the rounds at their ends belong to the method and are no holes of the part.' : '';
    if (solid)
      return 'This is the solid model; stresses are the worst over a turn of the bending, the movement is that of bending ' +
        'towards 0°. At a site the value and its error are those of the checks. Elsewhere there is no error bar: the view ' +
        `leaves out what a straight line misses halfway between its points, at most ${(100 * share).toFixed(2)} % of the ` +
        'largest stress, and every second point of the mesh that was solved. At sharp ends of welds, holes and slits colours grow with the mesh ' +
        'and tell no stress.' + unjoined;
    return 'At a site the value and its error are those of the checks, the worst around the shaft. Elsewhere ± is how ' +
      'far the finite elements that meet there disagree, with what the view leaves out between its points (at most ' +
      `${(100 * share).toFixed(2)} % of the largest stress): no bound; in the examples it held at 98 of 100 places ` +
      'against a much finer mesh. 0° is the side that bending pulls.' + unjoined;
  }

  hasUnjoined() { return this.data.scenarios.some((one) => (one.solid ? hasUnjoined(one) : one.unfused.length > 0)); }
  scenario() { return this.data.scenarios[this.chosen.scenario]; }
  quantity() { return quantities[this.chosen.quantity]; }
  // Of a scenario whose section is swept.
  fieldsOf(scenario) { return chosenFields(scenario, this.data.loads[this.chosen.load].on); }
  extent() {
    const { z, r } = this.scenario();
    const least = (list) => list.reduce((a, b) => Math.min(a, b)), most = (list) => list.reduce((a, b) => Math.max(a, b));
    return { left: least(z), right: most(z), radius: most(r) };
  }

  range() {
    const key = `${this.chosen.load} ${this.chosen.quantity}`;
    if (!this.ranges.has(key))
      this.ranges.set(key, rangeOf(this.data.scenarios, this.chosen.load, (one) => this.fieldsOf(one), this.quantity()));
    return this.ranges.get(key);
  }

  // The largest movement under the loads chosen, in any scenario.
  largestMovement() {
    const { quantity } = this.chosen;
    this.chosen.quantity = quantities.findIndex((one) => one.key === 'movement');
    const { each, highest } = this.range();
    this.chosen.quantity = quantity;
    return { here: each[this.chosen.scenario].highest, highest };
  }

  fillSites() {
    const sites = this.scenario().sites;
    sites.sort((a, b) => a.number - b.number);
    for (const site of sites) site.governs = site.id === this.data.governing;
    const { list, values } = siteList(sites, (id) => this.show(id));
    this.siteValues = values;
    const whose = this.chosen.scenario === 0 ? '' : ' of the sound splice';
    this.sitesBox.replaceChildren(
      made('p', { class: 'view3d-name' }, `Sites in this scenario; each leads to its row among the checks${whose}`), list);
    this.labels.set(sites);
    this.note.textContent = this.noteOnErrors();
  }

  fillSliders() {
    const { left, right, radius } = this.extent();
    const { kind, place } = this.chosen.cut;
    if (kind === 'across')
      this.controls.place.set({ min: Math.ceil(left), max: Math.floor(right), step: 0.5, value: place, words: (z) => `z = ${millimetres(z)}` });
    else if (kind === 'whole')
      this.controls.place.set({ min: 0, max: 0, step: 1, value: 0, words: () => 'no cut' });
    else
      this.controls.place.set({ min: -Math.PI, max: Math.PI, step: Math.PI / (this.scenario().solid ? 180 : 36), value: place,
        words: (theta) => `${Math.round((theta * 180) / Math.PI)}°`.replace('-', '−') });
    this.factors = factorsUpTo((mostMovement * radius) / this.largestMovement().highest);
    const most = this.factors.filter((factor) => factor <= this.chosen.factor).length - 1;
    this.chosen.factor = this.factors[most];
    this.controls.factor.set({ min: 0, max: this.factors.length - 1, step: 1, value: most,
      words: (k) => (k === 0 ? 'none' : this.factors[k] === 1 ? 'true size' : `${this.factors[k]} times`) });
  }

  changed(key) {
    if (key === 'scenario') this.fillSites();
    if (key !== 'quantity') this.fillSliders();
    this.reshape();
  }

  setCut(kind) {
    this.chosen.cut = { kind, place: 0 };
    this.fillSliders();
    // The face across the shaft is seen from its side only.
    if (kind === 'across' && this.camera.turn.around < facing) this.camera.turn.around = facing;
    this.reshape();
  }

  reshape() {
    const { cut, factor } = this.chosen;
    const scenario = this.scenario(), quantity = this.quantity();
    const ranges = this.range(), own = ranges.each[this.chosen.scenario];
    const range = this.chosen.ownRange ? own : ranges;
    const fields = scenario.solid ? null : this.fieldsOf(scenario);
    const shown = scenario.solid ? cutOpen(scenario, this.chosen.load, quantity, cut, factor) : this.swept(fields);
    this.surfaces = [shown.skin, shown.faces];
    this.scene.show(shown, range);
    const largest = this.largestMovement().here;
    this.siteTold = new Map(scenario.sites.map((site) =>
      [site.id, siteValue(site, this.chosen.load, quantity, scenario, fields, largest)]));
    tellValues(this.siteValues, this.siteTold, quantity.unit);
    // A site is read better than the field around it; at sharp ends the field of the solid model grows with its mesh.
    const isAtSites = scenario.solid && quantity.key !== 'movement';
    const highest = Math.max(isAtSites ? 0 : own.highest, ...[...this.siteTold.values()].map((one) => one.value));
    const load = this.data.loads[this.chosen.load];
    this.bar.set(quantity, range, `Scenario ${scenario.name}: ${scenario.outcome}. ` +
      `${load.name}: ${load.detail}. Largest ${isAtSites ? 'at a site' : 'here'} ${rounded(highest)} ${quantity.unit}.`);
    this.draw();
  }

  swept(fields) {
    const { cut, factor } = this.chosen, quantity = this.quantity(), angles = anglesOf(cut);
    this.section = sectionOf(this.scenario(), fields, cut);
    return { skin: sweptSkin(this.section, quantity, factor, angles), faces: cutFaces(this.section, quantity, factor, angles),
      lines: faceLines(this.section, factor, angles) };
  }

  turn(around, above) {
    this.camera.turnBy(around, above);
    this.draw();
  }

  zoom(factor, at) {
    this.camera.zoomBy(factor, at);
    this.draw();
  }

  home() {
    const { left, right, radius } = this.extent();
    const sleeve = this.data.sleeve ?? [left, right];
    this.camera.turn = { ...startTurn };
    this.lookAt({ left: Math.max(left, sleeve[0] - besideSleeve * 2 * radius),
      right: Math.min(right, sleeve[1] + besideSleeve * 2 * radius), radius });
  }

  lookAt({ left, right, radius }) {
    this.measureStage();
    this.camera.fit(left, right, radius);
    this.draw();
  }

  // Turns a site towards the eye on an open cut face.
  show(id) {
    const site = this.scenario().sites.find((one) => one.id === id);
    const place = site.loads[this.chosen.load];
    if (this.chosen.cut.kind === 'across' && place.z > this.chosen.cut.place) {
      this.chosen.cut.place = place.z + 1;
      this.fillSliders();
      this.reshape();
    }
    if (this.scenario().solid) this.openAt(place.theta);
    const theta = this.scenario().solid ? place.theta : (anglesOf(this.chosen.cut).faces.at(-1) ?? place.theta);
    this.camera.centre = [place.r * Math.cos(theta), place.r * Math.sin(theta), place.z];
    this.camera.halfHeight = closeUp;
    this.draw();
    this.stage.focus({ preventScroll: true });
    this.stage.scrollIntoView({ block: 'nearest' });
    this.frame();
    this.tell({ site: id });
  }

  // The cut goes through an angle of the body, and its faces are seen as at the start.
  openAt(theta) {
    if (anglesOf(this.chosen.cut).faces.length > 0) {
      const step = Math.PI / 180;
      this.chosen.cut.place = Math.round(theta / step) * step;
      this.fillSliders();
      this.reshape();
    }
    this.camera.turnAround(theta);
  }

  measureStage() {
    this.camera.size = [Math.max(1, this.stage.clientWidth), Math.max(1, this.stage.clientHeight)];
  }

  draw() {
    this.waiting ??= requestAnimationFrame(() => this.frame());
  }

  frame() {
    cancelAnimationFrame(this.waiting);
    this.waiting = undefined;
    this.measureStage();
    const { left, right, radius } = this.extent();
    this.scene.background(getComputedStyle(this.stage).backgroundColor.match(/\d+/g).slice(0, 3).map(Number));
    this.scene.resize(this.camera.size, Math.min(2, devicePixelRatio));
    this.scene.render(this.camera, right - left + 2 * radius + Math.hypot(...this.camera.centre));
    this.views = seen(this.surfaces, this.camera);
    this.spots = new Map();
    for (const site of this.scenario().sites) {
      const { load, cut, factor } = this.chosen;
      const spot = this.scenario().solid
        ? visibleSpotOfBody(this.scenario(), site, load, cut, factor, this.camera, this.views)
        : visibleSpot(site, load, this.section, cut, factor, this.camera, this.views);
      if (spot) this.spots.set(site.id, spot);
    }
    const [ax, ay] = this.camera.project([0, 0, left]), [bx, by] = this.camera.project([0, 0, right]);
    this.labels.place(this.spots, this.camera.size, (x) =>
      (Math.abs(bx - ax) < 1 ? this.camera.size[1] / 2 : ay + ((by - ay) * (x - ax)) / (bx - ax)));
    this.bar.setMeasure(this.camera.mmPerPixel());
    // What stood at a pixel has moved away; a site is still the same.
    this.tell(this.siteTold.has(this.toldSite) ? { site: this.toldSite } : null);
  }

  // What lies under a pixel: a site that is near, else the part itself.
  point(at) {
    if (this.waiting !== undefined) this.frame();
    for (const [id, spot] of this.spots)
      if (Math.hypot(spot[0] - at[0], spot[1] - at[1]) < nearSite) return this.tell({ site: id });
    const hit = pick(this.views, ...at);
    return this.tell(hit ? { hit, at } : null);
  }

  tell(what) {
    const quantity = this.quantity(), scenario = this.scenario();
    this.cross.hidden = !what?.at;
    this.toldSite = what?.site;
    if (!what) {
      this.told.textContent = 'Point at the part to read the value there.';
      this.bar.point(null);
      return;
    }
    if (what.site) {
      const { value, error } = this.siteTold.get(what.site);
      this.told.textContent = `${quantity.name} at ${what.site}: ${withError(value, error, quantity.unit)}`;
      this.bar.point(value);
      return;
    }
    this.cross.style.transform = `translate(${what.at[0]}px, ${what.at[1]}px)`;
    const { value, spread, z, r, theta } = told(what.hit);
    const error = quantity.key === 'movement'
      ? value * scenario.movement_error + this.largestMovement().here * scenario.share
      : spread === null ? null : spread * quantity.bound + scenario.missed;
    this.told.textContent = `${quantity.name}: ${withError(value, error, quantity.unit)} at z = ${millimetres(z)}, ` +
      `r = ${millimetres(r)}, ${Math.round(degrees(theta)) % 360}°`;
    Object.assign(this.told.dataset, { value, z, r, theta });
    this.bar.point(value);
  }
}

