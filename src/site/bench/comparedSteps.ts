import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { hashAssets, readAssets } from '../assets.ts';
import { core } from '../Core.ts';
import { inlinedSaw } from '../inlined.ts';
import { makeParts, type Parts } from '../makeParts.ts';
import { makeSiteJob } from '../makeSiteJob.ts';
import type { Places } from '../places.ts';
import { startPrinter } from '../printer.ts';
import { readFolders } from '../readFolders.ts';
import { readWords } from '../words.ts';
import { writeFile } from '../writeFile.ts';
import { median } from './benchLine.ts';
import { printBarely } from './printBarely.ts';
import { renderPlainly } from './renderPlainly.ts';
import type { Step } from './Step.ts';
import { timed } from './timed.ts';

function readyParts({ home, layouts, jobs, output }: Places): Parts {
  const words = readWords(join(layouts, 'words'));
  const made = readFolders(jobs).map((folder) => makeSiteJob(folder, { core, words, output }));
  return makeParts(made, words, { pdfs: true, sheetFolder: 'sheets', inlined: inlinedSaw(home) });
}

/** Prints the pages as a build does, with nothing kept from before. */
async function printAsBuilt(home: string, browser: string, pages: readonly string[]): Promise<void> {
  const store = mkdtempSync(join(tmpdir(), 'packet-bench-'));
  const printer = startPrinter({
    browser,
    store,
    styles: hashAssets(readAssets(home)),
    progress: () => undefined,
  });
  printer.add(pages.map((html) => ({ html, pdf: `${html}.pdf` })));
  const failed = await printer.done();
  await printer.close();
  rmSync(store, { recursive: true, force: true });
  if (failed.length > 0) throw new Error(failed.join('\n'));
}

/** What the tools alone take for the same pages: Eleventy with ready data, then the browser with ready HTML; and what our printing takes beside it. */
export function comparedSteps(places: Places, browser: string): readonly Step[] {
  const { home } = places;
  const folder = mkdtempSync(join(tmpdir(), 'packet-bench-'));
  const parts = readyParts(places);
  const printed = parts.data.bundlePages as readonly { readonly slug: string; readonly name: string }[];
  const pages = printed.map(({ slug, name }) => join(folder, slug, 'print', `${name}.html`));
  const once = { warmUps: 0, times: 3 };
  const render = () => renderPlainly(parts, folder);
  let bare: readonly number[] = [];
  const print = async () => {
    for (const [path, content] of readAssets(home)) writeFile(join(folder, path), content);
    bare = await timed(() => printBarely(browser, pages), once);
    return bare;
  };
  const share = async () => {
    const spent = await timed(() => printAsBuilt(home, browser, pages), once);
    rmSync(folder, { recursive: true, force: true });
    return spent.map((ms) => (100 * ms) / median(bare));
  };
  return [
    {
      name: 'beside it: plain Eleventy, same templates, ready data',
      unit: 'ms',
      measure: () => timed(render, once),
    },
    { name: 'beside it: bare browser, same HTML', unit: 'ms', measure: print },
    { name: 'our printing of it, in parts of the bare browser', unit: '%', target: 130, measure: share },
  ];
}
