import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';
import { openBrowser } from '../../src/site/openBrowser.ts';
import { findBrowser } from '../../src/site/setup/findBrowser.mjs';
import { newHome } from './newHome.ts';

const isPage = (path: string) => path.endsWith('.html');

describe('a bad job beside a good one', () => {
  test('harms nothing of it, and has a page with all its problems', async () => {
    const alone = newHome({ pantry: 'good.yaml' });
    await alone.build();
    const both = newHome({ pantry: 'good.yaml', bad: 'broken.yaml' });
    const said = await both.build();
    expect(both.readAll('pantry')).toEqual(alone.readAll('pantry'));
    for (const place of ['9:8', '12:10', '15:10']) {
      expect(said).toContain(`jobs/bad/job.yaml:${place}: `);
      expect(both.read('bad/index.html')).toContain(`jobs/bad/job.yaml:${place}: `);
    }
    expect(both.read('bad/index.html')).toContain('&lt;script&gt;alert');
    expect(both.read('bad/index.html')).not.toContain('<script');
  });
});

/** Whether a page says in its language that the job file has changed since. */
const isStale = (page: string) => /changed since|ha cambiado/.test(page);

describe('a job that was good and is broken', () => {
  const home = newHome({ pantry: 'good.yaml' });

  test('keeps its last good packet; its pages and documents say so; the exit code is 1', async () => {
    expect(await home.print()).toBe(0);
    const { 'pantry/packet.json': packet, 'pantry/cuts.csv': cuts, ...rest } = home.readAll('pantry');
    home.write({ pantry: 'broken.yaml' });
    expect(await home.print()).toBe(1);
    const now = home.readAll('pantry');
    expect(Object.keys(now)).toEqual(expect.arrayContaining(Object.keys(rest)));
    expect([now['pantry/packet.json'], now['pantry/cuts.csv']]).toEqual([packet, cuts]);
    const fresh = Object.entries(now).filter(([path, page]) => isPage(path) && !isStale(page));
    expect(fresh.map(([path]) => path)).toEqual([]);
    expect(isStale(home.read('index.html'))).toBe(true);
  });

  test('is marked no more once it is mended', async () => {
    home.write({ pantry: 'good.yaml' });
    expect(await home.print()).toBe(0);
    const stale = Object.entries(home.readAll('.')).filter(([path, page]) => isPage(path) && isStale(page));
    expect(stale.map(([path]) => path)).toEqual([]);
  });
});

/** Cells of a table as RFC 4180 writes it. */
function cellsOf(csv: string): readonly string[] {
  return [...csv.matchAll(/(?:^|,|\r\n)(?:"((?:[^"]|"")*)"|([^,\r\n]*))/g)].map(([, quoted, bare]) =>
    (quoted ?? bare ?? '').replaceAll('""', '"'),
  );
}

const sawScript = readFileSync(join(import.meta.dirname, '../../layouts/saw/saw.js'), 'utf8');

describe('a job with a script and a formula in every text', () => {
  const home = newHome({ hostile: 'hostile.yaml' });
  let said = '';
  let pages: [path: string, page: string][] = [];

  beforeAll(async () => {
    said = await home.build();
    pages = Object.entries(home.readAll('.')).filter(([path]) => isPage(path));
  });

  test('is a job like any other', () => {
    expect(said).not.toContain('jobs/hostile/job.yaml');
    expect(pages.length).toBeGreaterThan(15);
  });

  test('prints its texts, none of them as a tag', () => {
    // The form holds no job's texts; the page beside the saw holds our own script, which is taken out here.
    const ofJobs = pages.filter(([path]) => path !== 'form.html');
    const foreign = ofJobs.map(([path, page]) => [path, page.replace(`<script>${sawScript}</script>`, '')]);
    expect(foreign.filter(([, page]) => /<script|<\/script/i.test(page!)).map(([path]) => path)).toEqual([]);
    const all = pages.map(([, page]) => page.replaceAll('&quot;', '"')).join();
    const printed = [
      'title',
      'owner',
      'place',
      'letter',
      'setter',
      'phone',
      'tile name',
      'lot',
      'doorway',
      'cabinet',
    ];
    expect(printed.filter((text) => !all.includes(`script&gt;alert("${text}")`))).toEqual([]);
  });

  test('gives a table without a formula', () => {
    const cells = cellsOf(home.read('hostile/cuts.csv'));
    expect(cells.filter((cell) => cell.includes('<script>')).length).toBeGreaterThan(0);
    expect(cells.filter((cell) => /^[=+\-@\t\r]/.test(cell))).toEqual([]);
  });

  test('holds no script and opens no dialog in a browser', async () => {
    const browser = await openBrowser(
      String(findBrowser(process.env, join(import.meta.dirname, '../../.cache/browser'))),
    );
    for (const path of ['index.html', 'hostile/index.html', 'hostile/print/packet.html']) {
      const page = await browser.newPage();
      const dialogs: string[] = [];
      page.on('dialog', (dialog) => {
        dialogs.push(dialog.message());
        dialog.dismiss();
      });
      await page.goto(pathToFileURL(join(home.root, 'output', path)).href, { waitUntil: 'load' });
      const scripts = await page.evaluate("document.querySelectorAll('script').length");
      expect({ path, scripts, dialogs }).toEqual({ path, scripts: 0, dialogs: [] });
    }
    await browser.close();
  });
});
