// SPDX-License-Identifier: GPL-2.0-or-later
// Labels of the sites: a disc on the part, a chip above or below it, a line between; a chip leads to its row.

const svgNames = 'http://www.w3.org/2000/svg';
const gap = 4, edge = 6, spotRadius = 4.5;

function svg(name, attributes, parent) {
  const made = document.createElementNS(svgNames, name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  parent.append(made);
  return made;
}

// Chips in one row from left to right, each as near above its spot as its neighbours let it: touching ones are moved as
// one block to the mean of what they want.
function inOneRow(chips, width) {
  const blocks = [];
  for (const chip of chips.sort((a, b) => a.x - b.x)) {
    let block = { chips: [chip], wide: chip.wide, wanted: chip.x - chip.wide / 2 };
    const place = () => { block.left = Math.max(edge, Math.min(width - edge - block.wide, block.wanted)); };
    place();
    while (blocks.length > 0 && blocks.at(-1).left + blocks.at(-1).wide + gap > block.left) {
      const before = blocks.pop();
      const n = before.chips.length, m = block.chips.length;
      const shifted = block.wanted - before.wide - gap;
      block = { chips: [...before.chips, ...block.chips], wide: before.wide + gap + block.wide,
        wanted: (n * before.wanted + m * shifted) / (n + m) };
      place();
    }
    blocks.push(block);
  }
  for (const { chips: inside, left } of blocks)
    inside.reduce((at, chip) => { chip.left = at; return at + chip.wide + gap; }, left);
}

const widthOf = (chips) => chips.reduce((sum, chip) => sum + chip.offsetWidth + gap, 2 * edge);

export class Labels {
  constructor(overlay) {
    this.overlay = overlay;
    this.lines = svg('svg', { 'aria-hidden': 'true', class: 'view3d-lines' }, overlay);
    this.chips = new Map();
  }

  // sites: { id, number, row, governs }
  set(sites) {
    for (const chip of this.chips.values()) chip.remove();
    this.chips.clear();
    for (const site of sites) {
      // The list below the view holds the same links for the keyboard and for readers of the page.
      const chip = document.createElement(site.row ? 'a' : 'span');
      if (site.row) chip.setAttribute('href', `#${site.row}`);
      chip.className = site.governs ? 'view3d-chip governs' : 'view3d-chip';
      chip.tabIndex = -1;
      chip.setAttribute('aria-hidden', 'true');
      chip.dataset.site = site.id;
      const number = document.createElement('b'), name = document.createElement('span');
      number.textContent = site.number;
      name.textContent = ` ${site.id}`;
      chip.append(number, name);
      this.overlay.append(chip);
      this.chips.set(site.id, chip);
    }
  }

  // spots: Map of id to [x, y] of those that can be seen.
  place(spots, [width, height], middle) {
    this.lines.replaceChildren();
    this.lines.setAttribute('viewBox', `0 0 ${width} ${height}`);
    const shown = { upper: [], lower: [] };
    for (const [id, chip] of this.chips) {
      const spot = spots.get(id);
      chip.hidden = !spot;
      if (spot) shown[spot[1] <= middle(spot[0]) ? 'upper' : 'lower'].push({ chip, x: spot[0], y: spot[1] });
    }
    // Names where all of them have room beside each other, else the numbers of the list below the view.
    this.overlay.classList.remove('view3d-brief');
    const isTight = Object.values(shown).some((list) => widthOf(list.map(({ chip }) => chip)) > width);
    this.overlay.classList.toggle('view3d-brief', isTight);
    for (const [side, list] of Object.entries(shown)) {
      for (const one of list) Object.assign(one, { wide: one.chip.offsetWidth, high: one.chip.offsetHeight });
      inOneRow(list, width);
      for (const one of list) this.draw(one, side === 'upper', height);
    }
  }

  draw({ chip, x, y, wide, high, left }, isUpper, height) {
    const top = isUpper ? edge : height - edge - high;
    chip.style.transform = `translate(${left}px, ${top}px)`;
    const from = [Math.max(left + 6, Math.min(left + wide - 6, x)), isUpper ? top + high : top];
    for (const kind of ['halo', 'leader']) svg('line', { class: kind, x1: from[0], y1: from[1], x2: x, y2: y }, this.lines);
    svg('circle', { class: 'spot', cx: x, cy: y, r: spotRadius }, this.lines);
  }
}
