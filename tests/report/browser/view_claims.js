// SPDX-License-Identifier: GPL-2.0-or-later
// Claims about the view in three dimensions.
import assert from 'node:assert/strict';
import { drawn, launched, opened, openView, resultOf } from './opened.js';

// What is drawn, without the labels: the picture itself, how many colours, the share of pixels unlike the corner.
async function pictured(page) {
  await drawn(page);
  return page.$eval('.view3d-canvas canvas', (canvas) => {
    const copy = Object.assign(document.createElement('canvas'), { width: canvas.width, height: canvas.height });
    const context = copy.getContext('2d');
    context.drawImage(canvas, 0, 0);
    const pixels = new Uint32Array(context.getImageData(0, 0, copy.width, copy.height).data.buffer);
    return { picture: copy.toDataURL(), colours: new Set(pixels).size,
      share: pixels.filter((one) => one !== pixels[0]).length / pixels.length };
  });
}

const same = (a, b) => a.picture === b.picture;

const choose = (page, name, value) => page.selectOption(`[name=view3d-${name}]`, value);

async function slide(page, name, value) {
  await page.$eval(`[name=view3d-${name}]`, (input, to) => {
    input.value = to;
    input.dispatchEvent(new Event('input'));
  }, value);
}

const told = (page) => page.innerText('.view3d-told');

// "von Mises stress at bar-toe.left: 294.1 ± 0.1 MPa" to its numbers and the last digit's half.
function numbersOf(text) {
  const [, value, error] = text.match(/(-?[\d.]+) ± ([\d.]+)/);
  const digits = (value.split('.')[1] ?? '').length;
  return { value: Number(value), error: Number(error), half: 0.5001 * 10 ** -digits };
}

const optionWith = async (page, name, words) => page.$eval(`[name=view3d-${name}]`,
  (select, part) => Array.from(select.options).find((one) => one.text.startsWith(part)).value, words);

export function viewClaims(folders, claims) {
  return {
    async viewDraws(browser) {
      for (const folder of folders) {
        const { page, context, heard } = await opened(browser, folder);
        await openView(page);
        const start = await pictured(page);
        assert.ok(start.share > 0.1 && start.share < 0.9, `${folder}: ${start.share} of the picture is drawn`);
        assert.ok(start.colours > 100, `${folder}: ${start.colours} colours`);
        const box = await page.locator('.view3d-stage').boundingBox();
        await page.mouse.move(box.x + 200, box.y + 200);
        await page.mouse.down();
        await page.mouse.move(box.x + 260, box.y + 230, { steps: 3 });
        await page.mouse.up();
        const turned = await pictured(page);
        assert.ok(!same(start, turned), `${folder}: dragging turns nothing`);
        await page.mouse.wheel(0, -300);
        assert.ok(!same(turned, await pictured(page)), `${folder}: the wheel zooms nothing`);
        await page.getByRole('button', { name: 'Start view' }).click();
        assert.ok(same(start, await pictured(page)), `${folder}: the start view is another one`);
        assert.deepEqual(heard.console, [], folder);
        await context.close();
      }
    },

    async viewTurnsAndZoomsByTouch(browser) {
      for (const folder of folders) {
        const { page, context } = await opened(browser, folder,
          { hasTouch: true, isMobile: true, viewport: { width: 360, height: 740 } });
        await openView(page);
        const start = await pictured(page);
        const box = await page.locator('.view3d-stage').boundingBox();
        const fingers = await context.newCDPSession(page);
        const touch = (type, ...points) => fingers.send('Input.dispatchTouchEvent',
          { type, touchPoints: points.map(([x, y], id) => ({ x: box.x + x, y: box.y + y, id })) });
        await touch('touchStart', [150, 120]);
        await touch('touchMove', [180, 140]);
        await touch('touchMove', [210, 150]);
        await touch('touchEnd');
        const turned = await pictured(page);
        assert.ok(!same(start, turned), `${folder}: one finger turns nothing`);
        const scale = await page.innerText('.view3d-rule');
        await touch('touchStart', [150, 120], [190, 120]);
        for (const reach of [10, 30, 50]) await touch('touchMove', [150 - reach, 120], [190 + reach, 120]);
        await touch('touchEnd');
        assert.ok(!same(turned, await pictured(page)), `${folder}: two fingers zoom nothing`);
        assert.notEqual(await page.innerText('.view3d-rule'), scale, folder);
        await page.touchscreen.tap(box.x + box.width / 2, box.y + box.height / 2);
        assert.match(await told(page), /±/, folder);
        const [wide, room] = await page.evaluate(() =>
          [document.documentElement.scrollWidth, document.documentElement.clientWidth]);
        assert.ok(wide <= room, `${folder}: ${wide} px wide on ${room} px`);
        await context.close();
      }
    },

    async viewFollowsEveryChoice(browser) {
      for (const folder of folders) {
        const { page, context, heard } = await opened(browser, folder);
        await openView(page);
        const start = await pictured(page);
        for (const name of ['scenario', 'load', 'shown', 'section']) {
          const n = await page.$eval(`[name=view3d-${name}]`, (select) => select.options.length);
          let before = start;
          for (let k = 1; k < n; ++k) {
            await choose(page, name, String(k));
            const now = await pictured(page);
            assert.ok(!same(before, now), `${folder}: ${name} ${k} looks like the one before`);
            before = now;
          }
          await choose(page, name, '0');
          if (name === 'section') await page.getByRole('button', { name: 'Start view' }).click();
          assert.ok(same(start, await pictured(page)), `${folder}: ${name} does not come back`);
        }
        // One range for all scenarios keeps its numbers; the range of one alone is below it.
        const tops = [];
        const top = async () => Number((await page.$$eval('.view3d-ticks span', (all) => all.map((one) => one.innerText))).at(-1));
        for (const k of ['0', '2']) {
          await choose(page, 'scenario', k);
          tops.push(await top());
        }
        assert.equal(tops[0], tops[1], folder);
        await choose(page, 'scenario', '0');
        await page.check('[name=view3d-own-range]');
        assert.ok(await top() <= tops[0], folder);
        await page.uncheck('[name=view3d-own-range]');
        assert.equal(await top(), tops[0], folder);
        await slide(page, 'movement-drawn', 1000);
        assert.ok((await page.innerText('.view3d-choices')).includes(' times'), folder);
        assert.ok(!same(start, await pictured(page)), `${folder}: movement is not drawn`);
        assert.deepEqual(heard.console, [], folder);
        await context.close();
      }
    },

    async viewHidesLabelsOfWhatIsCutAway(browser) {
      for (const folder of folders) {
        const { page, context } = await opened(browser, folder);
        await openView(page);
        // The place that result.json tells is that of the torsion peak.
        await choose(page, 'load', await optionWith(page, 'load', 'Torque alone'));
        await choose(page, 'section', '2');
        const sites = resultOf(folder).sites;
        for (const place of [0, 10]) {
          await slide(page, 'place-of-the-cut', place);
          await drawn(page);
          const shown = await page.$$eval('.view3d-chip:not([hidden])', (all) => all.map((one) => one.dataset.site));
          assert.ok(shown.length > 0, folder);
          for (const site of sites)
            if (site.z_mm > place) assert.ok(!shown.includes(site.id), `${folder}: ${site.id} is cut away and labelled`);
        }
        await context.close();
      }
    },

    async viewIsReachedByKeyboard(browser) {
      for (const folder of folders) {
        const { page, context } = await opened(browser, folder);
        await openView(page);
        const start = await pictured(page);
        const wanted = await page.$$eval(
          '.view3d select, .view3d input:not([disabled]), .view3d button, .view3d a:not([tabindex="-1"]), .view3d-stage', (all) => all.length);
        await page.focus('[name=view3d-scenario]');
        let reached = 1;
        while (reached <= wanted) {
          await page.keyboard.press('Tab');
          const { inside, seen } = await page.evaluate(() => {
            const now = document.activeElement;
            const style = getComputedStyle(now);
            return { inside: now.closest('.view3d') !== null, seen: style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 2 };
          });
          if (!inside) break;
          assert.ok(seen, `${folder}: control ${reached} does not show that it is chosen`);
          ++reached;
        }
        assert.equal(reached, wanted, `${folder}: controls reached by keyboard`);
        await page.focus('.view3d-stage');
        const plain = await pictured(page);
        let before = plain;
        for (const key of ['ArrowLeft', 'ArrowUp', '+', 'Shift+ArrowRight', '-']) {
          await page.keyboard.press(key);
          const now = await pictured(page);
          assert.ok(!same(before, now), `${folder}: ${key} changes nothing`);
          before = now;
        }
        await page.keyboard.press('Home');
        assert.ok(same(plain, await pictured(page)), `${folder}: Home does not lead back`);
        await page.keyboard.press('Enter');
        assert.match(await told(page), /± .* at /, folder);
        assert.ok(start.share > 0, folder);
        await context.close();
      }
    },

    async viewLabelsLeadToTheirRows(browser) {
      for (const folder of folders) {
        const { page, context } = await opened(browser, folder);
        const governing = resultOf(folder).verdict.governing_site;
        await openView(page);
        const chip = page.locator(`.view3d-chip[data-site="${governing}"]`);
        assert.ok((await chip.getAttribute('class')).includes('governs'), folder);
        await chip.click();
        const row = await page.evaluate(() => {
          const target = document.querySelector(':target');
          const box = target.getBoundingClientRect();
          return { site: target.cells[0].innerText, seen: box.top >= -1 && box.bottom <= innerHeight };
        });
        assert.deepEqual(row, { site: governing, seen: true }, folder);
        await page.evaluate(() => document.querySelector(':target').nextElementSibling.querySelector('summary').click());
        await page.locator(':target + tr .view3d-back').click();
        await drawn(page);
        assert.ok((await told(page)).includes(` at ${governing}: `), await told(page));
        await context.close();
      }
    },

    async viewTellsTheNumbersOfResultJson(browser) {
      for (const folder of folders) {
        const { page, context } = await opened(browser, folder);
        const result = resultOf(folder);
        await openView(page);
        await choose(page, 'load', await optionWith(page, 'load', 'Torque alone'));
        await choose(page, 'section', '1');
        await drawn(page);
        const torque = result.loads.peak_torque_Nm / 1000;
        const listed = new Map(await page.$$eval('.view3d-value', (all) => all.map((one) => [one.dataset.site, one.innerText])));
        let n = 0;
        for (const site of result.sites) {
          if (!listed.has(site.id)) continue;
          const expected = site.unit.torsion.von_mises_MPa * torque;
          const { value, error, half } = numbersOf(listed.get(site.id));
          assert.ok(Math.abs(value - expected) <= half, `${site.id}: ${value} for ${expected}`);
          assert.ok(error >= expected * site.unit.torsion.error_pct / 100 - 1e-9, `${site.id}: error ${error}`);
          ++n;
        }
        assert.ok(n >= 4, folder);
        // Under the pointer, at a mark: the same words as in the list.
        for (const id of await page.$$eval('.view3d-chip:not([hidden])', (all) => all.map((one) => one.dataset.site))) {
          const words = listed.get(id);
          await page.getByRole('button', { name: `Show ${id} in the view` }).click();
          await drawn(page);
          const box = await page.locator('.view3d-stage').boundingBox();
          await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
          assert.ok((await told(page)).endsWith(`${id}: ${words}`), `${await told(page)} for ${words}`);
        }
        // Beside a mark, inside the plain bar: the shear grows with the radius up to what the site has at the surface.
        const bar = result.sites.find((site) => site.id.startsWith('bar.'));
        await choose(page, 'shown', '2');
        await page.getByRole('button', { name: `Show ${bar.id} in the view` }).click();
        await page.keyboard.press('Shift+ArrowDown');
        await page.keyboard.press('Shift+ArrowDown');
        await page.keyboard.press('Enter');
        const read = await page.$eval('.view3d-told', (one) => ({ ...one.dataset }));
        const expected = bar.unit.torsion.shear_MPa * torque * read.r / bar.r_mm;
        const { error } = numbersOf(await told(page));
        assert.ok(read.r < bar.r_mm - 0.5, `${folder}: read at r = ${read.r}`);
        assert.ok(Math.abs(read.value - expected) <= error, `${folder}: ${read.value} ± ${error} for ${expected}`);
        await context.close();
      }
    },

    // Without a graphics interface, without script, and on paper.
    async withoutViewNothingIsMissing() {
      const still = '#view-3d > figure img';
      const bare = await launched(['--disable-3d-apis']);
      try {
        for (const folder of folders) {
          const { page, context, heard } = await opened(bare, folder);
          await page.locator('#view-3d').scrollIntoViewIfNeeded();
          await page.waitForSelector('#view-3d > .view3d-note');
          assert.ok(await page.isVisible(still), folder);
          assert.equal(await page.locator('.view3d-stage').count(), 0, folder);
          assert.deepEqual(heard.console, [], folder);
          await context.close();
          const silent = await opened(bare, folder, { javaScriptEnabled: false });
          assert.ok(await silent.page.isVisible(still), folder);
          assert.equal(await silent.page.locator('.view3d, .view3d-note').count(), 0, folder);
          await silent.context.close();
        }
        await claims.sections(bare, { javaScriptEnabled: false });
        await claims.numbers(bare, { javaScriptEnabled: false });
      } finally {
        await bare.close();
      }
      const browser = await launched();
      try {
        const { page } = await opened(browser, folders[0]);
        await openView(page);
        assert.ok(!(await page.isVisible(still)), 'the view takes the place of the still picture');
        await page.emulateMedia({ media: 'print' });
        assert.ok(await page.isVisible(still), 'paper shows the still picture');
        assert.ok(!(await page.isVisible('.view3d-stage')), 'paper shows no view');
      } finally {
        await browser.close();
      }
    },
  };
}
