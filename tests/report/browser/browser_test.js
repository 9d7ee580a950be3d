// SPDX-License-Identifier: GPL-2.0-or-later
// The report in a real browser: one claim for each run, named by the first argument; the others are the folder of the
// npm packages and result folders.
import { readFileSync, statSync, existsSync, mkdtempSync, rmSync } from 'node:fs';
import { execFileSync } from 'node:child_process';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import assert from 'node:assert/strict';
import { axeSource, launched, opened, openView, resultOf } from './opened.js';
import { viewClaims } from './view_claims.js';

const [claim, , ...folders] = process.argv.slice(2);

const sectionsOfASplice = ['asked', 'drawing', 'governs', 'what-if', 'checks', 'pictures', 'handbook', 'life', 'making',
  'assumptions', 'evidence', 'cautions'];
const largestBytes = 4e6;

// Without a finding, and no wider than the window.
async function isAccessible(page, where) {
  await page.addScriptTag({ content: axeSource });
  const found = await page.evaluate(() => axe.run(document));
  assert.deepEqual(found.violations.map((one) => [one.id, one.nodes[0].html.slice(0, 200)]), [], where);
  const [wide, room] = await page.evaluate(() =>
    [document.documentElement.scrollWidth, document.documentElement.clientWidth]);
  assert.ok(wide <= room, `${where}: ${wide} px wide on ${room} px`);
}

const claims = {
  async sections(browser, options = {}) {
    for (const folder of folders) {
      const { page, context } = await opened(browser, folder, options);
      const found = await page.$$eval('main > section', (all) => all.map((one) => one.id));
      const result = resultOf(folder);
      const expected = sectionsOfASplice.filter((id) => result.making !== null || (id !== 'what-if' && id !== 'making'));
      assert.deepEqual(found.filter((id) => id !== 'tolerances'), expected, folder);
      const empty = await page.$$eval('main > section', (all) =>
        all.filter((one) => one.innerText.trim().length < 40).map((one) => one.id));
      assert.deepEqual(empty, [], folder);
      await context.close();
    }
  },

  async numbers(browser, options = {}) {
    for (const folder of folders) {
      const { page, context } = await opened(browser, folder, options);
      const result = resultOf(folder);
      const rows = new Map(await page.$$eval('tr[data-id]', (all) => all.map((row) =>
        [row.dataset.id, Array.from(row.cells, (cell) => cell.innerText.trim())])));
      assert.equal(rows.size, result.checks.length, folder);
      for (const check of result.checks) {
        const cells = rows.get(check.id);
        assert.ok(cells, check.id);
        assert.equal(cells[0], check.site, check.id);
        assert.equal(cells[1], check.kind, check.id);
        const used = 100 * check.utilisation;
        assert.ok(Math.abs(parseFloat(cells[2]) - used) <= 0.5001, `${check.id}: ${cells[2]} for ${used}`);
        assert.equal(cells[2].includes('!'), !check.passes, check.id);
        if (check.kind === 'strength') {
          const [demand, capacity] = cells[3].match(/\d+/g).map(Number);
          assert.ok(Math.abs(demand - check.demand) <= 0.5001, `${check.id}: ${cells[3]}`);
          assert.ok(Math.abs(capacity - check.capacity) <= 0.5001, `${check.id}: ${cells[3]}`);
        }
        assert.equal(cells[6], check.provenance, check.id);
      }
      const verdict = await page.innerText('.verdict');
      assert.equal(verdict.includes('DOES NOT PASS'), !result.verdict.passes, verdict);
      assert.ok(verdict.includes(result.verdict.governing_site), verdict);
      const evidence = await page.innerText('#evidence');
      assert.ok(evidence.includes(String(result.evidence.elements)), folder);
      const kept = await page.getAttribute('#evidence a[download]', 'href');
      assert.equal(Buffer.from(kept.split('base64,')[1], 'base64').toString(), result.case_text, folder);
      await context.close();
    }
  },

  async alone(browser) {
    for (const folder of folders) {
      const { page, context, heard, address } = await opened(browser, folder);
      await openView(page);
      assert.deepEqual(heard.requests.filter((url) => url !== address && !url.startsWith('data:')), [], folder);
      assert.deepEqual(heard.console, [], folder);
      assert.ok(statSync(join(folder, 'report.html')).size < largestBytes, folder);
      await context.close();
    }
  },

  async accessible(browser) {
    const looks = [{}, { colorScheme: 'dark' }, { viewport: { width: 360, height: 800 } },
      { viewport: { width: 640, height: 450 } }];
    for (const folder of folders)
      for (const look of looks) {
        const { page, context } = await opened(browser, folder, { bypassCSP: true, ...look });
        // All that folds is looked at as well.
        await page.$$eval('details', (all) => all.slice(0, 12).forEach((one) => { one.open = true; }));
        await openView(page);
        await isAccessible(page, `${folder} ${JSON.stringify(look)}`);
        await context.close();
      }
  },

  async prints(browser) {
    const place = mkdtempSync(join(tmpdir(), 'splicewright-print-'));
    for (const folder of folders)
      for (const format of ['A4', 'Letter']) {
        const { page, context } = await opened(browser, folder);
        const pdf = join(place, 'report.pdf');
        await page.pdf({ path: pdf, format, printBackground: true });
        const inches = format === 'A4' ? 8.27 : 8.5, margins = 26 / 25.4;
        await page.setViewportSize({ width: Math.floor((inches - margins) * 96), height: 1000 });
        await page.emulateMedia({ media: 'print' });
        const wider = await page.$$eval('table, figure, pre', (all) => all
          .filter((one) => one.getBoundingClientRect().right > document.documentElement.clientWidth + 1 ||
            one.scrollWidth > one.clientWidth + 1)
          .map((one) => one.innerText.slice(0, 60)));
        assert.deepEqual(wider, [], `${folder} on ${format}: clipped`);
        const pages = readFileSync(pdf, 'latin1').match(/\/Type\s*\/Page\b/g).length;
        const fewest = resultOf(folder).making === null ? 6 : 14;
        assert.ok(pages >= fewest && pages <= 30, `${folder} on ${format}: ${pages} pages`);
        if (existsSync('/usr/bin/pdftotext')) {
          const text = execFileSync('/usr/bin/pdftotext', [pdf, '-'], { encoding: 'utf8' }).replace(/\s+/g, ' ');
          // One word each: a head may be broken into lines.
          const heads = ['Relied', 'Trusted', 'Agrees'];
          if (resultOf(folder).making !== null) heads.push('initials', 'Hardness', 'signature');
          for (const words of heads) assert.ok(text.includes(words), `${folder} on ${format}: "${words}" is not printed`);
        }
        await context.close();
      }
    rmSync(place, { recursive: true });
  },

  // The page of a study: its numbers, its looks, and the way to the full report of the option that it recommends.
  async study(browser) {
    for (const folder of folders)
      for (const look of [{}, { colorScheme: 'dark' }, { viewport: { width: 360, height: 800 } }]) {
        const { page, context, heard, address } = await opened(browser, folder, { bypassCSP: true, ...look });
        const study = JSON.parse(readFileSync(join(folder, 'options.json'), 'utf8'));
        const rows = await page.$$eval('#options tr.row', (all) => all.map((row) =>
          Object.fromEntries(Array.from(row.cells, (cell) => [cell.dataset.head, cell.innerText.trim()]))));
        assert.equal(rows.length, study.options.filter((one) => one.end === 'judged').length, folder);
        for (const row of rows) {
          const option = study.options[Number(row.option) - 1];
          assert.equal(row.passes.startsWith('yes'), option.passes, `${folder}: option ${row.option}`);
          assert.ok(Math.abs(parseFloat(row.used) - 100 * option.utilisation) <= 0.0501, `${folder}: ${row.used}`);
        }
        assert.equal(Number(rows[0].option), study.recommended_option, folder);
        await isAccessible(page, `${folder} ${JSON.stringify(look)}`);
        assert.deepEqual(heard.requests.filter((url) => url !== address && !url.startsWith('data:')), [], folder);
        await page.click('#asked a');
        assert.match(await page.innerText('h1'), new RegExp(`, option ${study.recommended_option}$`), folder);
        assert.ok((await page.innerText('.verdict')).includes('passes'), folder);
        assert.equal(await page.locator('#tolerances tr.row').count(), rows.length, folder);
        await page.click('#tolerances a[href="../report.html"]');
        assert.match(await page.innerText('h1'), /^Options of/, folder);
        assert.deepEqual(heard.console, [], folder);
        await context.close();
      }
  },

  async hostile(browser) {
    for (const folder of folders) {
      const { page, context, heard } = await opened(browser, folder, { viewport: { width: 360, height: 800 } });
      const title = resultOf(folder).title;
      assert.equal(await page.innerText('h1'), title.replace(/\s+/g, ' '), folder);
      assert.equal(await page.title(), title.replace(/\s+/g, ' ').trim(), folder);
      await openView(page);
      assert.ok((await page.getAttribute('.view3d-stage', 'aria-label')).includes(title), folder);
      assert.equal(await page.evaluate(() => window.hit), undefined, folder);
      assert.deepEqual(await page.$$eval('script', (all) => all.map((one) => [one.type, one.id])),
        [['text/plain', 'view-3d-data'], ['', '']], folder);
      assert.equal(await page.$$eval('[onclick], [onerror], [onload], main img:not([src^="data:image/png"])',
        (all) => all.length), 0, folder);
      assert.deepEqual(heard.console, [], folder);
      const [wide, room] = await page.evaluate(() =>
        [document.documentElement.scrollWidth, document.documentElement.clientWidth]);
      assert.ok(wide <= room, `${folder}: ${wide} px wide on ${room} px`);
      const drawing = await context.newPage();
      await drawing.goto(pathToFileURL(join(folder, 'drawing.svg')).href);
      assert.equal(await drawing.evaluate(() => window.hit), undefined, folder);
      await context.close();
    }
  },
};

Object.assign(claims, viewClaims(folders, claims));
assert.ok(claims[claim], `no such claim: ${claim}`);
const browser = await launched();
try {
  await claims[claim](browser);
} finally {
  await browser.close();
}
console.log(`${claim}: holds for ${folders.length} reports`);
