import { cpSync, mkdtempSync, readdirSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildSite } from '../buildSite.ts';
import { placesUnder } from '../places.ts';
import type { Step } from './Step.ts';
import { timed } from './timed.ts';

function placesOf(home: string, folder: string) {
  return { ...placesUnder(home, folder), home, layouts: join(home, 'layouts') };
}

const quiet = { names: [], progress: () => undefined };

/** How much longer a build of nothing new takes for one more job: with all jobs of the home against with none. */
async function unchanged(home: string, folder: string): Promise<readonly number[]> {
  const full = placesOf(home, folder);
  const empty = placesOf(home, join(folder, 'empty'));
  const count = readdirSync(full.jobs).length;
  await buildSite(full, quiet);
  await buildSite(empty, quiet);
  const runs = { warmUps: 1, times: 5 };
  const without = await timed(() => buildSite(empty, quiet), runs);
  const all = await timed(() => buildSite(full, quiet), runs);
  return all.map((ms, n) => Math.max(0, ms - (without[n] ?? 0)) / count);
}

function sizesOf({ output, jobs }: ReturnType<typeof placesOf>): readonly number[] {
  const pages = readdirSync(jobs).map((slug) => join(output, slug, 'index.html'));
  return [Math.max(...pages.map((page) => statSync(page).size)) / 1000];
}

/** What a job costs that has not changed, and how large the largest page of a job is. */
export function unchangedSteps(home: string): readonly Step[] {
  const folder = mkdtempSync(join(tmpdir(), 'packet-bench-'));
  cpSync(join(home, 'jobs'), join(folder, 'jobs'), { recursive: true });
  const size = async () => {
    const sizes = sizesOf(placesOf(home, folder));
    rmSync(folder, { recursive: true, force: true });
    return sizes;
  };
  return [
    {
      name: 'a job that has not changed, in a running build',
      unit: 'ms',
      target: 50,
      measure: () => unchanged(home, folder),
    },
    { name: 'the largest page of a job', unit: 'kB', target: 300, measure: size },
  ];
}
