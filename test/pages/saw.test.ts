import { statSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'puppeteer';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { openBrowser } from '../../src/site/openBrowser.ts';
import { browserPath, patience } from './support/browserPath.ts';
import type { BuiltSite } from './support/buildJobs.ts';
import { demoSite } from './support/demoSite.ts';
import { visitPage } from './support/visitPage.ts';

const slug = 'quarry-kitchen';
const phone = { width: 360, height: 740, hasTouch: true, isMobile: true };

describe('the page beside the saw', () => {
  let site: BuiltSite;
  let browser: Browser;

  const opened = async (hash = ''): Promise<Page> => {
    const page = await browser.newPage();
    await page.setViewport(phone);
    await page.goto(`${pathToFileURL(join(site.output, slug, 'saw.html')).href}${hash}`);
    return page;
  };
  const piecesCut = () =>
    site.jobs.find((job) => job.slug === slug)!.packet.surfaces[0]!.pieces.filter(({ cut }) => cut !== null);
  /** Whether the middle of a thing lies within the window. */
  const isInView = (page: Page, id: string) =>
    page.evaluate(
      `(() => { const { top, bottom } = document.getElementById(${JSON.stringify(id)}).getBoundingClientRect();
        return top < innerHeight && bottom > 0; })()`,
    );

  beforeAll(async () => {
    site = await demoSite();
    browser = await openBrowser(browserPath());
  }, patience);
  afterAll(() => browser.close());

  test('can be sent alone: under 500 kB, no other file, accessible', async () => {
    expect(statSync(join(site.output, slug, 'saw.html')).size).toBeLessThan(500_000);
    const visit = await visitPage(browser, site.output, `${slug}/saw.html`, { access: true, layout: false });
    expect([visit.loading, visit.access]).toEqual([[], []]);
    const page = await opened();
    expect(await page.evaluate("document.querySelectorAll('link, script[src], img').length")).toBe(0);
  });

  test('has no sideways scrolling on a phone but in the plan itself', async () => {
    const page = await opened();
    expect(await page.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(phone.width);
  });

  test('a tap on a piece shows its card, without any script', async () => {
    const page = await browser.newPage();
    await page.setJavaScriptEnabled(false);
    const { id, cut } = piecesCut().at(-1)!;
    await page.setViewport(phone);
    await page.goto(pathToFileURL(join(site.output, slug, 'saw.html')).href);
    await page.setJavaScriptEnabled(true);
    await page.$eval(`#piece-1-${id}`, (place) =>
      place.dispatchEvent(new MouseEvent('click', { bubbles: true })),
    );
    expect(new URL(page.url()).hash).toBe(`#cut-1-${cut}`);
    expect(await isInView(page, `cut-1-${cut}`)).toBe(true);
  });

  test("a tap on a piece's name shows its place on the plan", async () => {
    const page = await opened();
    const { id } = piecesCut()[0]!;
    await page.click(`.card a[href="#piece-1-${id}"]`);
    expect(new URL(page.url()).hash).toBe(`#piece-1-${id}`);
    expect(await isInView(page, `piece-1-${id}`)).toBe(true);
  });

  test('every cut piece has a tick box and a place, and each tick is remembered on this device', async () => {
    const page = await opened();
    const all = (await page.$$eval('input[data-piece]', (boxes) =>
      boxes.map((box) => box.getAttribute('data-piece')),
    )) as string[];
    expect(all.sort()).toEqual(
      piecesCut()
        .map(({ id }) => `piece-1-${id}`)
        .sort(),
    );
    await page.click(`input[data-piece="${all[0]}"]`);
    await page.reload();
    const checked = await page.$$eval('input:checked', (boxes) =>
      boxes.map((box) => box.getAttribute('data-piece')),
    );
    expect(checked).toEqual([all[0]]);
  });
});
