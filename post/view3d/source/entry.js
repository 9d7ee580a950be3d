// SPDX-License-Identifier: GPL-2.0-or-later
// Puts the view in the place of the still picture where the browser can draw it; otherwise says why and leaves the
// picture. Built when it comes near the window, so that a reader of the verdict does not wait for it.
import { readPayload } from './payload.js';
import { canDraw } from './scene.js';
import { made } from './controls.js';
import { View } from './view.js';

const nearWindow = '600px';

function backTo(view, place) {
  for (const row of document.querySelectorAll('tr[data-id]')) {
    const site = row.querySelector('th')?.textContent;
    const details = row.nextElementSibling?.querySelector('details');
    if (!details || !view.siteValues.has(site)) continue;
    const button = made('button', { type: 'button', class: 'view3d-back' }, `Show ${site} in the view`);
    button.addEventListener('click', () => {
      place.scrollIntoView();
      view.show(site);
    });
    details.querySelector('summary').after(button);
  }
}

function start(place, data) {
  const host = made('div', { class: 'view3d' });
  place.append(host);
  place.dataset.live = '';
  host.addEventListener('view3d-lost', () => {
    delete place.dataset.live;
    host.remove();
  });
  const view = new View(data, host);
  backTo(view, place);
}

const place = document.getElementById('view-3d'), payload = document.getElementById('view-3d-data');
if (place && payload) {
  if (canDraw()) {
    const watch = new IntersectionObserver((entries) => {
      if (!entries.some((entry) => entry.isIntersecting)) return;
      watch.disconnect();
      start(place, readPayload(payload.textContent));
    }, { rootMargin: nearWindow });
    watch.observe(place);
  } else {
    place.append(made('p', { class: 'view3d-note' },
      'This browser cannot draw in three dimensions (no WebGL 2): the still picture above shows the same stresses.'));
  }
}
