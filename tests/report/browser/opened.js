// SPDX-License-Identifier: GPL-2.0-or-later
// What the claims about the report share: the browser, its packages, and a page opened with an ear on what it says.
// Skipped, status 77, without Chromium or without the packages of package.json.
import { readFileSync, existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';

const skipped = 77;
const packages = process.argv[3];

function skip(why) {
  console.log(`skipped: ${why}`);
  process.exit(skipped);
}

export function installedBrowser() {
  for (const file of [process.env.SPLICEWRIGHT_BROWSER, '/usr/bin/chromium', '/usr/bin/google-chrome'])
    if (file && existsSync(file)) return file;
  return skip('no Chromium: apt-get install chromium, or name one with SPLICEWRIGHT_BROWSER');
}

function loaded(name) {
  try {
    return createRequire(join(packages, 'package.json'))(name);
  } catch {
    return skip(`no npm package ${name}: ./run browser installs it`);
  }
}

export const playwright = loaded('playwright-core');
export const axeSource = readFileSync(createRequire(join(packages, 'package.json')).resolve('axe-core/axe.min.js'), 'utf8');

export const resultOf = (folder) => JSON.parse(readFileSync(join(folder, 'result.json'), 'utf8'));

// What the graphics driver of a browser without a graphics card says about its own speed.
const ofTheDriver = /GL Driver Message|software WebGL|GroupMarkerNotSet/;

export function launched(args = []) {
  return playwright.chromium.launch({
    executablePath: installedBrowser(),
    args: [...(process.getuid() === 0 ? ['--no-sandbox'] : []), '--enable-unsafe-swiftshader', ...args],
  });
}

// Opens the page of a result folder and keeps what it asks for and says.
export async function opened(browser, folder, options = {}) {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
  const page = await context.newPage();
  page.setDefaultTimeout(90000);
  // What is drawn stays readable after it was shown.
  await page.addInitScript(() => {
    const usual = HTMLCanvasElement.prototype.getContext;
    HTMLCanvasElement.prototype.getContext = function (kind, wanted) {
      return usual.call(this, kind, { ...wanted, preserveDrawingBuffer: true });
    };
  });
  const heard = { requests: [], console: [] };
  page.on('request', (request) => heard.requests.push(request.url()));
  page.on('console', (message) => { if (!ofTheDriver.test(message.text())) heard.console.push(message.text()); });
  page.on('pageerror', (error) => heard.console.push(String(error)));
  const address = pathToFileURL(join(folder, 'report.html')).href;
  await page.goto(address);
  return { page, context, heard, address };
}

// Until what was asked for is drawn.
export async function drawn(page) {
  await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))));
}

// Scrolls to the view in three dimensions, which starts it.
export async function openView(page) {
  await page.locator('#view-3d').scrollIntoViewIfNeeded();
  await page.waitForSelector('.view3d-stage');
  await page.locator('.view3d-stage').scrollIntoViewIfNeeded();
  await drawn(page);
}
