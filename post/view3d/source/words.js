// SPDX-License-Identifier: GPL-2.0-or-later
// Numbers as the view writes them.

// The digits that the error bar leaves a meaning, at most four that count; the error rounded up.
export function withError(value, error, unit) {
  if (value === null) return 'no stress of its own, judged by its force';
  if (error === null) return `${rounded(value)} ${unit}, no error bar`;
  const after = (amount) => -Math.floor(Math.log10(Math.max(amount, 1e-12)));
  const digits = Math.max(0, Math.min(after(error), after(value) + 3, 12));
  const up = Math.max(1, Math.ceil(error * 10 ** digits - 1e-9)) / 10 ** digits;
  return `${value.toFixed(digits)} ± ${up.toFixed(digits)} ${unit}`;
}

// Three digits that count.
export function rounded(value) {
  if (value === 0) return '0';
  const digits = Math.max(0, 2 - Math.floor(Math.log10(Math.abs(value))));
  return value.toFixed(Math.min(digits, 6));
}

export function millimetres(value) {
  return `${value.toFixed(1).replace('-', '−')} mm`;
}

const roundSteps = [1, 2, 3, 4, 5, 6, 8, 10];

// A round number that is not below the value.
export function roundAbove(value) {
  if (!(value > 0)) return 1;
  const power = 10 ** Math.floor(Math.log10(value));
  return roundSteps.find((step) => step * power >= value * (1 - 1e-9)) * power;
}

// 0, 1, 2, 5, 10, 20, 50, ... up to the limit.
export function factorsUpTo(limit) {
  const list = [0];
  for (let power = 1; power <= limit; power *= 10)
    for (const step of [1, 2, 5]) if (step * power <= limit) list.push(step * power);
  return list;
}
