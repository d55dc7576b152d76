import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { HtmlValidate } from 'html-validate';
import type { Browser } from 'puppeteer';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { buildSite } from '../../src/site/buildSite.ts';
import { openBrowser } from '../../src/site/openBrowser.ts';
import { findBrowser } from '../../src/site/setup/findBrowser.mjs';
import { fixtureCore, newPlace, writeJobs } from './fixture.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const validator = new HtmlValidate({
  extends: ['html-validate:standard'],
  rules: { 'no-inline-style': 'off' },
});
const pages = [
  'index.html',
  'boot/index.html',
  'boot/plain-sheet.html',
  'boot/print/packet.html',
  'old/index.html',
  'old/plain-sheet.html',
  'bad/index.html',
];

let root = '';
let browser: Browser;

beforeAll(async () => {
  const place = newPlace({
    boot: 'title: Boot\nstatus: planned',
    old: 'title: Old\nstatus: planned',
    bad: 'bad',
  });
  root = place.root;
  const wish = { names: [], core: fixtureCore, sheetFolder: 'test/site/sheets', progress: () => undefined };
  await buildSite(place.places, wish);
  writeJobs(root, { old: 'bad' });
  await buildSite(place.places, wish);
  browser = await openBrowser(
    String(findBrowser(process.env, join(import.meta.dirname, '../../.cache/browser'))),
  );
});

afterAll(() => browser.close());

async function open(path: string) {
  const page = await browser.newPage();
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(String(error)));
  page.on('requestfailed', (request) => faults.push(`failed: ${request.url()}`));
  page.on('request', (request) => {
    if (!request.url().startsWith('file:')) faults.push(`outside: ${request.url()}`);
  });
  await page.goto(pathToFileURL(join(root, 'output', path)).href, { waitUntil: 'load' });
  return { page, faults };
}

describe.each(pages)('the page %s', (path) => {
  test('loads from disk without an error, a missing file or an outside request', async () => {
    const { page, faults } = await open(path);
    await page.evaluate('document.fonts.ready.then(() => true)');
    expect(faults).toEqual([]);
  });

  // WCAG 2.2 level AA, as axe-core checks it.
  test('is accessible', async () => {
    const { page } = await open(path);
    await page.evaluate(axe);
    const run = "axe.run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa', 'best-practice'] })";
    const { violations } = (await page.evaluate(run)) as {
      violations: { id: string; nodes: { html: string }[] }[];
    };
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
  });

  test('is valid HTML', async () => {
    const report = await validator.validateString(readFileSync(join(root, 'output', path), 'utf8'));
    const messages = report.results.flatMap((result) => result.messages);
    expect(messages.map(({ ruleId, message, line }) => `${line} ${ruleId}: ${message}`)).toEqual([]);
  });
});
