// SPDX-License-Identifier: GPL-2.0-or-later
// Looks at the shaft without perspective; x, where bending pulls, stays up. All lengths in mm.

const degree = Math.PI / 180;
export const startTurn = { around: 17, above: 30 };
const steepest = 89;

export class Camera {
  constructor() {
    this.turn = { ...startTurn };
    this.centre = [0, 0, 0];
    this.halfHeight = 50;
    this.size = [1, 1]; // CSS pixels
  }

  axes() {
    const around = this.turn.around * degree, above = this.turn.above * degree;
    const toward = [Math.sin(above), Math.cos(above) * Math.cos(around), Math.cos(above) * Math.sin(around)];
    const length = Math.hypot(toward[1], toward[2]);
    const right = [0, -toward[2] / length, toward[1] / length];
    const up = [toward[1] * right[2] - toward[2] * right[1], toward[2] * right[0] - toward[0] * right[2],
      toward[0] * right[1] - toward[1] * right[0]];
    return { toward, right, up };
  }

  turnBy(around, above) {
    this.turn.around = ((this.turn.around + around + 540) % 360) - 180;
    this.turn.above = Math.max(-steepest, Math.min(steepest, this.turn.above + above));
  }

  // The view of the start with the shaft turned about its axis, so that what stood at 0 stands at theta.
  turnAround(theta) {
    const [a, b] = [startTurn.above * degree, startTurn.around * degree];
    const from = Math.atan2(Math.cos(a) * Math.cos(b), Math.sin(a));
    const across = Math.hypot(Math.sin(a), Math.cos(a) * Math.cos(b));
    const above = Math.asin(across * Math.cos(from + theta));
    const limited = Math.max(-steepest, Math.min(steepest, above / degree));
    this.turn = { above: limited,
      around: Math.atan2(Math.cos(a) * Math.sin(b), across * Math.sin(from + theta)) / degree };
  }

  slideBy(pixelsRight, pixelsDown) {
    const { right, up } = this.axes();
    const mm = this.mmPerPixel();
    this.centre = this.centre.map((value, k) => value - mm * (pixelsRight * right[k] - pixelsDown * up[k]));
  }

  // Keeps what lies under the given pixel in its place.
  zoomBy(factor, at = [this.size[0] / 2, this.size[1] / 2]) {
    const before = this.mmPerPixel();
    this.halfHeight = Math.max(0.2, Math.min(5000, this.halfHeight / factor));
    const { right, up } = this.axes();
    const moved = before - this.mmPerPixel();
    const dx = (at[0] - this.size[0] / 2) * moved, dy = (this.size[1] / 2 - at[1]) * moved;
    this.centre = this.centre.map((value, k) => value + dx * right[k] + dy * up[k]);
  }

  mmPerPixel() {
    return (2 * this.halfHeight) / this.size[1];
  }

  // Pixels from the left and the top, and mm towards the eye.
  project([x, y, z], axes = this.axes()) {
    const away = [x - this.centre[0], y - this.centre[1], z - this.centre[2]];
    const dot = (axis) => away[0] * axis[0] + away[1] * axis[1] + away[2] * axis[2];
    const mm = this.mmPerPixel();
    return [this.size[0] / 2 + dot(axes.right) / mm, this.size[1] / 2 - dot(axes.up) / mm, dot(axes.toward)];
  }

  // A stretch of the shaft fills the view, with its edges free for labels.
  fit(left, right, radius) {
    const { right: across, up, toward } = this.axes();
    this.centre = [0, 0, (left + right) / 2];
    const wide = Math.abs(across[2]) * (right - left) + 2 * radius * Math.hypot(across[0], across[1]);
    const high = Math.abs(up[2]) * (right - left) + 2 * radius * Math.hypot(up[0], up[1]);
    const aspect = this.size[0] / this.size[1];
    this.halfHeight = Math.max((high / 2) * 1.35, (wide / 2 / aspect) * 1.06);
    return toward;
  }
}
