// SPDX-License-Identifier: GPL-2.0-or-later
// The bar of colours with its ticks, a pointer at the value last read, and a measure of length.
import { made } from './controls.js';
import { roundAbove, rounded } from './words.js';

const nTicks = 5, longestMeasure = 160;

export class ColourBar {
  // owned: told when one scenario alone gives the range, or all of them again.
  constructor(colours, owned) {
    this.colours = colours;
    this.name = made('p', { class: 'view3d-name' });
    this.about = made('p', { class: 'view3d-about' });
    this.pointer = made('span', { class: 'view3d-pointer', hidden: '' });
    this.strip = made('div', { class: 'view3d-strip' }, this.pointer);
    this.strip.style.backgroundImage = `linear-gradient(to right, ${colours.ramp.filter((_, k) => k % 5 === 0).join(', ')})`;
    this.ticks = made('div', { class: 'view3d-ticks' });
    this.above = made('p', { class: 'view3d-above' });
    const own = made('input', { type: 'checkbox', name: 'view3d-own-range' });
    own.addEventListener('change', () => owned(own.checked));
    const ownBox = made('label', { class: 'view3d-own' }, own, ' colours over the range of this scenario alone');
    this.measure = made('span', { class: 'view3d-measure' });
    this.length = made('span');
    this.box = made('div', { class: 'view3d-scale' },
      made('div', { class: 'view3d-bar' }, this.name, this.about, this.strip, this.ticks, this.above, ownBox),
      made('div', { class: 'view3d-rule' }, this.measure, this.length));
  }

  set(quantity, range, about) {
    this.range = range;
    this.name.textContent = `${quantity.name}, ${quantity.unit}`;
    this.about.textContent = `${quantity.plain} ${about}`;
    this.ticks.replaceChildren();
    for (let k = 0; k <= nTicks; ++k) {
      const tick = made('span', {}, String(Number(((range.top * k) / nTicks).toPrecision(3))));
      tick.style.left = `${(100 * k) / nTicks}%`;
      this.ticks.append(tick);
    }
    this.above.replaceChildren();
    if (range.highest > range.top * 1.0001) {
      const sample = made('span', { class: 'view3d-sample', 'aria-hidden': 'true' });
      sample.style.background = this.colours.above;
      this.above.append(sample, ` above ${rounded(range.top)}, up to ${rounded(range.highest)}`);
    }
    this.point(null);
  }

  point(value) {
    this.pointer.hidden = value === null;
    if (value !== null) this.pointer.style.left = `${100 * Math.min(1, value / this.range.top)}%`;
  }

  setMeasure(mmPerPixel) {
    const mm = roundAbove(longestMeasure * mmPerPixel / 2.01);
    this.measure.style.width = `${mm / mmPerPixel}px`;
    this.length.textContent = `${Number(mm.toPrecision(2))} mm`;
  }
}
