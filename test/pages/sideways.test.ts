import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, test } from 'vitest';
import { openBrowser } from '../../src/site/openBrowser.ts';
import { browserPath, patience } from './support/browserPath.ts';
import { demoSite } from './support/demoSite.ts';

/** A phone, a tablet on its side, windows of a desk. */
const widths = [360, 768, 1024, 1100, 1440];

test(
  'no page of the site itself, in no language, has to be moved sideways',
  async () => {
    const { output } = await demoSite();
    const pages = readdirSync(output).filter((name) => /^(index|patterns).*\.html$/.test(name));
    expect(pages).toContain('patterns.es.html');
    const browser = await openBrowser(browserPath());
    const page = await browser.newPage();
    const wide: string[] = [];
    for (const name of pages) {
      await page.goto(pathToFileURL(join(output, name)).href);
      for (const width of widths) {
        await page.setViewport({ width, height: 800 });
        const over = await page.evaluate('document.documentElement.scrollWidth - innerWidth');
        if (Number(over) > 0) wide.push(`${name} at ${width}: ${over} px over`);
      }
    }
    await browser.close();
    expect(wide).toEqual([]);
  },
  patience,
);
