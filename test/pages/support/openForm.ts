import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'puppeteer';
import { formPage } from '../../../src/site/formPage.ts';
import { placesUnder } from '../../../src/site/places.ts';
import { readWords } from '../../../src/site/words.ts';
import { home } from './browserPath.ts';

export interface BuiltForm {
  readonly folder: string;
  /** The page as it lies on the disk, alone in its folder. */
  readonly file: string;
}

/** Makes the form's page in a folder of its own: nothing lies beside it that it could load. */
export async function buildForm(): Promise<BuiltForm> {
  const folder = mkdtempSync(join(tmpdir(), 'packet-form-'));
  const file = join(folder, 'form.html');
  const places = placesUnder(home, folder);
  writeFileSync(file, await formPage(places, readWords(join(places.layouts, 'words'))));
  return { folder, file };
}

/** A telephone and a desk, in CSS pixels. */
export const screens = {
  telephone: { width: 360, height: 740, isMobile: true, hasTouch: true },
  desk: { width: 1280, height: 900 },
} as const;

/** An open form, and what it asked of the world beside its own file. */
export interface OpenForm {
  readonly page: Page;
  readonly asked: string[];
  readonly errors: string[];
}

/** Opens the form from the disk, with nothing remembered; `hash` is what a link brings along. */
export async function openForm(
  browser: Browser,
  { file }: BuiltForm,
  screen: keyof typeof screens,
  hash = '',
): Promise<OpenForm> {
  const context = await browser.createBrowserContext();
  const page = await context.newPage();
  const [asked, errors]: [string[], string[]] = [[], []];
  page.on('pageerror', (error) => errors.push(String(error)));
  page.on('console', (message) => message.type() === 'error' && errors.push(message.text()));
  page.on('request', (request) => {
    if (!/^(file|data|blob):/.test(request.url())) asked.push(request.url());
  });
  await page.setViewport(screens[screen]);
  await page.goto(pathToFileURL(file).href + hash);
  return { page, asked, errors };
}

/** The link of a job's page. */
export const broughtAlong = (text: string): string => `#job=${encodeURIComponent(text)}`;

/** What an expression says of the element that is called `one` in it. */
export function ask<Answer>(page: Page, selector: string, expression: string): Promise<Answer> {
  return page.evaluate(
    `((one) => ${expression})(document.querySelector(${JSON.stringify(selector)}))`,
  ) as Promise<Answer>;
}

/** The words of the first element that a selector fits. */
export const wordsOf = (page: Page, selector: string): Promise<string> =>
  ask(page, selector, 'one.textContent');

/** Opens every part of the form. */
export const openAll = (page: Page): Promise<void> =>
  page.evaluate("for (const one of document.querySelectorAll('details')) one.open = true;") as Promise<void>;

/** Presses what bears an id; what has no place under the fingers is brought there first. */
export async function press(page: Page, id: string): Promise<void> {
  await page.evaluate(`document.getElementById(${JSON.stringify(id)}).click()`);
}

/** Writes into a box, or chooses in it, and leaves it, as a hand would: stroke by stroke. */
export async function fill(page: Page, id: string, value: string): Promise<void> {
  const selector = `[id="${id}"]`;
  await page.waitForSelector(selector);
  const kind = await ask<string>(page, selector, "one.localName + ' ' + one.type");
  if (kind.startsWith('select')) {
    await page.select(selector, value);
    return;
  }
  if (kind === 'input date') {
    const written = JSON.stringify(value);
    await ask(
      page,
      selector,
      `{ one.value = ${written}; one.dispatchEvent(new Event('change', { bubbles: true })); }`,
    );
    return;
  }
  await openAll(page);
  await page.focus(selector);
  await ask(page, selector, 'one.select()');
  await page.keyboard.press('Backspace');
  await page.keyboard.type(value);
  await ask(page, selector, 'one.blur()');
}

/** The job file as it stands in the form now. */
export const textIn = (page: Page): Promise<string> => ask(page, '#text', 'one.value');

/** Saves, and gives back what came out on the disk. */
export async function saved(page: Page, folder: string): Promise<string> {
  const at = mkdtempSync(join(folder, 'saved-'));
  const client = await page.createCDPSession();
  const wish = { behavior: 'allow', downloadPath: at, eventsEnabled: true } as const;
  await client.send('Browser.setDownloadBehavior', { ...wish, browserContextId: page.browserContext().id! });
  // The file has its name before it has its words: only the browser knows when all of it is there.
  const there = new Promise<void>((done) => {
    client.on('Browser.downloadProgress', ({ state }) => state === 'completed' && done());
  });
  await press(page, 'save');
  await there;
  await client.detach();
  return readFileSync(join(at, 'job.yaml'), 'utf8');
}
