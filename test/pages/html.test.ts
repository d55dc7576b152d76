import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { HtmlValidate } from 'html-validate';
import { beforeAll, describe, expect, test } from 'vitest';
import { openBrowser } from '../../src/site/openBrowser.ts';
import { atOnce } from './support/atOnce.ts';
import { browserPath, patience } from './support/browserPath.ts';
import type { BuiltSite } from './support/buildJobs.ts';
import { demoSite } from './support/demoSite.ts';
import { findings, type Visit, visitPage } from './support/visitPage.ts';

const validator = new HtmlValidate({
  extends: ['html-validate:standard'],
  // Styles in the page are the drawings' own and the heads and feet of this very packet.
  rules: { 'no-inline-style': 'off' },
});

/**
 * A sheet stands on a page of its own and in up to four print documents, always from the same template. The slow looks are
 * taken where each is seen once: whether words fit at whole packets and templates; whether the page serves everyone at
 * the boot room's whole packet and templates, the hall's packet in its other language, and the pages about jobs.
 */
function wishFor(page: string) {
  const index = page.endsWith('index.html');
  const bound = /\/print\/(packet|templates|measuring)\.html$/.test(page);
  const boot = bound && page.startsWith('fernlea-boot-room/');
  return { access: index || boot || page === 'almond-hall/print/packet.html', layout: index || bound };
}

/** One page of each content: blank sheets are the same in every job on the same paper. */
function unlike(pages: readonly string[], output: string): readonly string[] {
  const first = new Map<string, string>();
  for (const page of pages) {
    const html = readFileSync(join(output, page), 'utf8');
    if (!first.has(html)) first.set(html, page);
  }
  return [...first.values()];
}

/** A sheet on a page of its own. */
const isSingle = (page: string) => page.includes('/') && !/\/print\/|\/(index|saw)\.html$/.test(page);
/** Pages that are opened: of single sheets those that are most at hand, of one job. */
const isOpened = (page: string) =>
  !isSingle(page) || /^fernlea-boot-room\/(job-sheet|saw-list|layout-plan|care-sheet)\.html$/.test(page);

describe('every page of the demo jobs', () => {
  let site: BuiltSite;
  let visits: readonly Visit[] = [];

  beforeAll(async () => {
    const path = browserPath();
    site = await demoSite();
    const browser = await openBrowser(path);
    visits = await atOnce(unlike(site.pages.filter(isOpened), site.output), (page) =>
      visitPage(browser, site.output, page, wishFor(page)),
    );
    await browser.close();
  }, patience);

  test('is there: the index, and for each job its page, its sheets and its print documents', () => {
    expect(visits.length).toBeGreaterThan(30);
    expect(site.pages).toContain('index.html');
    for (const { slug } of site.jobs) {
      expect(site.pages).toEqual(
        expect.arrayContaining([`${slug}/index.html`, `${slug}/saw-list.html`, `${slug}/print/packet.html`]),
      );
    }
  });

  test('opens from disk without an error, a missing file or a request to any network', () => {
    expect(findings(visits, 'loading')).toEqual([]);
  });

  // WCAG 2.2 level AA, as axe-core checks it.
  test('is accessible', () => {
    expect(findings(visits, 'access')).toEqual([]);
  });

  // The HTML standard, as html-validate checks it.
  test('is valid HTML', async () => {
    const reports = await atOnce(unlike(site.pages, site.output), async (page) => {
      const { results } = await validator.validateString(readFileSync(join(site.output, page), 'utf8'));
      return results.flatMap(({ messages }) =>
        messages.map(({ ruleId, message, line }) => `${page}:${line} ${ruleId}: ${message}`),
      );
    });
    expect(reports.flat()).toEqual([]);
  });

  test('shows all its words, none cut off or out of its box, as it is printed', () => {
    expect(findings(visits, 'layout')).toEqual([]);
  });
});
