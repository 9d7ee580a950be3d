// SPDX-License-Identifier: GPL-2.0-or-later
// What is chosen and pressed: plain form controls with labels, made here because without script they would be dead.

export function made(name, attributes = {}, ...inside) {
  const element = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
  element.append(...inside);
  return element;
}

function choice(name, options, chosen, changed) {
  const select = made('select', { name: `view3d-${name.toLowerCase()}` });
  options.forEach((text, k) => select.append(made('option', { value: k }, text)));
  select.value = chosen;
  select.addEventListener('change', () => changed(Number(select.value)));
  return made('label', {}, made('span', {}, name), select);
}

export const cuts = [
  { kind: 'quarter', name: 'a quarter taken out' },
  { kind: 'half', name: 'cut lengthwise' },
  { kind: 'across', name: 'cut across' },
  { kind: 'whole', name: 'not cut' },
];

// A slider whose value is told in words beside it.
export class Slider {
  constructor(name, changed) {
    this.input = made('input', { type: 'range', name: `view3d-${name.toLowerCase().replaceAll(' ', '-')}` });
    this.told = made('span', { class: 'view3d-amount' });
    this.label = made('label', {}, made('span', {}, `${name}: `, this.told), this.input);
    this.words = String;
    this.input.addEventListener('input', () => { this.tell(); changed(Number(this.input.value)); });
  }

  set({ min, max, step, value, words }) {
    Object.assign(this.input, { min, max, step });
    this.input.value = value;
    this.words = words;
    this.input.disabled = min === max;
    this.tell();
  }

  tell() {
    const words = this.words(Number(this.input.value));
    this.told.textContent = words;
    this.input.setAttribute('aria-valuetext', words);
  }
}

// The row of choices; `on` holds what to do when one changes.
export function choices(data, quantities, on) {
  const place = new Slider('Place of the cut', on.place), factor = new Slider('Movement drawn', on.factor);
  const box = made('div', { class: 'view3d-choices' },
    choice('Scenario', data.scenarios.map((one) => `${one.name}: ${one.outcome}`), 0, on.scenario),
    choice('Load', data.loads.map((one) => `${one.name}: ${one.detail}`), 0, on.load),
    choice('Shown', quantities.map((one) => one.name), 0, on.quantity),
    choice('Section', cuts.map((one) => one.name), 0, on.cut),
    place.label, factor.label);
  return { box, place, factor };
}

export function buttons(list) {
  const box = made('div', { class: 'view3d-buttons', role: 'group', 'aria-label': 'Move the view' });
  for (const [name, pressed] of list) {
    const button = made('button', { type: 'button' }, name);
    button.addEventListener('click', pressed);
    box.append(button);
  }
  return box;
}
