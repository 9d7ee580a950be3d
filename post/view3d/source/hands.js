// SPDX-License-Identifier: GPL-2.0-or-later
// Mouse, touch and keyboard on the stage. One finger or the left button turns; two fingers, the right button or shift
// slide; wheel and pinch zoom. The wheel zooms only where the stage was chosen first, so that the page scrolls on.

const degreesPerPixel = 0.4, degreesPerKey = 5, pixelsPerKey = 40, zoomPerKey = 1.25;

const keys = {
  ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1],
};

export function zoomStep() {
  return zoomPerKey;
}

// move: { turn, slide, zoom, point, leave, read, home }
export function listen(stage, move) {
  const down = new Map();
  const placeOf = (event) => {
    const box = stage.getBoundingClientRect();
    return [event.clientX - box.left, event.clientY - box.top];
  };
  const span = () => {
    const [a, b] = [...down.values()];
    return { middle: [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2], apart: Math.max(20, Math.hypot(a[0] - b[0], a[1] - b[1])) };
  };

  stage.addEventListener('pointerdown', (event) => {
    if (event.target.closest('a')) return;
    stage.focus({ preventScroll: true });
    stage.setPointerCapture(event.pointerId);
    down.set(event.pointerId, placeOf(event));
    move.point(placeOf(event));
  });
  stage.addEventListener('pointermove', (event) => {
    const now = placeOf(event);
    const before = down.get(event.pointerId);
    if (!before) {
      move.point(now);
      return;
    }
    if (down.size === 2) {
      const old = span();
      down.set(event.pointerId, now);
      const fresh = span();
      move.slide(fresh.middle[0] - old.middle[0], fresh.middle[1] - old.middle[1]);
      move.zoom(fresh.apart / old.apart, fresh.middle);
      return;
    }
    down.set(event.pointerId, now);
    const dx = now[0] - before[0], dy = now[1] - before[1];
    if (event.shiftKey || event.buttons === 2) move.slide(dx, dy);
    else move.turn(-dx * degreesPerPixel, dy * degreesPerPixel);
  });
  for (const kind of ['pointerup', 'pointercancel'])
    stage.addEventListener(kind, (event) => down.delete(event.pointerId));
  // A finger that is lifted leaves what it read.
  stage.addEventListener('pointerleave', (event) => { if (event.pointerType !== 'touch') move.leave(); });
  stage.addEventListener('contextmenu', (event) => event.preventDefault());
  stage.addEventListener('wheel', (event) => {
    if (document.activeElement !== stage && !event.ctrlKey) return;
    event.preventDefault();
    move.zoom(Math.exp(-event.deltaY * (event.deltaMode === 1 ? 0.05 : 0.0015)), placeOf(event));
  }, { passive: false });
  stage.addEventListener('keydown', (event) => {
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    const arrow = keys[event.key];
    if (arrow && event.shiftKey) move.slide(-arrow[0] * pixelsPerKey, -arrow[1] * pixelsPerKey);
    else if (arrow) move.turn(arrow[0] * degreesPerKey, -arrow[1] * degreesPerKey);
    else if (event.key === '+' || event.key === '=') move.zoom(zoomPerKey);
    else if (event.key === '-') move.zoom(1 / zoomPerKey);
    else if (event.key === 'Home') move.home();
    else if (event.key === 'Enter' || event.key === ' ') move.read();
    else return;
    event.preventDefault();
  });
}
