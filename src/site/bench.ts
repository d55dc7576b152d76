import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildSite } from './buildSite.ts';
import { core } from './Core.ts';
import type { CommandInput } from './commands/CommandInput.ts';
import { placesUnder } from './places.ts';
import { readFolders } from './readFolders.ts';
import type { Step } from './timeSteps.ts';

/** Calculation of every job in jobs/, then pages and PDFs of all of them from nothing. */
export async function benchSteps({ home, browser }: CommandInput): Promise<readonly Step[]> {
  const places = placesUnder(home);
  const calculations = readFolders(places.jobs).flatMap(({ slug, text, file }): Step[] => {
    const { job } = core.readJob(text, file);
    return job ? [{ name: `calculate ${slug}`, warmUps: 3, times: 5, run: () => core.makePacket(job) }] : [];
  });
  const buildAll = async () => {
    const root = mkdtempSync(join(tmpdir(), 'packet-bench-'));
    const fresh = { ...places, output: join(root, 'output'), cache: join(root, 'cache') };
    await buildSite(fresh, { names: [], browser, progress: () => undefined });
    rmSync(root, { recursive: true, force: true });
  };
  return [...calculations, { name: 'pages and PDFs of all jobs', warmUps: 0, times: 1, run: buildAll }];
}
