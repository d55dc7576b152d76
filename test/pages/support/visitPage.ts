import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser, Page } from 'puppeteer';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const layoutFaults = readFileSync(join(import.meta.dirname, 'layoutFaults.js'), 'utf8');

/** What was wrong with one page, each thing as a sentence. */
export interface Visit {
  readonly path: string;
  /** Script errors, files that are missing, requests to anywhere else than the disk. */
  readonly loading: readonly string[];
  /** Violations of WCAG 2.2 level AA and of good practice, as axe-core finds them. */
  readonly access: readonly string[];
  /** What is cut off or runs out of its box as the sheet is printed. */
  readonly layout: readonly string[];
}

/** Violations that axe-core finds in the page as it stands. */
export async function findAccess(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe);
  const { violations } = (await page.evaluate(
    "axe.run({ runOnly: ['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa', 'best-practice'], resultTypes: ['violations'], preload: false })",
  )) as { violations: { id: string; nodes: { html: string }[] }[] };
  return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 160)}`);
}

async function findLayout(page: Page): Promise<readonly string[]> {
  await page.emulateMediaType('print');
  await page.setViewport({ width: 1200, height: 900 });
  return (await page.evaluate(layoutFaults)) as string[];
}

/** Which of the slower looks are wanted. */
interface VisitWish {
  readonly access: boolean;
  readonly layout: boolean;
}

/** Opens a page from the disk and looks at it from all sides. */
export async function visitPage(
  browser: Browser,
  output: string,
  path: string,
  wish: VisitWish,
): Promise<Visit> {
  const page = await browser.newPage();
  const loading: string[] = [];
  page.on('pageerror', (error) => loading.push(String(error)));
  page.on('console', (message) => {
    if (message.type() === 'error') loading.push(message.text());
  });
  page.on('requestfailed', (request) => loading.push(`failed: ${request.url()}`));
  page.on('request', (request) => {
    if (!/^(file|data):/.test(request.url())) loading.push(`outside: ${request.url()}`);
  });
  await page.goto(pathToFileURL(join(output, path)).href, { waitUntil: 'load' });
  await page.evaluate('document.fonts.ready.then(() => true)');
  const access = wish.access ? await findAccess(page) : [];
  const layout = wish.layout ? await findLayout(page) : [];
  await page.close();
  return { path, loading, access, layout };
}

/** All findings of one kind, each with its page. */
export function findings(visits: readonly Visit[], kind: 'loading' | 'access' | 'layout'): readonly string[] {
  return visits.flatMap((visit) => visit[kind].map((line) => `${visit.path}: ${line}`));
}
