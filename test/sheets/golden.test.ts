import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser } from 'puppeteer';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { goldenFolder, goldenSheets } from '../../src/site/golden/goldenSheets.ts';
import { takePictures } from '../../src/site/golden/takePictures.ts';
import { openBrowser } from '../../src/site/openBrowser.ts';
import { browserPath, home, patience } from '../pages/support/browserPath.ts';
import { demoSite } from '../pages/support/demoSite.ts';

const compare = readFileSync(join(import.meta.dirname, 'pictureFaults.js'), 'utf8');
const wayOut = 'where the change is wanted, look at the sheet and run "node src/site/run.mjs goldens"';

function address(png: Uint8Array): string {
  return `data:image/png;base64,${Buffer.from(png).toString('base64')}`;
}

describe('the sheets of the demos look as their kept pictures', () => {
  let browser: Browser;
  let pictures: ReadonlyMap<string, Uint8Array> = new Map();

  const faultsOf = async (expected: Uint8Array, found: Uint8Array): Promise<readonly string[]> => {
    // The same bytes are the same picture; another machine may draw the same letters by other bytes.
    if (Buffer.from(expected).equals(found)) return [];
    const page = await browser.newPage();
    const script = `${compare}
pictureFaults('${address(expected)}', '${address(found)}')`;
    const faults = (await page.evaluate(script)) as string[];
    await page.close();
    return faults;
  };

  beforeAll(async () => {
    const { output } = await demoSite();
    pictures = await takePictures(output, browserPath());
    browser = await openBrowser(browserPath());
  }, patience);

  afterAll(() => browser?.close());

  test.each(Object.keys(goldenSheets))('%s', async (name) => {
    const file = join(home, goldenFolder, `${name}.png`);
    expect(existsSync(file), `${file} is missing: ${wayOut}`).toBe(true);
    expect(await faultsOf(readFileSync(file), pictures.get(name)!), wayOut).toEqual([]);
  });

  test('a sheet that is not the one of the picture is found out', async () => {
    expect(await faultsOf(pictures.get('plan')!, pictures.get('set-out')!)).toHaveLength(1);
  });
});
