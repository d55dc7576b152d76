import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { readAssets } from '../assets.ts';
import { core } from '../Core.ts';
import { inlinedSaw } from '../inlined.ts';
import { makeParts, type Parts } from '../makeParts.ts';
import { makeSiteJob } from '../makeSiteJob.ts';
import type { Places } from '../places.ts';
import { readFolders } from '../readFolders.ts';
import { readWords } from '../words.ts';
import { writeFile } from '../writeFile.ts';
import { printBarely } from './printBarely.ts';
import { renderPlainly } from './renderPlainly.ts';
import type { Step } from './Step.ts';
import { timed } from './timed.ts';

function readyParts({ home, layouts, jobs, output }: Places): Parts {
  const words = readWords(join(layouts, 'words'));
  const made = readFolders(jobs).map((folder) => makeSiteJob(folder, { core, words, output }));
  return makeParts(made, words, { pdfs: true, sheetFolder: 'sheets', inlined: inlinedSaw(home) });
}

/** What the tools alone take for the same pages: Eleventy with ready data, then the browser with ready HTML. */
export function comparedSteps(places: Places, browser: string): readonly Step[] {
  const folder = mkdtempSync(join(tmpdir(), 'packet-bench-'));
  const parts = readyParts(places);
  const printed = parts.data.bundlePages as readonly { readonly slug: string; readonly name: string }[];
  const pages = printed.map(({ slug, name }) => join(folder, slug, 'print', `${name}.html`));
  const render = () => renderPlainly(parts, folder);
  const print = async () => {
    for (const [path, content] of readAssets(places.home)) writeFile(join(folder, path), content);
    const values = await timed(() => printBarely(browser, pages), { warmUps: 0, times: 3 });
    rmSync(folder, { recursive: true, force: true });
    return values;
  };
  return [
    {
      name: 'beside it: plain Eleventy, same templates, ready data',
      unit: 'ms',
      measure: () => timed(render, { warmUps: 0, times: 3 }),
    },
    { name: 'beside it: bare browser, same HTML', unit: 'ms', measure: print },
  ];
}
